#include "app/practice/practice_vessel.h"

#include <stdexcept>
#include <string>

#include "app/exchange/register_csv.h"
#include "app/practice/built_in.h"

namespace latchround::practice {

const Arrangement& practiceVessel() {
    static const Arrangement vessel = [] {
        auto read = arrangementFromCsv({built_in_vessel_csv.data(), built_in_vessel_csv.size()},
                                       "practice vessel");
        if (!read) // a bug: a test reads it as well
            throw std::logic_error("practice vessel: " +
                                   std::string(read.error().front().what.code));
        return std::move(*read);
    }();
    return vessel;
}

} // namespace latchround::practice
