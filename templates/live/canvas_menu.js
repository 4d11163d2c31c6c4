// The Draw menu: what is chosen, a move, how far; the kernel answers with the lines as they would lie and the cell.
//
// The kernel is asked for one thing at a time; what is wanted meanwhile is asked for when its answer comes. A dragged
// amount asks for quick answers and, when it is let go, for one with its range tried out.

class DrawMenu {
  constructor(canvas) {
    this.canvas = canvas;
    this.words = canvas.words;
    this.turn = Date.now() % 1e9;
    this.asked = null;
    this.want = null;
    this.value = null; // mm or share while it is dragged
    this.build();
  }

  get open() {
    return !this.form.hidden;
  }

  word(key) {
    return this.words["move_" + key];
  }

  // ---- parts ------------------------------------------------------------------------------------------------

  build() {
    const { canvas } = this;
    this.button = html("button", { type: "button", "aria-expanded": "false" }, canvas.bar, "✎ " + this.word("draw"));
    this.button.dataset.act = "draw";
    this.button.addEventListener("click", () => this.toggle(!this.open));
    this.form = html("form", { class: "lessonkit-canvas-menu", "aria-label": this.word("draw") });
    this.form.hidden = true;
    canvas.stage.before(this.form);
    this.form.addEventListener("submit", (event) => event.preventDefault());
    this.chosen = html("p", { role: "status", class: "lessonkit-canvas-chosen-text" }, this.form, this.word("choose"));
    const fields = html("div", { class: "lessonkit-canvas-fields" }, this.form);
    const field = (name, tag, attributes = {}) => {
      const label = html("label", {}, fields, this.word(name) + " ");
      const made = html(tag, { ...attributes, "data-field": name }, label);
      made.addEventListener("change", () => this.changed(name));
      return made;
    };
    this.moves = field("move", "select");
    this.ways = field("way", "select");
    const typed = { type: "text", autocomplete: "off", spellcheck: "false" };
    this.amount = field("amount", "input", { ...typed, size: 9 });
    this.title = field("title", "input", { ...typed, size: 30 });
    this.measure = field("measure", "input", { ...typed, size: 18 });
    this.thing = field("thing", "input", { ...typed, size: 18 });
    this.why = field("why", "input", { ...typed, size: 24 });
    this.kept = false; // whether what is said stays when an answer has nothing to say
    this.own = new Set(); // the fields the reader filled in
    this.sentence = html("p", { class: "lessonkit-canvas-sentence" }, this.form);
    this.source = html("details", {}, this.form);
    html("summary", {}, this.source, this.word("source"));
    this.text = html("pre", { tabindex: 0 }, this.source);
    const bar = html("div", { class: "lessonkit-canvas-bar" }, this.form);
    const button = (name, act) => {
      const made = html("button", { type: "button" }, bar, this.word(name));
      made.dataset.act = "menu-" + name;
      made.addEventListener("click", act);
      return made;
    };
    this.write = button("write", () => this.writing());
    this.copy = button("copy", () => this.copying());
    button("cancel", () => this.toggle(false));
    this.said = html("div", { class: "lessonkit-canvas-message", role: "alert" }, this.form);
    this.lines = make("g", { class: "lessonkit-canvas-would" });
    canvas.world.after(this.lines);
    this.grip = make("g", { class: "lessonkit-canvas-handle lessonkit-canvas-grip", tabindex: 0, role: "slider" }, canvas.stage);
    this.grip.setAttribute("aria-label", this.word("grip"));
    make("circle", { class: "lessonkit-canvas-reach", r: 16 }, this.grip);
    const arrow = "M-11 -5L-17 0L-11 5M11 -5L17 0L11 5";
    make("path", { d: arrow, class: "lessonkit-canvas-line" }, this.grip);
    make("rect", { x: -7, y: -7, width: 14, height: 14, stroke: canvas.ink.paper, "stroke-width": 1.5 }, this.grip);
    this.grip.addEventListener("pointerdown", (event) => this.down(event));
    this.grip.addEventListener("pointermove", (event) => this.moved(event));
    for (const end of ["pointerup", "pointercancel"]) this.grip.addEventListener(end, (event) => this.up(event));
    this.grip.addEventListener("keydown", (event) => this.key(event));
    this.show({});
  }

  toggle(open) {
    this.form.hidden = !open;
    this.button.setAttribute("aria-expanded", open);
    this.canvas.set("drawing", open);
    this.clear();
    if (open) this.ask();
    else {
      this.canvas.set("selected", []);
      this.button.focus({ preventScroll: true });
    }
  }

  /** Forget what was typed, and the move. */
  clear() {
    this.own.clear();
    this.value = null;
    this.wanted = "";
    for (const field of [this.amount, this.title, this.measure, this.thing, this.why]) field.value = "";
    this.kept = false;
    this.show({});
  }

  // ---- asking -----------------------------------------------------------------------------------------------

  changed(name) {
    this.kept = false;
    if (name === "move") {
      for (const field of ["way", "amount", "title", "measure", "thing"]) this.own.delete(field);
      this.wanted = this.moves.value;
    } else if (this.form.querySelector(`[data-field="${name}"]`).value.trim()) this.own.add(name);
    else this.own.delete(name);
    this.value = null;
    this.ask();
  }

  /** What is chosen has changed. */
  picked() {
    if (!this.open) return;
    for (const field of ["title", "measure", "thing"]) this.own.delete(field);
    this.value = null;
    this.kept = false;
    this.ask();
  }

  ask(rest = true) {
    if (!this.open) return;
    const given = (name) => (this.own.has(name) ? this[{ way: "ways" }[name] ?? name].value : "");
    this.want = {
      do: "draft",
      chosen: this.canvas.model.get("selected"),
      step: this.canvas.model.get("step"),
      move: this.wanted ?? "",
      way: given("way"),
      amount: this.value ?? given("amount"),
      title: given("title"),
      measure: given("measure"),
      thing: given("thing"),
      why: given("why"),
      rest,
    };
    this.send();
  }

  send() {
    this.form.dataset.asking = !!(this.asked || this.want);
    if ((this.asked && !this.mute) || !this.want) return;
    this.turn += 1;
    this.asked = { ...this.want, turn: this.turn };
    this.want = null;
    this.canvas.model.send(this.asked);
    clearTimeout(this.silence);
    this.mute = false;
    this.silence = setTimeout(() => {
      this.mute = true; // an answer that comes late is welcome, and so is another question
      this.said.textContent = this.words.silent;
    }, SILENCE);
  }

  answered() {
    const answer = this.canvas.model.get("draft");
    if (!this.asked || answer.turn !== this.asked.turn) return;
    clearTimeout(this.silence);
    this.asked = null;
    if (!this.want && this.open) this.show(answer);
    this.send();
  }

  /** Everything the kernel has found, at hand and exact. */
  async settled() {
    for (let i = 0; i < 2400 && (this.asked || this.want); i++) await new Promise((resolve) => setTimeout(resolve, 25));
    return !this.asked && !this.want;
  }

  // ---- showing ----------------------------------------------------------------------------------------------

  show(answer) {
    if (this.held && answer.source) answer = { ...answer, grip: this.answer.grip };
    this.answer = answer;
    const { moves = [], ways = [], source = "" } = answer;
    this.chosen.textContent = answer.chosen ?? this.word("choose");
    this.options(this.moves, [["", "–", ""], ...moves], this.wanted ?? "");
    this.options(this.ways, ways, answer.way ?? "");
    const shown = (field, on) => (field.parentElement.hidden = !on);
    shown(this.ways, ways.length > 0);
    shown(this.amount, !!answer.kind || (this.own.has("amount") && !!answer.trouble));
    shown(this.title, !!source);
    shown(this.measure, !!answer.measure);
    shown(this.thing, !!answer.thing);
    shown(this.why, !!answer.measure);
    const put = (name, text) => {
      if (!this.own.has(name) && this[name] !== document.activeElement) this[name].value = text ?? "";
    };
    if (source) {
      if (this.value !== null || !this.own.has("amount")) this.amount.value = answer.amount;
      if (this.value !== null) this.own.add("amount");
      put("title", answer.title);
      put("measure", (answer.measure ?? "").replaceAll("_", " "));
      put("thing", (answer.thing ?? "").replaceAll("_", " "));
    }
    this.sentence.textContent = source ? `${this.word("says")}: ${answer.sentence}` : "";
    this.text.textContent = source;
    this.source.hidden = !source;
    this.write.disabled = !source;
    this.copy.disabled = !source;
    if (answer.trouble || !this.kept) {
      this.said.textContent = answer.trouble ?? "";
      this.said.classList.remove("lessonkit-canvas-good");
    }
    this.paint();
  }

  options(select, wanted, now) {
    const key = JSON.stringify(wanted);
    if (select.dataset.filled !== key) {
      select.dataset.filled = key;
      select.replaceChildren();
      for (const [value, label, not] of wanted) {
        const option = html("option", { value }, select, label);
        option.disabled = !!not;
        if (not) option.title = not;
      }
    }
    select.value = now;
    const chosen = select.selectedOptions[0];
    if (select === this.moves && chosen?.disabled) this.said.textContent = chosen.title;
  }

  /** The lines as they would lie, and the grip where the amount is dragged. */
  paint() {
    const { lines = [], grip = null } = this.answer;
    const { world } = this.canvas;
    this.lines.setAttribute("transform", world.getAttribute("transform") ?? "");
    if (this.drawn !== lines) {
      this.drawn = lines;
      this.lines.replaceChildren();
      for (const row of lines) {
        let d = `M${row[0]} ${-row[1]}`;
        for (let i = 2; i < row.length; i += 6) {
          d += `C${row[i]} ${-row[i + 1]} ${row[i + 2]} ${-row[i + 3]} ${row[i + 4]} ${-row[i + 5]}`;
        }
        make("path", { d, class: "lessonkit-canvas-line" }, this.lines);
      }
    }
    this.grip.style.display = grip ? "" : "none";
    if (!grip) return;
    const { k, x, y } = this.canvas.view;
    const [px, py] = this.held?.at ?? [grip[0] * k + x, -grip[1] * k + y];
    const turned = (Math.atan2(-grip[3], grip[2]) * 180) / Math.PI;
    this.grip.setAttribute("transform", `translate(${two(px)} ${two(py)}) rotate(${two(turned)})`);
    this.grip.setAttribute("aria-valuenow", this.answer.value);
    this.grip.setAttribute("aria-valuemin", 0);
    this.grip.setAttribute("aria-valuetext", this.answer.amount);
  }

  // ---- dragging ---------------------------------------------------------------------------------------------

  down(event) {
    if (event.button > 0 || !this.answer.grip) return;
    event.preventDefault();
    event.stopPropagation();
    this.grip.setPointerCapture(event.pointerId);
    this.grip.focus({ preventScroll: true });
    const { grip, value } = this.answer;
    const { k, x, y } = this.canvas.view;
    this.held = { from: this.canvas.where(event), spot: [grip[0] * k + x, -grip[1] * k + y], way: [grip[2] * k, -grip[3] * k], value };
  }

  moved(event) {
    const { held } = this;
    if (!held) return;
    event.stopPropagation();
    const [px, py] = this.canvas.where(event);
    const [wx, wy] = held.way;
    const by = ((px - held.from[0]) * wx + (py - held.from[1]) * wy) / (wx * wx + wy * wy || 1);
    const value = Math.max(held.value + by, 0);
    held.at = [held.spot[0] + wx * (value - held.value), held.spot[1] + wy * (value - held.value)];
    this.value = value;
    this.ask(false);
    this.paint();
  }

  up(event) {
    if (!this.held) return;
    event.stopPropagation();
    const went = this.held.at;
    this.held = null;
    if (went) this.ask();
  }

  key(event) {
    const way = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (!way || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    const from = this.value ?? this.answer.value;
    this.value = Math.max(from + way * this.answer.step * (event.shiftKey ? 10 : 1), 0);
    this.ask();
  }

  // ---- the cell ---------------------------------------------------------------------------------------------

  async writing() {
    this.write.disabled = true;
    this.said.textContent = this.word("writing");
    const sure = await this.settled();
    const { source, follows, hand, name } = this.answer;
    if (!sure || !source) return; // what is wrong is said already
    let done = "";
    try {
      done = await writeCell(this.canvas.root, source, follows);
    } catch (error) {
      console.warn(error);
    }
    if (!done) {
      this.source.open = true;
      this.say(hand);
      this.write.disabled = false;
      return;
    }
    this.canvas.set("selected", []);
    if (this.canvas.model.get("step")) this.canvas.set("step", name); // the next move follows this one
    this.clear();
    this.say(this.word(done === "ran" ? "written" : "not_run"), done === "ran");
    this.ask();
    setTimeout(() => this.form.scrollIntoView({ block: "nearest" }), 200); // the notebook has gone to the cell below
  }

  async copying() {
    try {
      await navigator.clipboard.writeText(this.answer.source);
    } catch {
      this.source.open = true;
      const range = document.createRange();
      range.selectNodeContents(this.text);
      getSelection().removeAllRanges();
      getSelection().addRange(range);
      if (!document.execCommand("copy")) return;
    }
    this.say(this.word("copied"), true);
  }

  /** Say something that stays until something else is chosen or typed. */
  say(text, good = false) {
    this.kept = true;
    this.said.classList.toggle("lessonkit-canvas-good", good);
    this.said.textContent = text;
  }
}
