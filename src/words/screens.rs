//! Words of the screens that need numbers.

use fluent::fluent_args;

use super::Words;
use crate::guide::{Plan, Progress};

impl Words {
    /// A tie in one line: "5 lead 6 bight, 2 passes".
    pub fn tie_line(&self, plan: &Plan) -> String {
        let args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "passes" => plan.laying().passes(),
        };
        self.text("start-tie", &args)
    }

    /// How far a tie is and how many whole days ago it was touched.
    pub fn tie_progress(&self, progress: Progress, days: i64) -> String {
        let args = fluent_args! {
            "laid" => progress.laid, "legs" => progress.legs, "days" => days.max(0),
        };
        self.text("start-tie-progress", &args)
    }

    /// What the app says when it opens: the tie that waits, or the knot that one press begins.
    pub fn say_opening(&self, plan: &Plan, waiting: Option<Progress>) -> String {
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
        };
        if let Some(progress) = waiting {
            args.set("laid", progress.laid);
            args.set("legs", progress.legs);
            self.text("start-offer-say", &args)
        } else {
            self.text("start-empty-say", &args)
        }
    }
}
