"""A step that does not end: it is stopped, named, and stopped at once when asked again."""

from __future__ import annotations

import re
import signal
import threading
import time
from collections.abc import Callable, Iterator

import pytest

from kit import Lesson, bodice_block, cm, mm
from kit.body.body import Body
from kit.errors import KitError
from kit.lesson import halted, time_limit
from kit.lesson.working import Reworking
from kit.piece.piece import Piece
from kit.proof.mending import mending
from tests.patience import PATIENCE, by_the_clock, drafting_patiently


@pytest.fixture(autouse=True)
def clock() -> Iterator[None]:
    with by_the_clock():
        yield


def endless(*, swallow: bool = False, limit: float = 0.3) -> Lesson:
    """A lesson whose second step does not end while the flare is over 60 cm."""
    lesson = Lesson("Flared top", start=bodice_block, time_limit=limit)
    lesson.length("flare", 50 * cm, least=10 * cm, most=90 * cm)

    @lesson.step("Look at the front")
    def look(front):  # type: ignore[no-untyped-def]
        """Look at it."""

    @lesson.step("Flare the hem")
    def flare_it(front, flare):  # type: ignore[no-untyped-def]
        """Flare it by {flare}."""
        while flare > 60 * cm:
            try:
                if not swallow:
                    continue
                raise ValueError
            except BaseException:  # an author's own code may catch whatever comes
                if not swallow:
                    raise

    return lesson


def refused(act: Callable[[], object]) -> str:
    with pytest.raises(KitError) as caught:
        act()
    return str(caught.value)


@pytest.mark.parametrize("swallow", [False, True])
def test_the_step_is_named_with_its_line_and_how_long_it_took(swallow: bool) -> None:
    lesson = endless(swallow=swallow)
    assert lesson.work().steps, "50 cm ends by itself"
    lesson.change(flare=70 * cm)
    told = refused(lesson.work)
    assert told.startswith("Step 'Flare the hem'") and "stopped after 0.3 s" in told and "time_limit=20" in told
    if not swallow:
        assert "“while flare > 60 * cm:”" in told or "“continue”" in told
    lesson.change(flare=55 * cm)
    assert lesson.work().steps, "a value that ends is drafted as before"


def test_what_ran_out_of_time_is_not_tried_again_until_something_changes(monkeypatch: pytest.MonkeyPatch) -> None:
    tried: list[float] = []

    class Counted(time_limit.Watch):
        def __init__(self, seconds: float, *, interrupted: bool = False, asked: bool = True) -> None:
            tried.append(seconds)
            super().__init__(seconds, interrupted=interrupted, asked=asked)

    monkeypatch.setattr(time_limit, "Watch", Counted)
    monkeypatch.setattr(halted, "_clock", lambda: 1000.0)
    monkeypatch.setattr(halted, "_HALTS", [])
    lesson = endless(limit=0.4)
    lesson.change(flare=70 * cm)
    refused(lesson.work)
    refused(lesson.work)
    assert tried == [0.4], "refused at once"
    refused(lambda: lesson.work(time_limit=0.6))
    assert tried == [0.4, 0.6], "given more time it is tried again"
    lesson.change(flare=71 * cm)
    refused(lesson.work)
    assert tried == [0.4, 0.6, 0.4], "another value is tried"


def test_what_mends_a_draft_that_was_stopped_is_found_without_it_being_begun_again() -> None:
    tried: list[float] = []
    lesson = endless(limit=0.3)

    @lesson.step("Give allowances")
    def allow(front, back):  # type: ignore[no-untyped-def]
        """Give them."""
        for piece in (front, back):
            piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)

    @lesson.step("Flare the hem")
    def flare_it(front, flare):  # type: ignore[no-untyped-def]
        """Flare it by {flare}."""
        tried.append(float(flare))
        while flare > 60 * cm:
            pass

    lesson.change(flare=70 * cm)
    refused(lesson.work)
    again = Reworking(lesson.definition, lesson.body, lesson.values)
    assert again.reached == 1 and "Flare the hem" in again.refused and tried == [700.0]
    again.work({"flare": 580.0})
    assert tried == [700.0, 580.0]
    remedy = next(mending(lesson.definition, lesson.body, lesson.values))
    assert remedy.values["flare"] == 60 * cm and tried.count(700.0) == 1


def test_a_thread_is_stopped_too() -> None:
    lesson = endless()
    lesson.change(flare=72 * cm)
    told: list[str] = []
    worker = threading.Thread(target=lambda: told.append(refused(lesson.work)))
    worker.start()
    worker.join(20)
    assert not worker.is_alive() and "Flare the hem" in told[0]


def test_a_timer_of_somebody_else_is_left_alone() -> None:
    lesson = endless()
    lesson.change(flare=73 * cm)
    rung: list[int] = []
    before = signal.signal(signal.SIGALRM, lambda *_: rung.append(1))
    try:
        signal.setitimer(signal.ITIMER_REAL, 30)
        assert "Flare the hem" in refused(lesson.work)
        assert 0 < signal.getitimer(signal.ITIMER_REAL)[0] <= 30 and not rung
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGALRM, before)


def test_signals_are_as_they_were() -> None:
    before = signal.getsignal(signal.SIGALRM), signal.getsignal(signal.SIGINT)
    lesson = endless()
    lesson.work()
    lesson.change(flare=74 * cm)
    refused(lesson.work)
    assert (signal.getsignal(signal.SIGALRM), signal.getsignal(signal.SIGINT)) == before
    assert signal.getitimer(signal.ITIMER_REAL) == (0.0, 0.0)


def test_a_search_goes_on_over_a_draft_that_does_not_end() -> None:
    lesson = endless()
    again = Reworking(lesson.definition, lesson.body, lesson.values)
    pattern, reached, refused_ = again.work({"flare": 700.0})
    assert pattern is None and reached == 1 and "Flare the hem" in refused_
    assert again.work({"flare": 590.0})[0] is not None


def test_a_block_that_does_not_end_is_named_as_the_block() -> None:
    def stuck(body: Body) -> tuple[Piece, ...]:
        while body:
            pass
        return ()

    lesson = Lesson("Stuck", start=stuck, time_limit=0.2)
    assert refused(lesson.work).startswith("The block the lesson starts from")


@pytest.mark.parametrize("given", [0, -1, "5", True, None, 1e9])
def test_a_limit_that_is_none_is_refused(given: object) -> None:
    assert f"time_limit is {given!r}" in refused(
        lambda: Lesson("Odd", start=bodice_block, time_limit=given)  # type: ignore[arg-type]
    )


def test_a_variation_keeps_the_limit() -> None:
    assert endless(limit=0.7).variation("Another").definition.time_limit == 0.7


def slow(limit: float) -> Lesson:
    """A lesson whose one step takes over a second."""
    lesson = Lesson("Slow top", start=bodice_block, time_limit=limit)
    lesson.length("flare", 50 * cm, least=10 * cm, most=90 * cm)

    @lesson.step("Flare the hem")
    def flare_it(front, flare):  # type: ignore[no-untyped-def]
        """Flare it by {flare}."""
        time.sleep(1.2)

    return lesson


def test_a_search_gives_each_draft_the_lessons_own_limit() -> None:
    lesson = slow(limit=20)
    again = Reworking(lesson.definition, lesson.body, lesson.values)
    assert again.refused == "" and again.pattern is not None
    assert again.work({"flare": 600.0})[0] is not None
    hurried = Reworking(lesson.definition, lesson.body, lesson.values, hurried=True)
    assert hurried.pattern is not None and hurried.work({"flare": 610.0})[0] is not None


def test_a_hurried_search_does_not_wait_out_a_long_limit_for_each_draft() -> None:
    lesson = endless(limit=30)
    hurried = Reworking(lesson.definition, lesson.body, lesson.values, hurried=True)
    assert hurried.pattern is not None
    # A second, or three times as long as the first draft took, where the machine is busy with other work.
    said = re.search(r"stopped after ([\d.]+) s", hurried.work({"flare": 720.0})[2])
    assert said and 1.0 <= float(said[1]) < 30.0 and float(said[1]) == pytest.approx(hurried._seconds, abs=0.06)


def test_what_ran_out_of_time_is_forgotten_after_half_a_minute(monkeypatch: pytest.MonkeyPatch) -> None:
    now, calls = [1000.0], []
    monkeypatch.setattr(halted, "_clock", lambda: now[0])
    lesson = Lesson("Slow once", start=bodice_block, time_limit=2)  # what is quick once is, on a busy machine too

    @lesson.step("Wait for the disk")
    def wait(front):  # type: ignore[no-untyped-def]
        """Wait for it."""
        calls.append(now[0])
        if len(calls) == 1:
            time.sleep(60)

    refused(lesson.work)
    now[0] += 29
    refused(lesson.work)
    assert len(calls) == 1, "refused at once"
    now[0] += 2
    assert lesson.work().steps and len(calls) == 2


def test_other_tests_give_a_draft_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """As where the machine is busy: what takes over a second is done all the same, a limit of less holds."""
    lesson = slow(limit=1)
    assert "stopped after 1 s" in refused(lesson.work)
    monkeypatch.setattr(halted, "_HALTS", [])
    with drafting_patiently():
        assert lesson.work().steps and PATIENCE > 5
        assert "stopped after 0.3 s" in refused(endless_now)


def endless_now() -> object:
    lesson = endless()
    lesson.change(flare=70 * cm)
    return lesson.work()
