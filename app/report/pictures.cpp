#include "app/report/pictures.h"

#include <algorithm>
#include <cmath>

#include <QBuffer>
#include <QCryptographicHash>
#include <QImage>
#include <QImageReader>
#include <QPainter>
#include <QTextDocument>
#include <QUrl>

#include "app/report/report_words.h"
#include "ui/parts/door_glyph.h"

namespace latchround::report {

namespace {

constexpr double css_px_per_mm = 96 / 25.4;
constexpr double photograph_mm = 80;
constexpr int photograph_px = 1000; ///< 80 mm at a little over 300 dots an inch
constexpr int glyph_px = 192;
constexpr double glyph_width_to_height = 0.86;

QString imageTag(const QString& address, QSize size) {
    return QStringLiteral("<img src=\"%1\" width=\"%2\" height=\"%3\"/>")
        .arg(address, QString::number(size.width()), QString::number(size.height()));
}

QImage glyphImage(Verdict verdict) {
    QImage image(int(glyph_px * glyph_width_to_height), glyph_px, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    ui::drawDoorGlyph(painter, QRectF(image.rect()).adjusted(4, 4, -4, -4), verdict,
                      ui::coloursOf(ui::Light::Day));
    return image;
}

QImage decoded(QByteArray bytes) {
    QBuffer buffer(&bytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && (size.width() > photograph_px || size.height() > photograph_px))
        reader.setScaledSize(size.scaled(photograph_px, photograph_px, Qt::KeepAspectRatio));
    return reader.read();
}

} // namespace

QString Pictures::glyph(Verdict verdict, int height_px) {
    const QString address =
        QStringLiteral("glyph:%1").arg(QString::fromLatin1(word(verdict).data()));
    if (m_drawn.insert(verdict).second)
        m_document.addResource(QTextDocument::ImageResource, QUrl(address), glyphImage(verdict));
    return imageTag(address, {int(std::lround(height_px * glyph_width_to_height)), height_px});
}

QString Pictures::photograph(const Photograph& photograph) {
    std::vector<std::byte> bytes;
    if (m_report.photograph)
        bytes = m_report.photograph(photograph.sha256);
    if (bytes.empty())
        return safe(say("Photograph not at hand in this register."));
    const QByteArray data(reinterpret_cast<const char*>(bytes.data()), qsizetype(bytes.size()));
    const QByteArray hash = QCryptographicHash::hash(data, QCryptographicHash::Sha256).toHex();
    if (hash.toStdString() != photograph.sha256)
        return safe(say("Photograph left out: its bytes are not those that were recorded."));
    const QImage image = decoded(data);
    if (image.isNull())
        return safe(say("Photograph left out: its bytes are not a picture that can be shown."));
    const QString address =
        QStringLiteral("photograph:%1").arg(QString::fromStdString(photograph.sha256));
    m_document.addResource(QTextDocument::ImageResource, QUrl(address), image);
    const int side = int(photograph_mm * css_px_per_mm);
    return imageTag(address, image.size().scaled(side, side, Qt::KeepAspectRatio));
}

} // namespace latchround::report
