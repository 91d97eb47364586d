// The Wish list on paper, for the contractor: what is in and whether the plan has it, what is out and why,
// what is still to be decided.
#pragma once

#include "core/drawing/page.h"

namespace elbowroom {

// Empty until the person has answered at least one point of the option: who does not use the list gets no
// page of it.
std::vector<PageContent> wishPages(const Layout& layout, const Report& report, Paper paper);

}  // namespace elbowroom
