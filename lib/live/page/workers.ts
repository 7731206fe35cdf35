/** The two workers behind the page; one that ends is begun again with the newest files. */
import type { Asked, Share, Told } from "../messages.js";

/** Workers of both shares. */
export class Workers {
  readonly #address: string;
  readonly #job: string;
  readonly #heard: (message: Told) => void;
  readonly #ended: (share: Share, words: string) => void;
  readonly #workers = new Map<Share, Worker>();

  /**
   * @param script the library as a classic script
   * @param heard told every message
   * @param ended told of a worker that ended, and why
   */
  constructor(
    script: string,
    job: string,
    heard: (message: Told) => void,
    ended: (share: Share, words: string) => void,
  ) {
    this.#address = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
    this.#job = job;
    this.#heard = heard;
    this.#ended = ended;
    for (const share of ["quick", "deep"] as const) this.begin(share);
  }

  /** Begins a share's worker anew. */
  begin(share: Share): void {
    this.#workers.get(share)?.terminate();
    const worker = new Worker(this.#address);
    worker.onmessage = ({ data }: MessageEvent<Told>) => this.#heard(data);
    worker.onerror = (event) => {
      event.preventDefault();
      this.#ended(share, event.message);
    };
    this.#workers.set(share, worker);
    this.ask(share, { kind: "begin", share, job: this.#job });
  }

  /** Sends a message to a share's worker. */
  ask(share: Share, message: Asked): void {
    this.#workers.get(share)?.postMessage(message);
  }
}
