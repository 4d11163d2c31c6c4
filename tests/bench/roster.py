"""Personal sets, measured: what one takes of a core, what a worker takes of memory, and what a second worker is worth.

    .venv/bin/python tests/bench/roster.py                                    # 50 full sets, 1,000 sets of pages
    .venv/bin/python tests/bench/roster.py --full 6 --pages 40 --over 12      # fewer, on a machine that is busy
    .venv/bin/python tests/bench/roster.py --notebook dune_skirt

Sets are counted by seconds of work (user and system of the kernels and typesetters), which another program beside them
hardly changes; by the clock too, with how busy the machine was. Two workers over one is by the clock alone, both run in
turn. The bodies lie between the sizes of the chart, from a fixed seed.
"""

from __future__ import annotations

import argparse
import os
import random
import shutil
import sys
import tempfile
import threading
import time
from pathlib import Path

import psutil

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from kit.body import workshop_chart  # noqa: E402
from kit.roster.order import Order  # noqa: E402
from kit.roster.run import run_roster  # noqa: E402


class Watch:
    """Looks at the processes this one started, four times a second: the most any took of memory, MB, and all their
    seconds of work."""

    def __enter__(self) -> Watch:
        self.most: dict[int, float] = {}
        self.work: dict[int, float] = {}
        self._on = True
        self._thread = threading.Thread(target=self._look, daemon=True)
        self._thread.start()
        return self

    def _look(self) -> None:
        me = psutil.Process()
        while self._on:
            for each in me.children(recursive=True):
                try:
                    with each.oneshot():
                        used = each.cpu_times()
                        self.work[each.pid] = used.user + used.system
                        self.most[each.pid] = max(self.most.get(each.pid, 0.0), each.memory_info().rss / 1e6)
                except psutil.Error:
                    pass
            time.sleep(0.25)

    def __exit__(self, *given: object) -> None:
        self._on = False
        self._thread.join()


def table(count: int, path: Path) -> Path:
    chance, sizes = random.Random("roster"), workshop_chart().bodies()
    lines = ["name,bust,waist,hips"]
    for number in range(count):
        one, two, share = chance.choice(sizes), chance.choice(sizes), chance.random()
        girths = [one[name] + share * (two[name] - one[name]) for name in ("bust_girth", "waist_girth", "hip_girth")]
        lines.append(f"P{number}," + ",".join(f"{girth / 10:.1f}" for girth in girths))
    path.write_text("\n".join(lines) + "\n")
    return path


def made(folder: Path, notebook: Path, count: int, booklet: str, workers: int) -> tuple[float, float, float, int]:
    """(seconds by the clock after the notebook had run, seconds of work, MB of the largest worker, sets) of a run."""
    out = folder / f"{booklet}-{count}-{workers}"
    order = Order(notebook, booklet, timeout=3600)
    begun: list[float] = []
    before: list[float] = []
    with Watch() as watch:

        def done(number: int, total: int, left: float) -> None:
            if not begun:  # the first set waits for the notebook to be run, which is not what is measured
                begun.append(time.monotonic())
                before.append(sum(watch.work.values()))

        roster = run_roster(table(count + 1, folder / "class.csv"), order, out, workers=workers, done=done)
        clock = time.monotonic() - begun[0]
    work = sum(watch.work.values()) - before[0]
    size = sum(path.stat().st_size for path in out.rglob("*") if path.is_file()) / 1e6
    print(f"   {roster.made} sets made, {len(roster.refused)} refused; {size:.1f} MB on disk", flush=True)
    shutil.rmtree(out)
    return clock, work, max(watch.most.values()), roster.made - 1


def main() -> None:
    """Measures and prints."""
    asked = argparse.ArgumentParser()
    asked.add_argument("--notebook", default="tideline_wrap_top")
    asked.add_argument("--full", type=int, default=50, help="full sets: booklet, pages, cloth to buy")
    asked.add_argument("--pages", type=int, default=1000, help="sets of pages alone")
    asked.add_argument("--over", type=int, default=40, help="sets of pages made by one worker, then by two (0: not)")
    given = asked.parse_args()
    with tempfile.TemporaryDirectory() as made_in:
        folder = Path(made_in)
        shutil.copytree(ROOT / "example_notebooks", folder / "lessons")
        notebook = folder / "lessons" / f"{given.notebook}.ipynb"
        for booklet, count, what in (("a4", given.full, "full sets"), ("none", given.pages, "sets of pages")):
            if count:
                clock, work, memory, sets = made(folder, notebook, count, booklet, 1)
                load = os.getloadavg()[0]
                print(f"{given.notebook}, {sets} {what}: {work / sets:.2f} s of work each,", end=" ")
                print(f"{60 * sets / work:.1f} a minute and core; {clock / sets:.2f} s by the clock", end=" ")
                print(f"(load {load:.1f}); a worker takes at most {memory:.0f} MB", flush=True)
        if given.over:
            one, *_ = made(folder, notebook, given.over, "none", 1)
            two, *_ = made(folder, notebook, given.over, "none", 2)
            print(
                f"two workers over one, {given.over} sets of pages: {one / two:.2f} (load {os.getloadavg()[0]:.1f}, "
                f"{os.cpu_count()} cores)"
            )


if __name__ == "__main__":
    main()
