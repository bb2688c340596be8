//! Lots by sample, against the tables of ISO 2859-1 row by row, scipy's binomial and Poisson distributions, and published figures.

#[path = "vectors/read.rs"]
mod read;

use garment_assay::catalog::{FAMILIES, SOURCES, defects};
use garment_assay::cost::sources::INCOTERMS;
use garment_assay::lot::{Aql, Defect, Level, LotSize, Severity, highest_share, passes, plan, share_that_passes, sources};
use garment_assay::measure::{CLOTH_POINTS, Fault};

/// The smallest and the largest lot of a row; a row without end stands for its smallest and for the largest number there is.
fn lots(text: &str) -> [u32; 2] {
    match text.strip_suffix('+') {
        Some(least) => [least.parse().expect("a number"), u32::MAX],
        None => {
            let (least, most) = text.split_once('-').expect("a span");
            [least.parse().expect("a number"), most.parse().expect("a number")]
        }
    }
}

fn lot(pieces: u32) -> LotSize {
    LotSize::new(pieces).expect("a lot")
}

/// ISO 2859-1, table 1, as handbook and public copies of MIL-STD-105E have it: every row at every level, at both ends of the row.
#[test]
fn code_letters_are_those_of_table_1() {
    let rows = read::fields(include_str!("vectors/handbook_aql_code_letters.csv"));
    assert_eq!(rows.len(), 15);
    for row in rows {
        for pieces in lots(&row[0]) {
            for (level, letter) in Level::ALL.into_iter().zip(&row[1..]) {
                let given = plan(lot(pieces), level, Aql::P25).asked.written().to_string();
                assert_eq!(given, *letter, "{pieces} at level {}", level.key());
            }
        }
    }
}

/// ISO 2859-1, table 2-A, resolved: every row at level II at every limit, arrows followed.
#[test]
fn plans_are_those_of_table_2_a() {
    let rows = read::fields(include_str!("vectors/handbook_aql_general_II_resolved.csv"));
    assert_eq!(rows.len(), 15);
    for row in rows {
        for pieces in lots(&row[0]) {
            for (aql, cell) in Aql::ALL.into_iter().zip(&row[3..]) {
                let plan = plan(lot(pieces), Level::II, aql);
                assert_eq!(plan.asked.sample().to_string(), row[2]);
                let written =
                    format!("{}:n={} Ac={} Re={}", plan.letter.written(), plan.letter.sample(), plan.accept, plan.reject);
                assert_eq!(written, *cell, "{pieces} at {}", aql.key());
                assert_eq!(plan.whole, plan.letter.sample() >= pieces);
                assert_eq!(plan.sample, plan.letter.sample().min(pieces));
            }
        }
    }
}

/// The same table as it is printed, arrow by arrow; each letter is reached by some lot and level.
#[test]
fn arrows_are_those_of_table_2_a() {
    let rows = read::fields(include_str!("vectors/handbook_aql_single_normal_raw.csv"));
    for row in &rows {
        let ends = [2, 9, 16, 26, 51, 91, 151, 281, 501, 1201, 3201, 10_001, 35_001, 150_001, 500_001];
        let found = ends.into_iter().flat_map(|pieces| Level::ALL.map(|level| (pieces, level)));
        let mut plans = found.filter(|(pieces, level)| plan(lot(*pieces), *level, Aql::P1).asked.written().to_string() == row[0]);
        let (pieces, level) = plans.next().expect("a lot that has this letter");
        for (aql, cell) in Aql::ALL.into_iter().zip(&row[2..]) {
            let plan = plan(lot(pieces), level, aql);
            let said = match (plan.asked == plan.letter, plan.letter > plan.asked) {
                (true, _) => format!("{}/{}", plan.accept, plan.reject),
                (false, true) => "down".to_owned(),
                (false, false) => "up".to_owned(),
            };
            assert_eq!(said, *cell, "letter {} at {}", row[0], aql.key());
            assert_eq!(plan.arrow.is_some(), plan.asked != plan.letter);
        }
    }
    assert_eq!(rows.len(), 16);
}

/// scipy.stats.binom, to twelve digits; Poisson, which the standard uses for defects, lies within 0.04 of it where few are bad.
#[test]
fn chances_to_pass_are_those_of_scipy() {
    let shares = [0.001, 0.0065, 0.01, 0.025, 0.065, 0.15, 0.4];
    let mut seen = 0;
    for row in read::fields(include_str!("vectors/lot.csv")) {
        let number = |place: usize| row[place].parse::<f64>().expect("a number");
        let (sample, accept) = (number(0) as u32, number(1) as u32);
        for (place, share) in shares.into_iter().enumerate() {
            let given = passes(sample, accept, share);
            assert!((given - number(2 + place)).abs() < 1e-12, "{sample} {accept} {share}: {given}");
            if share <= 0.065 {
                assert!((given - number(9 + place)).abs() < 0.04, "{sample} {accept} {share}: Poisson");
            }
            seen += 1;
        }
        assert!((share_that_passes(sample, accept, 0.1) - number(16)).abs() < 1e-9, "{sample} {accept}");
        assert!((highest_share(sample, accept, 0.95) - number(17)).abs() < 1e-9, "{sample} {accept}");
    }
    assert!(seen > 700, "{seen}");
}

/// The handbook's own rows: AQ01 to AQ08, FP01 and FP02 (a published example, its sum put right).
#[test]
fn figures_of_the_handbook_come_out() {
    let rows = read::fields(include_str!("vectors/handbook_inspection.csv"));
    let row = |id: &str| rows.iter().find(|row| row[0] == id).unwrap_or_else(|| panic!("no row {id}"));
    let near = |id: &str, given: f64, within: f64| {
        let expected: f64 = row(id)[3].parse().expect("a number");
        assert!((given - expected).abs() <= within, "{id}: {given} for {expected}");
    };
    for (id, pieces, aql) in [("AQ01", 2500, Aql::P25), ("AQ02", 2500, Aql::P4), ("AQ03", 200, Aql::P1), ("AQ04", 400, Aql::P15)]
    {
        let plan = plan(lot(pieces), Level::II, aql);
        let written = format!("{} n={} Ac={} Re={}", plan.letter.written(), plan.sample, plan.accept, plan.reject);
        assert_eq!(written, row(id)[3], "{id}");
    }
    near("AQ05", passes(80, 5, 0.025), 0.0005);
    near("AQ06", passes(80, 5, 0.113), 0.0005);
    near("AQ07", passes(1, 0, 0.10), 1e-12);
    near("AQ08", highest_share(5, 0, 0.95), 0.0005);
    let points = |counts: [f64; 6], metres: f64, centimetres: f64| {
        let [a, b, c, d, e, f] = counts.map(Some);
        CLOTH_POINTS.estimate(&[a, b, c, d, e, f, Some(metres), Some(centimetres)]).expect("points")
    };
    // 28 points, 150 yd, 56 in: as the article counts them, by square yards.
    let roll = points([28.0, 0.0, 0.0, 0.0, 0.0, 0.0], 150.0 * 0.9144, 56.0 * 2.54);
    near("FP01", roll.also.iter().find(|also| also.key == "per-100-yd2").expect("on 100 yd²").value, 0.01);
    near("FP02", points([7.0, 4.0, 2.0, 1.0, 0.0, 1.0], 100.0, 150.0).value, 0.01);
}

#[test]
fn shares_and_samples_beyond_all_bounds_say_something_sane() {
    assert_eq!((passes(0, 0, 0.5), passes(5, 9, 0.5), passes(5, 0, -1.0), passes(5, 0, 2.0)), (1.0, 1.0, 1.0, 0.0));
    assert_eq!((passes(5, 0, f64::NAN), passes(2000, 21, 0.999)), (1.0, 0.0));
    assert_eq!((highest_share(0, 0, 0.95), highest_share(5, 5, 0.95)), (1.0, 1.0));
    assert!(LotSize::new(1).is_err_and(|fault| fault.to_string().contains("two pieces")));
    let nothing = CLOTH_POINTS.estimate(&[None, None, None, None, None, None, Some(50.0), Some(150.0)]);
    assert!(nothing.is_ok_and(|outcome| outcome.value == 0.0 && outcome.uncertainty > 0.0));
    assert!(matches!(CLOTH_POINTS.estimate(&[None; 8]), Err(Fault::Missing(_))));
}

/// The handbook's list of defects, row by row: each is in the catalog, in a class that the row names.
#[test]
fn defects_are_those_of_the_handbook() {
    let here = |garment: &str| -> Vec<&'static Defect> {
        let of = match garment {
            "any" | "child" => return defects::ANY.iter().collect(),
            "shirt" => "woven-shirt",
            "T-shirt" => "t-shirt",
            "jacket" => "tailored-jacket",
            "dress/skirt" => "dress-skirt",
            other => other,
        };
        FAMILIES.into_iter().find(|family| family.key == of).expect("a family").defects.iter().collect()
    };
    let rows = read::fields(include_str!("vectors/handbook_defects.csv"));
    // Stitch density off what was agreed is no defect that one sees without counting; it stands among the checks.
    let rows: Vec<_> = rows.iter().filter(|row| !row[1].starts_with("stitch density")).collect();
    let mut seen = std::collections::BTreeSet::new();
    for garment in rows.iter().map(|row| row[0].as_str()) {
        if !seen.insert(garment) {
            continue;
        }
        let of = |severity: &str| rows.iter().filter(|row| row[0] == garment && row[2].starts_with(severity)).count();
        let listed = here(garment);
        let of_here = |severity| listed.iter().filter(|defect| defect.severity == severity).count();
        if garment == "child" || garment == "any" {
            let both = rows.iter().filter(|row| row[0] == "child" || row[0] == "any").count();
            assert_eq!(listed.len(), both);
        } else {
            let given = (of_here(Severity::Critical), of_here(Severity::Major), of_here(Severity::Minor));
            // Of outerwear one row names two defects.
            let two_in_one = usize::from(garment == "outerwear");
            assert_eq!(given, (of("critical"), of("major") + two_in_one, of("minor")), "{garment}");
        }
    }
    assert_eq!(seen.len(), 9);
}

#[test]
fn no_family_lists_a_defect_twice() {
    for family in FAMILIES {
        let keys: Vec<&str> = defects::ANY.iter().chain(family.defects).map(|defect| defect.key).collect();
        let unlike: std::collections::BTreeSet<&&str> = keys.iter().collect();
        assert_eq!(unlike.len(), keys.len(), "{}", family.key);
        let grave: Vec<Severity> = family.defects.iter().map(|defect| defect.severity).collect();
        assert!(grave.is_sorted_by(|one, next| one >= next), "{}: gravest first", family.key);
    }
}

#[test]
fn what_plans_and_terms_lean_on_stands_in_the_bibliography() {
    for source in [&sources::ISO_2859_1, &sources::COMMON_PRACTICE, &INCOTERMS] {
        assert!(SOURCES.iter().any(|listed| std::ptr::eq(*listed, source)), "{}", source.name());
    }
}
