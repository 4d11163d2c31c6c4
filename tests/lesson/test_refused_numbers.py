"""The numbers in what a refusal says: what was given, what there is, what would do. On pieces of straight lines."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson import lining, moves, pleating, shaping, slash
from kit.lesson.bench import BenchPiece
from kit.lesson.bench_strip import BenchStrip
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Edge, Piece
from kit.units import cm, mm


def panel(**more: Any) -> Piece:
    """A panel 300 wide and 500 high: hem, side, waist, centre, going round to the left."""
    at = [Point(0, 0), Point(300, 0), Point(300, 500), Point(0, 500)]
    names = ("hem", "side", "waist", "centre")
    edges = tuple(Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, at, [*at[1:], at[0]], strict=True))
    return replace(Piece("skirt", "Skirt", edges), **more)


def bench() -> Any:
    return BenchPiece(panel())


def strip() -> Any:
    return BenchStrip("tie", "Tie", (1400.0,))


DARTED = panel(darts=(Dart("dart", "waist", Point(150, 380), 140.0, 160.0),))

REFUSED: list[tuple[Callable[[], Any], tuple[str, ...]]] = [
    (lambda: bench().hem.at(31 * cm), ("30 cm", "31 cm")),
    (lambda: bench().hem.share(1.2), ("1.2",)),
    (lambda: bench().hem.at(-2 * cm), ("2 cm",)),
    (lambda: bench().notch("hem", 31 * cm), ("31 cm", "30 cm")),
    (lambda: bench().leave_open("slit", "hem", at=25 * cm, size=6 * cm), ("25 cm", "31 cm", "30 cm")),
    (
        lambda: bench().buttonholes("centre", inside=1 * cm, first=3 * cm, last=51 * cm, count=2, slit=1 * cm),
        ("3 cm", "51 cm", "50 cm"),
    ),
    (
        lambda: bench().buttonholes("centre", inside=1 * cm, first=3 * cm, last=9 * cm, count=1, slit=1 * cm),
        ("6 cm",),
    ),
    (
        lambda: bench().buttonholes(
            "centre", inside=2 * cm, first=3 * cm, last=9 * cm, count=3, slit=4 * cm, lie="vertical"
        ),
        ("4 cm", "3 cm"),
    ),
    (lambda: moves.add_dart(panel(), "dart", "waist", at=150, intake=0, apex=Point(150, 300)), ("2.5 cm",)),
    (
        lambda: moves.add_dart(panel(), "dart", "waist", at=20, intake=50, apex=Point(150, 300)),
        ("5 cm", "2 cm", "30 cm"),
    ),
    (lambda: moves.shorten_dart(DARTED, "dart", 100.0), ("12 cm", "10 cm")),
    (lambda: moves.dart_to_fullness(DARTED, "dart", "gathers", 15.0), ("2 cm", "1.5 cm")),
    (lambda: moves.move_dart(DARTED, "dart", "side", 200.0, share=1.5), ("1.5",)),
    (lambda: pleating.add_pleat(panel(), "p", ("waist", 100.0), ("hem", 200.0), 0.0), ("3 cm",)),
    (
        lambda: pleating.add_pleat(panel(), "t", ("waist", 100.0), ("hem", 200.0), 10.0, kind="tuck", sewn=510.0),
        ("50 cm", "51 cm"),
    ),
    (lambda: pleating.add_pleat(panel(), "p", ("waist", 100.0), ("waist", 200.0), 30.0), ("waist",)),
    (lambda: slash.on_edge(panel(), "side", 520.0), ("52 cm", "50 cm")),
    (lambda: slash.on_edge(DARTED, "waist", 150.0), ("15 cm",)),
    (lambda: shaping.lower_neckline(panel(), 600.0, edge="waist"), ("50 cm",)),
    (lambda: lining.shortened(panel(), "hem", 600.0), ("60 cm", "50 cm")),
    (lambda: bench().finish_corner("hem", "side", "rounded", size=5 * mm), ("5 mm", "1 cm")),
    (lambda: bench().finish_corner("hem", "side", "clipped", size=40 * cm), ("40 cm",)),
    (lambda: bench().finish_corner("hem", "side", "turned", folds=(0, 2 * cm)), ("2 cm", "1 cm")),
    (lambda: strip().fold_in_four(finished_length=0, finished_width=3 * cm), ("0 mm", "3 cm")),
]


@pytest.mark.parametrize(("write", "numbers"), REFUSED, ids=range(len(REFUSED)))
def test_a_refusal_names_its_numbers(write: Callable[[], Any], numbers: tuple[str, ...]) -> None:
    with pytest.raises(KitError) as error:
        write()
    for number in numbers:
        assert number in str(error.value)


@pytest.mark.parametrize("count", [1, 3])
def test_a_strips_ends_are_added_twice(count: int) -> None:
    """An end of 2 cm at each short end; a band has its allowance there."""
    made = strip()
    made.fold_in_four(finished_length=50 * cm, finished_width=1 * cm, ends=2 * cm, count=count)
    assert (made.freeze().length, made.freeze().width, made.freeze().count) == (540.0, 40.0, count)
    made.fold_in_two(finished_length=50 * cm, finished_width=2 * cm, allowance=1 * cm, ends=2 * cm)
    assert (made.freeze().length, made.freeze().width) == (540.0, 60.0)
    made.band(finished_length=70 * cm, finished_width=3 * cm, allowance=1 * cm, overlap=3 * cm)
    assert (made.freeze().length, made.freeze().width, made.freeze().finished_length) == (750.0, 80.0, 730.0)
    made.bind(finished_length=70 * cm, finished_width=1 * cm)
    assert (made.freeze().length, made.freeze().width, made.freeze().grain) == (700.0, 40.0, "bias")
    made.bind(finished_length=70 * cm, finished_width=1 * cm, double=True, ends=1 * cm)
    assert (made.freeze().length, made.freeze().width) == (720.0, 60.0)


@pytest.mark.parametrize(
    ("given", "allowance", "how"),
    [({}, 10.0, "straight"), ({"allowance": 8 * mm}, 8.0, "straight"), ({"how": "diagonal"}, 10.0, "diagonal")],
)
def test_joins_where_nothing_is_said(given: dict[str, Any], allowance: float, how: str) -> None:
    """1 cm on the straight grain and 6 mm on the bias (common practice, no source)."""
    made = strip()
    made.fold_in_two(finished_length=150 * cm, finished_width=2 * cm, allowance=1 * cm)
    made.join(longest=100 * cm, **given)
    assert (made.freeze().joins, made.freeze().join_allowance, made.freeze().join) == (1, allowance, how)
    bias = strip()
    bias.bind(finished_length=150 * cm, finished_width=1 * cm)
    bias.join(longest=100 * cm)
    assert (bias.freeze().join_allowance, bias.freeze().join) == (6.0, "diagonal")
    if how == "straight":
        assert 2 * made.freeze().each == pytest.approx(1500.0 + 2 * allowance)


def test_the_sizes_of_a_strip_are_written_by_name() -> None:
    """They are all lengths, so nobody could tell them apart by their place."""
    for verb in (BenchStrip.fold_in_four, BenchStrip.fold_in_two, BenchStrip.band, BenchStrip.bind, BenchStrip.join):
        with pytest.raises(KitError, match="is given 1 argument without a name and takes 0"):
            verb(strip(), 5 * cm)  # type: ignore[call-arg,arg-type]
    with pytest.raises(KitError, match="is given 1 argument without a name and takes 0"):
        strip().from_square(5 * cm)
