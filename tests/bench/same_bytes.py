"""The same lesson built by other Pythons, and as another machine would: whether every file is the same to the byte.

    .venv/bin/python tests/bench/same_bytes.py                           # this Python, and as on another machine
    .venv/bin/python tests/bench/same_bytes.py /path/to/venv/bin/python  # other Pythons, with the kit's libraries

"As on another machine" is this one made unlike itself: the kit and the lesson in another folder, another home, time
zone and language, another order of sets, one core, and the C library and numpy kept from the instructions of newer
processors (they have a mathematics of their own for those). A processor of another kind it is not.
"""

from __future__ import annotations

import argparse
import hashlib
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LESSONS = ("ferry_tote", "tideline_wrap_top")
OLDER = "glibc.cpu.hwcaps=-AVX2,-AVX512F,-AVX512VL,-FMA,-FMA4"
PLAIN = "AVX2 FMA3 AVX512F AVX512CD AVX512_SKX X86_V3 X86_V4"
UNLIKE = {"TZ": "Pacific/Auckland", "LC_ALL": "C", "LANG": "C", "PYTHONHASHSEED": "77"}


def built(python: str, kit: Path, lesson: str, out: Path, unlike: dict[str, str]) -> dict[str, str]:
    """SHA-256 of every file of the build of `lesson` with the kit in the folder `kit`."""
    here = {**os.environ, "PYTHONPATH": str(kit), **unlike}
    command = [python, "-m", "kit.cli", "build", str(kit / "example_notebooks" / f"{lesson}.ipynb")]
    command += ["--forms", "a4,letter,html,epub", "--out", str(out)]
    one = (lambda: os.sched_setaffinity(0, {0})) if unlike and hasattr(os, "sched_setaffinity") else None
    subprocess.run(command, check=True, env=here, cwd=kit, stdout=subprocess.DEVNULL, preexec_fn=one)
    files = sorted(path for path in out.rglob("*") if path.is_file())
    return {str(path.relative_to(out)): hashlib.sha256(path.read_bytes()).hexdigest() for path in files}


def version(python: str) -> str:
    asked = "import sys, numpy; print('Python', sys.version.split()[0] + ', numpy', numpy.__version__)"
    return subprocess.run([python, "-c", asked], check=True, capture_output=True, text=True).stdout.strip()


def main() -> int:
    """Builds, compares and prints; 1 where a file differs."""
    asked = argparse.ArgumentParser()
    asked.add_argument("pythons", nargs="*", help="other interpreters, with the kit's libraries")
    asked.add_argument("--keep", type=Path, help="a folder for what is built, to look at it")
    given = asked.parse_args()
    apart = 0
    with tempfile.TemporaryDirectory() as made_in:
        folder = given.keep or Path(made_in)
        other = Path(made_in) / "of another" / "kit"
        for name in ("kit", "templates", "example_notebooks"):
            kept_out = shutil.ignore_patterns("__pycache__", ".*")
            shutil.copytree(ROOT / name, other / name, ignore=kept_out)
        home = other.parent / "home"
        home.mkdir()
        unlike = {**UNLIKE, "HOME": str(home), "GLIBC_TUNABLES": OLDER, "NPY_DISABLE_CPU_FEATURES": PLAIN}
        ways = [(f"{version(sys.executable)}, as on another machine", sys.executable, other, unlike)]
        ways += [(version(python), python, ROOT, {}) for python in given.pythons]
        print(f"Beside {version(sys.executable)}:")
        for lesson in LESSONS:
            first = built(sys.executable, ROOT, lesson, folder / lesson / "first", {})
            for number, (said, python, kit, around) in enumerate(ways):
                files = built(python, kit, lesson, folder / lesson / str(number), around)
                differ = sorted(name for name in first.keys() | files.keys() if first.get(name) != files.get(name))
                apart += len(differ)
                told = f"other in {', '.join(differ)}" if differ else "the same"
                print(f"   {lesson}, {len(files)} files, {said}: {told}", flush=True)
    return 1 if apart else 0


if __name__ == "__main__":
    sys.exit(main())
