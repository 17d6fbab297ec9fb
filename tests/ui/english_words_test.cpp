// The English that stands small beneath a warning: for which languages it is there, what is known
// of a word of the radio, and the room it takes on a key and among rows.
#include <QFile>
#include <QLabel>
#include <QPushButton>

#include <gmock/gmock.h>

#include "core/safety/cautions.h"
#include "tests/passing_time.h"
#include "tests/ui/print_to.h"
#include "tests/ui/tongue.h"
#include "ui/keys/flow_grid.h"
#include "ui/keys/row_pager.h"
#include "ui/look/touch_style.h"
#include "ui/words/english_beneath.h"
#include "ui/words/phrase_words.h"
#include "ui/words/radio_words.h"

namespace latchround::ui {
namespace {

QString inEnglish(const std::function<QString()>& words) {
    const InEnglish english;
    return words();
}

TEST(English, IsLeftOutOnlyForALanguageThatASpeakerHasChecked) {
    EXPECT_TRUE(isCheckedBySpeaker(u"en"));
    for (const char* language : {"es", "fr", "id"}) {
        QFile file(tour::languageFile(QLatin1String(language)));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_NE(isCheckedBySpeaker(QString::fromLatin1(language)),
                  file.readAll().contains("type=\"unfinished\""))
            << language;
    }
    Tongue tongue(QStringLiteral("es"));
    QCoreApplication::installTranslator(&tongue);
    const auto words = [] { return phraseWords(cautionsBeforeRelease().front().question()); };
    QLocale::setDefault(QLocale(QLocale::English)); // its words are those of a checked language
    EXPECT_EQ(englishBeneath(words), "");
    QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::Mexico));
    EXPECT_EQ(englishBeneath(words), inEnglish(words));
    EXPECT_EQ(englishBeneath([] { return QStringLiteral("Ch 8"); }), "") << "the same in both";
    QCoreApplication::removeTranslator(&tongue);
    QLocale::setDefault(QLocale::c());
}

TEST(English, OfOwnWordsOnTheRadioIsNotKnown) {
    Tongue tongue(QStringLiteral("es"));
    QCoreApplication::installTranslator(&tongue);
    EXPECT_EQ(radioWord("suelten ya").english, "suelten ya");
    QCoreApplication::removeTranslator(&tongue);
}

TEST(English, HasRoomOnAKeyBeneathItsWords) {
    QPushButton key(QStringLiteral("alto alto alto"));
    const QSize before = key.sizeHint();
    const int wide = 2 * before.width();
    const int high = FlowGrid::keyHeight({&key}, 1, wide);
    const QString narrow = QStringLiteral("alto\nalto\nalto");
    setEnglish(key, QStringLiteral("stop stop stop, as everyone aboard says it"));
    key.setText(QStringLiteral("alto"));
    EXPECT_GT(key.sizeHint().width(), before.width());
    key.setText(narrow);
    const int with = FlowGrid::keyHeight({&key}, 1, wide);
    setEnglish(key, {});
    EXPECT_GT(with, FlowGrid::keyHeight({&key}, 1, wide));
    EXPECT_GE(with, high);
}

/// A row of this height.
class Block : public QWidget {
public:
    explicit Block(int high)
        : m_high(high) {}
    QSize sizeHint() const override { return {100, m_high}; }
    QSize minimumSizeHint() const override { return sizeHint(); }

private:
    int m_high;
};

TEST(English, StaysWithItsRowWhereAPageHasRoomForBothAndIsNotCounted) {
    RowPager pager;
    pager.resize(400, 500);
    pager.show();
    const auto divided = [&](int high) {
        std::vector<QWidget*> rows;
        for (int i = 0; i < 4; ++i)
            rows.push_back(new Block(high));
        for (const std::size_t second : {1U, 3U})
            RowPager::makeFollow(*rows[second]);
        pager.setRows(rows);
        test::settle(pager);
        std::vector<std::string> pages;
        for (int page = 0; page < pager.pages(); ++page) {
            pager.turnTo(page);
            std::string shown;
            for (const QWidget* row : rows)
                shown += row->isHidden() ? '-' : 'x';
            for (const QLabel* label : pager.findChildren<QLabel*>())
                shown += ", " + label->text().toStdString();
            pages.push_back(shown);
        }
        return pages;
    };
    EXPECT_THAT(divided(130), // three would fit
                testing::ElementsAre("xx--, 1 to 1 of 2", "--xx, 2 to 2 of 2"));
    EXPECT_THAT(divided(300), testing::ElementsAre("x---, 1 to 1 of 2", "-x--, 1 to 1 of 2",
                                                   "--x-, 2 to 2 of 2", "---x, 2 to 2 of 2"));
}

} // namespace
} // namespace latchround::ui
