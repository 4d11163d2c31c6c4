"""What a piece and its edges are, as an author says it in a step: `kreg.role("facing", worn="back", mas="hem")`.

Most roles come by themselves: from the block, from the trade words of a name, from what an edge is drawn instead of,
from what a piece is derived from, from how it is sewn. This verb is for the rest.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any, cast

from kit.errors import KitError, near
from kit.piece.piece import Edge, Piece
from kit.piece.role import EDGE_ROLES, LANDMARKS, PIECE_ROLES, WORN, EdgeRole, Landmark, PieceRole, Worn

if TYPE_CHECKING:
    from kit.geometry import Path, Point


class RoleVerbs:
    """The verb of a bench piece that says what it is."""

    _edges: dict[str, Edge]
    _points: dict[str, Point]
    _guides: dict[str, Path]
    _state: Piece

    if TYPE_CHECKING:

        @property
        def _where(self) -> str: ...

        def _names(self) -> list[str]: ...

    def role(self, piece: str | None = None, *, worn: str | None = None, **edges: str) -> None:
        """Say what the piece is ("front", "back", "sleeve", "pocket", "facing", ...), where it is worn ("front" or
        "back"), and what its edges are ("hem", "neck", "side", ...); "" for nothing of that kind. A point or guide is
        named in the same way: `neck_point`, `bust_line`, .... What is said here stays, whatever name, title and sewing
        would make of it."""
        state = self._state
        if piece is not None:
            role = cast("PieceRole", _known(piece, PIECE_ROLES, "a piece's role", self._where))
            place: Worn = role if role in ("front", "back") else (state.worn or "")
            state = replace(state, role=role, worn=place, by_hand=True)
        if worn is not None:
            state = replace(
                state, worn=cast("Worn", _known(worn, WORN, "a place it is worn", self._where)), by_hand=True
            )
        for name, said in edges.items():
            if name in self._edges:
                found = cast("EdgeRole", _known(said, EDGE_ROLES, f"a role for the edge '{name}'", self._where))
                self._edges[name] = replace(self._edges[name], role=found, by_hand=True)
            elif name in self._points or name in self._guides:
                what = cast("Landmark", _known(said, LANDMARKS, f"a role for '{name}'", self._where))
                state = landed(state, name, what)
            else:
                raise KitError(
                    f"there is no edge, line or point '{name}' to give a role.",
                    where=self._where,
                    do=near(name, self._names()),
                )
        self._state = state


def _known(word: Any, roles: tuple[str, ...], what: str, where: str) -> str:
    if not isinstance(word, str) or (word and word not in roles):
        do = near(word, roles) if isinstance(word, str) else ""
        raise KitError(f"{word!r} is not {what}.", where=where, do=do or f"Say one of: {', '.join(roles)}.")
    return word


def landed(piece: Piece, name: str, what: Landmark | None) -> Piece:
    """`piece` with its point or guide `name` as the one that is `what`; as it was where that is None."""
    if what is None:
        return piece
    kept = tuple((n, w) for n, w in piece.landmarks or () if w != what and n != name)
    return replace(piece, landmarks=(*kept, (name, what)) if what else kept)
