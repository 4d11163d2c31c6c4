"""Two rulers laid side by side: what a length reads on each, so that it reads the same wherever it is printed.

A length has one reading, a pair of whole millimetres and whole sixteenths of an inch. The lesson's own system is
rounded to what its ruler shows, and the other follows from that number alone: two lengths that print alike in the one
print alike in the other. Between the systems the roundest mark is taken that lies within 1 mm (or 0.25 in a hundred,
which is more from 40 cm on), as the trade does: 1 cm is 3/8 in, 1.5 cm 5/8 in, 2.5 cm 1 in (common practice, no
source).
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

System = Literal["cm", "inch"]
Style = Literal["draft", "allowance", "finished", "shop"]

SIXTEENTH = 25.4 / 16
_SOLD: dict[System, float] = {"cm": 100.0, "inch": 914.4 / 8}
_NEAR, _SHARE = 1.0, 0.0025  # how far a round mark may lie from the length: mm, or a share of it
_ROUND: dict[System, tuple[int, ...]] = {"cm": (10, 5, 1), "inch": (16, 8, 4, 2, 1)}
_MARK: dict[System, float] = {"cm": 1.0, "inch": SIXTEENTH}
_FINISHED: dict[System, int] = {"cm": 5, "inch": 4}

Agreed = Mapping[int, int]
"""Marks of a lesson's own ruler -> marks of the other, where the sizes of notions settle them."""


@dataclass(frozen=True)
class Ruling:
    """How lengths are read at present: `own` is the system the lesson is thought in ("" where nobody says), `alone`
    that no second reading stands in brackets, `agreed` readings that are settled."""

    own: System | Literal[""] = ""
    alone: bool = False
    agreed: Agreed = field(default_factory=lambda: MappingProxyType({}))


_PLAIN = Ruling()
_ruling: ContextVar[Ruling] = ContextVar("ruling", default=_PLAIN)


def ruling() -> Ruling:
    """How lengths are read at present."""
    return _ruling.get()


@contextmanager
def ruled(rule: Ruling) -> Iterator[None]:
    """Read lengths as `rule` says inside the block."""
    token = _ruling.set(rule)
    try:
        yield
    finally:
        _ruling.reset(token)


def other(system: System) -> System:
    """The other of the two systems."""
    return "inch" if system == "cm" else "cm"


def half_up(value: float) -> int:
    return math.floor(value + 0.5 + 1e-9)


def roundest(mm: float, system: System) -> int:
    """The roundest mark of a ruler near a length: whole millimetres, or sixteenths of an inch.

    >>> roundest(15.0, "inch"), roundest(230.0, "inch"), roundest(19.05, "cm")  # 5/8 in, 9 1/16 in, 2 cm
    (10, 145, 20)
    """
    mark, near = _MARK[system], max(_NEAR, mm * _SHARE)
    if mm < mark / 2:
        return 0
    for step in _ROUND[system]:
        count = half_up(mm / mark / step) * step
        if count and abs(count * mark - mm) <= near + 1e-9:
            return count
    return half_up(mm / mark)


def beside(mark: int, own: System) -> int:
    """The mark of the other ruler that stands beside a `mark` of the own one. Of two sixteenths that one round length
    in centimetres would stand beside only the nearer gets it, so that neither is taken for the other.

    >>> beside(15, "cm"), beside(10, "inch"), beside(9, "inch")  # 5/8 in, 1.5 cm; but 9/16 in is 1.4 cm
    (10, 15, 14)
    """
    mm = mark * _MARK[own]
    found = roundest(mm, other(own))
    if own == "inch" and roundest(float(found), "inch") != mark:
        near = max(_NEAR, mm * _SHARE)
        halves = (half_up(mm / step) * step for step in _ROUND["cm"])
        found = next((cm for cm in halves if abs(cm - mm) <= near and roundest(float(cm), "inch") == mark), half_up(mm))
    return found


def _shown(mm: float, system: System, style: Style) -> int:
    """The mark of its own ruler that a length is printed with: one that lies on the ruler exactly stays."""
    mark = _MARK[system]
    if style == "finished":
        step = _FINISHED[system]
        return half_up(mm / mark / step) * step
    exact = half_up(mm / mark)
    return exact if system == "cm" or abs(exact * mark - mm) < 1e-6 else roundest(mm, system)


def _own(mm: float, first: System) -> System:
    """The system a length is thought in: what is said at present, else metric, but for what is read in inches first
    and lies on a sixteenth."""
    on = first == "inch" and abs(half_up(mm) - mm) > 1e-6 > abs(half_up(mm / SIXTEENTH) * SIXTEENTH - mm)
    return ruling().own or ("inch" if on else "cm")


def reading(mm: float, first: System, style: Style = "draft") -> dict[System, int]:
    """What a length of `mm`, 0 or more, reads in both systems: whole millimetres, and sixteenths of an inch.

    >>> reading(15.0, "cm"), reading(28.5, "inch")  # 1.5 cm (5/8 in), 1 1/8 in (2.9 cm)
    ({'cm': 15, 'inch': 10}, {'cm': 29, 'inch': 18})
    """
    own = _own(mm, first)
    mark = _shown(mm, own, style)
    settled = ruling().agreed.get(mark)
    return {own: mark, other(own): beside(mark, own) if settled is None else settled}


def bought(mm: float) -> dict[System, int]:
    """Cloth to buy: tenths of a metre, eighths of a yard, each the least that is sold and no shorter than `mm`. They
    are two purchases, not two readings of one length: nobody should pay for what the other system rounds up.

    >>> bought(1530.0), bought(1220.0)  # 1.6 m or 1 3/4 yd, 1.3 m or 1 3/8 yd
    ({'cm': 16, 'inch': 14}, {'cm': 13, 'inch': 11})
    """
    return {system: math.ceil(mm / step - 1e-6) for system, step in _SOLD.items()}


def adds_up(parts: Sequence[float], whole: float, first: System) -> dict[System, bool]:
    """Whether parts of these mm, as they read, are the whole as it reads, in each system.

    >>> adds_up([10.0, 15.0], 25.0, "cm"), adds_up([10.0, 20.0], 30.0, "cm")  # 3/8 and 3/4 in are not 1 3/16 in
    ({'cm': True, 'inch': True}, {'cm': True, 'inch': False})
    """
    read, total = [reading(mm, first, "allowance") for mm in parts], reading(whole, first, "allowance")
    return {system: sum(each[system] for each in read) == total[system] for system in ("cm", "inch")}
