"""What mends a lesson, as `lessonkit check` and `lessonkit bodies` tell it."""

from __future__ import annotations

import base64
import json
import pickle
from pathlib import Path

import pytest

from kit import KitError, Lesson, blank_paper, cm, make_body, mm
from kit.booklet.bodies import work_row
from kit.booklet.handover import Refused, advice, receive
from kit.cli import main

from .conftest import Writer, code

TRAP = '''
lesson.length("flap", {default}, least=2 * cm, most=20 * cm)

@lesson.step("Look at the flap")
def look_at_flap(front, flap):
    """The flap is {{flap}} deep."""
    if flap < 57.3 * mm:
        from kit import KitError
        raise KitError("the flap is too short.")
'''


def flapped(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, default: object = 10 * cm) -> Lesson:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Flap", start=blank_paper)
    lesson.length("flap", default, least=2 * cm, most=20 * cm)

    @lesson.step("Draw it", makes="piece")
    def draw(piece, flap):
        """Rule it."""
        if flap < 57.3 * mm:
            raise KitError("the flap is too short.")
        a, b, c, d = (piece.place(x * cm, y * cm) for x, y in ((0, 0), (9, 0), (9, 9), (0, 9)))
        piece.draw(one=a.to(b), two=b.to(c), three=c.to(d), four=d.to(a))
        piece.allow(one=0 * cm, two=0 * cm, three=0 * cm, four=0 * cm)
        piece.grain()
        piece.cut(1)

    return lesson


def test_advice_is_for_the_values_that_stand_and_the_lessons_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    lesson = flapped(tmp_path, monkeypatch)
    assert advice(lesson) == ()
    lesson.change(flap=3 * cm)
    (now,) = advice(lesson)
    assert not now.own and "the flap is too short." in now.trouble[0]
    assert [remedy.values for remedy in now.remedies] == [{"flap": 58.0}]
    lesson = flapped(tmp_path, monkeypatch, 4 * cm)
    lesson.change(flap=8 * cm)
    (own,) = advice(lesson)
    assert own.own and own.remedies[0].changes[0].was == 40.0


def test_a_refusal_travels_with_its_advice(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    lesson = flapped(tmp_path, monkeypatch, 4 * cm)
    found = advice(lesson)
    sent = base64.b64encode(pickle.dumps((KitError("it will not do.", where="Step", do="Try."), found))).decode()
    with pytest.raises(Refused, match=r"^Step: it will not do\. Try\.$") as raised:
        receive(sent)
    assert raised.value.advice == found


def test_check_tells_what_mends(write_lesson: Writer, capsys: pytest.CaptureFixture[str]) -> None:
    path = write_lesson({"end": [code(TRAP.format(default="4 * cm"))]})
    assert main(["check", str(path)]) == 2
    told = capsys.readouterr()
    assert "the flap is too short." in told.err and "Traceback" not in told.err
    assert "remedy: Flap: at least 5.8 cm (2 5/16 in), now 4 cm (1 9/16 in)." in told.out


def test_a_body_that_fails_is_told_what_mends_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    lesson = flapped(tmp_path, monkeypatch)

    @lesson.step("Hold it against the body")
    def hold(piece, flap, bust_girth):
        """Nothing."""
        if flap > bust_girth / 10:
            raise KitError("the flap is too deep for this body.")

    measured = {"bust_girth": 880.0, "waist_girth": 700.0, "hip_girth": 960.0}
    row = work_row(lesson, "Edda", measured)
    assert not row["drafted"] and "too deep" in row["trouble"]
    (remedy,) = row["remedies"]
    assert remedy["changes"] == [{"parameter": "flap", "from": 100.0, "to": 88.0, "way": "to"}]
    assert remedy["says"].startswith(
        "Flap: 8.8 cm (3 7/16 in), now 10 cm"
    )  # not "at most": below 5.8 cm it is too short
    assert json.dumps(row["remedies"])
    body = make_body({name: value * mm for name, value in measured.items()}, lesson.sizes, "Edda")
    assert lesson.work(body, {"flap": 88.0})
    fits = work_row(lesson, "Mara", {**measured, "bust_girth": 1040.0})
    assert fits["drafted"] and fits["remedies"] == []
    assert work_row(lesson, "Slip", {"bust_girth": 5.0})["remedies"] == []
