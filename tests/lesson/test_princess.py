"""A princess seam: a front cut in two along its darts, as the guide tells it (common practice, no source)."""

from __future__ import annotations

import json
from itertools import pairwise

import pytest

from kit import Lesson, cm, darted_bodice_block
from kit.blocks.darted_bodice import darted_bodice_block as block
from kit.body.chart import workshop_chart
from kit.lesson.pattern import Pattern
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece
from kit.proof import prove
from tests.example import EXAMPLE


def recipe() -> str:
    """The code that the guide shows."""
    cells = json.loads(EXAMPLE.with_name("guide_from_a_block.ipynb").read_text("utf-8"))["cells"]
    texts = ["".join(cell["source"]) for cell in cells]
    (text,) = [text for text in texts if "Cut the front in two along its darts" in text]
    return text.partition("```python\n")[2].partition("```")[0]


def bodice(size: str) -> Pattern:
    lesson = Lesson("Princess bodice", start=darted_bodice_block, size=size, notions=("sewing thread",))
    exec(recipe(), {"lesson": lesson, "cm": cm})

    @lesson.step("Allowances")
    def allowances(back, centre_front, front):
        """One centimetre at the seams."""
        seam, left = 1 * cm, 0 * cm
        back.allow(neck=left, shoulder=seam, armhole=left, side=seam, waist=left)
        centre_front.allow(centre=left, neck=left, shoulder=seam, princess=seam, waist=left)
        front.allow(shoulder=seam, armhole=left, side=seam, waist=left, princess=seam)
        for piece in (back, centre_front, front):
            piece.grain()
        back.cut(1, fold="centre")
        centre_front.cut(2, mirrored=True)
        front.cut(2, mirrored=True, title="Side front")
        front.true(front.side, back.side)
        front.match(front.side, back.side, at=[8 * cm])

    @lesson.sew("Sew")
    def sew(make, back, centre_front, front):
        """The princess seams first."""
        make.dart(back)
        make.plain_seam(centre_front.princess, front.princess, allowance=1 * cm)
        make.plain_seam([centre_front.shoulder, front.shoulder], back.shoulder, allowance=1 * cm)
        make.plain_seam(front.side, back.side, allowance=1 * cm)
        make.edge_finish(centre_front.neck, back.neck, centre_front.centre, leave=True)
        make.edge_finish(front.armhole, back.armhole, centre_front.waist, front.waist, back.waist, leave=True)

    return lesson.work()


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_a_front_is_cut_in_two_along_its_darts(size: str) -> None:
    pattern = bodice(size)
    centre, side = pattern.piece("centre_front"), pattern.piece("front")
    assert centre.edge("princess").path.length == pytest.approx(side.edge("princess").path.length, abs=0.5)
    for piece in (centre, side):
        assert all(a.path.end.close_to(b.path.start, 0.5) for a, b in pairwise([*piece.edges, piece.edges[0]]))
    # What the darts took is gone, and no more: the two parts are the front with its darts cut out.
    whole = block(workshop_chart()[size])[0]
    left = abs(whole.outline.area) - sum(map(lambda dart: _area(whole, dart), whole.darts))
    assert abs(centre.outline.area) + abs(side.outline.area) == pytest.approx(left, rel=0.02)
    assert [str(each) for each in prove(pattern)] == []


def _area(piece: Piece, dart: Dart) -> float:
    path = piece.edge(dart.edge).path
    one, two = path.at(dart.start), path.at(dart.end)
    return abs((two - one).cross(dart.apex - one)) / 2
