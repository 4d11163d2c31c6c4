"""Hems stitched by machine: turned once, turned twice, narrow."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.joined import shut_in, trouble_on, unjoined
from kit.sewing.operations.places import is_ring
from kit.sewing.outcome import Closing, Effect
from kit.sewing.reading import DEEPEST_HEM, FINISHES, Reader, Runs, read_size, read_width, read_word
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene, Section
from kit.sewing.spans import sides_of
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.sewing.verb import verb
from kit.units import Length, Size

EDGE = 2.0  # mm from the inner fold to the row


@dataclass(frozen=True, kw_only=True)
class Hem(Operation):
    """Edge turned to the wrong side. `first` mm is turned first; `second` > 0: turned again by that much, the
    finished hem, and stitched near the inner fold (ISO 4916 6.03.01, from memory). `second` 0: the raw edge is
    finished and the hem turned once (6.02.01, from memory). `catching`: facing ends folded in with it. `ring`: the edge
    is a closed ring already, as at a sleeve or cuff, and is hemmed round and round."""

    kind: ClassVar[str] = "hem"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    crosses: ClassVar[bool] = True

    edges: tuple[Run, ...]
    first: float
    second: float = 0.0
    catching: tuple[Run, ...] = ()
    finish: str = "zigzag"
    narrow: bool = False
    ring: bool = False

    @property
    def hem_class(self) -> str:
        """ISO 4916 class, from memory."""
        return "6.03.01" if self.second > 0 else "6.02.01"

    @property
    def depth(self) -> float:
        """mm of the finished hem."""
        return self.second if self.second > 0 else self.first

    def runs(self) -> tuple[Run, ...]:
        return self.edges + self.catching

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "hemmed")

    def effect(self, pattern: Cut) -> Effect:
        return shut_in(Effect(), pattern, self.runs()) if self.second > 0 else Effect()

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.first + self.second)

    def _values(self) -> dict[str, tuple[object, str]]:
        part = "part" if self.second > 0 else "allowance"
        values: dict[str, tuple[object, str]] = {
            "edge": (self.edges, "place"),
            "first": (self.first, part),
            "second": (self.second, part),
            "total": (self.first + self.second, "allowance"),
            "row": (EDGE, "allowance"),
            "caught": (self.catching, "place"),
        }
        if self.finish != "none":
            values["finish"] = (f"finish.{self.finish}", "word")
        return values

    def _first(self) -> list[str]:
        return [*(["ring"] if self.ring else []), *(["catch"] if self.catching else [])]

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values = self._values()
        keys = self._first()
        if self.narrow:
            keys += ["narrow"]
        elif self.second > 0:
            keys += ["first", "second"]
        else:
            keys += [*(["finish"] if self.finish != "none" else []), "single"]
        keys += ["sew_single" if self.second == 0 else "sew", *(["lap_rows"] if self.ring else []), "press"]
        return (*(Sentence(f"hem.{key}", values) for key in keys), *both_sides(pattern, self.edges))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        key = "why_narrow" if self.narrow else "why_twice" if self.second > 0 else "why_once"
        return (Sentence(f"hem.{key}", {}),)

    def _section(self) -> Section:
        return section.hem_twice(self.first, self.second) if self.second > 0 else section.hem_once()

    def _rows(self, run: Run) -> tuple[Row, ...]:
        return (Row(run, inset=max(self.depth - EDGE, self.depth / 2)),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        turn = tuple((edge, self.depth) for edge in run.edges)
        layers: tuple[Layer, ...] = (Layer(run, up="wrong", turn=turn),)
        for caught in self.catching:
            if caught.side in (None, run.side):
                other = shown(pattern, caught, run.side)
                layers += (
                    Layer(
                        other,
                        up="right",
                        stuff="facing",
                        on=run,
                        how="flat",
                        turn=tuple((edge, self.depth) for edge in other.edges),
                    ),
                )
        return (Scene(layers=layers, rows=self._rows(run), focus=run, arrows=((run, "in"),), section=self._section()),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(unjoined(state, pattern, self.edges)) + self._loose(state, pattern)
        if self.ring and not is_ring(state, pattern, self.edges):
            found.append(
                trouble_on(
                    pattern,
                    self.edges,
                    "not_a_ring_yet",
                    message("sewing_trouble.not_a_ring_yet", place=placed(pattern, self.edges[0])),
                    message("sewing_trouble.not_a_ring_yet_do"),
                )
            )
        if self.second > 0 and self.first > self.second + 0.5:
            found.append(
                trouble(
                    "hem_turns",
                    message("sewing_trouble.hem_turns"),
                    pattern.piece(self.edges[0].piece).title,
                    message("sewing_trouble.do_deepen_second_turn"),
                    amount=self.first - self.second,
                    piece=self.edges[0].piece,
                    edge=self.edges[0].edges[0],
                )
            )
        return tuple(found)

    def _loose(self, state: State, pattern: Cut) -> list[Diagnostic]:
        """Facing ends that are to be caught, but hang on nothing yet."""
        hemmed = [(run.piece, side) for run in self.edges for side in sides_of(pattern, run)]
        return [
            trouble_on(
                pattern,
                (run,),
                "caught_loose",
                message("sewing_trouble.caught_loose", place=placed(pattern, run)),
                message("sewing_trouble.caught_loose_do"),
            )
            for run in self.catching
            if any(not any(state.joined((run.piece, side), part) for part in hemmed) for side in sides_of(pattern, run))
        ]


@verb
def hem(
    reader: Reader,
    *edges: Runs,
    first: Size,
    second: Size = 0,
    catching: Runs = (),
    finish: str = "zigzag",
    ring: bool = False,
) -> Hem:
    """Turn an edge up: twice when `second` is given, else once with its raw edge finished.

    Example::

        make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
    """
    where = "hem"
    return Hem(
        edges=reader.runs(edges, where),
        first=read_width(first, f"{where}, first turn", DEEPEST_HEM),
        second=read_size(second, f"{where}, second turn", DEEPEST_HEM),
        catching=reader.runs((catching,), where, empty=True),
        finish=read_word(finish, FINISHES, "finish", where),
        ring=bool(ring),
    )


@verb
def narrow_hem(reader: Reader, *edges: Runs, turn: Size = Length(5.0), catching: Runs = (), ring: bool = False) -> Hem:
    """Two equal narrow turns.

    Example::

        make.narrow_hem(sleeve.wrist, turn=5 * mm)
    """
    where = "narrow hem"
    width = read_width(turn, f"{where}, turn", 15.0)
    return Hem(
        edges=reader.runs(edges, where),
        first=width,
        second=width,
        catching=reader.runs((catching,), where, empty=True),
        narrow=True,
        ring=bool(ring),
    )
