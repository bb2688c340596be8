//! An export with its photographs, as one zip to save: how many there are, how large, and how far the packing is.

use std::rc::Rc;

use garment_assay::garment::Garment;
use garment_assay::notebook::photographs_of;
use garment_assay::trade::Day;
use yew::prelude::*;

use crate::app::browser::photographs::{self, Packing};
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
    pub export: Callback<(), String>,
    /// Today.
    pub made: Day,
    /// Called when the file was handed out.
    pub done: Callback<()>,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// What the photographs here come to; those that are elsewhere are said.
fn weight(count: usize, here: usize, bytes: f64) -> String {
    if here == 0 {
        return format!("{}, not on this device.", words::photographs(count));
    }
    let mut said = format!("{}, {}", words::photographs(count), words::size(bytes));
    match count - here.min(count) {
        0 => {}
        1 => said.push_str("; 1 of them is not on this device"),
        away => said.push_str(&format!("; {away} of them are not on this device")),
    }
    format!("{said}.")
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
                    Packing::Saved(0) => format!("Handed to the browser to save: {said_name}."),
                    Packing::Saved(left_out) => format!(
                        "Handed to the browser to save: {said_name}. {} not in it: not on this device, or damaged.",
                        if left_out == 1 { "1 photograph is".to_owned() } else { format!("{left_out} photographs are") }
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
                (Some((count, all)), _) => format!("Packing photograph {} of {all}.", count + 1),
                (None, Some(weighed)) => weighed.clone(),
                (None, None) => format!("{}.", words::photographs(ids.len())),
            } }</p>
        </div>
    }
}
