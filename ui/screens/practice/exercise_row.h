// An exercise to choose: what it is about, how hard, how many doors, the best score so far, and the
// key that begins it.
#pragma once

#include <optional>

#include "ui/look/part.h"
#include "ui/ports/exercises.h"

class QGridLayout;
class QPushButton;

namespace latchround::ui {

class Label;

class ExerciseRow : public Part {
    Q_OBJECT
public:
    explicit ExerciseRow(const ui::ExerciseOffered& exercise, QWidget* parent = nullptr);

    void setBest(std::optional<int> percent);
    QPushButton* key() const { return m_key; }

signals:
    void asked();

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();

    QGridLayout* m_grid;
    QWidget* m_words;
    Label* m_best;
    QPushButton* m_key;
};

} // namespace latchround::ui
