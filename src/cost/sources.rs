//! What the rates of markets and shops lean on. The prices of a family's cloth and trims name theirs in the catalog.

use crate::source::{Kind, Source};

/// One expert's estimate of a rate.
pub static RATE_JUDGEMENT: Source = Source {
    name: "judgement on rates",
    title: "One expert’s estimate of a price, wage or share as of the day beside it; nobody measured it. Put your own in its place.",
    kind: Kind::Judgement,
};

/// What shops take.
pub static MULTIPLES: Source = Source {
    name: "shop multiples",
    title: "How many times the landed cost shops of a kind ask, tax left out: ranges in common use, no single source, from memory.",
    kind: Kind::Memory,
};

/// Taxes on sales and how tickets state them.
pub static SALES_TAXES: Source = Source {
    name: "sales taxes",
    title: "Value added, goods and consumption taxes on clothes, and whether a ticket holds them. From memory; rates change.",
    kind: Kind::Memory,
};

/// What a price has in it.
pub static INCOTERMS: Source = Source {
    name: "Incoterms 2020",
    title: "Incoterms 2020 of the International Chamber of Commerce: what the seller pays for under each term. From memory; that it costs 3 per \
        cent to bring a piece from the works on board is judgement.",
    kind: Kind::Memory,
};

/// Entry fees of the United States.
pub static ENTRY_FEES: Source = Source {
    name: "entry fees",
    title: "United States merchandise processing fee (0.3464 per cent) and harbor maintenance fee (0.125 per cent). From memory; \
        the first has a least and a most for each entry.",
    kind: Kind::Memory,
};

/// What overhead, margin and freight come to.
pub static COST_SHEET_SHARES: Source = Source {
    name: "shares of cost sheets",
    title: "Overhead, factory margin and freight as in four cost sheets of jeans worked here from common-practice figures.",
    kind: Kind::Computed,
};

/// How long clothes are worn.
pub static WEAR_SURVEYS: Source = Source {
    name: "wear surveys",
    title: "Wearings before a piece is given up, 3000 adults in the United Kingdom, 2010 (jeans 428, reported and not counted), and \
        years kept, 2021. The medians here lie below on purpose: judgement.",
    kind: Kind::Document,
};

/// Every entry.
pub static SOURCES: [&Source; 6] = [&RATE_JUDGEMENT, &MULTIPLES, &SALES_TAXES, &ENTRY_FEES, &COST_SHEET_SHARES, &WEAR_SURVEYS];
