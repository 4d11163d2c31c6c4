"""A drawing with all its texts in their places, for the room it will be shown in: what a pen only has to write.

Every text that may move is placed at once (kit/picture/placing.py) among all lines, dots, dimension lines and the texts
that stand already. Where a text fits nowhere without covering something it becomes a number, and a list says what the
number stands for, below the picture or beside one that is narrow for its room. A drawing without bounds of its own
grows by what its texts need at the sides, and its lines are scaled so that both fit.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from itertools import chain
from typing import NamedTuple

from kit.geometry import Curve, Point
from kit.geometry.region import Spot
from kit.picture.dimension_line import dimension_curves, set_off
from kit.picture.drawing import Area, Dimension, Dot, Drawing, Fill, Label, LabelRole, Stroke
from kit.picture.drawn_lines import DrawnLines
from kit.picture.in_the_way import SeenCloth, flattened, lines_in_the_way
from kit.picture.lettering import LINE_HEIGHT, Box, in_two, text_box, text_width
from kit.picture.number_list import LINE, NumberList, counted
from kit.picture.placing import TextPlace, WaitingText, arrange, taking_room
from kit.picture.standing import (
    ASIDE,
    END,
    LED,
    NUMBERED,
    WalkedLine,
    along_line,
    as_number,
    at_dimension,
    centre,
    in_area,
    in_margin,
    led,
    near_first,
    round_point,
    round_window,
    where_it_was_put,
)
from kit.picture.theme import THEME, Theme

CSS_PER_MM = 96 / 25.4
MARGIN = 10.0
HEADS = 26.0
"""CSS px between the ends of a dimension line from which on it has arrow heads; a shorter one has ticks."""
_RING = 0.95  # size of a number in its ring, in that of the text it stands for
_SLACK = 4.0  # CSS px of its margin that a text may take
_HEAD = 6.5
_NEAR = 3.4  # CSS px that a dimension's text stands off its line at most; 1 mm of print is 3.8
_LEAST_SHARE = 0.4  # of the width for the lines, whatever their texts ask for
_MOST_LIST = 0.45  # of the width for a list beside the lines
_EACH_TEXT = 0.28
"""em of a picture's height that go to each text, about: a row of the list where it is the third in it, or room at the
lines' side that they cannot have (measured on the drafting steps of three lessons at five heights)."""
_OVER_AT_MOST = 0.5  # of a picture's height
_WORTH = 0.95  # a list stands beside the lines where they are larger so: of mm per px


@dataclass(frozen=True)
class WrittenText:
    """A line of text in its place: the middle, size and angle of its box and its type `size` in mm of the drawing, and
    the points of its leader. It belongs to the `item` of that index; `listed` is a line of the list below the
    picture, `ringed` a number that it explains."""

    text: str
    role: LabelRole
    x: float
    y: float
    wide: float
    high: float
    angle: float
    size: float
    item: int
    anchor: str = "middle"
    leader: tuple[Spot, ...] = ()
    ringed: bool = False
    listed: bool = False


@dataclass(frozen=True)
class Lettered:
    """A drawing, its frame in mm, mm per CSS px, and all its texts."""

    drawing: Drawing
    bounds: Box
    unit: float
    texts: tuple[WrittenText, ...]


def lettered(
    drawing: Drawing, width: float | None = 640.0, height: float | None = None, theme: Theme = THEME
) -> Lettered:
    """`drawing` for a room of `width` x `height` CSS px (one of them alone scales it, none shows it at real size), its
    texts in the sizes of `theme`.

    >>> from kit.picture.drawing import Label, Drawing
    >>> drawing = Drawing((Label("neck point", Point(0, 0), "small", of=Point(0, 0)),))
    >>> [text.text for text in lettered(drawing, 300.0).texts]
    ['neck point']
    """
    first = _Letterer(drawing, width, height, theme)
    made = first.done()
    if first.beside:  # lines that are larger leave their texts less room: where these stand worse, the list goes below
        other = _Letterer(drawing, width, height, theme)
        other.may_beside = False
        below = other.done()
        if other.cost < first.cost:
            return below
    return made


class Growth(NamedTuple):
    """How high a picture is with some width, in CSS px: its lines grow, its `text` does not. Where its height is given
    instead and its width left free, about `over` px of that height are not its lines: the texts above and below them,
    the list of those that stand nowhere else, and what lines give up to the texts at their sides.

    >>> Growth(10.0, 0.5).at(200.0)
    110.0
    """

    text: float
    share: float
    over: float = 0.0

    def at(self, width: float) -> float:
        return self.text + self.share * width


def growth_of(drawing: Drawing, width: float, height: float, theme: Theme = THEME) -> Growth:
    """About how high `drawing` would be with all of about `width`, told before its texts have their places. `height` is
    what it will have at most; all in CSS px.

    >>> from kit.geometry import Line
    >>> wide = Drawing((Stroke((Line(Point(0, 0), Point(400, 100)),), "cut"),))
    >>> round(growth_of(wide, 420.0, 300.0).at(420.0))
    130
    """
    return _Letterer(drawing, width, height, theme).growth()


def drawn_box(drawing: Drawing) -> Box:
    """What the lines and points of a drawing cover, in mm; its texts by the places they were put at."""
    boxes: list[Box] = []
    for item in drawing.items:
        if isinstance(item, Stroke | Fill):
            boxes.extend(curve.bounds() for curve in item.curves)
        elif isinstance(item, Dimension):
            boxes.extend(curve.bounds() for curve in item.along)
            dx, dy = set_off(item)
            for p in (item.start, item.end):
                boxes.append((p.x, p.y, p.x, p.y))
                boxes.append((p.x + dx, p.y + dy) * 2)
        elif isinstance(item, Dot) or item.of is None:
            boxes.append((item.at.x, item.at.y, item.at.x, item.at.y))
    if not boxes:
        boxes = [(item.at.x, item.at.y, item.at.x, item.at.y) for item in drawing.items if isinstance(item, Label)]
    if not boxes:
        return (0.0, 0.0, 1.0, 1.0)
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


@dataclass(frozen=True)
class _Standing:
    """A text that was given its `place`, and what it costs there."""

    item: int
    text: str
    role: LabelRole
    em: float
    place: TextPlace
    cost: float
    anchor: str = "middle"


class _Letterer:
    def __init__(self, drawing: Drawing, width: float | None, height: float | None, theme: Theme) -> None:
        self.drawing = drawing
        self.theme = theme
        self.room = width, height
        self.drawn = drawing.bounds or self._with_standing(_not_flat(drawn_box(drawing)))
        self.grows = drawing.bounds is None or drawing.window is not None
        self.paths: dict[int, list[tuple[Spot, ...]]] = {}
        self.list = NumberList(theme.texts["small"].size, width or math.inf, MARGIN)
        self.around: tuple[DrawnLines, SeenCloth] | None = None
        self.wide = width or 640.0  # px of the frame as it is found: less than the room where the height decides
        self.beside = False  # whether the list stands beside the lines
        self.may_beside = True
        self.cost = 0.0  # of all places taken

    # ---- the whole --------------------------------------------------------------------------------------

    def done(self) -> Lettered:
        width, height = self.room
        bounds = None if self.grows else self.drawing.bounds
        if width is None and height is None:
            unit = 1 / CSS_PER_MM
            frame = bounds or grown(self.drawn, MARGIN * unit)
            return Lettered(self.drawing, frame, unit, self._written(self._placed(frame, unit), unit))
        if bounds is not None:
            unit = self._unit(bounds)
            return Lettered(self.drawing, bounds, unit, self._written(self._placed(bounds, unit), unit))
        # Text has one size on the page, so how much room it takes in mm depends on the scale, and the scale on how far
        # text reaches. A first round at the scale of the lines alone tells which sides need room, the next places the
        # texts in it; one more where that shows that a side needs more, or that texts fit nowhere and become numbers,
        # with a list that needs room as well.
        edges = self._first_edges()
        for left in (2, 1, 0):
            unit, frame = self._frame(edges)
            placed = self._placed(frame, unit, self._kept(), numbers=left > 0 and not self.list)
            before, self.list = self.list, self._numbers(placed)
            wanted = self._edges(placed, unit)
            if self.list.numbered == before.numbered and all(
                a <= b + _SLACK for a, b in zip(wanted, edges, strict=True)
            ):
                break
            edges = [max(two) for two in zip(edges, wanted, strict=True)]
        else:
            frame = self._wider(frame, wanted, unit)
        self.cost = sum(one.cost for one in placed)
        return Lettered(self.drawing, frame, unit, self._written(placed, unit, frame))

    def _wider(self, frame: Box, wanted: Sequence[float], unit: float) -> Box:
        """The frame with what texts still want at both sides, where its height decided and its room is wider."""
        width, _ = self.room
        x0, y0, x1, y1 = frame
        left = max(0.0, x0 - self.drawn[0] + wanted[0] * unit)
        right = max(0.0, self.drawn[2] + wanted[2] * unit - x1)
        free = max(0.0, (width or math.inf) * unit - (x1 - x0))
        share = min(1.0, free / (left + right)) if left + right > 0.0 else 0.0
        return (x0 - left * share, y0, x1 + right * share, y1)

    def growth(self) -> Growth:
        width, height = self.room
        assert width is not None
        x0, y0, x1, y1 = self.drawn
        share = (y1 - y0) / max(x1 - x0, 1e-6)
        if not self.grows:
            return Growth(0.0, share)
        edges = self._first_edges()
        self.room = width, None
        unit, frame = self._frame(edges)
        again = self._edges(self._placed(frame, unit, roughly=True), unit)
        _, (x0, y0, x1, y1) = self._frame([max(two) for two in zip(edges, again, strict=True)])
        found = width * (y1 - y0) / (x1 - x0)
        # Texts that are in each other's way will need a little more, which is much for a flat picture.
        more = MARGIN if found < width * 0.3 else 0.0
        over = again[1] + again[3] + _EACH_TEXT * self._moving() * self.theme.texts["small"].size
        return Growth(found + more - share * width, share, min(over, _OVER_AT_MOST * min(found, height or found)))

    def _moving(self) -> int:
        """How many texts look for a place."""
        return sum(isinstance(item, Label | Dimension) and not _stands(item) for item in self.drawing.items)

    def _first_edges(self) -> list[float]:
        """What texts need at every side, as seen at the scale of the lines alone, each where it would stand best."""
        size = self.room[0] or self.room[1] or 1.0
        unit = self._unit(self.drawn) * size / max(size - 2 * MARGIN, 1.0)
        return self._edges(self._placed(None, unit, roughly=True), unit)

    def _unit(self, box: Box) -> float:
        width, height = self.room
        across = (box[2] - box[0]) / width if width else 0.0
        return max(across, (box[3] - box[1]) / height if height else 0.0, 1e-6)

    def _frame(self, edges: Sequence[float]) -> tuple[float, Box]:
        """Scale and frame for the lines and the list of numbers, below them or beside where they are larger so."""
        self.beside = False
        unit, frame = below = self._framed(edges)
        width, height = self.room
        if self.may_beside and self.list and width and height and self.list.width <= _MOST_LIST * width:
            self.beside = True
            unit, frame = self._framed(edges)
            high = (frame[3] - frame[1]) / unit
            if unit > _WORTH * below[0] or self.list.height(self._row()) + 2 * MARGIN > high:
                self.beside = False
                unit, frame = below
        self.wide = (frame[2] - frame[0]) / unit
        return unit, frame

    def _kept(self) -> tuple[float, float]:
        """px of the frame that are kept for the list, below and at the right."""
        return (0.0, self.list.width) if self.beside and self.list else (self.list.height(self._row()), 0.0)

    def _framed(self, edges: Sequence[float]) -> tuple[float, Box]:
        """Scale and frame with so many px free at the left, below, at the right and above, and room for the list; less
        at both sides where nothing would be left for the lines."""
        (left, below, right, above), (width, height) = edges, self.room
        kept = self._kept()
        below, right = below + kept[0], right + kept[1]
        x0, y0, x1, y1 = self.drawn
        unit = 1e-6
        if width:
            fits = min(1.0, width * (1 - _LEAST_SHARE) / (left + right))
            left, right = left * fits, right * fits
            unit = max(unit, (x1 - x0) / (width - left - right))
        if height:
            fits = min(1.0, height * (1 - _LEAST_SHARE) / (below + above))
            below, above = below * fits, above * fits
            unit = max(unit, (y1 - y0) / (height - below - above))
        short = min(self.list.width, width or math.inf) - (x1 - x0) / unit - left - right
        if short > 0 and not self.beside:  # the longest line of the list is wider than the picture
            left, right = left + short / 2, right + short / 2
        return unit, (x0 - left * unit, y0 - below * unit, x1 + right * unit, y1 + above * unit)

    def _edges(self, placed: Sequence[_Standing], unit: float) -> list[float]:
        """How many px are needed beyond the lines at the left, below, at the right and above."""
        boxes = [text_box(*one.place.box) for one in placed]
        x0, y0, x1, y1 = self.drawn
        left = max((0.0, *(x0 - b[0] for b in boxes)))
        below = max((0.0, *(y0 - b[1] for b in boxes)))
        right = max((0.0, *(b[2] - x1 for b in boxes)))
        above = max((0.0, *(b[3] - y1 for b in boxes)))
        return [edge / unit + MARGIN for edge in (left, below, right, above)]

    # ---- placing ----------------------------------------------------------------------------------------

    def _placed(
        self,
        frame: Box | None,
        unit: float,
        listed: tuple[float, float] = (0.0, 0.0),
        numbers: bool = False,
        roughly: bool = False,
    ) -> list[_Standing]:
        """All texts at the scale `unit`; so many px of the frame below and at the right are kept for the list."""
        texts = [(i, item) for i, item in enumerate(self.drawing.items) if isinstance(item, Label | Dimension)]
        fixed = [self._fixed(i, item, unit) for i, item in texts if _stands(item)]
        moving = [(i, item) for i, item in texts if not _stands(item)]
        if not moving:
            return fixed
        limits = frame and (frame[0], frame[1] + listed[0] * unit, frame[2] - listed[1] * unit, frame[3])
        waiting = [self._waiting(i, item, unit, numbers) for i, item in moving]
        lines, cloth = self._in_the_way(unit)
        width, height = self.room
        covered = cloth.share if cloth.any else None
        found = arrange(
            waiting,
            lines,
            limits,
            [one.place.box for one in fixed],
            covered,
            taking_room(self.drawn, (width or 0.0) * unit, (height or 0.0) * unit) if self.grows else None,
            roughly,
        )
        standing = []
        for (i, item), text, (place, cost) in zip(moving, waiting, found, strict=True):
            standing.append(_Standing(i, self._set(item), _role(item), text.em, place, cost))
        return fixed + standing

    def _fixed(self, index: int, label: Label | Dimension, unit: float = 0.0) -> _Standing:
        assert isinstance(label, Label)
        given = label.size or (unit and _led_from(label) and self.theme.texts[label.role].size * unit)
        size = given or self.theme.texts[label.role].size * self._unit(self.drawn)
        wide, high = self._size(label.text, label.role, size)
        half = {"middle": 0.0, "start": wide / 2, "end": -wide / 2}[label.anchor]
        x, y = label.at.x + half * math.cos(label.angle), label.at.y + half * math.sin(label.angle)
        place = TextPlace(x, y, wide, high, label.angle, 0.0)
        return _Standing(index, label.text, label.role, size, place, 0.0, label.anchor)

    def _with_standing(self, drawn: Box) -> Box:
        """A box of lines, and the texts that have a size in mm: they grow as lines do, and want no room beside them."""
        boxes = [drawn]
        for index, item in enumerate(self.drawing.items):
            if isinstance(item, Label) and item.size > 0:
                place = self._fixed(index, item).place
                boxes.append(text_box(place.x, place.y, place.wide, place.high, place.angle))
        lows, highs = zip(*((box[:2], box[2:]) for box in boxes), strict=True)
        (x0, y0), (x1, y1) = map(min, zip(*lows, strict=True)), map(max, zip(*highs, strict=True))
        return (x0, y0, x1, y1)

    def _set(self, item: Label | Dimension) -> str:
        """A text as it is set: round a window, where its room is narrow, a long name in two lines."""
        narrow = self.drawing.window is not None and isinstance(item, Label) and isinstance(item.of, Area)
        return in_two(item.text) if narrow else item.text

    def _size(self, text: str, role: str, em: float) -> tuple[float, float]:
        if role == "order":  # on a square plate
            return max(em * 1.3, text_width(text, em, True) + em * 0.45), em * 1.3
        bold = self.theme.texts[role].bold
        rows = text.split("\n")
        return max(text_width(row, em, bold) for row in rows) + 2 * END * em, em * LINE_HEIGHT * len(rows)

    def _waiting(self, index: int, item: Label | Dimension, unit: float, numbers: bool) -> WaitingText:
        em = self.theme.texts[_role(item)].size * unit
        sign = (em * 1.3, em * 1.3)
        numbered = index in self.list.numbered
        may = numbers and self.grows and not numbered and _tells(item)

        def places() -> Iterator[TextPlace]:
            if numbered:
                return as_number(self._where(index, item, sign, em, unit))
            found = self._where(index, item, self._size(self._set(item), _role(item), em), em, unit)
            return chain(found, as_number(self._where(index, item, sign, em, unit), 3.0)) if may else found

        return WaitingText(places, em, index, NUMBERED if may else math.inf)

    def _where(
        self, index: int, item: Label | Dimension, size: tuple[float, float], em: float, unit: float
    ) -> Iterator[TextPlace]:
        if isinstance(item, Dimension):
            curves = dimension_curves(item)
            if not curves:
                return round_point((item.end.x, item.end.y), size, em)
            way = WalkedLine(self._points(index, curves))
            heads = _HEAD * unit if way.length > HEADS * unit else 0.0
            return at_dimension(way, size, em, heads, _NEAR * unit)
        of = item.of
        if isinstance(of, Point):
            spot = of.x, of.y
            near = round_point(spot, size, em, _toward(of, item.at))
            return near_first(near, ASIDE, partial(in_margin, spot, size, em, self.drawn))
        if isinstance(of, Area):
            outline = self._points(index, of.curves)
            spot = (of.at.x, of.at.y) if of.at is not None else centre(outline)
            window = self.drawing.window
            if window is not None:
                sides = [((p.x, p.y), share) for p, share in of.sides] or [(spot, 0.0)] * 4
                return round_window(sides, size, em, window, self.drawn)
            aside = partial(in_margin, spot, size, em, self.drawn)
            return near_first(in_area(outline, size, em), LED, partial(led, spot, size, em), aside)
        if of:
            way = WalkedLine(self._points(index, of))
            middle = way.at(way.length / 2)
            out = _toward(Point(*middle), item.at)
            along = along_line(way, size, em, out)
            if item.role == "order":  # a number stands upright
                along = (place._replace(angle=0.0) for place in along)
            return near_first(along, ASIDE, partial(in_margin, middle, size, em, self.drawn))
        return where_it_was_put(item.at.x, item.at.y, item.angle, size, em)

    # ---- what is in the way -----------------------------------------------------------------------------

    def _in_the_way(self, unit: float) -> tuple[DrawnLines, SeenCloth]:
        """Lines and cloth, which stay the same in mm at every scale but for their dots."""
        if self.around is None:
            em = self.theme.texts["small"].size * unit
            self.around = lines_in_the_way(self.drawing, unit, em, self._runs), SeenCloth(self.drawing, em / 3)
        return self.around

    def _points(self, index: int, curves: Sequence[Curve]) -> tuple[Spot, ...]:
        """The line through `curves`, flat enough for text, worked out once."""
        return tuple(chain.from_iterable(self._runs(index, curves)))

    def _runs(self, index: int, curves: Sequence[Curve]) -> list[tuple[Spot, ...]]:
        found = self.paths.get(index)
        if found is None:
            found = self.paths[index] = flattened(curves, self._unit(self.drawn) * 0.8)
        return found

    # ---- numbers and their list -------------------------------------------------------------------------

    def _numbers(self, placed: Sequence[_Standing]) -> NumberList:
        """The list of what fits nowhere as it is."""
        told = {one.item: self._plain(one.item) for one in placed if one.place.form == 1}
        labels = [item.text for item in self.drawing.items if isinstance(item, Label)]
        return replace(self.list, numbered=counted(told, labels), said=told)

    def _plain(self, index: int) -> str:
        item = self.drawing.items[index]
        assert isinstance(item, Label | Dimension)
        return item.text.replace("\n", " ")

    def _row(self) -> float:
        """px that a row of the list may be wide."""
        return 0.0 if self.beside else self.wide - 2 * MARGIN

    def _written(self, placed: Sequence[_Standing], unit: float, frame: Box | None = None) -> tuple[WrittenText, ...]:
        out: list[WrittenText] = []
        for one in placed:
            place, em = one.place, one.em
            if one.item in self.list.numbered:
                out.append(
                    WrittenText(
                        self.list.numbered[one.item],
                        one.role,
                        place.x,
                        place.y,
                        place.wide,
                        place.high,
                        0.0,
                        em * _RING,
                        one.item,
                        leader=place.leader,
                        ringed=True,
                    )
                )
                continue
            rows = one.text.split("\n")
            high = place.high / len(rows)
            for n, row in enumerate(rows):
                down = (len(rows) - 1) / 2 - n
                x, y = place.x - math.sin(place.angle) * down * high, place.y + math.cos(place.angle) * down * high
                leader = place.leader if n == 0 else ()
                out.append(
                    WrittenText(row, one.role, x, y, place.wide, high, place.angle, em, one.item, one.anchor, leader)
                )
        out.sort(key=lambda text: text.item)
        return (*out, *self._listed(unit, frame)) if frame and self.list else tuple(out)

    def _listed(self, unit: float, frame: Box) -> Iterator[WrittenText]:
        size = self.list.size
        em, rows = size * unit, self.list.rows(self._row())
        left = sum(self.list.lines_in(row) for row in rows)
        low, begins = frame[1], frame[0] + MARGIN * unit
        if self.beside:  # as high as the lines begin
            low = frame[3] - (self.list.height(self._row()) + 2 * MARGIN) * unit
            begins = frame[2] - (self.list.width - MARGIN) * unit
        for row in rows:
            y = low + (MARGIN * 0.6 + (left - 1) * LINE * size + 0.7 * size) * unit
            left -= self.list.lines_in(row)
            for index, at in row:
                x = begins + (at + size * 0.7) * unit
                yield WrittenText(
                    self.list.numbered[index],
                    "small",
                    x,
                    y,
                    em * 1.3,
                    em * 1.3,
                    0.0,
                    em * _RING,
                    index,
                    ringed=True,
                    listed=True,
                )
                for n, text in enumerate(self.list.entry(index)):
                    wide = text_width(text, em) + 2 * END * em
                    yield WrittenText(
                        text, "small", x + 1.2 * em + wide / 2, y - n * LINE * em, wide, em * LINE_HEIGHT, 0.0, em,
                        index, "start", listed=True,
                    )  # fmt: skip


def _not_flat(box: Box) -> Box:
    """A box of some width and height: the scale of a single line would else have no end."""
    x0, y0, x1, y1 = box
    least = max(x1 - x0, y1 - y0, 1.0) / 20
    dx, dy = max(least - (x1 - x0), 0.0) / 2, max(least - (y1 - y0), 0.0) / 2
    return (x0 - dx, y0 - dy, x1 + dx, y1 + dy)


def _role(item: Label | Dimension) -> LabelRole:
    return "measure" if isinstance(item, Dimension) else item.role


def _stands(item: Label | Dimension) -> bool:
    """Whether a text stays where the picture put it."""
    return isinstance(item, Label) and (item.size > 0 or item.role in ("title", "number") or _led_from(item))


def _led_from(label: Label) -> bool:
    """Whether a text begins or ends at a sign, whatever the scale of the picture."""
    return label.anchor != "middle" and not label.size and label.of is None


def _tells(item: Label | Dimension) -> bool:
    """Whether a text is long enough to be worth a number and a line of the list; small print is not."""
    return len(item.text) > 3 and (isinstance(item, Dimension) or (item.of is not None and item.role != "small"))


def _toward(start: Point, end: Point) -> Spot | None:
    dx, dy = end.x - start.x, end.y - start.y
    size = math.hypot(dx, dy)
    return (dx / size, dy / size) if size > 1e-6 else None


def grown(box: Box, by: float) -> Box:
    """`box` with so much more at every side."""
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)
