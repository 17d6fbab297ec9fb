"""Core, its tests and the reference tests know no Qt: they are built without seeing a header of it, link nothing of
it, and the project can be configured where it is not installed.

Usage: check_core_alone.py SOURCE_FOLDER BUILD_FOLDER
"""

import json
import subprocess
import sys
import tempfile
from pathlib import Path

SOURCE, BUILD = Path(sys.argv[1]), Path(sys.argv[2])


def faults():
    commands = json.loads((BUILD / "compile_commands.json").read_text(encoding="utf-8"))
    for folder in ("core", "tests/core", "tests/reference"):
        alone = [each for each in commands if f" -o {folder}/CMakeFiles/" in each["command"]]
        if not alone:
            yield f"nothing of {folder} was found in {BUILD}"
        for each in alone:
            if "/qt6" in each["command"] or "QT_CORE_LIB" in each["command"]:
                yield f"{each['file']} is compiled with Qt in sight"

    for program in ("tests/core/core_tests", "tests/reference/reference_tests"):
        linked = subprocess.run(["ldd", BUILD / program], capture_output=True, encoding="utf-8", check=True).stdout
        if "libQt" in linked:
            yield f"{program} is linked with Qt"

    with tempfile.TemporaryDirectory() as folder:
        configured = subprocess.run(
            ["cmake", "--preset", "core-only", "-DCMAKE_DISABLE_FIND_PACKAGE_Qt6=ON", "-B", folder],
            cwd=SOURCE, capture_output=True, encoding="utf-8", errors="replace", check=False)
        if configured.returncode:
            yield f"core does not configure without Qt:\n{configured.stderr}"


FAULTS = list(faults())
print("\n".join(FAULTS) if FAULTS else "Core stands alone.")
sys.exit(bool(FAULTS))
