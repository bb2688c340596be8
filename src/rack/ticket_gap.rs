//! The gap between the tickets of two garments: brought to one currency, and shared out over what their build-ups differ in.

use super::compare::{Gap, GapShare, gap};
use super::traits::in_units;
use crate::cost::{self, Channel, EXCHANGE, Market, NOT_EXPLAINED, Rates, Row, SHOP, TAX, by_factor};
use crate::garment::{Garment, price};
use crate::language::said;
use crate::say;
use crate::trade::{Currency, PriceKind, Ticket};

/// Shares smaller than this part of the dearer ticket are roundings of the reckoning, and no difference.
const NOTHING: f64 = 1e-9;

/// Two tickets and what lies between them.
#[derive(Clone, Debug, PartialEq)]
pub struct TicketGap {
    /// Currency of every amount.
    pub currency: Currency,
    /// The first ticket in that currency.
    pub first: f64,
    /// The second.
    pub second: f64,
    /// What the gap consists of.
    pub gap: Gap,
}

/// Why there is no gap to speak of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoGap {
    /// One of them has no ticket, or one of nothing.
    NoTicket,
    /// One ticket lies face down.
    FaceDown,
    /// One is what a shopper pays, the other what a shop pays.
    TwoKinds,
    /// The rates have no exchange for that currency.
    NoExchange(Currency),
    /// Nobody has written the bill of one of the families.
    NoBill,
}

impl std::fmt::Display for NoGap {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            NoGap::NoTicket => f.write_str(say!("A gap needs two tickets. Note the price on the garment’s details page.")),
            NoGap::FaceDown => f.write_str(say!("A ticket lies face down. Guess first, then turn it over.")),
            NoGap::TwoKinds => f.write_str(
                say!("One is a retail ticket and the other a wholesale price. Most of what lies between them is the shop, and not the garment."),
            ),
            NoGap::NoExchange(currency) => {
                f.write_str(&say!("The rates have no exchange for {currency}, so these tickets cannot be set against each other.", currency = currency.code()))
            }
            NoGap::NoBill => f.write_str(say!("Nobody has written down yet what goes into a garment of this kind.")),
        }
    }
}

/// Units of a currency for one US dollar, by the rates; none where no market has it.
pub fn exchange(currency: Currency, rates: &Rates) -> Option<f64> {
    let usual = rates.acting(Market::of_currency(currency)?.exchange()).range.usual;
    (usual > 0.0).then_some(usual)
}

/// Tickets in one currency: their own where they share it, else that of the market, by the middle of each exchange.
///
/// # Errors
/// [`NoGap::NoExchange`] names the currency for which there is none.
pub fn in_one_currency(tickets: &[&Ticket], rates: &Rates) -> Result<(Currency, Vec<f64>), NoGap> {
    let first = tickets.first().map_or(rates.market().currency(), |ticket| ticket.currency);
    if tickets.iter().all(|ticket| ticket.currency == first) {
        return Ok((first, tickets.iter().map(|ticket| in_units(ticket)).collect()));
    }
    let common = rates.market().currency();
    let rate = |currency: Currency| exchange(currency, rates).ok_or(NoGap::NoExchange(currency));
    let target = rate(common)?;
    let amounts = tickets.iter().map(|ticket| Ok(in_units(ticket) / rate(ticket.currency)? * target));
    Ok((common, amounts.collect::<Result<_, NoGap>>()?))
}

/// The rows of a garment, built up in the market of its own ticket and brought to the common currency, so that they add up to its ticket
/// there. A tax inside one ticket and not in the other is so told apart.
fn rows(
    garment: &Garment,
    ticket: &Ticket,
    rates: &Rates,
    shop: Option<Channel>,
    target: Option<f64>,
) -> Result<Vec<Row<'static>>, NoGap> {
    let market = Market::of_currency(ticket.currency).unwrap_or(rates.market());
    let wholesale = ticket.kind == PriceKind::Wholesale;
    let built = price(garment, &rates.in_market(market), shop.filter(|_| !wholesale)).ok_or(NoGap::NoBill)?;
    let mut rows = built.rows(Some(in_units(ticket)));
    for row in &mut rows {
        for factor in &mut row.factors {
            // One exchange for both is no difference between garments.
            if let (EXCHANGE, Some(target)) = (factor.name, target) {
                factor.amount = target;
            }
        }
        if wholesale {
            // Behind a wholesale price there is no store and no tax yet: what stands for them belongs to what is left over.
            let past: f64 =
                row.factors.iter().filter(|factor| [SHOP, TAX].contains(&factor.name)).map(|factor| factor.amount).product();
            row.factors.retain(|factor| ![SHOP, TAX].contains(&factor.name));
            let rest = row.factors.iter_mut().filter(|factor| factor.name == NOT_EXPLAINED);
            rest.for_each(|factor| factor.amount *= past);
        }
    }
    Ok(rows)
}

/// What the gap between the tickets of two garments consists of, by their answers and the rates; `shops` are their kinds of shop, where known.
/// Shares and what is not explained sum to the gap.
///
/// # Errors
/// [`NoGap`] says what is missing.
///
/// # Source
/// Model, section 5; the shares are those of [`cost::gap`].
pub fn ticket_gap(first: &Garment, second: &Garment, rates: &Rates, shops: [Option<Channel>; 2]) -> Result<TicketGap, NoGap> {
    let seen = |garment: &'_ Garment| {
        let ticket = garment.ticket().filter(|ticket| ticket.minor > 0).ok_or(NoGap::NoTicket)?;
        if ticket.face_down { Err(NoGap::FaceDown) } else { Ok(*ticket) }
    };
    let (one, other) = (seen(first)?, seen(second)?);
    if one.kind != other.kind {
        return Err(NoGap::TwoKinds);
    }
    let (currency, amounts) = in_one_currency(&[&one, &other], rates)?;
    let target = if one.currency == other.currency { None } else { exchange(currency, rates) };
    let before = rows(first, &one, rates, shops[0], target)?;
    let after = rows(second, &other, rates, shops[1], target)?;
    let (from, to) = (amounts[0], amounts[1]);
    let shares = cost::gap(&before, &after);
    let shares = by_factor(&shares).into_iter().filter(|share| share.factor != NOT_EXPLAINED);
    let shares = shares.filter(|share| share.amount.abs() > NOTHING * from.max(to));
    let shares = shares.map(|share| GapShare { name: said(share.factor).to_owned(), amount: share.amount, spread: share.spread });
    let gap = gap(from, to, shares).ok_or(NoGap::NoTicket)?;
    Ok(TicketGap { currency, first: from, second: to, gap })
}
