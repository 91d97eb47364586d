#include "core/people/body.h"

#include <algorithm>

namespace elbowroom {

namespace {
using namespace literals;

constexpr Length kChairReach = 48_in, kChairRim = 34_in, kChairToes = 6_in;
constexpr Length kSeatedLow = 43_in, kSeatedHigh = 51_in;
}  // namespace

HeightBand eyesOf(const Person& person) {
  if (person.chair) return {kSeatedLow, kSeatedHigh};
  // A child's head is nearly of adult size, so the adult ratio would put the eyes too high.
  const Length eye = person.child ? person.stature - 4.3_in : person.stature.scaled(0.935);
  return {eye, eye};
}

Length elbowHeight(const Person& person) { return person.stature.scaled(0.617); }
Length shoulderHeight(const Person& person) { return person.stature.scaled(0.820); }
Length reachUp(const Person& person) { return person.chair ? kChairReach : person.stature.scaled(1.286); }
Length kneelingHip(const Person& person) { return person.stature.scaled(0.238); }

HeightBand workingHeight(const Person& person) {
  if (person.chair) return {Length{}, kChairRim};
  const Length elbow = elbowHeight(person);
  return {elbow - 4_in, elbow - 2_in};
}

Length stepFor(const Person& person, Length counter) {
  return std::max(Length{}, counter - workingHeight(person).high);
}

Length reachAhead(const Person& person) { return person.stature.scaled(0.461); }
Length kneesBeforeBack(const Person& person) { return person.stature.scaled(0.352); }
Length elbowBreadth(const Person& person) {
  return person.chair ? person.chair->width : 26.3_in;
}
Length kneelingDepth(const Person& person) { return person.stature.scaled(0.352); }
Length kneelingDepthToesTucked(const Person& person) { return person.stature.scaled(0.277); }
Length bendingDepth(const Person& person) {
  return person.chair ? person.chair->length : 20_in;
}

Length toesAhead() { return kChairToes; }

Length standingDepth() { return 18_in; }
Length standingWidth() { return 26.3_in; }
Length passingDepth() { return 30_in; }
Length kneelingWidth() { return 30_in; }

namespace {
Person ofStature(Length stature) {
  Person p;
  p.stature = stature;
  return p;
}
}  // namespace

Person medianWoman() { return ofStature(64_in); }
Person tallMan() { return ofStature(73.6_in); }
Chair usualChair() { return {26_in, 48_in, {}}; }

std::vector<Person> withChair(std::vector<Person> people, const std::string& name) {
  const auto seated = [](const Person& p) { return p.chair.has_value(); };
  const auto named = [&](const Person& p) { return p.name == name; };
  if (std::any_of(people.begin(), people.end(), seated)) {
    std::erase_if(people, [&](const Person& p) { return seated(p) && named(p); });
    for (Person& p : people) p.chair.reset();
    return people;
  }
  auto who = std::find_if(people.begin(), people.end(), named);
  if (who == people.end()) {
    who = people.insert(people.end(), ofStature(66_in));
    who->name = name;
  }
  who->chair = usualChair();
  return people;
}

std::string namesOf(const std::vector<const Person*>& people) {
  std::string names;
  for (std::size_t i = 0; i < people.size(); ++i) {
    if (i > 0) names += i + 1 == people.size() ? " and " : ", ";
    names += people[i]->name;
  }
  return names;
}

}  // namespace elbowroom
