#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/file/book_file.h"

namespace elbowroom {
namespace {

constexpr std::uintmax_t kLargestBook = 16u << 20;

Error inFile(const std::string& path, Error error) {
  error.message = path + ": " + error.message;
  return error;
}

}  // namespace

Result<SharedBook> loadBook(const std::string& path) {
  namespace fs = std::filesystem;
  std::error_code ignored;
  if (fs::is_directory(path, ignored)) return inFile(path, {"file", "this is a folder, not a book.", path});
  std::ifstream in(path, std::ios::binary);
  if (!in)
    return inFile(path, {"file", "the book cannot be opened: " + std::string(std::strerror(errno)) + ".", path});
  if (const auto size = fs::file_size(path, ignored); !ignored && size > kLargestBook)
    return inFile(path, {"file", "the file is too large for a book (more than 16 MB).", path});
  const std::string text{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  if (in.bad()) return inFile(path, {"file", "the book cannot be read.", path});
  Result<SharedBook> book = readBook(text, path);
  if (!book) return inFile(path, book.error());
  return book;
}

Result<SharedBook> loadAndAddBook(const std::string& path) {
  Result<SharedBook> book = loadBook(path);
  if (!book) return book;
  if (const auto added = addBook(*book); !added) return inFile(path, added.error());
  return book;
}

}  // namespace elbowroom
