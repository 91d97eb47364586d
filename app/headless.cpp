#include "app/headless.h"

#include <fmt/format.h>

#include <QByteArray>
#include <QGuiApplication>
#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <exception>
#include <filesystem>
#include <fstream>
#include <memory>

#include "core/file/book_file.h"
#include "core/file/plan_file.h"
#include "core/file/report_json.h"
#include "ui/render/paint.h"

namespace elbowroom {

namespace {

enum Exit { kNothingShort = 0, kSomethingShort = 1, kUsage = 2, kOurError = 3 };

// A sentence for the person, with the exit status it means.
struct Refused {
  Exit status;
  std::string sentence;
};

void complain(const std::string& sentence) { fmt::print(stderr, "elbowroom: {}\n", sentence); }

void answer(const std::string& text) {
  const bool written =
      std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
  if (!written) throw Refused{kUsage, fmt::format("The answer cannot be written: {}.", std::strerror(errno))};
}

Plan loaded(const Options& options) {
  Result<Plan> plan = loadPlan(options.file);
  if (!plan) throw Refused{kUsage, plan.error().message};
  return std::move(plan).value();
}

std::size_t optionIndex(const Plan& plan, const Options& options) {
  if (!options.option) return 0;
  std::string known;
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    if (plan.options[i].name == *options.option) return i;
    known += fmt::format("{}\"{}\"", i == 0 ? "" : ", ", plan.options[i].name);
  }
  throw Refused{kUsage, fmt::format("{}: there is no option \"{}\"; the plan has {}.", options.file,
                                    *options.option, known)};
}

void addBooks(const Options& options) {
  for (const std::string& file : options.with_books)
    if (const auto added = loadAndAddBook(file); !added) throw Refused{kUsage, added.error().message};
  for (const std::string& id : options.books) {
    if (findBook(id) != nullptr) continue;
    std::string known;
    for (const Book& book : allBooks()) known += fmt::format("{}{}", known.empty() ? "" : ", ", book.id);
    throw Refused{kUsage, fmt::format("There is no book \"{}\"; the books are {}.", id, known)};
  }
}

BookChoice booksFor(const Plan& plan, const Options& options) {
  BookChoice choice = choiceOf(plan);
  if (!options.books.empty()) choice.books = options.books;
  for (const std::string& id : choice.books) {
    if (findBook(id) == nullptr)
      complain(fmt::format("{}: at /books: the book \"{}\" is not there; nothing is checked from it (--with-book adds a book of your own).",
                           options.file, id));
  }
  return choice;
}

Exit statusOf(const Report& report) {
  Exit status = kNothingShort;
  for (const Finding& f : report.findings) {
    if (f.outcome == Outcome::failed)
      throw Refused{kOurError, fmt::format("The rule {} of {} could not be worked out; please report it.",
                                           f.rule, f.book)};
    if (f.outcome == Outcome::shortfall && f.level == Level::required) status = kSomethingShort;
  }
  return status;
}

Exit runCheck(const Options& options) {
  const Plan plan = loaded(options);
  const Layout layout = deriveLayout(plan, optionIndex(plan, options));
  const Report report = check(layout, booksFor(plan, options));
  const Exit status = statusOf(report);
  answer(options.json ? checkJson(layout, report, options.file) : checkText(layout, report, options.file));
  return status;
}

Exit runMeasure(const Options& options) {
  const Plan plan = loaded(options);
  const Layout layout = deriveLayout(plan, optionIndex(plan, options));
  const Figures figures = figuresOf(layout);
  const std::vector<RouteFigure> routes = routeFigures(layout);
  const std::optional<Placed> t = turningTFigure(layout);
  answer(options.json ? measureJson(layout, figures, routes, t) : measureText(layout, figures, routes, t));
  return kNothingShort;
}

Exit runCompare(const Options& options) {
  const Plan plan = loaded(options);
  const BookChoice choice = booksFor(plan, options);
  Exit status = kNothingShort;
  for (std::size_t i = 0; i < plan.options.size(); ++i)
    status = std::max(status, statusOf(check(deriveLayout(plan, i), choice)));
  answer(options.json ? compareJson(plan, choice) : compareText(plan, choice));
  return status;
}

std::string today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  char text[16] = "";
  std::strftime(text, sizeof text, "%Y-%m-%d", &local);
  return text;
}

void writeText(const std::string& path, const std::string& text) {
  std::ofstream out(path, std::ios::binary | std::ios::trunc);
  out << text;
  out.close();
  if (!out) throw Refused{kUsage, fmt::format("{}: cannot be written: {}.", path, std::strerror(errno))};
}

void writePdfWithoutWindow(const std::vector<Sheet>& sheets, const Options& options,
                           const std::string& title) {
  std::unique_ptr<QGuiApplication> qt;
  static char name[] = "elbowroom";
  static char* words[] = {name, nullptr};
  static int count = 1;
  if (QCoreApplication::instance() == nullptr) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    qt = std::make_unique<QGuiApplication>(count, words);
  }
  const Result<bool> written = ui::writePdf(sheets, options.to, title);
  if (!written) throw Refused{kUsage, written.error().message};
}

Exit runDraw(const Options& options) {
  const Plan plan = loaded(options);
  const Layout layout = deriveLayout(plan, optionIndex(plan, options));
  const Report report = check(layout, booksFor(plan, options));
  statusOf(report);
  std::error_code ignored;
  if (std::filesystem::equivalent(options.file, options.to, ignored))
    throw Refused{kUsage, fmt::format("{}: the drawing would overwrite the plan.", options.to)};
  const Paper paper = options.paper.value_or(layout.settings.unit == Unit::inches ? Paper::letter : Paper::a4);
  const std::vector<Sheet> sheets = makeSheets(layout, report, {today(), paper});
  const char last = options.to.back();
  if (last == 'f' || last == 'F') {
    writePdfWithoutWindow(sheets, options, plan.title);
  } else {
    writeText(options.to, toSvg(sheets));
  }
  return kNothingShort;
}

Exit run(const Options& options) {
  addBooks(options);
  switch (options.verb) {
    case Verb::check:
      return runCheck(options);
    case Verb::measure:
      return runMeasure(options);
    case Verb::draw:
      return runDraw(options);
    case Verb::compare:
      return runCompare(options);
    case Verb::books:
      answer(options.json ? booksJson(options.books) : booksText(options.books));
      return kNothingShort;
    case Verb::help:
      answer(helpText());
      return kNothingShort;
    case Verb::version:
      answer("Elbowroom " ELBOWROOM_VERSION "\n");
      return kNothingShort;
    case Verb::usage:
      throw Refused{kUsage, options.usage_error + " (elbowroom --help says more.)"};
    case Verb::window:
      break;
  }
  throw Refused{kOurError, "The window was asked of the part that has none."};
}

}  // namespace

int runHeadless(const Options& options) {
  try {
    return run(options);
  } catch (const Refused& refused) {
    complain(refused.sentence);
    return refused.status;
  } catch (const std::exception& broken) {
    complain(fmt::format("An error of Elbowroom itself, please report it: {}", broken.what()));
  } catch (...) {
    complain("An error of Elbowroom itself, please report it.");
  }
  return kOurError;
}

}  // namespace elbowroom
