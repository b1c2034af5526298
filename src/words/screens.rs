//! Words of the screens that need numbers.

use fluent::{FluentValue, fluent_args};

use super::course::weave_of;
use super::pins::set_nested;
use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Spoken, Words};
use crate::guide::{AtOnce, LegsLaid, Plan};

impl Words {
    /// A tie in one line: "5 lead 7 bight, 2 passes".
    pub fn tie_line(&self, plan: &Plan) -> String {
        let (kind, weave) = match weave_of(plan.knot()) {
            ("run", run) if run == FluentValue::from(plan.knot().nested()) => ("usual", run),
            told => told,
        };
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "passes" => plan.laying().passes(), "hand" => plan.hand.selector(),
            "kind" => kind, "weave" => weave,
        };
        set_nested(&mut args, plan.knot().lattice());
        self.text("start-tie", &args)
    }

    /// A tie in one line, and how it is told: "5 lead 7 bight · plain, 4 at once".
    pub fn telling(&self, plan: &Plan, at_once: AtOnce) -> String {
        let args = fluent_args! {
            "detail" => self.detail().name(),
            "most" => if let AtOnce::UpTo(most) = at_once { most } else { 0 },
        };
        format!("{} · {}", self.tie_line(plan), self.text("telling", &args))
    }

    /// How far a tie is and how many whole days ago it was touched.
    pub fn tie_progress(&self, progress: LegsLaid, days: i64) -> String {
        let args = fluent_args! {
            "laid" => progress.laid, "legs" => progress.legs, "days" => days.max(0),
        };
        self.text("start-tie-progress", &args)
    }

    /// The depth that is said from now on.
    pub fn say_detail(&self) -> Spoken {
        self.spoken(
            SpokenMessage::DetailSay,
            &fluent_args! { "detail" => self.detail().name() },
        )
    }

    /// How much is told at once from now on.
    pub fn say_at_once(&self, at_once: AtOnce) -> Spoken {
        let (is_whole, most) = match at_once {
            AtOnce::WholeLeg => (true, 0),
            AtOnce::UpTo(most) => (false, most),
        };
        self.spoken(
            SpokenMessage::AtOnceSay,
            &fluent_args! { "fair" => "no", "whole" => is_whole.selector(), "most" => most },
        )
    }

    /// Whether a round of fairing is told leg by leg from now on, or once.
    pub fn say_fairing_by_leg(&self, fairs_by_leg: bool) -> Spoken {
        self.say_portion(if fairs_by_leg { "leg" } else { "round" })
    }

    /// Whether the things of bag and rigging are told one by one from now on, or several on a page.
    pub fn say_packing_one_by_one(&self, one_by_one: bool) -> Spoken {
        self.say_portion(if one_by_one { "item" } else { "page" })
    }

    fn say_portion(&self, portion: &'static str) -> Spoken {
        self.spoken(
            SpokenMessage::AtOnceSay,
            &fluent_args! { "fair" => portion, "whole" => "no", "most" => 1 },
        )
    }

    /// What the app says when it opens: the tie that waits, or the knot that one press begins.
    pub fn say_opening(&self, plan: &Plan, waiting: Option<LegsLaid>) -> Spoken {
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
        };
        set_nested(&mut args, plan.knot().lattice());
        if let Some(progress) = waiting {
            args.set("laid", progress.laid);
            args.set("legs", progress.legs);
            self.spoken(SpokenMessage::StartOfferSay, &args)
        } else {
            self.spoken(SpokenMessage::StartEmptySay, &args)
        }
    }
}
