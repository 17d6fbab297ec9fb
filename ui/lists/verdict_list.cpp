#include "ui/lists/verdict_list.h"

#include <QHBoxLayout>
#include <QScrollBar>
#include <QVBoxLayout>

#include "ui/frames/list_touch.h"
#include "ui/lists/two_line_list.h"
#include "ui/lists/verdict_rows.h"
#include "ui/look/label.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

constexpr TwoLineStyle verdict_style{.glyph = {4.6, 5.4},
                                     .before = 1,
                                     .after = 1,
                                     .above = 2,
                                     .between = 0.4,
                                     .lines = 0,
                                     .from_top = true,
                                     .coloured = true};

} // namespace

VerdictList::VerdictList(QWidget* parent)
    : Part(parent)
    , m_glyph(new DoorGlyph(Verdict::Untested, 13, this))
    , m_title(new Label({}, TextSize::Title, Ink::Plain, true, this))
    , m_count(new Label({}, TextSize::Body, Ink::Muted, false, this))
    , m_view(new TwoLineList(verdict_style, this)) {
    auto* head = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    words->addWidget(m_title);
    words->addWidget(m_count);
    words->setSpacing(2);
    head->addWidget(m_glyph, 0, Qt::AlignVCenter);
    head->addLayout(words, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(head);
    layout->addWidget(m_view, 1);

    m_view->setObjectName(QStringLiteral("verdict-rows"));
    m_view->setAccessibleName(tr("Checks at this door, worst first"));
    scrollByTouch(*m_view);
    connect(m_view, &QListView::activated, this, [this](const QModelIndex& index) {
        emit whyAsked(index.data(Qt::UserRole).toString());
    });
    lookChanged();
}

QListView* VerdictList::rows() const {
    return m_view;
}

void VerdictList::setGrade(const DoorGrade& grade) {
    const int place = m_view->verticalScrollBar()->value();
    TwoLineModel& lines = m_view->rows();
    const int rows_before = lines.rowCount();
    const QModelIndex current = m_view->currentIndex();
    const int row_before = current.isValid() ? current.row() : -1;
    m_glyph->setVerdict(grade.verdict);
    m_title->setText(verdictTitle(grade.verdict));
    m_title->setVerdictInk(grade.verdict);
    m_count->setText(countLine(grade));
    lines.setRows(verdictRows(askedWorstFirst(grade)));
    if (lines.rowCount() == rows_before) {
        if (row_before >= 0)
            m_view->setCurrentIndex(lines.index(row_before));
        m_view->verticalScrollBar()->setValue(place);
    }
    setAccessibleName(
        tr("Door %1: %2, %3")
            .arg(QString::fromStdString(grade.door), verdictWords(grade.verdict), m_count->text()));
}

void VerdictList::setGlyphShown(bool shown) {
    m_glyph->setVisible(shown);
    m_title->setVisible(shown);
}

QSize VerdictList::sizeHint() const {
    return {int(mm(78)), int(mm(130))};
}

void VerdictList::lookChanged() {
    const int pad = sizes().pad;
    layout()->setContentsMargins(pad, pad, pad, pad);
    layout()->setSpacing(sizes().gap);
    m_view->doItemsLayout();
    Part::lookChanged();
}

void VerdictList::paintEvent(QPaintEvent*) {
    paintPanel();
}

} // namespace latchround::ui

#include "moc_verdict_list.cpp"
