//! Words of the screens that need numbers.

use fluent::{FluentValue, fluent_args};

use super::course::weave_of;
use super::pins::set_nested;
use super::selectors::Selector;
use super::spoken_messages::SpokenMessage;
use super::{Spoken, Words};
use crate::guide::{AtOnce, LegsLaid, Plan};
use crate::knot::Hand;
use crate::shelf::Shelved;

impl Words {
    /// A tie in one line: "5 lead 7 bight, 2 passes".
    pub fn tie_line(&self, plan: &Plan) -> String {
        let (kind, weave) = match weave_of(plan.knot()) {
            ("run", run) if run == FluentValue::from(plan.knot().nested()) => ("usual", run),
            told => told,
        };
        self.tie_told(plan, kind, weave, plan.hand)
    }

    /// A tie without how it is woven and which way round, for where there is little room: "5 lead 7 bight,
    /// doubled".
    pub fn tie_without_weave(&self, plan: &Plan) -> String {
        self.tie_told(plan, "usual", FluentValue::None, Hand::Right)
    }

    fn tie_told(
        &self,
        plan: &Plan,
        kind: &'static str,
        weave: FluentValue<'static>,
        hand: Hand,
    ) -> String {
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "passes" => plan.laying().passes(), "hand" => hand.selector(),
            "kind" => kind, "weave" => weave,
        };
        set_nested(&mut args, plan.knot().lattice());
        self.text("start-tie", &args)
    }

    /// A tie by its numbers, for where there is little room: "5 × 7, doubled".
    pub fn tie_in_short(&self, plan: &Plan) -> String {
        let mut args = fluent_args! {
            "leads" => plan.knot().leads(), "bights" => plan.knot().bights(),
            "passes" => plan.laying().passes(),
        };
        set_nested(&mut args, plan.knot().lattice());
        self.text("start-tie-short", &args)
    }

    /// A tie in one line, and how it is told: "5 lead 7 bight · plain, 4 crossings at once".
    pub fn telling(&self, plan: &Plan, at_once: AtOnce) -> String {
        let args = fluent_args! {
            "detail" => self.detail().name(),
            "most" => if let AtOnce::UpTo(most) = at_once { most } else { 0 },
        };
        format!("{} · {}", self.tie_line(plan), self.text("telling", &args))
    }

    /// How far a tie is and how long ago it was touched: whole days, or hours or minutes of this day.
    pub fn tie_progress(&self, tie: &Shelved) -> String {
        let args = fluent_args! {
            "laid" => tie.progress.laid, "legs" => tie.progress.legs, "days" => tie.days,
            "minutes" => tie.minutes, "hours" => tie.minutes / 60,
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

#[cfg(test)]
mod tests {
    use jiff::SignedDuration;

    use super::*;
    use crate::guide::Script;
    use crate::shelf::Tie;

    #[test]
    fn ties_of_one_day_are_told_apart_by_when_they_were_touched() {
        let plan = Plan::read("3", "5", "1", "1").unwrap();
        let last = Script::new(plan.clone(), AtOnce::default()).last();
        let tie = Tie::begin(plan, last);
        for tag in ["en", "de", "es", "fr"] {
            let words = Words::load(Some(tag)).unwrap();
            let told = |since: SignedDuration| {
                let tie = Shelved::new(tie.clone(), tie.touched + since, false);
                [words.tie_progress(&tie), words.tie_stand(&tie)]
            };
            let minutes = told(SignedDuration::from_mins(5));
            let hours = told(SignedDuration::from_mins(3 * 60 + 20));
            for (minutes, hours) in minutes.iter().zip(&hours) {
                assert!(minutes.contains("5 min"), "{tag}: {minutes}");
                assert!(hours.contains("3 h"), "{tag}: {hours}");
            }
        }
    }
}
