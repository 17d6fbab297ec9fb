// The short matters of a plan, each on a sheet: a further person, which deck or zone, the heel, the
// words agreed.
#pragma once

#include <QObject>

#include "ui/screens/plan/plan_draft.h"

class QWidget;

namespace latchround::ui {

class PlanSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    PlanSheets(VesselSession& session, PlanDraft& draft, QWidget* over);

    void addPerson();
    void which(ScopeKind kind);
    void heel();
    /// How many of the doors in scope: all, or samples with what a clean result would prove.
    void sample();
    void agree(Agreed agreed);

signals:
    void peopleChanged();
    void whichChosen(latchround::ScopeKind kind, QString which);
    void heelChosen();
    void everyDoorChosen();
    void sampleChosen(int at_most, int confidence_ppm);
    void agreedChosen();

private:
    void join(const QString& name, const Wording& role);

    VesselSession& m_session;
    PlanDraft& m_draft;
    QWidget* m_over;
};

} // namespace latchround::ui
