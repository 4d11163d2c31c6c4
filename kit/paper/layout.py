"""Searching for the layout that takes fewest pages.

Shapes are laid one after another (`kit.paper.page_cost`) in several orders, on sheets of several widths, with the paper
upright and on its side. A shape may lie at any useful angle, since grain is free on paper: as drafted, along the
sides of the narrowest box around it, and, when no page takes it whole so, at the angle at which one does. The number
of tries follows from the number of shapes, never from a clock, so the same shapes always lie the same way.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from shapely import affinity

from kit.pack.orders import attempts, chance, swapped, tries
from kit.paper.page_cost import EDGE, PageCells, Pose, TurnedShape, pack_on_pages, turned_shape
from kit.paper.papers import Paper
from kit.pausing import pause_here

_PLACED = 300  # shapes laid in all tries for all ways to hold the paper
_FEWEST = 5


@dataclass(frozen=True)
class Layout:
    """Where each shape lies, on a sheet of `width` x `height` mm with y 0 at its top."""

    poses: tuple[Pose, ...]
    width: float
    height: float


def best_layout(
    shapes: Sequence[Any],
    helds: Sequence[Paper],
    gap: float,
    limit: float,
    pages: Callable[[Sequence[Any], float, float], float],
    fixed: Sequence[int] = (),
    texts: Sequence[Any] = (),
) -> Layout:
    """Lay `shapes` (shapely, mm) on one sheet at most `limit` mm wide (wider only when a shape is).

    `helds` are the papers, held as they will be printed, whose grid of pages is tried. `pages` judges a layout: the
    moved shapes (y up, 0 at the sheet's foot), width and height give its cost in pages. Shapes whose place is in
    `fixed` are never turned. `texts` holds for each shape the corners of what is written on it, an array of
    n x 4 x 2 mm: of layouts of equally many pages the one that cuts fewest of them at page borders is taken.
    """
    best: tuple[float, ...] | None = None
    found: Layout | None = None
    for held, poses in _tries(shapes, helds, gap, limit, set(fixed)):
        moved = [affinity.affine_transform(shape, pose.matrix) for shape, pose in zip(shapes, poses, strict=True)]
        boxes = shapely.bounds(moved)
        width, height = float(boxes[:, 2].max()) + EDGE, EDGE - float(boxes[:, 1].min())
        lifted = [affinity.translate(shape, 0.0, height) for shape in moved]
        parted = _parted(texts, poses, held)
        # Pages first, then words cut at a border, which are hard to read when taped, then paper, and the narrower
        # sheet.
        worth = (pages(lifted, width, height), parted, width * height, width)
        if best is None or worth < best:
            best, found = worth, Layout(poses, width, height)
    assert found is not None  # the widest sheet tried takes every shape
    return found


def _parted(texts: Sequence[Any], poses: Sequence[Pose], held: Paper) -> int:
    """How many texts lie on more than one page."""
    count = 0
    for corners, pose in zip(texts, poses, strict=False):
        if len(corners):
            cos, sin = math.cos(pose.angle), math.sin(pose.angle)
            x = corners[..., 0] * cos - corners[..., 1] * sin + pose.dx
            y = corners[..., 0] * sin + corners[..., 1] * cos + pose.dy
            columns, rows = x // held.step[0], y // held.step[1]
            count += int(np.count_nonzero((np.ptp(columns, axis=1) > 0) | (np.ptp(rows, axis=1) > 0)))
    return count


def _tries(
    shapes: Sequence[Any], helds: Sequence[Paper], gap: float, limit: float, fixed: set[int]
) -> Iterator[tuple[Paper, tuple[Pose, ...]]]:
    seen = set()
    for held in helds:
        cells = PageCells.of(*held.step, gap)
        angles = [(0.0,) if place in fixed else useful_angles(shape, held) for place, shape in enumerate(shapes)]
        widest = max(_narrowest(shape, turns) for shape, turns in zip(shapes, angles, strict=True)) + gap
        most = math.ceil(max(widest, limit + 2 * cells.shift) / cells.wide - 1e-6)
        if widest <= limit + 2 * cells.shift:
            most = max(int((limit + 2 * cells.shift + 1e-6) / cells.wide), math.ceil(widest / cells.wide - 1e-6))
        ways = []
        for shape, turns in zip(shapes, angles, strict=True):
            pause_here()
            ways.append([turned_shape(shape, angle, cells, most) for angle in turns])
        # A try that needs more pages than the best so far is given up on the way; the same layout is judged once.
        fewest = math.inf
        plans = _plans(shapes, ways, cells, most, _PLACED // len(helds))
        for order, columns, way_in in attempts(plans):
            found = pack_on_pages(ways, order, cells, columns, way_in=way_in, at_most=fewest)
            if found is not None and found[0] not in seen:
                fewest = found[1]
                seen.add(found[0])
                yield held, found[0]


def _plans(
    shapes: Sequence[Any], ways: Sequence[Sequence[TurnedShape]], cells: PageCells, most: int, placed: int
) -> Iterator[tuple[tuple[int, ...], int, int]]:
    """Order, width in cells and preference of each try, the likeliest good ones first."""
    places = list(range(len(shapes)))
    areas = [shape.area for shape in shapes]
    longest = [max(way.footprint.rows for way in each) for each in ways]
    needed = max(min(way.footprint.columns for way in each) for each in ways)
    by_area = tuple(sorted(places, key=lambda place: (-areas[place], place)))
    by_length = tuple(sorted(places, key=lambda place: (-longest[place], -areas[place], place)))
    spare = math.ceil(2 * cells.shift / cells.wide)
    widths = [columns for pages in range(1, most) if needed <= (columns := pages * cells.columns + spare) <= most]
    square = math.sqrt(sum(areas) * 1.3) / cells.wide
    widths = sorted(dict.fromkeys([*widths, most]), key=lambda columns: (abs(columns - square), columns))[:6]
    count = tries(placed, len(places), _FEWEST)
    plans = [(order, columns, first) for order in (by_area, by_length) for columns in widths for first in range(4)]
    yield from plans[:count]
    random = chance()
    for turn in range(count - len(plans)):
        order = swapped(swapped(by_area, random), random)
        yield order, widths[turn % min(3, len(widths))], turn % 4
    yield by_area, most, 0


def useful_angles(shape: Any, held: Paper) -> tuple[float, ...]:
    """Turns worth trying, in radians from 0 to a full turn, as drafted first."""
    quarter = math.pi / 2
    # Square to the page as drafted, and square to it by the narrowest box around the shape. A slanting pose wastes
    # the corners of pages, so it is looked for only where nothing else brings the shape on to one page.
    found = [turn * quarter for turn in range(4)]
    corners = shapely.get_coordinates(shapely.minimum_rotated_rectangle(shape))
    if len(corners) > 2:
        side = corners[1] - corners[0]
        lean = -math.atan2(side[1], side[0]) % quarter
        if min(lean, quarter - lean) > math.radians(1):
            found += [lean + turn * quarter for turn in range(4)]
    room = held.step
    if not any(_fits(shape, angle, room) for angle in found):
        slant = next((math.radians(5 * step) for step in range(1, 36) if _fits(shape, math.radians(5 * step), room)), 0)
        if slant:
            found += [slant, slant + math.pi]
    return tuple(round(angle, 9) for angle in found)


def _fits(shape: Any, angle: float, room: tuple[float, float]) -> bool:
    wide, high = _reach(shape, angle)
    return wide + 2 * EDGE <= room[0] and high + 2 * EDGE <= room[1]


def _narrowest(shape: Any, angles: Sequence[float]) -> float:
    return min(_reach(shape, angle)[0] for angle in angles)


def _reach(shape: Any, angle: float) -> tuple[float, float]:
    points = shapely.get_coordinates(shapely.convex_hull(shape))
    cos, sin = math.cos(angle), math.sin(angle)
    x, y = points[:, 0] * cos - points[:, 1] * sin, points[:, 0] * sin + points[:, 1] * cos
    return float(np.ptp(x)), float(np.ptp(y))
