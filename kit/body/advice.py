"""Between sizes: which size of a chart to draw for a body, and where to go over to another.

The rules are common practice (no source): the shoulders and the bust decide, because they are the hardest to
alter; waist and hip are reached by blending along the side seam; lengths are altered between two levels.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from kit.body.body import Body
from kit.body.chart import KEYS, SizeChart
from kit.body.measures import MEASUREMENTS, said
from kit.errors import KitError
from kit.units import System, both

_FULLER = 50.0  # mm of bust beyond what the upper chest's size has, after which the bust is altered instead
_LENGTH = 10.0  # mm a length may differ before it is worth altering
_BETWEEN = 0.2  # of a step from the middle between two sizes: told as lying between


@dataclass(frozen=True)
class Fit:
    """One girth against the chart: `value` in mm, the nearest `size`, and `off` (mm, body less that size)."""

    name: str
    value: float
    size: str
    off: float


@dataclass(frozen=True)
class Advice:
    """The `size` to draw, how each girth `fits`, and the advice in `sentences`."""

    size: str
    fits: tuple[Fit, ...]
    sentences: tuple[str, ...]

    def __str__(self) -> str:
        return " ".join(self.sentences)


def advise(body: Body, chart: SizeChart, system: System = "cm") -> Advice:
    """Which size of `chart` to draw for `body`, and where to blend. Only measured girths count. Raises
    `KitError` when none of bust, upper chest, waist and hip girth was measured or stands in the chart."""
    taken = {m.name: m.value for m in body.measures if not m.estimated}
    fits = {name: _fit(name, taken[name], chart) for name in KEYS if name in taken and name in chart.table}
    if not fits:
        raise KitError(
            "no size can be advised without a girth.", where=body.name, do="Measure the bust, waist and hip girth."
        )
    lead, fuller = _lead(fits, chart)
    size = fits[lead].size
    sentences = [_draw(fits[lead], chart, system)]
    if fuller > 0:
        sentences.append(
            f"The bust is {both(fuller, system)} fuller than size {size} allows for: keep the shoulders of {size} and "
            "add at the bust."
        )
    sentences += _blends(fits, size, chart, lead, system)
    sentences += _lengths(taken, size, chart, system)
    return Advice(size, tuple(fits.values()), tuple(sentences))


def _fit(name: str, value: float, chart: SizeChart) -> Fit:
    row = chart.table[name]
    column = min(range(len(row)), key=lambda i: (abs(row[i] - value), -i))  # halfway: the larger
    return Fit(name, value, chart.sizes[column], value - row[column])


def _lead(fits: dict[str, Fit], chart: SizeChart) -> tuple[str, float]:
    """The girth that decides, and how much fuller (mm) the bust is when the upper chest does."""
    if "bust_girth" in fits and "upper_chest_girth" in fits:
        column = chart.sizes.index(fits["upper_chest_girth"].size)
        fuller = fits["bust_girth"].value - chart.table["bust_girth"][column]
        if fuller > _FULLER:
            return "upper_chest_girth", fuller
    return next(name for name in KEYS if name in fits), 0.0


def _draw(fit: Fit, chart: SizeChart, system: System) -> str:
    row = chart.table[fit.name]
    step = row[-1] - row[-2] if len(row) > 1 else 40.0
    by = f"the {said(fit.name)}, {both(fit.value, system)}"
    if fit.value > row[-1] + step / 2:
        return (
            f"Beyond the largest size by {by}: {fit.size} is {both(fit.off, system)} too small. Draft from your own "
            "measurements instead of a size."
        )
    step = row[1] - row[0] if len(row) > 1 else 40.0
    if fit.value < row[0] - step / 2:
        return (
            f"Below the smallest size by {by}: {fit.size} is {both(-fit.off, system)} too large. Draft from your own "
            "measurements instead of a size."
        )
    place = chart.place(fit.name, fit.value) if len(row) > 1 else 0.0
    left = int(place) if place > 0 else 0
    if abs(place - left - 0.5) < _BETWEEN and 0 < place < len(row) - 1:
        one, two = chart.sizes[left], chart.sizes[left + 1]
        return (
            f"Draw size {fit.size}: {by}, lies between {one} and {two}. For a loose shape {one} will do, for a close "
            f"one or firm cloth take {two}."
        )
    return f"Draw size {fit.size} by {by}."


def _blends(fits: dict[str, Fit], size: str, chart: SizeChart, lead: str, system: System) -> Iterator[str]:
    drawn = chart.sizes.index(size)
    for name, start in (("waist_girth", "the underarm"), ("hip_girth", "the waist")):
        fit = fits.get(name)
        if fit is None or fit.size == size or name == lead:
            continue
        way = "out" if chart.sizes.index(fit.size) > drawn else "in"
        yield (
            f"The {said(name)}, {both(fit.value, system)}, is that of {fit.size}: below {start} blend the side seam "
            f"{way} to {fit.size} at the {said(name).split()[0]}."
        )


def _lengths(taken: dict[str, float], size: str, chart: SizeChart, system: System) -> Iterator[str]:
    body = chart[size]
    for name, where in (
        ("back_waist_length", "between armpit and waist"),
        ("waist_to_hip", "between waist and hip"),
        ("arm_length", "along the sleeve, above the elbow"),
    ):
        if name not in taken or name not in body:
            continue
        off = taken[name] - body[name]
        if abs(off) >= _LENGTH:
            how = "lengthen" if off > 0 else "shorten"
            yield f"{MEASUREMENTS[name].said.capitalize()}: {how} by {both(abs(off), system)} {where}."
