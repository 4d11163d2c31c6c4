"""The tower placket of a shirt sleeve: one side of the slit bound with a strip, the other covered by a piece with a
point, the tower, that lies over it.

The order (strip on the under side, slit cut into a Y, tower on the upper side, the little triangle caught by the row
across) is common practice, no source."""

from __future__ import annotations

import math
from itertools import pairwise

from kit.geometry import Line, Motion, Point
from kit.sewing.operations.plackets import Placket
from kit.sewing.sections import plackets as section
from kit.sewing.vocabulary import *

BEYOND = 15.0
"""mm by which a tower must reach beyond the end of its slit, for the row across and the point (common practice, no
source)."""

_INSET = 2.0  # mm from the tower's edge to its row, in the picture
_FORK = 10.0  # mm before the end of the slit at which the cut forks
_OVER = 1.0  # mm by which a folded edge covers the stitches below it


def _extent(made: TowerPlacket, pattern: Cut) -> tuple[float, float]:
    """(along, across) in mm: how far the tower reaches along its long edge, and away from it."""
    edge = path_of(pattern, made.tower)
    way = (edge.end - edge.start).unit()
    points = [p for curve in pattern.piece(made.tower.piece).outline.curves for p in curve.points(1.0)]
    along = [(p - edge.start).dot(way) for p in points]
    across = [abs((p - edge.start).cross(way)) for p in points]
    return max(along) - min(along), max(across)


def _reaches(made: TowerPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    long, least = _extent(made, pattern)[0], made.line(pattern).length + BEYOND
    yield off_by(made.tower, least - long, given=long, least=least)


def _covers(made: TowerPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    wide, least = _extent(made, pattern)[1] / 2, made.box + 2.0
    yield off_by(made.tower, least - wide, given=wide, least=least)


@operation
class TowerPlacket(Placket):
    """Finish the slit of a shirt sleeve: `tower` is the long edge of the tower that is sewn to the slit, `around` its
    edges that are pressed under and stitched down, the point too; `under` a strip for the other side. `box` is how wide
    the slit is cut out at its end.

    Example::

        make.tower_placket(tower.edge, around=[tower.left_point, tower.right_point, tower.outer],
                           under=placket, slit=sleeve.cuff_slit)
    """

    kind = "tower_placket"
    says = ("mark", "reinforce", "under", "cut", "pin", "sew", "lay", "across")
    rules = (
        *Placket.rules,
        whole_edges("tower"),
        whole_edges("around"),
        Rule(Asking(_reaches), "tower_short"),
        Rule(Asking(_covers), "tower_narrow"),
    )
    also = (*Placket.also, Also("half", lambda made, pattern: made.box / 2), Also("before", _FORK))
    sides = 1
    work = Work(10.0, each=40.0, of="slit")
    changes = (Brings("laid", lambda made, pattern: ((made.tower, *made.edge(pattern)),)),)

    tower: Run = run(
        only="Name the long edge of the tower.", closes="sewn", takes="allowance", fills={"tower": "place"}
    )
    around: tuple[Run, ...] = row(by_name=True, closes="hemmed", takes="allowance", fills={"around": "edge"})
    name: str = strip(by_name=True, argument="under", fills={"strip": "strip"}, uses="strips")
    box: float = width(default=8 * mm)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        tower, around = asked.read["tower"], asked.read["around"]
        if tower.piece == asked.read["slit"].piece or any(each.piece != tower.piece for each in around):
            raise KitError(message("refusal.tower_piece"), where=asked.where, do=message("refusal.tower_piece_do"))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        """Its lower end too, which lies in the allowance of the sleeve's edge and is caught with it."""
        named = {name for each in (self.tower, *self.around) for name in each.edges}
        piece = pattern.piece(self.tower.piece)
        ends = [Run(piece.name, (edge.name,), self.tower.side) for edge in piece.edges if edge.name not in named]
        return (*super().closes(pattern), *closings(pattern, ends, "finished"))

    def rows_round(self, pattern: Cut) -> tuple[Path, ...]:
        """The reinforcing row: a narrow box round the slit, `box` wide."""
        line = self.line(pattern)
        aside = line.start_tangent.left() * (self.box / 2)
        left, right = line.start + aside, line.start - aside
        top = (line.end + aside, line.end - aside)
        return (Path.line(left, top[0]), Path.line(*top), Path.line(top[1], right))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """The tower pressed; the box; the strip on the side that lies under, and the cut; the strip folded over; the
        tower sewn to the other side; brought through and stitched down."""
        near = self.around_slit(pattern)
        run, tower = replace(near, start=None, end=None), shown(pattern, self.tower)
        turned = tuple((name, self.allowance) for each in self.around for name in each.edges)
        pressed = Layer(tower, up="wrong", turn=turned)
        piece = Scene(layers=(pressed,), arrows=tuple((shown(pattern, each), "in") for each in self.around))
        old = Row(run, line=Path.of(*self.rows_round(pattern)), ink="old")
        cut = self._cut(pattern, run)
        line, box_side, seam = self._sides(pattern)
        strip = self._strip(pattern, run, seam, self.allowance - pattern.strip(self.name).width)
        under = laid(run, old, Row(run, line=seam), up="wrong", focus=near, things=(strip, *cut))
        wide = self.finished(pattern)
        folded = self._strip(pattern, run, seam, -_OVER, wide)
        held = seam.moved(Motion.translation(line.start_tangent.left() * (-_OVER / 2)))
        over = laid(run, Row(run, line=held), focus=near, things=(folded, *cut))
        laid_on = Thing("tower", run, self._unfolded(pattern, box_side), of=self.tower.piece)
        sewn = laid(run, Row(run, line=box_side), up="wrong", focus=near, things=(laid_on, *cut))
        return (piece, self.sewn_round(pattern), under, over, sewn, self._done(pattern, run, near))

    def _sides(self, pattern: Cut) -> tuple[Path, Path, Path]:
        """The slit; the side of the box that the tower is sewn along, and that of the strip, from the edge up."""
        line = self.line(pattern)
        aside = line.start_tangent.left() * (self.box / 2)
        one, other = (line.moved(Motion.translation(aside * way)) for way in (-1.0, 1.0))
        return line, one, other

    def _cut(self, pattern: Cut, run: Run) -> tuple[Thing, ...]:
        """Along the middle, and slantwise into both corners."""
        line, one, other = self._sides(pattern)
        fork = line.at(max(line.length - _FORK, 0.0))
        ways = (Path.line(line.start, fork), Path.line(fork, one.end), Path.line(fork, other.end))
        return tuple(Thing("cut", run, way, 3.0) for way in ways)

    def _strip(self, pattern: Cut, run: Run, seam: Path, off: float, wide: float | None = None) -> Thing:
        """The strip for the side under, `off` mm from its seam to the far edge (below 0: away from the slit)."""
        across = pattern.strip(self.name).width if wide is None else wide
        out = seam.start_tangent.left()
        middle = out * (-off - across / 2)
        return Thing("binding", run, seam.moved(Motion.translation(middle)), across, of=self.name)

    def _unfolded(self, pattern: Cut, seam: Path) -> Path:
        """The outline of the tower where it is sewn on, away from the slit, its raw edge across the seam."""
        piece, edge = pattern.piece(self.tower.piece), path_of(pattern, self.tower)
        way, aside = seam.start_tangent, seam.start_tangent.left()
        points = [p for curve in piece.outline.curves for p in list(curve.points(0.3))[:-1]]
        best: tuple[float, list[Point]] = (-math.inf, [])
        far = seam.start + way * edge.length
        for flip in (False, True):
            for a, b in ((seam.start, far), (far, seam.start)):
                motion = Motion.matching(edge.start, edge.end, a, b, flip)
                there = [motion(p) for p in points]
                out = sum(1 for p in there if (p - seam.start).dot(aside) < 0.1) * 1e3
                up = max((p - seam.start).dot(way) for p in there)
                if out + up > best[0] + 1e-6:
                    raw = [p + aside * self.allowance for p in (a, b)]
                    best = (out + up, _with_raw(there, motion(edge.start), motion(edge.end), raw))
        ring = [*best[1], best[1][0]]
        return Path(tuple(Line(a, b) for a, b in pairwise(ring) if a.distance(b) > 1e-9))

    def lies(self, pattern: Cut) -> tuple[Path, float]:
        """The middle line of the tower when it is done, from the edge to its point, and how wide it is: over the strip,
        its pressed side on the seam."""
        line, wide = self.line(pattern), _extent(self, pattern)[1] / 2
        line = line.moved(Motion.translation(line.start_tangent.left() * ((wide - self.box) / 2 - _OVER)))
        return Path.line(line.start, line.end + line.end_tangent * BEYOND), wide

    def _done(self, pattern: Cut, run: Run, near: Run) -> Scene:
        """The tower brought through and stitched down, its fold free below the row across."""
        along, wide = self.lies(pattern)
        way, side = along.end_tangent, along.start_tangent.left() * (wide / 2 - _INSET)
        tip, end = along.end - way * _INSET, along.end - way * BEYOND
        shoulder = along.end - way * (wide / 2)
        round_it = (along.start - side, shoulder - side, tip, shoulder + side, end + side, end - side)
        row = Path.of(*(Line(a, b) for a, b in pairwise(round_it)))
        thing = Thing("tower", run, along, wide, of=self.tower.piece)
        return laid(run, Row(run, line=row), focus=near, things=(thing,), section=section.placket_tower())


def _with_raw(ring: list[Point], start: Point, end: Point, raw: list[Point]) -> list[Point]:
    """A ring whose side from `start` to `end` goes on to two places beyond it, in that order."""
    first = min(range(len(ring)), key=lambda n: ring[n].distance(start))
    ring = ring[first:] + ring[:first]
    last = min(range(len(ring)), key=lambda n: ring[n].distance(end))
    if last > len(ring) / 2:  # the side runs against the ring
        ring = [ring[0], *ring[1:][::-1]]
        last = min(range(len(ring)), key=lambda n: ring[n].distance(end))
    return [ring[0], *raw, *ring[last:]]
