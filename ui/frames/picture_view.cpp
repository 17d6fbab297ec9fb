#include "ui/frames/picture_view.h"

#include <QPainter>

namespace latchround::ui {

PictureView::PictureView(QImage picture, const QString& caption, QWidget* parent)
    : Part(parent)
    , m_picture(std::move(picture))
    , m_caption(caption) {
    setAccessibleName(caption);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
}

QSize PictureView::sizeHint() const {
    return {int(mm(100)), int(mm(200))}; // as high as there is room: one fills a page
}

void PictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const QFont small = font(TextSize::Small);
    const int line = QFontMetrics(small).height() + sizes().gap;
    const QRect place = rect().adjusted(0, 0, 0, -line);
    painter.setFont(small);
    painter.setPen(colours().ink);
    if (m_picture.isNull()) {
        painter.drawText(place, Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The picture is not on this tablet: import it from the tablet that "
                            "took it."));
    } else {
        const QSize shown = m_picture.size().scaled(place.size(), Qt::KeepAspectRatio);
        const QRect there(place.center() - QPoint(shown.width() / 2, shown.height() / 2), shown);
        painter.drawImage(there, m_picture);
    }
    painter.drawText(QRect(0, height() - line, width(), line), Qt::AlignHCenter | Qt::AlignBottom,
                     QFontMetrics(small).elidedText(m_caption, Qt::ElideRight, width()));
}

} // namespace latchround::ui

#include "moc_picture_view.cpp"
