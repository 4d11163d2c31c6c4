"""Facings and their interfacing: fuse, finish the outer edge, attach, understitch."""

from __future__ import annotations

from collections.abc import Iterable
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.piece.piece import interfacing_cut
from kit.piece.role import PieceRole
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.fields import fixed, flag, meets, pieces, runs, size, width
from kit.sewing.operation import Keys, Operation, Say, Words, both, operation, shown
from kit.sewing.operations.joined import Seam, matched
from kit.sewing.outcome import Effect, Fact, Uses
from kit.sewing.rules import Asking, Case, Of, Rule
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import spans
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.units import mm


def interfacing_trouble(state: State, pattern: Cut, names: tuple[str, ...]) -> tuple[Diagnostic, ...]:
    found: list[Diagnostic] = []
    for name in names:
        piece = pattern.piece(name)
        layers = interfacing_cut(pattern.pieces, piece)
        if layers == 0:
            found.append(
                trouble(
                    "no_interfacing_cut",
                    message("sewing_trouble.no_interfacing_cut"),
                    piece.title,
                    message("sewing_trouble.no_interfacing_cut_do"),
                    piece=name,
                )
            )
        if state.fused.count(name) >= max(1, layers // max(1, piece.cut.count)):
            found.append(
                trouble(
                    "fused_twice",
                    message("sewing_trouble.fused_twice"),
                    piece.title,
                    message("sewing_trouble.do_take_one_operation_out"),
                    piece=name,
                )
            )
        if any(done.span.piece == name for done in state.closed):
            found.append(
                trouble(
                    "fused_late",
                    message("sewing_trouble.fused_late"),
                    piece.title,
                    message("sewing_trouble.fused_late_do"),
                    piece=name,
                    level="warning",
                )
            )
    return tuple(found)


def interfaced(names: tuple[str, ...]) -> tuple[Fact, ...]:
    """("interfaced", piece) of each."""
    return tuple(("interfaced", name) for name in names)


@operation
class Interfacing(Operation):
    """Interfacing on the wrong side of whole pieces."""

    pieces: tuple[str, ...] = pieces(like="make.fuse(front_facing, back_facing)")

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces, interfacing=self.pieces)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=interfaced(self.pieces))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return interfacing_trouble(state, pattern, self.pieces) + super().check(state, pattern)


@operation
class Fuse(Interfacing):
    """Fuse interfacing onto the wrong side of whole pieces.

    Example::

        make.fuse(cuff, front_facing)
    """

    kind = "fuse"
    stitch_type = ""
    cautions = ("iron",)
    tools = ("iron", "press_cloth")
    notions = ("interfacing",)
    says = ("lay", "press")
    why = ("why",)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece = pattern.piece(self.pieces[0])
        run = shown(pattern, Run(piece.name, (piece.edges[0].name,)))
        return (
            Scene(
                layers=(Layer(run, up="wrong", stuff="main"), Layer(run, up="right", stuff="interfacing", on=run)),
                section=section.fused(),
            ),
        )


@operation
class FaceWithInterfacing(Operation):
    """Finish the outer edges of facings with their own interfacing: seamed, turned, fused.

    Example::

        make.face_with_interfacing(front_facing.outer, allowance=6 * mm)
    """

    # the interfacing's plain side lies on the facing's right side, and is fused only when it is turned
    kind = "face_with_interfacing"
    seam_class = "1"
    cautions = ("needle", "iron", "scissors")
    tools = ("machine", "pins", "iron", "press_cloth", "scissors")
    notions = ("thread", "interfacing")
    says = ("lay", "sew", Say("clip", lambda facing: facing.clip), "turn", "fuse", both("outer"))
    why = ("why",)

    outer: tuple[Run, ...] = runs(closes="faced", takes="allowance", fills={"edge": "edge", "pieces": "piece"})
    allowance: float = width()
    clip: bool = flag(default=True)

    @property
    def uses(self) -> Uses:
        names = tuple(dict.fromkeys(run.piece for run in self.outer))
        return Uses(pieces=names, interfacing=names)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=interfaced(self.uses.pieces))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.outer[0])
        return (
            Scene(
                layers=(
                    Layer(run, up="right", stuff="facing"),
                    Layer(run, up="wrong", stuff="interfacing", on=run, how="flat"),
                ),
                rows=(Row(run),),
                focus=run,
                section=section.superimposed("facing", "interfacing"),
            ),
            Scene(
                layers=(
                    Layer(run, up="wrong", stuff="facing"),
                    Layer(run, up="right", stuff="interfacing", on=run, how="flat"),
                ),
                rows=(Row(run, ink="old"),),
                section=section.faced("interfacing"),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return interfacing_trouble(state, pattern, self.uses.pieces)


@operation
class AttachFacing(Seam):
    """Sew facing runs to garment runs right sides together and turn the facing in.

    Example::

        make.attach_facing([front_facing.inner, back_facing.inner],
                           [front.neck, back.neck], allowance=1 * cm)
    """

    kind = "attach_facing"
    seam_class = "1"
    cautions = ("needle", "iron", "scissors")
    tools: ClassVar[Words] = ("machine", "pins", "iron", "scissors")
    says: ClassVar[Keys] = (
        "pin",
        matched,
        "sew",
        Say("grade", lambda facing: facing.grade),
        Say("clip", lambda facing: facing.clip),
        "turn",
        both("b"),
    )
    why: ClassVar[Keys] = ("why",)

    a: tuple[Run, ...] = meets(
        "b", argument="facing", closes="sewn", takes="allowance", becomes="faced", fills={"facing": "piece"}
    )
    b: tuple[Run, ...] = meets(
        "a", argument="to", closes="faced", takes="allowance", becomes="faced", fills={"edge": "place"}
    )
    allowance: float = width()
    clip: bool = flag(default=True)
    grade: bool = flag(default=True)
    press: str = fixed("one side")
    ease: float = size(default=0)

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((facing.piece, "facing", garment.piece) for facing, garment in self.joins)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        facing, garment = shown(pattern, self.a[-1]), shown(pattern, self.b[-1])
        return (
            Scene(
                layers=(
                    Layer(garment, up="right"),
                    Layer(facing, up="wrong", stuff="facing", on=garment, how="together"),
                ),
                rows=(Row(garment),),
                focus=garment,
                section=section.superimposed("main", "facing"),
            ),
            Scene(
                layers=(
                    Layer(garment, up="wrong"),
                    Layer(facing, up="right", stuff="facing", on=garment, how="together"),
                ),
                rows=(Row(garment, ink="old"),),
                focus=garment,
                arrows=((facing, "in"),),
                section=section.faced(),
            ),
        )


def _turned(row: Understitch, state: State, pattern: Cut) -> Iterable[Case]:
    """The edges are faced already."""
    for run in row.along:
        yield Case(all((span.piece, span.side, span.edge) in state.faced for span in spans(pattern, run)), run)


def _on_the_garment(row: Understitch, state: State, pattern: Cut) -> Iterable[Case]:
    """It runs on the facing's side of the seam, not on the edge that was faced."""
    faced = [done.span for done in state.closed if done.how == "faced"]
    for run in row.along:
        yield Case(any(span.overlap(own) > 0.5 for span in faced for own in spans(pattern, run)), run)


def _catches(row: Understitch, state: State, pattern: Cut) -> Iterable[Case]:
    """It lies near enough to the seam to go through the allowances under it."""
    for run in row.along:
        for name in run.edges:
            wide = pattern.piece(run.piece).edge(name).allowance
            if wide is not None:
                at, values = Run(run.piece, (name,), run.side), {"wide": measured(wide, "allowance")}
                yield Case(row.distance <= wide - 1.0, at, amount=row.distance - wide, values=values)


@operation
class Understitch(Operation):
    """A row on the facing beside its seam, through facing and allowances only.

    Example::

        make.understitch(front_facing.inner, back_facing.inner)
    """

    kind = "understitch"
    says = ("press", "sew", "roll")
    why = ("why",)
    gives = (Of("understitched", "along"),)
    rules = (
        Rule(Asking(_turned), "understitched_early", each=True),
        Rule(Asking(_on_the_garment), "understitched_garment", holds=False, each=True),
        Rule(Asking(_catches), "understitched_wide", tells=("place", "distance", "wide")),
    )

    along: tuple[Run, ...] = runs(fills={"facing": "piece"})
    distance: float = width(default=2 * mm)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[-1])
        return (
            Scene(
                layers=(Layer(run, up="right", stuff="facing"),),
                rows=(Row(run, ink="old"), Row(run, inset=self.distance)),
                focus=run,
                section=section.faced(understitched=True),
            ),
        )
