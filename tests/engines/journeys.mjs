// What somebody does with the app, once for all engines: each is [what it shows, the journey, what it needs]. All begin as a first visit, or
// with what `rack` says noted already. `copies` lets the app make its copy for use without a network.

import assert from "node:assert/strict";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pages as pdfPages } from "../browser/pdf.mjs";
import { FILE as SEAM, TRUTH } from "../browser/picture.mjs";
import { CHECKS, OFFERS, RACK } from "../browser/rack.mjs";
import { until } from "./hand.mjs";

const ANSWERED = "Take answer back";
const TAPE = { css: "main .tape-lead" };
const headline = (hand) => hand.on(TAPE, (lead) => [...lead.children].map((part) => part.textContent).join(", "));
const facts = async (hand, id) => JSON.parse((await hand.read((id) => window.localStorage.getItem(`garment-assay/page/${id}`), id)).split("\n")[1]);

/** Starts the check of a new garment, and waits for its first question. Returns the garment's id. */
async function begin(hand, { label, price } = {}) {
  await hand.go("#/new", "Check a garment");
  if (label) await hand.fill({ field: /^A name for it/ }, label);
  if (price) await hand.fill({ field: /^Price/ }, price);
  await hand.tap({ button: "Start checking" });
  await hand.see({ radio: true });
  await hand.kept();
  return (await hand.hash()).split("/")[2];
}

/** Answers the check on the screen by tapping the answer at that place. */
async function answer(hand, place) {
  const labels = { css: "main label:has(input[type=radio])" };
  await hand.tap({ ...labels, nth: Math.min(place, (await hand.count(labels)) - 1) });
  await hand.see({ button: ANSWERED });
  await hand.kept();
}

async function next(hand) {
  const put = () => hand.texts({ css: "main h2" }).then(([first]) => first);
  const before = await put();
  await hand.tap({ button: /^(Next check|Skip for now|See the result)$/ });
  await until(put, (now) => now !== before && now !== undefined, "the next question");
}

export async function countStitches(hand) {
  await hand.go("#/bench/stitch-photo/picture", "Stitches from a photograph");
  await hand.choose({ file: "Choose a picture" }, SEAM);
  const picture = { css: "main [role=application] > img" };
  await hand.see(picture);
  await until(() => hand.on(picture, (image) => image.complete && image.naturalWidth > 0), Boolean, "the picture");
  for (const [done, [x, y]] of TRUTH.marks.entries()) {
    await hand.pressIn(picture, (x + 0.5) / TRUTH.size[0], (y + 0.5) / TRUTH.size[1]);
    await until(() => hand.count({ css: "main .set-mark" }), (count) => count === done + 1, `mark ${done + 1}`);
  }
  await hand.tap({ button: "Count the stitches" });
  const reading = Number(await hand.see({ css: "main output.marks-figure b" }));
  assert.ok(Math.abs(reading - TRUTH.perInch) < 0.3, `${reading} against ${TRUTH.perInch}`);
}

async function firstVisit({ hand, problems }) {
  await until(() => hand.read(() => document.title), (title) => title === "Rack · Garment Assay", "the title of the rack");
  assert.ok((await hand.tooWide()) <= 0, "it can be moved sideways");
  const fonts = await until(
    () => hand.read(() => [...document.fonts].filter((face) => face.status === "loaded").map((face) => face.family.replaceAll('"', ""))),
    (found) => found.includes("Instrument Sans"),
    "the typeface",
  );
  assert.ok(fonts.length > 0);
  const refused = await hand.read(async () => {
    const inline = document.createElement("script");
    try {
      inline.textContent = "window.intruded = true";
    } catch {
      // Where the engine knows trusted types it refuses already here.
    }
    document.head.append(inline);
    const other = await fetch("http://127.0.0.2:9/").then(() => "answered", () => "refused");
    return { inline: window.intruded === undefined, other };
  });
  assert.deepEqual(refused, { inline: true, other: "refused" });
  problems.expected = /^policy: |Content.Security.Policy|127\.0\.0\.2|TypeError.*(script|TrustedScript)|Refused to/i;
}

async function wholeCheck({ hand }) {
  await hand.tap({ link: "Check a garment" });
  await hand.see({ heading: "Check a garment" });
  const id = await begin(hand, { label: "Mid-blue straight leg", price: "89.90" });
  // An answer, and it is taken back.
  const before = await headline(hand);
  await answer(hand, 0);
  const after = await until(() => headline(hand), (now) => now !== before, "the tape to move");
  await hand.tap({ button: "Undo" });
  await until(() => headline(hand), (now) => now === before, "the tape to move back");
  await answer(hand, 0);
  await until(() => headline(hand), (now) => now === after, "the tape to move again");
  await next(hand);
  for (let made = 0; made < 12; made += 1) {
    if (made === 4) await hand.tap({ button: /^Can.t tell$/ });
    else await answer(hand, made % 3);
    await hand.see({ button: ANSWERED });
    if (made === 5) {
      await hand.tap({ button: "Add a note" });
      await hand.fill({ field: "Note on this check" }, "Seen under the lamp by the till");
      await hand.leave();
      await hand.kept();
    }
    await next(hand);
  }

  // A typed count, at a check reached through the list.
  await hand.go(`#/garment/${id}/checks`, "All checks");
  await hand.tap({ link: /^Stitch density/ });
  await hand.tap({ button: /Measure it/ });
  await hand.fill({ field: /^Stitches/ }, "24");
  await hand.fill({ field: /^Length/ }, "76");
  await hand.tap({ button: "Use this reading" });
  await hand.see({ button: "Used" });
  await hand.kept();
  const counted = await headline(hand);

  await hand.reload();
  assert.equal(await hand.value({ field: /^Stitches/ }), "24", "a reload keeps the reading");
  assert.equal(await headline(hand), counted);
  await hand.go(`#/garment/${id}/result`, "What this does not say");
  assert.equal(await headline(hand), counted);
  await hand.see({ text: "EUR 89.90" });
  assert.equal((await facts(hand, id)).answers.length, 14);
  // The mirror in IndexedDB has it too.
  const mirrored = await hand.read(
    (key) =>
      new Promise((done, failed) => {
        const opening = window.indexedDB.open("garment-assay");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction("pages").objectStore("pages").get(key);
          asked.onsuccess = () => done(asked.result === window.localStorage.getItem(key));
        };
      }),
    `garment-assay/page/${id}`,
  );
  assert.ok(mirrored, "the mirror is the page");
}

async function outAndIn({ hand }) {
  await hand.go("#/settings", "Settings");
  const { name, path, bytes } = await hand.save({ button: "Export everything" });
  assert.match(name, /^garment-assay-\d{4}-\d\d-\d\d.*\.json$/);
  assert.equal(JSON.parse(bytes).garments.length, RACK.length);
  await hand.tap({ button: "Erase everything" });
  await hand.tap({ button: "Keep it", in: { dialog: true } });
  await hand.gone({ dialog: true });
  await hand.tap({ button: "Erase everything" });
  await hand.tap({ button: "Erase", in: { dialog: true } });
  await hand.tap({ button: "Yes, erase all", in: { dialog: true } });
  await hand.see({ text: "Everything is erased." });
  assert.equal(await hand.read(() => Object.keys(window.localStorage).filter((key) => key.startsWith("garment-assay/page/")).length), 0);

  await hand.go("#/settings", "Settings");
  await hand.choose({ file: "Choose a file to import" }, path);
  await hand.see({ text: `${RACK.length} new, will be added` });
  await hand.tap({ button: "Merge" });
  await hand.see({ text: `Imported: ${RACK.length} added` });
  await hand.kept();
  await hand.go("#/", "Rack");
  await until(() => hand.count({ css: "main .rack-row" }), (count) => count === RACK.length, "the rack");
  // Cut short it is refused, and nothing is changed.
  const half = join(hand.driver.downloads, "half.json");
  await writeFile(half, bytes.subarray(0, bytes.length / 2));
  await hand.go("#/settings", "Settings");
  await hand.choose({ file: "Choose a file to import" }, half);
  assert.match(await hand.see({ alert: /cut short or was altered|not a rack exported/ }), /Nothing was changed/);
}

async function ticket({ hand }) {
  await hand.go("#/new", "Check a garment");
  await hand.fill({ field: /^A name for it/ }, "Dark straight leg");
  await hand.tap({ text: "Lay it face down" });
  await hand.fill({ field: /^Price/ }, "99.90");
  assert.equal(await hand.on({ field: /^Price/ }, (field) => window.getComputedStyle(field).color), "rgba(0, 0, 0, 0)", "the price is covered");
  await hand.tap({ button: "Start checking" });
  await hand.see({ radio: true });
  for (let made = 0; made < 3; made += 1) {
    await answer(hand, 0);
    await next(hand);
  }
  const id = (await hand.hash()).split("/")[2];
  await hand.go(`#/garment/${id}/ticket`, "Behind the ticket");
  await hand.see({ heading: "Guess first" });
  await hand.fill({ field: "At least" }, "60");
  await hand.fill({ field: "At most" }, "90");
  await hand.tap({ button: "Commit this guess" });
  await hand.see({ text: "Your guess stands." });
  await hand.tap({ button: "Turn the ticket over" });
  await hand.see({ text: "You: missed by EUR 9.90, range EUR 30 wide." });
  await hand.see({ picture: /^Money scale.*Your guess 60 to 90\. Ticket 99\.90\.$/ });
  await hand.tap({ text: "Sewing", in: { css: "main summary" } });
  await hand.see({ text: /^(Rests on|Rests on judgement): .*As of / });
}

async function fitting({ hand }) {
  const id = await begin(hand, { label: "Raw straight leg" });
  await hand.go(`#/garment/${id}/check/stretch`, /^How far does the cloth give/);
  await hand.tap({ css: "main label.answer", nth: 0 });
  await hand.see({ button: ANSWERED });
  await hand.go(`#/garment/${id}/fit`, "Fitting room");
  const verdict = (words) => until(() => hand.texts({ css: ".fit-pinned .fit-verdict" }), ([now]) => now?.startsWith(words), `the verdict ${words}`);
  await verdict("Not tried yet");
  await hand.fill({ css: "#fit-new" }, "Robin");
  await hand.press("Enter");
  await hand.see({ heading: "Robin" });
  for (const [label, text] of Object.entries({ "Girth at the band": "86", "Hip girth": "99", "Thigh girth": "57", "Inside leg": "80" })) {
    await hand.fill({ field: new RegExp(`^${label}`) }, text);
    await hand.leave();
  }
  await hand.tap({ link: "To the fitting room" });
  await hand.see({ heading: "Fitting room" });
  const open = async (key) => {
    if (!(await hand.on({ css: `#fit-part-${key}` }, (part) => part.open))) await hand.tap({ css: `#fit-part-${key} > summary` });
    await until(() => hand.on({ css: `#fit-part-${key}` }, (part) => part.open), Boolean, `the part ${key}`);
  };
  await open("tape");
  for (const [label, text] of Object.entries({ "Waist, flat": "43", "Hip, flat": "52", "Thigh, flat": "30.5", Inseam: "84" })) {
    await hand.fill({ field: new RegExp(`^${label}`) }, text);
    await hand.leave();
  }
  await verdict("Fits");
  await open("later");
  await hand.pick({ field: /^What the cloth is/ }, "loomstate");
  await hand.pick({ field: /^Wash/ }, "hot");
  await verdict("Will not fit after washing");
  await hand.kept();
  await hand.reload();
  await verdict("Will not fit after washing");
  assert.deepEqual((await facts(hand, id)).fit.wash, { drying: "line", warmth: "hot" });
}

async function quickSheet({ hand }) {
  const focused = () => hand.read(() => document.activeElement.id);
  const active = () => hand.texts({ css: ".quick-row[data-active=true] .quick-row-name b" }).then(([name]) => name);
  await hand.go("#/desk");
  await until(focused, (id) => id === "quick-name", "the keyboard in the name");
  await hand.type("Relaxed tee");
  await hand.press("Tab");
  await until(() => hand.hash(), (now) => /^#\/desk\/./.test(now), "the sample's own address");
  const first = await hand.hash();
  assert.equal(await focused(), "quick-style", "the keyboard stays where the hand went");
  await hand.type("T-0042");
  await hand.press("Tab");
  await hand.type("11,50");
  await hand.press("Enter");
  await until(() => hand.read(() => document.activeElement.getAttribute("role")), (role) => role === "radio", "the keyboard on a row");
  for (let made = 0; made < 8; made += 1) {
    const before = await active();
    await hand.press(made % 3 === 0 ? "1" : "2");
    await until(active, (now) => now !== before, "the next row");
  }
  await hand.kept();
  await hand.press("n");
  await until(focused, (id) => id === "quick-name", "the next sample");
  await hand.type("Boxy tee");
  await hand.press("Tab");
  await until(() => hand.hash(), (now) => /^#\/desk\/./.test(now) && now !== first, "the second sample's own address");
  await hand.kept();
  await hand.go("#/", "Rack");
  await hand.see({ text: "Relaxed tee" });
  await hand.see({ text: "Boxy tee" });
}

async function lesson({ hand }) {
  const id = await begin(hand, { label: "To be read about" });
  const where = await hand.hash();
  await hand.tap({ text: "I am not sure of this" });
  assert.ok(await hand.checked({ box: "I am not sure of this" }));
  await hand.tap({ link: "Read about this check" });
  await hand.see({ heading: "What becomes of it" });
  await hand.see({ heading: "How it is faked" });
  await hand.read(() => window.history.back());
  await until(() => hand.hash(), (now) => now === where, "the check");
  await hand.see({ button: /^(Next check|Skip for now)$/ });
  await until(() => hand.checked({ box: "I am not sure of this" }), Boolean, "the tick");
  assert.ok(id);
  await hand.go("#/practice", "Practise");
  await hand.tap({ button: "Start" });
  await hand.see({ css: "main .practice-question" });
}

async function settings({ hand }) {
  await hand.go("#/settings", "Settings");
  const ground = () => hand.read(() => window.getComputedStyle(document.body).backgroundColor);
  await hand.pick({ field: /^Light or dark/ }, "light");
  const light = await ground();
  await hand.pick({ field: /^Light or dark/ }, "dark");
  await until(ground, (now) => now !== light, "the dark");
  const dark = await ground();
  await hand.pick({ field: /^Lengths and weights/ }, "imperial");
  await hand.reload();
  assert.equal(await ground(), dark, "dark stays");
  await hand.go("#/bench/stitch-count");
  assert.equal(await hand.value({ field: /^Light or dark/ }), undefined);
  await hand.go("#/settings", "Settings");
  assert.equal(await hand.value({ field: /^Lengths and weights/ }), "imperial");
}

async function comparison({ hand }) {
  await hand.tap({ button: "Choose" });
  await hand.tap({ box: /^Pale tapered/ });
  await hand.tap({ box: /^Dark rigid/ });
  await hand.tap({ link: "Set side by side" });
  await hand.see({ heading: "Side by side" });
  await hand.see({ text: /^B asks EUR\s195.10 more than A/ });
  await hand.tap({ button: /^Show all/ });
  assert.ok((await hand.tooWide()) <= 0, "it can be moved sideways");
}

async function sheets({ hand, driver }) {
  for (const [hash, heading] of [[`#/garment/${RACK[0].id}/sheet`, "Sheet"], [`#/beside-sheet/${RACK[0].id}/${RACK[1].id}`, "Comparison sheet"]]) {
    await hand.go(hash, heading);
    await hand.read(() => void (window.print = () => (window.printed = true)));
    await hand.tap({ button: "Print" });
    await until(() => hand.read(() => window.printed === true), Boolean, "the dialogue");
    // Where the driver prints, it is one page of A4.
    if (driver.printed) assert.equal((await pdfPages(await driver.printed())).length, 1, `${heading} on paper`);
    await hand.read(() => void (window.printed = false));
  }
}

async function photographs({ hand, driver }) {
  await hand.go(`#/garment/${RACK[0].id}/photographs`, "Photographs");
  const drawn = async (colour) => {
    const text = await hand.read(async (colour) => {
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [2000, 1000];
      const context = canvas.getContext("2d");
      context.fillStyle = colour;
      context.fillRect(0, 0, 2000, 1000);
      context.fillStyle = "#f0e6d0";
      context.fillRect(0, 300, 2000, 40);
      const blob = await new Promise((made) => canvas.toBlob(made, "image/jpeg", 0.9));
      const bytes = new Uint8Array(await blob.arrayBuffer());
      return window.btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
    }, colour);
    const path = join(driver.downloads, `${colour.slice(1)}.jpg`);
    await writeFile(path, Buffer.from(text, "base64"));
    return path;
  };
  await hand.choose({ file: "Choose photographs" }, await drawn("#c03020"));
  if (driver.private) {
    // A private window of WebKit keeps text, but no pictures: nothing is noted of one, and why is said.
    assert.match(await hand.see({ alert: /The photograph is not kept/ }), /This browser keeps no pictures for this page/);
    assert.equal((await facts(hand, RACK[0].id)).photographs, undefined);
    return;
  }
  await hand.see({ css: "main .photograph" });
  await hand.choose({ file: "Choose photographs" }, await drawn("#2040a0"));
  await hand.see({ css: "main .photograph", nth: 1 });
  await hand.gone({ text: /^Shrinking/ });
  await until(() => hand.on({ css: "main .photograph img" }, async (image) => { await image.decode(); return [image.naturalWidth, image.naturalHeight].join(); }), (size) => /^\d+,\d+$/.test(size), "the picture");
  await hand.tap({ css: "main .photograph button" });
  await hand.fill({ field: /^What it shows/, in: { dialog: true } }, "Felled, one place open");
  await hand.tap({ button: "Close", in: { dialog: true } });
  await hand.see({ css: "main .photograph", nth: 1 });
  await hand.kept();
  await hand.reload();
  await hand.see({ picture: "Felled, one place open" });
  const { photographs: noted } = await facts(hand, RACK[0].id);
  assert.deepEqual(noted.map(({ size }) => size), [[1600, 800], [1600, 800]]);

  // Out in a zip and in again.
  await hand.go("#/settings", "Settings");
  const zip = await hand.save({ button: "Export with photographs (zip)" });
  assert.equal(zip.bytes.subarray(0, 2).toString(), "PK");
  await hand.tap({ button: "Erase everything" });
  await hand.tap({ button: "Erase", in: { dialog: true } });
  await hand.tap({ button: "Yes, erase all", in: { dialog: true } });
  await hand.see({ text: "Everything is erased." });
  await hand.go("#/settings", "Settings");
  await hand.choose({ file: "Choose a file to import" }, zip.path);
  await hand.tap({ button: "Merge" });
  await hand.see({ text: /^Imported: / });
  await hand.go(`#/garment/${RACK[0].id}/photographs`, "Photographs");
  await hand.see({ picture: "Felled, one place open" });
}

async function picture({ hand }) {
  await countStitches(hand);
}

const of = (place, screen) => `#/garment/${RACK[place].id}/${screen}`;
/** Screens that no other journey opens, or not with so much on them. */
export const SCREENS = [
  "#/", "#/learn", "#/learn/jeans", "#/people", "#/rates", "#/numbers", "#/hand-on", "#/bench", "#/ruler", "#/guesses", of(0, "result"), of(0, "checks"),
  of(0, "details"), of(0, "tape"), of(0, "ticket"), of(0, "fit"), of(0, "sheet"), of(0, "photographs"), of(2, "check/spi"), of(5, "ticket"),
  `#/desk/${RACK[4].id}`, `#/beside/${RACK[0].id}/${RACK[2].id}/${RACK[1].id}`, `#/garment/${OFFERS[0].id}/result`,
];

async function everyScreen({ hand }) {
  for (const screen of SCREENS) {
    await hand.go(screen);
    await until(() => hand.texts({ css: "h1" }), (all) => all.length === 1 && all[0] !== "", `a heading at ${screen}`);
    assert.equal(await hand.read(() => document.getElementById("crash").hidden), true, `${screen} crashed`);
    assert.ok((await hand.tooWide()) <= 0, `${screen} can be moved sideways`);
  }
  assert.ok(CHECKS.length > 40);
}

async function flight({ hand, home, server }) {
  await until(() => hand.read(() => document.documentElement.dataset.flight), (state) => state === "whole", "the copy", 60_000);
  await server.close();
  await hand.open(home);
  await begin(hand, { label: "Above the clouds" });
  await answer(hand, 0);
  await next(hand);
  await countStitches(hand);
  await hand.go("#/learn/jeans/inseam", "Inner leg seam");
  await hand.see({ heading: "What becomes of it" });
  await hand.open(`${home}index.html?from=somewhere#/bench`);
  await hand.see({ heading: /./ });
}

export const JOURNEYS = [
  ["a first visit: it starts, in its own typeface, and its policy is kept", firstVisit],
  ["a garment is checked by taps to its result; a note, undo, a typed reading; a reload keeps all", wholeCheck],
  ["export, erase, import; half a file is refused", outAndIn, { rack: RACK }],
  ["a ticket face down, a guess, what stands behind it", ticket],
  ["the fitting room: a person, the tape, what a hot wash does", fitting],
  ["the quick sheet by keyboard: two samples", quickSheet, { size: [1280, 800] }],
  ["a lesson and back, and practice", lesson],
  ["settings: dark and imperial stay", settings],
  ["two garments side by side", comparison, { rack: RACK }],
  ["sheets to print", sheets, { rack: RACK }],
  ["photographs: shrunk, described, kept, out in a zip and in again", photographs, { rack: RACK }],
  ["a picture is read by the second program and the second thread", picture],
  ["every other screen opens", everyScreen, { rack: [...RACK, ...OFFERS] }],
  ["after one visit, with the server gone, it opens and works", flight, { copies: true, offline: true }],
];
