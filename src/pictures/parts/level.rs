//! How flat the phone is held, as a bubble and in words; nothing where the device does not tell.

use garment_assay::quantity::{Decimal, written};
use garment_assay::say;
use yew::prelude::*;

use crate::browser::tilt::{self, Tilt};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// Called with each tilt.
    #[prop_or_default]
    pub told: Callback<Tilt>,
}

/// Held flatter than this, nothing more is gained. Judgement.
const FLAT: f64 = 3.0;
/// Held steeper than this, the cloth hangs and flat is not what is wanted. Judgement.
pub const HANGING: f64 = 45.0;

/// What the person is told.
fn words(tilt: Tilt) -> String {
    if tilt.degrees <= FLAT {
        say!("The phone is flat.").to_owned()
    } else if tilt.degrees <= HANGING {
        say!("Hold the phone flat: {count} degrees off.", count = written(tilt.degrees, 0, Decimal::spoken()))
    } else {
        say!("Hold the phone square to the cloth.").to_owned()
    }
}

/// The bubble and its words.
#[component]
pub fn Level(props: &Props) -> Html {
    let held = use_state_eq(|| None::<Tilt>);
    {
        let (held, told) = (held.clone(), props.told.clone());
        use_effect_with((), move |()| {
            let listening = tilt::on_change(move |tilt| {
                told.emit(tilt);
                // A hand trembles: what cannot be seen is not drawn anew.
                let coarse = |part: f64| (part * 40.0).round() / 40.0;
                held.set(Some(Tilt { degrees: tilt.degrees.round(), right: coarse(tilt.right), down: coarse(tilt.down) }));
            });
            move || drop(listening)
        });
    }
    let Some(tilt) = *held else { return Html::default() };
    // The bubble rises to the higher side; at the rim it stands for 20 degrees and more.
    let reach = |part: f64| 12.0 - (part / 0.342).clamp(-1.0, 1.0) * 6.0;
    html! {
        <p class="level" data-flat={(tilt.degrees <= FLAT).to_string()}>
            <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
                <circle class="level-rim" cx="12" cy="12" r="10.5" />
                <circle class="level-aim" cx="12" cy="12" r="4.5" />
                if tilt.degrees <= HANGING {
                    <circle class="level-bubble" cx={format!("{:.1}", reach(tilt.right))} cy={format!("{:.1}", reach(tilt.down))} r="3" />
                }
            </svg>
            <span>{ words(tilt) }</span>
        </p>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_words_say_how_far_off_and_when_it_is_good() {
        let at = |degrees| words(Tilt { degrees, right: 0.0, down: 0.0 });
        assert_eq!(at(2.0), "The phone is flat.");
        assert_eq!(at(8.2), "Hold the phone flat: 8 degrees off.");
        assert_eq!(at(80.0), "Hold the phone square to the cloth.");
    }
}
