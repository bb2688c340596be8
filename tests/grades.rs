//! Grades against the handbook's worked rows (ISO 105-A04, -A05) and steps (A02, A03), colours worked out with colour-science 0.4.7, and
//! spreads with uncertainties 3.2.3.

mod bench_rows;

use bench_rows::{carried, near, numbers, rows};
use garment_assay::grading::Weights;
use garment_assay::measure::{
    COLOUR_CHANGE, COLOUR_CHANGE_BY_METER, COLOUR_CHANGE_SCALE, Fault, GRADE_SPREAD, GREY_STEPS, Grade, Instrument, Lab, PILLING,
    PILLING_SCALE, RUB_OFF, RUB_OFF_SCALE, SEAM_SMOOTHNESS, SEAM_SMOOTHNESS_SCALE, STAINING_BY_METER, USUAL_RUB_OFF,
    change_difference, change_grade, change_grade_by_table, staining_difference, staining_grade,
};
use garment_assay::quantity::{Estimate, Number};
use proptest::prelude::*;

fn labs(text: &str) -> (Lab, Lab) {
    let n = numbers(text);
    assert_eq!(n.len(), 6, "{text}");
    (Lab { l: n[0], a: n[1], b: n[2] }, Lab { l: n[3], a: n[4], b: n[5] })
}

fn exact(value: f64) -> Estimate<Number> {
    Estimate::exact(value)
}

/// What stands behind `name=` in a row.
fn part<'a>(text: &'a str, name: &str) -> &'a str {
    text.split("; ").find_map(|part| part.strip_prefix(name)?.strip_prefix('=')).unwrap_or_else(|| panic!("{name} in {text}"))
}

/// Handbook data, grey_scale_instrument.csv.
#[test]
fn every_worked_row_of_the_handbook_is_met() {
    let rows = rows(include_str!("vectors/handbook_grey_scale_instrument_b.csv"));
    assert_eq!(rows.len(), 11);
    for row in rows {
        let (before, after) = labs(&row[2]);
        let number = |name| part(&row[3], name).parse::<f64>().unwrap();
        let tolerance: f64 = row[5].parse().unwrap();
        near(before.difference(after), number("dE"), tolerance);
        let grade = if row[0].starts_with("GA05") {
            let weighed = change_difference(before, after);
            near(weighed, number("dEF"), tolerance);
            near(change_grade(&exact(weighed)).value(), number("GSc"), tolerance);
            change_grade_by_table(weighed).unwrap()
        } else {
            let weighed = staining_difference(before, after);
            near(weighed, number("dEGS"), tolerance);
            let grade = staining_grade(&exact(weighed)).value();
            near(grade, number("SSR"), tolerance);
            Grade::nearest(grade).unwrap()
        };
        assert_eq!(grade.name(), part(&row[3], "grade"), "{}", row[0]);
        let instrument = if row[0].starts_with("GA05") { &COLOUR_CHANGE_BY_METER } else { &STAINING_BY_METER };
        let given: Vec<_> = numbers(&row[2]).into_iter().map(Some).chain([None]).collect();
        assert_eq!(instrument.estimate(&given).unwrap().also("half-step").unwrap().value, grade.value());
    }
}

/// colour-science 0.4.7: CIE 1976 difference and LCh; bench_b.py.
#[test]
fn pairs_of_colours_agree_with_a_colour_library() {
    let rows: Vec<_> = rows(include_str!("vectors/bench_b.csv")).into_iter().filter(|row| row[0] == "colour").collect();
    assert_eq!(rows.len(), 64);
    for row in rows {
        let n: Vec<f64> = row[2].split(' ').map(|number| number.parse().unwrap()).collect();
        let (before, after) = (Lab { l: n[0], a: n[1], b: n[2] }, Lab { l: n[3], a: n[4], b: n[5] });
        let (staining, change) = row[4].split_once(' ').unwrap();
        near(before.difference(after), row[3].parse().unwrap(), 1e-9);
        near(staining_difference(before, after), staining.parse().unwrap(), 1e-9);
        near(change_difference(before, after), change.parse().unwrap(), 1e-7);
    }
}

/// uncertainties 3.2.3; bench_b.py.
#[test]
fn spreads_are_those_of_a_general_library() {
    for (name, grade) in
        [("staining-grade", staining_grade as fn(&Estimate<Number>) -> Estimate<Number>), ("change-grade", change_grade)]
    {
        for (given, value, spread) in carried(name) {
            let found = grade(&Estimate::measured("difference", given[0], given[1]).unwrap());
            near(found.value(), value, 1e-12);
            near(found.uncertainty(), spread, 1e-12);
        }
    }
}

/// Handbook data, grey_scale_steps.csv.
#[test]
fn the_grey_steps_are_those_of_the_handbook() {
    let rows = rows(include_str!("vectors/handbook_grey_scale_steps_b.csv"));
    let rows: Vec<_> = rows.iter().filter(|row| row[0] != "grade").collect();
    assert_eq!(rows.len(), GREY_STEPS.len());
    for (row, step) in rows.iter().zip(&GREY_STEPS) {
        let number = |field: usize| row[field].parse::<f64>().unwrap();
        assert_eq!(step.grade.name(), row[0]);
        assert_eq!((step.change, step.staining), ((number(1), number(2)), (number(3), number(4))), "{}", row[0]);
    }
}

/// A card's own chips, which differ by lightness only, must get the grade printed on the card: A03 through A04, A02 through A05.
#[test]
fn the_cards_grade_themselves() {
    for step in &GREY_STEPS {
        assert_eq!(Grade::nearest(staining_grade(&exact(step.staining.0)).value()), Some(step.grade), "staining");
        assert_eq!(change_grade_by_table(step.change.0), Some(step.grade), "change");
        near(change_grade(&exact(step.change.0)).value(), step.grade.value(), 0.05);
    }
}

/// Handbook, sections 7 and 17: with the natural logarithm the chips 8.5, 16.9 and 34.1 of A03 give 3.00, 2.00 and 0.98 (the scale ends
/// at 1). A public code takes the decimal one: recomputed here, it would call all three nearly clean.
#[test]
fn the_decimal_logarithm_is_a_slip() {
    for (difference, right, printed) in [(8.5_f64, 3.0, 4.75), (16.9, 2.0, 4.32), (34.1, 1.0, 3.88)] {
        near(staining_grade(&exact(difference)).value(), right, 0.005);
        let slip = 6.1 - 1.45 * difference.log10();
        near(slip, printed, 0.005);
        assert!(slip - right > 1.7);
    }
    near(6.1 - 1.45 * 34.1_f64.ln(), 0.98, 0.005);
}

/// Handbook, section 17: half the difference of the hues in place of their mean. Both recomputed in bench_b.py.
#[test]
fn the_mean_of_two_hues_is_half_their_sum() {
    let row = rows(include_str!("vectors/bench_b.csv")).into_iter().find(|row| row[0] == "slip").unwrap();
    let (before, after) = labs(&row[2].replace(' ', "; "));
    let (slip, right) = (row[3].parse::<f64>().unwrap(), row[4].parse::<f64>().unwrap());
    assert!((slip - right).abs() > 0.05);
    near(change_difference(before, after), right, 1e-9);
}

/// The rule above 4: `5 - 0.23 dE_GS`. At no difference at all the grade is 5, and the step between the two branches is small.
#[test]
fn above_four_the_scale_of_staining_is_straight() {
    assert_eq!(staining_grade(&exact(0.0)).value(), 5.0);
    near(staining_grade(&exact(1.9007)).value(), 4.563, 0.0005);
    let border = (2.1_f64 / 1.45).exp();
    let (above, below) = (staining_grade(&exact(border - 1e-6)).value(), staining_grade(&exact(border + 1e-6)).value());
    assert!(above > below && above - below < 0.03);
}

#[test]
fn the_scales_end_at_one_and_five() {
    for grade in [staining_grade as fn(&Estimate<Number>) -> Estimate<Number>, change_grade] {
        let worst = grade(&Estimate::measured("difference", 80.0, 2.0).unwrap());
        assert_eq!(worst.value(), 1.0);
        assert!(worst.uncertainty() > 0.0);
        assert!(!grade(&exact(-1.0)).is_known() && !grade(&Estimate::unknown()).is_known());
    }
    for (border, name) in
        [(0.40, "4-5"), (1.25, "4"), (2.10, "3-4"), (2.95, "3"), (4.10, "2-3"), (5.80, "2"), (8.20, "1-2"), (11.60, "1")]
    {
        assert_eq!(change_grade_by_table(border).unwrap().name(), name);
    }
    assert_eq!(change_grade_by_table(f64::NAN), None);
    assert_eq!(change_grade_by_table(-0.1), None);
    assert_eq!(change_grade_by_table(f64::INFINITY), Some(Grade::ALL[0]));
    assert_eq!(Grade::nearest(f64::NAN), None);
    assert_eq!(Grade::nearest(f64::INFINITY).map(Grade::value), Some(5.0));
    assert_eq!(Grade::nearest(-9.0).map(Grade::value), Some(1.0));
}

/// ISO 105-A04: the half steps have their borders at the quarters.
#[test]
fn half_steps_begin_at_the_quarters() {
    for (value, name) in [(3.74, "3-4"), (3.75, "4"), (4.24, "4"), (4.25, "4-5"), (4.75, "5"), (1.2, "1"), (1.25, "1-2")] {
        assert_eq!(Grade::nearest(value).unwrap().name(), name, "{value}");
    }
    for grade in Grade::ALL {
        assert_eq!(Grade::nearest(grade.value()), Some(grade));
    }
}

const BY_EYE: [(&Instrument, &garment_assay::measure::GradeScale); 4] = [
    (&RUB_OFF, &RUB_OFF_SCALE),
    (&COLOUR_CHANGE, &COLOUR_CHANGE_SCALE),
    (&SEAM_SMOOTHNESS, &SEAM_SMOOTHNESS_SCALE),
    (&PILLING, &PILLING_SCALE),
];

#[test]
fn every_grade_by_eye_has_plain_words_and_half_a_grade_of_spread() {
    for (instrument, scale) in BY_EYE {
        let choices = instrument.inputs[0].choices();
        assert!(choices.iter().map(|choice| choice.key).eq(Grade::ALL.iter().map(|grade| grade.name())), "{}", instrument.key);
        for (place, grade) in Grade::ALL.into_iter().enumerate() {
            let mut given = vec![None; instrument.inputs.len()];
            given[0] = Some(place as f64);
            let outcome = instrument.estimate(&given).unwrap();
            assert_eq!((outcome.value, outcome.uncertainty), (grade.value(), GRADE_SPREAD));
            let (words, second) = scale.words(grade);
            assert!(words.ends_with('.') && second.is_some() == grade.name().contains('-'));
            if second.is_none() {
                assert_eq!(choices[place].line(), words);
            }
        }
        let mut steps = scale.steps().to_vec();
        steps.sort_unstable();
        steps.dedup();
        assert_eq!(steps.len(), 5);
        assert_eq!(instrument.estimate(&vec![None; instrument.inputs.len()]), Err(Fault::Missing(&instrument.inputs[0])));
    }
}

/// A grade is a reading with a spread, so it can answer a check: levels with spans, a value on a border counting for both sides.
#[test]
fn a_grade_speaks_for_levels_as_any_reading_does() {
    let outcome = SEAM_SMOOTHNESS.estimate(&[Some(4.0), None]).unwrap();
    let open = f64::INFINITY;
    let spans = [vec![(-open, 2.0)], vec![(2.0, 3.0)], vec![(3.0, 4.0)], vec![(4.0, open)]];
    let weights = Weights::of_reading(outcome.value, outcome.uncertainty, spans.into_iter().map(Vec::into_iter)).unwrap();
    let shares = weights.parts();
    near(shares[1], shares[2], 1e-9);
    near(shares[0], shares[3], 1e-9);
    assert!(shares[1] > shares[0]);
}

/// Handbook data, appearance_grades.csv, the rows of crocking; from memory.
#[test]
fn usual_rub_off_is_that_of_the_handbook() {
    let rows = rows(include_str!("vectors/handbook_appearance_grades_b.csv"));
    let usual = |name: &str| {
        let row = rows.iter().find(|row| row[0].contains(name)).unwrap_or_else(|| panic!("{name}"));
        row.iter().take(3).flat_map(|field| field.split(" / ")).map(str::to_owned).collect::<Vec<_>>()
    };
    let range = |text: &str| {
        let found = numbers(&text.replace('-', " "));
        (found[0], *found.last().unwrap())
    };
    for (name, key) in [("rinse-washed", "rinsed"), ("heavy bleached", "bleached"), ("good dyed", "dyed")] {
        let parts = usual(name);
        let of = |word: &str| range(parts.iter().find(|part| part.starts_with(word)).unwrap());
        let cloth = USUAL_RUB_OFF.iter().find(|cloth| cloth.key == key).unwrap();
        assert_eq!((cloth.dry, cloth.wet), (of("dry"), of("wet")), "{key}");
    }
    let raw = &USUAL_RUB_OFF[0];
    assert_eq!(raw.dry, range(usual("typical raw indigo").iter().find(|part| part.starts_with("dry")).unwrap()));
    assert_eq!(raw.wet, range(&usual("same, wet")[1]));
}

/// Handbook data, defects.csv: pucker below grade 3 and panels below grade 4 are major faults; common practice.
#[test]
fn a_grade_plainly_below_what_inspectors_pass_is_pointed_out() {
    let says =
        |instrument: &Instrument, grade: f64| !instrument.estimate(&[Some(2.0 * grade - 2.0), None]).unwrap().says().is_empty();
    assert!(says(&SEAM_SMOOTHNESS, 2.0) && !says(&SEAM_SMOOTHNESS, 2.5) && !says(&SEAM_SMOOTHNESS, 5.0));
    assert!(says(&COLOUR_CHANGE, 3.0) && !says(&COLOUR_CHANGE, 3.5) && !says(&PILLING, 1.0));
}

/// Handbook data, appearance_grades.csv: raw indigo dry 2 to 4, wet 1 to 2. From memory.
#[test]
fn a_low_grade_is_usual_for_raw_indigo() {
    let says = |place: f64, cloth: f64, wet: f64| {
        RUB_OFF.estimate(&[Some(place), None, Some(cloth), Some(wet)]).unwrap().says().join(" ")
    };
    assert!(says(2.0, 0.0, 0.0).contains("usual for such cloth") && says(2.0, 0.0, 0.0).contains("normal for raw indigo"));
    assert!(says(2.0, 3.0, 0.0).contains("More rubs off"));
    assert!(says(8.0, 0.0, 1.0).contains("Less rubs off"));
    let outcome = RUB_OFF.estimate(&[Some(2.0), None, Some(0.0), Some(1.0)]).unwrap();
    assert_eq!((outcome.also("usual-least").unwrap().value, outcome.also("usual-most").unwrap().value), (1.0, 2.0));
}

proptest! {
    #[test]
    fn a_colour_against_itself_has_not_changed(l in 0.0_f64..100.0, a in -128.0_f64..128.0, b in -128.0_f64..128.0) {
        let colour = Lab { l, a, b };
        prop_assert!(colour.difference(colour) == 0.0 && change_difference(colour, colour) < 1e-9);
        prop_assert!(staining_difference(colour, colour).abs() < 1e-9);
    }

    #[test]
    fn more_difference_is_never_a_better_grade(x in 0.0_f64..60.0, more in 0.0_f64..10.0) {
        prop_assert!(staining_grade(&exact(x + more)).value() <= staining_grade(&exact(x)).value() + 1e-12);
        prop_assert!(change_grade(&exact(x + more)).value() <= change_grade(&exact(x)).value() + 1e-12);
        prop_assert!(change_grade_by_table(x + more) <= change_grade_by_table(x));
    }

    #[test]
    fn any_numbers_at_all_do_no_harm(n in proptest::collection::vec(any::<f64>(), 6)) {
        let (before, after) = (Lab { l: n[0], a: n[1], b: n[2] }, Lab { l: n[3], a: n[4], b: n[5] });
        let _ = (staining_grade(&exact(staining_difference(before, after))), change_grade(&exact(change_difference(before, after))));
        let _ = (Grade::nearest(n[0]), change_grade_by_table(n[0]));
        for instrument in [&STAINING_BY_METER, &COLOUR_CHANGE_BY_METER] {
            let _ = instrument.estimate(&n.iter().copied().map(Some).chain([None]).collect::<Vec<_>>());
        }
    }
}
