"""Buttonholes and buttons, and what is worked at marks in general."""

from __future__ import annotations

from kit.geometry import Point, Vector
from kit.sewing.fields import places as marked
from kit.sewing.sections import closures as section
from kit.sewing.vocabulary import *

THICK = 3.0
"""mm that a flat button's thickness adds to its buttonhole (common practice, no source)."""
WIDEST = 60.0  # mm across a button


def once(what: str) -> Rule:
    """The rule that nothing is worked at a mark twice; `what` is the fact that it was."""
    return Rule(Of(what, "places"), f"{what}_twice", holds=False, says="worked_twice", do="do_take_one_operation_out")


def as_many(of: str) -> Asking:
    """The condition that the field `of` names as many marks as are worked, all halves counted."""

    def cases(made: OnMarks, state: State, pattern: Cut) -> Iterator[Case]:
        number, other = made.count(pattern), len(place_facts(pattern, getattr(made, of), ""))
        values = {"number": Value(number, "count"), "other": Value(other, "count"), "wanted": Value(other, "count")}
        yield Case(number == other, made.places[0], values=values)

    return Asking(cases)


def _layers_missing(made: OnMarks, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """What is worked at an edge that is still raw would lie under the seam, or in one layer only."""
    for place in made.places:
        near = nearest(pattern, place)
        if near is None:
            continue
        for _, piece, side, *where in (fact for fact in state.facts if fact[0] == "band_set"):
            mine = piece == place.piece and place.side in (None, side)
            if mine and not state.holds(("band_closed", piece, side, *where)):
                yield "band", Case(False, place)
        for half in halves(pattern, place):
            done = state.on((place.piece, half, near[0]))
            if not any(each.span.start - 0.5 <= near[1] <= each.span.end + 0.5 for each in done):
                yield "edge", Case(False, place, near[0])


def early(what: str) -> tuple[Rule, Rule]:
    """The rules that all layers lie at a mark before it is worked."""
    band, edge = "worked_before_band", "worked_at_raw_edge"
    return (
        Rule(First(_layers_missing, "band"), f"{what}_early", says=band),
        Rule(First(_layers_missing, "edge"), f"{what}_early", says=edge),
    )


_BESIDE = 45.0
"""mm of the edge shown on either side of what is worked beside it."""
_FEW = 0.4  # share of the edge from which on the whole piece is shown
_ROW = 12.0
"""How many times as long as what is worked a row of it is, from which on one of them is shown again, large."""


def _near(pattern: Cut, run: Run, things: Iterable[Thing]) -> Run | None:
    """The part of the edge beside what is worked; None where that is most of it, and all of the piece is shown."""
    path = path_of(pattern, run)
    spots = [path.nearest(at) for thing in things for at in (thing.line.start, thing.line.end)]
    if not spots or max(spots) - min(spots) > max(_FEW * path.length, _BESIDE):
        return None
    if path.length < 4 * _BESIDE:  # an end: all of it
        return run
    low, high = max(min(spots) - _BESIDE, 0.0), min(max(spots) + _BESIDE, path.length)
    return replace(run, start=low, end=high) if high - low < path.length - 1.0 else run


@operation
class OnMarks(Operation):
    """Base: something worked or sewn on at marks, on every half they are meant on. `thing` and `across` (mm) are how it
    is drawn."""

    thing: ClassVar[ThingKind] = "button"

    places: tuple[Place, ...] = marked()

    @property
    def across(self) -> float:
        return 10.0

    def count(self, pattern: Cut) -> int:
        """How many that makes."""
        return len(place_facts(pattern, self.places, ""))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return self._on(pattern, self.places, self.thing)

    def _on(self, pattern: Cut, places: tuple[Place, ...], kind: ThingKind, up: Face = "right") -> tuple[Scene, ...]:
        """Each piece and half on which some marks lie, with all that is worked there; and the first of a long row once
        more, so near that its stitches can be told."""
        found: list[Scene] = []
        near: Scene | None = None
        for run, here in self._grounds(pattern, places):
            things = []
            for place in here:
                at = spot(pattern, place)
                assert at is not None
                line = place.mark.path if place.mark.path is not None else self._lying(pattern, place, at, kind)
                things.append(Thing(kind, run, line, 3.0 if kind == "buttonhole" else self.across))
            found.append(self._with(pattern, run, things, up))
            if near is None and self._in_a_row(things):
                near = self._with(pattern, run, things[:1], up)
                found.append(near)
        return tuple(found)

    def _with(self, pattern: Cut, run: Run, things: Iterable[Thing], up: Face) -> Scene:
        things = tuple(things)
        return Scene(layers=(Layer(run, up=up),), things=things, focus=_near(pattern, run, things))

    def _grounds(self, pattern: Cut, places: tuple[Place, ...]) -> list[tuple[Run, list[Place]]]:
        """The piece of some marks, on the half that is shown of each, with the marks that lie there; a mark that is
        meant on both halves is shown on the half of one before it, if there is any."""
        found: list[tuple[Run, list[Place]]] = []
        for place in places:
            base = ground(pattern, place)
            if spot(pattern, place) is None:
                continue
            same = next(
                (each for each in found if each[0].piece == base.piece and base.side in (None, each[0].side)), None
            )
            if same is None:
                found.append((replace(base, side=base.side or sides_of(pattern, base)[-1]), [place]))
            else:
                same[1].append(place)
        return found

    def _in_a_row(self, things: Iterable[Thing]) -> bool:
        """Whether so many lie so far apart that one of them is hardly seen where all are."""
        spots = [thing.line.start for thing in things]
        return any(spots[0].distance(other) > _ROW * self.across for other in spots)

    def _lying(self, pattern: Cut, place: Place, at: Point, kind: ThingKind) -> Path:
        """How a thing lies whose mark is a point: a hook towards the nearest edge, a bar along it."""
        near = nearest(pattern, place)
        if kind not in ("hook", "eye", "bar") or near is None:
            return Path.line(at, at + Vector(self.across, 0.0))
        edge = pattern.piece(place.piece).edge(near[0]).path
        out = edge.at(near[1]) - at
        way = edge.tangent_at(near[1]) if kind == "bar" or out.length < 0.1 else out.unit()
        return Path.line(at - way * (self.across / 2), at + way * (self.across / 2))


def _as_marked(buttonholes: Buttonholes, state: State, pattern: Cut) -> Iterator[Case]:
    for place in buttonholes.places:
        if place.mark.path is not None:
            size, worked = place.mark.path.length, buttonholes.length
            off, values = abs(size - worked), {"length": measured(size), "worked": measured(worked)}
            yield Case(off <= 1.0, place, amount=off, values=values)


def _both_halves(made: OnMarks, pattern: Cut) -> tuple[Sentence, ...]:
    """That both halves are worked alike, where all is: of some alone the places tell it."""
    if any(place.side for place in made.places):
        return ()
    return both_sides(pattern, [ground(pattern, place) for place in made.places if place.side is None])


@operation
class Buttonholes(OnMarks):
    """Work buttonholes at marks of that kind.

    Example::

        make.buttonholes(front.left.hole_1, front.left.hole_2, length=21 * mm)
    """

    kind = "buttonholes"
    thing = "buttonhole"
    stitch_type = "304"  # in two rows and two bars, from memory
    cautions = ("needle", "ripper")
    tools = ("machine", "buttonhole_foot", "chalk", "seam_ripper", "pins")
    says = ("try", "work", "cut", _both_halves)
    gives = (Of("buttonhole", "places"), Of("buttonhole_length", "places", size="length"))
    wanted = (Of("buttoned", "places"),)
    rules = (once("buttonhole"), *early("buttonhole"), Rule(Asking(_as_marked), "buttonhole_size", each=True))
    work = Work(10.0, each=4.0, of="places")

    length: float = width(most=WIDEST + 10.0, fills="length")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        for place in asked.read["places"]:
            if place.mark.kind != "buttonhole":
                raise KitError(
                    f"the {place.said} is marked as a {place.mark.kind}, not as a buttonhole.",
                    where=asked.where,
                    do="Mark its slit on the piece as a buttonhole.",
                )

    @property
    def across(self) -> float:
        return self.length

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("buttonholes.why", {"thick": (THICK, "allowance")}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """The stitches are told beside the first that is seen from near."""
        scenes = super().scenes(pattern)
        near = min(range(len(scenes)), key=lambda n: len(scenes[n].things))
        return tuple(replace(s, section=section.buttonholed()) if n == near else s for n, s in enumerate(scenes))


def _unfit(buttons: Buttons, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """Whether a button does not pass the shortest of its buttonholes, or slips out of the longest."""
    keys = set(place_facts(pattern, buttons.holes, "buttonhole_length"))
    sizes = [float(fact[4]) for fact in state.facts if len(fact) == 5 and fact[:4] in keys]
    size = buttons.size

    def case(amount: float, hole: float) -> Case:
        values = {"sizes": measured(hole, "allowance"), "more": measured(THICK, "allowance")}
        return Case(False, buttons.places[0], amount=amount, values=values)

    if sizes and size > min(sizes) - 1.0:
        yield "wide", case(size + 1.0 - min(sizes), min(sizes))
    elif sizes and max(sizes) > 1.5 * size + THICK:
        yield "small", case(max(sizes) - size, max(sizes))


@operation
class Buttons(OnMarks):
    """Sew on buttons, `size` across, at marks; `holes` are the buttonholes they are for.

    Example::

        make.buttons(front.right.button_1, size=18 * mm, holes=front.left.hole_1)
    """

    kind = "buttons"
    cautions = ("small_parts",)
    tools = ("hand_needle", "pins")
    notions = ("thread", "buttons")
    says = (
        Say("find", lambda buttons: buttons.holes),
        lambda buttons, pattern: "one" if buttons.count(pattern) == 1 else "sew",
        Say("shank", lambda buttons: buttons.shank),
    )
    why = (Say("why", lambda buttons: buttons.shank),)
    also = (Also("count", lambda buttons, pattern: buttons.count(pattern), "count"),)
    gives = (Of("button", "places"), Of("buttoned", "holes"))
    rules = (
        once("button"),
        Rule(Of("buttonhole", "places"), "button_on_hole", holds=False),
        *early("button"),
        Rule(as_many("holes"), "buttons_and_holes", when=lambda buttons: buttons.holes),
        Rule(Of("buttonhole", "holes"), "no_buttonhole", on="places"),
        Rule(First(_unfit, "wide"), "button_wide"),
        Rule(First(_unfit, "small"), "button_slips"),
    )
    work = Work(4.0, each=5.0, of="places")
    amounts = (("buttons", "count", "count"),)

    size: float = width(most=WIDEST)
    holes: tuple[Place, ...] = marked(by_name=True, default=())
    shank: bool = flag(default=True)

    @property
    def across(self) -> float:
        return self.size
