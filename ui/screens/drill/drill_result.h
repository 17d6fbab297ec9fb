// What a finished drill says of a thumb, and what that changes.
#pragma once

#include "core/measure/reaction_model.h"
#include "ui/look/part.h"

class QPushButton;
class QVBoxLayout;

namespace latchround::ui {

class ReadingPane;

class DrillResult : public Part {
    Q_OBJECT
public:
    explicit DrillResult(QWidget* parent = nullptr);

    void show(const ThumbDrill& drill);
    QPushButton* keepKey() const { return m_keep; }

signals:
    void keepAsked();
    void againAsked();

protected:
    void lookChanged() override;

private:
    QVBoxLayout* m_lines;
    ReadingPane* m_words;
    QPushButton* m_keep;
    QPushButton* m_again;
};

} // namespace latchround::ui
