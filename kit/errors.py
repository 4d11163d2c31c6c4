"""Messages a sewing teacher understands.

Everything the kit refuses is refused with a `KitError`: what is wrong (with its value), where, and what
to do about it. Widgets and the command line show `str(error)`; nobody is shown a traceback for bad input.
"""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches
from typing import Any, Self

from kit.diagnostic import Diagnostic, Told, list_of, message, within


class KitError(ValueError):
    """A refusal in plain words.

    `what` names the trouble and its value, `where` the step, piece, edge, file or measurement, `do` the way
    out; `where` and `do` may be empty. What a student can cause, with a slider, a measurement, a size, a file or a
    typed length, is given as a `Message` and said in the language that is spoken when it is read. What only an author
    can cause in code may be an English text, a sentence or phrase without line breaks. `told` is the whole as data.
    `example` is how the verb that refused is written, and where to read more; "" for any other refusal.

    >>> print(KitError("the hem is longer than the piece.", where="Front", do="Make it 3 cm."))
    Front: the hem is longer than the piece. Make it 3 cm.
    """

    def __init__(self, what: Told, *, where: Told = "", do: Told = "") -> None:
        self.told = Diagnostic("refused", "error", what, where, can=do)
        self.example = ""
        super().__init__(what, where, do)

    @property
    def what(self) -> str:
        """What is wrong, in the spoken language."""
        return self.told.what

    @property
    def where(self) -> str:
        """The place, in the spoken language."""
        return self.told.where

    @property
    def do(self) -> str:
        """The way out, in the spoken language."""
        return self.told.do

    def __str__(self) -> str:
        return f"{self.told} {self.example}".rstrip()

    def _render_traceback_(self) -> list[str]:
        """What a notebook shows instead of a traceback."""
        return [str(self)]

    def __reduce__(self) -> tuple[Any, ...]:
        return _again, (type(self), self.told.says, self.told.at, self.told.can, self.example)

    def at(self, where: Told) -> KitError:
        """The same refusal with `where` put in front of the place already known."""
        return type(self)(self.told.says, where=within(where, self.told.at), do=self.told.can).showing(self.example)

    def showing(self, example: str) -> Self:
        """The same refusal, with this example of the verb."""
        self.example = example
        return self


def _again(kind: type[KitError], what: Told, where: Told, do: Told, example: str = "") -> KitError:
    return kind(what, where=where, do=do).showing(example)


def known_near(name: str, known: Iterable[str]) -> Told:
    """The hint of `near`, to be said in the reader's language."""
    names = sorted(set(known))
    close = nearest(name, names)
    if close:
        return message("refusal.near", name=close)
    return message("refusal.known", names=list_of(names, "string")) if names else message("refusal.none")


def nearest(name: str, known: Iterable[str]) -> str:
    """The known name that `name` may have been meant for; empty when none is near."""
    return next(iter(get_close_matches(name, sorted(set(known)), n=1, cutoff=0.6)), "")


def near(name: str, known: Iterable[str]) -> str:
    """A closing hint for an unknown name: the nearest known one, else the list of all.

    >>> near("shoulder_tp", ["neck_point", "shoulder_tip"])
    "Did you mean 'shoulder_tip'?"
    """
    names = sorted(set(known))
    close = nearest(name, names)
    if close:
        return f"Did you mean '{close}'?"
    return f"Known here: {', '.join(names)}." if names else "There are none here yet."
