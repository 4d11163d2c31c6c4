"""A lesson that is tried on after its cloth is cut: built as first cut and as corrected, its chapter and its step
pointing to each other."""

from __future__ import annotations

import re
from pathlib import Path

import nbformat
import pytest

from kit.booklet.asked_draft import AskedDraft, read_values
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.fitting_notes import fitting_links
from kit.booklet.handover import Handover, work
from kit.booklet.html import to_html
from kit.booklet.model import Booklet, SewStep
from kit.cli import main
from kit.errors import KitError
from kit.lesson.lesson import Lesson
from kit.proof import prove
from kit.units import cm
from tests.fitted import tunic
from tests.unplaced import texts_unplaced

NOTEBOOK = '''
from kit import Lesson, blank_paper, cm
lesson = Lesson("Straight tunic", start=blank_paper)
lesson.length("top_width", 25 * cm, least=10 * cm, most=40 * cm)
lesson.count("tucks", 1, least=0, most=4)
lesson.preset("Wide", top_width=28 * cm)

def drawn(piece, top_width):
    low = piece.place(0, 0)
    high = low.up(60 * cm)
    corner, out = high.out(top_width), low.out(30 * cm)
    piece.draw(centre=low.to(high), top=high.to(corner), side=corner.to(out), hem=out.to(low))
    piece.allow(top=1.5 * cm, side=1.5 * cm, hem=3 * cm)
    piece.cut(1, fold="centre")
    piece.grain(along=piece.centre)

@lesson.step("Draw front and back", makes=("front", "back"))
def draw(front, back, top_width, tucks):
    """Rule the centre, square out top and hem, and join them."""
    drawn(front, top_width)
    drawn(back, top_width)

@lesson.sew("Shoulders and sides")
def seams(make, front, back):
    make.plain_seam(front.top, back.top, allowance=1.5 * cm)
    make.plain_seam(front.side, back.side, allowance=1.5 * cm)

@lesson.sew("Try it on")
def trial(make):
    make.try_on("It gapes at the top.", top_width=(28 * cm, 25 * cm))

@lesson.sew("Hem")
def hems(make, front, back):
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
'''

WORN = "The garment as sewn so far, seen from the front and the back."


@pytest.fixture(autouse=True)
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


def sewn(make, front, back):
    make.plain_seam(front.side, back.side, allowance=1.5 * cm)


def nothing(make, front, back):
    """The sides are sewn before."""


def lesson(**more) -> Lesson:
    given = {"top_width": (28 * cm, 25 * cm)}
    return tunic(lambda make: make.try_on("It gapes at the top.", **given), before=sewn, seam=nothing, **more)


def top(pattern) -> float:
    return pattern.piece("front").edge("top").path.length


def book_of(given: Handover, folder: Path) -> Booklet:
    with texts_unplaced():
        return compose(given, nbformat.v4.new_notebook(), LessonFolder(folder), prove(given.pattern))


def trial_of(book: Booklet):
    (step,) = [block for block in book.sewing.blocks if isinstance(block, SewStep) and block.key == "trial"]
    (operation,) = step.operations
    return step, operation


@pytest.mark.parametrize("present", [25, 28])
def test_the_corrected_one_is_built_unless_the_first_is_asked_for(present: int) -> None:
    for draft, width in (("corrected", 250), ("first", 280), ("present", present * 10)):
        made = lesson()
        made.change(top_width=present * cm)
        given = work(made, None, None, (), AskedDraft(draft=draft))  # type: ignore[arg-type]
        assert top(given.pattern) == width
        (result,) = given.fittings
        assert result.before is not None and result.after is not None
        assert (top(result.before), top(result.after), result.step) == (280, 250, "trial")
    made = lesson()
    assert top(work(made, None, None).pattern) == 250


def test_one_value_alone_keeps_its_story_in_the_corrected_pattern() -> None:
    made = tunic(lambda make: make.try_on("It gapes.", top_width=22 * cm))
    given = work(made, None, None)
    assert top(given.pattern) == 220
    (result,) = given.fittings
    assert [change.before for change in result.fitting.changes] == [250]


def test_a_fitting_recorded_apart_is_the_try_on_of_the_same_values() -> None:
    made = lesson()
    made.fitting("First toile", "It gaped.", top_width=(28 * cm, 25 * cm), date="2026-05-04")
    (result,) = work(made, None, None).fittings
    assert (result.fitting.title, result.step) == ("First toile", "trial")


def test_step_and_chapter_point_to_each_other(tmp_path: Path) -> None:
    for draft in ("corrected", "first"):
        book = book_of(work(lesson(), None, None, (), AskedDraft(draft=draft)), tmp_path)  # type: ignore[arg-type]
        step, operation = trial_of(book)
        (note,) = book.fittings
        assert operation.fitting == note.key and note.step == (step.number, step.key)
        html = to_html(book)
        assert f'href="#{note.key}"' in html and f'href="#step-{step.key}"' in html
        ids = set(re.findall(r'id="([^"]+)"', html))
        assert {target for target in re.findall(r'class="ref" href="#([^"]+)"', html)} <= ids


def test_a_plain_try_on_and_a_fitting_point_to_each_other_too(tmp_path: Path) -> None:
    made = tunic()
    made.fitting("First toile", "It gaped.", top_width=(28 * cm, 25 * cm))
    made.fitting("Second toile", "It gaped still.", top_width=(26 * cm, 25 * cm))
    given = work(made, None, None)
    assert fitting_links(given) == {("trial", 0): "fitting"}
    book = book_of(given, tmp_path)
    assert trial_of(book)[1].fitting == "fitting" and {note.step for note in book.fittings} == {(4, "trial")}
    assert fitting_links(work(tunic(), None, None)) == {}


def test_the_buyers_booklet_has_no_unpicking_and_the_one_as_cut_has_all_of_it(tmp_path: Path) -> None:
    _, operation = trial_of(book_of(work(lesson(), None, None), tmp_path))
    assert "Unpick" not in operation.text and "has it corrected already" in operation.text
    assert [p.alt for p in operation.pictures] == [WORN]  # what is tried on is shown, and no piece as it was cut
    book = book_of(work(lesson(), None, None, (), AskedDraft(draft="first")), tmp_path)
    _, operation = trial_of(book)
    assert "Unpick" in operation.text and operation.pictures[0].alt == WORN
    assert [p.alt.split(" as it was cut")[0] for p in operation.pictures[1:]] == ["Front", "Back"]


def test_values_and_presets_of_a_build() -> None:
    made = lesson()
    made.preset("Wide", top_width=30 * cm)
    assert top(work(made, None, None, (), AskedDraft("wide")).pattern) == 300
    assert top(work(made, None, None, (), AskedDraft("Wide", (("top_width", "31 cm"),))).pattern) == 310
    assert top(work(made, None, None, (), AskedDraft(values=(("top_width", "10in"),))).pattern) == 254


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        (AskedDraft("Wyde"), "Wide"),
        (AskedDraft(values=(("top_widht", "25cm"),)), "top_width"),
        (AskedDraft(values=(("top_width", "25"),)), "unit"),
        (AskedDraft(values=(("top_width", "90cm"),)), "90 cm"),
        (AskedDraft(values=(("tucks", "one"),)), "not a number"),
        (AskedDraft(values=(("tucks", "1.5"),)), "whole"),
    ],
)
def test_what_is_asked_wrong_is_told_plainly(asked: AskedDraft, says: str) -> None:
    made = lesson()
    made.preset("Wide", top_width=30 * cm)
    made.count("tucks", 1, least=0, most=4)
    with pytest.raises(KitError) as caught:
        work(made, None, None, (), asked)
    assert says in str(caught.value)


def test_values_as_they_are_typed() -> None:
    assert read_values(["sleeve-length=45cm", "hem_drop=2 1/4 in, tucks=3; ease=7,5 mm"]) == (
        ("sleeve_length", "45cm"),
        ("hem_drop", "2 1/4 in"),
        ("tucks", "3"),
        ("ease", "7,5 mm"),
    )
    for typed in ("45cm", "sleeve=", "=3"):
        with pytest.raises(KitError, match="--values"):
            read_values([typed])


def test_commands_take_them(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "tunic.ipynb"
    nbformat.write(nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(NOTEBOOK)]), path)
    assert main(["check", str(path), "--values", "top_width=26cm"]) == 0
    assert "nothing changes at this try-on" in capsys.readouterr().out
    assert main(["build", str(path), "--as-cut", "--forms", "html", "--out", str(tmp_path / "cut")]) == 0
    assert main(["build", str(path), "--forms", "html", "--out", str(tmp_path / "buyer")]) == 0
    cut, buyer = ((tmp_path / name / "booklet.html").read_text("utf-8") for name in ("cut", "buyer"))
    assert "Unpick the stitching" in cut and "Unpick the stitching" not in buyer
    assert "corrected already" in buyer
    widths = [(tmp_path / name / "pattern.json").read_text("utf-8") for name in ("cut", "buyer")]
    assert '"value": 280.0' in widths[0] and '"value": 250.0' in widths[1]
    assert main(["check", str(path), "--preset", "Narrow"]) == 2
    assert "Wide" in capsys.readouterr().err
