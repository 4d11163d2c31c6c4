"""Darts, pleats and runs with them folded shut, each told in full: where every line lies, which motion shuts a fold,
where a place of the draft comes to and back, what the corners at the ends are, and what is refused with which values.

What stands in `folds_told` was made by the kit. Read beside it: the straight panel, whose darts of 20 mm and pleats of
60 mm take just that of the edge, and whose places beyond a fold are moved by it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path as File

import pytest

from kit.errors import KitError
from kit.geometry import Cubic, Path, Point, Vector
from kit.lesson import pleating
from kit.piece import dart as darts
from kit.piece import pleat as pleats
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.double_dart import around, double_darts, sewn_width
from kit.piece.folded import Folded, corner_at, folded, sewn_part
from kit.piece.piece import Edge, Mark, Piece
from kit.piece.slit import room, slit_of
from tests.exact import exact, refusal, tried, turns
from tests.told import Kept

TOLD = File(__file__).with_name("folds_told")


def panel(rise: float = 0.0, bow: float = 0.0, lean: float = 0.0) -> Piece:
    """Centre, hem, side leaning in by `lean`, waist from side to centre, `rise` higher there, bowed by `bow`."""
    side, centre = Point(300 - lean, 400 + rise), Point(0, 400)
    waist = Path.line(side, centre)
    if bow:
        waist = Path((Cubic(side, side + Vector(-100, -bow), centre + Vector(100, -bow / 2), centre),))
    paths = {
        "centre": Path.line(centre, Point(0, 0)),
        "hem": Path.line(Point(0, 0), Point(300, 0)),
        "side": Path.line(Point(300, 0), side),
        "waist": waist,
    }
    return Piece("skirt", "Skirt", tuple(Edge(name, path, 10.0) for name, path in paths.items()))


def darted(piece: Piece, *places: tuple[float, float], depth: float = 110.0, **more: object) -> Piece:
    """Darts in the waist from place to place, their points `depth` mm below."""
    path, found = piece.edge("waist").path, []
    for number, (start, end) in enumerate(places, 1):
        one, two = path.at(start), path.at(end)
        apex = one.mid(two) + (two - one).left().unit() * depth
        found.append(Dart(f"dart_{number}", "waist", apex, start, end, **more))  # type: ignore[arg-type]
    return replace(piece, darts=tuple(found))


PANELS = {"straight": panel(), "slanting": panel(12.0, lean=40.0), "bowed": panel(15.0, 12.0, 30.0)}


def aside(piece: Piece, by: float) -> Piece:
    """Its darts with their points so far aside that their legs differ a little."""
    return replace(piece, darts=tuple(replace(d, apex=d.apex + Vector(by, 0.0)) for d in piece.darts))


def of_darts(piece: Piece) -> Iterator[str]:
    for dart in piece.darts:
        yield f"{dart.name}: mouth {exact(darts.mouth(piece, dart))}, along {exact(darts.mouth_path(piece, dart))}"
        yield f"  takes {exact(darts.intake(piece, dart))}, {exact(darts.depth(piece, dart))} deep"
        yield f"  to {exact(darts.sewn_point(piece, dart))}; legs {exact(darts.legs(piece, dart))}"
        yield f"  fold {exact(darts.fold_line(piece, dart))}; {exact(darts.closing(piece, dart))}"
        for pressed in ("start", "end"):
            cap = tried(lambda dart=dart, pressed=pressed: darts.cap(piece, replace(dart, pressed=pressed)))  # type: ignore[misc]
            yield f"  cap, pressed to the {pressed}: {cap}"


def of_edge(piece: Piece, edge: str) -> Iterator[str]:
    yield f"{edge}: mouths {exact(darts.mouths(piece, edge))}, sewn {exact(darts.sewn_length(piece, edge))}"
    for start, end in ((0.0, 50.0), (45.0, 105.0), (60.0, None)):
        yield f"  in mouths from {start} to {end}: {exact(darts.mouths_length(piece, edge, start, end))}"
    yield f"  shut: {tried(lambda: darts.closed_edge(piece, edge))}"
    for start, end, part in darts.closed_stretches(piece, edge):
        yield f"  {exact(start)} to {exact(end)} comes to {exact(part)}"


def of_run(run: Folded) -> Iterator[str]:
    yield f"run {run.label}, {exact(run.length)} long, cloth to the {'left' if run.cloth_left else 'right'}"
    yield f"  {exact(run.path)}"
    for part in run.stretches:
        way = "" if part.forward else ", backwards"
        yield f"  at {exact(part.at)}: {part.edge} {exact(part.low)} to {exact(part.high)}{way}; {exact(part.motion)}"
    yield from (f"  fold {exact(fold)}" for fold in run.folds)
    yield f"  beyond it {exact(run.beyond)}"
    for edge in dict.fromkeys(run.edges):
        places = [run.piece.edge(edge).path.length * step / 8 for step in range(9)]
        yield f"  {edge} as drafted comes to {exact([run.sewn(edge, at) for at in places])}"
    yield f"  as sewn is {exact([run.drafted(run.length * step / 8) for step in range(9)])}"
    for end in (False, True):
        corner = corner_at(run, end)
        yield f"  {'end' if end else 'start'}: {exact(corner)}"


def told(name: str, found: dict[str, Iterator[str]]) -> None:
    Kept(TOLD / f"{name.replace(' ', '_')}.txt").holds({title: "\n".join(lines) for title, lines in found.items()})


@pytest.mark.parametrize("name", PANELS)
def test_darts(name: str) -> None:
    size = PANELS[name].edge("waist").path.length
    found = {}
    for title, places, more in (
        ("in the middle", [(100.0, 120.0)], {}),
        ("two, stitched short", [(50.0, 75.0), (150.0, 170.0)], {"short": 15.0}),
        ("at both corners", [(0.0, 20.0), (size - 30.0, size)], {}),
        ("side by side", [(100.0, 120.0), (124.0, 150.0)], {}),
    ):
        piece = darted(PANELS[name], *places, **more)  # type: ignore[arg-type]
        found[title] = (line for part in (of_darts(piece), of_edge(piece, "waist")) for line in part)
    unlike = aside(darted(PANELS[name], (100.0, 120.0)), 2.0)
    found["legs a little unlike"] = (line for part in (of_darts(unlike), of_edge(unlike, "waist")) for line in part)
    told(f"darts {name}", found)


RUNS = {
    "waist": ("waist",),
    "side and waist": ("side", "waist"),
    "waist and side": ("waist", "side"),
    "waist, centre and hem": ("waist", "centre", "hem"),
}


@pytest.mark.parametrize("name", ["straight", "bowed"])
def test_runs_over_darts(name: str) -> None:
    size = PANELS[name].edge("waist").path.length
    piece = darted(PANELS[name], (50.0, 75.0), (150.0, 170.0))
    found = {title: of_run(folded(piece, edges)) for title, edges in RUNS.items()}
    whole = folded(piece, ("side", "waist"))
    found["back"] = of_run(whole.reversed())
    found["part"] = of_run(whole.part(380.0, 520.0))
    found["part by the draft"] = of_run(sewn_part(piece, ("side", "waist"), 420.0, 600.0))
    found["part by the draft, walked back"] = of_run(sewn_part(piece, ("waist", "side"), 60.0, 320.0))
    at_corners = darted(PANELS[name], (0.0, 20.0), (size - 30.0, size))
    found["darts at both corners"] = of_run(folded(at_corners, ("waist",)))
    found["darts at both corners, the side"] = of_run(folded(at_corners, ("side",)))
    found["darts at both corners, back"] = of_run(folded(at_corners, ("waist",)).reversed())
    found["legs a little unlike"] = of_run(folded(aside(piece, 2.0), ("side", "waist")))
    told(f"runs {name}", found)


# ---- pleats -----------------------------------------------------------------------------------------------------


def pleated(piece: Piece, *places: float, wide: float = 60.0, down: bool = True, **more: object) -> Piece:
    for number, at in enumerate(places, 1):
        far = pleating.across(piece, "waist", at, Vector(0.0, 1.0) if down else None)
        piece = pleating.add_pleat(piece, f"pleat_{number}", ("waist", at), far, wide, **more)  # type: ignore[arg-type]
    return piece


PLEATS: dict[str, dict[str, object]] = {
    "laid to the end": {},
    "laid to the start": {"laid": "start"},
    "tapered": {"tapered": True},
    "tapered, to the start": {"tapered": True, "laid": "start"},
    "held at both ends": {"held": "both"},
    "held at both ends, to the start": {"held": "both", "laid": "start"},
    "a tuck": {"kind": "tuck", "sewn": 80.0, "wide": 20.0},
    "a tuck all along": {"kind": "tuck", "wide": 20.0},
}


def of_pleats(piece: Piece) -> Iterator[str]:
    for pleat in piece.pleats:
        yield f"{exact(pleat)}, lies {pleats.lies(piece, pleat)}, tapered {pleat.tapered}"
        yield f"  takes {exact(pleats.intake(pleat))}, fold {exact(pleats.fold_line(pleat))}"
        yield f"  {exact(pleats.closing(piece, pleat))}"
        yield f"  cap {tried(lambda pleat=pleat: pleats.cap(piece, pleat))}"  # type: ignore[misc]
        if pleat.far:
            yield f"  far cap {tried(lambda pleat=pleat: pleats.cap(piece, pleat, far=True))}"  # type: ignore[misc]
    for edge in ("waist", "hem"):
        yield f"{edge}: {exact([(a, b, p.name) for a, b, p in pleats.stretches(piece, edge)])}"
        yield f"  taken up {exact([(a, b, p.name) for a, b, p in pleats.taken_up(piece, edge)])}"
        yield from of_edge(piece, edge)
        yield from of_run(folded(piece, (edge,)))
    yield from of_run(folded(piece, ("hem", "side", "waist")))


@pytest.mark.parametrize("name", ["straight", "bowed"])
def test_pleats(name: str) -> None:
    found = {title: of_pleats(pleated(PANELS[name], 100.0, **more)) for title, more in PLEATS.items()}
    found["two"] = of_pleats(pleated(PANELS[name], 60.0, 180.0, wide=40.0))
    told(f"pleats {name}", found)


# ---- darts with two points, slits --------------------------------------------------------------------------------


def test_darts_with_two_points() -> None:
    path = around(Point(90, 300), Point(78, 190), Point(95, 80), Point(104, 200))
    even = around(Point(200, 300), Point(190, 190), Point(200, 80), Point(210, 190))
    marks = (
        Mark("one", "dart", path=path, said="back dart"),
        Mark("two", "dart", path=even),
        Mark("line", "line", path=path),
    )
    piece = replace(darted(panel(), (80.0, 100.0)), marks=marks)
    lines = []
    for dart in double_darts(piece):
        lines.append(f"{dart.label}: {exact(dart.legs)}; fold {exact(dart.fold)}; {exact(dart.middle)}")
        told_of = (dart.intake, dart.up, dart.down, dart.unlike, dart.sharpest)
        lines.append(f"  takes, up, down, unlike, sharpest: {exact(told_of)}")
    for high in (60.0, 150.0, 190.0, 250.0, 330.0, 380.0):
        across = Path.line(Point(-20, high), Point(320, high))
        lines.append(f"sewn at {exact(high)}: {exact(sewn_width(piece, across))}")
    told("two points", {"darts": iter(lines)})


def test_slits() -> None:
    lines = []
    for title, mark in {
        "from the hem": Mark("slit", "slit", path=Path.line(Point(120, 0), Point(130, 90))),
        "drawn from its end": Mark("slit", "slit", path=Path.line(Point(130, 90), Point(120, 0))),
        "from the side": Mark("slit", "slit", path=Path.line(Point(300, 150), Point(260, 150))),
        "0.9 off": Mark("slit", "slit", path=Path.line(Point(120, -0.9), Point(130, 90))),
        "1.1 off": Mark("slit", "slit", path=Path.line(Point(120, 1.1), Point(130, 90))),
        "out of the piece": Mark("slit", "slit", path=Path.line(Point(120, 0), Point(130, 450))),
        "no slit": Mark("line", "line", path=Path.line(Point(120, 0), Point(130, 90))),
    }.items():
        piece = replace(panel(), marks=(mark,))
        slit = slit_of(piece, mark)
        beyond = "" if slit is None else f", {exact(room(piece, slit))} beyond"
        lines.append(f"{title}: {exact(slit and (slit.edge, slit.at, slit.line))}{beyond}")
    told("slits", {"slits": iter(lines)})


# ---- what is refused, and from where on ---------------------------------------------------------------------------


def said(work: Callable[[], object]) -> str:
    try:
        work()
    except KitError as error:
        return refusal(error)
    return "nothing is refused"


def test_what_is_refused() -> None:
    piece, dart = panel(), Dart("dart", "waist", Point(190, 290), 100.0, 120.0)
    lean = replace(dart, apex=Point(195, 290))
    one = Path.line(Point(200, 400), Point(200, 300))
    pleat = Pleat("pleat", "waist", 100.0, 140.0, (one, Path.line(Point(160, 400), Point(160, 300))))
    longer = replace(pleat, lines=(one, Path.line(Point(160, 400), Point(160, 290))))
    nothing = replace(pleat, lines=(Path.line(Point(200, 400), Point(200, 400)),) * 2)
    off = replace(pleat, end=310.0)
    over = replace(piece, darts=(dart, replace(dart, name="over", start=110.0, end=130.0, apex=Point(180, 290))))
    whole = replace(piece, darts=(Dart("whole", "waist", Point(150, 290), 0.0, 300.0),))
    found = {
        "no such dart": lambda: darts.dart_of(replace(piece, darts=(dart,)), "dard"),
        "a dart off its edge": lambda: darts.mouth(piece, replace(dart, end=310.0)),
        "a dart from beyond": lambda: darts.mouth(piece, replace(dart, start=-5.0)),
        "a dart back to front": lambda: darts.mouth(piece, replace(dart, start=130.0)),
        "legs unlike": lambda: darts.closing(piece, lean),
        "no edge to lie under": lambda: darts.cap(piece, replace(dart, start=0.0, end=20.0, pressed="start")),
        "none at the end": lambda: darts.cap(piece, replace(dart, start=280.0, end=300.0, apex=Point(10, 290))),
        "no such pleat": lambda: pleats.pleat_of(replace(piece, pleats=(pleat,)), "plead"),
        "lines unlike": lambda: pleats.closing(piece, longer),
        "a pleat of no length": lambda: pleats.closing(piece, nothing),
        "a pleat off its edge": lambda: pleats.cap(piece, off),
        "no edge for a pleat": lambda: pleats.cap(piece, replace(pleat, start=260.0, end=300.0)),
        "folds over one another": lambda: folded(over, ("waist",)),
        "all folded away": lambda: folded(whole, ("waist",)),
        "edges apart": lambda: folded(piece, ("hem", "waist")),
        "no edge": lambda: folded(piece, ()),
        "a part backward": lambda: sewn_part(piece, ("side", "waist"), 200.0, 100.0),
        "off its end": lambda: folded(piece, ("waist",)).drafted(301.0),
    }
    told("refused", {"refused": (f"{title}: {said(work)}" for title, work in found.items())})


def accepted(work: Callable[[], object]) -> bool:
    try:
        work()
    except KitError:
        return False
    return True


def test_from_where_on() -> None:
    piece = panel()
    dart = Dart("dart", "waist", Point(190, 290), 100.0, 120.0)
    one = Path.line(Point(200, 400), Point(200, 300))

    def apart(by: float) -> Piece:
        return piece.with_edges(side=Edge("side", Path.line(Point(300, by), Point(300, 400)), 10.0))

    def leg(by: float) -> Pleat:
        return Pleat("p", "waist", 100.0, 140.0, (one, Path.line(Point(160, 400), Point(160, 300 - by))))

    def corner(by: float) -> bool:
        return corner_at(folded(piece, ("waist",)).part(by, 200.0), False) is not None

    def beside(by: float) -> bool:
        """Whether there is a corner where the side stops short of the waist."""
        short = piece.with_edges(side=Edge("side", Path.line(Point(300, 0), Point(300, 400 - by)), 10.0))
        return corner_at(folded(short, ("waist",)), False) is not None

    def tip(by: float) -> bool:
        return replace(leg(0), lines=(one, Path.line(Point(160, 400), Point(200 - by, 300)))).tapered

    def dart_beside(by: float) -> Dart:
        return replace(dart, start=by, end=by + 20.0, apex=Point(290 - by, 290), pressed="start")

    def pleat_beside(by: float) -> Pleat:
        near, far = (Path.line(Point(x, 400), Point(x, 300)) for x in (40 + by, by))
        return Pleat("p", "waist", 260.0 - by, 300.0 - by, (near, far))

    def aside(by: float) -> Dart:
        return replace(dart, apex=Point(190 + by, 290))

    def lying(start: float, end: float) -> bool:
        """Whether a dart lies on its edge, as is asked of one and of all."""
        placed = replace(dart, start=start, end=end)
        on_it = accepted(lambda: darts.mouth(piece, placed))
        assert on_it == bool(darts.darts_lying(replace(piece, darts=(placed,))))
        return on_it

    run = folded(piece, ("waist",))
    found = {
        "a dart before its edge": turns(lambda by: lying(-by, 20.0), 0.0, 5.0),
        "a dart beyond its edge": turns(lambda by: lying(280.0, 300.0 + by), 0.0, 5.0),
        "a dart's point aside": turns(lambda by: accepted(lambda: darts.closing(piece, aside(by))), 0.0, 20.0),
        "a pleat's line longer": turns(lambda by: accepted(lambda: pleats.closing(piece, leg(by))), 0.0, 5.0),
        "edges apart": turns(lambda by: accepted(lambda: folded(apart(by), ("hem", "side"))), 0.0, 5.0),
        "a part within its edge": turns(corner, 0.0, 5.0),
        "the edge beside it stops short": turns(beside, 0.0, 5.0),
        "a place off a part": turns(lambda by: run.part(0.0, 50.0).sewn("waist", 50.0 + by) is not None, 0.0, 5.0),
        "a place beyond the run": turns(lambda by: accepted(lambda: run.drafted(300.0 + by)), 0.0, 5.0),
        "a place before the run": turns(lambda by: accepted(lambda: run.drafted(-by)), 0.0, 5.0),
        "a tip of a taper so wide": turns(tip, 0.0, 5.0),
        "an edge left beside a dart": turns(lambda by: accepted(lambda: darts.cap(piece, dart_beside(by))), 0.0, 20.0),
        "an edge beside a pleat": turns(lambda by: accepted(lambda: pleats.cap(piece, pleat_beside(by))), 0.0, 40.0),
    }
    told("limits", {"limits": (f"{title}: {at}" for title, at in found.items())})
