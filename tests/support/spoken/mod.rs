//! The spoken steps of laying, understood as a tyer understands them: from the words of a
//! language and from nothing else. Shares no code with the program.
//!
//! Every language has a grammar of its own beside this file. What the steps of all languages have
//! in common, such as the order of their sentences, is in `frame.rs`.

// Each file that includes this uses a part of it.
#![allow(dead_code)]

mod de;
pub mod ear;
mod en;
mod es;
mod fr;
mod frame;
pub mod meaning;

use ear::Ear;
pub use frame::Language;
pub use meaning::*;

/// The languages that are understood here.
pub const LANGUAGES: &[Language] = &[en::ENGLISH, de::GERMAN, es::SPANISH, fr::FRENCH];

/// The language of that tag.
pub fn language(tag: &str) -> &'static Language {
    let found = LANGUAGES.iter().find(|language| language.tag == tag);
    found.unwrap_or_else(|| {
        panic!("nobody here understands {tag}: add tests/support/spoken/{tag}.rs")
    })
}

/// Understands a spoken step of laying, or says which words it does not.
pub fn listen(tag: &str, text: &str, depth: Depth) -> Result<Spoken, String> {
    let mut ear = Ear::new(text);
    match (language(tag).step)(&mut ear, depth) {
        Ok(spoken) if ear.rest().is_empty() => Ok(spoken),
        Ok(_) => Err(format!("more is said: {:?} in {text:?}", ear.rest())),
        Err(why) => Err(format!("{why} at {:?} in {text:?}", ear.rest())),
    }
}
