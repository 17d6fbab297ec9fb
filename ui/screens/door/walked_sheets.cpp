#include "ui/screens/door/walked_sheets.h"

#include <QHash>
#include <QTimeZone>

#include "core/evidence/moment_text.h"
#include "ui/frames/sheet.h"
#include "ui/keys/day_picker.h"
#include "ui/keys/keypad.h"
#include "ui/keys/person_form.h"
#include "ui/keys/phrase_picker.h"

namespace latchround::ui {

namespace {

constexpr int hour_digits = 100; ///< 1432 is 14:32

/// That day and time by the ship's clock; nothing where there is no such time of day.
std::optional<Moment> momentOf(CalendarDate day, double digits, int ship_offset_minutes) {
    const int hours = int(digits) / hour_digits;
    const int minutes = int(digits) % hour_digits;
    if (digits < 0 || hours > 23 || minutes > 59)
        return std::nullopt;
    const QDate date(int(day.year()), int(unsigned(day.month())), int(unsigned(day.day())));
    const QDateTime ship(date, QTime(hours, minutes), QTimeZone(ship_offset_minutes * 60));
    return Moment{ship.toMSecsSinceEpoch(), ship_offset_minutes};
}

} // namespace

WalkedSheets::WalkedSheets(VesselSession& session, QWidget* over)
    : QObject(over)
    , m_session(session)
    , m_over(over) {}

void WalkedSheets::ask() {
    auto* sheet = new Sheet(m_over, tr("From paper: who tested the door?"));
    QStringList names;
    QHash<QString, FactId> ids;
    for (const Person& person : m_session.ledger().people()) {
        const QString name = QString::fromStdString(person.name);
        if (!ids.contains(name))
            names << name;
        ids[name] = person.id;
    }
    const QString other = tr("Someone else");
    auto* picker = new PhrasePicker(names << other, false);
    picker->setObjectName(QStringLiteral("walked-by"));
    connect(picker, &PhrasePicker::picked, sheet, [this, sheet, ids, other](const QString& one) {
        sheet->close();
        if (one == other)
            somebodyElse();
        else
            askDay(ids.value(one));
    });
    sheet->setContent(picker);
    sheet->open();
}

void WalkedSheets::somebodyElse() {
    auto* sheet = new Sheet(m_over, tr("From paper: who tested the door?"));
    auto* form = new PersonForm;
    connect(form, &PersonForm::given, sheet,
            [this, sheet](const QString& name, const Wording& role) {
                sheet->close();
                if (const FactId walker = m_session.join(name, role); m_session.knows(walker))
                    askDay(walker);
            });
    sheet->setContent(form);
    sheet->open();
}

void WalkedSheets::askDay(const FactId& walker) {
    const CalendarDate today = shipsDay(m_session.clock().now());
    const auto before = [&](int days) {
        return CalendarDate(std::chrono::sys_days(today) - std::chrono::days(days));
    };
    auto* sheet = new Sheet(m_over, tr("From paper: on which day?"));
    auto* picker = new DayPicker(
        "walked-day",
        {{tr("today"), today}, {tr("yesterday"), before(1)}, {tr("two days ago"), before(2)}});
    connect(picker, &DayPicker::picked, sheet, [this, sheet, walker](CalendarDate day) {
        sheet->close();
        askTime(walker, day);
    });
    sheet->setContent(picker);
    sheet->setWidthMm(180);
    sheet->open();
}

void WalkedSheets::askTime(const FactId& walker, CalendarDate day) {
    auto* sheet = new Sheet(m_over, tr("From paper: at what time?"));
    const QString asked = tr("ship's time at this door, hours and minutes: 1432 is 14:32");
    auto* keypad = new Keypad;
    keypad->setTitle(asked);
    keypad->setDecimals(0);
    connect(keypad, &Keypad::entered, sheet,
            [this, sheet, keypad, asked, walker, day](double digits) {
                const Moment now = m_session.clock().now();
                const auto when = momentOf(day, digits, now.ship_offset_minutes);
                if (when && when->utc_ms <= now.utc_ms) {
                    sheet->close();
                    emit given({walker, *when, {}});
                    return;
                }
                keypad->setTitle(
                    (when ? tr("That is in the future.") : tr("That is not a valid time.")) +
                    QLatin1Char(' ') + asked);
                keypad->clear();
            });
    sheet->setContent(keypad);
    sheet->setWidthMm(90);
    sheet->open();
}

} // namespace latchround::ui

#include "moc_walked_sheets.cpp"
