#include "app/desktop/camera.h"

#include <QCamera>
#include <QDialog>
#include <QHBoxLayout>
#include <QImageCapture>
#include <QLabel>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QPushButton>
#include <QVBoxLayout>
#include <QVideoWidget>

#include "ui/look/touch_style.h"
#include "ui/window/window.h"

namespace latchround {

bool cameraIsThere() {
    return !QMediaDevices::videoInputs().isEmpty();
}

QImage photographByCamera(QWidget* parent) {
    QDialog dialog(parent);
    dialog.setWindowTitle(ui::Window::tr("Photograph"));
    dialog.resize(parent->window()->size() * 0.9);
    auto* lines = new QVBoxLayout(&dialog);
    auto* view = new QVideoWidget;
    lines->addWidget(view, 1);
    auto* trouble = new QLabel;
    lines->addWidget(trouble);
    auto* keys = new QHBoxLayout;
    auto* close = new QPushButton(ui::Window::tr("Close"));
    auto* take = new QPushButton(ui::Window::tr("Take photograph"));
    ui::setRole(*close, "plain", true);
    ui::setRole(*take, "primary", true);
    keys->addWidget(close);
    keys->addWidget(take, 1);
    lines->addLayout(keys);

    QCamera camera(QMediaDevices::defaultVideoInput());
    QImageCapture capture;
    QMediaCaptureSession session;
    session.setCamera(&camera);
    session.setImageCapture(&capture);
    session.setVideoOutput(view);
    QImage taken;
    QObject::connect(&capture, &QImageCapture::imageCaptured, &dialog,
                     [&](int, const QImage& image) {
                         taken = image;
                         dialog.accept();
                     });
    QObject::connect(&capture, &QImageCapture::errorOccurred, &dialog,
                     [&](int, QImageCapture::Error, const QString& why) { trouble->setText(why); });
    QObject::connect(&camera, &QCamera::errorOccurred, &dialog,
                     [&](QCamera::Error, const QString& why) { trouble->setText(why); });
    QObject::connect(close, &QPushButton::clicked, &dialog, &QDialog::reject);
    QObject::connect(take, &QPushButton::clicked, &dialog, [&] { capture.capture(); });
    camera.start();
    dialog.exec();
    camera.stop();
    return taken;
}

} // namespace latchround
