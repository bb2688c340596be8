//! What every instrument is: what it asks for, what it gives, and what it refuses.

use crate::language::said;
use crate::quantity::{Decimal, Dimension, Estimate, Name, ReadFault, System, Unit, read, written, written_exactly};
use crate::say;
use crate::source::Source;

/// An instrument: readings in, estimate out. All of it is fixed data and one formula.
#[derive(Debug)]
pub struct Instrument {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// A few words for lists and headings.
    pub(crate) name: &'static str,
    /// What it does, in a sentence.
    pub(crate) says: &'static str,
    /// The unit of its result, whatever units the readings were typed in.
    pub unit: Unit,
    /// What it asks for, in the order in which [`estimate`](Self::estimate) takes the amounts.
    pub inputs: &'static [Input],
    /// What to do with the hands, in two to five short sentences, in order.
    pub(crate) steps: &'static [&'static str],
    /// What makes the reading wrong or harms the goods; none where nothing does.
    pub(crate) cautions: &'static [&'static str],
    /// What the formula and its figures lean on.
    pub sources: &'static [&'static Source],
    /// The formula. It is handed one amount for each input, in order: finite and within limits where there is one, and none only where the
    /// input is [`Needed::Never`] and nothing was given. Only [`estimate`](Self::estimate) calls it.
    pub(super) formula: Formula,
}

crate::language::says!(Instrument { name, says, steps*, cautions* });

/// Amounts in, outcome out.
pub(super) type Formula = fn(&[Option<f64>]) -> Result<Outcome, Fault>;

/// One thing an instrument asks for.
#[derive(Debug, PartialEq)]
pub struct Input {
    /// Name in storage, unique within the instrument; never renamed once released. Also its name in the budget of the outcome.
    pub key: &'static str,
    /// A few words that label the field, and name the input in "most of this spread comes from ...".
    pub(crate) name: &'static str,
    /// What the hands do.
    pub(crate) ask: &'static str,
    /// What sort of answer it takes.
    pub kind: InputKind,
    /// The unit of the amount handed to [`Instrument::estimate`], and of `least`, `most` and the usual amount.
    pub unit: Unit,
    /// The unit offered to people used to metric.
    pub metric: Unit,
    /// The unit offered to people used to inches and ounces.
    pub imperial: Unit,
    /// Smallest amount taken.
    pub least: f64,
    /// Largest amount taken.
    pub most: f64,
    /// What happens when nothing is given.
    pub needed: Needed,
}

crate::language::says!(Input { name, ask });

/// What happens when nothing is given for an input.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Needed {
    /// It must be given.
    Always,
    /// This amount stands, in the input's unit. A form may keep such inputs out of sight at first.
    Usually(f64),
    /// Nothing stands: the instrument does without, as without a second reading.
    Never,
}

/// What sort of answer an input takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum InputKind {
    /// Things counted: a whole number.
    WholeCount,
    /// Read off a rule, a scale or a label.
    Measured,
    /// Yes is 1, no is 0.
    YesNo,
    /// One of a list; the amount is its place, from 0. Pages keep the place, so a released list only ever grows at its end.
    Choice(&'static [Choice]),
}

/// One of the things an input lets a person choose from.
#[derive(Debug, PartialEq, Eq, Hash)]
pub struct Choice {
    /// Name for code and tests, unique within the list; never renamed once released.
    pub key: &'static str,
    /// A few words.
    pub(crate) name: &'static str,
    /// One line that lets a newcomer choose it.
    pub(crate) line: &'static str,
    /// Whether a form still offers it. What was once released keeps its place in the list for the readings that hold it.
    pub is_offered: bool,
}

crate::language::says!(Choice { name, line });

/// What an instrument says.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// Best value, in the instrument's unit.
    pub value: f64,
    /// Standard uncertainty (1 sigma), in the instrument's unit.
    pub uncertainty: f64,
    /// Each input's part of the variance, biggest first, together 1; by the key of the input.
    pub budget: Vec<(Name, f64)>,
    /// What else the same readings give.
    pub also: Vec<Also>,
    /// What the readings imply, in short sentences; often none.
    /// As they are in English; [`says`](Self::says) says them.
    pub(crate) says: Vec<&'static str>,
}

crate::language::says!(Outcome { says* });

/// A further result of the same readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Also {
    /// Name for code and tests, unique within the outcome.
    pub key: &'static str,
    /// A few words that label it.
    pub(crate) name: &'static str,
    /// Best value, in `unit`.
    pub value: f64,
    /// Standard uncertainty (1 sigma), in `unit`; 0 where it is a definition or a count.
    pub uncertainty: f64,
    /// Its unit.
    pub unit: Unit,
}

crate::language::says!(Also { name });

/// Why an instrument says nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fault {
    /// Not one amount for each input.
    WrongNumberOfReadings {
        /// How many inputs there are.
        needed: usize,
        /// How many amounts were handed in.
        given: usize,
    },
    /// Nothing given, and no default.
    Missing(&'static Input),
    /// Infinite or not a number.
    NotANumber(&'static Input),
    /// A count with a fraction.
    NotWhole(&'static Input),
    /// A yes or no that is neither 1 nor 0.
    NotYesOrNo(&'static Input),
    /// A choice that is no place in the list.
    NotAChoice(&'static Input),
    /// An input that could be left empty is needed with what else was given.
    NeededToo(&'static Input),
    /// Two readings stand the wrong way round, or are the same.
    WrongOrder {
        /// What must be the smaller one.
        smaller: &'static Input,
        /// What must be the larger one.
        larger: &'static Input,
    },
    /// Below `least` or above `most`.
    OutOfRange(&'static Input),
    /// A count so small that its own error drowns it.
    TooFew {
        /// The count.
        input: &'static Input,
        /// The smallest count that says something.
        needed: u16,
    },
    /// What was chosen has no number: this sentence says why.
    NoNumber(&'static str),
    /// Each reading may be right, and together they give what no garment has.
    Implausible {
        /// What they give, in `unit`.
        value: f64,
        /// Smallest value believed.
        least: f64,
        /// Largest value believed.
        most: f64,
        /// The instrument's unit.
        unit: Unit,
    },
}

impl Instrument {
    /// The outcome for one amount per input, in the order of [`inputs`](Self::inputs) and each in that input's own
    /// [`unit`](Input::unit); `None` stands for nothing given, and then [`Needed`] says what happens.
    ///
    /// # Errors
    /// A [`Fault`] for the first input that cannot be taken, or for what they give together. Never panics, whatever is handed in.
    ///
    /// ```
    /// use garment_assay::measure::STITCH_DENSITY;
    /// // 24 stitches over 76.2 mm (3 inches), the ruler laid down anywhere.
    /// let outcome = STITCH_DENSITY.estimate(&[Some(24.0), Some(76.2), None, None, None, None]).unwrap();
    /// assert_eq!(format!("{:.2} {:.2}", outcome.value, outcome.uncertainty), "8.00 0.15");
    /// assert_eq!(outcome.budget[0].0, "count");
    /// ```
    pub fn estimate(&self, given: &[Option<f64>]) -> Result<Outcome, Fault> {
        if given.len() != self.inputs.len() {
            return Err(Fault::WrongNumberOfReadings { needed: self.inputs.len(), given: given.len() });
        }
        let amounts =
            self.inputs.iter().zip(given).map(|(input, amount)| input.taken(*amount)).collect::<Result<Vec<Option<f64>>, _>>()?;
        (self.formula)(&amounts)
    }

    /// The input of that key, and its place.
    pub fn input(&self, key: &str) -> Option<(usize, &'static Input)> {
        self.inputs.iter().enumerate().find(|(_, input)| input.key == key)
    }
}

/// Content: the same instrument is the same place in memory.
impl PartialEq for Instrument {
    fn eq(&self, other: &Instrument) -> bool {
        std::ptr::eq(self, other)
    }
}

impl Input {
    /// The unit offered to people of that habit.
    pub const fn unit_in(&self, system: System) -> Unit {
        match system {
            System::Metric => self.metric,
            System::Imperial => self.imperial,
        }
    }

    /// What a person typed, as the amount [`Instrument::estimate`] takes: in [`unit`](Self::unit), with `offered` assumed where no unit
    /// was typed. Limits are checked by `estimate`, not here.
    ///
    /// # Errors
    /// As [`read`](crate::quantity::read()).
    ///
    /// ```
    /// use garment_assay::measure::STITCH_DENSITY;
    /// use garment_assay::quantity::{Decimal, Unit};
    /// let length = &STITCH_DENSITY.inputs[1];
    /// assert_eq!(length.read("76,2", Unit::Millimetre, Decimal::Point), Ok(76.2));
    /// assert!((length.read("3 in", Unit::Millimetre, Decimal::Point).unwrap() - 76.2).abs() < 1e-9);
    /// ```
    pub fn read(&self, text: &str, offered: Unit, decimal: Decimal) -> Result<f64, ReadFault> {
        let amount = read(text, offered, decimal)?;
        amount.in_unit(self.unit).ok_or(ReadFault::WrongUnit { typed: amount.unit, expected: self.unit })
    }

    /// What stands when nothing is given, in [`unit`](Self::unit).
    pub const fn usual(&self) -> Option<f64> {
        match self.needed {
            Needed::Usually(amount) => Some(amount),
            Needed::Always | Needed::Never => None,
        }
    }

    /// What a person can choose from; empty where the input is no choice.
    pub const fn choices(&self) -> &'static [Choice] {
        match self.kind {
            InputKind::Choice(choices) => choices,
            InputKind::WholeCount | InputKind::Measured | InputKind::YesNo => &[],
        }
    }

    /// The amount to reckon with; none where nothing was given and nothing is needed.
    pub(super) fn taken(&'static self, amount: Option<f64>) -> Result<Option<f64>, Fault> {
        let Some(amount) = amount.or(self.usual()) else {
            return if self.needed == Needed::Never { Ok(None) } else { Err(Fault::Missing(self)) };
        };
        if !amount.is_finite() {
            return Err(Fault::NotANumber(self));
        }
        match self.kind {
            InputKind::WholeCount if amount.fract() != 0.0 => return Err(Fault::NotWhole(self)),
            InputKind::YesNo if amount != 0.0 && amount != 1.0 => return Err(Fault::NotYesOrNo(self)),
            InputKind::Choice(choices) if amount.fract() != 0.0 || !(0.0..choices.len() as f64).contains(&amount) => {
                return Err(Fault::NotAChoice(self));
            }
            _ => {}
        }
        // A limit typed in the other system's unit must not fail by the last bit of its conversion.
        let slack = 1e-9 * self.most.abs().max(self.least.abs());
        if amount < self.least - slack || amount > self.most + slack { Err(Fault::OutOfRange(self)) } else { Ok(Some(amount)) }
    }

    /// "Type a number between 10 and 300 mm", in the unit of that habit, rounded inwards so that both ends are taken.
    fn asks_within(&self, system: System, decimal: Decimal) -> String {
        let unit = self.unit_in(system);
        let end = |amount: f64, inwards: fn(f64) -> f64| {
            let amount = self.unit.convert(amount, unit).unwrap_or(amount);
            // Three digits say enough; a whole number stays as it is.
            let step = if amount.abs() < 10.0 { 100.0 } else { 1.0 };
            let near = (amount * step).round() / step;
            let shown = if (near - amount).abs() <= 1e-9 * amount.abs() { near } else { inwards(amount * step) / step };
            written_exactly(shown, 2, decimal)
        };
        let (least, most) = (end(self.least, f64::ceil), end(self.most, f64::floor));
        let most = if unit.symbol().is_empty() { most } else { format!("{most} {}", unit.symbol()) };
        say!("{input}: type a number between {least} and {most}.", input = self.name(), least, most)
    }
}

/// How the inputs of an instrument are written down: three units are the unit of the amount, the one offered in metric, the one offered
/// in imperial; two limits are the least and the most amount taken.
impl Input {
    /// Read off a rule, a scale or a label; must be given.
    pub(super) const fn measured(
        key: &'static str,
        name: &'static str,
        ask: &'static str,
        units: [Unit; 3],
        limits: [f64; 2],
    ) -> Input {
        let ([unit, metric, imperial], [least, most]) = (units, limits);
        Input { key, name, ask, kind: InputKind::Measured, unit, metric, imperial, least, most, needed: Needed::Always }
    }

    /// Things counted; must be given.
    pub(super) const fn count(key: &'static str, name: &'static str, ask: &'static str, limits: [f64; 2]) -> Input {
        let input = Input::measured(key, name, ask, [Unit::Count; 3], limits);
        Input { kind: InputKind::WholeCount, ..input }
    }

    /// Yes or no; no where nothing is said.
    pub(super) const fn yes_no(key: &'static str, name: &'static str, ask: &'static str) -> Input {
        let input = Input::measured(key, name, ask, [Unit::Count; 3], [0.0, 1.0]);
        Input { kind: InputKind::YesNo, needed: Needed::Usually(0.0), ..input }
    }

    /// One of a list; must be chosen.
    pub(super) const fn choice(key: &'static str, name: &'static str, ask: &'static str, choices: &'static [Choice]) -> Input {
        let last = choices.len().saturating_sub(1) as f64;
        let input = Input::measured(key, name, ask, [Unit::Count; 3], [0.0, last]);
        Input { kind: InputKind::Choice(choices), ..input }
    }

    /// An amount of this input with its standard uncertainty, both in [`unit`](Self::unit); unknown where the two cannot be taken.
    pub(super) fn at<D: Dimension>(&self, amount: f64, uncertainty: f64) -> Estimate<D> {
        Estimate::measured_in(self.key, amount, uncertainty, self.unit).unwrap_or_else(|_| Estimate::unknown())
    }

    /// An amount of this input taken as it is, in [`unit`](Self::unit).
    pub(super) fn exactly<D: Dimension>(&self, amount: f64) -> Estimate<D> {
        Estimate::exact_in(amount, self.unit).unwrap_or_else(|_| Estimate::unknown())
    }

    /// The same, with an amount that stands where nothing is given.
    pub(super) const fn usually(self, amount: f64) -> Input {
        Input { needed: Needed::Usually(amount), ..self }
    }

    /// The same, and the instrument does without where nothing is given.
    pub(super) const fn never_needed(self) -> Input {
        Input { needed: Needed::Never, ..self }
    }
}

impl Choice {
    /// One of a list.
    pub(super) const fn new(key: &'static str, name: &'static str, line: &'static str) -> Choice {
        Choice { key, name, line, is_offered: true }
    }

    /// One of a list that readings kept earlier may hold, and that nobody is offered any more.
    pub(super) const fn retired(key: &'static str, name: &'static str, line: &'static str) -> Choice {
        Choice { key, name, line, is_offered: false }
    }
}

impl Outcome {
    /// A bare outcome, whose spread comes from one input.
    pub(super) fn plain(value: f64, uncertainty: f64, input: &'static str) -> Outcome {
        Outcome { value, uncertainty, budget: vec![(input.into(), 1.0)], also: Vec::new(), says: Vec::new() }
    }

    /// An estimate said in the instrument's unit; none when it is unknown or measures something else.
    pub(super) fn of<D: Dimension>(estimate: &Estimate<D>, unit: Unit) -> Option<Outcome> {
        let (value, uncertainty) = estimate.in_unit(unit)?;
        let budget = estimate.budget().into_iter().map(|part| (part.name, part.share)).collect();
        Some(Outcome { value, uncertainty, budget, also: Vec::new(), says: Vec::new() })
    }

    /// With a further result; without it where the estimate is unknown or measures something else.
    pub(super) fn with<D: Dimension>(
        mut self,
        key: &'static str,
        name: &'static str,
        estimate: &Estimate<D>,
        unit: Unit,
    ) -> Outcome {
        if let Some((value, uncertainty)) = estimate.in_unit(unit) {
            self.also.push(Also { key, name, value, uncertainty, unit });
        }
        self
    }

    /// With a sentence on what the readings imply, marked by `to_say!`.
    pub(super) fn saying(mut self, sentence: &'static str) -> Outcome {
        self.says.push(sentence);
        self
    }

    /// The further result of that key.
    pub fn also(&self, key: &str) -> Option<&Also> {
        self.also.iter().find(|also| also.key == key)
    }
}

impl Fault {
    /// The input that is at fault, where it is one.
    pub const fn input(&self) -> Option<&'static Input> {
        match self {
            Fault::Missing(input) | Fault::NotANumber(input) | Fault::NotWhole(input) => Some(input),
            Fault::NotYesOrNo(input) | Fault::NotAChoice(input) | Fault::NeededToo(input) => Some(input),
            Fault::OutOfRange(input) | Fault::TooFew { input, .. } => Some(input),
            Fault::WrongOrder { larger, .. } => Some(larger),
            Fault::WrongNumberOfReadings { .. } | Fault::NoNumber(_) | Fault::Implausible { .. } => None,
        }
    }

    /// What the person is told, and what to do; limits in the units they are used to.
    pub fn sentence(&self, system: System, decimal: Decimal) -> String {
        match self {
            Fault::WrongNumberOfReadings { needed, given } => {
                say!("{given} readings came in and {needed} are needed. Enter them again.", given, needed)
            }
            Fault::Missing(input) if input.kind == InputKind::YesNo => say!("{input}: choose yes or no.", input = input.name()),
            Fault::Missing(input) | Fault::NotAChoice(input) if !input.choices().is_empty() => {
                say!("{input}: choose one from the list.", input = input.name())
            }
            Fault::Missing(input) => say!("{input}: type a number.", input = input.name()),
            Fault::NotAChoice(input) => say!("{input}: choose one.", input = input.name()),
            Fault::NeededToo(input) => say!("{input}: this is needed too, with what else you gave.", input = input.name()),
            Fault::NotANumber(input) => say!("{input}: type a plain number.", input = input.name()),
            Fault::WrongOrder { smaller, larger } => say!(
                "{larger}: this must be more than “{smaller}”. Look at the two again.",
                larger = larger.name(),
                smaller = smaller.name()
            ),
            Fault::NotWhole(input) => say!("{input}: type a whole number, without a fraction.", input = input.name()),
            Fault::NotYesOrNo(input) => say!("{input}: choose yes or no.", input = input.name()),
            Fault::OutOfRange(input) => input.asks_within(system, decimal),
            Fault::TooFew { input, needed } => say!(
                "{input}: {needed} or more are needed to say anything. Count over a longer stretch.",
                input = input.name(),
                needed
            ),
            Fault::NoNumber(why) => said(why).to_owned(),
            Fault::Implausible { value, least, most, unit } => say!(
                "That makes {value} {unit}; between {least} and {most} is to be expected. Look at the readings again.",
                value = written(*value, 1, decimal),
                unit = unit.symbol(),
                least = written_exactly(*least, 1, decimal),
                most = written_exactly(*most, 1, decimal)
            ),
        }
    }
}
