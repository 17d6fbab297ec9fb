#include "core/evidence/fact.h"

namespace latchround {

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
