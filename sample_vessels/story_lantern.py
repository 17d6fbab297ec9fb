"""What the walkdowns aboard Vellis Lantern find: two finished annuals, three quarterlies of the
zone bulkheads, and the third annual, which is under way.

The third holds one door for every verdict the program knows; see README.md for their numbers.
"""

from finding import Finding
from walk import Walk, walking_order

PEOPLE = [
    ("Linnet Orrowby", "surveyor"),
    ("Caspar Venmoor", "second surveyor"),
    ("Astri Holloquist", "chief officer"),
]
JOINED = "2024-11-19 07:40"
CONTROL_STATION = "bridge"

CLASS_NOTE = "Stair 2 requires A-60, the door is A-30; replacement is on the yard list."

FIRST = {
    "7-01": Finding(time_s=14.3),
    "7-05": Finding(deficiencies={"rating": "Door A-30 in an A-60 stairway enclosure."}),
    "7-07": Finding(time_s=12.4),
    "6-03": Finding(
        no=("auto-latch", "latches"),
        deficiencies={"auto-latch": "Second leaf home but not latched; opens when pushed."},
        officer_note="Strike plate refitted the same evening, to be checked on the next walkdown.",
    ),
    "6-07": Finding(rate=0.151),
    "6-08": Finding(rate=0.134),
    "5-04": Finding(rate=0.178),
    "5-07": Finding(
        no=("not-held",),
        judged={"not-held": (True, "Wedge removed, crew told.")},
        note="Rubber wedge found under the leaf; crew use it when loading stores.",
    ),
    "4-03": Finding(
        rate=0.221,
        deficiencies={
            "sliding-rate": "Closes at 0.22 m/s, faster than 0.2 m/s. Drive to be adjusted."
        },
    ),
    "4-14": Finding(
        no=("seals-whole",), judged={"seals-whole": (False, "Seal missing over 300 mm.")}
    ),
    "2-04": Finding(slip="path-clear"),
}

SECOND = {
    "7-01": Finding(time_s=11.5, note="Closer weeps a little; closes faster than last year."),
    "7-05": Finding(note=CLASS_NOTE),
    "7-07": Finding(time_s=11.1),
    "6-04": Finding(
        time_s=15.0, spread=(0.93, 1.0, 1.09), note="Closes unevenly with the ventilation fan running."
    ),
    "6-07": Finding(rate=0.149),
    "6-08": Finding(
        rate=0.116, note="Slower than last year and grates at the after end of the pocket."
    ),
    "5-04": Finding(rate=0.189),
    "4-03": Finding(rate=0.158, note="Drive adjusted in dock, closes quietly."),
    "4-16": Finding(stopped="Two children ran up to the door"),
    "4-10": Finding(
        measured={"reopen-distance": 1.15},
        deficiencies={
            "reopen-distance": "Re-opens 1.15 m from the point of contact, more than 1 m."
        },
    ),
    "4-05": Finding(
        lead_s=4.1,
        deficiencies={"alarm-lead": "Alarm leads the leaf by only 4.1 s, less than 5 s."},
    ),
    "3-01": Finding(
        no=("path-clear",),
        judged={"path-clear": (True, "Lashing chains moved on the spot.")},
    ),
    "2-04": Finding(
        no=("seals-whole",),
        judged={"seals-whole": (False, "Strip painted over along the whole head.")},
    ),
    "1-02": Finding(could_not={"": "Separator being overhauled, space not safe to enter"}),
}

THIRD = {
    "7-01": Finding(
        time_s=8.3,
        no=("closer-sound",),
        judged={"closer-sound": (False, "Oil on the deck under the closer.")},
        deficiencies={
            "hinged-time": "Shuts in 8.3 s, less than 10 s; closer leaks. 11.5 s in 2025."
        },
    ),
    "7-02": Finding(could_not={"": "Painting stage rigged across the door; to be tested in port"}),
    "7-03": Finding(early_tap=True),
    "7-05": Finding(
        deficiencies={"rating": "Door A-30 in an A-60 stairway enclosure, third year."},
        note=CLASS_NOTE,
    ),
    "7-07": Finding(
        time_s=10.03,
        spread=(0.999, 1.0, 1.001),
        note="Three runs, all at about 10 s: for the inspector to decide.",
    ),
    "6-12": Finding(
        no=("latches",),
        judged={"latches": (False, "Closes but does not latch: pushes open with one finger.")},
        deficiencies={"latches": "Latch bolt worn, door pushes open after closing."},
    ),
    "6-09": Finding(
        could_not={"fail-safe": "Engineers could not cut the supply: busy bunkering"}
    ),
    "6-07": Finding(
        rate=0.147,
        no=("pocket-clear",),
        note="Paper cups and a cleaning cloth in the pocket, out of reach from the corridor.",
    ),
    "6-08": Finding(
        rate=0.1,
        sticks="Leaf stopped about 0.4 m short of the frame and stayed there",
        no=("self-closing", "smooth", "rails-clean"),
        could_not={
            "sliding-rate": "Never reached the frame",
            "alarm-holds": "Never reached the frame",
            "alarm-lead": "Only in a void run; to be timed after repair",
        },
        deficiencies={
            "self-closing": "Released remotely, it stops 0.4 m short of the frame and stays open."
        },
        note="0.134 m/s in 2024, 0.116 m/s in 2025; now it does not close.",
        officer_note="Rail bolts loose at the after end of the pocket. Closed by hand and kept "
        "closed, notice posted, bridge watch informed.",
    ),
    "5-01": Finding(slip="path-clear"),
    "5-04": Finding(rate=0.199, spread=(1.0, 1.001)),
}

# The wear of three zone doors, quarter by quarter, on the way to what the third annual finds.
QUARTERS = (
    (
        "2026-02-24 09:00",
        1.27,
        {
            "6-08": Finding(rate=0.114),
            "5-04": Finding(rate=0.190),
            "6-07": Finding(rate=0.150),
            "7-07": Finding(time_s=10.9),
        },
    ),
    (
        "2026-05-26 09:00",
        1.52,
        {
            "6-08": Finding(rate=0.111, note="Grates louder."),
            "5-04": Finding(rate=0.192),
            "6-07": Finding(rate=0.148),
            "7-07": Finding(time_s=10.7),
        },
    ),
    (
        "2026-08-25 09:00",
        1.77,
        {
            "6-08": Finding(rate=0.108),
            "5-04": Finding(rate=0.195),
            "6-07": Finding(rate=0.148),
            "7-07": Finding(time_s=10.4),
            "4-04": Finding(
                no=("path-clear",), judged={"path-clear": (True, "Baggage trolley taken away.")}
            ),
        },
    ),
)


LATCH_2024 = ("6-03", "auto-latch")
RATE_2024 = ("4-03", "sliding-rate")
CLASS = ("7-05", "rating")
EDGE_2025 = ("4-10", "reopen-distance")
ALARM_2025 = ("4-05", "alarm-lead")
LATCH_2026 = ("6-12", "latches")
STUCK_2026 = ("6-08", "self-closing")

# What the chief officer records beside the walks: what becomes of each deficiency, lamps, papers.
RECORDS = (
    (
        "2024-11-22 18:20",
        2,
        "rectification",
        {"deficiency": LATCH_2024, "what": "Strike plate refitted.", "by": "Tolly Brackmere"},
    ),
    (
        "2024-11-22 18:31",
        2,
        "deficiency-terms",
        {
            "deficiency": CLASS,
            "due": "2026-06-30",
            "interim": "Kept closed; stair patrolled every hour at night.",
            "assigned": "Astri Holloquist",
        },
    ),
    (
        "2025-02-11 09:40",
        2,
        "rectification",
        {"deficiency": RATE_2024, "what": "Drive adjusted in dock.", "by": "Ines Quillaran"},
    ),
    (
        "2025-06-17 15:05",
        2,
        "deficiency-terms",
        {"deficiency": CLASS, "action": "18", "ground_for_detention": False},
    ),
    (
        "2025-12-02 16:10",
        2,
        "rectification",
        {
            "deficiency": EDGE_2025,
            "what": "Travel stop of the safety edge reset.",
            "by": "Ines Quillaran",
        },
    ),
    ("2025-12-02 16:14", 2, "awaiting-retest", {"deficiency": EDGE_2025, "remark": "any time"}),
    (
        "2026-01-15 11:30",
        2,
        "rectification",
        {
            "deficiency": ALARM_2025,
            "what": "Alarm relay set to 6 s.",
            "by": "Ines Quillaran",
        },
    ),
    (
        "2026-11-25 17:10",
        2,
        "deficiency-terms",
        {
            "deficiency": STUCK_2026,
            "due": "2026-11-27",
            "interim": "Closed by hand and kept closed, notice posted, bridge watch informed.",
            "assigned": "Ines Quillaran",
        },
    ),
    (
        "2026-11-25 17:16",
        2,
        "deficiency-terms",
        {
            "deficiency": LATCH_2026,
            "severity": "critical",
            "due": "2026-12-01",
            "interim": "Fire patrol every hour.",
            "assigned": "Tolly Brackmere",
        },
    ),
    ("2026-11-25 18:05", 2, "upkeep-done", {"upkeep": "weekly", "remark": "One lamp changed."}),
    ("2026-11-25 18:11", 2, "certificate-seen", {"valid_until": "2027-03-14"}),
)


def _quarterlies(a):
    zone_doors = [d for d in a.doors if a.boundary(d.boundary).place == "zone-bulkhead"]
    order = walking_order(zone_doors, a)
    return [
        Walk(
            f"quarterly {begins[:7]}",
            "quarterly",
            begins,
            years,
            "quarterly: zone bulkheads",
            "local",
            order,
            remark="Every zone door operated locally.",
            findings=findings,
        )
        for begins, years, findings in QUARTERS
    ]


def walks(a):
    order = walking_order(a.doors, a)
    return [
        Walk(
            "annual 2024",
            "annual",
            "2024-11-19 08:05",
            0.0,
            "all doors",
            "full",
            order,
            remark="All doors seen; open items handed to the chief officer.",
            heel_deg=0.3,
            findings=FIRST,
        ),
        Walk(
            "annual 2025",
            "annual",
            "2025-11-18 08:10",
            1.0,
            "all doors",
            "full",
            order,
            remark="One space not entered; two leaves worn, see notes.",
            heel_deg=0.5,
            findings=SECOND,
        ),
        *_quarterlies(a),
        Walk(
            "annual 2026",
            "annual",
            "2026-11-24 08:15",
            2.0,
            "all doors",
            "full",
            order,
            done=26,
            heel_deg=0.4,
            findings=THIRD,
        ),
    ]
