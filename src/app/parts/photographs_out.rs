//! An export with its photographs, as one zip to save: how many there are, how large, and how far the packing is.

use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::language::one;
use garment_assay::notebook::photographs_of;
use garment_assay::say;
use garment_assay::trade::Day;
use yew::prelude::*;

use crate::app::browser::photographs::{self, Packing};
use crate::app::browser::turns::Pieces;
use crate::app::model::Message;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Those whose photographs are meant.
    pub garments: Vec<Rc<Garment>>,
    /// The words on the button.
    pub save: AttrValue,
    /// The name of the file.
    pub name: String,
    /// The export that goes with them.
    pub export: Callback<(), Pieces>,
    /// Today.
    pub made: Day,
    /// Called when the file was handed out.
    pub done: Callback<()>,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// What the photographs here come to; those that are elsewhere are said.
fn weight(count: usize, here: usize, bytes: f64) -> String {
    let photographs = words::photographs(count);
    if here == 0 {
        return say!("{photographs}, not on this device.", photographs);
    }
    let size = words::size(bytes);
    match count - here.min(count) {
        0 => format!("{photographs}, {size}."),
        count if one(count) => {
            say!("{photographs}, {size}; {count} of them is not on this device.", photographs, size, count)
        }
        count => say!("{photographs}, {size}; {count} of them are not on this device.", photographs, size, count),
    }
}

/// A button, where there are photographs; otherwise nothing.
#[component]
pub fn PhotographsOut(props: &Props) -> Html {
    let Props { garments, save, name, export, made, done, send } = props;
    let ids = use_memo(garments.clone(), |garments| photographs_of(garments.iter().map(Rc::as_ref)));
    let weighed = use_state_eq(|| None::<String>);
    let packing = use_state_eq(|| None::<(usize, usize)>);
    {
        let weighed = weighed.clone();
        use_effect_with((*ids).clone(), move |ids| {
            let count = ids.len();
            weighed.set(None);
            if count > 0 {
                photographs::weigh(ids.clone(), move |here, bytes| weighed.set(Some(weight(count, here, bytes))));
            }
        });
    }
    if ids.is_empty() {
        return Html::default();
    }
    let onclick = {
        let (name, export, ids, made) = (name.clone(), export.clone(), ids.clone(), *made);
        let (packing, done, send) = (packing.clone(), done.clone(), send.clone());
        Callback::from(move |_: MouseEvent| {
            let (packing, done, send, said_name) = (packing.clone(), done.clone(), send.clone(), name.clone());
            photographs::pack(name.clone(), export.emit(()), made, (*ids).clone(), move |told| {
                if matches!(told, Packing::Saved(_)) {
                    done.emit(());
                }
                let said = match told {
                    Packing::Packed(count, all) => return packing.set(Some((count, all))),
                    Packing::Saved(0) => say!("Handed to the browser to save: {file}.", file = said_name),
                    Packing::Saved(count) if one(count) => say!(
                        "Handed to the browser to save: {file}. {count} photograph is not in it: not on this device, or damaged.",
                        file = said_name,
                        count
                    ),
                    Packing::Saved(count) => say!(
                        "Handed to the browser to save: {file}. {count} photographs are not in it: not on this device, or damaged.",
                        file = said_name,
                        count
                    ),
                    Packing::Failed(why) => why,
                };
                packing.set(None);
                send.emit(Message::Said(said));
            });
        })
    };
    html! {
        <div class="photographs-out">
            <p><button type="button" class="second" {onclick} disabled={packing.is_some()}>{ save }</button></p>
            <p class="hint" role="status">{ match (*packing, &*weighed) {
                (Some((count, all)), _) => say!("Packing photograph {number} of {all}.", number = count + 1, all),
                (None, Some(weighed)) => weighed.clone(),
                (None, None) => format!("{}.", words::photographs(ids.len())),
            } }</p>
        </div>
    }
}
