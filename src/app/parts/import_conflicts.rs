//! Garments that are here and in a file, and not the same: where each pair differs, and what is to become of it.

use std::collections::BTreeMap;
use std::rc::Rc;

use garment_assay::garment::{Answer, Deal, Fate, Fitting, Garment, Id, Part, Photograph, Terms, differences, joined};
use garment_assay::grading::Care;
use garment_assay::language::one;
use garment_assay::language::within;
use garment_assay::notebook::Choice;
use garment_assay::quantity::{Decimal, System, written_exactly};
use garment_assay::say;
use garment_assay::trade::{Currency, PriceKind, Ticket};
use yew::prelude::*;

use crate::app::browser::clock;
use crate::app::words;

/// Differences shown before the rest is folded away.
const SHOWN: usize = 6;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The one here and the file's, for each that differs.
    pub pairs: Vec<(Rc<Garment>, Rc<Garment>)>,
    /// What was chosen so far.
    pub choices: BTreeMap<Id, Choice>,
    /// Metric or imperial.
    pub system: System,
    /// Called with what is chosen for a garment.
    pub choose: Callback<(Id, Choice)>,
}

/// What a part is called.
fn called(part: Part) -> String {
    match part {
        Part::Family => say!("of garment" | "Kind").to_owned(),
        Part::Noted => say!("Noted on").to_owned(),
        Part::Label => say!("Name for it").to_owned(),
        Part::Place => say!("where the garment hangs" | "Place").to_owned(),
        Part::Note => say!("Note").to_owned(),
        Part::Ticket => say!("Ticket").to_owned(),
        Part::Guess => say!("noun" | "Guess").to_owned(),
        Part::Reference => say!("For predictions").to_owned(),
        Part::Shop => say!("Kind of shop").to_owned(),
        Part::Name => say!("Name on it").to_owned(),
        Part::Deal => say!("Plan").to_owned(),
        Part::Terms => say!("Offer").to_owned(),
        Part::Lot => say!("of goods" | "Lot").to_owned(),
        Part::Photographs => say!("Photographs").to_owned(),
        Part::Collection => say!("Collection").to_owned(),
        Part::Archived => say!("garments" | "Put away").to_owned(),
        Part::SecondHand => say!("Worn before").to_owned(),
        Part::Fitting => say!("Fitting room").to_owned(),
        Part::Answer(check) => check.name().to_owned(),
        Part::CheckNote(check) => say!("Note on: {check}", check = within(check.name())),
        Part::Measure(point) => say!("Tape: {place}", place = within(point.name())),
        Part::Order => say!("Order of the answers").to_owned(),
        Part::Aside => say!("From another version").to_owned(),
    }
}

fn money(minor: u64, currency: Currency) -> String {
    words::amount(&Ticket { minor, currency, kind: PriceKind::Retail, face_down: false })
}

fn yes(is: bool) -> String {
    if is { say!("yes") } else { say!("no") }.to_owned()
}

fn offer(terms: &Terms) -> String {
    let price = terms.prices().iter().map(|price| match terms.currency() {
        Some(currency) => say!(
            "a price, from so many pieces on" | "{amount} from {pieces}",
            amount = money(price.minor, currency),
            pieces = price.from
        ),
        None => say!("from so many pieces on" | "a price from {pieces}", pieces = price.from),
    });
    let texts = [terms.supplier(), terms.style(), terms.colourways(), terms.sizes()].map(str::to_owned);
    let term = terms.incoterm().map(|term| term.code().to_owned());
    let least = terms.minimum().map(|pieces| say!("at least {pieces}", pieces));
    let days = terms
        .delivery()
        .map(|(first, last)| say!("{first} to {last}", first = clock::written_day(first), last = clock::written_day(last)));
    let short = terms.shortlisted().then(|| say!("on the short list").to_owned());
    let all = texts.into_iter().filter(|text| !text.is_empty()).chain(term).chain(price).chain(least).chain(days).chain(short);
    all.collect::<Vec<_>>().join(", ")
}

fn plan(deal: &Deal) -> String {
    let wears = deal.wears_a_year().map(|wears| say!("worn {count} times a year", count = wears));
    let target = deal.target().map(|_| say!("a ticket to come").to_owned());
    let least = deal.minimum().map(|pieces| say!("at least {pieces} pieces", pieces));
    [wears, target, least].into_iter().flatten().collect::<Vec<_>>().join(", ")
}

fn answer(garment: &Garment, part: Part, system: System) -> String {
    let Part::Answer(check) = part else { return String::new() };
    let said = words::answer(garment, check, system);
    match garment.answer(check) {
        Some(Answer::Judged { care: Care::Careful, .. }) => say!("{answer}, looked closely", answer = said),
        Some(Answer::Judged { care: Care::Unsure, .. }) => say!("{answer}, unsure", answer = said),
        _ => said,
    }
}

/// What a garment says in a part; empty where it says nothing.
fn said(garment: &Garment, part: Part, system: System) -> String {
    match part {
        Part::Family => garment.family().name().to_owned(),
        Part::Noted => clock::written_day(garment.noted()),
        Part::Label => garment.label().to_owned(),
        Part::Place => garment.place().to_owned(),
        Part::Note => garment.note().to_owned(),
        Part::Ticket => garment.ticket().map(words::ticket).unwrap_or_default(),
        Part::Guess => garment.guess().map_or(String::new(), |guess| {
            let [low, high] = [guess.low(), guess.high()].map(|minor| money(minor, guess.currency()));
            say!("{low} to {high}", low, high)
        }),
        Part::Reference => if garment.is_reference() { say!("counts") } else { say!("left out") }.to_owned(),
        Part::Shop => garment.shop().map_or("", |shop| shop.name()).to_owned(),
        Part::Name => garment.name().map_or("", |name| name.words()).to_owned(),
        Part::Deal => plan(garment.deal()),
        Part::Terms => offer(garment.terms()),
        Part::Lot => garment.lot().map_or(String::new(), |log| {
            say!(
                "{pieces} pieces, {looked} looked at, {found} found",
                pieces = log.lot.pieces(),
                looked = log.looked_at,
                found = log.findings.len()
            )
        }),
        Part::Photographs => match garment.photographs().count() {
            0 => String::new(),
            count => {
                let captions = garment.photographs().all().iter().map(Photograph::caption).filter(|caption| !caption.is_empty());
                [count.to_string()].into_iter().chain(captions.map(str::to_owned)).collect::<Vec<_>>().join(", ")
            }
        },
        Part::Collection => garment.collection().to_owned(),
        Part::Archived => yes(garment.archived()),
        Part::SecondHand => yes(garment.is_second_hand()),
        Part::Fitting => if *garment.fitting() == Fitting::default() { "" } else { say!("noted") }.to_owned(),
        Part::Answer(_) => answer(garment, part, system),
        Part::CheckNote(check) => garment.check_note(check).to_owned(),
        Part::Measure(point) => garment.taped(point).map_or(String::new(), |taped| {
            let amounts = taped
                .readings()
                .iter()
                .map(|amount| format!("{} {}", written_exactly(amount.number, 2, Decimal::spoken()), amount.unit.symbol()));
            amounts.collect::<Vec<_>>().join(", ")
        }),
        Part::Order => say!("same answers").to_owned(),
        Part::Aside => if garment.aside().is_empty() { "" } else { say!("something this version cannot read") }.to_owned(),
    }
}

/// What a join makes of a part, where that has to be said.
fn becomes(part: Part, fate: Fate, theirs: &str) -> &'static str {
    match (fate, part) {
        (Fate::Mine, Part::Label | Part::Place | Part::Collection) if !theirs.is_empty() => {
            say!("Joined: yours, theirs goes into the note")
        }
        (Fate::Mine, Part::Answer(_)) if !theirs.is_empty() => say!("Joined: yours, theirs goes into the note on this check"),
        (Fate::Mine, _) => say!("Joined: yours"),
        (Fate::Theirs, _) => say!("Joined: theirs"),
        (Fate::Both, _) => say!("Joined: both"),
    }
}

const fn choice_key(choice: Choice) -> &'static str {
    match choice {
        Choice::Both => "both",
        Choice::Join => "join",
        Choice::Theirs => "theirs",
        Choice::Mine => "mine",
    }
}

fn choice_words(choice: Choice) -> &'static str {
    match choice {
        Choice::Both => say!("Keep both"),
        Choice::Join => say!("Join them in one"),
        Choice::Theirs => say!("Take theirs"),
        Choice::Mine => say!("Keep mine"),
    }
}

/// What the rest is folded behind.
fn more(count: usize) -> String {
    if one(count) { say!("{count} more that differs", count) } else { say!("{count} more that differ", count) }
}

/// The heading over all pairs.
fn not_as_here(count: usize) -> String {
    if one(count) { say!("Not as here: {count} garment", count) } else { say!("Not as here: {count} garments", count) }
}

fn or_nothing(text: String) -> Html {
    if text.is_empty() {
        html! { <i>{ say!("nothing") }</i> }
    } else {
        html! { <span class="conflict-said">{ text }</span> }
    }
}

#[derive(Properties, PartialEq)]
struct PairProps {
    mine: Rc<Garment>,
    theirs: Rc<Garment>,
    choice: Choice,
    system: System,
    choose: Callback<(Id, Choice)>,
}

#[component]
fn Pair(props: &PairProps) -> Html {
    let PairProps { mine, theirs, choice, system, choose } = props;
    let id = mine.id();
    let name = mine.called();
    let both = joined(mine, theirs);
    let row = |part: Part| {
        let their_words = said(theirs, part, *system);
        let once_joined = both.as_ref().ok().filter(|_| *choice == Choice::Join);
        let becomes = once_joined.map(|both| becomes(part, part.fate(mine, theirs, both), &their_words));
        html! {
            <li key={called(part)}>
                <b>{ called(part) }</b>
                <p><small>{ say!("Yours") }</small>{ or_nothing(said(mine, part, *system)) }</p>
                <p><small>{ say!("Theirs") }</small>{ or_nothing(their_words) }</p>
                if let Some(becomes) = becomes {
                    <small class="conflict-fate">{ becomes }</small>
                }
            </li>
        }
    };
    let parts = differences(mine, theirs);
    let (first, rest) = parts.split_at(parts.len().min(SHOWN));
    html! {
        <fieldset class="conflict">
            <legend>{ name }</legend>
            <ul class="conflict-parts">{ for first.iter().map(|part| row(*part)) }</ul>
            if !rest.is_empty() {
                <details>
                    <summary>{ more(rest.len()) }</summary>
                    <ul class="conflict-parts">{ for rest.iter().map(|part| row(*part)) }</ul>
                </details>
            }
            <div class="conflict-choices">
                { for Choice::ALL.into_iter().map(|value| {
                    let key = choice_key(value);
                    let onchange = { let (choose, id) = (choose.clone(), id.clone()); Callback::from(move |_: Event| choose.emit((id.clone(), value))) };
                    let disabled = value == Choice::Join && both.is_err();
                    html! {
                        <label {key} class="tick"><input type="radio" name={format!("conflict-{}", id.as_str())} value={key} checked={*choice == value} {disabled} {onchange} />
                            <span>{ choice_words(value) }</span></label>
                    }
                }) }
            </div>
            if let Err(fault) = &both {
                <p class="hint">{ fault.to_string() }</p>
            } else if *choice == Choice::Join {
                <p class="hint">{ say!("Where yours says something it stays, and theirs fills what is open. Notes of both are kept, yours first.") }</p>
            }
        </fieldset>
    }
}

/// Every pair with its choice; and one choice for all where there are several.
#[component]
pub fn ImportConflicts(props: &Props) -> Html {
    let Props { pairs, choices, system, choose } = props;
    let for_all = |value: Choice| {
        let (choose, ids) = (choose.clone(), pairs.iter().map(|(mine, _)| mine.id().clone()).collect::<Vec<_>>());
        Callback::from(move |_: MouseEvent| ids.iter().for_each(|id| choose.emit((id.clone(), value))))
    };
    html! {
        <div class="conflicts" role="group" aria-labelledby="conflicts-title">
            <h4 id="conflicts-title">{ not_as_here(pairs.len()) }</h4>
            if pairs.len() > 1 {
                <p>{ say!("For all of them at once:") }</p>
                <div class="row">
                    { for Choice::ALL.into_iter().map(|value| html! {
                        <button key={choice_key(value)} type="button" class="second" onclick={for_all(value)}>{ choice_words(value) }</button>
                    }) }
                </div>
            }
            { for pairs.iter().map(|(mine, theirs)| html! {
                <Pair key={mine.id().as_str()} mine={mine.clone()} theirs={theirs.clone()} choice={choices.get(mine.id()).copied().unwrap_or_default()}
                    system={*system} choose={choose.clone()} />
            }) }
        </div>
    }
}
