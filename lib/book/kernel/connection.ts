/** Where the sockets of a kernel are: the content of a Jupyter connection file. */

/** The five sockets of a kernel. */
export type Channel = "shell" | "iopub" | "stdin" | "control" | "hb";

/** A connection file, as every Jupyter client writes it. */
export interface Connection {
  readonly transport: "ipc" | "tcp";
  /** Host for tcp, path prefix for ipc. */
  readonly ip: string;
  readonly shell_port: number;
  readonly iopub_port: number;
  readonly stdin_port: number;
  readonly control_port: number;
  readonly hb_port: number;
  /** Shared secret that signs every message. */
  readonly key: string;
  readonly signature_scheme: "hmac-sha256";
}

/** The address of one socket, spelled as Jupyter spells it. */
export function socketAddress(connection: Connection, channel: Channel): string {
  const { transport, ip } = connection;
  const port = connection[`${channel}_port`];
  return transport === "tcp" ? `tcp://${ip}:${port}` : `ipc://${ip}-${port}`;
}
