#include "ui/keys/choice_row.h"

#include <algorithm>
#include <array>

#include <QBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>

#include "ui/keys/help_key.h"
#include "ui/keys/second_tap.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {
namespace {

constexpr std::array<Answer, 3> answers{Answer::Yes, Answer::No, Answer::NotApplicable};

const char* toneOf(Answer answer) {
    switch (answer) {
    case Answer::Yes:
        return "good";
    case Answer::No:
        return "bad";
    case Answer::NotApplicable:
        return "neutral";
    }
    return "neutral";
}

} // namespace

QString answerWords(Answer answer) {
    return answer == Answer::Yes  ? ChoiceRow::tr("Yes")
           : answer == Answer::No ? ChoiceRow::tr("No")
                                  : ChoiceRow::tr("n/a");
}

ChoiceRow::ChoiceRow(const QString& question, const QString& help, bool both_sides, QWidget* parent)
    : Part(parent)
    , m_layout(new QBoxLayout(QBoxLayout::LeftToRight, this))
    , m_words(new QVBoxLayout)
    , m_sides(new QVBoxLayout) {
    m_words->setSpacing(2);
    m_words->addStretch(1);
    m_words->addWidget(new Label(question, TextSize::Lead, Ink::Plain));
    if (!help.isEmpty())
        m_words->addWidget(new Label(help, TextSize::Small, Ink::Muted));
    m_words->addStretch(1);
    m_layout->addLayout(m_words, 1);
    m_layout->addLayout(m_sides);
    if (both_sides) {
        addKeys(Side::One, question);
        addKeys(Side::Two, question);
    } else {
        addKeys(Side::None, question);
    }
    setAccessibleName(question);
    setAccessibleDescription(help);
    lookChanged();
}

void ChoiceRow::offerHelp() {
    if (m_help)
        return;
    m_help = new HelpKey(*m_layout, *m_words, accessibleName());
    connect(m_help, &HelpKey::clicked, this, &ChoiceRow::helpAsked);
    lookChanged();
}

void ChoiceRow::keyPressEvent(QKeyEvent* event) {
    if (m_help && event->key() == Qt::Key_F1)
        emit helpAsked();
    else
        Part::keyPressEvent(event);
}

void ChoiceRow::addKeys(Side side, const QString& question) {
    Keys keys;
    keys.side = side;
    keys.box = new QWidget(this);
    auto* line = new QHBoxLayout(keys.box);
    line->setContentsMargins(0, 0, 0, 0);
    const QString side_words = side == Side::One   ? tr("side one")
                               : side == Side::Two ? tr("side two")
                                                   : QString();
    if (!side_words.isEmpty()) {
        auto* label = new Label(side_words, TextSize::Small, Ink::Muted);
        label->setWordWrap(false);
        line->addWidget(label);
    }
    for (const Answer answer : answers) {
        const QString word = answerWords(answer);
        auto* button = new QPushButton(word, keys.box);
        setRole(*button, "choice");
        setTone(*button, toneOf(answer));
        button->setCheckable(true);
        QString name = word + QStringLiteral(": ") + question;
        if (!side_words.isEmpty())
            name += QStringLiteral(", ") + side_words;
        button->setAccessibleName(name);
        passOverSecondTap(*button);
        connect(button, &QPushButton::clicked, this, [this, side, answer] { press(side, answer); });
        line->addWidget(button);
        keys.buttons.push_back(button);
    }
    m_sides->addWidget(keys.box, 0, Qt::AlignRight | Qt::AlignVCenter);
    m_keys.push_back(std::move(keys));
}

ChoiceRow::Keys* ChoiceRow::keysOf(Side side) {
    const auto found = std::find_if(m_keys.begin(), m_keys.end(),
                                    [side](const Keys& keys) { return keys.side == side; });
    return found == m_keys.end() ? nullptr : &*found;
}

const ChoiceRow::Keys* ChoiceRow::keysOf(Side side) const {
    return const_cast<ChoiceRow*>(this)->keysOf(side);
}

void ChoiceRow::press(Side side, Answer answer) {
    const Keys* keys = keysOf(side);
    if (keys->answer == answer) {
        setAnswer(answer, side); // the key has come up
        emit clearAsked(side);
    } else {
        setAnswer(answer, side);
        emit answered(answer, side);
    }
}

void ChoiceRow::setAnswer(std::optional<Answer> answer, Side side) {
    Keys* keys = keysOf(side);
    if (keys == nullptr)
        return;
    keys->answer = answer;
    for (std::size_t i = 0; i < answers.size(); ++i)
        keys->buttons[i]->setChecked(answer == answers[i]);
}

std::optional<Answer> ChoiceRow::answer(Side side) const {
    const Keys* keys = keysOf(side);
    return keys == nullptr ? std::nullopt : keys->answer;
}

QPushButton* ChoiceRow::key(Answer answer, Side side) const {
    const Keys* keys = keysOf(side);
    const auto place = std::find(answers.begin(), answers.end(), answer) - answers.begin();
    return keys == nullptr ? nullptr : keys->buttons[std::size_t(place)];
}

void ChoiceRow::changeEvent(QEvent* event) {
    Part::changeEvent(event);
    if (event->type() == QEvent::ParentChange) // a row is made before it comes into its window
        lookChanged();
}

void ChoiceRow::lookChanged() {
    if (m_help)
        m_help->dress();
    const int pad = sizes().pad;
    m_layout->setContentsMargins(m_help ? sizes().gap : pad, sizes().gap, pad, sizes().gap);
    m_layout->setSpacing(sizes().gap);
    m_sides->setSpacing(sizes().gap);
    for (Keys& keys : m_keys) {
        keys.box->layout()->setSpacing(sizes().gap);
        for (QPushButton* button : keys.buttons)
            button->setFont(font(TextSize::Lead, true));
    }
    sizeKeys(width());
    Part::lookChanged();
}

void ChoiceRow::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    sizeKeys(width());
}

int ChoiceRow::heightForWidth(int width) const {
    sizeKeys(width);
    return Part::heightForWidth(width);
}

/// As wide as a main target where the question keeps room beside them; below the question on a
/// narrow page.
void ChoiceRow::sizeKeys(int row_width) const {
    const Sizes& s = sizes();
    const bool narrow = row_width < mm(80);
    m_layout->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    const double share = narrow ? 1.0 : 0.46;
    const double room = (row_width - 2.0 * s.pad) * share - 2.0 * s.gap;
    const int wide = std::clamp(int(room / 3), s.target, s.main_target);
    for (const Keys& keys : m_keys) {
        if (keys.buttons.front()->size() == QSize(wide, s.target))
            continue;
        for (QPushButton* button : keys.buttons)
            button->setFixedSize(wide, s.target);
        // At once: the row's height is asked for before it is laid out.
        keys.box->updateGeometry();
        m_sides->invalidate();
    }
}

void ChoiceRow::setMarked(bool marked) {
    m_marked = marked;
    setAccessibleDescription(marked ? tr("next to be answered by the letters y, n and a")
                                    : QString());
    update();
}

void ChoiceRow::paintEvent(QPaintEvent*) {
    if (m_marked) {
        QPainter painter(this);
        painter.fillRect(QRectF(0, 0, mm(1.2), height()), colours().accent);
    }
    // A hairline keeps one question from the one above; the card they lie on is the screen's.
    if (y() <= sizes().corner)
        return;
    QPainter painter(this);
    painter.setPen(QPen(colours().hairline, 1));
    painter.drawLine(QPointF(0, 0.5), QPointF(width(), 0.5));
}

} // namespace latchround::ui

#include "moc_choice_row.cpp"
