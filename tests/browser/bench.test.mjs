// That every instrument opens, says what it should for readings worked out elsewhere, refuses what cannot be, and answers a check.

import assert from "node:assert/strict";
import { test } from "node:test";
import { isTooWide, settled, violations, visit } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { answers, fitCard, go, headline, kept, reload, storage, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const figure = (page) => main(page).locator("output.figure");
/** Nothing but the figure's own words, one space between each. */
const said = async (page) => (await figure(page).innerText()).replace(/\s+/g, " ").replaceAll("\u2212", "-");
const NOTHING = "The reading and its spread appear here.";

/** Types into fields and chooses from lists, by their labels; opens what is folded away. */
async function fillIn(page, readings) {
  const folded = main(page).locator(".reading-form details:not([open]) > summary");
  while ((await folded.count()) > 0) await folded.first().click();
  for (const [label, value] of Object.entries(readings)) {
    const field = main(page).locator(".reading-form").getByLabel(label, { exact: true });
    const kind = await field.evaluate((element) => (element.localName === "select" ? "select" : element.type));
    if (kind === "select") await field.selectOption({ label: value });
    else if (kind === "checkbox") await field.setChecked(value);
    else await field.fill(value);
  }
  await main(page).locator(".reading-form summary, .reading-form label").first().focus();
  await page.evaluate(() => document.activeElement?.blur());
}

/** All addresses on the bench but the ruler's own. */
async function instruments(page) {
  await go(page, "#/bench", "Bench");
  return main(page).locator("a.tool").evaluateAll((links) => links.map((link) => [link.getAttribute("href"), link.querySelector("b").textContent]));
}

// --- every page --------------------------------------------------------------------------------------------------------------

for (const scheme of ["light", "dark"]) {
  test(`every instrument opens from the bench, is accessible, and says what to do and where its formula comes from: ${scheme}`, async () => {
    await visit({ scheme, context: { reducedMotion: "reduce" }, path: "#/bench/ruler" }, async ({ page }) => {
      await fitCard(page, 6.1);
      const all = await instruments(page);
      assert.ok(all.length >= 25, `instruments: ${all.length}`);
      assert.equal(new Set(all.map(([href]) => href)).size, all.length, "each once");
      const found = (await violations(page)).map((line) => `bench: ${line}`);
      // In the dark a few of each sort; colours are the same classes throughout.
      const opened = scheme === "light" ? all : all.filter((_, place) => place % 5 === 0 || place < 5);
      for (const [href, name] of opened) {
        await go(page, "#/bench", "Bench");
        // By its address: the name of one may begin with the name of another.
        await main(page).locator(`a.tool[href="${href}"]`).click();
        await main(page).locator("h1").filter({ hasText: name }).waitFor();
        await settled(page);
        assert.equal(await page.evaluate(() => window.location.hash), href);
        for (const line of await violations(page)) found.push(`${name}: ${line}`);
        if (await isTooWide(page)) found.push(`${name}: too wide`);
        if (!/marks$|ruler$|seam-kind$/.test(href)) {
          if ((await main(page).locator("ol.steps li").count()) < 1) found.push(`${name}: says no step`);
          const sources = await main(page).locator("section").filter({ has: page.getByRole("heading", { name: "Where the formula comes from" }) }).locator("dd").allInnerTexts();
          if (sources.length < 1 || sources.some((text) => text.trim() === "")) found.push(`${name}: names no source`);
          // On the camera and on a picture nothing is said before there is a picture.
          if (!/(live|picture)$/.test(href) && (await said(page)) !== NOTHING) found.push(`${name}: says a number before anything is read: ${await said(page)}`);
        }
      }
      assert.deepEqual(found, []);
    });
  });
}

// --- figures worked out elsewhere ----------------------------------------------------------------------------------------------

/** What is typed, and what must then stand on the page. */
const WORKED = [
  {
    // Handbook, section 4.3: 690 g less 70 g of trims on the area of these seven measures are 12.9 oz/yd², about 9 % either way.
    key: "cloth-mass-weighed",
    typed: { "The pair on the scale": "690", Thigh: "60", Knee: "44", Hem: "40", Inseam: "81", Seat: "104", Rise: "32", Waist: "84" },
    says: [/12\.9 ± 1\.1 oz/, /440 g\/m²/, /1\.42 ± 0\.12 m²/],
  },
  {
    // Handbook, section 5, after ASTM D3107: (310 - 250) / 250 = 24 %; (256 - 250) / 250 = 2.4 %; (310 - 256) / 60 = 90 %; ISO: 97.6 %.
    key: "stretch-recovery",
    typed: { "Before the pull": "250", "Under the pull": "310", "After the rest": "256" },
    says: [/^24\.0 ± [\d.]+ %/, /Growth 2\.4 ± [\d.]+ %/, /ASTM D3107 counts it 90 ± [\d.]+ %/, /ISO 20932-1 counts it 97\.6 ± [\d.]+ %/],
  },
  {
    // Handbook, section 6.1: (369 - 380) / 380 = -2.89 %; 1 mm on each: sqrt(1 + 0.97^2) / 380 = 0.37 %.
    key: "shrinkage",
    typed: { "Along the length, before": "380", "Along the length, after": "369" },
    says: [/^-2\.9 ± 0\.4 %/],
  },
  {
    // A flat waist of 42.5 cm is 85 round: front and back lie on each other.
    key: "girth",
    typed: { "What you measure": "A flat width, to be doubled", Reading: "42.5" },
    says: [/^85\.0 ± 0\.6 cm/, /42\.5 ± 0\.3 cm/, /doubled to a girth/],
  },
  {
    // The same tape walked all the way round is not doubled.
    key: "girth",
    typed: { "What you measure": "A flat width, to be doubled", Reading: "85", "The tape went round": true },
    says: [/^85\.0 ± 0\.3 cm/],
  },
  {
    // Handbook, section 2.3, a thread maker's bulletin: 10 per inch of 4.0 lbf, lockstitch, hold 60 lbf/in: 525.4 N on 50 mm, or 53.6 kg.
    key: "seam-strength",
    typed: { Stitch: "Lockstitch, 301", Stitches: "10 per inch", "Thread breaks at": "4 lb" },
    says: [/^54 ± 11 kg/, /Newtons on 50 mm 530 ± 110/, /Pounds-force on an inch 60 ± 12/],
  },
  {
    // 68 ends and 44 picks in an inch: 26.77 and 17.32 to the cm; atan(68 / 44) = 57.1 degrees. Handbook, section 4.6.
    key: "thread-count",
    typed: { Ends: "68", Picks: "44", Window: "25.4" },
    says: [/^26\.8 ± 0\.3 per cm/, /Picks 17\.3 ± 0\.2 per cm/, /57\.1 ± [\d.]+°/],
  },
  {
    // 24 stitches over 76 mm are 24 / 76 * 25.4 = 8.02 to the inch.
    key: "stitch-density",
    typed: { Stitches: "24", Length: "76" },
    says: [/^8\.02 ± 0\.15 per inch · 3\.16 per cm/],
  },
];

for (const { key, typed, says } of WORKED) {
  test(`${key} says what was worked out elsewhere: ${Object.values(typed).join(", ")}`, async () => {
    await visit({ path: `#/bench/${key}` }, async ({ page }) => {
      await fillIn(page, typed);
      const shown = await until(() => said(page), (text) => text !== NOTHING, "a figure", 3000);
      for (const pattern of says) assert.match(shown, pattern);
      assert.equal(await main(page).getByRole("alert").count(), 0);
    });
  });
}

// --- what is refused -----------------------------------------------------------------------------------------------------------

/** What is typed, the label of the field at fault (none: the readings together), and words of the sentence. */
const REFUSED = [
  { key: "cloth-mass-weighed", typed: { ...WORKED[0].typed, "The pair on the scale": "50" }, at: "The pair on the scale", words: /150.*2.?000/ },
  { key: "cloth-mass-weighed", typed: { ...WORKED[0].typed, Thigh: "wide" }, at: "Thigh", words: /number/ },
  { key: "cloth-mass-weighed", typed: { ...WORKED[0].typed, Thigh: "" }, at: "Thigh", words: /type a number/ },
  { key: "cloth-mass-weighed", typed: { ...WORKED[0].typed, "The pair on the scale": "690 cm" }, at: "The pair on the scale", words: /./ },
  { key: "stretch-recovery", typed: { "Before the pull": "310", "Under the pull": "250" }, words: /is to be expected/ },
  { key: "stretch-recovery", typed: { "Before the pull": "250", "Under the pull": "310", "After the rest": "320" }, words: /is to be expected/ },
  { key: "shrinkage", typed: { "Along the length, before": "380", "Along the length, after": "100" }, words: /73\.7/ },
  { key: "shrinkage", typed: { "Along the length, before": "380", "Along the length, after": "369", "Across, before": "200" }, at: "Across, after", words: /needed too/ },
  { key: "girth", typed: { "What you measure": "A flat width, to be doubled", Reading: "-42" }, at: "Reading", words: /number/ },
  { key: "seam-strength", typed: { Stitch: "Lockstitch, 301", Stitches: "10 per inch" }, at: "Thread breaks at", words: /./ },
  { key: "thread-count", typed: { Ends: "6", Window: "10" }, at: "Ends", words: /8 or more/ },
  { key: "thread-count", typed: { Ends: "26.5", Window: "10" }, at: "Ends", words: /whole number/ },
  { key: "stitch-density", typed: { Stitches: "3", Length: "76" }, at: "Stitches", words: /4 or more/ },
  { key: "stitch-density", typed: { Stitches: "400", Length: "76" }, words: /between 2 and 40/ },
];

for (const { key, typed, at, words } of REFUSED) {
  test(`${key} refuses ${Object.values(typed).join(", ")}, ${at ? `at ${at}` : "together"}`, async () => {
    await visit({ path: `#/bench/${key}` }, async ({ page }) => {
      await fillIn(page, typed);
      const alert = main(page).getByRole("alert");
      await alert.first().waitFor({ timeout: 3000 });
      assert.equal(await alert.count(), 1);
      const sentence = await alert.innerText();
      assert.match(sentence, words);
      assert.match(sentence, /^[A-Z“].*\.$/s, "a sentence");
      assert.equal(await said(page), NOTHING, "no number");
      if (!at) return;
      const field = main(page).locator(".reading-form").getByLabel(at, { exact: true });
      assert.equal(await field.getAttribute("aria-invalid"), "true");
      const id = await alert.getAttribute("id");
      assert.ok((await field.getAttribute("aria-describedby")).split(" ").includes(id), "the sentence belongs to the field");
      assert.deepEqual(await violations(page), []);
    });
  });
}

// --- from a check ----------------------------------------------------------------------------------------------------------------

const PX_PER_MM = 6.1;
const GARMENT = RACK[3]; // five checks answered
const CHECK = `#/garment/${GARMENT.id}/check/spi`;

/** Visits the check of stitch density on a screen that knows its size. */
async function atStitches(body) {
  await visitWith(RACK, { path: "#/bench/ruler" }, async (visit) => {
    await fitCard(visit.page, PX_PER_MM);
    await go(visit.page, CHECK, /stitches/);
    await answers(visit.page).first().waitFor();
    await body(visit.page, visit);
  });
}

const openWays = async (page) => main(page).getByRole("button", { name: /Measure it/ }).click();
const way = (page, name) => main(page).locator("label").filter({ hasText: name });
/** What the tape says and how its hump is drawn; a small step does not change its words. */
const tape = async (page) => `${await headline(page)} ${await main(page).locator(".tape-line").first().getAttribute("d")}`;
/** The answer as stored for the check. */
const stored = async (page) => {
  const text = (await storage(page))[`garment-assay/page/${GARMENT.id}`];
  return JSON.parse(text.slice(text.indexOf("\n") + 1)).answers.find(({ check }) => check === "spi");
};
/** Shares of the reading that stand beside the answers, in per cent; none where nothing is said. */
const shares = async (page) => (await main(page).locator(".answer em").allInnerTexts()).map((text) => Number(text.match(/[\d.]+/)[0]));
const density = async (output) => {
  const text = (await output.innerText()).replace(/\s+/g, " ");
  const [, value, spread] = text.match(/([\d.]+) (?:stitches per inch )?± ([\d.]+)/) ?? assert.fail(`no density: ${text}`);
  return { value: Number(value), spread: Number(spread), text };
};

/** That the check is answered by a reading, that undo takes it away and does no more, and that it is there after loading again. */
async function answersTheCheck(page, before) {
  await main(page).getByRole("button", { name: "Take answer back" }).waitFor();
  await kept(page);
  const parts = await shares(page);
  assert.ok(parts.length >= 1 && Math.abs(parts.reduce((sum, part) => sum + part, 0) - 100) <= 2, `shares: ${parts}`);
  assert.equal(await main(page).locator("input[type=radio]:checked").count(), (await main(page).locator("fieldset.ways input:checked").count()), "no answer was judged");
  const after = await until(() => tape(page), (now) => now !== before, "the tape to move");
  const kind = await stored(page);
  assert.ok(kind && !("judged" in kind), JSON.stringify(kind));
  await page.getByRole("button", { name: "Undo" }).click();
  await until(() => tape(page), (now) => now === before, "the tape to move back");
  await kept(page);
  assert.equal(await stored(page), undefined);
  assert.deepEqual(await shares(page), []);
  return after;
}

test("a count typed in answers the check softly, is undone, kept, and can be corrected", async () => {
  await atStitches(async (page) => {
    const before = await tape(page);
    await openWays(page);
    await fillIn(page, { Stitches: "24", Length: "76" });
    const use = main(page).getByRole("button", { name: "Use this reading" });
    await use.click();
    const after = await answersTheCheck(page, before);
    // What was typed is still there to be used again.
    await main(page).getByRole("button", { name: "Use this reading" }).click();
    await until(() => tape(page), (now) => now === after, "the tape to move again");
    await kept(page);
    await reload(page);
    assert.equal(await tape(page), after);
    assert.equal(await main(page).getByRole("textbox", { name: "Stitches", exact: true }).inputValue(), "24");
    assert.equal(await main(page).getByRole("textbox", { name: "Length", exact: true }).inputValue(), "76");
    // 15 over 76 mm are 5.0 to the inch: below what suits.
    await fillIn(page, { Stitches: "15" });
    await main(page).getByRole("button", { name: "Use this reading" }).click();
    await until(() => tape(page), (now) => now !== after, "the tape to move");
    await kept(page);
    await reload(page);
    assert.equal(await main(page).getByRole("textbox", { name: "Stitches", exact: true }).inputValue(), "15");
    assert.ok((await shares(page)).length >= 1);
  });
});

test("a comb laid over the seam answers the check with the pitch of its bars", async () => {
  await atStitches(async (page) => {
    const before = await tape(page);
    await openWays(page);
    await way(page, "Stitches by a comb").click();
    await main(page).getByRole("link", { name: "Open the ruler" }).click();
    const output = main(page).locator("output.marks-figure");
    // Where the comb happens to begin is no reading.
    await output.getByText("The reading appears here.").waitFor();
    assert.ok(await main(page).getByRole("button", { name: "Use this reading" }).isDisabled());
    await main(page).getByLabel("Wider or closer").fill(String(Math.log(2.8).toFixed(3)));
    await output.locator("b").waitFor();
    // Bars as they stand on the page, not as the slider says.
    const bars = await main(page).locator("svg.comb path").evaluate((path) => [...path.getAttribute("d").matchAll(/M0 ([\d.]+)/g)].map((hit) => Number(hit[1])));
    const pitch = (bars.at(-1) - bars[0]) / (bars.length - 1) / PX_PER_MM;
    const read = await density(output);
    assert.ok(Math.abs(read.value - 25.4 / pitch) <= 0.006 + Math.max(0.05, read.spread) && Math.abs(pitch - 2.8) < 0.01, `${read.text} of bars ${pitch} mm apart`);
    // A fine button moves the last bar by half a pixel.
    await main(page).getByRole("button", { name: "Bars a little wider" }).click();
    const moved = await until(
      () => main(page).locator("svg.comb path").evaluate((path) => Number([...path.getAttribute("d").matchAll(/M0 ([\d.]+)/g)].at(-1)[1])),
      (last) => last !== bars.at(-1),
      "the last bar to move",
    );
    assert.ok(Math.abs(moved - bars.at(-1)) <= 0.51, `moved by ${moved - bars.at(-1)} pixels`);
    await main(page).getByRole("button", { name: /^Use 9\.\d/ }).click();
    await answers(page).first().waitFor();
    await answersTheCheck(page, before);
  });
});

test("needle holes tapped on the ruler answer the check within two spreads of where they were", async () => {
  await atStitches(async (page) => {
    const before = await tape(page);
    await openWays(page);
    await way(page, "Stitches by tapping").click();
    await main(page).getByRole("link", { name: "Open the ruler" }).click();
    const strip = main(page).getByRole("button", { name: /^Tap every needle hole/ });
    const box = await strip.boundingBox();
    // 25 holes 3.0 mm apart are 25.4 / 3.0 = 8.467 to the inch; a finger lands up to half a millimetre beside them, now this way, now that.
    const beside = [0.3, -0.5, 0.1, 0.4, -0.2, -0.4, 0.5, 0, -0.3, 0.2];
    for (let hole = 0; hole < 25; hole += 1) {
      await page.touchscreen.tap(box.x + box.width / 2, box.y + 10 + (hole * 3 + beside[hole % 10]) * PX_PER_MM);
    }
    await main(page).getByText("25 taps").waitFor();
    const output = main(page).locator("output.marks-figure");
    const read = await density(output);
    console.log(`  tapped 8.467 per inch, read ${read.value} ± ${read.spread}`);
    assert.ok(Math.abs(read.value - 25.4 / 3) < 2 * read.spread, `read ${read.text}, tapped 8.467`);
    assert.equal(await main(page).locator("p.fault").count(), 0, "no hole is doubted");
    // One tap too many is taken back.
    await page.touchscreen.tap(box.x + 40, box.y + box.height - 4);
    await main(page).getByText("26 taps").waitFor();
    await main(page).getByText(/Was one left out/).waitFor();
    await main(page).getByRole("button", { name: "Undo tap" }).click();
    await main(page).getByText("25 taps").waitFor();
    await main(page).getByRole("button", { name: /^Use 8\.\d/ }).click();
    await answers(page).first().waitFor();
    await answersTheCheck(page, before);
  });
});

test("what was read on the ruler is still there after loading again, and can be read anew", async () => {
  await atStitches(async (page) => {
    await openWays(page);
    await way(page, "Stitches by a comb").click();
    await main(page).getByRole("link", { name: "Open the ruler" }).click();
    await main(page).getByLabel("Wider or closer").fill(String(Math.log(3.2).toFixed(3)));
    await main(page).getByRole("button", { name: /^Use \d/ }).click();
    await answers(page).first().waitFor();
    await kept(page);
    const [after, facts] = [await tape(page), await stored(page)];
    await reload(page);
    assert.equal(await tape(page), after);
    assert.deepEqual(await stored(page), facts);
    assert.match(await said(page), /^7\.9\d? ± /); // 25.4 / 3.2 mm
    await main(page).getByRole("link", { name: "Open the ruler" }).click();
    await main(page).getByLabel("Wider or closer").fill(String(Math.log(5).toFixed(3)));
    await main(page).getByRole("button", { name: /^Use 5\.\d/ }).click();
    await until(async () => JSON.stringify(await stored(page)), (now) => now !== JSON.stringify(facts), "the new reading to be kept");
  });
});

test("cloth weighed on a luggage scale answers its check", async () => {
  await visitWith(RACK, { path: `#/garment/${GARMENT.id}/check/cloth-weight` }, async ({ page }) => {
    await answers(page).first().waitFor();
    await openWays(page);
    await way(page, "Cloth mass by weighing").click();
    await fillIn(page, WORKED[0].typed);
    assert.match(await said(page), /12\.9 ± 1\.1 oz/);
    await main(page).getByRole("button", { name: "Use this reading" }).click();
    await main(page).getByRole("button", { name: "Take answer back" }).waitFor();
    await kept(page);
    // 12.9 ± 1.1 lies mostly between 12 and 14.
    const labels = (await main(page).locator("label.answer").allInnerTexts()).map((text) => text.replace(/\s+/g, " "));
    const share = (name) => Number(labels.find((text) => text.startsWith(name))?.match(/([\d.]+) % of your reading/)?.[1] ?? 0);
    assert.ok(share("12 to 14 oz") > 50 && share("10 to 12 oz") > 5 && share("14 to 16 oz") > 5, labels.join(" | "));
    await reload(page);
    assert.match(await said(page), /12\.9 ± 1\.1 oz/);
    assert.equal(await main(page).getByRole("textbox", { name: "The pair on the scale", exact: true }).inputValue(), "690");
    await page.getByRole("button", { name: "Take answer back" }).click();
    await until(() => main(page).locator(".answer em").count(), (count) => count === 0, "the shares to go");
  });
});

test("a reading on the bench is there again after leaving and loading, and can be corrected", async () => {
  await visit({ path: "#/bench/stitch-density" }, async ({ page }) => {
    const field = (name) => main(page).getByRole("textbox", { name, exact: true });
    await field("Stitches").fill("24");
    await field("Length").fill("76");
    await field("Length").press("Tab");
    await go(page, "#/bench", "Bench");
    await reload(page);
    await go(page, "#/bench/stitch-density", "What to do");
    await until(() => field("Stitches").inputValue(), (value) => value === "24", "the count");
    assert.match(await said(page), /^8\.02 ± 0\.15 per inch/);
    await field("Stitches").fill("25");
    assert.match(await said(page), /^8\.36 ± 0\.15 per inch/);
  });
});

test("a comb laid on the bench lies as it lay after loading again", async () => {
  await visit({ path: "#/bench/ruler" }, async ({ page }) => {
    await fitCard(page, 6);
    await go(page, "#/bench/stitch-comb/marks", "Stitches by a comb");
    await main(page).getByLabel("Wider or closer").fill(String(Math.log(5).toFixed(3)));
    const figure = main(page).locator("output");
    await until(() => figure.innerText(), (text) => /^5\.\d/.test(text), "a reading");
    const before = await figure.innerText();
    await reload(page);
    await until(() => figure.innerText(), (text) => text === before, "the same reading");
  });
});
