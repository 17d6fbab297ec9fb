#include "ui/window/not_saved_banner.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/sheet.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/sheets/message.h"
#include "ui/words/phrase_words.h"
#include "ui/words/tap_words.h"

namespace latchround::ui {

NotSavedBanner::NotSavedBanner(VesselSession& session, QWidget* parent)
    : Part(parent)
    , m_session(session)
    , m_line(new QBoxLayout(QBoxLayout::LeftToRight, this))
    , m_words(new Label({}, TextSize::Body, Ink::Bad, true))
    , m_again(new QPushButton(tr("Save again")))
    , m_aside(new QPushButton(tr("Put aside…"))) {
    setObjectName(QStringLiteral("not-saved"));
    m_line->addWidget(m_words, 1);
    auto* keys = new QHBoxLayout;
    keys->addStretch(1);
    keys->addWidget(m_aside);
    keys->addWidget(m_again);
    m_line->addLayout(keys);
    m_aside->setObjectName(QStringLiteral("put-aside"));
    connect(m_aside, &QPushButton::clicked, this, &NotSavedBanner::askToPutAside);
    m_again->setObjectName(QStringLiteral("save-again"));
    setRole(*m_again, "primary");
    connect(m_again, &QPushButton::clicked, this, [this] { (void)m_session.saveWaiting(); });
    connect(&session, &VesselSession::waitingChanged, this, &NotSavedBanner::refresh);
    NotSavedBanner::lookChanged();
    refresh();
}

void NotSavedBanner::place() {
    constexpr double words_mm = 60; // three or four of them in a line
    double keys = 0;
    for (const QPushButton* key : {m_aside, m_again})
        if (!key->isHidden())
            keys += key->sizeHint().width() + sizes().gap;
    m_line->setDirection(width() < keys + mm(words_mm) ? QBoxLayout::TopToBottom
                                                       : QBoxLayout::LeftToRight);
}

void NotSavedBanner::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    place();
}

void NotSavedBanner::lookChanged() {
    m_line->setContentsMargins(sizes().main_gap, sizes().gap, sizes().main_gap, sizes().gap);
    Part::lookChanged();
    place();
}

void NotSavedBanner::refresh() {
    const std::size_t waiting = m_session.waiting();
    setVisible((waiting > 0 && !m_session.isSavingShortly()) || m_session.isReadOnly());
    m_again->setVisible(waiting > 0);
    m_aside->setVisible(m_session.ports().waiting && !m_session.refusedBatches().empty());
    if (waiting == 0 && m_session.isReadOnly())
        m_words->setText(tr("View only: another program is writing to this register (%1).")
                             .arg(phraseWords(m_session.otherWriter())));
    if (waiting > 0) { // what to do about what is refused stands where it is put aside
        const Phrase& why = m_session.whyWaiting().what;
        m_words->setText(tr("NOT SAVED (%1)").arg(waiting) + QStringLiteral(": ") +
                         (m_aside->isHidden() ? errorWords({{}, why}) : phraseWords(why)));
    }
    place();
}

/// What it is, why it is refused, and where it goes: nothing is dropped.
void NotSavedBanner::askToPutAside() {
    auto* sheet = new Sheet(this, tr("Put the refused entries aside?"));
    sheet->setObjectName(QStringLiteral("put-aside-sheet"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    std::set<FactId> shown;
    for (const WaitingBatch* batch : m_session.refusedBatches()) {
        shown.insert(batch->facts.front().stamp.id);
        QStringList facts;
        for (const Fact& fact : batch->facts)
            facts << tapWords(fact, m_session.ledger(), m_session.catalogue());
        auto* entry = new Label(facts.join(QStringLiteral("; ")) + QLatin1Char('\n') +
                                    errorWords({{}, batch->refused->what}),
                                TextSize::Body);
        entry->setObjectName(QStringLiteral("refused-entry"));
        lines->addWidget(entry);
    }
    lines->addWidget(new Label(
        tr("The register does not accept this. Once put aside, it is kept in a file beside the "
           "register and does not count. Record again what still applies."),
        TextSize::Lead));
    auto* keys = new QHBoxLayout;
    auto* leave = keyOf(tr("Leave it waiting"), "put-aside-not", "primary");
    auto* aside = keyOf(tr("Put aside"), "put-aside-confirm", "danger");
    keys->addWidget(leave, 1);
    keys->addWidget(aside, 1);
    auto* foot = new QWidget;
    keys->setContentsMargins(0, 0, 0, 0);
    foot->setLayout(keys);
    connect(leave, &QPushButton::clicked, sheet, &Sheet::close);
    connect(aside, &QPushButton::clicked, sheet, [this, sheet, shown] {
        sheet->close();
        const Result<QString> place = m_session.putRefusedAside(shown);
        if (place)
            showMessage(this, tr("Put aside"), tr("It is kept in %1").arg(*place));
        else
            showMessage(this, tr("Not put aside"), errorWords(place.error()));
    });
    sheet->setContent(content);
    sheet->setFoot(foot);
    sheet->open();
}

void NotSavedBanner::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colours().card);
    painter.setPen(QPen(colours().bad, sizes().border));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

} // namespace latchround::ui

#include "moc_not_saved_banner.cpp"
