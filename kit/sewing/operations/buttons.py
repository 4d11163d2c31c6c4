"""Buttonholes and buttons, and what is worked at marks in general."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, named_edge, titled
from kit.errors import KitError
from kit.geometry import Path, Point, Vector
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides
from kit.sewing.operations.places import lacking, marks, place_facts, refuse
from kit.sewing.outcome import Effect, Fact, Uses
from kit.sewing.reading import Reader, read_width
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Scene, Thing
from kit.sewing.sections import closures as section
from kit.sewing.spans import sides_of
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size

THICK = 3.0
"""mm that a flat button's thickness adds to its buttonhole (common practice, no source)."""
WIDEST = 60.0  # mm across a button


def _spot(pattern: Cut, place: Place) -> Point | None:
    """Where a mark lies on its piece, in draft coordinates."""
    mark = place.mark
    if mark.path is not None:
        return mark.path.at(mark.path.length / 2)
    if mark.point is not None:
        return mark.point
    return pattern.piece(place.piece).edge(mark.edge).path.at(mark.start) if mark.edge else None


def nearest(pattern: Cut, place: Place) -> tuple[str, float] | None:
    """(edge, mm along it) nearest to a mark, its fold aside."""
    at = _spot(pattern, place)
    piece = pattern.piece(place.piece)
    edges = [edge for edge in piece.edges if edge.name != piece.fold]
    if at is None or not edges:
        return None
    edge = min(edges, key=lambda each: each.path.distance_to(at))
    return edge.name, float(edge.path.nearest(at))


def ground(pattern: Cut, place: Place) -> Run:
    """A run of the mark's piece, to show and tell it by."""
    near = nearest(pattern, place)
    piece = pattern.piece(place.piece)
    return Run(place.piece, (near[0] if near else piece.edges[0].name,), place.side)


@dataclass(frozen=True, kw_only=True)
class OnMarks(Operation):
    """Base: something worked or sewn on at marks, on every half they are meant on."""

    places: tuple[Place, ...]

    def runs(self) -> tuple[Run, ...]:
        return ()

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(place.piece for place in self.places)))

    def count(self, pattern: Cut) -> int:
        """How many that makes."""
        return len(place_facts(pattern, self.places, ""))

    def _scene(self, pattern: Cut, kind: str, size: float, shape: bool = False) -> tuple[Scene, ...]:
        first = self.places[0]
        base = ground(pattern, first)
        side = base.side or sides_of(pattern, base)[-1]
        run = Run(base.piece, base.edges, side)
        things = []
        for place in self.places:
            at = _spot(pattern, place)
            if place.piece != run.piece or place.side not in (None, side) or at is None:
                continue
            line = place.mark.path if place.mark.path is not None else Path.line(at, at + Vector(size, 0.0))
            things.append(Thing(kind, run, line, size if kind == "button" else 3.0))  # type: ignore[arg-type]
        return (
            Scene(
                layers=(Layer(run, up="right"),),
                things=tuple(things),
                section=section.buttonholed() if shape else None,
            ),
        )

    def _halves(self, pattern: Cut) -> tuple[Sentence, ...]:
        return both_sides(pattern, [ground(pattern, place) for place in self.places if place.side is None])

    def _too_early(self, state: State, pattern: Cut, what: str) -> list[Diagnostic]:
        """What is worked at an edge that is still raw would lie under the seam, or in one layer only."""
        found = []
        for place in self.places:
            near = nearest(pattern, place)
            if near is None:
                continue
            edge, at = near
            for _, piece, side, name in (fact for fact in state.facts if fact[0] == "band_set"):
                mine = piece == place.piece and place.side in (None, side)
                if mine and ("band_closed", piece, side, name) not in state.facts:
                    return [
                        refuse(
                            pattern,
                            ground(pattern, place),
                            f"{what}_early",
                            message(
                                "sewing_trouble.worked_before_band",
                                piece=titled(pattern.piece(piece).title),
                                place=placed(pattern, place),
                            ),
                            message("sewing_trouble.worked_before_band_do"),
                        )
                    ]
            for side in (place.side,) if place.side else pattern.piece(place.piece).sides:
                done = state.on((place.piece, side, edge))
                if not any(each.span.start - 0.5 <= at <= each.span.end + 0.5 for each in done):
                    label = named_edge(pattern.piece(place.piece).edge(edge))
                    found.append(
                        refuse(
                            pattern,
                            Run(place.piece, (edge,), side),
                            f"{what}_early",
                            message("sewing_trouble.worked_at_raw_edge", edge=label, place=placed(pattern, place)),
                            message("sewing_trouble.worked_at_raw_edge_do"),
                        )
                    )
                    return found
        return found

    def _again(self, state: State, pattern: Cut, what: str) -> list[Diagnostic]:
        for place in self.places:
            if any(fact in state.facts for fact in place_facts(pattern, (place,), what)):
                return [
                    refuse(
                        pattern,
                        ground(pattern, place),
                        f"{what}_twice",
                        message("sewing_trouble.worked_twice", place=placed(pattern, place)),
                        message("sewing_trouble.do_take_one_operation_out"),
                    )
                ]
        return []


@dataclass(frozen=True, kw_only=True)
class Buttonholes(OnMarks):
    """Buttonholes worked at marks, `length` mm long (stitch 304 in two rows and two bars, from memory)."""

    kind: ClassVar[str] = "buttonholes"
    stitch_type: ClassVar[str] = "304"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "ripper")
    tools: ClassVar[tuple[str, ...]] = ("machine", "buttonhole_foot", "chalk", "seam_ripper", "pins")

    length: float

    def effect(self, pattern: Cut) -> Effect:
        made = place_facts(pattern, self.places, "buttonhole")
        sizes = tuple(("buttonhole_length", *fact[1:], f"{self.length:.2f}") for fact in made)
        return Effect(facts=made + sizes)

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return place_facts(pattern, self.places, "buttoned")

    def minutes(self, pattern: Cut) -> float:
        return 10.0 + 4.0 * self.count(pattern)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "places": (self.places, "mark"),
            "length": (self.length, "length"),
        }
        said = tuple(Sentence(f"buttonholes.{key}", values) for key in ("try", "work", "cut"))
        return (*said, *self._halves(pattern))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("buttonholes.why", {"thick": (THICK, "allowance")}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return self._scene(pattern, "buttonhole", self.length, shape=True)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = self._again(state, pattern, "buttonhole") + self._too_early(state, pattern, "buttonhole")
        for place in self.places:
            path = place.mark.path
            if path is not None and abs(path.length - self.length) > 1.0:
                found.append(
                    refuse(
                        pattern,
                        ground(pattern, place),
                        "buttonhole_size",
                        message(
                            "sewing_trouble.buttonhole_size",
                            place=placed(pattern, place),
                            length=measured(path.length),
                            worked=measured(self.length),
                        ),
                        message("sewing_trouble.buttonhole_size_do"),
                        abs(path.length - self.length),
                    )
                )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class Buttons(OnMarks):
    """Buttons `size` mm across sewn on at marks, each for one of the `holes`; without holes they only adorn."""

    kind: ClassVar[str] = "buttons"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("small_parts",)
    tools: ClassVar[tuple[str, ...]] = ("hand_needle", "pins")
    notions: ClassVar[tuple[str, ...]] = ("thread", "buttons")

    size: float
    holes: tuple[Place, ...] = ()
    shank: bool = True

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(place.piece for place in (*self.places, *self.holes))))

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=place_facts(pattern, self.places, "button") + place_facts(pattern, self.holes, "buttoned"))

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"buttons": (self.count(pattern), "count")}

    def minutes(self, pattern: Cut) -> float:
        return 4.0 + 5.0 * self.count(pattern)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "places": (self.places, "mark"),
            "size": (self.size, "allowance"),
            "count": (self.count(pattern), "count"),
        }
        keys = [*(["find"] if self.holes else []), "one" if self.count(pattern) == 1 else "sew"]
        keys += ["shank"] if self.shank else []
        return tuple(Sentence(f"buttons.{key}", values) for key in keys)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("buttons.why", {}),) if self.shank else ()

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return self._scene(pattern, "button", self.size)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = self._again(state, pattern, "button") + self._too_early(state, pattern, "button")
        first = ground(pattern, self.places[0])
        number, wanted = self.count(pattern), len(place_facts(pattern, self.holes, ""))
        if self.holes and number != wanted:
            found.append(
                refuse(
                    pattern,
                    first,
                    "buttons_and_holes",
                    message("sewing_trouble.buttons_and_holes", number=number, wanted=wanted),
                    message("sewing_trouble.buttons_and_holes_do"),
                )
            )
        if lacking(state, place_facts(pattern, self.holes, "buttonhole")):
            found.append(
                refuse(
                    pattern,
                    first,
                    "no_buttonhole",
                    message("sewing_trouble.no_buttonhole"),
                    message("sewing_trouble.no_buttonhole_do"),
                )
            )
        keys = set(place_facts(pattern, self.holes, "buttonhole_length"))
        sizes = [float(fact[4]) for fact in state.facts if len(fact) == 5 and fact[:4] in keys]
        if sizes and self.size > min(sizes) - 1.0:
            found.append(
                refuse(
                    pattern,
                    first,
                    "button_wide",
                    message(
                        "sewing_trouble.button_wide",
                        size=measured(self.size, "allowance"),
                        sizes=measured(min(sizes), "allowance"),
                    ),
                    message("sewing_trouble.button_wide_do", more=measured(THICK, "allowance")),
                    self.size + 1.0 - min(sizes),
                )
            )
        elif sizes and max(sizes) > 1.5 * self.size + THICK:
            found.append(
                refuse(
                    pattern,
                    first,
                    "button_slips",
                    message(
                        "sewing_trouble.button_slips",
                        size=measured(self.size, "allowance"),
                        sizes=measured(max(sizes), "allowance"),
                    ),
                    message("sewing_trouble.button_slips_do"),
                    max(sizes) - self.size,
                )
            )
        return tuple(found)


@verb
def buttonholes(reader: Reader, *places: Place, length: Size) -> Buttonholes:
    """Work buttonholes at marks of that kind.

    Example::

        make.buttonholes(front.left.hole_1, front.left.hole_2, length=21 * mm)
    """
    where = "buttonholes"
    found = marks(places, where)
    for place in found:
        if place.mark.kind != "buttonhole":
            raise KitError(
                f"the {place.said} is marked as a {place.mark.kind}, not as a buttonhole.",
                where=where,
                do="Mark its slit on the piece as a buttonhole.",
            )
    return Buttonholes(places=found, length=read_width(length, f"{where}, length", WIDEST + 10.0))


@verb
def buttons(
    reader: Reader, *places: Place, size: Size, holes: Place | list[Place] | tuple[Place, ...] = (), shank: bool = True
) -> Buttons:
    """Sew on buttons, `size` across, at marks; `holes` are the buttonholes they are for.

    Example::

        make.buttons(front.right.button_1, size=18 * mm, holes=front.left.hole_1)
    """
    where = "buttons"
    return Buttons(
        places=marks(places, where),
        size=read_width(size, f"{where}, size", WIDEST),
        holes=marks((holes,), f"{where}, holes", empty=True),
        shank=bool(shank),
    )
