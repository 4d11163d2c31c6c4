"""The numbers of a picture, and the list that says what they stand for, as far as its size goes.

A text that fits nowhere without covering something becomes a number. The list stands below the picture, or beside one
that is narrow for its room; in a row of it numbers follow one another as far as the row is wide.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from kit.picture.lettering import in_two, text_width

LINE = 1.45
"""From one line of the list to the next, in sizes of its type."""


def counted(told: Mapping[int, str], taken: Iterable[str]) -> dict[int, str]:
    """The number of each text of `told` (text by item), counted in the order of the items; letters where the picture
    has figures of its own among the texts `taken`. What reads alike has one number.

    >>> counted({4: "notch", 2: "tie place", 7: "notch"}, ["hem"])
    {2: '1', 4: '2', 7: '2'}
    >>> counted({2: "notch"}, ["3"])
    {2: 'a'}
    """
    texts = dict.fromkeys(told[index] for index in sorted(told))
    figures = any(text.isdigit() for text in taken)
    signs = [chr(ord("a") + n) for n in range(26)] if figures else [str(n) for n in range(1, 100)]
    sign = dict(zip(texts, signs, strict=False))
    return {index: sign[told[index]] for index in sorted(told) if told[index] in sign}


@dataclass(frozen=True)
class NumberList:
    """What stands for what: the number of items (`numbered`) and what each of them reads (`said`), in type of `size`
    px, between margins of `margin` px in a room `room` px wide (infinite where nothing bounds it)."""

    size: float
    room: float
    margin: float
    numbered: dict[int, str] = field(default_factory=dict)
    said: Mapping[int, str] = field(default_factory=dict)

    def __bool__(self) -> bool:
        return bool(self.numbered)

    def rows(self, width: float) -> list[list[tuple[int, float]]]:
        """The rows of the list, `width` px wide: (the first item of a number, where it begins in px)."""
        rows: list[list[tuple[int, float]]] = []
        at = math.inf
        for index in sorted({sign: index for index, sign in reversed(self.numbered.items())}.values()):
            wide = self._wide(index)
            if at + wide > width:
                rows.append([])
                at = 0.0
            rows[-1].append((index, at))
            at += wide if len(self.entry(index)) == 1 else math.inf
        return rows

    def entry(self, index: int) -> list[str]:
        """What a number stands for, in two lines where one is wider than the room."""
        text = self.said[index]
        fits = 1.9 * self.size + text_width(text, self.size) <= self.room - 2 * self.margin
        return [text] if fits else in_two(text).split("\n")

    def _wide(self, index: int) -> float:
        """px of a number, what it stands for, and the room after it."""
        return 1.9 * self.size + max(text_width(text, self.size) for text in self.entry(index)) + 1.4 * self.size

    @property
    def width(self) -> float:
        """px that the list needs at least; below zero without any number."""
        return max((self._wide(index) for index in self.numbered), default=-math.inf) + 2 * self.margin

    def height(self, width: float) -> float:
        """px that its rows need where they are `width` px wide."""
        count = sum(self.lines_in(row) for row in self.rows(width))
        return (count * LINE + 0.5) * self.size if count else 0.0

    def lines_in(self, row: list[tuple[int, float]]) -> int:
        """The lines of one row."""
        return max(len(self.entry(index)) for index, _ in row)
