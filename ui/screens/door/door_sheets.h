// The short matters of a door, each on a sheet: read the plate, type a measure, write a note, take
// a photograph, say why something could not be tested, ask why a row has its verdict, write a
// deficiency.
#pragma once

#include <QObject>

#include "ui/session/vessel_session.h"

class QWidget;

namespace latchround::ui {

class PhotographSheets;
struct Help;

class DoorSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    DoorSheets(VesselSession& session, QWidget* over);

    void setDoor(const QString& number);
    void readPlate();
    /// The fire tables, opened at this door's boundary.
    void lookUpBoundary();
    /// The rows of this ship's rules that are not asked of this door, and why not.
    void notAsked();
    /// An answer is cleared on purpose only: says which, and asks.
    void clearAnswer(const QString& requirement, Side side);
    void measure(const QString& requirement);
    void heel();
    void note();
    void photograph();
    void couldNotTest(const QString& requirement = {});
    void why(const QString& requirement);
    void writeDeficiency(const QString& requirement);
    /// What to look at for one question.
    void help(const Help& help);
    /// Every door of the walkdown in a list.
    void allDoors();

signals:
    void doorChosen(QString number);
    void heelChanged();
    /// The rule book of this door; `requirement`: the row to open it at, or empty.
    void rulesAsked(QString requirement);

private:
    void askInstrument(const Requirement& row, double value);
    void keep(const Requirement& row, double value, std::optional<double> step);
    std::string door() const { return m_door.toStdString(); }
    /// What is on record of the door shown, in the walkdown shown.
    DoorEvidence evidence() const { return m_session.ledger().evidenceOf(m_walkdown, door()); }

    VesselSession& m_session;
    QWidget* m_over;
    PhotographSheets* m_photographs;
    QString m_door;
    FactId m_walkdown; ///< in which the door was shown
};

} // namespace latchround::ui
