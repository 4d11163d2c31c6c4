"""From a drag on the canvas to painted pixels in JupyterLab, and the kernel's part of it.

Baseline of the same run: `ipywidgets.interact` with matplotlib, the same lesson and the same parameter. A drag is
measured twice: to the frame that shows the lines moved by the browser itself, and to the frame of the kernel's exact
answer. How the kernel's part grows is measured on a lesson of 10, 30 and 100 drafting steps.
"""

from __future__ import annotations

import asyncio
import json
import statistics
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import nbformat
import pytest

from kit import Lesson, bodice_block, canvas, cm
from kit.live.canvas.handles import handles
from kit.live.canvas.sewn import fates
from kit.live.canvas.shown import View
from kit.live.canvas.state import canvas_state

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "browser"))
sys.path.insert(0, str(Path(__file__).resolve().parent))
from test_bench_live import INTERACT, MEASURE, code_cells, lengths, report

ROUNDS = 200
MOVES = 200


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


# ---- the kernel's part ------------------------------------------------------------------------------------


@pytest.mark.benchmark(group="canvas, kernel side")
def test_working_the_lesson(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    """Baseline of the kernel's part: what any view of the lesson costs."""
    move, values = lengths(), lesson.values
    benchmark.pedantic(
        lambda: lesson.work(values={**values, "sleeve_length": next(move) * 10}), rounds=ROUNDS, warmup_rounds=10
    )
    report(capsys, "working the lesson", benchmark.stats.stats.data)


@pytest.mark.benchmark(group="canvas, kernel side")
def test_state_and_json(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    """The state of a worked lesson, written out."""
    pattern = lesson.work()
    found, told = handles(lesson, pattern), fates(pattern)
    benchmark.pedantic(
        lambda: json.dumps(canvas_state(pattern, View(), handles=found, fate=told)), rounds=ROUNDS, warmup_rounds=10
    )
    report(capsys, "canvas state and JSON", benchmark.stats.stats.data, "working the lesson")


@pytest.mark.benchmark(group="canvas, kernel side")
def test_a_move_of_the_widget(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    """A handle's message to the answer handed to the connection, in an event loop as in a kernel."""
    loop, move, turns = asyncio.new_event_loop(), lengths(), iter(range(1, 10_000))
    shown = canvas(lesson)

    async def one() -> None:
        shown.move("sleeve_length", next(move) * 10, turn=next(turns), last=False)

    benchmark.pedantic(lambda: loop.run_until_complete(one()), rounds=ROUNDS, warmup_rounds=10)
    shown.close()
    loop.close()
    report(capsys, "a move of the canvas, kernel side", benchmark.stats.stats.data, "working the lesson")


@pytest.mark.benchmark(group="canvas, kernel side")
def test_finding_the_handles(benchmark: Any, lesson: Lesson, capsys: pytest.CaptureFixture[str]) -> None:
    """What is done in parts when the values have come to rest."""
    pattern = lesson.work()
    benchmark.pedantic(lambda: handles(lesson, pattern), rounds=20, warmup_rounds=2)
    report(capsys, "finding the handles", benchmark.stats.stats.data, "working the lesson")


def long_lesson(steps: int) -> Lesson:
    """A bodice whose hem is lowered, and each step after it marks a point on it and rules a line."""
    lesson = Lesson("Quay vest", start=bodice_block, units="cm", size="W4", edition="1", date="2026-11")
    lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm)

    @lesson.step("Lower the hem")
    def lower_hem(front, hem_drop):
        """Rule the hem {hem_drop} below the waistline."""
        front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)

    for number in range(1, steps):
        code = f"def mark_{number}(front, hem_drop):\n    'Mark a point.'\n"
        code += f"    front.mark(place_{number}=front.hem.at(front.hem.length * {number} / {steps + 1}))\n"
        names: dict[str, Any] = {}
        exec(code, names)
        lesson.step(f"Mark place {number}")(names[f"mark_{number}"])
    return lesson


@pytest.mark.benchmark(group="canvas, growth")
@pytest.mark.parametrize("steps", [10, 30, 100])
def test_growth(
    benchmark: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], steps: int
) -> None:
    """A move of the canvas with ten, thirty and a hundred steps."""
    monkeypatch.chdir(tmp_path)
    loop, turns = asyncio.new_event_loop(), iter(range(1, 10_000))
    shown = canvas(long_lesson(steps))

    async def one() -> None:
        turn = next(turns)
        shown.move("hem_drop", 100.0 + turn % 40, turn=turn, last=False)

    benchmark.pedantic(lambda: loop.run_until_complete(one()), rounds=60, warmup_rounds=5)
    shown.close()
    loop.close()
    report(capsys, f"a move with {steps} steps", benchmark.stats.stats.data, "a move with 10 steps")


# ---- painted pixels ---------------------------------------------------------------------------------------

DRAG = """async ([root, handle, moves]) => {
  const frame = () => new Promise(requestAnimationFrame);
  const line = () => root.querySelector('.lessonkit-canvas-line[data-name="front.overarm"]').getAttribute('d');
  const stage = root.querySelector('.lessonkit-canvas-stage');
  const box = handle.getBoundingClientRect();
  const from = [box.left + box.width / 2, box.top + box.height / 2];
  const send = (kind, x, y) => (kind === 'pointerdown' ? handle : stage).dispatchEvent(new PointerEvent(kind, {
    pointerId: 1, isPrimary: true, button: 0, buttons: 1, clientX: x, clientY: y, bubbles: true, cancelable: true}));
  const turned = () => Number(root.dataset.turn);
  send('pointerdown', ...from);
  const painted = [], exact = [];
  for (let move = 0; move < moves; move++) {
    const way = Math.floor(move / 20) % 2 ? 20 - move % 20 : move % 20;
    const before = line(), turn = turned();
    const start = performance.now();
    send('pointermove', from[0] + (way + 1) * 3, from[1] + way);
    while (line() === before && performance.now() - start < 5000) await frame();
    await frame();
    painted.push((performance.now() - start) / 1000);
    while ((root.dataset.waiting === 'true' || turned() === turn) && performance.now() - start < 5000) await frame();
    await frame();
    exact.push((performance.now() - start) / 1000);
    await new Promise(resolve => setTimeout(resolve, 60));
  }
  send('pointerup', ...from);
  return {painted, exact};
}"""

Measured = Callable[[str], list[float]]


@pytest.fixture(scope="module")
def in_lab(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Measured]:
    """Measures drags of the canvas and moves of `interact` in one notebook, one page and one kernel."""
    from lab import running_chromium, running_lab
    from notebook import Notebook

    base = tmp_path_factory.mktemp("bench")
    folder = base / "lessons"
    folder.mkdir()
    cells = [source for source in code_cells(root) if not source.startswith("panel(")]
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    book = nbformat.v4.new_notebook(metadata={"kernelspec": kernel})
    head = "import ipywidgets\nfrom kit import canvas\nfrom kit.picture.draft import bench_drawing"
    sources = ["\n\n".join([*cells, head]), "canvas(lesson)", "panel(lesson)", INTERACT]
    book.cells = [nbformat.v4.new_code_cell(source) for source in sources]
    (folder / "bench.ipynb").write_text(nbformat.writes(book), encoding="utf-8")
    drags: dict[str, list[float]] = {}
    with running_lab(base, folder) as lab, running_chromium() as browser:
        page = browser.new_page(viewport={"width": 1500, "height": 1150})
        opened = Notebook(page, lab.page_of("bench.ipynb"))
        opened.run_all()

        def measure(which: str) -> list[float]:
            if which == "interact":
                handle = page.locator(".bench-interact .noUi-handle")
                target = page.locator(".bench-interact .widget-output")
                target.scroll_into_view_if_needed()
                page.wait_for_timeout(1500)
                there = [handle.element_handle(), target.element_handle()]
                page.evaluate(MEASURE, [*there, 10, True])
                found: list[float] = page.evaluate(MEASURE, [*there, MOVES, True])
                return found
            if not drags:
                drawing = page.locator(".lessonkit-canvas").first
                drawing.scroll_into_view_if_needed()
                handle = drawing.locator('[data-handle="sleeve_length"]')
                handle.wait_for()
                page.wait_for_timeout(2000)
                page.evaluate(DRAG, [drawing.element_handle(), handle.element_handle(), 10])
                page.wait_for_timeout(2000)
                drags.update(page.evaluate(DRAG, [drawing.element_handle(), handle.element_handle(), MOVES]))
            return drags[which]

        yield measure


@pytest.mark.browser
@pytest.mark.benchmark(group="canvas, painted pixels in JupyterLab")
@pytest.mark.parametrize(
    ("which", "name"),
    [
        ("interact", "interact with matplotlib, painted"),
        ("painted", "canvas, the browser's own frame"),
        ("exact", "canvas, the kernel's exact answer"),
    ],
)
def test_drag_to_painted_pixels(
    benchmark: Any, in_lab: Measured, capsys: pytest.CaptureFixture[str], which: str, name: str
) -> None:
    """From the pointer's move to the frame after the lines have changed (aim: the next frame, 16 ms), with a panel of
    the same lesson beside it. Both figures of the canvas come from one series of drags."""
    seconds = benchmark.pedantic(in_lab, args=(which,), rounds=1)
    benchmark.extra_info.update(p50=statistics.median(seconds), p95=statistics.quantiles(seconds, n=20)[18])
    report(capsys, name, seconds, "interact with matplotlib, painted")
