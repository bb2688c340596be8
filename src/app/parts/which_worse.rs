//! Two drawn answers without their words: which is the worse?

use garment_assay::check::{Check, Level};
use garment_assay::say;
use garment_assay::specimen::Picture;
use yew::prelude::*;

use super::drawn::Drawn;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The check whose answers are drawn.
    pub check: &'static Check,
    /// Chance: which two, on which side, and the small irregularities.
    pub seed: u32,
}

/// Two neighbouring answers that are drawn, the worse first; none where no two are.
fn pair(check: &'static Check, seed: u32) -> Option<[(&'static Level, Picture); 2]> {
    let drawn: Vec<(&'static Level, Picture)> =
        check.levels.iter().filter_map(|level| level.drawn.map(|picture| (level, picture))).collect();
    let pairs: Vec<_> = drawn.windows(2).filter(|pair| pair[0].1 != pair[1].1).collect();
    let chosen = pairs.get(seed as usize % pairs.len().max(1))?;
    Some([chosen[0], chosen[1]])
}

/// The question, and once one was chosen what both are.
#[component]
pub fn WhichWorse(props: &Props) -> Html {
    let chosen = use_state_eq(|| None::<usize>);
    let Some(pair) = pair(props.check, props.seed) else { return Html::default() };
    // Some bit that has no say in which pair it is.
    let worse = (props.seed >> 16) as usize % 2;
    let shown = if worse == 0 { [pair[0], pair[1]] } else { [pair[1], pair[0]] };
    html! {
        <section class="card which-worse">
            <h2>{ say!("Which is the worse?") }</h2>
            <p class="hint">{ say!("Two answers drawn anew, without their words.") }</p>
            <div class="which-two">
                { for shown.into_iter().enumerate().map(|(place, (level, picture))| {
                    let onclick = { let chosen = chosen.clone(); Callback::from(move |_: MouseEvent| chosen.set(Some(place))) };
                    html! {
                        <button key={place} type="button" class="second" aria-pressed={(*chosen == Some(place)).to_string()} {onclick}>
                            <Drawn {picture} seed={u64::from(props.seed)} aloud=true />
                            <span>{ if chosen.is_some() { level.name() } else if place == 0 { say!("The first") } else { say!("The second") } }</span>
                        </button>
                    }
                }) }
            </div>
            <p role="status">
                { match *chosen {
                    None => "",
                    Some(place) if place == worse => say!("Yes, that is the worse of the two."),
                    Some(_) => say!("The other is the worse. Look at both again, now with their words."),
                } }
            </p>
        </section>
    }
}
