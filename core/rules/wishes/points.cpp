#include "core/rules/wishes/looks.h"

namespace elbowroom {
namespace {

using enum Wished;

constexpr std::string_view kGuidelines =
    "Bathroom planning guidelines of the US kitchen and bath trade association";
constexpr Source kPractice{"Common practice, no source", "", "", "not read anywhere; practice of the trades"};
constexpr std::string_view kShower = "Shower and bath", kBasin = "Basin and mirror", kToilet = "Toilet",
                           kRoom = "Room and door";
constexpr std::string_view kNoWater = "No shower or bath in the plan", kNoBasin = "No basin in the plan",
                           kNoDoor = "No door in the plan";

// In the order of Wished.
constexpr std::array<WishPoint, kWishCount> kPoints{{
    {controlAway,
     "control-away",
     kShower,
     "Control away from the head",
     "The water can be turned on and set without standing in the cold first gush.",
     "A control of a shower or bath that is worked without an arm in the water of its head.",
     kNoWater,
     {kGuidelines, "2012 revision", "Guideline 10",
      "nkba.com guidelines page 10: reachable from inside and outside the "
      "spray; the band of the spray by geometry, its angles assumed"},
     Grade::verifiedSecondHand},
    {handSpray,
     "hand-spray",
     kShower,
     "Hand spray",
     "Hair, a child, a dog, a seated person and the walls are all rinsed more easily with the spray in the "
     "hand.",
     "A hand spray on a wall.",
     kNoWater,
     {kGuidelines, "2012 revision", "Guideline 10",
      "design standards booklet p. 52: a head usable fixed or in the hand"},
     Grade::verifiedSecondHand},
    {niche, "niche", kShower, "Niche for bottles",
     "Bottles that have no place stand on the rim or the floor, and somebody steps on them.",
     "A niche on a wall.", kNoWater, kPractice, Grade::commonPractice},
    {glassBelowCeiling, "glass-below-ceiling", kShower, "Glass not up to the ceiling",
     "A gap above the glass lets the steam out, so that the shower dries.",
     "Every pane of the shower ends below the ceiling.", "No shower with glass in the plan", kPractice,
     Grade::commonPractice},
    {curbless, "curbless", kShower, "Shower without a curb",
     "Nobody stumbles over it, a walker or a chair rolls in, and the floor has to be lowered before it is "
     "tiled.",
     "A shower with a curb of 0.", "No shower in the plan", kPractice, Grade::commonPractice},
    {bathToLeanOver,
     "bath-to-lean-over",
     kShower,
     "Bath a parent can lean over",
     "Over a rim higher than the hip of one who kneels no child can be washed with ease.",
     "A bath whose rim is no higher than the hip of the shortest adult named who kneels, else 16 in.",
     "No bath in the plan",
     {"Body sizes of the US Army survey ANSUR II", "2012", "",
      "hip of an adult who kneels, 0.238 of the stature (5 % 14.3, 95 % 17.8 in), derived from the public "
      "data"},
     Grade::derived},
    {doubleReceptacles, "double-receptacles", kBasin, "Two basins, a receptacle at each",
     "Two people can get ready at a time, each with a dryer or a shaver at hand.",
     "Two basins on one counter or wall with a receptacle outside of each, within 36 in.", kNoBasin,
     kPractice, Grade::commonPractice},
    {toeSpace, "toe-space", kBasin, "Deeper toe space",
     "With more than the usual 3 in under the vanity big feet do not push one away from the mirror.",
     "A vanity with a toe space deeper than 3 in, or one that hangs on the wall.", "No vanity in the plan",
     kPractice, Grade::commonPractice},
    {fullMirror,
     "full-mirror",
     kBasin,
     "Full mirror",
     "From the counter to the ceiling or from wall to wall it serves children and seated people and makes "
     "the room "
     "look larger.",
     "A mirror from the counter to the ceiling, or from wall to wall.",
     kNoBasin,
     {kGuidelines, "2012 revision", "Guideline 23",
      "planning textbook, page on mirrors: to the counter, full height advised"},
     Grade::verifiedSecondHand},
    {sideLights,
     "side-lights",
     kBasin,
     "Lights beside the mirror",
     "Light from both sides leaves no shadow on the face, and their boxes must be in the wall before it "
     "closes.",
     "An upright light or a light box to each side of a basin, at most 60 in apart.",
     kNoBasin,
     {kGuidelines, "2012 revision", "Guideline 25",
      "design standards booklet p. 69: beside the mirror at eye level"},
     Grade::verifiedSecondHand},
    {makeupMirror, "makeup-mirror", kBasin, "Make-up mirror",
     "A lit one at somebody's own eyes wants its wire in the wall before it closes.",
     "A make-up mirror on a wall.", "No room is drawn", kPractice, Grade::commonPractice},
    {toiletReceptacle,
     "toilet-receptacle",
     kToilet,
     "Receptacle at the toilet",
     "A washing or heated seat needs one within the reach of its cord, and adding it later opens the wall.",
     "A receptacle within 36 in of a toilet.",
     "No toilet in the plan",
     {"Trade articles on washing seats", "", "",
      "engineerfix.com on outlets for a bidet; bidetwise.com on electric seats: "
      "cords of 3 to 4 ft"},
     Grade::verifiedSecondHand},
    {naturalLight, "natural-light", kRoom, "Natural light",
     "A window or a light tube saves the lamp by day and makes a small room pleasant.",
     "A window, or a light tube in the ceiling.", "No room is drawn", kPractice, Grade::commonPractice},
    {backing,
     "backing",
     kRoom,
     "Backing for later bars",
     "Bars can be put up when somebody needs them, without opening a tiled wall.",
     "Where bars may come at toilets, baths and showers: a wall backed all over with plywood of at least 3/4 in, or "
     "a bar with blocking behind it.",
     "No place for a bar at a toilet, bath or shower",
     {kGuidelines, "2012 revision", "Guideline 14",
      "planning textbook, page on the access panel: reinforcing the whole wall "
      "is advised"},
     Grade::verifiedSecondHand},
    {slidingDoor, "sliding-door", kRoom, "Sliding door",
     "A leaf that slides into or along the wall takes no floor, inside or outside.",
     "A pocket door or one that slides along the wall.", kNoDoor, kPractice, Grade::commonPractice},
    {timerSwitch,
     "timer-switch",
     kRoom,
     "Timer or humidity switch",
     "The fan runs on for the 20 minutes that the room takes to dry, and nobody has to think of it.",
     "A timer switch or a humidity switch on a wall.",
     "No room is drawn",
     {"Home ventilation guidance", "", "", "ahahome.org on selecting bathroom ventilation: 20 min after use"},
     Grade::verifiedSecondHand},
    {wideDoor,
     "wide-door",
     kRoom,
     "Wide door",
     "Furniture, a walker, a chair or somebody who carries a child gets through.",
     "A door with a clear opening of at least 32 in.",
     kNoDoor,
     {kGuidelines, "2012 revision", "Guideline 1",
      "saniterra.pt rule 1; civilsnapshot.com/bathroom-doorway-details"},
     Grade::verifiedSecondHand},
    {wheelchairReady,
     "wheelchair-ready",
     kRoom,
     "Ready for a wheelchair",
     "A broken leg, a visitor or one's own later years find a room that works.",
     "A door of 32 in clear, a turning space of 60 in (circle or T) and a way 36 in wide from the first door "
     "to every "
     "toilet, basin, bath and shower.",
     "No door, or nothing to reach, in the plan",
     {"2010 ADA Standards", "", "304.3, 403.5.1 and 404.2.3",
      "ada.gov text of the standards; they do not bind a house"},
     Grade::verified},
}};

constexpr bool inOrder() {
  for (std::size_t i = 0; i < kPoints.size(); ++i)
    if (static_cast<std::size_t>(kPoints[i].wished) != i) return false;
  return true;
}
static_assert(inOrder());

}  // namespace

std::span<const WishPoint> wishPoints() { return kPoints; }

const WishPoint* findWish(std::string_view key) {
  for (const WishPoint& point : kPoints)
    if (point.key == key) return &point;
  return nullptr;
}

namespace wishes {

Sight look(const CheckInput& in, Wished wished) {
  using Look = Sight (*)(const CheckInput&);
  static constexpr std::array<Look, kWishCount> kLooks{
      wishes::controlAway,       wishes::handSpray,    wishes::niche,
      wishes::glassBelowCeiling, wishes::curbless,     wishes::bathToLeanOver,
      wishes::doubleReceptacles, wishes::toeSpace,     wishes::fullMirror,
      wishes::sideLights,        wishes::makeupMirror, wishes::toiletReceptacle,
      wishes::naturalLight,      wishes::backing,      wishes::slidingDoor,
      wishes::timerSwitch,       wishes::wideDoor,     wishes::wheelchairReady};
  return kLooks.at(static_cast<std::size_t>(wished))(in);
}

}  // namespace wishes
}  // namespace elbowroom
