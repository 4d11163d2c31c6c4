"""From a slider to the picture: working the example lesson, kernel side, and painted pixels in JupyterLab.

Baselines, measured in the same run: the same outline drawn with matplotlib into a PNG (what `interact` shows),
and a bare ipywidgets slider that sets one of two ready SVGs (what the browser and the messages alone take).
"""

from __future__ import annotations

import asyncio
import io
import json
import statistics
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import nbformat
import pytest

from kit import Lesson, panel
from kit.picture.draft import bench_drawing
from kit.picture.svg_pen import svg

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "browser"))

ROUNDS = 200
MOVES = 60
EXAMPLE = "tideline_wrap_top.ipynb"
MEDIANS: dict[str, float] = {}


def code_cells(root: Path) -> list[str]:
    book = json.loads((root / "example_notebooks" / EXAMPLE).read_text(encoding="utf-8"))
    return ["".join(cell["source"]) for cell in book["cells"] if cell["cell_type"] == "code"]


@pytest.fixture
def lesson(root: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    """The example lesson, in a folder of its own."""
    monkeypatch.chdir(tmp_path)
    names: dict[str, Any] = {}
    for source in code_cells(root):
        if not source.startswith("panel("):
            exec(compile(source, "<cell>", "exec"), names)
    found: Lesson = names["lesson"]
    return found


def report(capsys: pytest.CaptureFixture[str], name: str, seconds: list[float], against: str = "") -> None:
    """Print p50 and p95 in ms, and the ratio of the p50 to a baseline measured earlier in this run."""
    cuts = statistics.quantiles(seconds, n=20)
    MEDIANS[name] = statistics.median(seconds)
    line = f"{name}: p50 {MEDIANS[name] * 1e3:.1f} ms, p95 {cuts[18] * 1e3:.1f} ms ({len(seconds)} moves)"
    if against in MEDIANS:
        line += f"; {MEDIANS[name] / MEDIANS[against]:.2f} x {against}"
    with capsys.disabled():
        print(f"\n  {line}")


def lengths() -> Iterator[float]:
    """Sleeve lengths in cm, up and down, never twice the same in a row."""
    while True:
        yield from (20 + step / 10 for step in range(150))
        yield from (35 - step / 10 for step in range(150))


@pytest.mark.benchmark(group="kernel side")
def test_matplotlib_drawing_the_same_outline(
    benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]
) -> None:
    """Baseline: work the lesson, draw it with matplotlib, write the PNG that `interact` would send."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    from kit.picture.matplotlib_pen import draw

    move = lengths()

    def picture() -> None:
        pattern = lesson.work(values={**lesson.values, "sleeve_length": next(move) * 10})
        figure = Figure(figsize=(7.6, 5.6), dpi=100)
        FigureCanvasAgg(figure)
        draw(bench_drawing(pattern), figure.add_subplot())
        figure.savefig(io.BytesIO(), format="png")

    benchmark.pedantic(picture, rounds=40, warmup_rounds=3)
    report(capsys, "matplotlib, kernel side", benchmark.stats.stats.data)


@pytest.mark.benchmark(group="kernel side")
def test_working_the_lesson(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    move, values = lengths(), lesson.values
    benchmark.pedantic(
        lambda: lesson.work(values={**values, "sleeve_length": next(move) * 10}), rounds=ROUNDS, warmup_rounds=10
    )
    report(capsys, "working the lesson", benchmark.stats.stats.data)


@pytest.mark.benchmark(group="kernel side")
def test_drawing_and_writing_the_svg(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    pattern = lesson.work()
    benchmark.pedantic(lambda: svg(bench_drawing(pattern), 760, 560), rounds=ROUNDS, warmup_rounds=10)
    report(capsys, "drawing and writing the SVG", benchmark.stats.stats.data)


@pytest.mark.benchmark(group="kernel side")
def test_slider_to_picture(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    """A slider's message to every widget of the panel set, in an event loop as in a kernel (aim: 16 ms at p95)."""
    loop = asyncio.new_event_loop()
    shown = panel(lesson)
    slider, move = shown.rows["sleeve_length"].slider, lengths()

    async def one() -> None:
        drawn, slider.value = shown.drawn, next(move)
        while shown.drawn == drawn:
            await asyncio.sleep(0)

    benchmark.pedantic(lambda: loop.run_until_complete(one()), rounds=ROUNDS, warmup_rounds=10)
    shown.close()
    loop.close()
    report(capsys, "slider to picture, kernel side", benchmark.stats.stats.data, "matplotlib, kernel side")


# ---- painted pixels ---------------------------------------------------------------------------------------

BARE = """
import ipywidgets
from kit.picture.draft import bench_drawing
from kit.picture.svg_pen import svg
both = [lesson.work(values={**lesson.values, "sleeve_length": length}) for length in (250.0, 300.0)]
ready = [svg(bench_drawing(pattern), 760, 560) for pattern in both]
bare = ipywidgets.FloatSlider(26, min=5, max=45, step=0.1)
bare_picture = ipywidgets.HTML(ready[0])
bare.observe(lambda change: setattr(bare_picture, "value", ready[round(change.new * 10) % 2]), "value")
box = ipywidgets.VBox([bare, bare_picture])
box.add_class("bench-bare")
box
"""
INTERACT = """
%matplotlib inline
import matplotlib.pyplot as plt
from kit.picture.matplotlib_pen import draw
def show(sleeve_length):
    figure, axes = plt.subplots(figsize=(7.6, 5.6))
    draw(bench_drawing(lesson.work(values={**lesson.values, "sleeve_length": sleeve_length * 10})), axes)
    plt.show()
held = ipywidgets.interactive(show, sleeve_length=ipywidgets.FloatSlider(26, min=5, max=45, step=0.1))
held.add_class("bench-interact")
held
"""
MEASURE = """async ([handle, target, moves, image]) => {
  const frame = () => new Promise(requestAnimationFrame);
  const times = [];
  for (let move = 0; move < moves; move++) {
    const key = Math.floor(move / 20) % 2 ? 'ArrowLeft' : 'ArrowRight';
    const changed = new Promise((resolve, reject) => {
      const see = new MutationObserver(() => {
        if (image && !target.querySelector('img')) return;
        see.disconnect();
        resolve();
      });
      see.observe(target, {childList: true, subtree: true, attributes: true});
      setTimeout(() => reject(new Error('no new picture after 10 s')), 10000);
    });
    const start = performance.now();
    handle.dispatchEvent(new KeyboardEvent('keydown', {key, bubbles: true}));
    await changed;
    if (image) await target.querySelector('img').decode();
    await frame();
    await frame();
    times.push((performance.now() - start) / 1000);
    await new Promise(resolve => setTimeout(resolve, 60));
  }
  return times;
}"""

Measured = Callable[[str], list[float]]


@pytest.fixture(scope="module")
def in_lab(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Measured]:
    """Measures moves of the panel, the bare slider and `interact` in one notebook, one page and one kernel."""
    from lab import running_chromium, running_lab
    from notebook import Notebook

    base = tmp_path_factory.mktemp("bench")
    folder = base / "lessons"
    folder.mkdir()
    cells = [source for source in code_cells(root) if not source.startswith("panel(")]
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    book = nbformat.v4.new_notebook(metadata={"kernelspec": kernel})
    book.cells = [nbformat.v4.new_code_cell("\n\n".join(cells)), nbformat.v4.new_code_cell("panel(lesson)")]
    book.cells += [nbformat.v4.new_code_cell(BARE), nbformat.v4.new_code_cell(INTERACT)]
    (folder / "bench.ipynb").write_text(nbformat.writes(book), encoding="utf-8")
    with running_lab(base, folder) as lab, running_chromium() as browser:
        page = browser.new_page(viewport={"width": 1500, "height": 1150})
        opened = Notebook(page, lab.page_of("bench.ipynb"))
        opened.run_all()
        places = {
            "panel": (lambda: opened.handle("Sleeve length"), ".lessonkit-picture"),
            "bare": (lambda: page.locator(".bench-bare .noUi-handle"), ".bench-bare .widget-html-content"),
            "interact": (lambda: page.locator(".bench-interact .noUi-handle"), ".bench-interact .widget-output"),
        }

        def measure(which: str) -> list[float]:
            handle, target = places[which]
            handle().scroll_into_view_if_needed()
            page.locator(target).scroll_into_view_if_needed()
            page.wait_for_timeout(1500)
            there = [handle().element_handle(), page.locator(target).element_handle()]
            page.evaluate(MEASURE, [*there, 10, which == "interact"])
            found: list[float] = page.evaluate(MEASURE, [*there, MOVES, which == "interact"])
            return found

        yield measure


@pytest.mark.browser
@pytest.mark.benchmark(group="painted pixels in JupyterLab")
@pytest.mark.parametrize(
    ("which", "name", "against"),
    [
        ("bare", "bare slider and ready SVG, painted", ""),
        ("interact", "interact with matplotlib, painted", "bare slider and ready SVG, painted"),
        ("panel", "panel, painted", "bare slider and ready SVG, painted"),
        ("panel", "panel again, painted", "interact with matplotlib, painted"),
    ],
)
def test_slider_to_painted_pixels(
    benchmark: Any, in_lab: Measured, capsys: pytest.CaptureFixture[str], which: str, name: str, against: str
) -> None:
    """From the key that moves a slider to the second frame after the new picture (aim for the panel: 1.25 x the
    bare slider). The round shown in the table is the whole series of moves; each move is printed as p50 and p95."""
    seconds = benchmark.pedantic(in_lab, args=(which,), rounds=1)
    benchmark.extra_info.update(p50=statistics.median(seconds), p95=statistics.quantiles(seconds, n=20)[18])
    report(capsys, name, seconds, against)
