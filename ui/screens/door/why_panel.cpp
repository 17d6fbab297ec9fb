#include "ui/screens/door/why_panel.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/frames/reading_pane.h"
#include "ui/keys/phrase_picker.h"
#include "ui/look/label.h"
#include "ui/look/touch_style.h"
#include "ui/ship/door_glyph.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/offered.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

WhyPanel::WhyPanel(QWidget* parent)
    : Part(parent)
    , m_glyph(new DoorGlyph(Verdict::Untested, 11, this))
    , m_title(new Label({}, TextSize::Heading, Ink::Plain, true, this))
    , m_verdict(new Label({}, TextSize::Body, Ink::Plain, true, this))
    , m_scroll(new ReadingPane(tr("Why this verdict"), this))
    , m_text(new QWidget)
    , m_lines(new QVBoxLayout(m_text)) {
    auto* head = new QHBoxLayout;
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_verdict);
    words->addWidget(m_title);
    head->addWidget(m_glyph, 0, Qt::AlignTop);
    head->addLayout(words, 1);

    m_scroll->add(m_text); // words only; the keys that record lie below, outside it

    m_decision = makeDecision();
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(head);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_decision);
    m_decision->hide();
    lookChanged();
}

QWidget* WhyPanel::makeDecision() {
    auto* box = new QWidget(this);
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(
        new Label(tr("You decide. Give the reason first:"), TextSize::Body, Ink::Plain, true));
    m_phrases = new PhrasePicker({}, true, box);
    m_phrases->setPhrases(offeredFor(OfferedFor::Judgement));
    layout->addWidget(m_phrases);
    auto* keys = new QHBoxLayout;
    m_good = new QPushButton(tr("Satisfactory"), box);
    m_bad = new QPushButton(tr("Unsatisfactory"), box);
    setRole(*m_good, "primary", true);
    setRole(*m_bad, "danger", true);
    for (QPushButton* key : {m_good, m_bad}) {
        key->setEnabled(false);
        key->setAccessibleName(key->text());
        key->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        keys->addWidget(key, 1);
    }
    layout->addLayout(keys);
    connect(m_phrases, &PhrasePicker::picked, this, [this] {
        m_good->setEnabled(true);
        m_bad->setEnabled(true);
    });
    connect(m_good, &QPushButton::clicked, this, [this] { decide(true); });
    connect(m_bad, &QPushButton::clicked, this, [this] { decide(false); });
    return box;
}

void WhyPanel::decide(bool satisfactory) {
    if (!m_phrases->chosen().empty())
        emit decided(m_requirement, satisfactory, m_phrases->chosen());
}

void WhyPanel::leaveUndecided() {
    m_decision->hide();
}

void WhyPanel::say(const QString& heading, const QString& words) {
    if (words.isEmpty())
        return;
    m_paragraphs << heading + QStringLiteral(": ") + words;
    m_lines->addWidget(new Label(heading, TextSize::Small, Ink::Muted));
    auto* text = new Label(words, TextSize::Body, Ink::Plain);
    m_lines->addWidget(text);
    m_lines->addSpacing(sizes().gap / 2);
}

void WhyPanel::setRow(const RowGrade& row, const QString& asked_because, const QString& inclined) {
    if (row.requirement == nullptr)
        return;
    const Requirement& asked = *row.requirement;
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_paragraphs.clear();
    m_requirement = QString::fromStdString(asked.id);
    m_glyph->setVerdict(row.verdict);
    m_verdict->setText(verdictTitle(row.verdict));
    m_verdict->setVerdictInk(row.verdict);
    m_title->setText(rowWords(asked));
    const auto text = [](const std::string& words) { return QString::fromStdString(words); };
    say(tr("Why this verdict"), reasonWords(row.reason));
    const QString measured = measuredWords(row);
    say(tr("Measured"), measured.isEmpty() ? measured : measured + tr(" (k = 2)"));
    const QString limit = limitWords(asked);
    say(tr("Limit"), limit.isEmpty() || asked.issuer.empty()
                         ? limit
                         : tr("%1, set by %2").arg(limit, text(asked.issuer)));
    say(tr("On an inclined ship"), inclined);
    say(tr("What to look for"), lookForWords(asked));
    say(tr("What would decide it"), settleWords(row));
    say(tr("Applies because"), asked_because);
    say(tr("Text"), asked.status == Status::Usage ? QString() : citationWords(asked));
    say(tr("Source"),
        asked.status == Status::Usage || asked.issuer.empty()
            ? statusWords(asked.status)
            : tr("%1; a rule of %2").arg(statusWords(asked.status), text(asked.issuer)));
    say(tr("Severity"), severityWords(asked.severity));
    m_lines->addStretch(1);
    m_phrases->clear();
    m_good->setEnabled(false);
    m_bad->setEnabled(false);
    // A decision that newer entries have overtaken may be made again.
    m_decision->setVisible(
        row.verdict == Verdict::Judge ||
        (row.verdict == Verdict::Unsatisfactory && row.reason.overtaken == Overtaken::Decision));
    setAccessibleName(tr("Why: %1").arg(m_title->text()));
    setAccessibleDescription(m_paragraphs.join(QStringLiteral(". ")));
}

QStringList WhyPanel::paragraphs() const {
    return m_paragraphs;
}

QSize WhyPanel::sizeHint() const {
    return {int(mm(78)), int(mm(130))};
}

void WhyPanel::lookChanged() {
    const int pad = sizes().pad;
    layout()->setContentsMargins(pad, pad, pad, pad);
    layout()->setSpacing(sizes().gap);
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(1);
    m_decision->layout()->setSpacing(sizes().gap);
    Part::lookChanged();
}

void WhyPanel::paintEvent(QPaintEvent*) {
    paintPanel();
}

} // namespace latchround::ui

#include "moc_why_panel.cpp"
