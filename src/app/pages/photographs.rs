//! Photographs of a garment as evidence: taken or chosen, shrunk, kept on this device beside the notes.

use std::rc::Rc;

use garment_assay::check::Check;
use garment_assay::garment::{Act, Garment, Photograph, PhotographAct, PhotographId, Photographs};
use garment_assay::language::one;
use garment_assay::say;
use garment_assay::trade::Day;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::app::browser::document;
use crate::app::browser::photographs::{self, Taking};
use crate::app::browser::picture::NoPicture;
use crate::app::model::Message;
use crate::app::parts::bar::Bar;
use crate::app::parts::icon::{Icon, Shape};
use crate::app::parts::photograph::{OpenPhotograph, Tile};
use crate::app::route::Route;
use crate::app::words;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// The check from which they were opened, where they were: what is added is evidence for it.
    #[prop_or_default]
    pub check: Option<&'static Check>,
    /// Today.
    pub today: Day,
    /// Whether something can be taken back.
    pub can_take_back: bool,
    /// Where messages go.
    pub send: Callback<Message>,
}

/// What became of the files that were chosen last.
#[derive(Clone, Default, PartialEq)]
struct Adding {
    /// So many were looked at, of so many; none when nothing is under way.
    under_way: Option<(usize, usize)>,
    /// How many are kept.
    added: usize,
    /// How many were on this page before.
    again: usize,
    /// What went wrong, a sentence each.
    faults: Vec<String>,
}

enum Step {
    /// Files were chosen; some of them may be more than one garment holds.
    Begin(Vec<String>),
    /// One that was here before came again.
    Again,
    Told(Taking),
}

impl Reducible for Adding {
    type Action = Step;

    fn reduce(self: Rc<Adding>, step: Step) -> Rc<Adding> {
        let mut next = (*self).clone();
        match step {
            Step::Begin(faults) => next = Adding { faults, ..Adding::default() },
            Step::Again => next.again += 1,
            Step::Told(Taking::Looked(count, all)) => next.under_way = Some((count, all)),
            Step::Told(Taking::Kept(..)) => next.added += 1,
            Step::Told(Taking::NoPicture(name, why)) => next.faults.push(match why {
                NoPicture::Unreadable => {
                    say!("{name}: this browser cannot read it as a picture. Take a JPEG, or a photograph of it.", name)
                }
                NoPicture::TooLarge => say!("{name}: it is too large to be opened here. Take a smaller one.", name),
            }),
            Step::Told(Taking::NotKept(fault)) => next.faults.push(format!(
                "{} {}",
                say!("The photograph is not kept, and nothing was noted of it."),
                fault.words()
            )),
            Step::Told(Taking::Done) => next.under_way = None,
        }
        Rc::new(next)
    }
}

impl Adding {
    fn said(&self) -> String {
        if let Some((count, all)) = self.under_way {
            return say!("Shrinking photograph {count} of {all}.", count = count + 1, all);
        }
        let added = (self.added > 0).then(|| {
            let count = self.added;
            if one(count) { say!("{count} photograph added.", count) } else { say!("{count} photographs added.", count) }
        });
        let again = (self.again > 0).then(|| {
            let count = self.again;
            if one(count) { say!("{count} was here already.", count) } else { say!("{count} were here already.", count) }
        });
        added.into_iter().chain(again).collect::<Vec<_>>().join(" ")
    }
}

/// The page.
#[component]
pub fn PhotographsPage(props: &Props) -> Html {
    let Props { garment, check, today, can_take_back, send } = props;
    let id = garment.id().clone();
    let all = garment.photographs();
    let room = Photographs::MOST - all.count().min(Photographs::MOST);
    let open = use_state_eq(|| None::<PhotographId>);
    let adding = use_reducer_eq(Adding::default);
    let (taking, choosing) = (use_node_ref(), use_node_ref());
    let act = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |act: PhotographAct| send.emit(Message::Done(id.clone(), Act::Photograph(act))))
    };
    let chosen = |input: &NodeRef| {
        let (adding, act, input) = (adding.dispatcher(), act.clone(), input.clone());
        let (check, today) = (*check, *today);
        let here: Vec<PhotographId> = all.all().iter().map(Photograph::id).collect();
        Callback::from(move |event: Event| {
            let Some(files) = event.target_dyn_into::<HtmlInputElement>().and_then(|field| field.files()) else { return };
            let over = (files.length() as usize).saturating_sub(room);
            let faults = (over > 0).then(|| {
                say!(
                    "One garment holds {most} photographs at most; {over} of those you chose are left out.",
                    most = Photographs::MOST,
                    over
                )
            });
            adding.dispatch(Step::Begin(faults.into_iter().collect()));
            let (adding, act, here) = (adding.clone(), act.clone(), here.clone());
            photographs::take(&files, room, move |told| {
                if let Taking::Kept(id, width, height) = told {
                    if here.contains(&id) {
                        return adding.dispatch(Step::Again);
                    }
                    if let Some(one) = Photograph::new(id, today, width, height) {
                        act.emit(PhotographAct::Add(one.for_check(check)));
                    }
                }
                adding.dispatch(Step::Told(told));
            });
            document::clear_input(&input);
        })
    };
    let take_back = {
        let (send, id) = (send.clone(), id.clone());
        Callback::from(move |_: MouseEvent| send.emit(Message::TakeBack(id.clone())))
    };
    let on_open = {
        let open = open.clone();
        Callback::from(move |one: PhotographId| open.set(Some(one)))
    };
    let close = {
        let open = open.clone();
        Callback::from(move |()| open.set(None))
    };
    let removed = {
        let (open, send, id) = (open.clone(), send.clone(), id.clone());
        Callback::from(move |one: PhotographId| {
            open.set(None);
            let act = Act::Photograph(PhotographAct::Remove(one));
            send.emit(Message::DoneToMany(vec![id.clone()], act, say!("Photograph removed.").to_owned()));
        })
    };
    // Those of the check from which one came stand first.
    let (first, later): (Vec<&Photograph>, Vec<&Photograph>) =
        all.all().iter().partition(|one| check.is_some() && one.check() == *check);
    let shown = (*open).and_then(|one| all.get(one)).cloned();
    let (back, back_name) = match check {
        Some(check) => (Route::Check(id.clone(), check.key.to_owned()), say!("Back to the check")),
        None => (Route::Result(id.clone()), say!("Back to the result")),
    };
    let busy = adding.under_way.is_some();
    html! {
        <>
            <Bar title={say!("Photographs")} under={garment.called().to_owned()} back={back.href()} {back_name}>
                <button type="button" class="icon-button" onclick={take_back} disabled={!can_take_back} aria-label={say!("Undo")}><Icon shape={Shape::Undo} /></button>
            </Bar>
            <section class="card">
                <h2>{ say!("Add a photograph") }</h2>
                if let Some(check) = check {
                    <p>{ say!("As evidence for the check:") }{ " " }<b>{ check.name() }</b></p>
                } else if all.count() == 0 {
                    <p>{ say!("Of what you would want to see again or show somebody: a seam that pulls, the label, the worst place and the best.") }</p>
                }
                <div class="row">
                    <label class="second file" aria-disabled={(room == 0 || busy).to_string()}>{ say!("Take a photograph") }<input ref={taking.clone()} type="file" accept="image/*" capture="environment" disabled={room == 0 || busy} onchange={chosen(&taking)} /></label>
                    <label class="second file" aria-disabled={(room == 0 || busy).to_string()}>{ say!("Choose photographs") }<input ref={choosing.clone()} type="file" accept="image/*" multiple=true disabled={room == 0 || busy} onchange={chosen(&choosing)} /></label>
                </div>
                if room == 0 {
                    <p>{ say!("One garment holds {most} photographs at most. Remove one to add another.", most = Photographs::MOST) }</p>
                }
                <p role="status">{ adding.said() }</p>
                { for adding.faults.iter().map(|fault| html! { <p class="fault" role="alert">{ fault }</p> }) }
                <p class="hint">{ say!("Shrunk on this device to 1600 pixels at most. Place and time in the picture are left out. They stay on this device, and go nowhere unless you hand them on.") }</p>
            </section>
            if all.count() > 0 {
                <section class="card">
                    <h2>{ words::photographs(all.count()) }</h2>
                    <p class="hint">{ say!("Tap one to see it large, to say what it shows, or to remove it.") }</p>
                    <ul class="photographs">
                        { for first.into_iter().chain(later).map(|one| html! { <Tile key={one.id().to_string()} one={one.clone()} open={on_open.clone()} /> }) }
                    </ul>
                </section>
            }
            if let Some(one) = shown {
                { large(one, &act, &removed, &close) }
            }
        </>
    }
}

/// A photograph over the page.
fn large(one: Photograph, act: &Callback<PhotographAct>, removed: &Callback<PhotographId>, close: &Callback<()>) -> Html {
    let id = one.id();
    let caption = act.reform(move |caption| PhotographAct::Caption(id, caption));
    let remove = removed.reform(move |()| id);
    html! { <OpenPhotograph key={id.to_string()} {one} {caption} {remove} close={close.clone()} /> }
}
