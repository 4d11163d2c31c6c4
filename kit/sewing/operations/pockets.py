"""Patch pockets: hemmed, their edges pressed under, sewn on at a placement mark."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, named_edge, titled
from kit.errors import KitError
from kit.geometry import Path
from kit.piece.role import PieceRole
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.places import facts_of, half_facts, lacking, place_facts, refuse, sewn_length
from kit.sewing.outcome import Closing, Effect, Fact, Uses
from kit.sewing.reading import DEEPEST_HEM, Reader, Runs, read_size, read_width, read_word
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import pockets as shapes
from kit.sewing.spans import path_of, sides_of
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

CORNERS = ("square", "mitred", "curved")
PLACE_AGREES = 4.0
"""mm by which a pocket and the line it is laid on may differ."""


@dataclass(frozen=True, kw_only=True)
class PocketHem(Operation):
    """The pocket's own hem at its mouth: `first` mm turned under, `second` mm folded to the right side and stitched
    `ends` mm from both edges, turned, and stitched down. It takes first + second of the mouth's edge."""

    kind: ClassVar[str] = "pocket_hem"
    seam_class: ClassVar[str] = "6.03.01"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "iron", "scissors")

    mouth: Run
    first: float
    second: float
    ends: float

    def runs(self) -> tuple[Run, ...]:
        return (self.mouth,)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, (self.mouth,), "hemmed")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken((self.mouth,), self.first + self.second)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=half_facts(pattern, (self.mouth,), "pocket_hemmed"))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": ((self.mouth,), "place"),
            "first": (self.first, "part"),
            "second": (self.second, "part"),
            "total": (self.first + self.second, "allowance"),
            "ends": (self.ends, "allowance"),
        }
        keys = ("turn", "fold", "ends", "out", "sew")
        return tuple(Sentence(f"pocket_hem.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("pocket_hem.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.mouth)
        turn = ((run.edges[0], self.second),)
        return (
            Scene(layers=(Layer(run, up="right", turn=turn),), focus=run, arrows=((run, "in"),)),
            Scene(
                layers=(Layer(run, up="wrong", turn=turn),),
                rows=(Row(run, inset=max(self.second - 2.0, self.second / 2)),),
                focus=run,
                section=section.hem_twice(self.first, self.second),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        if self.first > self.second + 0.5:
            return (
                refuse(
                    pattern,
                    self.mouth,
                    "hem_turns",
                    message("sewing_trouble.pocket_turns"),
                    message("sewing_trouble.do_deepen_second_turn"),
                    self.first - self.second,
                ),
            )
        return ()


@dataclass(frozen=True, kw_only=True)
class FoldPocket(Operation):
    """The edges of a pocket pressed under by `allowance` mm, its lower corners square (the folds laid one over the
    other), mitred or curved. It closes nothing; sewing on does."""

    kind: ClassVar[str] = "fold_pocket"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("iron", "scissors")
    notions: ClassVar[tuple[str, ...]] = ()

    edges: tuple[Run, ...]
    allowance: float
    corners: str = "square"

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((run.piece, "pocket", "") for run in self.edges)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=facts_of(pattern, self.edges, "folded"))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return facts_of(pattern, self.edges, "pocket_edge_sewn")

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.edges, "edge"),
            "pocket": (tuple(dict.fromkeys(run.piece for run in self.edges)), "piece"),
            "allowance": (self.allowance, "allowance"),
        }
        keys = (
            ["prepare_curved"] if self.corners == "curved" else ["prepare_mitred"] if self.corners == "mitred" else []
        )
        keys += ["press", self.corners]
        return tuple(Sentence(f"fold_pocket.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence(f"fold_pocket.why_{self.corners}", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        runs = [shown(pattern, run) for run in self.edges]
        turn = tuple((edge, self.allowance) for run in runs for edge in run.edges)
        return (
            Scene(
                layers=(Layer(runs[0], up="wrong", turn=turn),),
                arrows=tuple((run, "in") for run in runs),
                section=shapes.pocket_edge_folded(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        run = self.edges[0]
        done = [fact for fact in facts_of(pattern, self.edges, "folded") if fact in state.facts]
        if done:
            return (
                refuse(
                    pattern,
                    run,
                    "folded_twice",
                    message("sewing_trouble.folded_twice", place=placed(pattern, run)),
                    message("sewing_trouble.do_take_one_out"),
                ),
            )
        return tuple(
            refuse(
                pattern,
                each,
                "folded_late",
                message("sewing_trouble.folded_late", place=placed(pattern, each)),
                message("sewing_trouble.folded_late_do"),
            )
            for each in self.edges
            if not state.is_raw(pattern, each)
        )


@dataclass(frozen=True, kw_only=True)
class PatchPocket(Operation):
    """A pocket laid on the placement marks `at` and stitched on along its folded `edges`, `distance` mm from them,
    the mouth open. Each mark on each half takes one pocket. ISO 4916 class 2 (lapped), from memory."""

    kind: ClassVar[str] = "patch_pocket"
    seam_class: ClassVar[str] = "2"

    edges: tuple[Run, ...]
    at: Place
    allowance: float
    distance: float

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((run.piece, "pocket", self.at.piece) for run in self.edges)

    @property
    def uses(self) -> Uses:
        return Uses(pieces=(*dict.fromkeys(run.piece for run in self.edges), self.at.piece))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.edges, "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.edges, self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        place = Run(self.at.piece, (self.at.mark.name,), self.at.side)
        return Effect(
            facts=place_facts(pattern, (self.at,), "pocket_on") + facts_of(pattern, self.edges, "pocket_edge_sewn"),
            laid=((self.edges[0], place),),
        )

    def minutes(self, pattern: Cut) -> float:
        return 12.0 * len(place_facts(pattern, (self.at,), ""))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "pocket": ((self.edges[0].piece,), "piece"),
            "place": ((self.at,), "mark"),
            "distance": (self.distance, "allowance"),
        }
        keys = ("pin", "sew", "secure")
        halves = both_sides(pattern, (replace(self.edges[0], side=self.at.side),)) if not self.at.side else ()
        return (*(Sentence(f"patch_pocket.{key}", values) for key in keys), *halves)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("patch_pocket.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece = pattern.piece(self.at.piece)
        ground = shown(pattern, Run(piece.name, (piece.edges[0].name,), self.at.side))
        line = self.at.mark.path
        rows = (Row(ground, line=line),) if line is not None else ()
        own = shown(pattern, self.edges[0])
        return (
            Scene(
                layers=(Layer(own, up="right"),),
                rows=tuple(Row(shown(pattern, run, own.side), inset=self.distance) for run in self.edges),
            ),
            Scene(layers=(Layer(ground, up="right"),), rows=rows, section=shapes.patch_edge()),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        first = self.edges[0]
        title = titled(pattern.piece(first.piece).title)
        found: list[Diagnostic] = []
        hemmed = half_facts(pattern, (first,), "pocket_hemmed")
        if lacking(state, hemmed):
            found.append(
                refuse(
                    pattern,
                    first,
                    "pocket_not_hemmed",
                    message("sewing_trouble.pocket_not_hemmed", piece=title),
                    message("sewing_trouble.pocket_not_hemmed_do"),
                )
            )
        for fact in lacking(state, facts_of(pattern, self.edges, "folded"))[:1]:
            edge = pattern.piece(fact[1]).edge(fact[3])
            found.append(
                refuse(
                    pattern,
                    Run(fact[1], (fact[3],)),
                    "pocket_not_folded",
                    message("sewing_trouble.pocket_not_folded", edge=named_edge(edge), piece=title),
                    message("sewing_trouble.pocket_not_folded_do"),
                )
            )
        if any(fact in state.facts for fact in place_facts(pattern, (self.at,), "pocket_on")):
            found.append(
                refuse(
                    pattern,
                    first,
                    "pocket_twice",
                    message("sewing_trouble.pocket_twice", place=placed(pattern, self.at)),
                    message("sewing_trouble.pocket_twice_do"),
                )
            )
        if self.at.mark.path is not None:
            found += self._place(pattern, self.at.mark.path)
        return tuple(found)

    def _place(self, pattern: Cut, line: Path) -> list[Diagnostic]:
        """The placement line is the pocket's outline, the outline without its mouth, or the line of its mouth."""
        piece = pattern.piece(self.edges[0].piece)
        around = sum(edge.path.length for edge in piece.edges)
        own = sum(sewn_length(pattern, (replace(run, side=sides_of(pattern, run)[0]),)) for run in self.edges)
        off = min(abs(line.length - size) for size in (around, own, around - own))
        if off <= PLACE_AGREES:
            return []
        return [
            refuse(
                pattern,
                self.edges[0],
                "pocket_place_size",
                message("sewing_trouble.pocket_place_size", own=measured(own), length=measured(line.length)),
                message("sewing_trouble.pocket_place_size_do"),
                off,
            )
        ]


@verb
def pocket_hem(
    reader: Reader, mouth: Run, *, first: Size = Length(6.0), second: Size, ends: Size = Length(10.0)
) -> PocketHem:
    """Hem the mouth of a pocket with its own cloth: `first` turned under, `second` deep; its ends are stitched at the
    side allowance `ends`.

    Example::

        make.pocket_hem(pocket.top, first=6 * mm, second=3 * cm)
    """
    where = "pocket hem"
    (run, *more) = reader.runs(mouth, where)
    if more:
        raise KitError("several edges are named.", where=where, do="Name the pocket's mouth: pocket.top.")
    return PocketHem(
        mouth=run,
        first=read_width(first, f"{where}, first turn", DEEPEST_HEM),
        second=read_width(second, f"{where}, second turn", DEEPEST_HEM),
        ends=read_size(ends, f"{where}, ends"),
    )


@verb
def fold_pocket(reader: Reader, *edges: Runs, allowance: Size, corners: str = "square") -> FoldPocket:
    """Press the edges of a pocket under; its lower corners square, mitred or curved.

    Example::

        make.pocket_hem(pocket.top, second=3 * cm)
        make.fold_pocket(pocket.left_side, pocket.bottom, pocket.right_side, allowance=1 * cm)
    """
    where = "fold pocket"
    return FoldPocket(
        edges=reader.runs(edges, where),
        allowance=read_width(allowance, f"{where}, allowance"),
        corners=read_word(corners, CORNERS, "corners", where),
    )


@verb
def patch_pocket(reader: Reader, *edges: Runs, at: Place, allowance: Size, distance: Size = Length(2.0)) -> PatchPocket:
    """Stitch a pocket onto a placement mark along its folded edges.

    Example::

        make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side,
                          at=front.pocket_place, allowance=1 * cm)
    """
    where = "patch pocket"
    runs = reader.runs(edges, where)
    if not isinstance(at, Place) or at.mark.kind != "placement":
        raise KitError(
            f"{at.said if isinstance(at, Place) else repr(at)} is no placement.",
            where=where,
            do="Mark on the piece where the pocket is laid, and name that mark: at=front.pocket_place.",
        )
    for run in runs:
        path_of(reader.cut, run)
    return PatchPocket(
        edges=runs,
        at=at,
        allowance=read_width(allowance, f"{where}, allowance"),
        distance=read_width(distance, f"{where}, distance"),
    )
