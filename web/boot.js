// Starts the program, or says in a sentence why it cannot. Static, so that the page's policy needs no inline script.

const script = document.querySelector("script[data-wasm]");
const crash = document.getElementById("crash");

// What is said before the program is there, and when it is not there any more. All else that is said stands in the message files; this must be here
// when nothing else comes. `tests/languages.rs` sees to it that every sentence below is in every language.
const WORDS = {
  "One look or touch at a time, the most telling first. After each you see how well the garment seems to be made, and how sure that is. Once loaded it works without a network, and everything stays on this device.": {
    de: "Ein Blick oder Griff nach dem anderen, das Aufschlussreichste zuerst. Nach jedem siehst du, wie gut das Stück gemacht scheint und wie sicher das ist. Einmal geladen, geht es ohne Netz, und alles bleibt auf diesem Gerät.",
    fr: "Un regard ou un toucher à la fois, le plus parlant d’abord. Après chacun, vous voyez à quel point le vêtement semble bien fait, et avec quelle certitude. Une fois chargée, l’appli marche sans réseau, et tout reste sur cet appareil.",
  },
  "This browser is too old for Garment Assay. Chrome 97, Firefox 114 or Safari 16.4, or any later one, will do.": {
    de: "Dieser Browser ist zu alt für Garment Assay. Chrome 97, Firefox 114, Safari 16.4 oder jeder neuere genügt.",
    fr: "Ce navigateur est trop ancien pour Garment Assay. Chrome 97, Firefox 114, Safari 16.4 ou tout autre plus récent convient.",
  },
  "Garment Assay could not start. Your notes are untouched. Reload the page; if that does not help, restart the browser.": {
    de: "Garment Assay konnte nicht starten. Deine Notizen sind unberührt. Lade die Seite neu; hilft das nicht, starte den Browser neu.",
    fr: "Garment Assay n’a pas pu démarrer. Vos notes sont intactes. Rechargez la page ; si cela ne suffit pas, redémarrez le navigateur.",
  },
  "The app stopped at something it did not expect. What you answered before is kept. Load the page again to go on. ({what})": {
    de: "Die App ist an etwas stehen geblieben, das sie nicht erwartet hat. Was du vorher geantwortet hast, ist gesichert. Lade die Seite neu, um weiterzumachen. ({what})",
    fr: "L’appli s’est arrêtée sur quelque chose d’inattendu. Ce que vous avez répondu avant est conservé. Rechargez la page pour continuer. ({what})",
  },
  "That did not work. ({what})": {
    de: "Das ging nicht. ({what})",
    fr: "Cela n’a pas marché. ({what})",
  },
  "Saved. Pages in the file: {count}. You can import it in the settings. Photographs stay in this browser.": {
    de: "Gesichert. Seiten in der Datei: {count}. Du kannst sie in den Einstellungen importieren. Fotografien bleiben in diesem Browser.",
    fr: "Enregistré. Pages dans le fichier : {count}. Vous pouvez l’importer dans les réglages. Les photographies restent dans ce navigateur.",
  },
  "Save my notes to a file": {
    de: "Meine Notizen in eine Datei sichern",
    fr: "Enregistrer mes notes dans un fichier",
  },
  "Load the page again": {
    de: "Seite neu laden",
    fr: "Recharger la page",
  },
  "It stopped twice in a row. Save your notes first. You can then open the app without what it could not read. That is set aside, not deleted.": {
    de: "Sie ist zweimal nacheinander stehen geblieben. Sichere zuerst deine Notizen. Dann kannst du die App ohne das öffnen, was sie nicht lesen konnte. Das wird beiseitegelegt, nicht gelöscht.",
    fr: "Elle s’est arrêtée deux fois de suite. Enregistrez d’abord vos notes. Vous pourrez ensuite ouvrir l’appli sans ce qu’elle n’a pas pu lire. Cela est mis de côté, pas supprimé.",
  },
  "Open without the page it stopped at": {
    de: "Ohne die Seite öffnen, an der sie stehen blieb",
    fr: "Ouvrir sans la page où elle s’est arrêtée",
  },
  "Open without my notes": {
    de: "Ohne meine Notizen öffnen",
    fr: "Ouvrir sans mes notes",
  },
};
const OTHERS = ["de", "fr"];

// The language of the page, for the programs too: the person's choice, or the first of the browser's that is spoken here.
const language = ((wished) => wished.map((tag) => tag.split("-")[0].toLowerCase()).find((tag) => tag === "en" || OTHERS.includes(tag)))([
  ...chosenLanguage(),
  ...(navigator.languages ?? []),
]);
document.documentElement.lang = language ?? "en";

function chosenLanguage() {
  try {
    return [localStorage.getItem("garment-assay/language") ?? []].flat();
  } catch {
    // A storage that is forbidden has no choice in it; the app says what else that means.
    return [];
  }
}

/** A sentence of `WORDS` in the language of the page, with the values put in. */
function said(english, values = {}) {
  const sentence = WORDS[english]?.[language] ?? english;
  return sentence.replaceAll(/\{(\w+)\}/g, (whole, name) => values[name] ?? whole);
}

const waiting = document.querySelector("main > p");
if (waiting) waiting.textContent = said(waiting.textContent);

// The only addresses that code may be started from, should the program start a worker.
const STARTABLE = ["sw.js", "worker.js"];

if (window.trustedTypes) {
  window.trustedTypes.createPolicy("default", {
    createScriptURL(address) {
      const url = new URL(address, document.baseURI);
      const here = new URL("./", document.baseURI);
      const allowed = STARTABLE.some((name) => url.href === new URL(name, here).href);
      if (!allowed) throw new TypeError("Refused to start code from " + address);
      return url.href;
    },
  });
}

// One function holding a 128-bit constant: only an engine with WebAssembly SIMD takes it as valid.
const SIMD = new Uint8Array([
  0, 97, 115, 109, 1, 0, 0, 0, // magic, version
  1, 5, 1, 96, 0, 1, 123, // type: () -> v128
  3, 2, 1, 0, // function 0 has it
  10, 22, 1, 20, 0, 253, 12, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 11, // v128.const 0
]);

// The second program, for camera and pictures: loaded when a room first asks for it, with its style sheet. What came is not asked for
// again when the rest did not: a program that is loaded twice would answer twice.
const PICTURES = "garment-assay-pictures";
let pictures, program, styled;
let failures = 0;

/** Puts a style sheet on the page, and waits until it is there. */
export function style(name) {
  const link = document.createElement("link");
  link.rel = "stylesheet";
  return new Promise((done, failed) => {
    link.addEventListener("load", () => done(link));
    link.addEventListener("error", () => {
      link.remove();
      failed(new Error("The style sheet did not load: " + name));
    });
    link.href = new URL(name, document.baseURI).href;
    document.head.append(link);
  });
}

async function load() {
  styled ??= await style("pictures.css");
  // Some browsers remember a module that did not load; under another address they ask for it again.
  const again = failures > 0 ? "?" + failures : "";
  program ??= await import(new URL(PICTURES + ".js" + again, document.baseURI).href);
  await program.default({ module_or_path: new URL(PICTURES + "_bg.wasm", document.baseURI).href });
}

document.addEventListener("pictures-wanted", ({ target, detail }) => {
  pictures ??= load();
  pictures.then(
    // A room that was left meanwhile is in no page any more, and nobody hears this.
    () => target.dispatchEvent(new window.CustomEvent("pictures-open", { bubbles: true, detail })),
    () => {
      pictures = undefined;
      failures += 1;
      target.dispatchEvent(new window.CustomEvent("pictures-failed", { detail: "" }));
    },
  );
});

function say(sentence) {
  crash.textContent = sentence;
  crash.hidden = false;
  document.querySelector("[aria-busy]")?.removeAttribute("aria-busy");
}

// A program that panicked is gone, and can neither save nor go on. So what is left to do is offered from here.
const STREAK = "garment-assay crashes";
// A start that lasts so many milliseconds is no part of a row of starts that stop.
const SOUND = 10_000;
let stopped = false;

const rescue = () => import(new URL("rescue.js", document.baseURI).href);

// Of the tab and not of the browser: a row of starts that stop is a matter of minutes, and nothing is to be written for everybody else.
function streak(count) {
  try {
    if (count === undefined) return Number(window.sessionStorage.getItem(STREAK));
    window.sessionStorage.setItem(STREAK, count);
  } catch {
    return 0;
  }
}

function button(words, kind, press) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = kind;
  made.textContent = words;
  made.addEventListener("click", press);
  return made;
}

function offer(reason) {
  if (stopped) return;
  stopped = true;
  const count = (streak() || 0) + 1;
  streak(count);
  // The panic hook has said it, where it was a panic.
  if (crash.hidden) {
    say(said("The app stopped at something it did not expect. What you answered before is kept. Load the page again to go on. ({what})", { what: reason }));
  }
  // What is in a dialog's shadow cannot be pressed.
  for (const dialog of document.querySelectorAll("dialog[open]")) dialog.close();
  const [sentence, told, row] = ["p", "p", "div"].map((name) => document.createElement(name));
  sentence.textContent = crash.textContent;
  told.setAttribute("role", "status");
  row.className = "row";
  const failed = (reason) => (told.textContent = said("That did not work. ({what})", { what: reason }));
  const save = () =>
    rescue()
      .then((rescue) => rescue.save())
      .then((pages) => (told.textContent = said("Saved. Pages in the file: {count}. You can import it in the settings. Photographs stay in this browser.", { count: pages })))
      .catch(failed);
  row.append(button(said("Save my notes to a file"), "second", save), button(said("Load the page again"), "second", () => window.location.reload()));
  // Two starts in a row stopped: the page that was being read is set aside, if it is known; when that did not help, or it is not, all are.
  if (count > 1) {
    const read = /^garment-assay\/(page|person)\//.test(crash.dataset.reading ?? "") && count === 2 ? crash.dataset.reading : null;
    const without = () =>
      rescue()
        // What is set aside comes in again by that file only.
        .then(async (rescue) => {
          if (!told.textContent) await rescue.save();
          await rescue.setAside(read);
        })
        .then(() => {
          // The address may be what it stopped at.
          window.history.replaceState(null, "", "#/");
          window.location.reload();
        })
        .catch(failed);
    const why = document.createElement("p");
    why.textContent = said("It stopped twice in a row. Save your notes first. You can then open the app without what it could not read. That is set aside, not deleted.");
    row.append(button(read ? said("Open without the page it stopped at") : said("Open without my notes"), "second", without));
    crash.replaceChildren(sentence, why, row, told);
  } else {
    crash.replaceChildren(sentence, row, told);
  }
}

// An event without an error is no fault of the program: browsers report some of their own that way.
window.addEventListener("error", ({ error }) => error && offer(error));
window.addEventListener("unhandledrejection", ({ reason }) => {
  // What the browser refuses is an answer; what throws in the program's own code ends it.
  if (reason instanceof Error && !(reason instanceof window.DOMException)) offer(reason);
});
// Sound is what has stood for a while; a slow device may take as long only to read what is kept.
function sound() {
  if (stopped) return;
  if (document.documentElement.dataset.ready === undefined) window.setTimeout(sound, SOUND);
  else if (streak()) streak(0);
}
window.setTimeout(sound, SOUND);

// What keeps the app for use without a network comes when the app stands and nothing else is to be done.
function whenIdle() {
  const come = () => {
    // Fetched before it is needed: when it is, there may be no network.
    rescue().catch(() => {});
    return import(new URL("flight.js", document.baseURI).href).catch(() =>
      document.dispatchEvent(new window.CustomEvent("flight-told", { detail: "failed current" })),
    );
  };
  const wait = () => (window.requestIdleCallback ? window.requestIdleCallback(come, { timeout: 5000 }) : window.setTimeout(come, 1000));
  if (document.readyState === "complete") wait();
  else window.addEventListener("load", wait, { once: true });
}

// On a first visit words are on the screen first. The typeface is asked for then (they stand in a font like it), so that they need not share the line
// with it; and the program, which is on its way by then, is started. A visit that has its copy on the device waits for nothing.
function painted() {
  if (navigator.serviceWorker?.controller) return Promise.resolve();
  return new Promise((done) => {
    // A page that nobody sees is not painted, and some browsers keep to themselves when they paint. Judgement.
    window.setTimeout(done, 500);
    try {
      const told = (seen) => seen.getEntriesByName("first-contentful-paint").length > 0 && done();
      new window.PerformanceObserver(told).observe({ type: "paint", buffered: true });
    } catch {
      // Such a browser has no observer either.
    }
  });
}

const words = painted();
words.then(() => {
  const file = new URL("./instrument-sans.woff2", document.baseURI).href;
  document.fonts.add(new window.FontFace("Instrument Sans", `url("${file}")`, { weight: "400 700", display: "swap" }));
});

if (typeof WebAssembly !== "object" || !WebAssembly.validate(SIMD)) {
  say(said("This browser is too old for Garment Assay. Chrome 97, Firefox 114 or Safari 16.4, or any later one, will do."));
} else {
  import(new URL(script.dataset.js, document.baseURI).href)
    .then((program) => words.then(() => program.default({ module_or_path: new URL(script.dataset.wasm, document.baseURI).href })))
    .then(whenIdle)
    .catch((reason) => {
      console.error(reason);
      if (reason instanceof WebAssembly.RuntimeError) return offer(reason);
      say(said("Garment Assay could not start. Your notes are untouched. Reload the page; if that does not help, restart the browser."));
    });
}
