//! What kind of thing a number measures, held in its type, so that a formula with a wrong power of length does not compile.
//!
//! A dimension is a product of whole powers of length, mass, time and money. Money stands beside the three physical ones because a
//! price per metre times a length is a price by the same algebra. Angles and counts are plain numbers, as in the SI Brochure (9th
//! edition, 5.4.8).
//!
//! A sum of two kinds does not compile:
//!
//! ```compile_fail,E0277
//! use garment_assay::quantity::{Estimate, Length, Mass};
//! let length: Estimate<Length> = Estimate::exact(0.1);
//! let mass: Estimate<Mass> = Estimate::exact(0.1);
//! let _ = length + mass;
//! ```
//!
//! Nor does a formula turned upside down, here stitches per length written as length per stitch:
//!
//! ```compile_fail,E0308
//! use garment_assay::quantity::{Estimate, Length, Number, PerLength};
//! let stitches: Estimate<Number> = Estimate::exact(24.0);
//! let length: Estimate<Length> = Estimate::exact(0.0762);
//! let _: Estimate<PerLength> = length / stitches;
//! ```
//!
//! The right way round does:
//!
//! ```
//! use garment_assay::quantity::{Estimate, Length, Number, PerLength};
//! let stitches: Estimate<Number> = Estimate::exact(24.0);
//! let length: Estimate<Length> = Estimate::exact(0.0762);
//! let _: Estimate<PerLength> = stitches / length;
//! ```

use std::marker::PhantomData;
use std::ops::{Add, Mul, Sub};

use typenum::{Diff, Integer, N1, N2, P1, P2, Prod, Sum, Z0};

/// Powers of length, mass, time and money. Never made as a value; it only labels an [`Estimate`](super::Estimate).
pub struct Dim<L, M, T, C>(PhantomData<(L, M, T, C)>);

/// A product of whole powers of the four base dimensions.
pub trait Dimension: 'static {
    /// Powers of length, mass, time and money, in this order.
    const POWERS: [i32; 4];
}

impl<L: Integer, M: Integer, T: Integer, C: Integer> Dimension for Dim<L, M, T, C> {
    const POWERS: [i32; 4] = [L::I32, M::I32, T::I32, C::I32];
}

/// The dimension of a product.
pub trait Times<Other>: Dimension {
    /// Powers added.
    type Product: Dimension;
}

impl<L, M, T, C, L2, M2, T2, C2> Times<Dim<L2, M2, T2, C2>> for Dim<L, M, T, C>
where
    L: Integer + Add<L2>,
    M: Integer + Add<M2>,
    T: Integer + Add<T2>,
    C: Integer + Add<C2>,
    Sum<L, L2>: Integer,
    Sum<M, M2>: Integer,
    Sum<T, T2>: Integer,
    Sum<C, C2>: Integer,
{
    type Product = Dim<Sum<L, L2>, Sum<M, M2>, Sum<T, T2>, Sum<C, C2>>;
}

/// The dimension of a quotient.
pub trait Over<Other>: Dimension {
    /// Powers subtracted.
    type Quotient: Dimension;
}

impl<L, M, T, C, L2, M2, T2, C2> Over<Dim<L2, M2, T2, C2>> for Dim<L, M, T, C>
where
    L: Integer + Sub<L2>,
    M: Integer + Sub<M2>,
    T: Integer + Sub<T2>,
    C: Integer + Sub<C2>,
    Diff<L, L2>: Integer,
    Diff<M, M2>: Integer,
    Diff<T, T2>: Integer,
    Diff<C, C2>: Integer,
{
    type Quotient = Dim<Diff<L, L2>, Diff<M, M2>, Diff<T, T2>, Diff<C, C2>>;
}

/// The dimension of a whole power.
pub trait Raised<N: Integer>: Dimension {
    /// Powers multiplied.
    type Power: Dimension;
}

impl<L, M, T, C, N> Raised<N> for Dim<L, M, T, C>
where
    N: Integer,
    L: Integer + Mul<N>,
    M: Integer + Mul<N>,
    T: Integer + Mul<N>,
    C: Integer + Mul<N>,
    Prod<L, N>: Integer,
    Prod<M, N>: Integer,
    Prod<T, N>: Integer,
    Prod<C, N>: Integer,
{
    type Power = Dim<Prod<L, N>, Prod<M, N>, Prod<T, N>, Prod<C, N>>;
}

/// A plain number: a count, a ratio, an angle in radians.
pub type Number = Dim<Z0, Z0, Z0, Z0>;
/// A length, in metres.
pub type Length = Dim<P1, Z0, Z0, Z0>;
/// An area, in square metres.
pub type Area = Dim<P2, Z0, Z0, Z0>;
/// So many per length, in 1/m.
pub type PerLength = Dim<N1, Z0, Z0, Z0>;
/// A mass, in kilograms.
pub type Mass = Dim<Z0, P1, Z0, Z0>;
/// What a square metre of cloth weighs, in kg/m².
pub type MassPerArea = Dim<N2, P1, Z0, Z0>;
/// A duration, in seconds.
pub type Time = Dim<Z0, Z0, P1, Z0>;
/// A sum of money, in whole units of one currency. Which currency is not in the type.
pub type Money = Dim<Z0, Z0, Z0, P1>;
/// A wage or a cost of running, in money per second.
pub type MoneyPerTime = Dim<Z0, Z0, N1, P1>;
