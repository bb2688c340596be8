//! The head of the quick sheet: what it is, where it hangs, who offers it and for how much. What changes from sample to sample stands
//! first, what stays stands after it.

use garment_assay::catalog::{FAMILIES, Family};
use garment_assay::garment::{Act, Garment, Id, TermsAct};
use garment_assay::say;
use garment_assay::trade::{Currency, Day, PriceKind};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

use super::ticket::Draft;
use crate::app::browser::document;

/// What stands in the head.
#[derive(Clone, Debug, PartialEq)]
pub struct Head {
    /// Kind of garment.
    pub family: &'static Family,
    /// What the person calls it.
    pub label: String,
    /// The supplier's number of the style.
    pub style: String,
    /// Where it hangs.
    pub place: String,
    /// Who offers it.
    pub supplier: String,
    /// Season, show or project.
    pub collection: String,
    /// Price, currency and kind of price, as typed.
    pub ticket: Draft,
}

impl Head {
    /// An empty head.
    pub fn empty(currency: Currency) -> Head {
        Head {
            family: FAMILIES[0],
            label: String::new(),
            style: String::new(),
            place: String::new(),
            supplier: String::new(),
            collection: String::new(),
            ticket: Draft { kind: PriceKind::Wholesale, ..Draft::empty(currency) },
        }
    }

    /// What a garment says, in the currency and kind of price given where it says none.
    pub fn of(garment: &Garment, currency: Currency, kind: PriceKind) -> Head {
        let terms = garment.terms();
        let nothing = Draft { kind, ..Draft::empty(terms.currency().unwrap_or(currency)) };
        Head {
            family: garment.family(),
            label: garment.label().to_owned(),
            style: terms.style().to_owned(),
            place: garment.place().to_owned(),
            supplier: terms.supplier().to_owned(),
            collection: garment.collection().to_owned(),
            ticket: garment.ticket_in_view().map_or(nothing, Draft::of),
        }
    }

    /// What the next sample has in common with the last one: all but its name, its style number and its price.
    pub fn repeated(&self) -> Head {
        let ticket = Draft { amount: String::new(), ..self.ticket.clone() };
        Head { label: String::new(), style: String::new(), ticket, ..self.clone() }
    }

    /// What must be done to a garment so that it says this. A price that cannot be read, and a ticket that lies face down, stay as they are;
    /// so does the currency of an offer where none was noted.
    pub fn acts(&self, garment: &Garment) -> Vec<Act> {
        let terms = garment.terms();
        let mut acts = Vec::new();
        let mut text = |now: &str, new: &str, make: fn(String) -> Act| {
            if now != new.trim() {
                acts.push(make(new.trim().to_owned()));
            }
        };
        text(garment.label(), &self.label, Act::Label);
        text(terms.style(), &self.style, |text| Act::Terms(TermsAct::Style(text)));
        text(garment.place(), &self.place, Act::Place);
        text(terms.supplier(), &self.supplier, |text| Act::Terms(TermsAct::Supplier(text)));
        text(garment.collection(), &self.collection, Act::Collection);
        if terms.currency().is_some_and(|currency| currency != self.ticket.currency) {
            acts.push(Act::Terms(TermsAct::Currency(Some(self.ticket.currency))));
        }
        let down = garment.ticket().is_some_and(|ticket| ticket.face_down);
        if let (Ok(ticket), false) = (self.ticket.ticket(), down)
            && ticket.as_ref() != garment.ticket()
        {
            acts.push(Act::Ticket(ticket));
        }
        acts
    }

    /// A garment that says this and nothing else.
    pub fn garment(&self, id: Id, noted: Day) -> Garment {
        let currency = Act::Terms(TermsAct::Currency(Some(self.ticket.currency)));
        let bare = Garment::new(id, self.family, noted).after(currency);
        self.acts(&bare).into_iter().fold(bare, |garment, act| garment.after(act))
    }

    /// Whether something was written that this other head does not have. Choosing a kind of garment or a currency writes nothing yet.
    pub fn says_more_than(&self, other: &Head) -> bool {
        let written = |head: &Head| {
            [&head.label, &head.style, &head.place, &head.supplier, &head.collection, &head.ticket.amount]
                .map(|text| text.trim().to_owned())
        };
        written(self) != written(other)
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is kept.
    pub head: Head,
    /// Whether nothing is noted yet: the keyboard then goes to the name.
    pub fresh: bool,
    /// Whether the kind of garment may still be chosen.
    pub free: bool,
    /// Whether the ticket lies face down; its amount is then left out.
    pub face_down: bool,
    /// Places to offer.
    pub places: Vec<String>,
    /// Suppliers to offer.
    pub suppliers: Vec<String>,
    /// Collections to offer.
    pub collections: Vec<String>,
    /// Called with the head when a field was left.
    pub keep: Callback<Head>,
    /// Called when the person wants to go on to the checks.
    pub done: Callback<()>,
}

/// The head. What is being typed stays here; it is kept when a field is left.
#[component]
pub fn DeskHead(props: &Props) -> Html {
    let Props { head, fresh, free, face_down, places, suppliers, collections, keep, done } = props;
    let typed = use_state_eq(|| head.clone());
    {
        // An undo, another window or another page of the garment may have changed what is kept.
        let typed = typed.clone();
        use_effect_with(head.clone(), move |head| {
            // A price that cannot be read is not kept, and stays in its field to be put right.
            let wrong = typed.ticket.ticket().is_err();
            let ticket = if wrong { typed.ticket.clone() } else { head.ticket.clone() };
            typed.set(Head { ticket, ..head.clone() });
        });
    }
    let part = use_node_ref();
    {
        let (part, fresh) = (part.clone(), *fresh);
        use_effect_with((), move |()| {
            if fresh {
                document::focus_within(&part, "input");
            }
        });
    }
    let shown = (*typed).clone();
    let left = use_state_eq(|| false);
    let fault = shown.ticket.ticket().err().filter(|_| *left);
    let onchange = {
        let (typed, left, keep) = (typed.clone(), left.clone(), keep.clone());
        Callback::from(move |_: Event| {
            left.set(true);
            keep.emit((*typed).clone());
        })
    };
    let onkeydown = {
        let done = done.clone();
        Callback::from(move |event: KeyboardEvent| {
            if event.key() == "Enter" && !event.is_composing() {
                event.prevent_default();
                done.emit(());
            }
        })
    };
    let field = |id: &'static str, label: &'static str, value: &str, list: Option<&'static str>, write: fn(&mut Head, String)| {
        let oninput = {
            let (typed, left) = (typed.clone(), left.clone());
            Callback::from(move |event: InputEvent| {
                if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                    let mut next = (*typed).clone();
                    write(&mut next, field.value());
                    typed.set(next);
                    left.set(false);
                }
            })
        };
        let wrong = fault.is_some() && id == "quick-price";
        html! {
            <div class="field">
                <label for={id}>{ label }</label>
                <input {id} autocomplete="off" maxlength="120" {list} value={value.to_owned()} {oninput} onchange={onchange.clone()}
                    inputmode={(id == "quick-price").then_some("decimal")} data-opens={(id == "quick-name").then_some("")}
                    aria-invalid={wrong.to_string()} aria-describedby={wrong.then_some("quick-price-fault")} />
            </div>
        }
    };
    let choose = |write: fn(&mut Head, &str)| {
        let (typed, keep) = (typed.clone(), keep.clone());
        Callback::from(move |event: Event| {
            if let Some(field) = event.target_dyn_into::<HtmlSelectElement>() {
                let mut next = (*typed).clone();
                write(&mut next, &field.value());
                typed.set(next.clone());
                keep.emit(next);
            }
        })
    };
    let family = choose(|head, key| {
        head.family = FAMILIES.into_iter().find(|family| family.key == key).unwrap_or(head.family);
    });
    let currency = choose(|head, code| head.ticket.currency = Currency::from_code(code).unwrap_or(head.ticket.currency));
    let kind = choose(|head, kind| {
        head.ticket.kind = if kind == "retail" { PriceKind::Retail } else { PriceKind::Wholesale };
    });
    let offered = |id: &'static str, words: &[String]| {
        html! { <datalist {id}>{ for words.iter().map(|word| html! { <option key={word.clone()} value={word.clone()} /> }) }</datalist> }
    };
    html! {
        <section class="card quick-head" aria-label={say!("The sample")} ref={part} {onkeydown}>
            { field("quick-name", say!("A name for it"), &shown.label, None, |head, text| head.label = text) }
            { field("quick-style", say!("Style number"), &shown.style, None, |head, text| head.style = text) }
            if *face_down {
                <p class="hint">{ say!("The ticket lies face down.") }</p>
            } else {
                { field("quick-price", say!("Price"), &shown.ticket.amount, None, |head, text| head.ticket.amount = text) }
            }
            <div class="field">
                <label for="quick-currency">{ say!("Currency") }</label>
                <select id="quick-currency" onchange={currency}>
                    { for Currency::ALL.into_iter().map(|currency| html! {
                        <option key={currency.code()} value={currency.code()} selected={currency == shown.ticket.currency}>{ currency.code() }</option>
                    }) }
                </select>
            </div>
            <div class="field">
                <label for="quick-price-kind">{ say!("Kind of price") }</label>
                <select id="quick-price-kind" onchange={kind}>
                    <option value="wholesale" selected={shown.ticket.kind == PriceKind::Wholesale}>{ say!("wholesale") }</option>
                    <option value="retail" selected={shown.ticket.kind == PriceKind::Retail}>{ say!("retail") }</option>
                </select>
            </div>
            <div class="field">
                <label for="quick-family">{ say!("What it is") }</label>
                <select id="quick-family" onchange={family} disabled={!free} aria-describedby={(!free).then_some("quick-family-said")}>
                    { for FAMILIES.into_iter().map(|family| html! {
                        <option key={family.key} value={family.key} selected={family.key == shown.family.key}>{ family.name() }</option>
                    }) }
                </select>
            </div>
            { field("quick-place", say!("booth at a fair" | "Stand"), &shown.place, Some("quick-places"), |head, text| head.place = text) }
            { field("quick-supplier", say!("Supplier"), &shown.supplier, Some("quick-suppliers"), |head, text| head.supplier = text) }
            { field("quick-collection", say!("Collection"), &shown.collection, Some("quick-collections"), |head, text| head.collection = text) }
            { offered("quick-places", places) }
            { offered("quick-suppliers", suppliers) }
            { offered("quick-collections", collections) }
            if let Some(fault) = fault {
                <p class="fault" id="quick-price-fault" role="alert">{ fault }</p>
            }
            if !free {
                <p class="hint" id="quick-family-said">{ say!("What it is stays as it is once more than this is noted.") }</p>
            }
        </section>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use garment_assay::trade::Ticket;

    fn id() -> Id {
        Id::new("a").expect("a plain name")
    }

    fn day() -> Day {
        Day::new(2026, 11, 25).expect("a day")
    }

    fn full() -> Head {
        let ticket = Draft { amount: "42.50".to_owned(), kind: PriceKind::Wholesale, ..Draft::empty(Currency::Jpy) };
        Head {
            label: "Straight leg".to_owned(),
            style: "0042".to_owned(),
            place: "Hall 2".to_owned(),
            supplier: "Mill on the hill".to_owned(),
            collection: "Spring".to_owned(),
            ticket: Draft { currency: Currency::Eur, ..ticket },
            ..Head::empty(Currency::Usd)
        }
    }

    #[test]
    fn a_head_put_into_a_garment_reads_back_the_same() {
        let garment = full().garment(id(), day());
        assert_eq!(Head::of(&garment, Currency::Usd, PriceKind::Retail), full());
        assert!(full().acts(&garment).is_empty());
        assert_eq!(garment.terms().currency(), Some(Currency::Eur));
    }

    #[test]
    fn the_next_sample_repeats_all_but_name_style_and_price() {
        let next = full().repeated();
        assert_eq!((next.label.as_str(), next.style.as_str(), next.ticket.amount.as_str()), ("", "", ""));
        assert_eq!(
            (next.place.as_str(), next.supplier.as_str(), next.collection.as_str()),
            ("Hall 2", "Mill on the hill", "Spring")
        );
        assert_eq!((next.ticket.currency, next.ticket.kind), (Currency::Eur, PriceKind::Wholesale));
        assert!(!next.says_more_than(&full().repeated()));
        assert!(full().says_more_than(&next));
    }

    #[test]
    fn a_ticket_face_down_and_a_price_that_cannot_be_read_stay_as_they_are() {
        let ticket = Ticket { minor: 9900, currency: Currency::Eur, kind: PriceKind::Retail, face_down: true };
        let covered = full().garment(id(), day()).after(Act::Ticket(Some(ticket)));
        let shown = Head::of(&covered, Currency::Usd, PriceKind::Wholesale);
        assert_eq!(shown.ticket.amount, "");
        assert!(shown.acts(&covered).is_empty());
        let mut wrong = full();
        wrong.ticket.amount = "dear".to_owned();
        assert!(wrong.acts(&full().garment(id(), day())).is_empty());
    }
}
