"""Facings, interfacings and linings derived from pieces, over several garments."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.skirt import skirt_block
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.lesson.lesson import Lesson
from kit.piece.dart import sewn_length
from kit.piece.darts_and_pleats import Pleat
from kit.piece.piece import Edge, Piece
from kit.proof.prove import prove
from kit.units import cm, mm


def bench(block: Callable[..., Any], size: str = "W4") -> dict[str, BenchPiece]:
    return {piece.name: BenchPiece(piece) for piece in block(workshop_chart()[size])}


def paper(name: str = "facing") -> BenchPiece:
    return BenchPiece(Piece(name, name.replace("_", " ").capitalize(), ()))


def parallel_by(facing: Piece, run: str, depth: float, tol: float = 0.05) -> None:
    outer, path = facing.edge("outer").path, facing.edge(run).path
    for share in (0.1, 0.3, 0.5, 0.7, 0.9):
        assert outer.distance_to(path.at(path.length * share)) == pytest.approx(depth, abs=tol)


# ---- a round neck, shoulder seams kept --------------------------------------------------------------------


def test_a_round_neck_with_its_shoulder_seams() -> None:
    garment = bench(bodice_block)
    for name, double in (("front", False), ("back", True)):
        piece = garment[name]
        piece.notch("neck", 4 * cm, double=double)
        facing = paper()
        facing.face(piece.neck, depth=5 * cm, short=3 * mm, ends=("centre", "shoulder"), short_at="shoulder")
        made = facing.freeze()
        assert made.source == name and made.edges[0].name == "neck"
        assert made.outline.self_crossing() is None
        assert made.edge("neck").path == piece.freeze().edge("neck").path
        assert made.notches == piece.freeze().notches
        assert (made.edge("shoulder").drawn_in, made.edge("centre").drawn_in) == (3.0, 0.0)
        parallel_by(made, "neck", 50.0)


def test_drawn_short_by_what_is_said_at_each_end() -> None:
    """A facing about 2 in deep has its outer edge 1/8 in short (common practice, no source)."""
    front = bench(bodice_block)["front"]
    lengths = {}
    for ends in ((), ("centre",), ("shoulder",), ("centre", "shoulder")):
        facing = paper()
        facing.face(front.neck, depth="2 in", short="1/8 in", ends=("centre", "shoulder"), short_at=ends)
        lengths[ends] = facing.freeze().edge("outer").path.length
        assert [e.drawn_in > 0 for e in facing.freeze().edges if e.name in ("centre", "shoulder")].count(True) == len(
            ends
        )
    for ends, length in lengths.items():
        assert lengths[()] - length == pytest.approx(25.4 / 8 * len(ends), abs=1e-6)


def test_the_facing_follows_when_the_neckline_moves() -> None:
    front = bench(bodice_block)["front"]
    front.lower_neckline(3 * cm, wider=2 * cm)
    facing = paper()
    facing.face(front.neck, depth=5 * cm, ends=("centre", "shoulder"))
    assert facing.freeze().edge("neck").path == front.freeze().edge("neck").path
    parallel_by(facing.freeze(), "neck", 50.0)


def test_the_old_and_the_new_spelling_agree() -> None:
    front = bench(bodice_block)["front"]
    one, two = paper(), paper()
    one.face(front, ("neck",), depth=5 * cm, short=3 * mm, ends=("centre", "shoulder"))
    two.face(front.neck, depth=5 * cm, short=3 * mm, ends=("centre", "shoulder"))
    assert one.freeze() == two.freeze()


# ---- all round in one piece, the seam left out ------------------------------------------------------------


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_one_piece_across_the_shoulder(size: str) -> None:
    garment = bench(bodice_block, size)
    front, back = garment["front"], garment["back"]
    front.notch("neck", 5 * cm)
    back.notch("neck", 4 * cm, double=True)
    ring = paper("neck_facing")
    ring.face(front.neck, back.neck, across="shoulder", depth=5 * cm, ends=("centre_front", "centre_back"))
    made = ring.freeze()
    assert [e.name for e in made.edges] == ["front_neck", "back_neck", "centre_back", "outer", "centre_front"]
    assert made.outline.self_crossing() is None
    # Laid by rigid motion: nothing is stretched, and the two shoulders are one line.
    assert made.edge("front_neck").path == front.freeze().edge("neck").path
    assert made.edge("back_neck").path.length == pytest.approx(back.freeze().edge("neck").path.length, abs=1e-6)
    assert made.edge("front_neck").path.end.distance(made.edge("back_neck").path.start) < 1e-9
    for run in ("front_neck", "back_neck"):
        outer, path = made.edge("outer").path, made.edge(run).path
        for share in (0.2, 0.5, 0.8):
            assert outer.distance_to(path.at(path.length * share)) == pytest.approx(50.0, abs=0.05)
    # The back neck's notch lies as far from the centre back as on the back.
    notch = next(n for n in made.notches if n.kind == "double")
    assert made.edge("back_neck").path.length - notch.distance == pytest.approx(40.0, abs=1e-6)
    (seam,) = made.marks
    assert seam.kind == "point" and seam.point == made.edge("front_neck").path.end


def test_outer_edges_of_neighbours_meet_at_a_kept_seam() -> None:
    garment = bench(bodice_block)
    front, back = garment["front"], garment["back"]
    ring = paper()
    ring.face(front.neck, back.neck, across="shoulder", depth=5 * cm, ends=("centre_front", "centre_back"))
    whole = ring.freeze()
    parts = []
    for own, ends in ((front, ("centre", "shoulder")), (back, ("shoulder", "centre"))):
        part = paper()
        part.face(front.neck, back.neck, across="shoulder", only=own, depth=5 * cm, ends=ends)
        parts.append(part.freeze())
    one, two = parts
    assert one.edge("shoulder").path.length == pytest.approx(two.edge("shoulder").path.length, abs=1e-6)
    total = one.edge("outer").path.length + two.edge("outer").path.length
    assert total == pytest.approx(whole.edge("outer").path.length, abs=1e-6)
    assert abs(one.outline.area) + abs(two.outline.area) == pytest.approx(abs(whole.outline.area), rel=1e-6)


@pytest.mark.parametrize("toward", ["front", "back"])
def test_a_moved_shoulder_seam_gives_to_one_what_it_takes_from_the_other(toward: str) -> None:
    garment = bench(bodice_block)
    front, back = garment["front"], garment["back"]
    made, kept = {}, {}
    for own, ends in ((front, ("centre", "shoulder")), (back, ("shoulder", "centre"))):
        how: dict[str, Any] = {"across": "shoulder", "only": own, "depth": 5 * cm, "ends": ends}
        part, plain = paper(), paper()
        part.face(front.neck, back.neck, moved=2 * cm, toward=garment[toward], **how)
        plain.face(front.neck, back.neck, **how)
        made[own.piece_name], kept[own.piece_name] = part.freeze(), plain.freeze()
    one, two = made["front"], made["back"]
    assert one.outline.self_crossing() is None and two.outline.self_crossing() is None
    assert one.edge("shoulder").path.length == pytest.approx(two.edge("shoulder").path.length, abs=1e-6)
    gains, loses = (two, one) if toward == "front" else (one, two)
    was = kept["back" if toward == "front" else "front"]
    assert {e.name for e in gains.edges} >= {"front_neck", "back_neck"}
    assert "neck" in {e.name for e in loses.edges}
    assert abs(gains.outline.area) - abs(was.outline.area) == pytest.approx(20.0 * 50.0, rel=0.1)
    total = sum(abs(p.outline.area) for p in (one, two))
    assert total == pytest.approx(sum(abs(p.outline.area) for p in kept.values()), rel=1e-6)
    # The moved seam is the old one's parallel, 2 cm away.
    seam, old = gains.edge("shoulder").path, was.edge("shoulder").path
    assert old.extended(100.0, end="start").extended(100.0, end="end").distance_to(
        seam.at(seam.length / 2)
    ) == pytest.approx(20.0, abs=0.01)


def test_an_armhole_facing() -> None:
    garment = bench(bodice_block)
    front, back = garment["front"], garment["back"]
    facing = paper()
    facing.face(
        front.armhole, back.armhole, across=(front.shoulder, back.shoulder), depth=4 * cm, short=2 * mm,
        ends=("front_side", "back_side"), short_at=("front_side", "back_side"),
    )  # fmt: skip
    made = facing.freeze()
    assert made.outline.self_crossing() is None
    assert [made.edge(end).drawn_in for end in ("front_side", "back_side")] == [2.0, 2.0]
    length = sum(garment[name].freeze().edge("armhole").path.length for name in ("front", "back"))
    assert made.edge("front_armhole").path.length + made.edge("back_armhole").path.length == pytest.approx(length)
    for name in ("front_armhole", "back_armhole"):
        path = made.edge(name).path
        assert made.edge("outer").path.distance_to(path.at(path.length / 2)) == pytest.approx(40.0, abs=0.05)


# ---- darts and pleats -------------------------------------------------------------------------------------


@pytest.mark.parametrize("block,edge", [(skirt_block, "waist"), (darted_bodice_block, "waist")])
def test_a_waist_facing_has_its_darts_folded_shut(block: Callable[..., Any], edge: str) -> None:
    for piece in bench(block).values():
        drawn = piece.freeze()
        assert any(dart.edge == edge for dart in drawn.darts)
        facing = paper()
        order = [e.name for e in drawn.edges]
        i = order.index(edge)
        facing.face(getattr(piece, edge), depth=5 * cm, ends=(order[i - 1], order[(i + 1) % len(order)]))
        made = facing.freeze()
        assert not made.darts and made.outline.self_crossing() is None
        assert made.edge(edge).path.length == pytest.approx(sewn_length(drawn, edge), abs=0.01)
        parallel_by(made, edge, 50.0, tol=0.5)


def test_a_pleated_edge_is_traced_folded_and_its_notches_keep_their_place() -> None:
    corners = {
        "top": ((400, 300), (0, 300)),
        "centre": ((0, 300), (0, 0)),
        "hem": ((0, 0), (400, 0)),
        "side": ((400, 0), (400, 300)),
    }
    edges = tuple(Edge(name, Path.line(Point(*a), Point(*b))) for name, (a, b) in corners.items())
    pleat = Pleat(
        "pleat",
        "top",
        100.0,
        160.0,
        (Path.line(Point(300, 300), Point(300, 200)), Path.line(Point(240, 300), Point(240, 200))),
    )
    skirt = BenchPiece(Piece("skirt", "Skirt", edges, pleats=(pleat,)))
    skirt.notch("top", 5 * cm)
    skirt.notch("top", 20 * cm)
    facing = paper()
    facing.face(skirt.top, depth=5 * cm, ends=("side", "centre"))
    made = facing.freeze()
    assert made.edge("top").path.length == pytest.approx(340.0) and made.edge("top").path.is_straight
    assert [n.distance for n in made.notches] == [50.0, 140.0] and not made.pleats
    assert abs(made.outline.area) == pytest.approx(340.0 * 50.0)


# ---- interfacing and lining -------------------------------------------------------------------------------


@pytest.fixture
def coat() -> dict[str, BenchPiece]:
    garment = bench(bodice_block)
    for piece in garment.values():
        piece.allow(neck=1 * cm, shoulder=1 * cm, armhole=6 * mm, side=1.5 * cm, hip=3 * cm)
        piece.notch("armhole", 6 * cm)
        piece.grain(along=piece.centre)
    return garment


def test_interfacing_over_the_whole_piece(coat: dict[str, BenchPiece]) -> None:
    front = coat["front"].freeze()
    full, line = paper("one"), paper("two")
    full.interface(coat["front"])
    line.interface(coat["front"], beyond=2 * mm)
    for made in (full.freeze(), line.freeze()):
        assert made.cut == replace(front.cut, cloth="interfacing") and made.source == "front"
        assert made.grain == front.grain and made.outline.area == pytest.approx(front.outline.area)
    assert {e.name: e.allowance for e in full.freeze().edges} == {e.name: e.allowance for e in front.edges}
    assert {e.allowance for e in line.freeze().edges if e.name != "centre"} == {2.0}
    assert line.freeze().edge("centre").allowance == 0.0


def test_interfacing_along_a_run(coat: dict[str, BenchPiece]) -> None:
    hem, arm = paper("hem_interfacing"), paper("arm_interfacing")
    hem.interface(coat["front"].hip, depth=5 * cm, ends=("side", "centre"))
    made = hem.freeze()
    assert made.cut.fold == "centre" and made.cut.cloth == "interfacing"
    assert {e.name: e.allowance for e in made.edges} == {"hip": 30.0, "centre": 0.0, "outer": 0.0, "side": 15.0}
    arm.interface(coat["front"].armhole, depth=4 * cm, ends=("shoulder", "side"), beyond=0 * mm)
    other = arm.freeze()
    assert (other.cut.count, other.cut.mirrored, other.cut.fold) == (2, True, "")
    assert {e.allowance for e in other.edges} == {0.0}
    assert other.grain and other.outline.contains(other.grain.start) and other.outline.contains(other.grain.end)


def test_a_lining(coat: dict[str, BenchPiece]) -> None:
    back, facing, lining = coat["back"], paper(), paper("back_lining")
    facing.face(back.neck, depth=5 * cm, ends=("centre", "shoulder"))
    lining.line(back, facing=back.neck, depth=5 * cm, pleat=2 * cm, shorter=2 * cm, hem="hip")
    drawn, made = back.freeze(), lining.freeze()
    assert made.cut.cloth == "lining" and made.cut.fold == "centre" and made.outline.self_crossing() is None
    # It stops where the facing's outer edge lies, and is wider by the pleat.
    outer = facing.freeze().edge("outer").path
    for share in (0.0, 0.5, 1.0):
        assert made.edge("facing").path.distance_to(outer.at(outer.length * share)) < 0.01
    assert made.edge("facing").path.length == pytest.approx(outer.length + 20.0, abs=0.01)
    assert made.edge("facing").allowance == 10.0
    for name in ("side", "armhole", "shoulder"):
        assert made.edge(name).allowance == drawn.edge(name).allowance
    assert made.edge("side").path.length < drawn.edge("side").path.length - 15.0
    assert made.edge("armhole").path == drawn.edge("armhole").path and made.notches == drawn.notches
    assert made.edge("hip").path.distance_to(drawn.edge("hip").path.at(50.0)) == pytest.approx(20.0, abs=0.5)
    assert min(p.x for p in made.outline.points()) == pytest.approx(-20.0)
    assert [m.name for m in made.marks] == ["centre_pleat"]


# ---- what is refused --------------------------------------------------------------------------------------


def test_what_cannot_be_derived_is_told_in_plain_words(coat: dict[str, BenchPiece]) -> None:
    front, back = coat["front"], coat["back"]
    darted = bench(darted_bodice_block)["back"]
    ends = ("centre", "shoulder")
    for wrong, words in (
        (lambda p: p.face(depth=5 * cm, ends=ends), "not said which edges"),
        (lambda p: p.face(front.neck, depth=0 * cm, ends=ends), "needs a depth"),
        (lambda p: p.face(front.neck, depth=5, ends=ends), "5 has no unit"),
        (lambda p: p.face(front.neck, depth=5 * cm, ends=("shoulder", "shoulder")), "two edges would be called"),
        (lambda p: p.face(front.neck, depth=5 * cm, ends=("neck", "shoulder")), "two edges would be called 'neck'"),
        (lambda p: p.face(front.neck, depth=5 * cm, ends="shoulder"), "two ends are not named"),
        (lambda p: p.face(front.neck, depth=5 * cm, ends=ends, short=30 * cm), "cannot be drawn short"),
        (lambda p: p.face(front.neck, depth=5 * cm, ends=ends, short_at="sholder"), "not an end of the facing"),
        (lambda p: p.face(front.neck, back.neck, depth=5 * cm, ends=ends), "crosses 1 seams, but 0"),
        (
            lambda p: p.face(front.neck, back.neck, across="side", depth=5 * cm, ends=ends),
            "not where the run passes on",
        ),
        (lambda p: p.face(front.neck, back.neck, across="sholder", depth=5 * cm, ends=ends), "Did you mean 'shoulder'"),
        (lambda p: p.face(front.neck, depth=5 * cm, ends=ends, moved=2 * cm), "not said which part"),
        (
            lambda p: p.face(
                front.neck, back.neck, across="shoulder", only=front, moved=2 * cm, depth=5 * cm, ends=ends
            ),
            "not said which way",
        ),
        (
            lambda p: p.face(
                front.neck,
                back.neck,
                across="shoulder",
                only=front,
                moved=70 * cm,
                toward=front,
                depth=5 * cm,
                ends=ends,
            ),
            "past the end of the run",
        ),
        (lambda p: p.interface(), "not said which piece"),
        (lambda p: p.interface(paper("empty")), "nothing is drawn on Empty yet"),
        (lambda p: p.line(front, facing=front.neck), "both its edges and its depth"),
        (lambda p: p.line(front, facing=back.neck, depth=5 * cm), "not of this piece"),
        (lambda p: p.line(front, pleat=2 * cm, at="neck"), "the neck edge is curved"),
        (lambda p: p.line(front, shorter=90 * cm, hem="hip"), "cannot be 90 cm"),
        (lambda p: p.line(darted, facing=darted.neck, depth=6 * cm), "is cut away"),
    ):
        with pytest.raises(KitError, match=words) as error:
            wrong(paper())
        assert error.value.do or "unit" in words, words


def test_a_refused_facing_leaves_the_paper_as_it_was(coat: dict[str, BenchPiece]) -> None:
    sheet = paper()
    with pytest.raises(KitError):
        sheet.face(coat["front"].neck, depth=60 * cm, ends=("centre", "shoulder"))
    assert not sheet.freeze().edges


# ---- grain, cut, nap --------------------------------------------------------------------------------------


def test_grain(coat: dict[str, BenchPiece]) -> None:
    front = coat["front"]
    front.grain(kind="bias", one_way=True)
    grain = front.freeze().grain
    assert grain and (grain.kind, grain.one_way) == ("bias", True) and grain.end.y > grain.start.y
    front.grain(along="out", kind="crosswise")
    grain = front.freeze().grain
    assert grain and grain.start.y == grain.end.y and grain.kind == "crosswise"
    front.grain(along="centre")
    assert front.freeze().grain.start.x == pytest.approx(front.freeze().grain.end.x)  # type: ignore[union-attr]
    for wrong, words in (
        (lambda: front.grain(along=front.neck), "the neck edge is curved"),
        (lambda: front.grain(kind="diagonal"), "not a grain of the cloth"),
        (lambda: front.grain(along="sideways"), "not a direction"),
        (lambda: paper().grain(), "nothing is drawn"),
        (lambda: front.cut(1, fold="centre", right_side_up=True), "no single right side up"),
        (lambda: front.cut(1, cloth="wool"), "'wool' is not a cloth"),
        (lambda: front.cut(0), "0 cannot be cut"),
        (lambda: front.cut(1, cloth="interfacing", interfacing=1), "not interfaced itself"),
    ):
        with pytest.raises(KitError, match=words):
            wrong()


def test_nap_is_one_of_three_words(tmp_path: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert Lesson("Velvet", start=bodice_block, nap="one_way").info.nap == "one_way"
    with pytest.raises(KitError, match="nap is 'none', 'one_way' or 'print', not 'velvet'"):
        Lesson("Velvet", start=bodice_block, nap="velvet")


# ---- in a lesson ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("fused", [True, False])
def test_derived_interfacing_is_fused_with_its_piece(
    fused: bool, tmp_path: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Plain", start=bodice_block, notions=("thread", "interfacing"))

    @lesson.step("Interface the front", makes="inner")
    def inner(front, inner):
        """."""
        front.allow(neck=1 * cm, shoulder=1 * cm, armhole=6 * mm, side=1 * cm, hip=2 * cm)
        inner.interface(front, beyond=0 * mm)

    @lesson.sew("Fuse")
    def fuse(make, front, back):
        """."""
        if fused:
            make.fuse(front)
        make.plain_seam(front.side, back.side, allowance=1 * cm)

    found = {(f.code, f.piece) for f in prove(lesson.work(values={})) if f.piece == "inner" or "interfac" in f.code}
    assert found - {("no_grainline", "inner")} == (set() if fused else {("interfacing_unused", "inner")})
