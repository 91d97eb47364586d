// Body sizes and the floor people take, from a person's stature. Ratios: ANSUR II (US Army 2012, 4,082 men and
// 1,986 women, barefoot), computed from its public data unless a line says otherwise; S is the stature.
// Children: statures are the person's own figure; what grows with stature is taken at the adult ratio unless a
// line gives the child's own rule. A wheelchair user's sizes: 1991 ADA Standards A4.2.4 and Figure A3.
#pragma once

#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace elbowroom {

// ---- heights
struct HeightBand {
  Length low, high;
};
// Where somebody's eyes may be. Standing one height: adults 0.935 S, computed; children S - 4.3 in, derived estimate.
// In a wheelchair 43 to 51 in (1991 ADA Standards A4.2.4 and Figure A3), whatever the stature.
HeightBand eyesOf(const Person&);
Length elbowHeight(const Person&);     // 0.617 S, computed; of children a derived estimate
Length shoulderHeight(const Person&);  // 0.820 S, computed
Length reachUp(const Person&);         // overhead fingertip, 1.286 S standing, computed; 48 in from a wheelchair
Length kneelingHip(const Person&);     // 0.238 S, computed: a rim no higher can be leaned over
// The counter one works at with ease: 2 to 4 in below the elbow (ergonomics course, studyres.com 8656229, read
// second hand). From a wheelchair: rim at most 34 in (A117.1 606.3 as quoted with guideline 7); low is then 0.
HeightBand workingHeight(const Person&);
// The step that brings a person's working height up to a counter (worked example T18); 0 when none is needed.
Length stepFor(const Person&, Length counter);

// ---- reach and floor
Length reachAhead(const Person&);      // wall behind to thumb tip, 0.461 S, computed
// How far the knees of a person who sits back stand before the back of the seat: buttock to knee, 0.352 S.
// From memory: the table of body sizes has no such row.
Length kneesBeforeBack(const Person&);
Length elbowBreadth(const Person&);    // 26.3 in, 95 % man, computed: breadth does not follow stature;
                                       // a wheelchair's stated width
Length kneelingDepth(const Person&);   // feet flat, 0.352 S, computed by a model (shank and 3/4 of the foot)
Length kneelingDepthToesTucked(const Person&);  // 0.277 S, computed
Length bendingDepth(const Person&);    // 20 in to wash the face (supplyht.com article 92491); a wheelchair's
                                       // stated length, which goes to the toes
// Floor a person takes standing at a basin: 18 in deep (washing hands), elbow to elbow wide.
Length standingDepth();  // 18 in, supplyht.com article 92491
Length standingWidth();  // 26.3 in, 95 % man
Length passingDepth();   // 30 in to pass behind that person, same article
Length kneelingWidth();  // 30 in, derived: 95 % elbow breadth and a margin

// ---- who
inline bool kneels(const Person& p) { return !p.child && !p.chair; }
// Stand-ins where a plan names nobody: the table's median woman (S 64.0 in) and 95 % man (S 73.6 in).
Person medianWoman();
Person tallMan();
Chair usualChair();  // 26 x 48 in: 42 in and 6 in of toes (1991 ADA Standards A4.2.4 and Figure A3), where nobody
                     // measured one
Length toesAhead();  // 6 in: so far before the knees the toes are (same figure)
// The people with somebody in a usual wheelchair among them: the one of this name, else a new person, 66 in tall. Where
// somebody uses one already, without: such a person of this name goes, the others stay and their chairs go.
std::vector<Person> withChair(std::vector<Person> people, const std::string& name);
std::string namesOf(const std::vector<const Person*>&);  // "Ada", "Ada and Ben", "Ada, Ben and Cy"

}  // namespace elbowroom
