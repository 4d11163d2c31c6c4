"""The bench: pieces as they lie open to change while a step is being drafted.

A `BenchPiece` is how a step sees one: its attributes are the names drawn on the paper and the verbs. A new edge says
what it replaces; an unknown name on the left of an assignment is refused with the near one.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import wraps
from types import MethodType
from typing import TYPE_CHECKING, Any

import kit.lesson.corner_verbs
import kit.lesson.cut_verbs
import kit.lesson.dart_verbs
import kit.lesson.double_dart_verbs
import kit.lesson.draw_verbs
import kit.lesson.face_verbs
import kit.lesson.fastener_verbs
import kit.lesson.level_verbs
import kit.lesson.mark_verbs
import kit.lesson.match_verbs
import kit.lesson.place_verbs
import kit.lesson.pleat_verbs
import kit.lesson.role_verbs
import kit.lesson.shape_verbs
import kit.lesson.slit_verbs
import kit.lesson.true_verbs  # noqa: F401 (importing a family registers its verbs)
from kit.errors import KitError, near, nearest
from kit.geometry import Path, Point
from kit.lesson.called import is_called
from kit.lesson.open_piece import OpenPiece
from kit.lesson.paper_dart import PaperDart
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.verb import RESERVED, VERBS
from kit.piece.dart import darts_lying, meant
from kit.piece.piece import Piece
from kit.sewing.call import answered, check_call
from kit.units import Length, Size

if TYPE_CHECKING:
    from kit.lesson.bench_types import BenchVerbs
else:
    BenchVerbs = object


class BenchPiece(BenchVerbs):
    """One piece on the bench. Attributes are its edges, guides (construction lines), points and darts, and the verbs;
    where a name is both, it is the line or point, and called it is the verb.

    >>> from kit import bodice_block, workshop_chart
    >>> front = BenchPiece(bodice_block(workshop_chart()["W4"])[0])
    >>> front.shoulder.length, round(front.neck_point.x / front.shoulder_tip.x, 2)
    (122 * mm, 0.39)
    """

    __slots__ = ("_open",)
    _open: OpenPiece

    def __init__(self, piece: Piece) -> None:
        object.__setattr__(self, "_open", OpenPiece(piece))

    # The rest of what a line or point needs of the piece it lies on (`kit.lesson.headings.Sheet`).

    @property
    def piece_name(self) -> str:
        return self._open.piece_name

    def inside_is_left(self) -> bool:
        """Whether the cloth lies to the left when the outline is walked in edge order."""
        return self._open.inside_is_left()

    def note(
        self, value: Length, start: Point, end: Point, along: Path | None = None, *, within: Iterable[Size | None] = ()
    ) -> None:
        """Write down a named measure for the picture, and the named measures `within` which the line keeps."""
        self._open.note(value, start, end, along, within=within)

    def freeze(self) -> Piece:
        """The piece as an immutable value."""
        return self._open.freeze()

    if not TYPE_CHECKING:  # what checkers see of it is made from the verbs: bench_types.pyi

        def __getattr__(self, name: str) -> Any:
            if name.startswith("_"):
                raise AttributeError(name)
            here = self._open
            drawn: PaperLine | PaperPoint | None = here.line(name) or here.point(name)
            if name not in VERBS:
                if drawn is None and (dart := _dart(here, name)) is not None:
                    return dart
                if drawn is None:
                    raise _unknown(here, name, is_called(sys._getframe(1)))
                return drawn
            does = MethodType(_method(VERBS[name]), self)
            if isinstance(drawn, PaperLine):
                return _LineAndVerb(drawn, does)
            return does if drawn is None else _PointAndVerb(drawn, does)

    def __setattr__(self, name: str, value: PaperLine | PaperPoint) -> None:
        here = self._open
        line = here.line(name)
        if line is not None and isinstance(value, PaperLine):
            here.line_named(name, value.path)
            if here.piece.has_edge(name):
                here.put_edges(replace(here.piece.edge(name), path=value.path))
            else:
                here.put_guide(name, value.path)
        elif line is None and here.point(name) is not None and isinstance(value, PaperPoint):
            here.put_point(name, value.point)
            here.point_named(name, value.point)
        elif name in here.names:
            raise KitError(
                f"'{name}' was given {type(value).__name__}, which is not the same kind of thing.",
                where=here.where,
                do="Give an edge a line and a point a point.",
            )
        else:
            raise KitError(
                f"there is no edge, line or point '{name}' to change.",
                where=here.where,
                do=f"{near(name, here.names)} To add a new edge say what it replaces: "
                f"{here.piece_name}.draw({name}=..., instead_of=...). "
                f"To mark a point: {here.piece_name}.mark({name}=...).",
            )
        here.drawn.add(name)

    def __dir__(self) -> list[str]:
        return sorted({*self._open.names, *(dart.name for dart in darts_lying(self._open.piece)), *VERBS})

    def __repr__(self) -> str:
        return repr(self._open)


def opened(piece: BenchPiece) -> OpenPiece:
    """The open piece behind what a step sees of it."""
    return piece._open


def words() -> frozenset[str]:
    """The words that a new line or point is better not named by: the verbs, and what is reserved."""
    return RESERVED | frozenset(VERBS)


class _LineAndVerb(PaperLine):
    """A line that has a verb's name: it is the line, and called it is the verb."""

    def __init__(self, line: PaperLine, does: Callable[..., Any]) -> None:
        super().__init__(line.sheet, line.path, line.name)
        self._does = does

    def __call__(self, *given: Any, **named: Any) -> Any:
        return self._does(*given, **named)


class _PointAndVerb(PaperPoint):
    """A point that has a verb's name: it is the point, and called it is the verb."""

    def __init__(self, point: PaperPoint, does: Callable[..., Any]) -> None:
        super().__init__(point.sheet, point.point)
        self._does = does

    def __call__(self, *given: Any, **named: Any) -> Any:
        return self._does(*given, **named)


_METHODS: dict[Callable[..., Any], Callable[..., Any]] = {}


def _method(function: Callable[..., Any]) -> Callable[..., Any]:
    """A verb as a method of a bench piece. Pieces among what it is given reach it opened."""
    if function not in _METHODS:

        @wraps(function)
        def write(piece: BenchPiece, /, *given: Any, **named: Any) -> Any:
            try:
                check_call(function, given, named)
                return function(piece._open, *map(_taken, given), **{key: _taken(one) for key, one in named.items()})
            except KitError as error:
                raise answered(error, function) from error.__cause__

        _METHODS[function] = write
    return _METHODS[function]


def _taken(given: Any) -> Any:
    """What a verb reads of what it is given: of a piece the open one, of a dart its name."""
    if isinstance(given, BenchPiece):
        return given._open
    return given.name if isinstance(given, PaperDart) else given


def _dart(here: OpenPiece, name: str) -> PaperDart | None:
    """The dart of that name that opens on an edge of the piece; of several the first is meant by their one name."""
    known = {dart.name: dart for dart in darts_lying(here.piece)}
    found = known.get(meant(here.piece, name))
    return None if found is None else PaperDart(here, here.piece, found)


def _unknown(here: OpenPiece, name: str, called: bool) -> KitError:
    """The refusal for a name that is neither drawn nor a verb, with the near one: a verb, where it is called."""
    if called:
        close = nearest(name, VERBS) or nearest(name, here.names)
        do = f"Did you mean '{close}'?" if close else near(name, VERBS)
        return KitError(f"there is no verb '{name}'.", where=here.where, do=do)
    names = [*here.names, *(dart.name for dart in darts_lying(here.piece))]
    close = nearest(name, names) or nearest(name, VERBS)
    do = f"Did you mean '{close}'?" if close else near(name, names)
    return KitError(f"there is no edge, line or point '{name}'.", where=here.where, do=do)
