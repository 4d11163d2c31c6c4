"""The booklet beside a page: what it is answered for a body is what a booklet built for that body says."""

from __future__ import annotations

import json
import re
from dataclasses import asdict
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from nbformat.v4 import new_markdown_cell, new_notebook

from kit import make_body, open_lesson
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.fine_setting import fine_text
from kit.booklet.forms import SCREEN
from kit.booklet.handover import Handover, work
from kit.booklet.html import to_html
from kit.booklet.model import Booklet, DraftStep, SewStep
from kit.booklet.run_notebook import Ran
from kit.booklet.screen import screen
from kit.cloth.kept_lays import Kept
from kit.live_cli import write_live
from kit.page import booklet_page, build
from kit.page.booklet_page import PageBooklet, _of_a_size, booklet_file, page_booklet
from kit.page.bundle import modules, packages
from kit.page.engine import Engine
from kit.resources import examples
from kit.units import Length
from tests.unplaced import texts_unplaced

SKIRT = examples() / "dune_skirt.ipynb"
TYPED = {"waist_girth": "78 cm", "hip_girth": "103 cm"}


@pytest.fixture(scope="module")
def engine() -> Engine:
    return Engine(SKIRT)


@pytest.fixture(scope="module")
def ines() -> tuple[Booklet, Handover]:
    """The booklet built for a body, at home."""
    lesson = open_lesson(SKIRT)
    lesson.choose(body=make_body(TYPED, lesson.sizes, "Ines"), units="cm")
    given = work(lesson, None, "cm")
    words = new_markdown_cell("Waist {waist_girth}, lifted {waist_girth:cm}.")
    with texts_unplaced():
        return compose(given, new_notebook(cells=[words]), LessonFolder(examples()), marked=True), given


def ask(engine: Engine, **message: Any) -> dict[str, Any]:
    body = {"name": "Ines", "typed": TYPED}
    made: dict[str, Any] = json.loads(engine.answer(json.dumps({"do": "booklet", "body": body, **message})))
    assert made["ok"], made
    return made


def plain(value: Any) -> Any:
    """As JSON carries it, set as the booklet sets it."""
    if isinstance(value, str):
        return fine_text(value)
    if isinstance(value, dict):
        return {key: plain(each) for key, each in value.items()}
    return [plain(each) for each in value] if isinstance(value, list | tuple) else value


def test_tables_and_lengths_are_those_of_a_booklet_built_for_the_body(
    engine: Engine, ines: tuple[Booklet, Handover]
) -> None:
    told, (book, _) = ask(engine), ines
    tables = told["tables"]
    assert tables["body"] == plain(asdict(book.body_table))  # type: ignore[arg-type]
    assert told["sizes"] == {"mine": "", "note": plain(book.size_tables[-1].note)} and "Ines" in told["sizes"]["note"]
    sized = ask(engine, body={"size": "W6"})["sizes"]
    assert sized["mine"] == "W6" and "size W6" in sized["note"]
    assert tables["finished"] == plain(asdict(book.finished_tables[0]))
    assert ["Hip girth", "103\u00a0cm (40½\u00a0in)", "measured"] in tables["body"]["rows"]
    for name, table in (("ease", book.ease_table), ("choices", book.choices), ("cut", book.cut_table)):
        assert tables[name] == plain(asdict(table)), name  # type: ignore[arg-type]
    assert tables["strips"] is None and book.strip_table is None
    assert told["allowances"] == plain(book.marking.allowances) and told["for"] == "Ines"
    assert book.measuring is not None
    for tape in book.measuring.tapes:
        assert told["tapes"][tape.key] == plain([tape.value, "estimated" if tape.estimated else ""])
    for card in book.cards:
        assert told["cards"][str(card.number)] == plain(card.cuts)


def test_the_cloth_to_buy_is_that_of_the_nearest_size() -> None:
    cloth = {"sizes": {"W6": [{"cloth": "main", "width": 1400.0, "length": 900.0}]}}
    table = ask(Engine(SKIRT, cloth=cloth))["tables"]["lengths"]
    assert table["title"] == "Cloth to buy" and table["head"] == ["Cloth", "Width", "Length to buy"]
    assert table["rows"] == [["Main cloth", "140\u00a0cm (55\u00a0in)", "0.9\u00a0m (1\u00a0yd)"]]


def test_steps_are_told_and_numbered_as_there(engine: Engine, ines: tuple[Booklet, Handover]) -> None:
    book, given = ines
    blocks = [block for part in (book.drafting, book.sewing) for block in part.blocks]
    drafting = [block for block in blocks if isinstance(block, DraftStep)]
    sewing = [block for block in blocks if isinstance(block, SewStep)]
    assert len(drafting) == len(given.pattern.steps) and len(sewing) == len(given.pattern.sewing)
    for block in (drafting[0], drafting[-1]):
        marks = re.findall(r'data-live="([^"]*)">(.*?)</span>', str(block.text))
        told = ask(engine, step={"kind": "draft", "key": block.key}, live=[mark for mark, _ in marks])
        assert told["live"] == plain(dict(marks)) and told["numbers"] == plain(block.numbers)
        (picture,) = told["operations"][0]["pictures"]
        assert f">{block.picture.alt}</title>" in picture["svg"]
    for block in sewing[:2]:  # type: ignore[assignment]
        told = ask(engine, step={"kind": "sew", "key": block.key})
        assert isinstance(block, SewStep)
        assert [each["text"] for each in told["operations"]] == plain([each.text for each in block.operations])
        assert [len(each["pictures"]) for each in told["operations"]] == [len(e.pictures) for e in block.operations]


def test_numbers_in_words_are_marked_and_said_anew(engine: Engine, ines: tuple[Booklet, Handover]) -> None:
    book, _ = ines
    html = to_html(book, SCREEN, live=True)
    assert re.search(r'<span data-live="waist_girth\|">78\scm', html)
    told = ask(engine, live=["waist_girth|", "waist_girth|cm", "nothing|", 7, "hip_girth|nonsense"])
    assert told["live"]["waist_girth|"].startswith("78\u00a0cm") and set(told["live"]) == {
        "waist_girth|",
        "waist_girth|cm",
    }


def test_only_a_live_booklet_is_marked(ines: tuple[Booklet, Handover]) -> None:
    with texts_unplaced():
        book = compose(ines[1], new_notebook(), LessonFolder(examples()))
    html = to_html(book, SCREEN)
    assert "data-live" not in html and "data-part" not in html and "data-kind" not in html
    assert "wasm" not in screen(html) and "connect-src" not in screen(html)


def test_it_knows_its_engine_and_asks_nowhere_else(ines: tuple[Booklet, Handover]) -> None:
    html = to_html(ines[0], SCREEN, live=True)
    made = PageBooklet(html, "en", "cm", "W4", ("#1f2d3a", "#a8391b"), {}, ())
    text = unescape(booklet_file(made, "edition-0123456789ab", "dune", {"a": "</script><b>"}, 6))
    assert "default-src 'none'" in text and "connect-src 'self'" in text and "unsafe-inline" not in text
    assert '<script type="module" src="edition-0123456789ab/booklet.js">' in text and "</script><b>" not in text


def test_the_booklets_of_all_languages_lead_to_one_another(tmp_path: Path, ines: tuple[Booklet, Handover]) -> None:
    html = to_html(ines[0], SCREEN, live=True)
    made = [PageBooklet(html, code, "cm", "W4", ("#1f2d3a", "#a8391b"), {}, ()) for code in ("en", "de", "fr")]
    (tmp_path / "booklet.es.html").write_text("of a former build")
    parts = {"a.js": b"1", "notices.txt": b""}
    build._write(tmp_path, parts, "Dune skirt", ("en", "de", "fr"), (), made)
    names = {"en": "booklet.html", "de": "booklet.de.html", "fr": "booklet.fr.html"}
    assert {path.name for path in tmp_path.glob("booklet*.html")} == set(names.values())
    for code, name in names.items():
        text = (tmp_path / name).read_text(encoding="utf-8")
        links = re.findall(r'<a href="([^"]+)" lang="(..)" hreflang="..">', text)
        assert links == [(names[other], other) for other in names if other != code]
        assert f'<a href="{name}" lang="{code}" hreflang="{code}" aria-current="page">' in text
        assert ">Deutsch</a>" in text and ">Français</a>" in text
    index = (tmp_path / "index.html").read_text(encoding="utf-8")
    assert json.loads(unescape(re.findall(r'data-files="([^"]+)"', index)[0])) == names
    build._write(tmp_path, parts, "Dune skirt", ("en",), (), made[:1])
    assert [path.name for path in tmp_path.glob("booklet*.html")] == ["booklet.html"]
    assert 'class="languages"' not in (tmp_path / "booklet.html").read_text(encoding="utf-8")


def test_a_page_without_a_booklet_carries_nothing_of_it() -> None:
    alone, beside = modules(), modules(booklet=True)
    assert not {name for name in alone if name.startswith("kit.booklet")} and "kit.page.booklet" not in alone
    assert {"kit.page.booklet", "kit.booklet.step_shown", "kit.booklet.tables"} <= beside
    assert not {"kit.booklet.compose", "kit.booklet.type", "kit.booklet.build", "kit.page.booklet_page"} & beside
    files = packages(["en"], booklet=True)
    assert "markupsafe/_native.py" in files and not [name for name in files if name.endswith((".so", ".pyd"))]


def test_nobodys_body_is_in_it() -> None:
    lesson = open_lesson(SKIRT)
    given = work(lesson, "W6", "cm", ("all",))
    assert _of_a_size(given).pattern.body.name == "W6"
    lesson.choose(body=make_body(TYPED, lesson.sizes, "Ines"))
    mine = work(lesson, None, "cm", ("all",))
    assert mine.pattern.body.name == "Ines" and _of_a_size(mine).pattern.body.name == "W4"


def test_it_is_drawn_in_the_size_and_at_the_values_that_were_asked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    lesson = open_lesson(SKIRT)
    drop = next(one for one in lesson.parameters if one.kind == "length")
    lesson.change(**{drop.name: Length((drop.least + drop.default) / 2)})
    value = lesson.values[drop.name]
    drawn: list[Handover] = []
    monkeypatch.setattr(booklet_page, "shopping", lambda given, kept: None)
    monkeypatch.setattr(booklet_page, "compose", lambda given, *more, **how: drawn.append(given))
    monkeypatch.setattr(booklet_page, "to_html", lambda *given, **how: "<html></html>")
    lesson.choose(size="W6", units="inch")
    ran = Ran(new_notebook(), SKIRT.parent, work(lesson, None, "inch", ("W6",)))
    made = page_booklet(ran, SKIRT, "en", Kept())
    assert (made.size, made.units, dict(made.values)) == ("W6", "inch", {drop.name: pytest.approx(value)})
    assert made.notes == () and drawn[0].pattern.body.name == "W6"
    lesson.choose(body=make_body(TYPED, lesson.sizes, "Ines"))
    ran = Ran(new_notebook(), SKIRT.parent, work(lesson, None, "cm", ("W4",)))
    made = page_booklet(ran, SKIRT, "en", Kept())
    assert made.size == "W4" and "in size W4, not for Ines" in made.notes[0], "said, and nobody's body is in it"


def test_what_the_build_was_asked_for_reaches_the_notebook(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    asked: dict[str, Any] = {}

    class Enough(Exception):
        pass

    def run(*given: Any, **how: Any) -> None:
        asked.update(how)
        raise Enough

    monkeypatch.setattr(build, "core", lambda *given: None)
    monkeypatch.setattr(build, "run_notebook", run)
    draft = AskedDraft("", (("hem_rise", "2 cm"),))
    with pytest.raises(Enough):
        write_live(SKIRT, tmp_path / "live", None, 60, size="W6", units="inch", draft=draft)
    assert (asked["size"], asked["units"], asked["draft"], asked["timeout"]) == ("W6", "inch", draft, 60)


def test_a_step_there_is_not_is_refused(engine: Engine) -> None:
    for step in ({"kind": "draft", "key": "gone"}, {"kind": "sew", "key": 7}, {}):
        made = json.loads(engine.answer(json.dumps({"do": "booklet", "step": step})))
        assert not made["ok"] and "load the page again" in made["said"].lower()
