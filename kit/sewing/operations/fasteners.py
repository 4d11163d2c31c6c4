"""Snaps, hooks and eyelets.

Fasteners come in pairs, one half at marks of the side that lies over, the other at marks of the side under it; a mark
drawn as a hook, bar, eye, snap, socket or eyelet is that and nothing else. The order of sewing them on is common
practice, no source."""

from __future__ import annotations

from itertools import pairwise

from kit.diagnostic import as_value
from kit.sewing.facts import at_place
from kit.sewing.fields import places as marked
from kit.sewing.operations.buttons import OnMarks, as_many, early, once
from kit.sewing.operations.channels import reach
from kit.sewing.vocabulary import *

REACH = 2.0
"""mm that an eye reaches beyond its edge, and that its hook is set back (common practice, no source)."""
_APART = 3.0
"""mm by which two hooks may lie nearer or farther than their bars (common practice, no source)."""
_SAYS_WHAT = ("hook", "bar", "eye", "snap", "socket", "eyelet", "buttonhole")  # marks that say what comes there


def _as_far_apart(made: Fasteners | LacingEyelets, state: State, pattern: Cut) -> Iterator[Case]:
    """Two neighbours on one piece are as far from one another as their partners are: else one side puckers when it
    is closed."""
    for (one, two), (a, b) in zip(pairwise(made.places), pairwise(made.under), strict=False):
        at = [spot(pattern, place) for place in (one, two, a, b)]
        alike = all(first.piece == second.piece and first.side == second.side for first, second in ((one, two), (a, b)))
        if alike and all(point is not None for point in at):
            size, other = at[0].distance(at[1]), at[2].distance(at[3])  # type: ignore[union-attr, arg-type]
            yield off_by(two, abs(size - other), _APART, size=size, other=other)


def _meant_for(places: tuple[Place, ...], kind: str, where: str) -> None:
    """Raises `KitError` for a mark that says that something else is sewn on there."""
    for place in places:
        if place.mark.kind in _SAYS_WHAT and place.mark.kind != kind:
            values = {
                name: Value(f"thing.{what}", "word") for name, what in (("is", place.mark.kind), ("wanted", kind))
            }
            raise KitError(
                message("refusal.other_fastener", mark=as_value(place.mark.label), **values),
                where=in_call(where),
                do=message("refusal.other_fastener_do", wanted=values["wanted"]),
            )


@operation(verb="fasteners")
class Fasteners(OnMarks):
    """Sew on "snaps", "hooks" with their bars or, where two edges only meet, hooks with round "eyes": `places` on the
    overlap, `under` below them.

    Example::

        make.fasteners(waistband.hook, under=waistband.bar, kind="hooks")
    """

    # pairs sewn on by hand
    cautions = ("small_parts",)
    tools = ("hand_needle", "chalk", "pins")
    says: ClassVar[Keys] = ("first", "second")
    also = (Also("count", lambda fasteners, pattern: fasteners.count(pattern), "count"),)
    gives = (Of("fastener", "places"), Of("fastener", "under"))
    rules = (
        once("fastener"),
        *early("fastener"),
        Rule(as_many("under"), "fasteners_unequal"),
        Rule(Asking(_as_far_apart), "fasteners_apart"),
    )
    work = Work(3.0, each=6.0, of="places")

    kinds: ClassVar[tuple[ThingKind, ThingKind]]
    under: tuple[Place, ...] = marked(by_name=True)
    of: str = word(("snaps", "hooks", "eyes"), default="snaps", argument="kind")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        over, under = _KINDS[asked.read["of"]].kinds
        _meant_for(asked.read["places"], over, asked.where)
        _meant_for(asked.read["under"], under, asked.at("under"))

    @classmethod
    def made(cls, asked: Asked) -> Fasteners:
        return _KINDS[asked.read["of"]](**asked.read)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """The inside of the side that lies over, the outside of the one under it."""
        over, under = self.kinds
        return (*self._on(pattern, self.places, over, "wrong"), *self._on(pattern, self.under, under))


@operation(verb="")
class Snaps(Fasteners):
    """Snap fasteners."""

    kind = "snaps"
    amounts = (("snaps", "count", "count"),)
    kinds = ("snap", "socket")
    notions = ("thread", "snaps")


@operation(verb="")
class Hooks(Fasteners):
    """Hooks and bars, where one side laps over the other."""

    kind = "hooks"
    amounts = (("hooks", "count", "count"),)
    kinds = ("hook", "bar")
    notions = ("thread", "hooks")


@operation(verb="")
class Eyes(Fasteners):
    """Hooks and round eyes, where two edges meet and nothing laps."""

    kind = "eyes"
    amounts = (("hooks", "count", "count"),)
    kinds = ("hook", "eye")
    notions = ("thread", "hooks")
    says = ("first", "second", "close")
    also = (Also("reach", REACH),)


_KINDS: dict[str, type[Fasteners]] = {"snaps": Snaps, "hooks": Hooks, "eyes": Eyes}


def _in_one_layer(eyelets: Eyelets, state: State, pattern: Cut) -> Iterator[Case]:
    """The casing is not folded yet."""
    for place in eyelets.places:
        near = nearest(pattern, place)
        for side in halves(pattern, place):
            folded = near is not None and state.touches(
                at_place(pattern, ("casing", place.piece, side, near[0]), near[1])
            )
            yield Case(not folded, place)


def _lies_alone(eyelets: Eyelets, state: State, pattern: Cut) -> Iterator[Case]:
    """No facing, lining or hem lies under the mark yet: from between two layers that an eyelet clamps no cord gets
    out. A piece that is still wrong side out lies apart from what it is joined to."""
    for place in eyelets.places if not eyelets.opposite else ():
        at, near = spot(pattern, place), nearest(pattern, place)
        if at is None or near is None or place.piece in state.inside_out:
            continue
        off = pattern.piece(place.piece).edge(near[0]).path.distance_to(at)
        under = [0.0]
        for side in halves(pattern, place):
            run = Run(place.piece, (near[0],), side)
            if state.touches(at_place(pattern, ("casing", place.piece, side, near[0]), near[1])):
                under = [0.0]  # told already: it is too late for the casing
                break
            if state.touches(at_place(pattern, ("faced", place.piece, side, near[0]), near[1])):
                under += [reach(pattern, Run(each.piece, each.edges)) for each in state.opposite(pattern, run)]
            under += [each.deep for each in state.turned if each.run.piece == place.piece and near[0] in each.run.edges]
        yield Case(off >= max(under), place)


@operation
class Eyelets(OnMarks):
    """Set eyelets where a cord comes out of a casing, or work them as a "buttonhole" each; or, with those `opposite`
    them, in two finished edges that are laced together.

    Example::

        make.eyelets(tote.eyelet)
    """

    kind = "eyelets"
    amounts: ClassVar[Amounts] = (("eyelets", "count", "count"),)
    cautions: ClassVar[Words] = ("ripper", "cords")
    tools: ClassVar[Words] = ("chalk", "scissors")
    notions: ClassVar[Words] = ("eyelets",)
    says: ClassVar[Keys] = ("back", "set")
    gives: ClassVar[tuple[Of, ...]] = (Of("eyelet", "places"),)
    wanted: ClassVar[tuple[Of, ...]] = (Of("eyelet_used", "places"),)
    rules: ClassVar[Rules] = (
        once("eyelet"),
        Rule(Asking(_in_one_layer), "eyelet_late"),
        Rule(Asking(_lies_alone), "eyelet_in_lining"),
    )
    work = Work(4.0, each=3.0, of="places")
    thing: ClassVar[ThingKind] = "eyelet"
    across = 8.0

    opposite: tuple[Place, ...] = marked(by_name=True, default=())
    worked: str = word(("eyelet", "buttonhole"), default="eyelet")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        _meant_for(asked.read["places"] + asked.read["opposite"], asked.read["worked"], asked.where)
        if asked.read["opposite"] and asked.read["worked"] != "eyelet":
            raise KitError(
                "a lace is drawn through eyelets; a buttonhole would stretch.",
                where=asked.where,
                do='Leave out worked="buttonhole", or opposite=... where a cord comes out of a casing.',
            )

    @classmethod
    def made(cls, asked: Asked) -> Eyelets:
        if asked.read["worked"] == "buttonhole":
            return CordHoles(**asked.read)
        return (LacingEyelets if asked.read["opposite"] else Eyelets)(**asked.read)


@operation(verb="")
class CordHoles(Eyelets):
    """Small buttonholes through one layer of a casing, out of which a cord comes (common practice, no source)."""

    kind = "cord_holes"
    amounts = ()
    stitch_type = "304"  # in two rows and two bars, from memory
    cautions = ("needle", "ripper", "cords")
    tools = ("machine", "buttonhole_foot", "chalk", "seam_ripper", "pins")
    notions = ("thread",)
    says = ("eyelets.back", "work", "cut")
    why = ("eyelets.why",)
    thing = "buttonhole"
    across = 12.0


@operation(verb="")
class LacingEyelets(Eyelets):
    """Eyelets in two rows that face each other, through all layers of either edge."""

    kind = "lacing_eyelets"
    amounts = (("eyelets", "both", "count"),)
    says = ("back", "set", "lace")
    gives = (Of("eyelet", "places"), Of("eyelet", "opposite"))
    wanted = ()
    rules = (
        once("eyelet"),
        *early("eyelet"),
        Rule(as_many("opposite"), "fasteners_unequal"),
        Rule(Asking(_as_far_apart), "fasteners_apart"),
    )

    @property
    def under(self) -> tuple[Place, ...]:
        """The row on the other edge, under the name that pairs of fasteners give it."""
        return self.opposite

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (*self._on(pattern, self.places, "eyelet"), *self._on(pattern, self.opposite, "eyelet"))

    def both(self, pattern: Cut) -> int:
        """How many there are in both rows."""
        return 2 * self.count(pattern)
