#include "core/rules/rule.h"

namespace elbowroom {

std::string_view wordsOf(Grade grade) {
  switch (grade) {
    case Grade::verified:
      return "read in the document or an authorised reprint of it";
    case Grade::verifiedSecondHand:
      return "read in text quoted by others, not in the document itself";
    case Grade::partial:
      return "only a part of the wording was read; commonly required";
    case Grade::derived:
      return "follows from the named figures by geometry";
    case Grade::computed:
      return "computed from public measurements";
    case Grade::commonPractice:
      return "common practice of the trade, no published source";
    case Grade::memory:
      return "from memory, not checked; commonly required";
  }
  return {};
}

std::string_view keyOf(Grade grade) {
  switch (grade) {
    case Grade::verified:
      return "verified";
    case Grade::verifiedSecondHand:
      return "verified-second-hand";
    case Grade::partial:
      return "partial";
    case Grade::derived:
      return "derived";
    case Grade::computed:
      return "computed";
    case Grade::commonPractice:
      return "common-practice";
    case Grade::memory:
      return "memory";
  }
  return {};
}

std::string_view keyOf(Level level) {
  switch (level) {
    case Level::required:
      return "required";
    case Level::advised:
      return "advised";
    case Level::craft:
      return "craft";
  }
  return {};
}

std::string_view keyOf(Outcome outcome) {
  switch (outcome) {
    case Outcome::clear:
      return "clear";
    case Outcome::close:
      return "close";
    case Outcome::shortfall:
      return "short";
    case Outcome::unknown:
      return "unknown";
    case Outcome::notApplicable:
      return "not-applicable";
    case Outcome::failed:
      return "failed";
  }
  return {};
}

std::string_view keyOf(Compare compare) {
  switch (compare) {
    case Compare::atLeast:
      return ">=";
    case Compare::atMost:
      return "<=";
    case Compare::between:
      return "between";
    case Compare::isTrue:
      return "is";
  }
  return {};
}

std::string_view keyOf(Mend mend) {
  switch (mend) {
    case Mend::slide:
      return "slide";
    case Mend::turn:
      return "turn";
    case Mend::otherHand:
      return "other-hand";
    case Mend::otherSwing:
      return "other-swing";
    case Mend::otherAction:
      return "other-action";
    case Mend::narrower:
      return "narrower";
    case Mend::wider:
      return "wider";
    case Mend::swap:
      return "swap";
    case Mend::raise:
      return "raise";
    case Mend::lower:
      return "lower";
    case Mend::state:
      return "state";
  }
  return {};
}

}  // namespace elbowroom
