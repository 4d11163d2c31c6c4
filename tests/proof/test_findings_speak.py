"""No text of a finding escapes the catalogue: in a language where every message stands between guillemets, all that a
finding says does too, but for the lesson's own names. The findings are those of lessons gone wrong in their order, in
their pieces and in their words, and of hand-made garments."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from types import ModuleType

import pytest

from kit.lesson.pattern import Pattern
from kit.piece.piece import Notch, Piece
from kit.proof import Finding, prove
from tests.example import GARMENTS
from tests.proof.test_mutants import lesson, mutants, proved
from tests.pseudo import escaped, pseudo

REFUSED = {"brace", "not_closed", "cut_line", "dart_not_closed", "cannot_be_sewn"}
"""Codes that may pass on a refusal made for the author, which is English."""
OWN_WORDS = {"start"}
"""Codes whose text is the lesson's own."""


def each_piece(pattern: Pattern, change: object) -> Pattern:
    return replace(pattern, pieces=tuple(change(piece) for piece in pattern.pieces))  # type: ignore[operator]


def spoiled(pattern: Pattern) -> Iterator[Pattern]:
    """The pattern with its pieces or words gone wrong, each time in another way."""

    def allowed(piece: Piece, more: float | None) -> Piece:
        edges = (replace(e, allowance=None if more is None else (e.allowance or 0.0) + more) for e in piece.edges)
        return replace(piece, edges=tuple(edges))

    def longer(piece: Piece) -> Piece:
        """Its last edge drawn into a neighbour's way."""
        first, *rest = piece.edges
        path = first.path.reversed()
        return replace(piece, edges=(replace(first, path=path), *rest))

    yield each_piece(pattern, lambda piece: allowed(piece, None))
    yield each_piece(pattern, lambda piece: allowed(piece, 5.0))
    yield each_piece(pattern, lambda piece: allowed(piece, 40.0))
    yield each_piece(pattern, lambda piece: allowed(piece, -3.0))
    yield each_piece(pattern, lambda piece: replace(piece, grain=None))
    yield each_piece(pattern, lambda piece: replace(piece, cut=replace(piece.cut, interfacing=3)))
    yield each_piece(pattern, lambda piece: replace(piece, cut=replace(piece.cut, fold=piece.edges[1].name)))
    yield each_piece(pattern, lambda piece: replace(piece, cut=replace(piece.cut, fold="nowhere")))
    yield each_piece(pattern, lambda piece: replace(piece, corners=(), declared=()))
    yield each_piece(pattern, longer)
    yield each_piece(
        pattern,
        lambda piece: replace(
            piece,
            notches=tuple(Notch(e.name, e.path.length / 3, name=f"lone_{e.name}") for e in piece.edges),
            marks=tuple(replace(mark, start=mark.start + 7.0, end=mark.end + 9.0) for mark in piece.marks),
        ),
    )
    yield each_piece(
        pattern, lambda piece: replace(piece, darts=tuple(replace(d, start=d.start + 8.0) for d in piece.darts))
    )
    yield each_piece(pattern, lambda piece: replace(piece, darts=tuple(replace(d, short=-900.0) for d in piece.darts)))
    for number in range(len(pattern.pieces)):
        smaller = pattern.pieces[number]
        edges = tuple(
            replace(e, path=e.path.between(0.0, e.path.length * 0.9)) if at == 0 else e
            for at, e in enumerate(smaller.edges)
        )
        pieces = list(pattern.pieces)
        pieces[number] = replace(smaller, edges=edges)
        yield replace(pattern, pieces=tuple(pieces))
    yield replace(pattern, strips=tuple(replace(strip, count=strip.count + 2) for strip in pattern.strips))
    yield replace(pattern, lesson=replace(pattern.lesson, notions=("glitter",)))
    yield replace(pattern, sewing=tuple(replace(record, text="{nowhere_near} {") for record in pattern.sewing))
    yield replace(pattern, sewing=tuple(replace(record, text="{nowhere_near}") for record in pattern.sewing))
    yield replace(pattern, sewing=())


def names(pattern: Pattern) -> set[str]:
    """What stands in a finding's place as it is given."""
    found = {piece.title for piece in pattern.pieces} | {strip.title for strip in pattern.strips}
    return found | {record.title for record in pattern.sewing} | {pattern.lesson.title}


def strays(pattern: Pattern, finding: Finding) -> list[str]:
    """The texts of a finding that did not come from the catalogue."""
    if finding.code in REFUSED:
        return []
    found = [finding.where] if escaped(finding.where, names(pattern)) else []
    for text in () if finding.code in OWN_WORDS else (finding.what, finding.do):
        if text and not (text.startswith("«") and text.endswith("»") and not escaped(text)):
            found.append(text)
    return [f"{finding.code}: {text}" for text in found]


def checked(patterns: Iterable[tuple[Pattern, tuple[Finding, ...]]]) -> tuple[set[str], list[str]]:
    """The codes of all findings of the patterns, and what escaped."""
    codes: set[str] = set()
    found: list[str] = []
    for pattern, findings in patterns:
        for finding in findings:
            codes.add(finding.code)
            found += strays(pattern, finding)
    return codes, sorted(set(found))


def proving(patterns: Iterator[Pattern]) -> Iterator[tuple[Pattern, tuple[Finding, ...]]]:
    """Each pattern with what the proof finds in it."""
    return ((pattern, prove(pattern)) for pattern in patterns)


def hand_made(wrap: ModuleType) -> Iterator[Pattern]:
    order = wrap.whole_order()
    whole = wrap.pattern_of(order)
    yield from spoiled(whole)
    for at in range(len(order)):
        yield wrap.pattern_of([*order[:at], *order[at + 1 :]])
        yield wrap.pattern_of([*order[: at + 1], *order[at:]])
        yield wrap.pattern_of(order[at:])


def test_findings_speak_only_from_the_catalogue(wrap: ModuleType) -> None:
    every: set[str] = set()
    orders = {}
    for name in reversed(GARMENTS):  # another process may be at those of test_mutants.py, from the first on
        lesson(name)  # worked before, in the language of the lesson
        orders[name] = proved(name)
    with pseudo():
        for name in GARMENTS:
            # Proved in another language than they are said in: a text that is worded too early shows as well.
            codes, found = checked(zip((mutant for *_, mutant in mutants(name)), orders[name], strict=True))
            more, others = checked(proving(spoiled(lesson(name))))
            assert found + others == []
            every |= codes | more
        codes, found = checked(proving(hand_made(wrap)))
        assert found == []
        every |= codes
    print(f"\n{len(every)} codes: {', '.join(sorted(every))}")
    assert len(every) >= 50


def test_a_text_written_in_the_code_is_seen() -> None:
    pattern = lesson("ferry_tote")
    title = pattern.pieces[0].title
    with pseudo():
        kept = Finding("raw_edge", "error", "«the side is raw»", f"«{title}, step 'x'»", can="«Sew it.»")
        assert strays(pattern, kept) == []
        assert strays(pattern, replace(kept, at=title)) == []
        assert strays(pattern, replace(kept, says="the side is raw")) == ["raw_edge: the side is raw"]
        assert strays(pattern, replace(kept, says="«the side» is raw")) == ["raw_edge: «the side» is raw"]
        assert strays(pattern, replace(kept, can="«Sew» it now, «or not»")) == ["raw_edge: «Sew» it now, «or not»"]
        assert strays(pattern, replace(kept, at=f"{title}, step 'x'")) == [f"raw_edge: {title}, step 'x'"]


@pytest.mark.parametrize("name", ["dune_skirt", "ferry_tote"])
def test_the_same_findings_in_either_language(name: str) -> None:
    """The language changes what is said, never what is found."""
    pattern = lesson(name)
    cases = list(spoiled(pattern))
    plain = [[(f.code, f.level, f.amount, f.step, f.piece, f.edge) for f in prove(case)] for case in cases]
    with pseudo():
        other = [[(f.code, f.level, f.amount, f.step, f.piece, f.edge) for f in prove(case)] for case in cases]
    assert plain == other
