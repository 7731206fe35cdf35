/** A chart in the other system of units: its numbers, axes, limits and slider, so that ticks stand at round numbers. */
import type { Json } from "../view.js";
import type { UnitChange, UnitChanges } from "./other-units.js";

/**
 * A chart's specification in the units of a system. A field whose title names a unit that the system does not have, such
 * as "Sag (mm)", changes with all its numbers. It rests on nothing but what it is given, so that a page can carry it as text.
 *
 * @param changed the changes of the system
 * @param said what becomes of its words
 */
export function chartInUnits(spec: Json, changed: UnitChanges, said: (text: string) => string): Json {
  type Block = { readonly [name: string]: Json };
  const isBlock = (part: Json | undefined): part is Block =>
    typeof part === "object" && part !== null && !Array.isArray(part);
  const changeOf = (title: Json | undefined): UnitChange | undefined => {
    const whole = Array.isArray(title) ? title.join(" ") : title;
    const [, unit = ""] = (typeof whole === "string" && /\((\S+)\)$/.exec(whole)) || [];
    const [, per = "", measure = ""] = /^([A-Z]{3}\/|min\/)?(.*)$/.exec(unit) ?? [];
    const own = Object.keys(changed).includes(measure) ? changed[measure] : undefined;
    return own && per !== "" ? { to: `${per}${own.to}`, times: 1 / own.times } : own;
  };
  const axisOf = (name: string): string => (/^[xy]2?$/.test(name) ? name.charAt(0) : "");
  const visit = (part: Json, name: string, see: (block: Block, name: string) => void): void => {
    if (Array.isArray(part)) for (const one of part) visit(one, name, see);
    if (!isBlock(part)) return;
    see(part, name);
    for (const [inner, one] of Object.entries(part)) if (inner !== "values") visit(one, inner, see);
  };
  const fields = new Map<Json | undefined, UnitChange>();
  const axes = new Map<string, UnitChange>();
  const sliders = new Map<Json | undefined, UnitChange>();
  visit(spec, "", (block, name) => {
    const change = changeOf(block.title);
    if (change && block.field !== undefined) fields.set(block.field, change);
    if (change && axisOf(name) !== "") axes.set(axisOf(name), change);
    const slid = isBlock(block.bind) ? changeOf(block.bind.name) : undefined;
    if (slid) sliders.set(block.name, slid);
  });
  visit(spec, "", (block, name) => {
    const axis = axes.get(axisOf(name));
    if (axis && block.field !== undefined) fields.set(block.field, axis);
    const [, field, slider] =
      (typeof block.filter === "string" && /datum\["([^"]*)"\] - (\w+)/.exec(block.filter)) || [];
    const slid = sliders.get(slider);
    if (slid) fields.set(field, slid);
  });
  const changedNumber = (value: Json, { times, plus = 0 }: UnitChange, digits = 6): Json =>
    typeof value === "number" ? Number((value * times + plus).toPrecision(digits)) : value;
  const row = (part: Json): Json =>
    isBlock(part)
      ? Object.fromEntries(
          Object.entries(part).map(([field, value]) => {
            const change = fields.get(field);
            return [
              field,
              typeof value === "string" ? said(value) : change ? changedNumber(value, change) : value,
            ];
          }),
        )
      : part;
  const test = (text: string): string =>
    text
      .replace(
        /(datum\["([^"]*)"\] [<>=]+ )([-\d.e]+)/g,
        (all, start: string, field: string, number: string) => {
          const change = fields.get(field);
          return change ? `${start}${changedNumber(Number(number), change)}` : all;
        },
      )
      .replace(
        /(datum\["([^"]*)"\] - \w+\) < )([-\d.e]+)/g,
        (all, start: string, field: string, number: string) => {
          const change = fields.get(field);
          return change ? `${start}${changedNumber(Number(number), { ...change, plus: 0 })}` : all;
        },
      );
  // A reader sees a slider's numbers, and its filter allows half a step.
  const slid = (bind: Block, change: UnitChange): Block =>
    Object.fromEntries(
      Object.entries(bind).map(([name, value]) => [
        name,
        Array.isArray(value)
          ? value.map((one) => changedNumber(one, change, 4))
          : changedNumber(value, name === "step" ? { ...change, plus: 0 } : change, 4),
      ]),
    );
  const made = (part: Json, name: string): Json => {
    if (typeof part === "string") {
      if (/^(field|type|as|\$schema|name)$/.test(name)) {
        const change = name === "name" ? changeOf(part) : undefined;
        return change ? part.replace(/\(\S+\)$/, `(${change.to})`) : part;
      }
      if (part.includes("datum")) return test(part);
      const change = changeOf(part);
      return change ? part.replace(/\(\S+\)$/, `(${change.to})`) : said(part);
    }
    if (Array.isArray(part)) return part.map((one) => (name === "values" ? row(one) : made(one, name)));
    if (!isBlock(part)) return part;
    const slider = isBlock(part.bind) ? sliders.get(part.name) : undefined;
    const axis = axes.get(axisOf(name));
    return Object.fromEntries(
      Object.entries(part).map(([inner, value]) => {
        if (slider && inner === "value") return [inner, changedNumber(value, slider, 4)];
        if (slider && inner === "bind" && isBlock(value)) return [inner, made(slid(value, slider), inner)];
        if (axis && inner === "datum") return [inner, changedNumber(value, axis)];
        return [inner, made(value, inner)];
      }),
    );
  };
  return made(spec, "");
}
