"""Parameters that follow from the body: a value that is worked out from measurements, or stands for each size, until
somebody moves its slider."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from kit.body.body import NOBODY, Body
from kit.body.chart import SizeChart
from kit.diagnostic import Message, as_value, list_of, message
from kit.errors import KitError, near
from kit.lesson.author_function import check_names, given_by, names_of, number
from kit.lesson.by_size import by_size, read_at
from kit.lesson.parameter import Kind, Parameter, parameter_of
from kit.units import Length

_STEP = {"length": 1.0, "share": 0.01, "count": 1.0}


def follows(default: Any) -> bool:
    """Whether what an author gave as a parameter's own value is one that follows from the body."""
    return callable(default) or isinstance(default, Mapping | list | tuple)


def following_parameter(
    name: str, kind: Kind, default: Any, ends: tuple[float, float], words: tuple[str, str], chart: SizeChart
) -> Parameter:
    """A parameter whose own value is a function of measurements, or one value for each size of the chart (`kind`, its
    two `ends`, its `words`: why and said). It is worked out for every size: `KitError` where it cannot be, or comes to
    more or less than its range."""
    where = f"Parameter '{name}'"
    low, high = ends
    if callable(default):
        do = "Write lambda waist_girth: waist_girth / 2 + 40 * cm."
        check_names(default, "its function must name the measurements it follows from.", where, do)
        new = replace(parameter_of(name, kind, low, low, high, *words), follows=default)
    else:
        rows = by_size(default, chart, where)
        values = tuple((size, number(value, kind, f"{where}, size {size}")) for size, value in rows)
        new = replace(parameter_of(name, kind, low, low, high, *words), sizes=values)
    for body in chart.bodies():
        value = _value(new, body, chart)
        if value is not None and not low - 1e-6 <= value <= high + 1e-6:
            raise KitError(
                f"in size {body.name} it comes to {new.show(value)}, out of its range of {new.show(low)} to "
                f"{new.show(high)}.",
                where=where,
                do="Widen the range, or change what it follows from.",
            )
    return fitted(new, chart.bodies()[len(chart.names) // 2], chart)


def _value(parameter: Parameter, body: Body, chart: SizeChart) -> float | None:
    """What it comes to for a body, on the round step of a slider (1 mm, 1 per cent, 1); None where the body has no
    girth to place it by."""
    if parameter.follows is None:
        found = read_at(parameter.sizes, body, chart)
        # A size has just what its author gave; between sizes it is rounded.
        return found if found is None or body.name in chart.names else _rounded(found, parameter.kind)
    where = f"Parameter '{parameter.name}'"
    for name in followed(parameter):
        if name not in body:
            known = [row.name for row in body.measures]
            raise KitError(f"there is no measurement '{name}' to follow.", where=where, do=near(name, known))
    given = given_by(parameter.follows, lambda name: Length(body[name], name), parameter.kind, where)
    return _rounded(given, parameter.kind)


def _rounded(value: float, kind: Kind) -> float:
    step = _STEP[kind]
    return round(value / step) * step


def followed(parameter: Parameter) -> tuple[str, ...]:
    """The measurements a parameter follows from by a function."""
    return names_of(parameter.follows) if parameter.follows is not None else ()


def fitted(parameter: Parameter, body: Body, chart: SizeChart) -> Parameter:
    """The parameter with the value that follows from a body as its own, within its range; as it is where it follows
    from nothing, or nothing is known of the body."""
    if not parameter.is_following or body == NOBODY:
        return parameter
    value = _value(parameter, body, chart)
    return parameter if value is None else replace(parameter, default=min(max(value, parameter.least), parameter.most))


def fitted_all(parameters: Sequence[Parameter], body: Body, chart: SizeChart) -> tuple[Parameter, ...]:
    """Every parameter as for a body."""
    return tuple(fitted(parameter, body, chart) for parameter in parameters)


def told(parameter: Parameter, chart: SizeChart) -> Message | None:
    """What it follows from, as a sentence; None where it follows from nothing.

    >>> from kit import Lesson, bodice_block, cm
    >>> lesson = Lesson("Cape", start=bodice_block)
    >>> tie = lesson.length("tie", lambda waist_girth: waist_girth / 2, least=20 * cm, most=90 * cm)
    >>> tie.default, told(tie, lesson.sizes).key
    (402.0, 'panel.follows')
    """
    if parameter.follows is not None:
        names = [as_value(chart.measurement(name).told) for name in followed(parameter)]
        return message("panel.follows", measures=list_of(names, "list"))
    return message("panel.follows_size") if parameter.sizes else None
