//! The language that people are spoken to in: English stands in the code, other languages in message files.
//!
//! English is the source and the key. [`say!`](crate::say!) looks a sentence up in the messages of the language that is spoken and falls back on the
//! English when there are none, so a sentence reads in the code as it reads on the screen. What stands in tables of data is said when
//! it is shown ([`said`]). `docs/languages.md` tells how messages are found, written and checked.
//!
//! The language that is spoken is the one thing in the library that is not handed in each time. It is set once, by the program ([`speak`]), for
//! its thread; nothing is worked out from it but words, and no stored form depends on it.

mod counted;
mod locale;
mod messages;
mod spoken;

/// Names of the message files of a language, without their ending. What `examples/messages` writes into each stands there.
pub const FILES: [&str; 13] = [
    "app",
    "pictures",
    "measure",
    "specimen",
    "catalog",
    "jeans",
    "woven-shirt",
    "t-shirt",
    "sweater",
    "dress-skirt",
    "tailored-jacket",
    "outerwear",
    "second-hand",
];
/// The file of what is said before anything else is there.
pub const ENTRANCE: &str = "entrance";

pub use counted::one;
pub use locale::{Language, grouped, money, opening, within};
pub use messages::{MessageFault, Messages};
pub use spoken::{filled, said, speak, spoken};

/// Says a sentence in the language that is spoken.
///
/// The sentence is the English one. What changes in it stands in braces by its name, and the values follow; each `Display` will do, numbers
/// that people read are written beforehand. Where the same English would be something else in other languages, a few words before it,
/// parted by `|`, tell translators which is meant.
///
/// ```
/// use garment_assay::say;
/// let count = 3;
/// assert_eq!(say!("Checked by hand"), "Checked by hand");
/// assert_eq!(say!("{count} of {all} answered", count, all = 3 + 4), "3 of 7 answered");
/// assert_eq!(say!("screen, not weight" | "Light"), "Light");
/// ```
#[macro_export]
macro_rules! say {
    (@value $name:ident) => { $name };
    (@value $name:ident $value:expr) => { $value };
    ($english:literal $(,)?) => { $crate::language::said($english) };
    ($sense:literal | $english:literal $(,)?) => { $crate::language::said(concat!($sense, "\u{4}", $english)) };
    ($english:literal, $($name:ident $(= $value:expr)?),+ $(,)?) => {
        $crate::language::filled($english, &[$((stringify!($name), &$crate::say!(@value $name $($value)?))),+])
    };
    ($sense:literal | $english:literal, $($name:ident $(= $value:expr)?),+ $(,)?) => {
        $crate::language::filled(
            concat!($sense, "\u{4}", $english),
            &[$((stringify!($name), &$crate::say!(@value $name $($value)?))),+],
        )
    };
}

/// Marks a sentence that is kept as it is and said later, by [`said`]: it is found among the messages.
///
/// ```
/// use garment_assay::{language::said, to_say};
/// const HINT: &str = to_say!("Turn it inside out.");
/// assert_eq!(said(HINT), "Turn it inside out.");
/// ```
#[macro_export]
macro_rules! to_say {
    ($english:literal) => {
        $english
    };
    ($sense:literal | $english:literal) => {
        concat!($sense, "\u{4}", $english)
    };
}

/// Gives a struct of a table methods of its fields' names that say what stands in them. A field that may be empty is marked by `?`, a list by `*`.
macro_rules! says {
    ($of:ident { $($fields:tt)* }) => {
        impl $of {
            $crate::language::says!(@each $($fields)*);
        }
    };
    (@each) => {};
    (@each $name:ident ? $(, $($rest:tt)*)?) => {
        #[doc = concat!("`", stringify!($name), "` in the language that is spoken.")]
        pub fn $name(&self) -> Option<&'static str> {
            self.$name.map($crate::language::said)
        }
        $crate::language::says!(@each $($($rest)*)?);
    };
    (@each $name:ident * $(, $($rest:tt)*)?) => {
        #[doc = concat!("`", stringify!($name), "` in the language that is spoken.")]
        pub fn $name(&self) -> Vec<&'static str> {
            self.$name.iter().copied().map($crate::language::said).collect()
        }
        $crate::language::says!(@each $($($rest)*)?);
    };
    (@each $name:ident $(, $($rest:tt)*)?) => {
        #[doc = concat!("`", stringify!($name), "` in the language that is spoken.")]
        pub fn $name(&self) -> &'static str {
            $crate::language::said(self.$name)
        }
        $crate::language::says!(@each $($($rest)*)?);
    };
}

pub(crate) use says;
