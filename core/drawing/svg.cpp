#include <fmt/format.h>

#include <cmath>
#include <numbers>

#include "core/drawing/page.h"

namespace elbowroom {
namespace {

constexpr const char* kWhite = "#ffffff";

// Thousandths of a millimetre without needless zeros, and never "-0".
std::string number(double v) {
  std::string text = fmt::format("{:.3f}", v);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      default:
        // Control characters have no place in XML 1.0.
        if (static_cast<unsigned char>(c) >= 0x20) out += c;
    }
  }
  return out;
}

class SvgWriter {
 public:
  SvgWriter(double height_mm, double below_mm) : flip_(height_mm + below_mm) {}

  void add(const DrawItem& item) {
    ink_ = inkOf(item.role);
    if (ink_.fill == inkOf(Role::paper).fill) ink_.fill = kWhite;
    std::visit([this](const auto& prim) { draw(prim); }, item.prim);
  }
  std::string take() { return std::move(out_); }

 private:
  std::string x(Point p) const { return number(p.x.millimetres()); }
  std::string y(Point p) const { return number(flip_ - p.y.millimetres()); }

  std::string pen(bool filled) const {
    std::string text = fmt::format(R"( fill="{}")", filled && !ink_.fill.empty() ? ink_.fill : "none");
    if (ink_.width_mm <= 0) return text;
    text += fmt::format(R"( stroke="{}" stroke-width="{}")", ink_.stroke, number(ink_.width_mm));
    if (!ink_.dash_mm.empty()) {
      text += " stroke-dasharray=\"";
      for (std::size_t i = 0; i < ink_.dash_mm.size(); ++i) text += (i ? "," : "") + number(ink_.dash_mm[i]);
      text += "\"";
    }
    return text;
  }

  void draw(const LinePrim& line) {
    out_ +=
        fmt::format("<path d=\"M{} {}L{} {}\"{}/>\n", x(line.a), y(line.a), x(line.b), y(line.b), pen(false));
  }

  void draw(const PolyPrim& poly) {
    if (poly.points.size() < 2) return;
    std::string path;
    for (std::size_t i = 0; i < poly.points.size(); ++i) {
      path += fmt::format("{}{} {}", i ? "L" : "M", x(poly.points[i]), y(poly.points[i]));
    }
    out_ += fmt::format("<path d=\"{}{}\"{}/>\n", path, poly.closed ? "Z" : "", pen(poly.filled));
  }

  void draw(const ArcPrim& arc) {
    const Point a = arc.center + arc.radius * Direction::fromAngle(arc.from);
    const Point b = arc.center + arc.radius * Direction::fromAngle(arc.from + arc.sweep);
    const double sweep = arc.sweep.degrees();
    const std::string r = number(arc.radius.millimetres());
    out_ += fmt::format("<path d=\"M{} {}A{} {} 0 {} {} {} {}\"{}/>\n", x(a), y(a), r, r,
                        std::abs(sweep) > 180 ? 1 : 0, sweep > 0 ? 0 : 1, x(b), y(b), pen(false));
  }

  void draw(const EllipsePrim& e) {
    out_ += fmt::format("<ellipse cx=\"{}\" cy=\"{}\" rx=\"{}\" ry=\"{}\"", x(e.center), y(e.center),
                        number(e.rx.millimetres()), number(e.ry.millimetres()));
    if (e.turn != Angle{} && e.rx != e.ry) {
      out_ +=
          fmt::format(" transform=\"rotate({} {} {})\"", number(-e.turn.degrees()), x(e.center), y(e.center));
    }
    out_ += pen(e.filled) + "/>\n";
  }

  void draw(const TextPrim& text) {
    const Direction up = Direction::fromAngle(text.turn).left();
    const Point at = text.at - baselineDrop(text.v, text.height) * up;
    const char* anchor = text.h == AnchorH::left ? "start" : text.h == AnchorH::centre ? "middle" : "end";
    std::string common = fmt::format("<text x=\"{}\" y=\"{}\" font-size=\"{}\"", x(at), y(at),
                                     number(text.height.millimetres()));
    if (text.h != AnchorH::left) common += fmt::format(" text-anchor=\"{}\"", anchor);
    if (text.bold) common += " font-weight=\"bold\"";
    if (text.turn != Angle{}) {
      common += fmt::format(" transform=\"rotate({} {} {})\"", number(-text.turn.degrees()), x(at), y(at));
    }
    const std::string words = escaped(text.text);
    // Two elements instead of paint-order, which not every reader knows.
    if (text.halo) {
      out_ += fmt::format(
          "{} fill=\"none\" stroke=\"{}\" stroke-width=\"{}\" stroke-linejoin=\"round\">{}</text>\n", common,
          kWhite, number(text.height.millimetres() * 0.3), words);
    }
    out_ += fmt::format("{} fill=\"{}\">{}</text>\n", common, ink_.stroke, words);
  }

  void draw(const HatchPrim& hatch) {
    std::string path;
    for (const Segment& s : hatchLines(hatch))
      path += fmt::format("M{} {}L{} {}", x(s.a), y(s.a), x(s.b), y(s.b));
    if (!path.empty()) out_ += fmt::format("<path d=\"{}\"{}/>\n", path, pen(false));
  }

  double flip_;
  Ink ink_;
  std::string out_;
};

}  // namespace

std::string toSvg(const Sheet& sheet) { return toSvg(std::vector<Sheet>{sheet}); }

std::string toSvg(const std::vector<Sheet>& sheets) {
  double width = 0, height = 0;
  for (const Sheet& sheet : sheets) {
    width = std::max(width, sheet.paper.width.millimetres());
    height += sheet.paper.height.millimetres();
  }
  std::string svg = fmt::format(
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" "
      "font-family=\"DejaVu Sans\" font-kerning=\"none\">\n",
      number(width), number(height));
  double below = 0;
  for (const Sheet& sheet : sheets) {
    const double tall = sheet.paper.height.millimetres();
    svg += fmt::format(
        "<g>\n<title>{}</title>\n<rect x=\"0\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"{}\"/>\n",
        escaped(sheet.name), number(below), number(sheet.paper.width.millimetres()), number(tall), kWhite);
    SvgWriter writer(tall, below);
    for (const DrawItem& item : sheet.content) writer.add(item);
    svg += writer.take() + "</g>\n";
    below += tall;
  }
  return svg + "</svg>\n";
}

}  // namespace elbowroom
