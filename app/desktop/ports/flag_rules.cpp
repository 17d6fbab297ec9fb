#include "app/desktop/ports/flag_rules.h"

#include <QDir>
#include <QFile>

#include "app/desktop/file_dialog.h"
#include "app/exchange/catalogue_file.h"
#include "app/exchange/durable_file.h"
#include "app/exchange/file_bytes.h"
#include "app/vessels/vessel_folder.h"
#include "core/error/exercise_errors.h"

namespace latchround {

namespace {

constexpr std::uintmax_t largest_rules_bytes = 16u * 1024 * 1024;

} // namespace

QString DesktopFlagRules::flag() const {
    return QString::fromStdString(m_open.session->catalogue().flag);
}

Checked<std::optional<QString>> DesktopFlagRules::takeIn(QWidget* parent) {
    const QString path = askForFile(parent, ui::Window::tr("Import a flag's rules"),
                                    QDir::homePath(), ui::Window::tr("Rules (*.json)"));
    if (path.isEmpty())
        return std::optional<QString>{};
    const auto rules = withFlagRulesOf(m_catalogue, path.toStdString());
    if (!rules)
        return tl::unexpected(rules.error());
    const Result<std::string> bytes = bytesOf(path.toStdString(), largest_rules_bytes);
    if (!bytes)
        return tl::unexpected(Errors{bytes.error()});
    if (const Result<> kept = writeDurably(flagRulesPathFor(m_open.path).toStdString(),
                                           std::as_bytes(std::span(*bytes)), IfThere::Replace);
        !kept)
        return tl::unexpected(Errors{kept.error()});
    if (const Result<> opened = m_vessels.open(m_open.path); !opened)
        return tl::unexpected(Errors{opened.error()});
    return std::optional(QString::fromStdString(rules->flag));
}

Result<> DesktopFlagRules::leave() {
    const QString file = flagRulesPathFor(m_open.path);
    if (!QFile::remove(file))
        return tl::unexpected(Error{file.toStdString(), errors::not_taken_away()});
    return m_vessels.open(m_open.path);
}

} // namespace latchround
