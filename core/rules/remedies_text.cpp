#include "core/rules/remedies_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

struct Verb {
  std::string_view now, trying;  // "Move", "Moving"
};

std::string_view sideOf(Hand hand) { return hand == Hand::left ? "left" : "right"; }

std::string doorWords(const Move& m, const std::string& who, bool trying) {
  const Opening& door = *m.door;
  const auto verb = [&](Verb v) { return trying ? v.trying : v.now; };
  const bool slides = door.action == DoorAction::pocket || door.action == DoorAction::surfaceSliding;
  if (m.way == Mend::otherHand && slides)
    return fmt::format("{} {} slide to the {}", verb({"Let", "Letting"}), who,
                       sideOf(door.toward.value_or(Hand::right)));
  if (m.way == Mend::otherHand)
    return fmt::format("{} {} on its {} side", verb({"Hang", "Hanging"}), who, sideOf(door.hinge));
  if (m.way == Mend::otherSwing)
    return fmt::format("{} {} swing {}, hinged {}", verb({"Let", "Letting"}), who,
                       door.swing == Swing::in ? "in" : "out", sideOf(door.hinge));
  std::string action;
  switch (door.action) {
    case DoorAction::pocket:
      action = fmt::format("a pocket door, into the wall to the {}", sideOf(door.toward.value_or(Hand::right)));
      break;
    case DoorAction::surfaceSliding:
      action = fmt::format("slide along the wall to the {}", sideOf(door.toward.value_or(Hand::right)));
      return fmt::format("{} {} {}", verb({"Let", "Letting"}), who, action);
    case DoorAction::bifold:
      action = "a bifold door";
      break;
    case DoorAction::doubleLeaf:
      action = "a double door";
      break;
    case DoorAction::hinged:
      action = "a hinged door";
      break;
    case DoorAction::cased:
      action = "a cased opening";
      break;
  }
  return fmt::format("{} {} {}", verb({"Make", "Making"}), who, action);
}

std::string sizeWords(const Move& m, const Option& option, Unit unit) {
  const Fixture* now = findFixture(option, m.moved);
  std::string text;
  if (now == nullptr || now->width != *m.width) text = quantityText(*m.width, unit) + " wide";
  if (now == nullptr || now->depth != *m.depth)
    text += fmt::format("{}{} deep", text.empty() ? "" : " and ", quantityText(*m.depth, unit));
  return text;
}

std::string wordsOf(const Move& m, const Option& option, Unit unit, bool trying) {
  const std::string who = subjectName(option, m.moved);
  const std::string by = quantityText(m.by, unit);
  const auto verb = [&](Verb v) { return trying ? v.trying : v.now; };
  switch (m.way) {
    case Mend::slide:
      if (m.other.empty()) return fmt::format("{} {} {}", verb({"Move", "Moving"}), who, by);
      return fmt::format("{} {} {} {} {}", verb({"Move", "Moving"}), who, by, m.away ? "away from" : "toward",
                         subjectName(option, m.other));
    case Mend::turn:
      if (m.other.empty())
        return fmt::format("{} {} by {:.0f}\u00b0", verb({"Turn", "Turning"}), who, m.turned.degrees());
      return fmt::format("{} {} against {}", verb({"Put", "Putting"}), who, subjectName(option, m.other));
    case Mend::otherHand:
    case Mend::otherSwing:
    case Mend::otherAction:
      return doorWords(m, who, trying);
    case Mend::narrower:
    case Mend::wider:
      if (m.door) {
        const std::string leaf =
            fmt::format("{} {} a {} leaf", verb({"Give", "Giving"}), who, quantityText(*m.width, unit));
        const Opening* now = findOpening(option, m.moved);
        if (now == nullptr || now->swing == m.door->swing) return leaf;
        return fmt::format("{} that swings {}", leaf, m.door->swing == Swing::in ? "in" : "out");
      }
      return fmt::format("{} {} {}", verb({"Make", "Making"}), who, sizeWords(m, option, unit));
    case Mend::swap:
      return fmt::format("{} {} and {}", verb({"Swap", "Swapping"}), who, subjectName(option, m.other));
    case Mend::raise:
    case Mend::lower: {
      const Verb v = m.way == Mend::raise ? Verb{"Raise", "Raising"} : Verb{"Lower", "Lowering"};
      std::string text = fmt::format("{} {} by {}", verb(v), who, by);
      if (m.up)
        text += fmt::format(", to {} {}", quantityText(*m.up, unit),
                            findFixture(option, m.moved) != nullptr ? "high" : "above the floor");
      return text;
    }
    case Mend::state:
      break;
  }
  return who;
}

std::string meansOf(const Remedy& r, const Option& option) {
  const Move& m = r.move;
  const bool size = m.way == Mend::narrower || m.way == Mend::wider;
  const bool opening = findOpening(option, m.moved) != nullptr;
  if (opening && (m.way == Mend::slide || size)) return "means changing the opening in the wall";
  if (opening && m.way == Mend::otherAction && m.door && m.door->action == DoorAction::pocket)
    return "means opening the wall";
  if (!r.kept) return {};
  if (size) return "means replacing what was to stay";
  const auto kept_with_drain = [&](const ElementId& id) {
    const Fixture* f = findFixture(option, id);
    return f != nullptr && f->status == Status::keep && hasDrain(f->kind);
  };
  if (m.way == Mend::raise || m.way == Mend::lower) return "means changing what was to stay";
  return kept_with_drain(m.moved) || kept_with_drain(m.other) ? "means moving the drain"
                                                             : "means moving what was to stay";
}

// What hangs on a wall and goes with the fixture.
std::string alongOf(const Remedy& r, const Option& option) {
  const auto* put = std::get_if<PutThings>(&r.change);
  if (put == nullptr || put->on_walls.empty() || put->fixtures.empty()) return {};
  const std::string first = subjectName(option, put->on_walls.front().id);
  const std::size_t more = put->on_walls.size() - 1;
  return more == 0 ? fmt::format("{} goes along", first) : fmt::format("{} and {} more go along", first, more);
}

std::string shortWords(const Finding& f, const Option& option, Unit unit) {
  const FindingText text = textOf(f, option, unit);
  return text.source.empty() ? text.headline : fmt::format("{} ({})", text.headline, text.source);
}

}  // namespace

RemedyText textOf(const Remedy& remedy, const Option& option, Unit unit) {
  RemedyText text;
  text.label = wordsOf(remedy.move, option, unit, false);
  if (remedy.then && remedy.then->measured && !std::holds_alternative<bool>(*remedy.then->measured)) {
    const FindingText then = textOf(*remedy.then, option, unit);
    text.then = fmt::format("then {}, needs {}", then.measured, then.needed);
  }
  text.means = meansOf(remedy, option);
  const std::string along = alongOf(remedy, option);
  if (!along.empty()) text.means += text.means.empty() ? along : ", " + along;
  for (const Finding& f : remedy.brings)
    text.brings += fmt::format("{}{}", text.brings.empty() ? "then short: " : "; ", textOf(f, option, unit).headline);
  for (const Finding& f : remedy.worsens)
    text.worsens += fmt::format("{}{}", text.worsens.empty() ? "short already, then worse: " : "; ",
                                textOf(f, option, unit).headline);
  return text;
}

std::string textOf(const Conflict& conflict, const Option& option, Unit unit) {
  const std::string trying = wordsOf(conflict.move, option, unit, true);
  if (conflict.reached) {
    const FindingText text = textOf(*conflict.reached, option, unit);
    return fmt::format("{} gives {} only, needs {}", trying, text.measured, text.needed);
  }
  std::vector<std::string> reasons;
  for (const Finding& f : conflict.breaks)
    if (reasons.size() < 2) reasons.push_back(shortWords(f, option, unit));
  std::string all = trying;
  if (!reasons.empty()) all += " would leave " + reasons.front();
  if (reasons.size() > 1) all += "; and " + reasons.back();
  if (!conflict.meets.empty())
    all += fmt::format("{}would meet {}", reasons.empty() ? " " : ", and ", subjectName(option, conflict.meets.front()));
  return all;
}

}  // namespace elbowroom
