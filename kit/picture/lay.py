"""The lay plan as a picture: the cloth with its selvedges, fold, width and length, and every piece on it.

Cloth lies upright, its selvedges at the sides. Folded it shows its wrong side, opened out its right side; the paper
pieces lie on it, each with number, title and grainline. Paper that is turned over has a dashed outline and says so, and
so has the half of a piece whose paper is the other half. A title that has no room in its piece stands below, beside its
number. Where cloth is opened out beyond a folded part, that part is drawn below, on its own.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Any, Literal, cast

import shapely

from kit.cloth.lay import LaidPiece, Lay
from kit.cloth.parts import moved, polygon
from kit.geometry import Line, Motion, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension, Drawing, Fill, FillRole, Item, Label, LabelRole, Stroke, StrokeRole
from kit.picture.lettering import text_width
from kit.picture.place import rectangle
from kit.picture.text_room import broken, lie_of, room_for, wrapped
from kit.piece.strips import SELVEDGE
from kit.rulers import SIXTEENTH, reading, ruling
from kit.units import System, both, show
from kit.wording.lists import strung

ROOM = (560.0, 820.0)
"""CSS pixels that a picture may take where nothing else is said: the text of a printed page."""
_LEAST_PX = 1.8  # mm: however small the cloth, a pixel is no less
_TEXT, _SMALL = 11.0, 9.4
_LEADING = 1.2
_LEFT, _RIGHT, _END = 40.0, 48.0, 24.0  # px beside the cloth and beyond its end
_SHORT = 110.0  # px of cloth beside which a length can be written
_STUB = 0.4  # of a grainline, where the whole line leaves no room for the title
_FILLS: dict[str, tuple[FillRole, FillRole]] = {
    # folded with the right side inside, opened out
    "main": ("wrong_side", "right_side"),
    "lining": ("lining", "lining"),
    "interfacing": ("interfacing", "interfacing"),
}


def lay_drawing(
    lay: Lay,
    pattern: Pattern,
    system: System | None = None,
    room: tuple[float, float] = ROOM,
    scale: float = 0.0,
    least: float = _SMALL,
) -> Drawing:
    """The picture of `lay`, in mm of cloth. Lengths are written in both systems, `system` (the lesson's own when None)
    first. `room` is the width and height in CSS pixels that the picture may take: its letters are sized for that, and
    it fills the width. `scale` is the mm of cloth that a pixel stands for, where several pictures share one
    (`shared_scale`); by itself a picture is drawn as large as its room allows. `least` is the smaller of
    its two sizes of text, in CSS px."""
    chosen = system or pattern.lesson.units
    plan = _Plan(lay, pattern, chosen, room, scale, least)
    drawing = plan.drawing()
    while not scale and plan.height > room[1] * plan.px:  # more lines of text than were reckoned with
        plan = _Plan(lay, pattern, chosen, room, plan.px * 1.05, least)
        drawing = plan.drawing()
    return drawing


def shared_scale(lays: Sequence[Lay], room: tuple[float, float]) -> float:
    """The mm of cloth that a pixel of `room` stands for in all the pictures of these lays: as large as the widest of
    them can be across the room and the longest in its height; smaller by up to a third where then the two longest fit
    into it together."""
    sizes = [_sizes(lay) for lay in lays]
    wide = max(across for across, _, _ in sizes) / (room[0] - _LEFT - _RIGHT)
    long = max(along / max(room[1] - _texts(parts), room[1] / 3) for _, along, parts in sizes)
    alone = max(wide, long, _LEAST_PX)
    if len(sizes) > 1:
        (_, one, parts), (_, two, others) = sorted(sizes, key=lambda size: -size[1])[:2]
        together = (one + two) / max(room[1] - _texts(parts) - _texts(others) - 20.0, room[1] / 3)
        if alone < together < alone * 1.5:
            return together
    return alone


def _parts(lay: Lay) -> list[tuple[str, float, float, bool]]:
    """(what it is, where it begins and ends along the cloth, whether it is folded) of each part that is drawn."""
    found: list[tuple[str, float, float, bool]] = []
    if lay.fold != "flat":
        found.append(("folded", 0.0, lay.folded, True))
    if lay.fold != "lengthwise":
        found.append(("opened" if lay.fold == "part" else "flat", lay.folded, lay.length, False))
    return found


def _sizes(lay: Lay) -> tuple[float, float, int]:
    """How wide and long its cloth is drawn, in mm, in how many parts."""
    parts = _parts(lay)
    across = max(lay.width / 2 if folded else lay.width for *_, folded in parts)
    return across, sum(end - begin for _, begin, end, _ in parts), len(parts)


def _texts(parts: int) -> float:
    """The px that headings and notes take above and below the cloth."""
    return 52.0 + (26.0 + _END) * parts


class _Plan:
    """One picture being put together, from the top down. A part of the cloth is drawn by `go`, from where it lies
    with its beginning at y = 0 and, folded, its fold at x = 0."""

    def __init__(
        self, lay: Lay, pattern: Pattern, system: System, room: tuple[float, float], px: float, small: float
    ) -> None:
        self.lay = lay
        self.small = small
        self.system = system
        self.squares = {strip.name for strip in pattern.strips if strip.square}
        self.parts = _parts(lay)
        across, along, count = _sizes(lay)
        least = max(across / (room[0] - _LEFT - _RIGHT), along / max(room[1] - _texts(count), room[1] / 3))
        self.px = px or max(least, _LEAST_PX)
        self.wide = room[0] * self.px
        self.top = 0.0
        self.go = Motion.identity()
        self.items: list[Item] = []
        self.unnamed: dict[int, str] = {}

    @property
    def height(self) -> float:
        return 4.0 * self.px - self.top

    def drawing(self) -> Drawing:
        lay = self.lay
        heading = say(
            f"lay.heading_{lay.cloth}",
            width=both(lay.width, self.system, "finished"),
            length=_up(lay.length, self.system),
        )
        self._lines([heading], "title", _TEXT)
        for key, begin, end, folded in self.parts:
            self.top -= 6.0 * self.px
            stuff = "interfacing" if lay.cloth == "interfacing" else "cloth"
            long = _up(end - begin, self.system)
            self._lines([say(f"lay.{key}_{stuff}", length=long)], "small", _TEXT)
            self._part(begin, end, folded)
        if self.unnamed:
            self.top -= 4.0 * self.px
            named = [
                say("lay.piece_title", number=str(key), title=title) for key, title in sorted(self.unnamed.items())
            ]
            self._lines([strung(named)], "small", _TEXT)
        if any(each.turned_over or each.axis for each in lay.placed):
            self.top -= 4.0 * self.px
            self._lines([say("lay.dashed")], "small", _TEXT)
        self.top -= 4.0 * self.px
        bounds = (0.0, self.top, self.wide, 4.0 * self.px)
        return Drawing(tuple(self.items), alt=self._alt(heading), title=say("lay.title"), bounds=bounds)

    def _alt(self, heading: str) -> str:
        said = [say("lay.alt", heading=heading)]
        said.append(say(f"lay.alt_{self.lay.fold}"))
        for number, title in dict.fromkeys((each.number, each.title) for each in self.lay.placed):
            those = [each for each in self.lay.placed if (each.number, each.title) == (number, title)]
            count = sum(each.gives for each in those)
            key = "lay.alt_fold" if those[0].on_fold else "lay.alt_piece"
            said.append(say(key, number=number, title=title, count=count))
        over = len([each for each in self.lay.placed if each.turned_over])
        if over:
            said.append(say("lay.alt_over", count=over))
        half = len({each.number for each in self.lay.placed if each.axis})
        if half:
            said.append(say("lay.alt_half", count=half))
        return " ".join(said)

    def _lines(self, texts: Iterable[str], role: LabelRole, size: float) -> None:
        """Lines of text across the picture, wrapped where they are too long."""
        em = size * self.px
        room = self.wide - 8.0 * self.px
        for text in texts:
            for line in wrapped(text, room, em, role == "title"):
                self.top -= em * _LEADING
                at = Point(self.wide / 2, self.top + em * 0.45)
                self.items.append(Label(line, at, role, 0.0, em))

    # ---- the cloth --------------------------------------------------------------------------------------------

    def _part(self, begin: float, end: float, folded: bool) -> None:
        px, lay = self.px, self.lay
        across, along = lay.width / 2 if folded else lay.width, end - begin
        self.top -= _END * px
        left = (self.wide - across - (_LEFT + _RIGHT) * px) / 2 + _LEFT * px
        self.go = Motion(1.0, 0.0, False, left, self.top - along)
        fill = _FILLS[lay.cloth][0 if folded else 1]
        self.items.append(Fill(moved(rectangle(0.0, 0.0, across, along), self.go), fill, name="cloth"))
        for y in (0.0, along):
            self._line(Point(0.0, y), Point(across, y), "edge")
        if folded:
            self._line(Point(0.0, 0.0), Point(0.0, along), "fold", "fold")
        else:
            self._line(Point(0.0, 0.0), Point(0.0, along), "edge", "selvedge")
            self._line(Point(SELVEDGE, 0.0), Point(SELVEDGE, along), "kept")
        self._line(Point(across, 0.0), Point(across, along), "edge", "selvedge")
        self._line(Point(across - SELVEDGE, 0.0), Point(across - SELVEDGE, along), "kept")
        self._beside("lay.fold" if folded else "lay.selvedge", Point(-9.0 * px, along / 2), along)
        self._beside("lay.selvedges" if folded else "lay.selvedge", Point(across + 9.0 * px, along / 2), along)
        self._measures(across, along, folded)
        slide = Motion.translation(Vector(0.0, -begin)).then(self.go)
        for each in lay.placed:
            if each.opened != folded:
                self._piece(each, slide)
        self.top -= along

    def _line(self, a: Point, b: Point, role: StrokeRole, name: str = "") -> None:
        self.items.append(Stroke((Line(self.go(a), self.go(b)),), role, name=name))

    def _beside(self, key: str, at: Point, room: float) -> None:
        """A word along the cloth, where it is long enough for it."""
        if text_width(say(key), self.small * self.px) < room:
            self.items.append(Label(say(key), self.go(at), "small", math.pi / 2, self.small * self.px))

    def _measures(self, across: float, along: float, folded: bool) -> None:
        px = self.px
        wide = both(self.lay.width, self.system, "finished")
        if folded:
            wide = say("lay.half_width", half=both(across, self.system, "finished"))
            if text_width(wide, _TEXT * px) > across:
                wide = say("lay.half_width", half=show(across, self.system, "finished"))
        self._measure(Point(0.0, along), Point(across, along), wide, 12.0 * px)
        if along < _SHORT * px:
            return  # its length stands in the line above
        self._measure(Point(across, along), Point(across, 0.0), _up(along, self.system), 30.0 * px)
        x, middle = -27.0 * px, along / 2
        reach = min(along * 0.4, 95.0 * px)
        said = "lay.grain_nap" if self.lay.nap else "lay.grain"
        half = text_width(say(said), self.small * px) / 2 + 3.0 * px
        low, high = (self.go(Point(x, middle + way * reach)) for way in (-1.0, 1.0))
        name = "grain of the cloth"
        if half < reach - 12.0 * px:  # parted by its name
            self._beside(said, Point(x, middle), along)
            below, above = (self.go(Point(x, middle + way * half)) for way in (-1.0, 1.0))
            tail: Literal["", "end"] = "" if self.lay.nap else "end"
            self.items.append(Stroke((Line(below, low),), "grain", arrow=tail, name=name))
            self.items.append(Stroke((Line(above, high),), "grain", arrow="end", name=name))
        else:
            arrow: Literal["end", "both"] = "end" if self.lay.nap else "both"
            self.items.append(Stroke((Line(low, high),), "grain", arrow=arrow, name=name))

    def _measure(self, a: Point, b: Point, text: str, offset: float) -> None:
        self.items.append(Dimension(self.go(a), self.go(b), text, offset))

    # ---- a piece ----------------------------------------------------------------------------------------------

    def _piece(self, each: LaidPiece, slide: Motion) -> None:
        curves = moved(each.outline, slide)
        name = f"{each.piece} {each.copy}"
        self.items.append(Fill(curves, "paper", name=name))
        self._outline(each, curves, slide, name)
        if each.kind == "strip" and each.gives > each.layers and each.piece not in self.squares:
            self._between(curves, each.gives)
        if each.axis:
            axis = Line(slide(each.axis[0]), slide(each.axis[1]))
            self.items.append(Stroke((axis,), "fold", name=f"{name} fold"))
        self._words(each, polygon(curves), slide)

    def _outline(self, each: LaidPiece, curves: Sequence[Any], slide: Motion, name: str) -> None:
        """Solid where the paper lies printed side up, dashed where it is turned over: all of it, or the half beyond the
        fold line of a piece whose paper is a half."""
        if each.turned_over or not each.axis:
            role: StrokeRole = "placement" if each.turned_over else "cut"
            self.items.append(Stroke(tuple(curves), role, closed=True, name=name))
            return
        foot, top = (slide(point) for point in each.axis)
        held = slide(each.grain[0]) if each.grain else foot + Vector(-1.0, 0.0)
        paper = (top - foot).cross(held - foot) or 1.0
        parted = [part for c in curves for part in _parted(c, foot, top)]
        for own, drawn in ((True, "cut"), (False, "placement")):
            run = [c for c in parted if ((top - foot).cross(c.point(0.5) - foot) * paper > 0) == own]
            for part in _runs(run):
                self.items.append(Stroke(part, cast("StrokeRole", drawn), name=name))

    def _grain(self, each: LaidPiece, area: Any, slide: Motion) -> list[Point]:
        """The grainline as it lies: as printed, or for what has none along the cloth, where most of its middle is."""
        if each.grain:
            return [slide(point) for point in each.grain]
        x0, y0, x1, y1 = area.bounds
        x = (x0 + x1) / 2 if y1 - y0 > x1 - x0 else x0 + min((x1 - x0) * 0.2, 14.0 * self.px)
        line = shapely.LineString([(x, y0), (x, y1)]).intersection(area)
        if line.is_empty:
            return []
        a, b = sorted(line.bounds[1::2])
        inset = (b - a) * 0.14
        return [Point(x, a + inset), Point(x, b - inset)]

    def _between(self, curves: Sequence[Any], count: int) -> None:
        """The cuts between strips that lie side by side: from one end of the block to the other."""
        one, two = curves[1], curves[3]
        for at in range(1, count):
            cut = Line(one.point(at / count), two.point(1 - at / count))
            self.items.append(Stroke((cut,), "cut"))

    def _words(self, each: LaidPiece, area: Any, slide: Motion) -> None:
        """Number and title, and the grainline, shortened where it would leave no room for the title."""
        number = str(each.number) if each.number else ""
        title = say("lay.piece_title", number=number, title=each.title) if number else each.title
        note = [say("lay.turned_over")] if each.turned_over else []
        if each.kind == "strip" and each.gives > each.layers:
            note.append(say("lay.strips", count=each.gives))
        # The title is tried level, upright and along the piece, each with the whole grainline first and then with a
        # stub of it. Where neither leaves room, only the number stands in the piece, and the line below the lay has the
        # title.
        angles = (0.0, math.pi / 2, lie_of(area))
        fixed = [slide(point) for point in each.axis or ()]
        whole = self._grain(each, area, slide)
        grain = whole
        for share in (1.0, _STUB):
            if share < 1.0 and whole:
                grain = [whole[0], whole[0] + (whole[1] - whole[0]) * share]
            clear = self._clear(area, (fixed, grain))
            if self._told(title, note, clear, angles) or (note and self._told(title, [], clear, angles)):
                break
        else:
            if number:
                self.unnamed[each.number] = each.title
            clear = self._clear(area, (fixed, grain))
            if not (note and self._set([number or title, *note], 1, self.small * self.px, clear, angles)):
                over = self._number(number or title, clear.buffer(1.2 * self.px), area, angles)
                grain = _beside(grain, over, 8.0 * self.px) if grain and over is not None else grain
        if grain:
            arrow: Literal["end", "both"] = "end" if self.lay.nap else "both"
            self.items.append(Stroke((Line(grain[0], grain[1]),), "grain", arrow=arrow, name="grainline"))

    def _clear(self, area: Any, lines: Iterable[Sequence[Point]]) -> Any:
        """What of `area` text may cover: away from its edge and from `lines`."""
        clear = area.buffer(-2.0 * self.px)
        for ends in lines:
            if ends:
                line = shapely.LineString([(point.x, point.y) for point in ends])
                clear = clear.difference(line.buffer(3.0 * self.px, quad_segs=2))
        return clear

    def _told(self, title: str, note: Sequence[str], clear: Any, angles: Sequence[float]) -> bool:
        for size in (_TEXT, self.small):
            em = size * self.px
            for count in (1, 2, 3):
                head = broken(title, count, em)
                if self._set([*head, *note], len(head), em, clear, angles):
                    return True
        return False

    def _number(self, number: str, clear: Any, area: Any, angles: Sequence[float]) -> Any:
        """Write the number where it has room. In a piece smaller than its number it stands in the middle all the same,
        and the box it takes there is given back."""
        for size in (_TEXT, self.small):
            if self._set([number], 1, size * self.px, clear, angles):
                return None
        spot, em = area.representative_point(), self.small * self.px
        self.items.append(Label(number, Point(spot.x, spot.y), "name", 0.0, em))
        wide, high = text_width(number, em) + em * 0.2, em * _LEADING
        return shapely.box(spot.x - wide / 2, spot.y - high / 2, spot.x + wide / 2, spot.y + high / 2)

    def _set(self, lines: Sequence[str], bold: int, em: float, clear: Any, angles: Sequence[float]) -> bool:
        """Write `lines` (so many of them bold) where they are furthest from every line; False when there is no room."""
        wide = max(text_width(text, em, at < bold) for at, text in enumerate(lines)) + em * 0.15
        high = len(lines) * em * _LEADING
        for angle in angles:
            spot = room_for(clear, wide, high, angle)
            if spot is None:
                continue
            down = Vector(math.sin(angle), -math.cos(angle))
            offset = -high / 2 + em * _LEADING / 2
            for at, text in enumerate(lines):
                role: LabelRole = "title" if at < bold else "small"
                self.items.append(Label(text, spot + down * offset, role, angle, em))
                offset += em * _LEADING
            return True
        return False


def _beside(ends: Sequence[Point], box: Any, least: float) -> list[Point]:
    """The longest part of a straight line that lies beside a box; nothing when that is shorter than `least`."""
    line = shapely.LineString([(point.x, point.y) for point in ends]).difference(box)
    parts = [part for part in getattr(line, "geoms", [line]) if part.length >= least]
    longest = max(parts, key=lambda part: part.length, default=None)
    return [] if longest is None else [Point(*spot) for spot in longest.coords]


def _parted(curve: Any, foot: Point, top: Point) -> tuple[Any, ...]:
    """The curve, in two where it passes the line through two points."""

    def side(t: float) -> float:
        return float((top - foot).unit().cross(curve.point(t) - foot))

    low, high = 0.0, 1.0
    if side(low) * side(high) >= 0.0 or min(abs(side(low)), abs(side(high))) < 0.01:
        return (curve,)
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if side(middle) * side(0.0) > 0 else (low, middle)
    return tuple(curve.split(low))


def _runs(curves: Sequence[Any]) -> list[tuple[Any, ...]]:
    """Curves in the order they go round, cut where one does not begin where the one before it ends."""
    found: list[list[Any]] = []
    for curve in curves:
        if found and found[-1][-1].end.distance(curve.start) < 0.05:
            found[-1].append(curve)
        else:
            found.append([curve])
    if len(found) > 1 and found[-1][-1].end.distance(found[0][0].start) < 0.05:
        found[0] = found.pop() + found[0]
    return [tuple(run) for run in found]


def _up(length: float, system: System) -> str:
    """A length of cloth in both systems, rounded up as far as it is shown: less would not do in either."""
    step = 5.0 if (ruling().own or system) == "cm" else 25.4 / 4
    count = math.ceil(length / step - 1e-6)
    while not ruling().alone:
        read = reading(count * step, system)
        if min(float(read["cm"]), read["inch"] * SIXTEENTH) > length - 1.0:
            break
        count += 1
    return both(count * step, system)
