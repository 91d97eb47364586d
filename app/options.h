// The command line as a value. Reads no file.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drawing/sheet.h"

namespace elbowroom {

enum class Verb { window, check, measure, draw, compare, books, help, version, usage };

struct Options {
  Verb verb = Verb::window;
  std::string usage_error;            // Verb::usage: what is wrong, one sentence
  std::string file;                   // the plan; may be empty for the window
  std::optional<std::string> option;  // name of an option of the plan; unset: the first one
  std::vector<std::string> books;     // ids; empty: those the plan names (books: all)
  std::vector<std::string> with_books;  // files of books to add first
  bool json = false;
  std::string to;  // draw: the file to write, ending with .pdf or .svg
  std::optional<Paper> paper;  // unset: letter for plans in inches, A4 for plans in millimetres
};

// Never fails: what cannot be understood comes back as Verb::usage. For the window, Qt's own options
// (-platform, -style, ...) are left to Qt.
Options parseOptions(int argc, char** argv);
// What --help prints.
std::string helpText();

}  // namespace elbowroom
