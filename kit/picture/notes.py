"""Text that belongs beside something: where it may stand, best place first. Where it does stand is for `fitted`."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from kit.geometry import Path, Point, Vector
from kit.picture.lettering import LEAST, upright

SMALL = 4.0
GAP = 1.0
"""Free paper around a text, mm on paper."""

Standing = tuple[Point, float]
Places = Callable[[float, float], Iterable[Standing]]
"""Where text of that width and type size may stand, best first."""


@dataclass(frozen=True)
class Note:
    """Text that belongs beside `anchor`. It is led outside where it fits at none of its `places`, or left out when
    not `needed`."""

    text: str
    anchor: Point
    places: Places
    sizes: tuple[float, ...] = (SMALL, LEAST)
    needed: bool = True


def beside(path: Path, shares: Sequence[float] = (0.72, 0.5, 0.3, 0.86, 0.14)) -> Places:
    """Along a line, on either side of it."""

    def places(_: float, size: float) -> Iterable[Standing]:
        for far in (0.85, 1.2):
            for share in shares:
                at, along = path.at(path.length * share), path.tangent_at(path.length * share)
                for side in (1.0, -1.0):
                    angle = upright(math.atan2(along.y, along.x))
                    up = Vector(-math.sin(angle), math.cos(angle)) * side
                    yield at + up * (size * far + GAP), angle

    return places


def around(point: Point, clear: float) -> Places:
    """Level, on any side of a point, `clear` mm from it, then turned."""

    def places(wide: float, size: float) -> Iterable[Standing]:
        for angle in (0.0, math.pi / 2):
            along, up = Vector(math.cos(angle), math.sin(angle)), Vector(-math.sin(angle), math.cos(angle))
            for far in (1.0, 1.8):
                out = clear * far + GAP + size * 0.2
                for a, b in ((1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1)):
                    yield point + along * (a * (wide / 2 + out)) + up * (b * (size * 0.6 + out)), angle

    return places
