// The short matters of the home screen, each on a sheet: end the walkdown, every door, every
// walkdown, the other vessels on this tablet, what falls due, what other rules grade otherwise.
#pragma once

#include <QObject>

#include "core/grading/changed_verdicts.h"
#include "core/planning/due.h"
#include "core/planning/walk_order.h"
#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

class Sheet;

class HomeSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    HomeSheets(VesselSession& session, QWidget* over);

    void endWalkdown();
    void allDoors();
    void allWalkdowns();
    void otherVessels();
    /// What falls due, overdue first, with what can be done about each.
    void due();
    /// Doors that the rules in force grade otherwise than those before, with both texts.
    void changedDoors();
    /// A door of the register that the walkdown shown does not cover.
    void doorNotOnWalk(const QString& number);

signals:
    void drillAsked();
    void planAsked(latchround::Purpose purpose, latchround::ScopeKind scope);
    void dueChanged();
    void doorChosen(QString number);
    void reportAsked(QString walkdown);
    /// That the rules changed need not be said any more.
    void rulesSeen();

private:
    QWidget* changedRow(const ChangedVerdict& change, Sheet* sheet);
    void bothTexts(const ChangedVerdict& change, Sheet* list);
    /// What other rules leave as it is.
    static QString keptWords();
    QWidget* footOf(QWidget* said, QWidget* key) const;
    QWidget* dueRow(const DueItem& item, Sheet* sheet);
    QWidget* certificateRow(const DueItem* item, Sheet* sheet);
    QWidget* drillRow(Sheet* sheet);
    void certificate();
    void openVessel(const QString& place);
    /// Rows on pages: only as high as they are, up to most of the window.
    /// One below the other; the sheet turns pages where they are too many.
    QWidget* columnOf(const std::vector<QWidget*>& rows) const;

    VesselSession& m_session;
    QWidget* m_over;
};

} // namespace latchround::ui
