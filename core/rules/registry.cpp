#include <algorithm>

#include "core/rules/rule.h"

// One line per rule: the book's namespace and the function in core/rules/books/<book>/<rule>.cpp.
#define ELBOWROOM_RULES(RULE)                    \
  RULE(us_residential, toiletCentrelineSide)     \
  RULE(us_residential, toiletClearFront)         \
  RULE(us_residential, basinCentrelineSide)      \
  RULE(us_residential, basinClearFront)          \
  RULE(us_residential, bathClearFront)           \
  RULE(us_residential, showerClearFront)         \
  RULE(comfort, toiletCentrelineSide)            \
  RULE(comfort, toiletClearFront)                \
  RULE(comfort, basinCentrelineSide)             \
  RULE(comfort, basinClearFront)

namespace elbowroom {

#define ELBOWROOM_DECLARE(book, rule) \
  namespace book {                    \
  Rule rule();                        \
  }
ELBOWROOM_RULES(ELBOWROOM_DECLARE)

std::span<const Rule> allRules() {
#define ELBOWROOM_CALL(book, rule) book::rule(),
  static const std::vector<Rule> rules{ELBOWROOM_RULES(ELBOWROOM_CALL)};
  return rules;
}

const Rule* findRule(std::string_view book, std::string_view id) {
  const auto rules = allRules();
  const auto at =
      std::find_if(rules.begin(), rules.end(), [&](const Rule& r) { return r.book == book && r.id == id; });
  return at == rules.end() ? nullptr : &*at;
}

}  // namespace elbowroom
