"""Rules of a picture's text, as programs over the finished picture: what is seen of every line, and every text where
it stands. All rules are our own (common practice in technical illustration, no source), but for the sizes: 7 pt is the
least size of print that the American Printing House for the Blind and the German DIN 1450 (2013) call readable for
notes (from memory), 11 px at 390 px our own choice."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from itertools import combinations
from typing import Any

import shapely
from shapely import affinity

from kit.geometry import Line
from kit.picture.drawing import Dimension, Drawing, Fill, Label, Stroke
from kit.picture.lettered import Lettered, lettered
from kit.picture.svg_path import shifted
from kit.picture.theme import THEME, Theme

MAY_CROSS = frozenset(("guide", "leader", "page"))
OUTLINES = frozenset(("new", "kept", "cut", "fold", "edge"))
CLOTH = frozenset(("right_side", "wrong_side", "interfacing", "facing", "strip", "lining"))
PRINT_LEAST = 7.0 * 96 / 72
PHONE_LEAST = 11.0
_PER_MM = 96 / 25.4


@dataclass(frozen=True)
class Text:
    """One text where it stands, in mm of the drawing; `size` is its type size in CSS px, `item` what it belongs to."""

    text: str
    size: float
    box: Any
    item: Label | Dimension | None = None
    leader: Any = None
    note: bool = False


def cache_of_own(make: Any) -> Any:
    """A method of a number is asked once for each number, and what it gives is kept with its picture."""

    def kept(self: Any, k: int) -> Any:
        known = self.__dict__.setdefault(f"_{make.__name__}", {})
        if k not in known:
            known[k] = make(self, k)
        return known[k]

    return kept


@dataclass
class Finished:
    """A finished picture. `unit` is mm of the drawing in a CSS px.

    Its texts stand in few places, most of its lines and cloth come near none of them: a line or an area is drawn out
    where a text lies in the box round it, and kept."""

    name: str
    drawing: Drawing
    unit: float
    bounds: tuple[float, float, float, float]
    texts: list[Text] = field(default_factory=list)

    def __post_init__(self) -> None:
        items = self.drawing.items
        self.frame = shapely.box(*self.bounds)
        self._inside = self.frame.buffer(0.5 * self.unit)
        self._fills = [(i, item) for i, item in enumerate(items) if isinstance(item, Fill) and item.curves]
        self._fill_boxes = [_round(item.curves) for _, item in self._fills]
        drawn = [(i, item) for i, item in enumerate(items) if isinstance(item, Stroke | Dimension)]
        self._lines = [(i, item) for i, item in drawn if isinstance(item, Dimension) or item.curves]
        boxes = [
            _round(item.curves, item.thickness / 2 if isinstance(item, Stroke) else 0.0)
            if isinstance(item, Stroke)
            else self.drawn(k).envelope
            for k, (_, item) in enumerate(self._lines)
        ]
        self._near = shapely.STRtree(boxes)
        self._near_cloth = shapely.STRtree(self._fill_boxes)
        self._over: dict[tuple[int, ...], Any] = {}

    @cache_of_own
    def drawn(self, k: int) -> Any:
        """A line as it is drawn, wherever it runs."""
        _, item = self._lines[k]
        if isinstance(item, Dimension):
            return dimension_line(item, self.unit)
        line = _line(item.curves, item.closed, self.unit)
        return line.buffer(item.thickness / 2) if item.thickness else line

    @cache_of_own
    def area(self, k: int) -> Any:
        """What a fill covers."""
        return _area(self._fills[k][1].curves)

    @cache_of_own
    def shown(self, k: int) -> Any:
        """What is seen of a line: not what lies outside the picture, nor what later fills cover."""
        i, item = self._lines[k]
        line = self.drawn(k)
        if isinstance(item, Dimension):
            return line
        later = sorted(int(n) for n in self._near_cloth.query(line) if self._fills[n][0] > i)
        over = tuple(n for n in later if self.area(n).intersects(line))
        seen = line if self.frame.contains(line) else line.intersection(self.frame)
        if over:
            if over not in self._over:
                covered = shapely.union_all([self.area(n) for n in over])
                self._over[over] = covered.buffer(-0.2 * self.unit)
            seen = seen.difference(self._over[over])
        return seen

    def named(self) -> list[tuple[str, Any]]:
        """The names of lines of pieces, which begin with the piece's, and what is seen of each."""
        names = [(k, getattr(item, "name", "")) for k, (_, item) in enumerate(self._lines)]
        return [(name, self.shown(k)) for k, name in names if "." in name]

    def crossed(self, text: Text) -> Iterator[tuple[str, Any]]:
        """Lines that run through a text: (role, item), its own left out."""
        inside = text.box.buffer(-0.6 * self.unit)
        for k in sorted(map(int, self._near.query(inside))):
            _, item = self._lines[k]
            role = item.role if isinstance(item, Stroke) else "measure"
            if role in MAY_CROSS or item is text.item or not self.drawn(k).intersects(inside):
                continue
            cut = self.shown(k).intersection(inside)
            if (cut.length if cut.area == 0 else cut.area) > 0.5 * self.unit:
                yield role, item

    def beyond(self, text: Text) -> float:
        """How much of a text, in mm2, lies outside the picture."""
        return 0.0 if self._inside.contains(text.box) else float(text.box.difference(self._inside).area)

    def on_cloth(self, text: Text) -> float:
        """How much of a text, in mm2, lies on cloth: each fill is laid over those before it."""
        shown = shapely.Polygon()
        for n in sorted(map(int, self._near_cloth.query(text.box))):
            area = self.area(n).intersection(text.box)
            shown = shown.union(area) if self._fills[n][1].role in CLOTH else shown.difference(area)
        return float(shown.area)


def finished(name: str, drawing: Drawing, width: float | None, height: float | None, theme: Theme = THEME) -> Finished:
    """`drawing` as it is shown in a room of so many CSS px."""
    return as_made(name, lettered(drawing, width, height, theme))


def as_made(name: str, made: Lettered) -> Finished:
    """A drawing whose texts have their places."""
    drawing = made.drawing
    texts = []
    for text in made.texts:
        item = drawing.items[text.item]
        assert isinstance(item, Label | Dimension)
        box = turned(text.x, text.y, text.wide * 0.98, min(text.size, text.high), text.angle)
        leader = shapely.LineString(text.leader) if text.leader else None
        texts.append(Text(text.text, text.size / made.unit, box, item, leader, text.ringed or text.listed))
    return Finished(name, drawing, made.unit, made.bounds, texts)


def broken(picture: Finished, least: float, seen: list[str] | None = None) -> Counter[str]:
    """How often each rule is broken in a picture, and in `seen` where. `least` is the least type size in CSS px."""
    found: Counter[str] = Counter()

    def is_(rule: str, text: str, times: float = 1) -> None:
        if times:
            found[rule] += int(times)
            if seen is not None:
                seen.append(f"{picture.name}: {rule}: {text!r}")

    for text in picture.texts:
        over = list(picture.crossed(text))
        is_("text over a line", text.text, bool(over))
        item = text.item
        if isinstance(item, Dimension) and text.leader is None and not text.note:
            away = dimension_line(item, picture.unit, legs=False).distance(text.box) / picture.unit / _PER_MM
            is_("14 dimension text off its line", text.text, away > 1.0)
        if isinstance(item, Dimension):
            is_("14 dimension text over an outline", text.text, any(role in OUTLINES for role, _ in over))
        is_("15 text too small", text.text, text.size < least - 0.05)
        is_("text outside the picture", text.text, picture.beyond(text) > 0.01 * text.box.area)
        is_("13 plate over cloth", text.text, picture.on_cloth(text) > 0.02 * text.box.area)
    boxes = [text.box for text in picture.texts]
    touching = shapely.STRtree(boxes).query(boxes, predicate="intersects").T.tolist() if boxes else []
    for i, j in sorted((i, j) for i, j in touching if i < j):
        a, b = picture.texts[i], picture.texts[j]
        shared = a.box.intersection(b.box).area
        is_("two texts overlap", f"{a.text} / {b.text}", shared > 0.02 * min(a.box.area, b.box.area))
    leaders = [text.leader for text in picture.texts if text.leader is not None]
    is_("13 leaders cross", "", sum(a.crosses(b) for a, b in combinations(leaders, 2)))
    sizes = sorted(text.size for text in picture.texts if not text.note)
    is_("15 more than two sizes", str([round(size, 1) for size in sizes]), clusters(sizes) > 2)
    is_("14 equal allowance named again", "", _named_again(picture))
    return found


def clusters(sizes: Iterable[float]) -> int:
    """How many sizes there are, those within 0.3 px of the least of theirs taken as one."""
    least: list[float] = []
    for size in sorted(sizes):
        if not least or size - least[-1] > 0.3:
            least.append(size)
    return len(least)


def _named_again(picture: Finished) -> int:
    """How many allowances say what another of the same piece says. Whose an allowance is tells the nearest named line:
    names begin with the piece's."""
    measures = [item for item in picture.drawing.items if isinstance(item, Dimension) and not item.offset]
    lines = [(name.partition(".")[0], line) for name, line in picture.named()] if len(measures) > 1 else []
    said: Counter[tuple[str, str]] = Counter()
    for item in measures if lines else ():
        at = shapely.Point(item.start.x, item.start.y)
        said[min(lines, key=lambda one: one[1].distance(at))[0], item.text] += 1
    return sum(n - 1 for n in said.values())


def turned(x: float, y: float, wide: float, high: float, angle: float) -> Any:
    """A box centred at x, y and turned by `angle` radians."""
    box = shapely.box(x - wide / 2, y - high / 2, x + wide / 2, y + high / 2)
    return affinity.rotate(box, math.degrees(angle), (x, y)) if angle else box


def dimension_line(item: Dimension, unit: float, legs: bool = True) -> Any:
    """The line of a dimension as it is drawn, with the thin lines to what it measures."""
    if item.start.distance(item.end) < 1e-6 and not item.along:
        return shapely.Point(item.end.x, item.end.y)
    curves = item.along or (Line(item.start, item.end),)
    moved = [shifted(curve, item.offset) for curve in curves] if item.offset else list(curves)
    line = _line(moved, False, unit)
    if not item.offset or not legs:
        return line
    ends = ((item.start, moved[0].start), (item.end, moved[-1].end))
    return shapely.MultiLineString([*_parts(line), *([(a.x, a.y), (b.x, b.y)] for a, b in ends)])


def _parts(line: Any) -> list[Any]:
    return list(getattr(line, "geoms", [line]))


def _line(curves: Any, closed: bool, unit: float) -> Any:
    """A line as it is drawn; where its curves do not follow one another it is lifted."""
    runs: list[list[tuple[float, float]]] = []
    for curve in curves:
        points = [(p.x, p.y) for p in curve.points(0.3 * unit)]
        if runs and math.dist(runs[-1][-1], points[0]) < 0.02:
            runs[-1] += points[1:]
        else:
            runs.append(points)
    if closed and runs:
        runs[-1].append(runs[0][0])
    return shapely.MultiLineString([run for run in runs if len(run) > 1])


def _round(curves: Any, by: float = 0.0) -> Any:
    """The box round curves, and so much more."""
    found = [curve.bounds() for curve in curves]
    low = [min(box[k] for box in found) - by for k in (0, 1)]
    high = [max(box[k] for box in found) + by for k in (2, 3)]
    return shapely.box(*low, *high)


def _area(curves: Any) -> Any:
    points = [(p.x, p.y) for curve in curves for p in list(curve.points(0.5))]
    return shapely.Polygon(points).buffer(0) if len(points) > 2 else shapely.Polygon()
