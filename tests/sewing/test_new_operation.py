"""The operation that DEVELOPERS.md makes from nothing, as it stands there: class, messages, verb, page."""

from __future__ import annotations

import pickle
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from nbformat.v4 import new_notebook

from kit import language
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.handover import Handover
from kit.booklet.html import to_html
from kit.errors import KitError
from kit.lesson.stubs import FILES, stubs
from kit.prose import whys
from kit.reference.verb_help import in_full, verbs_of
from kit.sewing import make
from kit.sewing.order import sew
from kit.sewing.verb import VERBS
from kit.units import cm, mm

ROOT = Path(__file__).resolve().parents[2]


def blocks(kind: str) -> list[str]:
    """The blocks of that kind in the paragraph of DEVELOPERS.md on operations."""
    text = (ROOT / "DEVELOPERS.md").read_text("utf-8").partition("**An operation.**")[2].partition("**A block.**")[0]
    return re.findall(rf"^```{kind}\n(.*?)^```$", text, re.DOTALL | re.MULTILINE)


@pytest.fixture
def new(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[ModuleType]:
    """The kit with the operation: its module, its verb, its messages in English."""
    (source,) = blocks("python")
    for code in language.languages():
        folder = tmp_path / "language" / code
        folder.mkdir(parents=True)
        for path in (ROOT / "templates" / "language" / code).glob("*.ftl"):
            (folder / path.name).symlink_to(path)
    (tmp_path / "language" / "en" / "stay_tapes.ftl").write_text("\n".join(blocks("fluent")), "utf-8")
    module = ModuleType("kit.sewing.operations.stay_tapes")
    before = dict(VERBS)
    monkeypatch.setitem(sys.modules, module.__name__, module)
    monkeypatch.setattr(language, "templates", lambda: tmp_path)
    language._catalogue.cache_clear()
    verbs_of.cache_clear()
    try:
        exec(compile(source, "DEVELOPERS.md", "exec"), module.__dict__)
        monkeypatch.setattr(make.Make, "stay_tape", make._method(VERBS["stay_tape"]), raising=False)
        yield module
    finally:
        VERBS.clear()
        VERBS.update(before)
        monkeypatch.undo()
        language._catalogue.cache_clear()
        verbs_of.cache_clear()


def test_the_class_is_the_verb_and_reads_what_is_written(new: ModuleType, garments: Any, sewn: Any) -> None:
    pieces = garments.JACKET.pattern().pieces
    done = sewn(pieces, lambda make, front, **_: make.stay_tape(front.shoulder, wide=8 * mm))
    assert done.codes == []
    tape = done.last
    assert (type(tape).__name__, tape.kind, tape.wide) == ("StayTape", "stay_tape", 8.0)
    assert [(run.piece, run.edges) for run in tape.along] == [("front", ("shoulder",))]
    assert pickle.loads(pickle.dumps(tape)) == tape
    assert {fact for fact in done.state.facts if fact[0] == "taped"} == {
        ("taped", "front", side, "shoulder") for side in ("left", "right")
    }
    assert sewn(pieces, lambda make, front, **_: make.stay_tape(front.shoulder)).last.wide == 6.0
    with pytest.raises(KitError, match=r"wide.*: 2 cm .* is more than 1\.5 cm"):
        sewn(pieces, lambda make, front, **_: make.stay_tape(front.shoulder, wide=2 * cm))
    with pytest.raises(KitError, match="no edge is named"):
        sewn(pieces, lambda make, front, **_: make.stay_tape(wide=8 * mm))
    with pytest.raises(KitError, match=r"stay_tape knows no argument 'width'. Did you mean 'wide'\?"):
        sewn(pieces, lambda make, front, **_: make.stay_tape(front.shoulder, width=8 * mm))


def test_its_rules_refuse_in_words(new: ModuleType, garments: Any, sewn: Any) -> None:
    pieces = garments.JACKET.pattern().pieces
    tape = lambda make, front, **_: make.stay_tape(front.shoulder)  # noqa: E731
    seam = lambda make, front, back, **_: make.plain_seam(front.shoulder, back.shoulder, allowance=15 * mm)  # noqa: E731
    assert sewn(pieces, tape, seam).codes == []
    for writes, code, words in (
        ((tape, tape), "taped_twice", "the front shoulder seam has its tape already. Take one of the two out."),
        ((seam, tape), "taped_late", "is caught in its seam. Put the tape before the first seam there."),
    ):
        done = sewn(pieces, *writes)
        (refusal,) = sew(done.pattern)[1]
        assert refusal.code == code and words in str(refusal)
        assert (refusal.piece, refusal.edge, refusal.step) == ("front", "shoulder", "s1")


def test_it_stands_on_its_page(new: ModuleType, garments: Any, sewn: Any, tmp_path: Path) -> None:
    pieces = garments.JACKET.pattern().pieces
    done = sewn(pieces, lambda make, front, **_: make.stay_tape(front.shoulder))
    said = [
        "Lay stay tape 6 mm (1/4 in) wide on the wrong side along the shoulder seam of the front, "
        "its middle on the stitch line.",
        "Baste along its middle without stretching edge or tape.",
        "Work the left and the right side alike.",
    ]
    assert done.said == said
    assert "keeps its length" in whys(done.pattern, done.last)[0]
    page = to_html(compose(Handover(done.pattern), new_notebook(), LessonFolder(tmp_path)))
    text = re.sub(r"[\s\u00a0\u202f]+", " ", re.sub(r"<[^>]+>", "", page)).replace("¼", "1/4")
    for sentence in said:
        assert sentence in text
    assert "Step 0" in page and page.count("<svg") >= 2


def test_help_and_stub_know_it(new: ModuleType) -> None:
    text = in_full(verbs_of("make")["stay_tape"], "make")
    assert text.startswith("make.stay_tape(along, ..., wide=...)\n\nBaste stay tape along edges that would stretch")
    assert "make.stay_tape(front.shoulder, back.shoulder)" in text
    assert "wide        a length, such as 1.5 * cm; 6 mm where nothing is said" in text
    assert "def stay_tape(self, *along: Runs, wide: Size = ...) -> Operation:" in stubs()[FILES[1]]


def test_the_kit_is_as_before() -> None:
    assert "stay_tape" not in VERBS and not hasattr(make.Make, "stay_tape")
