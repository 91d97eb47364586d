// The column beside the plan: north, scale bar, figures, legend, findings in short.
#pragma once

#include <set>

#include "core/drawing/page.h"

namespace elbowroom {

DisplayList drawPlanColumn(const Layout&, const Report&, const Field& column, const std::optional<Scale>&,
                           const std::set<Role>& used);
DisplayList drawFindingsColumn(const Layout&, const Report&, const Field& column, const std::optional<Scale>&,
                               const std::set<Role>& used);

}  // namespace elbowroom
