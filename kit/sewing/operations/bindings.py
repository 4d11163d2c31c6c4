"""Binding an edge with a strip, and facing it with one."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, ClassVar

from kit.diagnostic import Diagnostic, measured, message, titled
from kit.errors import KitError
from kit.piece.strips import binding
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.places import inside, refuse, sewn_length
from kit.sewing.operations.seams import unjoined
from kit.sewing.outcome import Closing, Effect, Uses
from kit.sewing.reading import Reader, Runs, read_size, read_width, read_word
from kit.sewing.run import Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene, Thing
from kit.sewing.sections import bindings as section
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size

TURNED_END = 10.0
"""mm turned in at each free end of a binding (common practice, no source)."""
CLOTH = 3.0
"""mm by which a binding may be cut wider, for the thickness of the cloth (common practice, no source)."""


@dataclass(frozen=True, kw_only=True)
class EdgeStrip(Operation):
    """Base: a strip sewn along a row of edges, `count` strips of it. `ends`: "ring" when it meets itself, "turned"
    when its ends are turned in, "caught" when later seams catch them."""

    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")
    crosses: ClassVar[bool] = True

    edges: tuple[Run, ...]
    name: str
    finished: float
    ends: str = "ring"
    count: int = 1

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(run.piece for run in self.edges)), strips={self.name: self.count})

    def effect(self, pattern: Cut) -> Effect:
        return Effect(made=(self.name,), attached={self.name: self.count}, faced=self.edges)

    def cut_width(self) -> float:
        """mm the strip must be cut wide."""
        raise NotImplementedError

    def minutes(self, pattern: Cut) -> float:
        return 10.0 + 20.0 * sewn_length(pattern, self.edges) / 1000

    def _values(self, pattern: Cut) -> Mapping[str, tuple[Any, str]]:
        return {
            "strip": (self.name, "strip"),
            "edge": (self.edges, "place"),
            "finished": (self.finished, "allowance"),
            "turned": (TURNED_END, "allowance"),
        }

    def _row(self) -> tuple[Sentence, ...]:
        return (Sentence("match_seams", {}),) if len(self.edges) > 1 else ()

    def needed(self, pattern: Cut) -> float:
        """mm of each strip that the edges and its ends need."""
        more = 2 * TURNED_END if self.ends in ("turned", "ring") else 0.0
        return sewn_length(pattern, self.edges) / self.count + more

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        strip = pattern.strip(self.name)
        first = self.edges[0]
        found = list(unjoined(state, pattern, self.edges))
        if state.count(self.name) + self.count > strip.count:
            found.append(
                trouble(
                    "too_few_strips",
                    message(
                        "sewing_trouble.too_few_strips_bound",
                        count=state.count(self.name) + self.count,
                        cut=strip.count,
                    ),
                    strip.title,
                    message("sewing_trouble.too_few_strips_bound_do"),
                )
            )
        off = strip.width - self.cut_width()
        if not -0.5 <= off <= CLOTH:
            found.append(
                trouble(
                    "binding_width",
                    message(
                        "sewing_trouble.binding_width",
                        width=measured(strip.width),
                        finished=measured(self.finished, "allowance"),
                        cut_width=measured(self.cut_width()),
                    ),
                    strip.title,
                    message("sewing_trouble.binding_width_do"),
                    amount=abs(off),
                )
            )
        needed = self.needed(pattern)
        if strip.length < needed - 0.5:
            found.append(
                trouble(
                    "binding_short",
                    message(
                        "sewing_trouble.binding_short_edge", length=measured(strip.length), needed=measured(needed)
                    ),
                    strip.title,
                    message("sewing_trouble.binding_short_edge_do"),
                    amount=needed - strip.length,
                    piece=first.piece,
                    edge=first.edges[0],
                )
            )
        curved = [
            run for run in self.edges for name in run.edges if not pattern.piece(run.piece).edge(name).path.is_straight
        ]
        if curved and strip.grain != "bias":
            found.append(
                refuse(
                    pattern,
                    curved[0],
                    "binding_not_bias",
                    message(
                        "sewing_trouble.binding_not_bias", place=placed(pattern, curved[0]), piece=titled(strip.title)
                    ),
                    message("sewing_trouble.binding_not_bias_do"),
                )
            )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class Bind(EdgeStrip):
    """A binding that shows on both sides, `finished` mm wide, its outer fold at the stitch line. The edge's allowance
    is cut off first (`trim` mm; 0 where it is cut on the line). `double`: the strip is folded in two first. ISO 4916
    class 3 (bound seams), from memory."""

    kind: ClassVar[str] = "bind"
    seam_class: ClassVar[str] = "3"

    double: bool = False
    trim: float = 0.0
    last: str = "machine"

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.edges, "faced")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.edges, self.trim)

    def cut_width(self) -> float:
        return binding(self.finished, self.double)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = {**self._values(pattern), "trim": (self.trim, "allowance")}
        keys = ["trim"] if self.trim > 0 else []
        keys += ["fold_double" if self.double else "fold", "pin", f"ends_{self.ends}"]
        found = [Sentence(f"bind.{key}", values) for key in keys]
        found += self._row()
        keys = ["sew", "wrap_double" if self.double else "wrap", f"last_{self.last}"]
        return (
            *found,
            *(Sentence(f"bind.{key}", values) for key in keys),
            *(both_sides(pattern, self.edges) if self.count > 1 else ()),
        )

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("bind.why", {}), *((Sentence("bind.why_double", {}),) if self.double else ()))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        style = "hand" if self.last == "hand" else "machine"
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                rows=(Row(run, inset=self.finished),),
                focus=run,
                things=(Thing("binding", run, inside(pattern, run, 2 * self.finished), 4 * self.finished),),
                pins=(run,),
                section=section.bound_first(self.double),
            ),
            Scene(
                layers=(Layer(run, up="wrong"),),
                rows=(Row(run, inset=self.finished, style=style),),  # type: ignore[arg-type]
                focus=run,
                things=(Thing("binding", run, inside(pattern, run, self.finished / 2), self.finished),),
                section=section.bound_double() if self.double else section.bound(),
            ),
        )


@dataclass(frozen=True, kw_only=True)
class BiasFacing(EdgeStrip):
    """A strip sewn `allowance` mm from the edge and turned wholly to the inside, its free edge turned under: it does
    not show. `finished` mm wide inside."""

    kind: ClassVar[str] = "bias_facing"
    seam_class: ClassVar[str] = "1"

    allowance: float

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.edges, "faced")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.edges, self.allowance)

    def cut_width(self) -> float:
        return self.finished + 2 * self.allowance

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = {**self._values(pattern), "allowance": (self.allowance, "allowance")}
        found = [Sentence(f"bias_facing.{key}", values) for key in ("fold", "pin")]
        found += [Sentence(f"bind.ends_{self.ends}", values), *self._row()]
        found += [Sentence(f"bias_facing.{key}", values) for key in ("sew", "trim", "turn", "stitch")]
        return (*found, *(both_sides(pattern, self.edges) if self.count > 1 else ()))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("bias_facing.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                rows=(Row(run),),
                focus=run,
                things=(
                    Thing(
                        "binding", run, inside(pattern, run, self.cut_width() / 2 - self.allowance), self.cut_width()
                    ),
                ),
                pins=(run,),
                section=section.bound_first(),
            ),
            Scene(
                layers=(Layer(run, up="wrong"),),
                rows=(Row(run, inset=self.finished - 2.0),),
                focus=run,
                things=(Thing("binding", run, inside(pattern, run, self.finished / 2), self.finished),),
                arrows=((run, "in"),),
                section=section.bias_faced(),
            ),
        )


_ENDS = ("ring", "turned", "caught")


def _count(given: object, where: str) -> int:
    if isinstance(given, bool) or not isinstance(given, int) or not 1 <= given <= 20:
        raise KitError(f"count is {given!r}.", where=where, do="Write how many strips share the edges, such as 1.")
    return given


@verb
def bind(
    reader: Reader,
    *edges: Runs,
    strip: StripHandle,
    finished: Size,
    double: bool = False,
    trim: Size = 0,
    ends: str = "ring",
    last: str = "machine",
    count: int = 1,
) -> Bind:
    """Bind a row of edges with a strip that shows on both sides, `finished` wide. `trim`: the allowance cut off
    first. `ends`: ring, turned or caught; `last`: the last row by machine or by hand; `count` strips are used.

    Example::

        make.bind(tote.top, strip=binding, finished=1 * cm, ends="turned")
    """
    where = "bind"
    return Bind(
        edges=reader.runs(edges, where),
        name=reader.strip(strip, where),
        finished=read_width(finished, f"{where}, finished width", 40.0),
        double=bool(double),
        trim=read_size(trim, f"{where}, trim"),
        ends=read_word(ends, _ENDS, "ends", where),
        last=read_word(last, ("machine", "hand"), "last", where),
        count=_count(count, where),
    )


@verb
def bias_facing(
    reader: Reader,
    *edges: Runs,
    strip: StripHandle,
    allowance: Size = Length(6.0),
    finished: Size = Length(10.0),
    ends: str = "ring",
    count: int = 1,
) -> BiasFacing:
    """Face a row of edges with a strip that is turned wholly to the inside, `finished` wide there.

    Example::

        make.bias_facing(front.armhole, back.armhole, strip=facing_strip, finished=1 * cm,
                         ends="caught", count=2)
    """
    where = "bias facing"
    return BiasFacing(
        edges=reader.runs(edges, where),
        name=reader.strip(strip, where),
        allowance=read_width(allowance, f"{where}, allowance"),
        finished=read_width(finished, f"{where}, finished width", 60.0),
        ends=read_word(ends, _ENDS, "ends", where),
        count=_count(count, where),
    )
