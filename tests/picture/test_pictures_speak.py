"""Every text in a picture comes from the catalogue, but for the lesson's own words, numbers and units; and what is
written has real fractions, while alternative texts keep plain ones."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

import matplotlib
import pytest
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.textpath import TextPath

from kit.blocks import darted_bodice_block, skirt_block, with_sleeve
from kit.blocks.traced_outline import TracedOutline
from kit.body import workshop_chart
from kit.geometry import Path, Point
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern, SewRecord
from kit.picture import lettering, matplotlib_pen
from kit.picture.corners import corners_drawing
from kit.picture.draft import bench_drawing, step_drawing
from kit.picture.drawing import Dimension, Drawing, Label
from kit.picture.figure import measuring_figure
from kit.picture.finding import finding_drawing
from kit.picture.flat import laid_flat
from kit.picture.legend import legend
from kit.picture.piece_sheet import piece_drawing
from kit.picture.place import rectangle
from kit.picture.sewing import scene_drawing
from kit.picture.svg_pen import svg
from kit.picture.walk import walk_drawing
from kit.piece.piece import CutPlan, Grain, Mark, Piece
from kit.proof import prove
from kit.sewing.handle import PieceHandle
from kit.sewing.in_work import shown_scenes
from kit.sewing.make import Make
from kit.sewing.operations.joined import Seam
from kit.sewing.seam_walk import walk
from kit.units import cm, set_fractions
from tests.example import lesson_notebooks
from tests.lesson_words import example_lessons, filled, own_words, strangers
from tests.pseudo import OPEN, escaped, pseudo
from tests.sewing import wrap_top as wrap

LESSONS = [path.stem for path in lesson_notebooks()]
SLASH = "\N{FRACTION SLASH}"


@pytest.fixture(scope="module")
def lessons() -> dict[str, Lesson]:
    return example_lessons()


def texts(drawing: Drawing) -> list[str]:
    """All texts of a picture, those in several lines as one."""
    written = [item.text.replace("\n", " ") for item in drawing.items if isinstance(item, Label | Dimension)]
    return [*written, drawing.title, drawing.alt]


def strays(drawing: Drawing, allowed: set[str]) -> list[str]:
    """Words from elsewhere. A text on a piece is broken into lines: what does not hold line by line may as one."""
    *written, title, alt = texts(drawing)
    outside = [word for text in written for word in escaped(text, allowed)]
    outside = outside and escaped(" ".join(written), allowed)
    return outside + escaped(title, allowed) + escaped(alt, allowed)


def drawings(pattern: Pattern) -> Iterator[Drawing]:
    """Every kind of picture of a pattern."""
    printed = replace(pattern, lesson=replace(pattern.lesson, nap="print", date="2026-11"))
    yield bench_drawing(pattern)
    for step in pattern.steps:
        yield step_drawing(step, "cm", both=True)
        yield step_drawing(step, "inch")
    for piece in pattern.pieces:
        yield piece_drawing(piece, pattern)
        yield piece_drawing(piece, printed, "inch")
    for view in ("front", "back"):
        yield laid_flat(pattern, view, "cm")  # type: ignore[arg-type]
    for record in pattern.sewing:
        for operation in record.operations:
            for scene in shown_scenes(pattern, operation):
                yield scene_drawing(scene, pattern)
            if isinstance(operation, Seam):
                for a, b in zip(operation.a, operation.b, strict=False):
                    if (a.piece, a.edges) != (b.piece, b.edges):
                        yield walk_drawing(walk(pattern, a, b, ease=operation.ease), "inch")
    for finding in prove(pattern):
        drawing = finding_drawing(finding, pattern)
        if drawing is not None:
            yield replace(drawing, alt="", title="")  # told by the finding itself


@pytest.mark.parametrize("name", LESSONS)
def test_no_word_of_a_lessons_pictures_escapes_the_catalogue(name: str, lessons: dict[str, Lesson]) -> None:
    marked = 0
    with pseudo(), filled() as values:
        pattern = lessons[name].work(workshop_chart()["W4"])
        allowed = own_words(pattern)
        for drawing in drawings(pattern):
            assert strays(drawing, allowed) == []
            marked += sum(OPEN in text for text in texts(drawing))
    assert marked > 20
    assert strangers(values, allowed) == []


def test_no_word_of_the_blocks_pictures_escapes() -> None:
    for block in (darted_bodice_block, skirt_block):
        with pseudo(), filled() as values:
            pattern = block.lesson.work(workshop_chart()["W4"])
            for drawing in drawings(pattern):
                assert strays(drawing, own_words(pattern)) == []
        assert strangers(values, own_words(pattern)) == []


def test_legend_and_measuring_figure_speak() -> None:
    with pseudo():
        assert [strays(each.drawing, set()) for each in legend()] == [[]] * len(legend())
        assert [escaped(each.said, set()) for each in legend()] == [[]] * len(legend())
        names = own_words()
        for view in ("front", "back"):
            assert strays(measuring_figure(None, view), names) == []  # type: ignore[arg-type]
            assert strays(measuring_figure((), view), set()) == []  # type: ignore[arg-type]


def test_a_walk_with_corners_darts_and_marks_speaks() -> None:
    with pseudo(), filled() as values:
        pieces = with_sleeve(darted_bodice_block)(workshop_chart()["W4"])
        allowed = own_words(replace(skirt_block.lesson.work(workshop_chart()["W4"]), pieces=pieces))
        for first, second in (("front.armhole", "sleeve.front_cap"), ("front.side", "back.side")):
            assert strays(walk_drawing(walk(pieces, first, second)), allowed) == []
    assert strangers(values, allowed) == []


def test_a_walk_made_in_one_language_is_told_in_another() -> None:
    """Nothing of what was said is kept with the walk."""
    pieces = with_sleeve(darted_bodice_block)(workshop_chart()["W4"])
    made = walk(pieces, "front.armhole", "sleeve.front_cap")
    plain = texts(walk_drawing(made))
    with pseudo():
        assert all(OPEN in text for text in texts(walk_drawing(made)) if re.search("[a-z]{3}", text))
    assert texts(walk_drawing(made)) == plain


def test_an_untrue_corner_and_a_numbered_outline_speak() -> None:
    """Panels whose lower edges come to a point; and a square traced."""
    edges = {"top": 10, "seam": 10, "bottom": 10, "far": 10}
    a = wrap.polygon("left_panel", [(0, 100), (100, 100), (100, 0), (0, 30)], edges)
    b = wrap.polygon("right_panel", [(0, 105), (100, 105), (100, 0), (0, 0)], edges)
    make = Make((a, b))
    make.plain_seam(PieceHandle(a).seam, PieceHandle(b).seam, allowance=1 * cm)
    record = SewRecord("seam", "Seam", "", "", tuple(make.operations))
    bent = replace(wrap.pattern_of([], pieces=(a, b), strips=()), sewing=(record,))
    with pseudo():
        pictures = [finding_drawing(f, bent) for f in prove(bent) if f.code == "corner_not_true"]
        assert pictures
        for drawing in pictures:
            assert drawing is not None and strays(drawing, own_words(bent)) == []
            assert any("17" in text and OPEN in text for text in texts(drawing))
        square = TracedOutline(1, (), Path(rectangle(0.0, 0.0, 90.0, 90.0)), (0.0, 90.0, 180.0, 270.0))
        assert strays(corners_drawing(square, {1: "side_seam"}), {"side seam"}) == []


def test_every_way_to_cut_and_every_grain_speaks(wrap_top: Pattern) -> None:
    """What the example lessons do not have: lining, bias and crosswise grain, one-way pieces, marks of every kind."""
    with pseudo():
        front = wrap_top.piece("front")
        marks = (
            Mark("hole", "drill", point=Point(60, 60)),
            Mark("slit", "buttonhole", path=Path.line(Point(0, 0), Point(0, 15))),
        )
        cuts = (CutPlan(1, right_side_up=True), CutPlan(2, cloth="lining"), CutPlan(1, cloth="interfacing"))
        grains = [Grain(Point(60, -80), Point(60, 220), kind, True) for kind in ("lengthwise", "crosswise", "bias")]  # type: ignore[arg-type]
        for cut, grain in zip(cuts, grains, strict=True):
            piece: Piece = replace(front, cut=cut, grain=grain, marks=marks)
            for nap in ("none", "one_way", "print"):
                pattern = replace(wrap_top, lesson=replace(wrap_top.lesson, nap=nap), pieces=(piece,))  # type: ignore[arg-type]
                assert strays(piece_drawing(piece, pattern), own_words(pattern)) == []


# ---- fractions --------------------------------------------------------------------------------------------


def inch_step(lessons: dict[str, Lesson]) -> Drawing:
    pattern = lessons["tideline_wrap_top"].work(workshop_chart()["W4"])
    found = (step_drawing(step, "inch") for step in pattern.steps)
    return next(d for d in found if any(re.search(r"\d/16", text) for text in texts(d)[:-2]))


def test_what_is_written_has_real_fractions_and_what_is_told_plain_ones(lessons: dict[str, Lesson]) -> None:
    drawing = inch_step(lessons)
    picture = svg(drawing)
    written = "".join(re.findall(r"<text[^>]*>([^<]*)</text>", picture))
    assert SLASH in written and not re.search(r"\d/\d", written)
    (alt,) = re.findall(r'aria-label="([^"]*)"', picture)
    assert re.search(r"\d/\d", alt) and SLASH not in alt


def test_matplotlib_sets_them_too(lessons: dict[str, Lesson]) -> None:
    axes = Figure().add_subplot()
    matplotlib_pen.draw(inch_step(lessons), axes)
    written = "".join(text.get_text() for text in axes.texts)
    assert SLASH in written and not re.search(r"\d/\d", written)


@pytest.mark.parametrize("text", ["1 3/16 in", "9/16 in", "2 1/2 in", "15/16"])
def test_the_room_of_a_text_is_that_of_its_set_form(text: str) -> None:
    """Outside check: the width of DejaVu Sans as FreeType (through matplotlib) measures it."""
    font = FontProperties(fname=matplotlib.get_data_path() + "/fonts/ttf/DejaVuSans.ttf")
    drawn = TextPath((0, 0), set_fractions(text), size=100, prop=font).get_extents().width / 100
    room = lettering.text_width(text, 1.0)
    assert drawn * 0.96 < room < drawn * 1.35
    assert room < sum(lettering.text_width(letter, 1.0) for letter in text)  # narrower than on one line
