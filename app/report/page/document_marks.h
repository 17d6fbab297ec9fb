// What a reader of PDF files shows beside the pages: bookmarks, and the document information. Qt
// writes neither, so they are put into its file afterwards.
#pragma once

#include <span>

#include <QByteArray>
#include <QString>

#include "core/error/error.h"

namespace latchround::report {

struct Bookmark {
    QString title;
    int level = 1; ///< 1 for a section; one deeper than the bookmark it belongs to
    int page = 0;  ///< from 0
    double from_top_pt = 0;
};

struct DocumentInformation {
    QString title;
    QString subject;
    QString author;
    QString keywords;
    QString language; ///< code of that of the pages, "es"; empty: not said
};

Result<QByteArray> withMarks(const QByteArray& pdf, std::span<const Bookmark> bookmarks,
                             const DocumentInformation& information);

} // namespace latchround::report
