#!/usr/bin/env python3
"""Makes the three invented demo vessels: register.csv and history.jsonl of each, in its own folder.

Seeded throughout and free of clock and hash order: every run writes the same bytes.
"""

from pathlib import Path

import layout_lantern
import layout_meridian
import layout_ternwick
import story_lantern
import story_meridian
import story_ternwick
from arrangement import register_csv
from asked import catalogue
from facts import Recorder, utc_ms
from walk import Aboard, Walk, join, record_walk

VESSELS = (
    ("ternwick-lass", layout_ternwick, story_ternwick),
    ("vellis-lantern", layout_lantern, story_lantern),
    ("oriveth-meridian", layout_meridian, story_meridian),
)


def history(arrangement, story, rows):
    aboard = Aboard(arrangement, rows, story.PEOPLE, story.CONTROL_STATION)
    recorder = Recorder(arrangement.vessel.name + ", ids", aboard.offset_minutes)
    join(recorder, aboard, story.JOINED)
    events = [(walk.begins, walk) for walk in story.walks(arrangement)]
    events += [(when, record) for when, *record in getattr(story, "RECORDS", ())]
    for when, event in sorted(events, key=lambda each: each[0]):
        if isinstance(event, Walk):
            record_walk(recorder, aboard, event)
        else:
            record_beside(recorder, aboard, when, *event)
    return recorder.text()


def record_beside(recorder, aboard, when, who, kind, body):
    """A fact beside the walks. A deficiency is named by its door and row: the newest one."""
    if "deficiency" in body:
        body = {**body, "deficiency": recorder.deficiencies[body["deficiency"]]}
    at = utc_ms(when, aboard.offset_minutes)
    recorder.record(at, aboard.ids[who], "tablet-1", kind, body, beside=True)


def main():
    rows = catalogue()
    for slug, layout, story in VESSELS:
        folder = Path(__file__).resolve().parent / slug
        folder.mkdir(exist_ok=True)
        arrangement = layout.arrangement()
        facts = history(arrangement, story, rows)
        (folder / "register.csv").write_bytes(register_csv(arrangement).encode())
        (folder / "history.jsonl").write_bytes(facts.encode())
        print(f"{slug}: {len(arrangement.doors)} doors, {facts.count(chr(10))} facts")


if __name__ == "__main__":
    main()
