#include "app/report/pictures.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <future>
#include <thread>

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <QPainter>

#include "app/exchange/facts_hash.h"
#include "app/report/report_look.h"
#include "app/report/report_words.h"
#include "ui/parts/door_glyph.h"

namespace latchround::report {

namespace {

constexpr int photograph_px = 720; ///< 80 mm at 230 dots an inch
constexpr int glyph_px = 192;
constexpr double glyph_width_to_height = 0.86;

QString imageTag(const QString& address, QSizeF size) {
    return QStringLiteral("<img src=\"%1\" width=\"%2\" height=\"%3\"/>")
        .arg(address, QString::number(qRound(size.width())),
             QString::number(qRound(size.height())));
}

QString addressOf(const std::string& sha256) {
    return QStringLiteral("photograph:%1").arg(QString::fromStdString(sha256));
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

QImage boxImage() {
    QImage image(96, 96, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setPen(QPen(ink, 8));
    painter.drawRect(QRectF(image.rect()).adjusted(6, 6, -6, -6));
    return image;
}

QImage decoded(QByteArray bytes) {
    QBuffer buffer(&bytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.isValid() && (size.width() > photograph_px || size.height() > photograph_px))
        reader.setScaledSize(size.scaled(photograph_px, photograph_px, Qt::KeepAspectRatio));
    const QImage image = reader.read();
    // Three bytes a pixel instead of four: a hundred photographs wait here for their pages.
    return image.isNull() ? image : image.convertToFormat(QImage::Format_RGB888);
}

} // namespace

QString Pictures::glyph(Verdict verdict, int height_px) {
    const QString address =
        QStringLiteral("glyph:%1").arg(QString::fromLatin1(word(verdict).data()));
    if (!m_images.contains(address))
        m_images.emplace(address, glyphImage(verdict));
    return imageTag(address, QSizeF(height_px * glyph_width_to_height, height_px));
}

QString Pictures::box(int height_px) {
    const QString address = QStringLiteral("box:");
    if (!m_images.contains(address))
        m_images.emplace(address, boxImage());
    return imageTag(address, QSizeF(height_px, height_px));
}

QString Pictures::drawing(const QString& name, const QImage& image, double width_mm) {
    const QString address = QStringLiteral("drawing:%1").arg(name);
    m_images[address] = image;
    const double width = width_mm * css_px_per_mm;
    return imageTag(address, QSizeF(width, width * image.height() / image.width()));
}

Pictures::Shown Pictures::shownOf(const std::vector<std::byte>& bytes, const std::string& sha256) {
    if (bytes.empty())
        return {{}, QT_TRANSLATE_NOOP("Report", "Photograph not at hand in this register.")};
    if (sha256Hex(bytes) != sha256)
        return {{},
                QT_TRANSLATE_NOOP("Report", "Photograph left out: its bytes are not those that "
                                            "were recorded.")};
    QImage image = decoded(QByteArray::fromRawData(reinterpret_cast<const char*>(bytes.data()),
                                                   qsizetype(bytes.size())));
    if (image.isNull())
        return {{},
                QT_TRANSLATE_NOOP("Report", "Photograph left out: its bytes are not a picture that "
                                            "can be shown.")};
    return {std::move(image), nullptr};
}

void Pictures::prepare(std::span<const Photograph* const> photographs) {
    struct Work {
        std::string sha256;
        std::future<Shown> shown;
    };
    std::deque<Work> under_way;
    const auto takeFirst = [&] {
        m_photographs.emplace(under_way.front().sha256, under_way.front().shown.get());
        under_way.pop_front();
    };
    std::map<std::string, bool> begun;
    for (const Photograph* photograph : photographs) {
        const std::string& sha256 = photograph->sha256;
        if (m_photographs.contains(sha256) || !begun.emplace(sha256, true).second)
            continue;
        if (under_way.size() >= std::max(1U, std::thread::hardware_concurrency()))
            takeFirst();
        under_way.push_back(
            {sha256, std::async(std::launch::async,
                                [bytes = m_bytes_of ? m_bytes_of(sha256) : std::vector<std::byte>{},
                                 sha256] { return shownOf(bytes, sha256); })});
    }
    while (!under_way.empty())
        takeFirst();
}

QString Pictures::photograph(const Photograph& photograph, double side_mm) {
    const Photograph* const one[] = {&photograph};
    prepare(one);
    const Shown& shown = m_photographs.at(photograph.sha256);
    if (shown.instead)
        return safe(say(shown.instead));
    m_images.emplace(addressOf(photograph.sha256), shown.image);
    const double side = side_mm * css_px_per_mm;
    return imageTag(addressOf(photograph.sha256),
                    QSizeF(shown.image.size()).scaled(side, side, Qt::KeepAspectRatio));
}

QImage Pictures::at(const QString& address) const {
    const auto found = m_images.find(address);
    return found == m_images.end() ? QImage() : found->second;
}

} // namespace latchround::report
