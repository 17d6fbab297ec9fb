#include "ui/screens/first/first_screen.h"

#include <algorithm>
#include <cmath>

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/card.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/choice_keys.h"
#include "ui/look/english_label.h"
#include "ui/look/touch_style.h"
#include "ui/words/english_beneath.h"

namespace latchround::ui {

namespace {

constexpr std::array offered_scales{1.0, 1.5, 2.0};

} // namespace

FirstScreen::FirstScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_lines(new QBoxLayout(QBoxLayout::TopToBottom, page()))
    , m_sides(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_turner(new QWidget)
    , m_before(keyOf(tr("‹ Previous"), "first-before"))
    , m_after(keyOf(tr("Next ›"), "first-after", "primary"))
    , m_where(new Label({}, TextSize::Body, Ink::Muted)) {
    setObjectName(QStringLiteral("first"));
    const auto danger = [] {
        return tr("A released door moves by itself. Never walk through it. Keep hands "
                  "and feet off edges and pockets. Post a lookout on each side of every "
                  "door. Anyone may stop the test.");
    };
    m_parts = {
        makeWords(tr("Testing doors that can crush"),
                  {tr("Latchround guides you from door to door, asks only what applies to this "
                      "ship and kind of door, times the closing and grades it."),
                   danger()},
                  englishBeneath(danger)),
        makeWords(tr("Rules that take precedence"),
                  {tr("The flag Administration, the approved fire plan, local rules and the "
                      "judgement of its users take precedence over this program. A grade is "
                      "an aid, not a certificate."),
                   tr("It follows the texts of 2015. Later amendments have not been checked.")}),
        makeSizes(), makeBeginning()};
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->addLayout(m_sides, 1);
    m_lines->addWidget(m_turner);
    auto* told = new QVBoxLayout;
    for (std::size_t i = 0; i + 1 < m_parts.size(); ++i)
        told->addWidget(m_parts[i]);
    m_sides->addLayout(told, 3);
    m_sides->addWidget(m_parts.back(), 2);
    auto* turner = new QHBoxLayout(m_turner);
    turner->setContentsMargins(0, 0, 0, 0);
    turner->addWidget(m_before, 1);
    turner->addWidget(m_where);
    turner->addWidget(m_after, 1);
    m_where->setWordWrap(false);
    connect(m_before, &QPushButton::clicked, this, [this] { turn(-1); });
    connect(m_after, &QPushButton::clicked, this, [this] { turn(1); });
    arrange(false);
    lookChanged();
}

Card* FirstScreen::makeWords(const QString& title, const QStringList& paragraphs,
                             const QString& english) {
    auto* card = new Card;
    auto* lines = new QVBoxLayout(card);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(title, TextSize::Heading, Ink::Plain, true));
    for (const QString& paragraph : paragraphs) {
        const bool last = &paragraph == &paragraphs.back();
        auto* words = withEnglish(paragraph, TextSize::Body, last ? english : QString());
        lines->addWidget(words);
        if (!last && !english.isEmpty())
            m_gives_way = words;
    }
    lines->addStretch(1);
    return card;
}

Card* FirstScreen::makeSizes() {
    auto* card = new Card;
    auto* lines = new QVBoxLayout(card);
    lines->setContentsMargins(0, 0, 0, 0);
    m_scale = new ChoiceKeys("first-size", ChoiceKeys::Many::One, int(offered_scales.size()));
    m_scale->setChoices({tr("Normal"), tr("Larger"), tr("Twice as large")});
    m_gloves = new ChoiceKeys("first-gloves", ChoiceKeys::Many::One, 2);
    m_gloves->setChoices({tr("Bare hands"), tr("Gloves")});
    lines->addWidget(new Label(tr("Text and keys"), TextSize::Lead, Ink::Plain, true));
    lines->addWidget(m_scale);
    lines->addWidget(new Label(tr("Hands"), TextSize::Lead, Ink::Plain, true));
    lines->addWidget(m_gloves);
    lines->addStretch(1);
    connect(m_scale, &ChoiceKeys::touched, this, [this](int index, bool) {
        emit scaleChosen(offered_scales[std::size_t(index)]);
        showLook();
    });
    connect(m_gloves, &ChoiceKeys::touched, this, [this](int index, bool) {
        emit glovesChosen(index == 1);
        showLook();
    });
    return card;
}

Card* FirstScreen::makeBeginning() {
    auto* card = new Card;
    auto* lines = new QVBoxLayout(card);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* title = new Label(tr("Start here"), TextSize::Heading, Ink::Plain, true);
    lines->addWidget(title);
    m_explained.push_back(title);
    const auto add = [&](const QString& words, const char* name, const char* role,
                         const QString& explained, void (FirstScreen::*asked)()) {
        QPushButton* key = keyOf(words, name, role);
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
        connect(key, &QPushButton::clicked, this, asked);
        lines->addWidget(key, 2);
        auto* words_below = new Label(explained, TextSize::Small, Ink::Muted);
        lines->addWidget(words_below);
        m_explained.push_back(words_below);
        return key;
    };
    m_look_round = add(tr("Look round the demo vessel"), "first-look-round", "primary",
                       tr("A fictitious ferry with a walkdown under way, to try every screen."),
                       &FirstScreen::lookRoundAsked);
    m_practise = add(tr("Practise"), "first-practise", "plain",
                     tr("Simulated doors that move, fail and hide faults, with a debrief."),
                     &FirstScreen::practiceAsked);
    m_take_in = add(tr("Import my vessel's register (CSV)"), "first-take-in", "plain",
                    tr("Decks, zones, boundaries and doors from a spreadsheet; every error in it "
                       "is listed."),
                    &FirstScreen::registerAsked);
    lines->addStretch(1);
    return card;
}

void FirstScreen::enter() {
    showLook();
    (isSmall() ? m_after : m_look_round)->setFocus();
}

void FirstScreen::arrange(bool upright) {
    const bool small = isSmall();
    const int last = int(m_parts.size()) - 1;
    bar().setTitle(QStringLiteral("Latchround"), small ? QString() : tr("fire door walkdowns"));
    for (int i = 0; i <= last; ++i)
        m_parts[std::size_t(i)]->setVisible(!small || i == m_at);
    for (Label* explained : m_explained)
        explained->setVisible(!small || upright);
    if (m_gives_way)
        m_gives_way->setVisible(!sizes().gloves && (!small || upright));
    m_sides->setDirection(upright || small ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_sides->setStretch(0, small && m_at == last ? 0 : 3);
    m_sides->setStretch(1, small && m_at != last ? 0 : 2);
    m_turner->setVisible(small);
    m_before->setEnabled(m_at > 0);
    m_after->setEnabled(m_at < last);
    m_where->setText(tr("%1 of %2").arg(m_at + 1).arg(m_parts.size()));
    for (QPushButton* key : {m_look_round, m_practise, m_take_in}) {
        key->setMinimumHeight(sizes().target);
        key->setMaximumHeight(sizes().main_target);
    }
}

void FirstScreen::turn(int by) {
    m_at = std::clamp(m_at + by, 0, int(m_parts.size()) - 1);
    arrange(isUpright());
    if (m_at + 1 == int(m_parts.size()))
        m_look_round->setFocus();
}

/// The keys say what the look is, whoever changed it.
void FirstScreen::showLook() {
    const Appearance& appearance = look();
    const auto nearest = std::min_element(
        offered_scales.begin(), offered_scales.end(), [&](double one, double other) {
            return std::abs(one - appearance.scale) < std::abs(other - appearance.scale);
        });
    m_scale->setChosen({int(nearest - offered_scales.begin())});
    m_gloves->setChosen({appearance.sizes.gloves ? 1 : 0});
}

void FirstScreen::lookChanged() {
    Screen::lookChanged();
    m_lines->setSpacing(sizes().gap);
    m_sides->setSpacing(isUpright() ? sizes().gap : sizes().main_gap);
    m_sides->itemAt(0)->layout()->setSpacing(sizes().gap);
    m_turner->layout()->setSpacing(sizes().main_gap);
    for (Card* part : m_parts)
        part->layout()->setSpacing(part == m_parts.back() ? sizes().gap : sizes().gap / 2);
    showLook();
    arrange(isUpright());
}

} // namespace latchround::ui

#include "moc_first_screen.cpp"
