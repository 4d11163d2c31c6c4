"""A lesson's page in Chromium, measured: bytes, start cold and from the cache, memory, a slider's move
until it is painted.

    .venv/bin/python tests/bench/page_in_browser.py example_notebooks/dune_skirt.ipynb --moves 200

The same with the processor slowed six times, as a cheap phone is (the page alone, and its whole process), and beside
matplotlib in this Python, unless it is to be `--short`; start and slider in Firefox too where there is one
(tests/browser/firefox.py). The slider is the first of the page or `--slider NAME`. What the browser answers is compared
with CPython by tests/bench/page_truth.py.
"""

from __future__ import annotations

import argparse
import functools
import gzip
import http.server
import io
import json
import os
import shutil
import signal
import sys
import tempfile
import threading
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright

from kit.page.build import build_page

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "browser"))
from firefox import FIREFOX, Firefox, running_firefox

_SLIDER = """(name) => {
  const r = name ? document.getElementById("value-" + name) : document.querySelector("#rows input");
  return {name: r.id.slice(6), first: Number(r.min), last: Number(r.max)};
}"""
_MOVES = """async ({moves, name, first, last}) => {
  const range = document.getElementById("value-" + name), taken = [];
  for (let i = 0; i < moves; i++) {
    const before = document.documentElement.dataset.drawn;
    range.value = first + (i * 7) % (last - first + 1);
    range.dispatchEvent(new Event("input"));
    while (document.documentElement.dataset.drawn === before) await new Promise(requestAnimationFrame);
    taken.push(Number(document.documentElement.dataset.took));
  }
  return taken.sort((a, b) => a - b);
}"""

_ASKS = """async ({moves, name, first, last}) => {
  const ask = (more) => new Promise((done) => window.lessonAsk({do: "draw", room: [390, 372], ...more}, done));
  const {size} = (await ask({values: {}})).sliders.find((each) => each.name === name), taken = [];
  for (let i = 0; i < moves; i++) {
    const began = performance.now();
    await ask({values: {[name]: (first + (i * 7) % (last - first + 1)) * size}});
    taken.push(performance.now() - began);
  }
  return taken.sort((a, b) => a - b);
}"""


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, format: str, *args: Any) -> None: ...


def opened(page: Page, address: str) -> float:
    began = time.perf_counter()
    page.goto(address)
    page.wait_for_selector("html[data-drawn]", state="attached", timeout=300_000)
    return time.perf_counter() - began


def renderer(browser: Browser, page: Page) -> int:
    """The process that shows the page and runs its workers: it is the one that works while the page is asked to."""
    infos = browser.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
    before = {each["id"]: each["cpuTime"] for each in infos if each["type"] == "renderer"}
    page.evaluate("new Promise(done => window.lessonAsk({do: 'prove', values: {}}, done))")
    page.evaluate("() => { const end = performance.now() + 400; while (performance.now() < end); }")
    after = browser.new_browser_cdp_session().send("SystemInfo.getProcessInfo")["processInfo"]
    busy = {e["id"]: e["cpuTime"] - before.get(e["id"], 0.0) for e in after if e["type"] == "renderer"}
    return int(max(busy, key=lambda each: busy[each]))


def memory(pid: int) -> float:
    """MB that the process has for itself, its share of what it shares counted (PSS)."""
    text = Path(f"/proc/{pid}/smaps_rollup").read_text()
    return int(next(line.split()[1] for line in text.splitlines() if line.startswith("Pss:"))) / 1024


@contextmanager
def slowed(pid: int, times: int) -> Iterator[None]:
    """The process runs one part in so many of the time, in turns of a few milliseconds, its workers with it."""
    ended = threading.Event()

    def turns() -> None:
        while not ended.is_set():
            os.kill(pid, signal.SIGSTOP)
            time.sleep(0.004 * (times - 1))
            os.kill(pid, signal.SIGCONT)
            time.sleep(0.004)

    thread = threading.Thread(target=turns)
    thread.start()
    try:
        yield
    finally:
        ended.set()
        thread.join()


def told(taken: Sequence[float]) -> str:
    inside = sorted(taken)
    return (
        f"p50 {inside[len(inside) // 2]:.0f} ms, p95 {inside[int(len(inside) * 0.95)]:.0f} ms over {len(inside)} moves"
    )


def in_firefox(firefox: Firefox, address: str, slider: str, moves: int) -> str:
    """Start cold and from what it kept, and the slider's moves."""
    starts = []
    for _ in range(2):
        firefox.go("about:blank")
        began = time.perf_counter()
        firefox.go(address)
        firefox.until("!!document.documentElement.dataset.drawn")
        starts.append(time.perf_counter() - began)
        firefox.until("!!document.documentElement.dataset.kept && !!document.documentElement.dataset.proved")
        time.sleep(6)  # what was unpacked is kept by then
    asked = {"moves": moves, **firefox.say(f"({_SLIDER})({json.dumps(slider)})")}
    taken = firefox.say(f"({_MOVES})({json.dumps(asked)})")
    return f"start cold {starts[0]:.1f} s, from the cache {starts[1]:.1f} s; {asked['name']} {told(taken)}"


def matplotlib_moves(notebook: Path, slider: dict[str, Any], size: float, moves: int) -> list[float]:
    """ms that the same moves take with matplotlib, drawn into the PNG that `interact` would send: the kernel's part
    alone, without the way through JupyterLab (tests/bench/test_bench_canvas.py measures that)."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    from kit import open_lesson
    from kit.picture.draft import step_drawing
    from kit.picture.matplotlib_pen import draw

    lesson, taken = open_lesson(notebook), []
    for i in range(moves):
        began = time.perf_counter()
        at = slider["first"] + (i * 7) % (slider["last"] - slider["first"] + 1)
        pattern = lesson.work(values={**lesson.values, slider["name"]: at * size})
        figure = Figure(figsize=(6.4, 4.8), dpi=100)
        draw(step_drawing(pattern.steps[0]), figure.add_axes((0, 0, 1, 1)))
        FigureCanvasAgg(figure).print_png(io.BytesIO())
        taken.append((time.perf_counter() - began) * 1000)
    return taken


def slowed_by_browser(page: Page, context: BrowserContext, moves: dict[str, Any]) -> str:
    throttle = context.new_cdp_session(page)
    throttle.send("Emulation.setCPUThrottlingRate", {"rate": 6})
    taken = told(page.evaluate(_MOVES, moves))
    throttle.send("Emulation.setCPUThrottlingRate", {"rate": 1})
    return taken


def beside(page: Page, notebook: Path, moves: dict[str, Any]) -> str:
    """The same moves drawn by matplotlib."""
    drawn = page.evaluate("new Promise(done => window.lessonAsk({do: 'draw', values: {}}, done))")
    size = next(each["size"] for each in drawn["sliders"] if each["name"] == moves["name"])
    return told(matplotlib_moves(notebook, moves, size, moves["moves"]))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("notebooks", nargs="+", type=Path)
    parser.add_argument("--moves", type=int, default=200)
    parser.add_argument("--slider", default="", metavar="NAME")
    parser.add_argument("--short", action="store_true", help="no matplotlib")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as scratch, sync_playwright() as playwright:
        for notebook in asked.notebooks:
            folder = Path(scratch) / notebook.stem
            built = build_page(notebook, folder, cloth=False, spoken=["en"])
            files = [path for path in folder.rglob("*") if path.is_file() and path.name != "notices.txt"]
            packed = sum(min(path.stat().st_size, len(gzip.compress(path.read_bytes(), 9))) for path in files)
            print(f"{notebook.stem}: {built.bytes / 1e6:.2f} MB written, {packed / 1e6:.2f} MB compressed")
            server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(folder)))
            threading.Thread(target=server.serve_forever, daemon=True).start()
            address = f"http://127.0.0.1:{server.server_port}/"
            browser = playwright.chromium.launch(
                executable_path=shutil.which("chromium"), args=["--no-sandbox", "--disable-gpu"]
            )
            context = browser.new_context(viewport={"width": 390, "height": 844})
            page = context.new_page()
            page.set_default_timeout(600_000)
            print(f"  start cold {opened(page, address):.1f} s", end=", ")
            page.wait_for_selector("html[data-kept]", state="attached")
            page.wait_for_timeout(6000)  # what was unpacked is kept by then
            print(f"from the cache {opened(page, address):.1f} s", end=", ")
            page.wait_for_selector("html[data-proved]", state="attached")
            pid = renderer(browser, page)
            print(f"memory of page and worker {memory(pid):.0f} MB")
            slider = page.evaluate(_SLIDER, asked.slider)
            moves = {"moves": asked.moves, **slider}
            print(f"  {slider['name']} to painted picture: {told(page.evaluate(_MOVES, moves))}", flush=True)
            print(f"  asked of the engine alone, nothing shown: {told(page.evaluate(_ASKS, moves))}", flush=True)
            print(f"  slowed six times by the browser: {slowed_by_browser(page, context, moves)}", flush=True)
            with slowed(pid, 6):
                print(f"  its process slowed six times: {told(page.evaluate(_MOVES, moves))}", flush=True)
            if not asked.short:
                print(f"  matplotlib as interact draws it, the kernel's part alone: {beside(page, notebook, moves)}")
            print(f"  load of the machine {os.getloadavg()[0]:.0f}", flush=True)
            browser.close()
            if FIREFOX is not None:
                with running_firefox() as firefox:
                    firefox.size(390, 844)
                    print(f"  Firefox: {in_firefox(firefox, address, asked.slider, asked.moves)}", flush=True)
            server.shutdown()


if __name__ == "__main__":
    main()
