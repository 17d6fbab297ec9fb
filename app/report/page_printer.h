// Puts a laid-out document on A4 pages with the report's own header and footer.
#pragma once

#include <QByteArray>
#include <QString>

#include "core/complaint.h"

class QTextDocument;

namespace latchround::report {

struct PageWords {
    QString title;        ///< of the file
    QString creator;      ///< program and version
    QString header_left;  ///< the vessel
    QString header_right; ///< the walkdown
    QString mark;         ///< "Practice, not a record", or empty: in the header of every page
    QString footer_left;  ///< the page number stands right
};

Result<QByteArray> printed(QTextDocument& document, const PageWords& words);

} // namespace latchround::report
