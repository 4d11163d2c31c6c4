"""A class served to a room, for tests and measurements: the example lesson with two exercises, made into a class copy
and opened on a free port."""

from __future__ import annotations

import re
import shutil
import signal
import subprocess
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path

import nbformat

try:
    from tests.kept import kept
except ImportError:  # from a script in tests/bench, which knows the files beside it alone
    from kept import kept  # type: ignore[no-redef]

ROOT = Path(__file__).resolve().parent.parent
LESSONKIT = (sys.executable, "-m", "kit.cli")
ANSWERS = ("11.9", "11.25")
EXERCISES = """\
from kit import at_most, grows, keeps, passes_proof

# the answer is a drop of 11.9 cm
lesson.exercise(
    "Longer underarm",
    "Make the underarm seam 2 cm longer without moving the sleeve opening.",
    goals=[grows("front.underarm", 2 * cm), keeps("front.opening")],
    hints=["Which measure says where the underarm curve joins the side?", "Look for 'Underarm drop'."],
    answer={"underarm_drop": 11.9 * cm},
)
lesson.exercise(
    "Shorter top",
    "Make the back 3 cm shorter and keep the underarm as it is.",
    goals=[keeps("front.underarm"), at_most("Back length, neck to hem", 53 * cm), passes_proof()],
    answer={"hem_drop": 11.25 * cm},
)
lesson.preset("Long and loose", sleeve_length=38 * cm, hem_drop=16 * cm)"""


def write_lesson(folder: Path, *cells: str, name: str = "tideline_wrap_top.ipynb") -> Path:
    """The example lesson with `cells` (the exercises when none are given) at its end, in `folder`."""
    book = nbformat.read(ROOT / "example_notebooks" / "tideline_wrap_top.ipynb", as_version=4)
    book.cells += [nbformat.v4.new_code_cell(text, id=f"added-{i}") for i, text in enumerate(cells or (EXERCISES,))]
    folder.mkdir(parents=True, exist_ok=True)
    nbformat.write(book, folder / name)
    return folder / name


SMALL = """\
from kit import Lesson, bodice_block, cm, grows, panel

lesson = Lesson("Tideline wrap top", start=bodice_block, units="cm", size="W4")
lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm, why="how far it reaches")

@lesson.step("Lower the hem")
def lower_hem(front, back, hem_drop):
    '''Rule the hem {hem_drop} below the waistline.'''
    for piece in (front, back):
        piece.draw(hem=piece.waist.parallel(hem_drop, "down"), instead_of=piece.hip)
        piece.join(piece.side, piece.hem)
        piece.join(piece.hem, piece.centre)

lesson.exercise("Longer", "Make the side 2 cm longer.", goals=[grows("front.side", 2 * cm)])
panel(lesson)"""


def write_small_lesson(folder: Path, name: str = "tideline_wrap_top.ipynb") -> Path:
    """A lesson of one step with one exercise, under the example's name: its kernels have little to do."""
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    folder.mkdir(parents=True, exist_ok=True)
    cell = nbformat.v4.new_code_cell(SMALL, id="whole")  # by chance it would be another lesson each time
    nbformat.write(nbformat.v4.new_notebook(cells=[cell], metadata=spec), folder / name)
    return folder / name


def make_class_copy(lesson: Path) -> Path:
    """The class copy of a lesson, made by the command; several files of tests open rooms of the same lesson, and get
    the files that it made for the first of them."""
    folder = lesson.parent
    given = {path for path in sorted(folder.rglob("*")) if path.is_file()}

    def made() -> dict[str, bytes]:
        subprocess.run([*LESSONKIT, "class-copy", str(lesson)], check=True, capture_output=True, cwd=folder.parent)
        written = (path for path in folder.rglob("*") if path.is_file() and path not in given)
        return {path.relative_to(folder).as_posix(): path.read_bytes() for path in written}

    for name, content in kept(f"class copy of {lesson.name}", tuple(sorted(given)), made).items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(content)
    return lesson.with_name(f"{lesson.stem}_class.ipynb")


@dataclass
class Room:
    """An open room: the address with its class code, the folder of the class copy and that of the students. `said` is
    what the command printed, `log` where it complains."""

    link: str
    folder: Path
    sessions: Path
    process: int
    said: list[str] = field(default_factory=list)
    log: Path = Path()

    @property
    def address(self) -> str:
        return self.link.split("/?")[0]

    @property
    def code(self) -> str:
        return self.link.split("token=")[1]

    @property
    def board(self) -> str:
        """The teacher's board, with the teacher's code."""
        return next(found[0] for found in map(re.compile(r"https?://\S+/board\?\S+").search, self.said) if found)


@contextmanager
def running_room(base: Path, *options: str, small: bool = False) -> Iterator[Room]:
    """The class copy of the example lesson, or of a `small` one, open to a room."""
    lesson = (write_small_lesson if small else write_lesson)(base / "class")
    for laid in () if small else (ROOT / "example_notebooks").glob("tideline-wrap-top.lays.json"):
        shutil.copy2(laid, lesson.parent)  # what a build found beside the example is not searched for again
    copy, sessions = make_class_copy(lesson), base / "sessions"
    command = [*LESSONKIT, "serve", str(copy), "--port", "0", "--keep", str(sessions), *options]
    with (base / "serve.log").open("wb") as log:
        serving = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=log, text=True, cwd=base)
        assert serving.stdout is not None
        said: list[str] = []
        try:
            for line in serving.stdout:
                said.append(line.rstrip())
                if "Ctrl+C" in line:
                    break
            else:
                raise RuntimeError(f"the room did not open:\n{(base / 'serve.log').read_text()[-3000:]}")
            threading.Thread(target=serving.stdout.read, daemon=True).start()
            link = next(found[0] for found in map(re.compile(r"https?://\S+").search, said) if found)
            yield Room(link, copy.parent, next(sessions.iterdir()), serving.pid, said, base / "serve.log")
        finally:
            serving.send_signal(signal.SIGINT)
            try:
                serving.wait(30)
            except subprocess.TimeoutExpired:
                serving.kill()
                serving.wait()
