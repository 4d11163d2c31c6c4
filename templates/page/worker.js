// The engine of the lesson: Python in a web worker. It is sent {id, text} and answers {id, text}; the first thing it
// says is {ready, seconds} or {failed}. Nothing is fetched but the files beside it.
import { loadPyodide } from "./pyodide.mjs";
import { aside, bytes, flowing, here, keep, text } from "./files.js";
import { engineIn } from "./making.js";

// Python asks for its files by these names; they travel packed, whatever the host does about compression.
const plain = self.fetch.bind(self);
const library = aside("python.zip");
const bundle = aside("kit.zip");
self.fetch = async (asked, options) => {
  const address = typeof asked === "string" ? asked : asked.url ?? String(asked);
  if (address === `${here}pyodide.asm.wasm`) return flowing("pyodide.asm.wasm");
  if (address === `${here}python.zip`) return library;
  return plain(asked, options);
};

let answer = null;

async function start() {
  const began = performance.now();
  const [lesson, lock, options] = await Promise.all([bytes("lesson.zip"), text("lock.json"), text("engine.json")]);
  const pyodide = await loadPyodide({
    indexURL: here,
    stdLibURL: here + "python.zip",
    lockFileContents: lock,
    packageBaseUrl: here,
  });
  const core = performance.now();
  answer = engineIn(pyodide, await (await bundle).arrayBuffer(), lesson, options);
  const now = performance.now();
  self.postMessage({ ready: true, seconds: [(core - began) / 1000, (now - core) / 1000] });
  setTimeout(keep, 3000);
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
