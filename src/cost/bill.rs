//! The bill of a family: what goes into a piece, as plain data. A line is a sum of parts, a part a product of inputs, and an input may hang
//! on what a check found.

use super::market::Market;
use super::range::Range;
use super::rates::Rate;
use super::wear::Life;
use crate::source::Source;
use crate::trade::Aspect;

/// What goes into a piece of a family.
#[derive(Debug)]
pub struct Bill {
    /// The lines up to the factory's gate.
    pub lines: &'static [Line],
    /// Freight and insurance of a piece.
    pub freight: &'static Rate,
    /// Duty, market by market.
    pub duties: &'static [Duty],
    /// How long such pieces are worn.
    pub life: Life,
    /// What that leans on.
    pub life_source: &'static Source,
}

/// One line of the bill.
#[derive(Debug)]
pub struct Line {
    /// Name in exports; never renamed once released.
    pub key: &'static str,
    /// The words on the screen.
    pub(crate) name: &'static str,
    /// What it pays for, so that its rates can be found again in a list.
    pub pays_for: Aspect,
    /// What adds up to it.
    pub parts: &'static [Part],
}

crate::language::says!(Line { name });

/// One part of a line: the product of its inputs, in US dollars.
#[derive(Debug)]
pub struct Part {
    /// The words on the screen; within a bill no two parts share them.
    pub(crate) name: &'static str,
    /// Its inputs.
    pub inputs: &'static [Use],
}

crate::language::says!(Part { name });

/// How a part uses an input.
#[derive(Clone, Copy, Debug)]
pub struct Use {
    /// The input; one that several parts use moves all of them together.
    pub input: &'static Input,
    /// To which power: 1 multiplies, -1 divides, 0.6 moves less than in step.
    pub power: f64,
}

impl Part {
    /// A part of that name.
    pub const fn new(name: &'static str, inputs: &'static [Use]) -> Part {
        Part { name, inputs }
    }
}

impl Use {
    /// Multiplies.
    pub const fn of(input: &'static Input) -> Use {
        Use { input, power: 1.0 }
    }

    /// Divides.
    pub const fn over(input: &'static Input) -> Use {
        Use { input, power: -1.0 }
    }

    /// To a power.
    pub const fn to(power: f64, input: &'static Input) -> Use {
        Use { input, power }
    }
}

/// One amount that a part is made of.
#[derive(Debug)]
pub struct Input {
    /// The words on the screen.
    pub(crate) name: &'static str,
    /// How much it is, and what that hangs on.
    pub value: Value,
    /// What it leans on, where no rate says so itself.
    pub source: &'static Source,
}

crate::language::says!(Input { name });

impl Input {
    /// The same for every piece.
    pub const fn fixed(name: &'static str, range: Range, source: &'static Source) -> Input {
        Input { name, value: Value::Fixed(Amount::Own(range)), source }
    }

    /// A rate, the same for every piece.
    pub const fn rate(rate: &'static Rate, source: &'static Source) -> Input {
        Input { name: rate.name, value: Value::Fixed(Amount::Rate(rate)), source }
    }

    /// The rates that it may take.
    fn rates(&self) -> Vec<&'static Rate> {
        let of = |amount: &Amount| match amount {
            Amount::Rate(rate) => Some(*rate),
            Amount::Own(_) => None,
        };
        match &self.value {
            Value::Fixed(amount) => of(amount).into_iter().collect(),
            Value::By { choices, .. } => choices.iter().filter_map(|choice| of(&choice.amount)).collect(),
        }
    }

    /// By the level that a check found.
    pub const fn by(name: &'static str, check: &'static str, choices: &'static [Choice], source: &'static Source) -> Input {
        Input { name, value: Value::By { check, choices, reading_over: None }, source }
    }

    /// By the reading of a check's instrument, over an amount in its unit; by the level where there is no reading.
    pub const fn by_reading(
        name: &'static str,
        check: &'static str,
        over: f64,
        choices: &'static [Choice],
        source: &'static Source,
    ) -> Input {
        Input { name, value: Value::By { check, choices, reading_over: Some(over) }, source }
    }
}

/// Content: the same input is the same place in memory.
impl PartialEq for Input {
    fn eq(&self, other: &Input) -> bool {
        std::ptr::eq(self, other)
    }
}

/// How much an input is.
#[derive(Debug)]
pub enum Value {
    /// The same for every piece of the family.
    Fixed(Amount),
    /// By what a check found.
    By {
        /// Key of the check.
        check: &'static str,
        /// What each of its levels says. Where the check is not answered the amount may be that of any level, by their shares.
        choices: &'static [Choice],
        /// A reading of the check's instrument, in its unit, is taken as it is, over this; none where levels alone count.
        reading_over: Option<f64>,
    },
}

/// What one level of a check says about an input.
#[derive(Debug)]
pub struct Choice {
    /// Key of the level.
    pub level: &'static str,
    /// How much the input then is.
    pub amount: Amount,
    /// Of a hundred new pieces on general sale, how many are so. Judgement; it counts only while the check is open.
    pub share: u8,
}

impl Choice {
    /// A level that sets an amount of its own.
    pub const fn new(level: &'static str, share: u8, [low, usual, high]: [f64; 3]) -> Choice {
        Choice { level, amount: Amount::Own(Range::new(low, usual, high)), share }
    }

    /// A level that picks a rate.
    pub const fn rate(level: &'static str, share: u8, rate: &'static Rate) -> Choice {
        Choice { level, amount: Amount::Rate(rate), share }
    }
}

/// An amount: a rate, which a person can change, or a quantity of the family's own.
#[derive(Debug)]
pub enum Amount {
    /// A rate.
    Rate(&'static Rate),
    /// A quantity: metres, minutes, a factor.
    Own(Range),
}

/// Duty on a family's pieces in one market.
#[derive(Debug)]
pub struct Duty {
    /// The market.
    pub market: Market,
    /// The rate, as a share of the market's base.
    pub rate: &'static Rate,
    /// Key of the check that says where the piece was made.
    pub check: &'static str,
    /// Levels of that check from which not all pieces pay, and how many of a hundred do.
    pub pays: &'static [(&'static str, u8)],
    /// How many of a hundred pay while the check is open.
    pub open: u8,
}

impl Line {
    /// Every rate that its inputs name; one that is named again stands again.
    pub fn rates(&self) -> Vec<&'static Rate> {
        let inputs = self.parts.iter().flat_map(|part| part.inputs).map(|used| used.input);
        inputs.flat_map(Input::rates).collect()
    }
}

impl Bill {
    /// Every rate that the bill names, each once.
    pub fn rates(&self) -> Vec<&'static Rate> {
        let mut rates: Vec<&'static Rate> = Vec::new();
        let mut note = |rate: &'static Rate| {
            if !rates.contains(&rate) {
                rates.push(rate);
            }
        };
        self.lines.iter().flat_map(Line::rates).for_each(&mut note);
        note(self.freight);
        self.duties.iter().for_each(|duty| note(duty.rate));
        rates
    }

    /// Every input, in the order of the bill; one that is used again stands again.
    pub fn inputs(&self) -> impl Iterator<Item = &'static Input> {
        self.lines.iter().flat_map(|line| line.parts).flat_map(|part| part.inputs).map(|used| used.input)
    }

    /// Keys of the checks that the bill hangs on, each once.
    pub fn checks(&self) -> Vec<&'static str> {
        let mut checks = Vec::new();
        let inputs = self.inputs().filter_map(|input| match input.value {
            Value::By { check, .. } => Some(check),
            Value::Fixed(_) => None,
        });
        for check in inputs.chain(self.duties.iter().map(|duty| duty.check)) {
            if !checks.contains(&check) {
                checks.push(check);
            }
        }
        checks
    }
}

/// Content: the same bill is the same place in memory.
impl PartialEq for Bill {
    fn eq(&self, other: &Bill) -> bool {
        std::ptr::eq(self, other)
    }
}
