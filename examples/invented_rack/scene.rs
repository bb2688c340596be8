//! The scene of the invented rack: a Saturday's errands in a town that does not exist. Every shop, person, garment and price is made up.
//! The answers follow from a quality that each garment was given, by the curves of its checks, so that they agree as a real one's would.

use garment_assay::catalog::{FAMILIES, Family, defects};
use garment_assay::check::Check;
use garment_assay::cost::{Channel, Incoterm};
use garment_assay::fit::{BODY_MEASURES, BodyReading, LabelSystem, Person, PersonId, Went};
use garment_assay::garment::{
    Act, Answer, FitAct, Garment, Given, Guess, Id, LabelSize, PriceBreak, Readings, Taped, TermsAct, check_of,
};
use garment_assay::grading::Care;
use garment_assay::lot::{Defect, Finding, Log, LotSize};
use garment_assay::measure::{Drying, Warmth};
use garment_assay::quantity::{Amount, Unit};
use garment_assay::specimen::Chance;
use garment_assay::trade::{Currency, Day, Name, PriceKind, Ticket};

/// The day of the errands.
pub fn day() -> Day {
    Day::new(2026, 3, 14).expect("a day")
}

const ROBIN: &str = "invented-robin";

/// Who the garments are for.
pub fn people() -> Vec<Person> {
    let measures = [
        ("height", 174.0),
        ("neck", 37.5),
        ("shoulders", 42.5),
        ("chest", 95.0),
        ("bust", 95.0),
        ("waist", 80.0),
        ("band", 85.0),
        ("hip", 98.0),
        ("thigh", 56.0),
        ("inside-leg", 79.0),
        ("arm", 61.0),
        ("upper-arm", 30.5),
        ("back", 43.0),
    ];
    let robin = Person::new(PersonId::new(ROBIN).expect("a name"), "Robin (invented)");
    vec![measures.into_iter().fold(robin, |person, (key, number)| {
        let measure = BODY_MEASURES.into_iter().find(|measure| measure.key == key).expect("a measure");
        let reading = BodyReading::new(measure, Amount { number, unit: Unit::Centimetre });
        assert!(reading.is_some(), "{key} is not believed");
        person.with(measure, reading)
    })]
}

/// A garment in the making. Each step must change it: an act that is not taken is a slip in the scene.
struct Piece(Garment);

fn family(key: &str) -> &'static Family {
    FAMILIES.into_iter().find(|family| family.key == key).expect("a family")
}

impl Piece {
    fn new(id: &str, family_key: &str, label: &str, place: &str) -> Piece {
        let id = Id::new(&format!("invented-{id}")).expect("a plain name");
        Piece(Garment::new(id, family(family_key), day())).act(Act::Label(label.to_owned())).act(Act::Place(place.to_owned()))
    }

    fn act(self, act: Act) -> Piece {
        let next = self.0.after(act.clone());
        assert!(next != self.0, "{}: nothing came of {act:?}", self.0.id().as_str());
        Piece(next)
    }

    fn check(&self, key: &str) -> &'static Check {
        let found = self.0.family().checks.iter().copied().find(|check| check.key == key);
        found.unwrap_or_else(|| panic!("{} has no check {key}", self.0.family().key))
    }

    /// Answers, as a garment of that quality would get them, to so many of its checks from the most telling on; the same seed, the same
    /// answers. Those with an answer stay as they are.
    fn made(mut self, quality: f64, seed: u64, answers: usize) -> Piece {
        let mut chance = Chance::new(seed);
        let slope = |check: &Check| check.speaks.curve().map_or(0.0, |curve| curve.slope);
        let mut checks: Vec<&'static Check> = self.0.family().checks.to_vec();
        checks.retain(|check| check.asked_when.is_none() && check.speaks.curve().is_some() && self.0.answer(check).is_none());
        checks.sort_by(|one, other| slope(other).total_cmp(&slope(one)));
        checks.truncate(answers);
        checks.sort_by_key(|check| check.stage);
        for (place, check) in checks.into_iter().enumerate() {
            let mut left = chance.share();
            let shares = check.speaks.curve().expect("kept for its curve").probabilities(quality);
            let level = shares.iter().position(|share| {
                left -= share;
                left < 0.0
            });
            let level = check.levels[level.unwrap_or(check.levels.len() - 1)].key;
            let care = if place % 5 == 4 { Care::Careful } else { Care::Usual };
            self = self.act(Act::Answer(check, Answer::Judged { level, care }));
        }
        self
    }

    fn says(self, key: &str, level: &str) -> Piece {
        let check = self.check(key);
        let (_, level) = check.level(level).unwrap_or_else(|| panic!("{key} has no level {level}"));
        self.act(Act::Answer(check, Answer::Judged { level: level.key, care: Care::Usual }))
    }

    /// What wear has left, at one of the checks of a second-hand piece.
    fn worn(self, key: &str, level: &str) -> Piece {
        let check = check_of(self.0.family(), key).unwrap_or_else(|| panic!("no check of wear {key}"));
        let (_, level) = check.level(level).unwrap_or_else(|| panic!("{key} has no level {level}"));
        self.act(Act::Answer(check, Answer::Judged { level: level.key, care: Care::Usual }))
    }

    /// A supplier's terms, and a lot of it of which some was looked at.
    fn offered(self, style: &str, minor: u64, found: &[(u32, &str)]) -> Piece {
        let prices = [(300, minor), (1_000, minor * 9 / 10)].map(|(from, minor)| PriceBreak { from, minor });
        let known = defects::ANY.iter().chain(self.0.family().defects);
        let known: Vec<&Defect> = known.collect();
        let mut log = Log::new(LotSize::new(600).expect("a lot"));
        log.looked_at = 20;
        log.findings = found
            .iter()
            .map(|(piece, key)| {
                let defect = known.iter().find(|defect| defect.key == *key).unwrap_or_else(|| panic!("no defect {key}"));
                Finding { piece: *piece, what: defect.key.to_owned(), severity: defect.severity }
            })
            .collect();
        self.act(Act::Terms(TermsAct::Supplier("Mill on the hill (invented)".to_owned())))
            .act(Act::Terms(TermsAct::Style(style.to_owned())))
            .act(Act::Terms(TermsAct::Sizes("six sizes".to_owned())))
            .act(Act::Terms(TermsAct::Currency(Some(Currency::Usd))))
            .act(Act::Terms(TermsAct::Incoterm(Some(Incoterm::FreeOnBoard))))
            .act(Act::Terms(TermsAct::Prices(prices.to_vec())))
            .act(Act::Terms(TermsAct::Shortlisted(true)))
            .act(Act::Lot(Some(log)))
            .act(Act::Collection("Spring (invented)".to_owned()))
    }

    /// Somebody wore it before, and its ticket lies face down: to be guessed, and to be looked over for wear.
    fn old(self, minor: u64, wear: &[(&str, &str)]) -> Piece {
        let piece = self.act(Act::SecondHand(true)).face_down(minor);
        wear.iter().fold(piece, |piece, (key, level)| piece.worn(key, level))
    }

    fn cannot_tell(self, key: &str) -> Piece {
        let check = self.check(key);
        self.act(Act::Answer(check, Answer::CannotTell))
    }

    fn read(self, key: &str, instrument: &str, given: &[(&str, f64, Unit)]) -> Piece {
        let check = self.check(key);
        let instrument = check.instrument(instrument).unwrap_or_else(|| panic!("{key} is not answered by {instrument}"));
        let given = given.iter().map(|(input, amount, unit)| {
            let (_, input) = instrument.input(input).unwrap_or_else(|| panic!("{} has no {input}", instrument.key));
            Given { input: input.key, amount: *amount, unit: *unit }
        });
        let readings = Readings { instrument, given: given.collect() };
        assert!(readings.outcome().is_ok(), "{key}: {:?}", readings.outcome());
        self.act(Act::Answer(check, Answer::Measured(readings)))
    }

    fn on_check(self, key: &str, note: &str) -> Piece {
        let check = self.check(key);
        self.act(Act::CheckNote(check, note.to_owned()))
    }

    fn note(self, text: &str) -> Piece {
        self.act(Act::Note(text.to_owned()))
    }

    fn shop(self, shop: Channel, name: Name) -> Piece {
        self.act(Act::Shop(Some(shop))).act(Act::Name(Some(name)))
    }

    fn guess(self, low: u64, best: u64, high: u64) -> Piece {
        let guess = Guess::new(low * 100, high * 100, Currency::Usd, PriceKind::Retail, day())
            .and_then(|guess| guess.with_best(best * 100));
        assert!(guess.is_some());
        self.act(Act::Guess(guess))
    }

    fn ticket(self, minor: u64) -> Piece {
        self.act(Act::Ticket(Some(Ticket { minor, currency: Currency::Usd, kind: PriceKind::Retail, face_down: false })))
    }

    fn face_down(self, minor: u64) -> Piece {
        self.act(Act::Ticket(Some(Ticket { minor, currency: Currency::Usd, kind: PriceKind::Retail, face_down: true })))
    }

    fn worn_a_year(self, wears: u32) -> Piece {
        let deal = self.0.deal().with_wears(Some(wears));
        self.act(Act::Deal(deal))
    }

    /// Tape readings in centimetres, as the piece lies flat.
    fn taped(mut self, readings: &[(&str, &[f64])]) -> Piece {
        for (key, centimetres) in readings {
            let point = self.0.family().points.iter().find(|point| point.key == *key).unwrap_or_else(|| panic!("no point {key}"));
            let amounts = centimetres.iter().map(|number| Amount { number: *number, unit: Unit::Centimetre });
            let taped = Taped::new(amounts.collect(), false);
            assert!(taped.is_some());
            self = self.act(Act::Measure(point, taped));
        }
        self
    }

    /// For Robin: the cut it is meant to have, the size on its label, how it will be washed, and what the mirror showed.
    fn tried_on(self, cut: &str, label: (LabelSystem, &str), moves: &[(&str, Went)], seen: &[&str]) -> Piece {
        let table = self.0.family().fit.expect("a fit table");
        let cut = table.cuts.iter().copied().find(|known| known.key == cut).expect("a cut of the family");
        let mut piece = self
            .act(Act::Fit(FitAct::Who(PersonId::new(ROBIN))))
            .act(Act::Fit(FitAct::Cut(Some(cut))))
            .act(Act::Fit(FitAct::Label(LabelSize::new(label.0, label.1))));
        for (key, went) in moves {
            let one = table.moves.iter().copied().find(|known| known.key == *key).expect("a move of the family");
            piece = piece.act(Act::Fit(FitAct::Move(one, Some(*went))));
        }
        for key in seen {
            let sign = table.signs.iter().copied().find(|known| known.key == *key).expect("a sign of the family");
            piece = piece.act(Act::Fit(FitAct::Sign(sign, Some(true))));
        }
        if moves.is_empty() {
            return piece;
        }
        let rest = piece.0.fitting().no_other_sign(table);
        piece.act(Act::Fit(rest))
    }

    fn washed(self, cloth: &str, warmth: Warmth, drying: Drying) -> Piece {
        let table = self.0.family().fit.expect("a fit table");
        let cloth = table.cloths.iter().copied().find(|known| known.key == cloth).expect("a cloth of the family");
        self.act(Act::Fit(FitAct::Cloth(Some(cloth)))).act(Act::Fit(FitAct::Wash(Some((warmth, drying)))))
    }
}

const WHARF: &str = "Wharf Street 8, upstairs";
const ARCADE: &str = "The arcade, ground floor";
const SHED: &str = "Shed by the ring road";
/// What wear has left of the worn ones: nothing is through, something is mended.
const WEAR: [(&str, &str); 5] = [
    ("worn-rubbed", "begun"),
    ("worn-stains", "hidden"),
    ("worn-seams", "strained"),
    ("worn-mends", "fine"),
    ("worn-kept", "clean"),
];
const CANAL: &str = "Second-hand room, Canal Lane";
const MARKET: &str = "Saturday market, stall 12";

/// A count over a stretch of seam, in millimetres.
fn counted(stitches: f64, millimetres: f64) -> [(&'static str, f64, Unit); 2] {
    [("count", stitches, Unit::Count), ("length", millimetres, Unit::Millimetre)]
}

/// The garments, by family, the fullest of each family first.
pub fn garments() -> Vec<Garment> {
    [jeans(), shirts(), t_shirts(), sweaters(), dresses(), jackets(), coats()]
        .into_iter()
        .flatten()
        .map(|piece| piece.0)
        .collect()
}

fn jeans() -> Vec<Piece> {
    vec![
        Piece::new("jeans-indigo", "jeans", "Straight, dark indigo", WHARF)
            .guess(70, 95, 130)
            .ticket(12_800)
            .shop(Channel::DirectSmallMaker, Name::Known)
            .read("spi", "stitch-density", &counted(21.0, 60.0))
            .read("leg-twist", "leg-twist", &[("reading", 6.0, Unit::Millimetre)])
            .made(1.1, 11, 14)
            .on_check("spi", "Counted on the left outseam, below the hip.")
            .note("The one to hold the others against. Raw, so it will shrink in the first wash.")
            .taped(&[("waist", &[44.0, 44.3]), ("hip", &[52.5]), ("thigh", &[31.0]), ("inseam", &[86.0])])
            .tried_on(
                "regular",
                (LabelSystem::WaistInches, "33"),
                &[("sit", Went::Freely), ("squat", Went::Pulled)],
                &["folds-under-seat"],
            )
            .washed("sanforised-raw", Warmth::Cool, Drying::Line)
            .worn_a_year(80),
        Piece::new("jeans-torn", "jeans", "Slim, pale, torn knees", SHED)
            .guess(35, 50, 75)
            .ticket(8_900)
            .shop(Channel::BrandThroughStores, Name::Known)
            .made(-1.0, 12, 10)
            .cannot_tell("care-label")
            .note("The price pays for the wash and the name. Cloth round the holes is thin.")
            .offered("1120", 1_650, &[(4, "hole"), (9, "loops-uneven")]),
        Piece::new("jeans-old", "jeans", "Faded by somebody else", CANAL).made(0.7, 14, 8).old(2_600, &WEAR),
        Piece::new("jeans-covered", "jeans", "Wide leg, ticket covered", ARCADE)
            .face_down(7_400)
            .shop(Channel::OwnShopChain, Name::StoreLabel)
            .made(0.1, 13, 9)
            .note("Guess first, then turn the ticket over."),
    ]
}

fn shirts() -> Vec<Piece> {
    vec![
        Piece::new("shirt-white", "woven-shirt", "White, for work", WHARF)
            .guess(45, 60, 85)
            .ticket(7_900)
            .shop(Channel::Premium, Name::StoreLabel)
            .read("spi", "stitch-density", &counted(36.0, 50.0))
            .read("thread-ends", "loose-ends", &[("reading", 2.0, Unit::Count)])
            .made(1.4, 24, 11)
            .on_check("spi", "On the collar: eighteen to the inch.")
            .taped(&[("neck", &[39.5]), ("chest", &[53.5, 53.0]), ("shoulders", &[44.0]), ("sleeve", &[62.5])])
            .tried_on("classic", (LabelSystem::Centimetres, "48"), &[("hug", Went::Freely), ("reach-up", Went::Pulled)], &[])
            .washed("cotton-shirt", Warmth::Warm, Drying::Line)
            .worn_a_year(40),
        Piece::new("shirt-check", "woven-shirt", "Check, with pocket", MARKET)
            .guess(15, 22, 35)
            .ticket(2_900)
            .shop(Channel::ValueChain, Name::StoreLabel)
            .says("patterned", "patterned")
            .says("match", "nowhere")
            .made(-1.1, 23, 8)
            .cannot_tell("fibre")
            .note("The check breaks at the pocket and at the front. Look at it from two steps away.")
            .offered("2204", 720, &[(2, "pattern-off"), (11, "thread-inside")]),
        Piece::new("shirt-old", "woven-shirt", "Blue, collar turned", CANAL).made(0.5, 26, 8).old(900, &WEAR),
    ]
}

fn t_shirts() -> Vec<Piece> {
    vec![
        Piece::new("t-shirt-heavy", "t-shirt", "Heavy, ecru", WHARF)
            .ticket(3_400)
            .shop(Channel::DirectSmallMaker, Name::StoreLabel)
            .read("return", "growth", &[("reading", 0.5, Unit::Percent)])
            .made(1.2, 31, 10)
            .taped(&[("chest", &[53.0, 53.5]), ("shoulders", &[44.5]), ("cuff", &[19.0])])
            .tried_on("regular", (LabelSystem::LettersByChest, "M"), &[("reach-up", Went::Freely)], &[])
            .washed("jersey", Warmth::Warm, Drying::Tumble)
            .worn_a_year(60),
        Piece::new("t-shirt-pack", "t-shirt", "One of a pack of three", SHED)
            .guess(6, 9, 14)
            .ticket(700)
            .shop(Channel::ValueChain, Name::StoreLabel)
            .made(-1.1, 32, 9)
            .cannot_tell("made-in")
            .note("The side seam already comes to the front.")
            .offered("3007", 210, &[(1, "body-turns"), (6, "neck-baggy")]),
        Piece::new("t-shirt-old", "t-shirt", "Black, washed soft", CANAL).made(0.2, 33, 8).old(400, &WEAR),
    ]
}

fn sweaters() -> Vec<Piece> {
    vec![
        Piece::new("sweater-grey", "sweater", "Grey, lambswool, crew neck", ARCADE)
            .guess(60, 85, 120)
            .ticket(11_500)
            .shop(Channel::Premium, Name::Known)
            .read("gauge", "knit-gauge", &[("count", 24.0, Unit::Count), ("length", 50.0, Unit::Millimetre)])
            .read("rib-return", "rib-return", &[("before", 70.0, Unit::Millimetre), ("after", 71.0, Unit::Millimetre)])
            .made(0.8, 41, 10)
            .taped(&[("chest", &[52.5]), ("shoulders", &[44.0]), ("sleeve", &[63.0])])
            .tried_on(
                "regular",
                (LabelSystem::LettersByChest, "M"),
                &[("over-the-head", Went::Freely), ("push-up-sleeves", Went::Freely)],
                &[],
            )
            .washed("wool-knit", Warmth::Cool, Drying::Line)
            .worn_a_year(35),
        Piece::new("sweater-cable", "sweater", "Cables, soft, very light", MARKET)
            .ticket(4_500)
            .shop(Channel::OwnShopChain, Name::StoreLabel)
            .says("fibre", "acrylic")
            .made(-0.8, 42, 9)
            .cannot_tell("made-in")
            .note("Soft in the shop. Two minutes of rubbing raised beads.")
            .offered("4410", 980, &[(3, "dropped-loop")]),
        Piece::new("sweater-old", "sweater", "Navy, somebody’s before", CANAL)
            .act(Act::SecondHand(true))
            .face_down(1_800)
            .says("fibre", "fine-wool")
            .made(1.0, 43, 7)
            .worn("worn-rubbed", "begun")
            .worn("worn-thin", "clearly")
            .worn("worn-mends", "fine")
            .worn("worn-kept", "holes")
            .worn("worn-stretch", "slow")
            .note("Better made than the new one beside it, and half used up. Two moth holes to darn."),
    ]
}

fn dresses() -> Vec<Piece> {
    vec![
        Piece::new("dress-midi", "dress-skirt", "Midi, green, lined", ARCADE)
            .guess(80, 110, 160)
            .ticket(13_900)
            .shop(Channel::BrandThroughStores, Name::Premium)
            .says("piece", "dress")
            .says("lined", "lined")
            .says("lining", "free")
            .read("volume", "hem-round", &[("reading", 216.0, Unit::Centimetre)])
            .made(0.6, 51, 9)
            .taped(&[("bust", &[50.0]), ("waist", &[42.0]), ("hip", &[52.0]), ("shoulders", &[41.5])])
            .tried_on(
                "fitted",
                (LabelSystem::LettersByBust, "M"),
                &[("sit-down", Went::Freely), ("stride", Went::Freely)],
                &["lines-across-hip"],
            )
            .washed("viscose-linen", Warmth::Cool, Drying::Line)
            .worn_a_year(15),
        Piece::new("skirt-summer", "dress-skirt", "Summer skirt, see-through", SHED)
            .ticket(2_500)
            .shop(Channel::ValueChain, Name::StoreLabel)
            .says("piece", "skirt")
            .says("lined", "unlined")
            .made(-0.9, 52, 8)
            .cannot_tell("made-in")
            .note("Held to the window: the hand behind it shows through.")
            .offered("5502", 560, &[(7, "zip-ripples")]),
        Piece::new("dress-old", "dress-skirt", "Wool, from a wedding long ago", CANAL)
            .says("piece", "dress")
            .made(0.9, 53, 8)
            .old(2_200, &WEAR),
    ]
}

fn jackets() -> Vec<Piece> {
    vec![
        Piece::new("jacket-navy", "tailored-jacket", "Navy, soft chest", WHARF)
            .guess(220, 300, 420)
            .ticket(39_500)
            .shop(Channel::Premium, Name::Premium)
            .says("canvas", "floats-chest")
            .says("patterned", "plain")
            .read("allowance", "spare-cloth", &[("reading", 16.0, Unit::Millimetre)])
            .made(1.0, 61, 10)
            .on_check("canvas", "Pinched below the buttonhole: three layers, and the middle one slides.")
            .taped(&[("chest", &[53.5]), ("waist", &[48.5]), ("shoulders", &[45.5]), ("sleeve", &[63.0])])
            .tried_on(
                "regular",
                (LabelSystem::HalfChest, "48"),
                &[("reach-forward", Went::Pulled), ("button-and-sit", Went::Freely)],
                &["collar-stands-off"],
            )
            .worn_a_year(30),
        Piece::new("jacket-grey", "tailored-jacket", "Grey, shiny edges", SHED)
            .guess(90, 130, 190)
            .ticket(14_900)
            .shop(Channel::OwnShopChain, Name::StoreLabel)
            .says("canvas", "glued-stiff")
            .says("patterned", "patterned")
            .says("match", "nowhere")
            .made(-0.8, 62, 9)
            .act(Act::Reference(false))
            .cannot_tell("made-in")
            .note("Left out of predictions: it was half price, and nobody says half of what.")
            .offered("6130", 4_100, &[(5, "lapels-unequal"), (8, "lining-pulls")]),
        Piece::new("jacket-old", "tailored-jacket", "Tweed, elbows patched", CANAL).made(0.8, 63, 8).old(4_000, &WEAR),
    ]
}

fn coats() -> Vec<Piece> {
    vec![
        Piece::new("coat-shell", "outerwear", "Rain shell, ink blue", WHARF)
            .guess(120, 170, 240)
            .ticket(18_900)
            .shop(Channel::BrandThroughStores, Name::Known)
            .says("rain", "rain")
            .says("bead", "rolls-off")
            .says("seams", "taped")
            .says("filling", "unfilled")
            .read("thread-ends", "loose-ends", &[("reading", 1.0, Unit::Count)])
            .made(1.0, 71, 9)
            .on_check("seams", "Taped all round, at the hood too. One end lifts a little at the left cuff.")
            .taped(&[("chest", &[58.0]), ("shoulders", &[47.5]), ("sleeve", &[65.0])])
            .tried_on(
                "regular",
                (LabelSystem::LettersByChest, "M"),
                &[("reach-forward", Went::Freely), ("arms-up", Went::Pulled)],
                &[],
            )
            .worn_a_year(90),
        Piece::new("coat-puffed", "outerwear", "Padded, bright, light", SHED)
            .guess(40, 60, 90)
            .ticket(5_900)
            .shop(Channel::ValueChain, Name::StoreLabel)
            .says("filling", "fibre")
            .says("fill-even", "uneven")
            .made(-1.0, 72, 9)
            .cannot_tell("made-in")
            .note("Empty at two corners already. Warm for one winter, perhaps.")
            .offered("7021", 1_480, &[(2, "fill-comes-out")]),
        Piece::new("coat-old", "outerwear", "Parka, somebody’s before", CANAL).made(0.6, 73, 8).old(3_500, &WEAR),
    ]
}
