"""Dart moves, slashes, pleats and tucks just inside and just outside what they take, and where things come to lie. On a
panel of straight lines, where all of it is plain geometry."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson import moves, pleating, shaping, slash
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece


def panel(**more: Any) -> Piece:
    """A panel 300 wide and 500 high: hem, side, waist, centre, going round to the left."""
    at = [Point(0, 0), Point(300, 0), Point(300, 500), Point(0, 500)]
    names = ("hem", "side", "waist", "centre")
    edges = tuple(Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True))
    return replace(Piece("skirt", "Skirt", edges), **more)


def darted(half: float = 10.0, deep: float = 120.0, **more: Any) -> Piece:
    """A dart in the middle of the waist."""
    dart = Dart("dart", "waist", Point(150, 500 - deep), 150 - half, 150 + half)
    return panel(darts=(dart,), **more)


def refused(write: Callable[[], Any], words: str | None = None) -> None:
    with pytest.raises(KitError, match=words):
        write()


# ---- darts ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("at", "intake", "fits"),
    [
        (150, 20, True),
        (10.1, 20, True),
        (9.9, 20, False),
        (289.9, 20, True),
        (290.1, 20, False),
        (150, 0, False),
        (150, -5, False),
    ],
)
def test_where_a_dart_fits_on_its_edge(at: float, intake: float, fits: bool) -> None:
    write = lambda: moves.add_dart(panel(), "dart", "waist", at=at, intake=intake, apex=Point(300 - at, 300))  # noqa: E731
    if not fits:
        refused(write)
        return
    (dart,) = write().darts
    assert (dart.start, dart.end) == (pytest.approx(at - intake / 2), pytest.approx(at + intake / 2))
    assert (dart.edge, dart.apex, dart.pressed, dart.short) == ("waist", Point(300 - at, 300), "end", 0.0)


@pytest.mark.parametrize(("intake", "fits"), [(18.0, True), (30.0, False)])
def test_a_dart_is_deeper_than_half_its_width(intake: float, fits: bool) -> None:
    """Ten millimetres deep; its legs would lie flat."""
    write = lambda: moves.add_dart(panel(), "dart", "waist", at=150, intake=intake, apex=Point(150, 490))  # noqa: E731
    if fits:
        assert write().darts[0].end - write().darts[0].start == pytest.approx(intake, abs=1e-3)
    else:
        refused(write)


def test_a_slanting_dart_has_equal_legs_and_keeps_the_corners() -> None:
    made = moves.add_dart(
        panel(notches=(Notch("waist", 20.0), Notch("waist", 280.0))),
        "dart",
        "waist",
        at=150,
        intake=30,
        apex=Point(110, 350),
    )
    (dart,) = made.darts
    path = made.edge("waist").path
    one, two = path.at(dart.start), path.at(dart.end)
    assert one.distance(dart.apex) == pytest.approx(two.distance(dart.apex), abs=1e-6) and one.distance(
        two
    ) == pytest.approx(30)
    assert path.start == Point(300, 500) and path.end == Point(0, 500)
    first, last = (notch.distance for notch in made.notches)
    assert first == 20.0 and path.length - last == pytest.approx(20.0, abs=1e-6)


@pytest.mark.parametrize(("share", "fits"), [(0.0, False), (1e-3, True), (1.0, True), (1.01, False), (-0.5, False)])
def test_how_much_of_a_dart_is_moved(share: float, fits: bool) -> None:
    write = lambda: moves.move_dart(darted(), "dart", "side", 300.0, share=share)  # noqa: E731
    if fits:
        assert len(write().darts) == (1 if share == 1.0 else 2)
    else:
        refused(write)


@pytest.mark.parametrize(("off", "fits"), [(0.0, True), (0.5, False)])
def test_only_equal_legs_are_moved(off: float, fits: bool) -> None:
    piece = darted()
    piece = replace(piece, darts=(replace(piece.darts[0], end=piece.darts[0].end + off),))
    write = lambda: moves.move_dart(piece, "dart", "side", 300.0)  # noqa: E731
    if fits:
        write()
    else:
        refused(write)


@pytest.mark.parametrize("way", ["pivot", "slash"])
@pytest.mark.parametrize("hold", ["hem", "top"])
def test_a_moved_dart_turns_by_its_angle(way: Any, hold: str) -> None:
    """The dart's angle is 2 atan(half / deep); as far from the apex it opens by as much. The grainline's part stays."""
    grain = Grain(Point(20, 100), Point(20, 300)) if hold == "hem" else Grain(Point(280, 480), Point(280, 440))
    piece = darted(points=(("low", Point(10, 10)), ("high", Point(290, 490))), grain=grain)
    made = moves.move_dart(piece, "dart", "side", 380.0, way=way)
    (dart,) = made.darts
    angle = 2 * math.atan(10 / 120)
    far = Point(150, 380).distance(Point(300, 380))
    assert dart.edge == "side" and dart.end - dart.start == pytest.approx(2 * far * math.sin(angle / 2))
    assert made.edge("waist").path.length == pytest.approx(280.0)
    points = dict(made.points)
    assert (points["low"].close_to(Point(10, 10)), points["high"].close_to(Point(290, 490))) == (
        hold == "hem",
        hold != "hem",
    )


def test_a_dart_at_its_old_place_stays() -> None:
    piece = darted()
    for at in (140.0, 160.0):
        assert moves.move_dart(piece, "dart", "waist", at) == piece
    refused(lambda: moves.move_dart(piece, "dart", "waist", 140.0, share=0.5))
    refused(lambda: moves.move_dart(piece, "dart", "waist", 150.0))


@pytest.mark.parametrize(("to", "at"), [("side", 0.0), ("side", 500.0), ("waist", 0.0), ("waist", 300.0)])
def test_a_dart_moved_to_a_corner(to: str, at: float) -> None:
    """At either end of the edge it opens there; the whole edge is as long as before beside it."""
    made = moves.move_dart(darted(), "dart", to, at)
    (dart,) = made.darts
    path = made.edge(to).path
    assert (dart.start if at == 0.0 else path.length - dart.end) == pytest.approx(0.0, abs=1e-6)
    whole = 280.0 if to == "waist" else 500.0
    assert path.length - (dart.end - dart.start) == pytest.approx(whole, abs=1e-6)


def test_splitting_shares_the_angle_in_halves() -> None:
    made = moves.split_dart(darted(), "dart", apart=30.0)
    one, two = made.darts
    path = made.edge("waist").path
    assert [d.name for d in made.darts] == ["dart", "dart_2"]
    angles = [abs((path.at(d.start) - d.apex).turn_to(path.at(d.end) - d.apex)) for d in made.darts]
    assert angles == pytest.approx([math.atan(10 / 120)] * 2)
    assert two.start - one.end == pytest.approx(30.0)


@pytest.mark.parametrize(("short", "fits"), [(0.0, True), (95.0, True), (97.0, False), (-1.0, False)])
def test_how_far_a_dart_is_shortened(short: float, fits: bool) -> None:
    """Up to four fifths of its 120 mm."""
    if fits:
        assert moves.shorten_dart(darted(), "dart", short).darts[0].short == short
    else:
        refused(lambda: moves.shorten_dart(darted(), "dart", short))


@pytest.mark.parametrize(
    ("over", "low", "high"), [(None, 120.0, 180.0), (100.0, 100.0, 200.0), (20.0, 140.0, 160.0), (900.0, 0.0, 300.0)]
)
@pytest.mark.parametrize("how", ["gathers", "ease"])
def test_fullness_lies_between_two_notches(over: float | None, low: float, high: float, how: Any) -> None:
    """Over three times the intake (20 mm) unless said; the mark is drawn 6 mm inside the edge."""
    made = moves.dart_to_fullness(darted(), "dart", how, over)
    assert made.darts == () and made.edge("waist").path.length == pytest.approx(300.0)
    assert [(n.edge, n.name) for n in made.notches] == [("waist", f"dart_{how}_1"), ("waist", f"dart_{how}_2")]
    assert [n.distance for n in made.notches] == pytest.approx([low, high])
    (mark,) = made.marks
    assert (mark.name, mark.kind, mark.edge) == (f"dart_{how}", "line", "waist")
    assert (mark.start, mark.end) == (pytest.approx(low), pytest.approx(high))
    assert mark.path is not None and {round(p.y, 6) for p in mark.path.points()} == {494.0}
    assert mark.said.startswith("gather in 2 cm" if how == "gathers" else "ease in 2 cm")


def test_fullness_needs_room() -> None:
    refused(lambda: moves.dart_to_fullness(darted(), "dart", "gathers", 19.0))


# ---- slashes ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("at", "fits"), [(-0.5, False), (0.0, True), (500.0, True), (500.5, False)])
def test_a_place_lies_on_its_edge(at: float, fits: bool) -> None:
    if fits:
        assert slash.on_edge(panel(), "side", at) == Point(300, at)
    else:
        refused(lambda: slash.on_edge(panel(), "side", at))


@pytest.mark.parametrize(("at", "fits"), [(140.0, True), (141.0, False), (159.0, False), (160.0, True)])
def test_a_place_lies_beside_a_dart(at: float, fits: bool) -> None:
    if fits:
        assert slash.on_edge(darted(), "waist", at) == Point(300 - at, 500)
    else:
        refused(lambda: slash.on_edge(darted(), "waist", at))
    refused(lambda: slash.on_edge(panel(cut=CutPlan(fold="centre")), "centre", 20.0), "on the fold")


def test_a_slash_stays_on_the_paper_and_clear_of_darts() -> None:
    piece = darted()
    assert slash.slash_line(piece, Point(50, 0), Point(50, 500)).length == 500
    refused(lambda: slash.slash_line(piece, Point(0, 450), Point(300, 450)))
    assert slash.slash_line(piece, Point(0, 450), Point(300, 450), "dart").length == 300
    assert slash.slash_line(piece, Point(0, 380), Point(150, 380)).length == 150  # up to the dart's own point


@pytest.mark.parametrize("hinged", [False, True])
def test_spreading_keeps_what_lies_on_each_part(hinged: bool) -> None:
    """Slashed at x = 100 and spread by 40; the larger part, on the right, stays."""
    piece = panel(
        points=(("left", Point(20, 20)), ("right", Point(280, 20))),
        guides=(("across", Path.line(Point(50, 100), Point(250, 100))),),
        notches=(Notch("hem", 50.0), Notch("hem", 200.0), Notch("waist", 250.0)),
        marks=(Mark("spot", "point", point=Point(40, 40)), Mark("gap", "opening", edge="hem", start=90.0, end=110.0)),
    )
    made = shaping.spread(piece, ("hem", 100.0), ("waist", 200.0), 40.0, hinged=hinged)
    points, guides = dict(made.points), dict(made.guides)
    assert points["right"] == Point(280, 20) and made.edge("side") == piece.edge("side")
    assert made.edge("hem").path.length == pytest.approx(340.0)
    assert made.edge("waist").path.length == pytest.approx(300.0 if hinged else 340.0)
    assert [n.distance for n in made.notches] == pytest.approx([50.0, 240.0, 250.0 + (0 if hinged else 40)])
    gap = next(mark for mark in made.marks if mark.name == "gap")
    assert (gap.start, gap.end) == (pytest.approx(90.0), pytest.approx(150.0))
    assert sorted(guides) == ["across", "across_2"]
    assert sum(guide.length for guide in guides.values()) == pytest.approx(200.0)
    if not hinged:
        assert points["left"].close_to(Point(-20, 20)) and guides["across"].start.close_to(Point(10, 100))
        assert made.marks[0].point is not None and made.marks[0].point.close_to(Point(0, 40))
    else:
        turn = 2 * math.asin(20 / 500)
        foot = Point(100, 500)
        wanted = foot + (Point(20, 20) - foot).rotated(-turn)
        assert points["left"].close_to(wanted, 1e-6)


@pytest.mark.parametrize(
    ("cut", "stays"),
    [
        ({"grain": Grain(Point(20, 50), Point(20, 400))}, "left"),
        ({}, "right"),
        ({"cut": CutPlan(fold="centre")}, "left"),
    ],
)
def test_the_part_with_the_fold_or_the_grainline_stays(cut: dict[str, Any], stays: str) -> None:
    piece = panel(points=(("left", Point(20, 20)), ("right", Point(280, 20))), **cut)
    made = dict(shaping.spread(piece, ("hem", 100.0), ("waist", 200.0), 40.0).points)
    assert (made["left"] == Point(20, 20), made["right"] == Point(280, 20)) == (stays == "left", stays == "right")
    other = "right" if stays == "left" else "left"
    assert made[other].close_to(Point(320, 20) if other == "right" else Point(-20, 20))


def test_a_slash_through_both_ends_of_a_fold_is_refused() -> None:
    piece = panel(cut=CutPlan(fold="centre"))
    refused(lambda: shaping.spread(piece, ("centre", 100.0), ("side", 200.0), 40.0))


# ---- pleats and tucks -------------------------------------------------------------------------------------


def test_straight_across() -> None:
    assert pleating.across(panel(), "waist", 120.0) == ("hem", pytest.approx(180.0))
    from kit.geometry import Vector

    assert pleating.across(panel(), "waist", 120.0, Vector(0, 1)) == ("hem", pytest.approx(180.0))
    assert pleating.across(panel(), "waist", 120.0, Vector(1, 1))[0] == "centre"
    refused(lambda: pleating.across(panel(), "waist", 120.0, Vector(1, 0.1)))


@pytest.mark.parametrize("held", ["near", "both"])
def test_a_pleat_takes_up_its_intake_at_both_edges(held: Any) -> None:
    made = pleating.add_pleat(panel(), "pleat", ("waist", 100.0), ("hem", 200.0), 60.0, held=held)
    (pleat,) = made.pleats
    assert (pleat.edge, pleat.far, pleat.held) == ("waist", "hem", held)
    assert [round(line.length, 6) for line in pleat.lines] == [500.0, 500.0]
    assert pleat.lines[0].start.distance(pleat.lines[1].start) == pytest.approx(60.0)
    assert made.edge("hem").path.length == pytest.approx(360.0 if held == "near" else made.edge("hem").path.length)


def test_tucks_stand_apart_and_take_twice_their_depth() -> None:
    made = pleating.tuck_row(panel(), "tuck", ("waist", 60.0), count=4, depth=5.0, apart=20.0)
    assert [pleat.name for pleat in made.pleats] == [f"tuck_{i + 1}" for i in range(4)]
    assert {round(pleat.lines[0].start.distance(pleat.lines[1].start), 6) for pleat in made.pleats} == {10.0}
    starts = sorted(pleat.start for pleat in made.pleats)
    ends = sorted(pleat.end for pleat in made.pleats)
    gaps = [b - a for a, b in zip(ends, starts[1:], strict=False)]
    assert max(gaps) - min(gaps) < 0.2  # all alike
