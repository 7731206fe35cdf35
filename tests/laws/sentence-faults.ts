/** What no sentence and no label of the product may be, by name. */
import { mostWords, sentencesOf, terms } from "../../lib/page/index.js";
import type { Told } from "./told-text.js";

/** Words of a sentence: what has a letter or a figure in it. */
const wordsIn = (sentence: string): number =>
  sentence.split(/\s+/).filter((word) => /[A-Za-z0-9]/.test(word)).length;

/** Forms that are verbs wherever they stand. */
const always = `
  shares cost shear adds agrees allows answers are asked asks balances be bear bears becomes begins bends blows breaks burns came can
  cannot carries changes charges closes come comes costs counts covers crazes crosses crowds crushes cuts decides
  depends did differ do does draws drops ends enters fail fails falls feels fills finds fits flies follows forbids
  gathers gave gets gives goes got grips grows had hangs harms has have heats helps hits holds hums hurts is jams
  joins keeps kills knocks knows lacks lands lasts learns leaves lets lies loads looses loses lowers make makes
  marks may means meet meets melts moved moves multiplies must names needs nips opens outweighs overlaps passes pays
  pinches presses prints protects pull pulls pushes quiets racks rattles reaches reads reckons resists rests rides
  rises rolls runs rusts sags saves says scatters sees send sends serves sets settled settles shakes shall share
  shifts should shows shuts sinks sits slant slides slips snaps spreads squares stand stands stays stiffens stops
  stresses strikes strips survives swings take takes tears tells throws tips tires told took touches travels trips
  turns uses wait waits wants warms warns was weighs went were will works would wraps`
  .trim()
  .split(/\s+/);

/** Verbs of orders and of many, in their plain form: one begins a sentence or a part of it, or follows its subject. */
const plain = `
  add agree allow ask avoid balance become begin bend bolt brake break bring brush build burn buy call carry cast
  catch change charge check chock choose clamp clean clear clip close coat come compare cost count cover cut deburr
  decide draw drill drive drop dry empty fall fasten feel file fill find finish fit fix float fly follow force get
  give glue go grip grow hang hit hold hook join keep knock know lash lay lead lean leave let lie lift lock look
  loosen lower make mark mask measure meet mill move multiply name need open overlap pass pay place plan plane plug
  press print prop protect prove pull push put raise reach read remain repeat replace rest rivet roll rub run sag
  sand saw say screw seal set settle shade shake share shift shim show shut sink sit slide slip snap spray spread
  stack stand stay steady stick stop store strap stretch strike support swell swing switch take tear test throw tick
  tie tighten time touch trim trust try turn twist unplug use varnish wait walk watch wear weigh wet wipe work wrap
  write`
  .trim()
  .split(/\s+/);

const verbsAlways: ReadonlySet<string> = new Set(always);
const verbsPlain: ReadonlySet<string> = new Set(plain);

/** What may stand before an order or before a verb of many. */
const before =
  /(?:^|☐ |[,;:.(] |\b(?:and|or|then|to|not|never|so|now|both|they|you|we|who|that|which|nobody|somebody|people|once|there|first|only|always|also|them|hard|further|each|all|none|never) )(?:\d+ )?$/i;

/** Whether a sentence has a verb: one that is nothing else, or the plain form of one where an order or its subject is. */
function hasVerb(sentence: string): boolean {
  const words = [...sentence.matchAll(/[A-Za-z]+/g)];
  return words.some(([word], i) => {
    const plainForm = word.toLowerCase();
    if (verbsAlways.has(plainForm)) return true;
    const { index = 0 } = words[i] ?? {};
    const afterMany = /s$/.test(words[i - 1]?.[0] ?? "");
    return verbsPlain.has(plainForm) && (afterMany || before.test(sentence.slice(0, index)));
  });
}

/** Abbreviations that need no word of explanation: units and the names of standards. */
const known: ReadonlySet<string> = new Set(
  `EN ISO IEC IEEE CFR ASTM ASCE ANSI ICWM NFPA MIL STD UL NIOSH ASHRAE IPX IP USD EUR GBP CHF CSV SVG PDF DXF US UK LED USB`.split(
    " ",
  ),
);
const explained = terms.flatMap(({ name, forms = [] }) => [name, ...forms]);

/** Runs of capitals, and shortened words. */
function unexplained(text: string): readonly string[] {
  const plain = text.replace(/"[^"]*"/g, "");
  const capitals = plain.match(/(?<![\w-])[A-Z]{2,}(?![\w])/g) ?? [];
  const shortened =
    plain.match(
      /\b(?:approx|incl|max|min|resp|e\.g|i\.e|etc|qty|dia|dim|ref|temp|avg|cog|spec|std|nr|ca)\./g,
    ) ?? [];
  return [
    ...capitals.filter((one) => !known.has(one) && !explained.includes(one) && !shouted.has(one)),
    ...shortened,
  ];
}

/** Whole words that the papers print in capitals so that nobody overlooks them. */
const shouted: ReadonlySet<string> = new Set(
  "NOT RELEASED OUTSIDE INSIDE FACE UP TOP FRONT BACK LEFT RIGHT".split(" "),
);

/** Things that are counted. */
const counted =
  "rivet|screw|bolt|fastener|strap|sheet|question|caster|wheel|handle|hour|day|job|month|year|pair|mount|insert|latch|trip|pixel|thing|panel|piece|bar|place|hole|corner|step|need|section|person|can|pack|roll|cable|socket|plug|opening|stack|drawer|shelf|nut|washer|box|foot|round|turn|strip|cut";
const many = `${counted.replaceAll("|", "s|")}s|latches|people|boxes|feet|shelves`;
const severals = counted.replace("|foot", "");

/** What no text may be, whether it is a sentence or a label. */
const labelFaults: Readonly<Record<string, (text: string) => boolean>> = {
  "has a blank too many or before a mark": (one) => /\S {2,}\S|\s[,.;:](?=\s|$)/.test(one),
  "tells a length in two systems": (one) => /\d in \([\d.]+ (mm|m)\)|\d (mm|m) \([\d./-]+ in\)/.test(one),
  "tells a mass or a force in two systems": (one) =>
    /\d lbf? \([\d.]+ (kg|N)\)|\d (kg|N) \([\d.]+ lbf?\)/.test(one),
  "has a unit twice": (one) => /\b(mm|in|kg|lbf?|N|psi|MPa|m|ft|W|V|A|°C|°F) \1\b/.test(one),
  "has a word twice": (one) => /\b(?!that\b|had\b)([a-z]{2,}) \1\b/i.test(one.replace(/"[^"]*"/g, "")),
  "counts one as many": (one) =>
    new RegExp(`(?<![\\d.,/\\-\\u2011])\\b(1|one) (${many})\\b(?! (of|in) )`).test(one),
  "counts many as one": (one) =>
    new RegExp(
      `(?<![\\d.,/\\-\\u2011])\\b([2-9]|[1-9]\\d+) (${severals})\\b(?![ -](of|plies|ply|\\d|head|hole|stack|side|drawer|latch|pad|face|strip|plate|tail|bolt))`,
    ).test(one),
  "is finer than sense": (one) => /\d(e-\d|\.0{4,}\d)/.test(one),
  "has more digits than anybody measures": (one) =>
    /(?<![\d.\u202f/-])(?:\d\.\d{4,}|\d{2}\.\d{3,}|\d{3}\.\d{2,}|\d{4,}\.\d+|\d[\d\u202f]{3,}[1-9]) (?:lbf?|kg|N|psi|MPa|kPa|GPa|W|V|A|Hz|g|J|m\/s|ft\/s|km\/h|mph|°|°C|°F|%)(?![\w/])/.test(
      one,
    ),
  "shows what went wrong within": (one) => /undefined|NaN|\[object|Infinity|\bnull\b/.test(one),
  "says that there is no source": (one) => /\bno source\b/i.test(one),
  "has an abbreviation that nobody explains": (one) => unexplained(one).length > 0,
};

/** Words that stand as a sentence where a reader looks for nothing else. */
const stamps: ReadonlySet<string> = new Set(["RELEASED.", "NOT RELEASED."]);

const several =
  "rivets|screws|fasteners|handles|casters|latches|slides|hinges|walls|panels|straps|mounts|inserts";
const inPhrase = new RegExp(
  `\\b(?:of|by|with|for|on|in|than|under|between|at|from|to|and|which|what) (?:\\w+ )*?(?:${several})\\b`,
  "g",
);

/** Whether a plain subject has the verb of another number. */
function disagrees(sentence: string): boolean {
  const helped = /\b(lets?|does|do|may|can|must|makes?|should|would|will) (it|he|she)\b/i.test(sentence);
  const oneAsMany =
    /\b(it|he|she) (hold|need|take|give|stand|sag|lie|bear|weigh|reach|tip|have|are|do|go)\b(?!n't)/i;
  const manyAsOne =
    /\b(they|these|those|all of them|both) (holds|needs|takes|gives|stands|sags|lies|bears|weighs|reaches|tips|has|is|does|goes)\b/i;
  const bare = sentence.replace(inPhrase, "it");
  const namedAsOne = new RegExp(
    `\\b(?:${several}) (?:is|has|holds|needs|takes|stands|lies|bears|does)\\b`,
    "i",
  );
  return (!helped && oneAsMany.test(sentence)) || manyAsOne.test(sentence) || namedAsOne.test(bare);
}

/** What no sentence may be besides. */
const sentenceFaults: Readonly<Record<string, (sentence: string) => boolean>> = {
  "has more than 25 words": (one) => wordsIn(one) > mostWords,
  "has no capital or number at its head": (one) =>
    !/^["(☐]?\s?[A-Z0-9]/.test(one) && !/^[a-z][\w -]*\.[a-z]/.test(one),
  "has no mark at its end": (one) => !/[.?!:]["')]?$/.test(one),
  "has no verb": (one) => !stamps.has(one) && !hasVerb(one),
  "has one do what many do, or many what one does": (one) => disagrees(one),
};

/** Each fault with the texts that have it, one of a kind. */
export function faultsIn(all: readonly Told[]): readonly string[] {
  const found = new Map<string, string>();
  const note = (fault: string, where: string, text: string): void => {
    const kind = `${fault}: ${where.split(".").slice(0, 2).join(".")} ${text.replace(/[\d.,/-]+/g, "#").slice(0, 40)}`;
    if (!found.has(kind)) found.set(kind, `${where} ${fault}: ${text}`);
  };
  for (const { where, text, as } of all) {
    for (const [fault, has] of Object.entries(labelFaults)) if (has(text)) note(fault, where, text);
    for (const sentence of as === "sentences" ? sentencesOf(text) : []) {
      for (const [fault, has] of Object.entries(sentenceFaults))
        if (has(sentence)) note(fault, where, sentence);
    }
  }
  return [...found.values()];
}
