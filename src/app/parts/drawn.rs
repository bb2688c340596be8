//! A specimen on the screen.

use garment_assay::specimen::{Drawing, Ink, Paint, Picture, drawing};
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is drawn.
    pub picture: Picture,
    /// Chance behind the small irregularities; the same seed gives the same drawing.
    #[prop_or(7)]
    pub seed: u64,
    /// Read aloud; silent beside an answer whose words say the same.
    #[prop_or_default]
    pub aloud: bool,
}

fn ink(ink: Ink) -> &'static str {
    match ink {
        Ink::ClothDark => "ink-cloth-dark",
        Ink::Cloth => "ink-cloth",
        Ink::ClothLight => "ink-cloth-light",
        Ink::ClothPale => "ink-cloth-pale",
        Ink::Weft => "ink-weft",
        Ink::Thread => "ink-thread",
        Ink::ThreadLight => "ink-thread-light",
        Ink::Shade => "ink-shade",
        Ink::Edge => "ink-edge",
        Ink::Metal => "ink-metal",
        Ink::Paper => "ink-paper",
        Ink::Stain => "ink-stain",
        Ink::Tape => "ink-tape",
    }
}

/// A specimen, drawn.
#[component]
pub fn Drawn(props: &Props) -> Html {
    let Drawing { width, height, marks } = drawing(&props.picture, props.seed);
    let marks = marks.into_iter().enumerate().map(|(place, mark)| {
        let (how, stroke, dashes) = match mark.paint {
            Paint::Fill => ("filled", None, None),
            Paint::Stroke(width) => ("along", Some(width), None),
            Paint::Dashed(width, dash, gap) => ("along", Some(width), Some(format!("{dash} {gap}"))),
        };
        html! {
            <path key={place} class={classes!(how, ink(mark.ink))} d={mark.path}
                stroke-width={stroke.map(|width| width.to_string())} stroke-dasharray={dashes} />
        }
    });
    let view = format!("0 0 {width} {height}");
    if props.aloud {
        html! { <svg class="drawn" viewBox={view} role="img" aria-label={props.picture.words()} focusable="false">{ for marks }</svg> }
    } else {
        html! { <svg class="drawn" viewBox={view} aria-hidden="true" focusable="false">{ for marks }</svg> }
    }
}
