// Mirror orders, beside the other works; what they say is geometry of the plan and also feeds rules.
#pragma once

#include "core/plan/mirror_order.h"
