#include "ui/window/undo_sheet.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/message.h"
#include "ui/words/phrase_words.h"
#include "ui/words/tap_words.h"
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
    Rows(VesselSession& session, Sheet& sheet, QVBoxLayout& lines,
         const std::function<void(const QString&)>& done)
        : m_session(session)
        , m_sheet(sheet)
        , m_lines(lines)
        , m_done(done) {}

    void head(const QString& words) {
        m_lines.addWidget(new Label(words, TextSize::Small, Ink::Muted));
    }

    void add(const std::optional<Tap>& tap, const QString& verb, const QString& past,
             const char* name, const char* role = "plain") {
        if (!tap)
            return;
        QString words = tapWords(*tap->named_by, m_session.ledger(), m_session.catalogue());
        if (const std::size_t facts = tap->facts.size(); facts > 1)
            words = UndoSheet::tr("%1, and %2 more").arg(words, QString::number(facts - 1));
        m_lines.addWidget(
            new Label(QStringLiteral("%1 · %2").arg(
                          whenWords(tap->named_by->stamp.when, m_session.clock().now()), words),
                      TextSize::Lead));
        QPushButton* key = keyOf(verb, name, role);
        key->setAccessibleName(QStringLiteral("%1: %2").arg(verb, words));
        m_lines.addWidget(key);
        QObject::connect(key, &QPushButton::clicked, &m_sheet,
                         [&session = m_session, &sheet = m_sheet, done = m_done, tap = *tap,
                          said = QStringLiteral("%1: %2").arg(past, words)] {
                             QWidget* window = sheet.window();
                             sheet.close();
                             if (const Result<> undone = session.undo(tap); !undone)
                                 showMessage(window, UndoSheet::tr("Not undone"),
                                             errorWords(undone.error()));
                             else
                                 done(said);
                         });
    }

private:
    VesselSession& m_session;
    Sheet& m_sheet;
    QVBoxLayout& m_lines;
    const std::function<void(const QString&)>& m_done;
};

/// What is at the door on the screen is not said twice.
std::optional<Tap> elsewhere(std::optional<Tap> tap, const VesselSession& session,
                             const QString& door) {
    return tap && session.ledger().doorOf(*tap->named_by) != door.toStdString() ? std::move(tap)
                                                                                : std::nullopt;
}

} // namespace

bool canUndo(const VesselSession& session) {
    return session.tapToTakeBack() || session.tapToPutBack();
}

void openUndo(VesselSession& session, QWidget* over, const QString& door,
              const std::function<void(const QString& what)>& done) {
    auto* sheet = new Sheet(over, UndoSheet::tr("Undo"));
    sheet->setObjectName(QStringLiteral("undo-sheet"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    Rows rows(session, *sheet, *lines, done);
    const QString take_back = UndoSheet::tr("Take back");
    const QString put_back = UndoSheet::tr("Put back");
    const QString taken_back = UndoSheet::tr("taken back");
    const QString put_back_again = UndoSheet::tr("put back");
    const std::optional<Tap> to_take_back = session.tapToTakeBack(door);
    const std::optional<Tap> to_put_back = session.tapToPutBack(door);
    if (!door.isEmpty())
        rows.head(to_take_back || to_put_back
                      ? UndoSheet::tr("At door %1").arg(door)
                      : UndoSheet::tr("Nothing to take back at door %1.").arg(door));
    rows.add(to_take_back, take_back, taken_back, "undo-take-back", "primary");
    rows.add(to_put_back, put_back, put_back_again, "undo-put-back");
    if (!door.isEmpty()) {
        const std::optional<Tap> other = elsewhere(session.tapToTakeBack(), session, door);
        const std::optional<Tap> other_back = elsewhere(session.tapToPutBack(), session, door);
        if (other || other_back)
            rows.head(UndoSheet::tr("Not at this door"));
        rows.add(other, take_back, taken_back, "undo-take-back-elsewhere");
        rows.add(other_back, put_back, put_back_again, "undo-put-back-elsewhere");
    }
    lines->addWidget(
        new Label(UndoSheet::tr("Nothing is deleted: taking back and putting back are recorded "
                                "too. What was signed cannot be taken back."),
                  TextSize::Small, Ink::Muted));
    sheet->setContent(content);
    sheet->setWidthMm(130);
    sheet->open();
}

} // namespace latchround::ui
