//! A sentence about storage that the person must know, until it is no longer true.

use garment_assay::notebook::ShelfFault;
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

/// "1 garment and 2 people"; whatever there is none of is left out.
fn counted(garments: usize, people: usize) -> String {
    let count = |count: usize, one: &str, many: &str| match count {
        0 => None,
        1 => Some(format!("1 {one}")),
        count => Some(format!("{count} {many}")),
    };
    [count(garments, "garment", "garments"), count(people, "person", "people")]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" and ")
}

/// What is wrong with storage, and the way to save the rack all the same.
#[component]
pub fn Alert(props: &Props) -> Html {
    html! {
        <div class="alert" role="alert">
            <Icon shape={Shape::Care} />
            <p>
                { props.fault.map_or("There is little room left in this browser. Everything is kept so far. Export your rack, then delete garments you no longer need.".to_owned(), |fault| fault.to_string()) }
                if props.unkept + props.people > 0 {
                    { format!(" Not kept: the latest changes to {}.", counted(props.unkept, props.people)) }
                }
                if props.exportable {
                    { " " }<a href="#/settings">{ "Export the rack" }</a>
                }
            </p>
        </div>
    }
}
