"""Printed text: inside its piece or led outside, across no line, never under its least height, all of it there."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations
from typing import Any

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from kit.blocks import darted_bodice_block, skirt_block, trouser_block
from kit.body import workshop_chart
from kit.body.body import Body, Measure
from kit.geometry import Line, Path, Point
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import LessonInfo, Pattern
from kit.picture.drawing import Dot, Item, Label, Stroke
from kit.picture.fitted import label_box
from kit.picture.lettering import LEAST
from kit.picture.piece_sheet import cut_text, piece_items
from kit.piece.allowance import cut_line, has_allowances
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece
from tests.example import EXAMPLE, notebook_names

SIZES = [f"W{number}" for number in range(1, 11)]


def text_of(items: tuple[Item, ...]) -> str:
    return " ".join(" ".join(item.text for item in items if isinstance(item, Label)).split())


def area_of(piece: Piece) -> Any:
    points = cut_line(piece).points(0.05) if has_allowances(piece) else piece.outline.points(0.05)
    return shapely.Polygon([(p.x, p.y) for p in points]).buffer(0)


def judged(piece: Piece, pattern: Pattern) -> tuple[Item, ...]:
    """The printed items of a piece, after every text has been held to the rules."""
    items = piece_items(piece, pattern)
    area = area_of(piece)
    lines = [
        (item, shapely.MultiLineString([[(p.x, p.y) for p in curve.points(0.05)] for curve in item.curves]))
        for item in items
        if isinstance(item, Stroke) and item.role != "leader"
    ]
    dots = [shapely.Point(item.at.x, item.at.y) for item in items if isinstance(item, Dot)]
    labels = [item for item in items if isinstance(item, Label)]
    boxes = [label_box(label) for label in labels]
    leaders = [
        shapely.LineString([(p.x, p.y) for p in (item.curves[0].start, item.curves[-1].end)])
        for item in items
        if isinstance(item, Stroke) and item.role == "leader"
    ]
    for label, box in zip(labels, boxes, strict=True):
        assert label.size >= LEAST - 1e-9, (piece.name, label.text)
        for stroke, line in lines:
            assert not box.intersects(line), (piece.name, label.text, stroke.name)
        assert not any(box.contains(dot) for dot in dots), (piece.name, label.text)
        if not area.buffer(0.1).contains(box):
            assert area.disjoint(box), (piece.name, label.text)
            assert leaders, (piece.name, label.text)
    for (one, a), (two, b) in combinations(list(zip(labels, boxes, strict=True)), 2):
        assert a.intersection(b).area < 0.02 * min(a.area, b.area), (piece.name, one.text, two.text)
    text = text_of(items)
    info = pattern.lesson
    for words in (piece.title, info.title, f"size {pattern.body.name}", f"edition {info.edition}", info.date):
        assert words in text, (piece.name, words)
    for words in cut_text(piece.cut).split("; "):
        assert words in text, (piece.name, words)
    return items


def allowed(piece: Piece) -> Piece:
    edges = tuple(replace(e, allowance=0.0 if e.name == piece.fold else e.allowance or 10.0) for e in piece.edges)
    return replace(piece, edges=edges)


@pytest.fixture(scope="module")
def tideline() -> Any:
    return notebook_names(EXAMPLE)["lesson"]


@pytest.mark.parametrize("size", SIZES)
def test_the_example_lesson_in_every_size(size: str, tideline: Any) -> None:
    pattern = tideline.work(workshop_chart()[size])
    for piece in pattern.pieces:
        judged(piece, pattern)


@pytest.mark.parametrize("size", SIZES)
def test_every_block_in_every_size_and_the_moves(size: str) -> None:
    body = workshop_chart()[size]
    moves = notebook_names(EXAMPLE.with_name("blocks_and_moves.ipynb"))
    lessons = [block.lesson for block in (darted_bodice_block, skirt_block, trouser_block)]
    lessons += [value for value in moves.values() if isinstance(value, Lesson)]
    assert len(lessons) > 3
    for lesson in lessons:
        pattern = lesson.work(body)
        pattern = replace(pattern, lesson=replace(pattern.lesson, date="2026-11"))
        for piece in pattern.pieces:
            judged(allowed(piece), pattern)


def info(**more: Any) -> Pattern:
    said = LessonInfo("Harbour jacket", "harbour-jacket", edition="3", date="2026-11", **more)
    return Pattern(said, Body("W4", (Measure("bust_girth", 920.0),)), (), (), (), (), ())


def oblong(wide: float, high: float, lean: float, allowance: float, **more: Any) -> Piece:
    corners = [Point(0, 0), Point(wide, 0), Point(wide + lean, high), Point(lean, high)]
    names = ("hem", "side", "top", "centre")
    edges = tuple(
        Edge(name, Path.line(a, b), allowance)
        for name, a, b in zip(names, corners, [*corners[1:], corners[0]], strict=True)
    )
    middle = wide / 2 + lean / 2
    grain = Grain(Point(middle, high * 0.15), Point(middle, high * 0.85))
    given: dict[str, Any] = {"number": 11, "grain": grain, "cut": CutPlan(2, mirrored=True, interfacing=2)} | more
    return Piece("tab", "Cuff tab", edges, **given)


@given(
    st.floats(12, 160),
    st.floats(12, 160),
    st.floats(-20, 20),
    st.sampled_from([6.0, 10.0, 20.0]),
    st.booleans(),
    st.booleans(),
    st.sampled_from(["none", "one_way", "print"]),
)
def test_small_pieces(
    wide: float, high: float, lean: float, allowance: float, mark: bool, fold: bool, nap: Any
) -> None:
    lean = 0.0 if fold else lean
    middle = Point(wide / 2 + lean / 2, high / 2)
    marks = (Mark("button", "drill", point=middle),) if mark else ()
    piece = oblong(wide, high, lean, allowance, marks=marks, notches=(Notch("side", high / 2),))
    if fold:
        edges = tuple(replace(e, allowance=0.0) if e.name == "centre" else e for e in piece.edges)
        piece = replace(piece, edges=edges, cut=CutPlan(1, fold="centre"))
    items = judged(piece, info(nap=nap))
    assert ("place on fold" in text_of(items)) == fold
    assert ("one-way cloth" in text_of(items)) == (nap != "none")


def test_a_narrow_strip_is_labelled_along_itself_and_a_tiny_piece_by_a_leader() -> None:
    strip = judged(oblong(20, 400, 0, 10.0), info())
    assert not any(isinstance(i, Stroke) and i.role == "leader" for i in strip)
    tiny = judged(oblong(25, 30, 0, 6.0), info())
    leaders = [i for i in tiny if isinstance(i, Stroke) and i.role == "leader"]
    assert len(leaders) == 1 and sum(c.length for c in leaders[0].curves) > 4.0


def test_a_large_piece_has_large_text_and_level() -> None:
    items = judged(oblong(300, 300, 0, 10.0), info())
    title = next(i for i in items if isinstance(i, Label) and i.role == "title")
    assert title.size == 8.0 and title.angle == 0.0


@pytest.mark.parametrize(
    ("kind", "one_way", "nap", "arrow", "words"),
    [
        ("lengthwise", False, "none", "both", []),
        ("lengthwise", True, "none", "end", ["one way: arrow to the top"]),
        ("crosswise", False, "none", "both", ["crosswise grain"]),
        ("bias", False, "none", "both", ["bias grain"]),
        ("bias", False, "one_way", "end", ["bias grain, one way", "one-way cloth: arrow to the top"]),
        ("lengthwise", False, "print", "end", ["one way", "match the print"]),
    ],
)
def test_grain_nap_and_print(kind: Any, one_way: bool, nap: Any, arrow: str, words: list[str]) -> None:
    piece = oblong(200, 300, 0, 10.0)
    assert piece.grain is not None
    items = judged(replace(piece, grain=replace(piece.grain, kind=kind, one_way=one_way)), info(nap=nap))
    line = next(i for i in items if isinstance(i, Stroke) and i.name == "grainline")
    assert line.arrow == arrow
    assert line.curves[0].end == piece.grain.end
    for said in words:
        assert said in text_of(items)
    if not words:
        assert "grain" not in text_of(items) and "one way" not in text_of(items)


def test_how_a_piece_is_cut_is_said() -> None:
    assert cut_text(CutPlan(1, right_side_up=True)) == "cut 1 single, right side up, main cloth"
    assert cut_text(CutPlan(1, fold="centre", cloth="lining")) == "cut 1 on the fold, lining"
    assert cut_text(CutPlan(2, mirrored=True, interfacing=2)) == "cut 2 mirrored, main cloth; interfacing: cut 2"


def test_allowances_are_written_clear_of_notches() -> None:
    piece = oblong(200, 300, 0, 10.0, notches=tuple(Notch("side", share * 300) for share in (0.38, 0.5, 0.62)))
    items = judged(piece, info())
    assert sum(isinstance(i, Label) and i.text == "1 cm" for i in items) == 4


def test_a_leader_ends_at_the_cut_line_and_crosses_no_line() -> None:
    piece = oblong(25, 30, 0, 6.0)
    items = judged(piece, info())
    (leader,) = (i for i in items if isinstance(i, Stroke) and i.role == "leader")
    way = leader.curves[0]
    assert isinstance(way, Line)
    assert area_of(piece).distance(shapely.Point(way.end.x, way.end.y)) < 1.0
    assert area_of(piece).disjoint(shapely.LineString([(way.start.x, way.start.y), (way.end.x, way.end.y)]))
