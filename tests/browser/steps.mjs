// What a person does in the app, step by step. Everything is found by role and word, as that person would find it.

import { address, settled, started, visit } from "./harness.mjs";
import { page as pageOf, stored } from "./rack.mjs";

/** Visits the app with these garments noted already. */
export async function visitWith(garments, options, body) {
  const context = { ...stored(await address(), garments.map((garment) => pageOf(garment))), ...options.context };
  return visit({ ...options, context }, body);
}

const main = (page) => page.getByRole("main");

/** The part of the address after `#`. */
export const hash = (page) => new URL(page.url()).hash;
/** The name of the garment that the screen is about. */
export const garmentId = (page) => hash(page).split("/")[2];
/** Goes to a screen by its address, as a link would. */
export async function go(page, to, heading) {
  await page.evaluate((to) => (window.location.hash = to), to);
  await page.getByRole("heading", { name: heading }).first().waitFor();
  await settled(page);
}

/** Waits until something that `look` tells from the page is as `wanted` says. Returns what was seen. */
export async function until(look, wanted, what = "it", patience = 15_000) {
  const deadline = Date.now() + patience;
  let seen;
  do {
    seen = await look();
    if (wanted(seen)) return seen;
    await new Promise((done) => setTimeout(done, 20));
  } while (Date.now() < deadline);
  throw new Error(`waited in vain for ${what}; last seen: ${JSON.stringify(seen)}`);
}

/** Waits until no change is on its way to the mirror any more. */
export const kept = (page) => page.locator('.kept[data-state="kept"]').waitFor({ state: "attached" });

/** Starts the check of a new garment and waits for its first question. */
export async function begin(page, { kind, label, place, price } = {}) {
  await go(page, "#/new", "Check a garment");
  // On the words, as a thumb would; the round field itself is out of sight.
  if (kind) await page.locator(".families label").filter({ hasText: kind }).click();
  if (label) await page.getByLabel("A name for it").fill(label);
  if (place) await page.getByLabel("Where you are").fill(place);
  if (price) await page.getByLabel("Price").fill(price);
  await page.getByRole("button", { name: "Start checking" }).click();
  await page.getByRole("radio").first().waitFor();
  await kept(page);
}

/** The question on the screen. */
export const question = (page) => main(page).locator("h2").first().innerText();

/** Commits a guess at the ticket: at least, at most, likeliest. */
export async function guess(page, [low, high, best = ""]) {
  for (const [name, amount] of [["At least", low], ["At most", high], ["Likeliest, if any", best]]) {
    await main(page).getByLabel(name, { exact: true }).fill(amount);
  }
  await main(page).getByRole("button", { name: "Commit this guess" }).click();
  await main(page).getByText("Your guess stands.").waitFor();
}

/** What is said over the tape on the screen. */
export const headline = (page) => main(page).locator(".tape-lead").first().evaluate((lead) => [...lead.children].map((part) => part.textContent).join(", "));

/** The choice of answers; the first is the best. */
export const answers = (page) => main(page).getByRole("radio");

/** Chooses the answer at that place, and waits until it is chosen and kept. */
export async function answer(page, place) {
  const count = await answers(page).count();
  // On the words, as a thumb would; the round field itself is out of sight.
  await main(page).locator("label:has(input[type=radio])").nth(Math.min(place, count - 1)).click();
  await main(page).getByRole("button", { name: "Take answer back" }).waitFor();
  await kept(page);
}

/** Goes on from a check, and waits until the next screen is there: the address changes a moment before it. */
export async function next(page) {
  const before = [hash(page), await question(page)];
  await main(page).getByRole("button", { name: /^(Next check|Skip for now|See the result)$/ }).click();
  await until(async () => [hash(page), await question(page)], (now) => now[0] !== before[0] && now[1] !== before[1], "the next screen");
}

/**
 * Fits the frame on the screen to a card at so many CSS pixels to the millimetre, and keeps it unless told otherwise.
 * @returns {Promise<{width: number, height: number}>} the frame as it stands on the page
 */
export async function fitCard(page, perMm, { keep = true } = {}) {
  await main(page).getByLabel("Long side", { exact: true }).fill(String(85.6 * perMm));
  await main(page).getByLabel("Short side", { exact: true }).fill(String(53.98 * perMm));
  const frame = await main(page).getByRole("img", { name: /^Frame for/ }).boundingBox();
  if (keep) {
    await main(page).getByRole("button", { name: "It fits: keep this" }).click();
    await main(page).getByRole("img", { name: /^Ruler in/ }).waitFor();
  }
  return frame;
}

/** Opens the result of the garment on the screen. */
export async function openResult(page) {
  await go(page, `#/garment/${garmentId(page)}/result`, "What this does not say");
}

/** All of what moved the result, as lines. */
export async function moved(page) {
  const section = main(page).locator("section").filter({ has: page.getByRole("heading", { name: "What moved the result" }) });
  const all = section.getByRole("button", { name: /^Show all/ });
  if (await all.isVisible()) await all.click();
  return (await section.getByRole("listitem").allInnerTexts()).map((text) => text.replace(/\s+/g, " ").trim());
}

/** The answered checks in the list of all checks, as lines. */
export async function answered(page) {
  await go(page, `#/garment/${garmentId(page)}/checks`, "All checks");
  return main(page).locator("[data-state=answered], [data-state=skipped]").allInnerTexts();
}

/** Opens a check through the list of checks. */
export async function openCheck(page, name) {
  await go(page, `#/garment/${garmentId(page)}/checks`, "All checks");
  await main(page).getByRole("link", { name }).first().click();
  await answers(page).first().waitFor();
}

/** Exports everything; returns the file's name and text. */
export async function exportAll(page) {
  await go(page, "#/settings", "Settings");
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Export everything" }).click()]);
  const parts = [];
  for await (const part of await download.createReadStream()) parts.push(part);
  return { name: download.suggestedFilename(), text: Buffer.concat(parts).toString("utf8") };
}

/** Chooses a file to import. */
export async function chooseFile(page, text, name = "rack.json") {
  await go(page, "#/settings", "Settings");
  await page.getByLabel("Choose a file to import").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

/** The plan that is shown before an import. */
export const plan = (page) => page.getByRole("group", { name: /^In this file/ });

/** The field of a measure on a person's page; the label on the screen is shorter than the one read aloud. */
export const measureField = (page, name) => main(page).getByRole("textbox", { name: new RegExp(`^${name}, in `) });

/** Adds a person with those measures, by name, and leaves their page open. Returns the id that the address names. */
export async function addPerson(page, name, measures = {}) {
  await go(page, "#/people", "People");
  await main(page).getByLabel("What you call them").fill(name);
  await main(page).getByRole("button", { name: "Add", exact: true }).click();
  await page.getByRole("heading", { name: name || "No name", level: 1 }).waitFor();
  for (const [measure, value] of Object.entries(measures)) {
    await measureField(page, measure).fill(value);
    await measureField(page, measure).blur();
  }
  await kept(page);
  return hash(page).split("/")[2];
}

/** Loads the page again. */
export async function reload(page) {
  await page.reload();
  await started(page);
}

/** Text under each key of the app's part of local storage. */
export const storage = (page) =>
  page.evaluate(() => Object.fromEntries(Object.entries(window.localStorage).filter(([key]) => key.startsWith("garment-assay/page/"))));

/** Text under each key of the mirror. */
export const mirror = (page) =>
  page.evaluate(
    () =>
      new Promise((done, failed) => {
        const opening = window.indexedDB.open("garment-assay");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const store = opening.result.transaction("pages").objectStore("pages");
          const [keys, texts] = [store.getAllKeys(), store.getAll()];
          texts.onsuccess = () => {
            opening.result.close();
            done(Object.fromEntries(keys.result.map((key, place) => [key, texts.result[place]])));
          };
        };
      }),
  );
