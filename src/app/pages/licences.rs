//! Licences: everything by others that is in what is shipped, and under which terms.
//!
//! The list is made while the app is built (`scripts/licences.mjs` says by which rule) and fetched when this page is opened.

use garment_assay::say;
use yew::prelude::*;

use crate::app::browser::shipped;
use crate::app::parts::bar::Bar;

/// The list, beside the page.
const FILE: &str = "./licences.txt";

/// One package, by others or our own.
#[derive(Clone, Debug, PartialEq)]
struct Package {
    name: String,
    version: String,
    /// As its maker puts it: names of licences, with OR between those one may choose from and AND where both hold.
    licence: String,
    /// Places of its texts in the list of texts.
    texts: Vec<usize>,
}

/// The text of a licence, once for all packages that come with the very same.
#[derive(Clone, Debug, PartialEq)]
struct Text {
    kind: String,
    text: String,
}

#[derive(Clone, Debug, Default, PartialEq)]
struct List {
    packages: Vec<Package>,
    texts: Vec<Text>,
}

impl List {
    /// Reads the file, whose form `scripts/licences.mjs` says; none for anything else, such as the page that a host shows for a file it does
    /// not have, and for a list that broke off.
    fn read(file: &str) -> Option<List> {
        let mut lines = file.lines();
        (lines.next() == Some("licences 1")).then_some(())?;
        let mut list = List::default();
        for line in lines {
            match line.split('\t').collect::<Vec<_>>().as_slice() {
                ["package", name, version, licence, texts] => list.packages.push(Package {
                    name: (*name).to_owned(),
                    version: (*version).to_owned(),
                    licence: (*licence).to_owned(),
                    texts: texts.split(' ').map(|place| place.parse().ok()).collect::<Option<_>>()?,
                }),
                ["text", kind] => list.texts.push(Text { kind: (*kind).to_owned(), text: String::new() }),
                ["", ..] => {
                    let text = &mut list.texts.last_mut()?.text;
                    text.push_str(line.strip_prefix('\t')?);
                    text.push('\n');
                }
                _ => return None,
            }
        }
        let whole = list.packages.iter().flat_map(|package| &package.texts).all(|place| *place < list.texts.len());
        (whole && !list.packages.is_empty()).then_some(list)
    }
}

#[derive(Clone, PartialEq)]
enum Coming {
    Fetched,
    Here(List),
    Failed,
}

/// The packages, then the texts.
#[component]
pub fn Licences() -> Html {
    let coming = use_state_eq(|| Coming::Fetched);
    let fetch = {
        let coming = coming.setter();
        Callback::from(move |()| {
            let coming = coming.clone();
            coming.set(Coming::Fetched);
            shipped::fetch(FILE.to_owned(), move |text| {
                coming.set(text.and_then(|text| List::read(&text)).map_or(Coming::Failed, Coming::Here));
            });
        })
    };
    {
        let fetch = fetch.clone();
        use_effect_with((), move |()| fetch.emit(()));
    }
    html! {
        <>
            <Bar title={say!("Licences")} under={say!("What the app is made of")} back="#/settings" back_name={say!("Back to settings")} />
            { match &*coming {
                Coming::Fetched => html! { <p class="card hint" aria-busy="true">{ say!("Fetching the list.") }</p> },
                Coming::Failed => html! {
                    <section class="card">
                        <p class="fault" role="alert">{ say!("The list of licences could not be fetched. It comes over the network the first time: try again where you have one.") }</p>
                        <p><button type="button" class="second" onclick={fetch.reform(|_: MouseEvent| ())}>{ say!("Try again") }</button></p>
                    </section>
                },
                Coming::Here(list) => shown(list),
            } }
        </>
    }
}

fn shown(list: &List) -> Html {
    html! {
        <>
            <section class="card">
                <h2>{ say!("Packages") }</h2>
                <p>{ say!("The app is under the MIT License. It holds the work of many others, each under terms of its own. Where a line says OR, one of the licences may be chosen.") }</p>
                <p class="hint">{ say!("Listed is what the programs need to run. The linker takes only what is used, so of some packages nothing may be left. What only helps to build the app is not in it.") }</p>
                <ul class="licences">
                    { for list.packages.iter().map(|package| html! {
                        <li key={format!("{} {}", package.name, package.version)}><b>{ &package.name }</b>{ format!(" {}: {}", package.version, package.licence) }</li>
                    }) }
                </ul>
            </section>
            <section class="card">
                <h2>{ say!("Texts") }</h2>
                <p class="hint">{ say!("Each text once, with the packages that come with it. Those that bring no text stand with the Apache License, which all of them allow.") }</p>
                { for list.texts.iter().enumerate().map(|(place, text)| html! {
                    <details key={place} class="licence-text">
                        <summary>{ format!("{}: {}", text.kind, holders(&list.packages, place)) }</summary>
                        <p>{ &text.text }</p>
                    </details>
                }) }
            </section>
        </>
    }
}

/// Names of the packages that come with the text at that place, each once: two versions of one stand side by side.
fn holders(packages: &[Package], place: usize) -> String {
    let mut names: Vec<&str> =
        packages.iter().filter(|package| package.texts.contains(&place)).map(|package| package.name.as_str()).collect();
    names.dedup();
    names.join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;

    const LIST: &str = "licences 1\npackage\tone\t1.0.0\tMIT\t1\npackage\ttwo\t2.0.0\tMIT OR Apache-2.0\t0 1\n\
        text\tApache License 2.0\n\tTerms\n\t\n\t\tand more\ntext\tMIT License\n\tPermission\n";

    #[test]
    fn a_text_names_all_that_come_with_it() {
        let list = List::read(LIST).expect("a list");
        assert_eq!(holders(&list.packages, 0), "two");
        assert_eq!(holders(&list.packages, 1), "one, two");
        let twice = [list.packages[0].clone(), Package { version: "1.1.0".to_owned(), ..list.packages[0].clone() }];
        assert_eq!(holders(&twice, 1), "one");
        assert_eq!(list.texts[0].text, "Terms\n\n\tand more\n");
    }

    #[test]
    fn what_is_no_list_or_broke_off_is_not_shown_as_one() {
        for text in [
            "",
            "<!doctype html>",
            "licences 1\n",
            "licences 2\n",
            &LIST[..40],
            &LIST[..100],
            "licences 1\n\tno text to stand in\n",
        ] {
            assert_eq!(List::read(text), None, "{text:?}");
        }
    }
}
