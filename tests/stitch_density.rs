//! Stitch density against the handbook's rows, against rows computed with a general uncertainty library, and against rulers laid on a
//! seam one by one. Origins stand in the vector file and beside each test.

use garment_assay::catalog::jeans::JEANS;
use garment_assay::measure::{
    Fault, InputKind, STITCH_DENSITY, density_after_shrinking, density_as_sewn, density_of_stitch_length, length_that_tells,
    one_stitch_more_or_less, stitch_length,
};
use garment_assay::quantity::{Decimal, Estimate, Length, Number, PerLength, System, Unit};

/// One row: its fields, quotes taken off.
struct Row {
    id: String,
    inputs: Vec<(String, f64)>,
    expected: Vec<f64>,
    tolerance: f64,
}

impl Row {
    fn input(&self, name: &str) -> f64 {
        self.inputs.iter().find(|(known, _)| known == name).unwrap_or_else(|| panic!("{}: no {name}", self.id)).1
    }
}

fn rows() -> Vec<Row> {
    include_str!("vectors/stitch_density.csv")
        .lines()
        .filter(|line| !line.starts_with('#') && !line.starts_with("id,"))
        .map(|line| {
            let (mut fields, mut quoted) = (vec![String::new()], false);
            for c in line.chars() {
                match c {
                    '"' => quoted = !quoted,
                    ',' if !quoted => fields.push(String::new()),
                    c => fields.last_mut().unwrap().push(c),
                }
            }
            assert_eq!(fields.len(), 9, "{line}");
            Row {
                id: fields[0].clone(),
                inputs: fields[2]
                    .split(';')
                    .map(|pair| pair.trim().split_once('=').unwrap())
                    .map(|(name, value)| (name.to_string(), value.parse().unwrap()))
                    .collect(),
                expected: fields[3].split('/').map(|value| value.trim().parse().unwrap()).collect(),
                tolerance: fields[5].parse().unwrap(),
            }
        })
        .collect()
}

fn per_inch(density: f64) -> Estimate<PerLength> {
    Estimate::exact_in(density, Unit::PerInch).unwrap()
}

fn said(density: &Estimate<PerLength>, unit: Unit) -> f64 {
    density.in_unit(unit).unwrap().0
}

/// The instrument, with yes and no as booleans.
fn counted(count: f64, length_mm: f64, on_hole: bool, holes: bool, ruler_mm: f64) -> Result<(f64, f64, f64), Fault> {
    let amounts = [count, length_mm, f64::from(u8::from(on_hole)), f64::from(u8::from(holes)), ruler_mm];
    let outcome = STITCH_DENSITY.estimate(&[&amounts.map(Some)[..], &[None]].concat())?;
    let share = outcome.budget.iter().find(|(name, _)| name == "count").unwrap().1;
    Ok((outcome.value, outcome.uncertainty, share))
}

#[test]
fn every_row_of_the_handbook_and_of_the_general_library_is_met() {
    let rows = rows();
    assert_eq!(rows.len(), 17);
    for row in rows {
        let found = match row.id.as_str() {
            "SD01" => vec![said(&per_inch(row.input("SPI")), Unit::PerCentimetre)],
            "SD02" => vec![said(&per_inch(row.input("SPI")), Unit::PerThreeCentimetres)],
            "SD03" => vec![stitch_length(&per_inch(row.input("SPI"))).in_unit(Unit::Millimetre).unwrap().0],
            "SD04" => {
                let length = Estimate::<Length>::exact_in(row.input("len_mm"), Unit::Millimetre).unwrap();
                vec![said(&density_of_stitch_length(&length), Unit::PerInch)]
            }
            "SD05" => vec![counted(row.input("holes"), row.input("L_in") * 25.4, true, true, 0.5).unwrap().0],
            "SD06" | "SD07" => vec![counted(row.input("N"), row.input("L_mm"), false, false, 0.5).unwrap().1],
            "SD08" => {
                let length = Estimate::<Length>::exact_in(row.input("L_in"), Unit::Inch).unwrap();
                vec![said(&one_stitch_more_or_less(&length), Unit::PerInch)]
            }
            "SD09" => {
                let shrinkage = Estimate::<Number>::exact(row.input("s"));
                vec![said(&density_after_shrinking(&per_inch(row.input("SPI")), &shrinkage), Unit::PerInch)]
            }
            id if id.starts_with("UV") => {
                let (value, spread, share) =
                    counted(row.input("N"), row.input("L_mm"), row.input("hole") == 1.0, false, row.input("u_mm")).unwrap();
                vec![value, spread, share]
            }
            id => panic!("no test for row {id}"),
        };
        assert_eq!(found.len(), row.expected.len(), "{}", row.id);
        for (found, expected) in found.iter().zip(&row.expected) {
            // 1e-12: rows with tolerance 0 are exact in decimals, not in binary fractions of an inch.
            assert!((found - expected).abs() <= row.tolerance.max(1e-12), "{}: {found} is not {expected}", row.id);
        }
    }
}

/// Handbook, section 1.1, the table of conversions; tolerance half of its last digit.
#[test]
fn the_handbooks_table_of_conversions_is_met() {
    for (spi, per_cm, per_3_cm, mm) in [
        (7.0, 2.756, 8.27, 3.63),
        (8.0, 3.150, 9.45, 3.18),
        (10.0, 3.937, 11.81, 2.54),
        (12.0, 4.724, 14.17, 2.12),
        (14.0, 5.512, 16.54, 1.81),
        (20.0, 7.874, 23.62, 1.27),
    ] {
        let density = per_inch(spi);
        assert!((said(&density, Unit::PerCentimetre) - per_cm).abs() <= 0.000_501);
        assert!((said(&density, Unit::PerThreeCentimetres) - per_3_cm).abs() <= 0.005_01);
        assert!((stitch_length(&density).in_unit(Unit::Millimetre).unwrap().0 - mm).abs() <= 0.005_01);
    }
}

/// Spreads carried through conversions; expected values computed with the Python package uncertainties 3.2.3:
/// `8+-0.15` over `1 - (0.03+-0.01)`, and `25.4 / (8+-0.15)`.
#[test]
fn a_spread_goes_through_shrinking_and_through_stitch_length() {
    let sewn = Estimate::<PerLength>::measured_in("count", 8.0, 0.15, Unit::PerInch).unwrap();
    let washed = density_after_shrinking(&sewn, &Estimate::measured("shrinkage", 0.03, 0.01).unwrap());
    let (value, spread) = washed.in_unit(Unit::PerInch).unwrap();
    assert!((value - 8.247_422_680_412_372).abs() < 1e-12 && (spread - 0.176_472_437_176_290_46).abs() < 1e-12);
    let (value, spread) = stitch_length(&sewn).in_unit(Unit::Millimetre).unwrap();
    assert!((value - 3.175).abs() < 1e-12 && (spread - 0.059_531_25).abs() < 1e-12);
    assert!(!density_after_shrinking(&sewn, &Estimate::exact(1.0)).is_known());
    assert!(!density_after_shrinking(&sewn, &Estimate::exact(1.5)).is_known());
}

/// Handbook, section 1.2 (row SD09), read backwards: what 3 % made of 8 per inch was 8 per inch. The spread by the Python package
/// uncertainties 3.2.3: `8+-0.15` times `1 - (0.03+-0.01)`.
#[test]
fn a_density_as_sewn_undoes_the_shrinking() {
    for shrinkage in [0.0, 0.03, 0.1, 0.5].map(Estimate::<Number>::exact) {
        let there_and_back = density_as_sewn(&density_after_shrinking(&per_inch(8.0), &shrinkage), &shrinkage);
        assert!((said(&there_and_back, Unit::PerInch) - 8.0).abs() < 1e-12);
    }
    let found = Estimate::<PerLength>::measured_in("count", 8.0, 0.15, Unit::PerInch).unwrap();
    let sewn = density_as_sewn(&found, &Estimate::measured("shrinkage", 0.03, 0.01).unwrap());
    let (value, spread) = sewn.in_unit(Unit::PerInch).unwrap();
    assert!((value - 7.76).abs() < 1e-12 && (spread - 0.166_042_916_139_171_7).abs() < 1e-12, "{value} {spread}");
    assert!(!density_as_sewn(&found, &Estimate::exact(1.0)).is_known());
}

#[test]
fn shrinkage_since_sewing_is_shown_beside_the_count_and_changes_nothing_in_it() {
    let count = |shrunk| STITCH_DENSITY.estimate(&[Some(24.0), Some(76.2), None, None, None, shrunk]).unwrap();
    let (plain, shrunk) = (count(None), count(Some(3.0)));
    assert!(plain.also.is_empty());
    assert_eq!((plain.value, plain.uncertainty, &plain.budget), (shrunk.value, shrunk.uncertainty, &shrunk.budget));
    let sewn = shrunk.also("as-sewn").unwrap();
    assert!((sewn.value - 7.76).abs() < 1e-9 && sewn.unit == Unit::PerInch);
    // The count's own spread, and half a per cent of 8 all alike within.
    let own = plain.uncertainty * 0.97;
    assert!((sewn.uncertainty - own.hypot(8.0 * 0.005 / 3.0_f64.sqrt())).abs() < 1e-9, "{}", sewn.uncertainty);
}

/// The check scales the length counted; `length_that_tells` works it out from the parts of the uncertainty. They must agree, and a count
/// over that length must then be told.
#[test]
fn a_check_asks_for_the_length_that_the_parts_of_the_uncertainty_ask_for() {
    let spi = JEANS.checks.iter().find(|check| check.key == "spi").unwrap();
    let mm = |mm: f64| Estimate::<Length>::exact_in(mm, Unit::Millimetre).unwrap();
    let edges = [6.0, 7.0, 10.5, 12.0].map(per_inch);
    let mut near = 0;
    for (count, length) in [(15.0, 52.0), (15.0, 56.0), (11.0, 25.4), (20.0, 50.0), (24.0, 76.2), (30.0, 65.0)] {
        for on_hole in [false, true] {
            let given = [Some(count), Some(length), Some(f64::from(u8::from(on_hole))), None, None, None];
            let outcome = STITCH_DENSITY.estimate(&given).unwrap();
            let asked = length_that_tells(&per_inch(outcome.value), &edges, on_hole, &mm(0.5)).unwrap();
            match spi.length_that_tells(&outcome, &mm(length)) {
                Some(telling) => {
                    near += 1;
                    assert!((telling.over.value() / asked.value() - 1.0).abs() < 1e-9 && telling.over.value() > length / 1000.0);
                }
                None => assert!(asked.value() <= length / 1000.0, "{count} over {length}: {asked:?}"),
            }
        }
    }
    assert!((4..12).contains(&near), "{near}");
    // On an edge, and where nothing was counted over, no length helps.
    let on_edge = STITCH_DENSITY.estimate(&[Some(21.0), Some(76.2), None, None, None, None]).unwrap();
    let at = |value: f64| {
        let mut outcome = on_edge.clone();
        outcome.value = value;
        outcome
    };
    assert!(spi.length_that_tells(&at(7.0), &mm(76.2)).is_none());
    for now in [mm(0.0), mm(-5.0), Estimate::unknown()] {
        assert!(spi.length_that_tells(&at(7.1), &now).is_none());
    }
    let hang = JEANS.checks.iter().find(|check| check.key == "hang").unwrap();
    assert!(hang.length_that_tells(&on_edge, &mm(76.2)).is_none(), "it has no edges");
}

/// From first principles, no source: seams of many pitches with the ruler laid at many places, each counted the way the instrument asks
/// for. The mean error of the count must vanish and its spread be the one the instrument works with.
#[test]
fn rulers_laid_on_seams_give_the_spreads_the_instrument_claims() {
    let length = 76.2;
    let (mut free, mut on_hole, mut free_holes, mut holes_on_hole) = (vec![], vec![], vec![], vec![]);
    for step in 0..400 {
        let pitch = 2.0 + 2.0 * (f64::from(step) + 0.5) / 400.0;
        let truth = length / pitch;
        // From a hole, the last piece counts as one from a half on; by holes, the last is the one nearest to the end.
        on_hole.push(truth.round() - truth);
        holes_on_hole.push((truth.round() + 1.0) - 1.0 - truth);
        for place in 0..400 {
            let start = pitch * (f64::from(place) + 0.5) / 400.0;
            let holes = ((start + length) / pitch).floor() - (start / pitch).floor();
            free_holes.push(holes - truth);
            // A piece of half a stitch or more counts as one at either end.
            let rounded = ((start + length) / pitch).round() - (start / pitch).round();
            free.push(rounded - truth);
        }
    }
    for (errors, claimed) in [
        (free, 1.0 / 6.0_f64.sqrt()),
        (free_holes, 1.0 / 6.0_f64.sqrt()),
        (on_hole, 1.0 / 12.0_f64.sqrt()),
        (holes_on_hole, 1.0 / 12.0_f64.sqrt()),
    ] {
        let count = errors.len() as f64;
        let mean = errors.iter().sum::<f64>() / count;
        let spread = (errors.iter().map(|error| (error - mean) * (error - mean)).sum::<f64>() / count).sqrt();
        // The pitches do not fill whole cycles of the count, hence a few hundredths.
        assert!(mean.abs() < 0.02, "{mean}");
        assert!((spread - claimed).abs() < 0.02, "{spread} {claimed}");
    }
}

#[test]
fn holes_lose_one_to_the_fence_post_only_where_the_ruler_starts_on_one() {
    assert!((counted(9.0, 25.4, true, true, 0.5).unwrap().0 - 8.0).abs() < 1e-12);
    assert!((counted(8.0, 25.4, true, false, 0.5).unwrap().0 - 8.0).abs() < 1e-12);
    assert!((counted(8.0, 25.4, false, true, 0.5).unwrap().0 - 8.0).abs() < 1e-12);
}

/// Handbook, section 0 and 1.3: a 1 in count cannot tell 7 from 8, a 3 in count can (two standard uncertainties each way).
#[test]
fn three_inches_tell_seven_from_eight_and_one_inch_does_not() {
    let spread = |inches: f64| counted(8.0 * inches, 25.4 * inches, false, false, 0.5).unwrap().1;
    assert!(2.0 * spread(1.0) > 0.5 && 2.0 * spread(3.0) < 0.5);
}

#[test]
fn a_longer_count_and_a_start_on_a_hole_narrow_the_spread() {
    let spread = |inches: f64, on_hole| counted(8.0 * inches, 25.4 * inches, on_hole, false, 0.5).unwrap().1;
    assert!(spread(1.0, false) > spread(2.0, false) && spread(2.0, false) > spread(3.0, false));
    assert!(spread(3.0, true) < spread(3.0, false));
}

#[test]
fn most_of_the_spread_of_a_free_ruler_comes_from_the_count() {
    let outcome = STITCH_DENSITY.estimate(&[Some(24.0), Some(76.2), None, None, None, None]).unwrap();
    let names: Vec<&str> = outcome.budget.iter().map(|(name, _)| name.as_ref()).collect();
    assert_eq!(names, ["count", "length"]);
    assert!((outcome.budget.iter().map(|(_, share)| share).sum::<f64>() - 1.0).abs() < 1e-12);
    assert!(names.iter().all(|name| STITCH_DENSITY.input(name).is_some()));
}

#[test]
fn readings_that_say_nothing_are_refused_by_name() {
    let fault = |given: [Option<f64>; 5]| STITCH_DENSITY.estimate(&[&given[..], &[None]].concat()).unwrap_err();
    let [count, length, start, ..] = STITCH_DENSITY.inputs else { panic!("inputs") };
    let mm = Some(76.2);
    assert_eq!(fault([None, mm, None, None, None]), Fault::Missing(count));
    assert_eq!(fault([Some(24.0), None, None, None, None]), Fault::Missing(length));
    assert_eq!(fault([Some(23.5), mm, None, None, None]), Fault::NotWhole(count));
    assert_eq!(fault([Some(f64::NAN), mm, None, None, None]), Fault::NotANumber(count));
    assert_eq!(fault([Some(24.0), Some(f64::INFINITY), None, None, None]), Fault::NotANumber(length));
    assert_eq!(fault([Some(0.0), mm, None, None, None]), Fault::OutOfRange(count));
    assert_eq!(fault([Some(24.0), Some(9.0), None, None, None]), Fault::OutOfRange(length));
    assert_eq!(fault([Some(24.0), mm, Some(0.5), None, None]), Fault::NotYesOrNo(start));
    assert_eq!(fault([Some(3.0), mm, None, None, None]), Fault::TooFew { input: count, needed: 4 });
    assert_eq!(fault([Some(4.0), mm, Some(1.0), Some(1.0), None]), Fault::TooFew { input: count, needed: 5 });
    assert!(
        matches!(fault([Some(240.0), mm, None, None, None]), Fault::Implausible { value, .. } if (value - 80.0).abs() < 1e-9)
    );
    assert_eq!(STITCH_DENSITY.estimate(&[Some(24.0)]), Err(Fault::WrongNumberOfReadings { needed: 6, given: 1 }));
}

#[test]
fn limits_are_said_in_the_units_the_person_is_used_to() {
    let fault = STITCH_DENSITY.estimate(&[Some(24.0), Some(5.0), None, None, None, None]).unwrap_err();
    assert_eq!(fault.sentence(System::Metric, Decimal::Point), "Length: type a number between 10 and 500 mm.");
    assert_eq!(fault.sentence(System::Imperial, Decimal::Comma), "Length: type a number between 0,4 and 19 in.");
    let fault = STITCH_DENSITY.estimate(&[Some(240.0), Some(76.2), None, None, None, None]).unwrap_err();
    assert_eq!(
        fault.sentence(System::Metric, Decimal::Point),
        "That makes 80.0 per inch; between 2 and 40 is to be expected. Look at the readings again."
    );
}

#[test]
fn a_missing_yes_or_no_is_taken_the_cautious_way() {
    for input in STITCH_DENSITY.inputs.iter().filter(|input| input.kind == InputKind::YesNo) {
        assert_eq!(input.usual(), Some(0.0));
    }
    let silent = STITCH_DENSITY.estimate(&[Some(24.0), Some(76.2), None, None, None, None]).unwrap();
    assert_eq!(silent.uncertainty, counted(24.0, 76.2, false, false, 0.5).unwrap().1);
}
