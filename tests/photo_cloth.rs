//! Yarns and stains against what was made outside: colour-science for CIELAB, the handbook's rows, and pictures drawn elsewhere that stay where
//! they are.

use garment_assay::measure::{Lab, staining_difference, staining_grade};
use garment_assay::quantity::{Estimate, Number};
use photo::{Patch, Point, Raster, Scale, StainReading, StainRefusal, grade, yarns};
use serde_json::Value;

fn patch(left: f64, top: f64, right: f64, bottom: f64) -> Patch {
    Patch { from: Point { x: left, y: top }, to: Point { x: right, y: bottom } }
}

fn colour(value: &Value) -> [u8; 3] {
    [0, 1, 2].map(|n| u8::try_from(value[n].as_u64().expect("a number")).expect("a byte"))
}

/// A flat stain in the middle of a flat white, graded by the public face.
fn flat(white: [u8; 3], stain: [u8; 3]) -> Result<StainReading, StainRefusal> {
    let bytes: Vec<u8> = (0..100 * 100)
        .flat_map(|at: usize| {
            let [r, g, b] = if (30..70).contains(&(at % 100)) && (30..70).contains(&(at / 100)) { stain } else { white };
            [r, g, b, 255]
        })
        .collect();
    let white = [
        patch(2.0, 30.0, 22.0, 70.0),
        patch(78.0, 30.0, 98.0, 70.0),
        patch(30.0, 2.0, 70.0, 22.0),
        patch(30.0, 78.0, 70.0, 98.0),
    ];
    grade(&Raster::new(100, 100, &bytes).expect("a picture"), patch(34.0, 34.0, 66.0, 66.0), &white)
}

/// CIELAB and colour differences by colour-science 0.4.7. Its matrix of sRGB has more digits than the standard prints: hence a hundredth.
#[test]
fn stains_are_graded_as_by_a_general_library_of_colour() {
    let vectors: Value = serde_json::from_str(include_str!("vectors/photo_cloth.json")).expect("vectors");
    let stains = vectors["stains"].as_array().expect("stains");
    assert_eq!(stains.len(), 21);
    let mut graded = 0;
    for row in stains {
        let expected = row["grade"].as_f64().expect("a grade");
        match flat(colour(&row["white"]), colour(&row["stain"])) {
            Ok(reading) => {
                graded += 1;
                assert!((reading.grade - expected).abs() < 0.01, "{row}: {}", reading.grade);
            }
            Err(refusal) => assert_eq!(refusal, StainRefusal::Reversed, "{row}"),
        }
    }
    assert_eq!(graded, 21);
}

/// Both rooms have the formula of ISO 105-A04, since neither may use the other. A grey stain: the difference is one of lightness alone.
#[test]
fn the_reader_grades_as_the_colour_meter_does() {
    for level in (60..220_u8).step_by(16) {
        let decoded = |value: u8| {
            let value = f64::from(value) / 255.0;
            if value <= 0.040_45 { value / 12.92 } else { ((value + 0.055) / 1.055).powf(2.4) }
        };
        let lightness = |share: f64| Lab { l: 116.0 * share.cbrt() - 16.0, a: 0.0, b: 0.0 };
        let difference = staining_difference(lightness(0.8), lightness(0.8 * decoded(level) / decoded(220)));
        let by_meter = staining_grade(&Estimate::<Number>::exact(difference)).value();
        let by_photo = flat([220; 3], [level; 3]).expect("a grade").grade;
        assert!((by_meter - by_photo).abs() < 0.01, "{level}: {by_meter} and {by_photo}");
    }
}

/// Where the open set of photographs lies; tests on it pass without it, and say so.
const OPEN: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../shared/data/photos/more");

/// Rows of its table, by the names of its columns.
fn open_rows() -> Vec<impl Fn(&str) -> String> {
    let Ok(text) = std::fs::read_to_string(format!("{OPEN}/truth.csv")) else {
        eprintln!("no open photographs here: not tried");
        return Vec::new();
    };
    let fields = |line: &str| {
        let mut quoted = false;
        let split = line.split(|sign| {
            quoted ^= sign == '"';
            sign == ',' && !quoted
        });
        split.map(|field| field.trim_matches('"').to_owned()).collect::<Vec<_>>()
    };
    let mut lines = text.lines();
    let names = fields(lines.next().unwrap_or_default());
    lines
        .map(|line| {
            let (names, row) = (names.clone(), fields(line));
            move |name: &str| names.iter().position(|at| at == name).and_then(|at| row.get(at).cloned()).unwrap_or_default()
        })
        .collect()
}

fn picture(file: &str) -> (usize, usize, Vec<u8>) {
    let image = image::open(format!("{OPEN}/{file}")).expect("a picture").to_rgba8();
    (image.width() as usize, image.height() as usize, image.into_raw())
}

#[test]
fn open_rub_tests_are_graded_within_half_a_grade() {
    let corners = |text: &str| {
        let at: Vec<f64> = text.split_whitespace().filter_map(|number| number.parse().ok()).collect();
        patch(at[0], at[1], at[2], at[3])
    };
    for row in open_rows().iter().filter(|row| row("instrument") == "rub") {
        let (width, height, bytes) = picture(&row("file"));
        let white: Vec<Patch> = row("white_xyxy").split(';').map(corners).collect();
        let read = grade(&Raster::new(width, height, &bytes).expect("a picture"), corners(&row("spot_xyxy")), &white);
        let truth: f64 = row("grade_true").parse().expect("a grade");
        eprintln!("{} {truth} {read:?}", row("file"));
        assert!((read.expect("a grade").grade - truth).abs() <= 0.5);
    }
}

/// Drawn cloth within 3 %, real chambray counted by eye within 4 % (its own doubt is 2 %), twill angles within 2 degrees; one may be refused.
#[test]
fn open_cloth_is_counted() {
    let (mut asked, mut refused) = (0, 0);
    for row in open_rows().iter().filter(|row| row("instrument") == "cloth") {
        let (width, height, bytes) = picture(&row("file"));
        let number = |name: &str| row(name).parse::<f64>().ok();
        let scale = Scale::even(number("px_per_mm_given").expect("a scale")).expect("a scale");
        let (sine, cosine) = number("yarn_deg").unwrap_or(0.0).to_radians().sin_cos();
        let (x, y) = (width as f64 / 2.0, height as f64 / 2.0);
        let mark = |reach: f64| Point { x: x - reach * width as f64 * sine, y: y + reach * height as f64 * cosine };
        let read = yarns(&Raster::new(width, height, &bytes).expect("a picture"), mark(-0.36), mark(0.36), &scale);
        eprintln!("{} {:?} {:?} {:?} {read:?}", row("file"), number("ends_cm"), number("picks_cm"), number("twill_vs_weft_deg"));
        asked += 1;
        let Ok(read) = read else {
            refused += 1;
            continue;
        };
        let allowed = if row("source") == "real" { 0.04 } else { 0.03 };
        for (found, truth) in [(read.along_marked, number("ends_cm")), (read.across_marked, number("picks_cm"))] {
            assert!((found / truth.expect("a count") - 1.0).abs() <= allowed, "{}: {found} {truth:?}", row("file"));
        }
        if let (Some(found), Some(truth)) = (read.twill_degrees, number("twill_vs_weft_deg")) {
            assert!((found - truth).abs() <= 2.0, "{found} {truth}");
        }
    }
    assert!(refused <= 1, "{refused} of {asked} refused");
}
