"""Rows that close nothing: edge finish, topstitch, edgestitch, staystitch."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.rules import Pressed
from kit.sewing.vocabulary import *

EDGESTITCH = 3.0
"""mm from the edge up to which a row is called an edgestitch (common practice, no source)."""
_APART = 6.0
"""mm between rows of topstitching."""


def _within_reach(finish: EdgeFinish, state: State, pattern: Cut) -> Iterable[Case]:
    """The raw edges are not shut in, nor turned under or faced."""
    for run in finish.edges:
        shut = not state.is_raw(pattern, run) and any(map(state.touches, facts_of(pattern, (run,), "shut_in")))
        gone = any(
            done.how in ("faced", "hemmed") and done.span.overlap(span) > 0.5
            for span in spans(pattern, run)
            for done in state.closed
        )
        yield Case(not shut and not gone, run)


@operation
class EdgeFinish(Operation):
    """Overcast raw edges. `leave=True`: that is all the edge gets.

    Example::

        make.edge_finish(front.side, back.side, stitch="overlock")
    """

    kind = "edge_finish"
    seam_class = "6.01.01"
    says = ("sew", both("edges"))
    why = ("why",)
    rules = (Rule(Asking(_within_reach), "finished_late", each=True),)

    edges: tuple[Run, ...] = runs()
    stitch: str = word(FINISHES[:3], default="zigzag", fills={"finish": "word.finish"})
    leave: bool = flag(default=False)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.edges, "finished") if self.leave else ()

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.edges, 0.0) if self.leave else {}

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (laid(run, Row(run, inset=1.5 if self.leave else -3.0, zigzag=True), section=section.one_ply()),)


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
    why = ("why",)
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

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        rows = tuple(Row(run, inset=self.distance + _APART * number) for number in range(self.rows))
        return (laid(run, *rows, section=section.faced("main", True)),)


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
    why = ("why",)
    gives = (Of("staystitched", "along"),)
    rules = (
        Rule(Raw("along"), "staystitched_late", each=True),
        Rule(Asking(_beyond_cloth), "staystitch_outside_cloth", tells=(), each=True),
    )
    pictures = seen("along", lambda row, run: laid(run, Row(run, inset=-row.distance), section=section.one_ply()))

    along: tuple[Run, ...] = runs()
    distance: float = width(default=3 * mm)  # outside the stitch line
