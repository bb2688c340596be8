// Has the app kept for use without a network, and tells the app how that stands. Loaded when the app stands and the browser has nothing
// else to do, so that the first visit waits for none of it.
//
// To the app, an event "flight-told" on the document, its detail two words: how the copy stands, and how a newer version stands.
//   loading | whole | part:BYTES | failed | none:insecure | none:lacking
//   current | waiting | coming | taken
// From the app, an event "flight-wished": rest | take | reload | tell

const container = navigator.serviceWorker;
const HOUR = 3_600_000;
// How long a newer version may need to take over before the page reminds the browser: 0.1 to 1.3 s were seen,
// and 5 of 70 presses at a busy moment in vain (2026-11-26). Judgement.
const PATIENCE = 2000;
const TAKING = "garment-assay/taking";
let copy = "loading";
let newer = "current";
let registration;
// Where the person was when they asked for the newer version, until it has come.
let taking;

function tell() {
  document.documentElement.dataset.flight = copy.split(":")[0];
  document.dispatchEvent(new window.CustomEvent("flight-told", { detail: copy + " " + newer }));
}

function ask(worker, message) {
  return new Promise((done, failed) => {
    const { port1, port2 } = new window.MessageChannel();
    port1.onmessage = ({ data }) => ("failed" in data ? failed(new Error(data.failed)) : done(data.answer));
    worker.postMessage(message, [port2]);
  });
}

async function look() {
  if (registration.active) {
    const { count, bytes, older } = await ask(container.controller ?? registration.active, { ask: "missing" });
    copy = count === 0 ? "whole" : "part:" + bytes;
    if (older) newer = "taken";
  }
  if (newer !== "taken" && newer !== "coming") newer = registration.waiting && container.controller ? "waiting" : "current";
  tell();
}

// Follows a version that is being fetched. Where none was before, this page is taken on by it.
function follow(worker) {
  const first = !registration.active;
  worker.addEventListener("statechange", () => {
    if (worker.state === "redundant" && first && !registration.active) {
      copy = "failed";
      tell();
    }
    if (worker.state === "activated") takeOn();
    if (worker.state === "installed" || worker.state === "activated") look();
  });
}

// Tells the worker what this page is made of: one that came from the network is taken on, and some browsers do not tell it of the others.
function takeOn() {
  const { js, wasm } = document.querySelector("script[data-wasm]").dataset;
  const names = [js, wasm].map((name) => name.replace(/^\.\//, ""));
  (container.controller ?? registration.active).postMessage({ ask: "mine", names });
}

async function enrol() {
  registration = await container.register("sw.js", { updateViaCache: "none" });
  if (registration.installing) follow(registration.installing);
  registration.onupdatefound = () => registration.installing && follow(registration.installing);
  if (registration.active) {
    if (registration.active.state === "activated") takeOn();
    else follow(registration.active);
    await look();
  }
}

// Chromium sometimes never lets the older version go when it is told to while that one is at work: the newer one then waits although it was
// asked in. A page that is loaded anew has it look again. It may still be made of the older files, and is then loaded once more.
function take() {
  taking = location.hash;
  newer = "coming";
  tell();
  registration.waiting.postMessage({ ask: "take" });
  window.setTimeout(() => {
    if (isStillThere()) {
      mark.set();
      return location.reload();
    }
    // They went on with something else meanwhile, and it may be half-typed.
    taking = undefined;
    newer = "waiting";
    look();
  }, PATIENCE);
}

// Whether they asked for it, and wait where they asked.
const isStillThere = () => taking === location.hash;

// Lasts for one loading of this window. Where the browser allows none, the person is told that a newer version may be loaded.
const mark = {
  set() {
    try {
      window.sessionStorage.setItem(TAKING, "");
    } catch {
      return;
    }
  },
  gone() {
    try {
      const was = window.sessionStorage.getItem(TAKING) !== null;
      window.sessionStorage.removeItem(TAKING);
      return was;
    } catch {
      return false;
    }
  },
};

async function start() {
  if (!window.isSecureContext) copy = "none:insecure";
  else if (!container) copy = "none:lacking";
  if (copy !== "loading") return tell();
  tell();

  // The first one to take this page on changes nothing about it.
  let controlled = container.controller !== null;
  if (mark.gone()) taking = location.hash;
  container.addEventListener("controllerchange", () => {
    if (isStillThere()) return location.reload();
    if (controlled) newer = "taken";
    controlled = true;
    look();
  });

  await enrol();
  if (isStillThere() && newer === "taken") return location.reload();
  // It may still come, up to two seconds after that were seen; later it is only told of.
  if (taking !== undefined) window.setTimeout(() => (taking = undefined), 4 * PATIENCE);

  // An installed app may stay open for weeks, and a browser looks for a newer version only when one is opened.
  let looked = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "visible" || Date.now() - looked < HOUR) return;
    looked = Date.now();
    registration.update().catch(() => {}); // no network, or a host that is being changed: another time
  });
}

document.addEventListener("flight-wished", async ({ detail }) => {
  // The app may come after this.
  if (detail === "tell") tell();
  if (detail === "reload") location.reload();
  if (detail === "take" && registration?.waiting) {
    take();
  }
  if (detail === "rest") {
    const before = copy;
    copy = "loading";
    tell();
    try {
      const worker = container.controller ?? registration?.active;
      if (worker) await ask(worker, { ask: "rest" });
      else await enrol(); // what came of it is told by whoever follows it
      if (worker) await look();
    } catch {
      copy = before;
      tell();
    }
  }
});

start().catch((reason) => {
  console.info("No copy is kept for use without a network: " + reason);
  copy = "failed";
  taking = undefined;
  tell();
});
