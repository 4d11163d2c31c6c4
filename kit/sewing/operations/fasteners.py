"""Snaps, hooks and eyelets."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Sentence
from kit.sewing.operations.buttons import OnMarks, ground, nearest
from kit.sewing.operations.places import marks, place_facts, refuse
from kit.sewing.outcome import Effect, Fact, Uses
from kit.sewing.reading import Reader, read_word
from kit.sewing.run import Place
from kit.sewing.scene import Scene
from kit.sewing.state import State
from kit.sewing.verb import verb


@dataclass(frozen=True, kw_only=True)
class Fasteners(OnMarks):
    """Base: pairs sewn on by hand, one half at `places` on the overlap, the other at `under`."""

    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("small_parts",)
    tools: ClassVar[tuple[str, ...]] = ("hand_needle", "chalk", "pins")

    under: tuple[Place, ...] = ()

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(place.piece for place in (*self.places, *self.under))))

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=place_facts(pattern, (*self.places, *self.under), "fastener"))

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {self.kind: (self.count(pattern), "count")}

    def minutes(self, pattern: Cut) -> float:
        return 3.0 + 6.0 * self.count(pattern)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "places": (self.places, "mark"),
            "under": (self.under, "mark"),
        }
        return tuple(Sentence(f"{self.kind}.{key}", values) for key in ("first", "second"))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence(f"{self.kind}.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return self._scene(pattern, "button", 10.0)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = self._again(state, pattern, "fastener") + self._too_early(state, pattern, "fastener")
        number, other = self.count(pattern), len(place_facts(pattern, self.under, ""))
        if number != other:
            found.append(
                refuse(
                    pattern,
                    ground(pattern, self.places[0]),
                    "fasteners_unequal",
                    message("sewing_trouble.fasteners_unequal", number=number, other=other),
                    message("sewing_trouble.fasteners_unequal_do"),
                )
            )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class Snaps(Fasteners):
    """Snap fasteners."""

    kind: ClassVar[str] = "snaps"
    notions: ClassVar[tuple[str, ...]] = ("thread", "snaps")


@dataclass(frozen=True, kw_only=True)
class Hooks(Fasteners):
    """Hooks and eyes."""

    kind: ClassVar[str] = "hooks"
    notions: ClassVar[tuple[str, ...]] = ("thread", "hooks")


@dataclass(frozen=True, kw_only=True)
class Eyelets(OnMarks):
    """Eyelets set in one layer where a cord comes out of a casing, backed with a scrap of interfacing."""

    kind: ClassVar[str] = "eyelets"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("ripper", "cords")
    tools: ClassVar[tuple[str, ...]] = ("chalk", "scissors")
    notions: ClassVar[tuple[str, ...]] = ("eyelets",)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=place_facts(pattern, self.places, "eyelet"))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return place_facts(pattern, self.places, "eyelet_used")

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        return {"eyelets": (self.count(pattern), "count")}

    def minutes(self, pattern: Cut) -> float:
        return 4.0 + 3.0 * self.count(pattern)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {"places": (self.places, "mark")}
        return tuple(Sentence(f"eyelets.{key}", values) for key in ("back", "set"))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("eyelets.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return self._scene(pattern, "button", 8.0)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = self._again(state, pattern, "eyelet")
        for place in self.places:
            near = nearest(pattern, place)
            if near is None:
                continue
            for side in (place.side,) if place.side else pattern.piece(place.piece).sides:
                if ("casing", place.piece, side, near[0]) in state.facts:
                    found.append(
                        refuse(
                            pattern,
                            ground(pattern, place),
                            "eyelet_late",
                            message("sewing_trouble.eyelet_late", place=placed(pattern, place)),
                            message("sewing_trouble.eyelet_late_do"),
                        )
                    )
                    return tuple(found)
        return tuple(found)


@verb
def fasteners(
    reader: Reader,
    *places: Place,
    under: Place | list[Place] | tuple[Place, ...],
    kind: str = "snaps",
) -> Fasteners:
    """Sew on snaps or hooks: `places` on the overlap, `under` below them.

    Example::

        make.fasteners(waistband.hook, under=waistband.bar, kind="hooks")
    """
    where = "fasteners"
    made = {"snaps": Snaps, "hooks": Hooks}[read_word(kind, ("snaps", "hooks"), "kind", where)]
    return made(places=marks(places, where), under=marks((under,), f"{where}, under"))


@verb
def eyelets(reader: Reader, *places: Place) -> Eyelets:
    """Set eyelets where a cord comes out of a casing.

    Example::

        make.eyelets(tote.eyelet)
    """
    return Eyelets(places=marks(places, "eyelets"))
