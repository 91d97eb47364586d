// JSON answers of the headless verbs (design.md section 4). Lengths in inches as decimals, whatever the unit.
#pragma once

#include <string>

#include "core/rules/check.h"

namespace elbowroom {

std::string checkJson(const Layout&, const Report&, const std::string& plan_name);
std::string measureJson(const Layout&, const Figures&, const std::vector<RouteFigure>&,
                        const std::optional<Placed>& t);
std::string compareJson(const Plan&, const BookChoice&);
// Of these books (ids; empty: all), and the measures there are.
std::string booksJson(const std::vector<std::string>& only = {});
// The same for a person to read, ending with the caution lines.
std::string checkText(const Layout&, const Report&, const std::string& plan_name);
std::string measureText(const Layout&, const Figures&, const std::vector<RouteFigure>&,
                        const std::optional<Placed>& t);
std::string compareText(const Plan&, const BookChoice&);
std::string booksText(const std::vector<std::string>& only = {});

}  // namespace elbowroom
