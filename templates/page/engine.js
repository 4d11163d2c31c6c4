// The page's side of the engine. One message is under way at a time. A drawing that waits is replaced by a newer one,
// so that a slider never queues up; what else is asked waits until nothing is left to draw. What does not end is stopped
// here, by the clock; a worker that `stopsItself` has its own clock and says so, however long a message waits its turn.
// It also hears what comes next at once, so that a drawing takes the place of a proof that was asked before.
const REST = 2000; // ms until a worker that had no time is asked again
const PATIENCE = { draw: 12000, about: 30000, prove: 30000, booklet: 60000, mend: 60000, body: 12000, read: 12000, write: 12000 };

export class Engine {
  constructor(address, told) {
    this.address = address;
    this.told = told; // {ready(seconds), failed(why), stopped(message)}
    this.started = false;
    this.number = 0;
    this.under = null;
    this.drawing = null;
    this.waiting = [];
    this.resting = 0;
    this.start();
  }

  start() {
    this.started = false;
    clearTimeout(this.resting);
    this.resting = 0;
    // A class may put something in the worker's place that listens along, or asks the room (templates/room/student.js).
    this.worker = self.lessonWorker ? self.lessonWorker(this.address) : new Worker(this.address, { type: "module" });
    this.worker.onmessage = (event) => this.heard(event.data);
    this.worker.onerror = (event) => {
      event.preventDefault();
      this.told.failed(event.message || "");
    };
  }

  // Draw this, and forget what was to be drawn before it and has not been begun.
  draw(message, then) {
    this.drawing = { message, then };
    if (this.worker.stopsItself && this.under?.message.do === "prove") {
      clearTimeout(this.under.timer);
      this.under = null;
    }
    this.next();
  }

  // Ask something else; what was asked under the same name and waits is forgotten.
  ask(message, then) {
    this.waiting = this.waiting.filter((one) => one.message.do !== message.do);
    this.waiting.push({ message, then });
    this.next();
  }

  get idle() {
    return !this.under && !this.drawing;
  }

  next() {
    if (!this.started || this.under || this.resting) return;
    const task = this.drawing || this.waiting.shift();
    if (!task) return;
    if (task === this.drawing) this.drawing = null;
    this.under = { ...task, id: ++this.number };
    this.under.timer = setTimeout(() => this.worker.stopsItself || this.stop(), PATIENCE[task.message.do] || 12000);
    this.worker.postMessage({ id: this.under.id, text: JSON.stringify(task.message) });
  }

  heard(data) {
    if (data.ready) {
      this.started = true;
      this.told.ready(data.seconds);
      this.next();
      return;
    }
    if (data.failed) {
      this.told.failed(data.failed);
      return;
    }
    const task = this.under;
    if (!task || data.id !== task.id) return;
    clearTimeout(task.timer);
    this.under = null;
    if (data.stopped) return this.stopped();
    if (data.busy) return this.later(task);
    if (data.broken) task.then({ ok: false, said: data.broken });
    else task.then(JSON.parse(data.text));
    this.next();
  }

  // The worker had no time: what was asked goes back to its place, unless something newer has taken it.
  later(task) {
    if (task.message.do === "draw") this.drawing ||= task;
    else if (!this.waiting.some((one) => one.message.do === task.message.do)) this.waiting.unshift(task);
    this.resting = setTimeout(() => {
      this.resting = 0;
      this.next();
    }, REST);
  }

  // What does not end is stopped with the worker; a new one takes its place.
  stop() {
    if (this.under) clearTimeout(this.under.timer);
    this.under = null;
    this.worker.terminate();
    this.start();
    this.stopped();
  }

  // What waited was asked by a page whose last value did not come to an end.
  stopped() {
    this.waiting = [];
    this.drawing = null;
    this.told.stopped();
  }
}
