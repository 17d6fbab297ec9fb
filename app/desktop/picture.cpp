#include "app/desktop/picture.h"

#include <cstring>
#include <utility>

#include <QBuffer>
#include <QCryptographicHash>
#include <QFile>
#include <QImageReader>

#include "core/error/desktop_errors.h"
#include "core/phrase/places.h"

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
    const auto refusal = [&](Phrase what) {
        return tl::unexpected(Error{path.toStdString(), std::move(what)});
    };
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return refusal(errors::picture_unreadable());
    if (file.size() > most_bytes)
        return refusal(errors::picture_too_large(most_bytes >> 20));
    const QByteArray bytes = file.readAll();
    QBuffer buffer;
    buffer.setData(bytes);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    const QImage image = reader.read();
    if (image.isNull())
        return refusal(errors::no_picture());
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
        return tl::unexpected(Error{place::picture(), errors::picture_not_kept()});
    return picked(buffer.data(), "image/jpeg");
}

} // namespace latchround
