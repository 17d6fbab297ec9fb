// What is described field by field: eachField(whole, visit) calls visit(key, member) for every
// field in the order in which they are written. Rows, lines and cells of it follow from that.
#pragma once

#include <concepts>
#include <type_traits>

namespace latchround {

/// T is Whole, const or not.
template <class T, class Whole>
concept OneOf = std::same_as<std::remove_const_t<T>, Whole>;

/// Takes each field and does nothing with it.
struct PassOver {
    void operator()(const char*, const auto&) const {}
};

/// Has fields of its own.
template <class T>
concept Described = requires(T& whole) {
    eachField(whole, PassOver{});
};

} // namespace latchround
