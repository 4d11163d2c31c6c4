"""SVG drawings from a general drawing program, as strokes in millimetres.

SVG 1.1 and 2, coordinate systems and units: https://www.w3.org/TR/SVG11/coords.html. A CSS pixel is 1/96 inch
(CSS Values and Units 3, section 6.2); a drawing in pixels from an older program may be drawn at another `dpi`.
svgelements resolves what a reader of its own would get wrong: nested transforms, viewBox with preserveAspectRatio,
units, `use`, styles and every shape. Nothing a drawing refers to is fetched: entities and files outside are refused.
"""

from __future__ import annotations

import io
import math
import re
from collections.abc import Iterator
from pathlib import Path as FilePath
from typing import Any
from xml.parsers import expat

from kit.blocks.strokes import UNITS, Sketch, SketchStroke, ellipse, ended, finite
from kit.errors import KitError
from kit.geometry import Cubic, Curve, Line, Path, Point

_LABEL = "{http://www.inkscape.org/namespaces/inkscape}label"
_REAL = re.compile(r"^\s*[\d.]+(?:e[+-]?\d+)?\s*(mm|cm|in|pt|pc|q)\s*$", re.IGNORECASE)
_SHARE = 1e-9
MOST_PARTS = 20_000
"""Elements a drawing may come to once everything it uses again is written out; a traced top has some dozens."""


def read_svg(path: FilePath, *, unit: str = "", dpi: float = 96.0, gap: float = 1.0) -> Sketch:
    """The strokes of the SVG file at `path`. A drawing whose page has a size in mm, cm, in or pt is read at that
    size; one in pixels at `dpi` pixels to the inch, or with one drawing unit being one `unit`. A path that a line of
    `gap` mm or less closes is left open, so that the gap is closed at a corner. Raises `KitError` for a file that is
    no SVG, or that needs entities or drawing parts from outside."""
    import svgelements

    data = path.read_bytes()
    root, messages = _look_over(data, path.name)
    sides = [root[side] for side in ("width", "height") if side in root]
    real = bool(sides) and all(_REAL.match(side) for side in sides)
    if real:
        if unit or dpi != 96.0:
            messages.append("The page has a real size, so unit and dpi are not used.")
        dpi = 96.0
    elif unit:
        dpi = 25.4 / UNITS[unit]
    else:
        messages.append(f"The drawing is in pixels, taken as {dpi:g} to the inch.")
    try:
        drawing = svgelements.SVG.parse(io.BytesIO(data), reify=True, ppi=dpi, **_other_side(root, dpi))
    except (ValueError, TypeError, AttributeError, KeyError, IndexError, ZeroDivisionError, RecursionError):
        raise KitError(
            "the drawing has a size, a transform or a reference that makes no sense.",
            where=path.name,
            do="Save it again as plain SVG.",
        ) from None
    factor = 25.4 / dpi
    strokes = []
    for names, shape in _shapes(drawing, ()):
        for part in svgelements.Path(shape).as_subpaths():
            curves = [
                c
                for seg in svgelements.Path(part)
                for c in _curves(seg, factor)
                if c.length > (gap if isinstance(seg, svgelements.Close) else 1e-6)
            ]
            if curves:
                strokes.append(SketchStroke(names, _joined(curves)))
    return Sketch(path.name, tuple(strokes), tuple(messages), down=True)


def _other_side(root: dict[str, str], dpi: float) -> dict[str, float]:
    """The page's height or width in pixels where only the other is given: the viewBox has the page's shape."""
    import svgelements

    box = root.get("viewBox", "").replace(",", " ").split()
    if len(box) != 4 or ("width" in root) == ("height" in root):
        return {}
    given, missing, ratio = ("width", "height", 1) if "width" in root else ("height", "width", -1)
    if root[given].strip().endswith("%"):
        return {}
    shape = (float(box[3]) / float(box[2])) ** ratio
    return {missing: float(svgelements.Length(root[given]).value(ppi=dpi)) * shape}


def _look_over(data: bytes, file: str) -> tuple[dict[str, str], list[str]]:
    """The root's attributes and what was noticed, once the file is known to be SVG that stands alone."""
    root: dict[str, str] = {}
    tags: list[str] = []
    pictures: list[str] = []
    again = _Again()
    parser = expat.ParserCreate()

    def entity(name: str, inner: int, value: str | None, base: Any, system: Any, public: Any, notation: Any) -> None:
        if value is None:
            raise KitError(
                f"the drawing asks for the file '{system}' through the entity '{name}'. Nothing is fetched.",
                where=file,
                do="Save it again as plain SVG.",
            )

    def start(tag: str, attributes: dict[str, str]) -> None:
        plain = tag.split(":")[-1]
        if not tags:
            root.update(attributes)
        tags.append(plain)
        link = attributes.get("href", attributes.get("xlink:href", ""))
        if plain == "use" and link and not link.startswith("#"):
            raise KitError(
                f"part of the drawing lies in another file, '{link[:80]}'. Nothing is fetched.",
                where=file,
                do="Paste that part into the drawing itself and save it as plain SVG.",
            )
        if plain == "image":
            pictures.append("inside it" if link.startswith("data:") else f"'{link[:80]}'")
        again.begin(attributes.get("id", ""), link[1:] if plain == "use" else "")

    # The file is read once by the plain parser before any library sees it: entities that ask for files, clones of other
    # files and clones of clones (whose number doubles with each level) are refused by counting, not by trying them.
    parser.EntityDeclHandler = entity
    parser.StartElementHandler = start
    parser.EndElementHandler = lambda tag: again.end()
    try:
        parser.Parse(data, True)
    except expat.ExpatError as error:
        raise KitError(
            f"this is not a sound SVG file: {expat.ErrorString(error.code)} in line {error.lineno}.",
            where=file,
            do="Open it in the drawing program and save it as plain SVG.",
        ) from None
    if tags[0] != "svg":
        raise KitError(
            f"this is not an SVG drawing: it begins with '{tags[0]}'.", where=file, do="Save the drawing as plain SVG."
        )
    parts = again.parts()
    if parts > MOST_PARTS:
        raise KitError(
            "parts of the drawing use each other over and over: written out it would come to "
            + ("no end." if math.isinf(parts) else f"{parts:,.0f} parts."),
            where=file,
            do="Turn its clones or symbols into plain lines, leave out what is not the pattern, and save it again.",
        )
    return root, [f"The picture {one} is not read; only drawn lines are." for one in pictures]


class _Again:
    """Counts what a drawing comes to once every `use` is written out, before anything is: each element is one part,
    what is inside it counts along, and so does what it uses. A part used in itself never ends."""

    def __init__(self) -> None:
        self._open: list[int] = []
        self._inside: list[list[int]] = []
        self._uses: list[str] = []
        self._named: dict[str, int] = {}

    def begin(self, name: str, uses: str) -> None:
        number = len(self._inside)
        if self._open:
            self._inside[self._open[-1]].append(number)
        self._inside.append([])
        self._uses.append(uses)
        if name:
            self._named.setdefault(name, number)
        self._open.append(number)

    def end(self) -> None:
        self._open.pop()

    def parts(self) -> float:
        """How many there are in all; infinite where a part is used in itself."""
        sizes: dict[int, float] = {}
        stack = [(0, False)]
        working: set[int] = set()
        while stack:  # by hand, since a file may be nested deeper than Python calls itself
            number, counted = stack.pop()
            wanted = [*self._inside[number]]
            if self._uses[number] in self._named:
                wanted.append(self._named[self._uses[number]])
            if counted:
                working.discard(number)
                sizes[number] = 1.0 + sum(sizes.get(other, math.inf) for other in wanted)
            elif number not in sizes:
                if number in working:
                    return math.inf
                working.add(number)
                stack.append((number, True))
                stack += [(other, False) for other in wanted if other not in sizes]
        return sizes[0]


def _shapes(group: Any, names: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], Any]]:
    import svgelements

    for item in group:
        values = item.values
        own = values.get("attributes") or {}
        known = [own.get(_LABEL), own.get("id")]
        called = (*(name for name in known if name), *names)
        if values.get("visibility") in ("hidden", "collapse"):
            continue
        if isinstance(item, svgelements.Shape):
            yield called, item
        elif isinstance(item, list):
            yield from _shapes(item, called)


def _curves(segment: Any, factor: float) -> tuple[Curve, ...]:
    """One segment of a path, y turned up, in mm."""
    import svgelements

    def point(p: Any) -> Point:
        return finite(p.x * factor, -p.y * factor)

    if isinstance(segment, svgelements.Move) or segment.start is None or segment.end is None:
        return ()
    start, end = point(segment.start), point(segment.end)
    if isinstance(segment, svgelements.CubicBezier):
        return (Cubic(start, point(segment.control1), point(segment.control2), end),)
    if isinstance(segment, svgelements.QuadraticBezier):
        control = point(segment.control)
        return (Cubic(start, start.lerp(control, 2 / 3), end.lerp(control, 2 / 3), end),)
    if isinstance(segment, svgelements.Arc):
        return _arc(start, end, segment, point)
    return (Line(start, end),)


def _arc(start: Point, end: Point, segment: Any, point: Any) -> tuple[Curve, ...]:
    centre = point(segment.center)
    u, v = point(segment.prx) - centre, point(segment.pry) - centre
    area = u.cross(v)
    if abs(area) <= _SHARE * max(u.length, v.length) ** 2:
        return (Line(start, end),)
    spoke = start - centre
    t0 = math.atan2(u.cross(spoke) / area, spoke.cross(v) / area)
    middle = point(segment.point(0.5))
    turn = abs(segment.sweep)

    def off(sweep: float) -> float:
        t = t0 + sweep / 2
        return (centre + u * math.cos(t) + v * math.sin(t)).distance(middle)

    return ellipse(centre, u, v, t0, min(turn, -turn, key=off))


def _joined(curves: list[Curve]) -> Path:
    """A subpath's curves; rounding at their joints is taken out."""
    found = [curves[0]]
    for curve in curves[1:]:
        if found[-1].end.distance(curve.start) > 1e-9 and not isinstance(found[-1], Cubic):
            found[-1] = ended(found[-1], curve.start)
        found.append(curve)
    return Path(tuple(found))
