"""Seams walked along the stitch line: equal lengths, ease on purpose, corners that lie true when sewn."""

from __future__ import annotations

import math

from kit.errors import KitError
from kit.geometry import Point, Vector
from kit.lesson.pattern import Pattern, SewRecord
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.sewing.operations.facings import AttachFacing
from kit.sewing.operations.seams import Seam, length_gap
from kit.sewing.run import Run
from kit.sewing.walk import neighbours, path_of, runs_opposed
from kit.units import both

TOLERANCE = 0.5  # mm along the stitch line
TRUE_ANGLE = 3.0  # degrees
FACING_ANGLE = 10.0  # degrees; a facing's outer edge is drawn short on purpose, which tilts its ends


def seam_lengths(pattern: Pattern) -> list[Finding]:
    """Runs sewn together that are not equally long, nor eased by what is said."""
    found: list[Finding] = []
    for record in pattern.sewing:
        for operation in record.operations:
            if not isinstance(operation, Seam):
                continue
            try:
                gaps = length_gap(pattern, operation)
            except KitError:
                continue  # told by the sewing order
            total = sum(gap for _, _, gap in gaps)
            if operation.ease:
                if abs(abs(total) - operation.ease) > TOLERANCE:
                    found.append(_eased_wrong(pattern, record, operation, total))
                continue
            for a, b, gap in gaps:
                if abs(gap) > TOLERANCE:
                    found.append(_unequal(pattern, record, operation, a, b, gap))
    return found


def _said(runs: tuple[Run, ...]) -> str:
    return " with ".join(run.said for run in runs)


def _unequal(
    pattern: Pattern, record: SewRecord, operation: Seam, a: tuple[Run, ...], b: tuple[Run, ...], gap: float
) -> Finding:
    longer, shorter = (a, b) if gap > 0 else (b, a)
    facing = isinstance(operation, AttachFacing)
    return Finding(
        "facing_length" if facing else "seam_length",
        "error",
        f"the {_said(longer)} is {both(abs(gap))} longer than the {_said(shorter)} it is sewn to, measured along the "
        "stitch line.",
        f"{pattern.piece(longer[0].piece).title}, step '{record.title}'",
        amount=abs(gap),
        do="Draw the facing from the garment's own edge."
        if facing
        else "Make the two equal on the draft, or say in the seam that one is eased: ease=...",
        step=record.key,
        piece=longer[0].piece,
        edge=longer[0].edges[0],
    )


def _eased_wrong(pattern: Pattern, record: SewRecord, operation: Seam, total: float) -> Finding:
    return Finding(
        "ease_amount",
        "error",
        f"the seam says it is eased by {both(operation.ease)}, but its edges differ by {both(abs(total))}.",
        f"{pattern.piece(operation.a[0].piece).title}, step '{record.title}'",
        amount=abs(abs(total) - operation.ease),
        do="Change the ease or the draft so that they agree.",
        step=record.key,
        piece=operation.a[0].piece,
        edge=operation.a[0].edges[0],
    )


def corners(pattern: Pattern) -> list[Finding]:
    """Ends of seams where the edges beside them do not run on smoothly: the two corner angles should add up
    to a straight angle (common practice, no source), within 3 degrees, 10 between facings. Seams of one run
    to one run only; ends at a fold, and ends whose neighbouring edges are sewn to each other, are left out."""
    sewn = {
        frozenset(((x.piece, i), (y.piece, j)))
        for record in pattern.sewing
        for operation in record.operations
        if isinstance(operation, Seam) and not isinstance(operation, AttachFacing)
        for x, y in operation.joins
        for i in x.edges
        for j in y.edges
    }
    facings = {
        run.piece
        for record in pattern.sewing
        for operation in record.operations
        if isinstance(operation, AttachFacing)
        for run in operation.a
    }
    found: dict[tuple[object, ...], Finding] = {}
    for record in pattern.sewing:
        for operation in record.operations:
            if not isinstance(operation, Seam) or isinstance(operation, AttachFacing):
                continue
            for a, b in operation.joins:
                if len(operation.a) != len(operation.b) or a.start is not None or b.start is not None:
                    continue
                try:
                    limit = FACING_ANGLE if {a.piece, b.piece} <= facings else TRUE_ANGLE
                    found |= _corners_of(pattern, record, a, b, sewn, limit)
                except KitError:
                    continue  # told by the sewing order or the outlines
    return list(found.values())


def _turned(piece: Piece, run: Run) -> float:
    """Degrees by which drawing in turned the edges of a run."""
    edges = [piece.edge(name) for name in run.edges]
    return sum(math.degrees(math.atan2(edge.drawn_in, edge.path.length)) for edge in edges)


def _corners_of(
    pattern: Pattern, record: SewRecord, a: Run, b: Run, sewn: set[frozenset[tuple[str, str]]], limit: float
) -> dict[tuple[object, ...], Finding]:
    one, other = pattern.piece(a.piece), pattern.piece(b.piece)
    opposed = runs_opposed(pattern, a, b)
    found: dict[tuple[object, ...], Finding] = {}
    for end in (False, True):
        first = _corner(pattern, one, a, end)
        second = _corner(pattern, other, b, end != opposed)
        if first is None or second is None:
            continue
        (angle, beside), (angle_other, beside_other) = first, second
        if beside == one.fold or beside_other == other.fold:
            continue
        if frozenset(((a.piece, beside), (b.piece, beside_other))) in sewn:
            continue
        off = abs(math.degrees(angle + angle_other) - 180.0)
        # An edge drawn in on purpose (a facing's shoulder) is turned by that much, and pulls straight when worn.
        if off > TRUE_ANGLE + _turned(one, a) + _turned(other, b):
            key = (a.piece, b.piece, beside, beside_other)
            found[key] = Finding(
                "corner_not_true",
                "warning",
                f"where the {one.edge(beside).label} of the {one.title.lower()} meets the "
                f"{other.edge(beside_other).label} of the {other.title.lower()} at the end of this seam, the line "
                f"bends by {off:.0f} degrees.",
                f"{one.title}, {a.said}, step '{record.title}'",
                do="True the two edges: lay the seam together and draw the line across it smooth.",
                step=record.key,
                piece=a.piece,
                edge=beside,
            )
    return found


def _corner(pattern: Pattern, piece: Piece, run: Run, end: bool) -> tuple[float, str] | None:
    """(inside angle, neighbouring edge) at one end of a run."""
    path = path_of(pattern, run)
    at = path.end if end else path.start
    leaving = path.reversed().start_tangent if end else path.start_tangent
    for name in neighbours(piece, run.edges):
        other = piece.edge(name).path
        for candidate in (other, other.reversed()):
            if candidate.start.distance(at) < 0.1:
                cosine = max(-1.0, min(1.0, leaving.dot(candidate.start_tangent)))
                angle = math.acos(cosine)
                return (2 * math.pi - angle if _reflex(piece, at, leaving, candidate.start_tangent) else angle, name)
    return None


def _reflex(piece: Piece, at: Point, one: Vector, other: Vector) -> bool:
    """Whether the corner's inside angle is more than a straight one: a point just inside the bisector lies
    outside the piece."""
    x, y = one.x + other.x, one.y + other.y
    size = math.hypot(x, y)
    if size < 1e-3:
        return False
    inside = Point(at.x + 0.5 * x / size, at.y + 0.5 * y / size)
    return not piece.outline.contains(inside)
