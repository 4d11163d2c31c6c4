"""Work with the scissors on allowances: clip, notch, trim, grade; and tacking down what they leave."""

from __future__ import annotations

from typing import Literal

from kit.sewing import section
from kit.sewing.curves import Bend as Way
from kit.sewing.curves import clip_spacing, needs_scissors, tightest
from kit.sewing.handle import StripEdges
from kit.sewing.operations.strip_trimming import LEFT_AT_LEAST, GradeStrip, TrimStrip, parted, seam_of
from kit.sewing.reading import read_width
from kit.sewing.sections import finishes as shapes
from kit.sewing.vocabulary import *

Bend = Literal["in", "out", "straight"]
Snip = Literal["clips", "wedges"]
CLIP_SPACING = 15.0  # mm from clip to clip where no curve says how far (common practice, no source)
STAYSTITCH = 3.0  # mm outside the stitch line
_BENT = 0.5  # mm from chord to curve that count as a bend


def bend(pattern: Cut, run: Run) -> Bend:
    """Whether the run bends into its piece, as a neck does, or out of it, as a rounded collar's edge."""
    piece, path = pattern.piece(run.piece), path_of(pattern, run)
    middle = path.at(path.length / 2)
    chord = path.start.mid(path.end)
    if middle.distance(chord) < _BENT:
        return "straight"
    return "out" if piece.outline.contains(middle.lerp(chord, 0.05)) else "in"


def allowance_of(pattern: Cut, run: Run) -> float:
    """mm of allowance along a run, at its widest; 10 where no step has said."""
    return max(pattern.piece(run.piece).edge(name).allowance or 10.0 for name in run.edges)


def spacing(pattern: Cut, along: Iterable[Run], way: Way) -> float:
    """mm from clip to clip along runs where they bend that way the most."""
    found = [(tightest(pattern, run, way), allowance_of(pattern, run)) for run in along]
    return min((clip_spacing(radius, wide) for radius, wide in found if radius is not None), default=CLIP_SPACING)


def snips(pattern: Cut, run: Run, apart: float, kind: Snip = "clips", clear: float = 1.5) -> tuple[Thing, ...]:
    """Clips or wedges in the allowance of a run, as they are drawn: from `clear` mm outside its stitch line on."""
    deep = max(allowance_of(pattern, run) - clear, 1.0)
    return (Thing(kind, run, inside(pattern, run, -(clear + deep / 2)), deep, apart),)


def clipped(pattern: Cut, along: Run, apart: float, held: bool) -> Scene:
    """An edge that is clipped before it is sewn; `held`: up to its staystitching."""
    run = shown(pattern, along)
    rows = (Row(run, inset=-STAYSTITCH, ink="old"),) if held else ()
    cuts = snips(pattern, run, apart, clear=STAYSTITCH + 0.5 if held else 1.5)
    return laid(run, *rows, section=section.one_ply() if held else None, things=cuts)


def _sewn_and_in_reach(kind: str) -> tuple[Rule, ...]:
    """What scissors on an allowance need: its seam is sewn, and nothing shuts it in yet."""
    early = Rule(
        Raw("along"),
        f"{kind}_early",
        holds=False,
        says="cut_into_early",
        do="do_sew_seam_first",
        each=True,
        ends="next",
    )
    shut_in = Of("shut_in", "along", each="run")
    late = Rule(shut_in, f"{kind}_late", holds=False, says="cut_into_late", each=True)
    return (early, late)


def _does_not_bend(wrong: Bend) -> Each:
    return Each("along", lambda cut, state, pattern, run: bend(pattern, run) != wrong)


_FRAYS = at_least("to", LEFT_AT_LEAST, "trimmed_away", of="along", each=True)


@operation
class OnAllowance(Operation):
    """Scissors on the allowances along sewn edges. They close nothing and take nothing."""

    tools = ("scissors",)
    says: ClassVar[Keys] = ("{curve}", both("along"))
    work = Work(1.0, each=2.0)
    gives: ClassVar[tuple[Of, ...]] = (Of("{kind}", "along"),)
    also: ClassVar[tuple[Also, ...]] = (Also("spacing", lambda cut, pattern: spacing(pattern, cut.along, cut.bends)),)
    leaves: ClassVar[Section] = section.superimposed()
    bends: ClassVar[Way] = "in"
    snip: ClassVar[tuple[Snip, ...]] = ()

    along: tuple[Run, ...] = runs()

    def curve(self, pattern: Cut) -> str:
        """The key of what is cut, on a curve or not."""
        return "cut_curve" if any(tightest(pattern, run, self.bends) for run in self.along) else "cut"

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run, apart = shown(pattern, self.along[0]), spacing(pattern, self.along, self.bends)
        things = tuple(thing for each in self.snip for thing in snips(pattern, run, apart, each))
        return (laid(run, Row(run, ink="old"), up="wrong", section=self.leaves, things=things),)


@operation
class Clip(OnAllowance):
    """Snip into the allowance of a sewn edge that bends inward.

    Example::

        make.clip(front.neck, back.neck)
    """

    kind = "clip"
    snip = ("clips",)
    rules = (*_sewn_and_in_reach("clip"), Rule(_does_not_bend("out"), "clipped_outward_curve", each=True))


@operation
class NotchCurve(OnAllowance):
    """Cut wedges out of the allowance of a sewn edge that bends outward.

    Example::

        make.plain_seam(front.armhole, front_lining.armhole, allowance=1 * cm)
        make.notch_curve(front.armhole)
    """

    kind = "notch_curve"
    called = "notch the curve"
    bends = "out"
    snip = ("wedges",)
    rules = (*_sewn_and_in_reach("notch_curve"), Rule(_does_not_bend("in"), "notched_inward_curve", each=True))


def _must_spread(clip: ClipFirst, state: State, pattern: Cut, run: Run) -> bool:
    """The edge, or the one it is to fit, bends so that its allowance must spread."""
    radii = [tightest(pattern, each, "out") for each in clip.fit] or [tightest(pattern, run, "in")]
    return any(needs_scissors(radius, allowance_of(pattern, run)) for radius in radii)


@operation
class ClipFirst(OnAllowance):
    """Clip an edge before it is sewn, so that it spreads: a curve that bends inward up to its staystitching, to be laid
    along a straight band; a straight edge almost to its stitch line, to `fit` a curve that bends outward.

    Example::

        make.staystitch(bib.neck)
        make.clip_first(bib.neck)
    """

    kind = "clip_first"
    gives = (Of("clipped_first", "along"),)
    also = (Also("spacing", lambda clip, pattern: clip.apart(pattern)),)
    says = (Say("cut_to_fit", lambda clip: clip.fit, "cut"), both("along"))
    rules = (
        Rule(Raw("along"), "clip_first_late", each=True, ends="run"),
        Rule(Each("along", _must_spread), "clip_first_straight", each=True, ends="run"),
        Rule(Of("staystitched", "along", each="run"), "clip_first_loose", each=True, when=lambda clip: not clip.fit),
    )

    fit: tuple[Run, ...] = row(by_name=True, default=(), said="fit", fills={"": "place"}, touched=False)

    def apart(self, pattern: Cut) -> float:
        """mm from clip to clip."""
        return spacing(pattern, self.fit or self.along, "out" if self.fit else "in")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (clipped(pattern, self.along[0], self.apart(pattern), not self.fit),)


def _takes_off(trim: Trim, state: State, pattern: Cut) -> Iterable[Case]:
    """The allowance is wider than what is to be left of it."""
    for run in trim.along:
        widths = [pattern.piece(run.piece).edge(name).allowance for name in run.edges]
        narrow = next((width for width in widths if width is not None and trim.to >= width - 0.5), None)
        if narrow is not None:
            yield Case(False, run, amount=trim.to - narrow, values={"width": measured(narrow, "allowance")})


def cuttable() -> Any:
    """Edges whose allowances are cut; edges of strips are read beside them (`of_strips`)."""

    def read(given: Any, asked: Asked, name: str) -> tuple[Run, ...]:
        return parted(asked.reader, given, asked.where)[0]

    return read_by(read, "Runs | StripEdges", way="rest", default=(), fills={"edge": "place"}, needed=True)


def of_strips() -> Any:
    """The edges of strips among what is written for `along`."""

    def read(given: Any, asked: Asked, name: str) -> tuple[StripEdges, ...]:
        return parted(asked.reader, asked.given["along"], asked.where)[1]

    return read_by(read, "", way="none", held=())


def _to(given: Any, asked: Asked, name: str) -> float:
    """The width to trim to; "half" of what the edges have."""
    if given != "half":
        return read_width(given, asked.at("width"))
    wide = {asked.reader.cut.piece(run.piece).edge(edge).allowance for run in asked.read["along"] for edge in run.edges}
    seams = (seam_of(asked.reader.sewn, each.strip) for each in asked.read["strips"])
    wide |= {getattr(seam, "allowance", None) for seam in seams}
    (one, *more) = wide
    if more or not one:
        raise KitError(
            "the edges have no one allowance to be halved." if more else "no step says how wide the allowance is.",
            where=asked.where,
            do="Name edges whose allowances are equally wide, or write to=5 * mm.",
        )
    return one / 2


@operation
class Trim(OnAllowance):
    """Cut the allowance of a sewn edge back `to` a width, or to "half" of what it is; of a strip's seam too, by its
    `tie.sides` or `tie.ends`.

    Example::

        make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)
        make.trim(front.shoulder, to=6 * mm)
    """

    kind = "trim"
    says = ("cut{in_half}", both("along"))
    rules = (*_sewn_and_in_reach("trim"), _FRAYS, Rule(Asking(_takes_off), "nothing_to_trim", each=True))

    along: tuple[Run, ...] = cuttable()
    strips: tuple[StripEdges, ...] = of_strips()
    to: float = read_by(_to, 'Size | Literal["half"]', fills={"": "allowance"})
    in_half: str = read_by(lambda given, asked, name: "_half" * (asked.given["to"] == "half"), "", way="none", held="")

    @classmethod
    def made(cls, asked: Asked) -> Operation:
        read = asked.read
        if read["strips"]:
            return TrimStrip(strips=read["strips"], to=read["to"], half=bool(read["in_half"]))
        return cls(**read)


@operation
class Grade(OnAllowance):
    """Trim the allowances of a seam to two widths: `to` at this edge, `wider` at the one it is sewn to. Of a strip's
    seam by its `tie.sides` or `tie.ends`.

    Example::

        make.grade(front_facing.inner, back_facing.inner, to=4 * mm, wider=7 * mm)
    """

    kind = "grade"
    says = ("cut", both("along"))
    leaves = shapes.graded()
    rules = (*_sewn_and_in_reach("grade"), _FRAYS, Rule(Seamed("along"), "one_layer_graded", each=True))

    along: tuple[Run, ...] = cuttable()
    strips: tuple[StripEdges, ...] = of_strips()
    to: float = width(default=4 * mm, said="narrower")
    wider: float = width(default=7 * mm)  # of the edge it is sewn to, which lies next to the outside

    @classmethod
    def agree(cls, asked: Asked) -> None:
        narrow, wide = asked.read["to"], asked.read["wider"]
        if wide <= narrow:
            raise KitError(
                message("refusal.grade", wide=measured(wide, "allowance"), narrow=measured(narrow, "allowance")),
                where=in_call(asked.where),
                do=message("refusal.grade_do"),
            )

    @classmethod
    def made(cls, asked: Asked) -> Operation:
        read = asked.read
        if read["strips"]:
            return GradeStrip(strips=read["strips"], to=read["to"], wider=read["wider"])
        return cls(**read)


def _held(tack: TackDown, state: State, pattern: Cut) -> Iterable[Case]:
    """Where all edges are sewn, what is tacked hangs together with what it is tacked to."""
    if not all(state.is_closed(pattern, run) for run in tack.runs()):
        return
    parts = [(run.piece, side) for run in tack.to for side in sides_of(pattern, run)]
    for run in tack.edges:
        for side in sides_of(pattern, run):
            yield Case(any(state.joined((run.piece, side), part) for part in parts), run)


@operation
class TackDown(Operation):
    """Hold the finished edges of a facing to the allowances of the seams `to` they cross.

    Example::

        make.tack_down(front_facing.outer, to=front.shoulder)
    """

    kind = "tack_down"
    cautions = ("needle",)
    tools = ("hand_needle",)
    says = ("sew", both("to"))
    gives = (Of("tacked", "edges"),)
    work = Work(1.0, each=3.0, of="to")
    pictures = seen(
        "edges", lambda tack, run: laid(run, Row(run, inset=1.0, style="hand"), stuff="facing", section=shapes.tacked())
    )
    rules = (
        Rule(Closed("edges"), "tacked_raw", each=True),
        Rule(Closed("to"), "tacked_to_no_seam", each=True),
        Rule(Asking(_held), "tacked_loose"),
    )

    edges: tuple[Run, ...] = runs()
    to: tuple[Run, ...] = row(by_name=True, said="seam", fills={"seam": "place"})
