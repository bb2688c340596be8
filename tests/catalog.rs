//! The content is whole: every check can be asked, answered, stored and explained. What the words say is for readers to judge.

use std::collections::{BTreeMap, BTreeSet, HashSet};
use std::path::Path;

use garment_assay::catalog::{FAMILIES, SOURCES, cautions, jeans::JEANS, second_hand, tailored_jacket::TAILORED_JACKET};
use garment_assay::check::{Check, Speaks};
use garment_assay::grading::{Curve, Group};
use garment_assay::source::Kind;
use garment_assay::trade::{Aspect, Stage};

const RELEASED: &str = include_str!("vectors/released_keys.txt");

/// What the checks of wear, which all families share, are listed under.
const WORN: &str = "second-hand";

/// Every check, with the key of its family.
fn all_checks() -> impl Iterator<Item = (&'static str, &'static Check)> {
    let made = FAMILIES.iter().flat_map(|family| family.checks.iter().map(move |check| (family.key, *check)));
    made.chain(second_hand::CONDITIONS.iter().map(|condition| (WORN, &condition.check)))
}

/// The curve of a check, whichever question it speaks to.
fn curve_of(check: &Check) -> Option<&Curve> {
    check.speaks.curve().or(check.speaks.left())
}

fn words(text: &str) -> usize {
    text.split_whitespace().count()
}

fn key_is_well_formed(key: &str) -> bool {
    !key.is_empty() && key.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-')
}

/// A sentence or two in the app's voice: starts and ends cleanly, no exclamation mark, no stray blanks from a broken source line.
fn assert_reads_well(place: &str, text: &str) {
    assert!(!text.is_empty(), "{place}: empty");
    assert_eq!(text.trim(), text, "{place}: blanks at an end");
    assert!(!text.contains("  ") && !text.contains('\n'), "{place}: stray blanks: {text}");
    assert!(!text.contains('!'), "{place}: exclamation mark: {text}");
    assert!(!text.contains(['"', '\'']), "{place}: typewriter quotes: {text}");
    assert!(!text.starts_with(char::is_lowercase), "{place}: starts small: {text}");
}

fn assert_is_sentences(place: &str, text: &str, most_words: usize) {
    assert_reads_well(place, text);
    assert!(text.ends_with('.') || text.ends_with('?'), "{place}: no full stop: {text}");
    assert!(words(text) <= most_words, "{place}: {} words, at most {most_words}: {text}", words(text));
}

#[test]
fn keys_are_unique_within_a_family_and_well_formed() {
    for family in FAMILIES {
        assert!(key_is_well_formed(family.key), "{}", family.key);
        let mut seen = HashSet::new();
        for check in family.checks {
            assert!(key_is_well_formed(check.key), "{}", check.key);
            assert!(seen.insert(check.key), "{}/{} twice", family.key, check.key);
            let levels: HashSet<_> = check.levels.iter().map(|level| level.key).collect();
            assert_eq!(levels.len(), check.levels.len(), "{}: a level key twice", check.key);
            assert!(levels.into_iter().all(key_is_well_formed), "{}: level keys", check.key);
        }
    }
}

#[test]
fn every_key_is_released_and_every_released_key_still_stands() {
    let mut released: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for line in RELEASED.lines().filter(|line| !line.starts_with('#') && !line.is_empty()) {
        let (check, levels) = line.split_once(": ").expect("family/check: level level ...");
        assert!(released.insert(check, levels.split(' ').collect()).is_none(), "{check} listed twice");
    }
    let standing: BTreeMap<String, BTreeSet<&str>> = all_checks()
        .map(|(family, check)| (format!("{family}/{}", check.key), check.levels.iter().map(|level| level.key).collect()))
        .chain(
            FAMILIES
                .iter()
                .filter(|family| !family.points.is_empty())
                .map(|family| (format!("{}:points", family.key), family.points.iter().map(|point| point.key).collect())),
        )
        .collect();
    for (check, levels) in &released {
        assert_eq!(standing.get(*check), Some(levels), "{check} is stored somewhere and must keep its keys");
    }
    for check in standing.keys() {
        assert!(released.contains_key(check.as_str()), "{check} is new: add it to released_keys.txt");
    }
}

#[test]
fn jeans_have_at_least_thirty_checks_over_five_aspects_and_four_stages() {
    assert!(JEANS.checks.len() >= 30, "{}", JEANS.checks.len());
    for aspect in Aspect::ALL {
        assert!(JEANS.checks.iter().any(|check| check.aspect == aspect), "{}", aspect.name());
    }
    for stage in Stage::ALL {
        assert!(JEANS.checks.iter().any(|check| check.stage == stage), "{}", stage.name());
    }
    for group in Group::ALL {
        assert!(JEANS.checks.iter().filter_map(|check| check.speaks.curve()).any(|curve| curve.group == group), "{group:?}");
    }
}

/// The model in full, section 3.5: fifteen checks, thirteen of quality; with the question that opens one of them and the country.
#[test]
fn a_jacket_has_the_fifteen_checks_of_the_model_and_two_that_those_need() {
    let ours: BTreeSet<&str> = TAILORED_JACKET.checks.iter().map(|check| check.key).collect();
    let model = [
        "canvas",
        "lapel-roll",
        "collar-sit",
        "sleeve-head",
        "match",
        "lining",
        "pockets",
        "edges",
        "buttonholes",
        "buttons",
        "cloth-crush",
        "allowance",
        "stitch-even",
        "cloth",
        "cuff",
    ];
    assert_eq!(ours.len(), TAILORED_JACKET.checks.len());
    assert_eq!(ours, model.into_iter().chain(["patterned", "made-in"]).collect());
    assert_eq!(TAILORED_JACKET.checks.iter().filter(|check| check.speaks.curve().is_some()).count(), 13);
    for key in ["cloth", "cuff", "patterned", "made-in"] {
        let check = TAILORED_JACKET.checks.iter().find(|check| check.key == key).unwrap();
        assert!(matches!(check.speaks, Speaks::Cost(_)), "{key}");
    }
    let meeting = TAILORED_JACKET.checks.iter().find(|check| check.key == "match").unwrap();
    let when = meeting.asked_when.as_ref().unwrap();
    assert_eq!((when.check.key, when.levels), ("patterned", &["patterned"][..]));
}

#[test]
fn checks_stand_in_the_order_of_their_stages() {
    for family in FAMILIES {
        assert!(family.checks.is_sorted_by_key(|check| check.stage), "{}: a garment would be turned twice", family.key);
    }
}

#[test]
fn curves_are_proper_and_belong_to_the_aspect_of_their_check() {
    for (_, check) in all_checks() {
        assert!(check.levels.len() >= 2, "{}", check.key);
        let Some(curve) = curve_of(check) else { continue };
        assert!(curve.slope.is_finite() && curve.slope > 0.0, "{}: slope", check.key);
        assert_eq!(curve.thresholds.len() + 1, check.levels.len(), "{}: thresholds", check.key);
        assert!(curve.thresholds.iter().all(|threshold| threshold.is_finite()), "{}", check.key);
        assert!(curve.thresholds.windows(2).all(|pair| pair[0] < pair[1]), "{}: thresholds must rise", check.key);
        assert_eq!(curve.group.aspect(), check.aspect, "{}: group and aspect", check.key);
    }
}

/// Of 100 new pieces on general sale, or of 100 second-hand ones where the check is of wear, how many would give each answer, worst first. Judgement: nobody counted. The thresholds of the
/// curves were worked out from these outside the program (model in full, section 2.2).
const SHARES: &[(&str, &[u8])] = &[
    ("jeans/hang", &[8, 34, 58]),
    ("jeans/cloth-hand", &[12, 33, 42, 13]),
    ("jeans/cloth-even", &[8, 32, 60]),
    ("jeans/light-through", &[12, 38, 50]),
    ("jeans/growth", &[15, 27, 35, 23]),
    ("jeans/repairs", &[17, 38, 32, 13]),
    ("jeans/finish-craft", &[12, 36, 38, 14]),
    ("jeans/finish-harm", &[8, 17, 35, 40]),
    ("jeans/rub-off", &[10, 30, 42, 18]),
    ("jeans/rows-true", &[9, 34, 42, 15]),
    ("jeans/stitch-even", &[8, 32, 44, 16]),
    ("jeans/spi", &[10, 28, 62]),
    ("jeans/starts-stops", &[10, 34, 42, 14]),
    ("jeans/restarts", &[9, 27, 38, 26]),
    ("jeans/thread-ends", &[15, 27, 35, 23]),
    ("jeans/pucker", &[7, 25, 45, 23]),
    ("jeans/seam-waves", &[8, 26, 40, 26]),
    ("jeans/tacks", &[7, 25, 40, 28]),
    ("jeans/waistband", &[8, 34, 44, 14]),
    ("jeans/closure", &[6, 26, 48, 20]),
    ("jeans/metal", &[7, 35, 43, 15]),
    ("jeans/buttonhole", &[9, 33, 42, 16]),
    ("jeans/pair-match", &[10, 33, 42, 15]),
    ("jeans/leg-twist", &[10, 22, 38, 30]),
    ("jeans/inseam", &[18, 40, 34, 8]),
    ("jeans/seat-yoke", &[15, 40, 33, 12]),
    ("jeans/crotch", &[7, 30, 43, 20]),
    ("jeans/outseam-edge", &[5, 35, 48, 12]),
    ("jeans/bag-seam", &[30, 50, 20]),
    ("jeans/pocketing", &[13, 42, 33, 12]),
    ("jeans/care-label", &[6, 24, 70]),
    ("jeans/sit-test", &[12, 35, 38, 15]),
    ("woven-shirt/collar", &[10, 35, 42, 13]),
    ("woven-shirt/spi", &[8, 38, 38, 16]),
    ("woven-shirt/pucker", &[10, 32, 40, 18]),
    ("woven-shirt/placket-true", &[9, 34, 42, 15]),
    ("woven-shirt/side-seam", &[22, 38, 28, 12]),
    ("woven-shirt/armhole", &[20, 42, 27, 11]),
    ("woven-shirt/buttonholes", &[9, 36, 40, 15]),
    ("woven-shirt/buttons", &[12, 44, 32, 12]),
    ("woven-shirt/match", &[18, 37, 32, 13]),
    ("woven-shirt/cloth-hand", &[12, 38, 36, 14]),
    ("woven-shirt/cuff", &[8, 33, 43, 16]),
    ("woven-shirt/yoke-hem", &[10, 38, 38, 14]),
    ("woven-shirt/thread-ends", &[14, 28, 36, 22]),
    ("t-shirt/neck-rib", &[12, 33, 40, 15]),
    ("t-shirt/twist", &[14, 20, 38, 28]),
    ("t-shirt/density", &[14, 36, 36, 14]),
    ("t-shirt/return", &[14, 30, 36, 20]),
    ("t-shirt/seam-type", &[14, 34, 38, 14]),
    ("t-shirt/hem", &[9, 31, 43, 17]),
    ("t-shirt/shoulder", &[25, 35, 30, 10]),
    ("t-shirt/neck-tape", &[12, 40, 36, 12]),
    ("t-shirt/pill-rub", &[14, 34, 36, 16]),
    ("t-shirt/stitch-even", &[8, 34, 44, 14]),
    ("t-shirt/pucker", &[9, 30, 42, 19]),
    ("t-shirt/thread-ends", &[15, 28, 35, 22]),
    ("t-shirt/print", &[15, 35, 35, 15]),
    ("sweater/joins", &[28, 30, 32, 10]),
    ("sweater/shaping", &[30, 25, 34, 11]),
    ("sweater/rib-return", &[12, 32, 40, 16]),
    ("sweater/pill-rub", &[18, 36, 32, 14]),
    ("sweater/tightness", &[12, 35, 38, 15]),
    ("sweater/even-knit", &[6, 30, 46, 18]),
    ("sweater/neck", &[10, 36, 38, 16]),
    ("sweater/seam-line", &[8, 30, 44, 18]),
    ("sweater/shoulder", &[25, 38, 27, 10]),
    ("sweater/ends", &[12, 40, 36, 12]),
    ("sweater/band", &[14, 38, 34, 14]),
    ("sweater/stitch-even", &[8, 36, 42, 14]),
    ("dress-skirt/zip", &[11, 32, 41, 16]),
    ("dress-skirt/hem", &[10, 36, 39, 15]),
    ("dress-skirt/seam-finish", &[10, 45, 34, 11]),
    ("dress-skirt/lining", &[12, 38, 36, 14]),
    ("dress-skirt/hang", &[10, 32, 42, 16]),
    ("dress-skirt/slip", &[9, 27, 46, 18]),
    ("dress-skirt/opacity", &[14, 34, 36, 16]),
    ("dress-skirt/crush", &[13, 36, 36, 15]),
    ("dress-skirt/stitch-even", &[8, 33, 44, 15]),
    ("dress-skirt/pucker", &[10, 31, 40, 19]),
    ("dress-skirt/fullness", &[9, 33, 42, 16]),
    ("dress-skirt/fastening", &[10, 36, 40, 14]),
    ("dress-skirt/thread-ends", &[15, 28, 35, 22]),
    ("tailored-jacket/canvas", &[30, 38, 24, 8]),
    ("tailored-jacket/lapel-roll", &[12, 38, 37, 13]),
    ("tailored-jacket/collar-sit", &[14, 34, 38, 14]),
    ("tailored-jacket/sleeve-head", &[12, 36, 38, 14]),
    ("tailored-jacket/match", &[18, 36, 33, 13]),
    ("tailored-jacket/lining", &[10, 38, 38, 14]),
    ("tailored-jacket/pockets", &[7, 34, 43, 16]),
    ("tailored-jacket/edges", &[9, 36, 40, 15]),
    ("tailored-jacket/buttonholes", &[9, 40, 39, 12]),
    ("tailored-jacket/buttons", &[10, 42, 36, 12]),
    ("tailored-jacket/cloth-crush", &[12, 35, 38, 15]),
    ("tailored-jacket/allowance", &[25, 38, 27, 10]),
    ("tailored-jacket/stitch-even", &[6, 33, 46, 15]),
    ("outerwear/zip", &[9, 31, 43, 17]),
    ("outerwear/seams", &[15, 42, 31, 12]),
    ("outerwear/fill-even", &[9, 33, 42, 16]),
    ("outerwear/fill-leak", &[10, 28, 44, 18]),
    ("outerwear/lining", &[12, 40, 35, 13]),
    ("outerwear/cloth-hand", &[9, 33, 42, 16]),
    ("outerwear/tacks", &[12, 36, 38, 14]),
    ("outerwear/quilt", &[8, 33, 43, 16]),
    ("outerwear/edges", &[8, 31, 44, 17]),
    ("outerwear/hood-cuff", &[10, 34, 40, 16]),
    ("outerwear/buttons", &[10, 38, 38, 14]),
    ("outerwear/bead", &[12, 28, 38, 22]),
    ("outerwear/thread-ends", &[13, 28, 37, 22]),
    ("second-hand/worn-stains", &[9, 14, 17, 60]),
    ("second-hand/worn-kept", &[4, 8, 30, 58]),
    ("second-hand/worn-colour", &[8, 26, 38, 28]),
    ("second-hand/worn-rubbed", &[8, 24, 43, 25]),
    ("second-hand/worn-thin", &[8, 22, 32, 38]),
    ("second-hand/worn-pills", &[13, 28, 34, 25]),
    ("second-hand/worn-seams", &[6, 17, 29, 48]),
    ("second-hand/worn-mends", &[8, 14, 8, 70]),
    ("second-hand/worn-altered", &[7, 8, 13, 72]),
    ("second-hand/worn-fastening", &[8, 15, 22, 55]),
    ("second-hand/worn-stretch", &[7, 23, 34, 36]),
    ("second-hand/worn-lining", &[8, 17, 35, 40]),
];

/// Share of pieces whose answer lies above a threshold: the logistic curve averaged over a normal spread, by the trapezoid rule.
/// The thresholds were made with the usual shortcut (logistic taken for a normal curve of scale 1.702), so this is a second way.
fn share_above(slope: f64, threshold: f64, spread: f64) -> f64 {
    let (mut sum, mut weights) = (0.0, 0.0);
    for step in -800..=800 {
        let z = f64::from(step) / 100.0;
        let weight = (-z * z / 2.0).exp();
        sum += weight / (1.0 + (-slope * (z * spread - threshold)).exp());
        weights += weight;
    }
    sum / weights
}

#[test]
fn every_curve_gives_back_the_shares_it_was_made_from() {
    let judged: BTreeMap<_, _> = SHARES.iter().copied().collect();
    let mut compared = 0;
    for (family, check) in all_checks() {
        let Some(curve) = curve_of(check) else { continue };
        let key = format!("{family}/{}", check.key);
        let shares = judged.get(key.as_str()).unwrap_or_else(|| panic!("{key}: no shares"));
        assert_eq!(shares.iter().map(|share| u32::from(*share)).sum::<u32>(), 100, "{}", check.key);
        assert_eq!(shares.len(), check.levels.len(), "{}", check.key);
        // Pieces vary by 1, readers by 0.4, groups by 0.6 (stitching by 1): model in full, section 2.1.
        let group = if curve.group == Group::Stitching { 1.0 } else { 0.6_f64 };
        let spread = (1.0 + 0.4_f64.powi(2) + group.powi(2)).sqrt();
        let mut below = 0.0;
        for (threshold, share) in curve.thresholds.iter().zip(*shares) {
            below += f64::from(*share) / 100.0;
            let made = 1.0 - share_above(curve.slope, *threshold, spread);
            // The shortcut is never further than 0.01 from the logistic curve; the rest is two decimals of the thresholds.
            assert!((made - below).abs() < 0.012, "{}: {below} judged, {made} from the curve", check.key);
            compared += 1;
        }
    }
    assert_eq!(judged.len(), SHARES.len(), "a check listed twice");
    assert_eq!(compared, SHARES.iter().map(|(_, shares)| shares.len() - 1).sum::<usize>(), "shares of a check that is gone");
}

#[test]
fn slopes_are_the_five_powers_and_no_others() {
    for (_, check) in all_checks() {
        if let Some(curve) = curve_of(check) {
            assert!([0.3, 0.6, 0.9, 1.2, 1.6].contains(&curve.slope), "{}: {}", check.key, curve.slope);
        }
    }
}

#[test]
fn spans_cover_the_whole_scale_exactly_once_when_an_instrument_answers_and_are_absent_otherwise() {
    let mut instruments = HashSet::new();
    for (family, check) in all_checks() {
        let Some(first) = check.instruments.first() else {
            assert!(check.levels.iter().all(|level| level.spans.is_empty()), "{}: spans without an instrument", check.key);
            continue;
        };
        for instrument in check.instruments {
            assert!(instruments.insert((family, instrument.key)), "{}: answers two checks", instrument.key);
            assert_eq!(instrument.unit, first.unit, "{}: spans are in one unit", check.key);
        }
        assert!(check.levels.iter().all(|level| !level.spans.is_empty()), "{}: a level no reading reaches", check.key);
        let mut spans: Vec<_> = check.levels.iter().flat_map(|level| level.spans).collect();
        spans.sort_by(|one, other| one.low.total_cmp(&other.low));
        assert!(spans.iter().all(|span| span.low < span.high), "{}: an empty span", check.key);
        assert_eq!(spans[0].low, f64::NEG_INFINITY, "{}", check.key);
        assert_eq!(spans[spans.len() - 1].high, f64::INFINITY, "{}", check.key);
        assert!(spans.windows(2).all(|pair| pair[0].high == pair[1].low), "{}: gap or overlap", check.key);
    }
    assert!(!instruments.is_empty());
}

#[test]
fn too_few_and_too_many_stitches_are_the_same_fault() {
    let check = JEANS.checks.iter().find(|check| check.key == "spi").unwrap();
    for place in [0, 1] {
        let spans = check.levels[place].spans;
        assert_eq!(spans.len(), 2, "{}", check.levels[place].key);
    }
    // Usual for jeans is 7 to 8 an inch (thread maker's bulletin, handbook 1.4): that must be the best answer.
    let best = check.levels.last().unwrap().spans;
    assert!(best.iter().any(|span| span.low <= 7.0 && span.high >= 8.0));
}

#[test]
fn a_leg_that_mills_call_twisted_gets_the_worst_answer() {
    // Denim mill paper, handbook 6.4: twisted beyond 25.4 mm.
    let check = JEANS.checks.iter().find(|check| check.key == "leg-twist").unwrap();
    assert!(check.levels[0].spans.iter().any(|span| span.low <= 25.4 && span.high == f64::INFINITY));
    assert!(check.levels[1..].iter().flat_map(|level| level.spans).all(|span| span.high <= 25.4));
}

#[test]
fn checks_that_open_others_have_the_answers_named_stand_earlier_and_never_in_a_circle() {
    for family in FAMILIES {
        for (place, check) in family.checks.iter().enumerate() {
            let Some(when) = &check.asked_when else { continue };
            let opener = family.checks.iter().position(|other| *other == when.check);
            assert!(
                opener.is_some_and(|opener| opener < place),
                "{}: opened by a check that stands later or elsewhere",
                check.key
            );
            assert!(when.check.stage <= check.stage, "{}: would turn the garment back", check.key);
            assert!(
                !when.levels.is_empty() && when.levels.len() < when.check.levels.len(),
                "{}: opens never or always",
                check.key
            );
            for level in when.levels {
                assert!(when.check.level(level).is_some(), "{}: {} has no answer {level}", check.key, when.check.key);
            }
            assert!((1..=99).contains(&when.share), "{}", check.key);
            let mut above = Some(*check);
            for _ in family.checks {
                above = above.and_then(|check| check.asked_when.as_ref()).map(|when| when.check);
            }
            assert!(above.is_none(), "{}: in a circle", check.key);
        }
    }
}

#[test]
fn facts_of_intent_and_cost_never_count_as_quality() {
    // Model in full, section 2.6: rigid or stretch, weight, selvedge, raw or washed, how whiskers were made, fly, details, country.
    for key in ["stretch", "cloth-weight", "selvedge", "wash-level", "dry-work", "fly-type", "details", "made-in"] {
        let check = JEANS.checks.iter().find(|check| check.key == key).unwrap();
        assert!(matches!(check.speaks, Speaks::Cost(_)), "{key}");
    }
}

#[test]
fn stretch_and_wash_questions_are_not_put_to_rigid_or_raw_jeans() {
    for (key, opener, closed) in [
        ("growth", "stretch", "rigid"),
        ("seam-waves", "stretch", "rigid"),
        ("rub-off", "wash-level", "raw"),
        ("finish-craft", "wash-level", "raw"),
        ("wash-depth", "wash-level", "rinsed"),
        ("repairs", "dry-work", "none"),
    ] {
        let check = JEANS.checks.iter().find(|check| check.key == key).unwrap();
        let when = check.asked_when.as_ref().unwrap_or_else(|| panic!("{key} is always asked"));
        assert_eq!(when.check.key, opener);
        assert!(!when.levels.contains(&closed), "{key}");
    }
}

#[test]
fn no_text_is_empty_or_too_long_or_shouts() {
    for (family, check) in all_checks() {
        let place = |what: &str| format!("{family}/{} {what}", check.key);
        assert_reads_well(&place("name"), check.name());
        assert!((2..=7).contains(&words(check.name())), "{}", check.name());
        assert_is_sentences(&place("question"), check.question(), 16);
        assert!(check.question().ends_with('?') && check.question().matches('?').count() == 1, "{}", check.question());
        assert_is_sentences(&place("how"), check.how(), 45);
        assert_is_sentences(&place("meaning"), check.meaning(), 60);
        assert!(words(check.meaning()) >= 15, "{}: says what it is, not what it is not", check.key);
        if let Some(cost) = check.speaks.cost() {
            assert_is_sentences(&place("cost"), cost, 30);
        }
        if let Some(caution) = check.caution() {
            assert_is_sentences(&place("caution"), caution, 30);
        }
        for level in check.levels {
            assert_reads_well(&place(level.key), level.name());
            assert!(words(level.name()) <= 7 && level.name().chars().count() <= 40, "{}: {}", check.key, level.name());
            assert_is_sentences(&place(level.key), level.line(), 14);
        }
        assert!((1..=120).contains(&check.seconds), "{}", check.key);
    }
}

#[test]
fn no_two_answers_of_a_check_read_alike() {
    for (_, check) in all_checks() {
        let names: HashSet<_> = check.levels.iter().map(|level| level.name().to_lowercase()).collect();
        let lines: HashSet<_> = check.levels.iter().map(|level| level.line().to_lowercase()).collect();
        assert_eq!(names.len(), check.levels.len(), "{}: names", check.key);
        assert_eq!(lines.len(), check.levels.len(), "{}: lines", check.key);
    }
}

#[test]
fn no_two_checks_of_a_family_ask_the_same() {
    for family in FAMILIES {
        let worn = family.second_hand.iter().map(|look| &look.condition.check);
        let checks: Vec<&Check> = family.checks.iter().copied().chain(worn).collect();
        let names: HashSet<_> = checks.iter().map(|check| check.name().to_lowercase()).collect();
        let questions: HashSet<_> = checks.iter().map(|check| check.question().to_lowercase()).collect();
        let keys: HashSet<_> = checks.iter().map(|check| check.key).collect();
        assert_eq!(names.len(), checks.len(), "{}", family.key);
        assert_eq!(questions.len(), checks.len(), "{}", family.key);
        assert_eq!(keys.len(), checks.len(), "{}", family.key);
    }
}

#[test]
fn every_check_leans_on_a_listed_source_and_curves_own_up_to_judgement() {
    for (_, check) in all_checks() {
        assert!(!check.sources.is_empty(), "{}", check.key);
        for source in check.sources {
            assert!(
                SOURCES.iter().any(|listed| std::ptr::eq(*listed, *source)),
                "{}: {} is not listed",
                check.key,
                source.name()
            );
        }
        let distinct: HashSet<_> = check.sources.iter().collect();
        assert_eq!(distinct.len(), check.sources.len(), "{}: a source twice", check.key);
        // No curve was measured.
        let judged = check.sources.iter().any(|source| source.kind == Kind::Judgement);
        assert!(judged || curve_of(check).is_none(), "{}: a curve that hides that it is judgement", check.key);
    }
}

#[test]
fn sources_are_listed_once_and_say_when_they_are_remembered() {
    let names: HashSet<_> = SOURCES.iter().map(|source| source.name()).collect();
    assert_eq!(names.len(), SOURCES.len());
    for source in SOURCES {
        assert_reads_well(source.name(), source.title());
        assert!(!source.name().is_empty() && words(source.title()) >= 5, "{}: {}", source.name(), source.title());
        if source.kind == Kind::Memory {
            assert!(source.title().contains("rom memory"), "{}: remembered, but does not say so", source.name());
        }
    }
}

#[test]
fn cautions_stand_where_the_work_can_hurt() {
    for family in FAMILIES {
        let mut seen = HashSet::new();
        for caution in family.cautions() {
            assert_is_sentences(family.key, caution, 35);
            assert!(seen.insert(caution), "{caution} twice");
        }
        for shared in [cautions::LOCAL_RULES, cautions::ASK_FIRST, cautions::NEEDLES, cautions::NO_PULLING, cautions::NO_FLAME] {
            assert!(family.cautions().contains(&shared), "{}: {shared}", family.key);
        }
        assert_is_sentences(family.key, family.covers(), 20);
    }
    for (key, word) in [
        ("metal", "nickel"),
        ("hem-stitch", "pins"),
        ("sit-test", "pins"),
        ("inseam", "ask"),
        ("rub-off", "ask"),
        ("growth", "one steady pull"),
        ("stretch", "one steady pull"),
        ("thread-ends", "do not pull"),
        ("starts-stops", "do not pull"),
        ("wash-level", "indigo"),
        ("fibre-label", "never burn"),
    ] {
        let check = JEANS.checks.iter().find(|check| check.key == key).unwrap();
        let caution = check.caution().unwrap_or_else(|| panic!("{key}: no caution")).to_lowercase();
        assert!(caution.contains(word), "{key}: {caution}");
    }
    for (key, word) in [
        ("canvas", "do not tug"),
        ("cloth-crush", "ask"),
        ("pockets", "pins"),
        ("buttons", "do not pull"),
        ("lining", "pins"),
        ("allowance", "do not open"),
        ("cloth", "never burn"),
        ("collar-sit", "pins"),
    ] {
        let check = TAILORED_JACKET.checks.iter().find(|check| check.key == key).unwrap();
        let caution = check.caution().unwrap_or_else(|| panic!("{key}: no caution")).to_lowercase();
        assert!(caution.contains(word), "{key}: {caution}");
    }
}

#[test]
fn checks_of_wear_speak_of_what_is_left_and_those_of_a_family_never_do() {
    for family in FAMILIES {
        assert!(family.checks.iter().all(|check| check.speaks.left().is_none()), "{}", family.key);
        // Stains, keeping, rubbing, thinning, strain, mends: no family is without them.
        for common in ["worn-stains", "worn-kept", "worn-rubbed", "worn-thin", "worn-seams", "worn-mends"] {
            assert!(family.second_hand.iter().any(|look| look.condition.check.key == common), "{}: {common}", family.key);
        }
        assert!(
            family.second_hand.is_sorted_by_key(|look| look.condition.check.stage),
            "{}: a garment would be turned twice",
            family.key
        );
        for look in family.second_hand {
            let check = &look.condition.check;
            let known = second_hand::CONDITIONS.iter().any(|other| std::ptr::eq(*other, look.condition));
            assert!(known && check.speaks.curve().is_none(), "{}", check.key);
            if look.at().is_empty() {
                assert!(!check.how().contains("named here"), "{}/{}: names no place", family.key, check.key);
            } else {
                assert_is_sentences(&format!("{}/{} at", family.key, check.key), look.at(), 16);
            }
        }
    }
    for condition in second_hand::CONDITIONS {
        let check = &condition.check;
        assert!(check.speaks.left().is_some() && check.asked_when.is_none(), "{}", check.key);
        assert_eq!(condition.mends().len(), check.levels.len(), "{}", check.key);
        assert!(FAMILIES.iter().any(|family| family.second_hand.iter().any(|look| look.condition.check == *check)));
        for mend in condition.mends().iter().filter(|mend| !mend.is_empty()) {
            assert_is_sentences(check.key, mend, 25);
        }
        // Where nothing was found nothing is to be done, and of the worst something is to be said.
        assert!(
            condition.mends().last().is_some_and(|mend| mend.is_empty()) && !condition.mends()[0].is_empty(),
            "{}",
            check.key
        );
    }
}

#[test]
fn cautions_of_second_hand_pieces_name_what_can_hurt() {
    let all = second_hand::CAUTIONS.join(" ").to_lowercase();
    for word in ["wash", "pins", "damp", "webs", "dyes", "cords"] {
        assert!(all.contains(word), "{word}");
    }
    for caution in second_hand::CAUTIONS {
        assert_is_sentences(WORN, caution, 35);
    }
    for (key, word) in [
        ("worn-kept", "mould"),
        ("worn-fastening", "pins"),
        ("worn-lining", "pins"),
        ("worn-seams", "do not pull"),
        ("worn-stretch", "no jerk"),
    ] {
        let check = second_hand::CONDITIONS.iter().map(|condition| &condition.check).find(|check| check.key == key).unwrap();
        assert!(check.caution().unwrap_or_default().to_lowercase().contains(word), "{key}");
    }
}

/// Content is data: a function, a branch or a sum in it belongs in a room above or below.
#[test]
fn catalog_files_hold_no_functions_and_no_conditions() {
    fn visit(folder: &Path, files: &mut usize) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                visit(&path, files);
                continue;
            }
            *files += 1;
            for line in std::fs::read_to_string(&path).unwrap().lines() {
                let start = line.trim_start().trim_start_matches("pub ").trim_start_matches("const ");
                let code = ["fn ", "impl ", "if ", "match ", "macro_rules"].iter().any(|word| start.starts_with(word));
                // A text may go on in a new line with any word; only its first line is code, and texts are indented deeper.
                let continues_a_text = line.starts_with("        ") && !line.trim_end().ends_with(['{', ';']);
                assert!(!code || continues_a_text, "{}: {line}", path.display());
            }
        }
    }
    let mut files = 0;
    visit(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/catalog"), &mut files);
    assert!(files >= 5, "looked in the wrong place");
}
