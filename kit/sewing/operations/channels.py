"""A channel for a cord or elastic between two rows through an edge that is turned already: below the mouth of a lined
bag, under a frill. What is drawn through it is in `drawn_in`."""

from __future__ import annotations

import math

from kit.sewing.fields import part
from kit.sewing.operations.casings import gap_shown, in_its_edges
from kit.sewing.operations.turned import right_side_out
from kit.sewing.sections import bindings as section
from kit.sewing.vocabulary import *

NARROWEST = 7.0
"""mm between two rows in which a cord still runs (common practice, no source)."""
BEYOND = 2.0
"""mm of every layer that must lie beyond the second row, so that it is caught (common practice, no source)."""


def reach(pattern: Cut, run: Run) -> float:
    """How far a piece goes on from the edges of a run, mm: to the nearest edge that does not meet them, and to the far
    ends of those that do."""
    piece = pattern.piece(run.piece)
    path = path_of(pattern, Run(run.piece, run.edges))
    meeting = neighbours(piece, run.edges)
    found = [math.inf]
    for edge in piece.edges:
        if edge.name in meeting:
            found.append(max(path.distance_to(edge.path.start), path.distance_to(edge.path.end)))
        elif edge.name not in run.edges:
            found += [path.distance_to(point) for point in edge.path.points()]
            found += [edge.path.distance_to(point) for point in path.points()]
    return min(found)


def _hem(state: State, run: Run) -> float:
    """mm of the run's own allowance that lie under it, turned over."""
    hems = (each for each in state.turned if each.run.piece == run.piece and {*run.edges} <= {*each.run.edges})
    return max((each.deep for each in hems), default=0.0)


def _faced(state: State, pattern: Cut, run: Run) -> bool:
    """Whether the run lies at an edge where a second piece is turned under it."""
    return all(map(state.holds, facts_of(pattern, (run,), "faced")))


def _two_layers(made: Channel, state: State, pattern: Cut, run: Run) -> bool:
    """A lining, a facing or a hem lies under the edge."""
    return _faced(state, pattern, run) or _hem(state, run) > 0


def _caught(made: Channel, state: State, pattern: Cut) -> Iterator[Case]:
    """Both layers lie under the second row."""
    for run in made.edges:
        layers = [reach(pattern, run)]
        if _faced(state, pattern, run):
            layers += [reach(pattern, Run(each.piece, each.edges)) for each in state.opposite(pattern, run)]
        elif hem := _hem(state, run):
            layers.append(hem)
        over = made.far + BEYOND - min(layers)
        yield Case(over <= 0.5, run, amount=over, values={"reach": measured(min(layers), "allowance")})


@operation
class Channel(Operation):
    """Stitch a channel for a cord or elastic through an edge lined, faced or hemmed: a row `distance` from the edge, a
    second `depth` below it. `gap`: a part of that left open, for elastic.

    Example::

        make.channel(flap.outer, distance=2 * cm, depth=1.5 * cm)
    """

    kind = "channel"
    tools = ("machine", "pins", "chalk")
    crosses = True
    work = Work(6.0, 12.0)
    says = ("mark", "first", Say("second", lambda channel: channel.gap is None, "second_gap"), in_two_rows("edges"))
    also = (
        Also("total", lambda channel, pattern: channel.far),
        Also("gap", lambda channel, pattern: sewn_length(pattern, (channel.gap,)) if channel.gap else 0.0, "length"),
    )
    gives = (
        Of("casing", "edges"),
        Of("casing_depth", "edges", size="depth"),
        Of("channel", "edges", size="distance"),
        Of("row_gap", "gap"),
    )
    wanted = (Of("threaded", "edges"), Of("row_gap_closed", "gap"))
    rules = (
        in_a_row("edges"),
        right_side_out("edges"),
        Rule(Of("casing", "edges"), "channel_twice", holds=False, do="do_take_one_operation_out", ends="all"),
        Rule(Each("edges", _two_layers), "channel_one_layer", each=True, ends="run"),
        Rule(Pressed("edges"), "topstitched_unpressed", each=True),
        at_least("depth", NARROWEST, "channel_shallow", of="edges", slack=0.01),
        Rule(Asking(_caught), "channel_beyond"),
        Rule(Asking(in_its_edges), "gap_elsewhere"),
    )

    edges: tuple[Run, ...] = runs()
    distance: float = width(default=30 * mm, most=DEEPEST_HEM, fills="part")
    depth: float = width(most=DEEPEST_HEM, fills="part")
    gap: Run | None = part(by_name=True, default=None, fills={"where": "place"}, touched=False)

    @property
    def far(self) -> float:
        """mm from the edge to the second row."""
        return self.distance + self.depth

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run, gap = gap_shown(self, pattern)
        rows = (Row(run, inset=self.distance), Row(run, inset=self.far, gap=gap))
        hemmed = not _faced(state_before(pattern, self), pattern, run)
        return (laid(run, *rows, section=section.channel(hemmed=hemmed)),)
