//! Shrinkage against the handbook's rows (AATCC TM135, ISO 5077), its table of usual changes, and the general library `uncertainties`.

mod bench_rows;

use bench_rows::{carried, near, numbers, rows};
use garment_assay::measure::{
    CLOTHS_BEFORE_WASH, ChangeRange, ClothBeforeWash, Drying, Fault, SHRINKAGE, SHRINKAGE_TO_EXPECT, Warmth, change_of_washes,
    dimensional_change, expected_change, size_after, size_to_buy,
};
use garment_assay::quantity::{Decimal, Estimate, Length, Number, System, Unit};
use proptest::prelude::*;

fn mm(name: &'static str, value: f64, u: f64) -> Estimate<Length> {
    Estimate::measured_in(name, value, u, Unit::Millimetre).unwrap()
}

fn inches(value: f64) -> Estimate<Length> {
    Estimate::exact_in(value, Unit::Inch).unwrap()
}

fn percent(value: f64) -> Estimate<Number> {
    Estimate::exact(value / 100.0)
}

fn cloth(key: &str) -> &'static ClothBeforeWash {
    CLOTHS_BEFORE_WASH.iter().find(|cloth| cloth.key == key).unwrap()
}

/// Handbook data, dimensional_change.csv, rows DC; the rows of twist and skew are met in tests/twist.rs.
#[test]
fn every_row_of_the_handbook_is_met() {
    let rows: Vec<_> = rows(include_str!("vectors/handbook_dimensional_change_b.csv"))
        .into_iter()
        .filter(|row| row[0].starts_with("DC"))
        .collect();
    assert_eq!(rows.len(), 4);
    for row in rows {
        let (given, expected, tolerance) = (numbers(&row[2]), row[3].parse::<f64>().unwrap(), row[5].parse::<f64>().unwrap());
        let found = match row[0].as_str() {
            "DC01" => 100.0 * dimensional_change(&mm("a", given[0], 0.0), &mm("b", given[1], 0.0)).value(),
            "DC02" => size_after(&inches(given[0]), &percent(given[1])).in_unit(Unit::Inch).unwrap().0,
            "DC03" => size_to_buy(&inches(given[0]), &percent(given[1])).in_unit(Unit::Inch).unwrap().0,
            "DC04" => 100.0 * change_of_washes([&percent(given[0]), &percent(given[1])]).value(),
            other => panic!("{other}"),
        };
        near(found, expected, tolerance);
    }
}

/// Handbook data, shrinkage_typical.csv.
#[test]
fn the_table_of_usual_changes_is_that_of_the_handbook() {
    let rows: Vec<_> =
        rows(include_str!("vectors/handbook_shrinkage_typical_b.csv")).into_iter().filter(|row| row[0] != "item").collect();
    assert_eq!(rows.len(), CLOTHS_BEFORE_WASH.len());
    for (row, cloth) in rows.iter().zip(&CLOTHS_BEFORE_WASH) {
        let number = |field: usize| row[field].parse::<f64>().unwrap();
        assert_eq!(cloth.length, ChangeRange { low: number(1), high: number(2) }, "{}", row[0]);
        assert_eq!(cloth.width, ChangeRange { low: number(3), high: number(4) }, "{}", row[0]);
    }
}

/// Python package uncertainties 3.2.3; bench_b.py.
#[test]
fn spreads_are_those_of_a_general_library() {
    for name in ["change", "size-after", "size-to-buy"] {
        for (given, value, spread) in carried(name) {
            let change = dimensional_change(&mm("before", given[0], given[2]), &mm("after", given[1], given[2]));
            let (found, u) = match name {
                "change" => (change.value(), change.uncertainty()),
                "size-after" => size_after(&mm("size", 864.0, 2.0), &change).in_unit(Unit::Millimetre).unwrap(),
                _ => size_to_buy(&mm("size", 813.0, 2.0), &change).in_unit(Unit::Millimetre).unwrap(),
            };
            near(found, value, 1e-9);
            near(u, spread, 1e-9);
        }
    }
    for (given, value, spread) in carried("washes") {
        let one = Estimate::measured("one", given[0], given[1]).unwrap();
        let two = Estimate::measured("two", given[2], given[3]).unwrap();
        let total = change_of_washes([&one, &two]);
        near(total.value(), value, 1e-12);
        near(total.uncertainty(), spread, 1e-12);
    }
}

#[test]
fn the_instrument_gives_length_width_total_and_size() {
    let all = [380.0, 369.0, 400.0, 396.0, -3.0, 864.0].map(Some);
    let outcome = SHRINKAGE.estimate(&[&all[..], &[None]].concat()).unwrap();
    near(outcome.value, -2.8947, 0.001);
    near(outcome.uncertainty, 0.366_814, 1e-5);
    near(outcome.also("width").unwrap().value, -1.0, 1e-9);
    near(outcome.also("total").unwrap().value, 100.0 * (0.97 * 369.0 / 380.0 - 1.0), 1e-9);
    near(outcome.also("size-after").unwrap().value, 86.4 * 369.0 / 380.0, 1e-9);
    for (key, _) in &outcome.budget {
        assert!(SHRINKAGE.input(key).is_some());
    }
}

#[test]
fn half_a_pair_of_marks_is_asked_for() {
    let [.., width_before, width_after, _, _, _] = SHRINKAGE.inputs else { panic!("inputs") };
    let given = |before, after| SHRINKAGE.estimate(&[Some(380.0), Some(369.0), before, after, None, None, None]);
    assert_eq!(given(Some(400.0), None), Err(Fault::NeededToo(width_after)));
    assert_eq!(given(None, Some(400.0)), Err(Fault::NeededToo(width_before)));
    assert!(matches!(
        SHRINKAGE.estimate(&[Some(380.0), Some(100.0), None, None, None, None, None]),
        Err(Fault::Implausible { value, .. }) if value < -70.0
    ));
}

#[test]
fn a_change_that_leaves_nothing_has_no_size() {
    for change in [-100.0, -140.0] {
        assert!(!size_after(&inches(32.0), &percent(change)).is_known());
        assert!(!size_to_buy(&inches(32.0), &percent(change)).is_known());
    }
    assert_eq!(change_of_washes([]).value(), 0.0);
}

/// Handbook, section 6.2: a dryer adds 1 to 3 points. What warmth does is judgement; here only its direction is held.
#[test]
fn a_dryer_and_a_hot_wash_shrink_more_and_a_cool_one_less() {
    for cloth in CLOTHS_BEFORE_WASH.iter().filter(|cloth| !cloth.felts) {
        let change = |warmth, drying| expected_change(cloth, warmth, drying).unwrap();
        for place in 0..2 {
            let line = change(Warmth::Warm, Drying::Line)[place];
            assert_eq!(line, [cloth.length, cloth.width][place]);
            let tumbled = change(Warmth::Warm, Drying::Tumble)[place];
            assert_eq!((tumbled.low, tumbled.high), (line.low - 3.0, line.high - 1.0));
            let (cool, hot) = (change(Warmth::Cool, Drying::Line)[place], change(Warmth::Hot, Drying::Line)[place]);
            assert!(cool.high >= line.high && cool.low == line.low && hot.low <= line.low && hot.high == line.high);
            assert!(cool.low < cool.high && hot.low < hot.high);
        }
    }
    assert_eq!(expected_change(cloth("loomstate"), Warmth::Hot, Drying::Line).unwrap()[0].low, -10.0);
}

/// Handbook, section 6.2: wool felts without bound, so no number may be named.
#[test]
fn wool_in_a_machine_gets_no_number() {
    let wool = CLOTHS_BEFORE_WASH.iter().position(|cloth| cloth.felts).unwrap() as f64;
    for (warmth, drying) in [(1.0, 0.0), (2.0, 0.0), (0.0, 1.0)] {
        let fault = SHRINKAGE_TO_EXPECT.estimate(&[Some(wool), Some(warmth), Some(drying), None]).unwrap_err();
        assert!(matches!(fault, Fault::NoNumber(_)));
        assert!(fault.sentence(System::Metric, Decimal::Point).contains("felt"));
    }
    assert!(SHRINKAGE_TO_EXPECT.estimate(&[Some(wool), Some(0.0), Some(0.0), None]).is_ok());
}

/// Raw denim of 34 in may lose 7 to 10 %: 30.6 to 31.62 in, by hand. The spread is that of a value anywhere in the range (GUM, 4.3.7).
#[test]
fn what_is_expected_is_always_a_range() {
    let outcome = SHRINKAGE_TO_EXPECT.estimate(&[Some(0.0), Some(1.0), Some(0.0), Some(34.0 * 25.4)]).unwrap();
    let also = |key| outcome.also(key).unwrap().value;
    near(outcome.value, -8.5, 1e-9);
    near(outcome.uncertainty, 1.5 / 3.0_f64.sqrt(), 1e-9);
    for (key, end) in [("length-low", -10.0), ("length-high", -7.0), ("width-low", -10.0), ("width-high", -3.0)] {
        near(also(key), end, 1e-9);
    }
    near(also("size-least") / 2.54, 30.6, 1e-9);
    near(also("size-most") / 2.54, 31.62, 1e-9);
    assert!(outcome.also("size-after").unwrap().uncertainty > 0.0);
    for place in 0..CLOTHS_BEFORE_WASH.len() {
        if let Ok(outcome) = SHRINKAGE_TO_EXPECT.estimate(&[Some(place as f64), Some(1.0), Some(0.0), None]) {
            assert!(
                outcome.uncertainty > 0.0
                    && outcome.also("length-low").unwrap().value < outcome.also("length-high").unwrap().value
            );
            assert!(outcome.says()[0].contains("range"));
        }
    }
}

#[test]
fn the_choices_are_the_rows_of_the_table() {
    let choices = SHRINKAGE_TO_EXPECT.inputs[0].choices();
    assert!(choices.iter().map(|choice| choice.key).eq(CLOTHS_BEFORE_WASH.iter().map(|cloth| cloth.key)));
}

proptest! {
    /// From the definitions: a size bought for a change ends at the wanted one, and two washes measured apart are the one measured across.
    #[test]
    fn sizes_and_washes_come_round(a in 100.0_f64..1000.0, one in -0.2_f64..0.05, two in -0.2_f64..0.05) {
        let (one, two) = (Estimate::<Number>::exact(one), Estimate::<Number>::exact(two));
        let wanted = mm("a", a, 0.0);
        let back = size_after(&size_to_buy(&wanted, &one), &one);
        prop_assert!((back.value() - wanted.value()).abs() < 1e-12);
        let twice = size_after(&size_after(&wanted, &one), &two);
        prop_assert!((dimensional_change(&wanted, &twice).value() - change_of_washes([&one, &two]).value()).abs() < 1e-12);
    }
}
