//! The gap between two prices, shared out over what differs: exact to the last cent, with what is not explained under its own name.

/// One factor of a row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor<'a> {
    /// Its name; one that stands in several rows is one factor.
    pub name: &'a str,
    /// How much it is, nothing or more.
    pub amount: f64,
    /// Standard deviation of its logarithm; 0 where it is known.
    pub spread: f64,
}

impl<'a> Factor<'a> {
    /// A factor that is known.
    pub const fn known(name: &'a str, amount: f64) -> Factor<'a> {
        Factor { name, amount, spread: 0.0 }
    }
}

/// One row of a price: a product of factors. Rows add up to the price.
#[derive(Clone, Debug, PartialEq)]
pub struct Row<'a> {
    /// What the row pays for.
    pub name: &'a str,
    /// Its factors.
    pub factors: Vec<Factor<'a>>,
}

impl Row<'_> {
    /// What the row comes to.
    pub fn amount(&self) -> f64 {
        self.factors.iter().map(|factor| factor.amount).product()
    }
}

/// How much of a gap one factor makes in one row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GapShare<'a> {
    /// The row.
    pub row: &'a str,
    /// The factor.
    pub factor: &'a str,
    /// Its share of `after` less `before`, in the unit of the rows; negative where it narrows the gap.
    pub amount: f64,
    /// Standard deviation of the share, the factor being found apart on either side: a share below it tells nothing.
    pub spread: f64,
}

/// How much of a gap one factor makes over all rows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FactorShare<'a> {
    /// The factor.
    pub factor: &'a str,
    /// Its share of `after` less `before`.
    pub amount: f64,
    /// Standard deviation of the share.
    pub spread: f64,
}

impl FactorShare<'_> {
    /// Whether the share stands out of its own spread.
    pub fn tells(&self) -> bool {
        self.amount.abs() > self.spread
    }
}

/// A factor on both sides.
struct Pair<'a> {
    name: &'a str,
    was: f64,
    is: f64,
    spread: f64,
}

/// The logarithmic mean of two amounts; 0 where one of them is nothing.
///
/// # Formula
/// `(a - b) / ln(a / b)`; for amounts nearly alike its series, `b (1 + d/2 - d^2/12)` with `d = (a - b) / b`.
pub fn log_mean(a: f64, b: f64) -> f64 {
    if a == b {
        return a;
    }
    if !(a > 0.0 && b > 0.0) {
        return 0.0;
    }
    let d = (a - b) / b;
    if d.abs() > 1e-5 { (a - b) / (a / b).ln() } else { b * (1.0 + d / 2.0 - d * d / 12.0 + d * d * d / 24.0) }
}

/// Shares out the gap between two prices.
///
/// # Formula
/// Additive log-mean Divisia index, first form: in each row `L(after, before) ln(x_after / x_before)` for factor `x`. The shares add up to
/// the gap exactly. Where a row is nothing on one side, its whole amount goes to the factors that are nothing there, alike, and none to
/// the others; a row that stands on one side only goes to its first factor.
///
/// The spread of a share is `L sqrt(s_before^2 + s_after^2)`.
///
/// # Where it holds
/// For finite factors of nothing or more; a row with another factor takes no part, and neither does its amount.
///
/// # Source
/// Ang 2005, Energy Policy 33:867; zeros by Wood and Lenzen 2006, Energy Policy 34:1326 (both as reported). Vectors GAP-01 to GAP-07.
pub fn gap<'a>(before: &[Row<'a>], after: &[Row<'a>]) -> Vec<GapShare<'a>> {
    let mut shares = Vec::new();
    let added = after.iter().filter(|row| !before.iter().any(|other| other.name == row.name));
    for row in before.iter().chain(added) {
        let one = before.iter().find(|other| other.name == row.name);
        let other = after.iter().find(|other| other.name == row.name);
        // A factor that stands on one side only is one on the other, unless the whole row is missing: then its first is nothing.
        let on = |side: Option<&Row<'a>>, factor: &Factor<'a>, first: bool| match side {
            Some(side) => side.factors.iter().find(|same| same.name == factor.name).map_or((1.0, 0.0), |f| (f.amount, f.spread)),
            None if first => (0.0, 0.0),
            None => (factor.amount, 0.0),
        };
        let new = other.into_iter().flat_map(|other| &other.factors);
        let new = new.filter(|factor| !row.factors.iter().any(|same| same.name == factor.name));
        let pairs: Vec<Pair<'a>> = row
            .factors
            .iter()
            .chain(new)
            .enumerate()
            .map(|(place, factor)| {
                let ((was, one), (is, two)) = (on(one, factor, place == 0), on(other, factor, place == 0));
                Pair { name: factor.name, was, is, spread: one.hypot(two) }
            })
            .collect();
        if pairs.iter().all(|pair| pair.was.is_finite() && pair.is.is_finite() && pair.was >= 0.0 && pair.is >= 0.0) {
            share_row(row.name, &pairs, &mut shares);
        }
    }
    shares
}

fn share_row<'a>(row: &'a str, pairs: &[Pair<'a>], shares: &mut Vec<GapShare<'a>>) {
    let (was, is) = pairs.iter().fold((1.0, 1.0), |(was, is), pair| (was * pair.was, is * pair.is));
    if was > 0.0 && is > 0.0 {
        let mean = log_mean(is, was);
        let share = |pair: &Pair<'a>| (mean * (pair.is / pair.was).ln(), mean * pair.spread);
        shares.extend(pairs.iter().map(|pair| {
            let (amount, spread) = share(pair);
            GapShare { row, factor: pair.name, amount, spread }
        }));
        return;
    }
    let mut ends: Vec<&'a str> =
        pairs.iter().filter(|pair| (pair.was == 0.0) != (pair.is == 0.0)).map(|pair| pair.name).collect();
    if ends.is_empty() {
        ends.extend(pairs.first().map(|pair| pair.name));
    }
    let part = if ends.is_empty() { 0.0 } else { (is - was) / ends.len() as f64 };
    shares.extend(pairs.iter().map(|pair| {
        let amount = if ends.contains(&pair.name) { part } else { 0.0 };
        GapShare { row, factor: pair.name, amount, spread: 0.0 }
    }));
}

/// The shares of each factor over all rows, the largest first, whichever way it works. Spreads of one factor add up: it is off alike in
/// every row.
pub fn by_factor<'a>(shares: &[GapShare<'a>]) -> Vec<FactorShare<'a>> {
    let mut sums: Vec<FactorShare<'a>> = Vec::new();
    for share in shares {
        match sums.iter_mut().find(|sum| sum.factor == share.factor) {
            Some(sum) => {
                sum.amount += share.amount;
                sum.spread += share.spread;
            }
            None => sums.push(FactorShare { factor: share.factor, amount: share.amount, spread: share.spread }),
        }
    }
    sums.sort_by(|one, other| other.amount.abs().total_cmp(&one.amount.abs()));
    sums
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_log_mean_is_smooth_where_two_amounts_meet() {
        // Python's decimal, 40 digits: (1.000011 - 1) / ln(1.000011) and (1.000009 - 1) / ln(1.000009), either side of the change of formula.
        assert!((log_mean(1.000_011, 1.0) - 1.000_005_499_989_917).abs() < 1e-10);
        assert!((log_mean(1.000_009, 1.0) - 1.000_004_499_993_25).abs() < 1e-13);
        assert_eq!(log_mean(2.0, 2.0), 2.0);
        assert_eq!(log_mean(0.0, 2.0), 0.0);
    }

    #[test]
    fn a_row_on_one_side_only_goes_to_its_first_factor() {
        let row = Row { name: "lining", factors: vec![Factor::known("metres", 2.0), Factor::known("price", 3.0)] };
        let shares = gap(&[], std::slice::from_ref(&row));
        let named = |shares: &[GapShare<'static>]| -> Vec<_> { by_factor(shares).iter().map(|s| (s.factor, s.amount)).collect() };
        assert_eq!(named(&shares), [("metres", 6.0), ("price", 0.0)]);
        assert_eq!(named(&gap(&[row], &[]))[0], ("metres", -6.0));
    }

    #[test]
    fn what_is_no_number_takes_no_part() {
        let bad = Row { name: "a", factors: vec![Factor::known("x", f64::NAN)] };
        assert!(gap(std::slice::from_ref(&bad), std::slice::from_ref(&bad)).is_empty());
    }

    #[test]
    fn a_factor_new_in_a_row_counts_from_one() {
        let before = Row { name: "cloth", factors: vec![Factor::known("metres", 2.0)] };
        let after = Row { name: "cloth", factors: vec![Factor::known("metres", 2.0), Factor::known("waste", 1.5)] };
        let shares = gap(&[before], &[after]);
        assert!((shares.iter().map(|share| share.amount).sum::<f64>() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn one_factor_is_off_alike_in_every_row() {
        let row = |name, amount| Row { name, factors: vec![Factor { name: "minute", amount, spread: 0.3 }] };
        let shares = gap(&[row("sewing", 2.0), row("cutting", 1.0)], &[row("sewing", 2.0), row("cutting", 1.0)]);
        let sums = by_factor(&shares);
        assert!((sums[0].spread - 3.0 * 0.3 * 2.0_f64.sqrt()).abs() < 1e-12 && !sums[0].tells());
    }
}
