// The files of this edition, and what becomes of those that travel packed. Unpacked they are kept on the device, beside
// what the service worker keeps, so that only the first visit has to unpack.
import { unpacked, whole } from "./unpack.js";

export const here = new URL("./", self.location.href).href;
const plain = self.fetch.bind(self);
const root = new URL("../", here).pathname;
const KEPT = `lesson ${root} ${here.split("/").at(-2)} unpacked`;
const KINDS = { wasm: "application/wasm", zip: "application/zip" };
const tokeep = new Map();

async function fetched(name) {
  const found = await plain(here + name);
  if (!found.ok) throw new Error(name);
  return found;
}

export const bytes = async (name) => (await fetched(name)).arrayBuffer();
export const text = async (name) => (await fetched(name)).text();

async function kept(name) {
  try {
    return await (await caches.open(KEPT)).match(here + name);
  } catch {
    return undefined; // a browser that keeps nothing
  }
}

const answered = (body, name) => new Response(body, { headers: { "Content-Type": KINDS[name.split(".").at(-1)] } });

// Unpacked while it arrives: for what can be used from its beginning.
export async function flowing(name) {
  const found = await kept(name);
  if (found) return found;
  const [one, other] = [await fetched(`${name}.lzma`), []];
  tokeep.set(name, other);
  const stream = unpacked(one.body).pipeThrough(
    new TransformStream({
      transform: (part, to) => {
        other.push(part);
        to.enqueue(part);
      },
    }),
  );
  return answered(stream, name);
}

// Unpacked by a worker of its own, while this one starts Python.
export async function aside(name) {
  const found = await kept(name);
  if (found) return found;
  const data = await new Promise((done) => {
    const failed = () => done(null);
    try {
      const worker = new Worker(`${here}unpacking.js`, { type: "module" });
      worker.onerror = failed;
      worker.onmessage = (event) => {
        worker.terminate();
        done(event.data);
      };
      worker.postMessage(`${here}${name}.lzma`);
    } catch {
      failed(); // a browser without workers in workers
    }
  });
  const made = data || (await whole((await fetched(`${name}.lzma`)).body));
  tokeep.set(name, [made]);
  return answered(made, name);
}

// Keep what was unpacked, when nothing more urgent is to be done.
export async function keep() {
  try {
    const store = await caches.open(KEPT);
    for (const [name, parts] of tokeep) await store.put(here + name, answered(new Blob(parts), name));
  } catch {
    // no room on the device: the next visit unpacks again
  }
  tokeep.clear();
}
