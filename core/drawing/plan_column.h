// The column beside the plan: north, scale bar, figures, legend, findings in short.
#pragma once

#include <set>

#include "core/drawing/page.h"

namespace elbowroom {

DisplayList drawColumn(const Layout&, const Report&, const Field& column, const std::optional<Scale>&,
                       const std::set<Role>& used, std::size_t sheets_before_findings);

}  // namespace elbowroom
