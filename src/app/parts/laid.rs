//! A long page is laid out in turns: what can be seen comes first, the rest follows, so that no tap waits for it.

use yew::prelude::*;

use crate::app::browser::screen;

/// How many of a page's parts are laid out by now: `at_once` of them at first, and as many more in each turn until all are.
#[hook]
pub fn use_laid(at_once: usize, all: usize) -> usize {
    let laid = use_state_eq(|| at_once);
    let setter = laid.setter();
    use_effect_with((*laid, all), move |(count, all)| {
        let next = count + at_once;
        let later = (count < all).then(|| screen::soon(move || setter.set(next)));
        move || drop(later)
    });
    *laid
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Whether some is.
    pub of: bool,
    /// It may be as long as the screen: the page is not to be too short meanwhile for what was brought to its top.
    #[prop_or_default]
    pub tall: bool,
}

/// Stands where the rest of a page is still to come.
#[component]
pub fn Rest(props: &Props) -> Html {
    if !props.of {
        return Html::default();
    }
    html! { <div class={props.tall.then_some("rest-tall")} aria-busy="true" /> }
}
