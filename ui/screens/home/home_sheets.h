// The short matters of the home screen, each on a sheet: end the walkdown, every door, every open
// item, every walkdown, the other vessels on this tablet.
#pragma once

#include <QObject>

#include "ui/round/round.h"

class QWidget;

namespace latchround::ui {

class Sheet;

class HomeSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    HomeSheets(Round& round, QWidget* over);

    void endWalkdown();
    void allDoors();
    void allOpenItems();
    void allWalkdowns();
    void otherVessels();

signals:
    void doorChosen(const QString& number);
    void reportAsked(const QString& walkdown);

private:
    void openVessel(const QString& place);
    void takeInRegister();
    void tell(const QString& title, const QString& words);
    void tellFaults(const Complaints& faults);
    int listHeight() const;

    Round& m_round;
    QWidget* m_over;
};

} // namespace latchround::ui
