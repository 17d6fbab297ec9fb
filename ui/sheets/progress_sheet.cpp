#include "ui/sheets/progress_sheet.h"

#include <chrono>

#include <QApplication>
#include <QEvent>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>

#include "ui/figures/progress_bar.h"
#include "ui/frames/sheet.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/message.h"

namespace latchround::ui {

namespace {

constexpr qint64 quiet_ms = 500; ///< a shorter job shows nothing
constexpr qint64 breath_ms = 30; ///< between two moments in which the window lives
constexpr double sheet_width_mm = 120;

bool breathing = false;

qint64 runningClock_ms() {
    using namespace std::chrono;
    return duration_cast<milliseconds>(steady_clock::now().time_since_epoch()).count();
}

bool isInput(QEvent::Type type) {
    switch (type) {
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::MouseMove:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TabletPress:
    case QEvent::TabletMove:
    case QEvent::TabletRelease:
    case QEvent::Wheel:
    case QEvent::KeyPress:
    case QEvent::KeyRelease:
    case QEvent::Shortcut:
    case QEvent::ShortcutOverride:
    case QEvent::ContextMenu:
    case QEvent::Gesture:
    case QEvent::DragEnter:
    case QEvent::Drop:
    case QEvent::InputMethod:
        return true;
    default:
        return false;
    }
}

} // namespace

/// What is being done, how far it is, and the key that stops it.
class WorkingSheet : public Sheet {
public:
    WorkingSheet(QWidget* over, const QString& what, std::function<void()> stop)
        : Sheet(over, what)
        , m_stop(std::move(stop))
        , m_bar(new ProgressBar)
        , m_key(keyOf(LongJob::tr("Cancel"), "progress-cancel")) {
        setObjectName(QStringLiteral("progress-sheet"));
        setRole(*m_key, "plain", true);
        m_bar->setObjectName(QStringLiteral("progress-bar"));
        m_bar->setAccessibleName(what);
        setWithoutCloseKey();
        setContent(m_bar);
        setFoot(m_key);
        setWidthMm(sheet_width_mm);
        connect(m_key, &QPushButton::clicked, this, [this] { leave(); });
    }
    void show(int done, int of) { m_bar->setDone(done, of); }
    void open() {
        Sheet::open();
        keepKeyboard();
    }
    void keepKeyboard() { (m_key->isEnabled() ? m_key : static_cast<QWidget*>(this))->setFocus(); }

protected:
    void leave() override {
        m_key->setEnabled(false);
        m_key->setText(LongJob::tr("Stopping…"));
        m_stop();
    }

private:
    std::function<void()> m_stop;
    ProgressBar* m_bar;
    QPushButton* m_key;
};

LongJob::LongJob(QWidget* over, const QString& what, Clock clock)
    : m_over(over)
    , m_what(what)
    , m_clock(clock ? std::move(clock) : Clock(runningClock_ms)) {}

LongJob::~LongJob() {
    end();
}

void LongJob::end() {
    if (m_sheet)
        m_sheet->close();
    m_sheet.clear();
}

bool LongJob::asked(int done, int of) {
    if (breathing)
        return false; // a job that a timer began while another one lets the window live
    const qint64 now_ms = m_clock();
    if (m_began_ms < 0)
        m_began_ms = now_ms;
    if (!m_sheet && m_over && now_ms - m_began_ms >= quiet_ms)
        show();
    if (m_sheet)
        m_sheet->show(done, of);
    if (m_sheet && now_ms - m_breathed_ms >= breath_ms) {
        breathe();
        m_breathed_ms = m_clock();
    }
    m_told_to_stop = m_told_to_stop || m_stop_wanted;
    return !m_told_to_stop;
}

void LongJob::show() {
    m_sheet = new WorkingSheet(m_over, m_what, [this] { m_stop_wanted = true; });
    m_sheet->open();
}

void LongJob::breathe() {
    breathing = true;
    qApp->installEventFilter(this);
    QCoreApplication::processEvents();
    if (m_sheet && !m_sheet->isAncestorOf(QApplication::focusWidget()))
        m_sheet->keepKeyboard(); // a press elsewhere took it, and did nothing else
    qApp->removeEventFilter(this);
    breathing = false;
}

bool LongJob::mayPass(const QObject& watched, const QEvent& event) const {
    if (!isInput(event.type()))
        return true;
    // A window of the system passes on what it gets to the widget that it is meant for.
    if (!watched.isWidgetType())
        return event.type() != QEvent::Shortcut;
    const auto& widget = static_cast<const QWidget&>(watched);
    return m_sheet && (&widget == m_sheet.data() || m_sheet->isAncestorOf(&widget));
}

bool LongJob::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Close && watched->isWidgetType()) {
        m_stop_wanted = true;
        event->ignore();
        return true;
    }
    return !mayPass(*watched, *event);
}

void tellStopped(QWidget* over, const QString& unchanged) {
    showMessage(over, LongJob::tr("Stopped"), unchanged);
}

} // namespace latchround::ui

#include "moc_progress_sheet.cpp"
