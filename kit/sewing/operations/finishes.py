"""Rows that close nothing, and fittings: edge finish, topstitch, edgestitch, staystitch, try on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.joined import edge_facts, trouble_on
from kit.sewing.outcome import Closing, Uses
from kit.sewing.reading import FINISHES, Reader, Runs, read_width, read_word
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import sides_of, spans
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size

EDGESTITCH = 3.0
"""mm from the edge up to which a row is called an edgestitch (common practice, no source)."""


@dataclass(frozen=True, kw_only=True)
class EdgeFinish(Operation):
    """Raw edges overcast: "zigzag" (stitch 304), "overlock" (504, ISO 4916 6.01.01, from memory) or "pinked".
    Closes nothing, unless `leave`: the finish is then all that edge gets, as on a facing's free edge."""

    kind: ClassVar[str] = "edge_finish"
    seam_class: ClassVar[str] = "6.01.01"

    edges: tuple[Run, ...]
    stitch: str = "zigzag"
    leave: bool = False

    @property
    def edge_stitch(self) -> str:
        """ISO 4915 stitch type; empty for pinking."""
        return {"zigzag": "304", "overlock": "504"}.get(self.stitch, "")

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.edges, "finished") if self.leave else ()

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.edges, 0.0) if self.leave else {}

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.edges, "place"),
            "finish": (f"finish.{self.stitch}", "word"),
        }
        return (Sentence("edge_finish.sew", values), *both_sides(pattern, self.edges))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                rows=(Row(run, inset=1.5 if self.leave else -3.0, zigzag=True),),
                focus=run,
                section=section.one_ply(),
            ),
        )

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("edge_finish.why", {}),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return tuple(
            trouble_on(
                pattern,
                (run,),
                "finished_late",
                message("sewing_trouble.finished_late", place=placed(pattern, run)),
                message("sewing_trouble.finished_late_do"),
            )
            for run in self.edges
            if any(fact in state.facts for fact in edge_facts(pattern, (run,), "shut_in"))
            or any(
                done.how in ("faced", "hemmed") and done.span.overlap(span) > 0.5
                for span in spans(pattern, run)
                for done in state.closed
            )
        )


@dataclass(frozen=True, kw_only=True)
class Topstitch(Operation):
    """Rows seen from the right side, the first `distance` mm inside a closed edge or seam, the others 6 mm
    further in each. On a seam it runs beside it, through the allowances on that side."""

    kind: ClassVar[str] = "topstitch"
    crosses: ClassVar[bool] = True

    along: tuple[Run, ...]
    distance: float
    rows: int = 1

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.along, "place"),
            "distance": (self.distance, "allowance"),
            "rows": (self.rows, "count"),
            "apart": (6.0, "allowance"),
        }
        keys = ["edge" if self.distance <= EDGESTITCH else "sew", *(["more"] if self.rows > 1 else [])]
        return (*(Sentence(f"topstitch.{key}", values) for key in keys), *both_sides(pattern, self.along))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("topstitch.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        rows = tuple(Row(run, inset=self.distance + 6.0 * number) for number in range(self.rows))
        return (Scene(layers=(Layer(run, up="right"),), rows=rows, focus=run, section=section.faced("main", True)),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return tuple(
            trouble(
                "edge_still_raw",
                message("sewing_trouble.topstitched_raw", place=placed(pattern, run)),
                pattern.piece(run.piece).title,
                message("sewing_trouble.topstitched_raw_do"),
                piece=run.piece,
                edge=run.edges[0],
            )
            for run in self.along
            if not state.is_closed(pattern, run)
        ) + tuple(
            trouble_on(
                pattern,
                (run,),
                "topstitched_unpressed",
                message("sewing_trouble.topstitched_unpressed", place=placed(pattern, run)),
                message("sewing_trouble.topstitched_unpressed_do"),
            )
            for run in self.along
            if any((run.piece, side, edge) in state.unpressed for side in sides_of(pattern, run) for edge in run.edges)
        )


@dataclass(frozen=True, kw_only=True)
class Staystitch(Operation):
    """A row in the allowance, `distance` mm outside the stitch line, so that a curve keeps its length."""

    kind: ClassVar[str] = "staystitch"

    along: tuple[Run, ...]
    distance: float

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.along, "place"),
            "distance": (self.distance, "allowance"),
        }
        return (Sentence("staystitch.sew", values), *both_sides(pattern, self.along))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("staystitch.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                rows=(Row(run, inset=-self.distance),),
                focus=run,
                section=section.one_ply(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = [
            trouble(
                "staystitched_late",
                message("sewing_trouble.staystitched_late", place=placed(pattern, run)),
                pattern.piece(run.piece).title,
                message("sewing_trouble.staystitched_late_do"),
                piece=run.piece,
                edge=run.edges[0],
            )
            for run in self.along
            if not state.is_raw(pattern, run)
        ]
        for run in self.along:
            for name in run.edges:
                allowance = pattern.piece(run.piece).edge(name).allowance
                if allowance is not None and allowance <= self.distance:
                    found.append(
                        trouble(
                            "staystitch_outside_cloth",
                            message("sewing_trouble.staystitch_outside_cloth"),
                            pattern.piece(run.piece).title,
                            message("sewing_trouble.staystitch_outside_cloth_do"),
                            amount=self.distance - allowance,
                            piece=run.piece,
                            edge=name,
                        )
                    )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class TryOn(Operation):
    """A fitting: put it on, look, and mark the `places`."""

    kind: ClassVar[str] = "try_on"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("pins",)
    tools: ClassVar[tuple[str, ...]] = ("pins", "chalk")
    notions: ClassVar[tuple[str, ...]] = ()

    places: tuple[Place, ...] = ()
    note: str = ""

    def runs(self) -> tuple[Run, ...]:
        return ()

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(place.piece for place in self.places)))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        found = [Sentence("try_on.wear", {})]
        if self.places:
            found.append(Sentence("try_on.mark", {"places": (self.places, "mark")}))
        if self.note:
            found.append(Sentence("try_on.note", {"note": (self.note, "text")}))
        return tuple(found)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        found = []
        for name in self.uses.pieces:
            piece = pattern.piece(name)
            found.append(Layer(shown(pattern, Run(name, (piece.edges[0].name,))), up="right"))
        return (Scene(layers=tuple(found)),) if found else ()


@verb
def edge_finish(reader: Reader, *edges: Runs, stitch: str = "zigzag", leave: bool = False) -> EdgeFinish:
    """Overcast raw edges. `leave=True`: that is all the edge gets.

    Example::

        make.edge_finish(front.side, back.side, stitch="overlock")
    """
    where = "edge finish"
    return EdgeFinish(
        edges=reader.runs(edges, where), stitch=read_word(stitch, FINISHES[:3], "stitch", where), leave=bool(leave)
    )


@verb
def topstitch(reader: Reader, *along: Runs, distance: Size = Length(6.0), rows: int = 1) -> Topstitch:
    """Rows on the right side.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="one side")
        make.topstitch(front.side, distance=6 * mm, rows=2)
    """
    where = "topstitch"
    if isinstance(rows, bool) or not isinstance(rows, int) or not 1 <= rows <= 6:
        raise KitError(f"{rows!r} rows of topstitching.", where=where, do="Write a whole number from 1 to 6.")
    return Topstitch(along=reader.runs(along, where), distance=read_width(distance, f"{where}, distance"), rows=rows)


@verb
def edgestitch(reader: Reader, *along: Runs, distance: Size = Length(2.0)) -> Topstitch:
    """A row on the right side, very close to a finished edge or seam.

    Example::

        make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm, press="one side")
        make.edgestitch(back.shoulder)
    """
    where = "edgestitch"
    return Topstitch(along=reader.runs(along, where), distance=read_width(distance, f"{where}, distance", EDGESTITCH))


@verb
def staystitch(reader: Reader, *along: Runs, distance: Size = Length(3.0)) -> Staystitch:
    """A row in the allowance that keeps a curve from stretching.

    Example::

        make.staystitch(front.neck, back.neck)
    """
    where = "staystitch"
    return Staystitch(along=reader.runs(along, where), distance=read_width(distance, f"{where}, distance"))


@verb
def try_on(reader: Reader, *places: Place, note: str = "") -> TryOn:
    """Stop for a fitting and mark what is found.

    Example::

        make.try_on(front.button_1, note="Check where the front closes.")
    """
    for place in places:
        if not isinstance(place, Place):
            raise KitError(f"{place!r} is not a mark on a piece.", where="try on", do="Name a mark: front.tie_place.")
    return TryOn(places=places, note=str(note))
