"""What a lesson says of its booklet: advice, photos and films, and the cells that add them."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from kit.blocks.bodice import bodice_block
from kit.errors import KitError
from kit.lesson import lesson as lesson_module
from kit.lesson import publishing, sidecar
from kit.lesson.lesson import Lesson, rewrite
from kit.lesson.publishing import seconds
from kit.units import cm
from tests.lesson.test_cells import HEM, LESSON, Kernel, errors

Make = Callable[[], Lesson]
FILM = "https://example.org/film"


@pytest.fixture
def cell(monkeypatch: pytest.MonkeyPatch) -> Callable[[str, int], None]:
    """Say which cell runs now, and for the how-manieth time."""
    now = {"at": ("", 0)}
    monkeypatch.setattr(lesson_module, "running_cell", lambda: now["at"])

    def run(name: str, count: int) -> None:
        now["at"] = (name, count)

    return run


def start(**more: Any) -> Lesson:
    return Lesson("Short block", start=bodice_block, size="W4", **more)


def hem(lesson: Lesson, drop: float = 9) -> None:
    lesson.length("hem_drop", drop * cm, least=2 * cm, most=18 * cm)

    @lesson.step("Lower the hem")
    def lower(front, hem_drop):
        """Rule the hem {hem_drop} below the waist."""
        front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)


def test_what_a_lesson_says_reaches_its_pattern() -> None:
    lesson = start(
        language="pt-BR",
        fibre="linen or cotton",
        weight="150 to 200 g/m²",
        drape="soft",
        avoid="anything stretchy",
        prewash="at 60 °C",
        shrinkage=0.05,
        licence="CC BY 4.0",
        credits=["Drawn by the workshop"],
        cover="photos/cover.jpg",
        cover_alt="A short top on a line",
        variations=[("Long", "Lower the hem by a hand.")],
    )
    info = lesson.work().lesson
    assert (info.language, info.shrinkage, info.credits) == ("pt-BR", 0.05, ("Drawn by the workshop",))
    assert info.variations == (("Long", "Lower the hem by a hand."),)
    assert (info.fibre, info.weight, info.drape, info.avoid) == (
        "linen or cotton",
        "150 to 200 g/m²",
        "soft",
        "anything stretchy",
    )


# Tags that are well-formed and that are not, RFC 5646 appendix A.
@pytest.mark.parametrize(
    "tag",
    ["de", "fr", "zh-Hant", "zh-cmn-Hans-CN", "sr-Latn-RS", "sl-rozaj", "de-CH-1901", "es-419", "de-CH-x-phonebk"],
)
def test_a_language_tag(tag: str) -> None:
    assert start(language=tag).info.language == tag


@pytest.mark.parametrize("tag", ["", "German", "de_AT", "de-419-DE", "a-DE", "en ", "de-"])
def test_not_a_language_tag(tag: str) -> None:
    with pytest.raises(KitError, match=r"not the code of a language. Write a language tag"):
        start(language=tag)


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"shrinkage": 5}, "shrinkage is 5; it lies between 0 and 0.3"),
        ({"shrinkage": -0.1}, "shrinkage is -0.1"),
        ({"shrinkage": float("nan")}, "shrinkage is nan"),
        ({"shrinkage": "5 %"}, "shrinkage is '5 %'"),
        ({"stretch": 40}, "stretch is 40; it lies between 0 and 2"),
        ({"stretch": -0.1}, "stretch is -0.1"),
        ({"cover": "a.jpg"}, "cover picture 'a.jpg' has no words"),
        ({"cover_alt": "A top"}, "cover_alt is given without a cover"),
        ({"credits": "Ada"}, "credits is 'Ada', not a list"),
        ({"notions": "thread"}, "notions is 'thread', not a list"),
        ({"fibre": 3}, "fibre is 3, not a text"),
        ({"variations": ["Long"]}, "variations holds 'Long'"),
        ({"variations": ("Long", "Lower it.")}, "variations holds 'Long'"),
        ({"variations": [("Long", 3)]}, "is not a title and its words"),
    ],
)
def test_what_cannot_be_printed_is_refused(given: dict[str, Any], said: str) -> None:
    with pytest.raises(KitError) as refused:
        start(**given)
    assert said in str(refused.value) and refused.value.do


def test_a_photo_stands_beside_its_step(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.photo("photos/hem.jpg", beside="lower", alt="A hem being ruled", caption="Keep the ruler flat")
    (photo,) = lesson.work().lesson.photos
    assert (photo.file, photo.beside, photo.alt, photo.caption) == (
        "photos/hem.jpg",
        "lower",
        "A hem being ruled",
        "Keep the ruler flat",
    )
    assert lesson.info.photos == ()


def test_a_photo_beside_nothing_is_refused_with_the_near_name(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.photo("hem.jpg", beside="lowr", alt="A hem")
    with pytest.raises(KitError, match=r"Photo 'hem.jpg': there is no step 'lowr'.* Did you mean 'lower'\?"):
        lesson.work()


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"file": "a.jpg", "beside": "lower"}, "no words for those who cannot see it"),
        ({"file": "a.jpg", "beside": "lower", "alt": "  "}, "no words for those who cannot see it"),
        ({"file": " ", "beside": "lower", "alt": "x"}, "needs the name of its file"),
        ({"file": "a.jpg", "beside": "Lower the hem", "alt": "x"}, "not the name of a step"),
        ({"file": 3, "beside": "lower", "alt": "x"}, "file is 3, not a text"),
    ],
)
def test_an_odd_photo_is_refused(make_lesson: Make, given: dict[str, Any], said: str) -> None:
    with pytest.raises(KitError, match=said):
        make_lesson().photo(given.pop("file"), **given)


def test_running_a_cell_again_replaces_what_it_added(cell: Callable[[str, int], None]) -> None:
    cell("a", 1)
    lesson = start()
    cell("b", 2)
    hem(lesson)
    cell("c", 3)
    lesson.photo("one.jpg", beside="lower", alt="one")
    lesson.photo("two.jpg", beside="lower", alt="two")
    lesson.video(FILM, lower="0:10")
    cell("d", 4)
    lesson.photo("last.jpg", beside="lower", alt="last")

    def files() -> list[str]:
        return [photo.file for photo in lesson.work().lesson.photos]

    assert files() == ["one.jpg", "two.jpg", "last.jpg"]
    cell("c", 5)  # the same cell, edited: another photo, no film
    lesson.photo("three.jpg", beside="lower", alt="three")
    assert files() == ["three.jpg", "last.jpg"]
    lesson.video(FILM, lower="0:20")
    assert lesson.work().lesson.videos[0].marks == (("lower", 20.0),)
    cell("d", 6)  # the photo is written again elsewhere: once only
    lesson.photo("three.jpg", beside="lower", alt="three again")
    assert [photo.alt for photo in lesson.work().lesson.photos] == ["three again"]


def test_a_cell_whose_photo_line_was_deleted_loses_it_when_its_step_is_run_again(
    cell: Callable[[str, int], None],
) -> None:
    cell("a", 1)
    lesson = start()
    cell("b", 2)
    hem(lesson)
    lesson.photo("one.jpg", beside="lower", alt="one")
    cell("b", 3)
    hem(lesson)
    assert lesson.work().lesson.photos == ()


@pytest.mark.parametrize(
    ("mark", "at"), [("3:20", 200.0), ("1:02:10", 3730.0), ("0:05", 5.0), (200, 200.0), ("95:00", 5700.0), ("12", 12.0)]
)
def test_time_marks(mark: object, at: float) -> None:
    assert seconds(mark, "") == at


@pytest.mark.parametrize(
    "mark", ["3:75", "3:2", "3.20", "1:75:00", "soon", "", -1, True, float("nan"), "1:2:3:4", None]
)
def test_not_a_time_mark(mark: object) -> None:
    with pytest.raises(KitError, match="not a time in a film"):
        seconds(mark, "")


@pytest.mark.parametrize(
    "address",
    ["film.mp4", "file:///etc/passwd", "javascript:alert(1)", "https://", 'https://a.org/"x', "ftp://a.org/f", 3],
)
def test_a_film_lives_on_the_web(make_lesson: Make, address: Any) -> None:
    with pytest.raises(KitError, match="not an address on the web"):
        make_lesson().video(address)


def test_a_mark_for_no_step_is_refused(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.video(FILM, lowerr="0:10")
    with pytest.raises(KitError, match=r"there is no step 'lowerr'.*Did you mean 'lower'"):
        lesson.work()


def test_marks_recorded_beside_the_notebook_are_used_and_kept(make_lesson: Make) -> None:
    first = make_lesson()
    sidecar.write_marks(first.sitting.sidecar, "short-block", {"lower": 200.0, "gone": 5.0})
    lesson = make_lesson()
    lesson.video(FILM)
    assert lesson.work().lesson.videos[0].marks == (("lower", 200.0),)
    lesson.change(hem_drop=10 * cm)
    lesson.save()
    held = json.loads(lesson.sitting.sidecar.read_text())
    assert held["video"] == {"marks": {"lower": 200.0, "gone": 5.0}} and held["values"] == {"hem_drop": 100.0}
    lesson.video(FILM, lower="0:10")
    assert lesson.work().lesson.videos[0].marks == (("lower", 10.0),)


def test_what_the_sidecar_does_not_know_is_kept(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.sitting.sidecar.write_text(
        '{"values": {}, "later": [1, 2], "video": {"marks": {"lower": 3}, "camera": "left"}}'
    )
    lesson = make_lesson()
    lesson.save()
    sidecar.write_marks(lesson.sitting.sidecar, "short-block", {"lower": 4.0})
    held = json.loads(lesson.sitting.sidecar.read_text())
    assert held["later"] == [1, 2] and held["video"] == {"marks": {"lower": 4.0}, "camera": "left"}
    assert sidecar.read(lesson.sitting.sidecar, "short-block").marks == {"lower": 4.0}


@pytest.mark.parametrize("marks", ['{"lower": -1}', '{"lower": "soon"}', "[1]", '{"lower": Infinity}'])
def test_broken_marks_are_told(make_lesson: Make, marks: str) -> None:
    lesson = make_lesson()
    lesson.sitting.sidecar.write_text(f'{{"values": {{}}, "video": {{"marks": {marks}}}}}')
    assert "cannot be read" in str(make_lesson().sitting.saved.trouble)


def test_recorded_marks_belong_to_one_film(make_lesson: Make) -> None:
    first = make_lesson()
    sidecar.write_marks(first.sitting.sidecar, "short-block", {"lower": 200.0})
    lesson = make_lesson()
    lesson.video(FILM)
    lesson.video("https://example.org/other")
    with pytest.raises(KitError, match="2 films have no time marks"):
        lesson.work()


def test_a_variation_inherits_the_photos_of_the_steps_it_keeps(make_lesson: Make) -> None:
    lesson = make_lesson()

    @lesson.step("Mark the waist")
    def mark_it(front):
        """Mark the waist."""
        front.notch("side", 5 * cm)

    lesson.photo("hem.jpg", beside="lower", alt="the hem")
    lesson.photo("waist.jpg", beside="mark_it", alt="the waist")
    lesson.video(FILM, lower="0:10", mark_it="0:20")
    rewrite(lesson, info=publishing.changed(lesson.info, {"cover": "top.jpg", "cover_alt": "the top"}))
    long = lesson.variation("Long block", shrinkage=0.1)
    assert [photo.file for photo in long.work().lesson.photos] == ["hem.jpg", "waist.jpg"]
    assert long.info.cover == "" and long.info.shrinkage == 0.1

    @long.step("Notch the waist otherwise")
    def mark_it(front):  # type: ignore[no-redef]  # noqa: F811
        """Mark the waist."""
        front.notch("side", 6 * cm)

    info = long.work().lesson
    assert [photo.file for photo in info.photos] == ["hem.jpg"] and info.videos[0].marks == (("lower", 10.0),)
    long.photo("own.jpg", beside="mark_it", alt="its own")
    assert [photo.file for photo in long.work().lesson.photos] == ["hem.jpg", "own.jpg"]
    long.remove("lower")
    assert [photo.file for photo in long.work().lesson.photos] == ["own.jpg"]
    assert long.work().lesson.videos == ()
    assert len(lesson.work().lesson.photos) == 2


def test_a_variation_in_another_cloth_keeps_no_advice_on_the_first(make_lesson: Make) -> None:
    """What suits linen is wrong of flannel; a variation in the same cloth keeps it."""
    lesson = make_lesson()
    said = {
        "cloth": "Linen.",
        "weight": "120 g/m²",
        "prewash": "Wash it hot.",
        "care": "Wash it at 60.",
        "avoid": "Knits.",
    }
    rewrite(lesson, info=publishing.changed(lesson.info, said | {"shrinkage": 0.05}))
    same = lesson.variation("Longer", summary="A longer one.").info
    assert (same.weight, same.prewash, same.care, same.avoid) == (
        "120 g/m²",
        "Wash it hot.",
        "Wash it at 60.",
        "Knits.",
    )
    other = lesson.variation("In flannel", cloth="Flannel.", prewash="Steam it.").info
    assert [getattr(other, name) for name in publishing.OF_CLOTH if getattr(other, name)] == ["Steam it."]
    assert other.cloth == "Flannel." and other.shrinkage == 0.05
    assert lesson.variation("Again", cloth="Linen.").info.weight == "120 g/m²"


def test_a_variation_refuses_what_a_lesson_refuses(make_lesson: Make) -> None:
    with pytest.raises(KitError, match=r"a lesson has no 'shrinkag'. Did you mean 'shrinkage'"):
        make_lesson().variation("Other", shrinkag=0.1)
    with pytest.raises(KitError, match="shrinkage is 2"):
        make_lesson().variation("Other", shrinkage=2)
    with pytest.raises(KitError, match="no words for those"):
        make_lesson().variation("Other", cover="a.jpg")


def test_references_in_a_step_are_checked(make_lesson: Make) -> None:
    lesson = make_lesson()

    @lesson.step("Mark it")
    def mark_it(front):
        """As in {lower:step}, on the {front:piece}."""
        front.notch("side", 5 * cm)

    assert lesson.work().steps[-1].values == ()

    @lesson.step("Mark it")
    def mark_it(front):  # type: ignore[no-redef]  # noqa: F811
        """As in {lowr:step}."""
        front.notch("side", 5 * cm)

    with pytest.raises(KitError, match=r"Step 'Mark it'.*\{lowr:step\}.*Did you mean 'lower'"):
        lesson.work()


def test_photos_in_a_notebook_whose_cells_are_run_in_any_order(tmp_path: Path) -> None:
    """In a real kernel, told each cell's id as JupyterLab tells it."""
    kernel = Kernel(tmp_path, {"LESSONKIT_NOTEBOOK": "", "LESSONKIT_BUILD": ""})
    shown = "[[p.alt for p in lesson.work().lesson.photos], [v.marks for v in lesson.work().lesson.videos]]"
    photo = 'lesson.photo("{0}.jpg", beside="lower_hem", alt="{0}")\n'
    try:
        for cell, code in (("c-lesson", LESSON), ("c-photo", photo.format("one") + photo.format("two"))):
            assert not errors(kernel.run(cell, code))
        assert not errors(kernel.run("c-hem", HEM + f'lesson.video("{FILM}", lower_hem="0:10")'))
        assert kernel.value(shown) == [["one", "two"], [[["lower_hem", 10.0]]]]
        assert not errors(kernel.run("c-photo", photo.format("three")))
        assert kernel.value(shown)[0] == ["three"]
        assert not errors(kernel.run("c-lesson", LESSON))  # the lesson's own cell again: what others added stays
        assert kernel.value(shown) == [["three"], [[["lower_hem", 10.0]]]]
        assert not errors(kernel.run("c-hem", HEM))  # the film's line was deleted
        assert kernel.value(shown) == [["three"], []]
    finally:
        kernel.client.stop_channels()
        kernel.manager.shutdown_kernel(now=True)
