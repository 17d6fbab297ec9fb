#include "ui/keys/phrase_picker.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/flow_grid.h"
#include "ui/look/touch_style.h"
#include "ui/words/offered.h"

namespace latchround::ui {

PhrasePicker::PhrasePicker(const QStringList& texts, bool own_words, QWidget* parent)
    : Part(parent)
    , m_grid(new FlowGrid)
    , m_own(new QLineEdit(this))
    , m_use(new QPushButton(tr("Use"), this)) {
    setAccessibleName(tr("Phrases"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(m_grid);
    auto* own_line = new QHBoxLayout;
    own_line->addWidget(m_own, 1);
    own_line->addWidget(m_use);
    layout->addLayout(own_line);
    m_own->setPlaceholderText(tr("own words"));
    m_own->setAccessibleName(tr("Own words"));
    m_own->setMinimumWidth(10);
    m_use->setEnabled(false);
    m_use->setAccessibleName(tr("Use own words"));
    m_own->setVisible(own_words);
    m_use->setVisible(own_words);
    const auto use_own = [this] {
        const QString words = m_own->text().simplified();
        if (!words.isEmpty())
            pick({words, words.toStdString()});
    };
    connect(m_own, &QLineEdit::textChanged, this,
            [this](const QString& text) { m_use->setEnabled(!text.simplified().isEmpty()); });
    connect(m_own, &QLineEdit::returnPressed, this, use_own);
    connect(m_use, &QPushButton::clicked, this, use_own);
    std::vector<Choice> choices;
    for (const QString& text : texts)
        choices.push_back({text, text.toStdString()});
    setChoices(std::move(choices));
    lookChanged();
}

void PhrasePicker::setPhrases(const std::vector<Wording>& phrases) {
    std::vector<Choice> choices;
    for (const Wording& phrase : phrases)
        choices.push_back({wordingWords(phrase), phrase});
    setChoices(std::move(choices));
}

void PhrasePicker::setChoices(std::vector<Choice> choices) {
    for (QPushButton* key : m_keys)
        delete key;
    m_keys.clear();
    m_chosen = {};
    for (Choice& choice : choices) {
        auto* key = new QPushButton(choice.shown, this);
        setRole(*key, "choice");
        key->setCheckable(true);
        key->setAccessibleName(choice.shown);
        key->setFont(font(TextSize::Body));
        setEnglish(*key, choice.english);
        connect(key, &QPushButton::clicked, this,
                [this, picked_here = std::move(choice)] { pick(picked_here); });
        m_keys.push_back(key);
    }
    arrange();
}

void PhrasePicker::clear() {
    m_chosen = {};
    m_own->clear();
    for (QPushButton* key : m_keys)
        key->setChecked(false);
}

void PhrasePicker::pick(const Choice& choice) {
    m_chosen = choice.recorded;
    for (QPushButton* key : m_keys)
        key->setChecked(key->text() == choice.shown);
    emit picked(choice.shown, choice.recorded);
}

/// Long phrases wrap; a third column comes late, and a phrase alone has the whole line.
void PhrasePicker::arrange() {
    const int most = width() < mm(140) ? 2 : 3;
    const int columns = FlowGrid::columnsOf(width(), mm(30), std::min(most, int(m_keys.size())));
    m_grid->place(m_keys, columns, FlowGrid::keyHeight(m_keys, columns, width()));
}

void PhrasePicker::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

void PhrasePicker::lookChanged() {
    for (QPushButton* key : m_keys)
        key->setFont(font(TextSize::Body));
    arrange();
    layout()->setSpacing(sizes().gap);
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_phrase_picker.cpp"
