"""Writes facts as JSON Lines: ids are UUIDv7 of the very millisecond of `at`, strictly rising."""

import json
import random
from datetime import datetime, timedelta, timezone


def utc_ms(text, offset_minutes):
    """Of "2026-11-24 08:20" by the ship's clock."""
    there = datetime.strptime(text, "%Y-%m-%d %H:%M").replace(tzinfo=timezone.utc)
    return int(there.timestamp()) * 1000 - offset_minutes * 60_000


def _rfc3339(ms, offset_minutes):
    there = datetime(1970, 1, 1) + timedelta(milliseconds=ms, minutes=offset_minutes)
    sign = "-" if offset_minutes < 0 else "+"
    hours, minutes = divmod(abs(offset_minutes), 60)
    return (
        f"{there:%Y-%m-%dT%H:%M:%S}.{there.microsecond // 1000:03d}{sign}{hours:02d}:{minutes:02d}"
    )


class Recorder:
    def __init__(self, seed, offset_minutes):
        self._rng = random.Random(seed)
        self._beside = random.Random(seed + ", beside the walks")
        self._offset = offset_minutes
        self._last_ms = 0
        self.lines = []
        self.deficiencies = {}  # (door, row): id of the newest

    def _id(self, ms, rng):
        value = ms << 80 | rng.getrandbits(80)
        value = value & ~(0xF << 76) | 0x7 << 76  # version 7
        value = value & ~(0x3 << 62) | 0x2 << 62  # variant of RFC 9562
        text = f"{value:032x}"
        return "-".join((text[:8], text[8:12], text[12:16], text[16:20], text[20:]))

    def record(self, ms, person, device, kind, body, supersedes=None, beside=False):
        """Adds a fact at `ms` (UTC) and returns its id. A person of None joins as himself.

        What is recorded beside the walks has ids of its own lot: one more of them changes no other.
        """
        if ms <= self._last_ms:
            raise ValueError(f"{kind} at {ms} is not after the fact before it")
        self._last_ms = ms
        fact_id = self._id(ms, self._beside if beside else self._rng)
        fact = {
            "id": fact_id,
            "at": _rfc3339(ms, self._offset),
            "person": person or fact_id,
            "device": device,
        }
        if supersedes:
            fact["supersedes"] = supersedes
        fact["kind"] = kind
        fact.update({name: value for name, value in body.items() if value is not None})
        if kind == "deficiency":
            self.deficiencies[body["door"], body["requirement"]] = fact_id
        self.lines.append(json.dumps(fact, ensure_ascii=False, separators=(",", ":")))
        return fact_id

    def text(self):
        return "".join(line + "\n" for line in self.lines)
