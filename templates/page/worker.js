// The engine of the lesson: Python in a web worker. It is sent {id, text} and answers {id, text}; the first thing it
// says is {ready, seconds} or {failed}. Nothing is fetched but the files beside it.
import { loadPyodide } from "./pyodide.mjs";

const here = new URL("./", self.location.href).href;

// The large file comes packed, whatever the host does about compression.
const plain = self.fetch.bind(self);
self.fetch = async (asked, options) => {
  const address = typeof asked === "string" ? asked : asked.url ?? String(asked);
  if (!address.endsWith("pyodide.asm.wasm")) return plain(asked, options);
  const packed = await plain(address + ".gz", options);
  if (!packed.ok) return packed;
  const stream = packed.body.pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream, { headers: { "Content-Type": "application/wasm" } });
};

async function bytes(name) {
  const found = await plain(here + name);
  if (!found.ok) throw new Error(name);
  return found.arrayBuffer();
}

let answer = null;

async function start() {
  const began = performance.now();
  const [kit, lesson, lock, options] = await Promise.all([
    bytes("kit.zip"),
    bytes("lesson.zip"),
    bytes("lock.json"),
    bytes("engine.json"),
  ]);
  const text = new TextDecoder();
  const pyodide = await loadPyodide({
    indexURL: here,
    stdLibURL: here + "python.zip",
    lockFileContents: text.decode(lock),
    packageBaseUrl: here,
  });
  const core = performance.now();
  pyodide.unpackArchive(kit, "zip", { extractDir: "/kit" });
  pyodide.unpackArchive(lesson, "zip", { extractDir: "/lesson" });
  const make = pyodide.runPython(`
import os, sys
sys.path.insert(0, "/kit")
os.chdir("/lesson")
sys.dont_write_bytecode = True
def make(options):
    import json
    from pathlib import Path
    from kit.page.engine import Engine
    from kit.page.opened import without_notebook
    without_notebook()
    told = json.loads(options)
    engine = Engine(Path("lesson.ipynb"), offered=told["languages"], sliders=told["sliders"], cloth=told["cloth"])
    return engine.answer
make
`);
  answer = make(text.decode(options));
  const now = performance.now();
  self.postMessage({ ready: true, seconds: [(core - began) / 1000, (now - core) / 1000] });
}

const started = start().catch((error) => {
  self.postMessage({ failed: String(error && error.message ? error.message : error) });
});

self.onmessage = async (event) => {
  await started;
  if (answer === null) return;
  const { id, text } = event.data;
  try {
    self.postMessage({ id, text: answer(text) });
  } catch (error) {
    self.postMessage({ id, broken: String(error && error.message ? error.message : error) });
  }
};
