// The doors that are not in order, as many as fit; the rest behind a key.
#pragma once

#include "ui/frames/card.h"
#include "ui/round/round.h"
#include "ui/screens/home/open_items.h"

class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class Lettering;
class OpenItemList;

class OpenItemsCard : public Card {
    Q_OBJECT
public:
    explicit OpenItemsCard(Round& round, QWidget* parent = nullptr);

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

    Round& m_round;
    std::vector<OpenItem> m_items;
    QVBoxLayout* m_lines;
    Lettering* m_title;
    Lettering* m_count;
    Lettering* m_nothing;
    OpenItemList* m_list;
    QPushButton* m_all;
};

} // namespace latchround::ui
