"""Seats of a class: who was let in. A seat is counted before it is given, so that no two browsers get the last one.

A seat belongs to a browser by a random token in its cookie. It is not taken away from who is away for a moment; only
when somebody else asks and the room is full is the seat of one who never opened the page, or is gone for long, given
on.
"""

from __future__ import annotations

import secrets
import time
from collections.abc import Iterator
from dataclasses import dataclass, field

from kit.room.rates import Bucket, Clock

_UNUSED = 60.0  # seconds after which a seat whose page was never opened may be given on
_AWAY = 600.0  # seconds after which the seat of a page that is gone may be given on
_MESSAGES = (20.0, 60.0)  # a second, and at once
_FILES = (5.0, 120.0)
_MEGABYTES = (1.0, 40.0)  # of files given out: a page is 6


@dataclass
class Seat:
    """One student's: the `token` in the browser's cookie, its `number` in the room, the `device` it was given to, how
    many `lines` are open, when it was last `seen`, and what it may still ask for."""

    token: str
    number: int
    device: str
    seen: float
    lines: int = 0
    used: bool = False
    messages: Bucket = field(default_factory=lambda: Bucket(*_MESSAGES))
    files: Bucket = field(default_factory=lambda: Bucket(*_FILES))
    megabytes: Bucket = field(default_factory=lambda: Bucket(*_MEGABYTES))


@dataclass(frozen=True)
class NoSeat:
    """Why none was given: the room is "full", or this "device" has as many as one may have."""

    why: str


class Seats:
    """At most `limit` of them, and `per_device` for one device (0: as many as there are)."""

    def __init__(self, limit: int, per_device: int = 0, clock: Clock = time.monotonic) -> None:
        self.limit, self.per_device, self._clock = limit, per_device, clock
        self._taken: dict[str, Seat] = {}
        self._last = 0

    def __len__(self) -> int:
        return len(self._taken)

    def __iter__(self) -> Iterator[Seat]:
        return iter(tuple(self._taken.values()))

    def find(self, token: str) -> Seat | None:
        """The seat of that token."""
        return self._taken.get(token)

    def take(self, device: str) -> Seat | NoSeat:
        """A seat for a browser on `device`; nothing happens between counting and giving."""
        same = [seat for seat in self if seat.device == device]
        if self.per_device and len(same) >= self.per_device and not self._give_on(same):
            return NoSeat("device")
        if len(self._taken) >= self.limit and not self._give_on(list(self)):
            return NoSeat("full")
        self._last += 1
        seat = Seat(secrets.token_urlsafe(16), self._last, device, self._clock())
        self._taken[seat.token] = seat
        return seat

    def _give_on(self, among: list[Seat]) -> bool:
        """Free one seat among those; False when all are in use."""
        now = self._clock()
        free = [s for s in among if not s.lines and now - s.seen > (_AWAY if s.used else _UNUSED)]
        if not free:
            return False
        self.leave(min(free, key=lambda seat: seat.seen))
        return True

    def touch(self, seat: Seat) -> None:
        """Somebody was heard from that seat."""
        seat.seen = self._clock()

    def leave(self, seat: Seat) -> None:
        """The seat is free again; its token opens nothing any more."""
        self._taken.pop(seat.token, None)
