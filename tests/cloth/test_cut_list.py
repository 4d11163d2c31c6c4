"""The cut list, and the boxes a piece takes of the cloth by its grain."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path as FilePath

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.affinity import rotate, scale
from shapely.ops import unary_union

from kit.blocks.bodice import bodice_block
from kit.booklet.tables import cut_sentence, strip_table
from kit.cloth.cut_list import boxes, cut_list
from kit.cloth.need import GAP, Box, nap_note, need
from kit.cloth.yardage import notes
from kit.geometry import Path, Point
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_line
from kit.piece.piece import CutPlan, Edge, Grain, Piece
from kit.units import cm, mm


@pytest.fixture
def plain(tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch) -> Pattern:
    monkeypatch.chdir(tmp_path)
    return Lesson("Plain", start=bodice_block, cloth_widths=("140 cm",)).work(values={})


def piece(kind: str = "lengthwise", angle: float = 90.0, **cut: object) -> Piece:
    """A piece 200 x 500 mm with allowances of 10 mm, its grainline at `angle` degrees."""
    corners = [Point(0, 0), Point(200, 0), Point(200, 500), Point(0, 500)]
    names = ("hem", "side", "top", "centre")
    edges = tuple(
        Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, corners, [*corners[1:], corners[0]], strict=True)
    )
    if cut.get("fold"):
        edges = (*edges[:3], replace(edges[3], allowance=0.0))
    way = Point(100 + 50 * math.cos(math.radians(angle)), 250 + 50 * math.sin(math.radians(angle)))
    grain = Grain(Point(100, 250), way, kind)  # type: ignore[arg-type]
    return Piece("front", "Front", edges, 1, CutPlan(**cut), grain)  # type: ignore[arg-type]


def box_of(plain: Pattern, one: Piece) -> Box:
    (found,) = boxes(replace(plain, pieces=(one,), strips=()), "main")
    return found


def test_a_piece_lies_with_its_grain_on_the_grain_it_names(plain: Pattern) -> None:
    for kind, angle, along, across in (
        ("lengthwise", 90.0, 520.0, 220.0),
        ("crosswise", 90.0, 220.0, 520.0),
        ("lengthwise", 0.0, 220.0, 520.0),
        ("crosswise", 0.0, 520.0, 220.0),
        ("bias", 90.0, 740.0 / math.sqrt(2), 740.0 / math.sqrt(2)),
        ("bias", 45.0, 520.0, 220.0),
        ("bias", 135.0, 220.0, 520.0),
    ):
        box = box_of(plain, piece(kind, angle))
        if kind == "bias" and angle != 90.0:
            assert sorted((box.along, box.across)) == pytest.approx(sorted((along, across)))
        else:
            assert (box.along, box.across) == pytest.approx((along, across)), (kind, angle)


@given(st.sampled_from(["lengthwise", "crosswise", "bias"]), st.floats(0, 360), st.booleans())
def test_the_box_is_the_turned_pieces_bounds(kind: str, angle: float, fold: bool) -> None:
    from kit.body.chart import workshop_chart
    from kit.lesson.pattern import LessonInfo

    one = piece(kind, angle, **({"fold": "centre"} if fold else {}))
    pattern = Pattern(LessonInfo("Plain", "plain"), workshop_chart()["W4"], (), (one,), (), (), ())
    box = box_of(pattern, one)
    shape = cut_line(one).polygon()
    if fold and not box.on_fold:
        shape = unary_union([shape, scale(shape, -1.0, 1.0, origin=(0.0, 0.0))])
    # Turned so that the grainline points up the cloth, across it, or between the two.
    to = {"lengthwise": 90.0, "crosswise": 0.0, "bias": 45.0}[kind]
    x0, y0, x1, y1 = rotate(shape, to - angle, origin=(0, 0)).bounds
    assert (box.along, box.across) == pytest.approx((y1 - y0, x1 - x0), abs=0.01)
    if fold:
        upright = abs(math.sin(math.radians(angle - to))) < 0.02
        assert box.on_fold == upright


def test_right_side_up_is_laid_on_opened_cloth(plain: Pattern) -> None:
    one = piece(count=2, right_side_up=True)
    pattern = replace(plain, pieces=(one,), strips=())
    (cut,) = cut_list(pattern)
    assert cut.how == "right_side_up" and cut_sentence(cut) == "Cut 2 of main cloth, each single, right side up"
    assert box_of(plain, one).single
    wide, single = Box("A", 300.0, 400.0, 2), Box("A", 300.0, 400.0, 2, single=True)
    # Folded, 700 mm cloth takes both at once; single ones lie side by side only on cloth twice as wide.
    assert need((wide,), 1000.0).lay == "folded"
    assert need((single, Box("B", 100.0, 450.0, on_fold=True)), 1000.0).length == pytest.approx(300.0 + GAP + 100.0)


def test_strips_in_cut_list_need_and_booklet(tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Bound", start=bodice_block, cloth_widths=("112 cm",), nap="one_way")

    @lesson.step("Strips", strips=("belt", "binding", "piping"))
    def strips(front, back, belt, binding, piping):
        """."""
        for part in (front, back):
            part.allow(**{name: 1 * cm for name in ("neck", "shoulder", "armhole", "side", "hip")})
            part.allow(armhole=5 * mm)
        belt.band(finished_length=180 * cm, finished_width=4 * cm, allowance=1 * cm, grain="crosswise")
        binding.bind(finished_length=200 * cm, finished_width=1 * cm)
        piping.bind(finished_length=120 * cm, finished_width=1 * cm, count=2)
        piping.from_square(allowance=6 * mm)

    pattern = lesson.work(values={})
    cuts = {cut.title: cut for cut in cut_list(pattern) if cut.how == "strip"}
    assert (cuts["Belt"].count, cuts["Belt"].joins, cuts["Belt"].grain) == (2, 1, "crosswise")
    assert cut_sentence(cuts["Belt"]) == "Cut 2 of main cloth, 2 to each strip"
    assert cut_sentence(cuts["Piping"]) == "Cut 2 of main cloth, one after the other from a continuous bias strip"
    found = {box.name: box for box in boxes(pattern, "main")}
    belt = pattern.strip("belt")
    assert (found["Belt"].along, found["Belt"].across, found["Belt"].count) == (100.0, belt.each, 2)
    binding = pattern.strip("binding")  # noqa: B005
    rise = binding.cut_length / math.sqrt(2)
    assert found["Binding"].across == pytest.approx(rise)
    assert found["Binding"].along == pytest.approx(rise + binding.pieces * 40.0 * math.sqrt(2))
    assert found["Piping"].along == found["Piping"].across == pattern.strip("piping").square  # noqa: B005
    assert need(boxes(pattern, "main"), 1120.0).length > 0
    table = strip_table(pattern)
    assert table and [row[2] for row in table.rows] == ["2", "2", "2"]
    text = " ".join(cell for row in table.rows for cell in row)
    assert "across the cloth; the strip pieced with one join, straight, with 1 cm (3/8 in) to each side" in text
    assert "on the bias; as one continuous strip from a square of" in text
    assert any("top the same way" in note for note in notes(pattern))


def test_nap_in_words() -> None:
    assert nap_note("none") == ""
    assert "none is turned round" in nap_note("one_way")
    assert "Match the print" in nap_note("print")
