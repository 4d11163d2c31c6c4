"""How often somebody may do something: a bucket that fills at a rate, and one for each device."""

from __future__ import annotations

import time
from collections import OrderedDict
from collections.abc import Callable

Clock = Callable[[], float]
_REMEMBERED = 2000
"""Devices that are remembered; the one not heard of for longest is forgotten first."""


class Bucket:
    """Holds `burst` at most and fills by `rate` a second."""

    def __init__(self, rate: float, burst: float, clock: Clock = time.monotonic) -> None:
        self.rate, self.burst, self._clock = rate, burst, clock
        self._held, self._at = burst, clock()

    def _fill(self) -> None:
        now = self._clock()
        self._held = min(self.burst, self._held + (now - self._at) * self.rate)
        self._at = now

    def take(self, count: float = 1.0) -> bool:
        """Take `count` out; False, and nothing is taken, when there is not as much."""
        self._fill()
        if self._held < count:
            return False
        self._held -= count
        return True

    @property
    def empty(self) -> bool:
        """Whether not one can be taken now."""
        self._fill()
        return self._held < 1.0


class Buckets:
    """A bucket for each device, by its address."""

    def __init__(self, rate: float, burst: float, clock: Clock = time.monotonic) -> None:
        self.rate, self.burst, self._clock = rate, burst, clock
        self._of: OrderedDict[str, Bucket] = OrderedDict()

    def of(self, device: str) -> Bucket:
        """The device's own."""
        if device not in self._of:
            self._of[device] = Bucket(self.rate, self.burst, self._clock)
            if len(self._of) > _REMEMBERED:
                self._of.popitem(last=False)
        self._of.move_to_end(device)
        return self._of[device]
