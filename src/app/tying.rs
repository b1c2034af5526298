//! The tying screen: the one line that matters, its crossings, and where the tyer is.

use iced::widget::{column, container, progress_bar, responsive, row, space, text};
use iced::{Center, Element, Fill, Size};

use super::{house, theme};
use crate::bench::Pace;
use crate::guide::{AtOnce, Place, Progress, Script, Search, TakeBack};
use crate::pedal::Intent;
use crate::words::{Mark, Shown, Words};

/// A tie that is being tied.
pub struct State {
    script: Script,
    place: Place,
    mode: Mode,
    shown: Shown,
    say: String,
    /// An answer that stands on the screen until the next press.
    aside: Option<String>,
    /// The tyer's pace, when known.
    pace: Option<Pace>,
}

/// What a press of next or back means now.
#[derive(Clone, Debug)]
enum Mode {
    /// From step to step.
    Steps,
    /// Something is wrong, and the tyer says what to do about it.
    Wrong,
    /// Legs are taken back, this one now.
    TakingBack(TakeBack),
    /// The lost place is looked for.
    Searching(Box<Search>),
}

/// What the parent has to do about a press.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// The step changed: say it and keep the place.
    Moved,
    /// Say what stands on the screen again.
    Again,
    /// Say this, and leave everything as it is.
    Say(String),
    /// Go to the start screen.
    Leave,
}

impl State {
    /// Stands at `place`, or at the beginning when the script has no such place.
    pub fn new(script: Script, place: Place, words: &Words) -> Self {
        let place = script.settle(place).unwrap_or_else(|| script.first());
        let (shown, say) = (Shown::default(), String::new());
        let mut state = Self {
            script,
            place,
            mode: Mode::Steps,
            shown,
            say,
            aside: None,
            pace: None,
        };
        state.stand_at(place, words);
        state
    }

    /// Knows the tyer's pace from here on.
    pub const fn set_pace(&mut self, pace: Option<Pace>) {
        self.pace = pace;
    }

    /// Minutes until the last leg is laid at the tyer's pace, when that is known.
    fn minutes_left(&self) -> Option<u32> {
        let Progress { laid, legs } = self.script.progress(self.place);
        let minutes = self.pace?.hours(legs - laid) * 60.0;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "casts from floats saturate, and the time is positive"
        )]
        let minutes = minutes.round() as u32;
        Some(minutes)
    }

    /// The script that is told.
    pub const fn script(&self) -> &Script {
        &self.script
    }

    /// Where the tyer is.
    pub const fn place(&self) -> Place {
        self.place
    }

    /// Whether this is the last step.
    pub fn is_done(&self) -> bool {
        matches!(self.mode, Mode::Steps) && self.script.next(self.place).is_none()
    }

    /// What is spoken of this step.
    pub fn say(&self) -> &str {
        &self.say
    }

    /// Does what a press asks for.
    pub fn press(&mut self, intent: Intent, words: &Words) -> Action {
        self.aside = None;
        match intent {
            Intent::Again => return Action::Again,
            Intent::Leave => return Action::Leave,
            Intent::Where => {
                let minutes = self.minutes_left();
                let sentence = words.say_whereabouts(&self.script, self.place, minutes);
                self.aside = Some(sentence.clone());
                return Action::Say(sentence);
            }
            Intent::Wrong => return self.wrong(words),
            Intent::Next | Intent::Back => {}
        }
        let is_next = intent == Intent::Next;
        match self.mode.clone() {
            Mode::Steps => {
                let place = if is_next {
                    self.script.next(self.place)
                } else {
                    self.script.back(self.place)
                };
                // At either end there is nothing but to say where that is.
                place.map_or(Action::Again, |place| self.stand_at(place, words))
            }
            Mode::Wrong if is_next => self.take_back(words),
            Mode::Wrong => {
                let search = Box::new(Search::new(&self.script, self.place));
                self.search(search, words)
            }
            Mode::TakingBack(back) => {
                self.place = back.place;
                if is_next {
                    self.take_back(words)
                } else {
                    self.stand_at(back.place, words)
                }
            }
            Mode::Searching(mut search) => {
                if is_next {
                    search.yes(&self.script);
                } else {
                    search.no();
                }
                self.search(search, words)
            }
        }
    }

    /// Whether it goes from step to step, and nothing is being mended.
    pub const fn is_telling_steps(&self) -> bool {
        matches!(self.mode, Mode::Steps)
    }

    /// Tells the step anew, in other words or other portions.
    pub fn retell(&mut self, at_once: AtOnce, words: &Words) {
        let checks = self.script.checks();
        self.script = Script::new(self.script.plan().clone(), at_once).with_checks(checks);
        let place = self.script.settle(self.place);
        let place = place.unwrap_or_else(|| self.script.first());
        self.stand_at(place, words);
    }

    fn stand_at(&mut self, place: Place, words: &Words) -> Action {
        if let Some(step) = self.script.step(place) {
            self.mode = Mode::Steps;
            self.place = place;
            self.shown = words.show(self.script.plan().knot(), &step);
            self.say = words.say(&step);
        }
        Action::Moved
    }

    /// Something is wrong; said once more, all is left as it is.
    fn wrong(&mut self, words: &Words) -> Action {
        if !self.is_telling_steps() {
            return self.stand_at(self.place, words);
        }
        if self.script.is_off_pins(self.place) {
            let sentence = words.plainly("wrong-after", &[]);
            self.aside = Some(sentence.clone());
            return Action::Say(sentence);
        }
        let back = self.script.take_back(self.place);
        self.mode = Mode::Wrong;
        self.shown = words.show_wrong(back.as_ref());
        self.say = words.say_wrong(back.as_ref());
        Action::Again
    }

    fn take_back(&mut self, words: &Words) -> Action {
        let is_going_on = matches!(self.mode, Mode::TakingBack(_));
        let Some(mut back) = self.script.take_back(self.place) else {
            let nothing = words.plainly("take-back-nothing-say", &[]);
            self.stand_at(self.place, words);
            self.say = format!("{nothing} {}", self.say);
            return Action::Moved;
        };
        if is_going_on {
            // The hand has just come back there.
            back.first_back_to = None;
        }
        self.shown = words.show_take_back(&back);
        self.say = words.say_take_back(&back);
        self.mode = Mode::TakingBack(back);
        // The place so far is kept: a leg that is being taken back still lies there in part.
        Action::Moved
    }

    fn search(&mut self, search: Box<Search>, words: &Words) -> Action {
        if let Some(place) = search.found() {
            self.stand_at(place, words);
            self.say = format!("{} {}", words.plainly("found-say", &[]), self.say);
            return Action::Moved;
        }
        if let Some(question) = search.question() {
            self.shown = words.show_question(&question);
            self.say = words.say_question(&question);
        }
        self.mode = Mode::Searching(search);
        Action::Again
    }

    /// The screen. `notices` stand above everything else.
    pub fn view<'a, M: 'a>(&'a self, words: &Words, notices: Vec<String>) -> Element<'a, M> {
        let Progress { laid, legs } = self.script.progress(self.place);
        #[expect(clippy::cast_precision_loss, reason = "a bar needs no more")]
        let bar = progress_bar(0.0..=legs as f32, laid as f32)
            .girth(14)
            .style(theme::progress);
        let keys = if self.is_done() {
            "tying-keys-log"
        } else if self.is_telling_steps() {
            "tying-keys"
        } else {
            "tying-keys-wrong"
        };
        let mut page = column![].spacing(12).padding(20);
        for notice in notices {
            page = page.push(house::notice(notice));
        }
        page = page
            .push(
                row![
                    text(&self.shown.phase)
                        .size(theme::HEADING)
                        .color(theme::QUIET),
                    space::horizontal(),
                    text(words.telling(self.script.plan(), self.script.at_once()))
                        .size(theme::SMALL)
                        .color(theme::QUIET),
                ]
                .align_y(Center)
                .spacing(20),
            )
            .push(bar)
            .push(responsive(|size| self.heart(size)));
        if let Some(caution) = &self.shown.caution {
            page = page.push(house::notice(caution.as_str()));
        }
        if let Some(aside) = &self.aside {
            page = page.push(text(aside).size(theme::BODY));
        }
        page.push(house::quiet(words.plainly(keys, &[]), theme::SMALL))
            .into()
    }

    /// The line, the crossings and the notes, as large as they go.
    fn heart<'a, M: 'a>(&'a self, size: Size) -> Element<'a, M> {
        let sizes = Sizes::of(&self.shown, size);
        let mut heart = column![
            text(&self.shown.line)
                .size(sizes.line)
                .font(theme::BOLD)
                .center()
        ]
        .spacing(sizes.mark * 0.5)
        .align_x(Center)
        .width(Fill);
        if !self.shown.marks.is_empty() {
            let gap = sizes.mark * PLATE_GAP;
            let marks = self.shown.marks.iter().map(|mark| plate(mark, sizes.mark));
            heart = heart.push(
                row(marks)
                    .spacing(gap)
                    .wrap()
                    .vertical_spacing(gap)
                    .align_x(Center),
            );
        }
        for note in &self.shown.notes {
            heart = heart.push(text(note).size(sizes.note).color(theme::QUIET).center());
        }
        container(heart).center(Fill).into()
    }
}

fn plate<'a, M: 'a>(mark: &'a Mark, size: f32) -> Element<'a, M> {
    let word = text(&mark.text).size(size);
    let word = if mark.over {
        word.font(theme::BOLD)
    } else {
        word
    };
    container(word)
        .padding([size * PLATE_ENDS, size * PLATE_SIDES])
        .style(if mark.over {
            theme::over_plate
        } else {
            theme::under_plate
        })
        .into()
}

/// Room in a plate above and below its word, left and right of it, and between two plates, in
/// sizes of its type.
const PLATE_ENDS: f32 = 0.1;
const PLATE_SIDES: f32 = 0.35;
const PLATE_GAP: f32 = 0.35;

/// Sizes of type, in logical pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Sizes {
    line: f32,
    mark: f32,
    note: f32,
}

impl Sizes {
    /// The largest sizes at which everything fits into `space`.
    ///
    /// The line comes first: it takes the width, up to a third of the height. What is left
    /// goes to the crossings, then to the notes.
    fn of(shown: &Shown, space: Size) -> Self {
        let line = (space.width / ems(&shown.line))
            .min(space.height * 0.28)
            .max(30.0);
        let longest = shown.notes.iter().map(|note| ems(note)).fold(1.0, f32::max);
        let note = (space.width / longest)
            .min(line * 0.5)
            .clamp(theme::BODY, 44.0);
        #[expect(clippy::cast_precision_loss, reason = "a handful of notes")]
        let notes = shown.notes.len() as f32 * note * 1.3 * (note * longest / space.width).ceil();
        let left = space.height - line * 1.3 - notes;
        let largest = (line * 0.8).max(theme::BODY);
        // All in one row reads best, as long as it is not much smaller for it.
        let in_one_row = space.width / row_ems(&shown.marks);
        let mut mark = if in_one_row > line * 0.5 {
            largest.min(in_one_row)
        } else {
            largest
        };
        while mark > theme::BODY && marks_height(&shown.marks, mark, space.width) > left {
            mark *= 0.93;
        }
        Self { line, mark, note }
    }
}

/// The height that the crossings take when they are set at `size` and broken into rows.
fn marks_height(marks: &[Mark], size: f32, width: f32) -> f32 {
    let (mut rows, mut used) = (1.0_f32, 0.0_f32);
    for mark in marks {
        let plate = size * (ems(&mark.text) + 2.0 * PLATE_SIDES);
        if used > 0.0 && used + plate > width {
            rows += 1.0;
            used = 0.0;
        }
        used += plate + size * PLATE_GAP;
    }
    rows * size * (1.3 + 2.0 * PLATE_ENDS + PLATE_GAP) + size
}

/// The width of all the crossings side by side, in sizes of their type.
fn row_ems(marks: &[Mark]) -> f32 {
    let plates = marks
        .iter()
        .map(|mark| ems(&mark.text) + 2.0 * PLATE_SIDES + PLATE_GAP);
    plates.sum::<f32>().max(1.0)
}

/// A text's width in ems of the bold face, a little generously.
fn ems(text: &str) -> f32 {
    let ems: f32 = text
        .chars()
        .map(|letter| match letter {
            ' ' | 'i' | 'l' | 'j' | '.' | ',' | ':' | '\'' => 0.34,
            'm' | 'w' | 'M' | 'W' | 'O' | 'Q' | '\u{2026}' => 0.95,
            letter if letter.is_uppercase() => 0.78,
            _ => 0.66,
        })
        .sum();
    ems.max(1.0)
}
