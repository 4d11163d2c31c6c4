"""Where a place of a band lies on the finished garment: as far along the seam it is set on by, as far from it."""

from __future__ import annotations

from typing import Any

from kit.geometry import Point
from kit.lesson.pattern import Pattern
from kit.picture.assembled import Assembled, Flat, of_kind
from kit.picture.chains import Chain, at, away, inside, length
from kit.piece.piece import Side
from kit.sewing.spans import path_of


def band_width(name: str, pattern: Pattern) -> float:
    """How wide a band is finished, mm: its height, or half of it when it is one piece folded lengthwise."""
    x0, y0, x1, y1 = pattern.piece(name).outline.bounds()
    return min(x1 - x0, y1 - y0) / (1.0 if inner_bands(name, pattern) else 2.0)


def inner_bands(name: str, pattern: Pattern) -> set[str]:
    """The pieces that a band is seamed to: its inner half, where it is two."""
    found: set[str] = set()
    for op in of_kind(pattern, "seam_band"):
        names = {run.piece for run in op.runs()}
        if name in names:
            found |= names
    return found


def on_band(p: Point, op: Any, flat: Flat, garment: Assembled, half: Side | None) -> Point | None:
    """Where a point drafted on a band lies, if that is along this piece: as far along the seam, as far from it. Of a
    band cut on the fold it is the point on one `half`."""
    pattern = garment.pattern
    walked, best = 0.0, (float("inf"), 0.0)
    for run in op.a:
        path = path_of(pattern, run)
        best = min(best, (path.distance_to(p), walked + path.nearest(p)))
        walked += path.length
    far, along = best
    if half is not None:
        begins = _first_half(op)
        if begins is None or len(op.a) != 1:
            return None  # nothing says at which end of the garment's edge either half lies
        path, fold = path_of(pattern, op.a[0]), pattern.piece(op.a[0].piece)
        centre = fold.edge(fold.fold).path
        out = along if centre.distance_to(path.start) < centre.distance_to(path.end) else walked - along
        along = walked + out if half != begins else walked - out
        along -= _not_laid(op, garment, begins)
    wide = band_width(op.a[0].piece, pattern)
    if far > wide:
        far = 2 * wide - far
    for chain, owner, true in _lengths(op, garment, flat) if along >= 0.0 else ():
        if along <= true + 1.0:
            if owner is not flat:
                return None
            here, way = at(chain, along * length(chain) / max(true, 1e-6))
            middle, going = at(chain, length(chain) / 2)
            left = inside(middle + going.left() * 1.5, flat.ring)
            return here + way.left() * (-far if left else far)
        along -= true
    return None


def _lengths(op: Any, garment: Assembled, flat: Flat) -> list[tuple[Chain, Flat, float]]:
    """The parts of a band's seam, each with its piece and how long it is: on a body it is seen shorter."""
    found = _seam(op, garment, flat)
    if garment.lying is None:
        return [(chain, owner, length(chain)) for chain, owner in found]
    number = next(n for n, each in enumerate(garment.flats) if each is flat)
    lying = _seam(op, garment.lying, garment.lying.flats[number])
    return [(chain, owner, length(true)) for (chain, owner), (true, _) in zip(found, lying, strict=False)]


def _first_half(op: Any) -> Side | None:
    """The half of the garment that a band's seam begins on."""
    side: Side | None = op.b[0].side
    return side


def _not_laid(op: Any, garment: Assembled, begins: Side) -> float:
    """mm of the seam at its beginning whose piece is a band itself, and lies nowhere by its own."""
    gone = 0.0
    for run in op.b:
        if garment.of(run.piece, run.side) or run.side != begins:
            break
        gone += path_of(garment.pattern, run).length
    return gone


def _seam(op: Any, garment: Assembled, flat: Flat) -> list[tuple[Chain, Flat]]:
    """The garment's edge in a band's seam, piece after piece, each run on from where the one before it ends. It begins
    at the end that stays open."""
    found: list[tuple[Chain, Flat]] = []
    for run in op.b:
        owners = garment.of(run.piece, run.side)
        owner = flat if flat in owners else owners[-1] if owners else None
        if owner is not None:
            found += [(chain, owner) for chain in owner.run(garment.pattern, run)]
    if not found:
        return []
    first, owner = found[0]
    if _opens(first[-1], owner, garment) and not _opens(first[0], owner, garment):
        found[0] = (first[::-1], owner)
    for i in range(1, len(found)):
        chain, owner = found[i]
        before = found[i - 1][0][-1]
        if chain[-1].distance(before) < chain[0].distance(before):
            found[i] = (chain[::-1], owner)
    return found


def _opens(p: Point, flat: Flat, garment: Assembled) -> bool:
    """Whether a zip lies, or an edge is faced or hemmed, where an edge of the piece begins at `p`."""
    zipped = {fact[1:4] for fact in garment.state.facts if fact[0] == "zip_in"}
    for edge in flat.piece.edges:
        for side in flat.sides:
            if (flat.piece.name, side, edge.name) not in zipped:
                continue
            if away(p, flat.edge(edge.name, side)) < 1.0:
                return True
    return False
