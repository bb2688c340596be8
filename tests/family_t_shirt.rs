//! T-shirts against the model they follow and against rows of the handbook.

mod family;

use family::{Tried, handbook};
use garment_assay::catalog::t_shirt::T_SHIRT;
use garment_assay::check::Speaks;
use garment_assay::cost::{Amount, Market, Value};
use garment_assay::fit::{Cost, Cure, Way, sources, wanted};
use garment_assay::garment::Appraiser;
use garment_assay::measure::{GROWTH, SEAM_TWIST};

const TEE: Tried = Tried {
    family: &T_SHIRT,
    opened: &[("printed", 1)],
    lines: &[("cloth", &["cloth"]), ("trims", &["trims"]), ("making", &["sewing", "cutting-packing"]), ("finish", &["finish"])],
    // The model reads what 10 cm became, we how much longer they stay, in per cent; and ounces of 33.906 g/m² (handbook, CW01).
    units: &[("return", 10.0, -100.0), ("weight", 1.0 / 33.905_75, 0.0)],
};

#[test]
fn t_shirts_agree_with_the_model() {
    TEE.agrees_with_the_model();
}

#[test]
fn an_open_check_leaves_the_bill_between_its_answers() {
    TEE.answers_move_the_bill();
}

#[test]
fn a_t_shirt_has_the_checks_of_the_model_and_two_more_that_speak_of_cost() {
    assert_eq!(T_SHIRT.checks.len(), 17);
    for key in ["weight", "body", "printed", "made-in"] {
        assert!(matches!(TEE.check(key).speaks, Speaks::Cost(_)), "{key}");
    }
}

#[test]
fn the_print_is_asked_after_only_where_there_is_one() {
    let means = |opened: usize| -> Vec<f64> {
        (0..4)
            .map(|place| TEE.judged(TEE.judged(TEE.bare(), "printed", opened), "print", place))
            .map(|garment| Appraiser::default().appraise(&garment).mean())
            .collect()
    };
    assert!(means(0).windows(2).all(|pair| pair[0] == pair[1]));
    assert!(means(1).windows(2).all(|pair| pair[0] < pair[1]));
    let plain = TEE.built(&TEE.judged(TEE.bare(), "printed", 0));
    let printed = TEE.built(&TEE.judged(TEE.bare(), "printed", 1));
    assert!(plain.totals().direct.mean() < printed.totals().direct.mean());
}

/// Handbook, defects.csv: spirality over 5 per cent is a major defect (common practice); the two worst answers, and those only.
#[test]
fn a_twist_that_counts_as_a_defect_gets_one_of_the_two_worst_answers() {
    let (limit, _) = handbook("T-shirt spirality major");
    let check = TEE.check("twist");
    assert!(check.levels[..2].iter().flat_map(|level| level.spans).all(|span| span.low >= limit));
    assert!(check.levels[2..].iter().flat_map(|level| level.spans).all(|span| span.high <= limit));
    // 27 mm over 450 mm are 6 per cent.
    let mut given = vec![None; SEAM_TWIST.inputs.len()];
    given[..2].copy_from_slice(&[Some(27.0), Some(450.0)]);
    let outcome = SEAM_TWIST.estimate(&given).expect("a twist");
    family::near("twist", outcome.value, 6.0, 1e-9);
    let weights = check.weights(&outcome).expect("weights");
    assert!(weights.parts()[1] > 0.7, "{:?}", weights.parts());
    // 10 cm that became 10.4: 4 per cent longer.
    let outcome = GROWTH.estimate(&[Some(4.0), Some(0.5)]).expect("a growth");
    assert!(TEE.check("return").weights(&outcome).expect("weights").parts()[1] > 0.95);
}

/// Handbook, weight_bands.csv: 140 to 200 g/m² are usual for T-shirts; the two middle answers.
#[test]
fn usual_weights_get_the_two_answers_in_the_middle() {
    let (low, high) = handbook("T-shirt jersey");
    let levels = TEE.check("weight").levels;
    family::near("low", levels[1].spans[0].low * 33.905_75, low, 0.05);
    family::near("high", levels[2].spans[0].high * 33.905_75, high, 0.05);
    assert!(TEE.check("weight").meaning().contains(&format!("{low} to {high}")));
}

/// Handbook, sam_by_garment.csv: 5 to 7 minutes, cutting and finishing loosely counted in; section 4.3: 0.95 m² of cloth in size M; duty.csv.
#[test]
fn minutes_area_and_duty_are_those_of_the_handbook() {
    let bill = T_SHIRT.bill.expect("a bill");
    let own = |name: &str| {
        let input = bill.inputs().find(|input| input.name() == name).unwrap_or_else(|| panic!("{name}"));
        match &input.value {
            Value::Fixed(Amount::Own(range)) => *range,
            _ => panic!("{name}"),
        }
    };
    let mut names: Vec<&str> = bill.inputs().map(|input| input.name()).filter(|name| name.ends_with(": minutes")).collect();
    names.dedup();
    let minutes: f64 = names.iter().map(|name| own(name).usual).sum();
    let (low, high) = handbook("T-shirt basic crew");
    assert!(low < minutes && minutes < high, "{minutes}");
    assert_eq!(own("Cloth: square metres").usual, handbook("T-shirt M square metres").0);
    let duty = bill.duties.iter().find(|duty| duty.market == Market::UnitedStates).expect("a duty");
    family::near("duty", duty.rate.range.low * 100.0, handbook("6109.10 cotton T-shirts").0, 1e-9);
}

/// Handbook, other_garment_cost_ranges_usd.csv: 1.8 to 4.5 dollars at the factory gate.
#[test]
fn plain_and_middling_t_shirts_lie_within_the_handbook_and_the_dearest_above_it() {
    let (low, high) = handbook("T-shirt FOB");
    let plain = TEE.gate(|_| 0, "bangladesh-pakistan");
    let middle = TEE.gate(|check| (check.levels.len() - 1) / 2, "china");
    let dear = TEE.gate(|check| check.levels.len() - 1, "italy-japan");
    assert!(0.5 * low < plain && plain < low, "{plain}");
    assert!(low < middle && middle < high, "{middle}");
    assert!(high < dear && dear < 5.0 * high, "{dear}");
}

/// Handbook, fit_ease_cm.csv: slim 0 to 6 cm at the chest, regular 6 to 12 (common practice).
#[test]
fn ease_is_that_of_the_handbook() {
    let table = T_SHIRT.fit.expect("a fit table");
    let chest = table.lines.iter().find(|line| line.point == "chest").expect("a chest");
    for (cut, row) in [("slim", "T-shirt slim chest ease"), ("regular", "T-shirt regular chest ease")] {
        let cut = table.cuts.iter().find(|one| one.key == cut).expect("a cut");
        let ease = wanted(chest, cut, 30.0).expect("ease");
        assert_eq!((ease.low, ease.high), handbook(row));
    }
}

/// Handbook, alterability.csv: a hem goes up by any length at cost 1 of 5, the sides of a dress in by any at cost 2. No row lets a T-shirt
/// out, and none of ours does.
#[test]
fn what_a_tailor_can_do_is_what_the_handbook_allows() {
    let rows = include_str!("vectors/handbook_alterability.csv");
    assert!(rows.contains("hem up,any,") && rows.lines().any(|row| row.starts_with("hem up") && row.contains(",1,")));
    let table = T_SHIRT.fit.expect("a fit table");
    let hem = table.signs.iter().find(|sign| sign.key == "hem-too-long").expect("a sign");
    assert!(hem.cure == Cure::Easy && hem.mend().contains("any length"));
    for line in table.lines {
        assert!(!line.alterations.is_empty(), "{}", line.point);
        assert!(line.alterations.iter().all(|one| one.way == Way::In), "{}", line.point);
    }
    let sides = table.lines.iter().flat_map(|line| line.alterations).find(|one| one.key == "sides-in").expect("sides");
    assert_eq!((sides.cost, sides.source), (Cost::Some, &sources::COMMON_PRACTICE));
}
