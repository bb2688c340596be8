// Starts the program, or says in a sentence why it cannot. Static, so that the page's policy needs no inline script.

const script = document.querySelector("script[data-wasm]");
const crash = document.getElementById("crash");

// What is said before the program is there, and when it does not come, in languages other than that of the page: the same sentences, in the
// same order. All else that is said stands in the message files.
const ENGLISH = [
  document.querySelector("main > p")?.textContent ?? "",
  "This browser is too old for Garment Assay. Chrome 97, Firefox 114 or Safari 16.4, or any later one, will do.",
  "Garment Assay could not start. Your notes are untouched. Reload the page; if that does not help, restart the browser.",
];
const OTHERWISE = {
  de: [
    "Ein Blick oder Griff nach dem anderen, das Aufschlussreichste zuerst. Nach jedem siehst du, wie gut das Stück gemacht scheint und wie sicher das ist. Einmal geladen, geht es ohne Netz, und alles bleibt auf diesem Gerät.",
    "Dieser Browser ist zu alt für Garment Assay. Chrome 97, Firefox 114 oder Safari 16.4 oder jeder neuere genügt.",
    "Garment Assay konnte nicht starten. Deine Notizen sind unberührt. Lade die Seite neu; hilft das nicht, starte den Browser neu.",
  ],
  fr: [
    "Un regard ou un toucher à la fois, le plus parlant d’abord. Après chacun, vous voyez à quel point le vêtement semble bien fait, et avec quelle certitude. Une fois chargée, l’application marche sans réseau, et tout reste sur cet appareil.",
    "Ce navigateur est trop ancien pour Garment Assay. Chrome 97, Firefox 114 ou Safari 16.4, ou tout autre plus récent, convient.",
    "Garment Assay n’a pas pu démarrer. Vos notes sont intactes. Rechargez la page ; si cela ne suffit pas, redémarrez le navigateur.",
  ],
};

// The language of the page, for the programs too: the person's choice, or the first of the browser's that is spoken here.
const language = ((wished) => wished.map((tag) => tag.split("-")[0].toLowerCase()).find((tag) => tag === "en" || tag in OTHERWISE))([
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

function translated(sentence) {
  return OTHERWISE[language]?.[ENGLISH.indexOf(sentence)] ?? sentence;
}

const waiting = document.querySelector("main > p");
if (waiting && language in OTHERWISE) waiting.textContent = translated(waiting.textContent);

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

function style(name) {
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
  crash.textContent = translated(sentence);
  crash.hidden = false;
  document.querySelector("[aria-busy]")?.removeAttribute("aria-busy");
}

// What keeps the app for use without a network comes when the app stands and nothing else is to be done.
function whenIdle() {
  const come = () =>
    import(new URL("flight.js", document.baseURI).href).catch(() =>
      document.dispatchEvent(new window.CustomEvent("flight-told", { detail: "failed current" })),
    );
  const wait = () => (window.requestIdleCallback ? window.requestIdleCallback(come, { timeout: 5000 }) : window.setTimeout(come, 1000));
  if (document.readyState === "complete") wait();
  else window.addEventListener("load", wait, { once: true });
}

if (typeof WebAssembly !== "object" || !WebAssembly.validate(SIMD)) {
  say("This browser is too old for Garment Assay. Chrome 97, Firefox 114 or Safari 16.4, or any later one, will do.");
} else {
  import(new URL(script.dataset.js, document.baseURI).href)
    .then((program) => program.default({ module_or_path: new URL(script.dataset.wasm, document.baseURI).href }))
    .then(whenIdle)
    .catch((reason) => {
      console.error(reason);
      say("Garment Assay could not start. Your notes are untouched. Reload the page; if that does not help, restart the browser.");
    });
}
