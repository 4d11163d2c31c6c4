"""How a parameter stands on a slider: in the shown unit, at round steps.

A slider counts in steps of 0.1 cm, 1/16 inch, 1 per cent or 1. The exact millimetre value stays with the lesson:
showing it on a slider never changes it, only moving the slider does.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.diagnostic import message
from kit.errors import KitError
from kit.lesson.parameter import Parameter
from kit.units import System, parse, show

_SLACK = 1e-6


@dataclass(frozen=True)
class Scale:
    """A slider's scale for `parameter`: `least` and `most` as numbers in the shown unit, rounded outward to
    whole steps of `step`."""

    parameter: Parameter
    system: System

    @property
    def per_unit(self) -> int:
        """Steps in one shown unit."""
        if self.parameter.kind != "length":
            return 1
        return 10 if self.system == "cm" else 16

    @property
    def unit(self) -> float:
        """One shown unit in mm, or as a share or count."""
        if self.parameter.kind == "length":
            return 10.0 if self.system == "cm" else 25.4
        return 0.01 if self.parameter.kind == "share" else 1.0

    @property
    def step(self) -> float:
        return 1 / self.per_unit

    @property
    def least(self) -> float:
        return math.floor(self.parameter.least / self.unit * self.per_unit + _SLACK) / self.per_unit

    @property
    def most(self) -> float:
        return math.ceil(self.parameter.most / self.unit * self.per_unit - _SLACK) / self.per_unit

    def number(self, value: float) -> float:
        """Where the exact `value` stands on the slider: at the nearest step. (A browser's slider moves to a
        step by itself and reports that as if somebody had moved it.)"""
        number = round(value / self.unit * self.per_unit) / self.per_unit
        return min(max(number, self.least), self.most)

    def same(self, one: float, other: float) -> bool:
        """Whether two numbers are the same place on the slider."""
        return abs(one - other) < self.step / 4

    def value(self, number: float) -> float:
        """The exact value the slider's `number` stands for; at its ends the parameter's own least and most."""
        value = self.at(round(number * self.per_unit))
        return min(max(value, self.parameter.least), self.parameter.most)

    def at(self, steps: int) -> float:
        """The exact value that stands `steps` steps from nothing; people are shown it without any rounding."""
        if self.parameter.kind == "length":
            return steps * (1.0 if self.system == "cm" else 25.4 / 16)
        return steps / 100 if self.parameter.kind == "share" else float(steps)

    def within(self, low: float, high: float) -> range:
        """The steps whose values lie from `low` to `high`."""
        per = self.per_unit / self.unit
        return range(math.ceil(low * per - _SLACK), math.floor(high * per + _SLACK) + 1)

    def text(self, value: float) -> str:
        """`value` as it stands in the text box."""
        return show(value, self.system) if self.parameter.kind == "length" else self.parameter.show(value)

    def other(self, value: float) -> str:
        """A length in the other system; nothing for a share or count."""
        if self.parameter.kind != "length":
            return ""
        return show(value, "inch" if self.system == "cm" else "cm")

    def read(self, text: str) -> float:
        """The value of what somebody typed: "9 1/2 in", "24 cm", "24", "70 %". Raises `KitError` when it
        cannot be read or lies outside the parameter's range."""
        where = self.parameter.label.capitalize()
        try:
            if self.parameter.kind == "length":
                return self.parameter.checked(float(parse(text, self.system)))
            return self.parameter.checked(self._plain(text))
        except KitError as error:
            raise error.at(where) from None

    def _plain(self, text: str) -> float:
        is_share = self.parameter.kind == "share"
        try:
            number = float(text.strip().removesuffix("%").strip().replace(",", "."))
        except ValueError:
            number = math.nan
        if not math.isfinite(number) or (not is_share and number != round(number)):
            raise KitError(
                message("refusal.not_a_share" if is_share else "refusal.not_a_count", text=text.strip()),
                do=message("refusal.not_a_share_do" if is_share else "refusal.not_a_count_do"),
            )
        return number / 100 if is_share else number
