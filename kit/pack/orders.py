"""Orders in which to lay shapes, and how many of them to try.

A search is given so many shapes to lay in all its tries, never so much time, and its shuffles come from a fixed seed:
the same shapes always lie the same way, on a slow machine as on a quick one. It may be paused before each try, so that
whoever runs it in the background may stop it there.
"""

from __future__ import annotations

import random
from collections.abc import Hashable, Iterable, Iterator, Sequence
from typing import TypeVar

from kit.pausing import pause_here

T = TypeVar("T", bound=Hashable)

_SEED = 1


def chance(seed: int = _SEED) -> random.Random:
    """What shuffles are drawn from: the same ones in every search of that `seed`."""
    return random.Random(seed)


def tries(placed: int, shapes: int, fewest: int) -> int:
    """How many orders of so many `shapes` may be tried, if about `placed` are to be laid in all; at least `fewest`.

    >>> tries(600, 14, fewest=3), tries(600, 400, fewest=3)
    (42, 3)
    """
    return max(fewest, placed // max(1, shapes))


def attempts(plans: Iterable[T]) -> Iterator[T]:
    """The `plans`, each once, with a place to pause before it. A plan may depend on how those before it went: the
    next one is asked for only when the last has been tried.

    >>> list(attempts([(0, 1), (1, 0), (0, 1)]))
    [(0, 1), (1, 0)]
    """
    seen: set[T] = set()
    for plan in plans:
        if plan not in seen:
            seen.add(plan)
            pause_here()
            yield plan


def swapped(order: Sequence[int], chance: random.Random) -> tuple[int, ...]:
    """`order` with two places, which may be one and the same, changed about."""
    changed = list(order)
    one, two = chance.randrange(len(changed)), chance.randrange(len(changed))
    changed[one], changed[two] = changed[two], changed[one]
    return tuple(changed)


def near(order: Sequence[int], chance: random.Random) -> tuple[int, ...]:
    """`order` with two places changed about or, as often, one taken to another place."""
    one, two = chance.randrange(len(order)), chance.randrange(len(order))
    changed = list(order)
    if chance.random() < 0.5:
        changed[one], changed[two] = changed[two], changed[one]
    else:
        changed.insert(two, changed.pop(one))
    return tuple(changed)
