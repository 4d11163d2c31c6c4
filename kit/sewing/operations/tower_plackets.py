"""The tower placket of a shirt sleeve: one side of the slit bound with a strip, the other covered by a piece with a
point, the tower, that lies over it.

The order (strip on the under side, slit cut into a Y, tower on the upper side, the little triangle caught by the row
across) is common practice, no source."""

from __future__ import annotations

from kit.sewing.operations.plackets import Placket
from kit.sewing.sections import plackets as section
from kit.sewing.vocabulary import *

BEYOND = 15.0
"""mm by which a tower must reach beyond the end of its slit, for the row across and the point (common practice, no
source)."""

_INSET = 2.0  # mm from the tower's edge to its row, in the picture


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
    yield Case(long >= least - 0.5, made.tower, amount=least - long, values=_told(long, least))


def _covers(made: TowerPlacket, state: State, pattern: Cut) -> Iterator[Case]:
    wide, least = _extent(made, pattern)[1] / 2, made.box + 2.0
    yield Case(wide >= least - 0.5, made.tower, amount=least - wide, values=_told(wide, least))


def _told(given: float, least: float) -> dict[str, Any]:
    return {"given": measured(given), "least": measured(least)}


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
        Rule(Asking(_reaches), "tower_short", tells=("given",), do_tells=("least",)),
        Rule(Asking(_covers), "tower_narrow", tells=("given",), do_tells=("least",)),
    )
    also = (*Placket.also, Also("half", lambda made, pattern: made.box / 2), Also("before", 10.0))
    sides = 1

    tower: Run = run(
        only="Name the long edge of the tower.", closes="sewn", takes="allowance", fills={"tower": "place"}
    )
    around: tuple[Run, ...] = row(by_name=True, closes="hemmed", takes="allowance", fills={"around": "edge"})
    name: str = strip(by_name=True, argument="under", fills={"strip": "strip"})
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

    def effect(self, pattern: Cut) -> Effect:
        (edge,) = self.edge(pattern)
        return replace(super().effect(pattern), laid=((self.tower, edge),))

    def minutes(self, pattern: Cut) -> float:
        """40 minutes each (common practice, no source)."""
        return 10.0 + 40.0 * self.count(pattern)

    def rows_round(self, pattern: Cut) -> tuple[Path, ...]:
        """The reinforcing row: a narrow box round the slit, `box` wide."""
        line = self.line(pattern)
        aside = line.start_tangent.left() * (self.box / 2)
        left, right = line.start + aside, line.start - aside
        top = (line.end + aside, line.end - aside)
        return (Path.line(left, top[0]), Path.line(*top), Path.line(top[1], right))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        near, line = self.around_slit(pattern), self.line(pattern)
        run, tower = replace(near, start=None, end=None), shown(pattern, self.tower)
        piece = Scene(
            layers=(Layer(tower, up="wrong", turn=tuple((n, self.allowance) for e in self.around for n in e.edges)),),
            arrows=tuple((shown(pattern, each), "in") for each in self.around),
        )
        wide = _extent(self, pattern)[1] / 2
        along = Path.line(line.start, line.end + line.end_tangent * BEYOND)
        side = line.start_tangent.left() * (wide / 2 - _INSET)
        tip, shoulder = along.end, along.end - line.end_tangent * (wide / 2)
        stitched = (
            Path.line(line.start + side, shoulder + side),
            Path.line(shoulder + side, tip - line.end_tangent * _INSET),
            Path.line(tip - line.end_tangent * _INSET, shoulder - side),
            Path.line(shoulder - side, line.end - side),
            Path.line(line.end + side, line.end - side),
        )
        rows, thing = (Row(run, line=each) for each in stitched), Thing("tower", run, along, wide)
        done = laid(run, *rows, focus=near, things=(thing,), section=section.placket_tower())
        return (self.sewn_round(pattern), piece, done)
