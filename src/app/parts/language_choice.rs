//! The choice of the language that the app speaks.

use garment_assay::language::Language;
use garment_assay::say;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::browser::language;

/// A list of the languages, each by its own name, so that whoever cannot read the page finds theirs.
#[component]
pub fn LanguageChoice() -> Html {
    let chosen = language::chosen();
    let failed = use_state_eq(|| false);
    let onchange = {
        let failed = failed.setter();
        Callback::from(move |event: Event| {
            let tag = event.target_unchecked_into::<HtmlSelectElement>().value();
            failed.set(!language::choose(Language::of_tag(&tag)));
        })
    };
    html! {
        <>
            <div class="field"><label for="language">{ say!("Language") }</label>
                <select id="language" {onchange} data-language="">
                    <option value="" selected={chosen.is_none()}>{ say!("As the browser") }</option>
                    { for Language::ALL.into_iter().map(|language| html! {
                        <option key={language.tag()} value={language.tag()} lang={language.tag()} selected={chosen == Some(language)}>{ language.own_name() }</option>
                    }) }
                </select>
            </div>
            if *failed {
                <p class="fault" role="alert">{ say!("The browser did not keep this choice.") }</p>
            }
        </>
    }
}
