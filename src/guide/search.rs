//! Finding a lost place by a few questions.

use crate::knot::{PassLeg, Pin, Rim};

use super::{Place, Script};

/// A question to a tyer who has lost the place, to be answered with yes or no.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Plan, Question, Script, Search};
/// use marlinspeak::knot::Pin;
///
/// // Where the record says that nothing is laid, the tail at bottom pin 1 is asked for first.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::default());
/// let search = Search::new(&script, script.first());
/// assert_eq!(search.question(), Some(Question::LastPin(Pin::bottom(1))));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Question {
    /// Did the cord in hand go round this pin last, or begin there?
    LastPin(Pin),
    /// Have so many cords come to this pin?
    Came {
        /// The pin that is looked at.
        pin: Pin,
        /// Cords that have come to it, the one in hand among them.
        cords: u16,
    },
    /// Is there nothing of the cord in hand at this pin but its tail?
    OnlyTail {
        /// The pin that is looked at.
        pin: Pin,
        /// The pass that would begin there.
        pass: u16,
    },
    /// Has another strand come home to its pin so many times?
    CameHome {
        /// The pin where that strand began.
        pin: Pin,
        /// How many times it should have come back there.
        times: u16,
    },
    /// Has the cord crossed so many times or more since that pin, or nothing when it is 0?
    Crossed {
        /// The pin that the cord went round last.
        pin: Pin,
        /// Crossings made since then.
        crossings: u16,
    },
}

/// Finding a lost place by at most three questions: which pin, how many cords on it, how many
/// crossings since. Each is put as one likely answer after the other, the likeliest first.
///
/// ```
/// use marlinspeak::guide::{AtOnce, Place, Plan, Question, Script, Search};
/// use marlinspeak::knot::{PassLeg, Pin};
///
/// // The record stands at leg 9 of 5 lead 7 bight, but the cord went round top pin 2 already,
/// // where leg 9 lands.
/// let script = Script::new(Plan::read("5", "7", "1", "1")?, AtOnce::WholeLeg);
/// let leg = |leg| Place::lay(PassLeg { pass: 1, strand: 1, leg });
/// let mut search = Search::new(&script, leg(9));
/// while let Some(question) = search.question() {
///     match question {
///         Question::LastPin(pin) if pin != Pin::top(2) => search.no(),
///         _ => search.yes(&script),
///     }
/// }
/// assert_eq!(search.found(), Some(leg(10)));
/// # Ok::<(), marlinspeak::knot::KnotError>(())
/// ```
#[derive(Clone, Debug)]
pub struct Search {
    pins: Vec<Pin>,
    passes: u16,
    recorded: Place,
    stage: SearchStage,
    /// The answer that is proposed now, from 0; it starts anew after the last.
    proposal: usize,
}

#[derive(Clone, Debug)]
enum SearchStage {
    Pin,
    Cords(Vec<Question>),
    /// Each with the place that a yes leads to.
    Since(Vec<(Question, Place)>),
    Found(Place),
}

impl Search {
    /// Begins a search near the place that was recorded.
    pub fn new(script: &Script, recorded: Place) -> Self {
        let laying = script.plan.laying();
        let recorded = script.settle(recorded);
        let whereabouts = script.whereabouts(recorded);
        // From the recorded pin outwards, back before on: who loses count is sooner ahead of
        // the record than behind it by a press too many, or behind by one forgotten.
        let mut pins = vec![whereabouts.at];
        let laid = script.progress(recorded).laid;
        let landing = |laid: u32| {
            let pass_leg = laying.nth_leg(laid.checked_sub(1)?)?;
            laying.leg(pass_leg).map(|leg| leg.to)
        };
        let all = script.plan.knot().lattice().legs() as usize;
        // Where a strand begins, the last landing is that of another cord: it comes next.
        for apart in 0..=laying.legs() {
            if pins.len() == all {
                break;
            }
            for pin in [
                laid.checked_sub(apart).and_then(landing),
                landing(laid + apart),
            ] {
                pins.extend(pin.filter(|pin| !pins.contains(pin)));
            }
        }
        Self {
            pins,
            passes: laying.passes(),
            recorded,
            stage: SearchStage::Pin,
            proposal: 0,
        }
    }

    /// The question that stands, or `None` when the place is found.
    pub fn question(&self) -> Option<Question> {
        match &self.stage {
            SearchStage::Pin => self.pins.get(self.proposal).copied().map(Question::LastPin),
            SearchStage::Cords(questions) => questions.get(self.proposal).copied(),
            SearchStage::Since(answers) => answers.get(self.proposal).map(|answer| answer.0),
            SearchStage::Found(_) => None,
        }
    }

    /// The place, when it is found.
    pub fn found(&self) -> Option<Place> {
        match self.stage {
            SearchStage::Found(place) => Some(place),
            _ => None,
        }
    }

    /// Takes a no: the next likely answer is proposed.
    pub fn no(&mut self) {
        let proposals = match &self.stage {
            SearchStage::Pin => self.pins.len(),
            SearchStage::Cords(questions) => questions.len(),
            SearchStage::Since(answers) => answers.len(),
            SearchStage::Found(_) => 1,
        };
        self.proposal = (self.proposal + 1) % proposals.max(1);
    }

    /// Takes a yes: the next question follows, or the place is found.
    pub fn yes(&mut self, script: &Script) {
        let Some(question) = self.question() else {
            return;
        };
        let proposal = std::mem::take(&mut self.proposal);
        self.stage = match question {
            Question::LastPin(pin) => self.ask_for_cords(script, pin),
            Question::Came { pin, cords } => {
                let leg = script.plan.knot().leg_to(pin);
                Self::ask_what_came_since(script, script.plan.laying().pass_leg_of(cords, leg))
            }
            Question::OnlyTail { pin, pass } => {
                let strand = script.plan.knot().leg_from(pin).strand;
                let begin = Place::begin(pass, strand);
                match Self::crossings_since(script, pin, begin) {
                    answers if answers.len() > 1 => SearchStage::Since(answers),
                    _ => SearchStage::Found(begin),
                }
            }
            Question::CameHome { .. } | Question::Crossed { .. } => match &self.stage {
                SearchStage::Since(answers) => answers
                    .get(proposal)
                    .map_or(SearchStage::Pin, |answer| SearchStage::Found(answer.1)),
                _ => return,
            },
        };
    }

    fn ask_for_cords(&self, script: &Script, pin: Pin) -> SearchStage {
        let plan = &script.plan;
        let mut questions: Vec<Question> = (1..=self.passes)
            .map(|cords| Question::Came { pin, cords })
            .collect();
        let strand = plan.knot().leg_from(pin).strand;
        let begins =
            |pass: &u16| plan.begins_a_cord(*pass, strand) && plan.start_pin(*pass, strand) == pin;
        if pin.rim == Rim::Bottom {
            let tails = (1..=self.passes).filter(begins);
            questions.extend(tails.map(|pass| Question::OnlyTail { pin, pass }));
        }
        // A pin where a cord begins is soon looked at: that question comes first, since there a
        // tail could be counted as a cord. Then what the record says.
        let pass = script.whereabouts(self.recorded).pass;
        questions.sort_by_key(|question| match *question {
            Question::OnlyTail { pass: begun, .. } => (false, begun.abs_diff(pass)),
            Question::Came { cords, .. } => (true, cords.abs_diff(pass)),
            _ => (true, u16::MAX),
        });
        SearchStage::Cords(questions)
    }

    /// Asks what the cord did since the leg of `pass_leg` landed.
    fn ask_what_came_since(script: &Script, pass_leg: PassLeg) -> SearchStage {
        let plan = &script.plan;
        let Some(pin) = plan.laying().leg(pass_leg).map(|leg| leg.to) else {
            return SearchStage::Pin;
        };
        let after = script.after_leg(pass_leg);
        let own = if script.ends_a_pass(pass_leg) {
            Place::begin(pass_leg.pass + 1, pass_leg.strand)
        } else {
            after
        };
        if pass_leg.pass == plan.laying().passes() && own != after {
            // The cord has come to its end.
            return SearchStage::Found(after);
        }
        if matches!(own, Place::Begin { pass, strand } if plan.begins_a_cord(pass, strand)) {
            // It goes no further: the next pass has a cord of its own.
            return SearchStage::Found(after);
        }
        let mut answers = Self::crossings_since(script, pin, own);
        if own != after {
            // The same cord goes on only when every strand has been laid in between; until it
            // crosses something, only another strand tells.
            let (crossed_nothing, crossed): (Vec<_>, Vec<_>) = answers
                .into_iter()
                .partition(|(_, place)| place.crossings_behind() == 0);
            let (other, times) = if pass_leg.strand < plan.knot().strands() {
                (pass_leg.strand + 1, pass_leg.pass)
            } else {
                (1, pass_leg.pass + 1)
            };
            let question = Question::CameHome {
                pin: plan.start_pin(1, other),
                times,
            };
            answers = crossed;
            answers.push((question, own));
            answers.extend(crossed_nothing.into_iter().map(|(asked, _)| (asked, after)));
        }
        if answers.len() > 1 {
            SearchStage::Since(answers)
        } else {
            SearchStage::Found(after)
        }
    }

    /// How many crossings may have been made since the pin on the leg that `place` begins, each
    /// with its place; the most first.
    fn crossings_since(script: &Script, pin: Pin, place: Place) -> Vec<(Question, Place)> {
        let Some(pass_leg) = place.laying() else {
            return Vec::new();
        };
        let crossings = script.met(pass_leg);
        let at_once = script.told_at_once(pass_leg);
        let mut begins: Vec<u16> = (0..at_once.parts(crossings))
            .map(|part| at_once.begins(part, crossings))
            .collect();
        // Asked as "so many or more", the most first: a hand between two of them has an answer.
        begins.reverse();
        let answer = |crossings| {
            let here = match crossings {
                0 => place,
                crossing => Place::Lay { pass_leg, crossing },
            };
            (Question::Crossed { pin, crossings }, here)
        };
        begins.into_iter().map(answer).collect()
    }
}
