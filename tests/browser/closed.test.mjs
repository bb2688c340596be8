// That the app is closed: nothing goes out, the policy is never run against, and text from elsewhere stays text.

import assert from "node:assert/strict";
import { readdir } from "node:fs/promises";
import { createServer } from "node:http";
import { crc32 } from "node:zlib";
import { test } from "node:test";
import { onEveryScreen, onEveryScreenAlone } from "./every_screen.mjs";
import { address, DIST, heard, visit } from "./harness.mjs";
import { printed } from "./pdf.mjs";
import { board, FILE as SEAM } from "./picture.mjs";
import { exported, garment, OFFERS, RACK } from "./rack.mjs";
import { chooseFile, exportAll, go, kept, plan, until, visitWith } from "./steps.mjs";

const main = (page) => page.getByRole("main");

// --- requests and the policy ---------------------------------------------------------------------------------------------------

/** Ends a server, whoever still holds a line to it: a browser keeps lines open. */
function end(server) {
  server.close();
  server.closeAllConnections();
  server.unref();
}

/** Hosts of Chromium's maker, for which the browser looks by itself, whatever page is open. */
const BROWSERS_OWN = /^(CONNECT |[A-Z]+ https?:\/\/)[\w.-]+\.(google|googleapis|gvt1|gstatic)\.com[:/]/;

/**
 * A proxy that answers nobody and writes down who was to be reached, and the flags that send a browser to it for everything but `home`: what
 * a page, a second thread or the browser itself sends elsewhere ends here.
 */
async function trap(home) {
  const caught = [];
  const note = (line) => BROWSERS_OWN.test(line) || caught.push(line);
  const server = createServer((request, response) => {
    note(`${request.method} ${request.url}`);
    response.writeHead(502).end();
  });
  server.on("connect", (request, socket) => {
    note(`CONNECT ${request.url}`);
    socket.on("error", () => {});
    socket.end("HTTP/1.1 502 Bad Gateway\r\n\r\n", () => socket.destroy());
  });
  await new Promise((done) => server.listen(0, "127.0.0.1", done));
  const args = [`--proxy-server=127.0.0.1:${server.address().port}`, `--proxy-bypass-list=<-loopback>;${new URL(home).host}`];
  return { caught, args, close: () => end(server) };
}

/** Writes down what a context asks for, and where it ran against the policy. */
function recorder() {
  const [asked, violated] = [[], []];
  const before = async (context) => {
    context.on("request", (request) => asked.push({ method: request.method(), url: request.url() }));
    await context.exposeBinding("ranAgainst", (_, what) => violated.push(what));
    await context.addInitScript(() =>
      document.addEventListener("securitypolicyviolation", (event) =>
        window.ranAgainst(`${event.effectiveDirective}: ${event.blockedURI} ${event.sample} (${event.sourceFile}:${event.lineNumber})`),
      ),
    );
  };
  return { asked, violated, before };
}

test("on every screen the app asks only its own place, only for files of its folder, and keeps within its policy", async () => {
  const home = await address();
  const { caught, args, close } = await trap(home);
  const { asked, violated, before } = recorder();
  try {
    const options = { args, before, context: { reducedMotion: "reduce" } };
    const found = [...(await onEveryScreen(options, async () => violated.splice(0))), ...(await onEveryScreenAlone(options, async () => violated.splice(0)))];
    await visitWith(RACK, options, async ({ page }) => {
      await exportAll(page);
    });
    assert.deepEqual([...found, ...violated], [], "the policy");
  } finally {
    close();
  }
  const files = new Set((await readdir(DIST, { recursive: true })).map((name) => name.replaceAll("\\", "/")));
  const known = ({ method, url }) => {
    const { origin, pathname } = new URL(url, home);
    if (method !== "GET" || origin !== new URL(home).origin) return false;
    return url.startsWith("blob:") || files.has(decodeURIComponent(pathname).slice(1) || "index.html");
  };
  const outside = (all) => [...new Set(all.filter((one) => !known(one)).map(({ method, url }) => `${method} ${url}`))];
  assert.deepEqual(outside(asked), [], "what the pages and their second threads asked for");
  assert.deepEqual(outside(heard), [], "what the server was asked for");
  assert.deepEqual(caught, [], "what went elsewhere");
  // Requests of each kind are seen at all: of the page, of its second program, of the second thread.
  for (const part of ["boot.js", "garment-assay-pictures_bg.wasm", "photo-worker_bg.wasm", "licences.txt"]) {
    for (const [who, all] of Object.entries({ asked, heard })) assert.ok(all.some(({ url }) => url.includes(part)), `${part} among what was ${who}`);
  }
});

test("what watches for that sees it: a request elsewhere, and one that the policy refuses", async () => {
  const home = await address();
  const { caught, args, close } = await trap(home);
  const { violated, before } = recorder();
  try {
    await visit({ args, before }, async ({ page, context, problems }) => {
      await page.evaluate(() => fetch("http://elsewhere.invalid/").catch(() => {}));
      await until(() => violated.length, Boolean, "the refusal");
      assert.match(violated[0], /^connect-src: http:\/\/elsewhere\.invalid/);
      assert.deepEqual(caught, [], "refused before it goes out");
      const other = await context.newPage();
      await other.goto("http://elsewhere.invalid/").catch(() => {});
      assert.ok(caught.some((line) => line.includes("elsewhere.invalid")), "the proxy is asked");
      problems.length = 0; // both, as they should be
    });
  } finally {
    close();
  }
});

test("the second thread lives under the same policy, by its host's headers", async () => {
  // A place that would answer anybody.
  let reached = 0;
  const other = createServer((_, response) => {
    reached += 1;
    response.setHeader("Access-Control-Allow-Origin", "*");
    response.end("here");
  });
  await new Promise((done) => other.listen(0, "127.0.0.1", done));
  const there = `http://127.0.0.1:${other.address().port}/`;
  try {
    assert.equal(await (await fetch(there)).text(), "here");
    await visit({ path: "#/bench/stitch-photo/picture" }, async ({ page, home, problems }) => {
      await main(page).getByLabel("Choose a picture").setInputFiles(SEAM);
      await board(page).waitFor();
      await until(() => page.workers().length, (count) => count === 1, "the second thread");
      const ask = (url) => page.workers()[0].evaluate((url) => fetch(url).then((answer) => answer.status, (reason) => String(reason)), url);
      assert.equal(await ask(home), 200, "its own place");
      assert.match(String(await ask(there)), /TypeError/);
      assert.equal(reached, 1, "only by the test itself");
      problems.length = 0; // the refusal, as it should be
    });
  } finally {
    end(other);
  }
});

// --- text from elsewhere -------------------------------------------------------------------------------------------------------

/** Text that would make an element, and run script by it in two ways, wherever it was taken for markup; the word says which field it stands in. */
const markup = (word) => `${word}"><i class=made><img src=x onerror=ran()><script>ran()</script>`;

const FIELDS = ["label", "place", "collection", "note"];
const TERMS = ["supplier", "style", "colourways", "sizes"];

/** A garment whose every text is of that kind. */
const hostile = (id, more = {}) => ({
  ...garment(id, { answers: 20, quality: 0.7, noted: "2026-02-14" }),
  ...Object.fromEntries(FIELDS.map((field) => [field, markup(field)])),
  notes: { hang: markup("a-note-on-hang"), inseam: markup("a-note-on-inseam") },
  ticket: { minor: 8900, currency: "EUR", kind: "retail", face_down: false },
  terms: {
    ...OFFERS[0].terms,
    ...Object.fromEntries(TERMS.map((field) => [field, markup(field)])),
  },
  lot: {
    pieces: 600, level: "II", major: "2.5", minor: "4.0", looked_at: 20,
    findings: [{ piece: 3, what: markup("a-finding"), severity: "major" }],
  },
  fit: { who: "p-1", label: { system: "waist-inches", text: "32\"><i class=made>" } },
  [markup("of-a-later-version")]: markup("of-a-later-version"),
  ...more,
});

/** The same file with a person in it whose name is of that kind. */
function withPerson(file) {
  const people = [{ id: "p-1", measures: { waist: { amount: 84, unit: "cm" } }, name: markup("a-person") }];
  const sum = crc32(`${file.made}\n${JSON.stringify(people)}`).toString(16).padStart(8, "0");
  return { ...file, people, people_sum: sum };
}

test("imported text is shown as it is on every screen that shows it, and never becomes markup", async () => {
  const home = { ...hostile("h1-here"), note: "Mine", label: `Mine, ${markup("label")}`.slice(0, 80) };
  const file = JSON.stringify(withPerson(JSON.parse(exported([hostile("h1-here"), hostile("h2-new"), hostile("h3-more", { collection: undefined })]))));
  const before = async (context) => {
    await context.addInitScript(() => {
      window.ranTimes = 0;
      window.ran = () => (window.ranTimes += 1);
    });
    await record.before(context);
  };
  const record = recorder();
  await visitWith([home], { before, size: "desk" }, async ({ page, context, problems }) => {
    // Where it is taken for markup, it does make an element and run: on a page without a policy.
    const open = await context.newPage();
    await open.setContent(`<input value="${markup("control")}`);
    await until(() => open.evaluate(() => [document.querySelectorAll("i.made").length, window.ranTimes]), ([made, ran]) => made === 1 && ran > 0, "the marker");
    await open.close();
    problems.length = 0;

    const seen = new Set();
    /** Nothing was made of it, nothing ran, and what is on the screen is the text itself. */
    const judge = async (where) => {
      const here = await page.evaluate(() => ({
        made: document.querySelectorAll("i.made, img[src=x], #app script, [onerror]").length,
        ran: window.ranTimes,
        texts: [document.body.innerText, document.title, ...[...document.querySelectorAll("input, textarea, option")].map((field) => field.value)],
      }));
      assert.deepEqual([here.made, here.ran], [0, 0], where);
      for (const text of here.texts) for (const [, word] of text.matchAll(/([a-z-]+)"><i class=made><img src=x onerror=ran\(\)><script>ran\(\)<\/script>/g)) seen.add(word);
      if (here.texts[1].includes("<i class=made>")) seen.add("title");
    };

    await chooseFile(page, file, `${markup("file")}.json`.replaceAll("/", ""));
    await plan(page).waitFor();
    await judge("the plan of the import");
    const join = plan(page).locator("label").filter({ hasText: "Join them in one" }).first();
    await join.click();
    await judge("the differences");
    await plan(page).getByRole("button", { name: "Merge", exact: true }).click();
    await kept(page);
    await judge("after the import");

    const garments = await page.evaluate(() =>
      Object.keys(window.localStorage).filter((key) => key.startsWith("garment-assay/page/")).map((key) => key.split("/").at(-1)),
    );
    assert.ok(garments.length >= 3, garments.join());
    const [person] = await page.evaluate(() => Object.keys(window.localStorage).filter((key) => key.startsWith("garment-assay/person/")).map((key) => key.split("/").at(-1)));
    assert.ok(person, "the person came too");
    const parts = ["", "check/hang", "check/inseam", "checks", "result", "details", "ticket", "tape", "fit", "offer", "lot", "sheet"];
    const ways = [
      "#/", "#/new", "#/desk", "#/hand-on", "#/people", `#/people/${person}`, `#/people/${person}/for/h2-new`, "#/guesses", "#/settings", "#/rates", "#/learn/jeans/hang/for/h2-new",
      "#/desk/h2-new", "#/beside/h2-new/h3-more", "#/beside-sheet/h2-new/h3-more", "#/hand-on/h2-new",
      ...garments.flatMap((id) => parts.map((part) => `#/garment/${id}/${part}`)),
    ];
    for (const way of ways) {
      await go(page, way, /./);
      await page.evaluate(() => document.querySelectorAll("main details").forEach((closed) => (closed.open = true)));
      await judge(way);
    }
    await go(page, "#/garment/h2-new/sheet", "Sheet");
    await printed(page, "the sheet of a garment full of markup");
    const wanted = [...FIELDS, ...TERMS, "a-note-on-hang", "a-note-on-inseam", "a-finding", "a-person", "title"];
    assert.deepEqual(wanted.filter((word) => !seen.has(word)), [], "these were on no screen as they are");
    assert.deepEqual(record.violated, [], "nothing had to be refused, for nothing was tried");
  });
});

test("a file that cannot be read is told of in words, whatever stands in it", async () => {
  await visitWith([], {}, async ({ page }) => {
    for (const text of [markup("x"), JSON.stringify({ kind: markup("x"), form: 1 }), exported([{ ...hostile("h1"), id: markup("x") }])]) {
      await chooseFile(page, text);
      await page.getByRole("alert").first().waitFor();
      assert.equal(await page.locator("i.made, img[src=x], #app script").count(), 0);
    }
  });
});
