"""Parameters: the numbers a reader may change, each with its range, unit and reason."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from numbers import Real
from typing import Any, Literal, cast

from kit.diagnostic import Value as Said
from kit.diagnostic import measured, message, per_cent
from kit.errors import KitError, near
from kit.lesson.pattern import ParameterValue
from kit.units import Length, Size, System, both, length, percent

Kind = Literal["length", "share", "count"]
Setting = Size | float
"""What a parameter is set to: a length with its unit, or the number of a share or count."""


Bound = Callable[..., Any]
"""A bound that follows from other values: its arguments name parameters and body measurements."""


@dataclass(frozen=True)
class Parameter:
    """A parameter: `name` as steps use it; `default`, `least` and `most` in mm for a length, 0..1 for a
    share, whole for a count; `why` its reason; `said` the name as people say it. `at_least` and `at_most` narrow that
    range by what other values leave (kit/lesson/bounds.py). `follows` (a function of measurements) or `sizes` (size,
    value) say what its own value follows from (kit/lesson/following.py)."""

    name: str
    kind: Kind
    default: float
    least: float
    most: float
    why: str = ""
    said: str = ""
    at_least: Bound | None = None
    at_most: Bound | None = None
    follows: Bound | None = None
    sizes: tuple[tuple[str, float], ...] = ()

    @property
    def is_following(self) -> bool:
        """Whether its own value follows from the body."""
        return self.follows is not None or bool(self.sizes)

    @property
    def label(self) -> str:
        return self.said or self.name.replace("_", " ")

    def _ipython_display_(self) -> None:
        """Nothing: a cell that ends with a parameter prints no output."""

    def show(self, value: float, system: System = "cm") -> str:
        """`value` as people read it."""
        if self.kind == "share":
            return percent(value)
        if self.kind == "count":
            return f"{value:.0f}"
        return both(value, system)

    def told(self, value: float) -> Said | str:
        """`value` as a value of a message."""
        if self.kind == "share":
            return per_cent(value)
        return f"{value:.0f}" if self.kind == "count" else measured(value)

    def checked(self, value: float) -> float:
        """`value` when it is inside the range; `KitError` with the range otherwise, and for what is no number."""
        slack = 1e-6
        if type(value) is float and self.least - slack <= value <= self.most + slack:
            return value  # as nearly always: a draft asks a dozen times
        try:
            number = math.nan if isinstance(value, bool) or not isinstance(value, Real) else float(value)
        except OverflowError:
            number = math.inf
        if not math.isfinite(number) and not isinstance(value, float):
            raise _no_number(value, self)
        if not self.least - slack <= value <= self.most + slack:
            raise KitError(
                message(
                    "refusal.out_of_range",
                    name=self.label,
                    value=self.told(value),
                    least=self.told(self.least),
                    most=self.told(self.most),
                ),
                do=message("refusal.out_of_range_do"),
            )
        return float(value)

    def read(self, value: Setting) -> float:
        """`value` as an author gives it (a length with its unit; a number, or text that is one), in mm, share or count
        and inside the range. `KitError` otherwise."""
        if self.kind == "length":
            return self.checked(float(length(cast("Size", value), self.name)))
        if isinstance(value, str):
            try:
                value = float(value)
            except ValueError:
                raise _no_number(value, self) from None
        return self.checked(cast("float", value))

    def valued(self, value: float) -> ParameterValue:
        return ParameterValue(
            self.name, float(value), self.kind, self.default, self.least, self.most, self.why, self.said
        )


def _no_number(value: object, parameter: Parameter) -> KitError:
    example = {"length": "mm, such as 25.0", "share": "a share, such as 0.7", "count": "a number, such as 3"}
    if isinstance(value, int) and not isinstance(value, bool):  # only one beyond every float comes here
        said = "a number of hundreds of digits"
    else:
        said = f"'{value[:40]}'" if isinstance(value, str) else repr(value)[:40]
    return KitError(f"{said} is no number it can take.", where=parameter.name, do=f"Write {example[parameter.kind]}.")


def parameter_of(
    name: str,
    kind: Kind,
    default: float,
    least: float,
    most: float,
    why: str = "",
    said: str = "",
) -> Parameter:
    """A parameter as its author wrote it, numbers in mm, share or count. `KitError` for a name a step cannot use, a
    range upside down and a default outside it."""
    where = f"Parameter '{name}'"
    if not name.isidentifier():
        raise KitError(f"'{name}' cannot be used as a name in a step.", do="Use letters, digits and _.")
    if least > most:
        raise KitError("the least value is larger than the most.", where=where, do="Swap them.")
    new = Parameter(name, kind, float(default), float(least), float(most), why, said)
    try:
        new.checked(new.default)
    except KitError as error:
        raise error.at(where) from None
    return new


def with_parameter(parameters: tuple[Parameter, ...], new: Parameter) -> tuple[Parameter, ...]:
    """`parameters` with `new` at the end, or in the place of the one of its name."""
    if any(p.name == new.name for p in parameters):
        return tuple(new if p.name == new.name else p for p in parameters)
    return (*parameters, new)


def given_values(parameters: Sequence[Parameter], values: Mapping[str, Setting]) -> dict[str, float]:
    """Values as an author gives them (a length with its unit), in mm, share or count. `KitError` for a name there is
    not, a bare length and what is out of its range."""
    by_name = {p.name: p for p in parameters}
    found = {}
    for name, value in values.items():
        if name not in by_name:
            raise KitError(f"there is no parameter '{name}'.", do=near(name, by_name))
        found[name] = by_name[name].read(value)
    return found


def in_units(parameters: Sequence[Parameter], values: Mapping[str, float]) -> dict[str, Setting]:
    """Plain numbers as an author gives them: a length with its unit. Names there are not are left out. `KitError` for
    a number outside its range."""
    by_name = {p.name: p for p in parameters}
    checked = {name: by_name[name].checked(value) for name, value in values.items() if name in by_name}
    return {name: Length(value) if by_name[name].kind == "length" else value for name, value in checked.items()}
