#include "core/rules/built_in.h"
#include "core/rules/rule.h"

// One line per rule: the book's namespace and the function in core/rules/books/<book>/<rule>.cpp.
#define ELBOWROOM_RULES(RULE)                    \
  RULE(us_residential, toiletCentrelineSide)     \
  RULE(us_residential, toiletClearFront)         \
  RULE(us_residential, fixtureCentreToCentre)    \
  RULE(us_residential, basinCentrelineSide)      \
  RULE(us_residential, basinEdgeSide)            \
  RULE(us_residential, basinClearFront)          \
  RULE(us_residential, basinSpacing)             \
  RULE(us_residential, bathClearFront)           \
  RULE(us_residential, showerSize)               \
  RULE(us_residential, showerArea)               \
  RULE(us_residential, showerClearFront)         \
  RULE(us_residential, doorSwingClash)           \
  RULE(us_residential, doorCrowdsFront)          \
  RULE(us_residential, ceilingHeight)            \
  RULE(us_uniform, toiletCentrelineSide)         \
  RULE(us_uniform, toiletClearFront)             \
  RULE(us_uniform, fixtureCentreToCentre)        \
  RULE(us_uniform, basinClearFront)              \
  RULE(us_uniform, showerSize)                   \
  RULE(us_uniform, showerArea)                   \
  RULE(us_access, toiletCentrelineSide)          \
  RULE(us_access, toiletClearance)               \
  RULE(us_access, doorClearOpening)              \
  RULE(us_access, turningSpace)                  \
  RULE(us_access, toiletClearanceStrict)         \
  RULE(us_access, toiletClearance1991)           \
  RULE(us_access, turningSpaceSmall)             \
  RULE(us_access, turningU)                      \
  RULE(us_access, doorManoeuvring)               \
  RULE(us_access, doorThreshold)                 \
  RULE(us_access, doorHandleHeight)              \
  RULE(us_access, basinClearFloor)               \
  RULE(us_access, basinKneeHeight)               \
  RULE(us_access, basinKneeDepth)                \
  RULE(us_access, basinToeDepth)                 \
  RULE(us_access, basinHeight)                   \
  RULE(us_access, basinPipesCovered)             \
  RULE(us_access, toiletSeatHeight)              \
  RULE(us_access, toiletFlushSide)               \
  RULE(us_access, toiletCompartmentWidth)        \
  RULE(us_access, toiletCompartmentDepth)        \
  RULE(us_access, bathClearFloor)                \
  RULE(us_access, showerTransferSize)            \
  RULE(us_access, showerRollInSize)              \
  RULE(us_access, showerAlternateDepth)          \
  RULE(us_access, showerAlternateLength)         \
  RULE(us_access, showerEntry)                   \
  RULE(us_access, showerTransferClearFloor)      \
  RULE(us_access, showerRollInClearFloor)        \
  RULE(us_access, showerThreshold)               \
  RULE(us_access, showerSeatHeight)              \
  RULE(us_access, showerHotWater)                \
  RULE(us_access, doorSwingClearFloor)           \
  RULE(us_access, doorSwingClearFloor1991)       \
  RULE(us_access_2017, turningSpace)             \
  RULE(us_access_2017, turningSpaceExisting)     \
  RULE(us_access_2017, toiletCentrelineSide)     \
  RULE(us_access_2017, toiletClearance)          \
  RULE(us_access_2017, toiletSeatHeight)         \
  RULE(us_access_2017, basinClearFloor)          \
  RULE(us_access_2017, basinHeight)              \
  RULE(us_access_2017, bathClearFloor)           \
  RULE(us_access_2017, showerTransferClearFloor) \
  RULE(us_access_2017, doorClearOpening)         \
  RULE(us_access_2017, doorManoeuvring)          \
  RULE(us_access_2017, doorManoeuvringExisting)  \
  RULE(us_access_2017, doorSwingClearFloor)      \
  RULE(us_adaptable, toiletSpace)                \
  RULE(us_adaptable, toiletNearSide)             \
  RULE(us_adaptable, basinClearFloor)            \
  RULE(us_adaptable, basinHeight)                \
  RULE(us_adaptable, bathClearFloor)             \
  RULE(us_adaptable, bathControlFloor)           \
  RULE(us_adaptable, bathFootFloor)              \
  RULE(us_adaptable, showerSize)                 \
  RULE(us_adaptable, showerClearFloor)           \
  RULE(us_adaptable, doorClearOpening)           \
  RULE(us_adaptable, toiletGrabSide)             \
  RULE(us_adaptable, toiletOtherSide)            \
  RULE(us_adaptable, basinCentrelineSide)        \
  RULE(us_adaptable, doorSwingClearFloor)        \
  RULE(ca_access, doorClearOpening)              \
  RULE(ca_access, roomSpan)                      \
  RULE(ca_access, turningSpace)                  \
  RULE(ca_access, toiletSeatHeight)              \
  RULE(ca_access, basinClearFloor)               \
  RULE(ca_access, toiletTransferSide)            \
  RULE(ca_access, toiletCentrelineSide)          \
  RULE(uk_access, doorClearOpening)              \
  RULE(uk_access, doorNib)                       \
  RULE(uk_access, doorSwingsOut)                 \
  RULE(uk_access, toiletClearFront)              \
  RULE(uk_access, toiletClearFrontWide)          \
  RULE(uk_access, toiletNearSide)                \
  RULE(uk_access, toiletAccessZone)              \
  RULE(uk_access, basinAccessZone)               \
  RULE(uk_access, bathAccessZone)                \
  RULE(uk_access, turningSpace)                  \
  RULE(uk_access, basinClearUnder)               \
  RULE(uk_access, roomSpan)                      \
  RULE(uk_access, toiletCentrelineSide)          \
  RULE(uk_access, toiletProjection)              \
  RULE(uk_access, toiletSeatHeight)              \
  RULE(de_access, toiletClearFloor)              \
  RULE(de_access, basinClearFloor)               \
  RULE(de_access, bathClearFloor)                \
  RULE(de_access, showerSize)                    \
  RULE(de_access, showerThreshold)               \
  RULE(de_access, doorClearOpening)              \
  RULE(de_access, doorHeight)                    \
  RULE(de_access, doorSwingsOut)                 \
  RULE(de_access, doorUnlocks)                   \
  RULE(de_access, toiletNearSide)                \
  RULE(de_access, toiletFarSide)                 \
  RULE(de_access, basinSideGap)                  \
  RULE(de_access, toiletSeatHeight)              \
  RULE(de_access, basinHeight)                   \
  RULE(au_access, toiletCirculation)             \
  RULE(au_access, toiletCirculationExisting)     \
  RULE(au_access, turningQuarter)                \
  RULE(au_access, turningHalf)                   \
  RULE(au_access, doorClearOpening)              \
  RULE(au_access, toiletProjection)              \
  RULE(au_access, toiletCentrelineSide)          \
  RULE(au_access, basinProjection)               \
  RULE(au_access, toiletClearFront)              \
  RULE(comfort, toiletCentrelineSide)            \
  RULE(comfort, toiletClearFront)                \
  RULE(comfort, basinCentrelineSide)             \
  RULE(comfort, basinClearFront)                 \
  RULE(comfort, basinSpacing)                    \
  RULE(comfort, bathClearFront)                  \
  RULE(comfort, showerSize)                      \
  RULE(comfort, showerClearFront)                \
  RULE(comfort, doorClearOpening)                \
  RULE(comfort, doorMeetsDoor)                   \
  RULE(comfort, doorMeetsPerson)                 \
  RULE(comfort, dressingCircle)                  \
  RULE(comfort, turningSpace)                    \
  RULE(comfort, toiletKnees)                     \
  RULE(comfort, toiletElbows)                    \
  RULE(comfort, basinBend)                       \
  RULE(comfort, bathKneel)                       \
  RULE(comfort, bathRimHeight)                   \
  RULE(comfort, basinPassBehind)                 \
  RULE(comfort, basinHelpChild)                  \
  RULE(comfort, toiletHelper)                    \
  RULE(comfort, basinHeightAdults)               \
  RULE(comfort, basinHeightChildren)             \
  RULE(comfort, basinHeightSeated)               \
  RULE(comfort, storageTopReach)                 \
  RULE(craft, fixtureOwnFloor)                   \
  RULE(craft, toiletClearFrontWide)              \
  RULE(craft, pocketNeedsWall)                   \
  RULE(craft, pocketMeetsPipes)                  \
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
