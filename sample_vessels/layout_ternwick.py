"""Ternwick Lass: harbour ferry, nine doors, two zones, one zone bulkhead, domestic rules."""

import random

from arrangement import Arrangement, Boundary, Deck, Vessel, Zone, number_doors
from door_builds import double, exterior, held, shut, swing

BUILT = "2009-11-02"  # before 1 July 2010: the gap rows ask nothing of these doors


def arrangement():
    rng = random.Random("ternwick lass, doors")
    vessel = Vessel("Ternwick Lass", "VC-0009", "other", 180, "2009-03-24", False, 64.0)
    decks = [
        Deck("1", "Engine deck", 1.20),
        Deck("2", "Saloon deck", 4.00),
        Deck("3", "Bridge deck", 6.80),
    ]
    zones = [Zone("1", 0.0, 32.4), Zone("2", 32.4, 64.0)]
    boundaries = [
        Boundary("1/2", "zone-bulkhead", "1", "2", 32.4, "A-60"),
        Boundary("stair aft", "stairway", "1", "1", 20.4, "A-30"),
        Boundary("stair forward", "stairway", "2", "2", 44.4, "A-30"),
        Boundary("engine room", "machinery", "1", "1", 13.2, "A-60"),
        Boundary("servery", "galley", "2", "2", 50.4, "A-30"),
        Boundary("weather 3", "exterior", "1", "1", 8.4, ""),
    ]
    zone, stair = ("MVZ1-2", "ALL"), ("STAIRS", "ALL")
    doors = [
        shut(("1", 13.2, 0.0, "engine room"), "A-60", rng, BUILT),
        shut(("1", 32.4, -0.6, "1/2"), "A-60", rng, BUILT, escape_route=True, hose_port=True),
        double(("2", 32.4, -2.4, "1/2"), "A-60", zone, rng, BUILT),
        double(("2", 32.4, 2.4, "1/2"), "A-60", zone, rng, BUILT),
        held(("2", 20.4, 0.9, "stair aft"), "A-30", stair, rng, BUILT),
        held(("2", 44.4, 0.9, "stair forward"), "A-30", stair, rng, "2017-02-20"),
        swing(("2", 50.4, -1.8, "servery"), "A-30", rng, BUILT),
        held(("3", 20.4, 0.9, "stair aft"), "A-30", stair, rng, BUILT),
        exterior(("3", 8.4, -1.2, "weather 3"), "A-0", rng, BUILT),
    ]
    return Arrangement(vessel, decks, zones, boundaries, number_doors(doors, decks))
