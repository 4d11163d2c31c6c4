"""The proof against a garment sewn row by row: a French seam with an opening, begun, tried on and finished, and basting
before it. Any one operation dropped, repeated, or swapped with the next, and the opening sewn shut, moved
or left raw. What would sew is written down by hand, judged at the sewing table (common practice, no source)."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import pairwise
from typing import Any

import pytest

from kit.body.body import NOBODY
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import CutPlan, Edge, Mark, Piece
from kit.proof import prove
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.sewing.operation import Operation
from kit.units import cm, mm

ALLOWED = {"hem": 20.0, "right_side": 10.0, "top": 20.0, "left_side": 10.0}
SLIT = Mark("slit", "opening", edge="right_side", start=100, end=150, said="slit")
GRAIN = Path.line(Point(100, 100), Point(100, 400))
ORDER = (
    lambda make, front, back: make.baste(front.right_side, back.right_side, distance=0 * mm),
    lambda make, front, back: make.try_on("Is it wide enough?"),
    lambda make, front, back: make.remove_basting(front.right_side, back.right_side),
    lambda make, front, back: make.french_seam(
        front.right_side, back.right_side, first=6 * mm, second=4 * mm, opening=front.slit, rows="first"
    ),
    lambda make, front, back: make.try_on("Does the slit lie where the tie goes through?"),
    lambda make, front, back: make.finish(front.right_side, back.right_side),
    lambda make, front, back: make.french_seam(front.left_side, back.left_side, first=6 * mm, second=4 * mm),
    lambda make, front, back: make.hem(front.hem, back.hem, first=1 * cm, second=1 * cm),
    lambda make, front, back: make.hem(front.top, back.top, first=1 * cm, second=1 * cm),
)
WOULD_SEW = {
    # (change, number of the operation, counted from 0): why it would sew
    ("drop", 4): "a fitting closes nothing",
    ("repeat", 0): "a second basting beside the first comes out with it",
    ("repeat", 1): "tried on twice",
    ("repeat", 4): "tried on twice",
    ("swap", 3): "tried on before the first row, with the basting out and the side pinned",
    ("swap", 4): "tried on when both rows are sewn",
    ("swap", 5): "the two sides do not meet",
    # Judged again after the first run: the hem was thought to need both sides.
    ("swap", 6): "hemmed flat, the last side sewn down over the hem, as simple blouses are",
    ("swap", 7): "the two hems do not meet",
}


def panel(name: str) -> Piece:
    """A single panel of 40 by 50 cm, a slit marked on its right side."""
    points = [Point(0, 0), Point(400, 0), Point(400, 500), Point(0, 500)]
    sides = zip(ALLOWED.items(), points, points[1:] + points[:1], strict=True)
    edges = tuple(Edge(edge, Path.line(a, b), allowance) for (edge, allowance), a, b in sides)
    return Piece(name, name.capitalize(), edges, cut=CutPlan(count=1, said=True), marks=(SLIT,), grain=GRAIN)


def sewn(*writes: Callable[..., Any]) -> Pattern:
    pieces = (panel("front"), panel("back"))
    make = Make(pieces)
    for write in writes:
        write(make, *map(PieceHandle, pieces))
    return pattern_of(make.operations)


def pattern_of(operations: tuple[Operation, ...]) -> Pattern:
    pieces = (panel("front"), panel("back"))
    record = SewRecord("s", "Sew", "", "", operations)
    info = replace(LessonInfo("Trial", "trial"), notions=("thread",))
    return Pattern(info, NOBODY, (), pieces, (), (), (record,))


def objections(pattern: Pattern) -> list[str]:
    """What the proof has against the sewing; that nothing is drafted here is another matter."""
    return [f"{found.code}: {found}" for found in prove(pattern) if found.level != "note"]


def changes() -> Iterator[tuple[str, int, Pattern]]:
    row = sewn(*ORDER).sewing[0].operations
    for i in range(len(row)):
        yield "drop", i, pattern_of(row[:i] + row[i + 1 :])
        yield "repeat", i, pattern_of((*row[: i + 1], row[i], *row[i + 1 :]))
    for i, (one, other) in enumerate(pairwise(row)):
        yield "swap", i, pattern_of((*row[:i], other, one, *row[i + 2 :]))


def test_the_order_as_it_is_has_no_objection() -> None:
    assert objections(sewn(*ORDER)) == []


@pytest.mark.parametrize(("change", "number", "pattern"), list(changes()))
def test_every_change_is_noticed_or_would_sew(change: str, number: int, pattern: Pattern) -> None:
    found = objections(pattern)
    if (change, number) in WOULD_SEW:
        assert found == [], WOULD_SEW[change, number]
    else:
        assert found, f"{change} {number}: nobody notices"


def seam(**more: Any) -> Callable[..., Any]:
    return lambda make, front, back: make.french_seam(
        front.right_side, back.right_side, first=6 * mm, second=4 * mm, **more
    )


@pytest.mark.parametrize(
    ("what", "writes"),
    [
        ("opening_sewn_shut", (seam(),)),
        ("opening_moved", (seam(opening=(20 * cm, 25 * cm)),)),
        (
            "raw_edge",  # a gap for turning that nobody closes
            (
                lambda make, front, back: make.plain_seam(
                    front.right_side, back.right_side, allowance=1 * cm, gap=front.slit
                ),
            ),
        ),
    ],
)
def test_an_opening_that_is_not_what_was_marked_is_noticed(what: str, writes: tuple[Callable[..., Any], ...]) -> None:
    pattern = sewn(*writes, *ORDER[6:])
    assert {found.split(":")[0] for found in objections(pattern)} == {what}


def test_a_gap_that_is_slip_stitched_is_no_opening_sewn_shut() -> None:
    closed = sewn(
        lambda make, front, back: make.plain_seam(front.right_side, back.right_side, allowance=1 * cm, gap=front.slit),
        lambda make, front, back: make.slip_stitch(front.slit, back.slit, allowance=1 * cm),
        *ORDER[6:],
    )
    assert objections(closed) == []
