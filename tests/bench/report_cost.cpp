// How long the survey report of 400 doors with 100 photographs of 12 megapixels takes, and how many
// bytes it has. Aim: under 5 s and 25 MB. The baseline of the same run prints the same document
// without its photographs; the lists and forms of the same vessel follow.
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <random>
#include <string>
#include <vector>

#include <QBuffer>
#include <QGuiApplication>
#include <QImage>
#include <QLocale>

#include "app/catalogue/catalogue_place.h"
#include "app/exchange/fact_json.h"
#include "app/exchange/facts_hash.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "app/report/made_report.h"
#include "app/report/paper_form.h"
#include "core/evidence/fact_id.h"
#include "tests/bench/best_ms.h"
#include "ui/ink/typeface.h"

using namespace latchround;

namespace {

constexpr int photographs = 100;

/// A picture as a camera makes it, 4000 x 3000: surfaces with their own grain, which JPEG cannot
/// throw away.
std::vector<std::byte> photographOf(unsigned seed) {
    std::mt19937 random(seed);
    QImage image(4000, 3000, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < image.width(); ++x) {
            const int shade = 90 + (x / 37 + y / 53 + int(seed)) % 120 + int(random() % 24);
            line[x] = qRgb(shade, shade - 12, 200 - shade / 2);
        }
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "JPEG", 88);
    const auto* first = reinterpret_cast<const std::byte*>(bytes.constData());
    return {first, first + bytes.size()};
}

struct Ship {
    Arrangement arrangement;
    Ledger ledger;
    FactId walkdown;
    std::vector<std::vector<std::byte>> pictures;
    std::map<std::string, std::size_t, std::less<>> by_hash;
};

Ship largeShip() {
    Ship ship;
    const std::filesystem::path folder =
        std::filesystem::path(LATCHROUND_SOURCE) / "sample_vessels" / "oriveth-meridian";
    const std::string csv = bytesOf(folder / "register.csv", 64u << 20).value();
    ship.arrangement =
        arrangementFromCsv(std::span<const char>(csv.data(), csv.size()), "register.csv").value();
    std::vector<Fact> facts =
        factsFromJsonLines(bytesOf(folder / "history.jsonl", 64u << 20).value(), "history").value();
    for (Fact& fact : facts)
        ship.ledger.add(std::move(fact));
    // Five shots, as a hundred files that differ: each is fetched, hashed and decoded by itself.
    std::vector<std::vector<std::byte>> shots;
    for (unsigned seed = 0; seed < 5; ++seed)
        shots.push_back(photographOf(seed));
    for (int at = 0; at < photographs; ++at) {
        ship.pictures.push_back(shots[std::size_t(at) % shots.size()]);
        ship.pictures.back().push_back(std::byte(at)); // after the end of the image
        ship.by_hash[sha256Hex(ship.pictures.back())] = std::size_t(at);
    }
    return ship;
}

/// One walk of every door: a finding and a note at each, at every fourth a photograph.
void walk(Ship& ship) {
    std::int64_t at = 1795599720000;
    const std::string person = ship.ledger.people().front().id;
    const auto add = [&](FactBody body) {
        const FactId id = factIdOf(at, {});
        ship.ledger.add({{id, {at++, 60}, person, "tablet-1", {}}, std::move(body)});
        return id;
    };
    WalkdownBegun begun;
    begun.scope = "all doors";
    for (const Door& door : ship.arrangement.doors)
        begun.doors.push_back(door.number);
    ship.walkdown = add(begun);
    auto picture = ship.by_hash.begin();
    for (std::size_t number = 0; number < begun.doors.size(); ++number) {
        const std::string& door = begun.doors[number];
        add(Observation{ship.walkdown, door, "not-held", Side::None, Answer::No});
        add(Note{ship.walkdown, door, "Closer arm loose, to be seen to before the next drill."});
        if (number % 4 == 0 && picture != ship.by_hash.end())
            add(Photograph{ship.walkdown, door, (picture++)->first, "image/jpeg", "Leaf and frame",
                           ""});
    }
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    ui::readyTypeface();
    const QGuiApplication application(argc, argv);
    QLocale::setDefault(QLocale::c());
    Ship ship = largeShip();
    walk(ship);
    const Catalogue catalogue = builtInCatalogue().value();
    const WalkdownReport with{
        ship.arrangement,
        ship.ledger,
        ship.walkdown,
        catalogue,
        {1795701520000, 60},
        "bench",
        [&](std::string_view sha256) { return ship.pictures[ship.by_hash.find(sha256)->second]; }};
    WalkdownReport without = with;
    without.photograph = {};
    qsizetype bytes = 0;
    double processor_s = 0; ///< of all threads: what it took although others were at work
    const auto print = [&](const WalkdownReport& report, ReportKind kind) {
        const std::clock_t begun = std::clock();
        const double took =
            bestMs(1, [&] { bytes = madeReport(report, kind).value().document.size(); }) / 1000;
        processor_s = double(std::clock() - begun) / CLOCKS_PER_SEC;
        return took;
    };
    const double bare = print(without, ReportKind::Survey);
    std::printf("survey of %zu doors without photographs: %.2f s (%.2f s of processor), %.1f MB\n",
                ship.arrangement.doors.size(), bare, processor_s, double(bytes) / 1e6);
    const double full = print(with, ReportKind::Survey);
    std::printf(
        "the same with %d photographs of 12 megapixels: %.2f s (aim 5; %.2f s of processor), "
        "%.1f MB (aim 25), %.2f times the bare one\n",
        photographs, full, processor_s, double(bytes) / 1e6, full / bare);
    const double form = bestMs(1,
                               [&] {
                                   bytes = paperFormPdf({ship.arrangement,
                                                         catalogue,
                                                         {},
                                                         Purpose::Annual,
                                                         {1795701520000, 60},
                                                         "bench"})
                                               .value()
                                               .size();
                               }) /
                        1000;
    std::printf("paper form of the same doors: %.2f s, %.1f MB\n", form, double(bytes) / 1e6);
    return 0;
}
