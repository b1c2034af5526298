//! What a field of the plan screen can be filled in with by one press: what the tyer keeps by name, what
//! is sold under a name, and the sizes that are sold.

use super::covering::Covered;
use super::fields::PlanField;
use super::form::{Action, State};
use crate::bench::{STANDARD_CORDS, Thread};
use crate::guide::SetupField;
use crate::words::{CordPick, Words};

/// Diameters in millimetres that cord is sold in: *common practice, no source*.
const SOLD: [&str; 11] = ["1", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12"];
/// The same in inches, each with its millimetres.
const SOLD_BY_INCHES: [(&str, f64); 9] = [
    ("1/16", 1.6),
    ("3/32", 2.4),
    ("1/8", 3.2),
    ("5/32", 4.0),
    ("3/16", 4.8),
    ("1/4", 6.4),
    ("5/16", 7.9),
    ("3/8", 9.5),
    ("1/2", 12.7),
];

/// What a field can be filled in with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct FieldPick {
    /// What stands in the field then.
    pub text: String,
    /// What it is called in the list.
    pub label: String,
}

impl State {
    /// What can be picked for a field.
    pub(super) fn picks(&self, field: SetupField, words: &Words) -> Vec<FieldPick> {
        match field {
            SetupField::Cord => self.cords(words),
            SetupField::Thread => threads(words),
            SetupField::Tube => {
                let tubes = self.presets.tubes.keys();
                let pick = |name: &String| FieldPick {
                    text: name.clone(),
                    label: name.clone(),
                };
                tubes.map(pick).collect()
            }
            _ => Vec::new(),
        }
    }

    /// Cords: first those that the tyer keeps, then those with a name in shops, then sizes.
    fn cords(&self, words: &Words) -> Vec<FieldPick> {
        let pick = |text: String, cord: CordPick| FieldPick {
            text,
            label: words.cord_pick(&cord),
        };
        let kept = self.presets.cords.iter();
        let kept = kept.map(|(name, cord)| {
            let millimetres = cord.diameter.get();
            pick(name.clone(), CordPick::Named(name, millimetres))
        });
        let standards = STANDARD_CORDS.iter().filter_map(|standard| {
            let millimetres = standard.typical_diameter?.get();
            let name = format!("paracord {}", standard.least_pounds);
            let label = format!("{name} ({})", standard.designation);
            Some(pick(name, CordPick::Named(&label, millimetres)))
        });
        let sold = SOLD.iter().filter_map(|text| {
            // With the decimal sign of the language, as it is read here.
            let cord = CordPick::Metric(text.parse().ok()?);
            Some(pick(words.cord_pick(&cord), cord))
        });
        let by_inches = SOLD_BY_INCHES.iter().map(|&(inches, millimetres)| {
            let cord = CordPick::Inches(inches, millimetres);
            pick(format!("{inches} in"), cord)
        });
        kept.chain(standards).chain(sold).chain(by_inches).collect()
    }

    /// Which of the picks of a field stands in it.
    pub(super) fn picked(&self, field: SetupField, picks: &[FieldPick]) -> Option<usize> {
        let text = self.form.said(field)?;
        picks.iter().position(|pick| pick.text == text)
    }

    pub(super) fn pick(&mut self, field: SetupField, index: usize, words: &Words) -> Action {
        self.focus = field.into();
        if field == SetupField::Object && self.covering.covered != Covered::Round {
            return Action::None;
        }
        if field == SetupField::Object {
            let text = self.form.text(self.said_as(field)).to_owned();
            self.form.say(self.said_as(field), "");
            self.is_girth = index == 1;
            self.form.say(self.said_as(field), text);
        } else {
            match self.picks(field, words).into_iter().nth(index) {
                Some(pick) => self.form.say(field, pick.text),
                None => return Action::None,
            }
        }
        // What is picked is heard as what is typed would be on coming back to it.
        let said = self.say_field(words);
        let found = match self.look() {
            Action::Find(number, asked, _) => Action::Find(number, asked, said),
            _ => Action::Say(said),
        };
        if field == SetupField::Object {
            found
        } else {
            Action::Filled(field.into(), Box::new(found))
        }
    }

    pub(super) fn pick_next(&mut self, forward: bool, words: &Words) -> Action {
        let PlanField::Setup(field) = self.focus else {
            return Action::None;
        };
        if field == SetupField::Object {
            return self.pick(SetupField::Object, usize::from(!self.is_girth), words);
        }
        let picks = self.picks(field, words);
        if picks.is_empty() {
            return Action::None;
        }
        let index = match (self.picked(field, &picks), forward) {
            (Some(here), true) => (here + 1) % picks.len(),
            (Some(here), false) => (here + picks.len() - 1) % picks.len(),
            (None, true) => 0,
            (None, false) => picks.len() - 1,
        };
        self.pick(field, index, words)
    }
}

/// Threads by their names: those of ISO first, then those by inches.
fn threads(words: &Words) -> Vec<FieldPick> {
    let (metric, inch): (Vec<Thread>, Vec<Thread>) = Thread::all()
        .iter()
        .partition(|thread| thread.name().starts_with('M'));
    let pick = |thread: Thread| FieldPick {
        text: thread.name().to_owned(),
        label: words.thread_pick(thread),
    };
    metric.into_iter().chain(inch).map(pick).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{Presets, SetupForm};

    #[test]
    fn whatever_can_be_picked_is_understood() {
        let (state, words) = (State::default(), Words::english());
        let presets = Presets::default();
        for (tag, half) in [("en", "1.5"), ("de", "1,5"), ("es", "1,5"), ("fr", "1,5")] {
            let words = Words::load(Some(tag)).unwrap();
            let picks = state.picks(SetupField::Cord, &words);
            assert!(
                picks.iter().any(|pick| pick.text.starts_with(half)),
                "{tag}"
            );
            for pick in picks {
                let form = SetupForm::from_iter([(SetupField::Cord, pick.text.as_str())]);
                let cord = form.cord(&presets).unwrap().unwrap();
                let least = cord.diameter.get();
                assert!((1.0..13.0).contains(&least), "{pick:?}");
            }
        }
        for pick in state.picks(SetupField::Thread, &words) {
            Thread::parse(&pick.text).unwrap();
        }
    }

    #[test]
    fn sizes_by_inches_have_their_millimetres_beside_them() {
        for (inches, millimetres) in SOLD_BY_INCHES {
            let form = SetupForm::from_iter([(SetupField::Cord, format!("{inches} in"))]);
            let cord = form.cord(&Presets::default()).unwrap().unwrap();
            assert!(
                (cord.diameter.get() - millimetres).abs() < 0.051,
                "{inches}"
            );
        }
    }
}
