// What is on a wall in words: the numbered list beside its elevation.
#pragma once

#include "core/drawing/page.h"

namespace elbowroom {

struct KeyEntry {
  int number = 0;
  ElementId id;
  std::string title;                // "Mirror m"
  std::vector<std::string> lines;  // size, height, distances, what to know
};
// Openings, fixtures and things on the wall, each from the left, numbered from 1.
std::vector<KeyEntry> keyOfWall(const Layout&, std::size_t wall);
// What a wall is made of, as far as the plan states it: "6 1/2\" thick, exterior, studs at 16\"".
std::string wallWords(const Layout&, std::size_t wall);

// The numbers beside the things they stand for, clear of what is drawn; in the elevation's figures.
DisplayList drawNumbers(const Layout&, std::size_t wall, const std::vector<KeyEntry>&,
                        const DisplayList& drawn, const DrawStyle&);
// Names of fixtures that stand at another wall and show their side on this one.
DisplayList drawSideNames(const Layout&, std::size_t wall, const DisplayList& drawn, const DrawStyle&);

}  // namespace elbowroom
