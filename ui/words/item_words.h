// What comes after the walk, in words: open items and what is to become of them, who signed, which
// report was made. Shared by the screens and the printed page.
#pragma once

#include <QString>

#include "core/deficiency/item.h"

namespace latchround::ui {

QString stateWords(ItemState state); ///< "ready for retest"
/// The glyph of an item: ajar while nobody rectified it, dotted while it waits for its retest, shut
/// when closed, a bar when withdrawn.
Verdict glyphOf(ItemState state);
QString severityName(Severity severity);  ///< "grave"; in full: severityWords of grade_words.h
QString actionWords(PortAction action);   ///< "16, within 14 days"
QString detentionWords(bool ground);      ///< "ground for detention", "no ground for detention"
QString capacityWords(Capacity capacity); ///< "chief officer"
QString reportWords(ReportKind report);   ///< "work list"

/// "due 4 Dec 2026", "overdue since 4 Dec 2026"; "no day set". An item that is not open is never
/// overdue.
QString dueWords(const Item& item, CalendarDate today);
/// Open, and its day has passed.
bool isOverdue(const Item& item, CalendarDate today);

/// The name, or "nobody yet".
QString assignedWords(const Item& item);

/// "found 3 times, the same defect as an earlier item"; empty where it is no repeat.
QString repeatWords(const Item& item);

/// What keeps it open although something speaks for closing it: tried again only by who put it
/// right, or in order on a later walk without a rectification; empty where there is nothing.
QString stillOpenWords(const Item& item);

/// "zones 2 and 3 act as one, 69 m against 40 m as a rule and 48 m at most"; empty for no zones.
QString zoneEffectWords(const ActingZone& zone);

} // namespace latchround::ui
