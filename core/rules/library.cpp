// All books there are at the moment: built in and added.
#include <algorithm>
#include <atomic>
#include <mutex>

#include "core/rules/added_book.h"
#include "core/rules/built_in.h"

namespace elbowroom {
namespace {

struct Shelf {
  std::vector<Book> books;
  std::vector<Rule> rules;
  std::vector<SharedBook> added;
};

class Library {
 public:
  static Library& instance() {
    static Library library;
    return library;
  }
  const Shelf& now() const { return *now_.load(std::memory_order_acquire); }

  Result<bool> add(SharedBook book) {
    const std::lock_guard lock(changing_);
    const auto& books = now().books;
    const auto same = [&](const Book& b) { return b.id == book->book.id; };
    if (std::any_of(books.begin(), books.end(), same))
      return Error{"book-there", "there is a book with the id \"" + std::string(book->book.id) + "\" already.", "/id"};
    std::vector<SharedBook> added = now().added;
    added.push_back(std::move(book));
    put(std::move(added));
    return true;
  }

  bool remove(std::string_view id) {
    const std::lock_guard lock(changing_);
    std::vector<SharedBook> added = now().added;
    if (std::erase_if(added, [&](const SharedBook& b) { return b->book.id == id; }) == 0) return false;
    put(std::move(added));
    return true;
  }

 private:
  Library() { put({}); }

  void put(std::vector<SharedBook> added) {
    Shelf& shelf = shelves_.emplace_back();
    shelf.books = builtInBooks();
    shelf.rules = builtInRules();
    for (const SharedBook& one : added) {
      shelf.books.push_back(one->book);
      shelf.rules.insert(shelf.rules.end(), one->rules.begin(), one->rules.end());
    }
    shelf.added = std::move(added);
    now_.store(&shelf, std::memory_order_release);
  }

  std::mutex changing_;
  std::deque<Shelf> shelves_;  // also those of before: see added_book.h
  std::atomic<const Shelf*> now_;
};

}  // namespace

std::span<const Book> allBooks() { return Library::instance().now().books; }
std::span<const Rule> allRules() { return Library::instance().now().rules; }

const Book* findBook(std::string_view id) {
  const auto books = allBooks();
  const auto at = std::find_if(books.begin(), books.end(), [&](const Book& b) { return b.id == id; });
  return at == books.end() ? nullptr : &*at;
}

const Rule* findRule(std::string_view book, std::string_view id) {
  const auto rules = allRules();
  const auto at =
      std::find_if(rules.begin(), rules.end(), [&](const Rule& r) { return r.book == book && r.id == id; });
  return at == rules.end() ? nullptr : &*at;
}

Result<bool> addBook(SharedBook book) { return Library::instance().add(std::move(book)); }
bool removeBook(std::string_view id) { return Library::instance().remove(id); }
std::vector<SharedBook> addedBooks() { return Library::instance().now().added; }
bool isAdded(std::string_view id) {
  const auto& added = Library::instance().now().added;
  return std::any_of(added.begin(), added.end(), [&](const SharedBook& b) { return b->book.id == id; });
}

}  // namespace elbowroom
