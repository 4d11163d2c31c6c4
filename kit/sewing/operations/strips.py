"""Ties and other strips fixed to an edge."""

from __future__ import annotations

from collections.abc import Callable
from typing import Self

from kit.sewing.vocabulary import *

NEAR_EDGE = 3.0
"""mm from a raw edge that a strip is basted where there is no allowance (common practice, no source)."""


def spotted(part: int, of: str = "to", free: str | None = None) -> Callable[[Any, Asked, str], Any]:
    """Reads a place on the run written for `of`, at what is written for `at`: 0 gives the run, 1 the mm along it, 2 how
    it is said ("start", "end", "along", "mark"). `free` is where it lies when nothing is written; a mark is a place by
    itself."""

    def read(given: Any, asked: Asked, name: str) -> Any:
        to, at = asked.given[of], asked.given["at"]
        return asked.reader.spot(to, free if at is None and not isinstance(to, Place) else at, asked.where)[part]

    return read


def fixed_by(*ways: str) -> Any:
    """How a strip is fixed: one of the words, the first unless another is written."""

    def read(given: Any, asked: Asked, name: str) -> str:
        return read_word(given, ways, name, asked.where)

    return read_by(read, "str", default=ways[0], held=ways[0])


def _reaches(made: AttachStrip, state: State, pattern: Cut) -> Iterable[Case]:
    """The run is long enough."""
    size = run_length(pattern, made.run)
    values = {"at": measured(made.at), "place": placed(pattern, made.run), "size": measured(size)}
    yield Case(made.at <= size + 0.5, pattern.strip(made.name), amount=made.at - size, values=values)


ATTACHED = (
    Rule(Made("name"), "strip_not_made", do="do_make_strip_first"),
    Rule(EnoughStrips("name", lambda made, _: made.halves), "too_few_strips"),
)
ON_THE_RUN = Rule(Asking(_reaches), "place_outside_run", on="last")


@operation
class OnRun(Operation):
    """A made strip fixed to a run; `halves` is how many strips that makes, one for each half the run means."""

    lastly: ClassVar[Keys] = (lambda made, pattern: both_sides(pattern, (made.run,)),)
    changes = (Brings("attached", lambda made, pattern: {made.name: made.halves}),)

    name: str = strip(argument="strip", fills={"strip": "strip"}, uses="halves")
    halves: int = fixed(1)

    @classmethod
    def made(cls, asked: Asked) -> Self:
        made = cls(**asked.read)
        return replace(made, halves=len(sides_of(asked.reader.cut, made.run)))

    @property
    def run(self) -> Run:
        """What it is fixed to."""
        return self.runs()[0]

    @property
    def last(self) -> Run:
        """The last edge of the run."""
        return replace(self.run, edges=self.run.edges[-1:])

    def across(self, pattern: Cut) -> float:
        """mm across the strip."""
        strip = pattern.strip(self.name)
        return strip.finished_width or strip.width / 4


def _raw_there(made: AttachStrip, state: State, pattern: Cut) -> Iterable[Case]:
    """The edge is raw where the strip lies."""
    place = around(pattern, made.to, made.at, made.across(pattern))
    values = {"place": placed(pattern, made.to)}
    yield Case(state.is_raw(pattern, place), pattern.strip(made.name), values=values)


def _catches(made: AttachStrip, state: State, pattern: Cut) -> Iterable[Case]:
    """A row is still to come that can catch the strip: the edge is raw, or the last row of its seam is not sewn yet."""
    place = around(pattern, made.to, made.at, made.across(pattern))
    waiting = all(state.holds(fact) for fact in facts_of(pattern, (place,), "half_sewn"))
    return (case if not waiting else case._replace(holds=True) for case in _raw_there(made, state, pattern))


@operation
class AttachStrip(OnRun):
    """Fix a made strip to a run at its "start", its "end" (so unless said) or a length along it, or at a mark.

    Example::

        make.turn_strip(tie, allowance=6 * mm)
        make.attach_strip(tie, front.left.side, at=12 * cm, method="caught")
    """

    # "stitched_on" lays its end `lap` mm over the finished edge and stitches a box; "caught" bastes it to the raw edge
    # so that the next seam there catches it
    kind = "attach_strip"
    why = ()
    cautions = ("needle", "cords")
    says = ("attach_strip.{method}.place_{near}", "attach_strip.{method}.sew{bare}")
    also = (Also("at", lambda made, pattern: (made.to, made.at), "spot"), Also("row", NEAR_EDGE))
    rules = (
        *ATTACHED,
        replace(ON_THE_RUN, ends="all"),
        Rule(Asking(_catches), "edge_closed_already", on="to", when=lambda made: made.method == "caught"),
        Rule(
            Asking(_raw_there),
            "edge_still_raw",
            holds=False,
            says="strip_edge_raw",
            on="to",
            when=lambda made: made.method == "stitched_on",
        ),
    )

    to: Run = read_by(spotted(0, free="end"), "Run | Place", way="place", fills={"run": "place"})
    at: float = read_by(spotted(1, free="end"), "Size | None", default=None, held=0.0, fills={"": "length"})
    method: str = fixed_by("stitched_on", "caught")
    lap: float = width(default=10 * mm)
    near: str = read_by(spotted(2, free="end"), "", way="none", held="along")
    mark: str = read_by(
        lambda given, asked, name: asked.given["to"].mark.label if isinstance(asked.given["to"], Place) else "",
        "",
        way="none",
        held="",
        fills={"": "text"},
    )

    def bare(self, pattern: Cut) -> str:
        """ "_edge" where the strip is caught at an edge without an allowance, as one that is bound."""
        allowances = [pattern.piece(self.to.piece).edge(name).allowance or 0.0 for name in self.to.edges]
        return "_edge" if self.method == "caught" and min(allowances) < 2 * NEAR_EDGE else ""

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.to)
        on_top = self.method == "stitched_on"
        short = around(pattern, run, self.at, self.across(pattern) if on_top else 10.0)
        inset = NEAR_EDGE if self.bare(pattern) else -2.0
        row = Row(short, inset=self.lap / 2, style="box") if on_top else Row(short, inset=inset, style="baste")
        return (laid(run, row, up="wrong" if on_top else "right", strip=self.name),)
