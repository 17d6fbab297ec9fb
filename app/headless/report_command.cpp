#include "app/headless/report_command.h"

#include "app/headless/json_answer.h"
#include "app/headless/opened_register.h"
#include "app/report/durable_file.h"
#include "app/report/walkdown_report.h"

namespace latchround::headless {

Answer printReport(const Print& print, const Catalogue& catalogue) {
    const auto opened = openedRegister(print.path);
    if (!opened)
        return refused(opened.error());
    const auto walkdown = chosenWalkdown(*opened, print.walkdown, print.path);
    if (!walkdown)
        return refused(walkdown.error());
    const WalkdownReport report{opened->arrangement,
                                opened->ledger,
                                walkdown->id,
                                catalogue,
                                now(),
                                "Latchround " LATCHROUND_VERSION,
                                [&](std::string_view sha256) {
                                    auto bytes = opened->file->photograph(sha256);
                                    return bytes ? std::move(*bytes) : std::vector<std::byte>{};
                                },
                                print.practice};
    const Result<QByteArray> pdf = pdfOf(report);
    if (!pdf)
        return refused(pdf.error());
    const std::span bytes(pdf->constData(), static_cast<std::size_t>(pdf->size()));
    if (const Done done = writeDurably(print.to, std::as_bytes(bytes)); !done)
        return refused(done.error());
    OrderedJson answer;
    answer["pdf"] = print.to;
    answer["walkdown"] = walkdown->id;
    answer["doors"] = walkdown->plan.doors.size();
    answer["bytes"] = bytes.size();
    return textOf(answer);
}

} // namespace latchround::headless
