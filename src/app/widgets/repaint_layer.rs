//! A part of a screen that the window paints anew as one piece when what stands on it is turned.
//!
//! The window paints only what differs from the frame before. It holds a layer's texts and images
//! against those that stood there, one by one, and for each that differs it clears and paints a
//! rectangle with all that reaches into it, and goes over a mask of the whole window every time:
//! for a page of new words that is slower, several times over, than to paint the page once. A layer
//! whose bounds have changed is one rectangle; so a layer that is repainted moves its bounds by a hair.

use std::hash::{DefaultHasher, Hash, Hasher};

use iced::advanced::widget::{Operation, Tree, tree};
use iced::advanced::{
    Clipboard, Layout, Renderer as _, Shell, Widget, layout, mouse, overlay, renderer,
};
use iced::widget::Column;
use iced::{Element, Event, Length, Rectangle, Renderer, Size, Theme, Vector};

/// Soft edges and letters reach so far beyond the place of what they belong to.
pub const SOFT: f32 = 2.0;

/// How often something was turned. Only neighbours must differ, and the few frames before them
/// that a window may still hold.
#[derive(Clone, Copy, Debug, Default)]
pub struct Repaints(u8);

impl Repaints {
    /// Repaints once more.
    pub fn turn(&mut self) {
        self.0 = (self.0 + 1) % 16;
    }

    /// Draws in a layer of its own that is painted as one when it was turned since.
    pub fn draw(
        self,
        bounds: Rectangle,
        renderer: &mut Renderer,
        draw: impl FnOnce(&mut Renderer),
    ) {
        // Too little to reach the middle of another dot; enough for an image that lies a hair from
        // where it should, which need not be masked then.
        let hair = 0.04 + f32::from(self.0) / 512.0;
        renderer.with_layer(bounds.expand(hair), draw);
    }
}

/// Content in a layer of its own, painted as one whenever `key` is another than before.
pub fn layer<'a, M: 'a>(key: impl Hash, content: impl Into<Element<'a, M>>) -> Element<'a, M> {
    Element::new(RepaintLayer {
        key: Some(hash(key)),
        is_cut: false,
        content: content.into(),
    })
}

/// Parts of a screen in a layer of their own, painted as one whenever any of them has another place.
pub fn page<'a, M: 'a>(parts: Column<'a, M>) -> Element<'a, M> {
    Element::new(RepaintLayer {
        key: None,
        is_cut: false,
        content: parts.into(),
    })
}

/// Content that is cut off where what it scrolls in ends. The toolkit paints the letters of some widgets
/// whole as long as they may stand anywhere in the layer, be it below its end.
pub fn cut<'a, M: 'a>(content: impl Into<Element<'a, M>>) -> Element<'a, M> {
    Element::new(RepaintLayer {
        key: None,
        is_cut: true,
        content: content.into(),
    })
}

struct RepaintLayer<'a, M> {
    /// None for the places of its parts.
    key: Option<u64>,
    is_cut: bool,
    content: Element<'a, M>,
}

/// What is kept of a layer from frame to frame.
#[derive(Default)]
struct Known {
    key: u64,
    turns: Repaints,
}

impl Known {
    fn see(&mut self, key: u64) {
        if self.key != key {
            self.key = key;
            self.turns.turn();
        }
    }
}

fn hash(key: impl Hash) -> u64 {
    let mut hasher = DefaultHasher::new();
    key.hash(&mut hasher);
    hasher.finish()
}

/// Where the parts are.
fn places(parts: &[layout::Node]) -> u64 {
    let edges = parts.iter().map(|part| {
        let place = part.bounds();
        [place.x, place.y, place.width, place.height].map(f32::to_bits)
    });
    hash(edges.collect::<Vec<_>>())
}

impl<M> Widget<M, Theme, Renderer> for RepaintLayer<'_, M> {
    fn size(&self) -> Size<Length> {
        self.content.as_widget().size()
    }

    fn size_hint(&self) -> Size<Length> {
        self.content.as_widget().size_hint()
    }

    fn tag(&self) -> tree::Tag {
        tree::Tag::of::<Known>()
    }

    fn state(&self) -> tree::State {
        tree::State::new(Known::default())
    }

    fn children(&self) -> Vec<Tree> {
        vec![Tree::new(&self.content)]
    }

    fn diff(&self, tree: &mut Tree) {
        if let Some(key) = self.key {
            tree.state.downcast_mut::<Known>().see(key);
        }
        tree.diff_children(std::slice::from_ref(&self.content));
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        let [content] = &mut tree.children[..] else {
            return layout::Node::new(Size::ZERO);
        };
        let widget = self.content.as_widget_mut();
        let node = widget.layout(content, renderer, limits);
        if self.key.is_none() {
            let known = tree.state.downcast_mut::<Known>();
            known.see(places(node.children()));
        }
        node
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        for tree in &mut tree.children {
            let content = self.content.as_widget_mut();
            content.operate(tree, layout, renderer, operation);
        }
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
        for tree in &mut tree.children {
            let content = self.content.as_widget_mut();
            content.update(
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
        let content = self.content.as_widget();
        tree.children.first().map_or_else(Default::default, |tree| {
            content.mouse_interaction(tree, layout, cursor, viewport, renderer)
        })
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
        let Some(seen) = layout.bounds().intersection(viewport) else {
            return;
        };
        // What may stand beyond the layer is held against its edge.
        let beyond = seen.expand(SOFT);
        let bounds = if self.is_cut { seen } else { beyond };
        let known = tree.state.downcast_ref::<Known>();
        known.turns.draw(bounds, renderer, |renderer| {
            for tree in &tree.children {
                let content = self.content.as_widget();
                content.draw(tree, renderer, theme, style, layout, cursor, &beyond);
            }
        });
    }

    fn overlay<'b>(
        &'b mut self,
        tree: &'b mut Tree,
        layout: Layout<'b>,
        renderer: &Renderer,
        viewport: &Rectangle,
        translation: Vector,
    ) -> Option<overlay::Element<'b, M, Theme, Renderer>> {
        let tree = tree.children.first_mut()?;
        let content = self.content.as_widget_mut();
        content.overlay(tree, layout, renderer, viewport, translation)
    }
}
