"""Each piece on its own: does it close, does it cross itself, can its cut line be drawn, has it its marks."""

from __future__ import annotations

from functools import lru_cache

from kit.errors import KitError
from kit.language import say
from kit.piece.allowance import CutLine, cut_line
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.sewing.told import edge_told, name_told, strung
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
            key = f"crosses_{'itself' if first == second else 'another'}_{'above' if at.y >= 0 else 'below'}"
            found.append(
                Finding(
                    "crosses_itself",
                    "error",
                    say(
                        f"proof.{key}",
                        edge=name_told(piece, first),
                        other=name_told(piece, second),
                        across=both(abs(at.x)),
                        along=both(abs(at.y)),
                    ),
                    piece.title,
                    do=say("proof.crosses_do"),
                    piece=piece.name,
                    edge=first,
                )
            )
    return found


@lru_cache(maxsize=64)
def cut_line_of(piece: Piece) -> CutLine:
    """`cut_line` of a piece, drawn once for all the checks that look at it. Raises `KitError` as that does."""
    return cut_line(piece)


def cut_lines(pieces: tuple[Piece, ...]) -> list[Finding]:
    """Edges without a declared allowance, and cut lines that cannot be drawn. Nothing is filled in."""
    found: list[Finding] = []
    for piece in pieces:
        missing = [edge for edge in piece.edges if edge.allowance is None and edge.name != piece.fold]
        found += [
            Finding(
                "no_allowance",
                "error",
                say("proof.no_allowance", edge=edge_told(edge)),
                piece.title,
                do=say("proof.no_allowance_do"),
                piece=piece.name,
                edge=edge.name,
            )
            for edge in missing
        ]
        if missing:
            continue
        try:
            cut_line_of(piece)
        except KitError as error:
            found.append(_from_error("cut_line", piece, error))
    return found


def _from_error(code: str, piece: Piece, error: KitError) -> Finding:
    where = (
        error.where
        if error.where.startswith(piece.title)
        else strung([part for part in (piece.title, error.where) if part])
    )
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
                    say("proof.no_grainline"),
                    piece.title,
                    do=say("proof.no_grainline_do"),
                    piece=piece.name,
                )
            )
        if piece.fold and not piece.has_edge(piece.fold):
            found.append(
                Finding(
                    "no_fold_edge",
                    "error",
                    say("proof.no_fold_edge", edge=piece.fold),
                    piece.title,
                    do=say("proof.no_fold_edge_do"),
                    piece=piece.name,
                )
            )
        elif piece.fold and not piece.edge(piece.fold).path.is_straight:
            found.append(
                Finding(
                    "fold_not_straight",
                    "error",
                    say("proof.fold_not_straight", edge=name_told(piece, piece.fold)),
                    piece.title,
                    do=say("proof.fold_not_straight_do"),
                    piece=piece.name,
                    edge=piece.fold,
                )
            )
    return found
