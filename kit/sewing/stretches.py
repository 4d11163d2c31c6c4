"""Facts that are true of a stretch of an edge alone: written, asked, and taken back again.

A fact of a whole edge is (what, piece, half, edge). Of a part of it the stretch stands at its end, as text, so that a
fact stays a row of words: "@12.00:57.30/120.00" is from 12 to 57.3 mm along an edge of 120 mm, as it was drafted. A
fact of the whole edge is true of every part of it, and parts that lie end to end make up a whole.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from kit.sewing.outcome import Fact
from kit.sewing.spans import Span

SLACK = 0.5
"""mm of an edge that may stay unaccounted for."""
_SIGN = "@"


class Stretch(NamedTuple):
    """From `start` to `end`, mm along an edge of `size` mm."""

    start: float
    end: float
    size: float

    @property
    def whole(self) -> bool:
        return self.start <= SLACK and self.end >= self.size - SLACK

    @property
    def said(self) -> str:
        return f"{_SIGN}{self.start:.2f}:{self.end:.2f}/{self.size:.2f}"


def of_stretch(fact: Fact, stretch: Stretch) -> Fact:
    """A fact of a whole edge as one of a stretch of it; the same where that is all of it.

    >>> of_stretch(("gathered", "front", "left", "waist"), Stretch(0, 60, 120))
    ('gathered', 'front', 'left', 'waist', '@0.00:60.00/120.00')
    """
    return fact if stretch.whole else (*fact, stretch.said)


def of_span(what: str, span: Span, size: float) -> Fact:
    """A fact of a stretch of an edge that is `size` mm long."""
    return of_stretch((what, *span.key), Stretch(span.start, span.end, size))


def parted(fact: Fact) -> tuple[Fact, Stretch | None]:
    """(the fact of the whole edge, its stretch) of a fact; None where it is of the whole."""
    if not fact[-1].startswith(_SIGN):
        return fact, None
    ends, size = fact[-1][1:].split("/")
    start, end = ends.split(":")
    return fact[:-1], Stretch(float(start), float(end), float(size))


def parts(facts: Iterable[Fact], whole: Fact, size: float) -> list[Stretch]:
    """The stretches of an edge, `size` mm long, that a fact is true of, in their order."""
    known = frozenset(facts)
    return [Stretch(0.0, size, size)] if whole in known else _parts(known, whole)


def _parts(facts: Iterable[Fact], whole: Fact) -> list[Stretch]:
    """The stretches that a fact is true of, in their order, where it is not true of the whole edge."""
    long = len(whole) + 1
    found = (parted(each)[1] for each in facts if len(each) == long and each[: long - 1] == whole)
    return sorted(each for each in found if each is not None)


def _covered(facts: Iterable[Fact], whole: Fact, asked: Stretch | None) -> tuple[float, float]:
    """(mm of what is asked that the facts cover, mm asked)."""
    parts = _parts(facts, whole)
    if not parts:
        return 0.0, 1.0
    start, end, _ = asked or Stretch(0.0, parts[0].size, parts[0].size)
    covered, here = 0.0, start
    for part in parts:
        low, high = max(part.start, here), min(part.end, end)
        if high > low:
            covered, here = covered + high - low, high
    return covered, end - start


def holds(facts: frozenset[Fact], fact: Fact) -> bool:
    """Whether a fact is true of all it is asked of.

    >>> half = ("clip", "front", "left", "neck", "@0.00:60.00/120.00")
    >>> holds(frozenset({half}), half), holds(frozenset({half}), half[:4])
    (True, False)
    """
    whole, asked = parted(fact)
    if fact in facts or whole in facts:
        return True
    covered, size = _covered(facts, whole, asked)
    return covered >= size - SLACK


def touches(facts: frozenset[Fact], fact: Fact) -> bool:
    """Whether a fact is true of any of what it is asked of.

    >>> half = ("clip", "front", "left", "neck", "@0.00:60.00/120.00")
    >>> touches(frozenset({half}), half[:4])
    True
    >>> touches(frozenset({half}), (*half[:4], "@60.00:120.00/120.00"))
    False
    """
    whole, asked = parted(fact)
    return fact in facts or whole in facts or _covered(facts, whole, asked)[0] > SLACK


def without(facts: frozenset[Fact], gone: Iterable[Fact]) -> frozenset[Fact]:
    """The facts that are left when others hold no longer; of a whole edge, or a longer stretch, what lies beside.

    >>> whole = ("basted", "front", "left", "side")
    >>> sorted(without(frozenset({whole}), [(*whole, "@0.00:60.00/120.00")]))
    [('basted', 'front', 'left', 'side', '@60.00:120.00/120.00')]
    """
    left = set(facts)
    for fact in gone:
        whole, out = parted(fact)
        left.discard(fact)
        if out is None:
            left -= {of_stretch(whole, part) for part in _parts(left, whole)}
            continue
        held = [Stretch(0.0, out.size, out.size)] if whole in left else _parts(left, whole)
        left -= {whole, *(of_stretch(whole, part) for part in held)}
        for part in held:
            before = Stretch(part.start, min(part.end, out.start), part.size)
            after = Stretch(max(part.start, out.end), part.end, part.size)
            left |= {of_stretch(whole, each) for each in (before, after) if each.end - each.start > SLACK}
    return frozenset(left)
