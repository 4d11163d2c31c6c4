"""The SVG pen's pictures as pixels.

Only what that pen writes is read: paths, circles, boxes and texts with presentation attributes, groups, and patterns
of one motif. Letters are Source Sans Pro, which travels with the kit's packages, and DejaVu Sans for the signs it
lacks. A `Raster` keeps what two pictures in a row have in common, so that the frames of a clip cost little.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path as FilePath
from typing import TYPE_CHECKING, Any
from xml.etree import ElementTree

import numpy as np

from kit.errors import KitError

if TYPE_CHECKING:
    from matplotlib.path import Path

Pixels = np.ndarray[Any, np.dtype[np.uint8]]
"""Rows of pixels from the top, each red, green, blue and alpha, 0..255; colours are not multiplied by alpha."""

_NS = "{http://www.w3.org/2000/svg}"
_TOKEN = re.compile(r"([MLHVCAZhvz])|(-?[\d.]+(?:e-?\d+)?)")
_MOVE = re.compile(r"(translate|rotate)\(([^)]*)\)")
_FACES = ("Regular", "It", "Bold", "BoldIt")


def raster(svg: str, size: tuple[int, int], ground: str = "") -> Pixels:
    """One picture of the SVG pen, as large as it fits `size` (px), in the middle; `ground` ("#rrggbb") fills the rest,
    without it the rest is clear."""
    return Raster(size, ground).draw(svg)


@dataclass(frozen=True)
class _Mark:
    """One thing to paint: its element's attributes with those of its groups, and where it lies (x y a b c d as an
    affine matrix in rows)."""

    kind: str
    paint: tuple[tuple[str, str], ...]
    matrix: tuple[float, float, float, float, float, float]
    text: str = ""
    tile: tuple[tuple[str, str], ...] = ()


class Raster:
    """Paints pictures of one size, one after another."""

    def __init__(self, size: tuple[int, int], ground: str = "") -> None:
        from matplotlib.backends.backend_agg import RendererAgg

        self.size = size
        self._pen: Any = RendererAgg(size[0], size[1], 72)
        self._view: Pixels = np.asarray(self._pen.buffer_rgba())
        self._empty: Pixels = np.zeros_like(self._view)
        if ground:
            self._empty[:] = (*(int(ground[i : i + 2], 16) for i in (1, 3, 5)), 255)
        self._before: tuple[_Mark, ...] = ()
        self._kept = 0
        self._base = self._empty.copy()

    def draw(self, svg: str) -> Pixels:
        """The picture as pixels; what is given back is a copy."""
        root = ElementTree.fromstring(svg)
        marks = tuple(_marks(root, self.size))
        same = 0
        for one, other in zip(marks, self._before, strict=False):
            if one != other:
                break
            same += 1
        if same < self._kept:
            self._base, self._kept = self._empty.copy(), 0
        self._view[:] = self._base
        for number, mark in enumerate(marks):
            if number < self._kept:
                continue
            if number == same > self._kept:
                self._keep(number)
            self._paint(mark)
        if same == len(marks) > self._kept:
            self._keep(same)
        self._before = marks
        return self._view.copy()

    def _keep(self, number: int) -> None:
        self._base, self._kept = self._view.copy(), number

    # ---- painting -----------------------------------------------------------------------------------------

    def _paint(self, mark: _Mark) -> None:
        paint = dict(mark.paint)
        where = _affine(mark.matrix)
        path = _text_path(mark.text, paint) if mark.kind == "text" else _path(mark.kind, paint)
        if path is None:
            return
        scale = math.hypot(mark.matrix[0], mark.matrix[1])
        alpha = float(paint.get("opacity", "1"))
        if mark.tile:
            self._tiled(path, where, dict(mark.tile), mark.matrix, alpha)
            return
        self._draw(path, where, paint, scale, alpha)

    def _draw(
        self, path: Path, where: Any, paint: Mapping[str, str], scale: float, alpha: float, clip: Any = None
    ) -> None:
        pen = self._pen.new_gc()
        pen.set_snap(False)
        if clip is not None:
            pen.set_clip_path(clip)
        stroke, fill = _colour(paint.get("stroke", "none"), alpha), paint.get("fill", "#000000")
        face = _colour(fill, alpha * float(paint.get("fill-opacity", "1")))
        if stroke is None:
            pen.set_linewidth(0.0)
        else:
            pen.set_foreground(stroke, isRGBA=True)
            pen.set_linewidth(float(paint.get("stroke-width", "1")) * scale)
            pen.set_joinstyle(paint.get("stroke-linejoin", "miter"))
            pen.set_capstyle(paint.get("stroke-linecap", "butt"))
            dash = paint.get("stroke-dasharray")
            if dash:
                pen.set_dashes(0, [float(part) * scale for part in dash.split()])
        self._pen.draw_path(pen, path, where, face)
        pen.restore()

    def _tiled(self, area: Path, where: Any, tile: Mapping[str, str], matrix: tuple[float, ...], alpha: float) -> None:
        """A cloth's motif repeated over an area and cut off at its edge."""
        from matplotlib.transforms import Affine2D, TransformedPath

        turned = Affine2D().rotate_deg(float(tile["turn"]))
        every = float(tile["width"])
        box = area.transformed(turned.inverted()).get_extents()
        columns = np.arange(math.floor(box.x0 / every), math.ceil(box.x1 / every) + 1) * every
        rows = np.arange(math.floor(box.y0 / every), math.ceil(box.y1 / every) + 1) * every
        motif = _motif(tile, every, columns, rows)
        scale = math.hypot(matrix[0], matrix[1])
        self._draw(motif, turned + where, tile, scale, alpha, TransformedPath(area, where))


def _motif(tile: Mapping[str, str], every: float, columns: Any, rows: Any) -> Path:
    from matplotlib.path import Path

    if tile["kind"] == "circle":
        one = _path("circle", tile)
        assert one is not None
        places = np.stack(np.meshgrid(columns, rows), axis=-1).reshape(-1, 1, 2)
        vertices = (np.asarray(one.vertices)[None, :, :] + places).reshape(-1, 2)
        return Path(vertices, np.tile(np.asarray(one.codes), len(places)))
    half = every / 2
    lines = [((columns[0], y + half), (columns[-1] + every, y + half)) for y in rows]
    if "V" in tile["d"]:
        lines += [((x + half, rows[0]), (x + half, rows[-1] + every)) for x in columns]
    return Path(np.array(lines).reshape(-1, 2), np.tile([Path.MOVETO, Path.LINETO], len(lines)))


# ---- reading ----------------------------------------------------------------------------------------------


def _marks(root: ElementTree.Element, size: tuple[int, int]) -> Iterator[_Mark]:
    """What is to be painted, in order, placed in a frame of `size`."""
    x, y, wide, high = (float(part) for part in root.get("viewBox", "0 0 1 1").split())
    k = min(size[0] / wide, size[1] / high)
    left, top = (size[0] - wide * k) / 2, (size[1] - high * k) / 2
    # Agg counts rows from below.
    start = (k, 0.0, 0.0, -k, left - x * k, size[1] - (top - y * k))
    tiles = {pattern.get("id", ""): _tile(pattern) for pattern in root.iter(f"{_NS}pattern")}
    yield from _within(root, {}, start, tiles)


def _within(
    element: ElementTree.Element,
    paint: Mapping[str, str],
    matrix: tuple[float, float, float, float, float, float],
    tiles: Mapping[str, tuple[tuple[str, str], ...]],
) -> Iterator[_Mark]:
    for child in element:
        kind = child.tag.removeprefix(_NS)
        if kind in ("title", "defs", "desc"):
            continue
        own = {**paint, **child.attrib}
        if "opacity" in child.attrib:
            own["opacity"] = f"{float(paint.get('opacity', '1')) * float(child.attrib['opacity']):.4f}"
        placed = _placed(matrix, own.pop("transform", ""))
        if kind == "g":
            yield from _within(child, own, placed, tiles)
        elif kind in ("path", "circle", "rect", "text"):
            found = re.fullmatch(r"url\(#(.+)\)", own.get("fill", ""))
            own.pop("data-name", None)
            yield _Mark(kind, tuple(own.items()), placed, child.text or "", tiles[found[1]] if found else ())
        else:
            raise KitError(f"the picture holds <{kind}>, which cannot be turned into pixels.")


def _tile(pattern: ElementTree.Element) -> tuple[tuple[str, str], ...]:
    turn = re.search(r"rotate\(([^)]*)\)", pattern.get("patternTransform", ""))
    (shape,) = pattern
    kind = shape.tag.removeprefix(_NS)
    return tuple(
        {**shape.attrib, "kind": kind, "width": pattern.get("width", "1"), "turn": turn[1] if turn else "0"}.items()
    )


def _placed(
    matrix: tuple[float, float, float, float, float, float], transform: str
) -> tuple[float, float, float, float, float, float]:
    a, b, c, d, e, f = matrix
    for name, given in _MOVE.findall(transform):
        numbers = [float(part) for part in given.replace(",", " ").split()]
        if name == "translate":
            e, f = e + a * numbers[0] + c * numbers[1], f + b * numbers[0] + d * numbers[1]
        else:
            cos, sin = math.cos(math.radians(numbers[0])), math.sin(math.radians(numbers[0]))
            a, b, c, d = a * cos + c * sin, b * cos + d * sin, c * cos - a * sin, d * cos - b * sin
    return (a, b, c, d, e, f)


def _affine(matrix: tuple[float, float, float, float, float, float]) -> Any:
    from matplotlib.transforms import Affine2D

    return Affine2D.from_values(*matrix)


def _colour(value: str, alpha: float) -> tuple[float, float, float, float] | None:
    if value == "none" or alpha <= 0:
        return None
    red, green, blue = (int(value[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return red, green, blue, alpha


def _path(kind: str, paint: Mapping[str, str]) -> Path | None:
    if kind == "path":
        return _path_of(paint["d"])
    if kind == "circle":
        return _circle(float(paint["cx"]), float(paint["cy"]), float(paint["r"]))
    return _box(*(float(paint.get(name, "0")) for name in ("x", "y", "width", "height", "rx")))


@lru_cache(maxsize=4000)
def _path_of(data: str) -> Path:
    """The path of path data as the SVG pen writes it: M L H V C A Z and h v, absolute but for h and v."""
    from matplotlib.path import Path

    tokens = _TOKEN.findall(data)
    points: list[tuple[float, float]] = []
    codes: list[int] = []
    i, letter = 0, ""
    x = y = sx = sy = 0.0

    def take(count: int) -> list[float]:
        nonlocal i
        found = [float(number) for _, number in tokens[i : i + count]]
        i += count
        return found

    while i < len(tokens):
        if tokens[i][0]:
            letter = tokens[i][0]
            i += 1
        if letter in "Zz":
            points.append((sx, sy))
            codes.append(int(Path.CLOSEPOLY))
            x, y = sx, sy
            continue
        if letter == "M":
            x, y = take(2)
            sx, sy, letter = x, y, "L"
            points.append((x, y))
            codes.append(int(Path.MOVETO))
            continue
        if letter == "C":
            ax, ay, bx, by, x, y = take(6)
            points += [(ax, ay), (bx, by), (x, y)]
            codes += [int(Path.CURVE4)] * 3
            continue
        if letter == "A":
            radius, _, _, large, sweep, ex, ey = take(7)
            cubics = _arc(x, y, radius, large > 0, sweep > 0, ex, ey)
            points += cubics
            codes += [int(Path.CURVE4)] * len(cubics)
            x, y = ex, ey
            continue
        if letter == "L":
            x, y = take(2)
        elif letter in "Hh":
            (across,) = take(1)
            x = across + (x if letter == "h" else 0.0)
        else:
            (down,) = take(1)
            y = down + (y if letter == "v" else 0.0)
        points.append((x, y))
        codes.append(int(Path.LINETO))
    return Path(np.array(points, float).reshape(-1, 2), codes)


def _arc(x: float, y: float, r: float, large: bool, sweep: bool, ex: float, ey: float) -> list[tuple[float, float]]:
    """A circle's arc as cubics (SVG 2, appendix B.2.4, for equal radii)."""
    dx, dy = (x - ex) / 2, (y - ey) / 2
    half = math.hypot(dx, dy)
    if half < 1e-9:
        return []
    r = max(r, half)
    root = math.sqrt(max(r * r / (half * half) - 1.0, 0.0)) * (-1.0 if large == sweep else 1.0)
    cx, cy = root * dy + (x + ex) / 2, -root * dx + (y + ey) / 2
    start, end = math.atan2(y - cy, x - cx), math.atan2(ey - cy, ex - cx)
    turn = end - start
    if sweep and turn < 0:
        turn += 2 * math.pi
    elif not sweep and turn > 0:
        turn -= 2 * math.pi
    count = max(1, math.ceil(abs(turn) / (math.pi / 2)))
    step = turn / count
    k = 4 / 3 * math.tan(step / 4) * r
    out: list[tuple[float, float]] = []
    for n in range(count):
        a, b = start + n * step, start + (n + 1) * step
        out.append((cx + r * math.cos(a) - k * math.sin(a), cy + r * math.sin(a) + k * math.cos(a)))
        out.append((cx + r * math.cos(b) + k * math.sin(b), cy + r * math.sin(b) - k * math.cos(b)))
        out.append((cx + r * math.cos(b), cy + r * math.sin(b)))
    return out


def _circle(cx: float, cy: float, r: float) -> Path:
    from matplotlib.path import Path

    return Path.circle((cx, cy), r)


def _box(x: float, y: float, wide: float, high: float, round_by: float) -> Path:
    from matplotlib.path import Path

    r = min(round_by, wide / 2, high / 2)
    k = r * 0.5523
    x1, y1 = x + wide, y + high
    points = [(x + r, y), (x1 - r, y), (x1 - r + k, y), (x1, y + r - k), (x1, y + r), (x1, y1 - r)]
    points += [(x1, y1 - r + k), (x1 - r + k, y1), (x1 - r, y1), (x + r, y1), (x + r - k, y1), (x, y1 - r + k)]
    points += [(x, y1 - r), (x, y + r), (x, y + r - k), (x + r - k, y), (x + r, y), (x + r, y)]
    corner, line = [int(Path.CURVE4)] * 3, [int(Path.LINETO)]
    codes = [int(Path.MOVETO), *(line + corner) * 4, int(Path.CLOSEPOLY)]
    return Path(points, codes)


# ---- letters ----------------------------------------------------------------------------------------------


def _text_path(text: str, paint: Mapping[str, str]) -> Path | None:
    from matplotlib.transforms import Affine2D

    if not text.strip():
        return None
    letters, left, right = _letters(text, paint.get("font-weight") == "bold", paint.get("font-style") == "italic")
    anchor = paint.get("text-anchor", "start")
    x = float(paint.get("x", "0"))
    size = float(paint.get("font-size", "12")) / _EM
    back = {"start": left, "middle": (left + right) / 2, "end": right}[anchor]
    move = Affine2D().translate(-back, 0.0).scale(size, -size).translate(x, float(paint.get("y", "0")))
    return letters.transformed(move)


_EM = 100.0


@lru_cache(maxsize=2000)
def _letters(text: str, bold: bool, italic: bool) -> tuple[Path, float, float]:
    """The outlines of a text set in ems of 100, and where they begin and end."""
    from matplotlib.font_manager import FontProperties
    from matplotlib.textpath import TextPath

    family = [_family(), "DejaVu Sans"]
    prop = FontProperties(family=family, weight="bold" if bold else "normal", style="italic" if italic else "normal")
    path = TextPath((0.0, 0.0), text.replace("$", r"\$"), size=_EM, prop=prop, usetex=False)
    box = path.get_extents()
    return path, float(box.x0), float(box.x1)


@lru_cache(maxsize=1)
def _family() -> str:
    """The kit's letters, made known to matplotlib."""
    import font_source_sans_pro
    from matplotlib.font_manager import fontManager

    folder = FilePath(font_source_sans_pro.__file__).parent / "files"
    for face in _FACES:
        fontManager.addfont(folder / f"SourceSansPro-{face}.ttf")
    return "Source Sans Pro"
