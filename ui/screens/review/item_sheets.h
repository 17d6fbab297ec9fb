// What is done with one item, each on a sheet: severity, what port State control gave, the day due,
// what is done until then, who sees to it; rectified, ready, withdrawn; photographs.
#pragma once

#include <QObject>

#include "ui/session/vessel_session.h"
#include "ui/words/offered.h"

class QWidget;

namespace latchround::ui {

class PhotographSheets;

class ItemSheets : public QObject {
    Q_OBJECT
public:
    /// Sheets cover the window of `over`.
    ItemSheets(VesselSession& session, QWidget* over);

    void severity(const Item& item);
    void portState(const Item& item);
    void due(const Item& item);
    void interim(const Item& item);
    void assign(const Item& item);
    void rectify(const Item& item);
    void ready(const Item& item);
    void withdraw(const Item& item);
    void takeBackWithdrawal(const Item& item);
    void photograph(const Item& item);

private:
    void rectified(const Item& item, const Wording& what);
    void set(const DeficiencyTerms& terms);
    /// Phrases to tap, then `record` with the one picked.
    void ask(const QString& title, OfferedFor use, std::function<void(const Wording&)> record);
    QStringList people() const;

    VesselSession& m_session;
    QWidget* m_over;
    PhotographSheets* m_photographs;
};

} // namespace latchround::ui
