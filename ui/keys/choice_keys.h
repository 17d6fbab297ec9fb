// Keys to choose one or several of, in as many columns as fit. Where there are many, a few at a
// time: the last key then shows the next ones.
#pragma once

#include <set>
#include <vector>

#include <QStringList>

#include "ui/look/part.h"

class QPushButton;

namespace latchround::ui {

class FlowGrid;

class ChoiceKeys : public Part {
    Q_OBJECT
public:
    enum class Many { One, Several };

    /// `name`: objectName of the keys, with their number behind it. `at_once`: keys shown together.
    ChoiceKeys(const char* name, Many many, int at_once, QWidget* parent = nullptr);

    void setChoices(const QStringList& words);
    /// Emits nothing.
    void setChosen(std::set<int> chosen);
    void setWords(int index, const QString& words);
    /// A key that cannot be used is not shown.
    void setUsable(int index, bool usable);
    QPushButton* key(int index) const { return m_keys[std::size_t(index)]; }
    void setAtOnce(int at_once);
    int count() const { return int(m_keys.size()); }

signals:
    /// A key was touched; `on`: it is chosen now.
    void touched(int index, bool on);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void press(int index);
    void show();
    void arrange();

    QString m_name;
    Many m_many;
    int m_at_once;
    int m_first = 0; ///< of the keys shown
    std::set<int> m_chosen;
    std::vector<QPushButton*> m_keys;
    QPushButton* m_more;
    FlowGrid* m_grid;
};

} // namespace latchround::ui
