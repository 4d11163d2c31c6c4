"""The pen that writes a drawing into a PDF at true scale.

One millimetre of the drawing is one millimetre of paper (72 / 25.4 points). Curves are written as the Bezier
curves they are, so a piece costs a few numbers and stays smooth at any size. Inks are black and greys that
survive a draft-mode printer; line kinds differ in dash as well as in weight. Text is set in DejaVu Sans, which
comes with matplotlib, and is embedded, so that no page depends on the fonts of a computer or print shop. Fractions of
an inch are set as real ones.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import BinaryIO

from reportlab import rl_config
from reportlab.lib.utils import simpleSplit
from reportlab.pdfbase import pdfdoc, pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from kit.geometry import Curve, Line, Point
from kit.language import language_tag
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, FillRole, Item, Label, LabelRole, Stroke, StrokeRole
from kit.resources import sign_letters
from kit.units import set_fractions

MM = 72 / 25.4
"""Points in a millimetre: a point is 1/72 in, an inch exactly 25.4 mm."""


@dataclass(frozen=True)
class Ink:
    """A line: `width` in mm, `grey` from 0 (black) to 1 (white), `dash` in mm."""

    width: float
    grey: float = 0.0
    dash: tuple[float, ...] = ()


INKS: dict[StrokeRole, Ink] = {
    "cut": Ink(0.5),
    "stitch": Ink(0.3, 0.15, (3.0, 1.6)),
    "fold": Ink(0.4, 0.0, (8.0, 1.6, 1.2, 1.6)),
    "grain": Ink(0.3),
    "notch": Ink(0.35),
    "mark": Ink(0.3, 0.1, (0.8, 1.2)),
    "symbol": Ink(0.28),
    "lengthen": Ink(0.22, 0.2),
    "placement": Ink(0.3, 0.1, (2.2, 1.3)),
    "pleat": Ink(0.35, 0.0, (5.0, 1.5)),
    "leader": Ink(0.18, 0.2),
    "guide": Ink(0.18, 0.5, (6.0, 1.5)),
    "new": Ink(0.5),
    "kept": Ink(0.2, 0.55),
    "traced": Ink(0.35, 0.1),
    "aid": Ink(0.25),
    "sign": Ink(0.25),
    "check": Ink(0.2, 0.35),
    "lens": Ink(0.18, 0.4),
    "removed": Ink(0.2, 0.55, (2.0, 1.5)),
    "edge": Ink(0.25),
    "crease": Ink(0.6),
    "row_sign": Ink(0.35),
    "hidden": Ink(0.2, 0.45, (1.5, 1.2)),
    "row_ground": Ink(1.1, 1.0),
    "row": Ink(0.35, 0.0, (2.2, 1.2)),
    "old_row": Ink(0.2, 0.45, (2.2, 1.2)),
    "press": Ink(0.35),
    "pin": Ink(0.3),
    "trim": Ink(0.2, 0.25, (2.4, 1.6)),
    "page": Ink(0.15, 0.6),
    "ply_face": Ink(0.8, 0.0),
    "ply_main": Ink(0.3, 0.0),
    "ply_facing": Ink(0.3, 0.2),
    "ply_interfacing": Ink(0.3, 0.4, (1.0, 0.6)),
    "ply_strip": Ink(0.3, 0.2),
    "baste": Ink(0.3, 0.0, (3.5, 2.0)),
    "hand": Ink(0.35, 0.0, (0.8, 2.0)),
    "ply_lining": Ink(0.3, 0.3),
    "needle": Ink(0.35, 0.0, (1.2, 0.8)),
}
FILLS: dict[FillRole, float] = {
    "right_side": 0.82,
    "wrong_side": 0.95,
    "interfacing": 0.9,
    "facing": 0.88,
    "lining": 0.91,
    "paper": 1.0,
    "strip": 0.92,
    "frame": 1.0,
}
DOTS = {"new": 0.0, "kept": 0.45, "mark": 0.0}
LETTERS: dict[LabelRole, tuple[float, bool, float]] = {
    "name": (5.0, False, 0.0),
    "small": (4.0, False, 0.1),
    "measure": (4.0, False, 0.0),
    "number": (12.0, True, 0.0),
    "title": (8.0, True, 0.0),
    "ghost": (4.0, False, 0.55),
    "new": (5.0, True, 0.0),
    "order": (4.0, True, 0.0),
}
"""Type size (em) in mm, bold, grey, for labels that leave the size to the pen."""


@dataclass(frozen=True)
class Look:
    """How a drawing is inked: its lines by role, and whether it is light on a `dark` ground; arrow heads are `head`
    mm long."""

    inks: Mapping[StrokeRole, Ink] = field(default_factory=lambda: INKS)
    dark: bool = False
    head: float = 4.0

    def grey(self, value: float) -> float:
        return 1.0 - value if self.dark else value

    def magnified(self, by: float) -> Look:
        """Lines, dashes and heads `by` times as large: on a canvas scaled down they come out as usual."""
        inks = {
            role: Ink(ink.width * by, ink.grey, tuple(part * by for part in ink.dash))
            for role, ink in self.inks.items()
        }
        return Look(inks, self.dark, self.head * by)


PLAIN = Look()

rl_config.useA85 = 0  # streams as bytes: as text they are a quarter longer, and slow to write

_CAP = 0.729  # height of a capital of DejaVu Sans, per em


@lru_cache(maxsize=1)
def fonts() -> tuple[str, str]:
    """The names of the regular and the bold face, registered with reportlab."""
    folder = sign_letters()
    for name in ("DejaVuSans", "DejaVuSans-Bold"):
        pdfmetrics.registerFont(TTFont(name, str(folder / f"{name}.ttf")))
    return "DejaVuSans", "DejaVuSans-Bold"


def new_canvas(target: BinaryIO, width: float, height: float, title: str) -> Canvas:
    """A one-size document of `width` x `height` mm, in the spoken language. The same drawing gives the same bytes (no
    clock, no random identifier)."""
    canvas = Canvas(
        target,
        pagesize=(width * MM, height * MM),
        invariant=1,
        pageCompression=1,
        lang=language_tag(),
        initialFontName=fonts()[0],  # otherwise Helvetica is named in the file, which is not embedded
    )
    canvas.setTitle(title)
    canvas.setCreator("pattern-lesson-kit")
    canvas.setProducer("pattern-lesson-kit")
    return canvas


def declare(canvas: Canvas, *, tray: bool) -> None:
    """Say of the whole document, before its first page: every page's boxes are the sheet of paper (ISO 32000-1,
    14.11.2), viewers are asked not to scale it when printing, to take the `tray` that holds this size, if one does
    (12.2), and to show its title."""
    document = canvas._doc
    document._pdfVersion = max(document._pdfVersion, (1, 7))
    document.Catalog.ViewerPreferences = pdfdoc.PDFDictionary(
        {
            "PrintScaling": pdfdoc.PDFName("None"),
            "DisplayDocTitle": "true",
            "PickTrayByPDFSize": "true" if tray else "false",
        }
    )
    box = (0, 0, *canvas._pagesize)
    canvas.setCropBox(box)
    canvas.setTrimBox(box)


def draw(canvas: Canvas, drawing: Drawing | Iterable[Item], look: Look = PLAIN) -> None:
    """Draw the items in order, drawing millimetres measured from the canvas origin."""
    for item in drawing.items if isinstance(drawing, Drawing) else drawing:
        match item:
            case Stroke():
                _stroke(canvas, item, look)
            case Fill():
                canvas.setFillGray(look.grey(FILLS[item.role]))
                canvas.addLiteral(f"{_path(item.curves, closed=True)} f*")
            case Label():
                _label(canvas, item, look)
            case Dimension():
                _dimension(canvas, item, look)
            case Dot():
                canvas.setFillGray(look.grey(DOTS[item.role]))
                radius = max(0.8, 2 * look.inks["mark"].width) if look is not PLAIN else 0.8
                canvas.circle(item.at.x * MM, item.at.y * MM, radius * MM, stroke=0, fill=1)


def set_ink(canvas: Canvas, ink: Ink) -> None:
    dash = " ".join(f"{part * MM:.3f}" for part in ink.dash)
    cap = 1 if ink.dash and ink.dash[0] < 1 else 0
    canvas.addLiteral(f"{ink.width * MM:.3f} w {ink.grey:.3f} G [{dash}] 0 d {cap} J 0 j")


def rule(canvas: Canvas, x0: float, y0: float, x1: float, y1: float, ink: Ink) -> None:
    """A straight line between two places in mm."""
    set_ink(canvas, ink)
    canvas.addLiteral(f"{x0 * MM:.3f} {y0 * MM:.3f} m {x1 * MM:.3f} {y1 * MM:.3f} l S")


def write(
    canvas: Canvas,
    text: str,
    x: float,
    y: float,
    size: float,
    *,
    bold: bool = False,
    grey: float = 0.0,
    anchor: str = "start",
    angle: float = 0.0,
) -> None:
    """One line of text with its baseline at (x, y) mm; `size` is the capital height in mm, `angle` radians."""
    face = fonts()[bold]
    text = set_fractions(text)
    points = size * MM / _CAP
    shift = {"start": 0.0, "middle": -0.5, "end": -1.0}[anchor] * _width(text, bold, points)
    canvas.saveState()
    cos, sin = math.cos(angle), math.sin(angle)
    canvas.addLiteral(f"{grey:.3f} g {cos:.6f} {sin:.6f} {-sin:.6f} {cos:.6f} {x * MM:.3f} {y * MM:.3f} cm")
    canvas.setFont(face, points)
    canvas.drawString(shift, 0, text)
    canvas.restoreState()


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """How many mm `text`, its fractions set, takes at a capital height of `size` mm."""
    return _width(text, bold, size * MM / _CAP) / MM


def _width(text: str, bold: bool, points: float) -> float:
    """How many points `text`, its fractions set, takes at that size."""
    return 0.001 * points * _thousandths(text, bold)


@lru_cache(maxsize=4096)  # the same words are measured in every size of type and once more where they are written
def _thousandths(text: str, bold: bool) -> float:
    """The same in thousandths of the size, as a font has it."""
    return sum(map(pdfmetrics.getFont(fonts()[bold]).face.getCharWidth, map(ord, set_fractions(text))))


def fitted(text: str, size: float, width: float, *, bold: bool = False) -> float:
    """`size`, or the capital height at which `text` is `width` mm long where that is smaller."""
    return min(size, size * width / max(text_width(text, size, bold=bold), 1e-6))


def label_size(label: Label) -> tuple[float, float]:
    """Width and height in mm of a label as this pen writes it."""
    size, bold, _ = LETTERS[label.role]
    size = label.size or size
    return text_width(label.text, size * _CAP, bold=bold), size


def wrap(text: str, size: float, width: float, *, bold: bool = False) -> list[str]:
    """`text`, its fractions set, broken into lines of at most `width` mm at a capital height of `size` mm."""
    return [str(line) for line in simpleSplit(set_fractions(text), fonts()[bold], size * MM / _CAP, width * MM)]


def _path(curves: Sequence[Curve], closed: bool) -> str:
    """Operators of a path (ISO 32000-1, 8.5.2), to a thousandth of a point."""
    path: list[str] = []
    here: Point | None = None
    for curve in curves:
        start = curve.start
        if here is None or not here.close_to(start, 0.02):
            path.append(f"{start.x * MM:.3f} {start.y * MM:.3f} m")
        if isinstance(curve, Line):
            path.append(f"{curve.end.x * MM:.3f} {curve.end.y * MM:.3f} l")
        else:
            for cubic in curve.as_cubics():
                one, two, end = cubic.c1, cubic.c2, cubic.end
                path.append(
                    f"{one.x * MM:.3f} {one.y * MM:.3f} {two.x * MM:.3f} {two.y * MM:.3f} "
                    f"{end.x * MM:.3f} {end.y * MM:.3f} c"
                )
        here = curve.end
    if closed and curves:
        path.append("h")
    return " ".join(path)


def _stroke(canvas: Canvas, stroke: Stroke, look: Look) -> None:
    if not stroke.curves:
        return
    ink = look.inks[stroke.role]
    ink = replace(ink, grey=look.grey(ink.grey)) if look.dark else ink
    set_ink(canvas, ink)
    path = _path(stroke.curves, stroke.closed)
    if stroke.thickness > 2 * ink.width:
        canvas.setLineWidth(stroke.thickness * MM)
        canvas.addLiteral(f"{path} S")
        canvas.setLineWidth((stroke.thickness - 2 * ink.width) * MM)
        canvas.setStrokeGray(look.grey(0.95))
    canvas.addLiteral(f"{path} S")
    if stroke.arrow in ("end", "both"):
        last = stroke.curves[-1]
        _head(canvas, last.end, last.tangent(1.0).angle, ink, look.head)
    if stroke.arrow in ("start", "both"):
        first = stroke.curves[0]
        _head(canvas, first.start, first.tangent(0.0).angle + math.pi, ink, look.head)


def _head(canvas: Canvas, tip: Point, angle: float, ink: Ink, size: float) -> None:
    back = [
        Point(tip.x + size * math.cos(angle + turn), tip.y + size * math.sin(angle + turn))
        for turn in (math.radians(162), math.radians(-162))
    ]
    canvas.addLiteral(f"{ink.grey:.3f} g {_path((Line(tip, back[0]), Line(*back)), closed=True)} f*")


def _label(canvas: Canvas, label: Label, look: Look) -> None:
    size, bold, grey = LETTERS[label.role]
    size = (label.size or size) * _CAP
    drop = size / 2  # the label is centred on its place, text stands on its baseline
    x = label.at.x + drop * math.sin(label.angle)
    y = label.at.y - drop * math.cos(label.angle)
    write(canvas, label.text, x, y, size, bold=bold, grey=look.grey(grey), anchor=label.anchor, angle=label.angle)


def _dimension(canvas: Canvas, dimension: Dimension, look: Look) -> None:
    ink = look.inks["guide"]
    a, b = dimension.start, dimension.end
    angle = math.atan2(b.y - a.y, b.x - a.x)
    shift_x, shift_y = -math.sin(angle) * dimension.offset, math.cos(angle) * dimension.offset
    if dimension.along:
        set_ink(canvas, ink)
        canvas.addLiteral(f"{_path(dimension.along, closed=False)} S")
        curve = dimension.along[len(dimension.along) // 2]
        middle = curve.point(0.5)
        x, y = middle.x + shift_x, middle.y + shift_y
    else:
        start, end = Point(a.x + shift_x, a.y + shift_y), Point(b.x + shift_x, b.y + shift_y)
        if dimension.offset:
            rule(canvas, a.x, a.y, start.x, start.y, ink)
            rule(canvas, b.x, b.y, end.x, end.y, ink)
        rule(canvas, start.x, start.y, end.x, end.y, ink)
        _head(canvas, end, angle, ink, 2.5)
        _head(canvas, start, angle + math.pi, ink, 2.5)
        x, y = (start.x + end.x) / 2, (start.y + end.y) / 2
    upright = angle - math.pi if math.cos(angle) < -1e-9 else angle
    size = LETTERS["measure"][0] * _CAP
    write(
        canvas,
        dimension.text,
        x - math.sin(upright) * size * 0.5,
        y + math.cos(upright) * size * 0.5,
        size,
        anchor="middle",
        angle=upright,
    )
