"""Drafts that were stopped, so that nobody begins them again who was not asked to.

A lesson whose step does not end is asked for again by every view: the panel, what stands under the cells, a picture
that got another width. Each would wait anew, and want an *Interrupt* of its own. What was stopped is refused at once
to those who follow by themselves until a value, the body or a step is another one. A cell is run so that it does what
it says: there an interrupted draft is begun anew, and one that ran out of time after half a minute, as what was slow
once (a busy machine, a first import) need not be the next time. Where it comes to its end there, it does for all.
"""

from __future__ import annotations

import math
import time
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass

from kit.body.body import Body
from kit.errors import KitError
from kit.lesson.steps import Entry

_KEPT = 8
_REMEMBERED = 30.0  # seconds
LEASH = 0.5
"""Seconds that a draft nobody's cell asks for may take just after an *Interrupt*: moves of the slider that were on
their way when it was pressed ask for more of what was just stopped."""
_ON_ITS_WAY = 1.5  # seconds after an Interrupt
_WAY_BACK = 1.0  # seconds a draft may take on the way back from there, at least
_AS_LONG = 5.0  # times as long as the last that came to its end
_clock = time.monotonic

Asked = tuple[tuple[Entry, ...], Body, Mapping[str, float]]


@dataclass(eq=False)
class _Halt:
    """A draft of `asked` that was stopped at `since`, with what is told of it. `limit`: the seconds it was
    given, without end when somebody interrupted it. `tried`: by a search. `left`: its values are no longer the
    lesson's."""

    asked: Asked
    limit: float
    refusal: KitError
    since: float
    tried: bool = False
    left: bool = False

    @property
    def interrupted(self) -> bool:
        return self.limit == math.inf

    def begins(self, asked: Asked) -> bool:
        """Whether the same steps stand at the beginning of those `asked`."""
        entries = self.asked[0]
        return asked[0][: len(entries)] == entries

    def same(self, asked: Asked) -> bool:
        return self.asked[2] == dict(asked[2]) and self.begins(asked) and self.asked[1] == asked[1]


@dataclass(frozen=True, eq=False)
class _Took:
    """`entries` were drafted in `seconds`, the last time they came to their end."""

    entries: tuple[Entry, ...]
    seconds: float


_HALTS: list[_Halt] = []
_INTERRUPTED = [-math.inf]
_PRESSED: list[tuple[Entry, ...]] = []
"""Steps that were at work when *Interrupt* was pressed, until a draft with them that somebody sees comes to its end."""
_TOOK: list[_Took] = []


def halt(
    asked: Asked,
    culprit: Entry | None,
    refusal: KitError,
    limit: float = math.inf,
    *,
    pressed: bool = True,
    tried: bool = False,
) -> None:
    """A draft of `asked` was stopped in `culprit` (None: in the block): by hand, or after `limit` seconds. `pressed`:
    *Interrupt* was pressed for this very draft, not for one that it is more of. `tried`: a search tried it; it is
    stopped at many, and none of them takes the place of what somebody wanted to see."""
    entries, body, values = asked
    upto = entries.index(culprit) + 1 if culprit in entries else len(entries)
    _HALTS.append(_Halt((entries[:upto], body, dict(values)), limit, refusal, _clock(), tried))
    if len(_HALTS) > _KEPT:
        _forget(next((each for each in _HALTS if each.tried), _HALTS[0]))
    if limit == math.inf and pressed:
        _INTERRUPTED[0] = _clock()
        _PRESSED.append(entries[:upto])
        del _PRESSED[:-_KEPT]


def halted(asked: Asked, seconds: float, *, follows: bool) -> KitError | None:
    """What was told when the same was stopped before, with as much time as `seconds`; None when it is to be begun.
    `follows`: no cell asks, a view does by itself."""
    oldest = _clock() - _REMEMBERED
    for each in _HALTS:
        stands = follows and not each.left
        if not stands and (each.interrupted or each.since < oldest):
            continue
        if seconds <= each.limit and each.same(asked):
            return each.refusal
    return None


def ended(asked: Asked, took: float, *, seen: bool = True) -> None:
    """A draft of `asked` came to its end after `took` seconds: what was told of it before holds no more. `seen`: it is
    to be shown, and no try of a search."""
    for each in tuple(_HALTS):
        if took <= each.limit and each.same(asked):
            _forget(each)
    entries = asked[0]
    _TOOK[:] = [_Took(entries, took), *(each for each in _TOOK if each.entries != entries)][:_KEPT]
    if seen and _PRESSED:
        _PRESSED[:] = [steps for steps in _PRESSED if entries[: len(steps)] != steps]


def _forget(each: _Halt) -> None:
    with suppress(ValueError):  # another thread was faster
        _HALTS.remove(each)


def entries_before(asked: Asked) -> int:
    """How many entries can be worked before the one in which the same was stopped; 0 where it was not stopped."""
    return next((len(each.asked[0]) - 1 for each in _HALTS if each.same(asked) and each.asked[0]), 0)


def leashed() -> bool:
    """Whether somebody has just pressed *Interrupt*."""
    return _clock() - _INTERRUPTED[0] < _ON_ITS_WAY


def leash(asked: Asked) -> float:
    """Seconds that a draft of `asked` may take which a view follows by itself. After an *Interrupt* the slider is
    pulled back over more values at which the same step does not end, and none of them is to want an *Interrupt* of its
    own: until a draft of these steps comes to its end, each has a few times as long as they took before. Without end
    where nothing was interrupted, or nothing is known of these steps."""
    if leashed():
        return LEASH
    entries = asked[0]
    if not any(entries[: len(steps)] == steps for steps in _PRESSED):
        return math.inf
    return next((max(_WAY_BACK, _AS_LONG * each.seconds) for each in _TOOK if each.entries == entries), math.inf)


def moved_on(now: Callable[[], Asked]) -> None:
    """A lesson is set to other values, or another body, as `now` says: what was stopped for those it had may be tried
    once more when it comes back to them."""
    if _HALTS:
        asked = now()
        for each in _HALTS:
            each.left = each.left or (each.begins(asked) and not each.same(asked))
