// What else there is of this vessel: what falls due, its walkdowns with their reports, other
// vessels, the settings.
#pragma once

#include "ui/parts/card.h"
#include "ui/round/past_walkdown.h"
#include "ui/round/round.h"

class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Lettering;
class ReportRow;
class ValueRow;

class VesselCard : public Card {
    Q_OBJECT
public:
    explicit VesselCard(Round& round, QWidget* parent = nullptr);

    /// `regraded`: only the shown walkdown changed; the others keep their words.
    void refresh(bool regraded = false);

    void refreshDue();
    /// The other vessels of the tablet are not offered.
    void hideOthers();

signals:
    void dueAsked();
    void reportAsked(const QString& walkdown);
    void allWalkdownsAsked();
    void otherVesselsAsked();
    void settingsAsked();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill();
    ReportRow* makeRow(const PastWalkdown& walkdown);

    Round& m_round;
    std::vector<PastWalkdown> m_latest;
    std::vector<ReportRow*> m_rows;
    int m_count = 0; ///< of all walkdowns
    QVBoxLayout* m_lines;
    QWidget* m_place;
    QVBoxLayout* m_list;
    Lettering* m_title;
    Lettering* m_nothing;
    ValueRow* m_due;
    QPushButton* m_all;
    QPushButton* m_others;
    QPushButton* m_settings;
};

} // namespace latchround::ui
