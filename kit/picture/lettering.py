"""Where text goes: its size on the picture, and a free place for it.

What is written has real fractions (`kit.units.set_fractions`), and its room is that of the text so set. Pens have no
font metrics at hand, so widths are taken from a small table measured on DejaVu Sans, the widest
of the fonts a booklet falls back to; a narrower font leaves a little more air.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

from kit.units import set_fractions

Box = tuple[float, float, float, float]

LEAST = 3.5
"""The smallest type (em) in mm on printed pieces; its capitals are 2.5 mm high in DejaVu Sans."""
LINE_HEIGHT = 1.18
"""The height of a line of text per em."""

_WIDTH = {
    **dict.fromkeys("ijl.,:;'|!", 0.33),
    **dict.fromkeys(" ()/[]-ftI", 0.40),
    **dict.fromkeys('rsc"', 0.50),
    **dict.fromkeys("mwMW%", 0.95),
    **dict.fromkeys("ABCDEFGHKLNOPQRSTUVXYZ", 0.70),
    **dict.fromkeys("½¼¾⅛⅜⅝⅞", 0.97),
    **dict.fromkeys("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", 0.41),
    "\N{FRACTION SLASH}": 0.17,
}
_OTHER = 0.62


def text_width(text: str, size: float, bold: bool = False) -> float:
    """Width of `text` as it is set, in the unit of `size` (the em)."""
    text = set_fractions(text) if "/" in text else text
    width = sum([_WIDTH.get(letter, _OTHER) for letter in text])
    return width * size * (1.12 if bold else 1.0)


def text_box(x: float, y: float, width: float, height: float, angle: float) -> Box:
    """Bounds of a `width` x `height` box centred at x, y and turned by `angle` radians."""
    if angle:
        c, s = abs(math.cos(angle)), abs(math.sin(angle))
        width, height = width * c + height * s, width * s + height * c
    return (x - width / 2, y - height / 2, x + width / 2, y + height / 2)


def overlap(a: Box, b: Box) -> float:
    """Shared area of two boxes."""
    w = min(a[2], b[2]) - max(a[0], b[0])
    h = min(a[3], b[3]) - max(a[1], b[1])
    return w * h if w > 0 and h > 0 else 0.0


def upright(angle: float) -> float:
    """`angle` turned by half a turn where text would stand on its head: -90 deg < result <= 90 deg."""
    angle = math.remainder(angle, 2 * math.pi)
    if angle > math.pi / 2 + 1e-6:
        return angle - math.pi
    if angle <= -math.pi / 2 + 1e-6:
        return angle + math.pi
    return angle


class Ink:
    """Where lines run, on a grid of `cell` mm, so that text can keep off them."""

    def __init__(self, cell: float) -> None:
        self.cell = cell
        self.cells: dict[tuple[int, int], float] = {}

    def line(self, points: Iterable[tuple[float, float]], weight: float = 1.0) -> None:
        """A line through `points`; text over it is as bad as its `weight`."""
        cell, cells = self.cell, self.cells
        for x, y in points:
            key = (int(x // cell), int(y // cell))
            if cells.get(key, 0.0) < weight:
                cells[key] = weight

    def under(self, x: float, y: float, width: float, angle: float) -> float:
        """Area (mm2) of the cells with ink under a line of text centred at x, y, each by the weight of its line."""
        steps = max(int(width / self.cell), 1)
        c, s = math.cos(angle) * width / steps, math.sin(angle) * width / steps
        x, y = x - c * steps / 2, y - s * steps / 2
        cell, weight = self.cell, self.cells.get
        hits = 0.0
        for i in range(steps + 1):
            hits += weight((int((x + c * i) // cell), int((y + s * i) // cell)), 0.0)
        return hits * cell * cell


Turned = tuple[float, float, float, float, float]
"""A box of text: its middle x and y, its width, height and angle."""


def turned_overlap(a: Turned, b: Turned) -> float:
    """Shared area of two turned boxes; where both are turned, that of the upright boxes around them, but nothing when
    a line parts the two."""
    shared = overlap(text_box(*a), text_box(*b))
    if shared == 0.0 or (a[4] == 0.0 and b[4] == 0.0):
        return shared
    dx, dy = b[0] - a[0], b[1] - a[1]
    for angle in (a[4], b[4]):
        for x, y in ((math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))):
            if abs(dx * x + dy * y) >= _reach(a, x, y) + _reach(b, x, y):
                return 0.0
    return shared


def _reach(box: Turned, x: float, y: float) -> float:
    """How far a box reaches from its middle in the direction x, y."""
    c, s = math.cos(box[4]), math.sin(box[4])
    return abs(c * x + s * y) * box[2] / 2 + abs(c * y - s * x) * box[3] / 2


def place(
    choices: Iterable[tuple[float, float, float]],
    width: float,
    height: float,
    taken: list[Turned],
    limits: Box | None = None,
    ink: Ink | None = None,
) -> tuple[float, float, float]:
    """The first of `choices` (x, y, angle) whose box is free of `taken` and inside `limits`, else the first free one
    of ever wider rings around them, else the least bad. The box chosen is added to `taken`."""
    best: tuple[float, tuple[float, float, float]] | None = None
    crossing: tuple[float, tuple[float, float, float]] | None = None
    first: tuple[float, float, float] | None = None
    for choice in _with_rings(choices, width, height):
        first = first or choice
        # Better over a line nearby than far from what it names.
        far = math.hypot(choice[0] - first[0], choice[1] - first[1]) * height * 0.5
        if crossing is not None and far >= crossing[0]:
            continue
        lying = (choice[0], choice[1], width, height, choice[2])
        box = text_box(*lying)
        cost = 0.0
        for other in taken:
            cost += turned_overlap(lying, other)
        if limits is not None:
            cost += 2 * ((box[2] - box[0]) * (box[3] - box[1]) - overlap(box, limits))
        under = ink.under(choice[0], choice[1], width, choice[2]) if ink is not None else 0.0
        if cost < 1e-9:
            if under < 1e-9:
                taken.append(lying)
                return choice
            if crossing is None or under + far < crossing[0]:
                crossing = (under + far, choice)
        if best is None or cost + under < best[0]:
            best = (cost + under, choice)
    found = crossing or best
    assert found is not None, "choices is never empty"
    x, y, angle = found[1]
    taken.append((x, y, width, height, angle))
    return found[1]


def _with_rings(
    choices: Iterable[tuple[float, float, float]], width: float, height: float
) -> Iterable[tuple[float, float, float]]:
    first: tuple[float, float, float] | None = None
    for choice in choices:
        first = first or choice
        yield choice
    if first is None:
        return
    x, y, angle = first
    for ring in (1.6, 2.6, 3.6, 5.0, 7.0):
        for turn in range(12):
            way = turn * math.pi / 6
            along = math.cos(way) * (width * 0.35 + height * ring)
            across = math.sin(way) * height * ring
            for lie in (angle, 0.0) if angle else (0.0,):
                c, s = math.cos(lie), math.sin(lie)
                yield x + along * c - across * s, y + along * s + across * c, lie
