"""Each condition of a rule by hand: where it holds and where not; and how a rule tells what breaks it."""

from __future__ import annotations

from collections.abc import Callable
from types import SimpleNamespace
from typing import Any

import pytest

from kit.diagnostic import measured
from kit.geometry import Path, Point
from kit.piece.piece import CutPlan, Edge, Mark, Piece, Strip
from kit.sewing import rules
from kit.sewing.joins import Join
from kit.sewing.marked import Place
from kit.sewing.outcome import Fact
from kit.sewing.places import Hanging
from kit.sewing.reading import CutPieces
from kit.sewing.rules import (
    Asking,
    Case,
    Closed,
    Each,
    EndToEnd,
    EnoughStrips,
    Excess,
    First,
    InsideOut,
    Made,
    Of,
    Pressed,
    Raw,
    Rule,
    Seamed,
    Suits,
    at_least,
    at_most,
    broken,
    deeper_turn,
    off_by,
    whole,
)
from kit.sewing.run import Run
from kit.sewing.spans import Span
from kit.sewing.state import Done, State


def panel(name: str, mirrored: bool = False) -> Piece:
    at = [Point(0, 0), Point(200, 0), Point(200, 300), Point(0, 300)]
    names = ("hem", "side", "top", "centre")
    edges = tuple(Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True))
    return Piece(name, name.capitalize(), edges, cut=CutPlan(1 + mirrored, mirrored=mirrored))


CUT = CutPieces((panel("front", mirrored=True), panel("back")), (Strip("tie", "The tie", 900, 40, 2),))
HEM, SIDE, BACK = Run("front", ("hem",), "left"), Run("front", ("side",)), Run("back", ("hem",))
SPOT = Place("back", Mark("spot", "point", point=Point(190, 100)))


def doing(**fields: Any) -> Any:
    return SimpleNamespace(kind="try", **{"edges": (HEM, BACK), "one": SIDE, "none": None, "deep": 12.5, **fields})


def holds(condition: Any, state: State, operation: Any = None) -> list[bool]:
    return [case.holds for case in condition.cases(operation or doing(), state, CUT)]


Places = Callable[..., None]


@pytest.fixture
def places(monkeypatch: pytest.MonkeyPatch) -> Places:
    """Says what places the messages of a test have, by the ends of their keys; at first none."""

    def have(**names: tuple[str, ...]) -> None:
        monkeypatch.setattr(rules, "variables", lambda key: names.get(key.removeprefix("sewing_trouble."), ()))

    have()
    return have


def facts(*found: Fact) -> State:
    return State(facts=frozenset(found))


def closed(*parts: tuple[str, str, str, float, float]) -> State:
    return State(tuple(Done(Span(p, s, e, a, b), "sewn", "") for p, s, e, a, b in parts))  # type: ignore[arg-type]


def test_facts_of_edges_runs_halves_pieces_and_marks() -> None:
    made = doing(edges=(Run("front", ("hem", "side")),), spot=SPOT, pieces=("front", "back"))
    assert Of("{kind}_w", "edges").facts(made, CUT) == (
        ("try_w", "front", "left", "hem"),
        ("try_w", "front", "left", "side"),
        ("try_w", "front", "right", "hem"),
        ("try_w", "front", "right", "side"),
    )
    assert Of("w", "edges", each="half").facts(made, CUT) == (("w", "front", "left"), ("w", "front", "right"))
    assert Of("w", "edges", each="piece").facts(made, CUT) == (("w", "front"),)
    assert Of("w", "pieces", each="piece").facts(made, CUT) == (("w", "front"), ("w", "back"))
    assert Of("w", "spot").facts(made, CUT) == (("w", "back", "right", "spot"),)
    assert Of("w", "none").facts(made, CUT) == ()
    assert Of("w", "one", each="half", size="deep").facts(made, CUT)[0] == ("w", "front", "left", "12.50")


def test_a_fact_holds_edge_by_edge() -> None:
    state = facts(("w", "front", "left", "hem"))
    cases = list(Of("w", "edges").cases(doing(), state, CUT))
    assert [(case.holds, case.at, case.edge) for case in cases] == [(True, HEM, "hem"), (False, BACK, "hem")]
    assert [case.edge for case in Of("w", "edges", each="run").cases(doing(), state, CUT)] == ["", ""]


@pytest.mark.parametrize(
    ("state", "raw", "all_closed"),
    [
        (State(), [True, True], [False, False]),
        (closed(("front", "left", "hem", 0, 200)), [False, True], [True, False]),
        (closed(("front", "left", "hem", 0, 90)), [False, True], [False, False]),
        (closed(("front", "right", "hem", 0, 200)), [True, True], [False, False]),
    ],
)
def test_raw_and_closed(state: State, raw: list[bool], all_closed: list[bool]) -> None:
    assert (holds(Raw("edges"), state), holds(Closed("edges"), state)) == (raw, all_closed)
    assert holds(Raw("none"), state) == []


def seams(*found: tuple[tuple[str, str, str], tuple[str, str, str]]) -> State:
    return State(joins=frozenset(Join(*(Span(*key, 0, 1000) for key in seam)) for seam in found))  # type: ignore[arg-type]


def test_seamed_on_every_half_and_every_edge() -> None:
    left = (("front", "left", "side"), ("back", "right", "hem"))
    right = (("front", "right", "side"), ("back", "right", "side"))
    assert holds(Seamed("one"), seams(left)) == [False] and holds(Seamed("one"), seams(left, right)) == [True]
    assert holds(Seamed("edges"), seams(left)) == [False, True]
    assert holds(Seamed("edges"), seams(left), doing(edges=(Run("back", ("hem", "side")),))) == [False]


def test_inside_out() -> None:
    state = State(inside_out=frozenset({"front"}))
    assert holds(InsideOut(("edges", "one")), state) == [True, False]  # told once of a piece
    assert holds(InsideOut(("edges",)), state) == [True, False]
    assert holds(InsideOut(("pieces",)), state, doing(pieces=("back",))) == [False]
    (case,) = InsideOut(("one",)).cases(doing(), state, CUT)
    assert case.values["piece"].value == "Front" and case.at == SIDE


def test_pressed_along_the_run() -> None:
    for key, wanted in ((("front", "left", "hem"), [False, True]), (("front", "right", "hem"), [True, True])):
        assert holds(Pressed("edges"), facts(("unpressed", *key))) == wanted


@pytest.mark.parametrize(("slack", "fits"), [(0.0, False), (12.4, False), (12.5, True), (13.0, True)])
def test_an_excess_is_told_of_every_run(slack: float, fits: bool) -> None:
    cases = list(Excess(lambda o: o.deep, "edges", slack).cases(doing(), State(), CUT))
    assert [(case.holds, case.at, case.amount) for case in cases] == [(fits, HEM, 12.5), (fits, BACK, 12.5)]


def test_what_suits_is_told_of_the_first_run() -> None:
    (case,) = Suits(lambda o: o.deep < 5, "edges", lambda o: o.deep - 5).cases(doing(), State(), CUT)
    assert (case.holds, case.at, case.amount) == (False, HEM, 7.5)


def test_a_strip_is_made() -> None:
    strip = doing(strip="tie")
    assert holds(Made("strip"), State(), strip) == [False]
    assert holds(Made("strip"), State(made=("tie",)), strip) == [True]


def test_each_run_mark_or_piece_is_tested() -> None:
    made = doing(pieces=("front", "back"), spot=SPOT)
    asked: list[Any] = []
    on_back = Each("edges", lambda operation, state, pattern, run: asked.append(operation) or run.piece == "back")
    assert holds(on_back, State(), made) == [False, True] and asked == [made, made]
    assert [case.at for case in Each("spot", lambda *_: 1).cases(made, State(), CUT)] == [SPOT]
    (front, back) = Each("pieces", lambda made, state, pattern, name: name == "front").cases(made, State(), CUT)
    assert (front.holds, back.holds, back.at) == (True, False, whole("back"))
    assert holds(Each("none", lambda *_: False), State()) == []


@pytest.mark.parametrize(("before", "now", "enough"), [(0, 2, True), (1, 1, True), (1, 2, False), (2, 1, False)])
def test_strips_are_used_up(before: int, now: int, enough: bool) -> None:
    state = State(attached=(("tie", before),))
    (case,) = EnoughStrips("name", lambda made, pattern: now).cases(doing(name="tie"), state, CUT)
    assert (case.holds, case.at) == (enough, CUT.strip("tie"))
    assert {name: value.value for name, value in case.values.items()} == {"count": before + now, "cut": 2}


def test_off_by_some_mm() -> None:
    assert [off_by(HEM, by).holds for by in (-3.0, 0.5, 0.6)] == [True, True, False]
    assert [off_by(HEM, by, 2.0).holds for by in (2.0, 2.1)] == [True, False]
    case = off_by(HEM, 7.0, at=12.0, size=5.0)
    assert (case.at, case.amount, case.values) == (HEM, 7.0, {"at": measured(12.0), "size": measured(5.0)})


def test_the_least_and_the_most_of_a_width(places: Places) -> None:
    places(narrow=("deep",), narrow_do=("least",), wide_do=("most",))

    def against(rule: Rule, **fields: Any) -> list[Any]:
        return list(broken((rule,), doing(**fields), State(), CUT))

    narrow = at_least("deep", 12.5, "narrow", of="edges", slack=0.1)
    assert not against(narrow) and not against(narrow, deep=12.4)
    (told,) = against(narrow, deep=12.0)
    assert (told.amount, dict(told.says.values)["deep"]) == (0.5, measured(12.0, "allowance"))
    assert dict(told.can.values) == {"least": measured(12.5, "allowance")}
    wide = at_most("deep", 10.0, "wide", of="edges", when=lambda made: made.one is SIDE)
    (told,) = against(wide)
    assert told.amount == 2.5 and dict(told.can.values) == {"most": measured(10.0, "allowance")}
    assert not against(wide, one=HEM) and not against(wide, deep=10.0)
    turn = deeper_turn("edges", "deep", says="casing_turns")
    assert not against(turn, first=13.0)
    (told,) = against(turn, first=13.1)
    assert (told.code, told.says.key) == ("hem_turns", "sewing_trouble.casing_turns")
    assert told.can.key == "sewing_trouble.do_deepen_second_turn"


def test_what_is_caught_hangs_on_every_half() -> None:
    made = doing(caught=(SIDE, BACK), on=(Run("back", ("top",)),))
    left, right = ((("front", side, "side"), ("back", "right", "top")) for side in ("left", "right"))
    assert holds(Hanging("caught", "on"), seams(left), made) == [False, True]
    assert holds(Hanging("caught", "on"), seams(left, right), made) == [True, True]
    assert holds(Hanging("none", "on"), seams(left), doing(none=(), on=made.on)) == []


def test_end_to_end_told_of_the_last_edge_of_the_run_before() -> None:
    made = doing(edges=(Run("front", ("side", "hem"), "left"), BACK))
    (case,) = EndToEnd("edges").cases(made, State(), CUT)
    assert not case.holds and case.at == HEM and case.values["other"].value.title == "Back"
    assert case.values["place"].value.title == "Front"
    assert holds(EndToEnd("edges"), seams((("front", "left", "top"), ("back", "right", "side"))), made) == [True]
    assert holds(EndToEnd("one"), State()) == []


def test_only_what_is_met_first_is_told() -> None:
    def walk(operation: Any, state: State, pattern: Any) -> Any:
        yield "late", Case(False, HEM)
        yield "early", Case(False, BACK)

    assert holds(First(walk, "late"), State()) == [False] and holds(First(walk, "early"), State()) == []


# ---- rules ------------------------------------------------------------------------------------------------

BOTH_WRONG = Asking(lambda o, s, p: [Case(True, SIDE), Case(False, HEM, amount=3.0), Case(False, BACK)])


def test_the_first_that_breaks_it_or_each() -> None:
    assert [c.at for c in Rule(BOTH_WRONG, "a").broken(doing(), State(), CUT)] == [HEM]
    assert [c.at for c in Rule(BOTH_WRONG, "a", each=True).broken(doing(), State(), CUT)] == [HEM, BACK]
    assert [c.at for c in Rule(BOTH_WRONG, "a", holds=False).broken(doing(), State(), CUT)] == [SIDE]
    assert Rule(BOTH_WRONG, "a", when=lambda o: o.deep > 20).broken(doing(), State(), CUT) == []
    assert len(Rule(BOTH_WRONG, "a", when=lambda o: o.deep > 2).broken(doing(), State(), CUT)) == 1
    twice = Asking(lambda o, s, p: [Case(False, HEM, "hem", 1.0), Case(False, HEM, "side", 2.0)])
    assert [c.amount for c in Rule(twice, "a", each=True).broken(doing(), State(), CUT)] == [1.0]  # once of a run


@pytest.mark.parametrize(
    ("ends", "codes"),
    [
        ("", ["a", "b", "b", "c", "c"]),
        ("next", ["a", "b", "c", "c"]),
        ("run", ["a", "b", "c"]),
        ("all", ["a"]),
    ],
)
def test_what_is_not_asked_any_more(places: Places, ends: Any, codes: list[str]) -> None:
    row = [Rule(BOTH_WRONG, "a", ends=ends), Rule(BOTH_WRONG, "b", each=True), Rule(BOTH_WRONG, "c", each=True)]
    found = broken(row, doing(), State(), CUT)
    assert [each.code for each in found] == codes
    if ends == "run":
        assert [(each.code, each.piece) for each in found] == [("a", "front"), ("b", "back"), ("c", "back")]


def told(rule: Rule, at: Any, **more: Any) -> Any:
    return rule.told(doing(strip="tie"), CUT, Case(False, at, **more))


def test_where_it_is_told(places: Places) -> None:
    places(a=("place", "edge", "piece", "amount", "deep"), a_do=("piece",))
    rule = Rule(BOTH_WRONG, "a", level="warning")
    found = told(rule, HEM, amount=3.0)
    assert (found.code, found.level, found.piece, found.edge, found.at, found.amount) == (
        "a",
        "warning",
        "front",
        "hem",
        "Front",
        3.0,
    )
    said = dict(found.says.values)
    assert found.says.key == "sewing_trouble.a" and found.can.key == "sewing_trouble.a_do"
    assert (said["place"].value.title, said["place"].value.side) == ("Front", "left")
    assert (said["edge"].value.name, said["piece"].value) == ("hem", "Front")
    assert (said["amount"], said["deep"]) == (measured(3.0), measured(12.5, "allowance"))
    assert dict(found.can.values)["piece"].value == "Front"
    assert dict(told(rule, HEM).says.values)["amount"] == measured(0.0)
    assert told(Rule(BOTH_WRONG, "a", says="b", do="c"), HEM).says.key == "sewing_trouble.b"
    assert told(Rule(BOTH_WRONG, "a", says="b", do="c"), HEM).can.key == "sewing_trouble.c"


def test_of_one_edge_of_a_mark_of_a_strip_and_of_another_field(places: Places) -> None:
    places(on=("piece",), given=("share",))
    plain = Rule(BOTH_WRONG, "a")
    assert told(plain, Run("front", ("hem", "side")), edge="side").edge == "side"
    assert (told(plain, SPOT).piece, told(plain, SPOT).edge) == ("back", "side")  # the edge nearest to the mark
    assert (told(plain, whole("back")).piece, told(plain, whole("back")).edge) == ("back", "")
    strip = CUT.strips[0]
    assert (told(plain, strip).piece, told(plain, strip).edge, told(plain, strip).at) == ("", "", "The tie")
    on = Rule(BOTH_WRONG, "on", on="one")
    assert (told(on, strip).piece, told(on, strip).edge) == ("front", "side")
    assert dict(told(on, strip).says.values)["piece"].value == "The tie"
    assert (told(on, HEM, edge="hem").edge, told(on, BACK).piece) == ("side", "front")
    given = Rule(BOTH_WRONG, "given")
    assert dict(told(given, HEM, values={"share": measured(7.0)}).says.values)["share"] == measured(7.0)
