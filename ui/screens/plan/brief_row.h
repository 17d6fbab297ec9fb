// One part of the brief, with the key that says it was read out; and what is said below a part,
// which has a page of its own where both have no room on one.
#pragma once

#include "ui/look/part.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Label;
struct BriefPart;

/// The English of a part, or where the brief comes from. Takes the words.
class BelowBriefRow : public Part {
    Q_OBJECT
public:
    explicit BelowBriefRow(Label* words, QWidget* parent = nullptr);

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;
};

class BriefRow : public Part {
    Q_OBJECT
public:
    explicit BriefRow(const BriefPart& part, QWidget* parent = nullptr);

    QPushButton* key() const { return m_key; }

signals:
    void readOut(bool read);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void placeKey();

    QBoxLayout* m_line;
    QPushButton* m_key;
    bool m_is_last; ///< nothing belongs to it: a line ends it
};

} // namespace latchround::ui
