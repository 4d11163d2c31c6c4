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
from collections.abc import Sequence
from hashlib import blake2b

from kit.geometry import Arc, Curve, Line, Point
from kit.geometry.region import Spot
from kit.picture.dimension_line import dimension_curves
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Label, Stroke
from kit.picture.lettered import HEADS, Lettered, WrittenText, drawn_box, lettered
from kit.picture.lettering import Box
from kit.picture.svg_path import number as _n
from kit.picture.svg_path import path_data, shifted
from kit.picture.theme import THEME, FillInk, Theme
from kit.units import set_fractions

__all__ = ["bounds_of", "escape", "path_data", "shifted", "svg", "written"]

_CONTROL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ufffe\uffff]|[\ud800-\udfff]")


def svg(drawing: Drawing, width: float | None = 640.0, height: float | None = None, theme: Theme = THEME) -> str:
    """`drawing` as an SVG element, ready for HTML or a file.

    `width` and `height` are CSS pixels: one of them scales the picture, both make it fit inside; `width=None`
    without a height draws at real size (width and height in mm). The element carries role="img", a title and
    the drawing's alternative text. Text is escaped.
    """
    return written(lettered(drawing, width, height, theme), theme, real=width is None and height is None)


def written(picture: Lettered, theme: Theme = THEME, real: bool = False) -> str:
    """A lettered drawing as an SVG element, its size in CSS px or (`real`) in mm."""
    return Pen(picture, theme).element(real)


def bounds_of(drawing: Drawing) -> Box:
    """What the drawing covers, in mm: its own bounds, or those of its items without their text."""
    return drawing.bounds or drawn_box(drawing)


def escape(text: str) -> str:
    """`text` for XML: markup escaped, characters XML forbids left out."""
    return html.escape(_CONTROL.sub("", text), quote=True)


class Pen:
    """One drawing being written. Text is written last, so that no line crosses it."""

    def __init__(self, picture: Lettered, theme: Theme) -> None:
        self.drawing = picture.drawing
        self.bounds = picture.bounds
        self.unit = picture.unit
        self.theme = theme
        self.body: list[str] = []
        self.text: list[str] = []
        self.patterns: dict[str, FillInk] = {}
        self.group = ""
        # A fill and its outline are the same curves.
        self.paths: dict[tuple[int, bool], tuple[Sequence[Curve], str]] = {}
        self.papered: int | None = None  # so many pieces of the body come before the paper round the window
        self.texts: dict[int, list[WrittenText]] = {}
        for text in picture.texts:
            self.texts.setdefault(text.item, []).append(text)

    def element(self, real: bool) -> str:
        for index, item in enumerate(self.drawing.items):
            if not isinstance(item, Label | Dimension):
                self._drawn(index, item)
        self._close()
        for index, item in enumerate(self.drawing.items):
            if isinstance(item, Label | Dimension):
                self._told(index, item)
        return self._wrap(real)

    def _drawn(self, index: int, item: Stroke | Fill | Dot) -> None:
        """What is not text."""
        if isinstance(item, Stroke):
            self._stroke(item)
        elif isinstance(item, Fill):
            self._fill(item)
        else:
            self._dot(item)

    def _told(self, index: int, item: Label | Dimension) -> None:
        """A text where it stands, with its leader, and a dimension's line."""
        if isinstance(item, Dimension):
            self._dimension(item)
        for text in self.texts.get(index, ()):
            if text.leader:
                self._leader(text.leader)
            self._write(text)
        self._close()

    def _wrap(self, real: bool) -> str:
        x0, y0, x1, y1 = self.bounds
        wide, high = x1 - x0, y1 - y0
        body, within = self._within()
        title, alt = escape(self.drawing.title), escape(self.drawing.alt or self.drawing.title)
        content = body + "".join(self.text)
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
        defs = f"<defs>{tiles}{within}</defs>" if tiles or within else ""
        return f"{head}{defs.replace(chr(0), f'p{mark}')}{self._ground()}{content.replace(chr(0), f'p{mark}')}</svg>"

    def _within(self) -> tuple[str, str]:
        """The body with what lies under the paper cut at the window, and the path it is cut by. Paper alone would do,
        but at the picture's rim, where cloth and paper are cut in the same pixel, the cloth would shine through."""
        window = self.drawing.window
        if window is None or self.papered is None:
            return "".join(self.body), ""
        x0, y0, x1, y1 = window
        path = f'<path d="M{_n(x0)} {_n(-y1)}H{_n(x1)}V{_n(-y0)}H{_n(x0)}Z"/>'
        under, over = "".join(self.body[: self.papered]), "".join(self.body[self.papered :])
        return f'<g clip-path="url(#\0-window)">{under}</g>{over}', f'<clipPath id="\0-window">{path}</clipPath>'

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
        if item.role == "frame" and self.papered is None:
            self.papered = len(self.body)
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

    def _leader(self, points: Sequence[Spot]) -> None:
        self._open(self._line_ink("leader"))
        way = "L".join(f"{_n(x)} {_n(-y)}" for x, y in points)
        self.body.append(f'<path d="M{way}"/>')
        self._close()
        x, y = points[-1]
        colour = self.theme.lines["leader"].colour
        self.body.append(f'<circle cx="{_n(x)}" cy="{_n(-y)}" r="{self._px(1.4)}" fill="{colour}"/>')

    def _write(self, text: WrittenText) -> None:
        ink = self.theme.texts[text.role]
        weight = ' font-weight="bold"' if ink.bold or text.ringed else ""
        slant = ' font-style="italic"' if ink.italic and not text.ringed else ""
        size, high = text.size, text.high
        wide = text.wide
        turn = f"rotate({-math.degrees(text.angle):.1f})" if text.angle else ""
        base = f"{size * 0.35:.3g}"
        half = text.wide / 2  # a font narrower than the room still begins or ends where it is meant to
        side = {"start": f'x="{_n(-half)}" ', "middle": "", "end": f'x="{_n(half)}" '}[text.anchor]
        round_, edge = size * 0.25, f' fill="{self.theme.paper}" fill-opacity=".86"'
        if text.role == "order":  # on a dark ground: not taken for a measure, nor for a number of the list
            edge = f' fill="{self.theme.accent}"'
        elif text.ringed:
            wide = high = text.wide
            round_ = wide / 2
            edge += f' stroke="{ink.colour}" stroke-width="{self._px(0.9)}"'
        self.text.append(
            f'<g transform="translate({_n(text.x)} {_n(-text.y)}){turn}">'
            f'<rect x="{_n(-wide / 2)}" y="{_n(-high / 2)}" width="{_n(wide)}" height="{_n(high)}" '
            f'rx="{_n(round_)}"{edge}/>'
            f'<text {side}y="{base}" font-family="{escape(self.theme.font)}" font-size="{size:.4g}" '
            f'text-anchor="{text.anchor}" fill="{ink.colour}"{weight}{slant}>{escape(set_fractions(text.text))}'
            f"</text></g>"
        )

    def _dimension(self, item: Dimension) -> None:
        curves = dimension_curves(item)
        if not curves:
            return
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
        # Arrow heads need some px between them; where the line is shorter, slanting ticks mark its ends.
        if run > HEADS * self.unit:
            colour = self.theme.lines["measure"].colour
            self._head(first.start, -back.x, -back.y, colour, 6.5)
            self._head(last.end, ahead.x, ahead.y, colour, 6.5)
        else:
            tick = 3.5 * self.unit
            for p, t in ((first.start, back), (last.end, ahead)):
                dx, dy = (t.x - t.y) * tick, (t.y + t.x) * tick
                self.body.append(f'<path d="M{_n(p.x - dx)} {_n(-(p.y - dy))}L{_n(p.x + dx)} {_n(-(p.y + dy))}"/>')

    def _leg(self, p: Point, q: Point) -> str:
        size = p.distance(q)
        over = 4 * self.unit / size if size > 1e-9 else 0.0
        return f"M{_n(p.x)} {_n(-p.y)}L{_n(q.x + (q.x - p.x) * over)} {_n(-(q.y + (q.y - p.y) * over))}"


def _pattern(name: str, cloth: FillInk, unit: float) -> str:
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
