"""Curved edges folded back: the surplus or want of length at the turned edge, and how deep a hem lies flat."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from kit.diagnostic import Diagnostic, Level, Told, measured, message, named_edge, per_cent
from kit.errors import KitError
from kit.geometry import Path
from kit.lesson.pattern import Pattern
from kit.piece.allowance import allowance_of
from kit.piece.dart import closed_edge
from kit.piece.offset import inside_left
from kit.piece.piece import Edge, Piece
from kit.sewing.ends import Turning, Turnings, allowed
from kit.sewing.operations.facings import AttachFacing
from kit.sewing.order import operations

EASES = 0.05
"""The share of its length by which cloth can be eased in, or drawn out, without pleats (common practice, no source)."""
WINDOW = 50.0  # mm of stitch line over which the sharpest part of a curve is taken
_STEP = 2.5
_ALIKE = 1e-9
"""Radians by which a turn must be sharper than one before it: along a round all are alike but for the last bit."""
_TOLD = 0.5  # mm over the whole edge below which a difference is not told


@dataclass(frozen=True)
class CurvedFit:
    """A curved allowance folded back by `depth` mm: by how much in mm its turned edge is longer (a want where less
    than 0) than the garment line it lies on, overall (`surplus`) and as a share of that line (`share`); over the
    `WINDOW` where the curve is sharpest, in mm (`sharp_surplus`) and as a share (`sharp_share`), `at` mm along the
    edge. `widest` is the depth in mm that would lie flat there; `eases` the share that this cloth takes up."""

    edge: Edge
    turning: Turning
    depth: float
    surplus: float
    share: float
    sharp_surplus: float
    sharp_share: float
    at: float
    widest: float
    eases: float = EASES

    @property
    def lies_flat(self) -> bool:
        return abs(self.sharp_share) <= self.eases


def cut_into(pattern: Pattern) -> frozenset[tuple[str, str]]:
    """(piece, edge) of the edges whose allowances scissors cut into in a step of its own, and of those sewn to them:
    both allowances of a seam are clipped."""
    sewn = [operation for _, operation in operations(pattern)]
    own = {
        (run.piece, edge)
        for each in sewn
        if each.kind in ("clip", "clip_first", "notch_curve")
        for run in each.runs()
        for edge in run.edges
    }
    pairs = [
        {(run.piece, edge) for run in runs for edge in run.edges}
        for each in sewn
        if isinstance(each, AttachFacing)
        for runs in each.joins
    ]
    return frozenset(own.union(*(pair for pair in pairs if pair & own)))


def curved_edges(
    piece: Piece, order: Turnings, cut: frozenset[tuple[str, str]] = frozenset(), eases: float = EASES
) -> Iterator[CurvedFit]:
    """The curved hems of a piece, and the curved edges of facings that are turned without being clipped: by that step,
    or by one of its own (`cut`). `eases` is the share of its length that the cloth takes up."""
    for edge in piece.edges:
        turning = order.get((piece.name, edge.name, "start")) or order.get((piece.name, edge.name, "end"))
        if turning is None or not allowed(piece, edge) or edge.path.is_straight:
            continue
        facing = turning.operation if isinstance(turning.operation, AttachFacing) else None
        if turning.hem or (facing is not None and not facing.clip and (piece.name, edge.name) not in cut):
            depth = turning.folds[-1] if len(turning.folds) > 1 else allowance_of(piece, edge)
            try:
                yield curved_fit(piece, edge, turning, depth, eases)
            except KitError:
                continue  # told with the darts


def curved_fit(piece: Piece, edge: Edge, turning: Turning, depth: float, eases: float = EASES) -> CurvedFit:
    """How a curved edge folded back by `depth` mm lies, its darts sewn."""
    path = closed_edge(piece, edge.name)
    turns = list(_turns(path, inside_left(piece)))
    length = path.length
    whole = turns[-1][1]
    worst, at, span = 0.0, 0.0, length
    window = min(WINDOW, length)
    last = 0
    for first, (start, heading) in enumerate(turns):
        while last < len(turns) - 1 and turns[last][0] < start + window - 1e-6:
            last = max(last + 1, first)
        end, far = turns[last]
        if end - start < window - 1e-6:
            break
        if abs(far - heading) > abs(worst) + _ALIKE:
            worst, at, span = far - heading, (start + end) / 2, end - start
    bend = worst / span
    most = abs(bend)
    widest = math.inf if most < 1e-9 else eases / (most * (2 + eases if bend > 0 else 2 - eases))
    return CurvedFit(
        edge,
        turning,
        depth,
        surplus=2 * depth * whole,
        share=_share(depth, whole / length),
        sharp_surplus=2 * depth * worst,
        sharp_share=_share(depth, bend),
        at=at,
        widest=widest,
        eases=eases,
    )


def _share(depth: float, bend: float) -> float:
    """The surplus of a strip folded at a curve of `bend` radians for each mm, over the garment line it lies on."""
    inside = 1.0 - depth * bend
    return 2 * depth * bend / inside if inside > 1e-3 else math.inf


def _turns(path: Path, sign: float) -> Iterator[tuple[float, float]]:
    """(mm along, radians turned since the start), positive where the outer side is the longer one. A corner counts
    at its place."""
    count = max(2, math.ceil(path.length / _STEP))
    places = sorted({*(path.length * i / count for i in range(count + 1))})
    turned = 0.0
    yield 0.0, 0.0
    ways = [path.start_tangent, *(path.tangent_at(place) for place in places[1:-1]), path.end_tangent]
    for (one, two), place in zip(pairwise(ways), places[1:], strict=True):
        turned += one.turn_to(two) * sign
        yield place, turned


def fit_findings(piece: Piece, fit: CurvedFit) -> list[Diagnostic]:
    """A warning where the hem cannot be eased in at all, a note where it can along its whole length alone."""
    if fit.lies_flat:
        return []
    long = fit.sharp_share > 0
    hem = fit.turning.hem
    known = math.isfinite(fit.sharp_share)
    # A hem that waves may be long in one place and short in another: its whole is then nothing to tell of.
    there = known and fit.surplus * (1 if long else -1) < _TOLD
    what = message(
        f"proof.fold_{'longer' if long else 'shorter'}{'' if known else '_by_far'}{'_there' if there else ''}",
        depth=measured(fit.depth, "allowance"),
        edge=named_edge(fit.edge),
        surplus=measured(abs(fit.surplus)),
        at=measured(fit.at),
        sharp=measured(abs(fit.sharp_surplus)),
        window=measured(WINDOW),
        share=per_cent(abs(fit.sharp_share) if known else 1.0),
        eases=per_cent(fit.eases),
    )
    spread = abs(fit.share) <= fit.eases
    if spread and hem:
        then = message("proof.fold_can_be_eased" if long else "proof.fold_can_be_drawn_out")
    else:
        then = message("proof.fold_in_pleats" if long else "proof.fold_pulls")
    # What to do: clip a facing, ease a hem in where it can take up the surplus, else a hem as deep as lies flat
    # (`widest`), and where not even 3 mm would, a facing instead of a hem.
    flat = math.floor(fit.widest)
    if not hem:
        do = message("proof.fold_clip_do")
    elif flat >= 3:
        key = "proof.fold_ease_do" if spread and long else "proof.fold_shallower_do"
        do = message(key, depth=measured(flat, "allowance"))
    else:
        do = message("proof.fold_face_do")
    return [
        fold_finding(
            piece,
            fit.edge,
            fit.turning,
            "hem_not_flat" if hem else "facing_not_flat",
            message("phrase.then", first=what, then=then),
            do,
            abs(fit.surplus) if hem else abs(fit.sharp_surplus),
            "note" if spread and hem else "warning",
        )
    ]


def fold_finding(
    piece: Piece,
    edge: Edge,
    turning: Turning,
    code: str,
    what: Told,
    do: Told,
    amount: float | None = None,
    level: Level = "warning",
) -> Diagnostic:
    """A finding about a folded allowance, at the step that folds it."""
    return Diagnostic(
        code,
        level,
        what,
        message("proof.where_step", piece=piece.title, step=turning.title) if turning.title else piece.title,
        amount=amount,
        can=do,
        step=turning.step,
        piece=piece.name,
        edge=edge.name,
    )
