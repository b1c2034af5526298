//! The scene: all that is to be seen in one picture.

use super::crossings::CrossingPoint;
use super::knot::{KnotScene, Sight};
use super::mark::Mark;
use super::moment::Moment;
use super::rings::{RingTold, RingsScene};
use super::view::{View, Viewport};
use crate::bench::{KnotShape, Layout};
use crate::guide::Captions;
use crate::knot::{Hand, Laying, Rim, Side};

/// All that is to be seen in one picture, worked out for its size: a knot on its tube, or the rings
/// with their pins.
#[derive(Clone, Debug)]
pub struct Scene {
    viewport: Viewport,
    content: Content,
    mark: Option<Mark>,
}

/// What there can be to see.
#[derive(Clone, Debug)]
pub enum Content {
    /// A knot on its tube.
    Knot(Box<KnotScene>),
    /// The rings, rolled out.
    Rings(RingsScene),
}

impl Scene {
    /// What there is to see of `laying` when it has come as far as `moment`, followers lying on
    /// `side` of the cord they follow, for a tyer of this hand.
    ///
    /// Only what can be seen is worked out. A leg that the tie does not have shows the bare
    /// tube.
    pub fn build(
        view: View,
        laying: &Laying,
        side: Side,
        hand: Hand,
        moment: &Moment,
        viewport: Viewport,
    ) -> Self {
        let sight = Sight {
            view,
            ground: None,
            has_pins: true,
            captions: &Captions::default(),
            viewport: viewport.usable(),
            beside: 0.0,
        };
        Self::of(KnotScene::tied(sight, laying, side, hand, moment))
    }

    /// The finished knot in the proportions that were computed for it, without pins or
    /// numbers. `moment` is finished, or fairing: then the leg that is faired is bright.
    ///
    /// Cords are drawn a little thinner than they are where their bights would run into one
    /// another, and so that they can be told apart.
    pub fn finished(
        view: View,
        laying: &Laying,
        side: Side,
        hand: Hand,
        moment: &Moment,
        shape: &KnotShape,
        viewport: Viewport,
    ) -> Self {
        let sight = Sight {
            view,
            ground: None,
            has_pins: true,
            captions: &Captions::default(),
            viewport: viewport.usable(),
            beside: 0.0,
        };
        Self::of(KnotScene::finished(
            sight, laying, side, hand, moment, shape,
        ))
    }

    /// Both rings of a tube cut open and laid flat, the top one above: all their holes, a pin
    /// in each hole that takes one with its number, and the numbers of those holes beside
    /// them. `rows` are the holes of every row of a ring; none for a tube without rings, which
    /// shows the marks alone. Numbers run the way the cord of a tyer of this hand travels.
    pub fn rings(layout: &Layout, rows: &[u16], hand: Hand, viewport: Viewport) -> Self {
        let viewport = viewport.usable();
        Self {
            viewport,
            content: Content::Rings(RingsScene::new(layout, rows, hand, viewport)),
            mark: None,
        }
    }

    /// The same with the rings as a step tells them.
    pub(super) fn telling(mut self, told: [RingTold; 2]) -> Self {
        if let Content::Rings(rings) = &mut self.content {
            rings.told = told;
        }
        self
    }

    pub(super) fn of(knot: KnotScene) -> Self {
        Self {
            viewport: knot.viewport,
            content: Content::Knot(Box::new(knot)),
            mark: None,
        }
    }

    /// The same with a part of the knot pointed at.
    #[must_use]
    pub fn marked(self, mark: Mark) -> Self {
        Self {
            mark: Some(mark),
            ..self
        }
    }

    /// The same turned so that what is pointed at is in front, where it is not in sight already.
    #[must_use]
    pub(super) fn turned_to(mut self, view: View, mark: Mark) -> Self {
        if let Content::Knot(knot) = &mut self.content {
            knot.turn_to(view, mark);
        }
        self
    }

    /// The same while the cord in hand has come past so many of the crossings that are told, and no
    /// farther. All else stays where it is.
    #[must_use]
    pub(super) fn going_in(mut self, past: usize) -> Self {
        if let Content::Knot(knot) = &mut self.content
            && let Some(active) = &mut knot.laid.active
        {
            active.go_in(past);
        }
        self
    }

    /// Whether what is pointed at is in front and in the picture.
    pub fn is_marked_in_sight(&self) -> bool {
        let shapes = self.knot().zip(self.mark);
        shapes.is_some_and(|(knot, mark)| !knot.mark_shapes(mark).is_empty())
    }

    /// What of the knot is pointed at.
    pub(in crate::picture) const fn mark(&self) -> Option<Mark> {
        self.mark
    }

    /// The size of the picture it was worked out for.
    pub const fn viewport(&self) -> Viewport {
        self.viewport
    }

    /// What there is to see.
    pub(in crate::picture) const fn content(&self) -> &Content {
        &self.content
    }

    const fn knot(&self) -> Option<&KnotScene> {
        match &self.content {
            Content::Knot(knot) => Some(knot),
            Content::Rings(_) => None,
        }
    }

    /// Whether the whole knot would be too small to follow, so that only the surroundings of
    /// the part in hand are shown.
    pub fn is_zoomed(&self) -> bool {
        self.knot().is_some_and(|knot| knot.layout.zoomed)
    }

    /// Width of the whole knot from edge to edge, in pixels along the tube; 0 in a picture
    /// without cords.
    pub fn knot_width(&self) -> f32 {
        self.knot().map_or(0.0, |knot| {
            let rims = [Rim::Bottom, Rim::Top].map(|rim| knot.layout.overhang(rim));
            knot.layout.top() + rims[0] + rims[1]
        })
    }

    /// Once round the tube, in pixels of its surface; 0 in a picture without cords.
    pub fn round(&self) -> f32 {
        self.knot().map_or(0.0, |knot| knot.layout.round())
    }

    /// Every crossing of two cords that can be seen, once each. The cord in hand counts as
    /// laid.
    pub fn crossing_points(&self) -> Vec<CrossingPoint> {
        self.knot()
            .map_or_else(Vec::new, KnotScene::crossing_points)
    }
}
