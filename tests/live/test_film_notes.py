"""Chapters, captions and shot list of a film. The WebVTT is read back by ffmpeg's own reader, and held against the
grammar of the standard (W3C, WebVTT: The Web Video Text Tracks Format, section 4, Syntax)."""

from __future__ import annotations

import re
import subprocess
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path

import imageio_ffmpeg
import pytest

from kit import KitError, Lesson, film_notes, mm, player
from kit.live.captions import LINES, WIDE, caption_cues, chapter_cues, lines_of, spans
from kit.live.film import Showing
from kit.live.webvtt import Cue, webvtt

from .conftest import LessonMaker

# A cue block: an identifier without an arrow, a timing line, and lines of text with no bare "<" and no arrow, in which
# "&" begins a character reference (the standard's cue text).
TIME = r"\d{2,}:[0-5]\d:[0-5]\d\.\d{3}"
TEXT = r"(?:[^<&\n>]|&(?:amp|lt|gt);)+"
BLOCK = re.compile(rf"(?:(?!.*-->)[^\n]+\n)?({TIME}) --> ({TIME})\n{TEXT}(?:\n{TEXT})*")


def seconds(text: str) -> float:
    hours, minutes, rest = text.split(":")
    return int(hours) * 3600 + int(minutes) * 60 + float(rest)


def in_grammar(text: str) -> list[tuple[float, float]]:
    """The timings of a WebVTT file, which must have the standard's form, in order of their starts."""
    head, *blocks = text.rstrip("\n").split("\n\n")
    assert head == "WEBVTT" and text.endswith("\n")
    found = []
    for block in blocks:
        match = BLOCK.fullmatch(block)
        assert match, block
        found.append((seconds(match[1]), seconds(match[2])))
    assert all(start < end for start, end in found)
    assert found == sorted(found)
    return found


def by_ffmpeg(path: Path) -> list[tuple[str, str, str]]:
    """(start, end, text) of each cue as ffmpeg reads it and writes it as SubRip."""
    command = [imageio_ffmpeg.get_ffmpeg_exe(), "-loglevel", "error", "-i", str(path), "-f", "srt", "-"]
    said = subprocess.run(command, capture_output=True, check=True, encoding="utf-8").stdout
    blocks = [block.split("\n") for block in said.strip().split("\n\n") if block]
    return [(*block[1].split(" --> "), "\n".join(block[2:])) for block in blocks]  # type: ignore[misc]


@pytest.fixture
def lesson(make_lesson: LessonMaker) -> Lesson:
    lesson = make_lesson()

    @lesson.sew("Stitch the side seam")
    def side_seam(make, front, back):
        """Begin at the hem."""
        make.plain_seam(front.side, back.side, allowance=10 * mm)

    return lesson


def filmed(lesson: Lesson, seen: list[list[object]], brief: bool = False) -> None:
    shown = player(lesson)
    shown.brief = brief
    shown.film = {"take": "one", "started": 1, "stopped": 2, "seen": seen}


SEEN: list[list[object]] = [["lower_hem", 5.0, 12.0], ["mark_share", 12.0, 12.5], ["side_seam", 12.5, 3700.0]]


# ---- the files --------------------------------------------------------------------------------------------


def test_chapters_and_captions_read_back(lesson: Lesson, tmp_path: Path) -> None:
    filmed(lesson, SEEN)
    made = film_notes(lesson)
    assert [path.name for path in made] == ["shots.en.html", "chapters.en.vtt", "captions.en.vtt"]
    assert {path.parent for path in made} == {tmp_path / "landing-vest-film"}
    assert in_grammar(made[1].read_text()) == [(0.0, 5.0), (5.0, 12.5), (12.5, 3700.0)]
    assert by_ffmpeg(made[1]) == [
        ("00:00:00,000", "00:00:05,000", "Landing vest"),
        ("00:00:05,000", "00:00:12,500", "Lower the <hem>"),
        ("00:00:12,500", "01:01:40,000", "Stitch the side seam"),
    ]
    times = in_grammar(made[2].read_text())
    assert times[0][0] == 5.0 and all(end <= after for (_, end), (after, _) in pairwise(times))
    read = by_ffmpeg(made[2])
    assert [text for *_, text in read][:2] == [
        "Rule the hem 14\xa0cm\xa0(5½\xa0in)\nbelow the waistline.",
        "Begin at the hem.",
    ]
    assert not any("Mark" in text for *_, text in read), "stepped past"


def test_steps_shown_briefly_count_when_the_teacher_says_so(lesson: Lesson) -> None:
    filmed(lesson, SEEN, brief=True)
    made = film_notes(lesson)
    assert "Mark a share of the waist" in made[1].read_text()
    cues = [cue for cue in by_ffmpeg(made[2]) if "waistline;" in cue[2] or "buttons" in cue[2]]
    assert cues and cues[0][0] == "00:00:12,000" and cues[-1][1] == "00:00:12,500", "its words share the time there is"
    again = player(lesson)
    assert again.brief, "kept beside the notebook"
    again.brief = False
    assert "Mark a share" not in again.chapters


def test_times_by_hand_outlive_the_kernel(lesson: Lesson, make_lesson: LessonMaker) -> None:
    filmed(lesson, SEEN)
    player(lesson).correct("lower_hem", "0:03")
    again = player(make_lesson())
    again.brief = True
    assert "00:03 Lower the <hem>" in again.chapters and "00:12 Mark a share of the waist" in again.chapters


def test_without_a_clock_there_is_the_shot_list_alone(lesson: Lesson) -> None:
    assert [path.name for path in film_notes(lesson)] == ["shots.en.html"]


class Cells(HTMLParser):
    """The texts of the shot list's rows, those of its pictures left out."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.rows: list[list[str]] = []
        self.pictures = 0
        self._in = 0
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: object) -> None:
        if tag == "tr":
            self.rows.append([])
        elif tag in ("td", "th"):
            self.rows[-1].append("")
        elif tag == "svg":
            self._in, self.pictures = self._in + 1, self.pictures + 1

    def handle_endtag(self, tag: str) -> None:
        self._in -= tag == "svg"

    def handle_data(self, data: str) -> None:
        if data.strip() and self.rows and self.rows[-1] and not self._in:
            self.rows[-1][-1] += data + "|"


def test_the_shot_list_says_what_to_lay_ready(lesson: Lesson) -> None:
    filmed(lesson, SEEN)
    text = film_notes(lesson)[0].read_text()
    assert "<hem>" not in text and '<html lang="en">' in text
    page = Cells(text)
    assert page.rows[0] == ["Shot|", "Time|", "Picture|", "Have ready|"]
    assert page.rows[1][:2] == ["Drafting step 1|Lower the <hem>|", "00:05|"]
    assert page.rows[1][3] == "Tools|pencil and eraser, long ruler, set square|Pieces|Front bodice|"
    sewn = page.rows[3]
    assert sewn[0].startswith("Sewing step 1 · Picture 1 of") and sewn[1] == "00:12|"
    assert "sewing machine" in sewn[3] and "pins" in sewn[3] and "Front bodice, Back bodice" in sewn[3]
    assert "Notions|sewing thread|" in sewn[3]
    assert page.pictures == len(page.rows) - 1
    assert all(row[3] == "" for row in page.rows[4:]), "once for each step"


def test_the_shot_list_tells_words_once_how_long_they_take_and_what_to_mind(lesson: Lesson) -> None:
    """Who films has this page alone: what is done and said in each shot, whether the film leaves time to read it, and
    the usual cautions. "Rule the hem 14 cm (5 1/2 in) below the waistline." is 46 letters in two lines: at 13 a second
    3.5 s. The side seam is on show for half a minute here, the hem for two seconds."""
    filmed(lesson, [["lower_hem", 5.0, 7.5], ["side_seam", 12.5, 3700.0]])
    text = film_notes(lesson)[0].read_text()
    page = Cells(text)
    assert page.rows[1][2] == (
        "Rule the hem 14 cm (5½ in) below the waistline.|Its words take about 4 s.|"
        "On show for 2 s, and its words take about 4 s: hold the step longer, or its captions go by too fast to be "
        "read.|"
    )
    sewn = [row[2] for row in page.rows[3:]]
    assert sewn[0].startswith("Begin at the hem.|") and "Its words take" in sewn[0] and "too fast" not in sewn[0]
    said = [part for row in sewn for part in row.split("|") if part and not part.startswith("Its words")]
    assert len(said) == len(set(said)), "the same words stand under one picture"
    head = text.partition("<table>")[0]
    assert "Keep fingers and hair clear of the needle" in head and "Your local rules" in head


def test_a_step_shown_twice_is_long_enough_where_one_of_the_two_is(lesson: Lesson) -> None:
    """All its words stand under it each time it is on show: 3.5 s, as above."""
    for second, short in ((23.0, True), (24.0, False)):
        filmed(lesson, [["lower_hem", 5.0, 8.0], ["side_seam", 8.0, 20.0], ["lower_hem", 20.0, second]])
        text = film_notes(lesson)[0].read_text()
        assert ("On show for 3 s, and its words take about 4 s" in text) is short


@pytest.mark.parametrize("code", ["de", "es", "fr"])
def test_in_each_language(lesson: Lesson, code: str) -> None:
    """The kit's own sentences in the language; words of the lesson without a translation are marked."""
    filmed(lesson, SEEN)
    made = film_notes(lesson, spoken=(code,))
    assert [path.name for path in made] == [f"shots.{code}.html", f"chapters.{code}.vtt", f"captions.{code}.vtt"]
    in_grammar(made[2].read_text())
    assert "Begin at the hem. [en]" in made[2].read_text()
    assert "Stitch 1" not in made[2].read_text()
    assert f'<html lang="{code}">' in made[0].read_text() and "Have ready" not in made[0].read_text()


def test_words_beside_the_notebook_give_their_language(
    lesson: Lesson, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from dataclasses import replace

    lesson.sitting = replace(lesson.sitting, book="vest.ipynb")
    entry = 'msgid "Begin at the hem."\nmsgstr "Am Saum anfangen."\n'
    (tmp_path / "vest.de.po").write_text('msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n\n' + entry)
    filmed(lesson, SEEN)
    made = film_notes(lesson)
    assert [path.name for path in made][3:] == ["shots.de.html", "chapters.de.vtt", "captions.de.vtt"]
    assert "Am Saum anfangen." in made[5].read_text()


def test_what_cannot_be_written_is_said_and_the_last_good_stays(lesson: Lesson, tmp_path: Path) -> None:
    with pytest.raises(KitError, match="no language 'xx'"):
        film_notes(lesson, spoken=("xx",))
    (tmp_path / "taken").write_text("mine")
    with pytest.raises(KitError, match="cannot be made"):
        film_notes(lesson, tmp_path / "taken")
    assert (tmp_path / "taken").read_text() == "mine"


def test_it_can_be_called_off(lesson: Lesson, tmp_path: Path) -> None:
    assert film_notes(lesson, cancelled=lambda: True) == ()
    assert not (tmp_path / "landing-vest-film").exists()


def test_a_second_film_leaves_the_notes_of_the_first(lesson: Lesson, tmp_path: Path) -> None:
    filmed(lesson, SEEN)
    before = film_notes(lesson)[1].read_text()
    shown = player(lesson)
    shown.film = {"take": "two", "started": 1, "stopped": 2, "seen": [["mark_share", 0.0, 9.0]]}
    assert (tmp_path / "landing-vest-film-1" / "chapters.en.vtt").read_text() == before
    assert not (tmp_path / "landing-vest-film").exists()


# ---- times and lines --------------------------------------------------------------------------------------


def test_a_cue_holds_nothing_that_reads_as_a_mark() -> None:
    text = webvtt([Cue(1, 2, ("a --> b & <c>\nd\x00",), "k --> l"), Cue(3, 3, ("none",)), Cue(4, 5, ("",))])
    assert text == "WEBVTT\n\nk --&gt; l\n00:00:01.000 --> 00:00:02.000\na --&gt; b &amp; &lt;c&gt; d\n"
    assert in_grammar(webvtt([Cue(359999.9996, 360001, ("x",))])) == [(360000.0, 360001.0)]


def test_chapters_of_one_moment_and_from_the_start() -> None:
    titles = {"a": "Hem", "b": "Side"}
    cues = chapter_cues({"a": 0.0, "b": 0.0}, titles, "Vest", 0.0)
    assert [(cue.start, cue.end, cue.lines) for cue in cues] == [(0.0, 2.0, ("Hem · Side",))]
    assert chapter_cues({"gone": 3.0}, titles, "Vest", 9.0) == []


def test_one_step_is_on_show_at_a_time() -> None:
    shown = (Showing("a", 1.0, 9.0), Showing("b", 9.0, 9.5), Showing("a", 9.5, 20.0))
    assert spans({"a": 4.0}, shown) == [Showing("a", 4.0, 9.0), Showing("a", 9.5, 20.0)]
    found = spans({"a": 4.0, "c": 6.0}, shown)
    assert found[:2] == [Showing("a", 4.0, 6.0), Showing("c", 6.0, 9.5)], "put in by hand"
    assert spans({}, shown) == []


def test_captions_are_of_two_lines_and_read_without_hurry() -> None:
    """42 letters and two lines: common practice, no source."""
    text = "Pin the front facing to the neck edge, right sides together, and match every notch. " * 3
    pairs = lines_of(text)
    assert all(len(pair) <= LINES and all(len(line) <= WIDE for line in pair) for pair in pairs)
    assert " ".join(line for pair in pairs for line in pair) == text.strip()
    cues = caption_cues([Showing("a", 2.0, float("inf"))], {"a": [text]})
    assert all(sum(map(len, cue.lines)) / (cue.end - cue.start) < 17 for cue in cues)
    short = caption_cues([Showing("a", 2.0, 4.0)], {"a": [text]})
    assert short[0].start == 2.0 and short[-1].end == pytest.approx(4.0)
    assert lines_of("Cut 1,2 cm (½ Zoll) off.") == [("Cut 1,2\xa0cm\xa0(½\xa0Zoll) off.",)]
