//! In the mirror: moves to make, and lines to look for. One tap each.

use std::rc::Rc;

use garment_assay::catalog::{FitTable, Move, Sign};
use garment_assay::fit::Went;
use garment_assay::garment::{FitAct, Garment};
use garment_assay::language::said;
use garment_assay::say;
use garment_assay::to_say;
use yew::prelude::*;

use super::drawn::Drawn;
use super::icon::{Icon, Shape};
use super::laid::{Rest, use_laid};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The garment.
    pub garment: Rc<Garment>,
    /// How its family is fitted.
    pub table: &'static FitTable,
    /// Called with what was seen.
    pub act: Callback<FitAct>,
}

/// What must be said before anything is put on.
const CAUTION: &str = to_say!(
    "Ask before you try on goods that are not yours, and do not strain seams or fastenings. New goods can hold pins or bits of \
    needle: feel bands and hems from outside first."
);
/// What must be said of raw cloth.
const RAW: &str = to_say!("Raw indigo rubs off on skin, pale seats and bags until it has been washed a few times.");

/// One move and its three answers.
fn one_move(garment: &Garment, one: &'static Move, act: &Callback<FitAct>) -> Html {
    let went = garment.fitting().went(one);
    html! {
        <li key={one.key}>
            <div class="fit-entry">
                if let Some(picture) = one.drawn { <Drawn {picture} /> }
                <div><h4>{ one.name() }</h4><p class="hint">{ one.how() }</p></div>
            </div>
            if let Some(caution) = one.caution() {
                <p class="caution"><Icon shape={Shape::Care} /><span>{ caution }</span></p>
            }
            <fieldset class="chips chips-down">
                <legend class="unseen">{ one.name() }</legend>
                { for Went::ALL.into_iter().zip(one.looks()).map(|(value, look)| {
                    let onchange = act.reform(move |_: Event| FitAct::Move(one, Some(value)));
                    html! {
                        <label key={value.key()} class="chip" data-chosen={(went == Some(value)).to_string()}>
                            <input type="radio" name={format!("move-{}", one.key)} checked={went == Some(value)} {onchange} /><span>{ look }</span>
                        </label>
                    }
                }) }
            </fieldset>
            if went.is_some_and(|went| went != Went::Freely) {
                <p class="fit-cause">{ one.cause() }{ " " }{ garment.fitting().cure(one.cure, one.needs).words() }</p>
            }
        </li>
    }
}

/// One sign: seen or not.
fn one_sign(garment: &Garment, sign: &'static Sign, act: &Callback<FitAct>) -> Html {
    let seen = garment.fitting().seen(sign);
    let answer = |value: bool| act.reform(move |_: Event| FitAct::Sign(sign, Some(value)));
    html! {
        <li key={sign.key}>
            <div class="fit-entry">
                if let Some(picture) = sign.drawn { <Drawn {picture} /> }
                <div><h4>{ sign.name() }</h4><p class="hint">{ sign.looks() }</p></div>
            </div>
            <fieldset class="chips">
                <legend class="unseen">{ sign.name() }</legend>
                { for [(false, say!("Not there")), (true, say!("I see it"))].into_iter().map(|(value, word)| html! {
                    <label key={word} class="chip" data-chosen={(seen == Some(value)).to_string()}>
                        <input type="radio" name={format!("sign-{}", sign.key)} checked={seen == Some(value)} onchange={answer(value)} /><span>{ word }</span>
                    </label>
                }) }
            </fieldset>
            if seen == Some(true) {
                <p class="fit-cause">{ sign.cause() }{ " " }{ sign.mend() }</p>
                <p class="hint">{ garment.fitting().cure(sign.cure, sign.needs).words() }</p>
            }
        </li>
    }
}

/// Moves or lines drawn at once, and then again in each turn: as many as a phone shows before it is moved. Judgement.
const AT_ONCE: usize = 3;

/// The part.
#[component]
pub fn Mirror(props: &Props) -> Html {
    let Props { garment, table, act } = props;
    let table = *table;
    let fitting = garment.fitting();
    let all = table.moves.len() + table.signs.len();
    let laid = use_laid(AT_ONCE, all);
    let signs_laid = laid.saturating_sub(table.moves.len());
    let moves = table.moves.iter().filter(|one| fitting.went(one).is_some()).count();
    let looked = table.signs.iter().filter(|sign| fitting.seen(sign).is_some()).count();
    let none_there = {
        let rest = fitting.no_other_sign(table);
        act.reform(move |_: MouseEvent| rest.clone())
    };
    let raw = fitting.cloth().is_some_and(|cloth| cloth.raw);
    html! {
        <>
            { for [CAUTION].iter().chain(raw.then_some(&RAW)).map(|caution| html! {
                <p key={*caution} class="caution"><Icon shape={Shape::Care} /><span>{ said(caution) }</span></p>
            }) }
            <h3>{ say!("your body" | "Move") }{ " " }<small>{ say!("{count} of {all} made", count = moves, all = table.moves.len()) }</small></h3>
            <ul class="fit-rows">{ for table.moves.iter().take(laid).map(|one| one_move(garment, one, act)) }</ul>
            <details class="fit-signs" open={looked > 0}>
                <summary>{ say!("Stand and look for lines ({count} of {all})", count = looked, all = table.signs.len()) }</summary>
                <p class="hint">{ say!("A line points to the tight spot. Level lines: too narrow across. Upright: too wide. Slanting: from tight to loose.") }</p>
                <ul class="fit-rows">{ for table.signs.iter().take(signs_laid).map(|sign| one_sign(garment, sign, act)) }</ul>
                if looked < table.signs.len() {
                    <p><button type="button" class="second" onclick={none_there}>{ if looked == 0 { say!("None of these is there") } else { say!("None of the others is there") } }</button></p>
                }
            </details>
            <Rest of={laid < all} tall=true />
        </>
    }
}
