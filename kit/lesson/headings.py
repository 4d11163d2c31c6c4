"""The sheet that points and lines lie on, and how a verb reads a direction and a distance there.

Directions are as the paper lies: "up" to the neck, "down" to the hem, "out" to the side seam, "in" to the centre line.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol, cast

from kit.diagnostic import Told, measured, message
from kit.errors import KitError, near
from kit.geometry import Path, Point, Vector
from kit.lesson.curving import DIRECTIONS
from kit.lesson.hand import HandMove
from kit.units import Length, Size, length

FAR = 4000.0
"""mm, longer than any piece: a line carried on this far meets whatever lies in its way."""


class NotedSheet(Protocol):
    """A piece that a point or line can be put on: an open one, or its handle in a step."""

    @property
    def piece_name(self) -> str: ...

    def note(
        self, value: Length, start: Point, end: Point, along: Path | None = None, *, within: Iterable[Size | None] = ()
    ) -> None:
        """Write down a named measure for the picture, and the named measures `within` which the line keeps."""

    def inside_is_left(self) -> bool:
        """Whether the cloth lies to the left when the outline is walked in edge order."""


class OpenSheet(NotedSheet, Protocol):
    """What a point or line needs of the piece it lies on."""

    def edge_paths(self) -> tuple[Path, ...]:
        """The edges drawn so far."""

    def is_far_half(self, point: Point) -> bool:
        """Whether a point lies on a half that is mirrored, where in is to the right and out to the left."""

    def lines(self) -> Iterable[tuple[str, Path]]:
        """The edges and construction lines drawn so far, by name."""

    def did(self, move: HandMove) -> None:
        """Write down a move of the hand."""


def open_paper(sheet: NotedSheet) -> OpenSheet:
    """The open piece, where its handle is given."""
    return cast("OpenSheet", getattr(sheet, "_open", sheet))


def heading(direction: str, sheet: OpenSheet | None = None, at: Point | None = None) -> Vector:
    """The unit vector of a direction word; on a mirrored half in and out keep their sense."""
    if direction not in DIRECTIONS:
        raise KitError(f"'{direction}' is not a direction on the paper.", do=near(direction, DIRECTIONS))
    found = DIRECTIONS[direction]
    return found * -1.0 if found.x and sheet is not None and at is not None and sheet.is_far_half(at) else found


def said_toward(toward: str, sheet: OpenSheet, at: Point) -> Vector | str:
    """What an author says with `toward`: a direction of the paper, "inside", "outside", or "" for nothing."""
    if toward in ("", "inside", "outside"):
        return toward
    if toward not in DIRECTIONS:
        raise KitError(f"toward={toward!r} is no direction.", do=near(str(toward), (*DIRECTIONS, "inside", "outside")))
    return heading(toward, sheet, at)


def distance(value: Size, what: Told) -> Length:
    """A distance given to a verb, as a Length that is not negative."""
    found = length(value, what)
    if found < 0:
        raise KitError(
            message("refusal.below_zero", value=measured(found)), where=what, do=message("refusal.below_zero_do")
        )
    return found
