"""Lay plans: the true outlines on the cloth, checked with shapely, against bounds that hold for any lay and against the
plain rows of bounding boxes.

Source of the lower bound: elementary (what lies on the cloth without covering each other has at most its area). Gap,
selvedge, folding with right sides together and single pieces on opened cloth: common practice, no source. The check
by enumeration tries every order of the rectangles, after the bottom-left rule of B. S. Baker, E. G. Coffman and R. L.
Rivest, "Orthogonal packings in two dimensions", SIAM Journal on Computing 9 (1980), from memory.
"""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import replace
from functools import cache
from itertools import combinations, permutations
from pathlib import Path as FilePath
from typing import Any

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.body.chart import workshop_chart
from kit.cloth.cut_list import boxes, cut_list
from kit.cloth.lay import CuttingTable, LaidPiece, Lay, TooNarrow, lay, lays
from kit.cloth.need import GAP, need, rows
from kit.cloth.parts import parts
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern
from kit.piece.allowance import cut_line
from kit.piece.piece import CutPlan, Edge, Grain, Piece, Strip
from kit.piece.strips import SELVEDGE
from kit.piece.unfold import unfolded

SLACK = 0.02  # mm, for points that a polygon puts a little off its curve


def polygon(placed: LaidPiece) -> Any:
    return shapely.Polygon([(p.x, p.y) for curve in placed.outline for p in list(curve.points(0.02))[:-1]])


def shape(
    name: str, corners: list[tuple[float, float]], number: int = 1, kind: str = "lengthwise", **cut: object
) -> Piece:
    """A piece with straight edges and no allowances: its cut line is its outline. The edge on the fold is `edge0`."""
    points = [Point(*corner) for corner in corners]
    around = zip(points, [*points[1:], points[0]], strict=True)
    edges = tuple(Edge(f"edge{at}", Path.line(a, b), 0.0) for at, (a, b) in enumerate(around))
    inside = shapely.Polygon(corners).representative_point()
    grain = Grain(Point(inside.x, inside.y - 5.0), Point(inside.x, inside.y + 5.0), kind)  # type: ignore[arg-type]
    return Piece(name, name.title(), edges, number, CutPlan(**cut), grain)  # type: ignore[arg-type]


def rectangle(name: str, across: float, along: float, number: int = 1, **cut: object) -> Piece:
    return shape(name, [(0.0, along), (0.0, 0.0), (across, 0.0), (across, along)], number, **cut)


def pattern_of(*pieces: Piece, strips: tuple[Strip, ...] = (), nap: str = "none") -> Pattern:
    info = LessonInfo("Plain", "plain", cloth_widths=(1400.0, 1120.0), nap=nap)  # type: ignore[arg-type]
    return Pattern(info, workshop_chart()["W4"], (), pieces, strips, (), ())


# An L whose mirror image, laid the same way up, is another shape.
HOOK = [(0.0, 400.0), (0.0, 0.0), (300.0, 0.0), (300.0, 120.0), (110.0, 120.0), (110.0, 400.0)]


def sound(found: Lay) -> None:
    """All that must hold of any lay: inside the cloth, apart, fold pieces at the fold."""
    for each in found.placed:
        x0, y0, x1, y1 = polygon(each).bounds
        across = found.width if each.opened else found.width / 2
        least = 0.0 if not each.opened else SELVEDGE
        assert least - SLACK <= x0 and x1 <= across - SELVEDGE + SLACK, (each.piece, x0, x1)
        assert y0 >= -SLACK and y1 <= found.length + SLACK
        if found.fold == "part":
            assert y0 >= found.folded + GAP - SLACK if each.opened else y1 <= found.folded + SLACK
        if each.on_fold:
            assert abs(x0) < SLACK and each.layers == 2 and not each.opened
        assert each.layers == (1 if each.opened else 2)
        assert each.at.x == pytest.approx(x0, abs=SLACK) and each.at.y == pytest.approx(y0, abs=SLACK)
    for one, other in combinations(found.placed, 2):
        assert polygon(one).distance(polygon(other)) >= GAP - SLACK, (one.piece, other.piece)
    area = sum(polygon(each).area * each.layers for each in found.placed)
    assert found.length >= area / found.width - SLACK
    assert found.waste == pytest.approx(1 - area / (found.width * found.length), abs=1e-4)


def complete(found: Lay, pattern: Pattern) -> None:
    """As many pieces as the cut list says, left and right ones alike of a pair."""
    given_: Counter[str] = Counter()
    sides: Counter[tuple[str, str]] = Counter()
    for each in found.placed:
        assert each.copy == given_[each.title] + 1
        given_[each.title] += each.gives
        if not each.on_fold and not each.axis:
            sides.update((each.title, side) for side in each.sides)
    wanted: Counter[str] = Counter()
    for cut in cut_list(pattern):
        count = cut.count if cut.cloth == found.cloth else 0
        wanted[cut.title] += max(count, cut.interfacing) if found.cloth == "interfacing" else count
        if cut.how == "pair" and cut.cloth == found.cloth and cut.count % 2 == 0:
            assert sides[cut.title, "left"] == sides[cut.title, "right"]
    assert given_ == +wanted


@cache
def all_lays(pattern: Pattern) -> tuple[Lay, ...]:
    return lays(pattern)


@pytest.fixture(scope="session")
def garments(wrap_top: Pattern) -> tuple[Pattern, ...]:
    """A wrap top; the same with a nap; and one with every way of cutting."""
    mixed = pattern_of(
        rectangle("skirt", 300.0, 620.0, 1, fold="edge0"),
        shape("hook", HOOK, 2, count=4, mirrored=True, interfacing=2),
        shape("patch", HOOK, 3, count=2, right_side_up=True),
        shape("yoke", [(0.0, 0.0), (380.0, 0.0), (300.0, 150.0), (80.0, 150.0)], 4, "crosswise", count=2),
        shape("bow", [(0.0, 0.0), (200.0, 0.0), (200.0, 300.0), (0.0, 300.0)], 5, "bias"),
        shape("lining", HOOK, 6, count=2, mirrored=True, cloth="lining"),
        strips=(
            Strip("belt", "Belt", 1200.0, 90.0, 1, 7),
            Strip("binding", "Binding", 400.0, 40.0, 5, 8, grain="bias"),
            Strip("piping", "Piping", 2000.0, 30.0, 2, 9, grain="bias", square=330.0),
            Strip("tab", "Tab", 150.0, 60.0, 3, 10, grain="crosswise"),
        ),
    )
    napped = replace(wrap_top, lesson=replace(wrap_top.lesson, nap="one_way"))
    return wrap_top, napped, mixed, replace(mixed, lesson=replace(mixed.lesson, nap="print"))


def test_every_lay_is_sound_and_complete(garments: tuple[Pattern, ...]) -> None:
    for pattern in garments:
        found = all_lays(pattern)
        assert list(dict.fromkeys((each.cloth, each.width) for each in found if each.cloth == "main")) == [
            ("main", width) for width in pattern.lesson.cloth_widths
        ]
        assert {each.cloth for each in found} == {c for c in ("main", "lining", "interfacing") if boxes(pattern, c)}  # type: ignore[arg-type]
        for each in found:
            sound(each)
            complete(each, pattern)


def test_both_ways_to_fold_are_sound(garments: tuple[Pattern, ...]) -> None:
    for pattern in garments:
        table = CuttingTable.of(pattern, "main")
        for tries in (0, 60):
            for width in (1500.0, 1120.0):
                for way in (table.flat(width, tries), table.folded(width, tries)):
                    found = table.made(way, width) if way else None
                    if found is not None:
                        area = sum(polygon(each).area * each.layers for each in found.placed)
                        sound(replace(found, waste=1 - area / (width * found.length)))


def test_never_longer_than_the_rows_of_boxes(garments: tuple[Pattern, ...]) -> None:
    for pattern in garments:
        for found in all_lays(pattern):
            assert found.length <= need(boxes(pattern, found.cloth), found.width).length + 1e-6
    whole = all_lays(garments[0])[0]
    assert whole.length < 0.8 * need(boxes(garments[0], "main"), whole.width).length


def test_the_same_lay_each_time(wrap_top: Pattern) -> None:
    assert lays(wrap_top) == lays(wrap_top)


def test_the_outline_laid_is_the_cut_line(garments: tuple[Pattern, ...]) -> None:
    for pattern in garments:
        for found in all_lays(pattern):
            for each in found.placed:
                if each.kind == "strip":
                    continue
                piece = pattern.piece(each.piece)
                line = cut_line(unfolded(piece) if piece.fold and not each.on_fold else piece)
                assert polygon(each).area == pytest.approx(line.polygon(0.02).area, rel=1e-4)
                assert sum(c.length for c in each.outline) == pytest.approx(line.length, rel=1e-6)


def test_grain_lies_on_the_grain_it_names(garments: tuple[Pattern, ...]) -> None:
    angles = {"lengthwise": 0.0, "crosswise": 90.0, "bias": 45.0}
    for pattern in garments:
        for found in all_lays(pattern):
            for each in found.placed:
                if each.kind == "strip":
                    continue
                grain = pattern.piece(each.piece).grain
                assert grain is not None and each.grain is not None
                way = each.grain[1] - each.grain[0]
                off = math.degrees(math.atan2(abs(way.x), abs(way.y)))
                assert off == pytest.approx(angles[grain.kind], abs=0.01)
                if grain.kind == "lengthwise":
                    assert (way.y > 0) == (each.turn == 0)
                assert polygon(each).buffer(0.1).covers(shapely.Point(each.grain[0].x, each.grain[0].y))


def test_bias_strips_lie_at_half_a_right_angle(garments: tuple[Pattern, ...]) -> None:
    found = all_lays(garments[2])[0]
    (block,) = [each for each in found.placed if each.piece == "binding"]
    long = max(block.outline, key=lambda curve: curve.length)
    way = long.end - long.start
    assert abs(way.x) == pytest.approx(abs(way.y)) and block.gives == 5 and block.opened
    (square,) = [each for each in found.placed if each.piece == "piping"]
    assert polygon(square).bounds[2] - polygon(square).bounds[0] == pytest.approx(330.0) and square.gives == 2


def test_a_nap_forbids_turning_round(garments: tuple[Pattern, ...]) -> None:
    top, napped, _, printed = garments
    for pattern in (napped, printed):
        for found in all_lays(pattern):
            if found.cloth == "main":
                assert found.nap and all(each.turn == 0 for each in found.placed)
    assert any(each.turn == 180 for found in all_lays(top) for each in found.placed)
    # Two triangles share one box only when one of them is turned round.
    wedge = shape("wedge", [(0.0, 0.0), (900.0, 0.0), (0.0, 900.0)], count=2, right_side_up=True)
    free, held = lay(pattern_of(wedge), "main", 1000.0), lay(pattern_of(wedge, nap="one_way"), "main", 1000.0)
    # 980 mm take the wedge of 900 and 80 mm beside it, where the slant has come down by as much.
    assert free.length < 1200.0
    assert 1720.0 < held.length < 1800.0 + GAP


def test_paper_is_turned_over_only_for_a_pair(garments: tuple[Pattern, ...]) -> None:
    for pattern in garments:
        for found in all_lays(pattern):
            for each in found.placed:
                if each.turned_over:
                    cut = pattern.piece(each.piece).cut
                    assert cut.mirrored or (cut.fold and each.on_fold)
                if each.opened and each.sides == ("left",):
                    assert each.turned_over


def test_a_pair_laid_singly_is_a_left_and_a_right() -> None:
    table = CuttingTable.of(pattern_of(shape("hook", HOOK, count=2, mirrored=True), nap="one_way"), "main")
    found = table.made(table.flat(1400.0, 60), 1400.0)
    one, other = sorted(found.placed, key=lambda each: each.turned_over)
    assert (one.sides, other.sides) == (("right",), ("left",))
    # The upright of the hook stands left as drafted, right when the paper is turned over.
    for each, left in ((one, True), (other, False)):
        outline = polygon(each)
        x0, _, x1, _ = outline.bounds
        assert (outline.centroid.x < (x0 + x1) / 2) == left


def test_what_has_no_mirror_image_is_never_cut_through_two_layers() -> None:
    alike = rectangle("square", 300.0, 300.0, count=2)
    hook = shape("hook", HOOK, count=2)
    up = shape("up", HOOK, count=2, right_side_up=True)
    for piece, doubles in ((alike, True), (hook, False), (up, False)):
        (part,) = parts(pattern_of(piece), "main")
        assert part.doubles == doubles
        for found in lays(pattern_of(piece)):
            for each in found.placed:
                assert not each.turned_over and (doubles or each.layers == 1)


def test_single_pieces_lie_below_the_fold_on_opened_cloth() -> None:
    pattern = pattern_of(
        rectangle("back", 300.0, 700.0, 1, fold="edge0"),
        rectangle("front", 320.0, 700.0, 2, count=2, mirrored=True),
        rectangle("patch", 100.0, 100.0, 3, right_side_up=True),
    )
    table = CuttingTable.of(pattern, "main")
    way = table.folded(1400.0, 60)
    found = table.made(way, 1400.0) if way else None
    assert found is not None and found.fold == "part"
    (patch,) = [each for each in found.placed if each.piece == "patch"]
    assert patch.opened and patch.layers == 1 and patch.at.y == pytest.approx(found.folded + GAP)
    assert found.folded == pytest.approx(700.0, abs=0.5)


def test_too_narrow_is_refused_and_left_out() -> None:
    cape = pattern_of(rectangle("cape", 600.0, 500.0, fold="edge0"))
    assert {each.width for each in lays(cape)} == {1400.0}
    with pytest.raises(TooNarrow, match=r"Cape is 120 cm .* wide, more than cloth of 112 cm"):
        lay(cape, "main", 1120.0)


def test_a_fold_on_the_right_of_the_draft_is_brought_to_the_fold() -> None:
    # Drafted to the left of its fold: the paper is turned over, or turned round.
    left = shape("back", [(0.0, 0.0), (0.0, 600.0), (-200.0, 600.0), (-340.0, 0.0)], fold="edge0")
    for nap, expected in (("one_way", {(0, True)}), ("none", {(0, True), (180, False)})):
        table = CuttingTable.of(pattern_of(left, nap=nap), "main")
        way = table.folded(1400.0, 60)
        found = table.made(way, 1400.0) if way else None
        assert found is not None
        (each,) = found.placed
        assert (each.turn, each.turned_over) in expected and abs(polygon(each).bounds[0]) < SLACK


def test_interfacing_has_no_nap(garments: tuple[Pattern, ...]) -> None:
    (found,) = [each for each in all_lays(garments[3]) if each.cloth == "interfacing"]
    assert not found.nap and sum(each.gives for each in found.placed) == 2


# ---- rectangles ----------------------------------------------------------------------------------------------

sizes = st.lists(st.tuples(st.floats(30.0, 500.0), st.floats(30.0, 900.0), st.integers(1, 3)), min_size=1, max_size=6)


@settings(max_examples=25)
@given(sizes, st.booleans(), st.booleans())
def test_rectangles_within_their_bounds(given_: list[tuple[float, float, int]], mirrored: bool, nap: bool) -> None:
    pieces = [
        rectangle(f"piece {at}", across, along, at + 1, count=count, mirrored=mirrored and count > 1)
        for at, (across, along, count) in enumerate(given_)
    ]
    pattern = pattern_of(*pieces, nap="one_way" if nap else "none")
    found = lay(pattern, "main", 1120.0, 60)
    sound(found)
    complete(found, pattern)
    assert found.length <= need(boxes(pattern, "main"), 1120.0).length + 1e-6
    # Every rectangle takes half a gap all round with it, of a strip that is a gap wider and longer.
    grown = sum((across + GAP) * (along + GAP) * count for across, along, count in given_)
    assert found.length + GAP >= grown / (1120.0 - 2 * SELVEDGE + GAP) - 0.1
    assert found.length >= max(along for _, along, _ in given_) - SLACK


def test_as_short_as_the_best_order_of_a_few_rectangles() -> None:
    # Each is laid lowest and leftmost in all 120 orders; ours may lose what whole columns and millimetres cost.
    given_ = [(500.0, 300.0), (380.0, 450.0), (260.0, 640.0), (620.0, 210.0), (300.0, 330.0)]
    across = 1120.0 - 2 * SELVEDGE
    best = math.inf
    for order in permutations(given_):
        lying: list[tuple[float, float, float, float]] = []
        for wide, long in order:
            spots = [
                (max((t + GAP for a, b, _, t in lying if a < x + wide + GAP and b > x - GAP), default=0.0), x)
                for x in [0.0, *(b + GAP for _, b, _, _ in lying)]
                if x + wide <= across
            ]
            y, x = min(spots)
            lying.append((x, x + wide, y, y + long))
        best = min(best, max(top for _, _, _, top in lying))
    pattern = pattern_of(*(rectangle(f"piece {at}", *size, at + 1) for at, size in enumerate(given_)))
    assert lay(pattern, "main", 1120.0).length <= best + 3.0


def test_rows_lay_boxes_as_need_counts_them() -> None:
    spots = rows([(600.0, 350.0, False), (600.0, 250.0, True), (200.0, 900.0, False)], 690.0)
    assert spots == [(260.0, 0.0), (0.0, 0.0), (0.0, 610.0)]


def test_without_allowances_the_piece_is_named(tmp_path: FilePath) -> None:
    bare = rectangle("cape", 300.0, 500.0)
    edges = tuple(replace(edge, allowance=None) for edge in bare.edges)
    with pytest.raises(Exception, match="Cape: the edge0 has no allowance yet"):
        lays(pattern_of(replace(bare, edges=edges)))
