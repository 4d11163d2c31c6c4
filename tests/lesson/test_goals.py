"""Goals of exercises just short of, at and just past what they ask, and which sentence says so. Lengths are of straight
lines; 2 mm of slack for a length and 1 mm for a line that stays are the kit's own promise."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson import goals as module
from kit.lesson.goals import Attempt, at_least, at_most, grows, is_length, keeps, moves, passes_proof, shrinks
from kit.lesson.publishing import seconds
from kit.piece.piece import Edge, Piece
from kit.units import cm, mm


class Draft:
    """Just what a goal asks of a pattern: pieces and finished measurements."""

    def __init__(
        self, side: float = 300.0, *, shift: float = 0.0, corner: Point | None = None, **finished: float
    ) -> None:
        at = [Point(shift, 0), Point(200, 0), Point(200, side), Point(shift, side)]
        names = ("hem", "side", "top", "centre")
        edges = tuple(Edge(n, Path.line(a, b)) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True))
        self.pieces = (Piece("front", "Front", edges, points=(("corner", corner or Point(200, 0)),)),)
        self.finished = tuple(finished.items())

    def piece(self, name: str) -> Piece:
        return self.pieces[0]


def attempt(after: Draft, before: Draft | None = None, findings: Any = ()) -> Attempt:
    return Attempt(before or Draft(), after, "cm", lambda pattern: findings)  # type: ignore[arg-type]


@pytest.fixture(autouse=True)
def keys(monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, dict[str, Any]]]:
    """Sentences as (key, what fills it)."""
    told: list[tuple[str, dict[str, Any]]] = []

    def say(key: str, places: Any = None, **more: Any) -> str:
        told.append((key.removeprefix("class_copy."), {**(places or {}), **more}))
        return key

    monkeypatch.setattr(module, "say", say)
    return told


def answer(goal: Any, of: Attempt, keys: list[Any]) -> tuple[bool, str, dict[str, Any]]:
    keys.clear()
    met = goal.result(of).met
    key, places = keys[-1]
    return met, key, places


@pytest.mark.parametrize(
    ("gained", "met", "key", "told"),
    [
        (17.9, False, "short", ("missing", "2 mm")),
        (18.1, True, "met", None),
        (20.0, True, "met", None),
        (21.9, True, "met", None),
        (22.1, False, "over", ("over", "2 mm")),
        (0.6, False, "short", ("missing", "1.9 cm")),
        (0.4, False, "none", ("missing", "2 cm")),
        (-0.4, False, "none", ("missing", "2 cm")),
        (-0.6, False, "wrong", ("change", "1 mm")),
        (-20.0, False, "wrong", ("change", "2 cm")),
    ],
)
@pytest.mark.parametrize("way", ["grows", "shrinks"])
def test_longer_or_shorter(gained: float, met: bool, key: str, told: Any, way: str, keys: list[Any]) -> None:
    goal = grows("front.side", 2 * cm) if way == "grows" else shrinks("front.side", 2 * cm)
    after = Draft(300 + gained if way == "grows" else 300 - gained)
    found = answer(goal, attempt(after), keys)
    assert found[:2] == (met, f"{way}_{key}")
    assert found[2]["by"].startswith("2 cm")
    if told:
        assert found[2][told[0]].startswith(told[1])
    keys.clear()
    goal.asked(attempt(after))
    assert keys[-1][0] == way and keys[-1][1]["by"].startswith("2 cm")


def test_several_edges_and_finished_measurements(keys: list[Any]) -> None:
    assert answer(grows("front.hem + front.side", 2 * cm), attempt(Draft(320)), keys)[0] is True
    wide = attempt(Draft(width=520.0), Draft(width=500.0))
    assert answer(grows("width", 2 * cm), wide, keys)[0] is True
    assert (
        answer(grows("width", 2 * cm, within=0.5 * mm), attempt(Draft(width=520.6), Draft(width=500.0)), keys)[0]
        is False
    )
    with pytest.raises(KitError, match="no edge or finished measurement 'widht'"):
        grows("widht", 2 * cm).result(wide)


@pytest.mark.parametrize(
    ("after", "met", "key"),
    [
        (Draft(), True, "keeps_met"),
        (Draft(300.9), True, "keeps_met"),
        (Draft(301.1), False, "keeps_longer"),
        (Draft(298.9), False, "keeps_shorter"),
    ],
)
def test_an_edge_that_stays(after: Draft, met: bool, key: str, keys: list[Any]) -> None:
    assert answer(keeps("front.side"), attempt(after), keys)[:2] == (met, key)


@pytest.mark.parametrize(("shift", "met"), [(0.9, True), (1.1, False), (-1.1, False), (40.0, False)])
def test_an_edge_that_is_moved_sideways(shift: float, met: bool, keys: list[Any]) -> None:
    found = answer(keeps("front.centre"), attempt(Draft(shift=shift)), keys)
    assert found[:2] == (met, "keeps_met" if met else "keeps_moved")
    if shift == 40.0:
        assert found[2]["by"].startswith("4 cm")


@pytest.mark.parametrize(
    ("size", "key", "told"),
    [
        (297.9, "too_short", ("missing", "2 mm")),
        (298.1, "length_met", ("length", "29.8 cm")),
        (301.9, "length_met", ("length", "30.2 cm")),
        (302.1, "too_long", ("over", "2 mm")),
        (250.0, "too_short", ("missing", "5 cm")),
    ],
)
def test_a_length(size: float, key: str, told: tuple[str, str], keys: list[Any]) -> None:
    met, found, places = answer(is_length("front.side", 30 * cm), attempt(Draft(size)), keys)
    assert (met, found) == (key == "length_met", key) and places[told[0]].startswith(told[1])


@pytest.mark.parametrize(
    ("size", "least", "most"),
    [(299.9, "too_short", "length_met"), (300.0, "length_met", "length_met"), (300.1, "length_met", "too_long")],
)
def test_bounds(size: float, least: str, most: str, keys: list[Any]) -> None:
    assert answer(at_least("front.side", 30 * cm), attempt(Draft(size)), keys)[1] == least
    assert answer(at_most("front.side", 30 * cm), attempt(Draft(size)), keys)[1] == most
    for goal, key in (
        (at_least("front.side", 30 * cm), "at_least"),
        (at_most("front.side", 30 * cm), "at_most"),
        (is_length("front.side", 30 * cm), "is_length"),
    ):
        keys.clear()
        goal.asked(attempt(Draft(size)))
        assert keys[-1][0] == key and keys[-1][1]["length"].startswith("30 cm")


@pytest.mark.parametrize(
    ("at", "met", "ways"),
    [
        ((200, -20), True, ["down"]),
        ((200, -18.1), True, ["down"]),
        ((200, -17.9), False, ["down"]),
        ((200, -22.1), False, ["up"]),
        ((202.1, -20), False, ["in"]),
        ((197.9, -20), False, ["out"]),
        ((190, 0), False, ["down", "out"]),
    ],
)
def test_a_point_that_moves(at: tuple[float, float], met: bool, ways: list[str], keys: list[Any]) -> None:
    goal = moves("front.corner", up=-2 * cm)
    keys.clear()
    assert goal.result(attempt(Draft(corner=Point(*at)))).met is met
    assert [key for key, _ in keys if key in ("up", "down", "in", "out")] == ways
    assert keys[-1][0] == ("moves_met" if met else "moves_short")


def test_out_is_away_from_the_centre_line_on_either_half(keys: list[Any]) -> None:
    goal = moves("front.corner", out=2 * cm)
    left = Draft(corner=Point(-200, 0))
    assert goal.result(attempt(Draft(corner=Point(-220, 0)), left)).met
    assert not goal.result(attempt(Draft(corner=Point(-180, 0)), left)).met
    assert goal.result(attempt(Draft(corner=Point(220, 0)))).met
    with pytest.raises(KitError, match="nowhere"):
        moves("front.corner")
    for name, words in (("corner", "does not name a point"), ("front.cornre", "no point 'cornre'")):
        with pytest.raises(KitError, match=words):
            moves(name, up=1 * cm).result(attempt(left))


def test_the_proof_without_its_notes(keys: list[Any]) -> None:
    note, error = SimpleNamespace(level="note"), SimpleNamespace(level="error")
    assert passes_proof().result(attempt(Draft(), findings=(note,))).met
    assert not passes_proof().result(attempt(Draft(), findings=(note, error))).met
    assert keys[-1][1]["count"] == 1


@pytest.mark.parametrize("size", [0, -1 * cm, 2])
def test_what_is_no_length_to_ask_for(size: Any) -> None:
    for goal in (grows, shrinks, is_length, at_least, at_most):
        with pytest.raises(KitError):
            goal("front.side", size)


# ---- time marks of films ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("mark", "found"),
    [
        ("3:20", 200.0),
        ("0:00", 0.0),
        ("3:59.5", 239.5),
        ("1:02:10", 3730.0),
        ("95:00", 5700.0),
        ("100:00", 6000.0),
        (200, 200.0),
        (0, 0.0),
        ("200", 200.0),
        ("3:60", None),
        ("1:60:00", None),
        ("100:60", None),
        ("3.20", None),
        (-1, None),
        (float("inf"), None),
        (True, None),
        ("", None),
    ],
)
def test_time_marks(mark: Any, found: float | None) -> None:
    if found is None:
        with pytest.raises(KitError, match="not a time in a film"):
            seconds(mark, "Film")
    else:
        assert seconds(mark, "Film") == found
