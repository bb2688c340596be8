// Every screen of the app, and how to come to it: for the pictures and for judging each.

import { exported, garment, RACK } from "./rack.mjs";
import { begin, chooseFile, plan } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const of = (place, screen) => `#/garment/${RACK[place].id}/${screen}`;
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

/**
 * `filled: false` wants an empty rack; `alone` a window of its own (it spoils storage); `whole` a picture of the whole page.
 * @type {{name: string, path?: string, act?: (page: import("playwright-core").Page) => Promise<void>, filled?: boolean,
 *   alone?: boolean, whole?: boolean, before?: (context: object) => Promise<void>, pages?: [string, string][]}[]}
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
  { name: "result", path: of(0, "result"), whole: true },
  { name: "result-first", path: of(7, "result") },
  { name: "result-none", path: of(4, "result"), whole: true },
  { name: "result-face-down", path: of(6, "result") },
  { name: "details", path: of(0, "details"), whole: true },
  { name: "details-face-down", path: of(6, "details") },
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
  { name: "numbers", path: "#/numbers", whole: true },
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
