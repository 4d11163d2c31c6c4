"""A body from the measurements somebody took, the missing ones filled in from a size chart and said to be."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from kit.body.body import Body, Measure
from kit.body.chart import SizeChart, workshop_chart
from kit.body.measures import MEASUREMENTS
from kit.diagnostic import Told, message
from kit.errors import KitError
from kit.units import Length, length

HIP_ABOVE = 0.8
"""The part of the body rise down to which an estimated hip lies, at most: above the crotch (common practice, no source;
of the 993 women the hip, at the fullest of the seat, lies at 0.74 of it in the middle: 2012 Anthropometric Survey of
U.S. Army Personnel, Gordon et al., NATICK/TR-15/007, 2014)."""


def make_body(values: Mapping[str, Length | str], chart: SizeChart | None = None, name: str = "") -> Body:
    """The body that measures `values` (lengths, or text such as "36 1/2 in").

    What is missing is read from `chart` (the workshop's own by default) at the place of the first girth known
    of bust, upper chest, hip and waist, straight between sizes and carried on past the ends, and marked as
    estimated. Heights along the body (back waist length, armscye depth, arm length and so on) are then scaled
    by the person's height against the chart's when the height was measured (common practice, no source); a body rise
    is what lies between a waist height and an inside leg where both were measured, and a hip never lies lower than
    `HIP_ABOVE` of a rise that is known. Bust and upper chest girth are
    different measurements: one is never taken for the other, but estimated from it.

    Raises `KitError` for an unknown measurement, a bare number, a value no person measures, or no girth.

    >>> from kit import cm
    >>> body = make_body({"bust_girth": 94 * cm, "waist_girth": "29 in"}, name="Ines")
    >>> body["bust_girth"], round(body["waist_girth"], 1)
    (940.0, 736.6)
    >>> body["hip_girth"], body.measures[0].estimated
    (1000.0, False)
    """
    chart = workshop_chart() if chart is None else chart
    label: Told = name or message("body.no_body_name")
    try:
        given = {key: _given(key, value, chart) for key, value in values.items()}
    except KitError as error:
        raise error.at(label) from None
    key = next((k for k in chart.keys if k in given), None)
    if key is None:
        raise KitError(
            message("body.no_girth"),
            where=label,
            do=message("body.no_girth_do"),
        )
    place = chart.place(key, given[key])
    stature = _stature(given, chart, place)
    measures = []
    for row in (*MEASUREMENTS.values(), *chart.own):
        if row.name in given:
            typed = values[row.name]
            text = typed.strip() if isinstance(typed, str) else ""
            measures.append(Measure(row.name, given[row.name], typed=text))
        elif row.name in chart.table:
            value = chart.read(row.name, place) * (stature if row.kind == "height" else 1.0)
            value = _between_heights(row.name, given, value)
            if row.name == "waist_to_hip":
                value = min(value, HIP_ABOVE * _rise(given, value / HIP_ABOVE))
            measures.append(Measure(row.name, min(max(value, row.least), row.most), estimated=True))
    return Body(name or "Body", tuple(measures))


def completed(body: Body, chart: SizeChart, names: Iterable[str] | None = None) -> Body:
    """`body` with every measurement of those `names` (None: the chart's `own`) that it has not: of a size its value, of
    anybody else an estimate, read at the place of the first girth that decides. Raises `KitError` for a value that no
    person measures.

    >>> from kit import cm
    >>> from kit.body.measures import Measurement
    >>> brow = Measurement("brow_girth", 400, 700, "girth", title="brow girth")
    >>> chart = workshop_chart().with_own(brow, tuple(530.0 + 5 * place for place in range(10)))
    >>> completed(make_body({"bust_girth": 90 * cm}), chart)["brow_girth"], completed(chart["W1"], chart)["brow_girth"]
    (545.0, 530.0)
    """
    found = []
    for row in chart.own if names is None else map(chart.measurement, names):
        if row.name in body:
            row.plausible(body[row.name])
        elif body.name in chart and not body.estimated:
            found.append(Measure(row.name, chart[body.name][row.name]))
        else:
            key = next((key for key in chart.keys if key in body), None)
            if key is not None:
                value = chart.read(row.name, chart.place(key, body[key]))
                found.append(Measure(row.name, min(max(value, row.least), row.most), estimated=True))
    return replace(body, measures=(*body.measures, *found)) if found else body


def _given(name: str, value: Length | str, chart: SizeChart) -> float:
    row = chart.measurement(name)
    try:
        return row.plausible(float(length(value)))
    except KitError as error:
        raise error if error.where else error.at(message("refusal.here", place=row.told)) from None


def _between_heights(name: str, given: Mapping[str, float], value: float) -> float:
    """The body rise of somebody whose waist height and inside leg were measured is what lies between the two
    (geometry; `kit.body.check` holds the three together); any other measurement is `value`, what the chart says."""
    if name == "body_rise" and "waist_height" in given and "inside_leg_length" in given:
        return given["waist_height"] - given["inside_leg_length"]
    return value


def _rise(given: Mapping[str, float], other: float) -> float:
    """The body rise, where it was measured or lies between two heights that were; else the `other`."""
    return given.get("body_rise", _between_heights("body_rise", given, other))


def _stature(given: Mapping[str, float], chart: SizeChart, place: float) -> float:
    if "height" not in given or "height" not in chart.table:
        return 1.0
    row = MEASUREMENTS["height"]
    return given["height"] / min(max(chart.read("height", place), row.least), row.most)
