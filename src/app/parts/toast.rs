//! A word about what just happened, with a way back.

use std::rc::Rc;

use garment_assay::say;
use yew::prelude::*;

use crate::app::model::{Message, Notice};

use super::icon::{Icon, Shape};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The word.
    pub notice: Rc<Notice>,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// A word at the foot of the screen. It stays until it is read away: a person in an aisle does not look at the phone all the time.
#[component]
pub fn Toast(props: &Props) -> Html {
    let undo = props.send.reform(|_: MouseEvent| Message::UndoNotice);
    let read = props.send.reform(|_: MouseEvent| Message::NoticeRead);
    html! {
        <div class="toast">
            <p role="status">{ &props.notice.text }</p>
            if props.notice.can_undo() {
                <button type="button" class="toast-undo" onclick={undo}>{ say!("Undo") }</button>
            }
            <button type="button" class="icon-button" onclick={read} aria-label={say!("Close this message")}><Icon shape={Shape::Close} /></button>
        </div>
    }
}
