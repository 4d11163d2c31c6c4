"""Snaps, hooks and eyelets."""

from __future__ import annotations

from collections.abc import Iterator

from kit.sewing.cut import Cut
from kit.sewing.fields import Asked, word
from kit.sewing.fields import places as marked
from kit.sewing.mark_spot import halves, nearest
from kit.sewing.operation import operation
from kit.sewing.operations.buttons import OnMarks, as_many, early, once
from kit.sewing.rules import Asking, Case, Of, Rule
from kit.sewing.run import Place
from kit.sewing.state import State


@operation(verb="fasteners")
class Fasteners(OnMarks):
    """Sew on snaps or hooks: `places` on the overlap, `under` below them.

    Example::

        make.fasteners(waistband.hook, under=waistband.bar, kind="hooks")
    """

    # pairs sewn on by hand
    stitch_type = ""
    cautions = ("small_parts",)
    tools = ("hand_needle", "chalk", "pins")
    says = ("first", "second")
    why = ("why",)
    gives = (Of("fastener", "places"), Of("fastener", "under"))
    rules = (
        once("fastener"),
        *early("fastener"),
        Rule(as_many("under"), "fasteners_unequal", tells=("number", "other")),
    )
    work = (3.0, 6.0)

    under: tuple[Place, ...] = marked(by_name=True)
    of: str = word(("snaps", "hooks"), default="snaps", argument="kind")

    @classmethod
    def made(cls, asked: Asked) -> Fasteners:
        return (Hooks if asked.read["of"] == "hooks" else Snaps)(**asked.read)


@operation(verb="")
class Snaps(Fasteners):
    """Snap fasteners."""

    kind = notion = "snaps"
    notions = ("thread", "snaps")


@operation(verb="")
class Hooks(Fasteners):
    """Hooks and eyes."""

    kind = notion = "hooks"
    notions = ("thread", "hooks")


def _in_one_layer(eyelets: Eyelets, state: State, pattern: Cut) -> Iterator[Case]:
    """The casing is not folded yet."""
    for place in eyelets.places:
        near = nearest(pattern, place)
        for side in halves(pattern, place):
            folded = near is not None and ("casing", place.piece, side, near[0]) in state.facts
            yield Case(not folded, place)


@operation
class Eyelets(OnMarks):
    """Set eyelets where a cord comes out of a casing.

    Example::

        make.eyelets(tote.eyelet)
    """

    kind = notion = "eyelets"
    stitch_type = ""
    cautions = ("ripper", "cords")
    tools = ("chalk", "scissors")
    notions = ("eyelets",)
    says = ("back", "set")
    why = ("why",)
    gives = (Of("eyelet", "places"),)
    wanted = (Of("eyelet_used", "places"),)
    rules = (once("eyelet"), Rule(Asking(_in_one_layer), "eyelet_late"))
    work = (4.0, 3.0)
    across = 8.0
