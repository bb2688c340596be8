// Every write of every journey comes to every kind of harm. What the app was silent about is there after the page is loaded again; what is
// not kept it says; nothing is unreadable that was readable; and it goes on. tests/faults.rs does the same to the notebook alone, in thousands.
//
// A quarter of them for each run of the tests; all with FAULTS=all. Each has a garment of its own, so that many are looked at after one loading.

import assert from "node:assert/strict";
import { test } from "node:test";
import { address, visit } from "./harness.mjs";
import { harmful, HARMS } from "./faulty_storage.mjs";
import { room, open as openPart } from "./fitting.mjs";
import { file, jpeg } from "./photographs.mjs";
import { exported, garment, page as pageOf, stored } from "./rack.mjs";
import { addPerson, answer, begin, chooseFile, garmentId, go, hash, kept, measureField, plan, reload, until } from "./steps.mjs";

const ALL = process.env.FAULTS === "all";
/** One of so many is tried. */
const SHARE = ALL ? 1 : 4;
/** Garments that lie there before a journey: one for each fault that it may come to. */
const SEEDED = 100;
/** As many as the rack shows at once, for a journey that begins there. */
const ON_THE_RACK = 28;

const main = (page) => page.getByRole("main");
const three = (number) => String(number).padStart(3, "0");
const label = (number) => `Piece ${three(number)}`;
const id = (number) => `k${three(number)}`;
const undo = (page) => page.getByRole("button", { name: "Undo", exact: true }).click();
async function type(page, name, text) {
  await main(page).getByLabel(name, { exact: true }).fill(text);
  await main(page).getByLabel(name, { exact: true }).blur();
  await kept(page);
}
const check = (page, number, key) =>
  go(page, `#/garment/${id(number)}/check/${key}`, /./).then(() => main(page).getByRole("radio").first().waitFor());
async function tick(page, number) {
  await go(page, "#/", "Rack");
  await main(page).getByRole("button", { name: "Choose" }).click();
  await main(page).getByRole("checkbox", { name: new RegExp(`^${label(number)}`) }).check();
}

/** What a person does, to a garment of that number; `fresh` where the journey itself brings it. */
const JOURNEYS = {
  "a new garment": { fresh: true, go: (page, number) => begin(page, { label: label(number), place: "Hall", price: "12.50" }) },
  answers: {
    async go(page, number) {
      for (const key of ["inseam", "crotch"]) {
        await check(page, number, key);
        await answer(page, 1);
      }
    },
  },
  "a note on a check": {
    async go(page, number) {
      await check(page, number, "inseam");
      await main(page).getByRole("button", { name: "Add a note" }).click();
      await type(page, "Note on this check", "Seen by daylight");
    },
  },
  "details and ticket": {
    async go(page, number) {
      await go(page, `#/garment/${id(number)}/details`, "Details");
      await type(page, "Place", "Second floor");
      await type(page, "Price", "89.90");
      await type(page, "Note", "Ask again");
    },
  },
  "an answer and undo": {
    async go(page, number) {
      await check(page, number, "inseam");
      await answer(page, 1);
      await undo(page);
      await main(page).getByRole("button", { name: "Take answer back" }).waitFor({ state: "detached" });
      await kept(page);
    },
  },
  "into a collection": {
    rack: true,
    async go(page, number) {
      await tick(page, number);
      await main(page).getByRole("button", { name: "Move to a collection" }).click();
      await main(page).getByLabel(/^Move \d+ garments?/).fill("Autumn");
      await main(page).getByRole("button", { name: "Move", exact: true }).click();
      await page.getByText("In Autumn: 1 garment.").waitFor();
      await kept(page);
    },
  },
  "put away": {
    rack: true,
    async go(page, number) {
      await tick(page, number);
      await main(page).getByRole("button", { name: "Put away" }).click();
      await page.getByText("Put away: 1 garment.").waitFor();
      await kept(page);
    },
  },
  "deleted and brought back": {
    rack: true,
    async go(page, number) {
      await go(page, "#/", "Rack");
      await main(page).getByRole("button", { name: `Delete ${label(number)}` }).click();
      await page.getByText(`Deleted: ${label(number)}.`).waitFor();
      await kept(page);
      await undo(page);
      await main(page).getByRole("button", { name: `Delete ${label(number)}` }).waitFor();
      await kept(page);
    },
  },
  "an import": {
    fresh: true,
    async go(page, number) {
      await chooseFile(page, exported([seed(number, 3)]));
      await plan(page).getByRole("button", { name: "Merge" }).click();
      await plan(page).waitFor({ state: "detached" });
      await kept(page);
    },
  },
  "a person": {
    fresh: true,
    person: true,
    go: (page, number) => addPerson(page, label(number), { "Waist girth": "80" }),
  },
  "the fitting room": {
    async go(page, number) {
      await go(page, room(id(number)), "Fitting room");
      await openPart(page, "tape");
      for (const [name, text] of [["Waist, flat", "43"], ["Hip, flat", "52"]]) {
        const field = main(page).getByLabel(new RegExp(`^${name}`)).first();
        await field.fill(text);
        await field.blur();
        await kept(page);
      }
    },
  },
  "a photograph": {
    async before(page, number) {
      return file(await jpeg(page, { width: 200, height: 100, stripes: number + 1 }));
    },
    async go(page, number, picture) {
      await go(page, `#/garment/${id(number)}/photographs`, "Photographs");
      await main(page).getByLabel("Choose photographs").setInputFiles(picture);
      // On the page, or a sentence why it is not.
      await main(page).locator(".photograph, [role=alert]:not(:empty)").first().waitFor();
      await until(() => main(page).getByText(/^Shrinking/).count(), (left) => left === 0, "the picture to be shrunk");
      await kept(page);
    },
  },
  "a lot": {
    async go(page, number) {
      await go(page, `#/garment/${id(number)}/lot`, "Lot");
      await type(page, "Pieces in the lot", "200");
      await main(page).getByRole("button", { name: "Next piece" }).click();
      await kept(page);
    },
  },
};

/** The facts of every garment and person that can be read, and the keys of what cannot. */
async function facts(page) {
  const texts = await page.evaluate(() => Object.entries(window.localStorage).filter(([key]) => /^garment-assay\/(page|person)\//.test(key)));
  const [found, broken] = [[], []];
  for (const [key, text] of texts) {
    try {
      const [head, body] = text.split("\n");
      if (!JSON.parse(head).gone) found.push({ key, body: JSON.parse(body) });
    } catch {
      broken.push(key);
    }
  }
  return { found, broken };
}

/** The garment of that number as it lies there before; all of them alike. */
const seed = (number, answers = 2) => ({ ...garment(id(0), { answers }), id: id(number), label: label(number) });

/** JSON text with the names in order, so that the same facts are the same text. */
const plain = (value) =>
  JSON.stringify(value, (_, part) =>
    part && typeof part === "object" && !Array.isArray(part) ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1))) : part,
  );

/** Facts without what differs from garment to garment. */
function bare(body, number) {
  const text = JSON.stringify(body).replaceAll(label(number), "Piece").replaceAll(" (this window)", "");
  const rest = JSON.parse(text);
  delete rest.id;
  return { ...rest, ...(rest.photographs && { photographs: rest.photographs.length }) };
}
const called = (body) => body.label ?? body.name ?? "";

/** Says what of storage it is that the person must know. */
const NOT_KEPT = /not kept|no room left|could not keep|does not let|keeps no pictures/i;
const alerts = (page) => main(page).locator(".alert").count();

/** One edit more, which must be kept, and takes every sentence about storage away. */
async function onceMore(page, journey) {
  if (journey.person) {
    await measureField(page, "Hip girth").fill("99");
    await measureField(page, "Hip girth").blur();
  } else {
    await go(page, `#/garment/${garmentId(page)}/details`, "Details");
    await main(page).getByLabel("Note", { exact: true }).fill("once more");
    await main(page).getByLabel("Note", { exact: true }).blur();
  }
  await kept(page);
  await until(() => alerts(page), (count) => count === 0, "the sentence to go, now that all is kept", 5000);
}
const withOnceMore = (body, journey) =>
  journey.person ? { ...body, measures: { ...body.measures, hip: { amount: 99, unit: "cm" } } } : { ...body, note: "once more" };

const tally = { runs: 0, possible: 0, said: 0, silent: 0 };

for (const [place, [name, journey]] of Object.entries(JOURNEYS).entries()) {
  test(`${name}: each write comes to harm, and nothing is lost unsaid`, async (context) => {
    const places = journey.rack ? ON_THE_RACK : SEEDED;
    const seeded = journey.fresh ? [] : Array.from({ length: places }, (_, number) => pageOf(seed(number)));
    // Never a first visit: the house is to be here at once.
    const options = { context: stored(await address(), [...seeded, pageOf(garment("other", { label: "Another one", answers: 1 }))]), before: harmful };
    await visit(options, async ({ page }) => {
      await kept(page);
      const run = async (number, kind, after) => {
        const prepared = await journey.before?.(page, number);
        await page.evaluate(([kind, after]) => window.harm.order(kind, after), [kind, after]);
        await journey.go(page, number, prepared);
        await page.evaluate(() => window.harm.stop());
        return page.evaluate(() => ({ ...window.harm }));
      };
      const of = (all, number) => all.found.filter(({ body }) => called(body).startsWith(label(number)));

      // Without harm, to know how many writes there are and what is there in the end.
      const clean = await run(0, null, 0);
      const [{ body }] = of(await facts(page), 0);
      const meant = bare(body, 0);
      assert.ok(clean.writes.length >= 2, `writes: ${clean.writes}`);
      const states = clean.texts.filter(([key]) => /\/(page|person)\//.test(key)).map(([, text]) => text.split("\n")[1]);
      const known = [...seeded.slice(0, 1).map(([, text]) => text.split("\n")[1]), ...states].filter(Boolean).map((text) => plain(bare(JSON.parse(text), 0)));

      const expected = new Map();
      let number = 0;
      const faults = clean.writes.flatMap((_, after) => Object.keys(HARMS).map((kind) => [kind, after]));
      tally.possible += faults.length;
      for (const [turn, [kind, after]] of faults.entries()) {
        if ((turn + place) % SHARE !== 0 || number + 1 === places) continue;
        number += 1;
        const what = `${name}, ${kind} at write ${after + 1} of ${clean.writes.length}`;
        const { struck, words } = await run(number, kind, after).catch((error) => {
          throw new Error(`${what}: ${error.message}`);
        });
        tally.runs += 1;
        const said = words.some((text) => NOT_KEPT.test(text));
        tally[said ? "said" : "silent"] += 1;
        const atPages = struck.some((one) => /^local .*\/(page|person)\//.test(one));
        const atPictures = struck.some((one) => one === "database garment-assay-photographs");
        if (HARMS[kind].said && kind !== "full" && (atPages || atPictures)) assert.ok(said, `${what}: not a word; ${struck}; ${words}`);
        if (!HARMS[kind].said) assert.ok(!said, `${what}: said without cause: ${words}`);
        if (said && atPages && !["denied", "torn and said"].includes(kind)) {
          // What lay there before still does.
          for (const { body } of of(await facts(page), number)) assert.ok(known.includes(plain(bare(body, number))), `${what}: neither before nor after: ${JSON.stringify(body)}`);
        }
        let end = meant;
        if (atPictures && HARMS[kind].said) {
          // What could not be kept is not named.
          end = { ...meant };
          delete end.photographs;
        }
        if ((await alerts(page)) > 0) {
          // The import leaves the settings open, and the rack names no garment.
          if (!journey.person && !hash(page).startsWith("#/garment/")) await page.evaluate((id) => (window.location.hash = `#/garment/${id}/details`), id(number));
          await onceMore(page, journey).catch((error) => {
            throw new Error(`${what}: ${error.message}`);
          });
          end = withOnceMore(end, journey);
        }
        expected.set(number, [what, end]);
      }

      await reload(page);
      await kept(page);
      // The mirror was compared when what it lacks is on its way, or was.
      await until(async () => (await facts(page)).broken.length, (count) => count === 0, "every page to be whole");
      await until(
        async () => {
          const all = await facts(page);
          return [...expected].filter(([number, [, end]]) => !of(all, number).some(({ body }) => plain(bare(body, number)) === plain(end))).map(([number, [what, end]]) => [what, end, of(all, number).map(({ body }) => bare(body, number))]);
        },
        (missing) => missing.length === 0,
        "all that was acknowledged",
        5000,
      );
      // What was torn is listed, and nothing else.
      const damaged = await page.evaluate(() => Object.keys(window.localStorage).filter((key) => key.startsWith("garment-assay/damaged/")).length);
      await go(page, "#/", "Rack");
      assert.ok((await main(page).locator(".set-aside li").count()) <= damaged);
      // And it goes on.
      await go(page, "#/garment/other/check/inseam", /./);
      await main(page).getByRole("radio").first().waitFor();
      await answer(page, 0);
      const other = (await facts(page)).found.find(({ key }) => key.endsWith("/other"));
      assert.ok(other.body.answers.some(({ check }) => check === "inseam"));
      context.diagnostic(`${number} of ${faults.length} faults`);
    });
  });
}

test("a choice in the settings that is not kept is said, and the next one is kept", async () => {
  const options = { context: stored(await address(), [pageOf(garment("other", { label: "Another one", answers: 1 }))]), before: harmful };
  await visit(options, async ({ page }) => {
    const chosen = () => page.evaluate(() => JSON.parse(window.localStorage.getItem("garment-assay/settings") ?? "{}").system);
    const lengths = main(page).getByLabel("Lengths and weights");
    await go(page, "#/settings", "Settings");
    for (const kind of Object.keys(HARMS)) {
      await lengths.selectOption("metric");
      await until(() => alerts(page), (count) => count === 0, "no sentence");
      const before = await chosen();
      await page.evaluate((kind) => window.harm.order(kind, 0), kind);
      await lengths.selectOption("imperial");
      if (HARMS[kind].said && kind !== "full") {
        await until(() => page.evaluate(() => window.harm.words), (words) => words.some((text) => NOT_KEPT.test(text)), `a sentence (${kind})`);
        if (!["denied", "torn and said"].includes(kind)) assert.equal(await chosen(), before);
      }
      await page.evaluate(() => window.harm.stop());
      tally.runs += 1;
    }
  });
});

test("how many there were", (context) => context.diagnostic(JSON.stringify({ ...tally, all: ALL })));
