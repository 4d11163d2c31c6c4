"""Corner truth: where a seam ends, the line that crosses it should run on smoothly.

Two edges are laid together along their seam, darts and pleats folded shut. At its end the two inside angles should add
up to a straight one (common practice, no source). A facing, a lining or the inner side of a band is turned to lie on
what it is sewn to, so there the two corners should be alike.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.diagnostic import Diagnostic, list_of, message, titled
from kit.errors import KitError
from kit.geometry import Point
from kit.lesson.pattern import Pattern, SewRecord
from kit.piece.folded import CornerAt, Folded, corner_at
from kit.piece.piece import Piece
from kit.sewing.named import edge_of
from kit.sewing.operations.facings import AttachFacing
from kit.sewing.operations.joined import Seam
from kit.sewing.operations.turned import SeamToTurn
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.sewing.seam_walk import Walk, as_sewn, drawn, walk_folded

TRUE_ANGLE = 3.0
"""Degrees by which the line may bend (common practice, no source)."""

TURNED = (AttachFacing, SeamToTurn)
"""After these the two pieces lie on one another."""

Sewn = frozenset[frozenset[tuple[str, str]]]


@dataclass(frozen=True)
class Kink:
    """A corner that is not true: at the `end` (else the start) of `walk`, the seam laid shut, the crossing line bends
    by `degrees`; above zero it comes to a point. `turned_under` where a facing is turned onto the garment."""

    step: str
    title: str
    walk: Walk
    end: bool
    one: CornerAt
    other: CornerAt
    degrees: float
    turned_under: bool = False

    def finding(self) -> Diagnostic:
        a, b = self.walk.a.piece, self.walk.b.piece
        first, second = edge_of(a, self.one.beside), edge_of(b, self.other.beside)
        run = list_of(edge_of(a, name) for name in self.walk.a.edges)
        one, other = titled(a.title or a.name), titled(b.title or b.name)
        if self.turned_under:
            what = message(
                "proof.corner_facing",
                edge=run,
                piece=one,
                beside=first,
                facing=other,
                degrees=round(math.degrees(self.one.angle)),
                facing_degrees=round(math.degrees(self.other.angle)),
            )
            do = message("proof.corner_facing_do")
        else:
            # A seam between the two halves of a piece has the same edges on both sides of it; a tube closed by a seam
            # of its own has two.
            same = (a.name, self.one.beside) == (b.name, self.other.beside)
            halves = "_halves" if same and set(self.walk.a.edges) == set(self.walk.b.edges) else ""
            what = message(
                f"proof.corner_{'point' if self.degrees > 0 else 'dip'}{halves}",
                edge=first,
                piece=one,
                other_edge=second,
                other_piece=other,
                degrees=round(abs(self.degrees)),
            )
            do = message("proof.corner_do")
        return Diagnostic(
            "corner_not_true",
            "warning",
            what,
            message("proof.where_edge", piece=a.title, edge=run, step=self.title),
            can=do,
            step=self.step,
            piece=a.name,
            edge=self.one.beside,
        )


def corners(pattern: Pattern) -> list[Diagnostic]:
    """Ends of seams where the line across them does not run on smoothly, within 3 degrees. Left out are ends on a
    fold, ends within an edge, ends whose neighbouring edges are sewn to each other, and corners declared."""
    return [kink.finding() for kink in kinks(pattern)]


def kinks(pattern: Pattern) -> tuple[Kink, ...]:
    """The corners that are not true, each once."""
    sewn = _sewn(pattern)
    found: dict[frozenset[tuple[str, str, str]], Kink] = {}
    for record, operation in operations(pattern):
        if not isinstance(operation, Seam):
            continue
        try:
            ends = _ends(pattern, operation, sewn)
        except KitError:
            continue  # told by the sewing order or the outlines
        for walk, end in ends:
            kink = _kink(record, walk, end, sewn, isinstance(operation, TURNED))
            if kink is not None:
                key = frozenset(
                    (run.piece.name, corner.before, corner.after)
                    for run, corner in ((kink.walk.a, kink.one), (kink.walk.b, kink.other))
                )
                found.setdefault(key, kink)
    return tuple(found.values())


def _sewn(pattern: Pattern) -> Sewn:
    """Which edges of the garment are sewn to which."""
    return frozenset(
        frozenset(((x.piece, i), (y.piece, j)))
        for _, operation in operations(pattern)
        if isinstance(operation, Seam) and not isinstance(operation, AttachFacing)
        for x, y in operation.joins
        for i in x.edges
        for j in y.edges
    )


def _ends(pattern: Pattern, seam: Seam, sewn: Sewn) -> list[tuple[Walk, bool]]:
    """The ends of a seam, each as a walk and which end of it. Rows of as many runs are walked run by run; of a row
    that is sewn to a row of another number of runs, only the two outer ends lie opposite each other."""
    if len(seam.a) == len(seam.b):
        walks = [walk_folded(_run(pattern, x), _run(pattern, y)) for x, y in zip(seam.a, seam.b, strict=True)]
        return [(walk, end) for walk in walks for end in (False, True)]
    rows = [_outer(pattern, row, sewn) for row in (seam.a, seam.b)]
    if None in rows:
        return []
    (first, last), (start, stop) = (row for row in rows if row is not None)
    # Nothing says which outer end belongs to which, but the draft does: its pieces lie in one system of coordinates,
    # ends that are sewn together near each other.
    same = _tip(first).distance(_tip(start)) + _tip(last).distance(_tip(stop))
    crossed = _tip(first).distance(_tip(stop)) + _tip(last).distance(_tip(start))
    if crossed < same:
        start, stop = stop, start
    return [(Walk(first, start, ()), False), (Walk(last, stop, ()), False)]


def _run(pattern: Pattern, run: Run) -> Folded:
    return as_sewn(pattern.piece(run.piece), run)


def _tip(run: Folded) -> Point:
    return drawn(run).start


def _outer(pattern: Pattern, row: tuple[Run, ...], sewn: Sewn) -> tuple[Folded, Folded] | None:
    """The first and the last run of a row, each walked from the row's outer end; None where it is not plain which
    ends of two runs are joined."""
    runs = [_run(pattern, run) for run in row]
    if len(runs) == 1:
        return runs[0], runs[0].reversed()
    first = _from_outside(runs[0], runs[1], sewn)
    last = _from_outside(runs[-1], runs[-2], sewn)
    return None if first is None or last is None else (first, last)


def _from_outside(run: Folded, following: Folded, sewn: Sewn) -> Folded | None:
    joined = [
        end
        for end in (False, True)
        for other in (False, True)
        if (one := corner_at(run, end)) is not None
        and (two := corner_at(following, other)) is not None
        and frozenset(((run.piece.name, one.beside), (following.piece.name, two.beside))) in sewn
    ]
    if len(set(joined)) != 1:
        return None
    return run if joined[0] else run.reversed()


def _kink(record: SewRecord, walk: Walk, end: bool, sewn: Sewn, facing: bool) -> Kink | None:
    a, b = walk.a, walk.b
    one, other = corner_at(a, end), corner_at(b, end)
    if one is None or other is None:
        return None
    if one.beside == a.piece.fold or other.beside == b.piece.fold:
        return None
    if one.declared(a.piece) or other.declared(b.piece):
        return None
    if frozenset(((a.piece.name, one.beside), (b.piece.name, other.beside))) in sewn:
        return None
    # Sewn right sides together and opened out, two pieces lie side by side and their angles add up to a straight
    # line. A facing is turned over onto the garment: there they lie on each other, and the angles are alike.
    degrees = math.degrees(one.angle - other.angle) if facing else 180.0 - math.degrees(one.angle + other.angle)
    # An edge drawn in on purpose (a facing's shoulder) is turned by that much, and pulls straight when worn.
    slack = drawn_in(a.piece, a.edges) + drawn_in(b.piece, b.edges)
    if facing:
        slack += drawn_in(a.piece, (one.beside,)) + drawn_in(b.piece, (other.beside,))
    if abs(degrees) <= TRUE_ANGLE + slack:
        return None
    return Kink(record.key, record.title, walk, end, one, other, degrees, facing)


def drawn_in(piece: Piece, edges: tuple[str, ...]) -> float:
    """Degrees by which drawing in turned the edges of a run."""
    found = [piece.edge(name) for name in edges]
    return sum(math.degrees(math.atan2(edge.drawn_in, edge.path.length)) for edge in found)
