// Phrases to tap instead of typing, and a line for own words where no phrase fits.
#pragma once

#include <QStringList>

#include "ui/look/part.h"

class QLineEdit;
class QPushButton;

namespace latchround::ui {

class FlowGrid;

class PhrasePicker : public Part {
    Q_OBJECT
public:
    /// `own_words`: offer a line to write in.
    explicit PhrasePicker(const QStringList& phrases = {}, bool own_words = true,
                          QWidget* parent = nullptr);

    void setPhrases(const QStringList& phrases);
    /// What was picked last; empty until then.
    QString chosen() const { return m_chosen; }
    void clear();

signals:
    void picked(QString phrase);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;

private:
    void arrange();
    void pick(const QString& phrase);

    QStringList m_phrases;
    QString m_chosen;
    FlowGrid* m_grid;
    QLineEdit* m_own;
    QPushButton* m_use;
    std::vector<QPushButton*> m_keys;
};

} // namespace latchround::ui
