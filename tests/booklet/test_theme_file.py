"""The author's look: inks that can be read, typefaces and a logo from the lesson's folder."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from PIL import Image

from kit.booklet.fetch import LessonFolder
from kit.booklet.theme_file import BookTheme, picture_theme, read_theme
from kit.booklet.type import FACES, SANS, SERIF
from kit.errors import KitError
from kit.picture.theme import THEME, contrast


def theme(folder: Path, text: str) -> BookTheme:
    (folder / "theme.toml").write_text(text, encoding="utf-8")
    return read_theme(LessonFolder(folder))


def test_without_a_file_the_look_is_the_kits(tmp_path: Path) -> None:
    plain = read_theme(LessonFolder(tmp_path))
    assert plain == BookTheme() and (plain.text_face, plain.heading_face) == (SANS, SERIF)
    assert picture_theme(plain).lines == dict(THEME.lines)


def test_a_whole_theme(tmp_path: Path) -> None:
    font = next(file for *_, file in FACES)
    shutil.copy(font, tmp_path / "garden.ttf")
    Image.new("RGB", (4, 4)).save(tmp_path / "logo.png")
    found = theme(
        tmp_path,
        '[theme]\nink = "#102030"\naccent = "#005A70"\n'
        f'typeface = "{SERIF}"\nheadings = "garden.ttf"\nlogo = "logo.png"\n',
    )
    assert (found.ink, found.accent, found.text_face) == ("#102030", "#005a70", SERIF)
    assert found.fonts == ((found.heading_face, tmp_path.resolve() / "garden.ttf"),)
    assert found.logo.startswith("data:image/png;base64,")


def test_pictures_take_the_inks() -> None:
    made = picture_theme(BookTheme(ink="#000080", accent="#800000"))
    assert (made.ink, made.accent) == ("#000080", "#800000")
    for role, line in THEME.lines.items():
        wanted = {THEME.ink: "#000080", THEME.accent: "#800000"}.get(line.colour, line.colour)
        assert made.lines[role].colour == wanted and made.lines[role].width == line.width
    assert {made.texts[role].colour for role, text in THEME.texts.items() if text.colour == THEME.ink} == {"#000080"}
    assert THEME.ink not in {line.colour for line in made.lines.values()}
    assert made.fills == THEME.fills


def test_contrast_is_that_of_the_standard() -> None:
    """WCAG 2.2, "contrast ratio": black on white is 21 : 1. On white, #767676 is published as 4.54 : 1, the palest grey
    that keeps level AA, #999999 as 2.85 : 1 (guides to the standard by many hands, such as slimutils.com)."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.005)
    assert contrast("#777777", "#ffffff") < 4.5
    assert contrast("#999999", "#ffffff") == pytest.approx(2.85, abs=0.005)


@pytest.mark.parametrize(
    ("colour", "ratio", "paper"),
    [("#777777", "4.47 : 1", "white"), ("#767676", "4.39 : 1", "the cover's paper"), ("#ffff00", "1.07 : 1", "white")],
)
def test_a_pale_ink_is_refused(tmp_path: Path, colour: str, ratio: str, paper: str) -> None:
    with pytest.raises(KitError) as refused:
        theme(tmp_path, f'[theme]\naccent = "{colour}"\n')
    message = str(refused.value)
    assert f"accent {colour}" in message and ratio in message and f"on {paper}" in message and "4.5 : 1" in message
    suggested = message.rstrip(".").rsplit(" ", 1)[1]
    assert theme(tmp_path, f'[theme]\naccent = "{suggested}"\n').accent == suggested


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ('[theme]\nacent = "#102030"', "there is no entry 'acent'. Did you mean 'accent'?"),
        ('[them]\nink = "#102030"', "there is no entry 'them'. Did you mean 'theme'?"),
        ('ink = "#102030"', "there is no entry 'ink'"),
        ("theme = 3", "theme is 3, not a section"),
        ('[theme]\nink = "navy"', "ink is 'navy', which is not a colour"),
        ("[theme]\nink = 3", "ink is 3, not a text"),
        ('[theme]\nlogo = " "', "logo is ' ', not a text"),
        ("[theme\n", "it cannot be read"),
        ('[theme]\ntypeface = "Booklet Serf"', "Did you mean 'Booklet Serif'?"),
        ('[theme]\ntypeface = "gone.ttf"', "there is no font 'gone.ttf'"),
        ('[theme]\ntypeface = "../outside.ttf"', "lies outside the lesson's folder"),
        ('[theme]\nheadings = "false.otf"', "is not a font that can be read"),
        ('[theme]\nlogo = "gone.svg"', "theme.toml, logo: there is no picture 'gone.svg'"),
        ('[theme]\nlogo = "https://example.org/logo.svg"', "an address outside the lesson"),
    ],
)
def test_what_a_theme_may_not_say(tmp_path: Path, text: str, said: str) -> None:
    home = tmp_path / "lesson"
    home.mkdir()
    shutil.copy(next(file for *_, file in FACES), tmp_path / "outside.ttf")
    (home / "false.otf").write_bytes(b"no font")
    with pytest.raises(KitError) as refused:
        theme(home, text)
    assert said in str(refused.value) and "theme.toml" in str(refused.value) and refused.value.do


def test_a_file_that_is_not_text(tmp_path: Path) -> None:
    (tmp_path / "theme.toml").write_bytes(b"\xff\xfe\x00")
    with pytest.raises(KitError, match="cannot be read"):
        read_theme(LessonFolder(tmp_path))
