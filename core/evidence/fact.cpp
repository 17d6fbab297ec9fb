#include "core/evidence/fact.h"

#include <type_traits>
#include <utility>

namespace latchround {

namespace {

template <std::size_t... Kind>
FactBody emptyBody(std::size_t kind, std::index_sequence<Kind...>) {
    FactBody body;
    ((Kind == kind ? void(body.emplace<Kind>()) : void()), ...);
    return body;
}

} // namespace

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

FactBody emptyBody(std::size_t kind) {
    return emptyBody(kind, std::make_index_sequence<std::variant_size_v<FactBodies>>{});
}

} // namespace latchround
