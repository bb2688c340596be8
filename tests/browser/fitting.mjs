// What a person does in the fitting room, step by step, for its tests, its pictures and its measuring.

import { begin, garmentId, go, until } from "./steps.mjs";

export const main = (page) => page.getByRole("main");
export const room = (id) => `#/garment/${id}/fit`;

/** The parts of the page by their names on it, and what is in one that is open. */
export const PARTS = { who: "For whom", cut: "Cut and cloth", tape: "What the tape says", later: "After washing and wearing", mirror: "In the mirror", inside: "What a tailor can do" };
export const part = (page, key) => main(page).locator(`#fit-part-${key}`);

/** What is pinned above the parts: the verdict, how sure, what it turns on. */
export const verdict = (page) => main(page).locator(".fit-pinned .fit-verdict");

/** Waits until the verdict begins with these words, and returns all of it. */
export const says = (page, words) => until(() => verdict(page).innerText(), (text) => text.startsWith(words), `the verdict “${words}”`);

/** Opens a part that is closed. */
export async function open(page, key) {
  const here = part(page, key);
  if (!(await here.evaluate((details) => details.open))) await here.locator("summary").first().click();
  await until(() => here.evaluate((details) => details.open), Boolean, `the part “${PARTS[key]}” to open`);
  return here;
}

/** Types into the field whose label begins so, and leaves it. */
export async function type(page, label, text) {
  const field = main(page).getByLabel(new RegExp(`^${label}`)).first();
  await field.fill(text);
  await field.blur();
}

/** Adds a person right from the fitting room, measures them, and comes back. */
export async function measured(page, name, measures) {
  const who = await open(page, "who");
  await who.getByRole("textbox").fill(name);
  await who.getByRole("button", { name: "Add" }).click();
  await main(page).getByRole("heading", { name, exact: true }).waitFor();
  for (const [label, text] of Object.entries(measures)) await type(page, label, text);
  await main(page).getByRole("link", { name: "To the fitting room", exact: true }).click();
  await main(page).getByRole("heading", { name: "Fitting room" }).waitFor();
}

/** Answers how far the cloth gives, by the words of the answer. */
export async function give(page, id, level) {
  await go(page, `#/garment/${id}/check/stretch`, "How far does the cloth give");
  await main(page).locator("label.answer", { hasText: level }).first().click();
  await main(page).getByRole("button", { name: "Take answer back" }).waitFor();
  await go(page, room(id), "Fitting room");
}

/** Types what the tape says of the garment. */
export async function tape(page, widths) {
  await open(page, "tape");
  for (const [label, text] of Object.entries(widths)) await type(page, label, text);
}

/** Begins a garment and opens its fitting room. */
export async function fittingRoom(page, beginning) {
  await begin(page, beginning);
  const id = garmentId(page);
  await go(page, room(id), "Fitting room");
  return id;
}

/** The facts of the fitting room, as they are kept. */
export const facts = async (page, id) =>
  JSON.parse((await page.evaluate((id) => window.localStorage.getItem(`garment-assay/page/${id}`), id)).split("\n")[1]);

/** A pair of raw jeans that fits today: body in the sheet's order, then widths laid flat. */
export const RAW = {
  body: { "Girth at the band": "86", "Hip girth": "99", "Thigh girth": "57", "Inside leg": "80" },
  cloth: { "Waist, flat": "43", "Hip, flat": "52", "Thigh, flat": "30.5", Inseam: "84" },
};

