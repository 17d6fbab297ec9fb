#include "ui/screens/drill/practice_offer.h"

#include <algorithm>

#include <QPushButton>
#include <QVBoxLayout>

#include "ui/lists/value_row.h"
#include "ui/look/touch_style.h"
#include "ui/ports/attempts.h"
#include "ui/words/cue_words.h"

namespace latchround::ui {

PracticeOffer::PracticeOffer(VesselSession& session, QWidget* parent)
    : Part(parent)
    , m_session(session)
    , m_row(new ValueRow(tr("From practice"), tr("Use these figures"))) {
    setObjectName(QStringLiteral("practice-offer"));
    m_row->key()->setObjectName(QStringLiteral("use-practice"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_row);
    connect(m_row, &ValueRow::asked, this, &PracticeOffer::use);
    hide();
}

void PracticeOffer::refresh() {
    m_drill = {};
    hide();
    const std::string name = m_session.personName().toStdString();
    const Result<std::vector<practice::Attempt>> attempts = m_session.ports().attempts->finished();
    if (name.empty() || !attempts)
        return; // what the screen is for goes on without
    const auto last_drill = m_session.drillTime();
    const bool newer = std::ranges::any_of(*attempts, [&](const practice::Attempt& attempt) {
        return (!last_drill || attempt.ended.utc_ms > last_drill->utc_ms) &&
               !practice::drillFrom({attempt}, name).trials.empty();
    });
    const ThumbDrill drill = practice::drillFrom(*attempts, name);
    QStringList lines;
    for (const Word<Cue>& entry : cueWords)
        if (rejectOutliers(entry.value, drill).reaction)
            lines << QStringLiteral("%1: %2").arg(cueTitle(entry.value),
                                                  thumbLine(entry.value, drill));
    if (!newer || lines.isEmpty())
        return;
    m_drill = drill;
    m_row->setDetail(lines.join(QLatin1Char('\n')));
    show();
}

void PracticeOffer::use() {
    // Where it cannot be saved the session keeps it waiting and says so.
    (void)m_session.record(m_drill);
    hide();
    emit used();
}

} // namespace latchround::ui

#include "moc_practice_offer.cpp"
