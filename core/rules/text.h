// The only place where findings and figures become words. English; one catalogue, keyed, so it can be translated.
#pragma once

#include <string>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom {

struct FindingText {
  std::string headline;   // "Toilet: clear floor in front is 19 1/2\", needs 21\""
  std::string measured;   // "19 1/2\""  (rounded against the person when short, in text only)
  std::string needed;     // "at least 21\""
  std::string by;         // "short by 1 1/2\"" / "1/4\" to spare" / ""
  std::string why;
  std::string source;     // "IRC 2009, P2705.1(5)"; "common practice, no source"; ends with "; limit changed by
                          // you: REASON" where that is so
  std::string grade;      // how the value was checked
  std::string outcome;    // "Short", "Close", "Clear", "Not stated", ...
  std::string detail;
  std::string edition;    // the book's setting whose figures were used: "Edition: 2020"; may be empty
  std::string accepted;   // "Accepted by you: REASON"; may be empty
};
// `option` supplies names of the subjects.
FindingText textOf(const Finding&, const Option& option, Unit unit);
std::string quantityText(const Quantity&, Unit unit);
std::string subjectName(const Option&, const ElementId&);  // "Toilet", "Door d1", "Wall n", the person's own name
std::string troubleText(const Trouble&, const Option&, Unit unit);

// What the person has changed about rules of the plan's books, one line each with its reason: "Comfort, clear floor in
// front: limit 24\" instead of 30\" (guests)".
std::vector<std::string> changeLines(const Plan&);

// The caution of design.md section 8, whole.
std::vector<std::string> cautionLines();

}  // namespace elbowroom
