#include "app/report/page/document_marks.h"

#include <exception>
#include <vector>

// qpdf's own JSON has a vector of a class not yet complete, which clang 14 refuses in C++20. None
// of it is used here, so its name is enough.
#if defined(__clang__) && !defined(JSON_HH)
#define JSON_HH
class JSON;
#endif
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "core/error/document_errors.h"
#include "core/phrase/places.h"

namespace latchround::report {

namespace {

using PdfObject = QPDFObjectHandle;

/// Bookmarks as PDF wants them (ISO 32000-1, 12.3.3): each knows its parent, its neighbours and its
/// first and last child.
class Outline {
public:
    explicit Outline(QPDF& file)
        : m_file(file)
        , m_pages(QPDFPageDocumentHelper(file).getAllPages())
        , m_root(file.makeIndirectObject(PdfObject::parse("<< /Type /Outlines >>")))
        , m_open{{0, m_root}} {}

    void add(const Bookmark& bookmark) {
        const auto page = static_cast<std::size_t>(bookmark.page);
        if (page >= m_pages.size())
            return;
        while (m_open.back().level >= bookmark.level)
            m_open.pop_back();
        const PdfObject entry = entryOf(bookmark, m_pages[page]);
        putUnder(m_open.back().object, entry);
        m_open.push_back({bookmark.level, entry});
    }

    PdfObject root() const { return m_root; }

private:
    struct Open {
        int level;
        PdfObject object;
    };

    PdfObject entryOf(const Bookmark& bookmark, QPDFPageObjectHelper& page) {
        PdfObject entry = m_file.makeIndirectObject(PdfObject::newDictionary());
        entry.replaceKey("/Title", PdfObject::newUnicodeString(bookmark.title.toStdString()));
        const double height =
            page.getObjectHandle().getKey("/MediaBox").getArrayItem(3).getNumericValue();
        PdfObject place = PdfObject::newArray();
        place.appendItem(page.getObjectHandle());
        place.appendItem(PdfObject::newName("/XYZ"));
        place.appendItem(PdfObject::newNull());
        place.appendItem(PdfObject::newReal(height - bookmark.from_top_pt, 1));
        place.appendItem(PdfObject::newNull());
        entry.replaceKey("/Dest", place);
        return entry;
    }

    static void putUnder(PdfObject parent, PdfObject entry) {
        entry.replaceKey("/Parent", parent);
        if (parent.hasKey("/Last")) {
            PdfObject before = parent.getKey("/Last");
            before.replaceKey("/Next", entry);
            entry.replaceKey("/Prev", before);
        } else {
            parent.replaceKey("/First", entry);
        }
        parent.replaceKey("/Last", entry);
        // Below the top a negative count means closed: a tree of 400 open doors hides its sections.
        const bool top = parent.hasKey("/Type");
        const long long count = parent.hasKey("/Count") ? parent.getKey("/Count").getIntValue() : 0;
        parent.replaceKey("/Count", PdfObject::newInteger(top ? count + 1 : count - 1));
    }

    QPDF& m_file;
    std::vector<QPDFPageObjectHelper> m_pages;
    PdfObject m_root;
    std::vector<Open> m_open; ///< from the root to the newest entry
};

void setInformation(QPDF& file, const DocumentInformation& information) {
    PdfObject trailer = file.getTrailer();
    if (!trailer.getKey("/Info").isDictionary())
        trailer.replaceKey("/Info", file.makeIndirectObject(PdfObject::newDictionary()));
    PdfObject info = trailer.getKey("/Info");
    const auto set = [&](const char* key, const QString& words) {
        if (!words.isEmpty())
            info.replaceKey(key, PdfObject::newUnicodeString(words.toStdString()));
    };
    set("/Title", information.title);
    set("/Subject", information.subject);
    set("/Author", information.author);
    set("/Keywords", information.keywords);
}

QByteArray rewritten(const QByteArray& pdf, std::span<const Bookmark> bookmarks,
                     const DocumentInformation& information) {
    QPDF file;
    file.processMemoryFile("report", pdf.constData(), static_cast<std::size_t>(pdf.size()));
    setInformation(file, information);
    Outline outline(file);
    for (const Bookmark& bookmark : bookmarks)
        outline.add(bookmark);
    if (!bookmarks.empty()) {
        PdfObject root = file.getRoot();
        root.replaceKey("/Outlines", outline.root());
        root.replaceKey("/PageMode", PdfObject::newName("/UseOutlines"));
    }
    if (!information.language.isEmpty()) // ISO 32000-1, 14.9.2
        file.getRoot().replaceKey("/Lang",
                                  PdfObject::newString(information.language.toStdString()));
    QPDFWriter writer(file);
    writer.setOutputMemory();
    writer.write();
    const auto bytes = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char*>(bytes->getBuffer()), qsizetype(bytes->getSize())};
}

} // namespace

Result<QByteArray> withMarks(const QByteArray& pdf, std::span<const Bookmark> bookmarks,
                             const DocumentInformation& information) {
    try {
        return rewritten(pdf, bookmarks, information);
    } catch (const std::exception& fault) {
        return tl::unexpected(Error{place::report(), errors::bookmarks_not_written(fault.what())});
    }
}

} // namespace latchround::report
