"""What is sewn onto the finished garment: bands, patch pockets, darts as lines, rows that show, buttons."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from kit.geometry import Arc, Path, Point, Region, Vector
from kit.lesson.pattern import Pattern
from kit.picture.assembled import Assembled, Flat, of_kind
from kit.picture.chains import Chain, at, beside, drawn, inside, length
from kit.picture.drawing import Fill, FillRole, Item, Stroke
from kit.picture.drawn_up import gathers
from kit.picture.place_on_band import band_width, on_band
from kit.picture.shut import FINE
from kit.picture.tied import strip_cloth
from kit.piece.allowance import hem_edges
from kit.piece.darts_and_pleats import Dart
from kit.piece.double_dart import double_darts
from kit.piece.piece import Piece, Side
from kit.sewing.marked import Place
from kit.sewing.run import Run

_SHOWS = ("hem", "narrow_hem", "topstitch", "lapped_zip", "centred_zip", "fly_zip", "casing", "channel", "rolled_hem")
_SIDES: tuple[Side, ...] = ("right", "left")
_SPUR = 0.1  # of an edge's length that is no more than a spur of it
_SHARP = 0.7  # the cosine of a turn from which on it is sharp
_FLAT = 0.5  # of its area that a tower shows at least, where its side of a sleeve is seen
_STUB = 1.0  # mm of a line that are too short to tell which way it goes
_TURN = 1e-4  # the sine of a turn below which a line goes straight on
_BESIDE = 2.0  # mm from its edge that a row which holds a turned edge lies


def cloth(flat: Flat) -> FillRole:
    """The fill of the face of a piece that is seen."""
    return "right_side" if flat.up == "right" else "wrong_side"


# ---- one piece ---------------------------------------------------------------------------------------------


def on_piece(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """A piece where it lies, with all that is sewn onto it."""
    name = flat.piece.name
    lined = flat.up == "wrong" and name in garment.lined
    yield Fill(drawn(flat.ring, True), "lining" if lined else cloth(flat), name)
    yield from _pockets(flat, garment.pattern)
    yield from _folds(flat)
    yield from _double_darts(flat, garment)
    yield from _rows(flat, garment.pattern)
    yield from gathers(flat, garment.pattern)
    yield Stroke(drawn(flat.ring, True), "edge", closed=True, name=f"{name}.{flat.side}")
    yield from _bindings(flat, garment)
    yield from _bands(flat, garment)
    yield from _towers(flat, garment)
    yield from _fastened(flat, garment)


def _towers(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """The towers of plackets, on the side of a sleeve that is seen."""
    for op in of_kind(garment.pattern, "tower_placket"):
        if op.slit.piece != flat.piece.name or flat.up == "wrong":
            continue
        along, wide = op.lies(garment.pattern)
        aside, shoulder = along.start_tangent.left() * (wide / 2), along.end - along.end_tangent * (wide / 2)
        drafted = [along.start + aside, shoulder + aside, along.end, shoulder - aside, along.start - aside]
        for side in flat.sides if op.slit.side is None else [s for s in flat.sides if s == op.slit.side]:
            ring = [flat.put(p, side) for p in drafted]
            if Region.of(ring).area > _FLAT * Region.of(drafted).area:  # that of the side below lies on its fold
                name = op.tower.piece
                yield Fill(drawn(ring, True), cloth(flat), name)
                yield Stroke(drawn(ring, True), "edge", closed=True, name=name)


def _folds(flat: Flat) -> Iterator[Item]:
    """Darts, pleats and tucks that are sewn: one line from the edge to where each ends."""
    for fold in flat.folds:
        path = flat.piece.edge(fold.edge).path
        near = path.at(fold.start)
        if (near - fold.tip).cross(fold.middle - fold.tip) * (fold.fixed - fold.tip).cross(fold.middle - fold.tip) < 0:
            near = path.at(fold.end)
        held = next((dart for dart in flat.piece.darts if dart.name == fold.name), None)
        end = fold.tip if isinstance(held, Dart) else near.lerp(fold.tip, _held(flat.piece, fold.name))
        others = [other for other in flat.folds if other is not fold]
        for side in flat.sides:
            line = []
            for p in (near, end):
                slide = Vector(0.0, 0.0)
                for other in others:
                    slide = slide + (other.moved(p) - p)
                line.append(flat.put_shut(p + slide, side))
            edge = flat.edge(fold.edge, side)
            line[0] = min(edge, key=line[0].distance)
            yield Stroke(drawn(line), "symbol", name=f"{flat.piece.name}.{fold.name}")


def _double_darts(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """Darts with two points that are sewn: the one line that their two sides have become, from point to point."""
    for dart in double_darts(flat.piece):
        for side in flat.sides:
            if any(fact[1:] == (flat.piece.name, side, dart.mark.name) for fact in garment.state.facts):
                line = [dart.top, dart.one.mid(dart.other), dart.bottom]
                name = f"{flat.piece.name}.{dart.mark.name}"
                yield Stroke(drawn([flat.put(p, side) for p in line]), "symbol", name=name)


def _held(piece: Piece, name: str) -> float:
    """The share of a pleat's line that is drawn: what is stitched of a tuck, a hand's breadth of a pleat."""
    for pleat in piece.pleats:
        if pleat.name == name:
            long = max(pleat.lines[0].length, 1.0)
            return min(1.0, (pleat.sewn or min(long, 100.0)) / max(long, 100.0))
    return 0.3


def _rows(flat: Flat, pattern: Pattern) -> Iterator[Item]:
    """Rows that are seen from the right side: hems, topstitching, the lap of a zip."""
    if flat.up == "wrong":
        return
    for run, inset in _seen_rows(flat.piece, pattern):
        for chain in flat.run(pattern, run):
            row = _within(flat, chain, inset)
            if row:
                yield Stroke(drawn(row), "old_row", name=run.said)


def _bindings(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """The strips that edges are bound with, as wide as they show on either side."""
    for op in of_kind(garment.pattern, "bind"):
        strip = garment.pattern.strip(op.name)
        for run in op.edges:
            for chain in flat.run(garment.pattern, run) if run.piece == flat.piece.name else ():
                ring = drawn([*chain, *reversed(_within(flat, chain, op.finished))], True)
                yield Fill(ring, strip_cloth(strip), strip.name)
                yield Stroke(ring, "edge", closed=True, name=strip.name)


def _within(flat: Flat, chain: Chain, inset: float) -> Chain:
    """The chain `inset` mm inside the piece."""
    here, way = at(chain, length(chain) / 2)
    left = inside(here + way.left() * min(inset, 2.0), flat.ring)
    return beside(chain, inset if left else -inset)


def _seen_rows(piece: Piece, pattern: Pattern) -> list[tuple[Run, float]]:
    """(run, mm inside its stitch line) of the rows that show."""
    found: list[tuple[Run, float]] = []
    for op in of_kind(pattern, *_SHOWS):
        zipped = op.kind.endswith("_zip")  # its lap is on the side named first
        insets = [op.lap] if zipped else [row.inset for row in op.scene(pattern).rows if row.inset > 0]
        runs = op.runs()[:1] if zipped else op.runs()
        for run in runs:
            if run.piece == piece.name:
                found.extend((run, inset) for inset in (insets if op.kind == "channel" else insets[:1]))
    if not pattern.sewing:
        for name in hem_edges(piece):
            allowance = float(piece.edge(name).allowance or 0.0)
            if allowance > 3.0:
                found.append((Run(piece.name, (name,)), allowance - _BESIDE))
    return found


def outlines_on(flat: Flat, garment: Assembled) -> Iterator[tuple[str, Chain]]:
    """The outline of a piece where it lies, and of the pockets and bands that are sewn to it by now, each with the
    name of its piece."""
    pattern, state = garment.pattern, garment.state
    yield flat.piece.name, flat.ring
    for op, _, ring in _pocket_rings(flat, pattern):
        if any(state.on((run.piece, side, edge)) for run in op.edges for edge in run.edges for side in _SIDES):
            yield op.edges[0].piece, ring
    hung = {run.piece for each in state.hung for run in each.band}
    yield from ((name, ring) for name, ring in _band_rings(flat, garment) if name in hung)


# ---- pockets -----------------------------------------------------------------------------------------------


def _bends(a: Point, b: Point, c: Point, least: float = 0.02) -> bool:
    """Whether a line from `a` over `b` to `c` has a corner there, of a sine of `least`."""
    return abs((b - a).unit().cross((c - b).unit())) > least


def _is_half(piece: Piece, line: Path) -> bool:
    """Whether a pocket's line runs from the fold of its piece round to it: the other half lies beyond."""
    if not piece.fold or line.start.distance(line.end) < 1.0:
        return False
    fold = piece.edge(piece.fold).path
    return max(fold.distance_to(line.start), fold.distance_to(line.end)) < 1.0


def _pocket_rings(flat: Flat, pattern: Pattern) -> Iterator[tuple[Any, Side, Chain]]:
    """(operation, half, outline) of the patch pockets on a piece that shows its right side."""
    for op in of_kind(pattern, "patch_pocket") if flat.up == "right" else ():
        path = op.at.mark.path
        if op.at.piece != flat.piece.name or path is None or op.at.side not in (None, *flat.sides):
            continue
        if _is_half(flat.piece, path) and op.at.side is None and len(flat.sides) == 2:
            one, two = ([flat.put(p, side) for p in path.points(FINE)] for side in flat.sides)
            # From the fold round to the fold and back on the other half; straight across it the fold is no corner.
            first = one[:1] if _bends(two[1], one[0], one[1]) else []
            last = one[-1:] if _bends(one[-2], one[-1], two[-2]) else []
            yield op, flat.side, [*first, *one[1:-1], *last, *two[::-1][1:-1]]
            continue
        for side in flat.sides if op.at.side is None else (op.at.side,):
            ring = [flat.put(p, side) for p in path.points(FINE)]
            yield op, side, ring[:-1] if ring[0].distance(ring[-1]) < 0.5 else ring


def _pockets(flat: Flat, pattern: Pattern) -> Iterator[Item]:
    hems = {run.piece: op.second for op in of_kind(pattern, "pocket_hem") for run in op.runs()}
    for op, _, ring in _pocket_rings(flat, pattern):
        name = op.edges[0].piece
        sewn = {edge for run in op.edges for edge in run.edges}
        yield Fill(drawn(ring, True), "right_side", name)
        yield Stroke(drawn(ring, True), "edge", closed=True, name=name)
        mouth = [edge.name for edge in pattern.piece(name).edges if edge.name not in sewn]
        yield from _pocket_rows(ring, op.distance, hems.get(name, 0.0) if mouth else 0.0, name)


def _pocket_rows(ring: Chain, distance: float, hem: float, name: str) -> Iterator[Item]:
    """The row round a pocket, open at its mouth, and the row of the hem there. The mouth is the upper side, whole: a
    line may begin in its middle, where the pocket's fold lies."""
    ring = [b for a, b, c in zip((ring[-1], *ring), ring, (*ring[1:], ring[0]), strict=False) if _bends(a, b, c, _TURN)]
    sides = list(zip(ring, (*ring[1:], ring[0]), strict=True))
    top = max(p.y for p in ring)
    mouth = max(range(len(sides)), key=lambda i: (sides[i][0].y + sides[i][1].y > 2 * top - 20.0, _long(sides[i])))
    around = [*ring[mouth + 1 :], *ring[: mouth + 1]]
    here, way = at(around, length(around) / 2)
    sign = 1.0 if inside(here + way.left() * 1.0, ring) else -1.0
    yield Stroke(drawn(beside(around, sign * distance)), "old_row", name=name)
    if hem > 0.0:
        a, b = sides[mouth]
        here, way = at([a, b], a.distance(b) / 2)
        sign = 1.0 if inside(here + way.left() * 1.0, ring) else -1.0
        yield Stroke(drawn(beside([a, b], sign * max(hem - _BESIDE, 4.0))), "old_row", name=name)


def _long(side: tuple[Point, Point]) -> float:
    return side[0].distance(side[1])


# ---- bands -------------------------------------------------------------------------------------------------


def _bands(flat: Flat, garment: Assembled) -> Iterator[Item]:
    for name, ring in _band_rings(flat, garment):
        yield Fill(drawn(ring, True), cloth(flat), name)
        yield Stroke(drawn(ring, True), "edge", closed=True, name=name)


def _band_rings(flat: Flat, garment: Assembled) -> Iterator[tuple[str, Chain]]:
    """Bands, cuffs and waistbands along its edges, as wide as they are finished, in one piece over a fold."""
    pattern = garment.pattern
    for op in of_kind(pattern, "set_band"):
        name = op.a[0].piece
        wide = band_width(name, pattern)
        for run in op.b:
            if run.piece != flat.piece.name:
                continue
            for chain in flat.run(pattern, run):
                chain = _without_spurs(chain)
                yield name, [*chain, *_outside(flat, chain, wide)[::-1]]


def _without_spurs(chain: Chain) -> Chain:
    """A chain without what turns off sharply at its very ends: an edge that crosses the fold of a sleeve at a slant
    runs on along the other layer there, where no band stands out."""
    least = _SPUR * length(chain)
    for _ in range(2):
        _, way = at(chain[::-1], 1.5 * least)
        kept, walked = len(chain), 0.0
        while kept > 2 and walked <= least:
            on = chain[kept - 1] - chain[kept - 2]
            if on.length > 1e-6 and on.unit().dot(way) < -_SHARP:
                break
            walked, kept = walked + on.length, kept - 1
        chain = chain[: kept if walked <= least else len(chain)]
        if len(chain) > 2 and chain[-1].distance(chain[-2]) < _STUB:
            chain = [*chain[:-2], chain[-1]]
        chain = chain[::-1]
    return chain


def _outside(flat: Flat, chain: Chain, wide: float) -> Chain:
    here, way = at(chain, length(chain) / 2)
    left = inside(here + way.left() * 1.5, flat.ring)
    return beside(chain, -wide if left else wide)


# ---- fastened ----------------------------------------------------------------------------------------------


def _fastened(flat: Flat, garment: Assembled) -> Iterator[Item]:
    """Buttons in their buttonholes, on what lies uppermost."""
    if flat.up == "wrong":
        return
    pattern = garment.pattern
    sizes = {hole.mark.name: op.size for op in of_kind(pattern, "buttons") for hole in op.holes}
    for op in of_kind(pattern, "buttonholes"):
        for place in op.places:
            size = sizes.get(place.mark.name, 0.0)
            for ends in _slits(place, flat, garment):
                yield Stroke(drawn(ends), "symbol", name=place.mark.name)
                if size:
                    yield from _button(ends[0].mid(ends[-1]), size, place.mark.name)


def _slits(place: Place, flat: Flat, garment: Assembled) -> Iterable[Chain]:
    """The slit of a buttonhole where it lies on this piece, or on a band that is set to it."""
    pattern, path = garment.pattern, place.mark.path
    if path is None:
        return
    if place.piece == flat.piece.name:
        for side in flat.sides if place.side is None else [s for s in flat.sides if s == place.side]:
            yield [flat.put(path.start, side), flat.put(path.end, side)]
        return
    sides: Iterable[Side | None] = (None,)
    if pattern.piece(place.piece).fold:
        sides = (place.side,) if place.side else _SIDES
    for op in of_kind(pattern, "set_band"):
        if op.a[0].piece != place.piece:
            continue
        for half in sides:
            ends = [on_band(p, op, flat, garment, half) for p in (path.start, path.end)]
            if ends[0] is not None and ends[1] is not None:
                yield [ends[0], ends[1]]


def _button(middle: Point, size: float, name: str) -> Iterator[Item]:
    ring = Arc(middle, size / 2, 0.0, 6.283185307179586)
    yield Fill((ring,), "frame", name)
    yield Stroke((ring,), "symbol", closed=True, name=name)
    for way in (-1.0, 1.0):
        hole = middle + Vector(way * size * 0.13, 0.0)
        yield Stroke((Arc(hole, size * 0.05, 0.0, 6.283185307179586),), "symbol", name=name)
