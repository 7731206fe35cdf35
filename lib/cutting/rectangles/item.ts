/** Rectangles in plain numbers, each widened by a kerf on two sides, as is the sheet they lie on. */

/** One way a piece may lie. */
export interface Way {
  /** Along the sheet. */ readonly length: number;
  /** Across the sheet. */ readonly width: number;
  /** Whether the piece's own length lies across the sheet. */ readonly turned: boolean;
}

/** A single piece. */
export interface Item {
  /** As in the piece that asked for it. */ readonly name: string;
  /** How it may lie; at least one way. */ readonly ways: readonly Way[];
}

/** A sheet to lay pieces on. */
export interface Board {
  /** Index of the stock. */ readonly stock: number;
  /** Along the sheet. */ readonly length: number;
  /** Across the sheet. */ readonly width: number;
}

/** A piece where it lies. */
export interface Laid extends Way {
  /** The piece. */ readonly item: Item;
  /** Nearest edge, along the sheet. */ readonly x: number;
  /** Nearest edge, across the sheet. */ readonly y: number;
}

/** Area of a piece with its kerfs. */
export function areaOf({ ways: [way] }: Item): number {
  return way ? way.length * way.width : 0;
}
