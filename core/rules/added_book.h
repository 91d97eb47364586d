// Books that a person adds beside those of the program. allBooks(), allRules(), findBook() and findRule()
// (core/rules/rule.h) cover them from then on.
//
// Whatever those four have ever given stays readable until the program ends, also after a book is removed: old
// lists are kept, so that a report may outlive a change of the books. A few kilobytes per change.
#pragma once

#include <deque>
#include <memory>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/rules/rule.h"

namespace elbowroom {

struct AddedBook {
  Book book;
  std::vector<Rule> rules;       // of this book only
  std::deque<std::string> text;  // owns every text that book and rules view; elements never move
  std::string file;              // where it was read, for the person; may be empty

  AddedBook() = default;
  AddedBook(AddedBook&&) = default;
  AddedBook(const AddedBook&) = delete;  // the copy's views would point into the original
  AddedBook& operator=(const AddedBook&) = delete;
};
using SharedBook = std::shared_ptr<const AddedBook>;

// Refused with code "book-there" when a book has that id already, built in or added. What core/file/book_file.h
// reads is complete; this checks no more than the id.
Result<bool> addBook(SharedBook);
// False: no added book has that id.
bool removeBook(std::string_view id);
// In the order in which they were added.
std::vector<SharedBook> addedBooks();
bool isAdded(std::string_view id);

}  // namespace elbowroom
