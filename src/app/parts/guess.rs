//! A guess at the ticket: the range is committed before the ticket is turned over, then both are held against each other.

use garment_assay::garment::{Act, Garment, Guess, Shown};
use garment_assay::language;
use garment_assay::language::one;
use garment_assay::rack::{Habit, Verdict, reveal};
use garment_assay::say;
use garment_assay::trade::{Currency, Day, PriceKind, Ticket};
use web_sys::HtmlInputElement;
use yew::prelude::*;

use std::rc::Rc;

use super::ticket::{Draft, TicketFields};
use crate::app::money::{known_between, revealed};
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// The currency in which to guess.
    pub currency: Currency,
    /// What the tool says at this moment, for that currency and kind.
    pub shown: Option<Shown>,
    /// Today.
    pub today: Day,
    /// What guesses so far say together.
    pub habit: Habit,
    /// Where that is shown over time.
    pub habit_href: AttrValue,
    /// The card's heading, for focus.
    pub heading: NodeRef,
    /// Called with what is to be done.
    pub act: Callback<Act>,
}

/// The range as typed, or what is wrong with it.
fn guess_of(texts: &[String; 3], currency: Currency, kind: PriceKind, today: Day) -> Result<Guess, String> {
    let amount = |text: &String| {
        let draft = Draft { amount: text.clone(), kind, ..Draft::empty(currency) };
        draft.ticket().map(|ticket| ticket.map(|ticket| ticket.minor))
    };
    let (Some(low), Some(high)) = (amount(&texts[0])?, amount(&texts[1])?) else {
        return Err(say!("Type the lowest and the highest price that you think likely.").to_owned());
    };
    let guess = Guess::new(low, high, currency, kind, today)
        .ok_or(say!("The lower price must be above nothing and below the higher one."))?;
    match amount(&texts[2])? {
        None => Ok(guess),
        Some(best) => Ok(guess.with_best(best).ok_or(say!("The likeliest price must lie inside your range."))?),
    }
}

fn said(guess: &Guess) -> String {
    let amount = |minor| guess.currency().whole(minor);
    let range = language::money(guess.currency().code(), known_between(amount(guess.low()), amount(guess.high())));
    let best = guess.best().map(|best| {
        let ticket = Ticket { minor: best, currency: guess.currency(), kind: PriceKind::Retail, face_down: false };
        words::amount(&ticket)
    });
    match (guess.kind(), best) {
        (PriceKind::Retail, None) => range,
        (PriceKind::Retail, Some(best)) => say!("{range}, likeliest {amount}", range, amount = best),
        (PriceKind::Wholesale, None) => say!("{range} wholesale", range),
        (PriceKind::Wholesale, Some(best)) => say!("{range} wholesale, likeliest {amount}", range, amount = best),
    }
}

#[component]
fn Fields(props: &Props) -> Html {
    let Props { garment, currency, shown, today, act, .. } = props;
    let kind = garment.ticket().map_or(PriceKind::Retail, |ticket| ticket.kind);
    let texts = use_state_eq(<[String; 3]>::default);
    let fault = use_state_eq(|| None::<String>);
    let field = |place: usize, id: &'static str, label: &'static str| {
        let oninput = {
            let texts = texts.clone();
            Callback::from(move |event: InputEvent| {
                if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                    let mut next = (*texts).clone();
                    next[place] = field.value();
                    texts.set(next);
                }
            })
        };
        html! {
            <div class="field">
                <label for={id}>{ label }</label>
                <input {id} inputmode="decimal" autocomplete="off" value={texts[place].clone()} {oninput}
                    aria-invalid={fault.is_some().to_string()} aria-describedby={fault.is_some().then_some("guess-fault")} />
            </div>
        }
    };
    let onsubmit = {
        let (texts, fault, act) = (texts.clone(), fault.clone(), act.clone());
        let (currency, today, shown) = (*currency, *today, *shown);
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            match guess_of(&texts, currency, kind, today) {
                Ok(guess) => {
                    fault.set(None);
                    act.emit(Act::Guess(Some(shown.map_or(guess, |shown| guess.beside(shown)))));
                }
                Err(sentence) => fault.set(Some(sentence)),
            }
        })
    };
    html! {
        <form {onsubmit}>
            <p class="hint">{ if kind == PriceKind::Wholesale {
                say!("Name a range in {currency} that you think holds the offer four times in five.", currency = currency.code())
            } else {
                say!("Name a range in {currency} that you think holds the ticket four times in five.", currency = currency.code())
            } }</p>
            <div class="field-row">
                { field(0, "guess-low", say!("At least")) }
                { field(1, "guess-high", say!("At most")) }
                { field(2, "guess-best", say!("Likeliest, if any")) }
            </div>
            if let Some(fault) = fault.as_ref() {
                <p class="fault" id="guess-fault" role="alert">{ fault }</p>
            }
            <p class="guess-commit"><button type="submit" class="second">{ say!("Commit this guess") }</button></p>
        </form>
    }
}

/// A ticket entered once the guess stands.
#[component]
fn Late(props: &Props) -> Html {
    let Props { currency, act, garment, .. } = props;
    let kind = garment.guess().map_or(PriceKind::Retail, Guess::kind);
    let draft = use_state(|| Draft { kind, ..Draft::empty(*currency) });
    let fault = use_state_eq(|| None::<AttrValue>);
    let typed = {
        let draft = draft.clone();
        Callback::from(move |typed: Draft| draft.set(typed))
    };
    let onsubmit = {
        let (draft, fault, act) = (draft.clone(), fault.clone(), act.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            match draft.ticket() {
                Ok(Some(ticket)) => act.emit(Act::Ticket(Some(ticket))),
                Ok(None) => fault.set(Some(say!("Type the price as it stands on the ticket.").into())),
                Err(sentence) => fault.set(Some(sentence.into())),
            }
        })
    };
    html! {
        <form {onsubmit}>
            <TicketFields draft={(*draft).clone()} {typed} fault={(*fault).clone()} />
            <p class="guess-commit"><button type="submit" class="prime">{ say!("Note the ticket") }</button></p>
        </form>
    }
}

/// The link to all guesses.
fn over_time(count: usize) -> String {
    if one(count) { say!("Your {count} guess over time", count) } else { say!("Your {count} guesses over time", count) }
}

/// The card of guess and reveal; nothing where the ticket was seen without a guess.
#[component]
pub fn GuessCard(props: &Props) -> Html {
    let Props { garment, habit, habit_href, act, .. } = props;
    let again = act.reform(|_: MouseEvent| Act::Guess(None));
    let face_down = garment.ticket().copied().filter(|ticket| ticket.face_down);
    let turn = face_down.map(|ticket| act.reform(move |_: MouseEvent| Act::Ticket(Some(Ticket { face_down: false, ..ticket }))));
    let body = match (garment.guess(), garment.ticket_in_view()) {
        (None, Some(_)) => return Html::default(),
        (None, None) => html! {
            <>
                <Fields ..props.clone() />
                if let Some(turn) = turn {
                    <p><button type="button" class="ghost" onclick={turn}>{ say!("Turn the ticket over without a guess") }</button></p>
                }
            </>
        },
        (Some(guess), None) => html! {
            <>
                <p class="figure">{ said(guess) }</p>
                if let Some(turn) = turn {
                    <p>{ say!("Your guess stands. The ticket lies face down.") }</p>
                    <div class="row"><button type="button" class="prime" onclick={turn}>{ say!("Turn the ticket over") }</button></div>
                } else {
                    <p>{ say!("Your guess stands. Enter the ticket when you have seen it.") }</p>
                    <Late ..props.clone() />
                }
                <p><button type="button" class="ghost" onclick={again}>{ say!("Take the guess back") }</button></p>
            </>
        },
        (Some(guess), Some(ticket)) => {
            let told = match reveal(garment) {
                Ok(reveal) => {
                    let (yours, tool) = revealed(&reveal, ticket.currency);
                    html! {
                        <ul class="revealed">
                            <li>{ yours }</li>
                            if let Some(tool) = tool { <li>{ tool }</li> } else { <li>{ say!("Tool: it said nothing at that moment.") }</li> }
                        </ul>
                    }
                }
                Err(why) => html! { <p>{ why.to_string() }</p> },
            };
            html! {
                <>
                    <p>{ say!("Ticket {price}. You guessed {range}.", price = words::ticket(ticket), range = said(guess)) }</p>
                    { told }
                    <p class="hint">{ say!("Points: 100 for a narrow range about the ticket, 0 for one of no use. A miss costs ten times what it is off.") }</p>
                    if habit.verdict != Verdict::TooFew { <p>{ habit.verdict.words() }</p> }
                    <p><a href={habit_href}>{ over_time(habit.guesses) }</a></p>
                </>
            }
        }
    };
    let heading = match (garment.guess(), garment.ticket_in_view()) {
        (None, _) => say!("Guess first"),
        (Some(_), None) => say!("Your guess"),
        (Some(_), Some(_)) => say!("Your guess and the ticket"),
    };
    html! { <section class="card guess-card"><h2 tabindex="-1" ref={&props.heading}>{ heading }</h2>{ body }</section> }
}

impl Clone for Props {
    fn clone(&self) -> Props {
        Props {
            garment: self.garment.clone(),
            habit: self.habit.clone(),
            habit_href: self.habit_href.clone(),
            heading: self.heading.clone(),
            act: self.act.clone(),
            ..*self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(texts: [&str; 3]) -> Result<Guess, String> {
        let today = Day::new(2026, 11, 25).expect("a day");
        guess_of(&texts.map(str::to_owned), Currency::Eur, PriceKind::Retail, today)
    }

    #[test]
    fn a_guess_is_read_to_the_cent() {
        let guess = read(["60", "89,90", ""]).expect("a guess");
        assert_eq!((guess.low(), guess.high(), guess.best()), (6_000, 8_990, None));
        assert_eq!(read(["60", "90", "75.5"]).map(|guess| guess.best()), Ok(Some(7_550)));
    }

    #[test]
    fn what_is_no_range_says_why() {
        for texts in [
            ["", "", ""],
            ["60", "", ""],
            ["90", "60", ""],
            ["60", "60", ""],
            ["0", "60", ""],
            ["60", "90", "95"],
            ["low", "90", ""],
        ] {
            assert!(read(texts).is_err(), "{texts:?}");
        }
    }
}
