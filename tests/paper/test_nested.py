"""Sizes laid over one another: what each one draws, what they share, their layers, names and pages."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Callable
from dataclasses import replace
from io import BytesIO
from itertools import pairwise
from pathlib import Path as FilePath

import numpy as np
import pikepdf
import pytest
import shapely

from kit.errors import KitError
from kit.geometry import Motion, Point
from kit.lesson.pattern import Pattern
from kit.paper.layers import size_ink, stitch_layer
from kit.paper.nested import Nest, lay_nest, nest, said_sizes, sized
from kit.paper.nested_pages import nest_content, nested_pages, pages_of_sizes, ranges
from kit.paper.pages import plan
from kit.paper.papers import A4
from kit.paper.pdf_pen import label_size
from kit.paper.request import PageRequest
from kit.paper.sheet import Sheet, text_corners
from kit.paper.whole_words import nest_whole
from kit.picture.drawing import Fill, Label, Stroke
from kit.picture.piece_sheet import moved, piece_lines
from kit.piece.allowance import cut_line
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Grain, Piece
from tests.example import EXAMPLE, notebook_names
from tests.near import near
from tests.paper.sizes import box, boxes

Render = Callable[..., list[np.ndarray]]
SIZES = ("W2", "W4", "W5", "W9")


@pytest.fixture(scope="module")
def patterns() -> tuple[tuple[Pattern, ...], tuple[str, ...]]:
    lesson = notebook_names(EXAMPLE)["lesson"]
    return tuple(lesson.work(body=lesson.sizes[size], values={}) for size in SIZES), lesson.sizes.names


@pytest.fixture(scope="module")
def made(patterns: tuple[tuple[Pattern, ...], tuple[str, ...]]) -> Nest:
    return nest(*patterns)


@pytest.fixture(scope="module")
def laid(made: Nest) -> Sheet:
    return lay_nest(made, (A4,))


def lines(items: object, *roles: str) -> shapely.Geometry:
    found = [
        [(p.x, p.y) for p in curve.points(0.01)]
        for item in items  # type: ignore[attr-defined]
        if isinstance(item, Stroke) and item.role in roles
        for curve in item.curves
    ]
    return shapely.unary_union(shapely.MultiLineString(found))


# ---- what is drawn ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("role", ["cut", "stitch", "fold", "notch", "mark"])
def test_the_parts_of_a_size_are_the_drawing_of_that_size(made: Nest, role: str) -> None:
    checked = 0
    for each in made.pieces:
        for place, (piece, pattern) in enumerate(zip(each.pieces, made.patterns, strict=True)):
            assert piece is not None
            own = lines(moved(piece_lines(piece, pattern), each.motions[place]), role)
            if own.is_empty:
                continue
            nested = lines(sized(each, place), role)
            assert near(own, nested, 0.05)
            assert nested.length == pytest.approx(own.length, abs=0.2)
            checked += 1
    assert checked >= len(SIZES)


def test_nothing_is_drawn_twice(made: Nest) -> None:
    for each in made.pieces:
        strokes = [item for part in each.parts for item in part.items if isinstance(item, Stroke) and not item.arrow]
        for role in ("cut", "fold"):
            apart = sum(curve.length for item in strokes if item.role == role for curve in item.curves)
            assert apart == pytest.approx(lines(strokes, role).length, abs=0.5)


def test_sizes_lie_on_the_fold_and_with_the_grain_of_one_another(made: Nest) -> None:
    back = next(each for each in made.pieces if each.piece.name == "back")
    for piece, motion in zip(back.pieces, back.motions, strict=True):
        assert piece is not None and piece.grain is not None
        path = piece.edge(piece.fold).path
        assert all(abs(motion(point).x) < 0.02 for point in (path.start, path.end))
        way = motion.vector(piece.grain.end - piece.grain.start)
        assert abs(way.x) < 1e-6 and way.y > 0


def test_turned_drafts_are_laid_grain_along_grain() -> None:
    straight = box("pocket", 120, 150)
    assert straight.grain is not None
    leaning = replace(straight, grain=Grain(Point(20, 20), Point(60, 120)))
    found = nest([boxes("W1", straight), boxes("W2", leaning)])
    ways = [
        motion.vector(piece.grain.end - piece.grain.start).unit()
        for piece, motion in zip(found.pieces[0].pieces, found.pieces[0].motions, strict=True)
        if piece and piece.grain
    ]
    assert abs(ways[0].cross(ways[1])) < 1e-9


def test_one_grainline_and_one_text_serve_all_sizes(made: Nest) -> None:
    for each in made.pieces:
        grains = [
            (part.sizes, item)
            for part in each.parts
            for item in part.items
            if isinstance(item, Stroke) and item.name == "grainline"
        ]
        assert [len(sizes) for sizes, _ in grains] == [len(SIZES)]
        heads = [item for item in each.items if isinstance(item, Label) and each.piece.title in item.text]
        assert len(heads) <= 1
        everyone = shapely.intersection_all(each.areas)
        assert everyone.buffer(0.2).covers(lines([grains[0][1]], "grain"))


def test_a_piece_that_does_not_change_is_drawn_once() -> None:
    belt = box("belt", 300, 60)
    found = nest([boxes(size, belt, box("front", 100 + grown, 200)) for size, grown in (("W1", 0), ("W2", 20))])
    assert found.pieces[0].alike and not found.pieces[0].names
    assert all(part.sizes == (0, 1) for part in (*found.pieces[0].parts, *found.pieces[0].stitches))
    assert any("W1 and W2, all alike" in item.text for item in found.pieces[0].text if isinstance(item, Label))
    assert not found.pieces[1].alike


def test_stretches_that_run_over_one_another_are_shared() -> None:
    found = nest([boxes(f"W{i}", box("front", 100 + 20 * i, 200, fold=True)) for i in (1, 2, 3)]).pieces[0]
    hems = {
        part.sizes: lines(part.items, "cut").length
        for part in found.parts
        if any(isinstance(item, Stroke) and item.role == "cut" for item in part.items)
    }
    # Hem and top are 100 + 20 i + 10 mm long from the fold; 120 + 10 of it is everybody's, 20 more is W2's and W3's.
    assert hems[0, 1, 2] == pytest.approx(2 * 130, abs=0.1)
    assert hems[1, 2] == pytest.approx(2 * 20, abs=0.1)
    assert hems[(2,)] == pytest.approx(2 * 20 + 220, abs=0.1)  # and its own side


def test_a_piece_only_some_sizes_have() -> None:
    gusset = box("gusset", 80, 80)
    found = nest([boxes("W1", box("front", 100, 200)), boxes("W2", box("front", 120, 200), gusset)])
    assert found.pieces[1].pieces == (None, gusset)
    assert not sized(found.pieces[1], 0) and sized(found.pieces[1], 1)


def test_a_facing_far_from_the_origin_is_laid_on_a_corner() -> None:
    def high(up: float, grown: float) -> Piece:
        piece = box("facing", 80 + grown, 40, fold=True)
        up_there = Motion(dy=up)
        return replace(piece, edges=tuple(replace(e, path=e.path.moved(up_there)) for e in piece.edges), grain=None)

    found = nest([boxes("W1", high(380, 0)), boxes("W2", high(440, 5))]).pieces[0]
    assert abs(found.motions[1].dy + 60) < 1e-6 and abs(found.motions[1].dx) < 1e-6


# ---- looks and names ----------------------------------------------------------------------------------------


def test_every_size_has_a_line_of_its_own_that_counts_itself() -> None:
    inks = [size_ink(place) for place in range(1, 15)]
    assert len({ink.dash for ink in inks}) == len(inks)
    assert all(a.width != b.width for a, b in pairwise(inks))
    assert {ink.grey for ink in inks} == {0.0}  # no look depends on colour or on a shade of grey
    for place, ink in enumerate(inks, 1):
        marks = ink.dash[2::2]
        assert sum(5 if mark > 2 else 1 for mark in marks) == place
        assert ink.dash[0] > 2 * max(marks)


def test_names_stand_in_their_line_clear_of_everything_else(made: Nest) -> None:
    for each in made.pieces:
        boxes_found = []
        for part in each.names:
            (size,) = part.sizes
            own = lines([i for p in each.parts if p.sizes == (size,) for i in p.items], "cut", "mark")
            others = [(p.sizes, lines(p.items, "cut", "notch", "fold", "mark", "grain")) for p in each.parts]
            for item in part.items:
                if isinstance(item, Label):
                    wide, high = label_size(item)
                    place = shapely.Point(item.at.x, item.at.y)
                    assert item.text == SIZES[size] and own.distance(place) < 0.05
                    room = shapely.box(-wide / 2, -high / 2, wide / 2, high / 2)
                    room = shapely.affinity.rotate(room, item.angle, origin=(0, 0), use_radians=True)
                    room = shapely.affinity.translate(room, item.at.x, item.at.y)
                    assert all(sizes == (size,) or not line.intersects(room) for sizes, line in others)
                    assert all(not room.intersects(other) for other in boxes_found)
                    boxes_found.append(room)
    front = next(each for each in made.pieces if each.piece.name == "front")
    for size in range(len(SIZES)):
        assert sum(isinstance(i, Label) for part in front.names if part.sizes == (size,) for i in part.items) >= 3


def test_darts_are_drawn_and_named_for_each_size() -> None:
    def darted(size: str, wide: float) -> Pattern:
        piece = box("front", wide, 300)
        dart = Dart("waist_dart", "top", Point(wide / 2, 180), wide / 2 - 12, wide / 2 + 12)
        return boxes(size, replace(piece, darts=(dart,)))

    found = nest([darted("W1", 200), darted("W2", 280)]).pieces[0]
    for size, name in enumerate(("W1", "W2")):
        legs = [i for p in found.parts if p.sizes == (size,) for i in p.items if isinstance(i, Stroke)]
        legs = [item for item in legs if item.role == "stitch"]
        assert len(legs) == 2 and all(item.name == "front.waist_dart" for item in legs)
        labels = [i for p in found.names if p.sizes == (size,) for i in p.items if isinstance(i, Label)]
        there = [i for i in labels if lines(legs, "stitch").distance(shapely.Point(i.at.x, i.at.y)) < 0.05]
        assert [item.text for item in there] == [name]


def test_sizes_in_words() -> None:
    assert said_sizes(("W1", "W2", "W3", "W7"), (1, 2, 3, 7)) == "W1 to W3 and W7"
    assert said_sizes(("W4", "W5"), (4, 5)) == "W4 and W5"
    assert said_sizes(("W4",), (4,)) == "W4"


# ---- layers -------------------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def content(made: Nest, laid: Sheet) -> bytes:
    return nest_content(made, laid)


def switched(pdf: bytes, on: set[str]) -> bytes:
    """The document with only the layers `on` shown, as a viewer's layer list would set it."""
    with pikepdf.open(BytesIO(pdf)) as document:
        groups = document.Root.OCProperties.OCGs
        document.Root.OCProperties.D.OFF = pikepdf.Array([g for g in groups if str(g.Name) not in on])
        target = BytesIO()
        document.save(target)
        return target.getvalue()


def test_layers_are_named_ordered_and_on(content: bytes) -> None:
    with pikepdf.open(BytesIO(content)) as document:
        settings = document.Root.OCProperties
        names = [str(group.Name) for group in settings.OCGs]
        assert names == [name for size in SIZES for name in (size, stitch_layer(size))]
        assert [str(group.Name) for group in settings.D.OFF] == [stitch_layer(size) for size in SIZES]
        order = list(settings.D.Order)
        assert [str(each.Name) for each in order[0::2]] == list(SIZES)
        assert [str(each[0].Name) for each in order[1::2]] == [stitch_layer(size) for size in SIZES]


@pytest.mark.parametrize("size", [1, 3])
def test_a_layer_alone_shows_that_size_and_no_other(
    made: Nest, laid: Sheet, content: bytes, render: Render, size: int
) -> None:
    dpi = 100
    dot = 25.4 / dpi
    name = SIZES[size]
    (image,) = render(switched(content, {name, stitch_layer(name)}), dpi)
    own, written, foreign = [], [], []
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        motion = placement.motion
        piece, pattern = each.pieces[size], made.patterns[size]
        assert piece is not None
        drawn = moved(piece_lines(piece, pattern), each.motions[size])
        drawn = [item for item in drawn if isinstance(item, Stroke) and item.role != "grain"]
        signs = [i for part in each.parts for i in part.items if isinstance(i, Stroke) and i.role == "grain"]
        own.append(
            lines(moved([*drawn, *signs], motion), "cut", "stitch", "fold", "notch", "mark", "lengthen", "grain")
        )
        texts = [*each.text, *(i for p in (*each.names, *each.orders) for i in p.items)]
        for item in moved(texts, motion):
            if isinstance(item, Label):
                wide, high = label_size(item)
                written.append(shapely.Point(item.at.x, item.at.y).buffer(max(wide, high) / 2 + 2))
            elif isinstance(item, Stroke):
                written.append(lines([item], item.role).buffer(3))
        for other, (theirs, motion2) in enumerate(zip(each.pieces, each.motions, strict=True)):
            if other != size and theirs is not None:
                foreign.append(lines(moved([Stroke(cut_line(theirs).curves, "cut")], motion2.then(motion)), "cut"))
    lines_own, aside = shapely.union_all(own), shapely.union_all(written)
    shapely.prepare(aside)
    rows, columns = np.nonzero(image > 0.5)
    x, y = (columns + 0.5) * dot, (image.shape[0] - rows - 0.5) * dot
    y = y - (image.shape[0] * dot - laid.height)
    ink = shapely.points(x, y)
    ink = ink[~shapely.contains_xy(aside, x, y)]
    heads = shapely.union_all([g.buffer(4.5) for g in shapely.get_parts(shapely.boundary(lines_own))])
    far = shapely.distance(ink, lines_own)
    stray = ink[far > 0.36 + 1.5 * dot]  # half the heaviest line and a pixel and a half
    assert not len(stray) or shapely.covers(heads, stray).all()  # arrow heads stand at the ends of lines
    # Its own cut line is there: dashes take more than half of it.
    spots = shapely.union_all([g for g in own if not g.is_empty])
    marks = [spots.interpolate(at) for at in np.arange(0, spots.length, 3.0)]
    seen = [
        image[max(0, int((laid.height - p.y) / dot) - 1) : int((laid.height - p.y) / dot) + 2,
              max(0, int(p.x / dot) - 1) : int(p.x / dot) + 2].max(initial=0) > 0.3
        for p in marks
    ]  # fmt: skip
    assert np.mean(seen) > 0.6
    # Every other size's cut line is gone wherever it does not run on this one's.
    gone = shapely.union_all(foreign).difference(shapely.union_all([lines_own.buffer(1.5), aside, heads]))
    assert gone.length > 500
    places = [gone.interpolate(at) for at in np.arange(0.5, gone.length, 5.0)]
    assert max(image[int((laid.height - p.y) / dot), int(p.x / dot)] for p in places) < 0.2


def test_all_layers_off_leaves_only_what_all_share(content: bytes, render: Render) -> None:
    bare, alone, whole = (render(switched(content, on), 40)[0].sum() for on in (set(), {"W4"}, set(SIZES)))
    assert 0 < bare < alone < whole


# ---- pages --------------------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def pdf(made: Nest, laid: Sheet) -> bytes:
    return nested_pages(made, laid, A4)


def words(pdf: bytes, page: int) -> str:
    run = subprocess.run(
        ["pdftotext", "-f", str(page), "-l", str(page), "-", "-"], input=pdf, capture_output=True, check=True
    )
    return run.stdout.decode()


def test_the_key_comes_first_and_every_other_page_leads_to_it(made: Nest, laid: Sheet, pdf: bytes) -> None:
    with pikepdf.open(BytesIO(pdf)) as document:
        count = len(document.pages)
        assert len(document.Root.OCProperties.OCGs) == 2 * len(SIZES)
        assert all(page.mediabox == document.pages[0].mediabox for page in document.pages)
    pages = plan(laid, A4)
    place = count - len(pages.tiles)  # after the front pages, before those of the pattern
    for page in range(1, count + 1):
        said = words(pdf, page)
        assert all(size in said for size in SIZES)
        assert (f"Page {place} says" in said) == (page != place)
    found = words(pdf, place)
    for numbers in pages_of_sizes(made, laid, pages, place).values():
        assert ranges((*range(1, place + 1), *numbers)) in found
    assert "Tie" in found and "Find your size" in found


def test_the_page_of_sizes_is_counted(pdf: bytes) -> None:
    with pikepdf.open(BytesIO(pdf)) as document:
        count = len(document.pages)
    for page in (count - 1, count):
        assert f"page {page} of {count}" in " ".join(words(pdf, page).split())


def test_a_small_plan_shows_the_pages_that_a_size_needs() -> None:
    small, large = boxes("W1", box("front", 150, 200, True)), boxes("W2", box("front", 900, 200, True))
    found = nest([small, large])
    laid = lay_nest(found, (A4,))
    pages = plan(laid, A4)
    with pikepdf.open(BytesIO(nested_pages(found, laid, A4))) as document:
        place = len(document.pages) - len(pages.tiles)
        page = document.pages[place - 1]
        page.contents_coalesce()
        drawn = page.Contents.read_bytes().decode("latin-1")
    needed = pages_of_sizes(found, laid, pages, place)
    boxes_filled = re.findall(r"(?m)^(?:(\.85) g|1 g)\s*\n(?:n )?[-\d. ]+ re B", drawn)
    assert boxes_filled.count(".85") == sum(map(len, needed.values()))
    assert len(boxes_filled) == 2 * len(pages.tiles)


def test_pages_of_unwanted_sizes_are_not_listed() -> None:
    small, large = boxes("W1", box("front", 150, 200, True)), boxes("W2", box("front", 900, 200, True))
    found = nest([small, large])
    laid = lay_nest(found, (A4,))
    pages = plan(laid, A4)
    needed = pages_of_sizes(found, laid, pages, 1)
    assert len(needed["W2"]) == len(pages.tiles)
    assert 1 <= len(needed["W1"]) < len(needed["W2"]) and set(needed["W1"]) < set(needed["W2"])


def test_no_words_of_a_piece_are_cut_by_a_join(made: Nest, laid: Sheet) -> None:
    """Reckoned from the tiles: a text lies on one page, unless it is the name of a size, which runs with its line."""

    def split(made: Nest, laid: Sheet) -> list[str]:
        tiles = [shapely.box(tile.left, tile.bottom, tile.right, tile.top) for tile in plan(laid, A4).tiles]
        found = []
        for each, placed in zip(made.pieces, laid.placements, strict=True):
            for label in (i for i in (*each.text, *(i for p in each.orders for i in p.items)) if isinstance(i, Label)):
                box = shapely.affinity.affine_transform(shapely.polygons(text_corners([label]))[0], placed.matrix)
                if sum(box.intersection(tile).area > 0.01 for tile in tiles) > 1:
                    found.append(label.text)
        return found

    pages = plan(laid, A4)
    anew, whole = nest_whole(made, laid, pages, PageRequest((A4,)))
    assert len(split(made, laid)) >= 2 and split(anew, whole) == []
    assert [(t.row, t.column) for t in plan(whole, A4).tiles] == [(t.row, t.column) for t in pages.tiles]
    for before, after in zip(made.pieces, anew.pieces, strict=True):
        said = ["".join(i.text for i in each.text if isinstance(i, Label)) for each in (before, after)]
        assert sorted(c for c in said[0] if c.isalnum()) == sorted(c for c in said[1] if c.isalnum())
        assert before.parts == after.parts


def test_page_ranges_are_written_as_a_printing_dialogue_takes_them() -> None:
    assert ranges((1, 2, 3, 7, 9, 10)) == "1-3, 7, 9-10"


def test_the_pages_are_sound_and_every_font_is_in_them(pdf: bytes, tmp_path: FilePath) -> None:
    path = tmp_path / "pages.pdf"
    path.write_bytes(pdf)
    run = subprocess.run(["qpdf", "--check", str(path)], capture_output=True, text=True, check=False)
    assert run.returncode == 0 and "WARNING" not in run.stdout + run.stderr
    embedded = see_through = 0
    with pikepdf.open(path) as document:
        for thing in document.objects:
            if not isinstance(thing, pikepdf.Dictionary):
                continue
            if thing.get("/Type") == pikepdf.Name.Font and thing.get("/Subtype") != pikepdf.Name.Type0:
                descriptor = thing.FontDescriptor
                assert any(key in descriptor for key in ("/FontFile", "/FontFile2", "/FontFile3"))
                embedded += 1
            see_through += thing.get("/Type") == pikepdf.Name.ExtGState and float(thing.get("/ca", 1)) < 1
    assert embedded >= 2 and see_through == 0  # what ISO 19005-2 (PDF/A-2) asks of fonts; nothing is see-through


def test_the_same_sizes_give_the_same_bytes(made: Nest, laid: Sheet, pdf: bytes) -> None:
    assert nested_pages(made, laid, A4) == pdf


# ---- refusals -----------------------------------------------------------------------------------------------


def test_sizes_that_cannot_be_laid_over_one_another_are_refused(made: Nest, laid: Sheet) -> None:
    one = boxes("W1", box("front", 100, 100))
    with pytest.raises(KitError, match="no sizes are chosen"):
        nest([])
    with pytest.raises(KitError, match="W1 is chosen twice"):
        nest([one, one])
    with pytest.raises(KitError, match="no pieces"):
        nest([replace(one, pieces=())])
    with pytest.raises(KitError, match="class scale"):
        nested_pages(made, laid, A4, PageRequest((A4,), class_scale=0.5))
    bare = replace(one.pieces[0], edges=(replace(one.pieces[0].edges[0], allowance=None), *one.pieces[0].edges[1:]))
    with pytest.raises(KitError, match="no allowance"):
        nest([boxes("W1", bare), boxes("W2", bare)])


def test_a_size_between_two_runs_from_the_one_into_the_other() -> None:
    """Above the waist, at the skirt's upper edge, it is as wide as the smaller one; at the hem as the larger."""
    lesson = notebook_names(EXAMPLE.parent / "dune_skirt.ipynb")["lesson"]
    chart = lesson.sizes.ordered([*lesson.sizes.names, "W4/W6"])
    found = nest([lesson.work(body=lesson.sizes[size]) for size in ("W4", "W4/W6", "W6")], chart)
    assert found.sizes == ("W4", "W4/W6", "W6") and found.said == "W4, W4/W6 and W6"
    front = next(each for each in found.pieces if each.piece.name == "front")

    def wide(size: int, y: float) -> float:
        (left, _, right, _) = front.areas[size].intersection(shapely.LineString([(-900, y), (900, y)])).bounds
        return float(right - left)

    small, between, large = (wide(size, -400.0) for size in range(3))
    assert large - small > 8 and between == pytest.approx(large, abs=0.5)
    small, between, large = (wide(size, -5.0) for size in range(3))
    assert small - 0.5 < between < large - 3
    own = [part for part in front.parts if part.sizes == (1,) and any(i.role == "cut" for i in part.items)]  # type: ignore[union-attr]
    assert own, "it has a line of its own on the sheet"
    assert any("W4/W6" in i.text for part in front.names for i in part.items if isinstance(i, Label))


def test_one_size_has_no_layers_and_no_page_of_sizes() -> None:
    found = nest([boxes("W1", box("front", 150, 200))])
    laid = lay_nest(found, (A4,))
    with pikepdf.open(BytesIO(nested_pages(found, laid, A4))) as document:
        assert "/OCProperties" not in document.Root
    assert not any(isinstance(item, Fill) for each in found.pieces for item in each.items)
