"""What is drawn through a casing: elastic or a cord."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, closings, shown
from kit.sewing.operations.casings import EDGE
from kit.sewing.operations.places import (
    facts_of,
    inside,
    lacking,
    marks,
    opening_run,
    place_facts,
    refuse,
    sewn_length,
)
from kit.sewing.outcome import Closing, Effect, Uses
from kit.sewing.reading import Reader, Runs, read_width
from kit.sewing.run import Place, Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene, Thing
from kit.sewing.sections import bindings as section
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size, length

LONGEST = 3000.0  # mm
ROOM = 2.0
"""mm a casing is at least wider than its elastic (common practice, no source)."""
JOIN = 20.0
"""mm by which the ends of an elastic are laid over one another (common practice, no source)."""


def _deep(state: State, runs: tuple[Run, ...]) -> float | None:
    """mm of depth of the casing on these runs, if there is one."""
    keys = {(run.piece, edge) for run in runs for edge in run.edges}
    found = [float(fact[4]) for fact in state.facts if fact[0] == "casing_depth" and (fact[1], fact[3]) in keys]
    return min(found, default=None)


@dataclass(frozen=True, kw_only=True)
class Thread(Operation):
    """Base: something drawn through a casing; the `gap` left for it is then closed."""

    cautions: ClassVar[tuple[str, ...]] = ("needle", "pins")
    tools: ClassVar[tuple[str, ...]] = ("bodkin", "machine", "pins")

    edges: tuple[Run, ...]
    gap: Run | None = None

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, (self.gap,) if self.gap else (), "hemmed")

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=facts_of(pattern, self.edges, "threaded"))

    def minutes(self, pattern: Cut) -> float:
        return 10.0

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        run = self.edges[0]
        if lacking(state, facts_of(pattern, self.edges, "casing")):
            return (
                refuse(
                    pattern,
                    run,
                    "no_casing",
                    message("sewing_trouble.no_casing", place=placed(pattern, run)),
                    message("sewing_trouble.no_casing_do"),
                ),
            )
        if any(fact in state.facts for fact in facts_of(pattern, self.edges, "threaded")):
            return (
                refuse(
                    pattern,
                    run,
                    "threaded_twice",
                    message("sewing_trouble.threaded_twice", place=placed(pattern, run)),
                    message("sewing_trouble.do_take_one_operation_out"),
                ),
            )
        if self.gap is not None and not state.is_raw(pattern, self.gap):
            return (
                refuse(
                    pattern,
                    self.gap,
                    "gap_shut",
                    message("sewing_trouble.gap_shut", place=placed(pattern, self.gap)),
                    message("sewing_trouble.gap_shut_do"),
                ),
            )
        return ()


@dataclass(frozen=True, kw_only=True)
class ThreadElastic(Thread):
    """Elastic `length` mm long as cut and `width` mm wide, its ends joined to a ring (`ring`) or stitched fast at
    both ends of the casing."""

    kind: ClassVar[str] = "thread_elastic"
    notions: ClassVar[tuple[str, ...]] = ("thread", "elastic")

    length: float
    width: float
    ring: bool = True

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"elastic": (self.length, "length")}

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "length": (self.length, "length"),
            "width": (self.width, "allowance"),
            "edge": (self.edges, "place"),
            "join": (JOIN, "allowance"),
            "gap": ((self.gap,) if self.gap else self.edges, "place"),
        }
        keys = ["draw", "join" if self.ring else "fasten", *(["close"] if self.gap else []), "spread"]
        return tuple(Sentence(f"thread_elastic.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("thread_elastic.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (
            Scene(
                layers=(Layer(run, up="wrong", turn=tuple((edge, self.width + ROOM) for edge in run.edges)),),
                rows=(Row(run, inset=self.width + ROOM, ink="old"),),
                focus=run,
                things=(Thing("elastic", run, inside(pattern, run, self.width / 2 + ROOM / 2), self.width),),
                section=section.casing("elastic"),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        run = self.edges[0]
        deep = _deep(state, self.edges)
        if deep is not None and self.width > deep - ROOM - EDGE + 0.5:
            found.append(
                refuse(
                    pattern,
                    run,
                    "elastic_wide",
                    message(
                        "sewing_trouble.elastic_wide",
                        width=measured(self.width, "allowance"),
                        deep=measured(deep, "allowance"),
                    ),
                    message("sewing_trouble.elastic_wide_do"),
                    self.width - (deep - ROOM - EDGE),
                )
            )
        whole = sewn_length(pattern, self.edges)
        worn = self.length - (JOIN if self.ring else 0.0)
        if worn >= whole:
            found.append(
                refuse(
                    pattern,
                    run,
                    "elastic_long",
                    message("sewing_trouble.elastic_long", worn=measured(worn), whole=measured(whole)),
                    message("sewing_trouble.elastic_long_do"),
                    worn - whole,
                )
            )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class ThreadCord(Thread):
    """A cord `length` mm long drawn through a casing; its ends come out at the eyelets `through`."""

    kind: ClassVar[str] = "thread_cord"
    notions: ClassVar[tuple[str, ...]] = ("thread", "cord")
    cautions: ClassVar[tuple[str, ...]] = ("cords", "pins")

    length: float = 0.0
    name: str = ""
    through: tuple[Place, ...] = ()

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {} if self.name else {"cord": (self.length, "length")}

    @property
    def uses(self) -> Uses:
        pieces = tuple(dict.fromkeys(run.piece for run in self.edges))
        return Uses(pieces=pieces, strips={self.name: 1} if self.name else {})

    def effect(self, pattern: Cut) -> Effect:
        facts = facts_of(pattern, self.edges, "threaded") + place_facts(pattern, self.through, "eyelet_used")
        return Effect(facts=facts, attached={self.name: 1} if self.name else {})

    def _length(self, pattern: Cut) -> float:
        strip = pattern.strip(self.name) if self.name else None
        return (strip.finished_length or strip.length) if strip else self.length

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "length": (self._length(pattern), "length"),
            "edge": (self.edges, "place"),
            "places": (self.through, "mark"),
            "gap": ((self.gap,) if self.gap else self.edges, "place"),
        }
        keys = ["draw_strip" if self.name else "draw"]
        if self.name:
            values["strip"] = (self.name, "strip")
        keys += ["ends", *(["close"] if self.gap else []), "tack"]
        return tuple(Sentence(f"thread_cord.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("thread_cord.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                focus=run,
                things=(Thing("cord", run, inside(pattern, run, 10.0), 4.0),),
                section=section.casing("cord"),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        run = self.edges[0]
        if self.name and self.name not in state.made:
            title = pattern.strip(self.name).title
            found.append(
                trouble(
                    "strip_not_made",
                    message("sewing_trouble.strip_not_made_drawn_in"),
                    title,
                    message("sewing_trouble.do_make_strip_first"),
                )
            )
        if lacking(state, place_facts(pattern, self.through, "eyelet")):
            place = self.through[0]
            found.append(
                refuse(
                    pattern,
                    run,
                    "no_eyelet",
                    message("sewing_trouble.no_eyelet", place=placed(pattern, place)),
                    message("sewing_trouble.no_eyelet_do"),
                )
            )
        whole = sewn_length(pattern, self.edges)
        if self._length(pattern) <= whole:
            found.append(
                refuse(
                    pattern,
                    run,
                    "cord_short",
                    message("sewing_trouble.cord_short", length=measured(self._length(pattern)), whole=measured(whole)),
                    message("sewing_trouble.cord_short_do"),
                    whole - self._length(pattern),
                )
            )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class ThreadStrip(ThreadCord):
    """The made strip `name` drawn through a casing as a cord."""

    kind: ClassVar[str] = "thread_strip"
    notions: ClassVar[tuple[str, ...]] = ("thread",)


@verb
def thread_elastic(
    reader: Reader, *edges: Runs, length: Size, width: Size, gap: Run | Place | None = None, ring: bool = True
) -> ThreadElastic:
    """Draw elastic through a casing and close the gap it went in by.

    Example::

        make.casing(tote.top, depth=3 * cm, gap=tote.top.between(2 * cm, 5 * cm))
        make.thread_elastic(tote.top, length=30 * cm, width=2 * cm)
    """
    where = "thread elastic"
    return ThreadElastic(
        edges=reader.runs(edges, where),
        length=read_width(length, f"{where}, length", LONGEST),
        width=read_width(width, f"{where}, width"),
        gap=None if gap is None else opening_run(reader, gap, f"{where}, gap"),
        ring=bool(ring),
    )


@verb
def thread_cord(
    reader: Reader,
    *edges: Runs,
    cord: StripHandle | Size,
    through: Place | list[Place],
    gap: Run | Place | None = None,
) -> ThreadCord:
    """Draw a cord through a casing, its ends out at eyelets. `cord` is a made strip, or how long a bought cord is.

    Example::

        make.thread_cord(tote.top, cord=60 * cm, through=tote.eyelet)
    """
    where = "thread cord"
    if not isinstance(cord, StripHandle | str | Length):
        raise KitError(f"{cord!r} is no cord.", where=where, do="Name a strip, or write a length such as 150 * cm.")
    runs, places = reader.runs(edges, where), marks((through,), where)
    opening = None if gap is None else opening_run(reader, gap, f"{where}, gap")
    if isinstance(cord, StripHandle):
        return ThreadStrip(edges=runs, name=cord.name, through=places, gap=opening)
    return ThreadCord(edges=runs, length=float(length(cord, where)), through=places, gap=opening)
