#include <algorithm>
#include <cmath>

#include "core/drawing/display_list.h"
#include "core/drawing/text_table.h"

namespace elbowroom {
namespace {

// Next code point of UTF-8 text; a broken byte counts as one unknown character.
std::uint32_t nextCode(const std::string& text, std::size_t& i) {
  const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
  const unsigned char first = byte(i++);
  if (first < 0x80) return first;
  const int more = first >= 0xf0 ? 3 : first >= 0xe0 ? 2 : first >= 0xc0 ? 1 : 0;
  std::uint32_t code = more == 3 ? first & 0x07 : more == 2 ? first & 0x0f : first & 0x1f;
  if (more == 0) return '?';
  for (int k = 0; k < more; ++k) {
    if (i >= text.size() || (byte(i) & 0xc0) != 0x80) return '?';
    code = code << 6 | (byte(i++) & 0x3f);
  }
  return code;
}

int advanceOf(std::uint32_t code, bool bold) {
  const auto latin = latinAdvances(bold);
  if (code >= 0x20 && code - 0x20 < latin.size()) return latin[code - 0x20];
  const auto others = otherAdvances();
  const auto it = std::lower_bound(others.begin(), others.end(), code,
                                   [](const Advance& a, std::uint32_t c) { return a.code < c; });
  if (it != others.end() && it->code == code) return bold ? it->bold : it->regular;
  return 2048;  // not in the table: a full em, so that room is kept rather than lost
}

}  // namespace

Length textWidth(const std::string& text, Length height, bool bold) {
  std::int64_t units = 0;
  for (std::size_t i = 0; i < text.size();) units += advanceOf(nextCode(text, i), bold);
  return height.scaled(static_cast<double>(units) / 2048.0);
}

std::vector<std::string> wrapText(const std::string& text, Length height, Length width, bool bold) {
  std::vector<std::string> lines;
  std::string line;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t space = std::min(text.find(' ', i), text.size());
    const std::string word = text.substr(i, space - i);
    i = space + 1;
    if (word.empty()) continue;
    const std::string longer = line.empty() ? word : line + ' ' + word;
    if (!line.empty() && textWidth(longer, height, bold) > width) {
      lines.push_back(line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (!line.empty()) lines.push_back(line);
  return lines;
}

}  // namespace elbowroom
