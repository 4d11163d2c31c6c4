"""The sentence of a step below its picture in a clip: in the lower third of the frame, where a caption bar stands in a
film. The picture keeps the rest, so that no word covers a line.

The bar is white with dark letters on every ground, so that it stays when a flat ground is keyed out. What does not fit
is shown part after part in a clip; in a still the letters become smaller until all of it fits.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

from kit.live.captions import held
from kit.picture.raster import width_of
from kit.picture.theme import INK, PAPER
from kit.units import set_fractions

LETTER = 0.034
"""Height of the letters, of the frame's shorter side: 37 px of 1080."""
_LEADING, _TITLE, _PAD = 1.3, 1.12, 0.9  # of the letters' height
_TALLEST = 1 / 3
_RULE = 0.05  # of the letters' height: a line parts the bar from a white ground
_OPEN = re.compile(r'^<svg\b([^>]*?) width="[^"]*" height="[^"]*"')


@dataclass(frozen=True)
class Bar:
    """A bar `size` (px) wide and high, with letters `letter` px high: the `title` above, and the words, a row for each
    line, in as many `parts` as are shown one after another."""

    size: tuple[int, int]
    letter: float
    title: tuple[str, ...]
    parts: tuple[tuple[str, ...], ...]

    def svg(self, part: int) -> str:
        """The bar with that part of the words."""
        wide, high = self.size
        y = self.letter * _PAD
        texts: list[str] = []
        for row in self.title:
            y += self.letter * _TITLE
            texts.append(_row(row, self.letter * _PAD * 1.4, y, self.letter * _TITLE, bold=True))
            y += self.letter * (_LEADING - 1)
        for row in self.parts[part]:
            y += self.letter * _LEADING
            texts.append(_row(row, self.letter * _PAD * 1.4, y - self.letter * 0.15, self.letter))
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}" height="{high}" viewBox="0 0 {wide} {high}">'
            f'<rect x="0" y="0" width="{wide}" height="{high}" fill="{PAPER}"/>'
            f'<rect x="0" y="0" width="{wide}" height="{self.letter * _RULE:.1f}" fill="{INK}"/>{"".join(texts)}</svg>'
        )


def bars(
    told: Sequence[tuple[str, Sequence[str]]], size: tuple[int, int], still: bool = False, slack: float = 1.0
) -> list[Bar]:
    """The bars for shots (title, words) of one clip of `size` px, all equally high; `still`: each in one part. `slack`
    is how many times wider than the kit's own letters those may be that a viewer puts in their place."""
    letter = min(size) * LETTER
    made = [_set(title, words, size, letter, slack) for title, words in told]
    while still and letter > 4 and any(len(parts) > 1 for _, parts in made):
        letter *= 0.94
        made = [_set(title, words, size, letter, slack) for title, words in told]
    high = 0.0
    for title, parts in made:
        rows = max(len(part) for part in parts)
        high = max(high, letter * (2 * _PAD + len(title) * (_TITLE + _LEADING - 1) + rows * _LEADING))
    tall = 2 * round(high / 2)  # a film's sides are even
    return [Bar((size[0], tall), letter, title, parts) for title, parts in made]


def with_bar(picture: str, bar: Bar, size: tuple[int, int]) -> str:
    """An SVG of `size` px: `picture` above and the bar below it."""
    wide, high = size
    room = high - bar.size[1]
    above = _OPEN.sub(rf'<svg\1 width="{wide}" height="{room}"', picture, count=1)
    below = bar.svg(0).replace("<svg ", f'<svg y="{room}" ', 1)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide}" height="{high}" viewBox="0 0 {wide} {high}">'
        f"{above}{below}</svg>"
    )


def _set(
    title: str, words: Sequence[str], size: tuple[int, int], letter: float, slack: float
) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """The rows of the title, and those of the words in parts of as many rows as the lower third has room for."""
    room = (size[0] - 2.8 * _PAD * letter) / slack
    head = tuple(_rows(title, room, letter * _TITLE, bold=True))
    rows = [row for text in words for row in _rows(held(set_fractions(text)), room, letter)]
    left = size[1] * _TALLEST - letter * (2 * _PAD + len(head) * (_TITLE + _LEADING - 1))
    most = max(1, int(left / (letter * _LEADING)))
    count = max(1, -(-len(rows) // most))
    each = max(1, -(-len(rows) // count))
    return head, tuple(tuple(rows[i * each : (i + 1) * each]) for i in range(-(-len(rows) // each) or 1))


def _rows(text: str, room: float, letter: float, bold: bool = False) -> list[str]:
    rows: list[str] = []
    for word in text.split(" "):
        longer = f"{rows[-1]} {word}" if rows else word
        if rows and width_of(longer, letter, bold) <= room:
            rows[-1] = longer
        elif word:
            rows.append(word)
    return rows


def _row(text: str, x: float, y: float, letter: float, bold: bool = False) -> str:
    weight = ' font-weight="bold"' if bold else ""
    family = "Source Sans Pro, Source Sans 3, Noto Sans, DejaVu Sans, sans-serif"
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" font-size="{letter:.1f}" font-family="{family}"{weight} fill="{INK}">'
        f"{escape(text)}</text>"
    )
