// A PDF as a reader sees it: its text page by page and its pictures, by poppler's programs.
#pragma once

#include <vector>

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace latchround {

/// Text of each page as it is laid out; an empty list where the PDF cannot be read.
QStringList pageTexts(const QByteArray& pdf);

/// All pages as one line, runs of blanks made one: for words that may be broken over lines.
QString flowingText(const QByteArray& pdf);

/// Width and height of every picture in the file.
QStringList pictureSizes(const QByteArray& pdf);

/// "B612-Regular" and so on, with "yes" where it is embedded.
QString fontList(const QByteArray& pdf);

/// pdfinfo's lines: "Author: Maren Holt".
QString documentInformation(const QByteArray& pdf);

struct ReadBookmark {
    QString title;
    int page = 0; ///< from 1
};
/// All bookmarks, in their order.
std::vector<ReadBookmark> bookmarksOf(const QByteArray& pdf);

/// Of the first page, and the furthest right that a word of any page reaches, points.
double pageWidth_pt(const QByteArray& pdf);
double rightmostInk_pt(const QByteArray& pdf);

} // namespace latchround
