"""What each verb of the bench draws, and the measure it writes down for the picture: its name, its value and the two
ends it is dimensioned between. On a half front of straight lines, where all of it is plain geometry."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.geometry import Arc, Line, Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Edge, Piece
from kit.units import Length, cm, mm

D, S = Length(25.0, "d"), Length(40.0, "s")
At = tuple[float, float]
Spot = tuple[str, float, At, At, float | None]
"""Name, value, from, to, and the length of the way along where it is dimensioned along a line."""


def half(name: str = "half", side: float = 460.0) -> BenchPiece:
    """A half front: 20 cm wide, 50 cm long, with a guide across at 20 cm up."""
    corners = {
        "neck": ((0, 450), (70, 500)),
        "shoulder": ((70, 500), (190, side)),
        "side": ((190, side), (200, 0)),
        "hem": ((200, 0), (0, 0)),
        "centre": ((0, 0), (0, 450)),
    }
    edges = tuple(Edge(edge, Path.of(Line(Point(*a), Point(*b)))) for edge, (a, b) in corners.items())
    guides = (("waist", Path.of(Line(Point(0, 200), Point(200, 200)))),)
    return BenchPiece(Piece(name, "Half front", edges, points=(("tip", Point(190, side)),), guides=guides))


def noted(piece: BenchPiece) -> list[Spot]:
    return [
        (s.name, s.value, (s.start.x, s.start.y), (s.end.x, s.end.y), None if s.along is None else s.along.length)
        for s in opened(piece).spots
    ]


def same(found: list[Spot], wanted: list[Spot]) -> None:
    assert [spot[0] for spot in found] == [spot[0] for spot in wanted]
    for one, other in zip(found, wanted, strict=True):
        assert one[1] == pytest.approx(other[1])
        assert one[2] == pytest.approx(other[2], abs=1e-6) and one[3] == pytest.approx(other[3], abs=1e-6)
        assert one[4] == (None if other[4] is None else pytest.approx(other[4]))


def on(a: At, b: At, size: float, beyond: bool = False) -> At:
    """The place `size` from `a` toward `b`, or that far beyond `b`."""
    long = math.dist(a, b)
    share = (long + size if beyond else size) / long
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


TIP, NECK, FOOT = (190.0, 460.0), (70.0, 500.0), (200.0, 0.0)
BEYOND = on(NECK, TIP, 25.0, beyond=True)
TOWARD = on(TIP, FOOT, 25.0)

POINTS: list[tuple[str, Callable[[Any], PaperPoint], At, list[Spot]]] = [
    ("up", lambda p: p.tip.up(D), (190, 485), [("d", 25, TIP, (190, 485), None)]),
    ("down", lambda p: p.tip.down(D), (190, 435), [("d", 25, TIP, (190, 435), None)]),
    ("out", lambda p: p.tip.out(D), (215, 460), [("d", 25, TIP, (215, 460), None)]),
    ("into", lambda p: p.tip.into(D), (165, 460), [("d", 25, TIP, (165, 460), None)]),
    ("toward", lambda p: p.tip.toward(p.hem.start, D), TOWARD, [("d", 25, TIP, TOWARD, None)]),
    ("across in", lambda p: p.tip.across(p.centre), (0, 460), []),
    ("across out", lambda p: p.centre.middle.across(p.side, "out"), (190 + 10 * 235 / 460, 225), []),
    ("at", lambda p: p.hem.at(D), (175, 0), [("d", 25, (200, 0), (175, 0), 25)]),
    ("at the end", lambda p: p.hem.at(200 * mm), (0, 0), []),
    ("share", lambda p: p.hem.share(0.25), (150, 0), []),
    ("all of it", lambda p: p.hem.share(1), (0, 0), []),
    ("none of it", lambda p: p.hem.share(0), (200, 0), []),
    ("middle", lambda p: p.side.middle, (195, 230), []),
    ("place", lambda p: p.place(3 * cm, 7 * cm), (30, 70), []),
]


@pytest.mark.parametrize(("write", "where", "spots"), [case[1:] for case in POINTS], ids=[case[0] for case in POINTS])
def test_points(write: Callable[[Any], PaperPoint], where: At, spots: list[Spot]) -> None:
    piece = half()
    found = write(piece)
    assert (found.point.x, found.point.y) == pytest.approx(where, abs=1e-6)
    assert (float(found.x), float(found.y)) == pytest.approx(where, abs=1e-6)
    same(noted(piece), spots)


LINES: list[tuple[str, Callable[[Any], PaperLine], At, At, list[Spot]]] = [
    ("to", lambda p: p.tip.to(p.hem.start), TIP, FOOT, []),
    ("through", lambda p: p.neck.end.through(p.tip, beyond=D), NECK, BEYOND, [("d", 25, TIP, BEYOND, None)]),
    ("through, no more", lambda p: p.neck.end.through(p.tip), NECK, TIP, []),
    ("ruled", lambda p: p.hem.end.ruled("out", D), (0, 0), (25, 0), [("d", 25, (0, 0), (25, 0), None)]),
    ("square", lambda p: p.hem.square(D, "down"), (0, 0), (0, -25), [("d", 25, (0, 0), (0, -25), None)]),
    ("square up", lambda p: p.hem.square(D, "up"), (0, 0), (0, 25), [("d", 25, (0, 0), (0, 25), None)]),
    (
        "square at start",
        lambda p: p.hem.square(D, "up", at="start"),
        FOOT,
        (200, 25),
        [("d", 25, FOOT, (200, 25), None)],
    ),
    ("parallel", lambda p: p.hem.parallel(D, "down"), (200, -25), (0, -25), [("d", 25, (100, 0), (100, -25), None)]),
    ("inside", lambda p: p.hem.parallel(D, "inside"), (200, 25), (0, 25), [("d", 25, (100, 0), (100, 25), None)]),
    ("outside", lambda p: p.hem.parallel(D, "outside"), (200, -25), (0, -25), [("d", 25, (100, 0), (100, -25), None)]),
    ("extended", lambda p: p.hem.extended(D), FOOT, (-25, 0), []),
    ("extended at start", lambda p: p.hem.extended(D, end="start"), (225, 0), (0, 0), []),
    ("trimmed", lambda p: p.side.to(p.waist), TIP, (190 + 10 * 260 / 460, 200), []),
    ("trimmed at start", lambda p: p.side.to(p.waist, end="start"), (190 + 10 * 260 / 460, 200), FOOT, []),
    ("mirrored", lambda p: p.shoulder.mirrored(p.centre), (-70, 500), (-190, 460), []),
    ("joined", lambda p: p.neck.joined(p.shoulder), (0, 450), TIP, []),
    (
        "arc about a direction",
        lambda p: p.hem.end.arc(about="up", radius=D, angle=90, toward="out"),
        (0, 0),
        (25, 25),
        [("d", 25, (0, 0), (0, 25), None)],
    ),
    (
        "curve into",
        lambda p: p.tip.out(10 * cm).ruled("down", 60 * mm).curve_into(p.side, S + 160 * mm),
        (290, 400),
        on(TIP, FOOT, 200.0),
        [],
    ),
    (
        "curve square to",
        lambda p: p.tip.out(10 * cm).ruled("down", 120 * mm).curve_square_to(p.hem, D),
        (290, 340),
        (175, 0),
        [],
    ),
]


@pytest.mark.parametrize(
    ("write", "start", "end", "spots"), [case[1:] for case in LINES], ids=[case[0] for case in LINES]
)
def test_lines(write: Callable[[Any], PaperLine], start: At, end: At, spots: list[Spot]) -> None:
    piece = half()
    found = write(piece)
    assert (found.start.point.x, found.start.point.y) == pytest.approx(start, abs=1e-6)
    assert (found.end.point.x, found.end.point.y) == pytest.approx(end, abs=1e-6)
    assert float(found.length) == pytest.approx(found.path.length)
    same(noted(piece), spots)


def test_a_line_keeps_the_name_of_its_edge() -> None:
    piece = half()
    assert piece.side.to(piece.waist).name == piece.side.extended(D).name == "side"
    assert piece.side.parallel(D, "out").name == "" and piece.side.parallel(D, "out").said == "line"
    assert piece.hem.square(D, "up").beside == piece.hem.path


CHANGES: list[tuple[str, Callable[[Any], Any], list[Spot]]] = [
    ("leave_open", lambda p: p.leave_open("slit", "hem", at=D, size=S), [("s", 40, (175, 0), (135, 0), None)]),
    ("extend_hem", lambda p: p.extend_hem("hem", D), [("d", 25, (100, 0), (100, -25), None)]),
    ("add_ease", lambda p: p.add_ease(D), [("d", 25, (195, 230), (220, 230), None)]),
    (
        "lower_neckline",
        lambda p: p.lower_neckline(D, wider=S),
        [("d", 25, (0, 450), (0, 425), None), ("s", 40, NECK, on(NECK, TIP, 40), None)],
    ),
    (
        "spread",
        lambda p: p.spread(("hem", 10 * cm), ("shoulder", 3 * cm), D),
        [("d", 25, (100, 0), None, None)],  # type: ignore[list-item]
    ),
    (
        "measure two points",
        lambda p: p.measure(wide=(p.tip, p.neck.end)),
        [("wide", math.dist(TIP, NECK), TIP, NECK, None)],
    ),
    ("measure a line", lambda p: p.measure(long=p.side), [("long", math.dist(TIP, FOOT), TIP, FOOT, None)]),
    ("allow", lambda p: p.allow(hem=S), [("hem_allowance", 40, (100, 0), (100, -40), None)]),
    ("allow nothing", lambda p: p.allow(hem=0), []),
    ("notch", lambda p: p.notch("hem", D), [("d", 25, (200, 0), (175, 0), None)]),
    (
        "match",
        lambda p: p.match(p.side, half("back").side, at=D),
        [("d", 25, TIP, on(TIP, FOOT, 25), None)],
    ),
    (
        "match from the end",
        lambda p: p.match(p.side, half("back").side, at=D, measured_from="end"),
        [("d", 25, on(FOOT, TIP, 25), FOOT, None)],
    ),
    (
        "buttonholes",
        lambda p: p.buttonholes(p.centre, inside=D, first=S, last=Length(240.0, "last"), count=3, slit=1 * cm),
        [
            ("d", 25, (0, 40), (25, 40), None),
            ("s", 40, (0, 0), (0, 40), 40),
            ("last", 240, (0, 0), (0, 240), 240),
        ],
    ),
]


@pytest.mark.parametrize(("write", "spots"), [case[1:] for case in CHANGES], ids=[case[0] for case in CHANGES])
def test_changes(write: Callable[[Any], Any], spots: list[Spot]) -> None:
    piece = half()
    write(piece)
    found = noted(piece)
    for number, spot in enumerate(spots):
        if spot[3] is None:  # square to the slash, this far: only the distance is plain
            assert math.dist(found[number][2], found[number][3]) == pytest.approx(spot[1])
            spots = [*spots[:number], (*spot[:3], found[number][3], spot[4]), *spots[number + 1 :]]
    same(found, spots)


def test_what_has_no_name_or_no_size_is_not_dimensioned() -> None:
    piece = half()
    piece.tip.up(2 * cm)
    piece.tip.up(Length(0.0, "none"))
    piece.hem.at(2 * cm)
    piece.leave_open("slit", "hem", at=2 * cm, size=2 * cm)
    assert noted(piece) == []


def test_an_arc_is_measured_along() -> None:
    arc = Path((Arc(Point(0, 0), 100.0, 0.0, math.pi / 2),))
    piece = BenchPiece(Piece("p", "P", (Edge("round", arc), Edge("back", Path.line(arc.end, arc.start)))))
    piece.measure(belly=piece.round, straight=piece.back)
    same(
        noted(piece),
        [
            ("belly", 50 * math.pi, (100, 0), (0, 100), 50 * math.pi),
            ("straight", 100 * math.sqrt(2), (0, 100), (100, 0), None),
        ],
    )
    assert piece.round.middle.point.close_to(Point(100 / math.sqrt(2), 100 / math.sqrt(2)), 1e-6)


@pytest.mark.parametrize(
    ("edge", "outward"),
    [("hem", (0, -1)), ("centre", (-1, 0)), ("side", (46, 1)), ("shoulder", (1, 3)), ("neck", (-5, 7))],
)
def test_an_allowance_is_dimensioned_outside_its_edge(edge: str, outward: At) -> None:
    piece = half()
    piece.allow(**{edge: 15 * mm})
    (spot,) = opened(piece).spots
    middle = piece.edge(edge).middle.point
    long = math.hypot(*outward)
    assert (spot.name, spot.value, spot.edge, spot.allowance) == (f"{edge}_allowance", 15.0, edge, True)
    assert spot.start.close_to(middle, 1e-6)
    assert spot.end.close_to(Point(middle.x + 15 * outward[0] / long, middle.y + 15 * outward[1] / long), 1e-6)
    assert piece.freeze().edge(edge).allowance == 15.0


# ---- what is put on the piece -----------------------------------------------------------------------------


def test_marks_lie_where_they_were_put() -> None:
    piece = half()
    piece.notch("hem", D)
    piece.notch("side", 8 * cm, double=True, name="hip")
    piece.leave_open("slit", "side", at=3 * cm, size=S, said="the slit")
    piece.mark_line("bust", piece.waist, said="bust line")
    piece.mark_point("tie", piece.side.share(0.5), said="tie place")
    piece.drill("corner", piece.tip.into(8 * cm))
    made = piece.freeze()
    assert [(n.edge, n.distance, n.kind, n.name) for n in made.notches] == [
        ("hem", 25.0, "single", ""),
        ("side", 80.0, "double", "hip"),
    ]
    slit, bust, tie, corner = made.marks
    assert (slit.kind, slit.edge, slit.start, slit.end, slit.label) == ("opening", "side", 30.0, 70.0, "the slit")
    assert (bust.kind, bust.path, bust.label) == ("line", piece.waist.path, "bust line")
    assert (tie.kind, tie.point, tie.label) == ("point", Point(195, 230), "tie place")
    assert (corner.kind, corner.point, corner.label) == ("drill", Point(110, 460), "corner")


def test_a_mark_may_reach_the_very_end() -> None:
    piece = half()
    piece.notch("hem", 200 * mm)
    piece.leave_open("slit", "hem", at=150 * mm, size=50 * mm)
    piece.leave_open("level", "side", at=piece.waist, size=2 * cm)
    made = piece.freeze()
    assert made.notches[0].distance == 200.0 and made.marks[0].end == 200.0
    assert made.marks[1].start == pytest.approx(math.dist(TIP, (190 + 10 * 260 / 460, 200)))


def test_tracing_and_mirroring() -> None:
    piece, copy = half(), BenchPiece(Piece("copy", "Copy", ()))
    piece.allow(hem=2 * cm)
    copy.trace(piece)
    made = copy.freeze()
    assert [e.name for e in made.edges] == ["neck", "shoulder", "side", "hem", "centre"]
    assert {e.allowance for e in made.edges} == {None} and made.points == piece.freeze().points
    assert opened(copy).drawn == {"neck", "shoulder", "side", "hem", "centre"}
    piece.mirror("centre")
    guides = dict(piece.freeze().guides)
    assert sorted(guides) == ["far_hem", "far_neck", "far_shoulder", "far_side", "far_waist", "waist"]
    assert guides["far_side"].start == Point(-190, 460) and guides["far_waist"].end == Point(-200, 200)
    copy.mirror("centre", prefix="other_")
    assert "other_hem" in dict(copy.freeze().guides)


@pytest.mark.parametrize(
    ("write", "low", "high"),
    [
        (lambda p: p.grain(), None, None),
        (lambda p: p.grain(at=p.tip.into(9 * cm).down(1 * cm)), (100, 0.12 * 490), (100, 0.88 * 490)),
        (lambda p: p.grain("in", at=p.centre.middle.out(5 * cm)), None, None),
        (lambda p: p.grain(along=p.centre, at=p.hem.middle.up(3 * cm)), (100, 0.12 * 490), (100, 0.88 * 490)),
        (lambda p: p.grain(along="centre", at=p.hem.middle.up(3 * cm)), (100, 0.12 * 490), (100, 0.88 * 490)),
    ],
)
def test_the_grainline_runs_over_three_quarters_of_the_piece(write: Callable[[Any], None], low: Any, high: Any) -> None:
    """From 12 to 88 hundredths of the way across; at x = 100 the shoulder stands 490 high."""
    piece = half()
    write(piece)
    grain = piece.freeze().grain
    assert grain is not None and (grain.kind, grain.one_way) == ("lengthwise", False)
    if low is not None:
        assert (grain.start.x, grain.start.y) == pytest.approx(low) and (grain.end.x, grain.end.y) == pytest.approx(
            high
        )
    else:
        way = (grain.end - grain.start).unit()
        across = abs(way.x) > 0.5
        size = grain.start.distance(grain.end) / 0.76
        wide = 190 + 10 * (460 - grain.start.y) / 460 if across else (500 - (grain.start.x - 70) / 3)
        assert size == pytest.approx(wide)
        assert (way.x, way.y) == pytest.approx((-1, 0) if across else (0, 1))


def test_a_grainline_along_a_falling_line_still_points_up() -> None:
    piece = half()
    piece.grain(along=piece.side, kind="bias", one_way=True)
    grain = piece.freeze().grain
    assert grain is not None and (grain.kind, grain.one_way) == ("bias", True)
    assert (grain.end - grain.start).unit().y == pytest.approx(460 / math.hypot(10, 460))


@pytest.mark.parametrize(
    ("at", "end", "told"), [(6, "start", True), (30, "start", False), (30, "end", True), (6, "end", False)]
)
def test_a_notch_beyond_a_dart_is_not_dimensioned(at: float, end: str, told: bool) -> None:
    """The dart takes 2 cm out of the side, 20 cm from its start: what lies beyond it is no straight way on paper."""
    dart = Dart("dart", "side", Point(60, 250), 200.0, 220.0)
    front, back = half(), half("back")
    long = opened(front).piece.edge("side").path.length - 20.0
    opened(front).piece = replace(opened(front).piece, darts=(dart,))
    value = Length(10.0 * at if end == "start" else long - 10.0 * at, "d")
    front.match(front.side, back.side, at=value, measured_from=end)
    assert [spot.name for spot in opened(front).spots] == ["d"] * told
