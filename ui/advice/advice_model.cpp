#include "ui/advice/advice_model.h"

#include <algorithm>

#include "core/drawing/marks.h"
#include "core/rules/tally.h"
#include "core/rules/wishes.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

std::optional<AdviceGroup> groupFor(const Finding& finding) {
  const bool accepted = !finding.acknowledged.empty();
  switch (finding.outcome) {
    case Outcome::shortfall:
      return accepted ? AdviceGroup::accepted : AdviceGroup::shortfall;
    case Outcome::unknown:
      return accepted ? AdviceGroup::accepted : AdviceGroup::unknown;
    case Outcome::close:
      return AdviceGroup::close;
    case Outcome::clear:
      return AdviceGroup::clear;
    case Outcome::notApplicable:
    case Outcome::failed:
      return std::nullopt;
  }
  return std::nullopt;
}

}  // namespace

AdviceModel::AdviceModel(Session& session, QObject* parent) : QAbstractListModel(parent), session_(session) {
  rows_ = wantedRows();
}

int AdviceModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QString AdviceModel::titleOf(AdviceGroup group) {
  switch (group) {
    case AdviceGroup::shortfall:
      return tr("Short");
    case AdviceGroup::unknown:
      return tr("Not stated");
    case AdviceGroup::close:
      return tr("Close");
    case AdviceGroup::accepted:
      return tr("Accepted");
    case AdviceGroup::clear:
      return tr("Clear");
  }
  return {};
}

const FindingText& AdviceModel::textAt(int row) const {
  // While rows move, the view may ask for one that the new report no longer has.
  static const FindingText kNone;
  const int at = findingAt(row);
  const auto& findings = session_.report().findings;
  if (at < 0 || at >= static_cast<int>(findings.size())) return kNone;
  const auto known = texts_.find(at);
  if (known != texts_.end()) return known->second;
  FindingText text = textOf(findings[static_cast<std::size_t>(at)], session_.option(), session_.plan().unit);
  return texts_.emplace(at, std::move(text)).first->second;
}

Level AdviceModel::levelAt(int row) const {
  const int at = findingAt(row);
  const auto& findings = session_.report().findings;
  return at >= 0 && at < static_cast<int>(findings.size()) ? findings[static_cast<std::size_t>(at)].level
                                                           : Level::required;
}

const Finding* AdviceModel::findingOf(int row) const {
  const int at = row >= 0 && row < rowCount() ? findingAt(row) : -1;
  const auto& findings = session_.report().findings;
  return at >= 0 && at < static_cast<int>(findings.size()) ? &findings[static_cast<std::size_t>(at)] : nullptr;
}

int AdviceModel::rowOfFinding(int finding) const {
  if (finding < 0) return -1;
  for (std::size_t i = 0; i < rows_.size(); ++i)
    if (rows_[i].finding == finding) return static_cast<int>(i);
  const auto& findings = session_.report().findings;
  if (finding >= static_cast<int>(findings.size())) return -1;
  const Finding& wanted = findings[static_cast<std::size_t>(finding)];
  for (std::size_t i = 0; i < rows_.size(); ++i)
    if (rows_[i].finding >= 0 && rows_[i].finding < static_cast<int>(findings.size()) &&
        askTheSame(findings[static_cast<std::size_t>(rows_[i].finding)], wanted))
      return static_cast<int>(i);
  return -1;
}

int AdviceModel::rowStandingFor(int finding) const {
  const auto& findings = session_.report().findings;
  if (finding < 0 || finding >= static_cast<int>(findings.size())) return -1;
  if (const int row = rowOfFinding(finding); row >= 0) return row;
  const auto group = groupFor(findings[static_cast<std::size_t>(finding)]);
  if (!group || onlyWished(findings[static_cast<std::size_t>(finding)])) return -1;
  for (int row = 0; row < rowCount(); ++row)
    if (isGroup(row) && groupOf(row) == *group) return row;
  return -1;
}

QVariant AdviceModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const int row = index.row();
  if (isGroup(row)) {
    const QString title = tr("%1: %2").arg(titleOf(groupOf(row))).arg(countOf(groupOf(row)));
    if (role == Qt::DisplayRole) return title;
    if (role == Qt::AccessibleTextRole)
      return isOpen(groupOf(row)) ? tr("%1, shown").arg(title) : tr("%1, folded").arg(title);
    return {};
  }
  if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
  const FindingText& text = textAt(row);
  const QString headline = QString::fromStdString(text.headline);
  if (role == Qt::DisplayRole) return headline;
  QStringList parts{QString::fromStdString(text.outcome), headline};
  if (numberAt(row) > 0) parts.prepend(QString::number(numberAt(row)));
  for (const std::string* part : {&text.needed, &text.by})
    if (!part->empty()) parts << QString::fromStdString(*part);
  const Finding* finding = findingOf(row);
  if (finding != nullptr && finding->changed) parts << tr("limit changed by you");
  if (finding != nullptr && !finding->acknowledged.empty())
    parts << tr("accepted: %1").arg(QString::fromStdString(finding->acknowledged));
  return parts.join(", ");
}

// What is asked about one thing stands together, so that a person states it in one go.
void AdviceModel::groupByThing(std::vector<Row>& rows) {
  std::map<ElementId, int> order;
  const auto thing = [](const Row& row) { return row.key.subjects.empty() ? ElementId{} : row.key.subjects.front(); };
  for (const Row& row : rows) order.emplace(thing(row), static_cast<int>(order.size()));
  std::stable_sort(rows.begin(), rows.end(),
                   [&](const Row& a, const Row& b) { return order.at(thing(a)) < order.at(thing(b)); });
}

std::vector<AdviceModel::Row> AdviceModel::wantedRows() {
  counts_ = {};
  failed_ = 0;
  std::array<std::vector<Row>, kAdviceGroups> groups;
  int number = 0;
  const auto& findings = session_.report().findings;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const Finding& f = findings[i];
    failed_ += f.outcome == Outcome::failed ? 1 : 0;
    if (isMarked(f)) ++number;
    const auto group = onlyWished(f) ? std::nullopt : groupFor(f);
    if (!group) continue;
    auto& rows = groups[static_cast<std::size_t>(*group)];
    const auto asked = *group != AdviceGroup::unknown
                           ? rows.end()
                           : std::find_if(rows.begin(), rows.end(), [&](const Row& row) {
                               return askTheSame(findings[static_cast<std::size_t>(row.finding)], f);
                             });
    if (asked != rows.end()) {
      ++asked->asking;
      continue;
    }
    ++counts_[static_cast<std::size_t>(*group)];
    Row row{{*group, f.rule, f.book, f.subjects, 0}, static_cast<int>(i), isMarked(f) ? number : 0};
    for (const Row& other : rows) {
      Key same = other.key;
      same.again = 0;
      if (same == Key{*group, f.rule, f.book, f.subjects, 0}) ++row.key.again;
    }
    rows.push_back(std::move(row));
  }
  groupByThing(groups[static_cast<std::size_t>(AdviceGroup::unknown)]);
  std::vector<Row> all;
  for (std::size_t g = 0; g < groups.size(); ++g) {
    if (groups[g].empty()) continue;
    all.push_back({{static_cast<AdviceGroup>(g), {}, {}, {}, 0}, -1, 0});
    if (open_[g]) std::move(groups[g].begin(), groups[g].end(), std::back_inserter(all));
  }
  return all;
}

void AdviceModel::refresh() {
  std::vector<Row> wanted = wantedRows();
  texts_.clear();
  const auto has = [](const std::vector<Row>& rows, const Key& key) {
    return std::any_of(rows.begin(), rows.end(), [&](const Row& r) { return r.key == key; });
  };
  for (int i = rowCount() - 1; i >= 0; --i) {
    if (has(wanted, rows_[static_cast<std::size_t>(i)].key)) continue;
    beginRemoveRows({}, i, i);
    rows_.erase(rows_.begin() + i);
    endRemoveRows();
  }
  for (int i = 0; i < static_cast<int>(wanted.size()); ++i) {
    Row& row = wanted[static_cast<std::size_t>(i)];
    int from = i;
    while (from < rowCount() && rows_[static_cast<std::size_t>(from)].key != row.key) ++from;
    if (from == rowCount()) {
      beginInsertRows({}, i, i);
      rows_.insert(rows_.begin() + i, row);
      endInsertRows();
    } else if (from != i) {
      beginMoveRows({}, from, from, {}, i);
      std::rotate(rows_.begin() + i, rows_.begin() + from, rows_.begin() + from + 1);
      endMoveRows();
    }
    rows_[static_cast<std::size_t>(i)] = row;
  }
  if (!rows_.empty()) emit dataChanged(index(0), index(rowCount() - 1));
}

void AdviceModel::setOpen(AdviceGroup group, bool open) {
  if (isOpen(group) == open) return;
  open_[static_cast<std::size_t>(group)] = open;
  refresh();
}

}  // namespace elbowroom::ui
