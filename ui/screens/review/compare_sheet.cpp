#include <QPushButton>
#include <QVBoxLayout>

#include "core/deficiency/compare.h"
#include "ui/frames/reading_pane.h"
#include "ui/frames/sheet.h"
#include "ui/keys/choice_keys.h"
#include "ui/look/label.h"
#include "ui/screens/review/review_sheets.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"
#include "ui/words/walkdown_words.h"

// The part of ReviewSheets that lays two walkdowns side by side.
namespace latchround::ui {

namespace {

QString changeWords(Change change) {
    switch (change) {
    case Change::New:
        return ReviewSheets::tr("New: not in order now");
    case Change::Worse:
        return ReviewSheets::tr("Worse than before");
    case Change::Gone:
        return ReviewSheets::tr("Cleared: in order again");
    case Change::Better:
        break;
    }
    return ReviewSheets::tr("Better than before");
}

QString figureOrVerdict(const RowGrade* row) {
    if (!row)
        return ReviewSheets::tr("not tested");
    const QString figure = measuredWords(*row);
    return figure.isEmpty() ? verdictWords(row->verdict) : figure;
}

} // namespace

void ReviewSheets::compareWalkdowns() {
    const std::vector<Walkdown> all = m_session.ledger().walkdowns();
    auto* sheet = new Sheet(m_over, tr("Two walkdowns side by side"));
    auto* content = new QWidget;
    auto* lines = new QVBoxLayout(content);
    lines->setContentsMargins(0, 0, 0, 0);
    if (all.size() < 2) {
        lines->addWidget(
            new Label(tr("There are not two walkdowns to compare yet."), TextSize::Body));
        sheet->setContent(content);
        sheet->open();
        return;
    }
    constexpr int at_once = 3;
    QStringList names;
    std::vector<FactId> ids;
    for (auto each = all.rbegin(); each != all.rend(); ++each) {
        names << tr("%1\n%2").arg(dayWords(each->begun_by.when), purposeWords(each->plan.purpose));
        ids.push_back(each->id);
    }
    auto* pane = new ReadingPane(tr("What has changed"));
    pane->setObjectName(QStringLiteral("compare-rows"));
    auto chosen = std::make_shared<std::pair<int, int>>(1, 0); // earlier, later
    const auto fill = [this, pane, chosen, ids] {
        showChanges(*pane, ids[std::size_t(chosen->first)], ids[std::size_t(chosen->second)]);
    };
    for (const bool earlier : {true, false}) {
        lines->addWidget(
            new Label(earlier ? tr("Earlier") : tr("Later"), TextSize::Small, Ink::Muted));
        auto* keys = new ChoiceKeys(earlier ? "compare-earlier" : "compare-later",
                                    ChoiceKeys::Many::One, at_once);
        keys->setChoices(names);
        keys->setChosen({earlier ? chosen->first : chosen->second});
        for (int i = 0; i < keys->count(); ++i) {
            const QString walk = keys->key(i)->accessibleName();
            keys->key(i)->setAccessibleName(earlier ? tr("Earlier: %1").arg(walk)
                                                    : tr("Later: %1").arg(walk));
        }
        for (QPushButton* more : keys->findChildren<QPushButton*>(earlier ? "compare-earlier-more"
                                                                          : "compare-later-more"))
            more->setAccessibleName(earlier ? tr("More walkdowns, earlier")
                                            : tr("More walkdowns, later"));
        lines->addWidget(keys);
        connect(keys, &ChoiceKeys::touched, sheet, [earlier, chosen, fill](int index, bool) {
            (earlier ? chosen->first : chosen->second) = index;
            fill();
        });
    }
    lines->addWidget(pane, 1);
    fill();
    sheet->setContent(content);
    sheet->setTall();
    sheet->setWidthMm(200);
    sheet->open();
}

void ReviewSheets::showChanges(ReadingPane& pane, const FactId& earlier, const FactId& later) {
    const auto graded = [this](const FactId& id) {
        return gradeWalkdown(m_session.arrangement(), m_session.ledger(),
                             *m_session.ledger().walkdown(id), m_session.catalogue());
    };
    const auto before = graded(earlier);
    const auto after = graded(later);
    const std::vector<RowChange> changes = compare(before, after);
    pane.clear();
    std::optional<Change> last;
    for (const RowChange& change : changes) {
        if (last != change.change)
            pane.add(changeWords(change.change), TextSize::Lead,
                     change.change <= Change::Worse ? Ink::Bad : Ink::Good, true);
        last = change.change;
        pane.add(tr("%1 · %2: %3, was %4")
                     .arg(QString::fromStdString(change.door->door->number),
                          rowWords(*change.after->requirement), figureOrVerdict(change.after),
                          figureOrVerdict(change.before)));
    }
    if (changes.empty())
        pane.add(tr("Nothing tested in both walkdowns has changed by more than the uncertainty."));
}

} // namespace latchround::ui
