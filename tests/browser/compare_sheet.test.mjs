// The short list and the order of value on the rack, and two to four garments on one printed page.

import assert from "node:assert/strict";
import { test } from "node:test";
import { readFile } from "node:fs/promises";
import { printed } from "./pdf.mjs";
import { garment, JACKET, OFFERS, RACK, YEN } from "./rack.mjs";
import { go, kept, reload, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const INVENTED = JSON.parse(await readFile(new URL("../../web/invented-rack.json", import.meta.url), "utf8"));
const sheet = (...garments) => `#/beside-sheet/${garments.map(({ id }) => id).join("/")}`;
const rows = (page) => main(page).locator(".rack-row");
const names = (page) => rows(page).locator("b:not(.rack-mark)").allTextContents();
const show = (page, key) => main(page).getByRole("combobox", { name: "Show" }).selectOption(key);
const order = (page, key) => main(page).getByRole("combobox", { name: "Order" }).selectOption(key);

async function choose(page, labels) {
  await main(page).getByRole("button", { name: "Choose" }).click();
  for (const label of labels) await main(page).getByRole("checkbox", { name: new RegExp(`^${label}`) }).check();
}

test("the short list is filled from the chosen ones, marked, shown alone, printed, and emptied again; empty, it says how to fill it", async () => {
  const plain = OFFERS.map((offer) => ({ ...offer, terms: { ...offer.terms, shortlisted: undefined } }));
  await visitWith(plain, { size: "small" }, async ({ page }) => {
    await show(page, "short");
    await main(page).getByText("Nothing is on the short list yet.").waitFor();
    await show(page, "all");
    await choose(page, [OFFERS[0].label, OFFERS[2].label]);
    await main(page).getByRole("button", { name: "On the short list" }).click();
    await page.getByText("On the short list: 2 garments.").waitFor();
    await until(() => rows(page).locator(".rack-mark").count(), (count) => count === 2, "two marks");
    await kept(page);
    await reload(page);
    await show(page, "short");
    await until(() => rows(page).count(), (count) => count === 2, "the two");
    const link = main(page).getByRole("link", { name: "Print these side by side on one page" });
    assert.equal((await link.getAttribute("href")).split("/").length, 4);
    await link.click();
    await page.getByRole("heading", { name: "Comparison sheet" }).waitFor();
    await go(page, "#/", "Rack");
    await show(page, "all");
    await choose(page, [OFFERS[0].label, OFFERS[1].label]);
    // One of the two is on it: the button puts on, and does not take off.
    await main(page).getByRole("button", { name: "On the short list" }).waitFor();
    await main(page).getByRole("checkbox", { name: new RegExp(`^${OFFERS[1].label}`) }).uncheck();
    await main(page).getByRole("button", { name: "Off the short list" }).click();
    await until(() => rows(page).locator(".rack-mark").count(), (count) => count === 1, "one mark");
  });
});

test("the order of value sets like against like, says what is about the same, and what has no place and why", async () => {
  const twin = { ...OFFERS[0], id: "o6-twin", label: "Twin of the mill’s", terms: { ...OFFERS[0].terms, prices: [{ from: 300, minor: 900 }] } };
  await visitWith([...OFFERS, twin, ...RACK, YEN], {}, async ({ page }) => {
    await order(page, "worth");
    await until(() => rows(page).locator(".rack-worth").count(), (count) => count === OFFERS.length + RACK.length + 2, "a line on each");
    const called = await names(page);
    const lines = await rows(page).locator(".rack-worth").allTextContents();
    const line = (label) => lines[called.findIndex((name) => name.startsWith(label))];
    const place = (label) => called.findIndex((name) => name.startsWith(label));
    assert.ok(place(twin.label) < place(OFFERS[0].label), "a cheaper twin stands no lower");
    assert.ok(place(OFFERS[0].label) < place(OFFERS[3].label), called.join(", "));
    assert.match(line(twin.label), /^Value: better made for no more money than about \d of 5 others of its kind; hardly any beats it so\.$/);
    assert.ok(lines.some((text) => text.startsWith("About the same value as the one above: ")), lines.join("\n"));
    assert.match(line("Narrow loom"), /^Not in the order of value\. Fewer than three others of its kind/);
    assert.match(line("Grey carpenter"), /lies face down/);
    assert.match(line("My everyday pair"), /No price is noted/);
    const first = lines.findIndex((text) => text.startsWith("Not in"));
    assert.ok(lines.slice(first).every((text) => text.startsWith("Not in")), "those without a place stand last");
    await main(page).getByText("What this order means").click();
    await main(page).getByText(/what better making is worth to you is yours to say/).waitFor();
    await order(page, "newest");
    await until(() => rows(page).locator(".rack-worth").count(), (count) => count === 0, "no line in another order");
  });
});

test("a comparison sheet of two, three and four is one page of A4 and of Letter, and another program reads all its text there", async () => {
  const long = (id, quality) => ({
    ...garment(id, { label: `A sample with a very long name, ${id}, that somebody dictated in a hurry`, place: "A stand far away at the end of the third hall", answers: 60, quality }),
    terms: { ...OFFERS[0].terms, supplier: "A mill whose name is as long as its looms are wide and then some", incoterm: "FOB", currency: "USD" },
  });
  const longest = [long("l1", 0.95), long("l2", 0.6), long("l3", 0.35), long("l4", 0.05)];
  const sets = [
    OFFERS.slice(0, 2), OFFERS.slice(0, 3), OFFERS.slice(0, 4), [RACK[0], RACK[1]], [RACK[0], RACK[4]], [RACK[5], RACK[6], YEN], [RACK[0], JACKET],
    longest.slice(0, 2), longest.slice(1), longest,
  ];
  await visitWith([...RACK, ...OFFERS, ...longest, YEN, JACKET], { size: "desk" }, async ({ page }) => {
    for (const set of sets) {
      await go(page, sheet(...set), "Comparison sheet");
      await printed(page, set.map(({ id }) => id).join(", "));
    }
  });
});

test("invented garments side by side, of a kind and of four kinds, are one page each", async () => {
  await visitWith([], {}, async ({ page }) => {
    await main(page).getByRole("button", { name: "Look round in an invented rack" }).click();
    await until(() => rows(page).count(), (count) => count === INVENTED.count, "the garments");
    const of = INVENTED.garments;
    for (const set of [of.slice(0, 4), [of[4], of[5], of[6]], [of[0], of[7], of[13], of[19]], [of[16], of[17], of[18], of[2]], [of[20], of[21]]]) {
      await go(page, sheet(...set), "Comparison sheet");
      await printed(page, set.map(({ id }) => id).join(", "));
    }
  });
});

test("the comparison sheet says what differs first, what is judgement and what was not looked at; a ticket face down is not on it; it prints", async () => {
  await visitWith([...RACK, ...OFFERS], {}, async ({ page }) => {
    await go(page, `#/beside/${OFFERS[0].id}/${OFFERS[3].id}`, "Side by side");
    await main(page).getByRole("link", { name: "Comparison sheet to print" }).click();
    await page.getByRole("heading", { name: "Comparison sheet" }).waitFor();
    const text = await main(page).locator(".bs-sheet").innerText();
    for (const said of [/14\.00 landed, 300 pieces; margin \d+ %/, /Not: /, /What is judgement: bands/, /is better made than/, /Value: better made for no more money/]) assert.match(text, said);
    await go(page, sheet(RACK[0], RACK[6]), "Comparison sheet");
    const covered = await main(page).locator(".bs-sheet").innerText();
    assert.ok(covered.includes("lies face down") && !covered.replace(/\s/g, "").includes("12900"), covered);
    await page.evaluate(() => {
      window.print = () => (window.printed = true);
    });
    await main(page).getByRole("button", { name: "Print", exact: true }).click();
    assert.equal(await page.evaluate(() => window.printed), true);
    await go(page, "#/beside-sheet/a1-rigid", "Comparison sheet");
    await main(page).getByText(/^Set Dark rigid straight beside/).waitFor();
  });
});
