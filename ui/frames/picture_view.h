// A photograph as large as there is room for, with what it shows below it.
#pragma once

#include <QImage>

#include "ui/look/part.h"

namespace latchround::ui {

class PictureView : public Part {
    Q_OBJECT
public:
    PictureView(QImage picture, const QString& caption, QWidget* parent = nullptr);

    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QImage m_picture; ///< null: it could not be read
    QString m_caption;
};

} // namespace latchround::ui
