"""Each piece on its own: does it close, does it cross itself, can its cut line be drawn, has it its marks."""

from __future__ import annotations

from kit.errors import KitError
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.units import both


def outlines(pieces: tuple[Piece, ...]) -> list[Finding]:
    """Pieces that do not close or cross themselves."""
    found: list[Finding] = []
    for piece in pieces:
        try:
            outline = piece.outline
        except KitError as error:
            found.append(_from_error("not_closed", piece, error))
            continue
        crossing = outline.self_crossing()
        if crossing is not None:
            first, second, at = crossing
            one, other = piece.edge(first).label, piece.edge(second).label
            names = f"the {one} crosses itself" if first == second else f"the {one} crosses the {other}"
            found.append(
                Finding(
                    "crosses_itself",
                    "error",
                    f"{names}, {both(abs(at.x))} from the draft's upright line and {both(abs(at.y))} "
                    f"{'above' if at.y >= 0 else 'below'} its level line.",
                    piece.title,
                    do="Move the measure you changed last back towards its old value, or redraw one of the two.",
                    piece=piece.name,
                    edge=first,
                )
            )
    return found


def cut_lines(pieces: tuple[Piece, ...]) -> list[Finding]:
    """Edges without a declared allowance, and cut lines that cannot be drawn. Nothing is filled in."""
    found: list[Finding] = []
    for piece in pieces:
        missing = [edge for edge in piece.edges if edge.allowance is None and edge.name != piece.fold]
        found += [
            Finding(
                "no_allowance",
                "error",
                f"the {edge.label} has no allowance.",
                piece.title,
                do="Declare one on the pattern, 0 where it is cut on the line.",
                piece=piece.name,
                edge=edge.name,
            )
            for edge in missing
        ]
        if missing:
            continue
        try:
            cut_line(piece)
        except KitError as error:
            found.append(_from_error("cut_line", piece, error))
    return found


def _from_error(code: str, piece: Piece, error: KitError) -> Finding:
    where = error.where if error.where.startswith(piece.title) else ", ".join(filter(None, (piece.title, error.where)))
    return Finding(code, "error", error.what, where, do=error.do, piece=piece.name)


def markings(pieces: tuple[Piece, ...]) -> list[Finding]:
    """Grainline and fold."""
    found: list[Finding] = []
    for piece in pieces:
        if piece.grain is None:
            found.append(
                Finding(
                    "no_grainline",
                    "warning",
                    "it has no grainline.",
                    piece.title,
                    do="Draw one, so that it can be laid straight on the cloth.",
                    piece=piece.name,
                )
            )
        if piece.fold and not piece.has_edge(piece.fold):
            found.append(
                Finding(
                    "no_fold_edge",
                    "error",
                    f"it is cut on the fold of '{piece.fold}', but has no such edge.",
                    piece.title,
                    do="Name the edge that lies on the fold.",
                    piece=piece.name,
                )
            )
        elif piece.fold and not piece.edge(piece.fold).path.is_straight:
            found.append(
                Finding(
                    "fold_not_straight",
                    "error",
                    f"the {piece.edge(piece.fold).label} lies on the fold but is not straight.",
                    piece.title,
                    do="Rule it straight, or cut the piece as a pair.",
                    piece=piece.name,
                    edge=piece.fold,
                )
            )
    return found
