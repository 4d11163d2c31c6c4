"""Pleats and tucks as geometry: what they take up, how they close, and the cap that lets the edge run on under them.

Outside check: a straight pleat folded in software (shapely's affine maps) lies flush along the edge beside it.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Literal

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st

from kit.errors import KitError
from kit.geometry import Line, Motion, Point, Vector
from kit.lesson import moves, pleating
from kit.piece.dart import closed_edge, mouths_length, sewn_length
from kit.piece.piece import Notch
from kit.piece.pleat import cap, closing, fold_line, intake, lies, pleat_of, taken_up
from tests.pleated import panel, pleated

SIDES: tuple[Literal["start", "end"], ...] = ("start", "end")


def test_paper_grows_by_what_is_taken_up_and_the_sewn_edge_stays() -> None:
    piece = panel()
    found = pleated(piece)
    assert found.outline.area - piece.outline.area == pytest.approx(60.0 * 500.0)
    assert intake(pleat_of(found, "pleat")) == pytest.approx(60.0)
    for edge in ("waist", "side", "centre"):
        assert sewn_length(found, edge) == pytest.approx(piece.edge(edge).path.length)
    assert mouths_length(found, "waist") == pytest.approx(60.0)
    # Held at the waist alone: the hem hangs free and is hemmed at its whole length.
    assert sewn_length(found, "hem") == pytest.approx(piece.edge("hem").path.length + 60.0)
    both = pleated(piece, held="both")
    assert sewn_length(both, "hem") == pytest.approx(piece.edge("hem").path.length)


def test_it_closes_line_on_line_and_the_fold_lies_midway() -> None:
    found = pleated(panel(rise=25.0))
    pleat = pleat_of(found, "pleat")
    one, two = pleat.lines
    shut = closing(found, pleat)
    assert shut(two.start).distance(one.start) < 1e-9 and shut(two.end).distance(one.end) < 1e-6
    fold = fold_line(pleat)
    for share in (0.0, 0.4, 1.0):
        at = fold.at(fold.length * share)
        assert one.distance_to(at) == pytest.approx(two.distance_to(at), abs=1e-6)


@given(
    st.floats(-60, 60),
    st.floats(70, 150),
    st.floats(10, 70),
    st.sampled_from(SIDES),
    st.booleans(),
)
def test_folded_and_laid_it_lies_along_the_edge_at_both_ends(
    rise: float, at: float, wide: float, laid: Literal["start", "end"], hem: bool
) -> None:
    """The cap's halves, folded as the cloth is, fall on the edge beside the pleat to 0.05 mm."""
    piece = panel(rise=rise)
    assume(wide < 70)
    found = pleated(piece, at=at, wide=wide, laid=laid)
    pleat = pleat_of(found, "pleat")
    edge = pleat.far if hem else pleat.edge
    start, end = (pleat.far_start, pleat.far_end) if hem else (pleat.start, pleat.end)
    path = found.edge(edge).path
    drawn = path.between(start, end)
    assert (drawn.start - path.at(start)).length < 1e-9
    ahead = (laid == "end") != hem
    foot = path.at(end) if ahead else path.at(start)
    line = min(pleat.lines, key=lambda leg: min(leg.start.distance(foot), leg.end.distance(foot)))
    fold = fold_line(pleat)
    beside = path.between(end, path.length) if ahead else path.between(0.0, start)
    target = shapely.LineString([(p.x, p.y) for p in beside.extended(100.0, "end" if ahead else "start").points(0.01)])
    near = Motion.reflection(line.start, line.end)
    over = Motion.reflection(fold.start, fold.end)
    for share in (0.05, 0.3, 0.45, 0.55, 0.7, 0.95):
        at_cap = drawn.at(drawn.length * share)
        close = (share > 0.5) == ahead
        folded = near(at_cap) if close else near(over(at_cap))
        assert target.distance(shapely.Point(folded.x, folded.y)) < 0.05
    # Folded shut the edge is as long as before and runs straight.
    assert sewn_length(found, "waist") == pytest.approx(piece.edge("waist").path.length, abs=1e-6)
    shut = closed_edge(found, "waist")
    assert shut.length == pytest.approx(piece.edge("waist").path.length, abs=1e-6)
    assert shut.start.distance(shut.end) == pytest.approx(shut.length, abs=1e-6)


def test_a_tapered_pleat_opens_at_one_edge_alone() -> None:
    piece = panel()
    found = pleating.add_pleat(piece, "pleat", ("waist", 100.0), ("hem", 150.0), 50.0, tapered=True)
    pleat = pleat_of(found, "pleat")
    assert pleat.tapered and not pleat.far
    assert found.edge("hem").path.length == pytest.approx(300.0)
    assert sewn_length(found, "waist") == pytest.approx(260.0)
    one, two = pleat.lines
    assert one.start.distance(two.start) == pytest.approx(50.0)
    assert one.length == pytest.approx(two.length)


def test_box_and_inverted_pleats_are_two_that_face_or_part() -> None:
    piece = panel()
    far = pleating.across(piece, "waist", 130.0)
    box = pleating.box_pleat(piece, "box", ("waist", 130.0), far, 80.0)
    first, second = pleat_of(box, "box_1"), pleat_of(box, "box_2")
    assert (first.laid, second.laid) == ("end", "start")
    # Half the intake each, and a face as wide: the folds behind it just meet.
    assert second.start - first.end == pytest.approx(40.0)
    assert intake(first) == intake(second) == pytest.approx(40.0)
    assert sewn_length(box, "waist") == pytest.approx(260.0)
    inverted = pleating.box_pleat(piece, "inv", ("waist", 130.0), far, 80.0, inverted=True)
    first, second = pleat_of(inverted, "inv_1"), pleat_of(inverted, "inv_2")
    assert (first.laid, second.laid) == ("start", "end")
    assert first.end == pytest.approx(second.start)
    assert sewn_length(inverted, "waist") == pytest.approx(260.0)
    assert inverted.outline.area == pytest.approx(box.outline.area)


def test_a_row_of_tucks_lies_at_its_spacing_and_takes_twice_its_depth() -> None:
    piece = panel()
    row = pleating.tuck_row(piece, "tuck", ("waist", 60.0), count=4, depth=5.0, apart=20.0, sewn=120.0)
    tucks = [pleat_of(row, f"tuck_{n}") for n in (1, 2, 3, 4)]
    assert [t.start for t in tucks] == pytest.approx([60.0, 90.0, 120.0, 150.0])  # 20 apart + 10 in each
    assert all(intake(t) == pytest.approx(10.0) and t.sewn == 120.0 for t in tucks)
    ways = [(t.lines[0].end - t.lines[0].start).unit() for t in tucks]
    assert all(abs(way.cross(ways[0])) < 1e-9 for way in ways)
    assert sewn_length(row, "waist") == pytest.approx(260.0)
    assert sewn_length(row, "hem") == pytest.approx(340.0)  # released below 120 mm
    through = pleating.tuck_row(piece, "tuck", ("waist", 60.0), count=4, depth=5.0, apart=20.0)
    assert sewn_length(through, "hem") == pytest.approx(300.0)


def test_what_lies_on_the_paper_goes_with_it() -> None:
    piece = replace(panel(), notches=(Notch("waist", 50.0), Notch("waist", 150.0), Notch("hem", 250.0)))
    found = pleated(piece)
    # The waist runs from side to centre: the centre lies on the fold and stays, what is beyond moves out.
    assert [n.distance for n in found.notches] == pytest.approx([50.0, 210.0, 310.0])
    assert found.edge("centre").path == piece.edge("centre").path
    assert 210.0 - mouths_length(found, "waist", 0.0, 210.0) == pytest.approx(150.0)
    dart = moves.add_dart(panel(), "dart", "waist", at=60.0, intake=20.0, apex=Point(200, 380))
    both = pleating.add_pleat(dart, "pleat", ("waist", 170.0), pleating.across(dart, "waist", 170.0), 40.0)
    assert sewn_length(both, "waist") == pytest.approx(sewn_length(dart, "waist"))
    assert mouths_length(both, "waist", 0.0, 100.0) == pytest.approx(mouths_length(dart, "waist"))


def test_moves_after_a_pleat_keep_it() -> None:
    found = pleated(panel())
    darted = moves.add_dart(found, "dart", "side", at=250.0, intake=12.0, apex=Point(260, 250))
    assert lies(darted, pleat_of(darted, "pleat"))
    twice = pleating.add_pleat(found, "second", ("waist", 220.0), pleating.across(found, "waist", 220.0), 30.0)
    first = pleat_of(twice, "pleat")
    assert lies(twice, first) and intake(first) == pytest.approx(60.0)
    assert len(taken_up(twice, "waist")) == 2
    path = twice.edge("waist").path
    assert first.lines[0].start.distance(path.at(first.start)) < 1e-6
    assert first.lines[1].start.distance(path.at(first.end)) < 1e-6


def test_faults_are_told_plainly() -> None:
    piece = panel()
    far = pleating.across(piece, "waist", 100.0)
    found = pleated(piece)
    cases = [
        (lambda: pleating.add_pleat(found, "pleat", ("waist", 20.0), far, 10.0), "already a 'pleat'"),
        (lambda: pleating.add_pleat(piece, "p", ("waist", 100.0), far, 0.0), "more than nothing"),
        (lambda: pleating.add_pleat(piece, "p", ("waist", 100.0), ("waist", 20.0), 9.0), "starts and ends"),
        (lambda: pleating.add_pleat(piece, "p", ("waist", 400.0), far, 9.0), "no place 40 cm"),
        (lambda: pleating.add_pleat(found, "p", ("waist", 130.0), ("hem", 20.0), 9.0), "inside the pleat"),
        (lambda: pleating.across(piece, "waist", 100.0, Vector(1.0, 0.0)), "nearly along"),
        (lambda: pleating.box_pleat(piece, "b", ("waist", 100.0), far, 80.0, face=10.0), "cannot hide two folds"),
        (lambda: pleating.tuck_row(piece, "t", ("waist", 9.0), count=30, depth=5.0, apart=20.0), "26 cm"),
        (lambda: pleating.tuck_row(piece, "t", ("waist", 9.0), count=3, depth=5.0, apart=2.0), "over each other's"),
        (lambda: pleating.tuck_row(piece, "t", ("waist", 9.0), count=0, depth=5.0, apart=2.0), "at least one"),
        (
            lambda: pleating.tuck_row(piece, "t", ("waist", 99.0), count=1, depth=5.0, apart=9.0, sewn=900.0),
            "cannot be stitched",
        ),
        (lambda: pleat_of(found, "plaet"), "no pleat or tuck"),
        (lambda: pleated(piece, at=259.9, laid="end"), "no edge is left"),
    ]
    for call, words in cases:
        with pytest.raises(KitError) as caught:
            call()
        assert words in str(caught.value), str(caught.value)


def test_lines_that_differ_do_not_close() -> None:
    found = pleated(panel())
    pleat = pleat_of(found, "pleat")
    short = replace(pleat, lines=(pleat.lines[0], pleat.lines[1].between(0.0, 400.0)))
    with pytest.raises(KitError, match="two lines"):
        closing(found, short)
    off = replace(pleat, end=900.0)
    assert not lies(found, off)
    with pytest.raises(KitError, match="does not lie on"):
        cap(found, off)


def test_a_straight_edge_square_to_the_pleat_needs_no_roof() -> None:
    found = pleated(panel())
    pleat = pleat_of(found, "pleat")
    assert cap(found, pleat).is_straight
    sloped = pleated(panel(rise=60.0))
    roof = cap(sloped, pleat_of(sloped, "pleat"))
    assert not roof.is_straight and isinstance(roof.curves[0], Line)
    slope = math.atan2(60.0, 260.0)
    middle = roof.start.mid(roof.end)
    tip = roof.at(roof.length / 2)
    # Each half of the roof slopes as the waist does (13 degrees) over half the intake.
    assert tip.distance(middle) == pytest.approx(30.0 * math.tan(slope), abs=0.5)
