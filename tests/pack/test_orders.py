"""Orders and how many are tried: the same every time, however quick the machine."""

from __future__ import annotations

import time
from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.pack.orders import attempts, chance, near, swapped, tries
from tests.stopped import stopped_at


@given(st.integers(1, 12), st.integers(0, 2**32))
def test_a_neighbour_holds_the_same_shapes(count: int, seed: int) -> None:
    random = chance()
    random.seed(seed)
    for move in (near, swapped):
        found = move(range(count), random)
        assert sorted(found) == list(range(count))
        if move is swapped:
            assert sum(one != other for one, other in zip(found, range(count), strict=True)) in (0, 2)


def test_both_moves_of_a_neighbour_turn_up() -> None:
    random = chance()
    found = {near(range(4), random) for _ in range(300)}
    assert (0, 2, 1, 3) in found, "neighbours changed about"
    assert (3, 1, 2, 0) in found, "changed about over a distance"
    assert (1, 2, 3, 0) in found, "taken to another place"


def test_every_search_draws_the_same() -> None:
    assert [chance().random() for _ in range(3)] == [chance().random()] * 3


def test_tries_follow_from_the_number_of_shapes() -> None:
    assert [tries(600, shapes, 3) for shapes in (0, 1, 14, 200, 601)] == [600, 600, 42, 3, 3]


def test_each_plan_once_and_only_when_the_last_is_done() -> None:
    done: list[int] = []

    def plans() -> Iterator[int]:
        yield 1
        yield len(done) + 10
        yield 1
        yield len(done) + 20

    for plan in attempts(plans()):
        done.append(plan)
    assert done == [1, 11, 22]


def test_a_pause_before_each_try_and_no_look_at_the_clock(monkeypatch: pytest.MonkeyPatch) -> None:
    def clock(*_: object) -> float:
        raise AssertionError("a search looks at no clock")

    for name in ("time", "monotonic", "perf_counter", "process_time", "thread_time"):
        monkeypatch.setattr(time, name, clock)
    done = []
    with stopped_at(3):
        for plan in attempts([5, 6, 6, 7, 8]):
            done.append(plan)
    assert done == [5, 6]
