// The page: what is set, what is shown, and what is asked of the engine when something changes.
import { BodyForm } from "./body.js";
import { Engine } from "./engine.js";
import { Grips } from "./grips.js";
import { Sliders } from "./sliders.js";
import { $, drawn, made, showExercises, showFindings, showResults } from "./told.js";

const here = new URL("./", import.meta.url).href;
const OWN = "\u0000own";
// What the reader chose; where nothing is chosen the page stands as it opened (`page.opening`).
const state = { language: "", units: "", size: "", body: null, values: {}, step: null, own: false };
let page, words, about, form, good, own_pages, moved = "", from = {};
const sliders = new Sliders($("rows"), {}, slid);
const grips = new Grips($("picture"), (name, at) => sliders.pull(name, at));

// ---- what is kept -------------------------------------------------------------------------------------------------

const kept = () => `lesson:${location.pathname}:${page.slug}`;

let last_kept = "";

function keep() {
  const text = JSON.stringify(state);
  if (text === last_kept) return; // to write takes longer than to look
  try {
    localStorage.setItem(kept(), text);
    last_kept = text;
  } catch {
    // a browser that keeps nothing: the values stand as long as the page
  }
}

function recall() {
  try {
    const found = JSON.parse(localStorage.getItem(kept()) || "{}");
    for (const key of Object.keys(state)) if (typeof found[key] === typeof state[key] || key === "body" || key === "step") state[key] = found[key] ?? state[key];
  } catch {
    // what was kept cannot be read: the lesson's own values stand
  }
}

// ---- what is asked ------------------------------------------------------------------------------------------------

const units = () => state.units || page.opening.units;
const size = () => state.size || page.opening.size;

function setting() {
  const body = state.own && state.body ? state.body : size() ? { size: size() } : {};
  return { language: state.language, units: units(), body, values: { ...page.opening.values, ...state.values } };
}

function room() {
  const box = $("picture").getBoundingClientRect();
  return [Math.round(box.width), Math.round(box.height)];
}

let drawn_at = 0, asked_for_drawing = 0, again = 0;

function draw() {
  const asked = performance.now(), step = state.step, number = ++asked_for_drawing;
  const answered = () => (document.documentElement.dataset.answered = String(number));
  document.documentElement.dataset.asked = String(number);
  own_pages?.setTo(setting());
  engine.draw({ ...setting(), do: "draw", step, room: room() }, (told) => {
    if (!told.ok) {
      answered();
      return refused(told.said);
    }
    good = JSON.stringify({ values: state.values, size: state.size, own: state.own, body: state.body });
    if ($("picture").classList.contains("stale")) trouble("");
    again = 0;
    show(told, step, number === asked_for_drawing);
    requestAnimationFrame(() => {
      answered();
      drawn_at += 1;
      document.documentElement.dataset.drawn = String(drawn_at);
      document.documentElement.dataset.took = String(performance.now() - asked);
    });
    rest();
  });
}

let resting;

function rest() {
  clearTimeout(resting);
  resting = setTimeout(() => {
    engine.ask({ ...setting(), do: "prove" }, (told) => {
      if (!told.ok) return;
      showFindings(told, words);
      showResults(told.exercises, about.exercises);
      if (told.failed) trouble("", true);
      document.documentElement.dataset.proved = String(drawn_at);
    });
  }, 350);
}

function changed() {
  draw(); // first: the engine is at work while the rest is done
  keep();
  trouble("");
}

function slid(name, value) {
  moved = name;
  state.values = { ...state.values, [name]: value };
  changed();
}

function refused(said) {
  $("picture").classList.add("stale");
  trouble(`${said} ${words.stale}`, true);
}

function trouble(said, mending = false) {
  $("trouble").hidden = !said && !mending;
  $("trouble-said").textContent = said;
  $("mend").hidden = !mending;
  if (!mending) $("remedies").replaceChildren();
}

function mend() {
  $("remedies").replaceChildren(made("li", words.mending));
  engine.ask({ ...setting(), do: "mend", moved }, (told) => {
    if (!told.ok) return $("remedies").replaceChildren(made("li", told.said));
    const lines = told.remedies.map((each) => {
      const line = made("li");
      const button = made("button", each.take);
      button.type = "button";
      button.addEventListener("click", () => {
        state.values = { ...state.values, ...each.values };
        changed();
        $("step-title").focus();
      });
      line.append(button, made("span", each.said));
      return line;
    });
    $("remedies").replaceChildren(made("li", told.heading), ...lines);
  });
}

// ---- what is shown ------------------------------------------------------------------------------------------------

// `asked` is the step it was drawn for. Where the page was sent to another one meanwhile, that one stands; where a
// slider went on meanwhile, it is not the `latest`, and the sliders stay where the hand has them.
function show(told, asked, latest) {
  const picture = $("picture");
  const svg = told.svg ? drawn(told.svg) : null;
  picture.classList.remove("stale");
  picture.replaceChildren(svg || made("p", words.no_picture));
  picture.setAttribute("aria-label", words.picture);
  const place = words.place.replace("{number}", String(told.number + 1)).replace("{count}", String(about.steps.length));
  $("step-label").textContent = [told.label, told.part].filter(Boolean).join(" · ");
  $("step-title").textContent = told.title;
  $("step-words").replaceChildren(...told.words.map((text) => made("p", text)));
  $("measured").hidden = !told.measures.length;
  $("measured").querySelector("ul").replaceChildren(...told.measures.map((text) => made("li", text)));
  const step = `${told.step.kind}:${told.step.key}`;
  $("steps").value = step;
  $("back").disabled = told.number === 0 && told.step.picture === 1;
  $("on").disabled = told.number === about.steps.length - 1 && told.step.picture === told.step.pictures;
  if (state.telling) $("told").textContent = `${place}: ${told.title}. ${told.part} ${told.alt}`;
  state.telling = false;
  if (state.step === asked) state.step = told.step;
  sliders.show(told.sliders, words, latest);
  if (svg) grips.show(svg, told.grips, told.sliders);
  $("reset").disabled = !Object.keys(state.values).length;
  keep();
}

function go(step) {
  state.step = step;
  state.telling = true;
  keep();
  draw();
}

function walk(by) {
  const { kind, key, picture = 1, pictures = 1 } = state.step;
  if (picture + by >= 1 && picture + by <= pictures) return go({ kind, key, picture: picture + by, pictures });
  const at = about.steps.findIndex((each) => each.kind === kind && each.key === key) + by;
  const next = about.steps[at];
  if (next) go({ kind: next.kind, key: next.key, picture: by > 0 ? 1 : -1 });
}

function speak() {
  words = page.languages[state.language];
  document.documentElement.lang = state.language;
  for (const id of ["back", "on", "mend", "reset", "private"]) $(id).textContent = words[id];
  for (const [id, key] of [["values", "values"], ["body", "body"], ["exercises", "exercises"], ["check", "check"], ["finished", "finished"], ["cloth", "cloth"], ["about", "about"]]) $(id).querySelector("h2").textContent = words[key];
  $("measured").querySelector("summary").textContent = words.measures;
  $("size-label").querySelector("span").textContent = words.size;
  $("steps").setAttribute("aria-label", words.steps);
  $("walk").setAttribute("aria-label", words.steps);
  $("language-label").textContent = words.language;
  $("units-label").textContent = words.units;
  $("units").options[0].textContent = words.cm;
  $("units").options[1].textContent = words.inch;
  $("left-out").textContent = own_pages ? words.pages_left_out : words.left_out;
  own_pages?.speak(words);
  $("notices").textContent = words.notices;
  const booklet = $("booklet");
  if (booklet) booklet.textContent = words.booklet_link;
  if (booklet) booklet.href = JSON.parse(booklet.dataset.files)[state.language] ?? booklet.getAttribute("href");
  $("newer-said").textContent = words.newer;
  $("newer-take").textContent = words.newer_take;
  $("found").replaceChildren(made("p", words.checking));
}

function furnish(told) {
  about = told;
  document.title = told.title;
  $("title").textContent = told.title;
  $("edition").textContent = words.edition.replace("{edition}", told.edition);
  const groups = ["draft", "sew"].map((kind) => {
    const group = made("optgroup");
    group.label = kind === "draft" ? words.drafting : words.sewing;
    const steps = told.steps.filter((each) => each.kind === kind);
    group.append(...steps.map((each, at) => new Option(`${at + 1}. ${each.title}`, `${kind}:${each.key}`)));
    return group;
  });
  $("steps").replaceChildren(...groups.filter((group) => group.children.length));
  $("body").hidden = !told.sizes.length;
  $("size").replaceChildren(...told.sizes.map((size) => new Option(size, size)), new Option(words.own_body, OWN));
  $("size").value = state.own ? OWN : size() || told.size;
  $("language").replaceChildren(...told.languages.map((each) => new Option(each.name, each.code)));
  $("language").value = state.language;
  $("language").parentElement.hidden = told.languages.length < 2;
  $("units").value = units();
  showExercises(told.exercises, words, reset);
  if (told.measures.length) {
    form = new BodyForm(words, told.measures, state.body || { name: "", typed: {} }, { setting, ask: (message, then) => engine.ask(message, then), use, units: setUnits });
    $("own").hidden = !state.own;
    if (!state.own) $("body-said").textContent = "";
  }
  $("panel").hidden = $("walk").hidden = false;
}

// ---- what people do -----------------------------------------------------------------------------------------------

function reset() {
  state.values = {};
  moved = "";
  changed();
}

function use(body) {
  state.own = true;
  state.body = body;
  keep();
  draw();
  const said = words.body_used.replace("{name}", body.name);
  const before = $("trouble-said").textContent;
  setTimeout(() => {
    if (!$("trouble-said").textContent || $("trouble-said").textContent === before) $("told").textContent = said;
  }, 500);
}

function setUnits(chosen) {
  state.units = chosen;
  $("units").value = chosen;
  keep();
  begin();
}

function begin() {
  speak();
  engine.ask({ ...setting(), values: {}, body: state.own || !size() ? {} : { size: size() }, do: "about" }, (told) => {
    if (!told.ok) return forget();
    if (asked_for(told)) return begin();
    furnish(told);
    state.step = state.step || told.steps[0];
    draw();
    document.dispatchEvent(new Event("lesson-open"));
  });
}

// The size an address asks for is taken once: what the reader chooses afterwards stands.
function asked_for(told) {
  const wanted = from.size;
  from.size = "";
  if (!wanted) return false;
  history.replaceState(null, "", location.pathname);
  if (!told.sizes.includes(wanted) || (!state.own && size() === wanted)) return false;
  Object.assign(state, { size: wanted, own: false });
  keep();
  return true;
}

// What was kept does not fit this lesson any more.
function forget() {
  Object.assign(state, { size: "", body: null, values: {}, step: null, own: false });
  keep();
  if (!from.forgot) {
    from.forgot = true;
    begin();
  }
}

function stopped() {
  Object.assign(state, good ? JSON.parse(good) : { values: {}, size: "", own: false });
  keep();
  refused(words.stopped);
  $("mend").hidden = true;
  if (about) draw();
  else if (++again <= 2) begin();
  else failed(words.stopped);
}

function failed(why) {
  console.error(why);
  const said = typeof WebAssembly === "object" && "DecompressionStream" in self ? words.not_loaded : words.cannot_run;
  $("picture").replaceChildren(made("p", said));
}

function wire() {
  $("back").addEventListener("click", () => walk(-1));
  $("on").addEventListener("click", () => walk(1));
  $("picture").addEventListener("keydown", (event) => {
    if (event.key === "ArrowRight" && !$("on").disabled) walk(1);
    else if (event.key === "ArrowLeft" && !$("back").disabled) walk(-1);
  });
  $("steps").addEventListener("change", () => {
    const [kind, ...key] = $("steps").value.split(":");
    go({ kind, key: key.join(":"), picture: 1 });
  });
  $("reset").addEventListener("click", reset);
  $("mend").addEventListener("click", mend);
  $("step-title").tabIndex = -1;
  $("size").addEventListener("change", () => {
    state.own = $("size").value === OWN;
    $("own").hidden = !state.own;
    if (!state.own) {
      state.size = $("size").value;
      $("body-said").textContent = "";
      changed();
    } else if (form) form.read();
  });
  $("language").addEventListener("change", () => {
    state.language = $("language").value;
    keep();
    begin();
  });
  $("units").addEventListener("change", () => setUnits($("units").value));
  let wide;
  new ResizeObserver(() => {
    clearTimeout(wide);
    wide = setTimeout(() => about && draw(), 200);
  }).observe($("picture"));
}

async function offline() {
  if ("room" in document.documentElement.dataset) return; // a class ends, and its page with it
  if (!("serviceWorker" in navigator)) return;
  try {
    const kept = await navigator.serviceWorker.register("sw.js");
    const newer = () => {
      $("newer").hidden = false;
      $("newer-take").onclick = () => {
        navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
        kept.waiting?.postMessage("take");
      };
    };
    if (kept.waiting && navigator.serviceWorker.controller) newer();
    kept.addEventListener("updatefound", () => {
      const coming = kept.installing;
      coming?.addEventListener("statechange", () => {
        if (coming.state === "installed" && navigator.serviceWorker.controller && kept.waiting) newer();
      });
    });
    await navigator.serviceWorker.ready;
    $("kept").textContent = words.kept;
    document.documentElement.dataset.kept = "yes";
  } catch (error) {
    console.warn(error); // without it the page works, with a connection
  }
}

let engine, kept_offline;

async function start() {
  const found = await fetch(`${here}page.json`);
  page = await found.json();
  state.language = page.own;
  recall();
  from.size = new URLSearchParams(location.search).get("size") || ""; // a booklet's code leads here
  if (!page.languages[state.language]) state.language = page.own;
  if (state.step && typeof state.step.key !== "string") state.step = null;
  if (page.pages) own_pages = new (await import("./pages.js")).OwnPages(`${here}pages_worker.js`, page.pages);
  speak();
  wire();
  engine = new Engine(`${here}worker.js`, {
    ready: (seconds) => {
      document.documentElement.dataset.started = seconds.map((each) => each.toFixed(2)).join(" ");
      if (!kept_offline) kept_offline = offline(); // not before: what it loads would stand in the way
    },
    failed,
    stopped,
  });
  // For tests, and for whoever looks closely: the engine past the page, and a stop as if a step did not end.
  window.lessonAsk = (message, then) => engine.ask(message, then);
  window.lessonStop = () => engine.stop();
  // For a class: the page goes where the teacher sends it, and tells where it stood. `values` are set beside the others,
  // or (`whole`) in their place.
  window.lessonTake = (given) => {
    if (!about) return null;
    const { step, values } = structuredClone(state);
    if (given.values) state.values = given.whole ? given.values : { ...state.values, ...given.values };
    if (given.step) state.step = given.step;
    state.telling = Boolean(given.step);
    changed();
    return { step, values };
  };
  begin();
}

start().catch((error) => console.error(error));
