"""Seams that hide their raw edges: mock French, flat-felled, lapped."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.fields import width as _width
from kit.sewing.operations.joined import eased, matched, not_basted, pinned, pressed, pressing
from kit.sewing.operations.openings import AGAIN, OPENED, UNTRIMMED, WITHIN, OpenSeam, gap_along, left_open
from kit.sewing.sections import seams as shapes
from kit.sewing.vocabulary import *

LEAST_TURN = 3.0  # mm of cloth that can be turned under and held (common practice, no source)
FELL_EDGE = 2.0  # mm from the fold of a felled or lapped seam to its row
_LEAST = {"least": measured(LEAST_TURN, "allowance")}


@operation
class MockFrenchSeam(OpenSeam):
    """A plain seam whose raw edges are turned in towards each other by `turn` and stitched together.

    Example::

        make.mock_french_seam(front.side, back.side, allowance=1.5 * cm)
    """

    # for curves that a French seam does not lie flat in; superimposed
    kind = "mock_french_seam"
    called = "mock French seam"
    seam_class = "1"
    tools = ("machine", "pins", "iron")
    stages = (
        Stage("first", (pinned("right"), "sew", left_open), closes={"a": "sewn", "b": "sewn"}, joins=True),
        OPENED,
        Stage("second", ("turn", "stitch", AGAIN, pressed)),
    )
    lastly = (both_open("a", "b"),)
    gives = (Of("shut_in", "a"), Of("shut_in", "b"))
    rules = (
        *WITHIN,
        Rule(
            Suits(
                lambda seam: seam.turn >= LEAST_TURN and seam.left >= seam.turn + 1.0,
                of="a",
                by=lambda seam: seam.turn - seam.allowance / 2,
                values=_LEAST,
            ),
            "mock_french_turn",
        ),
    )

    allowance: float = width()
    turn: float = width(default=5 * mm)
    press: str = pressing(default="one side")
    ease: float = eased()

    @classmethod
    def agree(cls, asked: Asked) -> None:
        if asked.read["press"] == "open":
            raise KitError(
                "a mock French seam cannot be pressed open: its edges are stitched together.",
                where=asked.where,
                do='Write press="one side" or the name of one of its pieces.',
            )

    @property
    def left(self) -> float:
        """mm of allowance that are not turned in."""
        return self.allowance - self.turn

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = (shown(pattern, row[0], side_of(self.half)) for row in (self.a, self.b))
        row = Row(a, gap=self.opening)
        sewn = replace(row, ink="old")
        before = together(b, a, row, section=section.superimposed(), pins=(a,), stage="first")
        turned = tuple(
            replace(layer, back=self.back(pattern, layer.run), creased=((layer.run, self.left),))
            for layer in before.layers
        )
        folds = replace(row, inset=-(self.left - 1.5))
        after = Scene(turned, (sewn, folds), focus=a, section=shapes.mock_french())
        return (
            before,
            *((self.opening_scene(pattern, a, sewn),) if self.is_open else ()),
            after,
            pressed_over(b, a, self.press, self.left, sewn, section=shapes.enclosed_pressed(), once=True),
        )


def _on_top(given: Any, asked: Asked, name: str) -> str:
    """The piece that laps over the other; empty: the first."""
    if given is None:
        return ""
    named = asked.reader.piece(given, asked.where) if isinstance(given, PieceHandle) else given
    return read_word(named, [run.piece for run in asked.read["a"] + asked.read["b"]], name, asked.where)


@operation
class FlatFelledSeam(OpenSeam):
    """Two rows. `lap` is the piece that laps over the other (the first, where nothing is said). The fell is `width`
    wide (5/8 of the allowance), the other allowance is trimmed to `trim` (half of the fell). `outside`: sewn wrong
    sides together, so that the fell shows on the right side.

    Example::

        make.flat_felled_seam(front.side, back.side, allowance=1.5 * cm, lap=back)
    """

    # a laps over b; ISO 4916 2.04: its last figures vary with the rows
    kind = "flat_felled_seam"
    called = "flat-felled seam"
    seam_class = "2.04"
    tools = ("machine", "pins", "iron", "scissors")
    stages = (
        Stage(
            "first",
            (lambda seam, pattern: pinned("wrong" if seam.outside else "right")(seam, pattern), "sew", left_open),
            closes={"a": "sewn", "b": "sewn"},
            joins=True,
        ),
        OPENED,
        Stage("second", ("trim{same}", UNTRIMMED, "fold{same}", "lay{same}", "stitch", AGAIN), work=2.0),
    )
    lastly = (both_open("a", "b"),)
    why = ("why", "why_trim")
    also = (
        Also("row", FELL_EDGE),
        Also("lapping_side", lambda seam, pattern: seam.a[0].side if seam.same else None, "word"),
        Also("under_side", lambda seam, pattern: seam.b[0].side if seam.same else None, "word"),
    )
    gives = (Of("shut_in", "a"), Of("shut_in", "b"))
    rules = (
        *WITHIN,
        *not_basted(lambda seam: seam.outside),
        Rule(Excess(lambda seam: seam.trim - seam.most, of="b", slack=0.01), "felled_trim"),
        Rule(
            Suits(
                lambda seam: LEAST_TURN <= seam.allowance - seam.width <= seam.width + 0.01,
                of="a",
                by=lambda seam: abs(seam.allowance - seam.width),
                values=_LEAST,
            ),
            "felled_width",
        ),
    )

    a: tuple[Run, ...] = meets("b", closes="sewn", takes="allowance", fills={"lapping": "piece"})
    b: tuple[Run, ...] = meets("a", closes="sewn", takes="allowance", fills={"under": "piece"})
    allowance: float = width()
    lap: str = read_by(_on_top, "PieceHandle | str | None", default=None, held="")
    width: float = _width(default=None)
    trim: float = _width(default=None)
    outside: bool = flag(default=True)
    press: str = fixed("")
    ease: float = eased()

    @classmethod
    def made(cls, asked: Asked) -> FlatFelledSeam:
        """The piece that laps over is the first."""
        read = dict(asked.read)
        if read["lap"] and read["lap"] not in [run.piece for run in read["a"]]:
            if read["opening"]:  # measured along the lapping edge
                read["opening"] = gap_along(asked.reader.cut, read["a"][0], read["b"][0], read["opening"])
            read["a"], read["b"] = read["b"], read["a"]
        wide = read["width"] or read["allowance"] * 0.625
        read |= {"width": wide, "trim": read["trim"] or wide / 2}
        return cls(**read | {"lap": read["a"][0].piece, "press": read["b"][0].piece})

    @property
    def same(self) -> str:
        """The end of a key where a piece is sewn to itself."""
        return "_same_piece" if self._names()[0] == self._names()[1] else ""

    @property
    def most(self) -> float:
        """mm to which the lower allowance may be trimmed at most."""
        return self.width - FELL_EDGE

    @property
    def turned(self) -> float:
        """mm of the upper allowance that are folded under."""
        return max(self.allowance - self.width, 0.0)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = (shown(pattern, row[0], side_of(self.half)) for row in (self.a, self.b))
        inside: Face = "wrong" if self.outside else "right"
        up: Face = "right" if self.outside else "wrong"
        row = Row(a, gap=self.opening)
        sewn = replace(row, ink="old")
        before = together(b, a, row, facing=inside, section=section.superimposed(), pins=(a,), stage="first")
        stop = None if self.opening is None else gap_along(pattern, a, b, self.opening)
        fell = Row(b, inset=self.width - FELL_EDGE, gap=stop)
        trimmed = together(b, a, sewn, facing=inside, section=shapes.felled_trimmed(), stage="second", once=True)
        layers = (replace(trimmed.layers[0], trimmed=((b, self.trim),)), trimmed.layers[1])
        after = opened(b, a, sewn, fell, up=up, arrows=((b, "in"),), section=shapes.felled())
        return (
            before,
            *((self.opening_scene(pattern, a, sewn),) if self.is_open else ()),
            replace(trimmed, layers=layers),
            after if self.is_open else over_to_one_side(after, b, b.piece, self.width),
        )


@operation
class LappedSeam(OpenSeam):
    """`over` is turned under and laid on `under`, stitched near its fold. `turned=False` for cloth that does not
    fray. `finish` is that of the raw edges inside.

    Example::

        make.lapped_seam(back.shoulder, front.shoulder, allowance=1.5 * cm)
    """

    # a is turned under at its stitch line, so that the stitch lines meet; not turned, a second row holds the other edge
    kind = "lapped_seam"
    seam_class = "2"
    tools = ("machine", "pins", "iron")
    stages = (
        Stage("fold", ("turn",), sews=False, when=lambda seam: seam.turned),
        replace(OPENED, says=(left_open, *OPENED.says), when=lambda seam: seam.turned and seam.is_open),
        Stage(
            "stitch",
            (
                Say("lay", lambda seam: seam.turned, "lay_raw"),
                matched,
                Say("stitch", lambda seam: seam.turned, "stitch_raw"),
                lambda seam, pattern: () if seam.turned else left_open(seam, pattern),
                Say(AGAIN.key, lambda seam: seam.turned and seam.is_open),
                Say("finish", lambda seam: seam.turned and seam.finish != "none"),
            ),
            joins=True,
            work=2.0,
        ),
    )
    lastly = (both_open("a", "b"),)
    rules = (
        *WITHIN,
        *not_basted(),
        Rule(
            Suits(
                lambda seam: seam.edgestitch < seam.allowance, of="a", by=lambda seam: seam.edgestitch - seam.allowance
            ),
            "lapped_row",
        ),
    )

    a: tuple[Run, ...] = meets("b", argument="over", closes="sewn", takes="allowance", fills={"edge": "place"})
    b: tuple[Run, ...] = meets("a", argument="under", closes="sewn", takes="allowance", fills={"other": "place"})
    allowance: float = width()
    edgestitch: float = width(default=2 * mm, fills={"row": "allowance"})
    turned: bool = flag(default=True)
    finish: str = word(FINISHES, default="zigzag", fills={"": "word.finish"})
    press: str = read_by(lambda given, asked, name: asked.read["a"][0].piece, "", way="none", held="")
    ease: float = eased()

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        """Cloth that does not fray needs nothing at the opening where its edges stay raw."""
        found = super().closes(pattern)
        return (
            found
            if self.turned
            else tuple(replace(each, how="finished") if each.how == "hemmed" else each for each in found)
        )

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = (shown(pattern, row[0], side_of(self.half)) for row in (self.a, self.b))
        shape = shapes.lapped() if self.turned else shapes.lapped_raw()
        rows: tuple[Row, ...] = (Row(a, inset=self.edgestitch, gap=self.opening),)
        if not self.turned:
            raw = self.allowance - self.edgestitch
            rows = (Row(a, inset=-raw, gap=self.opening), Row(a, inset=raw, gap=self.opening))
        last = opened(b, a, *rows, up="right", section=shape)
        left = (self.opening_scene(pattern, b),) if self.is_open else ()
        return (turned_up(a, self.allowance, stage="fold"), *left, last) if self.turned else (last,)
