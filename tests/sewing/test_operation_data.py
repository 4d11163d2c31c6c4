"""What an operation tells as data becomes what it does: minutes, joins, effect, what it uses up, the runs it is sewn
on, and which of its sentences are said. The operations are invented; the lengths are worked by hand."""

from __future__ import annotations

from typing import Any, ClassVar

import pytest

from kit.geometry import Path, Point
from kit.piece.piece import CutPlan, Edge, Piece, Strip
from kit.sewing.fields import fixed, flag, row, runs, strip, width, word
from kit.sewing.operation import Operation, Sentence, operation
from kit.sewing.operations import KINDS
from kit.sewing.outcome import Closing, Turned, Uses
from kit.sewing.reading import CutPieces
from kit.sewing.run import Run
from kit.sewing.spans import Span
from kit.sewing.vocabulary import PRESS_LATER, Also, Brings, Of, Say, Work


def panel(name: str, mirrored: bool = False) -> Piece:
    at = [Point(0, 0), Point(500, 0), Point(500, 250), Point(0, 250)]
    names = ("hem", "side", "top", "centre")
    edges = tuple(Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True))
    return Piece(name, name.capitalize(), edges, cut=CutPlan(1 + mirrored, mirrored=mirrored))


assert "try_on" in KINDS, "the kinds are gathered before those of this file are made"
CUT = CutPieces((panel("front", mirrored=True), panel("back")), (Strip("tie", "The tie", 900, 40, 2),))
HEM, SIDE = Run("front", ("hem",)), Run("front", ("side",))
TOP = Run("back", ("top",))


@operation(verb="")
class Base(Operation):
    """An operation that another is built on."""

    work: ClassVar[Work] = Work(2.0, 8.0)
    changes: ClassVar[tuple[Brings, ...]] = (Brings("made", lambda made, pattern: (made.name,)),)
    also: ClassVar[tuple[Also, ...]] = (Also("base", 1.0),)

    edges: tuple[Run, ...] = runs(
        closes=lambda made: "hemmed" if made.neat else None, takes=lambda made: made.deep if made.neat else None
    )
    beside: tuple[Run, ...] = row(by_name=True, default=(), touched=False)
    name: str = strip(uses="number")
    deep: float = width(default=20)
    neat: bool = flag(default=True)
    press: str = word(("now", "later"), default="now")
    number: int = fixed(2)


@operation(verb="")
class Built(Base):
    """The one that is built on it."""

    kind = "built"
    says = (
        "lay{way}",
        Say("neat", lambda made: made.neat, "raw"),
        Say("alone", lambda made: False),
        PRESS_LATER,
        lambda made, pattern: "told" if made.beside else "",
        lambda made, pattern: ("one", Sentence("two", {})),
    )
    joined = (("edges", "beside"),)
    gives = (Of("built", "edges"),)
    amounts = (("thread", "deep", "length"), ("pins", "pins", "count"))
    changes = (
        Brings("turned", lambda made, pattern: tuple(Turned(run, made.deep) for run in made.edges)),
        Brings("facts", lambda made, pattern: (("own", made.name),)),
    )
    also = (Also("own", lambda made, pattern: made.deep, "length"), Also("no", lambda made, pattern: None))

    def way(self, pattern: Any) -> str:
        return f" on {len(pattern.pieces)}"

    def pins(self, pattern: Any) -> int:
        return 10 * len(pattern.pieces)


def made(**fields: Any) -> Built:
    return Built(**{"edges": (HEM,), "name": "tie", **fields})


def test_minutes_by_the_metre_by_the_half_and_along_one_field() -> None:
    assert made().minutes(CUT) == 2.0 + 8.0 * 1.0  # a hem of 500 mm on both halves

    @operation(verb="")
    class Counted(Base):
        """So many minutes for each half."""

        work = Work(1.0, each=3.0, of="beside")

    assert Counted(edges=(HEM,), beside=(SIDE, TOP), name="tie").minutes(CUT) == 1.0 + 3.0 * 3

    @operation(verb="")
    class Along(Base):
        """By the metre along another field, as it is sewn."""

        work = Work(1.0, lambda made: 40.0 if made.neat else 4.0, of="beside")

    assert Along(edges=(HEM,), beside=(SIDE,), name="tie").minutes(CUT) == 1.0 + 40.0 * 0.5
    assert Along(edges=(HEM,), beside=(SIDE,), name="tie", neat=False).minutes(CUT) == 1.0 + 4.0 * 0.5


def test_it_is_sewn_on_what_is_touched_and_joins_pair_by_pair() -> None:
    built = made(edges=(HEM, SIDE), beside=(TOP,))
    assert built.runs() == (HEM, SIDE)
    assert built.joins == ((HEM, TOP), (SIDE, TOP)) and made().joins == ()
    assert built.uses == Uses(pieces=("front",), strips={"tie": 2})


def test_it_closes_and_takes_as_it_is() -> None:
    halves = (Span("front", side, "hem", 0.0, 500.0) for side in ("left", "right"))  # type: ignore[arg-type]
    assert made().closes(CUT) == tuple(Closing(span, "hemmed") for span in halves)
    assert made().takes(CUT) == {("front", "hem"): 20.0}
    assert made(neat=False).closes(CUT) == () and made(neat=False).takes(CUT) == {}


def test_its_effect_is_that_of_all_its_classes() -> None:
    effect = made().effect(CUT)
    assert (effect.made, effect.turned) == (("tie",), (Turned(HEM, 20.0),))
    assert effect.facts == (("built", "front", "left", "hem"), ("built", "front", "right", "hem"), ("own", "tie"))


def test_what_it_uses_up() -> None:
    assert made().notion_amounts(CUT) == {"thread": (20.0, "length"), "pins": (20, "count")}


def test_what_fills_its_sentences() -> None:
    values = made().values(CUT)
    assert (values["base"], values["own"]) == ((1.0, "allowance"), (20.0, "length"))
    assert "no" not in values


@pytest.mark.parametrize(
    ("fields", "said"),
    [
        ({}, ["built.lay_on_2", "built.neat", "built.one", "two"]),
        ({"neat": False, "press": "later"}, ["built.lay_on_2", "built.raw", "press_later", "built.one", "two"]),
        ({"beside": (TOP,)}, ["built.lay_on_2", "built.neat", "built.told", "built.one", "two"]),
    ],
)
def test_which_sentences_are_said(fields: dict[str, Any], said: list[str]) -> None:
    assert [sentence.key for sentence in made(**fields).sentences(CUT)] == said
