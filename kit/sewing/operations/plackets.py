"""Plackets: what finishes a slit so that it can open. The continuous bound placket, of one strip.

The order (a row round the end before anything is cut, the cut, the slit pulled straight, the strip, the slanted row
that keeps it inside) is common practice, no source."""

from __future__ import annotations

from typing import Literal

from kit.piece.slit import Slit, slit_of
from kit.sewing.sections import plackets as section
from kit.sewing.vocabulary import *

_IN_ALLOWANCE = 4.0  # mm from the stitch line at which a placket is basted across, in the picture
_NEAR = 15.0  # mm of the edge on either side of a slit that must still be raw, and along which it is basted across


def _slit(made: Placket, pattern: Cut) -> Slit | None:
    return slit_of(pattern.piece(made.slit.piece), made.slit.mark)


def _mouth(made: Placket, pattern: Cut, slit: Slit) -> Run:
    """The stretch of edge round its mouth."""
    size = pattern.piece(made.slit.piece).edge(slit.edge).path.length
    low, high = max(slit.at - _NEAR, 0.0), min(slit.at + _NEAR, size)
    return Run(made.slit.piece, (slit.edge,), made.slit.side, low, high)


def _raw(made: Placket, state: State, pattern: Cut) -> Iterator[Case]:
    if (slit := _slit(made, pattern)) is not None:
        mouth = _mouth(made, pattern, slit)
        yield Case(state.is_raw(pattern, mouth), mouth)


def _long(made: Placket, state: State, pattern: Cut) -> Iterator[Case]:
    strip, needed = pattern.strip(made.name), made.needed(pattern)
    yield off_by(strip, needed - strip.length, length=strip.length, needed=needed)


def _wide(made: Placket, state: State, pattern: Cut) -> Iterator[Case]:
    strip, needed = pattern.strip(made.name), 4 * made.allowance
    yield off_by(strip, needed - strip.width, width=strip.width, needed=needed)


@operation
class Placket(Operation):
    """Base: a slit that is sewn round, cut open and finished; a `strip` for each half binds what it binds of it."""

    tools = ("machine", "pins", "iron", "scissors", "chalk")
    gives = (Of("slit_finished", "slit"),)
    rules: ClassVar[Rules] = (
        Rule(Of("slit_finished", "slit"), "placket_twice", holds=False, says="worked_twice", do="do_take_one_out"),
        Rule(Each("slit", lambda made, state, pattern, _: _slit(made, pattern)), "slit_adrift", ends="all"),
        Rule(Asking(_raw), "placket_late"),
        Rule(EnoughStrips("name", lambda made, pattern: made.count(pattern)), "too_few_strips"),
        Rule(Asking(_long), "placket_short"),
        Rule(Asking(_wide), "placket_narrow"),
    )
    also: ClassVar[tuple[Also, ...]] = (
        Also("long", lambda made, pattern: made.line(pattern).length, "length"),
        Also("wide", lambda made, pattern: made.finished(pattern)),
        Also("edge", lambda made, pattern: made.edge(pattern), "place"),
    )
    lastly: ClassVar[Keys] = (lambda made, pattern: both_sides(pattern, made.edge(pattern)),)
    changes: ClassVar[Changes] = (
        Brings("made", lambda made, pattern: (made.name,)),
        Brings("attached", lambda made, pattern: {made.name: made.count(pattern)}),
    )
    sides: ClassVar[int] = 2

    name: str = strip(argument="strip", fills={"strip": "strip"}, uses="strips")
    slit: Place = mark(
        "slit", refused="is no slit.", do='Draw one with slit("cuff_slit", ...) and name it.', fills={"slit": "mark"}
    )
    allowance: float = width(default=6 * mm)

    def count(self, pattern: Cut) -> int:
        """How many strips it takes, one for each half."""
        return len(halves(pattern, self.slit))

    def line(self, pattern: Cut) -> Path:
        """The slit, from the edge to its end."""
        slit = _slit(self, pattern)
        assert self.slit.mark.path is not None
        return slit.line if slit is not None else self.slit.mark.path

    def edge(self, pattern: Cut) -> tuple[Run, ...]:
        """The edge it opens on."""
        slit = _slit(self, pattern)
        edges = pattern.piece(self.slit.piece).edges
        return (Run(self.slit.piece, (slit.edge if slit is not None else edges[0].name,), self.slit.side),)

    def needed(self, pattern: Cut) -> float:
        """mm of strip: along the sides of the slit that it binds, from the cut edge."""
        (edge,) = self.edge(pattern)
        allowed = pattern.piece(edge.piece).edge(edge.edges[0]).allowance or 0.0
        return self.sides * (self.line(pattern).length + allowed)

    def finished(self, pattern: Cut) -> float:
        """mm across the placket when it is made."""
        return (pattern.strip(self.name).width - 2 * self.allowance) / 2

    @property
    def strips(self) -> int:
        """How many strips are set aside for it."""
        return 2 if self.slit.side is None else 1

    def rows_round(self, pattern: Cut) -> tuple[Path, ...]:
        """The reinforcing row: from the allowance beside the slit at its mouth to its very end, and back."""
        line = self.line(pattern)
        aside = line.start_tangent.left() * self.allowance
        return Path.line(line.start + aside, line.end), Path.line(line.end, line.start - aside)

    def around_slit(self, pattern: Cut) -> Run:
        """The stretch of edge round the slit, to look at, on the one half that is shown."""
        (edge,) = self.edge(pattern)
        run, long = shown(pattern, edge), self.line(pattern).length
        slit = _slit(self, pattern)
        if slit is None:
            return run
        size = pattern.piece(run.piece).edge(slit.edge).path.length
        return replace(run, start=max(slit.at - long, 0.0), end=min(slit.at + long, size))

    def sewn_round(self, pattern: Cut) -> Scene:
        """The slit with its reinforcing row, to be cut along its line."""
        near = self.around_slit(pattern)
        run = replace(near, start=None, end=None)
        cut = Thing("cut", run, self.line(pattern), 3.0)
        return laid(run, Row(run, line=Path.of(*self.rows_round(pattern))), up="wrong", focus=near, things=(cut,))

    def bound_side(self, pattern: Cut) -> Thing:
        """The strip where it shows on the right side."""
        line, across = self.line(pattern), self.finished(pattern)
        aside = line.start_tangent.left() * (across / 2)
        run = replace(self.around_slit(pattern), start=None, end=None)
        return Thing("binding", run, Path.line(line.start + aside, line.end + aside), across, of=self.name)


@operation
class BoundPlacket(Placket):
    """Cut a slit open and bind both its sides with one straight strip, as for a cuff. Each half takes a strip, cut with
    `strip.band(cut_length=..., cut_width=..., allowance=...)` at least twice as long as the slit.

    Example::

        make.bound_placket(placket, slit=sleeve.cuff_slit)
    """

    kind = "bound_placket"
    says = ("mark", "reinforce", "cut", "open", "cover", "slant", "lie")
    why = ("why", "why_row")
    work = Work(5.0, each=25.0, of="slit")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """Sewn round; pulled straight and laid on the strip; bound; stitched across the fold; and as it lies then."""
        near = self.around_slit(pattern)
        run = replace(near, start=None, end=None)
        long, across = self.needed(pattern) / 2, self.allowance
        ways: tuple[Literal["laid", "covering", "slant"], ...] = ("laid", "covering", "slant")
        work = (
            Scene((), strip=self.name, shape=StripShape(placket=way, on=run.piece, slit=long, seam=across))
            for way in ways
        )
        slit = _slit(self, pattern)
        across_it = () if slit is None else (replace(_mouth(self, pattern, slit), side=near.side),)
        basted = (Row(part, inset=-_IN_ALLOWANCE, style="baste") for part in across_it)
        strip = self.bound_side(pattern)
        done = laid(run, *basted, focus=near, things=(strip,), section=section.placket_bound())
        return (self.sewn_round(pattern), *work, done)
