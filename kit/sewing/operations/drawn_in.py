"""What is drawn through a casing or a channel: elastic or a cord."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

from kit.sewing.fields import part
from kit.sewing.operations.casings import EDGE, gap_shown
from kit.sewing.rules import Ends
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
"""mm of a casing that a cord beside elastic or another cord takes (common practice, no source)."""


class Tube(NamedTuple):
    """What something is drawn through: a casing `deep` mm deep, or a channel, whose first row lies `low` mm from the
    edge; how wide the `elastic` is and how thick the `cord` that lie in it already."""

    deep: float
    low: float | None
    elastic: float | None
    cord: float | None

    @property
    def room(self) -> float:
        """mm that may lie in it and still run freely; between two rows more of its depth is left than between a row and
        a fold."""
        return self.deep - ROOM - (EDGE if self.low is None else 0.0)


def _tube(state: State, drawn: Thread) -> Tube | None:
    """What it is drawn through, by the least that is told of its edges; None where there is no casing."""
    keys = {(run.piece, edge) for run in drawn.edges for edge in run.edges}

    def least(what: str) -> float | None:
        sizes = (float(fact[4]) for fact in state.facts if fact[0] == what and (fact[1], fact[3]) in keys)
        return min(sizes, default=None)

    deep = least("casing_depth")
    return None if deep is None else Tube(deep, least("channel"), least("elastic_in"), least("cord_in"))


def _word(tube: Tube | None) -> str:
    """The word for it."""
    return "tube.casing" if tube is None or tube.low is None else "tube.channel"


def _room_for(
    code: str, told: str, needs: Callable[[Any, Tube], float | None], *, beside: float = 0.0, ends: Ends = ""
) -> Rule:
    """The rule that what `needs` so many mm of a casing, `told` so, finds room there with what lies `beside` it."""

    def cases(drawn: Thread, state: State, pattern: Cut) -> Iterator[Case]:
        tube = _tube(state, drawn)
        wide = None if tube is None else needs(drawn, tube)
        if tube is not None and wide is not None:
            off, word = wide + beside - tube.room, Value(_word(tube), "word")
            values = {told: measured(wide, "allowance"), "deep": measured(tube.deep, "allowance"), "tube": word}
            yield Case(off <= 0.5, drawn.edges[0], amount=off, values=values)

    return Rule(Asking(cases), code, ends=ends)


def _beside(drawn: Thread, pattern: Cut) -> Iterator[Sentence]:
    """What lies in the casing already is not crossed."""
    tube, other = _tube(state_before(pattern, drawn), drawn), "cord" if isinstance(drawn, ThreadElastic) else "elastic"
    if tube is not None and getattr(tube, other) is not None:
        yield Sentence(f"drawn_in.beside_{other}", {})


def _first_elastic(drawn: Thread, state: State, pattern: Cut) -> Iterable[Case]:
    """No elastic is in the casing yet."""
    tube = _tube(state, drawn)
    yield Case(tube is None or tube.elastic is None, drawn.edges[0])


def _open(drawn: Thread, state: State, pattern: Cut, gap: Run) -> bool:
    """The gap is still raw, or was left in the row of a channel, and not in an edge."""
    return state.is_raw(pattern, gap) or all(map(state.holds, facts_of(pattern, (gap,), "row_gap")))


_FIRST = (
    Rule(Of("casing", "edges"), "no_casing", ends="all"),
    Rule(
        Asking(_first_elastic),
        "threaded_twice",
        do="do_take_one_operation_out",
        when=lambda drawn: isinstance(drawn, ThreadElastic),
        ends="all",
    ),
    Rule(Each("gap", _open), "gap_shut"),
)


TAIL, HEAD = 50.0, 70.0
"""mm that are seen to hang out of the gap, and mm of the tunnel beyond it that the bodkin has come (only drawn)."""


def _going_in(
    drawn: Thread, pattern: Cut, wide: float, reach: tuple[float, float]
) -> tuple[Run, Run, Row, Thing, Thing]:
    """What goes in at the gap, `wide` mm, as hands hold it: a stretch of it in the tunnel, which `reach` says how many
    mm inside the edge begins and ends, with its bodkin ahead; its other end out of the gap. With the part of the edge
    that is looked at, the one the section is cut across, and the row that leaves the gap."""
    run, gap = gap_shown(drawn, pattern)
    assert gap is not None
    first, last = run.start or 0.0, run_length(pattern, replace(run, start=None)) if run.end is None else run.end
    onward = last - gap[1] >= gap[0] - first  # to the side where there is more of the tunnel
    middle, tip = (gap[0] + gap[1]) / 2, min(gap[1] + HEAD, last) if onward else max(gap[0] - HEAD, first)
    low, high = sorted((middle - wide / 2 if onward else middle + wide / 2, tip))
    part = replace(run, start=max(min(low, gap[0]) - wide, first), end=min(max(high, gap[1]) + wide, last))
    tunnel, mouth = inside(pattern, run, sum(reach) / 2), inside(pattern, run, reach[1])

    def along(line: Path, mm: float) -> float:
        return line.length * (mm - first) / (last - first)

    within = tunnel.between(along(tunnel, low), along(tunnel, high))
    foot = mouth.at(along(mouth, middle))
    deeper = inside(pattern, run, reach[1] + 5.0)
    way = (deeper.at(along(deeper, middle)) - foot).unit()
    out = Path.line(foot + way * TAIL, foot)
    row = Row(run, inset=reach[1], ink="old", gap=gap)
    threaded = Thing("threaded", part, within if onward else within.reversed(), wide)
    beyond = (gap[1], min(gap[1] + 10.0, last)) if onward else (max(gap[0] - 10.0, first), gap[0])
    across = replace(run, start=beyond[0], end=beyond[1])
    return part, across, row, threaded, Thing("elastic" if wide > CORD else "cord", part, out, wide)


def _between(run: Run, rows: tuple[float, float], drawn: Thing, shape: Section) -> Scene:
    """What is drawn through between two rows that are sewn."""
    old = (Row(run, inset=inset, ink="old") for inset in rows)
    return laid(run, *old, things=(drawn,), section=shape)


@operation
class Thread(Operation):
    """Something drawn through a casing; the `gap` left for it is then closed."""

    cautions: ClassVar[Words] = ("needle", "pins")
    tools = ("bodkin", "machine", "pins")
    work = Work(10.0)
    gives: ClassVar[tuple[Of, ...]] = (Of("threaded", "edges"), Of("row_gap_closed", "gap"))
    undoes = (Of("row_gap", "gap"),)
    also: ClassVar[tuple[Also, ...]] = (
        Also("gap", lambda drawn, pattern: (drawn.gap,) if drawn.gap else drawn.edges, "place"),
        Also("tube", lambda drawn, pattern: _word(_tube(state_before(pattern, drawn), drawn)), "word"),
    )

    edges: tuple[Run, ...] = runs()
    gap: Run | None = part(by_name=True, default=None, closes="hemmed", touched=False)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return super().closes(pattern) if self.within(pattern) is None else ()  # the gap of a channel lies in its row

    def within(self, pattern: Cut) -> tuple[float, float] | None:
        """mm from the edge to the two rows it is drawn through between; None where that is a casing's fold."""
        tube = _tube(state_before(pattern, self), self)
        return None if tube is None or tube.low is None else (tube.low, tube.low + tube.deep)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return broken(_FIRST, self, state, pattern) + super().check(state, pattern)


def _longer(drawn: Thread, state: State, by: float, **told: float) -> Case:
    """That cord and casing, or casing and elastic, differ in length as they must: `by` so many mm they do not."""
    case = off_by(drawn.edges[0], by, -1e-9, **told)
    return case._replace(values={**case.values, "tube": Value(_word(_tube(state, drawn)), "word")})


def _short_enough(drawn: ThreadElastic, state: State, pattern: Cut) -> Iterable[Case]:
    """The elastic is shorter than its casing."""
    whole = sewn_length(pattern, drawn.edges)
    yield _longer(drawn, state, drawn.worn - whole, worn=drawn.worn, whole=whole)


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
    amounts = (("elastic", "length", "length"),)
    says = (
        "draw",
        _beside,
        Say("join", lambda drawn: drawn.ring, "fasten"),
        Say("close", lambda drawn: drawn.gap),
        "spread",
    )
    also = (Also("join", JOIN),)
    gives = (*Thread.gives, Of("elastic_in", "edges", size="width"))
    rules = (
        _room_for("elastic_wide", "width", lambda elastic, tube: elastic.width, ends="all"),
        _room_for(
            "cord_no_room", "width", lambda elastic, tube: None if tube.cord is None else elastic.width, beside=CORD
        ),
        Rule(Asking(_short_enough), "elastic_long"),
    )

    length: float = width(most=LONGEST, fills="length")
    width: float = width()
    ring: bool = flag(default=True)

    @property
    def worn(self) -> float:
        """mm it measures in the casing: its ends joined, where they are."""
        return self.length - (JOIN if self.ring else 0.0)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        rows = self.within(pattern)
        if self.gap is not None:
            return (self._entering(pattern, rows),)
        run = shown(pattern, self.edges[0])
        if rows is not None:
            elastic = Thing("elastic", run, inside(pattern, run, sum(rows) / 2), self.width)
            return (_between(run, rows, elastic, section.channel("elastic")),)
        deep, line = self.width + ROOM, inside(pattern, run, self.width / 2 + ROOM / 2)
        elastic, shape = Thing("elastic", run, line, self.width), section.casing("elastic")
        return (turned_up(run, deep, Row(run, inset=deep, ink="old"), arrows=(), things=(elastic,), section=shape),)

    def _entering(self, pattern: Cut, rows: tuple[float, float] | None) -> Scene:
        """Its one end on the way through the tunnel, its other hanging out of the gap."""
        tube = _tube(state_before(pattern, self), self)
        deep = tube.deep if tube is not None else self.width + ROOM
        part, across, row, *things = _going_in(self, pattern, self.width, rows or (0.0, deep))
        if rows is None:
            row = replace(row, inset=max(deep - EDGE, deep / 2))
            shape = section.casing("elastic")
            scene = turned_up(row.run, deep, row, arrows=(), things=tuple(things), section=shape, focus=part)
        else:
            first, shape = Row(row.run, inset=rows[0], ink="old"), section.channel("elastic")
            scene = laid(row.run, first, row, things=tuple(things), section=shape, focus=part)
        return replace(scene, cut=across)


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
    yield _longer(drawn, state, whole - size, length=size, whole=whole)


def _slit(place: Place) -> Run | None:
    """The stretch of a seam that a mark stands for, where it is no point or line of its own."""
    mark = place.mark
    if mark.kind != "opening" or not mark.edge:
        return None
    return Run(place.piece, (mark.edge,), place.side, float(mark.start), float(mark.end))


def _worked(drawn: ThreadCord, state: State, pattern: Cut, place: Place) -> bool:
    """Eyelets are worked at all marks that are no openings."""
    return _slit(place) is not None or all(map(state.holds, place_facts(pattern, (place,), "eyelet")))


def _left_open(drawn: ThreadCord, state: State, pattern: Cut, place: Place) -> bool:
    """A seam has left the openings that are named."""
    slit, left = _slit(place), [span for join in state.joins if join.left for span in (join.a, join.b)]
    return slit is None or all(span.length <= TOLERANCE for span in minus(spans(pattern, slit), left))


def _between_rows(drawn: ThreadCord, state: State, pattern: Cut) -> Iterable[tuple[str, Case]]:
    """The holes of a channel lie between its rows, the slits of a casing between its fold and its row."""
    if (tube := _tube(state, drawn)) is None:
        return
    low, kind = tube.low, "casing" if tube.low is None else "channel"
    high = tube.deep - EDGE if low is None else low + tube.deep
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
    amounts: ClassVar[Amounts] = (("cord", "length", "length"),)
    cautions = ("cords", "pins")
    says = (
        Say("thread_cord.draw_strip", lambda drawn: drawn.name, "thread_cord.draw"),
        _beside,
        "thread_cord.ends",
        Say("thread_cord.close", lambda drawn: drawn.gap),
        Say("thread_cord.knot", lambda drawn: drawn.at_slits, "thread_cord.tack"),
    )
    why = ("thread_cord.why",)
    also = (
        Also("length", lambda drawn, pattern: drawn.long(pattern), "length"),
        Also("places", lambda drawn, pattern: drawn.through, "mark"),
    )
    gives = (*Thread.gives, Of("cord_in", "edges", size="thick"), Of("eyelet_used", "through"))
    changes = (Brings("attached", lambda drawn, pattern: {drawn.name: 1} if drawn.name else {}),)
    rules = (
        Rule(
            Made("name"),
            "strip_not_made",
            says="strip_not_made_drawn_in",
            do="do_make_strip_first",
            when=lambda drawn: drawn.name,
        ),
        Rule(Each("through", _worked), "no_eyelet", on="edges"),
        Rule(Each("through", _left_open), "no_eyelet", says="no_slit", on="edges"),
        Rule(
            Of("eyelet_used", "through"),
            "threaded_twice",
            holds=False,
            says="threaded_out_twice",
            do="do_take_one_operation_out",
            on="edges",
            ends="all",
        ),
        Rule(First(_between_rows, "channel"), "hole_off_channel"),
        Rule(First(_between_rows, "casing"), "hole_off_channel", says="slit_off_casing"),
        _room_for("cord_no_room", "width", lambda cord, tube: tube.elastic, beside=CORD),
        _room_for("cords_no_room", "cords", lambda cord, tube: None if tube.cord is None else 2 * CORD),
        Rule(Asking(_long_enough), "cord_short"),
    )

    thick: ClassVar[float] = CORD
    length: float = read_by(_cord, "StripHandle | Size", argument="cord")
    name: str = read_by(_strip, "", way="none", held="", fills={"strip": "strip"})
    through: tuple[Place, ...] = places(by_name=True)

    @classmethod
    def made(cls, asked: Asked) -> ThreadCord:
        return (ThreadStrip if asked.read["name"] else ThreadCord)(**asked.read)

    @property
    def at_slits(self) -> bool:
        """Whether its ends come out at openings in seams."""
        return any(_slit(place) is not None for place in self.through)

    @property
    def uses(self) -> Uses:
        pieces = tuple(dict.fromkeys(run.piece for run in self.edges))
        return Uses(pieces=pieces, strips={self.name: 1} if self.name else {})

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
    amounts = ()
