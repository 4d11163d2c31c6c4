"""Running the cells of a notebook in any order, in a real kernel that is told each cell's id as JupyterLab tells it."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from jupyter_client.manager import start_new_kernel

LESSON = """
from kit import Lesson, bodice_block, cm, mm, panel
from kit.live.followers import followers
lesson = Lesson("Landing vest", start=bodice_block, units="cm", size="W4")
lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm, why="how far it reaches")
"""
HEM = """
@lesson.step("Lower the hem")
def lower_hem(front, hem_drop):
    '''Rule the hem {hem_drop} below the waistline.'''
    front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
    front.join(front.side, front.hem)
    front.join(front.hem, front.centre)
"""
MARK = """
@lesson.step("Mark the middle of the hem")
def mark_hem(front):
    '''Mark the middle of the hem.'''
    front.mark(middle=front.hem.share(0.5))
"""
ROUND = """
@lesson.finished("Hem, all round")
def hem_round(front):
    return front.hem.length * 4
"""
NAMES = "[(e.kind, e.name, e.title) for e in lesson.entries]"


class Kernel:
    """A kernel in a folder of its own."""

    def __init__(self, folder: Path, environment: dict[str, str]) -> None:
        self.manager, self.client = start_new_kernel(
            kernel_name="python3", cwd=str(folder), env={**os.environ, **environment}
        )

    def run(self, cell: str, code: str, everything: bool = False) -> list[dict[str, Any]]:
        """Run `code` as the cell of that id; the messages it published, or `everything` published meanwhile."""
        content = {
            "code": code,
            "silent": False,
            "store_history": True,
            "user_expressions": {},
            "allow_stdin": False,
            "stop_on_error": True,
        }
        message = self.client.session.msg("execute_request", content, metadata={"cellId": cell} if cell else {})
        self.client.shell_channel.send(message)
        sent = message["header"]["msg_id"]
        found = []
        while True:
            answer = self.client.get_iopub_msg(timeout=60)
            own = answer["parent_header"].get("msg_id") == sent
            if not own and not everything:
                continue
            if own and answer["msg_type"] == "status" and answer["content"]["execution_state"] == "idle":
                break
            found.append(answer)
        self.client.get_shell_msg(timeout=60)
        return found

    def value(self, expression: str) -> Any:
        """A plain value from the kernel."""
        answers = self.run("", f"import json as _json\nprint(_json.dumps({expression}))")
        texts = [a["content"]["text"] for a in answers if a["msg_type"] == "stream"]
        assert texts, answers
        return json.loads("".join(texts))

    def names(self) -> list[str]:
        return [name for _, name, _ in self.value(NAMES)]


def html_of(answers: list[dict[str, Any]]) -> str:
    shown = [a["content"]["data"].get("text/html", "") for a in answers if a["msg_type"] == "display_data"]
    return "".join(shown)


def errors(answers: list[dict[str, Any]]) -> list[dict[str, Any]]:
    return [a["content"] for a in answers if a["msg_type"] == "error"]


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("cells")


@pytest.fixture(scope="module")
def started(folder: Path) -> Iterator[Kernel]:
    kernel = Kernel(folder, {"LESSONKIT_NOTEBOOK": str(folder / "vest.ipynb"), "LESSONKIT_BUILD": ""})
    yield kernel
    kernel.client.stop_channels()
    kernel.manager.shutdown_kernel(now=True)


@pytest.fixture
def kernel(started: Kernel, folder: Path) -> Kernel:
    """The kernel with nothing defined, no sidecar and no saved notebook, then the lesson and its first cells."""
    for path in folder.iterdir():
        path.unlink()
    started.run("", "%reset -f")
    assert not errors(started.run("c-lesson", LESSON))
    assert not errors(started.run("c-hem", HEM))
    assert not errors(started.run("c-mark", MARK))
    assert not errors(started.run("c-round", ROUND))
    return started


def save_notebook(folder: Path, cells: list[tuple[str, str]]) -> None:
    import nbformat

    book = nbformat.v4.new_notebook()
    book.cells = [nbformat.v4.new_code_cell(source, id=name) for name, source in cells]
    (folder / "vest.ipynb").write_text(nbformat.writes(book), encoding="utf-8")


def test_a_cell_shows_its_step_with_live_numbers_and_picture(kernel: Kernel) -> None:
    html = html_of(kernel.run("c-hem", HEM))
    assert "Lower the hem" in html
    assert "14 cm" in html
    assert 'data-name="front.hem"' in html
    assert "Hem, all round" in html_of(kernel.run("c-round", ROUND))


def test_a_step_run_again_stays_in_its_place(kernel: Kernel) -> None:
    kernel.run("c-hem", HEM.replace("Lower the hem", "Drop the hem"))
    assert kernel.value(NAMES) == [
        ["step", "lower_hem", "Drop the hem"],
        ["step", "mark_hem", "Mark the middle of the hem"],
        ["finished", "hem_round", "Hem, all round"],
    ]


def test_a_renamed_step_replaces_the_one_its_cell_wrote(kernel: Kernel) -> None:
    kernel.run("c-hem", HEM.replace("lower_hem", "drop_hem"))
    assert kernel.names() == ["drop_hem", "mark_hem", "hem_round"]


def test_two_steps_in_one_cell_are_both_kept_and_both_replaced(kernel: Kernel) -> None:
    kernel.run("c-mark", MARK + MARK.replace("mark_hem", "mark_again"))
    assert kernel.names() == ["lower_hem", "mark_hem", "mark_again", "hem_round"]
    kernel.run("c-mark", MARK.replace("mark_hem", "mark_once"))
    assert kernel.names() == ["lower_hem", "mark_once", "hem_round"]


def test_the_lesson_cell_run_again_keeps_steps_values_and_panel(kernel: Kernel, folder: Path) -> None:
    kernel.run("c-panel", "shown = panel(lesson)\nshown.rows['hem_drop'].slider.value = 9")
    kernel.run("c-lesson", LESSON.replace("most=20", "most=30"))
    assert kernel.names() == ["lower_hem", "mark_hem", "hem_round"]
    assert kernel.value("lesson.values") == {"hem_drop": 90.0}
    assert kernel.value(
        "[shown.lesson is lesson, len(followers(lesson).panels), shown.rows['hem_drop'].slider.max]"
    ) == [
        True,
        1,
        30.0,
    ]
    kernel.run("c-hem", HEM.replace("Lower the hem", "Drop the hem"))
    assert kernel.value("[e.title for e in shown.lesson.entries][0]") == "Drop the hem"
    # The panel draws in the kernel's loop: whatever it drew last is the lesson as it is.
    assert kernel.value("[shown.pattern.steps[0].title, shown.message.value]") == ["Drop the hem", ""]


def test_the_panel_cell_run_again_leaves_one_panel(kernel: Kernel) -> None:
    for _ in range(3):
        kernel.run("c-panel", "panel(lesson)")
    assert kernel.value("len(followers(lesson).panels)") == 1


def test_cells_run_in_any_order_are_taken_in_the_notebooks_order(kernel: Kernel, folder: Path) -> None:
    save_notebook(folder, [("c-lesson", LESSON), ("c-hem", HEM), ("c-mark", MARK), ("c-round", ROUND)])
    kernel.run("", "lesson.remove('lower_hem')")
    assert errors(kernel.run("", "lesson.work()")), "the mark needs the hem"
    kernel.run("c-hem", HEM)
    assert kernel.names() == ["mark_hem", "hem_round", "lower_hem"]
    assert kernel.value("[s.key for s in lesson.work().steps]") == ["lower_hem", "mark_hem"]


def test_a_deleted_cell_is_told(kernel: Kernel, folder: Path) -> None:
    save_notebook(folder, [("c-lesson", LESSON), ("c-hem", HEM), ("c-round", ROUND)])
    assert kernel.value("lesson.stale()") == ["Mark the middle of the hem"]
    kernel.run("c-panel", "shown = panel(lesson)")
    kernel.run(
        "", "import asyncio\nfor _ in range(600):\n    if shown.notes.value: break\n    await asyncio.sleep(0.1)"
    )
    note = kernel.value("shown.notes.value")
    assert "Mark the middle of the hem" in note
    assert "Lower the hem" not in note


def test_a_refusal_in_a_cell_is_said_without_a_traceback(kernel: Kernel) -> None:
    (refused,) = errors(kernel.run("c-bad", 'lesson.length("loop", 4, least=1 * cm, most=9 * cm)'))
    assert refused["ename"] == "KitError"
    assert refused["traceback"] == ["Parameter 'loop': 4 has no unit. Write 4 * cm, 4 * mm or 4 * inch."]


def test_a_step_that_cannot_be_worked_is_told_under_its_cell_and_the_rest_runs_on(kernel: Kernel) -> None:
    answers = kernel.run("c-hem", HEM.replace("front.waist", "front.waste"))
    assert not errors(answers)
    html = html_of(answers)
    assert "no edge, line or point &#x27;waste&#x27;" in html
    assert "Did you mean &#x27;waist&#x27;?" in html
    assert "Traceback" not in html and "<svg" not in html
    assert "<svg" in html_of(kernel.run("c-hem", HEM))


def test_what_is_shown_under_cells_follows_the_values(kernel: Kernel) -> None:
    kernel.run("", "lesson.change(hem_drop=8 * cm)")
    updates: list[str] = []

    def followed() -> bool:
        step = any("8 cm" in html and "Lower the hem" in html for html in updates)
        return step and any("Hem, all round" in html for html in updates)

    for _ in range(300):
        answers = kernel.run("", "import asyncio; await asyncio.sleep(0.2)", everything=True)
        updates += [a["content"]["data"]["text/html"] for a in answers if a["msg_type"] == "update_display_data"]
        if followed():
            break
    assert followed()


def test_plain_python_shows_nothing_and_keeps_steps_by_name(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    names: dict[str, Any] = {}
    exec(LESSON + HEM + MARK + HEM.replace("Lower the hem", "Drop the hem"), names)
    assert [e.title for e in names["lesson"].entries] == ["Drop the hem", "Mark the middle of the hem"]
    assert capsys.readouterr().out == ""
