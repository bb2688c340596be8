// The second thread: starts the program that reads pictures. It is loaded when a picture is read for the first time, never before.

import start from "./photo-worker.js";

start({ module_or_path: new URL("photo-worker_bg.wasm", self.location.href) }).catch((reason) => {
  console.error(reason);
  self.postMessage({ failed: true });
});
