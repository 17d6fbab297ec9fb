"""No two sources of one library give a name to different things.

The release preset joins sources, some to a batch, and which ones it joins depends on nothing meaningful. So
here all sources of a library are read by the compiler as one: a name that two of them share is an error at any time,
not on the day when a new file moves the batches.

Usage: check_names.py BUILD_FOLDER
"""

import json
import re
import shlex
import subprocess
import sys
import tempfile
from collections import defaultdict
from concurrent.futures import ThreadPoolExecutor
from os import cpu_count
from pathlib import Path

BUILD = Path(sys.argv[1]).resolve()


def sources_of(file):
    """A source, or those that the build has joined in one."""
    if not Path(file).is_relative_to(BUILD):
        return [file]
    if Path(file).parent.name != "Unity":
        return []
    return re.findall(r'^#include "(.*)"$', Path(file).read_text(encoding="utf-8"), re.MULTILINE)


def libraries():
    """Target -> its own sources and the command that compiles one, for what is shipped."""
    found = defaultdict(list)
    for entry in json.loads((BUILD / "compile_commands.json").read_text(encoding="utf-8")):
        target = re.search(r"-o (core|ui|app)\S*?/CMakeFiles/(\S+?)\.dir/", entry["command"])
        if target:
            found[target[2]] += [(source, entry) for source in sources_of(entry["file"])]
    return {name: sources for name, sources in found.items() if len(sources) > 1}


def faults_of(name, sources):
    entry = sources[0][1]
    words = shlex.split(entry["command"])
    words = words[: words.index("-o")]  # what follows names the source and what is made of it
    with tempfile.NamedTemporaryFile("w", suffix=".cpp", encoding="utf-8") as joined:
        joined.write("".join(f'#include "{source}"\n' for source, _ in sources))
        joined.flush()
        # What the sanitizers find they find in the sources alone; warnings were given there.
        read = subprocess.run(words + [joined.name, "-fsyntax-only", "-w"], cwd=entry["directory"],
                              capture_output=True, encoding="utf-8", errors="replace", check=False)
    return f"{name}, {len(sources)} sources read as one:\n{read.stderr}" if read.returncode else None


def main():
    found = libraries()
    if not {"latchround_core", "latchround_ui", "latchround_report"} <= set(found):
        sys.exit(f"{BUILD}/compile_commands.json does not name the sources of core, ui and app.")
    with ThreadPoolExecutor(cpu_count()) as pool:
        faults = [fault for fault in pool.map(lambda item: faults_of(*item), found.items()) if fault]
    print("\n".join(faults) if faults else f"{len(found)} libraries read whole, no name is shared.")
    sys.exit(bool(faults))


if __name__ == "__main__":
    main()
