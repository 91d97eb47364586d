// A rule's limit as a person types and reads it.
#pragma once

#include <QString>

#include "core/base/length_text.h"
#include "core/rules/in_force.h"

namespace elbowroom::ui {

// A yes or no has no limit to change.
bool hasLimitToChange(const Rule&);
// The figure alone, as the field shows it: 21", 900, 90.
QString limitFigure(const Quantity&, Unit);
// What stands behind the field: "sq in", "cfm", "°"; empty for lengths, which carry their unit.
QString limitUnit(const Rule&, Unit);
// Reads what was typed as a limit of the rule's kind. Error: one sentence.
Result<Quantity> readLimit(const QString& text, const Rule&, Unit);

// The limit the plan's books and their settings bring, and the person's own for it; empty: not changed.
QString bookLimitWords(const BookChoice&, const Rule&, Unit);
QString ownLimitWords(const BookChoice&, const Rule&, Unit);

}  // namespace elbowroom::ui
