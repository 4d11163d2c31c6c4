"""Live values in a teacher's words: what may be named, how it is shown, what is refused."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from kit.booklet import live_values
from kit.booklet.fetch import LessonFolder
from kit.booklet.live_values import Live, fill_title, first_words, live
from kit.booklet.words import fill_markdown, fill_text, to_html
from kit.errors import KitError
from kit.lesson.another import open_lesson
from kit.lesson.pattern import Pattern
from kit.placeholder import name_of
from tests.example import EXAMPLE


@pytest.fixture(scope="module")
def pattern() -> Pattern:
    lesson = open_lesson(EXAMPLE)
    lesson.reset()
    return lesson.work(body=lesson.sizes["W4"])  # type: ignore[no-any-return]


@pytest.fixture
def known(pattern: Pattern, monkeypatch: pytest.MonkeyPatch) -> Live:
    def say(key: str, **values: int) -> str:
        assert key == "booklet.in_step"
        return f"step {values['number']}"

    monkeypatch.setattr(live_values, "say", say)
    return live(pattern)


Fill = Callable[[str], str]


@pytest.fixture
def fill(known: Live, tmp_path: Path) -> Fill:
    return lambda source: str(fill_markdown(source, known, LessonFolder(tmp_path)))


def test_parameters_body_and_finished_measurements(fill: Fill, pattern: Pattern) -> None:
    value = next(value for value in pattern.values if value.kind == "length")
    html = fill(f"Move it {{{value.name}}}, or {{{value.name}:cm}}.")
    assert f"{value.value / 10:g} cm (" in html and "{" not in html
    assert "bust" not in fill("{bust_girth}") and " cm (" in fill("{bust_girth}")
    title, mm = pattern.finished[0]
    shown = fill(f"It is {{{name_of(title)}}} long.")
    assert f"{round(mm / 5) * 0.5:g} cm (" in shown


def test_a_finished_measurement_is_named_by_its_title() -> None:
    assert name_of("Finished length, at the back") == "finished_length_at_the_back"
    assert name_of("2nd hem") == "_2nd_hem"


def test_references_are_links(fill: Fill, pattern: Pattern) -> None:
    step, sewn = pattern.steps[1], pattern.sewing[0]
    assert f'<a class="ref" href="#step-{step.key}">step 2</a>' in fill(f"See {{{step.key}:step}}.")
    number = len(pattern.steps) + 1
    assert f'<a class="ref" href="#step-{sewn.key}">step {number}</a>' in fill(f"{{{sewn.key}:step}}")
    front = pattern.piece("front")
    assert f'<a class="ref" href="#piece-front">{front.number} {front.title}</a>' in fill("{front:piece}")


def test_numbers_may_be_the_booklets_own(pattern: Pattern, known: Live, tmp_path: Path) -> None:
    key = pattern.steps[0].key
    other = live(pattern, {key: 41})
    assert "step 41" in fill_markdown(f"{{{key}:step}}", other, LessonFolder(tmp_path))


def test_a_link_inside_a_link_or_a_picture_is_text(fill: Fill, tmp_path: Path) -> None:
    html = fill("[see {front:piece}](https://example.org/{x}) ![{front:piece}](gone.png)")
    assert html.count("<a ") == 1 and "2 Front</a>" in html
    assert 'href="https://example.org/' in html and "picture left out" in html


def test_code_is_left_alone(fill: Fill) -> None:
    html = fill("Write `{unknown}` or ``{{x}}``.\n\n```python\nprint({'a': 1})\n```\n\n    {indented}\n")
    assert "<code>{unknown}</code>" in html and "{{x}}" in html
    assert "print({&#x27;a&#x27;: 1})" in html or "print({'a': 1})" in html
    assert "{indented}" in html


def test_braces_meant_literally(fill: Fill) -> None:
    assert fill("A set {{1, 2}} and \\{three\\}.") == "<p>A set {1, 2} and {three}.</p>\n"


@pytest.mark.parametrize("around", ["**{}**", "*{}*", "# {}", "- {}", "> {}", "|a|\n|-|\n|{}|", "~~{}~~", "x_{}_x"])
def test_values_stand_wherever_words_do(fill: Fill, around: str) -> None:
    html = fill(around.replace("{}", "{bust_girth}"))
    assert " cm (" in html and "{" not in html


def test_values_are_escaped(pattern: Pattern, tmp_path: Path) -> None:
    pieces = tuple(replace(p, title="<b>Front</b> & [x](http://a)") for p in pattern.pieces)
    known = live(replace(pattern, pieces=pieces))
    html = fill_markdown("{front:piece} <i>{front:piece}</i>", known, LessonFolder(tmp_path))
    assert "<b>" not in html and "<i>" not in html
    assert "&lt;b&gt;Front&lt;/b&gt; &amp; [x](http://a)</a>" in html


@pytest.mark.parametrize(
    ("source", "said"),
    [
        ("# The hem\n\nAdd {sleeve_lenth} there.", "Did you mean 'sleeve_length'?"),
        ("See {frnt:piece}.", "there is no piece 'frnt'. Did you mean 'front'?"),
        ("See {overam:step}.", "there is no step 'overam'."),
        ("{bust_girth:percent}", "a length cannot be shown as 'percent'"),
        ("{bust_girth.real}", "is not a name"),
        ("{__import__('os')}", "is not a name"),
        ("A brace { alone", "a brace stands alone near 'A brace { alone'"),
        ("Alone } too", "a brace stands alone"),
    ],
)
def test_what_cannot_be_filled_is_refused(fill: Fill, source: str, said: str) -> None:
    with pytest.raises(KitError) as refused:
        fill(source)
    message = str(refused.value)
    assert message.startswith(f"Words “{first_words(source)}”") and said in message
    assert "{{" in message and "}}" in message and message.count("Write {") == 1


def test_a_cell_is_named_by_its_first_words() -> None:
    assert (
        first_words("## The hem\n\nRule it straight across from side to side.")
        == "The hem Rule it straight across from …"
    )
    assert first_words("- short") == "short"
    assert len(first_words("w" * 200)) <= 48


def test_a_steps_words_name_what_the_step_uses(known: Live, pattern: Pattern, tmp_path: Path) -> None:
    folder = LessonFolder(tmp_path)
    key = pattern.steps[0].key
    html = fill_text(f"*Up* {{lift}}, as in {{{key}:step}}.", [("lift", 12.0, "length")], known, folder, "Step 'Up'")
    assert "<em>Up</em> 1.2 cm (" in html and 'class="ref"' in html
    with pytest.raises(KitError, match=r"Step 'Up': .*\{bust_girth\}"):
        fill_text("{bust_girth}", [("lift", 12.0, "length")], known, folder, "Step 'Up'")


def test_a_title_is_plain_text(known: Live, pattern: Pattern) -> None:
    assert fill_title("For {front:piece}", known) == f"For {pattern.piece('front').number} Front"
    with pytest.raises(KitError, match=r"Words “For \{frnt:piece\}”"):
        fill_title("For {frnt:piece}", known)


def test_without_a_pattern_braces_are_text(tmp_path: Path) -> None:
    assert to_html("{x} {{y}}", LessonFolder(tmp_path)) == "<p>{x} {{y}}</p>\n"
