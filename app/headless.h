// The verbs that need no display (design.md section 4). Answers go to stdout, sentences about trouble to
// stderr.
#pragma once

#include "app/options.h"

namespace elbowroom {

// Exit status of the program: 0, 1 (something short at level required: check, compare), 2 (usage, or a file
// that cannot be read or written), 3 (our own error). Never throws. Precondition: the verb is not
// Verb::window.
int runHeadless(const Options&);

}  // namespace elbowroom
