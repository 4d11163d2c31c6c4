"""Every example lesson in the browser's Python and in this one: drawing data, findings and sentences for settings and
bodies drawn at random.

    .venv/bin/python tests/bench/page_truth.py --settings 200 dune_skirt eddy_skirt

Without names every example lesson is worked. Chromium may reach nothing but the page's own server. One page is built;
the others are it with another lesson inside. It ends with 1 when anything but the place of a text is not the same.
"""

from __future__ import annotations

import argparse
import functools
import http.server
import json
import shutil
import sys
import tempfile
import threading
import time
from pathlib import Path
from random import Random
from typing import Any

from playwright.sync_api import Browser, sync_playwright

from kit.live.class_source import class_source
from kit.page.build import LESSON, build_page
from kit.page.bundle import zipped
from kit.page.engine import Engine
from kit.page.opened import without_notebook

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
from both_pythons import Apart, settings
from example import lesson_notebooks
from patience import drafting_patiently

ROOT = Path(__file__).resolve().parents[2]


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, format: str, *args: Any) -> None: ...


def compared(browser: Browser, folder: Path, name: str, count: int, seed: int) -> Apart:
    """The page in `folder`, given the lesson `name`, beside CPython."""
    source = class_source(ROOT / "example_notebooks" / f"{name}.ipynb", LESSON, public=True)
    lesson = folder.parent / "lesson"
    shutil.rmtree(lesson, ignore_errors=True)
    for path, data in source.files.items():
        (lesson / path).parent.mkdir(parents=True, exist_ok=True)
        (lesson / path).write_bytes(data)
    engine = Engine(lesson / LESSON, offered=["en"])
    edition = next(folder.glob("edition-*"))
    (edition / "lesson.zip").write_bytes(zipped(source.files))
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(folder)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    address = f"http://127.0.0.1:{server.server_port}/"
    context = browser.new_context(viewport={"width": 390, "height": 844}, service_workers="block")
    context.route("**/*", lambda way: way.continue_() if way.request.url.startswith(address) else way.abort())
    page = context.new_page()
    page.set_default_timeout(600_000)
    page.goto(address)
    page.wait_for_selector("html[data-proved]", state="attached")

    def here(message: dict[str, Any]) -> dict[str, Any]:
        made: dict[str, Any] = json.loads(engine.answer(json.dumps(message)))
        return made

    def there(message: dict[str, Any]) -> dict[str, Any]:
        made: dict[str, Any] = page.evaluate("m => new Promise(done => window.lessonAsk(m, done))", message)
        return made

    found = Apart()
    for setting in settings(engine, here, Random(seed), count):
        found.compare(here, there, setting)
    context.close()
    server.shutdown()
    server.server_close()
    return found


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("lessons", nargs="*")
    parser.add_argument("--settings", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    lessons = asked.lessons or [path.stem for path in lesson_notebooks()]
    wrong = 0
    # A page stops what does not end by ending its worker; here the clock of a busy machine must not stop what does.
    with tempfile.TemporaryDirectory() as scratch, sync_playwright() as playwright, drafting_patiently():
        folder = Path(scratch) / "page"
        build_page(ROOT / "example_notebooks" / "ferry_tote.ipynb", folder, cloth=False, spoken=["en"])
        without_notebook()  # as in the page: a panel of the lesson would work it anew at every setting
        chromium = shutil.which("chromium")
        browser = playwright.chromium.launch(executable_path=chromium, args=["--no-sandbox", "--disable-gpu"])
        for name in lessons:
            began = time.perf_counter()
            found = compared(browser, folder, name, asked.settings, asked.seed)
            print(
                f"{name}: {found.asked} settings, {found.refused} refused by both, numbers {found.farthest:.1e} mm"
                f" apart at most, {found.placed} with every text in the same place, {len(found.other)} other"
                f" differences ({time.perf_counter() - began:.0f} s)",
                flush=True,
            )
            for line in found.other[:5]:
                print(f"  {line}", flush=True)
            wrong += len(found.other)
        browser.close()
    return 1 if wrong else 0


if __name__ == "__main__":
    raise SystemExit(main())
