#include "ui/render/paint.h"

#include <QCoreApplication>
#include <QFontDatabase>
#include <QPaintEngine>
#include <QPainterPath>
#include <QPixmap>
#include <cmath>
#include <map>
#include <tuple>

namespace elbowroom::ui {

QPointF ViewMap::toPx(Point p) const {
  return {origin.x() + p.x.inches() * px_per_inch, origin.y() - p.y.inches() * px_per_inch};
}

Point ViewMap::toPlan(QPointF px) const {
  return {Length::fromInches((px.x() - origin.x()) / px_per_inch),
          Length::fromInches((origin.y() - px.y()) / px_per_inch)};
}

double ViewMap::px(Length l) const { return l.inches() * px_per_inch; }
Length ViewMap::fromPx(double px) const { return Length::fromInches(px / px_per_inch); }

namespace {

using TextKey = std::tuple<std::string, double, double, double, QRgb, QRgb, int, int, bool, bool>;
struct Words {
  QPixmap words;
  QPointF anchor;  // where the text's own point lies in it
};
using TextCache = std::map<TextKey, Words>;
constexpr std::size_t kCachedTexts = 600;

TextCache& textCache() {
  static TextCache cache;
  // Pixmaps must not outlive the application.
  [[maybe_unused]] static const bool tidied = [] {
    qAddPostRoutine([] { textCache().clear(); });
    return true;
  }();
  return cache;
}

class Painter {
 public:
  Painter(QPainter& painter, const ViewMap& map, const PaintOptions& options)
      : painter_(painter), map_(map), options_(options) {
    paper_ = options.white_paper ? QColor(Qt::white)
                                 : QColor(QString::fromStdString(inkOf(Role::paper, options.dark).fill));
    font_ = QFont(QStringLiteral("DejaVu Sans"));
    font_.setKerning(false);  // widths are those of the table in core/drawing
    // Any spacing at all turns ligatures off: they differ from the table and cannot be searched for in a PDF.
    font_.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    font_.setHintingPreference(QFont::PreferNoHinting);
    font_.setStyleStrategy(QFont::PreferAntialias);
  }

  void draw(const DrawItem& item) {
    const bool lit = !item.source.empty() && options_.lit.count(item.source) > 0;
    pick(item.role, lit);
    std::visit([this](const auto& prim) { draw(prim); }, item.prim);
  }

 private:
  struct Tools {
    QPen pen;
    QBrush fill;
    QColor text;
  };

  void pick(Role role, bool lit) {
    if (have_ && role == role_ && lit == lit_) return;
    have_ = true, role_ = role, lit_ = lit;
    const Ink ink = inkOf(role, options_.dark);
    const double px = options_.px_per_mm * (lit ? 2.0 : 1.0);
    tools_.pen = ink.width_mm > 0 ? QPen(QColor(QString::fromStdString(ink.stroke)), ink.width_mm * px)
                                  : QPen(Qt::NoPen);
    tools_.pen.setCapStyle(Qt::FlatCap);
    tools_.pen.setJoinStyle(Qt::MiterJoin);
    if (!ink.dash_mm.empty() && ink.width_mm > 0) {
      QList<qreal> pattern;  // Qt counts dashes in pen widths
      for (const double mm : ink.dash_mm) pattern << mm * options_.px_per_mm / tools_.pen.widthF();
      tools_.pen.setDashPattern(pattern);
    }
    tools_.text = QColor(QString::fromStdString(ink.stroke));
    const bool is_paper = ink.fill == inkOf(Role::paper, options_.dark).fill;
    tools_.fill = ink.fill.empty() ? QBrush(Qt::NoBrush)
                                   : QBrush(is_paper ? paper_ : QColor(QString::fromStdString(ink.fill)));
  }

  void use(bool filled) {
    painter_.setPen(tools_.pen);
    painter_.setBrush(filled ? tools_.fill : QBrush(Qt::NoBrush));
  }

  QPolygonF polygon(const std::vector<Point>& points) const {
    QPolygonF poly;
    poly.reserve(static_cast<qsizetype>(points.size()));
    for (const Point p : points) poly << map_.toPx(p);
    return poly;
  }

  void draw(const LinePrim& line) {
    use(false);
    painter_.drawLine(map_.toPx(line.a), map_.toPx(line.b));
  }

  void draw(const PolyPrim& poly) {
    use(poly.filled);
    if (poly.closed)
      painter_.drawPolygon(polygon(poly.points));
    else
      painter_.drawPolyline(polygon(poly.points));
  }

  void draw(const ArcPrim& arc) {
    use(false);
    const QPointF c = map_.toPx(arc.center);
    const double r = map_.px(arc.radius);
    const QRectF box(c.x() - r, c.y() - r, 2 * r, 2 * r);
    // A path keeps the exact angles; drawArc rounds them to sixteenths of a degree.
    QPainterPath path;
    path.arcMoveTo(box, arc.from.degrees());
    path.arcTo(box, arc.from.degrees(), arc.sweep.degrees());
    painter_.drawPath(path);
  }

  void draw(const EllipsePrim& ellipse) {
    use(ellipse.filled);
    painter_.save();
    painter_.translate(map_.toPx(ellipse.center));
    painter_.rotate(-ellipse.turn.degrees());
    painter_.drawEllipse(QPointF(0, 0), map_.px(ellipse.rx), map_.px(ellipse.ry));
    painter_.restore();
  }

  void draw(const TextPrim& text) {
    if (map_.px(text.height) < 1) return;
    if (cached(text)) return;
    write(painter_, text, map_.toPx(text.at));
  }

  // On a screen the same words come again with every frame, and outlining their halo is most of a frame's
  // time.
  bool cached(const TextPrim& text) {
    const QPaintEngine* engine = painter_.paintEngine();
    if (!engine || engine->type() != QPaintEngine::Raster || !painter_.device()) return false;
    if (painter_.transform().type() > QTransform::TxTranslate) return false;
    const double dpr = painter_.device()->devicePixelRatioF();
    const QRectF box = boxOf(text).adjusted(-2, -2, 2, 2);
    const QPoint low(static_cast<int>(std::floor(box.left())), static_cast<int>(std::floor(box.top())));
    const QSize size(static_cast<int>(std::ceil(box.width())) + 1,
                     static_cast<int>(std::ceil(box.height())) + 1);
    if (size.width() > 1000 || size.height() > 1000) return false;
    const TextKey key{
        text.text,     map_.px(text.height),     text.turn.degrees(),      dpr,       tools_.text.rgba(),
        paper_.rgba(), static_cast<int>(text.h), static_cast<int>(text.v), text.bold, text.halo};
    TextCache& cache = textCache();
    const auto found = cache.find(key);
    // Moved to a whole pixel of the device, as where it was written first.
    const QPointF at = map_.toPx(text.at);
    const auto whole = [dpr](double v) { return std::round(v * dpr) / dpr; };
    if (found != cache.end()) {
      painter_.drawPixmap(QPointF(whole(at.x()), whole(at.y())) - found->second.anchor, found->second.words);
      return true;
    }
    if (cache.size() >= kCachedTexts) cache.clear();
    Words words{QPixmap(size * dpr), QPointF(std::ceil(at.x() - low.x()), std::ceil(at.y() - low.y()))};
    words.words.setDevicePixelRatio(dpr);
    words.words.fill(Qt::transparent);
    QPainter pen(&words.words);
    pen.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    write(pen, text, words.anchor);
    pen.end();
    painter_.drawPixmap(QPointF(whole(at.x()), whole(at.y())) - words.anchor, words.words);
    cache.emplace(key, std::move(words));
    return true;
  }

  QRectF boxOf(const TextPrim& text) const {
    const Box box = textBounds(text);
    const double halo = text.halo ? 0.15 * map_.px(text.height) : 0;
    return QRectF(map_.toPx({box.low.x, box.high.y}), map_.toPx({box.high.x, box.low.y}))
        .adjusted(-halo, -halo, halo, halo);
  }

  void write(QPainter& painter, const TextPrim& text, QPointF at) {
    const double size = map_.px(text.height);
    // Fonts are asked for at a fixed size and scaled, so that widths stay in proportion at any zoom.
    constexpr double kBase = 64;
    const double scale = size / kBase;
    font_.setPixelSize(static_cast<int>(kBase));
    font_.setBold(text.bold);
    const QString line = QString::fromStdString(text.text);
    const double width = map_.px(textWidth(text.text, text.height, text.bold)) / scale;
    const double x = text.h == AnchorH::left ? 0 : text.h == AnchorH::centre ? -width / 2 : -width;
    const double y = text.v == AnchorV::base     ? 0
                     : text.v == AnchorV::middle ? 0.729 / 2 * kBase
                                                 : 0.78 * kBase;
    painter.save();
    painter.translate(at);
    painter.rotate(-text.turn.degrees());
    painter.scale(scale, scale);
    if (text.halo) {
      QPainterPath path;
      path.addText(x, y, font_, line);
      painter.setBrush(Qt::NoBrush);
      painter.setPen(QPen(paper_, 0.3 * kBase, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
      painter.drawPath(path);
    }
    painter.setFont(font_);
    painter.setPen(tools_.text);
    painter.drawText(QPointF(x, y), line);
    painter.restore();
  }

  void draw(const HatchPrim& hatch) {
    use(false);
    for (const Segment& line : hatchLines(hatch)) painter_.drawLine(map_.toPx(line.a), map_.toPx(line.b));
  }

  QPainter& painter_;
  const ViewMap& map_;
  const PaintOptions& options_;
  QColor paper_;
  QFont font_;
  Tools tools_;
  Role role_ = Role::note;
  bool have_ = false, lit_ = false;
};

}  // namespace

void paint(QPainter& painter, const DisplayList& list, const ViewMap& map, const PaintOptions& options) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setRenderHint(QPainter::TextAntialiasing);
  Painter back(painter, map, options);
  for (const DrawItem& item : list) back.draw(item);
  painter.restore();
}

}  // namespace elbowroom::ui
