"""A body: measurements by name, in millimetres, with what was estimated said so."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

from kit.language import say


@dataclass(frozen=True)
class Measure:
    """One measurement: `name` (ISO 8559-1 term in snake case, e.g. bust_girth), `value` in mm; `estimated`
    when it was filled in from a size chart instead of measured. `typed` is the text a person gave ("36 1/2 in"),
    kept so that a saved body reads as it was entered; it makes no difference to equality."""

    name: str
    value: float
    estimated: bool = False
    typed: str = field(default="", compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "value", float(self.value))


@dataclass(frozen=True)
class Body:
    """The measurements a lesson is worked for. `name` is a size ("W4") or a person's label.

    >>> from kit import workshop_chart
    >>> body = workshop_chart()["W4"]
    >>> body.said, "bust_girth" in body, body["bust_girth"]
    ('size W4', True, 900.0)
    """

    name: str
    measures: tuple[Measure, ...]

    @property
    def said(self) -> str:
        """As it is written on pieces and pages: "size W4", or "one size" for what is drawn without a body."""
        return say("body.one_size") if self == NOBODY else say("body.size", name=self.name)

    def __contains__(self, name: object) -> bool:
        return name in self._by_name

    def __getitem__(self, name: str) -> float:
        """The value in mm. Raises KeyError for a name the body has not."""
        return self._by_name[name]

    @cached_property
    def _by_name(self) -> dict[str, float]:
        """Each value by its name; of two of one name the first counts."""
        return {measure.name: measure.value for measure in reversed(self.measures)}

    @property
    def estimated(self) -> tuple[Measure, ...]:
        return tuple(measure for measure in self.measures if measure.estimated)


NOBODY = Body("one size", ())
"""Stands for the body where a lesson uses no measurement, as for a bag."""
