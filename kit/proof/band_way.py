"""Bands that would go round the garment the other way: drawn so that, right side out, their ends lie at the edges for
which the ends were not meant.

A band cut once is laid with its printed side on the right side of the cloth. Opened out along its seam, right sides up,
its cloth and the garment's lie on opposite sides of the seam; so the way along the garment in which the band runs
follows from both drafts, and the order in which the edges are named must go that way. Where no end reaches beyond the
garment's edge it makes no difference.
"""

from __future__ import annotations

from kit.diagnostic import Diagnostic, message, named_edge, titled
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.seen import as_drafted
from kit.sewing.hanging import BandStation, stations
from kit.sewing.lying import lying_before
from kit.sewing.named import placed
from kit.sewing.operations.bands import SetBand
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.sewing.spans import cloth_left, path_of


def band_ways(pattern: Pattern) -> list[Diagnostic]:
    """A warning for each band whose mirror image would not fit, a note for others: such a piece might be cut the other
    way round without anybody noticing."""
    found = []
    for record, operation in operations(pattern):
        if not isinstance(operation, SetBand) or operation.at is None:
            continue
        band = pattern.piece(operation.a[0].piece)
        try:
            ends = None if len(band.sides) > 1 or band.fold else _ends(pattern, operation)
        except KitError:
            continue  # told elsewhere
        if ends is None:
            continue
        place, other = (placed(pattern, Run(each.piece, (each.edge,), each.side)) for each in ends)
        found.append(
            Diagnostic(
                "band_way",
                "warning" if band.cut.right_side_up else "note",
                message(
                    "proof.band_way",
                    end=named_edge(band.edge(operation.at.at.edges[0])),
                    piece=titled(band.title),
                    place=place,
                    other=other,
                ),
                message("proof.where_step", piece=band.title, step=record.title),
                can=message("proof.band_way_do"),
                step=record.key,
                piece=band.name,
                edge=operation.a[0].edges[0],
            )
        )
    return found


def _ends(pattern: Pattern, made: SetBand) -> tuple[BandStation, BandStation] | None:
    """Where the end that reaches beyond lies by the order of the edges, and where it comes to lie as drawn; None where
    these are one."""
    assert made.at is not None
    hung = made.effect(pattern).hung[0]
    line = stations(pattern, lying_before(pattern, made), hung)
    if not line:
        return None
    band, first = pattern.piece(hung.band[0].piece), line[0]
    piece = pattern.piece(first.piece)
    own, end = path_of(pattern, hung.band[0]), path_of(pattern, made.at.at)
    # The garment's cloth as the band runs along it, right side up: turned by going back along the edge as drafted, and
    # once more where that half is the mirror image of its draft.
    left = cloth_left(piece, piece.edge(first.edge).path)
    left ^= first.start > first.end
    left ^= not as_drafted(piece, first.side, wrong_up=False)
    if left != cloth_left(band, own):
        return None
    at_start = end.distance_to(own.start) < end.distance_to(own.end)
    return (line[0], line[-1]) if at_start else (line[-1], line[0])
