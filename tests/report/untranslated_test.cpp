// Every word on every paper can be translated: each is made in the tests' own language, where plain
// letters are what nobody handed to the translators. Names, what people wrote, citations, editions
// and signs stay as they are in every language.
#include <set>

#include <QLocale>
#include <QRegularExpression>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "app/exchange/fact_json.h"
#include "core/given.h"
#include "every_paper.h"
#include "printed_page.h"
#include "tests/tour/pseudo_language.h"

namespace latchround {

namespace {

const QRegularExpression& plainWord() {
    // Not a part of a number, of an id or of a word that was cut off.
    static const QRegularExpression word(
        QStringLiteral("(?<![\\p{L}\\d])[A-Za-z]{3,}(?![\\p{L}\\d\u2026])"));
    return word;
}

QStringList plainWords(const QString& text) {
    static const QRegularExpression sums(QStringLiteral("\\b[0-9a-f]{8,}\\b"));
    QStringList words;
    const QString said = QString(text).remove(sums);
    for (auto at = plainWord().globalMatch(said); at.hasNext();)
        words << at.next().captured();
    return words;
}

/// The words of the data that the sample's papers show.
class Data {
public:
    explicit Data(const SampleWalkdown& sample) {
        for (const auto& [id, fact] : sample.ledger.facts())
            addSaid(nlohmann::json::parse(jsonLineFrom(fact)));
        addArrangement(sample.arrangement);
        for (const Requirement& row : given::catalogue().rows) {
            addRow(row);
            for (const Requirement& variant : row.variants)
                addRow(variant);
        }
        for (const Upkeep& task : given::catalogue().upkeep)
            add({task.cite, task.edition});
        for (const Profile& profile : given::catalogue().profiles)
            add({profile.edition, profile.issuer});
        for (const FireTable& table : given::catalogue().divisions.tables)
            add({table.name});
        for (int month = 1; month <= 12; ++month)
            m_words.insert(QLocale::c().monthName(month, QLocale::ShortFormat));
        for (const char* sign :
             {"SHA", "UTC", "SOLAS", "CFR", "JCGM", "MVZ", "XML", "xml", "Latchround"})
            m_words.insert(QLatin1String(sign));
    }
    bool has(const QString& word) const { return m_words.contains(word); }

private:
    void add(std::initializer_list<std::string> texts) {
        for (const std::string& text : texts)
            for (const QString& word : plainWords(QString::fromStdString(text)))
                m_words.insert(word);
    }
    /// Words of the formats are lower case and single: "leaf-moves".
    void addSaid(const nlohmann::json& value) {
        if (value.is_structured())
            for (const auto& each : value)
                addSaid(each);
        else if (value.is_string())
            if (const std::string text = value.get<std::string>();
                text.find_first_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ ") != text.npos)
                add({text});
    }
    void addRow(const Requirement& row) {
        if (row.status != Status::Usage)
            add({row.cite});
        add({row.edition, row.issuer});
    }
    void addArrangement(const Arrangement& arrangement) {
        add({arrangement.particulars.name, arrangement.particulars.number});
        for (const Deck& deck : arrangement.decks)
            add({deck.name});
        for (const Boundary& boundary : arrangement.boundaries)
            add({boundary.id});
        for (const Door& door : arrangement.doors)
            for (const std::string& group : door.release_groups)
                add({group});
        // What the sample's people agreed in one small word.
        add({"surveyor", "release", "everyone"});
    }

    std::set<QString> m_words;
};

class InPseudo {
public:
    InPseudo() { tour::speakPseudo(true); }
    ~InPseudo() { tour::speakPseudo(false); }
    InPseudo(const InPseudo&) = delete;
    InPseudo& operator=(const InPseudo&) = delete;
};

} // namespace

// Without another locale a paper counts as the English one, so no English stands beside its words.
TEST(Untranslated, NothingOnThePapersIs) {
    SampleOfAll sample;
    sample.end();
    const Data data(sample);
    const InPseudo spoken;
    std::map<std::string, QByteArray> pdfs;
    for (const auto& [name, paper] : everyPaper(sample))
        pdfs[name] = paper.pdf;
    pdfs["rule-book of the vessel"] = ruleBookOf(sample, false);
    pdfs["rule-book of a door"] = ruleBookOf(sample, true);
    for (const auto& [name, pdf] : pdfs) {
        const QString text = flowingText(pdf);
        EXPECT_TRUE(text.contains(QChar(u'\u00f1'))) << name << " is not in that language";
        std::set<QString> told;
        for (const QString& word : plainWords(text))
            if (!data.has(word) && told.insert(word).second)
                ADD_FAILURE() << name << ": \"" << word.toStdString() << "\" in \""
                              << text.mid(text.indexOf(word) - 40, 80).toStdString() << '"';
        for (const QString& line : documentInformation(pdf).split(QLatin1Char('\n')))
            if (line.startsWith(QLatin1String("Title:")) ||
                line.startsWith(QLatin1String("Subject:")))
                for (const QString& word : plainWords(line.section(QLatin1Char(':'), 1)))
                    EXPECT_TRUE(data.has(word)) << name << ": " << line.toStdString();
    }
}

} // namespace latchround
