// Makes sure that words come out in B612 itself. Its fixed-width cut also answers to the name
// "B612", and Qt would take that one for regular text. B612's figures are all one width, so the
// fixed cut is not needed.
#pragma once

namespace latchround::ui {

/// Call once, before the application object is made. Without the typeface or on failure nothing
/// changes.
void readyTypeface();

} // namespace latchround::ui
