// Where a page has room for one of its parts at a time: keys that go from part to part. Elsewhere
// all parts are shown and the keys are not.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QBoxLayout;
class QHBoxLayout;
class QPushButton;

namespace latchround::ui {

class StageKeys : public Part {
    Q_OBJECT
public:
    /// `name`: before the object names of its keys.
    explicit StageKeys(const QString& name, QWidget* parent = nullptr);

    /// In the order of the page; what the part lies on is shown and hidden with it.
    void add(QWidget* part);
    /// The page's own key to go on: here behind the last part, else last in its own line.
    void setEnd(QPushButton* key, QBoxLayout* home, int stretch);
    /// What the key back says on the first part, and that it leads somewhere: beforeFirst.
    void setBeforeFirst(const QString& words);
    void setOneAtATime(bool one);
    bool isOneAtATime() const { return m_one; }
    void begin();

signals:
    void beforeFirst();

protected:
    void lookChanged() override;

private:
    void go(int by);
    void show();

    std::vector<QWidget*> m_parts;
    QPushButton* m_end = nullptr;
    QBoxLayout* m_home = nullptr;
    int m_stretch = 0; ///< of the end key at home
    QString m_before_first;
    int m_at = 0;
    bool m_one = false;
    QPushButton* m_before;
    QPushButton* m_on;
    QHBoxLayout* m_line;
};

} // namespace latchround::ui
