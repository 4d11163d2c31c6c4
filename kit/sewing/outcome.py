"""What an operation does to the garment in work, as plain values: the raw edge it closes, what it joins and uses, what
holds afterwards. The state of the garment takes these and knows no operation."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal

from kit.sewing.run import Run
from kit.sewing.spans import Span

if TYPE_CHECKING:
    from kit.sewing.refit import Refit

How = Literal["sewn", "faced", "hemmed", "finished"]


@dataclass(frozen=True)
class Closing:
    """A stretch of raw edge that an operation closes, and how."""

    span: Span
    how: How


@dataclass(frozen=True)
class Uses:
    """Pieces and strips an operation handles; `interfacing` names the pieces whose interfacing it uses up."""

    pieces: tuple[str, ...] = ()
    strips: Mapping[str, int] = field(default_factory=dict)
    interfacing: tuple[str, ...] = ()


Fact = tuple[str, ...]
"""Something true of the garment in work, such as ("dart", "front", "left", "waist_dart") once it is sewn."""


@dataclass(frozen=True)
class Turned:
    """The allowance of a run lies folded over to the wrong side, `deep` mm from the fold on, held by a row `row` mm
    from the fold (0: by none)."""

    run: Run
    deep: float
    row: float = 0.0


@dataclass(frozen=True)
class Bound:
    """A run is shut in a strip that shows `wide` mm wide on both sides of the cloth."""

    run: Run
    wide: float


@dataclass(frozen=True)
class Hung:
    """A band that hangs on a garment: its runs, and the garment's, in the order in which they lie along it."""

    band: tuple[Run, ...]
    to: tuple[Run, ...]


@dataclass(frozen=True)
class Effect:
    """What an operation changes beside the edge it closes and what it joins. `made` strips, and how many of a strip
    are `attached`; `faced` edges; `unpressed` and `pressed` runs whose seam waits for the iron or has had it;
    `facts` that hold from now on and `undone` ones that no longer do; `also` {what: the name under which every such
    fact holds from now on as well}; `inside_out` and `right_side_out` pieces; `laid`
    pairs of a run and the place of another piece that it is sewn onto (a pocket on its mark); `turned` what lies folded
    over to the wrong side from now on, `bound` what is shut in a binding; `hung` bands that hang on the garment;
    `refit` the draft that counts from now on, and the one until now."""

    made: tuple[str, ...] = ()
    attached: Mapping[str, int] = field(default_factory=dict)
    faced: tuple[Run, ...] = ()
    unpressed: tuple[Run, ...] = ()
    pressed: tuple[Run, ...] = ()
    facts: tuple[Fact, ...] = ()
    undone: tuple[Fact, ...] = ()
    also: Mapping[str, str] = field(default_factory=dict)
    inside_out: tuple[str, ...] = ()
    right_side_out: tuple[str, ...] = ()
    laid: tuple[tuple[Run, Run], ...] = ()
    turned: tuple[Turned, ...] = ()
    bound: tuple[Bound, ...] = ()
    hung: tuple[Hung, ...] = ()
    refit: Refit | None = None


@dataclass(frozen=True)
class Outcome:
    """All that one operation changes: the stretches it closes, the pairs of runs it joins, the pieces and strips it
    uses, its further effect, and the stretches of what it joins that it has `left` as openings and gaps."""

    closes: tuple[Closing, ...] = ()
    joins: tuple[tuple[Run, Run], ...] = ()
    uses: Uses = Uses()
    effect: Effect = Effect()
    left: tuple[Span, ...] = ()
