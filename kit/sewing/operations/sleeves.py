"""A sleeve set into its armhole."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.piece.role import PieceRole
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.places import facts_of, is_ring, lacking, refuse
from kit.sewing.operations.seams import Seam
from kit.sewing.outcome import Closing
from kit.sewing.reading import FINISHES, Reader, Runs, read_size, read_width, read_word
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bands as section
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size


@dataclass(frozen=True, kw_only=True)
class SetInSleeve(Seam):
    """The cap `a` of a closed sleeve sewn into the closed armhole `b`. `ease` mm by which the cap is longer, on each
    half: drawn in by ease stitching first."""

    kind: ClassVar[str] = "set_in_sleeve"
    seam_class: ClassVar[str] = "1.01"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "pins", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    finish: str = "zigzag"

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((run.piece, "sleeve", "") for run in self.a)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def minutes(self, pattern: Cut) -> float:
        return 40.0

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        sleeve, _ = self._names()
        values: dict[str, tuple[object, str]] = {
            "sleeve": (sleeve, "piece"),
            "edge": (self.b, "place"),
            "ease": (self.ease, "length"),
            "allowance": (self.allowance, "allowance"),
            "finish": (f"finish.{self.finish}", "word"),
        }
        notched = all(
            any(notch.edge in run.edges for run in runs for notch in pattern.piece(run.piece).notches)
            for runs in (self.a, self.b)
        )
        keys = ["place", "pin_notched" if notched else "pin"]
        keys += ["ease"] if self.ease > 0 else []
        keys += ["sew", *(["finish"] if self.finish != "none" else []), "press"]
        return (*(Sentence(f"set_in_sleeve.{key}", values) for key in keys), *both_sides(pattern, self.b))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("set_in_sleeve.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        cap, hole = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        return (
            Scene(
                layers=(Layer(cap, up="wrong"),),
                rows=(Row(cap, inset=-3.0, style="gather"),) if self.ease > 0 else (),
                focus=cap,
            ),
            Scene(
                layers=(Layer(hole, up="wrong"),),
                rows=(Row(hole),),
                focus=hole,
                pins=(hole,),
                section=section.sleeve_set(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        for runs, code in ((self.a, "sleeve_no_ring"), (self.b, "armhole_no_ring")):
            if not is_ring(state, pattern, runs):
                found.append(
                    refuse(
                        pattern,
                        runs[0],
                        code,
                        message(f"sewing_trouble.{code}", place=placed(pattern, runs[0])),
                        message(f"sewing_trouble.{code}_do"),
                    )
                )
        codes = {trouble.code for trouble in found}
        ready = not lacking(state, facts_of(pattern, self.a, "eased")) or not lacking(
            state, facts_of(pattern, self.a, "gathered")
        )
        if self.ease > 0 and not ready and not codes & {"not_eased_yet", "not_gathered_yet"}:
            found.append(
                refuse(
                    pattern,
                    self.a[0],
                    "not_eased_yet",
                    message("sewing_trouble.cap_not_eased", ease=measured(self.ease)),
                    message("sewing_trouble.cap_not_eased_do"),
                    self.ease,
                )
            )
        return tuple(found)


@verb
def set_in_sleeve(
    reader: Reader,
    cap: Runs,
    armhole: Runs,
    *,
    allowance: Size,
    ease: Size = 0,
    press: str = "one side",
    finish: str = "zigzag",
) -> SetInSleeve:
    """Sew the cap of a closed sleeve into the closed armhole; the cap is `ease` longer on each half.

    Example::

        cap = sleeve.back_cap + sleeve.front_cap
        make.set_in_sleeve(cap, [back.armhole, front.armhole], allowance=1.5 * cm, ease=3.7 * cm)
    """
    where = "set in sleeve"
    a, b = reader.pair(cap, armhole, where)
    return SetInSleeve(
        a=a,
        b=b,
        allowance=read_width(allowance, f"{where}, allowance"),
        ease=read_size(ease, f"{where}, ease"),
        press=reader.pressing(press, a + b, where),
        finish=read_word(finish, FINISHES, "finish", where),
    )
