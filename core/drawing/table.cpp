#include "core/drawing/table.h"

#include <algorithm>

namespace elbowroom {
namespace {

constexpr double kPad = 1.6, kInset = 3;
constexpr double kMoreStepMm = 3.2;  // the smaller print below a cell's text
constexpr double kHeadingMm = 7.2, kCaptionsMm = kLineStepMm + 1.4;
constexpr double kRowAir = 1.6, kLeastRowAir = 0.8;
constexpr double kAlmostEmpty = 0.4;  // of a page

}  // namespace

TablePages::TablePages(std::string name, Field body)
    : name_(std::move(name)), body_{body.x0 + kInset, body.y0 + kInset, body.x1 - kInset, body.y1 - kInset} {}

void TablePages::drawHeading(PaperPen& pen, const std::string& text, double top) const {
  pen.text(body_.x0, top - 4.2, text, 3.8, Role::title, true);
}

void TablePages::heading(const std::string& text) {
  heading_ = text;
  // A heading never stands alone at the foot.
  blocks_.push_back({4, kHeadingMm, 22.8, -1, false,
                     [this, text](PaperPen& pen, double top) { drawHeading(pen, text, top); }});
}

void TablePages::paragraph(const std::string& text) {
  for (const std::string& line : wrapMm(text, kNoteTextMm, body_.width()))
    blocks_.push_back({0, kLineStepMm, 0, -1, false, [this, line](PaperPen& pen, double top) {
                         pen.text(body_.x0, top - kLineStepMm, line, kNoteTextMm, Role::label);
                       }});
  if (!blocks_.empty()) blocks_.back().height += 1.5;
}

void TablePages::drawCaptions(PaperPen& pen, const Table& table, double top) const {
  pen.line(Role::paper, body_.x0, top, body_.x1, top);
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const double x = table.edges[i], width = table.edges[i + 1] - x - 2 * kPad;
    pen.text(x + kPad, top - kLineStepMm + 0.4, fitted(table.columns[i].caption, kNoteTextMm, width, true),
             kNoteTextMm, Role::title, true);
  }
  pen.line(Role::tableLine, body_.x0, top - kCaptionsMm, body_.x1, top - kCaptionsMm);
}

void TablePages::begin(std::vector<TableColumn> columns) {
  Table table{heading_, std::move(columns), {body_.x0}};
  double total = 0;
  for (const TableColumn& c : table.columns) total += c.share;
  for (const TableColumn& c : table.columns)
    table.edges.push_back(table.edges.back() + body_.width() * c.share / total);
  const std::size_t index = tables_.size();
  tables_.push_back(std::move(table));
  blocks_.push_back({1, kCaptionsMm, 24 - kCaptionsMm, -1, false,
                     [this, index](PaperPen& pen, double top) { drawCaptions(pen, tables_[index], top); }});
}

void TablePages::row(const std::vector<TableCell>& cells, const MarkDrawer& mark) {
  const std::vector<double>& edges = tables_.back().edges;
  std::vector<std::vector<std::string>> texts, mores;
  double height = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const double width = edges[i + 1] - edges[i] - 2 * kPad;
    texts.push_back(wrapMm(cells[i].text, kNoteTextMm, width, cells[i].bold));
    mores.push_back(wrapMm(cells[i].more, kCaptionTextMm, width));
    for (std::string& line : texts.back()) line = fitted(line, kNoteTextMm, width, cells[i].bold);
    for (std::string& line : mores.back()) line = fitted(line, kCaptionTextMm, width);
    height = std::max(height, static_cast<double>(texts.back().size()) * kLineStepMm +
                                  static_cast<double>(mores.back().size()) * kMoreStepMm);
  }
  const auto draw = [cells, mark, texts, mores, edges](PaperPen& pen, double top) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
      double y = top + 0.3;
      const double x = edges[i] + kPad;
      if (i == 0 && mark) pen.add(mark(x, y - kLineStepMm + 0.95));
      const double indent = i == 0 && mark ? 5.2 : 0;
      for (const std::string& line : texts[i])
        pen.text(x + indent, y -= kLineStepMm, line, kNoteTextMm, Role::label, cells[i].bold);
      for (const std::string& line : mores[i])
        pen.text(x, y -= kMoreStepMm, line, kCaptionTextMm, Role::note);
    }
  };
  blocks_.push_back({0, height, 0, static_cast<int>(tables_.size()) - 1, true, draw});
}

void TablePages::end() {
  heading_.clear();
  if (!blocks_.empty()) blocks_.push_back({2, 0, 0, -1, false, {}});
}

double TablePages::headHeight(int table) const {
  const bool headed = !tables_[static_cast<std::size_t>(table)].heading.empty();
  return kCaptionsMm + (headed ? kHeadingMm : 0);
}

void TablePages::drawHead(PaperPen& pen, int index, double top) const {
  const Table& table = tables_[static_cast<std::size_t>(index)];
  if (!table.heading.empty()) {
    drawHeading(pen, table.heading + ", continued", top);
    top -= kHeadingMm;
  }
  drawCaptions(pen, table, top);
}

std::vector<TablePages::Page> TablePages::laidOut(double height, double row_air) const {
  std::vector<Page> pages(1);
  double used = 0;
  for (std::size_t i = 0; i < blocks_.size(); ++i) {
    const Block& block = blocks_[i];
    const double air = block.is_row ? row_air : 0, tall = block.height + air;
    if (!pages.back().empty() && used + block.above + tall + block.follows > height) {
      if (!block.draw) continue;
      pages.emplace_back();
      used = block.is_row ? headHeight(block.table) : 0;
    }
    if (!pages.back().empty()) used += block.above;
    pages.back().push_back({i, used, air});
    used += tall;
  }
  return pages;
}

double TablePages::filled(const Page& page) const {
  return page.back().top + blocks_[page.back().block].height;
}

std::vector<TablePages::Page> TablePages::best() const {
  const double whole = body_.height();
  std::vector<Page> pages = laidOut(whole, kRowAir);
  if (pages.size() < 2 || filled(pages.back()) > kAlmostEmpty * whole) return pages;
  std::vector<Page> close = laidOut(whole, kLeastRowAir);
  if (close.size() < pages.size()) return close;
  // Pages as even as their number allows.
  double low = whole / 2, high = whole;
  for (int step = 0; step < 12; ++step) {
    const double middle = (low + high) / 2;
    (laidOut(middle, kRowAir).size() > pages.size() ? low : high) = middle;
  }
  return laidOut(high, kRowAir);
}

std::vector<PageContent> TablePages::take() {
  if (blocks_.empty()) return {};
  const std::vector<Page> pages = best();
  std::vector<PageContent> contents;
  for (const Page& page : pages) {
    PaperPen pen;
    if (blocks_[page.front().block].is_row) drawHead(pen, blocks_[page.front().block].table, body_.y1);
    for (std::size_t i = 0; i < page.size(); ++i) {
      const Block& block = blocks_[page[i].block];
      const double top = body_.y1 - page[i].top;
      if (block.draw) block.draw(pen, top);
      if (!block.is_row) continue;
      const double low = top - block.height - page[i].air;
      pen.line(Role::tableLine, body_.x0, low, body_.x1, low);
    }
    contents.push_back({name_, std::nullopt, pen.take()});
  }
  return contents;
}

}  // namespace elbowroom
