// A value or an error that a person can read. Expected failures (bad file, bad input) are Results; a broken
// invariant is an assertion.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace elbowroom {

struct Error {
  std::string code;     // stable, for tests: "length", "json", "integrity/walls-cross", ...
  std::string message;  // one sentence for the person
  std::string place;    // where: a file position or JSON pointer; may be empty
  bool operator==(const Error&) const = default;
};

template <typename T>
class Result {
 public:
  Result(T value) : state_(std::move(value)) {}
  Result(Error error) : state_(std::move(error)) {}

  bool ok() const { return std::holds_alternative<T>(state_); }
  explicit operator bool() const { return ok(); }
  // Precondition: ok().
  const T& value() const& { return std::get<T>(state_); }
  T& value() & { return std::get<T>(state_); }
  T&& value() && { return std::get<T>(std::move(state_)); }
  const T& operator*() const& { return value(); }
  const T* operator->() const { return &value(); }
  // Precondition: !ok().
  const Error& error() const { return std::get<Error>(state_); }

 private:
  std::variant<T, Error> state_;
};

}  // namespace elbowroom
