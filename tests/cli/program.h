// Runs the built program without a display and keeps what it said.
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <vector>

namespace elbowroom::testing {

namespace fs = std::filesystem;

inline std::string contentOf(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  if (!in) throw std::runtime_error("cannot read " + path.string());
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

inline std::string quoted(const std::string& word) {
  std::string text = "'";
  for (const char c : word) text += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return text + "'";
}

// A folder of its own, gone with the object.
class Folder {
 public:
  Folder() {
    std::string name = (fs::temp_directory_path() / "elbowroom-cli-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
    path_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  std::string file(const std::string& name) const { return (path_ / name).string(); }
  std::string write(const std::string& name, const std::string& content) const {
    std::ofstream(path_ / name, std::ios::binary) << content;
    return file(name);
  }

 private:
  fs::path path_;
};

struct Said {
  int status = -1;  // exit status; -1: ended by a signal
  std::string out, err;
};

inline Said runProgram(const std::vector<std::string>& words) {
  const Folder folder;
  std::string command = "env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM " + quoted(ELBOWROOM_PROGRAM);
  for (const std::string& word : words) command += " " + quoted(word);
  command += " >" + quoted(folder.file("out")) + " 2>" + quoted(folder.file("err")) + " </dev/null";
  const int status = std::system(command.c_str());
  Said said;
  if (WIFEXITED(status)) said.status = WEXITSTATUS(status);
  said.out = contentOf(folder.file("out"));
  said.err = contentOf(folder.file("err"));
  return said;
}

}  // namespace elbowroom::testing
