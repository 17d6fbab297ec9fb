"""Vellis Lantern: coastal overnight ferry with a car deck, sixty doors. The demo vessel.

Zone limits are frames of 0.8 m spacing; no zone is longer than 40 m.
"""

import random

from arrangement import Arrangement, Boundary, Deck, Vessel, Zone, number_doors
from door_builds import cabin, double, exterior, held, shut, sliding, swing, to_car_deck

BUILT = "2012-02-13"
REFIT = "2019-01-21"  # two corridors got new doors

FRAMES = (0.0, 36.0, 74.4, 113.6, 148.0)
STAIRS = {"1": 23.2, "2": 56.8, "3": 94.4, "4": 128.0}


def _boundaries():
    rows = [
        Boundary(f"{n}/{n + 1}", "zone-bulkhead", str(n), str(n + 1), FRAMES[n], "A-60", "3 3")
        for n in (1, 2, 3)
    ]
    rows += [
        Boundary(f"stair {zone}", "stairway", zone, zone, x, "A-60" if zone == "2" else "A-30", "2 8")
        for zone, x in STAIRS.items()
    ]
    return rows + [
        Boundary("galley", "galley", "3", "3", 101.6, "A-60", "3 12"),
        Boundary("pantry", "galley", "2", "2", 66.4, "A-30", "3 13"),
        Boundary("engine room", "machinery", "2", "2", 44.8, "A-60", "10 12"),
        Boundary("casing", "machinery", "2", "2", 48.8, "A-60", "3 12"),
        Boundary("separator room", "machinery", "1", "1", 28.8, "", "7 12"),
        Boundary("car deck aft", "special-category", "1", "1", 24.8, "A-60", "2 11"),
        Boundary("car deck forward", "special-category", "3", "3", 96.0, "A-60", "2 11"),
        Boundary("cabins 5", "cabin", "3", "3", 88.0, "B-15", "3 7"),
        Boundary("cabins 6", "cabin", "2", "2", 64.0, "", "3 7"),
        Boundary("embarkation 7", "exterior", "3", "3", 84.0, "A-0"),
        Boundary("weather aft", "exterior", "1", "1", 4.0, "A-0"),
    ]


def _zone_doors(rng):
    def groups(boundary):
        return ("MVZ" + boundary.replace("/", "-"), "ALL")

    at = {"1/2": FRAMES[1], "2/3": FRAMES[2], "3/4": FRAMES[3]}
    doors = []
    for boundary, x in at.items():
        doors.append(
            shut(("2", x, -0.8, boundary), "A-60", rng, BUILT, escape_route=True, hose_port=True)
        )
        for y in (-5.6, 5.6):
            doors.append(sliding(("4", x, y, boundary), "A-60", groups(boundary), rng, BUILT))
        for y in (-4.8, 4.8):
            build, when = (sliding, REFIT) if boundary == "2/3" else (double, BUILT)
            doors.append(build(("5", x, y, boundary), "A-60", groups(boundary), rng, when))
    for y in (-4.8, 4.8):
        doors.append(sliding(("6", at["2/3"], y, "2/3"), "A-60", groups("2/3"), rng, BUILT))
    for boundary in ("1/2", "3/4"):
        doors.append(
            double(("6", at[boundary], 0.0, boundary), "A-60", groups(boundary), rng, BUILT)
        )
    for boundary, x in at.items():
        doors.append(held(("7", x, 0.8, boundary), "A-60", groups(boundary), rng, BUILT))
    return doors


def _stair_doors(rng):
    doors = []
    for zone, x in STAIRS.items():
        fire_class = "A-60" if zone == "2" else "A-30"
        for deck in ("4", "5", "6", "7"):
            y = -1.6 if deck in ("4", "6") else 1.6
            doors.append(
                held((deck, x, y, f"stair {zone}"), fire_class, (f"ST{zone}", "ALL"), rng, BUILT)
            )
    for zone in ("2", "3"):
        fire_class = "A-60" if zone == "2" else "A-30"
        doors.append(
            shut(
                ("2", STAIRS[zone], 1.6, f"stair {zone}"),
                fire_class,
                rng,
                BUILT,
                escape_route=True,
                hose_port=True,
            )
        )
    return doors


def _service_doors(rng):
    galley = ("GALLEY", "ALL")
    return [
        swing(("4", 101.6, -3.2, "galley"), "A-60", rng, BUILT),
        double(
            ("4", 101.6, 0.8, "galley"),
            "A-60",
            galley,
            rng,
            BUILT,
            escape_route=False,
            hose_port=False,
        ),
        held(
            ("5", 66.4, 2.4, "pantry"),
            "A-30",
            galley,
            rng,
            BUILT,
            escape_route=False,
            hose_port=False,
        ),
        shut(("1", 28.8, -2.4, "separator room"), "A-60", rng, BUILT),
        shut(("1", 44.8, 0.0, "engine room"), "A-60", rng, BUILT),
        held(
            ("1", 44.8, 4.0, "engine room"),
            "A-60",
            ("MACHINERY", "ALL"),
            rng,
            BUILT,
            escape_route=False,
            hose_port=False,
            sill_in_frame=True,
        ),
        shut(("2", 48.8, -3.2, "casing"), "A-60", rng, BUILT),
        shut(("4", 48.8, -3.2, "casing"), "A-60", rng, BUILT),
        to_car_deck(("3", 24.8, 1.6, "car deck aft"), "A-60", rng, BUILT),
        to_car_deck(("3", 96.0, 1.6, "car deck forward"), "A-60", rng, BUILT),
        shut(("3", 24.8, -6.4, "car deck aft"), "A-60", rng, BUILT),
        shut(("3", 96.0, -6.4, "car deck forward"), "A-60", rng, BUILT),
        cabin(("5", 84.8, -6.4, "cabins 5"), rng, BUILT),
        cabin(("5", 88.0, 6.4, "cabins 5"), rng, BUILT),
        cabin(("6", 62.4, -6.4, "cabins 6"), rng, BUILT),
        cabin(("6", 64.0, 6.4, "cabins 6"), rng, BUILT),
        exterior(("7", 84.0, -10.4, "embarkation 7"), "A-0", rng, BUILT),
        exterior(("7", 84.0, 10.4, "embarkation 7"), "A-0", rng, BUILT),
        exterior(("4", 4.0, 0.0, "weather aft"), "A-0", rng, BUILT),
        exterior(("6", 4.0, 0.0, "weather aft"), "A-0", rng, BUILT),
    ]


def arrangement():
    rng = random.Random("vellis lantern, doors")
    vessel = Vessel("Vellis Lantern", "VC-0060", "solas-passenger", 612, "2011-05-16", True, 148.0)
    decks = [
        Deck("1", "Engine deck", 1.60),
        Deck("2", "Crew deck", 4.40),
        Deck("3", "Car deck", 7.20),
        Deck("4", "Lounge deck", 12.80),
        Deck("5", "Cabin deck", 15.60),
        Deck("6", "Upper cabin deck", 18.40),
        Deck("7", "Bridge deck", 21.20),
    ]
    zones = [Zone(str(n + 1), FRAMES[n], FRAMES[n + 1], 24.0) for n in range(4)]
    doors = _zone_doors(rng) + _stair_doors(rng) + _service_doors(rng)
    a = Arrangement(vessel, decks, zones, _boundaries(), number_doors(doors, decks))
    _troubles(a)
    return a


def _troubles(a):
    """Faults of the paperwork, on purpose: what a first look at a register turns up."""

    def one(deck, boundary, side=0):
        found = [d for d in a.doors if d.deck == deck and d.boundary == boundary]
        return next(d for d in found if side == 0 or d.y_m * side > 0)

    low = one("7", "stair 2")  # stands in A-60
    low.fire_class = low.plate = "A-30"
    one("6", "stair 3").plate = ""
    one("7", "stair 3").plate = "A-60"  # A-30 by the fire plan, and the stair asks no more
