import { expect, test } from "vitest";
import { decode } from "../../lib/host/decode.js";

test("signs that only Windows-1252 has are read as it has them", () => {
  // Its code chart: 0x80 €, 0x84 „, 0x93 “, 0x96 –; 0xe4 ä, 0xf6 ö and 0xfc ü as in Latin-1.
  const bytes = [..."12 \x80, B\xe4cker & S\xf6hne \x84Stahl\x93, 9 \x96 12 mm f\xfcr"].map((sign) =>
    sign.charCodeAt(0),
  );
  expect(decode(Uint8Array.from(bytes))).toEqual({ text: "12 €, Bäcker & Söhne „Stahl“, 9 – 12 mm für" });
});

test("a byte that Windows-1252 leaves open is no text", () => {
  expect(decode(Uint8Array.from([0x61, 0x81, 0xe4, 0x62]))).toHaveProperty("fault");
});
