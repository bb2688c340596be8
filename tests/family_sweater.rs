//! Sweaters against the model they follow and against rows of the handbook.

mod family;

use family::{Tried, handbook, near};
use garment_assay::catalog::sweater::SWEATER;
use garment_assay::check::Speaks;
use garment_assay::cost::{Amount, Market, Value};
use garment_assay::fit::wanted;
use garment_assay::garment::Appraiser;
use garment_assay::measure::{Fault, KNIT_GAUGE, RIB_RETURN};
use garment_assay::specimen::{Gauge, Ink, Known, Picture, Sweater, drawing, truth};

const KNIT: Tried = Tried {
    family: &SWEATER,
    opened: &[("cardigan", 1)],
    lines: &[("cloth", &["cloth"]), ("trims", &["trims"]), ("making", &["knitting", "making-up"]), ("finish", &["finish"])],
    units: &[],
};

#[test]
fn sweaters_agree_with_the_model() {
    KNIT.agrees_with_the_model();
}

#[test]
fn an_open_check_leaves_the_bill_between_its_answers() {
    KNIT.answers_move_the_bill();
}

#[test]
fn a_sweater_has_the_checks_of_the_model_and_two_more_that_speak_of_cost() {
    assert_eq!(SWEATER.checks.len(), 16);
    for key in ["fibre", "gauge", "cardigan", "made-in"] {
        assert!(matches!(KNIT.check(key).speaks, Speaks::Cost(_)), "{key}");
    }
}

#[test]
fn the_band_is_asked_after_only_where_it_buttons() {
    let means = |opened: usize| -> Vec<f64> {
        (0..4)
            .map(|place| KNIT.judged(KNIT.judged(KNIT.bare(), "cardigan", opened), "band", place))
            .map(|garment| Appraiser::default().appraise(&garment).mean())
            .collect()
    };
    assert!(means(0).windows(2).all(|pair| pair[0] == pair[1]));
    assert!(means(1).windows(2).all(|pair| pair[0] < pair[1]));
    let plain = KNIT.built(&KNIT.judged(KNIT.bare(), "cardigan", 0));
    let buttoned = KNIT.built(&KNIT.judged(KNIT.bare(), "cardigan", 1));
    assert!(plain.totals().direct.mean() < buttoned.totals().direct.mean());
}

/// Handbook, row SD07: a count of 24 over 76.2 mm, read to half a millimetre, is off by 0.146 per inch.
#[test]
fn loops_are_counted_as_stitches_are() {
    let outcome = KNIT_GAUGE.estimate(&[Some(24.0), Some(76.2), Some(0.5)]).expect("a gauge");
    let (spread, tolerance) = handbook("SD07 spread of a count");
    near("gauge", outcome.value, 8.0, 1e-9);
    near("spread", outcome.uncertainty, spread, tolerance);
    // On a border the reading counts for both sides; read to the usual 1 mm its spread is u(N)/N and u(L)/L together.
    let outcome = KNIT_GAUGE.estimate(&[Some(24.0), Some(76.2), None]).expect("a gauge");
    near("spread", outcome.uncertainty, 8.0 * (1.0 / 6.0_f64.sqrt() / 24.0).hypot(1.0 / 76.2), 1e-9);
    let weights = KNIT.check("gauge").weights(&outcome).expect("weights");
    near("half", weights.parts()[1], 0.5, 1e-6);
    near("half", weights.parts()[2], 0.5, 1e-6);
    assert!(matches!(KNIT_GAUGE.estimate(&[Some(7.0), Some(76.2), None]), Err(Fault::TooFew { needed: 8, .. })));
    assert!(matches!(KNIT_GAUGE.estimate(&[Some(40.0), Some(10.0), None]), Err(Fault::Implausible { .. })));
}

/// The quotient by hand: 80 mm that became 84 are 5 per cent; `u = sqrt(u^2 + (1.05 u)^2) / A` with u of 1 mm is 1.8125.
#[test]
fn a_rib_is_read_by_two_widths() {
    let outcome = RIB_RETURN.estimate(&[Some(80.0), Some(84.0), None]).expect("a return");
    near("growth", outcome.value, 5.0, 1e-9);
    near("spread", outcome.uncertainty, 100.0 * 1.0_f64.hypot(1.05) / 80.0, 1e-9);
    let parts = KNIT.check("rib-return").weights(&outcome).expect("weights");
    near("between slow and returns", parts.parts()[1] / parts.parts()[2], 1.0, 0.12);
    assert!(matches!(RIB_RETURN.estimate(&[Some(80.0), Some(130.0), None]), Err(Fault::Implausible { .. })));
}

/// Columns drawn are those told, over the inch that the rule shows.
#[test]
fn loops_drawn_are_those_told() {
    for told in [4.0, 6.5, 11.0, 17.0] {
        let picture = Picture::Sweater(Sweater::Gauge(Gauge { per_inch: told }));
        assert_eq!(truth(&picture), [Known::LoopsPerInch(told)]);
        let drawn = drawing(&picture, 1);
        let face = drawn.marks.iter().rfind(|mark| mark.ink == Ink::ClothPale).expect("loops");
        // Each loop is one piece of path that starts at its upper left; count those of the top row.
        let starts: Vec<(f64, f64)> = face
            .path
            .split('M')
            .skip(1)
            .map(|piece| {
                let end = piece.find('l').expect("a step");
                let place = piece[..end].trim();
                let split = place.rfind([' ', '-']).filter(|at| *at > 0).or_else(|| place.rfind('.')).expect("two numbers");
                let (x, y) = place.split_at(split);
                (x.trim().parse().expect("x"), y.trim().parse().expect("y"))
            })
            .collect();
        let row: Vec<f64> = starts.iter().filter(|start| (start.1 - starts[0].1).abs() < 0.05).map(|start| start.0).collect();
        let inch = 25.4 * 120.0 / 48.0;
        let found = (row.len() - 1) as f64 / ((row[row.len() - 1] - row[0]) / inch);
        near("columns", found, told, 0.06 * told / 4.0);
    }
}

/// Handbook, sam_by_garment.csv and duty.csv: 40 to 90 minutes on the machine, 15 to 30 by hand.
#[test]
fn minutes_and_duty_are_those_of_the_handbook() {
    let bill = SWEATER.bill.expect("a bill");
    let own = |end: &str| -> f64 {
        let mut seen: Vec<(&str, f64)> = bill
            .inputs()
            .filter(|input| input.name().ends_with(end))
            .filter_map(|input| match &input.value {
                Value::Fixed(Amount::Own(range)) => Some((input.name(), range.usual)),
                _ => None,
            })
            .collect();
        seen.dedup();
        seen.iter().map(|input| input.1).sum()
    };
    let (low, high) = handbook("sweater machine minutes");
    let machine = own("machine minutes");
    assert!(low < machine && machine < high, "{machine}");
    let (low, high) = handbook("sweater linking and finishing");
    let hand = own(": minutes");
    assert!(low < hand && hand < high, "{hand}");
    let duty = bill.duties.iter().find(|duty| duty.market == Market::UnitedStates).expect("a duty");
    near("duty", duty.rate.range.low * 100.0, handbook("6110.20 cotton sweaters").0, 1e-9);
}

/// Handbook, other_garment_cost_ranges_usd.csv: yarn and price at the factory gate, of cotton or acrylic and of merino or cashmere.
#[test]
fn acrylic_and_cashmere_lie_in_their_ranges_of_the_handbook() {
    for (fibre, row) in [(0, "cotton or acrylic"), (2, "cotton or acrylic"), (3, "merino or cashmere"), (4, "merino or cashmere")]
    {
        let built = KNIT.built(&KNIT.judged(KNIT.bare(), "fibre", fibre));
        let yarn = built.lines().iter().find(|line| line.key == "cloth").expect("yarn").amount.median();
        let (low, high) = handbook(&format!("sweater {row} yarn"));
        // Acrylic alone may lie below a range that it shares with cotton.
        assert!(0.75 * low < yarn && yarn < high, "{fibre}: {yarn}");
        let gate = built.totals().factory_price.median();
        let (low, high) = handbook(&format!("sweater {row} FOB"));
        assert!(low < gate && gate < high, "{fibre}: {gate}");
    }
}

/// Every answer the plainest, the middle one, and the dearest: from the low end of the handbook's ranges to above their high end.
#[test]
fn plain_and_dear_sweaters_span_the_ranges_of_the_handbook() {
    let low = handbook("sweater cotton or acrylic FOB").0;
    let high = handbook("sweater merino or cashmere FOB").1;
    let plain = KNIT.gate(|_| 0, "bangladesh-pakistan");
    let middle = KNIT.gate(|check| (check.levels.len() - 1) / 2, "china");
    let dear = KNIT.gate(|check| check.levels.len() - 1, "italy-japan");
    assert!(0.7 * low < plain && plain < middle && middle < handbook("sweater cotton or acrylic FOB").1, "{plain} {middle}");
    assert!(0.7 * high < dear && dear < 3.0 * high, "{dear}");
}

/// Handbook, fit_ease_cm.csv: 4 to 12 cm at the chest (common practice).
#[test]
fn ease_is_that_of_the_handbook() {
    let table = SWEATER.fit.expect("a fit table");
    let chest = table.lines.iter().find(|line| line.point == "chest").expect("a chest");
    let ease = wanted(chest, table.cuts[0], 40.0).expect("ease");
    assert_eq!((ease.low, ease.high), handbook("sweater chest ease"));
    // Handbook, fit_drag_lines.csv: a shoulder seam that slides off says large, and no alteration helps.
    assert!(table.signs.iter().any(|sign| sign.key == "shoulder-slides" && sign.mend().contains("smaller")));
}
