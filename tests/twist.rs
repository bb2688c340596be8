//! Twist and skew against the handbook's rows (AATCC TM207 and TM179, ASTM D3882) and the general library `uncertainties`.

mod bench_rows;

use bench_rows::{carried, near, numbers, rows};
use garment_assay::measure::{Fault, LEG_TWIST, SEAM_TWIST, TWISTED_LEG_MM, lean, seam_twist, skew, skew_of_diagonals};
use garment_assay::quantity::{Estimate, Length, Unit};

fn mm(name: &'static str, value: f64, u: f64) -> Estimate<Length> {
    Estimate::measured_in(name, value, u, Unit::Millimetre).unwrap()
}

/// Handbook data, dimensional_change.csv, rows TW and SK; SK01 names its angle in the note.
#[test]
fn every_row_of_the_handbook_is_met() {
    let rows: Vec<_> = rows(include_str!("vectors/handbook_dimensional_change_b.csv"))
        .into_iter()
        .filter(|row| !row[0].starts_with("DC"))
        .collect();
    assert_eq!(rows.len(), 4);
    for row in rows {
        let (given, expected, tolerance) = (numbers(&row[2]), row[3].parse::<f64>().unwrap(), row[5].parse::<f64>().unwrap());
        let (one, other) = (mm("one", given[0], 0.0), mm("other", given[1], 0.0));
        let found = match row[0].as_str() {
            "TW01" | "TW02" => seam_twist(&one, &other),
            "SK01" => {
                near(lean(&one, &other).in_unit(Unit::Degree).unwrap().0, numbers(&row[8])[0], 0.0005);
                skew(&one, &other)
            }
            "SK02" => skew_of_diagonals(&one, &other),
            other => panic!("{other}"),
        };
        near(100.0 * found.value(), expected, tolerance);
    }
}

/// Python package uncertainties 3.2.3; bench_b.py.
#[test]
fn spreads_are_those_of_a_general_library() {
    for name in ["twist", "lean", "diagonals"] {
        for (given, value, spread) in carried(name) {
            let (moved, seam) = (mm("moved", given[0], given[2]), mm("seam", given[1], given[3]));
            let found = match name {
                "twist" => seam_twist(&moved, &seam),
                "lean" => lean(&moved, &seam),
                _ => skew_of_diagonals(&seam, &moved),
            };
            near(found.value(), value, 1e-12);
            near(found.uncertainty(), spread, 1e-12);
        }
    }
}

/// AATCC TM207's example of the handbook, 30 over 780 mm, before a wash and 42 mm after it.
#[test]
fn a_leg_is_read_before_and_after_a_wash() {
    let outcome = SEAM_TWIST.estimate(&[Some(30.0), Some(780.0), Some(8.0), Some(42.0), None, None]).unwrap();
    let also = |key| outcome.also(key).unwrap().value;
    near(outcome.value, 3.846, 0.0005);
    near(also("distance"), 30.0, 1e-9);
    near(also("angle"), 2.2026, 0.0001);
    near(also("other"), 1.0256, 0.0001);
    near(also("after"), 5.3846, 0.0001);
    near(also("added"), 1.5385, 0.0001);
    // The seam is one and the same before and after: its error nearly cancels in what was added.
    let added = outcome.also("added").unwrap();
    near(added.uncertainty, 100.0 * ((2.0 * 9.0_f64) + (12.0 / 780.0 * 5.0_f64).powi(2)).sqrt() / 780.0, 1e-9);
    for (key, _) in &outcome.budget {
        assert!(SEAM_TWIST.input(key).is_some());
    }
}

#[test]
fn both_legs_alike_may_be_the_cut() {
    let says = |one, other| SEAM_TWIST.estimate(&[Some(one), Some(780.0), Some(other), None, None, None]).unwrap().says();
    assert!(says(20.0, 22.0).iter().any(|says| says.contains("the cut may mean it")));
    assert!(!says(20.0, 2.0).iter().any(|says| says.contains("the cut may mean it")));
    assert!(!says(2.0, 2.0).iter().any(|says| says.contains("the cut may mean it")));
    assert!(says(26.0, 2.0).iter().any(|says| says.contains("25.4 mm")));
    assert!(!says(25.0, 2.0).iter().any(|says| says.contains("25.4 mm")));
    assert_eq!(TWISTED_LEG_MM, Unit::Inch.convert(1.0, Unit::Millimetre).unwrap());
}

#[test]
fn more_twist_than_half_a_seam_is_refused() {
    assert!(matches!(
        SEAM_TWIST.estimate(&[Some(120.0), Some(200.0), None, None, None, None]),
        Err(Fault::Implausible { value, .. }) if (value - 60.0).abs() < 1e-9
    ));
    assert!(SEAM_TWIST.estimate(&[Some(0.0), Some(200.0), None, None, None, None]).is_ok());
}

/// The walk's own reading keeps its key, its unit and its two readings: pages that hold them must still open.
#[test]
fn the_leg_twist_of_the_walk_stays_in_millimetres() {
    assert_eq!((LEG_TWIST.key, LEG_TWIST.unit), ("leg-twist", Unit::Millimetre));
    assert!(LEG_TWIST.inputs.iter().map(|input| input.key).eq(["reading", "spread"]));
    assert_eq!(LEG_TWIST.estimate(&[Some(12.0), None]).map(|outcome| (outcome.value, outcome.uncertainty)), Ok((12.0, 3.0)));
}

#[test]
fn a_seam_of_no_length_has_no_twist() {
    let (none, some) = (mm("none", 0.0, 0.0), mm("some", 10.0, 1.0));
    assert!(
        !seam_twist(&some, &none).is_known() && !lean(&some, &none).is_known() && !skew_of_diagonals(&none, &none).is_known()
    );
}
