#include "core/plan/wall_catalogue.h"

namespace elbowroom {

using namespace literals;

WallItem typicalWallItem(std::string_view kind, const Option& forIds) {
  WallItem item;
  item.kind = kind;
  const WallKindInfo* info = findWallKind(kind);
  item.id = freshId(forIds, std::string(info ? info->id_stem : "item"));
  item.width = info ? info->width : 6_in;
  item.height = info ? info->height : 6_in;
  item.bottom = info ? info->bottom : 42_in;
  return item;
}

CeilingItem typicalCeilingItem(std::string_view kind, const Option& forIds) {
  CeilingItem item;
  item.kind = kind;
  const CeilingKindInfo* info = findCeilingKind(kind);
  item.id = freshId(forIds, std::string(info ? info->id_stem : "item"));
  return item;
}

bool is(const WallItem& item, WallUse use) {
  const WallKindInfo* info = findWallKind(item.kind);
  return info && info->use == use;
}

bool isRecessed(const WallItem& item) {
  const WallKindInfo* info = findWallKind(item.kind);
  return info && info->recessed && !yesNo(item.facts, "surface_mounted").value_or(false);
}

Length depthOf(const WallItem& item) {
  if (item.depth) return *item.depth;
  const WallKindInfo* info = findWallKind(item.kind);
  return info ? info->depth : Length{};
}

Length boxUp(const WallItem& item) { return lengthOf(item.facts, "box_up").value_or(item.height / 2); }

std::string labelOf(const WallItem& item) {
  const WallKindInfo* info = findWallKind(item.kind);
  if (info) return std::string(info->label);
  return item.kind.empty() ? "Thing on the wall" : item.kind;
}

std::string labelOf(const CeilingItem& item) {
  const CeilingKindInfo* info = findCeilingKind(item.kind);
  if (info) return std::string(info->label);
  return item.kind.empty() ? "Thing on the ceiling" : item.kind;
}

}  // namespace elbowroom
