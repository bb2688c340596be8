// What a person does with a page and sees on it, the same in every engine. A driver gives only these: open, reload, run (a function in the
// page), press (a place on the screen), keys, setFiles, picture, size.
//
// Things are found as a person would name them: `{ button: "Undo" }`, `{ link: /^Begin/ }`, `{ text: "Imported" }`, `{ css: ".tape" }`;
// a string is the whole name of a thing, and a part of a text. `in` looks only inside another thing; `nth` takes a later one.

import { readdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";

const KEYS = { Enter: "\uE007", Tab: "\uE004", Escape: "\uE00C", Backspace: "\uE003", ArrowLeft: "\uE012", ArrowUp: "\uE013", ArrowRight: "\uE014", ArrowDown: "\uE015" };

/** Runs in the page: all that is meant by `what` and can be seen, or is a field out of sight whose label can. */
function find(what) {
  const plain = (text) => (text ?? "").replace(/\s+/g, " ").trim();
  const SELECTORS = {
    button: "button, [role=button]",
    link: "a[href]",
    heading: "h1, h2, h3, h4",
    radio: "input[type=radio], [role=radio]",
    box: "input[type=checkbox]",
    file: "input[type=file]",
    field: "input:not([type=radio], [type=checkbox], [type=file]), textarea, select",
    dialog: "dialog[open], [role=dialog]",
    alert: "[role=alert]",
    picture: "svg[role=img], img",
    css: null,
    text: "*",
  };
  const kind = Object.keys(SELECTORS).find((key) => key in what);
  const words = what[kind];
  const like = words?.source !== undefined ? new RegExp(words.source, words.flags) : undefined;
  const fits = (text) => (like ? like.test(text) : kind === "text" ? text.includes(words) : text === words);
  const name = (element) => {
    const by = element.getAttribute("aria-labelledby")?.split(" ").map((id) => document.getElementById(id)?.textContent).join(" ");
    return plain(element.getAttribute("aria-label") ?? by ?? element.labels?.[0]?.textContent ?? element.getAttribute("alt") ?? element.textContent);
  };
  const seen = (element) => element.getClientRects().length > 0 && window.getComputedStyle(element).visibility !== "hidden";
  const inside = what.in ? find(what.in) : [document];
  if (kind === "css") return inside.flatMap((root) => [...root.querySelectorAll(words)]).filter(seen);
  const all = inside.flatMap((root) => [...root.querySelectorAll(SELECTORS[kind])]);
  if (kind !== "text") return all.filter((element) => (words === true || fits(name(element))) && (seen(element) || (element.labels?.[0] && seen(element.labels[0]))));
  const have = new Set(all.filter((element) => fits(plain(element.textContent))));
  for (const element of have) for (let up = element.parentElement; up; up = up.parentElement) have.delete(up);
  return [...have].filter(seen);
}

/** Runs in the page: brings it into view, waits until it stands still, and says where to press. */
async function aim(element) {
  const fields = ["radio", "checkbox", "file"].includes(element.type);
  const target = fields && element.labels?.[0] ? element.labels[0] : element;
  target.scrollIntoView({ block: "center", behavior: "instant" });
  let before;
  for (let look = 0; look < 40; look += 1) {
    const { x, y, width, height } = target.getClientRects()[0] ?? {};
    const now = `${x} ${y} ${width} ${height}`;
    if (now === before) {
      const place = { x: Math.round(x + width / 2), y: Math.round(y + height / 2) };
      const top = document.elementFromPoint(place.x, place.y);
      return { ...place, free: top !== null && (target.contains(top) || top.contains(target)), usable: !element.matches(":disabled") };
    }
    before = now;
    await new Promise((done) => window.setTimeout(done, 25));
  }
  return { free: false, usable: true, restless: true };
}

const packed = (what) =>
  Object.fromEntries(Object.entries(what).map(([key, value]) => [key, value instanceof RegExp ? { source: value.source, flags: value.flags } : key === "in" ? packed(value) : value]));
const told = (what) => JSON.stringify(what, (_, value) => (value instanceof RegExp ? String(value) : value));
const PATIENCE = Number(process.env.ENGINES_PATIENCE ?? 40_000);
const pause = (time) => new Promise((done) => setTimeout(done, time));

/** Waits until something that `look` tells is as `wanted` says. Returns what was seen. */
export async function until(look, wanted = Boolean, what = "it", patience = PATIENCE) {
  const deadline = Date.now() + patience;
  let seen;
  do {
    seen = await look();
    if (wanted(seen)) return seen;
    await pause(30);
  } while (Date.now() < deadline);
  throw new Error(`waited in vain for ${what}; last seen: ${JSON.stringify(seen)}`);
}

export function hand(driver) {
  /** Runs a function in the page on the thing meant, other values behind it; `undefined` where there is no such thing. */
  const on = (what, act, ...values) =>
    driver.run(`async (what, ...values) => { ${find}; const element = find(what)[what.nth ?? 0]; return element && { value: await (${act})(element, ...values) }; }`, packed(what), ...values).then((found) => found?.value);
  const count = (what) => driver.run(`(what) => { ${find}; return find(what).length; }`, packed(what));
  const texts = (what) => driver.run(`(what) => { ${find}; return find(what).map((element) => (element.innerText ?? element.textContent).replace(/\\s+/g, " ").trim()); }`, packed(what));
  const read = (act, ...values) => driver.run(`async (...values) => (${act})(...values)`, ...values);
  const hash = () => read(() => location.hash);

  /** Waits until it is there, and returns its text. */
  async function see(what, patience) {
    await until(() => count(what), (found) => found > (what.nth ?? 0), told(what), patience);
    return (await texts(what))[what.nth ?? 0];
  }
  const gone = (what) => until(() => count(what), (found) => found === 0, `no more ${told(what)}`);
  async function tap(what) {
    const place = await until(() => on(what, aim), (found) => found?.free && found.usable, `a way to press ${told(what)}`);
    await driver.press(place.x, place.y);
  }
  async function type(text) {
    await driver.keys([...text]);
  }
  async function press(...keys) {
    await driver.keys(keys.map((key) => KEYS[key] ?? key));
  }
  const leave = () => read(() => document.activeElement?.blur());
  /** Types into a field. A page that has just come gives the keyboard to its heading, so what went astray is typed again. */
  async function fill(what, text) {
    await see(what);
    await until(
      async () => {
        const here = await on(what, (element) => {
          element.scrollIntoView({ block: "center", behavior: "instant" });
          element.focus();
          element.select?.();
          return document.activeElement === element;
        });
        if (!here) return undefined;
        await (text === "" ? press("Backspace") : type(text));
        await pause(40);
        return value(what);
      },
      (now) => now === text,
      `${told(what)} to read ${text}`,
    );
  }
  const value = (what) => on(what, (element) => element.value);
  const checked = (what) => on(what, (element) => element.checked ?? element.getAttribute("aria-checked") === "true");
  /** Chooses from a list by what the choice is called or by its key: the list itself is the system's, which no driver opens. */
  async function pick(what, choice) {
    await see(what);
    const done = await on(
      what,
      (element, choice) => {
        const option = [...element.options].find((option) => option.value === choice || option.textContent.trim() === choice);
        if (!option) return false;
        element.value = option.value;
        element.dispatchEvent(new window.Event("input", { bubbles: true }));
        element.dispatchEvent(new window.Event("change", { bubbles: true }));
        return true;
      },
      choice,
    );
    if (!done) throw new Error(`no choice ${choice} in ${told(what)}`);
  }
  /** Waits until the program stands and nothing is on its way. */
  async function started() {
    await until(() => read(() => document.querySelector("#app h1") !== null && document.querySelector("#app .skeleton, main [aria-busy=true]") === null), Boolean, "the app");
  }
  async function go(to, heading) {
    await read((to) => void (location.hash = to), to);
    if (heading) await see({ heading });
    await started();
  }
  async function open(url) {
    await driver.open(url);
    await started();
  }
  async function reload() {
    await driver.reload();
    await started();
  }
  const kept = () => until(() => read(() => document.querySelector('.kept[data-state="kept"]') !== null), Boolean, "it to be kept");

  /** Presses what saves a file; returns its name and bytes. */
  async function save(what) {
    const files = async () => (await readdir(driver.downloads)).filter((name) => /\.(json|zip|csv|txt|pdf)$/.test(name));
    const before = new Set(await files());
    await tap(what);
    const [name] = await until(async () => (await files()).filter((name) => !before.has(name)), (found) => found.length === 1, "a saved file");
    const path = join(driver.downloads, name);
    await until(async () => { const { size } = await stat(path); await pause(100); return size > 0 && (await stat(path)).size === size; }, Boolean, "the whole of it");
    return { name, path, bytes: await readFile(path) };
  }
  /** Chooses files for a field. */
  async function choose(what, ...files) {
    await see({ ...what });
    await driver.setFiles(`(what) => { ${find}; return find(what)[0]; }`, [packed(what)], files);
  }
  /** Presses a place inside a thing, told in parts of its width and height. */
  async function pressIn(what, across, down) {
    await see(what);
    await on(what, (element) => element.scrollIntoView({ block: "center", behavior: "instant" }));
    await pause(60);
    const box = await on(what, (element) => { const { x, y, width, height } = element.getBoundingClientRect(); return { x, y, width, height }; });
    await driver.press(Math.round(box.x + across * box.width), Math.round(box.y + down * box.height));
  }
  /** How many pixels the page is wider than the screen. */
  const tooWide = () => read(() => document.documentElement.scrollWidth - window.innerWidth);

  return { driver, on, count, texts, read, hash, see, gone, tap, type, press, leave, fill, value, checked, pick, go, open, reload, kept, save, choose, pressIn, tooWide, started };
}
