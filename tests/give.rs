//! Give, growth and recovery against the handbook's rows (ASTM D3107 and ISO 20932-1), the general library `uncertainties`, and what must
//! hold for any pull.

mod bench_rows;

use bench_rows::{carried, near, numbers, rows};
use garment_assay::measure::{
    Fault, GIVE, GROWTH, Outcome, STRETCH_AND_RECOVERY, STRETCH_CLASSES, expected_give, growth, recovery_of_length,
    recovery_of_stretch, stretch, stretch_classes_of,
};
use garment_assay::quantity::{Estimate, Length, Number, Unit};
use proptest::prelude::*;

fn mm(name: &'static str, value: f64, u: f64) -> Estimate<Length> {
    Estimate::measured_in(name, value, u, Unit::Millimetre).unwrap()
}

fn exact(value: f64) -> Estimate<Length> {
    mm("exact", value, 0.0)
}

fn pull(start: f64, pulled: f64, rested: Option<f64>) -> Result<Outcome, Fault> {
    STRETCH_AND_RECOVERY.estimate(&[Some(start), Some(pulled), rested, None, None, None])
}

/// Handbook data, stretch.csv. SR05 is the trade's rule of thumb.
#[test]
fn every_row_of_the_handbook_is_met() {
    let rows = rows(include_str!("vectors/handbook_stretch_b.csv"));
    assert_eq!(rows.len(), 6);
    for row in rows {
        let (given, expected, tolerance) = (numbers(&row[2]), numbers(&row[3]), row[5].parse::<f64>().unwrap());
        let percent = |estimate: Estimate<Number>| 100.0 * estimate.value();
        let found = match row[0].as_str() {
            "SR01" => vec![percent(stretch(&exact(given[0]), &exact(given[1])))],
            "SR02" => vec![percent(growth(&exact(given[0]), &exact(given[1])))],
            "SR03" => vec![percent(recovery_of_stretch(&exact(given[2]), &exact(given[0]), &exact(given[1])))],
            "SR04" => {
                let [start, pulled, rested] = [given[0], given[1], given[3]].map(|cm| 10.0 * cm);
                let outcome = pull(start, pulled, Some(rested)).unwrap();
                let also = |key| outcome.also(key).unwrap().value;
                vec![outcome.value, also("growth"), also("recovery-of-stretch")]
            }
            "SR05" => vec![expected_give(given[0]).unwrap().by_rule],
            "SR06" => vec![
                percent(growth(&exact(given[0]), &exact(given[1]))),
                percent(recovery_of_length(&exact(given[0]), &exact(given[1]))),
            ],
            other => panic!("{other}"),
        };
        assert_eq!(found.len(), expected.len(), "{}", row[0]);
        for (found, expected) in found.into_iter().zip(expected) {
            near(found, expected, tolerance);
        }
    }
}

/// Handbook, section 5: the same cloth, 250 to 310 to 256 mm, reads 90 % by the one and 97.6 % by the other definition.
#[test]
fn the_two_recoveries_are_named_and_differ() {
    let outcome = pull(250.0, 310.0, Some(256.0)).unwrap();
    let (of_stretch, of_length) = (outcome.also("recovery-of-stretch").unwrap(), outcome.also("recovery-of-length").unwrap());
    near(of_stretch.value, 90.0, 1e-9);
    near(of_length.value, 97.6, 1e-9);
    assert!(of_stretch.name().contains("ASTM D3107") && of_length.name().contains("ISO 20932-1"));
}

/// Python package uncertainties 3.2.3; bench_b.py.
#[test]
fn spreads_are_those_of_a_general_library() {
    for name in ["stretch", "growth", "recovery-of-stretch", "recovery-of-length"] {
        for (given, value, spread) in carried(name) {
            let (a, b, c) = (mm("a", given[0], given[3]), mm("b", given[1], given[3]), mm("c", given[2], given[3]));
            let found = match name {
                "stretch" => stretch(&a, &b),
                "growth" => growth(&a, &c),
                "recovery-of-stretch" => recovery_of_stretch(&a, &b, &c),
                _ => recovery_of_length(&a, &c),
            };
            near(found.value(), value, 1e-12);
            near(found.uncertainty(), spread, 1e-12);
        }
    }
    for (name, key) in [("hand-give", None), ("hand-recovery", Some("recovery-of-stretch"))] {
        for (given, value, spread) in carried(name) {
            let [start, pulled, rested, fingers] = given[..] else { panic!("{given:?}") };
            let outcome = STRETCH_AND_RECOVERY
                .estimate(&[Some(start), Some(pulled), Some(rested), None, Some(fingers), Some(6.0)])
                .unwrap();
            let (found, u) = match key {
                None => (outcome.value, outcome.uncertainty),
                Some(key) => outcome.also(key).map(|also| (also.value, also.uncertainty)).unwrap(),
            };
            near(found, value, 1e-9);
            near(u, spread, 1e-9);
        }
    }
}

/// Handbook, section 5: a hand test is good to about 3 points either way, taken here as two standard uncertainties of the growth; the give
/// has the spread the walk's one reading has always had, 2 points.
#[test]
fn the_usual_spreads_are_those_the_handbook_warns_of() {
    let outcome = pull(100.0, 122.0, Some(103.0)).unwrap();
    near(2.0 * outcome.also("growth").unwrap().uncertainty, 3.0, 0.25);
    near(outcome.uncertainty, 2.0, 0.1);
    assert_eq!(GIVE.estimate(&[Some(22.0), None]).unwrap().uncertainty, 2.0);
    assert_eq!(GROWTH.estimate(&[Some(3.0), None]).unwrap().uncertainty, 1.5);
    for (key, _) in &outcome.budget {
        assert!(STRETCH_AND_RECOVERY.input(key).is_some(), "{key}");
    }
}

/// Handbook data, stretch_classes.csv: common practice, from memory.
#[test]
fn the_classes_are_those_of_the_handbook() {
    let rows = rows(include_str!("vectors/handbook_stretch_classes_b.csv"));
    let rows: Vec<_> = rows.iter().filter(|row| row[0] != "class").collect();
    assert_eq!(rows.len(), STRETCH_CLASSES.len());
    for (row, class) in rows.iter().zip(&STRETCH_CLASSES) {
        let number = |field: usize| row[field].parse::<f64>().unwrap();
        assert!(class.name().starts_with(row[0].split('/').next().unwrap()), "{}", class.name());
        assert_eq!((class.from, class.to, class.good_growth), (number(1), number(2), number(3)), "{}", class.name());
        let elastane = numbers(&row[4].replace('-', " "));
        assert_eq!((class.elastane.0, class.elastane.1), (elastane[0], *elastane.last().unwrap()), "{}", class.name());
    }
}

#[test]
fn a_give_near_a_border_belongs_to_both_classes() {
    let names = |value: f64, u: f64| -> Vec<&str> {
        let give = Estimate::measured("give", value / 100.0, u / 100.0).unwrap();
        stretch_classes_of(&give).iter().map(|class| class.name()).collect()
    };
    assert_eq!(names(20.0, 0.0), ["comfort stretch", "stretch"]);
    assert_eq!(names(22.0, 1.5), ["stretch"]);
    assert_eq!(names(21.0, 1.5), ["comfort stretch", "stretch"]);
    assert_eq!(names(19.0, 1.5), ["comfort stretch", "stretch"]);
    assert_eq!(names(-4.0, 1.0), ["rigid"]);
    assert_eq!(names(130.0, 1.0), ["hyper stretch"]);
    assert!(stretch_classes_of(&Estimate::unknown()).is_empty());
}

/// Handbook, section 5: 3 to 15 per cent for each one of elastane; and no class's usual elastane may speak against the range.
#[test]
fn elastane_suggests_a_range_that_no_class_contradicts() {
    let three = expected_give(3.0).unwrap();
    assert_eq!((three.least, three.by_rule, three.most), (9.0, 15.0, 45.0));
    for class in &STRETCH_CLASSES {
        for elastane in [class.elastane.0, class.elastane.1] {
            let expected = expected_give(elastane).unwrap();
            assert!(expected.least <= class.to && expected.most >= class.to.min(80.0), "{} {elastane}", class.name());
        }
    }
    let none = expected_give(0.0).unwrap();
    assert_eq!((none.least, none.most), (0.0, 10.0));
    assert!(expected_give(-1.0).is_none() && expected_give(f64::NAN).is_none() && expected_give(31.0).is_none());
}

#[test]
fn a_label_is_set_beside_the_reading() {
    let with = |pulled: f64, elastane: f64| {
        STRETCH_AND_RECOVERY.estimate(&[Some(100.0), Some(pulled), None, Some(elastane), None, None]).unwrap()
    };
    assert!(with(122.0, 2.0).says().iter().any(|says| says.contains("fits what the label suggests")));
    assert!(with(101.0, 2.0).says().iter().any(|says| says.contains("Less give")));
    assert!(with(140.0, 0.0).says().iter().any(|says| says.contains("More give")));
    assert_eq!(with(122.0, 2.0).also("expected-least").unwrap().value, 6.0);
}

#[test]
fn growth_is_weighed_by_the_class_of_the_cloth() {
    let says = |pulled: f64, rested: f64| pull(100.0, pulled, Some(rested)).unwrap().says();
    assert!(says(125.0, 103.0).iter().any(|says| says.contains("no longer than good cloth")));
    assert!(says(125.0, 105.0).iter().any(|says| says.contains("too near to tell")));
    assert!(says(125.0, 109.0).iter().any(|says| says.contains("may bag")));
}

#[test]
fn pulls_that_no_cloth_gives_are_refused() {
    assert!(matches!(pull(100.0, 95.0, None), Err(Fault::Implausible { .. })));
    assert!(matches!(pull(100.0, 260.0, None), Err(Fault::Implausible { .. })));
    assert!(matches!(pull(100.0, 110.0, Some(125.0)), Err(Fault::Implausible { .. })));
    assert!(matches!(pull(100.0, 110.0, Some(80.0)), Err(Fault::Implausible { .. })));
    // Rigid cloth that did not move has a growth but no recovery of its stretch.
    let rigid = pull(100.0, 100.0, Some(100.0)).unwrap();
    assert!(rigid.also("growth").is_some() && rigid.also("recovery-of-stretch").is_none());
    assert!(!recovery_of_stretch(&exact(100.0), &exact(90.0), &exact(95.0)).is_known());
}

proptest! {
    /// From the definitions: growth = stretch times what did not come back, and the ISO recovery is one less the growth.
    #[test]
    fn the_quotients_hang_together(a in 50.0_f64..400.0, more in 0.01_f64..0.8, back in 0.0_f64..1.0) {
        let (start, pulled) = (exact(a), exact(a * (1.0 + more)));
        let rested = exact(a * (1.0 + more * (1.0 - back)));
        let (grown, recovered) = (growth(&start, &rested).value(), recovery_of_stretch(&start, &pulled, &rested).value());
        prop_assert!((grown - stretch(&start, &pulled).value() * (1.0 - recovered)).abs() < 1e-9);
        prop_assert!((recovery_of_length(&start, &rested).value() + grown - 1.0).abs() < 1e-12);
    }
}
