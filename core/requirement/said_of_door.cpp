#include "core/requirement/said_of_door.h"

#include "core/requirement/applicability_phrases.h"

namespace latchround {

PhraseCode<0> said(Place place) {
    switch (place) {
    case Place::ZoneBulkhead:
        return applies::zone_bulkhead;
    case Place::Stairway:
        return applies::stairway_enclosure;
    case Place::Galley:
        return applies::galley_boundary;
    case Place::Machinery:
        return applies::machinery_boundary;
    case Place::SpecialCategory:
        return applies::special_category_boundary;
    case Place::Cabin:
        return applies::cabin;
    case Place::Exterior:
        return applies::exterior;
    case Place::Other:
        break;
    }
    return applies::other_boundary;
}

PhraseCode<0> said(DoorKind kind) {
    switch (kind) {
    case DoorKind::SingleLeaf:
        return applies::single_leaf;
    case DoorKind::DoubleLeaf:
        return applies::double_leaf;
    case DoorKind::Sliding:
        return applies::sliding;
    case DoorKind::DoubleSwing:
        break;
    }
    return applies::double_swing;
}

PhraseCode<0> said(BoundaryFamily family) {
    switch (family) {
    case BoundaryFamily::A:
        return applies::a_class_boundary;
    case BoundaryFamily::B:
        return applies::b_class_boundary;
    case BoundaryFamily::C:
        return applies::c_class_boundary;
    case BoundaryFamily::CPrime:
        return applies::c_prime_boundary;
    case BoundaryFamily::Any:
    case BoundaryFamily::NotKnown:
        break;
    }
    return applies::boundary_class_not_known;
}

PhraseCode<0> said(Regime regime) {
    switch (regime) {
    case Regime::SolasPassenger:
        return applies::solas_passenger_ship;
    case Regime::UsH:
        return applies::us_h;
    case Regime::UsK:
        return applies::us_k;
    case Regime::CanadaConvention:
        return applies::canada_convention;
    case Regime::Canada:
        return applies::canada;
    case Regime::CanadaDay:
        return applies::canada_day;
    case Regime::EuInland:
        return applies::eu_inland;
    case Regime::LargeYacht:
        return applies::large_yacht;
    case Regime::Other:
        break;
    }
    return applies::other_rules;
}

PhraseCode<0> said(NormalPosition position) {
    switch (position) {
    case NormalPosition::Open:
        return applies::normally_open;
    case NormalPosition::Closed:
        return applies::normally_closed;
    case NormalPosition::Locked:
        break;
    }
    return applies::normally_locked;
}

} // namespace latchround
