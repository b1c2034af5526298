//! How much stands around the heart of the tying screen, so that the heart has the room it needs.

use iced::Size;

use super::job_strip;
use crate::app::picture_view::Placement;
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::text_layout::type_fitting::{Sizes, Texts};
use crate::app::{theme, widgets};
use crate::session::PagePart;

/// Between the parts of the page, those of its head, and two things at the foot of the words.
pub(super) const SPACING: f32 = 12.0;
pub(super) const HEAD_GAP: f32 = 6.0;
pub(super) const FOOT_GAP: f32 = 6.0;
/// From this height on a window has room for everything.
const FULL: f32 = 520.0;
/// The height that is kept at the foot of the words for what must be known.
const KEPT: f32 = 76.0;

/// What stands around the heart of the page.
pub(super) struct Around {
    pub notices: Vec<String>,
    pub tie: [String; 4],
    /// The key of each note, where the notes are ways out of something.
    pub ways: Vec<Option<String>>,
    /// A danger of this step.
    pub caution: Option<String>,
    /// The answer to a question, until the next press.
    pub answer: Option<String>,
    /// What comes over the step in large type: where the tyer is, or that the tie is held.
    pub over: Option<Over>,
    /// The parts of the job.
    pub job: Vec<PagePart>,
    /// What is left of it.
    pub time_left: Option<String>,
}

/// What comes over the step in large type.
#[derive(Default)]
pub(super) struct Over {
    pub told: String,
    /// The keys that go on from there, and what they do.
    pub caps: Vec<String>,
    pub way: String,
}

impl Around {
    /// The name of the part of the job that is in hand.
    pub(super) fn part_in_hand(&self) -> Option<&str> {
        let part = self.job.iter().find(|part| part.is_now);
        part.map(|part| part.name.as_str())
    }
}

/// The texts round the step, shaped, with the name of the phase.
pub(super) struct EdgeTexts {
    notices: Vec<TextMetrics>,
    phase: TextMetrics,
    caution: Option<TextMetrics>,
    answer: Option<TextMetrics>,
}

impl EdgeTexts {
    pub(super) fn new(around: &Around, phase: &str) -> Self {
        let plain = |content: &str| TextMetrics::new(content, theme::FACE);
        let bold = |content: &str| TextMetrics::new(content, theme::BOLD);
        Self {
            notices: around.notices.iter().map(|notice| bold(notice)).collect(),
            phase: plain(phase),
            caution: around.caution.as_deref().map(bold),
            answer: around.answer.as_deref().map(plain),
        }
    }

    /// The height of what must be known, in a frame and a width: what is kept for it, or more where
    /// it needs more and the frame has that.
    pub(super) fn feet_height(&mut self, frame: PageFrame, width: f32) -> f32 {
        self.whole_feet(width).max(frame.kept).min(frame.most)
    }

    /// Whether it is more than the frame has room for.
    pub(super) fn is_cut_off(&mut self, frame: PageFrame, width: f32) -> bool {
        self.whole_feet(width) > frame.most
    }

    /// The height of all of it.
    fn whole_feet(&mut self, width: f32) -> f32 {
        let mut height = 0.0;
        for notice in self.notices.iter_mut().chain(&mut self.caution) {
            height += widgets::notice_height(notice, theme::SMALL, width) + FOOT_GAP;
        }
        if let Some(answer) = &mut self.answer {
            height += answer.at(theme::SMALL, width).height + FOOT_GAP;
        }
        height
    }
}

/// How much of it there is, and how large: sizes of type in logical pixels.
#[derive(Clone, Copy, PartialEq)]
pub(super) struct PageFrame {
    pub(super) head: f32,
    has_tie_line: bool,
    pub(super) has_strip_names: bool,
    /// The height that is kept for what must be known, and the most that it takes: beyond that it is
    /// scrolled.
    kept: f32,
    most: f32,
}

impl PageFrame {
    /// From everything to next to nothing. The words of the step stay large and the picture stays where
    /// it is, whatever must be known besides.
    const ALL: [Self; 5] = [
        Self {
            head: 28.0,
            has_tie_line: true,
            has_strip_names: true,
            kept: KEPT,
            most: f32::INFINITY,
        },
        Self {
            head: theme::BODY,
            has_tie_line: true,
            has_strip_names: true,
            kept: 0.0,
            most: f32::INFINITY,
        },
        Self {
            head: 28.0,
            has_tie_line: true,
            has_strip_names: true,
            kept: KEPT,
            most: KEPT,
        },
        Self {
            head: theme::SMALL,
            has_tie_line: false,
            has_strip_names: false,
            kept: 0.0,
            most: f32::INFINITY,
        },
        Self {
            head: theme::SMALL,
            has_tie_line: false,
            has_strip_names: false,
            kept: 0.0,
            most: KEPT,
        },
    ];

    /// From that one on. Beside a picture what must be known is rather scrolled than that the rest gets
    /// less; alone, all of it is rather shown.
    fn in_order(first: usize, has_picture: bool) -> impl Iterator<Item = Self> {
        let all = move || Self::ALL.into_iter().skip(first);
        let has_turn = move |frame: &Self| has_picture || frame.most.is_infinite();
        let last = all().filter(move |frame| !has_turn(frame));
        all().filter(has_turn).chain(last)
    }

    /// Which of them a room begins with: the same for every step.
    pub(super) fn first(room: Size) -> usize {
        usize::from(room.height < FULL)
    }

    /// The longest name of the tie that has room beside that of the phase, if one has. The whole of it stands
    /// in the title of the window too.
    pub(super) fn tie_in_room<'a>(
        self,
        edge: &EdgeTexts,
        names: &'a [String],
        width: f32,
    ) -> Option<&'a str> {
        let room = width - 50.0 - edge.phase.ems() * self.head;
        let fits = |name: &str| TextMetrics::new(name, theme::FACE).ems() * theme::SMALL <= room;
        let mut names = names.iter().map(String::as_str);
        names.find(|name| self.has_tie_line && fits(name))
    }

    /// The size of the name of the phase where it has one row of this width.
    pub(super) fn head_in_one_row(self, edge: &EdgeTexts, width: f32) -> f32 {
        edge.phase.size_in_one_row(width).clamp(1.0, self.head)
    }

    /// Whether the name of a part stands beside that of the phase in one row.
    pub(super) fn has_room_beside_phase(self, edge: &EdgeTexts, part: &str, width: f32) -> bool {
        let part = TextMetrics::new(part, theme::BOLD).ems() * theme::SMALL;
        edge.phase.ems() * self.head + part + 50.0 <= width
    }

    /// The sizes of the step in this space, in which what must be known stands below it.
    fn sizes(self, texts: &mut Texts, edge: &mut EdgeTexts, space: Size) -> Sizes {
        let foot = edge.feet_height(self, space.width);
        let heart = Size::new(space.width, (space.height - foot).max(0.0));
        Sizes::of(texts, heart)
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

/// Whether the words of the step are as large as they should be, and all there.
fn is_good(sizes: Sizes, texts: &Texts) -> bool {
    sizes.fits && sizes.line >= texts.good_line() && sizes.note > 0.0
}

/// The fullest frame that leaves room for good sizes, or else for a large line, or else for all that
/// must be there, and the sizes.
pub(super) fn best(
    texts: &mut Texts,
    edge: &mut EdgeTexts,
    room: Size,
    place: Option<Placement>,
    first: usize,
) -> (PageFrame, Sizes) {
    let (mut large, mut fitting, mut last) = (None, None, None);
    for frame in PageFrame::in_order(first, place.is_some()) {
        let height = (room.height - frame.head_height(edge, room.width)).max(0.0);
        let stage = Size::new(room.width, height);
        let space = place.map_or(stage, |place| place.left_of(stage));
        let sizes = frame.sizes(texts, edge, space);
        if is_good(sizes, texts) {
            return roomier(frame, sizes, texts, edge, space);
        }
        if sizes.fits && sizes.line >= texts.good_line() {
            large = large.or(Some((frame, sizes)));
        }
        if sizes.fits {
            fitting = fitting.or(Some((frame, sizes)));
        }
        last = Some((frame, sizes));
    }
    let usual = || {
        let sizes = Sizes::of(texts, room);
        (PageFrame::ALL[PageFrame::ALL.len() - 1], sizes)
    };
    large.or(fitting).or(last).unwrap_or_else(usual)
}

/// The same with more of what must be known, as far as the words of the step have room to spare for it.
fn roomier(
    mut frame: PageFrame,
    mut sizes: Sizes,
    texts: &mut Texts,
    edge: &mut EdgeTexts,
    space: Size,
) -> (PageFrame, Sizes) {
    while edge.is_cut_off(frame, space.width) {
        let most = frame.most + 1.5 * theme::SMALL;
        let more = PageFrame { most, ..frame };
        let given = more.sizes(texts, edge, space);
        if !is_good(given, texts) {
            break;
        }
        (frame, sizes) = (more, given);
    }
    (frame, sizes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_that_has_no_room_gives_way_to_a_shorter_one_that_is_whole() {
        let letters = |text: &str| TextMetrics::new(text, theme::FACE);
        let edge = EdgeTexts {
            notices: Vec::new(),
            phase: letters("Lead pass, leg 3 of 14"),
            caution: None,
            answer: None,
        };
        let names = [
            "5 lead 7 bight, doubled · plain, 4 crossings at once",
            "5 lead 7 bight, doubled",
            "5 × 7, doubled",
        ]
        .map(str::to_owned);
        let frame = PageFrame::ALL[0];
        let beside = 50.0 + letters("Lead pass, leg 3 of 14").ems() * frame.head;
        let room_for = |name: &str| beside + letters(name).ems() * theme::SMALL;
        let within = |width: f32| frame.tie_in_room(&edge, &names, width);
        for (nth, name) in names.iter().enumerate() {
            assert_eq!(within(room_for(name) + 0.1), Some(name.as_str()));
            let shorter = names.get(nth + 1).map(String::as_str);
            assert_eq!(within(room_for(name) - 0.1), shorter);
        }
        // A frame without that line has none of them.
        assert_eq!(PageFrame::ALL[3].tie_in_room(&edge, &names, 5000.0), None);
    }
}
