#include "app/report/pictures.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

#include "app/exchange/facts_hash.h"
#include "app/report/report_look.h"
#include "app/report/report_words.h"
#include "ui/ink/glyph_drawing.h"

namespace latchround::report {

namespace {

constexpr int photograph_px = 720; ///< 80 mm at 230 dots an inch
/// Of photographs as they were recorded, before they are made small; beyond it the printing waits.
constexpr std::size_t most_waiting_bytes = 512u << 20;
const QString photograph_address = QStringLiteral("photograph:");
constexpr int glyph_px = 192;
constexpr double glyph_width_to_height = 0.86;

QString imageTag(const QString& address, QSizeF size) {
    return QStringLiteral("<img src=\"%1\" width=\"%2\" height=\"%3\"/>")
        .arg(address, QString::number(qRound(size.width())),
             QString::number(qRound(size.height())));
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

using Bytes = std::shared_ptr<const std::vector<std::byte>>;

/// Reads a photograph without a copy of its bytes.
class Reader {
public:
    explicit Reader(const Bytes& bytes)
        : m_data(QByteArray::fromRawData(reinterpret_cast<const char*>(bytes->data()),
                                         qsizetype(bytes->size())))
        , m_buffer(&m_data)
        , m_reader(&m_buffer) {
        m_reader.setAutoTransform(true);
    }

    /// As it stands upright, made small.
    QSize size() const {
        const QSize small = smallSize();
        return m_reader.transformation() & QImageIOHandler::TransformationRotate90
                   ? small.transposed()
                   : small;
    }

    QImage small() {
        if (const QSize size = smallSize(); size.isValid())
            m_reader.setScaledSize(size);
        const QImage image = m_reader.read();
        // Three bytes a pixel instead of four: a hundred photographs wait here for their pages.
        return image.isNull() ? image : image.convertToFormat(QImage::Format_RGB888);
    }

private:
    QSize smallSize() const {
        const QSize size = m_reader.size();
        return size.width() > photograph_px || size.height() > photograph_px
                   ? size.scaled(photograph_px, photograph_px, Qt::KeepAspectRatio)
                   : size;
    }

    QByteArray m_data;
    QBuffer m_buffer;
    QImageReader m_reader;
};

/// In the place of a photograph that turns out to be damaged when it is drawn.
QImage damagedImage(QSize size) {
    QImage image(size.expandedTo(QSize(1, 1)), QImage::Format_RGB888);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setPen(QPen(rule_ink, 3));
    painter.drawRect(QRectF(image.rect()).adjusted(2, 2, -2, -2));
    QFont font = reportFont(body_pt);
    font.setPixelSize(std::max(8, size.height() / 18));
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(image.rect(), Qt::AlignCenter | Qt::TextWordWrap,
                     Report::tr("Photograph damaged: it cannot be shown."));
    return image;
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

void Pictures::begin(const std::string& sha256) {
    const auto bytes = std::make_shared<const std::vector<std::byte>>(
        m_bytes_of ? m_bytes_of(sha256) : std::vector<std::byte>{});
    const auto look = std::make_shared<std::packaged_task<Looked()>>([bytes, sha256]() -> Looked {
        if (bytes->empty())
            return {{}, QT_TRANSLATE_NOOP("Report", "Photograph not in this register.")};
        if (sha256Hex(*bytes) != sha256)
            return {{},
                    QT_TRANSLATE_NOOP("Report", "Photograph omitted: its data is not what was "
                                                "recorded.")};
        const QSize size = Reader(bytes).size();
        if (!size.isValid())
            return {{},
                    QT_TRANSLATE_NOOP("Report", "Photograph omitted: its data is not a picture "
                                                "that can be shown.")};
        return {size, nullptr};
    });
    Small& small = m_photographs[sha256];
    small.looked = look->get_future().share();
    small.bytes = bytes->size();
    const auto make =
        std::make_shared<std::packaged_task<QImage()>>([bytes, looked = small.looked] {
            return looked.get().instead ? QImage() : Reader(bytes).small();
        });
    small.image = make->get_future().share();
    // Looking is quick and waited for first.
    m_pool.start([look] { (*look)(); }, 1);
    m_pool.start([make] { (*make)(); }, 0);
    m_waiting.push_back(sha256);
    m_waiting_bytes += small.bytes;
}

void Pictures::keepBelow(std::size_t waiting_bytes) {
    while (m_waiting_bytes > waiting_bytes) {
        const Small& oldest = m_photographs.at(m_waiting.front());
        oldest.image.wait();
        m_waiting_bytes -= oldest.bytes;
        m_waiting.pop_front();
    }
}

void Pictures::prepare(std::span<const Photograph* const> photographs, const ProgressRange& pace) {
    std::size_t done = 0;
    for (const Photograph* photograph : photographs) {
        if (!pace.at(done++, photographs.size()))
            return;
        if (m_photographs.contains(photograph->sha256))
            continue;
        keepBelow(most_waiting_bytes);
        begin(photograph->sha256);
    }
}

QString Pictures::photograph(const Photograph& photograph, double side_mm) {
    const Photograph* const one[] = {&photograph};
    prepare(one);
    const Looked& looked = m_photographs.at(photograph.sha256).looked.get();
    if (looked.instead)
        return safe(Report::tr(looked.instead));
    const double side = side_mm * css_px_per_mm;
    return imageTag(photograph_address + QString::fromStdString(photograph.sha256),
                    QSizeF(looked.size).scaled(side, side, Qt::KeepAspectRatio));
}

QImage Pictures::at(const QString& address) const {
    if (!address.startsWith(photograph_address)) {
        const auto found = m_images.find(address);
        return found == m_images.end() ? QImage() : found->second;
    }
    const auto found = m_photographs.find(address.mid(photograph_address.size()).toStdString());
    if (found == m_photographs.end())
        return {};
    const QImage& image = found->second.image.get();
    return image.isNull() ? damagedImage(found->second.looked.get().size) : image;
}

} // namespace latchround::report
