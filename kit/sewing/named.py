"""Places on the cut pieces as values of messages: names as the lesson gives them, put into words later."""

from __future__ import annotations

from collections.abc import Iterable

from kit.diagnostic import EdgeName, NamedLandmark, NamedPlace, Value, named_edge, own
from kit.piece.piece import Piece, Side
from kit.sewing.cut import Cut
from kit.sewing.legs import Landmark, Line, at_mark, chained, named_landmark, run_legs, size_of, tip
from kit.sewing.marked import Place
from kit.sewing.run import Chain, Run
from kit.sewing.spans import Span

_AT_END = 0.5  # mm from an end that is told as that end
_ALIKE = 0.5  # mm that the ends beyond two places may differ by
_NEAR_END = 4.0  # times as far from the start as from the end, and a part's end is measured from there


def edge_of(piece: Piece, name: str) -> Value:
    """An edge of a piece by its name; of a name that no edge has, the name."""
    return named_edge(piece.edge(name)) if piece.has_edge(name) else own(name)


def edge_on(piece: Piece, side: Side, name: str) -> Value:
    """An edge of one half: "left side seam" where the piece has two halves, else "side seam"."""
    return Value((_name(piece, name), side if len(piece.sides) == 2 else ""), "edge_on")


def line_of(pattern: Cut, line: Run | Chain) -> Line:
    """The legs of whole edges, as the pattern has them now."""
    if isinstance(line, Run):
        return run_legs(pattern.piece(line.piece), line.edges, line.side)
    rows = [run_legs(pattern.piece(run.piece), run.edges, run.side) for run in line.of]
    return tuple(leg for row in chained(rows)[0] for leg in row)


def part_of(pattern: Cut, line: Run | Chain) -> tuple[NamedLandmark, NamedLandmark] | None:
    """The landmarks between which a part lies; None for whole edges, and for a part that nobody named."""
    found = line.part if isinstance(line, Run) else line.stretch
    if found is None:
        return None
    legs = line_of(pattern, line)
    start, end = (tip(legs, each.which) if each.what == "tip" and each.which else each for each in found)
    if end.what == "length" != start.what and end.at > _NEAR_END * (size_of(legs) - end.at):
        return named_landmark(legs, start), named_landmark(legs, end, "end")
    return named_landmark(legs, start), named_landmark(legs, end)


def spot_on(pattern: Cut, run: Run, at: float) -> NamedLandmark:
    """The place `at` mm along a run: the end of a mark or of the whole edges there, else a length from one."""
    legs = line_of(pattern, run)
    place, size = at + (run.start or 0.0), size_of(legs)
    marks = [found for mark in legs[0].piece.marks for found in at_mark(legs, run.piece, mark, run.side)]
    for mark in marks:
        if mark.which and abs(mark.at - place) < _AT_END and _AT_END < place < size - _AT_END:
            return named_landmark(legs, mark)
    if place < _AT_END or place > size - _AT_END:
        return named_landmark(legs, tip(legs, "start" if place < _AT_END else "end"))
    return _from_nearer(legs, place)


def _from_nearer(legs: Line, place: float) -> NamedLandmark:
    """A place as its length from the start of the edges, or from their end where that is much nearer."""
    if place > _NEAR_END * (size_of(legs) - place):
        return named_landmark(legs, Landmark("length", place), "end")
    return named_landmark(legs, Landmark("length", place))


def length_on(pattern: Cut, run: Run, at: float) -> NamedLandmark:
    """The place `at` mm along a run, told by its length alone: for one whose mark the sentence names itself."""
    legs = line_of(pattern, run)
    return named_landmark(legs, Landmark("length", at + (run.start or 0.0)))


def lengths_on(pattern: Cut, run: Run, one: float, two: float) -> tuple[NamedLandmark, NamedLandmark]:
    """Two places so many mm along a run, each told as a length from the start of its whole edges."""
    legs, start = line_of(pattern, run), run.start or 0.0
    first, second = (named_landmark(legs, Landmark("length", each + start)) for each in (one, two))
    return first, second


def spots_on(pattern: Cut, run: Run, one: float, two: float) -> tuple[NamedLandmark, NamedLandmark]:
    """Two places along a run as lengths; of two that lie alike from both ends the second from the end."""
    legs, start = line_of(pattern, run), run.start or 0.0
    low, high = sorted((one + start, two + start))
    if abs(low + high - size_of(legs)) < _ALIKE:
        return named_landmark(legs, Landmark("length", low)), named_landmark(legs, Landmark("length", high), "end")
    return lengths_on(pattern, run, one, two)


def stretch_of(pattern: Cut, span: Span) -> Value:
    """A stretch of one edge, told from one of its ends."""
    return Value(lengths_on(pattern, Run(span.piece, (span.edge,), span.side), span.start, span.end), "stretch")


def ends_within(pattern: Cut, runs: Iterable[Run]) -> tuple[NamedLandmark, ...]:
    """The landmarks at which named parts end before their edges do."""
    found: list[NamedLandmark] = []
    for line in gathered(runs):
        part = line.part if isinstance(line, Run) else line.stretch
        if part is not None:
            legs = line_of(pattern, line)
            inside = (each for each in part if _AT_END < each.at < size_of(legs) - _AT_END)
            found += [named_landmark(legs, each) for each in inside]
    return tuple(dict.fromkeys(found))


def gathered(runs: Iterable[Run]) -> list[Run | Chain]:
    """Runs one by one, those of a chain that are all there as that chain."""
    rest, found = list(runs), list[Run | Chain]()
    while rest:
        chain = rest[0].chain
        whole = chain is not None and chain.runs == tuple(rest[: len(chain.runs)])
        found.append(chain if chain is not None and whole else rest[0])
        del rest[: len(chain.runs) if chain is not None and whole else 1]
    return found


def spot(pattern: Cut, place: Run | Place) -> NamedPlace:
    """A run of edges or a mark with its piece."""
    piece = pattern.piece(place.piece)
    edges: tuple[EdgeName | str, ...]
    edges = (place.mark.label,) if isinstance(place, Place) else tuple(_name(piece, name) for name in place.edges)
    part = part_of(pattern, place) if isinstance(place, Run) else None
    return NamedPlace(piece.title, edges, place.side if place.side and len(piece.sides) == 2 else "", part)


def placed(pattern: Cut, place: Run | Chain | Place) -> Value:
    """A run of edges or a mark with its piece: "front left side seam"."""
    if isinstance(place, Chain):
        return row(pattern, place.runs)
    return Value(spot(pattern, place), "place")


def row(pattern: Cut, runs: tuple[Run, ...]) -> Value:
    """Runs of edges that are sewn as one."""
    return Value(tuple(spot(pattern, run) for run in runs), "row")


def _name(piece: Piece, name: str) -> EdgeName:
    return EdgeName(name, piece.edge(name).said if piece.has_edge(name) else "")
