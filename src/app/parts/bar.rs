//! The bar over a screen: back, what the screen is, and what else can be done.

use garment_assay::say;
use yew::prelude::*;

use super::icon::{Icon, Shape};

#[derive(Properties, PartialEq)]
pub struct Props {
    /// The heading of the screen.
    pub title: AttrValue,
    /// The line under it.
    #[prop_or_default]
    pub under: AttrValue,
    /// Where "back" leads; none on the first screen.
    #[prop_or_default]
    pub back: Option<AttrValue>,
    /// What "back" is called aloud.
    #[prop_or(AttrValue::Static(say!("Back")))]
    pub back_name: AttrValue,
    /// Links and buttons at the right.
    #[prop_or_default]
    pub children: Html,
}

/// A landmark with nothing in it would be announced all the same.
fn is_empty(children: &Html) -> bool {
    match children {
        Html::VList(list) => list.iter().all(is_empty),
        _ => false,
    }
}

/// The bar over a screen.
#[component]
pub fn Bar(props: &Props) -> Html {
    html! {
        <header class="bar">
            if let Some(back) = &props.back {
                <a class="icon-button" href={back} aria-label={&props.back_name}><Icon shape={Shape::Back} /></a>
            }
            <div class="bar-title">
                <h1 tabindex="-1">{ &props.title }</h1>
                if !props.under.is_empty() {
                    <p>{ &props.under }</p>
                }
            </div>
            if !is_empty(&props.children) {
                <nav class="bar-more" aria-label={say!("This screen")}>{ props.children.clone() }</nav>
            }
        </header>
    }
}
