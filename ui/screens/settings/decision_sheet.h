// With which probability a figure passes or fails: three pairs of limits and what each of them
// leads to.
#pragma once

#include "core/evidence/fact.h"
#include "ui/look/part.h"

namespace latchround::ui {

class DecisionSheet : public Part {
    Q_OBJECT
public:
    /// `u_s`: standard uncertainty of one hand-timed run, for the consequences in words.
    DecisionSheet(const DecisionLimits& in_use, double u_s, QWidget* parent = nullptr);

signals:
    void chosen(latchround::DecisionLimits limits);
};

} // namespace latchround::ui

Q_DECLARE_METATYPE(latchround::DecisionLimits)
