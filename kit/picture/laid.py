"""Laying the layers of a sewing scene: which way each piece lies.

A layer is moved rigidly, but for two that the cloth itself bends: a piece with darts sewn, whose mouths are drawn shut,
and a straight band, which follows the run it is sewn to. Two pieces opened out along a seam of several edges cannot
both lie flat along all of it; they are laid along its straightest edge, and the picture is centred there.
"""

from __future__ import annotations

from dataclasses import replace

from kit.geometry import Motion, Path
from kit.lesson.pattern import Pattern
from kit.picture.darts_shut import shut_folds, warped
from kit.picture.follow import FAR, following
from kit.picture.gathered import drawn_in, gathered
from kit.picture.layer_outline import band, folded_over, outline
from kit.picture.place import flat_mirror, flat_motion, is_facing
from kit.picture.placed import Box, PlacedLayer, area_of, box_of, find, grown, half_motion
from kit.piece.piece import Piece, Side
from kit.sewing.placement import laid_on
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Scene
from kit.sewing.spans import path_of, spans

__all__ = [
    "Box",
    "PlacedLayer",
    "along_line",
    "area_of",
    "box_of",
    "find",
    "folded_over",
    "grown",
    "opened_at",
    "half_motion",
    "parts_of",
    "place_all",
    "slide",
    "straightest",
]

SLIDE = 0.014
_FLAT = 1.2
_ALIKE = 1e-6  # mm by which one edge must be longer and straighter than one before it: left and right are alike
_PROBE = 5.0  # mm from the seam, more than it may bend along two edges laid chord on chord
_BOWED = 0.1  # a seam that bends less than this share of its length is drawn closed along all of it


# ---- laying -----------------------------------------------------------------------------------------------


def _sides(layer: Layer, piece: Piece) -> tuple[Side, ...]:
    if layer.run.side is not None:
        return (layer.run.side,)
    return ("right",) if piece.fold else piece.sides


def place_all(scene: Scene, pattern: Pattern) -> list[PlacedLayer]:
    """The layers of a scene where they lie, in painting order; the far side of a tube comes first."""
    placed: list[PlacedLayer] = []
    for layer in scene.layers:
        piece = pattern.piece(layer.run.piece)
        for side in _sides(layer, piece):
            base = find(placed, layer.on, side) if layer.on is not None else None
            new = PlacedLayer(layer, piece, side, Motion.identity(), base=base, parts=parts_of(pattern, layer.run))
            over = [each for each in scene.layers if each.how == "together" and each.on is not None and not each.ring]
            new.seen_up = over[-1].up if over and layer is scene.layers[0] else layer.up
            if layer.along is None and layer.fold is None and layer.stuff != "interfacing":
                new.gathers = gathered(piece, side, scene.sewn)
            new.motion = _motion(new, base, pattern)
            if layer.shut and layer.fold is None:
                new.folds = shut_folds(piece, layer.shut)
            if base is not None and layer.how == "open" and layer.on is not None and layer.along is None:
                base.opened.update(layer.on.edges)
                base.parts.update(parts_of(pattern, layer.on))
                new.opened.update(layer.run.edges)
            placed.append(new)
    for p in placed:
        if p.layer.along is not None or p.base is None or p.layer.on is None:
            continue
        if p.layer.how == "open" or p.layer.spread:
            own, under = p.layer.run, p.layer.on
            if p.layer.against is None:
                own, under = _seam(own, pattern), _seam(under, pattern)
            lies = p.lay(path_of(pattern, own), own.side)
            p.follow = following(lies, p.base.lay(path_of(pattern, under), p.layer.on.side))
            p.followed = _beside(lies) if p.follow is not None else None
        elif p.layer.how == "together" and p.base.layer.spread:  # what lies on it is spread with it
            p.follow, p.followed = p.base.follow, p.base.followed
    for p in placed:
        if p.layer.along is not None and p.base is not None and p.layer.on is not None:
            band(p, pattern)
        else:
            outline(p, pattern)
    rings = [p for p in placed if p.layer.ring]
    farthest = [p for p in reversed(rings) if p.base not in rings]
    below = [q for p in farthest for q in (p, *(each for each in rings if each.base is p))]
    if scene.things:  # what is worked on a band that bends is seen whole: the garment comes out under it
        hanging = [p for p in placed if p.layer.how == "open" and p.layer.against is not None]
        below += hanging + [p for p in placed if p.base in hanging and p.layer.along is not None]
    return [*below, *(p for p in placed if p not in below and not p.layer.ring)]


def _motion(new: PlacedLayer, base: PlacedLayer | None, pattern: Pattern) -> Motion:
    """Where a layer lies rigidly: in its draft place, or beside or on the layer below."""
    layer, piece = new.layer, new.piece
    if base is None or layer.on is None:
        if len(piece.sides) == 1:  # a whole piece is seen from its right side as it was drafted
            return Motion.identity() if (new.seen_up == "right") != is_facing(piece) else flat_mirror()
        return flat_motion(piece, new.side, layer.up == "wrong")
    if layer.place is not None:
        return laid_on(piece, layer.place).then(half_motion(base, layer.on.side))
    if layer.how == "flat" or layer.along is not None:
        return base.motion
    own, under = layer.run, layer.on
    if layer.how == "open" and layer.against is None:
        own, under = straightest(own, pattern), straightest(under, pattern)
    motion = _laid(new, own, under, base, pattern)
    if layer.how == "open":
        motion = motion.then(_closed_up(new, own, under, motion, base, pattern))
    return motion


def parts_of(pattern: Pattern, run: Run) -> dict[str, dict[Side, tuple[float, float]]]:
    """{edge: {half: (start, end)}} of the edges of which the run takes a part, mm along each as drafted."""
    piece = pattern.piece(run.piece)
    found: dict[str, dict[Side, tuple[float, float]]] = {}
    for each in along_line(run, pattern):
        for side in (each.side,) if each.side else piece.sides:
            for span in spans(pattern, replace(each, side=side)):
                found.setdefault(span.edge, {})[side] = (span.start, span.end)
    return {
        name: parts for name, parts in found.items() if any(_partial(piece, name, *part) for part in parts.values())
    }


def _partial(piece: Piece, edge: str, start: float, end: float) -> bool:
    return end - start < piece.edge(edge).path.length - 0.5


def along_line(run: Run, pattern: Pattern) -> tuple[Run, ...]:
    """The run, and what goes on from it on the same cloth where it is one of a line (`left.top + right.top`)."""
    if run.chain is None or run not in run.chain.runs:
        return (run,)
    one_cloth = bool(pattern.piece(run.piece).fold)
    others = (each for each in run.chain.runs if each.piece == run.piece and (one_cloth or each.side == run.side))
    return (run, *(each for each in others if each != run))


def _beside(seam: Path) -> Box:
    """The box of all that is moved when a piece follows its seam: far along it, and as far beside it as cloth gives."""
    x0, y0, x1, y1 = seam.bounds()
    upright = y1 - y0 > x1 - x0
    wide, high = (1.5 * FAR, 4 * FAR) if upright else (4 * FAR, 1.5 * FAR)
    return x0 - wide, y0 - high, x1 + wide, y1 + high


def _seam(run: Run, pattern: Pattern) -> Run:
    """The part of a seam along which two pieces are drawn closed: all of one edge, the straightest part of several."""
    return replace(run, start=None, end=None) if len(run.edges) == 1 else straightest(run, pattern, _BOWED)


def opened_at(scene: Scene, run: Run) -> bool:
    """Whether two layers of a scene are opened out along that run."""
    return any(
        layer.how == "open"
        and layer.along is None
        and any(each is not None and each.piece == run.piece and set(each.edges) & set(run.edges) for each in pair)
        for layer in scene.layers
        for pair in ((layer.run, layer.on),)
    )


def straightest(run: Run, pattern: Pattern, bow: float = 0.0) -> Run:
    """The part of a run along which two pieces opened out lie flat: the run itself when it is nearly straight, else
    the middle of its longest and straightest edge, as much of it as bends less than a stitch line is wide, or less than
    the share `bow` of its length."""
    path = path_of(pattern, run)
    if _sag(path) < max(_FLAT, bow * path.length):
        return run
    if len(run.edges) > 1:

        def worth(name: str) -> float:
            edge = path_of(pattern, Run(run.piece, (name,)))
            return edge.start.distance(edge.end) ** 3 / max(edge.length, 1e-6) ** 2

        worths = [worth(name) for name in run.edges]
        best = max(worths) - _ALIKE
        edge = next(name for name, each in zip(run.edges, worths, strict=True) if each >= best)
        run = replace(run, edges=(edge,), start=None, end=None)
        path = path_of(pattern, run)
    offset = run.start or 0.0
    for share in (1.0, 0.7, 0.5, 0.35, 0.25, 0.15):
        low, high = path.length * (0.5 - share / 2), path.length * (0.5 + share / 2)
        if _sag(path.between(low, high)) < max(_FLAT, bow * (high - low)):
            break
    return run if share == 1.0 else replace(run, start=offset + low, end=offset + high)


def _sag(path: Path) -> float:
    """How far a path bends away from its chord, mm (seen at five places)."""
    chord = path.end - path.start
    if chord.length < 1e-6:
        return path.length
    along = chord.unit()
    return max(abs(along.cross(path.at(path.length * s) - path.start)) for s in (0.15, 0.3, 0.5, 0.7, 0.85))


def _laid(new: PlacedLayer, run: Run, on: Run, base: PlacedLayer, pattern: Pattern) -> Motion:
    """The motion that lays `run` of the layer along the run `on` of `base`, each drawn up where it is gathered."""
    layer, piece = new.layer, new.piece
    own, under = path_of(pattern, run), path_of(pattern, on)
    home = half_motion(base, on.side)
    target = under.moved(home)
    if new.gathers:
        own = warped(own, drawn_in(new.gathers))
    if base.gathers:
        target = warped(under, drawn_in(base.gathers)).moved(home)
    if own.start.distance(own.end) < 1.0 or target.start.distance(target.end) < 1.0:
        return home
    middle = target.at(target.length / 2)
    into = target.normal_at(target.length / 2)
    if not base.piece.outline.contains(home.inverse()(middle + into * 2.0)):
        into = into * -1.0
    # Four ways to lay one line on another: ends matched straight or crossed, the piece as it is or turned over. The
    # lines must lie on each other (misfit at five places), the piece on the right side of the seam (inside when laid
    # together, outside when opened out; ten lengths weigh more than any misfit), ends on a fold must meet, and last it
    # should be turned over or not as that way of laying usually is (a third of a length).
    best: tuple[float, Motion] | None = None
    folds = _folds_cross(piece, _entire(run, pattern), base.piece, _entire(on, pattern))
    for flip in (False, True):
        for a, b, turned in ((target.start, target.end, False), (target.end, target.start, True)):
            motion = Motion.matching(own.start, own.end, a, b, flip)
            side = 1.0 if piece.outline.contains(motion.inverse()(middle + into * _PROBE)) else -1.0
            if layer.how == "open":
                side = -side
            other = target.reversed() if turned else target
            misfit = sum(
                motion(own.at(own.length * s)).distance(other.at(other.length * s)) for s in (0.0, 0.25, 0.5, 0.75, 1.0)
            )
            usual = (flip != home.flips) == (layer.how == "open")
            cost = misfit + (0.0 if usual else target.length * 0.3) + (0.0 if side > 0 else target.length * 10)
            cost += target.length * 5 if folds is not None and turned != folds else 0.0
            cost += target.length * 5 if layer.against is not None and turned != layer.against else 0.0
            if best is None or cost < best[0]:
                best = (cost, motion)
    assert best is not None
    return best[1]


def _entire(run: Run, pattern: Pattern) -> Path:
    return path_of(pattern, replace(run, start=None, end=None))


def _folds_cross(one: Piece, own: Path, two: Piece, under: Path) -> bool | None:
    """Whether the lines of two pieces on the fold must be laid against each other so that their ends on the folds meet;
    None where one of them has no end there."""
    ends = []
    for piece, line in ((one, own), (two, under)):
        if not piece.fold:
            return None
        fold = piece.edge(piece.fold).path
        off = [fold.distance_to(end) for end in (line.start, line.end)]
        if (off[0] < 0.5) == (off[1] < 0.5):
            return None
        ends.append(off[0] < 0.5)
    return ends[0] != ends[1]


def _closed_up(new: PlacedLayer, run: Run, on: Run, motion: Motion, base: PlacedLayer, pattern: Pattern) -> Motion:
    """The small slide that makes two slightly curved edges touch at their middles instead of gaping there."""
    own, under = path_of(pattern, run), path_of(pattern, on)
    middle, there = own.at(own.length / 2), under.at(under.length / 2)
    target = half_motion(base, on.side)(drawn_in(base.gathers)(there))
    return Motion.translation(target - motion(drawn_in(new.gathers)(middle)))


def slide(
    placed: list[PlacedLayer], pattern: Pattern, paths: dict[int, Path], extent: float, focus: Run | None = None
) -> None:
    """Each layer laid on another is slid a little inwards, so that the edges below show; what is opened out from it
    goes along. The far side of a tube is slid out at the run in `focus`."""
    by = extent * SLIDE
    for p in placed:
        base = p.base
        if base is None:
            continue
        if p.layer.ring and base.layer.ring:
            p.moved(base.shift)
        elif p.layer.ring:
            if focus is not None and focus.piece == base.piece.name:
                p.moved(Motion.translation(base.inward(path_of(pattern, focus), focus.side) * -by))
        elif p.layer.along is not None:
            if not p.layer.along.outward:
                band(p, pattern, by)
        elif p.layer.how == "open" or p.layer.place is not None:
            p.moved(base.shift)
        else:
            p.slid = Motion.translation(p.inward(paths[id(p)]) * by)
            p.moved(base.shift.then(p.slid))
