//! The pictures beside the answers: every one of them can be drawn, is light enough to stand on a screen with others, and shows
//! something else than its neighbours.

use std::collections::BTreeSet;

use garment_assay::catalog::second_hand::CONDITIONS;
use garment_assay::catalog::{FAMILIES, bench, jeans, tailored_jacket};
use garment_assay::check::Check;
use garment_assay::measure::{GREY_STEPS, INSTRUMENTS, InputKind, Lab, ROWS, STITCH_TYPES};
use garment_assay::specimen::{
    ColourPair, Drawing, Ink, JacketMeasure, Known, Mark, Measure, Paint, Picture, Topstitch, drawing, truth,
};

fn checks() -> impl Iterator<Item = &'static Check> {
    let worn = CONDITIONS.iter().map(|condition| &condition.check);
    FAMILIES.iter().flat_map(|family| family.checks).copied().chain(worn)
}

fn pictures(check: &Check) -> Vec<Picture> {
    check.levels.iter().filter_map(|level| level.drawn).collect()
}

#[test]
fn a_check_has_a_picture_for_each_answer_or_for_none() {
    for check in checks() {
        let drawn = pictures(check).len();
        assert!(drawn == 0 || drawn == check.levels.len(), "{}: {drawn} of {}", check.key, check.levels.len());
    }
}

#[test]
fn only_answers_that_are_words_on_a_label_go_without_a_picture() {
    let bare: Vec<&str> = checks().filter(|check| pictures(check).is_empty()).map(|check| check.key).collect();
    assert_eq!(
        bare,
        [
            "fibre-label",
            "made-in",
            "fibre",
            "made-in",
            "made-in",
            "fibre",
            "made-in",
            "fibre",
            "made-in",
            "cloth",
            "made-in",
            "rain",
            "shell",
            "made-in"
        ]
    );
}

#[test]
fn pictures_of_one_check_differ_in_drawing_and_in_words() {
    for check in checks() {
        let pictures = pictures(check);
        for (place, one) in pictures.iter().enumerate() {
            for other in &pictures[..place] {
                assert_ne!(drawing(one, 1).marks, drawing(other, 1).marks, "{}", check.key);
                assert_ne!(one.words(), other.words(), "{}", check.key);
            }
        }
    }
}

/// Denim's slanting dashes belong to jeans; a tailored jacket is of twill often enough.
#[test]
fn only_jeans_and_tailored_jackets_are_drawn_in_twill() {
    let mut seen = 0;
    for family in FAMILIES {
        for check in family.checks {
            for picture in pictures(check) {
                let marks = drawing(&picture, 1).marks;
                let twill = |mark: &Mark| matches!(mark.paint, Paint::Dashed(..)) && mark.ink == Ink::ClothDark;
                let found = marks.iter().any(twill);
                let allowed = std::ptr::eq(family, &jeans::JEANS) || std::ptr::eq(family, &tailored_jacket::TAILORED_JACKET);
                assert!(allowed || !found, "{}/{}", family.key, check.key);
                seen += usize::from(found);
            }
        }
    }
    assert!(seen > 20, "{seen}");
}

#[test]
fn what_is_true_of_a_picture_stays_true_on_other_cloth() {
    static ROW: Picture = Picture::Topstitch(Topstitch { restarts: 2, ..Topstitch::CLEAN });
    for other in [Picture::Plain(&ROW), Picture::Knit(&ROW)] {
        assert_eq!(truth(&other), truth(&ROW));
        assert!(other.words().starts_with(&ROW.words()) && other.words() != ROW.words());
        // The same rows of stitches, in the same places.
        let rows = |picture: &Picture, ink: Ink| -> Vec<String> {
            drawing(picture, 1).marks.into_iter().filter(|mark| mark.ink == ink).map(|mark| mark.path).collect()
        };
        assert_eq!(rows(&other, Ink::Thread), rows(&ROW, Ink::ThreadLight));
    }
}

#[test]
fn pictures_are_light_enough_for_a_phone() {
    // Aim: 40 marks and 3 KB of path each. Measured: up to 18 marks and 3.9 KB; the limit here keeps it from growing.
    for picture in checks().flat_map(pictures).chain(bench_sets().into_iter().flatten()) {
        let drawing = drawing(&picture, 7);
        let text: usize = drawing.marks.iter().map(|mark| mark.path.len()).sum();
        assert!(!drawing.marks.is_empty() && drawing.marks.len() <= 40, "{picture:?}: {} marks", drawing.marks.len());
        assert!(text <= 4500, "{picture:?}: {text} bytes");
    }
}

/// The pictures of the bench, those that stand side by side together.
fn bench_sets() -> Vec<Vec<Picture>> {
    let mut sets = vec![
        bench::DRAWERS.iter().flat_map(|drawer| drawer.tools.iter().filter_map(|tool| tool.drawn)).collect(),
        FAMILIES.iter().map(|family| family.drawn).collect(),
        bench::STITCHES.iter().map(|stitch| stitch.1).collect(),
    ];
    sets.extend(FAMILIES.iter().map(|family| family.drawn_points.iter().map(|point| point.1).collect()));
    sets.extend(bench::LOOKS.iter().map(|look| look.choices.iter().map(|choice| choice.1).collect()));
    sets.extend(bench::GRADES.iter().map(|grades| grades.steps.to_vec()));
    sets
}

#[test]
fn pictures_of_the_bench_that_stand_side_by_side_differ_in_drawing_and_in_words() {
    for set in bench_sets() {
        for (place, one) in set.iter().enumerate() {
            for other in &set[..place] {
                assert_ne!(drawing(one, 1).marks, drawing(other, 1).marks, "{one:?}");
                assert_ne!(one.words(), other.words(), "{one:?}");
            }
        }
    }
}

#[test]
fn each_instrument_stands_in_one_drawer_and_in_the_order_of_the_list() {
    let shown: Vec<&str> = bench::DRAWERS.iter().flat_map(|drawer| drawer.tools.iter().map(|tool| tool.instrument.key)).collect();
    let listed: Vec<&str> = INSTRUMENTS.iter().map(|instrument| instrument.key).collect();
    assert_eq!(shown, listed);
    let names: BTreeSet<&str> = bench::DRAWERS.iter().map(|drawer| drawer.name()).collect();
    assert_eq!(names.len(), bench::DRAWERS.len());
    assert!(bench::DRAWERS.iter().all(|drawer| !drawer.tools.is_empty()));
}

#[test]
fn only_instruments_that_take_their_figures_from_paper_go_without_a_picture() {
    let tools = bench::DRAWERS.iter().flat_map(|drawer| drawer.tools);
    let bare: Vec<&str> = tools.filter(|tool| tool.drawn.is_none()).map(|tool| tool.instrument.key).collect();
    assert_eq!(bare, ["cloth-mass", "yarn-number"]);
}

/// An enum's name as a key: `FrontRise` is `front-rise`.
fn as_key(name: String) -> String {
    let mut key = String::new();
    for sign in name.chars() {
        if sign.is_uppercase() && !key.is_empty() {
            key.push('-');
        }
        key.extend(sign.to_lowercase());
    }
    key
}

#[test]
fn each_point_of_measure_has_its_own_picture() {
    for family in FAMILIES {
        let drawn: Vec<&str> = family.drawn_points.iter().map(|(key, _)| *key).collect();
        let asked: Vec<&str> = family.points.iter().map(|point| point.key).collect();
        assert_eq!(drawn, asked, "{}", family.key);
    }
    for (key, picture) in tailored_jacket::TAILORED_JACKET.drawn_points {
        let Picture::JacketMeasure(JacketMeasure { point }) = picture else { panic!("{key} is not a measure") };
        assert_eq!(as_key(format!("{point:?}")), *key);
    }
    for (key, picture) in jeans::JEANS.drawn_points {
        let Picture::Measure(Measure { point }) = picture else { panic!("{key} is not a measure") };
        assert_eq!(as_key(format!("{point:?}")), *key);
    }
}

#[test]
fn each_choice_of_each_look_has_a_picture() {
    let looks: Vec<&str> = bench::LOOKS.iter().map(|look| look.look.key).collect();
    assert_eq!(looks, ["back", "rows", "edge"]);
    for look in bench::LOOKS {
        let drawn: Vec<&str> = look.choices.iter().map(|(key, _)| *key).collect();
        let asked: Vec<&str> = look.look.choices.iter().map(|choice| choice.key).collect();
        assert_eq!(drawn, asked, "{}", look.look.key);
    }
    let rows = bench::LOOKS.iter().find(|look| look.look.key == ROWS.key).expect("rows");
    for (place, (key, picture)) in rows.choices.iter().enumerate() {
        assert_eq!(truth(picture), [Known::NeedleLines(place as u8)], "{key}");
    }
}

#[test]
fn stitches_drawn_are_stitches_that_there_are_and_are_told_by_their_number() {
    for (number, picture) in bench::STITCHES {
        assert!(STITCH_TYPES.iter().any(|stitch| stitch.number == *number), "{number}");
        assert!(picture.words().contains(number), "{number}");
    }
}

#[test]
fn each_scale_of_grades_by_eye_has_a_reference_for_each_grade_and_they_mount() {
    for grades in bench::GRADES {
        assert_eq!(grades.scale.name(), grades.instrument.name(), "a scale goes with its instrument");
        let InputKind::Choice(steps) = grades.instrument.inputs[0].kind else { panic!("{} asks no grade", grades.scale.name()) };
        for (grade, line) in (1..=5).zip(grades.scale.steps()) {
            assert!(steps.iter().any(|step| step.key == format!("{grade}") && step.line() == line));
        }
        // What a picture is known to show gets less from grade 1 to grade 5.
        let amounts: Vec<f64> = (grades.steps.iter())
            .map(|picture| match (picture, truth(picture).first()) {
                (Picture::RubOff(it), _) => it.strength,
                (_, Some(Known::RippleMm(mm))) => *mm,
                (_, Some(Known::Balls(balls))) => f64::from(*balls),
                (_, Some(Known::ColourGrade(grade))) => 5.0 - f64::from(*grade),
                _ => panic!("{picture:?} tells nothing"),
            })
            .collect();
        assert!(amounts.windows(2).all(|pair| pair[0] > pair[1]) && amounts[4] == 0.0, "{amounts:?}");
    }
    let by_eye = bench::DRAWERS.iter().find(|drawer| drawer.name() == "Grades by eye").expect("a drawer");
    let graded: Vec<&str> = bench::GRADES.iter().map(|grades| grades.instrument.key).collect();
    assert_eq!(graded, by_eye.tools.iter().map(|tool| tool.instrument.key).collect::<Vec<_>>());
}

/// A colour of the palette as red, green and blue of sRGB, 0 to 1.
fn of_palette(name: &str) -> [f64; 3] {
    let tokens = include_str!("../styles/tokens.css");
    let line = tokens.lines().map(str::trim).find_map(|line| line.strip_prefix(&format!("{name}: #"))).expect("a colour");
    [0, 2, 4].map(|at| f64::from(u8::from_str_radix(&line[at..at + 2], 16).expect("hex")) / 255.0)
}

/// sRGB to CIELAB under D65: IEC 61966-2-1 for the curve and the matrix, ISO/CIE 11664-4 for L*a*b*.
fn lab(rgb: [f64; 3]) -> Lab {
    let [r, g, b] = rgb.map(|v| if v <= 0.04045 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) });
    let xyz = [
        (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505,
        0.2126 * r + 0.7152 * g + 0.0722 * b,
        (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089,
    ];
    let [x, y, z] =
        xyz.map(|t| if t > (6.0_f64 / 29.0).powi(3) { t.cbrt() } else { t * (29.0_f64 / 6.0).powi(2) / 3.0 + 4.0 / 29.0 });
    Lab { l: 116.0 * y - 16.0, a: 500.0 * (x - y), b: 200.0 * (y - z) }
}

#[test]
fn changes_of_colour_are_drawn_as_large_as_the_chips_of_the_grey_scale() {
    let (was, lines) = (of_palette("--cloth"), of_palette("--cloth-light"));
    for grade in 1..=5_u8 {
        let drawn = drawing(&Picture::ColourPair(ColourPair { grade }), 7);
        // The share of the changed half that is covered: lines as wide as their stroke, over 60 units.
        let covered: f64 = (drawn.marks.iter())
            .filter(|mark| mark.ink == Ink::ClothLight)
            .map(|mark| match mark.paint {
                Paint::Stroke(width) => width * mark.path.matches('M').count() as f64 / (Drawing::WIDTH / 2.0),
                _ => panic!("not lines"),
            })
            .sum();
        // A screen lays lines thinner than its dots over the ground in sRGB as it stands.
        let mixed: [f64; 3] = std::array::from_fn(|i| was[i] + (lines[i] - was[i]) * covered);
        let step = GREY_STEPS.iter().find(|step| step.grade.value() == f64::from(grade)).expect("a whole grade");
        let (wanted, tolerance) = step.change;
        let difference = lab(was).difference(lab(mixed));
        assert!((difference - wanted).abs() <= tolerance, "grade {grade}: {difference}, not {wanted}");
    }
}
