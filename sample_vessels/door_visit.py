"""One door on one walk: the answers, gauges and timed runs, in the order a surveyor takes them."""

import random

from asked import quarterly_rows
from closing import SPREAD, Habits, bell, closing_s, events_of_run

# The questions of core/safety/cautions.cpp, each confirmed before the control station releases.
CAUTIONS = (
    "announced",
    "people-clear",
    "watch-posted",
    "station-ready",
    "words-agreed",
    "path-free",
)

# Rows that complete runs show by themselves, and the runs each needs; answered only without them.
SHOWN_BY_RUNS = {
    "any-run": {"any"},
    "remote-run": {"remote"},
    "alarm-mark": {"remote"},
    "local-runs": {"local-1", "local-2"},
}

# Nothing to release on a listed door that always stands closed.
NOT_FOR_CLOSED = ("remote-release", "local-release", "reopen-local")

# What a quarterly walk tries.
QUARTERLY_ROWS = quarterly_rows()


class Visit:
    def __init__(
        self, recorder, aboard, walk, walkdown, door, place, rows, clock, boot_ms, finding
    ):
        self.recorder, self.walk, self.walkdown = recorder, walk, walkdown
        self.door, self.place, self.rows = door, place, rows
        self.clock, self.boot_ms, self.finding = clock, boot_ms, finding
        vessel = aboard.arrangement.vessel.name
        self.rng = random.Random(f"{vessel}, {walk.name}, {door.number}")
        self.habits = Habits(vessel, door)
        self.officer = aboard.ids[2]
        self.person = aboard.ids[1] if self.rng.random() < 0.25 else aboard.ids[0]
        self.complete = set()  # ways of release with a complete closing run, and "any"
        self._check_story()

    def _check_story(self):
        """A finding may only speak of rows that are asked of this door."""
        asked = {row["id"] for row in self.rows} | {""}
        f = self.finding
        named = {name.split("/")[0] for name in f.no} | {f.slip}
        for table in (f.measured, f.could_not, f.judged, f.deficiencies):
            named |= set(table)
        if not named <= asked:
            raise ValueError(f"{self.walk.name}, {self.door.number}: not asked: {named - asked}")

    def record(self):
        if "" in self.finding.could_not:
            self._add("could-not-test", {"requirement": "", "reason": self.finding.could_not[""]})
            self._words()
            return
        self._step("look")
        self._runs()
        self._step("release")
        self._step("function")
        for row, reason in self.finding.could_not.items():
            self._add("could-not-test", {"requirement": row, "reason": reason})
        for row, (good, reason) in self.finding.judged.items():
            self._add("judgement", {"requirement": row, "satisfactory": good, "reason": reason})
        self._words()

    def _words(self):
        for row, text in self.finding.deficiencies.items():
            earlier = self.recorder.deficiencies.get((self.door.number, row))
            self._add(
                "deficiency", {"requirement": row, "text": text, "repeats": earlier}, seconds=20
            )
        if self.finding.note:
            self._add("note", {"text": self.finding.note}, seconds=20)
        if self.finding.officer_note:
            self._add("note", {"text": self.finding.officer_note}, seconds=90, person=self.officer)

    def _add(self, kind, body, seconds=4.0, person=None, supersedes=None, of_run=False):
        self.clock.pass_s(seconds * self.rng.uniform(0.7, 1.4))
        whole = body if of_run else {"walkdown": self.walkdown, "door": self.door.number, **body}
        return self.recorder.record(
            self.clock.ms, person or self.person, "tablet-1", kind, whole, supersedes
        )

    # Answers and gauges

    def _step(self, step):
        for row in self.rows:
            if row["step"] == step and row["id"] not in self.finding.could_not:
                self._row(row)

    def _row(self, row):
        name, check = row["id"], row["check"]
        failed = name in self.finding.no or name + "/2" in self.finding.no
        wanted = (
            self.walk.depth != "local"
            or failed
            or name == self.finding.slip
            or name in self.finding.measured
            or (self.walk.depth == "local" and name in QUARTERLY_ROWS)
            or (check == "plate-agrees" and self.finding.plate)
        )
        if not wanted:
            return
        if check == "plate-agrees":
            self._plate()
        elif check in ("seen", "seen-both-sides"):
            self._answer(row)
        elif row.get("source") == "gauge":
            self._add(
                "measured-value",
                {"requirement": name, "value": self._gauge(name), "unit": row["unit"]},
                seconds=12,
            )

    def _plate(self):
        reads = self.finding.plate or self.door.plate or "none"
        if reads in ("none", "illegible"):
            self._add("plate-read", {"state": reads})
        else:
            self._add("plate-read", {"state": "read", "fire_class": reads})

    def _answer(self, row):
        name = row["id"]
        closed = (
            self.place in ("zone-bulkhead", "galley", "stairway") and not self.door.release_groups
        )
        shown = SHOWN_BY_RUNS.get(row.get("source"), {"never"}) <= self.complete
        if shown and name not in self.finding.no:
            return
        usual = "n/a" if closed and name in NOT_FOR_CLOSED else "yes"
        sides = ("one", "two") if row["check"] == "seen-both-sides" else (None,)
        for side in sides:
            no = name in self.finding.no or (side == "two" and name + "/2" in self.finding.no)
            body = {"requirement": name, "side": side, "answer": "no" if no else usual}
            if name == self.finding.slip:
                slip = self._add("observation", {**body, "answer": "no"})
                self._add("observation", body, seconds=3, supersedes=slip)
            else:
                self._add("observation", body)

    def _gauge(self, name):
        if name in self.finding.measured:
            return self.finding.measured[name]
        if name == "a-gap":
            return self.habits.gap_mm
        if name == "b-gap":
            return self.habits.gap_mm + 8.0
        if name == "b-vent":
            return 0.03 if self.habits.gap_mm > 6 else 0.0
        if name == "reopen-distance":
            return self.habits.reopen_m
        if name == "release-height":
            return 950.0
        if name == "release-force":
            return 40.0
        raise ValueError(f"no gauge reading is known for {name}")

    # Runs

    def _releases(self):
        if self.place in ("cabin", "exterior"):
            return []
        if not self.door.release_groups:
            releases = ["let-go"] * (2 if self.walk.depth == "full" else 1)
        elif self.walk.depth == "local":
            releases = ["local-1", "local-2"]
        elif self.walk.depth == "once":
            releases = ["remote"]
        else:
            releases = ["remote", "local-1", "local-2"]
        if self.finding.spread:
            ways = releases + ["let-go"] * 3
            releases = ways[: len(self.finding.spread)]
        return releases

    def _runs(self):
        time_s = closing_s(self.door, self.habits, self.walk.years, self.finding)
        for count, release in enumerate(self._releases()):
            if self.finding.sticks and count > 0:
                break
            factor = 1 + bell(self.rng, SPREAD)
            if self.finding.spread:
                factor = self.finding.spread[count]
            if release == "remote" and self.finding.stopped:
                self._run(release, time_s, count, stop=True)
            self._run(release, time_s * factor, count)
        if self.walk.depth == "full" and self.door.designed_to_reopen:
            self._contact()

    def _start(self, kind, release):
        if release == "remote":
            for question in CAUTIONS:
                self._add("caution-answered", {"question": question, "confirmed": True}, seconds=6)
        return self._add(
            "run-started",
            {"run_kind": kind, "release": release, "heel_deg": self.walk.heel_deg},
            seconds=10,
        )

    def _end(self, run, outcome="complete", reason=""):
        self._add("run-ended", {"run": run, "outcome": outcome, "reason": reason}, 2.5, of_run=True)

    def _run(self, release, time_s, count, stop=False):
        run = self._start("closing", release)
        self.clock.pass_s(self.rng.uniform(4, 12))
        if self.finding.early_tap and count == 0:
            slip = self._mark(run, "alarm-on" if self.door.alarm else "moves")
            self.clock.pass_s(self.rng.uniform(2, 3))
            self.recorder.record(
                self.clock.ms,
                self.person,
                "tablet-1",
                "taken-back",
                {"reason": "tapped too early"},
                supersedes=slip,
            )
            self.clock.pass_s(self.rng.uniform(4, 6))
        begun_ms = self.clock.ms
        for mark, at_s in events_of_run(
            self.door, release == "remote", self.habits, time_s, self.finding, self.rng
        ):
            thumb_s = max(-0.08, min(0.08, bell(self.rng, 0.035)))
            if stop and mark not in ("alarm-on", "moves"):
                break
            self.clock.ms = max(self.clock.ms + 1, begun_ms + round((at_s + thumb_s) * 1000))
            self._mark(run, mark)
        if stop:
            self._end(run, "stopped", self.finding.stopped)
        elif self.finding.sticks:
            self.clock.pass_s(self.rng.uniform(30, 40))
            self._end(run, "void", self.finding.sticks)
        else:
            self._end(run)
            self.complete |= {release, "any"}

    def _mark(self, run, mark):
        """The handler reads the steady clock first; the window system's stamp is a few ms older."""
        steady_ns = (self.clock.ms - self.boot_ms) * 1_000_000 - self.rng.randrange(
            300_000, 900_000
        )
        event_ms = (steady_ns // 1_000_000 - self.rng.randrange(2, 10)) % 2**32
        return self.recorder.record(
            self.clock.ms,
            self.person,
            "tablet-1",
            "mark",
            {
                "run": run,
                "mark": mark,
                "event_ms": event_ms,
                "steady_ns": steady_ns,
                "input_device": "touch",
            },
        )

    def _contact(self):
        run = self._start("contact", "let-go")
        self.clock.pass_s(self.rng.uniform(4, 7))
        self._mark(run, "touched")
        self.clock.pass_s(self.rng.uniform(0.3, 0.8))
        self._mark(run, "stopped")
        self._end(run)
