"""Snaps, hooks and eyelets.

Fasteners come in pairs, one half at marks of the side that lies over, the other at marks of the side under it; a mark
drawn as a hook, bar, eye, snap, socket or eyelet is that and nothing else. The order of sewing them on is common
practice, no source."""

from __future__ import annotations

from itertools import pairwise

from kit.diagnostic import as_value
from kit.sewing.facts import at_place
from kit.sewing.fields import places as marked
from kit.sewing.mark_spot import halves, nearest, spot
from kit.sewing.operations.buttons import OnMarks, as_many, early, once
from kit.sewing.reading import in_call
from kit.sewing.scene import ThingKind
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
            values = {"size": measured(size), "other": measured(other)}
            yield Case(abs(size - other) <= _APART, two, amount=abs(size - other), values=values)


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
    stitch_type = ""
    cautions = ("small_parts",)
    tools = ("hand_needle", "chalk", "pins")
    says: ClassVar[Keys] = ("first", "second")
    also = (Also("count", lambda fasteners, pattern: fasteners.count(pattern), "count"),)
    why = ("why",)
    gives = (Of("fastener", "places"), Of("fastener", "under"))
    rules = (
        once("fastener"),
        *early("fastener"),
        Rule(as_many("under"), "fasteners_unequal", tells=("number", "other")),
        Rule(Asking(_as_far_apart), "fasteners_apart", tells=("place", "size", "other"), do_tells=("amount",)),
    )
    work = (3.0, 6.0)

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
        return (self._on(pattern, self.places, over, "wrong"), self._on(pattern, self.under, under))


@operation(verb="")
class Snaps(Fasteners):
    """Snap fasteners."""

    kind = notion = "snaps"
    kinds = ("snap", "socket")
    notions = ("thread", "snaps")


@operation(verb="")
class Hooks(Fasteners):
    """Hooks and bars, where one side laps over the other."""

    kind = notion = "hooks"
    kinds = ("hook", "bar")
    notions = ("thread", "hooks")


@operation(verb="")
class Eyes(Fasteners):
    """Hooks and round eyes, where two edges meet and nothing laps."""

    kind, notion = "eyes", "hooks"
    kinds = ("hook", "eye")
    notions = ("thread", "hooks")
    says = ("first", "second", "close")

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        return super().values(pattern) | {"reach": (REACH, "allowance")}


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


@operation
class Eyelets(OnMarks):
    """Set eyelets where a cord comes out of a casing, or work them as a "buttonhole" each; or, with those `opposite`
    them, in two finished edges that are laced together.

    Example::

        make.eyelets(tote.eyelet)
    """

    kind = notion = "eyelets"
    stitch_type = ""
    cautions: ClassVar[Words] = ("ripper", "cords")
    tools: ClassVar[Words] = ("chalk", "scissors")
    notions: ClassVar[Words] = ("eyelets",)
    says: ClassVar[Keys] = ("back", "set")
    why = ("why",)
    gives: ClassVar[tuple[Of, ...]] = (Of("eyelet", "places"),)
    wanted: ClassVar[tuple[Of, ...]] = (Of("eyelet_used", "places"),)
    rules: ClassVar[Rules] = (once("eyelet"), Rule(Asking(_in_one_layer), "eyelet_late"))
    work = (4.0, 3.0)
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

    kind, notion = "cord_holes", ""
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
    notion = "eyelets"
    says = ("back", "set", "lace")
    gives = (Of("eyelet", "places"), Of("eyelet", "opposite"))
    wanted = ()
    rules = (
        once("eyelet"),
        *early("eyelet"),
        Rule(as_many("opposite"), "fasteners_unequal", tells=("number", "other")),
        Rule(Asking(_as_far_apart), "fasteners_apart", tells=("place", "size", "other"), do_tells=("amount",)),
    )

    @property
    def under(self) -> tuple[Place, ...]:
        """The row on the other edge, under the name that pairs of fasteners give it."""
        return self.opposite

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (self._on(pattern, self.places, "eyelet"), self._on(pattern, self.opposite, "eyelet"))

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"eyelets": (2 * self.count(pattern), "count")}
