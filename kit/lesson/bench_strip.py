"""Strips on the bench: ties, loops, bands and bindings, cut from a length and a width without a paper piece.

A strip's verbs are told what it measures when sewn and work out what is cut, or the other way round; `kit.piece.strips`
has the arithmetic.
A strip across the cloth or on the bias that is longer than the cloth allows is pieced.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import NamedTuple, cast, get_args

from kit.diagnostic import measured, message
from kit.errors import KitError, near
from kit.lesson.headings import distance
from kit.piece import strips
from kit.piece.piece import Cloth, GrainKind, Strip, StripFold
from kit.piece.strips import Join
from kit.sewing.call import answering
from kit.units import Size, mm

GRAINS: tuple[str, ...] = get_args(GrainKind)
CLOTHS: tuple[str, ...] = get_args(Cloth)
STRAIGHT_JOIN, BIAS_JOIN = 10.0, 6.0
"""Allowance of a join where nothing is said; common practice, no source."""


class _Given(NamedTuple):
    """What is said of a strip's size: each of the two finished, or as cut."""

    finished_length: Size | None
    finished_width: Size | None
    cut_length: Size | None
    cut_width: Size | None


@answering
class BenchStrip:
    """A strip being worked out: cut without a paper piece, from a length and a width. `cloth_widths` (mm) are those
    the lesson names; the narrowest decides what must be pieced."""

    def __init__(self, name: str, title: str, cloth_widths: Sequence[float] = ()) -> None:
        self.strip = Strip(name, title, 0.0, 0.0, 0)
        self._cloth = min(cloth_widths, default=0.0)
        self._longest = 0.0
        self._allowance: float | None = None
        self._how: Join | None = None
        self._square = False

    @property
    def _where(self) -> str:
        return self.strip.title

    # ---- how it is made -------------------------------------------------------------------------------

    def fold_in_four(
        self,
        *,
        finished_length: Size | None = None,
        finished_width: Size | None = None,
        cut_length: Size | None = None,
        cut_width: Size | None = None,
        ends: Size = 0,
        count: int = 1,
        title: str = "",
        grain: str = "lengthwise",
        cloth: str = "main",
    ) -> None:
        """A strip folded lengthwise into four: it finishes at a quarter of its cut width (common practice, no
        source). `ends` is added at each short end. Its length and its width are each given finished or as cut
        (`cut_length`, `cut_width`), here and in the verbs below.

        Example::

            tie.fold_in_four(finished_length=50 * cm, finished_width=12 * mm, count=2)
        """
        given = _Given(finished_length, finished_width, cut_length, cut_width)
        extra = self._ends(ends)
        self._cut("in_four", given, lambda long: long + 2 * extra, strips.in_four, count, title, grain, cloth)

    def fold_in_two(
        self,
        *,
        finished_length: Size | None = None,
        finished_width: Size | None = None,
        cut_length: Size | None = None,
        cut_width: Size | None = None,
        allowance: Size,
        ends: Size = 0,
        count: int = 1,
        title: str = "",
        grain: str = "lengthwise",
        cloth: str = "main",
    ) -> None:
        """A strip folded lengthwise, seamed and turned: it finishes at half its cut width less the allowance (common
        practice, no source). `ends` is added at each short end.

        Example::

            tie.fold_in_two(finished_length=90 * cm, finished_width=2 * cm, allowance=6 * mm)
        """
        given = _Given(finished_length, finished_width, cut_length, cut_width)
        seam, extra = self._seam(allowance), self._ends(ends)
        self._cut(
            "in_two",
            given,
            lambda long: long + 2 * extra,
            lambda wide: strips.in_two(wide, seam),
            count,
            title,
            grain,
            cloth,
        )

    def hemmed(
        self,
        *,
        finished_length: Size | None = None,
        finished_width: Size | None = None,
        cut_length: Size | None = None,
        cut_width: Size | None = None,
        turn: Size = 5 * mm,
        ends: Size | None = None,
        count: int = 1,
        title: str = "",
        grain: str = "lengthwise",
        cloth: str = "main",
    ) -> None:
        """A strip of a single layer, narrow-hemmed along its edges: two equal turns of `turn` are added at each long
        edge, and at each short end unless `ends` says what is added there (common practice, no source).

        Example::

            tie.hemmed(cut_length=100 * cm, cut_width=10 * cm, turn=5 * mm)
        """
        given = _Given(finished_length, finished_width, cut_length, cut_width)
        fold = float(distance(turn, f"{self._where}, turn"))
        if fold <= 0:
            raise KitError("its hem has no turn.", where=self._where, do="Say, for example, turn=5 * mm.")
        extra = 2 * fold if ends is None else self._ends(ends)
        self._cut(
            "hemmed",
            given,
            lambda long: long + 2 * extra,
            lambda wide: strips.hemmed(wide, fold),
            count,
            title,
            grain,
            cloth,
        )

    def band(
        self,
        *,
        finished_length: Size | None = None,
        finished_width: Size | None = None,
        cut_length: Size | None = None,
        cut_width: Size | None = None,
        allowance: Size,
        overlap: Size = 0,
        count: int = 1,
        title: str = "",
        grain: str = "lengthwise",
        cloth: str = "main",
    ) -> None:
        """A band folded lengthwise, such as a belt: twice its finished width and its finished length, with the
        allowance all round. `overlap` is the part of the length that laps over to fasten, added to it (common
        practice, no source). A waistband, cuff or neckband is set on by its edge, and a strip has none: draw that as a
        piece.

        Example::

            tie.band(finished_length=72 * cm, finished_width=3 * cm, allowance=1 * cm, overlap=3 * cm)
        """
        given = _Given(finished_length, finished_width, cut_length, cut_width)
        seam, lap = self._seam(allowance), float(distance(overlap, f"{self._where}, overlap"))
        self._cut(
            "band",
            given,
            lambda long: strips.band(long, 0.0, seam, lap)[0],
            lambda wide: strips.band(0.0, wide, seam)[1],
            count,
            title,
            grain,
            cloth,
            lap,
        )

    def bind(
        self,
        *,
        finished_length: Size | None = None,
        finished_width: Size | None = None,
        cut_length: Size | None = None,
        cut_width: Size | None = None,
        double: bool = False,
        ends: Size = 0,
        count: int = 1,
        title: str = "",
        grain: str = "bias",
        cloth: str = "main",
    ) -> None:
        """A binding for an edge `finished_length` long, cut on the bias: four times as wide as it shows, six times when
        `double` (folded in two before it is sewn on). Common practice, no source. `ends` is added at each short
        end.

        Example::

            tie.bind(finished_length=60 * cm, finished_width=1 * cm)
        """
        given = _Given(finished_length, finished_width, cut_length, cut_width)
        fold: StripFold = "double_binding" if double else "single_binding"
        extra = self._ends(ends)
        self._cut(
            fold,
            given,
            lambda long: long + 2 * extra,
            lambda wide: strips.binding(wide, double),
            count,
            title,
            grain,
            cloth,
        )

    # ---- how a long one is got ------------------------------------------------------------------------

    def join(self, *, longest: Size | None = None, allowance: Size | None = None, how: str = "") -> None:
        """Piece the strip from lengths no longer than `longest` as cut (when nothing is said, what the lesson's
        narrowest cloth gives across or on the bias), joined "straight" or on the "diagonal" with this allowance.

        Example::

            tie.fold_in_two(finished_length=180 * cm, finished_width=3 * cm, allowance=1 * cm)
            tie.join(longest=100 * cm, how="straight")
        """
        if longest is not None:
            self._longest = float(distance(longest, f"{self._where}, longest piece"))
            if self._longest <= 0:
                raise KitError("pieces need a length.", where=self._where, do="Say, for example, longest=100 * cm.")
        if allowance is not None:
            self._allowance = float(distance(allowance, f"{self._where}, allowance of the joins"))
        if how:
            if how not in get_args(Join):
                raise KitError(f"strips are not joined '{how}'.", where=self._where, do=near(how, get_args(Join)))
            self._how = cast("Join", how)

    def from_square(self, *, allowance: Size | None = None) -> None:
        """Cut the strip as one continuous bias from a square sewn into a tube with seams of this allowance; the square
        is just large enough for all of them.

        Example::

            tie.bind(finished_length=240 * cm, finished_width=1 * cm)
            tie.from_square(allowance=6 * mm)
        """
        self.join(allowance=allowance)
        self._square = True

    # ---- the end of the step --------------------------------------------------------------------------

    def worn_loose(self) -> None:
        """The strip is made, but sewn to nothing: a belt, a hair ribbon.

        Example::

            tie.fold_in_two(finished_length=150 * cm, finished_width=3 * cm, allowance=1 * cm)
            tie.worn_loose()
        """
        self.strip = replace(self.strip, loose=True)

    def freeze(self) -> Strip:
        """The strip as an immutable value; `KitError` when the step never gave its size, or it cannot be pieced."""
        made = self.strip
        if made.count == 0:
            raise KitError("its size was never given.", where=self._where, do="Say, for example, fold_in_four(...).")
        bias = made.grain == "bias"
        allowance = self._allowance if self._allowance is not None else BIAS_JOIN if bias else STRAIGHT_JOIN
        if self._square:
            if not bias:
                raise KitError(
                    f"a square gives strips on the bias; this one is cut {made.grain}.",
                    where=self._where,
                    do='Say grain="bias", or leave from_square out.',
                )
            # The lengths are cut from one strip, so they are added up.
            side = strips.square_for_bias(made.length * made.count, made.width, allowance)
            # To whole centimetres, with a millimetre to spare for what rounding to sixteenths of an inch takes.
            square = math.ceil((side + 1.0) / 10.0) * 10.0
            return replace(made, join="diagonal", join_allowance=allowance, square=square)
        longest = self._longest or self._cloth_gives(made.grain)
        if not longest or made.length <= longest:
            return made
        how: Join = self._how or ("diagonal" if bias else "straight")
        cost = strips.join_cost(how, allowance, made.width, bias)
        found = strips.pieced(made.length, longest, cost, self._where)
        return replace(made, joins=found.joins, each=found.each, join=how, join_allowance=allowance)

    def _cloth_gives(self, grain: GrainKind) -> float:
        if not self._cloth or grain == "lengthwise":
            return 0.0
        return strips.bias_across(self._cloth) if grain == "bias" else self._cloth - 2 * strips.SELVEDGE

    # ---- what is given --------------------------------------------------------------------------------

    def _ends(self, ends: Size) -> float:
        return float(distance(ends, f"{self._where}, ends"))

    def _size(self, what: str, finished: Size | None, cut: Size | None, cut_of: Callable[[float], float]) -> float:
        """The finished size, as it is given or worked back from the size as cut."""
        if finished is not None and cut is None:
            return float(distance(finished, f"{self._where}, finished {what}"))
        if finished is not None or cut is None:
            raise KitError(
                f"its {what} is {'not given' if cut is None else 'given twice'}.",
                where=self._where,
                do=f"Say what it measures finished, or as cut: finished_{what}=... or cut_{what}=....",
            )
        return strips.finished_from(float(distance(cut, f"{self._where}, {what} as cut")), cut_of)

    def _seam(self, allowance: Size) -> float:
        seam = distance(allowance, f"{self._where}, allowance")
        if seam <= 0:
            raise KitError("its seam has no allowance.", where=self._where, do="Say, for example, allowance=1 * cm.")
        return float(seam)

    def _cut(
        self,
        fold: StripFold,
        given: _Given,
        long_cut: Callable[[float], float],
        wide_cut: Callable[[float], float],
        count: int,
        title: str,
        grain: str,
        cloth: str,
        lap: float = 0.0,
    ) -> None:
        """The strip of these sizes; `long_cut` and `wide_cut` give the cut size of a finished one, `lap` is what of the
        finished length laps over."""
        long = self._size("length", given.finished_length, given.cut_length, long_cut)
        wide = self._size("width", given.finished_width, given.cut_width, wide_cut)
        if long <= 0 or wide <= 0:
            raise KitError(
                message("refusal.strip_size", length=measured(long), width=measured(wide)),
                where=self._where,
                do=message("refusal.strip_nothing_do"),
            )
        if count < 1:
            raise KitError(f"{count} cannot be cut.", where=self._where, do="Cut at least one.")
        if grain not in GRAINS:
            raise KitError(f"'{grain}' is not a grain of the cloth.", where=self._where, do=near(grain, GRAINS))
        if cloth not in CLOTHS:
            raise KitError(f"'{cloth}' is not a cloth of the pattern.", where=self._where, do=near(cloth, CLOTHS))
        self.strip = replace(
            self.strip,
            title=title or self.strip.title,
            length=long_cut(long),
            width=wide_cut(wide),
            count=count,
            finished_length=long + lap,
            finished_width=wide,
            fold=fold,
            grain=cast("GrainKind", grain),
            cloth=cast("Cloth", cloth),
        )
