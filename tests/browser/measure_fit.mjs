// How many taps and keys the fitting room takes, and how long from a tap to the repainted verdict. Not a test: `make bench`.
//   node tests/browser/measure_fit.mjs [SLOWDOWN]
//
// A scripted hand works the real pages on a phone's screen; what it does is counted, and the app's own time is measured. The pauses of
// the hand and the body are ASSUMPTIONS, stated below: nobody has timed people. They compare the ways; they tell no person's time.

import { performance } from "node:perf_hooks";
import { main, measured, open, part, RAW, room, says, tape } from "./fitting.mjs";
import { closeAll, visit } from "./harness.mjs";
import { begin, garmentId, go, kept } from "./steps.mjs";

const [slowdown = 4] = process.argv.slice(2).map(Number);

/** Seconds a person is taken to need, each for one of these. Judgement, all of them. */
const PAUSE = {
  tap: 0.25, // to a button that is looked for already
  key: 0.25, // a digit on the phone's keypad
  look: 2, // to read a part, a move or a line
  lay: 4, // to lay the garment flat
  tape: 4, // to lay the tape on it at one place, and read it
  body: 8, // to put the tape round oneself at one place, and read it
  move: 4, // to make a move that asks for no waiting
  sit: 30, // to sit for half a minute, as that move asks
  stand: 60, // to stand for a minute, as that move asks
  dress: 30, // to put it on
};

function hand(page) {
  const done = { taps: 0, keys: 0, seconds: 0, waiting: 0 };
  const spend = (kind, times = 1) => (done.seconds += PAUSE[kind] * times);
  return {
    done,
    spend,
    async tap(target) {
      spend("tap");
      done.taps += 1;
      await target.tap();
    },
    async type(label, text) {
      await this.tap(main(page).getByLabel(new RegExp(`^${label}`)).first());
      spend("key", text.length);
      done.keys += text.length;
      await page.keyboard.type(text);
    },
    // A phone shows a choice as a list of its own: one tap opens it, one chooses.
    async choose(label, value) {
      spend("tap", 2);
      done.taps += 2;
      await main(page).getByLabel(label, { exact: true }).selectOption(value);
    },
  };
}

const next = (page, mine, key) => mine.tap(part(page, key).getByRole("button", { name: /^Next: / }));

async function someone(page, mine) {
  await mine.type("What you call them", "Jo");
  await mine.tap(part(page, "who").getByRole("button", { name: "Add" }));
  await main(page).getByLabel(/^Girth at the band/).first().waitFor();
  for (const [label, text] of Object.entries(RAW.body)) {
    mine.spend("body");
    await mine.type(label, text);
  }
  await mine.tap(main(page).getByRole("link", { name: "To the fitting room", exact: true }));
  await part(page, "tape").getByRole("textbox").first().waitFor();
}

async function widths(page, mine, places) {
  mine.spend("look");
  mine.spend("lay");
  for (const [label, text] of Object.entries(RAW.cloth).slice(0, places)) {
    mine.spend("tape");
    await mine.type(label, text);
  }
  await next(page, mine, "tape");
}

async function washed(page, mine, cloth) {
  mine.spend("look");
  await mine.choose("What the cloth is", cloth);
}

async function mirror(page, mine) {
  mine.spend("dress");
  const here = await open(page, "mirror");
  const moves = here.locator(".chips-down");
  for (let place = 0; place < (await moves.count()); place += 1) {
    mine.spend("look");
    mine.spend(["sit", "move", "move", "move", "move", "stand"][place] ?? "move");
    await mine.tap(moves.nth(place).locator("label").first());
  }
  await mine.tap(here.getByText(/^Stand and look for lines/));
  mine.spend("look", await here.locator(".fit-signs li").count());
  await mine.tap(here.getByRole("button", { name: /^None of these/ }));
}

const WAYS = {
  "known person, waist and hip": { known: true, words: "Fits", work: async (page, mine) => {
    await widths(page, mine, 2);
    await washed(page, mine, "washed");
  } },
  "known person, all of the tape": { known: true, words: "Fits", work: async (page, mine) => {
    await widths(page, mine, 4);
    await washed(page, mine, "washed");
  } },
  "new person, all of the tape": { words: "Will not fit after washing", work: async (page, mine) => {
    await someone(page, mine);
    await widths(page, mine, 4);
    await washed(page, mine, "loomstate");
    await mine.choose("Wash", "hot");
  } },
  "mirror alone": { words: "Fits", work: async (page, mine) => {
    await mine.tap(part(page, "mirror").locator("summary").first());
    await mirror(page, mine);
  } },
  "known person, tape and mirror": { known: true, words: "Fits", work: async (page, mine) => {
    await widths(page, mine, 4);
    await washed(page, mine, "washed");
    await next(page, mine, "later");
    await mirror(page, mine);
  } },
};

/** Begins a rigid pair, for a person who is known or for nobody, and opens its fitting room. */
async function cubicle(page, known) {
  await begin(page, { label: "Straight leg" });
  const id = garmentId(page);
  await go(page, room(id), "Fitting room");
  if (known) await measured(page, "Robin", RAW.body);
  await kept(page);
  return id;
}

const rows = [];
try {
  for (const [name, { known = false, words, work }] of Object.entries(WAYS)) {
    await visit({}, async ({ page }) => {
      await cubicle(page, known);
      const mine = hand(page);
      const start = performance.now();
      await work(page, mine);
      const said = await says(page, words);
      const own = (performance.now() - start) / 1000;
      rows.push({ way: name, taps: mine.done.taps, keys: mine.done.keys, "hand and body, s (assumed)": mine.done.seconds.toFixed(0), "app and script, s (measured)": own.toFixed(1), verdict: said.split("\n").slice(0, 2).join(", ") });
    });
  }
  console.log("From the open fitting room of a pair of jeans to the verdict, phone size.");
  console.log("Seconds of hand and body are sums of these ASSUMED pauses, which nobody has timed on people:", PAUSE);
  console.table(rows);

  await visit({}, async ({ page }) => {
    await cubicle(page, true);
    await tape(page, RAW.cloth);
    for (const key of ["cut", "later", "mirror"]) await open(page, key);
    await main(page).getByLabel("What the cloth is").selectOption("loomstate");
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
    await page.evaluate(() => {
      /** Runs `act`, and tells the milliseconds until the page has changed, and to the first task after the frame that shows it. */
      window.taken = async (act) => {
        const start = performance.now();
        const changed = new Promise((done) => {
          const observer = new window.MutationObserver(() => {
            observer.disconnect();
            done();
          });
          observer.observe(document.querySelector("main"), { subtree: true, childList: true, attributes: true, characterData: true });
        });
        act();
        await changed;
        const update = performance.now() - start;
        await new Promise((done) =>
          window.requestAnimationFrame(() => {
            const channel = new window.MessageChannel();
            channel.port1.onmessage = done;
            channel.port2.postMessage("");
          }),
        );
        return { update, paint: performance.now() - start };
      };
    });
    const sorted = (numbers) => [...numbers].sort((a, b) => a - b);
    const tell = (what, times) => console.log(`${what}: median ${sorted(times)[Math.floor(times.length / 2)].toFixed(0)} ms, worst of ${times.length} ${Math.max(...times).toFixed(0)} ms`);
    console.log(`Four places known and washing said; cut, tape, washing and mirror open; processor ${slowdown} times slower.`);
    for (const [what, group] of [["a tap on a cut", "fit-part-cut"], ["a tap on how a move went", "fit-part-mirror"]]) {
      const chips = main(page).locator(`#${group} .chips-down`).first().locator("input");
      const times = [];
      for (let turn = 0; turn < 24; turn += 1) times.push(await chips.nth((turn + 1) % 3).evaluate((chip) => window.taken(() => chip.click())));
      tell(`${what}, until the page has changed`, times.map(({ update }) => update));
      tell(`${what}, to the repainted page`, times.map(({ paint }) => paint));
    }
  });
} finally {
  await closeAll();
}
