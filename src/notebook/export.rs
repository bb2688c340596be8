//! All garments as one file, with people where that is wished.

use serde_json::{Value, json};

use super::checksum::checksum;
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
    written(garments, None, made, None)
}

/// The same with the settings, so that one file restores everything; with people only where they are given, for what one hands on is not
/// to hold anybody's measures unasked.
pub fn export_all(garments: &[&Garment], people: Option<&[&Person]>, settings: &Settings, made: Day) -> String {
    written(garments, people, made, serde_json::from_str(&settings.write()).ok())
}

fn bodies<R: Record>(records: &[&R]) -> Vec<Value> {
    records.iter().map(|record| Value::Object(record.body())).collect()
}

/// Covers the day and the records.
fn sum_of(made: &str, bodies: &[Value]) -> String {
    checksum(&[made, "\n", &Value::Array(bodies.to_vec()).to_string()])
}

fn written(garments: &[&Garment], people: Option<&[&Person]>, made: Day, settings: Option<Value>) -> String {
    let bodies_of_garments = bodies(garments);
    let made = made.to_string();
    let mut file = json!({
        "kind": KIND,
        "form": FORM,
        "made": made,
        "count": bodies_of_garments.len(),
        "sum": sum_of(&made, &bodies_of_garments),
        "garments": bodies_of_garments,
    });
    // Fields of their own, so that a version that knew no people reads the garments all the same.
    if let Some(people) = people.map(bodies) {
        file["people_sum"] = sum_of(&made, &people).into();
        file["people"] = people.into();
    }
    if let Some(settings) = settings {
        file["settings"] = settings;
    }
    format!("{file:#}\n")
}
