// A big number pad for figures read off a rule, a gauge or a stopwatch on a string. Takes the
// keyboard's digits too; point and comma both mean the decimal point.
#pragma once

#include <optional>
#include <vector>

#include "ui/look/part.h"

class QGridLayout;
class QPushButton;

namespace latchround::ui {

class FigureLabel;
class Label;

class Keypad : public Part {
    Q_OBJECT
public:
    explicit Keypad(QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setUnit(const QString& unit);
    /// Digits allowed after the point; 0 takes the point key away. 2 by default.
    void setDecimals(int decimals);
    void clear();

    /// What has been typed, with a point; empty at first.
    QString text() const { return m_text; }
    std::optional<double> value() const;

signals:
    void entered(double value);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// Where a key stands.
    struct Place {
        int row;
        int column;
        int rows = 1;
        int columns = 1;
    };
    /// In four lines like a telephone, and where the screen is too low for that, in two beside
    /// figure, back and clear.
    QPushButton* addKey(const QString& word, const QString& spoken, Place high, Place low);
    void arrange();
    void sizeKeys();
    bool isLow() const;
    void digit(QChar digit);
    void point();
    void back();
    void enter();
    void display(const QString& text);

    QString m_text;
    QString m_unit;
    int m_decimals = 2;
    Label* m_title;
    FigureLabel* m_figure;
    QGridLayout* m_grid;
    struct Key {
        QPushButton* key;
        Place high;
        Place low;
    };
    std::vector<Key> m_keys;
    int m_low = -1; ///< how it is arranged; not yet known
    QPushButton* m_point = nullptr;
    QPushButton* m_enter = nullptr;
};

/// The pad with something below it, as the content of a sheet: a figure may be typed at once.
QWidget* padAbove(Keypad* pad, QWidget* below);

} // namespace latchround::ui
