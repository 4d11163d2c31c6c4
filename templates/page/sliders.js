// The sliders the lesson opened: a name, a value in words, and a range in whole steps.
export class Sliders {
  constructor(place, words, moved) {
    this.place = place;
    this.words = words;
    this.moved = moved;
    this.rows = new Map();
  }

  // `latest`: nothing was moved since this was asked; else each stays where the hand has brought it.
  show(sliders, words, latest = true) {
    this.words = words;
    for (const [name, row] of this.rows) {
      if (!sliders.some((each) => each.name === name)) {
        row.element.remove();
        this.rows.delete(name);
      }
    }
    for (const each of sliders) {
      const fresh = !this.rows.has(each.name);
      if (fresh) this.rows.set(each.name, this.row(each));
      this.set(this.rows.get(each.name), each, latest || fresh);
    }
  }

  row(each) {
    const element = document.createElement("div");
    element.className = "row";
    const line = document.createElement("div");
    line.className = "line";
    const label = document.createElement("label");
    const output = document.createElement("output");
    const pull = document.createElement("div");
    pull.className = "pull";
    const range = document.createElement("input");
    range.type = "range";
    range.id = `value-${each.name}`;
    label.htmlFor = range.id;
    output.htmlFor = range.id;
    const less = document.createElement("button");
    const more = document.createElement("button");
    less.type = more.type = "button";
    less.textContent = "−";
    more.textContent = "+";
    const why = document.createElement("p");
    why.className = "why";
    why.id = `why-${each.name}`;
    range.setAttribute("aria-describedby", why.id);
    line.append(label, output);
    pull.append(less, range, more);
    element.append(line, why, pull);
    this.place.append(element);
    const row = { element, label, output, range, less, more, why, told: each };
    range.addEventListener("input", () => this.pulled(row));
    less.addEventListener("click", () => this.nudged(row, -1));
    more.addEventListener("click", () => this.nudged(row, 1));
    return row;
  }

  // What stands as it stood is left alone: a picture waits for whatever is laid out anew.
  set(row, each, latest) {
    const words = this.words, now = JSON.stringify(each);
    if (row.now !== now || row.words !== words) this.write(row, each);
    Object.assign(row, { now, words });
    if (!latest) return;
    if (document.activeElement !== row.range || Math.abs(Number(row.range.value) - each.at) > 0.5) row.range.value = each.at;
  }

  write(row, each) {
    row.told = each;
    row.label.textContent = each.label;
    row.output.textContent = each.shown;
    row.why.textContent = [each.why, each.follows].filter(Boolean).join(" · ");
    row.range.min = each.first;
    row.range.max = each.last;
    row.range.step = 1;
    row.range.setAttribute("aria-valuetext", each.shown);
    row.less.setAttribute("aria-label", this.words.less.replace("{name}", each.label));
    row.more.setAttribute("aria-label", this.words.more.replace("{name}", each.label));
    row.less.disabled = each.at <= each.first;
    row.more.disabled = each.at >= each.last;
  }

  // To a step of its range, as if it was pulled there.
  pull(name, at) {
    const row = this.rows.get(name);
    if (!row) return;
    row.range.value = at;
    this.pulled(row);
  }

  pulled(row) {
    const { size, least, most, name } = row.told;
    this.moved(name, Math.min(Math.max(Number(row.range.value) * size, least), most));
  }

  nudged(row, by) {
    row.range.value = Number(row.range.value) + by;
    this.pulled(row);
  }
}
