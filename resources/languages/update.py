#!/usr/bin/env python3
"""Brings the translation files up to the sources: what the program says, and what the data says.

    resources/languages/update.py           (or: cmake --build build/sanitized --target update_translations)
    resources/languages/update.py --gaps    how many texts of each context are not translated yet
    resources/languages/update.py --terms   texts that do not say a term as glossary.csv says it
                                            (--terms fr: of one language)

New texts come in empty and "unfinished", texts that nobody says any more go out, and what is
translated stays. The data's words (catalogue, fire tables, upkeep, exercises) stand in context
"Catalogue", by which ui/words/catalogue_words.h looks them up. A translation made by machine stays
"unfinished", which builds it in all the same, until a speaker of the trade has read it.
"""
import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path
from xml.etree import ElementTree

from terms import findings

root = Path(__file__).resolve().parents[2]
languages = ("es", "fr", "id")
notice = ("<!-- Made by machine. To be checked by a speaker who knows fire doors aboard ship; until "
          "then every translation stays unfinished. -->")
lupdate = os.environ.get("LUPDATE", "/usr/lib/qt6/bin/lupdate")


def words_of_rows(rows):
    for row in rows:
        for field in ("words", "question", "look_for", "left_open"):
            yield row.get(field, "")
        yield from words_of_rows(row.get("variants", []))


def words_of_data():
    """Every English text of the data that a screen shows, once, in the order of the files."""
    for file in sorted((root / "resources/requirements").glob("*.json")):
        data = json.loads(file.read_text("utf-8"))
        yield from words_of_rows(data.get("rows", []))
        yield from words_of_rows(data.get("variants", []))
        yield data["deference"]
        for profile in data.get("profiles", []):
            for field in ("ships", "read_in", "not_read"):
                yield profile.get(field, "")
        for taken in data.get("takes_in", []):
            yield taken.get("left_open", "")
            yield taken.get("over_36_left_open", "")
        for task in data.get("upkeep", []):
            yield task["words"]
    tables = json.loads((root / "resources/boundaries/fire_tables.json").read_text("utf-8"))
    for categories in tables["category_lists"].values():
        for category in categories:
            yield category["name"]
            yield from category.get("examples", [])
    for table in tables["tables"]:
        yield from table.get("notes", {}).values()
    for file in sorted((root / "resources/practice/exercises").glob("*.json")):
        exercise = json.loads(file.read_text("utf-8"))
        yield exercise["title"]
        yield exercise.get("words", "")


def gaps():
    for code in languages:
        file = ElementTree.parse(root / f"resources/languages/latchround_{code}.ts")
        for context in file.iter("context"):
            empty = [m for m in context.iter("message") if not m.findtext("translation")]
            if empty:
                print(f"{code}  {context.findtext('name')}: {len(empty)} of "
                      f"{len(list(context.iter('message')))}")
    return 0


def terms(codes):
    for code in codes:
        found = list(findings(code))
        for context, english, translated, what in found:
            print(f"{code}  {context}: {what}\n    {english}\n    {translated}")
        print(f"{code}  {len(found)} findings")
    return 0


def main():
    if sys.argv[1:] == ["--gaps"]:
        return gaps()
    if sys.argv[1:2] == ["--terms"]:
        return terms(sys.argv[2:] or languages)
    said = dict.fromkeys(text for text in words_of_data() if text)
    with tempfile.TemporaryDirectory() as folder:
        listed = Path(folder) / "catalogue.h"
        # A JSON string with its letters as they are is a C++ string.
        listed.write_text("".join(
            f'QT_TRANSLATE_NOOP("Catalogue", {json.dumps(text, ensure_ascii=False)})\n'
            for text in said), "utf-8")
        files = [str(root / f"resources/languages/latchround_{code}.ts") for code in languages]
        # No places in the sources: a moved line would change every file.
        done = subprocess.run(
            [lupdate, "-silent", "-no-obsolete", "-locations", "none", "-source-language", "en",
             "-disable-heuristic", "similartext",  # a text that was changed is translated anew
             str(root / "ui"), str(root / "app/desktop"), str(root / "app/report"), folder, "-I", str(root), "-ts", *files],
            check=False)
    for file in map(Path, files):
        text = file.read_text("utf-8")
        if notice not in text:  # lupdate leaves comments out
            file.write_text(text.replace("<!DOCTYPE TS>\n", f"<!DOCTYPE TS>\n{notice}\n"), "utf-8")
    return done.returncode


if __name__ == "__main__":
    sys.exit(main())
