"""Strips worked out on the bench: sizes as cut, joins, continuous bias, and what is refused."""

from __future__ import annotations

import math

import pytest

from kit.errors import KitError
from kit.lesson.bench_strip import BenchStrip
from kit.piece.strips import bias_across, continuous_bias
from kit.units import cm, mm


def strip(*widths: float) -> BenchStrip:
    return BenchStrip("belt", "Belt", widths)


def test_sizes_as_cut() -> None:
    """Common practice, no source."""
    four, two, band, single, double = (strip() for _ in range(5))
    four.fold_in_four(finished_length=70 * cm, finished_width=15 * mm, ends=1 * cm)
    two.fold_in_two(finished_length=70 * cm, finished_width=3 * cm, allowance=1 * cm, ends=1 * cm, count=2)
    band.band(finished_length=72 * cm, finished_width=4 * cm, allowance=1 * cm, overlap=3 * cm)
    single.bind(finished_length=60 * cm, finished_width=1 * cm)
    double.bind(finished_length=60 * cm, finished_width=6 * mm, double=True, ends=1 * cm, cloth="lining")
    sizes = [(s.length, s.width, s.fold, s.grain) for s in (x.freeze() for x in (four, two, band, single, double))]
    assert sizes == [
        (720.0, 60.0, "in_four", "lengthwise"),
        (720.0, 80.0, "in_two", "lengthwise"),
        (770.0, 100.0, "band", "lengthwise"),
        (600.0, 40.0, "single_binding", "bias"),
        (620.0, 36.0, "double_binding", "bias"),
    ]
    assert two.freeze().count == 2 and double.freeze().cloth == "lining"
    assert two.freeze().width / 2 - 10.0 == two.freeze().finished_width


def test_sizes_as_cut_are_given_and_what_is_finished_follows() -> None:
    """Worked by hand from the same rules: a quarter; half less the allowance; an allowance all round; a quarter; less
    four turns."""
    four, two, band, single, hem = (strip() for _ in range(5))
    four.fold_in_four(cut_length=72 * cm, cut_width=6 * cm, ends=1 * cm)
    two.fold_in_two(cut_length=72 * cm, cut_width=8 * cm, allowance=1 * cm, ends=1 * cm)
    band.band(cut_length=77 * cm, cut_width=10 * cm, allowance=1 * cm, overlap=3 * cm)
    single.bind(finished_length=60 * cm, cut_width=4 * cm)
    hem.hemmed(cut_length=102 * cm, cut_width=12 * cm, turn=5 * mm)
    made = [each.freeze() for each in (four, two, band, single, hem)]
    assert [(s.length, s.width) for s in made] == [(720, 60), (720, 80), (770, 100), (600, 40), (1020, 120)]
    assert [(s.finished_length, s.finished_width) for s in made] == [
        (700, 15),
        (700, 30),
        (750, 40),
        (600, 10),
        (1000, 100),
    ]
    assert made[-1].fold == "hemmed"
    end = strip()
    end.hemmed(finished_length=100 * cm, finished_width=10 * cm, turn=5 * mm, ends=1 * cm)
    assert (end.freeze().length, end.freeze().width) == (1020, 120)


@pytest.mark.parametrize(
    ("sizes", "words"),
    [
        ({"cut_length": 50 * cm}, "its width is not given"),
        ({"cut_length": 50 * cm, "finished_length": 50 * cm, "cut_width": 6 * cm}, "its length is given twice"),
        ({"cut_length": 1 * cm, "cut_width": 6 * cm, "ends": 1 * cm}, "needs a length and a width"),
    ],
)
def test_each_size_is_given_once(sizes, words: str) -> None:
    with pytest.raises(KitError, match=words):
        strip().fold_in_four(**sizes)


def test_long_strips_are_pieced_by_what_the_cloth_gives() -> None:
    across = strip(1400.0, 1120.0)
    across.fold_in_four(finished_length=200 * cm, finished_width=2 * cm, ends=1 * cm, grain="crosswise", count=2)
    made = across.freeze()
    # 1120 mm less two selvedges of 10 mm; a straight join takes two allowances of 10 mm.
    assert (made.joins, made.pieces, made.each) == (1, 4, (2020.0 + 20.0) / 2)
    assert made.each <= 1100.0
    down = strip(1120.0)
    down.fold_in_four(finished_length=200 * cm, finished_width=2 * cm)
    assert down.freeze().joins == 0
    bias = strip(1120.0)
    bias.bind(finished_length=250 * cm, finished_width=1 * cm)
    made = bias.freeze()
    assert made.joins == 1 and made.join == "diagonal" and made.each <= bias_across(1120.0)
    assert 2 * made.each - 2 * math.sqrt(2) * 6.0 == pytest.approx(2500.0)


def test_joins_as_the_teacher_says() -> None:
    tie = strip()
    tie.fold_in_four(finished_length=250 * cm, finished_width=1 * cm)
    tie.join(longest=90 * cm, allowance=5 * mm, how="diagonal")
    made = tie.freeze()
    # Square ends laid corner on corner take the width of 40 mm each time.
    assert (made.joins, made.join) == (2, "diagonal") and 3 * made.each - 2 * 40.0 == pytest.approx(2500.0)


def test_one_continuous_strip_from_a_square() -> None:
    binding = strip(1400.0)
    binding.bind(finished_length=150 * cm, finished_width=1 * cm, count=2)
    binding.from_square(allowance=6 * mm)
    made = binding.freeze()
    assert made.square % 10 == 0 and made.joins == 0
    assert continuous_bias(made.square, made.square, 40.0, 6.0) >= 3000.0
    assert continuous_bias(made.square - 20, made.square - 20, 40.0, 6.0) < 3000.0


def test_what_is_refused() -> None:
    for wrong, words in (
        (lambda s: s.fold_in_four(finished_length=0, finished_width=1 * cm), "needs a length and a width"),
        (lambda s: s.fold_in_four(finished_length=-5 * cm, finished_width=1 * cm), "less than nothing"),
        (lambda s: s.fold_in_two(finished_length=50 * cm, finished_width=1 * cm, allowance=0), "no allowance"),
        (lambda s: s.bind(finished_length=50 * cm, finished_width=1 * cm, count=0), "0 cannot be cut"),
        (lambda s: s.bind(finished_length=50 * cm, finished_width=1 * cm, grain="biass"), "Did you mean 'bias'"),
        (lambda s: s.bind(finished_length=50 * cm, finished_width=1 * cm, cloth="wool"), "not a cloth"),
        (lambda s: s.bind(finished_length=50, finished_width=1 * cm), "50 has no unit"),
        (lambda s: s.join(longest=0 * cm), "pieces need a length"),
        (lambda s: s.join(how="zigzag"), "not joined 'zigzag'"),
    ):
        with pytest.raises(KitError, match=words) as error:
            wrong(strip())
        assert error.value.do
    straight = strip()
    straight.fold_in_four(finished_length=50 * cm, finished_width=1 * cm)
    straight.from_square()
    with pytest.raises(KitError, match="cut lengthwise"):
        straight.freeze()
    eaten = strip()
    eaten.fold_in_four(finished_length=50 * cm, finished_width=1 * cm)
    eaten.join(longest=15 * mm, allowance=1 * cm)
    with pytest.raises(KitError, match="used up by joins"):
        eaten.freeze()
