// The doors that are not in order, as many as fit; the rest behind a key.
#pragma once

#include "ui/frames/card.h"
#include "ui/screens/home/open_items.h"
#include "ui/session/vessel_session.h"

class QPushButton;
class QBoxLayout;
class QVBoxLayout;

namespace latchround::ui {

class Label;
class OpenItemList;

class OpenItemsCard : public Card {
    Q_OBJECT
public:
    explicit OpenItemsCard(VesselSession& session, QWidget* parent = nullptr);

    void refresh();
    /// The rows follow the height of the card, not the card that of the rows.
    bool hasHeightForWidth() const override { return false; }

signals:
    void doorChosen(QString number);
    /// The items in full, this one first; empty for none in particular.
    void reviewAsked(latchround::FactId item);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill();
    void placeCount();

    VesselSession& m_session;
    std::vector<OpenItem> m_items;
    int m_open = 0; ///< written up, as the review screen lists them
    QVBoxLayout* m_lines;
    QBoxLayout* m_head;
    Label* m_title;
    Label* m_count;
    Label* m_nothing;
    OpenItemList* m_list;
    QPushButton* m_all;
};

} // namespace latchround::ui
