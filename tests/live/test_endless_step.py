"""A step that does not end, in a kernel as a notebook has it: its cell, a slider moved, and *Interrupt*."""

from __future__ import annotations

import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from jupyter_client.manager import start_new_kernel

PATIENCE = 120.0
LESSON = """
from pathlib import Path
from kit import Lesson, bodice_block, cm, panel
lesson = Lesson("Top {title}", start=bodice_block, time_limit={limit})
lesson.length("flare", 50 * cm, least=10 * cm, most=90 * cm)
"""
STEP = """
@lesson.step("Flare the hem")
def flare_it(front, flare):
    "Flare it by {flare}."
    if flare > 60 * cm:
        Path("at work").touch()
    while flare > 60 * cm:
        pass
"""


class Kernel:
    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.manager, self.client = start_new_kernel(startup_timeout=180, cwd=str(folder))
        self.count = 0

    def run(self, source: str, *, interrupt: bool = False) -> list[dict[str, Any]]:
        """The contents of what a cell gave; `interrupt` once the step is at work."""
        self.count += 1
        message = self.client.session.msg(
            "execute_request",
            {"code": source, "silent": False, "store_history": True, "user_expressions": {}, "allow_stdin": False},
            metadata={"cellId": f"c{self.count}"},
        )
        self.client.shell_channel.send(message)
        if interrupt:
            self.interrupt()
        found = []
        while True:
            heard = self.client.get_iopub_msg(timeout=PATIENCE)
            if heard["parent_header"].get("msg_id") != message["header"]["msg_id"]:
                continue
            if heard["msg_type"] == "status" and heard["content"]["execution_state"] == "idle":
                self.client.get_shell_msg(timeout=PATIENCE)
                return found
            found.append({"kind": heard["msg_type"], **heard["content"]})

    def interrupt(self) -> None:
        mark, end = self.folder / "at work", time.monotonic() + PATIENCE
        while not mark.exists():
            assert time.monotonic() < end, "the step never began"
            time.sleep(0.02)
        mark.unlink()
        self.manager.interrupt_kernel()

    def said(self, expression: str) -> str:
        return "".join(each["text"] for each in self.run(f"print({expression})") if each["kind"] == "stream")


@pytest.fixture(scope="module")
def kernel(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Kernel]:
    started = Kernel(tmp_path_factory.mktemp("endless"))
    yield started
    started.client.stop_channels()
    started.manager.shutdown_kernel(now=True)


def html(given: list[dict[str, Any]]) -> str:
    return "".join(each["data"].get("text/html", "") for each in given if each["kind"] == "display_data")


def test_the_cell_of_such_a_step_says_it_in_a_box(kernel: Kernel) -> None:
    kernel.run(LESSON.format(limit=0.5, title="in its cell").replace("50 * cm", "70 * cm"))
    given = kernel.run(STEP)
    assert not [each for each in given if each["kind"] == "error"]
    told = html(given)
    assert "Flare the hem" in told and "stopped after 0.5 s" in told and "Traceback" not in told


def test_a_moved_slider_keeps_the_last_picture_and_says_that_it_is_old(kernel: Kernel) -> None:
    kernel.run(LESSON.format(limit=0.5, title="moved"))
    kernel.run(STEP)
    kernel.run("p = panel(lesson)")
    kernel.run("p.rows['flare'].box.value = '71 cm'")
    assert "stopped after 0.5 s" in kernel.said("p.message.value")
    picture = kernel.said("p.picture.value")
    assert "This picture is older" in picture and "<svg" in picture
    kernel.run("p.rows['flare'].box.value = '52 cm'")
    assert "older" not in kernel.said("p.picture.value") and not kernel.said("p.message.value").strip()


def test_interrupt_ends_the_drafting_of_a_moved_slider(kernel: Kernel) -> None:
    kernel.run(LESSON.format(limit=600, title="interrupted"))  # values are kept by title
    kernel.run(STEP)
    kernel.run("p = panel(lesson)")
    (kernel.folder / "at work").unlink(missing_ok=True)
    kernel.run("p.rows['flare'].box.value = '72 cm'")  # drafted after the cell, when the kernel says that it is idle
    kernel.interrupt()
    assert "drafting was interrupted" in kernel.said("p.message.value")
    assert kernel.said("lesson.values['flare']").strip() == "720.0"


def test_an_interrupted_cell_ends_in_one_sentence(kernel: Kernel) -> None:
    """The lesson stands at 72 cm, where its step does not end."""
    (kernel.folder / "at work").unlink(missing_ok=True)
    (error,) = [each for each in kernel.run("lesson.work()", interrupt=True) if each["kind"] == "error"]
    assert len(error["traceback"]) == 1 and "Flare the hem" in error["traceback"][0]
    assert "drafting was interrupted" in error["traceback"][0]
    (kernel.folder / "at work").unlink(missing_ok=True)
    (error,) = [each for each in kernel.run(STEP, interrupt=True) if each["kind"] == "error"]
    assert len(error["traceback"]) == 1 and "drafting was interrupted" in error["traceback"][0]
