"""A vessel as built, and the register CSV it is written as.

Holds no rule of the trade: it only knows the columns, their order and how a cell is printed.
Lengths are metres, masses kilograms; x runs forward from the aft perpendicular, y to starboard.
"""

from dataclasses import dataclass, field

VESSEL_COLUMNS = ("name", "number", "regime", "passengers", "keel_laid", "sprinklers", "length_m")
DECK_COLUMNS = ("number", "name", "height_m")
ZONE_COLUMNS = ("number", "aft_m", "forward_m", "area_m2")
BOUNDARY_COLUMNS = (
    "id",
    "place",
    "zone_aft",
    "zone_forward",
    "x_m",
    "required",
    "division",
    "spaces",
)
DOOR_COLUMNS = (
    "number",
    "deck",
    "x_m",
    "y_m",
    "boundary",
    "kind",
    "class",
    "plate",
    "opening_m",
    "leaf_mass_kg",
    "power_operated",
    "hold_back",
    "release_groups",
    "alarm",
    "designed_to_reopen",
    "hose_port",
    "escape_route",
    "sill_in_frame",
    "latch",
    "watertight",
    "weathertight",
    "escape_trunk",
    "special_category",
    "faces_embarkation",
    "normally",
    "installed",
    "maker",
)


@dataclass
class Vessel:
    name: str
    number: str
    regime: str
    passengers: int
    keel_laid: str
    sprinklers: bool
    length_m: float


@dataclass
class Deck:
    number: str
    name: str
    height_m: float


@dataclass
class Zone:
    number: str
    aft_m: float
    forward_m: float
    breadth_m: float = 0.0  # of its largest deck; 0 where the area is not on record

    @property
    def area(self):
        return f"{(self.forward_m - self.aft_m) * self.breadth_m:.0f}" if self.breadth_m else ""


@dataclass
class Boundary:
    id: str
    place: str
    zone_aft: str
    zone_forward: str
    x_m: float
    required: str  # by the approved plan; empty where only the fire tables say
    spaces: str = ""  # their categories in the ship's fire tables
    division: str = "bulkhead"


@dataclass
class Door:
    deck: str
    x_m: float
    y_m: float
    boundary: str
    kind: str
    fire_class: str
    opening_m: float
    leaf_mass_kg: float
    installed: str
    number: str = ""
    plate: str = ""
    power: bool = False
    hold_back: bool = False
    release_groups: tuple = ()
    alarm: bool = False
    designed_to_reopen: bool = False
    hose_port: bool = False
    escape_route: bool = False
    sill_in_frame: bool = True
    latch: bool = True
    watertight: bool = False
    weathertight: bool = False
    escape_trunk: bool = False
    special_category: bool = False
    faces_embarkation: bool = False
    normally: str = "closed"
    maker: str = ""


@dataclass
class Arrangement:
    vessel: Vessel
    decks: list
    zones: list
    boundaries: list
    doors: list = field(default_factory=list)

    def boundary(self, boundary_id):
        return next(b for b in self.boundaries if b.id == boundary_id)

    def door(self, number):
        return next(d for d in self.doors if d.number == number)


def number_doors(doors, decks):
    """Paints the numbers: deck, hyphen, then odd to starboard and on the centreline, even to port,
    counted from aft as cabins are. Returns the doors in the order of deck and number."""
    painted = []
    for deck in decks:
        next_free = {0: 2, 1: 1}
        here = [d for d in doors if d.deck == deck.number]
        for door in sorted(here, key=lambda d: (d.x_m, d.y_m, d.boundary)):
            side = 0 if door.y_m < 0 else 1
            count = next_free[side]
            next_free[side] += 2
            door.number = f"{deck.number}-{count:02d}"
        painted += sorted(here, key=lambda d: int(d.number.split("-")[1]))
    return painted


def _cell(text):
    if any(sign in text for sign in ',"\n\r'):
        return '"' + text.replace('"', '""') + '"'
    return text


def _yes(value):
    return "yes" if value else "no"


def _metres(value):
    text = f"{value:.2f}"
    return "0.00" if text == "-0.00" else text


def _mass(value):
    return f"{value:.3f}".rstrip("0").rstrip(".")


def _table(name, columns, rows):
    lines = [name + ":," + ",".join(columns)]
    lines += [",".join(_cell(cell) for cell in (name, *row)) for row in rows]
    return "\n".join(lines) + "\n"


def _door_row(d):
    return (
        d.number,
        d.deck,
        _metres(d.x_m),
        _metres(d.y_m),
        d.boundary,
        d.kind,
        d.fire_class,
        d.plate,
        _metres(d.opening_m),
        _mass(d.leaf_mass_kg),
        _yes(d.power),
        _yes(d.hold_back),
        " ".join(d.release_groups),
        _yes(d.alarm),
        _yes(d.designed_to_reopen),
        _yes(d.hose_port),
        _yes(d.escape_route),
        _yes(d.sill_in_frame),
        _yes(d.latch),
        _yes(d.watertight),
        _yes(d.weathertight),
        _yes(d.escape_trunk),
        _yes(d.special_category),
        _yes(d.faces_embarkation),
        d.normally,
        d.installed,
        d.maker,
    )


def register_csv(a):
    v = a.vessel
    tables = [
        _table(
            "vessel",
            VESSEL_COLUMNS,
            [
                (
                    v.name,
                    v.number,
                    v.regime,
                    str(v.passengers),
                    v.keel_laid,
                    _yes(v.sprinklers),
                    _metres(v.length_m),
                )
            ],
        ),
        _table("deck", DECK_COLUMNS, [(d.number, d.name, _metres(d.height_m)) for d in a.decks]),
        _table(
            "zone",
            ZONE_COLUMNS,
            [(z.number, _metres(z.aft_m), _metres(z.forward_m), z.area) for z in a.zones],
        ),
        _table(
            "boundary",
            BOUNDARY_COLUMNS,
            [
                (
                    b.id,
                    b.place,
                    b.zone_aft,
                    b.zone_forward,
                    _metres(b.x_m),
                    b.required,
                    b.division,
                    b.spaces,
                )
                for b in a.boundaries
            ],
        ),
        _table("door", DOOR_COLUMNS, [_door_row(d) for d in a.doors]),
    ]
    return "\n".join(tables)
