"""What can be done to a piece on the bench, and what is refused."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.bench_strip import BenchStrip
from kit.piece.piece import Edge, Piece
from kit.units import Length, cm, mm


@pytest.fixture
def half() -> BenchPiece:
    """A half front: 20 cm wide, 50 cm long, with a guide across at 20 cm up."""
    corners = {
        "neck": ((0, 450), (70, 500)),
        "shoulder": ((70, 500), (190, 460)),
        "side": ((190, 460), (200, 0)),
        "hem": ((200, 0), (0, 0)),
        "centre": ((0, 0), (0, 450)),
    }
    edges = tuple(Edge(name, Path.of(Line(Point(*a), Point(*b)))) for name, (a, b) in corners.items())
    guides = (("waist", Path.of(Line(Point(0, 200), Point(200, 200)))),)
    points = (("tip", Point(190, 460)),)
    return BenchPiece(Piece("half", "Half front", edges, points=points, guides=guides))


def test_points_move_by_lengths_and_are_noted(half: BenchPiece) -> None:
    lift = Length(12.0, "lift")
    up = half.tip.up(lift)
    assert (up.x, up.y) == (190.0, 472.0) and isinstance(up.x, Length)
    assert half.tip.down(1 * cm).y == 450.0
    assert half.tip.out(1 * cm).x == 200.0
    assert half.tip.into(1 * cm).x == 180.0
    assert half.tip.toward(half.neck.start, half.tip.distance_to(half.neck.start)).point.x == pytest.approx(0.0)
    assert [(s.name, s.value, s.piece) for s in opened(half).spots] == [("lift", 12.0, "half")]
    with pytest.raises(KitError, match="less than nothing"):
        half.tip.up(-1 * cm)
    with pytest.raises(KitError, match=r"up: 2\.5 has no unit"):
        half.tip.up(2.5)


def test_lines(half: BenchPiece) -> None:
    line = half.neck.end.through(half.tip, beyond=5 * cm)
    assert float(line.length) == pytest.approx(half.shoulder.path.length + 50.0)
    assert half.hem.parallel(3 * cm, "down").start.y == -30.0
    assert half.hem.parallel(3 * cm, "inside").start.y == 30.0
    assert half.hem.parallel(3 * cm, "outside").start.y == -30.0
    square = half.shoulder.square(10 * cm, "down")
    along = half.shoulder.path.tangent_at(0)
    assert square.path.tangent_at(0).dot(along) == pytest.approx(0.0) and square.end.y < half.tip.y
    assert half.hem.at(5 * cm).x == 150.0 and half.hem.share(0.5).x == 100.0 and half.hem.middle.x == 100.0
    assert half.tip.across(half.centre).point == Point(0, 460)
    assert float(half.side.meets(half.waist)) == pytest.approx(half.side.path.nearest(Point(195.65, 200)), abs=0.5)
    assert half.hem.mirrored(half.centre).start.x == -200.0
    for wrong, words in (
        (lambda: half.hem.at(30 * cm), "only 20 cm"),
        (lambda: half.hem.share(1.2), "between 0 and 1"),
        (lambda: half.hem.parallel(1 * cm, "sideways"), "not a direction"),
        (lambda: half.tip.to(half.shoulder.end), "two different points"),
        (lambda: half.tip.across(half.hem, "out"), "never meets"),
        (lambda: half.hem.meets(half.waist), "does not meet"),
    ):
        with pytest.raises(KitError, match=words):
            wrong()


def test_a_curve_square_at_both_ends(half: BenchPiece) -> None:
    opening = half.shoulder.end.out(10 * cm).ruled("down", 12 * cm)
    curve = opening.curve_square_to(half.hem, at=2 * cm)
    start, end = curve.path.tangent_at(0), curve.path.tangent_at(curve.path.length)
    assert start.dot(opening.path.tangent_at(0)) == pytest.approx(0.0, abs=1e-9)
    assert end.dot(half.hem.path.tangent_at(0)) == pytest.approx(0.0, abs=1e-9)
    into = opening.curve_into(half.side, at=20 * cm)
    assert into.path.tangent_at(into.path.length).cross(half.side.path.tangent_at(200)) == pytest.approx(0.0, abs=1e-6)


def test_curves_that_would_double_back_are_refused(half: BenchPiece) -> None:
    opening = half.shoulder.end.out(10 * cm).ruled("down", 30 * cm)
    with pytest.raises(KitError) as error:
        opening.curve_into(half.side, at=2 * cm)
    assert error.value.do
    with pytest.raises(KitError, match=r"only .* long"):
        opening.curve_into(half.side, at=90 * cm)
    deep = half.shoulder.end.out(10 * cm).ruled("down", 60 * cm)
    with pytest.raises(KitError, match=r"60 cm .* deep and reaches lower than the end of the side seam"):
        deep.curve_into(half.side, at=20 * cm)


def test_join_trims_and_carries_on(half: BenchPiece) -> None:
    half.draw(low=half.hem.parallel(5 * cm, "down"), instead_of=half.hem)
    half.join("side", "low")
    half.join("low", "centre")
    assert float(half.side.end.y) == pytest.approx(-50.0) and half.centre.start.point.close_to(Point(0, -50), 1e-6)
    half.freeze().outline  # noqa: B018  closing raises when it does not
    with pytest.raises(KitError, match="not neighbours"):
        half.join("neck", "low")


def test_drawing_says_what_it_replaces(half: BenchPiece) -> None:
    line = half.hem.parallel(5 * cm, "down")
    for wrong, words in (
        (lambda: half.draw(low=line), "not said what low stands instead of"),
        (lambda: half.draw(low=line, instead_of="hemm"), "Did you mean 'hem'"),
        (lambda: half.draw(side=line, instead_of="hem"), "'side' is already drawn"),
        (lambda: half.draw(join=line, instead_of="hem"), "a word of the bench"),
        (lambda: half.draw(low=half.tip, instead_of="hem"), "must be a line"),
        (lambda: half.guide(low=half.tip), "'low' must be a line"),
        (lambda: half.draw(low=line, instead_of=("neck", "hem")), "does not lie next to"),
        (lambda: half.mark(hem=half.tip), "already a line"),
        (lambda: half.guide(tip=line), "already used"),
        (lambda: setattr(half, "hem", half.tip), "not the same kind"),
    ):
        with pytest.raises(KitError, match=words):
            wrong()
    assert [name for name, _ in half.freeze().guides] == ["waist"] and half.freeze() == opened(half).before


def test_a_run_of_edges_is_replaced_past_the_last_one(half: BenchPiece) -> None:
    """The outline has no first edge: centre, neck and shoulder are neighbours though centre is written last."""
    line = half.hem.end.to(half.shoulder.end)
    half.draw(slant=line, instead_of=("centre", "neck", "shoulder"))
    piece = half.freeze()
    assert [edge.name for edge in piece.edges] == ["slant", "side", "hem"]
    assert abs(piece.outline.area) == pytest.approx(200 * 460 / 2), "a triangle"
    with pytest.raises(KitError, match="does not lie next to"):
        half.draw(low=line, instead_of=("hem", "side"))


def test_fold_pair_and_marks(half: BenchPiece) -> None:
    half.cut(1, fold="centre")
    assert half.freeze().fold == "centre" and half.freeze().edge("centre").allowance == 0.0
    for wrong, words in (
        (lambda: half.cut(2, mirrored=True, fold="centre"), "not both"),
        (lambda: half.cut(3, mirrored=True), "even numbers, not 3"),
        (lambda: half.notch("side", 80 * cm), "past the end of the side"),
        (lambda: half.leave_open("slit", "side", at=40 * cm, size=10 * cm), "does not fit on the side"),
        (lambda: half.allow(side=1), "1 has no unit"),
        (lambda: half.face(half, ("neck", "hem"), depth=5 * cm, ends=("a", "b")), "do not follow one another"),
    ):
        with pytest.raises(KitError, match=words):
            wrong()


def test_a_facing_too_deep_for_its_piece_is_refused(half: BenchPiece) -> None:
    facing = BenchPiece(Piece("facing", "Facing", ()))
    with pytest.raises(
        KitError, match=r"60 cm .* deep does not fit at one end: there the centre line .* at 126° to the neck edge"
    ):
        facing.face(half, ("neck",), depth=60 * cm, ends=("centre", "shoulder"))


def test_strips() -> None:
    strip = BenchStrip("tie", "Tie")
    with pytest.raises(KitError, match="size was never given"):
        strip.freeze()
    strip.fold_in_four(finished_length=70 * cm, finished_width=15 * mm, ends=1 * cm, count=2)
    made = strip.freeze()
    assert (made.length, made.width, made.count, made.finished_width) == (720.0, 60.0, 2, 15.0)
    with pytest.raises(KitError, match="needs a length"):
        strip.fold_in_four(finished_length=0, finished_width=1 * cm)
