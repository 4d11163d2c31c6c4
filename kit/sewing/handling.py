"""What hands must mind that the draft itself tells: edges that stretch, and a curve sewn to a straighter edge.

It is worked from the pieces and the order of sewing, said once, with the operation where it is first needed. A lesson
leaves out what it does not want to be told (`Lesson(handling=...)`).
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import Protocol

from kit.errors import KitError
from kit.geometry import Path
from kit.piece.piece import Piece
from kit.sewing.cut import Cut
from kit.sewing.operation import Operation, Sentence
from kit.sewing.operations.joined import Seam
from kit.sewing.run import Run
from kit.sewing.spans import path_of

KINDS = ("stretch", "curve", "cloth")
"""What a lesson may ask to be told; "cloth" (needle and stitch for its weight) is told with the notions."""
BIAS = (20.0, 70.0)
"""Degrees off the grain between which woven cloth gives (common practice, no source): at 45 it gives most."""
_SHARE = 0.5  # of an edge's length that must lie so
_LEAST = 150.0  # mm; a shorter edge, such as a rounded corner, has no length to stretch by
_BENDS = 40.0  # degrees by which one edge of a seam turns more than the other before it must be told
CLIPS = (10.0, 20.0)
"""How far apart a curve is clipped, in mm: nearer where it is tighter (common practice, no source)."""
_CURVED = frozenset({"plain_seam", "bound_seam", "mock_french_seam", "seam_to_turn"})
"""Seams whose own sentences say nothing of a curve."""
_STAYS = frozenset({"staystitch", "fuse", "baste_interfacing", "face_with_interfacing"})
"""Operations that keep an edge from stretching, or the whole of their pieces."""


class HandledStep(Protocol):
    """A sewing step: its key and the operations it writes."""

    @property
    def key(self) -> str: ...

    @property
    def operations(self) -> Sequence[Operation]: ...


def off_grain(piece: Piece, path: Path) -> float:
    """Share (0 to 1) of a path's length whose direction lies between 20 and 70 degrees off the piece's grain; 0 for a
    piece without a grainline."""
    if piece.grain is None:
        return 0.0
    grain = piece.grain.end - piece.grain.start
    count = 24
    off = 0
    for number in range(count):
        along = path.tangent_at(path.length * (number + 0.5) / count)
        angle = math.degrees(math.acos(min(1.0, abs(along.unit().dot(grain.unit())))))
        off += BIAS[0] < angle < BIAS[1]
    return off / count


def bend(path: Path) -> float:
    """Degrees by which a path turns in all, one way less the other."""
    count = 24
    turned = 0.0
    before = path.tangent_at(0.0)
    for number in range(1, count + 1):
        after = path.tangent_at(path.length * number / count)
        turned += math.degrees(before.turn_to(after))
        before = after
    return turned


def handling(
    sewing: Sequence[HandledStep], pattern: Cut, kinds: Collection[str]
) -> Mapping[tuple[str, int], list[Sentence]]:
    """{(key of a step, number of its operation from 0): what to say there}."""
    found: dict[tuple[str, int], list[Sentence]] = {}
    held: set[tuple[str, str]] = set()
    for step in sewing:
        for number, operation in enumerate(step.operations):
            keys = [(run.piece, name) for run in operation.runs() for name in run.edges]
            if operation.kind in _STAYS:
                whole = [(name, "") for name in (*operation.uses.pieces, *operation.uses.interfacing)]
                held.update(keys if operation.kind == "staystitch" else whole)
                continue
            seam = operation.entire
            if not isinstance(seam, Seam) or not operation.begins:  # said where the first row is sewn
                continue
            said: list[Sentence] = []
            if "stretch" in kinds:
                said += _stretching(seam, pattern, held)
            if "curve" in kinds:
                said += _curved(seam, pattern)
            held.update(keys)
            if said:
                found[step.key, number] = said
    return found


def _stretching(seam: Seam, pattern: Cut, held: Collection[tuple[str, str]]) -> Iterator[Sentence]:
    runs: list[Run] = []
    for run in (*seam.a, *seam.b):
        piece = pattern.piece(run.piece)
        if (piece.name, "") in held or piece.role == "interfacing":
            continue
        for name in run.edges:
            path = piece.edge(name).path
            long = path.length >= _LEAST and name != piece.fold
            if long and (piece.name, name) not in held and off_grain(piece, path) >= _SHARE:
                runs.append(Run(run.piece, (name,), run.side))
    if runs:
        yield Sentence("handling.stretches", {"place": (tuple(dict.fromkeys(runs)), "place")})


def _curved(seam: Seam, pattern: Cut) -> Iterator[Sentence]:
    """Where one edge is more hollow than the other. Its allowance lies on the inside of the bend, so its cut edge is
    shorter than its stitch line and must be clipped before it can follow the other edge."""
    if seam.kind not in _CURVED or len(seam.a) != len(seam.b):
        return
    for one, other in zip(seam.a, seam.b, strict=True):
        try:
            turns = {run: _hollow(pattern, run) for run in (one, other)}
        except KitError:
            return  # told by the sewing order
        if abs(turns[one] - turns[other]) > _BENDS:
            hollow = max(turns, key=lambda run: turns[run])
            straight = other if hollow is one else one
            where = {"hollow": ((hollow,), "place"), "other": ((straight,), "place")}
            yield Sentence("handling.curved", {**where, "near": (CLIPS[0], "length"), "far": (CLIPS[1], "length")})
            return


def _hollow(pattern: Cut, run: Run) -> float:
    """Degrees by which a run curves into its piece: above zero hollow, as a neck is, below zero round, as a sleeve cap
    is. Edges of one shape, which lie on each other when laid right sides together, are equally hollow."""
    piece = pattern.piece(run.piece)
    path = path_of(pattern, run)
    middle, beside = path.at(path.length / 2), path.normal_at(path.length / 2)
    inside_left = piece.outline.contains(middle + beside * 2.0)
    return -bend(path) if inside_left else bend(path)
