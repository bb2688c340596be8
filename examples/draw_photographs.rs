//! Writes drawn photographs of seams and their truth into a folder, on all cores:
//! `cargo run --profile bench --no-default-features --example draw_photographs -- FOLDER FROM COUNT [seams|cloths|rubs]`.
//!
//! Seams, the default, are 1280 by 960 pixels with a ruler or card; cloths are seen from near, rubs are tissue after a rub test, and the truth
//! of these two has columns of its own. Seeds FROM to FROM+COUNT-1 become `dSEED.jpg` (`c`, `r`); `truth.csv` is written anew for these seeds when all are drawn.

use std::fs;
use std::io::BufWriter;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering};

use garment_assay::specimen::{
    ClothKind, Graduation, Level, Photograph, Pixel, Scale, Sewn, cloth_photograph, photograph, rub_photograph,
};
use image::codecs::jpeg::JpegEncoder;

const HEAD: &str = "file,seam_x1,seam_y1,seam_x2,seam_y2,object,ruler_a,ruler_b,known_mm,card_corners,stitches_per_inch,stitches_between,\
skipped,pitch_cv,level,cloth,stitch,tonal,curved,tilt_deg,px_per_stitch";

/// What stands in a field that says nothing, as in the sets drawn before.
const NOTHING: &str = "\"\"\"\"\"\"";

fn pair([x, y]: Pixel) -> String {
    format!("[{x}, {y}]")
}

fn cloth_name(cloth: ClothKind) -> &'static str {
    match cloth {
        ClothKind::Denim => "denim",
        ClothKind::Twill21 => "twill21",
        ClothKind::Plain => "plain",
        ClothKind::Chambray => "chambray",
        ClothKind::Jersey => "jersey",
        ClothKind::Leather => "leather",
    }
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
    let cloth = cloth_name(truth.cloth);
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

const CLOSE_HEAD: &str = "file,instrument,source,licence,repository,path,crop_xyxy,stitch,spi_true,stitches_between_marks,skipped,cv_pitch_true,\
pitch_px,usable,level,cloth,tonal,curved,rows,tilt_deg,P_x,P_y,Q_x,Q_y,scale,A_x,A_y,B_x,B_y,known_mm,tick_mm,card_corners,px_per_mm_given,f35,\
gap_mm,truth_note,ends_cm,picks_cm,yarn_deg,twill_vs_weft_deg,grade_true,spot_xyxy,white_xyxy,must_refuse";

fn keep(folder: &Path, name: &str, rgba: &[u8], (width, height): (usize, usize), quality: u8) {
    let rgb: Vec<u8> = rgba.chunks_exact(4).flat_map(|pixel| [pixel[0], pixel[1], pixel[2]]).collect();
    let file = BufWriter::new(fs::File::create(folder.join(name)).expect("a file in the folder"));
    JpegEncoder::new_with_quality(file, quality)
        .encode(&rgb, width as u32, height as u32, image::ExtendedColorType::Rgb8)
        .expect("a JPEG");
}

fn seam(folder: &Path, seed: u64) -> String {
    let (name, drawn) = (format!("d{seed}.jpg"), photograph(seed));
    keep(folder, &name, &drawn.rgba, (drawn.width, drawn.height), drawn.quality);
    line(&name, &drawn)
}

/// A line of the wider truth: the columns named, the others empty.
fn close_line(fields: &[(&str, String)]) -> String {
    let of = |column: &str| fields.iter().find(|(name, _)| *name == column).map_or("", |(_, value)| value.as_str());
    let values: Vec<&str> = CLOSE_HEAD.split(',').map(of).collect();
    format!("{}\r\n", values.join(","))
}

fn cloth(folder: &Path, seed: u64) -> String {
    let (name, drawn) = (format!("c{seed}.jpg"), cloth_photograph(seed));
    keep(folder, &name, &drawn.rgba, (drawn.side, drawn.side), drawn.quality);
    close_line(&[
        ("file", name),
        ("instrument", "cloth".to_owned()),
        ("source", "synthetic".to_owned()),
        ("cloth", cloth_name(drawn.cloth).to_owned()),
        ("px_per_mm_given", format!("{:.4}", drawn.px_per_mm)),
        ("ends_cm", format!("{:.2}", drawn.ends_per_cm)),
        ("picks_cm", format!("{:.2}", drawn.picks_per_cm)),
        ("yarn_deg", format!("{:.1}", drawn.yarn_deg)),
        ("twill_vs_weft_deg", drawn.twill_deg.map_or(String::new(), |degrees| format!("{degrees:.2}"))),
    ])
}

fn rub(folder: &Path, seed: u64) -> String {
    let (name, drawn) = (format!("r{seed}.jpg"), rub_photograph(seed));
    keep(folder, &name, &drawn.rgba, (drawn.side, drawn.side), drawn.quality);
    let square = |[left, top, right, bottom]: [usize; 4]| format!("{left} {top} {right} {bottom}");
    close_line(&[
        ("file", name),
        ("instrument", "rub".to_owned()),
        ("source", "synthetic".to_owned()),
        ("truth_note", "ISO 105-A04 formula on the true colours".to_owned()),
        ("grade_true", format!("{:.2}", drawn.grade)),
        ("spot_xyxy", square(drawn.spot)),
        ("white_xyxy", drawn.clean.map(square).join("; ")),
    ])
}

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let (Some(folder), Some(from), Some(count), kind) = (words.first(), words.get(1), words.get(2), words.get(3)) else {
        eprintln!("give FOLDER FROM COUNT [seams|cloths|rubs]");
        std::process::exit(2);
    };
    type Draw = fn(&Path, u64) -> String;
    let (draw, head): (Draw, &str) = match kind.map(String::as_str) {
        None | Some("seams") => (seam, HEAD),
        Some("cloths") => (cloth, CLOSE_HEAD),
        Some("rubs") => (rub, CLOSE_HEAD),
        Some(other) => {
            eprintln!("{other} is none of seams, cloths, rubs");
            std::process::exit(2);
        }
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
                    let line = draw(folder, from + at as u64);
                    lines.lock().expect("no drawer has fallen")[at] = line;
                }
            });
        }
    });
    let lines = lines.into_inner().expect("no drawer has fallen");
    fs::write(folder.join("truth.csv"), format!("{head}\r\n{}", lines.concat())).expect("truth.csv");
}
