"""What is out of the ordinary with one door on one walk. A vessel's story is a table of these."""

from dataclasses import dataclass, field


@dataclass
class Finding:
    no: tuple = ()  # rows answered no; "one-person/2" answers no for side two only
    rate: float = 0.0  # sliding, m/s
    time_s: float = 0.0  # hinged, first movement to shut
    spread: tuple = ()  # factors on the time, run by run; also how many closing runs there are
    lead_s: float = 0.0
    alarm_early_s: float = 0.0  # the alarm stops this long before the leaf is home
    sticks: str = ""  # it never shuts: what the void run says
    stopped: str = ""  # somebody called stop in the first remote run: why
    plate: str = ""  # read at the door: "none", "illegible" or a class
    measured: dict = field(default_factory=dict)
    could_not: dict = field(default_factory=dict)  # row: reason; row "" is the whole door
    judged: dict = field(default_factory=dict)  # row: (satisfactory, reason)
    deficiencies: dict = field(default_factory=dict)  # row: text for the master
    note: str = ""
    officer_note: str = ""  # written by the chief officer
    slip: str = ""  # row first answered no by a slip, then corrected
    early_tap: bool = False  # first mark of the first run tapped too early and taken back


NOTHING = Finding()
