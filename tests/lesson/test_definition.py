"""The lesson as a value, who sits at it, who listens; and that drafting it needs no notebook."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

import kit
from kit.blocks.bodice import bodice_block
from kit.blocks.skirt import skirt_block
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.lesson.definition import Definition, adopted, as_read, variation
from kit.lesson.exercise import Exercise
from kit.lesson.fitting import FittingCell as WrittenFitting
from kit.lesson.fitting import fitting_of
from kit.lesson.goals import passes_proof
from kit.lesson.lesson import Lesson, listen, rewrite, take_over, unheard
from kit.lesson.listener import Nobody
from kit.lesson.parameter import parameter_of
from kit.lesson.pattern import LessonInfo, Photo, Video
from kit.lesson.presets import preset_of
from kit.lesson.publishing import Added
from kit.lesson.steps import entry_of
from kit.lesson.working import so_far, work
from kit.units import cm

WRITING = (
    "length share count measurement step sew finished preset exercise fit_change fitting photo video walk variation "
    "remove of words"
)
TRYING = "change choose use_preset reset undo redo save work begin_fitting keep_fitting drop_fitting take_back"
LOOKING = (
    "info start sizes parameters entries presets exercises fit_changes fittings measures values body units parent "
    "stale definition sitting help"
)

Make = Callable[[], Lesson]


def lower(front: Any, hem_drop: Any) -> None:
    """Rule the hem {hem_drop} below the waist."""
    front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
    front.join(front.side, front.hem)
    front.join(front.hem, front.centre)


def rest(back: Any) -> None:
    """Leave the back."""


DROP = parameter_of("hem_drop", "length", 80.0, 20.0, 180.0)
FILM = "https://example.org/film"


def written() -> Definition:
    """A small lesson, its cells named a to f."""
    made = Definition(LessonInfo("Short block", "short-block"), bodice_block).with_parameter(DROP)
    made = made.with_entry(entry_of("step", "Lower the hem", lower, cell="a", run=1))
    made = made.with_entry(entry_of("step", "Rest", rest, cell="b", run=2))
    made = made.with_preset(preset_of("Long", {"hem_drop": 15 * cm}, [DROP], "c", 3))
    made = made.with_exercise(Exercise("Prove it", "", (passes_proof(),), cell="d", run=4))
    fitting = fitting_of("Toile", "", "", {"hem_drop": (8 * cm, 9 * cm)}, [DROP])
    made = made.with_fitting(WrittenFitting(fitting, "e", 5))
    made = made.with_photo(Added(Photo("hem.jpg", "lower", "the hem"), "f", 6))
    return made.with_video(Added(Video(FILM), "f", 6))


def test_a_definition_is_a_value_that_is_worked_by_itself() -> None:
    """No lesson, no files, no notebook: body and values in, pieces out; what is added leaves the former as it was."""
    first = written()
    body = workshop_chart()["W4"]
    pattern = work(first, body, {"hem_drop": 100.0})
    below = [point.y for point in pattern.piece("front").edge("hem").path.points(1.0)]
    assert max(abs(y + 100.0) for y in below) < 1e-6
    more = first.with_entry(entry_of("step", "More", lambda front: None, cell="g", run=7))
    assert [e.title for e in first.entries] == ["Lower the hem", "Rest"] and len(more.entries) == 3
    assert [s.title for s in so_far(first, first.entries[0], body, {}).steps] == ["Lower the hem"]
    assert "bust_girth" in first.measures


def test_what_is_read_is_in_the_notebooks_order_with_its_photos_and_films() -> None:
    read = as_read(written(), ["b", "a", "c"], {"lower": 12.0})
    assert [e.title for e in read.entries] == ["Rest", "Lower the hem"]
    assert [photo.file for photo in read.info.photos] == ["hem.jpg"]
    assert read.info.videos == (Video(FILM, (("lower", 12.0),)),)
    assert [e.title for e in as_read(written(), ["b"], {}).entries] == ["Lower the hem", "Rest"], "not all known there"


def test_what_a_variation_keeps_and_what_is_fresh() -> None:
    parent = written()
    longer = (("Longer", "Cut it longer."),)
    info = replace(parent.info, author="Edda", cover="a.jpg", cover_alt="It.", variations=longer)
    parent = replace(parent, info=info)
    child = variation(parent, "Long block", {"level": "easy"}, {"lower": 12.0})
    kept = ("start", "parameters", "entries", "sizes", "presets", "exercises")
    assert [getattr(child, name) for name in kept] == [getattr(parent, name) for name in kept]
    assert (child.info.title, child.info.slug, child.info.author) == ("Long block", "long-block", "Edda")
    assert (child.info.level, child.info.cover, child.info.cover_alt, child.info.variations) == ("easy", "", "", ())
    assert child.fittings == ()
    assert as_read(child, [], {}).info.videos == (Video(FILM, (("lower", 12.0),)),), "marks recorded for the parent"
    again = child.with_entry(entry_of("step", "Lower it otherwise", _named("lower", rest)))
    assert as_read(again, [], {}).info.photos == as_read(again, [], {}).info.videos == (), "another step, another look"
    with pytest.raises(KitError, match=r"a lesson has no 'autor'.*'author'"):
        variation(parent, "x", {"autor": "Edda"})
    assert variation(parent, "x", {"cloth_widths": ["150 cm"]}).info.cloth_widths == (1500.0,)


def _named(name: str, function: Callable[..., Any]) -> Callable[..., Any]:
    def other(back: Any) -> None:
        function(back)

    other.__name__ = name
    return other


@pytest.mark.parametrize("cell", "abcdef")
def test_a_lesson_made_again_keeps_what_other_cells_wrote(cell: str) -> None:
    former = written()
    new = Definition(LessonInfo("Short block", "short-block", author="Edda"), skirt_block)
    found = adopted(new, former, cell)
    for name, cells in (("entries", "ab"), ("presets", "c"), ("exercises", "d"), ("fittings", "e"), ("photos", "f")):
        assert [one.cell for one in getattr(found, name)] == [c for c in cells if c != cell], name
    assert found.info.author == "Edda" and found.start is skirt_block and found.parameters == ()


def test_two_of_a_kind_in_one_cell_keep_their_order_when_it_is_run_again() -> None:
    """Steps, presets, exercises, fittings, photos and films alike."""
    made = written()
    for run, values in ((1, (9, 10)), (2, (11, 12))):
        for title, value in zip(("One", "Two"), values, strict=True):
            made = made.with_preset(preset_of(title, {"hem_drop": value * cm}, [DROP], "x", run))
        if run == 1:
            made = made.with_preset(preset_of("Later", {"hem_drop": 5 * cm}, [DROP], "y", 1))
    assert [(one.title, one.named[0][1]) for one in made.presets] == [
        ("Long", 150.0),
        ("One", 110.0),
        ("Two", 120.0),
        ("Later", 50.0),
    ]


def test_what_is_still_used_cannot_be_taken_out() -> None:
    with pytest.raises(KitError, match="'hem_drop' is still used in 'Lower the hem'"):
        written().without("rest", "hem_drop")
    left = written().without("lower", "hem_drop")
    assert [e.name for e in left.entries] == ["rest"] and left.parameters == ()


# ---- the lesson that holds it -----------------------------------------------------------------------------


def test_an_author_is_offered_verbs_and_nothing_of_the_inside(make_lesson: Make) -> None:
    wanted = sorted(f"{WRITING} {TRYING} {LOOKING}".split())
    assert kit.Lesson is Lesson, "one class of that name"
    assert [name for name in dir(make_lesson()) if not name.startswith("_")] == wanted
    for name in wanted:
        found = getattr(Lesson, name)
        assert (found.__doc__ or "").strip(), f"lesson.{name} says nothing of itself"


def test_values_are_set_all_or_none(make_lesson: Make) -> None:
    lesson = make_lesson()
    with pytest.raises(KitError, match="there is no parameter 'hem_dorp'"):
        lesson.change(hem_drop=9 * cm, hem_dorp=3 * cm)
    assert lesson.values == {"hem_drop": 80.0}


class Told(Nobody):
    """Writes down what it hears."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.heard: list[Any] = []

    def wrote(self, entry: Any) -> None:
        self.heard.append(entry.name)

    def rewritten(self) -> None:
        self.heard.append("rewritten")

    def moved(self, before: Mapping[str, float], *, whole: bool) -> None:
        self.heard.append((before["hem_drop"], self.lesson.values["hem_drop"], whole))


def test_a_listener_hears_what_has_happened(make_lesson: Make) -> None:
    lesson = make_lesson()
    told = Told(lesson)
    listen(lesson, told)
    lesson.step("Rest")(rest)
    lesson.preset("Long", hem_drop=15 * cm)
    lesson.change(hem_drop=9 * cm)
    lesson.use_preset("Long")
    lesson.reset()
    lesson.choose(size="W6")
    lesson.remove("rest")
    moves = [(80.0, 90.0, False), (90.0, 150.0, True), (150.0, 80.0, True), (80.0, 80.0, False)]
    assert told.heard == ["rest", "rewritten", *moves, "rewritten"]
    with pytest.raises(KitError):
        lesson.change(hem_drop=99 * cm)
    assert len(told.heard) == 7, "nothing has happened"


def test_what_is_tried_on_a_copy_nobody_hears(make_lesson: Make) -> None:
    lesson = make_lesson()
    told = Told(lesson)
    listen(lesson, told)
    copy = unheard(lesson)
    copy.step("Rest")(rest)
    copy.change(hem_drop=9 * cm)
    copy.remove("lower")
    assert told.heard == [] and lesson.values == {"hem_drop": 80.0}
    assert [e.name for e in lesson.entries] == ["lower"] and [e.name for e in copy.entries] == ["rest"]


def test_a_lesson_made_again_goes_on_where_its_reader_was(make_lesson: Make) -> None:
    former = make_lesson()
    rewrite(former, entries=written().entries)
    former.choose(size="W6", units="inch")
    former.change(hem_drop=9 * cm)
    former.begin_fitting("Toile")
    new = make_lesson()
    take_over(new, former, "a")
    assert [e.name for e in new.entries] == ["rest"]
    assert (new.body.name, new.units, new.values) == ("W6", "inch", {"hem_drop": 90.0})
    assert new.sitting.begun == former.sitting.begun is not None


def test_a_variation_has_values_and_a_file_of_its_own(make_lesson: Make) -> None:
    lesson = make_lesson()
    lesson.choose(size="W6", units="inch")
    lesson.change(hem_drop=9 * cm)
    lesson.begin_fitting("Toile")
    long = lesson.variation("Long block")
    assert (long.body.name, long.units, long.values) == ("W6", "inch", {"hem_drop": 80.0})
    assert long.sitting.begun is None and long.sitting.sidecar.name == "long-block.values.json"
    long.change(hem_drop=10 * cm)
    assert lesson.values == {"hem_drop": 90.0}


# ---- without a notebook -----------------------------------------------------------------------------------

DRAFTS = """
import json, sys
from {home} import Lesson
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.skirt import skirt_block
from kit.lesson.working import work
from kit.picture.draft import step_drawing
from kit.picture.svg_pen import svg
from kit.units import cm

lesson = Lesson("Short skirt", start=skirt_block)
lesson.length("raised", 10 * cm, least=1 * cm, most=20 * cm)

@lesson.step("Shorten it")
def shorten(front, raised):
    "Raise the hem {{raised}}."
    front.mark(up=front.centre.share(0.5))

short = lesson.variation("Shorter skirt")
pattern = short.work()
steps = len(Lesson.of(darted_bodice_block).work().steps)
drawn = len(svg(step_drawing(pattern.steps[-1], pattern)))
notebooks = ("IPython", "ipywidgets", "ipykernel", "traitlets")
print(json.dumps([len(pattern.pieces), steps, drawn, [m for m in sys.modules if m.split(".")[0] in notebooks]]))
"""


@pytest.mark.parametrize("home", ["kit", "kit.lesson.lesson"])
def test_from_values_to_a_drawing_no_notebook_is_needed(home: str, tmp_path: Path) -> None:
    answer = subprocess.run(
        [sys.executable, "-c", DRAFTS.format(home=home)], capture_output=True, text=True, cwd=tmp_path, check=False
    )
    assert answer.returncode == 0, answer.stderr
    pieces, steps, drawn, notebook = json.loads(answer.stdout)
    assert pieces >= 2 and steps >= 3 and drawn > 500
    assert notebook == []
