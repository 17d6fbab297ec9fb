// The strip at the top of every screen: the way back, where one is, how far one has come, the
// light, ship's time.
#pragma once

#include <vector>

#include "ui/look/part.h"

class QHBoxLayout;
class QPushButton;

namespace latchround::ui {

class Label;

/// As narrow as its words are on two lines.
void narrowKey(QPushButton& key);
/// As wide as it likes again.
void widenKey(QPushButton& key);

class TopBar : public Part {
    Q_OBJECT
public:
    explicit TopBar(QWidget* parent = nullptr);

    void setTitle(const QString& title, const QString& subtitle = {});
    /// Shows the key that goes back.
    void setBack(bool shown);
    /// "31 of 84 doors" with a line filled that far; nothing shown where all is 0.
    void setProgress(int done, int all);
    /// "10:42 ship (UTC+1)".
    void setTime(const QString& time);
    /// Shows the key that takes taps back and puts them back.
    void setUndo(bool shown);
    /// `can_undo`: the key can be pressed. `saved`: "saved 10:42:17", or empty.
    void setTap(bool can_undo, const QString& saved);

    /// The bar of an exercise where no strip has room above it: in the colours of practice, with
    /// `word` over its title, `spoken` for who hears it, and these keys of the frame.
    void setPractice(const QString& word, const QString& spoken,
                     const std::vector<QPushButton*>& keys);
    /// An ordinary bar again; whoever gave the keys takes them back.
    void endPractice();
    /// Which of the keys are shown has changed.
    void practiceKeysChanged() { layOut(); }

signals:
    void back();
    void lightAsked();
    void undoAsked();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void layOut();
    bool isPractice() const { return !m_practice_keys.empty(); }

    QHBoxLayout* m_row;
    QPushButton* m_back;
    QPushButton* m_light;
    QPushButton* m_undo;
    Label* m_word; ///< over the title, in an exercise
    Label* m_title;
    Label* m_subtitle;
    Label* m_count;
    QWidget* m_line;
    Label* m_saved;
    Label* m_time;
    std::vector<QPushButton*> m_practice_keys;
};

} // namespace latchround::ui
