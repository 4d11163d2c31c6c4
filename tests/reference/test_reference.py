"""The reference holds every verb once, and its notebooks say what the verbs say now.

What an entry says is compared with the verbs themselves: their docstrings, the sentences of their operations, and what
they really refuse when they are told something wrong.
"""

from __future__ import annotations

import ast
import json
import re
from functools import cache
from pathlib import Path

import pytest

from kit import KitError, Lesson
from kit.language import languages, speaking
from kit.lesson.where import acting
from kit.live.practising import practice_cloth, practice_paper
from kit.reference.entry import entries, groups, trade_words
from kit.reference.lookup import look_up, offered_names
from kit.reference.notebooks import file_of, reference, stale
from kit.reference.practice import DRAFTED, KINDS, SEWN, UNITS, written
from kit.reference.refusals import GAP, refused
from kit.reference.told import help_on, overview
from kit.reference.verb_help import told, verbs_of
from kit.reference.verb_help import written as named

KEYS = tuple(entries())
PARTS = ("drafting", "sewing")


def test_every_verb_has_one_entry_in_one_group() -> None:
    verbs = [f"{kind}.{name}" for kind in KINDS for name in verbs_of(kind)]
    assert sorted(verbs) == sorted(KEYS)
    grouped = [key for part in PARTS for group in groups(part) for key in group.keys]
    assert sorted(grouped) == sorted(KEYS), set(grouped) ^ set(KEYS)
    for part, kinds in zip(PARTS, (DRAFTED, SEWN), strict=True):
        assert {entries()[key].kind for group in groups(part) for key in group.keys} <= set(kinds)


def test_every_verb_is_found_by_a_word_of_the_trade() -> None:
    named = [key for keys in trade_words().values() for key in keys]
    assert set(named) == set(KEYS), set(named) ^ set(KEYS)
    for words, keys in trade_words().items():
        assert len(keys) == len(set(keys)), words


@pytest.mark.usefixtures("made_once")
def test_the_notebooks_are_as_new_as_the_verbs() -> None:
    """Made anew by `python -m kit.reference.notebooks`."""
    assert not [path.name for path in stale()]


@pytest.mark.parametrize("part", PARTS)
def test_a_notebook_has_a_cell_of_code_for_every_verb_and_no_outputs(part: str) -> None:
    book = json.loads(file_of(part).read_text(encoding="utf-8"))
    code = ["".join(cell["source"]) for cell in book["cells"] if cell["cell_type"] == "code"]
    text = ["".join(cell["source"]) for cell in book["cells"] if cell["cell_type"] == "markdown"]
    keys = [key for group in groups(part) for key in group.keys]
    assert len(code) == len(keys) + 1
    ids = [cell["id"] for cell in book["cells"]]
    assert len(set(ids)) == len(ids) and all(re.fullmatch(r"[a-zA-Z0-9-_]{1,64}", one) for one in ids)
    for key, cell in zip(keys, code[1:], strict=True):
        assert entries()[key].verb.example.split("\n")[0] in cell
        (about,) = [one for one in text if one.startswith(f"### {key}\n")]
        assert entries()[key].verb.sentence in about
        for argument in entries()[key].verb.arguments:
            assert f"| `{named(argument)}` | {told(argument, entries()[key].verb)} |" in about
    assert all(cell["outputs"] == [] and cell["execution_count"] is None for cell in book["cells"] if "outputs" in cell)


@pytest.fixture
def made_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """The notebooks are made of the verbs once, however often they are compared."""
    monkeypatch.setattr("kit.reference.notebooks.reference", made)


made = cache(reference)


@pytest.mark.usefixtures("made_once")
def test_a_verb_that_is_missing_or_changed_makes_a_notebook_stale(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    def place(part: str) -> Path:
        return tmp_path / f"{part}.ipynb"

    monkeypatch.setattr("kit.reference.notebooks.file_of", place)
    assert set(stale()) == {place(part) for part in PARTS}
    for part in PARTS:
        place(part).write_text(made(part), encoding="utf-8")
    assert not stale()
    text = place("sewing").read_text(encoding="utf-8")
    place("sewing").write_text(text.replace("Sew the lower edge of a band", "Sew a band"), encoding="utf-8")
    assert set(stale()) == {place("sewing")}


@pytest.mark.parametrize("key", KEYS)
def test_an_entrys_cell_makes_a_lesson_that_works(key: str, capsys: pytest.CaptureFixture[str]) -> None:
    names = {"practice_paper": practice_paper, "practice_cloth": practice_cloth, **UNITS}
    exec(entries()[key].cell, names)
    lesson = names["lesson"]
    assert isinstance(lesson, Lesson)
    pattern = lesson.work()
    assert len(pattern.steps) + len(pattern.sewing) >= 1
    if entries()[key].verb.gives == "length":
        assert capsys.readouterr().out.strip()


def test_a_cell_in_a_notebook_shows_words_and_a_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    shown: list[str] = []
    monkeypatch.setattr("IPython.display.display", lambda thing, **more: shown.append(thing["text/html"]))
    with acting(notebook=True):
        names = {"practice_cloth": practice_cloth, **UNITS}
        exec(entries()["make.set_band"].cell, names)
    (html,) = shown
    assert "<svg" in html and all(line in html for line in entries()["make.set_band"].says())


@pytest.mark.parametrize(
    ("key", "lines"),
    [
        ("piece.notch", 'front.notch("armhole", 3000 * mm)'),
        ("piece.move_dart", 'front.move_dart("bust_dart", to="shoulder", at=6 * cm, way="swing")'),
        ("piece.move_dart", 'front.move_dart("bust_dat", to="shoulder", at=6 * cm)'),
        ("piece.face", "facing.face(front.neck, depth=6 * cm, ends=('centre', 'shoulder'), short_at='x')"),
        ("piece.draw", "front.draw(yoke=front.neck_point, instead_of=front.neck)"),
        ("strip.band", "tie.band(finished_length=72 * cm, finished_width=3 * cm, allowance=1 * cm, grain='round')"),
        ("line.share", "front.mark(here=front.side.share(3))"),
        ("point.arc", "front.guide(here=front.neck_point.arc(about='up', radius=4 * cm, angle=400))"),
    ],
)
def test_what_a_verb_of_the_bench_is_said_to_refuse_it_refuses(key: str, lines: str) -> None:
    known = [_pattern(text) for text in refused(entries()[key].verb.function)]
    lesson = practice_paper(key)
    used = {node.id for node in ast.walk(ast.parse(lines)) if isinstance(node, ast.Name)}
    names = [name for name in ("front", "facing", "tie") if name in used]
    kinds = {"makes": "facing" if "facing" in names else (), "strips": "tie" if "tie" in names else ()}
    lesson.step("Try", **kinds)(written("trying", lines, names))
    with pytest.raises(KitError) as trouble:
        lesson.work()
    said = f"{trouble.value.what} {trouble.value.do}".strip()
    assert any(pattern.search(said) for pattern in known), (said, refused(entries()[key].verb.function))


@pytest.mark.parametrize("verb", ["set_band", "close_band", "set_in_sleeve", "buttons", "understitch", "tack_down"])
def test_what_an_operation_is_said_to_refuse_is_told_when_nothing_was_sewn_before(verb: str) -> None:
    """An operation that needs others before it, sewn first: what the proof says of it stands in its entry."""
    from kit.sewing.order import sew

    lesson = practice_cloth()
    entry = entries()[f"make.{verb}"]
    lesson.sew("Too early")(written("early", entry.verb.example, entry.arguments))
    _, told = sew(lesson.work())
    known = [_pattern(text) for text in entry.refuses]
    assert told
    for one in told:
        said = f"{one.what} {one.do}".strip()
        assert any(pattern.search(said) for pattern in known), said


def _pattern(text: str) -> re.Pattern[str]:
    """A refusal as it is told, with what any of its values may be; places are words of their kind."""
    parts = re.split(rf"{GAP}|\b(?:[Ee]dges?|[Pp]ieces?|strip)\b", text.rstrip("."))
    return re.compile(".*".join(re.escape(part) for part in parts), re.IGNORECASE | re.DOTALL)


@pytest.mark.parametrize("topic", ["set_band", "make.set_band", "make.set_band(...)", " set_band "])
def test_a_topic_is_found_however_it_is_written(topic: str) -> None:
    assert [entry.key for entry in look_up(topic).entries] == ["make.set_band"]


def test_a_name_of_several_things_gives_each() -> None:
    assert {entry.key for entry in look_up("notch").entries} == {"piece.notch", "edges.notch"}
    assert [entry.key for entry in look_up("front.notch").entries] == ["piece.notch", "edges.notch"]
    assert [entry.key for entry in look_up("make.buttonholes").entries] == ["make.buttonholes"]
    assert set(look_up("length").offered or ()) == {"lesson.length"}
    assert set(look_up("panel").offered or ()) == {"kit.panel"}


@pytest.mark.parametrize(
    ("topic", "key"),
    [
        ("curved hem", "make.faced_hem"),
        ("zipper", "make.lapped_zip"),
        ("press studs", "make.fasteners"),
        ("elastic casing", "make.thread_elastic"),
        ("crotch", "make.plain_seam"),
        ("wrap skirt", "piece.leave_open"),
        ("tabard", "make.bind"),
    ],
)
def test_a_word_of_the_trade_leads_to_verbs(topic: str, key: str) -> None:
    found = look_up(topic)
    assert not found.entries and found.wanted
    assert key in {one for keys in found.wanted.values() for one in keys}
    assert entries()[key].verb.line in help_on(topic)


def test_three_letters_are_not_the_beginning_of_another_word() -> None:
    assert not any("tier" in words for words in look_up("ties").wanted or ())


@pytest.mark.parametrize(
    ("topic", "keys"),
    [
        ("welt pocket", {"make.patch_pocket", "make.pocket_bag", "make.pocket_seam"}),
        ("jetted pocket", {"make.patch_pocket", "make.pocket_bag", "make.pocket_seam"}),
        ("children", {"kit.read_chart", "lesson.measurement"}),
        ("child's size", {"kit.read_chart", "lesson.measurement"}),
        ("kids", {"kit.read_chart", "lesson.measurement"}),
    ],
)
def test_what_the_kit_has_not_is_said_with_what_it_has(topic: str, keys: set[str]) -> None:
    told = help_on(topic)
    assert keys == set(re.findall(r"^  ((?:make|kit|lesson)\.\w+)", told, re.M))
    assert "no verb for one" in told or "one of your own" in told
    assert keys <= set(entries()) | set(offered_names())


@pytest.mark.parametrize(("topic", "near"), [("setband", "set_band"), ("stay_stich", "staystitch"), ("panl", "panel")])
def test_what_is_not_known_is_told_with_the_near_ones(topic: str, near: str) -> None:
    with pytest.raises(KitError) as trouble:
        help_on(topic)
    assert topic in trouble.value.what and near in trouble.value.do


def test_what_is_near_nothing_says_how_to_ask() -> None:
    with pytest.raises(KitError) as trouble:
        help_on("xyzzy")
    assert "set_band" in trouble.value.do


def test_help_without_a_topic_lists_every_verb() -> None:
    assert help_on("") == overview()
    assert all(re.search(rf"^  {re.escape(key)} ", overview(), re.MULTILINE) for key in KEYS)


def test_headings_are_said_in_every_language() -> None:
    heads = set()
    for code in languages():
        with speaking(code):
            text = help_on("make.set_band")
        heads.add(text.split("\n")[0])
        assert "Sew the lower edge of a band to a garment's edge." in text
    assert len(heads) == len(languages()) == 4


def test_a_lesson_shows_the_same_entry(capsys: pytest.CaptureFixture[str]) -> None:
    practice_cloth().help("set_band")
    assert capsys.readouterr().out.strip() == help_on("set_band")
    with pytest.raises(KitError, match="no entry"):
        practice_cloth().help("setband")
