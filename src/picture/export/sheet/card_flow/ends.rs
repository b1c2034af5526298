//! The ends of a card: how each is finished.

use super::{CardFlow, SCALE};
use crate::picture::draw::Weight;
use crate::picture::export::sheet::card::Card;
use crate::picture::export::sheet::card_sizes::Sizes;
use crate::picture::export::sheet::page::wrapped;
use crate::picture::scene::{Scene, View, Viewport};

impl CardFlow {
    /// Every end: its sentences, and its picture beside them; close together two in a row, each picture
    /// below its sentences.
    pub(super) fn ends(&mut self, card: &Card) {
        let Sizes {
            margin,
            text,
            step,
            end: [height, width],
            is_close,
            ..
        } = self.sizes;
        let abreast = if is_close { 2 } else { 1 };
        let gap = 6.0;
        let column = if is_close {
            (self.right() - margin - gap) / 2.0
        } else {
            self.right() - margin
        };
        let frame = Viewport::new(width * SCALE, height * SCALE);
        for (nth, row) in card.ends.chunks(abreast).enumerate() {
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
            let head = if nth == 0 { step + 1.5 } else { 0.0 };
            if self.y + head + high > self.bottom {
                self.next_page(card);
            }
            if nth == 0 {
                self.y += head;
                self.write(&card.ends_head, text, Weight::Bold, margin);
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
                    self.page().inset(scene, corner, width);
                }
                left += column + gap;
            }
            self.y = top + high;
        }
    }
}
