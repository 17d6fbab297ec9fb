"""The published schemas against the files they speak of, by a general-purpose JSON Schema library
(jsonschema), and against files that they must refuse.

Usage: check_schemas.py SOURCE_FOLDER LATCHROUND_CLI
"""

import copy
import json
import subprocess
import sys
import tempfile
from pathlib import Path

from jsonschema import Draft202012Validator, FormatChecker

SOURCE = Path(sys.argv[1])
CLI = sys.argv[2]
SCHEMAS = SOURCE / "resources" / "schema"
FAULTS = []


def load(path):
    return json.loads(Path(path).read_text(encoding="utf-8"))


def faults_of(schema_name, document):
    schema = load(SCHEMAS / schema_name)
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema, format_checker=FormatChecker())
    return [f"{'/'.join(map(str, e.path))}: {e.message[:200]}" for e in validator.iter_errors(document)]


def accepts(schema_name, document, what):
    FAULTS.extend(f"{what} is refused by {schema_name}: {f}" for f in faults_of(schema_name, document))


def refuses(schema_name, document, what):
    if not faults_of(schema_name, document):
        FAULTS.append(f"{schema_name} accepts {what}")


def changed(document, *path_and_value):
    *path, last, value = path_and_value
    result = copy.deepcopy(document)
    at = result
    for step in path:
        at = at[step]
    at[last] = value
    return result


def graded(document, *options):
    with tempfile.NamedTemporaryFile("w", suffix=".json", encoding="utf-8") as file:
        json.dump(document, file)
        file.flush()
        done = subprocess.run([CLI, "grade", file.name, *options], capture_output=True, check=False)
        return done.returncode, done.stdout.decode()


def check_catalogues():
    name = "catalogue.schema.json"
    for path in sorted((SOURCE / "resources" / "requirements").glob("*.json")):
        accepts(name, load(path), path.name)
    solas = load(SOURCE / "resources" / "requirements" / "solas-passenger.json")
    refuses(name, changed(solas, "rows", 0, "severity", "huge"), "an unknown severity")
    refuses(name, changed(solas, "rows", 0, "colour", "red"), "a field it does not name")
    refuses(name, changed(solas, "rows", 3, "low", "ten"), "a limit in quotes")
    refuses(name, changed(solas, "rows", 0, "applies", []), "an empty list of conditions")
    refuses(name, {k: v for k, v in solas.items() if k != "issuer"}, "a file without an issuer")


def check_flag_rules():
    name = "flag-rules.schema.json"
    row = {"id": "hinged-time", "change": "tighten", "high": 30, "cite": "order 7"}
    rules = {"edition": "2026", "issuer": "Port of Skerry", "rows": [row]}
    accepts(name, rules, "a tightened row")
    refuses(name, changed(rules, "rows", 0, "change", "loosen"), "an unknown change")
    refuses(name, changed(rules, "rows", 0, {"id": "x", "change": "tighten"}), "no limit")


def check_tables():
    name = "fire-tables.schema.json"
    tables = load(SOURCE / "resources" / "boundaries" / "fire_tables.json")
    accepts(name, tables, "fire_tables.json")
    refuses(name, changed(tables, "tables", 0, "cells", "1-1", "A-61"), "an unknown class")
    refuses(name, changed(tables, "tables", 0, "cells", "one", "A-60"), "an unknown cell")


def check_grades():
    door = {
        "id": "5-32", "kind": "sliding", "class": "A-60", "place": "zone-bulkhead", "spaces": [3, 3],
        "division": "bulkhead", "power_operated": True, "remote_release": True,
        "designed_to_reopen": True, "hose_port": True, "escape_route": True, "normally": "open",
        "installed": "2015-03-01", "opening_m": 1.40, "sill_in_frame": False,
        "observations": {"one-person": "yes"}, "measured": {"reopen-distance": 0.6, "a-gap": 9},
        "runs": [{"release": "remote", "heel_deg": 0.0, "marks": {
            "alarm-on": 0.0, "moves": 6.4, "half-way": 10.9, "shut": 15.7, "alarm-off": 15.8}}],
    }
    vessel = {"regime": "solas-passenger", "passengers": 1200, "built": "2015-03-01",
              "sprinklers": True}
    for regime in ("solas-passenger", "us-h", "us-k", "other"):
        document = {"vessel": {**vessel, "regime": regime}, "doors": [door]}
        if regime.startswith("us"):
            document["doors"][0] = {k: v for k, v in door.items() if k != "spaces"}
        accepts("grade-input.schema.json", document, f"the grade file of {regime}")
        code, text = graded(document)
        if code != 0:
            FAULTS.append(f"grade ends with {code} for {regime}")
        else:
            accepts("grade-output.schema.json", json.loads(text), f"the grades of {regime}")
    bad = {"vessel": vessel, "doors": [{**door, "kind": "round"}]}
    refuses("grade-input.schema.json", bad, "an unknown kind of door")
    if graded(bad)[0] != 2:
        FAULTS.append("grade does not refuse what its schema refuses")


check_catalogues()
check_flag_rules()
check_tables()
check_grades()
print("\n".join(FAULTS) if FAULTS else "every schema holds")
sys.exit(1 if FAULTS else 0)
