// Ruled tables that run over as many pages as they need.
#pragma once

#include <functional>

#include "core/drawing/page.h"

namespace elbowroom {

struct TableCell {
  std::string text;
  std::string more;  // below the text, in note ink
  bool bold = false;
};
struct TableColumn {
  std::string caption;
  double share = 1;  // of the width
};

// Fills pages from the top. Every page is a list inside `body`; `name` is repeated on each.
class TablePages {
 public:
  TablePages(std::string name, Field body);

  void heading(const std::string& text);
  void paragraph(const std::string& text);
  void begin(std::vector<TableColumn> columns);
  // `mark` draws into the row's first cell: given the middle height of the first line.
  using MarkDrawer = std::function<DisplayList(double x, double y)>;
  void row(const std::vector<TableCell>& cells, const MarkDrawer& mark = {});
  void end();

  std::vector<PageContent> take();

 private:
  void newPage();
  void need(double height);
  void captions();
  void writeHeading(const std::string& text);

  std::string name_, heading_;
  Field body_;
  std::vector<TableColumn> columns_;
  std::vector<double> edges_;
  std::vector<PageContent> pages_;
  PaperPen pen_;
  double y_ = 0;
  bool empty_ = true, in_table_ = false;
};

}  // namespace elbowroom
