//! Small line drawings on buttons. Each stands beside a word or carries one aloud.

use yew::prelude::*;

/// What is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// An arrow back: to the left, where one reads from left to right.
    Back,
    /// Three lines with marks: the list of checks.
    List,
    /// A curved arrow: undo.
    Undo,
    /// A pencil.
    Edit,
    /// A slider.
    Settings,
    /// A ruler.
    Ruler,
    /// A needle's eye: search.
    Search,
    /// A cross.
    Close,
    /// A bin.
    Delete,
    /// A triangle with a bar: take care.
    Care,
}

impl Shape {
    /// Whether it points the way that one reads, and so turns round where one reads from right to left.
    const fn points(self) -> bool {
        matches!(self, Shape::Back | Shape::List | Shape::Undo)
    }

    const fn path(self) -> &'static str {
        match self {
            Shape::Back => "M15 5l-7 7 7 7",
            Shape::List => "M4 6h2M4 12h2M4 18h2M10 6h10M10 12h10M10 18h10",
            Shape::Undo => "M8 5L4 9l4 4M4 9h10a5 5 0 0 1 0 10h-3",
            Shape::Edit => "M5 19l1-4L16 5l3 3L9 18zM14 7l3 3",
            Shape::Settings => "M4 8h9M17 8h3M15 6v4M4 16h3M11 16h9M9 14v4",
            Shape::Ruler => "M4 8h16v8H4zM8 8v3.500M12 8v5M16 8v3.500",
            Shape::Search => "M10.500 4.500a6 6 0 1 0 .01 0zM15 15l5 5",
            Shape::Close => "M6 6l12 12M18 6L6 18",
            Shape::Delete => "M5 7h14M10 7V5h4v2M7 7l1 12h8l1-12M10.500 10.500v5.500M13.500 10.500v5.500",
            Shape::Care => "M12 4L3 19.500h18zM12 10v4.500M12 16.800v.4",
        }
    }
}

#[derive(Properties, PartialEq)]
pub struct Props {
    /// What is drawn.
    pub shape: Shape,
}

/// A small line drawing; silent, since its button carries the word.
#[component]
pub fn Icon(props: &Props) -> Html {
    html! {
        <svg class={classes!("icon", props.shape.points().then_some("icon-way"))} viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
            <path d={props.shape.path()} />
        </svg>
    }
}
