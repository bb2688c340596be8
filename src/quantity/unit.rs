//! The units people read off rules, scales and labels, and what each is in SI.

use crate::say;

/// Whether lengths and masses are shown in metric or in imperial units.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum System {
    /// Millimetres, grams.
    #[default]
    Metric,
    /// Inches, ounces.
    Imperial,
}

/// A unit of a number that a person types or reads.
///
/// Counts, shares and angles are all plain numbers in SI, and yet nobody means "5 %" by five tacks: [`Unit::convert`] keeps these three
/// apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Unit {
    /// Things counted.
    Count,
    /// Hundredths.
    Percent,
    /// Millimetres on each 100 mm: the same number as per cent, said the way it is read off a rule.
    MillimetrePerHundred,
    /// Degrees of angle.
    Degree,
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
    /// Metres.
    Metre,
    /// Inches.
    Inch,
    /// Yards.
    Yard,
    /// Square metres.
    SquareMetre,
    /// So many in an inch.
    PerInch,
    /// So many in a centimetre.
    PerCentimetre,
    /// So many in three centimetres, as many mills write it.
    PerThreeCentimetres,
    /// Grams.
    Gram,
    /// Kilograms.
    Kilogram,
    /// Ounces of mass (avoirdupois), not fluid ounces.
    Ounce,
    /// Pounds of mass (avoirdupois).
    Pound,
    /// Grams in a square metre.
    GramPerSquareMetre,
    /// Ounces in a square yard: what denim makers call "oz".
    OuncePerSquareYard,
    /// Seconds.
    Second,
    /// Minutes.
    Minute,
    /// Hours.
    Hour,
}

// The inch, the yard and the pound are exact by definition (international yard and pound agreement, 1959): 25.4 mm, 0.9144 m,
// 0.453 592 37 kg; an ounce is a sixteenth of a pound.
const INCH: f64 = 0.0254;
const YARD: f64 = 0.9144;
const POUND: f64 = 0.453_592_37;
const OUNCE: f64 = POUND / 16.0;

/// Numbers that mean different things although all are plain in SI.
#[derive(PartialEq)]
enum Sort {
    Count,
    Share,
    Angle,
    Physical,
}

impl Unit {
    /// All units.
    pub const ALL: [Unit; 22] = [
        Unit::Count,
        Unit::Percent,
        Unit::MillimetrePerHundred,
        Unit::Degree,
        Unit::Millimetre,
        Unit::Centimetre,
        Unit::Metre,
        Unit::Inch,
        Unit::Yard,
        Unit::SquareMetre,
        Unit::PerInch,
        Unit::PerCentimetre,
        Unit::PerThreeCentimetres,
        Unit::Gram,
        Unit::Kilogram,
        Unit::Ounce,
        Unit::Pound,
        Unit::GramPerSquareMetre,
        Unit::OuncePerSquareYard,
        Unit::Second,
        Unit::Minute,
        Unit::Hour,
    ];

    /// One of this unit in SI base units (m, kg, s, rad). Source: SI Brochure, 9th edition, and the 1959 yard and pound agreement.
    pub const fn factor(self) -> f64 {
        match self {
            Unit::Count | Unit::Metre | Unit::SquareMetre | Unit::Kilogram | Unit::Second => 1.0,
            Unit::Percent | Unit::MillimetrePerHundred => 0.01,
            Unit::Degree => std::f64::consts::PI / 180.0,
            Unit::Millimetre | Unit::Gram | Unit::GramPerSquareMetre => 0.001,
            Unit::Centimetre => 0.01,
            Unit::Inch => INCH,
            Unit::Yard => YARD,
            Unit::PerInch => 1.0 / INCH,
            Unit::PerCentimetre => 100.0,
            Unit::PerThreeCentimetres => 100.0 / 3.0,
            Unit::Ounce => OUNCE,
            Unit::Pound => POUND,
            Unit::OuncePerSquareYard => OUNCE / (YARD * YARD),
            Unit::Minute => 60.0,
            Unit::Hour => 3600.0,
        }
    }

    /// Powers of length, mass, time and money, as [`Dimension::POWERS`](super::Dimension::POWERS).
    pub const fn powers(self) -> [i32; 4] {
        match self {
            Unit::Count | Unit::Percent | Unit::MillimetrePerHundred | Unit::Degree => [0, 0, 0, 0],
            Unit::Millimetre | Unit::Centimetre | Unit::Metre | Unit::Inch | Unit::Yard => [1, 0, 0, 0],
            Unit::SquareMetre => [2, 0, 0, 0],
            Unit::PerInch | Unit::PerCentimetre | Unit::PerThreeCentimetres => [-1, 0, 0, 0],
            Unit::Gram | Unit::Kilogram | Unit::Ounce | Unit::Pound => [0, 1, 0, 0],
            Unit::GramPerSquareMetre | Unit::OuncePerSquareYard => [-2, 1, 0, 0],
            Unit::Second | Unit::Minute | Unit::Hour => [0, 0, 1, 0],
        }
    }

    /// What stands behind the number; empty for counts.
    pub fn symbol(self) -> &'static str {
        match self {
            Unit::MillimetrePerHundred => say!("mm per 100 mm"),
            Unit::Inch => say!("inches" | "in"),
            Unit::Yard => say!("yards" | "yd"),
            Unit::PerInch => say!("per inch"),
            Unit::PerCentimetre => say!("per cm"),
            Unit::PerThreeCentimetres => say!("per 3 cm"),
            Unit::Ounce => say!("ounces" | "oz"),
            Unit::Pound => say!("pounds of mass" | "lb"),
            Unit::OuncePerSquareYard => say!("ounces in a square yard" | "oz/yd²"),
            Unit::Minute => say!("minutes" | "min"),
            Unit::Hour => say!("hours" | "h"),
            unit => unit.english_symbol(),
        }
    }

    /// The same in English, for what is written down and compared later, whatever is spoken then.
    pub const fn english_symbol(self) -> &'static str {
        self.words()[0]
    }

    /// The unit in full, for screen readers and for sentences; empty for counts.
    pub fn name(self) -> &'static str {
        match self {
            Unit::Count => "",
            Unit::Percent => say!("per cent"),
            Unit::MillimetrePerHundred => say!("millimetres on each 100 mm"),
            Unit::Degree => say!("degrees"),
            Unit::Millimetre => say!("millimetres"),
            Unit::Centimetre => say!("centimetres"),
            Unit::Metre => say!("metres"),
            Unit::Inch => say!("inches"),
            Unit::Yard => say!("yards"),
            Unit::SquareMetre => say!("square metres"),
            Unit::PerInch => say!("per inch"),
            Unit::PerCentimetre => say!("per centimetre"),
            Unit::PerThreeCentimetres => say!("per 3 centimetres"),
            Unit::Gram => say!("grams"),
            Unit::Kilogram => say!("kilograms"),
            Unit::Ounce => say!("ounces"),
            Unit::Pound => say!("pounds"),
            Unit::GramPerSquareMetre => say!("grams per square metre"),
            Unit::OuncePerSquareYard => say!("ounces per square yard"),
            Unit::Second => say!("seconds"),
            Unit::Minute => say!("minutes"),
            Unit::Hour => say!("hours"),
        }
    }

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Unit::Count => "count",
            Unit::Percent => "percent",
            Unit::MillimetrePerHundred => "mm-per-100mm",
            Unit::Degree => "degree",
            Unit::Millimetre => "mm",
            Unit::Centimetre => "cm",
            Unit::Metre => "m",
            Unit::Inch => "in",
            Unit::Yard => "yd",
            Unit::SquareMetre => "m2",
            Unit::PerInch => "per-in",
            Unit::PerCentimetre => "per-cm",
            Unit::PerThreeCentimetres => "per-3cm",
            Unit::Gram => "g",
            Unit::Kilogram => "kg",
            Unit::Ounce => "oz",
            Unit::Pound => "lb",
            Unit::GramPerSquareMetre => "g-per-m2",
            Unit::OuncePerSquareYard => "oz-per-yd2",
            Unit::Second => "s",
            Unit::Minute => "min",
            Unit::Hour => "h",
        }
    }

    /// The unit of that name in storage.
    pub fn from_key(key: &str) -> Option<Unit> {
        Unit::ALL.into_iter().find(|unit| unit.key() == key)
    }

    /// What people type for it in English, taken in every language: the symbol first, then other spellings in lower case, without spaces, "2" for "²".
    pub(super) const fn words(self) -> &'static [&'static str] {
        match self {
            Unit::Count => &["", "stitches", "stitch", "st", "pcs", "pieces"],
            Unit::Percent => &["%", "percent", "pct"],
            Unit::MillimetrePerHundred => &[
                "mm per 100 mm",
                "mmper100mm",
                "mm/100mm",
                "mmper10cm",
                "mm/10cm",
                "mm",
                "millimetres",
                "millimetresoneach100mm",
            ],
            Unit::Degree => &["°", "deg", "degree", "degrees"],
            Unit::Millimetre => &["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
            Unit::Centimetre => &["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
            Unit::Metre => &["m", "metre", "metres", "meter", "meters"],
            Unit::Inch => &["in", "inch", "inches", "\"", "″", "”", "''"],
            Unit::Yard => &["yd", "yds", "yard", "yards"],
            Unit::SquareMetre => &["m²", "m2", "sqm", "squaremetre", "squaremetres", "squaremeter", "squaremeters"],
            Unit::PerInch => &["per inch", "perinch", "perin", "/in", "/inch", "spi", "st/in", "stitchesperinch", "1/in"],
            Unit::PerCentimetre => {
                &["per cm", "percm", "/cm", "st/cm", "percentimetre", "percentimeter", "stitchespercm", "1/cm"]
            }
            Unit::PerThreeCentimetres => {
                &["per 3 cm", "per3cm", "/3cm", "st/3cm", "stitchesper3cm", "per3centimetres", "per3centimeters"]
            }
            Unit::Gram => &["g", "gram", "grams", "gr"],
            Unit::Kilogram => &["kg", "kilo", "kilos", "kilogram", "kilograms"],
            Unit::Ounce => &["oz", "ounce", "ounces"],
            Unit::Pound => &["lb", "lbs", "pound", "pounds"],
            Unit::GramPerSquareMetre => {
                &["g/m²", "g/m2", "gsm", "gm2", "gpersquaremetre", "gramspersquaremetre", "gramspersquaremeter"]
            }
            // On a denim label a bare "oz" means this; which is meant follows from what was asked for.
            Unit::OuncePerSquareYard => {
                &["oz/yd²", "oz/yd2", "oz/sqyd", "oz", "ounce", "ounces", "ozpersquareyard", "ouncespersquareyard", "ozyd2"]
            }
            Unit::Second => &["s", "sec", "secs", "second", "seconds"],
            Unit::Minute => &["min", "mins", "minute", "minutes"],
            Unit::Hour => &["h", "hr", "hrs", "hour", "hours"],
        }
    }

    const fn sort(self) -> Sort {
        match self {
            Unit::Count => Sort::Count,
            Unit::Percent | Unit::MillimetrePerHundred => Sort::Share,
            Unit::Degree => Sort::Angle,
            _ => Sort::Physical,
        }
    }

    /// Whether an amount in this unit can be said in the other.
    pub fn is_like(self, other: Unit) -> bool {
        self.powers() == other.powers() && self.sort() == other.sort()
    }

    /// `amount` of this unit said in `to`; none when they measure different things. The same unit gives the same number, bit for bit.
    ///
    /// ```
    /// use garment_assay::quantity::Unit;
    /// assert_eq!(Unit::Inch.convert(3.0, Unit::Millimetre).map(|mm| (mm * 10.0).round()), Some(762.0));
    /// assert_eq!(Unit::Count.convert(3.0, Unit::Percent), None);
    /// ```
    pub fn convert(self, amount: f64, to: Unit) -> Option<f64> {
        if self == to || (self.is_like(to) && self.factor() == to.factor()) {
            return Some(amount);
        }
        self.is_like(to).then(|| amount * self.factor() / to.factor())
    }

    /// The unit a person of that habit expects instead of this one; the unit itself where there is no difference.
    pub const fn in_system(self, system: System) -> Unit {
        match (system, self) {
            (System::Metric, Unit::Inch) => Unit::Centimetre,
            (System::Metric, Unit::Yard) => Unit::Metre,
            (System::Metric, Unit::PerInch) => Unit::PerCentimetre,
            (System::Metric, Unit::Ounce) => Unit::Gram,
            (System::Metric, Unit::Pound) => Unit::Kilogram,
            (System::Metric, Unit::OuncePerSquareYard) => Unit::GramPerSquareMetre,
            (System::Imperial, Unit::Millimetre | Unit::Centimetre) => Unit::Inch,
            (System::Imperial, Unit::Metre) => Unit::Yard,
            (System::Imperial, Unit::PerCentimetre | Unit::PerThreeCentimetres) => Unit::PerInch,
            (System::Imperial, Unit::Gram) => Unit::Ounce,
            (System::Imperial, Unit::Kilogram) => Unit::Pound,
            (System::Imperial, Unit::GramPerSquareMetre) => Unit::OuncePerSquareYard,
            (_, unit) => unit,
        }
    }
}
