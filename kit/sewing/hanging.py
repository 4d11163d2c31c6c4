"""Where a garment's edges lie along the band that hangs on them.

A band is sewn round an opening that runs over several pieces and both halves. Its seam is walked from edge to edge as
they follow one another on the garment, over folds and sewn seams, and each edge gets its place along the band, in mm
along the band's own run.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from kit.errors import KitError
from kit.piece.folded import folded
from kit.piece.piece import Side
from kit.sewing.cut import Cut
from kit.sewing.legs import End, Leg, run_legs
from kit.sewing.lying import Lying
from kit.sewing.outcome import Hung
from kit.sewing.run import Run
from kit.sewing.spans import Span, neighbours, path_of, run_length, sides_of

_NEAR = 2.0  # mm of an edge beside its corner by which it is told whether the seam there is an opening


@dataclass(frozen=True)
class BandStation:
    """One edge of one half along the band: its start, as drafted, lies at `start` and its end at `end` (mm along the
    band's run; the lesser is first reached). Beyond a `free` end ("start", "end") the garment's edge stops."""

    piece: str
    side: Side
    edge: str
    start: float
    end: float
    free: tuple[End, ...] = ()


_Node = tuple[str, Side, str]


def stations(pattern: Cut, lying: Lying, hung: Hung) -> tuple[BandStation, ...]:
    """The edges a band hangs on, in order along it; the first named comes first. A band that is cut twice hangs on as
    many lines, each from its own start."""
    nodes: list[_Node] = []
    for run in hung.to:
        for side in sides_of(pattern, run):
            nodes += [(run.piece, side, edge) for edge in run.edges]
    nodes = list(dict.fromkeys(nodes))
    legs = {node: Leg(pattern.piece(node[0]), node[1], node[2]) for node in nodes}
    links: _Links = {}
    for one in nodes:
        for end in _ENDS:
            for two in nodes:
                for other in _ENDS:
                    if (one, end) != (two, other) and _meet(lying, legs[one], end, legs[two], other):
                        links.setdefault((one, end), (two, other))
    found: list[BandStation] = []
    left = list(nodes)
    while left:
        free = ((node, end) for node in left for end in _ENDS if (node, end) not in links)
        here: tuple[_Node, End] | None = next(free, (left[0], "start"))
        walk: list[tuple[_Node, End]] = []
        while here is not None and here[0] in left:
            left.remove(here[0])
            walk.append(here)
            here = links.get((here[0], "end" if here[1] == "start" else "start"))
        found += _stationed(pattern, hung, walk, links)
    return tuple(found)


_Links = dict[tuple[_Node, End], tuple[_Node, End]]


def _stationed(pattern: Cut, hung: Hung, walk: list[tuple[_Node, End]], links: _Links) -> list[BandStation]:
    """The edges of one walk, each with its place along the band. Which end of the walk the band begins at follows from
    the order in which the edges were named; where that leaves it open it is the wearer's left."""
    runs = list(enumerate(hung.to))
    order = [next(number for number, run in runs if _is_of(node, run)) for node, _ in walk]
    half = len(order) // 2
    if half and (sum(order[:half]), walk[0][0][1] == "right") > (sum(order[-half:]), walk[-1][0][1] == "right"):
        walk = [(node, "end" if end == "start" else "start") for node, end in reversed(walk)]
    try:
        sizes = [folded(pattern.piece(node[0]), (node[2],)).length for node, _ in walk]
    except KitError:
        return []
    low = min((run.start or 0.0 for run in hung.band), default=0.0)
    scale = run_length(pattern, hung.band[0]) / max(sum(sizes), 1e-6)
    found: list[BandStation] = []
    at = low
    for (node, entered), size in zip(walk, sizes, strict=True):
        far = at + size * scale
        free = tuple(end for end in _ENDS if (node, end) not in links)
        found.append(BandStation(*node, *((at, far) if entered == "start" else (far, at)), free))
        at = far
    return found


def _is_of(node: _Node, run: Run) -> bool:
    """Whether an edge of one half is one of a run's."""
    return node[0] == run.piece and node[2] in run.edges and run.side in (None, node[1])


_ENDS: tuple[End, End] = ("start", "end")


def _meet(lying: Lying, one: Leg, end: End, two: Leg, other: End) -> bool:
    """Whether those two ends of edges follow one another: at a corner, over the fold, over a seam that is no opening
    there."""
    mine, theirs = one.beside(end), two.beside(other)
    if one.piece.name == two.piece.name:
        if one.side == two.side:
            return one.edge != two.edge and mine == two.edge and theirs == one.edge and _touch(one, end, two, other)
        if one.piece.fold and mine == theirs == one.piece.fold:
            return True
    if not mine or not theirs:
        return False
    here, there = _corner(one, end, mine), _corner(two, other, theirs)
    return lying.state.sewn_there(here.key, here.start, there.key, there.start) and not lying.open_at(here)


def _touch(one: Leg, end: End, two: Leg, other: End) -> bool:
    return one.point(end).distance(two.point(other)) < 0.5


def _corner(leg: Leg, end: End, beside: str) -> Span:
    """The first bit of the edge beside a leg's end."""
    path, here = leg.piece.edge(beside).path, leg.point(end)
    at_start = path.start.distance(here) < path.end.distance(here)
    low = 0.0 if at_start else path.length - _NEAR
    return Span(leg.piece.name, leg.side or "right", beside, low, low + _NEAR)


def placed_on(found: tuple[BandStation, ...], run: Run) -> tuple[float, float] | None:
    """Where a run of a garment's whole edges on one half starts and ends along the band, in mm; None where it does not
    lie there."""
    keys = [(run.piece, run.side, edge) for edge in run.edges]
    mine = [each for key in keys for each in found if (each.piece, each.side, each.edge) == key]
    if len(mine) != len(run.edges) or not mine:
        return None
    low, high = min(min(s.start, s.end) for s in mine), max(max(s.start, s.end) for s in mine)
    if len(mine) > 1:
        forward = mine[0].start + mine[0].end < mine[-1].start + mine[-1].end
    else:
        forward = mine[0].start < mine[0].end
    return (low, high) if forward else (high, low)


def _outward(pattern: Cut, band: Run, line: tuple[Run, ...], garment: Run) -> list[Run]:
    """The runs of a line on the half of one of them, from the centre that a band cut on the fold has its fold at; none
    where that cannot be told."""
    half = garment.side or "right"
    runs = [run for run in line if half in sides_of(pattern, run)]
    centres = [run for run in runs if _on_fold(pattern, run)]
    if not pattern.piece(band.piece).fold or not centres:
        return []
    return runs if centres[0] == runs[0] else runs[::-1] if centres[0] == runs[-1] else []


def _on_fold(pattern: Cut, run: Run) -> bool:
    piece = pattern.piece(run.piece)
    return bool(piece.fold) and piece.fold in neighbours(piece, run.edges)


def _fold_first(pattern: Cut, run: Run) -> bool:
    """Whether a run on the fold begins there."""
    piece, path = pattern.piece(run.piece), path_of(pattern, run)
    fold = piece.edge(piece.fold).path
    return fold.distance_to(path.start) < fold.distance_to(path.end)


def beside_run(pattern: Cut, band: Run, line: tuple[Run, ...], garment: Run) -> Run:
    """The part of a band cut on the fold that lies along one run of the line it is sewn to; all of the band where that
    cannot be told."""
    outward = _outward(pattern, band, line, garment)
    number = next((n for n, run in enumerate(outward) if replace(run, side=garment.side) == garment), None)
    if number is None:
        return band
    sizes = [path_of(pattern, run).length for run in outward]
    path = path_of(pattern, band)
    scale = path.length / sum(sizes)
    low, high = sum(sizes[:number]) * scale, sum(sizes[: number + 1]) * scale
    if not _fold_first(pattern, band):
        low, high = path.length - high, path.length - low
    begins = band.start or 0.0
    return replace(band, start=begins + low, end=begins + high)


def runs_against(pattern: Cut, lying: Lying, band: Run, line: tuple[Run, ...], garment: Run) -> bool | None:
    """Whether a run of the line runs against the band cut on the fold that is sewn to it; None where it is not told."""
    outward = _outward(pattern, band, line, garment)
    number = next((n for n, run in enumerate(outward) if replace(run, side=garment.side) == garment), None)
    if number is None:
        return None
    if _on_fold(pattern, garment):
        return _fold_first(pattern, garment) != _fold_first(pattern, band)
    inner, side = outward[number - 1].piece, garment.side or "right"
    legs = run_legs(pattern.piece(garment.piece), garment.edges, garment.side)
    for end, leg in (("start", legs[0]), ("end", legs[-1])):
        beside = leg.beside("start" if end == "start" else "end")
        if beside and any(key[0] == inner for key in lying.partners((garment.piece, side, beside))):
            return (end == "start") != _fold_first(pattern, band)
    return None
