//! Cells of a table that a spreadsheet opens as they are meant: no figure mangled, nothing run as a formula.

use crate::quantity::Decimal;
use crate::trade::{Currency, Day};

/// How figures and columns are parted: the one a spreadsheet expects where one lives.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Form {
    /// The sign between units and tenths. With a comma, columns are parted by semicolons.
    pub decimal: Decimal,
}

impl Form {
    fn between(self) -> char {
        match self.decimal {
            Decimal::Point => ',',
            Decimal::Comma => ';',
        }
    }
}

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Cell {
    /// Nothing.
    Empty,
    /// Words of a person or of the app.
    Text(String),
    /// A whole number.
    Whole(u64),
    /// A number to so many decimals.
    Number(f64, usize),
    /// Yes or no.
    Yes(bool),
}

impl Cell {
    pub(super) fn text(text: &str) -> Cell {
        if text.is_empty() { Cell::Empty } else { Cell::Text(text.to_owned()) }
    }

    pub(super) fn day(day: Day) -> Cell {
        Cell::Text(day.to_string())
    }

    /// An amount of money in whole units, with as many decimals as its currency has.
    pub(super) fn money(minor: u64, currency: Currency) -> Cell {
        Cell::Number(currency.whole(minor), currency.decimals() as usize)
    }

    pub(super) fn or_empty<T>(value: Option<T>, cell: impl FnOnce(T) -> Cell) -> Cell {
        value.map_or(Cell::Empty, cell)
    }
}

/// Names of months as spreadsheets read dates by, in English; "Mar 27" would become a day.
const MONTHS: [&str; 12] = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/// Whether a spreadsheet could take a text for something else: a formula, a number, a date or a truth value.
///
/// # Source
/// The first characters that start a formula: common practice against formulas in tables. The rest: what spreadsheets do, from memory.
fn is_mistakable(text: &str) -> bool {
    let lower = text.trim().to_lowercase();
    let starts = |c: char| "=+-@'\t\r\n|%".contains(c) || c.is_ascii_digit() || c == '.' || c == ',' || c == '\u{ff1d}';
    let is_date = MONTHS.iter().any(|month| lower.starts_with(month)) && lower.bytes().any(|byte| byte.is_ascii_digit());
    text.starts_with(starts) || lower.starts_with(starts) || is_date || ["true", "false"].contains(&lower.as_str())
}

/// A day as this app writes it: the one text that begins with a digit and that every spreadsheet reads as what it is.
fn is_day(text: &str) -> bool {
    text.len() == 10 && Day::parse(text).is_some()
}

fn written(cell: &Cell, form: Form) -> String {
    match cell {
        Cell::Empty => String::new(),
        Cell::Whole(number) => number.to_string(),
        Cell::Number(number, _) if !number.is_finite() => String::new(),
        Cell::Number(number, decimals) => {
            let plain = format!("{number:.decimals$}");
            plain.replace('.', &form.decimal.sign().to_string())
        }
        Cell::Yes(yes) => if *yes { "yes" } else { "no" }.to_owned(),
        Cell::Text(text) => {
            // One sign for the end of a line: two would make an empty line between.
            let text = text.replace("\r\n", "\n").replace('\r', "\n").replace('\0', "");
            let marked = if is_mistakable(&text) && !is_day(&text) { format!("'{text}") } else { text };
            let must_quote = |c: char| c == '"' || c == '\n' || c == ',' || c == ';' || c == '\t';
            if marked.contains(must_quote) || marked.trim() != marked {
                format!("\"{}\"", marked.replace('"', "\"\""))
            } else {
                marked
            }
        }
    }
}

/// A whole table, its head and each row as a piece: a mark that says UTF-8, names of columns, rows; lines end as RFC 4180 has it.
pub(super) fn table<R: Iterator<Item = Vec<Cell>>>(names: &[&str], rows: R, form: Form) -> impl Iterator<Item = String> + use<R> {
    let between = form.between().to_string();
    let head = format!("\u{feff}{}\r\n", names.join(&between));
    let rows = rows.map(move |row| {
        let cells: Vec<String> = row.iter().map(|cell| written(cell, form)).collect();
        format!("{}\r\n", cells.join(&between))
    });
    [head].into_iter().chain(rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(text: &str) -> String {
        written(&Cell::text(text), Form::default())
    }

    #[test]
    fn what_could_be_taken_for_a_formula_a_number_or_a_date_is_marked() {
        for text_in in [
            "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", " =1", "0042", "1E5", "3-4", "1/2", "10.11.", "Mar 27", "mar-27", "TRUE",
            "'x",
        ] {
            assert!(text(text_in).trim_start_matches('"').starts_with('\''), "{text_in}: {}", text(text_in));
        }
        for plain in ["Indigo", "marine blue", "Mill on the hill", "Size 34", "décembre"] {
            assert_eq!(text(plain), plain);
        }
    }

    #[test]
    fn days_stay_days_and_money_has_the_decimals_of_its_currency() {
        assert_eq!(written(&Cell::day(Day::new(2027, 1, 10).expect("a day")), Form::default()), "2027-01-10");
        assert_eq!(written(&Cell::money(1_250, Currency::Eur), Form { decimal: Decimal::Comma }), "12,50");
        assert_eq!(written(&Cell::money(1_250, Currency::Jpy), Form::default()), "1250");
    }

    #[test]
    fn quotes_breaks_and_signs_between_columns_stay_inside_their_cell() {
        assert_eq!(text("a \"b\"; c,\r\nd"), "\"a \"\"b\"\"; c,\nd\"");
        assert_eq!(
            table(&["a", "b"], [vec![Cell::Empty, Cell::Yes(true)]].into_iter(), Form::default()).collect::<String>(),
            "\u{feff}a,b\r\n,yes\r\n"
        );
    }
}
