#include "core/plan/edit.h"

#include <type_traits>

#include "core/plan/edit_parts.h"
#include "core/plan/integrity.h"

namespace elbowroom {
namespace {

using edit::Refusal;

template <typename C>
concept OfOneOption = requires(Option& option, const C& c) {
  edit::change(option, c);
};

}  // namespace

Result<Plan> apply(const Plan& plan, const Edit& edit) {
  Plan out = plan;
  const Refusal refusal = std::visit(
      [&](const auto& c) -> Refusal {
        using C = std::decay_t<decltype(c)>;
        if constexpr (OfOneOption<C>) {
          if (edit.option >= out.options.size())
            return edit::refused("no-such-option", "The option to change does not exist.");
          return edit::change(out.options[edit.option], c);
        } else {
          return edit::change(out, edit.option, c);
        }
      },
      edit.change);
  if (refusal) return *refusal;
  if (const std::optional<Error> broken = integrity(out)) return *broken;
  return out;
}

}  // namespace elbowroom
