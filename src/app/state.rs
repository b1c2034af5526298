//! The app: which screen is up, and who hears of what happens.

mod keeping;

use std::time::Instant;

use iced::futures::channel::mpsc::UnboundedReceiver;
use iced::keyboard;
use iced::widget::operation;
use iced::{Element, Event, Size, Subscription, Task, Theme, event, window};
use jiff::Timestamp;
use std::cell::Cell;

use super::comforts::Outside;
use super::desk::{self, Desk, InHand, Inventory};
use super::pace::Pace;
use super::picture::Easel;
use super::watch::Watch;
use super::{
    course, glossary, house, keys, learn, log, notices, plan, settings, shelf, start, theme, tying,
};
use crate::guide::{AtOnce, COURSE, Lesson, LessonState, Place, Plan, Script};
use crate::knot::{Hand, Knot, Side, Weave};
use crate::pedal::{Intent, Pedals, Press, Raw};
use crate::settings::Prose;
use crate::shelf::{Held, Kept, ShelfError, Tie, TieId};
use crate::voice::News;
use crate::walk::{self, Walk};
use crate::words::{Detail, Words};
pub use keeping::Keeping;

/// The whole state of the app.
pub struct App {
    pub(super) words: Words,
    pub(super) desk: Desk,
    pub(super) pedals: Pedals,
    pub(super) screen: Screen,
    pub(super) notices: notices::Notices,
    pub(super) pace: Pace,
    pub(super) is_flashing: bool,
    pub(super) has_focus: bool,
    /// The window's size in pixels, before anything is drawn larger.
    pub(super) window: Size,
    pub(super) monitor_width: Option<f32>,
    /// Dots of the screen for each of those pixels.
    pub(super) density: f32,
    /// The factor the window draws by until it next asks for it.
    pub(super) scale_in_effect: Cell<f32>,
    /// How much is said of a step outside the course.
    detail: Detail,
    /// How much is told at once.
    at_once: AtOnce,
    /// The plan screen as it was left: nothing typed is lost.
    pub(super) planned: Option<Box<plan::State>>,
    /// The tie in hand while the settings are looked at.
    pub(super) waiting: Option<Box<Bench>>,
    /// The tie that was refused last since it is open elsewhere.
    refused: Option<TieId>,
}

pub(super) enum Screen {
    Start(start::State),
    Plan(Box<plan::State>),
    Tying(Box<Bench>),
    Course(course::State),
    Glossary(glossary::State),
    Shelf(shelf::State),
    Log(Box<keeping::Desktop>),
    Settings(Box<settings::State>),
    Learn(learn::State),
}

/// A tie in hand, on the screen and on the shelf.
pub(super) struct Bench {
    tying: Walk,
    pub(super) tie: Tie,
    held: Option<Held>,
    /// Somebody else works at it: nothing is kept.
    looks_only: bool,
    watch: Watch,
    easel: Easel,
}

impl Bench {
    /// Whether the picture has the whole screen: not while the words have a question.
    fn is_whole(&self) -> bool {
        self.easel.is_full() && !self.tying.is_asking()
    }

    /// Does what a press asks of the picture; `false` when it asks nothing of it.
    pub(super) fn look(&mut self, press: &Press, intent: Option<Intent>) -> bool {
        match intent {
            Some(Intent::Leave) if self.is_whole() => {
                self.easel.leave_full();
                true
            }
            Some(_) => false,
            None => !press.is_repeat && self.easel.press(&press.key),
        }
    }

    /// Whether everything is done, by this tyer.
    pub(super) fn may_be_logged(&self) -> bool {
        self.tying.is_done() && !self.looks_only
    }

    /// The tyer is at something else.
    pub(super) fn rest(&mut self) {
        self.watch.rest();
    }

    /// Tells what stands there in other words.
    pub(super) fn reword(&mut self, words: &Words) {
        self.tying.reword(words);
    }

    /// What is spoken of this step.
    pub(super) fn say(&self) -> &str {
        self.tying.say()
    }

    /// Notes where the tie stands after a press, and the time it took.
    fn move_from(&mut self, before: Place) {
        let (here, mut worked) = (self.tying.place(), self.tie.worked());
        let onwards = self.tying.script().next(before) == Some(here);
        self.watch
            .press(Instant::now(), onwards, (before, here), &mut worked);
        self.tie.stand_at(here);
        self.tie.set_worked(&worked);
    }
}

/// What happens.
#[derive(Debug)]
pub enum Message {
    /// A key that no widget took.
    Key(keyboard::Event),
    /// The start screen.
    Start(start::Message),
    /// The plan screen.
    Plan(plan::Message),
    /// The course.
    Course(course::Message),
    /// How far the tyer is with the course.
    Lessons(Result<[LessonState; COURSE.len()], ShelfError>),
    /// The glossary.
    Glossary(glossary::Chosen),
    /// The voice has something to report.
    Voice(News),
    /// A tie was saved, or was not.
    Kept(Kept),
    /// The shelf was looked through.
    Shelf(Result<Inventory, ShelfError>),
    /// A tie is in hand. `true`: it was taken up again.
    InHand(Box<Result<InHand, ShelfError>>, bool),
    /// The shelf screen and the log.
    Keeping(Keeping),
    /// The window has or has lost the keys.
    Focus(bool),
    /// A mouse button that no widget took did something.
    Button(Raw),
    /// The settings screen.
    Settings(settings::Message),
    /// A service of the tyer's comfort has something to report.
    Comfort(Outside),
    /// The window has this size.
    Resized(Size),
    /// What the window answers that was asked for its size.
    Measured(Size),
    /// The monitor is so many pixels wide, if that is known.
    MonitorWidth(Option<f32>),
    /// The screen has so many dots for each pixel of the window's size.
    Density(f32),
    /// The window is to be closed.
    Close,
}

/// News from threads that are not the window's.
#[derive(Debug)]
pub enum FromOutside {
    /// From the voice.
    Voice(News),
    /// From the keeper.
    Kept(Kept),
    /// There is no shelf to keep ties on.
    NoShelf(ShelfError),
    /// From a service of the tyer's comfort.
    Comfort(Outside),
}

impl Message {
    /// A text typed into a field of the start screen's form.
    pub fn typed(field: start::Field, text: &str) -> Self {
        Self::Start(start::Message::Typed(field, text.to_owned()))
    }

    /// A text typed into a field of the plan screen's form.
    pub fn planned(field: plan::Field, text: &str) -> Self {
        Self::Plan(plan::Message::Typed(field, text.to_owned()))
    }

    /// A text typed into the line of the shelf screen.
    pub fn typed_on_shelf(text: &str) -> Self {
        Self::Keeping(Keeping::Shelf(shelf::Message::Typed(text.to_owned())))
    }

    /// A text typed into a field of the log's form.
    pub fn typed_in_log(field: log::Field, text: &str) -> Self {
        Self::Keeping(Keeping::Log(log::Message::Typed(field, text.to_owned())))
    }
}

/// Asks the window for its size: when it is resized twice in a moment, what it told the second time
/// is in pixels of a scale that is no longer in effect when it is heard.
fn ask_size() -> Task<Message> {
    let size = iced::window::oldest().and_then(iced::window::size);
    size.map(Message::Measured)
}

impl App {
    /// The app at its beginning: on `plan`, begun, if there is one, or else on the start
    /// screen.
    pub fn new(
        mut words: Words,
        desk: Desk,
        plan: Option<Plan>,
        outside: UnboundedReceiver<FromOutside>,
    ) -> (Self, Task<Message>) {
        let settings = &desk.comforts.settings;
        // What the command line asks for comes before what is usual.
        if words.detail() == Detail::default() {
            words.set_detail(settings.prose.detail);
        }
        desk.voice.set_manner(settings.manner_of(&words));
        let app = Self {
            detail: words.detail(),
            at_once: settings.prose.at_once,
            pedals: Pedals::new(settings.bindings.clone(), settings.times),
            words,
            desk,
            screen: Screen::Start(start::State::default()),
            notices: notices::Notices::default(),
            planned: None,
            waiting: None,
            refused: None,
            pace: Pace::default(),
            is_flashing: false,
            has_focus: false,
            // Nothing is drawn larger before the window has told its size: it would be opened
            // larger too.
            window: Size::ZERO,
            monitor_width: None,
            density: 1.0,
            scale_in_effect: Cell::new(1.0),
        };
        let listen = Task::run(outside, |news| match news {
            FromOutside::Voice(news) => Message::Voice(news),
            FromOutside::Kept(kept) => Message::Kept(kept),
            FromOutside::NoShelf(error) => Message::Shelf(Err(error)),
            FromOutside::Comfort(news) => Message::Comfort(news),
        });
        let open = match plan {
            Some(plan) => app.begin(new_tie(&plan)),
            None => app.look_through(),
        };
        (app, Task::batch([listen, open]))
    }

    /// The title of the window.
    pub fn title(&self) -> String {
        let name = self.words.plainly("app-title", &[]);
        match &self.screen {
            Screen::Start(_)
            | Screen::Plan(_)
            | Screen::Course(_)
            | Screen::Glossary(_)
            | Screen::Shelf(_)
            | Screen::Log(_)
            | Screen::Settings(_)
            | Screen::Learn(_) => name,
            Screen::Tying(bench) => {
                format!(
                    "{} – {name}",
                    self.words.tie_line(bench.tying.script().plan())
                )
            }
        }
    }

    /// What the app listens to.
    pub fn subscription(&self) -> Subscription<Message> {
        Subscription::batch([
            keyboard::listen().map(Message::Key),
            window::close_requests().map(|_| Message::Close),
            event::listen_with(|event, status, _| match event {
                // A text field takes this one for itself; leaving is the screen's affair too.
                Event::Keyboard(event) if keys::is_escape(&event) => {
                    (status == event::Status::Captured).then_some(Message::Key(event))
                }
                Event::Mouse(event) if status == event::Status::Ignored => {
                    keys::button(&event).map(Message::Button)
                }
                Event::Window(
                    window::Event::Opened { size, .. } | window::Event::Resized(size),
                ) => Some(Message::Resized(size)),
                Event::Window(window::Event::Focused) => Some(Message::Focus(true)),
                Event::Window(window::Event::Unfocused) => Some(Message::Focus(false)),
                _ => None,
            }),
        ])
    }

    /// Takes in what happened, and has the pictures show it.
    pub fn update(&mut self, message: Message) -> Task<Message> {
        let task = self.take_in(message);
        let dots = self.scale() * self.density;
        match &mut self.screen {
            Screen::Tying(bench) => {
                bench.easel.set_dots(dots);
                bench.easel.show(bench.tying.subject());
            }
            Screen::Plan(plan) => plan.redraw(dots),
            Screen::Start(start) => start.set_dots(dots),
            _ => {}
        }
        task
    }

    fn take_in(&mut self, message: Message) -> Task<Message> {
        match message {
            Message::Key(event) => self.key(&event),
            Message::Start(message) => match &mut self.screen {
                Screen::Start(start) => {
                    let action = start.update(message, &self.words);
                    self.follow(action)
                }
                _ => Task::none(),
            },
            Message::Plan(message) => match &mut self.screen {
                Screen::Plan(plan) => {
                    let action = plan.update(message, &self.words);
                    self.follow_plan(action)
                }
                _ => Task::none(),
            },
            Message::Course(message) => match &mut self.screen {
                Screen::Course(course) => {
                    let action = course.update(message);
                    self.follow_course(action)
                }
                _ => Task::none(),
            },
            // The tyer may have pressed on meanwhile.
            Message::Lessons(_) if !matches!(self.screen, Screen::Start(_)) => Task::none(),
            Message::Lessons(states) => {
                let states = states.unwrap_or_else(|error| {
                    self.notices.refused(&error, &self.words);
                    Default::default()
                });
                let course = course::State::new(states);
                self.desk.voice.say(&course.say(&self.words));
                self.screen = Screen::Course(course);
                Task::none()
            }
            Message::Glossary(chosen) => match &mut self.screen {
                Screen::Glossary(glossary) => {
                    let action = glossary.update(chosen);
                    self.follow_glossary(action)
                }
                _ => Task::none(),
            },
            Message::Keeping(message) => self.keeping(message),
            Message::Settings(message) => match &mut self.screen {
                Screen::Settings(state) => {
                    let action = state.update(message, &self.desk.comforts.settings);
                    self.follow_settings(action)
                }
                _ => Task::none(),
            },
            Message::Button(raw) => self.pressed(&raw, None),
            Message::Comfort(news) => self.outside(news),
            Message::Resized(size) => {
                self.resized(size);
                let density = iced::window::oldest().and_then(iced::window::scale_factor);
                Task::batch([density.map(Message::Density), ask_size()])
            }
            Message::Measured(size) => {
                if self.resized(size) {
                    ask_size()
                } else {
                    Task::none()
                }
            }
            Message::MonitorWidth(width) => {
                self.monitor_width = width;
                Task::none()
            }
            Message::Density(density) => {
                self.density = density;
                Task::none()
            }
            Message::Voice(news) => self.heard(&news),
            Message::Kept(kept) => {
                let news = self.notices.kept(&kept, &self.words);
                // Who only hears has to hear it; the step comes again after it.
                if let (Some(news), Screen::Tying(bench)) = (news, &self.screen) {
                    self.desk
                        .voice
                        .say(&format!("{news} {}", bench.tying.say()));
                }
                Task::none()
            }
            Message::Shelf(found) => {
                self.shelve(found);
                Task::none()
            }
            Message::InHand(found, is_again) => self.in_hand(*found, is_again),
            Message::Focus(has_focus) => {
                self.focus(has_focus);
                // Who is at another window is not at the tie.
                if let (Screen::Tying(bench), false) = (&mut self.screen, has_focus) {
                    bench.watch.rest();
                }
                Task::none()
            }
            Message::Close => self.close(),
        }
    }

    /// The window.
    pub fn view(&self) -> Element<'_, Message> {
        let notices = self.notices.sentences(&self.words);
        let page = match &self.screen {
            Screen::Start(start) => start.view(&self.words, notices).map(Message::Start),
            Screen::Plan(plan) => plan.view(&self.words, notices).map(Message::Plan),
            Screen::Course(course) => course.view(&self.words, notices).map(Message::Course),
            Screen::Glossary(glossary) => {
                glossary.view(&self.words, notices).map(Message::Glossary)
            }
            Screen::Tying(bench) => {
                let mut notices = notices;
                if bench.looks_only {
                    notices.insert(0, self.words.plainly("look-only", &[]));
                }
                if bench.is_whole() {
                    tying::whole(&bench.tying, &bench.easel, &self.words, notices)
                } else {
                    tying::view(&bench.tying, &bench.easel, &self.words, notices)
                }
            }
            Screen::Shelf(shelf) => shelf
                .view(&self.words, notices)
                .map(|message| Message::Keeping(Keeping::Shelf(message))),
            Screen::Log(desktop) => desktop
                .form
                .view(&self.words, notices)
                .map(|message| Message::Keeping(Keeping::Log(message))),
            Screen::Settings(state) => state
                .view(&self.words, &self.desk.comforts.settings, notices)
                .map(Message::Settings),
            Screen::Learn(state) => state.view(&self.words, notices),
        };
        house::edged(page, self.is_flashing)
    }

    /// The colours.
    pub fn theme(&self) -> Theme {
        theme::of(self.desk.comforts.settings.light)
    }

    fn key(&mut self, event: &keyboard::Event) -> Task<Message> {
        if keys::is_ctrl(event, "q") {
            return self.close();
        }
        match keys::raw(event) {
            Some(raw) => self.pressed(&raw, keys::press(event)),
            None => Task::none(),
        }
    }

    /// A press on the tying screen.
    pub(super) fn press(&mut self, intent: Intent) -> Task<Message> {
        let Screen::Tying(bench) = &mut self.screen else {
            return Task::none();
        };
        let before = bench.tying.place();
        match bench.tying.press(intent, &self.words) {
            walk::Action::Moved => {
                bench.move_from(before);
                self.desk.voice.say(bench.tying.say());
                if !bench.looks_only {
                    self.desk.keep(&bench.tie);
                }
                let to = bench.tying.place();
                let is_last = to == bench.tying.script().last();
                self.moved(before, to, intent == Intent::Next, is_last);
            }
            walk::Action::Again if intent == Intent::Next && bench.may_be_logged() => {
                let offer = self.words.plainly("log-offer-say", &[]);
                let say = bench.tying.say();
                self.desk.voice.say(&format!("{say} {offer}"));
            }
            walk::Action::Again => self.desk.voice.say(bench.tying.say()),
            walk::Action::Say(sentence) => {
                // What stands above the step is part of where the tyer is.
                let notices = self.notices.sentences(&self.words).join(" ");
                self.desk.voice.say(format!("{notices} {sentence}").trim());
            }
            walk::Action::Leave => return self.leave(),
        }
        Task::none()
    }

    /// A key of the tying screen that changes how much is told: 1, 2 and 3 for the depth, square
    /// brackets for the crossings told at once. The place stays.
    pub(super) fn adjust(&mut self, press: &Press) {
        let Screen::Tying(bench) = &mut self.screen else {
            return;
        };
        if press.is_repeat {
            return;
        }
        let at_once = bench.tying.script().at_once();
        let said = match press.key.as_str() {
            "1" | "2" | "3" => {
                let depths = Detail::ALL.into_iter().zip(["1", "2", "3"]);
                for (detail, _) in depths.filter(|(_, key)| *key == press.key) {
                    self.words.set_detail(detail);
                    // A lesson is taught; what is chosen in it is for it alone.
                    if bench.tie.lesson().is_none() {
                        self.detail = detail;
                    }
                }
                bench.tying.retell(at_once, &self.words);
                self.words.say_detail()
            }
            "[" | "]" => {
                let at_once = if press.key == "[" {
                    at_once.less()
                } else {
                    at_once.more()
                };
                self.at_once = at_once;
                bench.tying.retell(at_once, &self.words);
                self.words.say_at_once(at_once)
            }
            _ => return,
        };
        bench.tie.stand_at(bench.tying.place());
        if !bench.looks_only {
            self.desk.keep(&bench.tie);
        }
        let prose = Prose {
            detail: self.detail,
            at_once: self.at_once,
        };
        self.desk
            .voice
            .say(&format!("{said} {}", bench.tying.say()));
        self.prefer_prose(prose);
    }

    /// Does what the start screen asks for.
    pub(super) fn follow(&mut self, action: start::Action) -> Task<Message> {
        match action {
            start::Action::None => Task::none(),
            start::Action::Complain(sentence) => {
                self.desk.voice.say(&sentence);
                Task::none()
            }
            // Focusing a field that takes no text leaves every text field unfocused.
            start::Action::Focus(field) => {
                self.say_focus();
                match field {
                    Some(field) => Task::batch([
                        operation::focus(start::id(field)),
                        operation::select_all(start::id(field)),
                    ]),
                    None => operation::focus(start::id(start::Field::Begin)),
                }
            }
            start::Action::Say => {
                self.say_focus();
                Task::none()
            }
            start::Action::Begin(plan) => self.begin(new_tie(&plan)),
            start::Action::Plan(hand, side) => self.open_plan(hand, side),
            start::Action::Course => match self.desk.shelf.clone() {
                Some(shelf) => Task::future(async move { Message::Lessons(desk::lessons(&shelf)) }),
                None => Task::done(Message::Lessons(Ok(Default::default()))),
            },
            start::Action::Glossary => {
                let glossary = glossary::State::new(&self.words);
                self.desk.voice.say(&glossary.say(&self.words));
                self.screen = Screen::Glossary(glossary);
                Task::none()
            }
            start::Action::TakeUp(waiting) => self.take_up(waiting.tie.id().clone()),
            start::Action::Shelf => self.open_shelf(),
        }
    }

    /// Does what the plan screen asks for.
    pub(super) fn follow_plan(&mut self, action: plan::Action) -> Task<Message> {
        match action {
            plan::Action::None => Task::none(),
            plan::Action::Say(sentence) => {
                self.desk.voice.say(&sentence);
                Task::none()
            }
            plan::Action::Focus(field, sentence) => {
                self.desk.voice.say(&sentence);
                focus_plan(field)
            }
            plan::Action::Find(asked, question) => {
                let shelf = self.desk.shelf.clone();
                Task::future(async move {
                    let question = desk::taught(shelf.as_ref(), *question);
                    let outcome = plan::Outcome::of(Box::new(question));
                    Message::Plan(plan::Message::Found(asked, outcome))
                })
            }
            plan::Action::Begin(plan) => self.begin(new_tie(&plan)),
            plan::Action::Leave => self.leave(),
        }
    }

    /// Goes to the plan screen, as it was left.
    fn open_plan(&mut self, hand: Hand, side: Side) -> Task<Message> {
        let mut plan = self.planned.take().unwrap_or_default();
        plan.work(hand, side);
        self.desk.voice.say(&plan.say(&self.words));
        let focus = focus_plan(plan.focus());
        self.screen = Screen::Plan(plan);
        let Some(rack) = self.desk.rack.clone() else {
            return focus;
        };
        let read = Task::future(async move { Message::Plan(plan::Message::Rack(rack.read())) });
        Task::batch([focus, read])
    }

    /// Does what the course asks for.
    pub(super) fn follow_course(&mut self, action: course::Action) -> Task<Message> {
        match action {
            course::Action::None => {}
            course::Action::Say(sentence) => self.desk.voice.say(&sentence),
            course::Action::Leave => return self.leave(),
            course::Action::Begin(Lesson {
                number,
                leads,
                bights,
                passes,
            }) => {
                let knot = Knot::new(leads, bights, Weave::default());
                let plan =
                    knot.and_then(|knot| Plan::new(knot, passes, Side::default(), Hand::default()));
                match plan {
                    Ok(plan) => {
                        let tie = new_tie(&plan).for_lesson(number);
                        return self.begin(tie);
                    }
                    Err(error) => self.desk.voice.say(&self.words.knot_error(&error)),
                }
            }
        }
        Task::none()
    }

    /// Does what the glossary asks for.
    pub(super) fn follow_glossary(&mut self, action: glossary::Action) -> Task<Message> {
        match action {
            glossary::Action::None => {}
            glossary::Action::Say(sentence) => self.desk.voice.say(&sentence),
            glossary::Action::Leave => return self.leave(),
        }
        Task::none()
    }

    /// Puts a new tie on the shelf and in hand.
    fn begin(&self, tie: Tie) -> Task<Message> {
        let shelf = self.desk.shelf.clone();
        Task::future(async move {
            Message::InHand(Box::new(Ok(desk::begin(shelf.as_ref(), tie))), false)
        })
    }

    fn in_hand(&mut self, found: Result<InHand, ShelfError>, is_again: bool) -> Task<Message> {
        let InHand {
            tie,
            held,
            troubles,
            error,
            looks_only,
            pace,
        } = match found {
            Ok(in_hand) => in_hand,
            Err(error) => {
                if let ShelfError::InUse { id } = &error {
                    self.refused = Some(id.clone());
                }
                let sentence = self.notices.refused(&error, &self.words);
                self.desk.voice.say(&sentence);
                return Task::none();
            }
        };
        let is_taught = tie.lesson().is_some();
        self.words.set_detail(if is_taught {
            Detail::Teach
        } else {
            self.detail
        });
        let script = Script::new(tie.plan(), self.at_once);
        let place = tie.stands_at().unwrap_or_else(|| script.first());
        let mut tying = Walk::new(script, place, &self.words);
        tying.set_pace(pace);
        self.notices.shelf(troubles);
        self.refused = None;
        if error.is_some() {
            self.desk.keep(&tie);
        }
        let say = tying.say();
        if is_again {
            let where_it_stands = self.words.say_taking_up(tying.script(), tying.place());
            let looking = if looks_only {
                self.words.plainly("look-only-say", &[])
            } else {
                String::new()
            };
            let all = format!("{looking} {where_it_stands} {say}");
            self.desk.voice.say(all.trim());
        } else if let Some(lesson) = tie.lesson() {
            self.desk
                .voice
                .say(&format!("{} {say}", self.words.lesson_idea(lesson)));
        } else {
            self.desk.voice.say(say);
        }
        self.put_away();
        self.keep_plan();
        self.screen = Screen::Tying(Box::new(Bench {
            tying,
            tie,
            held,
            looks_only,
            watch: Watch::begin(Instant::now()),
            easel: Easel::default(),
        }));
        self.bench_changed();
        Task::none()
    }

    /// Back to the start screen, with what is on the shelf by then.
    fn leave(&mut self) -> Task<Message> {
        self.put_away();
        self.keep_plan();
        self.screen = Screen::Start(start::State::default());
        self.bench_changed();
        self.look_through()
    }

    /// Keeps what was typed on the plan screen, to be there when it is come back to.
    fn keep_plan(&mut self) {
        if let Screen::Plan(plan) = &mut self.screen {
            self.planned = Some(std::mem::take(plan));
        }
    }

    fn put_away(&mut self) {
        let bench = match &mut self.screen {
            Screen::Tying(bench) => Some(bench),
            Screen::Log(desktop) => desktop.bench.as_mut(),
            _ => self.waiting.as_mut(),
        };
        if let Some(bench) = bench {
            self.desk.put_away(bench.held.take());
        }
    }

    pub(super) fn look_through(&self) -> Task<Message> {
        let (shelf, keeper) = (self.desk.shelf.clone(), self.desk.keeper.clone());
        match shelf {
            Some(shelf) => Task::future(async move {
                // What was asked to be saved a moment ago belongs into the list.
                if let Some(keeper) = keeper {
                    keeper.flush(desk::LAST_SAVE);
                }
                Message::Shelf(desk::inventory(&shelf, Timestamp::now()))
            }),
            None => Task::done(Message::Shelf(Ok(Inventory::default()))),
        }
    }

    fn shelve(&mut self, found: Result<Inventory, ShelfError>) {
        let Screen::Start(start) = &mut self.screen else {
            return;
        };
        match found {
            Ok(Inventory { waiting, troubles }) => {
                self.notices.shelf(troubles);
                *start = start::State::new(waiting);
            }
            Err(error) => {
                start.be_ready();
                self.notices.refused(&error, &self.words);
            }
        }
        let notices = self.notices.sentences(&self.words).join(" ");
        self.desk
            .voice
            .say(format!("{notices} {}", start.say(&self.words)).trim());
    }

    fn close(&mut self) -> Task<Message> {
        self.put_away();
        self.desk.close();
        iced::exit()
    }
}

/// A tie of a plan, before its first step.
fn new_tie(plan: &Plan) -> Tie {
    let first = Script::new(plan.clone(), AtOnce::default()).first();
    Tie::of(plan, first)
}

fn focus_plan(field: plan::Field) -> Task<Message> {
    Task::batch([
        operation::focus(plan::id(field)),
        operation::select_all(plan::id(field)),
    ])
}
