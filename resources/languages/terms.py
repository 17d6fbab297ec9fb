"""Whether the translations say the terms of the trade as glossary.csv says them, where the rule for reading a line
is. tests/tour/glossary.cpp reads it by the same rule."""
import csv
import re
from pathlib import Path
from xml.etree import ElementTree

folder = Path(__file__).resolve().parent


def in_one_line(text):
    return " ".join((text or "").replace("\u2019", "'").split())


def pattern(words, end=""):
    return re.compile(rf"\b(?:{words}){end}", re.IGNORECASE) if words else None


def glossary():
    with open(folder / "glossary.csv", encoding="utf-8", newline="") as file:
        yield from csv.DictReader(line for line in file if not line.startswith("#"))


def findings(code):
    """(context, English, translation, what is wrong) of each term that one language says otherwise."""
    terms = [(term["english"], pattern(term["english"], r"\b"), term[code], pattern(term[code]),
              pattern(term[code + "-"])) for term in glossary()]
    for context in ElementTree.parse(folder / f"latchround_{code}.ts").iter("context"):
        for message in context.iter("message"):
            left = english = in_one_line(message.findtext("source"))
            translated = in_one_line(message.findtext("translation"))
            if not translated:
                continue
            for name, said, wanted, right, wrong in terms:
                left, found = said.subn(" ", left)
                if not found:
                    continue
                says = wrong and wrong.search(translated)
                lacks = right and not right.search(translated)
                if says or lacks:
                    yield (context.findtext("name"), english, translated,
                           f"{name}: " + "; ".join(
                               ([f'says "{says[0]}"'] if says else []) +
                               ([f"wants {wanted}"] if lacks else [])))
