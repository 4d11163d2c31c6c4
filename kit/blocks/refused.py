"""What is said where two measurements do not go together in a block: which, and with what value of either the block
can be drafted. The values are found by trying, as a block's own figures are: every one told was drafted."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import lru_cache, partial
from typing import TypeVar

from kit.body.body import Body
from kit.body.measures import MEASUREMENTS
from kit.diagnostic import Message, list_of, measure, measured, message
from kit.errors import KitError
from kit.forgetting import forgettable

Plan = Callable[[Body], object]
Planned = TypeVar("Planned")

_FAR = (0.02, 0.05, 0.1, 0.17, 0.3)
"""How far from a measurement values are tried, as a part of it, nearest first: a tape read wrongly by a hand's breadth
lies within."""
_HALVINGS = 5


class TwoRefused(KitError):
    """Two measurements that do not go together: `names` are the two, each as the body has it."""

    names: tuple[str, str] = ("", "")


def refusal(body: Body, name: str, trouble: str, against: str) -> TwoRefused:
    """What is said of two measurements that do not go together; `trouble` is the end of a key."""
    what = message(
        "blocks.two_refused",
        one=measure(name),
        one_value=measured(body[name]),
        other=measure(against),
        other_value=measured(body[against]),
        trouble=message(f"blocks.refused_{trouble}"),
    )
    guessed = [measure(n) for n in (name, against) if any(m.name == n for m in body.estimated)]
    error = TwoRefused(
        message("blocks.estimated", what=what, measures=list_of(guessed)) if guessed else what,
        where=message("refusal.here", place=measure(name)),
        do=message("blocks.two_refused_do", one=measure(name), other=measure(against)),
    )
    error.names = (name, against)
    return error


def telling(plan: Callable[[Body], Planned]) -> Callable[[Body], Planned]:
    """A plan of a body, worked once for each body, whose refusals of two measurements tell what goes: of either
    measurement the nearest value, larger or smaller, with which it can be planned."""

    @forgettable(32)
    def told(body: Body) -> Planned:
        try:
            return plan(body)
        except TwoRefused as error:
            ways = [way for name in error.names if (way := _goes(plan, body, name)) is not None]
            if not ways:
                raise
            one, other = (measure(name) for name in error.names)
            kind = "one" if len(ways) == 1 else "two"
            more = {"second": ways[1]} if len(ways) > 1 else {}
            do = message(f"blocks.goes_{kind}_do", one=one, other=other, first=ways[0], **more)
            raise KitError(error.told.says, where=error.told.at, do=do) from None

    return told


def telling_by(plan: Callable[[tuple[float, ...], Body], Planned]) -> Callable[..., Planned]:
    """The same of a plan that also follows from numbers (ease, shares): it is called with the body and the numbers."""

    @lru_cache(maxsize=16)  # numbers a slider went through; what was worked for a body is kept within, and forgotten
    def by(*numbers: float) -> Callable[[Body], Planned]:
        return telling(partial(plan, numbers))

    def told(body: Body, *numbers: float) -> Planned:
        return by(*map(float, numbers))(body)

    return told


def nearest_fit(plan: Plan, body: Body, name: str) -> float | None:
    """The value of a measurement, in whole mm, nearest to the body's own with which the body can be planned; None where
    none is found within three tenths of it, or none that a person measures."""
    row, own = MEASUREMENTS.get(name), body[name]
    least, most = (row.least, row.most) if row is not None else (0.0, math.inf)

    def goes(value: float) -> bool:
        if not least <= value <= most:
            return False
        try:
            plan(_with(body, {name: value}))
        except KitError:
            return False
        return True

    before = own
    for far in _FAR:
        for way in (1, -1):
            value = _whole(own * (1 + way * far), way)
            if goes(value):
                nearer = own + (before - own) * way  # what failed last on this side
                for _ in range(_HALVINGS):
                    middle = _whole((nearer + value) / 2, way)
                    nearer, value = (nearer, middle) if goes(middle) else (middle, value)
                return value
        before = own * (1 + far)
    return None


def _goes(plan: Plan, body: Body, name: str) -> Message | None:
    value = nearest_fit(plan, body, name)
    if value is None:
        return None
    return message(
        "blocks.goes_with", measure=measure(name), value=measured(value, "least" if value > body[name] else "most")
    )


def _whole(value: float, way: int) -> float:
    """The next whole mm, up or down."""
    return float(math.ceil(value) if way > 0 else math.floor(value))


def _with(body: Body, values: Mapping[str, float]) -> Body:
    """The body as it is when those values were measured."""
    return replace(
        body,
        measures=tuple(
            replace(each, value=values[each.name], estimated=False) if each.name in values else each
            for each in body.measures
        ),
    )
