//! Taking or choosing a picture, and how to take it.

use yew::prelude::*;

use crate::app::browser::pictures::{self, Picture};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// How to take it, in short lines.
    pub how: &'static [&'static str],
    /// Further sections below, before the buttons.
    #[prop_or_default]
    pub children: Html,
    /// Called with the picture.
    pub taken: Callback<Picture>,
}

/// A camera that is always there (the phone's own), or a picture that is there already.
#[component]
pub fn Take(props: &Props) -> Html {
    let fault = use_state_eq(|| false);
    let onchange = {
        let (taken, fault) = (props.taken.clone(), fault.clone());
        Callback::from(move |event: Event| {
            let (taken, fault) = (taken.clone(), fault.clone());
            pictures::open_chosen(&event, move |picture| {
                fault.set(picture.is_none());
                if let Some(picture) = picture {
                    taken.emit(picture);
                }
            });
        })
    };
    html! {
        <>
            <section class="card">
                <h2>{ "How to take it" }</h2>
                <ol class="steps">{ for props.how.iter().map(|line| html! { <li key={*line}>{ *line }</li> }) }</ol>
                <p class="hint">{ "The picture stays in this browser’s memory while the page is open. It is not sent anywhere, and not kept." }</p>
            </section>
            if *fault {
                <p class="fault lonely" role="alert">{ "This browser finds no picture in that file. Take one with the camera, or choose a JPEG or PNG." }</p>
            }
            { props.children.clone() }
            <div class="foot">
                <label class="second file"><span>{ "Choose a picture" }</span><input type="file" accept="image/*" onchange={onchange.clone()} /></label>
                <label class="prime file"><span>{ "Take a picture" }</span><input type="file" accept="image/*" capture="environment" {onchange} /></label>
            </div>
        </>
    }
}
