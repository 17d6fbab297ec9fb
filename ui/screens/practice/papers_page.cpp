#include "ui/screens/practice/papers_page.h"

#include <QVBoxLayout>

#include "ui/keys/row_pager.h"
#include "ui/look/label.h"
#include "ui/screens/practice/sight_words.h"

namespace latchround::ui {

PapersPage::PapersPage(QWidget* parent)
    : Part(parent)
    , m_rows(new RowPager) {
    setObjectName(QStringLiteral("papers"));
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_rows, 1);
}

void PapersPage::setDoor(const GradedDoor& door) {
    std::vector<QWidget*> rows;
    for (const RowGrade& row : door.grade.rows) {
        const auto sight = sightOf(row.requirement->id);
        if (!sight || sight->by != SeenBy::Words || !isAsked(row))
            continue;
        auto* line = new QWidget;
        line->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
        auto* words = new QVBoxLayout(line);
        words->setContentsMargins(sizes().pad, sizes().gap / 2, sizes().pad, sizes().gap / 2);
        words->setSpacing(0);
        words->addWidget(new Label(sight->title, TextSize::Body, Ink::Plain, true));
        words->addWidget(new Label(sight->words, TextSize::Body));
        words->addStretch(1);
        rows.push_back(line);
    }
    m_rows->setRows(std::move(rows));
}

} // namespace latchround::ui

#include "moc_papers_page.cpp"
