"""What of a band reaches beyond the garment's edge, as the end of a waistband that is buttoned over."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from kit.diagnostic import named_edge
from kit.sewing.places import beside, without_end
from kit.sewing.reading import in_call
from kit.sewing.vocabulary import Asked, Cut, KitError, Run, measured, message, neighbours, read_by, size


@dataclass(frozen=True)
class Beyond:
    """What of a band reaches beyond the garment's edge: the `size` mm next to its end `at`."""

    at: Run
    size: float

    def off(self, cut: Cut, run: Run, twins: bool = False) -> tuple[Run, ...]:
        """A long edge of the band without it; with `twins` it lies on every piece at the end of that name."""
        at = replace(self.at, piece=run.piece) if twins else self.at
        return without_end(cut, run, at, self.size)


def overlap() -> Any:
    """How far a band reaches beyond the garment's edge."""
    return size(default=0, fills={"beyond": "length"})


def at_end() -> Any:
    """The end it does so at."""
    return read_by(_beyond, "Run | None", default=None, held=None)


def _beyond(given: Any, asked: Asked, name: str) -> Beyond | None:
    size, cut = asked.read["overlap"], asked.reader.cut
    if given is None and size == 0:
        return None
    if given is None or size == 0:
        raise KitError(
            "an overlap needs the end it lies at, and the end an overlap.",
            where=asked.where,
            do="Write both: overlap=3 * cm, at=waistband.end.",
        )
    (run, *more) = asked.reader.runs(given, asked.at(name))
    if more:
        raise KitError("the overlap lies at one end.", where=asked.where, do="Name one end: at=waistband.end.")
    for edge in (cut.piece(run.piece).edge(name) for name in neighbours(cut.piece(run.piece), run.edges)):
        if size >= edge.path.length:
            says = {"size": measured(size), "edge": named_edge(edge), "length": measured(edge.path.length)}
            raise KitError(
                message("refusal.overlap_long", **says),
                where=in_call(asked.where),
                do=message("refusal.overlap_long_do"),
            )
    return Beyond(run, size)


def corner(asked: Asked) -> tuple[Run, ...]:
    """The short parts beside an end that reaches beyond, which its row carries on along, on every piece of the band."""
    beyond = asked.read["at"]
    if beyond is None:
        return ()
    sewn = {edge for run in asked.read.get("a", ()) for edge in run.edges}
    found = [run for run in beside(asked.reader.cut, beyond.at, beyond.size) if run.edges[0] not in sewn]
    others = dict.fromkeys(run.piece for run in asked.read.get("b", ()))
    return (*found, *(replace(run, piece=piece) for piece in others for run in found))


def shorter(asked: Asked, name: str, twins: bool = False) -> tuple[Run, ...]:
    """The runs of a field without what reaches beyond the garment."""
    beyond: Beyond | None = asked.read["at"]
    if beyond is None:
        return asked.read[name]
    return tuple(kept for run in asked.read[name] for kept in beyond.off(asked.reader.cut, run, twins))
