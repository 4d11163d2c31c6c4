"""Facings and their interfacing: fuse, finish the outer edge, attach, understitch."""

from __future__ import annotations

from dataclasses import replace

from kit.piece.piece import interfacing_cut
from kit.piece.role import PieceRole
from kit.sewing import section
from kit.sewing.caught import with_caught
from kit.sewing.curves import tightest
from kit.sewing.operations.joined import Seam, matched
from kit.sewing.operations.trimming import snips, spacing
from kit.sewing.sections.finishes import graded
from kit.sewing.vocabulary import *


def _layers(pattern: Cut, name: str) -> int:
    """How many layers of interfacing are cut for a piece."""
    return interfacing_cut(pattern.pieces, pattern.piece(name))


def _left(made: Any, state: State, pattern: Cut, name: str) -> bool:
    """Not every layer is fused yet."""
    return state.fused.count(name) < max(1, _layers(pattern, name) // max(1, pattern.piece(name).cut.count))


def _untouched(made: Any, state: State, pattern: Cut, name: str) -> bool:
    """Nothing of the piece is sewn yet."""
    return name not in {done.span.piece for done in state.closed}


INTERFACED = (
    Rule(
        Each("pieces", lambda made, state, pattern, name: _layers(pattern, name) > 0), "no_interfacing_cut", each=True
    ),
    Rule(Each("pieces", _left), "fused_twice", do="do_take_one_operation_out", each=True),
    Rule(Each("pieces", _untouched), "fused_late", each=True, level="warning"),
)
"""What interfacing needs of the field `pieces`."""


@operation
class Interfacing(Operation):
    """Interfacing on the wrong side of whole pieces."""

    gives = (Of("interfaced", "pieces", each="piece"),)
    rules: ClassVar[Rules] = INTERFACED

    pieces: tuple[str, ...] = pieces(like="make.fuse(front_facing, back_facing)")

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces, interfacing=self.pieces)

    def lined(self, run: Run, *rows: Row) -> Scene:
        """A piece with its interfacing on the wrong side."""
        return lined(run, *rows, up="wrong", focus=None, section=section.fused())


@operation
class Fuse(Interfacing):
    """Fuse interfacing onto the wrong side of whole pieces.

    Example::

        make.fuse(cuff, front_facing)
    """

    kind = "fuse"
    tools = ("iron", "press_cloth")
    notions = ("interfacing",)
    says = ("lay", "press")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece = pattern.piece(self.pieces[0])
        return (self.lined(shown(pattern, Run(piece.name, (piece.edges[0].name,)))),)


@operation
class FaceWithInterfacing(Operation):
    """Finish the outer edges of facings with their own interfacing: seamed, turned, fused.

    Example::

        make.face_with_interfacing(front_facing.outer, allowance=6 * mm)
    """

    # the interfacing's plain side lies on the facing's right side, and is fused only when it is turned
    kind = "face_with_interfacing"
    seam_class = "1"
    tools = ("machine", "pins", "iron", "press_cloth", "scissors")
    notions = ("thread", "interfacing")
    says = ("lay", "sew", Say("clip", lambda facing: facing.clip), "turn", "fuse", both("outer"))
    gives = (Of("interfaced", "pieces", each="piece"),)
    rules = INTERFACED
    pictures = seen(
        "outer",
        lambda facing, run: lined(run, Row(run), stuff="facing", section=section.superimposed("facing", "interfacing")),
        lambda facing, run: lined(
            run, Row(run, ink="old"), up="wrong", stuff="facing", focus=None, section=section.faced("interfacing")
        ),
    )

    outer: tuple[Run, ...] = runs(closes="faced", takes="allowance", fills={"edge": "edge", "pieces": "piece"})
    allowance: float = width()
    clip: bool = flag(default=True)

    @property
    def pieces(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(run.piece for run in self.outer))

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces, interfacing=self.pieces)


_BOTH = {"a": "", "b": ""}


@operation
class AttachFacing(Seam):
    """Sew facing runs to garment runs right sides together and turn the facing in. What steps of their own do is left
    out here: `grade=False`, `clip=False`, `press="later"`; with `rows="stitch"` it is left before it is turned, to
    trim, clip, press away and understitch first.

    Example::

        make.attach_facing([front_facing.inner, back_facing.inner],
                           [front.neck, back.neck], allowance=1 * cm)
    """

    kind = "attach_facing"
    seam_class = "1"
    tools: ClassVar[Words] = ("machine", "pins", "iron", "scissors")
    stages: ClassVar[tuple[Stage, ...]] = (
        Stage("stitch", ("pin", matched, "sew"), closes=_BOTH, joins=True, brings=("faced",), work=2.0),
        Stage(
            "trim",
            (Say("grade", lambda facing: facing.grade), Say("clip", lambda facing: facing.clip)),
            when=lambda facing: facing.grade or facing.clip,
        ),
        Stage("turn", (Say("turn_only", lambda facing: facing.press == "later", "turn"), PRESS_LATER)),
    )
    lastly: ClassVar[Keys] = (both("b"),)

    a: tuple[Run, ...] = meets(
        "b", argument="facing", closes="sewn", takes="allowance", becomes="faced", fills={"facing": "piece"}
    )
    b: tuple[Run, ...] = meets(
        "a", argument="to", closes="faced", takes="allowance", becomes="faced", fills={"edge": "place"}
    )
    allowance: float = width()
    clip: bool = flag(default=True)
    grade: bool = flag(default=True)
    press: str = word(("edge", "later"), default="edge")
    ease: float = size(default=0)

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((facing.piece, "facing", garment.piece) for facing, garment in self.joins)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        facing, garment = shown(pattern, self.a[-1]), shown(pattern, self.b[-1])
        stitched = together(
            garment,
            facing,
            Row(garment),
            stuff="facing",
            section=section.superimposed("main", "facing"),
            stage="stitch",
        )
        turned = together(
            garment,
            facing,
            Row(garment, ink="old"),
            facing="wrong",
            stuff="facing",
            arrows=((facing, "in"),),
            section=section.faced(),
        )
        folded = (replace(layer, back=self._folded(pattern, layer.run)) for layer in turned.layers)
        turned = replace(turned, layers=tuple(folded))  # both allowances lie between the two
        return (with_caught(pattern, self, stitched), *self._cut_back(pattern), turned)

    def _folded(self, pattern: Cut, shows: Run) -> tuple[tuple[Run, float], ...]:
        """What of the piece of a run folds along the seam, and how deep."""
        runs = (shown(pattern, run, shows.side) for run in (*self.a, *self.b) if run.piece == shows.piece)
        return tuple((run, self.allowance) for run in runs if run.side == shows.side)

    def _cut_back(self, pattern: Cut) -> tuple[Scene, ...]:
        """Before it is turned: the facing's allowance trimmed, the curve clipped; seen where the first runs meet."""
        if not (self.grade or self.clip):
            return ()
        facing, garment = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        curved = self.clip and tightest(pattern, garment, "in") is not None
        cuts = snips(pattern, garment, spacing(pattern, (garment,), "in")) if curved else ()
        if not (self.grade or cuts):
            return ()
        scene = together(
            garment,
            facing,
            Row(garment, ink="old"),
            stuff="facing",
            section=graded("facing") if self.grade else section.superimposed("main", "facing"),
            things=cuts,
            focus=garment,
            stage="trim",
        )
        if not self.grade:
            return (scene,)
        upper = replace(scene.layers[1], trimmed=((facing, self.allowance / 2),))
        return (replace(scene, layers=(scene.layers[0], upper)),)


def _on_the_garment(row: Understitch, state: State, pattern: Cut, run: Run) -> bool:
    """It runs on the edge that was faced, not on the facing's side of the seam."""
    faced = [done.span for done in state.closed if done.how == "faced"]
    return any(span.overlap(own) > 0.5 for span in faced for own in spans(pattern, run))


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
    says = (
        lambda row, pattern: "" if row.pressed_away(pattern) else "press",
        "sew",
        lambda row, pattern: "" if row.before_turning(pattern) else "roll",
        both("along"),
    )
    gives = (Of("understitched", "along"),)
    rules = (
        Rule(Of("faced", "along", each="run"), "understitched_early", each=True),
        Rule(Each("along", _on_the_garment), "understitched_garment", holds=False, each=True),
        Rule(Asking(_catches), "understitched_wide"),
    )

    along: tuple[Run, ...] = runs(fills={"facing": "piece"})
    distance: float = width(default=2 * mm)

    def pressed_away(self, pattern: Cut) -> bool:
        """Whether a step of its own has pressed the allowances towards the facing."""
        state = state_before(pattern, self)
        reached = [found for run in self.along for found in (run, *state.opposite(pattern, run))]
        return any(map(state.touches, facts_of(pattern, reached, "pressed_towards")))

    def before_turning(self, pattern: Cut) -> bool:
        """Whether the facing is not turned in yet, so that it need not be folded back."""
        waiting = facts_of(pattern, self.along, "half_sewn")
        return all(map(state_before(pattern, self).holds, waiting))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[-1])
        rows = (Row(run, ink="old"), Row(run, inset=self.distance))
        return (laid(run, *rows, stuff="facing", section=section.faced(understitched=True), beside=True),)
