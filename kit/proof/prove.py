"""The proof of a pattern: everything that can be checked before cloth is cut."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import replace
from functools import cached_property

from kit.diagnostic import Diagnostic, Message, Told, Value, as_value, message
from kit.lesson.pattern import Pattern
from kit.pausing import pause_here
from kit.piece.piece import Piece
from kit.piece.recut import without_extra
from kit.proof.band_way import band_ways
from kit.proof.corners import corners
from kit.proof.darts import darts
from kit.proof.double_darts import drawn as double_darts
from kit.proof.double_darts import never_sewn
from kit.proof.edges import allowances, order, raw_edges, used
from kit.proof.extra_cloth import extra_cloth, extra_lines
from kit.proof.folds import fold_true
from kit.proof.halves import crossed_halves
from kit.proof.marks import notches as notch_pairs
from kit.proof.marks import openings
from kit.proof.notion_amounts import notion_amounts
from kit.proof.pieces import cut_lines, markings, outlines
from kit.proof.pleats import pleats
from kit.proof.raw_inside import raw_inside
from kit.proof.seams import seam_lengths
from kit.proof.slits import drawn as slits
from kit.proof.slits import left_raw
from kit.proof.strip_ends import strip_ends
from kit.proof.texts import notions, placeholders, start
from kit.proof.unfinished import unfinished
from kit.sewing.order import sew
from kit.sewing.state import State
from kit.wear.worn import worn

_RANK = {"error": 0, "warning": 1, "note": 2}


class _Case:
    """A pattern under proof, and what several checks ask of it, found once."""

    def __init__(self, pattern: Pattern) -> None:
        # Extra cloth to fit with is trimmed before the edge is finished: whether it is, `extra_cloth` asks; all else is
        # proved of the pattern as it is sewn.
        self.whole = pattern
        pieces = tuple(map(without_extra, pattern.pieces))
        self.pattern = pattern if pieces == pattern.pieces else replace(pattern, pieces=pieces)

    @cached_property
    def outlines(self) -> list[Diagnostic]:
        return outlines(self.pattern.pieces)

    @cached_property
    def sound(self) -> tuple[Piece, ...]:
        """The pieces whose outline closes and does not cross itself."""
        broken = {finding.piece for finding in self.outlines}
        return tuple(piece for piece in self.pattern.pieces if piece.name not in broken)

    @cached_property
    def sewn(self) -> tuple[State, tuple[Diagnostic, ...]]:
        return sew(self.whole)

    @property
    def is_sewn(self) -> bool:
        """Whether it is drawn and sewn without an error: a garment that can be put on."""
        return not any(finding.level == "error" for finding in (*self.outlines, *self.sewn[1]))


Check = Callable[[_Case], list[Diagnostic]]
_DRAFT: Mapping[str, Check] = {
    "outlines": lambda case: case.outlines,
    "cut_lines": lambda case: cut_lines(case.sound),
    "extra_lines": lambda case: extra_lines(case.whole, case.outlines),
    "markings": lambda case: markings(case.pattern.pieces),
    "placeholders": lambda case: placeholders(case.pattern),
    "start": lambda case: start(case.pattern),
    "darts": lambda case: darts(case.sound),
    "double_darts": lambda case: double_darts(case.sound),
    "slits": lambda case: slits(case.sound),
    "pleats": lambda case: pleats(case.sound),
}
_SEWN: Mapping[str, Check] = {
    "order": lambda case: order(case.sewn[1]),
    "halves": lambda case: crossed_halves(case.pattern),
    "band_ways": lambda case: band_ways(case.pattern),
    "seam_lengths": lambda case: seam_lengths(case.pattern),
    "raw_edges": lambda case: raw_edges(case.pattern, case.sewn[0]),
    "strip_ends": lambda case: strip_ends(case.pattern),
    "allowances": lambda case: allowances(case.pattern),
    "used": lambda case: used(case.pattern, case.sewn[0]),
    "unfinished": lambda case: unfinished(case.pattern, case.sewn[0]) + never_sewn(case.pattern, case.sewn[0]),
    "slits_raw": lambda case: left_raw(case.pattern, case.sewn[0]),
    "raw_inside": lambda case: raw_inside(case.pattern, case.sewn[0]),
    "extra_cloth": lambda case: extra_cloth(case.whole, case.sewn[0]),
    "fold_true": lambda case: fold_true(case.pattern, case.sound),
    "openings": lambda case: openings(case.pattern, case.sewn[0]),
    "notches": lambda case: notch_pairs(case.pattern),
    "notions": lambda case: notions(case.pattern) + notion_amounts(case.pattern),
    "corners": lambda case: corners(case.pattern) if not case.outlines else [],
    "worn": lambda case: worn(case.pattern, case.sewn[0]) if case.is_sewn else [],
    "other_drafts": lambda case: _other_drafts(case.whole) if case.whole.tries else [],
}


def prove(pattern: Pattern) -> tuple[Diagnostic, ...]:
    """All findings, errors first. A pattern without sewing steps is proved as a draft, with a note.

    >>> from kit import bodice_block
    >>> from kit.lesson.lesson import Lesson
    >>> pattern = Lesson("Block", start=bodice_block).work()
    >>> sorted({(finding.level, finding.code) for finding in prove(pattern)})
    [('error', 'no_allowance'), ('note', 'no_sewing')]
    >>> print(prove(pattern)[0])
    Front bodice: the neck edge has no allowance. Declare one on the pattern, 0 where it is cut on the line.
    """
    found = [finding for _, finding in _checked(pattern)]
    if not pattern.sewing:
        found.append(
            Diagnostic(
                "no_sewing",
                "note",
                message("proof.no_sewing"),
                pattern.lesson.title,
                can=message("proof.no_sewing_do"),
            )
        )
    return tuple(sorted(found, key=lambda finding: _RANK[finding.level]))


def errors(pattern: Pattern, checks: Collection[str] | None = None) -> Iterator[tuple[str, Diagnostic]]:
    """The errors that `prove` finds, each with the name of the check that finds it, in the order of the checks. Each
    check is worked when its turn comes, so who asks for the first error does not wait for the rest. `checks` names
    the only ones to work (None: all)."""
    return ((name, finding) for name, finding in _checked(pattern, checks) if finding.level == "error")


_CUT = (*_DRAFT, "seam_lengths", "allowances")
"""What is asked of a draft that a try-on changes: it is never sewn to its end."""


def _other_drafts(pattern: Pattern) -> list[Diagnostic]:
    """Errors of the drafts before and after try-ons that are not the present one's: of the last, which is sewn to its
    end, all; of the others what shows once the cloth is cut."""
    found: list[Diagnostic] = []
    known = {_place(finding) for _, finding in _checked(replace(pattern, tries=()), None) if finding.level == "error"}
    drafts = [("first", tried.before) for tried in pattern.tries[:1]]
    drafts += [("corrected", tried.after) for tried in pattern.tries]
    for number, (which, draft) in enumerate(drafts):
        if draft is None or draft.values == pattern.values:
            continue
        checks = None if number == len(drafts) - 1 else _CUT
        for _, finding in errors(draft, checks):
            if _place(finding) not in known:
                known.add(_place(finding))
                found.append(replace(finding, says=message(f"proof.in_draft_{which}", what=_within(finding.says))))
    return found


def _place(finding: Diagnostic) -> tuple[str, str, str, str]:
    return finding.code, finding.step, finding.piece, finding.edge


def _within(told: Told) -> Value | Message:
    return told if isinstance(told, Message) else as_value(told)


def _checked(pattern: Pattern, checks: Collection[str] | None = None) -> Iterator[tuple[str, Diagnostic]]:
    case = _Case(pattern)
    for name, check in ({**_DRAFT, **_SEWN} if pattern.sewing else _DRAFT).items():
        if checks is None or name in checks:
            for finding in check(case):
                yield name, finding
            pause_here()
