// Pictures of the document: door glyphs, boxes to tick, charts and photographs, each under an
// address of its own. HTML refers to them by what these functions give back; the pieces of the
// document find them here when they are drawn.
#pragma once

#include <deque>
#include <functional>
#include <future>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <QImage>
#include <QString>
#include <QThreadPool>

#include "core/evidence/fact.h"
#include "core/grading/verdict.h"
#include "core/progress_range.h"

namespace latchround::report {

class Pictures {
public:
    /// Bytes of a photograph by its hash; empty where they are not to be had.
    using BytesOf = std::function<std::vector<std::byte>(std::string_view sha256)>;
    explicit Pictures(BytesOf bytes_of)
        : m_bytes_of(std::move(bytes_of)) {}
    /// What still waits to be made small is left.
    ~Pictures() { m_pool.clear(); }
    Pictures(const Pictures&) = delete;
    Pictures& operator=(const Pictures&) = delete;

    /// An <img> of the verdict's glyph, `height_px` high.
    QString glyph(Verdict verdict, int height_px);

    /// An <img> of an empty box to tick by hand.
    QString box(int height_px);

    /// An <img> of this drawing, as wide as given; its height follows.
    QString drawing(const QString& name, const QImage& image, double width_mm);

    /// Fetches these photographs. They are made small beside other work, until they are drawn. Not
    /// all of them where `pace` stops it.
    void prepare(std::span<const Photograph* const> photographs,
                 const ProgressRange& pace = ProgressRange());

    /// An <img> of the photograph, at most so wide and high, or words why there is none.
    QString photograph(const Photograph& photograph, double side_mm = 80);

    QImage at(const QString& address) const;

private:
    /// What the page needs to know of a photograph before it is drawn: its size, or why it is not
    /// shown.
    struct Looked {
        QSize size;
        const char* instead = nullptr;
    };
    struct Small {
        std::shared_future<Looked> looked;
        std::shared_future<QImage> image;
        std::size_t bytes = 0; ///< that wait to be made small
    };
    void begin(const std::string& sha256);
    void keepBelow(std::size_t waiting_bytes);

    BytesOf m_bytes_of;
    std::map<QString, QImage> m_images;
    std::map<std::string, Small> m_photographs; ///< by hash
    std::deque<std::string> m_waiting;          ///< hashes of those that wait, oldest first
    std::size_t m_waiting_bytes = 0;
    QThreadPool m_pool; ///< last: it lets its threads finish before the rest goes
};

} // namespace latchround::report
