"""Whether the ranges of a lesson's parameters hold: every value a slider offers must draft and pass the proof, alone,
and nearly every mixture of them.

A parameter is moved alone over its whole range while the others stand at the lesson's values: samples on whole steps of
its slider, both ends among them, and between a sample that is sound and its neighbour that is not the edge is found by
halving. What fails between two sound samples is not seen. Then mixtures are drawn at random, each value on a step of
its slider; the same number draws the same ones.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace

from kit.body.body import Body
from kit.errors import KitError
from kit.lesson.bounds import Known, narrowed
from kit.lesson.definition import Definition
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.lesson.scale import Scale
from kit.lesson.time_limit import LONGEST
from kit.lesson.working import Reworking
from kit.pausing import pause_here
from kit.proof.mending import mending
from kit.proof.prove import errors
from kit.units import System

_PATIENCE = 12.0  # times as long as a lesson gives itself
SAMPLES = 12
"""Values of one parameter that are tried, about, before the edges are looked for."""


@dataclass(frozen=True)
class RangeTried:
    """One parameter moved alone in one `size`: how many values were `tried`, those that fail with the reason
    (`failing`: value in mm, share or count, and text), and the stretch around the lesson's own value that holds, from
    `least` to `most`. Both are None where the lesson fails as it stands."""

    parameter: Parameter
    size: str
    tried: int
    failing: tuple[tuple[float, str], ...] = ()
    least: float | None = None
    most: float | None = None

    @property
    def whole(self) -> bool:
        """Whether all that was tried is sound."""
        return not self.failing


@dataclass(frozen=True)
class Mixture:
    """Values drawn at random in one `size`: what is wrong with them (`trouble`, empty when they are sound), whether
    they were `drafted` (what fails is then the proof), and whether a remedy was found (None: not looked for)."""

    size: str
    values: tuple[tuple[str, float], ...]
    trouble: str = ""
    drafted: bool = True
    mended: bool | None = None


def trouble_of(pattern: Pattern | None, refused: str) -> str:
    """What is wrong with a setting: the refusal, or the proof's first error; "" when it is sound."""
    if pattern is None:
        return refused
    return next((str(finding) for _, finding in errors(pattern)), "")


def reaches(
    definition: Definition, body: Body, values: Mapping[str, float], system: System = "cm", samples: int = SAMPLES
) -> Iterator[RangeTried]:
    """Every parameter of a lesson in turn, moved alone over its range for one body. Yields nothing but failures at the
    value that stands when the lesson fails there. Can be stopped at any `pause_here`.

    >>> from kit import Lesson, bodice_block, cm, mm, workshop_chart
    >>> lesson = Lesson("Vest", start=bodice_block)
    >>> slit = lesson.length("side_slit", 5 * cm, least=0 * cm, most=60 * cm)
    >>> @lesson.step("Mark the slit")
    ... def mark_slit(front, back, side_slit):
    ...     front.side.at(side_slit)
    ...     for piece in (front, back):
    ...         piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)
    >>> [reach] = reaches(lesson.definition, workshop_chart()["W4"], lesson.values)
    >>> reach.whole, reach.parameter.most > reach.most
    (False, True)
    """
    definition = _patient(definition.fitted(body))
    now = {parameter.name: values.get(parameter.name, parameter.default) for parameter in definition.parameters}
    try:
        again = Reworking(definition, body, now)
    except KitError as error:
        yield from (_stuck(parameter, body, now, str(error)) for parameter in definition.parameters)
        return
    if wrong := trouble_of(again.pattern, again.refused):
        yield from (_stuck(parameter, body, now, wrong) for parameter in definition.parameters)
        return
    known = Known({parameter.name: parameter for parameter in definition.parameters}, now, body)
    for parameter in definition.parameters:
        left = narrowed(parameter, known)  # a slider ends where the other values end it
        yield _moved(parameter, again, body, now[parameter.name], Scale(left, system), samples)


def stands_wrong(definition: Definition, body: Body, values: Mapping[str, float]) -> str:
    """What is wrong with a lesson at its own `values`, or with the body; "" when they are sound."""
    try:
        again = Reworking(_patient(definition.fitted(body)), body, values)
    except KitError as error:
        return str(error)
    return trouble_of(again.pattern, again.refused)


def _patient(definition: Definition) -> Definition:
    """With more time for each draft: nobody waits for one, and a machine that is busy makes no value wrong."""
    return replace(definition, time_limit=max(definition.time_limit, min(_PATIENCE * definition.time_limit, LONGEST)))


def _stuck(parameter: Parameter, body: Body, now: Mapping[str, float], why: str) -> RangeTried:
    return RangeTried(parameter, body.name, 1, ((now[parameter.name], why),))


def _moved(parameter: Parameter, again: Reworking, body: Body, now: float, scale: Scale, samples: int) -> RangeTried:
    found: dict[float, str] = {now: ""}

    def wrong(value: float) -> str:
        if value not in found:
            pause_here()
            pattern, _, refused = again.work({parameter.name: value})
            found[value] = trouble_of(pattern, refused)
        return found[value]

    own = scale.parameter
    steps = scale.within(own.least, own.most)
    stride = max(1, round(len(steps) / samples))
    values = sorted({own.least, own.most, *map(scale.at, steps[::stride])})
    for value in values:
        wrong(value)
    ends = []
    for side in ([v for v in values if v < now][::-1], [v for v in values if v > now]):
        good = now
        for value in side:
            if wrong(value):
                good = _edge(good, value, steps, scale, wrong)
                break
            good = value
        ends.append(good)
    failing = tuple((value, why) for value, why in sorted(found.items()) if why)
    return RangeTried(parameter, body.name, len(found), failing, *ends)


def _edge(good: float, bad: float, steps: range, scale: Scale, wrong: Callable[[float], str]) -> float:
    """The last step of the slider on the way from a `good` value to a `bad` one that is sound, by halving."""
    between = [scale.at(step) for step in steps if min(good, bad) < scale.at(step) < max(good, bad)]
    way = sorted(between, reverse=bad < good)
    low, high = -1, len(way)  # before the first: good; after the last: bad
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if wrong(way[middle]) else (middle, high)
    return good if low < 0 else way[low]


def mixtures(
    definition: Definition,
    body: Body,
    count: int,
    *,
    seed: int = 1,
    system: System = "cm",
    mend: bool = False,
) -> Iterator[Mixture]:
    """`count` settings drawn at random inside the ranges, each worked for one body. `mend`: for those that fail a
    remedy is looked for, which takes some fifty times as long as to work one. The draws are those of `seed` and the
    body's name. Can be stopped at any `pause_here`."""
    definition = _patient(definition.fitted(body))
    chance = random.Random(f"{seed} {body.name}")
    for _ in range(count):
        pause_here()
        values: dict[str, float] = {}
        try:
            values = drawn(definition, body, chance, system)
            again = Reworking(definition, body, values)
            drafted, trouble = again.pattern is not None, trouble_of(again.pattern, again.refused)
        except KitError as error:  # the block refuses this body
            drafted, trouble = False, str(error)
        mended = None
        if trouble and mend:
            mended = next(mending(definition, body, values, system=system, count=1), None) is not None
        yield Mixture(body.name, tuple(values.items()), trouble, drafted, mended)


def drawn(definition: Definition, body: Body, chance: random.Random, system: System = "cm") -> dict[str, float]:
    """A value for every parameter, each step of its slider as likely as any other. What has a bound that follows from
    other values is drawn after them, from what they leave."""
    by_name = {parameter.name: parameter for parameter in definition.parameters}
    values = {parameter.name: parameter.default for parameter in definition.parameters}
    free = [p for p in definition.parameters if p.at_least is None and p.at_most is None]
    for parameter in (*free, *(p for p in definition.parameters if p not in free)):
        scale = Scale(narrowed(parameter, Known(by_name, values, body)), system)
        steps = scale.within(scale.parameter.least, scale.parameter.most)
        values[parameter.name] = scale.at(chance.choice(steps)) if len(steps) else scale.parameter.default
    return values
