"""The frame that operations stand on: spans of edges, the garment as it grows, reading what is written, just inside and
just outside what each takes. Lengths are plain sums along straight edges."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import CutPlan, Edge, Mark, Piece, Strip
from kit.sewing import mark_spot
from kit.sewing.ends import turnings
from kit.sewing.facts import facts_of, half_facts, lacking, place_facts
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.joins import Join
from kit.sewing.marked import Place
from kit.sewing.named import edge_of, edge_on, placed, row
from kit.sewing.open_folds import open_folds
from kit.sewing.order import sew
from kit.sewing.outcome import Closing, Effect, Outcome, Uses
from kit.sewing.reading import CutPieces, Reader, in_call, opening_run, read_size, read_width, read_word
from kit.sewing.run import Run
from kit.sewing.spans import Span, along, neighbours, path_of, reach, run_length, runs_opposed, sides_of, spans
from kit.sewing.state import Done, State
from kit.units import cm, mm


def panel(name: str, **more: Any) -> Piece:
    """A panel 200 wide and 300 high: hem, side, top, centre, going round to the left."""
    at = [Point(0, 0), Point(200, 0), Point(200, 300), Point(0, 300)]
    names = {"hem": 30.0, "side": 15.0, "top": 10.0, "centre": 15.0}
    edges = tuple(
        Edge(edge, Path.line(a, b), wide)
        for (edge, wide), a, b in zip(names.items(), at, [*at[1:], at[0]], strict=True)
    )
    return replace(Piece(name, name.capitalize(), edges), **more)


PAIR = panel("front", cut=CutPlan(2, mirrored=True))
SINGLE = panel("back")
CUT = CutPieces((PAIR, SINGLE), (Strip("tie", "Tie", 900, 40, 2),))


def refused(write: Any, words: str | None = None) -> str:
    with pytest.raises(KitError, match=words) as error:
        write()
    return str(error.value)


# ---- spans ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("other", "shared"),
    [((10, 30), 10.0), ((0, 5), 0.0), ((20, 90), 0.0), ((12, 14), 2.0), ((0, 90), 10.0), ((15, 90), 5.0)],
)
def test_what_two_spans_share(other: tuple[float, float], shared: float) -> None:
    one = Span("front", "left", "hem", 10.0, 20.0)
    two = Span("front", "left", "hem", *map(float, other))
    assert one.overlap(two) == two.overlap(one) == shared and one.length == 10.0
    for changes in ({"piece": "back"}, {"side": "right"}, {"edge": "side"}):
        assert one.overlap(replace(two, **changes)) == 0.0  # type: ignore[arg-type]


def test_a_run_of_edges_in_spans() -> None:
    run = Run("back", ("hem", "side"), None, 150.0, 260.0)
    assert spans(CUT, run) == (Span("back", "right", "hem", 150.0, 200.0), Span("back", "right", "side", 0.0, 60.0))
    back = Run("back", ("side", "hem"), None, 280.0, 400.0)
    assert spans(CUT, back) == (Span("back", "right", "side", 0.0, 20.0), Span("back", "right", "hem", 100.0, 200.0))
    assert spans(CUT, run, 20.0, 70.0) == (
        Span("back", "right", "hem", 170.0, 200.0),
        Span("back", "right", "side", 0.0, 20.0),
    )
    assert [s.side for s in spans(CUT, Run("front", ("hem",)))] == ["left", "right"]
    assert spans(CUT, Run("front", ("hem",), "left")) == (Span("front", "left", "hem", 0.0, 200.0),)
    assert run_length(CUT, run) == 110.0 and run_length(CUT, replace(run, start=None, end=None)) == 500.0
    assert path_of(CUT, run).start == Point(150, 0) and path_of(CUT, run).end == Point(200, 60)
    assert path_of(CUT, back).start == Point(200, 20) and path_of(CUT, back).end == Point(100, 0)


@pytest.mark.parametrize(("end", "fits"), [(200.0, True), (200.4, True), (200.6, False)])
def test_a_part_may_overshoot_by_half_a_millimetre(end: float, fits: bool) -> None:
    run = Run("back", ("hem",), None, 20.0, end)
    if fits:
        assert reach(CUT, run) == (20.0, 200.0)
    else:
        refused(lambda: reach(CUT, run), "back hem")
    refused(lambda: reach(CUT, replace(run, start=200.0, end=None)))
    assert reach(CUT, replace(run, start=199.0, end=None)) == (199.0, 200.0)


@pytest.mark.parametrize(("gap", "fits"), [(0.05, True), (0.2, False)])
def test_edges_that_follow_one_another_meet_within_a_tenth(gap: float, fits: bool) -> None:
    away = replace(SINGLE.edge("side"), path=Path.line(Point(200, gap), Point(200, 300)))
    cut = CutPieces((SINGLE.with_edges(side=away),), ())
    run = Run("back", ("hem", "side"))
    if fits:
        assert len(spans(cut, run)) == 2
    else:
        refused(lambda: spans(cut, run), "do not follow one another")
    refused(lambda: spans(CUT, Run("back", ("hem", "top"))), "do not follow one another")


@pytest.mark.parametrize(
    ("run", "edge", "distance", "found"),
    [
        (Run("back", ("hem", "side")), "side", 50.0, 250.0),
        (Run("back", ("hem", "side")), "hem", 50.0, 50.0),
        (Run("back", ("side", "hem")), "hem", 50.0, 450.0),
        (Run("back", ("side", "hem")), "side", 50.0, 250.0),
        (Run("back", ("hem", "side"), None, 30.0, 400.0), "side", 50.0, 220.0),
    ],
)
def test_a_place_on_an_edge_along_its_run(run: Run, edge: str, distance: float, found: float) -> None:
    assert along(CUT, run, edge, distance) == pytest.approx(found)
    refused(lambda: along(CUT, run, "top", 10.0), "not part of this run")


def test_what_lies_beside_a_run() -> None:
    assert set(neighbours(SINGLE, ("hem",))) == {"side", "centre"}
    assert set(neighbours(SINGLE, ("centre",))) == {"top", "hem"}
    assert set(neighbours(SINGLE, ("hem", "side"))) == {"top", "centre"}


def test_which_way_two_runs_go() -> None:
    assert runs_opposed(CUT, Run("front", ("hem",)), Run("back", ("hem",))) is False
    turned = SINGLE.with_edges(hem=replace(SINGLE.edge("hem"), path=SINGLE.edge("hem").path.reversed()))
    cut = CutPieces((PAIR, turned), ())
    assert runs_opposed(cut, Run("front", ("hem",)), Run("back", ("hem",))) is True


def test_halves() -> None:
    assert sides_of(CUT, Run("front", ("hem",))) == ("left", "right") and sides_of(CUT, Run("back", ("hem",))) == (
        "right",
    )
    assert sides_of(CUT, Run("front", ("hem",), "left")) == ("left",)


# ---- the garment as it grows ------------------------------------------------------------------------------


def closed(*parts: tuple[str, float, float], piece: str = "back", side: Any = "right") -> State:
    return State(tuple(Done(Span(piece, side, edge, a, b), "sewn", "Step") for edge, a, b in parts))


@pytest.mark.parametrize(
    ("parts", "raw"),
    [
        ((), [(0, 200)]),
        (((0, 200),), []),
        (((0.4, 199.6),), []),
        (((0.6, 199.4),), [(0, 0.6), (199.4, 200)]),
        (((50, 100),), [(0, 50), (100, 200)]),
        (((120, 200), (0, 119.6)), []),
        (((120, 200), (0, 119.4)), [(119.4, 120)]),
        (((0, 150), (20, 60)), [(150, 200)]),
    ],
)
def test_what_is_still_raw(parts: tuple[tuple[float, float], ...], raw: list[tuple[float, float]]) -> None:
    state = closed(*(("hem", a, b) for a, b in parts), ("side", 0, 300))
    found = state.raw(SINGLE, "right", "hem")
    assert [(span.start, span.end) for span in found] == [(float(a), float(b)) for a, b in raw]
    assert {(span.piece, span.side, span.edge) for span in found} <= {("back", "right", "hem")}


def test_a_fold_has_no_raw_edge_and_halves_are_told_apart() -> None:
    folded = panel("front", cut=CutPlan(1, fold="centre"))
    assert State().raw(folded, "left", "centre") == () and len(State().raw(folded, "left", "hem")) == 1
    state = closed(("hem", 0, 200), piece="front", side="left")
    assert state.raw(PAIR, "left", "hem") == () and len(state.raw(PAIR, "right", "hem")) == 1


@pytest.mark.parametrize(
    ("end", "covered", "is_raw", "is_closed"),
    [
        (0.4, 0.4, True, False),
        (0.6, 0.6, False, False),
        (199.4, 199.4, False, False),
        (199.6, 199.6, False, True),
        (200, 200, False, True),
    ],
)
def test_closed_and_raw_within_half_a_millimetre(end: float, covered: float, is_raw: bool, is_closed: bool) -> None:
    state, run = closed(("hem", 0, end)), Run("back", ("hem",))
    assert state.covered(CUT, run) == pytest.approx(covered)
    assert (state.is_raw(CUT, run), state.is_closed(CUT, run)) == (is_raw, is_closed)


def seamed(*seams: tuple[tuple[str, str, str], tuple[str, str, str]]) -> State:
    return State(joins=frozenset(Join(*(Span(*key, 0, 1000) for key in seam)) for seam in seams))  # type: ignore[arg-type]


def test_what_hangs_together() -> None:
    state = seamed((("a", "left", "x"), ("b", "left", "y")), (("b", "left", "z"), ("c", "right", "x")))
    assert state.joined(("a", "left"), ("c", "right")) and not state.joined(("a", "left"), ("c", "left"))
    parts: Any = (("a", "left"), ("a", "right"), ("c", "right"), ("d", "right"))
    assert sorted(map(len, state.groups(parts))) == [1, 1, 3]
    assert sorted(map(len, state.groups(parts, frozenset({"a"})))) == [1, 4]


@pytest.mark.parametrize(
    ("seam", "joined"),
    [
        ((("front", "left", "side"), ("back", "right", "side")), True),
        ((("front", "left", "side"), ("back", "right", "centre")), True),
        ((("front", "right", "side"), ("back", "right", "side")), False),  # the other half
        ((("front", "left", "top"), ("back", "right", "side")), False),  # not beside the hem
    ],
)
def test_runs_lie_end_to_end_once_the_edges_beside_them_are_joined(seam: Any, joined: bool) -> None:
    state = seamed(seam)
    assert state.continuous(CUT, Run("front", ("hem",), "left"), Run("back", ("hem",))) is joined
    assert State().continuous(CUT, Run("front", ("hem",), "left"), Run("front", ("top",), "left"))


def test_a_row_must_be_joined_before_it_is_sewn_on(sewn: Any, wrap: Any) -> None:
    """Two halves of a yoke sewn to a panel as one row: their own seam comes first."""
    names = {"top": 10, "side": 10, "low": 10, "free": 10}
    left = wrap.polygon("left_yoke", [(0, 40), (100, 40), (100, 0), (0, 0)], names)
    right = wrap.polygon("right_yoke", [(200, 40), (100, 40), (100, 0), (200, 0)], names)
    lower = wrap.polygon(
        "lower", [(0, 0), (200, 0), (200, -100), (0, -100)], {"top": 10, "one": 10, "hem": 10, "two": 10}
    )

    def yoke(make: Any, left_yoke: Any, right_yoke: Any, lower: Any) -> None:
        make.plain_seam(left_yoke.side, right_yoke.side, allowance=1 * cm)

    def on(make: Any, left_yoke: Any, right_yoke: Any, lower: Any) -> None:
        make.plain_seam([left_yoke.low, right_yoke.low], lower.top, allowance=1 * cm)

    def under(make: Any, left_yoke: Any, right_yoke: Any, lower: Any) -> None:
        make.plain_seam(lower.top, [right_yoke.low, left_yoke.low], allowance=1 * cm)

    assert sewn((left, right, lower), yoke, on).codes == [] == sewn((left, right, lower), yoke, under).codes
    for write, first, second in ((on, "left yoke", "right yoke"), (under, "right yoke", "left yoke")):
        found = sewn((left, right, lower), write)
        assert found.codes == ["not_joined_yet"]
        (said,) = sew(found.pattern)[1]
        assert said.what.index(first) < said.what.index(second) and said.do
        assert (said.piece, said.edge, said.level) == (first.replace(" ", "_"), "low", "error")


def test_what_an_operation_leaves() -> None:
    hem = Run("front", ("hem",), "left")
    begun = State(
        made=("tie",), handled=frozenset({"back"}), facts=frozenset({("old",), ("kept",)}), inside_out=frozenset({"x"})
    )
    effect = Effect(
        made=("loop",),
        attached={"tie": 2},
        faced=(hem,),
        unpressed=(hem,),
        facts=(("new",),),
        undone=(("old",),),
        inside_out=("front",),
        right_side_out=("x",),
    )
    closing = Closing(Span("front", "left", "hem", 0.0, 200.0), "hemmed")
    outcome = Outcome((closing,), ((hem, Run("back", ("hem",))),), Uses(("front",), {}, ("front",)), effect)
    state = begun.after(outcome, CUT, "Hem it")
    assert state.closed == (Done(closing.span, "hemmed", "Hem it"),)
    assert state.seams == {frozenset({("front", "left", "hem"), ("back", "right", "hem")})}
    assert (state.made, state.fused, state.handled) == (("tie", "loop"), ("front",), {"back", "front"})
    assert state.count("tie") == 2 and state.count("loop") == 0 and state.after(outcome, CUT).count("tie") == 4
    assert state.edges("faced") == {("front", "left", "hem")} == state.edges("unpressed")
    told = {(what, "front", "left", "hem") for what in ("faced", "unpressed")}
    assert state.facts == {("new",), ("kept",)} | told and state.inside_out == {"front"}
    ironed = state.after(Outcome(effect=Effect(pressed=(Run("back", ("hem",)),))), CUT)
    assert ironed.edges("unpressed") == set()  # an iron presses both sides of a seam
    other = state.after(Outcome(effect=Effect(pressed=(Run("back", ("side",)),))), CUT)
    assert other.facts == state.facts


def test_pairs_of_halves_are_joined_side_by_side() -> None:
    two = CutPieces((PAIR, replace(PAIR, name="back")), ())
    both = State().after(Outcome(joins=((Run("front", ("side",)), Run("back", ("side",))),)), two)
    assert both.seams == {frozenset({("front", s, "side"), ("back", s, "side")}) for s in ("left", "right")}
    across = State().after(Outcome(joins=((Run("front", ("side",), "left"), Run("back", ("side",), "right")),)), two)
    assert across.seams == {frozenset({("front", "left", "side"), ("back", "right", "side")})}
    laid = State().after(Outcome(effect=Effect(laid=((Run("front", ("top",)), Run("back", ("hem",))),))), two)
    assert len(laid.seams) == 2


# ---- facts, names and marks -------------------------------------------------------------------------------


def test_facts_of_edges_halves_and_marks() -> None:
    runs = (Run("front", ("hem", "side")), Run("back", ("hem",)), Run("back", ("hem",)))
    assert facts_of(CUT, runs, "w") == (
        ("w", "front", "left", "hem"),
        ("w", "front", "left", "side"),
        ("w", "front", "right", "hem"),
        ("w", "front", "right", "side"),
        ("w", "back", "right", "hem"),
    )
    assert half_facts(CUT, runs, "w") == (("w", "front", "left"), ("w", "front", "right"), ("w", "back", "right"))
    mark = Mark("spot", "point", point=Point(5, 5))
    assert place_facts(CUT, (Place("front", mark), Place("back", mark, "right")), "w") == (
        ("w", "front", "left", "spot"),
        ("w", "front", "right", "spot"),
        ("w", "back", "right", "spot"),
    )
    assert lacking(State(facts=frozenset({("a",)})), (("a",), ("b",))) == (("b",),)


def test_names_of_places() -> None:
    front = replace(PAIR, edges=tuple(replace(e, said="side seam") if e.name == "side" else e for e in PAIR.edges))
    cut = CutPieces((front, SINGLE), ())
    assert tuple(edge_of(front, "side").value) == ("side", "side seam") and edge_of(front, "nowhere").kind == "name"
    assert edge_on(front, "left", "side").value[1] == "left" and edge_on(SINGLE, "right", "side").value[1] == ""
    assert placed(cut, Run("front", ("side",), "left")).value.side == "left"
    assert (
        placed(cut, Run("front", ("side",))).value.side == "" == placed(cut, Run("back", ("side",), "right")).value.side
    )
    mark = Place("front", Mark("button_1", "point", point=Point(1, 1)), "right")
    assert placed(cut, mark).value[:3] == ("Front", ("button 1",), "right")
    assert [spot.title for spot in row(cut, (Run("front", ("hem",)), Run("back", ("hem",)))).value] == ["Front", "Back"]


def test_where_a_mark_lies() -> None:
    line = Mark("slit", "buttonhole", path=Path.line(Point(20, 40), Point(40, 40)))
    point, on_edge, nowhere = (
        Mark("spot", "point", point=Point(190, 100)),
        Mark("tie", "point", edge="side", start=120.0),
        Mark("none", "point"),
    )
    folded = panel("front", cut=CutPlan(1, fold="centre"))
    cut = CutPieces((folded, SINGLE), ())
    where = {mark.name: mark_spot.spot(cut, Place("front", mark)) for mark in (line, point, on_edge, nowhere)}
    assert where == {"slit": Point(30, 40), "spot": Point(190, 100), "tie": Point(200, 120), "none": None}
    assert mark_spot.nearest(cut, Place("front", point)) == ("side", pytest.approx(100.0))
    assert mark_spot.nearest(cut, Place("front", line)) == (
        "hem",
        pytest.approx(30.0),
    )  # its fold is nearer, and no edge
    assert mark_spot.nearest(cut, Place("back", line)) == ("centre", pytest.approx(260.0))
    assert mark_spot.nearest(cut, Place("front", nowhere)) is None
    assert mark_spot.ground(cut, Place("front", point, "left")) == Run("front", ("side",), "left")
    assert mark_spot.ground(cut, Place("front", nowhere)) == Run("front", ("hem",))
    assert mark_spot.halves(cut, Place("front", point)) == ("left", "right")
    assert mark_spot.halves(cut, Place("front", point, "left")) == ("left",)


# ---- what speaks against ----------------------------------------------------------------------------------


@pytest.mark.parametrize(("shared", "told"), [(-5.0, False), (0.4, False), (0.6, True), (40.0, True)])
def test_a_stretch_sewn_twice(sewn: Any, shared: float, told: bool) -> None:
    def first(make: Any, back: Any) -> None:
        make.narrow_hem(back.hem.between(0 * mm, 100 * mm))

    def second(make: Any, back: Any) -> None:
        make.narrow_hem(back.hem.between((100 - shared) * mm, 200 * mm))

    found = sewn((SINGLE,), first, second)
    assert found.codes == ["closed_twice"] * told
    if told:
        (said,) = sew(found.pattern)[1]
        assert said.amount == pytest.approx(shared) and (said.piece, said.edge, said.step) == ("back", "hem", "s1")
        assert "Step 0" in said.what and "Step 1" in said.where


@pytest.mark.parametrize(("inside", "told"), [(0.4, False), (0.6, True), (20.0, True)])
def test_a_dart_still_open_in_what_is_sewn(sewn: Any, inside: float, told: bool) -> None:
    darted = replace(SINGLE, darts=(Dart("dart", "hem", Point(110, 90), 100.0, 120.0),))

    def hem(make: Any, back: Any) -> None:
        make.narrow_hem(back.hem.between(0 * mm, (100 + inside) * mm))

    found = sewn((darted,), hem)
    assert found.codes == ["dart_open"] * told
    assert [(m.kind, m.edge, m.start, m.end) for m in open_folds(darted)] == [("dart", "hem", 100.0, 120.0)]
    assert open_folds(darted)[0].fact("back", "right") == ("dart", "back", "right", "dart")


@pytest.mark.parametrize(
    ("start", "end", "ends"),
    [
        (0.0, 100.0, {"start"}),
        (0.4, 100.0, {"start"}),
        (0.6, 100.0, set()),
        (100.0, 199.4, set()),
        (100.0, 199.6, {"end"}),
    ],
)
def test_a_part_reaches_the_corner_within_half_a_millimetre(
    sewn: Any, start: float, end: float, ends: set[str]
) -> None:
    def hem(make: Any, back: Any) -> None:
        make.hem(back.hem.between(start * mm, end * mm), first=10 * mm, second=20 * mm)

    found = turnings(sewn((SINGLE,), hem).pattern)
    assert {key[2] for key in found} == ends
    assert {(t.folds, t.hem, t.number, t.step, t.title) for t in found.values()} <= {
        ((0.0, 20.0), True, 1, "s0", "Step 0")
    }


# ---- reading ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("given", "size", "width"),
    [(0, 0.0, None), (0.1 * mm, 0.1, 0.1), (100 * mm, 100.0, 100.0), (100.1 * mm, None, None), (-1 * mm, None, None)],
)
def test_widths(given: Any, size: float | None, width: float | None) -> None:
    for read, wanted in ((read_size, size), (read_width, width)):
        if wanted is None:
            assert "make.hem(first=...)" in refused(lambda read=read: read(given, "hem, first"))
        else:
            assert read(given, "hem, first") == pytest.approx(wanted)
    assert read_size(250 * mm, "hem", 300.0) == 250.0
    refused(lambda: read_size(301 * mm, "hem", 300.0))


def test_words_and_calls() -> None:
    assert read_word("open", ("open", "left"), "press", "seam") == "open"
    assert "press is 'opn'" in refused(lambda: read_word("opn", ("open", "left"), "press", "seam"), "open")
    refused(lambda: read_word(3, ("open",), "press", "seam"))
    assert in_call("belt loop, at") == "make.belt_loop(at=...)" and in_call("Hem") == "make.hem(...)"


@pytest.mark.parametrize(
    ("opening", "found"),
    [
        ((20 * mm, 60 * mm), (20.0, 60.0)),
        ((0 * mm, 60 * mm), (0.0, 60.0)),
        ((20 * mm, 300.4 * mm), (20.0, 300.0)),
        ((20 * mm, 300.6 * mm), None),
        ((60 * mm, 20 * mm), None),
        ((20 * mm, 20 * mm), None),
        (Mark("slit", "opening", edge="side", start=20.0, end=60.0), (20.0, 60.0)),
        (Mark("spot", "point", point=Point(0, 0)), None),
        ((20 * mm,), None),
        ("slit", None),
        (None, ()),
    ],
)
def test_openings(opening: Any, found: Any) -> None:
    reader = Reader((PAIR, SINGLE))
    write = lambda: reader.opening(opening, (Run("back", ("side",)),), (Run("front", ("side",), "left"),), "seam")  # noqa: E731
    if found is None:
        refused(write)
    else:
        assert write() == (found or None)


def test_an_opening_as_long_as_a_seam_of_both_halves_is_none() -> None:
    reader = Reader((PAIR, replace(PAIR, name="back")))
    both = ((Run("front", ("side",)),), (Run("back", ("side",)),))
    refused(lambda: reader.opening((0 * mm, 300 * mm), *both, "seam"))
    refused(lambda: reader.opening((0.4 * mm, 299.6 * mm), *both, "seam"))
    assert reader.opening((0.6 * mm, 300 * mm), *both, "seam") == (0.6, 300.0)
    assert reader.opening((0 * mm, 299.4 * mm), *both, "seam") == (0.0, 299.4)
    one = ((Run("front", ("side",), "left"),), (Run("back", ("side",), "left"),))
    assert reader.opening((0 * mm, 300 * mm), *one, "seam") == (0.0, 300.0)
    refused(
        lambda: reader.opening((0 * mm, 30 * mm), (*both[0], Run("front", ("hem",))), both[1], "seam"), "one by one"
    )


@pytest.mark.parametrize(
    ("at", "found"),
    [
        ("start", (0.0, "start")),
        ("end", (300.0, "end")),
        (0 * mm, (0.0, "along")),
        (120 * mm, (120.0, "along")),
        ("12 cm", (120.0, "along")),
        (300.4 * mm, (300.0, "along")),
        (300.6 * mm, None),
        ("middle", None),
        (12, None),
    ],
)
def test_a_place_on_a_run(at: Any, found: Any) -> None:
    reader = Reader((PAIR, SINGLE))
    run = Run("back", ("side",))
    if found is None:
        refused(lambda: reader.spot(run, at, "belt loop, at"))
    else:
        assert reader.spot(run, at, "belt loop, at") == (run, pytest.approx(found[0]), found[1])


@pytest.mark.parametrize(("off", "found"), [(0.0, True), (0.9, True), (1.1, False)])
def test_a_mark_on_an_edge_within_a_millimetre(off: float, found: bool) -> None:
    reader = Reader((PAIR, SINGLE))
    place = Place("back", Mark("spot", "point", point=Point(200 - off, 90)), "right")
    if found:
        assert reader.mark_on_edge(place, "tie") == ("side", pytest.approx(90.0))
        assert reader.spot(place, "start", "tie") == (Run("back", ("side",), "right"), pytest.approx(90.0), "mark")
    else:
        refused(lambda: reader.mark_on_edge(place, "tie"), "lies on no edge")
    on = Place("back", Mark("spot", "point", edge="hem", start=40.0))
    assert reader.mark_on_edge(on, "tie") == ("hem", 40.0)


def test_what_is_no_edge_piece_or_strip() -> None:
    reader = Reader((PAIR, SINGLE), (Strip("tie", "Tie", 900, 40, 2),))
    back = PieceHandle(SINGLE)
    assert reader.runs([back.hem, (back.side,)], "hem") == (Run("back", ("hem",)), Run("back", ("side",)))
    assert reader.runs((), "hem", True) == () and reader.piece(back, "fuse") == "back"
    assert reader.strip(StripHandle(CUT.strips[0]), "tie") == "tie"
    for write, words in (
        (lambda: reader.runs((), "hem"), "no edge is named"),
        (lambda: reader.runs(back, "hem"), "Its edges are hem, side, top, centre"),
        (lambda: reader.runs("hem", "hem"), "'hem' is not an edge"),
        (lambda: reader.piece("back", "fuse"), "not a piece"),
        (lambda: reader.strip("tie", "tie"), "not a strip"),
        (lambda: opening_run(reader, Place("back", Mark("m", "point", edge="hem")), "zip"), "no opening"),
        (lambda: opening_run(reader, Place("back", Mark("m", "opening")), "zip"), "no opening"),
    ):
        refused(write, words)
    mark = Place("back", Mark("m", "opening", edge="hem", start=10.0, end=90.0), "right")
    assert opening_run(reader, mark, "zip") == Run("back", ("hem",), "right", 10.0, 90.0)


def test_parts_of_runs() -> None:
    hem = Run("back", ("hem",))
    assert hem.between(0 * cm, 5 * cm) == replace(hem, start=0.0, end=50.0)
    assert run_length(CUT, hem.after(0 * cm)) == 200.0 and hem.after(5 * cm) == replace(hem, start=50.0)
    for write in (
        lambda: hem.between(5 * cm, 5 * cm),
        lambda: hem.between(6 * cm, 5 * cm),
        lambda: hem.between(-1 * cm, 5 * cm),
        lambda: hem.after(-1 * mm),
        lambda: hem + Run("back", ("side",), "right"),
        lambda: hem.after(1 * cm) + Run("back", ("side",)),
        lambda: hem + Run("back", ("side",)).after(1 * cm),
    ):
        refused(write)
    assert (hem + Run("back", ("side",))).edges == ("hem", "side")
