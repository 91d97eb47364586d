#include "core/rules/built_in.h"

namespace elbowroom {

std::vector<Book> builtInBooks() {
  return {
      {"us-residential", "US model residential and plumbing code",
       "International Residential Code, US states",
       "Figures as quoted from the 2009 edition and later. Your state or town may have changed them; the "
       "text it "
       "adopted decides."},
      {"us-uniform", "US uniform plumbing code", "Uniform Plumbing Code, mostly western US states",
       "Choose it instead of the residential code where the uniform code is adopted; some of those states "
       "amend "
       "it."},
      {"us-electrical", "US electrical code", "NFPA 70",
       "Nothing is checked from this book yet: its rules are about things on the walls."},
      {"us-access", "2010 ADA Standards, as a benchmark", "US Department of Justice",
       "These standards do not bind a private house. They are used here as a benchmark for a home that works "
       "with "
       "a wheelchair."},
      {"comfort", "Comfort", "Published planning guidance and body sizes",
       "Recommendations, not requirements: what makes a bathroom pleasant rather than merely allowed."},
      {"craft", "Craft", "Common practice of the trades",
       "What builders allow for so that the thing can be built and used. No authority stands behind these."},
  };
}

}  // namespace elbowroom
