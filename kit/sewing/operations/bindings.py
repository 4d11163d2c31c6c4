"""Binding an edge with a strip, and facing it with one."""

from __future__ import annotations

from kit.piece.strips import binding
from kit.sewing.before import state_after
from kit.sewing.caught import caught_on, strips_caught
from kit.sewing.pieced import joining, pieced
from kit.sewing.places import closed_at
from kit.sewing.reading import read_whole
from kit.sewing.sections import bindings as section
from kit.sewing.state import EdgeKey
from kit.sewing.stretching import BENDS, across
from kit.sewing.vocabulary import *

TURNED_END = 10.0
"""mm turned in at each free end of a binding (common practice, no source)."""
SEEN = 160.0
"""mm of a long bound edge that a picture shows."""
CLOTH = 3.0
"""mm by which a binding may be cut wider, for the thickness of the cloth (common practice, no source)."""


ENDS = ("ring", "turned", "caught")


def _ends(given: Any, asked: Asked, name: str) -> str:
    return "" if given is None else read_word(given, ENDS, name, asked.where)


def _count(given: Any, asked: Asked, name: str) -> int:
    number = read_whole(given)
    if number is None or not 1 <= number <= 20:
        do = "Write how many strips share the edges, such as 1."
        raise KitError(f"count is {given!r}.", where=asked.where, do=do)
    return number


def _wide_enough(made: EdgeStrip, state: State, pattern: Cut) -> Iterator[Case]:
    cut, needed = pattern.strip(made.name), made.cut_width()
    off = cut.width - needed
    values = {"width": measured(cut.width), "cut_width": measured(needed)}
    yield Case(-0.5 <= off <= CLOTH, cut, amount=abs(off), values=values)


def _long_enough(made: EdgeStrip, state: State, pattern: Cut) -> Iterator[Case]:
    cut, needed = pattern.strip(made.name), made.needed(pattern)
    yield off_by(cut, needed - cut.length, length=cut.length, needed=needed)


def _bends(made: EdgeStrip, state: State, pattern: Cut) -> Iterator[Case]:
    cut = pattern.strip(made.name)
    for run in made.edges:
        straight = all(pattern.piece(run.piece).edge(name).path.is_straight for name in run.edges)
        gives = cut.grain == "bias" or (cut.grain == "crosswise" and across(pattern) >= BENDS)
        yield Case(straight or gives, run, values={"piece": titled(cut.title)})


def _partial(made: EdgeStrip) -> bool:
    return any(run.start is not None or run.end is not None for run in made.edges)


def _caught_at(before: State, late: State, end: EdgeKey, at: float) -> bool:
    """Whether an edge is raw there when the strip is sewn, and sewn over by the end of all."""
    return not closed_at(before, end, at) and any(done.how != "finished" for done in closed_at(late, end, at))


def _ties_out(made: EdgeStrip, pattern: Cut) -> Iterable[Sentence]:
    """Ends of ties that the strip has caught lie inwards, and are brought out over it."""
    caught = strips_caught(pattern, made, made.edges)
    return tuple(Sentence("bind.ties_out", {"strip": (name, "strip")}) for name in caught)


_MATCHED = Say(Sentence("match_seams", {}), lambda made: len(made.edges) > 1)


def _both_halves(made: EdgeStrip, pattern: Cut) -> Iterable[Sentence]:
    return both_sides(pattern, made.edges) if made.count > 1 else ()


@operation
class EdgeStrip(Operation):
    """Base: a strip sewn along a row of edges, `count` strips of it. `ends`: "ring" when it meets itself, "turned"
    when its ends are turned in, "caught" when later seams catch them (the proof asks for these); where nothing is said,
    what the edge asks for (`ending`)."""

    tools = ("machine", "pins", "iron", "scissors")
    crosses = True
    also = (Also("turned", TURNED_END),)
    work = Work(10.0, 20.0, of="edges")
    changes: ClassVar[Changes] = (
        Brings("made", lambda bound, pattern: (bound.name,)),
        Brings("attached", lambda bound, pattern: {bound.name: bound.count}),
    )
    rules = (
        in_a_row("edges"),
        Rule(EnoughStrips("name", lambda made, _: made.count), "too_few_strips", says="too_few_strips_bound"),
        Rule(Asking(_wide_enough), "binding_width"),
        Rule(Asking(_long_enough), "binding_short", says="binding_short_edge", on="edges"),
        Rule(Asking(_bends), "binding_not_bias"),
    )

    edges: tuple[Run, ...] = runs(closes="faced", takes="allowance", becomes="faced")
    name: str = strip(by_name=True, argument="strip", fills={"strip": "strip"}, uses="count")
    finished: float = width(most=40.0, said="finished width")
    ends: str = read_by(_ends, f"Literal[{', '.join(map(repr, ENDS))}] | None", default=None, held="")
    count: int = read_by(_count, "int", default=1, held=1)

    def cut_width(self) -> float:
        """mm the strip must be cut wide."""
        raise NotImplementedError

    def ending(self, pattern: Cut) -> str:
        """What becomes of its ends: as it is said; else a ring is joined, ends at edges that are raw by then and sewn
        later are caught in these seams, and all others are turned in."""
        if self.ends:
            return self.ends
        state = state_before(pattern, self)
        ends = free_ends(state, pattern, self.edges)
        if _partial(self):
            return "turned"
        if not ends:
            return "ring"
        late = state_after(pattern)
        caught = all(_caught_at(state, late, end, at) for end, at in ends.items())
        return "caught" if caught else "turned"

    def uncaught(self, pattern: Cut) -> tuple[Run, ...] | None:
        """Where its ends are told to be caught: the edges beside them that no later seam is sewn along there; None
        where it is a ring with no ends to catch. Ends inside an edge, of a part of it, are the author's to know."""
        if self.ending(pattern) != "caught" or _partial(self):
            return ()
        before, late = state_before(pattern, self), state_after(pattern)
        ends = free_ends(before, pattern, self.edges)
        if not ends:
            return None
        left = (end for end, at in ends.items() if not _caught_at(before, late, end, at))
        return tuple(Run(piece, (edge,), side) for piece, side, edge in left)

    def needed(self, pattern: Cut) -> float:
        """mm of each strip that the edges and its ends need."""
        more = 2 * TURNED_END if self.ending(pattern) in ("turned", "ring") else 0.0
        return sewn_length(pattern, self.edges) / self.count + more


def _strip_at(pattern: Cut, run: Run, depth: float, wide: float) -> tuple[Thing, ...]:
    """The strip as it is drawn: its middle `depth` mm inside the run."""
    return (Thing("binding", run, inside(pattern, run, depth), wide),)


def _other_half(pattern: Cut, edge: Run, run: Run) -> tuple[Run, ...]:
    """What goes on over the fold from the half that is shown."""
    if not over_the_fold(pattern, edge):
        return ()
    return tuple(replace(run, side=side) for side in sides_of(pattern, edge) if side != run.side)


@operation
class Bind(EdgeStrip):
    """Bind a row of edges with a strip that shows on both sides, `finished` wide. `trim`: the allowance cut off
    first. `ends`: "ring", "turned" or "caught", else as the edge is: joined all round a ring, turned in at open ends,
    caught where a later seam closes these. `last`: the last row by machine or by hand; `count` strips are used.

    Example::

        make.bind(tote.top, strip=binding, finished=1 * cm)
    """

    kind = "bind"
    seam_class = "3"  # bound seams, from memory
    stages = (
        Stage(
            "first",
            (
                Say("trim", lambda bind: bind.trim > 0),
                pieced,
                "fold{doubled}",
                "pin",
                "bind.ends_{ending}",
                _MATCHED,
                "sew",
            ),
            closes={"edges": ""},
            joins=True,
        ),
        Stage("second", ("wrap{doubled}", "last_{last}", _ties_out)),
    )
    lastly = (_both_halves,)
    why = ("why", Say("why_double", lambda bind: bind.double))
    changes = (Brings("bound", lambda bind, pattern: tuple(Bound(run, bind.finished) for run in bind.edges)),)

    edges: tuple[Run, ...] = runs(closes="faced", takes="trim", becomes="faced")
    double: bool = flag(default=False)
    trim: float = size(default=0)
    last: str = word(("machine", "hand"), default="machine")

    @property
    def doubled(self) -> str:
        """The end of the keys of a strip that is folded in two first."""
        return "_double" if self.double else ""

    def cut_width(self) -> float:
        return binding(self.finished, self.double)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        wide, last = self.finished, Row(run, inset=self.finished, style="hand" if self.last == "hand" else "machine")
        first, bound = section.bound_first(self.double), section.bound_double() if self.double else section.bound()
        whole = (run, *_other_half(pattern, self.edges[0], run))
        laid_on = tuple(thing for half in whole for thing in _strip_at(pattern, half, 2 * wide, 4 * wide))
        wrapped = tuple(thing for half in whole for thing in _strip_at(pattern, half, wide / 2, wide))
        part, (tie, *_) = self._seen(pattern, run), (*self._tied(pattern), None)
        ends = () if tie is None else caught_on(pattern, self, (run,))
        rows = tuple(Row(half, inset=wide, goes_on=half is not run) for half in whole)
        lasts = tuple(replace(last, run=half, goes_on=half is not run) for half in whole)
        over = laid(run, up="wrong", things=wrapped, focus=part)
        found = (
            *joining(self, pattern, "first"),
            laid(run, *rows, things=(*ends, *laid_on), pins=(run,), focus=part, section=first, stage="first"),
            *((over,) if self.last == "machine" else ()),  # its last row is sewn from the right side, in the groove
            laid(run, *lasts, up=self._last_from, things=wrapped, focus=part, section=bound),
        )
        if tie is None:
            return found
        place, name = tie
        box = Row(place, inset=wide / 2, style="box")
        cloth = Layer(run, bound=tuple((half, wide) for half in whole))
        return (*found, Scene((cloth,), (box,), focus=place, strip=name))

    @property
    def _last_from(self) -> Face:
        """The side from which the last row is sewn: the groove is seen on the right side, the fold on the wrong one."""
        return "right" if self.last == "machine" else "wrong"

    def _tied(self, pattern: Cut) -> tuple[tuple[Run, str], ...]:
        """Where the ends of ties lie that it catches on the edge its pictures show, and the names of their strips."""
        run = shown(pattern, self.edges[0])
        names = strips_caught(pattern, self, (run,))
        line = path_of(pattern, run)
        spots = (line.nearest(thing.line.start) for thing in caught_on(pattern, self, (run,)))
        wide = pattern.strip(names[0]).finished_width or self.finished if names else 0.0
        return tuple((around(pattern, run, spot, wide), names[0]) for spot in spots)

    def _seen(self, pattern: Cut, run: Run) -> Run:
        """The part of a long row that its pictures show: where a tie is caught, else where one edge runs into the
        next, else its start; a short one is shown whole."""
        size = run_length(pattern, run)
        if size <= 2 * SEEN:
            return run
        tied = self._tied(pattern)
        if tied:
            middle = ((tied[0][0].start or 0.0) + (tied[0][0].end or size)) / 2
        else:
            first = run_length(pattern, replace(run, edges=run.edges[:1]))
            middle = first if len(run.edges) > 1 else SEEN / 2
        return around(pattern, run, middle, SEEN)


@operation
class BiasFacing(EdgeStrip):
    """Face a row of edges with a strip that is turned wholly to the inside, `finished` wide there. `trim=False` where
    steps of their own trim, grade and clip between its rows.

    Example::

        make.bias_facing(front.armhole, back.armhole, strip=facing_strip, finished=1 * cm,
                         ends="caught", count=2)
    """

    kind = "bias_facing"
    seam_class = "1"
    stages = (
        Stage(
            "first",
            (pieced, "fold", "pin", "bind.ends_{ending}", _MATCHED, "sew"),
            closes={"edges": ""},
            joins=True,
            gives=(Of("strip_seam", "name", each="piece", size="allowance"),),
        ),
        Stage(
            "second",
            (Say("trim", lambda facing: facing.trim), "turn", "stitch"),
            undoes=(Of("strip_seam", "name", each="piece", size="allowance"),),
        ),
    )
    lastly = (_both_halves,)

    allowance: float = width(default=6 * mm)
    trim: bool = flag(default=True)
    finished: float = width(default=10 * mm, most=60.0, said="finished width")

    def cut_width(self) -> float:
        return self.finished + 2 * self.allowance

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        wide, row = self.cut_width(), Row(run, inset=self.finished - 2.0)
        laid_on = _strip_at(pattern, run, wide / 2 - self.allowance, wide)
        turned = _strip_at(pattern, run, self.finished / 2, self.finished)
        return (
            *joining(self, pattern, "first"),
            laid(run, Row(run), things=laid_on, pins=(run,), section=section.bound_first(), stage="first"),
            laid(run, row, up="wrong", things=turned, arrows=((run, "in"),), section=section.bias_faced()),
        )
