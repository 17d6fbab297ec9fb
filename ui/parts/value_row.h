// A line of a door's page that opens something: what it is, what is known so far, and one key.
#pragma once

#include <optional>

#include "core/grading/verdict.h"
#include "ui/parts/part.h"

class QHBoxLayout;
class QPushButton;

namespace latchround::ui {

class Lettering;

class ValueRow : public Part {
    Q_OBJECT
public:
    explicit ValueRow(const QString& words, const QString& key, QWidget* parent = nullptr);

    /// The quieter second line: help, or what was recorded.
    void setDetail(const QString& detail);
    void setKey(const QString& key);
    QString detail() const;
    QPushButton* key() const { return m_key; }

signals:
    void asked();

protected:
    void lookChanged() override;
    void paintEvent(QPaintEvent* event) override;

private:
    QHBoxLayout* m_line;
    Lettering* m_words;
    Lettering* m_detail;
    QPushButton* m_key;
};

} // namespace latchround::ui
