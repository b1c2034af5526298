//! The ends on a card: where each is tucked away, with its picture.

use std::ops::ControlFlow;

use super::card::{CardEnd, CardParts};
use super::card_flow::{CardFlow, SCALE};
use super::card_sizes::Sizes;
use super::page::wrapped;
use crate::picture::draw::Weight;
use crate::picture::scene::{Scene, View, Viewport};

impl<P: CardParts> CardFlow<'_, P> {
    /// Every end, close together two in a row.
    pub(super) fn ends(&mut self) -> ControlFlow<()> {
        let abreast = if self.sizes.is_close { 2 } else { 1 };
        let parts = self.parts;
        let mut ends = parts.ends();
        let mut is_first = true;
        loop {
            let row: Vec<CardEnd> = ends.by_ref().take(abreast).collect();
            if row.is_empty() {
                return ControlFlow::Continue(());
            }
            self.row_of_ends(&row, is_first)?;
            is_first = false;
        }
    }

    /// The sentences of each end and its picture beside them; close together the picture is below them.
    fn row_of_ends(&mut self, row: &[CardEnd], is_first: bool) -> ControlFlow<()> {
        let Sizes {
            margin,
            text,
            step,
            end: [height, width],
            is_close,
            ..
        } = self.sizes;
        let gap = 6.0;
        let column = if is_close {
            (self.right() - margin - gap) / 2.0
        } else {
            self.right() - margin
        };
        let frame = Viewport::new(width * SCALE, height * SCALE);
        let scenes = row.iter().map(|end| {
            let scene = end.subject.scene(View::RolledOut, frame);
            // A knot that is too large for the picture is told in words alone, which have its room.
            (!scene.is_zoomed()).then_some(scene)
        });
        let scenes: Vec<Option<Scene>> = scenes.collect();
        let words = |scene: &Option<Scene>| match scene {
            Some(_) if !is_close => column - width - gap,
            _ => column,
        };
        let lines = row.iter().zip(&scenes).map(|(end, scene)| {
            let lines = wrapped(&end.text, text, Weight::Regular, words(scene));
            lines.iter().fold(0.0, |count: f32, _| count + 1.0)
        });
        let words_high = lines.fold(0.0, f32::max) * step + 1.0;
        let picture = if scenes.iter().any(Option::is_some) {
            height
        } else {
            0.0
        };
        let high = if is_close {
            words_high + picture
        } else {
            words_high.max(picture)
        };
        // The heading stays on one page with the first of them.
        let head = if is_first { step + 1.5 } else { 0.0 };
        if self.y + head + high > self.bottom {
            self.next_page()?;
        }
        if is_first {
            self.y += head;
            self.write(&self.card.ends_head, text, Weight::Bold, margin);
        }
        let top = self.y;
        let mut left = margin;
        for (end, scene) in row.iter().zip(&scenes) {
            self.y = top;
            self.paragraph(&end.text, left, words(scene));
            if let Some(scene) = scene {
                let corner = if is_close {
                    (left, top + words_high)
                } else {
                    (left + column - width, top + 1.0)
                };
                self.page.inset(scene, corner, width);
            }
            left += column + gap;
        }
        self.y = top + high;
        ControlFlow::Continue(())
    }
}
