// One door of the paper form.
#pragma once

#include "app/report/paper_form.h"
#include "app/report/pictures.h"

namespace latchround::report {

QString paperDoorHtml(const PaperForm& form, const Door& door, Pictures& pictures);

} // namespace latchround::report
