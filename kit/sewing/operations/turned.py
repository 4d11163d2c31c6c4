"""What is sewn inside out and turned: two pieces seamed round, turned through a gap, the gap closed by hand."""

from __future__ import annotations

import math
from itertools import pairwise

from kit.sewing import section
from kit.sewing.before import state_before
from kit.sewing.caught import with_caught
from kit.sewing.curves import Bend, needs_scissors, tightest
from kit.sewing.fields import opening, part
from kit.sewing.fields import pieces as whole_pieces
from kit.sewing.operations.joined import Seam, pinned
from kit.sewing.operations.openings import GAP_WIDE
from kit.sewing.operations.trimming import spacing
from kit.sewing.places import NARROWEST_GAP, alike, both_but_open, opening_run
from kit.sewing.rules import InsideOut
from kit.sewing.sections import bands as shapes
from kit.sewing.vocabulary import *

_OPEN = 0.16  # of a gap's length by which it is drawn open

_CORNER = math.radians(20.0)
"""From which bend on a row is pivoted at (common practice, no source)."""


def right_side_out(*of: str) -> Rule:
    """The rule that the pieces of some fields have been turned right side out."""
    return Rule(InsideOut(of), "inside_out", holds=False, each=True)


def _cut_into(seam: SeamToTurn, pattern: Cut) -> tuple[Sentence, ...]:
    """What the scissors do on its curves: clips where they bend in, wedges where they bend out."""
    ways: tuple[tuple[Bend, str], ...] = (("in", "clip"), ("out", "notch"))
    found: list[Sentence] = []
    for way, key in ways if seam.clip else ():
        if any(needs_scissors(tightest(pattern, run, way), seam.allowance) for run in seam.a):
            apart = {"spacing": (spacing(pattern, seam.a, way), "allowance")}
            found.append(Sentence(f"seam_to_turn.{key}", apart))
    return tuple(found)


@operation
class SeamToTurn(Seam):
    """Sew two pieces right sides together to be turned out. `gap`: a mark, or (start, end) along `a`, left raw. What
    steps of their own do is left out here: `grade=False`, `clip=False`.

    Example::

        make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)
    """

    # `extra` are short parts beside the runs that the row carries on along, as below a waistband's overlap; ISO 4916
    # class 1, from memory
    kind = "seam_to_turn"
    seam_class = "1"
    tools = ("machine", "pins", "iron", "scissors")
    says: ClassVar[Keys] = (
        pinned("right"),
        Say("seam_to_turn.sew{smooth}", lambda seam: seam.gap is None),
        Say("seam_to_turn.sew_gap", lambda seam: seam.gap is not None),
        Say("seam_to_turn.extra", lambda seam: seam.extra),
        Say("seam_to_turn.trim{smooth}", lambda seam: seam.grade),
        _cut_into,
        lambda seam, pattern: both_but_open(pattern, seam.a, seam.half) if alike(pattern, seam.a) else (),
    )
    why: ClassVar[Keys] = ("seam_to_turn.why",)
    also = (Also("from", lambda seam, pattern: (seam.a[0], seam.gap[0] if seam.gap else 0.0), "spot"),)
    wanted = (Of("turned_out", "pieces", each="piece"),)
    changes = (
        Brings("inside_out", lambda seam, pattern: seam.pieces),
        Brings("faced", lambda seam, pattern: seam.a + seam.b),
    )
    rules: ClassVar[Rules] = (GAP_WIDE,)

    a: tuple[Run, ...] = meets("b", closes="sewn", takes="allowance", fills={"edge": "edge"})
    allowance: float = width()
    gap: tuple[float, float] | None = opening("a", "b")
    half: str = half_of("gap")
    extra: tuple[Run, ...] = fixed((), takes="allowance")
    press: str = fixed("one side")
    ease: float = size(default=0)
    grade: bool = flag(default=True)
    clip: bool = flag(default=True)

    @property
    def pieces(self) -> tuple[str, ...]:
        return self.uses.pieces

    def smooth(self, pattern: Cut) -> str:
        """ "_smooth" where the row runs all round without a corner, as along the mouth of a bag; else ""."""
        lines = [path_of(pattern, run).curves for run in self.a]
        meet = [(one.tangent(1.0), two.tangent(0.0)) for line in lines for one, two in pairwise(line)]
        if any(abs(math.atan2(a.cross(b), a.dot(b))) > _CORNER for a, b in meet):
            return ""
        return "_smooth" if is_ring(state_before(pattern, self), pattern, self.a) else ""

    def gaps(self, pattern: Cut) -> tuple[Run, ...]:
        """The gap on each of the two runs."""
        return left_of(pattern, self, self.gap)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.runs(), self.gaps(pattern), "sewn")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = (shown(pattern, row[0], side_of(self.half)) for row in (self.a, self.b))
        laid = together(b, a, Row(a, gap=self.gap), pins=(a,), section=section.superimposed("main", "facing"))
        return (with_caught(pattern, self, laid),)


def _through(given: Any, asked: Asked, name: str) -> tuple[Run, ...]:
    if isinstance(given, Place):
        return (opening_run(asked.reader, given, asked.where),)
    return asked.reader.runs(given, asked.where)


def _still_open(turn: TurnOut, state: State, pattern: Cut, gap: Run) -> bool:
    raw = sum(span.length for span in spans(pattern, gap)) - state.covered(pattern, gap)
    return raw / len(sides_of(pattern, gap)) >= NARROWEST_GAP


@operation
class TurnOut(Operation):
    """Turn pieces right side out through runs that are still raw. With `press="later"` the seam waits for the iron:
    `make.press(..., way="edge")`.

    Example::

        make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)
        make.turn_out(flap, flap_lining, through=[flap.upper, flap_lining.upper])
    """

    kind = "turn_out"
    work = Work(5.0)
    tools = ("turner", "iron")
    says = ("turn", Say("press", lambda turn: turn.press == "edge"), PRESS_LATER, alike_of("through"))
    gives = (Of("turned_out", "pieces", each="piece"),)
    changes = (
        Brings("right_side_out", lambda turn, pattern: turn.pieces),
        Brings("unpressed", lambda turn, pattern: turn.seams(pattern) if turn.press == "later" else ()),
    )
    rules = (
        Rule(InsideOut(("pieces",)), "right_side_out_already", each=True, on="through"),
        Rule(Each("through", _still_open), "gap_shut", says="turned_gap_shut", each=True),
    )

    pieces: tuple[str, ...] = whole_pieces(like="make.turn_out(collar, through=...)")
    through: tuple[Run, ...] = read_by(_through, "Runs | Place", fills={"edge": "place"})
    press: str = word(("edge", "later"), default="edge")

    @property
    def uses(self) -> Uses:
        return Uses(pieces=self.pieces)

    def seams(self, pattern: Cut) -> tuple[Run, ...]:
        """The edges along which the pieces were seamed to be turned."""
        found: list[Run] = []
        for record in getattr(pattern, "sewing", ()):
            for made in record.operations:
                if made == self:
                    return tuple(found)
                if isinstance(made, SeamToTurn) and set(made.pieces) & set(self.pieces):
                    found += made.a + made.b
        return ()

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """What is turned, seen at its opening: a gap in a seam stands open, both its allowances folded in. Then, where
        it is pressed, a seam of it rolled to the edge."""
        run = shown(pattern, self.through[0])
        scene = laid(run, arrows=((run, "out"),))
        if self._in_a_seam(pattern, run):
            deep = max(pattern.piece(run.piece).edge(name).allowance or 0.0 for name in run.edges)
            layers = tuple(replace(layer, back=((run, deep),)) for layer in scene.layers)
            hole = Thing("gap", run, path_of(pattern, run), run_length(pattern, run) * _OPEN)
            scene = replace(scene, layers=layers, things=(hole,), section=shapes.turned_out())
        rolled = self._rolled(pattern) if self.press == "edge" else None
        if rolled is None:
            return (scene,)
        return scene, laid(rolled, arrows=((rolled, "out"),), section=shapes.rolled_out())

    def _rolled(self, pattern: Cut) -> Run | None:
        """The seam that is rolled to the edge: the last that was sewn for this turning."""
        found: Run | None = None
        for record in getattr(pattern, "sewing", ()):
            for made in record.operations:
                if made == self:
                    return found
                if made.effect(pattern).inside_out and (of := [r for r in made.runs() if r.piece in self.pieces]):
                    found = shown(pattern, of[0])
        return found

    def _in_a_seam(self, pattern: Cut, run: Run) -> bool:
        """Whether a run is a gap: the same edge is sewn to another piece beside it."""
        if run.start is None and run.end is None:
            return False
        seams = state_before(pattern, self).seams
        key = (run.piece, run.side or "right", run.edges[0])
        return any(key in seam and any(other[0] != run.piece for other in seam) for seam in seams)


def _equal(stitch: SlipStitch, state: State, pattern: Cut) -> Iterator[Case]:
    one, two = run_length(pattern, stitch.a), run_length(pattern, stitch.b)
    yield off_by(stitch.a, abs(one - two), 2.0, one=one, two=two)


@operation
class SlipStitch(Operation):
    """Close a gap by hand: the same part of two edges, as front.side.between(10 * cm, 20 * cm).

    Example::

        make.slip_stitch(flap.upper, flap_lining.upper, allowance=1 * cm)
    """

    # both edges are turned in and their folds sewn together invisibly
    kind = "slip_stitch"
    cautions = ("pins",)
    tools = ("hand_needle", "pins", "iron")
    crosses = True
    says = ("turn", "sew")
    joined = (("a", "b"),)
    rules = (right_side_out("a", "b"), Rule(Asking(_equal), "gap_unequal"))
    pictures = seen(
        "a", "b", lambda stitch, a, b: opened(a, b, Row(a, style="hand"), up="right", section=shapes.gap_closed())
    )

    a: Run = part(closes="sewn", takes="allowance", fills={"edge": "place"})
    b: Run = part(closes="sewn", takes="allowance")
    allowance: float = width()

    def minutes(self, pattern: Cut) -> float:
        return 4.0 + 40.0 * run_length(pattern, self.a) / 1000
