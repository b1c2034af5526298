//! What is scrolled by leaves: no row of it stands across the foot of what is in sight. A row that has no
//! room whole begins at the head of the next leaf, and the bar beside them tells that there is one.

use std::cell::RefCell;

use iced::advanced::widget::operation::TextInput;
use iced::advanced::widget::{Operation, Tree, tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, overlay, renderer};
use iced::widget::scrollable::AbsoluteOffset;
use iced::widget::{Id, container, operation, scrollable};
use iced::{
    Element, Event, Fill, Length, Point, Rectangle, Renderer, Shrink, Size, Task, Theme, Vector,
};

/// Between the rows and the bar.
const BAR_GAP: f32 = 8.0;

/// On which leaf each widget that has a name stands, as it was laid out last: how far down that begins.
#[derive(Debug, Default)]
pub struct LeafPlaces(RefCell<Vec<(Id, f32)>>);

impl LeafPlaces {
    /// Turns a list to the leaf on which this widget stands; nothing where it stands on none.
    pub fn turn_to<M: Send + 'static>(&self, list: &'static str, id: &Id) -> Task<M> {
        let places = self.0.borrow();
        match places.iter().find(|(other, _)| other == id) {
            Some(&(_, y)) => operation::scroll_to(list, AbsoluteOffset { x: 0.0, y }),
            None => Task::none(),
        }
    }
}

/// Rows one below the other, scrolled by leaves of this height; all of them are one leaf where that is
/// enough. With `is_filled` they take all of the height in any case.
pub fn leaves<'a, M: 'a>(
    id: impl Into<Id>,
    rows: Vec<Element<'a, M>>,
    gap: f32,
    height: f32,
    is_filled: bool,
) -> Element<'a, M> {
    leaves_told(id, rows, gap, height, is_filled, None)
}

/// The same, keeping where each widget stands.
pub fn leaves_told<'a, M: 'a>(
    id: impl Into<Id>,
    rows: Vec<Element<'a, M>>,
    gap: f32,
    height: f32,
    is_filled: bool,
    places: impl Into<Option<&'a LeafPlaces>>,
) -> Element<'a, M> {
    let places = places.into();
    let leaves = Element::new(Leaves {
        rows,
        gap,
        height,
        places,
    });
    let list = scrollable(leaves).id(id).spacing(BAR_GAP).width(Fill);
    if is_filled {
        list.height(height).into()
    } else {
        container(list).max_height(height).into()
    }
}

/// Rows on leaves.
struct Leaves<'a, M> {
    rows: Vec<Element<'a, M>>,
    gap: f32,
    height: f32,
    places: Option<&'a LeafPlaces>,
}

/// Takes down the names in a row.
struct Names(Vec<Id>);

impl Operation for Names {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation)) {
        operate(self);
    }

    fn container(&mut self, id: Option<&Id>, _: Rectangle) {
        self.0.extend(id.cloned());
    }

    fn text_input(&mut self, id: Option<&Id>, _: Rectangle, _: &mut dyn TextInput) {
        self.0.extend(id.cloned());
    }
}

/// Where rows of these heights begin, and how high all of them are together: whole leaves where there is
/// more than one.
fn begins(heights: &[f32], gap: f32, leaf: f32) -> (Vec<f32>, f32) {
    // Before the window has told its size there is no room at all.
    let leaf = leaf.max(1.0);
    let mut places = Vec::with_capacity(heights.len());
    let (mut top, mut leaf_top) = (0.0_f32, 0.0_f32);
    for &height in heights {
        let is_over = height > 0.0 && top + height > leaf_top + leaf + 0.5;
        if is_over && top > leaf_top {
            leaf_top += leaf;
            top = leaf_top;
        }
        places.push(top);
        if height > 0.0 {
            top += height + gap;
        }
        // A row that is higher than a leaf goes on over the next ones.
        let beyond = top - gap - leaf_top - leaf - 0.5;
        if beyond > 0.0 {
            leaf_top += (beyond / leaf).ceil() * leaf;
        }
        top = top.max(leaf_top);
    }
    let all = if leaf_top > 0.0 {
        leaf_top + leaf
    } else {
        (top - gap).max(0.0)
    };
    (places, all)
}

impl<M> Widget<M, Theme, Renderer> for Leaves<'_, M> {
    fn size(&self) -> Size<Length> {
        Size::new(Fill, Shrink)
    }

    fn tag(&self) -> tree::Tag {
        tree::Tag::stateless()
    }

    fn children(&self) -> Vec<Tree> {
        self.rows.iter().map(Tree::new).collect()
    }

    fn diff(&self, tree: &mut Tree) {
        tree.diff_children(&self.rows);
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        let width = limits.max().width;
        let room = layout::Limits::new(Size::ZERO, Size::new(width, f32::INFINITY));
        let rows = self.rows.iter_mut().zip(&mut tree.children);
        let rows: Vec<layout::Node> = rows
            .map(|(row, tree)| row.as_widget_mut().layout(tree, renderer, &room))
            .collect();
        let heights: Vec<f32> = rows.iter().map(|row| row.size().height).collect();
        let (places, all) = begins(&heights, self.gap, self.height);
        if let Some(told) = self.places {
            let mut told = told.0.borrow_mut();
            told.clear();
            let trees = self.rows.iter_mut().zip(&mut tree.children);
            for ((row, tree), (node, top)) in trees.zip(rows.iter().zip(&places)) {
                let mut names = Names(Vec::new());
                let layout = Layout::new(node);
                row.as_widget_mut()
                    .operate(tree, layout, renderer, &mut names);
                let leaf = (top / self.height.max(1.0) + 0.01).floor() * self.height;
                told.extend(names.0.into_iter().map(|name| (name, leaf)));
            }
        }
        let rows = rows.into_iter().zip(places);
        let rows = rows.map(|(row, top)| row.move_to(Point::new(0.0, top)));
        layout::Node::with_children(Size::new(width, all), rows.collect())
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        operation.container(None, layout.bounds());
        operation.traverse(&mut |operation| {
            let rows = self.rows.iter_mut().zip(&mut tree.children);
            for ((row, tree), layout) in rows.zip(layout.children()) {
                row.as_widget_mut()
                    .operate(tree, layout, renderer, operation);
            }
        });
    }

    fn update(
        &mut self,
        tree: &mut Tree,
        event: &Event,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        renderer: &Renderer,
        clipboard: &mut dyn Clipboard,
        shell: &mut Shell<'_, M>,
        viewport: &Rectangle,
    ) {
        let rows = self.rows.iter_mut().zip(&mut tree.children);
        for ((row, tree), layout) in rows.zip(layout.children()) {
            row.as_widget_mut().update(
                tree, event, layout, cursor, renderer, clipboard, shell, viewport,
            );
        }
    }

    fn mouse_interaction(
        &self,
        tree: &Tree,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        viewport: &Rectangle,
        renderer: &Renderer,
    ) -> mouse::Interaction {
        let rows = self.rows.iter().zip(&tree.children);
        rows.zip(layout.children())
            .map(|((row, tree), layout)| {
                row.as_widget()
                    .mouse_interaction(tree, layout, cursor, viewport, renderer)
            })
            .max()
            .unwrap_or_default()
    }

    fn draw(
        &self,
        tree: &Tree,
        renderer: &mut Renderer,
        theme: &Theme,
        style: &renderer::Style,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        viewport: &Rectangle,
    ) {
        let rows = self.rows.iter().zip(&tree.children);
        for ((row, tree), layout) in rows.zip(layout.children()) {
            if layout.bounds().intersects(viewport) {
                row.as_widget()
                    .draw(tree, renderer, theme, style, layout, cursor, viewport);
            }
        }
    }

    fn overlay<'b>(
        &'b mut self,
        tree: &'b mut Tree,
        layout: Layout<'b>,
        renderer: &Renderer,
        viewport: &Rectangle,
        translation: Vector,
    ) -> Option<overlay::Element<'b, M, Theme, Renderer>> {
        overlay::from_children(
            &mut self.rows,
            tree,
            layout,
            renderer,
            viewport,
            translation,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn close(found: &(Vec<f32>, f32), places: &[f32], all: f32) {
        assert_eq!(found.0.len(), places.len(), "{found:?}");
        for (found, place) in found.0.iter().zip(places) {
            assert!((found - place).abs() < 0.1, "{found} {place}");
        }
        assert!((found.1 - all).abs() < 0.1, "{found:?}");
    }

    #[test]
    fn no_row_stands_across_the_foot_of_a_leaf() {
        // All in one leaf, as high as they are.
        close(&begins(&[30.0, 30.0], 10.0, 70.0), &[0.0, 40.0], 70.0);
        // The second has no room whole.
        close(&begins(&[30.0, 31.0], 10.0, 70.0), &[0.0, 70.0], 140.0);
        // Nothing stands in the place of what is empty.
        close(
            &begins(&[30.0, 0.0, 30.0], 10.0, 70.0),
            &[0.0, 40.0, 40.0],
            70.0,
        );
        // A leaf of no height, as before the window is measured.
        assert!(begins(&[30.0, 30.0], 10.0, 0.0).1 >= 60.0);
        // What is higher than a leaf begins one.
        close(
            &begins(&[30.0, 100.0, 20.0, 30.0], 10.0, 70.0),
            &[0.0, 70.0, 180.0, 210.0],
            280.0,
        );
    }
}
