"""The finished measurements that a garment has by itself: how far round it is at each level of the body."""

from __future__ import annotations

from typing import NamedTuple

from kit.language import say
from kit.lesson.pattern import Pattern
from kit.sewing.order import sew
from kit.wear.dressing import sleeve_girth
from kit.wear.fit import levels_worn
from kit.wear.girth import Worn
from kit.wear.levels import GIRTHS
from kit.wear.worn import is_finished

_OWN = 5.0
"""mm within which a lesson's own finished measurement over the same part of the body is the same one."""


class Fitted(NamedTuple):
    """A girth of the finished garment, mm, over a body `measure`, and its ease: below zero where it is smaller."""

    measure: str
    girth: float
    ease: float

    @property
    def title(self) -> str:
        """What it is called, in the spoken language."""
        return say(f"wear.finished_{self.measure}")


def fitted(pattern: Pattern) -> tuple[Fitted, ...]:
    """The girths at bust, waist, hip and upper arm, closed as they are worn, in that order. Those that the lesson
    measures itself are left out, and all of a garment that is not sewn to its end or says nowhere where the body is.

    >>> from kit import bodice_block
    >>> from kit.lesson.lesson import Lesson
    >>> fitted(Lesson("Block", start=bodice_block).work())
    ()
    """
    if not pattern.sewing:
        return ()
    state, troubles = sew(pattern)
    if any(trouble.level == "error" for trouble in troubles) or not is_finished(pattern, state):
        return ()
    worn = Worn(pattern, state)
    found = {GIRTHS[level]: girth for level, girth in levels_worn(worn)}
    arm = sleeve_girth(worn) if worn.hung is not None else None
    if arm is not None:
        found["upper_arm_girth"] = arm
    own = dict(pattern.finished)
    told = {(name, own[title]) for title, name in pattern.over if title in own}
    rows = []
    for name in ("bust_girth", "waist_girth", "hip_girth", "upper_arm_girth"):
        girth = found.get(name)
        if girth is None or name not in pattern.body:
            continue
        if not any(measure == name and abs(value - girth) < _OWN for measure, value in told):
            rows.append(Fitted(name, girth, girth - pattern.body[name]))
    return tuple(rows)
