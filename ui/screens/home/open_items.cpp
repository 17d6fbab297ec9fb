#include "ui/screens/home/open_items.h"

#include <algorithm>
#include <set>

#include <QCoreApplication>

#include "core/deficiency/grouping.h"
#include "core/evidence/moment_text.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"
#include "ui/words/offered.h"

namespace latchround::ui {

namespace {

bool isOpenItem(Verdict verdict) {
    return verdict == Verdict::Unsatisfactory || verdict == Verdict::Judge ||
           verdict == Verdict::TimeAgain;
}

OpenItem itemOf(const GradedDoor& graded) {
    OpenItem item;
    item.door = QString::fromStdString(graded.door->number);
    item.glyph = graded.grade.verdict;
    int more = 0;
    for (const RowGrade* row : askedWorstFirst(graded.grade)) {
        if (!isOpenItem(row->verdict))
            continue;
        if (!item.what.isEmpty()) {
            ++more;
            continue;
        }
        item.what = rowWords(*row->requirement);
        const QString measured = measuredWords(*row);
        item.why = measured.isEmpty() ? reasonWords(row->reason)
                                      : measured + QStringLiteral(", ") + reasonWords(row->reason);
    }
    if (more > 0)
        item.why +=
            QStringLiteral(" · ") +
            QCoreApplication::translate("OpenItems", "and %1 more", "rows of a door").arg(more);
    return item;
}

OpenItem itemOf(const Item& written, CalendarDate today) {
    OpenItem item;
    item.item = written.id;
    item.door = QString::fromStdString(written.door);
    item.glyph = glyphOf(written.state);
    item.what = wordingWords(written.text());
    item.why = stateWords(written.state) + QStringLiteral(" · ") + dueWords(written, today);
    return item;
}

} // namespace

std::vector<OpenItem> openItems(const VesselSession& session) {
    const CalendarDate today = shipsDay(session.clock().now());
    std::vector<Item> open;
    for (const Item& item : session.items())
        if (item.isOpen())
            open.push_back(item);
    std::vector<OpenItem> items;
    std::set<std::string> written;
    for (const ItemGroup& group : grouped(open, GroupBy::Severity, session.arrangement(), today))
        for (const Item* item : group.items) {
            items.push_back(itemOf(*item, today));
            written.insert(item->door);
        }
    const auto doors = std::ptrdiff_t(items.size());
    for (const GradedDoor& graded : session.doors())
        if (isOpenItem(graded.grade.verdict) && !written.contains(graded.door->number))
            items.push_back(itemOf(graded));
    std::ranges::stable_sort(items.begin() + doors, items.end(), {}, &OpenItem::glyph);
    return items;
}

} // namespace latchround::ui
