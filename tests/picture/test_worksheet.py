"""The hand-drafting worksheet: someone with its printed numbers alone draws the same pieces.

Outside source of the curves drawn from it: scipy.interpolate.CubicSpline with its end slopes given (scipy >= 1.13).
"""

from __future__ import annotations

import re
from itertools import pairwise
from pathlib import Path as File

import pytest
from scipy.interpolate import CubicSpline

from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.skirt import skirt_block
from kit.blocks.sleeve import with_sleeve
from kit.blocks.trousers import trouser_block
from kit.body.chart import workshop_chart
from kit.geometry import Line, Path, Point
from kit.geometry.guide import System, on_ruler
from kit.language import says
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension, Dot, Label, Stroke
from kit.picture.guide_points import guide_drawing
from kit.picture.svg_pen import svg
from kit.prose.worksheet import PieceSheet, SheetLine, WorksheetStep, worksheet
from kit.units import parse, show
from tests.example import EXAMPLE, GARMENTS, notebook_names
from tests.lesson_words import own_words
from tests.pseudo import OPEN, escaped, pseudo

TRUE: dict[System, float] = {"cm": 2.0, "inch": 2.0}
"""How far a piece drawn from the sheet may lie off the pattern, in mm."""


def length_in(text: str) -> float:
    """The length printed in a text such as "8.2 cm right" or "1 3/16 in to the left"."""
    found = re.search(r"\d+(?:\.\d+)?(?: \d+/\d+)?(?:/\d+)? (?:cm|mm|in)\b", text)
    assert found, text
    return float(parse(found[0]))


def place_of(across: str, above: str) -> Point:
    x = 0.0 if "on the upright" in across else length_in(across) * (1 if across.endswith("right") else -1)
    y = 0.0 if "on the level" in above else length_in(above) * (1 if above.endswith("up") else -1)
    return Point(x, y)


def off_in(text: str) -> float:
    if text in ("", "on the line"):
        return 0.0
    return length_in(text) * (1 if text.endswith("left") else -1)


class Reader:
    """Someone who has only the printed sheet."""

    def __init__(self) -> None:
        self.points: dict[str, dict[str, Point]] = {}
        self.drawn: dict[str, dict[str, list[list[Point]]]] = {}

    def follow(self, steps: tuple[WorksheetStep, ...]) -> None:
        for step in steps:
            for sheet in step.sheets:
                self._sheet(sheet)

    def _sheet(self, sheet: PieceSheet) -> None:
        name = sheet.piece.name
        points = self.points.setdefault(name, {})
        for point in sheet.points:
            assert point.letter not in points
            points[point.letter] = place_of(point.across, point.above)
        before = dict(self.drawn.setdefault(name, {}))
        after: dict[str, list[list[Point]]] = {}
        for line in sheet.lines:
            if line.edge:
                after.setdefault(line.edge, []).append(self._line(line, points, before))
        self.drawn[name].update(after)

    def _line(self, line: SheetLine, points: dict[str, Point], before: dict[str, list[list[Point]]]) -> list[Point]:
        start, end = points[line.start], points[line.end]
        if line.kind == "rule":
            return [start, end]
        if line.kind in ("trim", "trace"):
            lines = before if line.kind == "trim" else self.drawn[line.source[0]]
            whole = Path(tuple(Line(a, b) for a, b in pairwise(joined(lines[line.source[1]]))))
            low, high = whole.nearest(start), whole.nearest(end)
            return whole.between(low, high).points()
        chord = start.distance(end)
        xs = [0.0, *(length_in(along) for along, _ in line.rows), chord]
        ys = [0.0, *(off_in(off) for _, off in line.rows), 0.0]
        first = off_in(line.leaves[1]) / length_in(line.leaves[0]) if line.leaves[0] else 0.0
        last = -off_in(line.arrives[1]) / length_in(line.arrives[0]) if line.arrives[0] else 0.0
        spline = CubicSpline(xs, ys, bc_type=((1, first), (1, last)))
        way = (end - start).unit()
        return [start + way * (chord * i / 120) + way.left() * float(spline(chord * i / 120)) for i in range(121)]


def joined(parts: list[list[Point]]) -> list[Point]:
    found: list[Point] = []
    for part in parts:
        found += [p for p in part if not found or p.distance(found[-1]) > 1e-6]
    return found


def worst(pattern: Pattern, system: System) -> tuple[float, str]:
    """The largest distance between the pattern's stitch lines and those a reader draws, and where."""
    reader = Reader()
    reader.follow(worksheet(pattern, system))
    found = (0.0, "")
    for piece in pattern.pieces:
        for edge in piece.edges:
            points = joined(reader.drawn[piece.name][edge.name])
            drawn = Path(tuple(Line(a, b) for a, b in pairwise(points)))
            off = max(
                *(edge.path.distance_to(p) for p in points),
                *(drawn.distance_to(edge.path.at(edge.path.length * i / 40)) for i in range(41)),
            )
            found = max(found, (off, f"{piece.name}.{edge.name}"))
    return found


@pytest.mark.parametrize("system", ["cm", "inch"])
@pytest.mark.parametrize("notebook", GARMENTS)
def test_the_pieces_are_drawn_again_from_the_printed_numbers(notebook: str, system: System) -> None:
    lesson = notebook_names(File(EXAMPLE).parent / f"{notebook}.ipynb")["lesson"]
    assert isinstance(lesson, Lesson)
    for size in (lesson.sizes.names[0], lesson.sizes.names[len(lesson.sizes.names) // 2], lesson.sizes.names[-1]):
        off, where = worst(lesson.work(body=lesson.sizes[size], values={}), system)
        assert off <= TRUE[system], (size, where, off)


@pytest.mark.parametrize("block", [darted_bodice_block, with_sleeve(darted_bodice_block), skirt_block, trouser_block])
def test_so_are_the_blocks(block: object) -> None:
    lesson = Lesson("Block", start=block, size="W4")  # type: ignore[arg-type]
    off, where = worst(lesson.work(), "cm")
    assert off <= TRUE["cm"], where


@pytest.fixture(scope="module")
def tideline() -> Pattern:
    lesson = notebook_names(EXAMPLE)["lesson"]
    assert isinstance(lesson, Lesson)
    return lesson.work(values={})


def test_a_wrong_number_would_be_seen(tideline: Pattern, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("kit.prose.worksheet.on_ruler", lambda value, system: on_ruler(value, system) + 4.0)
    assert worst(tideline, "cm")[0] > TRUE["cm"]


def test_the_block_comes_first_then_every_step(tideline: Pattern) -> None:
    steps = worksheet(tideline)
    assert steps[0].key == "start" and [s.piece.name for s in steps[0].sheets] == ["front", "back"]
    assert "The upright line is the centre line." in steps[0].sheets[0].origin
    keys = [step.key for step in steps[1:]]
    assert keys == [record.key for record in tideline.steps if record.key in keys]
    assert {"overarm", "true_hem", "wrap", "allowances", "strips"} <= set(keys)


def test_every_sentence_stands_in_the_readers_numbers(tideline: Pattern) -> None:
    (overarm,) = [step for step in worksheet(tideline) if step.key == "overarm"]
    assert "Rub out the shoulder seam." in overarm.lines
    (record,) = [record for record in tideline.steps if record.key == "overarm"]
    long = show(record.pieces[0].edge("overarm").path.length)
    assert re.search(rf"rule from B to K, {re.escape(long)}\.", " ".join(overarm.lines))
    (strips,) = [step for step in worksheet(tideline) if step.key == "strips"]
    assert strips.strips[0].startswith("Tie: cut 2 strips 77 cm long")
    (allow,) = [step for step in worksheet(tideline, "inch") if step.key == "allowances"]
    assert any("3/8 in of allowance" in line for line in allow.lines)
    assert not any(" cm" in line for step in worksheet(tideline, "inch") for line in step.lines)


def test_the_back_is_traced_from_the_front(tideline: Pattern) -> None:
    (back,) = [step for step in worksheet(tideline) if step.key == "back_from_front"]
    traced = {line.edge for line in back.sheets[0].lines if line.kind == "trace"}
    assert {"overarm", "opening", "underarm", "hem"} <= traced
    assert [line.edge for line in back.sheets[0].lines if line.kind == "trim"] == ["side"]
    assert [line.edge for line in back.curves] == ["neck"]


def test_every_letter_named_is_marked_before_or_here(tideline: Pattern) -> None:
    for step in worksheet(tideline):
        for sheet in step.sheets:
            letters = {point.letter for point in (*sheet.points, *sheet.known)}
            assert all({line.start, line.end} <= letters for line in sheet.lines), step.key
            assert not {"I", "O"} & letters


def test_the_picture_shows_letters_chords_and_offsets(tideline: Pattern) -> None:
    told: list[str] = []
    for step in worksheet(tideline):
        for sheet in step.sheets:
            drawing = guide_drawing(sheet)
            texts = [item.text for item in drawing.items if isinstance(item, Label)]
            assert {point.letter for point in sheet.points} <= set(texts)
            strokes = [item for item in drawing.items if isinstance(item, Stroke)]
            for line in sheet.curves:
                offsets = [text.rsplit(" to the ", 1)[0] for _, text in line.rows]
                drawn = sum(s.name == f"{line.edge}.offset" for s in strokes)
                assert drawn >= sum(text != "on the line" for text in offsets)
                # Figures that would stand on one another are left to the table.
                if len(offsets) <= 2 and line.edge == "outer" and sheet.piece.name == "back_facing":
                    assert set(offsets) <= set(texts)
                    told.append(line.edge)
                assert len(offsets) <= 4 or not all(text in texts for text in offsets), (step.key, line.edge)
            assert sum(s.name.endswith(".chord") for s in strokes) == len(sheet.curves)
            assert sum(isinstance(item, Dot) for item in drawing.items) >= len(sheet.points)
            assert svg(drawing, 520).startswith("<svg") and all(line.words in drawing.alt for line in sheet.lines)
    assert told == ["outer"]


def test_the_picture_shows_what_the_notes_place(tideline: Pattern) -> None:
    """Notches with their distance, openings with both ends, the line to cut along with every width once."""
    notches = openings = allowances = 0
    for step in worksheet(tideline):
        for sheet in step.sheets:
            drawing = guide_drawing(sheet)
            texts = [item.text for item in drawing.items if isinstance(item, Label)]
            strokes = [item for item in drawing.items if isinstance(item, Stroke)]
            for notch in sheet.notches:
                assert show(notch.distance) in texts
                notches += 1
            wanted = sum(1 if notch.kind == "single" else 2 for notch in sheet.notches)
            assert sum(s.name == f"{sheet.piece.name}.notch" for s in strokes) == wanted
            for mark in sheet.marks:
                assert {show(mark.start), show(mark.end)} <= set(texts)
                openings += 1
            widths = {round(e.allowance, 3) for e in sheet.piece.edges if e.allowance and e.name != sheet.piece.fold}
            if sheet.allowed:
                shown = [item.text for item in drawing.items if isinstance(item, Dimension)]
                assert sorted(shown) == sorted(show(width, "cm", "allowance") for width in widths)
                assert any(s.name.endswith(".cut") and s.role == "new" for s in strokes)
                allowances += 1
    assert notches >= 8 and openings == 2 and allowances == 4


def test_what_is_traced_is_dark_and_what_is_drawn_heavy(tideline: Pattern) -> None:
    (back,) = [step for step in worksheet(tideline) if step.key == "back_from_front"]
    roles = {item.name: item.role for item in guide_drawing(back.sheets[0]).items if isinstance(item, Stroke)}
    assert roles["back.overarm"] == roles["back.hem"] == "traced" and roles["back.neck"] == "new"


def test_every_text_comes_from_the_catalogue(tideline: Pattern) -> None:
    allowed = own_words(tideline)
    with pseudo():
        for step in worksheet(tideline):
            texts = [*step.lines, *(text for line in step.curves for text in line.sentences)]
            for sheet in step.sheets:
                drawing = guide_drawing(sheet)
                texts += [drawing.alt, drawing.title]
            for text in texts:
                assert text.startswith(OPEN) and escaped(text, allowed) == [], text


def test_the_blocks_own_names_are_in_the_catalogue() -> None:
    body = workshop_chart()["W4"]
    for block in (bodice_block, darted_bodice_block, with_sleeve(darted_bodice_block), skirt_block, trouser_block):
        for piece in block(body):
            names = {name for name, _ in (*piece.points, *piece.guides)} | {e.name for e in piece.edges if not e.said}
            for name in names - {"front_slant", "back_slant"}:  # construction lines that lie on no axis
                assert says(f"edge.{name}") or says(f"worksheet.name.{name}"), (piece.title, name)


@pytest.mark.parametrize("name", ["ferry_tote", "dune_skirt", "oyster_apron"])
def test_a_level_line_is_as_long_as_the_numbers_of_its_ends_lie_apart(name: str) -> None:
    """In inches of a lesson thought in cm: 38 cm are 15 in for the point and for the line that is ruled to it."""
    lesson = notebook_names(File(EXAMPLE).parent / f"{name}.ipynb")["lesson"]
    assert isinstance(lesson, Lesson)
    asked = 0
    for step in worksheet(lesson.work(values={}), "inch"):
        for sheet in step.sheets:
            at = {point.letter: point.at for point in (*sheet.points, *sheet.known)}
            for line in sheet.lines:
                if line.kind != "rule" or line.start not in at or line.end not in at:
                    continue
                way = at[line.end] - at[line.start]
                if min(abs(way.x), abs(way.y)) < 1e-6:
                    asked += 1
                    assert show(way.length, "inch") in line.words, (step.key, sheet.piece.name, line.words)
    assert asked > 2
