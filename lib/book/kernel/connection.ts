/** Where the sockets of a kernel are: the content of a Jupyter connection file, and a new one for a new kernel. */
import { randomBytes } from "node:crypto";
import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { type AddressInfo, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runs } from "../running-process.js";

/** The five sockets of a kernel. */
type Channel = "shell" | "iopub" | "stdin" | "control" | "hb";

/** A connection file, as every Jupyter client writes it. */
export interface Connection {
  /** Sockets of the file system, or ports. */
  readonly transport: "ipc" | "tcp";
  /** Host for tcp, path prefix for ipc. */
  readonly ip: string;
  /** Of requests. */
  readonly shell_port: number;
  /** Of what is published. */
  readonly iopub_port: number;
  /** Of questions to the reader. */
  readonly stdin_port: number;
  /** Of requests that pass cells that wait. */
  readonly control_port: number;
  /** Of the heartbeat. */
  readonly hb_port: number;
  /** Shared secret that signs every message. */
  readonly key: string;
  /** How messages are signed. */
  readonly signature_scheme: "hmac-sha256";
}

/** The address of one socket, spelled as Jupyter spells it. */
export function socketAddress(connection: Connection, channel: Channel): string {
  const { transport, ip } = connection;
  const port = connection[`${channel}_port`];
  return transport === "tcp" ? `tcp://${ip}:${port}` : `ipc://${ip}-${port}`;
}

/** How client and kernel meet: sockets in a private folder, or ports of this machine. */
export type Transport = Connection["transport"];

/** A connection ready for a kernel. */
export interface NewConnection {
  /** What the file says. */
  readonly connection: Connection;
  /** The connection file. */
  readonly file: string;
  /** Removes the file and the sockets. */
  remove(): Promise<void>;
}

/** Sockets in a folder cannot be had on Windows. */
export const defaultTransport: Transport = process.platform === "win32" ? "tcp" : "ipc";

/** Makes a connection; only this user can read its key. */
export async function newConnection(transport: Transport): Promise<NewConnection> {
  await clearLeftBehind();
  // mkdtemp makes a folder that only its owner may enter.
  const folder = await mkdtemp(join(tmpdir(), `${prefix}${process.pid}-`));
  const [shell_port = 1, iopub_port = 2, stdin_port = 3, control_port = 4, hb_port = 5] =
    transport === "tcp" ? await freePorts(5) : [];
  const connection: Connection = {
    transport,
    ip: transport === "tcp" ? "127.0.0.1" : join(folder, "kernel"),
    ...{ shell_port, iopub_port, stdin_port, control_port, hb_port },
    key: randomBytes(32).toString("hex"),
    signature_scheme: "hmac-sha256",
  };
  const file = join(folder, "connection.json");
  await writeFile(file, JSON.stringify(connection), { mode: 0o600 });
  return { connection, file, remove: () => rm(folder, { recursive: true, force: true }) };
}

/** Folders of connections are named after the process that made them. */
const prefix = "casewright-kernel-";

/** Removes the folders, with their keys, of processes that were killed before they could. */
async function clearLeftBehind(): Promise<void> {
  const names = await readdir(tmpdir());
  const left = names.filter((name) => {
    const [, pid] = new RegExp(`^${prefix}(\\d+)-\\w{6}$`).exec(name) ?? [];
    return pid !== undefined && !runs(Number(pid));
  });
  // One of somebody else may not be removed, and is theirs to clear.
  await Promise.allSettled(left.map((name) => rm(join(tmpdir(), name), { recursive: true, force: true })));
}

/** Ports that are free now. All are held together, so that they differ. */
async function freePorts(count: number): Promise<number[]> {
  const servers = await Promise.all(Array.from({ length: count }, openPort));
  const ports = servers.map((server) => (server.address() as AddressInfo).port);
  await Promise.all(servers.map((server) => new Promise((closed) => server.close(closed))));
  return ports;
}

function openPort(): Promise<ReturnType<typeof createServer>> {
  return new Promise((opened, failed) => {
    const server = createServer().once("error", failed);
    server.listen(0, "127.0.0.1", () => opened(server));
  });
}
