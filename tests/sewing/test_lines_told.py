"""Lines that sewing steps name, each told in full: a run, a line over a fold and one over a seam, every landmark on
them, every part between two landmarks, where it lies along the edges, what it is called, and what is refused with which
values.

What stands in `lines_told` was made by the kit. Read beside it: lengths, which are those of the polygons below, and the
parts of the straight side, whose landmarks lie where they were put.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path as File
from typing import Any

import pytest

from kit.diagnostic import NamedLandmark
from kit.errors import KitError
from kit.geometry import Arc, Path, Point
from kit.piece.piece import CutPlan, Edge, Mark, Notch, Piece
from kit.reference.sampler import STRIPS
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.legs import landmark_value, notches, size_of
from kit.sewing.named import gathered, line_of, part_of, placed, spot_on
from kit.sewing.places import around, beside, corner, inside, minus, on_both, part, sewn_length, without_end
from kit.sewing.reading import CutPieces
from kit.sewing.run import Chain, Run, place_on
from kit.sewing.spans import Span, along, neighbours, path_of, reach, run_length, runs_opposed, spans
from kit.units import cm, mm
from tests.exact import exact, refusal
from tests.sewing.garments import polygon
from tests.told import Kept

TOLD = File(__file__).with_name("lines_told")


def _front() -> Piece:
    """Half a front of a pair: a straight side with a slit, notches and marks, a round armhole, a sloping shoulder."""
    piece = polygon(
        "front",
        [(0, 0), (200, 0), (200, 250), (170, 400), (60, 420), (0, 340)],
        {"hem": 30, "side": 15, "armhole": 10, "shoulder": 15, "neck": 10, "centre": 20},
        cut=CutPlan(2, mirrored=True, said=True),
    )
    a, b = Point(200, 250), Point(170, 400)
    middle = Point(285.0, 341.0)
    arc = Arc(middle, middle.distance(a), (a - middle).angle, (b - middle).angle - (a - middle).angle)
    return replace(
        piece.with_edges(armhole=Edge("armhole", Path((arc,)).joined(Path.line(arc.end, b)), 10.0)),
        notches=(
            Notch("side", 180.0, name="upper_notch"),
            Notch("side", 40.0),
            Notch("armhole", 60.0, "double"),
            Notch("shoulder", 50.0),
        ),
        marks=(
            Mark("slit", "opening", edge="side", start=60.0, end=110.0, said="side slit"),
            Mark("tie", "point", edge="side", start=150.0),
            Mark("pin", "point", point=Point(200.5, 210)),
            Mark("gap", "opening", edge="hem", start=120.0, end=40.0),
            Mark("across", "line", path=Path.line(Point(0, 200), Point(200, 200)), said="waistline"),
            Mark("far", "point", point=Point(90, 90)),
        ),
    )


FRONT = _front()
BACK = replace(
    polygon(
        "back",
        [(0, 0), (210, 0), (200, 250), (165, 405), (60, 420), (0, 400)],
        {"hem": 30, "side": 15, "armhole": 10, "shoulder": 15, "neck": 10, "centre": 0},
        cut=CutPlan(fold="centre", said=True),
    ),
    notches=(Notch("neck", 30.0), Notch("side", 100.0)),
    marks=(Mark("loop", "point", edge="neck", start=20.0), Mark("vent", "opening", edge="hem", start=50.0, end=90.0)),
)
SINGLE = polygon("flap", [(0, 0), (90, 0), (90, 60), (0, 60)], {"lower": 6, "right_end": 6, "upper": 10, "left_end": 6})
CUT = CutPieces((FRONT, BACK, SINGLE), STRIPS)
front, back, flap = (PieceHandle(piece) for piece in (FRONT, BACK, SINGLE))

LINES: dict[str, Run | Chain] = {
    "side": front.side,
    "left side": front.left.side,
    "round the armhole": front.armhole,
    "hem and side": front.hem + front.side,
    "side and hem, back": front.side + front.hem,
    "hem over the fold": back.left.hem + back.right.hem,
    "neck over the shoulder": front.neck + back.neck,
    "neck all round": front.left.neck + back.neck + front.right.neck,
}
PLACES = {
    "1 cm": 1 * cm,
    "12 cm": 12 * cm,
    "a long way": 90 * cm,
    "before it": -1 * cm,
    "a bare number": 5,
    "the slit": front.slit,
    "the slit's start": front.slit.start,
    "the slit's end": front.slit.end,
    "the tie": front.tie,
    "the pin": front.pin,
    "the gap": front.gap,
    "the waistline": front.across,
    "no place on an edge": front.far,
    "the upper notch": front.upper_notch,
    "the armhole": front.armhole,
    "the hem": front.hem,
    "the back's hem": back.hem,
    "the back's centre": back.centre,
    "the front's left shoulder": front.left.shoulder,
    "the shoulder": front.shoulder,
    "the loop": back.loop,
    "the left loop": back.left.loop,
}


def named(line: Run | Chain) -> str:
    """A run as piece.half.edges with its part in mm, a chain as its runs."""
    if isinstance(line, Chain):
        ways = "".join(">" if way else "<" for way in line.ways)
        return f"{' + '.join(named(run) for run in line.runs)} {ways}"
    ends = "" if line.start is None and line.end is None else f"[{exact(line.start)}..{exact(line.end)}]"
    return ".".join(filter(None, (line.piece, line.side, "+".join(line.edges)))) + ends


def tried(work: Any) -> str:
    try:
        found = work()
    except KitError as error:
        return f"refused: {refusal(error)}"
    return named(found) if isinstance(found, Run | Chain) else exact(found)


def called(line: Run | Chain) -> str:
    """The landmarks a part is called by."""
    found = part_of(CUT, line)
    return "" if found is None else " to ".join(_landmark(one) for one in found)


def _landmark(one: NamedLandmark) -> str:
    """Its kind, and what it is called by."""
    parts = [one.kind, getattr(one.label, "name", one.label), one.way, one.beside.name, one.side]
    parts += [exact(one.mm) if one.mm else "", str(one.number or "")]
    return "/".join(part for part in parts if part)


def of_line(line: Run | Chain) -> Iterator[str]:
    legs = line_of(CUT, line)
    yield f"{named(line)} ({line.said}), {exact(float(line.length))} long of {exact(size_of(legs))}"
    for leg in legs:
        way = "" if leg.forward else ", back"
        ends = f"{exact(leg.point('start'))} beside {leg.beside('start') or '-'} to {exact(leg.point('end'))}"
        name = f"{leg.piece.name}.{leg.side}.{leg.edge}"
        yield f"  {name} at {exact(leg.at)}{way}: {ends} beside {leg.beside('end') or '-'}"
    yield f"  notches {exact([(at, leg.edge, notch.distance) for at, leg, notch in notches(legs)])}"
    for title, place in PLACES.items():
        yield f"  {title} lies {tried(lambda place=place: place_on(line, place, 'here'))}"  # type: ignore[misc]


@pytest.mark.parametrize("name", LINES)
def test_where_its_landmarks_lie(name: str) -> None:
    Kept(TOLD / f"{name.replace(' ', '_').replace(',', '')}.txt").holds({name: "\n".join(of_line(LINES[name]))})


@pytest.mark.parametrize("name", LINES)
def test_what_its_parts_are(name: str) -> None:
    line, lines = LINES[name], []
    lies = {tried(lambda place=place: place_on(line, place, "")) for place in PLACES.values()}  # type: ignore[misc]

    def tell(title: str, work: Any) -> None:
        told = tried(work)
        if told in lies:
            return  # said above of the place itself
        if not told.startswith("refused"):
            found = work()
            told += f" = {called(found)}, {tried(lambda: float(found.length))} long"
        lines.append(f"{title}: {told}")

    for title, place in PLACES.items():
        tell(f"after {title}", lambda place=place: line.after(place))  # type: ignore[misc]
        tell(f"before {title}", lambda place=place: line.before(place))  # type: ignore[misc]
    for one, two in PAIRS:
        tell(f"between {one} and {two}", lambda one=one, two=two: line.between(PLACES[one], PLACES[two]))  # type: ignore[misc]
    for number in (0, 1, 2, 3, True):
        lines.append(f"notch {number}: {tried(lambda number=number: _notch(line, number))}")  # type: ignore[misc]
    Kept(TOLD / f"parts_of_{name.replace(' ', '_').replace(',', '')}.txt").holds({name: "\n".join(lines)})


PAIRS = (
    ("the slit", "the tie"),
    ("the tie", "the slit"),
    ("the slit", "the slit"),
    ("the slit's start", "the slit's end"),
    ("1 cm", "12 cm"),
    ("12 cm", "1 cm"),
    ("1 cm", "the tie"),
    ("the tie", "1 cm"),
    ("the armhole", "the slit"),
    ("the hem", "the armhole"),
    ("the armhole", "12 cm"),
    ("the upper notch", "the pin"),
    ("the left loop", "the front's left shoulder"),
)


def _notch(line: Run | Chain, number: int) -> tuple[str, float, str]:
    found = line.notch(number)
    return found.piece, found.notch.distance, str(found.side)


def test_parts_of_parts() -> None:
    side = front.side.between(2 * cm, 20 * cm)
    lines = {
        "after the slit of it": lambda: side.after(front.slit),
        "before the slit of it": lambda: side.before(front.slit),
        "to beyond it": lambda: side.between(front.slit, 24 * cm),
        "to the hem": lambda: side.between(front.hem, front.tie),
        "a part of the neck, once more": lambda: (front.neck + back.neck).after(2 * cm).before(10 * cm),
        "joined to a part": lambda: side + front.hem,
        "a part joined": lambda: front.hem + side,
        "a part of a chain joined": lambda: (front.neck + back.neck).after(2 * cm) + front.centre,
        "all of it": lambda: front.side.between(front.hem, front.armhole),
        "all but a hair": lambda: front.side.between(0.04 * mm, front.armhole),
        "a hair": lambda: front.side.between(10 * mm, 10.4 * mm),
        "past the end of a chain": lambda: (front.neck + back.neck).after(50 * cm),
        "an edge twice": lambda: front.neck + back.neck + front.neck,
        "no piece": lambda: Run("front", ("side",)).length,
        "a part of no piece": lambda: Run("front", ("side",)).after(2 * cm),
        "no part of no piece": lambda: Run("front", ("side",)).between(2 * cm, 2.04 * cm),
        "half and both": lambda: back.left.neck + front.neck,
    }
    Kept(TOLD / "parts_of_parts.txt").holds(
        {"told": "\n".join(f"{title}: {tried(one)}" for title, one in lines.items())}
    )


def test_handles_and_what_they_do_not_have() -> None:
    nameless = PieceHandle(replace(FRONT, cut=CutPlan()))
    lines = {
        "a half": lambda: front.left.side,
        "the other": lambda: front.right.side,
        "no half of a single": lambda: flap.left,
        "not planned": lambda: nameless.left,
        "no such edge": lambda: front.sid,
        "no such thing": lambda: front.zzzz,
    }
    told = [f"{title}: {tried(one)}" for title, one in lines.items()]
    tie = StripHandle(STRIPS[0])
    told += [f"said: {front!r}, {front.left!r}, {tie!r}, {tie.sides.said}, {tie.ends.said}"]
    told += [f"said: {front.slit.said}; {front.left.slit.end.said}; {front.upper_notch.said}; {front.left.slit.said}"]
    told += [f"ends: {float(front.slit.start)} {float(front.slit.end)} {front.gap.start * 2} {front.slit.edge}"]
    Kept(TOLD / "handles.txt").holds({"handles": "\n".join(told)})


# ---- places along edges -----------------------------------------------------------------------------------------


def _spans(found: tuple[Span, ...]) -> str:
    return ", ".join(f"{one.piece}.{one.side}.{one.edge}[{exact(one.start)}..{exact(one.end)}]" for one in found)


RUNS = {
    "side": front.side,
    "part": front.side.between(3 * cm, 21 * cm),
    "left hem": front.left.hem,
    "hem and side": front.hem + front.side,
    "side and hem": front.side + front.hem,
    "part over the corner": Run("front", ("hem", "side"), None, 150.0, 260.0),
    "part over the corner, back": Run("front", ("side", "hem"), "left", 100.0, 330.0),
    "beyond": Run("front", ("side",), None, 100.0, 300.0),
    "back's hem": back.hem,
    "flap": flap.upper,
}


@pytest.mark.parametrize("name", RUNS)
def test_places_along_a_run(name: str) -> None:
    run, lines = RUNS[name], []
    lines.append(f"reach {tried(lambda: reach(CUT, run))}, length {tried(lambda: run_length(CUT, run))}")
    for ends in ((None, None), (20.0, None), (None, 30.0), (10.0, 90.0)):
        lines.append(f"spans {ends}: {_tried_spans(run, *ends)}")
    if "refused" not in lines[0]:
        lines.append(f"path {exact(path_of(CUT, run))}")
        lines.append(f"part {named(part(CUT, run, 12.0, 40.0))}")
        for at in (0.0, 8.0, 60.0, run_length(CUT, run)):
            where = named(around(CUT, run, at, 30.0))
            lines.append(f"around {exact(at)}: {where}; called {_landmark(spot_on(CUT, run, at))}")
        lines += [f"{edge} 25 lies {tried(lambda edge=edge: along(CUT, run, edge, 25.0))}" for edge in ("side", "hem")]  # type: ignore[misc]
        lines.append(f"inside {tried(lambda: inside(CUT, run, 7.0))}; {exact(sewn_length(CUT, (run,)))} on all halves")
        for other in ("side", "back's hem"):
            lines.append(f"opposed to {other}: {runs_opposed(CUT, run, RUNS[other])}")
            both = tried(lambda other=other: [named(one) for one in on_both(CUT, run, RUNS[other], (10.0, 40.0))])  # type: ignore[misc]
            lines.append(f"  both sides of 10 to 40: {both}")
        end = replace(run, edges=run.edges[:1], start=None, end=None)
        for at in neighbours(CUT.piece(run.piece), run.edges):
            corner_at = tried(lambda at=at: corner(CUT, run, at))  # type: ignore[misc]
            lines.append(f"corner with {at} {corner_at}")
            side = replace(end, edges=(at,))
            near = tried(lambda side=side: [named(one) for one in beside(CUT, side, 20.0)])  # type: ignore[misc]
            rest = tried(lambda side=side: [named(one) for one in without_end(CUT, run, side, 20.0)])  # type: ignore[misc]
            lines.append(f"  beside {at}: {near}; without that end {rest}")
    Kept(TOLD / f"along_{name.replace(' ', '_').replace(',', '')}.txt").holds({name: "\n".join(lines)})


def _tried_spans(run: Run, start: float | None, end: float | None) -> str:
    try:
        return _spans(spans(CUT, run, start, end))
    except KitError as error:
        return f"refused: {refusal(error)}"


def test_stretches_taken_out_of_others_and_rows_of_runs() -> None:
    whole = [Span("p", "left", "e", 0.0, 100.0), Span("p", "right", "e", 10.0, 90.0)]
    lines = []
    for cut in ((20.0, 40.0), (0.0, 30.0), (60.0, 120.0), (0.0, 100.0), (99.9999, 200.0), (-5.0, 0.0)):
        lines.append(f"without {cut}: {_spans(minus(whole, [Span('p', 'left', 'e', *cut)]))}")
    rows = gathered([*(front.neck + back.neck).one_by_one(), front.side])
    lines.append(f"gathered: {', '.join(map(named, rows))}")
    lines.append(f"placed: {placed(CUT, front.side.after(front.slit)).value}".replace(", ", " "))
    lines.append(f"landmark: {landmark_value(line_of(CUT, front.side), front.side._tip('end')).value}")
    for edges in (("hem",), ("hem", "side"), ("centre", "hem"), ("neck", "shoulder")):
        lines.append(f"beside {edges}: {neighbours(FRONT, edges)}")
    Kept(TOLD / "stretches.txt").holds({"told": "\n".join(lines)})
