//! Woven shirts against the model they follow and against rows of the handbook.

mod family;

use family::{Tried, handbook};
use garment_assay::catalog::woven_shirt::WOVEN_SHIRT;
use garment_assay::check::Speaks;
use garment_assay::cost::{Amount, Market, Value};
use garment_assay::fit::{Cost, Cure, wanted};
use garment_assay::garment::Appraiser;
use garment_assay::measure::STITCH_DENSITY;

const SHIRT: Tried = Tried {
    family: &WOVEN_SHIRT,
    opened: &[("patterned", 1)],
    lines: &[("cloth", &["cloth"]), ("trims", &["trims"]), ("making", &["sewing", "cutting-packing"]), ("finish", &["press"])],
    units: &[],
};

#[test]
fn shirts_agree_with_the_model() {
    SHIRT.agrees_with_the_model();
}

#[test]
fn an_open_check_leaves_the_bill_between_its_answers() {
    SHIRT.answers_move_the_bill();
}

#[test]
fn a_shirt_has_the_checks_of_the_model_and_three_more_that_speak_of_cost() {
    assert_eq!(WOVEN_SHIRT.checks.len(), 18);
    for key in ["details", "fibre", "patterned", "cloth-weight", "made-in"] {
        assert!(matches!(SHIRT.check(key).speaks, Speaks::Cost(_)), "{key}");
    }
}

#[test]
fn the_pattern_is_asked_after_only_where_there_is_one() {
    let means = |opened: usize| -> Vec<f64> {
        (0..4)
            .map(|place| SHIRT.judged(SHIRT.judged(SHIRT.bare(), "patterned", opened), "match", place))
            .map(|garment| Appraiser::default().appraise(&garment).mean())
            .collect()
    };
    assert!(means(0).windows(2).all(|pair| pair[0] == pair[1]));
    assert!(means(1).windows(2).all(|pair| pair[0] < pair[1]));
}

/// Handbook, spi_by_garment.csv: dress shirts 14 to 20 an inch, casual ones 10 to 14, under 12 pucker-prone.
#[test]
fn dress_shirts_get_the_two_best_answers_and_casual_ones_the_two_in_the_middle() {
    let check = SHIRT.check("spi");
    let place = |per_inch: f64| {
        check.levels.iter().position(|level| level.spans.iter().any(|span| span.low <= per_inch && per_inch < span.high))
    };
    let (dress, casual) = (handbook("dress shirt and blouse"), handbook("casual shirt and blouse"));
    assert_eq!((place(dress.0), place(dress.1)), (Some(2), Some(3)));
    assert_eq!((place(casual.0), place(casual.1)), (Some(1), Some(2)));
    for (low, high) in [dress, casual] {
        assert!(check.meaning().contains(&format!("{low} to {high}")));
    }
    // 45 stitches over 76.2 mm: 15 an inch.
    let outcome = STITCH_DENSITY.estimate(&[Some(45.0), Some(76.2), None, None, None, None]).expect("a count");
    assert!(check.weights(&outcome).expect("weights").parts()[2] > 0.99);
}

/// Handbook, weight_bands.csv: poplin 100 to 130 g/m², oxford 130 to 180; an ounce to the square yard is 33.906 g/m² (CW01).
#[test]
fn weights_are_those_of_the_shirtings() {
    let levels = SHIRT.check("cloth-weight").levels;
    for (place, row) in [(1, "poplin shirting"), (2, "oxford shirting")] {
        let (low, high) = handbook(row);
        family::near(row, levels[place].spans[0].low * 33.905_75, low, 0.05);
        family::near(row, levels[place].spans[0].high * 33.905_75, high, 0.05);
    }
}

/// Handbook, defects.csv: points of a collar that differ by more than 3 mm are a major defect.
#[test]
fn points_that_differ_by_more_than_a_defect_are_drawn_as_the_worst_answer() {
    use garment_assay::specimen::{Known, truth};
    let (limit, _) = handbook("collar points unequal major");
    let off: Vec<f64> = (SHIRT.check("collar").levels.iter())
        .filter_map(|level| level.drawn)
        .flat_map(|picture| truth(&picture))
        .filter_map(|known| if let Known::OffMm(mm) = known { Some(mm) } else { None })
        .collect();
    assert!(off[0] > limit && off[1..].iter().all(|mm| *mm <= limit), "{off:?}");
}

/// Handbook, sam_by_garment.csv: a formal shirt takes 18 to 25 minutes; one published study has 22.32. Ours lies near the low end. What its minutes cover is not said
/// there, so sewing, cutting and packing of ours together are held against it.
#[test]
fn minutes_are_those_of_the_handbook() {
    let bill = WOVEN_SHIRT.bill.expect("a bill");
    let usual = |name: &str| -> f64 {
        let input = bill.inputs().find(|input| input.name() == name).unwrap_or_else(|| panic!("{name}"));
        match &input.value {
            Value::Fixed(Amount::Own(range)) => range.usual,
            _ => panic!("{name}"),
        }
    };
    let mut names: Vec<&str> = bill.inputs().map(|input| input.name()).filter(|name| name.ends_with(": minutes")).collect();
    names.dedup();
    let parts: f64 = names.iter().filter(|name| **name != "Special details: minutes").map(|name| usual(name)).sum();
    let minutes = parts + usual("Needle: metres of rows") * usual("Needle: minutes a metre");
    let (low, high) = handbook("formal shirt");
    assert!(low < minutes && minutes < high);
}

/// Handbook, other_garment_cost_ranges_usd.csv: 5.5 to 14 dollars at the factory gate.
#[test]
fn plain_and_middling_shirts_lie_within_the_handbook_and_the_dearest_above_it() {
    let (low, high) = handbook("woven shirt FOB");
    let plain = SHIRT.gate(|_| 0, "bangladesh-pakistan");
    let middle = SHIRT.gate(|check| (check.levels.len() - 1) / 2, "china");
    let dear = SHIRT.gate(|check| check.levels.len() - 1, "italy-japan");
    // The plainest of everything at once is below what the handbook's range begins with; the dearest of everything above its end.
    assert!(0.5 * low < plain && plain < low, "{plain}");
    assert!(low < middle && middle < high, "{middle}");
    assert!(high < dear && dear < 8.0 * high, "{dear}");
}

/// Handbook, duty.csv: 6205.20.20, 19.7 per cent; section 4.3: a shirt of size M has 1.55 to 1.75 m² of cloth.
#[test]
fn duty_and_area_are_those_of_the_handbook() {
    let bill = WOVEN_SHIRT.bill.expect("a bill");
    let duty = bill.duties.iter().find(|duty| duty.market == Market::UnitedStates).expect("a duty");
    family::near("duty", duty.rate.range.low * 100.0, handbook("6205.20.20 men cotton shirts").0, 1e-9);
    let area = bill.inputs().find(|input| input.name() == "Cloth: square metres").expect("an area");
    let Value::Fixed(Amount::Own(area)) = &area.value else { panic!("an area of its own") };
    assert_eq!((area.low, area.high), handbook("shirt M square metres"));
}

/// Handbook, fit_ease_cm.csv (a costume-making text): fitted 3.8 to 6.4 cm at the chest, classic 6.4 to 7.6; alterability.csv: darts, 8 cm.
#[test]
fn ease_and_darts_are_those_of_the_handbook() {
    let table = WOVEN_SHIRT.fit.expect("a fit table");
    let chest = table.lines.iter().find(|line| line.point == "chest").expect("a chest");
    for (cut, row) in [("fitted", "fitted shirt chest ease"), ("classic", "classic shirt chest ease")] {
        let cut = table.cuts.iter().find(|one| one.key == cut).expect("a cut");
        let ease = wanted(chest, cut, 3.0).expect("ease");
        assert_eq!((ease.low, ease.high), handbook(row));
    }
    let darts = chest.alterations.iter().find(|alteration| alteration.key == "darts").expect("darts");
    assert_eq!((darts.room.centimetres(|_| None), darts.cost), (handbook("shirt darts").1, Cost::Little));
}

/// Handbook, fit_drag_lines.csv: its three rows on shirts are signs, with the cure that each row gives (no, no, easy).
#[test]
fn drag_lines_of_shirts_have_the_cure_of_the_handbook() {
    let table = WOVEN_SHIRT.fit.expect("a fit table");
    for (key, cure) in [("x-at-chest", Cure::None), ("shoulder-to-neck", Cure::None), ("back-folds", Cure::Easy)] {
        assert_eq!(table.signs.iter().find(|sign| sign.key == key).map(|sign| sign.cure), Some(cure), "{key}");
    }
}
