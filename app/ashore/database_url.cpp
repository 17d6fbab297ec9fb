#include "app/ashore/database_url.h"

#include <QUrl>
#include <QUrlQuery>

namespace latchround {

namespace {

tl::unexpected<Complaint> notSuchAUrl(const std::string& what) {
    return tl::unexpected(
        Complaint{"database", what,
                  "Give it as postgresql://USER@HOST:PORT/DATABASE, with the password in "
                  "PGPASSWORD or ~/.pgpass."});
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
        return notSuchAUrl("this is no URL: signs other than letters and digits in a password "
                           "are written as %40 for @ and so on");
    if (url.scheme() != QStringLiteral("postgresql") && url.scheme() != QStringLiteral("postgres"))
        return notSuchAUrl("only databases of PostgreSQL are known");
    DatabaseUrl found;
    found.host = url.host(QUrl::FullyDecoded).toStdString();
    found.port = url.port(0);
    found.user = url.userName(QUrl::FullyDecoded).toStdString();
    found.password = url.password(QUrl::FullyDecoded).toStdString();
    found.database = url.path(QUrl::FullyDecoded).mid(1).toStdString();
    for (const auto& [name, value] : QUrlQuery(url).queryItems(QUrl::FullyDecoded)) {
        const std::string key = name.toStdString();
        if (name.contains(QLatin1Char(';')) || value.contains(QLatin1Char(';')))
            return notSuchAUrl("an option holds a semicolon");
        if (key == "host")
            found.host = value.toStdString();
        else if (key == "password")
            found.password = value.toStdString();
        else
            found.options[key] = value.toStdString();
    }
    if (found.database.empty())
        return notSuchAUrl("it names no database");
    return found;
}

std::string connectOptions(const DatabaseUrl& url) {
    std::string text;
    for (const auto& [name, value] : url.options)
        text += (text.empty() ? "" : ";") + name + "=" + quoted(value);
    return text;
}

} // namespace latchround
