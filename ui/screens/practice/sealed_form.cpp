#include "ui/screens/practice/sealed_form.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

SealedForm::SealedForm(QWidget* parent)
    : Part(parent)
    , m_word(new QLineEdit) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(sizes().gap);
    lines->addWidget(
        new Label(tr("The instructor sealed this exercise. The instructor's word opens it."),
                  TextSize::Body));
    m_word->setObjectName(QStringLiteral("exercise-word"));
    m_word->setEchoMode(QLineEdit::Password);
    m_word->setPlaceholderText(tr("the instructor's word"));
    m_word->setAccessibleName(tr("The instructor's word"));
    lines->addWidget(m_word);
    auto* keys = new QHBoxLayout;
    auto* seen = keyOf(tr("Show what is typed"), "exercise-word-seen", "choice");
    seen->setCheckable(true);
    auto* open = keyOf(tr("Open the exercise ›"), "exercise-open", "primary");
    open->setEnabled(false);
    for (QPushButton* key : {seen, open})
        keys->addWidget(key, 1);
    lines->addLayout(keys);
    setFocusProxy(m_word);
    setFocusPolicy(Qt::StrongFocus);
    connect(seen, &QPushButton::toggled, this,
            [this](bool on) { m_word->setEchoMode(on ? QLineEdit::Normal : QLineEdit::Password); });
    connect(m_word, &QLineEdit::textChanged, open,
            [open](const QString& text) { open->setEnabled(!text.isEmpty()); });
    connect(m_word, &QLineEdit::returnPressed, open, &QPushButton::click);
    connect(open, &QPushButton::clicked, this, [this] { emit given(m_word->text()); });
}

} // namespace latchround::ui

#include "moc_sealed_form.cpp"
