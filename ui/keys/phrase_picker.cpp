#include "ui/keys/phrase_picker.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/flow_grid.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

PhrasePicker::PhrasePicker(const QStringList& phrases, bool own_words, QWidget* parent)
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
            pick(words);
    };
    connect(m_own, &QLineEdit::textChanged, this,
            [this](const QString& text) { m_use->setEnabled(!text.simplified().isEmpty()); });
    connect(m_own, &QLineEdit::returnPressed, this, use_own);
    connect(m_use, &QPushButton::clicked, this, use_own);
    setPhrases(phrases);
    lookChanged();
}

void PhrasePicker::setPhrases(const QStringList& phrases) {
    for (QPushButton* key : m_keys)
        delete key;
    m_keys.clear();
    m_phrases = phrases;
    m_chosen.clear();
    for (const QString& phrase : phrases) {
        auto* key = new QPushButton(phrase, this);
        setRole(*key, "choice");
        key->setCheckable(true);
        key->setAccessibleName(phrase);
        key->setFont(font(TextSize::Body));
        connect(key, &QPushButton::clicked, this, [this, phrase] { pick(phrase); });
        m_keys.push_back(key);
    }
    arrange();
}

void PhrasePicker::clear() {
    m_chosen.clear();
    m_own->clear();
    for (QPushButton* key : m_keys)
        key->setChecked(false);
}

void PhrasePicker::pick(const QString& phrase) {
    m_chosen = phrase;
    for (QPushButton* key : m_keys)
        key->setChecked(key->text() == phrase);
    emit picked(phrase);
}

/// Long phrases wrap; a third column comes late.
void PhrasePicker::arrange() {
    const int columns = FlowGrid::columnsOf(width(), mm(30), width() < mm(140) ? 2 : 3);
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
