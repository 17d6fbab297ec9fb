// A small invented vessel as canonical register CSV, and the two things tests do with one.
#pragma once

#include <string>
#include <string_view>

#include "app/exchange/register_csv.h"
#include "tests/exchange/error_words.h"

namespace latchround::test {

/// Canonical: exporting what it says gives these bytes. Line 1 is the vessel's header.
inline const std::string sample_csv =
    "vessel:,name,number,regime,passengers,keel_laid,sprinklers,length_m\n"
    "vessel,Tern of Skerry,9000001,solas-passenger,1200,2015-03-01,yes,182.50\n"
    "\n"
    "deck:,number,name,height_m\n"
    "deck,5,\"Car deck, upper\",14.20\n"
    "deck,6,,17.00\n"
    "\n"
    "zone:,number,aft_m,forward_m,area_m2\n"
    "zone,3,60.00,100.00,1180.5\n"
    "zone,4,100.00,140.00,\n"
    "\n"
    "boundary:,id,place,zone_aft,zone_forward,x_m,required,division,spaces\n"
    "boundary,3/4,zone-bulkhead,3,4,100.00,A-60,bulkhead,3 3\n"
    "boundary,stair 2,stairway,3,3,71.00,,deck,\n"
    "\n"
    "door:,number,deck,x_m,y_m,boundary,kind,class,plate,opening_m,leaf_mass_kg,power_operated,"
    "hold_back,"
    "release_groups,alarm,designed_to_reopen,hose_port,escape_route,sill_in_frame,latch,watertight,"
    "weathertight,escape_trunk,special_category,faces_embarkation,normally,installed,maker\n"
    "door,5-32,5,99.80,-2.10,3/4,sliding,A-60,A-60,1.40,180,yes,yes,MVZ3 "
    "ALL,yes,yes,yes,yes,yes,no,"
    "no,no,no,no,no,open,2015-03-01,Quillmoor Joinery\n"
    "door,6-04,6,71.00,3.25,stair "
    "2,single,B-15,,0.80,42.5,no,yes,,no,no,no,yes,no,yes,no,no,yes,no,yes,closed,,\n";

inline Checked<Arrangement> read(std::string_view csv) {
    return arrangementFromCsv(csv, "fleet.csv");
}

inline std::string replaced(std::string text, std::string_view from, std::string_view to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos)
        return "nothing to replace: " + std::string(from);
    return text.replace(at, from.size(), to);
}

inline std::string replacedAll(std::string text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

} // namespace latchround::test
