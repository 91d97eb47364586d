#include "core/rules/checks/lights.h"

namespace elbowroom::comfort {

using namespace literals;

Rule lightAtFixture() {
  return {
      .id = "light-at-fixture",
      .book = "comfort",
      .title = "light of its own",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::lightsAtFixtures,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 25",
                 .read_at = "design-standards booklet page 69: task light at each activity; taken as a "
                            "lamp over it or over the 30 in before it, or at most 30 in to its side "
                            "(side lights stand at most 60 in apart)"},
      .grade = Grade::derived,
      .why = "A lamp behind one's back leaves in shadow what one does.",
      .sizes = {30_in, 30_in},
      .met = "has a light",
      .missed = "has no light near it",
  };
}

}  // namespace elbowroom::comfort
