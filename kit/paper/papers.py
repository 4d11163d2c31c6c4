"""Paper as it comes out of a printer.

A4, A3 and A0 are the trimmed sizes of ISO 216. US Letter is 8.5 x 11 in and Tabloid 11 x 17 in (ANSI/ASME Y14.1
sizes A and B), with the inch of exactly 25.4 mm (international yard and pound agreement, 1959). Rolls of 36 in and
914 mm are what copy shops load (common practice, no source). All lengths are millimetres.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Literal

from kit.diagnostic import message, number
from kit.errors import KitError, known_near
from kit.language import say, says

INCH = 25.4
LONGEST = 5080.0
"""The longest page a PDF can state without a unit of its own: 14400 points, 200 in (ISO 32000-1, annex C)."""

Kind = Literal["page", "sheet", "roll"]


@dataclass(frozen=True)
class Paper:
    """A sheet of paper, `width` x `height` mm as held upright.

    Nothing of the pattern is printed within `margin_x` of the sides or `margin_y` of top and bottom (common
    practice, no source: home printers leave up to 6 mm blank); `overlap` is how far the next page lies over this one
    where they are glued. `kind`: a "page" for the printer at home, a "sheet" for a copy shop, or a "roll", which is
    cut to length: its `height` is the longest piece of it. `common` pages are made for A4 and US Letter alike.
    """

    name: str
    title: str
    width: float
    height: float
    margin_x: float = 10.0
    margin_y: float = 10.0
    overlap: float = 10.0
    kind: Kind = "page"
    common: bool = False

    def __post_init__(self) -> None:
        for margin in (self.margin_x, self.margin_y):
            if margin < 5 - 1e-9:
                raise KitError(
                    message("paper.margin_small", margin=number(margin)),
                    where=self.title,
                    do=message("paper.margin_small_do"),
                )
        if self.overlap < 0 or min(self.step) < 50:
            raise KitError(
                message(
                    "paper.margin_overlap",
                    margin=number(max(self.margin_x, self.margin_y)),
                    overlap=number(self.overlap),
                ),
                where=self.title,
                do=message("paper.margin_overlap_do"),
            )

    @property
    def said(self) -> str:
        """What people call it in the spoken language."""
        key = f"paper.name_{self.name.replace('-', '_')}"
        return say(key) if says(key) else self.title

    @property
    def turned(self) -> Paper:
        """The same paper on its side; the margins stay with the edges of the paper."""
        return replace(self, width=self.height, height=self.width, margin_x=self.margin_y, margin_y=self.margin_x)

    @property
    def landscape(self) -> bool:
        """Whether it lies on its side; a roll never does, however short it is cut."""
        return self.kind != "roll" and self.width > self.height

    @property
    def area(self) -> tuple[float, float]:
        """Width and height of the printed area, overlap included."""
        return self.width - 2 * self.margin_x, self.height - 2 * self.margin_y

    @property
    def step(self) -> tuple[float, float]:
        """How far one page carries on from the one before: across and down."""
        width, height = self.area
        return width - self.overlap, height - self.overlap

    def with_margins(self, across: float, down: float) -> Paper:
        """The same paper with `across` mm left blank at the sides and `down` mm at top and bottom."""
        return replace(self, margin_x=across, margin_y=down)

    def scaled(self, across: float, down: float) -> Paper:
        """What this paper holds of a drawing that a printer makes `across` and `down` times as large as asked:
        every length in millimetres as they come out of the printer."""
        return replace(
            self,
            width=self.width * across,
            height=self.height * down,
            margin_x=max(5.0, self.margin_x * across),
            margin_y=max(5.0, self.margin_y * down),
        )


A4 = Paper("a4", "A4", 210.0, 297.0)
A3 = Paper("a3", "A3", 297.0, 420.0)
A0 = Paper("a0", "A0", 841.0, 1189.0, kind="sheet")
LETTER = Paper("letter", "US Letter", 8.5 * INCH, 11 * INCH)
TABLOID = Paper("tabloid", "Tabloid", 11 * INCH, 17 * INCH)
COMMON = Paper("a4-or-letter", "A4 or US Letter", A4.width, LETTER.height, common=True)
ROLL_36 = Paper("roll-36in", "36 in roll", 36 * INCH, LONGEST, kind="roll")
ROLL_914 = Paper("roll-914mm", "914 mm roll", 914.0, LONGEST, kind="roll")

PAPERS: dict[str, Paper] = {each.name: each for each in (A4, LETTER, COMMON, A3, TABLOID, A0, ROLL_36, ROLL_914)}
_LETTER_REGIONS = frozenset(["BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"])
"""Where US Letter is what printers hold (Unicode CLDR 46, supplemental data, paperSize)."""
_SAID = {
    "usletter": "letter",
    "a4+letter": "a4-or-letter",
    "a4/letter": "a4-or-letter",
    "a4&letter": "a4-or-letter",
    "common": "a4-or-letter",
    "11x17in": "tabloid",
    "36in": "roll-36in",
    "36inroll": "roll-36in",
    "roll36in": "roll-36in",
    "914mm": "roll-914mm",
    "914mmroll": "roll-914mm",
    "roll914mm": "roll-914mm",
}
_SIZE = re.compile(r"^(\d+(?:[.,]\d+)?)(mm|cm|in)?[x\N{MULTIPLICATION SIGN}*](\d+(?:[.,]\d+)?)(mm|cm|in)?$")
_UNITS = {"mm": 1.0, "cm": 10.0, "in": INCH}
_LEAST = (135.0, 175.0)  # holds a test square, a gauge and what must be read before printing
_SHEET = 450.0


def papers_of(region: str) -> tuple[Paper, ...]:
    """The paper that printers at home hold in a region (ISO 3166-1), A4 and US Letter where none is told.

    >>> [each.name for each in papers_of("MX")], [each.name for each in papers_of("AT")], len(papers_of(""))
    (['letter'], ['a4'], 2)
    """
    if not region.isalpha():  # none told, or a part of the world (UN M49)
        return (A4, LETTER)
    return (LETTER,) if region in _LETTER_REGIONS else (A4,)


def paper(text: str) -> Paper:
    """The paper of that name ("a4", "letter", "a4-or-letter", "roll-36in", ...) or of a size written plainly
    ("300x500mm", "13x19in", "30x50cm"). Raises `KitError` with the nearest name for an unknown one, and for a size
    without a unit, too small for the first page, or longer than a PDF page can be.

    >>> paper("A4").area, paper("300x500mm").said
    ((190.0, 277.0), '300 x 500 mm')
    """
    said = text.strip().lower()
    said = _SAID.get(said.replace(" ", ""), said)
    found = PAPERS.get(said)
    if found is not None:
        return found
    size = _SIZE.match(said.replace(" ", "").replace('"', "in"))
    if size is None:
        raise KitError(
            message("paper.no_such", paper=text),
            do=message("paper.no_such_do", near=known_near(said, PAPERS)),
        )
    return _custom(text, size)


def _custom(text: str, size: re.Match[str]) -> Paper:
    first, first_unit, second, second_unit = size.groups()
    unit = second_unit or first_unit
    if not unit or (first_unit or unit) != unit:
        fault = message("paper.size_two_units" if unit else "paper.size_no_unit", paper=text)
        raise KitError(fault, do=message("paper.size_do", first=first, second=second))
    across, down = (float(value.replace(",", ".")) * _UNITS[unit] for value in (first, second))
    width, height = sorted((across, down))
    name = f"{first}x{second}{unit}".replace(",", ".")
    title = f"{first} x {second} {unit}".replace(",", ".")
    if width < _LEAST[0] or height < _LEAST[1]:
        raise KitError(
            message("paper.too_small", paper=title),
            where="--paper",
            do=message("paper.too_small_do", width=round(_LEAST[0]), height=round(_LEAST[1])),
        )
    if height > LONGEST:
        raise KitError(
            message("paper.too_long", paper=title),
            where="--paper",
            do=message("paper.too_long_do", most=number(LONGEST / 1000)),
        )
    return Paper(name, title, width, height, kind="sheet" if width > _SHEET else "page")
