// The canvas: draws the items of `scene` with the numbers of `answer`, and lets them be dragged.
//
// One row of numbers (mm, y up) places everything. While a handle is dragged the row is moved at once by a multiple of
// its slope: the difference of the last two answers, or the slopes the kernel found at rest. The kernel is asked for
// one value at a time; its answer replaces the row. Numbers people read come from answers alone, dim while one is due.

const SVG = "http://www.w3.org/2000/svg";
const CLICK = 5; // px a pointer may wander and still have clicked
const SILENCE = 6000; // ms without an answer before it is said
const REST = 500; // ms after the last key of a row of them

function make(name, attributes = {}, parent = null) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (parent) parent.append(made);
  return made;
}

function html(name, attributes = {}, parent = null, text = "") {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  if (parent) parent.append(made);
  return made;
}

function floats(view) {
  if (!view || !view.byteLength) return new Float32Array(0);
  return new Float32Array(view.buffer.slice(view.byteOffset, view.byteOffset + view.byteLength));
}

const two = (number) => Math.round(number * 100) / 100;

/** How many numbers of the row an item takes. */
const taken = (kind, segments) => (kind === "path" ? 2 + 6 * segments : kind === "dim" || kind === "handle" ? 4 : 2);

/** How the row of numbers moves between answers. */
class Rows {
  constructor() {
    this.now = null; // the last answer: {scene, shape, numbers, values}
    this.before = null;
    this.kinds = [];
    this.found = { scene: "", shape: [], names: [], rows: new Float32Array(0) };
  }

  take(answer) {
    const { scene, shape, values } = answer;
    const next = { scene, shape, numbers: floats(answer.numbers), values };
    if (this.now && this.differ(this.now, next)) this.before = this.now;
    if (this.before && this.before.scene !== scene) this.before = null;
    this.now = next;
  }

  differ(one, other) {
    return Object.keys(other.values).some((name) => one.values[name]?.value !== other.values[name].value);
  }

  value(name) {
    return this.now.values[name].value;
  }

  /** A row of another shape laid out as the last answer's: what has other segments there is taken from `rest`. */
  aligned(row, shape, rest) {
    const wanted = this.now.shape;
    if (shape.length === wanted.length && shape.every((n, i) => n === wanted[i])) return row;
    const out = rest.slice();
    let [from, to] = [0, 0];
    this.kinds.forEach((kind, i) => {
      const long = taken(kind, shape[i]);
      if (shape[i] === wanted[i]) out.set(row.subarray(from, from + long), to);
      from += long;
      to += taken(kind, wanted[i]);
    });
    return out;
  }

  /** The change of every number for each mm (or whole share) of `name`; null when nothing is known. */
  slope(name) {
    const { now, before, found } = this;
    if (before) {
      const others = Object.keys(now.values).some(
        (other) => other !== name && before.values[other]?.value !== now.values[other].value,
      );
      const by = now.values[name].value - before.values[name].value;
      if (!others && Math.abs(by) > now.values[name].step / 2) {
        const then = this.aligned(before.numbers, before.shape, now.numbers);
        return now.numbers.map((number, i) => (number - then[i]) / by);
      }
    }
    const at = found.scene === now.scene ? found.names.indexOf(name) : -1;
    if (at < 0) return null;
    const long = found.rows.length / found.names.length;
    return this.aligned(found.rows.subarray(at * long, (at + 1) * long), found.shape, new Float32Array(now.numbers.length));
  }

  /** The row as it will be, as near as is known, when `name` is `value`. */
  guess(name, value) {
    const by = value - this.value(name);
    if (!by) return this.now.numbers;
    const slope = this.slope(name);
    return slope ? this.now.numbers.map((number, i) => number + slope[i] * by) : this.now.numbers;
  }
}

class Canvas {
  constructor(model, el) {
    this.model = model;
    this.words = model.get("words");
    this.ink = model.get("ink");
    this.rows = new Rows();
    this.view = { k: 1, x: 0, y: 0 };
    this.size = { wide: 0, high: 0 };
    this.pointers = new Map();
    this.want = null; // {name, value, last}: what the reader asks for
    this.asked = null; // {turn, name, value, last}: what the kernel is working out
    this.turn = Date.now() % 1e9;
    this.items = [];
    this.build(el);
    this.hear();
    this.restage();
  }

  // ---- parts ------------------------------------------------------------------------------------------------

  build(el) {
    const words = this.words;
    this.root = html("div", { class: "lessonkit-canvas", role: "group", "aria-label": words.title }, el);
    this.root.dataset.lmSuppressShortcuts = "true"; // the notebook's own keys would move cells
    const bar = html("div", { class: "lessonkit-canvas-bar" }, this.root);
    this.bar = bar;
    const label = html("label", {}, bar, words.show + " ");
    this.steps = html("select", {}, label);
    this.steps.addEventListener("change", () => this.set("step", this.steps.value));
    const button = (name, sign, act) => {
      const made = html("button", { type: "button", title: words[name], "aria-label": words[name] }, bar, sign);
      made.dataset.act = name;
      made.addEventListener("click", act);
      return made;
    };
    button("farther", "−", () => this.zoom(1 / 1.25));
    button("nearer", "+", () => this.zoom(1.25));
    button("fit", words.fit, () => this.fit());
    this.undo = button("undo", "↶ " + words.undo, () => this.history("undo"));
    this.redo = button("redo", "↷ " + words.redo, () => this.history("redo"));
    const boxes = html("fieldset", { class: "lessonkit-canvas-layers" }, this.root);
    html("legend", {}, boxes, words.layers);
    this.layers = {};
    for (const name of ["stitch", "cut", "dims", "ghost", "block", "body", "grid"]) {
      const label = html("label", {}, boxes);
      const box = html("input", { type: "checkbox" }, label);
      box.dataset.layer = name;
      label.append(" " + words["layer_" + name]);
      box.addEventListener("change", () => this.switched());
      this.layers[name] = box;
    }
    this.stage = make("svg", { class: "lessonkit-canvas-stage", tabindex: 0, role: "group" }, this.root);
    this.stage.setAttribute("aria-label", words.title + ". " + words.help);
    this.stage.style.background = this.ink.paper;
    this.stage.style.fontFamily = this.ink.font;
    this.grid = make("g", {}, this.stage);
    this.world = make("g", {}, this.stage);
    this.over = make("g", {}, this.stage);
    this.info = html("div", { class: "lessonkit-canvas-info" }, this.root, words.help);
    this.alert = html("div", { class: "lessonkit-canvas-message", role: "alert" }, this.root);
    this.live = html("div", { class: "lessonkit-canvas-live", role: "status", "aria-live": "polite" }, this.root);
    this.menu = new DrawMenu(this);
  }

  hear() {
    const { model, stage } = this;
    this.listening = {
      "change:answer": () => this.answered(),
      "change:slopes": () => this.sloped(),
      "change:steps": () => this.fillSteps(),
      "change:step": () => this.fillSteps(),
      "change:layers": () => this.showLayers(),
      "change:selected": () => {
        this.showSelected();
        this.menu.picked();
      },
      "change:draft": () => this.menu.answered(),
    };
    for (const [event, act] of Object.entries(this.listening)) model.on(event, act);
    stage.addEventListener("pointerdown", (event) => this.down(event));
    stage.addEventListener("pointermove", (event) => this.moved(event));
    stage.addEventListener("pointerup", (event) => this.up(event));
    stage.addEventListener("pointercancel", (event) => this.up(event));
    stage.addEventListener("pointerover", (event) => this.tell(event.target));
    stage.addEventListener("pointerleave", () => this.tell(null));
    stage.addEventListener("focusin", (event) => this.tell(event.target));
    stage.addEventListener("focusout", () => this.rested());
    stage.addEventListener("wheel", (event) => this.wheel(event), { passive: false });
    this.root.addEventListener("keydown", (event) => this.key(event));
    this.watch = new ResizeObserver(() => this.resized());
    this.watch.observe(stage);
  }

  close() {
    this.watch.disconnect();
    for (const [event, act] of Object.entries(this.listening)) this.model.off(event, act);
  }

  set(name, value) {
    this.model.set(name, value);
    this.model.save_changes();
  }

  restage() {
    this.fillSteps();
    this.showLayers();
    this.sloped();
    if (this.model.get("answer").scene) this.answered();
  }

  fillSteps() {
    const now = this.model.get("step");
    this.steps.replaceChildren();
    for (const [key, title] of this.model.get("steps")) html("option", { value: key }, this.steps, title);
    this.steps.value = now;
  }

  showLayers() {
    const on = new Set(this.model.get("layers"));
    for (const [name, box] of Object.entries(this.layers)) box.checked = on.has(name);
    this.drawGrid();
  }

  switched() {
    this.set("layers", Object.keys(this.layers).filter((name) => this.layers[name].checked));
    this.drawGrid();
  }

  sloped() {
    const { scene, shape, names, rows } = this.model.get("slopes");
    if (scene) this.rows.found = { scene, shape, names, rows: floats(rows) };
    this.showRest();
  }

  // ---- the scene --------------------------------------------------------------------------------------------

  /** Make the elements of a scene anew; what had the focus has it again. */
  furnish(scene) {
    const held = this.root.getRootNode().activeElement?.dataset?.key;
    this.furnishing = true; // taking the focused element away is not the reader leaving it
    this.world.replaceChildren();
    this.over.replaceChildren();
    this.items = scene.items.map((item) => this.element(item));
    this.showSelected();
    if (held) this.stage.querySelector(`[data-key="${CSS.escape(held)}"]`)?.focus({ preventScroll: true });
    this.rows.kinds = scene.items.map((item) => item.k);
    this.furnishing = false;
    this.furnished = scene.id;
    const shown = scene.step + "|" + scene.pieces.map(([name]) => name).join();
    const refit = shown !== this.shown;
    this.shown = shown;
    return refit;
  }

  inked(element, role, dim = 1) {
    const [colour, width, dash] = this.ink.lines[role] ?? this.ink.lines.edge;
    element.setAttribute("stroke", colour);
    element.setAttribute("stroke-width", width);
    if (dash.length) element.setAttribute("stroke-dasharray", dash.join(" "));
    if (dim < 1) element.setAttribute("opacity", dim);
  }

  lettered(parent, role, text) {
    const [colour, size, bold, italic] = this.ink.texts[role];
    const made = make("text", { class: "lessonkit-canvas-text", fill: colour, "font-size": size }, parent);
    if (bold) made.setAttribute("font-weight", "bold");
    if (italic) made.setAttribute("font-style", "italic");
    made.textContent = text;
    return made;
  }

  choosable(element, kind, piece, name, label) {
    element.dataset.key = `${kind}:${piece}.${name}`;
    element.dataset.kind = kind;
    element.dataset.piece = piece;
    element.dataset.own = name;
    for (const [key, value] of Object.entries({ tabindex: 0, role: "button", "aria-pressed": "false" })) {
      element.setAttribute(key, value);
    }
    element.setAttribute("aria-label", label);
  }

  element(item) {
    const made = { ...item, drawn: null };
    if (item.k === "path") {
      made.line = make("path", { class: "lessonkit-canvas-line" }, this.world);
      this.inked(made.line, item.role, item.layer === "block" || item.layer === "body" ? 0.75 : 1);
      made.line.dataset.layer = item.layer;
      if (item.edge) {
        made.line.dataset.name = item.edge;
        made.hit = make("path", { class: "lessonkit-canvas-hit" }, this.world);
        this.choosable(made.hit, "edge", item.piece, item.name, item.edge);
        made.hit.dataset.edge = item.edge;
      }
    } else if (item.k === "text") {
      made.text = this.lettered(this.over, item.role, item.text);
      made.text.dataset.layer = item.layer;
      if (item.piece) this.choosable(made.text, "piece", item.piece, item.piece, item.text);
    } else if (item.k === "dot") {
      made.dot = make("circle", { class: "lessonkit-canvas-dot", r: item.role === "new" ? 4 : 3 }, this.over);
      made.dot.setAttribute("fill", this.ink.lines[item.role][0]);
      this.choosable(made.dot, "point", item.piece, item.name, item.says);
      made.dot.dataset.says = item.says;
    } else if (item.k === "dim") {
      made.rule = make("path", { class: "lessonkit-canvas-line" }, this.over);
      this.inked(made.rule, "measure");
      made.text = this.lettered(this.over, "measure", "");
      made.text.classList.add("lessonkit-canvas-number");
      item = item.text;
      made.index = item;
    } else if (item.k === "handle") {
      made.grip = make("g", { class: "lessonkit-canvas-handle", tabindex: 0, role: "slider" }, this.over);
      made.grip.dataset.key = "handle:" + item.name;
      made.grip.dataset.handle = item.name;
      make("circle", { class: "lessonkit-canvas-reach", r: 15 }, made.grip);
      made.leader = make("path", { fill: "none", stroke: this.ink.accent, "stroke-width": 1, "stroke-dasharray": "2 2" }, made.grip);
      const arrow = "M-10 -4.5L-16 0L-10 4.5M10 -4.5L16 0L10 4.5";
      make("path", { d: arrow, fill: "none", stroke: this.ink.accent, "stroke-width": 2.2 }, made.grip);
      make("circle", { r: 6.5, fill: this.ink.paper, stroke: this.ink.accent, "stroke-width": 2.4 }, made.grip);
    }
    return made;
  }

  // ---- answers ----------------------------------------------------------------------------------------------

  answered() {
    const answer = this.model.get("answer");
    const scene = this.model.get("scene");
    this.mark(answer);
    if (!answer.scene || answer.scene !== scene.id) return;
    this.rows.take(answer);
    const places = JSON.stringify(answer.places);
    const laid = places !== this.laid && this.fitted !== false && !this.grip;
    this.laid = places;
    const changed = scene.id !== this.furnished;
    const refit = (changed && this.furnish(scene)) || laid;
    let at = 0;
    this.items.forEach((item, i) => {
      [item.at, item.n] = [at, answer.shape[i]];
      at += taken(item.k, item.n);
    });
    this.texts(answer);
    if (this.asked && answer.turn >= this.asked.turn) {
      const { name, value } = this.asked;
      this.asked = null;
      clearTimeout(this.silence);
      if (answer.message && this.want) {
        // What cannot be drafted snaps back; further in that direction is not asked for while the handle is held.
        this.refused = { name, side: Math.sign(value - this.rows.value(name)), value };
        if (this.grip) this.want.value = this.rows.value(name);
        else this.want = null;
      }
    }
    if (refit || (changed && this.fitted && !this.grip && this.outgrown())) this.fit();
    this.ask();
    if (this.want && !this.grip && !this.asked) this.want = null;
    this.paint();
  }

  mark(answer) {
    this.alert.textContent = answer.message ?? "";
    this.stage.classList.toggle("lessonkit-canvas-stale", !!answer.stale);
    this.undo.disabled = !answer.undo;
    this.redo.disabled = !answer.redo;
    this.showRest();
  }

  texts(answer) {
    for (const item of this.items) {
      if (item.hit) item.hit.setAttribute("aria-label", answer.edges[item.edge] ?? item.edge);
      if (item.k === "dim") item.text.textContent = answer.dims[item.index];
      if (item.grip) {
        const value = answer.values[item.name];
        const { grip } = item;
        grip.setAttribute("aria-label", value.label);
        grip.setAttribute("aria-valuemin", value.least);
        grip.setAttribute("aria-valuemax", value.most);
        grip.setAttribute("aria-valuenow", value.value);
        grip.setAttribute("aria-valuetext", value.text);
      }
    }
    const moved = this.asked?.name;
    if (moved) this.live.textContent = `${answer.values[moved].label}: ${answer.values[moved].text}`;
    if (this.units !== answer.units) {
      this.units = answer.units;
      this.drawGrid();
    }
    this.retell();
  }

  /** Ask the kernel for what is wanted, when it is free and does not know it yet. */
  ask() {
    const { want } = this;
    if (!want || (this.asked && !this.mute)) return;
    const known = this.rows.value(want.name) === want.value;
    if (known && !(want.last && want.open)) return;
    this.turn += 1;
    this.asked = { ...want, turn: this.turn };
    want.open = !want.last;
    this.model.send({ do: "move", name: want.name, value: want.value, turn: this.turn, last: want.last });
    clearTimeout(this.silence);
    this.mute = false;
    this.silence = setTimeout(() => {
      this.mute = true; // an answer that comes late is welcome, and so is another wish
      this.alert.textContent = this.words.silent;
    }, SILENCE);
  }

  /** Want a value: painted at once as near as is known, asked for when the kernel is free. */
  wish(name, value, last) {
    const open = this.want?.name === name && this.want.open;
    this.want = { name, value: this.stepped(name, value), last, open };
    this.ask();
    this.paint();
  }

  stepped(name, value) {
    const { step, least, most } = this.rows.now.values[name];
    const ended = Math.min(Math.max(Math.round(value / step) * step, least), most);
    const { refused } = this;
    const beyond = refused?.name === name && (ended - refused.value) * refused.side >= 0;
    return beyond ? this.rows.value(name) : Math.abs(ended - this.rows.value(name)) < step / 1e4 ? this.rows.value(name) : ended;
  }

  history(act) {
    this.want = null;
    this.refused = null;
    this.root.dataset.rest = false;
    this.model.send({ do: act });
  }

  // ---- painting ---------------------------------------------------------------------------------------------

  /** Says for all to see whether the kernel has answered everything and found the handles of what is drawn. */
  showRest() {
    const { asked, want, resting } = this;
    const found = this.model.get("slopes").draft === this.model.get("answer").draft;
    this.root.dataset.rest = found && !asked && !want && !resting;
  }

  paint() {
    this.showRest();
    if (!this.rows.now || !this.size.wide || this.rows.now.scene !== this.furnished) return;
    const { want } = this;
    const waiting = !!want && want.value !== this.rows.value(want.name);
    this.numbers = waiting ? this.rows.guess(want.name, want.value) : this.rows.now.numbers;
    this.root.classList.toggle("lessonkit-canvas-waiting", waiting);
    this.root.dataset.waiting = waiting;
    this.root.dataset.turn = this.model.get("answer").turn;
    for (const item of this.items) this.place(item);
    this.spread();
    this.measure();
  }

  /** Screen place of a point of the row. */
  at(i) {
    const { k, x, y } = this.view;
    return [this.numbers[i] * k + x, -this.numbers[i + 1] * k + y];
  }

  place(item) {
    const row = this.numbers;
    if (item.k === "path") {
      const end = item.at + 2 + item.n * 6;
      const part = row.subarray(item.at, end);
      if (item.drawn?.length === part.length && item.drawn.every((number, i) => number === part[i])) return;
      item.drawn = part.slice();
      let d = `M${two(part[0])} ${two(-part[1])}`;
      for (let i = 2; i < part.length; i += 6) {
        d += `C${two(part[i])} ${two(-part[i + 1])} ${two(part[i + 2])} ${two(-part[i + 3])}`;
        d += ` ${two(part[i + 4])} ${two(-part[i + 5])}`;
      }
      item.line.setAttribute("d", d);
      item.hit?.setAttribute("d", d);
      return;
    }
    const [x, y] = this.at(item.at);
    if (item.k === "text") {
      item.text.setAttribute("transform", `translate(${two(x)} ${two(y - (item.above ? 8 : 0))})`);
    } else if (item.k === "dot") {
      item.dot.setAttribute("cx", two(x));
      item.dot.setAttribute("cy", two(y));
    } else if (item.k === "handle") {
      const [tx, ty] = this.at(item.at + 2);
      item.spot = [x, y];
      item.turned = (Math.atan2(ty - y, tx - x) * 180) / Math.PI;
    }
  }

  /** Handles that fall on one another on the screen move apart along their own direction. */
  spread() {
    const laid = [];
    for (const item of this.items) {
      if (!item.grip) continue;
      const way = (item.turned * Math.PI) / 180;
      let [x, y] = item.spot;
      for (let tries = 0; tries < 4 && laid.some(([a, b]) => Math.hypot(a - x, b - y) < 22); tries++) {
        x += Math.cos(way) * 24;
        y += Math.sin(way) * 24;
      }
      laid.push([x, y]);
      item.laid = [x, y];
      const off = Math.hypot(x - item.spot[0], y - item.spot[1]);
      item.leader.setAttribute("d", off > 1 ? `M0 0H${two(-off)}` : "");
      item.grip.setAttribute("transform", `translate(${two(x)} ${two(y)}) rotate(${two(item.turned)})`);
    }
  }

  /** Dimensions: those as long as their text carry it along their line; the others have it level beside them, where
   * it covers neither another text nor a handle. */
  measure() {
    const taken = [];
    for (const item of this.items) {
      if (item.grip) taken.push([item.laid[0], item.laid[1], 13, 13]);
      if (item.k === "text") taken.push([...this.at(item.at), item.text.textContent.length * 3.4, 9]);
    }
    const short = [];
    for (const item of this.items) {
      if (item.k !== "dim") continue;
      const [x, y] = this.at(item.at);
      const [tx, ty] = this.at(item.at + 2);
      const long = Math.hypot(tx - x, ty - y) || 1;
      const [ux, uy] = [(tx - x) / long, (ty - y) / long];
      const [nx, ny] = [uy * 13 * item.side, -ux * 13 * item.side];
      const tick = (px, py) => `M${two(px + nx * 0.7)} ${two(py + ny * 0.7)}L${two(px + nx * 1.3)} ${two(py + ny * 1.3)}`;
      const rule = `M${two(x + nx)} ${two(y + ny)}L${two(tx + nx)} ${two(ty + ny)}`;
      item.rule.setAttribute("d", rule + tick(x, y) + tick(tx, ty));
      const half = item.text.textContent.length * 3.3;
      const [mx, my] = [(x + tx) / 2, (y + ty) / 2];
      if (long < half * 2) {
        short.push([item, mx, my, nx, ny, half]);
        continue;
      }
      let turned = (Math.atan2(uy, ux) * 180) / Math.PI;
      if (turned > 90.5 || turned < -89.5) turned += 180;
      const at = [mx + nx * 1.9, my + ny * 1.9];
      this.letter(item, at[0], at[1], turned);
      for (const share of [-0.75, -0.25, 0.25, 0.75]) {
        taken.push([at[0] + ux * half * share, at[1] + uy * half * share, (Math.abs(ux) * half) / 3 + 8, (Math.abs(uy) * half) / 3 + 8]);
      }
    }
    const covered = (x, y, half) => taken.some(([a, b, w, h]) => Math.abs(a - x) < w + half && Math.abs(b - y) < h + 8);
    for (const [item, mx, my, nx, ny, half] of short) {
      const places = [];
      const inside = (x) => (mx > 0 && mx < this.size.wide ? Math.min(Math.max(x, half + 6), this.size.wide - half - 6) : x);
      for (const [sx, sy] of [[nx, ny], [-nx, -ny]]) {
        const level = Math.abs(sx) > 5 ? Math.sign(sx) * (half + 5) : 0;
        for (const off of [0, -16, 16, -32, 32, -48, 48]) {
          places.push([inside(mx + sx * 1.4 + level), my + (level ? sy : sy * 2) + off]);
        }
      }
      const [px, py] = places.find(([a, b]) => !covered(a, b, half)) ?? places[0];
      this.letter(item, px, py, 0);
      taken.push([px, py, half, 8]);
    }
  }

  letter(item, x, y, turned) {
    item.text.setAttribute("transform", `translate(${two(x)} ${two(y)}) rotate(${two(turned)})`);
  }

  showView() {
    const { k, x, y } = this.view;
    this.world.setAttribute("transform", `translate(${two(x)} ${two(y)}) scale(${k})`);
    this.drawGrid();
    this.paint();
    this.menu.paint();
  }

  drawGrid() {
    this.grid.replaceChildren();
    if (!this.layers.grid.checked || !this.size.wide) return;
    const inch = this.units === "inch";
    const { k, x, y } = this.view;
    let [unit, every] = inch ? [25.4, 12] : [10, 10];
    const far = unit * k < 7;
    if (far) [unit, every] = inch ? [25.4 * 12, 3] : [100, 10];
    const lines = ["", ""];
    const { wide, high } = this.size;
    for (let i = Math.ceil(-x / k / unit); i * unit * k + x < wide; i++) {
      lines[i % every ? 0 : 1] += `M${two(i * unit * k + x)} 0V${high}`;
    }
    for (let i = Math.ceil(-y / k / unit); i * unit * k + y < high; i++) {
      lines[i % every ? 0 : 1] += `M0 ${two(i * unit * k + y)}H${wide}`;
    }
    lines.forEach((d, heavy) => {
      const line = make("path", { d, class: "lessonkit-canvas-grid", stroke: this.ink.ink }, this.grid);
      line.setAttribute("opacity", heavy ? 0.22 : 0.1);
    });
    const word = "grid_" + (inch ? "inch" : "cm") + (far ? "_far" : "");
    const text = this.lettered(this.grid, "small", this.words[word]);
    text.setAttribute("transform", `translate(8 ${high - 10})`);
    text.style.textAnchor = "start";
    text.classList.add("lessonkit-canvas-note");
  }

  // ---- looking closer ---------------------------------------------------------------------------------------

  resized() {
    const box = this.stage.getBoundingClientRect();
    if (!box.width || (box.width === this.size.wide && box.height === this.size.high)) return;
    this.size = { wide: box.width, high: box.height };
    if (this.fitted !== false) this.fit();
    else this.showView();
  }

  fit() {
    if (!this.rows.now || !this.size.wide) return;
    const row = this.rows.now.numbers;
    let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const item of this.items) {
      if (item.k !== "path") continue;
      for (let i = item.at; i < item.at + 2 + item.n * 6; i += 2) {
        [left, right] = [Math.min(left, row[i]), Math.max(right, row[i])];
        [low, high] = [Math.min(low, row[i + 1]), Math.max(high, row[i + 1])];
      }
    }
    if (left > right) return;
    const room = 44; // for handles and texts; texts lie level, so more at the sides
    const side = Math.min(2 * room, 0.16 * this.size.wide); // less of it on a telephone
    const k = Math.min((this.size.wide - 2 * side) / (right - left || 1), (this.size.high - 2 * room) / (high - low || 1));
    const [x, y] = [this.size.wide / 2 - ((left + right) / 2) * k, this.size.high / 2 + ((low + high) / 2) * k];
    this.view = { k, x, y };
    this.fitted = true;
    this.showView();
  }

  /** Whether lines of a view the reader has not moved lie off the stage, as after a step was written. */
  outgrown() {
    const row = this.rows.now.numbers;
    const { k, x, y } = this.view;
    return this.items.some((item) => {
      if (item.k !== "path") return false;
      const [px, py] = [row[item.at] * k + x, -row[item.at + 1] * k + y];
      return px < 0 || py < 0 || px > this.size.wide || py > this.size.high;
    });
  }

  zoom(by, x = this.size.wide / 2, y = this.size.high / 2) {
    const { view } = this;
    const k = Math.min(Math.max(view.k * by, 0.02), 40);
    this.view = { k, x: x - (x - view.x) * (k / view.k), y: y - (y - view.y) * (k / view.k) };
    this.fitted = false;
    this.showView();
  }

  pan(dx, dy) {
    this.view = { ...this.view, x: this.view.x + dx, y: this.view.y + dy };
    this.fitted = false;
    this.showView();
  }

  wheel(event) {
    if (!event.ctrlKey && !this.stage.contains(this.root.getRootNode().activeElement)) return;
    event.preventDefault();
    const [x, y] = this.where(event);
    this.zoom(Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0015)), x, y);
  }

  where(event) {
    const box = this.stage.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  }

  // ---- pointers ---------------------------------------------------------------------------------------------

  down(event) {
    if (event.button > 0) return;
    const place = this.where(event);
    this.pointers.set(event.pointerId, place);
    try {
      this.stage.setPointerCapture(event.pointerId);
    } catch {} // a pointer made by a script has none to capture
    const grip = event.target.closest?.("[data-handle]");
    if (this.pointers.size > 1) {
      if (this.grip) this.let(true);
      this.press = null;
    } else if (grip && this.rows.now) {
      event.preventDefault();
      grip.focus({ preventScroll: true });
      const name = grip.dataset.handle;
      const item = this.items.find((each) => each.grip === grip);
      const [x, y] = this.at(item.at);
      this.rested();
      this.refused = null;
      this.grip = { item, name, off: [place[0] - x, place[1] - y], start: this.rows.value(name), pointer: event.pointerId };
      this.root.classList.add("lessonkit-canvas-held");
    } else {
      this.press = { target: event.target, from: place, far: false, more: event.shiftKey || event.ctrlKey };
    }
  }

  moved(event) {
    const before = this.pointers.get(event.pointerId);
    if (!before) return;
    const place = this.where(event);
    this.pointers.set(event.pointerId, place);
    if (this.pointers.size === 2) {
      const [other] = [...this.pointers].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
      const was = Math.hypot(before[0] - other[0], before[1] - other[1]) || 1;
      const now = Math.hypot(place[0] - other[0], place[1] - other[1]) || 1;
      this.pan((place[0] - before[0]) / 2, (place[1] - before[1]) / 2);
      this.zoom(now / was, (place[0] + other[0]) / 2, (place[1] + other[1]) / 2);
    } else if (this.grip) {
      this.grip.to = place;
      this.frame ??= requestAnimationFrame(() => this.drag());
    } else if (this.press) {
      const { from } = this.press;
      this.press.far ||= Math.hypot(place[0] - from[0], place[1] - from[1]) > CLICK;
      if (this.press.far) this.pan(place[0] - before[0], place[1] - before[1]);
    }
  }

  /** Want the value that brings the held handle as near the pointer as its direction lets it. */
  drag(last = false) {
    this.frame = null;
    const { grip, view } = this;
    if (!grip?.to) return;
    const item = this.items.find((each) => each.grip && each.name === grip.name) ?? grip.item;
    const row = this.rows.now.numbers;
    const [x, y] = [row[item.at], row[item.at + 1]];
    const slope = this.rows.slope(grip.name);
    let [mx, my] = slope ? [slope[item.at], slope[item.at + 1]] : [0, 0];
    if (mx * mx + my * my < 1e-9) [mx, my] = [row[item.at + 2] - x, row[item.at + 3] - y];
    const px = (grip.to[0] - grip.off[0] - view.x) / view.k - x;
    const py = -(grip.to[1] - grip.off[1] - view.y) / view.k - y;
    const by = (px * mx + py * my) / (mx * mx + my * my || 1);
    this.wish(grip.name, this.rows.value(grip.name) + by, last);
  }

  up(event) {
    if (!this.pointers.delete(event.pointerId)) return;
    if (this.grip?.pointer === event.pointerId) {
      cancelAnimationFrame(this.frame);
      if (event.type === "pointercancel") this.let(true);
      else {
        if (this.grip.to) this.drag(true);
        this.let(false);
      }
    } else if (this.press && !this.press.far) {
      this.choose(this.press.target, this.press.more);
    }
    this.press = null;
  }

  /** The handle is let go; `back` puts the value back to where the drag began. */
  let(back) {
    const { grip } = this;
    this.grip = null;
    this.refused = null;
    this.frame = null;
    this.root.classList.remove("lessonkit-canvas-held");
    if (back) this.wish(grip.name, grip.start, true);
    if (this.want && this.want.value === this.rows.value(this.want.name) && !this.want.open && !this.asked) this.want = null;
    this.paint();
  }

  // ---- keys -------------------------------------------------------------------------------------------------

  key(event) {
    const target = event.target;
    if (target.matches("select, input, summary, pre") || !this.rows.now) return;
    const turned = this.turnKey(event) || this.handleKey(event, target) || this.viewKey(event, target);
    if (turned) {
      event.preventDefault();
      event.stopPropagation();
    }
  }

  turnKey(event) {
    if (!(event.ctrlKey || event.metaKey)) return false;
    const key = event.key.toLowerCase();
    if (key === "z") this.history(event.shiftKey ? "redo" : "undo");
    else if (key === "y") this.history("redo");
    else return false;
    return true;
  }

  handleKey(event, target) {
    const name = target.dataset?.handle;
    if (!name || event.ctrlKey || event.metaKey || event.altKey) return false;
    const { step, least, most } = this.rows.now.values[name];
    const ways = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 };
    const from = this.want?.name === name ? this.want.value : this.rows.value(name);
    let value;
    if (event.key in ways) value = from + ways[event.key] * step * (event.shiftKey ? 10 : 1);
    else if (event.key === "Home") value = least;
    else if (event.key === "End") value = most;
    else if (event.key === "Escape" && this.grip) return this.let(true), true;
    else return false;
    this.refused = null;
    this.wish(name, value, false);
    clearTimeout(this.resting);
    this.resting = setTimeout(() => this.rested(), REST);
    return true;
  }

  /** A row of keys has ended: the kernel may lay the pieces out anew. */
  rested() {
    if (this.furnishing) return;
    clearTimeout(this.resting);
    if (this.resting && this.rows.now) {
      const { want, asked } = this;
      const last = want ?? asked;
      this.resting = null;
      if (last && !last.last) this.wish(last.name, last.value, true);
      else if (this.live.textContent) this.model.send({ do: "rest" });
      this.showRest();
    }
  }

  viewKey(event, target) {
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    const { key } = event;
    if (key === "+" || key === "=") this.zoom(1.25);
    else if (key === "-") this.zoom(1 / 1.25);
    else if (key === "0") this.fit();
    else if ((key === "Enter" || key === " ") && target.dataset?.kind) this.choose(target, event.shiftKey);
    else if (key === "Escape" && this.model.get("selected").length) this.set("selected", []);
    else if (target === this.stage && key.startsWith("Arrow")) {
      const [dx, dy] = { ArrowUp: [0, 40], ArrowDown: [0, -40], ArrowLeft: [40, 0], ArrowRight: [-40, 0] }[key];
      this.pan(dx, dy);
    } else return false;
    return true;
  }

  // ---- reading and choosing ---------------------------------------------------------------------------------

  /** Say beneath the stage what is under the pointer or has the focus. */
  tell(target) {
    this.told = target?.closest?.("[data-edge], [data-handle], [data-says]") ?? null;
    this.retell();
  }

  retell() {
    const { told } = this;
    const answer = this.model.get("answer");
    let text = this.words.help;
    if (told?.dataset.edge) text = answer.edges[told.dataset.edge] ?? text;
    else if (told?.dataset.handle) text = answer.values[told.dataset.handle]?.says ?? text;
    else if (told?.dataset.says) text = told.dataset.says;
    const [first, ...rest] = [...text];
    text = first.toUpperCase() + rest.join("");
    if (this.info.textContent !== text) this.info.textContent = text;
  }

  choose(target, shifted) {
    const more = shifted || this.menu.open; // while drawing each click adds or takes away
    const { kind, piece, own } = target.dataset ?? {};
    const now = this.model.get("selected");
    if (!kind) {
      if (now.length && !more) this.set("selected", []);
      return;
    }
    const same = (one) => one.kind === kind && one.piece === piece && one.name === own;
    const rest = more ? now.filter((one) => !same(one)) : [];
    this.set("selected", now.some(same) && (more || now.length === 1) ? rest : [...rest, { kind, piece, name: own }]);
  }

  showSelected() {
    const keys = new Set(this.model.get("selected").map(({ kind, piece, name }) => `${kind}:${piece}.${name}`));
    for (const element of this.stage.querySelectorAll("[data-kind]")) {
      const on = keys.has(element.dataset.key);
      element.setAttribute("aria-pressed", on);
      element.classList.toggle("lessonkit-canvas-chosen", on);
    }
  }
}

export default {
  render({ model, el }) {
    const canvas = new Canvas(model, el);
    return () => canvas.close();
  },
};
