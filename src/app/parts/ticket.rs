//! Fields for the ticket: amount, currency, retail or wholesale, face down or open.

use garment_assay::quantity::{Amount, Decimal, Unit, read, written};
use garment_assay::say;
use garment_assay::trade::{Currency, PriceKind, Ticket};
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// What is typed into the fields, not yet a ticket.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// The amount as typed; empty for no ticket.
    pub amount: String,
    /// Its currency.
    pub currency: Currency,
    /// Which price it is.
    pub kind: PriceKind,
    /// Whether it lies face down.
    pub face_down: bool,
}

impl Draft {
    /// Empty fields.
    pub fn empty(currency: Currency) -> Draft {
        Draft { amount: String::new(), currency, kind: PriceKind::Retail, face_down: false }
    }

    /// Fields that show a ticket.
    pub fn of(ticket: &Ticket) -> Draft {
        let unit = 10_u64.pow(ticket.currency.decimals());
        let part = ticket.minor % unit;
        let width = ticket.currency.decimals() as usize;
        let sign = Decimal::spoken().sign();
        let amount =
            if part == 0 { (ticket.minor / unit).to_string() } else { format!("{}{sign}{part:0width$}", ticket.minor / unit) };
        Draft { amount, currency: ticket.currency, kind: ticket.kind, face_down: ticket.face_down }
    }

    /// The ticket that the fields say, none when no amount is typed, or what is wrong with the amount.
    pub fn ticket(&self) -> Result<Option<Ticket>, String> {
        let text = self.amount.trim();
        if text.is_empty() {
            return Ok(None);
        }
        let Ok(Amount { number, .. }) = read(text, Unit::Count, Decimal::spoken()) else {
            return Err(say!(
                "Type the price as it stands on the ticket, such as {price} or 1299.",
                price = written(89.9, 2, Decimal::spoken())
            ));
        };
        let decimals = self.currency.decimals();
        let minor = number * f64::from(10_u32.pow(decimals));
        let fault = |text: &str| Err(text.to_owned());
        if number < 0.0 {
            return fault(say!("A ticket is not below zero. Type the price as it stands there."));
        }
        if minor > 1e12 {
            return fault(say!("That is more than this app can keep. Check the number of digits."));
        }
        if (minor - minor.round()).abs() > 1e-6 {
            return Err(say!(
                "{currency} has {count} decimals at most. Type the price as it stands on the ticket.",
                currency = self.currency.code(),
                count = decimals
            ));
        }
        let minor = minor.round() as u64;
        Ok(Some(Ticket { minor, currency: self.currency, kind: self.kind, face_down: self.face_down }))
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is typed.
    pub draft: Draft,
    /// Called with what is typed now.
    pub typed: Callback<Draft>,
    /// What is wrong with the amount, once the person wanted to go on.
    #[prop_or_default]
    pub fault: Option<AttrValue>,
}

/// Fields for the ticket.
#[component]
pub fn TicketFields(props: &Props) -> Html {
    let Props { draft, typed, fault } = props;
    let change = |with: fn(&mut Draft, &Event)| {
        let (draft, typed) = (draft.clone(), typed.clone());
        move |event: Event| {
            let mut draft = draft.clone();
            with(&mut draft, &event);
            typed.emit(draft);
        }
    };
    let amount = {
        let (draft, typed) = (draft.clone(), typed.clone());
        move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                typed.emit(Draft { amount: field.value(), ..draft.clone() });
            }
        }
    };
    let currency = change(|draft, event| {
        if let Some(field) = event.target_dyn_into::<HtmlSelectElement>() {
            draft.currency = Currency::from_code(&field.value()).unwrap_or(draft.currency);
        }
    });
    let kind = change(|draft, event| {
        if let Some(field) = event.target_dyn_into::<HtmlSelectElement>() {
            draft.kind = if field.value() == "wholesale" { PriceKind::Wholesale } else { PriceKind::Retail };
        }
    });
    let face_down = change(|draft, event| {
        if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
            draft.face_down = field.checked();
        }
    });
    html! {
        <fieldset class="ticket-fields">
            <legend>{ say!("Ticket") }<small>{ " " }{ say!("(leave it out if you want to guess first)") }</small></legend>
            <div class="field-row">
                <div class="field">
                    <label for="ticket-amount">{ say!("Price") }</label>
                    <input id="ticket-amount" inputmode="decimal" autocomplete="off" value={draft.amount.clone()} oninput={amount} data-covered={draft.face_down.then_some("yes")}
                        aria-invalid={fault.is_some().to_string()} aria-describedby={fault.is_some().then_some("ticket-fault")} />
                </div>
                <div class="field">
                    <label for="ticket-currency">{ say!("Currency") }</label>
                    <select id="ticket-currency" onchange={currency}>
                        { for Currency::ALL.into_iter().map(|currency| html! {
                            <option key={currency.code()} value={currency.code()} selected={currency == draft.currency}>{ currency.code() }</option>
                        }) }
                    </select>
                </div>
                <div class="field">
                    <label for="ticket-kind">{ say!("of price" | "Kind") }</label>
                    <select id="ticket-kind" onchange={kind}>
                        <option value="retail" selected={draft.kind == PriceKind::Retail}>{ say!("retail") }</option>
                        <option value="wholesale" selected={draft.kind == PriceKind::Wholesale}>{ say!("wholesale") }</option>
                    </select>
                </div>
            </div>
            if let Some(fault) = fault {
                <p class="fault" id="ticket-fault" role="alert">{ fault }</p>
            }
            <label class="tick"><input type="checkbox" checked={draft.face_down} onchange={face_down} /><span>{ say!("Lay it face down: do not show it to me yet") }</span></label>
        </fieldset>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn draft(amount: &str, currency: Currency) -> Result<Option<u64>, String> {
        Draft { amount: amount.to_owned(), ..Draft::empty(currency) }.ticket().map(|ticket| ticket.map(|ticket| ticket.minor))
    }

    #[test]
    fn a_price_is_read_to_the_last_cent() {
        assert_eq!(draft("89.90", Currency::Eur), Ok(Some(8990)));
        assert_eq!(draft(" 89,90 ", Currency::Eur), Ok(Some(8990)));
        assert_eq!(draft("24000", Currency::Jpy), Ok(Some(24_000)));
        assert_eq!(draft("", Currency::Jpy), Ok(None));
    }

    #[test]
    fn a_price_that_cannot_be_says_why() {
        for (amount, currency) in [
            ("-3", Currency::Eur),
            ("12.345", Currency::Eur),
            ("1.5", Currency::Jpy),
            ("cheap", Currency::Usd),
            ("9999999999999", Currency::Usd),
        ] {
            assert!(draft(amount, currency).is_err(), "{amount}");
        }
    }

    #[test]
    fn a_ticket_shown_for_change_reads_back_the_same() {
        for minor in [0, 5, 8990, 100, 123_456] {
            let ticket = Ticket { minor, currency: Currency::Gbp, kind: PriceKind::Wholesale, face_down: true };
            assert_eq!(Draft::of(&ticket).ticket(), Ok(Some(ticket)));
        }
    }
}
