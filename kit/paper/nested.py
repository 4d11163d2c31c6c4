"""Several sizes of a pattern laid over one another: the nest of each piece.

The sizes of a piece lie as they were drafted, grain along grain and fold on fold. Where the origin of the draft would
push their corners far apart (a facing traced from high up), they are laid on the corner that keeps them closest, so
that the lines still run beside one another. What sizes draw alike is drawn once (`kit.paper.shared_lines`), a piece's
text once, and the name of each size stands in its line at several places.
"""

from __future__ import annotations

import math
from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

import shapely
from shapely import affinity

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry import Motion, Point
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.paper.bunched import Bunched, bunched, orders
from kit.paper.one_for_all import one_grain, one_level
from kit.paper.papers import A0, A4, LETTER, Paper
from kit.paper.request import PageRequest
from kit.paper.shared_lines import SharedPart, shared
from kit.paper.sheet import GAP, Sheet, lay
from kit.paper.size_names import NamePlaces, size_names
from kit.picture.drawing import Fill, Item, Label, Stroke
from kit.picture.fitted import PieceRoom
from kit.picture.piece_sheet import moved, piece_items, piece_lines, piece_words
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece
from kit.wording.lists import listed

_CLOSER = 0.8
_LINE = 0.5  # half the width of the heaviest line, and a little
_OFTEN = 0.2  # the share of lines in bunches from which a piece's lines are thin


@dataclass(frozen=True)
class NestRoom:
    """What does not change while the words of a nested piece are placed anew: the free paper that all its sizes have,
    the paper (shapely) of all of them together, where names may stand, and where lines bunch."""

    room: PieceRoom
    paper: Any
    places: NamePlaces
    close: Bunched


@dataclass(frozen=True)
class NestedPiece:
    """One piece in all sizes. `pieces` and `motions` go by size (None: that size has no such piece); a motion takes
    the piece's own mm to the nest's. `parts` are its lines, `stitches` its stitch lines in the same manner, `names`
    the name of a size in its own lines, `text` what is written on the piece; `corners` is the line around it all,
    `areas` what is cut out, by size (shapely); `orders` tells the order of lines that bunch, which are drawn `thin`."""

    pieces: tuple[Piece | None, ...]
    motions: tuple[Motion, ...]
    parts: tuple[SharedPart, ...]
    stitches: tuple[SharedPart, ...]
    names: tuple[SharedPart, ...]
    text: tuple[Item, ...]
    corners: tuple[Point, ...]
    areas: tuple[Any, ...]
    orders: tuple[SharedPart, ...] = ()
    thin: bool = False
    found: NestRoom | None = field(default=None, repr=False, compare=False)  # kept from the first lettering to the next

    @property
    def piece(self) -> Piece:
        """The piece in the middle of the sizes that have it; for words, not for places."""
        has = [piece for piece in self.pieces if piece is not None]
        return has[len(has) // 2]

    @property
    def alike(self) -> bool:
        """Whether every size is the same piece."""
        return all(len(part.sizes) == len(self.pieces) for part in self.parts if _cuts(part))

    @property
    def items(self) -> tuple[Item, ...]:
        """Everything drawn, in the nest's mm."""
        parts = (*self.parts, *self.stitches, *self.names, *self.orders)
        return tuple(item for part in parts for item in part.items) + self.text


@dataclass(frozen=True)
class Nest:
    """The pieces of `patterns`, one pattern a size, in order. `places` are the sizes' places in the lesson's chart,
    counted from 1; they choose the look of each line."""

    patterns: tuple[Pattern, ...]
    places: tuple[int, ...]
    pieces: tuple[NestedPiece, ...]

    @property
    def sizes(self) -> tuple[str, ...]:
        return tuple(pattern.body.name for pattern in self.patterns)

    @property
    def several(self) -> bool:
        return len(self.patterns) > 1

    @property
    def said(self) -> str:
        """The sizes in words: "W4", "W1 and W4", "W1 to W10"."""
        return said_sizes(self.sizes, self.places)

    @property
    def pattern(self) -> Pattern:
        """The pattern that stands for all where words are needed; its body is named after all sizes."""
        middle = self.patterns[len(self.patterns) // 2]
        return replace(middle, body=replace(middle.body, name=self.said)) if self.several else middle


def said_sizes(sizes: Sequence[str], places: Sequence[int]) -> str:
    """Sizes in words, neighbours in the chart drawn together: "W1 to W3 and W7"."""
    runs: list[list[str]] = []
    last = None
    for size, place in zip(sizes, places, strict=True):
        if last is not None and place == last + 1:
            runs[-1].append(size)
        else:
            runs.append([size])
        last = place
    words: list[str] = []
    for run in runs:
        words += [say("paper.sizes_run", first=run[0], last=run[-1])] if len(run) > 2 else run
    return listed(words)


def nest(patterns: Sequence[Pattern], chart: Sequence[str] = (), without: Container[str] = ()) -> Nest:
    """The nest of `patterns`, one for each size, small to large; `chart` names all sizes of the lesson in order. Pieces
    whose names are in `without` are left out.

    Raises `KitError` for no sizes, a size given twice, patterns without pieces, and what `cut_line` refuses.
    """
    if not patterns:
        raise KitError(message("paper.no_sizes"), where="--sizes", do=message("paper.no_sizes_do"))
    names = [pattern.body.name for pattern in patterns]
    twice = next((name for name in names if names.count(name) > 1), None)
    if twice is not None:
        raise KitError(message("paper.size_twice", size=twice), where="--sizes", do=message("paper.size_twice_do"))
    if not any(pattern.pieces for pattern in patterns):
        raise KitError(
            message("paper.no_pieces"),
            where=patterns[0].lesson.title,
            do=message("paper.no_pieces_do"),
        )
    known = list(chart) if set(names) <= set(chart) else names
    places = tuple(known.index(name) + 1 for name in names)
    order = list(dict.fromkeys(piece.name for pattern in patterns for piece in pattern.pieces))
    order = [name for name in order if name not in without]
    by_name = [{piece.name: piece for piece in pattern.pieces} for pattern in patterns]
    whole = Nest(tuple(patterns), places, ())
    return replace(whole, pieces=tuple(_nested(tuple(pieces.get(name) for pieces in by_name), whole) for name in order))


def lay_nest(
    made: Nest,
    papers: Sequence[Paper] = (A4, LETTER),
    gap: float = GAP,
    limit: float = A0.width,
    request: PageRequest | None = None,
    head: tuple[float, float] | None = None,
) -> Sheet:
    """The nests of all pieces on one sheet, laid as `kit.paper.sheet.lay` does; its placements are in the order of
    `made.pieces`."""
    return lay([(each.piece, each.items, each.corners) for each in made.pieces], papers, gap, limit, request, head)


def _nested(pieces: tuple[Piece | None, ...], whole: Nest) -> NestedPiece:
    has = [piece for piece in pieces if piece is not None]
    if len(pieces) == 1:
        pattern = whole.patterns[0]
        items = piece_items(has[0], pattern, pattern.lesson.units)
        corners = tuple(cut_line(has[0]).points(0.1))
        return NestedPiece(
            pieces, (Motion(),), (SharedPart((0,), items),), (), (), (), corners, (_closed(corners, Motion()),)
        )
    # The sizes of one piece are laid over each other at its point of growth, then their drawings are compared item by
    # item: what several draw alike is drawn once and belongs to all of them. Cut lines and stitch lines are shared
    # apart, so that a stitch line equal in two sizes never hides a cut line that is not. Words stand on paper that all
    # sizes have.
    edges = {f"{piece.name}.{edge.name}" for piece in has for edge in piece.edges}
    found = iter(_alignment(has))
    motions = tuple(Motion() if piece is None else next(found) for piece in pieces)
    pieces = one_level(pieces, motions, whole.patterns)
    drawings = [
        () if piece is None else moved(piece_lines(piece, pattern), motion)
        for piece, motion, pattern in zip(pieces, motions, whole.patterns, strict=True)
    ]
    by_size = tuple(
        None if piece is None else _drawn_area(piece, drawing) for piece, drawing in zip(pieces, drawings, strict=True)
    )
    areas = [area for area in by_size if area is not None]
    shared_area = shapely.intersection_all(areas)
    lines = one_grain(
        [tuple(item for item in drawing if not _stitch(item, edges)) for drawing in drawings], shared_area
    )
    parts = shared(lines)
    stitches = shared([tuple(item for item in drawing if _stitch(item, edges)) for drawing in drawings])
    paper = shapely.union_all(areas)
    around: Any = paper.buffer(_LINE, quad_segs=2).simplify(0.1)
    if around.geom_type != "Polygon":
        around = around.convex_hull
    corners = tuple(Point(x, y) for x, y in around.exterior.coords[:-1])
    inner = shapely.intersection_all(
        [
            _closed(piece.outline.points(0.2), motion)
            for piece, motion in zip(pieces, motions, strict=True)
            if piece is not None
        ]
    )
    free = NestRoom(
        PieceRoom(_largest(shared_area), _largest(inner), [item for part in parts for item in part.items], letters=1.0),
        paper,
        NamePlaces(parts, whole.sizes),
        bunched(parts, len(whole.sizes)),
    )
    return lettered(NestedPiece(pieces, motions, parts, stitches, (), (), corners, by_size, found=free), whole)


def lettered(each: NestedPiece, whole: Nest, joins: Sequence[Stroke] = ()) -> NestedPiece:
    """`each` with all its words: its text, the names of the sizes in their lines, and the orders of lines that bunch.
    None of them runs over one of the `joins` of pages where there is room beside it."""
    has = [(piece, motion) for piece, motion in zip(each.pieces, each.motions, strict=True) if piece is not None]
    sizes = [place for place, piece in enumerate(each.pieces) if piece is not None]
    said = said_sizes([whole.sizes[i] for i in sizes], [whole.places[i] for i in sizes])
    said = say("paper.sizes_alike", sizes=said) if each.alike else said
    found = each.found
    assert found is not None  # several sizes have it from the first
    text = _words(_smallest([piece for piece, _ in has]), whole, said, found.room.crossed(joins))
    words = [item for item in text if isinstance(item, Label)]
    lines = shapely.MultiLineString([_ends(join) for join in joins]) if joins else None
    names = size_names(found.places, words, lines)
    words += [item for part in names for item in part.items if isinstance(item, Label)]
    told = orders(found.close, whole.sizes, whole.places, found.paper, words, lines)
    return replace(each, text=text, names=names, orders=told.parts, thin=told.share > _OFTEN, found=found)


def _ends(join: Stroke) -> list[tuple[float, float]]:
    return [(point.x, point.y) for point in (join.curves[0].start, join.curves[-1].end)]


def _stitch(item: Item, edges: set[str]) -> bool:
    """Whether a line is the stitch line of one of `edges`; a dart's legs and a tuck's rows are not, they are marked on
    the cloth whatever is made of the seams."""
    return isinstance(item, Stroke) and item.role == "stitch" and item.name in edges


def _cuts(part: SharedPart) -> bool:
    return any(isinstance(item, Stroke) and item.role == "cut" for item in part.items)


def _area(piece: Piece, motion: Motion) -> Any:
    return _closed(cut_line(piece).points(0.1), motion)


def _drawn_area(piece: Piece, drawing: Sequence[Item]) -> Any:
    """The paper of a drawn piece, read off its cut line and fold."""
    strokes = [item for item in drawing if isinstance(item, Stroke)]
    cut = [item for item in strokes if item.role == "cut"]
    if not cut:
        return _area(piece, Motion())  # refuses a piece without allowances
    rest = [] if cut[0].closed else [item for item in strokes if item.role == "fold"]
    points = [point for item in (*cut, *rest) for curve in item.curves for point in curve.points(0.1)]
    return _closed(points, Motion())


def _closed(points: Iterable[Point], motion: Motion) -> Any:
    placed = [motion(point) for point in points]
    return shapely.make_valid(shapely.Polygon([(point.x, point.y) for point in placed]))


def _largest(area: Any) -> Any:
    return max(getattr(area, "geoms", [area]), key=lambda part: part.area)


# ---- a common place ----------------------------------------------------------------------------------------


def _alignment(pieces: Sequence[Piece]) -> list[Motion]:
    """How each size is laid: grain parallel to that of the smallest, then on the origin of the draft or, where that
    is clearly closer, on a corner they all have (on the fold, for a piece that has one)."""
    small = _smallest(pieces)
    turns = [_turn(piece, small) for piece in pieces]
    corners = [
        {edge.name: turn(edge.path.start) for edge in piece.edges} for piece, turn in zip(pieces, turns, strict=True)
    ]
    common = [name for name in corners[0] if all(name in each for each in corners)]
    home = corners[pieces.index(small)]

    def spread(slides: Sequence[tuple[float, float]]) -> float:
        return sum(
            math.hypot(each[name].x + dx - home[name].x, each[name].y + dy - home[name].y)
            for each, (dx, dy) in zip(corners, slides, strict=True)
            for name in common
        )

    best = [(0.0, 0.0)] * len(pieces)
    least = spread(best) * _CLOSER
    for name in _anchors(small, common):
        slides = [(home[name].x - each[name].x, home[name].y - each[name].y) for each in corners]
        if spread(slides) < least - 1e-6:
            best, least = slides, spread(slides)
    return [turn.then(Motion(dx=dx, dy=dy)) for turn, (dx, dy) in zip(turns, best, strict=True)]


def _smallest(pieces: Sequence[Piece]) -> Piece:
    return min(pieces, key=lambda piece: abs(piece.outline.area))


def _turn(piece: Piece, small: Piece) -> Motion:
    if piece.grain is None or small.grain is None:
        return Motion()
    one, other = piece.grain.end - piece.grain.start, small.grain.end - small.grain.start
    angle = math.remainder(math.atan2(other.y, other.x) - math.atan2(one.y, one.x), math.pi)
    return Motion() if abs(angle) < 1e-6 else Motion.rotation(angle)


def _anchors(piece: Piece, common: Sequence[str]) -> list[str]:
    """The edges whose start may be the common point: both ends of the fold, else every corner."""
    if not piece.fold:
        return list(common)
    names = [edge.name for edge in piece.edges]
    place = names.index(piece.fold)
    return [name for name in (names[place], names[(place + 1) % len(names)]) if name in common]


# ---- words ------------------------------------------------------------------------------------------------


def _words(piece: Piece, whole: Nest, said: str, room: PieceRoom) -> tuple[Item, ...]:
    """All text of a nest, once: on paper every size has, clear of the lines of all. `piece` is the smallest, in whose
    mm the nest lies."""
    pattern = whole.patterns[len(whole.patterns) // 2]
    pattern = replace(pattern, body=replace(pattern.body, name=said))
    return tuple(piece_words(piece, pattern, room, pattern.lesson.units))


def sized(each: NestedPiece, size: int) -> tuple[Item, ...]:
    """What is drawn of one size, in the nest's mm: its lines, stitch lines, name and the orders it stands in."""
    parts = (*each.parts, *each.stitches, *each.names, *each.orders)
    return tuple(item for part in parts if size in part.sizes for item in part.items if not isinstance(item, Fill))


def size_areas(made: Nest, laid: Sheet, size: int) -> list[Any]:
    """The paper of one size on the sheet (shapely)."""
    out = []
    for each, placement in zip(made.pieces, laid.placements, strict=True):
        area = each.areas[size]
        if area is not None:
            m = placement.motion
            out.append(affinity.affine_transform(area, [m.cos, -m.sin, m.sin, m.cos, m.dx, m.dy]))
    return out
