//! Grading against values from outside (`vectors/grading.json`, `vectors/journey.json`: each names the library that made them),
//! and the laws that any belief must keep.

use garment_assay::grading::{
    Bands, Belief, Candidate, Care, Curve, Evidence, Group, LevelsDiffer, Power, SharesError, Tables, Weights, WeightsError,
    contributions, prospect, ranking, settling, thresholds,
};
use garment_assay::trade::{Aspect, Band, Stage};
use proptest::prelude::*;
use serde_json::Value;

// ---- reading the vectors

fn vectors() -> Value {
    serde_json::from_str(include_str!("vectors/grading.json")).expect("grading.json is JSON")
}

fn of_kind(file: &Value, kind: &str) -> Vec<Value> {
    let all = file["vectors"].as_array().expect("a list");
    let found: Vec<Value> = all.iter().filter(|v| text(&v["id"]).starts_with(&format!("{kind}-"))).cloned().collect();
    assert!(!found.is_empty(), "no {kind} vectors");
    found
}

fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_else(|| panic!("not text: {value}"))
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("not a number: {value}"))
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().unwrap_or_else(|| panic!("not a list: {value}")).iter().map(number).collect()
}

fn close(what: &str, found: f64, expected: f64, tolerance: f64) {
    assert!((found - expected).abs() <= tolerance, "{what}: {found}, expected {expected} within {tolerance}");
}

fn all_close(what: &str, found: &[f64], expected: &[f64], tolerance: f64) {
    assert_eq!(found.len(), expected.len(), "{what}");
    for (found, expected) in found.iter().zip(expected) {
        close(what, *found, *expected, tolerance);
    }
}

fn curve(group: Group, slope: f64, thresholds: &[f64]) -> Curve {
    Curve { group, slope, thresholds: Vec::leak(thresholds.to_vec()) }
}

fn group(name: &str) -> Group {
    Group::ALL.into_iter().find(|group| format!("{group:?}").eq_ignore_ascii_case(name)).expect("a group")
}

fn stage(name: &str) -> Stage {
    match name {
        "rack" => Stage::OnTheHanger,
        "hand" => Stage::InHand,
        "inside" => Stage::InsideOut,
        "worn" => Stage::Worn,
        other => panic!("no stage {other}"),
    }
}

/// The 25 jeans checks that the vectors name: key, curve, seconds, stage.
struct Jeans(Vec<(String, Curve, f64, Stage)>);

impl Jeans {
    fn new() -> Jeans {
        let file = vectors();
        let row = |c: &Value| {
            let curve = curve(group(text(&c["testlet"])), number(&c["a"]), &numbers(&c["b"]));
            (text(&c["id"]).to_owned(), curve, number(&c["seconds"]), stage(text(&c["state"])))
        };
        Jeans(file["jeans_checks"].as_array().expect("checks").iter().map(row).collect())
    }

    fn curve(&self, key: &str) -> &Curve {
        self.0.iter().find(|row| row.0 == key).map(|row| &row.1).unwrap_or_else(|| panic!("no check {key}"))
    }

    /// Answers as the vectors give them: a list of checks with weights, or a table of check and level. Usual care.
    fn evidence(&self, answers: &Value) -> Vec<Evidence<'_>> {
        let piece = |key: &str, weights| Evidence::new(self.curve(key), weights, Care::Usual).expect("levels agree");
        match answers {
            Value::Array(list) => {
                list.iter().map(|a| piece(text(&a["check"]), Weights::new(numbers(&a["lam"])).expect("weights"))).collect()
            }
            Value::Object(table) => table
                .iter()
                .map(|(key, level)| {
                    let level = level.as_u64().expect("a level") as usize;
                    piece(key, Weights::certain(level, self.curve(key).levels()).expect("a level of the check"))
                })
                .collect(),
            other => panic!("no answers: {other}"),
        }
    }

    fn all_at(&self, care: Care, level: impl Fn(&Curve) -> usize) -> Vec<Evidence<'_>> {
        let weights = |curve: &Curve| Weights::certain(level(curve), curve.levels()).expect("a level");
        self.0.iter().map(|row| Evidence::new(&row.1, weights(&row.1), care).expect("levels agree")).collect()
    }
}

// ---- against the vectors

#[test]
fn curves_agree_with_statsmodels_and_a_published_table() {
    for v in of_kind(&vectors(), "GRM") {
        let (id, inputs, expected, tolerance) = (text(&v["id"]), &v["inputs"], &v["expected"], number(&v["tolerance"]));
        let b = if inputs["b"].is_array() { numbers(&inputs["b"]) } else { vec![number(&inputs["b"])] };
        let curve = curve(Group::Seams, number(&inputs["a"]), &b);
        let at = if inputs["eta"].is_null() { &inputs["theta"] } else { &inputs["eta"] };
        if at.is_array() {
            for (eta, row) in numbers(at).iter().zip(expected.as_array().expect("rows")) {
                all_close(id, &curve.probabilities(*eta), &numbers(row), tolerance);
            }
        } else if !inputs["eps"].is_null() {
            let lapse = number(&inputs["eps"]);
            close(id, Care::Usual.lapse(), lapse, 0.0);
            let found: Vec<f64> = curve.probabilities(number(at)).iter().map(|p| (1.0 - lapse) * p + lapse / 4.0).collect();
            all_close(id, &found, &numbers(expected), tolerance);
        } else {
            // Fisher information, sum of P'^2 / P, with the derivative taken numerically: it checks the curve's shape.
            let (eta, h) = (number(at), 1e-3);
            let p = curve.probabilities(eta);
            let [down2, down, up, up2] = [-2.0, -1.0, 1.0, 2.0].map(|k| curve.probabilities(eta + k * h));
            let slope = |k: usize| (8.0 * (up[k] - down[k]) - (up2[k] - down2[k])) / (12.0 * h);
            let information: f64 = (0..p.len()).map(|k| slope(k).powi(2) / p[k]).sum();
            if expected.is_object() {
                close(id, p[1], number(&expected["p"]), tolerance);
                close(id, information, number(&expected["info"]), tolerance);
            } else {
                close(id, information, number(expected), tolerance);
            }
        }
    }
}

#[test]
fn thresholds_from_shares_agree_with_scipy() {
    for v in of_kind(&vectors(), "DER") {
        let (inputs, id) = (&v["inputs"], text(&v["id"]));
        let power = if number(&inputs["power"]) == 5.0 { Power::Telling } else { Power::Faint };
        close(id, power.slope(), number(&inputs["a"]), 0.0);
        let group = if number(&inputs["testlet_sigma"]) == 1.0 { Group::Stitching } else { Group::Seams };
        let found = thresholds(power, group, &numbers(&inputs["shares"])).expect("shares");
        all_close(id, &found, &numbers(&v["expected"]), number(&v["tolerance"]));
    }
}

#[test]
fn readings_agree_with_scipy() {
    for v in of_kind(&vectors(), "SOFT") {
        let levels = v["inputs"]["cats"].as_array().expect("levels");
        let spans = levels.iter().map(|level| {
            level.as_array().expect("spans").iter().map(|span| (number(&span[0]), number(&span[1]))).collect::<Vec<_>>()
        });
        let found = Weights::of_reading(number(&v["inputs"]["value"]), number(&v["inputs"]["u"]), spans).expect("a reading");
        all_close(text(&v["id"]), found.parts(), &numbers(&v["expected"]), number(&v["tolerance"]));
    }
}

#[test]
fn beliefs_agree_with_quadrature_and_a_discrete_network() {
    let (jeans, with_groups, without) = (Jeans::new(), Tables::new(), Tables::without_groups());
    for v in of_kind(&vectors(), "POST") {
        let (id, expected, tolerance) = (text(&v["id"]), &v["expected"], number(&v["tolerance"]));
        let evidence = jeans.evidence(&v["inputs"]["answers"]);
        let tables = if v["inputs"]["model"]["testlet_sigma"] == 0 { &without } else { &with_groups };
        let belief = Belief::new(tables, &evidence);
        all_close(id, &belief.bands().all(), &numbers(&expected["bands"]), tolerance);
        if !expected["mean"].is_null() {
            close(id, belief.mean(), number(&expected["mean"]), tolerance);
            close(id, belief.sd(), number(&expected["sd"]), tolerance);
            close(id, belief.log_evidence(), number(&expected["log_evidence"]), tolerance);
        }
        if !expected["independence_mean"].is_null() {
            let belief = Belief::new(&without, &evidence);
            close(id, belief.mean(), number(&expected["independence_mean"]), tolerance);
            close(id, belief.sd(), number(&expected["independence_sd"]), tolerance);
        }
    }
}

/// The steps of the grid leave less than 1e-8, also on the harshest sheets. The expected values of POST-08 to POST-10 come from
/// steps of 0.1.
#[test]
fn the_grid_is_as_good_as_one_three_times_finer() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    for v in of_kind(&vectors(), "POST").iter().filter(|v| v["inputs"]["answers"].is_object()) {
        let belief = Belief::new(&tables, &jeans.evidence(&v["inputs"]["answers"]));
        all_close(text(&v["id"]), &belief.bands().all(), &numbers(&v["expected"]["bands"]), 1e-8);
        close(text(&v["id"]), belief.mean(), number(&v["expected"]["mean"]), 1e-8);
        close(text(&v["id"]), belief.sd(), number(&v["expected"]["sd"]), 1e-8);
    }
}

#[test]
fn the_worth_of_a_check_agrees_with_mutual_information_of_the_joint_table() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    for v in of_kind(&vectors(), "NEXT").iter().filter(|v| !v["inputs"]["check"].is_null()) {
        let (id, tolerance) = (text(&v["id"]), number(&v["tolerance"]));
        let belief = Belief::new(&tables, &jeans.evidence(&v["inputs"]["answers"]));
        let found = prospect(&tables, &belief, jeans.curve(text(&v["inputs"]["check"])));
        close(id, found.bits, number(&v["expected"]["bits"]), tolerance);
        all_close(id, &found.answers, &numbers(&v["expected"]["answer_probabilities"]), tolerance);
        close(id, belief.bands().entropy(), number(&v["expected"]["band_entropy_bits"]), tolerance);
    }
}

#[test]
fn the_six_best_next_checks_come_in_the_order_of_the_vectors() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    for v in of_kind(&vectors(), "NEXT").iter().filter(|v| v["inputs"]["check"].is_null()) {
        let (id, tolerance) = (text(&v["id"]), number(&v["tolerance"]));
        let answers = &v["inputs"]["answers"];
        let answered: Vec<&str> = answers.as_array().expect("a list").iter().map(|a| text(&a["check"])).collect();
        let reached: Vec<Stage> =
            v["inputs"]["states_reached"].as_array().expect("a list").iter().map(|s| stage(text(s))).collect();
        let open: Vec<_> = jeans.0.iter().filter(|row| !answered.contains(&row.0.as_str())).collect();
        let candidates: Vec<_> = open.iter().map(|row| Candidate { curve: &row.1, seconds: row.2, stage: row.3 }).collect();
        let belief = Belief::new(&tables, &jeans.evidence(answers));
        let to_reach = |stage: Stage| if reached.contains(&stage) { 0.0 } else { stage.seconds_to_reach() };
        let ranked = ranking(&tables, &belief, &candidates, to_reach);
        for (worth, expected) in ranked.iter().zip(v["expected"].as_array().expect("a list")) {
            assert_eq!(open[worth.candidate].0, text(&expected["check"]), "{id}");
            close(id, worth.per_second(), number(&expected["bits_per_second"]), tolerance);
            close(id, worth.seconds, number(&expected["seconds"]), 1e-12);
        }
    }
}

#[test]
fn what_each_answer_moved_agrees_with_a_path_of_finite_differences() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    for v in of_kind(&vectors(), "WHY") {
        let (id, tolerance, answers) = (text(&v["id"]), number(&v["tolerance"]), &v["inputs"]["answers"]);
        let evidence = jeans.evidence(answers);
        let found = contributions(&tables, &evidence);
        let expected = &v["expected"]["contributions"];
        let expected: Vec<f64> = match answers.as_object() {
            Some(table) => table.keys().map(|key| number(&expected[key])).collect(),
            None => numbers(expected),
        };
        all_close(id, &found, &expected, tolerance);
        close(id, found.iter().sum(), number(&v["expected"]["total"]), tolerance);
        close(id, found.iter().sum(), Belief::new(&tables, &evidence).mean(), 1e-12);
    }
}

#[test]
fn how_a_group_stands_agrees_with_a_double_integral() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    for v in of_kind(&vectors(), "ASPECT") {
        let (id, tolerance) = (text(&v["id"]), number(&v["tolerance"]));
        let belief = Belief::new(&tables, &jeans.evidence(&v["inputs"]["answers"]));
        let found = belief.group(group(text(&v["inputs"]["group"])));
        close(id, found.mean, number(&v["expected"]["mean"]), tolerance);
        close(id, found.sd, number(&v["expected"]["sd"]), tolerance);
        // The aspect rests on that one group here, so it stands where the group stands.
        assert_eq!(belief.aspect(Aspect::Making), Some(found));
        assert_eq!(found.answers, 2);
    }
}

#[test]
fn the_shortest_run_of_bands_is_that_of_the_vectors() {
    for v in of_kind(&vectors(), "SET") {
        let bands = Bands::new(std::array::from_fn(|k| number(&v["inputs"]["bands"][k]))).expect("probabilities");
        let (run, expected) = (bands.shortest_run(0.8), &v["expected"]);
        assert_eq!(
            (run.first.index() as u64, run.last.index() as u64),
            (expected["first"].as_u64().expect("a place"), expected["last"].as_u64().expect("a place"))
        );
        close(text(&v["id"]), run.mass, number(&expected["mass"]), number(&v["tolerance"]));
    }
}

/// `vectors/journey.py` integrates over quality, reading error and group errors by themselves, with none of this crate's shortcuts.
#[test]
fn a_whole_journey_agrees_with_independent_quadrature_after_every_act() {
    let acts: Value = serde_json::from_str(include_str!("vectors/journey.acts.json")).expect("JSON");
    let expected: Value = serde_json::from_str(include_str!("vectors/journey.json")).expect("JSON");
    assert!(number(&expected["last_act_differs_from_nested_quad_by"]) < 1e-10, "the two quadratures must agree first");
    let acts = acts["acts"].as_array().expect("acts");
    let beliefs = expected["beliefs"].as_array().expect("beliefs");
    assert_eq!(acts.len(), beliefs.len());
    let curves: Vec<Curve> =
        acts.iter().map(|a| curve(group(text(&a["group"])), number(&a["slope"]), &numbers(&a["thresholds"]))).collect();
    let tables = Tables::new();
    let mut evidence = Vec::new();
    let mut going = Belief::new(&tables, &[]);
    let mut worst = 0.0_f64;
    for ((act, curve), expected) in acts.iter().zip(&curves).zip(beliefs) {
        if act["cannot_tell"].is_null() {
            let care = match text(&act["care"]) {
                "careful" => Care::Careful,
                "usual" => Care::Usual,
                _ => Care::Unsure,
            };
            let level = |value: &Value| value.as_u64().expect("a level") as usize;
            let weights = if !act["level"].is_null() {
                Weights::certain(level(&act["level"]), curve.levels())
            } else if !act["between"].is_null() {
                Weights::between(level(&act["between"][0]), level(&act["between"][1]), curve.levels())
            } else {
                let end = |value: &Value, open| value.as_f64().unwrap_or(open);
                let spans = act["reading"]["spans"].as_array().expect("levels").iter().map(|level| {
                    let spans = level.as_array().expect("spans").iter();
                    spans.map(|s| (end(&s[0], f64::NEG_INFINITY), end(&s[1], f64::INFINITY))).collect::<Vec<_>>()
                });
                Weights::of_reading(number(&act["reading"]["value"]), number(&act["reading"]["spread"]), spans)
            };
            let piece = Evidence::new(curve, weights.expect("weights"), care).expect("levels agree");
            going = going.after(&tables, &piece);
            evidence.push(piece);
        }
        for belief in [&Belief::new(&tables, &evidence), &going] {
            let mut found = belief.bands().all().to_vec();
            found.extend([belief.mean(), belief.sd(), belief.log_evidence()]);
            let mut wanted = numbers(&expected["bands"]);
            wanted.extend(["mean", "sd", "log_evidence"].map(|key| number(&expected[key])));
            all_close(text(&expected["check"]), &found, &wanted, 1e-6);
            worst = found.iter().zip(&wanted).map(|(f, w)| (f - w).abs()).fold(worst, f64::max);
        }
    }
    assert!(worst < 1e-8, "the agreement is better than asked for, and must stay so: {worst}");
}

// ---- answers at the edge

#[test]
fn a_value_on_a_border_counts_for_both_sides() {
    let spans = [[(f64::NEG_INFINITY, 6.0)], [(6.0, 7.0)], [(7.0, f64::INFINITY)]];
    for spread in [0.0, 1e-300, 1e-9] {
        let weights = Weights::of_reading(7.0, spread, spans).expect("a reading");
        all_close("on the border", weights.parts(), &[0.0, 0.5, 0.5], 1e-12);
    }
}

#[test]
fn a_reading_far_outside_goes_to_the_nearest_level() {
    let spans = || [[(0.0, 1.0)], [(1.0, 2.0)], [(5.0, 6.0)]];
    for (value, expected) in
        [(1e9, [0.0, 0.0, 1.0]), (-1e9, [1.0, 0.0, 0.0]), (f64::MAX, [0.0, 0.0, 1.0]), (3.0, [0.0, 1.0, 0.0])]
    {
        assert_eq!(Weights::of_reading(value, 1e-3, spans()).expect("a reading").parts(), expected, "{value}");
    }
    assert_eq!(Weights::of_reading(3.5, 0.0, spans()).expect("a reading").parts(), [0.0, 0.5, 0.5], "as far from both");
}

#[test]
fn a_reading_without_sense_is_refused() {
    let spans = || [[(0.0, 1.0)], [(1.0, 2.0)]];
    assert_eq!(Weights::of_reading(f64::NAN, 0.1, spans()), Err(WeightsError::ValueNotFinite));
    assert_eq!(Weights::of_reading(f64::INFINITY, 0.1, spans()), Err(WeightsError::ValueNotFinite));
    for spread in [f64::NAN, f64::INFINITY, -0.1] {
        assert_eq!(Weights::of_reading(0.5, spread, spans()), Err(WeightsError::SpreadNotFinite));
    }
    assert_eq!(Weights::of_reading(0.5, 0.1, [[(1.0, 0.0)]]), Err(WeightsError::BadSpan));
    assert_eq!(Weights::of_reading(0.5, 0.1, [[(f64::NAN, 0.0)]]), Err(WeightsError::BadSpan));
    assert_eq!(Weights::of_reading(0.5, 0.1, [[(0.0, 0.0); 0]; 2]), Err(WeightsError::NoSpans));
    assert_eq!(Weights::new([0.0, 0.0]), Err(WeightsError::NotWeights));
    assert_eq!(Weights::new([f64::NAN, 1.0]), Err(WeightsError::NotWeights));
    assert_eq!(Weights::certain(3, 3), Err(WeightsError::NoSuchLevel));
    assert_eq!(thresholds(Power::Fair, Group::Cloth, &[1.0]), Err(SharesError::TooFew));
    assert_eq!(thresholds(Power::Fair, Group::Cloth, &[1.0, f64::NAN]), Err(SharesError::NotPositive));
    let curve = curve(Group::Cloth, 1.0, &[0.0]);
    let three = Weights::certain(0, 3).expect("a level");
    assert_eq!(Evidence::new(&curve, three, Care::Usual).err(), Some(LevelsDiffer { curve: 2, weights: 3 }));
}

#[test]
fn no_evidence_is_the_market_itself() {
    let belief = Belief::new(&Tables::new(), &[]);
    assert_eq!((belief.answers(), belief.sureness()), (0, 0.0));
    assert_eq!(belief.bands().likely(), Band::Sound);
    assert_eq!((belief.strongest(), belief.weakest(), belief.aspect(Aspect::Cloth)), (None, None, None));
    assert!(contributions(&Tables::new(), &[]).is_empty());
}

#[test]
fn hundreds_of_answers_that_contradict_each_other_stay_numbers() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    let best = |curve: &Curve| curve.levels() - 1;
    // Every sheet twenty times over: all worst; all best; groups against each other; and each check against itself.
    let split = |curve: &Curve| {
        if Group::ALL.iter().position(|g| *g == curve.group).expect("a group") % 2 == 0 { 0 } else { curve.levels() - 1 }
    };
    let mut both = jeans.all_at(Care::Careful, |_| 0);
    both.extend(jeans.all_at(Care::Careful, best));
    for sheet in [jeans.all_at(Care::Careful, |_| 0), jeans.all_at(Care::Careful, best), jeans.all_at(Care::Careful, split), both]
    {
        let many: Vec<Evidence<'_>> = std::iter::repeat_n(sheet, 20).flatten().collect();
        let belief = Belief::new(&tables, &many);
        assert!(belief.mean().is_finite() && belief.sd() > 0.0 && belief.log_evidence().is_finite());
        close("bands", belief.bands().all().iter().sum(), 1.0, 1e-9);
        assert!(belief.mean().abs() < 9.0);
        let parts = contributions(&tables, &many);
        close("parts", parts.iter().sum(), belief.mean(), 1e-9);
        for row in &jeans.0 {
            let found = prospect(&tables, &belief, &row.1);
            assert!(found.bits >= 0.0 && found.bits < 2.33);
            close("answers", found.answers.iter().sum(), 1.0, 1e-9);
        }
        for aspect in Aspect::ALL {
            let reading = belief.aspect(aspect).expect("answers");
            assert!(reading.mean.is_finite() && reading.sd.is_finite() && reading.lean_sd.is_finite());
        }
    }
}

#[test]
fn odd_curves_are_harmless() {
    let tables = Tables::new();
    let inf = f64::INFINITY;
    for odd in [
        curve(Group::Cloth, 0.0, &[-1.0, 1.0]),
        curve(Group::Cloth, 1.0, &[0.5, 0.5, 0.5]),
        curve(Group::Cloth, 1.0, &[1.0, -1.0]),
        curve(Group::Cloth, -1.0, &[-1.0, 1.0]),
        curve(Group::Cloth, f64::NAN, &[-1.0, 1.0]),
        curve(Group::Cloth, inf, &[-1.0, 0.0]),
        curve(Group::Cloth, 1.0, &[f64::NAN, inf]),
        curve(Group::Cloth, 1.0, &[]),
    ] {
        for eta in [-inf, -3.0, 0.0, 3.0, inf, f64::NAN] {
            let p = odd.probabilities(eta);
            close("sum", p.iter().sum(), 1.0, 1e-12);
            assert!(p.iter().all(|p| *p >= 0.0), "{odd:?} at {eta}: {p:?}");
        }
        for level in 0..odd.levels() {
            let weights = Weights::certain(level, odd.levels()).expect("a level");
            let sheet = [Evidence::new(&odd, weights, Care::Usual).expect("levels agree")];
            let belief = Belief::new(&tables, &sheet);
            assert!(belief.mean().is_finite() && belief.sd().is_finite(), "{odd:?}");
            close("parts", contributions(&tables, &sheet).iter().sum(), belief.mean(), 1e-12);
            assert!(prospect(&tables, &belief, &odd).bits.is_finite());
        }
    }
    let flat = curve(Group::Cloth, 0.0, &[-1.0, 1.0]);
    let sheet = [Evidence::new(&flat, Weights::certain(2, 3).expect("a level"), Care::Careful).expect("levels agree")];
    close("a flat curve moves nothing", Belief::new(&tables, &sheet).mean(), 0.0, 1e-12);
}

#[test]
fn the_hill_holds_the_belief() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    let belief = Belief::new(&tables, &jeans.evidence(&serde_json::json!({"inseam": 2, "cloth-hand": 2, "pair-match": 1})));
    let hill = belief.hill(601);
    let step = 0.01;
    let mass = |low: f64, high: f64| -> f64 {
        hill.windows(2).filter(|w| w[0].0 > low - 1e-6 && w[1].0 < high + 1e-6).map(|w| step * (w[0].1 + w[1].1) / 2.0).sum()
    };
    let bands = belief.bands();
    close("basic", mass(-1.5, -0.5), bands.probability(Band::Basic), 1e-5);
    close("sound", mass(-0.5, 0.5), bands.probability(Band::Sound), 1e-5);
    close("fine", mass(0.5, 1.5), bands.probability(Band::Fine), 1e-5);
    assert!(belief.hill(0).is_empty());
    assert_eq!(belief.hill(1).len(), 1);
}

#[test]
fn a_weak_aspect_stands_out_and_an_even_garment_has_none() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    let uneven = serde_json::json!({"cloth-hand": 0, "cloth-even": 0, "growth": 0, "inseam": 3, "seat-yoke": 3, "tacks": 3,
        "crotch": 3, "leg-twist": 3, "pair-match": 3});
    let belief = Belief::new(&tables, &jeans.evidence(&uneven));
    assert_eq!(belief.weakest(), Some(Aspect::Cloth));
    assert_eq!(belief.strongest(), Some(Aspect::Making));
    let even = serde_json::json!({"cloth-hand": 1, "growth": 1, "inseam": 1, "seat-yoke": 1, "leg-twist": 1, "pair-match": 1});
    let belief = Belief::new(&tables, &jeans.evidence(&even));
    assert_eq!((belief.weakest(), belief.strongest()), (None, None));
}

#[test]
fn settling_counts_each_stage_once_and_gives_up_where_nothing_is_left_to_ask() {
    let (jeans, tables) = (Jeans::new(), Tables::new());
    let candidates: Vec<_> = jeans.0.iter().map(|row| Candidate { curve: &row.1, seconds: row.2, stage: row.3 }).collect();
    let start = Belief::new(&tables, &[]);
    let ranked = ranking(&tables, &start, &candidates, Stage::seconds_to_reach);
    let all = settling(&tables, &start, &candidates, &ranked, Stage::seconds_to_reach);
    let (eighty, ninety) = (all.to_eighty.expect("jeans settle"), all.to_ninety.expect("jeans settle"));
    assert!(0.0 < eighty && eighty <= ninety && ninety < 465.0, "{all:?}");
    // By hand: walk the ranking, giving the likeliest answer by beliefs made anew, until a pair of bands holds 0.8.
    let (mut pieces, mut seconds, mut reached) = (Vec::new(), 0.0, Vec::new());
    for worth in &ranked {
        let belief = Belief::new(&tables, &pieces);
        if belief.bands().heaviest(2).mass >= 0.8 {
            break;
        }
        let row = &jeans.0[worth.candidate];
        let answers = prospect(&tables, &belief, &row.1).answers;
        let level = (0..answers.len()).max_by(|a, b| answers[*a].total_cmp(&answers[*b])).expect("answers");
        let weights = Weights::certain(level, answers.len()).expect("a level");
        pieces.push(Evidence::new(&row.1, weights, Care::Usual).expect("levels agree"));
        seconds += row.2 + if reached.contains(&row.3) { 0.0 } else { row.3.seconds_to_reach() };
        reached.push(row.3);
    }
    assert!(pieces.len() >= 2, "more than one check is needed, or a stage could not be charged twice");
    close("seconds to eighty", eighty, seconds, 1e-9);
    let none = settling(&tables, &start, &[], &[], Stage::seconds_to_reach);
    assert_eq!((none.to_eighty, none.to_ninety), (None, None));
    let sure = Belief::new(&tables, &jeans.all_at(Care::Usual, |_| 0));
    let done = settling(&tables, &sure, &[], &[], |_| 0.0);
    assert_eq!((done.to_eighty, done.to_ninety), (Some(0.0), Some(0.0)));
}

/// Numbers from 0 to 1, the same on every run (Knuth's 64-bit linear congruence, constants from memory).
struct Draws(u64);

impl Draws {
    fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        let (one, other) = (self.share(), self.share());
        (-2.0 * (1.0 - one).ln()).sqrt() * (std::f64::consts::TAU * other).cos()
    }
}

/// Garments drawn from the model and asked the best check each time. The design's own simulation (another program, garments that
/// depart from the model) found 95 s to a pair at 0.9 in the middle, reached by 81 % of garments.
#[test]
fn settling_is_right_in_the_middle_of_many_garments() {
    let (jeans, tables, mut draws) = (Jeans::new(), Tables::new(), Draws(2026));
    let (mut took, mut ratios) = (Vec::new(), Vec::new());
    for _ in 0..200 {
        let psi = draws.normal() + 0.4 * draws.normal();
        let errors = Group::ALL.map(|group| group.spread() * draws.normal());
        let mut open: Vec<_> = jeans.0.iter().collect();
        let (mut belief, mut seconds, mut reached, mut promised) = (Belief::new(&tables, &[]), 0.0, Vec::new(), None);
        while belief.bands().heaviest(2).mass < 0.9 && !open.is_empty() {
            let candidates: Vec<_> = open.iter().map(|row| Candidate { curve: &row.1, seconds: row.2, stage: row.3 }).collect();
            let to_reach = |stage: Stage| if reached.contains(&stage) { 0.0 } else { stage.seconds_to_reach() };
            let ranked = ranking(&tables, &belief, &candidates, to_reach);
            if belief.answers() == 6 {
                let estimate = settling(&tables, &belief, &candidates, &ranked, to_reach);
                promised = estimate.to_ninety.map(|more| (seconds, more));
            }
            let row = open.remove(ranked[0].candidate);
            seconds += ranked[0].seconds;
            reached.push(row.3);
            let eta = psi + errors[Group::ALL.iter().position(|g| *g == row.1.group).expect("a group")];
            let (levels, slip) = (row.1.levels(), draws.share() < Care::Usual.lapse());
            let mut left = draws.share();
            let level = if slip {
                (left * levels as f64) as usize
            } else {
                let passed = |p: &&f64| {
                    left -= **p;
                    left > 0.0
                };
                row.1.probabilities(eta).iter().take_while(passed).count().min(levels - 1)
            };
            let weights = Weights::certain(level, levels).expect("a level");
            belief = belief.after(&tables, &Evidence::new(&row.1, weights, Care::Usual).expect("levels agree"));
        }
        if belief.bands().heaviest(2).mass >= 0.9 {
            took.push(seconds);
            ratios.extend(promised.map(|(then, more)| ((seconds - then) / more).ln()));
        }
    }
    let middle = |list: &mut Vec<f64>| {
        list.sort_by(f64::total_cmp);
        list[list.len() / 2]
    };
    assert!((140..=180).contains(&took.len()), "{} of 200 settle", took.len());
    assert!((80.0..=120.0).contains(&middle(&mut took)), "{} s in the middle", middle(&mut took));
    assert!(ratios.len() > 50 && middle(&mut ratios).abs() < 0.25, "{} of {}", middle(&mut ratios), ratios.len());
}

// ---- laws

/// Any sheet of up to 30 answers on the jeans checks, hard or soft, with any care.
fn sheet() -> impl Strategy<Value = Vec<(usize, Vec<f64>, Care)>> {
    let care = prop_oneof![Just(Care::Careful), Just(Care::Usual), Just(Care::Unsure)];
    let answer = (0..25_usize, prop::collection::vec(0.0..1.0_f64, 4), any::<bool>(), care);
    let answer = answer.prop_map(|(check, soft, hard, care)| {
        let largest = soft.iter().copied().fold(0.0, f64::max);
        let weights = soft.iter().map(|w| if hard { f64::from(u8::from(*w == largest)) } else { w + 1e-3 }).collect();
        (check, weights, care)
    });
    prop::collection::vec(answer, 0..30)
}

fn evidence<'a>(jeans: &'a Jeans, sheet: &[(usize, Vec<f64>, Care)]) -> Vec<Evidence<'a>> {
    let piece = |(check, weights, care): &(usize, Vec<f64>, Care)| {
        let curve = &jeans.0[*check].1;
        let weights = &weights[..curve.levels()];
        // The hard answer may have been the level that a shorter check does not have.
        let weights = Weights::new(weights.iter().copied()).or_else(|_| Weights::certain(0, curve.levels()));
        Evidence::new(curve, weights.expect("weights"), *care).expect("levels agree")
    };
    sheet.iter().map(piece).collect()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(64) })]

    #[test]
    fn probabilities_of_answers_sum_to_one(slope in 0.0..5.0_f64, mut b in prop::collection::vec(-6.0..6.0_f64, 0..6), eta in -20.0..20.0_f64) {
        b.sort_by(f64::total_cmp);
        let p = curve(Group::Trims, slope, &b).probabilities(eta);
        prop_assert!((p.iter().sum::<f64>() - 1.0).abs() < 1e-12 && p.iter().all(|p| *p >= 0.0));
    }

    #[test]
    fn weights_of_any_reading_sum_to_one(value in -1e3..1e3_f64, spread in 0.0..50.0_f64, a in -10.0..10.0_f64, width in 0.0..10.0_f64) {
        let spans = [vec![(f64::NEG_INFINITY, a), (a + 2.0 * width, f64::INFINITY)], vec![(a, a + width)], vec![(a + width, a + 2.0 * width)]];
        let weights = Weights::of_reading(value, spread, spans).expect("a reading");
        prop_assert!((weights.parts().iter().sum::<f64>() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn bands_sum_to_one_and_the_order_of_answers_does_not_matter(sheet in sheet(), turn in 0..30_usize) {
        let (jeans, tables) = (Jeans::new(), Tables::new());
        let mut pieces = evidence(&jeans, &sheet);
        let one = Belief::new(&tables, &pieces);
        prop_assert!((one.bands().all().iter().sum::<f64>() - 1.0).abs() < 1e-9);
        if !pieces.is_empty() {
            let by = turn % pieces.len();
            pieces.rotate_left(by);
        }
        pieces.reverse();
        let other = Belief::new(&tables, &pieces);
        let grown = pieces.iter().fold(Belief::new(&tables, &[]), |belief, piece| belief.after(&tables, piece));
        for belief in [other, grown] {
            prop_assert!((one.mean() - belief.mean()).abs() < 1e-11 && (one.sd() - belief.sd()).abs() < 1e-11);
            prop_assert!((one.log_evidence() - belief.log_evidence()).abs() < 1e-9);
            prop_assert_eq!(one.answers(), belief.answers());
        }
    }

    #[test]
    fn one_more_check_never_promises_less_than_nothing_nor_more_than_is_open(sheet in sheet()) {
        let (jeans, tables) = (Jeans::new(), Tables::new());
        let belief = Belief::new(&tables, &evidence(&jeans, &sheet));
        for row in &jeans.0 {
            let found = prospect(&tables, &belief, &row.1);
            prop_assert!((0.0..=belief.bands().entropy() + 1e-9).contains(&found.bits));
            prop_assert!((found.answers.iter().sum::<f64>() - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn what_answers_promised_is_what_they_bring_on_average(sheet in sheet(), check in 0..25_usize) {
        let (jeans, tables) = (Jeans::new(), Tables::new());
        let belief = Belief::new(&tables, &evidence(&jeans, &sheet));
        let curve = &jeans.0[check].1;
        let found = prospect(&tables, &belief, curve);
        // Expected fall of entropy, by making the belief anew for each answer: another road to the same number.
        let mut open = 0.0;
        for (level, probability) in found.answers.iter().enumerate() {
            let weights = Weights::certain(level, curve.levels()).expect("a level");
            let next = belief.after(&tables, &Evidence::new(curve, weights, Care::Usual).expect("levels agree"));
            prop_assert!(((next.log_evidence() - belief.log_evidence()).exp() - probability).abs() < 1e-8);
            open += probability * next.bands().entropy();
        }
        prop_assert!((belief.bands().entropy() - open - found.bits).abs() < 1e-8);
    }

    #[test]
    fn what_answers_moved_adds_up(sheet in sheet()) {
        let (jeans, tables) = (Jeans::new(), Tables::new());
        let pieces = evidence(&jeans, &sheet);
        let parts = contributions(&tables, &pieces);
        prop_assert_eq!(parts.len(), pieces.len());
        prop_assert!((parts.iter().sum::<f64>() - Belief::new(&tables, &pieces).mean()).abs() < 1e-9);
    }

    #[test]
    fn an_answer_that_says_nothing_moves_nothing(sheet in sheet(), check in 0..25_usize) {
        let (jeans, tables) = (Jeans::new(), Tables::new());
        let mut pieces = evidence(&jeans, &sheet);
        let before = Belief::new(&tables, &pieces);
        let curve = &jeans.0[check].1;
        let even = Weights::new(vec![1.0; curve.levels()]).expect("weights");
        pieces.push(Evidence::new(curve, even, Care::Usual).expect("levels agree"));
        let after = Belief::new(&tables, &pieces);
        prop_assert!((before.mean() - after.mean()).abs() < 1e-11 && (before.sd() - after.sd()).abs() < 1e-11);
        let moved = contributions(&tables, &pieces).pop().expect("its part");
        prop_assert!(moved.abs() < 1e-9);
    }
}
