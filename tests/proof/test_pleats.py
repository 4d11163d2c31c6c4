"""Pleats and tucks in the proof."""

from __future__ import annotations

from dataclasses import replace

from kit.geometry import Path, Point, Vector
from kit.lesson import moves, pleating
from kit.piece.piece import Piece
from kit.piece.pleat import pleat_of
from kit.proof.pleats import pleats
from kit.sewing.operations.seams import PlainSeam, length_gap
from kit.sewing.run import Run
from tests.pleated import panel, pleated


def codes(piece: Piece) -> set[str]:
    return {finding.code for finding in pleats((piece,))}


def test_what_the_verbs_draw_is_sound() -> None:
    piece = panel(rise=30.0)
    far = pleating.across(piece, "waist", 130.0)
    for sound in (
        pleated(piece),
        pleated(piece, laid="start", held="both"),
        pleating.box_pleat(piece, "box", ("waist", 130.0), far, 80.0),
        pleating.box_pleat(piece, "inv", ("waist", 130.0), far, 80.0, inverted=True),
        pleating.tuck_row(piece, "tuck", ("waist", 60.0), count=4, depth=5.0, apart=20.0),
        pleating.add_pleat(piece, "taper", ("waist", 100.0), ("hem", 150.0), 50.0, tapered=True),
    ):
        assert codes(sound) == set(), [f.what for f in pleats((sound,))]


def test_each_fault_is_named() -> None:
    found = pleated(panel(rise=30.0))
    pleat = pleat_of(found, "pleat")

    def with_(**changes: object) -> Piece:
        return replace(found, pleats=(replace(pleat, **changes),))  # type: ignore[arg-type]

    assert codes(with_(end=900.0)) == {"pleat_off_edge"}
    assert codes(with_(edge="yoke")) == {"pleat_off_edge"}
    assert codes(with_(lines=(pleat.lines[0], pleat.lines[1].between(0.0, 400.0)))) == {"pleat_lines"}
    shifted = tuple(Path.line(leg.start + Vector(4.0, 0.0), leg.end) for leg in pleat.lines)
    assert codes(with_(lines=shifted)) == {"pleat_lines"}
    twin = replace(pleat, name="twin", start=pleat.start + 20.0, end=pleat.end + 20.0)
    lines = tuple(Path.line(leg.start, leg.end) for leg in twin.lines)
    assert "pleats_overlap" in codes(replace(found, pleats=(pleat, replace(twin, lines=lines))))
    dart = moves.add_dart(panel(), "dart", "waist", at=130.0, intake=20.0, apex=Point(130, 380))
    over = replace(dart, pleats=(replace(pleat, start=125.0, end=185.0),))
    assert "pleats_overlap" in codes(over)


def test_an_edge_that_bends_or_has_no_cap_is_told() -> None:
    found = pleated(panel(rise=60.0))
    pleat = pleat_of(found, "pleat")
    path = found.edge("waist").path
    flat = Path.of(
        path.between(0.0, pleat.start),
        Path.line(path.at(pleat.start), path.at(pleat.end)),
        path.between(pleat.end, path.length),
    )
    shift = path.at(pleat.start).distance(path.at(pleat.end)) - (pleat.end - pleat.start)
    bare = replace(
        found.with_edges(waist=replace(found.edge("waist"), path=flat)),
        pleats=(replace(pleat, end=pleat.end + shift),),
    )
    (finding,) = pleats((bare,))
    assert finding.code == "pleat_cap" and "true_pleat" in finding.do
    assert codes(pleating.true_pleat(bare, "pleat")) == set()
    bent = pleated(panel())
    waist = bent.edge("waist").path
    end = pleat_of(bent, "pleat").end
    corner = Path.of(waist.between(0.0, end), Path.line(waist.at(end), waist.end + Vector(0.0, 40.0)))
    assert "pleat_not_true" in codes(bent.with_edges(waist=replace(bent.edge("waist"), path=corner)))


class Two:
    """Just what a seam asks of a pattern: its pieces."""

    def __init__(self, *pieces: Piece) -> None:
        self.pieces = {piece.name: piece for piece in pieces}
        self.strips = ()

    def piece(self, name: str) -> Piece:
        return self.pieces[name]


def test_a_seam_is_measured_with_its_pleats_folded() -> None:
    band = replace(panel(), name="band")
    found = Two(pleated(panel()), band)
    seam = PlainSeam(a=(Run("skirt", ("waist",)),), b=(Run("band", ("waist",)),), allowance=10.0)
    ((_, _, gap),) = length_gap(found, seam)  # type: ignore[arg-type]
    assert abs(gap) < 1e-6
