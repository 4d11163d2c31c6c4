"""The player: the steps of a lesson, gone through in front of a camera.

The kernel sends each picture as SVG whose new items know their turn; `templates/live/player.js` makes them one after
another. Pictures are asked for one by one and kept by the browser until the lesson changes. The browser runs the clock,
for it knows when a step is on show; the kernel keeps what the clock says. Clips are made in a thread.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Any

import anywidget
import traitlets

from kit.errors import KitError
from kit.language import language, say, speaking
from kit.lesson.cells import running_cell
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.lesson.where import here
from kit.live import fragments
from kit.live.chapter_list import ChapterList
from kit.live.clips import KINDS, lesson_clips
from kit.live.film_notes import film_notes
from kit.live.followers import followers
from kit.live.pace import Latest, running_loop
from kit.live.still import with_still
from kit.picture.filming import GROUNDS, filming
from kit.picture.reveal import seconds
from kit.picture.staged import StagedDrawing
from kit.picture.step_pictures import ROOM, PlayerPicture, player_pictures
from kit.resources import templates
from kit.units import set_fractions
from kit.wording.lists import two_sentences

_STILL = (760.0, 560.0)
SIZES = ((1920, 1080), (1280, 720), (3840, 2160), (1080, 1080), (1080, 1920))
_WORDS = (
    *(
        "help",
        "first",
        "back",
        "play",
        "pause",
        "next",
        "last",
        "again",
        "speed",
        "ground",
        "show_words",
        "full",
        "leave",
    ),
    *("silent", "empty", "no_picture", "clock", "clock_start", "clock_stop", "clock_help", "marks", "marks_none"),
    *("clock_brief", "clock_brief_help", "export_sentence"),
    *("mark_step", "mark_time", "chapters", "copy", "copied", "export", "export_kind", "export_which", "export_this"),
    *("export_all", "export_size", "export_seconds", "export_go", "export_cancel"),
)


def player(lesson: Lesson) -> Player:
    """The steps of `lesson` to go through before a camera: each is drawn as it is made. The times of a film are kept
    in the lesson's sidecar file. Raises `KitError` for something that is not a lesson."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"a player shows a lesson, not {type(lesson).__name__}.",
            do="Write player(lesson), with the lesson's own name.",
        )
    return Player(lesson)


class Player(anywidget.AnyWidget):
    """The widget `player` gives. `index` is the picture on show, counted from 0 in `shots`; `ground` one of "paper",
    "white", "green", "blue"; `speed` 1 is unhurried; `brief` says that steps shown briefly count;
    `chapters` is the list of chapters as it stands."""

    _esm = templates() / "live" / "player.js"
    _css = templates() / "live" / "player.css"

    words = traitlets.Dict().tag(sync=True)
    shots: Any = traitlets.List().tag(sync=True)
    version = traitlets.Int(0).tag(sync=True)
    picture = traitlets.Dict().tag(sync=True)
    index = traitlets.Int(0).tag(sync=True)
    ground = traitlets.Enum(tuple(GROUNDS), default_value="paper").tag(sync=True)
    grounds: Any = traitlets.List().tag(sync=True)
    speed = traitlets.Float(1.0).tag(sync=True)
    wordy = traitlets.Bool(True).tag(sync=True)
    message = traitlets.Unicode("").tag(sync=True)
    stale = traitlets.Bool(False).tag(sync=True)
    film = traitlets.Dict().tag(sync=True)
    brief = traitlets.Bool(False).tag(sync=True)
    marks: Any = traitlets.List().tag(sync=True)
    chapters = traitlets.Unicode("").tag(sync=True)
    kept_in = traitlets.Unicode("").tag(sync=True)
    clock_message = traitlets.Unicode("").tag(sync=True)
    kinds: Any = traitlets.List().tag(sync=True)
    sizes: Any = traitlets.List().tag(sync=True)
    exporting = traitlets.Dict().tag(sync=True)

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.pattern: Pattern | None = None
        self.cell, self._run = running_cell()
        self._shots: tuple[PlayerPicture, ...] = ()
        self._list = ChapterList(lesson)
        self._titles: tuple[tuple[str, str], ...] = ()
        self._latest = Latest(self._draw)
        self._export: threading.Thread | None = None
        self._off = threading.Event()
        super().__init__(
            words=_words(lesson),
            grounds=[[name, say(f"player.ground_{name}"), colour] for name, colour in GROUNDS.items()],
            kinds=[[kind, say(f"player.export_{kind}")] for kind in (*KINDS, "film")],
            brief=self._list.brief,
            sizes=[f"{wide} x {high}" for wide, high in SIZES],
        )
        for other in tuple(followers(lesson).panels):
            if isinstance(other, Player) and self.cell and other.cell == self.cell and other._run != self._run:
                other.close()
        followers(lesson).panels.add(self)
        self.on_msg(self._heard)
        self.observe(self._looked, ["index", "ground"])
        self.observe(self._filmed, "film")
        self.observe(self._counted, "brief")
        if not here().unseen:
            self._draw()

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        """The widget, and a still of the picture on show for where no kernel runs."""
        given = super()._repr_mimebundle_(**kwargs)
        shot = self._shots[self.index] if self.index < len(self._shots) else None
        if shot is None or shot.draw is None:
            return given
        title = f"{self.words['title']}: {shot.title}"
        return with_still(given, [fragments.picture(shot.draw(), *_STILL)], title)

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: values, steps or parameters. It is drawn where somebody looks on."""
        if not here().unseen:
            self._latest.ask()

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far."""
        followers(self.lesson).panels.discard(self)
        self.lesson = self._list.lesson = lesson
        followers(lesson).panels.add(self)
        self.refresh(rewritten=True)

    def close(self) -> None:
        """Take the player off the page and let the lesson forget it; a running export is called off."""
        self._off.set()
        followers(self.lesson).panels.discard(self)
        super().close()

    @property
    def place(self) -> tuple[str, str, int]:
        """Kind, key and number of the picture on show; ("", "", 0) where a lesson has no steps."""
        return self._shots[self.index].place if 0 <= self.index < len(self._shots) else ("", "", 0)

    def go(self, place: tuple[str, str, int]) -> None:
        """Show the picture at `place`, where there is one."""
        self.index = next((i for i, shot in enumerate(self._shots) if shot.place == place), self.index)

    # ---- what people do -----------------------------------------------------------------------------------

    def _heard(self, _: Any, content: Any, buffers: Any) -> None:
        """A message of the browser: {"do": "picture", "index"}; {"do": "correct", "key", "text"}; {"do": "export",
        "kind", "all", "size", "seconds", "sentence"}; {"do": "cancel"}."""
        if not isinstance(content, dict):
            return
        do = content.get("do")
        try:
            if do == "picture":
                self._send_picture(int(content.get("index", 0)))
            elif do == "correct":
                self.correct(str(content.get("key", "")), str(content.get("text", "")))
            elif do == "export":
                self._begin_export(content)
            elif do == "cancel":
                self._off.set()
        except Exception as error:
            self.message = fragments.plain(error)

    def correct(self, key: str, text: str) -> None:
        """Put the time of a step right, "3:20"; an empty text takes it out. What is no time is refused in words."""
        try:
            self._list.correct(key, text)
        except KitError as error:
            self.clock_message = str(error)
        else:
            self._keep_times()
        self._show_times()

    def _looked(self, change: Any) -> None:
        self._send_picture(self.index)

    def _filmed(self, change: Any) -> None:
        """The clock: `film` is {"take", "started", "stopped", "seen": [[step, from, to], ...]}."""
        film = change.new if isinstance(change.new, dict) else {}
        if self._list.hear(str(film.get("take", "")), film.get("seen")):
            self._keep_times()
            self._show_times()

    def _counted(self, change: Any) -> None:
        self._list.count_brief(self.brief)
        if self._list.times:
            self._keep_times()
        self._show_times()

    def _keep_times(self) -> None:
        try:
            self._list.write()
            self.clock_message = ""
        except KitError as error:
            self.clock_message = str(error)

    def _show_times(self) -> None:
        with self.hold_sync():
            self.chapters = self._list.text()
            self.kept_in = say("player.chapters_in", file=self._list.file.name) if self._list.file.is_file() else ""
            self.marks = []  # a refused text in the table gives way to what is kept
            self.marks = [[*row, say("player.mark_of", step=row[1])] for row in self._list.rows()]

    # ---- drawing ------------------------------------------------------------------------------------------

    def _draw(self) -> None:
        """Work the lesson as it stands; the picture on show stays on show."""
        titles = tuple((entry.name, entry.title) for entry in self.lesson.definition.entries)
        if titles != self._titles:
            self._titles = titles
            self._show_times()
        held = self._shots[self.index].place if self.index < len(self._shots) else None
        try:
            pattern = self.lesson.work()
            found = player_pictures(pattern, self.lesson.units)
        except Exception as error:
            with self.hold_sync():
                told = fragments.plain(error)
                self.message = two_sentences(told, say("panel.old_picture")) if self._shots else told
                self.stale = True
            return
        self.pattern, self._shots = pattern, found
        at = next((i for i, shot in enumerate(found) if shot.place == held), min(self.index, max(len(found) - 1, 0)))
        with self.hold_sync():
            self.message, self.stale = "", False
            self.version += 1
            self.shots = [
                {
                    "key": shot.key,
                    "kind": shot.kind,
                    "label": shot.label,
                    "title": shot.title,
                    "words": [set_fractions(words) for words in shot.words],
                    "part": shot.part,
                    "drawn": shot.draw is not None,
                    "place": say("player.place", number=i, count=len(found)),
                }
                for i, shot in enumerate(found, 1)
            ]
            moved = at != self.index
            self.index = at
            if not moved:
                self._send_picture(at)

    def _send_picture(self, index: int) -> None:
        if not 0 <= index < len(self._shots):
            return
        shot = self._shots[index]
        svg, takes = "", 0.0
        if shot.draw is not None:
            try:
                drawing = shot.draw()
                theme = filming(GROUNDS[self.ground])
                svg = StagedDrawing(drawing, *ROOM, theme, ground=self.ground == "paper").svg()
                takes = seconds(drawing)
            except Exception as error:
                self.message = fragments.plain(error)
        self.picture = {"version": self.version, "index": index, "ground": self.ground, "svg": svg, "seconds": takes}

    # ---- files --------------------------------------------------------------------------------------------

    def _begin_export(self, asked: dict[str, Any]) -> None:
        if self._export is not None and self._export.is_alive():
            return
        kind = str(asked.get("kind", "mp4"))
        if kind == "film":
            self._begin(self._noted)
            return
        pattern = self.lesson.work()
        wide, high = (int(side) for side in str(asked.get("size", "1920 x 1080")).split(" x "))
        here = self._shots[self.index].key if self._shots else ""
        options: dict[str, Any] = {
            "steps": None if asked.get("all") else [here],
            "kind": kind,
            "size": (wide, high),
            "seconds": float(asked.get("seconds") or 4.0),
            "sentence": bool(asked.get("sentence")),
            "ground": "" if kind in ("png", "svg") else GROUNDS[self.ground],
        }
        self._begin(lambda told: self._made(pattern, options, told))

    def _begin(self, make: Callable[[_Told], str]) -> None:
        """Make files in a thread of their own; `make` gives what to say of them."""
        self._off.clear()
        self.exporting = {"running": True, "share": 0.0, "said": say("player.export_doing", percent=0, file="")}
        told = _Told(self)
        code = language()

        def work() -> None:
            with speaking(code):
                told.end(make(told))

        self._export = threading.Thread(target=work, name="lessonkit-clips", daemon=True)
        self._export.start()

    def _noted(self, told: _Told) -> str:
        """Write the shot list, the chapters and the captions, and say what came of it."""
        try:
            files = film_notes(self.lesson, progress=told.progress, cancelled=self._off.is_set)
        except Exception as error:
            return fragments.plain(error)
        key = "player.export_cancelled" if self._off.is_set() else "player.export_done"
        said = say(key, count=len(files), folder=self._list.folder.name)
        return said if self._list.times else two_sentences(said, say("player.film_untimed"))

    def _made(self, pattern: Pattern, options: dict[str, Any], told: _Told) -> str:
        """Make the files, and say what came of it."""
        folder = self.lesson.sitting.sidecar.with_name(f"{self.lesson.info.slug}-clips")
        try:
            files = lesson_clips(
                pattern, folder, **options, progress=told.progress, cancelled=self._off.is_set, system=self.lesson.units
            )
        except Exception as error:
            return fragments.plain(error)
        key = "player.export_cancelled" if self._off.is_set() else "player.export_done"
        return say(key, count=len(files), folder=folder.name)


class _Told:
    """What the thread that makes clips tells the page, handed over in the kernel's own loop, not too often."""

    def __init__(self, shown: Player) -> None:
        self._shown = shown
        self._loop = running_loop()
        self._percent = -1

    def progress(self, share: float, file: str) -> None:
        percent = int(share * 100)
        if percent != self._percent:
            self._percent = percent
            said = say("player.export_doing", percent=percent, file=file)
            self._put({"running": True, "share": share, "said": said})

    def end(self, said: str) -> None:
        self._put({"running": False, "share": 1.0, "said": said})

    def _put(self, state: dict[str, Any]) -> None:
        if self._loop is None or self._loop.is_closed():
            self._shown.exporting = state
        else:
            self._loop.call_soon_threadsafe(setattr, self._shown, "exporting", state)


def _words(lesson: Lesson) -> dict[str, str]:
    """The words the browser needs, by what stands after "player." in their keys."""
    words = {key: say(f"player.{key}") for key in _WORDS}
    words["title"] = say("player.title", lesson=lesson.info.title)
    return words
