// How long it takes from opening the check of stitch density to its answer, by each way of telling it. Not a test.
//   node tests/browser/measure_bench.mjs
//
// A scripted hand works the real pages; what it does is counted, and the app's own time is measured. The pauses of the hand are
// ASSUMPTIONS, stated below: nobody has timed people. So the seconds compare the ways; they do not tell how long a person takes.

import { performance } from "node:perf_hooks";
import { closeAll } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { answers, fitCard, go, kept, visitWith } from "./steps.mjs";

/** Seconds a hand is taken to need, each for one of these. Judgement, all of them. */
const PAUSE = {
  tap: 0.25, // to a button that is looked for already
  key: 0.25, // a digit on the phone's keypad
  hole: 0.35, // to find and touch the next needle hole
  count: 0.35, // to count one stitch along a tape or ruler
  lay: 3, // to lay the cloth flat, on a table or on the glass
  ruler: 3, // to lay a tape or a ruler along the seam, its zero on a hole
  look: 2, // to read a question, or to compare a seam with three pictures or lines
  drag: 1.5, // to drag the slider until the bars nearly lie on the holes
  fit: 0.5, // to see whether the bars lie on the holes, after each change of their pitch
};

const STITCHES = 24;
const MM = 76;
const PX_PER_MM = 6.1;
const garment = RACK[3];
const main = (page) => page.getByRole("main");

/** A hand that counts what it does, and the seconds it is taken to need. */
function hand(page) {
  const done = { taps: 0, keys: 0, seconds: 0 };
  const spend = (kind, times = 1) => (done.seconds += PAUSE[kind] * times);
  return {
    done,
    spend,
    async tap(target) {
      spend("tap");
      done.taps += 1;
      await target.tap();
    },
    async type(field, text) {
      await this.tap(field);
      spend("key", text.length);
      done.keys += text.length;
      await page.keyboard.type(text);
    },
    async touch(x, y) {
      spend("hole");
      done.taps += 1;
      await page.touchscreen.tap(x, y);
    },
  };
}

const open = async (page, hand) => hand.tap(main(page).getByRole("button", { name: /Measure it/ }));
const way = (page, name) => main(page).locator("label").filter({ hasText: name });

const WAYS = {
  "judged by the pictures": async (page, hand) => {
    // Nothing is counted: the seam is looked at, as by somebody who knows about how dense 8 per inch is.
    hand.spend("look");
    await hand.tap(main(page).locator("label.answer").first());
  },
  "counted on a tape, typed": async (page, hand) => {
    await open(page, hand);
    hand.spend("lay");
    hand.spend("ruler");
    hand.spend("count", STITCHES);
    await hand.type(main(page).getByRole("textbox", { name: "Stitches", exact: true }), String(STITCHES));
    await hand.type(main(page).getByRole("textbox", { name: "Length", exact: true }), String(MM));
    await hand.tap(main(page).getByRole("button", { name: "Use this reading" }));
  },
  "comb on the screen": async (page, hand) => {
    await open(page, hand);
    await hand.tap(way(page, "Stitches by a comb"));
    await hand.tap(main(page).getByRole("link", { name: "Open the ruler" }));
    hand.spend("lay");
    // The slider is dragged as near as one pixel of it brings it, and the fine buttons bring the last bar to its hole.
    const slider = main(page).getByLabel("Wider or closer");
    await slider.waitFor();
    const [low, high] = [Math.log(1.2), Math.log(8.5)];
    const box = await slider.boundingBox();
    const wanted = Math.log(MM / STITCHES);
    const touch = (x) => page.touchscreen.tap(Math.round(x), box.y + box.height / 2);
    const pitch = () =>
      main(page).locator("svg.comb path").evaluate((path, perMm) => {
        const bars = [...path.getAttribute("d").matchAll(/M0 ([\d.]+)/g)].map((hit) => Number(hit[1]));
        return (bars.at(-1) - bars[0]) / (bars.length - 1) / perMm;
      }, PX_PER_MM);
    let x = box.x + ((wanted - low) / (high - low)) * box.width;
    for (let turn = 0; turn < 4; turn += 1) {
      await touch(x);
      x += ((wanted - Math.log(await pitch())) / (high - low)) * box.width;
    }
    hand.done.taps += 1; // one drag, whose end is found here by touches
    hand.spend("drag");
    hand.spend("fit");
    const last = Number((await slider.getAttribute("aria-valuetext")).match(/(\d+) bars/)[1]) - 1;
    // Until the last bar lies within half its width of its hole, but not for ever.
    for (let turn = 0; turn < 60 && Math.abs((await pitch()) - MM / STITCHES) * last > 0.25; turn += 1) {
      const name = (await pitch()) > MM / STITCHES ? "Bars a little closer" : "Bars a little wider";
      await hand.tap(main(page).getByRole("button", { name }));
      if (turn % 4 === 3) hand.spend("fit");
    }
    hand.spend("fit");
    await hand.tap(main(page).getByRole("button", { name: /^Use \d/ }));
  },
  "holes tapped on the screen": async (page, hand) => {
    await open(page, hand);
    await hand.tap(way(page, "Stitches by tapping"));
    await hand.tap(main(page).getByRole("link", { name: "Open the ruler" }));
    hand.spend("lay");
    const strip = main(page).getByRole("button", { name: /^Tap every needle hole/ });
    const box = await strip.boundingBox();
    for (let hole = 0; hole <= STITCHES; hole += 1) await hand.touch(box.x + 45, box.y + 8 + ((hole * MM) / STITCHES) * PX_PER_MM);
    await hand.tap(main(page).getByRole("button", { name: /^Use \d/ }));
  },
};

const rows = [];
try {
  for (const [name, work] of Object.entries(WAYS)) {
    await visitWith(RACK, { path: "#/bench/ruler" }, async ({ page }) => {
      await fitCard(page, PX_PER_MM);
      await go(page, `#/garment/${garment.id}/check/spi`, /stitches/);
      await answers(page).first().waitFor();
      const mine = hand(page);
      mine.spend("look");
      const start = performance.now();
      await work(page, mine);
      await answers(page).first().waitFor();
      await main(page).getByRole("button", { name: "Take answer back" }).waitFor();
      const own = (performance.now() - start) / 1000;
      await kept(page);
      const text = main(page).locator("output.figure");
      const said = (await text.count()) > 0 ? (await text.first().innerText()).split("\n")[0] : "no figure";
      const shares = await main(page).locator(".answer em").allInnerTexts();
      rows.push({
        way: name, taps: mine.done.taps, keys: mine.done.keys, "hand, s (assumed)": mine.done.seconds.toFixed(1),
        "app and script, s (measured)": own.toFixed(1), reading: said, "shares of the answers": shares.map((share) => share.replace(" of your reading", "")).join(", ") || "one, as judged",
      });
    });
  }
  console.log(`From the check on the screen to its answer: ${STITCHES} stitches on ${MM} mm, phone size, the screen's scale known.`);
  console.log("Seconds of the hand are sums of these ASSUMED pauses, which nobody has timed on people:", PAUSE);
  console.table(rows);
  console.log("Fitting the screen to a card, once for each screen, comes before the first comb or taps and is not in the table.");
} finally {
  await closeAll();
}
