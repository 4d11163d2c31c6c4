"""The order of the hand in a drafting picture: what it rules on the way, thin, and a number on each of its strokes.

Numbers follow the moves of the step's record, which stand in the order of its sentence; a piece with a single move
needs none. On fresh paper the points of an outline are not numbered, only the strokes between them: with two numbers on
one line a reader looks for a second line.
"""

from __future__ import annotations

from collections.abc import Iterable

from kit.geometry import Line, Path, Point, Vector
from kit.lesson.hand import HandMove, same
from kit.lesson.pattern import StepRecord
from kit.picture.drawing import Item, Stroke
from kit.picture.place import Scaling
from kit.piece.piece import Piece


def moves_on(piece: Piece, record: StepRecord) -> list[HandMove]:
    """What the hand did on a piece, in order."""
    return [move for move in record.moves if move.piece == piece.name]


def numbered(piece: Piece, record: StepRecord) -> list[HandMove]:
    """The moves that get a number, in order; none where there is only one."""
    fresh = {name for owner, name, _ in record.new if owner == piece.name}
    blank = all(edge.name in fresh for edge in piece.edges) and not any(o == piece.name for o, _, _ in record.removed)
    ruled = [path for owner, name, path in record.new if owner == piece.name and path.is_straight] if blank else []
    moves = [
        move for move in moves_on(piece, record) if not (blank and (move.kind == "place" or _ruled_later(move, ruled)))
    ]
    return moves if len(moves) > 1 else []


def _ruled_later(move: HandMove, ruled: Iterable[Path]) -> bool:
    """Whether a place is measured off along a line that is ruled there in the same step."""
    if move.kind not in ("mark", "across") or move.path is not None or same(move.start, move.end):
        return False
    ends = (move.start, move.start.mid(move.end), move.end)
    return any(_straight_over(path, ends) for path in ruled)


def aids(piece: Piece, record: StepRecord, put: Scaling) -> list[tuple[int, Item]]:
    """The straight lines that only lead to a place, squared over or measured off where no line lies yet, each with the
    index of its move."""
    lines = [edge.path for edge in piece.edges] + [path for _, path in piece.guides]
    items: list[tuple[int, Item]] = []
    for index, move in enumerate(moves_on(piece, record)):
        if move.kind not in ("mark", "across") or move.path is not None or move.start.distance(move.end) < 0.5:
            continue
        middle = move.start.mid(move.end)
        if any(_straight_over(path, (move.start, middle, move.end)) for path in lines):
            continue
        stroke = Stroke(put.curves((Line(move.start, move.end),)), "aid", name=f"{piece.name}.{move.kind}")
        items.append((index, stroke))
    return items


def _straight_over(path: Path, points: Iterable[Point]) -> bool:
    """Whether a straight line passes over all the points."""
    if not path.is_straight:
        return False
    span, start = (path.end - path.start).unit(), path.start
    long = path.length
    return all(abs(span.cross(p - start)) < 0.1 and -0.1 <= span.dot(p - start) <= long + 0.1 for p in points)


def line_of_number(move: HandMove, piece: Piece, record: StepRecord) -> Path:
    """The line that a move's number belongs to: what it drew as it is now, the longest line of what it traced or
    mirrored, else the way it measured."""
    if move.kind == "trace":
        shaped = {one.name for one in record.moves if one.piece == piece.name and one.is_line}
        traced = [edge.path for edge in piece.edges if edge.name not in shaped] or [e.path for e in piece.edges]
        return max(traced, key=lambda path: path.length)
    if move.kind == "mirror":
        far = [path for name, path in piece.guides if name.startswith("far_")]
        return max(far, key=lambda path: path.length, default=move.path or Path.line(move.start, move.end))
    if move.is_line and move.path is not None:
        now = piece.edge(move.name).path if piece.has_edge(move.name) else move.path
        # A line whose first part stood before is numbered where it is new.
        return move.path if len(now.curves) > len(move.path.curves) and same(now.end, move.end) else now
    if move.path is not None:
        return move.path
    if same(move.start, move.end):  # a place on a line: its number stands beside it
        return Path.line(move.start, move.start + Vector(1.0, 0.0))
    return Path.line(move.start, move.end)
