"""Ranges tried: where they fail is known by arithmetic for a slit on a side seam of known length."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from kit import KitError, Lesson, bodice_block, cm, mm, open_lesson, workshop_chart
from kit.booklet.ranged import Ranges, told
from kit.proof import prove
from kit.proof.ranges import Mixture, mixtures, reaches
from kit.ranges_cli import report
from kit.resources import examples
from tests.example import GARMENTS

HELD = {"dune_skirt": 0.99, "ferry_tote": 1.0, "lantern_bag": 1.0}
"""Examples that are tried in three sizes, with the share of mixtures that must be sound."""
LONG = ("tideline_wrap_top", "neap_tide_wrap", "harbour_jacket")
"""Examples whose sliders take minutes to try one by one; `lessonkit check --ranges` does."""


def vest(most: float) -> Lesson:
    """A point `down` the side seam, which is as long as it is: a value beyond its end is refused."""
    lesson = Lesson("Vest", start=bodice_block)
    lesson.length("down", 5 * cm, least=0 * cm, most=most * cm)
    lesson.share("idle", 0.5)

    @lesson.step("Mark the side")
    def mark(front, back, down):  # type: ignore[no-untyped-def]
        front.side.at(down)
        for piece in (front, back):
            piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)

    return lesson


def side_of(size: str) -> float:
    front, _ = bodice_block(workshop_chart()[size])
    return front.edge("side").path.length


@pytest.mark.parametrize("size", ["W1", "W10"])
def test_the_edge_is_found_to_a_step_of_the_slider(size: str) -> None:
    lesson = vest(60)
    down, idle = reaches(lesson.definition, workshop_chart()[size], lesson.values)
    assert idle.whole and (idle.least, idle.most) == (0.0, 1.0)
    assert down.least == 0.0 and down.most is not None
    assert down.most <= side_of(size) < down.most + 1.0
    assert all(value > down.most for value, _ in down.failing) and "side" in down.failing[0][1]


def test_a_range_that_holds_is_whole() -> None:
    lesson = vest(20)
    assert all(reach.whole for reach in reaches(lesson.definition, workshop_chart()["W4"], lesson.values))


def test_a_lesson_that_fails_as_it_stands_is_told_for_every_slider() -> None:
    lesson = vest(60)
    found = list(reaches(lesson.definition, workshop_chart()["W4"], {"down": 590.0}))
    assert [(reach.least, reach.tried) for reach in found] == [(None, 1)] * 2 and found[0].failing[0][0] == 590.0


def test_a_lesson_that_fails_as_it_stands_is_told_once_and_no_mixture_is_mended() -> None:
    """As a block's own lesson does, which has no allowances yet: what is wrong is not the ranges."""
    lesson = Lesson.of(bodice_block)
    portions = [told(lesson, number) for number in (3, 10)]
    found = Ranges("Bodice", "cm", ("W1", "W4"), portions[0].reaches, portions[1].mixtures)
    assert found.stuck and not found.hold and len(found.mixtures) == 25
    assert all(mixture.trouble and mixture.mended is None for mixture in found.mixtures)
    lines = report(found)
    assert lines[0] == "The lesson fails in every size, each value where the lesson puts it; mend that first."
    assert lines[1].startswith("  In W4: ") and "has no allowance" in lines[1]
    assert len(lines) <= 6 and not any("a change of values mends it" in line for line in lines)


def test_mixtures_fail_as_often_as_the_range_is_too_wide() -> None:
    """Of values spread evenly over 0 to 60 cm those beyond the side seam fail: counted one by one."""
    lesson, body = vest(60), workshop_chart()["W4"]
    drawn = list(mixtures(lesson.definition, body, 60, mend=True))
    beyond = [dict(mixture.values)["down"] > side_of("W4") for mixture in drawn]
    assert [bool(mixture.trouble) for mixture in drawn] == beyond and 5 < sum(beyond) < 55
    assert all(mixture.mended for mixture in drawn if mixture.trouble)
    assert [mixture.values for mixture in mixtures(lesson.definition, body, 60)] == [m.values for m in drawn]


def test_the_report_names_slider_sizes_bounds_and_cause() -> None:
    lesson = vest(60)
    portions = [told(lesson, number) for number in (0, 3, 10, 11)]
    found = Ranges(
        "Vest",
        "cm",
        portions[0].sizes,
        tuple(reach for portion in portions for reach in portion.reaches),
        tuple(mixture for portion in portions for mixture in portion.mixtures),
    )
    lines = report(found)
    assert lines[0].startswith("Down, from 0 mm") and "W1, W4" in lines[0]
    least = int(min(side_of("W1"), side_of("W4"))) / 10
    assert f"to {least:g} cm" in lines[1] and not found.hold
    assert any(line.startswith(f"Of 50 settings drawn at random {found.sound} are sound") for line in lines)
    assert lines[-1] == "Vest: the ranges do not hold."


def test_a_draft_that_takes_its_time_is_not_out_of_range() -> None:
    """A busy machine must not make a range too wide: the lesson's own limit would stop this one."""
    import time

    lesson = Lesson("Slow", start=bodice_block, time_limit=0.1)
    lesson.length("down", 5 * cm, least=0 * cm, most=20 * cm)

    @lesson.step("Mark the side")
    def mark(front, back, down):  # type: ignore[no-untyped-def]
        time.sleep(0.25)
        for piece in (front, back):
            piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)

    with pytest.raises(KitError, match="stopped"):
        lesson.work(body=workshop_chart()["W4"])
    (mixture,) = mixtures(lesson.definition, workshop_chart()["W4"], 1)
    assert mixture.drafted and not mixture.trouble


def test_a_setting_that_nothing_mends_is_told_with_its_values() -> None:
    """One of a hundred that fails is let pass where it can be mended, and not where it cannot."""
    (down, idle) = reaches(vest(20).definition, workshop_chart()["W4"], {})
    sound = tuple(Mixture("W4", ()) for _ in range(99))
    wrong = Mixture("W4", (("down", 150.0), ("idle", 0.25)), "too long", mended=True)
    found = Ranges("Vest", "cm", ("W4",), (down, idle), (*sound, wrong))
    assert found.hold and not any("Nothing mends" in line for line in report(found))
    lost = replace(found, mixtures=(*sound, replace(wrong, mended=False)))
    assert not lost.hold
    (line,) = [line for line in report(lost) if "Nothing mends" in line]
    assert "in W4: down 15 cm (5 7/8 in), idle 25%" in line and line.endswith("too long")
    unasked = replace(found, mixtures=(*sound, replace(wrong, mended=None)))
    assert unasked.hold


@pytest.mark.slow
@pytest.mark.parametrize(("name", "least"), HELD.items())
def test_examples_hold(name: str, least: float) -> None:
    """Every slider alone in the smallest, the middle and the largest size, and mixtures."""
    lesson = open_lesson(examples() / f"{name}.ipynb")
    number = len(told(lesson, 0).sizes)
    for portion in {0, number // 2, number - 1}:
        failing = [reach for reach in told(lesson, portion).reaches if not reach.whole]
        assert not failing, [(reach.size, reach.parameter.name, reach.failing) for reach in failing]
    tried = [mixture for portion in (10, 11, 12) for mixture in told(lesson, portion).mixtures]
    assert sum(not mixture.trouble for mixture in tried) >= least * len(tried)
    assert all(mixture.mended for mixture in tried if mixture.trouble)


@pytest.mark.slow
@pytest.mark.parametrize("name", [name for name in GARMENTS if name not in HELD and name not in LONG])
def test_the_other_examples_hold_in_one_size(name: str) -> None:
    """Every slider alone in the middle size, or the only one; `lessonkit check --ranges` tries the others."""
    lesson = open_lesson(examples() / f"{name}.ipynb")
    found = told(lesson, 3).reaches or told(lesson, 0).reaches
    assert len(found) >= 5
    failing = [reach for reach in found if not reach.whole]
    assert not failing, [(reach.size, reach.parameter.name, reach.failing) for reach in failing]


@pytest.mark.parametrize("name", GARMENTS)
def test_examples_are_sound_from_the_smallest_to_the_largest_size(name: str) -> None:
    lesson = open_lesson(examples() / f"{name}.ipynb")
    names = lesson.sizes.names
    for size in {names[0], names[len(names) * 2 // 3], names[-1]}:
        found = [str(each) for each in prove(lesson.work(lesson.sizes[size])) if each.level != "note"]
        assert not found, (size, found)


def test_the_command_says_whether_they_hold(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    import nbformat

    from kit.cli import main

    source = (
        "from kit import Lesson, blank_paper, cm, mm\n"
        'lesson = Lesson("Flag", start=blank_paper)\n'
        'lesson.length("long", 30 * cm, least=1 * cm, most=40 * cm)\n'
        '@lesson.step("Rule it", makes="flag")\n'
        "def rule(flag, long):\n"
        '    """Rule it {long} long."""\n'
        "    a, b = flag.place(0 * mm, 0 * mm), flag.place(long, 0 * mm)\n"
        "    c, d = flag.place(long, 10 * cm), flag.place(0 * mm, 10 * cm)\n"
        "    flag.draw(bottom=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))\n"
        "    flag.leave_open('slit', 'bottom', at=0 * mm, size=5 * cm)\n"
        "    flag.allow(bottom=1 * cm, right=1 * cm, top=1 * cm, left=1 * cm)\n"
        "    flag.cut(1, title='Flag')\n"
    )
    path = tmp_path / "flag.ipynb"
    nbformat.write(nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(source)]), path)
    assert main(["check", str(path), "--ranges"]) == 1
    said = capsys.readouterr().out
    assert "Long, from 1 cm" in said and "It would hold from 5" in said
    assert "Flag: the ranges do not hold." in said
