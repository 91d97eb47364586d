// What the program brings with it, before anybody adds a book. Private to core/rules.
#pragma once

#include <vector>

#include "core/rules/rule.h"

namespace elbowroom {

std::vector<Book> builtInBooks();  // core/rules/books.cpp
std::vector<Rule> builtInRules();  // core/rules/registry.cpp

}  // namespace elbowroom
