// The reader's own pages: asked for, made by a worker of their own, and saved. What is set when they are asked for counts.
import { $, made } from "./told.js";

const PDF = "application/pdf";

export class OwnPages {
  constructor(address, about) {
    this.address = address;
    this.about = about; // {papers, size}: names of papers, and what there is to load, in MB
    this.setting = {};
    this.worker = null;
    this.links = [];
    $("pages-make").addEventListener("click", () => (this.worker ? this.end(this.words.pages_stopped) : this.make()));
  }

  speak(words) {
    this.words = words;
    $("pages").querySelector("h2").textContent = words.pages;
    $("pages-how").textContent = words.pages_how.replace("{size}", String(this.about.size));
    $("pages-paper-label").textContent = words.pages_paper;
    const chosen = $("pages-paper").value || this.about.papers[0];
    $("pages-paper").replaceChildren(...this.about.papers.map((name) => new Option(words[`paper_${name}`], name)));
    $("pages-paper").value = chosen;
    $("pages-make").textContent = this.worker ? words.pages_stop : words.pages_make;
  }

  // What the page is set to. Pages of another setting are offered no longer.
  setTo(setting) {
    if (JSON.stringify(setting) === JSON.stringify(this.setting)) return;
    this.setting = setting;
    this.forget();
    if (this.worker) this.end(this.words.pages_stopped);
    else this.say("");
  }

  make() {
    this.forget();
    this.worker = new Worker(this.address, { type: "module" });
    this.worker.onmessage = (event) => this.heard(event.data);
    this.worker.onerror = (event) => {
      event.preventDefault();
      this.end(this.words.pages_not_here);
    };
    $("pages-make").textContent = this.words.pages_stop;
    const message = { ...this.setting, do: "pages", paper: $("pages-paper").value };
    this.worker.postMessage({ id: 1, text: JSON.stringify(message) });
  }

  heard(data) {
    if (data.progress) return this.say(this.words[`pages_${data.progress}`]);
    if (data.failed) {
      console.warn(data.failed);
      return this.end(this.words.pages_not_here);
    }
    const told = data.broken ? { ok: false, said: data.broken } : JSON.parse(data.text);
    if (!told.ok) return this.end(told.said);
    this.end([this.words.pages_done, told.wrong].filter(Boolean).join(" "), Boolean(told.wrong));
    for (const each of told.files) this.offer(each);
  }

  offer({ name, data }) {
    const link = made("a", this.words.pages_save.replace("{name}", name));
    link.href = URL.createObjectURL(new Blob([Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0))], { type: PDF }));
    link.download = name;
    this.links.push(link);
    const line = made("li");
    line.append(link);
    $("pages-files").append(line);
  }

  forget() {
    for (const link of this.links) URL.revokeObjectURL(link.href);
    this.links = [];
    $("pages-files").replaceChildren();
  }

  end(said, wrong = false) {
    this.worker?.terminate();
    this.worker = null;
    $("pages-make").textContent = this.words.pages_make;
    this.say(said, wrong);
  }

  say(text, wrong = false) {
    $("pages-said").className = wrong ? "wrong" : "";
    $("pages-said").textContent = text;
  }
}
