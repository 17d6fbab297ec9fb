"""One walkdown: who, when, which doors in which order, how deep, and the facts it leaves."""

import random
from dataclasses import dataclass, field

from asked import rows_of
from door_visit import Visit
from facts import utc_ms
from finding import NOTHING

DAY_ENDS_MIN = 17 * 60 + 15
BREAK_MIN = (12 * 60, 12 * 60 + 45)


@dataclass
class Walk:
    name: str  # for seeds: "annual 2025"
    purpose: str
    begins: str  # ship's clock, "2025-11-18 08:10"
    years: float  # since the first record: how far doors have worn
    scope: str
    depth: str  # "full", "once" (every answer, one run a door) or "local" (quarterly)
    doors: list  # numbers in the order of the walk
    done: int = -1  # how many were visited; -1: all, and the walk is ended
    remark: str = ""
    heel_deg: float = 0.4
    channel: str = "UHF 4"
    findings: dict = field(default_factory=dict)


@dataclass
class Aboard:
    """What a walk needs to know of the vessel and its people: names and, once joined, their ids."""

    arrangement: object
    rows: list
    people: list  # (name, role): surveyor, second surveyor, chief officer
    control_station: str
    offset_minutes: int = 60
    ids: list = field(default_factory=list)


def walking_order(doors, arrangement):
    """From the top deck down, forward on one deck and aft on the next, the doors of one boundary
    together."""
    order = []
    for rank, deck in enumerate(sorted(arrangement.decks, key=lambda d: -d.height_m)):
        way = 1 if rank % 2 == 0 else -1
        here = [d for d in doors if d.deck == deck.number]
        order += sorted(
            here,
            key=lambda d: (
                way * arrangement.boundary(d.boundary).x_m,
                d.boundary,
                way * d.x_m,
                d.y_m,
            ),
        )
    return [d.number for d in order]


class Clock:
    """The ship's day: a break at noon, and nobody walks in the evening."""

    def __init__(self, begins_ms, offset_minutes):
        self.ms = begins_ms
        self._offset = offset_minutes

    def pass_s(self, seconds):
        self.ms += max(1, round(seconds * 1000))

    def between_doors(self, seconds, rng):
        self.pass_s(seconds)
        minute = (self.ms // 60_000 + self._offset) % 1440
        if BREAK_MIN[0] <= minute < BREAK_MIN[1]:
            self.pass_s((BREAK_MIN[1] - minute) * 60 + rng.uniform(0, 240))
        elif minute >= DAY_ENDS_MIN:
            self.pass_s((1440 + 8 * 60 - minute) * 60 + rng.uniform(0, 600))


def join(recorder, aboard, when):
    ms = utc_ms(when, aboard.offset_minutes)
    for name, role in aboard.people:
        ms += 41_318
        aboard.ids.append(
            recorder.record(ms, None, "tablet-1", "person-joined", {"name": name, "role": role})
        )


def record_walk(recorder, aboard, walk):
    rng = random.Random(f"{aboard.arrangement.vessel.name}, {walk.name}")
    clock = Clock(utc_ms(walk.begins, aboard.offset_minutes), aboard.offset_minutes)
    surveyor = aboard.ids[0]
    walkdown = recorder.record(
        clock.ms,
        surveyor,
        "tablet-1",
        "walkdown-begun",
        {
            "purpose": walk.purpose,
            "team": [name for name, _ in aboard.people],
            "scope": walk.scope,
            "doors": walk.doors,
            "heel_deg": walk.heel_deg,
            "control_station": aboard.control_station,
            "channel": walk.channel,
            "start_word": "release now",
            "stop_word": "stop stop stop",
            "may_stop": "everyone",
            "brief_read": True,
        },
    )
    visited = walk.doors if walk.done < 0 else walk.doors[: walk.done]
    unknown = set(walk.findings) - set(visited)
    if unknown:
        raise ValueError(f"{walk.name}: findings for doors that are not walked: {sorted(unknown)}")
    boot_ms = clock.ms - rng.randrange(6, 40) * 3_600_000 - rng.randrange(3_600_000)
    for number in visited:
        clock.between_doors(rng.uniform(35, 110), rng)
        door = aboard.arrangement.door(number)
        boundary = aboard.arrangement.boundary(door.boundary)
        visit = Visit(
            recorder,
            aboard,
            walk,
            walkdown,
            door,
            boundary.place,
            rows_of(door, boundary, aboard.arrangement.vessel, aboard.rows),
            clock,
            boot_ms,
            walk.findings.get(number, NOTHING),
        )
        visit.record()
    if walk.done < 0:
        clock.pass_s(rng.uniform(300, 900))
        recorder.record(
            clock.ms,
            surveyor,
            "tablet-1",
            "walkdown-ended",
            {"walkdown": walkdown, "remark": walk.remark},
        )
