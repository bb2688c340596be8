//! Markets and kinds of shop: currency, tax, duty, and what they take on top of the landed cost.

use super::range::Range;
use super::rates::{Rate, RateUnit};
use super::retail::DutyBase;
use super::sources::{COST_SHEET_SHARES, ENTRY_FEES, MULTIPLES, RATE_JUDGEMENT, SALES_TAXES};
use crate::say;
use crate::source::Source;
use crate::trade::{Currency, Day};

/// The day on which the judgements below were made.
pub const JUDGED: Day = match Day::new(2026, 11, 25) {
    Some(day) => day,
    None => panic!("a day of the calendar"),
};

/// The day as of which tariffs were read.
pub const TARIFFS_READ: Day = match Day::new(2025, 12, 1) {
    Some(day) => day,
    None => panic!("a day of the calendar"),
};

/// Where a garment is sold.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Market {
    /// United States.
    #[default]
    UnitedStates,
    /// European Union.
    EuropeanUnion,
    /// United Kingdom.
    UnitedKingdom,
    /// India.
    India,
    /// Japan.
    Japan,
}

/// How a ticket states the tax.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TaxHabit {
    /// It is in the ticket.
    InTheTicket,
    /// It is added at the till, and no part of the ticket.
    AtTheTill,
}

impl Market {
    /// All markets.
    pub const ALL: [Market; 5] =
        [Market::UnitedStates, Market::EuropeanUnion, Market::UnitedKingdom, Market::India, Market::Japan];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Market::UnitedStates => "us",
            Market::EuropeanUnion => "eu",
            Market::UnitedKingdom => "uk",
            Market::India => "in",
            Market::Japan => "jp",
        }
    }

    /// The market of that key.
    pub fn from_key(key: &str) -> Option<Market> {
        Market::ALL.into_iter().find(|market| market.key() == key)
    }

    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Market::UnitedStates => say!("United States"),
            Market::EuropeanUnion => say!("European Union"),
            Market::UnitedKingdom => say!("United Kingdom"),
            Market::India => say!("India"),
            Market::Japan => say!("Japan"),
        }
    }

    /// The currency of its tickets.
    pub const fn currency(self) -> Currency {
        match self {
            Market::UnitedStates => Currency::Usd,
            Market::EuropeanUnion => Currency::Eur,
            Market::UnitedKingdom => Currency::Gbp,
            Market::India => Currency::Inr,
            Market::Japan => Currency::Jpy,
        }
    }

    /// The market whose tickets are in that currency, if one is known.
    pub fn of_currency(currency: Currency) -> Option<Market> {
        Market::ALL.into_iter().find(|market| market.currency() == currency)
    }

    /// How its tickets state the tax. From memory: common law and custom of each.
    pub const fn tax_habit(self) -> TaxHabit {
        match self {
            Market::UnitedStates => TaxHabit::AtTheTill,
            _ => TaxHabit::InTheTicket,
        }
    }

    /// What it reckons duty on. Handbook, section 10.5, for the first three; the others from memory.
    pub const fn duty_base(self) -> DutyBase {
        match self {
            Market::UnitedStates => DutyBase::FreeOnBoard,
            _ => DutyBase::WithFreight,
        }
    }

    /// Its currency for one US dollar.
    pub fn exchange(self) -> &'static Rate {
        match self {
            Market::UnitedStates => &US_EXCHANGE,
            Market::EuropeanUnion => &EU_EXCHANGE,
            Market::UnitedKingdom => &UK_EXCHANGE,
            Market::India => &IN_EXCHANGE,
            Market::Japan => &JP_EXCHANGE,
        }
    }

    /// Tax on the sale, as a share of the price before it.
    pub fn tax(self) -> &'static Rate {
        match self {
            Market::UnitedStates => &US_TAX,
            Market::EuropeanUnion => &EU_TAX,
            Market::UnitedKingdom => &UK_TAX,
            Market::India => &IN_TAX,
            Market::Japan => &JP_TAX,
        }
    }

    /// Fees at entry, as a share of the factory price.
    pub fn fees(self) -> &'static Rate {
        match self {
            Market::UnitedStates => &US_FEES,
            Market::EuropeanUnion => &EU_FEES,
            Market::UnitedKingdom => &UK_FEES,
            Market::India => &IN_FEES,
            Market::Japan => &JP_FEES,
        }
    }
}

/// The kind of shop, as far as prices go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Channel {
    /// Supermarkets and chains that sell on price.
    ValueChain,
    /// Chains that have their own goods made.
    OwnShopChain,
    /// A brand sold through other people's stores.
    BrandThroughStores,
    /// A small maker who sells without a shop between.
    DirectSmallMaker,
    /// Premium and contemporary brands.
    Premium,
    /// Luxury houses.
    Luxury,
}

impl Channel {
    /// All kinds.
    pub const ALL: [Channel; 6] = [
        Channel::ValueChain,
        Channel::OwnShopChain,
        Channel::BrandThroughStores,
        Channel::DirectSmallMaker,
        Channel::Premium,
        Channel::Luxury,
    ];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Channel::ValueChain => "value-chain",
            Channel::OwnShopChain => "own-shop-chain",
            Channel::BrandThroughStores => "brand-through-stores",
            Channel::DirectSmallMaker => "direct-small-maker",
            Channel::Premium => "premium",
            Channel::Luxury => "luxury",
        }
    }

    /// The kind of that key.
    pub fn from_key(key: &str) -> Option<Channel> {
        Channel::ALL.into_iter().find(|channel| channel.key() == key)
    }

    /// The words on the screen.
    pub fn name(self) -> &'static str {
        match self {
            Channel::ValueChain => say!("A shop that sells on price"),
            Channel::OwnShopChain => say!("A chain with its own goods"),
            Channel::BrandThroughStores => say!("A brand in other people’s stores"),
            Channel::DirectSmallMaker => say!("A small maker, direct"),
            Channel::Premium => say!("A premium brand"),
            Channel::Luxury => say!("A luxury house"),
        }
    }

    /// What brand and shop take: one multiple on the landed cost, or the brand's and then the store's.
    pub fn multiples(channel: Option<Channel>) -> &'static [&'static Rate] {
        match channel {
            None => const { &[&ANY_SHOP] },
            Some(Channel::ValueChain) => const { &[&VALUE_CHAIN] },
            Some(Channel::OwnShopChain) => const { &[&OWN_SHOP_CHAIN] },
            Some(Channel::BrandThroughStores) => const { &[&BRAND_TO_STORE, &STORE] },
            Some(Channel::DirectSmallMaker) => const { &[&DIRECT] },
            Some(Channel::Premium) => const { &[&PREMIUM] },
            Some(Channel::Luxury) => const { &[&LUXURY] },
        }
    }
}

/// Every rate of every market and kind of shop, for lists and for what was stored by key.
pub fn common_rates() -> impl Iterator<Item = &'static Rate> {
    let markets = Market::ALL.into_iter().flat_map(|market| [market.exchange(), market.tax(), market.fees()]);
    let shops =
        std::iter::once(None).chain(Channel::ALL.map(Some)).flat_map(|channel| Channel::multiples(channel).iter().copied());
    markets.chain([&OVERHEAD, &FACTORY_MARGIN]).chain(shops)
}

const fn rate(key: &'static str, name: &'static str, unit: RateUnit, range: Range, source: &'static Source) -> Rate {
    Rate { key, name, unit, range, source, as_of: JUDGED }
}

const fn share(key: &'static str, name: &'static str, [low, usual, high]: [f64; 3], source: &'static Source) -> Rate {
    rate(key, name, RateUnit::Share, Range::new(low, usual, high), source)
}

const fn times(key: &'static str, name: &'static str, [low, usual, high]: [f64; 3]) -> Rate {
    rate(key, name, RateUnit::Times, Range::new(low, usual, high), &MULTIPLES)
}

const fn exchange(key: &'static str, name: &'static str, [low, usual, high]: [f64; 3]) -> Rate {
    rate(key, name, RateUnit::ForOneUsd, Range::new(low, usual, high), &RATE_JUDGEMENT)
}

/// Commercial overhead of the maker, as a share of direct cost.
pub static OVERHEAD: Rate = share("overhead", "Factory overhead", [0.03, 0.045, 0.07], &COST_SHEET_SHARES);
/// The factory's margin, as a share of direct cost and overhead.
pub static FACTORY_MARGIN: Rate = share("factory-margin", "Factory margin", [0.05, 0.09, 0.14], &COST_SHEET_SHARES);

// Nobody looked these up for the day beside them: they are what the last years had, wide enough for a year's swing.
static US_EXCHANGE: Rate = exchange("us-exchange", "Dollars for a dollar", [1.0, 1.0, 1.0]);
static EU_EXCHANGE: Rate = exchange("eu-exchange", "Euros for a dollar", [0.83, 0.88, 0.94]);
static UK_EXCHANGE: Rate = exchange("uk-exchange", "Pounds for a dollar", [0.72, 0.76, 0.81]);
static IN_EXCHANGE: Rate = exchange("in-exchange", "Rupees for a dollar", [84.0, 88.0, 93.0]);
static JP_EXCHANGE: Rate = exchange("jp-exchange", "Yen for a dollar", [140.0, 150.0, 160.0]);

// Not in a ticket there; 0 to about 10 per cent by state and town, and in some states none on clothes.
static US_TAX: Rate = share("us-tax", "Sales tax", [0.02, 0.07, 0.10], &SALES_TAXES);
static EU_TAX: Rate = share("eu-tax", "Value added tax", [0.19, 0.21, 0.25], &SALES_TAXES);
static UK_TAX: Rate = share("uk-tax", "Value added tax", [0.20, 0.20, 0.20], &SALES_TAXES);
// 5 per cent below a ticket of some thousands of rupees, 18 above: the range spans both.
static IN_TAX: Rate = share("in-tax", "Goods and services tax", [0.05, 0.10, 0.18], &SALES_TAXES);
static JP_TAX: Rate = share("jp-tax", "Consumption tax", [0.10, 0.10, 0.10], &SALES_TAXES);

static US_FEES: Rate = share("us-fees", "Entry fees", [0.00471, 0.00471, 0.00471], &ENTRY_FEES);
static EU_FEES: Rate = share("eu-fees", "Entry fees", [0.002, 0.004, 0.01], &RATE_JUDGEMENT);
static UK_FEES: Rate = share("uk-fees", "Entry fees", [0.002, 0.004, 0.01], &RATE_JUDGEMENT);
static IN_FEES: Rate = share("in-fees", "Entry fees", [0.002, 0.004, 0.01], &RATE_JUDGEMENT);
static JP_FEES: Rate = share("jp-fees", "Entry fees", [0.002, 0.004, 0.01], &RATE_JUDGEMENT);

static ANY_SHOP: Rate = times("any-shop", "Brand and shop, kind not known", [2.4, 4.0, 6.8]);
static VALUE_CHAIN: Rate = times("value-chain", "Shop that sells on price", [1.8, 2.2, 2.7]);
static OWN_SHOP_CHAIN: Rate = times("own-shop-chain", "Chain with its own goods", [2.6, 3.2, 4.1]);
static BRAND_TO_STORE: Rate = times("brand-to-store", "Brand, selling to stores", [1.85, 2.2, 2.6]);
static STORE: Rate = times("store", "Store, on what it pays", [1.95, 2.18, 2.45]);
static DIRECT: Rate = times("direct-small-maker", "Small maker, direct", [2.5, 3.2, 4.3]);
static PREMIUM: Rate = times("premium", "Premium brand and shop", [4.9, 6.2, 8.0]);
static LUXURY: Rate = times("luxury", "Luxury house", [7.5, 10.5, 15.0]);
