// A language of the program, read from its own file: tests of ui have no translation built in.
#pragma once

#include <map>
#include <utility>

#include <QFile>
#include <QTranslator>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include "ui/words/in_english.h"

namespace latchround::ui {

inline QString languageFile(const QString& language) {
    return QStringLiteral(LATCHROUND_SOURCE "/resources/languages/latchround_%1.ts").arg(language);
}

/// A language by its own file; what is not translated yet is in capitals, and so is another text
/// than the English.
class Tongue : public QTranslator {
public:
    explicit Tongue(const QString& language) {
        QFile file(languageFile(language));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
        QXmlStreamReader xml(&file);
        QString context;
        QString source;
        while (!xml.atEnd()) {
            if (xml.readNext() != QXmlStreamReader::StartElement)
                continue;
            if (xml.name() == QLatin1String("name"))
                context = xml.readElementText();
            else if (xml.name() == QLatin1String("source"))
                source = xml.readElementText();
            else if (xml.name() == QLatin1String("translation"))
                m_said[{context, source}] =
                    xml.readElementText(QXmlStreamReader::IncludeChildElements);
        }
        EXPECT_FALSE(m_said.empty());
    }
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override {
        if (InEnglish::isSpoken())
            return {};
        const QString english = QString::fromUtf8(source);
        const auto found = m_said.find({QString::fromUtf8(context), english});
        return found == m_said.end() || found->second.isEmpty() ? english.toUpper() : found->second;
    }

private:
    std::map<std::pair<QString, QString>, QString> m_said;
};

} // namespace latchround::ui
