"""Laying shapes on a ground one after another, each where it costs least.

What a place costs is not known here: a `Cost` finds, among the places where a shape is free to lie, the one it likes
best. A shape may lie in several ways (turned, mirrored); the cost is asked about each, and the cheapest is taken. Once
laid a shape is not moved again, so all depends on the order, and who packs tries several (`kit.pack.orders`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol, TypeVar

from kit.pack.footprint import Footprint
from kit.pack.taken import Taken


class Way(Protocol):
    """One way for a shape to lie: its footprint, and whatever a cost must know about it."""

    @property
    def footprint(self) -> Footprint: ...


W = TypeVar("W", bound=Way)
_W = TypeVar("_W", bound=Way, contravariant=True)


@dataclass(frozen=True)
class Fit:
    """A free place for the corner of a footprint. Less `worth` is better."""

    worth: int
    row: int
    column: int


class Cost(Protocol[_W]):
    """What it costs to lie somewhere. A cost may keep account of what has been laid, so each packing takes a new
    one."""

    def best(self, way: _W, taken: Taken, than: Fit | None) -> Fit | None:
        """The cheapest free place for `way`, if there is one that costs less than `than`."""

    def lay(self, way: _W, fit: Fit) -> bool:
        """`way` lies there now. False when what has been laid already costs more than is wanted."""


Place = tuple[int, int, int]
"""Which of a shape's ways, and the row and column of its corner."""


@dataclass(frozen=True)
class Packed:
    """Where the shapes lie, in the order given; `rows` of the ground are in use, and
    `order` is that in which they were laid."""

    places: tuple[Place, ...]
    rows: int
    order: tuple[int, ...]


def pack(shapes: Sequence[Sequence[W]], order: Sequence[int], columns: int, cost: Cost[W]) -> Packed | None:
    """Lay one of the ways of each of `shapes` on a ground of so many `columns`, in `order` (each shape's place among
    them once). None when a shape finds no place, or when the cost gives up.

    Deterministic: of ways that cost the same the first is taken.

    >>> import shapely
    >>> class Soonest:
    ...     def best(self, way, taken, than):
    ...         columns = range(taken.columns - way.footprint.columns + 1)
    ...         found = taken.soonest(way.footprint, columns, than.row if than else 100)
    ...         return found and Fit(found[0], *found)
    ...     def lay(self, way, fit):
    ...         return True
    >>> @dataclass(frozen=True)
    ... class Upright:
    ...     footprint: Footprint
    >>> square, bar = (Upright(Footprint.of(shapely.box(0, 0, *size), (1, 1))) for size in ((2, 2), (3, 1)))
    >>> pack([[square], [bar], [square]], (0, 1, 2), 5, Soonest())
    Packed(places=((0, 0, 0), (0, 0, 2), (0, 1, 2)), rows=3, order=(0, 1, 2))
    """
    taken = Taken(columns)
    places = [(0, 0, 0)] * len(shapes)
    for each in order:
        best: Fit | None = None
        chosen = 0
        for which, way in enumerate(shapes[each]):
            fit = cost.best(way, taken, best)
            if fit is not None:
                best, chosen = fit, which
        if best is None:
            return None
        way = shapes[each][chosen]
        taken.put(way.footprint, best.row, best.column)
        places[each] = (chosen, best.row, best.column)
        if not cost.lay(way, best):
            return None
    return Packed(tuple(places), taken.depth, tuple(order))
