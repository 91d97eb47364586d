// Words of the text catalogue that are not figures: per rule and per detail key. Private to
// core/rules/text*.cpp.
#pragma once

#include <string>
#include <string_view>

namespace elbowroom::words {

// Sentences of a yes/no rule, for the outcome met and not met; empty when the rule has a figure.
struct YesNo {
  std::string_view met, missed;
};
YesNo yesNoOf(std::string_view rule_id);
// The extra sentence behind a detail key; empty for an unknown or empty key.
std::string_view detailOf(std::string_view key);
// The same for "key:words", with the words in the place of {}.
std::string detailWith(std::string_view detail);

}  // namespace elbowroom::words
