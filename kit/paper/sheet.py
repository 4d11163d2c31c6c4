"""All paper pieces of a pattern on one sheet, at full scale or at a class scale.

Pieces lie 10 mm apart, turned as they fit best, so that few pages are needed (kit.paper.layout). No chance is
involved: the same pattern gives the same sheet. A piece cut on the fold stays half, with its fold line, unless whole
pieces are asked for.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property
from io import BytesIO
from typing import TYPE_CHECKING, Any

import numpy as np
import shapely
from reportlab.pdfgen.canvas import Canvas
from shapely import affinity

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry import Motion, Point
from kit.language import language_tag, say
from kit.lesson.lengthen_lines import with_lengthen_lines
from kit.lesson.no_paper import on_paper
from kit.lesson.pattern import Pattern
from kit.paper.head import draw_head, head_room
from kit.paper.head import edition_line as edition_line
from kit.paper.layout import best_layout
from kit.paper.page_cost import EDGE, Pose
from kit.paper.papers import A0, A4, LETTER, Paper
from kit.paper.pdf_pen import MM, PLAIN, draw, label_size, new_canvas
from kit.paper.plan import count_pages
from kit.paper.request import PageRequest
from kit.pausing import pause_here
from kit.picture.drawing import Item, Label, Stroke
from kit.picture.piece_sheet import piece_items
from kit.piece.alike import printed_once
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece
from kit.piece.unfold import unfolded

if TYPE_CHECKING:
    import pikepdf

GAP = 10.0
_EDGE = 10.0  # what is left blank around the copy-shop sheet
CLASS_TEXT = 0.8  # text on class pages, against its usual size on paper


@dataclass(frozen=True)
class Placement:
    """A piece on the sheet: made `scale` times as large, then taken to the sheet's millimetres by `motion` (a turn and
    a slide). `items` is its drawing and `corners` its cut line as points, both in the piece's own millimetres."""

    piece: Piece
    motion: Motion
    items: tuple[Item, ...]
    corners: tuple[Point, ...]
    scale: float = 1.0

    @property
    def matrix(self) -> list[float]:
        """From the piece to the sheet, as shapely writes it: x' = a x + b y + dx and y' = d x + e y + dy, as
        [a, b, d, e, dx, dy]."""
        motion, side = self.motion, -1.0 if self.motion.flips else 1.0
        turn = [motion.cos, -motion.sin * side, motion.sin, motion.cos * side]
        return [*(part * self.scale for part in turn), motion.dx, motion.dy]

    @cached_property
    def ink(self) -> Any:
        """The piece's paper on the sheet: the area in the cut line with every line and text drawn (shapely)."""
        return affinity.affine_transform(_ink(self.items, self.corners), self.matrix)

    @cached_property
    def written(self) -> Any:
        """Every line drawn and the room every text takes, on the sheet (shapely)."""
        return affinity.affine_transform(_written(self.items), self.matrix)

    @property
    def outline(self) -> tuple[Point, ...]:
        """The cut line on the sheet, as points."""
        return tuple(self.motion(Point(point.x * self.scale, point.y * self.scale)) for point in self.corners)


@dataclass(frozen=True)
class Sheet:
    """Where every piece lies on a sheet of `width` x `height` mm, measured from the lower left corner. `head` is the
    lower left corner of the room left for a title block, if one was asked for, `head_size` its width and height."""

    placements: tuple[Placement, ...]
    width: float
    height: float
    head: tuple[float, float] | None = None
    head_size: tuple[float, float] = (0.0, 0.0)

    @property
    def ink(self) -> tuple[Any, ...]:
        return tuple(placement.ink for placement in self.placements)

    @cached_property
    def things(self) -> Any:
        """Every line drawn and the room every text takes, one by one (array of shapely geometries)."""
        written = np.array([placement.written for placement in self.placements], dtype=object)
        return shapely.get_parts(shapely.get_parts(written))

    @property
    def everything(self) -> tuple[Any, ...]:
        """The ink of all pieces, and the room of the title block."""
        if self.head is None:
            return self.ink
        left, bottom = self.head
        return (*self.ink, shapely.box(left, bottom, left + self.head_size[0], bottom + self.head_size[1]))


Drawn = Sequence[tuple[Piece, tuple[Item, ...], tuple[Point, ...]]]
"""Pieces with their lines and text, and the line around them as points, in the pieces' own mm."""


def sheet(
    pattern: Pattern,
    papers: Sequence[Paper] = (A4, LETTER),
    gap: float = GAP,
    limit: float = A0.width,
    request: PageRequest | None = None,
    head: tuple[float, float] | None = None,
    drawn: Drawn | None = None,
) -> Sheet:
    """Lay the paper pieces of `pattern` on one sheet at most `limit` mm wide (wider only when a piece is) so
    that all `papers` together take the fewest pages, held and scaled as the `request` says. `head` is the width and
    height of room to leave for a title block. Pieces cut by their measures are left out, alike ones laid once; a sheet
    may so be empty. `drawn` is what `drawn_pieces` gave for that request, where it was asked before. Raises `KitError`
    for a pattern without pieces."""
    asked = request or PageRequest(tuple(papers))
    return lay(drawn_pieces(pattern, asked) if drawn is None else drawn, papers, gap, limit, asked, head)


def drawn_pieces(pattern: Pattern, request: PageRequest) -> Drawn:
    """The pieces of `pattern` that have paper, as they are drawn on it. Raises `KitError` for a pattern without any."""
    if not pattern.pieces:
        raise KitError(
            message("paper.no_pieces"),
            where=pattern.lesson.title,
            do=message("paper.no_pieces_do"),
        )
    pattern = with_lengthen_lines(pattern)
    pieces = [unfolded(piece) if request.whole else piece for piece in printed_once(on_paper(pattern).pieces)]
    return tuple((piece, *_drawn(piece, pattern, request.class_scale)) for piece in pieces)


def lay(
    drawn: Drawn,
    papers: Sequence[Paper] = (A4, LETTER),
    gap: float = GAP,
    limit: float = A0.width,
    request: PageRequest | None = None,
    head: tuple[float, float] | None = None,
) -> Sheet:
    """Lay what is `drawn` (piece, items and the line around them as points, in the piece's own mm) as `sheet` does;
    the placements keep the order given."""
    asked = request or PageRequest(tuple(papers))
    if not drawn:
        width, height = head or (2 * _EDGE, 2 * _EDGE)
        return Sheet((), width, height, head and (0.0, 0.0), head or (0.0, 0.0))
    scale = asked.class_scale
    inks = [affinity.scale(_ink(items, corners), scale, scale, origin=(0, 0)) for _, items, corners in drawn]
    shapes = inks if head is None else [shapely.box(0, 0, *head), *inks]
    texts = [scale * text_corners(items) for _, items, _ in drawn]
    ways = [asked.ways(paper) for paper in papers]
    rolls = all(paper.kind == "roll" for paper in papers)

    # What a layout costs: the length of a roll, or the pages with ink on them, each paper counted at the better of its
    # two ways up and all papers added, so that one layout serves A4 and Letter.
    def pages(moved: Sequence[Any], width: float, height: float) -> float:
        if rolls:
            return height
        return float(sum(min(count_pages(moved, width, height, held) for held in each) for each in ways))

    found = best_layout(
        shapes,
        [held for each in ways for held in each],
        gap,
        limit,
        pages,
        () if head is None else (0,),
        texts if head is None else [np.zeros((0, 4, 2)), *texts],
    )
    lift = Motion(dy=found.height)
    poses = found.poses if head is None else found.poses[1:]
    placements = tuple(
        Placement(piece, _turn(pose).then(lift), items, corners, scale)
        for (piece, items, corners), pose in zip(drawn, poses, strict=True)
    )
    corner = None if head is None else (found.poses[0].dx, found.poses[0].dy + found.height)
    return Sheet(placements, found.width, found.height, corner, head or (0.0, 0.0))


def sheet_content(laid: Sheet, pattern: Pattern) -> bytes:
    """A PDF of one page, exactly `laid.width` x `laid.height` mm, with the pieces alone."""
    target = BytesIO()
    canvas = new_canvas(target, laid.width, laid.height, _title(pattern))
    draw_sheet(canvas, laid)
    canvas.showPage()
    canvas.save()
    return target.getvalue()


def draw_sheet(canvas: Canvas, laid: Sheet) -> None:
    """Draw the pieces alone, the sheet's lower left corner at the canvas's origin."""
    for placement in laid.placements:
        canvas.saveState()
        a, b, d, e, x, y = placement.matrix
        canvas.transform(a, d, b, e, x * MM, y * MM)
        draw(canvas, placement.items, PLAIN if placement.scale == 1.0 else PLAIN.magnified(1 / placement.scale))
        canvas.restoreState()


def sheet_pdf(content: bytes, laid: Sheet, pattern: Pattern, also: Callable[[str], str] = str) -> bytes:
    """The sheet for a copy shop: `content` (from `sheet_content`) 10 mm from its edges, and above it a head
    with the title, two test squares and gauges. `also` adds to the words that say what it holds. One page at true scale
    which asks the viewer for no scaling."""
    import pikepdf

    block, around = head_room(), _EDGE - EDGE
    width = max(laid.width + 2 * around, block[0] + 2 * _EDGE)
    height = laid.height + around + block[1] + 2 * _EDGE
    target = BytesIO()
    canvas = new_canvas(target, width, height, _title(pattern))
    pieces = say("paper.on_one_sheet", pieces=say("paper.pieces", count=len(laid.placements)))
    draw_head(canvas, pattern, (_EDGE, laid.height + around + _EDGE), also(pieces), PageRequest((A0,)))
    canvas.showPage()
    canvas.save()
    with pikepdf.open(BytesIO(content)) as drawn, pikepdf.open(BytesIO(target.getvalue())) as document:
        form = document.copy_foreign(drawn.pages[0].as_form_xobject())
        page = document.pages[0]
        page.add_resource(form, pikepdf.Name.XObject, pikepdf.Name.Sheet)
        page.contents_add(f"q 1 0 0 1 {around * MM:.4f} {around * MM:.4f} cm /Sheet Do Q\n".encode(), prepend=True)
        return finish(document)


def finish(document: pikepdf.Pdf, *, tray: bool = True) -> bytes:
    """The document as bytes, in the spoken language: every page's boxes are the sheet of paper (ISO 32000-1, 14.11.2),
    viewers are asked not to scale it when printing, to take the `tray` that holds this size, if one does (12.2), and to
    show its title; the same content gives the same bytes. `declare` in pdf_pen.py says the same of a new document."""
    import pikepdf

    document.Root.ViewerPreferences = pikepdf.Dictionary(
        PrintScaling=pikepdf.Name("/None"), DisplayDocTitle=True, PickTrayByPDFSize=tray
    )
    for page in document.pages:
        page.cropbox = page.trimbox = page.mediabox
    document.Root.Lang = pikepdf.String(language_tag())
    target = BytesIO()
    document.save(
        target,
        min_version="1.7",
        deterministic_id=True,
        compress_streams=True,
        object_stream_mode=pikepdf.ObjectStreamMode.generate,
    )
    return target.getvalue()


# ---- laying ------------------------------------------------------------------------------------------------


def _drawn(piece: Piece, pattern: Pattern, scale: float = 1.0) -> tuple[tuple[Item, ...], tuple[Point, ...]]:
    pause_here()
    letters = 1.0 if scale == 1.0 else CLASS_TEXT / scale
    items = tuple(piece_items(piece, pattern, pattern.lesson.units, letters=letters))
    return items, tuple(cut_line(piece).points(0.1))


def _lines(items: Sequence[Item]) -> Any:
    """All lines drawn (array of shapely lines)."""
    runs = [curve.points(0.5) for item in items if isinstance(item, Stroke) for curve in item.curves]
    runs = [points for points in runs if len(points) > 1]
    if not runs:
        return np.array([], dtype=object)
    places = [(point.x, point.y) for points in runs for point in points]
    return shapely.linestrings(places, indices=np.repeat(np.arange(len(runs)), [len(points) for points in runs]))


def _ink(items: Sequence[Item], corners: Sequence[Point]) -> Any:
    """What the piece takes on the sheet: its paper, all its lines, and text led outside it."""
    area = shapely.make_valid(shapely.Polygon([(point.x, point.y) for point in corners]))
    shapely.prepare(area)
    drawn = np.concatenate([_lines(items), _texts(items)])
    return shapely.union_all([area, *drawn[~shapely.covers(area, drawn)]])


def _texts(items: Sequence[Item]) -> Any:
    """The room every text takes (array of shapely polygons)."""
    return shapely.polygons(text_corners(items))


def text_corners(items: Sequence[Item]) -> Any:
    """The corners of every text, n x 4 x 2 mm."""
    labels = [item for item in items if isinstance(item, Label)]
    if not labels:
        return np.zeros((0, 4, 2))
    sizes = np.array([label_size(label) for label in labels])
    start = np.array([{"start": 0.0, "middle": -0.5, "end": -1.0}[label.anchor] for label in labels]) * sizes[:, 0]
    x = start[:, None] + sizes[:, :1] * np.array([0.0, 1.0, 1.0, 0.0])
    y = sizes[:, 1:] * np.array([-0.5, -0.5, 0.5, 0.5])
    angle = np.array([[label.angle] for label in labels])
    at = np.array([(label.at.x, label.at.y) for label in labels])
    turned = [x * np.cos(angle) - y * np.sin(angle), x * np.sin(angle) + y * np.cos(angle)]
    return np.stack(turned, axis=-1) + at[:, None, :]


def _written(items: Sequence[Item]) -> Any:
    return shapely.GeometryCollection([shapely.multilinestrings(_lines(items)), *_texts(items)])


def _turn(pose: Pose) -> Motion:
    return Motion(math.cos(pose.angle), math.sin(pose.angle), False, pose.dx, pose.dy)


def _title(pattern: Pattern) -> str:
    return say("paper.document", title=pattern.lesson.title, edition=edition_line(pattern))
