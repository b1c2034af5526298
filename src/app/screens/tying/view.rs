//! What the tying screen looks like: a stage that stands still. The strip of the job, the line, its
//! crossings, the picture, what must be known and the bar of keys each keep their place from step to
//! step; only where a step has more words than its place holds does it take of its neighbours'.

use iced::widget::{Column, column, container, responsive, row, scrollable, space, text};
use iced::{Center, Element, Fill, Padding, Size};

use super::job_strip::{self, JobStrip};
use super::over_card;
use super::page_frame::{Around, EdgeTexts, FOOT_GAP, HEAD_GAP, PageFrame, SPACING, best};
use crate::app::picture_view::{Claim, PictureView, Placement};
use crate::app::text_layout::text_metrics::TextMetrics;
use crate::app::text_layout::type_fitting::{self, Sizes, Texts};
use crate::app::widgets::key_bar;
use crate::app::widgets::repaint_layer::{self, layer};
use crate::app::{theme, widgets};
use crate::session;
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

/// The picture over the whole screen: where that is wide it has the whole height, and the line with its
/// crossings stands beside it; else above it.
pub(super) fn whole<'a, M: 'a>(
    shown: &'a Shown,
    picture: &'a PictureView,
    page: session::Page,
) -> Element<'a, M> {
    let notices: Vec<String> = page.notices.into_iter().chain(page.shown.caution).collect();
    let answers: Vec<String> = page.pause.into_iter().chain(page.answer).collect();
    let parts = responsive(move |room| {
        let is_wide = room.width > 1.35 * room.height;
        let line = |size: f32| {
            let rows = shown.line.lines();
            let rows = rows.map(|row| text(row).size(size).font(theme::BOLD).into());
            column(rows)
        };
        let mut words = column![].spacing(SPACING).width(Fill);
        for notice in &notices {
            words = words.push(widgets::notice_of(notice.clone(), theme::SMALL));
        }
        let told: Element<'a, M> = if is_wide {
            let size = (room.width / 34.0).clamp(28.0, 1.5 * theme::HEADING);
            // No arrow is left over for a row of its own, and no crossing.
            let width = room.width * WORDS_BESIDE_WHOLE;
            let mut texts = Texts::new(shown);
            let even = texts.even_width(0, size, width);
            let line = container(line(size)).max_width(even);
            let marks = plates(&shown.marks, &texts, theme::BODY, width);
            column![line, marks].spacing(SPACING).into()
        } else {
            // The crossings have a row of their own, with none of them left over for another.
            let marks = plates(&shown.marks, &Texts::new(shown), theme::BODY, room.width);
            column![line(theme::HEADING), marks].spacing(8).into()
        };
        words = words.push(told);
        for answer in &answers {
            words = words.push(text(answer.clone()).size(theme::BODY));
        }
        let turned = (&shown.line, &notices, &answers);
        if is_wide {
            let words = scrollable(words).spacing(4);
            let words = container(words).width(room.width * WORDS_BESIDE_WHOLE);
            let words = container(layer(turned, words)).height(Fill);
            let both = row![words, picture.view()].spacing(SPACING);
            return repaint_layer::page(column![both]);
        }
        let both = column![layer(turned, words), picture.view()];
        repaint_layer::page(both.spacing(SPACING))
    });
    container(parts).padding(PADDING).into()
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
    let gives_way = place.is_some_and(|place| match place.claim {
        Claim::AskedFor => false,
        Claim::ByRoom => !(sizes.fits && sizes.line >= texts.good_line()),
        Claim::Taught { is_roomy } => {
            let words = place.left_of(room).width;
            let is_told_in_part = !is_roomy && edge.is_cut_off(frame, words);
            !sizes.fits || sizes.note <= 0.0 || is_told_in_part
        }
    });
    if gives_way {
        place = None;
        (frame, sizes) = best(&mut texts, &mut edge, room, None, first);
    }
    let strip = JobStrip {
        parts: &around.job,
        time_left: around.time_left.as_deref(),
        has_names: frame.has_strip_names,
    };
    let time = around.time_left.as_deref();
    let time = time.filter(|_| !strip.has_room_for_time(room.width));
    let beside = time.map_or(0.0, |time| job_strip::room_for(time) + 2.0 * NAMES_GAP);
    // What is in hand is told in one row, beside the time that is left.
    let phase = text(&shown.phase)
        .size(frame.head_in_one_row(&edge, room.width - beside))
        .style(theme::quiet)
        .wrapping(text::Wrapping::None);
    let mut names = row![phase].align_y(Center).spacing(NAMES_GAP);
    if let Some(time) = time {
        names = names
            .push(space::horizontal())
            .push(job_strip::time_left(time));
    } else if let Some(part) = around.part_in_hand().filter(|_| !frame.has_strip_names) {
        // Where the strip has no names the part in hand has its own all the same, and the time with it.
        if frame.has_room_beside_phase(&edge, part, room.width) {
            let time = around.time_left.as_deref().filter(|time| {
                let both = format!("{part}{time}");
                frame.has_room_beside_phase(&edge, &both, room.width - NAMES_GAP)
            });
            let part = text(part.to_owned()).size(theme::SMALL).font(theme::BOLD);
            names = names.push(space::horizontal()).push(part);
            names = names.push(time.map(job_strip::time_left));
        }
    } else if let Some(tie) = frame.tie_in_room(&edge, &around.tie, room.width) {
        let tie = text(tie.to_owned()).size(theme::SMALL).style(theme::quiet);
        let tie = tie.wrapping(text::Wrapping::None);
        names = names.push(space::horizontal()).push(tie);
    }
    // The room below it is its own, so that it is painted with the heart as one; but it stays clear of
    // the picture, of which all that reaches into what is painted anew is painted with it.
    let head = column![job_strip::strip(strip, room.width), names].spacing(HEAD_GAP);
    let clear = 2.0 * repaint_layer::SOFT;
    let head = container(head).padding(Padding::ZERO.bottom(SPACING - clear));
    let width = place.map_or(room.width, |place| place.left_of(room).width);
    let words = column![
        words(shown, &mut texts, around, sizes, width),
        feet(around, frame, &mut edge, room, place)
    ];
    let stage = if let Some(place) = place {
        picture.beside(place, words.into())
    } else {
        picture.rest();
        words.into()
    };
    let turned = (&shown.phase, &around.job, &around.time_left);
    let head = container(layer(turned, head)).padding(Padding::ZERO.bottom(clear));
    column![head, stage].into()
}

/// The step, or what comes over it in large type.
fn words<'a, M: 'a>(
    shown: &'a Shown,
    texts: &mut Texts,
    around: &Around,
    sizes: Sizes,
    width: f32,
) -> Element<'a, M> {
    let step = heart(shown, texts, &around.ways, sizes, width);
    let Some(over) = &around.over else {
        return step;
    };
    // The step stands under it: what is asked for comes over it and goes again, and nothing moves.
    iced::widget::stack![step, over_card::card(over)]
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
    let mut feet = column![].spacing(FOOT_GAP).width(Fill);
    for notice in around.caution.iter().chain(&around.notices) {
        feet = feet.push(widgets::notice_of(notice.clone(), theme::SMALL));
    }
    if let Some(answer) = &around.answer {
        feet = feet.push(text(answer.clone()).size(theme::SMALL));
    }
    let turned = (&around.caution, &around.notices, &around.answer);
    let is_bare = around.caution.is_none() && around.notices.is_empty() && around.answer.is_none();
    let feet: Element<'a, M> = if edge.is_cut_off(frame, width) {
        scrollable(feet).spacing(4).height(height).into()
    } else {
        container(feet).height(height).into()
    };
    // Each layer is a mask of the whole window to the toolkit, and one that is empty as much as another.
    if is_bare { feet } else { layer(turned, feet) }
}

/// The line, the crossings and the notes, at these sizes: the line in the middle of its place, the
/// rest from the foot of that place on. The line is broken so that its rows are `even`.
fn heart<'a, M: 'a>(
    shown: &'a Shown,
    texts: &mut Texts,
    ways: &[Option<String>],
    sizes: Sizes,
    width: f32,
) -> Element<'a, M> {
    if !shown.things.is_empty() {
        let things = things(&shown.things, texts, sizes, width);
        return layer((&shown.line, &shown.notes), things);
    }
    let even = texts.even_width(0, sizes.line, width);
    let rows = shown.line.lines().map(|row| {
        let row = text(row).size(sizes.line).font(theme::BOLD);
        row.center().width(Fill).into()
    });
    let line = container(column(rows)).max_width(even);
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
        heart = heart.push(plates(&shown.marks, texts, sizes.mark, width).align_x(Center));
    }
    if sizes.note > 0.0 && !ways.is_empty() {
        heart = heart.push(ways_out(&shown.notes, ways, sizes, width));
    } else if sizes.note > 0.0 {
        for note in &shown.notes {
            heart = heart.push(text(note).size(sizes.note).style(theme::quiet).center());
        }
    }
    let heart = if sizes.line_place > 0.0 {
        container(heart).width(Fill).height(Fill)
    } else {
        container(heart).center(Fill)
    };
    let heart = heart.id("stage-heart");
    layer((&shown.line, &shown.notes), heart)
}

/// Ways out of something, one below the other, each after its key, which its button has too, and each in one
/// row.
fn ways_out<'a, M: 'a>(
    notes: &'a [String],
    ways: &[Option<String>],
    sizes: Sizes,
    width: f32,
) -> Element<'a, M> {
    let rows = notes.iter().zip(ways).map(|(note, cap)| {
        let way = note.split_once(':').filter(|_| cap.is_some());
        let way = way.map_or(note.as_str(), |(_, way)| way.trim_start());
        (way, cap.clone())
    });
    let rows: Vec<(&str, Option<String>)> = rows.collect();
    let ems = |text: &str| TextMetrics::new(text, theme::FACE).ems();
    let told = rows.iter().map(|(way, _)| ems(way)).fold(0.0, f32::max);
    let caps = rows.iter().filter_map(|(_, cap)| cap.as_deref());
    let caps = WAY_CAP * caps.map(ems).fold(0.0, f32::max);
    let one_row = (width - WAY_ROOM).max(0.0) / (told + caps + WAY_GAP);
    let size = sizes.note.min(one_row);
    // As far apart as notes are, by which the sizes were found.
    let gap = sizes.mark * type_fitting::HEART_GAP;
    let mut keys = column![].spacing(gap);
    let mut told = column![].spacing(gap);
    for (way, cap) in rows {
        let row = size * 1.3;
        told = told.push(container(text(way).size(size)).center_y(row));
        let cap = cap.map(|cap| key_bar::keycap_of(cap, size * WAY_CAP));
        keys = keys.push(container(column![].push(cap)).center_y(row));
    }
    row![keys.align_x(Center), told]
        .spacing(size * WAY_GAP)
        .into()
}

/// The things of a page, each above its notes, at these sizes.
fn things<'a, M: 'a>(
    things: &'a [Shown],
    texts: &mut Texts,
    sizes: Sizes,
    width: f32,
) -> Element<'a, M> {
    let things = things.iter().enumerate().map(|(nth, thing)| {
        let line = text(&thing.line).size(sizes.line).font(theme::BOLD);
        let line = container(line.center()).max_width(texts.even_width(nth, sizes.line, width));
        let line = line.id(iced::widget::Id::from(format!("thing {nth}")));
        let notes = thing.notes.iter().filter(|_| sizes.note > 0.0);
        let notes = notes.map(|note| {
            let note = text(note).size(sizes.note).style(theme::quiet);
            note.center().into()
        });
        column![line]
            .extend(notes)
            .spacing(sizes.line * type_fitting::THING_NOTE_GAP)
            .align_x(Center)
            .into()
    });
    let things = column(things).spacing(sizes.line * type_fitting::THING_GAP);
    container(things.align_x(Center).width(Fill))
        .center(Fill)
        .into()
}

/// The crossings in this width, about as many in each row.
fn plates<'a, M: 'a>(
    marks: &'a [CrossingMark],
    texts: &Texts,
    size: f32,
    width: f32,
) -> Column<'a, M> {
    let gap = size * type_fitting::PLATE_GAP;
    let rows = marks.chunks(texts.marks_per_row(size, width)).map(|marks| {
        let marks = row(marks.iter().map(|mark| plate(mark, size))).spacing(gap);
        marks.wrap().vertical_spacing(gap).align_x(Center).into()
    });
    column(rows).spacing(gap)
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

/// The share of the width that the words have beside a picture over the whole screen.
const WORDS_BESIDE_WHOLE: f32 = 0.28;
/// Room round the page, in logical pixels.
const PADDING: f32 = 16.0;
/// Between the name of what is in hand and what stands beside it.
const NAMES_GAP: f32 = 20.0;
/// The key of a way out and the gap beside it, in sizes of its words; and the sides of the key.
const WAY_CAP: f32 = 0.8;
const WAY_GAP: f32 = 0.6;
const WAY_ROOM: f32 = 24.0;
