// latchround: the desktop program. With a register file as argument it opens that; without, the
// vessel opened last, and at the very first start the demo vessel.
#include <cstdio>

#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QScreen>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/desktop/first_size.h"
#include "app/vessels/sample_vessel.h"
#include "core/error/desktop_errors.h"
#include "ui/ink/typeface.h"
#include "ui/words/in_english.h"
#include "ui/words/phrase_words.h"

namespace {

using namespace latchround;

/// In English, as everything that is said in a terminal.
int complain(const Errors& errors) {
    const ui::InEnglish english;
    for (const Error& error : errors)
        std::fprintf(stderr, "%s\n", ui::inOneLine(error).c_str());
    return 2;
}

QStringList wordsOf(int argc, char** argv) {
    QStringList words;
    for (int i = 0; i < argc; ++i)
        words << QString::fromLocal8Bit(argv[i]);
    return words;
}

/// Qt ends the program without a plain word where there is none.
bool isWithoutDisplay(int argc, char** argv) {
#ifdef Q_OS_LINUX
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (!qEnvironmentVariableIsEmpty(name))
            return false;
    return !wordsOf(argc, argv).contains(QStringLiteral("-platform"));
#else
    return argc < 0 || argv == nullptr;
#endif
}

QSize sizeFrom(const QString& text) {
    const QStringList parts = text.split(QLatin1Char('x'));
    return parts.size() == 2 ? QSize(parts[0].toInt(), parts[1].toInt()) : QSize();
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication::setApplicationName(QStringLiteral("Latchround"));
    QCoreApplication::setApplicationVersion(QStringLiteral(LATCHROUND_VERSION));
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Fire door walkdowns aboard passenger vessels."));
    const QCommandLineOption help = parser.addHelpOption();
    const QCommandLineOption version = parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("register"),
                                 QStringLiteral("A vessel's register file."));
    const QCommandLineOption demo(QStringLiteral("demo"),
                                  QStringLiteral("Open the demo vessel, whatever was open last."));
    const QCommandLineOption size(QStringLiteral("size"),
                                  QStringLiteral("Window size, e.g. 1280x800."),
                                  QStringLiteral("size"));
    parser.addOption(demo);
    parser.addOption(size);
    (void)parser.parse(wordsOf(argc, argv));
    if (parser.isSet(help) || parser.isSet(version) || isWithoutDisplay(argc, argv)) {
        const QCoreApplication application(argc, argv);
        parser.process(application); // says what was asked, and ends there
        return complain({{"latchround", errors::no_display()}});
    }
    ui::readyTypeface();
    QApplication application(argc, argv);
    parser.process(application);

    const auto shipped = shippedCatalogue(QCoreApplication::applicationDirPath().toStdString());
    if (!shipped)
        return complain(shipped.error());

    ui::Look look(ui::pxPerMmOf(application.primaryScreen()));
    DesktopApp app(shipped->catalogue, shipped->notice, look);
    const auto setting = [&](const char* name) {
        return app.ports().settings->setting(QLatin1String(name));
    };
    look.setLight(ui::Light(setting("light").toInt()));
    look.setGloves(!setting("gloves").isEmpty());
    look.setScale(setting("scale").toDouble());
    look.setCalmMotion(!setting("calm").isEmpty());
    look.applyTo(application);

    QString path = parser.positionalArguments().value(0);
    if (path.isEmpty() && !parser.isSet(demo))
        path = setting("vessel");
    bool first_start = false;
    if (path.isEmpty() || !QFileInfo::exists(path)) {
        if (!parser.positionalArguments().isEmpty())
            return complain({{path.toStdString(), errors::no_such_register()}});
        for (const QString& sample : sampleVessels()) {
            const auto placed = placeSampleVessel(sample, momentNow());
            if (!placed)
                return complain(placed.error());
            if (sample == sampleVessels().front())
                path = *placed;
        }
        first_start = setting("first-run").isEmpty();
    }
    app.openOrChoose(path);
    QWidget* shown = app.window() ? static_cast<QWidget*>(app.window()) : app.vesselChoice();
    const QSize wanted = sizeFrom(parser.value(size));
    const QSize room = shown->screen()->availableSize();
    shown->resize(wanted.isValid() ? wanted : firstSize(room));
    if (shown->size() == room)
        shown->setWindowState(Qt::WindowMaximized);
    if (first_start && app.window())
        app.window()->showFirst();
    return QApplication::exec();
}
