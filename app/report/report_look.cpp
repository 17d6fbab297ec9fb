#include "app/report/report_look.h"

#include <QFontDatabase>

namespace latchround::report {

QFont reportFont(double size_pt) {
    const QString wanted = QStringLiteral("B612");
    QFont font = QFontDatabase::families().contains(wanted)
                     ? QFont(wanted)
                     : QFontDatabase::systemFont(QFontDatabase::GeneralFont);
    font.setStyleHint(QFont::SansSerif);
    font.setPointSizeF(size_pt);
    return font;
}

QString styleSheet() {
    return QStringLiteral(R"(
        body, p, td, th, li { color: #1a1a1a; }
        p { margin-top: 2px; margin-bottom: 4px; }
        h1 { font-size: 18pt; font-weight: bold; margin-top: 0px; margin-bottom: 2px; }
        h2 { font-size: 12pt; font-weight: bold; margin-top: 16px; margin-bottom: 5px; }
        h3 { font-size: 10.5pt; font-weight: bold; margin-top: 16px; margin-bottom: 3px; }
        h4 { font-size: 9pt; font-weight: bold; margin-top: 8px; margin-bottom: 2px; }
        ul, ol { margin-top: 0px; margin-bottom: 8px; }
        li { margin-bottom: 2px; }
        .under-title { font-size: 11pt; color: #555555; margin-bottom: 6px; }
        .practice { font-size: 11pt; font-weight: bold; color: #a31f1a; }
        .bad { color: #a31f1a; font-weight: bold; }
        .muted { color: #555555; }
        .name { color: #555555; }
        .count { font-size: 14pt; font-weight: bold; }
        .caption { font-size: 7.5pt; margin-top: 2px; margin-bottom: 6px; }
        table.small td, table.small th { font-size: 7.5pt; }
        p.small { font-size: 7.5pt; }
        .english { font-size: 7pt; font-weight: normal; color: #555555; }
        .notice { font-size: 8pt; margin-bottom: 6px; }
        table.paper td, table.paper th { font-size: 7pt; }
        h3.paper { margin-top: 10px; margin-bottom: 0px; }
        p.paper { font-size: 7.5pt; margin-top: 3px; margin-bottom: 3px; }
        .in-cell { margin-top: 0px; margin-bottom: 2px; }
        .unbroken { white-space: nowrap; }
        table.lines { border-collapse: collapse; }
        table.lines th { border-bottom: 1.2px solid #1a1a1a; vertical-align: bottom; }
        table.lines td { border-bottom: 0.5px solid #aaaaaa; vertical-align: top; }
        td { vertical-align: top; }
        .room-to-sign { font-size: 26pt; }
        td.sign { border-top: 1px solid #1a1a1a; font-size: 8pt; padding-top: 3px; }
    )");
}

} // namespace latchround::report
