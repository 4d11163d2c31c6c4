"""The moves of the hand in words, for the alternative text of a drafting picture: what is done in which order, and
where it is square or runs in without a corner."""

from __future__ import annotations

from kit.language import called, say, says
from kit.lesson.hand import HandMove, Sign
from kit.lesson.pattern import StepRecord
from kit.piece.piece import Piece
from kit.wording.lists import listed
from kit.wording.names import edge_said, title_said


def hand_said(record: StepRecord) -> list[str]:
    """Sentences on the order of a step's moves and on its signs; none where nothing was drawn by hand."""
    found = []
    pieces = {piece.name: piece for piece in record.pieces}
    for piece in record.pieces:
        moves = [_move(move, pieces) for move in record.moves if move.piece == piece.name and move.kind != "place"]
        if len(moves) > 1:
            found.append(say("picture.step_order", piece=title_said(piece.title or piece.name), moves=listed(moves)))
    for kind, key in (("square", "picture.step_squares"), ("tangent", "picture.step_tangents")):
        places = [
            _sign(move, sign, pieces) for move in record.moves for sign in move.signs if sign.kind == kind and sign.to
        ]
        if places:
            found.append(say(key, places=listed(list(dict.fromkeys(places)))))
    return found


def _move(move: HandMove, pieces: dict[str, Piece]) -> str:
    if move.kind == "trace":
        source = pieces.get(move.source)
        return say("picture.hand_trace", piece=title_said(source.title if source else called(move.source)))
    if move.kind in ("across", "mirror"):
        return say(f"picture.hand_{move.kind}")
    if not move.is_line:
        return say("picture.hand_point", point=point_said(move.name)) if move.name else say("picture.hand_mark")
    return say(f"picture.hand_{move.kind}", line=_line(move.name, pieces.get(move.piece)))


def _sign(move: HandMove, sign: Sign, pieces: dict[str, Piece]) -> str:
    piece = pieces.get(move.piece)
    to = _line(sign.to, piece)
    return say("picture.sign_on", line=_line(move.name, piece), other=to) if move.name else to


def _line(name: str, piece: Piece | None) -> str:
    if piece is not None and piece.has_edge(name):
        return edge_said(piece.edge(name))
    return point_said(name)


def point_said(name: str) -> str:
    """A point or construction line of a block by its name in the language, else by the name the lesson gave it."""
    key = f"worksheet.name.{name}"
    return say(key) if says(key) else called(name)
