"""Lengthen and shorten lines: between the levels of the body, square to the grain, at one height in pieces sewn
together (common practice, no source)."""

from __future__ import annotations

import pytest

import kit
from kit import Lesson, cm, with_sleeve
from kit.errors import KitError
from kit.geometry import Path
from kit.lesson.lengthen_lines import level_lines, placed_lines, with_lengthen_lines
from kit.paper.sheet import sheet
from kit.picture.drawing import Label, Stroke
from kit.picture.piece_sheet import piece_drawing
from kit.piece.dart import legs
from kit.piece.unfold import pair, unfolded
from tests.example import EXAMPLE, GARMENTS, notebook_names


def example(name: str) -> Lesson:
    return next(
        thing
        for thing in reversed(notebook_names(EXAMPLE.parent / f"{name}.ipynb").values())
        if isinstance(thing, Lesson)
    )


BLOCKS = {
    "bodice": kit.bodice_block,
    "darted": kit.darted_bodice_block,
    "skirt": kit.skirt_block,
    "trousers": kit.trouser_block,
    "sleeve": with_sleeve(kit.bodice_block),
}
EXPECTED = {
    "bodice": {"front": ["bust_line-waist_line", "waist_line-end"]},
    "darted": {"back": ["bust_line-waist_line"]},
    "skirt": {"front": ["top-hip_line", "hip_line-end"]},
    "trousers": {"back": ["top-hip_line", "thigh_line-knee_line", "knee_line-end"]},
    "sleeve": {"sleeve": ["upper_arm_line-elbow_line", "elbow_line-end"]},
}


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
@pytest.mark.parametrize("block", BLOCKS)
def test_each_block_has_its_lines(block, size):
    pieces = BLOCKS[block](kit.workshop_chart()[size])
    lines = placed_lines(pieces)
    for name, keys in EXPECTED[block].items():
        assert [f"{line.upper}-{line.lower}" for line in lines[name]] == keys
    for piece in pieces:
        for line in lines[piece.name]:
            assert line.path.start.y == pytest.approx(line.path.end.y)  # the grain stands upright
            for end in (line.path.start, line.path.end):
                assert min(edge.path.distance_to(end) for edge in piece.edges) < 0.01
    heights = [[round(line.path.start.y, 6) for line in lines[name]] for name in ("front", "back")]
    assert heights[0] == heights[1]


def test_lines_keep_clear_of_darts_where_there_is_room():
    front, back = kit.skirt_block(kit.workshop_chart()["W4"])
    for piece in (front, back):
        upper = placed_lines((front, back))[piece.name][0].path
        assert not any(upper.crossings(leg) for dart in piece.darts for leg in legs(piece, dart))


def test_lines_are_square_to_a_slanting_grain():
    lesson = Lesson("Slant", start=kit.bodice_block)

    @lesson.step("Slant the grain")
    def slant(front):
        """Slant it."""
        front.grain(along=front.place(10 * cm, 0 * cm).to(front.place(12 * cm, 10 * cm)))

    piece = with_lengthen_lines(lesson.work()).piece("front")
    way = piece.grain.end - piece.grain.start
    assert piece.lengthen
    assert all(abs(way.unit().dot((line.path.end - line.path.start).unit())) < 1e-9 for line in piece.lengthen)


def test_an_author_places_them_or_leaves_them_out():
    lesson = Lesson("Own", start=kit.bodice_block)

    @lesson.step("Say where")
    def where(front, back):
        """Say where."""
        front.lengthen_line(front.centre_waist.up(12 * cm))
        back.lengthen_line()

    pattern = lesson.work()
    front, back = (with_lengthen_lines(pattern).piece(name) for name in ("front", "back"))
    assert [round(line.path.start.y) for line in front.lengthen] == [120]
    assert (front.lengthen[0].upper, front.lengthen[0].lower) == ("bust_line", "waist_line")
    assert back.lengthen == ()
    strokes = [item for item in piece_drawing(pattern.piece("front"), pattern).items if isinstance(item, Stroke)]
    drawn = [stroke for stroke in strokes if stroke.role == "lengthen"]
    assert len(drawn) == 2
    assert min(c.start.distance(c.end) for stroke in drawn for c in stroke.curves) > 200


def test_what_is_no_point_is_refused():
    lesson = Lesson("Own", start=kit.bodice_block)

    @lesson.step("Say where")
    def where(front):
        """Say where."""
        front.lengthen_line("waist")

    with pytest.raises(KitError, match="'waist' is not a point"):
        lesson.work()


def test_they_are_carried_to_opened_and_mirrored_pieces():
    pattern = with_lengthen_lines(Lesson("Block", start=with_sleeve(kit.bodice_block)).work())
    front = pattern.piece("front")
    whole = unfolded(front)
    opened = own_lines(whole)
    assert [line.length for line in opened] == pytest.approx([2 * line.path.length for line in front.lengthen])
    for half in pair(pattern.piece("sleeve")):
        assert [line.length for line in own_lines(half)] == pytest.approx(
            [line.path.length for line in pattern.piece("sleeve").lengthen], abs=0.01
        )


def own_lines(piece) -> list[Path]:
    from kit.lesson.lengthen_lines import lengthen_lines

    return [line.path for line in lengthen_lines(piece, (piece,))]


@pytest.mark.parametrize("name", GARMENTS)
def test_examples_draw_and_say_them(name):
    pattern = example(name).work()
    has_levels = {
        piece.name
        for piece in pattern.pieces
        if (piece.guide_of("waist_line") or piece.guide_of("hip_line"))
        and any(edge.role in ("hem", "hip") for edge in piece.edges)  # a tier that ends in a seam has its own slider
    }
    lined = {piece.name for piece in with_lengthen_lines(pattern).pieces if piece.lengthen}
    assert has_levels <= lined
    for piece in pattern.pieces:
        drawing = piece_drawing(piece, pattern)
        drawn = [item for item in drawing.items if isinstance(item, Stroke) and item.role == "lengthen"]
        assert bool(drawn) == (piece.name in lined)
        said = [i.text for i in drawing.items if isinstance(i, Label) and "lengthen" in i.text]
        assert bool(said) == (piece.name in lined)


def test_they_are_printed_on_the_sheet():
    pattern = example("dune_skirt").work()
    assert any(isinstance(i, Stroke) and i.role == "lengthen" for p in sheet(pattern).placements for i in p.items)


def test_a_level_line_is_where_it_is_asked_for():
    front, _ = kit.skirt_block(kit.workshop_chart()["W4"])
    (line,) = level_lines(front, -300.0)
    assert (line.start.y, line.end.y) == pytest.approx((-300.0, -300.0))
    assert {round(min(line.start.x, line.end.x), 3)} == {0.0}
