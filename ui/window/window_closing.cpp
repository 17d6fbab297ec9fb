// Closing the window: what it would cut short or lose is said first.
#include <QCloseEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/window/window.h"

namespace latchround::ui {

/// What closing would cut short or lose; empty where nothing.
QString Window::unfinishedWords() const {
    QStringList reasons;
    if (m_screens->currentWidget() == m_stopwatch && m_stopwatch->isRunning())
        reasons << tr("A run is being timed: a leaf may be moving. Closing the program stops the "
                      "timing, not the leaf.");
    if (!m_session.isSafeToLeave())
        reasons
            << tr("%1 entries are NOT saved and could not be kept elsewhere. Closing the program "
                  "loses them.")
                   .arg(m_session.waiting());
    for (const Sheet* sheet : findChildren<Sheet*>(Qt::FindDirectChildrenOnly))
        for (const QLineEdit* line : sheet->findChildren<QLineEdit*>())
            if (line->isVisible() && !line->text().trimmed().isEmpty())
                reasons << tr(
                    "What you wrote in the open sheet has not been recorded. Closing the program "
                    "loses it.");
    return reasons.join(QLatin1Char('\n'));
}

void Window::closeEvent(QCloseEvent* event) {
    const QString what = m_closes ? QString() : unfinishedWords();
    if (what.isEmpty()) {
        QWidget::closeEvent(event);
        return;
    }
    event->ignore();
    if (!findChild<Sheet*>(QStringLiteral("before-closing"), Qt::FindDirectChildrenOnly))
        askBeforeClosing(what);
}

void Window::askBeforeClosing(const QString& what) {
    auto* sheet = new Sheet(this, tr("Close the program?"));
    sheet->setObjectName(QStringLiteral("before-closing"));
    sheet->setWithoutCloseKey(); // "Close" would be read as the answer
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(new Label(what, TextSize::Lead));
    auto* stay = keyOf(tr("Do not close"), "close-not", "primary");
    auto* close_all_the_same = keyOf(tr("Close anyway"), "close-yes", "danger");
    lines->addWidget(stay);
    lines->addWidget(close_all_the_same);
    connect(stay, &QPushButton::clicked, sheet, &Sheet::close);
    connect(close_all_the_same, &QPushButton::clicked, this,
            [this, sheet, was_safe = m_session.isSafeToLeave()] {
                if (m_screens->currentWidget() == m_stopwatch && m_stopwatch->isRunning())
                    m_stopwatch->stop();
                sheet->close();
                if (was_safe && !m_session.isSafeToLeave()) { // the stop could not be saved
                    askBeforeClosing(unfinishedWords());
                    return;
                }
                m_closes = true;
                close();
            });
    sheet->setContent(content);
    sheet->setWidthMm(110);
    sheet->open();
}

} // namespace latchround::ui
