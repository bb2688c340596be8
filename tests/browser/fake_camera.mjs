// A camera for tests and pictures: a film of a drawn seam beside a drawn ruler, which Chromium shows in place of a lens.

import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { crc32, deflateSync } from "node:zlib";

/** What is drawn, in pixels: the size, a ruler of so many pixels to the millimetre, and stitches of so many millimetres. */
export const FILM = { width: 1280, height: 720, perMm: 14, stitchMm: 3, ruler: { left: 110, top: 470 }, seam: { left: 120, at: 330 } };

/** Luma of a pixel of the film, limited range (16 to 235), and whether it is ruler or thread. */
function drawn(x, y) {
  const { perMm, stitchMm, ruler, seam } = FILM;
  if (y >= ruler.top && y < ruler.top + 120) {
    const mm = (x - ruler.left) / perMm;
    const tick = Math.round(mm);
    const long = tick % 10 === 0 ? 60 : tick % 5 === 0 ? 44 : 28;
    const on = mm >= -0.5 && Math.abs(x - ruler.left - tick * perMm) <= 1.2 && y - ruler.top < long;
    return [on ? 30 : 200, "ruler"];
  }
  const along = (((x - seam.left) / perMm / stitchMm) % 1 + 1) % 1;
  if (Math.abs(y - seam.at) < 7) return along > 0.1 && along < 0.9 ? [175, "thread"] : [24, "hole"];
  // Cloth: the slanted lines of a twill.
  return [62 + (((x + y) >> 2) % 3) * 7, "cloth"];
}

let film;

/** The path of a film of one picture, written once for each test file. */
function filmFile() {
  if (film) return film;
  const { width, height } = FILM;
  const luma = Buffer.alloc(width * height);
  const [blue, red] = [Buffer.alloc((width * height) / 4, 128), Buffer.alloc((width * height) / 4, 128)];
  const tints = { ruler: [96, 138], thread: [88, 160], hole: [140, 120], cloth: [146, 118] };
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const [value, what] = drawn(x, y);
      luma[y * width + x] = value;
      const at = (y >> 1) * (width >> 1) + (x >> 1);
      [blue[at], red[at]] = tints[what];
    }
  }
  const frame = Buffer.concat([Buffer.from("FRAME\n"), luma, blue, red]);
  film = join(mkdtempSync(join(tmpdir(), "garment-assay-film-")), "seam.y4m");
  writeFileSync(film, Buffer.concat([Buffer.from(`YUV4MPEG2 W${width} H${height} F15:1 Ip A1:1 C420jpeg\n`), frame, frame]));
  return film;
}

/** The same picture as a file, grey, at half its size so that it stays small. */
export function filmPicture() {
  const [width, height] = [FILM.width / 2, FILM.height / 2];
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) rows[y * (width + 1) + 1 + x] = drawn(2 * x, 2 * y)[0];
  }
  const part = (name, data) => {
    const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
    const ends = Buffer.alloc(8);
    ends.writeUInt32BE(data.length, 0);
    ends.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const buffer = Buffer.concat([Buffer.from("89504e470d0a1a0a", "hex"), part("IHDR", head), part("IDAT", deflateSync(rows)), part("IEND", Buffer.alloc(0))]);
  return { name: "seam.png", mimeType: "image/png", buffer };
}

/** Flags of Chromium with which a page gets the film for a camera, without being asked about. */
export const camera = () => ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", `--use-file-for-fake-video-capture=${filmFile()}`];

/** Flags with which a page is refused. */
export const REFUSED = ["--use-fake-device-for-media-stream", "--deny-permission-prompts"];

/** Flags with which the device has no camera. */
export const NONE = ["--use-fake-ui-for-media-stream"];

/** Notes every track that the page is lent, for `tracks`; `lamp` gives each a lamp and notes how it is lit. */
export const noteTracks = (lamp = false) => (context) =>
  context.addInitScript((lamp) => {
    window.noted = { tracks: [], lamp: [] };
    const devices = window.navigator.mediaDevices;
    const ask = devices?.getUserMedia.bind(devices);
    if (ask) {
      devices.getUserMedia = async (wish) => {
        const stream = await ask(wish);
        for (const track of stream.getTracks()) {
          window.noted.tracks.push(track);
          if (lamp) {
            track.getCapabilities = () => ({ torch: true });
            track.applyConstraints = async (wish) => void window.noted.lamp.push(wish.advanced[0].torch);
          }
        }
        return stream;
      };
    }
  }, lamp);

/** "live" or "ended" for each track that the page was lent. */
export const tracks = (page) => page.evaluate(() => window.noted.tracks.map((track) => track.readyState));
