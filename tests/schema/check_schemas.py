"""The published schemas against the files they speak of, by a general-purpose JSON Schema library
(jsonschema), and against files that they must refuse.

Usage: check_schemas.py SOURCE_FOLDER LATCHROUND_CLI
"""

import copy
import json
import shutil
import subprocess
import sys
import tempfile
import zipfile
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
    refuses(name, changed(solas, "rows", 0, "applies", [{}]), "a condition without a field")
    refuses(name, changed(solas, "rows", 0, "applies", [{"x-why": 7}]), "a condition of a remark")
    accepts(name, changed(solas, "rows", 0, "x-why", 7), "a row with a remark")
    refuses(name, {k: v for k, v in solas.items() if k != "issuer"}, "a file without an issuer")
    refuses(name, changed(solas, "profiles", 0, "ships", ""), "a profile that names no ships")
    refuses(name, changed(solas, "profiles", 0, "built_from", "July"), "a profile of no day")
    canada = load(SOURCE / "resources" / "requirements" / "canada.json")
    refuses(name, changed(canada, "variants", 0, {"of": "hose-port"}), "a variant for nobody")
    taken = {"of": "solas-passenger", "for": "canada", "as": "rule", "keel_from": "2017-02-03"}
    refuses(name, changed(canada, "takes_in", 0, taken), "a taken text silent on older ships")


def check_flag_rules():
    name = "flag-rules.schema.json"
    row = {"id": "hinged-time", "change": "tighten", "high": 30, "cite": "order 7"}
    rules = {"edition": "2026", "issuer": "Port of Skerry", "rows": [row]}
    accepts(name, rules, "a tightened row")
    accepts(name, changed(rules, "$schema", "flag-rules"), "rules that name their schema")
    refuses(name, changed(rules, "rows", 0, "change", "loosen"), "an unknown change")
    refuses(name, changed(rules, "rows", 0, {"id": "x", "change": "tighten"}), "no limit")
    margin = {k: v for k, v in row.items() if k != "high"}
    for approximate, check in (({"slow": 0, "fast": 0}, accepts), ({"slow": 1, "fast": 0}, refuses),
                               ({"slow": 0.1}, refuses)):
        check(name, changed(rules, "rows", 0, {**margin, "approximate": approximate}), f"{approximate}")


def check_tables():
    name = "fire-tables.schema.json"
    tables = load(SOURCE / "resources" / "boundaries" / "fire_tables.json")
    accepts(name, tables, "fire_tables.json")
    accepts(name, changed(tables, "tables", 0, "x-why", 7), "a table with a remark")
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
    for regime in ("solas-passenger", "us-h", "us-k", "canada-convention", "canada", "canada-day",
                   "eu-inland", "large-yacht", "other"):
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


def check_handover():
    name = "handover.schema.json"
    with tempfile.TemporaryDirectory() as folder:
        csv = SOURCE / "sample_vessels" / "ternwick-lass" / "register.csv"
        register, file = f"{folder}/v.db", f"{folder}/h.zip"
        for command in (["register", "import", csv, "--into", register],
                        ["handover", "export", register, "--to", file]):
            if subprocess.run([CLI, *command], capture_output=True, check=False).returncode != 0:
                FAULTS.append(f"{command[0]} {command[1]} does not work")
                return
        sheet = json.loads(zipfile.ZipFile(file).read("handover.json"))
    accepts(name, sheet, "handover.json")
    refuses(name, changed(sheet, "version", sheet["version"] + 1), "a newer form")
    refuses(name, changed(sheet, "colour", "red"), "a field it does not name")
    refuses(name, changed(sheet, "key", "ab"), "half a key")


def cli(*arguments):
    done = subprocess.run([CLI, *map(str, arguments)], capture_output=True, check=False)
    if done.returncode != 0:
        FAULTS.append(f"{arguments[0]} ends with {done.returncode}: {done.stderr.decode()[:200]}")
    return done.stdout.decode()


def check_reports():
    name = "report.schema.json"
    for vessel in ("vellis-lantern", "ternwick-lass"):
        with tempfile.TemporaryDirectory() as folder:
            register, file = Path(folder) / "vessel.db", Path(folder) / "report.json"
            sample = SOURCE / "sample_vessels" / vessel
            cli("register", "import", sample / "register.csv", "--into", register,
                "--history", sample / "history.jsonl")
            cli("report", register, "--to", file)
            survey = load(file)
            accepts(name, survey, f"the survey of {vessel}")
            accepts("grade-output.schema.json", survey, f"the survey of {vessel}")
            cli("report", register, "--kind", "work-list", "--to", file, "--replace")
            accepts(name, load(file), f"the work list of {vessel}")
            accepts(name, json.loads(cli("items", register, "--all", "--json")),
                    f"the items of {vessel}")
            refuses(name, {k: v for k, v in survey.items() if k != "snapshot"}, "no snapshot")
            if survey["items"]:
                refuses(name, changed(survey, "items", 0, "action", "99"), "an unknown action")
                refuses(name, changed(survey, "items", 0, "state", "lost"), "an unknown state")


def check_rules():
    name = "rules.schema.json"
    vessel = SOURCE / "sample_vessels" / "vellis-lantern"
    with tempfile.TemporaryDirectory() as folder:
        register = Path(folder) / "v.db"
        cli("register", "import", vessel / "register.csv", "--into", register)
        rules = json.loads(cli("rules", "--json"))
        aboard = json.loads(cli("rules", "--vessel", register, "--json"))
        door = aboard["rows"][0]["aboard"]
        number = next(n for row in aboard["rows"] for n in row["aboard"]["binds"])
        at_door = json.loads(cli("rules", "--vessel", register, "--door", number, "--json"))
    accepts(name, rules, "the rule book")
    accepts(name, aboard, "the rule book of a vessel")
    accepts(name, at_door, "the rule book of a door")
    refuses(name, {k: v for k, v in at_door.items() if k != "vessel"}, "a door of no vessel")
    refuses(name, changed(rules, "rows", 0, "limit", 12), "a limit that is no text")
    refuses(name, changed(rules, "rows", 0, "status", "heard"), "an unknown status")
    refuses(name, changed(aboard, "rows", 0, "aboard", {**door, "maybe": []}), "an unknown standing")
    refuses(name, changed(at_door, "rows", 0, "at_door", "asked", "perhaps"), "an unknown answer")


def check_comparison():
    name = "rules-compare.schema.json"
    resources = SOURCE / "resources"
    vessel = SOURCE / "sample_vessels" / "ternwick-lass"
    with tempfile.TemporaryDirectory() as folder:
        shutil.copytree(resources / "requirements", Path(folder) / "requirements")
        file = Path(folder) / "requirements" / "solas-passenger.json"
        solas = load(file)
        for row in solas["rows"]:
            if row["id"] == "no-hook":
                row["status"] = "advice"
        solas["rows"] = [row for row in solas["rows"] if row["id"] != "a-gap"]
        file.write_text(json.dumps(solas), encoding="utf-8")
        register = Path(folder) / "v.db"
        cli("register", "import", vessel / "register.csv", "--into", register,
            "--history", vessel / "history.jsonl")
        compared = json.loads(cli("rules", "compare", resources, folder, "--vessel", register, "--json"))
        same = json.loads(cli("rules", "compare", resources, resources, "--json"))
    accepts(name, compared, "a comparison")
    accepts(name, same, "a comparison of a catalogue with itself")
    if not any(row["change"] == "gone" for row in compared["rows"]):
        FAULTS.append("a row taken out is not gone")
    if same["rows"] or "doors" in same:
        FAULTS.append("a catalogue differs from itself")
    refuses(name, changed(compared, "rows", 0, "change", "moved"), "an unknown change")
    refuses(name, {k: v for k, v in compared.items() if k != "doors"}, "a vessel without doors")
    refuses(name, changed(compared, "rows", 0, "fields", []), "a row that does not differ")


def check_exercises():
    name = "exercise.schema.json"
    exercises = SOURCE / "resources" / "practice" / "exercises"
    for path in sorted(exercises.glob("*.json")):
        accepts(name, load(path), path.name)
    sliding, exam = load(exercises / "sliding.json"), load(exercises / "exam.json")
    refuses(name, changed(sliding, "doors", 0, "faults", ["rust"]), "an unknown fault")
    refuses(name, changed(sliding, "pass_percent", 80), "a mark of no exam")
    accepts(name, changed(sliding, "doors", 0, "x-why", 7), "a door with a remark")
    refuses(name, {k: v for k, v in exam.items() if k != "pass_percent"}, "an exam without a mark")
    with tempfile.TemporaryDirectory() as folder:
        password, file = Path(folder) / "password", Path(folder) / "locked.json"
        password.write_text("seven grey herons", encoding="utf-8")
        cli("practice", "lock", exercises / "sliding.json", "--output", file,
            "--password-from", password)
        locked = load(file)
    accepts(name, locked, "a locked exercise")
    refuses(name, changed(locked, "doors", 0, "faults", ["hook"]), "a locked exercise's fault")
    refuses(name, changed(locked, "locked", "salt", "ab"), "half a salt")


def check_answers():
    name = "practice-answers.schema.json"
    door = {"plate": "none", "answers": {"not-held": "no", "local-release": {"one": "yes"}},
            "measured": {"reopen-distance": 0.4},
            "judgements": {"seals-whole": {"satisfactory": False, "reason": "painted"}},
            "runs": [{"release": "remote", "marks": {"alarm-on": 2.1, "moves": 9.2}, "stopped_s": 12},
                     {"kind": "contact", "marks": {"touched": 4, "stopped": 4.5}}]}
    document = {"person": "A. Ahn", "doors": {"P-06": door}}
    accepts(name, document, "answers")
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "answers.json"
        file.write_text(json.dumps(document), encoding="utf-8")
        cli("practice", "--exercise", "sliding", "--seed", 1, "--answers", file)
    refuses(name, changed(document, "doors", "P-06", "plate", "A-61"), "an unknown class")
    refuses(name, changed(document, "doors", "P-06", "runs", 0, {"marks": {"shut": 2}}),
            "a closing without its release")


check_catalogues()
check_flag_rules()
check_tables()
check_grades()
check_handover()
check_reports()
check_rules()
check_comparison()
check_exercises()
check_answers()
print("\n".join(FAULTS) if FAULTS else "every schema holds")
sys.exit(1 if FAULTS else 0)
