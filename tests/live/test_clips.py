"""Pictures and clips, read back by other means than they were written: Pillow, and ffmpeg's own reader."""

from __future__ import annotations

import io
import re
import sys
import tomllib
from pathlib import Path
from xml.etree import ElementTree

import imageio_ffmpeg
import numpy as np
import pytest
from PIL import Image

from kit import KitError, Lesson, lesson_clips, mm
from kit.language import say, speaking
from kit.live.lower_third import bars
from kit.picture.step_pictures import player_pictures

from .conftest import LessonMaker

SMALL = (160, 90)


@pytest.fixture
def lesson(make_lesson: LessonMaker) -> Lesson:
    lesson = make_lesson()

    @lesson.sew("Stitch the side seam")
    def side_seam(make, front, back):
        """Begin at the hem."""
        make.plain_seam(front.side, back.side, allowance=10 * mm)

    return lesson


def frames(path: Path) -> tuple[dict[str, object], list[np.ndarray]]:
    """What ffmpeg says of a film, and its pictures."""
    reading = imageio_ffmpeg.read_frames(str(path))
    about = next(reading)
    wide, high = about["size"]
    return about, [np.frombuffer(one, np.uint8).reshape(high, wide, 3) for one in reading]


def test_a_film_reads_back_with_its_size_time_and_kind(lesson: Lesson, tmp_path: Path) -> None:
    (path,) = lesson_clips(lesson, tmp_path, "lower_hem", size=SMALL, seconds=1.0, rate=25)
    about, pictures = frames(path)
    assert path.name == "draft-01-lower_hem.mp4"
    assert about["size"] == SMALL
    assert about["fps"] == 25
    assert about["codec"] == "h264"
    assert str(about["pix_fmt"]).startswith("yuv420p")
    assert about["duration"] == pytest.approx(1.0, abs=0.05)
    assert len(pictures) == 25
    dark = [int((picture < 225).any(axis=2).sum()) for picture in pictures]
    assert dark[-1] > dark[0] > 0, "what stands is there from the start, and more is drawn"
    assert np.abs(pictures[-1].astype(int) - pictures[-2]).max() < 12, "it stands still at the end"


def test_a_flat_ground_is_flat(lesson: Lesson, tmp_path: Path) -> None:
    (path,) = lesson_clips(lesson, tmp_path, "lower_hem", size=SMALL, seconds=0.4, ground="#00b140")
    _, pictures = frames(path)
    corner = pictures[-1][:12, :12].reshape(-1, 3).astype(int)
    assert np.ptp(corner, axis=0).max() <= 3
    assert corner.mean(axis=0) == pytest.approx((0, 0xB1, 0x40), abs=12), "as ffmpeg reads it back"


def test_a_sewing_step_shows_all_its_pictures(lesson: Lesson, tmp_path: Path) -> None:
    count = len([shot for shot in player_pictures(lesson.work(), "cm") if shot.key == "side_seam"])
    (path,) = lesson_clips(lesson, tmp_path, ["side_seam"], size=SMALL, seconds=0.5)
    about, _ = frames(path)
    assert count > 1
    assert about["duration"] == pytest.approx(0.5 * count, abs=0.06)


def test_a_moving_picture_reads_back(lesson: Lesson, tmp_path: Path) -> None:
    (path,) = lesson_clips(lesson, tmp_path, "lower_hem", "gif", SMALL, 1.6)
    with Image.open(path) as image:
        assert image.format == "GIF" and image.size == SMALL
        times = []
        for number in range(image.n_frames):
            image.seek(number)
            times.append(image.info["duration"])
    assert len(times) > 5
    assert sum(times) == pytest.approx(1600, abs=80)
    assert times[-1] == max(times), "the finished picture stands"


def test_a_clip_may_last_as_long_as_its_words(lesson: Lesson, tmp_path: Path) -> None:
    """13 letters a second (common practice, no source), and words that stand under two pictures are read once."""
    (path,) = lesson_clips(lesson, tmp_path, "side_seam", "gif", (96, 54), "words")
    with Image.open(path) as image:
        times = []
        for number in range(image.n_frames):
            image.seek(number)
            times.append(image.info["duration"])
    pictures = [one for one in player_pictures(lesson.work(), "cm") if one.key == "side_seam"]
    assert len(pictures) > 1 and all(one.words[-1] == pictures[0].words[-1] for one in pictures)
    first = sum(map(len, pictures[0].words)) / 13
    assert first > 6 and sum(times) / 1000 == pytest.approx(first + 4 * (len(pictures) - 1), rel=0.1)


def test_a_picture_has_clear_ground(lesson: Lesson, tmp_path: Path) -> None:
    (path,) = lesson_clips(lesson, tmp_path, "lower_hem", "png", (320, 180))
    with Image.open(path) as image:
        assert image.mode == "RGBA" and image.size == (320, 180)
        alpha = np.asarray(image)[:, :, 3]
    assert alpha[:3].max() == 0 and alpha[:, :3].max() == 0, "nothing at the edge"
    assert (alpha > 200).sum() > 100 and (alpha == 0).mean() > 0.5


def test_drawings_of_all_steps(lesson: Lesson, tmp_path: Path) -> None:
    told: list[tuple[float, str]] = []
    made = lesson_clips(lesson, tmp_path, kind="svg", progress=lambda share, name: told.append((share, name)))
    drawn = [shot for shot in player_pictures(lesson.work(), "cm") if shot.draw]
    assert len(made) == len(drawn) and all(path.is_file() for path in made)
    text = made[0].read_text(encoding="utf-8")
    assert text.startswith("<svg ") and "Lower the &lt;hem&gt;" in text
    assert 'fill="#ffffff"/><g' not in text, "no paper under it"
    shares = [share for share, _ in told]
    assert shares == sorted(shares) and shares[-1] == pytest.approx(1.0)


def test_it_can_be_called_off(lesson: Lesson, tmp_path: Path) -> None:
    """What is finished stays; of what was begun there is no trace."""
    seen: list[str] = []

    def asked() -> bool:
        return len(seen) > 8

    made = lesson_clips(
        lesson, tmp_path, size=SMALL, seconds=0.2, progress=lambda _, name: seen.append(name), cancelled=asked
    )
    assert [path.name for path in made] == ["draft-01-lower_hem.mp4"]
    assert sorted(path.name for path in tmp_path.iterdir() if path.is_file()) == ["draft-01-lower_hem.mp4"]


@pytest.mark.parametrize("code", ["en", "de", "es", "fr"])
def test_without_the_extra_it_is_said_what_to_type(
    lesson: Lesson, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, code: str
) -> None:
    """Everything but a film is written all the same."""
    path = tmp_path / "draft-01-lower_hem.mp4"
    path.write_bytes(b"the last good one")
    monkeypatch.setitem(sys.modules, "imageio_ffmpeg", None)  # as where it is not installed: importing it fails
    with speaking(code), pytest.raises(KitError, match=r'%pip install "pattern-lesson-kit\[film\]"') as refused:
        lesson_clips(lesson, tmp_path, "lower_hem", size=SMALL, seconds=0.2)
    with speaking(code):
        assert str(refused.value).startswith(say("player.film_missing"))
    assert "MP4" in str(refused.value) and "GIF" in str(refused.value)
    assert path.read_bytes() == b"the last good one"
    for kind in ("gif", "png", "svg"):
        assert lesson_clips(lesson, tmp_path, "lower_hem", kind, SMALL, 0.2)[0].is_file()


def test_the_extra_is_named_as_the_message_says(root: Path) -> None:
    project = tomllib.loads((root / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["name"] == "pattern-lesson-kit"
    assert [one.split(">")[0] for one in project["optional-dependencies"]["film"]] == ["imageio-ffmpeg"]
    assert not any("ffmpeg" in one for one in project["dependencies"])


def test_ffmpeg_that_cannot_be_run_is_said_plainly(
    lesson: Lesson, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "draft-01-lower_hem.mp4"
    path.write_bytes(b"the last good one")
    for program in (str(tmp_path / "nowhere"), "/bin/false"):
        monkeypatch.setenv("IMAGEIO_FFMPEG_EXE", program)
        with pytest.raises(KitError, match="ffmpeg cannot be run") as refused:
            lesson_clips(lesson, tmp_path, "lower_hem", size=SMALL, seconds=0.2)
        assert "GIF" in str(refused.value) and "Traceback" not in str(refused.value)
        assert path.read_bytes() == b"the last good one"


@pytest.mark.parametrize(
    ("options", "said"),
    [
        ({"steps": "lower_him"}, "Did you mean 'lower_hem'"),
        ({"kind": "avi"}, "no kind 'avi'"),
        ({"size": (161, 90)}, r"size=\(162, 90\)"),
        ({"size": (0, 90)}, "0 x 90"),
        ({"seconds": 0}, "0 seconds"),
        ({"rate": 24}, "24 frames"),
        ({"ground": "green"}, "'green' is not a colour"),
    ],
)
def test_bad_wishes_are_refused(lesson: Lesson, tmp_path: Path, options: dict[str, object], said: str) -> None:
    with pytest.raises(KitError, match=said):
        lesson_clips(lesson, tmp_path, **options)  # type: ignore[arg-type]
    assert not list(tmp_path.glob("*.mp4"))


def test_a_build_writes_no_clips(lesson: Lesson, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("LESSONKIT_BUILD", "1")
    assert lesson_clips(lesson, tmp_path / "none", "lower_hem", "svg") == ()
    assert not (tmp_path / "none").exists()


def test_a_folder_that_cannot_be_made(lesson: Lesson, tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file")
    with pytest.raises(KitError, match="taken"):
        lesson_clips(lesson, tmp_path / "taken", "lower_hem", "svg")


def test_a_clip_to_look_at(lesson: Lesson, tmp_path: Path, out_folder: Path) -> None:
    """A frame in the middle and the last one, side by side with the clear picture on a chequered ground."""
    (film,) = lesson_clips(lesson, tmp_path, "lower_hem", size=(640, 360), seconds=1.0, ground="#00b140")
    _, pictures = frames(film)
    clear = lesson_clips(lesson, tmp_path, "side_seam", "png", (640, 360))[-1]
    sheet = Image.new("RGB", (1280, 720), "#d8d8d8")
    sheet.paste(Image.fromarray(pictures[8]), (0, 0))
    sheet.paste(Image.fromarray(pictures[-1]), (640, 0))
    with Image.open(io.BytesIO(clear.read_bytes())) as image:
        sheet.paste(image, (0, 360), image)
    sheet.save(out_folder / "clips.png")
    assert re.fullmatch(r"sew-01-side_seam-\d\.png", clear.name)


# ---- the sentence in the lower third ----------------------------------------------------------------------


def dark_rows(picture: np.ndarray) -> np.ndarray:
    """Whether each row of pixels has ink in it."""
    return (picture[:, :, :3] < 110).all(axis=2).any(axis=1)


def test_the_sentence_stands_in_the_lower_third_and_covers_no_line(lesson: Lesson, tmp_path: Path) -> None:
    size = (640, 360)
    bare = lesson_clips(lesson, tmp_path / "bare", "lower_hem", size=size, seconds=0.4, ground="#00b140")[0]
    said = lesson_clips(lesson, tmp_path, "lower_hem", size=size, seconds=0.4, ground="#00b140", sentence=True)[0]
    about, pictures = frames(said)
    assert about["size"] == size
    (shot,) = [shot for shot in player_pictures(lesson.work(), "cm") if shot.key == "lower_hem"]
    (bar,) = bars([(shot.title, shot.words)], size)
    top = size[1] - bar.size[1]
    assert top >= size[1] * 2 / 3 - 1, "no more than the lower third"
    last = pictures[-1].astype(int)
    assert last[top + 4 :, -8:].min() > 235, "white beside the words, so that keying leaves them"
    assert dark_rows(last[top + 4 :]).any() and not dark_rows(frames(bare)[1][-1][:2]).any()
    assert np.ptp(last[2 : top - 2, 2:8], axis=(0, 1)).max() < 12, "the ground above it is flat"
    assert (last[:top] != last[2, 2]).any(), "with the picture"


def test_long_words_come_part_after_part_in_a_clip_and_smaller_in_a_still() -> None:
    words = ["Pin the front facing to the neck edge, right sides together, and match every notch."] * 9
    (clip,) = bars([("Face the <neck>", words)], (640, 360))
    assert len(clip.parts) > 1 and clip.size[1] <= 122 and clip.size[1] % 2 == 0
    assert " ".join(row for part in clip.parts for row in part) == " ".join(words)
    (still,) = bars([("Face the <neck>", words)], (640, 360), still=True)
    assert len(still.parts) == 1 and still.letter < clip.letter and still.size[1] <= 122
    for number in range(len(clip.parts)):
        root = ElementTree.fromstring(clip.svg(number))
        texts = [one for one in root if one.tag.endswith("text")]
        assert "".join(texts[0].itertext()) == "Face the <neck>"
        assert all(0 < float(one.get("y", "0")) < clip.size[1] for one in texts)


@pytest.mark.parametrize("kind", ["png", "svg"])
def test_stills_have_it_too(lesson: Lesson, tmp_path: Path, kind: str) -> None:
    (path,) = lesson_clips(lesson, tmp_path, "lower_hem", kind, (640, 360), sentence=True)  # type: ignore[arg-type]
    if kind == "png":
        with Image.open(path) as image:
            pixels = np.asarray(image)
        assert pixels.shape == (360, 640, 4) and (pixels[-20:, :, 3] == 255).all() and (pixels[:3, :, 3] == 0).all()
    else:
        root = ElementTree.parse(path).getroot()
        above, below = list(root)
        assert float(above.get("height", "0")) + float(below.get("height", "0")) == 360
        assert "Lower the <hem>" in [one.text for one in below] and float(below.get("y", "0")) >= 239
