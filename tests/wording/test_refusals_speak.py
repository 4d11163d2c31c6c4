"""What a student can cause is said from the catalogue: sliders anywhere, also far outside their range, and bodies that
nobody has, over every example lesson and block. The settings are random from a fixed seed."""

from __future__ import annotations

import random
import re
from collections.abc import Iterator
from functools import lru_cache

import pytest

import kit
from kit.body.body import NOBODY, Body
from kit.body.check import check_body
from kit.body.make import make_body
from kit.body.measures import MEASUREMENTS
from kit.diagnostic import Diagnostic, EdgeName, Message, NamedPlace, Told, Value
from kit.errors import KitError
from kit.language import languages, speaking
from kit.lesson.another import open_lesson
from kit.lesson.lesson import Lesson
from kit.lesson.working import work
from kit.proof import prove
from kit.units import inch, mm, parse
from tests.example import EXAMPLE, GARMENTS
from tests.pseudo import escaped, pseudo

BLOCKS = (
    kit.bodice_block,
    kit.darted_bodice_block,
    kit.skirt_block,
    kit.trouser_block,
    kit.with_sleeve(kit.bodice_block),
)
SETTINGS = 30  # of each lesson
BODIES = 150
TYPED = ("", "cm", "two", "1/0 in", "12", "3 feet", "-", "1..2 cm")
OF_BLOCKS = {
    *(block.title for block in BLOCKS),
    *(entry.title for block in BLOCKS for entry in getattr(block, "steps", ())),
    *("Front bodice", "Back bodice", "Rule the frame", "Rule the levels", "Rule the sleeve", "waist dart"),
}
"""Titles of the kit's own blocks and their steps: a block is written as a lesson is, in words of its own."""
CODE = re.compile(r"make\.|=|\{|\.\.\.|^[\w.]+$")
"""What is written in the notebook, and single names."""


@lru_cache(maxsize=8)
def lesson(name: str) -> Lesson:
    return open_lesson(EXAMPLE.parent / f"{name}.ipynb")


def odd_body(chance: random.Random) -> Body:
    """A size of the workshop with a few measurements that do not go with it."""
    taken: dict[str, kit.Length | str] = {}
    for name in chance.sample(sorted(MEASUREMENTS), chance.randint(1, 6)):
        row = MEASUREMENTS[name]
        taken[name] = chance.uniform(row.least, row.most) * mm
    taken.setdefault("bust_girth", chance.uniform(700, 1400) * mm)
    return make_body(taken, name="Rosa")


def settings(name: str) -> Iterator[tuple[Body, dict[str, float]]]:
    """Bodies and values: half of them inside the sliders, half as far outside as the range is wide."""
    made = lesson(name)
    chance = random.Random(f"refusals {name}")
    for number in range(SETTINGS):
        wide = 0.0 if number % 2 else 1.0
        values = {
            p.name: chance.uniform(p.least - wide * (p.most - p.least), p.most + wide * (p.most - p.least))
            for p in made.parameters
            if chance.random() < 0.7
        }
        values = {
            n: round(v) if p.kind == "count" else v
            for p in made.parameters
            if (n := p.name) in values and (v := values[n]) is not None
        }
        body = NOBODY if not made.measures else odd_body(chance) if number % 3 == 0 else made.body
        yield body, values


def met(name: str) -> Iterator[Diagnostic]:
    """What the settings of a lesson are refused for, and what the proof finds."""
    made = lesson(name)
    for body, values in settings(name):
        for parameter in made.parameters:
            try:
                parameter.checked(values.get(parameter.name, parameter.default))
            except KitError as error:
                yield error.told
        try:
            yield from prove(work(made.definition, body, values))
        except KitError as error:
            yield error.told


def drafted() -> Iterator[Diagnostic]:
    """What bodies nobody has are refused for by the blocks, and what is doubted about them."""
    chance = random.Random("bodies")
    for _ in range(BODIES):
        body = odd_body(chance)
        yield from check_body(body)
        for block in BLOCKS:
            try:
                block(body)
            except KitError as error:
                yield error.told


def typed() -> Iterator[Diagnostic]:
    """Lengths and measurements as people mistype them."""
    for text in TYPED:
        try:
            parse(text)
        except KitError as error:
            yield error.told
    for values in (
        {"bust_girth": 9 * mm},
        {"waist_girth": 31 * inch * 25.4},
        {"height": 165 * mm},
        {"elbow_girth": 240 * mm},
    ):
        try:
            make_body(values)
        except KitError as error:
            yield error.told


def own_words(made: Lesson) -> set[str]:
    """The lesson's own names and titles."""
    pattern = work(made.definition, made.body if made.measures else NOBODY, {})
    found = {record.title for record in (*pattern.steps, *pattern.sewing)} | {strip.title for strip in pattern.strips}
    found |= (
        {p.label for p in made.parameters} | {title for title, _ in pattern.finished} | {pattern.lesson.title, "Rosa"}
    )
    for piece in pattern.pieces:
        found |= {piece.title, piece.name} | {edge.label for edge in piece.edges}
        found |= {each.label for each in (*piece.marks, *piece.darts, *piece.pleats)}
    return found | set(pattern.lesson.notions) | OF_BLOCKS


def texts(told: Told) -> Iterator[str]:
    """Every text in it that no catalogue says, at whatever depth."""
    if isinstance(told, str):
        yield told
        return
    for _, value in told.values:
        yield from inside(value)


def inside(value: Value) -> Iterator[str]:
    given = value.value
    if isinstance(given, Message):
        yield from texts(given)
    elif value.kind in ("list", "string", "parted"):
        for each in given:
            yield from inside(each)
    elif isinstance(given, EdgeName):
        yield given.said
    elif isinstance(given, NamedPlace):
        yield from (given.title, *(e.said if isinstance(e, EdgeName) else e for e in given.edges))
    elif value.kind in ("text", "title"):
        yield str(given)


def english(found: Diagnostic, allowed: set[str]) -> list[str]:
    """Texts in a diagnostic that were written in the code as sentences or phrases."""
    bare = [text for told in (found.says, found.at, found.can) for text in texts(told)]
    kept = [text for text in bare if text.strip() and text not in allowed and not CODE.search(text)]
    return [text for text in kept if re.search(r"[A-Za-z]{2,}", text)]


def seen(found: Iterator[Diagnostic], allowed: set[str]) -> tuple[set[str], list[str]]:
    """The keys met, and what did not come from the catalogue."""
    keys: set[str] = set()
    strays: list[str] = []
    for each in found:
        if each.code == "start":
            continue  # the lesson's own words
        if isinstance(each.says, Message):
            keys.add(each.says.key)
        else:
            strays.append(f"{each.code}: {each.says}")
        strays += english(each, allowed)
        outside = escaped(" ".join(filter(None, (each.what, each.do))))
        strays += [f"{each.code} outside: {outside}"] if outside else []
        for code in languages():
            with speaking(code):
                assert str(each)
    return keys, sorted(set(strays))


@pytest.mark.parametrize("name", GARMENTS)
def test_no_slider_and_no_body_brings_a_refusal_in_english(name: str) -> None:
    allowed = own_words(lesson(name))
    with pseudo():
        keys, strays = seen(met(name), allowed)
    print(f"\n{name}: {len(keys)} messages: {', '.join(sorted(keys))}")
    assert strays == []
    assert "refusal.out_of_range" in keys


def test_no_body_brings_a_refusal_in_english() -> None:
    with pseudo():
        keys, strays = seen(drafted(), {"Rosa", *OF_BLOCKS})
    print(f"\nblocks: {len(keys)} messages: {', '.join(sorted(keys))}")
    assert strays == []
    assert {"blocks.two_refused", "blocks.estimated"} & keys and len(keys) >= 10


def test_nothing_typed_brings_a_refusal_in_english() -> None:
    with pseudo():
        keys, strays = seen(typed(), set(TYPED))
    assert strays == []
    assert keys >= {"refusal.not_a_length", "refusal.by_zero", "refusal.no_unit", "body.not_plausible", "body.no_girth"}


def test_a_refusal_in_english_is_seen() -> None:
    with pseudo():
        plain = KitError("the dart is wide.", where="Skirt front", do="Make it narrower.").told
        glued = KitError(
            Message("refusal.at_line", (("place", Value("half a sentence", "text")), ("line", Value("x", "text"))))
        ).told
        assert len(seen(iter([plain]), {"Skirt front"})[1]) == 4
        assert seen(iter([glued]), set())[1] == ["half a sentence"]
