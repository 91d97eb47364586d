// Books as files: rules that a person adds without touching code. resources/book.schema.json describes the format,
// DEVELOPERS.md shows one.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/rules/added_book.h"

namespace elbowroom {

inline constexpr std::string_view kBookFormatName = "elbowroom-book";
inline constexpr int kBookFormatVersion = 1;

// Whole or nothing; a book that is read can be checked against at once. The message names the rule and the reason.
// Errors (code; `place` = line:column or JSON pointer): json, format, version, missing-key, unknown-key, type, number,
// value (unknown word), text (empty, several lines, no id), twice, measure (unknown, or its sizes), limit (of another
// kind or unit than the measure gives, or not positive), compare (does not suit what is measured), source (says less
// than its grade claims), setting (a variant of a setting that the book does not have).
// `file`: kept in AddedBook::file.
Result<SharedBook> readBook(std::string_view text, const std::string& file = {});

// Error messages begin with the file's name.
Result<SharedBook> loadBook(const std::string& path);
// Reads it and adds it to the books there are (core/rules/added_book.h).
Result<SharedBook> loadAndAddBook(const std::string& path);

}  // namespace elbowroom
