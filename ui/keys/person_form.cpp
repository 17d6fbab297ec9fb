#include "ui/keys/person_form.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include "ui/keys/phrase_picker.h"
#include "ui/look/label.h"
#include "ui/words/offered.h"

namespace latchround::ui {

PersonForm::PersonForm(QWidget* parent)
    : Part(parent) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    auto* name = new QLineEdit;
    name->setObjectName(QStringLiteral("person-name"));
    name->setPlaceholderText(tr("name"));
    name->setAccessibleName(tr("Name"));
    auto* hint =
        new Label(tr("Type the name, then touch this person's role."), TextSize::Body, Ink::Muted);
    hint->setObjectName(QStringLiteral("person-hint"));
    auto* roles = new PhrasePicker;
    roles->setPhrases(offeredFor(OfferedFor::Role));
    roles->setObjectName(QStringLiteral("person-role"));
    roles->setEnabled(false);
    lines->addWidget(name);
    lines->addWidget(hint);
    lines->addWidget(roles);
    setFocusProxy(name);
    setFocusPolicy(Qt::StrongFocus);
    connect(name, &QLineEdit::textChanged, roles,
            [roles](const QString& text) { roles->setEnabled(!text.simplified().isEmpty()); });
    connect(roles, &PhrasePicker::picked, this, [this, name](const QString&, const Wording& role) {
        emit given(name->text().simplified(), role);
    });
}

} // namespace latchround::ui

#include "moc_person_form.cpp"
