// Every word on every screen can be translated: the tour is taken in the tests' own language, where
// plain letters are what nobody handed to the translators. Names, what people wrote, citations and
// signs of units stay as they are in every language.
#include <set>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QRegularExpression>

#include <gmock/gmock.h>

#include "tests/tour/in_front.h"
#include "tests/tour/language.h"
#include "tests/tour/painted_text.h"
#include "tests/tour/pseudo_language.h"
#include "tests/tour/tour.h"
#include "ui/look/english_label.h"

using namespace latchround;
using namespace latchround::tour;

namespace {

/// What the data of the sample vessels says in words of its own, and what every language has.
class Data {
public:
    Data() {
        for (const char* file : {"sample_vessels/vellis-lantern", "sample_vessels/oriveth-meridian",
                                 "sample_vessels/ternwick-lass"}) {
            readTable(QStringLiteral("%1/register.csv").arg(QLatin1String(file)));
            readFacts(QStringLiteral("%1/history.jsonl").arg(QLatin1String(file)));
        }
        readTable(QStringLiteral("resources/practice/vessel.csv"));
        for (const char* rows : {"solas-passenger", "solas-before-2002", "us-domestic", "usage",
                                 "maintenance", "canada", "eu-inland", "large-yacht", "other"})
            addCitations(
                QJsonDocument::fromJson(
                    bytes(
                        QStringLiteral("resources/requirements/%1.json").arg(QLatin1String(rows))))
                    .object());
        m_said += QStringLiteral("Ansa Merlund\n"); // who practises on the tour
        for (int month = 1; month <= 12; ++month)
            m_signs.insert(QLocale::c().monthName(month, QLocale::ShortFormat));
        for (const char* word :
             {"MVZ",       "SOLAS", "CFR",  "MSC",        "Circ",     "FSS",     "Code",
              "UTC",       "PDF",   "CSV",  "JSON",       "ZIP",      "ANSI",    "BHMA",
              "JCGM",      "YYYY",  "lbf",  "Latchround", "PRACTICE", "English", "Bahasa",
              "Indonesia", "Espa",  "Fran", "BWBV"})
            m_signs.insert(QLatin1String(word));
    }

    /// `is_cut`: the last word may go on.
    bool has(const QString& phrase, bool is_cut) const {
        QStringList words = phrase.split(QLatin1Char(' '));
        const auto isSign = [&](const QString& word) {
            return word.size() < 3 || m_signs.contains(word);
        };
        while (!words.isEmpty() && isSign(words.first()))
            words.removeFirst();
        while (!words.isEmpty() && isSign(words.last()))
            words.removeLast();
        if (words.isEmpty())
            return true;
        const QRegularExpression whole(
            QStringLiteral("\\b%1%2").arg(QRegularExpression::escape(words.join(QLatin1Char(' '))),
                                          is_cut ? QString() : QStringLiteral("\\b")));
        return m_said.contains(whole);
    }

private:
    static QByteArray bytes(const QString& name) {
        QFile file(QStringLiteral(LATCHROUND_SOURCE "/") + name);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        return file.readAll();
    }
    void add(const QString& said) {
        // Words of the formats are lower case and single: "leaf-moves".
        static const QRegularExpression spoken(QStringLiteral("[A-Z ]"));
        if (said.contains(spoken) && m_seen.insert(said).second)
            m_said += said + QLatin1Char('\n');
    }
    void addAll(const QJsonValue& value) {
        if (value.isString())
            add(value.toString());
        for (const QJsonValue& each : value.toArray())
            addAll(each);
        const QJsonObject object = value.toObject();
        for (auto at = object.begin(); at != object.end(); ++at) {
            addAll(*at);
            // What was agreed for the radio may be one small word.
            if (at.key().endsWith(QLatin1String("_word")) ||
                at.key() == QLatin1String("may_stop") ||
                at.key() == QLatin1String("control_station"))
                m_said += at->toString() + QLatin1Char('\n');
        }
    }
    /// By which text and in what edition, of a file of rows; of common practice there are words.
    void addCitations(const QJsonObject& object) {
        for (auto at = object.begin(); at != object.end(); ++at) {
            if (at->isString() && (at.key() == QLatin1String("edition") ||
                                   (at.key() == QLatin1String("cite") &&
                                    object[QLatin1String("status")] != QLatin1String("usage"))))
                m_said += at->toString() + QLatin1Char('\n');
            for (const QJsonValue& each : at->toArray())
                addCitations(each.toObject());
        }
    }
    void readFacts(const QString& name) {
        for (const QByteArray& line : bytes(name).split('\n'))
            addAll(QJsonDocument::fromJson(line).object());
    }
    void readTable(const QString& name) {
        for (const QByteArray& line : bytes(name).split('\n'))
            for (const QByteArray& cell : line.split(','))
                add(QString::fromUtf8(cell));
    }

    std::set<QString> m_seen;
    std::set<QString> m_signs;
    QString m_said;
};

/// The English that stands small beneath a warning or a word of the radio; empty for none.
QString englishOn(const QWidget& widget) {
    const auto* label = qobject_cast<const ui::EnglishLabel*>(&widget);
    return label ? label->text() : widget.property("english").toString();
}

/// The plain words of a text that are no data.
QStringList untranslated(const QString& text, const Data& data) {
    static const QRegularExpression words(
        QStringLiteral("(?<![\\p{L}])[A-Za-z]{3,}(?: [A-Za-z]+)*(?![\\p{L}])"));
    QStringList plain;
    // The path of a file is a name; the digits of a key are no words.
    static const QRegularExpression names(QStringLiteral("(?<!\\S)/\\S+|\\b[0-9a-f]{8}\\b"));
    const QString said = QString(text).remove(names);
    for (auto at = words.globalMatch(said); at.hasNext();) {
        const QRegularExpressionMatch phrase = at.next();
        const bool is_cut = said.mid(phrase.capturedEnd()).startsWith(QChar(0x2026));
        if (!data.has(phrase.captured(), is_cut))
            plain << phrase.captured();
    }
    return plain;
}

class Untranslated : public testing::TestWithParam<Part> {
protected:
    void SetUp() override { speakOnTour(QStringLiteral("qps")); }
    void TearDown() override { speakOnTour(QStringLiteral("en")); }
};

} // namespace

TEST(PseudoLanguage, KeepsPlacesAndSaysMore) {
    EXPECT_EQ(pseudo("Deck %1"), "[Déçk %1]");
    EXPECT_EQ(pseudo("%1 · %2"), "%1 · %2");
    EXPECT_THAT(pseudo("two\nlines").toStdString(), testing::HasSubstr("\n"));
    const QString text = QStringLiteral("All still true");
    EXPECT_GE(pseudo(text).size(), text.size() * 14 / 10);
}

TEST(PseudoLanguage, PlainWordsAreFoundAndDataIsNot) {
    const Data data;
    EXPECT_EQ(untranslated("[ThíR] Not armed", data), QStringList{"Not armed"});
    EXPECT_EQ(untranslated(pseudo("What would decide it"), data), QStringList());
    EXPECT_EQ(untranslated("SOLAS II-2/9.4.1.1.5.2 · 0,2 m/s", data), QStringList());
}

TEST_P(Untranslated, NothingOnTheScreensIs) {
    static const Data data;
    std::set<QString> told;
    const auto look = [&told](const QString& stop, Tour& tour) {
        for (QWidget* widget : widgetsInFront(tour.window())) {
            QStringList texts{widget->accessibleName(), widget->accessibleDescription()};
            if (const auto* label = qobject_cast<const QLabel*>(widget))
                texts << label->text();
            else
                for (const PaintedText& text : paintedBy(*widget))
                    texts << text.words;
            const QString english = englishOn(*widget);
            for (const QString& text : texts)
                for (const QString& phrase : untranslated(text, data))
                    if (!english.contains(phrase) && told.insert(phrase).second)
                        ADD_FAILURE() << stop.toStdString() << ": \"" << phrase.toStdString()
                                      << "\" in " << nameOf(*widget).toStdString();
        }
    };
    Tablet tablet;
    tablet.language = QStringLiteral("qps");
    Tour tour(tablet, look);
    GetParam().walk(tour);
}

INSTANTIATE_TEST_SUITE_P(Tour, Untranslated, testing::ValuesIn(parts()),
                         [](const auto& given) { return std::string(given.param.name); });
