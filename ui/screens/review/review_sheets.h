// What concerns all items or the whole vessel, each on a sheet: who records, rows to write up, two
// walkdowns compared, differences to decide, a door's history, signatures, papers to print, files
// to hand over.
#pragma once

#include <QObject>

#include "core/evidence/differences.h"
#include "ui/ports/handovers.h"
#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

class ReadingPane;
class Sheet;

class ReviewSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    ReviewSheets(VesselSession& session, QWidget* over);

    void who();
    void writeUp();
    void compareWalkdowns();
    void differences();
    void history(const QString& door);
    void photographs(const FactId& item);
    void papers(const QString& door);
    void sign();
    void handOver();

signals:
    void personChosen();

private:
    void joinSomebody();
    void showChanges(ReadingPane& pane, const FactId& earlier, const FactId& later);
    void decide(const Difference& difference);
    void make(Paper paper, const QString& door, PaperLanguage language);
    void showSignatures(Sheet* sheet, QWidget* place, const FactId& walkdown);
    void give(const QString& sealed_for);
    void take();
    void askWhetherToTake(const HandoverSeen& seen);
    void askForKey();
    void showOwnKey();

    VesselSession& m_session;
    QWidget* m_over;
};

} // namespace latchround::ui
