#include "core/rules/built_in.h"
#include "core/rules/rule.h"

// One line per rule: the book's namespace and the function in core/rules/books/<book>/<rule>.cpp.
#define ELBOWROOM_RULES(RULE)                  \
  RULE(us_residential, toiletCentrelineSide)   \
  RULE(us_residential, toiletClearFront)       \
  RULE(us_residential, fixtureCentreToCentre)  \
  RULE(us_residential, basinCentrelineSide)    \
  RULE(us_residential, basinEdgeSide)          \
  RULE(us_residential, basinClearFront)        \
  RULE(us_residential, basinSpacing)           \
  RULE(us_residential, bathClearFront)         \
  RULE(us_residential, showerSize)             \
  RULE(us_residential, showerArea)             \
  RULE(us_residential, showerClearFront)       \
  RULE(us_residential, doorSwingClash)         \
  RULE(us_residential, doorCrowdsFront)        \
  RULE(us_residential, ceilingHeight)          \
  RULE(us_uniform, toiletCentrelineSide)       \
  RULE(us_uniform, toiletClearFront)           \
  RULE(us_uniform, fixtureCentreToCentre)      \
  RULE(us_uniform, basinClearFront)            \
  RULE(us_uniform, showerSize)                 \
  RULE(us_uniform, showerArea)                 \
  RULE(us_access, toiletCentrelineSide)        \
  RULE(us_access, toiletClearance)             \
  RULE(us_access, doorClearOpening)            \
  RULE(us_access, turningSpace)                \
  RULE(comfort, toiletCentrelineSide)          \
  RULE(comfort, toiletClearFront)              \
  RULE(comfort, basinCentrelineSide)           \
  RULE(comfort, basinClearFront)               \
  RULE(comfort, basinSpacing)                  \
  RULE(comfort, bathClearFront)                \
  RULE(comfort, showerSize)                    \
  RULE(comfort, showerClearFront)              \
  RULE(comfort, doorClearOpening)              \
  RULE(comfort, doorMeetsDoor)                 \
  RULE(comfort, doorMeetsPerson)               \
  RULE(comfort, dressingCircle)                \
  RULE(comfort, turningSpace)                  \
  RULE(comfort, toiletKnees)                   \
  RULE(comfort, toiletElbows)                  \
  RULE(comfort, basinBend)                     \
  RULE(comfort, bathKneel)                     \
  RULE(comfort, bathRimHeight)                 \
  RULE(comfort, basinPassBehind)               \
  RULE(comfort, basinHelpChild)                \
  RULE(comfort, toiletHelper)                  \
  RULE(comfort, basinHeightAdults)             \
  RULE(comfort, basinHeightChildren)           \
  RULE(comfort, basinHeightSeated)             \
  RULE(comfort, storageTopReach)               \
  RULE(craft, fixtureOwnFloor)                 \
  RULE(craft, toiletClearFrontWide)            \
  RULE(craft, pocketNeedsWall)                 \
  RULE(craft, pocketMeetsPipes)                \
  RULE(craft, slideNeedsWall)

namespace elbowroom {

#define ELBOWROOM_DECLARE(book, rule) \
  namespace book {                    \
  Rule rule();                        \
  }
ELBOWROOM_RULES(ELBOWROOM_DECLARE)

std::vector<Rule> builtInRules() {
#define ELBOWROOM_CALL(book, rule) book::rule(),
  return {ELBOWROOM_RULES(ELBOWROOM_CALL)};
}

}  // namespace elbowroom
