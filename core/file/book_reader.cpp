#include <algorithm>
#include <array>
#include <set>

#include "core/file/book_file.h"
#include "core/file/json_object.h"
#include "core/rules/checks/named.h"

namespace elbowroom {
namespace {

using checks::Gives;
using checks::NamedMeasure;

constexpr std::array kLevels{Level::required, Level::advised, Level::craft};
constexpr std::array kCompares{Compare::atLeast, Compare::atMost, Compare::between, Compare::isTrue};
constexpr std::array kGrades{Grade::verified, Grade::verifiedSecondHand, Grade::partial,
                             Grade::derived,  Grade::computed,           Grade::commonPractice,
                             Grade::memory};
constexpr std::array kMends{Mend::slide,       Mend::turn,     Mend::otherHand, Mend::otherSwing,
                            Mend::otherAction, Mend::narrower, Mend::wider,     Mend::swap,
                            Mend::raise,       Mend::lower,    Mend::state};

template <typename Words>
auto wordIn(const JsonValue& value, const Words& words) {
  const std::string said = value.text();
  std::string known;
  for (const auto word : words) {
    if (keyOf(word) == said) return word;
    known += (known.empty() ? "" : ", ") + std::string(keyOf(word));
  }
  failAt("value", value.place(), quotedJson(said) + " is not one of " + known + ".");
}

// Steps from one spelling to the other, to offer the name that was probably meant.
std::size_t stepsBetween(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t corner = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = corner + (a[i - 1] == b[j - 1] ? 0 : 1);
      corner = row[j];
      row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
    }
  }
  return row[b.size()];
}

std::string nearestMeasure(std::string_view name) {
  const auto all = checks::namedMeasures();
  const auto nearest = std::min_element(all.begin(), all.end(), [&](const NamedMeasure& a, const NamedMeasure& b) {
    return stepsBetween(a.name, name) < stepsBetween(b.name, name);
  });
  return std::string(nearest->name);
}

struct Figure {
  Quantity value;
  std::string unit;  // of an amount
};

// {"value": 24, "unit": "in"}; yes and no are true and false.
Figure figureOf(const JsonValue& value) {
  if (value.node().kind == JsonNode::Kind::boolean) return {value.truth(), {}};
  JsonObject from(value);
  const JsonValue number = from.need("value");
  const std::string unit = from.need("unit").text();
  if (const Extra rest = from.rest(); !rest.empty())
    failAt("unknown-key", from.place(), "the key \"" + rest.begin()->first + "\" is not known here.");
  if (unit == "in") return {number.length(Unit::inches), {}};
  if (unit == "mm") return {number.length(Unit::millimetres), {}};
  if (unit == "sq in") return {Area::fromSquareInches(number.amount().value()), {}};
  if (unit == "sq ft") return {Area::fromSquareInches(number.amount().value() * 144), {}};
  if (unit == "m2") return {Area::squareMicrometres(number.amount().thousandths * 1'000'000'000), {}};
  if (unit == "degrees") return {number.angle(), {}};
  if (unit == "count") return {Count{static_cast<int>(number.whole())}, {}};
  if (unit.empty()) failAt("text", from.place(), "the unit is empty.");
  return {number.amount(), unit};
}

bool isPositive(const Quantity& q) {
  return std::visit(
      [](const auto& v) {
        using T = std::decay_t<decltype(v)>;
        if constexpr (std::is_same_v<T, bool>) return true;
        else return v > T{};
      },
      q);
}

bool isId(std::string_view text) {
  const auto fine = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); };
  bool after = false;
  for (const char c : text) {
    if (!fine(c) && !(c == '-' && after)) return false;
    after = fine(c);
  }
  return after;
}

class BookReader {
 public:
  SharedBook read(const JsonNode& root, const std::string& file) {
    book_->file = file;
    JsonObject top(JsonValue(root, ""));
    readHead(top);
    Book& book = book_->book;
    book.id = id(top.need("id"));
    book.title = line(top.need("title"));
    book.authority = line(top.need("authority"));
    if (const auto note = top.find("note")) book.note = line(*note);
    if (const auto settings = top.find("settings"))
      for (const JsonValue& one : settings->items()) book.settings.push_back(setting(one));
    const JsonValue rules = top.need("rules");
    for (const JsonValue& one : rules.items()) book_->rules.push_back(named(one));
    if (book_->rules.empty()) failAt("missing-key", rules.place(), "the book has no rule.");
    onlyKnown(top);
    return book_;
  }

 private:
  static void readHead(JsonObject& top) {
    const JsonValue format = top.need("format");
    if (format.text() != kBookFormatName)
      failAt("format", format.place(), "this is no book of rules: the format is " + quotedJson(format.text()) + ".");
    const JsonValue version = top.need("version");
    const std::int64_t given = version.whole();
    if (given > kBookFormatVersion)
      failAt("version", version.place(), "the book was written for a newer version of Elbowroom.");
    if (given < 1) failAt("version", version.place(), "there is no version " + std::to_string(given) + ".");
  }

  // A mistyped key would silently be a rule without its limit.
  static void onlyKnown(const JsonObject& from) {
    for (const auto& [key, json] : from.rest())
      if (key != "comment") failAt("unknown-key", from.place(), "the key " + quotedJson(key) + " is not known here.");
  }

  std::string_view keep(std::string text) { return book_->text.emplace_back(std::move(text)); }

  std::string_view line(const JsonValue& value, bool may_be_empty = false) {
    const std::string text = value.text();
    if (!may_be_empty && text.find_first_not_of(' ') == std::string::npos)
      failAt("text", value.place(), "there is no text.");
    if (std::any_of(text.begin(), text.end(), [](unsigned char c) { return c < ' '; }))
      failAt("text", value.place(), "this must be one line.");
    return keep(text);
  }

  std::string_view id(const JsonValue& value) {
    const std::string text = value.text();
    if (!isId(text))
      failAt("text", value.place(), quotedJson(text) + " is no id: small letters, digits and single hyphens.");
    return keep(text);
  }

  Setting setting(const JsonValue& value) {
    JsonObject from(value);
    Setting out;
    out.key = id(from.need("key"));
    out.title = line(from.need("title"));
    for (const Setting& other : book_->book.settings)
      if (other.key == out.key) failAt("twice", from.place(), "the setting \"" + std::string(out.key) + "\" is there twice.");
    const JsonValue values = from.need("values");
    for (const JsonValue& one : values.items()) {
      JsonObject each(one);
      SettingValue of{id(each.need("value")), line(each.need("title"))};
      for (const SettingValue& other : out.values)
        if (other.value == of.value) failAt("twice", one.place(), "the value \"" + std::string(of.value) + "\" is there twice.");
      onlyKnown(each);
      out.values.push_back(of);
    }
    if (out.values.size() < 2) failAt("setting", values.place(), "a setting needs at least two values to choose from.");
    onlyKnown(from);
    return out;
  }

  // Whatever is wrong with a rule is said with its id.
  Rule named(const JsonValue& value) {
    try {
      return rule(value);
    } catch (ReadFailure& failure) {
      for (const auto& [key, node] : value.node().members)
        if (key == "id" && node.kind == JsonNode::Kind::text) {
          const std::string place = "at " + failure.error.place + ": ";
          if (failure.error.message.rfind(place, 0) == 0) failure.error.message.erase(0, place.size());
          failure.error.message = place + "rule " + quotedJson(node.text) + ": " + failure.error.message;
        }
      throw;
    }
  }

  Rule rule(const JsonValue& value) {
    JsonObject from(value);
    Rule out{};
    out.book = book_->book.id;
    out.id = id(from.need("id"));
    for (const Rule& other : book_->rules)
      if (other.id == out.id) failAt("twice", from.place(), "the book has this rule twice.");
    out.title = line(from.need("title"));
    out.level = wordIn(from.need("level"), kLevels);
    const NamedMeasure& named = measure(from.need("measure"));
    out.measure = named.measure;
    out.unit = keep(std::string(named.unit));
    sizes(from, named, out);
    compare(from, named, out);
    out.source = source(from.need("source"));
    const JsonValue grade = from.need("grade");
    out.grade = wordIn(grade, kGrades);
    checkSource(out.source, out.grade, grade.place());
    if (out.level == Level::required && out.grade == Grade::commonPractice)
      failAt("source", grade.place(), "common practice requires nothing; the level is \"craft\" or \"advised\".");
    out.why = line(from.need("why"));
    if (const auto mends = from.find("mends"))
      for (const JsonValue& one : mends->items()) out.mends.push_back(wordIn(one, kMends));
    if (const auto variants = from.find("variants"))
      for (const JsonValue& one : variants->items()) out.variants.push_back(variant(one, named, out));
    onlyKnown(from);
    return out;
  }

  static const NamedMeasure& measure(const JsonValue& value) {
    const std::string name = value.text();
    if (const NamedMeasure* named = checks::findMeasure(name)) return *named;
    failAt("measure", value.place(),
           "nothing measures " + quotedJson(name) + ". Did you mean \"" + nearestMeasure(name) +
               "\"? (elbowroom books --json lists all.)");
  }

  static void sizes(JsonObject& from, const NamedMeasure& named, Rule& out) {
    const auto given = from.find("sizes");
    if (given)
      for (const JsonValue& one : given->items()) {
        const Figure figure = figureOf(one);
        const auto* length = std::get_if<Length>(&figure.value);
        if (length == nullptr) failAt("measure", one.place(), "a size is a length.");
        out.sizes.push_back(*length);
      }
    const checks::SizeCount count = checks::sizesOf(named);
    if (out.sizes.size() >= count.least && out.sizes.size() <= count.most) return;
    failAt("measure", given ? given->place() : from.place(),
           named.sizes.empty()
               ? "the measure \"" + std::string(named.name) + "\" takes no sizes."
               : "the measure \"" + std::string(named.name) + "\" takes these sizes: " + std::string(named.sizes) + ".");
  }

  static Quantity limit(const JsonValue& value, const NamedMeasure& named) {
    const Figure figure = figureOf(value);
    const std::string what = "the measure \"" + std::string(named.name) + "\" gives " + std::string(wordsOf(named.gives));
    if (checks::kindOf(figure.value) != named.gives)
      failAt("limit", value.place(), what + ", but this is " + std::string(wordsOf(checks::kindOf(figure.value))) + ".");
    if (figure.unit != named.unit)
      failAt("limit", value.place(), what + " in " + std::string(named.unit) + ", not in " + figure.unit + ".");
    if (!isPositive(figure.value) && named.gives != Gives::count && named.gives != Gives::amount)
      failAt("limit", value.place(), "a limit of nothing asks for nothing.");
    return figure.value;
  }

  void compare(JsonObject& from, const NamedMeasure& named, Rule& out) {
    const JsonValue compare = from.need("compare");
    out.compare = wordIn(compare, kCompares);
    if ((out.compare == Compare::isTrue) != (named.gives == Gives::yesNo))
      failAt("compare", compare.place(),
             "the measure \"" + std::string(named.name) + "\" gives " + std::string(wordsOf(named.gives)) +
                 (named.gives == Gives::yesNo ? ", so the comparison is \"is\"." : ", so \"is\" does not suit it."));
    out.limit = limit(from.need("limit"), named);
    const auto high = from.find("limit_high");
    if (high.has_value() != (out.compare == Compare::between))
      failAt("compare", high ? high->place() : compare.place(),
             high ? "limit_high belongs to \"between\" only." : "\"between\" needs limit and limit_high.");
    if (high) {
      out.limit_high = limit(*high, named);
      if (*out.limit_high < out.limit) failAt("limit", high->place(), "limit_high is less than limit.");
    }
    for (const auto& [key, into] : {std::pair{"met", &out.met}, {"missed", &out.missed}}) {
      const auto words = from.find(key);
      if (words && out.compare != Compare::isTrue)
        failAt("compare", words->place(), "only a yes or no has such a sentence; this rule has a figure.");
      if (out.compare == Compare::isTrue) *into = line(words ? *words : from.need(key));
    }
  }

  Source source(const JsonValue& value) {
    JsonObject from(value);
    Source out;
    out.document = line(from.need("document"));
    if (const auto edition = from.find("edition")) out.edition = line(*edition, true);
    if (const auto section = from.find("section")) out.section = line(*section, true);
    if (const auto read_at = from.find("read_at")) out.read_at = line(*read_at, true);
    onlyKnown(from);
    return out;
  }

  static void checkSource(const Source& source, Grade grade, const std::string& place) {
    if (!source.read_at.empty()) return;
    if (grade == Grade::verified || grade == Grade::verifiedSecondHand)
      failAt("source", place, "a value that was read says where: read_at is missing.");
    if (grade == Grade::memory && !source.section.empty())
      failAt("source", place, "a section number from memory is left out, or read_at says where it was seen.");
  }

  Variant variant(const JsonValue& value, const NamedMeasure& named, const Rule& rule) {
    JsonObject from(value);
    const JsonValue key = from.need("setting"), chosen = from.need("value");
    Variant out{};
    out.setting = keep(key.text());
    out.value = keep(chosen.text());
    const auto& settings = book_->book.settings;
    const auto setting =
        std::find_if(settings.begin(), settings.end(), [&](const Setting& s) { return s.key == out.setting; });
    if (setting == settings.end())
      failAt("setting", key.place(), "the book has no setting " + quotedJson(out.setting) + ".");
    if (std::none_of(setting->values.begin(), setting->values.end(),
                     [&](const SettingValue& v) { return v.value == out.value; }))
      failAt("setting", chosen.place(),
             "the setting " + quotedJson(out.setting) + " has no value " + quotedJson(out.value) + ".");
    if (const auto off = from.find("off")) out.off = off->truth();
    if (const auto low = from.find("limit")) out.limit = limit(*low, named);
    if (const auto high = from.find("limit_high")) {
      if (rule.compare != Compare::between)
        failAt("compare", high->place(), "limit_high belongs to \"between\" only.");
      out.limit_high = limit(*high, named);
    }
    if (rule.limit_high && out.limit_high.value_or(*rule.limit_high) < out.limit.value_or(rule.limit))
      failAt("limit", from.place(), "limit_high is less than limit.");
    if (const auto text = from.find("source")) out.source = source(*text);
    if (const auto grade = from.find("grade")) out.grade = wordIn(*grade, kGrades);
    checkSource(out.source.value_or(rule.source), out.grade.value_or(rule.grade), from.place());
    onlyKnown(from);
    return out;
  }

  std::shared_ptr<AddedBook> book_ = std::make_shared<AddedBook>();
};

}  // namespace

Result<SharedBook> readBook(std::string_view text, const std::string& file) {
  const Result<JsonNode> tree = parseJson(text);
  if (!tree) return tree.error();
  try {
    return BookReader().read(*tree, file);
  } catch (const ReadFailure& failure) {
    return failure.error;
  }
}

}  // namespace elbowroom
