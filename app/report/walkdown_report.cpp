#include "app/report/walkdown_report.h"

#include "app/report/made_report.h"

namespace latchround {

Result<QByteArray> pdfOf(const WalkdownReport& asked) {
    auto made = madeReport(asked, ReportKind::Survey);
    if (!made)
        return tl::unexpected(made.error());
    return std::move(made->document);
}

} // namespace latchround
