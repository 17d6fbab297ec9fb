#include "ui/screens/practice/password_form.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/look/label.h"
#include "ui/look/touch_style.h"

namespace latchround::ui {

PasswordForm::PasswordForm(QWidget* parent)
    : Part(parent)
    , m_word(new QLineEdit) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(sizes().gap);
    lines->addWidget(
        new Label(tr("The instructor has locked this exercise. Enter the password to open it."),
                  TextSize::Body));
    m_word->setObjectName(QStringLiteral("exercise-password"));
    m_word->setEchoMode(QLineEdit::Password);
    m_word->setPlaceholderText(tr("password"));
    m_word->setAccessibleName(tr("Password"));
    lines->addWidget(m_word);
    auto* keys = new QHBoxLayout;
    auto* seen = keyOf(tr("Show password"), "exercise-password-seen", "choice");
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

#include "moc_password_form.cpp"
