// One line symbol per kind of thing on a wall. Plans and drawings keep to the thing's rectangle, so every
// symbol touches its four sides and none leaves it.
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "core/drawing/elevation_parts.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

// Below this much paper a detail is a blot.
constexpr double kLeastDetailMm = 2.2;

class Symbol {
 public:
  Symbol(Pen& pen, const Box& box, Role outline, bool detailed)
      : pen_(pen),
        l_(box.low.x.inches()),
        b_(box.low.y.inches()),
        w_(box.high.x.inches() - l_),
        h_(box.high.y.inches() - b_),
        outline_(outline),
        detailed_(detailed) {}

  void mirror() {
    frame();
    glints();
  }
  void litMirror() {
    frame();
    const double rim = std::min({1.5, w_ * 0.12, h_ * 0.12});
    inner(rim, rim);
    glints();
  }
  void roundMirror() {
    oval(0, 0, 1, 1, outline_);
    oval(0.08, 0.08, 0.92, 0.92);
    stroke(0.38, 0.5, 0.52, 0.64);
    stroke(0.48, 0.42, 0.62, 0.56);
  }
  // A row of globes, upright or lying.
  void lamp() {
    frame();
    const bool lies = w_ >= h_;
    const double ratio = lies ? w_ / h_ : h_ / w_;
    const int globes = std::clamp(static_cast<int>(std::lround(ratio / 1.3)), 1, 6);
    for (int i = 0; i < globes; ++i) {
      const double at = (i + 0.5) / globes, r = std::min(w_, h_) * 0.36;
      if (lies) circle(at, 0.5, r);
      else circle(0.5, at, r);
    }
  }
  // A tube on its plate.
  void sideLamp() {
    const double r = std::min(w_, h_) / 2;
    pen_.rectangle(outline_, l_, b_, l_ + w_, b_ + h_, r * 0.8);
    if (w_ < h_) {
      part(0.3, 0.08, 0.7, 0.92, 0.4);
      part(0.12, 0.42, 0.88, 0.58);
    } else {
      part(0.08, 0.3, 0.92, 0.7, 0.4);
      part(0.42, 0.12, 0.58, 0.88);
    }
  }
  void box() {
    oval(0, 0, 1, 1, outline_);
    stroke(0.146, 0.146, 0.854, 0.854);
    stroke(0.146, 0.854, 0.854, 0.146);
  }
  void receptacle() {
    frame();
    for (const double middle : {0.3, 0.7}) {
      part(0.2, middle - 0.15, 0.8, middle + 0.15, 0.35);
      stroke(0.4, middle - 0.05, 0.4, middle + 0.08);
      stroke(0.6, middle - 0.05, 0.6, middle + 0.08);
    }
  }
  void toggles(int count) {
    frame();
    for (int i = 0; i < count; ++i) {
      const double c = (i + 0.5) / count, half = 0.16 / count;
      part(c - half, 0.3, c + half, 0.7);
      stroke(c - half, 0.5, c + half, 0.5);
    }
  }
  void timer() {
    frame();
    const double r = std::min(w_, h_) * 0.36;
    circle(0.5, 0.5, r);
    const double cx = l_ + w_ / 2, cy = b_ + h_ / 2;
    line(cx, cy, cx, cy + r);
    line(cx, cy, cx + r * 0.7, cy);
  }
  void drop() {
    frame();
    const double cx = l_ + w_ / 2, r = std::min(w_, h_) * 0.24, cy = b_ + h_ * 0.42;
    if (!detailed_) return;
    pen_.arc(detail(), cx, cy, r, r, 160, 380);
    line(cx - r * std::cos(0.349), cy + r * std::sin(0.349), cx, cy + r * 2.3);
    line(cx + r * std::cos(0.349), cy + r * std::sin(0.349), cx, cy + r * 2.3);
  }
  // A round bar between its flanges.
  void bar() {
    const double r = std::min(w_, h_) / 2;
    pen_.rectangle(outline_, l_, b_, l_ + w_, b_ + h_, r);
    const bool lies = w_ >= h_;
    const double along = std::min(2.5, std::max(w_, h_) * 0.2) / std::max(w_, h_);
    if (lies) stroke(along, 0, along, 1), stroke(1 - along, 0, 1 - along, 1);
    else stroke(0, along, 1, along), stroke(0, 1 - along, 1, 1 - along);
  }
  void elbowBar() {
    const double thick = std::min({1.5, w_ / 3, h_ / 3}), x = thick / w_, y = thick / h_;
    shape({{0, 0}, {1, 0}, {1, y}, {x, y}, {x, 1}, {0, 1}}, outline_);
    stroke(0, 1 - y, x, 1 - y);
    stroke(1 - x, 0, 1 - x, y);
    stroke(0, y, x, y);
  }
  // The end of the bar as it stands into the room, on its plate.
  void foldBar() {
    frame();
    const double r = std::min(w_ * 0.3, h_ * 0.18);
    circle(0.5, 0.78, r);
    circle(0.5, 0.22, r);
    stroke(0.5, 0.32, 0.5, 0.68);
  }
  void towelBar() {
    const double post = std::min(1.5, w_ * 0.15) / w_;
    shape({{0, 0}, {post, 0}, {post, 0.3}, {1 - post, 0.3}, {1 - post, 0}, {1, 0}, {1, 1}, {1 - post, 1},
           {1 - post, 0.7}, {post, 0.7}, {post, 1}, {0, 1}},
          outline_);
  }
  void hook() {
    pen_.rectangle(outline_, l_, b_ + h_ * 0.45, l_ + w_, b_ + h_, std::min(w_, h_) * 0.2);
    std::vector<std::array<double, 2>> bend{{0.5, 0.75}, {0.5, 0.2}};
    for (int i = 1; i <= 8; ++i) {
      const double t = std::numbers::pi * (1 + i / 8.0);
      bend.push_back({0.7 + 0.2 * std::cos(t), 0.2 + 0.2 * std::sin(t)});
    }
    shape(bend, outline_, false);
  }
  void paper() {
    pen_.rectangle(outline_, l_, b_ + h_ * 0.5, l_ + w_, b_ + h_, std::min(w_, h_) * 0.12);
    shape({{0.14, 0.5}, {0.14, 0}, {0.86, 0}, {0.86, 0.5}}, outline_, false);
    stroke(0, 0.75, 1, 0.75);
  }
  void shelf() {
    frame();
    const double in = std::min(2.0, w_ * 0.15) / w_;
    stroke(in, 0, in, 1), stroke(1 - in, 0, 1 - in, 1);
    stroke(0, 0.6, 1, 0.6);
  }
  // Seen into: the back wall smaller, its corners joined.
  void niche() {
    frame();
    const double in = std::min({2.0, w_ * 0.2, h_ * 0.2}), x = in / w_, y = in / h_;
    inner(in, in);
    stroke(0, 0, x, y), stroke(1, 0, 1 - x, y), stroke(0, 1, x, 1 - y), stroke(1, 1, 1 - x, 1 - y);
  }
  void cabinet() {
    frame();
    const double in = std::min({0.8, w_ * 0.08, h_ * 0.08});
    inner(in, in);
    stroke(1, 0.08, 0.08, 0.5), stroke(1, 0.92, 0.08, 0.5);
  }
  void head() {
    shape({{0, 0}, {1, 0}, {0.72, 0.45}, {0.28, 0.45}}, outline_);
    shape({{0.42, 0.45}, {0.42, 1}, {0.58, 1}, {0.58, 0.45}}, outline_, false);
    stroke(0, 0.15, 1, 0.15);
  }
  void valve() {
    oval(0, 0, 1, 1, outline_);
    oval(0.32, 0.32, 0.68, 0.68);
    part(0.45, 0.06, 0.55, 0.5);
  }
  void handSpray() {
    // Rail between two holders, the spray hung on it at a slant.
    shape({{0.4, 0}, {0.4, 1}, {0.6, 1}, {0.6, 0}}, outline_);
    for (const double y : {0.06, 0.94}) shape({{0, y}, {1, y}}, outline_, false);
    const double y = 0.78, r = std::min(w_ * 0.5, h_ * 0.12);
    pen_.ellipse(outline_, l_ + w_ * 0.5, b_ + h_ * y, w_ * 0.5, r);
    shape({{0.5, y - r / h_}, {0.8, y - 0.3}}, outline_, false);
  }
  void spout() {
    pen_.rectangle(outline_, l_, b_, l_ + w_, b_ + h_, std::min(w_, h_) * 0.35);
    oval(0.3, 0.1, 0.7, 0.5);
    stroke(0.1, 0.62, 0.9, 0.62);
  }
  void towelHeater() {
    const double side = std::min(1.2, w_ * 0.1) / w_;
    shape({{0, 0}, {side, 0}, {side, 1}, {0, 1}}, outline_);
    shape({{1 - side, 0}, {1, 0}, {1, 1}, {1 - side, 1}}, outline_);
    const int rungs = std::clamp(static_cast<int>(h_ / 4), 3, 14);
    for (int i = 0; i < rungs; ++i) {
      const double y = (i + 0.5) / rungs, half = std::min(0.5 / h_, 0.2 / rungs);
      shape({{side, y - half}, {1 - side, y - half}}, outline_, false);
      stroke(side, y + half, 1 - side, y + half);
    }
  }
  void radiator() {
    frame();
    const int fins = std::clamp(static_cast<int>(w_ / 2.5), 3, 20);
    for (int i = 1; i < fins; ++i) stroke(i / double(fins), 0.06, i / double(fins), 0.94);
  }
  void panel() {
    frame();
    const double in = std::min({1.2, w_ * 0.12, h_ * 0.12});
    inner(in, in);
    for (const double x : {0.2, 0.8})
      for (const double y : {0.2, 0.8}) circle(x, y, std::min(w_, h_) * 0.03);
  }
  void exhaust() {
    frame();
    const double r = std::min(w_, h_) * 0.4;
    circle(0.5, 0.5, r);
    circle(0.5, 0.5, r * 0.2);
    const double cx = l_ + w_ / 2, cy = b_ + h_ / 2;
    for (int i = 0; i < 4; ++i) {
      const double t = std::numbers::pi / 2 * i + 0.5, s = t + 0.6;
      line(cx + r * 0.2 * std::cos(t), cy + r * 0.2 * std::sin(t), cx + r * std::cos(s),
           cy + r * std::sin(s));
    }
  }
  // A door over two columns of breakers.
  void breakers() {
    frame();
    const double in = std::min({1.0, w_ * 0.1, h_ * 0.1});
    inner(in, in);
    for (int i = 0; i < 5; ++i) {
      const double y = 0.2 + 0.12 * i;
      part(0.28, y, 0.47, y + 0.08);
      part(0.53, y, 0.72, y + 0.08);
    }
  }
  void frame() { pen_.rectangle(outline_, l_, b_, l_ + w_, b_ + h_); }

 private:
  Role detail() const { return outline_ == Role::fixtureRemoved ? outline_ : Role::fixtureDetail; }
  double X(double f) const { return l_ + w_ * f; }
  double Y(double f) const { return b_ + h_ * f; }
  // Fractions of width and height from the lower left corner.
  void stroke(double x0, double y0, double x1, double y1) { line(X(x0), Y(y0), X(x1), Y(y1)); }
  void line(double x0, double y0, double x1, double y1) {
    if (detailed_) pen_.line(detail(), x0, y0, x1, y1);
  }
  void part(double x0, double y0, double x1, double y1, double round = 0) {
    if (!detailed_) return;
    const double r = round * std::min((x1 - x0) * w_, (y1 - y0) * h_);
    pen_.rectangle(detail(), X(x0), Y(y0), X(x1), Y(y1), r);
  }
  void inner(double dx, double dy) {
    if (detailed_) pen_.rectangle(detail(), l_ + dx, b_ + dy, l_ + w_ - dx, b_ + h_ - dy);
  }
  void circle(double x, double y, double r) {
    if (detailed_) pen_.circle(detail(), X(x), Y(y), r);
  }
  void oval(double x0, double y0, double x1, double y1) {
    if (detailed_) oval(x0, y0, x1, y1, detail());
  }
  void oval(double x0, double y0, double x1, double y1, Role role) {
    pen_.ellipse(role, X((x0 + x1) / 2), Y((y0 + y1) / 2), w_ * (x1 - x0) / 2, h_ * (y1 - y0) / 2);
  }
  void shape(std::vector<std::array<double, 2>> points, Role role, bool closed = true) {
    for (auto& p : points) p = {X(p[0]), Y(p[1])};
    pen_.poly(role, points, closed);
  }
  void glints() {
    const double u = std::min(w_, h_) * 0.22, cx = l_ + w_ / 2, cy = b_ + h_ / 2;
    line(cx - u, cy - u * 0.4, cx + u * 0.4, cy + u);
    line(cx - u * 0.4, cy - u, cx + u, cy + u * 0.4);
  }

  Pen& pen_;
  double l_, b_, w_, h_;
  Role outline_;
  bool detailed_;
};

using Draw = void (*)(Symbol&);
const std::map<std::string_view, Draw>& symbols() {
  static const std::map<std::string_view, Draw> all{
      {"mirror", [](Symbol& s) { s.mirror(); }},
      {"lit-mirror", [](Symbol& s) { s.litMirror(); }},
      {"makeup-mirror", [](Symbol& s) { s.roundMirror(); }},
      {"light", [](Symbol& s) { s.lamp(); }},
      {"side-light", [](Symbol& s) { s.sideLamp(); }},
      {"sconce-box", [](Symbol& s) { s.box(); }},
      {"receptacle", [](Symbol& s) { s.receptacle(); }},
      {"switch", [](Symbol& s) { s.toggles(1); }},
      {"timer-switch", [](Symbol& s) { s.timer(); }},
      {"humidity-switch", [](Symbol& s) { s.drop(); }},
      {"combined-switch", [](Symbol& s) { s.toggles(2); }},
      {"grab-bar", [](Symbol& s) { s.bar(); }},
      {"grab-bar-l", [](Symbol& s) { s.elbowBar(); }},
      {"grab-bar-fold", [](Symbol& s) { s.foldBar(); }},
      {"towel-bar", [](Symbol& s) { s.towelBar(); }},
      {"hook", [](Symbol& s) { s.hook(); }},
      {"paper-holder", [](Symbol& s) { s.paper(); }},
      {"shelf", [](Symbol& s) { s.shelf(); }},
      {"niche", [](Symbol& s) { s.niche(); }},
      {"medicine-cabinet", [](Symbol& s) { s.cabinet(); }},
      {"shower-head", [](Symbol& s) { s.head(); }},
      {"control", [](Symbol& s) { s.valve(); }},
      {"hand-spray", [](Symbol& s) { s.handSpray(); }},
      {"spout", [](Symbol& s) { s.spout(); }},
      {"towel-heater", [](Symbol& s) { s.towelHeater(); }},
      {"radiator", [](Symbol& s) { s.radiator(); }},
      {"access-panel", [](Symbol& s) { s.panel(); }},
      {"exhaust", [](Symbol& s) { s.exhaust(); }},
      {"breaker-panel", [](Symbol& s) { s.breakers(); }},
  };
  return all;
}

}  // namespace

void drawWallSymbol(Pen& pen, const WallItem& item, const Box& rectangle, const DrawStyle& style) {
  const Role outline = item.status == Status::remove ? Role::fixtureRemoved : Role::fixture;
  const Length w = rectangle.high.x - rectangle.low.x, h = rectangle.high.y - rectangle.low.y;
  // Thin things (bars, shelves) show their ends at any size; a small square thing only its outline.
  const bool detailed = std::max(w, h) / style.mm >= kLeastDetailMm;
  Symbol symbol(pen, rectangle, outline, detailed);
  const auto it = symbols().find(item.kind);
  if (it == symbols().end() || w <= Length{} || h <= Length{}) return symbol.frame();
  it->second(symbol);
}

}  // namespace elbowroom
