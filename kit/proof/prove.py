"""The proof of a pattern: everything that can be checked before cloth is cut."""

from __future__ import annotations

from kit.breath import breathe
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.proof.corners import corners
from kit.proof.darts import darts
from kit.proof.edges import allowances, order, raw_edges, used
from kit.proof.finding import Finding
from kit.proof.folds import fold_true
from kit.proof.marks import notches as notch_pairs
from kit.proof.marks import openings
from kit.proof.pieces import cut_lines, markings, outlines
from kit.proof.pleats import pleats
from kit.proof.seams import seam_lengths
from kit.proof.texts import notions, placeholders, start
from kit.proof.unfinished import unfinished
from kit.sewing.order import sew

_RANK = {"error": 0, "warning": 1, "note": 2}


def prove(pattern: Pattern) -> tuple[Finding, ...]:
    """All findings, errors first. A pattern without sewing steps is proved as a draft, with a note."""
    found = outlines(pattern.pieces)
    broken = {finding.piece for finding in found}
    sound = tuple(piece for piece in pattern.pieces if piece.name not in broken)
    found += cut_lines(sound) + markings(pattern.pieces) + placeholders(pattern) + start(pattern)
    found += darts(sound) + pleats(sound)
    if pattern.sewing:
        state, refusals = sew(pattern)
        found += order(pattern, refusals)
        breathe()
        found += seam_lengths(pattern)
        breathe()
        found += raw_edges(pattern, state)
        found += allowances(pattern)
        found += used(pattern, state)
        breathe()
        found += unfinished(pattern, state)
        breathe()
        found += fold_true(pattern, sound)
        breathe()
        found += openings(pattern) + notch_pairs(pattern)
        found += notions(pattern)
        breathe()
        if not broken:
            found += corners(pattern)
    else:
        found.append(
            Finding(
                "no_sewing",
                "note",
                say("proof.no_sewing"),
                pattern.lesson.title,
                do=say("proof.no_sewing_do"),
            )
        )
    return tuple(sorted(found, key=lambda finding: _RANK[finding.level]))
