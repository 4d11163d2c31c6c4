"""A roster made on a real cluster of two workers, one of which is killed in the middle (https://distributed.dask.org)."""

from __future__ import annotations

import os
import signal
import threading
from collections import Counter
from pathlib import Path

import pytest

from kit.errors import KitError
from kit.roster.order import Order
from kit.roster.run import RECORD, run_roster
from tests.roster.conftest import NAPKIN, napkin_at

distributed = pytest.importorskip("distributed")
dask = pytest.importorskip("dask")
COUNT = 8
# Long enough that a worker is at work when it is killed; the sizes of the chart, which a notebook is run in first, do
# not wait.
TAKES_TIME = """
import time

@lesson.step("Look at it for a while")
def look(front, bust_girth):
    '''Look.'''
    if all(abs(size["bust_girth"] - float(bust_girth)) > 0.5 for size in lesson.sizes.bodies()):
        time.sleep(0.2)
"""


@pytest.mark.slow
@pytest.mark.skipif(os.name != "posix", reason="sends a signal")
def test_a_worker_that_is_killed_loses_nothing_and_doubles_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    patient = NAPKIN.replace(
        'units="cm",', 'units="cm", time_limit=120,'
    )  # on a busy machine a fifth of a second is long
    monkeypatch.setattr("tests.roster.conftest.NAPKIN", patient)
    notebook = napkin_at(tmp_path, TAKES_TIME)
    table = tmp_path / "class.csv"
    table.write_text("name,bust\n" + "".join(f"P{i},{84.3 + 3 * i:.1f}\n" for i in range(COUNT)) + "Bad,ninety\n")
    out, order = tmp_path / "out", Order(notebook, "none")
    written: Counter[str] = Counter()
    from kit.roster import run

    place = run._place
    monkeypatch.setattr(run, "_place", lambda made, task, to: (written.update([task.folder]), place(made, task, to))[1])
    # A busy machine takes its time to begin a worker, and to answer; what is asked is that nothing is lost.
    patience = {f"distributed.comm.timeouts.{what}": "180s" for what in ("connect", "tcp")}
    with (
        dask.config.set(patience),
        distributed.LocalCluster(
            n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None, silence_logs=50
        ) as there,
    ):
        killed = threading.Event()
        with distributed.Client(there.scheduler_address, set_as_default=False) as client:
            first = min(client.run(os.getpid).values())

        def kill(count: int, total: int, left: float) -> None:
            if count == 2 and not killed.is_set():
                killed.set()
                os.kill(first, signal.SIGKILL)

        made = run_roster(table, order, out, scheduler=there.scheduler_address, done=kill)
        assert killed.is_set()
        assert [entry.trouble for entry in made.entries[:COUNT]] == [""] * COUNT
        assert made.made == COUNT and [bool(entry.trouble) for entry in made.entries] == [False] * COUNT + [True]
        again = run_roster(table, order, out, scheduler=there.scheduler_address)
        assert (again.made, again.kept) == (0, COUNT)
    assert written == Counter(f"{number:02}" for number in range(1, COUNT + 1))
    assert sorted(path.parent.name for path in out.glob(f"*/{RECORD}")) == sorted(written)
    # What one machine makes is the same to the byte.
    beside = run_roster(table, order, tmp_path / "beside", workers=1)
    assert beside.made == COUNT
    for number in (1, COUNT):
        for file in ("pages-a4.pdf", "pattern.json"):
            name = f"{number:02}/{file}"
            assert (out / name).read_bytes() == (tmp_path / "beside" / name).read_bytes()


def test_where_nobody_answers_it_is_said(tmp_path: Path) -> None:
    notebook = napkin_at(tmp_path)
    table = tmp_path / "class.csv"
    table.write_text("name,bust\nA,96\n")
    from kit.roster import cluster

    with pytest.raises(KitError, match=r"no scheduler answers at 'tcp://127.0.0.1:1'"):
        with cluster.cluster(Order(notebook, "none"), "tcp://127.0.0.1:1", patience="1s"):
            pass
    with pytest.raises(KitError, match="no scheduler answers"):
        with cluster.cluster(Order(notebook, "none"), "nonsense", patience="1s"):
            pass
