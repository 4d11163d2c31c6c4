"""What somebody asks of the printed pattern: which papers, held and joined how, for which printer, at what scale.

A request is a value; everything in it has been checked when it exists. The texts people type (on the command line)
are read by the functions below it.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from kit.diagnostic import message, per_cent
from kit.errors import KitError
from kit.paper.papers import A4, LETTER, Paper, paper
from kit.units import length

Orientation = Literal["auto", "upright", "sideways"]
Joining = Literal["overlap", "butt"]

CLASS_SCALES = {1.0: "full", 0.5: "half", 0.25: "quarter"}
_FURTHEST = (0.8, 1.25)


@dataclass(frozen=True)
class PageRequest:
    """How the pattern is to be printed.

    `papers`: one file of pages for each. `orientation`: "auto" holds the paper the way that takes fewest pages.
    `joining`: "overlap" trims two sides of a page and glues it on the next, "butt" trims all sides and tapes edge to
    edge. `margins`: mm left blank at the sides and at top and bottom of each paper, None for the paper's own.
    `printer_scale`: how large the printer prints what should be 1, along the paper's short and its long side:
    (0.97, 0.985).
    `class_scale`: 1, 1/2 or 1/4, for drafting practice. `whole`: pieces cut on the fold are drawn whole.
    Raises `KitError` for values that cannot be printed.
    """

    papers: tuple[Paper, ...] = (A4, LETTER)
    orientation: Orientation = "auto"
    joining: Joining = "overlap"
    margins: tuple[float, float] | None = None
    printer_scale: tuple[float, float] = (1.0, 1.0)
    class_scale: float = 1.0
    whole: bool = False

    def __post_init__(self) -> None:
        if not self.papers:
            raise KitError(message("paper.none_named"), where="--paper", do=message("paper.none_named_do"))
        if self.class_scale not in CLASS_SCALES:
            raise KitError(
                message("paper.not_a_scale", text=f"{self.class_scale:g}"),
                where="--scale",
                do=message("paper.scale_do"),
            )
        for share in self.printer_scale:
            if not (math.isfinite(share) and _FURTHEST[0] <= share <= _FURTHEST[1]):
                raise KitError(
                    message("paper.printer_off", share=per_cent(share)),
                    where="--printer-scale",
                    do=message("paper.printer_off_do"),
                )
        for each in self.papers:
            self.held(each)

    @property
    def full_size(self) -> bool:
        """False for class scales, whose pages must not be cut from."""
        return self.class_scale == 1.0

    @property
    def corrected(self) -> bool:
        """Whether the pages are drawn larger or smaller to make up for a printer."""
        return self.printer_scale != (1.0, 1.0)

    def held(self, sheet: Paper) -> Paper:
        """`sheet` with this request's margins and joining, upright, in mm of paper. Raises `KitError` when too little
        is left for the pattern."""
        made = sheet if self.margins is None else sheet.with_margins(*self.margins)
        return replace(made, overlap=0.0) if self.joining == "butt" else made

    def ways(self, sheet: Paper) -> tuple[Paper, ...]:
        """How `sheet` may be held: upright, on its side, or both where the request leaves it open. Lengths are what
        comes out of the printer, so that 1 mm of them is 1 mm on the table."""
        held = self.held(sheet)
        short, long = self.printer_scale
        upright, sideways = held.scaled(short, long), held.turned.scaled(long, short)
        if self.orientation == "sideways" and sheet.kind != "roll":
            return (sideways,)
        if self.orientation == "upright" or sheet.kind == "roll":
            return (upright,)
        return (upright, sideways)

    def enlarged(self, held: Paper) -> tuple[float, float]:
        """How many times as large everything is drawn on a page so held, across and down, to come out true."""
        short, long = self.printer_scale
        return (1 / long, 1 / short) if held.landscape else (1 / short, 1 / long)


def read_papers(texts: Sequence[str]) -> tuple[Paper, ...]:
    """Papers by name or size, each once, in order; A4 and US Letter when nothing is named.

    >>> [paper.name for paper in read_papers(["letter", "A4", "letter"])]
    ['letter', 'a4']
    """
    found = {each.name: each for each in map(paper, texts)}
    return tuple(found.values()) or (A4, LETTER)


def read_margins(text: str) -> tuple[float, float]:
    """ "8mm" for all sides, "6mm,15mm" for the sides and for top and bottom; in mm. Raises `KitError`.

    >>> read_margins("6mm,15mm")
    (6.0, 15.0)
    """
    parts = [part for part in text.split(",") if part.strip()]
    if len(parts) not in (1, 2):
        raise KitError(message("paper.not_a_margin", text=text), where="--margin", do=message("paper.not_a_margin_do"))
    across, down = (float(length(part, "--margin")) for part in (parts[0], parts[-1]))
    return across, down


def read_printer_scale(text: str) -> tuple[float, float]:
    """ "97%" or "97%,98.5%" (short side, long side of the paper) as shares: (0.97, 0.985). Raises `KitError`.

    >>> read_printer_scale("97%,98.5%")
    (0.97, 0.985)
    """
    parts = text.split(",")
    shares = [re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s*%?\s*", part) for part in parts]
    if len(parts) not in (1, 2) or not all(shares):
        raise KitError(
            message("paper.not_a_printer_scale", text=text),
            where="--printer-scale",
            do=message("paper.not_a_printer_scale_do"),
        )
    across, down = (float(share[1]) / 100 for share in (shares[0], shares[-1]) if share)
    return across, down


def read_class_scale(text: str) -> float:
    """ "1", "1/2" or "1/4". Raises `KitError`.

    >>> read_class_scale("1/4")
    0.25
    """
    known = {"1": 1.0, "1/1": 1.0, "1/2": 0.5, "1/4": 0.25, "half": 0.5, "quarter": 0.25, "full": 1.0}
    found = known.get(text.strip().lower())
    if found is None:
        raise KitError(message("paper.not_a_scale", text=text), where="--scale", do=message("paper.scale_do"))
    return found
