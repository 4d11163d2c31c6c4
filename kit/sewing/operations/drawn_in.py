"""What is drawn through a casing or a channel: elastic or a cord."""

from __future__ import annotations

import math

from kit.sewing.fields import part
from kit.sewing.mark_spot import spot
from kit.sewing.operations.casings import EDGE
from kit.sewing.places import inside, minus, sewn_length
from kit.sewing.sections import bindings as section
from kit.sewing.state import TOLERANCE
from kit.sewing.vocabulary import *
from kit.units import Length, length

LONGEST = 3000.0  # mm
ROOM = 2.0
"""mm a casing is at least wider than its elastic (common practice, no source)."""
JOIN = 20.0
"""mm by which the ends of an elastic are laid over one another (common practice, no source)."""
HOLE = 8.0
"""mm across an eyelet (common practice, no source)."""
SLACK = 1.0
"""mm by which a slit may reach beyond a row (a seam's ends are sewn no nearer)."""
CORD = 5.0
"""mm of a casing that a cord beside elastic takes (common practice, no source)."""


def _narrowest(state: State, drawn: Thread, what: str) -> float | None:
    """The least size that a fact `what` tells of the edges it is drawn through; None where it tells of none."""
    keys = {(run.piece, edge) for run in drawn.edges for edge in run.edges}
    sizes = [float(fact[4]) for fact in state.facts if fact[0] == what and (fact[1], fact[3]) in keys]
    return min(sizes, default=None)


def _room(state: State, drawn: Thread) -> float | None:
    """mm that may lie in the casing and still run freely; between two rows more of its depth is left than between a row
    and a fold. None where there is no casing."""
    deep = _narrowest(state, drawn, "casing_depth")
    row = EDGE if _narrowest(state, drawn, "channel") is None else 0.0
    return None if deep is None else deep - ROOM - row


def _side_by_side(drawn: Thread, state: State, pattern: Cut) -> Iterable[Case]:
    """Where elastic and a cord share a casing there is room for both."""
    deep = _narrowest(state, drawn, "casing_depth")
    if isinstance(drawn, ThreadElastic):
        wide = drawn.width if _narrowest(state, drawn, "cord_in") is not None else None
    else:
        wide = _narrowest(state, drawn, "elastic_in")
    room = _room(state, drawn)
    if deep is not None and room is not None and wide is not None:
        off = wide + CORD - room
        values = {"deep": measured(deep, "allowance"), "width": measured(wide, "allowance")}
        yield Case(off <= 0.5, drawn.edges[0], amount=off, values=values)


def _beside(drawn: Thread, pattern: Cut) -> Iterator[Sentence]:
    """What lies in the casing already is not crossed."""
    state = state_before(pattern, drawn)
    other = "cord_in" if isinstance(drawn, ThreadElastic) else "elastic_in"
    if _narrowest(state, drawn, other) is not None:
        yield Sentence(f"drawn_in.beside_{other.removesuffix('_in')}", {})


def _first_elastic(drawn: Thread, state: State, pattern: Cut) -> Iterable[Case]:
    """No elastic is in the casing yet."""
    yield Case(_narrowest(state, drawn, "elastic_in") is None, drawn.edges[0])


def _open(drawn: Thread, state: State, pattern: Cut) -> Iterable[Case]:
    """The gap is still raw, or was left in the row of a channel."""
    if drawn.gap is not None:
        yield Case(state.is_raw(pattern, drawn.gap) or _in_row(drawn.gap, state, pattern), drawn.gap)


def _in_row(gap: Run, state: State, pattern: Cut) -> bool:
    """Whether a gap was left in the row of a channel, and not in an edge."""
    return all(map(state.holds, facts_of(pattern, (gap,), "row_gap")))


_FIRST = (
    Rule(Of("casing", "edges"), "no_casing", ends="all"),
    Rule(
        Asking(_first_elastic),
        "threaded_twice",
        do="do_take_one_operation_out",
        when=lambda drawn: isinstance(drawn, ThreadElastic),
        ends="all",
    ),
    Rule(Asking(_open), "gap_shut"),
)


def _between(run: Run, rows: tuple[float, float], drawn: Thing, shape: Section) -> Scene:
    """What is drawn through between two rows that are sewn."""
    old = (Row(run, inset=inset, ink="old") for inset in rows)
    return laid(run, *old, things=(drawn,), section=shape)


@operation
class Thread(Operation):
    """Something drawn through a casing; the `gap` left for it is then closed."""

    cautions: ClassVar[Words] = ("needle", "pins")
    tools = ("bodkin", "machine", "pins")
    work = (10.0, 0.0)
    gives: ClassVar[tuple[Of, ...]] = (Of("threaded", "edges"), Of("row_gap_closed", "gap"))
    undoes = (Of("row_gap", "gap"),)
    also: ClassVar[tuple[Also, ...]] = (
        Also("gap", lambda drawn, pattern: (drawn.gap,) if drawn.gap else drawn.edges, "place"),
    )

    edges: tuple[Run, ...] = runs()
    gap: Run | None = part(by_name=True, default=None, closes="hemmed")

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return super().closes(pattern) if self.within(pattern) is None else ()  # the gap of a channel lies in its row

    def within(self, pattern: Cut) -> tuple[float, float] | None:
        """mm from the edge to the two rows it is drawn through between; None where that is a casing's fold."""
        state = state_before(pattern, self)
        low, deep = _narrowest(state, self, "channel"), _narrowest(state, self, "casing_depth")
        return None if low is None or deep is None else (low, low + deep)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return broken(_FIRST, self, state, pattern) + super().check(state, pattern)


def _narrow_enough(drawn: ThreadElastic, state: State, pattern: Cut) -> Iterable[Case]:
    """The elastic goes into the casing on these edges."""
    deep, room = _narrowest(state, drawn, "casing_depth"), _room(state, drawn)
    if deep is not None and room is not None:
        off = drawn.width - room
        yield Case(off <= 0.5, drawn.edges[0], amount=off, values={"deep": measured(deep, "allowance")})


def _short_enough(drawn: ThreadElastic, state: State, pattern: Cut) -> Iterable[Case]:
    """The elastic is shorter than its casing."""
    whole, worn = sewn_length(pattern, drawn.edges), drawn.worn
    values = {"worn": measured(worn), "whole": measured(whole)}
    yield Case(worn < whole, drawn.edges[0], amount=worn - whole, values=values)


@operation
class ThreadElastic(Thread):
    """Draw elastic through a casing or channel and close the `gap` it went in by, the same as was left. A cord may
    share the casing where it is deep enough for both.

    Example::

        gap = tote.top.between(2 * cm, 5 * cm)
        make.casing(tote.top, depth=3 * cm, gap=gap)
        make.thread_elastic(tote.top, length=30 * cm, width=2 * cm, gap=gap)
    """

    # ring: its ends are joined; else stitched fast at both ends of the casing
    kind = "thread_elastic"
    cautions = ("needle", "pins", "scissors")
    notions = ("thread", "elastic")
    says = (
        "draw",
        _beside,
        Say("join", lambda drawn: drawn.ring),
        Say("fasten", lambda drawn: not drawn.ring),
        Say("close", lambda drawn: drawn.gap),
        "spread",
    )
    why = ("why",)
    also = (Also("join", JOIN),)
    gives = (*Thread.gives, Of("elastic_in", "edges", size="width"))
    rules = (
        Rule(Asking(_narrow_enough), "elastic_wide", tells=("width", "deep"), ends="all"),
        Rule(Asking(_side_by_side), "cord_no_room", tells=("width", "deep")),
        Rule(Asking(_short_enough), "elastic_long", tells=("worn", "whole")),
    )

    length: float = width(most=LONGEST, fills="length")
    width: float = width()
    ring: bool = flag(default=True)

    @property
    def worn(self) -> float:
        """mm it measures in the casing: its ends joined, where they are."""
        return self.length - (JOIN if self.ring else 0.0)

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"elastic": (self.length, "length")}

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run, rows = shown(pattern, self.edges[0]), self.within(pattern)
        if rows is not None:
            elastic = Thing("elastic", run, inside(pattern, run, sum(rows) / 2), self.width)
            return (_between(run, rows, elastic, section.channel("elastic")),)
        deep, line = self.width + ROOM, inside(pattern, run, self.width / 2 + ROOM / 2)
        elastic, shape = Thing("elastic", run, line, self.width), section.casing("elastic")
        return (turned_up(run, deep, Row(run, inset=deep, ink="old"), arrows=(), things=(elastic,), section=shape),)


def _cord(given: Any, asked: Asked, name: str) -> float:
    """mm of a bought cord; 0 of a strip."""
    if not isinstance(given, StripHandle | str | Length):
        raise KitError(
            f"{given!r} is no cord.", where=asked.where, do="Name a strip, or write a length such as 150 * cm."
        )
    return 0.0 if isinstance(given, StripHandle) else float(length(given, asked.where))


def _strip(given: Any, asked: Asked, name: str) -> str:
    cord = asked.given["length"]
    return cord.name if isinstance(cord, StripHandle) else ""


def _long_enough(drawn: ThreadCord, state: State, pattern: Cut) -> Iterable[Case]:
    """The cord is longer than its casing."""
    size, whole = drawn.long(pattern), sewn_length(pattern, drawn.edges)
    values = {"length": measured(size), "whole": measured(whole)}
    yield Case(size > whole, drawn.edges[0], amount=whole - size, values=values)


def _slit(place: Place) -> Run | None:
    """The stretch of a seam that a mark stands for, where it is no point or line of its own."""
    mark = place.mark
    if mark.kind != "opening" or not mark.edge:
        return None
    return Run(place.piece, (mark.edge,), place.side, float(mark.start), float(mark.end))


def _worked(drawn: ThreadCord, state: State, pattern: Cut) -> Iterable[Case]:
    """Eyelets are worked at all marks that are no openings."""
    for place in drawn.through:
        yield Case(_slit(place) is not None or all(map(state.holds, place_facts(pattern, (place,), "eyelet"))), place)


def _left_open(drawn: ThreadCord, state: State, pattern: Cut) -> Iterable[Case]:
    """A seam has left the openings that are named."""
    left = [span for join in state.joins if join.left for span in (join.a, join.b)]
    for place in drawn.through:
        slit = _slit(place)
        if slit is not None:
            yield Case(all(span.length <= TOLERANCE for span in minus(spans(pattern, slit), left)), place)


def _between_rows(drawn: ThreadCord, state: State, pattern: Cut) -> Iterable[tuple[str, Case]]:
    """The holes of a channel lie between its rows, the slits of a casing between its fold and its row."""
    low, deep = _narrowest(state, drawn, "channel"), _narrowest(state, drawn, "casing_depth")
    if deep is None:
        return
    kind, high = ("casing", deep - EDGE) if low is None else ("channel", low + deep)
    values = {"low": measured(low or 0.0, "allowance"), "high": measured(high, "allowance")}
    for place in drawn.through if low is not None else filter(_slit, drawn.through):
        edges = [path_of(pattern, Run(run.piece, run.edges)) for run in drawn.edges if run.piece == place.piece]
        line, at = _drawn_as(pattern, place), spot(pattern, place)
        ends = (line.start, line.end) if line else (at,) if at else ()
        over = -SLACK if line else HOLE / 2
        off = [min((path.distance_to(end) for path in edges), default=math.inf) for end in ends]
        if not all((low or 0.0) <= each - over and each + over <= high for each in off):
            yield kind, Case(False, place, values=values)


def _drawn_as(pattern: Cut, place: Place) -> Path | None:
    """The line that a hole is drawn as, where it is more than a point."""
    mark, slit = place.mark, _slit(place)
    return path_of(pattern, slit) if slit is not None else mark.path


@operation
class ThreadCord(Thread):
    """Draw a cord through a casing or channel, its ends out at eyelets or openings marked on seams. `cord` is a made
    strip, or how long a bought cord is.

    Example::

        make.thread_cord(tote.top, cord=60 * cm, through=tote.eyelet)
    """

    kind = "thread_cord"
    notions: ClassVar[Words] = ("thread", "cord")
    cautions = ("cords", "pins")
    says = (
        Say("thread_cord.draw", lambda drawn: not drawn.name),
        Say("thread_cord.draw_strip", lambda drawn: drawn.name),
        _beside,
        "thread_cord.ends",
        Say("thread_cord.close", lambda drawn: drawn.gap),
        Say("thread_cord.tack", lambda drawn: not drawn.at_slits),
        Say("thread_cord.knot", lambda drawn: drawn.at_slits),
    )
    why = ("thread_cord.why",)
    also = (
        Also("length", lambda drawn, pattern: drawn.long(pattern), "length"),
        Also("places", lambda drawn, pattern: drawn.through, "mark"),
    )
    gives = (*Thread.gives, Of("cord_in", "edges", size="thick"), Of("eyelet_used", "through"))
    rules = (
        Rule(
            Made("name"),
            "strip_not_made",
            says="strip_not_made_drawn_in",
            do="do_make_strip_first",
            tells=(),
            when=lambda drawn: drawn.name,
        ),
        Rule(Asking(_worked), "no_eyelet", on="edges"),
        Rule(Asking(_left_open), "no_eyelet", says="no_slit", on="edges"),
        Rule(
            Of("eyelet_used", "through"),
            "threaded_twice",
            holds=False,
            says="threaded_out_twice",
            do="do_take_one_operation_out",
            on="edges",
            ends="all",
        ),
        Rule(First(_between_rows, "channel"), "hole_off_channel", tells=("place", "low", "high")),
        Rule(First(_between_rows, "casing"), "hole_off_channel", says="slit_off_casing", tells=("place", "high")),
        Rule(Asking(_side_by_side), "cord_no_room", tells=("width", "deep")),
        Rule(Asking(_long_enough), "cord_short", tells=("length", "whole")),
    )

    length: float = read_by(_cord, "StripHandle | Size", argument="cord")
    name: str = read_by(_strip, "", way="none", held="", fills={"strip": "strip"})
    through: tuple[Place, ...] = places(by_name=True)

    @classmethod
    def made(cls, asked: Asked) -> ThreadCord:
        return (ThreadStrip if asked.read["name"] else ThreadCord)(**asked.read)

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {} if self.name else {"cord": (self.length, "length")}

    @property
    def at_slits(self) -> bool:
        """Whether its ends come out at openings in seams."""
        return any(_slit(place) is not None for place in self.through)

    @property
    def thick(self) -> float:
        """mm of the casing that it takes."""
        return CORD

    @property
    def uses(self) -> Uses:
        pieces = tuple(dict.fromkeys(run.piece for run in self.edges))
        return Uses(pieces=pieces, strips={self.name: 1} if self.name else {})

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), attached={self.name: 1} if self.name else {})

    def long(self, pattern: Cut) -> float:
        """mm of the cord."""
        strip = pattern.strip(self.name) if self.name else None
        return (strip.finished_length or strip.length) if strip else self.length

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run, rows = shown(pattern, self.edges[0]), self.within(pattern)
        if rows is not None:
            cord = Thing("cord", run, inside(pattern, run, sum(rows) / 2), 4.0)
            return (_between(run, rows, cord, section.channel("cord")),)
        cord = Thing("cord", run, inside(pattern, run, 10.0), 4.0)
        return (laid(run, things=(cord,), section=section.casing("cord")),)


@operation(verb="")
class ThreadStrip(ThreadCord):
    """The made strip `name` drawn through a casing as a cord."""

    kind = "thread_strip"
    notions = ("thread",)
