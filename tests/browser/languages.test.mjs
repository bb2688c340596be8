// The languages of the interface: which is spoken, that all of a page is, and that its numbers are the browser's.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { test } from "node:test";
import { onEveryScreen } from "./every_screen.mjs";
import { isTooWide, visit } from "./harness.mjs";
import { RACK } from "./rack.mjs";
import { visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");
const lang = (page) => page.locator("html").getAttribute("lang");
const of = (place, screen) => `#/garment/${RACK[place].id}/${screen}`;

/** Messages of a language by their English, from all its files. */
async function messages(tag) {
  const folder = new URL(`../../language/${tag}/`, import.meta.url);
  const all = new Map();
  for (const name of await readdir(folder)) {
    const text = await readFile(new URL(name, folder), "utf8");
    for (const [, english, said] of text.matchAll(/^msgid (".*")\nmsgstr (".*")$/gmu)) all.set(JSON.parse(english), JSON.parse(said));
  }
  return all;
}

test("the page speaks the browser's language, and another when it is chosen", async () => {
  const [german, french] = [await messages("de"), await messages("fr")];
  await visit({ context: { locale: "de-AT" } }, async ({ page }) => {
    assert.equal(await lang(page), "de");
    await main(page).getByRole("heading", { name: german.get("Take a garment in your hands") }).waitFor();
    await page.goto(`${page.url().split("#")[0]}#/settings`);
    await page.locator("[data-language]").selectOption("fr");
    await page.locator("html[lang=fr]").waitFor();
    await main(page).getByRole("heading", { level: 1, name: french.get("Settings") }).waitFor();
    // It is kept.
    await page.reload();
    await main(page).getByRole("heading", { level: 1, name: french.get("Settings") }).waitFor();
    assert.equal(await page.locator("[data-language]").inputValue(), "fr");
    await page.locator("[data-language]").selectOption("");
    await page.locator("html[lang=de]").waitFor();
    await main(page).getByRole("heading", { level: 1, name: german.get("Settings") }).waitFor();
  });
});

test("a browser that speaks none of the languages is spoken to in English", async () => {
  await visit({ context: { locale: "pt-PT" } }, async ({ page }) => {
    assert.equal(await lang(page), "en");
    await main(page).getByRole("heading", { name: "Take a garment in your hands" }).waitFor();
  });
});

test("when the words do not come, that is said, and they are asked for again", async () => {
  const german = await messages("de");
  await visit({ context: { locale: "de" }, before: (context) => context.route("**/language/de/app.po", (route) => route.abort()) }, async (visited) => {
    const { page, context, problems } = visited;
    await main(page).getByRole("link", { name: german.get("Settings") }).click();
    await main(page).getByRole("alert").filter({ hasText: german.get("This part of the app did not load. It needs the network once; after that it works without. Your notes are untouched.") }).waitFor();
    await context.unroute("**/language/de/app.po");
    await main(page).getByRole("button", { name: german.get("Try again") }).click();
    await main(page).getByRole("heading", { level: 1, name: german.get("Settings") }).waitFor();
    problems.length = 0;
  });
});

test("numbers, money and days are written as the browser writes them", async () => {
  const table = JSON.parse(await readFile(new URL("../vectors/locales.json", import.meta.url), "utf8"));
  await visit({}, async ({ page }) => {
    for (const [tag, { plural, decimals, grouped, money }] of Object.entries(table.languages)) {
      const said = await page.evaluate(
        ([tag, plural, decimals, grouped, money]) => ({
          plural: plural.map(([n]) => [n, new Intl.PluralRules(tag).select(n)]),
          decimals: decimals.map(([n]) => [n, new Intl.NumberFormat(tag).format(n)]),
          grouped: grouped.map(([digits]) => [digits, new Intl.NumberFormat(tag, { minimumFractionDigits: (digits.split(".")[1] ?? "").length }).format(Number(digits))]),
          money: money.map(([code, digits]) => [code, digits, new Intl.NumberFormat(tag, { style: "currency", currency: code, currencyDisplay: "code" }).format(Number(digits))]),
        }),
        [tag, plural, decimals, grouped, money],
      );
      assert.deepEqual(said, { plural, decimals, grouped, money }, tag);
    }
  });
  for (const [tag, price, day] of [
    ["de", "215\u00a0EUR", "14. Feb. 2026"],
    ["fr", "215\u00a0EUR", "14 févr. 2026"],
  ]) {
    await visitWith(RACK, { context: { locale: tag }, path: of(0, "result") }, async ({ page }) => {
      const text = await main(page).innerText();
      assert.ok(text.includes(price), `${price} is not in ${text}`);
      assert.ok(text.includes(day), `${day} is not in ${text}`);
    });
  }
});

for (const tag of ["de", "fr"]) {
  test(`no screen can be moved sideways in ${tag}, 320 pixels wide`, async () => {
    const judge = async (page) => {
      assert.equal(await lang(page), tag);
      return (await isTooWide(page)) ? ["too wide"] : [];
    };
    const options = { plain: true, size: "small", context: { locale: tag, viewport: { width: 320, height: 640 } } };
    assert.deepEqual(await onEveryScreen(options, judge), []);
  });
}

// Marks that Playwright takes out of a text before it compares, so that the screens are come to as in English.
const [OPENS, CLOSES] = ["\u200b", "\u00ad"];

/** Words of a page that went through no message: what is written and what is read aloud, but for what somebody typed. */
async function unsaid(page, typed) {
  return page.evaluate(
    ([opens, closes, typed]) => {
      const left = (text) => {
        // A sentence with a link in its middle is a text before it and one after.
        let [depth, out] = [/^[^\u200b]*\u00ad/u.test(text) ? 1 : 0, ""];
        for (const sign of text) {
          if (sign === opens) depth += 1;
          else if (sign === closes) depth -= 1;
          else if (depth === 0) out += sign;
        }
        for (const word of typed) out = out.replaceAll(word, "");
        // Days come from the browser; codes and names are the same in every language.
        const words = out.replaceAll(/\d+\. \p{L}+\.? \d{4}/gu, "").replaceAll(/\b(?:[A-Z\d]{4}-[A-Z\d]{4}|[A-Z]{2,}[-A-Z\d]*|Garment Assay)\b/gu, "");
        return /\p{L}{3}/u.test(words) ? out.trim() : "";
      };
      const found = new Set();
      const walk = document.createTreeWalker(document.body, window.NodeFilter.SHOW_TEXT | window.NodeFilter.SHOW_ELEMENT);
      for (let node = walk.currentNode; node; node = walk.nextNode()) {
        const element = node.nodeType === window.Node.TEXT_NODE ? node.parentElement : node;
        if (element.closest("script, noscript, style, [data-typed], [lang]:not(html), #crash")) continue;
        const texts = node.nodeType === window.Node.TEXT_NODE ? [node.data] : ["aria-label", "alt", "title", "placeholder", "aria-description", "aria-valuetext", "aria-roledescription"].map((name) => node.getAttribute(name) ?? "");
        for (const text of texts) if (left(text)) found.add(left(text));
      }
      if (left(document.title.replace("Garment Assay", ""))) found.add(`title: ${left(document.title)}`);
      return [...found];
    },
    [OPENS, CLOSES, typed],
  );
}

test("every word on every screen is said by a message", async () => {
  const marked = (text) => text.replaceAll(/^msgid (".*")\nmsgstr ".*"$/gmu, (whole, english) => (english === '""' ? whole : `msgid ${english}\nmsgstr "${OPENS}${english.slice(1, -1)}${CLOSES}"`));
  const before = async (context) => {
    await context.route("**/language/de/*.po", async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: marked(await answer.text()) });
    });
    await context.route("**/learn/de/*.txt", async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: (await answer.text()).replaceAll(/^([a-z]+: )(.*)$/gmu, `$1${OPENS}$2${CLOSES}`) });
    });
  };
  const unreached = [];
  const names = ["Mid-blue straight leg", "Inseam, felled; one place of 2 cm where it runs off the edge", "Robin", "Kim", "Label", "Guessed before it was seen", "Dark rigid, seen again"];
  const typed = [...names, ...RACK.flatMap(({ label, place, note }) => [label, place, note])].filter(Boolean);
  const impatient = async (context) => {
    await before(context);
    context.setDefaultTimeout(4000);
  };
  const found = await onEveryScreen({ before: impatient, unreached, context: { locale: "de" } }, async (page, screen) =>
    // Licences are quoted.
    screen.startsWith("licences") ? [] : unsaid(page, typed),
  );
  // Each once, with the first screen that it is on.
  const once = new Map(found.toReversed().map((line) => [line.slice(line.indexOf(": ")), line]));
  assert.equal([...once.values()].toReversed().join("\n"), "");
  // What one does there is done in English words and English numbers, which does not succeed everywhere.
  assert.ok(unreached.length < 25, `not come to: ${unreached}`);
});
