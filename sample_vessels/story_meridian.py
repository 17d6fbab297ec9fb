"""Aboard Oriveth Meridian: the annual of 2025, one run a door, and a quarterly walk of the zone
bulkheads under way. Faults are drawn by chance, the same ones each time."""

import random

from finding import Finding
from walk import Walk, walking_order

PEOPLE = [
    ("Jorun Peverant", "surveyor"),
    ("Davith Lunmere", "second surveyor"),
    ("Sabeth Corrigale", "chief officer"),
]
JOINED = "2025-09-08 07:30"
CONTROL_STATION = "safety centre"
FAULTY = 0.07  # share of doors with something to write


def _by_chance(a, doors, seed):
    rng = random.Random(seed)
    found = {}
    for door in doors:
        place = a.boundary(door.boundary).place
        if rng.random() >= FAULTY or place in ("cabin", "exterior"):
            continue
        found[door.number] = rng.choice(_choices(door, place, rng))
    return found


def _choices(door, place, rng):
    listed = place in ("zone-bulkhead", "stairway", "galley")
    choices = [
        Finding(no=("path-clear",), judged={"path-clear": (True, "Moved on the spot.")}),
        Finding(no=("seals-whole",), judged={"seals-whole": (False, "Strip broken at the head.")}),
        Finding(no=("leaf-whole",), note="Cable led through a drilled hole, not sealed."),
    ]
    if door.kind != "sliding":
        choices.append(
            Finding(no=("closer-sound",), judged={"closer-sound": (False, "Closer leaks.")})
        )
    if door.latch:
        choices.append(
            Finding(
                no=("latches",),
                judged={"latches": (False, "Pushes open.")},
                deficiencies={"latches": "Closes but does not latch."},
            )
        )
    if listed and door.kind == "sliding":
        rate = rng.choice((0.22, 0.23, 0.085))
        word = "faster than 0.2" if rate > 0.2 else "slower than 0.1"
        choices += [
            Finding(rate=rate, deficiencies={"sliding-rate": f"Closes at {rate} m/s, {word} m/s."}),
            Finding(
                lead_s=3.8, deficiencies={"alarm-lead": "Alarm leads by 3.8 s, less than 5 s."}
            ),
            Finding(
                alarm_early_s=1.5,
                deficiencies={"alarm-holds": "Alarm stops before the leaf is home."},
            ),
            Finding(no=("pocket-clear",), note="Litter in the pocket."),
        ]
    elif listed:
        time_s = rng.choice((7.4, 8.6, 46.0))
        word = "less than 10" if time_s < 10 else "more than 40"
        choices.append(
            Finding(time_s=time_s, deficiencies={"hinged-time": f"Shuts in {time_s} s, {word} s."})
        )
    return choices


def walks(a):
    zone_doors = [d for d in a.doors if a.boundary(d.boundary).place == "zone-bulkhead"]
    all_order, zone_order = walking_order(a.doors, a), walking_order(zone_doors, a)
    seen = 64
    walked = [a.door(number) for number in zone_order[:seen]]
    return [
        Walk(
            "annual 2025",
            "annual",
            "2025-09-08 08:00",
            0.0,
            "all doors",
            "once",
            all_order,
            remark="All doors seen, each released once.",
            heel_deg=0.2,
            channel="UHF 2",
            findings=_by_chance(a, a.doors, "oriveth meridian, annual 2025"),
        ),
        Walk(
            "quarterly 2026",
            "quarterly",
            "2026-11-23 08:20",
            1.2,
            "quarterly: zone bulkheads",
            "local",
            zone_order,
            done=seen,
            heel_deg=0.4,
            channel="UHF 2",
            findings=_by_chance(a, walked, "oriveth meridian, quarterly 2026"),
        ),
    ]
