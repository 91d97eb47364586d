// Figures as the panels write them.
#pragma once

#include <QString>

#include "core/base/length_text.h"

namespace elbowroom::ui {

// A measured clearance never reads larger than it is: down to 1/16 in or 1 mm, as core/rules rounds it in texts.
QString roundedDown(Length measured, Unit unit);
QString lengthWords(Length length, Unit unit);
QString areaWords(Area area, Unit unit);
QString words(std::string_view text);
// The same text with its figures kept whole where a line breaks: "4 9/16"", "6.3 sq ft".
QString unbroken(QString text);

}  // namespace elbowroom::ui
