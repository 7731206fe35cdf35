/** What runs in a worker of the page: the library, waiting for messages. */
import { Engine } from "./engine.js";
import type { Asked, Told } from "./messages.js";

/** The parts of a worker used here; the library is compiled without a browser's types. */
interface Worker {
  addEventListener(type: "message", listener: (event: { readonly data: Asked }) => void): void;
  postMessage(message: Told): void;
}

const worker = globalThis as unknown as Worker;

const engine = new Engine({
  tell: (message) => worker.postMessage(message),
  pause: () => new Promise((go) => setTimeout(go, 0)),
});

worker.addEventListener("message", ({ data }) => {
  engine.take(data).catch((error: Error) => {
    // thrown outside the promise, so that the page hears of it as the worker's error
    setTimeout(() => {
      throw error;
    }, 0);
  });
});
