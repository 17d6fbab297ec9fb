// items: what is open at the doors of a vessel, as a table to read or as JSON.
#pragma once

#include <string>

#include "app/headless/answer.h"
#include "core/requirement/catalogue.h"

namespace latchround::headless {

struct ItemsAsked {
    std::string path; ///< of the register
    bool all = false; ///< closed and withdrawn ones too
    bool json = false;
};

Answer showItems(const ItemsAsked& asked, const Catalogue& catalogue);

} // namespace latchround::headless
