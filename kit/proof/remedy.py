"""A remedy: which values to change, and how far, so that a draft that fails can be drafted and sewn.

Remedies are found by trying (kit/proof/mending.py). Every number a remedy shows was worked and proved as it is printed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Literal

from kit.diagnostic import Message, list_of, message
from kit.lesson.parameter import Kind
from kit.units import Length, System, both_said, percent, show

Way = Literal["least", "most", "to"]
_NAMED = 4  # values to go back to that are named one by one


@dataclass(frozen=True)
class RemedyChange:
    """One parameter moved: its `name` in steps, its `label`, the value it `was` and the `value` that mends (mm, share
    or count; in the step of a slider that counts in `system`). `other` is a length that mends too and reads round in
    the other system, None where there is none. `way`: "least" or "most" where all looked at beyond mends as well."""

    name: str
    label: str
    kind: Kind
    was: float
    value: float
    system: System = "cm"
    other: float | None = None
    way: Way = "to"

    @property
    def shown(self) -> str:
        """The value that mends, as people read it. Each system is rounded to the side that mends."""
        return _shown(self.kind, self.value, self.value if self.other is None else self.other, self.system, self.other)

    @property
    def shown_before(self) -> str:
        return _shown(self.kind, self.was, self.was, self.system, self.was)

    def as_dict(self) -> dict[str, Any]:
        """For a report: lengths in mm."""
        return {
            "parameter": self.name,
            "from": round(self.was, 4),
            "to": round(self.value, 4),
            "way": self.way,
        }


@dataclass(frozen=True)
class Remedy:
    """`changes` that mend a draft when all of them are made. `back`: they go back to values known to be good."""

    changes: tuple[RemedyChange, ...]
    back: bool = False

    @property
    def single(self) -> bool:
        """Whether one value alone mends."""
        return len(self.changes) == 1 and not self.back

    @property
    def names(self) -> tuple[str, ...]:
        """The parameters it changes."""
        return tuple(change.name for change in self.changes)

    @property
    def values(self) -> dict[str, float]:
        """The changed parameters with the values that mend, as `lesson.change` takes them."""
        return {
            change.name: Length(change.value, change.name) if change.kind == "length" else change.value
            for change in self.changes
        }

    def __str__(self) -> str:
        return str(self.told)

    @property
    def told(self) -> Message:
        """What to do, to be said."""
        if self.single:
            (one,) = self.changes
            label = one.label[:1].upper() + one.label[1:]
            return message(f"remedy.{one.way}", name=label, value=one.shown, was=one.shown_before)
        if self.back and len(self.changes) > _NAMED:
            return message("remedy.back_many", count=len(self.changes))
        each = [message("remedy.each", name=change.label, value=change.shown) for change in self.changes]
        return message("remedy.back" if self.back else "remedy.together", changes=list_of(each, "parted"))

    def _repr_pretty_(self, printer: Any, cycle: bool) -> None:
        printer.text(str(self))

    def as_dict(self) -> dict[str, Any]:
        """For a report: the sentence, and the changes with lengths in mm."""
        return {"says": str(self), "back": self.back, "changes": [change.as_dict() for change in self.changes]}


def heading(found: Sequence[Remedy]) -> str:
    """What stands over remedies when the search is done."""
    singles = sum(remedy.single for remedy in found)
    if singles:
        return str(message("remedy.one_of", count=singles))
    return str(message("remedy.no_single", count=len(found)) if found else message("remedy.none"))


def latest(found: Sequence[Remedy]) -> tuple[Remedy, ...]:
    """Each remedy as it was yielded last, in the order they came in first."""
    return tuple({(remedy.names, remedy.back): remedy for remedy in found}.values())


def _shown(kind: Kind, value: float, other: float, system: System, both: float | None) -> str:
    if kind == "share":
        return percent(value)
    if kind == "count":
        return f"{value:.0f}"
    second: System = "inch" if system == "cm" else "cm"
    first = show(value, system)
    return first if both is None else both_said(first, show(other, second))
