#include "ui/window/undo_sheet.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/lettering.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/told.h"
#include "ui/window/tap_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/walkdown_words.h"

namespace latchround::ui {

namespace {

struct UndoSheet {
    Q_DECLARE_TR_FUNCTIONS(UndoSheet)
};

/// The time of day, and the day where it was another.
QString whenWords(const Moment& when, const Moment& now) {
    return dayWords(when) == dayWords(now) ? clockWords(when)
                                           : dayWords(when) + QLatin1Char(' ') + clockWords(when);
}

/// The rows of the sheet: a tap in words, and the key that undoes or redoes it.
class Rows {
public:
    Rows(Round& round, Sheet& sheet, QVBoxLayout& lines,
         const std::function<void(const QString&)>& done)
        : m_round(round)
        , m_sheet(sheet)
        , m_lines(lines)
        , m_done(done) {}

    void head(const QString& words) {
        m_lines.addWidget(new Lettering(words, TextSize::Small, Ink::Muted));
    }

    void add(const std::optional<Tap>& tap, const QString& verb, const QString& past,
             const char* name, const char* role = "plain") {
        if (!tap)
            return;
        QString words = tapWords(*tap->named_by, m_round);
        if (const std::size_t facts = tap->facts.size(); facts > 1)
            words = UndoSheet::tr("%1, and %2 more").arg(words, QString::number(facts - 1));
        m_lines.addWidget(
            new Lettering(QStringLiteral("%1 · %2").arg(
                              whenWords(tap->named_by->stamp.when, m_round.clock().now()), words),
                          TextSize::Lead));
        QPushButton* key = keyOf(verb, name, role);
        key->setAccessibleName(QStringLiteral("%1: %2").arg(verb, words));
        m_lines.addWidget(key);
        QObject::connect(key, &QPushButton::clicked, &m_sheet,
                         [&round = m_round, &sheet = m_sheet, done = m_done, tap = *tap,
                          said = QStringLiteral("%1: %2").arg(past, words)] {
                             QWidget* window = sheet.window();
                             sheet.close();
                             if (const Done undone = round.undo(tap); !undone)
                                 tell(window, UndoSheet::tr("Not undone"),
                                      errorWords(undone.error()));
                             else
                                 done(said);
                         });
    }

private:
    Round& m_round;
    Sheet& m_sheet;
    QVBoxLayout& m_lines;
    const std::function<void(const QString&)>& m_done;
};

/// What is at the door on the screen is not said twice.
std::optional<Tap> elsewhere(std::optional<Tap> tap, const Round& round, const QString& door) {
    return tap && round.ledger().doorOf(*tap->named_by) != door.toStdString() ? std::move(tap)
                                                                              : std::nullopt;
}

} // namespace

bool canUndo(const Round& round) {
    return round.tapToTakeBack() || round.tapToPutBack();
}

void openUndo(Round& round, QWidget* over, const QString& door,
              const std::function<void(const QString& what)>& done) {
    auto* sheet = new Sheet(over, UndoSheet::tr("Undo"));
    sheet->setObjectName(QStringLiteral("undo-sheet"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    Rows rows(round, *sheet, *lines, done);
    const QString take_back = UndoSheet::tr("Take back");
    const QString put_back = UndoSheet::tr("Put back");
    const QString taken_back = UndoSheet::tr("taken back");
    const QString put_back_again = UndoSheet::tr("put back");
    const std::optional<Tap> to_take_back = round.tapToTakeBack(door);
    const std::optional<Tap> to_put_back = round.tapToPutBack(door);
    if (!door.isEmpty())
        rows.head(to_take_back || to_put_back
                      ? UndoSheet::tr("At door %1").arg(door)
                      : UndoSheet::tr("At door %1 there is nothing to take back.").arg(door));
    rows.add(to_take_back, take_back, taken_back, "undo-take-back", "primary");
    rows.add(to_put_back, put_back, put_back_again, "undo-put-back");
    if (!door.isEmpty()) {
        const std::optional<Tap> other = elsewhere(round.tapToTakeBack(), round, door);
        const std::optional<Tap> other_back = elsewhere(round.tapToPutBack(), round, door);
        if (other || other_back)
            rows.head(UndoSheet::tr("Not at this door"));
        rows.add(other, take_back, taken_back, "undo-take-back-elsewhere");
        rows.add(other_back, put_back, put_back_again, "undo-put-back-elsewhere");
    }
    lines->addWidget(new Lettering(
        UndoSheet::tr("Both are recorded; nothing is deleted. What was signed stands."),
        TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->setWidthMm(130);
    sheet->open();
}

} // namespace latchround::ui
