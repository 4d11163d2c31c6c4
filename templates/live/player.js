// The player: makes each picture before people's eyes, keeps the words beside it, and runs the clock of a film.
//
// A picture comes as SVG in which everything new knows its turn, as shares of the whole. Lines grow along their length:
// a solid one by its dashes, a dashed one behind a mask that grows; the rest fades in. Pictures are kept by version,
// place and ground, and the next one is asked for before it is wanted.

const SVG = "http://www.w3.org/2000/svg";
const HOLD = 1.6; // s a finished picture stands before the next one, while playing
const QUIET = 2500; // ms without a pointer after which a full window hides its buttons
const SILENCE = 8000; // ms without an answer before it is said
const NOTED = 2; // s on show after which a step is noted
const SPEEDS = [0.5, 0.75, 1, 1.5, 2, 3];

let masks = 0;

function html(name, attributes = {}, parent = null, text = "") {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  if (parent) parent.append(made);
  return made;
}

function clock(seconds) {
  const whole = Math.floor(seconds);
  const two = (number) => String(number).padStart(2, "0");
  const hours = Math.floor(whole / 3600);
  const short = `${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
  return hours ? `${hours}:${short}` : short;
}

/** A line of the picture in the making. */
class Line {
  constructor(path, box) {
    this.path = path;
    this.long = path.getTotalLength();
    this.ink = path;
    if (path.closest("[stroke-dasharray]")) {
      const mask = document.createElementNS(SVG, "mask");
      mask.id = `lessonkit-player-mask-${(masks += 1)}`;
      const room = { x: box.x, y: box.y, width: box.width, height: box.height, maskUnits: "userSpaceOnUse" };
      for (const [key, value] of Object.entries(room)) mask.setAttribute(key, value);
      this.ink = document.createElementNS(SVG, "path");
      const wide = parseFloat(path.closest("[stroke-width]")?.getAttribute("stroke-width") ?? "1");
      const grown = { d: path.getAttribute("d"), fill: "none", stroke: "#fff", "stroke-width": wide * 2 };
      for (const [key, value] of Object.entries(grown)) this.ink.setAttribute(key, value);
      mask.append(this.ink);
      path.ownerSVGElement.append(mask);
      this.mask = `url(#${mask.id})`;
    }
  }

  show(share) {
    const { ink, long } = this;
    const whole = share >= 1;
    ink.style.strokeDasharray = whole ? "" : `${long} ${long + 1}`;
    ink.style.strokeDashoffset = whole ? "" : long * (1 - share);
    if (!this.mask) return;
    if (whole) this.path.removeAttribute("mask");
    else this.path.setAttribute("mask", this.mask);
  }
}

/** One item with its turn. */
class Part {
  constructor(group, box) {
    this.group = group;
    this.from = Number(group.dataset.from);
    this.to = Number(group.dataset.to);
    this.lines = [];
    this.heads = [];
    if (group.dataset.kind !== "line") return;
    for (const path of group.querySelectorAll("path")) {
      const fill = path.getAttribute("fill") ?? path.parentNode.getAttribute("fill");
      if (fill === "none") this.lines.push(new Line(path, box));
      else this.heads.push(path);
    }
  }

  show(share) {
    const done = share >= this.to ? 1 : share <= this.from ? 0 : (share - this.from) / (this.to - this.from);
    if (done === this.done) return;
    this.done = done;
    this.group.style.visibility = done > 0 ? "" : "hidden";
    if (this.group.dataset.kind !== "line") this.group.style.opacity = done < 1 ? done : "";
    for (const line of this.lines) line.show(done);
    for (const head of this.heads) head.style.visibility = done >= 1 ? "" : "hidden";
  }
}

class Player {
  constructor(model, el) {
    this.model = model;
    this.words = model.get("words");
    this.still = window.matchMedia("(prefers-reduced-motion: reduce)");
    this.kept = new Map();
    this.parts = [];
    this.share = 0;
    this.takes = 0;
    this.held = 0;
    this.moving = false; // a picture is being made
    this.playing = false; // and the next one follows
    this.shown = null; // {index, version, ground, place} of the picture on show
    this.build(el);
    this.hear();
    this.showGround();
    this.showTimes();
    this.showExport();
    this.showMessage();
    this.resume();
    this.received();
    this.arrive(false);
    if (!this.shown) this.ask(model.get("index"));
    this.ticking = setInterval(() => this.tick(), 250);
  }

  // ---- parts ------------------------------------------------------------------------------------------------

  build(el) {
    const { words } = this;
    const root = html("div", { class: "lessonkit-player", role: "group", tabindex: 0, "aria-label": words.title }, el);
    this.root = root;
    root.dataset.lmSuppressShortcuts = "true"; // the notebook's own keys would move cells
    this.scene = html("div", { class: "lessonkit-player-scene" }, root);
    const told = html("div", { class: "lessonkit-player-told" }, this.scene);
    this.told = told;
    this.label = html("div", { class: "lessonkit-player-label" }, told);
    this.title = html("h2", { class: "lessonkit-player-title" }, told);
    this.text = html("div", { class: "lessonkit-player-words" }, told);
    this.part = html("div", { class: "lessonkit-player-part" }, told);
    this.stage = html("div", { class: "lessonkit-player-stage" }, this.scene);
    this.alert = html("div", { class: "lessonkit-player-message", role: "alert" }, root);
    this.live = html("div", { class: "lessonkit-player-live", role: "status", "aria-live": "polite" }, root);
    this.bar = html("div", { class: "lessonkit-player-bar" }, root);
    const button = (act, sign, parent = this.bar, text = words[act]) => {
      const made = html("button", { type: "button", title: text, "aria-label": text }, parent, sign);
      made.dataset.act = act;
      made.addEventListener("click", (event) => {
        this.act(act);
        if (event.detail) this.root.focus({ preventScroll: true }); // after a click the keys move the player again
      });
      return made;
    };
    button("first", "⇤");
    button("back", "← " + words.back);
    this.play = button("play", "");
    button("next", words.next + " →");
    button("last", "⇥");
    button("again", "↻");
    this.place = html("span", { class: "lessonkit-player-place" }, this.bar);
    const choice = (name, options, value, chosen, parent = this.bar, text = words[name]) => {
      const label = html("label", {}, parent, text + " ");
      const made = html("select", {}, label);
      made.dataset.choice = name;
      for (const [key, said] of options) html("option", { value: key }, made, said);
      made.value = value;
      made.addEventListener("change", () => chosen(made.value));
      return made;
    };
    this.speeds = choice("speed", SPEEDS.map((s) => [s, `${s} ×`]), this.model.get("speed"), (value) =>
      this.set("speed", Number(value)),
    );
    this.grounds = choice(
      "ground",
      this.model.get("grounds").map(([name, said]) => [name, said]),
      this.model.get("ground"),
      (value) => this.set("ground", value),
    );
    const wordy = html("label", {}, this.bar);
    this.wordy = html("input", { type: "checkbox" }, wordy);
    this.wordy.dataset.choice = "words";
    wordy.append(" " + words.show_words);
    this.wordy.addEventListener("change", () => this.set("wordy", this.wordy.checked));
    this.full = button("full", words.full);
    const film = html("span", { class: "lessonkit-player-film" }, this.bar);
    this.time = html("span", { class: "lessonkit-player-clock", role: "timer", "aria-label": words.clock }, film, "00:00");
    this.clockButton = button("clock", "", film, words.clock_start);
    this.clockButton.title = words.clock_help;
    const brief = html("label", { title: words.clock_brief_help }, film);
    this.brief = html("input", { type: "checkbox" }, brief);
    this.brief.dataset.choice = "brief";
    this.brief.checked = this.model.get("brief");
    brief.append(" " + words.clock_brief);
    this.brief.addEventListener("change", () => this.set("brief", this.brief.checked));
    this.help = html("div", { class: "lessonkit-player-help" }, root, words.help);
    this.buildTimes();
    this.buildExport(choice, button);
    this.showPlay();
  }

  buildTimes() {
    const { words, root } = this;
    const box = html("details", { class: "lessonkit-player-box" }, root);
    box.dataset.box = "times";
    html("summary", {}, box, words.marks);
    const inside = html("div", { class: "lessonkit-player-times" }, box);
    const table = html("table", {}, inside);
    const head = html("tr", {}, html("thead", {}, table));
    html("th", { scope: "col" }, head, words.mark_step);
    html("th", { scope: "col" }, head, words.mark_time);
    this.rows = html("tbody", {}, table);
    const listed = html("div", { class: "lessonkit-player-chapters" }, inside);
    const label = html("label", {}, listed, words.chapters);
    this.chapters = html("textarea", { readonly: "", rows: 10 }, label);
    const copy = html("button", { type: "button" }, listed, words.copy);
    copy.dataset.act = "copy";
    copy.addEventListener("click", () => this.copy());
    this.copied = html("span", { role: "status" }, listed);
    this.kept_in = html("div", {}, listed);
    this.clockAlert = html("div", { class: "lessonkit-player-message", role: "alert" }, inside);
  }

  buildExport(choice, button) {
    const { words, root } = this;
    const box = html("details", { class: "lessonkit-player-box" }, root);
    box.dataset.box = "export";
    html("summary", {}, box, words.export);
    const inside = html("div", { class: "lessonkit-player-export" }, box);
    const none = () => {};
    this.kind = choice("kind", this.model.get("kinds"), "mp4", none, inside, words.export_kind);
    const which = [
      ["", words.export_this],
      ["all", words.export_all],
    ];
    this.which = choice("which", which, "", none, inside, words.export_which);
    const sizes = this.model.get("sizes").map((size) => [size, size]);
    this.size = choice("size", sizes, sizes[0][0], none, inside, words.export_size);
    const label = html("label", {}, inside, words.export_seconds + " ");
    this.seconds = html("input", { type: "number", min: 0.5, max: 60, step: 0.5, value: 4 }, label);
    this.seconds.dataset.choice = "seconds";
    const below = html("label", {}, inside);
    this.sentence = html("input", { type: "checkbox" }, below);
    this.sentence.dataset.choice = "sentence";
    below.append(" " + words.export_sentence);
    this.go = button("export", words.export_go, inside, words.export_go);
    // Captions and shot list are of the whole lesson, and no picture's size.
    this.kind.addEventListener("change", () => {
      const film = this.kind.value === "film";
      for (const one of [this.which, this.size, this.seconds, this.sentence]) one.disabled = film;
    });
    this.cancel = button("cancel", words.export_cancel, inside, words.export_cancel);
    this.done = html("progress", { max: 1, value: 0 }, inside);
    this.exported = html("div", { role: "status", class: "lessonkit-player-exported" }, inside);
  }

  hear() {
    const { model, root } = this;
    this.listening = {
      "change:picture": () => this.received(),
      "change:index": () => this.arrive(true),
      "change:version": () => this.arrive(false),
      "change:shots": () => this.arrive(false),
      "change:ground": () => (this.showGround(), this.arrive(false)),
      "change:wordy": () => this.showGround(),
      "change:speed": () => (this.speeds.value = model.get("speed")),
      "change:message": () => this.showMessage(),
      "change:stale": () => this.showMessage(),
      "change:marks": () => this.showTimes(),
      "change:chapters": () => this.showTimes(),
      "change:kept_in": () => this.showTimes(),
      "change:clock_message": () => this.showTimes(),
      "change:film": () => this.resume(),
      "change:brief": () => (this.brief.checked = model.get("brief")),
      "change:exporting": () => this.showExport(),
    };
    for (const [event, act] of Object.entries(this.listening)) model.on(event, act);
    root.addEventListener("keydown", (event) => this.key(event));
    for (const event of ["pointermove", "pointerdown", "focusin"]) root.addEventListener(event, () => this.awake());
    this.watch = new ResizeObserver(() => this.fitWords());
    this.watch.observe(this.scene);
    this.screen = () => this.showFull();
    document.addEventListener("fullscreenchange", this.screen);
  }

  close() {
    this.watch.disconnect();
    clearInterval(this.ticking);
    clearTimeout(this.silence);
    clearTimeout(this.sleep);
    cancelAnimationFrame(this.frame);
    document.removeEventListener("fullscreenchange", this.screen);
    for (const [event, act] of Object.entries(this.listening)) this.model.off(event, act);
  }

  set(name, value) {
    this.model.set(name, value);
    this.model.save_changes();
  }

  // ---- what people do ---------------------------------------------------------------------------------------

  act(name) {
    const last = this.model.get("shots").length - 1;
    const index = this.model.get("index");
    const moves = { first: 0, back: index - 1, next: index + 1, last };
    if (name in moves) this.move(moves[name]);
    else if (name === "play") this.toggle();
    else if (name === "again") this.again();
    else if (name === "full") this.toggleFull();
    else if (name === "clock") this.toggleClock();
    else if (name === "cancel") this.model.send({ do: "cancel" });
    else if (name === "export") {
      const seconds = Number(this.seconds.value);
      const [kind, size, sentence] = [this.kind.value, this.size.value, this.sentence.checked];
      this.model.send({ do: "export", kind, all: !!this.which.value, size, seconds, sentence });
    }
  }

  key(event) {
    if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
    const at = event.target;
    if (event.key === "Tab") this.awake();
    const typing = at.matches("input:not([type=checkbox]), select, textarea");
    if (event.key === "Escape" && this.filling) this.leaveFilling();
    else if (typing) return;
    else if (event.key === " " && at.matches("button, summary, input")) return;
    else {
      const acts = { ArrowRight: "next", PageDown: "next", ArrowLeft: "back", PageUp: "back", Home: "first", End: "last" };
      const act = { ...acts, " ": "play", f: "full", F: "full" }[event.key];
      if (!act) return;
      this.act(act);
    }
    event.preventDefault();
    event.stopPropagation();
  }

  move(to) {
    const held = Math.min(Math.max(to, 0), this.model.get("shots").length - 1);
    if (held !== this.model.get("index")) this.set("index", held);
  }

  toggle() {
    const going = this.moving || this.playing;
    if (going) {
      this.moving = this.playing = false;
    } else {
      const last = this.model.get("index") >= this.model.get("shots").length - 1;
      this.playing = true;
      if (this.share < 1) this.begin();
      else if (last) this.again();
      else this.move(this.model.get("index") + 1);
    }
    this.showPlay();
  }

  again() {
    this.share = this.still.matches ? 1 : 0;
    this.begin();
  }

  // ---- pictures ---------------------------------------------------------------------------------------------

  name(index) {
    return `${this.model.get("version")}|${index}|${this.model.get("ground")}`;
  }

  received() {
    const { version, index, ground, svg, seconds } = this.model.get("picture");
    if (version !== this.model.get("version")) return;
    this.kept.set(`${version}|${index}|${ground}`, { svg, seconds });
    if (index === this.model.get("index")) {
      clearTimeout(this.silence);
      this.silence = 0;
      if (this.mute) {
        this.mute = false;
        this.showMessage();
      }
      if (this.shown?.name !== this.name(index)) this.arrive(false);
    }
  }

  ask(index) {
    this.model.send({ do: "picture", index });
  }

  /** Show the words and, when it is here, the picture of the place that is wanted. */
  arrive(moved) {
    const shots = this.model.get("shots");
    const index = this.model.get("index");
    const shot = shots[index];
    for (const key of this.kept.keys()) if (!key.startsWith(`${this.model.get("version")}|`)) this.kept.delete(key);
    if (!shot) {
      this.title.textContent = this.words.empty;
      this.stage.replaceChildren();
      return;
    }
    this.tell(shot);
    if (moved) this.note(shot.key);
    const name = this.name(index);
    if (this.shown?.name === name) return;
    const here = this.kept.get(name);
    if (!here) {
      clearTimeout(this.silence); // the kernel sends it without being asked
      this.silence = setTimeout(() => {
        this.mute = true;
        this.showMessage();
      }, SILENCE);
      return;
    }
    const place = `${shot.kind}|${shot.key}|${shot.part}`;
    const same = this.shown?.place === place;
    this.shown = { name, place };
    this.set_up(here, shot);
    const stays = same && this.share > 0; // other numbers or another ground: what is made stays made
    if (!stays) this.share = this.still.matches || !here.seconds ? 1 : 0;
    this.paint();
    this.root.dataset.shown = index; // said when it stands as it is meant to
    if (stays) return;
    this.begin();
    const next = index + 1;
    if (next < shots.length && !this.kept.has(this.name(next))) setTimeout(() => this.ask(next), 300);
  }

  tell(shot) {
    const said = JSON.stringify(shot);
    if (said === this.said) return;
    this.said = said;
    this.label.textContent = shot.label;
    this.title.textContent = shot.title;
    this.part.textContent = shot.part;
    this.place.textContent = shot.place;
    this.text.replaceChildren(...shot.words.map((words) => html("p", {}, null, words)));
    this.fitWords();
    this.live.textContent = [shot.label, shot.title, shot.part].filter(Boolean).join(". ");
  }

  /** The largest type in which the words find room; many words have a wider column first. */
  fitWords() {
    const { told, scene } = this;
    for (const [column, least] of [
      ["32%", 0.84],
      ["46%", 0.5],
    ]) {
      scene.style.setProperty("--lessonkit-told", column);
      for (let large = 1; large >= least; large -= 0.04) {
        scene.style.setProperty("--lessonkit-large", large);
        if (!told.clientHeight || told.scrollHeight <= told.clientHeight + 1) return;
      }
    }
  }

  set_up(picture, shot) {
    this.takes = picture.seconds;
    this.stage.innerHTML = picture.svg; // the kit's own pen: markup of its own making, texts escaped
    this.parts = [];
    const svg = this.stage.querySelector("svg");
    if (!svg) {
      if (!shot.drawn) this.stage.textContent = this.words.no_picture;
      return;
    }
    svg.removeAttribute("width");
    svg.removeAttribute("height");
    const box = svg.viewBox.baseVal;
    this.parts = [...svg.querySelectorAll("[data-from]")].map((group) => new Part(group, box));
  }

  begin() {
    this.held = 0;
    this.moving = this.share < 1;
    this.paint();
    this.showPlay();
    cancelAnimationFrame(this.frame);
    this.before = performance.now();
    this.frame = requestAnimationFrame((now) => this.step(now));
  }

  step(now) {
    const passed = (Math.max(now - this.before, 0) / 1000) * this.model.get("speed");
    this.before = now;
    if (this.moving) {
      this.share = Math.min(this.share + passed / Math.max(this.takes, 0.1), 1);
      this.moving = this.share < 1;
      this.paint();
      if (!this.moving) this.showPlay();
    } else if (this.playing) {
      this.held += passed;
      const rest = HOLD + (this.still.matches ? this.takes : 0);
      if (this.held > rest) {
        if (this.model.get("index") < this.model.get("shots").length - 1) {
          this.held = 0;
          this.move(this.model.get("index") + 1);
        } else {
          this.playing = false;
          this.showPlay();
        }
      }
    }
    if (this.moving || this.playing) this.frame = requestAnimationFrame((next) => this.step(next));
  }

  paint() {
    for (const part of this.parts) part.show(this.share);
    this.root.dataset.share = this.share.toFixed(3);
  }

  // ---- what is seen -----------------------------------------------------------------------------------------

  showPlay() {
    const going = this.moving || this.playing;
    const text = going ? this.words.pause : this.words.play;
    this.play.textContent = (going ? "‖ " : "▶ ") + text;
    this.play.title = text;
    this.play.setAttribute("aria-label", text);
    this.root.dataset.playing = going;
  }

  showGround() {
    const ground = this.model.get("ground");
    const found = this.model.get("grounds").find(([name]) => name === ground);
    this.grounds.value = ground;
    this.root.dataset.ground = ground;
    this.root.style.setProperty("--lessonkit-ground", found ? found[2] : "#ffffff");
    this.wordy.checked = this.model.get("wordy");
    this.root.classList.toggle("lessonkit-player-wordless", !this.model.get("wordy"));
    this.fitWords();
  }

  showMessage() {
    this.alert.textContent = this.mute ? this.words.silent : this.model.get("message");
    this.scene.classList.toggle("lessonkit-player-stale", this.model.get("stale"));
  }

  // ---- full window ------------------------------------------------------------------------------------------

  async toggleFull() {
    const stage = this.root.closest(".lessonkit-stage"); // on a stage it is the stage that fills the window
    if (stage) return stage.dispatchEvent(new CustomEvent("lessonkit-fill"));
    if (document.fullscreenElement === this.root) {
      await document.exitFullscreen();
    } else if (this.filling) {
      this.leaveFilling();
    } else {
      try {
        await this.root.requestFullscreen();
      } catch {
        this.fill(); // refused, as in a page within a page
      }
    }
    this.root.focus({ preventScroll: true });
  }

  fill() {
    this.filling = true;
    if (this.root.showPopover) {
      this.root.popover = "manual"; // above everything, whatever box the notebook keeps its outputs in
      this.root.showPopover();
    }
    this.showFull();
  }

  leaveFilling() {
    this.filling = false;
    if (this.root.popover) {
      this.root.hidePopover();
      this.root.removeAttribute("popover");
    }
    this.showFull();
  }

  showFull() {
    const full = document.fullscreenElement === this.root || !!this.filling;
    this.root.classList.toggle("lessonkit-player-full", full);
    const text = full ? this.words.leave : this.words.full;
    this.full.textContent = text;
    this.full.title = text;
    this.full.setAttribute("aria-label", text);
    this.awake();
  }

  /** In a full window the buttons go away while the pointer rests: the camera must not see them. */
  awake() {
    this.root.classList.remove("lessonkit-player-quiet");
    clearTimeout(this.sleep);
    if (!this.root.classList.contains("lessonkit-player-full")) return;
    this.sleep = setTimeout(() => this.root.classList.add("lessonkit-player-quiet"), QUIET);
  }

  // ---- the clock --------------------------------------------------------------------------------------------

  get running() {
    const film = this.model.get("film");
    return !!film.take && film.stopped === null;
  }

  get now() {
    const film = this.model.get("film");
    return Math.max((film.stopped ?? Date.now()) - film.started, 0) / 1000;
  }

  toggleClock() {
    if (this.running) {
      this.send(Date.now());
    } else {
      this.seen = [];
      const started = Date.now();
      this.set("film", { take: String(started), started, stopped: null, seen: [] });
      this.begun = 0;
      this.sent = false;
      this.key_on = this.model.get("shots")[this.model.get("index")]?.key;
    }
    this.showClock();
  }

  /** The step of this key comes on show. */
  note(key) {
    if (!this.running || key === this.key_on) return;
    if (this.key_on) this.seen.push([this.key_on, this.begun, this.now]);
    this.key_on = key;
    this.begun = this.now;
    this.sent = false;
    this.send(null);
  }

  send(stopped) {
    const film = this.model.get("film");
    const now = Math.max((stopped ?? Date.now()) - film.started, 0) / 1000;
    const seen = this.key_on ? [...this.seen, [this.key_on, this.begun, now]] : this.seen;
    this.set("film", { ...film, stopped, seen });
  }

  /** A page opened anew goes on with a clock that runs. */
  resume() {
    const film = this.model.get("film");
    if (this.running && !this.seen) {
      const seen = film.seen.slice();
      const last = seen.pop();
      this.seen = seen;
      this.key_on = last?.[0] ?? this.model.get("shots")[this.model.get("index")]?.key;
      this.begun = last?.[1] ?? 0;
      this.sent = true;
    }
    if (!this.running) this.seen = null;
    this.showClock();
  }

  tick() {
    if (!this.running) return;
    if (!this.sent && this.key_on && this.now - this.begun >= NOTED) {
      this.sent = true;
      this.send(null);
    }
    this.time.textContent = clock(this.now);
  }

  showClock() {
    const { running, words } = this;
    const text = running ? words.clock_stop : words.clock_start;
    this.clockButton.textContent = (running ? "■ " : "● ") + text;
    this.clockButton.setAttribute("aria-label", text);
    this.time.classList.toggle("lessonkit-player-running", running);
    if (this.model.get("film").take) this.time.textContent = clock(this.now);
  }

  showTimes() {
    const held = this.root.getRootNode().activeElement?.dataset?.mark;
    const marks = this.model.get("marks");
    this.rows.replaceChildren();
    for (const [key, title, at, label] of marks) {
      const row = html("tr", {}, this.rows);
      html("th", { scope: "row" }, row, title);
      const field = html("input", { type: "text", size: 8, "aria-label": label, inputmode: "numeric" }, html("td", {}, row));
      field.value = at;
      field.dataset.mark = key;
      let said = at;
      const put = () => {
        if (field.value !== said) this.model.send({ do: "correct", key, text: (said = field.value) });
      };
      field.addEventListener("change", put);
      field.addEventListener("keydown", (event) => event.key === "Enter" && put());
      if (key === held) field.focus({ preventScroll: true });
    }
    this.chapters.value = this.model.get("chapters");
    this.chapters.placeholder = this.words.marks_none;
    this.kept_in.textContent = this.model.get("kept_in");
    this.clockAlert.textContent = this.model.get("clock_message");
    this.copied.textContent = "";
  }

  async copy() {
    try {
      await navigator.clipboard.writeText(this.chapters.value);
    } catch {
      this.chapters.select(); // without leave to write to the clipboard
      document.execCommand("copy");
    }
    this.copied.textContent = this.words.copied;
  }

  // ---- files ------------------------------------------------------------------------------------------------

  showExport() {
    const { running = false, share = 0, said = "" } = this.model.get("exporting");
    this.go.disabled = running;
    this.cancel.hidden = !running;
    this.done.hidden = !running;
    this.done.value = share;
    this.exported.textContent = said;
  }
}

function render({ model, el }) {
  const player = new Player(model, el);
  return () => player.close();
}

export default { render };
