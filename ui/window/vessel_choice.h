// Where no vessel can be opened at the start: the vessels on this tablet, and what is wrong with
// the one that was asked for. Nothing of it is touched.
#pragma once

#include <QWidget>

#include "core/complaint.h"
#include "ui/round/outside.h"

namespace latchround::ui {

class Lettering;

class VesselChoice : public QWidget {
    Q_OBJECT
public:
    /// `place`: of the vessel that cannot be opened.
    VesselChoice(Outside& outside, const QString& place, const Complaint& why);

    /// Another one cannot be opened either.
    void tell(const Complaint& why);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void open(const QString& place);
    void takeIn();

    Outside& m_outside;
    Lettering* m_why;
};

} // namespace latchround::ui
