// What every document is made from, and the printed report of one walkdown: what a surveyor signs
// and a chief officer works from. The other documents: made_report.h, paper_form.h.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include <QByteArray>

#include "core/error/error.h"
#include "core/evidence/ledger.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct WalkdownReport {
    const Arrangement& arrangement;
    const Ledger& ledger;
    FactId walkdown;
    const Catalogue& catalogue;
    Moment printed;
    std::string program; ///< name and version of what prints
    /// Bytes of a photograph by its hash; empty where they are not to be had.
    std::function<std::vector<std::byte>(std::string_view sha256)> photograph;
    /// Marked as practice on every page; so is whatever speaks of the practice vessel.
    bool practice = false;
    std::string person{}; ///< id of who makes it; empty: nobody is named
    std::string door{};   ///< number of the door, of a door record
};

/// Asked for, or about the practice vessel (app/register/register_kind.h), the only one that a
/// practice register holds.
bool isPractice(const WalkdownReport& report);

/// The whole document as PDF, A4. Needs a QGuiApplication, no display. Complains where the register
/// knows no such walkdown; a photograph that cannot be shown is said so in its place.
Result<QByteArray> pdfOf(const WalkdownReport& report);

} // namespace latchround
