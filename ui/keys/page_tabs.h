// Which part of a screen is shown, where a small one has room for one at a time.
#pragma once

#include <vector>

#include <QStringList>

#include "ui/look/part.h"

class QPushButton;

namespace latchround::ui {

class FlowGrid;

class PageTabs : public Part {
    Q_OBJECT
public:
    /// `name`: of the keys, to be numbered from 0. `spoken`: their words in full, for the screen
    /// reader. The first is chosen.
    PageTabs(const QString& name, const QStringList& words, const QStringList& spoken,
             QWidget* parent = nullptr);

    int chosen() const { return m_chosen; }

signals:
    void turned(int part);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();

    FlowGrid* m_grid;
    std::vector<QPushButton*> m_keys;
    int m_chosen = 0;
};

} // namespace latchround::ui
