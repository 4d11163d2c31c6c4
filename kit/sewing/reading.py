"""Reading what a sewing step writes: runs, pieces, strips, marks, words and widths, with plain refusals.

Arguments are checked here, where the teacher wrote them. Whether the order makes sense is for `kit.sewing.state`
and `kit.proof`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from kit.diagnostic import measured, message, titled, within
from kit.errors import KitError, near
from kit.piece.piece import Mark, Piece, Strip, named
from kit.sewing.handle import PieceHandle, StripHandle, piece_of
from kit.sewing.marked import MarkEnd, Notched, Place
from kit.sewing.named import placed
from kit.sewing.run import At, Chain, Run, place_on
from kit.sewing.spans import along, follows, reach, run_length, sides_of
from kit.units import Size, length

Runs = Run | Chain | Sequence[Run | Chain]
Opening = Mark | Place | Run | tuple[At, At]
"""A part of a seam left open: a mark on it, a part of its first edge, or where it starts and ends along that."""
FINISHES = ("zigzag", "overlock", "pinked", "none")
WIDEST_ALLOWANCE = 100.0  # mm
DEEPEST_HEM = 300.0  # mm
_SLACK = 0.5  # mm a place may overshoot its run before it is refused


@dataclass(frozen=True)
class CutPieces:
    """The pieces and strips a sewing step may name."""

    pieces: tuple[Piece, ...]
    strips: tuple[Strip, ...]

    def piece(self, name: str) -> Piece:
        return named(self.pieces, name, "piece")

    def strip(self, name: str) -> Strip:
        return named(self.strips, name, "strip")


class Reader:
    """Reads the arguments of an operation; `cut` holds the pieces and strips it may name, `sewn` the operations
    written so far, here and in earlier steps."""

    def __init__(self, pieces: Sequence[Piece], strips: Sequence[Strip] = (), sewn: Sequence[Any] = ()) -> None:
        self.cut = CutPieces(tuple(pieces), tuple(strips))
        self.sewn = list(sewn)

    def runs(self, given: object, where: str, empty: bool = False) -> tuple[Run, ...]:
        found: list[Run] = []

        def gather(value: object) -> None:
            if isinstance(value, Run):
                follows(self.cut, value)
                found.append(value)
            elif isinstance(value, Chain):
                gather(value.one_by_one())
            elif isinstance(value, list | tuple):
                for inner in value:
                    gather(inner)
            elif isinstance(value, PieceHandle):
                piece, _ = piece_of(value)
                names = ", ".join(edge.name for edge in piece.edges)
                raise KitError(
                    f"{piece.title} is a whole piece, and an edge is wanted.", where=where, do=f"Its edges are {names}."
                )
            elif isinstance(value, Place | MarkEnd | Notched):
                raise KitError(
                    f"{value.said} is a mark, and an edge is wanted.",
                    where=where,
                    do="Name an edge, or a part of it: front.side.after(front.tie).",
                )
            else:
                raise KitError(f"{value!r} is not an edge.", where=where, do="Name edges as front.side or back.hem.")

        gather(given)
        if not found and not empty:
            raise KitError("no edge is named.", where=where, do="Name at least one, such as front.side.")
        return tuple(found)

    def pair(self, a: Runs, b: Runs, where: str) -> tuple[tuple[Run, ...], tuple[Run, ...]]:
        first, second = self.runs(a, where), self.runs(b, where)
        if first == second:
            if len(first) == 1 and self.cut.piece(first[0].piece).cut.mirrored and first[0].side is None:
                return (replace(first[0], side="left"),), (replace(second[0], side="right"),)
            raise KitError(
                f"{first[0].said} is sewn to itself.",
                where=where,
                do="Name the two edges that meet, or front.left and front.right for the halves of a pair.",
            )
        for run, others in [(run, second) for run in first] + [(run, first) for run in second]:
            for other in others:
                whole = self.cut.piece(run.piece).sides
                theirs = self.cut.piece(other.piece).sides
                row = first if run in first else second
                both = {each.side for each in row if each.piece == run.piece} >= {"left", "right"}
                if run.side and not both and other.side is None and len(theirs) == 2 and len(whole) == 2:
                    raise KitError(
                        f"{run.said} is one side only, but {other.said} means both.",
                        where=where,
                        do="Write " + " + ".join(f"{other.piece}.{run.side}.{edge}" for edge in other.edges) + ".",
                    )
        return first, second

    def pressing(self, press: object, runs: tuple[Run, ...], where: str, *more: str) -> str:
        """How a seam is pressed: open, to one side, towards one of its pieces; `more` words a seam may allow."""
        pieces = list(dict.fromkeys(run.piece for run in runs))
        if isinstance(press, PieceHandle):  # the piece itself, as make.press is told it
            press = piece_of(press)[0].name
        return read_word(press, ("open", "one side", *more, *pieces), "press", where)

    def opening(
        self, opening: Opening | None, a: tuple[Run, ...], b: tuple[Run, ...], where: str
    ) -> tuple[float, float] | None:
        if opening is None:
            return None
        where = f"{where}, opening"
        if len(a) != 1 or len(b) != 1:
            raise KitError(
                "an opening is left in a seam of one piece to one piece.", where=where, do="Sew the runs one by one."
            )
        if isinstance(opening, Mark | Place):
            mark = opening.mark if isinstance(opening, Place) else opening
            if not mark.edge:
                raise KitError(
                    f"the mark '{mark.label}' lies on no edge.", where=where, do="Mark it on the seam's edge."
                )
            ends = sorted(along(self.cut, a[0], mark.edge, float(place)) for place in (mark.start, mark.end))
        elif isinstance(opening, tuple) and len(opening) == 2:
            ends = [self._on_seam(a[0], place, where) for place in opening]
        elif isinstance(opening, Run) and (opening.piece, opening.edges) == (a[0].piece, a[0].edges):
            ends = [place - (a[0].start or 0.0) for place in reach(self.cut, opening)]
        else:
            raise KitError(
                f"{opening.said if isinstance(opening, Run) else repr(opening)} is not an opening.",
                where=where,
                do="Give a mark, a part of the first edge, or (start, end) along the first run.",
            )
        start, end = ends
        size = run_length(self.cut, a[0])
        if not -0.5 <= start < end <= size + 0.5:
            raise KitError(
                message("refusal.opening_off_seam", start=measured(start), end=measured(end), length=measured(size)),
                where=within(in_call(where), message("refusal.here", place=placed(self.cut, a[0]))),
                do=message("refusal.opening_off_seam_do"),
            )
        if (
            any(len(sides_of(self.cut, run)) == 2 and run.side is None for run in a)
            and start <= 0.5
            and end >= size - 0.5
        ):
            raise KitError(
                message("refusal.opening_whole"), where=in_call(where), do=message("refusal.opening_whole_do")
            )
        return (max(start, 0.0), min(end, size))

    def _on_seam(self, run: Run, place: At, where: str) -> float:
        if isinstance(place, Place | MarkEnd | Notched | Run):
            return place_on(run, place, where) - (run.start or 0.0)
        return float(length(place, where))

    def spot(self, to: Run | Chain | Place, at: At | None, where: str) -> tuple[Run, float, str]:
        """(run, mm along it, how it is said) of a place on a run: its "start" or "end", a length along it, a landmark
        on it; or a mark by itself, and of one that spans a stretch a place on that."""
        if isinstance(to, Place):
            edge, distance = self.mark_on_edge(to, where)
            along_it = self._on_mark(to, at, where)
            said = "mark" if at is None or along_it is None else "along"
            return Run(to.piece, (edge,), to.side), distance + (along_it or 0.0), said
        if at is None:
            raise KitError(message("refusal.at_missing"), where=in_call(where), do=message("refusal.at_missing_do"))
        line: Run | Chain = to if isinstance(to, Chain) else self.runs((to,), where)[0]
        size = sum(run_length(self.cut, run) for run in (line.runs if isinstance(line, Chain) else (line,)))
        if isinstance(at, str) and at in ("start", "end"):
            return *self._along(line, 0.0 if at == "start" else size), at
        if isinstance(at, str) and not any(sign.isdigit() for sign in at):
            raise KitError(
                f"'{at}' is not a place on a run.",
                where=where,
                do='Write "start", "end", a length along it or a mark on it.',
            )
        if isinstance(at, Place | MarkEnd | Notched | Run):
            place = place_on(line, at, where) - _begins(line)
        else:
            place = float(length(at, f"{where}, place"))
        if not -_SLACK <= place <= size + _SLACK:
            raise KitError(
                message("refusal.off_run", at=measured(place), place=placed(self.cut, line), length=measured(size)),
                where=in_call(where),
                do=message("refusal.from_start_do"),
            )
        return *self._along(line, min(max(place, 0.0), size)), "along"

    def _on_mark(self, to: Place, at: At | None, where: str) -> float | None:
        """mm from the first end of a mark to a place named beside it; None for the mark itself, where it is one place.
        `KitError` for a place that the mark does not have."""
        mark = to.mark
        long = mark.end - mark.start if mark.edge and mark.kind == "opening" else 0.0
        if at is None or (isinstance(at, str) and at in ("start", "end")):
            return None if not long else long if at == "end" else 0.0
        if isinstance(at, MarkEnd) and at.place == to:
            return float(at) - mark.start
        if isinstance(at, Place | MarkEnd | Notched | Run):
            raise KitError(
                f"{to.said} is one place, and {at.said} beside it another.",
                where=where,
                do="Leave out at=, or name the edge instead of the mark.",
            )
        place = float(length(at, f"{where}, place"))
        if long and -_SLACK <= place <= long + _SLACK:
            return min(max(place, 0.0), long)
        if abs(place) <= _SLACK:
            return None
        key = "at_past_mark" if long else "at_beside_mark"
        values = {"at": measured(place), "mark": titled(mark.label)}
        raise KitError(
            message(f"refusal.{key}", **values, **({"length": measured(long)} if long else {})),
            where=in_call(where),
            do=message("refusal.at_beside_mark_do"),
        )

    def _along(self, line: Run | Chain, place: float) -> tuple[Run, float]:
        return line.at(place) if isinstance(line, Chain) else (line, place)

    def mark_on_edge(self, place: Place, where: str) -> tuple[str, float]:
        """(edge, mm along it) of a mark; a point drawn on the piece counts where it lies on an edge."""
        if place.edge:
            return place.edge, float(place.start)
        point = place.mark.point
        if point is not None:
            for edge in self.cut.piece(place.piece).edges:
                if edge.path.distance_to(point) <= 1.0:
                    return edge.name, float(edge.path.nearest(point))
        raise KitError(
            f"the mark '{place.mark.label}' lies on no edge.", where=where, do="Mark it on an edge, or name the edge."
        )

    def piece(self, given: object, where: str) -> str:
        if isinstance(given, PieceHandle):
            return piece_of(given)[0].name
        raise KitError(f"{given!r} is not a piece.", where=where, do="Name whole pieces, such as front_facing.")

    def strip(self, given: object, where: str) -> str:
        if isinstance(given, StripHandle):
            return given.name
        raise KitError(f"{given!r} is not a strip.", where=where, do="Name a strip, such as tie.")


def _begins(line: Run | Chain) -> float:
    """Where a part begins on its line, mm along it."""
    if isinstance(line, Run):
        return line.start or 0.0
    return 0.0 if line.stretch is None else line.stretch.low


def opening_run(reader: Reader, given: Run | Place, where: str) -> Run:
    """A run from an opening mark, or a run as it is."""
    if isinstance(given, Place):
        mark = given.mark
        if mark.kind != "opening" or not mark.edge:
            raise KitError(f"{given.said} is no opening.", where=where, do="Name an opening marked on an edge.")
        return Run(given.piece, (mark.edge,), given.side, float(mark.start), float(mark.end))
    (run, *more) = reader.runs(given, where)
    if more:
        raise KitError("several edges are named.", where=where, do="Name one edge, a part of it or an opening mark.")
    return run


def marks(given: Sequence[object], where: str, empty: bool = False) -> tuple[Place, ...]:
    """Marks, also in lists."""
    found: list[Place] = []
    for each in given:
        if isinstance(each, list | tuple):
            found += marks(each, where, empty=True)
        elif isinstance(each, Place):
            found.append(each)
        else:
            raise KitError(f"{each!r} is not a mark.", where=where, do="Name marks of a piece, as front.left.button_1.")
    if not found and not empty:
        raise KitError("no mark is named.", where=where, do="Name at least one, as front.left.button_1.")
    return tuple(found)


def mark_label(opening: Opening | None) -> str:
    if isinstance(opening, Place):
        return opening.mark.label
    return opening.label if isinstance(opening, Mark) else ""


def read_word(given: object, known: Sequence[str], name: str, where: str, do: str = "") -> str:
    """One of the words known. `KitError` with the nearest of them, or with what to `do`, for anything else."""
    if isinstance(given, str) and given in known:
        return given
    raise KitError(f"{name} is {given!r}.", where=where, do=do or near(str(given), known))


def read_whole(given: object) -> int | None:
    """A whole number as an author writes it, or as a lesson's count hands it on; None for anything else.

    >>> read_whole(3), read_whole(3.0), read_whole(2.5), read_whole(True)
    (3, 3, None, None)
    """
    if isinstance(given, bool) or not isinstance(given, int | float) or not float(given).is_integer():
        return None
    return int(given)


def in_call(where: str) -> str:
    """A place in a sewing step as it is written: "belt loop, at" is make.belt_loop(at=...)."""
    verb, _, argument = where.partition(", ")
    return f"make.{verb.replace(' ', '_').lower()}({f'{argument}=' if argument.isidentifier() else ''}...)"


def read_size(given: Size, where: str, most: float = WIDEST_ALLOWANCE) -> float:
    """A length that may be zero."""
    value = float(length(given, where))
    if value < 0:
        raise KitError(
            message("refusal.below_zero", value=measured(value)),
            where=in_call(where),
            do=message("refusal.not_negative_do"),
        )
    if value > most:
        raise KitError(
            message("refusal.too_wide", value=measured(value), most=measured(most)),
            where=in_call(where),
            do=message("refusal.unit_mm_do"),
        )
    return value


def read_width(given: Size, where: str, most: float = WIDEST_ALLOWANCE) -> float:
    """A length above zero."""
    value = read_size(given, where, most)
    if value == 0:
        raise KitError(message("refusal.zero"), where=in_call(where), do=message("refusal.zero_do"))
    return value
