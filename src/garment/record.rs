//! What a person saw, felt, measured and wrote down of one garment. Facts only: nothing here is worked out.

use std::collections::BTreeMap;

use super::deal::Deal;
use super::fitting::{FitAct, Fitting};
use super::guess::Guess;
use super::photograph::{PhotographAct, Photographs};
use super::second_hand::knows;
use super::terms::{Terms, TermsAct};
use crate::catalog::Family;
use crate::check::{Check, Level};
use crate::cost::Channel;
use crate::grading::Care;
use crate::lot::Log;
use crate::measure::{Fault, Instrument, Outcome, PointOfMeasure};
use crate::quantity::{Amount, Unit};
use crate::trade::{Day, Name, Stage, Ticket};

/// Names one garment for good. Made by whoever has chance to hand out; letters, digits, `-` and `~` only.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Id(String);

impl Id {
    /// Longest name accepted.
    pub const LONGEST: usize = 80;

    /// Takes a name of 1 to 80 letters, digits, `-` and `~`; anything else could not be told apart inside a storage key.
    pub fn new(text: &str) -> Option<Id> {
        let fits = !text.is_empty()
            && text.len() <= Id::LONGEST
            && text.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'-' || byte == b'~');
        fits.then(|| Id(text.to_owned()))
    }

    /// The name as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether it is of the invented rack, which shows what the app does and must teach nothing about real garments.
    pub fn is_invented(&self) -> bool {
        self.0.starts_with("invented-")
    }
}

/// One number as the person gave it to an instrument.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// Key of the instrument's input.
    pub input: &'static str,
    /// The amount, in the unit in which it was given, so that it can be shown and corrected as it was.
    pub amount: f64,
    /// The unit in which it was given.
    pub unit: Unit,
}

/// Readings of one instrument, as given.
#[derive(Clone, Debug, PartialEq)]
pub struct Readings {
    /// The instrument.
    pub instrument: &'static Instrument,
    /// What was given for its inputs, in any order; of two for one input the later counts.
    pub given: Vec<Given>,
}

impl Readings {
    /// What they come to.
    ///
    /// # Errors
    /// The instrument's [`Fault`].
    pub fn outcome(&self) -> Result<Outcome, Fault> {
        let mut amounts = vec![None; self.instrument.inputs.len()];
        for given in &self.given {
            if let Some((place, input)) = self.instrument.input(given.input) {
                // A unit of another kind than the input's cannot be typed, but it could stand in a damaged page.
                amounts[place] = Some(given.unit.convert(given.amount, input.unit).unwrap_or(f64::NAN));
            }
        }
        self.instrument.estimate(&amounts)
    }
}

/// Readings with a tape at one point of measure, as given.
#[derive(Clone, Debug, PartialEq)]
pub struct Taped {
    readings: Vec<Amount>,
    round: bool,
}

impl Taped {
    /// Most readings of one point: a sixth would teach hardly more.
    pub const MOST: usize = 5;

    /// One to five lengths, in the order in which they were read and each in the unit in which it was given; `round` says that the tape
    /// went all the way round. None for other than one to five, for what is no length, and for what is no finite number.
    pub fn new(readings: Vec<Amount>, round: bool) -> Option<Taped> {
        let fits = |reading: &Amount| reading.number.is_finite() && reading.unit.is_like(Unit::Millimetre);
        ((1..=Taped::MOST).contains(&readings.len()) && readings.iter().all(fits)).then_some(Taped { readings, round })
    }

    /// What was read.
    pub fn readings(&self) -> &[Amount] {
        &self.readings
    }

    /// Whether the tape went all the way round, so that nothing is to be doubled.
    pub fn round(&self) -> bool {
        self.round
    }
}

/// What a person answered to a check.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// One of the check's levels, judged by hand and eye.
    Judged {
        /// Key of the level.
        level: &'static str,
        /// How sure the person said they were.
        care: Care,
    },
    /// Readings of the check's instrument, as given.
    Measured(Readings),
    /// Looked, and cannot tell.
    CannotTell,
    /// Not now: asked again before the garment is turned back, and when nothing else is left.
    Skipped,
}

/// A check and its answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The check.
    pub check: &'static Check,
    /// The answer.
    pub answer: Answer,
}

/// One garment as noted. Changed only by [`Garment::after`].
///
/// A record holds finite amounts only, so it is equal to itself and may be `Eq`: two handles to one record are then equal without a look
/// at what it holds, which a rack of a thousand is glad of.
#[derive(Clone, Debug, PartialEq)]
pub struct Garment {
    id: Id,
    family: &'static Family,
    noted: Day,
    label: String,
    place: String,
    note: String,
    ticket: Option<Ticket>,
    guess: Option<Guess>,
    left_out: bool,
    shop: Option<Channel>,
    name: Option<Name>,
    deal: Deal,
    fitting: Fitting,
    terms: Terms,
    lot: Option<Log>,
    photographs: Photographs,
    collection: String,
    archived: bool,
    pub(super) second_hand: bool,
    entries: Vec<Entry>,
    notes: BTreeMap<&'static str, String>,
    taped: BTreeMap<&'static str, Taped>,
    aside: Vec<(String, String)>,
}

/// One thing a person does to the record.
#[derive(Clone, Debug, PartialEq)]
pub enum Act {
    /// Answers a check, or changes its answer.
    Answer(&'static Check, Answer),
    /// Takes an answer back.
    Clear(&'static Check),
    /// Puts an entry in at that place of the order; only undo makes it.
    PutBack(usize, Entry),
    /// Writes the note on a check; empty takes it away.
    CheckNote(&'static Check, String),
    /// Notes the readings at a point of measure, or takes them away.
    Measure(&'static PointOfMeasure, Option<Taped>),
    /// Names the garment.
    Label(String),
    /// Says where it was seen.
    Place(String),
    /// Notes or takes away the ticket.
    Ticket(Option<Ticket>),
    /// Commits a guess at the ticket, or takes it away. Only while the ticket is not in view: afterwards it would be none.
    Guess(Option<Guess>),
    /// Lets predictions lean on this garment's ticket, or leaves it out.
    Reference(bool),
    /// Says what kind of shop it hangs in, or that nobody knows.
    Shop(Option<Channel>),
    /// Says whose name is on it, or that nobody knows.
    Name(Option<Name>),
    /// Notes what a person means to do with it: wear it so often, ask so much for it, order so many.
    Deal(Deal),
    /// Notes something in the fitting room.
    Fit(FitAct),
    /// Notes something of a supplier's offer.
    Terms(TermsAct),
    /// Notes how a lot of it was inspected, or takes that away.
    Lot(Option<Log>),
    /// Adds, captions or removes a photograph of evidence.
    Photograph(PhotographAct),
    /// Puts it in the collection of that name; empty takes it out.
    Collection(String),
    /// Puts it away, or takes it out again.
    Archived(bool),
    /// Says whether somebody wore it before. Answers about wear stay where they are when it is said to be new, and count for nothing.
    SecondHand(bool),
    /// Writes the note on the garment.
    Note(String),
}

impl Eq for Garment {}

impl Garment {
    /// Longest label, place or note kept, in characters (Unicode code points); what is over is cut, so that one paste cannot fill the notebook.
    pub const LONGEST_TEXT: usize = 2000;
    /// Longest name of a collection, in characters.
    pub const LONGEST_NAME: usize = 80;

    /// A garment of which nothing is known yet but its family and the day.
    pub fn new(id: Id, family: &'static Family, noted: Day) -> Garment {
        Garment {
            id,
            family,
            noted,
            label: String::new(),
            place: String::new(),
            note: String::new(),
            ticket: None,
            guess: None,
            left_out: false,
            shop: None,
            name: None,
            deal: Deal::default(),
            fitting: Fitting::default(),
            terms: Terms::default(),
            lot: None,
            photographs: Photographs::default(),
            collection: String::new(),
            archived: false,
            second_hand: false,
            entries: Vec::new(),
            notes: BTreeMap::new(),
            taped: BTreeMap::new(),
            aside: Vec::new(),
        }
    }

    /// The same facts under another name.
    pub fn named(&self, id: Id) -> Garment {
        Garment { id, ..self.clone() }
    }

    /// Adds what this version cannot read, as the field's name and its stored JSON text, to be written back untouched. Text that is no
    /// JSON cannot be written back, and is not.
    pub fn with_aside(mut self, field: String, text: String) -> Garment {
        self.aside.push((field, text));
        self
    }

    /// Names the garment for good.
    pub fn id(&self) -> &Id {
        &self.id
    }

    /// Kind of garment.
    pub fn family(&self) -> &'static Family {
        self.family
    }

    /// Day on which it was first noted.
    pub fn noted(&self) -> Day {
        self.noted
    }

    /// What the person calls it; may be empty.
    pub fn label(&self) -> &str {
        &self.label
    }

    /// What it is spoken of by: the person's name for it, or its kind where they gave none.
    pub fn called(&self) -> &str {
        if self.label.is_empty() { self.family.name() } else { &self.label }
    }

    /// Where it was seen; may be empty.
    pub fn place(&self) -> &str {
        &self.place
    }

    /// The person's note on it; may be empty.
    pub fn note(&self) -> &str {
        &self.note
    }

    /// The ticket, if noted.
    pub fn ticket(&self) -> Option<&Ticket> {
        self.ticket.as_ref()
    }

    /// The ticket, if it is noted and does not lie face down.
    pub fn ticket_in_view(&self) -> Option<&Ticket> {
        self.ticket().filter(|ticket| !ticket.face_down)
    }

    /// The guess committed before the ticket was seen, if there was one.
    pub fn guess(&self) -> Option<&Guess> {
        self.guess.as_ref()
    }

    /// Whether the person lets predictions lean on this garment, once its ticket is in view; so it is until they say otherwise.
    pub fn is_reference(&self) -> bool {
        !self.left_out
    }

    /// The kind of shop it hangs in, where the person said so.
    pub fn shop(&self) -> Option<Channel> {
        self.shop
    }

    /// Whose name is on it, where the person said so.
    pub fn name(&self) -> Option<Name> {
        self.name
    }

    /// What the person means to do with it.
    pub fn deal(&self) -> &Deal {
        &self.deal
    }

    /// What was noted in the fitting room.
    pub fn fitting(&self) -> &Fitting {
        &self.fitting
    }

    /// What a supplier offers it for.
    pub fn terms(&self) -> &Terms {
        &self.terms
    }

    /// How a lot of it was inspected, if one was.
    pub fn lot(&self) -> Option<&Log> {
        self.lot.as_ref()
    }

    /// Photographs of evidence: which, and what they show.
    pub fn photographs(&self) -> &Photographs {
        &self.photographs
    }

    /// The season, show or project it stands under; may be empty.
    pub fn collection(&self) -> &str {
        &self.collection
    }

    /// Whether it was put away.
    pub fn archived(&self) -> bool {
        self.archived
    }

    /// Answers in the order in which the checks were first answered; one put off stands where it was last put off or taken up.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// What this version could not read, by field.
    pub fn aside(&self) -> &[(String, String)] {
        &self.aside
    }

    /// The answer to a check, if it has one.
    pub fn answer(&self, check: &Check) -> Option<&Answer> {
        self.entries.iter().find(|entry| entry.check == check).map(|entry| &entry.answer)
    }

    /// The note on a check; may be empty.
    pub fn check_note(&self, check: &Check) -> &str {
        self.notes.get(check.key).map_or("", String::as_str)
    }

    /// Notes on checks that have one.
    pub fn check_notes(&self) -> impl Iterator<Item = (&'static str, &str)> {
        self.notes.iter().map(|(key, note)| (*key, note.as_str()))
    }

    /// What was read at a point of measure.
    pub fn taped(&self, point: &PointOfMeasure) -> Option<&Taped> {
        self.taped.get(point.key)
    }

    /// Points of measure that have readings, in the order of the family's sheet.
    pub fn measures(&self) -> impl Iterator<Item = (&'static PointOfMeasure, &Taped)> {
        self.family.points.iter().filter_map(|point| Some((point, self.taped(point)?)))
    }

    /// The level a person judged, if the answer is a judgement.
    pub fn level(&self, check: &Check) -> Option<&'static Level> {
        match self.answer(check)? {
            Answer::Judged { level, .. } => check.level(level).map(|(_, level)| level),
            _ => None,
        }
    }

    /// Checks put to it as it is, new or second-hand, with an answer other than "not now".
    pub fn answered(&self) -> usize {
        self.entries.iter().filter(|entry| entry.answer != Answer::Skipped && self.puts(entry.check)).count()
    }

    /// How the garment was held for the last check that was answered.
    pub fn stage(&self) -> Stage {
        let last = self.entries.iter().rev().find(|entry| entry.answer != Answer::Skipped);
        last.map_or(Stage::OnTheHanger, |entry| entry.check.stage)
    }

    /// Whether an act is about something that can be recorded of this garment: a check or a point of measure of its family; a level of
    /// that check, or finite amounts for inputs of one of its instruments; a guess while the ticket is not in view; a photograph for a check of
    /// its family or for none.
    fn takes(&self, act: &Act) -> bool {
        match act {
            Act::Answer(check, answer) | Act::PutBack(_, Entry { check, answer }) => {
                let fits = match answer {
                    Answer::Judged { level, .. } => check.level(level).is_some(),
                    Answer::Measured(Readings { instrument, given }) => {
                        let asked = |given: &Given| given.amount.is_finite() && instrument.input(given.input).is_some();
                        check.instruments.contains(instrument) && given.iter().all(asked)
                    }
                    Answer::CannotTell | Answer::Skipped => true,
                };
                fits && knows(self.family, check)
            }
            Act::CheckNote(check, _) => knows(self.family, check),
            Act::Measure(point, _) => self.family.points.iter().any(|known| std::ptr::eq(known, *point)),
            Act::Guess(_) => self.ticket_in_view().is_none(),
            Act::Fit(act) => self.family.fit.is_some_and(|table| Fitting::takes(table, act)),
            Act::Lot(log) => log.as_ref().is_none_or(Log::is_whole),
            Act::Photograph(PhotographAct::Add(one) | PhotographAct::PutBack(_, one)) => {
                one.check().is_none_or(|check| knows(self.family, check))
            }
            Act::Photograph(_) => true,
            Act::Terms(_) | Act::Collection(_) | Act::Archived(_) => true,
            Act::Reference(_) | Act::Shop(_) | Act::Name(_) | Act::Deal(_) | Act::SecondHand(_) => true,
            Act::Clear(_) | Act::Label(_) | Act::Place(_) | Act::Ticket(_) | Act::Note(_) => true,
        }
    }

    /// The record after an act. Total: an act about another family's check or point of measure, a level that its check does not have, or readings that its
    /// instrument does not ask for or that are no numbers, or a guess at a ticket that is in view, changes nothing.
    pub fn after(&self, act: Act) -> Garment {
        let mut next = self.clone();
        if !self.takes(&act) {
            return next;
        }
        match act {
            Act::Answer(check, answer) => match next.entries.iter().position(|entry| entry.check == check) {
                // Taken up again after "not now": it is made now, and not when it was put off.
                Some(place) if next.entries[place].answer == Answer::Skipped => {
                    next.entries.remove(place);
                    next.entries.push(Entry { check, answer });
                }
                Some(place) => next.entries[place].answer = answer,
                None => next.entries.push(Entry { check, answer }),
            },
            Act::Clear(check) => next.entries.retain(|entry| entry.check != check),
            Act::PutBack(place, entry) => {
                next.entries.retain(|other| other.check != entry.check);
                let place = place.min(next.entries.len());
                next.entries.insert(place, entry);
            }
            Act::CheckNote(check, text) => {
                let text = shortened(&text);
                if text.is_empty() {
                    next.notes.remove(check.key);
                } else {
                    next.notes.insert(check.key, text);
                }
            }
            Act::Measure(point, Some(taped)) => {
                next.taped.insert(point.key, taped);
            }
            Act::Measure(point, None) => {
                next.taped.remove(point.key);
            }
            Act::Label(text) => next.label = shortened(&text),
            Act::Place(text) => next.place = shortened(&text),
            Act::Note(text) => next.note = shortened(&text),
            Act::Ticket(ticket) => next.ticket = ticket,
            Act::Guess(guess) => next.guess = guess,
            Act::Reference(is) => next.left_out = !is,
            Act::Shop(shop) => next.shop = shop,
            Act::Name(name) => next.name = name,
            Act::Deal(deal) => next.deal = deal,
            Act::Fit(act) => next.fitting = next.fitting.after(act),
            Act::Terms(act) => next.terms = next.terms.after(act),
            Act::Lot(log) => next.lot = log,
            Act::Photograph(act) => next.photographs = next.photographs.after(act),
            Act::Collection(text) => {
                next.collection = text.trim().chars().take(Garment::LONGEST_NAME).collect::<String>().trim_end().to_owned();
            }
            Act::Archived(is) => next.archived = is,
            Act::SecondHand(is) => next.second_hand = is,
        }
        next
    }

    /// The act that puts back what `act` would change: `g.after(act).after(g.undoing(&act)) == g`.
    pub fn undoing(&self, act: &Act) -> Act {
        match act {
            Act::Answer(check, _) | Act::Clear(check) => {
                match self.entries.iter().enumerate().find(|(_, entry)| entry.check == *check) {
                    Some((place, entry)) => Act::PutBack(place, entry.clone()),
                    None => Act::Clear(check),
                }
            }
            Act::PutBack(_, entry) => self.undoing(&Act::Clear(entry.check)),
            Act::CheckNote(check, _) => Act::CheckNote(check, self.check_note(check).to_owned()),
            Act::Measure(point, _) => Act::Measure(point, self.taped(point).cloned()),
            Act::Label(_) => Act::Label(self.label.clone()),
            Act::Place(_) => Act::Place(self.place.clone()),
            Act::Note(_) => Act::Note(self.note.clone()),
            Act::Ticket(_) => Act::Ticket(self.ticket),
            Act::Guess(_) => Act::Guess(self.guess),
            Act::Reference(_) => Act::Reference(self.is_reference()),
            Act::Shop(_) => Act::Shop(self.shop),
            Act::Name(_) => Act::Name(self.name),
            Act::Deal(_) => Act::Deal(self.deal),
            Act::Fit(act) => Act::Fit(self.fitting.undoing(act)),
            Act::Terms(act) => Act::Terms(self.terms.undoing(act)),
            Act::Lot(_) => Act::Lot(self.lot.clone()),
            Act::Photograph(act) => Act::Photograph(self.photographs.undoing(act)),
            Act::Collection(_) => Act::Collection(self.collection.clone()),
            Act::Archived(_) => Act::Archived(self.archived),
            Act::SecondHand(_) => Act::SecondHand(self.second_hand),
        }
    }
}

fn shortened(text: &str) -> String {
    text.chars().take(Garment::LONGEST_TEXT).collect()
}
