#include "app/headless/grade_command.h"

#include "app/exchange/file_bytes.h"
#include "app/exchange/grade_json.h"

namespace latchround::headless {

namespace {

constexpr std::uintmax_t largest_grade_file_bytes = 256u * 1024 * 1024;

} // namespace

Answer gradeFile(const std::string& json, const Catalogue& catalogue) {
    const Result<std::string> bytes = bytesOf(json, largest_grade_file_bytes);
    if (!bytes)
        return refused(bytes.error());
    const Checked<GradeInput> input = gradeInputFrom(*bytes, json, catalogue);
    if (!input)
        return tl::unexpected(input.error());
    return gradeOutputJson(catalogue, input->vessel, gradedDoors(*input, catalogue), {});
}

} // namespace latchround::headless
