"""How a pattern's lengths are read: as its author thought them, in both systems or in one.

A booklet, its pages and its files are made inside `with ruled(ruling_of(pattern))`, so that a length reads the same in
every one of them.
"""

from __future__ import annotations

from kit.lesson.pattern import Pattern
from kit.rulers import SIXTEENTH, Ruling, System, half_up, reading, ruled
from kit.wording.notion_sizes import lengths_in


def ruling_of(pattern: Pattern) -> Ruling:
    """How the lengths of a pattern are read: thought in the system its author chose, alone where one system was asked
    for, its notions by the sizes they are sold in."""
    own, alone = pattern.lesson.own or pattern.lesson.units, pattern.lesson.alone
    return Ruling(own, alone, _sold(pattern, own))


def shown(mm: float, own: System, finished: bool = False) -> float:
    """A length as its own ruler shows it, in mm."""
    with ruled(Ruling(own)):
        mark = reading(mm, own, "finished" if finished else "draft")[own]
    return float(mark) if own == "cm" else mark * SIXTEENTH


def _sold(pattern: Pattern, own: System) -> dict[int, int]:
    """Sizes of notions: a zip of 18 cm is sold as one of 7 in, so the nearest whole inch (or centimetre) within 3 in a
    hundred stands beside them (common practice, no source)."""
    found = {}
    for mm in (length for text in pattern.lesson.notions for length in lengths_in(text) if length > 50):
        mark = half_up(mm if own == "cm" else mm / SIXTEENTH)
        whole = 25.4 if own == "cm" else 10.0
        count = half_up(mm / whole)
        if abs(count * whole - mm) <= mm * 0.03:
            found[mark] = count * (16 if own == "cm" else 10)
    return found
