#include "app/vessels/sample_vessel.h"

#include <filesystem>

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include "app/exchange/fact_json.h"
#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "app/register/create_file.h"
#include "app/register/sqlite_register.h"
#include "app/vessels/vessel_folder.h"
#include "core/error/exchange_errors.h"

namespace latchround {

namespace {

constexpr std::uintmax_t most_bytes = 64u << 20;

QString samplesFolder() {
    const QString installed = QCoreApplication::applicationDirPath() +
                              QStringLiteral("/../share/latchround/sample_vessels");
    return QFileInfo::exists(installed) ? installed : QStringLiteral(LATCHROUND_SAMPLES_DIR);
}

Checked<std::string> textOf(const QString& path) {
    auto bytes = bytesOf(std::filesystem::path(path.toStdString()), most_bytes);
    if (!bytes)
        return tl::unexpected(Errors{bytes.error()});
    return std::move(*bytes);
}

Checked<Arrangement> arrangementAt(const QString& csv_path) {
    const auto text = textOf(csv_path);
    if (!text)
        return tl::unexpected(text.error());
    return arrangementFromCsv(std::span<const char>(text->data(), text->size()),
                              QFileInfo(csv_path).fileName().toStdString());
}

tl::unexpected<Errors> stopped(const QString& where) {
    return tl::unexpected(Errors{stoppedAsAsked(where.toStdString())});
}

/// A new register at `path`. Made beside its place first, so that what is cut short leaves no half
/// vessel behind.
Checked<QString> madeAt(const QString& path, const Arrangement& arrangement,
                        std::span<const Fact> history, Moment now, const ProgressRange& pace) {
    if (const Result<> alone = refuseStrayLogs(path); !alone)
        return tl::unexpected(Errors{alone.error()});
    const QString beside = path + QStringLiteral(".making");
    const auto clear = [&beside] {
        for (const char* ending : {"", "-wal", "-shm"})
            QFile::remove(beside + QLatin1String(ending));
    };
    clear();
    const auto made = [&]() -> Result<> {
        auto opened = SqliteRegister::open(beside);
        if (!opened)
            return tl::unexpected(opened.error());
        if (!pace.at(1, 3))
            return tl::unexpected(stoppedAsAsked(path.toStdString()));
        return (*opened)->takeIn(arrangement, history, now);
    }();
    if (!made) {
        clear();
        return tl::unexpected(Errors{made.error()});
    }
    if (!pace.at(1, 1)) {
        clear();
        return stopped(path);
    }
    if (QFile::rename(beside, path))
        return path;
    clear();
    return tl::unexpected(Errors{{path.toStdString(), errors::vessel_not_placed()}});
}

} // namespace

std::vector<QString> sampleVessels() {
    return {QStringLiteral("vellis-lantern"), QStringLiteral("ternwick-lass"),
            QStringLiteral("oriveth-meridian")};
}

Checked<QString> placeSampleVessel(const QString& sample, Moment now) {
    const QDir folder(samplesFolder() + QLatin1Char('/') + sample);
    const auto arrangement = arrangementAt(folder.filePath(QStringLiteral("register.csv")));
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    const QString path = registerPathFor(QString::fromStdString(arrangement->particulars.name));
    if (QFileInfo::exists(path))
        return path;
    const auto history = textOf(folder.filePath(QStringLiteral("history.jsonl")));
    if (!history)
        return tl::unexpected(history.error());
    const auto facts = factsFromJsonLines(*history, (sample + "/history.jsonl").toStdString());
    if (!facts)
        return tl::unexpected(facts.error());
    return madeAt(path, *arrangement, *facts, now, ProgressRange());
}

Checked<QString> takeInVessel(const QString& csv_path, Moment now, const ProgressRange& pace) {
    constexpr double read = 40; // of the time that all of it takes, in hundredths
    if (!pace.at(0, 1))
        return stopped(csv_path);
    const auto arrangement = arrangementAt(csv_path);
    if (!arrangement)
        return tl::unexpected(arrangement.error());
    const QString path = registerPathFor(QString::fromStdString(arrangement->particulars.name));
    const ProgressRange rest = pace.part(read, 100);
    if (!rest.at(0, 1))
        return stopped(csv_path);
    if (!QFileInfo::exists(path))
        return madeAt(path, *arrangement, {}, now, rest);
    auto opened = SqliteRegister::open(path);
    if (!opened)
        return tl::unexpected(Errors{opened.error()});
    if (!rest.at(1, 1))
        return stopped(csv_path);
    if (const Result<> adopted = (*opened)->adopt(*arrangement, now); !adopted)
        return tl::unexpected(Errors{adopted.error()});
    return path;
}

} // namespace latchround
