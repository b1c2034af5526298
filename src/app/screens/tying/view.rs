//! What the tying screen looks like: a stage that stands still. The strip of the job, the line, its
//! crossings, the picture, what must be known and the bar of keys each keep their place from step to
//! step; only where a step has more words than its place holds does it take of its neighbours'.

use iced::widget::{column, container, responsive, row, space, text};
use iced::{Center, Element, Fill, Padding, Size};

use super::job_strip::{self, JobStrip};
use crate::app::picture_view::{PictureView, Placement};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::text_layout::type_fitting::{self, Sizes, Texts};
use crate::app::widgets::repaint_layer::{self, layer};
use crate::app::{theme, widgets};
use crate::session::{self, PagePart};
use crate::words::{CrossingMark, Shown};

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
    for answer in page.pause.into_iter().chain(page.answer) {
        parts = parts.push(text(answer).size(theme::BODY));
    }
    repaint_layer::page(parts)
}

/// The page in this much room, with as much around the heart as leaves room for it.
fn fit_page<'a, M: 'a>(
    shown: &'a Shown,
    picture: &'a PictureView,
    around: &Around,
    room: Size,
) -> Element<'a, M> {
    let (mut texts, mut edge) = (Texts::new(shown), EdgeTexts::new(around, &shown.phase));
    let first = PageFrame::first(room);
    let mut place = picture.place(room);
    let (mut frame, mut sizes) = best(&mut texts, &mut edge, room, place, first);
    // The words come first: a picture that nobody asked for goes before they get small, and one that
    // is taught before they go.
    let gives_way = place.is_some_and(|place| {
        if place.is_taught {
            !sizes.fits || sizes.note <= 0.0
        } else {
            !(place.is_asked_for || sizes.fits && sizes.line >= type_fitting::LINE)
        }
    });
    if gives_way {
        place = None;
        (frame, sizes) = best(&mut texts, &mut edge, room, None, first);
    }
    let phase = text(&shown.phase).size(frame.head).style(theme::quiet);
    let mut names = row![phase].align_y(Center).spacing(20);
    if frame.has_room_for_tie(&edge, room.width) {
        let tie = text(around.tie.clone())
            .size(theme::SMALL)
            .style(theme::quiet);
        names = names.push(space::horizontal()).push(tie);
    }
    let strip = JobStrip {
        parts: &around.job,
        time_left: around.time_left.as_deref(),
        has_names: frame.has_strip_names,
    };
    // The room below it is its own, so that it is painted with the heart as one.
    let head = column![job_strip::strip(strip, room.width), names].spacing(HEAD_GAP);
    let head = container(head).padding(Padding::ZERO.bottom(SPACING));
    let words = column![
        words(shown, around, sizes),
        feet(around, frame, &mut edge, room, place)
    ];
    let stage = if let Some(place) = place {
        picture.beside(place, words.into())
    } else {
        picture.rest();
        words.into()
    };
    let turned = (&shown.phase, &around.job, &around.time_left);
    repaint_layer::page(column![layer(turned, head), stage])
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
    first: usize,
) -> (PageFrame, Sizes) {
    let mut fallback = None;
    let mut last = None;
    for frame in PageFrame::ALL.into_iter().skip(first) {
        let height = (room.height - frame.head_height(edge, room.width)).max(0.0);
        let stage = Size::new(room.width, height);
        let space = place.map_or(stage, |place| place.left_of(stage));
        let foot = edge.feet_height(frame, space.width);
        let heart = Size::new(space.width, (space.height - foot).max(0.0));
        let sizes = Sizes::of(texts, heart);
        if is_good(sizes) {
            return (frame, sizes);
        }
        if sizes.fits && fallback.is_none() {
            fallback = Some((frame, sizes));
        }
        last = Some((frame, sizes));
    }
    let usual = || {
        let sizes = Sizes::of(texts, room);
        (PageFrame::ALL[PageFrame::ALL.len() - 1], sizes)
    };
    fallback.or(last).unwrap_or_else(usual)
}

/// The step, or what comes over it in large type.
fn words<'a, M: 'a>(shown: &'a Shown, around: &Around, sizes: Sizes) -> Element<'a, M> {
    let step = heart(shown, sizes);
    let Some(over) = &around.over else {
        return step;
    };
    // The step stands under it: what is asked for comes over it and goes again, and nothing moves.
    let turned = over.clone();
    let over = over.clone();
    let card = responsive(move |room| {
        let mut letters = TextMetrics::new(&over, theme::BOLD);
        let mut size = (room.width / 14.0).clamp(theme::BODY, LARGEST_ANSWER);
        while size > theme::BODY && letters.at(size, room.width - 60.0).height > room.height - 50.0
        {
            size *= 0.95;
        }
        let answer = text(over.clone()).size(size).font(theme::BOLD);
        container(answer)
            .padding(24)
            .center(Fill)
            .style(theme::card)
            .into()
    });
    iced::widget::stack![step, layer(turned, card)]
        .width(Fill)
        .height(Fill)
        .into()
}

/// What must be known of this step and besides, at the foot of the words, in a place that is kept.
fn feet<'a, M: 'a>(
    around: &Around,
    frame: PageFrame,
    edge: &mut EdgeTexts,
    room: Size,
    place: Option<Placement>,
) -> Element<'a, M> {
    let width = place.map_or(room.width, |place| place.left_of(room).width);
    let height = edge.feet_height(frame, width);
    let mut feet = column![].spacing(6);
    if let Some(caution) = &around.caution {
        feet = feet.push(widgets::notice_of(caution.clone(), frame.notice));
    }
    for notice in around.notices.iter().take(frame.notices) {
        feet = feet.push(widgets::notice_of(notice.clone(), frame.notice));
    }
    if let Some(answer) = &around.answer {
        feet = feet.push(text(answer.clone()).size(frame.notice));
    }
    let turned = (&around.caution, &around.notices, &around.answer);
    layer(turned, container(feet).width(Fill).height(height))
}

/// The line, the crossings and the notes, at these sizes: the line in the middle of its place, the
/// rest from the foot of that place on.
fn heart<'a, M: 'a>(shown: &'a Shown, sizes: Sizes) -> Element<'a, M> {
    let line = text(&shown.line)
        .size(sizes.line)
        .font(theme::BOLD)
        .center();
    let line = container(line).center_x(Fill).id("stage-line");
    let line = if sizes.line_place > 0.0 {
        line.center_y(sizes.line_place)
    } else {
        line
    };
    let mut heart = column![line]
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
    let heart = if sizes.line_place > 0.0 {
        container(heart).width(Fill).height(Fill)
    } else {
        container(heart).center(Fill)
    };
    layer((&shown.line, &shown.notes), heart)
}

fn plate<'a, M: 'a>(mark: &'a CrossingMark, size: f32) -> Element<'a, M> {
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

/// Room round the page, between its parts, and between those of its head, in logical pixels.
const PADDING: f32 = 16.0;
const SPACING: f32 = 12.0;
const HEAD_GAP: f32 = 6.0;
/// The largest type of what comes over the stage.
const LARGEST_ANSWER: f32 = 44.0;
/// From this height on a window has room for everything.
const FULL: f32 = 520.0;

/// What stands around the heart of the page.
pub(super) struct Around {
    pub notices: Vec<String>,
    pub tie: String,
    /// A danger of this step.
    pub caution: Option<String>,
    /// The answer to a question, until the next press.
    pub answer: Option<String>,
    /// What comes over the step in large type: where the tyer is, or that the tie is held.
    pub over: Option<String>,
    /// The parts of the job.
    pub job: Vec<PagePart>,
    /// What is left of it.
    pub time_left: Option<String>,
}

/// The texts round the step, shaped, with the name of the phase.
struct EdgeTexts {
    notices: Vec<TextMetrics>,
    phase: TextMetrics,
    tie: TextMetrics,
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
            caution: around.caution.as_deref().map(bold),
            answer: around.answer.as_deref().map(plain),
        }
    }

    /// The height of what must be known, in a frame and a width: what is kept for it, or more where
    /// it needs more.
    fn feet_height(&mut self, frame: PageFrame, width: f32) -> f32 {
        let mut height = 0.0;
        let notices = self.notices.iter_mut().take(frame.notices);
        for notice in notices.chain(&mut self.caution) {
            height += widgets::notice_height(notice, frame.notice, width) + 6.0;
        }
        if let Some(answer) = &mut self.answer {
            height += answer.at(frame.notice, width).height + 6.0;
        }
        height.max(frame.kept)
    }
}

/// How much of it there is, and how large: sizes of type in logical pixels.
#[derive(Clone, Copy, PartialEq)]
struct PageFrame {
    notices: usize,
    notice: f32,
    head: f32,
    has_tie_line: bool,
    has_strip_names: bool,
    /// The height that is kept for what must be known.
    kept: f32,
}

impl PageFrame {
    /// From everything to next to nothing.
    const ALL: [Self; 4] = [
        Self {
            notices: usize::MAX,
            notice: theme::SMALL,
            head: 28.0,
            has_tie_line: true,
            has_strip_names: true,
            kept: 76.0,
        },
        Self {
            notices: usize::MAX,
            notice: theme::SMALL,
            head: theme::BODY,
            has_tie_line: true,
            has_strip_names: true,
            kept: 0.0,
        },
        Self {
            notices: 2,
            notice: theme::SMALL,
            head: theme::SMALL,
            has_tie_line: false,
            has_strip_names: false,
            kept: 0.0,
        },
        Self {
            notices: 1,
            notice: theme::SMALL,
            head: theme::SMALL,
            has_tie_line: false,
            has_strip_names: false,
            kept: 0.0,
        },
    ];

    /// Which of them a room begins with: the same for every step.
    fn first(room: Size) -> usize {
        usize::from(room.height < FULL)
    }

    /// The name of the tie stands in the title of the window too.
    fn has_room_for_tie(self, edge: &EdgeTexts, width: f32) -> bool {
        let both = edge.phase.ems() * self.head + edge.tie.ems() * theme::SMALL;
        self.has_tie_line && both + 50.0 <= width
    }

    /// The height of the strip and of the names below it, in this width, with the space after them.
    fn head_height(self, edge: &mut EdgeTexts, width: f32) -> f32 {
        let names = edge
            .phase
            .at(self.head, width)
            .height
            .max(theme::SMALL * 1.3);
        job_strip::height(self.has_strip_names) + HEAD_GAP + names + SPACING
    }
}
