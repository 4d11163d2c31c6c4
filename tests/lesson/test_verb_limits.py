"""Verbs just inside and just outside what they take, and what they do where nothing is said. The limits are the kit's
own, told in its messages; where one is a fact of the trade its source stands beside the value in the code."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson import corners, shaping
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.truing import trued
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import CutPlan, Edge, Piece
from kit.units import cm, mm

At = tuple[float, float]


def ruled(name: str, *places: tuple[str, At], **more: Any) -> Piece:
    """A piece of straight edges, each named with the place it begins at."""
    points = [Point(*at) for _, at in places]
    edges = tuple(
        Edge(edge, Path.line(a, b)) for (edge, _), a, b in zip(places, points, [*points[1:], points[0]], strict=True)
    )
    return replace(Piece(name, name.capitalize(), edges), **more)


def square(name: str = "front", size: float = 200.0, **more: Any) -> BenchPiece:
    """A square: hem at the bottom, then side, top and centre."""
    at = {"hem": (0, 0), "side": (size, 0), "top": (size, size), "centre": (0, size)}
    return BenchPiece(ruled(name, *at.items(), **more))


def refused(write: Callable[[], Any], words: str = "") -> None:
    with pytest.raises(KitError, match=words or None) as error:
        write()
    assert str(error.value)


# ---- lines that are carried on, and places that are the same ----------------------------------------------


@pytest.mark.parametrize(("short", "meets"), [(0.0, True), (49.0, True), (51.0, False)])
@pytest.mark.parametrize("end", ["start", "end"])
def test_a_straight_line_is_carried_on_five_centimetres_to_meet(short: float, meets: bool, end: str) -> None:
    piece = square()
    line = piece.place((-100) * mm, 80 * mm).to(piece.place((-short) * mm, 80 * mm))
    line = line if end == "end" else line.end.to(line.start)
    if meets:
        assert float(piece.centre.meets(line)) == pytest.approx(120.0)
    else:
        refused(lambda: piece.centre.meets(line), "does not meet")


@pytest.mark.parametrize(("short", "meets"), [(0.0, True), (49.0, True), (51.0, False)])
def test_an_opening_level_with_a_line_folded_over(short: float, meets: bool) -> None:
    """A wrap edge of the other half, mirrored about the centre line, meets the side."""
    piece = square()
    line = piece.place((-100) * mm, 80 * mm).to(piece.place((-200 + short) * mm, 80 * mm))
    if meets:
        piece.leave_open("slit", "side", at=line, size=3 * cm)
        assert piece.freeze().marks[0].start == pytest.approx(80.0)
    else:
        refused(lambda: piece.leave_open("slit", "side", at=line, size=3 * cm))


def test_an_opening_level_with_a_point() -> None:
    for out in (20, 350):
        piece = square()
        piece.leave_open("slit", "side", at=piece.place(out * mm, 80 * mm), size=3 * cm)
        assert piece.freeze().marks[0].start == pytest.approx(80.0)
    piece = square()
    refused(lambda: piece.leave_open("slit", "side", at=piece.place(2 * cm, 25 * cm), size=3 * cm))


@pytest.mark.parametrize(("apart", "fits"), [(0.0, False), (0.9, False), (1.1, True)])
def test_two_notches_do_not_share_a_place(apart: float, fits: bool) -> None:
    front, back = square(), square("back")
    front.match(front.side, back.side, at=60 * mm)
    for way in (1, -1):
        again = lambda way=way: front.match(front.side, back.side, at=(60 + way * apart) * mm)  # noqa: E731
        if fits:
            again()
        else:
            refused(again)
    names = [notch.name for notch in front.freeze().notches]
    assert names == ["side_match", "side_match_2", "side_match_3"][: len(names)] and len(names) == (3 if fits else 1)
    assert {notch.kind for notch in back.freeze().notches} == {"double"}


@pytest.mark.parametrize(("off", "taken"), [(0.0, True), (0.9, True), (1.1, False)])
def test_a_point_beside_an_edge_is_a_place_on_it_within_a_millimetre(off: float, taken: bool) -> None:
    front, back = square(), square("back")
    spot = front.place((200 - off) * mm, 70 * mm)
    if taken:
        front.match(front.side, back.side, at=spot)
        assert front.freeze().notches[0].distance == pytest.approx(70) == back.freeze().notches[0].distance
    else:
        refused(lambda: front.match(front.side, back.side, at=spot))


@pytest.mark.parametrize("gap", [0.0, 0.01, 0.03, 5.0])
@pytest.mark.parametrize("way", [1, -1])
def test_corners_are_made_to_meet(gap: float, way: int) -> None:
    """The one carried on, or cut off, at the other: they meet in one point on both lines."""
    one = Path.line(Point(0, 0), Point(100 + way * gap, 0))
    two = Path.line(Point(100, -50), Point(100, 50))
    a, b = corners.meeting(one, two, ("hem", "side"), "Front")
    assert a.end.close_to(b.start, 0.025) and a.start == Point(0, 0) and b.end == Point(100, 50)
    assert a.end.x == pytest.approx(100, abs=0.025) and b.length == pytest.approx(50, abs=0.025)


def test_corners_that_meet_are_left_alone_and_parallels_never_do() -> None:
    one, two = Path.line(Point(0, 0), Point(100, 0)), Path.line(Point(100, 0), Point(100, 50))
    assert corners.meeting(one, two, ("a", "b"), "Front") == (one, two)
    refused(lambda: corners.meeting(one, Path.line(Point(0, 9), Point(100, 9)), ("a", "b"), "Front"), "Front")


def test_new_edges_are_turned_to_follow_one_another() -> None:
    a, b, c, d = Point(0, 0), Point(100, 0), Point(100, 50), Point(0, 50)
    lines = [("one", Path.line(b, a)), ("two", Path.line(c, b)), ("three", Path.line(c, d))]
    found = corners.in_order(lines, None, None)
    assert [name for name, _ in found] == ["one", "two", "three"]
    assert [path.start for _, path in found] == [a, b, c]
    turned = corners.in_order([("only", Path.line(c, b))], Path.line(a, b), None)
    assert turned[0][1].start == b
    turned = corners.in_order([("only", Path.line(c, b))], None, Path.line(b, a))
    assert turned[0][1].end == b


# ---- how it is cut ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"count": 0}, "0 cannot be cut"),
        ({"count": 3, "mirrored": True}, "even numbers, not 3"),
        ({"mirrored": True, "count": 2, "fold": "centre"}, "not both"),
        ({"fold": "slant"}, "curved|edge"),
        ({"right_side_up": True, "mirrored": True, "count": 2}, "as a mirrored pair"),
        ({"right_side_up": True, "fold": "centre"}, "on the fold"),
        ({"cloth": "velvet"}, "not a cloth"),
        ({"cloth": "interfacing", "interfacing": 1}, "not interfaced itself"),
    ],
)
def test_what_cannot_be_cut(given: dict[str, Any], words: str) -> None:
    refused(lambda: square().cut(**given), words)


@pytest.mark.parametrize(
    ("given", "plan"),
    [
        ({}, CutPlan(1)),
        ({"count": 1}, CutPlan(1)),
        ({"count": 4, "mirrored": True}, CutPlan(4, mirrored=True)),
        ({"fold": "centre"}, CutPlan(1, fold="centre")),
        ({"count": 2, "interfacing": 2, "cloth": "lining"}, CutPlan(2, cloth="lining", interfacing=2)),
        ({"right_side_up": True}, CutPlan(1, right_side_up=True)),
        ({"cloth": "interfacing"}, CutPlan(1, cloth="interfacing")),
    ],
)
def test_how_it_is_cut(given: dict[str, Any], plan: CutPlan) -> None:
    piece = square(number=7)
    piece.allow(centre=1 * cm)
    piece.cut(**given)
    made = piece.freeze()
    assert made.cut == plan and made.cut.said and made.number == 7 and made.title == "Front"
    assert made.edge("centre").allowance == (0.0 if plan.fold else 10.0)
    piece.cut(title="Vorn", number=0, **given)
    assert (piece.freeze().title, piece.freeze().number) == ("Vorn", 0)


# ---- moving edges -----------------------------------------------------------------------------------------


def neck(**more: Any) -> Piece:
    """A half front with a neck of 10 cm wide and deep."""
    return ruled(
        "front",
        ("hem", (0, 0)),
        ("side", (200, 0)),
        ("shoulder", (200, 300)),
        ("neck", (100, 300)),
        ("centre", (0, 200)),
        **more,
    )


def turned_round(piece: Piece) -> Piece:
    """The same outline written the other way round, so that the centre comes before the neck."""
    return replace(piece, edges=tuple(replace(e, path=e.path.reversed()) for e in reversed(piece.edges)))


@pytest.mark.parametrize(("by", "fits"), [(0.0, True), (50.0, True), (198.5, True), (199.5, False), (250.0, False)])
def test_how_far_a_neckline_is_lowered(by: float, fits: bool) -> None:
    piece = turned_round(neck())
    if not fits:
        refused(lambda: shaping.lower_neckline(piece, by))
        return
    made = shaping.lower_neckline(piece, by)
    assert made.edge("neck").path.start.close_to(Point(0, 200 - by), 1e-6)
    assert made.edge("neck").path.end.close_to(Point(100, 300), 1e-6)
    assert made.edge("centre").path.length == pytest.approx(200 - by)
    assert made.edge("shoulder").path == piece.edge("shoulder").path


@pytest.mark.parametrize(("wider", "fits"), [(0.0, True), (30.0, True), (98.5, True), (99.5, False)])
def test_how_far_a_neckline_is_widened(wider: float, fits: bool) -> None:
    piece = turned_round(neck(points=(("neck_point", Point(100, 300)), ("other", Point(100, 299)))))
    if not fits:
        refused(lambda: shaping.lower_neckline(piece, 10.0, wider=wider))
        return
    made = shaping.lower_neckline(piece, 10.0, wider=wider)
    assert made.edge("neck").path.end.close_to(Point(100 + wider, 300), 1e-6)
    assert made.edge("shoulder").path.length == pytest.approx(100 - wider)
    assert dict(made.points)["neck_point"].close_to(Point(100 + wider, 300), 1e-6)
    assert dict(made.points)["other"] == Point(100, 299)


@pytest.mark.parametrize(("wider", "fits"), [(20.0, True), (38.5, True), (39.5, False)])
def test_a_neckline_stops_before_a_shoulder_dart(wider: float, fits: bool) -> None:
    """The dart opens 4 cm along the shoulder from the neck."""
    piece = turned_round(neck(darts=(Dart("dart", "shoulder", Point(150, 200), 40.0, 60.0),)))
    if fits:
        made = shaping.lower_neckline(piece, 10.0, wider=wider)
        (dart,) = made.darts
        assert (dart.start, dart.end) == (pytest.approx(40 - wider), pytest.approx(60 - wider))
    else:
        refused(lambda: shaping.lower_neckline(piece, 10.0, wider=wider), "dart")


@pytest.mark.parametrize("flip", [False, True])
def test_ease_moves_the_side_out_level(flip: bool) -> None:
    piece = neck(
        points=(("side_waist", Point(200, 100)), ("inner", Point(150, 100))),
        guides=(
            ("waist", Path.line(Point(0, 100), Point(200, 100))),
            ("short", Path.line(Point(0, 90), Point(50, 90))),
        ),
    )
    made = shaping.add_ease(turned_round(piece) if flip else piece, 15.0)
    assert {p.x for p in made.edge("side").path.points()} == {215.0} and made.edge("side").path.length == 300
    assert made.edge("hem").path.length == pytest.approx(215) and made.edge("shoulder").path.length == pytest.approx(
        115
    )
    assert dict(made.points) == {"side_waist": Point(215, 100), "inner": Point(150, 100)}
    guides = dict(made.guides)
    assert guides["waist"].length == pytest.approx(215) and guides["short"].length == 50
    made.outline  # noqa: B018  closing raises when it does not


def test_an_edge_that_lies_level_is_no_side() -> None:
    refused(lambda: shaping.add_ease(neck(), 15.0, "hem"), "does not run up and down")
    refused(lambda: shaping.extend_hem(neck(darts=(Dart("d", "hem", Point(50, 50), 40, 60),)), "hem", 5.0), "opens")


@pytest.mark.parametrize("flip", [False, True])
@pytest.mark.parametrize("by", [0.0, 12.0, 150.0])
def test_a_hem_is_let_down(flip: bool, by: float) -> None:
    slanted = ruled(
        "front",
        ("hem", (0, 0)),
        ("side", (260, 0)),
        ("top", (200, 300)),
        ("centre", (0, 300)),
        points=(("corner", Point(260, 0)),),
    )
    made = shaping.extend_hem(turned_round(slanted) if flip else slanted, "hem", by)
    spread = 260 + by * 60 / 300
    assert {round(p.y, 6) for p in made.edge("hem").path.points()} == {-by}
    assert made.edge("hem").path.length == pytest.approx(spread)
    assert made.edge("side").path.length == pytest.approx((300 + by) * math.hypot(60, 300) / 300)
    assert dict(made.points)["corner"].close_to(Point(spread, -by), 1e-6)


@pytest.mark.parametrize(("share", "fits"), [(0.5, True), (1.85, True), (1.95, False)])
def test_how_far_a_hinged_slash_opens(share: float, fits: bool) -> None:
    piece = neck()
    write = lambda: shaping.spread(piece, ("hem", 60.0), ("neck", 70.0), share * slash, hinged=True)  # noqa: E731
    a, b = piece.edge("hem").path.at(60.0), piece.edge("neck").path.at(70.0)
    slash = a.distance(b)
    if fits:
        made = write()
        assert made.edge("hem").path.length == pytest.approx(200 + share * slash)
        assert made.edge("neck").path.length == pytest.approx(math.hypot(100, 100), abs=0.05)
    else:
        refused(write)


# ---- truing -----------------------------------------------------------------------------------------------


def panels(own: float, other: float) -> tuple[Piece, Piece]:
    """Two panels for a seam at x = 100, `own` and `other` long from the top."""

    def one(name: str, long: float, out: float) -> Piece:
        return ruled(
            name, ("top", (out, 300)), ("seam", (100, 300)), ("hem", (100, 300 - long)), ("far", (out, 300 - long))
        )

    return one("left", own, -800.0), one("right", other, -800.0)


@pytest.mark.parametrize(("gap", "fits"), [(0.0, True), (10.0, True), (43.0, True), (47.0, False)])
@pytest.mark.parametrize("way", [1, -1])
def test_edges_are_trued_up_to_a_seventh(gap: float, fits: bool, way: int) -> None:
    """15 hundredths of the longer one, 300 mm."""
    own, other = panels(*((300.0, 300.0 - gap)[::way]))
    for share, ends in (("half", (300 - gap / 2,) * 2), ("own", (other.edge("seam").path.length,) * 2)):
        if not fits:
            refused(lambda share=share: trued(own, ("seam",), other, ("seam",), share=share, ends="none"))
            continue
        made = trued(own, ("seam",), other, ("seam",), share=share, ends="none")
        found = [piece.edge("seam").path.length for piece in (made.own, made.other)]
        assert found == pytest.approx(list(ends)) and made.difference == pytest.approx(way * gap)
        wanted = [(n, s - w) for n, s, w in zip(("left", "right"), ends, (300.0, 300.0 - gap)[::way], strict=True)]
        told = [(name, by) for name, _, by, _, _ in made.changes]
        assert told == [(n, pytest.approx(by)) for n, by in wanted if abs(by) > 0.01]


@pytest.mark.parametrize(("gap", "changed"), [(0.005, False), (0.015, True)])
def test_what_differs_by_a_hundredth_is_left(gap: float, changed: bool) -> None:
    own, other = panels(300.0, 300.0 - gap)
    made = trued(own, ("seam",), other, ("seam",), share="other", ends="none")
    assert made.own == own and (made.other != other) is changed and bool(made.changes) is changed


def test_what_is_held_stays() -> None:
    own, other = panels(300.0, 290.0)
    start = trued(own, ("seam",), other, ("seam",), share="own", ends="none")
    end = trued(own, ("seam",), other, ("seam",), share="own", hold="end", ends="none")
    assert start.own.edge("seam").path.start == Point(100, 300)
    assert start.own.edge("seam").path.end.close_to(Point(100, 10), 1e-6)
    assert end.own.edge("seam").path.end == Point(100, 0)
    assert end.own.edge("seam").path.start.close_to(Point(100, 290), 1e-6)


def test_ease_is_left_in_the_other_edge() -> None:
    own, other = panels(300.0, 300.0)
    made = trued(own, ("seam",), other, ("seam",), ease=8.0, ends="none")
    lengths = [piece.edge("seam").path.length for piece in (made.own, made.other)]
    assert lengths == pytest.approx([296.0, 304.0])


# ---- corners of the allowances ----------------------------------------------------------------------------


def cornered(rule: str, **more: Any) -> Any:
    piece = square()
    piece.allow(hem=40 * mm, side=15 * mm, top=15 * mm, centre=15 * mm)
    piece.finish_corner("hem", "side", rule, **more)
    return opened(piece).piece.corners[0]


@pytest.mark.parametrize(
    ("rule", "given", "size"),
    [
        ("clipped", {}, 0.0),
        ("clipped", {"size": 10 * mm}, 10.0),
        ("clipped", {"size": 42.6 * mm}, 42.6),
        ("clipped", {"size": 42.8 * mm}, None),  # beyond the point of the corner: 4 cm and 1.5 cm make 42.72 mm
        ("rounded", {}, 0.0),
        ("rounded", {"size": 40 * mm}, 40.0),
        ("rounded", {"size": 39.9 * mm}, None),
        ("rounded", {"size": 42.8 * mm}, None),
        ("mitre", {"size": 10 * mm}, None),
        ("squared", {"size": 10 * mm}, None),
        ("clipped", {"size": 301 * mm}, None),
    ],
)
def test_how_much_of_a_corner_is_cut_off(rule: str, given: dict[str, Any], size: float | None) -> None:
    if size is None:
        refused(lambda: cornered(rule, **given))
    else:
        found = cornered(rule, **given)
        assert (found.rule, found.size, found.by_hand) == (rule, size, True)


@pytest.mark.parametrize(
    ("folds", "kept"),
    [
        (0, (0.0,)),
        ((0, 15 * mm), (0.0, 15.0)),
        ((0, 39 * mm), (0.0, 39.0)),
        ((0, 40 * mm), None),
        ((0, 0.9 * mm), None),
        ((0, 1.1 * mm), (0.0, 1.1)),
        ((10 * mm, 5 * mm), None),
        ((), None),
    ],
)
def test_folds_lie_in_order_inside_the_allowance(folds: Any, kept: tuple[float, ...] | None) -> None:
    if kept is None:
        refused(lambda: cornered("turned", folds=folds))
    else:
        found = cornered("turned", folds=folds)
        assert (found.folds, found.turned) == (kept, "hem")
    refused(lambda: cornered("clipped", folds=(0, 10 * mm)), "not folded")


def test_the_edge_named_first_is_turned() -> None:
    assert cornered("squared").turned == "hem" and cornered("squared", turned="side").turned == "side"
    assert cornered("mitre").turned == "" and cornered("clipped").turned == ""
    piece = square()
    piece.finish_corner("side", "hem", "squared")
    (corner,) = piece.freeze().corners
    assert (corner.before, corner.after, corner.turned) == ("hem", "side", "side")
    piece.declare("centre", "hem", why=" slit ")
    (meant,) = piece.freeze().declared
    assert (meant.before, meant.after, meant.why) == ("centre", "hem", "slit")


# ---- buttonholes ------------------------------------------------------------------------------------------


def holes(**more: Any) -> tuple[BenchPiece, int]:
    piece = square()
    given = {"inside": 2 * cm, "first": 3 * cm, "last": 15 * cm, "slit": 1 * cm, "count": 3, **more}
    return piece, piece.buttonholes("centre", **{key: value for key, value in given.items() if value is not None})


@pytest.mark.parametrize(
    ("given", "places"),
    [
        ({"count": 3}, [30, 90, 150]),
        ({"count": 2}, [30, 150]),
        ({"count": 1, "last": 3 * cm}, [30]),
        ({"count": None, "spacing": 40 * mm}, [30, 70, 110, 150]),
        ({"count": None, "spacing": 50 * mm}, [30, 80, 130]),
        ({"count": None, "spacing": 200 * mm}, [30]),
        ({"count": 2, "last": 200 * mm}, [30, 200]),
    ],
)
def test_where_buttonholes_lie(given: dict[str, Any], places: list[float]) -> None:
    """Down the centre from the top: the button stands 2 cm inside, the slit begins 3 mm nearer to the edge."""
    piece, count = holes(**given)
    made = [mark for mark in piece.freeze().marks if mark.kind == "buttonhole"]
    buttons = [mark for mark in piece.freeze().marks if mark.kind == "point"]
    assert count == len(places) and [mark.name for mark in made] == [f"buttonhole_{i + 1}" for i in range(count)]
    assert [(m.path.start.x, m.path.start.y, m.path.end.x) for m in made if m.path] == [
        (pytest.approx(17), pytest.approx(200 - at), pytest.approx(27)) for at in places
    ]
    assert [(m.point.x, m.point.y) for m in buttons if m.point] == [
        (pytest.approx(20), pytest.approx(200 - at)) for at in places
    ]
    assert [m.label for m in buttons] == [f"button {i + 1}" for i in range(count)]


def test_a_slit_is_as_long_as_the_button_and_its_thickness() -> None:
    piece, _ = holes(slit=None, button=15 * mm, thick=3 * mm)
    assert {round(m.path.length, 6) for m in piece.freeze().marks if m.path} == {18.0}
    piece, _ = holes(lie="vertical", slit=16 * mm)
    first = piece.freeze().marks[0].path
    assert first is not None and {p.x for p in first.points()} == {20.0}
    assert sorted(p.y for p in first.points()) == pytest.approx([162, 178])  # the button at its middle, 3 cm down


@pytest.mark.parametrize(
    "given",
    [
        {"count": None},
        {"spacing": 4 * cm},
        {"count": 0},
        {"count": 1},
        {"count": 2, "last": 3 * cm},
        {"count": 2, "last": 2 * cm},
        {"count": 2, "last": 201 * mm},
        {"count": None, "spacing": 0},
        {"count": None, "spacing": 1 * mm},  # more than a hundred
        {"slit": None},
        {"button": 1 * cm},
        {"slit": 0},
        {"lie": "aslant"},
        {"lie": "vertical", "slit": 60 * mm},
        {"inside": 199 * mm},
        {"inside": 1 * mm},
    ],
)
def test_buttonholes_that_cannot_be(given: dict[str, Any]) -> None:
    refused(lambda: holes(**given))


@pytest.mark.parametrize(("longer", "fits"), [(0.4, True), (0.6, False)])
def test_buttons_lie_on_an_edge_as_long(longer: float, fits: bool) -> None:
    piece, other = square(), square("back", 200 + longer)
    write = lambda: piece.buttonholes(  # noqa: E731
        "centre", inside=2 * cm, first=3 * cm, last=15 * cm, slit=1 * cm, count=2, onto=other.centre
    )
    if fits:
        write()
        assert [m.point.y for m in other.freeze().marks if m.point] == pytest.approx([170 + longer, 50 + longer])
        assert not [m for m in piece.freeze().marks if m.kind == "point"]
    else:
        refused(write)
