// Side elevation of the vessel: decks, zone bulkheads at their frames, each door at its place with
// its grade. A bulkhead that does not hold is drawn broken at the deck of the door that fails, one
// that is not shown to hold yet with short strokes, and the sentences below say which zones act as
// one.
//
// Any door is two touches away: where several lie under one fingertip, the first touch offers them
// as keys. It is looked at more closely by two fingers, by the wheel, by keys on it and by + - 0; a
// closer view is moved by one finger, by a touch where no door lies, and by the arrows, which go
// from door to door. Without focus policy it is a picture: no keys.
#pragma once

#include <optional>
#include <vector>

#include "ui/look/part.h"
#include "ui/ship/profile_drawing.h"
#include "ui/ship/profile_plan.h"

class QPushButton;
class QTouchEvent;

namespace latchround::ui {

/// A line of the profile as it is read aloud, and the doors it speaks of.
struct ProfileLine {
    QString words;
    QStringList doors{};
};

class ZoneProfile : public Part {
    Q_OBJECT
public:
    static constexpr double most_zoom = 8;

    explicit ZoneProfile(QWidget* parent = nullptr);

    void setArrangement(Arrangement arrangement);
    void setVerdicts(DoorVerdicts verdicts);
    void setBulkheads(BulkheadsShown shown);
    /// Marks a door, as the one that is being tested; empty for none.
    void setCurrentDoor(const QString& number);
    QString currentDoor() const { return m_current; }
    /// What a legend has to name.
    const ProfileMarks& marks() const { return m_marks; }
    /// As a touch on that door alone.
    void choose(const QString& door);

    /// Times larger than the whole ship, 1 to `most_zoom`.
    double zoom() const { return m_view.zoom; }
    /// What lies at `about` stays there.
    void setZoom(double zoom, const QPointF& about);

    /// Where a door, or the one that stands for it, is drawn now; out of the widget where the view
    /// is elsewhere.
    std::optional<QRectF> placeOf(const QString& door) const;
    /// What the sentences say, every zone bulkhead with its doors and grades, and the other doors
    /// deck by deck, for reading aloud.
    std::vector<ProfileLine> lines() const;
    QStringList asList() const;
    /// "door 5-04, deck 5, unsatisfactory"
    QString doorLine(const QString& door) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void doorChosen(QString door);
    void marksChanged();

protected:
    bool event(QEvent* event) override;
    void lookChanged() override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// A finger or the mouse, from where it came down.
    struct Press {
        QPointF from;
        QPointF middle;
        bool moved = false;
    };
    /// Two fingers: how far apart they were, and what of the ship lay between them.
    struct Pinch {
        double apart = 1;
        double zoom = 1;
        QPointF share;
    };
    struct Sentence {
        QString words;
        bool bad = false;
        double height = 0;
    };

    void plan();
    void updateSpokenText();
    void layKeys();
    void laySentences();
    std::vector<Sentence> sentencesWithin(double width, double height) const;
    void step(int along, int down);
    void bringInView();
    void press(const QPointF& point);
    void move(const QPointF& point);
    void letGo(const QPointF& point);
    void touchAt(const QPointF& point);
    void touched(const QTouchEvent& event);
    void offer(const std::vector<const ProfileDoor*>& near);
    QPointF shareAt(const QPointF& point) const;
    void lookAt(double zoom, const QPointF& share, const QPointF& at);
    void zoomByKey(double factor);
    QPushButton* zoomKey(const QString& words, const char* name, const QString& spoken);
    void paintSentences(QPainter& painter) const;

    Arrangement m_arrangement;
    DoorVerdicts m_verdicts;
    BulkheadsShown m_bulkheads;
    QString m_current;
    ProfileView m_view;
    ProfilePlan m_plan;
    ProfileMarks m_marks;
    std::vector<Sentence> m_sentences;
    std::optional<Press> m_press;
    std::optional<Pinch> m_pinch;
    double m_words_width = 0;
    QSizeF m_keys_room; ///< what the keys take at the top right
    QPushButton* m_in;
    QPushButton* m_out;
    QPushButton* m_whole;
};

} // namespace latchround::ui
