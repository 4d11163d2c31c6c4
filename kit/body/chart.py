"""Size charts: a table of measurements by size, and bodies read from it.

A chart file is plain CSV, one row a measurement and one column a size:

    unit,cm
    measure,W1,W2,W3
    bust_girth,78,82,86
    waist_girth,60.5,64,67.5

The `unit` line (cm, inch or mm) may be left out; cells are then cm. A cell may carry its own unit ("33 1/2 in").
Empty lines and lines starting with `#` are skipped. Sizes stand from small to large: main girths rise from
column to column, the others never fall.
"""

from __future__ import annotations

import csv
import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cache, cached_property
from importlib.resources import files
from itertools import pairwise
from pathlib import Path

from kit.body.between import SIGN, between, parts
from kit.body.body import Body, Measure
from kit.body.measures import MEASUREMENTS, Measurement, measurement, said
from kit.diagnostic import message
from kit.errors import KitError, known_near
from kit.units import both, parse

KEYS = ("bust_girth", "upper_chest_girth", "hip_girth", "waist_girth")
"""The girths a body's place in a chart is found by, the first one known winning."""

_UNITS = {"cm": 10.0, "mm": 1.0, "in": 25.4, "inch": 25.4, "inches": 25.4}


@dataclass(frozen=True)
class SizeChart:
    """Measurements by size. `sizes` are the column names; `rows` are (measurement, value in mm per size); `own` are
    those of a lesson's own that stand among them.

    `chart["W4"]` is that size's `Body`, `chart["W4/W6"]` one that is W4 above the waist and W6 below it (see
    `kit.body.between`). Raises `KitError` when built from rows that are no sound chart: an
    unknown measurement, a missing or implausible value, a girth that falls, no girth at all.

    >>> chart = SizeChart("Club", ("S", "M"), (("bust_girth", (840.0, 920.0)), ("waist_girth", (660.0, 740.0))))
    >>> chart["M"]["bust_girth"], chart.place("bust_girth", 880.0), "L" in chart
    (920.0, 0.5, False)
    """

    title: str
    sizes: tuple[str, ...]
    rows: tuple[tuple[str, tuple[float, ...]], ...]
    own: tuple[Measurement, ...] = ()

    def __post_init__(self) -> None:
        _check(self)

    @cached_property
    def table(self) -> dict[str, tuple[float, ...]]:
        """The rows by measurement name."""
        return dict(self.rows)

    @property
    def _columns(self) -> Iterator[tuple[str, tuple[float, ...]]]:
        """Each size with its values, in the order of the rows."""
        return zip(self.sizes, zip(*self.table.values(), strict=True), strict=True)

    @property
    def names(self) -> tuple[str, ...]:
        """The sizes' names, small to large."""
        return self.sizes

    @property
    def measures(self) -> tuple[str, ...]:
        """The measurements the chart has."""
        return tuple(name for name, _ in self.rows)

    @property
    def keys(self) -> tuple[str, ...]:
        """The girths a body's place is found by: those of `KEYS` that it has; without them, as in a chart of heads, its
        other girths. One of a lesson's own that does not rise from size to size tells no place."""
        known = tuple(name for name in KEYS if name in self.table)
        return known or tuple(name for name, row in self.rows if self._tells_place(name, row))

    def _tells_place(self, name: str, row: tuple[float, ...]) -> bool:
        if self.measurement(name).kind != "girth":
            return False
        # The table's own girths are held to rise when the chart is made; a lesson's own may be the same in two sizes.
        return name in MEASUREMENTS or all(one < other for one, other in pairwise(row))

    def measurement(self, name: str) -> Measurement:
        """What a measurement is, a lesson's own too. Raises `KitError` with the nearest name for one there is not."""
        return next((one for one in self.own if one.name == name), None) or measurement(name)

    def with_own(self, measurement: Measurement, values: tuple[float, ...]) -> SizeChart:
        """The chart with a measurement of a lesson's own, `values` in mm by size. Raises `KitError` as for any row."""
        rows = tuple(row for row in self.rows if row[0] != measurement.name)
        own = tuple(one for one in self.own if one.name != measurement.name)
        new = (*own, measurement) if measurement.title else own  # the kit's own need no words
        return replace(self, rows=(*rows, (measurement.name, values)), own=new)

    def __contains__(self, size: object) -> bool:
        return size in self.sizes or (isinstance(size, str) and parts(size, self.sizes) is not None)

    def __getitem__(self, size: str) -> Body:
        """That size's body, or one between two sizes. Raises `KitError` with the nearest name for a size the chart has
        not."""
        named = parts(size, self.sizes)
        if named is not None:
            columns = {each: dict(zip(self.table, column, strict=True)) for each, column in self._columns}
            values = between(columns, *named)
            return Body(SIGN.join(filter(None, named)), tuple(Measure(name, value) for name, value in values.items()))
        if size not in self.sizes:
            raise KitError(message("body.no_such_size", size=size), where=self.title, do=known_near(size, self.sizes))
        column = self.sizes.index(size)
        return Body(size, tuple(Measure(name, values[column]) for name, values in self.rows))

    def bodies(self) -> tuple[Body, ...]:
        """Every size's body, small to large."""
        return tuple(self[size] for size in self.sizes)

    def ordered(self, sizes: Iterable[str]) -> tuple[str, ...]:
        """Some of its sizes, and sizes between, from small to large: one between stands behind the smaller of its two.

        >>> workshop_chart().ordered(["W6", "W4/W6", "W4"])
        ('W4', 'W4/W6', 'W6')
        """

        def rank(size: str) -> tuple[int, str]:
            named = parts(size, self.sizes)
            least = min(self.sizes.index(each) for each in filter(None, named or (size,)))
            return least, size if named else ""

        return tuple(sorted(sizes, key=rank))

    def place(self, name: str, value: float) -> float:
        """Where `value` (mm) of a rising measurement stands among the columns: 0 is the first size, 1.5 halfway
        between the second and third; below 0 or beyond the last by carrying on the end's step."""
        row = self.table[name]
        if len(row) == 1:
            return 0.0
        left = sum(1 for edge in row[1:-1] if value >= edge)
        return left + (value - row[left]) / (row[left + 1] - row[left])

    def read(self, name: str, place: float) -> float:
        """The value (mm) of a measurement at a `place` among the columns, straight between sizes."""
        row = self.table[name]
        if len(row) == 1:
            return row[0]
        left = min(max(math.floor(place), 0), len(row) - 2)
        return row[left] + (place - left) * (row[left + 1] - row[left])

    def nearest(self, body: Body) -> Body:
        """The size whose main girths come closest to the measured ones of `body` (least squares). Raises
        `KitError` when the body and the chart share none of them.

        >>> from kit import cm, make_body, workshop_chart
        >>> workshop_chart().nearest(make_body({"bust_girth": 91 * cm})).name
        'W4'
        """
        measured = {m.name: m.value for m in body.measures if not m.estimated}
        shared = [name for name in self.keys if name in measured]
        if not shared:
            raise KitError(message("body.no_size_girth"), where=body.name, do=message("body.no_size_girth_do"))

        def distance(column: int) -> float:
            return sum((self.table[name][column] - measured[name]) ** 2 for name in shared)

        return self[self.sizes[min(range(len(self.sizes)), key=distance)]]


def _check(chart: SizeChart) -> None:
    if not chart.sizes:
        raise KitError("the chart has no sizes.", where=chart.title, do="Give one column for each size.")
    for size in chart.sizes:
        if not size or chart.sizes.count(size) > 1:
            raise KitError(
                f"the size name '{size}' is empty or stands twice.", where=chart.title, do="Name each column once."
            )
    seen: set[str] = set()
    girths: list[str] = []
    for name, values in chart.rows:
        where = f"{chart.title}, {next((one.said for one in chart.own if one.name == name), said(name))}"
        try:
            row = chart.measurement(name)
        except KitError as error:
            raise error.at(chart.title) from None
        if name in seen:
            raise KitError("the row stands twice.", where=where, do="Keep one of the two.")
        seen.add(name)
        if len(values) != len(chart.sizes):
            raise KitError(
                f"{len(values)} values for {len(chart.sizes)} sizes.", where=where, do="Give one value for each size."
            )
        for size, value in zip(chart.sizes, values, strict=True):
            try:
                row.plausible(value)
            except KitError as error:
                raise error.at(f"{chart.title}, size {size}") from None
        if row.kind == "girth" and name in MEASUREMENTS:
            girths.append(name)
            _rises(chart, name, values, where)
    if not girths:
        raise KitError(
            "the chart has no girth.",
            where=chart.title,
            do="A chart needs a girth of every size, such as a row bust_girth, or head_girth for hats.",
        )


def _rises(chart: SizeChart, name: str, values: tuple[float, ...], where: str) -> None:
    for i in range(1, len(values)):
        falls = values[i] < values[i - 1]
        if falls or (values[i] == values[i - 1] and name in chart.keys):
            raise KitError(
                f"it {'falls' if falls else 'stays'} from {both(values[i - 1])} in size {chart.sizes[i - 1]} "
                f"to {both(values[i])} in size {chart.sizes[i]}.",
                where=where,
                do="Order the sizes from small to large and check the two values.",
            )


# ---- reading ----------------------------------------------------------------------------------------------


def read_chart(text: str, title: str) -> SizeChart:
    """A chart from CSV text: a row for each measurement and a column for each size, from small to large, in cm unless
    a first line "unit,inch" or "unit,mm" says otherwise. Main girths rise from column to column, the others never
    fall; what a chart leaves out a lesson may bring (`lesson.measurement`). Raises `KitError` saying the row and
    column of a fault.

    >>> chart = read_chart("measure,S,M\\nbust_girth,84,92\\nwaist_girth,66,74", "Club")
    >>> chart.names, chart["M"]["waist_girth"]
    (('S', 'M'), 740.0)
    """
    lines = _lines(text)
    unit = "cm"
    if lines and lines[0][1][0].lower() == "unit":
        cells = lines.pop(0)[1]
        unit = cells[1].lower() if len(cells) > 1 else ""
        if unit not in _UNITS:
            raise KitError(f"the unit '{unit}' is not known.", where=title, do="Write cm, mm or inch after 'unit'.")
    if not lines or lines[0][1][0].lower() != "measure":
        first = lines[0][1][0] if lines else ""
        raise KitError(
            f"the first column is headed '{first}', not 'measure'.",
            where=title,
            do="Start with a line: measure, then the name of each size.",
        )
    _, header = lines.pop(0)
    sizes = tuple(header[1:])
    return SizeChart(title, sizes, tuple(_row(cells, line, sizes, unit, title) for line, cells in lines))


def load_chart(path: str | Path, title: str = "") -> SizeChart:
    """A chart from a CSV file; `title` is the file's name when left out. Raises `KitError` for a file that
    cannot be read or is no chart.

    >>> import tempfile
    >>> from pathlib import Path
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     file = Path(folder, "club.csv")
    ...     _ = file.write_text("measure,S,M\\nbust_girth,84,92\\nwaist_girth,66,74")
    ...     print(load_chart(file).names)
    ('S', 'M')
    """
    path = Path(path)
    try:
        text = path.read_text("utf-8-sig")
    except FileNotFoundError:
        raise KitError("there is no such file.", where=str(path), do="Check the name of the size chart.") from None
    except UnicodeDecodeError:
        raise KitError("the file is not plain text.", where=str(path), do="Save the chart as CSV (UTF-8).") from None
    except OSError as error:
        raise KitError(f"the file cannot be read ({error.strerror}).", where=str(path)) from None
    return read_chart(text, title or path.name)


@cache
def workshop_chart() -> SizeChart:
    """The workshop's own invented size range, W1 to W10.

    >>> chart = workshop_chart()
    >>> chart.names[0], chart.names[-1], chart["W3"]["bust_girth"]
    ('W1', 'W10', 860.0)
    """
    text = files("kit.body").joinpath("data", "workshop_sizes.csv").read_text("utf-8")
    return read_chart(text, "Workshop sizes")


def _lines(text: str) -> list[tuple[int, list[str]]]:
    found = []
    for number, line in enumerate(text.splitlines(), 1):
        tidy = [cell.strip() for cell in next(csv.reader([line]), [])]
        while tidy and not tidy[-1]:
            tidy.pop()
        if tidy and not tidy[0].startswith("#"):
            found.append((number, tidy))
    return found


def _row(cells: list[str], line: int, sizes: tuple[str, ...], unit: str, title: str) -> tuple[str, tuple[float, ...]]:
    name, texts = cells[0], cells[1:]
    if len(texts) > len(sizes):
        raise KitError(
            f"line {line} ({name}) has {len(texts)} values for {len(sizes)} sizes.",
            where=title,
            do="Take out the extra ones or name their columns.",
        )
    padded: Iterable[str] = [*texts, *[""] * (len(sizes) - len(texts))]
    return name, tuple(
        _cell(text, unit, f"{title}, line {line} ({name}), column {size}")
        for text, size in zip(padded, sizes, strict=True)
    )


def _cell(text: str, unit: str, where: str) -> float:
    if not text:
        raise KitError("the value is missing.", where=where, do="Give a value for every size.")
    try:
        if unit == "mm" and text[-1].isdigit():
            text = f"{text} mm"
        return float(parse(text, "inch" if unit.startswith("in") else "cm"))
    except KitError:
        raise KitError(f"'{text}' is not a measurement.", where=where, do="Type a number, such as 92.5.") from None
