//! Whether a garment fits a person, now and later: what was taped, noted and seen, handed to the engine, and what it all comes to.

use super::record::{Answer, Garment};
use crate::catalog::{FitTable, Move, Sign};
use crate::check::Check;
use crate::fit::{
    After, Against, Allowance, Along, Alteration, Between, BodyMeasure, Cure, Cut, Finding, Line, LineFit, Person, Place, Reach,
    SizeAdvice, Tape, Verdict, Went, advise, assess, verdict,
};
use crate::measure::{ChangeRange, Drying, GIRTH, PointOfMeasure, Warmth, expected_change};
use crate::quantity::{Estimate, Length, Number, Unit, rectangular};

/// A place that could not be compared, and what is missing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Missing {
    /// The garment was not measured there.
    Garment,
    /// The person was not measured there.
    Body,
    /// Neither was.
    Both,
}

/// One place of the table.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The point of measure of the garment.
    pub point: &'static PointOfMeasure,
    /// The measure of the body that stands against it, or would best.
    pub body: &'static BodyMeasure,
    /// What was added to that measure because the garment lies elsewhere, in centimetres; 0 where it lies there.
    pub adds_cm: f64,
    /// What it comes to, or what is missing.
    pub fit: Result<LineFit, Missing>,
    /// How far a tailor can go there.
    pub reach: Reach,
    /// What a tailor can do about what is amiss in the end; empty where nothing is, or nothing reaches.
    pub mend: Vec<&'static Alteration>,
}

/// What a finding is about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Spoken {
    /// A place that was measured, by its place among the rows.
    Row(usize),
    /// A move that did not go freely.
    Move(&'static Move),
    /// A sign that was seen.
    Sign(&'static Sign),
    /// Everything that was looked for in the mirror was well, and no tape says more.
    Mirror,
    /// What was neither measured nor looked at.
    Unseen,
}

/// How the wash was taken into account.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WashKnown {
    /// Cloth and wash are known.
    Yes,
    /// Nobody said what the cloth is: nothing is said of later.
    NoCloth,
    /// It may felt, and felt has no limit: nothing is said of later.
    Felts,
}

/// What everything comes to. Worked out anew each time, never stored.
#[derive(Clone, Debug, PartialEq)]
pub struct FitReport {
    /// The cut that was taken.
    pub cut: &'static Cut,
    /// Give of the cloth, in per cent, and how far off (1 sigma).
    pub give: (f64, f64),
    /// Whether the give was judged or measured on this garment; else it is the family's usual.
    pub give_known: bool,
    /// Change in the first washes lengthwise and across, where it is known.
    pub change: Option<[Between; 2]>,
    /// How the wash was taken into account.
    pub wash: WashKnown,
    /// Every place of the table.
    pub rows: Vec<Row>,
    /// What was found, and what each is about.
    pub findings: Vec<(Spoken, Finding)>,
    /// The verdict; none while nothing is found.
    pub verdict: Option<Verdict>,
    /// Whether the size beside it would do better.
    pub size: SizeAdvice,
}

impl FitReport {
    /// What the verdict turns on.
    pub fn decides(&self) -> Option<Spoken> {
        self.findings.get(self.verdict?.decides).map(|(spoken, _)| *spoken)
    }
}

/// Chance of a misfit that tape and mirror overlook together while one of them is missing: no tape knows a rise, no mirror a wash. Judgement.
const OVERLOOKED: f64 = 0.1;
/// How much that chance grows while nothing was measured or looked at: about a third of what is tried on is hung back for its fit. Judgement.
const UNSEEN: f64 = 0.3;
/// Chance that a garment which is too tight at a place lets a move that tries the place go freely. Judgement.
const LET_THROUGH: f64 = 0.4;
/// As far as free moves may bring that chance down: they all try the same cloth, and a fitting room is no working day. Judgement.
const LET_ALL_THROUGH: f64 = 0.1;
/// Give of a level whose spans have no end: so much beyond its finite end, in per cent. Judgement.
const BEYOND: f64 = 10.0;
/// How the wash is taken while nobody said: warm, on the line.
pub const USUAL_WASH: (Warmth, Drying) = (Warmth::Warm, Drying::Line);

/// Works out the fit of a garment on a person; none where nobody has written the table of its family.
///
/// # Formula
/// Each place of the table by [`assess`]; each sign that was seen and each move that did not go freely is a [`Finding::fault`]; what was
/// neither measured nor looked at is one too; all together by [`verdict`]. Moves that went freely speak against a garment that is too tight
/// today at the places that they try. The give is what was measured, else the middle of the level that was judged, else the family's usual.
///
/// # Source
/// As the engine's functions name it.
pub fn fit(garment: &Garment, person: Option<&Person>) -> Option<FitReport> {
    let table = garment.family().fit?;
    let fitting = garment.fitting();
    let cut = fitting.cut().or(table.cuts.first().copied())?;
    let (give, give_known) = match table.give.and_then(|check| garment.amount_of(check)) {
        Some(give) => (give, true),
        None => (table.usual_give, false),
    };
    let growth = table.growth.and_then(|check| garment.amount_of(check)).map(|(growth, _)| growth / 100.0);
    let (wash, change) = washes(garment);
    let room = |alteration: &'static Alteration| {
        let found = |allowance: &'static Allowance| fitting.allowance(allowance)?.in_unit(Unit::Centimetre);
        alteration.room.centimetres(found)
    };
    let mut rows = Vec::new();
    let mut places = Vec::new();
    for line in table.lines {
        let Some(point) = garment.family().points.iter().find(|point| point.key == line.point) else { continue };
        let Some(best) = line.against.first() else { continue };
        let taken =
            person.and_then(|person| line.against.iter().find_map(|against| Some((against, person.estimate(against.measure)?))));
        let cloth = garment.length_at(point);
        let after = After {
            wash: change.map(|change| change[usize::from(line.along == Along::Width)]),
            raw: fitting.cloth().is_some_and(|cloth| cloth.raw),
            growth,
        };
        let reach = Reach::of(line, room);
        let judged = match (&cloth, &taken) {
            (Some(cloth), Some((against, body))) => tape(cloth, body, against, give)
                .map(|tape| tape.tried(let_through(garment, table, line)))
                .and_then(|tape| Some((tape, assess(line, cut, tape, after, reach)?)))
                .ok_or(Missing::Both),
            (Some(_), None) => Err(Missing::Body),
            (None, Some(_)) => Err(Missing::Garment),
            (None, None) => Err(Missing::Both),
        };
        let fit = judged.map(|(tape, fit)| {
            places.push(Place { line, tape, after, reach });
            fit
        });
        let mend = fit.as_ref().map(|fit| mend(fit, room)).unwrap_or_default();
        let against = taken.map_or(best, |(against, _)| against);
        rows.push(Row { point, body: against.measure, adds_cm: against.adds_cm, fit, reach, mend });
    }
    let findings = findings(garment, table, &rows);
    let all: Vec<Finding> = findings.iter().map(|(_, finding)| *finding).collect();
    Some(FitReport { cut, give, give_known, change, wash, rows, verdict: verdict(&all), findings, size: advise(&places, cut) })
}

fn tape(cloth: &Estimate<Length>, body: &Estimate<Length>, against: &Against, give: (f64, f64)) -> Option<Tape> {
    let give = Estimate::<Number>::measured_in("give", give.0, give.1, Unit::Percent).ok()?;
    Tape::new(cloth, body, against, &give)
}

/// How likely a garment that is too tight at a place today would have let the moves through that went freely.
fn let_through(garment: &Garment, table: &FitTable, line: &Line) -> f64 {
    let free = |one: &&Move| one.tries.contains(&line.point) && garment.fitting().went(one) == Some(Went::Freely);
    let moves = table.moves.iter().copied().filter(free).count();
    LET_THROUGH.powi(i32::try_from(moves).unwrap_or(i32::MAX)).max(LET_ALL_THROUGH)
}

/// How the cloth will change, lengthwise and across, as shares.
fn washes(garment: &Garment) -> (WashKnown, Option<[Between; 2]>) {
    let fitting = garment.fitting();
    let Some(cloth) = fitting.cloth() else { return (WashKnown::NoCloth, None) };
    let (warmth, drying) = fitting.wash().unwrap_or(USUAL_WASH);
    let share = |range: ChangeRange| Between { low: range.low / 100.0, high: range.high / 100.0 };
    match expected_change(cloth, warmth, drying) {
        Some(change) => (WashKnown::Yes, Some(change.map(share))),
        None => (WashKnown::Felts, None),
    }
}

/// What a tailor can do about what is amiss at a place in the end, the cheapest first.
fn mend(fit: &LineFit, room: impl Fn(&'static Alteration) -> f64) -> Vec<&'static Alteration> {
    let Some((way, by)) = fit.amiss() else { return Vec::new() };
    let mut mend: Vec<&'static Alteration> =
        fit.line.alterations.iter().copied().filter(|alteration| alteration.way == way && room(alteration) >= by).collect();
    mend.sort_by_key(|alteration| alteration.cost);
    mend
}

fn findings(garment: &Garment, table: &FitTable, rows: &[Row]) -> Vec<(Spoken, Finding)> {
    let fitting = garment.fitting();
    let mut findings: Vec<(Spoken, Finding)> = Vec::new();
    for (place, row) in rows.iter().enumerate() {
        if let Ok(fit) = &row.fit {
            findings.push((Spoken::Row(place), Finding { chances: fit.fates }));
        }
    }
    let measured = findings.len();
    let mut looked = 0;
    for one in table.moves {
        if let Some(went) = fitting.went(one) {
            looked += 1;
            if went.part() > 0.0 {
                let cure = fitting.cure(one.cure, one.needs);
                findings.push((Spoken::Move(one), Finding::fault(one.weight * went.part(), cure)));
            }
        }
    }
    for sign in table.signs {
        if let Some(seen) = fitting.seen(sign) {
            looked += 1;
            if seen {
                findings.push((Spoken::Sign(sign), Finding::fault(sign.weight, fitting.cure(sign.cure, sign.needs))));
            }
        }
    }
    if measured + looked > 0 {
        let share = |part: usize, of: usize| if of == 0 { 0.0 } else { part as f64 / of as f64 };
        let taped = share(measured, rows.len());
        let mirrored = share(looked, table.moves.len() + table.signs.len());
        let doubt = OVERLOOKED * (1.0 - taped * mirrored) + UNSEEN * (1.0 - taped) * (1.0 - mirrored);
        let spoken = if findings.is_empty() { Spoken::Mirror } else { Spoken::Unseen };
        findings.push((spoken, Finding::fault(doubt, Cure::None)));
    }
    findings
}

impl Garment {
    /// What the tape sheet says of a point, where it was measured.
    fn length_at(&self, point: &PointOfMeasure) -> Option<Estimate<Length>> {
        let outcome = self.taped(point)?.outcome(point).ok()?;
        Estimate::measured_in(point.key, outcome.value, outcome.uncertainty, GIRTH.unit).ok()
    }

    /// What a check whose levels are spans comes to, as a number with its spread: the reading, or the middle of the level that was judged.
    fn amount_of(&self, check: &'static Check) -> Option<(f64, f64)> {
        match self.answer(check)? {
            Answer::Measured(_) => self.reading(check)?.ok().map(|outcome| (outcome.value, outcome.uncertainty)),
            Answer::Judged { level, .. } => {
                let spans = check.level(level)?.1.spans;
                let low = spans.iter().map(|span| span.low).fold(f64::INFINITY, f64::min);
                let high = spans.iter().map(|span| span.high).fold(f64::NEG_INFINITY, f64::max);
                let (low, high) = match (low.is_finite(), high.is_finite()) {
                    (true, true) => (low, high),
                    (false, true) => ((high - BEYOND).max(0.0), high),
                    (true, false) => (low, low + BEYOND),
                    (false, false) => return None,
                };
                Some((0.5 * (low + high), rectangular(0.5 * (high - low))))
            }
            Answer::CannotTell | Answer::Skipped => None,
        }
    }
}
