//! Two copies of one garment, as two people noted it: where they differ, and one record in which the notes of both stand.

use std::fmt;

use super::deal::Deal;
use super::fitting::{FitAct, Fitting};
use super::photograph::{Photograph, PhotographAct, Photographs};
use super::record::{Act, Answer, Entry, Garment, Given};
use super::second_hand::check_of;
use super::terms::{Terms, TermsAct};
use crate::catalog::FitTable;
use crate::check::Check;
use crate::measure::PointOfMeasure;
use crate::quantity::{Decimal, written_exactly};
use crate::say;

/// A part of a record in which two copies may differ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Part {
    /// The kind of garment.
    Family,
    /// The day on which it was noted.
    Noted,
    /// What it is called.
    Label,
    /// Where it is.
    Place,
    /// The note on it.
    Note,
    /// Its ticket.
    Ticket,
    /// The guess at its ticket.
    Guess,
    /// Whether predictions lean on it.
    Reference,
    /// The kind of shop.
    Shop,
    /// Whose name is on it.
    Name,
    /// What is meant to be done with it.
    Deal,
    /// What a supplier offers it for.
    Terms,
    /// How a lot of it was inspected.
    Lot,
    /// Its photographs.
    Photographs,
    /// Its collection.
    Collection,
    /// Whether it was put away.
    Archived,
    /// Whether somebody wore it before.
    SecondHand,
    /// What was noted in the fitting room.
    Fitting,
    /// The answer to a check.
    Answer(&'static Check),
    /// The note on a check.
    CheckNote(&'static Check),
    /// What was read with a tape at a point of measure.
    Measure(&'static PointOfMeasure),
    /// The same answers, given in another order.
    Order,
    /// What this version cannot read.
    Aside,
}

/// What a join makes of a part in which two copies differ.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fate {
    /// Mine stays as it is.
    Mine,
    /// Theirs stands, where mine had none.
    Theirs,
    /// Something of both.
    Both,
}

/// Why two copies cannot be joined without losing something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JoinFault {
    /// They are of two kinds.
    OtherFamily,
    /// One holds what this version cannot read, and the other does not hold the same.
    NotKnown,
    /// Their notes together are longer than a note may be.
    TooLong,
    /// Together they have more photographs than one garment may.
    TooManyPhotographs,
}

impl fmt::Display for JoinFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            JoinFault::OtherFamily => say!("They are of two kinds, so they cannot be joined. Keep both, or take one."),
            JoinFault::NotKnown => {
                say!("One of them holds what this version cannot read, so they cannot be joined. Keep both, or update the app first.")
            }
            JoinFault::TooLong => {
                say!("Their notes together are longer than a note may be, so they cannot be joined. Keep both, or shorten yours first.")
            }
            JoinFault::TooManyPhotographs => {
                say!("Together they have more photographs than one garment may, so they cannot be joined. Keep both, or remove some of yours first.")
            }
        })
    }
}

// These are written into a note and recognised there again by their text, so they are English whatever is spoken; so is an answer in them.
/// Words before a name or a place of theirs that is written into the note, because mine has another.
const THEIR_NAME: &str = "Also called: ";
const THEIR_PLACE: &str = "Also seen at: ";
const THEIR_COLLECTION: &str = "Also in the collection: ";
/// Words before an answer of theirs that is written into the note on its check, because mine is another.
const THEIR_ANSWER: &str = "Also answered: ";

/// Where two copies differ, in the order in which a record is read; empty when they say the same. Their ids are not compared.
pub fn differences(mine: &Garment, theirs: &Garment) -> Vec<Part> {
    let mut parts = vec![
        Part::Family,
        Part::Noted,
        Part::Label,
        Part::Place,
        Part::Collection,
        Part::Archived,
        Part::SecondHand,
        Part::Note,
        Part::Ticket,
        Part::Guess,
        Part::Reference,
        Part::Shop,
        Part::Name,
        Part::Deal,
        Part::Terms,
        Part::Lot,
        Part::Photographs,
    ];
    let mut checks: Vec<&'static Check> = Vec::new();
    let noted = |garment: &Garment| -> Vec<&'static Check> {
        garment.check_notes().filter_map(|(key, _)| check_of(garment.family(), key)).collect()
    };
    let answered = [mine, theirs].into_iter().flat_map(|garment| garment.entries().iter().map(|entry| entry.check));
    for check in answered.chain(noted(mine)).chain(noted(theirs)) {
        if !checks.contains(&check) {
            checks.push(check);
        }
    }
    parts.extend(checks.into_iter().flat_map(|check| [Part::Answer(check), Part::CheckNote(check)]));
    let mut points: Vec<&'static PointOfMeasure> = mine.measures().map(|(point, _)| point).collect();
    points.extend(theirs.measures().map(|(point, _)| point).filter(|point| mine.taped(point).is_none()));
    parts.extend(points.into_iter().map(Part::Measure));
    parts.extend([Part::Fitting, Part::Order, Part::Aside]);
    parts.retain(|part| !part.is_same(mine, theirs));
    // Where answers differ their order does too, and that would say nothing more.
    if parts.iter().any(|part| matches!(part, Part::Answer(_))) {
        parts.retain(|part| *part != Part::Order);
    }
    parts
}

impl Part {
    /// Whether two copies say the same here.
    pub fn is_same(self, one: &Garment, other: &Garment) -> bool {
        match self {
            Part::Family => one.family() == other.family(),
            Part::Noted => one.noted() == other.noted(),
            Part::Label => one.label() == other.label(),
            Part::Place => one.place() == other.place(),
            Part::Note => one.note() == other.note(),
            Part::Ticket => one.ticket() == other.ticket(),
            Part::Guess => one.guess() == other.guess(),
            Part::Reference => one.is_reference() == other.is_reference(),
            Part::Shop => one.shop() == other.shop(),
            Part::Name => one.name() == other.name(),
            Part::Deal => one.deal() == other.deal(),
            Part::Terms => one.terms() == other.terms(),
            Part::Lot => one.lot() == other.lot(),
            Part::Photographs => one.photographs() == other.photographs(),
            Part::Collection => one.collection() == other.collection(),
            Part::Archived => one.archived() == other.archived(),
            Part::SecondHand => one.is_second_hand() == other.is_second_hand(),
            Part::Fitting => one.fitting() == other.fitting(),
            Part::Answer(check) => one.answer(check) == other.answer(check),
            Part::CheckNote(check) => one.check_note(check) == other.check_note(check),
            Part::Measure(point) => one.taped(point) == other.taped(point),
            Part::Order => one.entries() == other.entries(),
            Part::Aside => one.aside() == other.aside(),
        }
    }

    /// What a join makes of the part.
    pub fn fate(self, mine: &Garment, theirs: &Garment, joined: &Garment) -> Fate {
        if self.is_same(mine, joined) {
            Fate::Mine
        } else if self.is_same(theirs, joined) {
            Fate::Theirs
        } else {
            Fate::Both
        }
    }
}

/// One record in which the notes of both stand, under the id and the day of mine.
///
/// Where mine says something, it stays; where it says nothing, or put a check off, theirs is taken. Notes of both are kept, mine first with
/// an empty line between; a name, place or collection of theirs that gives way is written at the end of the note, and an answer of theirs
/// that gives way at the end of the note on its check. Answers of theirs follow mine in their own order. Joined with the same once more,
/// nothing changes.
///
/// # Errors
/// [`JoinFault`] where something would be lost.
pub fn joined(mine: &Garment, theirs: &Garment) -> Result<Garment, JoinFault> {
    if mine.family() != theirs.family() {
        return Err(JoinFault::OtherFamily);
    }
    if mine.aside() != theirs.aside() {
        return Err(JoinFault::NotKnown);
    }
    let mut acts = vec![
        Act::Label(or(mine.label(), theirs.label())),
        Act::Place(or(mine.place(), theirs.place())),
        Act::Collection(or(mine.collection(), theirs.collection())),
        Act::Note(note(mine, theirs)?),
        Act::SecondHand(mine.is_second_hand() || theirs.is_second_hand()),
        Act::Shop(mine.shop().or(theirs.shop())),
        Act::Name(mine.name().or(theirs.name())),
        Act::Deal(deal(mine, theirs)),
        Act::Lot(mine.lot().or(theirs.lot()).cloned()),
    ];
    // A guess belongs to a ticket that nobody had seen; where mine has a ticket or a guess of its own, theirs would speak of another thing.
    if mine.ticket().is_none() {
        if mine.guess().is_none() {
            acts.push(Act::Guess(theirs.guess().cloned()));
        }
        acts.push(Act::Ticket(theirs.ticket().copied()));
    }
    for Entry { check, answer } in theirs.entries() {
        let open = match mine.answer(check) {
            None => true,
            Some(Answer::Skipped) => *answer != Answer::Skipped,
            Some(_) => false,
        };
        if open {
            acts.push(Act::Answer(check, answer.clone()));
        }
    }
    let noted = theirs.check_notes().filter_map(|(key, _)| check_of(theirs.family(), key));
    let answered = theirs.entries().iter().map(|entry| entry.check);
    for check in noted.chain(answered) {
        acts.push(Act::CheckNote(check, check_note(check, mine, theirs)?));
    }
    let taped = theirs.measures().filter(|(point, _)| mine.taped(point).is_none());
    acts.extend(taped.map(|(point, taped)| Act::Measure(point, Some(taped.clone()))));
    acts.extend(photographs(mine.photographs(), theirs.photographs())?.into_iter().map(Act::Photograph));
    acts.extend(terms(mine.terms(), theirs.terms()).into_iter().map(Act::Terms));
    if let Some(table) = mine.family().fit {
        acts.extend(fitting(table, mine.fitting(), theirs.fitting()).into_iter().map(Act::Fit));
    }
    Ok(acts.into_iter().fold(mine.clone(), |garment, act| garment.after(act)))
}

fn or(mine: &str, theirs: &str) -> String {
    if mine.is_empty() { theirs } else { mine }.to_owned()
}

/// Whether the lines of `part` stand in `whole`, one after the other.
fn holds(whole: &str, part: &str) -> bool {
    let (whole, part): (Vec<&str>, Vec<&str>) = (whole.split('\n').collect(), part.split('\n').collect());
    whole.windows(part.len()).any(|lines| lines == part)
}

/// Words of both, mine first; once where one has the other in it already.
fn words(mine: &str, theirs: &str) -> String {
    if mine.is_empty() || holds(theirs, mine) {
        return theirs.to_owned();
    }
    if theirs.is_empty() || holds(mine, theirs) {
        return mine.to_owned();
    }
    format!("{mine}\n\n{theirs}")
}

/// A note as long as one may be.
fn within(note: String) -> Result<String, JoinFault> {
    if note.chars().count() > Garment::LONGEST_TEXT { Err(JoinFault::TooLong) } else { Ok(note) }
}

/// The notes of both, and what of theirs has no other place.
fn note(mine: &Garment, theirs: &Garment) -> Result<String, JoinFault> {
    let mut note = words(mine.note(), theirs.note());
    let given_way = [
        (THEIR_NAME, mine.label(), theirs.label()),
        (THEIR_PLACE, mine.place(), theirs.place()),
        (THEIR_COLLECTION, mine.collection(), theirs.collection()),
    ];
    for (said, mine, theirs) in given_way {
        let line = format!("{said}{theirs}");
        if mine.is_empty() || theirs.is_empty() || mine == theirs || holds(&note, &line) {
            continue;
        }
        if !note.is_empty() {
            note.push('\n');
        }
        note.push_str(&line);
    }
    within(note)
}

/// The notes of both on a check, and what theirs was answered if mine was answered otherwise.
fn check_note(check: &Check, mine: &Garment, theirs: &Garment) -> Result<String, JoinFault> {
    let note = words(mine.check_note(check), theirs.check_note(check));
    let line = match (mine.answer(check), theirs.answer(check)) {
        (None | Some(Answer::Skipped), _) | (_, None | Some(Answer::Skipped)) => return within(note),
        (Some(mine), Some(theirs)) if mine == theirs => return within(note),
        (Some(_), Some(theirs)) => format!("{THEIR_ANSWER}{}", answered(check, theirs)),
    };
    within(if note.is_empty() {
        line
    } else if holds(&note, &line) {
        note
    } else {
        format!("{note}\n{line}")
    })
}

/// An answer in English words that need no look at the settings, as they are compared with what stands in the note: amounts stand in the units in which they were given.
fn answered(check: &Check, answer: &Answer) -> String {
    match answer {
        Answer::Judged { level, .. } => {
            check.levels.iter().find(|one| one.key == *level).map_or(*level, |one| one.name).to_owned()
        }
        Answer::Measured(readings) => {
            let named = |given: &Given| match readings.instrument.input(given.input) {
                Some((_, input)) => format!("{} ", input.name),
                None => String::new(),
            };
            let amount = |given: &Given| written_exactly(given.amount, 4, Decimal::Point);
            let all =
                readings.given.iter().map(|given| format!("{}{} {}", named(given), amount(given), given.unit.english_symbol()));
            all.collect::<Vec<_>>().join(", ").trim_end().to_owned()
        }
        Answer::CannotTell => "cannot tell".to_owned(),
        Answer::Skipped => String::new(),
    }
}

/// All photographs of both, mine first. Where both have one, its captions are put together, and it is evidence for my check before theirs.
fn photographs(mine: &Photographs, theirs: &Photographs) -> Result<Vec<PhotographAct>, JoinFault> {
    let mut acts = Vec::new();
    let mut count = mine.count();
    for other in theirs.all() {
        let Some((place, one)) = mine.all().iter().enumerate().find(|(_, one)| one.id() == other.id()) else {
            count += 1;
            acts.push(PhotographAct::Add(other.clone()));
            continue;
        };
        let caption = match (one.caption(), other.caption()) {
            (mine, theirs) if mine.contains(theirs) => mine.to_owned(),
            (mine, theirs) if theirs.contains(mine) => theirs.to_owned(),
            (mine, theirs) => format!("{mine}; {theirs}"),
        };
        if caption.chars().count() > Photograph::LONGEST_CAPTION {
            return Err(JoinFault::TooLong);
        }
        let both = one.clone().captioned(&caption).for_check(one.check().or(other.check()));
        acts.push(PhotographAct::PutBack(place, both));
    }
    if count > Photographs::MOST { Err(JoinFault::TooManyPhotographs) } else { Ok(acts) }
}

fn deal(mine: &Garment, theirs: &Garment) -> Deal {
    // A target is an amount in the currency of its ticket; under a ticket in another it would be another amount.
    let same_money = mine.ticket().is_none_or(|ticket| theirs.ticket().is_some_and(|other| other.currency == ticket.currency));
    let (mine, theirs) = (mine.deal(), theirs.deal());
    Deal::default()
        .with_wears(mine.wears_a_year().or(theirs.wears_a_year()))
        .with_target(mine.target().or(theirs.target().filter(|_| same_money)))
        .with_minimum(mine.minimum().or(theirs.minimum()))
}

fn terms(mine: &Terms, theirs: &Terms) -> Vec<TermsAct> {
    let mut acts = vec![
        TermsAct::Supplier(or(mine.supplier(), theirs.supplier())),
        TermsAct::Style(or(mine.style(), theirs.style())),
        TermsAct::Colourways(or(mine.colourways(), theirs.colourways())),
        TermsAct::Sizes(or(mine.sizes(), theirs.sizes())),
        TermsAct::Minimum(mine.minimum().or(theirs.minimum())),
        TermsAct::Delivery(mine.delivery().or(theirs.delivery())),
        TermsAct::Shortlisted(mine.shortlisted() || theirs.shortlisted()),
    ];
    // A price means something with its currency and its term only: the three go together or not at all.
    if mine.prices().is_empty() && mine.currency().is_none() && mine.incoterm().is_none() {
        acts.push(TermsAct::Currency(theirs.currency()));
        acts.push(TermsAct::Incoterm(theirs.incoterm()));
        acts.push(TermsAct::Prices(theirs.prices().to_vec()));
    }
    acts
}

fn fitting(table: &'static FitTable, mine: &Fitting, theirs: &Fitting) -> Vec<FitAct> {
    let mut acts = Vec::new();
    // Whose body it was tried on decides what the mirror showed: on another person all that is another fitting.
    if mine.who().is_some() && theirs.who().is_some() && mine.who() != theirs.who() {
        return acts;
    }
    acts.push(FitAct::Who(mine.who().or(theirs.who()).cloned()));
    acts.push(FitAct::Cut(mine.cut().or(theirs.cut())));
    acts.push(FitAct::Cloth(mine.cloth().or(theirs.cloth())));
    acts.push(FitAct::Wash(mine.wash().or(theirs.wash())));
    acts.push(FitAct::Label(mine.label().or(theirs.label()).cloned()));
    let allowances = table.allowances.iter().map(|one| FitAct::Allowance(one, mine.allowance(one).or(theirs.allowance(one))));
    let moves = table.moves.iter().map(|one| FitAct::Move(one, mine.went(one).or(theirs.went(one))));
    let signs = table.signs.iter().map(|one| FitAct::Sign(one, mine.seen(one).or(theirs.seen(one))));
    acts.extend(allowances.chain(moves).chain(signs));
    acts
}
