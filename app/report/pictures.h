// Pictures of the document: door glyphs and photographs, each an image resource under an address of
// its own. HTML refers to them by what these functions give back.
#pragma once

#include <set>

#include <QSize>
#include <QString>

#include "app/report/walkdown_report.h"
#include "core/grading/verdict.h"

class QTextDocument;

namespace latchround::report {

class Pictures {
public:
    Pictures(QTextDocument& document, const WalkdownReport& report)
        : m_document(document)
        , m_report(report) {}

    /// An <img> of the verdict's glyph, `height_px` high.
    QString glyph(Verdict verdict, int height_px);

    /// An <img> of the photograph, at most 80 mm wide and high, or words why there is none.
    QString photograph(const Photograph& photograph);

private:
    QTextDocument& m_document;
    const WalkdownReport& m_report;
    std::set<Verdict> m_drawn;
};

} // namespace latchround::report
