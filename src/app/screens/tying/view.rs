//! What the tying screen looks like: how much stands around the heart of the page, and how large,
//! so that the line that matters has its room.

use iced::widget::{column, container, progress_bar, responsive, row, space, text};
use iced::{Center, Element, Fill, Padding, Size};

use crate::app::picture_view::{PictureView, Placement};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::text_layout::type_fitting::{self, Sizes, Texts};
use crate::app::widgets::repaint_layer::{self, layer};
use crate::app::{theme, widgets};
use crate::guide::PhaseProgress;
use crate::session;
use crate::words::{Mark, Shown};

/// The page with as much around its heart as leaves room for it.
pub(super) fn fitted<'a, M: 'a>(
    shown: &'a Shown,
    picture: &'a PictureView,
    around: Around,
) -> Element<'a, M> {
    container(responsive(move |size| {
        fit_page(shown, picture, &around, size)
    }))
    .padding(PADDING)
    .into()
}

/// The picture over the whole screen, and the line with its crossings above it.
pub(super) fn whole<'a, M: 'a>(
    shown: &'a Shown,
    picture: &'a PictureView,
    page: session::Page,
    keys: String,
) -> Element<'a, M> {
    let line = text(&shown.line).size(theme::HEADING).font(theme::BOLD);
    let marks = shown.marks.iter().map(|mark| plate(mark, theme::BODY));
    let marks = row(marks).spacing(8).wrap();
    let above = row![line, marks].spacing(24).align_y(Center).width(Fill);
    let mut parts = column![].spacing(SPACING).padding(PADDING);
    for notice in page.notices.into_iter().chain(page.shown.caution) {
        parts = parts.push(widgets::notice_of(notice, theme::SMALL));
    }
    parts = parts.push(layer(&shown.line, above)).push(picture.view());
    if let Some(answer) = page.answer {
        parts = parts.push(text(answer).size(theme::BODY));
    }
    repaint_layer::page(parts.push(widgets::quiet(keys, theme::SMALL)))
}

/// The page in this much room, with as much around the heart as leaves room for it.
fn fit_page<'a, M: 'a>(
    shown: &'a Shown,
    picture: &'a PictureView,
    around: &Around,
    room: Size,
) -> Element<'a, M> {
    let (mut texts, mut edge) = (Texts::new(shown), EdgeTexts::new(around, &shown.phase));
    let mut place = picture.place(room);
    let (mut frame, mut sizes) = best(&mut texts, &mut edge, room, place);
    // The words come first: a picture that nobody asked for goes before they get small, and one that
    // is taught before they go.
    let gives_way = place.is_some_and(|place| {
        if place.is_taught {
            !sizes.fits || sizes.note <= 0.0
        } else {
            !(place.is_asked_for || frame.is_first() && is_good(sizes))
        }
    });
    if gives_way {
        place = None;
        (frame, sizes) = best(&mut texts, &mut edge, room, None);
    }
    let PhaseProgress { done, of } = around.phase_progress;
    #[expect(clippy::cast_precision_loss, reason = "a bar needs no more")]
    let bar = progress_bar(0.0..=of as f32, done as f32)
        .girth(BAR)
        .style(theme::progress);
    let mut head = column![].spacing(SPACING);
    for notice in around.notices.iter().take(frame.notices) {
        head = head.push(widgets::notice_of(notice.clone(), frame.notice));
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
        picture.beside(place, heart(shown, sizes), around.picture_keys.clone())
    } else {
        picture.rest();
        heart(shown, sizes)
    };
    let mut foot = column![].spacing(SPACING);
    if let Some(caution) = &around.caution {
        foot = foot.push(widgets::notice_of(caution.clone(), frame.notice));
    }
    if let Some(answer) = &around.answer {
        foot = foot.push(text(answer.clone()).size(frame.notice));
    }
    let has_keys = frame.foot > 0.0;
    if has_keys {
        foot = foot.push(widgets::quiet(around.keys.clone(), frame.foot));
    }
    let mut parts = column![layer((&around.notices, &shown.phase, done), head), heart];
    if has_keys || around.caution.is_some() || around.answer.is_some() {
        parts = parts.push(container(foot).padding(Padding::ZERO.top(SPACING)));
    }
    repaint_layer::page(parts)
}

/// Whether the words of the step are as large as they should be, and all there.
fn is_good(sizes: Sizes) -> bool {
    sizes.fits && sizes.line >= type_fitting::LINE && sizes.note > 0.0
}

/// The fullest frame that leaves room for good sizes, or else for all that must be there, and the
/// sizes.
fn best(
    texts: &mut Texts,
    edge: &mut EdgeTexts,
    room: Size,
    place: Option<Placement>,
) -> (PageFrame, Sizes) {
    let mut fallback = None;
    let [first, rest @ ..] = PageFrame::ALL;
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
    .spacing(sizes.mark * type_fitting::HEART_GAP)
    .align_x(Center)
    .width(Fill);
    if !shown.marks.is_empty() {
        let gap = sizes.mark * type_fitting::PLATE_GAP;
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
    layer((&shown.line, &shown.notes), container(heart).center(Fill))
}

fn plate<'a, M: 'a>(mark: &'a Mark, size: f32) -> Element<'a, M> {
    let word = text(&mark.text).size(size);
    let word = if mark.over {
        word.font(theme::BOLD)
    } else {
        word
    };
    container(word)
        .padding([
            size * type_fitting::PLATE_ENDS,
            size * type_fitting::PLATE_SIDES,
        ])
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
pub(super) struct Around {
    pub notices: Vec<String>,
    pub tie: String,
    pub keys: String,
    pub picture_keys: String,
    /// A danger of this step.
    pub caution: Option<String>,
    /// The answer to a question, until the next press.
    pub answer: Option<String>,
    pub phase_progress: PhaseProgress,
}

/// The texts round the step, shaped, with the name of the phase.
struct EdgeTexts {
    notices: Vec<TextMetrics>,
    phase: TextMetrics,
    tie: TextMetrics,
    keys: TextMetrics,
    caution: Option<TextMetrics>,
    answer: Option<TextMetrics>,
}

impl EdgeTexts {
    fn new(around: &Around, phase: &str) -> Self {
        let plain = |content: &str| TextMetrics::new(content, theme::FACE);
        let bold = |content: &str| TextMetrics::new(content, theme::BOLD);
        Self {
            notices: around.notices.iter().map(|notice| bold(notice)).collect(),
            phase: plain(phase),
            tie: plain(&around.tie),
            keys: plain(&around.keys),
            caution: around.caution.as_deref().map(bold),
            answer: around.answer.as_deref().map(plain),
        }
    }
}

/// How much of it there is, and how large: sizes of type in logical pixels, 0 for nothing.
#[derive(Clone, Copy, PartialEq)]
struct PageFrame {
    notices: usize,
    notice: f32,
    head: f32,
    foot: f32,
}

impl PageFrame {
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
    fn has_tie_line(self, edge: &EdgeTexts, width: f32) -> bool {
        let both = edge.phase.ems() * self.head + edge.tie.ems() * theme::BODY;
        self.foot > 0.0 && both + 50.0 <= width
    }

    /// The height it takes in this width, with the bar and the space between.
    fn height(self, edge: &mut EdgeTexts, width: f32) -> f32 {
        let head = edge
            .phase
            .at(self.head, width)
            .height
            .max(theme::BODY * 1.3);
        let mut height = head + SPACING + BAR + SPACING;
        if self.foot > 0.0 {
            height += edge.keys.at(self.foot, width).height + SPACING;
        }
        if let Some(answer) = &mut edge.answer {
            height += answer.at(self.notice, width).height + SPACING;
        }
        let notices = edge.notices.iter_mut().take(self.notices);
        for notice in notices.chain(&mut edge.caution) {
            height += widgets::notice_height(notice, self.notice, width) + SPACING;
        }
        height
    }
}
