"""Bounds of a parameter that follow from other values: "the hem drop is at least the opening and the hem rise".

The range of a slider is two numbers. What must hold between several values is a function beside it (`at_least`,
`at_most`) whose arguments name other parameters and body measurements; it is asked each time the lesson is worked,
and a setting that breaks it is refused before any step is, by the name of the slider and how far it may go.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Literal

from kit.body.body import Body
from kit.diagnostic import Message, Value, list_of, measure, measured, message
from kit.errors import KitError, near
from kit.lesson.author_function import check_names, given_by, names_of
from kit.lesson.parameter import Bound, Parameter
from kit.units import Length

Which = Literal["at_least", "at_most"]
_WAYS: tuple[Which, Which] = ("at_least", "at_most")
_SLACK = 1e-6


def bounded(parameter: Parameter, at_least: Bound | None, at_most: Bound | None) -> Parameter:
    """The parameter with the bounds its author wrote. `KitError` for what is no function or names no other value; a
    number belongs to the range itself (`least`, `most`)."""
    for which, bound in zip(_WAYS, (at_least, at_most), strict=True):
        if bound is not None:
            _check_bound(parameter.name, which, bound)
    return replace(parameter, at_least=at_least, at_most=at_most)


def _check_bound(name: str, which: str, bound: Bound) -> None:
    where = f"Parameter '{name}'"
    if not callable(bound):
        plain = which.removeprefix("at_")
        raise KitError(
            f"{which} is {bound!r}, not a function.",
            where=where,
            do=f"Write a fixed bound as {plain}=...; one that follows from others as {which}=lambda hem_rise: ...",
        )
    do = f"Write {which}=lambda hem_rise: ..."
    check_names(bound, f"{which} must name the values it follows from.", where, do)
    if name in names_of(bound):
        raise KitError(f"{which} of '{name}' follows from '{name}' itself.", where=where, do="Name other values.")


@dataclass(frozen=True)
class Known:
    """Every value a bound may follow from: `parameters` at their `values`, and the measurements of `body`."""

    parameters: Mapping[str, Parameter]
    values: Mapping[str, float]
    body: Body

    def __getitem__(self, name: str) -> Length | float:
        """A value by name, a length as one. `KitError` for a name there is not."""
        if name in self.parameters:
            value = self.values[name]
            return Length(value, name) if self.parameters[name].kind == "length" else value
        if name in self.body:
            return Length(self.body[name], name)
        every = [*self.parameters, *(measured.name for measured in self.body.measures)]
        raise KitError(f"there is no parameter or measurement '{name}'.", do=near(name, every))

    def said(self, name: str) -> Message | Value:
        """A value within a message: a parameter with what it is, a measurement by name."""
        if name not in self.parameters:
            return measure(name)
        parameter = self.parameters[name]
        return message("refusal.bound_cause", name=parameter.label, value=parameter.told(self.values[name]))


def bound_value(parameter: Parameter, which: Which, known: Known) -> float:
    """What a bound comes to: mm, share or count, on the round step of a slider that keeps it (1 mm, 1 per cent, 1).
    `KitError` for a name there is not, and for a function that stops or gives no such value."""
    bound: Bound = getattr(parameter, which)
    where = f"Parameter '{parameter.name}', {which}"
    plain = given_by(bound, known.__getitem__, parameter.kind, where)
    step = 0.01 if parameter.kind == "share" else 1.0
    whole = math.ceil(plain / step - _SLACK) if which == "at_least" else math.floor(plain / step + _SLACK)
    return whole * step


def outside(known: Known) -> KitError | None:
    """The refusal of the first value that breaks a bound following from others, None when all keep theirs. Raises
    `KitError` as `bound_value`."""
    for parameter in known.parameters.values():
        for which in _WAYS:
            if getattr(parameter, which) is None:
                continue
            value, end = known.values[parameter.name], bound_value(parameter, which, known)
            if value < end - _SLACK if which == "at_least" else value > end + _SLACK:
                causes = list_of([known.said(name) for name in names_of(getattr(parameter, which))], "list")
                name, told = parameter.label, _told(parameter, which, end)
                return KitError(
                    message(
                        f"refusal.bound_{which}", name=name, value=parameter.told(value), bound=told, causes=causes
                    ),
                    do=message(f"refusal.bound_{which}_do", name=name, bound=told),
                )
    return None


def _told(parameter: Parameter, which: Which, end: float) -> Value | str:
    """The end of a range as a value of a message, a length on the side that keeps it in both systems."""
    if parameter.kind != "length":
        return parameter.told(end)
    return measured(end, "least" if which == "at_least" else "most")


def narrowed(parameter: Parameter, known: Known) -> Parameter:
    """The parameter with the range that the other values leave it. Where they leave nothing, the range is the nearest
    end of the slider."""
    low, high = parameter.least, parameter.most
    if parameter.at_least is not None:
        low = min(max(low, bound_value(parameter, "at_least", known)), high)
    if parameter.at_most is not None:
        high = max(min(high, bound_value(parameter, "at_most", known)), low)
    return replace(parameter, least=low, most=high, default=min(max(parameter.default, low), high))
