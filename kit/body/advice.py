"""Between sizes: which size of a chart to draw for a body, and where to go over to another.

The rules are common practice (no source): the shoulders and the bust decide, because they are the hardest to
alter; waist and hip are reached by blending along the side seam; lengths are altered between two levels.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from kit.body.between import SIGN
from kit.body.body import Body
from kit.body.chart import SizeChart
from kit.body.measures import said
from kit.body.proposed import Proposal, proposals
from kit.diagnostic import message
from kit.errors import KitError
from kit.language import say
from kit.units import System, both

_FULLER = 50.0  # mm of bust beyond what the upper chest's size has, after which the bust is altered instead
_LENGTH = 10.0  # mm a length may differ before it is worth altering
_BETWEEN = 0.2  # of a step from the middle between two sizes: told as lying between


@dataclass(frozen=True)
class GirthFit:
    """One girth against the chart: `value` in mm, the nearest `size`, and `off` (mm, body less that size)."""

    name: str
    value: float
    size: str
    off: float


@dataclass(frozen=True)
class Advice:
    """The `size` to draw, how each girth `fits`, the advice in `sentences`, and the fit `changes` the body asks for."""

    size: str
    fits: tuple[GirthFit, ...]
    sentences: tuple[str, ...]
    changes: tuple[Proposal, ...] = ()

    def __str__(self) -> str:
        return " ".join(self.sentences)


def advise(body: Body, chart: SizeChart, system: System = "cm") -> Advice:
    """Which size of `chart` to draw for `body`, where to blend, and which fit changes to make. Only what was measured
    counts. Raises `KitError` when none of bust, upper chest, waist and hip girth was measured or stands in the chart.

    >>> from kit import cm, make_body, workshop_chart
    >>> advice = advise(make_body({"bust_girth": 94 * cm}), workshop_chart())
    >>> advice.size, str(advice)
    ('W5', 'Draw size W5 by the bust girth, 94 cm (37 in).')
    """
    taken = {m.name: m.value for m in body.measures if not m.estimated}
    fits = {name: _fit(name, taken[name], chart) for name in chart.keys if name in taken}
    if not fits:
        raise KitError(message("body.no_advice"), where=body.name, do=message("body.no_advice_do"))
    lead, fuller = _lead(fits, chart)
    size = fits[lead].size
    sentences = [_draw(fits[lead], chart, system)]
    if fuller > 0:
        sentences.append(say("body.advice_fuller_bust", off=both(fuller, system), size=size))
    blends = list(_blends(fits, size, chart, lead, system))
    between = _between(fits, size) if blends else ""
    sentences += blends
    if between in chart:
        sentences.append(say("body.advice_one_draft", size=between))
    sentences += _lengths(taken, size, chart, system)
    changes = proposals(taken, chart[size], by_bust=lead == "bust_girth")
    if changes:
        told = "; ".join(change.told(system) for change in changes)
        sentences.append(say("body.advice_changes", size=size, changes=told))
    return Advice(size, tuple(fits.values()), tuple(sentences), changes)


def _fit(name: str, value: float, chart: SizeChart) -> GirthFit:
    row = chart.table[name]
    column = min(range(len(row)), key=lambda i: (abs(row[i] - value), -i))  # halfway: the larger
    return GirthFit(name, value, chart.sizes[column], value - row[column])


def _lead(fits: dict[str, GirthFit], chart: SizeChart) -> tuple[str, float]:
    """The girth that decides, and how much fuller (mm) the bust is when the upper chest does."""
    if "bust_girth" in fits and "upper_chest_girth" in fits:
        column = chart.sizes.index(fits["upper_chest_girth"].size)
        fuller = fits["bust_girth"].value - chart.table["bust_girth"][column]
        if fuller > _FULLER:
            return "upper_chest_girth", fuller
    return next(name for name in chart.keys if name in fits), 0.0


def _draw(fit: GirthFit, chart: SizeChart, system: System) -> str:
    row = chart.table[fit.name]
    told = {"measure": said(fit.name), "value": both(fit.value, system), "size": fit.size}
    step = row[-1] - row[-2] if len(row) > 1 else 40.0
    if fit.value > row[-1] + step / 2:
        return say("body.advice_beyond", told, off=both(fit.off, system))
    step = row[1] - row[0] if len(row) > 1 else 40.0
    if fit.value < row[0] - step / 2:
        return say("body.advice_below", told, off=both(-fit.off, system))
    place = chart.place(fit.name, fit.value) if len(row) > 1 else 0.0
    left = int(place) if place > 0 else 0
    if abs(place - left - 0.5) < _BETWEEN and 0 < place < len(row) - 1:
        return say("body.advice_between", told, smaller=chart.sizes[left], larger=chart.sizes[left + 1])
    return say("body.advice_draw", told)


def _blends(fits: dict[str, GirthFit], size: str, chart: SizeChart, lead: str, system: System) -> Iterator[str]:
    drawn = chart.sizes.index(size)
    for name, key in (("waist_girth", "body.advice_waist"), ("hip_girth", "body.advice_hip")):
        fit = fits.get(name)
        if fit is None or fit.size == size or name == lead:
            continue
        way = "out" if chart.sizes.index(fit.size) > drawn else "in"
        yield say(key, measure=said(name), value=both(fit.value, system), size=fit.size, way=way)


def _between(fits: dict[str, GirthFit], size: str) -> str:
    """The name of the size between that these blends make, as the chart knows it."""
    waist, hip = (fits.get(name) for name in ("waist_girth", "hip_girth"))
    at = waist.size if waist else ""
    below = hip.size if hip else at
    return SIGN.join((size, at, below) if at not in ("", below) else (size, below))


def _lengths(taken: dict[str, float], size: str, chart: SizeChart, system: System) -> Iterator[str]:
    body = chart[size]
    for name in ("back_waist_length", "waist_to_hip", "arm_length"):
        if name not in taken or name not in body:
            continue
        off = taken[name] - body[name]
        if abs(off) >= _LENGTH:
            measure = said(name)
            yield say(
                f"body.advice_{name}",
                measure=measure[:1].upper() + measure[1:],
                off=both(abs(off), system),
                way="longer" if off > 0 else "shorter",
            )
