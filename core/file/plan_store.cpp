#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/file/plan_file.h"

namespace elbowroom {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t kLargestFile = 64u << 20;

Error fileError(const std::string& path, const std::string& reason) { return {"file", path + ": " + reason, path}; }

std::string systemReason() { return std::strerror(errno); }

// Closes and removes the unfinished file unless it was moved into place.
class Unfinished {
 public:
  Unfinished(std::string path, mode_t mode) : path_(std::move(path)) {
    file_ = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
  }
  ~Unfinished() {
    if (file_ >= 0) ::close(file_);
    if (made_) ::unlink(path_.c_str());
  }
  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;

  bool opened() {
    made_ = file_ >= 0;
    return made_;
  }
  bool write(std::string_view text) {
    while (!text.empty()) {
      const ssize_t n = ::write(file_, text.data(), text.size());
      if (n < 0 && errno == EINTR) continue;
      if (n < 0) return false;
      text.remove_prefix(static_cast<std::size_t>(n));
    }
    return true;
  }
  bool keepMode(const std::string& like) {
    struct stat info;
    return ::stat(like.c_str(), &info) != 0 || ::fchmod(file_, info.st_mode & 07777) == 0;
  }
  bool finish() {
    if (::fsync(file_) != 0) return false;
    const int file = std::exchange(file_, -1);
    return ::close(file) == 0;
  }
  bool moveTo(const std::string& target) {
    if (::rename(path_.c_str(), target.c_str()) != 0) return false;
    made_ = false;
    return true;
  }

 private:
  std::string path_;
  int file_ = -1;
  bool made_ = false;
};

// A rename is only on the disk once the folder is.
void syncFolder(const fs::path& folder) {
  const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0) return;
  ::fsync(file);
  ::close(file);
}

}  // namespace

Result<Plan> loadPlan(const std::string& path) {
  std::error_code ignored;
  if (fs::is_directory(path, ignored)) return fileError(path, "this is a folder, not a plan file.");
  std::ifstream in(path, std::ios::binary);
  if (!in) return fileError(path, "the file cannot be opened: " + systemReason() + ".");
  if (const auto size = fs::file_size(path, ignored); !ignored && size > kLargestFile) {
    return fileError(path, "the file is too large for a plan (more than 64 MB).");
  }
  const std::string text{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  if (in.bad()) return fileError(path, "the file cannot be read: " + systemReason() + ".");
  Result<Plan> plan = readPlan(text);
  if (plan) return plan;
  Error error = plan.error();
  error.message = path + ": " + error.message;
  return error;
}

Result<bool> savePlan(const Plan& plan, const std::string& path) {
  // Through a symbolic link the file it names is replaced, not the link.
  std::error_code failed;
  const fs::path target = fs::weakly_canonical(path, failed);
  if (failed) return fileError(path, "the plan cannot be saved: " + failed.message() + ".");
  const std::string beside = target.string() + ".saving-" + std::to_string(::getpid());
  const auto cannot = [&] { return fileError(path, "the plan cannot be saved: " + systemReason() + "."); };
  Unfinished file(beside, 0666);
  if (!file.opened()) return cannot();
  if (!file.write(writePlan(plan)) || !file.keepMode(target.string()) || !file.finish()) return cannot();
  if (!file.moveTo(target.string())) return cannot();
  syncFolder(target.parent_path());
  return true;
}

}  // namespace elbowroom
