// Figures as the panels write them.
#pragma once

#include <QString>

#include "core/base/length_text.h"

namespace elbowroom::ui {

// A measured clearance never reads larger than it is: down to 1/16 in or 1 mm. Less than the 0.01 in that a
// search may stay below the truth is forgiven, so that exactly 60 in reads 5'-0".
QString roundedDown(Length measured, Unit unit);
QString lengthWords(Length length, Unit unit);
QString areaWords(Area area, Unit unit);
QString words(std::string_view text);
// The same text with its figures kept whole where a line breaks: "4 9/16"", "6.3 sq ft".
QString unbroken(QString text);

}  // namespace elbowroom::ui
