"""What a piece and its edges are, as an author says it in a step: `kreg.role("facing", worn="back", mas="hem")`.

Most roles come by themselves: from the block, from the trade words of a name, from what an edge is drawn instead of,
from what a piece is derived from, from how it is sewn. This verb is for the rest.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, cast

from kit.errors import KitError, near
from kit.lesson.open_piece import OpenPiece
from kit.lesson.verb import verb
from kit.piece.piece import Piece
from kit.piece.role import EDGE_ROLES, LANDMARKS, PIECE_ROLES, WORN, EdgeRole, Landmark, PieceRole, Worn


@verb
def role(bench: OpenPiece, /, piece: str | None = None, *, worn: str | None = None, **edges: str) -> None:
    """Say what the piece is ("front", "back", "sleeve", "pocket", "facing", ...), where it is worn ("front" or
    "back"), and what its edges are ("hem", "neck", "side", ...); "" for nothing of that kind. A point or guide is
    named in the same way: `neck_point`, `bust_line`, .... What is said here stays, whatever name, title and sewing
    would make of it.

    Example::

        front.role("front", hip="hem")
    """
    state = bench.piece
    if piece is not None:
        what = cast("PieceRole", _known(piece, PIECE_ROLES, "a piece's role", bench.where))
        place: Worn = what if what in ("front", "back") else (state.worn or "")
        state = replace(state, role=what, worn=place, by_hand=True)
    if worn is not None:
        state = replace(state, worn=cast("Worn", _known(worn, WORN, "a place it is worn", bench.where)), by_hand=True)
    for name, said in edges.items():
        if state.has_edge(name):
            found = cast("EdgeRole", _known(said, EDGE_ROLES, f"a role for the edge '{name}'", bench.where))
            state = state.with_edges(**{name: replace(state.edge(name), role=found, by_hand=True)})
        elif name in bench.names:
            state = landed(state, name, cast("Landmark", _known(said, LANDMARKS, f"a role for '{name}'", bench.where)))
        else:
            raise KitError(
                f"there is no edge, line or point '{name}' to give a role.",
                where=bench.where,
                do=near(name, bench.names),
            )
    bench.piece = state


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
