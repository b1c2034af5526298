//! The tying screen: the one line that matters, its crossings, and where the tyer is.

use iced::widget::{column, container, progress_bar, responsive, row, space, text};
use iced::{Center, Element, Fill, Padding, Size};

use super::fit::{self, Sizes, Texts};
use super::leaf::{self, leaf};
use super::measured::Measured;
use super::picture::{Easel, Place};
use super::{house, theme};
use crate::guide::Headway;
use crate::walk::Walk;
use crate::words::{Mark, Shown, Words};

/// The screen. `notices` stand above everything else.
pub fn view<'a, M: 'a>(
    walk: &'a Walk,
    easel: &'a Easel,
    words: &Words,
    notices: Vec<String>,
) -> Element<'a, M> {
    let keys = if walk.is_done() {
        words.plainly("tying-keys-log", &[])
    } else if walk.is_telling_steps() {
        let keys = ["tying-keys", "tying-keys-settings"];
        keys.map(|id| words.plainly(id, &[])).join(" · ")
    } else {
        words.plainly("tying-keys-wrong", &[])
    };
    let around = Around {
        notices,
        tie: words.telling(walk.script().plan(), walk.script().at_once()),
        keys,
        picture_keys: words.plainly("tying-keys-picture", &[]),
        caution: walk.shown().caution.clone(),
        aside: walk.aside().map(str::to_owned),
    };
    container(responsive(move |size| page(walk, easel, &around, size)))
        .padding(PADDING)
        .into()
}

/// The picture over the whole screen, and the line with its crossings above it.
pub fn whole<'a, M: 'a>(
    walk: &'a Walk,
    easel: &'a Easel,
    words: &Words,
    notices: Vec<String>,
) -> Element<'a, M> {
    let shown = walk.shown();
    let line = text(&shown.line).size(theme::HEADING).font(theme::BOLD);
    let marks = shown.marks.iter().map(|mark| plate(mark, theme::BODY));
    let marks = row(marks).spacing(8).wrap();
    let above = row![line, marks].spacing(24).align_y(Center).width(Fill);
    let mut parts = column![].spacing(SPACING).padding(PADDING);
    for notice in notices.into_iter().chain(shown.caution.clone()) {
        parts = parts.push(house::notice_of(notice, theme::SMALL));
    }
    parts = parts.push(leaf(&shown.line, above)).push(easel.view());
    if let Some(aside) = walk.aside() {
        parts = parts.push(text(aside).size(theme::BODY));
    }
    let keys = words.plainly("tying-keys-whole", &[]);
    leaf::page(parts.push(house::quiet(keys, theme::SMALL)))
}

/// The page in this much room, with as much around the heart as leaves room for it.
fn page<'a, M: 'a>(
    walk: &'a Walk,
    easel: &'a Easel,
    around: &Around,
    room: Size,
) -> Element<'a, M> {
    let shown = walk.shown();
    let (mut texts, mut edge) = (Texts::new(shown), Edge::new(around, &shown.phase));
    let mut place = easel.place(room);
    let (mut frame, mut sizes) = best(&mut texts, &mut edge, room, place);
    // The words come first: a picture that nobody asked for goes before they get small.
    if place.is_some_and(|place| !place.is_asked_for) && !(frame.is_first() && is_good(sizes)) {
        place = None;
        (frame, sizes) = best(&mut texts, &mut edge, room, None);
    }
    let Headway { done, of } = walk.script().headway(walk.place());
    #[expect(clippy::cast_precision_loss, reason = "a bar needs no more")]
    let bar = progress_bar(0.0..=of as f32, done as f32)
        .girth(BAR)
        .style(theme::progress);
    let mut head = column![].spacing(SPACING);
    for notice in around.notices.iter().take(frame.notices) {
        head = head.push(house::notice_of(notice.clone(), frame.notice));
    }
    let phase = text(&shown.phase).size(frame.head).style(theme::quiet);
    let mut names = row![phase].align_y(Center).spacing(20);
    if frame.has_tie_line(&edge, room.width) {
        let tie = text(around.tie.clone())
            .size(theme::BODY)
            .style(theme::quiet);
        names = names.push(space::horizontal()).push(tie);
    }
    // The room below it is its own, so that it is painted with the heart as one.
    let head = container(head.push(names).push(bar)).padding(Padding::ZERO.bottom(SPACING));
    let heart = if let Some(place) = place {
        easel.beside(place, heart(shown, sizes), around.picture_keys.clone())
    } else {
        easel.rest();
        heart(shown, sizes)
    };
    let mut foot = column![].spacing(SPACING);
    if let Some(caution) = &around.caution {
        foot = foot.push(house::notice_of(caution.clone(), frame.notice));
    }
    if let Some(aside) = &around.aside {
        foot = foot.push(text(aside.clone()).size(frame.notice));
    }
    let has_keys = frame.foot > 0.0;
    if has_keys {
        foot = foot.push(house::quiet(around.keys.clone(), frame.foot));
    }
    let mut parts = column![leaf((&around.notices, &shown.phase, done), head), heart];
    if has_keys || around.caution.is_some() || around.aside.is_some() {
        parts = parts.push(container(foot).padding(Padding::ZERO.top(SPACING)));
    }
    leaf::page(parts)
}

/// Whether the words of the step are as large as they should be, and all there.
fn is_good(sizes: Sizes) -> bool {
    sizes.fits && sizes.line >= fit::LINE && sizes.note > 0.0
}

/// The fullest frame that leaves room for good sizes, or else for all that must be there, and the
/// sizes.
fn best(texts: &mut Texts, edge: &mut Edge, room: Size, place: Option<Place>) -> (Frame, Sizes) {
    let mut fallback = None;
    let [first, rest @ ..] = Frame::ALL;
    let mut frame = first;
    let mut rest = rest.into_iter();
    loop {
        let height = room.height - frame.height(edge, room.width);
        let heart = Size::new(room.width, height.max(0.0));
        let space = place.map_or(heart, |place| place.left_of(heart));
        let sizes = Sizes::of(texts, space);
        if is_good(sizes) {
            return (frame, sizes);
        }
        if sizes.fits {
            fallback.get_or_insert((frame, sizes));
        }
        match rest.next() {
            Some(next) => frame = next,
            None => return fallback.unwrap_or((frame, sizes)),
        }
    }
}

/// The line, the crossings and the notes, at these sizes.
fn heart<'a, M: 'a>(shown: &'a Shown, sizes: Sizes) -> Element<'a, M> {
    let mut heart = column![
        text(&shown.line)
            .size(sizes.line)
            .font(theme::BOLD)
            .center()
    ]
    .spacing(sizes.mark * fit::HEART_GAP)
    .align_x(Center)
    .width(Fill);
    if !shown.marks.is_empty() {
        let gap = sizes.mark * fit::PLATE_GAP;
        let marks = shown.marks.iter().map(|mark| plate(mark, sizes.mark));
        heart = heart.push(
            row(marks)
                .spacing(gap)
                .wrap()
                .vertical_spacing(gap)
                .align_x(Center),
        );
    }
    if sizes.note > 0.0 {
        for note in &shown.notes {
            heart = heart.push(text(note).size(sizes.note).style(theme::quiet).center());
        }
    }
    leaf((&shown.line, &shown.notes), container(heart).center(Fill))
}

fn plate<'a, M: 'a>(mark: &'a Mark, size: f32) -> Element<'a, M> {
    let word = text(&mark.text).size(size);
    let word = if mark.over {
        word.font(theme::BOLD)
    } else {
        word
    };
    container(word)
        .padding([size * fit::PLATE_ENDS, size * fit::PLATE_SIDES])
        .style(if mark.over {
            theme::over_plate
        } else {
            theme::under_plate
        })
        .into()
}

/// Room round the page, between its parts, and the height of the bar, in logical pixels.
const PADDING: f32 = 20.0;
const SPACING: f32 = 12.0;
const BAR: f32 = 14.0;

/// What stands around the heart of the page.
struct Around {
    notices: Vec<String>,
    tie: String,
    keys: String,
    picture_keys: String,
    /// A danger of this step.
    caution: Option<String>,
    /// The answer to a question, until the next press.
    aside: Option<String>,
}

/// The same texts, shaped, with the name of the phase.
struct Edge {
    notices: Vec<Measured>,
    phase: Measured,
    tie: Measured,
    keys: Measured,
    caution: Option<Measured>,
    aside: Option<Measured>,
}

impl Edge {
    fn new(around: &Around, phase: &str) -> Self {
        let plain = |content: &str| Measured::new(content, theme::FACE);
        let bold = |content: &str| Measured::new(content, theme::BOLD);
        Self {
            notices: around.notices.iter().map(|notice| bold(notice)).collect(),
            phase: plain(phase),
            tie: plain(&around.tie),
            keys: plain(&around.keys),
            caution: around.caution.as_deref().map(bold),
            aside: around.aside.as_deref().map(plain),
        }
    }
}

/// How much of it there is, and how large: sizes of type in logical pixels, 0 for nothing.
#[derive(Clone, Copy, PartialEq)]
struct Frame {
    notices: usize,
    notice: f32,
    head: f32,
    foot: f32,
}

impl Frame {
    /// From everything to next to nothing.
    const ALL: [Self; 4] = [
        Self {
            notices: usize::MAX,
            notice: theme::BODY,
            head: theme::HEADING,
            foot: theme::SMALL,
        },
        Self {
            notices: usize::MAX,
            notice: theme::SMALL,
            head: theme::BODY,
            foot: theme::SMALL,
        },
        Self {
            notices: 2,
            notice: theme::SMALL,
            head: theme::SMALL,
            foot: 0.0,
        },
        Self {
            notices: 1,
            notice: theme::SMALL,
            head: theme::SMALL,
            foot: 0.0,
        },
    ];

    /// Whether it is the one with everything.
    fn is_first(self) -> bool {
        self == Self::ALL[0]
    }

    /// The name of the tie stands in the title of the window too.
    fn has_tie_line(self, edge: &Edge, width: f32) -> bool {
        let both = edge.phase.ems() * self.head + edge.tie.ems() * theme::BODY;
        self.foot > 0.0 && both + 50.0 <= width
    }

    /// The height it takes in this width, with the bar and the space between.
    fn height(self, edge: &mut Edge, width: f32) -> f32 {
        let head = edge
            .phase
            .at(self.head, width)
            .height
            .max(theme::BODY * 1.3);
        let mut height = head + SPACING + BAR + SPACING;
        if self.foot > 0.0 {
            height += edge.keys.at(self.foot, width).height + SPACING;
        }
        if let Some(aside) = &mut edge.aside {
            height += aside.at(self.notice, width).height + SPACING;
        }
        let notices = edge.notices.iter_mut().take(self.notices);
        for notice in notices.chain(&mut edge.caution) {
            height += house::notice_height(notice, self.notice, width) + SPACING;
        }
        height
    }
}
