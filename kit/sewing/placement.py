"""Where a piece lies that is sewn onto another at its placement line."""

from __future__ import annotations

from kit.errors import KitError
from kit.geometry import Motion, Path, Point, parallel
from kit.piece.piece import Piece

PLACE_AGREES = 4.0
"""mm by which a pocket and the line it is laid on may differ."""


def _outline(piece: Piece, line: Path) -> Path:
    """The piece's outline; opened out where it is cut on the fold and the line is the whole of it."""
    if not piece.fold:
        return Path(tuple(c for edge in piece.edges for c in edge.path.curves))
    at = [edge.name for edge in piece.edges].index(piece.fold)
    half = Path.of(*(edge.path for edge in (*piece.edges[at + 1 :], *piece.edges[:at])))
    fold = piece.edges[at].path
    if abs(line.length - 2 * half.length) > abs(line.length - half.length - fold.length):
        return Path(tuple(c for edge in piece.edges for c in edge.path.curves))
    return half.joined(half.reversed().moved(Motion.reflection(fold.start, fold.end)))


def laid_on(piece: Piece, line: Path) -> Motion:
    """The motion that takes a piece's outline to its placement line: of all corners of the line that it may begin at,
    both ways round and both faces, that on which the two agree best."""
    own = _outline(piece, line)
    corners = [*line.marks[:-1], 0.0] if line.start.distance(line.end) < 1.0 else [0.0]
    best: tuple[float, Motion] | None = None
    shares = [0.1 * i for i in range(10)]
    for start in corners:
        for run in (line, line.reversed()):
            first = start if run is line else line.length - start

            def at(share: float, run: Path = run, first: float = first) -> Point:
                return run.at((first + share * run.length) % run.length)

            for flip in (False, True):
                motion = Motion.matching(own.at(0.0), own.at(own.length * 0.4), at(0.0), at(0.4), flip)
                off = sum(motion(own.at(own.length * share)).distance(at(share)) for share in shares)
                turned = abs(motion.angle) + (1.0 if flip else 0.0)  # a square pocket keeps its top at the top
                cost = off + turned * 0.01
                if best is None or cost < best[0] - 1e-6:
                    best = (cost, motion)
    assert best is not None
    return best[1]


def row_laid(piece: Piece, paths: list[Path], line: Path, inset: float, *, at_fold: bool, half: bool) -> Path | None:
    """The row `inset` mm inside those edges of a piece that are sewn on, `paths`, where it is laid on its line: from
    one end of the mouth round to the other; of `half` of a piece cut on the fold, where the line lies `at_fold` too.
    None where the line is no outline of the piece, or not the half of one."""
    found, whole = _in_line(paths), line.start.distance(line.end) <= 1.0
    if half:
        size = sum(edge.path.length for edge in piece.edges if edge.name != piece.fold)
        whole = bool(piece.fold) and at_fold and abs(size - line.length) <= PLACE_AGREES
    opened = bool(piece.fold) and not at_fold  # laid whole: the row goes on along the other half
    path = found if found is None or half or not opened else _opened(piece, found)
    if path is None or not whole:
        return None
    side = path.length / (4 if path is not found else 2)
    left = piece.outline.contains(path.at(side) + path.normal_at(side) * 2.0)
    try:
        motion = _from_fold(piece, line) if half or opened else laid_on(piece, line)
        row = parallel(path, inset if left else -inset).moved(motion)
    except KitError:
        return None
    return row if path is found or line.distance_to(row.start) < inset + 1.0 else None


def _in_line(paths: list[Path]) -> Path | None:
    """Paths that follow one another as one, each turned round where it must be; None where they do not."""
    first, *others = paths
    for found in (first, first.reversed()):
        for path in others:
            if found.end.distance(path.start) > 0.5:
                path = path.reversed()
            if found.end.distance(path.start) > 0.5:
                break
            found = found.joined(path)
        else:
            return found
    return None


def _from_fold(piece: Piece, line: Path) -> Motion:
    """What takes a piece cut on the fold to a line that begins where its outline leaves the fold."""
    begins = next(i for i, edge in enumerate(piece.edges) if edge.name == piece.fold)
    first = piece.edges[(begins + 1) % len(piece.edges)].path
    turn = first.tangent_at(0.0).turn_to(line.tangent_at(0.0))
    return Motion.rotation(turn, first.start).then(Motion.translation(line.start - first.start))


def _opened(piece: Piece, half: Path) -> Path | None:
    """A path on a piece cut on the fold, to the fold and on along the other half; None where it does not cross it."""
    fold = piece.edge(piece.fold).path
    if fold.distance_to(half.start) < 0.5:
        half = half.reversed()
    if fold.distance_to(half.end) >= 0.5:
        return None
    try:
        return half.joined(half.reversed().moved(Motion.reflection(fold.start, fold.end)))
    except KitError:
        return None
