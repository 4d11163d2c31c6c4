"""The SVG pen: a drawing as one compact `<svg>` with real curves.

Coordinates in the file are millimetres (x as drawn, y turned over), so a pointer position or a path reads back
as the draft itself; widths, dashes and letter heights are scaled from the theme's CSS pixels to the picture's
width. Only presentation attributes are used, no style sheet, so that browsers and WeasyPrint agree; text stands
on a small piece of paper instead of a halo because WeasyPrint paints outlines over letters; cloth is a flat
tint with its pattern painted over it because tinted pattern tiles show seams in PDF viewers.
"""

from __future__ import annotations

import html
import math
import re
from collections.abc import Iterable, Sequence
from hashlib import blake2b

from kit.geometry import Arc, Curve, Line, Point
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Label, Stroke
from kit.picture.lettering import LINE_HEIGHT, Box, Ink, Turned, place, text_box, text_width, upright
from kit.picture.svg_path import number as _n
from kit.picture.svg_path import path_data, shifted
from kit.picture.theme import THEME, Cloth, Theme
from kit.units import set_fractions

__all__ = ["bounds_of", "escape", "path_data", "shifted", "svg"]

_CONTROL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ufffe\uffff]|[\ud800-\udfff]")
_CSS_PER_MM = 96 / 25.4
_MARGIN = 10.0
_PAD = 0.3  # paper beside a text, in ems
_NEW = 2.0  # text over what a step draws is so much worse than over what stands
_KEEP_OFF = frozenset(("new", "kept", "cut", "fold", "edge", "row", "old_row"))


def svg(drawing: Drawing, width: float | None = 640.0, height: float | None = None, theme: Theme = THEME) -> str:
    """`drawing` as an SVG element, ready for HTML or a file.

    `width` and `height` are CSS pixels: one of them scales the picture, both make it fit inside; `width=None`
    without a height draws at real size (width and height in mm). The element carries role="img", a title and
    the drawing's alternative text. Text is escaped.
    """
    bounds, unit = scale(drawing, width, height, theme)
    return Pen(drawing, bounds, unit, theme).element(real=width is None and height is None)


def bounds_of(drawing: Drawing) -> Box:
    """What the drawing covers, in mm: its own bounds, or those of its items without their text."""
    if drawing.bounds is not None:
        return drawing.bounds
    boxes: list[Box] = []
    for item in drawing.items:
        if isinstance(item, Stroke | Fill):
            boxes.extend(curve.bounds() for curve in item.curves)
        elif isinstance(item, Dimension):
            boxes.extend(curve.bounds() for curve in item.along)
            shift = _shift(item.start, item.end, item.offset)
            for p in (item.start, item.end):
                boxes.append((p.x, p.y, p.x, p.y))
                boxes.append((p.x + shift[0], p.y + shift[1]) * 2)
        else:
            boxes.append((item.at.x, item.at.y, item.at.x, item.at.y))
    if not boxes:
        return (0.0, 0.0, 1.0, 1.0)
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def escape(text: str) -> str:
    """`text` for XML: markup escaped, characters XML forbids left out."""
    return html.escape(_CONTROL.sub("", text), quote=True)


def _shift(start: Point, end: Point, offset: float) -> tuple[float, float]:
    dx, dy = end.x - start.x, end.y - start.y
    size = math.hypot(dx, dy)
    return (-dy / size * offset, dx / size * offset) if size > 1e-9 else (0.0, 0.0)


def scale(drawing: Drawing, width: float | None, height: float | None, theme: Theme) -> tuple[Box, float]:
    """The bounds with their margin, and mm per CSS pixel."""
    x0, y0, x1, y1 = bounds_of(drawing)
    if width is None and height is None:
        if drawing.bounds is None:
            room = _MARGIN / _CSS_PER_MM
            x0, y0, x1, y1 = x0 - room, y0 - room, x1 + room, y1 + room
        return (x0, y0, x1, y1), 1 / _CSS_PER_MM

    def mm_per_px(box: Box) -> float:
        across = (box[2] - box[0]) / width if width else 0.0
        return max(across, (box[3] - box[1]) / height if height else 0.0, 1e-6)

    if drawing.bounds is not None:
        return drawing.bounds, mm_per_px(drawing.bounds)
    # Text has one size on the page, so how much room it takes in mm depends on the scale, and the scale on how far text
    # reaches. One round is enough: a scale from the lines alone, the boxes of all text at that scale, then the scale of
    # both. The second is a little smaller, and so the text a little larger in mm than its box: the margin takes it up.
    inner = (width or height or 1.0) - 2 * _MARGIN
    grow = (width or height or 1.0) / max(inner, 1.0)
    unit = mm_per_px((x0, y0, x1, y1)) * grow
    boxes = [(x0, y0, x1, y1)]
    for item in drawing.items:
        if isinstance(item, Label):
            boxes.append(_label_box(item, unit, theme))
        elif isinstance(item, Dimension):
            shift = _shift(item.start, item.end, item.offset)
            size = theme.texts["measure"].size * unit
            middle = item.start.mid(item.end)
            across = item.end - item.start
            angle = upright(math.atan2(across.y, across.x))
            wide = text_width(item.text, size)
            boxes.append(text_box(middle.x + shift[0], middle.y + shift[1], wide, size * 2, angle))
    room = _MARGIN * unit
    x0 = min(b[0] for b in boxes) - room
    y0 = min(b[1] for b in boxes) - room
    x1 = max(b[2] for b in boxes) + room
    y1 = max(b[3] for b in boxes) + room
    return (x0, y0, x1, y1), mm_per_px((x0, y0, x1, y1))


def _label_box(label: Label, unit: float, theme: Theme) -> Box:
    text = theme.texts[label.role]
    size = label.size or text.size * unit
    wide = text_width(label.text, size, text.bold)
    x, y = _centre(label, wide)
    return text_box(x, y, wide, size * LINE_HEIGHT, label.angle)


def _centre(label: Label, wide: float) -> tuple[float, float]:
    if label.anchor == "middle":
        return label.at.x, label.at.y
    half = wide / 2 if label.anchor == "start" else -wide / 2
    return label.at.x + half * math.cos(label.angle), label.at.y + half * math.sin(label.angle)


class Pen:
    """One drawing being written. Text is written last, so that no line crosses it."""

    def __init__(self, drawing: Drawing, bounds: Box, unit: float, theme: Theme) -> None:
        self.drawing = drawing
        self.bounds = bounds
        self.unit = unit
        self.theme = theme
        self.body: list[str] = []
        self.text: list[str] = []
        self.patterns: dict[str, Cloth] = {}
        self.taken: list[Turned] = []
        self.group = ""
        self.ink = Ink(9 * unit)
        # A fill and its outline are the same curves.
        self.paths: dict[tuple[int, bool], tuple[Sequence[Curve], str]] = {}

    def element(self, real: bool) -> str:
        items = self.drawing.items
        for item in items:
            if isinstance(item, Stroke):
                self._stroke(item)
            elif isinstance(item, Fill):
                self._fill(item)
            elif isinstance(item, Dot):
                self._dot(item)
        self._close()
        # What cannot move is written first and takes its room: names at their place, then dimensions. Names that may
        # move come last and keep off all ink and every text so far.
        labels = [item for item in items if isinstance(item, Label)]
        if any(self._movable(label) for label in labels):
            for item in items:
                if isinstance(item, Stroke) and item.role in _KEEP_OFF:
                    weight = _NEW if item.role == "new" else 1.0
                    for curve in item.curves:
                        self._mark_ink(curve, weight)
        for label in labels:
            if not self._movable(label):
                self._label(label)
        for item in items:
            if isinstance(item, Dimension):
                self._dimension(item)
        self._close()
        for label in labels:
            if self._movable(label):
                self._label(label)
        return self._wrap(real)

    def _mark_ink(self, curve: Curve, weight: float) -> None:
        steps = int(curve.start.distance(curve.end) / self.ink.cell * 1.3) + 1
        if isinstance(curve, Line):
            a, b = curve.start, curve.end
            dx, dy = (b.x - a.x) / steps, (b.y - a.y) / steps
            self.ink.line([(a.x + dx * i, a.y + dy * i) for i in range(steps + 1)], weight)
        else:
            points = [curve.point(i / steps) for i in range(steps + 1)]
            self.ink.line([(p.x, p.y) for p in points], weight)

    def _wrap(self, real: bool) -> str:
        x0, y0, x1, y1 = self.bounds
        wide, high = x1 - x0, y1 - y0
        title, alt = escape(self.drawing.title), escape(self.drawing.alt or self.drawing.title)
        content = "".join(self.body) + "".join(self.text)
        mark = blake2b((content + title).encode(), digest_size=5).hexdigest()
        if real:
            size = f'width="{_n(wide)}mm" height="{_n(high)}mm"'
        else:
            size = f'width="{_n(wide / self.unit)}" height="{_n(high / self.unit)}"'
        head = (
            f'<svg xmlns="http://www.w3.org/2000/svg" {size} viewBox="{_n(x0)} {_n(-y1)} {_n(wide)} {_n(high)}" '
            f'role="img" aria-label="{alt}"><title>{title or alt}</title>'
        )
        tiles = "".join(_pattern(f"p{mark}-{role}", cloth, self.unit) for role, cloth in self.patterns.items())
        defs = f"<defs>{tiles}</defs>" if tiles else ""
        return f"{head}{defs}{self._ground()}{content.replace(chr(0), f'p{mark}')}</svg>"

    def _ground(self) -> str:
        x0, y0, x1, y1 = self.bounds
        wide, high = x1 - x0, y1 - y0
        return f'<path d="M{_n(x0)} {_n(-y1)}h{_n(wide)}v{_n(high)}h{_n(-wide)}Z" fill="{self.theme.paper}"/>'

    def _open(self, attributes: str) -> None:
        if attributes != self.group:
            self._close()
            self.body.append(f"<g {attributes}>")
            self.group = attributes

    def _close(self) -> None:
        if self.group:
            self.body.append("</g>")
            self.group = ""

    def _px(self, value: float) -> str:
        return f"{value * self.unit:.3g}"

    def _line_ink(self, role: str) -> str:
        ink = self.theme.lines[role]
        out = f'fill="none" stroke="{ink.colour}" stroke-width="{self._px(ink.width)}" stroke-linejoin="round"'
        if ink.round:
            out += ' stroke-linecap="round"'
        if ink.dash:
            out += f' stroke-dasharray="{" ".join(self._px(d) for d in ink.dash)}"'
        return out

    def _path(self, curves: Sequence[Curve], closed: bool) -> str:
        key = id(curves), closed
        found = self.paths.get(key)
        if found is None:  # the curves are kept with their text: no others can take their identity
            found = self.paths[key] = (curves, path_data(curves, closed))
        return found[1]

    def _stroke(self, item: Stroke) -> None:
        data = self._path(item.curves, item.closed)
        name = f' data-name="{escape(item.name)}"' if item.name else ""
        if item.thickness:
            ink = self.theme.lines[item.role]
            cloth = self.theme.fills[self.theme.ply.get(item.role, "paper")]
            self._close()
            outer = item.thickness + 2 * ink.width * self.unit
            for colour, width in ((ink.colour, outer), (cloth.tint, item.thickness)):
                self.body.append(
                    f'<path{name} d="{data}" fill="none" stroke="{colour}" stroke-width="{width:.3g}" '
                    'stroke-linejoin="round"/>'
                )
            return
        self._open(self._line_ink(item.role))
        self.body.append(f'<path{name} d="{data}"/>')
        if item.arrow:
            colour = self.theme.lines[item.role].colour
            size = 4.0 + 2.5 * self.theme.lines[item.role].width
            first, last = item.curves[0], item.curves[-1]
            if item.arrow in ("start", "both"):
                back = first.tangent(0.0)
                self._head(first.start, -back.x, -back.y, colour, size)
            if item.arrow in ("end", "both"):
                ahead = last.tangent(1.0)
                self._head(last.end, ahead.x, ahead.y, colour, size)

    def _head(self, tip: Point, dx: float, dy: float, colour: str, size: float) -> None:
        length, half = size * self.unit, size * self.unit * 0.36
        bx, by = tip.x - dx * length, tip.y - dy * length
        self.body.append(
            f'<path d="M{_n(tip.x)} {_n(-tip.y)}L{_n(bx - dy * half)} {_n(-(by + dx * half))} '
            f'{_n(bx + dy * half)} {_n(-(by - dx * half))}Z" fill="{colour}" stroke="none"/>'
        )

    def _fill(self, item: Fill) -> None:
        cloth = self.theme.fills[item.role]
        data = self._path(item.curves, True)
        self._close()
        name = f' data-name="{escape(item.name)}"' if item.name else ""
        self.body.append(f'<path{name} d="{data}" fill="{cloth.tint}"/>')
        if cloth.motif:
            self.patterns[item.role] = cloth
            self.body.append(f'<path d="{data}" fill="url(#\0-{item.role})"/>')

    def _dot(self, item: Dot) -> None:
        ink = self.theme.lines[item.role]
        filled = item.role == "new"
        self._open(
            f'fill="{ink.colour if filled else self.theme.paper}" stroke="{ink.colour}" stroke-width="{self._px(1.2)}"'
        )
        name = f' data-name="{escape(item.name)}"' if item.name else ""
        radius = self._px(3.0 if filled else 2.2)
        self.body.append(f'<circle{name} cx="{_n(item.at.x)}" cy="{_n(-item.at.y)}" r="{radius}"/>')

    # ---- text ---------------------------------------------------------------------------------------------

    @staticmethod
    def _movable(label: Label) -> bool:
        return label.size == 0 and label.role not in ("title", "number")

    def _label(self, label: Label) -> None:
        ink = self.theme.texts[label.role]
        size = label.size or ink.size * self.unit
        wide, high = text_width(label.text, size, ink.bold), size * LINE_HEIGHT
        x, y = _centre(label, wide)
        wide += size * _PAD
        if self._movable(label):
            x, y, angle = place(_around(x, y, label.angle, wide, high), wide, high, self.taken, self.bounds, self.ink)
        else:
            angle = label.angle
            self.taken.append((x, y, wide, high, angle))
        self._write(label.text, x, y, angle, size, label.role, wide, label.anchor)

    def _write(
        self,
        text: str,
        x: float,
        y: float,
        angle: float,
        size: float,
        role: str,
        wide: float,
        anchor: str = "middle",
    ) -> None:
        ink = self.theme.texts[role]
        weight = ' font-weight="bold"' if ink.bold else ""
        slant = ' font-style="italic"' if ink.italic else ""
        w, h = wide, size * LINE_HEIGHT
        turn = f"rotate({-math.degrees(angle):.1f})" if angle else ""
        base = f"{size * 0.35:.3g}"
        half = (wide - size * _PAD) / 2  # a font narrower than the room still begins or ends where it is meant to
        side = {"start": f'x="{_n(-half)}" ', "middle": "", "end": f'x="{_n(half)}" '}[anchor]
        self.text.append(
            f'<g transform="translate({_n(x)} {_n(-y)}){turn}">'
            f'<rect x="{_n(-w / 2)}" y="{_n(-h / 2)}" width="{_n(w)}" height="{_n(h)}" rx="{_n(size * 0.25)}" '
            f'fill="{self.theme.paper}" fill-opacity=".86"/>'
            f'<text {side}y="{base}" font-family="{escape(self.theme.font)}" font-size="{size:.4g}" '
            f'text-anchor="{anchor}" fill="{ink.colour}"{weight}{slant}>{escape(set_fractions(text))}</text></g>'
        )

    def _dimension(self, item: Dimension) -> None:
        ink = self.theme.texts["measure"]
        size = ink.size * self.unit
        wide, high = text_width(item.text, size) + size * _PAD, size * LINE_HEIGHT
        curves: tuple[Curve, ...]
        if item.along:
            curves = tuple(shifted(c, item.offset) for c in item.along) if item.offset else item.along
        elif item.start.distance(item.end) < 1e-6:
            self._label(Label(item.text, item.end, "measure"))
            return
        else:
            sx, sy = _shift(item.start, item.end, item.offset)
            curves = (Line(Point(item.start.x + sx, item.start.y + sy), Point(item.end.x + sx, item.end.y + sy)),)
        first, last = curves[0], curves[-1]
        run = sum(c.length if isinstance(c, Line | Arc) else c.start.distance(c.end) for c in curves)
        self._open(self._line_ink("measure"))
        name = f' data-name="{escape(item.name)}"' if item.name else ""
        self.body.append(f'<path{name} d="{path_data(curves)}"/>')
        if item.offset:
            ends = ((item.start, first.start), (item.end, last.end))
            legs = "".join(self._leg(p, q) for p, q in ends)
            self.body.append(f'<path d="{legs}"/>')
        back, ahead = first.tangent(0.0), last.tangent(1.0)
        # Arrow heads need about 26 px between them; where the line is shorter, slanting ticks mark its ends.
        if run > 26 * self.unit:
            colour = self.theme.lines["measure"].colour
            self._head(first.start, -back.x, -back.y, colour, 6.5)
            self._head(last.end, ahead.x, ahead.y, colour, 6.5)
        else:
            tick = 3.5 * self.unit
            for p, t in ((first.start, back), (last.end, ahead)):
                dx, dy = (t.x - t.y) * tick, (t.y + t.x) * tick
                self.body.append(f'<path d="M{_n(p.x - dx)} {_n(-(p.y - dy))}L{_n(p.x + dx)} {_n(-(p.y + dy))}"/>')
        x, y, angle = place(self._beside(curves, run, wide, high), wide, high, self.taken, self.bounds, self.ink)
        self._write(item.text, x, y, angle, size, "measure", wide)

    def _leg(self, p: Point, q: Point) -> str:
        size = p.distance(q)
        over = 4 * self.unit / size if size > 1e-9 else 0.0
        return f"M{_n(p.x)} {_n(-p.y)}L{_n(q.x + (q.x - p.x) * over)} {_n(-(q.y + (q.y - p.y) * over))}"

    def _beside(
        self, curves: Sequence[Curve], run: float, wide: float, high: float
    ) -> Iterable[tuple[float, float, float]]:
        """Places for a dimension's text: on its line where it fits, else beside it."""
        spots = []
        for share in (0.5, 0.36, 0.64, 0.22, 0.78):
            place_on = share * len(curves)
            index = min(int(place_on), len(curves) - 1)
            curve, t = curves[index], place_on - index
            p, d = curve.point(t), curve.tangent(t)
            spots.append((p, d, upright(math.atan2(d.y, d.x))))
        if run > wide * 1.25:
            for p, _, angle in spots:
                yield p.x, p.y, angle
            for p, d, angle in spots:
                for side in (1.0, -1.0):
                    yield p.x - d.y * high * side, p.y + d.x * high * side, angle
        p, d, _ = spots[0]
        for far in (0.75, 1.5, 2.4, 3.4):
            for side in (1.0, -1.0):
                nx, ny = -d.y * side, d.x * side
                reach_x = nx * (wide / 2 * abs(nx) + high * far)
                reach_y = ny * (high * far + wide / 2 * abs(nx) * 0.2)
                yield p.x + reach_x, p.y + reach_y, 0.0


def _around(x: float, y: float, angle: float, wide: float, high: float) -> Iterable[tuple[float, float, float]]:
    c, s = math.cos(angle), math.sin(angle)
    for along, across in (
        (0.0, 0.0),
        (0.0, 1.1),
        (0.0, -1.1),
        (0.55, 0.0),
        (-0.55, 0.0),
        (0.55, 1.1),
        (-0.55, 1.1),
        (0.55, -1.1),
        (-0.55, -1.1),
        (0.0, 2.2),
        (0.0, -2.2),
        (1.1, 0.0),
        (-1.1, 0.0),
    ):
        a, b = along * wide, across * high
        yield x + a * c - b * s, y + a * s + b * c, angle


def _pattern(name: str, cloth: Cloth, unit: float) -> str:
    """A pattern tile. Lines run the tile's whole width and the tile itself is turned: joins cannot show."""
    e = cloth.every * unit
    w = cloth.width * unit
    degrees = 0 if cloth.motif == "bars" else 90 if cloth.motif == "posts" else 45
    turn = f' patternTransform="rotate({degrees})"' if degrees else ""
    tile = f'<pattern id="{name}" width="{e:.4g}" height="{e:.4g}" patternUnits="userSpaceOnUse"{turn}>'
    half = f"{e / 2:.4g}"
    if cloth.motif == "dots":
        shape = f'<circle cx="{half}" cy="{half}" r="{w:.3g}" fill="{cloth.ink}"/>'
    elif cloth.motif == "rings":
        shape = (
            f'<circle cx="{half}" cy="{half}" r="{e * 0.22:.3g}" fill="none" stroke="{cloth.ink}" '
            f'stroke-width="{w:.3g}"/>'
        )
    else:
        lines = f"M0 {half}H{e:.4g}" + (f"M{half} 0V{e:.4g}" if cloth.motif == "cross" else "")
        shape = f'<path d="{lines}" stroke="{cloth.ink}" stroke-width="{w:.3g}" fill="none"/>'
    return f"{tile}{shape}</pattern>"
