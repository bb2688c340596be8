//! What a person means to do with a garment, as far as money hangs on it: wear it so often, ask so much for it, order so many.

/// Plans of a shopper and of a buyer. Every one may be open; 0 is open too, so that no plan divides by nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Deal {
    wears_a_year: Option<u32>,
    target: Option<u64>,
    minimum: Option<u32>,
}

impl Deal {
    /// Most wearings a year: one for each day, and one more in a leap year.
    pub const MOST_WEARS: u32 = 366;

    /// With so many wearings a year; more than there are days count as one a day.
    pub fn with_wears(self, a_year: Option<u32>) -> Deal {
        Deal { wears_a_year: a_year.filter(|wears| *wears > 0).map(|wears| wears.min(Deal::MOST_WEARS)), ..self }
    }

    /// With that retail ticket to come, in minor units of the currency of the garment's ticket.
    pub fn with_target(self, target: Option<u64>) -> Deal {
        Deal { target: target.filter(|target| *target > 0), ..self }
    }

    /// With a smallest order of so many pieces.
    pub fn with_minimum(self, minimum: Option<u32>) -> Deal {
        Deal { minimum: minimum.filter(|minimum| *minimum > 0), ..self }
    }

    /// How often a year the person means to wear it.
    pub fn wears_a_year(&self) -> Option<u32> {
        self.wears_a_year
    }

    /// The retail ticket that a buyer means to put on it, in minor units of the currency of the garment's ticket.
    pub fn target(&self) -> Option<u64> {
        self.target
    }

    /// The fewest pieces that the maker takes an order for.
    pub fn minimum(&self) -> Option<u32> {
        self.minimum
    }
}
