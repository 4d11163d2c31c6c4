"""All paper pieces of a pattern on one sheet at full scale.

Pieces are laid by their bounding boxes, 10 mm apart, each upright or turned a quarter. A box goes to the
highest free place, then the leftmost. Several sheet widths and orders are tried, and the layout that takes
the fewest home-printer pages wins; no chance is involved, so the same pattern gives the same sheet. A piece
cut on the fold stays half, with its fold line.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from io import BytesIO
from itertools import permutations
from pathlib import Path as FilePath
from typing import Any

import pikepdf
import shapely
from shapely import affinity

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.geometry import Motion, Point
from kit.lesson.pattern import Pattern
from kit.paper.papers import A0, A4, LETTER, Paper
from kit.paper.pdf_pen import MM, Ink, draw, new_canvas, set_ink, text_width, write
from kit.paper.plan import grid, plan_pages
from kit.picture.drawing import Item, Label, Stroke
from kit.picture.piece_sheet import moved, piece_items
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece

GAP = 10.0
EDGE = 5.0
_STRIP = 121.6  # head of the sheet: a 4 in square between two margins of 10 mm
_STRIP_WIDTH = 221.6
_TRIED = 16  # layouts whose pages are counted exactly


@dataclass(frozen=True)
class Placement:
    """A piece on the sheet: `motion` takes the piece's own millimetres to those of the sheet (a shift and at
    most a quarter turn); `items` is its drawing and `corners` its cut line as points, both in the piece's own."""

    piece: Piece
    motion: Motion
    items: tuple[Item, ...]
    corners: tuple[Point, ...]

    @cached_property
    def ink(self) -> Any:
        """The piece's paper on the sheet: the area in the cut line with every line drawn (shapely)."""
        return affinity.affine_transform(_ink(self.items, self.corners), _matrix(self.motion))

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


@dataclass(frozen=True)
class _Box:
    """A piece's bounding box: where it starts in the piece's own mm, its size as it lies, its quarter `turn`
    (1 counterclockwise, -1 clockwise) and the angle of the piece's `text` in radians."""

    left: float
    bottom: float
    width: float
    height: float
    turn: int = 0
    text: float = 0.0

    @property
    def quarter(self) -> _Box:
        """Turned a quarter, the way that keeps the piece's text readable."""
        return replace(self, width=self.height, height=self.width, turn=-1 if self.text > 1e-9 else 1)


_Spot = tuple[float, float]


def sheet(pattern: Pattern, papers: Sequence[Paper] = (A4, LETTER), gap: float = GAP, limit: float = A0.width) -> Sheet:
    """Lay the paper pieces of `pattern` on one sheet at most `limit` mm wide (wider only when a piece is) so
    that all `papers` together take the fewest pages. Raises `KitError` for a pattern without pieces."""
    if not pattern.pieces:
        raise KitError(
            "this pattern has no pieces, so there is nothing to print.",
            where=pattern.lesson.title,
            do="Run the drafting steps that make the pieces.",
        )
    drawn = [_drawn(piece, pattern) for piece in pattern.pieces]
    inks = [_ink(items, corners) for items, corners in drawn]
    boxes = []
    for ink, (items, _) in zip(inks, drawn, strict=True):
        left, bottom, right, top = ink.bounds
        boxes.append(_Box(left, bottom, right - left, top - bottom, text=_text_angle(items)))

    layouts: dict[tuple[Any, ...], tuple[float, float, list[_Box], list[_Spot]]] = {}
    for width in _widths(boxes, papers, limit):
        for order, turned in _orders(boxes):
            laid = _lay(turned, order, width - 2 * EDGE, gap)
            if laid is None:
                continue
            spots, chosen = laid
            reach = max(x + box.width for (x, _), box in zip(spots, chosen, strict=True)) + 2 * EDGE
            depth = max(y + box.height for (_, y), box in zip(spots, chosen, strict=True)) + 2 * EDGE
            layouts.setdefault(tuple(spots) + tuple(box.turn for box in chosen), (reach, depth, chosen, spots))

    roughly = sorted(layouts.values(), key=lambda each: (_rough_pages(each, papers), each[0] * each[1], each[0]))
    best: tuple[float, float, float] | None = None
    found: Sheet | None = None
    for width, height, chosen, spots in roughly[:_TRIED]:
        placements = tuple(
            Placement(piece, _motion(box, spot, height), items, corners)
            for piece, (items, corners), box, spot in zip(pattern.pieces, drawn, chosen, spots, strict=True)
        )
        moved = [
            affinity.affine_transform(ink, _matrix(placement.motion))
            for ink, placement in zip(inks, placements, strict=True)
        ]
        pages = sum(len(plan_pages(moved, width, height, paper).tiles) for paper in papers)
        worth = (pages, width * height, width)
        if best is None or worth < best:
            best, found = worth, Sheet(placements, width, height)
    assert found is not None
    return found


def sheet_content(laid: Sheet, pattern: Pattern) -> bytes:
    """A PDF of one page, exactly `laid.width` x `laid.height` mm, with the pieces alone."""
    target = BytesIO()
    canvas = new_canvas(target, laid.width, laid.height, _title(pattern))
    for placement in laid.placements:
        draw(canvas, moved(placement.items, placement.motion))
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


def test_square(canvas: Any, left: float, bottom: float, side: float) -> None:
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


def _ink(items: Sequence[Item], corners: Sequence[Point]) -> Any:
    area = shapely.Polygon([(point.x, point.y) for point in corners])
    lines = []
    for item in items:
        if isinstance(item, Stroke):
            for curve in item.curves:
                points = [(point.x, point.y) for point in curve.points(0.5)]
                if len(points) > 1:
                    lines.append(points)
    return shapely.union(shapely.make_valid(area), shapely.MultiLineString(lines)) if lines else area


def _widths(boxes: Sequence[_Box], papers: Sequence[Paper], limit: float) -> list[float]:
    """Sheet widths worth trying: whole pages of each paper, both ways, as far as `limit`."""
    least = max(min(box.width, box.height) for box in boxes) + 2 * EDGE
    found = {max(least, limit)}
    for paper in papers:
        for held in (paper, paper.turned):
            columns = 1
            while (width := columns * held.step[0] + held.overlap) <= limit:
                if width >= least:
                    found.add(width)
                columns += 1
    return sorted(found)


def _orders(boxes: Sequence[_Box]) -> Iterator[tuple[tuple[int, ...], list[list[_Box]]]]:
    """Orders to lay the boxes in, each with the ways every box may be turned."""
    upright = [[box if box.height >= box.width else box.quarter] for box in boxes]
    lying = [[box if box.width >= box.height else box.quarter] for box in boxes]
    either = [[box, box.quarter] for box in boxes]
    drafted = [[box] for box in boxes]
    places = range(len(boxes))
    if len(boxes) <= 4:
        orders = list(permutations(places))
    else:
        orders = [
            tuple(sorted(places, key=lambda i: (-max(boxes[i].width, boxes[i].height), i))),
            tuple(sorted(places, key=lambda i: (-boxes[i].width * boxes[i].height, i))),
            tuple(sorted(places, key=lambda i: (-min(boxes[i].width, boxes[i].height), i))),
        ]
    for order in orders:
        for ways in (drafted, upright, lying, either):
            yield order, ways


def _lay(
    ways: Sequence[Sequence[_Box]], order: Sequence[int], width: float, gap: float
) -> tuple[list[_Spot], list[_Box]] | None:
    """Lay the boxes in `order` as high, then as far left, as they go within `width`. Gives the (x, y) of each
    box's top left corner, y counted downward, and the box as turned; None when one does not fit."""
    spots: list[_Spot] = [(0.0, 0.0)] * len(ways)
    chosen: list[_Box] = [each[0] for each in ways]
    sky: list[tuple[float, float, float]] = [(0.0, width + gap, 0.0)]  # from x, to x, depth reached
    for place in order:
        best: tuple[float, float, float, _Box] | None = None
        for box in ways[place]:
            for start, _, _ in sky:
                end = start + box.width + gap
                if end > width + gap + 1e-6:
                    continue
                depth = max(low for left, right, low in sky if left < end - 1e-9 and right > start + 1e-9)
                if best is None or (depth + box.height, depth, start) < best[:3]:
                    best = (depth + box.height, depth, start, box)
        if best is None:
            return None
        _, depth, start, box = best
        spots[place], chosen[place] = (start, depth), box
        end, low = start + box.width + gap, depth + box.height + gap
        rest = []
        for left, right, reached in sky:
            if left < start:
                rest.append((left, min(right, start), reached))
            if right > end:
                rest.append((max(left, end), right, reached))
        sky = sorted([*(part for part in rest if part[1] - part[0] > 1e-9), (start, end, low)])
    return spots, chosen


def _rough_pages(layout: tuple[float, float, list[_Box], list[_Spot]], papers: Sequence[Paper]) -> int:
    """Pages touched by the bounding boxes, over all papers."""
    width, height, boxes, spots = layout
    total = 0
    for paper in papers:
        counts = []
        for held in (paper, paper.turned):
            rows, columns = grid(width, height, held)
            across, down = held.step
            touched = set()
            for (x, y), box in zip(spots, boxes, strict=True):
                x, y = x + EDGE, y + EDGE
                for row in range(min(rows - 1, int(y / down)), min(rows - 1, int((y + box.height) / down)) + 1):
                    for column in range(
                        min(columns - 1, int(x / across)), min(columns - 1, int((x + box.width) / across)) + 1
                    ):
                        touched.add((row, column))
            counts.append(len(touched))
        total += min(counts)
    return total


def _motion(box: _Box, spot: _Spot, height: float) -> Motion:
    left, bottom = spot[0] + EDGE, height - EDGE - spot[1] - box.height
    if box.turn == 0:
        return Motion(dx=left - box.left, dy=bottom - box.bottom)
    if box.turn > 0:  # (x, y) to (-y, x): the box's top becomes its left side
        return Motion(0.0, 1.0, False, left + box.bottom + box.width, bottom - box.left)
    return Motion(0.0, -1.0, False, left - box.bottom, bottom + box.left + box.height)


def _text_angle(items: Sequence[Item]) -> float:
    return next((item.angle for item in items if isinstance(item, Label) and item.role == "title"), 0.0)


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
        test_square(canvas, left, bottom, side)
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
