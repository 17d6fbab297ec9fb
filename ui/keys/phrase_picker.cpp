#include "ui/keys/phrase_picker.h"

#include <algorithm>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/key_grid.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

PhrasePicker::PhrasePicker(const QStringList& phrases, bool own_words, QWidget* parent)
    : Part(parent)
    , m_grid(new QGridLayout)
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
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed); // long phrases wrap
        connect(key, &QPushButton::clicked, this, [this, phrase] { pick(phrase); });
        m_keys.push_back(key);
    }
    m_columns = 0;
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

int PhrasePicker::columnsFor(int width) const {
    return width < mm(60) ? 1 : width < mm(140) ? 2 : 3;
}

void PhrasePicker::arrange() {
    const int columns = columnsFor(width());
    if (columns == m_columns && width() == m_arranged_for)
        return;
    m_columns = columns;
    m_arranged_for = width();
    const int height = heightOfKeys(m_keys, columns, width());
    for (QPushButton* key : m_keys)
        key->setFixedHeight(height);
    for (std::size_t i = 0; i < m_keys.size(); ++i)
        m_grid->addWidget(m_keys[i], int(i) / columns, int(i) % columns);
    for (int column = 0; column < 3; ++column)
        m_grid->setColumnStretch(column, column < columns ? 1 : 0);
}

void PhrasePicker::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    arrange();
}

void PhrasePicker::lookChanged() {
    m_grid->setSpacing(sizes().gap);
    for (QPushButton* key : m_keys)
        key->setFont(font(TextSize::Body));
    m_columns = 0;
    arrange();
    layout()->setSpacing(sizes().gap);
    Part::lookChanged();
}

} // namespace latchround::ui

#include "moc_phrase_picker.cpp"
