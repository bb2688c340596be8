// Every screen of the app, and how to come to it: for the pictures and for judging each.

import { camera, filmPicture, NONE } from "./fake_camera.mjs";
import { caption, choose, file, jpeg } from "./photographs.mjs";
import { board, FILE as SEAM, finger, placeOnScreen, RUB, setMarks, TRUTH } from "./picture.mjs";
import { exported, garment, GUESSED, JACKET, OFFERS, page as pageOf, RACK, YEN } from "./rack.mjs";
import { give, measured, open as openPart, RAW, says, tape as typeTape } from "./fitting.mjs";
import { addPerson, begin, chooseFile, fitCard, garmentId, go, guess, measureField, plan } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const of = (place, screen) => `#/garment/${RACK[place].id}/${screen}`;
const beside = (...places) => `#/beside/${places.map((place) => RACK[place].id).join("/")}`;
const label = (page, place) => main(page).locator("label:has(input[type=radio])").nth(place);

/** A file that brings something new and something that differs, for the plan of an import. */
export const FILE = exported([RACK[1], { ...RACK[0], label: "Dark rigid, seen again" }, garment("new-1", { label: "Another", answers: 4 })]);

async function measure(page, count, length) {
  await main(page).getByRole("button", { name: /Measure it/ }).click();
  await main(page).getByRole("textbox", { name: "Stitches", exact: true }).fill(count);
  const field = main(page).getByRole("textbox", { name: "Length", exact: true });
  await field.fill(length);
  await field.blur();
}

/** Ticks garments of the rack by their places and moves them to a collection. */
async function collect(page, places, name) {
  await main(page).getByRole("button", { name: "Choose" }).click();
  for (const place of places) await main(page).getByRole("checkbox").nth(place).check();
  await main(page).getByRole("button", { name: "Move to a collection" }).click();
  await main(page).getByLabel(/^Move/).fill(name);
  await main(page).getByRole("button", { name: "Move", exact: true }).click();
  await main(page).getByRole("combobox", { name: "Collection", exact: true }).waitFor();
}

/** Three photographs of evidence, two of them with words. */
async function photographed(page) {
  const drawn = [
    { left: "#3b4f7a", right: "#8a97b5", stripes: 4 },
    { left: "#7a5a3b", right: "#c9b79a", stripes: 7, orientation: 1 },
    { left: "#2f3b2f", right: "#9db39d", stripes: 2 },
  ];
  await choose(page, await Promise.all(drawn.map(async (one, place) => file(await jpeg(page, one), `${place}.jpg`))), 3);
  await caption(page, 0, "Inseam, felled; one place of 2 cm where it runs off the edge");
  await caption(page, 1, "Label");
}

/** Two people, the second on the screen. */
async function twoPeople(page) {
  await addPerson(page, "Robin", { "Chest girth": "98" });
  return addPerson(page, "Kim", { "Waist girth": "31.5 in", "Hip girth": "97" });
}

/** Sees to it that the screen's scale is known, or that it is not; a window may have been on another screen of this list before. */
async function scaled(page, wanted = true) {
  await go(page, "#/bench/ruler", "Ruler on the screen");
  const again = main(page).getByRole("button", { name: "Fit it again" });
  const is = await again.isVisible();
  if (is && !wanted) await again.click();
  if (!is && wanted) await fitCard(page, page.viewportSize().width < 700 ? 6.1 : 3.8);
}

/** Goes to the ruler with that instrument; on it the comb and the taps stand at the screen's edge. */
async function marks(page, key, heading, from = "#/bench") {
  await scaled(page);
  await go(page, from === "#/bench" ? `#/bench/${key}/marks` : `${from}/marks/${key}`, heading);
  await main(page).getByRole("img", { name: /^Ruler in/ }).waitFor();
}

/** Taps holes that far apart all along the strip, leaving out one if it is named. */
async function tapHoles(page, mm, leftOut) {
  const box = await main(page).getByRole("button", { name: /^Tap every needle hole/ }).boundingBox();
  const perMm = page.viewportSize().width < 700 ? 6.1 : 3.8;
  for (let at = 8, tap = 0; at < box.height - 8; at += mm * perMm, tap += 1) {
    if (tap === leftOut) continue;
    const [x, y] = [box.x + box.width / 2 + (tap % 3) * 3 - 3, box.y + at + ((tap * 7) % 5) - 2];
    // With very large text the foot covers part of the strip.
    if (await page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.closest(".tap-strip") !== null, [x, y])) await page.mouse.click(x, y);
  }
}

/** Chooses a picture for the comb, and moves a mark and the comb so that there is a reading. */
async function combOnPicture(page, from = "#/bench/stitch-comb-live/live") {
  await go(page, from, "Stitches on the live picture");
  await main(page).getByLabel("Choose a picture").setInputFiles(filmPicture());
  await readComb(page);
}

async function readComb(page) {
  await main(page).getByRole("button", { name: /^First bar/ }).press("ArrowRight");
  await main(page).getByRole("button", { name: /^Second mark/ }).press("ArrowRight");
  await main(page).locator("output.live-reading b").waitFor();
}

/** A pair of raw jeans that fits today and not after a hot wash. */
async function fitRaw(page) {
  await main(page).getByRole("heading", { name: "Fitting room" }).waitFor();
  const id = garmentId(page);
  if (!/of 4 measures/.test(await main(page).locator("#fit-part-who summary").innerText())) {
    await give(page, id, "Rigid");
    await measured(page, "Robin", RAW.body);
  }
  await typeTape(page, RAW.cloth);
  await openPart(page, "later");
  await main(page).getByLabel("What the cloth is").selectOption("loomstate");
  await main(page).getByLabel("Wash", { exact: true }).selectOption("hot");
  await says(page, "Will not fit after washing");
  await main(page).locator("#fit-part-tape summary").first().click();
}

/** The mirror alone: two moves, one of them not well, and one line that was seen. */
async function fitMirror(page) {
  const mirror = await openPart(page, "mirror");
  await mirror.getByText("The band stays where it was.").click();
  await mirror.getByText("It drops 1 to 3 cm", { exact: false }).click();
  const lines = mirror.locator("details.fit-signs");
  if (!(await lines.evaluate((details) => details.open))) await lines.locator("summary").click();
  await mirror.getByRole("group", { name: "The waist stands off at the back" }).getByText("I see it").click();
  await mirror.getByText(/Take in the centre back/).waitFor();
}

/** A width and a label that cannot be taken, a person of whom little is known. */
async function fitFault(page) {
  await openPart(page, "tape");
  const waist = main(page).getByLabel(/^Waist, flat/);
  await waist.fill("4300");
  await waist.blur();
  await main(page).getByRole("alert").first().waitFor();
}

/** Chooses our picture of a seam. */
async function picture(page) {
  await main(page).getByLabel("Choose a picture").setInputFiles(SEAM);
  await board(page).waitFor();
}

/** Sets all marks on it and counts. */
async function counted(page) {
  await picture(page);
  await setMarks(page);
  await main(page).getByRole("button", { name: "Count the stitches" }).click();
  await main(page).locator("output.marks-figure b").waitFor();
}

/** Types into the fields of an instrument, by their labels, and leaves the last. */
async function read(page, readings) {
  for (const [label, value] of Object.entries(readings)) {
    const field = main(page).locator(".reading-form").getByLabel(label, { exact: true });
    await field.fill(value);
    await field.blur();
  }
}

/** A garment of the rack turned second-hand, with some answers about wear; then one of its screens. */
async function worn(page, screen, heading) {
  await go(page, of(2, "details"), "Details");
  // Screens may share a window: it may be on already.
  if (!(await page.getByRole("checkbox", { name: /^Second-hand/ }).isChecked())) await page.getByText(/^Second-hand/).click();
  for (const [key, place] of [["worn-rubbed", 2], ["worn-seams", 2], ["worn-stains", 0], ["worn-stretch", 1]]) {
    await go(page, of(2, `check/${key}`), /./);
    await label(page, place).click();
    await page.getByRole("button", { name: "Take answer back" }).waitFor();
  }
  await go(page, screen, heading);
}

/** What the app hears of its copy for use without a network. */
async function told(page, words) {
  await page.locator("html[data-flight]").waitFor({ state: "attached" });
  await page.evaluate((words) => document.dispatchEvent(new window.CustomEvent("flight-told", { detail: words })), words);
}
/** A browser that has promised nothing about what is noted. */
const unpromised = (context) =>
  context.addInitScript(() => {
    if (window.StorageManager) window.StorageManager.prototype.persisted = async () => false;
  });

/**
 * `filled: false` wants an empty rack; `alone` a window of its own (it spoils storage); `whole` a picture of the whole page;
 * `args` are flags of Chromium that it needs.
 * @type {{name: string, path?: string, act?: (page: import("playwright-core").Page) => Promise<void>, filled?: boolean,
 *   alone?: boolean, whole?: boolean, args?: string[], before?: (context: object) => Promise<void>, pages?: [string, string][]}[]}
 */
export const SCREENS = [
  { name: "rack-empty", filled: false },
  { name: "rack", whole: true },
  { name: "rack-none-found", act: (page) => page.getByRole("searchbox").fill("velvet") },
  { name: "start", path: "#/new", whole: true },
  {
    name: "start-fault",
    path: "#/new",
    whole: true,
    act: async (page) => {
      await page.getByLabel("Price").fill("cheap");
      await page.getByRole("button", { name: "Start checking" }).click();
      await page.getByRole("alert").first().waitFor();
    },
  },
  { name: "walk-fresh", filled: false, act: (page) => begin(page, { label: "Mid-blue straight leg" }) },
  {
    name: "walk-answered",
    path: of(3, "check/stitch-even"),
    act: async (page) => {
      await label(page, 1).click();
      await page.getByRole("button", { name: "Take answer back" }).waitFor();
    },
  },
  { name: "walk-drawn", path: of(0, "check/inseam"), whole: true },
  { name: "walk-instrument", path: of(3, "check/spi"), whole: true, act: (page) => measure(page, "24", "76") },
  { name: "walk-instrument-fault", path: of(3, "check/spi"), whole: true, act: (page) => measure(page, "24", "wide") },
  {
    name: "walk-ways",
    path: of(3, "check/spi"),
    whole: true,
    act: async (page) => {
      await main(page).getByRole("button", { name: /Measure it/ }).click();
      await main(page).locator("label").filter({ hasText: "Stitches by a comb" }).click();
      await main(page).getByRole("link", { name: "Open the ruler" }).waitFor();
    },
  },
  {
    name: "walk-read",
    path: of(3, "check/spi"),
    whole: true,
    act: async (page) => {
      await measure(page, "19", "76");
      await main(page).getByRole("button", { name: "Use this reading" }).click();
      await main(page).locator(".answer em").first().waitFor();
    },
  },
  { name: "walk-caution", path: of(3, "check/thread-ends"), whole: true },
  {
    name: "walk-meaning",
    path: of(3, "check/made-in"),
    whole: true,
    act: async (page) => {
      await main(page).getByText("What it says, and what it does not").click();
      await main(page).getByRole("button", { name: "Add a note" }).click();
      await main(page).getByLabel("Note on this check").waitFor();
    },
  },
  { name: "checks", path: of(0, "checks"), whole: true },
  { name: "desk-empty", path: "#/desk", filled: false },
  { name: "desk", path: `#/desk/${RACK[0].id}`, act: (page) => main(page).locator(".quick-row-name").nth(2).click() },
  { name: "desk-whole", path: `#/desk/${RACK[2].id}`, whole: true, act: (page) => main(page).getByRole("button", { name: "Keys" }).click() },
  { name: "result", path: of(0, "result"), whole: true },
  { name: "result-first", path: of(7, "result") },
  { name: "walk-worn", whole: true, act: (page) => worn(page, of(2, "check/worn-seams"), /./) },
  { name: "checks-worn", whole: true, act: (page) => worn(page, of(2, "checks"), "All checks") },
  { name: "result-worn", whole: true, act: (page) => worn(page, of(2, "result"), "What is left in it") },
  { name: "rack-worn", act: (page) => worn(page, "#/", "Rack") },
  { name: "behind-worn", act: (page) => worn(page, of(2, "ticket"), "Behind the ticket") },
  { name: "beside-worn", whole: true, act: (page) => worn(page, beside(0, 2), "Side by side") },
  { name: "photographs-empty", path: of(7, "photographs") },
  { name: "photographs", path: of(5, "check/inseam/photographs"), whole: true, act: photographed },
  {
    name: "photograph-open",
    path: of(5, "photographs"),
    act: async (page) => {
      await photographed(page);
      await main(page).locator(".photograph button").first().click();
      await page.getByRole("dialog").getByRole("img").waitFor();
    },
  },
  {
    name: "settings-photographs",
    path: of(5, "photographs"),
    whole: true,
    act: async (page) => {
      await photographed(page);
      await go(page, "#/settings", "Settings");
      await main(page).getByText(/^3 photographs, /).waitFor();
    },
  },
  { name: "result-none", path: of(4, "result"), whole: true },
  { name: "result-face-down", path: of(6, "result") },
  { name: "fit-empty", path: of(1, "fit"), whole: true },
  { name: "fit-mirror", path: of(1, "fit"), whole: true, act: fitMirror },
  { name: "fit-raw", path: of(0, "fit"), act: fitRaw },
  {
    name: "fit-raw-whole",
    path: of(0, "fit"),
    whole: true,
    act: async (page) => {
      await fitRaw(page);
      for (const key of ["who", "cut", "tape", "inside"]) await openPart(page, key);
    },
  },
  {
    name: "result-fit",
    path: of(0, "fit"),
    act: async (page) => {
      await fitRaw(page);
      await go(page, of(0, "result"), "What this does not say");
      await main(page).getByRole("heading", { name: "Fit", exact: true }).scrollIntoViewIfNeeded();
    },
  },
  {
    name: "beside-fit",
    path: of(0, "fit"),
    act: async (page) => {
      await fitRaw(page);
      await go(page, of(1, "fit"), "Fitting room");
      await fitMirror(page);
      await go(page, beside(0, 1, 2), "Side by side");
      await main(page).getByRole("heading", { name: "Fit", exact: true }).scrollIntoViewIfNeeded();
    },
  },
  { name: "fit-fault", path: of(2, "fit"), whole: true, act: fitFault },
  { name: "details", path: of(0, "details"), whole: true },
  { name: "details-face-down", path: of(6, "details") },
  { name: "offer-empty", path: of(0, "offer"), whole: true },
  {
    name: "offer",
    path: of(0, "offer"),
    whole: true,
    act: async (page) => {
      await main(page).getByLabel("Supplier").fill("Mill on the hill");
      await main(page).getByLabel("Currency", { exact: true }).selectOption("USD");
      await main(page).getByLabel("What is in it").selectOption("FOB");
      for (const [from, price] of [["300", "14"], ["1000", "12.5"]]) {
        await main(page).getByLabel("From how many pieces").fill(from);
        await main(page).getByLabel(/^Price of a piece/).fill(price);
        await main(page).getByRole("button", { name: "Add this price" }).click();
      }
      await main(page).getByRole("region", { name: "Landed cost by quantity" }).waitFor();
    },
  },
  { name: "sheet", path: of(0, "sheet"), whole: true },
  {
    name: "rack-worth",
    path: "#/",
    alone: true,
    whole: true,
    pages: OFFERS.map((garment) => pageOf(garment)),
    act: async (page) => {
      await main(page).getByRole("combobox", { name: "Order" }).selectOption("worth");
      await main(page).getByText("What this order means").click();
    },
  },
  {
    name: "rack-short-list",
    path: "#/",
    alone: true,
    whole: true,
    pages: OFFERS.map((garment) => pageOf(garment)),
    act: (page) => main(page).getByRole("combobox", { name: "Show" }).selectOption("short"),
  },
  { name: "rack-short-list-empty", path: "#/", act: (page) => main(page).getByRole("combobox", { name: "Show" }).selectOption("short") },
  {
    name: "rack-choose-listed",
    path: "#/",
    alone: true,
    pages: OFFERS.map((garment) => pageOf(garment)),
    act: async (page) => {
      await main(page).getByRole("button", { name: "Choose" }).click();
      for (const place of [0, 2]) await main(page).getByRole("checkbox").nth(place).check();
    },
  },
  { name: "rack-worth-few", path: "#/", act: (page) => main(page).getByRole("combobox", { name: "Order" }).selectOption("worth") },
  { name: "compare-sheet", path: beside(0, 1, 2, 5).replace("beside", "beside-sheet"), whole: true },
  { name: "compare-sheet-two", path: `#/beside-sheet/${OFFERS[0].id}/${OFFERS[1].id}`, alone: true, whole: true, pages: OFFERS.map((garment) => pageOf(garment)) },
  { name: "compare-sheet-four", path: `#/beside-sheet/${OFFERS.slice(0, 4).map(({ id }) => id).join("/")}`, alone: true, whole: true, pages: OFFERS.map((garment) => pageOf(garment)) },
  { name: "lot-empty", path: of(1, "lot"), whole: true },
  {
    name: "lot",
    path: of(0, "lot"),
    whole: true,
    act: async (page) => {
      await main(page).getByLabel("Pieces in the lot").fill("200");
      await main(page).getByLabel("Pieces in the lot").blur();
      await main(page).getByLabel("Limit for major").selectOption("1.0");
      await main(page).getByRole("button", { name: "Next piece" }).click();
      await main(page).getByLabel("Defect", { exact: true }).selectOption("open-seam");
      await main(page).getByRole("button", { name: "Note it on this piece" }).click();
      await main(page).getByRole("button", { name: /^Take away/ }).waitFor();
    },
  },
  { name: "invented-rack", path: "#/", alone: true, filled: false, whole: true, act: async (page) => {
    await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
    await main(page).getByRole("button", { name: "Take the invented rack out" }).waitFor();
  } },
  { name: "behind", path: of(0, "ticket"), whole: true },
  { name: "behind-first", path: of(3, "ticket") },
  { name: "behind-none", path: of(4, "ticket"), whole: true },
  { name: "behind-face-down", path: of(6, "ticket") },
  {
    name: "behind-offer",
    path: of(5, "ticket"),
    whole: true,
    act: async (page) => {
      await main(page).getByLabel("Smallest order, pieces").fill("300");
      await main(page).getByLabel("Smallest order, pieces").blur();
      await main(page).getByText("Bound in the smallest order").waitFor();
    },
  },
  {
    name: "behind-open",
    path: of(0, "ticket"),
    whole: true,
    act: async (page) => {
      for (const words of ["Sewing", "The picture as a table", "The same as a table"]) await main(page).locator("summary").filter({ hasText: words }).click();
      await main(page).getByLabel("How often a year you would wear it").fill("60");
      await main(page).getByLabel("How often a year you would wear it").blur();
    },
  },
  { name: "settings", path: "#/settings", whole: true },
  {
    name: "settings-import",
    path: "#/settings",
    whole: true,
    act: async (page) => {
      await chooseFile(page, FILE);
      await plan(page).waitFor();
    },
  },
  {
    name: "settings-import-fault",
    path: "#/settings",
    whole: true,
    act: async (page) => {
      await chooseFile(page, FILE.slice(0, 900));
      await page.getByRole("alert").first().waitFor();
    },
  },
  {
    name: "settings-confirm",
    path: "#/settings",
    act: async (page) => {
      await page.getByRole("button", { name: "Erase everything" }).click();
      await page.getByRole("dialog").waitFor();
    },
  },
  { name: "people-empty", path: "#/people", whole: true, filled: false },
  {
    name: "people",
    path: "#/people",
    whole: true,
    act: async (page) => {
      await twoPeople(page);
      await go(page, "#/people", "People");
      await main(page).getByRole("link", { name: /^Robin/ }).first().waitFor();
    },
  },
  {
    name: "person",
    path: "#/people",
    whole: true,
    act: async (page) => {
      await twoPeople(page);
      await main(page).locator("summary").filter({ hasText: "How to take it: waist girth" }).click();
    },
  },
  {
    name: "person-fault",
    path: "#/people",
    act: async (page) => {
      await twoPeople(page);
      await measureField(page, "Waist girth").fill("34");
      await measureField(page, "Waist girth").blur();
      await main(page).getByRole("alert").first().waitFor();
    },
  },
  {
    name: "person-for",
    path: "#/people",
    whole: true,
    act: async (page) => {
      const id = await twoPeople(page);
      await go(page, `#/people/${id}/for/${RACK[0].id}`, "Kim");
      await main(page).getByRole("link", { name: "To the fitting room", exact: true }).waitFor();
    },
  },
  {
    name: "settings-people",
    path: "#/people",
    whole: true,
    act: async (page) => {
      await twoPeople(page);
      await go(page, "#/settings", "Settings");
      await main(page).locator("label").filter({ hasText: "Also the body measures of people" }).click();
      await main(page).getByRole("button", { name: "Export everything" }).waitFor();
    },
  },
  { name: "bench", path: "#/bench", whole: true },
  { name: "bench-fit", path: "#/bench/ruler", act: (page) => scaled(page, false) },
  {
    name: "bench-fit-fault",
    path: "#/bench/ruler",
    act: async (page) => {
      await scaled(page, false);
      await main(page).getByLabel("Long side", { exact: true }).fill("550");
      await main(page).getByRole("button", { name: "It fits: keep this" }).click();
      await main(page).getByRole("alert").waitFor();
    },
  },
  {
    name: "bench-fit-coin",
    path: "#/bench/ruler",
    act: async (page) => {
      await scaled(page, false);
      await main(page).getByLabel("What you lay on the screen").selectOption({ label: "1 euro" });
    },
  },
  {
    name: "bench-unfitted",
    path: "#/bench/ruler",
    act: async (page) => {
      await scaled(page, false);
      await go(page, "#/bench/stitch-comb/marks", "Stitches by a comb");
    },
  },
  { name: "bench-ruler", path: "#/bench/ruler", act: (page) => scaled(page) },
  { name: "bench-comb", path: "#/bench", act: (page) => marks(page, "stitch-comb", "Stitches by a comb") }, // not laid yet: no reading
  {
    name: "walk-comb",
    path: "#/bench",
    act: async (page) => {
      await marks(page, "stitch-comb", "Stitches by a comb", of(3, "check/spi"));
      await main(page).getByRole("button", { name: "Bars a little wider" }).click();
      await main(page).locator("output.marks-figure b").waitFor();
    },
  },
  {
    name: "walk-taps",
    path: "#/bench",
    act: async (page) => {
      await marks(page, "stitch-taps", "Stitches by tapping", of(3, "check/spi"));
      await tapHoles(page, 3);
      await main(page).locator("output.marks-figure b").waitFor();
    },
  },
  {
    name: "bench-taps-doubt",
    path: "#/bench",
    act: async (page) => {
      await marks(page, "stitch-taps", "Stitches by tapping");
      await tapHoles(page, 4, 5);
      await main(page).locator("p.fault").waitFor();
    },
  },
  { name: "live-before", path: "#/bench", act: (page) => go(page, "#/bench/stitch-comb-live/live", "Stitches on the live picture") },
  { name: "live-file", path: "#/bench", act: (page) => combOnPicture(page) },
  { name: "live-check", path: "#/bench", act: (page) => combOnPicture(page, of(3, "check/spi/live/stitch-comb-live")) },
  {
    name: "live-camera",
    path: "#/bench/stitch-comb-live/live",
    alone: true,
    args: camera(),
    act: async (page) => {
      await main(page).getByRole("button", { name: "Open the camera" }).click();
      await main(page).getByRole("button", { name: /^First bar/ }).waitFor();
      await page.evaluate(() => window.dispatchEvent(new window.DeviceOrientationEvent("deviceorientation", { beta: 8, gamma: 0 })));
      await main(page).getByText("8 degrees off").waitFor();
    },
  },
  {
    name: "live-shutter",
    path: "#/bench",
    alone: true,
    args: camera(),
    act: async (page) => {
      await combOnPicture(page);
      await main(page).getByRole("button", { name: "New picture" }).click();
      await main(page).getByText("Lay the seam along the line").waitFor();
    },
  },
  {
    name: "live-no-camera",
    path: "#/bench/stitch-comb-live/live",
    alone: true,
    args: NONE,
    act: async (page) => {
      await main(page).getByRole("button", { name: "Open the camera" }).click();
      await main(page).getByRole("alert").waitFor();
    },
  },
  { name: "bench-instrument", path: "#/bench/stretch-recovery", whole: true, act: (page) => read(page, { "Before the pull": "250", "Under the pull": "310" }) },
  {
    name: "bench-instrument-fault",
    path: "#/bench/shrinkage",
    whole: true,
    act: (page) => read(page, { "Along the length, before": "380", "Along the length, after": "5" }),
  },
  { name: "bench-grades", path: "#/bench/pilling", whole: true },
  { name: "picture-take", path: "#/bench/stitch-photo/picture" },
  {
    name: "picture-marks",
    path: "#/bench/stitch-photo/picture",
    act: async (page) => {
      await picture(page);
      await setMarks(page, TRUTH.marks.slice(0, 3));
    },
  },
  {
    name: "picture-lens",
    path: "#/bench/stitch-photo/picture",
    act: async (page) => {
      await picture(page);
      await setMarks(page, TRUTH.marks.slice(0, 2));
      await (await finger(page))("touchStart", [await placeOnScreen(page, TRUTH.marks[2])]);
      await main(page).locator(".lens").waitFor();
    },
  },
  { name: "picture-counted", path: "#/bench/stitch-photo/picture", act: counted },
  { name: "picture-counted-whole", path: of(3, "check/spi/picture/stitch-photo"), act: counted, whole: true },
  {
    name: "picture-refused",
    path: "#/bench/stitch-photo/picture",
    act: async (page) => {
      await picture(page);
      // The cloth above the seam, where there is none.
      await setMarks(page, [...TRUTH.marks.slice(0, 2), [300, 60], [1000, 60]]);
      await main(page).getByRole("button", { name: "Count the stitches" }).click();
      await main(page).getByRole("alert").waitFor();
    },
  },
  {
    name: "picture-stain",
    path: "#/bench/rub-off-photo/picture",
    act: async (page) => {
      await main(page).getByLabel("Choose a picture").setInputFiles(RUB.file);
      await board(page).waitFor();
      await setMarks(page, RUB.marks);
      await main(page).getByRole("button", { name: "Compare with white" }).click();
      await main(page).locator("output.marks-figure b").waitFor();
    },
  },
  {
    name: "rack-pick",
    act: async (page) => {
      await main(page).getByRole("button", { name: "Choose" }).click();
      await main(page).getByRole("checkbox").nth(0).check();
      await main(page).getByRole("checkbox").nth(2).check();
    },
  },
  {
    name: "rack-collection",
    alone: true,
    act: async (page) => {
      await collect(page, [0, 2, 5], "Autumn show");
      await main(page).getByRole("combobox", { name: "Collection", exact: true }).selectOption("Autumn show");
      await main(page).getByText("Rename this collection").click();
    },
  },
  {
    name: "rack-move",
    act: async (page) => {
      await main(page).getByRole("button", { name: "Choose" }).click();
      await main(page).getByRole("checkbox").nth(0).check();
      await main(page).getByRole("button", { name: "Move to a collection" }).click();
    },
  },
  {
    name: "rack-all-away",
    act: async (page) => {
      await main(page).getByRole("button", { name: "Choose" }).click();
      await main(page).getByRole("button", { name: /^Tick all/ }).click();
      await main(page).getByRole("button", { name: "Put away" }).click();
      await main(page).getByText("Every garment is put away.", { exact: false }).waitFor();
    },
    alone: true,
  },
  { name: "hand-on", path: "#/hand-on", whole: true },
  { name: "hand-on-one", path: `#/hand-on/${RACK[0].id}`, whole: true },
  { name: "hand-on-empty", path: "#/hand-on", filled: false },
  {
    name: "import-join",
    path: "#/settings",
    whole: true,
    act: async (page) => {
      await chooseFile(page, FILE);
      await plan(page).locator("label").filter({ hasText: "Join them in one" }).first().click();
      await plan(page).getByText("Where yours says something", { exact: false }).waitFor();
    },
  },
  { name: "beside-one", path: `#/beside/${RACK[0].id}`, whole: true },
  { name: "beside-two", path: beside(0, 1), whole: true },
  {
    name: "beside-three",
    path: beside(2, 0, 1),
    whole: true,
    act: async (page) => {
      await main(page).getByRole("button", { name: "Place A between C and B" }).click();
      await main(page).locator("summary").filter({ hasText: "Numbers" }).click();
    },
  },
  { name: "beside-four", path: beside(0, 1, 2, 5), whole: true, act: (page) => main(page).getByRole("button", { name: /^Show all/ }).click() },
  { name: "beside-currencies", path: "#/beside/a1-rigid/b1-yen", alone: true, whole: true, pages: [pageOf(YEN)] },
  { name: "guesses-empty", path: "#/guesses" },
  // A tailored jacket, among jeans.
  ...[
    ["jacket-check", "#/garment/j1-flannel/check/canvas"],
    ["jacket-pattern", "#/garment/j1-flannel/check/match"],
    ["jacket-list", "#/garment/j1-flannel/checks"],
    ["jacket-result", "#/garment/j1-flannel/result"],
    ["jacket-ticket", "#/garment/j1-flannel/ticket"],
    ["jacket-tape", "#/garment/j1-flannel/tape"],
    ["jacket-beside", "#/beside/j1-flannel/a1-rigid"],
    ["jacket-rack", "#/"],
  ].map(([name, path]) => ({ name, path, alone: true, whole: true, pages: [pageOf(JACKET)] })),
  { name: "guesses-few", path: "#/guesses", alone: true, whole: true, pages: GUESSED.slice(0, 3).map((garment) => pageOf(garment)) },
  { name: "practice", path: "#/practice", whole: true },
  { name: "learn-empty", path: "#/learn", whole: true, filled: false },
  {
    name: "course",
    path: "#/learn/jeans",
    whole: true,
    // How long it takes is told without its longer texts until they are there: the browser answers who asked first, and that was the app.
    act: async (page) => {
      await page.evaluate(async () => (await fetch("learn/jeans.txt")).text());
      await page.waitForTimeout(300);
    },
  },
  {
    name: "lesson",
    path: "#/learn/jeans/inseam",
    whole: true,
    act: async (page) => {
      await main(page).getByRole("heading", { name: "How it is faked" }).waitFor();
      await main(page).locator(".which-worse button").first().click();
    },
  },
  { name: "lesson-cost", path: "#/learn/woven-shirt/made-in", whole: true },
  { name: "lesson-for", path: `#/learn/jeans/spi/for/${RACK[3].id}`, whole: true },
  {
    name: "learn",
    path: "#/learn/jeans/hang",
    whole: true,
    alone: true,
    act: async (page) => {
      await main(page).getByRole("link", { name: /^Read: / }).click();
      await go(page, "#/learn", "Learn");
      await main(page).getByRole("button", { name: "Forget what I read" }).waitFor();
    },
  },
  {
    name: "lesson-missing",
    path: "#/learn/sweater/joins",
    whole: true,
    alone: true,
    before: (context) => context.route(/\/learn\/.*\.txt$/, (route) => route.fulfill({ body: "no lessons" })),
    act: (page) => main(page).getByText("it cannot be shown").waitFor(),
  },
  {
    name: "practice-question",
    path: "#/practice",
    alone: true,
    whole: true,
    act: async (page) => {
      await main(page).getByRole("button", { name: "Start", exact: true }).click();
      await main(page).locator(".practice-question").waitFor();
    },
  },
  { name: "guesses", path: "#/guesses", alone: true, whole: true, pages: GUESSED.map((garment) => pageOf(garment)) },
  { name: "rates", path: "#/rates", whole: true, act: (page) => main(page).locator("summary").filter({ hasText: "Freight" }).click() },
  {
    name: "rates-edited",
    path: "#/rates",
    whole: true,
    act: async (page) => {
      await main(page).getByRole("searchbox").fill("zip");
      // Other families have zips of their own.
      const row = main(page).locator("li.rate:visible").filter({ has: page.getByText("Zip", { exact: true }) });
      await row.getByRole("button", { name: /^Change / }).click();
      await row.getByLabel("High").fill("0.75");
      await row.getByRole("button", { name: "Use these" }).click();
      await row.getByText(/^yours/).waitFor();
      await page.getByRole("button", { name: "Close this message" }).click();
      await main(page).getByRole("searchbox").fill("trims");
      const thread = main(page).locator("li.rate").filter({ hasText: "Thread, a pair of jeans" });
      await thread.getByRole("button", { name: /^Change / }).click();
      await thread.getByLabel("High").fill("dear");
      await thread.getByRole("button", { name: "Use these" }).click();
      await thread.getByRole("alert").waitFor();
    },
  },
  { name: "numbers", path: "#/numbers", whole: true },
  { name: "licences", path: "#/licences", whole: true, act: (page) => main(page).getByRole("heading", { name: "Packages" }).waitFor() },
  {
    name: "licences-text",
    path: "#/licences",
    act: (page) => main(page).locator("summary").filter({ hasText: /^MIT License: .*\bserde\b/ }).first().click(),
  },
  {
    name: "licences-missing",
    path: "#/licences",
    alone: true,
    before: (context) => context.route("**/licences.txt", (route) => route.fulfill({ body: "no list" })),
    act: (page) => main(page).getByRole("alert").waitFor(),
  },
  {
    name: "behind-revealed",
    act: async (page) => {
      await begin(page, { label: "Guessed before it was seen" });
      await go(page, `#/garment/${garmentId(page)}/ticket`, "Behind the ticket");
      await guess(page, ["60", "90", "75"]);
      await main(page).getByLabel("Price").fill("99");
      await main(page).getByRole("button", { name: "Note the ticket" }).click();
      await main(page).getByText(/^You: /).waitFor();
    },
  },
  { name: "rack-deleted", act: (page) => page.getByRole("button", { name: "Delete Grey carpenter" }).click() },
  {
    name: "fault-unread",
    alone: true,
    whole: true,
    pages: [
      ["garment-assay/page/x1", '{"form":1,"rev":3,"sum":"00000000"}\n{"id":"x1"}'],
      ["garment-assay/page/x2", '{"form":9,"rev":3}\n{}'],
    ],
  },
  { name: "quiet-newer", act: (page) => told(page, "whole waiting") },
  { name: "quiet-taken", path: of(0, "result"), act: (page) => told(page, "whole taken") },
  { name: "quiet-promise", before: unpromised },
  {
    name: "quiet-export",
    before: unpromised,
    pages: [["garment-assay/keeping", '{"asked":true}']],
  },
  { name: "quiet-settings", path: "#/settings", whole: true, before: unpromised, act: (page) => told(page, "part:1380000 waiting") },
  {
    name: "fault-forbidden",
    alone: true,
    before: (context) =>
      context.addInitScript(() => {
        const refuse = () => {
          throw new window.DOMException("refused", "SecurityError");
        };
        Object.defineProperty(window, "localStorage", { get: refuse });
      }),
  },
];
