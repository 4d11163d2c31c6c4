"""Two drafts of a piece laid over each other, and pieces opened out or parted, each told in full: at every fourth
station of every edge how far the new line lies off the old one, the cloth there is and the cloth it needs.

What stands in `drafts_told` was made by the kit. Read beside it: the sides moved alike all along, where a station lies
off by what was moved, square to the line, and the mirrored half, where every x has changed its sign.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, replace
from pathlib import Path as File
from typing import Any

import pytest
from shapely import MultiPolygon, Polygon

from kit.geometry import Cubic, Path, Point, Region, Vector
from kit.piece import strips
from kit.piece.corner import Corner, Declared
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import CutPlan, Edge, Grain, Mark, Notch, Piece
from kit.piece.recut import EdgeChange, areas, matched, piece_change
from kit.piece.unfold import pair, unfolded
from tests.exact import exact, tried, turns
from tests.piece.test_folds_told import PANELS, panel
from tests.piece.test_two_drafts_by_hand import front, moved
from tests.told import Kept, usual

TOLD = File(__file__).with_name("drafts_told")


def bowed(top: float, low: float, bow: float, **more: Any) -> Piece:
    """The front with its side bowed out by about `bow` mm, and its top hollowed."""
    piece = front(top, low)
    a, b = piece.edge("side").path.start, piece.edge("side").path.end
    side = Cubic(a, a.lerp(b, 1 / 3) + Vector(bow * 4 / 3, 0), a.lerp(b, 2 / 3) + Vector(bow * 4 / 3, 0), b)
    edge = replace(piece.edge("side"), path=Path((side,)), **more)
    return piece.with_edges(side=edge)


def turned(piece: Piece) -> Piece:
    """Its edges walked the other way round."""
    edges = (replace(edge, path=edge.path.reversed()) for edge in reversed(piece.edges))
    return replace(piece, edges=tuple(edges))


ON_FOLD = CutPlan(fold="centre")
DRAFTS: dict[str, tuple[Piece, Piece, dict[str, float]]] = {
    "taken in all along": (front(), front(88, 88), {}),
    "let out at the top": (front(), front(112, 100), {}),
    "let out too far at the hem": (front(), front(100, 135), {}),
    "crossing": (front(), front(108, 92), {}),
    "bowed out": (front(), bowed(100, 100, 9.0), {}),
    "bowed, and moved": (bowed(100, 100, 9.0), bowed(104, 96, 3.0), {}),
    "the other way round": (turned(front()), turned(front(110, 96)), {}),
    "trimmed since, taken in": (front(), front(92, 92), {"side": 12.0}),
    "trimmed since, let out": (front(), front(106, 106), {"side": 12.0, "hem": 8.0}),
    "with extra cloth": (bowed(100, 100, 0.0, extra=25.0), front(130, 130), {}),
    "a wider allowance": (front(), front(104).with_edges(top=replace(front(104).edge("top"), allowance=14.0)), {}),
    "drawn elsewhere": (front(), moved(front(92, 104), 300.0, -40.0), {}),
    "drawn elsewhere, on the fold": (front(cut=ON_FOLD), moved(front(92, 104, cut=ON_FOLD), 0.0, -40.0), {}),
    "without allowances": (front(), front(92).with_edges(hem=Edge("hem", front().edge("hem").path)), {}),
}


def station(change: EdgeChange, number: int) -> str:
    at = change.stations[number]
    cloth = f", {exact(at.left)} left of {exact(at.need)}, lacks {exact(at.short)}"
    return f"    {exact(at.along)}: off {exact(at.off)}{cloth}; {exact(change.place(at))} from {exact(change.foot(at))}"


def of_edge(change: EdgeChange) -> Iterator[str]:
    yield f"  {change.edge} (was {change.was}) between {change.before} and {change.after}: {change.shape}"
    told = ("outward", "inward", "most", "start", "end", "shortest")
    spots = ", ".join(f"{name} {exact(at and at.along)}" for name in told for at in (getattr(change, name),))
    if change.moved:
        yield f"    {spots}; parts {exact(change.parts_at)}; spare {exact(change.spare)}"
    else:
        yield f"    not moved; spare {exact(change.spare)}"
    yield from (station(change, number) for number in range(0, len(change.stations), 4))


def surface(region: Region) -> tuple[object, ...] | None:
    """Its area and the middle of it; None of nothing."""
    if region.is_empty:
        return None
    rings = [Polygon(ring) for ring in region.rings]
    middle = MultiPolygon(rings).centroid.coords[:1]
    return (region.area, *middle)


@pytest.mark.parametrize("name", DRAFTS)
def test_a_piece_of_two_drafts(name: str) -> None:
    was, now, cut_back = DRAFTS[name]
    change = piece_change(was, now, cut_back)
    assert change is not None
    lines = [f"marks {exact(change.marks)}, folds {exact(change.folds)}, only {exact(change.only)}"]
    for edge in change.edges:
        lines += of_edge(edge)
    found = areas(change, cut_back)
    surfaces = [surface(one) for one in (found.cut, found.wanted, found.off)] if found else [None, None, None]
    lines.append(f"cloth, wanted, trimmed off (area, middle): {exact(surfaces)}")
    Kept(TOLD / f"{name.replace(' ', '_').replace(',', '')}.txt").holds({name: "\n".join(lines)})


def test_from_where_on_a_change_is_told() -> None:
    """How far a side, a corner, a mark or a dart may move before anybody is told."""

    def side(top: float, low: float) -> EdgeChange:
        change = piece_change(front(), front(top, low))
        found = change and change.edge("side")
        assert found is not None
        return found

    def let_out(by: float) -> EdgeChange:
        change = piece_change(bowed(100, 100, 0.0, extra=10.0), front(100 + by, 100 + by))
        found = change and change.edge("side")
        assert found is not None
        return found

    def mark(by: float) -> bool:
        one, two = (Mark("m", "point", point=Point(50 + x, 100)) for x in (0.0, by))
        return piece_change(front(marks=(one,)), front(marks=(two,))) is None

    def line(by: float) -> bool:
        one, two = (Mark("m", "line", path=Path.line(Point(20, 90), Point(80 + x, 90))) for x in (0.0, by))
        return piece_change(front(marks=(one,)), front(marks=(two,))) is None

    def on_edge(by: float) -> bool:
        one, two = (Mark("m", "opening", edge="side", start=50 + x, end=120.0) for x in (0.0, by))
        return piece_change(front(marks=(one,)), front(marks=(two,))) is None

    def dart(by: float) -> bool:
        one, two = (Dart("d", "hem", Point(50 + x, 80), 40.0, 60.0) for x in (0.0, by))
        return piece_change(front(darts=(one,)), front(darts=(two,))) is None

    def leg(by: float) -> bool:
        one, two = (Dart("d", "hem", Point(50, 80), 40.0, 60.0 + x) for x in (0.0, by))
        return piece_change(front(darts=(one,)), front(darts=(two,))) is None

    def lower(by: float) -> bool:
        side, hem = Path.line(Point(100, -by), Point(100, 200)), Path.line(Point(0, 0), Point(100, -by))
        now = front().with_edges(side=Edge("side", side, 20.0), hem=Edge("hem", hem, 30.0))
        return piece_change(front(), now) is None

    found = {
        "a side": turns(lambda by: piece_change(front(), front(100 + by, 100 + by)) is None, 0.0, 5.0),
        "a corner along its line": turns(lower, 0.0, 5.0),
        "a mark": turns(mark, 0.0, 5.0),
        "a line's end": turns(line, 0.0, 5.0),
        "a place on an edge": turns(on_edge, 0.0, 5.0),
        "a dart's point": turns(dart, 0.0, 5.0),
        "a dart's leg": turns(leg, 0.0, 5.0),
        "all along or unequal": turns(lambda by: side(110, 110 + by).shape == "all_along", 0.0, 5.0),
        "to nothing or unequal": turns(lambda by: side(110, 100 + by).shape == "to_nothing", 0.0, 5.0),
        "crossing or not": turns(lambda by: side(110, 100 - by).shape == "crossing", 0.0, 5.0),
        "in the middle or not": turns(
            lambda by: "middle" in str([e.shape for e in piece_change(front(), bowed(105, 105, by)).edges]),  # type: ignore[union-attr]
            0.0,
            5.0,
        ),
        "too little cloth": turns(lambda by: let_out(by).shortest is None, 1.0, 30.0),
    }
    Kept(TOLD / "from_where_on.txt").holds({"told": "\n".join(f"{title}: {at}" for title, at in found.items())})


def test_edges_of_two_drafts_that_go_by_another_name() -> None:
    was = replace(front(), edges=(*front().edges[:3], replace(front().edge("centre"), role="centre")))
    lines = []
    for title, name, role in (
        ("the same", "centre", "centre"),
        ("another name", "middle", "centre"),
        ("another role", "middle", "side"),
        ("none", "middle", ""),
    ):
        now = replace(was, edges=(*was.edges[:3], replace(was.edge("centre"), name=name, role=role)))  # type: ignore[arg-type]
        lines.append(f"{title}: {exact(matched(was, now))}")
    two = replace(was, edges=(*was.edges, replace(was.edge("centre"), name="other", role="centre")))
    lines.append(
        f"two of that role: {exact(matched(two, replace(was, edges=(replace(was.edges[3], name='middle'),))))}"
    )
    Kept(TOLD / "matched.txt").holds({"matched": "\n".join(lines)})


# ---- opened out, parted -----------------------------------------------------------------------------------------


def full() -> Piece:
    """A half with something of everything on it, its centre on the fold."""
    piece = PANELS["bowed"]
    line = Path.line(Point(40, 20), Point(60, 380))
    return replace(
        piece,
        cut=CutPlan(2, fold="centre", interfacing=2, cloth="lining"),
        edges=tuple(replace(edge, said=f"{edge.name} edge" if edge.name != "hem" else "") for edge in piece.edges),
        grain=Grain(Point(30, 40), Point(30, 300), one_way=True),
        notches=(Notch("side", 150.0), Notch("hem", 80.0, "double", "n"), Notch("centre", 50.0)),
        darts=(
            Dart("dart", "waist", Point(150, 300), 100.0, 120.0, "start", 5.0),
            Dart("none", "centre", Point(0, 9), 1.0, 2.0),
        ),
        pleats=(Pleat("pleat", "waist", 150.0, 190.0, (line, line.reversed()), laid="start"),),
        marks=(
            Mark("line", "line", path=line, said="waistline"),
            Mark("on_fold", "point", edge="centre", start=100.0),
            Mark("mid", "drill", point=Point(0.04, 120)),
            Mark("near", "drill", point=Point(0.06, 120)),
            Mark("pocket", "opening", edge="side", start=50.0, end=200.0),
            Mark("spot", "point", edge="side", start=70.0),
        ),
        points=(("low", Point(0, 0)), ("tip", Point(270, 415)), ("near", Point(0.049, 10)), ("off", Point(0.051, 10))),
        guides=(("hip", Path.line(Point(0, 200), Point(290, 200))),),
        corners=(Corner("hem", "side", "turned", "hem", (5.0,)), Corner("centre", "hem", "clipped")),
        declared=(Declared("side", "waist", "a point"), Declared("waist", "centre", "none")),
    )  # fmt: skip


def of_piece(piece: Piece) -> Iterator[str]:
    for each in fields(piece):
        value = getattr(piece, each.name)
        if usual(each, value):
            continue
        if isinstance(value, tuple):
            yield from (f"{each.name} {exact(one)}" for one in value)
        else:
            yield f"{each.name} {exact(value)}"


def test_opened_out() -> None:
    Kept(TOLD / "opened_out.txt").holds({"front": "\n".join(of_piece(unfolded(full())))})


def test_parted() -> None:
    left, right = pair(replace(full(), cut=CutPlan(4, mirrored=True, interfacing=2)))
    Kept(TOLD / "parted.txt").holds({"left": "\n".join(of_piece(left)), "right": "\n".join(of_piece(right))})


def test_what_cannot_be_opened_or_parted() -> None:
    alone = replace(panel(), edges=panel().edges[:1], cut=CutPlan(fold="centre"))
    curved = replace(PANELS["bowed"], cut=CutPlan(fold="waist"))
    found = {
        "on no fold": tried(lambda: unfolded(panel()) == panel()),
        "a bowed fold": tried(lambda: unfolded(curved)),
        "nothing but a fold": tried(lambda: unfolded(alone)),
        "parted on the fold": tried(lambda: pair(replace(panel(), cut=CutPlan(fold="centre")))),
        "parted single": tried(lambda: pair(panel())),
    }
    Kept(TOLD / "not_opened.txt").holds({"refused": "\n".join(f"{title}: {one}" for title, one in found.items())})


# ---- strips -----------------------------------------------------------------------------------------------------


SQUARES = ((500.0, 700.0), (700.0, 500.0), (40.0, 40.0))


def test_strips_by_their_numbers() -> None:
    found = {
        "in four, in two, hemmed": (strips.in_four(12.0), strips.in_two(12.0, 7.0), strips.hemmed(12.0, 5.0)),
        "binding, single and double": (strips.binding(9.0), strips.binding(9.0, double=True)),
        "band, and with an overlap": (strips.band(700.0, 30.0, 10.0), strips.band(700.0, 30.0, 10.0, 25.0)),
        "finished from": strips.finished_from(53.0, lambda size: strips.in_two(size, 7.0)),
        "joins": [strips.join_cost(how, 7.0, 30.0, bias) for how in ("straight", "diagonal") for bias in (False, True)],
        "one piece": [tried(lambda long=long: strips.pieced(long, 1000.0, 20.0)) for long in (990.0, 1000.0, 1000.1)],  # type: ignore[misc]
        "more": [tried(lambda long=long: strips.pieced(long, 1000.0, 20.0)) for long in (1980.0, 1980.1, 4000.0)],  # type: ignore[misc]
        "eaten up": [tried(lambda cost=cost: strips.pieced(2000.0, 100.0, cost, "Tie")) for cost in (99.0, 100.0)],  # type: ignore[misc]
        "bias across": strips.bias_across(1400.0),
        "bias cloth": strips.bias_cloth(3, 900.0, 30.0),
        "one strip of a tube": [strips.continuous_bias(*size, 40.0, 6.0) for size in SQUARES],
        "square for it": [strips.square_for_bias(long, 40.0, 6.0) for long in (100.0, 1000.0, 5000.0, 20000.0)],
        "of no length": tried(lambda: strips.square_for_bias(0.0, 40.0, 6.0)),
    }  # fmt: skip
    Kept(TOLD / "strips.txt").holds({"strips": "\n".join(f"{title}: {exact(one)}" for title, one in found.items())})
