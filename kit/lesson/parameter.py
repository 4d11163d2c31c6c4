"""Parameters: the numbers a reader may change, each with its range, unit and reason."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.errors import KitError
from kit.lesson.pattern import Value
from kit.units import Size, System, both, percent

Kind = Literal["length", "share", "count"]
Setting = Size | float
"""What a parameter is set to: a length with its unit, or the number of a share or count."""


@dataclass(frozen=True)
class Parameter:
    """A parameter: `name` as steps use it; `default`, `least` and `most` in mm for a length, 0..1 for a
    share, whole for a count; `why` its reason; `said` the name as people say it."""

    name: str
    kind: Kind
    default: float
    least: float
    most: float
    why: str = ""
    said: str = ""

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

    def checked(self, value: float) -> float:
        """`value` when it is inside the range; `KitError` with the range otherwise."""
        slack = 1e-6
        if not self.least - slack <= value <= self.most + slack:
            raise KitError(
                f"{self.label} is {self.show(value)}, outside its range of "
                f"{self.show(self.least)} to {self.show(self.most)}.",
                do="Choose a value inside the range, or change the range where the parameter is defined.",
            )
        return float(value)

    def valued(self, value: float) -> Value:
        return Value(self.name, float(value), self.kind, self.default, self.least, self.most, self.why, self.said)
