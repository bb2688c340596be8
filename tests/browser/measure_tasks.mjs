// How long the page's own thread is kept from a hand, in every journey: the browser's trace tells each task, by the clock and by the processor's
// time. On a machine that does other work besides, only the second tells something of the app. Not a test: `make bench`.
//   node tests/browser/measure_tasks.mjs [SLOWDOWN...] [--only=PART OF A JOURNEY'S NAME]
//
// What the driver asks of the page is a task of the page too. So each step finds first what it will touch, then sets a mark, touches it by
// the browser's own input, and keeps still until a while has passed; only what began in that while is counted.

import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { address, closeAll, started, visit } from "./harness.mjs";
import { jpeg } from "./photographs.mjs";
import { FILE as SEAM, setMarks } from "./picture.mjs";
import { exported, garment, manyGarments, OFFERS, page as pageOf, RACK, stored } from "./rack.mjs";
import { addPerson } from "./steps.mjs";

const words = process.argv.slice(2);
const only = words.find((word) => word.startsWith("--only="))?.slice(7) ?? "";
const slowdowns = words.filter((word) => /^\d+$/.test(word)).map(Number);
if (slowdowns.length === 0) slowdowns.push(1, 4);
/** How many milliseconds are kept still after each touch, before the processor is slowed. */
const STILL = 250;

const main = (page) => page.getByRole("main");
const of = (id, screen = "") => `#/garment/${id}/${screen}`;
const many = manyGarments(1000);
const folder = await mkdtemp(join(tmpdir(), "garment-assay-tasks-"));
const file = async (name, bytes) => {
  await writeFile(join(folder, name), bytes);
  return join(folder, name);
};

const CATEGORIES = ["devtools.timeline", "disabled-by-default-devtools.timeline", "blink.user_timing", "v8", "disabled-by-default-v8.gc"];
/** What a task may be made of, as the trace calls it and as it is told here. */
const PARTS = { FunctionCall: "program", "v8.callFunction": "program", RunMicrotasks: "program", EvaluateScript: "program", UpdateLayoutTree: "style", Layout: "layout", PrePaint: "paint", Paint: "paint", Layerize: "paint", Commit: "paint", ParseHTML: "page", MajorGC: "garbage", MinorGC: "garbage" };

/** The tasks of the page's own thread that began between two marks of each step, the longest first. */
function tasksOf(events, steps) {
  const marks = events.filter(({ cat, name }) => cat === "blink.user_timing" && /^step \d+ (on|off)$/.test(name));
  const at = (name) => marks.findLast((mark) => mark.name === name);
  return steps.map((step, place) => {
    const [on, off] = [at(`step ${place} on`), at(`step ${place} off`)];
    if (!off) return { step, tasks: [] };
    const from = on?.ts ?? 0;
    const mine = events.filter(({ ph, pid, tid, ts, dur }) => ph === "X" && dur > 1000 && pid === off.pid && tid === off.tid && ts >= from && ts < off.ts);
    const tasks = mine.filter(({ name, dur }) => name === "RunTask" && dur > 20_000).map((task) => {
      const inside = mine.filter(({ name, ts, dur }) => PARTS[name] && ts >= task.ts && ts + dur <= task.ts + task.dur);
      const outer = inside.filter((one) => !inside.some((other) => other !== one && other.ts <= one.ts && other.ts + other.dur >= one.ts + one.dur && other.dur > one.dur));
      const parts = {};
      for (const { name, tdur } of outer) parts[PARTS[name]] = (parts[PARTS[name]] ?? 0) + tdur / 1000;
      return { clock: task.dur / 1000, work: task.tdur / 1000, parts };
    });
    // The mark that ends the step is itself in a task of the driver.
    return { step, tasks: tasks.toSorted((a, b) => b.work - a.work) };
  });
}

/** The steps of one visit, in the order in which they are made. */
function stepper(page, slowdown, names) {
  const still = (times = 1) => page.waitForTimeout(STILL * times * Math.max(1, slowdown / 2));
  async function step(name, act, times = 1) {
    const place = names.push(name) - 1;
    await page.evaluate((name) => void performance.mark(name), `step ${place} on`);
    await act();
    await still(times);
    await page.evaluate((name) => void performance.mark(name), `step ${place} off`);
  }
  /** All since the page began to load. */
  async function since(name) {
    const place = names.push(name) - 1;
    await page.evaluate((name) => void performance.mark(name), `step ${place} off`);
  }
  const spot = async (found) => {
    await found.scrollIntoViewIfNeeded();
    const box = await found.boundingBox();
    return [box.x + box.width / 2, box.y + box.height / 2];
  };
  return {
    step,
    since,
    still,
    /** Touches a thing. */
    async tap(name, found, times) {
      await found.waitFor();
      const [x, y] = await spot(found);
      await still(0.3);
      await step(name, () => page.touchscreen.tap(x, y), times);
    },
    /** Goes to a screen by its address, as a link would. */
    async go(name, to, times) {
      await step(name, () => page.evaluate((to) => void (location.hash = to), to), times);
      await main(page).getByRole("heading").first().waitFor();
    },
    async type(name, found, text) {
      await found.waitFor();
      await found.focus();
      await still(0.3);
      await step(name, async () => {
        for (const letter of text) {
          await page.keyboard.press(letter);
          await page.waitForTimeout(90);
        }
      });
    },
    async pick(name, found, path, times) {
      const handle = await found.elementHandle();
      await step(name, () => handle.setInputFiles(path), times);
    },
  };
}

const button = (page, name) => main(page).getByRole("button", { name }).first();
const labels = (page) => main(page).locator("label:has(input[type=radio])");

/** Each: its name, what is noted already, what is done. */
const JOURNEYS = [
  ["first visit", { plain: true }, async (page, { still, since, go, tap }) => {
    await still(8);
    await since("loaded, and the house a second later");
    await tap("to a new garment", main(page).getByRole("link", { name: "Check a garment" }).first(), 2);
    await go("back", "#/");
  }],
  ["first visit, with a copy made for use without a network", { plain: true, copies: true }, async (page, { still, since }) => {
    await still(16);
    await since("loaded, and the copy made");
  }],
  ["a new garment, 12 checks, the result", {}, async (page, { go, tap, type }) => {
    await go("open", "#/new", 2);
    await type("type a name", main(page).getByLabel("A name for it"), "Blue");
    await tap("start checking", button(page, "Start checking"), 2);
    for (let made = 0; made < 12; made += 1) {
      await tap("tap an answer", labels(page).nth(made % 3));
      await tap("next check", button(page, /^(Next check|Skip for now|See the result)$/));
    }
    const id = (await page.evaluate(() => location.hash)).split("/")[2];
    await go("all checks", of(id, "checks"));
    await go("result", of(id, "result"));
    await go("ticket", of(id, "ticket"));
  }],
  ["a garment of 44 answers", { rack: RACK }, async (page, { go, tap }) => {
    const id = RACK[5].id;
    await go("check with pictures", of(id, "check/inseam"));
    await tap("tap an answer", labels(page).nth(1));
    await tap("undo", button(page, "Undo"));
    await go("all checks", of(id, "checks"));
    await go("result", of(id, "result"));
    await go("ticket", of(id, "ticket"));
    await go("details", of(id, "details"));
    await go("sheet", of(id, "sheet"));
    await go("tape", of(id, "tape"));
  }],
  ["behind a ticket", { rack: RACK }, async (page, { go, tap }) => {
    await go("open", of(RACK[0].id, "ticket"));
    await tap("open a line", main(page).locator("summary").nth(1));
    await go("rates", "#/rates");
    await go("guesses", "#/guesses");
  }],
  ["side by side", { rack: RACK }, async (page, { go, tap }) => {
    await go("four garments", `#/beside/${[0, 2, 1, 5].map((place) => RACK[place].id).join("/")}`);
    await tap("show all", button(page, /^Show all/));
    await go("their sheet", `#/beside-sheet/${[0, 2, 1, 5].map((place) => RACK[place].id).join("/")}`);
  }],
  ["offers", { rack: OFFERS }, async (page, { go }) => {
    await go("offer", of(OFFERS[0].id, "offer"));
    await go("lot", of(OFFERS[0].id, "lot"));
  }],
  ["a rack of 1,000", { rack: many }, async (page, { still, since, go, tap, type, step }) => {
    await still(4);
    await since("loaded");
    await type("search", page.getByRole("searchbox"), "wide");
    const field = page.getByRole("searchbox");
    await field.focus();
    await step("empty the search", async () => {
      for (let made = 0; made < 4; made += 1) await page.keyboard.press("Backspace");
    });
    for (const order of ["name", "best", "worth"]) {
      const handle = await page.getByLabel("Order").elementHandle();
      await step(`sort by ${order}`, () => handle.selectOption(order));
    }
    await tap("more rows", page.getByRole("button", { name: /^Show more/ }));
    await step("scroll back", async () => {
      for (let made = 0; made < 30; made += 1) {
        await page.mouse.wheel(0, -240);
        await page.waitForTimeout(30);
      }
    });
    await go("a garment of it", of(many[3].id, "result"));
    await go("its ticket", of(many[3].id, "ticket"), 2);
    await go("guesses", "#/guesses", 2);
    await go("rates", "#/rates", 2);
    await go("back to the rack", "#/", 2);
    await go("a check", of(many[4].id, "check/hang"));
    await tap("tap an answer", labels(page).nth(1));
    await tap("next check", button(page, /^(Next check|Skip for now|See the result)$/));
    await go("settings", "#/settings");
    await tap("export everything", button(page, "Export everything"), 3);
    await go("hand on", "#/hand-on", 2);
  }],
  ["1,000 garments taken in", {}, async (page, { go, tap, pick, step }) => {
    await go("settings", "#/settings", 2);
    await pick("choose the file", main(page).getByLabel("Choose a file to import"), await file("rack.json", exported(many)), 4);
    await button(page, "Merge").waitFor();
    await tap("merge", button(page, "Merge"), 6);
    await go("the rack", "#/", 2);
    await go("settings", "#/settings");
    await tap("erase everything", button(page, "Erase everything"));
    const dialog = page.getByRole("dialog");
    await tap("say yes", dialog.getByRole("button", { name: "Erase", exact: true }));
    const [x, y] = await dialog.getByRole("button", { name: "Yes, erase all" }).boundingBox().then((box) => [box.x + box.width / 2, box.y + box.height / 2]);
    await step("erase all", () => page.touchscreen.tap(x, y), 3);
  }],
  ["an invented rack", { plain: true }, async (page, { still, tap, go }) => {
    await still(12); // until the house has taken the place of the entrance, and its links with it
    await tap("take it in", button(page, "Look round in an invented rack"), 4);
    await go("practice", "#/practice", 2);
  }],
  ["learning", { rack: RACK }, async (page, { go }) => {
    await go("learn", "#/learn", 2);
    await go("a course", "#/learn/jeans", 2);
    await go("a lesson", "#/learn/jeans/inseam", 2);
    await go("numbers", "#/numbers");
    await go("licences", "#/licences", 2);
  }],
  ["practice", { rack: RACK }, async (page, { go, tap }) => {
    await go("open", "#/practice", 2);
    await tap("start", button(page, "Start"));
    for (let made = 0; made < 6; made += 1) {
      const card = main(page).locator(".practice-question");
      const choice = card.locator(".practice-choices button").first();
      if (await choice.isVisible()) await tap("answer", choice);
      else {
        await tap("choose", card.locator("label.chip").nth(2));
        await tap("answer", card.getByRole("button", { name: "Answer" }));
      }
      await tap("next question", card.getByRole("button", { name: "Next" }));
    }
  }],
  ["fitting", { rack: RACK }, async (page, { go, tap, type }) => {
    await addPerson(page, "Robin", { "Girth at the band": "86", "Hip girth": "99", "Thigh girth": "57", "Inside leg": "80" });
    await go("people", "#/people");
    await go("fitting room", of(RACK[0].id, "fit"), 2);
    for (const part of ["tape", "later", "mirror"]) {
      const found = main(page).locator(`#fit-part-${part}`);
      if (!(await found.evaluate((details) => details.open))) await tap(`open ${part}`, found.locator("summary").first());
    }
    await type("type a width", main(page).getByLabel(/^Waist, flat/), "43");
    await type("type another", main(page).getByLabel(/^Thigh, flat/), "30");
  }],
  ["the quick sheet", {}, async (page, { go, step, still }) => {
    await go("open", "#/desk", 2);
    await page.locator("#quick-name").focus();
    await step("type a name", async () => {
      for (const letter of "Tee") await page.keyboard.press(letter);
      await page.keyboard.press("Tab");
    }, 2);
    await page.locator(".quick-row").nth(1).locator("[role=radio], input").first().focus();
    await still();
    for (let made = 0; made < 8; made += 1) await step("an answer by key", () => page.keyboard.press(String(1 + (made % 2))));
  }],
  ["the bench and the ruler", { rack: RACK }, async (page, { go }) => {
    await go("bench", "#/bench", 2);
    await go("an instrument", "#/bench/stitch-count");
    await go("ruler", "#/bench/ruler");
  }],
  ["photographs of evidence", { rack: RACK }, async (page, { go, pick, tap }) => {
    const camera = await file("camera.jpg", await jpeg(page, { width: 4000, height: 3000 }));
    await go("open", of(RACK[0].id, "photographs"), 2);
    await pick("add 12 megapixels", main(page).locator("input[type=file]").first(), camera, 6);
    await tap("open it", main(page).locator(".photograph button").first());
  }],
  ["a picture that is read", {}, async (page, { go, pick, tap, still }) => {
    await go("open", "#/bench/stitch-photo/picture", 4);
    await pick("choose", main(page).getByLabel("Choose a picture"), SEAM, 3);
    await setMarks(page);
    await still();
    await tap("count", button(page, "Count the stitches"), 3);
  }],
  ["settings", { rack: RACK }, async (page, { go, step }) => {
    await go("open", "#/settings", 2);
    const scheme = await main(page).getByLabel(/^Light or dark/).elementHandle();
    await step("dark", () => scheme.selectOption("dark"));
    const lengths = await main(page).getByLabel(/^Lengths and weights/).elementHandle();
    await step("imperial", () => lengths.selectOption("imperial"));
  }],
];

const rows = [];
try {
  for (const slowdown of slowdowns) {
    for (const [journey, { rack = [], plain = false, copies = false }, body] of JOURNEYS) {
      if (!journey.includes(only)) continue;
      const kept = rack.length > 0 ? rack : plain ? [] : [garment("z1-kept", { label: "Kept" })];
      const context = stored(await address(), kept.map((garment) => pageOf(garment)));
      const names = [];
      await visit({ context, path: "icon.svg", throttle: slowdown, copies, ready: false }, async ({ page, home, problems }) => {
        const browser = page.context().browser();
        await browser.startTracing(page, { categories: CATEGORIES });
        try {
          problems.length = 0; // the icon that the browser looked for where there was no page
          await page.goto(home);
          if (!plain && rack !== many) {
            await started(page);
            await page.waitForTimeout(STILL * 3 * slowdown); // until all wings are there
          }
          await body(page, stepper(page, slowdown, names));
        } finally {
          const { traceEvents } = JSON.parse((await browser.stopTracing()).toString());
          for (const { step, tasks } of tasksOf(traceEvents, names)) rows.push({ journey, step, slowdown, tasks });
        }
      }).catch((error) => {
        console.log(`${journey}, ${slowdown} times slower: not to its end: ${error.message.split("\n")[0]}`);
        process.exitCode = 1;
      });
    }
  }
} finally {
  await closeAll();
  await rm(folder, { recursive: true });
}

const whole = (ms) => Math.round(ms);
for (const slowdown of slowdowns) {
  const here = rows.filter((row) => row.slowdown === slowdown).map((row) => ({ ...row, work: row.tasks[0]?.work ?? 0, clock: Math.max(0, ...row.tasks.map(({ clock }) => clock)) }));
  const over = here.filter(({ work }) => work > 50);
  console.log(`\nprocessor ${slowdown} times slower: ${here.length} steps, in ${over.length} of them a task over 50 ms of the processor's time (${here.filter(({ clock }) => clock > 50).length} by the clock); worst ${whole(Math.max(...here.map(({ work }) => work)))} ms`);
  for (const [journey] of JOURNEYS) {
    const steps = here.filter((row) => row.journey === journey).toSorted((a, b) => b.work - a.work);
    if (steps.length === 0) continue;
    const [{ work, clock, step }] = steps;
    console.log(`${journey}: worst ${whole(work)} ms, by the clock ${whole(clock)} (${step})`);
    const told = new Set();
    for (const { step, tasks, work } of steps) {
      if (work <= 50 || told.has(step)) continue;
      told.add(step);
      console.log(`    ${step}: ${tasks.slice(0, 3).filter(({ work }) => work > 50).map(({ work, clock, parts }) => `${whole(work)} (clock ${whole(clock)}: ${Object.entries(parts).toSorted((a, b) => b[1] - a[1]).map(([part, ms]) => `${part} ${whole(ms)}`).join(", ")})`).join("; ")}`);
    }
  }
}
