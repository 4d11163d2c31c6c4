"""The engine of a lesson's page: JSON in, JSON out.

It runs in a web worker of the reader's browser, or in any Python: no notebook, no widget and nothing compiled is
needed. The page sends one message and gets one answer. A message is an object; `do` says what is wanted, the rest is
the reader's setting:

    {"do": "draw",
     "language": "de", "units": "cm",
     "body": {"size": "W4"}                       or {"name": "Ines", "typed": {"bust_girth": "94 cm"}},
     "values": {"sleeve_length": 260.0},          in mm, as a share of 1, or a count; those left out stand as written
     "step": {"kind": "draft", "key": "overarm", "picture": 1},
     "room": [390, 420]}                          CSS px that the picture is drawn for

| do | answer |
| --- | --- |
| about | the lesson: title, edition, sizes, sliders, measurements, exercises, languages, the page's words |
| draw | the picture of one step (SVG), what it shows and says in words, where sliders stand, what can be dragged |
| data | the same picture as numbers: its lines, points and texts in mm to the last digit (`kit/page/as_data.py`) |
| booklet | what of the booklet follows the body, whole or by step, where the page has one (`kit/page/booklet.py`) |
| prove | findings, finished measurements with their ease, how far each exercise is, cloth to buy |
| mend | what mends a draft that is refused or fails its proof, each with the values that do so |
| body | a body as typed: values read, estimates, what is wrong beside each, advice on its size, the tape pictures |
| read | a body file's text ("name", "text"), as it would be typed |
| write | the text of a body file for the body as typed |
| pages | the reader's own pattern pages on a "paper", as PDF, where the packages for it are (`kit/page/own_pages.py`) |

Every answer has `ok`. Where it is false, `said` says in the reader's language what is wrong and what to do, and
nothing else has changed: the engine keeps no setting, only what it last worked out, to answer sooner. Numbers of
lengths are mm; whatever a person reads is a text.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping, Sequence
from contextlib import ExitStack
from dataclasses import dataclass, replace
from importlib import import_module
from itertools import islice
from pathlib import Path
from typing import Any

from kit.body.advice import advise
from kit.body.body import NOBODY, Body
from kit.body.chart import KEYS
from kit.body.check import check_body
from kit.body.measures import MEASUREMENTS
from kit.diagnostic import message, reading
from kit.errors import KitError
from kit.language import known_language, language, naming, say, speaking
from kit.lesson.lesson import Lesson
from kit.lesson.own_words import Translator
from kit.lesson.pattern import Pattern
from kit.lesson.word_file import path_of, read_words
from kit.page.as_data import drawing_data
from kit.page.drafts import Drafts
from kit.page.exercises import Exercises
from kit.page.grips import grips
from kit.page.opened import opened
from kit.page.setting import (
    Setting,
    Typed,
    body_of,
    checked_values,
    known_measures,
    read_body,
    read_file,
    read_language,
    read_setting,
    written_file,
)
from kit.page.sliders import sliders
from kit.page.told import bought, findings, finished, measures
from kit.picture.figure import measuring_figure, views
from kit.picture.step_pictures import PlayerPicture, drafting_picture, sewing_pictures
from kit.picture.svg_pen import svg
from kit.picture.theme import THEME, in_inks
from kit.proof import prove
from kit.proof.mending import mending
from kit.proof.remedy import heading, latest
from kit.units import both

Answer = dict[str, Any]

_ROOM = (390.0, 420.0)
_LEAST, _MOST = 120.0, 4000.0  # CSS px
_REMEDIES = 3


@dataclass(frozen=True)
class _Worked:
    """A setting, its lesson and body, the pattern it gives, and in a translation what its points are called."""

    setting: Setting
    body: Body
    values: dict[str, float]
    pattern: Pattern
    names: Mapping[str, str]


class Engine:
    """The lesson of the notebook at `path`, worked for whoever asks. `offered` are the languages to choose from (the
    lesson's own first when left out), `sliders` the parameters a reader may move (None: all), `cloth` the lengths to
    buy by size, worked out when the page was built, `inks` the two of its booklet's pictures (ink and accent, as
    "#1f2d3a"). It `rests` when the proof was asked last, which a page asks when nothing has moved for a
    while. Raises `KitError` when the lesson cannot be opened."""

    def __init__(
        self,
        path: Path,
        *,
        offered: Sequence[str] = (),
        sliders: Sequence[str] | None = None,
        cloth: Mapping[str, Any] | None = None,
        inks: Sequence[str] = (),
    ) -> None:
        self.lesson: Lesson = opened(path)
        own = self.lesson.info.language
        self.offered = tuple(offered) or (own,)
        self.open_sliders = tuple(p.name for p in self.lesson.parameters if sliders is None or p.name in sliders)
        self.cloth = dict(cloth or {})
        self.inks = tuple(inks)
        self._words = {
            code: read_words(path_of(path, code), code) for code in self.offered if code != known_language(own)
        }
        self._exercises = Exercises(self.lesson)
        self._opened_at = self.lesson.sitting
        self._last: _Worked | None = None
        self._drafts = Drafts()
        self.rests = False
        self._booklet_parts: Any = None
        self._tasks: dict[str, Callable[[Mapping[str, Any]], Answer]] = {
            "about": self._about,
            "draw": self._draw,
            "data": self._data,
            "booklet": self._booklet,
            "prove": self._prove,
            "mend": self._mend,
            "body": self._body,
            "read": self._read,
            "write": self._write,
            "pages": self._pages,
        }

    def answer(self, text: str) -> str:
        """One message, JSON in and JSON out. Raises nothing: whatever goes wrong is told in the answer."""
        try:
            asked = json.loads(text)
        except (ValueError, RecursionError):
            asked = None
        if not isinstance(asked, dict):
            asked = {}
        self.rests = asked.get("do") == "prove"
        with ExitStack() as stack:
            stack.enter_context(speaking(read_language(asked, self.offered)))
            stack.enter_context(reading("inch" if asked.get("units") == "inch" else "cm"))
            try:
                task = self._tasks.get(str(asked.get("do")))
                if task is None:
                    raise KitError(message("page.not_asked"), do=message("page.again_do"))
                made = {"ok": True, **task(asked)}
            except KitError as error:
                made = {"ok": False, "said": str(error)}
            except Exception as error:  # the reader's page must go on, whatever a lesson's own code does
                said = say("page.kit_wrong", kind=type(error).__name__, what=str(error)[:200])
                made = {"ok": False, "said": said}
        return json.dumps(made, ensure_ascii=False, separators=(",", ":"))

    def pattern(self, asked: Mapping[str, Any]) -> Pattern:
        """The lesson worked for the setting of a message; it stands so afterwards. Raises `KitError`."""
        return self._worked(asked).pattern

    # ---- working ------------------------------------------------------------------------------------------

    def _setting(self, asked: Mapping[str, Any]) -> tuple[Setting, Body, dict[str, float]]:
        """What is set, the body worn, and the value of every parameter; the lesson stands so from now on."""
        lesson = self.lesson
        setting = read_setting(asked, self.offered, lesson.sizes)
        lesson.sitting = self._opened_at
        if setting.typed is not None:
            lesson.choose(body=body_of(setting.typed, lesson.sizes, setting.units))
        elif setting.size:
            lesson.choose(size=setting.size)
        lesson.choose(units=setting.units)
        known, values = tuple(lesson.parameters), dict(setting.values)
        names = {each.name for each in known}
        if not values.keys() <= names:  # a page may open with a fit change that its author asked for
            known += tuple(each for each in lesson.fit_changes if each.name not in names)
        lesson.change(**checked_values(values, known))
        return setting, lesson.body if lesson.measures else NOBODY, lesson.values

    def _worked(self, asked: Mapping[str, Any]) -> _Worked:
        setting, body, values = self._setting(asked)
        if self._last is not None and self._last.setting == setting:
            return self._last
        pattern = self._drafts.pattern(self.lesson.definition, body, values)
        pattern = replace(pattern, lesson=replace(pattern.lesson, units=setting.units))
        pattern, names = self._in_words(pattern)
        self._last = _Worked(setting, body, values, pattern, names)
        return self._last

    def _in_words(self, pattern: Pattern) -> tuple[Pattern, Mapping[str, str]]:
        """The pattern with the lesson's own words in the language spoken, and what its points are called."""
        code = language()
        if code == known_language(self.lesson.info.language):
            return pattern, {}
        translator = Translator(self._words.get(code), code, pattern)
        return translator.of(pattern), translator.names(pattern)

    # ---- what is asked ------------------------------------------------------------------------------------

    def _about(self, asked: Mapping[str, Any]) -> Answer:
        worked = self._worked(asked)
        lesson, pattern = self.lesson, worked.pattern
        known = known_measures(lesson.sizes)
        used = {*lesson.measures, *lesson.sizes.keys, "height"} if lesson.measures else set()
        return {
            "title": pattern.lesson.title,
            "summary": pattern.lesson.summary,
            "edition": pattern.lesson.edition,
            "language": language(),
            "languages": [{"code": code, "name": say(f"page.language_{code}")} for code in self.offered],
            "size": worked.body.name if lesson.measures else "",
            "sizes": list(lesson.sizes.names) if lesson.measures else [],
            "steps": self._outline(pattern),
            "measures": [
                {"name": name, "said": row.said, "note": row.note, "used": name in used}
                for name, row in known.items()
                if used
            ],
            "exercises": self._exercises.tasks(lesson),
            "presets": [{"title": preset.title} for preset in lesson.presets],
            "cautions": [str(text) for text in pattern.lesson.cautions],
            "values": {name: worked.values[name] for name in self.open_sliders},
        }

    def _outline(self, pattern: Pattern) -> list[Answer]:
        steps = [("draft", record.key, record.title) for record in pattern.steps]
        steps += [("sew", record.key, record.title) for record in pattern.sewing]
        return [{"kind": kind, "key": key, "title": title} for kind, key, title in steps]

    def _draw(self, asked: Mapping[str, Any]) -> Answer:
        worked = self._worked(asked)
        pattern = worked.pattern
        with naming(worked.names):
            shot, number = self._shot(pattern, asked.get("step"))
            made: Answer = {
                "step": {"kind": shot.kind, "key": shot.key, "picture": shot.picture, "pictures": shot.pictures},
                "number": number,
                "label": shot.label,
                "title": shot.title,
                "part": shot.part,
                "words": list(shot.words),
                "svg": "",
                "alt": "",
                "sliders": sliders(self.lesson, worked.values, pattern, self.open_sliders, worked.setting.units),
                "measures": measures(pattern, shot, worked.setting.units),
                "grips": [],
            }
            if shot.draw is not None:
                drawing = shot.draw()
                made["svg"] = svg(drawing, *_room(asked))
                made["alt"] = drawing.alt
                made["grips"] = grips(drawing, made["sliders"])
        return made

    def _data(self, asked: Mapping[str, Any]) -> Answer:
        worked = self._worked(asked)
        with naming(worked.names):
            shot, number = self._shot(worked.pattern, asked.get("step"))
            return {"number": number, "drawing": drawing_data(shot.draw()) if shot.draw else None}

    def _shot(self, pattern: Pattern, asked: object) -> tuple[PlayerPicture, int]:
        """The picture asked for, and the number of its step among all; the first one where there is none such. Picture
        -1 is a step's last."""
        step: Mapping[str, Any] = asked if isinstance(asked, dict) else {}
        places = [("draft", record.key) for record in pattern.steps] + [
            ("sew", record.key) for record in pattern.sewing
        ]
        if not places:
            raise KitError(message("page.no_steps"))
        place = (str(step.get("kind")), str(step.get("key")))
        at = places.index(place) if place in places else 0
        units = pattern.lesson.units
        if at < len(pattern.steps):
            return drafting_picture(pattern.steps[at], at + 1, pattern, units, dict), at
        record = pattern.sewing[at - len(pattern.steps)]
        pictures = sewing_pictures(record, at - len(pattern.steps) + 1, pattern, units)
        picture = step.get("picture")
        picture = picture if isinstance(picture, int) and not isinstance(picture, bool) else 1
        return pictures[-1 if picture == -1 else min(max(picture, 1), len(pictures)) - 1], at

    def _booklet(self, asked: Mapping[str, Any]) -> Answer:
        worked = self._worked(asked)
        if self._booklet_parts is None or self._booklet_parts.pattern is not worked.pattern:
            try:
                room = import_module("kit.page.booklet")  # by name: only a page with a booklet carries it
            except ModuleNotFoundError:
                raise KitError(message("page.not_asked"), do=message("page.again_do")) from None
            cloth = bought(self.cloth, worked.body.name, self.lesson.sizes, worked.body, worked.setting.units)
            theme = in_inks(*self.inks) if len(self.inks) == 2 else THEME
            asks = worked.pattern, self.lesson.sizes, tuple(self.lesson.measures), worked.setting.typed is None
            self._booklet_parts = room.BookletParts(*asks, cloth, theme)
        with naming(worked.names):
            made: Answer = self._booklet_parts.answer(asked)
            return made

    def _prove(self, asked: Mapping[str, Any]) -> Answer:
        worked = self._worked(asked)
        units = worked.setting.units
        with naming(worked.names):
            found = prove(worked.pattern)
            return {
                "findings": findings(found),
                "passed": "" if any(each.level != "note" for each in found) else say("panel.passed"),
                "failed": any(each.level == "error" for each in found),
                "finished": finished(worked.pattern, units),
                "exercises": self._exercises.results(self.lesson, worked.values),
                "cloth": bought(self.cloth, worked.body.name, self.lesson.sizes, worked.body, units),
            }

    def _mend(self, asked: Mapping[str, Any]) -> Answer:
        """What mends a setting; one that is refused is asked for as well."""
        setting, body, values = self._setting(asked)
        moved = asked.get("moved")
        good = asked.get("good")
        search = mending(
            self.lesson.definition,
            body,
            values,
            system=setting.units,
            moved=moved if isinstance(moved, str) else "",
            good={**values, **checked_values(good, tuple(self.lesson.parameters))} if isinstance(good, dict) else None,
            count=_REMEDIES,
        )
        found = latest(tuple(islice(search, 4 * _REMEDIES)))
        able = [remedy for remedy in found if set(remedy.names) <= set(self.open_sliders)]
        return {
            "heading": heading(able),
            "remedies": [
                {
                    "said": str(remedy),
                    "take": say("remedy.take_back" if remedy.back else "remedy.take"),
                    "values": {name: float(value) for name, value in remedy.values.items()},
                }
                for remedy in able
            ],
        }

    # ---- a body -------------------------------------------------------------------------------------------

    def _body(self, asked: Mapping[str, Any]) -> Answer:
        setting = read_setting(asked, self.offered, self.lesson.sizes)
        typed, units, chart = setting.typed or Typed("", ()), setting.units, self.lesson.sizes
        found = read_body(typed, chart, units)
        known = known_measures(chart)
        guessed = {measure.name for measure in found.body.estimated} if found.body else set()
        rows = {}
        for name in known:
            value = found.body[name] if found.body is not None and name in found.body else None
            key = "panel.body_estimated" if name in guessed else "panel.body_value"
            rows[name] = {
                "wrong": found.wrong.get(name, ""),
                "value": "" if value is None else say(key, value=both(value, units)),
            }
        advice: list[str] = []
        if found.body is not None and any(key in KEYS for key in chart.keys):
            advice = [str(doubt) for doubt in check_body(found.body, units)]
            advice += advise(found.body, chart, units).sentences
        shown = asked.get("shown")
        names = [name for name in shown if name in MEASUREMENTS] if isinstance(shown, list) else []
        figures = [
            {"view": view, "svg": svg(drawing, 330.0), "alt": drawing.alt}
            for view in ("front", "back")
            if any(view in views(name) for name in names)
            for drawing in (measuring_figure(names, view),)
        ]
        return {"rows": rows, "trouble": found.trouble, "advice": advice, "figures": figures}

    def _read(self, asked: Mapping[str, Any]) -> Answer:
        name, text = asked.get("name"), asked.get("text")
        if not isinstance(name, str) or not isinstance(text, str):
            raise KitError(message("page.no_body"), do=message("page.again_do"))
        typed, units = read_file(name, text, self.lesson.sizes)
        return {"name": typed.name, "typed": dict(typed.texts), "units": units}

    def _write(self, asked: Mapping[str, Any]) -> Answer:
        setting = read_setting(asked, self.offered, self.lesson.sizes)
        body = body_of(setting.typed or Typed("", ()), self.lesson.sizes, setting.units)
        return {"text": written_file(body, setting.units)}

    def _pages(self, asked: Mapping[str, Any]) -> Answer:
        try:
            room = import_module("kit.page.own_pages")  # by name: only a page with the packages for it carries it
        except ImportError:
            raise KitError(message("page.pages_not_here")) from None
        worked = self._worked(asked)
        with naming(worked.names):
            made: Answer = room.own_pages(worked.pattern, asked.get("paper", "a4"))
            return made


def _room(asked: Mapping[str, Any]) -> tuple[float, float]:
    room = asked.get("room")
    if not isinstance(room, list) or len(room) != 2:
        return _ROOM
    sides = [side if isinstance(side, int | float) and not isinstance(side, bool) else 0.0 for side in room]
    wide, high = (min(max(float(side), _LEAST), _MOST) if side == side else _LEAST for side in sides)
    return wide, high
