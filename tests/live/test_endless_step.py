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
        with open("begun", "a") as begun:
            begun.write(f"{float(flare):.0f} ")
        Path("at work").touch()  # last: whoever waits for it interrupts at once, and reads what was begun
    while flare > 60 * cm:
        pass
"""

SET = ("720", "730", "740", "750", "760")
AWHILE = "import asyncio\nawait asyncio.sleep(2.5)"


class Kernel:
    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.manager, self.client = start_new_kernel(startup_timeout=180, cwd=str(folder))
        self.count = 0

    def run(self, source: str, *, interrupt: bool = False) -> list[dict[str, Any]]:
        """The contents of what a cell gave; `interrupt` once the step is at work."""
        message = self.send(source)
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

    def send(self, source: str) -> dict[str, Any]:
        """A cell is run, whatever the kernel is at; the message."""
        self.count += 1
        message: dict[str, Any] = self.client.session.msg(
            "execute_request",
            {"code": source, "silent": False, "store_history": True, "user_expressions": {}, "allow_stdin": False},
            metadata={"cellId": f"c{self.count}"},
        )
        self.client.shell_channel.send(message)
        return message

    @property
    def mark(self) -> Path:
        """There once the step is at work."""
        return self.folder / "at work"

    def interrupt(self) -> None:
        """Once: the step is at work."""
        self.wait()
        self.mark.unlink()
        self.manager.interrupt_kernel()

    def wait(self) -> None:
        """Until the step is at work."""
        end = time.monotonic() + PATIENCE
        while not self.mark.exists() and time.monotonic() < end:
            time.sleep(0.02)
        assert self.mark.exists(), "the step never began"

    def begun(self) -> list[str]:
        """The flares, of those that were set, at which the step that does not end was begun. What mends them is looked
        for meanwhile, at other flares."""
        return [flare for flare in (self.folder / "begun").read_text().split() if flare in SET]

    def forget(self) -> None:
        """What was begun so far."""
        for each in (self.mark, self.folder / "begun"):
            each.unlink(missing_ok=True)

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
    kernel.run("p.close()")  # it would go on looking for what mends the lesson, and begin the step for that


def test_interrupt_ends_the_drafting_of_a_moved_slider(kernel: Kernel) -> None:
    kernel.run(LESSON.format(limit=600, title="interrupted"))  # values are kept by title
    kernel.run(STEP)
    kernel.run("p = panel(lesson)")
    kernel.forget()
    kernel.run("p.rows['flare'].box.value = '72 cm'")  # drafted after the cell, when the kernel says that it is idle
    kernel.interrupt()
    assert "drafting was interrupted" in kernel.said("p.message.value")
    assert kernel.said("lesson.values['flare']").strip() == "720.0"
    kernel.run(AWHILE)  # what stands under the cell follows when the slider has come to rest
    assert kernel.begun() == ["720"]


def test_moves_on_their_way_when_interrupt_is_pressed_want_no_second_one(kernel: Kernel) -> None:
    """A slider that is pulled sends more while the kernel does not listen."""
    kernel.forget()
    kernel.run("p.rows['flare'].box.value = '73 cm'")
    kernel.wait()
    kernel.send("p.rows['flare'].box.value = '74 cm'")
    begun = time.monotonic()
    kernel.interrupt()
    kernel.run(AWHILE)
    assert "drafting was interrupted" in kernel.said("p.message.value")
    assert kernel.said("lesson.values['flare']").strip() == "740.0"
    assert kernel.begun() == ["730", "740"] and time.monotonic() - begun < PATIENCE
    kernel.run("p.rows['flare'].box.value = '52 cm'")
    assert not kernel.said("p.message.value").strip(), "a value that ends is drafted at once"


def test_interrupt_ends_the_drafting_of_a_handle_on_the_canvas(kernel: Kernel) -> None:
    """Drafted while the canvas's own message is answered; that is told on the canvas, where nobody else could."""
    kernel.run("from kit import canvas\nc = canvas(lesson)\np.close()")
    kernel.forget()
    comm = kernel.said("c.comm.comm_id").strip()
    asked = {"method": "custom", "content": {"do": "move", "name": "flare", "value": 750, "turn": 9, "last": True}}
    kernel.client.shell_channel.send(
        kernel.client.session.msg("comm_msg", {"comm_id": comm, "data": asked}, metadata={})
    )
    kernel.interrupt()
    assert "drafting was interrupted" in kernel.said("c.answer['message']")
    assert kernel.said("lesson.values['flare']").strip() == "520.0", "refused, so the lesson keeps what it had"
    assert kernel.begun() == ["750"]


def test_interrupt_ends_the_drafting_of_a_slider_that_is_answered_beside_the_main_thread(kernel: Kernel) -> None:
    """JupyterLab has a subshell of the kernel made and sends it what widgets say (JEP 91; ipykernel has them from 7.0
    on). A signal is heard in the main thread alone, which has nothing to do meanwhile."""
    session, control = kernel.client.session, kernel.client.control_channel
    control.send(session.msg("create_subshell_request", {}))
    subshell = kernel.client.get_control_msg(timeout=PATIENCE)["content"].get("subshell_id")
    if subshell is None:
        pytest.skip("this kernel has no subshells")
    kernel.run("c.close()\np = panel(lesson)")
    kernel.forget()
    update = {"method": "update", "state": {"value": 76.0}, "buffer_paths": []}
    comm = kernel.said("p.rows['flare'].slider.comm.comm_id").strip()
    asked = session.msg("comm_msg", {"comm_id": comm, "data": update})
    asked["header"]["subshell_id"] = subshell
    kernel.client.shell_channel.send(asked)
    begun = time.monotonic()
    kernel.interrupt()
    kernel.run(AWHILE)
    assert "drafting was interrupted" in kernel.said("p.message.value")
    assert kernel.said("lesson.values['flare']").strip() == "760.0"
    assert kernel.begun() == ["760"] and time.monotonic() - begun < PATIENCE / 2


def test_an_interrupted_cell_ends_in_one_sentence(kernel: Kernel) -> None:
    """The lesson stands at 72 cm, where its step does not end and was interrupted before: a cell begins it anew."""
    kernel.forget()
    kernel.run("lesson.change(flare=72 * cm)")
    kernel.interrupt()
    kernel.forget()
    (error,) = [each for each in kernel.run("lesson.work()", interrupt=True) if each["kind"] == "error"]
    assert len(error["traceback"]) == 1 and "Flare the hem" in error["traceback"][0]
    assert "drafting was interrupted" in error["traceback"][0]
    kernel.forget()
    (error,) = [each for each in kernel.run(STEP, interrupt=True) if each["kind"] == "error"]
    assert len(error["traceback"]) == 1 and "drafting was interrupted" in error["traceback"][0]
