"""Values by size: what an author gives for each size of the chart, as a mapping, a list in the order of the sizes, or
one value for all."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from kit.body.body import Body
from kit.body.chart import SizeChart
from kit.errors import KitError, near


def by_size(given: Any, chart: SizeChart, where: str) -> tuple[tuple[str, Any], ...]:
    """(size, value) for every size of the chart. `KitError` for a size there is not, and for one that has no value.

    >>> chart = SizeChart("Hats", ("S", "M"), (("head_girth", (550.0, 580.0)),))
    >>> by_size({"M": 2, "S": 1}, chart, "Crown"), by_size([1, 2], chart, "Crown")
    ((('S', 1), ('M', 2)), (('S', 1), ('M', 2)))
    """
    sizes = chart.names
    if isinstance(given, Mapping):
        for size in given:
            if size not in sizes:
                raise KitError(f"there is no size '{size}'.", where=where, do=near(str(size), sizes))
        left = [size for size in sizes if size not in given]
        if left:
            raise KitError(
                f"{', '.join(left)} {'has' if len(left) == 1 else 'have'} no value.",
                where=where,
                do="Give a value for each size of the chart.",
            )
        return tuple((size, given[size]) for size in sizes)
    if isinstance(given, Sequence) and not isinstance(given, str):
        if len(given) != len(sizes):
            raise KitError(
                f"{len(given)} values for {len(sizes)} sizes.",
                where=where,
                do=f"Give one value for each size, in this order: {', '.join(sizes)}.",
            )
        return tuple(zip(sizes, given, strict=True))
    return tuple((size, given) for size in sizes)


def read_at(values: tuple[tuple[str, float], ...], body: Body, chart: SizeChart) -> float | None:
    """The value for a body: of a size its own; of anybody else read straight between sizes at the place of the first
    girth that decides. None where neither is known."""
    named = dict(values)
    if body.name in named:
        return named[body.name]
    key = next((key for key in chart.keys if key in body), None)
    if key is None:
        return None
    numbers = [named[size] for size in chart.names if size in named]
    place = min(max(chart.place(key, body[key]), 0.0), len(numbers) - 1.0)
    left = min(int(place), max(len(numbers) - 2, 0))
    right = min(left + 1, len(numbers) - 1)
    return numbers[left] + (place - left) * (numbers[right] - numbers[left])
