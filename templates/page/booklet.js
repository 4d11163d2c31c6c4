// The booklet for the reader's own body: what follows the body is asked of the page's engine, part by part, and put in
// the place of what stood for the size the booklet was built in. What the engine cannot make is told where it stands.
import { BodyForm } from "./body.js";
import { Engine } from "./engine.js";
import { $, drawn, made } from "./told.js";

const here = new URL("./", import.meta.url).href;
const told = JSON.parse($("live-data").textContent); // {slug, language, units, size, words, parts}
const words = told.words;
const OWN = "\u0000own";
const kept = `lesson:${new URL("./", location.href).pathname}:${told.slug}`; // the page beside it keeps its own here too
const state = { size: "", body: null, values: {}, own: false };
const enlarge = JSON.parse($("screen-data").textContent).words.enlarge;
let whole = {}, engine, form, turn = 0;

function recall() {
  try {
    whole = JSON.parse(localStorage.getItem(kept) || "{}");
    for (const key of Object.keys(state)) if (whole[key] !== undefined && (key === "body" || typeof whole[key] === typeof state[key])) state[key] = whole[key];
  } catch {
    // what was kept cannot be read: the booklet stands as it was built
  }
}

function keep() {
  try {
    localStorage.setItem(kept, JSON.stringify({ ...whole, ...state }));
  } catch {
    // a browser that keeps nothing
  }
}

function setting() {
  const body = state.own && state.body ? state.body : state.size ? { size: state.size } : {};
  return { language: told.language, units: told.units, body, values: { ...told.values, ...state.values } };
}

const ask = (message) => new Promise((done) => engine.ask({ ...setting(), ...message }, done));
const say = (text) => ($("mine-said").textContent = text);

// ---- what is put in place -----------------------------------------------------------------------------------------

const marks = (within) => [...within.querySelectorAll("[data-live]")].filter((each) => each.closest("article.step") === (within.matches?.("article.step") ? within : null));
const names = (within) => [...new Set(marks(within).map((each) => each.dataset.live))];

function sayAnew(within, texts) {
  for (const each of marks(within)) if (texts[each.dataset.live] !== undefined) each.textContent = texts[each.dataset.live];
}

function figure(holder, shown) {
  if (!holder || !shown) return;
  holder.querySelectorAll(".gap").forEach(() => document.querySelector("dialog.picture-window[open]")?.close());
  const wide = drawn(shown.svg), narrow = shown.phone ? drawn(shown.phone) : null;
  if (!wide) return;
  if (narrow) narrow.classList.add("phone");
  holder.classList.toggle("two", Boolean(narrow));
  holder.querySelectorAll(":scope > svg").forEach((each) => each.remove());
  holder.prepend(wide, ...(narrow ? [narrow] : []));
  const caption = holder.querySelector("figcaption");
  if (caption && shown.caption) caption.textContent = shown.caption;
  holder.querySelector(".enlarge")?.setAttribute("aria-label", enlarge.replace("{picture}", wide.querySelector("title")?.textContent || ""));
}

function lines(cell, text) {
  text.split("\n").forEach((line, at) => cell.append(at ? made("small", line) : line));
  return cell;
}

function table(each) {
  const box = made("div", "", "tabled"), scrolls = made("div", "", "sideways"), body = made("table", "", each.kind);
  const chart = each.kind.includes("chart");
  const mine = (at) => chart && each.marked >= 0 && at === each.marked + 1;
  const row = (texts, head) => {
    const line = made("tr");
    texts.forEach((text, at) => {
      const heads = head ? text || at < texts.length - 1 : !at; // no heading without a word
      const cell = lines(made(heads ? "th" : "td", "", mine(at) ? "mine" : ""), text);
      if (heads) cell.scope = head ? "col" : "row";
      line.append(cell);
    });
    return line;
  };
  body.setAttribute("aria-label", each.title);
  const head = made("thead"), rows = made("tbody");
  head.append(row(each.head, true));
  rows.append(...each.rows.map((texts) => row(texts, false)));
  body.append(head, rows);
  scrolls.append(body);
  scrolls.tabIndex = 0;
  scrolls.setAttribute("role", "group");
  scrolls.setAttribute("aria-label", each.title);
  box.append(made("h3", each.title), scrolls);
  if (each.note) box.append(made("p", each.note, "note"));
  return box;
}

function note(section, text, hides = "") {
  if (!section) return;
  section.querySelector(":scope > .for-size")?.remove();
  section.querySelectorAll(hides || "no-such").forEach((each) => (each.hidden = true));
  section.querySelector("h2, h3")?.after(made("p", text, "for-size"));
}

// The chart of sizes stays: what changes is which column is the reader's, and what is said under it.
function sizes(place, told) {
  if (!place) return;
  for (const each of place.querySelectorAll("table")) {
    const at = [...each.rows[0].cells].findIndex((cell) => told.mine && cell.textContent === told.mine);
    for (const row of each.rows) [...row.cells].forEach((cell, column) => cell.classList.toggle("mine", column > 0 && column === at));
  }
  const notes = place.querySelectorAll(".note");
  if (notes.length) notes[notes.length - 1].textContent = told.note;
}

function showWhole(answer) {
  sizes(document.querySelector('[data-part="sizes"]'), answer.sizes);
  for (const place of document.querySelectorAll('[data-part="for"]')) place.textContent = answer.for;
  sayAnew(document, answer.live);
  for (const [name, each] of Object.entries(answer.tables)) {
    const place = document.querySelector(`[data-part="${name}"]`);
    if (place) place.replaceChildren(...(each ? [table(each)] : []));
  }
  figure(document.querySelector(".cover .views figure, .cover .below figure"), answer.pictures.views);
  for (const name of ["on_body", "laid_flat"]) figure(document.querySelector(`[data-part="${name}"] figure`), answer.pictures[name]);
  const allowances = document.querySelector('[data-part="allowances"]');
  if (allowances) allowances.textContent = answer.allowances;
  for (const line of document.querySelectorAll("[data-tape]")) {
    const [value, guessed] = answer.tapes[line.dataset.tape] || ["", ""];
    line.querySelector(".value")?.remove();
    if (value) line.append(" ", made("span", [value, guessed].filter(Boolean).join(", "), "value"));
  }
  for (const card of document.querySelectorAll(".card")) {
    const cuts = answer.cards[card.querySelector(".piece-number")?.textContent.trim()] || [];
    card.querySelectorAll(".card-cut").forEach((each) => each.remove());
    card.append(...cuts.map((text) => made("p", text, "card-cut")));
  }
  const size = told.size;
  const of = (text) => text.replace("{size}", size);
  note($("lays"), of(words.booklet_no_lays), ".lays, .lays ~ p, h2 ~ p:not(.for-size)");
  note($("worksheet"), of(words.booklet_no_sheet), ".sheet-step, h2 ~ p:not(.for-size)");
  note($("printing"), of(words.booklet_no_pages));
  note($("pieces"), of(words.booklet_drawn_for));
  note($("fit-changes"), of(words.booklet_drawn_for));
  note($("fitting"), of(words.booklet_drawn_for));
}

function showStep(article, answer) {
  article.classList.remove("waits");
  sayAnew(article, answer.live);
  const numbers = article.querySelector(".numbers");
  if (numbers) {
    numbers.replaceChildren(
      ...answer.numbers.map(([label, value]) => {
        const row = made("div");
        row.append(made("dt", label), made("dd", value));
        return row;
      }),
    );
  }
  const places = article.dataset.kind === "draft" ? [article] : [...article.querySelectorAll(".operation")];
  const figures = (place) => [...place.querySelectorAll(".row figure.picture")];
  const fits = places.length === answer.operations.length && places.every((place, at) => figures(place).length === answer.operations[at].pictures.length);
  if (!fits) {
    note(article, words.booklet_differs.replace("{size}", told.size));
    return;
  }
  places.forEach((place, at) => {
    const operation = answer.operations[at];
    const text = place.querySelector('[data-part="text"]'), why = place.querySelector(".why");
    if (text && operation.text) text.textContent = operation.text;
    if (why && operation.why) why.textContent = operation.why;
    figures(place).forEach((holder, number) => figure(holder, operation.pictures[number]));
  });
}

// ---- for whom -----------------------------------------------------------------------------------------------------

async function follow() {
  const mine = ++turn;
  const name = state.own ? state.body.name : state.size || told.size;
  const articles = [...document.querySelectorAll("article.step[data-kind]")];
  document.documentElement.dataset.mine = "drawing";
  say(words.booklet_drawing.replace("{name}", name).replace("{number}", "0").replace("{count}", String(articles.length)));
  const answer = await ask({ do: "booklet", live: names(document) });
  if (mine !== turn) return;
  if (!answer.ok) {
    document.documentElement.dataset.mine = "refused";
    return say(`${answer.said} ${words.booklet_stands.replace("{name}", document.querySelector('[data-part="for"]')?.textContent || told.size)}`);
  }
  keep();
  $("mine-back").hidden = false;
  document.querySelector(".mine-name")?.remove();
  document.querySelector("header.bar")?.append(made("span", name, "mine-name")); // in sight wherever the reader is
  articles.forEach((each) => each.classList.add("waits"));
  showWhole(answer);
  const proof = await ask({ do: "prove" });
  if (mine !== turn) return;
  const wrong = proof.ok ? proof.findings.filter((each) => each.level === "error").map((each) => each.said) : [proof.said];
  $("mine-wrong").hidden = !wrong.length;
  $("mine-wrong").replaceChildren(...(wrong.length ? [made("li", words.booklet_wrong)] : []), ...wrong.map((text) => made("li", text)));
  for (const [at, article] of articles.entries()) {
    const step = { kind: article.dataset.kind, key: article.dataset.step };
    const shown = await ask({ do: "booklet", step, live: names(article) });
    if (mine !== turn) return;
    if (shown.ok) showStep(article, shown);
    else note(article, shown.said);
    article.classList.remove("waits");
    say(words.booklet_drawing.replace("{name}", name).replace("{number}", String(at + 1)).replace("{count}", String(articles.length)));
  }
  say(words[Object.keys(state.values).length ? "booklet_done_values" : "booklet_done"].replace("{name}", name));
  document.documentElement.dataset.mine = "done";
}

function furnish(about) {
  if (!about.ok) return say(about.said);
  if (!about.sizes.length) return follow();
  $("size-label").hidden = false;
  $("size").replaceChildren(...about.sizes.map((size) => new Option(size, size)), new Option(words.own_body, OWN));
  $("size").value = state.own || !state.size ? OWN : state.size;
  form = new BodyForm(words, about.measures, state.body || { name: "", typed: {} }, {
    setting,
    ask: (message, then) => engine.ask(message, then),
    use: (body) => {
      Object.assign(state, { own: true, body });
      $("mine-title").focus({ preventScroll: true });
      $("mine").scrollIntoView();
      follow();
    },
    units: () => {},
  });
  $("own").hidden = $("size").value !== OWN;
  if (state.own || (state.size && state.size !== told.size) || Object.keys(state.values).length) follow();
  else say(words.booklet_type);
}

function open() {
  if (engine) return;
  $("mine-open").hidden = true;
  say(`${words.opening} ${words.opening_first.replace("{size}", told.megabytes)}`);
  engine = new Engine(`${here}worker.js`, {
    ready: () => navigator.serviceWorker?.register("sw.js").catch((error) => console.warn(error)),
    failed: (why) => {
      console.error(why);
      say(typeof WebAssembly === "object" && "DecompressionStream" in self ? words.not_loaded : words.cannot_run);
    },
    stopped: () => {
      turn += 1;
      document.documentElement.dataset.mine = "refused";
      say(words.stopped);
    },
  });
  engine.ask({ ...setting(), values: {}, body: {}, do: "about" }, furnish);
}

recall();
$("mine-title").tabIndex = -1;
$("mine-open").addEventListener("click", open);
$("mine-back").addEventListener("click", () => {
  Object.assign(state, { own: false, size: "", values: {} });
  keep();
  location.reload();
});
$("size").addEventListener("change", () => {
  const own = $("size").value === OWN;
  $("own").hidden = !own;
  if (own) return form.read();
  Object.assign(state, { own: false, size: $("size").value });
  $("body-said").textContent = "";
  follow();
});
if (state.own || Object.keys(state.values).length) open();
