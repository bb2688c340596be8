//! A sentence about storage that the person must know, until it is no longer true.

use garment_assay::language::one;
use garment_assay::notebook::ShelfFault;
use garment_assay::say;
use yew::prelude::*;

use super::icon::{Icon, Shape};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is wrong; none when everything is kept but room is running out.
    pub fault: Option<ShelfFault>,
    /// Whether there is anything to export.
    pub exportable: bool,
    /// How many garments have changes that are not kept.
    pub unkept: usize,
    /// How many people have changes that are not kept.
    pub people: usize,
}

/// What is not kept; whatever there is none of is left out.
fn not_kept(garments: usize, people: usize) -> String {
    match (garments, people) {
        (0, count) if one(count) => say!("Not kept: the latest changes to {count} person.", count),
        (0, count) => say!("Not kept: the latest changes to {count} people.", count),
        (count, 0) if one(count) => say!("Not kept: the latest changes to {count} garment.", count),
        (count, 0) => say!("Not kept: the latest changes to {count} garments.", count),
        (garments, people) => match (one(garments), one(people)) {
            (true, true) => say!("Not kept: the latest changes to {garments} garment and {people} person.", garments, people),
            (true, false) => say!("Not kept: the latest changes to {garments} garment and {people} people.", garments, people),
            (false, true) => say!("Not kept: the latest changes to {garments} garments and {people} person.", garments, people),
            (false, false) => say!("Not kept: the latest changes to {garments} garments and {people} people.", garments, people),
        },
    }
}

/// What is wrong with storage, and the way to save the rack all the same.
#[component]
pub fn Alert(props: &Props) -> Html {
    html! {
        <div class="alert" role="alert">
            <Icon shape={Shape::Care} />
            <p>
                { props.fault.map_or(say!("There is little room left in this browser. Everything is kept so far. Export your rack, then delete garments you no longer need.").to_owned(), |fault| fault.to_string()) }
                if props.unkept + props.people > 0 {
                    { " " }{ not_kept(props.unkept, props.people) }
                }
                if props.exportable {
                    { " " }<a href="#/settings">{ say!("Export the rack") }</a>
                }
            </p>
        </div>
    }
}
