// Unpacks one file aside. It is sent an address and answers the bytes, or null.
import { whole } from "./unpack.js";

self.onmessage = async (event) => {
  let made = null;
  try {
    const found = await fetch(event.data);
    if (found.ok) made = await whole(found.body);
  } catch (error) {
    console.warn(error); // whoever asked unpacks it itself
  }
  self.postMessage(made, made ? [made.buffer] : []);
};
