#include "ui/figures/spoken_figures.h"

#include <QAccessibleWidget>

#include "ui/figures/band_gauge.h"
#include "ui/figures/figure_label.h"

namespace latchround::ui {

namespace {

class SpokenFigure : public QAccessibleWidget {
public:
    explicit SpokenFigure(FigureLabel* label)
        : QAccessibleWidget(label, QAccessible::StaticText)
        , m_label(label) {}

    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name || kind == QAccessible::Value
                   ? m_label->spoken()
                   : QAccessibleWidget::text(kind);
    }

private:
    FigureLabel* m_label;
};

class SpokenGauge : public QAccessibleWidget, public QAccessibleValueInterface {
public:
    explicit SpokenGauge(BandGauge* gauge)
        : QAccessibleWidget(gauge, QAccessible::ProgressBar)
        , m_gauge(gauge) {}

    void* interface_cast(QAccessible::InterfaceType kind) override {
        if (kind == QAccessible::ValueInterface)
            return static_cast<QAccessibleValueInterface*>(this);
        return QAccessibleWidget::interface_cast(kind);
    }
    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name || kind == QAccessible::Value
                   ? m_gauge->spoken()
                   : QAccessibleWidget::text(kind);
    }
    QVariant currentValue() const override {
        return m_gauge->value() ? QVariant(*m_gauge->value()) : QVariant();
    }
    void setCurrentValue(const QVariant&) override {} // read only
    QVariant minimumValue() const override { return m_gauge->from(); }
    QVariant maximumValue() const override { return m_gauge->to(); }
    QVariant minimumStepSize() const override { return {}; }

private:
    BandGauge* m_gauge;
};

QAccessibleInterface* spokenPart(const QString&, QObject* object) {
    if (auto* label = qobject_cast<FigureLabel*>(object))
        return new SpokenFigure(label);
    if (auto* gauge = qobject_cast<BandGauge*>(object))
        return new SpokenGauge(gauge);
    return nullptr;
}

} // namespace

void readFiguresWhenAsked() {
    static const bool once = [] {
        QAccessible::installFactory(spokenPart);
        return true;
    }();
    (void)once;
}

} // namespace latchround::ui
