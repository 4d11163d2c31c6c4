"""Cloth and pages on the panel: the true figures, off the slider's path, marked as old until the new ones come."""

from __future__ import annotations

import asyncio
import subprocess
import sys
import threading
import time
from collections.abc import Iterator
from functools import partial
from pathlib import Path

import pikepdf
import pytest

from kit import Lesson, bodice_block, cm, panel
from kit.live import figures as module
from kit.live import pace
from kit.paper.papers import A4, LETTER
from kit.paper.printing import print_files
from kit.paper.request import PageRequest
from kit.pausing import pause_here

from .conftest import PATIENCE, until


def small() -> Lesson:
    lesson = Lesson("Landing vest", start=bodice_block, units="cm", size="W4", cloth_widths=["140 cm"])
    lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm)

    @lesson.step("Lower the hem")
    def lower_hem(front, hem_drop):
        """Rule the hem {hem_drop} below the waistline."""
        front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)

    @lesson.step("Allowances")
    def allowances(front, back):
        """Add 1 cm."""
        front.allow(neck=1 * cm, shoulder=1 * cm, armhole=0.6 * cm, side=1 * cm, hem=1 * cm)
        back.allow(neck=1 * cm, shoulder=1 * cm, armhole=0.6 * cm, side=1 * cm, hip=1 * cm)
        for piece in (front, back):
            piece.cut(1, fold="centre")
            piece.grain()

    return lesson


@pytest.fixture
def lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    monkeypatch.chdir(tmp_path)
    monkeypatch.delenv("LESSONKIT_BUILD", raising=False)
    return small()


def test_the_pages_are_those_that_are_printed(lesson: Lesson) -> None:
    """Counted in the PDF itself with pikepdf: it has a page to read first and a plan beside the pattern's own."""
    pattern = lesson.work()
    for paper in (A4, LETTER):
        said = module.page_figure(pattern, paper.name).amount
        request = PageRequest((paper,))
        (file,) = print_files(pattern, request).values()
        (Path.cwd() / "pages.pdf").write_bytes(file)
        with pikepdf.open(Path.cwd() / "pages.pdf") as document:
            printed = len(document.pages)
        assert 0 < said < printed <= said + 3


def test_the_cloth_holds_what_is_cut(lesson: Lesson) -> None:
    """A length of cloth is never less than the area of what is cut from it, with its allowances, over its width."""
    from kit.cloth.parts import parts

    pattern = lesson.work()
    (cloth,) = module.cloth_figures(pattern)
    area = sum(part.area(False) * len(part.copies) for part in parts(pattern, "main"))
    assert (cloth.name, cloth.width) == ("main", 1400.0)
    assert area / 1400 < cloth.amount < 4 * area / 1400


def test_figures_are_shown_and_said_in_the_chosen_units(lesson: Lesson) -> None:
    shown = panel(lesson)
    assert shown.figures.shown.value.count("…") == 3, "one row for the cloth and two for the pages from the start"
    shown.figures.now()
    text = shown.figures.shown.value
    assert (
        "Cloth, 140 cm (55 in) wide" in text and " m (" in text and "Pages, A4" in text and "Pages, US Letter" in text
    )
    assert "was" not in text and "opacity" not in text
    lesson.choose(units="inch")
    shown.figures.now()
    assert "Cloth, 55 in (140 cm) wide" in shown.figures.shown.value


def test_after_a_move_the_last_figures_stand_as_old(lesson: Lesson) -> None:
    shown = panel(lesson)
    shown.figures.now()
    fresh = shown.figures.shown.value
    shown.rows["hem_drop"].slider.value = 19
    old = shown.figures.shown.value
    assert old.count("was ") == 3 and old.count("opacity:.5") == 3
    assert old.count("<tr") == fresh.count("<tr"), "the table keeps its height"
    shown.figures.now()
    assert "was " not in shown.figures.shown.value


def test_what_is_not_known_is_not_guessed(lesson: Lesson) -> None:
    lesson.remove("allowances")
    shown = panel(lesson)
    shown.figures.now()
    assert "not yet known" in shown.figures.shown.value
    assert "allowance" in shown.figures.shown.value, "the reason, when it is pointed at"


def test_it_can_be_switched_off(lesson: Lesson) -> None:
    shown = panel(lesson)
    shown.figures.switch.value = False
    assert shown.figures.shown.value == ""
    shown.rows["hem_drop"].slider.value = 19
    assert shown.figures.shown.value == ""
    shown.figures.switch.value = True
    assert "Pages, A4" in shown.figures.shown.value


def test_moves_stop_the_work_and_the_last_one_counts(lesson: Lesson, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "_AFTER", 0.05)
    worked: list[float] = []
    true = module.page_figure

    def page_figure(pattern: module.Pattern, name: str) -> module.Figure:
        found = true(pattern, name)
        worked.append(pattern.value("hem_drop"))
        return found

    monkeypatch.setattr(module, "page_figure", page_figure)
    shown = panel(lesson)

    async def moves() -> None:
        for value in (6, 9, 12):
            shown.rows["hem_drop"].slider.value = value
            await until(lambda: shown.figures.pending and shown.figures._working._handle is None)  # it has begun
        await until(lambda: worked.count(120.0) == 2 and not shown.figures.pending)

    asyncio.run(moves())
    assert worked[-2:] == [120.0, 120.0]
    assert "was" not in shown.figures.shown.value and "…" not in shown.figures.shown.value


# ---- working aside ----------------------------------------------------------------------------------------


def test_work_aside_runs_off_the_loop_and_shows_on_it() -> None:
    main, ran, shown = threading.get_ident(), [], []

    def work() -> Iterator[pace.Show]:
        ran.append(threading.get_ident())
        yield lambda: shown.append(threading.get_ident())

    async def one() -> None:
        aside = pace.Aside(work, 0.01)
        aside.ask()
        assert aside.pending and not ran
        await until(lambda: not aside.pending)

    asyncio.run(one())
    assert ran != [main] and shown == [main]


def test_a_search_stops_at_its_next_breath_and_shows_nothing() -> None:
    MANY = 20_000  # breaths, 100 seconds
    breaths, shown = [], []
    ended = threading.Event()

    def work() -> Iterator[pace.Show]:
        try:
            for number in range(MANY):
                breaths.append(number)
                time.sleep(0.005)
                pause_here()
            yield partial(shown.append, "found")
        finally:
            ended.set()

    async def one() -> None:
        aside = pace.Aside(work, 0.0)
        aside.ask()
        await until(lambda: len(breaths) > 3)
        aside.drop()
        assert aside.stopped and not aside.pending
        assert await asyncio.to_thread(ended.wait, PATIENCE)
        await asyncio.sleep(0.02)

    asyncio.run(one())
    assert len(breaths) < MANY and shown == []


def test_a_patient_one_waits_for_now_where_there_is_no_loop() -> None:
    shown: list[str] = []

    def work() -> Iterator[pace.Show]:
        yield partial(shown.append, "found")

    pace.Aside(work, 0.0).ask()
    patient = pace.Aside(work, 0.0, patient=True)
    patient.ask()
    assert shown == ["found"]
    patient.now()
    assert shown == ["found", "found"]


def test_a_process_that_ends_stops_its_work_aside_first(tmp_path: Path) -> None:
    """Its thread is stopped at its next pause, and nothing of it comes after the end has begun."""
    program = """
import asyncio, atexit, threading, time
began, stopped = threading.Event(), threading.Event()
atexit.register(lambda: (stopped.wait(60), time.sleep(0.1), print("end")))
from kit.live.pace import Aside
from kit.pausing import pause_here

def work():
    print("began", flush=True)
    began.set()
    while True:
        time.sleep(0.01)
        try:
            pause_here()
        except BaseException:
            print("stopped", flush=True)
            stopped.set()
            raise
    yield

async def main():
    aside = Aside(work, 0.0)
    aside.ask()
    while not began.is_set():
        await asyncio.sleep(0.01)

asyncio.run(main())
"""
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, timeout=120, check=False)
    assert (done.stdout.split(), done.stderr) == (["began", "stopped", "end"], "")
