// What comes after the walk, in words: open items and what is to become of them, who signed, which
// report was made. Shared by the screens and the printed page.
#pragma once

#include <QString>

#include "core/deficiency/item.h"

namespace latchround::ui {

QString stateWords(ItemState state); ///< "awaiting retest"
/// The glyph of an item: ajar until it is rectified, dotted while it waits for its retest, shut
/// when closed, a bar when withdrawn.
Verdict glyphOf(ItemState state);
QString severityName(Severity severity);  ///< "critical"; in full: severityWords of grade_words.h
QString actionWords(PortAction action);   ///< "16, within 14 days"
QString detentionWords(bool ground);      ///< "ground for detention", "no ground for detention"
QString capacityWords(Capacity capacity); ///< "chief officer"
QString reportWords(ReportKind report);   ///< "work list"

/// "due 4 Dec 2026", "overdue since 4 Dec 2026"; "no date set". An item that is not open is never
/// overdue.
QString dueWords(const Item& item, CalendarDate today);
/// Open, and its day has passed.
bool isOverdue(const Item& item, CalendarDate today);

/// The name, or "no one yet".
QString assignedWords(const Item& item);

/// "found 3 times, the same defect as an earlier item"; empty where it is no repeat.
QString repeatWords(const Item& item);

/// What keeps it open although something speaks for closing it: tested again only by whoever
/// rectified it, or in order on a later walkdown without a rectification; else empty.
QString stillOpenWords(const Item& item);

/// "zones 2 and 3 act as one, 69 m long; limit 40 m, 48 m maximum"; empty for no zones.
QString zoneEffectWords(const ActingZone& zone);

} // namespace latchround::ui
