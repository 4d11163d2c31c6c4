"""Widgets of one view answered in two threads, as ipykernel 7.4 does: each in the thread that wrote to it last
(`BaseComm._reply_subshell_for`), the name of a try-on beside the main thread and its button in it."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import Callable
from typing import Any

import pytest

from kit import panel
from kit.live.own_hand import OwnHand
from kit.live.pace import Latest

from .conftest import PATIENCE, LessonMaker, until


def in_another_thread(act: Callable[[], Any], *, at_most: float = PATIENCE) -> threading.Thread:
    """`act` in a thread of its own, which is waited for as long as that."""
    thread = threading.Thread(target=act, daemon=True)
    thread.start()
    thread.join(at_most)
    return thread


def test_a_name_that_comes_while_the_button_is_answered_is_not_lost(
    make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch
) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    shown.tried_on.open.value = True
    begin, threads = lesson.begin_fitting, []

    def name_comes() -> None:
        shown.tried_on.name.set_state({"value": "Evening toile"})

    def begin_late(title: str) -> None:
        """The name comes once the button has read the box, and before the fitting has begun."""
        if not threads:
            threads.append(threading.Thread(target=name_comes, daemon=True))
            threads[0].start()
            threads[0].join(0.3)
        begin(title)

    monkeypatch.setattr(lesson, "begin_fitting", begin_late)
    shown.tried_on.begin.click()
    threads[0].join(PATIENCE)
    assert lesson.sitting.begun is not None and lesson.sitting.begun.title == "Evening toile"
    assert "Evening toile" in shown.tried_on.going.value


def test_a_name_that_comes_while_the_kit_empties_a_box_is_not_lost(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    tried_on = shown.tried_on
    tried_on.open.value = True
    tried_on.begin.click()
    tried_on.why.value = "an earlier reason"
    tried_on.why.observe(
        lambda _: in_another_thread(lambda: tried_on.name.set_state({"value": "Evening toile"})), "value"
    )
    tried_on._own_hand.put(tried_on.why, value="")
    assert lesson.sitting.begun is not None and lesson.sitting.begun.title == "Evening toile"


@pytest.mark.parametrize("by", ["a box", "a list"])
def test_what_a_reader_sets_while_the_kit_sets_something_counts(make_lesson: LessonMaker, by: str) -> None:
    """A length is typed while the row's box is written anew; a unit is chosen while the list of presets is."""
    lesson = make_lesson()
    shown = panel(lesson)
    row, choices = shown.rows["hem_drop"], shown.choices
    if by == "a box":
        with row._own_hand:
            in_another_thread(lambda: row.box.set_state({"value": "9 cm"}))
        assert lesson.values["hem_drop"] == 90.0
    else:
        with choices._own_hand:
            in_another_thread(lambda: choices.units.set_state({"index": 1}))
        assert lesson.units == "inch"


def test_the_kits_own_hand_is_of_one_thread() -> None:
    hand, seen = OwnHand(), []
    with hand, hand:
        in_another_thread(lambda: seen.append(bool(hand)))
        seen.append(bool(hand))
    assert [*seen, bool(hand)] == [False, True, False]


def test_two_moves_in_two_threads_are_never_drawn_at_once() -> None:
    """The second comes while the first is drawn: it is drawn after it, so that what stands is the last."""
    asked, drawn, at_once = [0], [], []
    drawing = threading.Event()
    comes = threading.Event()

    def work() -> None:
        at_once.append(drawing.is_set())
        drawing.set()
        value = asked[0]
        if value == 1:
            comes.wait(PATIENCE)
        drawn.append(value)
        drawing.clear()

    latest = Latest(work)

    def first() -> None:
        async def moves() -> None:
            asked[0] = 1
            latest.ask()
            await until(lambda: drawn)
            await until(lambda: drawn[-1] == 2)

        asyncio.run(moves())

    async def second() -> None:
        thread = threading.Thread(target=first, daemon=True)
        thread.start()
        await until(drawing.is_set)
        asked[0] = 2
        latest.ask()
        for _ in range(20):
            await asyncio.sleep(0.005)  # turns of this loop, in which the second would be drawn
        comes.set()
        await until(lambda: len(drawn) == 2)
        await until(lambda: not thread.is_alive())

    asyncio.run(second())
    assert drawn == [1, 2] and not any(at_once)
