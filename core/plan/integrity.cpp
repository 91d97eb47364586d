#include "core/plan/integrity.h"

#include <algorithm>
#include <set>

#include "core/geometry/measure.h"
#include "core/plan/wall_line.h"

namespace elbowroom {
namespace {

using namespace literals;
using Found = std::optional<Error>;

constexpr Length kFarthest = Length::nanometres(100'000'000'000);  // 100 m
constexpr Length kTallest = Length::nanometres(3'000'000'000);     // 3 m
constexpr Length kShortestWall = Length::nanometres(25'400'000);   // 1 in
// The length of a slanted wall is rounded; an opening may not seem to leave it by that.
constexpr Length kRounding = Length::nanometres(1'000);
constexpr int kMostBasins = 8;

Error broken(const std::string& code, std::string message, std::string place) {
  return {"integrity/" + code, std::move(message), std::move(place)};
}

std::string entry(const std::string& list, const char* name, std::size_t index) {
  return list + "/" + name + "/" + std::to_string(index);
}

// Collects the first length that breaks a bound; the order of calls is the order of reporting.
class Figures {
 public:
  Figures(std::string what, std::string place) : what_(std::move(what)), place_(std::move(place)) {}

  Figures& within(Length v) {
    if (!found_ && abs(v) > kFarthest)
      found_ = broken("too-far", "The " + what_ + " has a figure of more than 100 m.", place_);
    return *this;
  }
  Figures& within(Point p) { return within(p.x).within(p.y); }
  Figures& positive(const char* name, Length v) {
    within(v);
    if (!found_ && v <= Length{}) size("must have a " + std::string(name) + " of more than zero");
    return *this;
  }
  Figures& positive(const char* name, const std::optional<Length>& v) {
    return v ? positive(name, *v) : *this;
  }
  Figures& notNegative(const char* name, Length v) {
    within(v);
    if (!found_ && v < Length{}) size("cannot have a " + std::string(name) + " below zero");
    return *this;
  }
  Figures& notNegative(const char* name, const std::optional<Length>& v) {
    return v ? notNegative(name, *v) : *this;
  }
  Figures& size(const std::string& says) {
    if (!found_) found_ = broken("size", "The " + what_ + " " + says + ".", place_);
    return *this;
  }
  Found found() const { return found_; }

 private:
  std::string what_, place_;
  Found found_;
};

Found person(const Person& p, const std::string& place) {
  if (p.stature <= Length{} || p.stature > kTallest)
    return broken("stature", "A person's stature must be more than zero and at most 3 m (9'-10\").", place);
  if (!p.chair) return std::nullopt;
  return Figures("wheelchair", place)
      .positive("width", p.chair->width)
      .positive("length", p.chair->length)
      .found();
}

class Ids {
 public:
  Found add(const ElementId& id, const std::string& place) {
    if (id.empty()) return broken("empty-id", "Something in the plan has no id.", place);
    if (seen_.insert(id.text).second) return std::nullopt;
    return broken("duplicate-id", "The id \"" + id.text + "\" is used twice.", place);
  }

 private:
  std::set<std::string> seen_;
};

Found ids(const Option& option, const std::string& place) {
  Ids seen;
  Found found;
  const auto add = [&](const auto& elements, const char* name) {
    for (std::size_t i = 0; i < elements.size() && !found; ++i)
      found = seen.add(elements[i].id, entry(place, name, i));
  };
  add(option.room.walls, "room/walls");
  add(option.openings, "openings");
  add(option.fixtures, "fixtures");
  add(option.on_walls, "on_walls");
  add(option.on_ceiling, "on_ceiling");
  return found;
}

Found wallFigures(const Wall& wall, const std::string& place) {
  Figures f("wall", place);
  f.within(wall.from).positive("thickness", wall.thickness);
  if (wall.studs) f.within(wall.studs->first).positive("stud spacing", wall.studs->spacing);
  return f.found();
}

Found openingFigures(const Opening& o, const std::string& place) {
  return Figures(wordFor(o), place)
      .within(o.along)
      .positive("width", o.width)
      .positive("height", o.height)
      .notNegative("sill height", o.sill)
      .positive("thickness", o.leaf_thickness)
      .notNegative("stop", o.stop)
      .found();
}

Found fixtureFigures(const Fixture& x, const std::string& place) {
  Figures f(wordFor(x), place);
  if (const auto* on = std::get_if<OnWall>(&x.placement)) f.within(on->along).within(on->gap);
  if (const auto* free = std::get_if<Standing>(&x.placement)) f.within(free->at);
  f.positive("width", x.width).positive("depth", x.depth).positive("height", x.height);
  f.positive("bowl width", x.bowl_width)
      .positive("tank width", x.tank_width)
      .positive("tank depth", x.tank_depth);
  f.notNegative("curb", x.curb);
  for (const Pane& pane : x.glass) f.positive("glass height", pane.height).positive("glass door", pane.door);
  if (x.knee_space) {
    f.positive("knee space height", x.knee_space->height).positive("knee space depth", x.knee_space->depth);
    f.notNegative("toe space", x.knee_space->toe);
  }
  if (x.bowl_width && *x.bowl_width > x.width) f.size("cannot have a bowl wider than itself");
  if (x.tank_width && *x.tank_width > x.width) f.size("cannot have a tank wider than itself");
  if (x.tank_depth && *x.tank_depth >= x.depth) f.size("cannot have a tank as deep as itself");
  if (f.found()) return f.found();
  if (x.basins && (*x.basins < 1 || *x.basins > kMostBasins))
    return broken("basins", "The " + wordFor(x) + " must have between 1 and 8 basins.", place);
  return std::nullopt;
}

// A receptacle or a bar may be stated by its place alone, so a zero size is allowed here.
Found itemFigures(const WallItem& item, const std::string& place) {
  return Figures(wordFor(item), place)
      .within(item.along)
      .within(item.bottom)
      .notNegative("width", item.width)
      .notNegative("height", item.height)
      .notNegative("depth", item.depth)
      .found();
}

Found figures(const Option& option, const std::string& place) {
  Found found =
      Figures("ceiling", place + "/room/ceiling").positive("height", option.room.ceiling.height).found();
  const auto each = [&](const auto& elements, const char* name, auto check) {
    for (std::size_t i = 0; i < elements.size() && !found; ++i)
      found = check(elements[i], entry(place, name, i));
  };
  each(option.room.walls, "room/walls", wallFigures);
  each(option.openings, "openings", openingFigures);
  each(option.fixtures, "fixtures", fixtureFigures);
  each(option.on_walls, "on_walls", itemFigures);
  each(option.on_ceiling, "on_ceiling", [](const CeilingItem& item, const std::string& at) {
    return Figures(item.kind.empty() ? "thing on the ceiling" : item.kind, at).within(item.at).found();
  });
  return found;
}

Found walls(const Option& option, const std::string& place, Unit unit) {
  const std::size_t count = option.room.walls.size();
  if (count == 0) return std::nullopt;
  const std::string list = place + "/room/walls";
  if (count < 3) return broken("few-walls", "A room needs at least three walls.", list);
  for (std::size_t i = 0; i < count; ++i)
    if (wallLine(option, i).length < kShortestWall)
      return broken("wall-too-short", "A wall must be at least 1 in (25.4 mm) long.",
                    list + "/" + std::to_string(i));
  const Outline ring = roomOutline(option.room);
  if (const std::optional<Point> at = selfCrossing(ring))
    return broken("walls-cross",
                  "Two walls of the room cross or touch each other at " + lengthText(at->x, unit) +
                      " to the right and " + lengthText(at->y, unit) + " up.",
                  list);
  if (signedAreaOf(ring) > Area{})
    return broken("wall-turns-wrong",
                  "The walls must run clockwise seen from above; these run the other way.", list);
  return std::nullopt;
}

// Vertical extents that are not stated may be anywhere, so they count as meeting.
bool meetInHeight(const Opening& a, const Opening& b) {
  const auto low = [](const Opening& o) {
    return o.kind == OpeningKind::door ? Length{} : o.sill.value_or(Length{});
  };
  const auto stated = [](const Opening& o) { return o.kind == OpeningKind::door || o.sill; };
  if (!stated(a) || !stated(b)) return true;
  return low(a) < low(b) + b.height && low(b) < low(a) + a.height;
}

Found openings(const Option& option, const std::string& place) {
  const std::vector<Opening>& all = option.openings;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Opening& o = all[i];
    const std::string at = entry(place, "openings", i);
    const std::optional<WallLine> wall = wallLine(option, o.wall);
    if (!wall)
      return broken("no-such-wall",
                    "A " + wordFor(o) + " is in the wall \"" + o.wall.text + "\", which does not exist.", at);
    if (o.width > wall->length + kRounding)
      return broken("opening-too-long", "A " + wordFor(o) + " is wider than its wall.", at);
    const Length twice_left = o.along * 2 - o.width, twice_right = o.along * 2 + o.width;
    if (twice_left < -kRounding * 2 || twice_right > (wall->length + kRounding) * 2)
      return broken("opening-off-wall", "A " + wordFor(o) + " reaches past the end of its wall.", at);
    for (std::size_t j = 0; j < i; ++j) {
      const Opening& other = all[j];
      if (other.wall != o.wall || !meetInHeight(o, other)) continue;
      if (abs(o.along - other.along) * 2 + kRounding * 2 < o.width + other.width)
        return broken("openings-overlap", "A " + wordFor(o) + " overlaps another opening of its wall.", at);
    }
  }
  return std::nullopt;
}

Found elementsOnWalls(const Option& option, const std::string& place) {
  const auto missing = [&](const ElementId& wall, const std::string& word, const std::string& at) -> Found {
    if (findWall(option, wall)) return std::nullopt;
    return broken("no-such-wall",
                  "A " + word + " is on the wall \"" + wall.text + "\", which does not exist.", at);
  };
  for (std::size_t i = 0; i < option.fixtures.size(); ++i)
    if (const auto* on = std::get_if<OnWall>(&option.fixtures[i].placement))
      if (Found found = missing(on->wall, wordFor(option.fixtures[i]), entry(place, "fixtures", i)))
        return found;
  for (std::size_t i = 0; i < option.on_walls.size(); ++i)
    if (Found found =
            missing(option.on_walls[i].wall, wordFor(option.on_walls[i]), entry(place, "on_walls", i)))
      return found;
  return std::nullopt;
}

Found ceiling(const Option& option, const std::string& place) {
  const Ceiling& c = option.room.ceiling;
  for (std::size_t i = 0; i < c.slopes.size(); ++i) {
    const CeilingSlope& slope = c.slopes[i];
    const std::string at = entry(place, "room/ceiling/slopes", i);
    if (!findWall(option, slope.wall))
      return broken("no-such-wall",
                    "The ceiling falls toward the wall \"" + slope.wall.text + "\", which does not exist.", at);
    if (!c.height) return broken("slope", "A sloped ceiling needs a height for its highest part.", at);
    if (Found found = Figures("sloped ceiling", at).notNegative("height", slope.low).positive("run", slope.run).found())
      return found;
    if (slope.low >= *c.height)
      return broken("slope", "A sloped ceiling must be lower at its wall than the ceiling's height.", at);
  }
  return std::nullopt;
}

Found reasons(const Option& option, const std::string& place) {
  for (std::size_t i = 0; i < option.acknowledged.size(); ++i)
    if (option.acknowledged[i].reason.empty())
      return broken("reason", "An acknowledged finding needs a reason.", entry(place, "acknowledged", i));
  for (const auto& [key, wish] : option.wishes)
    if (!wish.in && wish.reason.empty())
      return broken("reason", "A wish that is left out needs a reason.", place + "/wishes/" + key);
  return std::nullopt;
}

Found options(const Plan& plan) {
  std::set<std::string> names;
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    const Option& option = plan.options[i];
    const std::string place = "/options/" + std::to_string(i);
    if (option.name.empty()) return broken("option-name", "An option needs a name.", place + "/name");
    if (!names.insert(option.name).second)
      return broken("option-name", "Two options have the same name, \"" + option.name + "\".",
                    place + "/name");
    for (const auto check : {ids, figures})
      if (Found found = check(option, place)) return found;
    if (Found found = walls(option, place, plan.unit)) return found;
    for (const auto check : {openings, elementsOnWalls, ceiling, reasons})
      if (Found found = check(option, place)) return found;
  }
  return std::nullopt;
}

}  // namespace

std::optional<Error> integrity(const Plan& plan) {
  if (plan.options.empty()) return broken("no-option", "A plan needs at least one option.", "/options");
  if (Found found =
          Figures("site tolerance", "/site_tolerance").notNegative("value", plan.site_tolerance).found())
    return found;
  for (std::size_t i = 0; i < plan.rule_changes.size(); ++i)
    if (plan.rule_changes[i].reason.empty())
      return broken("reason", "A changed rule needs a reason.", entry("", "rule_changes", i));
  for (std::size_t i = 0; i < plan.people.size(); ++i)
    if (Found found = person(plan.people[i], entry("", "people", i))) return found;
  return options(plan);
}

}  // namespace elbowroom
