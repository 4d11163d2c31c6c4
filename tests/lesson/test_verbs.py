"""Verbs of the bench: how they are registered, found, listed and told apart from what a lesson draws."""

from __future__ import annotations

import ast
import inspect
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from kit import Lesson, Traced, bodice_block, cm, workshop_chart
from kit.blocks.block import Block
from kit.errors import KitError
from kit.geometry import Path as Line
from kit.geometry import Point
from kit.lesson.bench import BenchPiece, opened, words
from kit.lesson.open_piece import OpenPiece
from kit.lesson.verb import RESERVED, VERBS, verb
from kit.piece.piece import Edge, Piece
from kit.reference.verb_help import verbs_of


def square(*names: str) -> Piece:
    """A square of 20 cm with edges of these names."""
    corners = [Point(0, 0), Point(200, 0), Point(200, 200), Point(0, 200)]
    edges = tuple(Edge(name, Line.line(corners[i], corners[(i + 1) % 4])) for i, name in enumerate(names))
    return Piece("front", "Front", edges, points=(("corner", corners[0]),), guides=(("waist", edges[0].path),))


@pytest.fixture
def front() -> BenchPiece:
    return BenchPiece(square("hem", "side", "neck", "centre"))


@pytest.fixture
def newer_verb() -> Iterator[str]:
    """A verb that a later kit brings: `smooth`."""

    @verb
    def smooth(bench: OpenPiece, edge: str) -> str:
        """Smooth an edge."""
        return f"{bench.piece_name} {edge} smoothed"

    yield "smooth"
    del VERBS["smooth"]


# ---- one piece, replaced ------------------------------------------------------------------------------


def test_the_bench_holds_one_frozen_piece_that_each_change_replaces(front: BenchPiece) -> None:
    bench = opened(front)
    first = bench.piece
    front.mark(middle=front.hem.middle)
    second = bench.piece
    front.hem = front.hem.parallel(1 * cm, "down")
    front.allow(side=1 * cm)
    assert first is bench.before and first == square("hem", "side", "neck", "centre")
    assert dict(second.points)["middle"] == Point(100, 0) and second.edges == first.edges
    assert front.freeze() is bench.piece and bench.piece.edge("hem").path.start == Point(0, -10)
    assert bench.piece.edge("side").allowance == 10 and bench.drawn == {"middle", "hem"}


def test_verbs_register_themselves_and_no_verb_file_knows_the_bench() -> None:
    folder = Path(inspect.getfile(OpenPiece)).parent
    files = sorted(folder.glob("*_verbs.py"))
    assert len(files) > 8
    written = set()
    for file in files:
        tree = ast.parse(file.read_text("utf-8"))
        brought = {n.module for n in ast.walk(tree) if isinstance(n, ast.ImportFrom)}
        assert "kit.lesson.bench" not in brought, file.name
        for node in tree.body:
            assert not isinstance(node, ast.ClassDef), file.name
            if isinstance(node, ast.FunctionDef) and any(getattr(d, "id", "") == "verb" for d in node.decorator_list):
                written.add(node.name)
    assert written == set(VERBS)


def test_every_verb_says_what_it_does() -> None:
    for kind in ("piece", "line", "point", "strip", "make"):
        found = verbs_of(kind)
        assert len(found) > 5, kind
        for name, verb_ in found.items():
            assert verb_.name == name and verb_.line, (kind, name)
            assert not {"bench", "self", "reader"} & {argument.name for argument in verb_.arguments}, name
    assert set(verbs_of("piece")) == set(VERBS) - {"lay_dart"}
    assert [a.name for a in verbs_of("piece")["notch"].arguments] == ["edge", "at", "double", "name"]


# ---- names and verbs ----------------------------------------------------------------------------------


def test_dir_gives_what_is_drawn_and_the_verbs(front: BenchPiece) -> None:
    assert set(dir(front)) == {"hem", "side", "neck", "centre", "corner", "waist", *VERBS}
    front.guide(dart_line=front.hem.middle.to(front.neck.middle))
    assert "dart_line" in dir(front)


def test_edge_point_and_guide_fetch_by_name(front: BenchPiece) -> None:
    assert front.edge("side").length == 200 and front.edge("side").name == "side"
    assert front.point("corner").point == Point(0, 0)
    assert front.guide("waist").length == 200
    with pytest.raises(KitError, match=r"no edge 'sid'. Did you mean 'side'"):
        front.edge("sid")
    with pytest.raises(KitError, match=r"no point 'corne'. Did you mean 'corner'"):
        front.point("corne")
    with pytest.raises(KitError, match=r"no construction line 'hem'. Known here: waist"):
        front.guide("hem")
    with pytest.raises(KitError, match="'waist' is fetched and hip drawn in one call"):
        front.guide("waist", hip=front.hem)


@pytest.mark.parametrize(
    ("write", "meant"),
    [
        (lambda p: p.drawe(hip=p.hem), "there is no verb 'drawe'. Did you mean 'draw'?"),
        (lambda p: p.notche("side", 2 * cm), "there is no verb 'notche'. Did you mean 'notch'?"),
        (lambda p: p.necks(), "there is no verb 'necks'. Did you mean 'neck'?"),  # no verb is near: an edge is
        (lambda p: p.hems, "there is no edge, line or point 'hems'. Did you mean 'hem'?"),
        (lambda p: p.joi.length, "there is no edge, line or point 'joi'. Did you mean 'join'?"),
        (lambda p: p.xyzzy, "there is no edge, line or point 'xyzzy'. Known here: centre, corner, hem,"),
    ],
)
def test_a_slip_is_told_the_near_name_or_verb(front: BenchPiece, write: Any, meant: str) -> None:
    with pytest.raises(KitError) as error:
        write(front)
    assert meant in str(error.value)


def test_what_is_called_was_meant_as_a_verb() -> None:
    """`sides(...)` is near both: called it can only be a verb."""
    front = BenchPiece(square("draws", "side", "neck", "centre"))
    with pytest.raises(KitError, match="Did you mean 'draw'"):
        front.drawss(hip=front.side)
    with pytest.raises(KitError, match="Did you mean 'draws'"):
        _ = front.drawss


# ---- a block that takes a verb's name -----------------------------------------------------------------


def test_a_block_whose_edge_hides_a_verb_is_refused() -> None:
    block = Block("My block", (), lambda body: (square("hem", "line", "neck", "centre"),))
    with pytest.raises(KitError) as error:
        block(workshop_chart()["W4"])
    told = str(error.value)
    assert "My block, Front: the edge 'line' has the name of a verb, front.line(...)." in told
    assert "such as line_edge" in told


def test_a_traced_top_whose_edge_hides_a_verb_is_refused() -> None:
    edges = {"hem": [(0, 0), (20, 0)], "line": [(20, 0), (20, 20)], "face": [(20, 20), (0, 0)]}
    with pytest.raises(KitError, match=r"My top, Front: the edge 'line' has the name of a verb, front.line\(...\)"):
        Traced("My top", {"front": edges})


def test_a_point_of_a_block_that_hides_a_verb_is_refused() -> None:
    with pytest.raises(KitError, match=r"the point 'mark' has the name of a verb.*such as mark_point"):
        Traced(
            "My top",
            {"front": {"hem": [(0, 0), (20, 0)], "side": [(20, 0), (20, 20)], "neck": [(20, 20), (0, 0)]}},
            points={"front": {"mark": (3, 3)}},
        )


def test_a_step_cannot_draw_a_reserved_word(front: BenchPiece) -> None:
    for write in (front.guide, front.mark):
        with pytest.raises(KitError, match="'line' is a word of the bench and cannot name a line or point"):
            write(line=front.hem)
    with pytest.raises(KitError, match="'line' is a word of the bench"):
        front.draw(line=front.hem, instead_of="hem")


# ---- old lessons and new verbs ------------------------------------------------------------------------


def test_the_reserved_words_are_closed() -> None:
    """A verb added later must not be put into RESERVED: a lesson may have drawn something of its name."""
    assert len(RESERVED) == 47 and {"freeze", "note", "inside_is_left", "piece_name"} < RESERVED
    assert RESERVED - set(VERBS) == {"freeze", "note", "inside_is_left", "piece_name"}
    assert not {"edge", "point", "role"} & RESERVED and {"edge", "point"} < set(VERBS)
    assert words() == RESERVED | set(VERBS)


def test_an_old_lesson_may_have_drawn_what_is_a_verb_now(front: BenchPiece, newer_verb: str) -> None:
    """Its line and its point win, are moved and drawn from as ever, and the new verb is there all the same."""
    before = front.hem.length
    front.draw(smooth=front.hem.parallel(1 * cm, "down"), instead_of="hem")
    front.mark(edge=front.side.middle)
    assert front.smooth.length == before and front.smooth.name == "smooth"
    front.smooth = front.smooth.parallel(1 * cm, "down")
    assert front.freeze().edge("smooth").path.start.y == pytest.approx(-20)
    front.notch("smooth", 3 * cm)
    front.edge = front.edge.up(1 * cm)
    assert front.edge.y == 110 and dict(front.freeze().points)["edge"].y == 110
    # and called they are the verbs
    assert front.smooth("side") == "front side smoothed"
    assert front.edge("side").length == 200 and front.point("edge").y == 110
    front.allow(smooth=2 * cm)
    front.join(front.smooth, front.side)
    assert front.freeze().edge("smooth").allowance == 20


def test_an_old_lesson_with_a_new_verbs_name_works_through(newer_verb: str) -> None:
    lesson = Lesson("Old", start=bodice_block)

    @lesson.step("Lower the hip")
    def lower(front):  # type: ignore[no-untyped-def]
        """Draw the edge in another place, and a point called as a verb."""
        front.draw(smooth=front.hip.parallel(2 * cm, "down"), instead_of=front.hip)
        front.join("smooth", "side")
        front.join("smooth", "centre")
        front.mark(point=front.smooth.middle)

    @lesson.step("Use it")
    def use(front):  # type: ignore[no-untyped-def]
        """In the next step it is there."""
        front.measure(new_hip=front.smooth, up=(front.point, front.neck_point))

    pattern = lesson.work(workshop_chart()["W4"])
    assert {"smooth"} <= {e.name for e in pattern.piece("front").edges}
    assert [s.name for s in pattern.steps[1].spots] == ["new_hip", "up"]


def test_a_traced_top_with_a_new_verbs_name_is_taken(newer_verb: str) -> None:
    edges = {"hem": [(0, 0), (20, 0)], "smooth": [(20, 0), (20, 20)], "neck": [(20, 20), (0, 0)]}
    front = BenchPiece(Traced("My top", {"front": edges})(workshop_chart()["W4"])[0])
    assert front.smooth.length == 200 and front.smooth("hem") == "front hem smoothed"


def test_a_start_that_is_no_block_may_hide_a_verb() -> None:
    """A plain function as the start of a lesson is not read by anyone before it is drawn on."""
    front = BenchPiece(square("hem", "line", "neck", "centre"))
    assert front.line.length == 200 and front.edge("line").length == 200
    lining = BenchPiece(Piece("lining", "Lining", ()))
    lining.line(front)
    assert lining.freeze().cut.cloth == "lining"
    front.line = front.line.parallel(1 * cm, "out")
    assert front.freeze().edge("line").path.start.x == 210


# ---- pieces given to verbs ----------------------------------------------------------------------------


def test_a_line_made_with_the_piece_lies_on_it(front: BenchPiece) -> None:
    from kit.lesson.pencil import PaperLine

    front.declare(PaperLine(front, front.side.path, "side"), "hem", why="slit")
    assert front.freeze().declared[0].why == "slit"


def test_what_is_no_piece_cannot_be_traced(front: BenchPiece) -> None:
    with pytest.raises(KitError, match="'back' is not a piece to trace"):
        front.trace("back")
    other = BenchPiece(Piece("copy", "Copy", ()))
    other.trace(front)
    assert other.freeze().edges == front.freeze().edges and other.freeze().name == "copy"


def test_an_argument_of_a_verb_that_is_misspelt_is_told() -> None:
    lesson = Lesson("Slip", start=bodice_block)

    @lesson.step("Notch")
    def notch(front):  # type: ignore[no-untyped-def]
        """Notch it."""
        front.notch("side", 2 * cm, doubel=True)

    with pytest.raises(KitError, match=r"notch knows no argument 'doubel'. Did you mean 'double'"):
        lesson.work(workshop_chart()["W4"])
