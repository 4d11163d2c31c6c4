"""Bodies in files: kept as typed, read by people, refused in plain words."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from kit.body import MEASUREMENTS, load_body, make_body, save_body, workshop_chart
from kit.body.file import units_of
from kit.errors import KitError
from kit.units import Length, cm


def test_lengths_are_kept_as_they_were_typed(tmp_path: Path) -> None:
    typed = {"bust_girth": "96 cm", "waist_girth": "31 1/2 in", "hip_girth": "1040mm", "back_width": '14½"'}
    body = make_body(typed, name='Edda "the tall" \\ Østby')
    path = save_body(tmp_path / "edda.toml", body, "inch")
    text = path.read_text("utf-8")
    assert 'waist_girth = "31 1/2 in"' in text and 'bust_girth = "96 cm"' in text
    assert "neck_base_girth" not in text  # estimates are not kept as if measured
    assert tomllib.loads(text)["measured"]["back_width"] == '14½"'
    again = load_body(path)
    assert again == body and units_of(path) == "inch"
    assert [m.typed for m in again.measures] == [m.typed for m in body.measures]
    assert {m.name for m in again.estimated} == set(MEASUREMENTS) - set(typed)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60)
@given(st.text(min_size=1, max_size=40), st.floats(600, 1700), st.sampled_from(["cm", "inch"]))
def test_any_name_and_number_come_back(tmp_path: Path, name: str, bust: float, units: str) -> None:
    path = save_body(tmp_path / "any.toml", make_body({"bust_girth": Length(bust)}, name=name), units)  # type: ignore[arg-type]
    again = load_body(path)
    assert again["bust_girth"] == pytest.approx(bust, abs=1e-3)
    assert again.name == name.encode("utf-8", "replace").decode("utf-8")


def test_a_file_somebody_wrote_by_hand(tmp_path: Path) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(
        '\ufeffunits = "inch"\n[measured]\nbust_girth = 36.5\nwaist_girth = "29 1/2"\nhip_girth = "97 cm"\n'
    )
    body = load_body(path)
    assert body.name == "ours"
    assert body["bust_girth"] == pytest.approx(36.5 * 25.4)
    assert body["waist_girth"] == pytest.approx(29.5 * 25.4)
    assert body["hip_girth"] == pytest.approx(970)


def test_a_size_saved_and_loaded(tmp_path: Path) -> None:
    body = workshop_chart()["W4"]
    again = load_body(save_body(tmp_path / "w4.toml", body))
    assert {m.name: m.value for m in again.measures} == pytest.approx({m.name: m.value for m in body.measures})


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("bust = = 3", ["ours.toml", "broken", "line 1"]),
        ("", ["no measurements", "[measured]"]),
        ("[measured]\n", ["no measurements"]),
        ('[measured]\nbust_grith = "96 cm"\n', ["bust_grith", "Did you mean 'bust_girth'"]),
        ('[measured]\nbust_girth = "ninety"\n', ["ours.toml", "bust girth", "'ninety'"]),
        ("[measured]\nbust_girth = true\n", ["bust girth", "cannot be read as a length"]),
        ("[measured]\nbust_girth = [96]\n", ["bust girth", "cannot be read as a length"]),
        ("[measured]\nbust_girth = nan\n", ["bust girth", "'nan'"]),
        ("[measured]\nbust_girth = " + "9" * 5000, ["ours.toml", "broken"]),
        ("[measured]\nbust_girth = 0x" + "f" * 5000, ["ours.toml", "cannot be read as a length"]),
        ("[measured]\nbust_girth = 1e400", ["ours.toml", "cannot be read as a length"]),
        ('[measured]\nbust_girth = "' + "9" * 5000 + ' cm"', ["ours.toml", "bust girth", "999", "cannot be read"]),
        ("a = " + "[" * 100_000, ["ours.toml", "broken"]),
        ("[measured]\nbust_girth = 9\n", ["bust girth", "9 cm", "cannot be right"]),
        ("[measured]\nheight = 170\n", ["Measure at least the bust girth"]),
        ('units = "ell"\n[measured]\nbust_girth = 96\n', ["'ell'", "cm"]),
        ("name = 4\n[measured]\nbust_girth = 96\n", ["name", "not text"]),
        ('bust_girth = "96 cm"\n', ["bust_girth", "[measured]"]),
        ("mesured = 3\n", ["Did you mean 'measured'"]),
        ("a = " + "[" * 5000, ["broken"]),
    ],
)
def test_a_broken_file_is_refused_in_words(tmp_path: Path, text: str, words: list[str]) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(text)
    with pytest.raises(KitError) as caught:
        load_body(path)
    for word in words:
        assert word in str(caught.value)


def test_files_that_cannot_be_read(tmp_path: Path) -> None:
    with pytest.raises(KitError, match="no such file"):
        load_body(tmp_path / "none.toml")
    with pytest.raises(KitError, match="folder"):
        load_body(tmp_path)
    (tmp_path / "x.toml").write_bytes(b"\xff\xfe\x00")
    with pytest.raises(KitError, match="not plain text"):
        load_body(tmp_path / "x.toml")


def test_a_failed_save_keeps_the_old_file(tmp_path: Path) -> None:
    path = save_body(tmp_path / "a.toml", make_body({"bust_girth": 96 * cm}))
    before = path.read_text()
    with pytest.raises(KitError, match="nothing was measured"):
        save_body(path, make_body({"bust_girth": 96 * cm}).__class__("x", ()))
    assert path.read_text() == before
    with pytest.raises(KitError, match="cannot be"):
        save_body(path / "b.toml", make_body({"bust_girth": 96 * cm}))
