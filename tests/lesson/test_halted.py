"""A draft that was stopped is not begun again by those who follow by themselves.

A kernel is acted: between two messages it ignores SIGINT, while it answers one it lets it raise (as ipykernel does).
"""

from __future__ import annotations

import os
import signal
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest

from kit import Lesson, bodice_block, cm
from kit.errors import KitError
from kit.lesson import halted
from kit.lesson.time_limit import DraftingInterrupted
from kit.lesson.where import acting
from kit.pausing import pausing
from tests.patience import by_the_clock

BEGUN: list[float] = []
"""Flares at which the step that does not end was begun."""


@pytest.fixture(autouse=True)
def fresh(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    monkeypatch.setattr(halted, "_HALTS", [])
    monkeypatch.setattr(halted, "_INTERRUPTED", [-1e9])
    monkeypatch.setattr(halted, "_PRESSED", [])
    monkeypatch.setattr(halted, "_TOOK", [])
    BEGUN.clear()
    with by_the_clock():
        yield


def lesson(limit: float = 60.0) -> Lesson:
    made = Lesson("Flared top", start=bodice_block, time_limit=limit)
    made.length("flare", 50 * cm, least=10 * cm, most=90 * cm)

    @made.step("Flare the hem")
    def flare_it(front, flare):  # type: ignore[no-untyped-def]
        """Flare it by {flare}."""
        if flare > 60 * cm:
            BEGUN.append(float(flare))
        while flare > 60 * cm:
            pass

    return made


@contextmanager
def between_messages() -> Iterator[None]:
    """As where a view of a notebook follows by itself."""
    yield from _kernel(signal.SIG_IGN, following=False)


@contextmanager
def in_a_cell() -> Iterator[None]:
    yield from _kernel(signal.default_int_handler, following=False)


@contextmanager
def answering_a_widget() -> Iterator[None]:
    yield from _kernel(signal.default_int_handler, following=True)


def _kernel(stops: Callable[..., object] | signal.Handlers, *, following: bool) -> Iterator[None]:
    before = signal.signal(signal.SIGINT, stops)  # type: ignore[arg-type]
    try:
        with acting(notebook=True, following=following):
            yield
    finally:
        signal.signal(signal.SIGINT, before)


@contextmanager
def interrupt_once() -> Iterator[None]:
    """Presses *Interrupt* once the step has begun."""
    count = len(BEGUN)

    def press() -> None:
        while len(BEGUN) == count:
            time.sleep(0.01)
        os.kill(os.getpid(), signal.SIGINT)

    hand = threading.Thread(target=press, daemon=True)
    hand.start()
    yield
    hand.join(20)


def refused(act: Callable[[], object]) -> str:
    with pytest.raises(KitError) as caught:
        act()
    return str(caught.value)


def interrupted(made: Lesson) -> None:
    """The slider was moved to 70 cm, and the draft that followed was interrupted."""
    made.change(flare=70 * cm)
    with between_messages(), interrupt_once():
        assert "drafting was interrupted" in refused(made.work)


def test_what_was_interrupted_is_not_begun_again_by_a_view(monkeypatch: pytest.MonkeyPatch) -> None:
    made = lesson()
    interrupted(made)
    now = [time.monotonic()]
    monkeypatch.setattr(halted, "_clock", lambda: now[0])
    for seconds in (0, 1, 40, 4000):
        now[0] += seconds
        with between_messages():
            assert "drafting was interrupted" in refused(made.work)
        with answering_a_widget():
            assert "drafting was interrupted" in refused(made.work)
    assert BEGUN == [700.0]


def test_a_draft_for_a_widgets_message_is_told_where_it_was_asked() -> None:
    """The canvas drafts while its own message is answered: nothing but the canvas can say what became of it."""
    made = lesson()
    made.change(flare=71 * cm)
    with answering_a_widget(), interrupt_once():
        assert "drafting was interrupted" in refused(made.work)


def test_a_cell_begins_it_anew_and_ends_with_it() -> None:
    made = lesson()
    interrupted(made)
    with in_a_cell(), interrupt_once(), pytest.raises(DraftingInterrupted):
        made.work()
    assert BEGUN == [700.0, 700.0]
    with between_messages():
        refused(made.work)
    assert BEGUN == [700.0, 700.0]


def test_it_is_begun_again_once_a_value_a_body_or_a_step_was_another() -> None:
    made = lesson()
    interrupted(made)
    made.change(flare=50 * cm)
    with between_messages():
        assert made.work().steps
    interrupted(made)
    assert BEGUN == [700.0, 700.0], "moved away and back"
    made.choose(size="W1")
    with between_messages(), interrupt_once():
        refused(made.work)
    assert BEGUN == [700.0] * 3, "another body"

    @made.step("Flare the hem")
    def flare_it(front, flare):  # type: ignore[no-untyped-def]
        """Flare it by {flare}."""

    with between_messages():
        assert made.work().steps, "another step"


def test_moves_that_were_on_their_way_are_stopped_without_a_second_interrupt(monkeypatch: pytest.MonkeyPatch) -> None:
    made = lesson()
    interrupted(made)
    begun = time.monotonic()
    for flare in (72, 75):
        made.change(flare=flare * cm)
        with between_messages():
            assert "drafting was interrupted" in refused(made.work)
    assert BEGUN == [700.0, 720.0, 750.0] and time.monotonic() - begun < 30, "not the limit of a minute"
    made.change(flare=55 * cm)
    with between_messages():
        assert made.work().steps, "a sound value is drafted at once"
    late = time.monotonic() + 2
    monkeypatch.setattr(halted, "_clock", lambda: late)
    made.change(flare=76 * cm)
    with between_messages(), interrupt_once():
        assert "drafting was interrupted" in refused(made.work), "a later move has all its time"


def test_what_ran_out_of_time_is_begun_again_by_a_cell_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    made = lesson(limit=0.3)
    made.change(flare=70 * cm)
    with between_messages():
        assert "stopped after 0.3 s" in refused(made.work)
    late = time.monotonic() + 60
    monkeypatch.setattr(halted, "_clock", lambda: late)
    with between_messages():
        assert "stopped after 0.3 s" in refused(made.work)
    assert BEGUN == [700.0]
    with in_a_cell():
        refused(made.work)
    assert BEGUN == [700.0, 700.0]
    made.change(flare=55 * cm)
    made.change(flare=70 * cm)
    late += 60
    with between_messages():
        refused(made.work)
    assert BEGUN == [700.0] * 3, "moved away and back: a busy machine need not be busy any more"


@pytest.mark.parametrize("limit", [0.3, 60.0], ids=["ran out of time", "interrupted"])
def test_what_a_cell_drafts_after_all_no_view_refuses(limit: float) -> None:
    """A helper that a step calls was mended in a cell of its own, or the machine was busy the first time."""
    made, slow = Lesson("Slow once", start=bodice_block, time_limit=limit), [True]

    @made.step("Wait for the disk")
    def wait(front):  # type: ignore[no-untyped-def]
        """Wait for it."""
        BEGUN.append(0.0)
        while slow:
            pass

    with between_messages():
        if limit > 1:
            with interrupt_once():
                refused(made.work)
        else:
            refused(made.work)
        slow.clear()
        refused(made.work)
    with in_a_cell():
        assert made.work(time_limit=limit * 2).steps
    with between_messages():
        assert made.work().steps


def test_what_was_stopped_as_more_of_the_same_is_no_interrupt_of_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    """Else a slider that is pulled on for long would have half a second for each draft until it rests."""
    now = [1000.0]
    monkeypatch.setattr(halted, "_clock", lambda: now[0])
    made = lesson()
    interrupted(made)
    now[0] += 1
    made.change(flare=72 * cm)
    with between_messages():
        refused(made.work)
    assert halted.leashed()
    now[0] += 1
    assert not halted.leashed()


def test_a_default_that_a_cell_wrote_otherwise_is_another_value_too() -> None:
    made = lesson()
    for default in (70, 50, 70):
        made.length("flare", default * cm, least=10 * cm, most=90 * cm)
        with between_messages():
            if default == 50:
                assert made.work().steps
            else:
                with interrupt_once():
                    refused(made.work)
    assert BEGUN == [700.0, 700.0]


def test_a_search_that_is_stopped_at_many_values_does_not_push_out_what_was_interrupted() -> None:
    made = lesson()
    interrupted(made)
    with between_messages(), pausing(lambda: None):
        for flare in range(710, 830, 10):
            refused(lambda flare=flare: made.work(values={"flare": float(flare)}, time_limit=0.05))  # type: ignore[misc]
    BEGUN.clear()
    with between_messages():
        refused(made.work)
    assert BEGUN == []


def long_after(now: list[float], monkeypatch: pytest.MonkeyPatch) -> None:
    """The half second just after an *Interrupt* is over."""
    monkeypatch.setattr(halted, "_clock", lambda: now[0])
    now[0] += 60


def test_on_the_way_back_no_value_wants_an_interrupt_of_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    """The slider is pulled back long after *Interrupt*, over values at which the step does not end either."""
    made, now = lesson(600.0), [time.monotonic()]
    with between_messages():
        assert made.work().steps
    interrupted(made)
    long_after(now, monkeypatch)
    with between_messages():
        for flare in (71, 66):
            made.change(flare=flare * cm)
            assert "interrupted" in refused(made.work)
        made.change(flare=50 * cm)
        assert made.work().steps
    assert BEGUN[-2:] == [710.0, 660.0]
    # A draft came to its end: the next that does not has its own time again, as it was asked for anew.
    made.change(flare=80 * cm)
    with between_messages(), interrupt_once():
        begun = time.monotonic()
        refused(made.work)
    assert BEGUN[-1] == 800.0 and time.monotonic() - begun < 60


def test_what_takes_long_as_a_rule_has_as_long_on_the_way_back(monkeypatch: pytest.MonkeyPatch) -> None:
    made, now = lesson(600.0), [time.monotonic()]
    asked = made._asked()
    halted.ended(asked, 4.0)
    interrupted(made)
    long_after(now, monkeypatch)
    assert halted.leash(made._asked()) == 20.0
    halted.ended(asked, 0.01, seen=False)  # a search that found a value: nobody has seen it
    assert halted.leash(made._asked()) == 1.0
    halted.ended(asked, 0.01)
    assert halted.leash(made._asked()) == float("inf")


def test_a_step_that_was_written_anew_has_its_own_time(monkeypatch: pytest.MonkeyPatch) -> None:
    made, now = lesson(600.0), [time.monotonic()]
    halted.ended(made._asked(), 0.01)
    interrupted(made)
    long_after(now, monkeypatch)
    assert halted.leash(made._asked()) < 600
    assert halted.leash(lesson()._asked()) == float("inf")
