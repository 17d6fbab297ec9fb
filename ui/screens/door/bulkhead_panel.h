// Beside a door: its neighbours in the same boundary, and what it would mean if this one stayed
// open.
#pragma once

#include "ui/look/part.h"
#include "ui/session/vessel_session.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Card;
class DoorListView;
class Label;

class BulkheadPanel : public Part {
    Q_OBJECT
public:
    explicit BulkheadPanel(VesselSession& session, QWidget* parent = nullptr);

    void setDoor(const QString& number);
    void refresh(const QString& changed);
    void arrange(bool upright);

signals:
    void doorChosen(QString number);
    void allAsked();

private:
    void fill();

    VesselSession& m_session;
    QString m_door;
    QBoxLayout* m_columns;
    Label* m_title;
    DoorListView* m_list;
    Label* m_if_title;
    Card* m_if_card;
    Label* m_if_words;
    QPushButton* m_all;
};

/// "Zones 3 and 4 would act as one: 71.0 m long; limit 40 m, 48 m maximum."; empty for no
/// zones.
QString actingWords(const ActingZone& zone);

} // namespace latchround::ui
