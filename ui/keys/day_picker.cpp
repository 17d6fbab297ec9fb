#include "ui/keys/day_picker.h"

#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/choice_keys.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/date_words.h"

namespace latchround::ui {

DayPicker::DayPicker(const char* name, const std::vector<Usual>& usual, QWidget* parent)
    : Part(parent) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    if (!usual.empty()) {
        QStringList words;
        for (const auto& [key, day] : usual)
            words << key + QStringLiteral("\n") + dateWords(day);
        auto* keys = new ChoiceKeys(name, ChoiceKeys::Many::One, int(usual.size()));
        keys->setChoices(words);
        lines->addWidget(keys);
        connect(keys, &ChoiceKeys::touched, this,
                [this, usual](int index, bool) { emit picked(usual[std::size_t(index)].second); });
    }
    lines->addWidget(new Label(tr("Or type the date, like 2027-03-31."), TextSize::Body));
    auto* line = new QLineEdit;
    line->setObjectName(QLatin1String(name));
    line->setPlaceholderText(QStringLiteral("YYYY-MM-DD"));
    line->setAccessibleName(tr("Date"));
    const QByteArray keep_name = QByteArray(name) + "-keep";
    auto* keep = keyOf(tr("Use"), keep_name.constData(), "primary");
    keep->setEnabled(false);
    lines->addWidget(line);
    lines->addWidget(keep);
    setFocusProxy(line);
    const auto read = [line] { return calendarDateFrom(line->text().trimmed().toStdString()); };
    connect(line, &QLineEdit::textChanged, keep,
            [keep, read] { keep->setEnabled(read().has_value()); });
    const auto take = [this, read] {
        if (const auto day = read())
            emit picked(*day);
    };
    connect(keep, &QPushButton::clicked, this, take);
    connect(line, &QLineEdit::returnPressed, this, take);
}

} // namespace latchround::ui

#include "moc_day_picker.cpp"
