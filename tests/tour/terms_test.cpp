// A term of the trade is said in one way in each language: as resources/languages/glossary.csv has
// it. resources/languages/update.py --terms prints the same findings to whoever translates.
#include <gmock/gmock.h>

#include "tests/tour/glossary.h"

namespace latchround::tour {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

std::vector<std::string> plain(const QStringList& lines) {
    std::vector<std::string> all;
    for (const QString& line : lines)
        all.push_back(line.toStdString());
    return all;
}

class Terms : public testing::TestWithParam<const char*> {};

TEST_P(Terms, AreSaidAsTheGlossaryHasThem) {
    const QString language = QString::fromUtf8(GetParam());
    const QStringList findings = glossary().findingsIn(messagesOf(language), language);
    EXPECT_TRUE(findings.isEmpty()) << findings.size() << " findings\n"
                                    << findings.join('\n').toStdString();
}

INSTANTIATE_TEST_SUITE_P(Into, Terms, testing::Values("es", "fr", "id"),
                         [](const auto& language) { return std::string(language.param); });

/// A term that the English no longer has, or an exception to nothing.
TEST(GlossaryOfTerms, EveryLineIsOfUse) {
    EXPECT_THAT(plain(glossary().unusedIn(messagesOf(QStringLiteral("es")))), ElementsAre());
}

const Glossary& small() {
    static const Glossary made(
        "# a remark, with a comma\n"
        "english,es,es-,fr,fr-,id,id-,sure,note\n"
        "look closer,,,,,,,-/-/-,not the part\n"
        "release groups?,grupos? de puertas,,,,,,T/-/-,\n"
        "\"releas(?:e|ed)\",accion,solt|suelt,,,,,S/-/-,\"a note, with a comma\"\n"
        "closers?,cierrapuertas,,ferme-portes?,,penutup pintu,,T/T/T,\n"
        "port State,Estado rector,,l'État du port,,,,S/V/-,\n");
    return made;
}

std::vector<std::string> findingsOf(const char* english, const char* translated,
                                    const char* language = "es") {
    return plain(small().findingsIn(
        {{QStringLiteral("Core"), QString::fromUtf8(english), QString::fromUtf8(translated)}},
        QString::fromUtf8(language)));
}

TEST(GlossaryOfTerms, ARenderingIsTheBeginningOfAWord) {
    EXPECT_THAT(findingsOf("Released", "Accionada"), IsEmpty());
    EXPECT_THAT(findingsOf("Released", "Reaccionada"), SizeIs(1));
    EXPECT_THAT(findingsOf("a closer", "el cierre"),
                ElementsAre(HasSubstr("Core: closers?: wants \\b(?:cierrapuertas)")));
    EXPECT_THAT(findingsOf("a closer", ""), IsEmpty()) << "not translated yet";
}

TEST(GlossaryOfTerms, AWrongRenderingIsNamedThoughTheRightOneIsThere) {
    EXPECT_THAT(findingsOf("release it", "accione: suelte"),
                ElementsAre(HasSubstr("releas(?:e|ed): says \"suelt\"\n    release it")));
    EXPECT_THAT(findingsOf("let it go", "suelte"), IsEmpty());
}

TEST(GlossaryOfTerms, ALongerTermTakesItsWordsAway) {
    EXPECT_THAT(findingsOf("Release groups", "Grupos de puertas"), IsEmpty());
    EXPECT_THAT(findingsOf("Release the release group", "Suelte el grupo de puertas"), SizeIs(1));
    EXPECT_THAT(findingsOf("Look closer", "Mirar de cerca"), IsEmpty());
    EXPECT_THAT(findingsOf("Look closer at the closer", "Mirar de cerca"), SizeIs(1));
}

TEST(GlossaryOfTerms, BlanksCapitalsAndApostrophesDoNotMatter) {
    EXPECT_THAT(findingsOf("release\ngroup", "GRUPO DE\u00a0PUERTAS"), IsEmpty());
    EXPECT_THAT(findingsOf("port State", "L’ÉTAT DU PORT", "fr"), IsEmpty());
    EXPECT_THAT(findingsOf("port State", "dasar", "id"), IsEmpty()) << "not checked";
}

TEST(GlossaryOfTerms, ATermThatNoTextHasIsNamed) {
    EXPECT_THAT(plain(small().unusedIn({{{}, "Look closer", {}}, {{}, "port State", {}}})),
                ElementsAre("release groups?", "releas(?:e|ed)", "closers?"));
}

} // namespace
} // namespace latchround::tour
