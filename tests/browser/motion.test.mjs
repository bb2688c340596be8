// Whoever wants less motion gets none; and for nobody does anything flash.

import assert from "node:assert/strict";
import { test } from "node:test";
import { onEveryScreen, onEveryScreenAlone } from "./every_screen.mjs";

/** Notes every transition and animation from the start of the page, with how long it takes and how often it comes again. */
const noting = (context) =>
  context.addInitScript(() => {
    window.moved = [];
    const note = (event) => {
      for (const animation of document.getAnimations()) {
        const { duration, delay, iterations } = animation.effect.getComputedTiming();
        window.moved.push({ what: `${event.type} ${animation.transitionProperty ?? animation.animationName ?? ""} ${animation.effect.target?.getAttribute("class") ?? ""}`, seconds: (Number(duration) + delay) / 1000, iterations });
      }
    };
    for (const type of ["transitionrun", "animationstart"]) document.addEventListener(type, note, true);
  });

const moved = (page) => page.evaluate(() => window.moved.splice(0));

/** Does on a screen what a person may do first, so that whatever moves does. */
async function stir(page) {
  const answer = page.getByRole("main").locator("label.answer:visible");
  if ((await answer.count()) > 1) {
    await answer.nth(1).click();
    await answer.nth(0).click();
  }
  await page.keyboard.press("Tab");
  await page.mouse.wheel(0, 300);
  await page.waitForTimeout(60);
}

const still = async (page) => {
  await stir(page);
  return (await moved(page)).filter(({ seconds }) => seconds > 0.01).map(({ what, seconds }) => `${what}: ${seconds} s`);
};

test("with less motion nothing moves for longer than a hundredth of a second", async () => {
  assert.deepEqual(await onEveryScreen({ before: noting, context: { reducedMotion: "reduce" } }, still), []);
  assert.deepEqual(await onEveryScreenAlone({ before: noting, context: { reducedMotion: "reduce" } }, still), []);
});

test("nothing comes and goes more than three times in a second", async () => {
  let some = 0;
  const flashing = async (page) => {
    await stir(page);
    const all = await moved(page);
    some += all.length;
    // What comes again takes a third of a second or more each time.
    return all.filter(({ seconds, iterations }) => iterations > 3 && seconds < 1 / 3).map(({ what, seconds }) => `${what}: every ${seconds} s`);
  };
  assert.deepEqual(await onEveryScreen({ before: noting }, flashing), []);
  assert.ok(some > 0, "the tape moves when an answer is given, else this test sees nothing");
});
