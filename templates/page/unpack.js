// Unpacks what travels packed more tightly than a browser can by itself: LZMA in its old form, one stream with its size
// at the head (as Python's `lzma.FORMAT_ALONE` writes it; the algorithm is public domain, LZMA SDK 9.20, lzma.txt).
// Whatever has arrived is unpacked while the rest is on its way.
const MARGIN = 32; // bytes of input that one symbol cannot use up

// Probabilities, each with its place in one array.
const IS_MATCH = 0, IS_REP = 192, IS_REP0 = 204, IS_REP1 = 216, IS_REP2 = 228, IS_REP0_LONG = 240;
const SLOT = 432, SPECIAL = 688, ALIGN = 803, MATCH_LENGTH = 819, REP_LENGTH = 1333, LITERAL = 1847;
const LOW = 2, MID = 130, HIGH = 258; // within the 514 of a length: two choices, 16 times 8, 16 times 8, 256

export class Unpacker {
  constructor() {
    this.input = new Uint8Array(1 << 16);
    this.have = 0; // bytes of input
    this.at = 0; // the next of them
    this.out = null;
    this.done = 0; // bytes of output
    this.ended = false;
  }

  // Take what has arrived. Returns what became of it, part of one large array; empty where nothing did.
  push(bytes) {
    if (this.have + bytes.length > this.input.length) {
      const rest = this.input.subarray(this.at, this.have);
      const more = new Uint8Array(Math.max(2 * this.input.length, rest.length + bytes.length));
      more.set(rest);
      [this.input, this.have, this.at] = [more, rest.length, 0];
    }
    this.input.set(bytes, this.have);
    this.have += bytes.length;
    return this.go();
  }

  // Nothing more will arrive.
  end() {
    this.ended = true;
    const last = this.go();
    if (!this.out || this.done < this.out.length) throw new Error("what was loaded is damaged");
    return last;
  }

  begin() {
    const head = this.input;
    const kind = head[0];
    if (kind >= 225) throw new Error("what was loaded is damaged");
    this.lc = kind % 9;
    this.lp = Math.floor(kind / 9) % 5;
    this.pb = Math.floor(kind / 45);
    const size = new DataView(head.buffer, 5, 8);
    if (size.getUint32(4, true) !== 0) throw new Error("what was loaded is damaged");
    this.out = new Uint8Array(size.getUint32(0, true));
    this.probabilities = new Uint16Array(LITERAL + (0x300 << (this.lc + this.lp))).fill(1024);
    this.range = 0xffffffff;
    this.code = 0;
    for (let i = 14; i < 18; i++) this.code = ((this.code << 8) | head[i]) >>> 0;
    this.at = 18;
    this.state = 0;
    this.reps = [0, 0, 0, 0];
  }

  go() {
    if (!this.out) {
      if (this.have < 18) return new Uint8Array(0);
      this.begin();
    }
    const { input, out, probabilities: p, lc, lp, pb } = this;
    const from = this.done, size = out.length;
    const last = this.ended ? this.have + MARGIN : this.have - MARGIN;
    let { at, done, state, range, code } = this;
    let [rep0, rep1, rep2, rep3] = this.reps;

    // Each bit is read in its place, under the probability at `k`: a function for it would take twice the time.
    let k = 0, now = 0, bound = 0, found = 0, base = 0, symbol = 0, bits = 0, long = 0;
    while (done < size && at < last) {
      const place = done & ((1 << pb) - 1);
      k = IS_MATCH + (state << 4) + place;
      now = p[k];
      bound = Math.imul(range >>> 11, now) >>> 0;
      if (code < bound) {
        range = bound;
        p[k] = now + ((2048 - now) >> 5);
        found = 0;
      } else {
        range = (range - bound) >>> 0;
        code = (code - bound) >>> 0;
        p[k] = now - (now >> 5);
        found = 1;
      }
      if (range < 0x1000000) {
        range = (range << 8) >>> 0;
        code = ((code << 8) | input[at++]) >>> 0;
      }
      if (!found) {
        const before = done ? out[done - 1] : 0;
        base = LITERAL + 0x300 * (((done & ((1 << lp) - 1)) << lc) + (before >> (8 - lc)));
        symbol = 1;
        if (state >= 7) {
          let match = out[done - rep0 - 1], offset = 0x100, one = 0;
          do {
            match <<= 1;
            one = match & offset;
            k = base + offset + one + symbol;
            now = p[k];
            bound = Math.imul(range >>> 11, now) >>> 0;
            if (code < bound) {
              range = bound;
              p[k] = now + ((2048 - now) >> 5);
              symbol <<= 1;
              offset &= ~one;
            } else {
              range = (range - bound) >>> 0;
              code = (code - bound) >>> 0;
              p[k] = now - (now >> 5);
              symbol = (symbol << 1) | 1;
              offset &= one;
            }
            if (range < 0x1000000) {
              range = (range << 8) >>> 0;
              code = ((code << 8) | input[at++]) >>> 0;
            }
          } while (symbol < 0x100);
        } else {
          do {
            k = base + symbol;
            now = p[k];
            bound = Math.imul(range >>> 11, now) >>> 0;
            if (code < bound) {
              range = bound;
              p[k] = now + ((2048 - now) >> 5);
              symbol <<= 1;
            } else {
              range = (range - bound) >>> 0;
              code = (code - bound) >>> 0;
              p[k] = now - (now >> 5);
              symbol = (symbol << 1) | 1;
            }
            if (range < 0x1000000) {
              range = (range << 8) >>> 0;
              code = ((code << 8) | input[at++]) >>> 0;
            }
          } while (symbol < 0x100);
        }
        out[done++] = symbol;
        state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
        continue;
      }
      k = IS_REP + state;
      now = p[k];
      bound = Math.imul(range >>> 11, now) >>> 0;
      if (code < bound) {
        range = bound;
        p[k] = now + ((2048 - now) >> 5);
        found = 0;
      } else {
        range = (range - bound) >>> 0;
        code = (code - bound) >>> 0;
        p[k] = now - (now >> 5);
        found = 1;
      }
      if (range < 0x1000000) {
        range = (range << 8) >>> 0;
        code = ((code << 8) | input[at++]) >>> 0;
      }
      const again = found;
      if (again) {
        k = IS_REP0 + state;
        now = p[k];
        bound = Math.imul(range >>> 11, now) >>> 0;
        if (code < bound) {
          range = bound;
          p[k] = now + ((2048 - now) >> 5);
          found = 0;
        } else {
          range = (range - bound) >>> 0;
          code = (code - bound) >>> 0;
          p[k] = now - (now >> 5);
          found = 1;
        }
        if (range < 0x1000000) {
          range = (range << 8) >>> 0;
          code = ((code << 8) | input[at++]) >>> 0;
        }
        if (!found) {
          k = IS_REP0_LONG + (state << 4) + place;
          now = p[k];
          bound = Math.imul(range >>> 11, now) >>> 0;
          if (code < bound) {
            range = bound;
            p[k] = now + ((2048 - now) >> 5);
            found = 0;
          } else {
            range = (range - bound) >>> 0;
            code = (code - bound) >>> 0;
            p[k] = now - (now >> 5);
            found = 1;
          }
          if (range < 0x1000000) {
            range = (range << 8) >>> 0;
            code = ((code << 8) | input[at++]) >>> 0;
          }
          if (!found) {
            state = state < 7 ? 9 : 11;
            if (rep0 >= done) throw new Error("what was loaded is damaged");
            out[done] = out[done - rep0 - 1];
            done++;
            continue;
          }
        } else {
          let far = rep1;
          k = IS_REP1 + state;
          now = p[k];
          bound = Math.imul(range >>> 11, now) >>> 0;
          if (code < bound) {
            range = bound;
            p[k] = now + ((2048 - now) >> 5);
            found = 0;
          } else {
            range = (range - bound) >>> 0;
            code = (code - bound) >>> 0;
            p[k] = now - (now >> 5);
            found = 1;
          }
          if (range < 0x1000000) {
            range = (range << 8) >>> 0;
            code = ((code << 8) | input[at++]) >>> 0;
          }
          if (found) {
            far = rep2;
            k = IS_REP2 + state;
            now = p[k];
            bound = Math.imul(range >>> 11, now) >>> 0;
            if (code < bound) {
              range = bound;
              p[k] = now + ((2048 - now) >> 5);
              found = 0;
            } else {
              range = (range - bound) >>> 0;
              code = (code - bound) >>> 0;
              p[k] = now - (now >> 5);
              found = 1;
            }
            if (range < 0x1000000) {
              range = (range << 8) >>> 0;
              code = ((code << 8) | input[at++]) >>> 0;
            }
            if (found) {
              far = rep3;
              rep3 = rep2;
            }
            rep2 = rep1;
          }
          rep1 = rep0;
          rep0 = far;
        }
      } else {
        rep3 = rep2;
        rep2 = rep1;
        rep1 = rep0;
      }
      // How long.
      const kind = again ? REP_LENGTH : MATCH_LENGTH;
      k = kind;
      now = p[k];
      bound = Math.imul(range >>> 11, now) >>> 0;
      if (code < bound) {
        range = bound;
        p[k] = now + ((2048 - now) >> 5);
        found = 0;
      } else {
        range = (range - bound) >>> 0;
        code = (code - bound) >>> 0;
        p[k] = now - (now >> 5);
        found = 1;
      }
      if (range < 0x1000000) {
        range = (range << 8) >>> 0;
        code = ((code << 8) | input[at++]) >>> 0;
      }
      if (!found) {
        [base, bits, long] = [kind + LOW + (place << 3), 3, 2];
      } else {
        k = kind + 1;
        now = p[k];
        bound = Math.imul(range >>> 11, now) >>> 0;
        if (code < bound) {
          range = bound;
          p[k] = now + ((2048 - now) >> 5);
          found = 0;
        } else {
          range = (range - bound) >>> 0;
          code = (code - bound) >>> 0;
          p[k] = now - (now >> 5);
          found = 1;
        }
        if (range < 0x1000000) {
          range = (range << 8) >>> 0;
          code = ((code << 8) | input[at++]) >>> 0;
        }
        if (!found) [base, bits, long] = [kind + MID + (place << 3), 3, 10];
        else [base, bits, long] = [kind + HIGH, 8, 18];
      }
      symbol = 1;
      for (let n = 0; n < bits; n++) {
        k = base + symbol;
        now = p[k];
        bound = Math.imul(range >>> 11, now) >>> 0;
        if (code < bound) {
          range = bound;
          p[k] = now + ((2048 - now) >> 5);
          symbol <<= 1;
        } else {
          range = (range - bound) >>> 0;
          code = (code - bound) >>> 0;
          p[k] = now - (now >> 5);
          symbol = (symbol << 1) | 1;
        }
        if (range < 0x1000000) {
          range = (range << 8) >>> 0;
          code = ((code << 8) | input[at++]) >>> 0;
        }
      }
      long += symbol - (1 << bits);
      if (again) state = state < 7 ? 8 : 11;
      else {
        state = state < 7 ? 7 : 10;
        // How far back: its size first, then its bits.
        base = SLOT + (Math.min(long - 2, 3) << 6);
        symbol = 1;
        for (let n = 0; n < 6; n++) {
          k = base + symbol;
          now = p[k];
          bound = Math.imul(range >>> 11, now) >>> 0;
          if (code < bound) {
            range = bound;
            p[k] = now + ((2048 - now) >> 5);
            symbol <<= 1;
          } else {
            range = (range - bound) >>> 0;
            code = (code - bound) >>> 0;
            p[k] = now - (now >> 5);
            symbol = (symbol << 1) | 1;
          }
          if (range < 0x1000000) {
            range = (range << 8) >>> 0;
            code = ((code << 8) | input[at++]) >>> 0;
          }
        }
        const slot = symbol - 64;
        rep0 = slot;
        if (slot >= 4) {
          bits = (slot >> 1) - 1;
          rep0 = (2 | (slot & 1)) << bits;
          base = SPECIAL + rep0 - slot - 1;
          if (slot >= 14) {
            let direct = 0;
            for (let n = bits - 4; n > 0; n--) {
              range >>>= 1;
              direct <<= 1;
              if (code >= range) {
                code = (code - range) >>> 0;
                direct |= 1;
              }
              if (range < 0x1000000) {
                range = (range << 8) >>> 0;
                code = ((code << 8) | input[at++]) >>> 0;
              }
            }
            rep0 += direct << 4;
            [base, bits] = [ALIGN, 4];
          }
          symbol = 1;
          for (let n = 0; n < bits; n++) {
            k = base + symbol;
            now = p[k];
            bound = Math.imul(range >>> 11, now) >>> 0;
            if (code < bound) {
              range = bound;
              p[k] = now + ((2048 - now) >> 5);
              symbol <<= 1;
            } else {
              range = (range - bound) >>> 0;
              code = (code - bound) >>> 0;
              p[k] = now - (now >> 5);
              symbol = (symbol << 1) | 1;
              rep0 += 1 << n;
            }
            if (range < 0x1000000) {
              range = (range << 8) >>> 0;
              code = ((code << 8) | input[at++]) >>> 0;
            }
          }
        }
      }
      if (rep0 < 0 || rep0 >= done) throw new Error("what was loaded is damaged");
      let source = done - rep0 - 1;
      const stop = Math.min(done + long, size);
      while (done < stop) out[done++] = out[source++];
    }
    Object.assign(this, { at, done, state, range, code, reps: [rep0, rep1, rep2, rep3] });
    return out.subarray(from, done);
  }
}

// The stream of what is packed in the stream `packed`.
export function unpacked(packed) {
  const one = new Unpacker();
  const give = (bytes, to) => bytes.length && to.enqueue(bytes);
  return packed.pipeThrough(
    new TransformStream({
      transform: (bytes, to) => give(one.push(bytes), to),
      flush: (to) => give(one.end(), to),
    }),
  );
}

// All that is packed in the stream `packed`, once it is there.
export async function whole(packed) {
  const one = new Unpacker();
  const reader = packed.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    one.push(value);
  }
  one.end();
  return one.out;
}
