"""A lesson written for a block runs on traced tops: the wrap top on three, as drawing programs save them.

Outside the kit: ezdxf (https://ezdxf.mozman.at) writes the DXF.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from pathlib import Path as FilePath
from typing import Any

import ezdxf
import pytest
from ezdxf import units

from kit.blocks.bodice import bodice_block
from kit.blocks.traced import Traced
from kit.blocks.traced_file import read_traced
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.another import open_lesson
from kit.lesson.lesson import Lesson
from kit.piece.piece import Piece
from kit.proof import prove
from kit.units import cm, mm
from tests.example import EXAMPLE

EDGES = {"centre": (1, 2), "neck": (2, 3), "shoulder": (3, 4), "armhole": (4, 5), "side": (5, 6), "hip": (6, 1)}
Bend = Callable[[Point], Point]


def block(size: str) -> tuple[Piece, ...]:
    return bodice_block(workshop_chart()[size])


def bent(turn: float = 0.0, wide: float = 1.0, high: float = 1.0, dx: float = 0.0, over: bool = False) -> Bend:
    """A tracing is never quite what was traced: a little wider or lower, turned on the glass, laid elsewhere."""
    c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))

    def at(p: Point) -> Point:
        x, y = p.x * wide * (-1 if over else 1), p.y * high
        return Point(c * x - s * y + dx, s * x + c * y)

    return at


def data(path: Path, bend: Bend, unit: float, gap: float = 0.0, joined: bool = False) -> str:
    """Path data rounded to two decimals of the drawing unit, y down; with a `gap` its end stops short."""

    def said(p: Point) -> str:
        q = bend(p)
        return f"{q.x * unit:.2f},{-q.y * unit + 900 * unit:.2f}"

    if gap:
        path = path.between(0.0, path.length - gap)
    parts = [] if joined else [f"M {said(path.start)}"]
    for curve in path.curves:
        if isinstance(curve, Line):
            parts.append(f"L {said(curve.end)}")
        else:
            parts += [f"C {said(c.c1)} {said(c.c2)} {said(c.end)}" for c in curve.as_cubics()]
    return " ".join(parts)


def whole(piece: Piece, bend: Bend, unit: float) -> str:
    parts = [data(edge.path, bend, unit, joined=i > 0) for i, edge in enumerate(piece.edges)]
    return f'<path id="{piece.name}" d="{" ".join(parts)} Z" style="fill:none;stroke:#000"/>'


def svg(file: FilePath, body: str, width: str, box: str) -> FilePath:
    head = f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" viewBox="{box}">'
    file.write_text(f'<?xml version="1.0"?>{head}<g id="layer1">{body}</g></svg>', encoding="utf-8")
    return file


def first(folder: FilePath) -> Traced:
    """W2 in millimetres, each piece one closed path, turned by two degrees, a centimetre wider in the round."""
    front, back = block("W2")
    body = whole(front, bent(2.0, wide=1.01), 1.0) + whole(back, bent(-1.0, wide=1.01, dx=400), 1.0)
    file = svg(folder / "first.svg", body, "900mm", "-100 0 900 1400")
    return read_traced(file).top(
        "First", {"front": EDGES, "back": EDGES}, waist=workshop_chart()["W2"]["waist_to_hip"] * mm
    )


def second(folder: FilePath) -> Traced:
    """W4 in pixels, every edge a stroke of its own that stops 0.3 mm short of the next, the front traced over."""
    front, back = block("W4")
    unit = 96 / 25.4
    body = "".join(
        f'<path class="{piece.name}" d="{data(edge.path, bend, unit, gap=0.3)}" style="fill:none"/>'
        for piece, bend in ((front, bent(high=0.99, dx=-50, over=True)), (back, bent(high=0.99, dx=50)))
        for edge in piece.edges
    )
    drawn = read_traced(svg(folder / "second.svg", body, "1000mm", "-1900 0 3779.53 5300"))
    left, right = sorted(drawn.outlines, key=lambda outline: outline.path.bounds()[0])
    around = {"side": (6, 5), "armhole": (5, 4), "shoulder": (4, 3), "neck": (3, 2), "centre": (2, 1), "hip": (1, 6)}
    edges = {name: (_turned(a), _turned(b)) for name, (a, b) in around.items()}
    up = workshop_chart()["W4"]["waist_to_hip"] * 0.99 * mm
    outlines = {"front": left.number, "back": right.number}
    return drawn.top("Second", {"front": edges, "back": EDGES}, waist=up, outlines=outlines)


def _turned(corner: int) -> int:
    """The corner of the same number counted on the other side of the lowest left one, of a piece turned over."""
    return {1: 6, 2: 5, 3: 4, 4: 3, 5: 2, 6: 1}[corner]


def third(folder: FilePath) -> Traced:
    """W8 as a DXF of polylines with many short lines, in centimetres, the front a little shorter in the waist."""
    document = ezdxf.new("R2010")
    document.units = units.CM
    for piece, bend in zip(block("W8"), (bent(0.8, high=0.985), bent(0.3, dx=500)), strict=True):
        spots = [bend(p) for edge in piece.edges for p in edge.path.points(0.02)[:-1]]
        document.layers.add(piece.name)
        corners = [(p.x / 10, p.y / 10) for p in spots]
        document.modelspace().add_lwpolyline(corners, close=True, dxfattribs={"layer": piece.name})
    file = folder / "third.dxf"
    document.saveas(file)
    up = workshop_chart()["W8"]["waist_to_hip"] * mm
    return read_traced(file).top("Third", {"front": EDGES, "back": EDGES}, waist={"front": up * 0.985, "back": up})


TOPS = (("W2", first), ("W4", second), ("W8", third))


@pytest.mark.parametrize(("size", "make"), TOPS, ids=[size for size, _ in TOPS])
def test_the_wrap_top_runs_and_proves_on_a_traced_top(
    size: str, make: Callable[[FilePath], Traced], tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    top = make(tmp_path)
    lesson: Lesson = open_lesson(EXAMPLE).variation("My wrap top", start=top)
    body = workshop_chart()[size]
    values = {parameter.name: parameter.default for parameter in lesson.parameters}
    pattern = lesson.work(body, values)
    assert [str(finding) for finding in prove(pattern) if finding.level == "error"] == []
    assert pattern.lesson.start_notes and top.title in str(pattern.lesson.start_notes[0])
    # It is the garment of the block, but for what the tracing is off.
    wanted = open_lesson(EXAMPLE).work(body, values)
    assert [piece.name for piece in pattern.pieces] == [piece.name for piece in wanted.pieces]
    for piece, other in zip(pattern.pieces, wanted.pieces, strict=True):
        for edge in other.edges:
            assert piece.edge(edge.name).path.length == pytest.approx(edge.path.length, rel=0.04, abs=3)


@pytest.mark.parametrize(("size", "make"), TOPS, ids=[size for size, _ in TOPS])
def test_it_has_the_lines_and_points_of_the_block(
    size: str, make: Callable[[FilePath], Traced], tmp_path: FilePath
) -> None:
    for traced, drafted in zip(sorted(make(tmp_path).drafted, key=_name), sorted(block(size), key=_name), strict=True):
        assert {name for name, _ in traced.points} == {name for name, _ in drafted.points}
        assert {name for name, _ in traced.guides} == {name for name, _ in drafted.guides}
        assert set(traced.landmarks or ()) == set(drafted.landmarks or ())
        for name, point in drafted.points:
            assert dict(traced.points)[name].distance(point) < 12
        for name, path in drafted.guides:
            assert dict(traced.guides)[name].start.distance(path.start) < 12
            assert dict(traced.guides)[name].end.distance(path.end) < 12
            assert dict(traced.guides)[name].is_straight


def _name(piece: Piece) -> str:
    return piece.name


FRONT: dict[str, list[Any]] = {
    "hals": [(0, 33), (4, 34.2), (7, 42)],
    "skulder": [(7, 42), (18, 37.5)],
    "aermegab": [(18, 37.5), (16.8, 28), (19, 22.5), (24.5, 20)],
    "sidesom": [(24.5, 20), (22.5, 0), (26, -18)],
    "nederst": [(26, -18), (0, -18)],
    "midte": [(0, -18), (0, 33)],
}
ROLES = {
    "hals": "neck",
    "skulder": "shoulder",
    "aermegab": "armhole",
    "sidesom": "side",
    "nederst": "hip",
    "midte": "centre",
    "forstykke": "front",
}


def test_roles_find_them_where_the_names_are_of_another_language() -> None:
    (piece,) = Traced("Bluse", pieces={"forstykke": FRONT}, roles=ROLES).drafted
    points, guides = dict(piece.points), dict(piece.guides)
    assert points["neck_point"] == points["hals_skulder"] == Point(70, 420)
    assert points["shoulder_tip"] == Point(180, 375) and points["underarm_point"] == Point(245, 200)
    assert guides["waist"].start == Point(0, 0) and guides["waist"].end.close_to(points["side_waist"])
    assert guides["bust_line"].end == Point(245, 200)
    assert piece.point_of("neck_point") == Point(70, 420) and piece.guide_of("waist_line") == guides["waist"]


def test_what_the_author_names_or_draws_stands_before_what_is_found(
    tmp_path: FilePath, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    named = Traced(
        "Bluse",
        pieces={"forstykke": FRONT},
        roles={**ROLES, "taille": "waist_line"},
        points={"forstykke": {"side_waist": (22, 1)}},
        lines={"forstykke": {"taille": [(0, 1), (22, 1)], "hip_line": [(0, -10), (24, -10)]}},
    )
    (piece,) = named.drafted
    assert dict(piece.points)["side_waist"] == Point(220, 10)
    assert piece.guide_of("waist_line") == Path.line(Point(0, 10), Point(220, 10))
    assert piece.guide_of("hip_line") == dict(piece.guides)["hip_line"]
    lesson = Lesson("Short", start=named)

    @lesson.step("Cut it at the waist")
    def waist(forstykke):
        """A new edge called as the line that was found, and a point called as one."""
        forstykke.mark(neck_point=forstykke.point("neck_point").down(1 * cm))
        forstykke.draw(waist=forstykke.waist.parallel(1 * cm, "down"), instead_of=forstykke.nederst)
        forstykke.join(forstykke.sidesom, forstykke.waist)
        forstykke.join(forstykke.waist, forstykke.midte)
        forstykke.guide(side_waist=forstykke.waist.parallel(1 * cm, "up"))

    with pytest.raises(KitError, match="side_waist"):
        lesson.work()  # that point is the author's own
    (plain,) = Traced("Bluse", pieces={"forstykke": FRONT}, roles=ROLES).drafted
    lesson = lesson.variation("Shorter", start=Traced("Bluse", pieces={"forstykke": FRONT}, roles=ROLES))
    (made,) = lesson.work().pieces
    assert made.edge("waist").path.start.y == pytest.approx(-10) and "waist" not in dict(made.guides)
    assert plain.found and "side_waist" not in made.found and "side_waist" in dict(made.guides)


def test_a_piece_without_side_or_centre_and_one_not_on_the_body_get_none() -> None:
    sleeve = {"cap": [(0, 10), (10, 20), (20, 10)], "seam": [(20, 10), (16, -30)], "end": [(16, -30), (4, -30)]}
    (piece,) = Traced("Sleeve", pieces={"sleeve": {**sleeve, "other": [(4, -30), (0, 10)]}}).drafted
    assert piece.guides == () and piece.found == ()
    (front,) = Traced("Bluse", pieces={"forstykke": FRONT}, roles=ROLES, waist=False).drafted
    assert "waist" not in dict(front.guides) and "bust_line" in dict(front.guides)
    with pytest.raises(KitError, match="no piece 'frnt'"):
        Traced("Bluse", pieces={"forstykke": FRONT}, roles=ROLES, lines={"frnt": {"a": [(0, 0), (1, 1)]}})
    with pytest.raises(KitError, match="'hals' has the name of something else"):
        Traced("Bluse", pieces={"forstykke": FRONT}, roles=ROLES, lines={"forstykke": {"hals": [(0, 0), (1, 1)]}})
