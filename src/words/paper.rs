//! Words of the screen on which paper and reels are made.

use std::path::Path;

use fluent::fluent_args;

use super::{Sentence, Words};

impl Words {
    /// What was made, and where it is: its first file, and how many there are. `kind`: card, strip, stage
    /// or reel.
    pub fn paper_made(&self, kind: &str, file: &Path, files: usize) -> Sentence {
        let args = fluent_args! {
            "kind" => kind, "file" => file.display().to_string(), "files" => files,
        };
        self.sentence("paper-made", &args)
    }

    /// So many of so many pages or frames are made.
    pub fn paper_progress(&self, done: u32, count: u32) -> Sentence {
        let args = fluent_args! { "done" => done, "count" => count };
        self.sentence("paper-progress", &args)
    }

    /// The sentence for what would be longer than is made. `what`: card, strip or reel.
    pub fn paper_long(&self, what: &str, most: u32) -> Sentence {
        let args = fluent_args! { "what" => what, "most" => most };
        self.sentence("paper-long", &args)
    }
}
