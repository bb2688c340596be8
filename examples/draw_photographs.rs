//! Writes drawn photographs of seams and their truth into a folder, on all cores:
//! `cargo run --profile bench --no-default-features --example draw_photographs -- FOLDER FROM COUNT`.
//!
//! Seeds FROM to FROM+COUNT-1 become `dSEED.jpg`; `truth.csv` is written anew for these seeds when all are drawn.

use std::fs;
use std::io::BufWriter;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use garment_assay::specimen::{ClothKind, Graduation, Level, Photograph, Pixel, Scale, Sewn, photograph};
use image::codecs::jpeg::JpegEncoder;

const HEAD: &str = "file,seam_x1,seam_y1,seam_x2,seam_y2,object,ruler_a,ruler_b,known_mm,card_corners,stitches_per_inch,stitches_between,\
skipped,pitch_cv,level,cloth,stitch,tonal,curved,tilt_deg,px_per_stitch";

/// What stands in a field that says nothing, as in the sets drawn before.
const NOTHING: &str = "\"\"\"\"\"\"";

fn pair([x, y]: Pixel) -> String {
    format!("[{x}, {y}]")
}

fn line(name: &str, photograph: &Photograph) -> String {
    let truth = &photograph.truth;
    let [[x1, y1], [x2, y2]] = truth.seam;
    let (object, a, b, known, corners) = match &truth.scale {
        Scale::Ruler { divided, marks: [a, b], known_mm } => {
            let object = if *divided == Graduation::Millimetre { "mm" } else { "in16" };
            (object, format!("\"{}\"", pair(*a)), format!("\"{}\"", pair(*b)), format!("{known_mm:?}"), NOTHING.to_owned())
        }
        Scale::Card { corners } => {
            let corners: Vec<String> = corners.iter().map(|corner| pair(*corner)).collect();
            ("card", NOTHING.to_owned(), NOTHING.to_owned(), String::new(), format!("\"[{}]\"", corners.join(", ")))
        }
    };
    let level = match truth.level {
        Level::Easy => "easy",
        Level::Normal => "normal",
        Level::Hard => "hard",
    };
    let cloth = match truth.cloth {
        ClothKind::Denim => "denim",
        ClothKind::Twill21 => "twill21",
        ClothKind::Plain => "plain",
        ClothKind::Chambray => "chambray",
        ClothKind::Jersey => "jersey",
        ClothKind::Leather => "leather",
    };
    let stitch = if truth.sewn == Sewn::Lock { "lock" } else { "chain" };
    format!(
        "{name},{x1:.2},{y1:.2},{x2:.2},{y2:.2},{object},{a},{b},{known},{corners},{:.4},{},{},{:.4},{level},{cloth},{stitch},{},{},{:.1},{:.1}\r\n",
        truth.stitches_per_inch,
        truth.stitches_between,
        truth.skipped,
        truth.pitch_cv,
        u8::from(truth.tonal),
        u8::from(truth.curved),
        truth.tilt_deg,
        truth.px_per_stitch,
    )
}

fn keep(folder: &Path, name: &str, photograph: &Photograph) {
    let rgb: Vec<u8> = photograph.rgba.chunks_exact(4).flat_map(|pixel| [pixel[0], pixel[1], pixel[2]]).collect();
    let file = BufWriter::new(fs::File::create(folder.join(name)).expect("a file in the folder"));
    JpegEncoder::new_with_quality(file, photograph.quality)
        .encode(&rgb, photograph.width as u32, photograph.height as u32, image::ExtendedColorType::Rgb8)
        .expect("a JPEG");
}

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let [folder, from, count] = words.as_slice() else {
        eprintln!("give FOLDER FROM COUNT");
        std::process::exit(2);
    };
    let (Ok(from), Ok(count)) = (from.parse::<u64>(), count.parse::<usize>()) else {
        eprintln!("FROM and COUNT are whole numbers");
        std::process::exit(2);
    };
    let folder = Path::new(folder);
    fs::create_dir_all(folder).expect("a folder");
    let (next, lines) = (AtomicUsize::new(0), Mutex::new(vec![String::new(); count]));
    std::thread::scope(|scope| {
        for _ in 0..std::thread::available_parallelism().map_or(1, usize::from) {
            scope.spawn(|| {
                loop {
                    let at = next.fetch_add(1, Ordering::Relaxed);
                    if at >= count {
                        break;
                    }
                    let seed = from + at as u64;
                    let (name, drawn) = (format!("d{seed}.jpg"), photograph(seed));
                    keep(folder, &name, &drawn);
                    lines.lock().expect("no drawer has fallen")[at] = line(&name, &drawn);
                }
            });
        }
    });
    let lines = lines.into_inner().expect("no drawer has fallen");
    fs::write(folder.join("truth.csv"), format!("{HEAD}\r\n{}", lines.concat())).expect("truth.csv");
}
