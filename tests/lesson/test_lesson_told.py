"""A whole lesson by hand, a half apron with a tie: what is drafted in each step, told by each measure, sewn and
measured, with its own values and with others; and what a variation of it is.

Half the apron is an oblong: `width` wide and `long` long, its hem raised by `rise` at the side. So every length in
`apron_*.txt` can be worked out by hand, and was read so.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields
from pathlib import Path
from typing import Any

import pytest

from kit.blocks.blank import blank_paper
from kit.lesson.goals import at_least, at_most, grows, is_length, keeps, moves, passes_proof, shrinks
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.units import cm, mm
from tests.told import Kept, told, usual

HERE = Path(__file__).parent


def apron() -> Lesson:
    lesson = Lesson(
        "Half apron",
        start=blank_paper,
        units="inch",
        edition="2",
        date="2026-11-30",
        author="A. Sewer",
        cloth="twill",
        cloth_widths=["140 cm", "150 cm"],
        notions=["thread"],
        level="first",
        shrinkage=0.03,
        handling=["curve"],
    )
    lesson.length("width", 30 * cm, least=20 * cm, most=40 * cm, why="half of it", said="half width")
    lesson.length("long", 50 * cm, least=30 * cm, most=70 * cm, at_least=lambda width: width + 5 * cm)
    lesson.share("rise", 0.1, least=0.0, most=0.3, why="how far the hem rises", at_most=lambda loops: 0.1 * loops)
    lesson.count("loops", 2, least=1, most=4)
    lesson.preset("Long", long=65 * cm, rise=0.2)

    @lesson.step("Draw the apron", makes="apron")
    def draw(apron, width, long, rise):
        """Rule the centre {long} long and the waist {width} wide. The hem rises by {rise} of the length."""
        low = apron.place(0, 0)
        high = low.up(long)
        corner = high.out(width)
        out = corner.down(float(long) * (1 - float(rise)) * mm)
        apron.draw(centre=low.to(high), waist=high.to(corner), side=corner.to(out), hem=out.to(low))
        apron.mark(corner=corner)
        apron.say(hem="lower edge")

    @lesson.step("Lower the side")
    def lower(apron):
        """A little longer."""
        apron.guide(old_hem=apron.hem.parallel(2 * cm, "up"))
        apron.notch("side", at=10 * cm)
        apron.mark_line("fold line", apron.old_hem)

    @lesson.step("Allowances and cutting")
    def finish(apron):
        """Add what is sewn: {waist_allowance} above."""
        apron.allow(waist=1 * cm, side=2 * cm, hem=3 * cm)
        apron.cut(1, fold="centre")
        apron.grain(along=apron.centre)

    @lesson.step("Cut the tie", strips="tie")
    def tie(tie, width):
        """One tie."""
        tie.fold_in_four(finished_length=width * 3, finished_width=2 * cm, count=2)

    @lesson.sew("Hem it")
    def hem_it(make, apron):
        """Press well."""
        make.hem(apron.side, first=1 * cm, second=1 * cm)
        make.hem(apron.hem, first=1 * cm, second=2 * cm)

    @lesson.sew("Tie", words="after")
    def bind_it(make, apron, tie):
        """Tie it round."""
        make.fold_strip(tie)

    @lesson.finished("Length", over="hip_girth")
    def length(apron):
        return apron.centre.length

    return lesson


def described(pattern: Pattern) -> Iterator[str]:
    for value in pattern.values:
        yield f"value {told(value)}"
    for each in fields(pattern):
        if each.name in ("finished", "over", "tries", "strips"):
            yield f"{each.name} {told(getattr(pattern, each.name))}"
    for record in (*pattern.steps, *pattern.sewing):
        yield f"step {record.key}: {record.title}"
        for each in fields(record):
            value = getattr(record, each.name)
            if each.name in ("cell", "pieces", "key", "title") or usual(each, value):
                continue
            yield from _rows(f"  {each.name}", value)
    for piece in pattern.pieces:
        yield f"piece {piece.name}"
        for each in fields(piece):
            if not usual(each, getattr(piece, each.name)):
                yield from _rows(f"  {each.name}", getattr(piece, each.name))


def _rows(name: str, value: Any) -> Iterator[str]:
    if isinstance(value, tuple):
        yield from (f"{name} {told(one)}" for one in value)
    else:
        yield f"{name} {told(value)}"


CHANGES = {
    "its own values": {},
    "long": {"long": 65 * cm, "rise": 0.2},
    "level": {"rise": 0.0},
}


@pytest.fixture
def lesson() -> Lesson:
    return apron()


@pytest.mark.parametrize("name", CHANGES)
def test_what_is_drafted_sewn_and_measured(lesson: Lesson, name: str) -> None:
    lesson.change(**CHANGES[name])  # type: ignore[arg-type]
    found = "\n".join(described(lesson.work()))
    Kept(HERE / f"apron_{name.replace(' ', '_')}.txt").holds({name: found})


def test_what_it_says_of_itself(lesson: Lesson) -> None:
    lesson.exercise(
        "Longer",
        "Make it longer.",
        goals=[
            grows("apron.centre", 5 * cm),
            shrinks("apron.side", 1 * cm, within=2 * mm),
            keeps("apron.waist"),
            is_length("Length", 55 * cm),
            at_least("apron.hem", 20 * cm),
            at_most("apron.hem", 40 * cm),
            moves("apron.corner", up=5 * cm, out=1 * cm),
            passes_proof(),
        ],
        hints=["Try the length."],
        answer={"long": 55 * cm},
    )
    lesson.fitting("First try", "Too short.", date="2026-11-29", long=(45 * cm, 50 * cm))
    lesson.video("https://example.org/film", draw="1:02", hem_it="1:02:10", tie=75)
    definition = lesson.definition
    lines = []
    for each in fields(definition):
        if each.name not in ("start", "sizes"):
            lines += _rows(each.name, getattr(definition, each.name))
    Kept(HERE / "apron_itself.txt").holds({"definition": "\n".join(lines)})


def test_a_variation_of_it(lesson: Lesson) -> None:
    long = lesson.variation("Long apron", level="second", cloth="linen")

    @long.step("Draw the apron", makes="apron")
    def draw(apron, width, long):
        """Rule it {long} long."""
        low = apron.place(0, 0)
        high = low.up(long + 10 * cm)
        corner = high.out(width)
        apron.draw(
            centre=low.to(high), waist=high.to(corner), side=corner.to(low.out(width)), hem=low.out(width).to(low)
        )

    @long.step("Mark the middle", after="draw")
    def middle(apron):
        """Halfway down the side."""
        apron.notch("side", at=30 * cm)

    long.remove("bind_it", "tie")
    assert [entry.name for entry in long.definition.entries] == [
        "draw", "middle", "lower", "finish", "hem_it", "length",
    ]  # fmt: skip
    assert [entry.name for entry in lesson.definition.entries] == [
        "draw", "lower", "finish", "tie", "hem_it", "bind_it", "length",
    ]  # fmt: skip
    found = {"worked": "\n".join(described(long.work())), "of itself": told(long.definition.info)}
    Kept(HERE / "apron_variation.txt").holds(found)


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"long": 29 * cm}, ("long", "30 cm")),
        ({"long": 71 * cm}, ("long", "70 cm")),
        ({"rise": 0.31}, ("rise", "30")),
        ({"loops": 5}, ("loops", "4")),
        ({"loops": 0}, ("loops", "1")),
        ({"wide": 5}, ("wide", "width")),
    ],
)
def test_values_outside_their_range_are_refused_by_name_and_limit(lesson: Lesson, values, words) -> None:
    before = lesson.values
    with pytest.raises(ValueError) as refused:
        lesson.change(**values)
    assert all(word in str(refused.value) for word in words), str(refused.value)
    assert lesson.values == before


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"long": 34 * cm}, ("long", "35 cm")),  # at least the width and 5 cm
        ({"rise": 0.21}, ("rise", "20")),  # at most a tenth for each loop
    ],
)
def test_bounds_that_follow_from_other_values(lesson: Lesson, values, words) -> None:
    lesson.change(**values)
    with pytest.raises(ValueError) as refused:
        lesson.work()
    assert all(word in str(refused.value) for word in words), str(refused.value)


def test_values_just_within_their_bounds_are_drafted(lesson: Lesson) -> None:
    for values in ({"long": 35 * cm, "rise": 0.2}, {"long": 70 * cm, "rise": 0.3, "loops": 3}):
        lesson.change(**values)
        assert lesson.work().finished[0][1] == pytest.approx(float(values["long"]))  # type: ignore[arg-type]


def test_a_preset_sets_every_value_and_reset_puts_them_back(lesson: Lesson) -> None:
    lesson.change(width=25 * cm)
    lesson.use_preset("Long")
    assert lesson.values == {"width": 300.0, "long": 650.0, "rise": 0.2, "loops": 2}
    lesson.reset()
    assert lesson.values == {"width": 300.0, "long": 500.0, "rise": 0.1, "loops": 2}
    with pytest.raises(ValueError, match="Did you mean 'Long'"):
        lesson.use_preset("Longe")


def test_a_fitting_is_begun_and_dropped(lesson: Lesson) -> None:
    lesson.change(long=60 * cm)
    lesson.begin_fitting("First try")
    lesson.change(long=65 * cm, width=25 * cm)
    lesson.drop_fitting()
    assert lesson.values["long"] == 600.0 and lesson.values["width"] == 300.0
    with pytest.raises(ValueError, match="no fitting has been begun"):
        lesson.keep_fitting("why")
    with pytest.raises(ValueError, match="needs a title"):
        lesson.begin_fitting(" ")
