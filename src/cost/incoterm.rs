//! What a supplier's price has in it, by the three letters beside it, and the same offer said at the factory's port.

use super::retail::Offer;
use crate::say;

/// What a price has in it: the rules of the International Chamber of Commerce that clothes are mostly sold by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Incoterm {
    /// The piece as it lies at the works.
    ExWorks,
    /// Brought to the carrier, cleared for export.
    FreeCarrier,
    /// On board at the port, cleared for export.
    FreeOnBoard,
    /// With the freight to the port of arrival.
    CostAndFreight,
    /// With freight and insurance to the port of arrival.
    CostInsuranceFreight,
    /// Brought to the door, duty not paid.
    DeliveredAtPlace,
    /// Brought to the door, duty paid.
    DeliveredDutyPaid,
}

/// What it costs to bring a piece from the works on board, export cleared, as a share of its price there. Judgement.
pub const TO_THE_PORT: f64 = 0.03;

impl Incoterm {
    /// All of them, from what has least in it.
    pub const ALL: [Incoterm; 7] = [
        Incoterm::ExWorks,
        Incoterm::FreeCarrier,
        Incoterm::FreeOnBoard,
        Incoterm::CostAndFreight,
        Incoterm::CostInsuranceFreight,
        Incoterm::DeliveredAtPlace,
        Incoterm::DeliveredDutyPaid,
    ];

    /// The three letters; name in storage too, never renamed once released.
    pub const fn code(self) -> &'static str {
        match self {
            Incoterm::ExWorks => "EXW",
            Incoterm::FreeCarrier => "FCA",
            Incoterm::FreeOnBoard => "FOB",
            Incoterm::CostAndFreight => "CFR",
            Incoterm::CostInsuranceFreight => "CIF",
            Incoterm::DeliveredAtPlace => "DAP",
            Incoterm::DeliveredDutyPaid => "DDP",
        }
    }

    /// The term of those letters.
    pub fn from_code(code: &str) -> Option<Incoterm> {
        Incoterm::ALL.into_iter().find(|term| term.code() == code)
    }

    /// What the price has in it, in a few words.
    pub fn words(self) -> &'static str {
        match self {
            Incoterm::ExWorks => say!("at the works"),
            Incoterm::FreeCarrier => say!("handed to the carrier"),
            Incoterm::FreeOnBoard => say!("on board at the port"),
            Incoterm::CostAndFreight => say!("with freight"),
            Incoterm::CostInsuranceFreight => say!("with freight and insurance"),
            Incoterm::DeliveredAtPlace => say!("to the door, duty not paid"),
            Incoterm::DeliveredDutyPaid => say!("to the door, duty paid"),
        }
    }

    /// An offer whose price was quoted on these terms, said at the factory's port, so that it comes to the same landed cost.
    ///
    /// # Formula
    /// `EXW: p (1 + 0.03)`; `FCA, FOB: p`; `CFR, CIF, DAP: p` less freight, nothing at the least; `DDP: p`, with nothing to come.
    ///
    /// # Where it holds
    /// Insurance and the last miles are left in the price: some tenths of a per cent of it. [`TO_THE_PORT`] is judgement.
    ///
    /// # Source
    /// Incoterms 2020 of the International Chamber of Commerce, from memory.
    ///
    /// # Example
    /// ```
    /// use garment_assay::cost::{DutyBase, Incoterm, Offer, landed};
    /// let quoted = Offer { price: 10.0, freight: 0.4, duty_rate: 0.12, base: DutyBase::WithFreight, fee_rate: 0.0, minimum: 300 };
    /// let at_port = Incoterm::CostInsuranceFreight.at_the_port(quoted);
    /// // Duty falls on what is paid, freight in: 10 and 12 per cent of it.
    /// assert!((landed(at_port.base, at_port.duty_rate, at_port.fee_rate, at_port.price, at_port.freight) - 11.2).abs() < 1e-12);
    /// ```
    pub fn at_the_port(self, quoted: Offer) -> Offer {
        match self {
            Incoterm::ExWorks => Offer { price: quoted.price * (1.0 + TO_THE_PORT), ..quoted },
            Incoterm::FreeCarrier | Incoterm::FreeOnBoard => quoted,
            Incoterm::CostAndFreight | Incoterm::CostInsuranceFreight | Incoterm::DeliveredAtPlace => {
                Offer { price: (quoted.price - quoted.freight).max(0.0), ..quoted }
            }
            Incoterm::DeliveredDutyPaid => Offer { freight: 0.0, duty_rate: 0.0, fee_rate: 0.0, ..quoted },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cost::{DutyBase, landed};

    fn comes_to(term: Incoterm, base: DutyBase) -> f64 {
        let quoted = Offer { price: 10.0, freight: 0.5, duty_rate: 0.1, base, fee_rate: 0.005, minimum: 0 };
        let offer = term.at_the_port(quoted);
        landed(offer.base, offer.duty_rate, offer.fee_rate, offer.price, offer.freight)
    }

    /// Worked by hand from what each term has in it.
    #[test]
    fn the_more_a_price_has_in_it_the_less_is_to_come() {
        let near = |given: f64, expected: f64| assert!((given - expected).abs() < 1e-12, "{given} for {expected}");
        near(comes_to(Incoterm::FreeOnBoard, DutyBase::FreeOnBoard), 10.0 + 0.5 + 1.0 + 0.05);
        near(comes_to(Incoterm::FreeCarrier, DutyBase::FreeOnBoard), 11.55);
        near(comes_to(Incoterm::ExWorks, DutyBase::FreeOnBoard), 10.3 + 0.5 + 1.03 + 0.0515);
        // 9.5 at the port; duty in the United States falls on that alone.
        near(comes_to(Incoterm::CostInsuranceFreight, DutyBase::FreeOnBoard), 9.5 + 0.5 + 0.95 + 0.0475);
        near(comes_to(Incoterm::CostAndFreight, DutyBase::WithFreight), 10.0 + 1.0 + 0.0475);
        near(comes_to(Incoterm::DeliveredAtPlace, DutyBase::WithFreight), 11.0475);
        near(comes_to(Incoterm::DeliveredDutyPaid, DutyBase::WithFreight), 10.0);
    }

    #[test]
    fn a_price_below_the_freight_is_nothing_at_the_port() {
        let quoted = Offer { price: 0.2, freight: 0.5, duty_rate: 0.0, base: DutyBase::FreeOnBoard, fee_rate: 0.0, minimum: 0 };
        assert_eq!(Incoterm::CostAndFreight.at_the_port(quoted).price, 0.0);
    }

    #[test]
    fn letters_name_one_term_each() {
        for term in Incoterm::ALL {
            assert_eq!(Incoterm::from_code(term.code()), Some(term));
            assert!(!term.words().is_empty());
        }
        assert_eq!(Incoterm::from_code("fob"), None);
    }
}
