// What else there is of this vessel: what falls due, its walkdowns with their reports, other
// vessels, the settings, practice.
#pragma once

#include "ui/frames/card.h"
#include "ui/session/past_walkdown.h"
#include "ui/session/vessel_session.h"

class QBoxLayout;
class QGridLayout;
class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Label;
class ReportRow;
class ValueRow;

class VesselCard : public Card {
    Q_OBJECT
public:
    explicit VesselCard(VesselSession& session, QWidget* parent = nullptr);

    /// `regraded`: only the shown walkdown changed; the others keep their words.
    void refresh(bool regraded = false);

    void refreshDue();
    /// The other vessels of the tablet, and practice, are not offered.
    void hideOthers();
    /// A key of the screen's that stands beside the one for practice.
    void takeIn(QPushButton& key);
    void letGo();
    /// The rows follow the height of the card, not the card that of the rows.
    bool hasHeightForWidth() const override { return false; }

signals:
    void dueAsked();
    void reportAsked(QString walkdown);
    void allWalkdownsAsked();
    void otherVesselsAsked();
    void settingsAsked();
    void practiceAsked();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange(bool low);
    void fill();
    ReportRow* makeRow(const PastWalkdown& walkdown);

    VesselSession& m_session;
    std::vector<PastWalkdown> m_latest;
    std::vector<ReportRow*> m_rows;
    int m_count = 0;    ///< of all walkdowns
    bool m_low = false; ///< wide and low: the keys lie beside the lists
    bool m_filling = false;
    QBoxLayout* m_sides;
    QVBoxLayout* m_lines;
    QGridLayout* m_keys;
    QWidget* m_place;
    QVBoxLayout* m_list;
    QHBoxLayout* m_head;
    Label* m_title;
    Label* m_nothing;
    ValueRow* m_due;
    QPushButton* m_all;
    QPushButton* m_others;
    QPushButton* m_settings;
    QPushButton* m_practice;
    QPushButton* m_guest = nullptr; ///< of the screen's; null: none
};

} // namespace latchround::ui
