#include "app/desktop/ports/former_rules.h"

#include <QFileInfo>

#include "app/exchange/durable_file.h"
#include "app/exchange/file_bytes.h"
#include "app/vessels/vessel_folder.h"
#include "core/grading/changed_verdicts.h"

namespace latchround {

namespace {

/// The texts of all rules are below 2 MB.
constexpr std::uintmax_t largest_catalogue_bytes = 64u * 1024 * 1024;

} // namespace

Result<> DesktopFormerRules::look(const QString& register_path, const ui::VesselSession& session) {
    m_former.reset();
    m_unreadable.reset();
    m_file = keptCataloguePathFor(register_path);
    m_now = ruleTextsOf(session.catalogue());
    if (m_now.empty())
        return {};
    if (QFileInfo::exists(m_file)) {
        const Result<std::string> kept = bytesOf(m_file.toStdString(), largest_catalogue_bytes);
        if (kept && *kept == m_now)
            return {};
        Checked<Catalogue> former = kept ? catalogueOfTexts(*kept, m_file.toStdString())
                                         : tl::unexpected(Errors{kept.error()});
        if (!former) {
            m_unreadable = former.error().front();
            return {};
        }
        if (!changedVerdicts(session.arrangement(), session.ledger(), *former, session.catalogue())
                 .empty()) {
            m_former = std::move(*former);
            return {};
        }
    }
    return session.isReadOnly() ? Result<>{} : keep();
}

Result<> DesktopFormerRules::keep() {
    return writeDurably(m_file.toStdString(), std::as_bytes(std::span(m_now)), IfThere::Replace);
}

Result<> DesktopFormerRules::acknowledge() {
    if (Result<> kept = keep(); !kept)
        return kept;
    m_former.reset();
    m_unreadable.reset();
    return {};
}

} // namespace latchround
