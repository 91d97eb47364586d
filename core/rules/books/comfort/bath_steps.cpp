#include "core/rules/checks/baths.h"

namespace elbowroom::comfort {

using namespace literals;

Rule bathSteps() {
  return {
      .id = "bath-steps",
      .book = "comfort",
      .title = "what steps there are to it",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::bathSteps,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 17",
                 .read_at = "design-standards booklet page 60 and guideline 17 at jfjm100.com: no steps, "
                            "and with steps a rail; near enough taken as the thumb-tip reach of a small "
                            "woman, 26.6 in (ANSUR II)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Wet feet on a step with nothing to hold are how people fall.",
      .sizes = {26.6_in},
      .mends = {Mend::state},
      .met = "no steps, or a bar to hold beside them",
      .missed = "steps lead up to it and there is no bar to hold",
  };
}

}  // namespace elbowroom::comfort
