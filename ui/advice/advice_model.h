// The rows of the Advice list: groups and the findings in them, kept in place while the plan changes.
#pragma once

#include <QAbstractListModel>
#include <array>
#include <map>
#include <vector>

#include "core/rules/text.h"

namespace elbowroom::ui {

class Session;

// What is not stated comes last and folded: it asks for work, but says nothing against the plan.
enum class AdviceGroup { shortfall, close, accepted, clear, unknown };
inline constexpr std::size_t kAdviceGroups = 5;

class AdviceModel : public QAbstractListModel {
  Q_OBJECT
 public:
  explicit AdviceModel(Session& session, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;

  // Takes over the session's report. Rows that stay keep their index (and so selection and scroll place).
  void refresh();

  bool isGroup(int row) const { return rows_[static_cast<std::size_t>(row)].finding < 0; }
  AdviceGroup groupOf(int row) const { return rows_[static_cast<std::size_t>(row)].key.group; }
  bool isOpen(AdviceGroup group) const { return open_[static_cast<std::size_t>(group)]; }
  void setOpen(AdviceGroup group, bool open);
  int countOf(AdviceGroup group) const { return counts_[static_cast<std::size_t>(group)]; }
  int failedCount() const { return failed_; }

  // Index into the report's findings, -1 for a group row.
  int findingAt(int row) const { return rows_[static_cast<std::size_t>(row)].finding; }
  int rowOfFinding(int finding) const;  // of a question asked before, that row; -1 when not shown
  int rowStandingFor(int finding) const;  // its own, or that of the folded group it is in; -1 when in none
  // The number on the plan, 0 for a finding without a mark.
  int numberAt(int row) const { return rows_[static_cast<std::size_t>(row)].number; }
  const FindingText& textAt(int row) const;
  // How many rules wait for what this row asks; 1 for all but questions.
  int askingAt(int row) const { return rows_[static_cast<std::size_t>(row)].asking; }
  Level levelAt(int row) const;
  const Finding* findingOf(int row) const;  // nullptr for a group row
  const std::string& bookAt(int row) const { return rows_[static_cast<std::size_t>(row)].key.book; }
  static QString titleOf(AdviceGroup group);

 private:
  struct Key {
    AdviceGroup group = AdviceGroup::clear;
    std::string rule, book;  // empty: the group's own row
    std::vector<ElementId> subjects;
    int again = 0;  // the same rule on the same subjects at another place
    auto operator<=>(const Key&) const = default;
  };
  struct Row {
    Key key;
    int finding = -1;
    int number = 0;
    int asking = 1;  // rules that ask this question
  };
  std::vector<Row> wantedRows();
  static void groupByThing(std::vector<Row>& rows);

  Session& session_;
  std::vector<Row> rows_;
  std::array<bool, kAdviceGroups> open_{true, true, true, false, false};
  std::array<int, kAdviceGroups> counts_{};
  int failed_ = 0;
  mutable std::map<int, FindingText> texts_;  // by finding, made when a row is first looked at
};

}  // namespace elbowroom::ui
