"""A frame of the canvas in a page without a notebook: each move of a handle is drawn in the very next frame, whatever
the kernel does meanwhile. How long a frame takes is the screen's and the machine's; how many it takes is ours."""

from __future__ import annotations

import base64
import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser

from kit import Lesson
from kit.lesson.another import open_lesson
from kit.live.canvas.widget import Canvas
from kit.resources import templates

pytestmark = pytest.mark.browser

MOVES = 200
SENT = ("step", "layers", "selected", "steps", "words", "ink", "scene", "answer", "slopes", "drawing", "draft")
SHOW = """async ([script, state]) => {
  const read = (value) => value?.bytes !== undefined
    ? new DataView(Uint8Array.from(atob(value.bytes), (each) => each.charCodeAt(0)).buffer)
    : Array.isArray(value) ? value.map(read)
    : value && typeof value === 'object' ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, read(v)]))
    : value;
  const has = read(state);
  const module = await import(URL.createObjectURL(new Blob([script], { type: 'text/javascript' })));
  window.sent = [];
  const model = { get: (name) => has[name], set: (name, value) => { has[name] = value }, save_changes() {},
    on() {}, off() {}, send: (told) => sent.push(told) };
  module.default.render({ model, el: document.getElementById('here') });
  await new Promise(requestAnimationFrame);
}"""
DRAG = """async ([name, edge, moves]) => {
  const frame = () => new Promise(requestAnimationFrame);
  const root = document.querySelector('.lessonkit-canvas'), stage = root.querySelector('.lessonkit-canvas-stage');
  const handle = root.querySelector(`[data-handle="${name}"]`), box = handle.getBoundingClientRect();
  const line = () => root.querySelector(`.lessonkit-canvas-line[data-name="${edge}"]`).getAttribute('d');
  const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
  const send = (kind, on, px, py) => on.dispatchEvent(new PointerEvent(kind, { pointerId: 1, isPrimary: true, button: 0,
    buttons: 1, clientX: px, clientY: py, bubbles: true, cancelable: true }));
  send('pointerdown', handle, x, y);
  const frames = [];
  for (let move = 0; move < moves; move++) {
    const way = Math.floor(move / 20) % 2 ? 20 - move % 20 : move % 20, before = line();
    send('pointermove', stage, x + (way + 1) * 3, y + way);
    let count = 0;
    while (line() === before && count < 60) { await frame(); count++; }
    frames.push(count);
  }
  send('pointerup', stage, x, y);
  return frames;
}"""


def plain(value: Any) -> Any:
    """What the kernel sends, as JSON can carry it."""
    if isinstance(value, bytes):
        return {"bytes": base64.b64encode(value).decode()}
    if isinstance(value, dict):
        return {key: plain(each) for key, each in value.items()}
    return [plain(each) for each in value] if isinstance(value, list | tuple) else value


def drawn(root: Path, folder: Path) -> Canvas:
    """The canvas of the wrap top as a kernel has made it, its handles found."""
    book = folder / "tideline_wrap_top.ipynb"
    book.write_bytes((root / "example_notebooks" / book.name).read_bytes())
    lesson: Lesson = open_lesson(book)
    shown = Canvas(lesson)
    shown._draw()
    shown._finding.now()  # at once: the browser's own loop runs in this thread
    return shown


def test_a_move_is_drawn_in_the_very_next_frame(
    root: Path, tmp_path: Path, browser: Browser, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    shown = drawn(root, tmp_path)
    state = {name: plain(getattr(shown, name)) for name in SENT}
    assert len(json.dumps(state["answer"])) < 60_000, "what each move sends"
    page = browser.new_page(viewport={"width": 1500, "height": 1150})
    troubles: list[str] = []
    page.on("pageerror", lambda error: troubles.append(str(error)))
    style = (templates() / "live" / "canvas.css").read_text(encoding="utf-8")
    page.set_content(f'<!doctype html><meta charset="utf-8"><style>{style}</style><div id="here"></div>')
    page.evaluate(SHOW, [str(Canvas._esm), state])
    page.locator('[data-handle="sleeve_length"]').wait_for()
    frames = page.evaluate(DRAG, ["sleeve_length", "front.overarm", MOVES])
    page.close()
    shown.close()
    assert not troubles
    assert len(frames) == MOVES and max(frames) == 1, [count for count in frames if count != 1]
