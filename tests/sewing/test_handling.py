"""What is told of handling the cloth: by angles and bends reckoned by hand. That cloth gives between 20 and 70 degrees
off the grain, and that a hollow edge is clipped before it is sewn to a straighter one: common practice, no source."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit import blank_paper
from kit.cloth.needle import setting_for
from kit.errors import KitError
from kit.geometry import Arc, Path, Point
from kit.lesson.lesson import Lesson
from kit.piece.piece import CutPlan, Edge, Grain, Piece
from kit.prose.say import sentences
from kit.sewing.handling import bend, handling, off_grain
from kit.units import cm

GRAIN = Grain(Point(10.0, 20.0), Point(10.0, 120.0))


def leaning(degrees: float, name: str = "panel") -> Piece:
    """A parallelogram whose sides lean so far off its grain."""
    slope = 300.0 * math.tan(math.radians(degrees))
    spots = [Point(0, 0), Point(200, 0), Point(200 + slope, 300), Point(slope, 300)]
    names = ("hem", "side", "top", "other")
    paths = [Path.line(a, b) for a, b in zip(spots, [*spots[1:], spots[0]], strict=True)]
    edges = tuple(Edge(n, path, allowance=10.0) for n, path in zip(names, paths, strict=True))
    return Piece(name, name.capitalize(), edges, grain=GRAIN, cut=CutPlan(1))


@pytest.mark.parametrize(("degrees", "share"), [(0, 0), (15, 0), (25, 1), (45, 1), (65, 1), (75, 0)])
def test_an_edge_gives_where_it_lies_across_the_grain(degrees: float, share: float) -> None:
    assert off_grain(leaning(degrees), leaning(degrees).edge("side").path) == share


def test_a_piece_without_a_grainline_is_not_judged() -> None:
    assert off_grain(replace(leaning(45), grain=None), leaning(45).edge("side").path) == 0.0


def test_a_quarter_circle_bends_by_ninety_degrees() -> None:
    """By definition of the turning of a tangent."""
    quarter = Path((Arc(Point(0, 0), 100.0, 0.0, math.pi / 2),))
    assert bend(quarter) == pytest.approx(90.0, abs=0.5)
    assert bend(quarter.reversed()) == pytest.approx(-90.0, abs=0.5)


def told(sewn, pieces, write, kinds=("stretch", "curve")):
    found = sewn(pieces, write)
    return handling(found.pattern.sewing, found.pattern, kinds)


def test_it_is_said_once_and_not_of_an_edge_that_is_stayed(sewn) -> None:
    pair = (leaning(45, "front"), leaning(45, "back"))

    def twice(make, front, back):
        make.plain_seam(front.side, back.side, allowance=1 * cm)
        make.topstitch(front.side)

    def stayed(make, front, back):
        make.staystitch(front.side, back.side)
        make.plain_seam(front.side, back.side, allowance=1 * cm)

    once = told(sewn, pair, twice)
    assert [(key, [s.key for s in said]) for key, said in once.items()] == [(("s0", 0), ["handling.stretches"])]
    assert told(sewn, pair, twice, kinds=()) == {}
    assert told(sewn, pair, stayed) == {}
    assert told(sewn, (leaning(10, "front"), leaning(10, "back")), twice) == {}


def test_the_hollow_edge_is_the_one_that_is_clipped(sewn) -> None:
    """A half circle cut out of a yoke, sewn to the straight top of a panel."""
    radius = 200.0 / math.pi
    hollow = Path((Arc(Point(100.0, 300.0), radius, math.pi, math.pi),))  # down into the piece and up again
    a, b = hollow.start, hollow.end
    spots = [Point(0, 300), a, b, Point(200, 300), Point(200, 0), Point(0, 0)]
    paths = [
        Path.line(spots[0], a),
        hollow,
        Path.line(b, spots[3]),
        *(Path.line(spots[i], spots[(i + 1) % 6]) for i in (3, 4, 5)),
    ]
    names = ("near", "neck", "far", "right", "bottom", "left")
    yoke = Piece(
        "yoke", "Yoke", tuple(Edge(n, p, allowance=10.0) for n, p in zip(names, paths, strict=True)), cut=CutPlan(1)
    )
    found = sewn(
        (yoke, leaning(0, "panel")), lambda make, yoke, panel: make.plain_seam(yoke.neck, panel.top, allowance=1 * cm)
    )
    ((_, (said,)),) = handling(found.pattern.sewing, found.pattern, ("curve",)).items()
    assert said.values["hollow"][0][0].piece == "yoke" and said.values["other"][0][0].piece == "panel"
    words = sentences(found.pattern, found.last)[0]
    assert "clip the allowance of the neck edge of the yoke nearly to the stitch line" in words


@pytest.mark.parametrize(
    ("weight", "needle", "stitch", "fine"),
    [
        ("60 to 90 g/m²", ("60/8", "70/10"), (2.0, 2.0), True),
        ("80 bis 140 g/m²", ("60/8", "80/12"), (2.0, 2.5), False),
        ("250 g", ("90/14", "90/14"), (3.0, 3.0), False),
        ("10 oz denim", ("100/16", "100/16"), (3.5, 3.5), False),  # 339 g/m²
    ],
)
def test_needle_and_stitch_follow_the_weight(weight, needle, stitch, fine) -> None:
    """Common practice, no source; values from memory."""
    found = setting_for(weight)
    assert found and (found.needle, found.stitch, found.fine) == (needle, stitch, fine)
    assert setting_for("light enough to tie") is None


def test_a_lesson_says_what_it_wants_told() -> None:
    assert Lesson("Quiet", start=blank_paper, handling=()).info.handling == ()
    with pytest.raises(KitError, match="'stretching' is nothing that is told of handling cloth"):
        Lesson("Loud", start=blank_paper, handling=("stretching",))
