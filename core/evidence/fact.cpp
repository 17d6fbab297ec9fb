#include "core/evidence/fact.h"

#include <type_traits>

namespace latchround {

static_assert(std::is_nothrow_move_constructible_v<FactBodies> &&
              std::is_nothrow_move_assignable_v<FactBodies>);

FactBody::FactBody() = default;
FactBody::FactBody(const FactBody&) = default;
FactBody::FactBody(FactBody&&) noexcept = default;
FactBody& FactBody::operator=(const FactBody&) = default;
FactBody& FactBody::operator=(FactBody&&) noexcept = default;
FactBody::~FactBody() = default;

bool FactBody::operator==(const FactBody& other) const {
    return static_cast<const FactBodies&>(*this) == static_cast<const FactBodies&>(other);
}

} // namespace latchround
