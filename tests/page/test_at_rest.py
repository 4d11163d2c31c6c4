"""Lost circles of values are looked for when the page rests, and by themselves only where nobody ever rests."""

from __future__ import annotations

import gc
import json
import weakref
from collections.abc import Iterator
from pathlib import Path

import pytest

from kit.page.at_rest import SELDOM, answering
from kit.page.engine import Engine

ROOT = Path(__file__).parents[2]


class Knot:
    """A value that holds on to itself."""

    def __init__(self) -> None:
        self.own = self


@pytest.fixture
def usual() -> Iterator[None]:
    before = gc.get_threshold()
    gc.unfreeze()
    yield
    gc.set_threshold(*before)
    gc.freeze()  # as the run of all tests has it


def lost() -> weakref.ref[Knot]:
    return weakref.ref(Knot())


def told(**asked: object) -> str:
    return json.dumps({"values": {}, **asked})


def test_circles_wait_for_the_rest(usual: None) -> None:
    engine = Engine(ROOT / "example_notebooks" / "ferry_tote.ipynb", offered=["en"])
    plain = engine.answer(told(do="draw"))
    answer = answering(engine)
    assert gc.get_threshold() == SELDOM
    for _ in range(2):  # as the page opens, and later
        filled = [[] for _ in range(3_000)]  # enough that it is worth looking
        knot = lost()
        assert answer(told(do="draw")) == plain and not engine.rests
        assert knot() is not None, "a picture waited for Python to look through its values"
        proved = json.loads(answer(told(do="prove")))
        assert proved["ok"] and engine.rests
        assert knot() is None, "what a draft left stays for ever"
        assert filled and gc.get_freeze_count() > 10_000, "the kit itself is looked through every time"


def test_who_never_rests_keeps_no_more_than_some_drafts(usual: None) -> None:
    engine = Engine(ROOT / "example_notebooks" / "ferry_tote.ipynb", offered=["en"])
    answer = answering(engine)
    slider = json.loads(answer(told(do="draw")))["sliders"][0]
    answer(told(do="prove"))
    knot = lost()
    for at in range(400):
        value = (slider["first"] + at % (slider["last"] - slider["first"])) * slider["size"]
        answer(json.dumps({"do": "draw", "values": {slider["name"]: value}}))
        if knot() is None:
            break
    assert knot() is None and at > 3, f"circles were looked for after {at + 1} pictures"
