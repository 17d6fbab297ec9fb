"""The builds of door the invented yard fits, each as a function that makes one door of it.

Openings and masses are believable, not measured: hinged 0.8 to 1.0 m and 55 to 95 kg a leaf, double
1.4 to 2.0 m, sliding 1.2 to 1.8 m and 120 to 260 kg.
"""

from arrangement import Door

SLIDING_MAKER = "Sundelmar Works"
HINGED_MAKER = "Harrowvik Joinery"
HEIGHT_M = 2.05  # of every leaf; gives mass from area


def _leaf_mass(leaf_width_m, kg_per_m2, rng):
    return float(round(leaf_width_m * HEIGHT_M * kg_per_m2 + rng.uniform(-3, 3)))


def _door(at, kind, fire_class, opening_m, mass, installed, **rest):
    deck, x_m, y_m, boundary = at
    rest.setdefault("maker", SLIDING_MAKER if kind == "sliding" else HINGED_MAKER)
    return Door(
        deck,
        x_m,
        y_m,
        boundary,
        kind,
        fire_class,
        opening_m,
        mass,
        installed,
        plate=fire_class,
        **rest
    )


def sliding(at, fire_class, groups, rng, installed, **rest):
    """Power-operated, stands open in a wide corridor, with alarm and safety edge."""
    opening = rng.choice((1.20, 1.30, 1.40, 1.40, 1.50, 1.60, 1.80))
    mass = 10.0 * round(_leaf_mass(opening, 60, rng) / 10)
    traits = {"designed_to_reopen": True, "escape_route": True, "hose_port": True, **rest}
    return _door(
        at,
        "sliding",
        fire_class,
        opening,
        mass,
        installed,
        power=True,
        hold_back=True,
        release_groups=groups,
        alarm=True,
        sill_in_frame=False,
        latch=False,
        normally="open",
        **traits
    )


def held(at, fire_class, groups, rng, installed, **rest):
    """Single leaf, held open by a magnet that the control station lets go."""
    opening = rng.choice((0.80, 0.85, 0.90, 0.90, 0.95, 1.00))
    traits = {"escape_route": True, "hose_port": True, "sill_in_frame": False, **rest}
    return _door(
        at,
        "single",
        fire_class,
        opening,
        _leaf_mass(opening, 40, rng),
        installed,
        hold_back=True,
        release_groups=groups,
        normally="open",
        **traits
    )


def double(at, fire_class, groups, rng, installed, **rest):
    """Double leaf with closing order, both leaves held open by magnets."""
    opening = rng.choice((1.40, 1.50, 1.60, 1.80, 2.00))
    traits = {"escape_route": True, "hose_port": True, "sill_in_frame": False, **rest}
    return _door(
        at,
        "double",
        fire_class,
        opening,
        _leaf_mass(opening / 2, 42, rng),
        installed,
        hold_back=True,
        release_groups=groups,
        normally="open",
        **traits
    )


def shut(at, fire_class, rng, installed, **rest):
    """Single leaf that stands closed and is let go by hand."""
    opening = rng.choice((0.80, 0.80, 0.85, 0.90, 0.95))
    return _door(at, "single", fire_class, opening, _leaf_mass(opening, 40, rng), installed, **rest)


def swing(at, fire_class, rng, installed, **rest):
    """Double-swing leaf of a galley: no latch, swings through to both sides."""
    opening = rng.choice((0.90, 0.95, 1.00))
    return _door(
        at,
        "double-swing",
        fire_class,
        opening,
        _leaf_mass(opening, 36, rng),
        installed,
        sill_in_frame=False,
        latch=False,
        **rest
    )


def to_car_deck(at, fire_class, rng, installed, **rest):
    """Power-operated and automatic, straight onto a special category space: SOLAS II-2/9.4.1.1.5.13
    asks neither alarm nor remote release of it."""
    opening = rng.choice((1.20, 1.30, 1.40))
    mass = 10.0 * round(_leaf_mass(opening, 62, rng) / 10)
    return _door(
        at,
        "sliding",
        fire_class,
        opening,
        mass,
        installed,
        power=True,
        latch=False,
        designed_to_reopen=True,
        escape_route=True,
        **rest
    )


def cabin(at, rng, installed):
    opening = rng.choice((0.65, 0.70, 0.80))
    mass = _leaf_mass(opening, 24, rng)
    return _door(at, "single", "B-15", opening, mass, installed, sill_in_frame=False, maker="")


def exterior(at, fire_class, rng, installed, **rest):
    opening = rng.choice((0.80, 0.90, 0.95))
    traits = {"escape_route": True, "weathertight": True, **rest}
    return _door(
        at, "single", fire_class, opening, _leaf_mass(opening, 44, rng), installed, **traits
    )
