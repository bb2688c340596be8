// Asks for the files of the wings one after the other, each in a turn of its own: a wing is up to sixteen files, and to ask for them all at once
// kept a hand waiting for a tenth of a second. With the first of them comes what their pages look like. `scripts/wings.sh` puts this before the
// loaders that wasm-split-cli writes.

let line = Promise.resolve();

// A message comes at once; a timer that was set by a timer waits four milliseconds.
const breath = () =>
  new Promise((done) => {
    const { port1, port2 } = new window.MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage("");
  });

// Asked for again when it did not come; what came is not asked for twice. Not imported above: a `boot.js` of another version that a browser kept must
// not keep the app from starting.
let styled;
function dressed() {
  styled ??= import(new URL("boot.js", document.baseURI).href)
    .then(({ style }) => style("wings.css"))
    .catch((reason) => {
      styled = undefined;
      throw reason;
    });
  return styled;
}

// eslint-disable-next-line no-unused-vars -- the loaders that follow it in the built file call it
function brought(name) {
  line = line.then(breath);
  return line.then(() => Promise.all([fetch(new URL(name, document.baseURI)), dressed()])).then(([answer]) => answer);
}
