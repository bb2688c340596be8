//! What is held against the model for every family whose rows stand in `vectors/model_shirts.json`, `model_knits.json` or
//! `model_outerwear.json`: checks, beliefs, order, price.
//!
//! The rows of the model were worked out by its own prototype, without this project's code.

#[path = "../vectors/read.rs"]
mod read;

use garment_assay::catalog::Family;
use garment_assay::check::Check;
use garment_assay::cost::{BuildUp, Chain, LogNormal, Market, Range, Rates, Term};
use garment_assay::garment::{Act, Answer, Appraiser, Garment, Id, price, wears};
use garment_assay::grading::{Belief, Candidate, Care, Group, Tables, ranking};
use garment_assay::trade::{Day, Stage};
use serde_json::Value as Json;

/// A family under test.
pub struct Tried {
    pub family: &'static Family,
    /// The check and answer that open what is asked only then; empty for none.
    pub opened: &'static [(&'static str, usize)],
    /// Which lines of our bill are which line of the model's.
    pub lines: &'static [(&'static str, &'static [&'static str])],
    /// What the unit of a reading is to that of the model: ours is theirs times this plus that, by check.
    pub units: &'static [(&'static str, f64, f64)],
}

pub fn near(what: &str, found: f64, expected: f64, tolerance: f64) {
    assert!((found - expected).abs() <= tolerance, "{what}: {found}, expected {expected} within {tolerance}");
}

pub fn numbers(json: &Json) -> Vec<f64> {
    json.as_array().expect("a list").iter().map(|number| number.as_f64().expect("a number")).collect()
}

/// Low and high end of a row of the handbook.
pub fn handbook(row: &str) -> (f64, f64) {
    let rows = [
        include_str!("../vectors/handbook_shirts.csv"),
        include_str!("../vectors/handbook_knits.csv"),
        include_str!("../vectors/handbook_outerwear.csv"),
    ]
    .map(read::fields);
    let row = rows.iter().flatten().find(|fields| fields[1] == row).unwrap_or_else(|| panic!("{row}"));
    (row[2].parse().expect("a number"), row[3].parse().expect("a number"))
}

fn range(json: &Json) -> LogNormal {
    let ends = numbers(json);
    Range::new(ends[0], ends[1], ends[2]).log_normal()
}

/// Numbers that are the same on every run: a linear congruential generator, its upper half.
struct Chance(u64);

impl Chance {
    fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as f64 / f64::from(1_u32 << 31)
    }

    /// Twelve uniform numbers less six: a standard deviation of 1.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.uniform()).sum::<f64>() - 6.0
    }
}

impl Tried {
    pub fn check(&self, key: &str) -> &'static Check {
        self.family.checks.iter().copied().find(|check| check.key == key).unwrap_or_else(|| panic!("no check {key}"))
    }

    pub fn bare(&self) -> Garment {
        Garment::new(Id::new("g").expect("a name"), self.family, Day::new(2026, 11, 26).expect("a day"))
    }

    pub fn judged(&self, garment: Garment, key: &str, place: usize) -> Garment {
        let level = self.check(key).levels[place].key;
        garment.after(Act::Answer(self.check(key), Answer::Judged { level, care: Care::Usual }))
    }

    pub fn open(&self) -> Garment {
        self.opened.iter().fold(self.bare(), |garment, (key, place)| self.judged(garment, key, *place))
    }

    pub fn built(&self, garment: &Garment) -> BuildUp {
        price(garment, &Rates::of(Market::UnitedStates), None).expect("a bill")
    }

    /// What the factory asks for the piece, every check answered at that place, sewn in that country.
    pub fn gate(&self, place: fn(&Check) -> usize, country: &str) -> f64 {
        let others = self.family.checks.iter().filter(|check| check.key != "made-in");
        let garment = others.fold(self.bare(), |garment, check| self.judged(garment, check.key, place(check)));
        let place = self.check("made-in").levels.iter().position(|level| level.key == country).expect("a country");
        self.built(&self.judged(garment, "made-in", place)).totals().factory_price.median()
    }

    fn quality(&self) -> Vec<&'static Check> {
        self.family.checks.iter().copied().filter(|check| check.speaks.curve().is_some()).collect()
    }

    fn model(&self) -> Json {
        let files = [
            include_str!("../vectors/model_shirts.json"),
            include_str!("../vectors/model_knits.json"),
            include_str!("../vectors/model_outerwear.json"),
        ];
        let all = files.map(|file| serde_json::from_str::<Json>(file).expect("JSON"));
        all.iter().find_map(|file| file.get(self.family.key)).expect("rows of the family").clone()
    }

    /// Everything that the model says of a family.
    pub fn agrees_with_the_model(&self) {
        let model = self.model();
        self.checks_agree(&model);
        self.ends_agree(&model);
        self.order_agrees(&model);
        self.doubt_agrees(&model);
        self.chain_agrees(&model);
        self.bill_agrees(&model);
        let life = &self.family.bill.expect("a bill").life;
        assert_eq!(vec![life.wears, life.spread, life.washes, life.wash_cost], numbers(&model["wear"]));
        assert_eq!(life.years, model["years"].as_f64().expect("years"));
        let worn = wears(&self.bare(), &Appraiser::default().appraise(&self.bare()), None).expect("a bill").range();
        assert!((0.85..1.15).contains(&(worn.usual / life.wears)), "{worn:?}");
    }

    /// Curves, shares, seconds, stages, groups and spans are those of the model.
    fn checks_agree(&self, model: &Json) {
        let rows = model["checks"].as_array().expect("checks");
        for row in rows {
            let check = self.check(row["key"].as_str().expect("a key"));
            let stage = match row["stage"].as_str() {
                Some("rack") => Stage::OnTheHanger,
                Some("hand") => Stage::InHand,
                Some("inside") => Stage::InsideOut,
                _ => Stage::Worn,
            };
            assert_eq!(check.stage, stage, "{}", check.key);
            assert_eq!(f64::from(check.seconds), row["seconds"].as_f64().expect("seconds"), "{}", check.key);
            assert_eq!(check.levels.len() as u64, row["levels"].as_u64().expect("levels"), "{}", check.key);
            assert_eq!(format!("{:?}", check.aspect).to_lowercase(), row["aspect"].as_str().expect("an aspect"), "{}", check.key);
            match check.speaks.curve() {
                Some(curve) => {
                    assert_eq!(
                        format!("{:?}", curve.group).to_lowercase(),
                        row["group"].as_str().expect("a group"),
                        "{}",
                        check.key
                    );
                    assert_eq!(curve.slope, row["slope"].as_f64().expect("a slope"), "{}", check.key);
                    assert_eq!(curve.thresholds, numbers(&row["thresholds"]), "{}", check.key);
                }
                None => assert_eq!(row["slope"].as_f64(), Some(0.0), "{}", check.key),
            }
            let Some(spans) = row["spans"].as_array() else { continue };
            let (times, plus) = self.units.iter().find(|unit| unit.0 == check.key).map_or((1.0, 0.0), |unit| (unit.1, unit.2));
            for (level, theirs) in check.levels.iter().zip(spans) {
                assert_eq!(level.spans.len(), theirs.as_array().expect("spans").len(), "{}", level.key);
                for (ours, theirs) in level.spans.iter().zip(theirs.as_array().expect("spans").iter().map(numbers)) {
                    for (ours, theirs) in [(ours.low, theirs[0]), (ours.high, theirs[1])] {
                        let end = if theirs.abs() > 1e8 { f64::INFINITY.copysign(theirs) } else { theirs * times + plus };
                        assert!(ours == end || (ours - end).abs() < 0.001, "{}: {ours}, the model has {end}", level.key);
                    }
                }
            }
        }
        assert_eq!(rows.len() as u64, model["family"]["checks"].as_u64().expect("a count"));
        assert_eq!(self.quality().len() as u64, model["family"]["quality"].as_u64().expect("a count"));
    }

    /// Scores of the model are 50 + 20 times the mean, before clipping, to one decimal.
    fn ends_agree(&self, model: &Json) {
        for (best, name) in [(true, "all_best"), (false, "all_worst")] {
            let garment = self.quality().iter().fold(self.open(), |garment, check| {
                self.judged(garment, check.key, if best { check.levels.len() - 1 } else { 0 })
            });
            let appraisal = Appraiser::default().appraise(&garment);
            assert_eq!(appraisal.evidence(), self.quality().len());
            near(name, 50.0 + 20.0 * appraisal.mean(), model["family"][name].as_f64().expect("a score"), 0.06);
        }
    }

    /// Seconds of all quality checks, and the four that tell most a second before anything is known.
    fn order_agrees(&self, model: &Json) {
        let quality = self.quality();
        let seconds: u16 = quality.iter().map(|check| check.seconds).sum();
        assert_eq!(u64::from(seconds), model["family"]["seconds"].as_u64().expect("seconds"));
        let tables = Tables::new();
        let candidates: Vec<Candidate<'_>> = (quality.iter())
            .filter_map(|check| {
                Some(Candidate { curve: check.speaks.curve()?, seconds: f64::from(check.seconds), stage: check.stage })
            })
            .collect();
        let order = ranking(&tables, &Belief::new(&tables, &[]), &candidates, Stage::seconds_to_reach);
        let first: Vec<&str> = order.iter().take(4).map(|worth| quality[worth.candidate].key).collect();
        let theirs: Vec<&str> = model["family"]["first"].as_array().expect("keys").iter().filter_map(Json::as_str).collect();
        assert_eq!(first, theirs);
    }

    /// The model drew pieces and says how much doubt is left on the average once all is answered. Drawn anew here, as its text says pieces
    /// come about: quality, a reader's own error, an error of each group, and a slip of six in a hundred. The prototype itself, run again
    /// over 300 pieces outside the program, gave 0.611 for shirts and 0.598 for T-shirts; sweaters and dresses are held against the rounded 0.60 that it names for
    /// them, outerwear against 0.59.
    fn doubt_agrees(&self, model: &Json) {
        let mut chance = Chance(1);
        let pieces = 150;
        let (mut sum, quality) = (0.0, self.quality());
        for _ in 0..pieces {
            let psi = chance.normal() + 0.4 * chance.normal();
            let errors = Group::ALL.map(|group| chance.normal() * if group == Group::Stitching { 1.0 } else { 0.6 });
            let garment = quality.iter().fold(self.open(), |garment, check| {
                let curve = check.speaks.curve().expect("a curve");
                let place = Group::ALL.iter().position(|group| *group == curve.group).expect("a group");
                let eta = psi + errors[place];
                let draw = chance.uniform();
                let above = |threshold: &f64| 1.0 / (1.0 + (-curve.slope * (eta - threshold)).exp());
                let level = curve.thresholds.iter().filter(|threshold| draw < above(threshold)).count();
                let slip = (chance.uniform() * check.levels.len() as f64) as usize;
                self.judged(garment, check.key, if chance.uniform() < 0.06 { slip } else { level })
            });
            let (low, _, high) = Appraiser::default().appraise(&garment).range();
            sum += (high - low) / 2.0 / 1.281_551_565_5;
        }
        near("sd", sum / f64::from(pieces), model["family"]["sd_all"].as_f64().expect("sd"), 0.02);
    }

    /// The model's own four lines through our chain.
    fn chain_agrees(&self, model: &Json) {
        let all: Json = serde_json::from_str(include_str!("../vectors/model_shirts.json")).expect("JSON");
        let lines = ["cloth", "trims", "making", "finish"].map(|line| Term::alone(range(&model["lines"][line])));
        let of = |input: &str, state: &str| range(&all["chain"][input][state]);
        let totals = Chain {
            overhead: of("overhead", ""),
            margin: of("margin", ""),
            duty: of("duty", "unknown"),
            freight_duty: LogNormal::ONE,
            freight: of("freight", ""),
            multiple: of("multiple", "unknown"),
            tax: LogNormal::ONE,
            exchange: LogNormal::ONE,
        }
        .totals(&lines);
        let price = &model["family"]["price"];
        near("gate", totals.factory_price.median(), price["fob"].as_f64().expect("a price"), 0.006);
        near("landed", totals.landed.median(), price["landed"].as_f64().expect("a price"), 0.006);
        let found = totals.ticket.range();
        for (found, expected) in [found.low, found.usual, found.high].into_iter().zip(numbers(&price["ticket"])) {
            near("ticket", found, expected, 0.6);
        }
    }

    /// Our bill takes the model's lines apart. With nothing known it must say about the same; how near is written here.
    fn bill_agrees(&self, model: &Json) {
        let built = self.built(&self.bare());
        for (line, keys) in self.lines {
            let ours: Vec<LogNormal> =
                built.lines().iter().filter(|line| keys.contains(&line.key)).map(|line| line.amount).collect();
            assert_eq!(ours.len(), keys.len(), "{line}");
            let theirs = range(&model["lines"][*line]);
            let mean = ours.iter().map(|line| line.mean()).sum::<f64>() / theirs.mean();
            assert!((0.75..1.25).contains(&mean), "{line}: {mean} times what the model has");
        }
        let price = &model["family"]["price"];
        for (what, found, expected) in [
            ("gate", built.totals().factory_price.median(), &price["fob"]),
            ("landed", built.totals().landed.median(), &price["landed"]),
            ("ticket", built.totals().ticket.median(), &price["ticket"][1]),
        ] {
            let off = found / expected.as_f64().expect("a price") - 1.0;
            assert!(off.abs() < 0.10, "{what}: {found}, the model has {expected}");
        }
    }

    /// An open check leaves the bill between its answers, and an answer moves it.
    pub fn answers_move_the_bill(&self) {
        let bill = self.family.bill.expect("a bill");
        let mean = self.built(&self.open()).totals().direct.mean();
        // What opens others is answered already.
        for key in bill.checks().into_iter().filter(|key| self.opened.iter().all(|opened| opened.0 != *key)) {
            let places = 0..self.check(key).levels.len();
            let means: Vec<f64> =
                places.map(|place| self.built(&self.judged(self.open(), key, place)).totals().direct.mean()).collect();
            let (least, most) =
                means.iter().fold((f64::INFINITY, 0.0_f64), |(least, most), mean| (least.min(*mean), most.max(*mean)));
            assert!(least < mean && mean < most, "{key}: {least} {mean} {most}");
        }
    }
}
