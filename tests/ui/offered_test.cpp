// The phrases on offer for a record: each id once for each English text, and a translation of each.
#include <map>
#include <set>

#include <QCoreApplication>
#include <QRegularExpression>
#include <QTranslator>

#include <gmock/gmock.h>

#include "core/evidence/typed_in.h"
#include "tests/tour/translations.h"
#include "tests/ui/print_to.h"
#include "ui/words/offered.h"

namespace latchround::ui {
namespace {

/// English -> translation, of the context "Offered" of one language.
std::map<std::string, QString> translationsOf(const char* language) {
    std::map<std::string, QString> translations;
    for (const tour::Message& message : tour::messagesOf(QLatin1String(language)))
        if (message.context == QLatin1String("Offered"))
            translations[message.english.toStdString()] = message.translated;
    return translations;
}

class Shout : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char*, int) const override {
        return QLatin1String(context) == QLatin1String("Offered")
                   ? QString::fromUtf8(source).toUpper()
                   : QString();
    }
};

TEST(Offered, EveryIdNamesOneEnglishTextAndEveryTextHasOneId) {
    static const QRegularExpression kebab(QStringLiteral("^[a-z0-9]+(-[a-z0-9]+)*$"));
    std::map<std::string, std::string> english;
    std::map<std::string, std::string> ids;
    for (const OfferedFor use : every_use) {
        std::set<std::string> here;
        for (const Wording& phrase : offeredFor(use)) {
            ASSERT_TRUE(phrase.phrase);
            EXPECT_TRUE(here.insert(*phrase.phrase).second) << *phrase.phrase << " is there twice";
            EXPECT_TRUE(kebab.match(QString::fromStdString(*phrase.phrase)).hasMatch())
                << *phrase.phrase;
            EXPECT_FALSE(phrase.text.find('%') != std::string::npos) << phrase.text;
            EXPECT_EQ(english.emplace(*phrase.phrase, phrase.text).first->second, phrase.text);
            EXPECT_EQ(ids.emplace(phrase.text, *phrase.phrase).first->second, *phrase.phrase);
            EXPECT_EQ(offered(*phrase.phrase), phrase);
        }
        EXPECT_FALSE(here.empty());
    }
    EXPECT_FALSE(english.contains(std::string(typed_in_phrase))) << "it has a name in it";
}

TEST(Offered, EveryPhraseIsTranslated) {
    for (const char* language : {"es", "fr", "id"}) {
        const auto translations = translationsOf(language);
        for (const OfferedFor use : every_use)
            for (const Wording& phrase : offeredFor(use)) {
                const auto found = translations.find(phrase.text);
                EXPECT_TRUE(found != translations.end() && !found->second.isEmpty())
                    << language << ": " << phrase.text;
            }
    }
}

TEST(Offered, AScreenSaysAPhraseInItsLanguageAndOwnWordsAsWritten) {
    Shout shout;
    QCoreApplication::installTranslator(&shout);
    EXPECT_EQ(wordingWords(offered("closer-leaks-oil")), "CLOSER LEAKS OIL");
    EXPECT_EQ(wordingWords("closer leaks oil"), "closer leaks oil");
    EXPECT_EQ(wordingWords(Wording("of a later edition", "unheard-of")), "of a later edition");
    EXPECT_EQ(wordingWords(noteOfTyping("w", "5-32", "A. Ahn").text),
              "Typed in from a paper form by A. Ahn.");
    QCoreApplication::removeTranslator(&shout);
}

TEST(Offered, TheNoteOfTypingIsKnownByItsPhrase) {
    EXPECT_TRUE(saysWhoTyped(noteOfTyping("w", "5-32", "A. Ahn")));
    EXPECT_FALSE(saysWhoTyped({"w", "5-32", "Typed in from a paper form by A. Ahn."}));
}

} // namespace
} // namespace latchround::ui
