"""A lesson picture by picture: every drafting step, then every picture of every sewing step, with its words."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Literal

from kit.language import say
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.picture.draft import step_drawing
from kit.picture.drawing import Drawing
from kit.picture.filming import LETTERS
from kit.picture.sewing import scene_drawing
from kit.picture.step_texts import Letters
from kit.prose.alt import scene_alt
from kit.prose.told import operation_words, own_words, paragraphs
from kit.prose.worksheet import letters_of, worksheet
from kit.sewing.in_work import shown_scenes
from kit.sewing.scene import Scene
from kit.units import System

ROOM = (960.0, 640.0)
"""Width and height in CSS px that a picture is drawn for; it is shown as large as there is room."""


@dataclass(frozen=True)
class PlayerPicture:
    """One picture of the step `key`: the `number` of its kind, title and words, and which `picture` of how many the
    step has. `draw` gives the drawing, None where a sewing step shows nothing."""

    key: str
    kind: Literal["draft", "sew"]
    number: int
    title: str
    words: tuple[str, ...]
    picture: int = 1
    pictures: int = 1
    draw: Callable[[], Drawing] | None = None

    @property
    def place(self) -> tuple[str, str, int]:
        """What the shot is called by, whatever comes before it."""
        return self.kind, self.key, self.picture

    @property
    def label(self) -> str:
        """Its number in words, such as "Sewing step 2"."""
        return say(f"player.step_{self.kind}", number=self.number)

    @property
    def part(self) -> str:
        """Which of the step's pictures it is; nothing when there is one."""
        return say("player.part", number=self.picture, count=self.pictures) if self.pictures > 1 else ""


def player_pictures(pattern: Pattern, system: System) -> tuple[PlayerPicture, ...]:
    """All shots of a worked lesson, in teaching order, lengths with `system` first. `KitError` for words that cannot be
    filled in."""
    found: list[PlayerPicture] = []

    @cache
    def letters() -> Mapping[str, Letters]:
        """The letters of the worksheet, worked out when the first picture is drawn."""
        return letters_of(worksheet(pattern, system))

    for number, step in enumerate(pattern.steps, 1):
        found.append(drafting_picture(step, number, pattern, system, letters))
    for number, record in enumerate(pattern.sewing, 1):
        found.extend(sewing_pictures(record, number, pattern, system))
    return tuple(found)


def told_once(shots: Sequence[PlayerPicture]) -> list[tuple[str, ...]]:
    """The words under each picture, but for those that stand under one before it in its step."""
    told: list[tuple[str, ...]] = []
    step, before = "", set[str]()
    for shot in shots:
        if shot.key != step:
            step, before = shot.key, set()
        told.append(tuple(text for text in shot.words if text not in before))
        before |= set(shot.words)
    return told


def drafting_picture(
    record: StepRecord, number: int, pattern: Pattern, system: System, letters: Callable[[], Mapping[str, Letters]]
) -> PlayerPicture:
    """The picture of drafting step `number`. `letters` gives those of the worksheet, when it is drawn."""
    return PlayerPicture(
        record.key,
        "draft",
        number,
        record.title,
        paragraphs(own_words(record, pattern, system)),
        draw=lambda: step_drawing(record, system, letters=letters().get(record.key)),
    )


def sewing_pictures(record: SewRecord, number: int, pattern: Pattern, system: System) -> list[PlayerPicture]:
    """A picture of sewing step `number` for each scene, with the sentences of its operation; the teacher's own words
    stand with the first picture, or with the last where they come after."""
    own = paragraphs(own_words(record, pattern, system))
    made: list[tuple[tuple[str, ...], Callable[[], Drawing] | None]] = []
    for operation in record.operations:
        said = operation_words(record, operation, pattern, system)
        scenes = [scene for scene in shown_scenes(pattern, operation) if scene.layers or scene.strip]
        for scene in scenes:

            def draw(scene: Scene = scene) -> Drawing:
                fit = (ROOM[0] / LETTERS, ROOM[1] / LETTERS)
                return scene_drawing(scene, pattern, system, record.title, scene_alt(pattern, scene, system), fit)

            made.append((said, draw))
        if not scenes:
            made.append((said, None))
    made = made or [((), None)]
    at = len(made) - 1 if record.words == "after" else 0
    said, drawn = made[at]
    made[at] = (said + own if record.words == "after" else own + said, drawn)
    return [
        PlayerPicture(record.key, "sew", number, record.title, words, i, len(made), draw)
        for i, (words, draw) in enumerate(made, 1)
    ]
