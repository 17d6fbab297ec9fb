#include "printed_page.h"

#include <algorithm>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <QFile>

namespace latchround {

namespace {

QString outputOf(const QString& program, const QStringList& before, const QByteArray& pdf,
                 const QStringList& after) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("report.pdf"));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        return {};
    file.close();
    QProcess process;
    process.start(program, before + QStringList{path} + after);
    if (!process.waitForFinished(60000) || process.exitCode() != 0)
        return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

} // namespace

QStringList pageTexts(const QByteArray& pdf) {
    const QString text = outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout")}, pdf,
                                  {QStringLiteral("-")});
    return text.split(QChar('\f'), Qt::SkipEmptyParts);
}

QString flowingText(const QByteArray& pdf) {
    return outputOf(QStringLiteral("pdftotext"), {}, pdf, {QStringLiteral("-")}).simplified();
}

QStringList pictureSizes(const QByteArray& pdf) {
    QStringList sizes;
    const QString list = outputOf(QStringLiteral("pdfimages"), {QStringLiteral("-list")}, pdf, {});
    const QStringList lines = list.split(QChar('\n'), Qt::SkipEmptyParts);
    for (const QString& line : lines.mid(2)) {
        const QStringList cells = line.simplified().split(QChar(' '));
        if (cells.size() > 4)
            sizes << cells[3] + QChar('x') + cells[4];
    }
    return sizes;
}

QString fontList(const QByteArray& pdf) {
    return outputOf(QStringLiteral("pdffonts"), {}, pdf, {});
}

QString documentInformation(const QByteArray& pdf) {
    return outputOf(QStringLiteral("pdfinfo"), {QStringLiteral("-enc"), QStringLiteral("UTF-8")},
                    pdf, {});
}

std::vector<ReadBookmark> bookmarksOf(const QByteArray& pdf) {
    const QString xml = outputOf(
        QStringLiteral("pdftohtml"),
        {QStringLiteral("-xml"), QStringLiteral("-i"), QStringLiteral("-stdout")}, pdf, {});
    std::vector<ReadBookmark> all;
    const QRegularExpression item(QStringLiteral("<item page=\"(\\d+)\">([^<]*)</item>"));
    for (auto found = item.globalMatch(xml); found.hasNext();) {
        const auto match = found.next();
        all.push_back({match.captured(2), match.captured(1).toInt()});
    }
    return all;
}

double pageWidth_pt(const QByteArray& pdf) {
    const QRegularExpression size(QStringLiteral("Page size: +([0-9.]+) x"));
    return size.match(documentInformation(pdf)).captured(1).toDouble();
}

double rightmostInk_pt(const QByteArray& pdf) {
    const QString words = outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-bbox")}, pdf,
                                   {QStringLiteral("-")});
    double rightmost = 0;
    const QRegularExpression edge(QStringLiteral("xMax=\"([0-9.]+)\""));
    for (auto found = edge.globalMatch(words); found.hasNext();)
        rightmost = std::max(rightmost, found.next().captured(1).toDouble());
    return rightmost;
}

} // namespace latchround
