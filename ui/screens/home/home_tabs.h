// Which part of the home screen is shown, where a small screen has room for one at a time.
#pragma once

#include <vector>

#include <QStringList>

#include "ui/parts/part.h"

class QGridLayout;
class QPushButton;

namespace latchround::ui {

class HomeTabs : public Part {
    Q_OBJECT
public:
    /// `spoken`: the same in full, for the screen reader. The first is chosen.
    HomeTabs(const QStringList& words, const QStringList& spoken, QWidget* parent = nullptr);

    int chosen() const { return m_chosen; }

signals:
    void turned(int part);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();

    QGridLayout* m_grid;
    std::vector<QPushButton*> m_keys;
    int m_chosen = 0;
};

} // namespace latchround::ui
