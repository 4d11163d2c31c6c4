"""Rows that close nothing: edge finish, topstitch, edgestitch, staystitch."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.vocabulary import *

EDGESTITCH = 3.0
"""mm from the edge up to which a row is called an edgestitch (common practice, no source)."""
_APART = 6.0
"""mm between rows of topstitching."""


def _within_reach(finish: EdgeFinish, state: State, pattern: Cut, run: Run) -> bool:
    """The raw edges are not shut in, nor turned under or faced."""
    shut = not state.is_raw(pattern, run) and any(map(state.touches, facts_of(pattern, (run,), "shut_in")))
    gone = [done.span for done in state.closed if done.how in ("faced", "hemmed")]
    return not shut and not any(span.overlap(own) > 0.5 for span in gone for own in spans(pattern, run))


@operation
class EdgeFinish(Operation):
    """Overcast raw edges. `leave=True`: that is all the edge gets.

    Example::

        make.edge_finish(front.side, back.side, stitch="overlock")
    """

    kind = "edge_finish"
    seam_class = "6.01.01"
    says = ("sew", both("edges"))
    rules = (Rule(Each("edges", _within_reach), "finished_late", each=True),)
    pictures = seen(
        "edges",
        lambda finish, run: laid(
            run, Row(run, inset=1.5 if finish.leave else -3.0, zigzag=True), section=section.one_ply()
        ),
    )

    edges: tuple[Run, ...] = runs(
        closes=lambda finish: "finished" if finish.leave else None, takes=lambda finish: 0.0 if finish.leave else None
    )
    stitch: str = word(FINISHES[:3], default="zigzag", fills={"finish": "word.finish"})
    leave: bool = flag(default=False)


@operation
class Topstitch(Operation):
    """Rows on the right side, the first `distance` inside a closed edge or beside a seam, the others 6 mm further in.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="one side")
        make.topstitch(front.side, distance=6 * mm, rows=2)
    """

    kind = "topstitch"
    crosses = True
    says = ("{near}", both("along"))
    also = (Also("apart", _APART),)
    pictures = seen("along", lambda row, run: laid(run, *row.sewn(run), section=section.faced("main", True)))
    rules = (
        Rule(Closed("along"), "edge_still_raw", says="topstitched_raw", each=True),
        Rule(Pressed("along"), "topstitched_unpressed", each=True),
    )

    along: tuple[Run, ...] = runs()
    distance: float = width(default=6 * mm)
    rows: int = whole(default=1, most=6, refused="rows of topstitching")

    @property
    def near(self) -> str:
        """The key of how near the edge the first row is, and of several rows."""
        near = "edge" if self.distance <= EDGESTITCH else "sew"
        return f"{near}_rows" if self.rows > 1 else near

    def sewn(self, run: Run) -> tuple[Row, ...]:
        """Its rows along a run."""
        return tuple(Row(run, inset=self.distance + _APART * number) for number in range(self.rows))


@operation(verb="edgestitch")
class Edgestitch(Topstitch):
    """A row on the right side, very close to a finished edge or seam.

    Example::

        make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm, press="one side")
        make.edgestitch(back.shoulder)
    """

    distance: float = width(default=2 * mm, most=EDGESTITCH)
    rows: int = fixed(1)


def _beyond_cloth(row: Staystitch, state: State, pattern: Cut) -> Iterable[Case]:
    """The row lies in the allowance."""
    for run in row.along:
        for name in run.edges:
            allowance = pattern.piece(run.piece).edge(name).allowance
            if allowance is not None:
                at = Run(run.piece, (name,), run.side)
                yield Case(allowance > row.distance, at, amount=row.distance - allowance)


@operation
class Staystitch(Operation):
    """A row in the allowance that keeps a curve from stretching.

    Example::

        make.staystitch(front.neck, back.neck)
    """

    kind = "staystitch"
    says = ("sew", both("along"))
    gives = (Of("staystitched", "along"),)
    rules = (
        Rule(Raw("along"), "staystitched_late", each=True),
        Rule(Asking(_beyond_cloth), "staystitch_outside_cloth", each=True),
    )
    pictures = seen("along", lambda row, run: laid(run, Row(run, inset=-row.distance), section=section.one_ply()))

    along: tuple[Run, ...] = runs()
    distance: float = width(default=3 * mm)  # outside the stitch line
