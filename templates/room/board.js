// The teacher's board: the address to join, the stage that leads the class, who is here, and drafts to talk about.
const OVER = ["#a8391b", "#0b6bcb", "#1d6b3a", "#7a3fa0", "#b07400", "#00798c", "#c2185b", "#4a5a2a"];
const [FAR, NEAR] = [500, 1.4]; // wider than this (px) it is read from the back row: letters so much larger
const PLAY = 8000; // ms that a step stands while it plays
const REST = 2000; // ms until an engine that had no time is asked again
let words = {}, facts = null, line = null, pause = 500, number = 0, asked = new Map();
let at = 0, picture = 1, pictures = 1, following = false, playing = 0, shown = [], wanted = 0;
const people = new Map();
const $ = (id) => document.getElementById(id);

function made(kind, text = "", name = "") {
  const element = document.createElement(kind);
  if (text) element.textContent = text;
  if (name) element.className = name;
  return element;
}

function button(text, then, name = "") {
  const one = made("button", text, name);
  one.type = "button";
  one.addEventListener("click", then);
  return one;
}

function fill(text, values) {
  return Object.entries(values).reduce((said, [name, value]) => said.replaceAll(`{${name}}`, value), text || "");
}

function drawn(svg) {
  const read = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  if (read.nodeName !== "svg") return null;
  for (const each of read.querySelectorAll("script, foreignObject, a")) each.remove();
  read.setAttribute("preserveAspectRatio", "xMidYMid meet");
  return document.importNode(read, true);
}

// ---- the line -----------------------------------------------------------------------------------------------------

function connect() {
  const address = new URL("board/line", location.href);
  address.protocol = location.protocol === "https:" ? "wss:" : "ws:";
  address.search = "";
  line = new WebSocket(address);
  line.onopen = () => {
    pause = 500;
    $("lost").hidden = true;
  };
  line.onmessage = (event) => heard(JSON.parse(event.data));
  line.onclose = () => {
    $("lost").hidden = false;
    setTimeout(connect, pause);
    pause = Math.min(pause * 2, 8000);
  };
}

function post(message) {
  if (line?.readyState === WebSocket.OPEN) line.send(JSON.stringify(message));
}

function ask(message, then) {
  asked.set(++number, then);
  post({ is: "ask", id: number, text: JSON.stringify({ language: facts.language, units: facts.units, ...message }) });
}

function heard(told) {
  if (told.is === "class") {
    const first = !facts;
    facts = told.facts;
    people.clear();
    told.people.forEach((row) => people.set(row.number, row));
    following = told.following;
    if (first) furnish();
    if (told.at) at = Math.max(0, facts.steps.findIndex((each) => each.kind === told.at.kind && each.key === told.at.key));
    asked.clear();
    wanted = 0;
    stage();
    roll();
  } else if (told.is === "people") {
    told.rows.forEach((row) => people.set(row.number, row));
    told.gone.forEach((each) => people.delete(each));
    roll();
  } else if (told.is === "answer") {
    const then = asked.get(told.id);
    asked.delete(told.id);
    then?.(told.text ? JSON.parse(told.text) : { ok: false, said: "", busy: told.why === "too_many" });
  } else if (told.is === "following") {
    following = told.on;
    $("follow").textContent = following ? words.unfollow : words.follow;
    $("follow").setAttribute("aria-pressed", String(following));
  } else if (told.is === "sent") $("sent").textContent = fill(words.sent, { count: told.count });
  else if (told.is === "looked") looked(told);
  else if (told.is === "over") {
    shown = [];
    $("over-said").textContent = told.count ? fill(words.over_count, { count: 0 }) : words.over_none;
    over();
  } else if (told.is === "outlines" && told.pieces.length) {
    shown.push(told.pieces);
    $("over-said").textContent = fill(words.over_count, { count: shown.length });
    over();
  }
}

// ---- the stage ----------------------------------------------------------------------------------------------------

const step = () => ({ kind: facts.steps[at].kind, key: facts.steps[at].key, picture });

function stage() {
  if (wanted) return (wanted = 2); // it is asked again when the picture before it is there
  wanted = 1;
  const box = $("picture").getBoundingClientRect();
  const far = box.width > FAR ? NEAR : 1;
  const values = chosen.name ? { [chosen.name]: chosen.value } : {};
  const asked = step();
  ask({ do: "draw", step: asked, values, room: [Math.round(box.width / far), Math.round(box.height / far)] }, (told) => {
    const more = wanted === 2;
    wanted = 0;
    if (told.ok) show(told, asked);
    else $("said").textContent = told.said;
    if (more) stage();
    else if (told.busy) setTimeout(stage, REST);
  });
}

// `asked` is what it was drawn for. Where the teacher has gone on meanwhile, the place they went to stands.
function show(told, asked) {
  const now = step();
  if (asked.key === now.key && asked.kind === now.kind && asked.picture === now.picture) {
    picture = told.step.picture;
    pictures = told.step.pictures;
  }
  $("picture").replaceChildren((told.svg && drawn(told.svg)) || made("p", words.no_picture));
  $("said").textContent = "";
  $("label").textContent = [told.label, told.part].filter(Boolean).join(" · ");
  $("title").textContent = told.title;
  $("words").replaceChildren(...told.words.map((text) => made("p", text)));
  $("steps").value = String(at);
  $("back").disabled = at === 0 && picture === 1;
  $("on").disabled = at === facts.steps.length - 1 && picture === pictures;
  document.documentElement.dataset.drawn = String(Number(document.documentElement.dataset.drawn || 0) + 1);
  const slider = told.sliders.find((each) => each.name === chosen.name);
  if (slider) {
    $("value-said").textContent = slider.shown;
    $("value").setAttribute("aria-valuetext", slider.shown);
  }
}

function go(to, first = 1) {
  if (to < 0 || to >= facts.steps.length) return stop();
  at = to;
  picture = first;
  stage();
  post({ is: "at", step: step() });
}

function walk(by) {
  if (picture + by >= 1 && picture + by <= pictures) {
    picture += by;
    stage();
    post({ is: "at", step: step() });
  } else go(at + by, by > 0 ? 1 : -1);
}

function play() {
  if (playing) return stop();
  $("play").textContent = words.pause;
  playing = setInterval(() => walk(1), PLAY);
}

function stop() {
  clearInterval(playing);
  playing = 0;
  $("play").textContent = words.play;
}

let chosen = { name: "", value: 0 };

function choose() {
  const slider = facts.sliders.find((each) => each.name === $("value-of").value);
  chosen = slider ? { name: slider.name, value: slider.value, size: slider.size } : { name: "", value: 0 };
  $("value").disabled = $("send-value").disabled = !slider;
  if (!slider) return;
  $("value").min = slider.first;
  $("value").max = slider.last;
  $("value").step = 1;
  $("value").value = slider.at;
  $("value-said").textContent = slider.shown;
}

function pulled() {
  const slider = facts.sliders.find((each) => each.name === chosen.name);
  chosen.value = Math.min(Math.max(Number($("value").value) * slider.size, slider.least), slider.most);
  stage();
}

// ---- who is here --------------------------------------------------------------------------------------------------

const called = (row) => row.name || fill(words.student, { number: row.number });
let rolling = 0;

function roll() {
  if (rolling) return;
  rolling = requestAnimationFrame(() => {
    rolling = 0;
    rows();
  });
}

function rows() {
  const all = [...people.values()].sort((a, b) => b.here - a.here || Boolean(b.hand) - Boolean(a.hand) || a.hand - b.hand || a.number - b.number);
  const focused = document.activeElement?.dataset?.key;
  $("count").textContent = fill(words.count, { count: all.filter((row) => row.here).length, number: facts.students });
  $("nobody").hidden = all.length > 0;
  $("people").querySelector("table").hidden = !all.length;
  $("rows").replaceChildren(...all.map(row));
  if (focused) document.querySelector(`[data-key="${focused}"]`)?.focus();
}

function row(told) {
  const line = made("tr", "", told.here ? "" : "away");
  line.setAttribute("role", "row"); // laid out as a grid, rows are no table's any more, and are still read as one
  const name = made("th");
  name.scope = "row";
  name.append(made("span", called(told)));
  if (!told.here) name.append(made("small", words.away));
  const hand = made("td", "", "raised");
  if (told.hand) {
    const seen = button(words.hand, () => post({ is: "lower", number: told.number }), "hand");
    seen.setAttribute("aria-label", `${called(told)}: ${words.hand_seen}`);
    seen.title = words.hand_seen;
    seen.dataset.key = `hand${told.number}`;
    hand.append(seen);
  }
  const place = made("td", told.at ? fill(words.place, { number: told.at, count: told.steps }) : "", "at");
  const step = facts.steps.find((each) => `${each.kind}:${each.key}` === told.step);
  if (step) place.append(made("small", step.title));
  if (told.here && told.engine === "room" && facts.own) place.append(made("small", words.worked_here));
  place.title = [...place.childNodes].map((each) => each.textContent).join(" "); // the list has one line for it
  const exercises = made("td", "", "exercises");
  facts.exercises.forEach((each, index) => {
    const done = told.solved.includes(each.key);
    const mark = made("span", `${done ? "✓" : "○"} ${index + 1}`, done ? "solved" : "open");
    mark.title = `${each.heading}: ${done ? words.solved : words.open}`;
    mark.setAttribute("aria-label", mark.title);
    mark.setAttribute("role", "img");
    exercises.append(mark, " ");
  });
  const found = made("td", "", "found");
  if (told.errors > 0) found.append(made("span", fill(words.found_errors, { count: told.errors }), "error"));
  else if (told.warnings > 0) found.append(made("span", fill(words.found_warnings, { count: told.warnings }), "warning"));
  else if (told.errors === 0) found.append(made("span", words.found_none, "quiet"));
  const acts = made("td", "", "acts");
  if (told.may_look && told.here) {
    const look = button(words.look, () => post({ is: "look", number: told.number }));
    look.dataset.key = `look${told.number}`;
    look.setAttribute("aria-label", `${words.look}: ${called(told)}`);
    acts.append(look);
  } else acts.append(made("small", told.here ? words.look_not : ""));
  if (!told.here) {
    const free = button(words.free, () => post({ is: "let_go", number: told.number }));
    free.dataset.key = `free${told.number}`;
    acts.append(free);
  }
  line.append(name, hand, place, exercises, found, acts);
  for (const cell of line.children) cell.setAttribute("role", cell === name ? "rowheader" : "cell");
  return line;
}

function looked(told) {
  const row = people.get(told.number);
  $("looked-name").textContent = row ? called(row) : "";
  const good = told.drawn && told.drawn.ok;
  $("looked-title").textContent = good ? [told.drawn.label, told.drawn.title].filter(Boolean).join(": ") : "";
  const picture = good && told.drawn.svg ? drawn(told.drawn.svg) : null;
  $("looked-picture").replaceChildren(picture || made("p", (told.drawn && told.drawn.said) || (good ? words.no_picture : words.looked_none)));
  const moved = good ? told.drawn.sliders.filter((each) => Math.abs(each.value - each.own) > 1e-6) : [];
  $("looked-values").replaceChildren(...moved.map((each) => made("li", `${each.label}: ${each.shown}`)));
  if (!$("looked").open) $("looked").showModal();
}

// ---- all over one another -----------------------------------------------------------------------------------------

const SVG = "http://www.w3.org/2000/svg";

function over() {
  const names = [...new Map(shown.flat().map((piece) => [piece.name, piece.title])).entries()];
  $("drafts").replaceChildren(
    ...names.map(([name, title]) => {
      const lines = shown.map((pieces) => pieces.find((piece) => piece.name === name)).filter(Boolean);
      const xs = lines.flatMap((piece) => piece.points.map(([x]) => x));
      const ys = lines.flatMap((piece) => piece.points.map(([, y]) => -y));
      const [left, top] = [Math.min(...xs), Math.min(...ys)];
      const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
      const edge = 0.03 * Math.max(wide, high);
      const svg = document.createElementNS(SVG, "svg");
      svg.setAttribute("viewBox", `${left - edge} ${top - edge} ${wide + 2 * edge} ${high + 2 * edge}`);
      svg.setAttribute("role", "img");
      svg.setAttribute("aria-label", `${title}: ${fill(words.over_count, { count: lines.length })}`);
      lines.forEach((piece, index) => {
        const path = document.createElementNS(SVG, "path");
        path.setAttribute("d", `M${piece.points.map(([x, y]) => `${x} ${-y}`).join("L")}Z`);
        path.setAttribute("stroke", OVER[index % OVER.length]);
        if (index >= OVER.length) path.setAttribute("stroke-dasharray", "6 4");
        svg.append(path);
      });
      const box = made("figure");
      box.append(svg, made("figcaption", title));
      return box;
    }),
  );
}

// ---- what stands on it --------------------------------------------------------------------------------------------

function part(id, heading, ...inside) {
  const section = made("section", "", "part");
  section.id = id;
  const head = made("h2", heading);
  head.id = `${id}-head`;
  section.setAttribute("aria-labelledby", head.id);
  section.append(head, ...inside);
  return section;
}

function held(kind, id, name = "") {
  const element = made(kind, "", name);
  element.id = id;
  return element;
}

function titled(text, input) {
  const label = made("label");
  label.append(made("span", text), input);
  return label;
}

function address() {
  const image = () => {
    const code = made("img");
    code.src = "board-files/qr.svg";
    code.alt = words.join;
    return code;
  };
  const told = () => {
    const box = made("div", "", "told");
    box.append(made("p", facts.address, "place"));
    if (facts.code) box.append(made("p", words.code), made("p", facts.code, "code"));
    return box;
  };
  const large = held("dialog", "large");
  large.append(image(), told(), button(words.close, () => large.close()));
  document.body.append(large);
  const section = part("join", words.join, image(), told(), button(words.large, () => large.showModal()));
  return section;
}

function lead() {
  const nav = made("div", "", "walk");
  const steps = held("select", "steps");
  steps.setAttribute("aria-label", words.step);
  steps.append(...facts.steps.map((each, index) => new Option(`${index + 1}. ${each.title}`, String(index))));
  steps.addEventListener("change", () => go(Number(steps.value)));
  const back = button(words.back, () => walk(-1));
  const on = button(words.on, () => walk(1));
  const starts = button(words.play, play);
  back.id = "back";
  on.id = "on";
  starts.id = "play";
  nav.append(back, steps, on, starts);
  const send = made("div", "", "send");
  const follow = button(following ? words.unfollow : words.follow, () => {
    post({ is: "at", step: step() });
    post({ is: "follow", on: !following });
  }, "main");
  follow.id = "follow";
  follow.setAttribute("aria-pressed", String(following));
  send.append(follow, button(words.send_step, () => post({ is: "send", step: step(), values: {} })));
  const value = made("div", "", "send");
  const which = held("select", "value-of");
  which.append(new Option("–", ""), ...facts.sliders.map((each) => new Option(each.label, each.name)));
  which.addEventListener("change", () => {
    choose();
    stage();
  });
  const range = held("input", "value");
  range.type = "range";
  range.disabled = true;
  range.setAttribute("aria-label", words.value);
  range.addEventListener("input", pulled);
  const sends = button(words.send_value, () => post({ is: "send", step: null, values: { [chosen.name]: chosen.value } }));
  sends.id = "send-value";
  sends.disabled = true;
  value.append(titled(words.value, which), range, held("output", "value-said"), sends);
  value.hidden = !facts.sliders.length;
  const preset = made("div", "", "send");
  const offered = held("select", "preset");
  offered.append(...facts.presets.map((each) => new Option(each.title, each.title)));
  const open = new Set(facts.sliders.map((each) => each.name));
  preset.append(
    titled(words.preset, offered),
    button(words.send_preset, () => {
      const found = facts.presets.find((each) => each.title === offered.value);
      const values = Object.fromEntries(Object.entries(found.values).filter(([name]) => open.has(name)));
      post({ is: "send", step: null, values, title: found.title });
    }),
  );
  preset.hidden = !facts.presets.length;
  const sent = held("p", "sent");
  const said = held("p", "said");
  sent.setAttribute("role", "status");
  said.setAttribute("role", "status");
  const sight = held("div", "picture");
  sight.tabIndex = 0;
  sight.setAttribute("role", "group");
  sight.setAttribute("aria-label", words.stage);
  return part("stage", words.stage, sight, nav, held("p", "label"), held("h3", "title"), held("div", "words"), said, send, value, preset, sent);
}

function furnish() {
  const heads = [words.name || "", "", words.step, words.exercises, words.found, ""];
  const table = made("table");
  table.setAttribute("role", "table");
  const top = made("tr");
  top.setAttribute("role", "row");
  heads.forEach((text) => {
    const cell = made(text ? "th" : "td", text);
    if (text) cell.scope = "col";
    cell.setAttribute("role", text ? "columnheader" : "cell");
    top.append(cell);
  });
  const [head, rows] = [made("thead"), held("tbody", "rows")];
  head.append(top);
  for (const each of [head, rows]) each.setAttribute("role", "rowgroup");
  table.append(head, rows);
  const scrolls = made("div", "", "scrolls");
  scrolls.tabIndex = 0;
  scrolls.setAttribute("role", "group");
  scrolls.setAttribute("aria-label", words.people);
  scrolls.append(table);
  const nobody = made("p", words.nobody, "quiet");
  nobody.id = "nobody";
  const class_ = part("people", words.people, held("p", "count"), nobody, scrolls);
  const said = held("p", "over-said");
  said.setAttribute("role", "status");
  const all = part("over", words.over, button(words.over, () => post({ is: "over" })), said, held("div", "drafts"));
  const dialog = held("dialog", "looked");
  dialog.append(held("h2", "looked-name"), held("p", "looked-title"), held("div", "looked-picture"), held("ul", "looked-values"), button(words.close, () => dialog.close()));
  document.body.append(dialog);
  const left = made("div", "", "left");
  const right = made("div", "", "right");
  left.append(lead());
  right.append(address(), class_, all);
  document.querySelector("main").replaceChildren(left, right);
  choose();
  document.addEventListener("keydown", (event) => {
    if (event.target.closest("input, select, textarea, dialog, button") || event.altKey || event.ctrlKey || event.metaKey) return;
    if (["ArrowRight", "PageDown"].includes(event.key)) walk(1);
    else if (["ArrowLeft", "PageUp"].includes(event.key)) walk(-1);
    else return;
    event.preventDefault();
  });
  let wide;
  new ResizeObserver(() => {
    clearTimeout(wide);
    wide = setTimeout(stage, 250);
  }).observe($("picture"));
}

async function start() {
  const found = await fetch("board-files/words.json");
  words = await found.json();
  const lost = held("p", "lost");
  lost.textContent = words.lost;
  lost.hidden = true;
  lost.setAttribute("role", "status");
  document.querySelector("h1").after(lost);
  connect();
}

start().catch((error) => console.error(error));
