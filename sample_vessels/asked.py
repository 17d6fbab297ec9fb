"""Which catalogue rows are asked of a door: reads the `applies` data of resources/requirements, so
that an invented history never answers a question the program would not put.

Rows that bind under another regime are asked as well: aboard they are advice.
"""

import json
from pathlib import Path

CATALOGUES = Path(__file__).resolve().parent.parent / "resources" / "requirements"
FILES = ("usage.json", "solas-passenger.json")


def catalogue():
    rows = []
    for name in FILES:
        rows += json.loads((CATALOGUES / name).read_text(encoding="utf-8"))["rows"]
    return rows


def quarterly_rows():
    upkeep = json.loads((CATALOGUES / "maintenance.json").read_text(encoding="utf-8"))["upkeep"]
    return next(set(u["covers"]) for u in upkeep if u["id"] == "quarterly")


def is_listed(door, place):
    """SOLAS II-2/9.4.1.1.5, 20.2.2.3. A door that is kept locked is found locked."""
    return (
        (
            place in ("zone-bulkhead", "galley", "stairway", "special-category")
            or door.special_category
        )
        and not (door.watertight and door.power)
        and door.normally != "locked"
    )


_TRAITS = {
    "power_operated": lambda d: d.power,
    "remote_release": lambda d: bool(d.release_groups),
    "hold_back": lambda d: d.hold_back,
    "designed_to_reopen": lambda d: d.designed_to_reopen,
    "hose_port": lambda d: d.hose_port,
    "escape_route": lambda d: d.escape_route,
    "sill_in_frame": lambda d: d.sill_in_frame,
    "latch": lambda d: d.latch,
    "watertight": lambda d: d.watertight,
    "weathertight": lambda d: d.weathertight,
    "escape_trunk": lambda d: d.escape_trunk,
    "faces_embarkation": lambda d: d.faces_embarkation,
    "locked": lambda d: d.normally == "locked",
}


def _bounds_category_a(boundary, vessel):
    """Category 6 of fire tables of eleven, 12 of fourteen, which a main galley is of too; what is
    unknown counts as asked."""
    if not boundary.spaces:
        return boundary.place == "machinery"
    spaces = boundary.spaces.split()
    if boundary.place == "galley" and spaces.count("12") == 1:
        return False
    return ("12" if vessel.passengers > 36 else "6") in spaces


def _holds(condition, door, boundary, vessel):
    place = boundary.place
    for key, wanted in condition.items():
        if key == "kinds":
            met = door.kind in wanted
        elif key == "regimes":
            met = vessel.regime in wanted
        elif key == "division":
            met = boundary.division == wanted
        elif key == "places":
            met = place in wanted
        elif key == "special_category":
            met = (door.special_category or place == "special-category") == wanted
        elif key == "category_a":
            met = _bounds_category_a(boundary, vessel) == wanted
        elif key == "over_36":
            met = (vessel.passengers > 36) == wanted
        elif key == "listed":
            met = is_listed(door, place) == wanted
        elif key == "class":
            met = wanted == "any" or door.fire_class.startswith(wanted)
        elif key == "boundary_class":  # by the plan; without one by the door itself
            met = (boundary.required or door.fire_class).startswith(wanted)
        elif key == "installed_from":
            met = door.installed >= wanted  # ISO days sort as text
        else:
            met = _TRAITS[key](door) == wanted  # an unknown condition must not pass in silence
        if not met:
            return False
    return True


def _is_asked(row, door, boundary, vessel):
    wanted, exempt = row.get("applies"), row.get("exempt", ())
    other_date = vessel.keel_laid < row.get("keel_from", "") and row["other_dates"] == "not-asked"
    return (
        not other_date
        and (not wanted or any(_holds(c, door, boundary, vessel) for c in wanted))
        and not any(_holds(c, door, boundary, vessel) for c in exempt)
    )


def rows_of(door, boundary, vessel, rows):
    """The rows asked of this door, in the catalogue's order."""
    return [r for r in rows if _is_asked(r, door, boundary, vessel)]
