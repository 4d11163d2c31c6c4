"""A run of edges with its folds shut, and the piece as it begins."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.piece.darts_and_pleats import Dart
from kit.piece.folded import folded
from kit.piece.piece import CutPlan, Edge, Piece


def square(*darts: Dart) -> Piece:
    """200 mm by 300, its top 200 mm long."""
    corners = [Point(0, 300), Point(0, 0), Point(200, 0), Point(200, 300)]
    paths = [Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]
    edges = tuple(Edge(n, p) for n, p in zip(("left", "hem", "right", "top"), paths, strict=True))
    return Piece("panel", "Panel", edges, darts=darts)


@pytest.mark.parametrize(("start", "end"), [(0.0, 50.0), (0.0, 150.0), (60.0, 150.0), (120.0, 160.0)])
def test_a_part_of_a_run_lies_where_its_folds_bring_it(start: float, end: float) -> None:
    """Folding keeps every place of the paper at its distance from the others on the same side of the fold: what
    follows the part is carried along by its last stretch."""
    dart = Dart("dart", "top", Point(100, 150), 90.0, 110.0)  # at x = 110 to 90, as the top runs back from x = 200
    piece = square(dart)
    run = folded(piece, ("top",))
    assert run.length == pytest.approx(180.0)  # 200 less the 20 in the dart
    part = run.part(start, end)
    assert part.length == pytest.approx(end - start)
    edge, at = run.drafted(end)
    drafted = piece.edge(edge).path.at(at)
    assert drafted.x == pytest.approx(200 - end - (20.0 if end > 90 else 0.0))
    assert part.beyond(drafted).close_to(part.path.end, 1e-6)
    legs = [piece.edge("top").path.at(d) for d in (dart.start, dart.end)]
    if end > 90:  # the second leg has come to lie on the first, seen from the apex
        assert part.beyond(legs[1]).close_to(legs[0], 1e-6)
        assert part.beyond(dart.apex).close_to(dart.apex, 1e-6)


def test_an_outline_that_gapes_is_told_with_the_pieces_title_or_its_name() -> None:
    piece = square()
    torn = piece.with_edges(hem=replace(piece.edge("hem"), path=Path.line(Point(0, 0), Point(190, 0))))
    with pytest.raises(KitError, match="Panel"):
        torn.outline  # noqa: B018
    with pytest.raises(KitError, match="panel"):
        replace(torn, title="").outline  # noqa: B018


def test_a_piece_is_cut_once_from_the_main_cloth_unless_planned() -> None:
    plan = square().cut
    assert (plan.count, plan.mirrored, plan.fold, plan.cloth, plan.interfacing) == (1, False, "", "main", 0)
    assert not plan.said and plan == CutPlan()
