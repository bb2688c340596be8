// Starts the program, or says in a sentence why it cannot. Static, so that the page's policy needs no inline script.

const script = document.querySelector("script[data-wasm]");
const crash = document.getElementById("crash");

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

function say(sentence) {
  crash.textContent = sentence;
  crash.hidden = false;
  document.querySelector("[aria-busy]")?.removeAttribute("aria-busy");
}

if (typeof WebAssembly !== "object" || !WebAssembly.validate(SIMD)) {
  say("This browser is too old for Garment Assay. Chrome 97, Firefox 114 or Safari 16.4, or any later one, will do.");
} else {
  import(new URL(script.dataset.js, document.baseURI).href)
    .then((program) => program.default({ module_or_path: new URL(script.dataset.wasm, document.baseURI).href }))
    .catch((reason) => {
      console.error(reason);
      say("Garment Assay could not start. Your notes are untouched. Reload the page; if that does not help, restart the browser.");
    });
}
