"""Messages a sewing teacher understands.

Everything the kit refuses is refused with a `KitError`: what is wrong (with its value), where, and what
to do about it. Widgets and the command line show `str(error)`; nobody is shown a traceback for bad input.
"""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches
from typing import Any


class KitError(ValueError):
    """A refusal in plain words.

    `what` names the trouble and its value, `where` the step, piece, edge, file or measurement, `do` the way
    out. All three are sentences or phrases without line breaks; `where` and `do` may be empty.
    """

    def __init__(self, what: str, *, where: str = "", do: str = "") -> None:
        self.what = what
        self.where = where
        self.do = do
        super().__init__(what, where, do)

    def __str__(self) -> str:
        head = f"{self.where}: {self.what}" if self.where else self.what
        return f"{head} {self.do}" if self.do else head

    def _render_traceback_(self) -> list[str]:
        """What a notebook shows instead of a traceback."""
        return [str(self)]

    def __reduce__(self) -> tuple[Any, ...]:
        return _again, (type(self), self.what, self.where, self.do)

    def at(self, where: str) -> KitError:
        """The same refusal with `where` put in front of the place already known."""
        place = f"{where}, {self.where}" if self.where else where
        return type(self)(self.what, where=place, do=self.do)


def _again(kind: type[KitError], what: str, where: str, do: str) -> KitError:
    return kind(what, where=where, do=do)


def nearest(name: str, known: Iterable[str]) -> str:
    """The known name that `name` may have been meant for; empty when none is near."""
    return next(iter(get_close_matches(name, sorted(set(known)), n=1, cutoff=0.6)), "")


def near(name: str, known: Iterable[str]) -> str:
    """A closing hint for an unknown name: the nearest known one, else the list of all."""
    names = sorted(set(known))
    close = nearest(name, names)
    if close:
        return f"Did you mean '{close}'?"
    return f"Known here: {', '.join(names)}." if names else "There are none here yet."
