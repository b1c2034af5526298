//! What a word of the trade and a lesson look like: pictures of small knots of the loft, one after
//! another where something moves.

use super::mark::Mark;
use super::moment::Moment;
use super::subject::Subject;
use crate::bench::{
    BenchError, Braid, Counts, LengthError, Millimetres, ShapeError, Tube, pinning,
};
use crate::guide::{GlossaryWord, Plan};
use crate::knot::{KnotError, PassLeg, Pin};

/// Why a picture could not be made: an example of this module is no knot, or does not go on its tube.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum IllustrationError {
    /// The knot can't be tied.
    #[error(transparent)]
    Knot(#[from] KnotError),
    /// A length is out of bounds.
    #[error(transparent)]
    Length(#[from] LengthError),
    /// The tube or the cord cannot be as it is described.
    #[error(transparent)]
    Bench(#[from] BenchError),
    /// The cord does not go round the tube so often.
    #[error(transparent)]
    Shape(#[from] ShapeError),
    /// The rings have no holes for its pins.
    #[error("no row of holes for {0} pins")]
    Pins(u16),
}

/// Diameter of the loft's tube and of its cord, in millimetres, and holes in the rows of its rings.
const TUBE: &str = "45mm";
const CORD: &str = "4mm";
const ROWS: [u16; 2] = [14, 20];

/// The leg of a lead pass that is shown going in: most cords lie there, and it ends in front.
const fn shown(leg: u16) -> PassLeg {
    PassLeg {
        pass: 1,
        strand: 1,
        leg,
    }
}

impl Subject {
    /// What a word of the trade looks like: one picture, or several that follow one another; the last
    /// one stays.
    ///
    /// # Errors
    /// [`IllustrationError`] when an example could not be built.
    pub fn of_word(word: GlossaryWord) -> Result<Vec<Self>, IllustrationError> {
        let bell = Plan::read("3", "5", "1", "1")?;
        let tiller = Plan::read("5", "7", "1", "1")?;
        let doubled = Plan::read("5", "7", "2", "1")?;
        let finished = |plan: &Plan| Self::tying(plan, Moment::Laid);
        let one = |subject: Self| Ok(vec![subject]);
        match word {
            GlossaryWord::Lead => one(finished(&tiller).marked(Mark::Leads)),
            GlossaryWord::Bight => one(finished(&tiller).marked(Mark::Bight(Pin::top(1)))),
            GlossaryWord::Pass => Ok(vec![
                finished(&tiller),
                finished(&doubled),
                finished(&Plan::read("5", "7", "3", "1")?),
            ]),
            GlossaryWord::Leg => one(Self::tying(&tiller, Moment::Fairing(shown(7)))),
            GlossaryWord::Round => Ok([7, 8]
                .map(|leg| Self::tying(&tiller, Moment::Fairing(shown(leg))))
                .to_vec()),
            // There are as many strands as the greatest common divisor of four and six: two.
            GlossaryWord::Strand => one(finished(&Plan::read("4", "6", "1", "1")?)),
            GlossaryWord::StandingEnd => {
                let begun = Self::tying(&bell, Moment::at(shown(1)));
                one(begun.marked(Mark::StandingEnd(Pin::bottom(1))))
            }
            GlossaryWord::WorkingEnd => {
                let under_way = Self::tying(&bell, Moment::at(shown(6)));
                one(under_way.marked(Mark::WorkingEnd))
            }
            GlossaryWord::Crossing => one(finished(&tiller).marked(Mark::Crossings(None))),
            GlossaryWord::OverUnder => {
                Ok(Self::tying(&tiller, Moment::at(shown(13))).film(usize::MAX))
            }
            GlossaryWord::Tuck => {
                let under = Moment::At {
                    pass_leg: shown(13),
                    crossings: 1..2,
                };
                one(Self::tying(&tiller, under))
            }
            GlossaryWord::Weave => Ok(vec![
                finished(&tiller),
                finished(&Plan::read("5", "7", "1", "2")?),
            ]),
            GlossaryWord::Follow => {
                let legs = [1, 2, 3, 4].map(|leg| PassLeg {
                    pass: 2,
                    ..shown(leg)
                });
                Ok(legs
                    .map(|leg| Self::tying(&doubled, Moment::at(leg)))
                    .to_vec())
            }
            GlossaryWord::Snug => Ok(vec![finished(&doubled), Self::drawn_up(&doubled)?]),
            GlossaryWord::Fair => Ok([1, 2, 3, 4]
                .map(|leg| Self::tying(&tiller, Moment::Fairing(shown(leg))))
                .to_vec()),
            GlossaryWord::Tube => one(Self::tying(&bell, Moment::Bare)),
            GlossaryWord::Pin => one(Self::tying(&bell, Moment::Bare).marked(Mark::Pins)),
            GlossaryWord::Stagger => {
                one(Self::tying(&bell, Moment::Bare).marked(Mark::Stagger(Pin::top(1))))
            }
            GlossaryWord::Rim => one(finished(&tiller).marked(Mark::Rims)),
            GlossaryWord::Row => Ok(vec![
                Self::holes(&tiller)?,
                finished(&tiller).marked(Mark::Crossings(Some(2))),
            ]),
            GlossaryWord::Ring => one(Self::holes(&tiller)?),
            // The first cord whole, and the second laced through it.
            GlossaryWord::Nested => {
                let woven = Plan::read_nested(["3", "5", "2", ""], "1", "")?;
                let second = PassLeg {
                    strand: 2,
                    ..shown(1)
                };
                Ok(vec![
                    Self::tying(&woven, Moment::Before(second)),
                    finished(&woven),
                ])
            }
        }
    }

    /// The knot of a lesson: its hardest leg goes in, and then it stands finished.
    pub fn of_lesson(plan: &Plan) -> Vec<Self> {
        let laying = plan.laying();
        let last = PassLeg {
            pass: laying.passes(),
            strand: plan.knot().strands(),
            leg: plan.knot().legs_of(plan.knot().strands()),
        };
        let mut film = Self::tying(plan, Moment::at(last)).film(usize::MAX);
        film.push(Self::tying(plan, Moment::Laid));
        film
    }

    /// The rings of the loft, pinned for a knot.
    fn holes(plan: &Plan) -> Result<Self, IllustrationError> {
        let tube = Tube::ringed(Millimetres::parse(TUBE)?, &ROWS)?;
        let knot = plan.knot();
        let layout = pinning(&tube, knot.lattice());
        let layout = layout.ok_or(IllustrationError::Pins(knot.bights()))?;
        Ok(Self::rings(&layout, &tube, plan.hand))
    }

    /// The doubled knot drawn up on the loft's tube, in its own proportions.
    fn drawn_up(plan: &Plan) -> Result<Self, IllustrationError> {
        let knot = plan.knot();
        let counts = Counts::new(knot.leads(), knot.bights(), plan.laying().passes())?;
        let [cord, tube] = [Millimetres::parse(CORD)?, Millimetres::parse(TUBE)?];
        let shape = Braid::new(counts, cord, tube).tight()?;
        Ok(Self::shaped(plan, Moment::Laid, shape))
    }
}
