// A grade file as in the documentation, and the program's own SOLAS catalogue.
#pragma once

#include <string>

#include <gtest/gtest.h>

#include "app/exchange/catalogue_file.h"
#include "app/exchange/grade_json.h"
#include "tests/exchange/sample_register.h"

namespace latchround::test {

inline const std::string grade_sample = R"({
 "vessel": {"regime": "solas-passenger", "passengers": 1200, "built": "2015-03-01", "sprinklers": true},
 "doors": [
  {"id": "5-32", "kind": "sliding", "class": "A-60", "place": "zone-bulkhead", "spaces": [3, 3],
   "division": "bulkhead", "power_operated": true, "remote_release": true,
   "designed_to_reopen": true, "hose_port": true, "escape_route": true, "normally": "open",
   "installed": "2015-03-01", "opening_m": 1.40, "sill_in_frame": false,
   "observations": {"one-person": "yes", "no-hook": "no", "reopen-local": {"one": "yes"}},
   "measured": {"reopen-distance": 0.6, "a-gap": 9},
   "runs": [{"release": "remote", "heel_deg": 0.5,
     "marks": {"alarm-on": 1.0, "moves": 7.4, "half-way": 11.9, "shut": 16.7, "alarm-off": 16.8}}]},
  {"id": "6-04", "kind": "double", "class": "A-30", "place": "stairway"}
 ]
})";

inline const Catalogue& solasCatalogue() {
    static const Catalogue catalogue = [] {
        auto read = catalogueFromFile(std::string(LATCHROUND_SOURCE) +
                                      "/resources/requirements/solas-passenger.json");
        if (!read) {
            ADD_FAILURE() << inLines(read.error());
            return Catalogue{};
        }
        read->divisions = fireTablesFromFile(std::string(LATCHROUND_SOURCE) +
                                             "/resources/boundaries/fire_tables.json")
                              .value();
        return std::move(*read);
    }();
    return catalogue;
}

inline Checked<GradeInput> readGrade(const std::string& json) {
    return gradeInputFrom(json, "grade.json", solasCatalogue());
}

} // namespace latchround::test
