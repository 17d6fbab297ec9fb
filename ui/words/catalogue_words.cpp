#include "ui/words/catalogue_words.h"

#include <string>

#include <QCoreApplication>

namespace latchround::ui {

QString rowWords(const Requirement& row) {
    return catalogueWords(row.words);
}

QString askedWords(const Requirement& row) {
    return catalogueWords(row.question.empty() ? row.words : row.question);
}

QString lookForWords(const Requirement& row) {
    return catalogueWords(row.look_for);
}

QString upkeepWords(const Upkeep& task) {
    return catalogueWords(task.words);
}

QString catalogueWords(std::string_view english) {
    if (english.empty())
        return {};
    return QCoreApplication::translate("Catalogue", std::string(english).c_str());
}

} // namespace latchround::ui
