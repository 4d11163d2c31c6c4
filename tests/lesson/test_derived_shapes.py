"""Facings and linings on a panel of straight lines, where all that is derived is plain geometry."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson import lining
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.derive import facing, laid, turned
from kit.piece.darts_and_pleats import Dart
from kit.piece.double_dart import around
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece
from kit.units import Length, cm


def panel(**more: Any) -> Piece:
    """A panel 300 wide and 500 high: hem, side, waist, centre, going round to the left."""
    at = [Point(0, 0), Point(300, 0), Point(300, 500), Point(0, 500)]
    names = ("hem", "side", "waist", "centre")
    edges = tuple(Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True))
    return replace(Piece("skirt", "Skirt", edges), **more)


def turned_round(piece: Piece) -> Piece:
    """The same outline written the other way round."""
    return replace(piece, edges=tuple(replace(e, path=e.path.reversed()) for e in reversed(piece.edges)))


def refused(write: Callable[[], Any], words: str | None = None) -> None:
    with pytest.raises(KitError, match=words):
        write()


# ---- linings ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("flip", [False, True])
@pytest.mark.parametrize(("by", "fits"), [(0.5, True), (20.0, True), (498.5, True), (499.5, False)])
def test_a_hem_is_shortened(flip: bool, by: float, fits: bool) -> None:
    piece = panel(
        notches=(Notch("side", 100.0), Notch("side", 0.1), Notch("hem", 40.0)),
        marks=(Mark("slit", "opening", edge="centre", start=0.0, end=480.0 if by < 20 else 10.0),),
    )
    if flip:
        piece = replace(turned_round(piece), notches=(), marks=())
    if not fits:
        refused(lambda: lining.shortened(piece, "hem", by))
        return
    made = lining.shortened(piece, "hem", by)
    assert {round(p.y, 6) for p in made.edge("hem").path.points()} == {by} and made.edge("hem").path.length == 300
    assert made.edge("side").path.length == made.edge("centre").path.length == pytest.approx(500 - by)
    if not flip and by == 20.0:
        assert [(n.edge, n.distance) for n in made.notches] == [
            ("side", pytest.approx(80.0)),
            ("hem", pytest.approx(40.0)),
        ]
        assert [(m.start, m.end) for m in made.marks] == [(pytest.approx(0.0), pytest.approx(10.0))]


@pytest.mark.parametrize(("low", "kept"), [(19.9, True), (19.7, False)])
def test_what_lies_on_paper_that_is_cut_away_goes_with_it(low: float, kept: bool) -> None:
    """Within a fifth of a millimetre it still lies on the line."""
    made = lining.shortened(panel(notches=(Notch("side", low),)), "hem", 20.0)
    assert [n.distance for n in made.notches] == ([pytest.approx(0.0)] if kept else [])


def test_a_dart_that_is_cut_away_is_told() -> None:
    piece = panel(darts=(Dart("dart", "side", Point(200, 10), 5.0, 15.0),))
    refused(lambda: lining.shortened(piece, "hem", 20.0), "cut away")
    made = lining.shortened(panel(darts=(Dart("dart", "side", Point(200, 60), 50.0, 70.0),)), "hem", 20.0)
    assert (made.darts[0].start, made.darts[0].end) == (pytest.approx(30.0), pytest.approx(50.0))


@pytest.mark.parametrize("flip", [False, True])
def test_cloth_for_a_pleat_lies_beyond_the_centre(flip: bool) -> None:
    piece = turned_round(panel()) if flip else panel()
    made = lining.with_pleat(piece, "centre", 25.0)
    assert {round(p.x, 6) for p in made.edge("centre").path.points()} == {-25.0}
    assert made.edge("hem").path.length == made.edge("waist").path.length == pytest.approx(325.0)
    (line,) = made.marks
    assert (line.name, line.kind, line.path) == ("centre_pleat", "line", piece.edge("centre").path)
    assert abs(made.outline.area) == pytest.approx(325 * 500)


def test_what_a_lining_has_a_use_for() -> None:
    """Openings, and lines whose middle lies inside; points inside; no pockets, buttons or ties."""
    kept = (
        Mark("slit", "opening", edge="side", start=10.0, end=60.0),
        Mark("waist", "line", path=Path.line(Point(-200, 200), Point(290, 200))),  # its middle at 45
    )
    gone = (
        Mark("far", "line", path=Path.line(Point(-500, 200), Point(290, 200))),  # its middle at -105
        Mark("pocket", "placement", path=Path.line(Point(50, 50), Point(90, 50))),
        Mark("tie", "point", point=Point(50, 50)),
        Mark("hole", "buttonhole", path=Path.line(Point(50, 50), Point(70, 50))),
    )
    made = lining.inside(panel(marks=(*kept, *gone), points=(("in", Point(9, 9)), ("off", Point(-9, 9)))))
    assert made.marks == kept and [name for name, _ in made.points] == ["in"]


def test_interfacing_goes_beyond_the_stitch_line_but_on_the_fold() -> None:
    folded = panel(cut=CutPlan(1, fold="centre"))
    assert [e.allowance for e in lining.interfacing(folded, 2.0)] == [2.0, 2.0, 2.0, 0.0]
    assert lining.interfacing(folded, None) == folded.edges


@pytest.mark.parametrize("names", [("waist",), ("waist", "centre"), ("centre", "waist")])
def test_a_facing_is_left_out(names: tuple[str, ...]) -> None:
    piece = panel(notches=(Notch("waist", 40.0), Notch("side", 100.0), Notch("side", 480.0)))
    made = lining.without_facing(piece, names, 60.0)
    edge = made.edge("facing")
    assert [e.name for e in made.edges].count("facing") == 1 and not made.has_edge(names[0])
    assert edge.path.length == pytest.approx(300.0 if len(names) == 1 else 240.0 + 440.0)
    assert made.edge("side").path.length == pytest.approx(440.0)
    assert [(n.edge, n.distance) for n in made.notches] == [("side", 100.0)]
    assert abs(made.outline.area) == pytest.approx(300 * 440 if len(names) == 1 else 240 * 440)


def test_a_facing_as_deep_as_the_piece_is_refused() -> None:
    refused(lambda: lining.without_facing(panel(), ["waist"], 501.0))
    assert lining.without_facing(panel(), ["waist"], 490.0).edge("side").path.length == pytest.approx(10.0)


# ---- facings ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("flip", [False, True])
@pytest.mark.parametrize(
    ("short", "at", "drawn"), [(0.0, None, (0, 0)), (5.0, None, (0, 5)), (5.0, "a", (5, 0)), (5.0, ("a", "b"), (5, 5))]
)
def test_a_facing_along_a_straight_edge(flip: bool, short: float, at: Any, drawn: tuple[float, float]) -> None:
    """The run keeps its length and notches; the outer edge is as long, less what it is drawn short by."""
    source = panel(notches=(Notch("waist", 40.0), Notch("waist", 0.0)), cut=CutPlan(2, mirrored=True))
    if flip:
        source = replace(turned_round(source), notches=(Notch("waist", 260.0), Notch("waist", 300.0)))
    garment, sheet = BenchPiece(source), BenchPiece(Piece("waist_facing", "Waist facing", ()))
    sheet.face(garment.waist, depth=Length(60.0, "deep"), ends=("a", "b"), short=Length(short, "pull"), short_at=at)
    made = sheet.freeze()
    assert [e.name for e in made.edges] == ["waist", "b", "outer", "a"] and made.source == "skirt"
    assert made.edge("waist").path == source.edge("waist").path
    assert made.edge("outer").path.length == pytest.approx(300.0 - sum(drawn))
    assert [made.edge(end).drawn_in for end in ("a", "b")] == list(drawn)
    assert [made.edge(end).path.length for end in ("a", "b")] == pytest.approx([math.hypot(60, d) for d in drawn])
    assert made.edge("outer").role == "outer" and {round(p.y, 6) for p in made.edge("outer").path.points()} == {440.0}
    assert [(n.edge, n.distance) for n in made.notches] == [
        ("waist", at) for at in ((260.0, 300.0) if flip else (40.0, 0.0))
    ]
    spots = {s.name: s for s in opened(sheet).spots}
    assert spots["deep"].start.close_to(Point(150, 500)) and spots["deep"].end.close_to(Point(150, 440))
    if short:
        pull = spots["pull"]
        assert pull.value == 5.0 and pull.start.distance(pull.end) == pytest.approx(5.0)
        assert {round(pull.start.x), round(pull.end.x)} in ({0, 5}, {295, 300})
    else:
        assert "pull" not in spots


def test_at_the_fold_nothing_is_drawn_short_unless_it_is_said() -> None:
    garment = BenchPiece(panel(cut=CutPlan(1, fold="centre")))
    sheet = BenchPiece(Piece("facing", "Facing", ()))
    sheet.face(garment.waist, depth=6 * cm, ends=("side", "centre"), short=1 * cm)
    assert sheet.freeze().edge("outer").path.length == pytest.approx(300.0)
    sheet.face(garment.waist, depth=6 * cm, ends=("side", "centre"), short=1 * cm, short_at="centre")
    assert sheet.freeze().edge("outer").path.length == pytest.approx(290.0)


@pytest.mark.parametrize(("short", "fits"), [(149.0, True), (151.0, False)])
def test_a_facing_is_drawn_short_by_less_than_half(short: float, fits: bool) -> None:
    run = laid(panel(), ["waist"])
    if fits:
        assert facing((run,), 60.0, ("a", "b"), (short, 0.0)).edges[2].path.length == pytest.approx(300 - short)
    else:
        refused(lambda: facing((run,), 60.0, ("a", "b"), (short, 0.0)))


def test_a_run_turned_round() -> None:
    run = laid(panel(notches=(Notch("waist", 40.0),)), ["waist"])
    back = turned(run)
    assert (run.head[0], run.tail[0]) == ("side", "centre") == (back.tail[0], back.head[0])
    assert run.left is True and back.left is False
    assert back.stretches[0].notches[0].distance == 260.0 and back.stretches[0].path.start == Point(0, 500)
    assert turned(back) == run
    for names, words in ((["waist", "hem"], "do not follow"), (["hem", "side", "waist"], "takes up all")):
        refused(lambda names=names: laid(panel(), names), words)
    assert [s.edge for s in laid(panel(), ["waist", "side"]).stretches] == ["waist", "side"]


@pytest.mark.parametrize("by", [0.0, 30.0, -30.0])
@pytest.mark.parametrize("only", ["front", "back"])
def test_a_moved_seam_gives_to_one_what_it_takes_from_the_other(by: float, only: str) -> None:
    """Two panels meet at their sides; the seam in the facing lies `by` toward the back."""
    front, back = BenchPiece(panel(name="front")), BenchPiece(panel(name="back"))
    sheet = BenchPiece(Piece("facing", "Facing", ()))
    toward = {} if not by else {"moved": abs(by) * 0.1 * cm, "toward": back if by > 0 else front}
    sheet.face(
        front.waist,
        back.waist,
        across="side",
        depth=6 * cm,
        ends=("a", "b"),
        only=front if only == "front" else back,
        **toward,
    )
    made = sheet.freeze()
    wide = 300 + by if only == "front" else 300 - by
    assert made.edge("outer").path.length == pytest.approx(wide)
    run = [e for e in made.edges if e.name not in ("a", "b", "outer")]
    assert sum(e.path.length for e in run) == pytest.approx(wide)
    assert made.source == only


def test_one_facing_over_a_seam_marks_it() -> None:
    front, back = BenchPiece(panel(name="front")), BenchPiece(panel(name="back"))
    sheet = BenchPiece(Piece("facing", "Facing", ()))
    sheet.face(front.waist, back.waist, across="side", depth=6 * cm, ends=("a", "b"))
    made = sheet.freeze()
    assert [e.name for e in made.edges] == ["front_waist", "back_waist", "b", "outer", "a"]
    assert made.edge("outer").path.length == pytest.approx(600.0)
    (mark,) = made.marks
    assert (mark.name, mark.kind, mark.point) == ("front_side_seam", "point", Point(300, 500))


@pytest.mark.parametrize(("given", "count", "mirrored", "fold"), [({}, 1, False, ""), ({"fold": "side"}, 2, True, "")])
def test_interfacing_along_a_run(given: dict[str, str], count: int, mirrored: bool, fold: str) -> None:
    """Cut as its piece is; of a piece on the fold whose run leaves the fold, one for each side."""
    piece = panel(cut=CutPlan(1, **given), grain=Grain(Point(50, 20), Point(50, 480)))
    garment, sheet = BenchPiece(piece), BenchPiece(Piece("stiff", "Stiff", ()))
    sheet.interface(garment.centre, depth=6 * cm, ends=("low", "high"), beyond=0.2 * cm)
    made = sheet.freeze()
    assert (made.cut.count, made.cut.mirrored, made.cut.fold, made.cut.cloth) == (count, mirrored, fold, "interfacing")
    assert {e.allowance for e in made.edges} == {2.0}
    assert made.grain is not None and made.grain.start.x == pytest.approx(30.0) == made.grain.end.x
    sheet.interface(garment.centre, depth=6 * cm, ends=("low", "high"))
    assert {e.name: e.allowance for e in sheet.freeze().edges} == {
        "centre": 10.0,
        "low": 10.0,
        "outer": 0.0,
        "high": 10.0,
    }


def test_a_facing_over_two_edges_of_a_piece() -> None:
    """Side and waist meet at a right angle: the outer edges are each shorter by the depth."""
    garment, sheet = BenchPiece(panel()), BenchPiece(Piece("facing", "Facing", ()))
    sheet.face(garment.side, garment.waist, depth=6 * cm, ends=("a", "b"))
    made = sheet.freeze()
    assert [e.name for e in made.edges] == ["side", "waist", "b", "outer", "a"]
    assert made.edge("outer").path.length == pytest.approx(500 - 60 + 300 - 60)


def test_interfacing_of_a_mirrored_pair_is_a_pair() -> None:
    piece = panel(cut=CutPlan(2, mirrored=True))
    garment, sheet = BenchPiece(piece), BenchPiece(Piece("stiff", "Stiff", ()))
    sheet.interface(garment.waist, depth=6 * cm, ends=("a", "b"))
    assert (sheet.freeze().cut.count, sheet.freeze().cut.mirrored, sheet.freeze().cut.fold) == (2, True, "")


def test_a_lining_keeps_the_darts_with_two_points_that_lie_in_it() -> None:
    """Sewn into the outer cloth alone, they would leave the lining that much wider."""

    def dart(name: str, y: float) -> Mark:
        corners = (Point(150, y + 90), Point(140, y), Point(150, y - 90), Point(160, y))
        return Mark(name, "dart", path=around(*corners))

    made = lining.inside(panel(marks=(dart("waist_dart", 250), dart("cut_off", 60))))
    assert [mark.name for mark in made.marks] == ["waist_dart"]
