/** Heat and power: fans, larger vents, shade, a larger battery. */
import { set } from "../../design/index.js";
import { Temperature } from "../../quantity/index.js";
import { fineLength } from "../figures.js";
import type { Option } from "../option.js";
import { type Mending, type Offer, option, setting } from "./offer.js";

/** Fans as their sheets say them, in both systems: a small and a larger one of a case; common practice, no source. */
const fans = {
  inch: [
    "{ flow: 15 cfm, pressure: 25 Pa }",
    "{ flow: 30 cfm, pressure: 40 Pa }",
    "{ flow: 90 cfm, pressure: 90 Pa }",
  ],
  metric: [
    "{ flow: 25 m3/h, pressure: 25 Pa }",
    "{ flow: 50 m3/h, pressure: 40 Pa }",
    "{ flow: 150 m3/h, pressure: 90 Pa }",
  ],
} as const;

/** More air: a fan, or larger vents. */
export const moreAir: Offer = (mending) => {
  const { job, subject } = mending;
  const cooling = job.case.services.cooling.find(({ section }) => section === subject);
  if (!cooling) return [];
  const fan = fans[job.case.units].map((what) =>
    setting(
      mending,
      `services.cooling.${subject}.fan`,
      what,
      `Give ${subject} a fan: ${what.replace(/[{}]/g, "").trim()}.`,
      {
        unpriced: "a fan",
      },
    ),
  );
  return [...fan, ...largerVents(mending, [cooling.letIn, cooling.letOut])];
};

/** Both vents higher by the same share. */
function largerVents(mending: Mending, names: readonly string[]): readonly Option[] {
  const { job, subject } = mending;
  const vents = names.flatMap((name) => {
    const [face, ...rest] = name.split(".");
    const panel = job.parts.panels.find(({ id }) => id === `${subject}.${face}`);
    const found = panel?.openings.find((one) => one.name === rest.join("."));
    return found && (found.kind === "rectangle" || found.kind === "slot") ? [{ face, ...found }] : [];
  });
  if (vents.length === 0) return [];
  return [2, 3, 4].map((times) =>
    option(mending, {
      lever: `sections.${subject} vents`,
      setting: `${times}`,
      words: `Cut the vents of ${subject} ${times} times as high: ${vents.map(({ name }) => name).join(", ")}.`,
      changes: vents.map(({ face, name, kind, height }) =>
        set(
          `sections.${subject}.panels.${face}.openings.${name}.${kind}.height`,
          fineLength(times * height, job.case.units),
        ),
      ),
    }),
  );
}

/** Shade, and a light colour. */
export const shade: Offer = (mending) => {
  const { sun } = mending.job.case.services;
  if (!sun) return [];
  const light =
    sun.facing === "dark"
      ? [setting(mending, "services.sun.facing", "light", "Take a light laminate for the outside.")]
      : [];
  return [
    ...light,
    setting(mending, "services.sun.strength", "0 W/m2", "Keep it in the shade wherever it works.", {
      rule: true,
    }),
  ];
};

/** Switched off on the hottest days: what is then the hottest air outside. */
export const coolerDays: Offer = (mending) => {
  const { job } = mending;
  const { hottest } = job.case.services;
  if (hottest === undefined) return [];
  return [1, 3, 6].map((less) => {
    const at = Temperature.show(Temperature.si(hottest - less), { system: job.case.units, digits: 3 });
    return setting(
      mending,
      "services.hottest",
      at,
      `Switch it off where the air outside is hotter than ${at}.`,
      {
        rule: true,
      },
    );
  });
};

/** A larger battery. */
export const largerBattery: Offer = (mending) => {
  const { job, over } = mending;
  const battery = job.case.services.battery;
  if (!battery) return [];
  const hours = Number(battery.capacity) / 3600;
  return [1.02, 1.3].map((more) => {
    const capacity = `${5 * Math.ceil((hours * over * more) / 5)} Ah`;
    return setting(mending, "services.battery.capacity", capacity, `Take a battery of ${capacity}.`, {
      unpriced: "a larger battery",
    });
  });
};

/** A device that trips before a fault outdoors kills: what the rules for that voltage ask of it. */
export const trippingDevice: Offer = (mending) => {
  const mains = mending.job.case.services.mains;
  if (!mains) return [];
  const trips = mains.voltage <= lowMains ? "6 mA" : "30 mA";
  return [
    setting(
      mending,
      "services.mains.residual current",
      trips,
      `Plug it in outdoors through a device that trips at ${trips} to earth.`,
      { unpriced: "a residual-current device" },
    ),
  ];
};

/** Up to so many volts the rules ask for the more sensitive device, V. */
const lowMains = 150;

/** Usual fuses, A, and gauges of wire, the thinnest first; common practice, no source. */
const fuses = [5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100] as const;
const gauges = [14, 12, 10, 8, 6, 4] as const;

/** A fuse above the current of all loads, and wires that may stand behind it. */
export const batteryWires: Offer = (mending) => {
  const { services, contents } = mending.job.case;
  const { battery } = services;
  if (!battery) return [];
  const watts = contents.reduce((sum, { power = 0 }) => sum + power, 0);
  const current = watts / (battery.voltage * battery.efficiency);
  const fuse = fuses.find((one) => one >= 1.2 * current);
  if (fuse === undefined) return [];
  return gauges.map((gauge) =>
    option(mending, {
      lever: "services.battery.wire gauge",
      setting: `${gauge} behind ${fuse} A`,
      words: `Set a fuse of ${fuse} A at the battery and run wire of gauge ${gauge} from it.`,
      changes: [set("services.battery.fuse", `${fuse} A`), set("services.battery.wire gauge", `${gauge}`)],
      unpriced: "a fuse with its holder and wire",
    }),
  );
};
