"""Beside a sewing picture: the seam's cross-section, and a small plan of the whole."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise
from typing import NamedTuple

from kit.geometry import Line, Point
from kit.language import say
from kit.picture.drawing import Fill, Item, Label, Stroke, StrokeRole
from kit.picture.laid import Box
from kit.picture.lettering import text_width
from kit.picture.place import polyline, rectangle
from kit.picture.theme import THEME
from kit.sewing.scene import Section

PX = 96 / 25.4  # CSS px in a mm on the page
_WIDE = 60.0 * PX
"""The width of a cross-section, where the picture is as wide."""
_PLY = 2.1 * PX
"""From cloth to cloth in a cross-section: each is drawn 1.5 mm thick."""
_PLAN, _PLAN_LEAST = 22.0 * PX, 15.0 * PX  # width and least height of the plan
_CAPTION, _GAP = 17.0, 9.0
NAMES = 46.0
"""px above and below the cloth for the names of what lies there."""
_COLUMN = 0.4  # of the width, for section and plan beside the cloth
_WORTH = 1.3  # how many times larger the cloth must be shown for that
_NO_END = 1e5  # px of height from which on a room has no height of its own
_SHARE = 0.34  # of the picture's height that the row under the cloth may take
_FACED = 0.36  # of a cloth's thickness from its middle to its face


def panel(
    section: Section | None,
    locator: Callable[[Box], list[Item]] | None,
    window: Box,
    fit: tuple[float, float],
    faces: tuple[int, ...] = (),
) -> tuple[list[Item], Box]:
    """The seam's cross-section under the window and the plan of the whole: beside the section, or at the window's right
    where that leaves room. Each is parted from the next by white paper; the caption stands below its section. `fit` is
    the room of the picture in CSS px; `faces` tells on which side of its course each ply has its right side."""
    x0, y0, x1, y1 = window
    wide, high = x1 - x0, y1 - y0
    items: list[Item] = [*_paper(window, max(wide, high) * 3)]
    room = max(fit[1] - NAMES, 60.0)
    size = _section_size(section, min(_WIDE, fit[0]), room * _SHARE) if section is not None else (0.0, 0.0)
    row = size[1] + _CAPTION if section is not None else 0.0
    free = fit[0] - wide / max(wide / fit[0], high / max(room - row - _GAP, 1.0))
    beside = locator is not None and free > _PLAN + _GAP
    if locator is not None and not beside:
        row = max(row, _PLAN_LEAST)
        if section is not None and size[0] > fit[0] - _PLAN - _GAP:
            size = _section_size(section, fit[0] - _PLAN - _GAP, room * _SHARE)
    across = fit[0] - (_PLAN + _GAP if beside else 0.0)
    unit = max(wide / across, high / max(room - (row + _GAP if row else 0.0), room * (1 - _SHARE)))
    low = y0 - _GAP * unit
    if section is not None:
        column = _column(section, locator is not None, window, fit)
        if column.unit * _WORTH < unit:  # a low room: all of it beside the cloth
            return _in_column(section, locator, window, column, faces, items, fit)
    frames: list[Box] = []
    full = max(wide, (size[0] + (_PLAN + _GAP if locator is not None and not beside else 0.0)) * unit)
    start = x0 - max(full - wide, 0.0) / 2
    if section is not None:
        frames.append((start, low - (size[1] + _CAPTION) * unit, start + size[0] * unit, low))
        items.extend(_section_items(section, frames[-1], size, unit, faces))
    if locator is not None:
        if beside:
            at, tall = x1 + _GAP * unit, min(high, _PLAN * 1.4 * unit)
            frames.append((at, y1 - tall, at + _PLAN * unit, y1))
        else:
            end = max(x1, start + full) if section is not None else start + _PLAN * unit
            frames.append((end - _PLAN * unit, low - row * unit, end, low))
        items.extend(locator(frames[-1]))
    items.append(Stroke(rectangle(*window), "page", closed=True))
    boxes = [window, *frames]
    left, right = min(b[0] for b in boxes), max(b[2] for b in boxes)
    # As wide as its room: a high picture stands in the middle, and is not enlarged beyond the height it was given.
    side = max(fit[0] * unit - (right - left), 0.0) / 2 if fit[1] < _NO_END else 0.0
    return items, (left - side, min(b[1] for b in boxes), right + side, max(b[3] for b in boxes))


class _Column(NamedTuple):
    """Section and plan beside the cloth: the px that they take `across`, the mm to a px that the cloth is shown with
    then, and the px of the section."""

    across: float
    unit: float
    size: tuple[float, float]


def _column(section: Section, planned: bool, window: Box, fit: tuple[float, float]) -> _Column:
    """The column beside the cloth in a picture of that `fit`: as wide as its section, its caption and its plan (where
    one is `planned`) need, and at most `_COLUMN` of the width."""
    wide, high, room = window[2] - window[0], window[3] - window[1], max(fit[1] - NAMES, 60.0)

    def shown(across: float) -> float:
        return max(wide / max(fit[0] - across - _GAP, 1.0), high / room)

    most = max(_PLAN, min(_WIDE, fit[0] * _COLUMN))
    size = _section_size(section, most, max(high / shown(most) * (0.5 if planned else 0.9), 36.0))
    lettered = text_width(say("picture.section"), THEME.texts["small"].size) + _GAP
    across = min(max(size[0], lettered, _PLAN if planned else 0.0), most)
    return _Column(across, shown(across), size)


def _in_column(
    section: Section,
    locator: Callable[[Box], list[Item]] | None,
    window: Box,
    column: _Column,
    faces: tuple[int, ...],
    items: list[Item],
    fit: tuple[float, float],
) -> tuple[list[Item], Box]:
    """Section and plan under each other at the right of the window."""
    across, unit, size = column
    x0, y0, x1, y1 = window
    left, room = x1 + _GAP * unit, (y1 - y0) / unit
    low = y1 - (size[1] + _CAPTION) * unit
    frames = [(left, low, left + size[0] * unit, y1)]
    items.extend(_section_items(section, frames[0], size, unit, faces))
    if locator is not None:
        high = max(room - size[1] - _CAPTION - _GAP, 30.0) * unit
        frames.append((left, low - _GAP * unit - high, left + _PLAN * unit, low - _GAP * unit))
        items.extend(locator(frames[-1]))
    items.append(Stroke(rectangle(*window), "page", closed=True))
    right = left + across * unit
    side = max(fit[0] * unit - (right - x0), 0.0) / 2 if fit[1] < _NO_END else 0.0
    return items, (x0 - side, min(y0, *(frame[1] for frame in frames)), right + side, y1)


def _reach(section: Section) -> Box:
    """What a section takes up, in thicknesses of cloth."""
    xs = [x for ply in section.plies for x, _ in ply.path]
    ys = [y for ply in section.plies for _, y in ply.path]
    ys += [y for _, a, b in section.stitches for y in (a, b)]
    return min(xs) - 0.5, min(ys) - 0.6, max(xs) + 0.5, max(ys) + 0.6


def _section_size(section: Section, wide: float, high: float) -> tuple[float, float]:
    """The width and height in px of a section that may take so much."""
    x0, y0, x1, y1 = _reach(section)
    scale = min(wide / (x1 - x0), max(high - _CAPTION, 12.0) / (y1 - y0), _PLY * 1.25)
    return (x1 - x0) * scale, (y1 - y0) * scale


def _paper(window: Box, far: float) -> Iterator[Fill]:
    """Paper round the window, over whatever is drawn beyond it."""
    x0, y0, x1, y1 = window
    yield Fill(rectangle(x0 - far, y0 - far, x0, y1 + far), "frame")
    yield Fill(rectangle(x1, y0 - far, x1 + far, y1 + far), "frame")
    yield Fill(rectangle(x0, y0 - far, x1, y0), "frame")
    yield Fill(rectangle(x0, y1, x1, y1 + far), "frame")


def _section_items(
    section: Section, frame: Box, size: tuple[float, float], unit: float, faces: tuple[int, ...]
) -> list[Item]:
    x0, y0, x1, y1 = _reach(section)
    scale = size[0] * unit / (x1 - x0)
    ox, oy = frame[0] - x0 * scale, frame[3] - y1 * scale

    def at(x: float, y: float) -> Point:
        return Point(ox + x * scale, oy + y * scale)

    items: list[Item] = []
    roles: dict[str, StrokeRole] = {
        "main": "ply_main",
        "facing": "ply_facing",
        "interfacing": "ply_interfacing",
        "strip": "ply_strip",
        "lining": "ply_lining",
        "binding": "ply_strip",
        "zip": "ply_interfacing",
        "elastic": "ply_strip",
        "cord": "ply_strip",
    }
    for number, ply in enumerate(section.plies):
        curves = polyline([at(x, y) for x, y in ply.path])
        role = roles.get(ply.stuff, "ply_main")
        items.append(Stroke(curves, role, thickness=0.72 * scale, name=f"section {ply.stuff}"))
        side = faces[number] if number < len(faces) else 0
        if side:
            line = offset_polyline([at(x, y) for x, y in ply.path], side * _FACED * scale)
            items.append(Stroke(polyline(line), "ply_face", name=f"right side of ply {number}"))
    for x, a, b in section.stitches:
        items.append(Stroke((Line(at(x, a), at(x, b)),), "needle"))
    # The lowest cloth of the section is what the caption stands under, inside the width of the column.
    below = Line(Point(frame[0], oy + y0 * scale), Point(frame[2], oy + y0 * scale))
    middle = Point((frame[0] + frame[2]) / 2, frame[1])
    items.append(Label(say("picture.section"), middle, "small", of=(below,)))
    return items


def offset_polyline(points: list[Point], by: float) -> list[Point]:
    """Level and upright stretches moved `by` to their left, their corners where they meet again.

    >>> offset_polyline([Point(0, 0), Point(5, 0), Point(5, 3)], 1.0)
    [Point(x=0.0, y=1.0), Point(x=4.0, y=1.0), Point(x=4.0, y=3.0)]
    """
    normals = [(b - a).unit().left() * by for a, b in pairwise(points)]
    found = [points[0] + normals[0]]
    for corner, one, two in zip(points[1:-1], normals, normals[1:], strict=False):
        found.append(corner + (one + two if abs(one.dot(two)) < 1e-6 else one))
    return [*found, points[-1] + normals[-1]]
