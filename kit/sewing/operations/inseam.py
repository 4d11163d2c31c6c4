"""Pockets in a side seam: two bags, one sewn to each side of the mouth, then seam and bags in one row.

The bags are two pieces (a front and a back bag). What closes what: the mouth of the seam's two edges and the bags' own
mouth edges are closed by `pocket_bag`; the rest of the seam and the round of the bags by `pocket_seam`. Every raw
stretch is closed once.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, titled
from kit.errors import KitError
from kit.piece.role import PieceRole
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.places import closed_but, half_facts, opening_run, part, refuse, sewn_length
from kit.sewing.operations.seams import Seam
from kit.sewing.outcome import Closing, Effect, Fact
from kit.sewing.reading import FINISHES, Opening, Reader, Runs, mark_label, read_width, read_word
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import pockets as shapes
from kit.sewing.spans import Span, run_length, runs_opposed, sides_of, spans
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Size


@dataclass(frozen=True, kw_only=True)
class PocketBag(Seam):
    """The mouth edge `a` of a bag sewn to the mouth `b` of a garment's edge, right sides together, and turned out
    beside it."""

    kind: ClassVar[str] = "pocket_bag"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "pins", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    finish: str = "zigzag"
    press: str = "one side"

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return tuple((run.piece, "pocket", "") for run in self.a)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        mine = half_facts(pattern, self.a, "pocket_bag")
        mouth = tuple(
            ("pocket_mouth", span.piece, span.side, span.edge, f"{span.start:.0f}", f"{span.end:.0f}")
            for run in self.b
            for span in spans(pattern, run)
        )
        before = super().effect(pattern)
        return replace(before, facts=before.facts + mine + mouth, faced=self.runs())

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return (
            *super().wants(pattern),
            *half_facts(pattern, self.a, "bag_closed"),
        )

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        bag, garment = self._names()
        values: dict[str, tuple[object, str]] = {
            "bag": (bag, "piece"),
            "garment": (garment, "piece"),
            "edge": (self.b, "edge"),
            "allowance": (self.allowance, "allowance"),
            "finish": (f"finish.{self.finish}", "word"),
        }
        keys = ["pin", "sew", *(["finish"] if self.finish != "none" else []), "press"]
        return (*(Sentence(f"pocket_bag.{key}", values) for key in keys), *both_sides(pattern, self.b))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("pocket_bag.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        bag, garment = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        return (
            Scene(
                layers=(Layer(garment, up="right"), Layer(bag, up="wrong", on=garment, how="together")),
                rows=(Row(garment),),
                focus=garment,
                pins=(garment,),
                section=section.superimposed("main", "lining"),
            ),
            Scene(
                layers=(Layer(garment, up="right"), Layer(bag, up="right", on=garment, how="open")),
                rows=(Row(garment, ink="old"),),
                focus=garment,
                arrows=((bag, "in"),),
                section=shapes.bag_sewn(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        for run in self.b:
            size = pattern.piece(run.piece).edge(run.edges[0]).path.length
            if run.start is None or run_length(pattern, run) >= size - 1.0:
                found += (
                    refuse(
                        pattern,
                        run,
                        "mouth_whole_edge",
                        message("sewing_trouble.bag_whole_seam", place=placed(pattern, run)),
                        message("sewing_trouble.bag_whole_seam_do"),
                    ),
                )
        return found


@dataclass(frozen=True, kw_only=True)
class PocketSeam(Seam):
    """The side seam `a` to `b` and around the two bags in one row: down to the `mouth` (mm along `a`), round the bags
    `bags`, and on from the other end of the mouth."""

    kind: ClassVar[str] = "pocket_seam"
    seam_class: ClassVar[str] = "1.01.01"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "pins", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    bags: tuple[Run, Run]
    mouth: tuple[float, float]
    bag_allowance: float
    finish: str = "zigzag"
    mark: str = ""

    def runs(self) -> tuple[Run, ...]:
        return self.a + self.b + self.bags

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return (*super().joins, self.bags)

    def mouths(self, pattern: Cut) -> tuple[Run, Run]:
        """The mouth on each of the two edges."""
        (a,), (b,) = self.a, self.b
        start, end = self.mouth
        far = run_length(pattern, b)
        if runs_opposed(pattern, a, b):
            return (part(pattern, a, start, end), part(pattern, b, far - end, far - start))
        return (part(pattern, a, start, end), part(pattern, b, start, end))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.runs(), self.mouths(pattern), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return {**taken(self.a + self.b, self.allowance), **taken(self.bags, self.bag_allowance)}

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        return tuple(span for run in self.mouths(pattern) for span in spans(pattern, run))

    def effect(self, pattern: Cut) -> Effect:
        closed = half_facts(pattern, self.bags, "bag_closed")
        before = super().effect(pattern)
        return replace(before, facts=before.facts + closed)

    def minutes(self, pattern: Cut) -> float:
        return super().minutes(pattern) + 6.0

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "bags": (tuple(run.piece for run in self.bags), "piece"),
            "allowance": (self.allowance, "allowance"),
            "bag_allowance": (self.bag_allowance, "allowance"),
            "size": (self.mouth[1] - self.mouth[0], "length"),
            "from": (self.mouth[0], "length"),
            "finish": (f"finish.{self.finish}", "word"),
            "piece": ((self.a[0].piece,), "piece"),
        }
        found = [self._pin("right"), *self._match(pattern), *self._ease()]
        keys = ["sew", "round", "on", *(["finish"] if self.finish != "none" else []), "clip", "press"]
        return (
            *found,
            *(Sentence(f"pocket_seam.{key}", values) for key in keys),
            *both_sides(pattern, self.a + self.b),
        )

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("pocket_seam.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        one, two = shown(pattern, self.bags[0]), shown(pattern, self.bags[1])
        return (
            Scene(
                layers=(Layer(b, up="right"), Layer(a, up="wrong", on=b, how="together")),
                rows=(Row(a, gap=self.mouth),),
                focus=a,
                pins=(a,),
                section=section.superimposed(),
            ),
            Scene(
                layers=(Layer(two, up="right"), Layer(one, up="wrong", on=two, how="together")),
                rows=(Row(one),),
                focus=one,
                section=shapes.bags_together(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        first = self.a[0]
        for run in self.bags:
            wanted = half_facts(pattern, (run,), "pocket_bag")
            if any(fact not in state.facts for fact in wanted):
                found.append(
                    refuse(
                        pattern,
                        run,
                        "bag_not_set",
                        message("sewing_trouble.bag_not_set", piece=titled(pattern.piece(run.piece).title)),
                        message("sewing_trouble.bag_not_set_do"),
                    )
                )
        sewn = {
            (fact[1], fact[2], fact[3], float(fact[4]), float(fact[5]))
            for fact in state.facts
            if fact[0] == "pocket_mouth"
        }
        for span in self.opens(pattern):
            if sewn and not any(
                key[:3] == (span.piece, span.side, span.edge)
                and max(abs(key[3] - span.start), abs(key[4] - span.end)) <= 1.0
                for key in sewn
            ):
                found.append(
                    refuse(
                        pattern,
                        Run(span.piece, (span.edge,), span.side),
                        "mouth_moved",
                        message("sewing_trouble.mouth_moved", start=measured(span.start), end=measured(span.end)),
                        message("sewing_trouble.mouth_moved_do"),
                    )
                )
                break
        one, two = (sewn_length(pattern, (run,)) / len(sides_of(pattern, run)) for run in self.bags)
        if abs(one - two) > 2.0:
            found.append(
                refuse(
                    pattern,
                    self.bags[0],
                    "bags_unequal",
                    message("sewing_trouble.bags_unequal", gap=measured(abs(one - two))),
                    message("sewing_trouble.bags_unequal_do"),
                    abs(one - two),
                )
            )
        size = run_length(pattern, first)
        if self.mouth[0] < 1.0 and self.mouth[1] > size - 1.0:
            found.append(
                refuse(
                    pattern,
                    first,
                    "mouth_whole_edge",
                    message("sewing_trouble.mouth_whole_seam"),
                    message("sewing_trouble.mouth_whole_seam_do"),
                )
            )
        return tuple(found)


@verb
def pocket_bag(reader: Reader, bag: Run, to: Run | Place, *, allowance: Size, finish: str = "zigzag") -> PocketBag:
    """Sew the mouth edge of a pocket bag to an opening marked on the garment's edge.

    Example::

        make.pocket_bag(front_bag.mouth, skirt_front.pocket_mouth, allowance=1.5 * cm)
    """
    where = "pocket bag"
    a, b = reader.pair(bag, opening_run(reader, to, where), where)
    return PocketBag(
        a=a,
        b=b,
        allowance=read_width(allowance, f"{where}, allowance"),
        finish=read_word(finish, FINISHES, "finish", where),
    )


@verb
def pocket_seam(
    reader: Reader,
    a: Runs,
    b: Runs,
    *,
    bags: tuple[Run, Run],
    mouth: Opening,
    allowance: Size,
    bag_allowance: Size | None = None,
    press: str = "one side",
    finish: str = "zigzag",
) -> PocketSeam:
    """Sew a seam with its pocket in one row. `bags`: the round edges of both bags; `mouth`: the opening mark on `a`.

    Example::

        front_round = front_bag.bottom + front_bag.outer + front_bag.upper
        back_round = back_bag.bottom + back_bag.outer + back_bag.upper
        make.pocket_seam(skirt_front.side, skirt_back.side, bags=(front_round, back_round),
                         mouth=skirt_front.pocket_mouth, allowance=1.5 * cm, bag_allowance=1 * cm)
    """
    where = "pocket seam"
    first, second = reader.pair(a, b, where)
    width = read_width(allowance, f"{where}, allowance")
    opening = reader.opening(mouth, first, second, where)
    if opening is None or not isinstance(bags, tuple | list) or len(bags) != 2:
        raise KitError(
            "the mouth or one of the two bags is missing.",
            where=where,
            do="Write bags=(front_bag.round, back_bag.round), mouth=front.pocket_mouth.",
        )
    one, two = reader.pair(bags[0], bags[1], f"{where}, bags")
    return PocketSeam(
        a=first,
        b=second,
        allowance=width,
        bags=(one[0], two[0]),
        mouth=opening,
        bag_allowance=width if bag_allowance is None else read_width(bag_allowance, f"{where}, bag allowance"),
        press=reader.pressing(press, first + second, where),
        finish=read_word(finish, FINISHES, "finish", where),
        mark=mark_label(mouth),
    )
