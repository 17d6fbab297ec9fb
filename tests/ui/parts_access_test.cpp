// What a screen reader is told, and that nothing that is touched is too small, in every part and
// with gloves.
#include <QAbstractButton>
#include <QAccessible>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "tests/ui/sample_grade.h"
#include "ui/figures/band_gauge.h"
#include "ui/figures/figure_label.h"
#include "ui/keys/choice_row.h"
#include "ui/keys/keypad.h"
#include "ui/keys/mark_key.h"
#include "ui/keys/phrase_picker.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/door/why_panel.h"
#include "ui/ship/door_drawing.h"
#include "ui/ship/door_glyph.h"
#include "ui/ship/zone_profile.h"

namespace latchround::ui {
namespace {

/// One of each part, with something in it.
struct AllParts : QWidget {
    SampleGrade sample;
    AllParts() {
        auto* layout = new QVBoxLayout(this);
        auto* mark = new MarkKey;
        mark->setNameLine("Shut");
        auto* keypad = new Keypad;
        keypad->setTitle("Gap under the door");
        auto* list = new VerdictList;
        list->setGrade(sample.grade);
        auto* why = new WhyPanel;
        why->setRow(sample.row("seals"), "every door");
        auto* figure = new FigureLabel(TextSize::Display, "s");
        figure->setFigure("5.62");
        for (QWidget* part : std::initializer_list<QWidget*>{
                 mark, keypad, list, why, figure, new ZoneProfile, new DoorDrawing, new BandGauge,
                 new DoorGlyph(Verdict::Judge), new PhrasePicker({"power off"}),
                 new ChoiceRow("Seals intact", {}, true)})
            layout->addWidget(part);
    }
};

QString spokenName(QWidget* widget) {
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(widget);
    return spoken == nullptr ? QString() : spoken->text(QAccessible::Name);
}

TEST(Access, EveryPartAndEveryControlHasAName) {
    AllParts all;
    for (QWidget* part : all.findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        EXPECT_FALSE(spokenName(part).isEmpty()) << part->metaObject()->className();
    for (QAbstractButton* button : all.findChildren<QAbstractButton*>())
        EXPECT_FALSE(spokenName(button).isEmpty()) << button->text().toStdString();
    for (QLineEdit* line : all.findChildren<QLineEdit*>())
        EXPECT_FALSE(spokenName(line).isEmpty());
}

TEST(Access, ChoiceKeySpeaksAnswerQuestionAndSide) {
    ChoiceRow row("Release switch works", {}, true);
    EXPECT_EQ(row.key(Answer::No, Side::Two)->accessibleName(),
              QString("No: Release switch works, side two"));
}

class TargetSize : public ::testing::TestWithParam<bool> {};

TEST_P(TargetSize, NothingTouchedIsSmallerThanATarget) {
    AllParts all;
    Look look;
    look.applyTo(all);
    look.setGloves(GetParam());
    all.show();
    QCoreApplication::processEvents();
    const int target = GetParam() ? 75 : 60;
    for (const QWidget* widget : all.findChildren<QWidget*>()) {
        const bool touched = qobject_cast<const QAbstractButton*>(widget) != nullptr ||
                             qobject_cast<const QLineEdit*>(widget) != nullptr ||
                             qobject_cast<const MarkKey*>(widget) != nullptr;
        if (!touched)
            continue;
        EXPECT_GE(widget->height(), target) << widget->accessibleName().toStdString();
        EXPECT_GE(widget->width(), target) << widget->accessibleName().toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Hands, TargetSize, ::testing::Values(false, true),
                         [](const auto& param_info) {
                             return param_info.param ? "Gloves" : "Bare";
                         });

} // namespace
} // namespace latchround::ui
