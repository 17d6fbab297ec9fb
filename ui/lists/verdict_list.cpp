#include "ui/lists/verdict_list.h"

#include <QHBoxLayout>
#include <QListView>
#include <QScrollBar>
#include <QVBoxLayout>

#include "ui/frames/list_touch.h"
#include "ui/lists/verdict_rows.h"
#include "ui/look/lettering.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

VerdictList::VerdictList(QWidget* parent)
    : Part(parent)
    , m_glyph(new DoorGlyph(Verdict::Untested, 13, this))
    , m_title(new Lettering({}, TextSize::Title, Ink::Plain, true, this))
    , m_count(new Lettering({}, TextSize::Body, Ink::Muted, false, this))
    , m_view(new QListView(this))
    , m_rows(new VerdictRows(this)) {
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

    m_view->setModel(m_rows);
    m_view->setItemDelegate(new VerdictRowDelegate(m_view));
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setResizeMode(QListView::Adjust); // wrapped rows change height with the width
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setObjectName(QStringLiteral("verdict-rows"));
    m_view->setAccessibleName(tr("What is asked of this door, worst first"));
    scrollByTouch(*m_view);
    connect(m_view, &QListView::activated, this, [this](const QModelIndex& index) {
        emit whyAsked(index.data(Qt::UserRole).toString());
    });
    lookChanged();
}

void VerdictList::setGrade(const DoorGrade& grade) {
    const int place = m_view->verticalScrollBar()->value();
    const int rows_before = m_rows->rowCount();
    const QModelIndex current = m_view->currentIndex();
    const int row_before = current.isValid() ? current.row() : -1;
    m_glyph->setVerdict(grade.verdict);
    m_title->setText(verdictTitle(grade.verdict));
    m_title->setVerdictInk(grade.verdict);
    m_count->setText(countLine(grade));
    m_rows->setRows(askedWorstFirst(grade));
    if (m_rows->rowCount() == rows_before) {
        if (row_before >= 0)
            m_view->setCurrentIndex(m_rows->index(row_before));
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
