"""Where a piece lies that is sewn onto another at its placement line."""

from __future__ import annotations

from kit.geometry import Motion, Path, Point
from kit.piece.piece import Piece


def laid_on(piece: Piece, line: Path) -> Motion:
    """The motion that takes a piece's outline to its placement line: of all corners of the line that it may begin at,
    both ways round and both faces, that on which the two agree best."""
    own = Path(tuple(c for edge in piece.edges for c in edge.path.curves))
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
