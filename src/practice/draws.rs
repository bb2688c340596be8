//! Questions made of drawn specimens: which picture, from which seed, how hard, and what is true of it.

use super::question::{Question, Shown, Takes, Truth};
use super::topic::Topic;
use crate::language::one;
use crate::quantity::{Decimal, written};
use crate::specimen::{
    Chance, ColourWork, Colouring, Join, Known, Picture, Pucker, SeatYoke, Topstitch, WeaveFace, WeaveKind, WhiskerWork,
    Whiskers, truth,
};
use crate::{say, to_say};

/// Difficulties run from -2.5 to 2.5 logits; beyond, they are held.
const HARDEST: f64 = 2.5;

/// From 0, the easiest, to 1, the hardest.
fn hardness(difficulty: f64) -> f64 {
    ((difficulty + HARDEST) / (2.0 * HARDEST)).clamp(0.0, 1.0)
}

const GRADES: [&str; 5] = [
    to_say!("5: flat"),
    to_say!("4: faint ripples"),
    to_say!("3: plain ripples"),
    to_say!("2: strong ripples"),
    to_say!("1: gathered"),
];
/// Heights of the ripples of each grade, in mm: least and most. As the words of the drawn seams part them; judgement.
const HEIGHTS: [(f64, f64); 5] = [(0.0, 0.05), (0.15, 0.65), (0.75, 1.5), (1.65, 2.15), (2.25, 2.9)];
const JOINS: [(Join, &str); 4] = [
    (Join::Felled, to_say!("felled")),
    (Join::MockFelled, to_say!("mock-felled")),
    (Join::Overlock, to_say!("one overlock row")),
    (Join::FelledRunOff, to_say!("felled, run off")),
];
const JOIN_NAMES: [&str; 4] = [JOINS[0].1, JOINS[1].1, JOINS[2].1, JOINS[3].1];
const WHISKERS: [(WhiskerWork, &str); 3] = [
    (WhiskerWork::Hand, to_say!("by hand")),
    (WhiskerWork::Laser, to_say!("by laser")),
    (WhiskerWork::Printed, to_say!("printed")),
];
const WHISKER_NAMES: [&str; 3] = [WHISKERS[0].1, WHISKERS[1].1, WHISKERS[2].1];
const WEAVES: [&str; 5] = [
    WeaveKind::ALL[0].kept_name(),
    WeaveKind::ALL[1].kept_name(),
    WeaveKind::ALL[2].kept_name(),
    WeaveKind::ALL[3].kept_name(),
    WeaveKind::ALL[4].kept_name(),
];
const ANGLES: [(f64, &str); 4] =
    [(45.0, to_say!("about 45°")), (55.0, to_say!("about 55°")), (63.0, to_say!("about 63°")), (70.0, to_say!("about 70°"))];
const ANGLE_NAMES: [&str; 4] = [ANGLES[0].1, ANGLES[1].1, ANGLES[2].1, ANGLES[3].1];
const COLOURS: [&str; 2] = [to_say!("coloured yarns"), to_say!("a print")];

/// A question about one topic, of about that difficulty; the same seed gives the same question. None for whole garments, which need more
/// than specimens.
pub(super) fn draw(topic: Topic, seed: u64, difficulty: f64) -> Option<Question> {
    let mut chance = Chance::new(seed);
    let hard = hardness(difficulty);
    let difficulty = difficulty.clamp(-HARDEST, HARDEST);
    let again = seed.rotate_left(17);
    let make = |asks, pictures: &[Picture], takes, difficulty, truth, because: String| Question {
        topic,
        asks,
        shown: pictures
            .iter()
            .enumerate()
            .map(|(place, picture)| Shown { picture: *picture, seed: again ^ place as u64 })
            .collect(),
        takes,
        difficulty,
        truth,
        because,
    };
    Some(match topic {
        Topic::Count => {
            let count = 5 + (hard * 4.0) as u8 + chance.below(4) as u8;
            let row = Topstitch {
                stitches_per_inch: f64::from(count),
                rows: 1,
                inch: true,
                // An uneven row counts otherwise from inch to inch; more than this and the truth would be a matter of place.
                unevenness: 0.04 * hard,
                ..Topstitch::CLEAN
            };
            make(
                to_say!("How many stitches to the inch?"),
                &[Picture::Topstitch(row)],
                Takes::Count(3, 16),
                difficulty,
                Truth::Count(count),
                say!(
                    "{count} to the inch, {to_the_centimetre} to the centimetre.",
                    count,
                    to_the_centimetre = tenths(f64::from(count) / 2.54)
                ),
            )
        }
        Topic::More => {
            let fewer = chance.between(6.0, 10.0);
            let more = fewer * (1.45 - 0.37 * hard) * chance.between(0.98, 1.02);
            let first = chance.share() < 0.5;
            let row = |stitches_per_inch: f64| {
                Picture::Topstitch(Topstitch { stitches_per_inch, rows: 1, unevenness: 0.06 * hard, ..Topstitch::CLEAN })
            };
            let pair = if first { [row(more), row(fewer)] } else { [row(fewer), row(more)] };
            make(
                to_say!("Which row has more stitches to the inch?"),
                &pair,
                Takes::OneOf(&[to_say!("the first"), to_say!("the second")]),
                difficulty,
                Truth::OneOf(usize::from(!first)),
                say!("{more} against {fewer} to the inch.", more = tenths(more), fewer = tenths(fewer)),
            )
        }
        Topic::Pucker => {
            let grade = chance.below(5);
            let (least, most) = HEIGHTS[grade];
            let (middle, half) = (0.5 * (least + most), 0.5 * (most - least));
            let height_mm = middle + half * hard * if chance.share() < 0.5 { -1.0 } else { 1.0 };
            make(
                to_say!("Which grade of smoothness is this seam?"),
                &[Picture::Pucker(Pucker { height_mm, length_mm: chance.between(6.5, 9.5) })],
                Takes::OneOf(&GRADES),
                difficulty,
                Truth::OneOf(grade),
                say!("Ripples of {height} mm.", height = tenths(height_mm)),
            )
        }
        Topic::Faults => {
            let count = chance.below(4) as u8;
            let skips = chance.share() < 0.5;
            let row = Topstitch {
                stitches_per_inch: chance.between(7.0, 9.0),
                rows: 1,
                skips: if skips { count } else { 0 },
                restarts: if skips { chance.below(2) as u8 } else { count },
                bunching: 0.8 * (1.0 - hard),
                unevenness: 0.05 + 0.1 * hard,
                ..Topstitch::CLEAN
            };
            // A short row has not room for all; what was drawn is what is true.
            let count = truth(&Picture::Topstitch(row)).into_iter().find_map(|known| match known {
                Known::Skips(found) if skips => Some(found),
                Known::Restarts(found) if !skips => Some(found),
                _ => None,
            })?;
            let asks =
                if skips { to_say!("How many stitches did not catch?") } else { to_say!("How often was this row begun again?") };
            let because = if skips { left_out(count) } else { begun_again(count) };
            make(asks, &[Picture::Topstitch(row)], Takes::Count(0, 4), difficulty, Truth::Count(count), because)
        }
        Topic::Felled => {
            let among: &[usize] = if hard < 0.34 {
                &[0, 2]
            } else if hard < 0.67 {
                &[0, 1, 2]
            } else {
                &[0, 1, 3]
            };
            let place = among[chance.below(among.len())];
            let picture = SeatYoke { join: JOINS[place].0, miss_mm: chance.between(0.0, 4.0) };
            make(
                to_say!("From inside: how are these seams joined?"),
                &[Picture::SeatYoke(picture)],
                Takes::OneOf(&JOIN_NAMES),
                difficulty,
                Truth::OneOf(place),
                match JOINS[place].0 {
                    Join::Felled => say!("Both edges are folded into each other: no cut edge shows."),
                    Join::MockFelled => {
                        say!("The edge is overlocked and laid flat under two rows: from outside it looks felled.")
                    }
                    Join::FelledRunOff => say!("Felled, but a cut edge has slipped out of the fold."),
                    _ => say!("One row of overlock holds everything."),
                }
                .to_owned(),
            )
        }
        Topic::Whiskers => {
            let place = chance.below(3);
            let lines = (6.0 - 4.0 * hard) as u8 + chance.below(2) as u8;
            make(
                to_say!("How were these whiskers made?"),
                &[Picture::Whiskers(Whiskers { work: WHISKERS[place].0, lines })],
                Takes::OneOf(&WHISKER_NAMES),
                difficulty,
                Truth::OneOf(place),
                match WHISKERS[place].0 {
                    WhiskerWork::Hand => say!("Soft ends that taper, and the legs differ."),
                    WhiskerWork::Laser => say!("Fine and crisp, both legs the same in a mirror."),
                    _ => say!("Hard, even bars, both legs the same."),
                }
                .to_owned(),
            )
        }
        Topic::Weave => {
            let place = if hard < 0.4 { [0, 1, 2, 4][chance.below(4)] } else { chance.below(5) };
            let close = 10.0 + 8.0 * hard + chance.between(0.0, 2.0);
            let face =
                WeaveFace { kind: WeaveKind::ALL[place], ends_per_cm: close, picks_per_cm: close * chance.between(0.75, 0.95) };
            make(
                to_say!("How is this cloth woven?"),
                &[Picture::WeaveFace(face)],
                Takes::OneOf(&WEAVES),
                difficulty,
                Truth::OneOf(place),
                match WeaveKind::ALL[place] {
                    WeaveKind::Plain => say!("Each weft yarn goes over one and under one."),
                    WeaveKind::TwillRight => say!("The crossings step up to the right."),
                    WeaveKind::TwillLeft => say!("The crossings step up to the left."),
                    WeaveKind::BrokenTwill => say!("The steps turn back before a line has run."),
                    WeaveKind::Satin => say!("Single crossings, scattered, none beside another."),
                }
                .to_owned(),
            )
        }
        Topic::Twill => {
            let place = chance.below(4);
            let degrees = ANGLES[place].0 + chance.about(3.0 * hard);
            let picks_per_cm = 11.0 + 2.0 * chance.share();
            let kind = if chance.share() < 0.5 { WeaveKind::TwillRight } else { WeaveKind::TwillLeft };
            let face = WeaveFace { kind, ends_per_cm: picks_per_cm * degrees.to_radians().tan(), picks_per_cm };
            make(
                to_say!("How steep does the twill run, from the weft?"),
                &[Picture::WeaveFace(face)],
                Takes::OneOf(&ANGLE_NAMES),
                difficulty,
                Truth::OneOf(place),
                say!(
                    "{angle}°: {warp} warp yarns to the centimetre and {weft} weft.",
                    angle = format!("{:.0}", face.angle().unwrap_or(degrees)),
                    warp = format!("{:.0}", face.ends_per_cm),
                    weft = format!("{picks_per_cm:.0}")
                ),
            )
        }
        Topic::Colour => {
            let place = chance.below(2);
            let work = [ColourWork::WarpFaced, ColourWork::Printed][place];
            make(
                to_say!("Is the colour in the yarns, or printed?"),
                &[Picture::Colouring(Colouring { work, through: hard * chance.share() })],
                Takes::OneOf(&COLOURS),
                difficulty,
                Truth::OneOf(place),
                match work {
                    ColourWork::WarpFaced => {
                        say!("Flecks follow the yarns on both faces; the back is pale because most of the warp lies on the face.")
                    }
                    ColourWork::Printed => {
                        say!("Flecks run aslant to the yarns, and the back is bare or blotched: the colour lies on the face.")
                    }
                }
                .to_owned(),
            )
        }
        Topic::Whole => return None,
    })
}

/// A number that is shown, to one decimal.
fn tenths(value: f64) -> String {
    written(value, 1, Decimal::spoken())
}

fn left_out(count: u8) -> String {
    match count {
        0 => say!("No stitch left out.").to_owned(),
        count if one(usize::from(count)) => say!("{count} stitch left out.", count),
        count => say!("{count} stitches left out.", count),
    }
}

fn begun_again(count: u8) -> String {
    match count {
        0 => say!("Begun again not once.").to_owned(),
        1 => say!("Begun again once.").to_owned(),
        2 => say!("Begun again twice.").to_owned(),
        count => say!("Begun again {count} times.", count),
    }
}
