"""The forms a booklet takes: printed on A4, Letter, A5 or half Letter, in large print, and on a screen.

One set of templates makes them all. A form says how large the page and its letters are and how much room a picture
gets; pictures are drawn anew for each form, so that their lines and letters keep their size.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from kit.errors import KitError, near

PX = 96 / 25.4  # CSS px in a mm


class PictureRoom(NamedTuple):
    """The most a picture may measure, in CSS px (1/96 in)."""

    width: float
    height: float

    def times(self, share: float) -> PictureRoom:
        """The same width, and so much of the height."""
        return PictureRoom(self.width, self.height * share)


@dataclass(frozen=True)
class Form:
    """A form of the booklet. The page and its margins are in mm (`inner` towards the spine), `size` is the body type
    in pt. `beside`: a step's picture stands beside its text, not under it. `letters` enlarges the letters in pictures
    (1 is the size for reading at arm's length)."""

    key: str
    width: float
    height: float
    top: float
    bottom: float
    inner: float
    outer: float
    size: float
    beside: bool = True
    letters: float = 1.0
    screen: bool = False

    @property
    def measure(self) -> float:
        """The width of the text in mm."""
        return self.width - self.inner - self.outer

    @property
    def depth(self) -> float:
        """The height of the text in mm."""
        return self.height - self.top - self.bottom

    @property
    def picture_width(self) -> float:
        """The width in mm of a picture beside its text, its frame included."""
        return self.measure * 0.6 if self.beside else self.measure

    def _room(self, width: float, height: float) -> PictureRoom:
        return PictureRoom((width - 4.4) * PX, height * PX)  # the frame of a picture takes 2.2 mm at each side

    @property
    def columns(self) -> int:
        """How many sizes a chart shows side by side."""
        return 12 if self.letters == 1 else 4

    @property
    def offsets(self) -> int:
        """How many places along a curve the worksheet shows side by side."""
        return 12 if self.letters == 1 else 6

    @property
    def step(self) -> PictureRoom:
        """A picture beside or under the text of a step."""
        if self.beside:
            return self._room(self.picture_width, min(78.0, self.depth * 0.32))
        return self._room(self.measure, self.depth * 0.42)

    @property
    def across(self) -> PictureRoom:
        """A wide picture under the text, over the whole measure."""
        return self._room(self.measure, min(86.0, self.depth * 0.4))

    @property
    def full(self) -> PictureRoom:
        """A picture that takes most of a page."""
        return self._room(self.measure, self.depth * 0.62)

    @property
    def stage(self) -> PictureRoom:
        """One of two pictures in a row, or one of several under each other in a narrow form."""
        if self.measure < 120 or self.letters > 1.2:
            return self._room(self.measure, self.depth * (0.3 if self.letters == 1 else 0.24))
        return self._room((self.measure - 5) / 2, min(70.0, self.depth * 0.28))

    @property
    def close(self) -> PictureRoom:
        """One of three pictures in a row."""
        return self._room((self.measure - 10) / 3, self.stage.height / PX)

    def cards_across(self, count: int) -> int:
        """How many of `count` cards of pieces stand in a row: on large paper three, or four where a card would be left
        to a row of its own."""
        if self.letters > 1:
            return 1
        if self.measure <= 140:
            return 2
        return 4 if count % 3 == 1 and count > 3 and not self.screen else 3

    @property
    def fit_width(self) -> float:
        """The width in mm of the picture of a fit change, its frame included."""
        return self.measure * 0.36 if self.letters == 1 else self.measure

    @property
    def fit(self) -> PictureRoom:
        """The picture of a fit change, beside its text or over it."""
        return self._room(self.fit_width, min(48.0, self.depth * 0.2))

    @property
    def content_gap(self) -> float:
        """mm over and under each line of the contents."""
        return 1.05 if self.beside or self.letters > 1 else 0.35

    def content_gap_of(self, count: int) -> float:
        """The same where there are so many lines: less where they would else run over onto a page of their own."""
        return self.content_gap * (min(1.0, max(0.4, 1.0 - 0.12 * (count - 16))) if self.beside else 1.0)

    @property
    def narrows(self) -> bool:
        """Whether a picture as wide as its column gets narrower where its page would else not hold what stands with
        it: one under its text may, one beside it is narrow already."""
        return not self.beside

    @property
    def paired(self) -> bool:
        """Whether two pictures of a step stand side by side."""
        return self.stage.width < self.across.width * 0.75


PHONE = PictureRoom(334.0, 520.0)
"""What a picture gets on a screen 390 CSS px wide: its width beside the page's margins and the picture's frame."""
SCREEN = Form("screen", 184, 297, 18, 20, 20, 20, 10.5, screen=True)
FORMS: dict[str, Form] = {
    "a4": Form("a4", 210, 297, 20, 21, 22, 18, 10.2),
    "letter": Form("letter", 215.9, 279.4, 19, 20, 23, 19, 10.2),
    "a5": Form("a5", 148, 210, 14, 15, 16, 12, 8.6, beside=False),
    "half-letter": Form("half-letter", 139.7, 215.9, 14, 15, 15, 11, 8.6, beside=False),
    "a4-large": Form("a4-large", 210, 297, 17, 20, 18, 16, 18.0, beside=False, letters=1.7),
    "letter-large": Form("letter-large", 215.9, 279.4, 17, 20, 18, 16, 18.0, beside=False, letters=1.7),
}


def form_named(key: str) -> Form:
    """The print form of that key. `KitError` with the nearest name otherwise."""
    if key not in FORMS:
        raise KitError(f"there is no booklet form '{key}'.", do=near(key, FORMS))
    return FORMS[key]
