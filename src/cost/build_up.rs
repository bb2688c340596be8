//! The build-up: what was found of a garment, and the rates, become lines from cloth to ticket, each with its range and what moved it.

use super::acting::{ActingInput, Known, Standing, act, duty, rate_as};
use super::bill::{Bill, Input};
use super::chain::{Chain, TOGETHER, Totals};
use super::market::{Channel, FACTORY_MARGIN, Market, OVERHEAD, TaxHabit};
use super::range::{LogNormal, Term, sum};
use super::rates::{Rate, Rates};
use super::retail::{DutyBase, Offer};
use super::spread::{Cause, CauseKind, widest};
use crate::source::Source;
use crate::to_say;
use crate::trade::{Currency, Day};

/// Where a cost falls.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Leg {
    /// What goes into the piece.
    Direct,
    /// What the factory takes on top.
    Factory,
    /// Freight, duty, fees.
    Way,
    /// Brand and shop.
    Shop,
    /// Tax inside the ticket.
    Tax,
}

/// One line of a build-up.
#[derive(Clone, Debug, PartialEq)]
pub struct Cost {
    /// Name in exports.
    pub key: &'static str,
    /// The words on the screen.
    pub(crate) name: &'static str,
    /// Where it falls.
    pub leg: Leg,
    /// How much, in the currency of the build-up. Averages of the lines add up to the average ticket; middles do not add up.
    pub amount: LogNormal,
    /// Keys of checks whose answers moved it.
    pub moved_by: Vec<&'static str>,
    /// Keys of checks that are still open and keep it wide.
    pub open: Vec<&'static str>,
    /// Inputs that other lines lean on too, by name: they move together.
    pub(crate) shares: Vec<&'static str>,
    /// Rates that act in it and that a person changed.
    pub edited: Vec<&'static Rate>,
    /// What it leans on, each once.
    pub sources: Vec<&'static Source>,
    /// The oldest day of a rate in it; none where no rate acts.
    pub as_of: Option<Day>,
}

crate::language::says!(Cost { name, shares* });

/// What a garment costs from cloth to ticket, as far as its checks tell.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildUp {
    pub(super) market: Market,
    pub(super) channel: Option<Channel>,
    pub(super) lines: Vec<Cost>,
    pub(super) totals: Totals,
    pub(super) causes: Vec<Cause>,
    pub(super) parts: Vec<BuiltPart>,
    pub(super) chain: Chain,
    duty: LogNormal,
    fees: LogNormal,
    tax: LogNormal,
}

/// One part as it stands: its name and each of its inputs to its power.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct BuiltPart {
    pub(super) name: &'static str,
    pub(super) inputs: Vec<(&'static str, LogNormal)>,
}

impl BuildUp {
    /// The market whose tickets it speaks of.
    pub fn market(&self) -> Market {
        self.market
    }

    /// The currency of every amount in it.
    pub fn currency(&self) -> Currency {
        self.market.currency()
    }

    /// The kind of shop, where it is known.
    pub fn channel(&self) -> Option<Channel> {
        self.channel
    }

    /// The lines, from cloth to tax.
    pub fn lines(&self) -> &[Cost] {
        &self.lines
    }

    /// The price along its way, each in the market's currency.
    pub fn totals(&self) -> &Totals {
        &self.totals
    }

    /// The ticket that cost alone would explain: natural logarithm of the price in the market's currency, tax in it where that is the
    /// custom.
    pub fn ticket(&self) -> LogNormal {
        self.totals.ticket
    }

    /// What brand and shop multiply the landed cost by.
    pub fn shop_multiple(&self) -> LogNormal {
        self.chain.multiple
    }

    /// An offer at that price a piece, at the factory's port and in the market's currency: freight, duty and fees from the rates, at their
    /// averages, since pieces that pay no duty and pieces that do come in one order.
    pub fn offer(&self, price: f64, minimum: u32) -> Offer {
        Offer {
            price,
            freight: self.chain.freight.times(self.chain.exchange).mean(),
            duty_rate: self.duty.mean(),
            base: self.market.duty_base(),
            fee_rate: self.fees.mean(),
            minimum,
        }
    }

    /// The usual tax inside a ticket, as a share of the price before it; 0 where it is added at the till.
    pub fn tax_inside(&self) -> f64 {
        if self.market.tax_habit() == TaxHabit::InTheTicket { self.tax.median() } else { 0.0 }
    }

    /// What the width of the ticket comes from, the widest first; the shares sum to 1, or there are none.
    pub fn causes(&self) -> &[Cause] {
        &self.causes
    }

    /// Keys of checks that would narrow the ticket, the most telling first.
    pub fn would_narrow(&self) -> Vec<&'static str> {
        let open = self.causes.iter().filter_map(|cause| match cause.kind {
            CauseKind::Open(check) => Some(check),
            _ => None,
        });
        open.collect()
    }
}

/// Levels of one check that can be told apart here; no check has so many.
const LEVELS: usize = 64;

/// Works out what a garment costs from cloth to ticket.
///
/// `known` says what is known of each check that the bill names. A check that is open leaves every line that hangs on it as wide as all
/// its answers together; it never picks one.
///
/// # Formula
/// A part is a product of inputs; inputs are log-normal. One that several parts use is shared, and so is the level of a check that several
/// inputs hang on: parts `i` and `j` then covary by what both owe to it. Lines and direct cost are sums by [`sum`], the rest by [`Chain`].
///
/// # Where it holds
/// Percentiles within a few per cent of draws from the same inputs (`tests/cost.rs`). Where the country is open, duty is taken as though it
/// had nothing to do with the sewing minute.
///
/// # Source
/// Model, section 2, with cloth, minutes and trims taken apart as in the handbook, sections 3 and 10.
pub fn build_up(bill: &'static Bill, rates: &Rates, channel: Option<Channel>, known: impl Fn(&str) -> Known) -> BuildUp {
    let mut acting: Vec<ActingInput> = Vec::new();
    for input in bill.inputs() {
        match acting.iter_mut().find(|other| other.input == input) {
            Some(again) => again.used += 1,
            None => acting.push(act(input, rates, &known)),
        }
    }
    let market = rates.market();
    let exchange = rate_as(market.exchange(), rates);
    let checks = bill.checks();
    let (mut lines, mut terms, mut parts, mut owners) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for line in bill.lines {
        let start = terms.len();
        let mut cost = Cost::new(line.key, line.name, Leg::Direct);
        for part in line.parts {
            let mut term = Term::default();
            let mut own = 0.0;
            let mut built = BuiltPart { name: part.name, inputs: Vec::new() };
            for used in part.inputs {
                let Some(place) = acting.iter().position(|other| other.input == used.input) else { continue };
                let acts = &acting[place];
                let amount = acts.amount.power(used.power);
                term.mu += amount.mu;
                if acts.used > 1 {
                    term.shared.push((place, acts.within * used.power));
                } else {
                    own += (acts.within * used.power).powi(2);
                }
                if let Some((check, _)) = acts.check {
                    let check = checks.iter().position(|key| *key == check).unwrap_or_default();
                    let at = |level: usize| acting.len() + check * LEVELS + level;
                    let between = acts.between.iter().enumerate().filter(|(_, spread)| **spread != 0.0);
                    term.shared.extend(between.map(|(level, spread)| (at(level), spread * used.power)));
                }
                built.inputs.push((used.input.name, amount));
                cost.note(acts);
            }
            term.own = own.sqrt();
            owners.push(part.name);
            terms.push(term);
            parts.push(built);
        }
        cost.amount = sum(&terms[start..], TOGETHER).times(exchange);
        lines.push(cost);
    }
    let (duty, duty_standing) = duty(bill, rates, &known);
    let fees = rate_as(market.fees(), rates);
    let (overhead, margin) = (rate_as(&OVERHEAD, rates), rate_as(&FACTORY_MARGIN, rates));
    let base = market.duty_base();
    let multiples = Channel::multiples(channel);
    let tax = rate_as(market.tax(), rates);
    let chain = Chain {
        overhead: one_and(&[overhead]),
        margin: one_and(&[margin]),
        duty: one_and(&[duty, fees]),
        freight_duty: if base == DutyBase::WithFreight { one_and(&[duty]) } else { LogNormal::ONE },
        freight: rate_as(bill.freight, rates),
        multiple: multiples.iter().fold(LogNormal::ONE, |all, rate| all.times(rate_as(rate, rates))),
        tax: if market.tax_habit() == TaxHabit::InTheTicket { one_and(&[tax]) } else { LogNormal::ONE },
        exchange,
    };
    let inner = chain.totals(&terms);
    let abroad = |total: LogNormal| total.times(exchange);
    let totals = Totals {
        direct: abroad(inner.direct),
        factory_price: abroad(inner.factory_price),
        landed: abroad(inner.landed),
        before_tax: abroad(inner.before_tax),
        ticket: inner.ticket,
    };
    let add = |key, name, leg, amount, named: &[&'static Rate]| {
        let mut cost = Cost::new(key, name, leg);
        cost.amount = amount;
        named.iter().chain([&market.exchange()]).for_each(|rate| cost.note_rate(rate, rates));
        cost
    };
    lines.push(add("overhead", to_say!("Factory overhead"), Leg::Factory, totals.direct.times(overhead), &[&OVERHEAD]));
    let loaded = totals.direct.times(chain.overhead);
    lines.push(add("factory-margin", to_say!("Factory margin"), Leg::Factory, loaded.times(margin), &[&FACTORY_MARGIN]));
    lines.push(add("freight", to_say!("Freight"), Leg::Way, abroad(chain.freight), &[bill.freight]));
    let duty_base = match base {
        DutyBase::FreeOnBoard => totals.factory_price,
        DutyBase::WithFreight => sum(&[Term::alone(totals.factory_price), Term::alone(abroad(chain.freight))], 0.2),
    };
    if let Some(known) = bill.duties.iter().find(|known| known.market == market) {
        let mut cost = add("duty", to_say!("Duty"), Leg::Way, duty_base.times(duty), &[known.rate, bill.freight]);
        match duty_standing {
            Standing::Open => cost.open.push(known.check),
            Standing::Answered => cost.moved_by.push(known.check),
            Standing::DoesNotApply => {}
        }
        lines.push(cost);
    }
    lines.push(add("fees", to_say!("Entry fees"), Leg::Way, totals.factory_price.times(fees), &[market.fees()]));
    let mut before = totals.landed;
    for rate in multiples {
        let times = rate_as(rate, rates);
        let more = LogNormal::of_moments(times.mean() - 1.0, times.variance());
        lines.push(add(rate.key, rate.name, Leg::Shop, before.times(more), &[rate]));
        before = before.times(times);
    }
    if market.tax_habit() == TaxHabit::InTheTicket {
        lines.push(add("tax", market.tax().name, Leg::Tax, totals.before_tax.times(tax), &[market.tax()]));
    }
    let kind_of = |id: usize| match acting.get(id) {
        Some(acts) => CauseKind::Input(acts.input.name),
        None => match checks.get((id - acting.len()) / LEVELS) {
            Some(check) if known(check) == Known::Open => CauseKind::Open(check),
            check => CauseKind::Doubt(check.copied().unwrap_or_default()),
        },
    };
    let causes = widest(&chain, &terms, &owners, kind_of, channel.is_none());
    share_names(&mut lines, bill, &acting);
    BuildUp { market, channel, lines, totals, causes, parts, chain, duty, fees, tax }
}

/// One and shares of it.
fn one_and(shares: &[LogNormal]) -> LogNormal {
    let mean: f64 = shares.iter().map(|share| share.mean()).sum();
    let variance: f64 = shares.iter().map(|share| share.variance()).sum();
    if mean > 0.0 { LogNormal::of_moments(1.0 + mean, variance) } else { LogNormal::ONE }
}

/// Writes into each line which of its inputs other lines lean on too.
fn share_names(lines: &mut [Cost], bill: &Bill, acting: &[ActingInput]) {
    let uses =
        |line: &super::bill::Line, input: &Input| line.parts.iter().flat_map(|part| part.inputs).any(|used| used.input == input);
    for (line, cost) in bill.lines.iter().zip(lines) {
        for acts in acting {
            if uses(line, acts.input) && bill.lines.iter().filter(|other| uses(other, acts.input)).count() > 1 {
                cost.shares.push(acts.input.name);
            }
        }
    }
}

impl Cost {
    fn new(key: &'static str, name: &'static str, leg: Leg) -> Cost {
        Cost {
            key,
            name,
            leg,
            amount: LogNormal::NOTHING,
            moved_by: Vec::new(),
            open: Vec::new(),
            shares: Vec::new(),
            edited: Vec::new(),
            sources: Vec::new(),
            as_of: None,
        }
    }

    fn note(&mut self, acts: &ActingInput) {
        match acts.check {
            Some((check, Standing::Open)) if !self.open.contains(&check) => self.open.push(check),
            Some((check, Standing::Answered)) if !self.moved_by.contains(&check) => self.moved_by.push(check),
            _ => {}
        }
        for (rate, edited, day) in &acts.rates {
            self.note_day(rate, *edited, *day);
        }
        if acts.rates.is_empty() && !self.sources.contains(&acts.input.source) {
            self.sources.push(acts.input.source);
        }
    }

    fn note_rate(&mut self, rate: &'static Rate, rates: &Rates) {
        let acting = rates.acting(rate);
        self.note_day(rate, acting.edited, acting.as_of);
    }

    fn note_day(&mut self, rate: &'static Rate, edited: bool, day: Day) {
        if edited && !self.edited.contains(&rate) {
            self.edited.push(rate);
        }
        if !edited && !self.sources.contains(&rate.source) {
            self.sources.push(rate.source);
        }
        self.as_of = Some(self.as_of.map_or(day, |oldest| oldest.min(day)));
    }
}
