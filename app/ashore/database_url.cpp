#include "app/ashore/database_url.h"

#include <utility>

#include <QUrl>
#include <QUrlQuery>

#include "core/error/ashore_errors.h"

namespace latchround {

namespace {

tl::unexpected<Error> notSuchAUrl(Phrase what) {
    return tl::unexpected(Error{"database", std::move(what)});
}

/// Inside libpq's quotes. Qt takes a semicolon for the end of an option, so none may hold one.
std::string quoted(const std::string& value) {
    std::string text = "'";
    for (const char c : value) {
        if (c == '\'' || c == '\\')
            text += '\\';
        text += c;
    }
    return text + "'";
}

} // namespace

std::string DatabaseUrl::shown() const {
    std::string text = "postgresql://";
    if (!user.empty())
        text += user + "@";
    text += host;
    if (port > 0)
        text += ":" + std::to_string(port);
    return text + "/" + database;
}

Result<DatabaseUrl> databaseUrlFrom(std::string_view text) {
    const QUrl url(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())),
                   QUrl::StrictMode);
    if (!url.isValid())
        return notSuchAUrl(errors::not_a_url("%40"));
    if (url.scheme() != QStringLiteral("postgresql") && url.scheme() != QStringLiteral("postgres"))
        return notSuchAUrl(errors::not_postgresql());
    DatabaseUrl found;
    found.host = url.host(QUrl::FullyDecoded).toStdString();
    found.port = url.port(0);
    found.user = url.userName(QUrl::FullyDecoded).toStdString();
    found.password = url.password(QUrl::FullyDecoded).toStdString();
    found.database = url.path(QUrl::FullyDecoded).mid(1).toStdString();
    for (const auto& [name, value] : QUrlQuery(url).queryItems(QUrl::FullyDecoded)) {
        const std::string key = name.toStdString();
        if (name.contains(QLatin1Char(';')) || value.contains(QLatin1Char(';')))
            return notSuchAUrl(errors::semicolon_in_option());
        if (key == "host")
            found.host = value.toStdString();
        else if (key == "password")
            found.password = value.toStdString();
        else
            found.options[key] = value.toStdString();
    }
    if (found.database.empty())
        return notSuchAUrl(errors::names_no_database());
    return found;
}

std::string connectOptions(const DatabaseUrl& url) {
    std::string text;
    for (const auto& [name, value] : url.options)
        text += (text.empty() ? "" : ";") + name + "=" + quoted(value);
    return text;
}

} // namespace latchround
