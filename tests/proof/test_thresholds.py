"""Every measure of the proof just inside and just outside what it allows, with the amount, the place and the step that
are told. The limits are the kit's own promise (README, messages); amounts are geometry of straight lines."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from types import ModuleType
from typing import Any

import pytest

from kit.geometry import Path, Point, Vector
from kit.lesson.pattern import Pattern, SewRecord
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Mark, Notch, Piece
from kit.piece.pleat import pleat_of
from kit.proof.corners import corners
from kit.proof.darts import darts
from kit.proof.edges import allowances, raw_edges, used
from kit.proof.finding import Finding
from kit.proof.folds import fold_true
from kit.proof.marks import notches, openings
from kit.proof.pieces import outlines
from kit.proof.pleats import pleats
from kit.proof.seams import seam_lengths
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.sewing.order import sew
from kit.units import cm, mm
from tests.pleated import panel, pleated

EDGES = {"top": 10, "seam": 10, "bottom": 10, "far": 10}
Sewing = Callable[..., None]


@pytest.fixture
def made(wrap: ModuleType) -> Callable[..., Pattern]:
    """A pattern of pieces, each of the functions one sewing step of its own name."""

    def pattern(pieces: Sequence[Piece], *steps: Sewing) -> Pattern:
        records = []
        for step in steps:
            make = Make(tuple(pieces))
            step(make, *(PieceHandle(piece) for piece in pieces))
            records.append(SewRecord(step.__name__, step.__name__.capitalize(), "", "", tuple(make.operations)))
        return replace(wrap.pattern_of([], pieces=tuple(pieces), strips=()), sewing=tuple(records))

    return pattern


def box(wrap: ModuleType, name: str, seam: float = 100.0, drop: float = 0.0, **changes: Any) -> Piece:
    """A square panel whose `seam` runs down at x = 100; its lower edge falls away to the far side by -`drop`."""
    points = [(0, 100), (100, 100), (100, 100 - seam), (0, drop)]
    return replace(wrap.polygon(name, points, EDGES), **changes)


def values(finding: Finding) -> dict[str, Any]:
    """What fills the places of what is said."""
    return {name: value.value for name, value in finding.says.values}  # type: ignore[union-attr]


def place(finding: Finding) -> tuple[str, str, str, str, str]:
    return finding.code, finding.level, finding.step, finding.piece, finding.edge


# ---- seams ------------------------------------------------------------------------------------------------


def plain(ease: float = 0.0) -> Sewing:
    def join(make: Any, a: Any, b: Any) -> None:
        make.plain_seam(a.seam, b.seam, allowance=1 * cm, **({"ease": ease * mm} if ease else {}))

    return join


@pytest.mark.parametrize("longer", ["left", "right"])
@pytest.mark.parametrize(("gap", "told"), [(0.0, False), (0.45, False), (0.55, True), (7.0, True)])
def test_seams_that_differ(made, wrap, longer, gap, told) -> None:
    pieces = [box(wrap, name, 100 + (gap if name == longer else 0)) for name in ("left", "right")]
    found = seam_lengths(made(pieces, plain()))
    assert [place(f) for f in found] == ([("seam_length", "error", "join", longer, "seam")] if told else [])
    for finding in found:
        assert finding.amount == pytest.approx(gap) and values(finding)["amount"] == pytest.approx(gap)
        assert [p.title for p in values(finding)["longer"]] == [longer.capitalize()]
        assert finding.where == f"{longer.capitalize()}, step 'Join'"


@pytest.mark.parametrize("longer", ["left", "right"])
@pytest.mark.parametrize(("gap", "told"), [(3.45, True), (3.55, False), (4.0, False), (4.45, False), (4.55, True)])
def test_ease_that_is_not_there(made, wrap, longer, gap, told) -> None:
    pieces = [box(wrap, name, 100 + (gap if name == longer else 0)) for name in ("left", "right")]
    found = seam_lengths(made(pieces, plain(4.0)))
    assert [place(f) for f in found] == ([("ease_amount", "error", "join", "left", "seam")] if told else [])
    for finding in found:
        assert finding.amount == pytest.approx(abs(gap - 4.0))
        assert (values(finding)["ease"], values(finding)["amount"]) == (4.0, pytest.approx(gap))


def test_a_facing_is_told_as_a_facing(made, wrap) -> None:
    def face(make: Any, a: Any, b: Any) -> None:
        make.attach_facing(b.seam, a.seam, allowance=1 * cm)

    (finding,) = seam_lengths(made([box(wrap, "front"), box(wrap, "front_facing", 102.0)], face))
    assert place(finding) == ("facing_length", "error", "face", "front_facing", "seam")
    (other,) = seam_lengths(made([box(wrap, "front"), box(wrap, "front_facing", 102.0)], plain()))
    assert other.do != finding.do


# ---- allowances and raw edges -----------------------------------------------------------------------------


@pytest.mark.parametrize(("given", "key"), [(10.45, ""), (9.55, ""), (10.55, "wide"), (9.45, "narrow"), (0, "narrow")])
def test_allowances_that_the_seam_does_not_take(made, wrap, given, key) -> None:
    left = box(wrap, "left")
    left = left.with_edges(seam=replace(left.edge("seam"), allowance=given))
    found = allowances(made([left, box(wrap, "right")], plain()))
    assert [place(f) for f in found] == ([("allowance", "error", "join", "left", "seam")] if key else [])
    for finding in found:
        assert finding.amount == pytest.approx(abs(given - 10.0))
        assert finding.says.key == f"proof.allowance_too_{key}"  # type: ignore[union-attr]
        assert (values(finding)["given"], values(finding)["taken"]) == (given, 10.0)


def test_an_allowance_is_told_once_for_each_amount_taken(made, wrap) -> None:
    """The seam takes 1 cm in two parts: told once. The hem takes another amount: told beside it."""
    left = box(wrap, "left")
    left = left.with_edges(seam=replace(left.edge("seam"), allowance=30.0))

    def two(make: Any, a: Any, b: Any) -> None:
        for start, end in ((0, 4), (4, 8)):
            one, other = (x.seam.between(start * cm, end * cm) for x in (a, b))
            make.plain_seam(one, other, allowance=1 * cm)

    def hem(make: Any, a: Any, b: Any) -> None:
        make.hem(a.seam.between(8 * cm, 10 * cm), first=1 * cm, second=1 * cm)

    found = allowances(made([left, box(wrap, "right")], two, hem))
    assert [(f.step, f.amount) for f in found] == [("two", pytest.approx(20)), ("hem", pytest.approx(10))]


@pytest.mark.parametrize("mirrored", [False, True])
def test_what_is_left_raw_is_measured(made, wrap, mirrored) -> None:
    left = box(wrap, "left")
    left = replace(left, cut=replace(left.cut, mirrored=mirrored, count=1 + mirrored))

    def hem(make: Any, a: Any) -> None:
        edge = a.seam if not mirrored else a.right.seam
        make.narrow_hem(edge.between(2 * cm, 7.5 * cm))

    pattern = made([left], hem)
    found = raw_edges(pattern, sew(pattern)[0])
    seam = [f for f in found if f.edge == "seam"]
    whole = [f for f in found if f.edge == "top"]
    assert [f.amount for f in whole] == [pytest.approx(100)] and values(whole[0])["length"] == pytest.approx(100)
    assert {place(f) for f in found} == {("raw_edge", "error", "", "left", e) for e in EDGES}
    if mirrored:
        assert sorted(f.amount for f in seam) == pytest.approx([20, 25, 100])
        sides = [values(f)["edge"][1] for f in seam]  # the edge and its half
        assert sorted(zip(sides, (round(f.amount or 0) for f in seam), strict=True)) == [
            ("left", 100),
            ("right", 20),
            ("right", 25),
        ]
    else:
        assert [f.amount for f in seam] == pytest.approx([20, 25])
    parts = [values(f) for f in seam if "stretch" in values(f)]
    assert [(v["part"], v["length"]) for v in parts] == [
        (pytest.approx(20), pytest.approx(100)),
        (pytest.approx(25), pytest.approx(100)),
    ]
    said = [f.what for f in seam if "stretch" in values(f)]
    assert "2 cm (3/4 in)" in said[0] and "2.5 cm (1 in)" in said[1]


@pytest.mark.parametrize(("layers", "count", "codes"), [(2, 2, []), (1, 2, ["count"]), (3, 2, ["count"]), (4, 2, [])])
def test_interfacing_goes_round_evenly(made, wrap, layers, count, codes) -> None:
    left = box(wrap, "left")
    left = replace(left, cut=replace(left.cut, count=count, mirrored=True, interfacing=layers))

    def fuse(make: Any, a: Any, b: Any) -> None:
        make.fuse(a)
        make.plain_seam(a.seam, b.seam, allowance=1 * cm)

    right = box(wrap, "right")
    right = replace(right, cut=replace(right.cut, count=2, mirrored=True))
    pattern = made([left, right], fuse)
    found = [f for f in used(pattern, sew(pattern)[0]) if f.code.startswith("interfacing")]
    assert [f.code for f in found] == [f"interfacing_{code}" for code in codes]
    for finding in found:
        assert (values(finding)["cloth"], values(finding)["interfacing"], finding.piece) == (count, layers, "left")
        assert f"interfacing={count}" in finding.do


def test_loose_groups_are_told_by_their_pieces(made, wrap) -> None:
    """Three panels in a row and two apart: the smaller group is loose, both its pieces named once."""
    pieces = [box(wrap, name) for name in ("one", "two", "three", "four", "five")]

    def join(make: Any, a: Any, b: Any, c: Any, d: Any, e: Any) -> None:
        make.plain_seam(a.seam, b.seam, allowance=1 * cm)
        make.plain_seam(b.far, c.far, allowance=1 * cm)
        make.plain_seam(d.seam, e.seam, allowance=1 * cm)

    pattern = made(pieces, join)
    (finding,) = [f for f in used(pattern, sew(pattern)[0]) if f.code == "loose_piece"]
    assert (finding.piece, values(finding)["count"]) == ("five", 2)
    assert "the five and the four" in finding.what and "one" not in finding.what


# ---- corners ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("way", [1, -1])
@pytest.mark.parametrize(("degrees", "told"), [(2.9, False), (3.1, True), (20.4, True)])
def test_corners_that_bend(made, wrap, degrees, way, told) -> None:
    drop = way * 100 * math.tan(math.radians(degrees))
    found = corners(made([box(wrap, "left", drop=drop), box(wrap, "right")], plain()))
    assert [place(f) for f in found] == ([("corner_not_true", "warning", "join", "left", "bottom")] if told else [])
    for finding in found:
        assert values(finding)["degrees"] == round(degrees)
        assert finding.says.key == ("proof.corner_point" if way > 0 else "proof.corner_dip")  # type: ignore[union-attr]


# ---- notches and openings ---------------------------------------------------------------------------------


@pytest.mark.parametrize(("ease", "off", "told"), [(0, 0.45, 0), (0, 0.55, 2), (4, 4.4, 0), (4, 4.6, 2)])
def test_notches_that_miss(made, wrap, ease, off, told) -> None:
    pieces = [box(wrap, "left", notches=(Notch("seam", 30.0),)), box(wrap, "right", notches=(Notch("seam", 30 + off),))]
    found = notches(made(pieces, plain(ease)))
    assert [place(f) for f in found] == [("notch_unmatched", "warning", "join", n, "seam") for n in ("left", "right")][
        :told
    ]
    assert [f.amount for f in found] == [pytest.approx(off)] * told
    assert [values(f)["at"] for f in found] == [pytest.approx(at) for at in (30, 30 + off)][:told]


def test_a_notch_looks_for_the_nearest_partner(made, wrap) -> None:
    left = box(wrap, "left", notches=(Notch("seam", 30.0), Notch("seam", 60.0)))
    right = box(wrap, "right", notches=(Notch("seam", 30.0), Notch("seam", 62.0)))
    found = notches(made([left, right], plain()))
    assert [(f.piece, f.amount) for f in found] == [("left", pytest.approx(2)), ("right", pytest.approx(2))]
    (alone, other) = notches(made([left, box(wrap, "right")], plain()))
    assert alone.amount is None and other.amount is None and values(alone)["at"] == pytest.approx(30)


@pytest.mark.parametrize(("off", "told"), [(0.45, False), (0.55, True), (6.0, True)])
@pytest.mark.parametrize("moved", ["start", "end"])
def test_an_opening_left_elsewhere_than_marked(made, wrap, moved, off, told) -> None:
    mark = Mark("slit", "opening", edge="seam", start=40.0, end=60.0)
    other = replace(mark, **{moved: getattr(mark, moved) + off})
    aside = Mark("drill", "point", edge="seam", start=10.0, end=10.0)
    pieces = [box(wrap, "left", marks=(mark,)), box(wrap, "right", marks=(aside, other))]

    def join(make: Any, a: Any, b: Any) -> None:
        make.plain_seam(a.seam, b.seam, allowance=1 * cm, opening=a.slit)

    found = openings(made(pieces, join))
    assert [place(f) for f in found] == ([("opening_moved", "error", "join", "right", "seam")] if told else [])
    for finding in found:
        told_values = values(finding)
        assert finding.amount == pytest.approx(off)
        assert (told_values["start"], told_values["end"]) == (other.start, other.end)
        assert (told_values["left"], told_values["right"]) == (pytest.approx(40), pytest.approx(60))


def test_an_opening_that_no_seam_leaves_is_told_with_its_edge(made, wrap) -> None:
    mark = Mark("slit", "opening", edge="seam", start=40.0, end=60.0)
    spot = Mark("spot", "point", edge="seam", start=40.0, end=40.0)
    found = openings(made([box(wrap, "left", marks=(spot, mark)), box(wrap, "right")], plain()))
    assert [place(f) for f in found] == [("opening_sewn_shut", "warning", "", "left", "seam")]
    assert values(found[0])["mark"] == "slit"


# ---- darts and pleats -------------------------------------------------------------------------------------


def darted(wrap: ModuleType, half: float, deep: float, aside: float = 0.0, high: float = 500.0) -> Piece:
    """A panel with a dart in the middle of its straight lower edge: `half` its mouth to each side, `deep` to its
    point, which stands `aside` of the middle."""
    names = {"hem": 10, "side": 10, "waist": 10, "centre": 10}
    piece = wrap.polygon("skirt", [(0, 0), (300, 0), (300, high), (0, high)], names)
    dart = Dart("dart", "hem", Point(150 + aside, deep), 150 - half, 150 + half)
    return replace(piece, darts=(dart,))


@pytest.mark.parametrize(("degrees", "told"), [(2.9, False), (3.1, True), (12.0, True)])
def test_a_straight_edge_bends_by_the_angle_of_its_dart(wrap, degrees, told) -> None:
    """The legs of a dart turn by its angle when it is folded, and the edge beside it with them (geometry)."""
    half = 4.0
    found = darts((darted(wrap, half, half / math.tan(math.radians(degrees / 2))),))
    bends = [f for f in found if f.code == "dart_not_true"]
    assert [place(f) for f in bends] == ([("dart_not_true", "warning", "", "skirt", "hem")] if told else [])
    assert [values(f)["degrees"] for f in bends] == [round(degrees)] * told


@pytest.mark.parametrize(("short", "told"), [(0.45, False), (0.55, True), (2.0, True)])
def test_a_dart_without_its_cap(wrap, short, told) -> None:
    """The edge, mirrored in a leg, leaves it at twice half the dart's angle: on the fold it stands `half` x tan(angle)
    outside the mouth (geometry)."""
    angle = math.radians(2.9)
    half = short / math.tan(angle)
    found = darts((darted(wrap, half, half / math.tan(angle / 2), high=4000.0),))
    assert [place(f) for f in found] == ([("dart_cap", "warning", "", "skirt", "hem")] if told else [])
    for finding in found:
        assert finding.amount == pytest.approx(short, abs=1e-3) and values(finding)["amount"] == finding.amount
        assert finding.do.count('skirt.true_dart("dart")') == 1


@pytest.mark.parametrize("aside", [2.9, 3.2, -2.9, -3.2])
def test_legs_that_differ(wrap, aside) -> None:
    half, deep = 10.0, 120.0
    one, other = math.hypot(half + aside, deep), math.hypot(half - aside, deep)
    found = [f for f in darts((darted(wrap, half, deep, aside),)) if f.code == "dart_legs"]
    assert (abs(one - other) > 0.5) == (abs(aside) > 3)
    assert [place(f) for f in found] == [("dart_legs", "error", "", "skirt", "hem")] * (abs(aside) > 3)
    for finding in found:
        assert finding.amount == pytest.approx(abs(one - other))
        assert (values(finding)["one"], values(finding)["other"]) == (pytest.approx(one), pytest.approx(other))


def test_a_dart_that_points_out_of_the_piece(wrap) -> None:
    (found,) = darts((darted(wrap, 10.0, 120.0, high=110.0),))
    assert place(found) == ("dart_not_closed", "error", "", "skirt", "hem") and "dart" in values(found)["dart"]
    off = darted(wrap, 10.0, 120.0)
    (found,) = darts((replace(off, darts=(replace(off.darts[0], start=-3.0),)),))
    assert place(found) == ("dart_not_closed", "error", "", "skirt", "hem") and found.do


def folded(**changes: Any) -> tuple[Piece, Any]:
    """A panel with a straight pleat of 6 cm, changed."""
    piece = pleated(panel(lean=0.0))
    pleat = pleat_of(piece, "pleat")
    return replace(piece, pleats=(replace(pleat, **changes),)), pleat


@pytest.mark.parametrize(("off", "told"), [(0.45, False), (0.55, True)])
@pytest.mark.parametrize("which", [0, 1])
def test_pleat_lines_that_differ(which, off, told) -> None:
    _, pleat = folded()
    lines = list(pleat.lines)
    lines[which] = Path.line(lines[which].start, lines[which].end + (lines[which].start_tangent * off))
    found = pleats((folded(lines=tuple(lines))[0],))
    assert [place(f) for f in found] == ([("pleat_lines", "error", "", "skirt", "waist")] if told else [])
    for finding in found:
        lengths = (values(finding)["one"], values(finding)["other"])
        assert finding.amount == pytest.approx(off) and lengths == (lines[0].length, lines[1].length)


@pytest.mark.parametrize(("off", "told"), [(0.45, False), (0.55, True)])
@pytest.mark.parametrize("which", [0, 1])
def test_pleat_lines_that_begin_beside_their_marks(which, off, told) -> None:
    _, pleat = folded()
    lines = list(pleat.lines)
    lines[which] = Path.line(lines[which].start + Vector(off, 0), lines[which].end + Vector(off, 0))
    found = pleats((folded(lines=tuple(lines))[0],))
    assert [place(f) for f in found] == ([("pleat_lines", "error", "", "skirt", "waist")] if told else [])
    for finding in found:
        assert finding.amount == pytest.approx(off) and values(finding)["amount"] == pytest.approx(off)


@pytest.mark.parametrize("changes", [{"start": -3.0}, {"end": 9000.0}, {"edge": "yoke"}, {"far": "yoke"}])
def test_a_pleat_off_its_edge(changes) -> None:
    piece, _ = folded(**changes)
    (found,) = pleats((piece,))
    assert (found.code, found.level, found.piece) == ("pleat_off_edge", "error", "skirt")
    (pleat,) = piece.pleats
    assert (values(found)["start"], values(found)["end"]) == (pleat.start, pleat.end)


@pytest.mark.parametrize(("over", "told"), [(-5.0, False), (0.05, False), (0.2, True), (15.0, True)])
def test_a_dart_under_a_pleat(over, told) -> None:
    piece, pleat = folded()
    dart = Dart("dart", "waist", Point(50, 300), pleat.start + over - 30.0, pleat.start + over)
    found = [f for f in pleats((replace(piece, darts=(dart,)),)) if f.code == "pleats_overlap"]
    assert [place(f) for f in found] == ([("pleats_overlap", "error", "", "skirt", "waist")] if told else [])
    for finding in found:
        assert finding.amount == pytest.approx(over) and values(finding)["amount"] == pytest.approx(over)
        assert (values(finding)["fold"], values(finding)["other"]) == ("dart", "pleat")


@pytest.mark.parametrize(("degrees", "told"), [(2.9, False), (3.1, True), (9.0, True)])
@pytest.mark.parametrize("way", [1, -1])
def test_an_edge_that_bends_at_a_folded_pleat(degrees, way, told) -> None:
    """Beyond the pleat the edge is ruled on at an angle; folded shut, it bends by that."""
    piece, pleat = folded()
    path = piece.edge("waist").path
    flat = path.between(0.0, pleat.end)
    turn = flat.end_tangent.rotated(math.radians(way * degrees))
    bent = Path.of(flat, Path.line(flat.end, flat.end + turn * 100.0))
    found = [f for f in pleats((piece.with_edges(waist=replace(piece.edge("waist"), path=bent)),)) if "true" in f.code]
    assert [place(f) for f in found] == ([("pleat_not_true", "warning", "", "skirt", "waist")] if told else [])
    assert [values(f)["degrees"] for f in found] == [round(degrees)] * told


# ---- outlines ---------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("up", "side"), [(0.0, "above"), (-200.0, "below")])
def test_where_an_outline_crosses_itself(wrap, up, side) -> None:
    """A bow: its two long edges cross in the middle, 50 mm across from the centre line."""
    points = [(-100, up), (0, up + 100), (0, up), (-100, up + 100)]
    (finding,) = outlines((wrap.polygon("bow", points, {"one": 10, "two": 10, "three": 10, "four": 10}),))
    assert place(finding) == ("crosses_itself", "error", "", "bow", "one")
    assert finding.says.key == f"proof.crosses_another_{side}"  # type: ignore[union-attr]
    told = values(finding)
    assert (told["across"], told["along"]) == (pytest.approx(50), pytest.approx(abs(up + 50)))
    assert (told["edge"].name, told["other"].name) == ("one", "three")


# ---- hems folded back -------------------------------------------------------------------------------------


@pytest.mark.parametrize(("off", "told"), [(0.45, False), (0.55, True), (3.0, True)])
@pytest.mark.parametrize("way", [1, -1])
def test_the_end_of_a_mitred_hem_beside_the_side(made, wrap, off, way, told) -> None:
    """Folded back, a hem of depth d on a side that leans by angle a lies 2 d sin(a) beside it (trigonometry)."""
    from kit.piece.corner import Corner

    deep = 40.0
    lean = way * 300 * math.tan(math.asin(off / (2 * deep)))
    names = {"centre": 10, "waist": 10, "side": 15, "hem": deep}
    piece = wrap.polygon("skirt", [(0, 0), (0, 300), (200, 300), (200 + lean, 0)], names)
    piece = replace(piece, corners=(Corner("side", "hem", "mitre", by_hand=True),))

    def hem(make: Any, a: Any) -> None:
        make.hem(a.hem, first=deep * mm)

    pattern = made([piece], hem)
    found = fold_true(pattern, pattern.pieces)
    assert [place(f) for f in found] == ([("hem_not_true", "warning", "hem", "skirt", "hem")] if told else [])
    for finding in found:
        assert finding.amount == pytest.approx(off, abs=0.02)
        assert finding.says.key == f"proof.hem_end_{'beyond' if way > 0 else 'short'}"  # type: ignore[union-attr]
