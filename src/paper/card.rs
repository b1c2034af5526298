//! The card of a plan: its words, one leg after the other.

use crate::bench::{Layout, Tube};
use crate::guide::{AtOnce, Captions, FinishTask, Labour, Place, Plan, Script, Step, What};
use crate::picture::sheet::{Card, CardEnd, CardParts, CardRow, CardSheet, LegLine, Paper};
use crate::picture::{Moment, Scene, Subject, View, Viewport};
use crate::words::Words;

/// The legs and ends of a plan in the words of a language.
pub struct PlanParts {
    script: Script,
    words: Words,
}

/// The card of a plan; with the holes of the pins when the tube is known.
pub fn card(
    plan: &Plan,
    pinned: Option<(&Tube, &Layout)>,
    labour: &Labour,
    paper: Paper,
    words: &Words,
) -> CardSheet<PlanParts> {
    let (card, parts) = told(plan, pinned, labour, words);
    CardSheet::new(card, parts, paper)
}

/// The same in large type.
pub(super) fn large_card(
    plan: &Plan,
    pinned: Option<(&Tube, &Layout)>,
    labour: &Labour,
    paper: Paper,
    words: &Words,
) -> CardSheet<PlanParts> {
    let (card, parts) = told(plan, pinned, labour, words);
    CardSheet::large(card, parts, paper)
}

fn told(
    plan: &Plan,
    pinned: Option<(&Tube, &Layout)>,
    labour: &Labour,
    words: &Words,
) -> (Card, PlanParts) {
    let words = words.on(plan.rims());
    let script = Script::new(plan.clone(), AtOnce::WholeLeg);
    let mut facts = vec![words.facts(&script).into()];
    facts.extend(words.card_facts(plan, pinned));
    facts.extend(words.card_rigging(&script));
    facts.push(words.labour(labour));
    let card = Card {
        title: words.tie_line(plan),
        facts,
        heads: ["card-head-leg", "card-head-way", "card-head-crossings"]
            .map(|head| words.plainly(head, &[])),
        after_head: words.plainly("card-after", &[]),
        after: words.card_after(&script),
        ends_head: words.plainly("card-ends", &[]),
        cautions_head: words.plainly("card-cautions", &[]),
        cautions: words.card_cautions(),
    };
    (card, PlanParts { script, words })
}

impl CardParts for PlanParts {
    fn rows(&self) -> Box<dyn Iterator<Item = CardRow> + '_> {
        Box::new(self.script.steps().flat_map(|step| self.rows_of(&step)))
    }

    fn ends(&self) -> Box<dyn Iterator<Item = CardEnd> + '_> {
        let tucks = self.script.steps().filter(|step| {
            let What::Finish(finish) = &step.what else {
                return false;
            };
            matches!(finish.task, FinishTask::Tuck(_))
        });
        let captions = self.captions();
        Box::new(tucks.map(move |step| CardEnd {
            text: self.words.show(self.script.plan().knot(), &step).in_words(),
            subject: Subject::of(&self.script, &step).captioned(&captions),
        }))
    }

    fn scene(&self, frame: Viewport) -> Scene {
        let tied = Subject::tied(self.script.plan(), Moment::Finished).captioned(&self.captions());
        tied.scene(View::RoundTheTube, frame)
    }

    fn foot(&self, page: usize, pages: usize) -> String {
        self.words.sheet_page(page, pages)
    }
}

impl PlanParts {
    /// What is written in its pictures.
    fn captions(&self) -> Captions {
        self.words.captions(self.script.plan())
    }

    /// What a step adds to the table.
    fn rows_of(&self, step: &Step) -> impl Iterator<Item = CardRow> + use<> {
        let (words, plan) = (&self.words, self.script.plan());
        let head = match step.place {
            Place::Begin { pass, strand } => {
                let start = plan.start_pin(pass, strand);
                let head = words.card_pass(pass, strand, plan.knot().strands(), start);
                Some(CardRow::Pass(head))
            }
            _ => None,
        };
        let leg = match &step.what {
            What::Lay(lay) => {
                let crossings = lay.crossings.iter();
                Some(CardRow::Leg(LegLine {
                    number: lay.pass_leg.leg.to_string(),
                    way: words.card_way(lay),
                    crossings: crossings
                        .map(|crossing| (crossing.over, words.card_crossing(crossing)))
                        .collect(),
                }))
            }
            _ => None,
        };
        head.into_iter().chain(leg)
    }
}
