// Every screen with the keyboard alone: what Tab reaches, whether it is seen where one is, and whether one comes away again.

import assert from "node:assert/strict";
import { test } from "node:test";
import { colours } from "./colours.mjs";
import { onEveryScreen, onEveryScreenAlone } from "./every_screen.mjs";

/** Looks about in the page; each function is one look. */
function prepare() {
  const shown = (element) => element.checkVisibility({ visibilityProperty: true }) && element.getClientRects().length > 0;
  const words = (element) =>
    `${element.localName} "${(element.getAttribute("aria-label") ?? element.labels?.[0]?.textContent ?? element.textContent).replace(/\s+/g, " ").trim().slice(0, 40)}"`;
  const parts = (colour) => colour.match(/[\d.]+/g).map(Number);
  const { contrast } = window.colours;
  const ground = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const colour = parts(window.getComputedStyle(at).backgroundColor);
      if (colour.length === 3 || colour[3] > 0.5) return colour;
    }
    return [255, 255, 255];
  };
  /** All that Tab should reach, a set of radio buttons once. */
  const stops = () => {
    const within = document.querySelector("dialog[open]") ?? document.body;
    const all = [...within.querySelectorAll("a[href], button, input, select, textarea, summary, [tabindex]")].filter((element) => shown(element) && !element.disabled && element.tabIndex >= 0 && !element.closest("[inert]"));
    const sets = new Set();
    return all.filter((element) => {
      if (element.type !== "radio") return true;
      const key = `${element.form?.id ?? ""} ${element.name}`;
      if (sets.has(key)) return false;
      sets.add(key);
      return true;
    });
  };
  const seen = new Set();
  let last;
  window.tabs = {
    start: () => {
      seen.clear();
      window.scrollTo(0, 0);
      if (!document.querySelector("dialog[open]")) {
        // From the very top, wherever a step before this pressed last.
        document.body.tabIndex = -1;
        document.body.focus();
        document.body.removeAttribute("tabindex");
      }
      return stops().length;
    },
    /** What has focus now, and what is wrong with how it is seen. */
    look: () => {
      const element = document.activeElement;
      if (!element || element === document.body || element === document.documentElement) return { out: true };
      // A date has several stops within it.
      if (element === last && element.type === "date") return { within: true };
      last = element;
      const again = seen.has(element);
      seen.add(element);
      const faults = [];
      // A field that is out of sight is seen by its label.
      const bearers = [element, element.labels?.[0], element.closest(".answer, .chip, .file, .rack-pick, .tick"), element.querySelector(".reach")].filter(Boolean);
      const best = Math.max(
        ...bearers.map((bearer) => {
          const style = window.getComputedStyle(bearer);
          if (Number(style.opacity) < 0.5) return 0;
          if (bearer.matches(".reach")) return parts(style.stroke).length === 3 ? contrast(parts(style.stroke), ground(bearer.closest("div"))) : 0;
          if (style.outlineStyle === "none" || Number.parseFloat(style.outlineWidth) < 2) return 0;
          const offset = Number.parseFloat(style.outlineOffset);
          return contrast(parts(style.outlineColor), ground(offset < 0 ? bearer : bearer.parentElement));
        }),
      );
      if (best < 3) faults.push(`focus is hardly seen (contrast ${best.toFixed(1)}): ${words(element)}`);
      return { again, faults, covered: window.tabs.covered(), words: words(element), ...window.tabs.place() };
    },
    covered: () => {
      const element = document.activeElement;
      const box = (element.labels?.[0] && ["radio", "checkbox", "file"].includes(element.type) ? element.labels[0] : element).getBoundingClientRect();
      // Of what is taller than the window a part is on view.
      const top = box.top < 0 && box.bottom > 40 ? Math.min(box.bottom - 20, window.innerHeight / 2) : box.top + Math.min(box.height / 2, 20);
      const [x, y] = [box.left + box.width / 2, top];
      const on = document.elementFromPoint(x, y);
      const label = element.labels?.[0];
      const free = on && (on === element || element.contains(on) || on.contains(element) || label?.contains(on));
      return free ? "" : `${words(element)} at ${Math.round(x)}, ${Math.round(y)} is covered by ${on?.closest("[class]")?.getAttribute("class") ?? "nothing: it is out of the window"}`;
    },
    place: () => {
      const element = document.activeElement;
      const box = (element.labels?.[0] && ["radio", "checkbox", "file"].includes(element.type) ? element.labels[0] : element).getBoundingClientRect();
      const pinned = element.closest(".foot, .tape-pinned, .fit-pinned, .sbs-heads, .toast, .seam-said, .live-over, .live-zoom") !== null;
      // Handles on a picture stand where they were set, and are gone through in the order in which they are set.
      const handle = element.localName === "g";
      return { top: box.top + window.scrollY, bottom: box.bottom + window.scrollY, pinned: pinned || handle, left: box.left };
    },
    missed: () => stops().filter((element) => !seen.has(element) && !(element.type === "radio" && [...seen].some((one) => one.type === "radio" && one.name === element.name))).map(words),
    early: () => [...document.querySelectorAll("[tabindex]")].filter((element) => element.tabIndex > 0).map(words),
  };
}

/** At most so many stops are walked of a list as long as that of the licences. */
const PATIENCE = 150;

async function walk(page) {
  await page.evaluate(colours);
  await page.evaluate(prepare);
  const found = (await page.evaluate(() => window.tabs.early())).map((words) => `taken out of order: ${words}`);
  const expected = await page.evaluate(() => window.tabs.start());
  const dialog = (await page.getByRole("dialog").count()) > 0;
  let before;
  let stops = 0;
  let ended = false;
  for (let pressed = 0; pressed < Math.min(expected + 20, PATIENCE); pressed += 1) {
    await page.keyboard.press("Tab");
    let now = await page.evaluate(() => window.tabs.look());
    if (now.within) continue;
    if (now.out || now.again) {
      ended = true;
      if (dialog && stops < expected) continue;
      break;
    }
    stops += 1;
    for (let tries = 0; now.covered && tries < 10; tries += 1) {
      // The browser brings it into view a moment later.
      await page.waitForTimeout(30);
      now = { ...now, covered: await page.evaluate(() => window.tabs.covered()) };
    }
    found.push(...now.faults);
    if (now.covered) found.push(now.covered);
    // On a phone all stands in one column, or a few beside each other.
    if (before && !now.pinned && !before.pinned && now.bottom <= before.top - 4 && now.left <= before.left + 40) found.push(`goes up: from ${before.words} to ${now.words}`);
    before = now;
  }
  if (expected < PATIENCE - 8) {
    if (!ended) found.push(`no way out after ${stops} stops`);
    for (const words of await page.evaluate(() => window.tabs.missed())) found.push(`Tab never comes to ${words}`);
  }
  if (dialog) {
    await page.keyboard.press("Escape");
    await page.getByRole("dialog").waitFor({ state: "detached" });
    const back = await page.evaluate(() => document.activeElement !== document.body);
    if (!back) found.push("focus is nowhere after the dialog");
  }
  return found;
}

test("Tab reaches all there is on every screen, in order, seen and not covered", async () => {
  assert.deepEqual(await onEveryScreen({ size: "small", context: { reducedMotion: "reduce" } }, walk), []);
});

test("and on the screens that want a window of their own, by night", async () => {
  assert.deepEqual(await onEveryScreenAlone({ size: "small", scheme: "dark", context: { reducedMotion: "reduce" } }, walk), []);
});
