//! A page of the second program, which is loaded when the first such page is opened: camera and pictures weigh nothing before.

use garment_assay::check::Check;
use garment_assay::garment::{Errand, Readings};
use garment_assay::measure::Instrument;
use garment_assay::quantity::System;
use garment_assay::say;
use yew::prelude::*;

use super::bar::Bar;
use crate::app::browser::document;
use crate::app::browser::room::{Room, Word};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The instrument whose page it is.
    pub instrument: &'static Instrument,
    /// Metric or imperial.
    pub system: System,
    /// Where "back" leads.
    pub back: AttrValue,
    /// The check that the reading is for; none on the bench.
    pub check: Option<&'static Check>,
    /// Readings of this instrument that are there already.
    pub kept: Option<Readings>,
    /// Called with readings that are to be used.
    pub used: Callback<Readings>,
}

/// How far the second program is.
#[derive(Clone, Copy, PartialEq)]
enum Stage {
    Loading,
    Open,
    Failed,
}

/// The room, and what is said in it before the page is there. The page begins with what is handed in at first; later readings are its own.
#[component]
pub fn SideRoom(props: &Props) -> Html {
    let instrument = props.instrument;
    let (place, before) = (use_node_ref(), use_node_ref());
    let stage = use_state_eq(|| Stage::Loading);
    let attempt = use_state_eq(|| 0_u32);
    // The garment may have gone on under another name since the page was opened.
    let used = use_mut_ref(|| props.used.clone());
    used.replace(props.used.clone());
    // Whether the keyboard was on the heading that goes when the page comes.
    let waited = use_mut_ref(|| false);
    {
        let (place, before, stage, waited) = (place.clone(), before.clone(), stage.clone(), waited.clone());
        let errand = Errand {
            instrument,
            system: props.system,
            back: props.back.to_string(),
            check: props.check.map(|check| check.name().to_owned()),
            kept: props.kept.clone(),
        };
        use_effect_with(*attempt, move |_| {
            let room = Room::of(&place);
            let listening = room.as_ref().map(|room| {
                let (opened, failed) = (stage.clone(), stage);
                [
                    room.on(Word::Opened, move |_| {
                        waited.replace(document::holds_focus(&before));
                        opened.set(Stage::Open);
                    }),
                    room.on(Word::Failed, move |_| failed.set(Stage::Failed)),
                    room.on(Word::Used, move |words| {
                        if let Some(readings) = Readings::heard(&words).filter(|readings| readings.instrument == instrument) {
                            let used = used.borrow().clone();
                            used.emit(readings);
                        }
                    }),
                ]
            });
            if let Some(room) = &room {
                room.say(Word::Wanted, &errand.spoken());
            }
            move || {
                drop(listening);
                if let Some(room) = room {
                    room.say(Word::Close, "");
                }
            }
        });
    }
    use_effect_with(*stage, move |stage| {
        if *stage == Stage::Open && waited.replace(false) {
            document::focus_heading();
        }
    });
    let again = {
        let (stage, attempt) = (stage.clone(), attempt.clone());
        Callback::from(move |_: MouseEvent| {
            // The button goes; the heading stays, until that of the page takes over from it.
            document::focus_heading();
            stage.set(Stage::Loading);
            attempt.set(*attempt + 1);
        })
    };
    html! {
        <div id="side-room" class="side-room" aria-busy={(*stage == Stage::Loading).to_string()}>
            if *stage != Stage::Open {
                <div ref={before}>
                    <Bar title={instrument.name()} under={props.check.map_or(instrument.says(), |check| check.name())} back={props.back.clone()} back_name={say!("Back")} />
                    if *stage == Stage::Failed {
                        <section class="card">
                            <p class="fault" role="alert">{ say!("The part for camera and pictures did not load. It needs the network once; after that it works without.") }</p>
                            <div class="foot-buttons"><button type="button" class="second" onclick={again}>{ say!("Try again") }</button></div>
                        </section>
                    } else {
                        <p class="side-room-wait" role="status">{ say!("Loading the part for camera and pictures.") }</p>
                    }
                </div>
            }
            <div ref={place} class="side-room"></div>
        </div>
    }
}
