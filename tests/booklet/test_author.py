"""The author's photos, cover and films in the booklet."""

from __future__ import annotations

import base64
import io
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image, ImageCms

from kit.body.body import NOBODY
from kit.booklet.author import LARGEST_SIDE, clock, cover_picture, photos_for, picture_data, starting, video_marks
from kit.booklet.fetch import LessonFolder
from kit.errors import KitError
from kit.lesson.pattern import LessonInfo, Pattern, Photo, Video


def pattern(**fields: object) -> Pattern:
    info = replace(LessonInfo("Pebble top", "pebble-top"), **fields)  # type: ignore[arg-type]
    return Pattern(info, NOBODY, (), (), (), (), ())


def opened(address: str) -> Image.Image:
    head, _, data = address.partition(",")
    assert head in ("data:image/jpeg;base64", "data:image/png;base64")
    return Image.open(io.BytesIO(base64.b64decode(data)))


def snapshot(path: Path, size: tuple[int, int] = (60, 40)) -> None:
    """A photo as a telephone takes it: lying on its side (Exif orientation 6: turn 90° clockwise to see it upright),
    with place, owner and a comment. The first row of pixels is red. Tags: CIPA DC-008 (Exif 2.32), tables 4 and 15."""
    picture = Image.new("RGB", size, (20, 40, 200))
    picture.paste((230, 20, 20), (0, 0, size[0], 8))
    exif = Image.Exif()
    exif[0x0112] = 6  # orientation
    exif[0x013B] = "Secret Owner"  # artist
    exif.get_ifd(0x8825).update({1: "N", 2: (53.0, 30.0, 0.0), 3: "E", 4: (8.0, 6.0, 0.0)})  # where it was taken
    picture.save(path, "JPEG", exif=exif, comment=b"Secret comment", quality=95)


def test_a_photo_stands_upright_and_tells_nothing_of_its_camera(tmp_path: Path) -> None:
    (tmp_path / "photos").mkdir()
    snapshot(tmp_path / "photos" / "hem.jpg")
    raw = (tmp_path / "photos" / "hem.jpg").read_bytes()
    assert b"Secret Owner" in raw and b"Secret comment" in raw
    given = pattern(photos=(Photo("photos/hem.jpg", "hem_it", "A hem", "Flat"), Photo("x.jpg", "other", "x")))
    folder = LessonFolder(tmp_path)
    (photo,) = photos_for("hem_it", given, folder)
    assert (photo.alt, photo.caption, folder.left_out) == ("A hem", "Flat", [])
    data = base64.b64decode(photo.address.partition(",")[2])
    assert b"Secret" not in data and b"Exif" not in data and b"Photoshop" not in data
    picture = opened(photo.address)
    assert picture.size == (40, 60) and not picture.getexif()
    # The first row of a picture to be turned clockwise is its right-hand side when seen upright.
    assert picture.getpixel((38, 30))[0] > 180 > picture.getpixel((2, 30))[0]  # type: ignore[index]


@pytest.mark.parametrize(
    ("size", "shown"), [((3200, 1000), (1600, 500)), ((500, 2400), (333, 1600)), ((900, 20), (900, 20))]
)
def test_big_pictures_are_made_smaller(tmp_path: Path, size: tuple[int, int], shown: tuple[int, int]) -> None:
    Image.new("RGB", size, "white").save(tmp_path / "big.png")
    picture = opened(picture_data("big.png", LessonFolder(tmp_path)))
    assert picture.size == shown and max(picture.size) <= LARGEST_SIDE


@pytest.mark.parametrize(
    ("mode", "kind"),
    [("RGBA", "png"), ("P", "gif"), ("CMYK", "jpg"), ("1", "png"), ("I;16", "png"), ("LA", "png"), ("RGB", "webp")],
)
def test_every_kind_of_picture_is_read(tmp_path: Path, mode: str, kind: str) -> None:
    name = f"picture.{kind}"
    Image.new(mode, (30, 20)).save(tmp_path / name)
    picture = opened(picture_data(name, LessonFolder(tmp_path)))
    assert picture.size == (30, 20) and picture.mode in ("RGB", "RGBA", "L", "LA")
    assert picture.format == ("JPEG" if kind == "jpg" else "PNG")


def test_a_see_through_picture_stays_so_and_a_colour_profile_stays(tmp_path: Path) -> None:
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    Image.new("RGBA", (10, 10), (255, 0, 0, 0)).save(tmp_path / "clear.png", icc_profile=profile)
    picture = opened(picture_data("clear.png", LessonFolder(tmp_path)))
    assert picture.getpixel((1, 1)) == (255, 0, 0, 0) and picture.info["icc_profile"] == profile


def test_what_may_not_or_cannot_be_read_is_left_out_visibly(tmp_path: Path) -> None:
    home = tmp_path / "lesson"
    home.mkdir()
    snapshot(tmp_path / "outside.jpg")
    (home / "broken.jpg").write_bytes(b"not a picture")
    (home / "link.jpg").symlink_to(tmp_path / "outside.jpg")
    files = ["../outside.jpg", str(tmp_path / "outside.jpg"), "link.jpg", "broken.jpg", "gone.png", "notes.txt"]
    files += ["https://example.org/a.jpg", "file:///etc/passwd", "data:image/png;base64,AAAA"]
    (home / "notes.txt").write_text("x")
    folder = LessonFolder(home)
    given = pattern(photos=tuple(Photo(file, "hem_it", "x") for file in files), cover="gone.jpg", cover_alt="x")
    assert photos_for("hem_it", given, folder) == ()
    assert len(folder.left_out) == len(files) and all(text.rstrip().endswith((".", "?")) for text in folder.left_out)
    assert "outside the lesson" in folder.left_out[0] and "cannot be read as a picture" in folder.left_out[3]
    assert cover_picture(given.lesson, folder) is None and "gone.jpg" in folder.left_out[-1]


def test_a_picture_of_too_many_pixels_is_refused(tmp_path: Path) -> None:
    Image.new("1", (20000, 7000)).save(tmp_path / "huge.png")
    with pytest.raises(KitError, match="120 million pixels"):
        picture_data("huge.png", LessonFolder(tmp_path))


def test_the_cover(tmp_path: Path) -> None:
    snapshot(tmp_path / "cover.jpg")
    found = cover_picture(pattern(cover="cover.jpg", cover_alt="On a line").lesson, LessonFolder(tmp_path))
    assert found is not None and found.alt == "On a line"
    assert cover_picture(pattern().lesson, LessonFolder(tmp_path)) is None


@pytest.mark.parametrize(
    ("seconds", "shown"),
    [(0, "0:00"), (5, "0:05"), (200, "3:20"), (3599.9, "59:59"), (3730, "1:02:10"), (36000, "10:00:00")],
)
def test_a_clock(seconds: float, shown: str) -> None:
    assert clock(seconds) == shown


@pytest.mark.parametrize(
    ("address", "seconds", "whole"),
    [
        # W3C Media Fragments URI 1.0, section 4.2.1: a begin time alone runs to the end of the film.
        ("http://www.example.org/video.webm", 10, "http://www.example.org/video.webm#t=10"),
        ("https://example.org/film?v=1", 200.5, "https://example.org/film?v=1#t=200.5"),
        # Section 4.1: name=value pairs joined by &. An earlier time is replaced, another dimension stays.
        ("http://example.org/v.mp4#t=1,2&track=audio", 20, "http://example.org/v.mp4#track=audio&t=20"),
        ("http://example.org/v.mp4#start", 0, "http://example.org/v.mp4#t=0"),
    ],
)
def test_an_address_inside_a_film(address: str, seconds: float, whole: str) -> None:
    assert starting(address, seconds) == whole


def test_the_marks_of_a_step() -> None:
    given = pattern(
        videos=(
            Video("https://example.org/a", (("hem_it", 200.0), ("other", 3.0))),
            Video("https://example.org/b", (("hem_it", 3730.0),)),
            Video("https://example.org/c"),
        )
    )
    found = [(mark.clock, mark.address) for mark in video_marks("hem_it", given)]
    assert found == [("3:20", "https://example.org/a#t=200"), ("1:02:10", "https://example.org/b#t=3730")]
    assert video_marks("nowhere", given) == ()
