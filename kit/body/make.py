"""A body from the measurements somebody took, the missing ones filled in from a size chart and said to be."""

from __future__ import annotations

from collections.abc import Mapping

from kit.body.body import Body, Measure
from kit.body.chart import KEYS, SizeChart, workshop_chart
from kit.body.measures import MEASUREMENTS, measurement, plausible
from kit.diagnostic import Told, measure, message
from kit.errors import KitError
from kit.units import Length, length


def make_body(values: Mapping[str, Length | str], chart: SizeChart | None = None, name: str = "") -> Body:
    """The body that measures `values` (lengths, or text such as "36 1/2 in").

    What is missing is read from `chart` (the workshop's own by default) at the place of the first girth known
    of bust, upper chest, hip and waist, straight between sizes and carried on past the ends, and marked as
    estimated. Heights along the body (back waist length, armscye depth, arm length and so on) are then scaled
    by the person's height against the chart's when the height was measured (common practice, no source). Bust
    and upper chest girth are different measurements: one is never taken for the other, but estimated from it.

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
        given = {key: _given(key, value) for key, value in values.items()}
    except KitError as error:
        raise error.at(label) from None
    key = next((k for k in KEYS if k in given and k in chart.table), None)
    if key is None:
        raise KitError(
            message("body.no_girth"),
            where=label,
            do=message("body.no_girth_do"),
        )
    place = chart.place(key, given[key])
    stature = _stature(given, chart, place)
    measures = []
    for row in MEASUREMENTS.values():
        if row.name in given:
            typed = values[row.name]
            text = typed.strip() if isinstance(typed, str) else ""
            measures.append(Measure(row.name, given[row.name], typed=text))
        elif row.name in chart.table:
            value = chart.read(row.name, place) * (stature if row.kind == "height" else 1.0)
            measures.append(Measure(row.name, min(max(value, row.least), row.most), estimated=True))
    return Body(name or "Body", tuple(measures))


def _given(name: str, value: Length | str) -> float:
    measurement(name)
    try:
        return plausible(name, float(length(value)))
    except KitError as error:
        raise error if error.where else error.at(message("refusal.here", place=measure(name))) from None


def _stature(given: Mapping[str, float], chart: SizeChart, place: float) -> float:
    if "height" not in given or "height" not in chart.table:
        return 1.0
    row = MEASUREMENTS["height"]
    return given["height"] / min(max(chart.read("height", place), row.least), row.most)
