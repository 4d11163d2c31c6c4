"""A bag with round corners, at its mouth."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.geometry import Arc, Path, Point
from kit.piece.piece import Edge
from kit.units import mm


@pytest.fixture(scope="module")
def bag(garments):
    """A panel with one round corner, its back, and linings of both."""
    plain = garments.polygon(
        "front", [(0, 0), (200, 0), (200, -200), (0, -200)], {"top": 10, "far": 10, "bottom": 10, "near": 10}
    )
    corner = Edge("corner", Path((Arc(Point(150, -150), 50, 0.0, -math.pi / 2),)), allowance=10)
    edges = {edge.name: edge for edge in plain.edges}
    right = replace(edges["far"], path=Path.line(Point(200, 0), Point(200, -150)))
    bottom = replace(edges["bottom"], path=Path.line(Point(150, -200), Point(0, -200)))
    front = replace(plain, edges=(edges["top"], right, corner, bottom, edges["near"]))
    names = ("front", "back", "front_lining", "back_lining")
    return tuple(replace(front, name=name, title=name.replace("_", " ").capitalize()) for name in names)


def _round(piece):
    return piece.far + piece.corner + piece.bottom + piece.near


@pytest.mark.parametrize("sides", [True, False])
def test_corners_are_spoken_of_where_there_are_some(sewn, bag, sides):
    """The mouth of a bag whose sides are sewn is a ring: nothing to pivot at, no corner to cut off."""

    def write(make, front, back, front_lining, back_lining):
        if sides:
            make.plain_seam(_round(front), _round(back), allowance=10 * mm)
            make.plain_seam(_round(front_lining), _round(back_lining), allowance=10 * mm)
            make.seam_to_turn([front.top, back.top], [front_lining.top, back_lining.top], allowance=10 * mm)
        else:
            make.seam_to_turn(front.top, front_lining.top, allowance=10 * mm)

    found = sewn(bag, write)
    keys = {sentence.key for sentence in found.last.sentences(found.pattern)}
    smooth = {"seam_to_turn.sew_smooth", "seam_to_turn.trim_smooth"}
    assert (keys >= smooth) is sides and not keys & (smooth if not sides else {"seam_to_turn.sew", "seam_to_turn.trim"})


def test_a_row_all_round_a_cushion_pivots_at_its_corners(sewn, bag):
    def write(make, front, back, **_):
        make.seam_to_turn(front.top + _round(front), back.top + _round(back), allowance=10 * mm)

    found = sewn(bag, write)
    assert "seam_to_turn.sew" in {sentence.key for sentence in found.last.sentences(found.pattern)}
