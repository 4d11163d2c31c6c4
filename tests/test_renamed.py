"""Every example lesson with all its names in another language gives the same pattern, words aside: roles decide, names
do not."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import Any

import pytest

from kit.cloth.lay import lays
from kit.lesson.pattern import Pattern
from kit.paper.pages import plan
from kit.paper.papers import A4
from kit.paper.sheet import sheet
from kit.picture.draft import bench_drawing, step_drawing
from kit.picture.flat import laid_flat
from kit.picture.piece_sheet import piece_drawing
from kit.picture.sewing import scene_drawing
from kit.piece.allowance import cut_line, has_allowances
from kit.sewing.in_work import shown_scenes
from tests.example import lesson_notebooks
from tests.renamed import foreign, foreign_lesson, names_in, plain_lesson, shape, work

LESSONS = tuple(path.stem for path in lesson_notebooks())
# What the author must say, since nothing else tells it: which of two panels drawn on blank paper is the back, and which
# construction line or edge on elastic lies at the waist (in two parts, or it would be taken for a name and
# renamed).
SAID = {
    "ferry_tote": {"front_panel": 'front.role("front")', "back_panel": 'back.role("back")'},
    "lantern_bag": {
        "draw_front": 'front.role("front")',
        "trace_pieces": 'back.role("back"); front_lining.role("front"); back_lining.role("back")',
    },
    "eddy_skirt": {"swing": 'front.role("front", tsiaw_enil="waist_" + "line")', "trace_back": 'back.role("back")'},
    "breaker_skirt": {
        "draw_first": 'first.role("front", tsiaw="wa" + "ist", tsiaw_enil="waist_" + "line")',
        "draw_second": 'second.role("front")',
        "draw_third": 'third.role("front")',
        "trace_back": 'back_first.role("back"); back_second.role("back"); back_third.role("back")',
    },
    "limpet_hat": {"swing_side": 'crown.role(daeh_enil="head_" + "line")'},
    "oyster_apron": {"draw": 'apron.role(tsiaw_enil="waist_" + "line")'},
}


@cache
def both(lesson: str) -> tuple[Pattern, Pattern]:
    own = work(plain_lesson(f"{lesson}.ipynb"))
    return own, work(foreign_lesson(f"{lesson}.ipynb", names_in(own), SAID.get(lesson)))


def same(one: Any, two: Any, what: str) -> None:
    (kinds, numbers), (other_kinds, others) = shape(one), shape(two)
    assert kinds == other_kinds, what
    assert numbers, what
    assert len(others) == len(numbers), what
    assert [pair for pair in zip(numbers, others, strict=True) if not abs(pair[0] - pair[1]) <= 1e-9] == [], what


@pytest.mark.parametrize("lesson", LESSONS)
def test_no_name_is_left(lesson: str) -> None:
    own, other = both(lesson)
    names, others = names_in(own), names_in(other)
    assert {foreign(name) for name in names} >= {piece.name for piece in other.pieces}
    kept = {edge.name for piece in other.pieces for edge in piece.edges} & names
    assert not kept, "these edges kept their English names"
    assert len(others) >= len({piece.name for piece in own.pieces}) * 4
    assert [piece.worn for piece in other.pieces] == [piece.worn for piece in own.pieces]


@pytest.mark.parametrize("lesson", LESSONS)
def test_cut_lines(lesson: str) -> None:
    for piece, other in zip(*(pattern.pieces for pattern in both(lesson)), strict=True):
        assert has_allowances(piece) == has_allowances(other)
        if has_allowances(piece):
            same(cut_line(piece), cut_line(other), piece.name)


@pytest.mark.parametrize("lesson", LESSONS)
def test_pictures(lesson: str) -> None:
    own, other = both(lesson)
    same(bench_drawing(own), bench_drawing(other), "bench")
    for view in ("front", "back"):
        same(laid_flat(own, view), laid_flat(other, view), view)  # type: ignore[arg-type]
    for piece, renamed in zip(own.pieces, other.pieces, strict=True):
        if has_allowances(piece):
            same(piece_drawing(piece, own), piece_drawing(renamed, other), piece.name)
    for step, there in zip(own.steps, other.steps, strict=True):
        same(step_drawing(step), step_drawing(there), step.key)
    for record, again in zip(own.sewing, other.sewing, strict=True):
        for operation, twin in zip(record.operations, again.operations, strict=True):
            for scene, image in zip(shown_scenes(own, operation), shown_scenes(other, twin), strict=True):
                same(scene_drawing(scene, own), scene_drawing(image, other), f"{record.key}, {operation.kind}")


@pytest.mark.parametrize("lesson", [name for name in LESSONS if name != "blocks_and_moves"])
def test_lays_and_pages(lesson: str) -> None:
    own, other = both(lesson)
    same(lays(own), lays(other), "lays")
    one, two = sheet(own, (A4,)), sheet(other, (A4,))
    same(
        [(p.motion, p.piece.outline) for p in one.placements],
        [(p.motion, p.piece.outline) for p in two.placements],
        "sheet",
    )
    assert (two.width, two.height) == pytest.approx((one.width, one.height), abs=1e-9)
    same(plan(one, A4), plan(two, A4), "pages")


def test_a_role_that_is_lost_is_seen() -> None:
    """The comparison has teeth: a back whose role is taken away is drawn the other way round."""
    own, other = both("tideline_wrap_top")
    blind = replace(other, pieces=tuple(replace(piece, role="", worn="") for piece in other.pieces))
    with pytest.raises(AssertionError):
        same(laid_flat(own, "front"), laid_flat(blind, "front"), "flat")
    unhemmed = [
        replace(piece, corners=(), edges=tuple(replace(e, role="") for e in piece.edges)) for piece in other.pieces
    ]
    hemmed = [replace(piece, corners=()) for piece in own.pieces]
    with pytest.raises(AssertionError):
        for one, two in zip(hemmed, unhemmed, strict=True):
            same(cut_line(one), cut_line(two), one.name)
