//! A value that knows how far off it may be, and which input that comes from.

use std::borrow::Cow;
use std::fmt;
use std::iter::Sum;
use std::marker::PhantomData;
use std::ops::{Add, Div, Mul, Neg, Sub};

use typenum::Integer;

use super::Unit;
use super::dimension::{Dimension, Number, Over, Raised, Times};

/// What an input is called. Two inputs of one name are one input: what moves the one moves the other.
pub type Name = Cow<'static, str>;

/// A value in SI base units (money in whole units of its currency) with its standard uncertainty, kept apart by input.
///
/// # Formula
/// For `y = f(x1, x2, ...)` the estimate keeps `f` at the inputs' values, and for each input the signed term `c_i * u(x_i)` where
/// `c_i` is the partial derivative of `f` by `x_i`. The standard uncertainty is `u(y) = sqrt(sum of (c_i * u(x_i))^2)`.
///
/// Signs and names are kept, so an input that enters a formula twice is not counted as two: `a - a` is exactly 0 with no spread.
///
/// # Where it holds
/// First order: good while a formula is nearly straight over the spread of its inputs, which for a quotient means relative spreads
/// below about 20 % (judgement). Inputs of different names are taken to be independent.
///
/// # When there is no number
/// A division by zero, a logarithm of a negative number or an overflow gives the *unknown* estimate: [`value`](Self::value) is NaN,
/// [`uncertainty`](Self::uncertainty) infinite, the budget empty. Whatever is computed with it is unknown too. Nothing panics.
///
/// # Source
/// JCGM 100:2008 (GUM), 5.1.2, equation (10).
///
/// # Example
/// ```
/// use garment_assay::quantity::{Estimate, Length, Number, Unit};
/// let stitches = Estimate::<Number>::measured("count", 24.0, 1.0 / 6.0_f64.sqrt()).unwrap();
/// let length = Estimate::<Length>::measured_in("ruler", 76.2, 0.5, Unit::Millimetre).unwrap();
/// let (value, spread) = (stitches / length).in_unit(Unit::PerInch).unwrap();
/// assert!((value - 8.0).abs() < 1e-12 && (spread - 0.146).abs() < 0.001);
/// ```
pub struct Estimate<D: Dimension> {
    value: f64,
    /// Sorted by name, finite, none zero; empty when the value is unknown.
    terms: Vec<(Name, f64)>,
    dimension: PhantomData<fn() -> D>,
}

/// Why an input cannot be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EstimateFault {
    /// The value is infinite or not a number.
    ValueNotFinite,
    /// The uncertainty is infinite or not a number.
    UncertaintyNotFinite,
    /// The uncertainty is below zero.
    UncertaintyNegative,
    /// The unit measures another kind of thing.
    WrongUnit,
}

/// One input's part in a spread.
#[derive(Clone, Debug, PartialEq)]
pub struct Share {
    /// The input.
    pub name: Name,
    /// Its part of the variance, 0 to 1; the shares of a budget add up to 1.
    pub share: f64,
}

/// Standard uncertainty of a value that lies anywhere within `half_width` either way, all places alike.
///
/// # Formula
/// `u = half_width / sqrt(3)`
///
/// # Source
/// JCGM 100:2008 (GUM), 4.3.7, equation (7).
pub fn rectangular(half_width: f64) -> f64 {
    half_width.abs() / 3.0_f64.sqrt()
}

/// Standard uncertainty of a value that lies within `half_width` either way, the middle likeliest; so does the sum of two equal
/// rectangular errors.
///
/// # Formula
/// `u = half_width / sqrt(6)`
///
/// # Source
/// JCGM 100:2008 (GUM), 4.3.9, equation (9b).
pub fn triangular(half_width: f64) -> f64 {
    half_width.abs() / 6.0_f64.sqrt()
}

impl<D: Dimension> Estimate<D> {
    /// A value without spread, in SI base units: a definition, a price as printed. Infinite or not a number gives the unknown.
    pub fn exact(value: f64) -> Self {
        if value.is_finite() { Estimate { value, terms: Vec::new(), dimension: PhantomData } } else { Self::unknown() }
    }

    /// A value without spread, in `unit`.
    ///
    /// # Errors
    /// [`EstimateFault::WrongUnit`] when `unit` measures another kind of thing.
    pub fn exact_in(value: f64, unit: Unit) -> Result<Self, EstimateFault> {
        if unit.powers() != D::POWERS {
            return Err(EstimateFault::WrongUnit);
        }
        Ok(Self::exact(value * unit.factor()))
    }

    /// An input: its name, its value and its standard uncertainty (1 sigma), both in SI base units.
    ///
    /// Give one name to one input only: two inputs of the same name count as the same one.
    ///
    /// # Errors
    /// When the value or the uncertainty is not finite, or the uncertainty is negative.
    pub fn measured(name: impl Into<Name>, value: f64, uncertainty: f64) -> Result<Self, EstimateFault> {
        if !value.is_finite() {
            return Err(EstimateFault::ValueNotFinite);
        }
        if !uncertainty.is_finite() {
            return Err(EstimateFault::UncertaintyNotFinite);
        }
        if uncertainty < 0.0 {
            return Err(EstimateFault::UncertaintyNegative);
        }
        let terms = if uncertainty == 0.0 { Vec::new() } else { vec![(name.into(), uncertainty)] };
        Ok(Estimate { value, terms, dimension: PhantomData })
    }

    /// An input with its value and standard uncertainty (1 sigma) in `unit`.
    ///
    /// # Errors
    /// As [`measured`](Self::measured), and when `unit` measures another kind of thing.
    pub fn measured_in(name: impl Into<Name>, value: f64, uncertainty: f64, unit: Unit) -> Result<Self, EstimateFault> {
        if unit.powers() != D::POWERS {
            return Err(EstimateFault::WrongUnit);
        }
        Self::measured(name, value * unit.factor(), uncertainty * unit.factor())
    }

    /// The estimate that says nothing.
    pub fn unknown() -> Self {
        Estimate { value: f64::NAN, terms: Vec::new(), dimension: PhantomData }
    }

    /// Whether there is a number at all.
    pub fn is_known(&self) -> bool {
        self.value.is_finite()
    }

    /// Best value in SI base units; NaN when unknown.
    pub fn value(&self) -> f64 {
        self.value
    }

    /// Standard uncertainty (1 sigma) in SI base units; infinite when unknown.
    pub fn uncertainty(&self) -> f64 {
        if !self.is_known() {
            return f64::INFINITY;
        }
        // Scaled by the largest, so that squares neither overflow nor vanish.
        let largest = self.terms.iter().fold(0.0_f64, |most, (_, term)| most.max(term.abs()));
        if largest == 0.0 {
            return 0.0;
        }
        largest * self.terms.iter().map(|(_, term)| (term / largest) * (term / largest)).sum::<f64>().sqrt()
    }

    /// Uncertainty over the size of the value; none when the value is zero or unknown.
    pub fn relative(&self) -> Option<f64> {
        (self.is_known() && self.value != 0.0).then(|| self.uncertainty() / self.value.abs()).filter(|share| share.is_finite())
    }

    /// Each input's part of the variance, biggest first, together 1. Empty when there is no spread, or nothing is known.
    pub fn budget(&self) -> Vec<Share> {
        let largest = self.terms.iter().fold(0.0_f64, |most, (_, term)| most.max(term.abs()));
        let total: f64 = self.terms.iter().map(|(_, term)| (term / largest) * (term / largest)).sum();
        let mut shares: Vec<Share> = self
            .terms
            .iter()
            .map(|(name, term)| Share { name: name.clone(), share: (term / largest) * (term / largest) / total })
            .collect();
        shares.sort_by(|one, other| other.share.total_cmp(&one.share));
        shares
    }

    /// The signed terms, value change per one standard uncertainty of each input, by name.
    pub fn terms(&self) -> impl Iterator<Item = (&str, f64)> {
        self.terms.iter().map(|(name, term)| (name.as_ref(), *term))
    }

    /// Value and standard uncertainty in `unit`; none when `unit` measures another kind of thing, or nothing is known.
    pub fn in_unit(&self, unit: Unit) -> Option<(f64, f64)> {
        let (value, uncertainty) = (self.value / unit.factor(), self.uncertainty() / unit.factor());
        (unit.powers() == D::POWERS && value.is_finite() && uncertainty.is_finite()).then_some((value, uncertainty))
    }

    /// The estimate to the whole power `N` (a `typenum` integer).
    pub fn powi<N: Integer>(&self) -> Estimate<D::Power>
    where
        D: Raised<N>,
    {
        // The zeroth power is 1 whatever the value; the slope below would be 0 times infinity at zero.
        if N::I32 == 0 && self.is_known() {
            return Estimate::exact(1.0);
        }
        self.mapped(self.value.powi(N::I32), f64::from(N::I32) * self.value.powi(N::I32.saturating_sub(1)))
    }

    /// One value from one, by its slope.
    fn mapped<R: Dimension>(&self, value: f64, slope: f64) -> Estimate<R> {
        // Some functions give a number for NaN: NaN to the power 0 is 1 in IEEE 754.
        if self.is_known() { combined(value, &self.terms, slope, &[], 0.0) } else { Estimate::unknown() }
    }
}

impl Estimate<Number> {
    /// Natural logarithm; unknown at zero and below.
    pub fn ln(&self) -> Self {
        self.mapped(self.value.ln(), 1.0 / self.value)
    }

    /// e to this power.
    pub fn exp(&self) -> Self {
        let value = self.value.exp();
        self.mapped(value, value)
    }

    /// This to any fixed power; unknown where the power or its slope has no value.
    pub fn powf(&self, power: f64) -> Self {
        if power == 0.0 && self.is_known() {
            return Self::exact(1.0);
        }
        if !power.is_finite() {
            return Self::unknown();
        }
        self.mapped(self.value.powf(power), power * self.value.powf(power - 1.0))
    }
}

/// The estimate of that value whose terms are those of `a` times `slope_a` and of `b` times `slope_b`, input by input.
fn combined<R: Dimension>(value: f64, a: &[(Name, f64)], slope_a: f64, b: &[(Name, f64)], slope_b: f64) -> Estimate<R> {
    if !value.is_finite() {
        return Estimate::unknown();
    }
    let mut terms = Vec::with_capacity(a.len() + b.len());
    let (mut a, mut b) = (a.iter().peekable(), b.iter().peekable());
    loop {
        // Which comes next by name: the first list, the second, or both at once.
        let order = match (a.peek(), b.peek()) {
            (Some((name, _)), Some((other, _))) => name.cmp(other),
            (Some(_), None) => std::cmp::Ordering::Less,
            (None, Some(_)) => std::cmp::Ordering::Greater,
            (None, None) => break,
        };
        let one = if order.is_le() { a.next() } else { None };
        let other = if order.is_ge() { b.next() } else { None };
        let term = one.map_or(0.0, |(_, term)| term * slope_a) + other.map_or(0.0, |(_, term)| term * slope_b);
        if !term.is_finite() {
            return Estimate::unknown();
        }
        if let (true, Some((name, _))) = (term != 0.0, one.or(other)) {
            terms.push((name.clone(), term));
        }
    }
    Estimate { value, terms, dimension: PhantomData }
}

impl<D: Dimension> Clone for Estimate<D> {
    fn clone(&self) -> Self {
        Estimate { value: self.value, terms: self.terms.clone(), dimension: PhantomData }
    }
}

impl<D: Dimension> fmt::Debug for Estimate<D> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Estimate").field("value", &self.value).field("terms", &self.terms).field("powers", &D::POWERS).finish()
    }
}

/// Same value and same terms. The unknown equals nothing, as NaN does.
impl<D: Dimension> PartialEq for Estimate<D> {
    fn eq(&self, other: &Self) -> bool {
        self.value == other.value && self.terms == other.terms
    }
}

impl<D: Dimension> Neg for Estimate<D> {
    type Output = Estimate<D>;
    fn neg(self) -> Estimate<D> {
        self.mapped(-self.value, -1.0)
    }
}

impl<D: Dimension> Mul<f64> for Estimate<D> {
    type Output = Estimate<D>;
    fn mul(self, factor: f64) -> Estimate<D> {
        self.mapped(self.value * factor, factor)
    }
}

impl<D: Dimension> Div<f64> for Estimate<D> {
    type Output = Estimate<D>;
    fn div(self, divisor: f64) -> Estimate<D> {
        self.mapped(self.value / divisor, 1.0 / divisor)
    }
}

impl<D: Dimension> Mul<f64> for &Estimate<D> {
    type Output = Estimate<D>;
    fn mul(self, factor: f64) -> Estimate<D> {
        self.mapped(self.value * factor, factor)
    }
}

impl<D: Dimension> Div<f64> for &Estimate<D> {
    type Output = Estimate<D>;
    fn div(self, divisor: f64) -> Estimate<D> {
        self.mapped(self.value / divisor, 1.0 / divisor)
    }
}

impl<D: Dimension> Sum for Estimate<D> {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        parts.fold(Self::exact(0.0), |total, part| total + part)
    }
}

impl<D: Dimension> Add<&Estimate<D>> for &Estimate<D> {
    type Output = Estimate<D>;
    fn add(self, other: &Estimate<D>) -> Estimate<D> {
        combined(self.value + other.value, &self.terms, 1.0, &other.terms, 1.0)
    }
}

impl<D: Dimension> Sub<&Estimate<D>> for &Estimate<D> {
    type Output = Estimate<D>;
    fn sub(self, other: &Estimate<D>) -> Estimate<D> {
        combined(self.value - other.value, &self.terms, 1.0, &other.terms, -1.0)
    }
}

impl<D: Times<R>, R: Dimension> Mul<&Estimate<R>> for &Estimate<D> {
    type Output = Estimate<D::Product>;
    fn mul(self, other: &Estimate<R>) -> Estimate<D::Product> {
        combined(self.value * other.value, &self.terms, other.value, &other.terms, self.value)
    }
}

impl<D: Over<R>, R: Dimension> Div<&Estimate<R>> for &Estimate<D> {
    type Output = Estimate<D::Quotient>;
    fn div(self, other: &Estimate<R>) -> Estimate<D::Quotient> {
        let value = self.value / other.value;
        let slope = 1.0 / other.value;
        // Written by the quotient, not by a square, so that a / a cancels to the last bit.
        combined(value, &self.terms, slope, &other.terms, -(value * slope))
    }
}

/// The same operation for values and mixed, handed on to the one for references.
macro_rules! by_value {
    ($($operation:ident $name:ident [$($bound:tt)*] $result:ty;)*) => {$(
        impl<D: $($bound)*, R: Dimension> $operation<Estimate<R>> for Estimate<D> {
            type Output = $result;
            fn $name(self, other: Estimate<R>) -> $result {
                $operation::$name(&self, &other)
            }
        }
        impl<D: $($bound)*, R: Dimension> $operation<&Estimate<R>> for Estimate<D> {
            type Output = $result;
            fn $name(self, other: &Estimate<R>) -> $result {
                $operation::$name(&self, other)
            }
        }
        impl<D: $($bound)*, R: Dimension> $operation<Estimate<R>> for &Estimate<D> {
            type Output = $result;
            fn $name(self, other: Estimate<R>) -> $result {
                $operation::$name(self, &other)
            }
        }
    )*};
}

by_value! {
    Mul mul [Times<R>] Estimate<D::Product>;
    Div div [Over<R>] Estimate<D::Quotient>;
}

/// As above where both sides are of one dimension.
macro_rules! alike_by_value {
    ($($operation:ident $name:ident;)*) => {$(
        impl<D: Dimension> $operation for Estimate<D> {
            type Output = Estimate<D>;
            fn $name(self, other: Estimate<D>) -> Estimate<D> {
                $operation::$name(&self, &other)
            }
        }
        impl<D: Dimension> $operation<&Estimate<D>> for Estimate<D> {
            type Output = Estimate<D>;
            fn $name(self, other: &Estimate<D>) -> Estimate<D> {
                $operation::$name(&self, other)
            }
        }
        impl<D: Dimension> $operation<Estimate<D>> for &Estimate<D> {
            type Output = Estimate<D>;
            fn $name(self, other: Estimate<D>) -> Estimate<D> {
                $operation::$name(self, &other)
            }
        }
    )*};
}

alike_by_value! {
    Add add;
    Sub sub;
}
