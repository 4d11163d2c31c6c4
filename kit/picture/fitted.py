"""Text fitted into a piece: on free paper, never across a line, never smaller than can be read.

`PieceRoom` knows the free paper of one piece: its area less every line drawn and every text already placed. A `Note` is
text that belongs beside something and says where it may stand; a block of text stands wherever there is most room,
level or turned along the piece, in fewer and longer or more and shorter lines. What fits nowhere inside is led
outside: a leader runs from the text to the piece.
"""

from __future__ import annotations

import copy
import math
from collections.abc import Iterable, Sequence
from functools import cached_property
from typing import Any

import numpy as np
import shapely

from kit.geometry import Line, Point, Vector
from kit.picture.drawing import Dot, Item, Label, LabelRole, Stroke
from kit.picture.lettering import LEAST, LINE_HEIGHT, text_width
from kit.picture.notes import GAP, Note, Standing
from kit.wording.lists import strung

TITLE, TEXT = 8.0, 5.0
_SCALES = (1.0, 0.85, LEAST / TEXT)
_LEADING = 1.35
_TIP = 0.7
_AWAY = 6.0
_LEADER = 7.0
_TRIES = 700
_BOLD = frozenset(("title", "number", "new"))

_NONE = np.array([], dtype=object)

Line_ = tuple[str, LabelRole, float]
"""One line of a block: text, role and type size."""


def label_box(label: Label) -> Any:
    """The room a label with a size takes, turned as it stands (shapely)."""
    bold = label.role in _BOLD
    wide, high = text_width(label.text, label.size, bold) + label.size * 0.3, label.size * LINE_HEIGHT
    shift = {"middle": 0.0, "start": wide / 2, "end": -wide / 2}[label.anchor]
    way = Vector(math.cos(label.angle), math.sin(label.angle))
    at = label.at + way * shift
    return _boxes(np.array([[at.x, at.y]]), wide, high, label.angle)[0]


def _boxes(middles: Any, wide: float, high: float, angle: float) -> Any:
    """Boxes of that size and turn, centred at the rows of `middles` (an array of shapely polygons)."""
    c, s = math.cos(angle), math.sin(angle)
    a, b = np.array([c, s]) * wide / 2, np.array([-s, c]) * high / 2
    corners = np.stack([middles - a - b, middles + a - b, middles + a + b, middles - a + b], axis=1)
    return shapely.polygons(corners)


class PieceRoom:
    """The free paper of one piece. `area` is what is cut out, `inner` what is sewn (shapely), `items` all lines
    drawn; `letters` is how much larger than on paper everything written is."""

    def __init__(self, area: Any, inner: Any, items: Iterable[Item], letters: float) -> None:
        self.letters = letters
        self.gap = GAP * letters
        self.area = area
        self._ink = _Ink(items, letters)
        shapely.prepare(area)
        # Of many sizes over one another most lines lie outside the paper that all of them have.
        self._clear = area.difference(shapely.union_all(self._ink.near(area)))
        self._inner = inner
        self._also: list[Any] = []  # what is taken besides: texts, and lines that came later
        self._grid: tuple[Any, Any, Any] | None = None

    def crossed(self, items: Iterable[Item]) -> PieceRoom:
        """The same paper with more lines on it; this room stays as it is."""
        other = copy.copy(self)
        ink = _Ink(items, self.letters).all
        other._clear = self._clear.difference(shapely.union_all(ink)) if len(ink) else self._clear
        other._also = [*self._also, *ink]
        other._grid = None
        return other

    @property
    def _taken(self) -> list[Any]:
        """All that words led outside the piece must keep off."""
        return [self.area.buffer(self.gap), *self._ink.all, *self._also]

    def _take(self, box: Any) -> None:
        grown = box.buffer(self.gap / 2, join_style="mitre")
        self._clear = self._clear.difference(grown)
        self._also.append(grown)
        self._grid = None

    # ---- notes ------------------------------------------------------------------------------------------

    def inside(self, note: Note, sizes: Sequence[float] = ()) -> Label | None:
        """The note where it fits, the larger the better."""
        shapely.prepare(self._clear)
        for size in [size * self.letters for size in (sizes or note.sizes)]:
            wide, high = text_width(note.text, size) + size * 0.3, size * LINE_HEIGHT
            for at, angle in note.places(wide, size):
                box = _boxes(np.array([[at.x, at.y]]), wide, high, angle)[0]
                if shapely.contains_properly(self._clear, box):
                    self._take(box)
                    return Label(note.text, at, "small", angle, size)
        return None

    def note(self, note: Note) -> list[Item]:
        """The note inside or, when needed, led outside."""
        label = self.inside(note)
        if label is not None:
            return [label]
        size = note.sizes[-1] * self.letters
        return self._led([(note.text, "small", size)], note.anchor, to_anchor=True) if note.needed else []

    # ---- the block --------------------------------------------------------------------------------------

    def block(self, head: str, phrases: Sequence[str], angles: Sequence[float]) -> list[Item] | None:
        """The piece's text as large as it fits, None where it fits nowhere. A no-break space in a phrase holds its
        words together; phrases run on in one text where each does not get a line of its own."""
        for scale in _SCALES:
            for lines in _layouts(head, phrases, narrow=scale == _SCALES[-1]):
                sized = [(text, role, size * scale * self.letters) for text, role, size in lines]
                wide, high = _extent(sized)
                found = self._widest(wide, high, angles)
                if found is not None:
                    return list(self._written(sized, *found))
        return None

    def led_out(self, head: str, phrases: Sequence[str]) -> list[Item]:
        """The text outside the piece, with a leader to its edge."""
        lines = next(iter(_layouts(head, phrases, narrow=False)))
        sized = [(text, role, size * _SCALES[-1] * self.letters) for text, role, size in lines]
        middle = self.area.representative_point()
        return self._led(sized, Point(middle.x, middle.y), to_anchor=False)

    def number(self, text: str) -> list[Item]:
        """The piece's number alone, where even that fits."""
        for size in (TEXT * self.letters, LEAST * self.letters):
            lines: list[Line_] = [(text, "title", size)]
            found = self._widest(*_extent(lines), (0.0,))
            if found is not None:
                return list(self._written(lines, *found))
        return []

    def _spots(self) -> tuple[Any, Any, Any]:
        """The free paper inside the stitch line, places on it and how far each is from any line, widest first."""
        # About `_TRIES` places whatever the size of the piece, so that a small one is searched as thoroughly as a large
        # one. The distance to the nearest line is worked out once for all of them: no box can stand at a place that is
        # nearer to a line than half its shorter side, which rules most out before any shape is built.
        if self._grid is None:
            clear = self._clear.intersection(self._inner)
            x0, y0, x1, y1 = clear.bounds if not clear.is_empty else (0.0, 0.0, 0.0, 0.0)
            step = max(math.sqrt(max(clear.area, 1.0) / _TRIES), 0.8 * self.letters)
            x, y = np.meshgrid(np.arange(x0 + step / 2, x1, step), np.arange(y0 + step / 2, y1, step))
            spots = np.column_stack([x.ravel(), y.ravel()])
            shapely.prepare(clear)
            if len(spots):
                spots = spots[shapely.contains_xy(clear, spots[:, 0], spots[:, 1])]
            far = shapely.distance(shapely.points(spots), clear.boundary) if len(spots) else np.zeros(0)
            order = np.argsort(-far, kind="stable")
            self._grid = clear, spots[order], far[order]
        return self._grid

    def _widest(self, wide: float, high: float, angles: Sequence[float]) -> Standing | None:
        # All places at once for each angle; the middles of the short sides are looked at first, as points are cheaper
        # than boxes. The first that fits is the best one, for the places stand widest first.
        clear, spots, far = self._spots()
        spots = spots[far >= min(wide, high) / 2]
        if not len(spots):
            return None
        for angle in angles:
            end = np.array([math.cos(angle), math.sin(angle)]) * wide / 2
            ends = [spots + end, spots - end]
            good = np.logical_and(*(shapely.contains_xy(clear, e[:, 0], e[:, 1]) for e in ends))
            tried = spots[good]
            fits = shapely.contains_properly(clear, _boxes(tried, wide, high, angle)) if len(tried) else []
            if np.any(fits):
                x, y = tried[int(np.argmax(fits))]
                return Point(float(x), float(y)), angle
        return None

    def _written(self, lines: Sequence[Line_], middle: Point, angle: float) -> Iterable[Label]:
        wide, high = _extent(lines)
        self._take(_boxes(np.array([[middle.x, middle.y]]), wide, high, angle)[0])
        down = Vector(math.sin(angle), -math.cos(angle))
        offset = -sum(size for _, _, size in lines) * _LEADING / 2
        for text, role, size in lines:
            yield Label(text, middle + down * (offset + size * _LEADING / 2), role, angle, size)
            offset += size * _LEADING

    # ---- outside ----------------------------------------------------------------------------------------

    def _led(self, lines: Sequence[Line_], anchor: Point, to_anchor: bool) -> list[Item]:
        """Lines of text beside the piece, as near to `anchor` as there is room."""
        wide, high = _extent(lines)
        # Places stand off the outline all around it, in twelve directions, nearest ring first: once one fits, farther
        # rings need not be looked at. Text led to the piece keeps a leader's length off, or it would seem to lie in it.
        ring = self.area.exterior if hasattr(self.area, "exterior") else self.area.convex_hull.exterior
        taken = shapely.STRtree(self._taken)
        best: tuple[float, Point, Any] | None = None
        for away in (_AWAY, 2 * _AWAY, 4 * _AWAY, 10 * _AWAY):
            for share in np.linspace(0.0, 1.0, 72, endpoint=False):
                foot = ring.interpolate(share, normalized=True)
                for turn in range(0, 360, 30):
                    way = Vector(math.cos(math.radians(turn)), math.sin(math.radians(turn)))
                    out = away * self.letters + abs(way.x) * wide / 2 + abs(way.y) * high / 2
                    at = Point(foot.x, foot.y) + way * out
                    cost = at.distance(anchor)
                    if best is not None and cost >= best[0]:
                        continue
                    box = _boxes(np.array([[at.x, at.y]]), wide, high, 0.0)[0]
                    near = not to_anchor and shapely.distance(self.area, box) < _LEADER * self.letters
                    if not near and not len(taken.query(box, predicate="intersects")):
                        best = cost, at, box
            if best is not None:
                break
        if best is None:  # further off than any text is long
            x0, y0, x1, _ = map(float, shapely.total_bounds(self._taken))
            at = Point((x0 + x1) / 2, y0 - high)
            best = 0.0, at, _boxes(np.array([[at.x, at.y]]), wide, high, 0.0)[0]
        _, at, box = best
        target = shapely.Point(anchor.x, anchor.y) if to_anchor else self.area
        reach = shapely.shortest_line(box, target)
        (ax, ay), (bx, by) = reach.coords
        a, b = Point(ax, ay), Point(bx, by)
        tip = b + (a - b).unit() * min(_TIP * self.letters, a.distance(b) / 2)
        leader = Stroke((Line(a, tip),), "leader", arrow="" if to_anchor else "end", name="leader")
        self._also.append(shapely.LineString([(a.x, a.y), (tip.x, tip.y)]).buffer(self.gap))
        return [leader, *self._written(lines, at, 0.0)]


class _Ink:
    """The paper that lines, arrow heads and dots cover, with a little air."""

    def __init__(self, items: Iterable[Item], letters: float) -> None:
        self._air = GAP * letters
        runs, heads, dots = [], [], []
        for item in items:
            if isinstance(item, Stroke) and item.curves:
                places = [(point.x, point.y) for curve in item.curves for point in curve.points(0.2)]
                if item.closed:
                    places.append(places[0])
                runs.append(places)
                heads += {"start": places[:1], "end": places[-1:], "both": [places[0], places[-1]], "": []}[item.arrow]
            elif isinstance(item, Dot):
                dots.append((item.at.x, item.at.y))
        at = np.repeat(np.arange(len(runs)), [len(run) for run in runs])
        self._lines: Any = shapely.linestrings([each for run in runs for each in run], indices=at) if runs else _NONE
        self._signs = [
            *_round(heads, 4.0 * letters + self._air / 2),
            *_round(dots, 1.0 * letters + self._air),
        ]

    def near(self, area: Any) -> list[Any]:
        """What of it may lie on `area`. Lines far from it need not be drawn out."""
        lines = self._lines[shapely.dwithin(area, self._lines, self._air)]
        return [*shapely.buffer(lines, self._air, quad_segs=2), *self._signs]

    @cached_property
    def all(self) -> list[Any]:
        return [*shapely.buffer(self._lines, self._air, quad_segs=2), *self._signs]


def _round(places: Sequence[tuple[float, float]], radius: float) -> Any:
    """Discs (array of shapely polygons)."""
    return shapely.buffer(shapely.points(places), radius, quad_segs=3) if places else _NONE


def _extent(lines: Sequence[Line_]) -> tuple[float, float]:
    """Width and height of lines set under one another, with a little air."""
    wide = max(text_width(text, size, role in _BOLD) + size * 0.3 for text, role, size in lines)
    high = sum(size for _, _, size in lines) * _LEADING
    return wide, high


def _layouts(head: str, phrases: Sequence[str], narrow: bool) -> Iterable[list[Line_]]:
    """Ways to set the text at full size: each phrase on its own line, wrapped, then run on in one text."""
    widest = max(text_width(head, TITLE, bold=True), *(text_width(text, TEXT) for text in phrases))
    seen: set[tuple[str, ...]] = set()
    for width in (widest, 70.0, 52.0, *((40.0, 32.0, 26.0) if narrow else ())):
        if width > widest:
            continue
        lines: list[Line_] = [(text, "title", TITLE) for text in _wrapped([head], width, TITLE, True)]
        lines += [(line, "small", TEXT) for text in phrases for line in _wrapped([text], width, TEXT)]
        yield from _fresh(lines, seen)
    whole = text_width(strung((head, *phrases, ""), "parted"), TEXT)
    for count in (3, 2, *((4, 5, 1) if narrow else ())):
        run = _wrapped([head, *phrases], whole / count * 1.06 + 2.0, TEXT)
        yield from _fresh([(text, "small", TEXT) for text in run], seen)


def _fresh(lines: list[Line_], seen: set[tuple[str, ...]]) -> Iterable[list[Line_]]:
    key = tuple(text for text, _, _ in lines)
    if key not in seen:
        seen.add(key)
        yield lines


def _wrapped(phrases: Sequence[str], width: float, size: float, bold: bool = False) -> list[str]:
    words = strung(phrases, "parted").split(" ")
    lines = [words[0]]
    for word in words[1:]:
        longer = f"{lines[-1]} {word}"
        if text_width(longer, size, bold) <= width + 1e-6:
            lines[-1] = longer
        else:
            lines.append(word)
    return [line.replace("\u00a0", " ") for line in lines]
