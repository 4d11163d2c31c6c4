"""What pieces and strips say of themselves, notches on the cut line and allowances that are refused, told in full.

What stands in `values_told.txt` was made by the kit. Read beside it: notches of 5 mm, at most two thirds of the
allowance, those of a double one 6 mm apart (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path as File

from kit.geometry import Path, Point
from kit.piece.allowance import allowance_of, cut_line, cut_width, has_allowances, hem_edges, notch_lines
from kit.piece.piece import CutPlan, Edge, Notch, Piece, Strip, interfacing_cut, named
from tests.exact import exact, tried
from tests.piece.test_folds_told import PANELS, panel
from tests.told import Kept


def _notched(piece: Piece, edge: str, *places: float, kind: str = "single", **more: object) -> str:
    notches = tuple(Notch(edge, at, kind) for at in places)  # type: ignore[arg-type]
    return tried(lambda: [notch.lines for notch in notch_lines(replace(piece, notches=notches), **more)])  # type: ignore[arg-type]


def _of_notches() -> Iterator[str]:
    piece, bowed = panel(), PANELS["bowed"]
    back = replace(piece, edges=tuple(replace(e, path=e.path.reversed()) for e in reversed(piece.edges)))
    narrow = piece.with_edges(side=replace(piece.edge("side"), allowance=6.0, extra=0.9))
    cut_on = piece.with_edges(side=replace(piece.edge("side"), allowance=0.0))
    yield f"single: {_notched(piece, 'side', 0.0, 150.0, 400.0)}"
    yield f"double: {_notched(piece, 'side', 1.0, 150.0, 399.0, kind='double')}"
    yield f"the other way round: {_notched(back, 'side', 100.0, kind='double')}"
    yield f"on a bend: {_notched(bowed, 'waist', 90.0, kind='double')}"
    yield f"of 4 mm: {_notched(piece, 'hem', 150.0, length=4.0)}"
    yield f"narrow: {_notched(narrow, 'side', 150.0)}"
    yield f"on the line: {_notched(cut_on, 'side', 150.0)}"
    yield f"just off: {_notched(piece, 'side', -0.009, 400.009)}"
    yield f"off its start: {_notched(piece, 'side', -0.02)}"
    yield f"off its end: {_notched(piece, 'side', 400.02)}"


def _of_allowances() -> Iterator[str]:
    piece = replace(panel(), cut=CutPlan(fold="centre"))
    hem = piece.edge("hem")
    for title, edge in (
        ("as it is", hem),
        ("none yet", replace(hem, allowance=None)),
        ("of nothing", replace(hem, allowance=0.0)),
        ("below nothing", replace(hem, allowance=-1.0)),
        ("without end", replace(hem, allowance=float("inf"))),
        ("with extra", replace(hem, extra=7.0)),
    ):
        other = piece.with_edges(hem=edge)
        widths = (
            f"{tried(lambda p=other, e=edge: allowance_of(p, e))}, cut {tried(lambda p=other, e=edge: cut_width(p, e))}"  # type: ignore[misc]
        )
        yield f"{title}: {has_allowances(other)}, {widths}; {tried(lambda p=other: cut_line(p).bounds())}"  # type: ignore[misc]
    yield f"on the fold: {allowance_of(piece, piece.edge('centre'))}, {cut_width(piece, piece.edge('centre'))}"
    bare = piece.with_edges(centre=replace(piece.edge("centre"), allowance=None))
    yield f"a fold without one: {has_allowances(bare)}"
    on_hem = replace(piece, cut=CutPlan(fold="hem"))
    yield f"hems: {exact(hem_edges(piece))}; of one on the fold: {exact(hem_edges(on_hem))}"
    yield f"hems not turned: {exact(cut_line(PANELS['slanting'], ()).curves)}"
    yield f"hems turned: {exact(cut_line(PANELS['slanting']).curves)}"
    yield f"the side turned: {exact(cut_line(PANELS['slanting'], ('side',)).curves)}"


def _of_values() -> Iterator[str]:
    points = (("neck_point", Point(1, 2)), ("shoulder_tip", Point(3, 4)), ("somewhere", Point(5, 6)))
    guides = (("waistline", Path.line(Point(0, 1), Point(2, 3))), ("hip_line", Path.line(Point(0, 5), Point(2, 5))))
    piece = replace(panel(), points=points, guides=guides, landmarks=None)
    yield f"landmarks {exact(piece.landmarks)}"
    for what in dict(piece.landmarks or ()).values():
        yield f"{what}: {exact(piece.point_of(what))}, {exact(piece.guide_of(what))}"
    yield f"none: {piece.point_of('bust_point')}, {piece.guide_of('bust')}"  # type: ignore[arg-type]
    for title, name, role in (
        ("Back yoke", "yoke", None),
        ("Front", "panel", None),
        ("Sleeve", "s", None),
        ("Panel", "p", "front"),
        ("Panel", "p", "back"),
        ("Panel", "p", "sleeve"),
    ):
        made = Piece(name, title, (), role=role)  # type: ignore[arg-type]
        yield f"{title}, {name}, {role}: {made.role!r} worn {made.worn!r}"
    said = Edge("side_seam", panel().edge("hem").path, said="long side")
    yield f"edges: {said.label}, {replace(said, said='').label}; {said.role!r}"
    for plan in (CutPlan(), CutPlan(mirrored=True), CutPlan(fold="centre")):
        planned = replace(panel(), cut=plan)
        yield f"sides of {exact(plan)}: {exact(planned.sides)}, fold {planned.fold!r}"
    yield f"edges named: {panel().has_edge('hem')} {panel().has_edge('hemm')}; {tried(lambda: panel().edge('hemm'))}"
    yield f"roles: {exact([edge.name for edge in panel().with_role('hem')])} {panel().with_role('neck')}"
    open_one = replace(panel(), edges=panel().edges[:2])
    yield f"not closed: {tried(lambda: open_one.outline)}; {tried(lambda: replace(open_one, title='').outline)}"
    strip = Strip("tie", "Tie", 900.0, 40.0, 2)
    joined = replace(strip, joins=2, each=310.0)
    yield f"strips: {strip.pieces} of {strip.cut_length}; joined {joined.pieces} of {joined.cut_length}"
    yield f"named: {named((panel(),), 'skirt', 'piece').title}; {tried(lambda: named((panel(),), 'skart', 'piece'))}"
    cut = replace(panel(), cut=CutPlan(interfacing=2))
    drawn = tuple(
        replace(panel(), name=name, source=source, cut=CutPlan(3, cloth=cloth))  # type: ignore[arg-type]
        for name, source, cloth in (
            ("a", "skirt", "interfacing"),
            ("b", "skirt", "main"),
            ("c", "other", "interfacing"),
        )
    )
    counts = (interfacing_cut(drawn, panel()), interfacing_cut(drawn, cut), interfacing_cut((), panel()))
    yield f"interfacing, of its own, none: {exact(counts)}"


def test_what_is_said() -> None:
    found = {"notches": _of_notches(), "allowances": _of_allowances(), "values": _of_values()}
    Kept(File(__file__).with_name("values_told.txt")).holds({title: "\n".join(lines) for title, lines in found.items()})
