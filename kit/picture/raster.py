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
from kit.picture.raster_path import shape

if TYPE_CHECKING:
    from matplotlib.path import Path

Pixels = np.ndarray[Any, np.dtype[np.uint8]]
"""Rows of pixels from the top, each red, green, blue and alpha, 0..255; colours are not multiplied by alpha."""

Matrix = tuple[float, float, float, float, float, float]
"""An affine motion as SVG writes it: a b c d e f."""

_NS = "{http://www.w3.org/2000/svg}"
_MOVE = re.compile(r"(translate|rotate)\(([^)]*)\)")
_FACES = ("Regular", "It", "Bold", "BoldIt")


def raster(svg: str, size: tuple[int, int], ground: str = "", margin: float = 0.0) -> Pixels:
    """One picture of the SVG pen, as large as it fits `size` (px) with `margin` (px) around it, in the middle; `ground`
    ("#rrggbb") fills the rest, without it the rest is clear."""
    return Raster(size, ground, margin).draw(svg)


@dataclass(frozen=True)
class _Mark:
    """One thing to paint: its element's attributes with those of its groups, and where it lies (x y a b c d as an
    affine matrix in rows)."""

    kind: str
    paint: tuple[tuple[str, str], ...]
    matrix: Matrix
    text: str = ""
    tile: tuple[tuple[str, str], ...] = ()


class Raster:
    """Paints pictures of one size, one after another."""

    def __init__(self, size: tuple[int, int], ground: str = "", margin: float = 0.0) -> None:
        from matplotlib.backends.backend_agg import RendererAgg

        self.size = size
        self.margin = margin
        self._window: Any = None
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
        box = tuple(float(part) for part in root.get("viewBox", "0 0 1 1").split())
        marks = tuple(_marks(root, _frame(box, self.size, self.margin)))
        self._window = _window(box, self.size, self.margin)
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
        path = _text_path(mark.text, paint) if mark.kind == "text" else shape(mark.kind, paint)
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
        pen.set_clip_rectangle(self._window)
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
        if stroke is not None and face is None and path.codes is not None and path.CURVE4 in np.asarray(path.codes):
            # lines beyond the canvas are left out before curves are worked out, which then start elsewhere
            path, where = path.cleaned(transform=where, curves=False), _affine((1.0, 0.0, 0.0, 1.0, 0.0, 0.0))
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
        one = shape("circle", tile)
        places = np.stack(np.meshgrid(columns, rows), axis=-1).reshape(-1, 1, 2)
        vertices = (np.asarray(one.vertices)[None, :, :] + places).reshape(-1, 2)
        return Path(vertices, np.tile(np.asarray(one.codes), len(places)))
    half = every / 2
    lines = [((columns[0], y + half), (columns[-1] + every, y + half)) for y in rows]
    if "V" in tile["d"]:
        lines += [((x + half, rows[0]), (x + half, rows[-1] + every)) for x in columns]
    return Path(np.array(lines).reshape(-1, 2), np.tile([Path.MOVETO, Path.LINETO], len(lines)))


# ---- reading ----------------------------------------------------------------------------------------------


def _frame(box: tuple[float, ...], size: tuple[int, int], margin: float) -> Matrix:
    """Where a picture's viewBox lies in the middle of `size`. Agg counts rows from below."""
    x, y, wide, high = box
    k = min((size[0] - 2 * margin) / wide, (size[1] - 2 * margin) / high)
    left, top = (size[0] - wide * k) / 2, (size[1] - high * k) / 2
    return (k, 0.0, 0.0, -k, left - x * k, size[1] - (top - y * k))


def _window(box: tuple[float, ...], size: tuple[int, int], margin: float) -> Any:
    """The viewBox in pixels: an SVG shows nothing beyond it."""
    from matplotlib.transforms import Bbox

    a, _, _, d, e, f = _frame(box, size, margin)
    x, y, wide, high = box
    return Bbox([[x * a + e, (y + high) * d + f], [(x + wide) * a + e, y * d + f]])


def _marks(root: ElementTree.Element, start: Matrix) -> Iterator[_Mark]:
    """What is to be painted, in order, placed by `start`."""
    tiles = {pattern.get("id", ""): _tile(pattern) for pattern in root.iter(f"{_NS}pattern")}
    yield from _within(root, {}, start, tiles)


def _within(
    element: ElementTree.Element,
    paint: Mapping[str, str],
    matrix: Matrix,
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


def _placed(matrix: Matrix, transform: str) -> Matrix:
    a, b, c, d, e, f = matrix
    for name, given in _MOVE.findall(transform):
        numbers = [float(part) for part in given.replace(",", " ").split()]
        if name == "translate":
            e, f = e + a * numbers[0] + c * numbers[1], f + b * numbers[0] + d * numbers[1]
        else:
            cos, sin = math.cos(math.radians(numbers[0])), math.sin(math.radians(numbers[0]))
            a, b, c, d = a * cos + c * sin, b * cos + d * sin, c * cos - a * sin, d * cos - b * sin
    return (a, b, c, d, e, f)


def _affine(matrix: Matrix) -> Any:
    from matplotlib.transforms import Affine2D

    return Affine2D.from_values(*matrix)


def _colour(value: str, alpha: float) -> tuple[float, float, float, float] | None:
    if value == "none" or alpha <= 0:
        return None
    red, green, blue = (int(value[i : i + 2], 16) / 255 for i in (1, 3, 5))
    return red, green, blue, alpha


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


def width_of(text: str, size: float, bold: bool = False) -> float:
    """How wide `text` is painted, in the unit of `size` (the em)."""
    return _letters(text, bold, False)[2] * size / _EM if text.strip() else 0.0


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
