"""Paper as it comes out of a printer.

A4, A3 and A0 are the trimmed sizes of ISO 216; US Letter is 8.5 x 11 in (ANSI/ASME Y14.1 size A) with the
inch of exactly 25.4 mm (international yard and pound agreement, 1959). All lengths are millimetres.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from kit.errors import KitError, near


@dataclass(frozen=True)
class Paper:
    """A sheet of paper, `width` x `height` mm as held upright. Nothing of the pattern is printed within
    `margin` of the edge (common practice, no source: home printers leave up to 6 mm blank); `overlap` is how
    far the next page lies over this one where they are glued."""

    name: str
    title: str
    width: float
    height: float
    margin: float = 10.0
    overlap: float = 10.0

    def __post_init__(self) -> None:
        if self.margin < 5:
            raise KitError(
                f"a page margin of {self.margin:g} mm is less than most printers can print.",
                where=self.title,
                do="Give at least 5 mm.",
            )
        if self.overlap < 0 or min(self.step) < 50:
            raise KitError(
                f"with a margin of {self.margin:g} mm and an overlap of {self.overlap:g} mm too little of the page "
                "is left for the pattern.",
                where=self.title,
                do="Give a smaller margin or overlap.",
            )

    @property
    def turned(self) -> Paper:
        """The same paper on its side."""
        return replace(self, width=self.height, height=self.width)

    @property
    def landscape(self) -> bool:
        return self.width > self.height

    @property
    def area(self) -> tuple[float, float]:
        """Width and height of the printed area, overlap included."""
        return self.width - 2 * self.margin, self.height - 2 * self.margin

    @property
    def step(self) -> tuple[float, float]:
        """How far one page carries on from the one before: across and down."""
        width, height = self.area
        return width - self.overlap, height - self.overlap


A4 = Paper("a4", "A4", 210.0, 297.0)
A3 = Paper("a3", "A3", 297.0, 420.0)
A0 = Paper("a0", "A0", 841.0, 1189.0)
LETTER = Paper("letter", "US Letter", 8.5 * 25.4, 11 * 25.4)

PAPERS: dict[str, Paper] = {each.name: each for each in (A4, LETTER, A3, A0)}


def paper(name: str) -> Paper:
    """The paper of that name ("a4", "letter", ...); `KitError` with the nearest name otherwise."""
    found = PAPERS.get(name.strip().lower().replace("us ", ""))
    if found is None:
        raise KitError(f"there is no paper '{name}'.", do=near(name.lower(), PAPERS))
    return found
