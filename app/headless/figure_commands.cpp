#include "app/headless/figure_commands.h"

#include <cmath>

#include "app/exchange/csv_text.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/points_csv.h"
#include "app/headless/json_answer.h"
#include "core/error/catalogue_errors.h"
#include "core/error/command_errors.h"
#include "core/grading/verdict.h"
#include "core/measure/conformity.h"
#include "core/trend/line.h"

namespace latchround::headless {

namespace {

OrderedJson predictionJson(const Line& line, double x, double confidence) {
    const Band mean = meanBand(line, x, confidence);
    const Band point = Prediction(line, confidence).at(x);
    return {{"x", x},
            {"y", line.at(x)},
            {"sd_of_line", uncertaintyAt(line, x)},
            {"confidence", confidence},
            {"line_low", mean.low},
            {"line_high", mean.high},
            {"low", point.low},
            {"high", point.high}};
}

Verdict verdictFor(double probability) {
    switch (conformityOf(probability)) {
    case Conformity::Inside:
        return Verdict::Satisfactory;
    case Conformity::Outside:
        return Verdict::Unsatisfactory;
    case Conformity::TooClose:
        break;
    }
    return Verdict::TimeAgain;
}

} // namespace

Answer trendOf(const TrendAsked& asked) {
    if (!(asked.confidence > 0 && asked.confidence < 1))
        return refused({"--confidence", errors::confidence_not_a_share()});
    if (asked.at && !std::isfinite(*asked.at))
        return refused({"--at", errors::nothing_to_look_up()});
    const Result<std::string> bytes = bytesOf(asked.csv, largest_csv_bytes);
    if (!bytes)
        return refused(bytes.error());
    const auto points = pointsFromCsv(*bytes, asked.csv);
    if (!points)
        return tl::unexpected(points.error());
    const auto line = lineThrough(*points);
    if (!line)
        return refused({asked.csv, errors::no_line_through_points(points->size())});
    OrderedJson json;
    json["points"] = line->count;
    json["slope"] = line->slope;
    json["intercept"] = line->intercept;
    json["sd_slope"] = line->sd_slope;
    json["sd_intercept"] = line->sd_intercept;
    json["residual_sd"] = line->residual_sd;
    json["r_squared"] = line->r_squared;
    json["degrees_of_freedom"] = line->degreesOfFreedom();
    if (asked.at)
        json["prediction"] = predictionJson(*line, *asked.at, asked.confidence);
    return inLines(json);
}

Answer conformityOfFigure(const ConformityAsked& asked) {
    Errors faults;
    const auto check = [&](bool good, const char* option, const PhraseCode<0>& wrong) {
        if (!good)
            faults.push_back({option, wrong()});
    };
    const auto finite = [](const std::optional<double>& value) {
        return !value || std::isfinite(*value);
    };
    check(std::isfinite(asked.value), "--value", errors::nothing_to_judge);
    check(std::isfinite(asked.u) && asked.u >= 0, "--u", errors::negative_uncertainty);
    check(finite(asked.low), "--low", errors::limit_not_a_number);
    check(finite(asked.high), "--high", errors::limit_not_a_number);
    check(asked.low || asked.high, "--low", errors::no_limit_given);
    check(!asked.low || !asked.high || *asked.low < *asked.high, "--low", errors::limits_reversed);
    check(!asked.degrees_of_freedom || *asked.degrees_of_freedom >= 1, "--dof",
          errors::too_few_degrees_of_freedom);
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    const double probability =
        conformanceProbability(asked.value, asked.u, asked.low, asked.high,
                               asked.degrees_of_freedom.value_or(known_exactly));
    OrderedJson json;
    json["probability"] = probability;
    json["verdict"] = word(verdictFor(probability));
    json["rule"] = "satisfactory at 0.95 or more, unsatisfactory at 0.05 or less, otherwise "
                   "time again (JCGM 106:2012)";
    return inLines(json);
}

} // namespace latchround::headless
