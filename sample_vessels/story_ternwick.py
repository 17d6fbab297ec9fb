"""Three annual walkdowns aboard Ternwick Lass: nine doors, an hour or so each."""

from finding import Finding
from walk import Walk, walking_order

PEOPLE = [
    ("Isbel Thornquay", "surveyor"),
    ("Odo Marrable", "second surveyor"),
    ("Wenna Skarfell", "chief officer"),
]
JOINED = "2024-10-08 08:40"
CONTROL_STATION = "wheelhouse"

FIRST = {
    "2-01": Finding(time_s=16.1),
    "2-04": Finding(
        no=("not-held",),
        judged={"not-held": (True, "Crate moved, crew told.")},
        note="Bottle crate held the servery door open.",
    ),
    "3-02": Finding(
        no=("sill-sound",), judged={"sill-sound": (False, "Sill plate loose, a trip hazard.")}
    ),
}

SECOND = {
    "2-01": Finding(time_s=13.4),
    "2-03": Finding(
        no=("leaf-order",),
        judged={"leaf-order": (False, "Selector arm bent.")},
        note="Second leaf closes first two times out of three.",
    ),
    "1-01": Finding(
        plate="illegible", judged={"plate": (True, "Class confirmed by the maker's certificate.")}
    ),
}

THIRD = {
    "2-02": Finding(
        no=("latches",),
        judged={"latches": (False, "Bolt does not reach the strike.")},
        deficiencies={"latches": "Closes but does not latch; zone bulkhead 1/2."},
    ),
    "3-01": Finding(no=("path-clear",), note="Lifejacket box in the way of the leaf."),
}


def walks(a):
    order = walking_order(a.doors, a)
    return [
        Walk(
            "annual 2024",
            "annual",
            "2024-10-08 09:05",
            0.0,
            "all doors",
            "full",
            order,
            remark="All doors seen.",
            heel_deg=0.2,
            channel="VHF 17",
            findings=FIRST,
        ),
        Walk(
            "annual 2025",
            "annual",
            "2025-10-14 09:00",
            1.0,
            "all doors",
            "full",
            order,
            remark="All doors seen; selector of 2-03 ordered.",
            heel_deg=0.6,
            channel="VHF 17",
            findings=SECOND,
        ),
        Walk(
            "annual 2026",
            "annual",
            "2026-11-23 09:10",
            2.1,
            "all doors",
            "full",
            order,
            done=6,
            heel_deg=0.3,
            channel="VHF 17",
            findings=THIRD,
        ),
    ]
