//! The room of many garments against outside authorities: the model's vectors and others from scipy and statsmodels
//! (`vectors/rack.json`, made by `vectors/rack.py`), what must hold of any rack, and a seeded market drawn from the model's own prior.

mod drawing;
#[path = "rack/market.rs"]
mod market;

use drawing::{bare, check, day, judged, point};
use garment_assay::garment::{Act, Answer, Appraiser, Garment, Given, Guess, Readings, Shown, Taped};
use garment_assay::measure::STITCH_DENSITY;
use garment_assay::quantity::{Amount, Unit};
use garment_assay::rack::{
    Beside, BesideFault, Between, Bias, Explained, GapShare, Habit, HitRate, Learned, Likeness, Mixture, Name, Range, Reference,
    Score, Spreads, Stand, StudentT, Traits, Trend, Verdict, WhyNoScore, Width, gap, learn, left, likely, reference, reveal,
    traits,
};
use garment_assay::trade::{Currency, PriceKind, Ticket};
use proptest::prelude::*;
use serde_json::Value;

fn vectors() -> Value {
    serde_json::from_str(include_str!("vectors/rack.json")).expect("vectors")
}

/// The model's vectors whose name starts so.
fn group(name: &str) -> Vec<Value> {
    let all = vectors()["vectors"].as_array().expect("a list").clone();
    let found: Vec<Value> = all.into_iter().filter(|v| v["id"].as_str().is_some_and(|id| id.starts_with(name))).collect();
    assert!(!found.is_empty(), "{name}");
    found
}

fn f(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

fn list(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(f).collect()
}

#[track_caller]
fn near(one: f64, other: f64, tolerance: f64) {
    assert!((one - other).abs() <= tolerance, "{one} is not {other}");
}

fn t(of: &Value) -> StudentT {
    StudentT::new(f(&of["df"]), f(&of["centre"]), f(&of["scale"])).expect("a distribution")
}

// Distributions.

#[test]
fn student_t_is_that_of_scipy() {
    for row in vectors()["student"].as_array().expect("rows") {
        let t = StudentT::new(f(&row["df"]), 0.0, 1.0).expect("degrees");
        // At 1e-7 scipy 1.17.1 errs by 1.3e-11: with one degree the area is 1/2 + atan(x)/pi, which is 0.5000000318309886.
        near(t.below(f(&row["x"])), f(&row["below"]), 2e-11);
        near(t.ln_density(f(&row["x"])), f(&row["ln_density"]), 1e-10);
        // Half a degree has quantiles of 1e11: there the digits are relative.
        near(t.quantile(f(&row["p"])), f(&row["quantile"]), 1e-9 * f(&row["quantile"]).abs().max(1.0));
    }
    for v in group("TQ") {
        let t = StudentT::new(f(&v["inputs"]["df"]), 0.0, 1.0).expect("degrees");
        near(t.quantile(f(&v["inputs"]["p"])), f(&v["expected"]), f(&v["tolerance"]));
    }
    for v in group("TC") {
        let t = StudentT::new(f(&v["inputs"]["df"]), 0.0, 1.0).expect("degrees");
        near(t.below(f(&v["inputs"]["x"])), f(&v["expected"]), f(&v["tolerance"]));
    }
    for v in group("Z-") {
        near(t(&v["inputs"]).below(f(&v["inputs"]["log_ticket"])), f(&v["expected"]), f(&v["tolerance"]));
    }
}

#[test]
fn the_scores_of_a_student_t_are_those_of_scoringrules_and_scipy() {
    let student = group("CRPS").into_iter().filter(|v| v["inputs"].get("df").is_some());
    for v in student {
        near(t(&v["inputs"]).ranked_score(f(&v["inputs"]["y"])).expect("degrees"), f(&v["expected"]), f(&v["tolerance"]));
    }
    // A normal is a Student t with degrees beyond counting; 1e8 leave a difference of about 1e-9.
    for v in group("CRPS").into_iter().filter(|v| v["inputs"].get("mu").is_some()) {
        let normal = StudentT::new(1e8, f(&v["inputs"]["mu"]), f(&v["inputs"]["sigma"])).expect("a normal");
        near(normal.ranked_score(f(&v["inputs"]["y"])).expect("degrees"), f(&v["expected"]), 1e-6);
    }
    for v in group("LOGS") {
        near(-t(&v["inputs"]).ln_density(f(&v["inputs"]["y"])), f(&v["expected"]), f(&v["tolerance"]));
    }
}

#[test]
fn a_mixture_has_the_quantiles_that_root_finding_gives() {
    for v in group("MIX") {
        let parts = v["inputs"]["parts"].as_array().expect("parts");
        let mixture = Mixture::new(parts.iter().map(|part| (f(&part["weight"]), t(part)))).expect("a mixture");
        for (p, expected) in [0.1, 0.5, 0.9].into_iter().zip(list(&v["expected"])) {
            near(mixture.quantile(p), expected, f(&v["tolerance"]));
        }
    }
}

/// The textbook's normal is the process with nothing shared but the level, whose prior mean counts one garment. Everything is taken ten times as
/// large, because a name brings a spread of its own that the textbook's small one would not hold.
#[test]
fn one_level_and_nothing_else_is_the_textbooks_normal_with_unknown_mean_and_variance() {
    for v in group("NIG") {
        let (given, expected) = (&v["inputs"], &v["expected"]);
        let (premium, spread) = Name::StoreLabel.premium();
        let variance = 100.0 * f(&given["sigma0_sq"]);
        let spreads = Spreads {
            own: (variance - spread * spread).sqrt(),
            degrees: f(&given["nu0"]),
            level: (variance / f(&given["kappa0"])).sqrt(),
            slope: 0.0,
            family: 0.0,
            shop: 0.0,
            maker: 0.0,
            like: 0.0,
            reach: 1.0,
        };
        let wing = || traits_of(10.0 * f(&given["mu0"]) - premium, 0.0, "wings", None, None, Some(Name::StoreLabel));
        let wings = list(&given["y"]).into_iter().map(|y| Reference::new(wing(), 10.0 * y).expect("a wing")).collect();
        let learned = learn(spreads, wings, false);
        let likely = likely(&learned, &wing()).expect("a prediction");
        let (_, t) = likely.prediction().parts()[0];
        near(t.degrees(), f(&expected["predictive_df"]), 0.0);
        near(t.centre() / 10.0, f(&expected["mu_n"]), 1e-9);
        near(t.scale() / 10.0, f(&expected["predictive_scale"]), 1e-9);
        for (p, quantile) in [0.1, 0.9].into_iter().zip(list(&expected["predictive_p10_p90"])) {
            near(likely.prediction().quantile(p) / 10.0, quantile, 1e-9);
        }
    }
}

fn traits_of(mu: f64, sigma: f64, family: &str, shop: Option<&str>, maker: Option<&str>, name: Option<Name>) -> Traits {
    Traits {
        explained: Explained::new(mu, sigma).expect("a build-up"),
        family: family.to_owned(),
        shop: shop.map(str::to_owned),
        maker: maker.map(str::to_owned),
        name,
    }
}

// The likely ticket.

/// A garment of the model's ticket vectors, which give mean and variance of the name in sum with those of the build-up.
fn of_vector(garment: &Value) -> Traits {
    let mean = f(&garment["tier_mean"]);
    let name = Name::ALL.into_iter().find(|name| name.premium().0 == mean).expect("a name");
    let sigma = (f(&garment["extra_variance"]) - name.premium().1.powi(2)).max(0.0).sqrt();
    let word = |key: &str| garment[key].as_str();
    traits_of(f(&garment["built_mu"]), sigma, word("family").expect("a family"), word("shop"), word("maker"), Some(name))
}

fn predicted(learned: &Learned, traits: &Traits) -> StudentT {
    likely(learned, traits).expect("a prediction").prediction().parts()[0].1
}

#[test]
fn likely_tickets_are_those_of_the_multivariate_t_inverted_numerically() {
    let all = group("TICKET");
    for v in &all {
        // One of them is another's garments with a sale price among the tickets.
        let base = v["inputs"].get("as_in").map_or(v, |id| all.iter().find(|v| v["id"] == *id).expect("a vector"));
        let learned = learn(Spreads::USUAL, references_of(&base["inputs"], v["inputs"].get("log_tickets")), v != base);
        let traits = of_vector(&base["inputs"]["new"]);
        let (t, expected, tolerance) = (predicted(&learned, &traits), &v["expected"], f(&v["tolerance"]));
        near(t.degrees(), f(&expected["df"]), 0.0);
        near(t.centre(), f(&expected["centre"]), tolerance);
        near(t.scale(), f(&expected["scale"]), tolerance);
        if let Some(quantiles) = expected.get("log_p10_p50_p90") {
            let likely = likely(&learned, &traits).expect("a prediction");
            let got = [likely.low, likely.middle, likely.high].map(f64::ln);
            got.into_iter().zip(list(quantiles)).for_each(|(got, expected)| near(got, expected, tolerance));
        }
    }
}

fn references_of(inputs: &Value, logs: Option<&Value>) -> Vec<Reference> {
    let known = inputs["references"].as_array().expect("references");
    let logs = logs.map_or_else(|| known.iter().map(|garment| f(&garment["log_ticket"])).collect(), list);
    known.iter().zip(logs).map(|(garment, log)| Reference::new(of_vector(garment), log).expect("a reference")).collect()
}

fn shared() -> (Vec<Reference>, Traits, Value) {
    let v = vectors()["shared"].clone();
    let of = |garment: &Value| {
        let names = ["store", "known", "premium", "designer"];
        let name = names.iter().position(|name| garment["name"] == **name).map(|place| Name::ALL[place]);
        let word = |key: &str| garment[key].as_str();
        let traits = traits_of(
            f(&garment["mu"]),
            f(&garment["sigma"]),
            word("family").expect("a family"),
            word("shop"),
            word("maker"),
            name,
        );
        Traits { explained: traits.explained.with_shop_part(f(&garment["of_shop"])).expect("a part"), ..traits }
    };
    let known = v["references"].as_array().expect("references");
    let references = known.iter().map(|garment| Reference::new(of(garment), f(&garment["log_ticket"])).expect("a reference"));
    (references.collect(), of(&v["new"]), v)
}

#[test]
fn a_shared_multiple_and_each_reference_left_out_are_those_of_weighted_least_squares() {
    let (references, new, v) = shared();
    let learned = learn(Spreads::USUAL, references, false);
    let (t, expected) = (predicted(&learned, &new), &v["expected"]);
    near(t.degrees(), f(&expected["df"]), 0.0);
    near(t.centre(), f(&expected["centre"]), 1e-9);
    near(t.scale(), f(&expected["scale"]), 1e-9);
    for (p, quantile) in [0.1, 0.5, 0.9].into_iter().zip(list(&expected["p10_p50_p90"])) {
        near(t.quantile(p), quantile, 1e-9);
    }
    for (place, below) in list(&v["left_out"]).into_iter().enumerate() {
        near(learned.surprise(place).expect("a reference"), below, 1e-9);
    }
    assert_eq!(learned.surprise(12), None);
}

#[test]
fn lessons_sum_to_how_far_the_references_moved_the_middle_and_the_furthest_comes_first() {
    let (references, new, _) = shared();
    for slips in [false, true] {
        let (none, learned) = (learn(Spreads::USUAL, Vec::new(), slips), learn(Spreads::USUAL, references.clone(), slips));
        let moved = predicted(&learned, &new).centre() - predicted(&none, &new).centre();
        let likely = likely(&learned, &new).expect("a prediction");
        near(likely.lessons().iter().map(|lesson| lesson.by).sum(), moved, 1e-12);
        assert!(likely.lessons().windows(2).all(|pair| pair[0].by.abs() >= pair[1].by.abs()));
        // Whoever stood above what was expected of it by so much, and counts for so much, did just that.
        assert!(likely.lessons().iter().all(|lesson| (lesson.stood * lesson.weight - lesson.by).abs() < 1e-15));
    }
}

#[test]
fn the_order_of_references_teaches_nothing() {
    let (references, new, _) = shared();
    let turned: Vec<Reference> = references.iter().rev().cloned().collect();
    let (one, other) =
        (predicted(&learn(Spreads::USUAL, references, true), &new), predicted(&learn(Spreads::USUAL, turned, true), &new));
    near(one.centre(), other.centre(), 1e-12);
    near(one.scale(), other.scale(), 1e-12);
}

/// The account of the model measures weights against the assumed variance; why they are measured against the estimated one here stands at
/// [`learn`].
#[test]
fn a_ticket_mistyped_tenfold_pulls_less_as_least_squares_with_leverages_has_it() {
    let (mut references, new, _) = shared();
    let right = predicted(&learn(Spreads::USUAL, references.clone(), true), &new).centre();
    let slip = references[4].log_ticket() + 10_f64.ln();
    references[4] = Reference::new(references[4].traits().clone(), slip).expect("a reference");
    let (fooled, wary) = (learn(Spreads::USUAL, references.clone(), false), learn(Spreads::USUAL, references, true));
    let (t, expected) = (predicted(&wary, &new), &vectors()["slips"]["expected"]);
    wary.weights().iter().zip(list(&expected["weights"])).for_each(|(weight, expected)| near(*weight, expected, 1e-9));
    near(t.degrees(), f(&expected["df"]), 1e-9);
    near(t.centre(), f(&expected["centre"]), 1e-9);
    near(t.scale(), f(&expected["scale"]), 1e-9);
    let off = |learned: &Learned| (predicted(learned, &new).centre() - right).abs();
    assert!(off(&wary) < 0.85 * off(&fooled), "{} {}", off(&wary), off(&fooled));
    assert!(wary.weights().iter().enumerate().all(|(place, weight)| place == 4 || *weight > wary.weights()[4]));
}

#[test]
fn a_ticket_mistyped_a_hundredfold_is_asked_about_and_counts_least() {
    let tickets = market::market(&mut market::Draw(5), 20);
    let mut references: Vec<Reference> = tickets.into_iter().filter_map(|(traits, log)| Reference::new(traits, log)).collect();
    let asked = |learned: &Learned| {
        let surprise = |place: &usize| learned.surprise(*place).expect("a reference");
        (0..20).filter(|place| !(0.01..=0.99).contains(&surprise(place))).collect::<Vec<_>>()
    };
    // Of twenty honest tickets one lies outside 98 % in one market of three.
    let honest = asked(&learn(Spreads::USUAL, references.clone(), true));
    assert!(!honest.contains(&4) && honest.len() <= 1, "{honest:?}");
    let slip = references[4].log_ticket() + 100_f64.ln();
    references[4] = Reference::new(references[4].traits().clone(), slip).expect("a reference");
    let wary = learn(Spreads::USUAL, references, true);
    assert!(asked(&wary).contains(&4) && asked(&wary).len() <= 2, "{:?}", asked(&wary));
    assert!(wary.surprise(4).expect("a reference") > 0.99 && wary.weights()[4] < 0.5, "{:?}", wary.weights());
    assert!(wary.weights().iter().enumerate().all(|(place, weight)| place == 4 || *weight > wary.weights()[4]));
}

#[test]
fn one_ticket_of_the_shop_narrows_another_there_where_the_multiple_is_not_known() {
    let of = |shop: &str| {
        let traits = traits_of(4.5, 0.5, "jeans", Some(shop), None, Some(Name::Known));
        Traits { explained: traits.explained.with_shop_part(0.41).expect("a part"), ..traits }
    };
    let learned = |shop: &str| learn(Spreads::USUAL, vec![Reference::new(of(shop), 4.7).expect("a reference"); 3], true);
    let scale = |learned: &Learned| predicted(learned, &of("here")).scale();
    let (here, there) = (scale(&learned("here")), scale(&learned("there")));
    assert!(here < 0.95 * there, "{here} {there}");
}

#[test]
fn a_name_that_nobody_told_reaches_far_upwards_and_the_ticket_tells_it() {
    let learned = learn(Spreads::USUAL, Vec::new(), true);
    let unknown = likely(&learned, &traits_of(4.2, 0.3, "jeans", None, None, None)).expect("a prediction");
    let store = likely(&learned, &traits_of(4.2, 0.3, "jeans", None, None, Some(Name::StoreLabel))).expect("a prediction");
    assert!((unknown.high / unknown.middle).ln() > (unknown.middle / unknown.low).ln() + 0.05, "the upper tail is the heavier");
    near((store.high / store.middle).ln(), (store.middle / store.low).ln(), 1e-9);
    assert!(unknown.high > store.high && unknown.factor() > store.factor());
    let after = |log: f64| unknown.names_after(log);
    near(after(4.2).iter().map(|(_, share)| share).sum(), 1.0, 1e-12);
    let designer = |log: f64| after(log)[3].1;
    assert!(designer(3.9) < 0.05 && designer(6.5) > 0.2 && designer(6.5) < 0.95);
    assert_eq!(store.names_after(9.0), [(Name::StoreLabel, 1.0)]);
}

/// The check of the model against itself: seeded markets from its own prior, half a thousand strangers in each cell and more. With a share of
/// 0.8 the standard error of 3000 independent strangers is 0.7 points; three in one market are not quite independent.
#[test]
fn four_in_five_strangers_fall_inside_and_the_error_falls_as_references_grow() {
    let mut draw = market::Draw(2026);
    let counts = [0, 2, 5, 50];
    let mut cells: Vec<(usize, Vec<f64>, Vec<f64>)> = vec![(0, Vec::new(), Vec::new()); counts.len()];
    for _ in 0..1000 {
        let mut garments = market::market(&mut draw, 53);
        let strangers = garments.split_off(50);
        let references: Vec<Reference> =
            garments.into_iter().map(|(traits, log)| Reference::new(traits, log).expect("a reference")).collect();
        for (count, (held, errors, widths)) in counts.iter().zip(&mut cells) {
            let learned = learn(Spreads::USUAL, references[..*count].to_vec(), true);
            for (traits, log) in &strangers {
                let likely = likely(&learned, traits).expect("a prediction");
                *held += usize::from((likely.low..=likely.high).contains(&log.exp()));
                errors.push((log - likely.middle.ln()).abs());
                widths.push(likely.factor());
            }
        }
    }
    let middle = |values: &mut Vec<f64>| {
        values.sort_by(f64::total_cmp);
        values[values.len() / 2]
    };
    let rows: Vec<(f64, f64, f64)> = cells
        .iter_mut()
        .map(|(held, errors, widths)| (*held as f64 / errors.len() as f64, middle(errors), middle(widths)))
        .collect();
    println!("share inside, median error, median factor at {counts:?}: {rows:?}");
    for (count, (share, ..)) in counts.iter().zip(&rows) {
        assert!((0.76..=0.84).contains(share), "{share} with {count} references");
    }
    assert!(rows.windows(2).all(|pair| pair[1].1 < pair[0].1 && pair[1].2 < pair[0].2), "{rows:?}");
}

// What is left.

#[test]
fn what_is_left_is_the_ticket_over_the_build_up_and_says_where_it_stands() {
    let known = traits_of(4.0, 0.3, "jeans", None, None, Some(Name::Known));
    let likely = likely(&learn(Spreads::USUAL, Vec::new(), true), &known).expect("a prediction");
    let asked = left(4.5, &known.explained, &likely).expect("a ticket");
    near(asked.middle, 0.5_f64.exp(), 1e-12);
    // scipy 1.17.1: exp(0.5 -/+ 0.3 * norm.ppf(0.9)).
    near(asked.low, 1.122_473_273_259_072_3, 1e-9);
    near(asked.high, 2.421_689_578_912_274_3, 1e-9);
    near(asked.below, likely.prediction().below(4.5), 1e-15);
    let stand = |p: f64| left(likely.prediction().quantile(p), &known.explained, &likely).expect("a ticket").stand;
    assert_eq!(
        [0.005, 0.05, 0.11, 0.5, 0.89, 0.95, 0.995].map(stand),
        [Stand::FarBelow, Stand::Below, Stand::Within, Stand::Within, Stand::Within, Stand::Above, Stand::FarAbove]
    );
    assert_eq!(left(f64::NAN, &known.explained, &likely), None);
}

// Guesses.

#[test]
fn guesses_score_as_scoringrules_has_it() {
    for v in group("GUESS") {
        let (given, expected, tolerance) = (&v["inputs"], &v["expected"], f(&v["tolerance"]));
        let range = Range::of_prices(f(&given["low"]), Some(f(&given["mid"])), f(&given["high"])).expect("a range");
        let score = Score::of(&range, f(&given["ticket"]).ln()).expect("a ticket");
        near(score.interval, f(&expected["interval_score"]), tolerance);
        near(score.weighted, f(&expected["wis"]), tolerance);
        near(score.points, f(&expected["points"]), tolerance);
    }
    for v in group("PIN") {
        let given = &v["inputs"];
        let range = Range::of_logs(f(&given["q10"]), f(&given["q50"]), f(&given["q90"])).expect("a range");
        let sum: f64 = ["q10", "q50", "q90"].iter().map(|q| f(&v["expected"][*q])).sum();
        near(Score::of(&range, f(&given["y"])).expect("a ticket").weighted, 2.0 / 3.0 * sum, f(&v["tolerance"]));
    }
}

#[test]
fn the_rule_is_proper_whoever_says_what_they_believe_does_best() {
    // Mean score over the 999 even quantiles of a Student t, of its own 80 % range and of others.
    let belief = StudentT::new(8.0, 4.5, 0.4).expect("a belief");
    let outcomes: Vec<f64> = (1..1000).map(|place| belief.quantile(f64::from(place) / 1000.0)).collect();
    let mean = |low: f64, middle: f64, high: f64| {
        let range = Range::of_logs(low, middle, high).expect("a range");
        outcomes.iter().map(|y| Score::of(&range, *y).expect("a ticket").weighted).sum::<f64>()
    };
    let (low, middle, high) = (belief.quantile(0.1), belief.quantile(0.5), belief.quantile(0.9));
    let honest = mean(low, middle, high);
    for by in [-0.2, -0.05, 0.05, 0.2] {
        assert!(
            mean(low + by, middle, high) > honest
                && mean(low, middle + by, high) > honest
                && mean(low, middle, high + by) > honest
        );
    }
}

#[test]
fn the_habit_in_guesses_is_that_of_scipy() {
    for v in group("CAL") {
        let (hits, guesses) = (f(&v["inputs"]["hits"]) as usize, f(&v["inputs"]["guesses"]) as usize);
        let (rate, expected, tolerance) = (HitRate::of(hits, guesses), &v["expected"], f(&v["tolerance"]));
        near(rate.mean, f(&expected["mean"]), tolerance);
        near(rate.low, f(&expected["lo"]), tolerance);
        near(rate.high, f(&expected["hi"]), tolerance);
        near(rate.narrow, f(&expected["p_narrow"]), tolerance);
        let verdict = match expected["message"].as_str().expect("words") {
            "too few to tell" => Verdict::TooFew,
            "ranges look too narrow" => Verdict::TooNarrow,
            "ranges look wider than needed" => Verdict::Wider,
            _ => Verdict::NoClearSign,
        };
        assert_eq!(rate.verdict(guesses), verdict);
    }
    for v in group("WIDTH") {
        let (width, expected, tolerance) = (Width::of(&list(&v["inputs"]["z"])), &v["expected"], f(&v["tolerance"]));
        near(width.middle, f(&expected["median"]), tolerance);
        near(width.low, f(&expected["lo"]), tolerance);
        near(width.high, f(&expected["hi"]), tolerance);
    }
    for v in group("BIAS") {
        let bias = Bias::of(&list(&v["inputs"]["d"])).expect("a belief");
        let (expected, tolerance) = (&v["expected"], f(&v["tolerance"]));
        near(bias.mean, f(&expected["mean"]), tolerance);
        near(bias.low, f(&expected["lo"]), tolerance);
        near(bias.high, f(&expected["hi"]), tolerance);
        near(bias.guesses_low, f(&expected["p_low"]), tolerance);
        assert!(!bias.is_clear());
    }
    let v = &vectors()["trend"];
    let trend = Trend::of(&list(&v["scores"])).expect("twenty");
    near(trend.mean, f(&v["mean"]), 1e-9);
    near(trend.low, f(&v["low"]), 1e-9);
    near(trend.high, f(&v["high"]), 1e-9);
}

/// Chances of the words "too narrow" at one look, by adding up binomial probabilities: an honest person seldom hears them.
#[test]
fn an_honest_person_is_seldom_told_that_their_ranges_are_too_narrow() {
    let told = |guesses: usize, rate: f64| {
        let mut chance = (1.0 - rate).powi(guesses as i32);
        let mut sum = 0.0;
        for hits in 0..=guesses {
            if HitRate::of(hits, guesses).verdict(guesses) == Verdict::TooNarrow {
                sum += chance;
            }
            chance *= (guesses - hits) as f64 / (hits + 1) as f64 * rate / (1.0 - rate);
        }
        sum
    };
    // The model's account, section 5: 1 % at 5, 3 % at 10 and 20; at a true rate of 0.5: 19, 62, 87 %.
    for (guesses, honest, sure) in [(5, 0.01, 0.19), (10, 0.03, 0.62), (20, 0.03, 0.87)] {
        near(told(guesses, 0.8), honest, 0.006);
        near(told(guesses, 0.5), sure, 0.006);
    }
    assert!(told(4, 0.5) == 0.0);
}

fn euros(minor: u64, face_down: bool) -> Act {
    Act::Ticket(Some(Ticket { minor, currency: Currency::Eur, kind: PriceKind::Retail, face_down }))
}

fn guessed(name: &str, low: u64, high: u64) -> Garment {
    let guess = Guess::new(low, high, Currency::Eur, PriceKind::Retail, day()).expect("a guess");
    bare(name).after(Act::Guess(Some(guess.beside(Shown::new(4_000, 8_000, 16_000).expect("a range")))))
}

#[test]
fn a_guess_is_scored_only_once_the_ticket_is_turned_over_and_is_alike() {
    let garment = guessed("g", 6_000, 13_000);
    assert_eq!(reveal(&bare("g")), Err(WhyNoScore::NoGuess));
    assert_eq!(reveal(&garment), Err(WhyNoScore::NoTicket));
    assert_eq!(reveal(&garment.after(euros(0, false))), Err(WhyNoScore::NoTicket));
    assert_eq!(reveal(&garment.after(euros(9_800, true))), Err(WhyNoScore::FaceDown));
    let yen = Ticket { minor: 9_800, currency: Currency::Jpy, kind: PriceKind::Retail, face_down: false };
    assert_eq!(reveal(&garment.after(Act::Ticket(Some(yen)))), Err(WhyNoScore::NotAlike));
    let reveal = reveal(&garment.after(euros(9_800, false))).expect("a score");
    // Without a likeliest price the middle is sqrt(60 * 130).
    near(reveal.yours.middle(), (60.0_f64 * 130.0).sqrt().ln(), 1e-12);
    near(reveal.log_ticket, 98_f64.ln(), 1e-12);
    assert!(reveal.score.held);
    let (_, tool) = reveal.tool.expect("a range");
    near(reveal.lead().expect("both"), tool.weighted - reveal.score.weighted, 1e-15);
    assert!(reveal.lead().expect("both") > 0.0, "narrower and right");
}

#[test]
fn a_habit_says_nothing_before_it_means_something() {
    // Ranges far too narrow and always low.
    let reveals: Vec<_> =
        (0..25).map(|n| reveal(&guessed("g", 6_000 + n, 6_600).after(euros(9_800, false))).expect("a score")).collect();
    for guesses in 0..5 {
        let habit = Habit::of(&reveals[..guesses]);
        assert_eq!((habit.verdict, habit.width, habit.bias, habit.trend, habit.lead), (Verdict::TooFew, None, None, None, None));
        assert!(habit.rate.high - habit.rate.low > 0.35, "and is wide");
    }
    let habit = Habit::of(&reveals[..12]);
    assert_eq!((habit.guesses, habit.rate.hits, habit.verdict), (12, 0, Verdict::TooNarrow));
    assert!(habit.width.expect("enough").low > 2.0 && habit.bias.expect("clear").mean > 0.2 && habit.trend.is_none());
    assert!(habit.lead.expect("enough") < 0.0);
    assert!(Habit::of(&reveals).trend.is_some());
}

// References.

#[test]
fn references_are_in_view_and_the_persons_own_choice() {
    let explained = Explained::new(4.0, 0.3).expect("a build-up");
    let of = |garment: &Garment| reference(garment, traits(garment, explained, Some(" Nobody & Sons "), None), 1.1);
    let garment = bare("g").after(Act::Place("  Market Hall ".to_owned()));
    assert_eq!(of(&garment), None, "no ticket");
    assert_eq!(of(&garment.after(euros(8_995, true))), None, "face down it would be given away");
    let seen = garment.after(euros(8_995, false));
    let known = of(&seen).expect("a reference");
    near(known.log_ticket(), (89.95_f64 * 1.1).ln(), 1e-12);
    assert_eq!((known.traits().shop.as_deref(), known.traits().maker.as_deref()), (Some("market hall"), Some("nobody & sons")));
    assert_eq!(traits(&bare("g"), explained, Some("  "), None).maker, None);
    assert_eq!(traits(&bare("g"), explained, None, None).shop, None);
    assert_eq!(of(&seen.after(Act::Reference(false))), None, "taken out");
    assert_eq!(of(&seen.after(Act::Archived(true))), Some(known.clone()), "put away is out of sight, not forgotten");
    assert_eq!(of(&seen.after(Act::Reference(false)).after(Act::Reference(true))), Some(known));
    let wholesale = Ticket { minor: 8_995, currency: Currency::Eur, kind: PriceKind::Wholesale, face_down: false };
    assert_eq!(of(&garment.after(Act::Ticket(Some(wholesale)))), None);
    assert_eq!(of(&garment.after(euros(0, false))), None);
}

// Side by side.

fn pair(name: &str, hang: &'static str, hand: &'static str) -> Garment {
    bare(name).after(judged("hang", hang)).after(judged("cloth-hand", hand))
}

fn ends(key: &str) -> (&'static str, &'static str) {
    let levels = check(key).levels;
    (levels[0].key, levels[levels.len() - 1].key)
}

fn counted(stitches: f64) -> Act {
    let given = vec![
        Given { input: "count", amount: stitches, unit: Unit::Count },
        Given { input: "length", amount: 76.2, unit: Unit::Millimetre },
    ];
    Act::Answer(check("spi"), Answer::Measured(Readings { instrument: &STITCH_DENSITY, given }))
}

#[test]
fn side_by_side_the_greatest_difference_comes_first_and_a_reading_differs_beyond_its_spread() {
    let ((worst, best), (soft, firm)) = (ends("hang"), ends("cloth-hand"));
    let waist = |cm: f64| {
        let readings = vec![Amount { number: cm, unit: Unit::Centimetre }; 3];
        Act::Measure(point("waist"), Taped::new(readings, false))
    };
    let one = pair("a", worst, soft).after(counted(24.0)).after(waist(41.0));
    let other = pair("b", best, soft).after(counted(36.0)).after(waist(41.02));
    let third = bare("c").after(judged("cloth-hand", firm)).after(counted(36.0)).after(waist(41.0));
    let appraiser = Appraiser::default();
    let appraisals = [&one, &other, &third].map(|garment| appraiser.appraise(garment));
    let beside = Beside::of(&[(&one, &appraisals[0]), (&other, &appraisals[1])]).expect("two");
    let row = |key: &str| beside.checks.iter().find(|row| row.check.key == key).expect("a row").clone();
    assert_eq!((row("hang").places.clone(), row("hang").apart), (vec![Some(0.0), Some(1.0)], 1.0));
    assert_eq!((row("cloth-hand").places, row("cloth-hand").apart), (vec![Some(0.0), Some(0.0)], 0.0));
    assert_eq!((beside.checks[0].check.key, beside.checks.len()), ("hang", 3));
    let stitches = &beside.readings[0];
    assert_eq!((stitches.name(), stitches.unit, stitches.differs), (check("spi").name(), STITCH_DENSITY.unit, true));
    near(stitches.values[1].expect("a reading").0, 12.0, 1e-9);
    let waist = &beside.readings[1];
    assert_eq!((waist.unit, waist.differs), (Unit::Centimetre, false));
    // Three: only the first two have the first check; pairs come in order, and one against another is the other turned round.
    let beside = Beside::of(&[(&one, &appraisals[0]), (&other, &appraisals[1]), (&third, &appraisals[2])]).expect("three");
    assert_eq!(beside.checks.iter().find(|row| row.check.key == "hang").expect("a row").places[2], None);
    assert_eq!(beside.better.iter().map(|(pair, _)| *pair).collect::<Vec<_>>(), [(0, 1), (0, 2), (1, 2)]);
    assert!(beside.better[0].1 < 0.5);
    let turned = Beside::of(&[(&other, &appraisals[1]), (&one, &appraisals[0])]).expect("two");
    near(turned.better[0].1, 1.0 - beside.better[0].1, 1e-12);
    near(Beside::of(&[(&one, &appraisals[0]), (&one, &appraisals[0])]).expect("two").better[0].1, 0.5, 1e-12);
    assert_eq!(Beside::of(&[(&one, &appraisals[0])]), Err(BesideFault::TooFew));
    assert_eq!(Beside::of(&[(&one, &appraisals[0]); 5]), Err(BesideFault::TooMany));
}

#[test]
fn a_stranger_resembles_a_reference_in_each_thing_by_the_distance_of_scipy() {
    let ((worst, best), (soft, firm)) = (ends("hang"), ends("cloth-hand"));
    let (cheap, dear) = (pair("a", worst, soft), pair("b", best, soft));
    let stranger = pair("s", worst, firm).after(Act::Answer(check("leg-twist"), Answer::CannotTell));
    let likeness = Likeness::of(&stranger, &[&cheap, &dear]);
    assert_eq!(likeness.len(), 2, "nobody can tell whom it resembles in what nobody can tell");
    assert_eq!((&likeness[0].apart, &likeness[0].nearest), (&vec![Some(0.0), Some(1.0)], &vec![0]));
    assert_eq!((&likeness[1].apart, &likeness[1].nearest), (&vec![Some(1.0), Some(1.0)], &vec![0, 1]), "both are as far");
    // Softly: distance as the mean absolute difference of the sums up to each level, computed here from the weights.
    let (one, other) = (bare("s").after(counted(24.0)), bare("r").after(counted(26.0)));
    let weights = |garment: &Garment| {
        let outcome = garment.reading(check("spi")).expect("readings").expect("an outcome");
        check("spi").weights(&outcome).expect("spans").parts().to_vec()
    };
    let (a, b) = (weights(&one), weights(&other));
    let upto = |parts: &[f64], level: usize| parts[..=level].iter().sum::<f64>() / parts.iter().sum::<f64>();
    let expected = (0..a.len() - 1).map(|level| (upto(&a, level) - upto(&b, level)).abs()).sum::<f64>() / (a.len() - 1) as f64;
    near(Likeness::of(&one, &[&other])[0].apart[0].expect("both"), expected, 1e-12);
}

#[test]
fn a_stranger_stands_between_two_by_least_squares() {
    let ((worst, best), (soft, firm)) = (ends("hang"), ends("cloth-hand"));
    let (first, second) = (pair("a", worst, soft), pair("b", best, firm));
    let at = |stranger: &Garment| Between::of(stranger, &first, &second);
    let near_to = |stranger: &Garment| at(stranger).expect("a place").way;
    near(near_to(&first), 0.0, 1e-12);
    near(near_to(&second), 1.0, 1e-12);
    let mixed = at(&pair("s", worst, firm)).expect("a place");
    // Two checks, one as the first and one as the second: half of the way, residuals of a half each, standard error sqrt(0.5 / 1 / 2).
    near(mixed.way, 0.5, 1e-12);
    near(mixed.error.expect("two checks"), 0.5, 1e-12);
    assert_eq!(mixed.checks, 2);
    assert_eq!(at(&bare("s").after(judged("hang", best))).expect("a place").error, None);
    assert_eq!(at(&bare("s")), None);
    assert_eq!(Between::of(&second, &first, &first), None, "two that do not differ have nothing between them");
}

/// The worked gap of the model's account, section 6: 79.90 to 285.00.
#[test]
fn shares_and_what_is_not_explained_sum_to_the_gap_exactly() {
    let share = |name: &str, amount: f64, spread: f64| GapShare { name: name.to_owned(), amount, spread };
    let shares = [
        ("metres", 48.96),
        ("price per metre", 104.21),
        ("cost per minute", 85.04),
        ("multiple", -52.02),
        ("minutes", 29.49),
        ("trims", 19.94),
        ("wash", -9.80),
        ("factory margin", 5.45),
        ("pocketing", 3.42),
        ("freight", 1.86),
        ("overhead", 1.43),
        ("test", 0.50),
    ];
    let gap_of =
        gap(79.9, 285.0, shares.map(|(name, amount)| share(name, amount, 20.0)).into_iter().chain([share("?", f64::NAN, 1.0)]));
    let found = gap_of.expect("a gap");
    near(found.gap, 205.10, 1e-9);
    // Shares are printed to the cent there.
    near(found.not_explained, -33.39, 0.02);
    near(found.shares.iter().map(|share| share.amount).sum::<f64>() + found.not_explained, found.gap, 1e-12);
    assert_eq!((found.shares.len(), found.shares[0].name.as_str()), (12, "price per metre"));
    assert!(found.shares[0].is_clear() && !found.shares[11].is_clear());
    assert_eq!(gap(f64::INFINITY, 1.0, []), None);
}

// Anything may be handed in.

fn number() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => -60.0..60.0_f64,
        1 => any::<f64>(),
        1 => prop::sample::select(vec![0.0, -0.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MIN_POSITIVE, 50.0]),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_number_makes_the_room_fall(numbers in prop::collection::vec(number(), 9), rows in prop::collection::vec((number(), number(), number(), 0..3_usize), 0..9)) {
        let spreads = Spreads {
            own: numbers[0], degrees: numbers[1], level: numbers[2], slope: numbers[3], family: numbers[4],
            shop: numbers[5], maker: numbers[6], like: numbers[7], reach: numbers[8],
        };
        let shops = [None, Some("a".to_owned()), Some("b".to_owned())];
        let of = |mu: f64, sigma: f64, part: f64, shop: usize| {
            let explained = Explained::new(mu, sigma)?;
            let explained = explained.with_shop_part(part).unwrap_or(explained);
            let name = (shop > 0).then_some(Name::Premium);
            Some(Traits { explained, family: "jeans".to_owned(), shop: shops[shop].clone(), maker: None, name })
        };
        let known: Vec<Reference> =
            rows.iter().filter_map(|&(mu, sigma, log, shop)| Reference::new(of(mu, sigma.abs(), log, shop)?, log)).collect();
        for spreads in [spreads, Spreads::USUAL] {
            let learned = learn(spreads, known.clone(), true);
            for place in 0..known.len() {
                let surprise = learned.surprise(place).unwrap_or(0.5);
                prop_assert!((0.0..=1.0).contains(&surprise), "{surprise}");
            }
            for &(mu, sigma, part, shop) in &rows {
                let Some(traits) = of(mu, sigma, part, shop) else { continue };
                if let Some(likely) = likely(&learned, &traits) {
                    prop_assert!(likely.low <= likely.middle && likely.middle <= likely.high, "{likely:?}");
                    let _ = left(part, &traits.explained, &likely);
                }
            }
        }
        if let Some(range) = Range::of_prices(numbers[0], Some(numbers[1]), numbers[2]).or(Range::of_logs(numbers[0], numbers[1], numbers[2])) {
            let _ = Score::of(&range, numbers[3]);
        }
        let _ = (Width::of(&numbers), Bias::of(&numbers), Trend::of(&[numbers.clone(), numbers.clone(), numbers.clone()].concat()));
        if let Some(t) = StudentT::new(numbers[0], numbers[1], numbers[2]) {
            let _ = (t.below(numbers[3]), t.ln_density(numbers[4]), t.quantile(numbers[5]), t.ranked_score(numbers[6]));
        }
        let _ = Mixture::new(numbers.iter().filter_map(|n| Some((*n, StudentT::new(3.0, *n, 1.0)?)))).map(|m| (m.quantile(numbers[0]), m.weights_after(numbers[1])));
    }
}
