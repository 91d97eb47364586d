#include "core/drawing/table.h"

#include <algorithm>

namespace elbowroom {
namespace {

constexpr double kPad = 1.6;
constexpr double kInset = 3;

}  // namespace

TablePages::TablePages(std::string name, Field body)
    : name_(std::move(name)),
      body_{body.x0 + kInset, body.y0 + kInset, body.x1 - kInset, body.y1 - kInset},
      y_(body_.y1) {}

void TablePages::newPage() {
  pages_.push_back({name_, std::nullopt, pen_.take()});
  y_ = body_.y1;
  empty_ = true;
  if (!in_table_) return;
  if (!heading_.empty()) writeHeading(heading_ + ", continued");
  captions();
}

void TablePages::need(double height) {
  if (!empty_ && y_ - height < body_.y0) newPage();
}

void TablePages::heading(const std::string& text) {
  need(30);  // a heading never stands alone at the foot
  heading_ = text;
  writeHeading(text);
}

void TablePages::writeHeading(const std::string& text) {
  if (!empty_) y_ -= 4;
  y_ -= 4.2;
  pen_.text(body_.x0, y_, text, 3.8, Role::title, true);
  y_ -= 3;
  empty_ = false;
}

void TablePages::paragraph(const std::string& text) {
  for (const std::string& line : wrapMm(text, kNoteTextMm, body_.width())) {
    need(kLineStepMm);
    y_ -= kLineStepMm;
    pen_.text(body_.x0, y_, line, kNoteTextMm, Role::label);
    empty_ = false;
  }
  y_ -= 1.5;
}

void TablePages::captions() {
  const double low = y_ - kLineStepMm - 1.4;
  pen_.line(Role::paper, body_.x0, y_, body_.x1, y_);
  for (std::size_t i = 0; i < columns_.size(); ++i) {
    pen_.text(edges_[i] + kPad, y_ - kLineStepMm + 0.4,
              fitted(columns_[i].caption, kNoteTextMm, edges_[i + 1] - edges_[i] - 2 * kPad, true),
              kNoteTextMm, Role::title, true);
  }
  pen_.line(Role::tableLine, body_.x0, low, body_.x1, low);
  y_ = low;
}

void TablePages::begin(std::vector<TableColumn> columns) {
  columns_ = std::move(columns);
  if (!empty_) y_ -= 1;
  double total = 0;
  for (const TableColumn& c : columns_) total += c.share;
  edges_.assign(1, body_.x0);
  for (const TableColumn& c : columns_) edges_.push_back(edges_.back() + body_.width() * c.share / total);
  need(24);
  in_table_ = true;
  captions();
  empty_ = false;
}

void TablePages::row(const std::vector<TableCell>& cells, const MarkDrawer& mark) {
  std::vector<std::vector<std::string>> texts, mores;
  std::size_t lines = 1;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const double width = edges_[i + 1] - edges_[i] - 2 * kPad;
    texts.push_back(wrapMm(cells[i].text, kNoteTextMm, width, cells[i].bold));
    mores.push_back(wrapMm(cells[i].more, kCaptionTextMm, width));
    for (std::string& line : texts.back()) line = fitted(line, kNoteTextMm, width, cells[i].bold);
    for (std::string& line : mores.back()) line = fitted(line, kCaptionTextMm, width);
    lines = std::max(lines, texts.back().size() + mores.back().size());
  }
  const double height = static_cast<double>(lines) * kLineStepMm + 1.6;
  if (y_ - height < body_.y0) newPage();
  for (std::size_t i = 0; i < cells.size(); ++i) {
    double y = y_ - kLineStepMm + 0.3;
    const double x = edges_[i] + kPad;
    if (i == 0 && mark) pen_.add(mark(x, y + 0.95));
    const double indent = i == 0 && mark ? 5.2 : 0;
    for (const std::string& line : texts[i]) {
      pen_.text(x + indent, y, line, kNoteTextMm, Role::label, cells[i].bold);
      y -= kLineStepMm;
    }
    for (const std::string& line : mores[i]) {
      pen_.text(x, y, line, kCaptionTextMm, Role::note);
      y -= kLineStepMm;
    }
  }
  y_ -= height;
  pen_.line(Role::tableLine, body_.x0, y_, body_.x1, y_);
  empty_ = false;
}

void TablePages::end() {
  in_table_ = false;
  heading_.clear();
  y_ -= 2;
}

std::vector<PageContent> TablePages::take() {
  if (!empty_) newPage();
  return std::move(pages_);
}

}  // namespace elbowroom
