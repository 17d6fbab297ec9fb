// One part of the brief, with the key that says it was read out.
#pragma once

#include "ui/look/part.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

struct BriefPart;

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
};

} // namespace latchround::ui
