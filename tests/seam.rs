//! Seams: strength, thread and sewing time against the handbook's rows; stitch and seam names; taps and combs against simulated seams.

#[path = "vectors/read.rs"]
mod read;

use garment_assay::measure::{
    BACK, EDGE, Fault, JEANS, MarksFault, ROWS, SEAM_CLASSES, SEWING_TIME, STITCH_COMB, STITCH_DENSITY, STITCH_TAPS,
    STITCH_TYPES, StrongStitch, THREAD_USE, density_from_comb, density_from_taps, length_that_tells, needle_time, on_50_mm,
    pounds_force, seam_class_of, seam_in_a_minute, seam_strength, seams_that_look_so, stitches_that_look_so, thread_by_geometry,
    thread_by_unravelling,
};
use garment_assay::quantity::{Estimate, Length, Number, PerLength, Unit};
use proptest::prelude::*;

fn per_inch(density: f64) -> Estimate<PerLength> {
    Estimate::exact_in(density, Unit::PerInch).unwrap()
}

fn long(amount: f64, unit: Unit) -> Estimate<Length> {
    Estimate::exact_in(amount, unit).unwrap()
}

fn geometry(number: &str, thickness: Estimate<Length>, density: f64) -> f64 {
    thread_by_geometry(number, &thickness, &per_inch(density)).unwrap().value()
}

/// SS03's thread is the bulletin's Tex 24. TH06 and TH07: the source rounds 5.43 to 5.4, so its 540 and 621 cm are 543.3 and 624.8 unrounded;
/// both are tried. TH08 (overedge 504 by geometry) is left out: two published models differ by 2 and the handbook trusts neither.
#[test]
fn every_row_of_the_handbook_on_thread_and_strength_is_met() {
    let strength = |stitch, density: f64, pounds: f64| {
        let holds = seam_strength(stitch, &per_inch(density), &pounds_force(pounds));
        (holds * long(1.0, Unit::Inch) / pounds_force(1.0)).value()
    };
    let cm = |number| long(number, Unit::Centimetre);
    let ratio = thread_by_unravelling(&cm(15.0), &[cm(19.5), cm(62.0)]).value();
    assert!((ratio * 100.0 - 543.33).abs() < 0.01);
    let mut met = 0;
    for row in read::fields(include_str!("vectors/handbook_thread.csv")) {
        let (expected, tolerance) = (row[3].parse().unwrap_or(f64::NAN), row[5].parse().unwrap_or(f64::NAN));
        let found: f64 = match row[0].as_str() {
            "TH01" => geometry("101", long(0.005, Unit::Inch), 9.0),
            "TH02" => geometry("301", long(0.01, Unit::Inch), 10.0),
            "TH03" => geometry("401", long(0.015, Unit::Inch), 15.0),
            "TH04" => geometry("401", cm(0.32), 8.0),
            "TH05" => geometry("301", cm(0.16), 8.0),
            "TH06" => ratio * 100.0,
            // From the 5.4 that the source rounds to.
            "TH07" => {
                let given = [Some(1.0), Some(1.0), None, None, Some(15.0), None, None, Some(5.4)];
                THREAD_USE.estimate(&given).unwrap().value * 100.0
            }
            "SS01" => strength(StrongStitch::Lockstitch, 10.0, 4.0),
            "SS02" => strength(StrongStitch::Chainstitch, 10.0, 4.0),
            "SS03" => strength(StrongStitch::Lockstitch, 8.0, 2.6),
            "SS04" => on_50_mm(&(pounds_force(60.0) / long(1.0, Unit::Inch))).value(),
            _ => continue,
        };
        met += 1;
        assert!((found - expected).abs() <= tolerance, "{}: {found} is not {expected}", row[0]);
    }
    assert_eq!(met, 11);
    // Handbook, section 2.3: the bulletin's chart for Tex 24 and Tex 27, 6, 8, 10 and 12 per inch.
    for (pounds, chart) in [(2.6, [23.4, 31.2, 39.0, 46.8]), (2.2, [19.8, 26.4, 33.0, 39.6])] {
        for (density, printed) in [6.0, 8.0, 10.0, 12.0].into_iter().zip(chart) {
            assert!((strength(StrongStitch::Lockstitch, density, pounds) - printed).abs() < 1e-9);
        }
    }
}

/// 100 cm of 401 with 15 % waste: 632.5 from the table's 5.5, which lies within the spread of the published 621.
#[test]
fn the_published_metre_of_chainstitch_lies_within_the_spread() {
    let outcome = THREAD_USE.estimate(&[Some(1.0), Some(1.0), None, None, Some(15.0), None, None, None]).unwrap();
    assert!((outcome.value - 6.325).abs() < 1e-9 && (outcome.value - 6.21).abs() < outcome.uncertainty);
    let (seam, needle) = (outcome.also("in-seam").unwrap().value, outcome.also("needle").unwrap().value);
    assert!((seam - 5.5).abs() < 1e-9 && (needle - 1.375).abs() < 1e-9);
}

/// Published slip (handbook, section 17): an example has 1210 of thread, a quarter of it on the needle, and prints 275; it is 302.5. The
/// 1210 are 220 of chainstitch at 5.5, so the example is one of 401.
#[test]
fn the_slip_of_the_published_needle_share_is_not_repeated() {
    let outcome = THREAD_USE.estimate(&[Some(1.0), Some(2.2), None, None, None, None, None, None]).unwrap();
    let (seam, needle) = (outcome.also("in-seam").unwrap().value, outcome.also("needle").unwrap().value);
    assert!((seam - 12.10).abs() < 1e-9 && (needle - 3.025).abs() < 1e-9 && (needle - 2.75).abs() > 0.2);
}

/// thread_ratios.csv, every row; what the instrument offers is what the table holds.
#[test]
fn ratios_of_thread_are_those_of_the_handbooks_table() {
    let rows = read::fields(include_str!("vectors/handbook_thread_ratios.csv"));
    assert_eq!(rows.len(), THREAD_USE.inputs[0].choices().len());
    for row in rows {
        let place = THREAD_USE.inputs[0].choices().iter().position(|choice| choice.key == row[0]).unwrap();
        let outcome = THREAD_USE.estimate(&[Some(place as f64), Some(1.0), None, None, Some(0.0), None, None, None]).unwrap();
        let (ratio, needle): (f64, f64) = (row[1].parse().unwrap(), row[2].parse().unwrap());
        assert!((outcome.value - ratio).abs() < 1e-12, "{}", row[0]);
        assert!((outcome.also("needle").unwrap().value - ratio * needle).abs() < 1e-12, "{}", row[0]);
    }
}

/// sewing_time.csv but for ST07 and ST08, which rate a person's work and are no instrument here.
#[test]
fn every_row_of_the_handbook_on_sewing_time_is_met() {
    let yards =
        |spm: f64, density: f64| seam_in_a_minute(&per_inch(density), &Estimate::exact(spm)).in_unit(Unit::Yard).unwrap().0;
    let needle =
        |cm: f64, density: f64| needle_time(&long(cm, Unit::Centimetre), &per_inch(density), &Estimate::exact(4000.0)).value();
    let inseam = |density: f64| {
        let given = [Some(1.5), Some(density), None, None, Some(4000.0), Some(4.0), Some(1.2), None, None];
        SEWING_TIME.estimate(&given).unwrap().value
    };
    let mut met = 0;
    for row in read::fields(include_str!("vectors/handbook_sewing_time.csv")) {
        let found = match row[0].as_str() {
            "ST01" => yards(5000.0, 8.0),
            "ST02" => yards(5000.0, 14.0),
            "ST03" => needle(150.0, 8.0),
            "ST04" => inseam(8.0),
            "ST05" => inseam(12.0),
            "ST06" => needle(1500.0, 12.0) - needle(1500.0, 8.0),
            _ => continue,
        };
        met += 1;
        let (expected, tolerance): (f64, f64) = (row[3].parse().unwrap(), row[5].parse().unwrap());
        assert!((found - expected).abs() <= tolerance, "{}: {found} is not {expected}", row[0]);
    }
    assert_eq!(met, 6);
}

/// jeans_operations.csv, row by row and its totals: 19.1 m of rows, 150.3 m of thread by the table of ratios, 13.47 minutes. The
/// two rows of 304 are tacks, and stand in the table with 3 times what a plain zigzag takes by its ratio of 7; their thread is not compared.
#[test]
fn the_operations_of_jeans_are_those_of_the_handbook_and_add_up() {
    let rows = read::fields(include_str!("vectors/handbook_jeans_operations.csv"));
    let (total, rows) = rows.split_last().unwrap();
    assert_eq!(rows.len(), JEANS.len());
    for (row, operation) in rows.iter().zip(&JEANS) {
        assert_eq!((row[0].to_lowercase(), row[1].as_str()), (operation.name().to_lowercase(), operation.stitch));
        let numbers: Vec<f64> = [2, 3, 5].iter().map(|field| row[*field].parse().unwrap()).collect();
        assert_eq!(numbers, [operation.rows, operation.centimetres, operation.minutes]);
        if let Some(ratio) =
            STITCH_TYPES.iter().find(|stitch| stitch.number.ends_with(operation.stitch) && !operation.stitch.is_empty())
            && operation.stitch != "304"
        {
            let printed: f64 = row[4].parse().unwrap();
            assert!((operation.metres() * ratio.ratio.unwrap() - printed).abs() <= 0.0051, "{}", operation.name());
        }
    }
    let (metres, minutes) = (JEANS.iter().map(|row| row.metres()).sum::<f64>(), JEANS.iter().map(|row| row.minutes).sum::<f64>());
    assert!((metres - total[3].parse::<f64>().unwrap()).abs() <= 0.05, "{metres}");
    assert!((minutes - total[5].parse::<f64>().unwrap()).abs() <= 0.005, "{minutes}");
}

/// What surprises people: two more stitches in each inch of a whole pair of jeans cost half a minute of machine time and 5 m of thread.
#[test]
fn a_closer_seam_costs_seconds_and_a_few_metres() {
    let outcome = SEWING_TIME.estimate(&[None, Some(10.0), None, None, None, None, None, None, None]).unwrap();
    let (time, thread) = (outcome.also("more-time").unwrap(), outcome.also("more-thread").unwrap());
    assert!(time.value > 25.0 && time.value < 40.0 && thread.value > 4.0 && thread.value < 6.0, "{time:?} {thread:?}");
}

#[test]
fn every_stitch_is_found_by_its_looks_and_every_look_is_known() {
    let backs: Vec<&str> = BACK.choices.iter().map(|choice| choice.key).collect();
    for stitch in STITCH_TYPES {
        assert!(backs.contains(&stitch.back), "{}", stitch.number);
        assert!(stitches_that_look_so(Some(stitch.back), None).any(|found| found == stitch), "{}", stitch.number);
        let rows = stitch.rows.map_or(0, |(least, _)| least);
        let key = ROWS.choices[usize::from(rows)].key;
        assert!(stitches_that_look_so(Some(stitch.back), Some(key)).any(|found| found == stitch), "{}", stitch.number);
    }
    for back in backs {
        assert!(stitches_that_look_so(Some(back), None).next().is_some(), "nothing looks like {back}");
    }
    for choice in EDGE.choices {
        assert!(seam_class_of(choice.key).is_some(), "{}", choice.key);
    }
    assert_eq!(EDGE.choices.len(), SEAM_CLASSES.len());
    assert_eq!(stitches_that_look_so(Some("upside-down"), None).count(), 0);
    assert_eq!(seam_class_of("upside-down"), None);
}

#[test]
fn whoever_cannot_tell_is_left_with_more_and_never_with_less() {
    let numbers = |back, rows| stitches_that_look_so(back, rows).map(|stitch| stitch.number).collect::<Vec<_>>();
    for back in BACK.choices.iter().map(|choice| choice.key) {
        for rows in ROWS.choices.iter().map(|choice| choice.key) {
            let both = numbers(Some(back), Some(rows));
            for wider in [numbers(Some(back), None), numbers(None, Some(rows)), numbers(None, None)] {
                assert!(both.iter().all(|number| wider.contains(number)), "{back} {rows}");
            }
        }
    }
    assert_eq!(numbers(None, None).len(), STITCH_TYPES.len());
    assert_eq!(numbers(None, Some("three")), ["407", "605"]);
    assert_eq!(stitches_that_look_so(None, Some("upside-down")).count(), 0);
    assert_eq!(seams_that_look_so(None).count(), SEAM_CLASSES.len());
    for choice in EDGE.choices {
        assert_eq!(seams_that_look_so(Some(choice.key)).collect::<Vec<_>>(), [seam_class_of(choice.key).unwrap()]);
    }
    assert_eq!(seams_that_look_so(Some("upside-down")).count(), 0);
}

#[test]
fn every_seam_class_says_something_of_its_own_about_its_cost() {
    let said: std::collections::BTreeSet<&str> = SEAM_CLASSES.iter().map(|(_, class)| class.costs()).collect();
    assert_eq!(said.len(), SEAM_CLASSES.len());
    for stitch in STITCH_TYPES {
        assert!(stitch.strength().ends_with('.') && stitch.cost().ends_with('.'), "{}", stitch.number);
    }
}

/// stitch_types.csv by handbook section 1.5: each of these looks has that number.
#[test]
fn looks_lead_to_the_numbers_of_iso_4915() {
    let first = |back, rows| stitches_that_look_so(Some(back), Some(rows)).map(|stitch| stitch.number).collect::<Vec<_>>();
    assert_eq!(first("same-line", "one"), ["301"]);
    assert_eq!(first("rope", "one"), ["401"]);
    assert_eq!(first("ladder", "two"), ["406"]);
    assert_eq!(first("wrapped", "two"), ["514", "512"]);
    assert_eq!(first("wrapped-and-line", "one"), ["515, 516"]);
    assert_eq!(first("zigzag-inside", "none"), ["103"]);
    assert_eq!(first("rope", "four"), Vec::<&str>::new());
    assert_eq!(seam_class_of("hidden-two-rows").map(|class| (class.letters(), class.class())), Some(("LSc", "2")));
    assert_eq!(seam_class_of("wrapped-rows-outside").map(|class| class.key), Some("mock-felled"));
}

/// A plain generator for the simulations: SplitMix64, Steele and others 2014, from memory; only evenness matters here.
struct Even(u64);

impl Even {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Mean 0, spread 1: the sum of twelve even numbers.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.next()).sum::<f64>() - 6.0
    }
}

/// 4000 tapped seams of 3.175 mm stitches, taps off by 0.3 mm, every ruler off by its own half per cent: the densities scatter as claimed.
#[test]
fn tapped_seams_scatter_as_the_spread_claims() {
    let mut even = Even(11);
    for taps in [6, 25] {
        let (mut squares, mut claimed) = (0.0, 0.0);
        for _ in 0..4000 {
            let scale = 1.0 + 0.005 * even.normal();
            let places: Vec<f64> = (0..taps).map(|hole| (7.0 + 3.175 * f64::from(hole) + 0.3 * even.normal()) * scale).collect();
            let density = density_from_taps(&places, 0.3, 0.005).unwrap().density;
            let (value, spread) = density.in_unit(Unit::PerInch).unwrap();
            squares += (value - 8.0).powi(2) / 4000.0;
            claimed += spread * spread / 4000.0;
        }
        let ratio = (claimed / squares).sqrt();
        // The claim takes the larger of two spreads, so it may be a little wide; never narrow.
        assert!(ratio > 0.97 && ratio < 1.25, "{taps} taps: claimed over true {ratio}");
    }
}

/// 4000 combs that look right, each chosen evenly among all that do: no bar further than the misfit from its hole.
#[test]
fn combs_that_look_right_scatter_as_the_spread_claims() {
    let (mut even, misfit, pitch) = (Even(5), 0.25, 3.175);
    for bars in [8_u16, 25] {
        let reach = 2.0 * misfit / f64::from(bars - 1);
        let (mut squares, mut found) = (0.0, 0.0);
        while found < 4000.0 {
            let (shift, wrong) = ((2.0 * even.next() - 1.0) * misfit, (2.0 * even.next() - 1.0) * reach);
            if (0..bars).any(|bar| (shift + wrong * f64::from(bar)).abs() > misfit) {
                continue;
            }
            found += 1.0;
            let (value, _) = density_from_comb(pitch + wrong, bars, misfit, 0.0).unwrap().in_unit(Unit::PerInch).unwrap();
            squares += (value - 8.0).powi(2);
        }
        let (_, claimed) = density_from_comb(pitch, bars, misfit, 0.0).unwrap().in_unit(Unit::PerInch).unwrap();
        let ratio = claimed / (squares / found).sqrt();
        assert!((ratio - 1.0).abs() < 0.05, "{bars} bars: claimed over true {ratio}");
    }
}

/// What a page keeps of taps and combs gives the same density and spread again.
#[test]
fn taps_and_combs_are_kept_as_readings_that_give_the_same_again() {
    let taps = density_from_taps(&[0.0, 3.1, 6.5, 9.4, 12.8, 15.9], 0.1, 0.005).unwrap();
    let again = STITCH_TAPS.estimate(&taps.readings.map(Some)).unwrap();
    let comb = density_from_comb(3.175, 25, 0.25, 0.005).unwrap();
    let comb_again = STITCH_COMB.estimate(&[Some(3.175), Some(25.0), Some(0.25), Some(0.5)]).unwrap();
    for (first, again) in [(taps.density, again), (comb, comb_again)] {
        let (value, spread) = first.in_unit(Unit::PerInch).unwrap();
        assert!((again.value / value - 1.0).abs() < 1e-12 && (again.uncertainty / spread - 1.0).abs() < 1e-12);
    }
}

#[test]
fn a_missed_and_a_doubled_hole_are_pointed_out() {
    let even: Vec<f64> = (0..10).map(|hole| 3.0 * f64::from(hole)).collect();
    let taps = density_from_taps(&even, 0.2, 0.005).unwrap();
    assert_eq!((taps.missed_after, taps.doubled_after), (None, None));
    let mut missed = even.clone();
    missed.remove(4);
    assert_eq!(density_from_taps(&missed, 0.2, 0.005).unwrap().missed_after, Some(3));
    let mut doubled = even.clone();
    doubled.insert(6, 15.4);
    let taps_doubled = density_from_taps(&doubled, 0.2, 0.005).unwrap();
    assert_eq!(taps_doubled.doubled_after, Some(5));
    assert!(taps_doubled.density.uncertainty() > 3.0 * taps.density.uncertainty());
    let backwards: Vec<f64> = even.iter().rev().copied().collect();
    let other = density_from_taps(&backwards, 0.2, 0.005).unwrap().density;
    assert!((other.value() - taps.density.value()).abs() < 1e-9);
}

#[test]
fn marks_that_cannot_be_a_seam_are_refused() {
    assert_eq!(density_from_taps(&[0.0, 3.0, 6.0], 0.2, 0.0).unwrap_err(), MarksFault::TooFew(4));
    assert_eq!(density_from_taps(&[0.0, 3.0, 2.0, 6.0], 0.2, 0.0).unwrap_err(), MarksFault::NotInOrder);
    assert_eq!(density_from_taps(&[0.0, 3.0, 3.0, 6.0], 0.2, 0.0).unwrap_err(), MarksFault::NotInOrder);
    assert_eq!(density_from_taps(&[0.0, f64::NAN, 3.0, 6.0], 0.2, 0.0).unwrap_err(), MarksFault::NotANumber);
    assert!(matches!(density_from_taps(&[0.0, 50.0, 100.0, 150.0], 0.2, 0.0).unwrap_err(), MarksFault::Implausible(_)));
    assert_eq!(density_from_comb(0.0, 10, 0.2, 0.0).unwrap_err(), MarksFault::NotANumber);
    assert_eq!(density_from_comb(3.0, 3, 0.2, 0.0).unwrap_err(), MarksFault::TooFew(4));
    assert!(matches!(density_from_comb(0.1, 10, 0.2, 0.0).unwrap_err(), MarksFault::Implausible(_)));
}

/// Counting over the length that is asked for puts the edge two spreads away, by the instrument itself.
#[test]
fn the_length_that_tells_is_long_enough_and_no_longer() {
    for (density, edges, on_hole) in [(8.2, vec![6.5, 8.5], false), (7.0, vec![6.5, 8.5, 10.0], true), (12.0, vec![11.0], false)]
    {
        let edges: Vec<_> = edges.into_iter().map(per_inch).collect();
        let length = length_that_tells(&per_inch(density), &edges, on_hole, &long(0.5, Unit::Millimetre)).unwrap();
        let mm = length.in_unit(Unit::Millimetre).unwrap().0;
        // Any count does: the spread is taken at the density itself, in whole stitches near it.
        let count = (density * mm / 25.4).round();
        let spread = STITCH_DENSITY
            .estimate(&[Some(count), Some(count * 25.4 / density), Some(f64::from(u8::from(on_hole))), None, None, None])
            .unwrap()
            .uncertainty;
        let gap = edges.iter().map(|edge| (edge.in_unit(Unit::PerInch).unwrap().0 - density).abs()).fold(f64::INFINITY, f64::min);
        assert!((2.0 * spread / gap - mm / (count * 25.4 / density)).abs() < 1e-9, "{density}");
    }
    let ruler = long(0.5, Unit::Millimetre);
    assert!(length_that_tells(&per_inch(8.0), &[per_inch(8.0)], false, &ruler).is_none());
    assert!(length_that_tells(&per_inch(8.0), &[], false, &ruler).is_none());
    assert!(length_that_tells(&Estimate::unknown(), &[per_inch(8.0)], false, &ruler).is_none());
}

#[test]
fn thickness_and_density_go_together_and_only_three_stitches_have_a_formula() {
    assert_eq!(
        THREAD_USE.estimate(&[Some(0.0), Some(1.0), None, Some(8.0), None, None, None, None]).unwrap_err(),
        Fault::NeededToo(&THREAD_USE.inputs[2])
    );
    assert!(thread_by_geometry("504", &long(1.0, Unit::Millimetre), &per_inch(8.0)).is_none());
    let felled = THREAD_USE.estimate(&[Some(1.0), Some(1.0), Some(3.2), Some(8.0), Some(0.0), None, None, None]).unwrap();
    assert!((felled.value - 6.016).abs() < 0.001 && felled.also("needle").is_none());
    let _: Estimate<Number> = thread_by_unravelling(&long(0.0, Unit::Metre), &[long(1.0, Unit::Metre)]);
}

proptest! {
    #[test]
    fn any_marks_at_all_give_a_density_or_a_fault(
        places in proptest::collection::vec(prop_oneof![any::<f64>(), 0.0_f64..100.0], 0..12), spread in any::<f64>(), ruler in 0.0_f64..0.1,
        pitch in any::<f64>(), bars in any::<u16>(),
    ) {
        let mut sorted = places.clone();
        sorted.sort_by(f64::total_cmp);
        for places in [&places, &sorted] {
            for spread in [0.2, spread] {
                if let Ok(taps) = density_from_taps(places, spread, ruler) {
                    prop_assert!(taps.density.is_known() && taps.density.uncertainty().is_finite());
                }
            }
        }
        for (pitch, misfit) in [(pitch, 0.2), (3.0, spread), (3.0, 0.2)] {
            if let Ok(density) = density_from_comb(pitch, bars, misfit, ruler) {
                prop_assert!(density.is_known() && density.uncertainty().is_finite());
            }
        }
    }
}

/// Nothing said of stops: one for every 25 cm, so 76 for the 19.1 m of a pair of jeans, the usual seam.
#[test]
fn stops_are_taken_every_25_cm_where_nobody_counted_them() {
    let with = |seam, stops| SEWING_TIME.estimate(&[seam, Some(8.0), None, None, None, stops, None, None, None]).unwrap();
    assert_eq!(with(None, None), with(Some(19.1), Some(76.0)));
    assert!(with(None, Some(0.0)).value < with(None, None).value - 37.0);
}
