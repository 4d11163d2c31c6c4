"""The player without a browser: what it sends, how it follows, what its clock leaves behind."""

from __future__ import annotations

import json
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from kit import KitError, Lesson, cm, mm, player
from kit.lesson.sidecar import read
from kit.live.film import Showing, chapters, clock, corrected, marks, showings
from kit.live.player import Player
from kit.picture.filming import GROUNDS

from .conftest import LessonMaker


@pytest.fixture
def shown(make_lesson: LessonMaker) -> Player:
    lesson = make_lesson()

    @lesson.sew("Stitch the side seam")
    def side_seam(make, front, back):
        """Begin at the hem."""
        make.plain_seam(front.side, back.side, allowance=10 * mm)

    return player(lesson)


def film(seen: list[list[Any]], take: str = "one") -> dict[str, Any]:
    return {"take": take, "started": 1_000_000, "stopped": None, "seen": seen}


# ---- pictures and words -----------------------------------------------------------------------------------


def test_drafting_comes_first_then_every_picture_of_the_sewing(shown: Player) -> None:
    shots = shown.shots
    assert [shot["label"] for shot in shots[:3]] == ["Drafting step 1", "Drafting step 2", "Sewing step 1"]
    sewn = [shot for shot in shots if shot["kind"] == "sew"]
    assert len(sewn) > 1 and sewn[0]["part"] == f"Picture 1 of {len(sewn)}"
    assert "Begin at the hem." in sewn[0]["words"]
    assert shots[-1]["place"] == f"{len(shots)} of {len(shots)}"
    json.dumps(shots)


def test_words_hold_the_live_numbers(shown: Player) -> None:
    assert shown.shots[0]["words"] == ["Rule the hem 14 cm (5½ in) below the waistline."]
    before, version = shown.picture["svg"], shown.version
    shown.lesson.change(hem_drop=10 * cm)
    assert shown.shots[0]["words"] == ["Rule the hem 10 cm (3¹⁵⁄₁₆ in) below the waistline."]
    assert shown.version == version + 1
    assert shown.picture["version"] == shown.version and shown.picture["svg"] != before
    shown.lesson.choose(units="inch")
    assert shown.shots[0]["words"] == ["Rule the hem 3¹⁵⁄₁₆ in (10 cm) below the waistline."]


def test_a_picture_knows_its_turns_and_its_text_is_escaped(shown: Player) -> None:
    svg = shown.picture["svg"]
    assert 'data-kind="line"' in svg and shown.picture["seconds"] > 0
    assert "&lt;hem&gt;" in svg and "<hem>" not in svg


def test_going_on_sends_the_next_picture(shown: Player) -> None:
    first = shown.picture["svg"]
    shown.index = 1
    assert shown.picture["index"] == 1 and shown.picture["svg"] != first
    shown._heard(None, {"do": "picture", "index": 0}, [])
    assert shown.picture["index"] == 0 and shown.index == 1, "asked for in advance, not gone to"
    shown._heard(None, {"do": "picture", "index": 99}, [])
    assert shown.picture["index"] == 0


def test_a_flat_ground_takes_the_paper_away(shown: Player) -> None:
    assert 'fill="#ffffff"/>' in shown.picture["svg"]
    shown.ground = "green"
    svg = shown.picture["svg"]
    assert shown.picture["ground"] == "green"
    assert "#ffffff" not in svg and GROUNDS["green"] in svg
    ground = svg.index("</title>")
    assert f'fill="{GROUNDS["green"]}"/>' not in svg[ground : ground + 200], "and lays nothing in its place"


def test_a_new_step_keeps_the_one_on_show(shown: Player) -> None:
    shown.index = 2
    kept = shown.shots[2]["title"]
    lesson = shown.lesson

    @lesson.step("Mark the middle of the side")
    def mark_middle(front):
        """Mark the middle."""
        front.mark(middle=front.side.share(0.5))

    assert shown.shots[shown.index]["title"] == kept and shown.index == 3


def test_what_cannot_be_drafted_is_said_and_the_last_stays(shown: Player) -> None:
    lesson = shown.lesson
    count, svg = len(shown.shots), shown.picture["svg"]

    @lesson.step("Break it")
    def break_it(front, hem_drop):
        """Break."""
        raise RuntimeError("no such luck")

    assert shown.stale and "no such luck" in shown.message and "Traceback" not in shown.message
    assert len(shown.shots) == count and shown.picture["svg"] == svg
    lesson.remove("break_it")
    assert not shown.stale and shown.message == ""


def test_a_lesson_without_steps(make_lesson: LessonMaker) -> None:
    from kit import bodice_block

    empty = player(Lesson("Nothing yet", start=bodice_block))
    assert empty.shots == [] and empty.picture == {}


def test_only_a_lesson_has_a_player() -> None:
    with pytest.raises(KitError, match="not int"):
        player(3)  # type: ignore[arg-type]


def test_a_closed_player_is_forgotten(shown: Player) -> None:
    lesson, version = shown.lesson, shown.version
    shown.close()
    lesson.change(hem_drop=10 * cm)
    assert shown.version == version


def test_no_word_of_the_browser_is_missing(shown: Player, root: Path) -> None:
    import re

    script = (root / "templates" / "live" / "player.js").read_text(encoding="utf-8")
    wanted = set(re.findall(r"(?<!shot\.)words\.(\w+)", script))
    wanted |= {name for name in re.findall(r'button\("(\w+)"', script) if name in shown.words}
    assert wanted - set(shown.words) == set()
    assert not re.search(r'"[A-Z][a-z]+ [a-z]+', script), "the script has no words of its own"


# ---- the clock --------------------------------------------------------------------------------------------


def test_a_mark_is_the_first_time_on_show_for_two_seconds() -> None:
    seen = [Showing("a", 0, 1.2), Showing("b", 1.2, 9), Showing("a", 9, 11), Showing("b", 11, 40), Showing("c", 40, 41)]
    assert marks(seen) == {"b": 1.2, "a": 9}


def test_what_the_browser_sends_is_read_with_care() -> None:
    given = [["a", 0, 2.5], ["b", "x", 3], ["c", 1], None, ["d", -1, 4], ["e", 1, float("nan")], [7, 1, 2]]
    assert showings(given) == (Showing("a", 0.0, 2.5),)
    assert showings("nonsense") == () and showings(None) == ()


def test_a_time_put_in_by_hand_stands() -> None:
    assert corrected({"a": 3.0, "b": 9.0}, {"b": 8.0, "c": 20.0}) == {"a": 3.0, "b": 8.0, "c": 20.0}
    assert corrected({"a": 3.0, "b": 9.0}, {"a": None}) == {"b": 9.0}


def test_chapters_are_written_as_sites_read_them() -> None:
    titles = {"a": "Raise the shoulder", "b": "Lower the hem"}
    assert clock(200) == "03:20" and clock(3730.9) == "1:02:10" and clock(59.99) == "00:59"
    assert (
        chapters({"a": 200.0, "b": 12.5}, titles, "Top") == "00:00 Top\n00:12 Lower the hem\n03:20 Raise the shoulder\n"
    )
    assert chapters({"b": 0.4}, titles, "Top") == "00:00 Lower the hem\n"
    assert chapters({"gone": 4.0}, titles, "Top") == ""


def test_the_clock_leaves_chapters_and_marks(shown: Player, tmp_path: Path) -> None:
    shown.film = film([["lower_hem", 0, 1.0]])
    assert shown.chapters == "" and not (tmp_path / "landing-vest.chapters.txt").exists()
    shown.film = film([["lower_hem", 5.0, 12.0], ["mark_share", 12.0, 12.5], ["side_seam", 12.5, 200.0]])
    listed = "00:00 Landing vest\n00:05 Lower the <hem>\n00:12 Stitch the side seam\n"
    assert shown.chapters == listed
    assert (tmp_path / "landing-vest.chapters.txt").read_text() == listed
    assert read(shown.lesson.sitting.sidecar, "landing-vest").marks == {"lower_hem": 5.0, "side_seam": 12.5}
    assert "landing-vest.chapters.txt" in shown.kept_in
    assert [row[2] for row in shown.marks] == ["00:05", "", "00:12"]
    shown.lesson.save()
    assert read(shown.lesson.sitting.sidecar, "landing-vest").marks == {"lower_hem": 5.0, "side_seam": 12.5}, (
        "saving sliders keeps them"
    )


def test_the_booklet_prints_the_marks_of_a_bare_film(shown: Player) -> None:
    shown.film = film([["lower_hem", 200.0, 212.0]])
    shown.lesson.video("https://example.org/film")
    (video,) = shown.lesson.work().lesson.videos
    assert video.marks == (("lower_hem", 200.0),)


def test_times_are_corrected_in_the_table(shown: Player) -> None:
    shown.film = film([["lower_hem", 5.0, 12.0], ["mark_share", 12.0, 20.0]])
    shown._heard(None, {"do": "correct", "key": "lower_hem", "text": "0:04"}, [])
    shown._heard(None, {"do": "correct", "key": "side_seam", "text": "1:00"}, [])
    shown._heard(None, {"do": "correct", "key": "mark_share", "text": ""}, [])
    assert read(shown.lesson.sitting.sidecar, "landing-vest").marks == {"lower_hem": 4.0, "side_seam": 60.0}
    shown._heard(None, {"do": "correct", "key": "lower_hem", "text": "soon"}, [])
    assert "'soon' is not a time in a film" in shown.clock_message
    assert [row[2] for row in shown.marks] == ["00:04", "", "01:00"]
    shown.film = film([["lower_hem", 5.0, 12.0], ["mark_share", 12.0, 20.0], ["lower_hem", 20.0, 30.0]])
    assert read(shown.lesson.sitting.sidecar, "landing-vest").marks["lower_hem"] == 4.0, (
        "the clock going on does not undo it"
    )


def test_a_second_film_loses_nothing(shown: Player, tmp_path: Path) -> None:
    shown.film = film([["lower_hem", 5.0, 12.0]])
    first = shown.chapters
    shown.film = film([["mark_share", 0.0, 1.0]], "two")
    assert shown.chapters == first, "a clock started by mistake changes nothing"
    shown.film = film([["mark_share", 0.0, 3.0]], "two")
    assert shown.chapters == "00:00 Mark a share of the waist\n"
    assert (tmp_path / "landing-vest.chapters-1.txt").read_text() == first
    assert read(shown.lesson.sitting.sidecar, "landing-vest").marks == {"mark_share": 0.0}


def test_a_new_kernel_finds_the_times_again(shown: Player, make_lesson: LessonMaker) -> None:
    shown.film = film([["lower_hem", 5.0, 12.0]])
    again = player(make_lesson())
    assert again.chapters == "00:00 Landing vest\n00:05 Lower the <hem>\n"


def test_a_file_that_cannot_be_written_is_said(shown: Player, tmp_path: Path) -> None:
    (tmp_path / "landing-vest.chapters.txt").mkdir()
    shown.film = film([["lower_hem", 5.0, 12.0]])
    assert "cannot be written" in shown.clock_message
    assert shown.chapters.startswith("00:00"), "the list is there to copy all the same"


# ---- export -----------------------------------------------------------------------------------------------


def wait(shown: Player) -> str:
    until = time.monotonic() + 60
    while shown.exporting.get("running") and time.monotonic() < until:
        time.sleep(0.02)
    return str(shown.exporting["said"])


def test_the_button_writes_the_files(shown: Player, tmp_path: Path) -> None:
    shown._heard(None, {"do": "export", "kind": "svg", "all": True, "size": "1280 x 720", "seconds": 4}, [])
    assert wait(shown) == f"{len(shown.shots)} files are in the folder landing-vest-clips."
    assert len(list((tmp_path / "landing-vest-clips").iterdir())) == len(shown.shots)
    shown.index = 1
    shown._heard(None, {"do": "export", "kind": "png", "all": False, "size": "1280 x 720", "seconds": 4}, [])
    assert wait(shown) == "1 file is in the folder landing-vest-clips."
    assert (tmp_path / "landing-vest-clips" / "draft-02-mark_share.png").is_file()


def test_an_export_is_called_off(shown: Player, tmp_path: Path) -> None:
    shown._heard(None, {"do": "export", "kind": "gif", "all": True, "size": "3840 x 2160", "seconds": 60}, [])
    shown._heard(None, {"do": "export", "kind": "svg", "all": True, "size": "1280 x 720", "seconds": 4}, [])
    assert shown.exporting["running"], "a second one waits for nothing and begins nothing"
    shown._heard(None, {"do": "cancel"}, [])
    assert wait(shown) == "Cancelled; no file was written."
    assert not (tmp_path / "landing-vest-clips").exists()


def test_a_film_that_needs_the_extra_is_said_in_the_panel(shown: Player, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "imageio_ffmpeg", None)
    shown._heard(None, {"do": "export", "kind": "mp4", "all": False, "size": "1280 x 720", "seconds": 1}, [])
    said = wait(shown)
    assert '%pip install "pattern-lesson-kit[film]"' in said and "Traceback" not in said


def test_what_goes_wrong_is_said(shown: Player, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("IMAGEIO_FFMPEG_EXE", str(tmp_path / "nowhere"))
    shown._heard(None, {"do": "export", "kind": "mp4", "all": False, "size": "1280 x 720", "seconds": 1}, [])
    assert "ffmpeg cannot be run" in wait(shown)
    shown._heard(None, {"do": "export", "kind": "mp4", "all": False, "size": "huge", "seconds": 1}, [])
    assert shown.message and "Traceback" not in shown.message


def test_the_panel_writes_captions_and_shot_list(shown: Player, tmp_path: Path) -> None:
    ask = {"do": "export", "kind": "film", "all": False, "size": "1280 x 720", "seconds": 4}
    shown._heard(None, ask, [])
    untimed = "The chapters and captions are written once a step has a time."
    assert wait(shown) == f"1 file is in the folder landing-vest-film. {untimed}"
    shown.film = film([["lower_hem", 5.0, 12.0]])
    shown._heard(None, ask, [])
    assert wait(shown) == "3 files are in the folder landing-vest-film."
    assert ["film", "Captions and shot list (VTT, HTML)"] in shown.kinds
