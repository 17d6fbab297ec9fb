// One thing that can be set: what it is, what it means, and its keys. Keys that are choices show
// which one is in force; others open something.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QBoxLayout;
class QPushButton;

namespace latchround::ui {

class Label;

struct SettingKey {
    QString words;
    const char* name = ""; ///< objectName
};

class SettingRow : public Part {
    Q_OBJECT
public:
    enum class Keys { Choices, Openers };

    SettingRow(const QString& title, const QString& help, const std::vector<SettingKey>& keys,
               Keys kind = Keys::Choices, QWidget* parent = nullptr);

    /// Of choices: the one in force. Emits nothing.
    void setChosen(int index);
    QPushButton* key(int index) const { return m_keys[std::size_t(index)]; }

signals:
    void pressed(int index);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void arrange();

    QBoxLayout* m_sides;
    QBoxLayout* m_key_line;
    std::vector<QPushButton*> m_keys;
    int m_chosen = -1;
};

} // namespace latchround::ui
