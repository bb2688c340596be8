//! The gap between two prices, shared out over what differs: exact to the last cent, with what is not explained under its own name.

/// One row of a price: a product of named factors. Rows add up to the price.
#[derive(Clone, Debug, PartialEq)]
pub struct Row<'a> {
    /// What the row pays for.
    pub name: &'a str,
    /// Factors by name; a name that stands in several rows is one factor.
    pub factors: Vec<(&'a str, f64)>,
}

impl Row<'_> {
    /// What the row comes to.
    pub fn amount(&self) -> f64 {
        self.factors.iter().map(|(_, factor)| factor).product()
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
        let factors: Vec<(&'a str, f64, f64)> = row
            .factors
            .iter()
            .enumerate()
            .map(|(place, (name, factor))| {
                // A factor that stands on one side only is one on the other, unless the whole row is missing.
                let on = |side: Option<&Row<'a>>| match side {
                    Some(side) => side.factors.iter().find(|(same, _)| same == name).map_or(1.0, |(_, factor)| *factor),
                    None if place == 0 => 0.0,
                    None => *factor,
                };
                (*name, on(one), on(other))
            })
            .chain(one.iter().flat_map(|_| other.iter()).flat_map(|other| {
                let new = other.factors.iter().filter(|(name, _)| !row.factors.iter().any(|(same, _)| same == name));
                new.map(|(name, factor)| (*name, 1.0, *factor))
            }))
            .collect();
        if factors.iter().all(|(_, was, is)| was.is_finite() && is.is_finite() && *was >= 0.0 && *is >= 0.0) {
            share_row(row.name, &factors, &mut shares);
        }
    }
    shares
}

fn share_row<'a>(row: &'a str, factors: &[(&'a str, f64, f64)], shares: &mut Vec<GapShare<'a>>) {
    let (was, is) = factors.iter().fold((1.0, 1.0), |(was, is), factor| (was * factor.1, is * factor.2));
    if was > 0.0 && is > 0.0 {
        let mean = log_mean(is, was);
        shares.extend(factors.iter().map(|(factor, was, is)| GapShare { row, factor, amount: mean * (is / was).ln() }));
        return;
    }
    let mut ends: Vec<&'a str> =
        factors.iter().filter(|(_, was, is)| (*was == 0.0) != (*is == 0.0)).map(|(name, ..)| *name).collect();
    if ends.is_empty() {
        ends.extend(factors.first().map(|(name, ..)| *name));
    }
    let part = if ends.is_empty() { 0.0 } else { (is - was) / ends.len() as f64 };
    shares.extend(factors.iter().map(|(factor, ..)| GapShare {
        row,
        factor,
        amount: if ends.contains(factor) { part } else { 0.0 },
    }));
}

/// The shares of each factor over all rows, the largest first, whichever way it works.
pub fn by_factor<'a>(shares: &[GapShare<'a>]) -> Vec<(&'a str, f64)> {
    let mut sums: Vec<(&'a str, f64)> = Vec::new();
    for share in shares {
        match sums.iter_mut().find(|(name, _)| *name == share.factor) {
            Some((_, amount)) => *amount += share.amount,
            None => sums.push((share.factor, share.amount)),
        }
    }
    sums.sort_by(|one, other| other.1.abs().total_cmp(&one.1.abs()));
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
        let row = Row { name: "lining", factors: vec![("metres", 2.0), ("price", 3.0)] };
        let shares = gap(&[], std::slice::from_ref(&row));
        assert_eq!(by_factor(&shares), [("metres", 6.0), ("price", 0.0)]);
        assert_eq!(by_factor(&gap(&[row], &[]))[0], ("metres", -6.0));
    }

    #[test]
    fn what_is_no_number_takes_no_part() {
        let bad = Row { name: "a", factors: vec![("x", f64::NAN)] };
        assert!(gap(std::slice::from_ref(&bad), std::slice::from_ref(&bad)).is_empty());
    }

    #[test]
    fn a_factor_new_in_a_row_counts_from_one() {
        let before = Row { name: "cloth", factors: vec![("metres", 2.0)] };
        let after = Row { name: "cloth", factors: vec![("metres", 2.0), ("waste", 1.5)] };
        let shares = gap(&[before], &[after]);
        assert!((shares.iter().map(|share| share.amount).sum::<f64>() - 1.0).abs() < 1e-12);
    }
}
