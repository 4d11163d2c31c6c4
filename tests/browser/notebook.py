"""What a reader does with a lesson in JupyterLab, for tests and benchmarks."""

from __future__ import annotations

import re
import time
from collections.abc import Callable
from urllib.parse import parse_qs, urlsplit

from lab import PATIENCE
from playwright.sync_api import ConsoleMessage, Error, Locator, Page

IDLE = '.jp-Notebook-ExecutionIndicator[data-status="idle"]'
# What JupyterLab's own model says of the code cells; their prompts are not on the page where the code is folded away.
CELLS = """() => jupyterapp.shell.currentWidget.content.widgets.map((cell) => cell.model)
  .filter((model) => model.type === "code").map((model) => [model.executionState, model.executionCount])"""


def until(true: Callable[[], bool], seconds: float = PATIENCE) -> bool:
    """Whether something becomes true, asked again and again until a busy machine must have done it."""
    end = time.monotonic() + seconds
    while not true():
        if time.monotonic() > end:
            return False
        time.sleep(0.05)
    return True


def painted(page: Page, frames: int = 2) -> None:
    """Until the page has painted what it holds: this many frames, however long they take."""
    page.evaluate(
        "async (frames) => { for (let i = 0; i < frames; i++) await new Promise(requestAnimationFrame); }", frames
    )


CLOSE = "() => { for (const each of [...jupyterapp.shell.widgets('main')]) each.dispose(); }"
OPEN = "(path) => jupyterapp.commands.execute('docmanager:open', { path, factory: 'Notebook' }).then(() => null)"


# Nobody's fault: a file that no page names; the browser's own word for a layout done over two frames; anywidget's clock
# of two seconds, which runs out on a busy machine; a message of the kernel's that reaches JupyterLab garbled, now and
# then and from its own server. Where a widget does not come up, or lacks what was in it, what is read of it fails.
NOT_OURS = re.compile(
    r"favicon|ResizeObserver loop|\[anywidget\] Failed to initialize model|^Kernel message validation error: Unexpected"
)


class Notebook:
    """A lesson open in JupyterLab; a page that shows JupyterLab already is not loaded again. `troubles` are what the
    page reported as errors."""

    def __init__(self, page: Page, address: str) -> None:
        self.page = page
        self.troubles: list[str] = []
        page.set_default_timeout(PATIENCE * 1000)
        page.on("pageerror", self._failed)
        page.on("console", self._said)
        if page.url.startswith(address.partition("/tree/")[0]):
            page.evaluate(CLOSE)
            page.evaluate(OPEN, urlsplit(address).path.removeprefix("/lab/tree/"))
        else:
            page.goto(address)
        page.locator(".jp-Notebook .jp-Cell").first.wait_for()
        self.wait_connected(address)
        self.wait_idle()

    @property
    def faults(self) -> list[str]:
        """The troubles that the kit is to answer for."""
        return [trouble for trouble in self.troubles if not NOT_OURS.search(trouble)]

    def _failed(self, error: Error) -> None:
        self.troubles.append(str(error))

    def _said(self, said: ConsoleMessage) -> None:
        if said.type == "error":
            self.troubles.append(f"{said.text} ({said.location.get('url', '')})")

    def close(self) -> None:
        """Close the notebook, saved or not; JupyterLab stays open for the next one."""
        self.page.evaluate(CLOSE)
        self.page.remove_listener("pageerror", self._failed)
        self.page.remove_listener("console", self._said)

    def wait_connected(self, address: str) -> None:
        """Until the server says that the notebook's kernel is idle and that the page is connected to it."""
        url = urlsplit(address)
        token = parse_qs(url.query)["token"][0]
        path = url.path.removeprefix("/lab/tree/")
        sessions: list[dict[str, object]] = []

        def connected() -> bool:
            sessions[:] = self.page.request.get(f"{url.scheme}://{url.netloc}/api/sessions?token={token}").json()
            kernels = [session["kernel"] for session in sessions if session["path"] == path]
            return any(kernel["connections"] > 0 and kernel["execution_state"] == "idle" for kernel in kernels)  # type: ignore[index]

        assert until(connected), f"no kernel is connected: {sessions}"

    def wait_idle(self) -> None:
        self.page.locator(IDLE).first.wait_for()

    def menu(self, name: str, item: str) -> None:
        self.page.get_by_role("menuitem", name=name, exact=True).click()
        self.page.get_by_role("menuitem", name=item).first.click()

    def running(self) -> bool:
        """Whether a cell runs or waits for its turn."""
        return any(state == "running" for state, _ in self.page.evaluate(CELLS))

    def has_run(self) -> bool:
        """Whether any cell has run."""
        return any(count is not None for _, count in self.page.evaluate(CELLS))

    def run_all(self) -> None:
        """Run all cells. JupyterLab drops cells that are run before it has made friends with the kernel: then once
        more."""
        for _ in range(5):
            self.menu("Run", "Run All Cells")
            until(lambda: self.running() or self.has_run(), PATIENCE / 8)
            self.settle()
            if self.has_run():
                return
        raise AssertionError("no cell was run")

    def restart_and_run_all(self) -> None:
        """Restart the kernel and run all cells anew; returns when the last has run."""
        self.menu("Kernel", "Restart Kernel and Run All Cells")
        self.page.locator(".jp-Dialog .jp-mod-accept").click()
        assert until(self.running), "the cells were not run again"
        self.settle()

    def settle(self) -> None:
        """Until every cell has run."""
        assert until(lambda: not self.running(), 2 * PATIENCE), "a cell still runs"
        self.wait_idle()

    # ---- the panel ----------------------------------------------------------------------------------------

    @property
    def panel(self) -> Locator:
        """The panel's box, found by what only it has."""
        return self.page.locator(".jp-OutputArea-output .lessonkit-panel").first

    @property
    def picture(self) -> Locator:
        return self.panel.locator(".lessonkit-picture svg")

    def path(self, name: str) -> str:
        """The path data of an edge in the panel's picture, such as "front.hem"."""
        return self.picture.locator(f'[data-name="{name}"]').first.get_attribute("d") or ""

    def box(self, label: str) -> Locator:
        return self.panel.get_by_role("textbox", name=label, exact=True)

    def handle(self, label: str) -> Locator:
        row = self.panel.locator(".lessonkit-row").filter(has=self.page.get_by_label(label, exact=True))
        return row.locator(".noUi-handle")
