#include "ui/window/vessel_choice.h"

#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/keys/row_pager.h"
#include "ui/lists/value_row.h"
#include "ui/look/label.h"
#include "ui/look/look.h"
#include "ui/look/touch_style.h"
#include "ui/words/phrase_words.h"

namespace latchround::ui {

VesselChoice::VesselChoice(Vessels& vessels, const QString& place, const Error& why)
    : m_vessels(vessels)
    , m_why(new Label({}, TextSize::Body)) {
    setObjectName(QStringLiteral("vessel-choice"));
    setWindowTitle(QStringLiteral("Latchround"));
    setMinimumSize(640, 480);
    auto* lines = new QVBoxLayout(this);
    lines->addWidget(
        new Label(tr("This vessel cannot be opened"), TextSize::Title, Ink::Plain, true));
    m_why->setObjectName(QStringLiteral("why-not-opened"));
    lines->addWidget(m_why);
    lines->addWidget(new Label(tr("Vessels on this tablet"), TextSize::Heading));
    std::vector<QWidget*> rows;
    for (const VesselOnTablet& vessel : vessels.others()) {
        auto* row = new ValueRow(vessel.name, vessel.place == place ? tr("Try again") : tr("Open"));
        row->setDetail(vessel.detail);
        row->key()->setObjectName(QStringLiteral("choose-") + vessel.place);
        connect(row, &ValueRow::asked, this, [this, at = vessel.place] { open(at); });
        rows.push_back(row);
    }
    auto* pager = new RowPager;
    pager->setRows(std::move(rows));
    lines->addWidget(pager, 1);
    auto* take_in = keyOf(tr("Import a register (CSV)"), "take-in-register");
    connect(take_in, &QPushButton::clicked, this, &VesselChoice::takeIn);
    lines->addWidget(take_in);
    showMessage(why);
}

void VesselChoice::showMessage(const Error& why) {
    m_why->setText(errorWords(why));
}

void VesselChoice::open(const QString& place) {
    if (const Result<> opened = m_vessels.open(place); !opened)
        showMessage(opened.error());
}

void VesselChoice::takeIn() {
    const auto place = m_vessels.takeIn(this, {});
    if (!place)
        showMessage(place.error().front());
    else if (*place)
        open(**place);
}

void VesselChoice::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), lookOf(this).colours.paper);
}

} // namespace latchround::ui

#include "moc_vessel_choice.cpp"
