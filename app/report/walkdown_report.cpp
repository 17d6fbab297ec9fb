#include "app/report/walkdown_report.h"

#include "app/register/register_kind.h"
#include "app/report/made_report.h"

namespace latchround {

bool isPractice(const WalkdownReport& report) {
    return report.practice || isPracticeVessel(report.arrangement.particulars.number);
}

Result<QByteArray> pdfOf(const WalkdownReport& asked) {
    auto made = madeReport(asked, ReportKind::Survey);
    if (!made)
        return tl::unexpected(made.error());
    return std::move(made->document);
}

} // namespace latchround
