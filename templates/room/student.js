// The class's part of a student's page: a line to the room that says where the student is and hears what the teacher
// sends; an engine in the room for a device that has none; the student's own pages. It stands between the page and its
// worker (templates/page/engine.js) and listens along.
const $ = (id) => document.getElementById(id);
const root = document.documentElement;
const SLOWLY = 60000; // ms that the device's own engine may take to start before the room works instead
const OFTEN = 700; // ms between two reports
const BETWEEN = 70; // ms between two messages to the room's engine: a slider that is pulled has its share, no more
const MOST = 60000; // characters that can be sent at once
const settings = ["language", "units", "body", "values", "step", "room"];
let words = {}, all = {}, line = null, waiting = new Map(), number = 0, pause = 500, gone = false;
let last = null, engine = root.dataset.own === "yes" && !location.search.includes("engine=room") ? "own" : "room";
let following = { on: false, along: false, step: null }, taken = null, hand = false, made = null, job = null;
let shift = "", meant = ""; // the step the teacher sent the page to; the one that the last drawing was asked under
let unopened = []; // what is to be done once the page is open
let look = null; // what was chosen and the room may not have heard
const report = { step: "", number: 0, steps: 0, solved: [], errors: -1, warnings: -1 };

function element(kind, text = "", name = "") {
  const made = document.createElement(kind);
  if (text) made.textContent = text;
  if (name) made.className = name;
  return made;
}

function fill(text, values) {
  return Object.entries(values).reduce((said, [name, value]) => said.replaceAll(`{${name}}`, value), text || "");
}

// ---- the line -----------------------------------------------------------------------------------------------------

function connect() {
  if (gone) return;
  const address = new URL("line", location.href);
  address.protocol = location.protocol === "https:" ? "wss:" : "ws:";
  address.search = "";
  line = new WebSocket(address);
  line.onopen = () => {
    pause = 500;
    said("");
    sent = "";
    tell();
    for (const asked of waiting.values()) post(asked.message);
  };
  line.onmessage = (event) => heard(JSON.parse(event.data));
  line.onclose = async () => {
    line = null;
    if (gone) return;
    said(words.lost);
    const found = await fetch("room/words.json", { cache: "no-store" }).catch(() => null);
    if (found && found.status === 403) return leave();
    setTimeout(connect, pause);
    pause = Math.min(pause * 2, 8000);
  };
}

function post(message) {
  if (!line || line.readyState !== WebSocket.OPEN) return false;
  line.send(JSON.stringify(message));
  return true;
}

function leave() {
  gone = true;
  line?.close();
  said(words.gone);
}

let reporting = 0, sent = "";

function tell() {
  if (reporting) return;
  reporting = setTimeout(() => {
    reporting = 0;
    const text = JSON.stringify({ ...report, engine });
    if (text !== sent && post({ is: "here", ...report, engine })) sent = text;
  }, OFTEN);
}

// ---- the engine ---------------------------------------------------------------------------------------------------

// What the page takes for its worker: the device's own one, or the room's.
class Through {
  constructor(address) {
    this.onmessage = this.onerror = () => {};
    this.asked = new Map();
    if (engine === "own") this.begin(address);
    else queueMicrotask(() => this.room());
  }

  begin(address) {
    this.own = new Worker(address, { type: "module" });
    this.slow = setTimeout(() => this.room(), SLOWLY);
    this.own.onmessage = (event) => {
      const told = event.data;
      if (told.failed) return this.room();
      if (told.ready) clearTimeout(this.slow);
      this.answered(told);
    };
    this.own.onerror = (event) => {
      event.preventDefault();
      this.room();
    };
  }

  // The device cannot: the room works for it from now on.
  room() {
    clearTimeout(this.slow);
    if (this.ended) return;
    this.own?.terminate();
    this.own = null;
    engine = "room";
    root.dataset.engine = "room";
    speak();
    tell();
    this.answered({ ready: true, seconds: [0, 0] });
    for (const [id, text] of this.asked) this.ask(id, text);
  }

  postMessage({ id, text }) {
    this.asked.clear();
    this.asked.set(id, text);
    note(JSON.parse(text));
    if (this.own) this.own.postMessage({ id, text });
    else this.ask(id, text);
  }

  ask(id, text) {
    if (text.length > MOST) return this.answered({ id, broken: words.too_large });
    const at = ++number;
    waiting.clear();
    waiting.set(at, { message: { is: "ask", id: at, text }, then: (told) => this.answered({ id, ...told }) });
    const wait = Math.max(0, (this.next || 0) - performance.now());
    this.next = performance.now() + wait + BETWEEN;
    setTimeout(() => waiting.has(at) && post(waiting.get(at).message), wait);
  }

  answered(data) {
    if (data.id !== undefined) {
      const asked = this.asked.get(data.id);
      this.asked.delete(data.id);
      if (asked && data.text) learn(JSON.parse(asked), data.text);
    }
    if (!this.ended) this.onmessage({ data });
  }

  // The room stops what does not end, and tells it; a message that waits its turn there is not to blame.
  get stopsItself() {
    return !this.own;
  }

  terminate() {
    this.ended = true;
    clearTimeout(this.slow);
    this.own?.terminate();
    waiting.clear();
  }
}

window.lessonWorker = (address) => new Through(address);

function note(asked) {
  if (asked.do !== "draw") return;
  last = asked;
  meant = shift;
}

// What the page hears of its engine tells where the student is.
function learn(asked, text) {
  if (!["about", "draw", "prove"].includes(asked.do)) return;
  const told = JSON.parse(text);
  if (!told.ok) return;
  if (asked.do === "about") report.steps = told.steps.length;
  if (asked.do === "draw") {
    const step = `${told.step.kind}:${told.step.key}`;
    if (report.step && step !== report.step && following.along && step !== meant) alone();
    report.step = step;
    report.number = told.number + 1;
  }
  if (asked.do === "prove") {
    report.solved = told.exercises.filter((each) => each.solved).map((each) => each.key);
    report.errors = told.findings.filter((each) => each.level === "error").length;
    report.warnings = told.findings.filter((each) => each.level === "warning").length;
  }
  tell();
}

const setting = () => Object.fromEntries(Object.entries(last || {}).filter(([name]) => settings.includes(name)));

// ---- what the room says -------------------------------------------------------------------------------------------

function heard(told) {
  if (told.is === "answer") {
    const asked = waiting.get(told.id);
    waiting.delete(told.id);
    said(told.why === "too_many" ? words.busy : "");
    asked?.then(told.text ? { text: told.text } : { busy: told.why === "too_many", stopped: told.why !== "too_many" });
  } else if (told.is === "welcome") {
    hand = told.hand;
    if (look === null) $("class-look").checked = told.may_look;
    else if (look !== told.may_look) post({ is: "may_look", yes: look });
    if (look) look = null;
    if (!told.name && remembered()) post({ is: "name", name: remembered() });
    if (told.made) made = told.made;
    if (told.making) job = under() ? job : { state: "begun" };
    else if (under()) job = null;
    lead(told.follow);
    speak();
  } else if (told.is === "hand") {
    hand = told.up;
    speak();
  } else if (told.is === "take") whenOpen(() => take(told));
  else if (told.is === "follow") lead(told);
  else if (told.is === "look") post({ is: "draft", for: told.for, setting: $("class-look").checked && last ? setting() : null });
  else if (told.is === "making") making(told);
  else if (told.is === "let_go") leave();
}

// What stood before it was given. The page must be open.
function give(given) {
  if (given.step) shift = `${given.step.kind}:${given.step.key}`;
  return window.lessonTake(given);
}

function whenOpen(then) {
  if (unopened) unopened.push(then);
  else then();
}

document.addEventListener("lesson-open", () => {
  const waited = unopened || [];
  unopened = null;
  for (const then of waited) then();
});

function take(told) {
  const given = {};
  if (told.step) given.step = told.step;
  if (Object.keys(told.values).length) given.values = told.values;
  const before = give(given);
  // what came first is the student's own: a second send before "Back to mine" does not take its place
  taken = { ...(told.step ? { step: before.step } : {}), ...(given.values ? { values: before.values } : {}), ...taken };
  $("class-sent").hidden = false;
  $("class-sent-said").textContent = told.title ? fill(words.sent_preset, { title: told.title }) : given.values ? words.sent_values : words.sent_step;
  $("class-back").hidden = !taken;
}

function settled() {
  taken = null;
  $("class-sent").hidden = true;
}

function lead(told) {
  const begun = told.on && !following.on;
  following.on = told.on;
  if (told.step) following.step = told.step;
  if (begun) following.along = true;
  if (!told.on) following.along = false;
  if (following.along && told.step) whenOpen(() => following.along && give({ step: following.step }));
  speak();
}

function alone() {
  following.along = false;
  speak();
}

function making(told) {
  job = told;
  if (told.made) made = told.made;
  speak();
}

// ---- what is shown ------------------------------------------------------------------------------------------------

function said(text) {
  if (!$("class-said")) return;
  $("class-said").textContent = text;
  $("class-said").hidden = !text;
}

const named = "lesson class name";
const remembered = () => {
  try {
    return sessionStorage.getItem(named) || "";
  } catch {
    return "";
  }
};

function build() {
  const section = element("section", "", "part");
  section.id = "class";
  section.innerHTML = `<h2></h2>
    <p id="class-lost" hidden></p>
    <label id="class-name-label"><span></span><input type="text" id="class-name" autocomplete="given-name" maxlength="30"></label>
    <label class="tick"><input type="checkbox" id="class-look"><span></span></label>
    <p id="class-private"></p>
    <h3></h3>
    <div class="choices"><label><span id="class-paper-label"></span><select id="class-paper"></select></label>
    <label class="tick"><input type="checkbox" id="class-booklet" checked><span></span></label></div>
    <div class="acts"><button type="button" id="class-make"></button> <button type="button" id="class-cancel" hidden></button></div>
    <p id="class-making" role="status"></p><ul id="class-files"></ul>`;
  $("values").after(section);
  const raise = element("button");
  raise.type = "button";
  raise.id = "class-hand";
  const bar = element("div");
  bar.id = "class-bar";
  bar.innerHTML = `<p id="class-said" role="status" hidden></p>
    <div id="class-follow" hidden><span></span> <button type="button"></button></div>
    <div id="class-sent" role="status" hidden><span id="class-sent-said"></span> <button type="button" id="class-back"></button> <button type="button" id="class-keep"></button></div>`;
  document.querySelector("header").append(raise);
  document.querySelector("header").after(bar);
  raise.addEventListener("click", () => post({ is: "hand", up: !hand }));
  $("class-name").value = remembered();
  $("class-name").addEventListener("change", () => {
    try {
      sessionStorage.setItem(named, $("class-name").value);
    } catch {
      // a browser that keeps nothing
    }
    post({ is: "name", name: $("class-name").value.slice(0, 100) });
  });
  $("class-look").addEventListener("change", allow);
  $("class-make").addEventListener("click", make);
  $("class-cancel").addEventListener("click", () => post({ is: "cancel" }));
  $("class-back").addEventListener("click", () => {
    if (taken) give({ ...taken, whole: true });
    settled();
  });
  $("class-keep").addEventListener("click", settled);
  $("class-follow").querySelector("button").addEventListener("click", () => {
    following.along = !following.along;
    if (following.along && following.step) whenOpen(() => give({ step: following.step }));
    speak();
  });
  new MutationObserver(speak).observe(root, { attributes: true, attributeFilter: ["lang"] });
  const small = document.querySelector("#opening small");
  if (small && engine === "room") small.remove();
}

// What is taken back stands, whatever the room remembers after a broken line; what is allowed is said again only where
// it could not be said: another page of the same student may have taken it back since.
function allow() {
  const yes = $("class-look").checked;
  look = post({ is: "may_look", yes }) && yes ? null : yes;
}

function make() {
  if (!last) return;
  const message = { is: "make", setting: setting(), paper: $("class-paper").value, booklet: $("class-booklet").checked };
  if (JSON.stringify(message).length > MOST || !post(message)) return;
  job = { state: "begun" };
  speak();
}

function under() {
  return Boolean(job) && (["begun", "waiting", "doing"].includes(job.state) || (job.state === "made" && job.more));
}

function doing() {
  if (!job) return made ? fill(words.print_done, made) : "";
  if (job.state === "waiting") return fill(words.queue, { place: job.place });
  if (job.state === "doing") return words[job.doing] || "";
  if (job.state === "refused") return words[`refused_${job.why}`];
  if (job.state === "cancelled") return words.print_cancelled;
  if (job.state === "failed") return `${job.why ? fill(words.print_failed, { why: job.why }) : words.print_lost} ${made ? words.print_kept : ""}`;
  if (job.state === "made") return `${fill(words.print_done, made)} ${job.more ? words.booklet_follows : ""}`;
  return "…";
}

function speak() {
  words = all[root.lang] || Object.values(all)[0] || {};
  if (!$("class")) return;
  const section = $("class");
  section.querySelector("h2").textContent = words.class;
  section.querySelector("h3").textContent = words.print;
  $("class-name-label").querySelector("span").textContent = words.name;
  $("class-look").nextElementSibling.textContent = words.may_look;
  $("class-private").textContent = engine === "own" ? words.private_own : words.private_room;
  $("private").hidden = true;
  $("class-hand").textContent = hand ? words.hand_down : words.hand_up;
  $("class-hand").setAttribute("aria-pressed", String(hand));
  $("class-paper-label").textContent = words.paper;
  const paper = $("class-paper").value || (last?.units === "inch" ? "letter" : "a4");
  $("class-paper").replaceChildren(...(words.papers || []).map(([name, text]) => new Option(text, name)));
  $("class-paper").value = paper;
  $("class-booklet").nextElementSibling.textContent = words.booklet_too;
  $("class-make").textContent = words.print_mine;
  $("class-make").title = words.print_tooltip || "";
  $("class-cancel").textContent = words.cancel;
  $("class-make").disabled = under();
  $("class-cancel").hidden = !under();
  $("class-making").textContent = doing();
  const files = made ? made.files : [];
  $("class-files").replaceChildren(
    ...files.map((name) => {
      const link = element("a", label(name));
      link.href = `mine/${name}?v=${encodeURIComponent(`${made.who} ${made.when}`)}`;
      link.download = name;
      const item = element("li");
      item.append(link);
      return item;
    }),
  );
  if (made?.unsound) $("class-making").append(` ${words.print_unsound}`);
  $("class-follow").hidden = !following.on;
  $("class-follow").querySelector("span").textContent = following.along ? words.follow_on : words.follow_off;
  $("class-follow").querySelector("button").textContent = following.along ? words.let_go : words.go_along;
  $("class-back").textContent = words.take_back;
  $("class-keep").textContent = words.keep;
}

function label(name) {
  if (name === "booklet.pdf") return words.file_booklet;
  const short = name.replace(/\.pdf$/, "").split("-").slice(1).join("-");
  const found = (words.papers || []).find(([paper]) => paper === short);
  return found ? fill(words.file_pages, { paper: found[1] }) : name;
}

async function start() {
  root.dataset.engine = engine;
  build();
  const found = await fetch("room/words.json");
  all = await found.json();
  speak();
  connect();
}

start().catch((error) => console.error(error));
