"""`make`: what a sewing step writes with. Each method is one operation, named as the trade says it.

Arguments are checked here, where the teacher wrote them: bare numbers, unknown words, edges of the wrong
piece. Whether the order makes sense is for `kit.sewing.state` and `kit.proof`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from kit.errors import KitError, near
from kit.piece.piece import Mark, Piece, Strip, named
from kit.sewing.operation import Operation
from kit.sewing.operations import (
    AttachFacing,
    AttachStrip,
    BeltLoop,
    EdgeFinish,
    FaceWithInterfacing,
    FoldStrip,
    FrenchSeam,
    Fuse,
    Hem,
    PlainSeam,
    Staystitch,
    Topstitch,
    TryOn,
    TurnStrip,
    Understitch,
)
from kit.sewing.run import PieceHandle, Place, Run, StripHandle, piece_of
from kit.sewing.walk import along, follows, run_length, sides_of
from kit.units import Length, both, length

Runs = Run | Sequence[Run]
FINISHES = ("zigzag", "overlock", "pinked", "none")
WIDEST_ALLOWANCE = 100.0  # mm
DEEPEST_HEM = 300.0  # mm


@dataclass(frozen=True)
class CutPieces:
    """The pieces and strips a sewing step may name."""

    pieces: tuple[Piece, ...]
    strips: tuple[Strip, ...]

    def piece(self, name: str) -> Piece:
        return named(self.pieces, name, "piece")

    def strip(self, name: str) -> Strip:
        return named(self.strips, name, "strip")


class Make:
    """Records sewing operations in the order they are written. `operations` is the record."""

    def __init__(self, pieces: Sequence[Piece], strips: Sequence[Strip] = ()) -> None:
        self._cut = CutPieces(tuple(pieces), tuple(strips))
        self._operations: list[Operation] = []

    @property
    def operations(self) -> tuple[Operation, ...]:
        return tuple(self._operations)

    # ---- interfacing and facings ----------------------------------------------------------------------

    def fuse(self, *pieces: PieceHandle) -> None:
        """Fuse interfacing onto the wrong side of whole pieces."""
        names = tuple(self._piece(piece, "fuse") for piece in pieces)
        if not names:
            raise KitError("fuse has no piece.", do="Name the pieces: make.fuse(front_facing, back_facing).")
        self._operations.append(Fuse(pieces=names))

    def face_with_interfacing(self, *outer: Runs, allowance: object, clip: bool = True) -> None:
        """Finish the outer edges of facings with their own interfacing: seamed, turned, fused."""
        where = "face with interfacing"
        self._operations.append(
            FaceWithInterfacing(
                outer=self._runs(outer, where), allowance=_width(allowance, f"{where}, allowance"), clip=clip
            )
        )

    def attach_facing(
        self, facing: Runs, to: Runs, *, allowance: object, clip: bool = True, grade: bool = True, ease: object = 0
    ) -> None:
        """Sew facing runs to garment runs right sides together and turn the facing in."""
        where = "attach facing"
        a, b = self._pair(facing, to, where)
        self._operations.append(
            AttachFacing(
                a=a,
                b=b,
                allowance=_width(allowance, f"{where}, allowance"),
                clip=clip,
                grade=grade,
                ease=_size(ease, f"{where}, ease"),
            )
        )

    def understitch(self, *along: Runs, distance: object = Length(2.0)) -> None:
        """A row on the facing beside its seam."""
        where = "understitch"
        self._operations.append(
            Understitch(along=self._runs(along, where), distance=_width(distance, f"{where}, distance"))
        )

    # ---- seams ----------------------------------------------------------------------------------------

    def plain_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: object,
        press: str = "open",
        finish: str = "zigzag",
        opening: Mark | Place | tuple[object, object] | None = None,
        ease: object = 0,
    ) -> None:
        """One row, right sides together. `opening` is a mark on the seam, or (start, end) along `a`."""
        where = "plain seam"
        first, second = self._pair(a, b, where)
        self._operations.append(
            PlainSeam(
                a=first,
                b=second,
                allowance=_width(allowance, f"{where}, allowance"),
                press=self._press(press, first + second, where),
                finish=_word(finish, FINISHES, "finish", where),
                opening=self._opening(opening, first, second, where),
                mark=_mark_label(opening),
                ease=_size(ease, f"{where}, ease"),
            )
        )

    def french_seam(
        self, a: Runs, b: Runs, *, first: object, second: object, press: str = "one side", ease: object = 0
    ) -> None:
        """Two rows: `first` from the edge wrong sides together, `second` from the crease right sides together."""
        where = "French seam"
        one, other = self._pair(a, b, where)
        if press == "open":
            raise KitError(
                "a French seam cannot be pressed open: its edges are shut in.",
                where=where,
                do='Write press="one side" or the name of one of its pieces.',
            )
        self._operations.append(
            FrenchSeam(
                a=one,
                b=other,
                first=_width(first, f"{where}, first row"),
                second=_width(second, f"{where}, second row"),
                press=self._press(press, one + other, where),
                ease=_size(ease, f"{where}, ease"),
            )
        )

    # ---- strips ---------------------------------------------------------------------------------------

    def fold_strip(self, strip: StripHandle, *, edgestitch: object = Length(2.0), ends: object = Length(10.0)) -> None:
        """Make a strip folded in four and edgestitched."""
        where = "fold strip"
        name = self._strip(strip, where)
        if self._cut.strip(name).fold != "in_four":
            raise KitError(
                "it is cut to be folded in two, not in four.",
                where=self._cut.strip(name).title,
                do="Write make.turn_strip(...) for it, or cut it to be folded in four.",
            )
        self._operations.append(
            FoldStrip(
                name=name,
                edgestitch=_width(edgestitch, f"{where}, edgestitch"),
                ends=_size(ends, f"{where}, ends"),
            )
        )

    def turn_strip(self, strip: StripHandle, *, allowance: object, ends: object = 0) -> None:
        """Make a strip seamed right sides together and turned."""
        where = "turn strip"
        name = self._strip(strip, where)
        width = _width(allowance, f"{where}, allowance")
        found = self._cut.strip(name)
        if found.fold != "in_two":
            raise KitError(
                "it is cut to be folded in four, not in two.",
                where=found.title,
                do="Write make.fold_strip(...) for it, or cut it to be folded in two.",
            )
        if width >= found.width / 2:
            raise KitError(
                f"an allowance of {both(width)} leaves nothing of a strip cut {both(found.width)} wide.",
                where=found.title,
                do="Cut it wider, or take a narrower allowance.",
            )
        self._operations.append(TurnStrip(name=name, allowance=width, ends=_size(ends, f"{where}, ends")))

    def attach_strip(
        self,
        strip: StripHandle,
        to: Run | Place,
        *,
        at: object = "end",
        method: str = "stitched_on",
        lap: object = Length(10.0),
    ) -> None:
        """Fix a made strip to a run at its "start", its "end" or a length along it, or at a mark."""
        where = "attach strip"
        name = self._strip(strip, where)
        run, place, close = self._spot(to, at, where)
        self._operations.append(
            AttachStrip(
                name=name,
                to=run,
                at=place,
                method=_word(method, ("stitched_on", "caught"), "method", where),
                lap=_width(lap, f"{where}, lap"),
                near=close,
                mark=to.mark.label if isinstance(to, Place) else "",
                halves=len(sides_of(self._cut, run)),
            )
        )

    def belt_loop(self, strip: StripHandle, seam: Run, *, at: object, ends: object = Length(10.0)) -> None:
        """Stitch a made strip over a seam as a loop, its top end `at` along the seam."""
        where = "belt loop"
        name = self._strip(strip, where)
        run, place, _ = self._spot(seam, at, where)
        self._operations.append(
            BeltLoop(
                name=name,
                seam=run,
                at=place,
                ends=_size(ends, f"{where}, ends"),
                halves=len(sides_of(self._cut, run)),
            )
        )

    # ---- hems and finishes ----------------------------------------------------------------------------

    def hem(self, *edges: Runs, first: object, second: object = 0, catching: Runs = (), finish: str = "zigzag") -> None:
        """Turn an edge up: twice when `second` is given, else once with its raw edge finished."""
        where = "hem"
        self._operations.append(
            Hem(
                edges=self._runs(edges, where),
                first=_width(first, f"{where}, first turn", DEEPEST_HEM),
                second=_size(second, f"{where}, second turn", DEEPEST_HEM),
                catching=self._runs((catching,), where, empty=True),
                finish=_word(finish, FINISHES, "finish", where),
            )
        )

    def narrow_hem(self, *edges: Runs, turn: object = Length(5.0), catching: Runs = ()) -> None:
        """Two equal narrow turns."""
        where = "narrow hem"
        width = _width(turn, f"{where}, turn", 15.0)
        self._operations.append(
            Hem(
                edges=self._runs(edges, where),
                first=width,
                second=width,
                catching=self._runs((catching,), where, empty=True),
                narrow=True,
            )
        )

    def edge_finish(self, *edges: Runs, stitch: str = "zigzag", leave: bool = False) -> None:
        """Overcast raw edges. `leave=True`: that is all the edge gets."""
        where = "edge finish"
        self._operations.append(
            EdgeFinish(
                edges=self._runs(edges, where), stitch=_word(stitch, FINISHES[:3], "stitch", where), leave=bool(leave)
            )
        )

    def topstitch(self, *along: Runs, distance: object = Length(6.0), rows: int = 1) -> None:
        """Rows on the right side."""
        where = "topstitch"
        if isinstance(rows, bool) or not isinstance(rows, int) or not 1 <= rows <= 6:
            raise KitError(f"{rows!r} rows of topstitching.", where=where, do="Write a whole number from 1 to 6.")
        self._operations.append(
            Topstitch(along=self._runs(along, where), distance=_width(distance, f"{where}, distance"), rows=rows)
        )

    def staystitch(self, *along: Runs, distance: object = Length(3.0)) -> None:
        """A row in the allowance that keeps a curve from stretching."""
        where = "staystitch"
        self._operations.append(
            Staystitch(along=self._runs(along, where), distance=_width(distance, f"{where}, distance"))
        )

    def try_on(self, *places: Place, note: str = "") -> None:
        """Stop for a fitting and mark what is found."""
        for place in places:
            if not isinstance(place, Place):
                raise KitError(
                    f"{place!r} is not a mark on a piece.", where="try on", do="Name a mark: front.tie_place."
                )
        self._operations.append(TryOn(places=places, note=str(note)))

    # ---- reading the arguments ------------------------------------------------------------------------

    def _runs(self, given: object, where: str, empty: bool = False) -> tuple[Run, ...]:
        found: list[Run] = []

        def gather(value: object) -> None:
            if isinstance(value, Run):
                follows(self._cut, value)
                found.append(value)
            elif isinstance(value, list | tuple):
                for inner in value:
                    gather(inner)
            elif isinstance(value, PieceHandle):
                piece, _ = piece_of(value)
                names = ", ".join(edge.name for edge in piece.edges)
                raise KitError(
                    f"{piece.title} is a whole piece, and an edge is wanted.", where=where, do=f"Its edges are {names}."
                )
            elif isinstance(value, Place):
                raise KitError(f"{value.said} is a mark, and an edge is wanted.", where=where, do="Name an edge.")
            else:
                raise KitError(f"{value!r} is not an edge.", where=where, do="Name edges as front.side or back.hem.")

        gather(given)
        if not found and not empty:
            raise KitError("no edge is named.", where=where, do="Name at least one, such as front.side.")
        return tuple(found)

    def _pair(self, a: object, b: object, where: str) -> tuple[tuple[Run, ...], tuple[Run, ...]]:
        first, second = self._runs(a, where), self._runs(b, where)
        if first == second:
            if len(first) == 1 and self._cut.piece(first[0].piece).cut.mirrored and first[0].side is None:
                return (replace(first[0], side="left"),), (replace(second[0], side="right"),)
            raise KitError(
                f"{first[0].said} is sewn to itself.",
                where=where,
                do="Name the two edges that meet, or front.left and front.right for the halves of a pair.",
            )
        for run, others in [(run, second) for run in first] + [(run, first) for run in second]:
            for other in others:
                whole = self._cut.piece(run.piece).sides
                theirs = self._cut.piece(other.piece).sides
                if run.side and other.side is None and len(theirs) == 2 and len(whole) == 2:
                    raise KitError(
                        f"{run.said} is one side only, but {other.said} means both.",
                        where=where,
                        do=f"Write {other.piece}.{run.side}.{' + '.join(other.edges)}.",
                    )
        return first, second

    def _press(self, press: object, runs: tuple[Run, ...], where: str) -> str:
        pieces = list(dict.fromkeys(run.piece for run in runs))
        return _word(press, ("open", "one side", *pieces), "press", where)

    def _opening(
        self, opening: object, a: tuple[Run, ...], b: tuple[Run, ...], where: str
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
            ends = sorted(along(self._cut, a[0], mark.edge, float(place)) for place in (mark.start, mark.end))
        elif isinstance(opening, tuple) and len(opening) == 2:
            ends = [float(length(place, where)) for place in opening]
        else:
            raise KitError(
                f"{opening!r} is not an opening.", where=where, do="Give a mark, or (start, end) along the first run."
            )
        start, end = ends
        size = run_length(self._cut, a[0])
        if not -0.5 <= start < end <= size + 0.5:
            raise KitError(
                f"an opening from {both(start)} to {both(end)} does not lie on a seam {both(size)} long.",
                where=f"{where}, {a[0].said}",
                do="Give the nearer end first and keep both on the seam.",
            )
        if (
            any(len(sides_of(self._cut, run)) == 2 and run.side is None for run in a)
            and start <= 0.5
            and end >= size - 0.5
        ):
            raise KitError("the opening takes the whole seam.", where=where, do="Leave part of the seam to sew.")
        return (max(start, 0.0), min(end, size))

    def _spot(self, to: object, at: object, where: str) -> tuple[Run, float, str]:
        if isinstance(to, Place):
            edge, distance = self._mark_on_edge(to, where)
            return Run(to.piece, (edge,), to.side), distance, "mark"
        if not isinstance(to, Run):
            (run,) = self._runs((to,), where)[:1]
        else:
            run = to
        size = run_length(self._cut, run)
        if isinstance(at, str) and at in ("start", "end"):
            return run, 0.0 if at == "start" else size, at
        if isinstance(at, str) and not any(sign.isdigit() for sign in at):
            raise KitError(
                f"'{at}' is not a place on a run.", where=where, do='Write "start", "end" or a length along it.'
            )
        place = float(length(at, f"{where}, place"))
        if not 0 <= place <= size + 0.5:
            raise KitError(
                f"{both(place)} along {run.said} is off the edge, which is {both(size)} long.",
                where=where,
                do="Measure from the start of the run.",
            )
        return run, min(place, size), "along"

    def _mark_on_edge(self, place: Place, where: str) -> tuple[str, float]:
        """(edge, mm along it) of a mark; a point drawn on the piece counts where it lies on an edge."""
        if place.edge:
            return place.edge, float(place.start)
        point = place.mark.point
        if point is not None:
            for edge in self._cut.piece(place.piece).edges:
                if edge.path.distance_to(point) <= 1.0:
                    return edge.name, float(edge.path.nearest(point))
        raise KitError(
            f"the mark '{place.mark.label}' lies on no edge.", where=where, do="Mark it on an edge, or name the edge."
        )

    def _piece(self, given: object, where: str) -> str:
        if isinstance(given, PieceHandle):
            return piece_of(given)[0].name
        raise KitError(f"{given!r} is not a piece.", where=where, do="Name whole pieces, such as front_facing.")

    def _strip(self, given: object, where: str) -> str:
        if isinstance(given, StripHandle):
            return given.name
        raise KitError(f"{given!r} is not a strip.", where=where, do="Name a strip, such as tie.")


def _mark_label(opening: object) -> str:
    if isinstance(opening, Place):
        return opening.mark.label
    return opening.label if isinstance(opening, Mark) else ""


def _word(given: object, known: Sequence[str], name: str, where: str) -> str:
    if isinstance(given, str) and given in known:
        return given
    raise KitError(f"{name} is {given!r}.", where=where, do=near(str(given), known))


def _size(given: object, where: str, most: float = WIDEST_ALLOWANCE) -> float:
    """A length that may be zero."""
    value = float(length(given, where))
    if value < 0:
        raise KitError(f"{both(value)} is less than nothing.", where=where, do="Write a length of zero or more.")
    if value > most:
        raise KitError(
            f"{both(value)} is more than {both(most)}, wider than this work allows.",
            where=where,
            do="Check the unit: mm, cm or inch.",
        )
    return value


def _width(given: object, where: str, most: float = WIDEST_ALLOWANCE) -> float:
    """A length above zero."""
    value = _size(given, where, most)
    if value == 0:
        raise KitError("it is zero.", where=where, do="Write a width, such as 1 * cm.")
    return value
