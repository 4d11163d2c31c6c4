"""Strips on the bench: ties and loops, cut from a length and a width without a paper piece."""

from __future__ import annotations

from dataclasses import replace

from kit.errors import KitError
from kit.piece.piece import Strip
from kit.units import length


class BenchStrip:
    """A strip being worked out: cut without a paper piece, from a length and a width."""

    def __init__(self, name: str, title: str) -> None:
        self.strip = Strip(name, title, 0.0, 0.0, 0)

    def fold_in_four(
        self, *, finished_length: object, finished_width: object, ends: object = 0, count: int = 1, title: str = ""
    ) -> None:
        """A strip folded lengthwise into four: it finishes at a quarter of its cut width (common practice, no
        source). `ends` is added at each short end."""
        long, wide = length(finished_length, self.strip.title), length(finished_width, self.strip.title)
        extra = length(ends, self.strip.title)
        if long <= 0 or wide <= 0:
            raise KitError("a strip needs a length and a width.", where=self.strip.title)
        self.strip = replace(
            self.strip,
            title=title or self.strip.title,
            length=float(long + extra * 2),
            width=float(wide) * 4,
            count=count,
            finished_length=float(long),
            finished_width=float(wide),
            fold="in_four",
        )

    def freeze(self) -> Strip:
        """The strip as an immutable value; `KitError` when the step never gave its size."""
        if self.strip.count == 0:
            raise KitError(
                "its size was never given.", where=self.strip.title, do="Say, for example, fold_in_four(...)."
            )
        return self.strip
