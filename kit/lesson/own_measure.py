"""A measurement of a lesson's own: one the kit's table has not, with the words that say how it is taken and its value
in every size, so that it stands in chart, body form and booklet like any other."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, get_args

from kit.body.chart import SizeChart
from kit.body.measures import MEASUREMENTS, Measurement
from kit.diagnostic import message
from kit.errors import KitError, known_near
from kit.lesson.by_size import by_size
from kit.units import length

_LEAST, _MOST = 0.5, 1.8
"""How far from the chart's smallest and largest a person's may be, as a part of them: wide, to catch a slipped unit and
no unusual body (common practice, no source)."""
Kind = Literal["girth", "width", "height"]
"""Around, across, or along the body."""


@dataclass(frozen=True)
class OwnMeasure:
    """What it is (`measurement`, with its own words), its `values` (size, mm), and the `cell` and `run` that wrote
    it."""

    measurement: Measurement
    values: tuple[tuple[str, float], ...]
    cell: str = ""
    run: int = 0

    @property
    def name(self) -> str:
        return self.measurement.name

    def _ipython_display_(self) -> None:
        """Nothing: a cell that ends with it prints no output."""

    def added_to(self, chart: SizeChart) -> SizeChart:
        """The chart with it as a row. `KitError` for a chart of other sizes."""
        given = dict(self.values)
        left = [size for size in chart.names if size not in given]
        if left:
            raise KitError(f"{', '.join(left)} has no value.", where=f"Measurement '{self.name}'")
        return chart.with_own(self.measurement, tuple(given[size] for size in chart.names))


def own_measure(
    name: str,
    values: Any,
    note: str,
    said: str,
    kind: Kind | None,
    chart: SizeChart,
    cell: str = "",
    run: int = 0,
) -> OwnMeasure:
    """A measurement as its author wrote it; of the kit's table only the values, which a chart may lack. `KitError` for
    a name a step cannot use, for one without a note, for a `kind` there is not, and for values that are no lengths or
    do not stand for every size. Without a `kind` the end of the name tells it (`brow_girth`), else it is a height."""
    where = f"Measurement '{name}'"
    if not name.isidentifier():
        raise KitError(f"'{name}' cannot be used as a name in a step.", where=where, do="Use letters, digits and _.")
    known = MEASUREMENTS.get(name)
    if known is not None and (note or said or kind):
        raise KitError(
            f"the kit has '{known.said}' already, with a note of its own.",
            where=where,
            do="Leave note, said and kind out, or give yours another name.",
        )
    if known is None and not note.strip():
        raise KitError(
            "nobody knows how it is taken.", where=where, do='Say it: note="From the nape to the floor, without shoes."'
        )
    mm = tuple((size, float(length(value, where))) for size, value in by_size(values, chart, where))
    low, high = min(value for _, value in mm), max(value for _, value in mm)
    if low <= 0:
        raise KitError("it is nothing in some size.", where=where, do="Give a length above 0.")
    kinds, end = get_args(Kind), name.rsplit("_", 1)[-1]
    if kind is not None and kind not in kinds:
        raise KitError(message("body.no_such_kind", kind=str(kind)), where=where, do=known_near(str(kind), kinds))
    sort: str = kind or (end if end in kinds else "height")
    title = said.strip() or name.replace("_", " ")
    own = Measurement(name, low * _LEAST, high * _MOST, sort, "the lesson's own", title, note.strip())
    return OwnMeasure(known or own, mm, cell, run)
