#include "tests/tour/translations.h"

#include <QFile>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

namespace latchround::tour {

QString languageFile(const QString& language) {
    return QStringLiteral(LATCHROUND_SOURCE "/resources/languages/latchround_%1.ts").arg(language);
}

std::vector<Message> messagesOf(const QString& language) {
    QFile file(languageFile(language));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
    QXmlStreamReader reader(&file);
    std::vector<Message> messages;
    QString context;
    while (!reader.atEnd()) {
        reader.readNext();
        if (!reader.isStartElement())
            continue;
        if (reader.name() == QLatin1String("name"))
            context = reader.readElementText();
        else if (reader.name() == QLatin1String("source"))
            messages.push_back({context, reader.readElementText(), {}});
        else if (reader.name() == QLatin1String("translation")) {
            const auto type = reader.attributes().value(QLatin1String("type"));
            const bool is_said =
                type != QLatin1String("vanished") && type != QLatin1String("obsolete");
            messages.back().translated =
                reader.readElementText(QXmlStreamReader::IncludeChildElements);
            if (!is_said)
                messages.pop_back();
        }
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    EXPECT_GT(messages.size(), 2000u) << file.fileName().toStdString();
    return messages;
}

} // namespace latchround::tour
