"""Walking a seam: one edge rolled along the other, before anything is cut.

`walk` is a pure function of the pieces. Each edge is taken as it is sewn, its darts and pleats folded shut, from the
end where the two meet. What it gives says for every notch, corner and mark how far along each edge it lies and by how
much the two differ there, and where the rolling piece lies at any distance, so that it can be shown rolling.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Literal

from kit.diagnostic import Told, list_of, message, named_edge
from kit.errors import KitError
from kit.geometry import Motion, Path, Point
from kit.piece.folded import MEET, Folded, sewn_part
from kit.piece.piece import Piece, named
from kit.sewing.cut import Cut
from kit.sewing.run import Run

What = Literal["start", "notch", "corner", "seam", "mark", "fold", "end"]
On = Literal["both", "a", "b"]
REACH = 20.0
"""A notch is taken for the partner of another up to this far off in mm, besides the difference in length."""


@dataclass(frozen=True)
class WalkStation:
    """One place on the walk, `a` mm along the first edge and `b` mm along the second. `on` says which edge carries
    it; where only one does, the place opposite is reckoned between the stations on both."""

    called: Told
    what: What
    a: float
    b: float
    on: On = "both"

    @property
    def name(self) -> str:
        """What lies here, in the spoken language."""
        return str(self.called)

    @property
    def difference(self) -> float:
        """By how much the second edge is longer than the first up to here, mm."""
        return self.b - self.a


@dataclass(frozen=True)
class Walk:
    """Edge `a` with edge `b` rolled along it. `ease` mm by which `b` (or, below zero, `a`) is longer on purpose."""

    a: Folded
    b: Folded
    stations: tuple[WalkStation, ...]
    ease: float = 0.0

    @property
    def difference(self) -> float:
        """By how much the second edge is longer than the first, mm."""
        return self.b.length - self.a.length

    @property
    def unmatched(self) -> tuple[WalkStation, ...]:
        """Notches on one edge that have no partner on the other."""
        return tuple(s for s in self.stations if s.what == "notch" and s.on != "both")

    def opposite(self, distance: float) -> float:
        """The place on the second edge that comes to `distance` mm along the first when both are pinned at the
        stations they share and any ease is spread between these."""
        return _between([(s.a, s.b) for s in self.stations if s.on == "both"], distance)

    def motion(self, distance: float) -> Motion:
        """Where the second piece lies once it has rolled `distance` mm along the first: there the two edges touch
        and run alike, and the cloth lies on either side of the line. Beyond the shorter edge's end it rests."""
        d = min(max(distance, 0.0), self.a.length, self.b.length)
        here, there = self.a.path.at(d), self.b.path.at(d)
        one, two = self.a.path.tangent_at(d), self.b.path.tangent_at(d)
        # Sewn and opened out, the two pieces lie on opposite sides of the seam. Where both have their cloth on the
        # same side as they are walked, one of them is seen from its other face.
        flip = self.a.cloth_left == self.b.cloth_left
        return Motion.matching(there, there + two, here, here + one, flip)


def walk(
    pieces: Cut | Iterable[Piece],
    first: Run | str,
    second: Run | str,
    *,
    turned: bool | None = None,
    ease: float = 0.0,
) -> Walk:
    """The walk of edge `second` along edge `first`.

    `pieces` is a pattern or its pieces; the edges are runs (`Run`) or named as "front.side", several in a row as
    "front.underarm + front.side". Pieces of one draft lie in the same coordinates, so the ends that lie nearer are
    taken for those that meet; `turned` says it by hand: whether the second edge is walked from its end. `ease` is how
    much longer (mm) the second is meant to be. Raises `KitError` for a name that is not there, edges that do not
    follow one another, an edge walked against itself, or a dart whose legs differ.

    >>> from kit import bodice_block, workshop_chart
    >>> walked = walk(bodice_block(workshop_chart()["W4"]), "front.side", "back.side")
    >>> abs(walked.difference) < 0.1
    True
    """
    known = tuple(pieces if isinstance(pieces, Iterable) else pieces.pieces)
    one, two = run_of(known, first), run_of(known, second)
    if (one.piece, one.edges, one.start, one.end, one.side) == (two.piece, two.edges, two.start, two.end, two.side):
        raise KitError(
            f"the {one.said} would be walked along itself.", do="Name the two edges that are sewn to each other."
        )
    a, b = as_sewn(named(known, one.piece, "piece"), one), as_sewn(named(known, two.piece, "piece"), two)
    return walk_folded(a, b, turned=turned, ease=ease)


def walk_folded(a: Folded, b: Folded, *, turned: bool | None = None, ease: float = 0.0) -> Walk:
    """The walk of one run as sewn along another; see `walk`."""
    if opposed(drawn(a), drawn(b)) if turned is None else turned:
        b = _turned(b)
    return Walk(a, b, _stations(a, b), ease)


def run_of(pieces: Sequence[Piece], given: Run | str) -> Run:
    """A run from its name: "front.side", "front.left.side", "front.underarm + front.side"."""
    if isinstance(given, Run):
        return given
    if not isinstance(given, str):
        raise KitError(f"{given!r} is not an edge.", do='Name edges as "front.side".')
    whole: Run | None = None
    for part in given.split("+"):
        words = [word.strip() for word in part.strip().split(".")]
        side = words.pop(1) if len(words) == 3 and words[1] in ("left", "right") else None
        if len(words) != 2 or not all(words):
            raise KitError(f"'{part.strip()}' does not name an edge.", do='Name piece and edge, as in "front.side".')
        piece = named(pieces, words[0], "piece")
        piece.edge(words[1])
        run = Run(piece.name, (words[1],), side)  # type: ignore[arg-type]
        longer = run if whole is None else whole + run
        if not isinstance(longer, Run):
            raise KitError(
                f"a run that is walked stays on one piece and half: {longer.said} does not.",
                do="Name edges of one piece.",
            )
        whole = longer
    assert whole is not None
    return whole


def as_sewn(piece: Piece, run: Run) -> Folded:
    """A run of a piece with its darts and pleats folded shut; its part, where it has one, taken out."""
    return sewn_part(piece, run.edges, run.start, run.end)


def opposed(one: Path, other: Path) -> bool:
    """Whether `other` runs the other way when the two are laid together: the nearer ends belong together; where
    neither is nearer they are taken as drafted."""
    same = one.start.distance(other.start) + one.end.distance(other.end)
    crossed = one.start.distance(other.end) + one.end.distance(other.start)
    return crossed < same - MEET


def drawn(run: Folded) -> Path:
    """From the first to the last point of a run as they lie on the draft, in a straight line."""
    first, last = run.stretches[0], run.stretches[-1]
    start = run.piece.edge(first.edge).path.at(first.low if first.forward else first.high)
    end = run.piece.edge(last.edge).path.at(last.high if last.forward else last.low)
    # A run that closes on itself has no straight line; where it sets out to says its direction.
    if start.distance(end) < MEET:
        end = start + run.path.start_tangent
    return Path.line(start, end)


def _turned(run: Folded) -> Folded:
    # The whole run is laid out anew from its other end, and the part then taken out of it again.
    whole = run.reversed()
    first, last = run.stretches[0], run.stretches[-1]
    ends = (
        whole.sewn(last.edge, last.high if last.forward else last.low),
        whole.sewn(first.edge, first.low if first.forward else first.high),
    )
    low, high = (0.0 if place is None else place for place in ends)
    return whole if high - low > whole.length - 1e-6 else whole.part(low, high)


# ---- stations ---------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class _OnRun:
    name: Told
    what: What
    at: float
    key: str = ""


def _on_run(run: Folded) -> list[_OnRun]:
    """What lies on one edge, in order along it as sewn."""
    piece, found = run.piece, []
    for notch in piece.notches:
        if notch.edge in run.edges and (at := run.sewn(notch.edge, notch.distance)) is not None:
            found.append(
                _OnRun(
                    message("walk.double_notch" if notch.kind == "double" else "walk.notch"), "notch", at, notch.name
                )
            )
    for before, after in zip(run.stretches, run.stretches[1:], strict=False):
        if before.edge != after.edge:
            first, second = (named_edge(piece.edge(name)) for name in (before.edge, after.edge))
            found.append(_OnRun(message("walk.seam", first=first, second=second), "seam", after.at))
    joints = [spot.at for spot in found if spot.what == "seam"] + [fold.at for fold in run.folds]
    for at in run.path.corners:
        if all(abs(at - joint) > MEET for joint in joints):
            found.append(_OnRun(message("walk.corner"), "corner", at))
    for fold in run.folds:
        found.append(_OnRun(fold.label, "fold", fold.at, fold.name))
    for mark in piece.marks:
        if mark.kind == "opening" and mark.edge in run.edges:
            for word, place in (("start", mark.start), ("end", mark.end)):
                if (at := run.sewn(mark.edge, place)) is not None:
                    found.append(
                        _OnRun(message(f"walk.mark_{word}", first=mark.label), "mark", at, f"{mark.name} {word}")
                    )
        elif mark.kind in ("point", "drill"):
            at = run.sewn(mark.edge, mark.start) if mark.edge in run.edges else _lying(run, mark.point)
            if at is not None:
                found.append(_OnRun(mark.label, "mark", at, mark.name))
    return sorted(found, key=lambda spot: spot.at)


def _lying(run: Folded, point: Point | None) -> float | None:
    """Where a point drawn on the piece lies on the run, if it does."""
    if point is None:
        return None
    for name in run.edges:
        path = run.piece.edge(name).path
        along = path.nearest(point)
        if path.at(along).distance(point) <= 1.0:
            return run.sewn(name, along)
    return None


def _stations(a: Folded, b: Folded) -> tuple[WalkStation, ...]:
    one, two = _on_run(a), _on_run(b)
    # Spots that belong together may have drifted apart by as much as the whole difference between the edges.
    reach = REACH + abs(b.length - a.length)
    pairs = _pairs(one, two, reach)
    shared = [(0.0, 0.0), *((one[i].at, two[j].at) for i, j in pairs), (a.length, b.length)]
    found = [
        WalkStation(message("walk.start"), "start", 0.0, 0.0),
        WalkStation(message("walk.end"), "end", a.length, b.length),
    ]
    for i, j in pairs:
        name = (
            one[i].name
            if one[i].name == two[j].name
            else message("walk.both", names=list_of((one[i].name, two[j].name)))
        )
        found.append(WalkStation(name, one[i].what, one[i].at, two[j].at))
    taken_a, taken_b = {i for i, _ in pairs}, {j for _, j in pairs}
    found += [
        WalkStation(s.name, s.what, s.at, _between(shared, s.at), "a") for i, s in enumerate(one) if i not in taken_a
    ]
    back = [(y, x) for x, y in shared]
    found += [
        WalkStation(s.name, s.what, _between(back, s.at), s.at, "b") for j, s in enumerate(two) if j not in taken_b
    ]
    rank = {"start": 0, "end": 2}
    return tuple(sorted(found, key=lambda s: (rank.get(s.what, 1), s.a, s.b)))


def _pairs(one: list[_OnRun], two: list[_OnRun], reach: float) -> list[tuple[int, int]]:
    """Which spots belong together, in order along both: those of one kind that lie nearest to each other, and of
    these first the ones that carry the same name."""
    choices = []
    for i, s in enumerate(one):
        for j, t in enumerate(two):
            if s.what == t.what and abs(s.at - t.at) <= reach and (s.what not in ("mark", "fold") or s.key == t.key):
                choices.append((not (s.key and s.key == t.key), abs(s.at - t.at), i, j))
    # The surest pair first; no spot is used twice, and none may cross a pair already made, for cloth cannot.
    found: list[tuple[int, int]] = []
    for _, _, i, j in sorted(choices):
        if all(i != p and j != q and (one[i].at - one[p].at) * (two[j].at - two[q].at) >= 0 for p, q in found):
            found.append((i, j))
    return sorted(found)


def _between(shared: Sequence[tuple[float, float]], at: float) -> float:
    """The place opposite `at`, in proportion between the shared stations on either side."""
    points = sorted(shared)
    low = max((p for p in points if p[0] <= at + 1e-9), default=points[0])
    high = min((p for p in points if p[0] > at + 1e-9), default=points[-1])
    if math.isclose(low[0], high[0]):
        return low[1]
    share = min(max((at - low[0]) / (high[0] - low[0]), 0.0), 1.0)
    return low[1] + share * (high[1] - low[1])
