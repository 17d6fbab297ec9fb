"""Oriveth Meridian: cruise vessel, four hundred doors, seven zones, twelve decks, sprinklers.

Zone 3 is 44.8 m long: the rule allows more than 40 m, up to 48, where a large public space takes
the whole zone (SOLAS II-2/9.2.2.1.2).
"""

import random

from arrangement import Arrangement, Boundary, Deck, Vessel, Zone, number_doors
from door_builds import cabin, double, exterior, held, shut, sliding, swing

BUILT = "2017-06-12"
DOORS = 400

FRAMES = (0.0, 36.8, 75.2, 120.0, 159.2, 197.6, 233.6, 268.0)
MAIN_STAIRS = {"2": 58.4, "4": 140.0, "6": 215.2}
CREW_STAIRS = {"1": 20.0, "3": 97.6, "5": 178.4, "7": 249.6}
LOUNGE_DECKS = ("4", "5", "6")
CABIN_DECKS = ("7", "8", "9", "10")

DECKS = [
    Deck("1", "Engine deck", 1.80),
    Deck("2", "Store deck", 4.60),
    Deck("3", "Crew deck", 7.40),
    Deck("4", "Gangway deck", 10.20),
    Deck("5", "Promenade deck", 13.20),
    Deck("6", "Lounge deck", 16.20),
    Deck("7", "Heron deck", 19.00),
    Deck("8", "Plover deck", 21.80),
    Deck("9", "Curlew deck", 24.60),
    Deck("10", "Avocet deck", 27.40),
    Deck("11", "Lido deck", 30.40),
    Deck("12", "Sun deck", 33.40),
]


def _boundaries():
    rows = [
        Boundary(f"{n}/{n + 1}", "zone-bulkhead", str(n), str(n + 1), FRAMES[n], "A-60", "3 3")
        for n in range(1, 7)
    ]
    rows += [
        Boundary(f"main stair {z}", "stairway", z, z, x, "A-60", "2 8") for z, x in MAIN_STAIRS.items()
    ]
    rows += [
        Boundary(f"crew stair {z}", "stairway", z, z, x, "A-30", "2 13") for z, x in CREW_STAIRS.items()
    ]
    rows += [
        Boundary("main galley", "galley", "3", "3", 104.0, "A-60", "8 12"),
        Boundary("crew galley", "galley", "5", "5", 168.0, "A-60", "7 12"),
        Boundary("lido galley", "galley", "5", "5", 186.4, "", "8 12"),
        Boundary("pantry", "galley", "2", "2", 68.0, "A-30", "3 13"),
        Boundary("engine room aft", "machinery", "2", "2", 48.0, "A-60", "10 12"),
        Boundary("engine room forward", "machinery", "3", "3", 88.0, "A-60", "10 12"),
        Boundary("separator room", "machinery", "3", "3", 110.4, "A-60", "10 12"),
        Boundary("casing", "machinery", "3", "3", 84.0, "A-60", "3 12"),
        Boundary("embarkation", "exterior", "4", "4", 148.0, "A-0"),
        Boundary("weather aft", "exterior", "1", "1", 6.4, "A-0"),
        Boundary("laundry", "other", "1", "1", 28.0, "A-30", "3 13"),
        Boundary("linen stores", "other", "5", "5", 172.0, "A-30", "3 13"),
    ]
    for n in (2, 4, 6):
        rows.append(Boundary(f"cabins {n}", "cabin", str(n), str(n), FRAMES[n] - 12.8, "B-15", "3 7"))
    return rows


def _zone_doors(rng):
    doors = []
    for n in range(1, 7):
        boundary, x, groups = f"{n}/{n + 1}", FRAMES[n], (f"MVZ{n}-{n + 1}", "ALL")
        for deck in [d.number for d in DECKS[1:]]:
            at = [(deck, x, y, boundary) for y in (-7.2, 0.0, 7.2)]
            if deck == "2":
                doors.append(shut(at[1], "A-60", rng, BUILT, escape_route=True, hose_port=True))
            elif deck == "3":  # the long crew corridor, with trolleys
                doors += [
                    sliding(at[0], "A-60", groups, rng, BUILT),
                    held(at[2], "A-60", groups, rng, BUILT),
                ]
            elif deck in LOUNGE_DECKS:
                doors += [
                    sliding(at[0], "A-60", groups, rng, BUILT),
                    sliding(at[2], "A-60", groups, rng, BUILT),
                ]
            elif deck in CABIN_DECKS:
                build = double if n % 2 else held
                doors += [
                    build(at[0], "A-60", groups, rng, BUILT),
                    build(at[2], "A-60", groups, rng, BUILT),
                    held(at[1], "A-60", groups, rng, BUILT),
                ]
            else:
                doors.append(double(at[1], "A-60", groups, rng, BUILT))
    return doors


def _stair_doors(rng):
    doors = []
    for zone, x in MAIN_STAIRS.items():
        for deck in [d.number for d in DECKS[2:]]:
            for y in (-4.8, 4.8):
                build = double if deck in LOUNGE_DECKS else held
                doors.append(
                    build(
                        (deck, x, y, f"main stair {zone}"), "A-60", (f"ST{zone}", "ALL"), rng, BUILT
                    )
                )
    for zone, x in CREW_STAIRS.items():
        for deck in [d.number for d in DECKS[:11]]:
            at = (deck, x, 3.2 if int(deck) % 2 else -3.2, f"crew stair {zone}")
            if deck in ("1", "2"):
                doors.append(shut(at, "A-30", rng, BUILT, escape_route=True, hose_port=True))
            else:
                doors.append(held(at, "A-30", (f"ST{zone}", "ALL"), rng, BUILT))
    return doors


def _galley_doors(rng):
    groups, doors = ("GALLEYS", "ALL"), []
    inside = {"escape_route": False, "hose_port": False}
    for deck, x, boundary in (
        ("5", 104.0, "main galley"),
        ("6", 104.0, "main galley"),
        ("3", 168.0, "crew galley"),
        ("11", 186.4, "lido galley"),
    ):
        doors += [
            swing((deck, x, -8.0, boundary), "A-60", rng, BUILT),
            swing((deck, x, 8.0, boundary), "A-60", rng, BUILT),
            sliding((deck, x, -2.4, boundary), "A-60", groups, rng, BUILT, **inside),
            held((deck, x - 9.6, 0.8, boundary), "A-60", groups, rng, BUILT, **inside),
            shut((deck, x - 9.6, 6.4, boundary), "A-60", rng, BUILT),
        ]
    for deck in CABIN_DECKS:
        doors.append(held((deck, 68.0, 1.6, "pantry"), "A-30", groups, rng, BUILT, **inside))
    return doors


def _machinery_doors(rng):
    groups, doors = ("MACHINERY", "ALL"), []
    for x, boundary in (
        (48.0, "engine room aft"),
        (88.0, "engine room forward"),
        (110.4, "separator room"),
    ):
        for deck in ("1", "2"):
            doors.append(shut((deck, x, -5.6, boundary), "A-60", rng, BUILT))
            doors.append(
                held(
                    (deck, x, 5.6, boundary),
                    "A-60",
                    groups,
                    rng,
                    BUILT,
                    escape_route=False,
                    hose_port=False,
                    sill_in_frame=True,
                )
            )
    for deck in [d.number for d in DECKS[2:11]]:
        doors.append(shut((deck, 84.0, -1.6, "casing"), "A-60", rng, BUILT))
    return doors


def _cabin_doors(rng):
    doors = []
    for n in (2, 4, 6):
        for deck in CABIN_DECKS:
            for step, y in ((0.0, -8.8), (3.2, 8.8), (6.4, -8.8), (9.6, 8.8)):
                doors.append(cabin((deck, FRAMES[n] - 12.8 + step, y, f"cabins {n}"), rng, BUILT))
    return doors


def _exterior_doors(rng):
    doors = []
    for x in (132.0, 148.0, 154.4):
        for y in (-15.2, 15.2):
            doors.append(exterior(("5", x, y, "embarkation"), "A-0", rng, BUILT))
    for deck in [d.number for d in DECKS[3:]]:
        for y in (-9.6, 9.6):
            doors.append(exterior((deck, 6.4, y, "weather aft"), "A-0", rng, BUILT))
    return doors


def _store_doors(rng, how_many):
    """Linen lockers and the laundry make up the count."""
    doors = []
    for n in range(how_many):
        deck = DECKS[2 + n % 10].number
        lap = n // 10
        x = 164.0 + 3.2 * lap
        boundary = "linen stores"
        if deck == "3":
            x, boundary = 24.8 + 3.2 * lap, "laundry"
        doors.append(shut((deck, x, -5.6 if n % 2 else 5.6, boundary), "A-30", rng, BUILT))
    return doors


def _troubles(a):
    """Faults of the paperwork, on purpose."""

    def one(deck, boundary):
        return next(d for d in a.doors if d.deck == deck and d.boundary == boundary)

    low = one("9", "main stair 4")  # stands in A-60
    low.fire_class = low.plate = "A-30"
    one("7", "crew stair 5").plate = ""
    one("8", "crew stair 3").plate = "A-60"  # A-30 by the fire plan


def arrangement():
    rng = random.Random("oriveth meridian, doors")
    vessel = Vessel(
        "Oriveth Meridian", "VC-0400", "solas-passenger", 2412, "2016-02-09", True, 268.0
    )
    zones = [Zone(str(n + 1), FRAMES[n], FRAMES[n + 1], 28.8) for n in range(7)]
    doors = (
        _zone_doors(rng)
        + _stair_doors(rng)
        + _galley_doors(rng)
        + _machinery_doors(rng)
        + _cabin_doors(rng)
        + _exterior_doors(rng)
    )
    doors += _store_doors(rng, DOORS - len(doors))
    a = Arrangement(vessel, DECKS, zones, _boundaries(), number_doors(doors, DECKS))
    _troubles(a)
    return a
