"""How an invented door moves: its closing time, alarm and wear, the same each time it is asked.

Every door gets its own habits from its number: a change to one door leaves the others as they were.
Times in seconds, rates in m/s.
"""

import random

SPREAD = 0.002  # one run against the next, of the time taken


def bell(rng, spread):
    """A draw about 0, near enough normal: twelve uniforms added (Irwin and Hall). Random.gauss goes
    through the machine's own logarithm and cosine, whose last bit is not the same everywhere."""
    return (sum(rng.random() for _ in range(12)) - 6.0) * spread


class Habits:
    def __init__(self, vessel_name, door):
        rng = random.Random(f"{vessel_name}, habits of {door.number}")
        self.rate = rng.uniform(0.128, 0.172)
        self.time_s = rng.uniform(14.0, 25.0)
        self.first_leaf = rng.uniform(0.55, 0.72)  # share of the time until the first leaf is home
        self.lead_s = rng.uniform(6.0, 8.6)
        self.alarm_tail_s = rng.uniform(0.7, 1.8)
        self.gap_mm = float(rng.choice((5, 6, 6, 7, 7, 8, 8, 9)))
        self.reopen_m = rng.choice((0.35, 0.4, 0.45, 0.5, 0.6, 0.7))
        # A door in eight wears: its closer or its drive loses a little every year.
        wears = rng.random() < 0.125
        self.drift = rng.uniform(0.025, 0.05) if wears else rng.uniform(-0.006, 0.006)
        self.quicker = rng.random() < 0.6  # a leaking closer closes sooner, a dry rail later


def closing_s(door, habits, years, finding):
    """Of one run `years` after the first record; a finding's own figure stands before the habit."""
    if door.kind == "sliding":
        if finding.rate:
            return door.opening_m / finding.rate
        time_s = door.opening_m / habits.rate
    elif finding.time_s:
        return finding.time_s
    else:
        time_s = habits.time_s
    wear = 1 - habits.drift * years if habits.quicker else 1 + habits.drift * years
    return time_s * wear


def events_of_run(door, remote, habits, time_s, finding, rng):
    """(mark, seconds after the first sound or movement) in the order they happen, for a run that
    lasts time_s from first movement to shut. Follows core/evidence/run_sequence."""
    alarmed = remote and (door.alarm or door.kind == "sliding" or door.power)
    start = 0.0
    events = []
    if alarmed:
        start = (finding.lead_s or habits.lead_s) + bell(rng, 0.05)
        events.append(("alarm-on", 0.0))
    events.append(("moves", start))
    if finding.sticks:
        return events
    if door.kind == "double":
        events.append(("first-home", start + habits.first_leaf * time_s + bell(rng, 0.1)))
        events.append(("second-home", start + time_s))
    else:
        if door.kind == "sliding" and rng.random() < 0.5:
            events.append(("half-way", start + time_s * (0.5 + bell(rng, 0.006))))
        events.append(("shut", start + time_s))
    if alarmed:
        tail = -finding.alarm_early_s if finding.alarm_early_s else habits.alarm_tail_s
        events.append(("alarm-off", start + time_s + tail))
    return sorted(events, key=lambda event: event[1])
