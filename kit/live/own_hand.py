"""Whether a widget is being set by the kit itself, so that what it then reports is nobody's move.

A kernel may answer two widgets of one view in two threads (ipykernel 7.4 answers each in the thread that wrote to it
last). What the kit sets is reported in the thread that sets it: a report that comes in another one is a reader's, even
while the kit is setting something.
"""

from __future__ import annotations

import threading
from typing import Any


class OwnHand(threading.local):
    """True in the thread, and as long, as the kit sets something: `with hand: ...`."""

    def __init__(self) -> None:
        self._deep = 0

    def __enter__(self) -> None:
        self._deep += 1

    def __exit__(self, *_: object) -> None:
        self._deep -= 1

    def __bool__(self) -> bool:
        return self._deep > 0

    def put(self, part: Any, **traits: Any) -> None:
        """Set `traits` of a widget, in their order."""
        with self:
            for name, value in traits.items():
                setattr(part, name, value)
