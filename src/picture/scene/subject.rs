//! What a picture is of: a step of a tie, a finished knot, the rings.

use super::knot::{KnotScene, Sight};
use super::mark::Mark;
use super::model::Scene;
use super::moment::Moment;
use super::rings::RingTold;
use super::view::{View, Viewport};
use crate::bench::{FitAnswer, Ground, KnotShape, Layout, Tube};
use crate::guide::{Captions, LiftTask, Plan, Rigging, Script, Step, TakeBack, Task, What};
use crate::knot::{Hand, Knot, Laying, Rim, Side};

/// What a picture is of.
#[derive(Clone, Debug, PartialEq)]
#[expect(
    clippy::large_enum_variant,
    reason = "a screen has few, and most of them are of knots"
)]
pub enum Subject {
    /// A knot on its tube.
    Knot {
        /// The knot and its passes.
        laying: Laying,
        /// The side that followers keep to.
        side: Side,
        /// The way round that the tyer works.
        hand: Hand,
        /// How far the tie has come.
        moment: Moment,
        /// The finished knot, when it is to be shown in its proportions.
        shape: Option<KnotShape>,
        /// What it lies on; `None` for a straight tube.
        ground: Option<Ground>,
        /// Whether its bights are held by pins, and not at marks or on fingers.
        has_pins: bool,
        /// What is written in it.
        captions: Captions,
    },
    /// A knot with a part of it pointed at.
    Marked {
        /// The knot.
        of: Box<Self>,
        /// What is pointed at.
        mark: Mark,
    },
    /// A knot whose cord in hand is on its way.
    GoingIn {
        /// The knot with all of what is told in its place.
        into: Box<Self>,
        /// How many of the crossings that are told the cord has come past.
        past: usize,
    },
    /// The rings, rolled out.
    Rings {
        /// Where the pins go.
        layout: Layout,
        /// Holes in every row of a ring.
        rows: Vec<u16>,
        /// The way round that the tyer works.
        hand: Hand,
        /// How the bottom ring is shown, and the top one.
        told: [RingTold; 2],
    },
}

impl Subject {
    /// What there is to see while a step of a script is told: the rings while the tube is
    /// rigged, the knot in its proportions once it is off the tube, and else what lies on it.
    pub fn of(script: &Script, step: &Step) -> Self {
        let plan = script.plan();
        match (&step.what, script.rig(), plan.setup()) {
            (What::Kit(_) | What::Rig(_), Some(rig), Some(setup)) if !setup.ground().is_flat() => {
                Self::rings(&rig.layout, &setup.tube, plan.hand).telling(script, &step.what)
            }
            (What::Fair(_) | What::Finish(_), Some(rig), _) => {
                let moment = Moment::of_step(step);
                // While an end is tucked away the cords are drawn apart and the bights with their
                // numbers, so that its way can be followed.
                let shape = Some(rig.shape).filter(|_| !matches!(moment, Moment::Tucking { .. }));
                Self::at(plan, moment, shape).covering(plan)
            }
            (What::Fair(_) | What::Finish(_), None, _) => {
                Self::at(plan, Moment::of_step(step), None).covering(plan)
            }
            (What::Lift(lift), ..)
                if matches!(lift.task, LiftTask::SlipOff | LiftTask::OverBall) =>
            {
                Self::at(plan, Moment::of_step(step), None).covering(plan)
            }
            _ => Self::at(plan, Moment::of_step(step), None),
        }
    }

    /// The same on what it covers, which it is tied for.
    fn covering(self, plan: &Plan) -> Self {
        let Some(setup) = plan.setup() else {
            return self;
        };
        let circles = plan.rig().ok().flatten().map(|rig| &rig.layout);
        match (setup.ground(), circles) {
            (Ground::Flat { .. }, Some(Layout::Board(board))) => self.on(Ground::Flat {
                outer: board.across(),
                hole: Some(board.inner.across()),
            }),
            (ground, _) => self.on(ground),
        }
    }

    /// The same on a ground: a taper, a ball and a board have a form of their own.
    #[must_use]
    pub fn on(self, on: Ground) -> Self {
        match self {
            Self::Knot {
                laying,
                side,
                hand,
                moment,
                shape,
                has_pins,
                captions,
                ..
            } => Self::Knot {
                laying,
                side,
                hand,
                moment,
                shape,
                has_pins,
                captions,
                ground: Some(on).filter(|on| !matches!(on, Ground::Round(_))),
            },
            Self::Marked { of, mark } => of.on(on).marked(mark),
            Self::GoingIn { into, past } => Self::GoingIn {
                into: Box::new(into.on(on)),
                past,
            },
            Self::Rings { .. } => self,
        }
    }

    /// Whether it is a knot on a board: as wide as it is tall, where it is not rolled out.
    pub fn is_on_board(&self) -> bool {
        match self {
            Self::Knot { ground, .. } => ground.is_some_and(|ground| ground.is_flat()),
            Self::Marked { of, .. } => of.is_on_board(),
            Self::GoingIn { into, .. } => into.is_on_board(),
            Self::Rings { .. } => false,
        }
    }

    /// The same with these words written in it.
    #[must_use]
    pub fn captioned(mut self, words: &Captions) -> Self {
        self.caption(words);
        self
    }

    fn caption(&mut self, words: &Captions) {
        match self {
            Self::Knot { captions, .. } => captions.clone_from(words),
            Self::Marked { of, .. } => of.caption(words),
            Self::GoingIn { into, .. } => into.caption(words),
            Self::Rings { .. } => {}
        }
    }

    /// What there is to see while a leg is taken back.
    pub fn taking_back(script: &Script, back: &TakeBack) -> Self {
        Self::at(script.plan(), Moment::of_take_back(back), None)
    }

    /// The knot of an answer to what fits, in its proportions; nothing for counts that make no
    /// knot.
    pub fn answer(answer: &FitAnswer, hand: Hand, side: Side) -> Option<Self> {
        let knot = Knot::woven(answer.counts.lattice(), answer.weave()).ok()?;
        Self::answer_of(knot, answer, hand, side)
    }

    /// This knot in the proportions of an answer that is about it.
    pub fn answer_of(knot: Knot, answer: &FitAnswer, hand: Hand, side: Side) -> Option<Self> {
        let plan = Plan::new(knot, answer.counts.passes(), side, hand).ok()?;
        Some(Self::at(&plan, Moment::Done, Some(answer.shape)))
    }

    /// The finished knot of a plan: in its own proportions when tube and cord are named.
    pub fn finished(plan: &Plan) -> Self {
        let rig = plan.rig().unwrap_or_default();
        Self::at(plan, Moment::Done, rig.map(|rig| rig.shape)).covering(plan)
    }

    /// The rings of a tube pinned like this.
    pub fn rings(layout: &Layout, tube: &Tube, hand: Hand) -> Self {
        Self::Rings {
            layout: layout.clone(),
            rows: tube.rows().unwrap_or_default().to_vec(),
            hand,
            told: [RingTold::Now; 2],
        }
    }

    /// The rings with nothing lit but what a step of bag or rigging tells.
    fn telling(mut self, script: &Script, what: &What) -> Self {
        let of_rim = |task: &Task, of: Rim| match task {
            Task::Pins { rim, .. } | Task::Strip { rim, .. } => *rim == of,
            Task::Nest { .. } => true,
            _ => false,
        };
        if let (Self::Rings { told, .. }, What::Rig(step)) = (&mut self, what) {
            let tasks = script.rigging().map_or(&[][..], Rigging::tasks);
            let before = usize::from(step.number.saturating_sub(1)).min(tasks.len());
            *told = [Rim::Bottom, Rim::Top].map(|rim| {
                if step.things.iter().any(|task| of_rim(task, rim)) {
                    RingTold::Now
                } else if tasks[..before].iter().any(|task| of_rim(task, rim)) {
                    RingTold::Besides
                } else {
                    RingTold::Later
                }
            });
        } else if let Self::Rings { told, .. } = &mut self {
            *told = [RingTold::Besides; 2];
        }
        self
    }

    /// The knot of a plan on what it is tied on, as far as it is laid.
    pub fn tied(plan: &Plan, moment: Moment) -> Self {
        Self::at(plan, moment, None)
    }

    /// The knot of a plan on its tube, as far as it is laid.
    pub(super) fn tying(plan: &Plan, moment: Moment) -> Self {
        Self::at(plan, moment, None)
    }

    /// The knot of a plan off its tube, in these proportions.
    pub(super) fn shaped(plan: &Plan, moment: Moment, shape: KnotShape) -> Self {
        Self::at(plan, moment, Some(shape))
    }

    /// The same with a part of it pointed at.
    #[must_use]
    pub fn marked(self, mark: Mark) -> Self {
        Self::Marked {
            of: Box::new(self),
            mark,
        }
    }

    /// One picture after the other in which the cord in hand goes in, crossing by crossing, or several
    /// of them at once where there are more than `most`; the first and the last are the picture itself,
    /// whole. A tube on which nothing goes in is one picture that stands still.
    pub fn film(self, most: usize) -> Vec<Self> {
        let crossings = self.crossings_in_hand();
        let stops = crossings.min(most);
        if stops < 2 {
            return vec![self];
        }
        let going_in = (1..stops).map(|stop| Self::GoingIn {
            into: Box::new(self.clone()),
            past: stop * crossings / stops,
        });
        let mut film = vec![self.clone()];
        film.extend(going_in);
        film.push(self);
        film
    }

    /// How many crossings are told of the cord that goes in. One that is taken back does not: it
    /// lies there until the hand has drawn it out.
    fn crossings_in_hand(&self) -> usize {
        let Self::Knot { laying, moment, .. } = self else {
            return 0;
        };
        match moment {
            Moment::At {
                pass_leg,
                crossings,
            } => {
                let all = laying.crossings(*pass_leg).count();
                crossings.end.min(all).saturating_sub(crossings.start)
            }
            Moment::Tucking { crossings, .. } => crossings.len(),
            _ => 0,
        }
    }

    fn at(plan: &Plan, moment: Moment, shape: Option<KnotShape>) -> Self {
        let of_tube = Self::Knot {
            laying: plan.laying().clone(),
            side: plan.side,
            hand: plan.hand,
            moment,
            shape,
            ground: None,
            has_pins: plan.rims().has_pins(),
            captions: Captions::default(),
        };
        match plan.setup() {
            Some(setup) if setup.in_place || setup.ground().is_flat() => of_tube.covering(plan),
            _ => of_tube,
        }
    }

    /// The picture in a view of the tube; rings are always rolled out.
    pub fn scene(&self, view: View, viewport: Viewport) -> Scene {
        self.scene_beside(view, viewport, 0.0)
    }

    /// The same with so much kept free on the right.
    fn scene_beside(&self, view: View, viewport: Viewport, beside: f32) -> Scene {
        match self {
            Self::Marked { of, mark } => of
                .scene_beside(view, viewport, mark.beside(viewport.usable().width))
                .turned_to(view, *mark)
                .marked(*mark),
            Self::GoingIn { into, past } => {
                into.scene_beside(view, viewport, beside).going_in(*past)
            }
            Self::Rings {
                layout,
                rows,
                hand,
                told,
            } => Scene::rings(layout, rows, *hand, viewport).telling(*told),
            Self::Knot {
                laying,
                side,
                hand,
                moment,
                shape,
                ground,
                has_pins,
                captions,
            } => {
                let sight = Sight {
                    view,
                    ground: *ground,
                    has_pins: *has_pins,
                    captions,
                    viewport: viewport.usable(),
                    beside,
                };
                Scene::of(match shape {
                    Some(shape) => KnotScene::finished(sight, laying, *side, *hand, moment, shape),
                    None => KnotScene::tied(sight, laying, *side, *hand, moment),
                })
            }
        }
    }
}
