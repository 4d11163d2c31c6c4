"""A lesson's page in Chromium, measured: bytes, start cold and from the cache, a slider's move until it is painted.

    .venv/bin/python tests/bench/page_in_browser.py example_notebooks/dune_skirt.ipynb --moves 200 --settings 200

`--settings` draws settings at random and compares what the browser answers with CPython, character by character.
"""

from __future__ import annotations

import argparse
import functools
import gzip
import http.server
import json
import shutil
import tempfile
import threading
import time
from pathlib import Path
from random import Random
from typing import Any

from playwright.sync_api import Page, sync_playwright

from kit.page.build import build_page
from kit.page.engine import Engine

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


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, format: str, *args: Any) -> None: ...


def opened(page: Page, address: str) -> float:
    began = time.perf_counter()
    page.goto(address)
    page.wait_for_selector("html[data-drawn]", state="attached", timeout=300_000)
    return time.perf_counter() - began


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("notebook", type=Path)
    parser.add_argument("--moves", type=int, default=200)
    parser.add_argument("--settings", type=int, default=0)
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as scratch, sync_playwright() as playwright:
        folder = Path(scratch) / "page"
        built = build_page(asked.notebook, folder, cloth=False, spoken=["en"])
        files = [path for path in folder.rglob("*") if path.is_file() and path.name != "notices.txt"]
        packed = sum(min(path.stat().st_size, len(gzip.compress(path.read_bytes(), 9))) for path in files)
        print(f"{asked.notebook.stem}: {built.bytes / 1e6:.2f} MB written, {packed / 1e6:.2f} MB compressed")
        server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(folder)))
        threading.Thread(target=server.serve_forever, daemon=True).start()
        address = f"http://127.0.0.1:{server.server_port}/"
        chromium = shutil.which("chromium")
        browser = playwright.chromium.launch(executable_path=chromium, args=["--no-sandbox", "--disable-gpu"])
        page = browser.new_context(viewport={"width": 390, "height": 844}).new_page()
        print(f"start cold {opened(page, address):.1f} s")
        page.wait_for_selector("html[data-kept]", state="attached", timeout=300_000)
        print(f"start from the cache {opened(page, address):.1f} s")
        page.wait_for_selector("html[data-proved]", state="attached", timeout=300_000)
        slider = page.evaluate(
            "() => { const r = document.querySelector('#rows input');"
            " return {name: r.id.slice(6), first: Number(r.min), last: Number(r.max)} }"
        )
        taken = page.evaluate(_MOVES, {"moves": asked.moves, **slider})
        print(f"{slider['name']} to painted picture: p50 {taken[len(taken) // 2]:.0f} ms,", end=" ")
        print(f"p95 {taken[int(len(taken) * 0.95)]:.0f} ms over {len(taken)} moves")
        if asked.settings:
            print(f"{same(page, asked.notebook, asked.settings)} of {asked.settings} settings answered the same")
        browser.close()
        server.shutdown()


def same(page: Page, notebook: Path, count: int) -> int:
    """How many settings drawn at random the browser answers as CPython does: drawing, sentences, findings."""
    engine = Engine(notebook, offered=["en"])
    random = Random(1)
    about = json.loads(engine.answer('{"do":"about"}'))
    sliders = json.loads(engine.answer('{"do":"draw"}'))["sliders"]
    alike = 0
    for _ in range(count):
        values = {}
        for each in random.sample(sliders, min(3, len(sliders))):
            steps = range(each["first"], each["last"] + 1)
            values[each["name"]] = random.choice(steps) * each["size"]
        setting: dict[str, Any] = {"values": values, "body": {}}
        if about["sizes"]:
            typed = {
                "bust_girth": f"{random.uniform(80, 120):.1f} cm",
                "hip_girth": f"{random.uniform(86, 126):.1f} cm",
            }
            setting["body"] = random.choice([{"size": random.choice(about["sizes"])}, {"name": "I", "typed": typed}])
        step = {**random.choice(about["steps"]), "picture": 1}
        messages = [{"do": "draw", "step": step, **setting}, {"do": "prove", **setting}]
        here = [json.loads(engine.answer(json.dumps(message))) for message in messages]
        there = [page.evaluate("m => new Promise(done => window.lessonAsk(m, done))", message) for message in messages]
        alike += here == there
        if here != there:
            print(f"not the same: {json.dumps(setting)}")
    return alike


if __name__ == "__main__":
    main()
