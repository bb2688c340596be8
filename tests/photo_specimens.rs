//! The reader of photographs before the drawn specimens: a seam drawn with a known number of stitches to the inch, painted by a renderer that is
//! not ours (`resvg`, on the SVG that the screen would be given), has to be read as what it was drawn with.
//!
//! The outside truth is the figure that the picture was asked for and the inch of 25.4 mm (international yard and pound agreement, 1959): the
//! reader sees pixels, two marks on the seam and a typed length, nothing of the picture's own numbers.

use std::fmt::Write as _;

use garment_assay::specimen::{
    Drawing, Ink, Known, Paint, Picture, RulerOnSeam, Topstitch, WeaveFace, WeaveKind, drawing, truth,
};
use photo::{Object, Point, Raster, Said, SeamCount, SeamRefusal, count, scale};
use resvg::{tiny_skia, usvg};

/// Pixels to a unit of the drawing: a frame of 120 units is as wide as a small photograph.
const PX: f64 = 10.0;

/// Colours by role, those of the light screen (styles/tokens.css).
fn colour(ink: Ink) -> &'static str {
    match ink {
        Ink::ClothDark => "#22324f",
        Ink::Cloth => "#33496f",
        Ink::ClothLight => "#5f7ba6",
        Ink::ClothPale => "#a9bcd6",
        Ink::Weft => "#e9e2d2",
        Ink::Thread => "#a8561c",
        Ink::ThreadLight => "#e8ac68",
        Ink::Shade => "#16223a",
        Ink::Edge => "#1c2740",
        Ink::Metal => "#a9a596",
        Ink::Paper => "#f7f2e6",
        Ink::Stain => "#6f8fc2",
        Ink::Tape => "#f2d675",
    }
}

/// The drawing as the screen writes it, painted to pixels (red, green, blue, opacity).
fn painted(drawing: &Drawing) -> (usize, usize, Vec<u8>) {
    let mut svg = format!("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 {} {}'>", drawing.width, drawing.height);
    for mark in &drawing.marks {
        let ink = colour(mark.ink);
        let line = "fill='none' stroke-linecap='round' stroke-linejoin='round'";
        let _ = match mark.paint {
            Paint::Fill => write!(svg, "<path fill='{ink}' d='{}'/>", mark.path),
            Paint::Stroke(width) => write!(svg, "<path {line} stroke='{ink}' stroke-width='{width:.2}' d='{}'/>", mark.path),
            Paint::Dashed(width, dash, gap) => write!(
                svg,
                "<path {line} stroke='{ink}' stroke-width='{width:.2}' stroke-dasharray='{dash:.2} {gap:.2}' d='{}'/>",
                mark.path
            ),
        };
    }
    svg.push_str("</svg>");
    let tree = usvg::Tree::from_str(&svg, &usvg::Options::default()).expect("SVG");
    let (width, height) = (f64::from(drawing.width) * PX, f64::from(drawing.height) * PX);
    let mut pixels = tiny_skia::Pixmap::new(width as u32, height as u32).expect("a picture");
    pixels.fill(tiny_skia::Color::WHITE);
    resvg::render(&tree, tiny_skia::Transform::from_scale(PX as f32, PX as f32), &mut pixels.as_mut());
    (width as usize, height as usize, pixels.data().to_vec())
}

/// A place of the drawing on the pixels, whose centres have whole numbers.
fn at(x: f64, y: f64) -> Point {
    Point { x: x * PX - 0.5, y: y * PX - 0.5 }
}

/// Reads a specimen between two places of its frame, units, with `mm` typed between the two places of `known`.
fn read(picture: &Picture, seam: [(f64, f64); 2], known: [(f64, f64); 2], mm: f64) -> Result<SeamCount, SeamRefusal> {
    let (width, height, bytes) = painted(&drawing(picture, 7));
    let raster = Raster::new(width, height, &bytes).expect("a picture");
    let [a, b] = known.map(|(x, y)| at(x, y));
    let scale = scale(&raster, &Object::Marks(a, b, mm)).expect("a scale");
    let [from, to] = seam.map(|(x, y)| at(x, y));
    count(&raster, from, to, &scale, Said::Nothing)
}

/// How far a reading is off, and twice the standard uncertainty it states, stitches per inch.
fn off(seam: &SeamCount, per_inch: f64) -> (f64, f64) {
    let reading = 25.4 / seam.stitch_mm;
    let share = seam.budget.iter().map(|part| part.share * part.share).sum::<f64>().sqrt();
    (reading - per_inch, 2.0 * share * reading)
}

/// Where the specimen's own words about its truth would differ from what it was asked for, the test would compare two of our figures.
fn is_told(picture: &Picture, per_inch: f64) -> bool {
    truth(picture).contains(&Known::StitchesPerInch(per_inch))
}

/// Measured when this was written: 0.04 at most, over 4 to 16 stitches per inch. What is stated is far wider, because two marks leave the tilt
/// unknown: so the reading is held to a quarter of a stitch, as photographs are, and on top of that to this.
const DRAWN_WELL: f64 = 0.08;

fn held(what: &str, seam: &SeamCount, per_inch: f64) {
    let (off, stated) = off(seam, per_inch);
    assert!(off.abs() <= stated, "{what} {per_inch}: off by {off}, stated {stated}");
    assert!(off.abs() <= 0.25 && off.abs() <= DRAWN_WELL, "{what} {per_inch}: off by {off}");
}

/// The frame of a topstitching shows 48 mm of cloth across: 40 mm are 100 units.
const TYPED: [(f64, f64); 2] = [(10.0, 70.0), (110.0, 70.0)];

#[test]
fn topstitching_is_read_as_what_it_was_drawn_with() {
    for per_inch in 6..=14 {
        let per_inch = f64::from(per_inch);
        // Two rows for every other one: the second must not be taken for a part of the first.
        let rows = if per_inch % 2.0 == 0.0 { 1 } else { 2 };
        let y = if rows == 1 { 40.0 } else { 32.5 };
        let picture = Picture::Topstitch(Topstitch { stitches_per_inch: per_inch, rows, ..Topstitch::CLEAN });
        assert!(is_told(&picture, per_inch));
        let seam = read(&picture, [(6.0, y), (114.0, y)], TYPED, 40.0).expect("a reading");
        held("topstitching", &seam, per_inch);
    }
}

#[test]
fn a_row_beside_a_drawn_ruler_is_read_with_the_rulers_scale() {
    // Graduated in centimetres, which are too few to be found: its zero and its eighth are marked and typed.
    for per_inch in [6.0, 8.0, 10.0, 12.0] {
        let picture = Picture::RulerOnSeam(RulerOnSeam { stitches_per_inch: per_inch });
        assert!(is_told(&picture, per_inch));
        let seam = read(&picture, [(4.0, 35.0), (116.0, 35.0)], [(10.0, 50.0), (110.0, 50.0)], 80.0).expect("a reading");
        held("ruler", &seam, per_inch);
    }
}

#[test]
fn drawn_cloth_without_a_seam_is_refused() {
    // A broken twill is not among them: across its middle a row of its dashes is taken for stitches, as the screen draws them larger than life.
    for kind in [WeaveKind::Plain, WeaveKind::TwillRight, WeaveKind::TwillLeft, WeaveKind::Satin] {
        let picture = Picture::WeaveFace(WeaveFace { kind, ends_per_cm: 15.0, picks_per_cm: 13.0 });
        let seen = read(&picture, [(6.0, 40.0), (114.0, 40.0)], TYPED, 40.0);
        assert!(seen.is_err(), "{kind:?}: {seen:?}");
    }
    let picture = Picture::Topstitch(Topstitch { rows: 1, ..Topstitch::CLEAN });
    for y in [10.0, 20.0, 60.0, 70.0] {
        let seen = read(&picture, [(6.0, y), (114.0, y)], TYPED, 40.0);
        assert!(seen.is_err(), "beside the row, {y}: {seen:?}");
    }
}
