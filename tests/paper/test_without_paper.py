"""Pieces that are cut by their measures, pieces printed once, and words that no join of pages cuts.

The measures are reckoned by hand from what the lesson's author drew and allowed.
"""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace

import pypdfium2
import pytest
import shapely.affinity

from kit.booklet.tables import measured_table
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.language import languages, speaking
from kit.lesson.no_paper import choosing, no_paper
from kit.lesson.pattern import Pattern
from kit.paper.nested import nest
from kit.paper.pages import plan
from kit.paper.papers import A4, LETTER, Paper
from kit.paper.printing import laid_for, print_files
from kit.paper.range_files import RangeRequest, range_files
from kit.paper.request import PageRequest
from kit.paper.sheet import Sheet, sheet, text_corners
from kit.picture.drawing import Label
from kit.piece.alike import printed_once
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece
from kit.piece.rectangle import rectangle
from kit.prose.by_measures import measured_marks, measured_size


def band(**changes: object) -> Piece:
    """A rectangle 300 long, 80 wide, its length level; 10 allowed all round but 20 at the right end."""
    corners = [Point(0, 0), Point(300, 0), Point(300, 80), Point(0, 80)]
    paths = [Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]
    names = ("lower", "right_end", "upper", "left_end")
    edges = tuple(
        Edge(name, path, 20.0 if name == "right_end" else 10.0, name.replace("_", " "))
        for name, path in zip(names, paths, strict=True)
    )
    made = Piece("band", "Band", edges, number=9, grain=Grain(Point(50, 40), Point(250, 40)))
    return replace(made, **changes)  # type: ignore[arg-type]


def test_a_rectangle_is_told_from_its_cut_edges() -> None:
    piece = band(
        notches=(Notch("lower", 100.0), Notch("upper", 60.0, "double")),
        marks=(
            Mark("fold", "line", path=Path.line(Point(0, 40), Point(300, 40))),
            Mark("button", "point", point=Point(270, 20)),
        ),
    )
    found = rectangle(piece)
    assert found is not None
    assert (found.length, found.width) == pytest.approx((330.0, 100.0))
    assert found.ends == ("left_end", "right_end") and set(found.beside) == {"lower", "upper"}
    spots = {spot.kind: spot for spot in found.spots}
    # The lower edge is drawn from the left end: 100 along it and 10 allowed before it. The upper edge is drawn from the
    # right: 60 from there is 240 from the left.
    assert (spots["notch"].start, spots["notch"].at) == ("left_end", pytest.approx(110.0))
    assert (spots["double"].start, spots["double"].at) == ("left_end", pytest.approx(250.0))
    assert spots["line"].at == pytest.approx(50.0) and spots["line"].start in ("lower", "upper")
    assert (spots["point"].start, spots["point"].at) == ("left_end", pytest.approx(280.0))
    low = spots["point"].edge == "lower"
    assert spots["point"].up == pytest.approx(30.0 if low else 70.0)


def test_measures_do_not_hang_on_how_the_piece_lies_on_its_draft() -> None:
    """A turned draft is cut by the same measures."""
    from kit.geometry import Motion

    turn = Motion.rotation(0.7)
    straight = band(notches=(Notch("lower", 100.0),))
    turned = replace(
        straight,
        edges=tuple(replace(edge, path=edge.path.moved(turn)) for edge in straight.edges),
        grain=Grain(turn(Point(50, 40)), turn(Point(250, 40))),
    )
    one, other = rectangle(straight), rectangle(turned)
    assert one is not None and other is not None
    assert (other.length, other.width) == pytest.approx((one.length, one.width))
    assert other.spots[0].at == pytest.approx(one.spots[0].at) and other.spots[0].start == one.spots[0].start


@pytest.mark.parametrize(
    "changes",
    [
        {"grain": Grain(Point(50, 20), Point(100, 70))},
        {"grain": Grain(Point(50, 40), Point(250, 40), "bias")},
        {"marks": (Mark("slant", "line", path=Path.line(Point(0, 0), Point(300, 80))),)},
        {"marks": (Mark("short", "line", path=Path.line(Point(20, 40), Point(200, 40))),)},
        {"marks": (Mark("pocket", "placement", path=Path.line(Point(20, 40), Point(200, 40))),)},
    ],
)
def test_what_measures_cannot_tell_keeps_its_paper(changes: dict[str, object]) -> None:
    assert rectangle(band(**changes)) is None


def test_a_piece_with_a_slanting_end_keeps_its_paper(garment: Pattern) -> None:
    corners = [Point(0, 0), Point(300, 0), Point(310, 80), Point(0, 80)]
    paths = [Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]
    edges = tuple(replace(edge, path=path) for edge, path in zip(band().edges, paths, strict=True))
    assert rectangle(band(edges=edges)) is None
    assert not [piece for piece in garment.pieces if rectangle(piece)]


def texts_of(pdf: bytes) -> list[str]:
    """The text of every page in one line."""
    with closing(pypdfium2.PdfDocument(pdf)) as document:
        return [" ".join(page.get_textpage().get_text_bounded().split()) for page in document]


def with_band(garment: Pattern, *chosen: str) -> Pattern:
    return choosing(replace(garment, pieces=(*garment.pieces, band())), chosen)


def test_only_what_is_chosen_has_no_paper(garment: Pattern) -> None:
    assert no_paper(with_band(garment)) == ()
    assert [piece.name for piece in no_paper(with_band(garment, "rectangles"))] == ["band"]
    assert [piece.name for piece in no_paper(with_band(garment, "band"))] == ["band"]


def test_a_name_that_is_no_piece_and_a_piece_that_needs_paper_are_told(garment: Pattern) -> None:
    with pytest.raises(KitError, match="bend"):
        no_paper(with_band(garment, "bend"))
    curved = garment.pieces[0]
    with pytest.raises(KitError) as told:
        no_paper(with_band(garment, curved.name))
    assert curved.title in str(told.value) and "no_paper" in str(told.value)


@pytest.mark.parametrize("language", languages())
def test_the_first_page_says_what_the_pages_leave_out(garment: Pattern, language: str) -> None:
    with speaking(language):
        bare = with_band(garment, "band")
        first, *rest = texts_of(print_files(bare, PageRequest((A4,)))["pages-a4.pdf"])
        assert "Band" in first and "33" in first
        assert not any("Band" in text for text in rest)
        whole = texts_of(print_files(with_band(garment), PageRequest((A4,)))["pages-a4.pdf"])
        assert any("Band" in text for text in whole[1:])
        for text in (measured_size(band(), "cm"), *measured_marks(band(), bare)):
            assert text and "{" not in text


def test_a_pattern_of_rectangles_alone_has_one_page_that_says_so(garment: Pattern) -> None:
    alone = choosing(replace(garment, pieces=(band(),)), ("rectangles",))
    for paper in (A4, LETTER):
        (data,) = print_files(alone, PageRequest((paper,))).values()
        (text,) = texts_of(data)
        assert "Band" in text and "100 mm" not in text


def test_sizes_over_one_another_leave_it_out_and_tell_its_measures(garment: Pattern) -> None:
    small, large = with_band(garment, "band"), with_band(garment, "band")
    named = [
        replace(pattern, body=replace(pattern.body, name=name)) for pattern, name in ((small, "W1"), (large, "W2"))
    ]
    made = range_files(named, ["W1", "W2"], RangeRequest(PageRequest((A4,)), nested=True))
    texts = texts_of(made["pages-a4-sizes.pdf"])
    assert "Band" in texts[0]
    assert any("Band: 33 cm" in text for text in texts[1:3])
    assert not any("Band" in text for text in texts[3:])
    assert "band" not in {piece.piece.name for piece in nest(named, ["W1", "W2"], {"band"}).pieces}


def test_the_booklet_tells_what_the_pages_leave_out(garment: Pattern) -> None:
    assert measured_table(with_band(garment)) is None
    table = measured_table(with_band(garment, "band"))
    assert table is not None
    ((number, title, cut, size, marks),) = table.rows
    assert (number, title, cut) == ("9", "Band", "Cut 1 of main cloth")
    assert size == "33 cm (13 in) × 10 cm (3 15/16 in)"
    assert "right end 2 cm" in marks and "Along the length" in marks


# ---- printed once -------------------------------------------------------------------------------------------


def test_pieces_that_are_the_same_on_paper_are_printed_once() -> None:
    front, back = band(name="front", title="Front"), band(name="back", title="Back", number=10)
    (only,) = printed_once((front, back))
    assert only.cut.count == 2 and "Front" in only.title and "Back" in only.title and "10" in only.title


@pytest.mark.parametrize(
    "changes",
    [
        {"notches": (Notch("lower", 100.0),)},
        {"cut": CutPlan(2, mirrored=True)},
        {"cut": CutPlan(cloth="lining")},
        {"grain": Grain(Point(150, 10), Point(150, 70))},
        {"edges": tuple(replace(edge, allowance=12.0) for edge in band().edges)},
    ],
)
def test_pieces_that_differ_are_printed_each(changes: dict[str, object]) -> None:
    assert len(printed_once((band(name="front"), band(name="back", **changes)))) == 2


# ---- words and joins ----------------------------------------------------------------------------------------


def words_on_joins(laid: Sheet, paper: Paper, pattern: Pattern) -> list[str]:
    """Texts that lie on more than one page of the plan, reckoned from the tiles and not from the joins."""
    pages = plan(laid, paper, PageRequest((paper,)))
    tiles = [shapely.box(tile.left, tile.bottom, tile.right, tile.top) for tile in pages.tiles]
    found = []
    for placed in laid.placements:
        for label in (item for item in placed.items if isinstance(item, Label)):
            box = shapely.affinity.affine_transform(shapely.polygons(text_corners([label]))[0], placed.matrix)
            if sum(box.intersection(tile).area > 0.01 for tile in tiles) > 1:
                found.append(label.text)
    return found


@pytest.mark.parametrize("paper", [A4, LETTER], ids=["a4", "letter"])
def test_no_words_are_cut_by_a_join(garment: Pattern, paper: Paper) -> None:
    request = PageRequest((paper,))
    laid, whole = sheet(garment, (paper,), request=request), laid_for(garment, paper, request)
    pages = plan(laid, paper, request)
    if paper is A4:  # on the other paper none is cut to begin with
        assert words_on_joins(laid, paper, garment)
    assert words_on_joins(whole, paper, garment) == []
    assert plan(whole, paper, request).tiles == pages.tiles
    for before, after in zip(laid.placements, whole.placements, strict=True):
        said = [sorted("".join(i.text for i in each.items if isinstance(i, Label))) for each in (before, after)]
        assert [c for c in said[0] if c.isalnum()] == [c for c in said[1] if c.isalnum()]
