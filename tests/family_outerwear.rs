//! Outerwear against the model it follows and against rows of the handbook.

mod family;

use family::{Tried, handbook, near};
use garment_assay::catalog::outerwear::OUTERWEAR;
use garment_assay::check::Speaks;
use garment_assay::cost::{Amount, Market, Value};
use garment_assay::fit::wanted;
use garment_assay::garment::Appraiser;
use garment_assay::measure::CLOTH_MASS;

const COAT: Tried = Tried {
    family: &OUTERWEAR,
    opened: &[("filling", 1), ("rain", 1)],
    lines: &[
        ("cloth", &["cloth", "lining"]),
        // The handbook counts filling among the trims of a padded jacket.
        ("trims", &["fill", "trims"]),
        ("making", &["sewing", "cutting-packing"]),
        ("finish", &["finish"]),
    ],
    units: &[],
};

#[test]
fn outerwear_agrees_with_the_model() {
    COAT.agrees_with_the_model();
}

#[test]
fn an_open_check_leaves_the_bill_between_its_answers() {
    COAT.answers_move_the_bill();
}

#[test]
fn outerwear_has_the_checks_of_the_model_and_four_more_that_speak_of_cost() {
    assert_eq!(OUTERWEAR.checks.len(), 19);
    for key in ["shell", "hardware", "filling", "rain", "shell-weight", "made-in"] {
        assert!(matches!(COAT.check(key).speaks, Speaks::Cost(_)), "{key}");
    }
}

/// Filling is judged where there is some, of fibre or of down; a drop where rain is spoken of.
#[test]
fn filling_and_drop_are_asked_after_only_where_the_model_asks() {
    let means = |opener: &str, opened: usize, key: &str| -> Vec<f64> {
        (0..4)
            .map(|place| COAT.judged(COAT.judged(COAT.bare(), opener, opened), key, place))
            .map(|garment| Appraiser::default().appraise(&garment).mean())
            .collect()
    };
    for (opener, key, last) in [("filling", "fill-even", 2), ("filling", "fill-leak", 2), ("rain", "bead", 1)] {
        assert!(means(opener, 0, key).windows(2).all(|pair| pair[0] == pair[1]), "{key}");
        for opened in 1..=last {
            assert!(means(opener, opened, key).windows(2).all(|pair| pair[0] < pair[1]), "{key}");
        }
    }
    let direct = |place: usize| COAT.built(&COAT.judged(COAT.bare(), "filling", place)).totals().direct.mean();
    assert!(direct(0) < direct(1) && direct(1) < direct(2));
}

/// Handbook, spi_by_garment.csv: 8 to 10 stitches an inch in seams of coats and of rainwear. The text says so.
#[test]
fn stitches_are_those_of_the_handbook() {
    for row in ["outerwear coat", "rainwear before taping"] {
        let (low, high) = handbook(row);
        assert!(COAT.check("seams").meaning().contains(&format!("{low} to {high} stitches an inch")), "{row}");
    }
}

/// Handbook, weight_bands.csv: coating weighs 400 to 600 g/m². All of it lies in the heaviest answer, read by weighing a cut piece.
#[test]
fn coating_is_the_heaviest_outer_cloth() {
    let (low, high) = handbook("coating from and to");
    let check = COAT.check("shell-weight");
    let last = check.levels[3].spans[0];
    assert!(last.low <= low && last.high > high);
    assert!(check.instruments.contains(&&CLOTH_MASS));
    for (grams, place) in [(60.0, 0), (150.0, 1), (330.0, 2), (500.0, 3)] {
        let holding = check.levels.iter().position(|level| level.spans.iter().any(|span| span.low <= grams && grams < span.high));
        assert_eq!(holding, Some(place), "{grams}");
    }
}

/// Sewing minutes as they stand in the bill: fixed ones, then those that hang on the answers named.
fn minutes(filled: usize, shell: usize) -> f64 {
    let bill = OUTERWEAR.bill.expect("a bill");
    let mut seen: Vec<(&str, f64)> = bill
        .inputs()
        .filter(|input| input.name().ends_with(": minutes"))
        .filter_map(|input| match &input.value {
            Value::Fixed(Amount::Own(range)) => Some((input.name(), range.usual)),
            _ => None,
        })
        .collect();
    seen.dedup();
    // As the bill has them: quilting by what fills it, pressing by the cloth.
    let quilted = [0.01, 0.92, 1.3][filled];
    let pressed = [4.0, 4.0, 6.0, 22.0, 17.0][shell];
    seen.iter().map(|(name, minutes)| minutes * if name.starts_with("Filling") { quilted } else { 1.0 }).sum::<f64>() + pressed
}

/// Handbook, sam_by_garment.csv: 45 to 90 minutes for a padded jacket, 70 to 120 for a coat; duty.csv: the European Union's 12 per cent.
#[test]
fn minutes_and_duty_are_those_of_the_handbook() {
    for (filled, shell, row) in [(1, 0, "padded jacket"), (2, 1, "padded jacket"), (0, 3, "wool coat"), (0, 4, "wool coat")] {
        let ((low, high), found) = (handbook(row), minutes(filled, shell));
        assert!(low < found && found < high, "{row}: {found}");
    }
    let bill = OUTERWEAR.bill.expect("a bill");
    let duty = bill.duties.iter().find(|duty| duty.market == Market::EuropeanUnion).expect("a duty");
    near("duty", duty.rate.range.usual * 100.0, handbook("EU most woven and knit clothing").0, 1e-9);
}

/// Handbook, other_garment_cost_ranges_usd.csv: a padded polyester jacket and a wool coat, by line and at the factory gate.
#[test]
fn a_padded_jacket_and_a_wool_coat_lie_in_their_ranges_of_the_handbook() {
    let padded = COAT.judged(COAT.judged(COAT.bare(), "filling", 1), "shell", 0);
    let coat = COAT.judged(COAT.judged(COAT.judged(COAT.bare(), "filling", 0), "shell", 3), "shell-weight", 3);
    for (garment, row) in [(&padded, "padded jacket"), (&coat, "wool coat")] {
        let built = COAT.built(garment);
        let of = |keys: &[&str]| -> f64 {
            built.lines().iter().filter(|line| keys.contains(&line.key)).map(|line| line.amount.median()).sum()
        };
        let within = |what: &str, found: f64| {
            let (low, high) = handbook(&format!("{row} {what}"));
            assert!(low < found && found < high, "{row} {what}: {found}");
        };
        within("FOB", built.totals().factory_price.median());
        within("cloth", of(&["cloth", "lining"]));
        if row == "padded jacket" {
            within("trims and filling", of(&["fill", "trims"]));
        }
    }
}

/// Every answer the plainest, and the dearest: from the low end of padded jackets to above the high end of wool coats.
#[test]
fn plain_and_dear_pieces_span_the_ranges_of_the_handbook() {
    let plain = COAT.gate(|_| 0, "bangladesh-pakistan");
    let middle = COAT.gate(|check| (check.levels.len() - 1) / 2, "china");
    let dear = COAT.gate(|check| check.levels.len() - 1, "italy-japan");
    let low = handbook("padded jacket FOB").0;
    let high = handbook("wool coat FOB").1;
    assert!(0.7 * low < plain && plain < middle && middle < high, "{plain} {middle}");
    assert!(high < dear && dear < 3.0 * high, "{dear}");
}

/// Handbook, fit_ease_cm.csv and alterability.csv.
#[test]
fn ease_and_what_a_tailor_can_do_are_those_of_the_handbook() {
    let table = OUTERWEAR.fit.expect("a fit table");
    let line = |point: &str| table.lines.iter().copied().find(|line| line.point == point).expect("a line");
    let over = table.cuts.iter().copied().find(|cut| cut.key == "over-jacket").expect("a cut");
    let ease = wanted(line("chest"), over, 3.0).expect("ease");
    assert_eq!((ease.low, ease.high), handbook("coat over jacket chest ease"));
    let far = handbook("jacket sleeve length").0;
    for alteration in line("sleeve").alterations {
        near(alteration.key, alteration.room.centimetres(|_| Some(9.0)), far, 1e-9);
    }
    assert_eq!(line("sleeve").alterations.len(), 2);
}
