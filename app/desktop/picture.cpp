#include "app/desktop/picture.h"

#include <cstring>

#include <QBuffer>
#include <QCryptographicHash>
#include <QFile>
#include <QImageReader>

namespace latchround {

namespace {

constexpr qint64 most_bytes = 20 << 20;

ui::PickedPhotograph picked(const QByteArray& bytes, const char* media_type) {
    ui::PickedPhotograph picture;
    picture.bytes.resize(static_cast<std::size_t>(bytes.size()));
    std::memcpy(picture.bytes.data(), bytes.data(), picture.bytes.size());
    picture.sha256 =
        QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString();
    picture.media_type = media_type;
    return picture;
}

} // namespace

Result<ui::PickedPhotograph> pictureFromFile(const QString& path) {
    const auto complaint = [&](const char* what, const char* remedy) {
        return tl::unexpected(Complaint{path.toStdString(), what, remedy});
    };
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return complaint("the file cannot be read", "Choose another or check its rights.");
    if (file.size() > most_bytes)
        return complaint("the picture is larger than 20 MB", "Take it again in a smaller size.");
    const QByteArray bytes = file.readAll();
    QBuffer buffer;
    buffer.setData(bytes);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    const QImage image = reader.read();
    if (image.isNull())
        return complaint("this is not a picture that can be shown", "Choose a JPEG or PNG file.");
    if (format == "jpeg" || format == "jpg")
        return picked(bytes, "image/jpeg");
    if (format == "png")
        return picked(bytes, "image/png");
    return pictureFromImage(image);
}

Result<ui::PickedPhotograph> pictureFromImage(const QImage& image) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    if (image.isNull() || !image.save(&buffer, "JPEG", 88))
        return tl::unexpected(Complaint{"photograph", "it could not be kept", "Take it again."});
    return picked(buffer.data(), "image/jpeg");
}

} // namespace latchround
