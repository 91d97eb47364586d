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

// Collects headings, paragraphs and rows, then fills pages from the top. Every page is a list inside `body`;
// `name` is repeated on each. Where the last page would be almost empty the rows close up, and if that saves
// no page they are spread over all of them.
class TablePages {
 public:
  TablePages(std::string name, Field body);
  TablePages(const TablePages&) = delete;
  TablePages& operator=(const TablePages&) = delete;

  void heading(const std::string& text);
  void paragraph(const std::string& text);
  void begin(std::vector<TableColumn> columns);
  // `mark` draws into the row's first cell: given the middle height of the first line. Called by take().
  using MarkDrawer = std::function<DisplayList(double x, double y)>;
  void row(const std::vector<TableCell>& cells, const MarkDrawer& mark = {});
  void end();

  std::vector<PageContent> take();

 private:
  struct Table {
    std::string heading;
    std::vector<TableColumn> columns;
    std::vector<double> edges;
  };
  // Something that stays together. `above` is left out at the top of a page; `follows`: what must still fit
  // below it on the same page; `table`: whose captions are repeated where a page begins with it.
  struct Block {
    double above = 0, height = 0, follows = 0;
    int table = -1;
    bool is_row = false;
    std::function<void(PaperPen&, double top)> draw;
  };
  struct Laid {
    std::size_t block;
    double top;      // from the body's upper edge
    double air = 0;  // below a row
  };
  using Page = std::vector<Laid>;

  std::vector<Page> laidOut(double height, double row_air) const;
  std::vector<Page> best() const;
  double filled(const Page&) const;
  double headHeight(int table) const;
  void drawHead(PaperPen&, int table, double top) const;
  void drawHeading(PaperPen&, const std::string& text, double top) const;
  void drawCaptions(PaperPen&, const Table&, double top) const;

  std::string name_;
  Field body_;
  std::vector<Table> tables_;
  std::vector<Block> blocks_;
  std::string heading_;  // of the table that comes next
};

}  // namespace elbowroom
