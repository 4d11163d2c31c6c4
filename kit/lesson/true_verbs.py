"""How a step trues a seam: `front.true(front.side, back.side)`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from kit.errors import KitError
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine
from kit.lesson.truing import Ends, Share, trued
from kit.lesson.verb import verb
from kit.units import Length, Size, length

Edges = str | PaperLine | Sequence[str | PaperLine]


@verb
def true(
    bench: OpenPiece,
    own: Edges,
    other: Edges,
    *,
    share: Share = "half",
    hold: Literal["start", "end"] = "start",
    ends: Ends = "both",
    ease: Size = 0,
    turned: bool | None = None,
) -> Length:
    """Make this piece's edge and the one it is sewn to agree, on both pieces at once: the difference is made up
    half on each (or all on "own", or on "other") at the end that is not held, and the lines across the seam are
    drawn to run on smoothly at both `ends`. `ease` is how much longer the other is meant to be. The ends that
    meet are found from the draft; `turned` says by hand that the other edge runs the other way. Gives by how much
    they differed.

    Example::

        difference = front.true(front.side, back.side)
    """
    edges, partner = own_edges(bench, own), bench_of(other, bench.where)
    others = own_edges(partner, other)
    result = trued(
        bench.freeze(),
        edges,
        partner.freeze(),
        others,
        share=share,
        hold=hold,
        ends=ends,
        ease=float(length(ease, f"{bench.where}, ease")),
        turned=turned,
    )
    bench.lay(result.own)
    if partner is not bench:
        partner.lay(result.other)
    for piece, edge, by, before, after in result.changes:
        changed = bench if piece == bench.piece_name else partner
        changed.spot(f"{edge}_{'added' if by > 0 else 'taken_off'}", abs(by), before, after, None)
    return Length(abs(result.difference))


def own_edges(bench: OpenPiece, given: Edges) -> tuple[str, ...]:
    """Names of one piece's edges, given as one or several in a row. `KitError` for an edge of another piece."""
    names = []
    for item in (given,) if isinstance(given, str) or not isinstance(given, Sequence) else given:
        if not isinstance(item, str | PaperLine):
            raise KitError(f"{item!r} is not an edge.", where=bench.where, do="Name edges as front.side.")
        if isinstance(item, PaperLine) and item.sheet is not bench:
            raise KitError(
                f"the {item.said} does not lie on this piece, but on {getattr(item.sheet, 'where', 'another one')}.",
                where=bench.where,
                do="Name an edge of this piece first, then the edge it is sewn to.",
            )
        names.append(bench.edge_name(item))
    return tuple(names)


def bench_of(given: Edges, where: str) -> OpenPiece:
    """The piece on the bench that an edge lies on."""
    first = given[0] if isinstance(given, Sequence) and not isinstance(given, str) and given else given
    if isinstance(first, PaperLine) and isinstance(first.sheet, OpenPiece):
        return first.sheet
    raise KitError(
        f"{first!r} does not say on which piece the other edge lies.", where=where, do="Write it as back.side."
    )
