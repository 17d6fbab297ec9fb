// Where no vessel can be opened at the start: the vessels on this tablet, and what is wrong with
// the one that was asked for. Nothing of it is touched.
#pragma once

#include <QWidget>

#include "core/error/error.h"
#include "ui/ports/vessels.h"

namespace latchround::ui {

class Label;

class VesselChoice : public QWidget {
    Q_OBJECT
public:
    /// `place`: of the vessel that cannot be opened.
    VesselChoice(Vessels& vessels, const QString& place, const Error& why);

    /// Another one cannot be opened either.
    void showMessage(const Error& why);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void open(const QString& place);
    void takeIn();

    Vessels& m_vessels;
    Label* m_why;
};

} // namespace latchround::ui
