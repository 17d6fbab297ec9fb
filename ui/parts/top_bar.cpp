#include "ui/parts/top_bar.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QResizeEvent>

#include "ui/look/touch_style.h"
#include "ui/parts/lettering.h"

namespace latchround::ui {

namespace {

/// The filled line beside the count of doors.
class ProgressLine : public Part {
public:
    explicit ProgressLine(QWidget* parent)
        : Part(parent) {}
    double filled = 0;

    QSize sizeHint() const override { return {int(mm(30)), int(mm(1.6))}; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        const double radius = height() / 2.0;
        painter.setBrush(colours().bar_track);
        painter.drawRoundedRect(rect(), radius, radius);
        painter.setBrush(colours().bar_filled);
        painter.drawRoundedRect(QRectF(0, 0, width() * filled, height()), radius, radius);
    }
};

} // namespace

TopBar::TopBar(QWidget* parent)
    : Part(parent)
    , m_back(new QPushButton(QStringLiteral("‹"), this))
    , m_light(new QPushButton(this))
    , m_undo(new QPushButton(tr("Undo"), this))
    , m_title(new Lettering({}, TextSize::Heading, Ink::Bar, true, this))
    , m_subtitle(new Lettering({}, TextSize::Body, Ink::BarMuted, false, this))
    , m_count(new Lettering({}, TextSize::Body, Ink::Bar, false, this))
    , m_line(new ProgressLine(this))
    , m_saved(new Lettering({}, TextSize::Small, Ink::BarMuted, false, this))
    , m_time(new Lettering({}, TextSize::Body, Ink::Bar, false, this)) {
    m_back->setObjectName(QStringLiteral("back"));
    m_back->setAccessibleName(tr("Back"));
    m_light->setObjectName(QStringLiteral("light"));
    m_undo->setObjectName(QStringLiteral("undo"));
    setRole(*m_back, "bar");
    setRole(*m_undo, "bar");
    setRole(*m_light, "bar");
    connect(m_back, &QPushButton::clicked, this, &TopBar::back);
    connect(m_light, &QPushButton::clicked, this, &TopBar::lightAsked);
    connect(m_undo, &QPushButton::clicked, this, &TopBar::undoAsked);
    auto* row = new QHBoxLayout(this);
    row->addWidget(m_back);
    row->addWidget(m_title);
    row->addWidget(m_subtitle);
    row->addStretch(1);
    row->addWidget(m_count);
    row->addWidget(m_line, 0, Qt::AlignVCenter);
    row->addWidget(m_saved);
    row->addWidget(m_undo);
    row->addWidget(m_time);
    row->addWidget(m_light);
    setTabOrder(m_back, m_undo);
    setTabOrder(m_undo, m_light);
    for (Lettering* words : {m_title, m_subtitle, m_count, m_saved, m_time})
        words->setWordWrap(false);
    setTap({}, {});
    setUndo(false);
    lookChanged();
    setProgress(0, 0);
    setBack(false);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void TopBar::setTitle(const QString& title, const QString& subtitle) {
    m_title->setText(title);
    m_subtitle->setText(subtitle);
    layOut();
}

void TopBar::setBack(bool shown) {
    m_back->setVisible(shown);
}

void TopBar::setProgress(int done, int all) {
    m_count->setText(all > 0 ? tr("%1 of %2 doors").arg(done).arg(all) : QString());
    static_cast<ProgressLine*>(m_line)->filled = all > 0 ? double(done) / all : 0;
    layOut();
    m_line->update();
}

void TopBar::setTime(const QString& time) {
    m_time->setText(time);
    layOut();
}

void TopBar::setUndo(bool shown) {
    m_undo->setVisible(shown);
    layOut();
}

void TopBar::setTap(const QString& what, const QString& saved) {
    m_undo->setEnabled(!what.isEmpty());
    m_undo->setAccessibleName(what.isEmpty() ? tr("Undo: nothing to take back")
                                             : tr("Undo: %1").arg(what));
    m_saved->setText(saved);
    layOut();
}

void TopBar::layOut() {
    const bool progress = !m_count->text().isEmpty();
    m_count->setVisible(progress);
    // On a narrow window one thing after the other gives way to what must be read and pressed.
    const int space = layout()->spacing();
    int room = width() - 2 * sizes().gap;
    for (const QWidget* kept : std::initializer_list<const QWidget*>{m_back, m_undo, m_light})
        if (!kept->isHidden())
            room -= kept->sizeHint().width() + space;
    room -= m_title->sizeHint().width();
    const auto offer = [&](QWidget* part, bool wanted) {
        const int needed = part->sizeHint().width() + space;
        part->setVisible(wanted && needed <= room);
        if (wanted && needed <= room)
            room -= needed;
    };
    offer(m_count, progress);
    offer(m_time, true);
    offer(m_subtitle, !m_subtitle->text().isEmpty());
    offer(m_saved, !m_saved->text().isEmpty());
    offer(m_line, progress);
}

void TopBar::lookChanged() {
    Part::lookChanged();
    const Sizes& size = sizes();
    setFixedHeight(size.target + 2);
    auto* row = static_cast<QHBoxLayout*>(layout());
    row->setContentsMargins(size.gap, 1, size.gap, 1);
    row->setSpacing(size.gap + size.gap / 2);
    m_back->setFixedSize(size.target, size.target);
    switch (look().light) {
    case Light::Day:
        m_light->setText(tr("Day"));
        break;
    case Light::Dusk:
        m_light->setText(tr("Dusk"));
        break;
    case Light::Night:
        m_light->setText(tr("Night"));
        break;
    }
    m_light->setAccessibleName(tr("Light: %1. Press for the next").arg(m_light->text()));
}

void TopBar::resizeEvent(QResizeEvent* event) {
    Part::resizeEvent(event);
    layOut();
}

void TopBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), colours().bar);
}

} // namespace latchround::ui
