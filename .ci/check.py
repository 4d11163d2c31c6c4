"""Every check of the kit, each run to its end whatever the others say; `make test` calls it.

    python .ci/check.py                   all parts
    python .ci/check.py browser types     these parts
    python .ci/check.py --once            no file of tests gets a second try

The parts stand in two rows that run side by side: the long one of all tests without a browser, and beside it those that
use one core only, or mostly wait, as pages in a browser do. What a part prints is shown as it comes, its name before
each line, and kept in out/checks/<part>.log. At the end stands what failed, what each part took, and on the last line
how many checks passed. A part is added by a line in `PARTS`.

What needs a kernel, a browser or a server may run out of time where the machine is busy with something else. Files of
tests in which something failed are therefore run once more, whole and alone, when all else has ended. What fails again
has failed. What passes then is named at the end: it is a fault still, of the kit or of the test, that only a busy
machine shows. `--once` takes the second try away; so the figures in DEVELOPERS.md are made.
"""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
import threading
import time
import xml.etree.ElementTree as ElementTree
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
OUT = ROOT / "out" / "checks"
PYTHON = sys.executable
PYTEST = (PYTHON, "-m", "pytest")
FORKED_PYTEST = (PYTHON, "tests/forked_kernels.py", "pytest")
NO_NOTEBOOKS = ("-p", "no:nbval")  # what runs notebooks as tests takes two seconds to load, in each process
NOTEBOOKS = tuple(sorted(str(path.relative_to(ROOT)) for path in (ROOT / "example_notebooks").glob("*.ipynb")))
CORES = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1
# Whole files in the order that tests/conftest.py puts them in. One process more than there are cores: a test that waits
# for a server, a kernel or a build that is killed leaves its core to another.
AGAIN_AT_MOST = 8
"""Files with failures; where there are more, the machine is not what ails them."""
EVERY_CORE = ("-n", str(CORES + 1), "--dist", "loadfile", "--no-loadscope-reorder")


@dataclass(frozen=True)
class Part:
    """A part of the check: a command that exits with 0 when all is well. `counted`: pytest's, which tells how many
    tests there were; any other command is one check. Parts of one `row` follow one another."""

    name: str
    what: str
    command: tuple[str, ...]
    counted: bool = True
    row: int = 0
    again: bool = False


PARTS = (
    Part("style", "ruff check", (PYTHON, "-m", "ruff", "check", "."), counted=False, row=1),
    Part("format", "ruff format", (PYTHON, "-m", "ruff", "format", "--check", "."), counted=False, row=1),
    Part("types", "mypy", (PYTHON, "-m", "mypy", "kit"), counted=False, row=1),
    Part("doctests", "examples in docstrings", (*PYTEST, *NO_NOTEBOOKS, "-q", "--doctest-modules", "kit"), row=1),
    Part(
        "notebooks",
        "example notebooks, every cell",
        (*FORKED_PYTEST, "-v", "--nbval-lax", "--nbval-current-env", "--nbval-cell-timeout=600", *NOTEBOOKS),
        row=1,
    ),
    Part(
        "tests",
        "everything without a browser",
        (*PYTEST, *NO_NOTEBOOKS, "-q", "--ignore=tests/browser", *EVERY_CORE, "--durations=15"),
        again=True,
    ),
    Part(
        "browser",
        "JupyterLab, lessons' pages, classes and booklets in Chromium",
        (*PYTEST, *NO_NOTEBOOKS, "-v", "tests/browser"),
        row=1,
        again=True,
    ),
)


@dataclass
class Outcome:
    """What came of a part: its exit status, seconds by the clock and of work, tests by what became of them."""

    part: Part
    status: int = -1
    clock: float = 0.0
    work: float = 0.0
    passed: int = 0
    failed: int = 0
    skipped: int = 0
    named: list[str] = field(default_factory=list)
    passed_alone: list[str] = field(default_factory=list)

    @property
    def files(self) -> list[str]:
        """The files of tests in which something failed."""
        found = (re.match(r"(?:FAILED|ERROR) ([^\s:]+\.py)", line) for line in self.named)
        return sorted({each[1] for each in found if each})


def environment() -> dict[str, str]:
    """What the parts inherit: hypothesis repeats one search, and the code is compiled once for all the processes that a
    part starts (kernels, commands), some hundred; where Python is asked to leave nothing beside the code, it leaves it
    in out/."""
    inherited = {**os.environ, "KIT_HYPOTHESIS": os.environ.get("KIT_HYPOTHESIS", "check")}
    if inherited.pop("PYTHONDONTWRITEBYTECODE", ""):
        inherited.setdefault("PYTHONPYCACHEPREFIX", str(OUT / "bytecode"))
    return inherited


_speaking = threading.Lock()
_running: set[int] = set()


def say(text: str) -> None:
    with _speaking:
        print(text, flush=True)


def run(part: Part) -> Outcome:
    """Run a part to its end."""
    outcome = Outcome(part)
    report = OUT / f"{part.name}.xml"
    report.unlink(missing_ok=True)
    command = [*part.command, *([f"--junitxml={report}"] if part.counted else [])]
    say(f"== {part.name}: {part.what}")
    began = time.monotonic()
    with (OUT / f"{part.name}.log").open("w", encoding="utf-8") as log:
        # In a session of its own, so that whatever it started can be ended with it.
        child = subprocess.Popen(
            command,
            cwd=ROOT,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            errors="replace",
            start_new_session=True,
            env=environment(),
        )
        _running.add(child.pid)
        assert child.stdout is not None
        for line in child.stdout:
            log.write(line)
            say(f"{part.name:>9} | {line.rstrip()}")
            if line.startswith(("FAILED ", "ERROR ")):
                outcome.named.append(line.rstrip())
        _, status, used = os.wait4(child.pid, 0)
        child.returncode = outcome.status = os.waitstatus_to_exitcode(status)
        _running.discard(child.pid)
    outcome.clock, outcome.work = time.monotonic() - began, used.ru_utime + used.ru_stime
    count(outcome, report)
    return outcome


def try_again(outcome: Outcome) -> None:
    """Run the files in which something failed once more, alone. Where all of them pass, the part has passed."""
    files = outcome.files
    if outcome.status != 1 or not outcome.part.again or not 0 < len(files) <= AGAIN_AT_MOST:
        return
    say(f"== {outcome.part.name}: once more, alone: {' '.join(files)}")
    second = run(Part(f"{outcome.part.name}-again", "what failed", (*PYTEST, *NO_NOTEBOOKS, "-v", *files)))
    outcome.clock, outcome.work = outcome.clock + second.clock, outcome.work + second.work
    if second.status != 0:
        outcome.named += [f"alone: {line}" for line in second.named]
        return
    outcome.passed_alone = outcome.named
    outcome.named = []
    outcome.status, outcome.passed, outcome.failed = 0, outcome.passed + outcome.failed, 0


def count(outcome: Outcome, report: Path) -> None:
    """Read how many tests there were; a part that ended without a report, or badly without naming a test, is one that
    failed."""
    if outcome.part.counted:
        try:
            suites = list(ElementTree.parse(report).getroot().iter("testsuite"))
        except (OSError, ElementTree.ParseError):
            suites = []
        told = {
            key: sum(int(suite.get(key, 0)) for suite in suites) for key in ("tests", "failures", "errors", "skipped")
        }
        outcome.failed, outcome.skipped = told["failures"] + told["errors"], told["skipped"]
        outcome.passed = max(told["tests"] - outcome.failed - outcome.skipped, 0)
    elif outcome.status == 0:
        outcome.passed = 1
    if outcome.status != 0 and outcome.failed == 0:
        outcome.failed = 1


def row(parts: list[Part], outcomes: list[Outcome]) -> None:
    for part in parts:
        outcome = run(part)
        outcomes.append(outcome)
        well = "passed" if outcome.status == 0 else f"FAILED ({ending(outcome.status)})"
        say(f"== {part.name} {well} after {minutes(outcome.clock)}")


def ending(status: int) -> str:
    """How a command ended: by itself, or by a signal from outside."""
    return f"exit status {status}" if status >= 0 else f"ended by {signal.Signals(-status).name}"


def minutes(seconds: float) -> str:
    return f"{int(seconds) // 60}:{int(seconds) % 60:02d}"


def stop(*_: object) -> None:
    """Take along what is still running."""
    for pid in tuple(_running):
        try:
            os.killpg(pid, signal.SIGTERM)
        except ProcessLookupError:
            pass
    os._exit(130)


def main(names: list[str]) -> int:
    once = "--once" in names
    names = [name for name in names if name != "--once"]
    known = [part.name for part in PARTS]
    if strange := [name for name in names if name not in known]:
        print(f"There is no part {', '.join(strange)}. Parts: {', '.join(known)}.", file=sys.stderr)
        return 2
    chosen = [part for part in PARTS if not names or part.name in names]
    OUT.mkdir(parents=True, exist_ok=True)
    for number in (signal.SIGINT, signal.SIGTERM):
        signal.signal(number, stop)
    began = time.monotonic()
    outcomes: list[Outcome] = []
    rows = [[part for part in chosen if part.row == number] for number in sorted({part.row for part in chosen})]
    threads = [threading.Thread(target=row, args=(parts, outcomes), daemon=True) for parts in rows]
    for thread in threads:
        thread.start()
    for thread in threads:
        while thread.is_alive():  # in pieces, so that Ctrl+C is heard
            thread.join(0.5)
    for outcome in () if once else outcomes:
        try_again(outcome)
    return summary(sorted(outcomes, key=lambda one: chosen.index(one.part)), len(chosen), time.monotonic() - began)


def summary(outcomes: list[Outcome], wanted: int, clock: float) -> int:
    """Say what came of it all; the last line is the count."""
    bad = [one for one in outcomes if one.status != 0]
    print()
    for one in bad:
        print(f"== {one.part.name} failed ({ending(one.status)}): out/checks/{one.part.name}.log")
        print("".join(f"   {line}\n" for line in one.named), end="")
    for one in outcomes:
        if one.passed_alone:
            print(f"== {one.part.name}: failed while all ran, passed alone; out/checks/{one.part.name}.log")
            print("".join(f"   {line}\n" for line in one.passed_alone), end="")
    print(f"== {'part':<11}{'outcome':<9}{'clock':>7}{'work':>7}{'passed':>8}{'failed':>8}{'skipped':>9}")
    for one in outcomes:
        well = "passed" if one.status == 0 else "FAILED"
        print(
            f"   {one.part.name:<11}{well:<9}{minutes(one.clock):>7}{minutes(one.work):>7}"
            f"{one.passed:>8}{one.failed:>8}{one.skipped:>9}"
        )
    print(f"   {'all':<20}{minutes(clock):>7}{minutes(sum(one.work for one in outcomes)):>7}")
    lost = wanted - len(outcomes)  # a part whose row broke off
    failed = sum(one.failed for one in outcomes) + lost
    skipped = sum(one.skipped for one in outcomes)
    print(f"Failed: {', '.join(one.part.name for one in bad)}" if bad else "Every part passed.")
    print(f"{sum(one.passed for one in outcomes)} passed, {failed} failed, {skipped} skipped", flush=True)
    return 1 if bad or lost else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
