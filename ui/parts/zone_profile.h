// Side elevation of the vessel: decks, zone bulkheads at their frames, each door at its place with
// its grade. A bulkhead that does not hold is drawn broken, one that is not shown to hold yet with
// short strokes, and the sentences below say which zones act as one.
#pragma once

#include <set>

#include <QStringList>

#include "ui/parts/part.h"
#include "ui/parts/profile_plan.h"

namespace latchround::ui {

/// What is known of the bulkheads, by ids of boundaries, and what it means.
struct BulkheadsShown {
    std::set<std::string> broken{};    ///< do not hold
    std::set<std::string> not_shown{}; ///< not shown to hold yet
    QStringList sentences{};           ///< what the broken ones mean, one each
    QStringList remarks{};             ///< what would mend it, and what is not shown yet
};

class ZoneProfile : public Part {
    Q_OBJECT
public:
    explicit ZoneProfile(QWidget* parent = nullptr);

    void setArrangement(Arrangement arrangement);
    void setVerdicts(DoorVerdicts verdicts);
    void setBulkheads(BulkheadsShown shown);
    /// Marks a door, as the one that is being tested; empty for none.
    void setCurrentDoor(const QString& number);
    QString currentDoor() const { return m_current; }

    /// Where a door is drawn now; nothing for one hidden behind another of its bulkhead and deck.
    std::optional<QRectF> placeOf(const QString& door) const;
    /// Every zone bulkhead with its doors and grades, one line each, for reading aloud.
    QStringList asList() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void doorChosen(const QString& door);

protected:
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void plan();
    void speak();
    void step(int along, int down);
    double sentenceHeight() const;
    void paintHull(QPainter& painter) const;
    void paintBulkheads(QPainter& painter) const;
    void paintDoors(QPainter& painter) const;
    void paintSentences(QPainter& painter) const;

    Arrangement m_arrangement;
    DoorVerdicts m_verdicts;
    BulkheadsShown m_bulkheads;
    QString m_current;
    ProfilePlan m_plan;
};

} // namespace latchround::ui
