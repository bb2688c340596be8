//! All garments as one file, with people where that is wished; written in pieces, so that a large rack need not be written in one go, nor
//! lie in memory as anything but its text.

use std::borrow::Borrow;
use std::vec::IntoIter;

use serde_json::Value;

use super::checksum::Checksum;
use super::page::FORM;
use super::record::Record;
use super::settings::Settings;
use crate::fit::Person;
use crate::garment::Garment;
use crate::trade::Day;

/// Marks a file as ours.
pub(super) const KIND: &str = "garment-assay-rack";

/// Writes garments as one file of JSON text, with their number and a checksum.
pub fn export(garments: &[&Garment], made: Day) -> String {
    export_pieces(garments.iter().copied(), None::<Vec<&Person>>, None, made).collect()
}

/// The same with the settings, so that one file restores everything; with people only where they are given, for what one hands on is not
/// to hold anybody's measures unasked.
pub fn export_all(garments: &[&Garment], people: Option<&[&Person]>, settings: &Settings, made: Day) -> String {
    export_pieces(garments.iter().copied(), people.map(<[&Person]>::to_vec), Some(settings), made).collect()
}

/// Records that are written one after the other as a list in JSON, and the checksum that covers the day and them.
struct List<T> {
    left: IntoIter<T>,
    is_first: bool,
    sum: Checksum,
}

impl<T> List<T> {
    fn of(records: impl IntoIterator<Item = T>, made: &str) -> List<T> {
        let left = records.into_iter().collect::<Vec<T>>().into_iter();
        let mut sum = Checksum::default();
        for part in [made, "\n", "["] {
            sum.add(part);
        }
        List { left, is_first: true, sum }
    }

    /// The next record, and what stands before it.
    fn next<R: Record>(&mut self) -> Option<String>
    where
        T: Borrow<R>,
    {
        let body = Value::Object(self.left.next()?.borrow().body());
        let between = if std::mem::take(&mut self.is_first) { "" } else { "," };
        // The sum covers the records as they are without any space between their signs.
        self.sum.add(between);
        self.sum.add(&body.to_string());
        Some(format!("{between}\n    {}", indented(&body, "    ")))
    }

    /// What closes the list, and its checksum.
    fn end(&mut self) -> (&'static str, String) {
        self.sum.add("]");
        (if self.is_first { "]" } else { "\n  ]" }, std::mem::take(&mut self.sum).end())
    }
}

/// A value that stands so deep in the file. An end of a line within words is written as `\n`, so each that is found is one between signs.
fn indented(value: &Value, by: &str) -> String {
    format!("{value:#}").replace('\n', &format!("\n{by}"))
}

/// What is written next.
enum Next {
    Head,
    Garments,
    People,
    Foot,
    Nothing,
}

/// The pieces of an export, in order; together they are the file. No piece holds more than one garment or one person. The fields stand in the order
/// of their names, as in every version before.
pub struct ExportPieces<G, P> {
    made: String,
    settings: Option<Value>,
    garments: List<G>,
    sum: String,
    people: Option<List<P>>,
    next: Next,
}

/// Garments as one file of JSON text, with their number and a checksum, and with the settings, so that one file restores everything; with people
/// only where they are given, for what one hands on is not to hold anybody's measures unasked.
pub fn export_pieces<G: Borrow<Garment>, P: Borrow<Person>>(
    garments: impl IntoIterator<Item = G>,
    people: Option<Vec<P>>,
    settings: Option<&Settings>,
    made: Day,
) -> ExportPieces<G, P> {
    let made = made.to_string();
    ExportPieces {
        settings: settings.and_then(|settings| serde_json::from_str(&settings.write()).ok()),
        garments: List::of(garments, &made),
        sum: String::new(),
        // Fields of their own, so that a version that knew no people reads the garments all the same.
        people: people.map(|people| List::of(people, &made)),
        made,
        next: Next::Head,
    }
}

impl<G: Borrow<Garment>, P: Borrow<Person>> Iterator for ExportPieces<G, P> {
    type Item = String;

    fn next(&mut self) -> Option<String> {
        match self.next {
            Next::Head => {
                self.next = Next::Garments;
                let count = self.garments.left.len();
                Some(format!("{{\n  \"count\": {count},\n  \"form\": {FORM},\n  \"garments\": ["))
            }
            Next::Garments => Some(self.garments.next::<Garment>().unwrap_or_else(|| {
                let (close, sum) = self.garments.end();
                self.sum = sum;
                let (made, people) = (&self.made, if self.people.is_some() { ",\n  \"people\": [" } else { "" });
                self.next = if self.people.is_some() { Next::People } else { Next::Foot };
                format!("{close},\n  \"kind\": \"{KIND}\",\n  \"made\": \"{made}\"{people}")
            })),
            Next::People => {
                let people = self.people.as_mut()?;
                Some(people.next::<Person>().unwrap_or_else(|| {
                    self.next = Next::Foot;
                    let (close, sum) = people.end();
                    format!("{close},\n  \"people_sum\": \"{sum}\"")
                }))
            }
            Next::Foot => {
                self.next = Next::Nothing;
                let settings = self.settings.take().map(|settings| format!(",\n  \"settings\": {}", indented(&settings, "  ")));
                Some(format!("{},\n  \"sum\": \"{}\"\n}}\n", settings.unwrap_or_default(), self.sum))
            }
            Next::Nothing => None,
        }
    }
}
