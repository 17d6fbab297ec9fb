// Better page breaks than QTextDocument makes by itself, which knows no "keep with next" and splits
// table rows between any two lines.
#pragma once

class QTextDocument;

namespace latchround::report {

/// Sends headings that stand too near the foot, and table rows that would be split, to the next
/// page. The document has its page size and paint device already.
void keepTogether(QTextDocument& document);

} // namespace latchround::report
