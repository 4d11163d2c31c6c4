// Lays and writes the reader's own pages: Python once more, in a worker of its own, with the packages this needs. It
// begins when pages are asked for and ends with them, so that the lesson's own worker stays small and free. It is sent
// {id, text} and answers {id, text} or {id, broken}, as worker.js does; before that it says {progress: "loading"} and
// {progress: "laying"}, or {failed}. Nothing is fetched but the files beside it.
import { loadPyodide } from "./pyodide.mjs";
import { aside, bytes, flowing, here, text } from "./files.js";
import { engineIn } from "./making.js";

const plain = self.fetch.bind(self);
const beside = `${here}packages/`;
const bundle = aside("packages/kit.zip");
self.fetch = async (asked, options) => {
  const address = typeof asked === "string" ? asked : asked.url ?? String(asked);
  if (address === `${here}pyodide.asm.wasm`) return flowing("pyodide.asm.wasm");
  return plain(asked, options);
};

async function start() {
  self.postMessage({ progress: "loading" });
  const [lesson, lock, options] = await Promise.all([bytes("lesson.zip"), text("packages/lock.json"), text("engine.json")]);
  const pyodide = await loadPyodide({
    indexURL: here,
    stdLibURL: `${beside}python_stdlib.zip`,
    lockFileContents: lock,
    packageBaseUrl: beside,
  });
  const names = Object.keys(JSON.parse(lock).packages);
  const told = [];
  await pyodide.loadPackage(names, { messageCallback: () => {}, errorCallback: (line) => told.push(line) });
  const missing = names.filter((name) => !(name in pyodide.loadedPackages));
  if (missing.length) throw new Error([`without ${missing.join(", ")}`, ...told].join("; "));
  return engineIn(pyodide, await (await bundle).arrayBuffer(), lesson, options);
}

const started = start().catch((error) => {
  self.postMessage({ failed: String(error && error.message ? error.message : error) });
});

self.onmessage = async (event) => {
  const answer = await started;
  if (!answer) return;
  self.postMessage({ progress: "laying" });
  const { id, text } = event.data;
  try {
    self.postMessage({ id, text: answer(text) });
  } catch (error) {
    self.postMessage({ id, broken: String(error && error.message ? error.message : error) });
  }
};
