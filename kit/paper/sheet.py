"""All paper pieces of a pattern on one sheet at full scale.

Pieces lie 10 mm apart, each as drafted or turned by quarters, fitted into each other's bends. Several sheet
widths and orders are tried, and the layout that takes the fewest home-printer pages wins; no chance is
involved, so the same pattern gives the same sheet. A piece cut on the fold stays half, with its fold line.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from io import BytesIO
from pathlib import Path as FilePath
from typing import Any

import pikepdf
import shapely
from shapely import affinity

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.geometry import Motion, Point
from kit.lesson.pattern import Pattern
from kit.paper.nest import SQUARE, Spot, lying, nest
from kit.paper.papers import A0, A4, LETTER, Paper
from kit.paper.pdf_pen import MM, Ink, draw, label_size, new_canvas, set_ink, text_width, write
from kit.paper.plan import plan_pages
from kit.picture.drawing import Item, Label, Stroke
from kit.picture.piece_sheet import piece_items
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece

GAP = 10.0
EDGE = 5.0
_STRIP = 121.6  # head of the sheet: a 4 in square between two margins of 10 mm
_STRIP_WIDTH = 221.6
_PLACED = 340  # pieces laid in all tries together, about 0.6 ms each


@dataclass(frozen=True)
class Placement:
    """A piece on the sheet: `motion` takes the piece's own millimetres to those of the sheet (a turn by
    quarters and a slide); `items` is its drawing and `corners` its cut line as points, both in the piece's own."""

    piece: Piece
    motion: Motion
    items: tuple[Item, ...]
    corners: tuple[Point, ...]

    @cached_property
    def ink(self) -> Any:
        """The piece's paper on the sheet: the area in the cut line with every line drawn (shapely)."""
        return affinity.affine_transform(_ink(self.items, self.corners), _matrix(self.motion))

    @cached_property
    def written(self) -> Any:
        """Every line drawn and the room every text takes, on the sheet (shapely)."""
        return affinity.affine_transform(_written(self.items), _matrix(self.motion))

    @property
    def outline(self) -> tuple[Point, ...]:
        """The cut line on the sheet, as points."""
        return tuple(self.motion(point) for point in self.corners)


@dataclass(frozen=True)
class Sheet:
    """Where every piece lies on a sheet of `width` x `height` mm, measured from the lower left corner."""

    placements: tuple[Placement, ...]
    width: float
    height: float

    @property
    def ink(self) -> tuple[Any, ...]:
        return tuple(placement.ink for placement in self.placements)


def sheet(pattern: Pattern, papers: Sequence[Paper] = (A4, LETTER), gap: float = GAP, limit: float = A0.width) -> Sheet:
    """Lay the paper pieces of `pattern` on one sheet at most `limit` mm wide (wider only when a piece is) so
    that all `papers` together take the fewest pages. Raises `KitError` for a pattern without pieces."""
    if not pattern.pieces:
        raise KitError(
            "this pattern has no pieces, so there is nothing to print.",
            where=pattern.lesson.title,
            do="Run the drafting steps that make the pieces.",
        )
    return lay([(piece, *_drawn(piece, pattern)) for piece in pattern.pieces], papers, gap, limit)


def lay(
    drawn: Sequence[tuple[Piece, tuple[Item, ...], tuple[Point, ...]]],
    papers: Sequence[Paper] = (A4, LETTER),
    gap: float = GAP,
    limit: float = A0.width,
) -> Sheet:
    """Lay what is `drawn` (piece, items and the line around them as points, in the piece's own mm) as `sheet` does;
    the placements keep the order given."""
    inks = [_ink(items, corners) for _, items, corners in drawn]
    best: tuple[float, float, float] | None = None
    found: tuple[float, float, tuple[Spot, ...]] | None = None
    for spots in _layouts(inks, papers, gap, limit):
        moved = [affinity.affine_transform(ink, _matrix(_turn(spot))) for ink, spot in zip(inks, spots, strict=True)]
        boxes = shapely.bounds(moved)
        width, height = float(boxes[:, 2].max()) + EDGE, EDGE - float(boxes[:, 1].min())
        lifted = [affinity.translate(ink, 0.0, height) for ink in moved]
        pages = sum(len(plan_pages(lifted, width, height, paper).tiles) for paper in papers)
        worth = (pages, width * height, width)
        if best is None or worth < best:
            best, found = worth, (width, height, spots)
    assert found is not None  # the widest sheet tried takes every piece
    width, height, spots = found
    lift = Motion(dy=height)
    placements = tuple(
        Placement(piece, _turn(spot).then(lift), items, corners)
        for (piece, items, corners), spot in zip(drawn, spots, strict=True)
    )
    return Sheet(placements, width, height)


def sheet_content(laid: Sheet, pattern: Pattern) -> bytes:
    """A PDF of one page, exactly `laid.width` x `laid.height` mm, with the pieces alone."""
    target = BytesIO()
    canvas = new_canvas(target, laid.width, laid.height, _title(pattern))
    for placement in laid.placements:
        canvas.saveState()
        a, b, d, e, x, y = _matrix(placement.motion)
        canvas.transform(a, d, b, e, x * MM, y * MM)
        draw(canvas, placement.items)
        canvas.restoreState()
    canvas.showPage()
    canvas.save()
    return target.getvalue()


def sheet_pdf(content: bytes, laid: Sheet, pattern: Pattern) -> bytes:
    """The sheet for a copy shop: `content` (from `sheet_content`) in the lower left corner, and above it a head
    with the title and two test squares. One page at true scale which asks the viewer for no scaling."""
    width, height = max(laid.width, _STRIP_WIDTH), laid.height + _STRIP
    target = BytesIO()
    canvas = new_canvas(target, width, height, _title(pattern))
    _head(canvas, pattern, laid.height)
    canvas.showPage()
    canvas.save()
    with pikepdf.open(BytesIO(content)) as pieces, pikepdf.open(BytesIO(target.getvalue())) as document:
        form = document.copy_foreign(pieces.pages[0].as_form_xobject())
        page = document.pages[0]
        page.add_resource(form, pikepdf.Name.XObject, pikepdf.Name.Sheet)
        page.contents_add(b"q /Sheet Do Q\n", prepend=True)
        return finish(document)


def write_sheet_pdf(laid: Sheet, pattern: Pattern, path: FilePath) -> FilePath:
    """Write the copy-shop sheet to `path`. Raises `KitError` when it cannot be written."""
    return write_atomically(path, sheet_pdf(sheet_content(laid, pattern), laid, pattern))


def finish(document: pikepdf.Pdf, language: str = "en") -> bytes:
    """The document as bytes: viewers are asked not to scale it when printing (ISO 32000-1, 12.2) and to show
    its title; the same content gives the same bytes."""
    document.Root.ViewerPreferences = pikepdf.Dictionary(
        PrintScaling=pikepdf.Name("/None"), DisplayDocTitle=True, PickTrayByPDFSize=True
    )
    document.Root.Lang = pikepdf.String(language)
    target = BytesIO()
    document.save(
        target,
        min_version="1.7",
        deterministic_id=True,
        compress_streams=True,
        object_stream_mode=pikepdf.ObjectStreamMode.generate,
    )
    return target.getvalue()


def draw_square(canvas: Any, left: float, bottom: float, side: float) -> None:
    """A square whose line, measured along its middle, is `side` mm long, with ticks inside every 10 mm for a
    metric square and every half inch for one in inches."""
    set_ink(canvas, Ink(0.25))
    canvas.rect(left * MM, bottom * MM, side * MM, side * MM, stroke=1, fill=0)
    step = 10.0 if math.isclose(side % 10, 0, abs_tol=1e-6) else 12.7
    set_ink(canvas, Ink(0.15, 0.3))
    for count in range(1, round(side / step)):
        long = 3.0 if count * step == side / 2 or (step > 12 and count % 2 == 0) else 1.8
        along = count * step
        canvas.line((left + along) * MM, bottom * MM, (left + along) * MM, (bottom + long) * MM)
        canvas.line(left * MM, (bottom + along) * MM, (left + long) * MM, (bottom + along) * MM)


def edition_line(pattern: Pattern) -> str:
    """Size, edition and date as printed on every page."""
    lesson = pattern.lesson
    parts = [f"size {pattern.body.name}", f"edition {lesson.edition}" if lesson.edition else "", lesson.date]
    return " · ".join(part for part in parts if part)


# ---- laying ------------------------------------------------------------------------------------------------


def _drawn(piece: Piece, pattern: Pattern) -> tuple[tuple[Item, ...], tuple[Point, ...]]:
    items = tuple(piece_items(piece, pattern, pattern.lesson.units))
    return items, tuple(cut_line(piece).points(0.1))


def _lines(items: Sequence[Item]) -> list[list[tuple[float, float]]]:
    lines = []
    for item in items:
        if isinstance(item, Stroke):
            for curve in item.curves:
                points = [(point.x, point.y) for point in curve.points(0.5)]
                if len(points) > 1:
                    lines.append(points)
    return lines


def _ink(items: Sequence[Item], corners: Sequence[Point]) -> Any:
    """What the piece takes on the sheet: its paper, all its lines, and text led outside it."""
    area = shapely.make_valid(shapely.Polygon([(point.x, point.y) for point in corners]))
    return shapely.union_all([area, shapely.MultiLineString(_lines(items)), *_texts(items)])


def _texts(items: Sequence[Item]) -> list[Any]:
    texts = []
    for item in items:
        if isinstance(item, Label):
            width, height = label_size(item)
            start = {"start": 0.0, "middle": -width / 2, "end": -width}[item.anchor]
            box = shapely.box(start, -height / 2, start + width, height / 2)
            turned = affinity.rotate(box, item.angle, origin=(0, 0), use_radians=True)
            texts.append(affinity.translate(turned, item.at.x, item.at.y))
    return texts


def _written(items: Sequence[Item]) -> Any:
    return shapely.GeometryCollection([shapely.MultiLineString(_lines(items)), *_texts(items)])


def _layouts(inks: Sequence[Any], papers: Sequence[Paper], gap: float, limit: float) -> Iterator[tuple[Spot, ...]]:
    """Different ways to lay the pieces, the likeliest good ones first; fewer are tried the more pieces there are."""
    turns = [[lying(ink, quarters, gap) for quarters in range(4)] for ink in inks]
    places = range(len(inks))
    areas = [ink.area for ink in inks]
    longest = [max(way.squares.shape[0] for way in ways) for ways in turns]
    orders = (
        sorted(places, key=lambda place: (-areas[place], place)),
        sorted(places, key=lambda place: (-longest[place], -areas[place], place)),
    )
    policies = ((0, 2), (1, 3), (0, 1, 2, 3))
    least = max(min(way.squares.shape[1] for way in ways) for ways in turns) * SQUARE
    tries = [
        (order, policy, width) for order in orders for policy in policies for width in _widths(least, papers, limit)
    ]
    seen = set()
    # The last width takes every piece when it may turn freely, so there is always a layout.
    for order, policy, width in [*tries[: max(6, _PLACED // len(inks))], (orders[0], policies[2], max(least, limit))]:
        spots = nest([[ways[quarters] for quarters in policy] for ways in turns], order, width)
        if spots is not None and spots not in seen:
            seen.add(spots)
            yield spots


def _widths(least: float, papers: Sequence[Paper], limit: float) -> list[float]:
    """Sheet widths worth trying, widest first: whole pages of each paper, both ways, as far as `limit`."""
    found = {max(least, limit - limit % SQUARE)}
    for paper in papers:
        for held in (paper, paper.turned):
            columns = 1
            while (width := columns * held.step[0] + held.overlap) <= limit:
                if width >= least:
                    found.add(width - width % SQUARE)
                columns += 1
    return sorted(found, reverse=True)


def _turn(spot: Spot) -> Motion:
    cos, sin = ((1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0))[spot.quarters]
    return Motion(cos, sin, False, spot.dx, spot.dy)


def _matrix(motion: Motion) -> list[float]:
    """The motion as shapely writes it: [a, b, d, e, dx, dy] with x' = a x + b y + dx and y' = d x + e y + dy."""
    side = -1.0 if motion.flips else 1.0
    return [motion.cos, -motion.sin * side, motion.sin, motion.cos * side, motion.dx, motion.dy]


# ---- the head of the copy-shop sheet -----------------------------------------------------------------------


def _title(pattern: Pattern) -> str:
    return f"{pattern.lesson.title}, {edition_line(pattern)}"


def _head(canvas: Any, pattern: Pattern, above: float) -> None:
    bottom = above + 10.0
    for left, side, name in ((10.0, 100.0, "100 mm"), (120.0, 101.6, "4 in")):
        draw_square(canvas, left, bottom, side)
        write(canvas, f"{name} test square", left + side / 2, bottom + 14, 3.0, anchor="middle")
        write(canvas, f"Each side measures {name}.", left + side / 2, bottom + 8, 2.3, anchor="middle")
    size = 6.0
    while text_width(pattern.lesson.title, size, bold=True) > 86 and size > 2.5:
        size -= 0.25
    write(canvas, pattern.lesson.title, 18, bottom + 84, size, bold=True)
    write(canvas, edition_line(pattern), 18, bottom + 76, 3.0)
    write(canvas, f"{len(pattern.pieces)} paper pieces on one sheet", 18, bottom + 70, 2.6, grey=0.2)
    for line, text in enumerate(
        (
            "Print at 100 %, on paper at least as",
            "wide as this sheet, with no scaling",
            "and no fitting to the page.",
            "Measure the squares before you cut.",
        )
    ):
        write(canvas, text, 128, bottom + 84 - line * 5.5, 2.8)
