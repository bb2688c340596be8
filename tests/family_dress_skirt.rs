//! Dresses and skirts against the model they follow and against rows of the handbook.

mod family;

use family::{Tried, handbook, near};
use garment_assay::catalog::dress_skirt::DRESS_SKIRT;
use garment_assay::check::Speaks;
use garment_assay::cost::{Amount, Market, Value};
use garment_assay::fit::wanted;
use garment_assay::garment::Appraiser;
use garment_assay::measure::HEM_ROUND;

const DRESS: Tried = Tried {
    family: &DRESS_SKIRT,
    opened: &[("lined", 1)],
    lines: &[
        ("cloth", &["cloth", "lining"]),
        ("trims", &["trims"]),
        ("making", &["sewing", "cutting-packing"]),
        ("finish", &["finish"]),
    ],
    // The model has metres, our tape centimetres.
    units: &[("volume", 100.0, 0.0)],
};

#[test]
fn dresses_agree_with_the_model() {
    DRESS.agrees_with_the_model();
}

#[test]
fn an_open_check_leaves_the_bill_between_its_answers() {
    DRESS.answers_move_the_bill();
}

#[test]
fn a_dress_has_the_checks_of_the_model_and_four_more_that_speak_of_cost() {
    assert_eq!(DRESS_SKIRT.checks.len(), 19);
    for key in ["fibre", "volume", "piece", "stretch", "lined", "made-in"] {
        assert!(matches!(DRESS.check(key).speaks, Speaks::Cost(_)), "{key}");
    }
}

#[test]
fn the_lining_is_asked_after_only_where_there_is_one() {
    let means = |opened: usize| -> Vec<f64> {
        (0..4)
            .map(|place| DRESS.judged(DRESS.judged(DRESS.bare(), "lined", opened), "lining", place))
            .map(|garment| Appraiser::default().appraise(&garment).mean())
            .collect()
    };
    assert!(means(0).windows(2).all(|pair| pair[0] == pair[1]));
    assert!(means(1).windows(2).all(|pair| pair[0] < pair[1]));
    let plain = DRESS.built(&DRESS.judged(DRESS.bare(), "lined", 0));
    let lined = DRESS.built(&DRESS.judged(DRESS.bare(), "lined", 1));
    assert!(plain.totals().direct.mean() < lined.totals().direct.mean());
}

/// Handbook, spi_by_garment.csv: 10 to 12 stitches an inch in seams, 3 to 5 in blind hems. The text says so.
#[test]
fn stitches_are_those_of_the_handbook() {
    let (low, high) = handbook("dresses and skirts");
    assert!(DRESS.check("stitch-even").meaning().contains(&format!("{low} to {high} stitches an inch")));
    let (low, high) = handbook("blind-stitch hems");
    assert!(DRESS.check("hem").meaning().contains(&format!("{low} to {high} an inch")));
}

/// The model has a usual spread of 0.05 m on the way round a hem.
#[test]
fn a_hem_is_read_as_the_model_has_it() {
    let outcome = HEM_ROUND.estimate(&[Some(200.0), None]).expect("a length");
    near("spread", outcome.uncertainty, 5.0, 1e-12);
    let parts = DRESS.check("volume").weights(&outcome).expect("weights");
    near("half", parts.parts()[1], 0.5, 1e-6);
    near("half", parts.parts()[2], 0.5, 1e-6);
}

/// Handbook, sam_by_garment.csv: 20 to 30 minutes for a dress, 10 to 15 for a skirt; duty.csv: the European Union's 12 per cent.
#[test]
fn minutes_and_duty_are_those_of_the_handbook() {
    let bill = DRESS_SKIRT.bill.expect("a bill");
    let mut seen: Vec<(&str, f64)> = bill
        .inputs()
        .filter(|input| input.name().ends_with(": minutes"))
        .filter_map(|input| match &input.value {
            Value::Fixed(Amount::Own(range)) => Some((input.name(), range.usual)),
            _ => None,
        })
        .collect();
    seen.dedup();
    let dress: f64 = seen.iter().map(|input| input.1).sum();
    let (low, high) = handbook("dress basic");
    assert!(low < dress && dress < high, "{dress}");
    // What hangs on the piece takes 0.45 of it on a skirt; zip and hem take as long.
    let whole: f64 =
        seen.iter().filter(|input| input.0.starts_with("Zip") || input.0.starts_with("Hem")).map(|input| input.1).sum();
    let skirt = whole + (dress - whole) * 0.45;
    let (low, high) = handbook("skirt basic");
    assert!(low < skirt && skirt < high, "{skirt}");
    let duty = bill.duties.iter().find(|duty| duty.market == Market::EuropeanUnion).expect("a duty");
    near("duty", duty.rate.range.usual * 100.0, handbook("EU most woven and knit clothing").0, 1e-9);
}

/// Handbook, other_garment_cost_ranges_usd.csv: 7 to 26 dollars at the gate for a dress, 5 to 16 for a skirt.
#[test]
fn dresses_and_skirts_lie_in_their_ranges_of_the_handbook() {
    for (place, row) in [(1, "dress FOB"), (0, "skirt FOB")] {
        let (low, high) = handbook(row);
        let built = DRESS.built(&DRESS.judged(DRESS.bare(), "piece", place));
        let gate = built.totals().factory_price.median();
        assert!(low < gate && gate < high, "{row}: {gate}");
    }
    let (low, high) = handbook("dress FOB");
    let plain = DRESS.gate(|_| 0, "bangladesh-pakistan");
    let dear = DRESS.gate(|check| check.levels.len() - 1, "italy-japan");
    assert!(0.3 * low < plain && plain < low, "{plain}");
    assert!(high < dear && dear < 5.0 * high, "{dear}");
}

/// Handbook, fit_ease_cm.csv and alterability.csv.
#[test]
fn ease_and_what_a_tailor_can_do_are_those_of_the_handbook() {
    let table = DRESS_SKIRT.fit.expect("a fit table");
    let line = |point: &str| table.lines.iter().copied().find(|line| line.point == point).expect("a line");
    let fitted = table.cuts[0];
    let ease = |point: &str, give: f64| {
        let ease = wanted(line(point), fitted, give).expect("ease");
        (ease.low, ease.high)
    };
    assert_eq!(ease("bust", 3.0), handbook("bodice woven bust ease"));
    assert_eq!(ease("bust", 40.0), handbook("stretch knit dress bust ease"));
    assert_eq!(ease("hip", 3.0), handbook("all woven hip ease"));
    assert_eq!(ease("waist", 3.0), (handbook("skirt waist ease").0, handbook("dress waist ease").1));
    let (_, out) = handbook("dress side seam out");
    let letting = line("bust").alterations.iter().find(|one| one.key == "sides-out").expect("letting out");
    for (left, room) in [(0.5, 0.0), (1.0, 0.0), (1.25, 1.0), (3.0, out)] {
        near("room", letting.room.centimetres(|_| Some(left)), room, 1e-9);
    }
    for sign in ["bust-to-waist", "fold-below-waist"] {
        assert!(table.signs.iter().any(|one| one.key == sign), "{sign}");
    }
}
