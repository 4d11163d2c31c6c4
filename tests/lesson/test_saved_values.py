"""Values kept beside the notebook that are damaged, of another lesson, size or unit: told, never used in silence, never
lost; and values set in code that are none."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit import Lesson, blank_paper, cm
from kit.errors import KitError
from kit.language import languages, speaking
from kit.lesson import sidecar
from kit.lesson.sitting import troubles

BAG = "bag.values.json"


@pytest.fixture(autouse=True)
def _folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


def bag() -> Lesson:
    lesson = Lesson("Bag", start=blank_paper)
    lesson.length("width", 30 * cm, least=10 * cm, most=50 * cm)
    lesson.share("share", 0.5, least=0.1, most=0.9)
    lesson.count("pleats", 3, least=1, most=9)
    return lesson


def told(text: str) -> tuple[Lesson, str]:
    Path(BAG).write_text(text, "utf-8")
    lesson = bag()
    return lesson, " ".join(troubles(lesson.sitting, lesson.definition))


UNREAD = [
    '{"values": {"width": ' + "9" * 5000 + "}}",  # json refuses so many digits
    "[" * 100_000,
    '{"values": ' + "[" * 100_000,
    '{"values": []}',
    "[]",
    "7",
    "",
    "{",
    '{"video": 7}',
    '{"video": {"marks": {"a": 1e999}}}',
]


@pytest.mark.parametrize("text", UNREAD, ids=range(len(UNREAD)))
def test_a_file_that_cannot_be_read_is_told_and_kept(text: str) -> None:
    lesson, said = told(text)
    assert BAG in said and "cannot be read" in said
    assert not any(word in said for word in ("object", "Exceeds", "recursion", "Errno", "codec"))
    assert lesson.values == {"width": 300.0, "share": 0.5, "pleats": 3.0}
    lesson.change(width=20 * cm)
    lesson.save()
    assert Path(f"{BAG}.broken").read_text("utf-8") == text
    assert sidecar.read(Path(BAG), "bag").values == {"width": 200.0}


def test_files_set_aside_do_not_overwrite_each_other() -> None:
    for text in ("one", "two", "three"):
        told(text)[0].save()
    kept = sorted(path.name for path in Path().glob("*.broken*"))
    assert [Path(name).read_text() for name in kept] == ["one", "two", "three"]


@pytest.mark.parametrize("number", ["NaN", "1e999", "-Infinity", "9" * 400, "true", "null", '"200"', "9000", "[]"])
def test_a_number_that_is_none_is_told_and_the_lesson_s_own_stands(number: str) -> None:
    lesson, said = told(f'{{"lesson": "bag", "values": {{"width": {number}, "share": 0.7}}}}')
    assert lesson.values == {"width": 300.0, "share": 0.7, "pleats": 3.0}
    assert said.startswith(f"{BAG}: width is") and "30 cm" in said and "nan" not in said
    lesson.work()
    for code in languages():
        with speaking(code):
            assert BAG in " ".join(troubles(lesson.sitting, lesson.definition))


def test_values_of_another_lesson_are_not_used() -> None:
    lesson, said = told('{"lesson": "dune-skirt", "size": "W6", "values": {"width": 200}}')
    assert "dune-skirt" in said and '"lesson": "bag"' in said
    assert lesson.values["width"] == 300.0
    lesson.save()
    assert "dune-skirt" in Path(f"{BAG}.broken").read_text()


def test_another_size_or_unit_is_told() -> None:
    lesson, said = told('{"lesson": "bag", "size": "W99", "units": "furlong", "values": {"width": 200}}')
    assert "'W99'" in said and "'furlong'" in said
    assert lesson.values["width"] == 200.0 and lesson.units == "cm"
    assert told('{"size": [1], "units": 3}')[1].count(BAG) == 2


def test_a_sound_file_says_nothing_and_may_have_a_byte_order_mark() -> None:
    lesson, said = told('\ufeff{"lesson": "bag", "size": "W4", "units": "inch", "values": {"width": 200}}')
    assert (said, lesson.values["width"], lesson.units, lesson.body.name) == ("", 200.0, "inch", "W4")
    lesson.save()
    assert told(Path(BAG).read_text())[1] == ""


NONE = ["abc", None, True, float("nan"), float("inf"), [], {}, 10**400, "9" * 5000 + " cm", "9" * 5000 + "/3 in", b"x"]


@pytest.mark.parametrize("value", NONE, ids=lambda value: str(value)[:8])
@pytest.mark.parametrize("name", ["width", "share", "pleats"])
def test_a_value_that_is_no_number_is_refused_by_name_and_changes_nothing(name: str, value: object) -> None:
    lesson = bag()
    before = lesson.values
    for attempt in (lambda: lesson.change(**{name: value}), lambda: lesson.work(values={**before, name: value})):
        with pytest.raises(KitError) as caught:
            attempt()
        assert value is not True or "True" in str(caught.value)
        assert len(str(caught.value)) < 300 and (name in str(caught.value) or "length" in str(caught.value))
    assert lesson.values == before


def test_numbers_written_as_text_still_count() -> None:
    lesson = bag()
    lesson.change(width="25 cm", share="0.7", pleats="5")
    assert lesson.values == {"width": 250.0, "share": 0.7, "pleats": 5.0}
