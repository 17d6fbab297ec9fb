#include "ui/screens/plan/plan_screen.h"

#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/frames/top_bar.h"
#include "ui/screens/plan/brief_page.h"
#include "ui/screens/plan/plan_page.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

PlanScreen::PlanScreen(VesselSession& session, QWidget* parent)
    : Screen(session, parent)
    , m_draft(freshDraft(session))
    , m_pages(new QStackedWidget)
    , m_plan(new PlanPage(session, m_draft))
    , m_brief(new BriefPage(session, m_draft)) {
    setObjectName(QStringLiteral("plan"));
    auto* lines = new QVBoxLayout(page());
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_pages);
    m_pages->addWidget(m_plan);
    m_pages->addWidget(m_brief);
    m_pages->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    bar().setBack(true);
    connect(m_plan, &PlanPage::briefAsked, this, &PlanScreen::showBrief);
    connect(m_brief, &BriefPage::planAsked, this, &PlanScreen::showPlan);
    connect(m_brief, &BriefPage::beginAsked, this, &PlanScreen::begin);
    connect(&session, &VesselSession::walkdownChanged, this, &PlanScreen::lookWhetherBegun);
    connect(&session, &VesselSession::waitingChanged, this, [this] {
        if (!m_begun.empty())
            m_brief->setWaiting(errorWords(this->session().whyWaiting()));
        if (isVisible()) // a person may have been saved; else enter() shows it
            m_plan->refresh();
    });
    showPlan();
}

void PlanScreen::enter() {
    if (!m_begun.empty())
        return;               // it waits to be saved, and the page says so
    m_draft.read_out.clear(); // read anew before each walk
    chooseDoors(session(), m_draft);
    m_plan->begin();
    showPlan();
}

void PlanScreen::propose(Purpose purpose, ScopeKind scope) {
    m_draft.purpose = purpose;
    m_draft.scope = scopeOf(session(), scope);
}

void PlanScreen::showPlan() {
    bar().setTitle(isSmall() ? tr("Plan") : tr("Plan a walkdown"),
                   QString::fromStdString(session().arrangement().particulars.name));
    m_plan->refresh();
    m_pages->setCurrentWidget(m_plan);
    m_plan->nextKey()->setFocus();
}

void PlanScreen::showBrief() {
    bar().setTitle(isSmall() ? tr("Brief") : tr("Safety brief"),
                   QString::fromStdString(session().arrangement().particulars.name));
    m_brief->refresh();
    m_brief->begin();
    m_pages->setCurrentWidget(m_brief);
    m_brief->firstKey()->setFocus();
}

void PlanScreen::begin() {
    if (!m_begun.empty()) {
        (void)session().saveWaiting();
        return;
    }
    m_begun = session().newId();
    std::vector<Entry> entries;
    entries.push_back({walkdownOf(session(), m_draft), std::nullopt, m_begun});
    if (const Result<> done = session().record(std::move(entries)); !done) {
        m_brief->setWaiting(errorWords(done.error()));
        if (!session().knows(m_begun)) // refused: it will not be saved later either
            m_begun.clear();
    }
}

/// Whoever saved it: this screen, or somebody else who tried again later.
void PlanScreen::lookWhetherBegun() {
    const auto& shown = session().walkdown();
    if (m_begun.empty() || !shown || shown->id != m_begun)
        return;
    m_begun.clear();
    m_draft = freshDraft(session());
    m_brief->setWaiting({});
    m_plan->refresh();
    m_brief->refresh();
    if (!session().doors().empty())
        emit begun(QString::fromStdString(session().doors().front().door->number));
}

void PlanScreen::lookChanged() {
    Screen::lookChanged();
    arrange(isUpright()); // gloves may have come or gone
}

void PlanScreen::arrange(bool upright) {
    // With gloves the keys of a whole plan are higher than an upright tablet.
    m_plan->arrange(upright, isSmall() || (upright && sizes().gloves));
    m_brief->arrange(upright, isSmall());
}

void PlanScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape)
        return Screen::keyPressEvent(event);
    if (m_pages->currentWidget() == m_brief && m_begun.empty())
        showPlan();
    else
        emit bar().back();
}

} // namespace latchround::ui

#include "moc_plan_screen.cpp"
