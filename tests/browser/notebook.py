"""What a reader does with a lesson in JupyterLab, for tests and benchmarks."""

from __future__ import annotations

from urllib.parse import parse_qs, urlsplit

from playwright.sync_api import Locator, Page, expect
from playwright.sync_api import TimeoutError as PlaywrightTimeout

IDLE = '.jp-Notebook-ExecutionIndicator[data-status="idle"]'


class Notebook:
    """A lesson open in JupyterLab. `troubles` are what the page reported as errors."""

    def __init__(self, page: Page, address: str) -> None:
        self.page = page
        self.troubles: list[str] = []
        page.set_default_timeout(30_000)
        page.on("pageerror", lambda error: self.troubles.append(str(error)))
        page.on("console", lambda said: self.troubles.append(said.text) if said.type == "error" else None)
        page.goto(address)
        page.locator(".jp-Notebook .jp-Cell").first.wait_for()
        self.wait_connected(address)
        self.wait_idle()

    def wait_connected(self, address: str) -> None:
        """Until the server says that the notebook's kernel is idle and that the page is connected to it."""
        url = urlsplit(address)
        token = parse_qs(url.query)["token"][0]
        for _ in range(300):
            sessions = self.page.request.get(f"{url.scheme}://{url.netloc}/api/sessions?token={token}").json()
            kernels = [session["kernel"] for session in sessions]
            if any(kernel["connections"] > 0 and kernel["execution_state"] == "idle" for kernel in kernels):
                return
            self.page.wait_for_timeout(100)
        raise AssertionError(f"no kernel is connected: {sessions}")

    def wait_idle(self) -> None:
        self.page.locator(IDLE).first.wait_for(timeout=45_000)

    def menu(self, name: str, item: str) -> None:
        self.page.get_by_role("menuitem", name=name, exact=True).click()
        self.page.get_by_role("menuitem", name=item).first.click()

    def run_all(self) -> None:
        ran = self.page.locator(".jp-InputPrompt", has_text="[1]").first
        for _ in range(5):
            self.menu("Run", "Run All Cells")
            try:
                ran.wait_for(timeout=6_000)
                break
            except PlaywrightTimeout:  # JupyterLab drops cells run before its kernel is connected
                continue
        self.settle()

    def restart_and_run_all(self) -> None:
        self.menu("Kernel", "Restart Kernel and Run All Cells")
        self.page.locator(".jp-Dialog .jp-mod-accept").click()
        self.page.locator(".jp-InputPrompt", has_text="[*]").first.wait_for(timeout=30_000)
        self.settle()

    def settle(self) -> None:
        """Until every cell has run: none shows the star of a cell still waiting."""
        expect(self.page.locator(".jp-InputPrompt", has_text="[*]")).to_have_count(0, timeout=60_000)
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
