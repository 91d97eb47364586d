#include "core/rules/text_words.h"

#include <array>

namespace elbowroom::words {

namespace {

struct YesNoEntry {
  std::string_view rule;
  YesNo sentences;
};
constexpr std::array kYesNo{
    YesNoEntry{"shower-door-outward", {"its door opens outward", "its door opens inward"}},
    YesNoEntry{"shower-curb-there", {"has a curb", "has no curb"}},
    YesNoEntry{"shower-head-entry",
               {"the head does not spray at the entry", "the head sprays straight at the entry"}},
    YesNoEntry{"fan-outdoors", {"its duct ends outdoors", "its duct does not end outdoors"}},
    YesNoEntry{"window-safety-glass", {"safety glass near water", "plain glass near water"}},
    YesNoEntry{"window-safety-glass-facing", {"safety glass facing water", "plain glass facing water"}},
    YesNoEntry{"shower-glass", {"its glass is safety glass", "its glass is no safety glass"}},
    YesNoEntry{"window-not-blocked", {"nothing tall stands before it", "stands before the window"}},
    YesNoEntry{"pipes-frost", {"its pipes are protected from frost", "pipes in an exterior wall, not protected from frost"}},
    YesNoEntry{"dwelling-fixtures",
               {"has a toilet, a basin and a bath or shower", "lacks a toilet, a basin or a bath or shower"}},
    YesNoEntry{"heater-fuel",
               {"takes no air from the room to burn", "burns fuel with air from the room"}},
    YesNoEntry{"door-meets-door", {"the leaves do not meet", "the leaves meet as they open"}},
    YesNoEntry{"door-meets-person",
               {"opens without touching a person who stands there", "swings into a person who stands there"}},
    YesNoEntry{"fixture-own-floor", {"each fixture has its floor to itself", "stands where something else stands"}},
    YesNoEntry{"pocket-meets-pipes",
               {"no pipes in the pocket's wall", "the pocket runs into a wall with pipes"}},
    YesNoEntry{"turning-space-small",
               {"a clear space of 30 by 60 inches is there", "no clear space of 30 by 60 inches"}},
    YesNoEntry{"turning-u", {"a U-turn of 78 by 60 inches fits", "no space for a U-turn of 78 by 60 inches"}},
    YesNoEntry{"turning-quarter", {"a quarter turn of 1500 by 1500 mm fits", "no space for a quarter turn"}},
    YesNoEntry{"turning-half", {"turning round in 2070 by 1540 mm fits", "no space to turn round"}},
    YesNoEntry{"door-swing-clear-floor",
               {"leaves the floor that is needed free", "swings over the floor that is needed before it"}},
    YesNoEntry{"door-swing-clear-floor-1991",
               {"leaves the floor that is needed free", "swings over the floor that is needed before it"}},
    YesNoEntry{"basin-pipes-covered", {"the pipes under it are covered", "the pipes under it are bare"}},
    YesNoEntry{"toilet-flush-side", {"the flush is on the open side", "the flush is on the side of the wall"}},
    YesNoEntry{"door-swings-out", {"opens outward", "swings into the room"}},
    YesNoEntry{"door-unlocks", {"unlocks from outside", "cannot be unlocked from outside"}},
    YesNoEntry{"door-meets-sitter",
               {"opens without touching the knees of one who sits there", "swings into the knees of one who sits there"}},
    YesNoEntry{"shower-door-outward", {"its door opens outward", "its door opens inward"}},
    YesNoEntry{"door-unlocks-outside",
               {"can be unlocked from outside", "cannot be unlocked from outside in an emergency"}},
    YesNoEntry{"door-shuts-tight", {"shuts the opening tight", "leaves a gap for sound, light and steam"}},
    YesNoEntry{"door-stock-width", {"its leaf is in stock", "its leaf has to be made to order"}},
    YesNoEntry{"pocket-meets-boxes",
               {"nothing is set into the wall of the pocket", "what is set into the wall stands in the pocket"}},
    YesNoEntry{"pocket-load", {"the wall of the pocket carries no load", "the wall of the pocket carries load"}},
};

struct DetailEntry {
  std::string_view key, sentence;
};
constexpr std::array kDetails{
    DetailEntry{"nearer-if-no-place", "It is nearer than that, which is enough where no place farther off is practicable."},
    DetailEntry{"nearer-on-gfci", "It is nearer than that, which is enough where a GFCI protects it."},
    DetailEntry{"receptor-may-do",
                "Where it takes the place of a bath, a receptor of 30 by 60 inches overall is enough: state "
                "that it does."},
    DetailEntry{"receptor-instead-of-bath",
                "It takes the place of a bath, so its receptor is measured, overall, and not the inside."},
    DetailEntry{"head-not-placed", "No shower head is placed. Put one on its wall and this is checked."},
    DetailEntry{"receptacle-not-placed", "No receptacle is placed. Put one on its wall and this is checked."},
    DetailEntry{"bowl-taken-15",
                "The width of the basin is not stated; taken as 15 inches, the smallest usual size."},
    DetailEntry{
        "bowl-taken-widest",
        "The width of the basin is not stated; it is too far even from one as wide as the counter allows."},
    DetailEntry{"farthest-wall",
                "The room is smaller than the zone; the basin's receptacle may be on the farthest wall."},
    DetailEntry{"barrier-between", "A wall or fixed glass stands between, so the zone does not reach it."},
    DetailEntry{"glass-height-not-stated",
                "The plan does not say how high the fixed glass is, and that decides."},
    DetailEntry{"seat-side-not-stated",
                "The plan does not say along which side the seat runs, and that decides."},
    DetailEntry{"fan-runs-always", "A fan that runs all the time may move less air (20 cfm)."},
    DetailEntry{"outlet-above-intake",
                "Nearer than that, but high enough above the intake, which is as good."},
    DetailEntry{"no-window-no-fan",
                "The plan has neither a window nor a fan. Add what there is and this is checked."},
    DetailEntry{"no-more-glass-than-opening", "The glass is not stated; taken as large as the whole window."},
    DetailEntry{"basins-not-stated",
                "The plan does not say how many basins this vanity has. State it and this is checked."},
    DetailEntry{"ceiling-not-stated", "The plan does not state the ceiling height. Measure it and enter it."},
    DetailEntry{"clearest-30", "Measured over the clearest 30 inches of the open side."},
    DetailEntry{"clearest-22",
                "Measured over the clearest 22 inches of the front, the narrowest entry allowed."},
    DetailEntry{"turning-by-t",
                "The circle does not fit, but the T-shaped turning space does; either is enough."},
    DetailEntry{
        "turning-by-t-knees",
        "The circle does not fit, but the T-shaped turning space does, with one of its ends over the free "
        "space for knees and toes; either is enough."},
    DetailEntry{"way-at-least", "At least so wide: a way of this width is free, and a wider one may be."},
    DetailEntry{"way-between", "Narrowest between {}."},
    DetailEntry{"way-narrow-once", "Narrower at one place only, and for so short a stretch that it may be."},
    DetailEntry{"turning-in-doorway", "The circle reaches between the jambs of the door, which swings out."},
    DetailEntry{"knee-space-used",
                "The circle reaches into the free space for knees and toes under a fixture."},
    DetailEntry{"large-shower",
                "The shower is large enough that a smaller width is allowed (1300 square inches)."},
    DetailEntry{
        "basin-beside-toilet",
        "A basin with knee space may stand beside the toilet in a home when the space is 66 inches deep."},
    DetailEntry{
        "basins-as-far-apart-as-allowed",
        "Taken as far apart as the sides allow, with basins 15 inches across, the smallest usual size."},
    DetailEntry{"alcove", "Shut in at both sides for so long that the wider space is asked for."},
    DetailEntry{"knee-space-counted", "The free space for knees and toes under it counts."},
    DetailEntry{"cabinet-taken-out", "Counted with the cabinet under it taken out, as deep as the toes must find room then."},
    DetailEntry{"basin-head-on", "Measured head on, with knees under the basin."},
    DetailEntry{"bath-head-on", "Measured for coming head on to the bath."},
    DetailEntry{"vanity-beside-toilet",
                "A vanity up to 24 inches deep may reach in when 33 inches stay free."},
    DetailEntry{"control-end-not-stated",
                "The plan does not say at which end its control is. Put the control on the wall."},
    DetailEntry{"control-wall-not-stated",
                "The plan does not say where its control is; taken on the side that suits better."},
    DetailEntry{"floor-beyond-door",
                "It swings over the floor before a fixture, and a place to wait is free beyond the swing."},
    DetailEntry{"door-from-latch-side",
                "Measured for coming along the wall from the latch side, inside the room only."},
    DetailEntry{"door-from-hinge-side",
                "Measured for coming along the wall from the hinge side, inside the room only."},
    DetailEntry{"door-along-wall", "Measured for coming along the wall, inside the room only."},
    DetailEntry{"door-from-front", "Measured for coming straight at the door, inside the room only."},
    DetailEntry{"fits", "Measured for {}."},
    DetailEntry{"fits-not", "Does not suit {}."},
    DetailEntry{"step-for", "A step as high as what is missing lets {} use it."},
    DetailEntry{"helper-for", "Somebody may have to help {}."},
    DetailEntry{"for-tall-man", "The plan names nobody; measured for a tall man (95 of 100 are smaller)."},
    DetailEntry{"for-median-woman",
                "The plan names nobody; measured for a woman of medium height (64 inches)."},
    DetailEntry{"pull-at-most",
                "No drawer as deep as the cabinet and no door as wide as it reaches farther."},
    DetailEntry{"moisture-left", "About {} % of the moisture in the air is left when it stops."},
    DetailEntry{"speed-under-door", "The fan draws its air through that gap at about {} feet a minute."},
    DetailEntry{"fan-quiet-always", "A fan that runs all the time has to be quieter (1 sone)."},
    DetailEntry{"drain-in-middle", "Taken with the drain in the middle and a level rim."},
    DetailEntry{"step-bevel", "Beveled, 1/4 inch upright and the rest at 1:2, it takes a run of {}."},
    DetailEntry{"step-ramp", "As a ramp at 1:12 it takes a run of {}."},
    DetailEntry{"no-lamp", "The plan has no light. Add what there is and this is checked."},
    DetailEntry{"over-counter", "One reaches across a counter to it, so 44 inches are the most."},
    DetailEntry{"head-flow-usual", "The head's flow is not stated; taken as 2.5 gallons a minute."},
    DetailEntry{"wish-missing",
                "You want it. Put it into the plan, or leave it out with a reason (Wish list)."},
    DetailEntry{"wish-not-stated", "You want it, and the plan does not say whether it is there."},
    DetailEntry{"wish-undecided", "Not decided yet: in or out, with a reason (Wish list)."},
    DetailEntry{"wish-out", "Left out by you: {}"},
    DetailEntry{"wish-out-yet-there", "Left out by you, yet the plan shows it: {}"},
    DetailEntry{"for-anybody", "The plan names nobody; measured for an adult of medium height."},
};

}  // namespace

YesNo yesNoOf(std::string_view rule_id) {
  for (const YesNoEntry& entry : kYesNo)
    if (entry.rule == rule_id) return entry.sentences;
  return {};
}

std::string_view detailOf(std::string_view key) {
  for (const DetailEntry& entry : kDetails)
    if (entry.key == key) return entry.sentence;
  return {};
}

std::string detailWith(std::string_view detail) {
  const std::size_t colon = detail.find(':');
  std::string sentence(detailOf(detail.substr(0, colon)));
  if (const std::size_t at = sentence.find("{}"); colon != std::string_view::npos && at != std::string::npos)
    sentence.replace(at, 2, detail.substr(colon + 1));
  return sentence;
}

}  // namespace elbowroom::words
