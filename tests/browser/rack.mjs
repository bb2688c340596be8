// Invented garments, as pages in storage and as an exported file, for tests and pictures. No place, piece or price is real.

import { crc32 } from "node:zlib";

/** Every check of jeans with its answers, worst first, as the catalog names them; journey.test.mjs tells when one is renamed. */
export const CHECKS = Object.entries({
  hang: "unequal slightly equal",
  cutting: "pieced plain falls meets",
  "cloth-hand": "papery limp firm lively",
  "cloth-even": "faulty patchy even",
  "light-through": "open uneven closed",
  "cloth-weight": "under-10 10-to-12 12-to-14 14-to-16 over-16",
  stretch: "rigid comfort stretch power",
  growth: "over-7 5-to-7 3-to-5 under-3",
  "wash-level": "raw rinsed light stone many-step",
  "wash-depth": "flat varied deep",
  "dry-work": "none laser hand both torn",
  repairs: "running weak backed worked",
  "finish-craft": "hard abrupt soft natural",
  "finish-harm": "worn thin slight none",
  "rub-off": "strong plain faint none",
  "rows-true": "wander slight parallel crisp",
  "stitch-even": "skips uneven even even-all",
  spi: "misfit border suits",
  "starts-stops": "loose untidy back-tacked hidden",
  restarts: "bunched crooked in-line none",
  "thread-ends": "over-10 5-to-10 2-to-4 clean",
  pucker: "gathered plain faint flat",
  "seam-waves": "wavy places slight flat",
  tacks: "few some most all",
  waistband: "open uneven flat square",
  "hem-stitch": "wrapped lock chain",
  closure: "sticks rough runs solid",
  "fly-type": "zip buttons",
  metal: "loose light firm backed",
  buttonhole: "ragged thin dense keyhole",
  details: "none 1-to-2 3-to-4 5-up",
  "pair-match": "off 3-to-6 within-3 exact",
  "leg-twist": "over-25 15-to-25 8-to-15 under-8",
  inseam: "overlock overlock-plus felled felled-flat",
  "seat-yoke": "overlock overlock-top felled felled-met",
  crotch: "gap off near exact",
  "outseam-edge": "raw loose dense clean",
  selvedge: "none partial true",
  "bag-seam": "overlock safety clean",
  pocketing: "limp thin firm heavy",
  "fibre-label": "much-synthetic some-synthetic little-elastane natural",
  "care-label": "missing odd clear",
  "made-in": "bangladesh-pakistan south-east-asia north-africa china central-america turkey europe-low italy-japan usa-uk",
  "sit-test": "bags some slight stays",
}).map(([key, levels]) => ({ key, levels: levels.split(" ") }));

const sum = (text) => crc32(text).toString(16).padStart(8, "0");

/** JSON text with the names in alphabetical order, which is how the app writes what its checksums cover. */
function written(value) {
  return JSON.stringify(value, (_, part) =>
    part && typeof part === "object" && !Array.isArray(part) ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1))) : part,
  );
}

/** A chain of numbers from 0 to 1 that a seed decides (a linear congruential generator; good enough to vary a fixture). */
function chance(seed) {
  let state = (seed * 2654435761 + 12345) >>> 0;
  return () => (state = (state * 1664525 + 1013904223) >>> 0) / 2 ** 32;
}

/**
 * A garment of which the first `answers` checks are answered, about as a piece of that quality would be (0 worst to 1 best).
 * @returns {object} the facts as the app stores them
 */
export function garment(id, { label = "", place = "", note = "", noted = "2026-02-14", answers = 0, quality = 0.6, ticket, notes } = {}) {
  const next = chance([...id].reduce((seed, letter) => seed * 31 + letter.charCodeAt(0), 7) % 1e6);
  const judged = CHECKS.slice(0, answers).map(({ key, levels }) => {
    const place = quality + (next() - 0.5) * 0.5;
    return { check: key, judged: levels[Math.max(0, Math.min(levels.length - 1, Math.floor(place * levels.length)))] };
  });
  return { id, family: "jeans", noted, answers: judged, ...(label && { label }), ...(place && { place }), ...(note && { note }), ...(ticket && { ticket }), ...(notes && { notes }) };
}

const price = (minor, currency = "EUR", rest = {}) => ({ minor, currency, kind: "retail", face_down: false, ...rest });

/** Eight garments as somebody might have noted in a season. */
export const RACK = [
  garment("a1-rigid", { label: "Dark rigid straight", place: "Stand 14, second hall", answers: 30, quality: 0.85, ticket: price(21500), note: "Heavier than it looks. Ask about the lining of the pockets." }),
  garment("a2-sale", { label: "Pale tapered, sale rail", place: "Shop by the canal", noted: "2026-02-12", answers: 12, quality: 0.3, ticket: price(1990) }),
  garment("a3-own", { label: "My everyday pair", place: "Wardrobe", noted: "2026-01-30", answers: 24, quality: 0.55 }),
  garment("a4-black", { label: "Black slim, stretch", place: "Shop by the canal", noted: "2026-02-12", answers: 5, quality: 0.6, ticket: price(7995) }),
  garment("a5-none", { label: "Mid-blue wide leg", place: "Market hall", noted: "2026-02-10" }),
  garment("a6-sample", { label: "Sample 7, second fitting", place: "Stand 3, first hall", noted: "2026-02-13", answers: 44, quality: 0.7, ticket: price(4200, "EUR", { kind: "wholesale" }) }),
  garment("a7-guess", { label: "Grey carpenter", place: "Market hall", noted: "2026-02-10", answers: 16, quality: 0.45, ticket: price(129000, "JPY", { minor: 12900, face_down: true }) }),
  garment("a8-plain", { noted: "2025-12-02", answers: 2, quality: 0.2 }),
];

/** A piece with a ticket in another currency than the rest of the rack. */
export const YEN = garment("b1-yen", { label: "Narrow loom, raw", place: "Market hall", answers: 36, quality: 0.9, ticket: price(24000, "JPY") });

/** A tailored jacket, about half checked. */
export const JACKET = {
  ...garment("j1-flannel", { label: "Grey flannel, two buttons", place: "Shop by the canal", ticket: price(32900) }),
  family: "tailored-jacket",
  answers: Object.entries({
    patterned: "patterned", "cloth-crush": "mostly", canvas: "floats-chest", "lapel-roll": "rolls", "sleeve-head": "clean", match: "pockets",
    pockets: "true", buttonholes: "thin", lining: "eased", cloth: "wool", "made-in": "europe-low",
  }).map(([check, judged]) => ({ check, judged })),
};

/** Five offers of jeans, two of them on the short list: what is delivered with duty paid lands at its price. */
export const OFFERS = [
  ["o1-mill", "Mill sample, rinsed", 44, 0.8, 1400, true],
  ["o2-hill", "Hill sample, black", 30, 0.35, 1650, false],
  ["o3-quay", "Quay sample, ecru", 36, 0.75, 2100, true],
  ["o4-yard", "Yard sample, slate", 20, 0.3, 1900, false],
  ["o5-lane", "Lane sample, olive", 28, 0.55, 1550, false],
].map(([id, label, answers, quality, minor, shortlisted], place) => ({
  ...garment(id, { label, place: `Stand ${place + 3}, first hall`, answers, quality }),
  terms: {
    supplier: `${label.split(" ")[0]} & Daughters`, style: `00${42 + place}`, currency: "EUR", incoterm: "DDP",
    prices: [{ from: 300, minor }, { from: 1000, minor: minor - 150 }], ...(shortlisted && { shortlisted }),
  },
}));

/** Guesses that were turned over: ranges mostly too narrow and too low, the tool's own beside them. */
export const GUESSED = [
  ["Washed straight", 4500, 6000, 7900, [3900, 6800, 12000]],
  ["Rinsed taper", 3000, 5000, 4490, [2600, 4700, 8800]],
  ["Ecru wide leg", 6000, 8000, 11900, [5200, 9000, 16000]],
  ["Black bootcut", 2500, 3500, 3990, [2900, 5100, 9000]],
  ["Raw selvedge", 9000, 12000, 18900, [7600, 14000, 26000]],
  ["Faded carpenter", 4000, 5500, 6900, [3300, 5900, 10500]],
  ["Olive straight", 3500, 6500, 4990, [2800, 5000, 9300]],
  ["Slate slim", 2000, 2800, 1990, [2400, 4200, 7600]],
  ["Coated slim", 5000, 7000, 8900, [4100, 7200, 13000]],
].map(([label, low, high, minor, [least, middle, most]], place) => ({
  ...garment(`g${place}-guess`, { label, noted: `2026-0${1 + Math.floor(place / 4)}-${10 + place}`, answers: 10 + place, ticket: price(minor) }),
  guess: { low, high, currency: "EUR", kind: "retail", made: `2026-0${1 + Math.floor(place / 4)}-${10 + place}`, shown: { low: least, middle, high: most } },
}));

/** As many garments as wanted, each answered in part. */
export function manyGarments(count) {
  const words = ["Indigo", "Ecru", "Slate", "Rinsed", "Faded", "Raw", "Olive", "Black"];
  const cuts = ["straight", "tapered", "wide leg", "bootcut", "carpenter"];
  return Array.from({ length: count }, (_, place) =>
    garment(`n${String(place).padStart(4, "0")}`, {
      label: `${words[place % words.length]} ${cuts[place % cuts.length]} ${place + 1}`,
      place: `Stand ${(place % 40) + 1}`,
      noted: `2026-0${(place % 6) + 1}-${String((place % 27) + 1).padStart(2, "0")}`,
      answers: 4 + ((place * 7) % 36),
      quality: ((place * 37) % 100) / 100,
      ticket: place % 3 === 0 ? price(2000 + ((place * 733) % 30000)) : undefined,
    }),
  );
}

/** A page in storage: key and text. The checksum covers the number of writings and the facts. */
export function page(garment, rev = 1) {
  const body = written(garment);
  return [`garment-assay/page/${garment.id}`, `${written({ form: 1, rev, sum: sum(`${rev}\n${body}`) })}\n${body}`];
}

/** The file that the app would export. */
export function exported(garments) {
  const made = "2026-02-20";
  const file = { kind: "garment-assay-rack", form: 1, made, count: garments.length, sum: sum(`${made}\n${written(garments)}`), garments };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/** Option for `visit`: a browser in which these pages, as [key, text], are stored already. */
export function stored(home, pages) {
  const localStorage = pages.map(([name, value]) => ({ name, value }));
  return { storageState: { cookies: [], origins: [{ origin: new URL(home).origin, localStorage }] } };
}
