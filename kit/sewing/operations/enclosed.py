"""Seams that hide their raw edges: mock French, flat-felled, lapped."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.operation import Sentence, both_sides, closings, shown, taken
from kit.sewing.operations.joined import Seam, read_ease, shut_in, trouble_on
from kit.sewing.outcome import Closing, Effect
from kit.sewing.reading import FINISHES, Reader, Runs, read_width, read_word
from kit.sewing.run import PieceHandle, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import seams as shapes
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

LEAST_TURN = 3.0  # mm of cloth that can be turned under and held (common practice, no source)
FELL_EDGE = 2.0  # mm from the fold of a felled or lapped seam to its row


@dataclass(frozen=True, kw_only=True)
class MockFrenchSeam(Seam):
    """Sewn as a plain seam; then both raw edges are turned in by `turn` mm towards each other and stitched together
    along their folds. For curves that a French seam does not lie flat in. ISO 4916 class 1 (superimposed)."""

    kind: ClassVar[str] = "mock_french_seam"
    seam_class: ClassVar[str] = "1"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    turn: float
    press: str = "one side"

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        return shut_in(super().effect(pattern), pattern, self.runs())

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "allowance": (self.allowance, "allowance"),
            "turn": (self.turn, "allowance"),
        }
        return (
            self._pin("right"),
            *self._match(pattern),
            *self._ease(),
            *(Sentence(f"mock_french_seam.{key}", values) for key in ("sew", "turn", "stitch")),
            self._press(),
            *both_sides(pattern, self.runs()),
        )

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("mock_french_seam.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        layers = (Layer(b, up="right"), Layer(a, up="wrong", on=b, how="together"))
        return (
            Scene(layers, (Row(a),), focus=a, section=section.superimposed(), pins=(a,)),
            Scene(
                layers,
                (Row(a, ink="old"), Row(a, inset=-(self.allowance - self.turn - 1.5))),
                focus=a,
                section=shapes.mock_french(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        left = self.allowance - self.turn
        if self.turn < LEAST_TURN or left < self.turn + 1.0:
            return (
                *found,
                trouble_on(
                    pattern,
                    self.a,
                    "mock_french_turn",
                    message(
                        "sewing_trouble.mock_french_turn",
                        allowance=measured(self.allowance, "allowance"),
                        turn=measured(self.turn, "allowance"),
                        left=measured(left, "allowance"),
                    ),
                    message("sewing_trouble.mock_french_turn_do", least=measured(LEAST_TURN, "allowance")),
                    amount=self.turn - self.allowance / 2,
                ),
            )
        return found


@dataclass(frozen=True, kw_only=True)
class FlatFelledSeam(Seam):
    """Two rows. `a` laps over `b`: both are sewn `allowance` mm from the edge, the allowance of `b` is trimmed to
    `trim` mm, that of `a` is folded around it so that the fell is `width` mm wide and stitched down flat on `b`. With
    `outside` the wrong sides are sewn together, so that fell and both rows show on the right side. ISO 4916 2.04 (its
    last figures vary with the rows), from memory."""

    kind: ClassVar[str] = "flat_felled_seam"
    seam_class: ClassVar[str] = "2.04"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron", "scissors")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron", "scissors")

    allowance: float
    width: float
    trim: float
    outside: bool = True

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def effect(self, pattern: Cut) -> Effect:
        return shut_in(super().effect(pattern), pattern, self.runs())

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        lapping, under = self._names()
        values: dict[str, tuple[object, str]] = {
            "allowance": (self.allowance, "allowance"),
            "width": (self.width, "allowance"),
            "trim": (self.trim, "allowance"),
            "row": (FELL_EDGE, "allowance"),
            "lapping": (lapping, "piece"),
            "under": (under, "piece"),
        }
        keys = ["sew", "trim", "fold", "lay", "stitch"]
        if lapping == under:
            sides = {"lapping_side": (self.a[0].side, "word"), "under_side": (self.b[0].side, "word")}
            values.update(sides)
            keys = ["sew", "trim_same_piece", "fold_same_piece", "lay_same_piece", "stitch"]
        return (
            self._pin("wrong" if self.outside else "right"),
            *self._match(pattern),
            *self._ease(),
            *(Sentence(f"flat_felled_seam.{key}", values) for key in keys),
            *both_sides(pattern, self.runs()),
        )

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("flat_felled_seam.why", {}), Sentence("flat_felled_seam.why_trim", {}))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        below, above = ("wrong", "right") if self.outside else ("right", "wrong")
        return (
            Scene(
                (Layer(b, up=below), Layer(a, up=above, on=b, how="together")),  # type: ignore[arg-type]
                (Row(a),),
                focus=a,
                section=shapes.felled_first(),
                pins=(a,),
            ),
            Scene(
                (Layer(b, up=above), Layer(a, up=above, on=b, how="open")),  # type: ignore[arg-type]
                (Row(a, ink="old"), Row(b, inset=self.width - FELL_EDGE)),
                focus=a,
                arrows=((b, "in"),),
                section=shapes.felled(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        turned = self.allowance - self.width
        if self.trim > self.width - FELL_EDGE + 0.01:
            found.append(
                trouble_on(
                    pattern,
                    self.b,
                    "felled_trim",
                    message(
                        "sewing_trouble.felled_trim",
                        trim=measured(self.trim, "allowance"),
                        width=measured(self.width, "allowance"),
                    ),
                    message("sewing_trouble.felled_trim_do", most=measured(self.width - FELL_EDGE, "allowance")),
                    amount=self.trim - self.width + FELL_EDGE,
                )
            )
        if turned < LEAST_TURN or turned > self.width + 0.01:
            found.append(
                trouble_on(
                    pattern,
                    self.a,
                    "felled_width",
                    message(
                        "sewing_trouble.felled_width",
                        width=measured(self.width, "allowance"),
                        turned=measured(max(turned, 0.0), "allowance"),
                        allowance=measured(self.allowance, "allowance"),
                    ),
                    message("sewing_trouble.felled_width_do", least=measured(LEAST_TURN, "allowance")),
                    amount=abs(turned),
                )
            )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class LappedSeam(Seam):
    """The edge of `a`, turned under at its stitch line, laid on the right side of `b` so that the stitch lines meet,
    and stitched `edgestitch` mm from the fold. Without `turned`, for cloth that does not fray, `a` keeps its raw edge
    and a second row holds the other. ISO 4916 class 2 (lapped), from memory."""

    kind: ClassVar[str] = "lapped_seam"
    seam_class: ClassVar[str] = "2"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")

    allowance: float
    edgestitch: float
    turned: bool = True
    finish: str = "zigzag"

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.runs(), "sewn")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.runs(), self.allowance)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "allowance": (self.allowance, "allowance"),
            "row": (self.edgestitch, "allowance"),
            "edge": (self.a, "place"),
            "other": (self.b, "place"),
        }
        if self.finish != "none":
            values["finish"] = (f"finish.{self.finish}", "word")
        keys = ["turn", "lay", "stitch"] if self.turned else ["lay_raw", "stitch_raw"]
        if self.turned and self.finish != "none":
            keys.append("finish")
        found = [Sentence(f"lapped_seam.{key}", values) for key in keys]
        laid = next(i for i, key in enumerate(keys) if key.startswith("lay")) + 1
        return (
            *found[:laid],
            *self._match(pattern),
            *self._ease(),
            *found[laid:],
            *both_sides(pattern, self.runs()),
        )

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("lapped_seam.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        lap = Layer(a, up="right", on=b, how="open")
        shape = shapes.lapped() if self.turned else shapes.lapped_raw()
        turn = tuple((edge, self.allowance) for edge in a.edges)
        rows: tuple[Row, ...] = (Row(a, inset=self.edgestitch),)
        if not self.turned:
            rows = (Row(a, inset=self.edgestitch - self.allowance), Row(a, inset=self.allowance - self.edgestitch))
        first = Scene((Layer(a, up="wrong", turn=turn),), focus=a, arrows=((a, "in"),))
        last = Scene((Layer(b, up="right"), lap), rows, focus=a, section=shape)
        return (first, last) if self.turned else (last,)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        if self.edgestitch >= self.allowance:
            found += (
                trouble_on(
                    pattern,
                    self.a,
                    "lapped_row",
                    message(
                        "sewing_trouble.lapped_row",
                        edgestitch=measured(self.edgestitch, "allowance"),
                        allowance=measured(self.allowance, "allowance"),
                    ),
                    message("sewing_trouble.lapped_row_do"),
                    amount=self.edgestitch - self.allowance,
                ),
            )
        return found


def _lapping(reader: Reader, lap: PieceHandle | str | None, a: tuple[Run, ...], b: tuple[Run, ...], where: str) -> bool:
    """Whether the second row of runs laps over the first; `lap` names the piece on top (None: the first)."""
    if lap is None:
        return False
    name = reader.piece(lap, where) if isinstance(lap, PieceHandle) else lap
    names = [run.piece for run in a + b]
    read_word(name, names, "lap", where)
    return name not in [run.piece for run in a]


@verb
def mock_french_seam(
    reader: Reader,
    a: Runs,
    b: Runs,
    *,
    allowance: Size,
    turn: Size = Length(5.0),
    press: str = "one side",
    ease: Size = 0,
) -> MockFrenchSeam:
    """A plain seam whose raw edges are turned in towards each other by `turn` and stitched together.

    Example::

        make.mock_french_seam(front.side, back.side, allowance=1.5 * cm)
    """
    where = "mock French seam"
    first, second = reader.pair(a, b, where)
    if press == "open":
        raise KitError(
            "a mock French seam cannot be pressed open: its edges are stitched together.",
            where=where,
            do='Write press="one side" or the name of one of its pieces.',
        )
    return MockFrenchSeam(
        a=first,
        b=second,
        allowance=read_width(allowance, f"{where}, allowance"),
        turn=read_width(turn, f"{where}, turn"),
        press=reader.pressing(press, first + second, where),
        ease=read_ease(reader, first, second, ease, where),
    )


@verb
def flat_felled_seam(
    reader: Reader,
    a: Runs,
    b: Runs,
    *,
    allowance: Size,
    lap: PieceHandle | str | None = None,
    width: Size | None = None,
    trim: Size | None = None,
    outside: bool = True,
    ease: Size = 0,
) -> FlatFelledSeam:
    """Two rows. `lap` is the piece that laps over the other (the first, where nothing is said). The fell is `width`
    wide (5/8 of the allowance), the other allowance is trimmed to `trim` (half of the fell). `outside`: sewn wrong
    sides together, so that the fell shows on the right side.

    Example::

        make.flat_felled_seam(front.side, back.side, allowance=1.5 * cm, lap=back)
    """
    where = "flat-felled seam"
    first, second = reader.pair(a, b, where)
    if _lapping(reader, lap, first, second, where):
        first, second = second, first
    deep = read_width(allowance, f"{where}, allowance")
    wide = deep * 0.625 if width is None else read_width(width, f"{where}, width")
    return FlatFelledSeam(
        a=first,
        b=second,
        allowance=deep,
        width=wide,
        trim=wide / 2 if trim is None else read_width(trim, f"{where}, trim"),
        outside=bool(outside),
        press=second[0].piece,
        ease=read_ease(reader, first, second, ease, where),
    )


@verb
def lapped_seam(
    reader: Reader,
    over: Runs,
    under: Runs,
    *,
    allowance: Size,
    edgestitch: Size = Length(2.0),
    turned: bool = True,
    finish: str = "zigzag",
    ease: Size = 0,
) -> LappedSeam:
    """`over` is turned under and laid on `under`, stitched near its fold. `turned=False` for cloth that does not
    fray. `finish` is that of the raw edges inside.

    Example::

        make.lapped_seam(back.shoulder, front.shoulder, allowance=1.5 * cm)
    """
    where = "lapped seam"
    first, second = reader.pair(over, under, where)
    return LappedSeam(
        a=first,
        b=second,
        allowance=read_width(allowance, f"{where}, allowance"),
        edgestitch=read_width(edgestitch, f"{where}, edgestitch"),
        turned=bool(turned),
        finish=read_word(finish, FINISHES, "finish", where),
        press=first[0].piece,
        ease=read_ease(reader, first, second, ease, where),
    )
