//! Words of the screens that need numbers.

use fluent::fluent_args;

use super::Words;
use super::args::Selector;
use crate::guide::{AtOnce, Plan, Progress};

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

    /// The depth that is said from now on.
    pub fn say_detail(&self) -> String {
        self.text(
            "detail-say",
            &fluent_args! { "detail" => self.detail().name() },
        )
    }

    /// How much is told at once from now on.
    pub fn say_at_once(&self, at_once: AtOnce) -> String {
        let (is_whole, most) = match at_once {
            AtOnce::WholeLeg => (true, 0),
            AtOnce::UpTo(most) => (false, most),
        };
        self.text(
            "at-once-say",
            &fluent_args! { "whole" => is_whole.selector(), "most" => most },
        )
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
