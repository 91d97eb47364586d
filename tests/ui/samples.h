// The sample plans that come with the program.
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/file/plan_file.h"

namespace elbowroom::ui {

inline Plan sample(const std::string& name) {
  const auto read = loadPlan(std::string(SOURCE_DIR "/samples/") + name + ".elbowroom");
  EXPECT_TRUE(read.ok()) << name;
  return read.ok() ? *read : Plan{};
}

}  // namespace elbowroom::ui
