"""Measurements of a lesson's own: in the chart, for any body, in the body file, in tables of people."""

from __future__ import annotations

import pytest

from kit import Lesson, blank_paper, cm, load_body, make_body, mm, read_chart, save_body
from kit.booklet.bodies import _report, parse_people, work_row
from kit.booklet.handover import work as hand_over
from kit.booklet.measuring import said, used_measures
from kit.booklet.tables import body_table, size_table
from kit.errors import KitError
from kit.lesson.own_words import own_texts

HATS = read_chart("measure,S,M,L\nhead_girth,55,57,59", "Hats")
NOTE = "From the brow up to the top of the head."


def hat(said: str = "") -> Lesson:
    lesson = Lesson("Brim hat", start=blank_paper, sizes=HATS, size="M")
    lesson.measurement("crown_height", [17 * cm, 17.5 * cm, 18 * cm], note=NOTE, said=said)

    @lesson.step("Draw the side", makes="side")
    def side(side, head_girth, crown_height):
        """Half of {head_girth} long, {crown_height} high."""
        start = side.place(0 * mm, 0 * mm)
        end = start.out(head_girth / 2)
        top = end.up(crown_height)
        left = start.up(crown_height)
        side.draw(lower=start.to(end), end=end.to(top), upper=top.to(left), centre=left.to(start))

    return lesson


def heights(lesson: Lesson) -> list[float]:
    return [lesson.work(body=lesson.sizes[size]).piece("side").edge("end").path.length for size in lesson.sizes.names]


def test_a_hat_has_sizes() -> None:
    lesson = hat()
    assert lesson.measures == ("head_girth", "crown_height")
    assert lesson.sizes["S"]["crown_height"] == 170.0
    assert heights(lesson) == [170.0, 175.0, 180.0]
    assert lesson.body["crown_height"] == 175.0 and not lesson.body.estimated


def test_the_chart_is_made_once_until_another_measurement_is_written() -> None:
    lesson = hat()
    first = lesson.sizes
    assert lesson.sizes is first
    lesson.measurement("brow_girth", 57 * cm, note=NOTE)
    assert "brow_girth" in lesson.sizes.table and "brow_girth" not in first.table


def test_by_size_name_and_one_for_all() -> None:
    lesson = hat()
    lesson.measurement("crown_height", {"L": 19 * cm, "S": 16 * cm, "M": 17 * cm}, note=NOTE)
    assert heights(lesson) == [160.0, 170.0, 190.0]
    lesson.measurement("crown_height", 17 * cm, note=NOTE)
    assert heights(lesson) == [170.0] * 3


def test_of_a_body_that_was_not_measured_there_it_is_estimated_and_said_to_be() -> None:
    lesson = hat()
    lesson.choose(body=make_body({"head_girth": 58 * cm}, HATS, "Ann"))  # made before the lesson brought its own
    (guess,) = lesson.body.estimated
    assert (guess.name, guess.value) == ("crown_height", pytest.approx(177.5))
    table = body_table(hand_over(lesson, None, None))
    assert table is not None and table.rows[1][0] == "Crown height" and "crown height" in table.note
    lesson.choose(body=make_body({"head_girth": 58 * cm, "crown_height": "20 cm"}, lesson.sizes, "Ann"))
    assert lesson.body["crown_height"] == 200.0 and not lesson.body.estimated


def test_it_is_kept_in_the_body_file_and_loaded_with_or_without_the_lesson(tmp_path) -> None:
    lesson = hat()
    body = make_body({"head_girth": "58 cm", "crown_height": "20 cm"}, lesson.sizes, "Ann")
    path = save_body(tmp_path / "ann.toml", body)
    assert '[own]\ncrown_height = "20 cm"' in path.read_text("utf-8")
    for loaded in (load_body(path, lesson.sizes), load_body(path, HATS)):
        lesson.choose(body=loaded)
        assert lesson.body["crown_height"] == 200.0


def test_a_name_in_another_script_comes_back_from_the_body_file(tmp_path) -> None:
    """A bare key of TOML is ASCII alone (TOML 1.0.0, "Keys"); Python's names are not."""
    lesson = Lesson("Hat", start=blank_paper, sizes=HATS)
    lesson.measurement("kopfhöhe", 18 * cm, note=NOTE)
    path = save_body(tmp_path / "ann.toml", make_body({"head_girth": "58 cm", "kopfhöhe": "20 cm"}, lesson.sizes))
    for loaded in (load_body(path, lesson.sizes), load_body(path, HATS)):
        assert loaded["kopfhöhe"] == 200.0


def test_only_a_girth_that_rises_tells_a_size() -> None:
    lesson = Lesson("Hat", start=blank_paper, sizes=HATS)
    lesson.measurement("band_girth", 60 * cm, note=NOTE)
    lesson.measurement("ear_girth", [20 * cm, 22 * cm, 24 * cm], note=NOTE)
    assert lesson.sizes.keys == ("head_girth", "ear_girth")
    with pytest.raises(KitError, match="girth"):
        make_body({"band_girth": "60 cm"}, lesson.sizes)
    assert make_body({"ear_girth": "23 cm"}, lesson.sizes)["head_girth"] == 580.0


def test_its_kind_is_said_or_read_from_the_end_of_its_name() -> None:
    """A measurement along the body is estimated by the person's height; one around it is not. The heights of the chart
    are invented."""
    chart = read_chart("measure,S,M,L\nhead_girth,55,57,59\nheight,164,166,168", "Hats")
    lesson = Lesson("Hat", start=blank_paper, sizes=chart)
    lesson.measurement("kopfumfang", 57 * cm, note=NOTE, kind="girth")
    lesson.measurement("brow_girth", 57 * cm, note=NOTE)
    lesson.measurement("crown", 20 * cm, note=NOTE)
    lesson.measurement("ear_girth", 20 * cm, note=NOTE, kind="height")
    assert [lesson.sizes.measurement(name).kind for name in ("kopfumfang", "brow_girth")] == ["girth", "girth"]
    tall = make_body({"head_girth": 57 * cm, "height": 199.2 * cm}, lesson.sizes)
    found = [tall[name] for name in ("kopfumfang", "brow_girth", "crown", "ear_girth")]
    assert found == pytest.approx([570.0, 570.0, 240.0, 240.0])


def test_another_kind_is_refused() -> None:
    lesson = Lesson("Hat", start=blank_paper, sizes=HATS)
    with pytest.raises(KitError, match=r"'grith'.*'girth'"):
        lesson.measurement("brow", 57 * cm, note=NOTE, kind="grith")  # type: ignore[arg-type]
    with pytest.raises(KitError, match="a note of its own"):
        lesson.measurement("hand_girth", 19 * cm, kind="width")


def test_a_slip_is_told_with_its_note(tmp_path) -> None:
    lesson = hat("height of the crown")
    with pytest.raises(KitError, match=r"height of the crown.*From the brow"):
        make_body({"head_girth": "58 cm", "crown_height": "2 cm"}, lesson.sizes)
    path = tmp_path / "ann.toml"
    path.write_text('name = "Ann"\n[measured]\nhead_girth = "58 cm"\n[own]\ncrown_height = "2 cm"\n', "utf-8")
    with pytest.raises(KitError, match="height of the crown"):
        lesson.choose(body=load_body(path, HATS))
    assert lesson.body.name == "M"


def test_it_stands_in_chart_how_to_measure_and_the_words_to_translate() -> None:
    given = hand_over(hat("height of the crown"), None, None)
    assert used_measures(given) == ("head_girth", "crown_height")
    table = size_table(given)
    assert table is not None and [row[0] for row in table.rows] == ["Head girth", "Height of the crown"]
    assert said("crown_height", given.pattern.lesson.measurements) == "Height of the crown"
    texts = {each.text: each.where for each in own_texts(given.pattern)}
    assert texts[NOTE] == "Measurement 'crown_height', how it is taken"
    assert "height of the crown" in texts


def test_a_table_of_people_may_have_a_column_for_it() -> None:
    people = parse_people("name,head,crown height (cm),shoe\nAnn,58,20,39\n")
    (row,) = people.rows
    assert dict(row.more) == {"crown_height": 200.0, "shoe": 390.0}
    lesson = hat()
    found = work_row(lesson, row.name, {**dict(row.more), **dict(row.values)})
    assert found["drafted"] and found["estimated"] == []
    assert work_row(lesson, row.name, dict(row.values))["estimated"] == ["crown_height"]


def test_the_report_on_people_counts_its_column_as_taken(tmp_path) -> None:
    people = parse_people("name,head,crown height (cm),shoe\nAnn,58,20,39\n")
    (row,) = people.rows
    worked = {row.line: work_row(hat(), row.name, {**dict(row.more), **dict(row.values)})}
    made = _report(people, worked, {"own": ["crown_height"]}, tmp_path / "class.csv", tmp_path / "hat.ipynb")
    assert made["columns"] == {"head": "head_girth", "crown height (cm)": "crown_height"}
    assert list(made["ignored"]) == ["shoe"]
    assert made["rows"][0]["measured"] == {"head_girth": 580.0, "crown_height": 200.0}


def test_the_tables_own_measurements_may_be_given_to_a_chart_that_lacks_them() -> None:
    lesson = Lesson("Hat", start=blank_paper, sizes=HATS)
    lesson.measurement("hand_girth", [18 * cm, 19 * cm, 20 * cm])
    assert lesson.sizes["L"]["hand_girth"] == 200.0
    with pytest.raises(KitError, match="a note of its own"):
        lesson.measurement("hand_girth", [18 * cm, 19 * cm, 20 * cm], note="Round the hand.")


@pytest.mark.parametrize(
    ("values", "note", "words"),
    [
        ([17 * cm, 18 * cm], NOTE, "2 values for 3 sizes"),
        ({"S": 17 * cm, "M": 18 * cm}, NOTE, "L has no value"),
        ({"S": 17 * cm, "M": 18 * cm, "XL": 19 * cm}, NOTE, "no size 'XL'"),
        ([17 * cm, 18 * cm, 19 * cm], "", "how it is taken"),
        ([17, 18, 19], NOTE, "unit"),
    ],
)
def test_what_is_refused(values, note: str, words: str) -> None:
    lesson = Lesson("Hat", start=blank_paper, sizes=HATS)
    with pytest.raises(KitError, match=words):
        lesson.measurement("crown_height", values, note=note)


def test_a_variation_keeps_it() -> None:
    assert heights(hat().variation("Other hat")) == [170.0, 175.0, 180.0]
