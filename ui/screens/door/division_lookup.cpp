#include "ui/screens/door/division_lookup.h"

#include <QBoxLayout>
#include <QListWidget>
#include <QPushButton>

#include "ui/frames/list_touch.h"
#include "ui/frames/reading_pane.h"
#include "ui/keys/key_grid.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

namespace {

QString examplesOf(const SpaceCategory& category) {
    QStringList examples;
    for (const std::string& example : category.examples)
        examples << catalogueWords(example);
    return examples.join(QStringLiteral("; "));
}

/// A note of the table is a text of the data; those that the core adds have a code.
QString noteWords(const Phrase& note) {
    return note.code.empty() ? catalogueWords(note.text) : phraseWords(note);
}

/// Enough to choose by; the chosen category's examples stand whole below the list.
QString categoryLine(const SpaceCategory& category) {
    constexpr qsizetype most_letters = 44;
    QString examples = examplesOf(category);
    if (examples.size() > most_letters)
        examples = examples.left(examples.lastIndexOf(QLatin1Char(' '), most_letters)) +
                   QStringLiteral(" …");
    return QStringLiteral("%1 · %2\n%3")
        .arg(category.number)
        .arg(catalogueWords(category.name), examples);
}

} // namespace

DivisionLookup::DivisionLookup(const FireTables& tables, const DivisionQuestion& question,
                               QWidget* parent)
    : Part(parent)
    , m_tables(tables)
    , m_question(question) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(makeKinds());
    lines->addWidget(makeLists(), 3);
    lines->addWidget(makeAnswer(), 1);
    choose(m_question.division);
}

QWidget* DivisionLookup::makeKinds() {
    auto* keys = new KeyGrid;
    const std::pair<DivisionKind, QString> kinds[] = {
        {DivisionKind::Bulkhead, tr("Bulkhead")},
        {DivisionKind::Deck, tr("Deck")},
        {DivisionKind::ZoneBulkhead, tr("Zone bulkhead")},
        {DivisionKind::ZoneStep, tr("Zone step")}};
    for (const auto& [kind, words] : kinds) {
        auto* key = keyOf(words, "", "choice");
        key->setObjectName(QStringLiteral("division-") + plainText(word(kind)));
        key->setCheckable(true);
        connect(key, &QPushButton::clicked, this, [this, which = kind] { choose(which); });
        keys->add(key);
        m_kinds.emplace_back(kind, key);
    }
    return keys;
}

QWidget* DivisionLookup::makeLists() {
    auto* box = new QWidget;
    auto* columns = new QHBoxLayout(box);
    columns->setContentsMargins(0, 0, 0, 0);
    const FireTable* table = findTable(m_tables, m_question.ship, DivisionKind::Bulkhead);
    for (std::size_t side = 0; side < m_spaces.size(); ++side) {
        auto* column = new QVBoxLayout;
        columns->addLayout(column, 1);
        m_titles[side] = new Label({}, TextSize::Small, Ink::Muted);
        column->addWidget(m_titles[side]);
        auto* list = new QListWidget;
        list->setObjectName(QStringLiteral("spaces-%1").arg(side + 1));
        list->setWordWrap(true);
        list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        list->setResizeMode(QListView::Adjust);
        for (const SpaceCategory& category :
             table ? table->categories : std::vector<SpaceCategory>())
            list->addItem(categoryLine(category));
        scrollByTouch(*list);
        if (m_question.spaces)
            list->setCurrentRow((side == 0 ? m_question.spaces->first : m_question.spaces->second) -
                                1);
        connect(list, &QListWidget::currentRowChanged, this, &DivisionLookup::look);
        list->setSpacing(2);
        list->setMinimumHeight(int(mm(30)));
        column->addWidget(list, 1);
        m_examples[side] = new Label({}, TextSize::Small, Ink::Muted);
        column->addWidget(m_examples[side]);
        m_spaces[side] = list;
    }
    return box;
}

QWidget* DivisionLookup::makeAnswer() {
    auto* box = new QWidget;
    auto* lines = new QVBoxLayout(box);
    lines->setContentsMargins(0, 0, 0, 0);
    m_class = new Label({}, TextSize::Title, Ink::Plain, true);
    m_class->setObjectName(QStringLiteral("division-class"));
    m_source = new Label({}, TextSize::Body);
    m_notes = new Label({}, TextSize::Small, Ink::Muted);
    m_notes->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    lines->addWidget(m_class);
    lines->addWidget(m_source);
    auto* notes = new ReadingPane(tr("Notes"));
    notes->add(m_notes);
    lines->addWidget(notes, 1);
    return box;
}

void DivisionLookup::choose(DivisionKind kind) {
    m_question.division = kind;
    for (const auto& [which, key] : m_kinds)
        key->setChecked(which == kind);
    m_titles[0]->setText(hasDirection(kind) ? tr("Below the deck") : tr("One side"));
    m_titles[1]->setText(hasDirection(kind) ? tr("Above the deck") : tr("The other side"));
    for (std::size_t side = 0; side < m_spaces.size(); ++side)
        m_spaces[side]->setAccessibleName(m_titles[side]->text());
    look();
}

void DivisionLookup::look() {
    const int one = m_spaces[0]->currentRow();
    const int other = m_spaces[1]->currentRow();
    m_question.spaces.reset();
    if (one >= 0 && other >= 0)
        m_question.spaces = SpacePair{one + 1, other + 1};
    const FireTable* table = findTable(m_tables, m_question.ship, DivisionKind::Bulkhead);
    for (std::size_t side = 0; table && side < m_spaces.size(); ++side)
        if (const int row = m_spaces[side]->currentRow(); row >= 0)
            m_examples[side]->setText(examplesOf(table->categories[static_cast<std::size_t>(row)]));
    m_answer = requiredClass(m_tables, m_question);
    say();
}

void DivisionLookup::say() {
    QString title;
    switch (m_answer.kind) {
    case RequiredClass::Kind::Class: {
        const FireClass door = doorClassIn(m_question.ship, *m_answer.required);
        title =
            door == *m_answer.required
                ? plainText(word(door))
                : tr("%1, door %2").arg(plainText(word(*m_answer.required)), plainText(word(door)));
        break;
    }
    case RequiredClass::Kind::Steel:
        title = tr("No class: steel or equivalent");
        break;
    case RequiredClass::Kind::Nothing:
        title = tr("No requirement");
        break;
    case RequiredClass::Kind::NotPrinted:
        title = tr("No value printed: ask the Administration");
        break;
    case RequiredClass::Kind::NotKnown:
        title = m_question.spaces ? tr("No table for this division") : tr("Choose both spaces");
        break;
    }
    m_class->setText(title);
    QStringList source;
    if (m_answer.cell)
        source << tr("%1, cell %2-%3: %4")
                      .arg(plainText(m_answer.table->name))
                      .arg(m_answer.spaces.first)
                      .arg(m_answer.spaces.second)
                      .arg(m_answer.cell->text.empty() ? tr("blank")
                                                       : plainText(m_answer.cell->text));
    if (m_answer.kind != RequiredClass::Kind::NotKnown)
        source << plainText(citeOf(m_answer));
    m_source->setText(source.join(QStringLiteral(" · ")));
    QStringList notes;
    for (const Phrase& note : notesOf(m_answer, m_question))
        notes << noteWords(note);
    notes << tr(
        "The approved plans and the flag Administration take precedence over these tables.");
    m_notes->setText(notes.join(QStringLiteral("\n")));
    setAccessibleDescription(title + QStringLiteral(". ") + m_source->text());
}

} // namespace latchround::ui

#include "moc_division_lookup.cpp"
