// The reader's own measurements: typed, checked one by one, kept on this device, saved as a file and loaded again.
import { $, drawn, made } from "./told.js";

export class BodyForm {
  constructor(words, measures, body, engine) {
    this.words = words;
    this.measures = measures;
    this.body = body; // {name, typed}
    this.engine = engine; // {setting(), ask(message, then), use(body), units(units)}
    this.every = false;
    this.build();
  }

  build() {
    const form = $("own");
    const words = this.words;
    const name = made("div", "", "measure");
    const label = made("label", words.name);
    this.name = made("input");
    this.name.type = "text";
    this.name.id = "body-name";
    this.name.value = this.body.name || words.body_mine;
    this.name.autocomplete = "off";
    label.htmlFor = this.name.id;
    name.append(label, this.name);
    this.figures = made("div", "", "figures");
    this.list = made("div");
    this.boxes = new Map();
    const used = this.shown();
    this.measures.forEach((each) => this.list.append(this.row(each, used.indexOf(each.name) + 1)));
    const more = made("label", "", "check");
    const tick = made("input");
    tick.type = "checkbox";
    tick.checked = this.every;
    tick.addEventListener("change", () => {
      this.every = tick.checked;
      this.arrange();
      this.read();
    });
    more.append(tick, words.all_measures);
    const acts = made("div", "", "acts");
    const use = this.act(acts, words.use_body, () => this.use());
    use.type = "submit";
    this.act(acts, words.save_body, () => this.save());
    const file = made("input");
    file.type = "file";
    file.accept = ".toml";
    file.hidden = true;
    file.addEventListener("change", () => this.load(file));
    this.act(acts, words.load_body, () => file.click());
    acts.append(file);
    form.replaceChildren(name, this.figures, this.list, more, acts);
    form.onsubmit = (event) => {
      event.preventDefault();
      this.use();
    };
    this.arrange();
    this.read();
  }

  act(place, text, then) {
    const button = made("button", text);
    button.type = "button";
    button.addEventListener("click", (event) => {
      if (button.type === "button") then(event);
    });
    place.append(button);
    return button;
  }

  row(each) {
    const row = made("div", "", "measure");
    const label = made("label", each.said);
    const box = made("input");
    box.type = "text";
    box.inputMode = "text";
    box.autocomplete = "off";
    box.id = `measure-${each.name}`;
    box.value = (this.body.typed || {})[each.name] || "";
    label.htmlFor = box.id;
    const hint = made("p");
    hint.id = `hint-${each.name}`;
    box.setAttribute("aria-describedby", hint.id);
    box.addEventListener("input", () => {
      clearTimeout(this.rest);
      this.rest = setTimeout(() => this.read(), 400);
    });
    row.append(label, box, hint);
    this.boxes.set(each.name, { row, label, box, hint, each });
    return row;
  }

  shown() {
    return this.measures.filter((each) => this.every || each.used || (this.body.typed || {})[each.name]).map((each) => each.name);
  }

  arrange() {
    const names = this.shown();
    for (const [name, { row, label, each }] of this.boxes) {
      row.hidden = !names.includes(name);
      const said = each.said[0].toUpperCase() + each.said.slice(1);
      label.textContent = row.hidden ? said : `${names.indexOf(name) + 1}  ${said}`;
    }
  }

  typed() {
    const typed = {};
    for (const [name, { box }] of this.boxes) if (box.value.trim()) typed[name] = box.value.trim();
    return { name: this.name.value, typed };
  }

  read() {
    this.body = this.typed();
    const setting = { ...this.engine.setting(), body: this.body, values: {} };
    this.engine.ask({ ...setting, do: "body", shown: this.shown() }, (told) => {
      if (!told.ok) return this.say(told.said);
      for (const [name, { box, hint, each }] of this.boxes) {
        const row = told.rows[name] || {};
        hint.textContent = row.wrong || [row.value, each.note].filter(Boolean).join(" ");
        hint.className = row.wrong ? "wrong" : "";
        box.setAttribute("aria-invalid", row.wrong ? "true" : "false");
      }
      this.figures.replaceChildren(...told.figures.map((each) => drawn(each.svg)).filter(Boolean));
      this.say(told.trouble || told.advice.join(" "));
    });
  }

  say(text) {
    $("body-said").textContent = text;
  }

  use() {
    this.body = this.typed();
    this.engine.use(this.body);
  }

  save() {
    const setting = { ...this.engine.setting(), body: this.typed(), values: {} };
    this.engine.ask({ ...setting, do: "write" }, (told) => {
      if (!told.ok) return this.say(told.said);
      const link = made("a");
      link.href = URL.createObjectURL(new Blob([told.text], { type: "application/toml" }));
      link.download = this.words.body_file;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    });
  }

  async load(file) {
    const [one] = file.files;
    file.value = "";
    if (!one) return;
    const text = await one.slice(0, 1000001).text();
    this.engine.ask({ ...this.engine.setting(), values: {}, body: {}, do: "read", name: one.name, text }, (told) => {
      if (!told.ok) return this.say(told.said);
      this.body = { name: told.name, typed: told.typed };
      this.name.value = told.name;
      for (const [name, { box }] of this.boxes) box.value = told.typed[name] || "";
      this.engine.units(told.units);
      this.arrange();
      this.read();
    });
  }
}
