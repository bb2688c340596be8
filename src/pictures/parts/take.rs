//! Taking or choosing a picture, and how to take it.

use garment_assay::language::said;
use garment_assay::say;
use yew::prelude::*;

use super::camera::Viewfinder;
use crate::browser::camera::{self, Taken};
use crate::browser::pictures::{self, Picture};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// How to take it, in short lines that are to be said.
    pub how: &'static [&'static str],
    /// What is said while the camera is aimed.
    pub aim: &'static str,
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
    let aiming = use_state_eq(|| false);
    let on_taken = {
        let (taken, fault, aiming) = (props.taken.clone(), fault.clone(), aiming.clone());
        Callback::from(move |blob: Taken| {
            let (taken, fault, aiming) = (taken.clone(), fault.clone(), aiming.clone());
            pictures::open(blob.blob(), move |picture| {
                aiming.set(false);
                fault.set(picture.is_none());
                if let Some(picture) = picture {
                    taken.emit(picture);
                }
            });
        })
    };
    let aim = |now: bool| {
        let aiming = aiming.clone();
        move || aiming.set(now)
    };
    if *aiming {
        let close = aim(false);
        return html! {
            <Viewfinder aim={props.aim} on_taken={on_taken.clone()} on_file_instead={on_taken} on_close={Callback::from(move |()| close())} />
        };
    }
    let start = aim(true);
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
                <h2>{ say!("How to take it") }</h2>
                <ol class="steps">{ for props.how.iter().map(|line| html! { <li key={*line}>{ said(line) }</li> }) }</ol>
                <p class="hint">{ say!("The picture stays in this browser’s memory while the page is open. It is not sent anywhere, and not kept.") }</p>
                if camera::is_lent() {
                    <div class="foot-buttons">
                        <button type="button" class="second" onclick={Callback::from(move |_: MouseEvent| start())}>{ say!("Use the camera here") }</button>
                    </div>
                }
            </section>
            if *fault {
                <p class="fault lonely" role="alert">{ say!("This browser finds no picture in that file. Take one with the camera, or choose a JPEG or PNG.") }</p>
            }
            { props.children.clone() }
            <div class="foot">
                <label class="second file"><span>{ say!("Choose a picture") }</span><input type="file" accept="image/*" onchange={onchange.clone()} /></label>
                <label class="prime file"><span>{ say!("Take a picture") }</span><input type="file" accept="image/*" capture="environment" {onchange} /></label>
            </div>
        </>
    }
}
