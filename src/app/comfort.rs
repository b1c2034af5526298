//! What the app does for the tyer's comfort: presses, pace, sounds, settings.

use iced::{Size, Task};

use super::alarm::Hour;
use super::comforts::Outside;
use super::state::{App, Message, Screen};
use super::{learn, settings, type_size};
use crate::guide::{Phase, Place};
use crate::pedal::{Edge, Intent, Press, Raw};
use crate::settings::{Prose, Settings};
use crate::voice::{Cue, Manner, News};
use crate::words::Words;

/// How long the edge of the screen flashes.
const FLASH: std::time::Duration = std::time::Duration::from_millis(150);
/// One press of faster or slower, in words a minute.
const SPEED_STEP: u16 = 10;

impl App {
    /// What the tyer prefers.
    pub const fn settings(&self) -> &Settings {
        &self.desk.comforts.settings
    }

    /// Whether the edge of the screen flashes just now.
    pub const fn is_flashing(&self) -> bool {
        self.is_flashing
    }

    /// Takes in what an input did. `press` is the same for screens with a form.
    pub(super) fn pressed(&mut self, raw: &Raw, press: Option<Press>) -> Task<Message> {
        let now = (self.desk.comforts.clock)();
        if let Screen::Learn(_) = self.screen {
            return self.learn(raw, now);
        }
        if raw.edge == Edge::Down {
            self.notices.press();
        }
        let is_tying = matches!(self.screen, Screen::Tying(_));
        let intent = self.pedals.take(raw, now, is_tying);
        self.watch_presses();
        self.meant(intent, press)
    }

    /// Does what a press means on the screen that is up.
    fn meant(&mut self, intent: Option<Intent>, press: Option<Press>) -> Task<Message> {
        if intent.is_none() && press.is_none() {
            return Task::none();
        }
        let is_form = match &self.screen {
            Screen::Start(start) => start.is_in_form(),
            Screen::Plan(_) | Screen::Shelf(_) | Screen::Log(_) => true,
            _ => false,
        };
        match intent {
            Some(Intent::Slower) if !is_form => return self.speed(false),
            Some(Intent::Faster) if !is_form => return self.speed(true),
            _ => {}
        }
        let press = press.unwrap_or(Press {
            key: String::new(),
            is_repeat: false,
        });
        match &mut self.screen {
            Screen::Start(_)
                if !is_form && !press.is_repeat && press.key.eq_ignore_ascii_case("t") =>
            {
                self.open_settings()
            }
            Screen::Start(start) => {
                let action = start.press(&press, intent, &self.words);
                self.follow(action)
            }
            Screen::Plan(plan) => {
                let action = plan.press(&press, intent, &self.words);
                self.follow_plan(action)
            }
            Screen::Course(course) => {
                let action = course.press(&press, intent, &self.words);
                self.follow_course(action)
            }
            Screen::Glossary(glossary) => {
                let action = glossary.press(&press, intent);
                self.follow_glossary(action)
            }
            Screen::Settings(state) => {
                let action = state.press(&press, intent, &self.desk.comforts.settings);
                self.follow_settings(action)
            }
            Screen::Shelf(_) | Screen::Log(_) => self.press_keeping(&press, intent),
            Screen::Tying(bench) => {
                if bench.look(&press, intent) {
                    return Task::none();
                }
                if intent.is_none() && press.key.eq_ignore_ascii_case("l") && bench.may_be_logged()
                {
                    let tie = bench.tie.clone();
                    return self.open_form(tie);
                }
                if let Some(intent) = intent {
                    return self.at_the_bench(intent);
                }
                if !press.is_repeat && press.key.eq_ignore_ascii_case("t") {
                    return self.open_settings();
                }
                self.adjust(&press);
                Task::none()
            }
            Screen::Learn(_) => Task::none(),
        }
    }

    /// A press while tying: holds or ends a pause, and holds a step that would move on by itself.
    fn at_the_bench(&mut self, intent: Intent) -> Task<Message> {
        let was_paused = self.notices.paused(false);
        if intent == Intent::Pause {
            if was_paused {
                return self.press(Intent::Again);
            }
            self.notices.paused(true);
            self.desk.voice.hush();
            self.hold_pace();
            return Task::none();
        }
        if self.pace.is_running {
            self.hold_pace();
            if intent == Intent::Next {
                let sentence = self.words.plainly("pace-held-say", &[]);
                self.desk.voice.say(&sentence);
                return Task::none();
            }
        }
        if intent == Intent::Next {
            let now = (self.desk.comforts.clock)();
            self.pace.moved_on(now);
        }
        self.press(intent)
    }

    fn hold_pace(&mut self) {
        self.pace.is_running = false;
        self.desk.comforts.alarm.set(Hour::Pace, None);
    }

    /// The step has changed: it sounds, flashes, and is given its time.
    pub(super) fn moved(&mut self, from: Place, to: Place, is_forward: bool, is_last: bool) {
        self.cue(cue_for(from, to, is_forward, is_last));
        self.notices.screen_may_go_dark(None);
        self.give_time(is_forward && !is_last);
    }

    fn give_time(&mut self, may_pace: bool) {
        self.pace.begin((self.desk.comforts.clock)());
        let time = self
            .pace
            .time()
            .filter(|_| may_pace && self.desk.comforts.settings.pacing);
        self.pace.is_running = time.is_some();
        self.desk.comforts.alarm.set(Hour::Pace, time);
    }

    /// A tie has come into hand or gone out of it.
    pub(super) fn bench_changed(&mut self) {
        let is_tying = matches!(self.screen, Screen::Tying(_));
        self.desk.comforts.awake.set(is_tying);
        self.notices.paused(false);
        self.hold_pace();
        if is_tying {
            self.pace.begin((self.desk.comforts.clock)());
        } else {
            self.notices.screen_may_go_dark(None);
        }
    }

    fn cue(&mut self, cue: Cue) {
        let settings = &self.desk.comforts.settings;
        if settings.cues.is_on {
            self.desk.comforts.chime.play(cue, settings.cues.volume);
        }
        if settings.flash {
            self.is_flashing = true;
            self.desk.comforts.alarm.set(Hour::Flash, Some(FLASH));
        }
    }

    /// Takes in what the voice reports.
    pub(super) fn heard(&mut self, news: &News) -> Task<Message> {
        self.notices.voice(news);
        match news {
            News::Lost(_) => self.cue(Cue::VoiceLost),
            News::NoSuchVoice(wanted) => {
                let sentence = self.words.no_such_voice(wanted);
                self.notices.no_such_voice(Some(sentence.clone()));
                // It comes while what stands there is being said: both are to be heard.
                let here = self.what_stands_there();
                self.desk.voice.say(format!("{sentence} {here}").trim());
            }
            News::Voices(voices) => {
                if let Screen::Settings(state) = &mut self.screen {
                    state.voices(voices);
                }
            }
            _ => {}
        }
        Task::none()
    }

    /// What was said last of the screen that is up, as far as it can be said again.
    fn what_stands_there(&self) -> String {
        match &self.screen {
            Screen::Tying(bench) => bench.say().to_owned(),
            Screen::Start(start) => start.say_focus(&self.words),
            Screen::Settings(state) => state.say(&self.words, &self.desk.comforts.settings),
            _ => String::new(),
        }
    }

    /// Takes in what the services report.
    pub(super) fn outside(&mut self, news: Outside) -> Task<Message> {
        match news {
            Outside::Pedal(raw) => {
                let press = (raw.edge == Edge::Down).then(|| Press {
                    key: String::new(),
                    is_repeat: false,
                });
                self.pressed(&raw, press)
            }
            Outside::Rang(Hour::Flash) => {
                self.is_flashing = false;
                Task::none()
            }
            Outside::Rang(Hour::Gesture) => {
                let now = (self.desk.comforts.clock)();
                let intent = self.pedals.wait(now);
                self.watch_presses();
                self.meant(intent, None)
            }
            Outside::Rang(Hour::Pace) => {
                if std::mem::take(&mut self.pace.is_running)
                    && matches!(self.screen, Screen::Tying(_))
                {
                    return self.press(Intent::Next);
                }
                Task::none()
            }
            Outside::Settings(snag) => {
                let sentence = snag.sentence(&self.words);
                self.notices.settings(sentence.clone());
                self.desk.voice.say(&sentence);
                Task::none()
            }
            Outside::NotAwake => {
                let sentence = self.words.plainly("screen-not-awake", &[]);
                self.notices.screen_may_go_dark(Some(sentence));
                Task::none()
            }
        }
    }

    fn watch_presses(&self) {
        let now = (self.desk.comforts.clock)();
        let due = self.pedals.due().map(|due| due.saturating_sub(now));
        self.desk.comforts.alarm.set(Hour::Gesture, due);
    }

    /// The window has or has lost the keys.
    pub(super) fn focus(&mut self, has_focus: bool) {
        if self.has_focus && !has_focus {
            self.pedals.let_go();
            self.watch_presses();
            let sentence = self.words.plainly("focus-lost", &[]);
            self.desk.voice.say(&sentence);
        }
        self.has_focus = has_focus;
        self.notices.focus(has_focus);
    }

    /// Says the part of the start screen that has the focus.
    pub(super) fn say_focus(&self) {
        if let Screen::Start(start) = &self.screen {
            self.desk.voice.say(&start.say_focus(&self.words));
        }
    }

    /// The window has this size, in logical pixels of the scale in effect; whether another scale
    /// follows from it.
    pub(super) fn resized(&mut self, size: Size) -> bool {
        let scale = self.scale();
        let seen_before = self.window != Size::ZERO;
        self.window = size * self.scale_in_effect.get();
        if !seen_before {
            let Size { width, height } = self.window;
            log::info!("window open, {width} × {height}");
        }
        #[expect(clippy::float_cmp, reason = "of one size comes one scale")]
        let is_other = scale != self.scale();
        is_other
    }

    /// How much larger than 1 everything is drawn, for the tyer's distance.
    pub fn scale_factor(&self) -> f32 {
        let scale = self.scale();
        self.scale_in_effect.set(scale);
        scale
    }

    /// The same, when it is not the window that asks.
    pub(super) fn scale(&self) -> f32 {
        let wanted = type_size::scale(self.desk.comforts.settings.screen, self.monitor_width);
        type_size::within(wanted, self.window)
    }

    fn manner(&self) -> Manner {
        self.desk.comforts.settings.manner_of(&self.words)
    }

    fn speed(&mut self, is_faster: bool) -> Task<Message> {
        let mut manner = self.manner();
        let speed = manner.words_per_minute;
        let (least, most) = (*Manner::SPEEDS.start(), *Manner::SPEEDS.end());
        manner.words_per_minute = if is_faster {
            speed.saturating_add(SPEED_STEP).min(most)
        } else {
            speed.saturating_sub(SPEED_STEP).max(least)
        };
        let mut settings = self.desk.comforts.settings.clone();
        let speed = manner.words_per_minute;
        settings.set_manner(&self.words.tag().to_string(), manner);
        self.prefer(settings);
        let sentence = self.words.say_speed(speed);
        self.desk.voice.say(&sentence);
        Task::none()
    }

    /// Takes these settings, has them kept, and acts by them from now on.
    fn prefer(&mut self, settings: Settings) {
        self.desk.comforts.file.keep(&settings);
        if settings.manner_of(&self.words) != self.manner() {
            self.notices.no_such_voice(None);
        }
        self.pedals.set(settings.bindings.clone(), settings.times);
        self.desk.comforts.settings = settings;
        self.desk.voice.set_manner(self.manner());
    }

    /// The words have changed: puts into them what was put into those before.
    fn reword(&mut self) {
        self.notices.reword();
        if let Some(plan) = &mut self.planned {
            plan.reword();
        }
        if let Screen::Settings(state) = &mut self.screen {
            state.speak(&self.words.tag().to_string());
        }
    }

    /// Keeps how much is told.
    pub(super) fn prefer_prose(&mut self, prose: Prose) {
        self.desk.comforts.settings.prose = prose;
        self.desk.comforts.file.keep(&self.desk.comforts.settings);
    }

    /// Opens the settings. A tie in hand waits behind them.
    pub(super) fn open_settings(&mut self) -> Task<Message> {
        let state = settings::State::new(&self.words.tag().to_string());
        let field = state.say(&self.words, &self.desk.comforts.settings);
        let opening = self.words.plainly("settings-opening-say", &[]);
        self.desk.voice.say(&format!("{opening} {field}"));
        self.desk.voice.ask_for_voices();
        let before = std::mem::replace(&mut self.screen, Screen::Settings(Box::new(state)));
        if let Screen::Tying(mut bench) = before {
            bench.rest();
            self.waiting = Some(bench);
            self.bench_changed();
        }
        iced::window::oldest()
            .and_then(iced::window::monitor_size)
            .map(|size| Message::MonitorWidth(size.map(|size| size.width)))
    }

    /// Does what the settings screen asks for.
    pub(super) fn follow_settings(&mut self, action: settings::Action) -> Task<Message> {
        match action {
            settings::Action::None => return Task::none(),
            settings::Action::Leave => {
                if let Some(mut bench) = self.waiting.take() {
                    bench.reword(&self.words);
                    self.desk.voice.say(bench.say());
                    self.screen = Screen::Tying(bench);
                    self.bench_changed();
                    return Task::none();
                }
                self.screen = Screen::Start(super::start::State::default());
                return self.look_through();
            }
            settings::Action::Learn => {
                let state = learn::State::default();
                let sentence = state.say(&self.words);
                self.desk.voice.say(&sentence);
                self.screen = Screen::Learn(state);
                return Task::none();
            }
            settings::Action::Moved => {}
            settings::Action::Set(settings) => {
                let cues = self.desk.comforts.settings.cues;
                let flash = self.desk.comforts.settings.flash;
                let sounds = settings.cues.is_on && settings.cues != cues;
                let flashes = settings.flash && !flash;
                let (before, now) = (&self.desk.comforts.settings.tongue, &settings.tongue);
                if before.language != now.language {
                    let detail = self.words.detail();
                    self.words = Words::chosen(now);
                    self.words.set_detail(detail);
                    self.reword();
                } else if before.units != now.units {
                    // The language may be one that was asked for on the command line.
                    self.words.measure_in(now.units);
                    self.reword();
                }
                self.prefer(*settings);
                // Heard and seen at once.
                if sounds || flashes {
                    self.cue(Cue::Next);
                }
            }
        }
        let Screen::Settings(state) = &self.screen else {
            return Task::none();
        };
        let sentence = state.say(&self.words, &self.desk.comforts.settings);
        self.desk.voice.say(&sentence);
        state.scroll()
    }

    fn learn(&mut self, raw: &Raw, now: std::time::Duration) -> Task<Message> {
        let Screen::Learn(state) = &mut self.screen else {
            return Task::none();
        };
        if learn::State::leaves(raw) {
            return self.open_settings();
        }
        let Some(input) = self.pedals.pressed(raw, now) else {
            return Task::none();
        };
        let sentence = state.press(input, &self.words);
        if let Some(bindings) = state.done() {
            let settings = Settings {
                bindings,
                ..self.desk.comforts.settings.clone()
            };
            self.prefer(settings);
            let task = self.open_settings();
            self.desk.voice.say(&sentence);
            return task;
        }
        self.desk.voice.say(&sentence);
        Task::none()
    }
}

/// What is heard of a move. `is_last` when nothing comes after it.
fn cue_for(from: Place, to: Place, is_forward: bool, is_last: bool) -> Cue {
    let ends_a_pass = to.pass > from.pass || to.phase == Phase::Lift;
    match to.phase {
        _ if !is_forward => Cue::Back,
        _ if is_last => Cue::Done,
        Phase::Check => Cue::Check,
        _ if from.phase == Phase::Check && ends_a_pass => Cue::EndOfPass,
        _ => Cue::Next,
    }
}
