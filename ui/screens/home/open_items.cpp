#include "ui/screens/home/open_items.h"

#include <algorithm>

#include <QCoreApplication>

#include "ui/parts/grade_words.h"
#include "ui/parts/verdict_look.h"

namespace latchround::ui {

namespace {

bool isOpenItem(Verdict verdict) {
    return verdict == Verdict::Unsatisfactory || verdict == Verdict::Judge ||
           verdict == Verdict::TimeAgain;
}

OpenItem itemOf(const GradedDoor& graded) {
    OpenItem item;
    item.door = QString::fromStdString(graded.door->number);
    item.verdict = graded.grade.verdict;
    int more = 0;
    for (const RowGrade* row : askedWorstFirst(graded.grade)) {
        if (!isOpenItem(row->verdict))
            continue;
        if (!item.what.isEmpty()) {
            ++more;
            continue;
        }
        item.what = QString::fromStdString(row->requirement->words);
        const QString measured = measuredWords(*row);
        item.why = measured.isEmpty() ? reasonWords(row->reason)
                                      : measured + QStringLiteral(", ") + reasonWords(row->reason);
    }
    if (more > 0)
        item.why += QStringLiteral(" · ") +
                    QCoreApplication::translate("OpenItems", "and %n more", "rows of a door", more);
    return item;
}

} // namespace

std::vector<OpenItem> openItems(const std::vector<GradedDoor>& doors) {
    std::vector<OpenItem> items;
    for (const GradedDoor& graded : doors)
        if (isOpenItem(graded.grade.verdict))
            items.push_back(itemOf(graded));
    std::ranges::stable_sort(items, {}, &OpenItem::verdict);
    return items;
}

} // namespace latchround::ui
