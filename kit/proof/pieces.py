"""Each piece on its own: does it close, does it cross itself, can its cut line be drawn, has it its marks."""

from __future__ import annotations

from dataclasses import replace

from kit.diagnostic import Diagnostic, Message, measured, message, named_edge, within
from kit.errors import KitError
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece
from kit.sewing.named import edge_of


def outlines(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """Pieces that do not close or cross themselves."""
    found: list[Diagnostic] = []
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
                Diagnostic(
                    "crosses_itself",
                    "error",
                    message(
                        f"proof.{key}",
                        edge=edge_of(piece, first),
                        other=edge_of(piece, second),
                        across=measured(abs(at.x)),
                        along=measured(abs(at.y)),
                    ),
                    piece.title,
                    can=message("proof.crosses_do"),
                    piece=piece.name,
                    edge=first,
                )
            )
    return found


def cut_lines(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """Edges without a declared allowance, and cut lines that cannot be drawn. Nothing is filled in."""
    found: list[Diagnostic] = []
    for piece in pieces:
        missing = [edge for edge in piece.edges if edge.allowance is None and edge.name != piece.fold]
        found += [
            Diagnostic(
                "no_allowance",
                "error",
                message("proof.no_allowance", edge=named_edge(edge)),
                piece.title,
                can=message("proof.no_allowance_do"),
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


def _from_error(code: str, piece: Piece, error: KitError) -> Diagnostic:
    """A refusal met on a piece, whose title stands before the place."""
    told = error.told
    first = told.at.values[0][1].value if isinstance(told.at, Message) and told.at.values else told.at
    named = isinstance(first, str) and first.startswith(piece.title)
    return replace(told, code=code, at=told.at if named else within(piece.title, told.at), piece=piece.name)


def markings(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """Grainline and fold."""
    found: list[Diagnostic] = []
    for piece in pieces:
        if piece.grain is None:
            found.append(
                Diagnostic(
                    "no_grainline",
                    "warning",
                    message("proof.no_grainline"),
                    piece.title,
                    can=message("proof.no_grainline_do"),
                    piece=piece.name,
                )
            )
        if piece.fold and not piece.has_edge(piece.fold):
            found.append(
                Diagnostic(
                    "no_fold_edge",
                    "error",
                    message("proof.no_fold_edge", edge=piece.fold),
                    piece.title,
                    can=message("proof.no_fold_edge_do"),
                    piece=piece.name,
                )
            )
        elif piece.fold and not piece.edge(piece.fold).path.is_straight:
            found.append(
                Diagnostic(
                    "fold_not_straight",
                    "error",
                    message("proof.fold_not_straight", edge=edge_of(piece, piece.fold)),
                    piece.title,
                    can=message("proof.fold_not_straight_do"),
                    piece=piece.name,
                    edge=piece.fold,
                )
            )
    return found
