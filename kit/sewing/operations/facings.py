"""Facings and their interfacing: fuse, finish the outer edge, attach, understitch."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.errors import KitError
from kit.piece.piece import interfacing_cut
from kit.piece.role import PieceRole
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.places import facts_of
from kit.sewing.operations.seams import Seam
from kit.sewing.outcome import Closing, Effect, Fact, Uses
from kit.sewing.reading import Reader, Runs, read_size, read_width
from kit.sewing.run import PieceHandle, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.spans import spans
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size


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


@dataclass(frozen=True, kw_only=True)
class Fuse(Operation):
    """Interfacing fused to the wrong side of whole pieces."""

    kind: ClassVar[str] = "fuse"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("iron",)
    tools: ClassVar[tuple[str, ...]] = ("iron", "press_cloth")
    notions: ClassVar[tuple[str, ...]] = ("interfacing",)

    pieces: tuple[str, ...]

    def runs(self) -> tuple[Run, ...]:
        return ()

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces, interfacing=self.pieces)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=interfaced(self.pieces))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("fuse.why", {}),)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        pieces: dict[str, tuple[object, str]] = {"pieces": (self.pieces, "piece")}
        return (Sentence("fuse.lay", pieces), Sentence("fuse.press", pieces))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece = pattern.piece(self.pieces[0])
        run = shown(pattern, Run(piece.name, (piece.edges[0].name,)))
        return (
            Scene(
                layers=(Layer(run, up="wrong", stuff="main"), Layer(run, up="right", stuff="interfacing", on=run)),
                section=section.fused(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return interfacing_trouble(state, pattern, self.pieces)


@dataclass(frozen=True, kw_only=True)
class FaceWithInterfacing(Operation):
    """The outer edge of facings finished by their own interfacing: the two seamed `allowance` mm from the
    edge, the interfacing's plain side on the facing's right side, turned, and only then fused."""

    kind: ClassVar[str] = "face_with_interfacing"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "press_cloth", "scissors")
    notions: ClassVar[tuple[str, ...]] = ("thread", "interfacing")

    outer: tuple[Run, ...]
    allowance: float
    clip: bool = True

    def runs(self) -> tuple[Run, ...]:
        return self.outer

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.outer, "faced")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.outer, self.allowance)

    @property
    def uses(self) -> Uses:
        pieces = tuple(dict.fromkeys(run.piece for run in self.outer))
        return Uses(pieces=pieces, interfacing=pieces)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=interfaced(self.uses.pieces))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("face_with_interfacing.why", {}),)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "pieces": (self.uses.pieces, "piece"),
            "edge": (self.outer, "edge"),
            "allowance": (self.allowance, "allowance"),
        }
        keys = ["lay", "sew", *(["clip"] if self.clip else []), "turn", "fuse"]
        return (
            *(Sentence(f"face_with_interfacing.{key}", values) for key in keys),
            *both_sides(pattern, self.outer),
        )

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


@dataclass(frozen=True, kw_only=True)
class AttachFacing(Seam):
    """Facing runs `a` sewn to garment runs `b` right sides together, clipped, turned to the inside."""

    kind: ClassVar[str] = "attach_facing"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")

    allowance: float
    clip: bool = True
    grade: bool = True
    press: str = "one side"

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.a, "sewn") + closings(pattern, self.b, "faced")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), faced=self.runs())

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((facing.piece, "facing", garment.piece) for facing, garment in self.joins)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("attach_facing.why", {}),)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "facing": (self._names()[0], "piece"),
            "edge": (self.b, "place"),
            "allowance": (self.allowance, "allowance"),
        }
        keys = ["pin", "sew"]
        keys += ["grade"] if self.grade else []
        keys += ["clip"] if self.clip else []
        keys += ["turn"]
        between = {1: self._match(pattern) + self._ease()}
        found: list[Sentence] = []
        for number, key in enumerate(keys):
            found += [*between.get(number, ()), Sentence(f"attach_facing.{key}", values)]
        return (*found, *both_sides(pattern, self.b))

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


@dataclass(frozen=True, kw_only=True)
class Understitch(Operation):
    """A row on the facing, `distance` mm beside the seam, through facing and allowances only."""

    kind: ClassVar[str] = "understitch"
    seam_class: ClassVar[str] = ""

    along: tuple[Run, ...]
    distance: float

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=facts_of(pattern, self.along, "understitched"))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("understitch.why", {}),)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "facing": (tuple(dict.fromkeys(run.piece for run in self.along)), "piece"),
            "distance": (self.distance, "allowance"),
        }
        return (
            Sentence("understitch.press", values),
            Sentence("understitch.sew", values),
            Sentence("understitch.roll", values),
        )

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

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return tuple(
            trouble(
                "understitched_early",
                message("sewing_trouble.understitched_early", place=placed(pattern, run)),
                pattern.piece(run.piece).title,
                message("sewing_trouble.understitched_early_do"),
                piece=run.piece,
                edge=run.edges[0],
            )
            for run in self.along
            if any((span.piece, span.side, span.edge) not in state.faced for span in spans(pattern, run))
        )


@verb
def fuse(reader: Reader, *pieces: PieceHandle) -> Fuse:
    """Fuse interfacing onto the wrong side of whole pieces.

    Example::

        make.fuse(cuff, front_facing)
    """
    names = tuple(reader.piece(piece, "fuse") for piece in pieces)
    if not names:
        raise KitError("fuse has no piece.", do="Name the pieces: make.fuse(front_facing, back_facing).")
    return Fuse(pieces=names)


@verb
def face_with_interfacing(reader: Reader, *outer: Runs, allowance: Size, clip: bool = True) -> FaceWithInterfacing:
    """Finish the outer edges of facings with their own interfacing: seamed, turned, fused.

    Example::

        make.face_with_interfacing(front_facing.outer, allowance=6 * mm)
    """
    where = "face with interfacing"
    return FaceWithInterfacing(
        outer=reader.runs(outer, where), allowance=read_width(allowance, f"{where}, allowance"), clip=clip
    )


@verb
def attach_facing(
    reader: Reader, facing: Runs, to: Runs, *, allowance: Size, clip: bool = True, grade: bool = True, ease: Size = 0
) -> AttachFacing:
    """Sew facing runs to garment runs right sides together and turn the facing in.

    Example::

        make.attach_facing([front_facing.inner, back_facing.inner],
                           [front.neck, back.neck], allowance=1 * cm)
    """
    where = "attach facing"
    a, b = reader.pair(facing, to, where)
    return AttachFacing(
        a=a,
        b=b,
        allowance=read_width(allowance, f"{where}, allowance"),
        clip=clip,
        grade=grade,
        ease=read_size(ease, f"{where}, ease"),
    )


@verb
def understitch(reader: Reader, *along: Runs, distance: Size = Length(2.0)) -> Understitch:
    """A row on the facing beside its seam.

    Example::

        make.understitch(front_facing.inner, back_facing.inner)
    """
    where = "understitch"
    return Understitch(along=reader.runs(along, where), distance=read_width(distance, f"{where}, distance"))
